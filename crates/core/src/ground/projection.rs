//! The ground about a place laid flat, in metres.

use geo::{Coord, MapCoords};

/// Half the longer axis of WGS 84, in metres.
const AXIS: f64 = 6_378_137.0;
/// The square of the eccentricity of WGS 84.
const SQUARE: f64 = 0.006_694_379_990_141_316;
/// Beyond this latitude the plane has no end.
const LAST: f64 = 89.5;

/// Lays longitudes and latitudes about a place flat. Shapes keep their angles, however far away they lie; at the latitude of the
/// place a metre of the plane is a metre on the ground.
///
/// # Source
/// J. P. Snyder, Map projections: a working manual, U.S. Geological Survey Professional Paper 1395 (1987), Mercator on the
/// ellipsoid, equations 7-6 to 7-10, with WGS 84.
///
/// # Examples
/// ```
/// use geo::Coord;
/// use tankard_core::ground::projection::Projection;
/// let here = Projection::about(Coord { x: -96.4, y: 41.2 });
/// // A hundredth of a degree of latitude is 1,110.6 m there.
/// assert!((here.to_plane(Coord { x: -96.4, y: 41.205 }).y * 2.0 - 1_110.6).abs() < 0.1);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Projection {
    longitude: f64,
    /// Of the place, in the plane on which the equator keeps its length.
    north: f64,
    /// How long the circle of latitude of the place is, against the equator.
    circle: f64,
}

impl Projection {
    /// About a place, longitude (x) and latitude (y) in degrees.
    pub fn about(place: Coord<f64>) -> Self {
        let latitude = place.y.clamp(-LAST, LAST).to_radians();
        Self { longitude: place.x, north: AXIS * rising(latitude), circle: circle(latitude) }
    }

    /// Metres east (x) and north (y) of the place, from degrees.
    pub fn to_plane(&self, at: Coord<f64>) -> Coord<f64> {
        let north = AXIS * rising(at.y.clamp(-LAST, LAST).to_radians());
        let east = AXIS * turn(at.x - self.longitude).to_radians();
        Coord { x: east * self.circle, y: (north - self.north) * self.circle }
    }

    /// Degrees, from metres east (x) and north (y) of the place.
    pub fn to_globe(&self, at: Coord<f64>) -> Coord<f64> {
        let latitude = latitude_of((at.y / self.circle + self.north) / AXIS);
        Coord { x: turn((at.x / self.circle / AXIS).to_degrees() + self.longitude), y: latitude.to_degrees() }
    }

    /// How many metres on the ground a metre of the plane is, so many metres north of the place.
    pub fn scale_at(&self, north: f64) -> f64 {
        circle(latitude_of((north / self.circle + self.north) / AXIS)) / self.circle
    }

    /// A geometry laid flat.
    pub fn flat<G: MapCoords<f64, f64>>(&self, geometry: &G) -> G::Output {
        geometry.map_coords(|at| self.to_plane(at))
    }
}

/// A difference of longitudes, the short way round.
fn turn(degrees: f64) -> f64 {
    if (-180.0..=180.0).contains(&degrees) { degrees } else { (degrees + 180.0).rem_euclid(360.0) - 180.0 }
}

/// How far north a latitude lies, where the equator has the radius one.
fn rising(latitude: f64) -> f64 {
    let eccentricity = SQUARE.sqrt();
    let sine = latitude.sin();
    sine.atanh() - eccentricity * (eccentricity * sine).atanh()
}

/// The latitude that lies so far north: from the one on a sphere in a few steps, each of which leaves a hundredth and less.
fn latitude_of(north: f64) -> f64 {
    let eccentricity = SQUARE.sqrt();
    let mut sine = north.tanh();
    for _ in 0..6 {
        sine = (north + eccentricity * (eccentricity * sine).atanh()).tanh();
    }
    sine.asin()
}

/// How long the circle of a latitude is, against the equator.
fn circle(latitude: f64) -> f64 {
    latitude.cos() / (1.0 - SQUARE * latitude.sin().powi(2)).sqrt()
}

#[cfg(test)]
mod tests {
    use geo::{Coord, Distance, Geodesic, Point};

    use super::Projection;

    /// Lengths on the ellipsoid: Karney's algorithm, as in GeographicLib.
    #[test]
    fn a_kilometre_on_the_map_is_one_on_the_ground() {
        for latitude in [-37.5, 0.0, 41.2, 52.3, 64.0] {
            let place = Coord { x: -96.4, y: latitude };
            let here = Projection::about(place);
            for (x, y) in [(1000.0, 0.0), (0.0, 1000.0), (-600.0, 800.0)] {
                let there = here.to_globe(Coord { x, y });
                let length = Geodesic.distance(Point::from(place), Point::from(there));
                assert!((length - 1000.0).abs() < 0.3, "{latitude} {x} {y}: {length}");
            }
        }
    }

    #[test]
    fn what_is_laid_flat_comes_back() {
        let seam = Projection::about(Coord { x: 179.99, y: -17.0 });
        assert!((seam.to_plane(Coord { x: -179.99, y: -17.0 }).x - 2.0 * 1065.0).abs() < 5.0);
        let here = Projection::about(Coord { x: 8.0, y: 50.0 });
        for at in [Coord { x: 8.1, y: 50.2 }, Coord { x: 7.0, y: 48.5 }, Coord { x: 8.0, y: -20.0 }] {
            let back = here.to_globe(here.to_plane(at));
            assert!((back.x - at.x).abs() < 1e-11 && (back.y - at.y).abs() < 1e-11, "{back:?}");
        }
    }

    /// Away from its own latitude the map is larger or smaller, and says by how much.
    #[test]
    fn the_scale_elsewhere_is_known() {
        let here = Projection::about(Coord { x: 8.0, y: 50.0 });
        let (from, to) = (Coord { x: 8.0, y: 51.0 }, Coord { x: 8.01, y: 51.0 });
        let length = Geodesic.distance(Point::from(from), Point::from(to));
        let drawn = here.to_plane(to).x - here.to_plane(from).x;
        assert!((drawn * here.scale_at(here.to_plane(from).y) - length).abs() < 0.01);
    }
}
