//! The transverse Mercator projection, as UTM and many national grids have it, turned back into latitude and longitude.

use geo::Coord;

/// A transverse Mercator projection.
///
/// # Valid range
/// Within 3,000 km of its meridian the series is good to a fraction of a micrometre.
///
/// # References
/// C. F. F. Karney, Transverse Mercator with an accuracy of a few nanometers, Journal of Geodesy 85 (2011), 475: Krüger's series
/// to the sixth order, equations 7 to 11, 35 and 36.
pub(super) struct Transverse {
    /// Eccentricity.
    e: f64,
    /// Metres of the rectifying radius, with the scale on the meridian in it.
    radius: f64,
    beta: [f64; 6],
    meridian: f64,
    false_origin: Coord<f64>,
    /// Of the latitude of the origin, in radians along the meridian.
    origin: f64,
}

impl Transverse {
    /// From the axis in metres and the flattening of the ellipsoid, degrees of the origin, the scale there, and metres at it.
    /// `None` where these are no ellipsoid of the earth.
    pub(super) fn new(
        (axis, f): (f64, f64),
        latitude: f64,
        meridian: f64,
        scale: f64,
        false_origin: Coord<f64>,
    ) -> Option<Self> {
        let is_earth = (6.3e6..6.4e6).contains(&axis) && (0.0..0.01).contains(&f);
        if !is_earth || !(0.5..=1.5).contains(&scale) || latitude.abs() > 90.0 || meridian.abs() > 180.0 {
            return None;
        }
        let n = f / (2.0 - f);
        let power = |at: i32| n.powi(at);
        let radius = axis / (1.0 + n) * (1.0 + power(2) / 4.0 + power(4) / 64.0 + power(6) / 256.0) * scale;
        let sum = |terms: &[(i32, f64)]| terms.iter().map(|(at, factor)| factor * power(*at)).sum::<f64>();
        let alpha = [
            sum(&[
                (1, 1.0 / 2.0),
                (2, -2.0 / 3.0),
                (3, 5.0 / 16.0),
                (4, 41.0 / 180.0),
                (5, -127.0 / 288.0),
                (6, 7891.0 / 37800.0),
            ]),
            sum(&[
                (2, 13.0 / 48.0),
                (3, -3.0 / 5.0),
                (4, 557.0 / 1440.0),
                (5, 281.0 / 630.0),
                (6, -1_983_433.0 / 1_935_360.0),
            ]),
            sum(&[(3, 61.0 / 240.0), (4, -103.0 / 140.0), (5, 15061.0 / 26880.0), (6, 167_603.0 / 181_440.0)]),
            sum(&[(4, 49561.0 / 161_280.0), (5, -179.0 / 168.0), (6, 6_601_661.0 / 7_257_600.0)]),
            sum(&[(5, 34729.0 / 80640.0), (6, -3_418_889.0 / 1_995_840.0)]),
            sum(&[(6, 212_378_941.0 / 319_334_400.0)]),
        ];
        let beta = [
            sum(&[
                (1, 1.0 / 2.0),
                (2, -2.0 / 3.0),
                (3, 37.0 / 96.0),
                (4, -1.0 / 360.0),
                (5, -81.0 / 512.0),
                (6, 96199.0 / 604_800.0),
            ]),
            sum(&[
                (2, 1.0 / 48.0),
                (3, 1.0 / 15.0),
                (4, -437.0 / 1440.0),
                (5, 46.0 / 105.0),
                (6, -1_118_711.0 / 3_870_720.0),
            ]),
            sum(&[(3, 17.0 / 480.0), (4, -37.0 / 840.0), (5, -209.0 / 4480.0), (6, 5569.0 / 90720.0)]),
            sum(&[(4, 4397.0 / 161_280.0), (5, -11.0 / 504.0), (6, -830_251.0 / 7_257_600.0)]),
            sum(&[(5, 4583.0 / 161_280.0), (6, -108_847.0 / 3_991_680.0)]),
            sum(&[(6, 20_648_693.0 / 638_668_800.0)]),
        ];
        let e = (f * (2.0 - f)).sqrt();
        let chi = conformal(e, latitude.to_radians().tan()).atan();
        let origin =
            chi + alpha.iter().zip(1..).map(|(factor, j)| factor * (2.0 * f64::from(j) * chi).sin()).sum::<f64>();
        Some(Self { e, radius, beta, meridian, false_origin, origin })
    }

    /// Whether a point in metres lies within a distance of the meridian, and between the poles.
    pub(super) fn is_within(&self, at: Coord<f64>, metres: f64) -> bool {
        let xi = (at.y - self.false_origin.y) / self.radius + self.origin;
        (at.x - self.false_origin.x).abs() <= metres && xi.abs() <= std::f64::consts::FRAC_PI_2
    }

    /// Longitude and latitude in degrees of a point in metres.
    pub(super) fn degrees(&self, at: Coord<f64>) -> Option<Coord<f64>> {
        let xi = (at.y - self.false_origin.y) / self.radius + self.origin;
        let eta = (at.x - self.false_origin.x) / self.radius;
        let (mut north, mut east) = (xi, eta);
        for (factor, j) in self.beta.iter().zip(1..) {
            let twice = 2.0 * f64::from(j);
            north -= factor * (twice * xi).sin() * (twice * eta).cosh();
            east -= factor * (twice * xi).cos() * (twice * eta).sinh();
        }
        let tangent = north.sin() / east.sinh().hypot(north.cos());
        let longitude = self.meridian + east.sinh().atan2(north.cos()).to_degrees();
        let latitude = self.latitude(tangent)?.to_degrees();
        let longitude = if longitude.abs() > 180.0 { longitude - 360.0_f64.copysign(longitude) } else { longitude };
        (longitude.is_finite() && latitude.is_finite()).then_some(Coord { x: longitude, y: latitude })
    }

    /// The latitude that has a conformal one, by their tangents (Newton, equations 19 to 21).
    fn latitude(&self, tangent: f64) -> Option<f64> {
        let mut t = tangent / (1.0 - self.e.powi(2));
        for _ in 0..8 {
            let own = conformal(self.e, t);
            let step = (tangent - own) / own.hypot(1.0) * (1.0 + (1.0 - self.e.powi(2)) * t * t)
                / ((1.0 - self.e.powi(2)) * t.hypot(1.0));
            t += step;
            if step.abs() <= 1e-15 * t.abs().max(1.0) {
                break;
            }
        }
        t.is_finite().then(|| t.atan())
    }
}

/// The tangent of the conformal latitude (equations 7 to 9).
fn conformal(e: f64, tangent: f64) -> f64 {
    let sigma = (e * (e * tangent / tangent.hypot(1.0)).atanh()).sinh();
    tangent * sigma.hypot(1.0) - sigma * tangent.hypot(1.0)
}
