//! A plane that touches the ellipsoid at a field, on which strips are cut and distances taken.
//!
//! Points go straight up or down to it. A length that lies d from where it touches is short by d² / 2R² at most: a millionth at
//! 9 km, so that no field is off by what anybody could measure. It has no seam at 180 degrees and none at the poles.

use geo::{Coord, CoordsIter, Geometry, MapCoords, MultiPolygon};

/// Half the equator's width of WGS 84, and its flattening (NGA.STND.0036, 2014).
const EQUATOR: f64 = 6_378_137.0;
const FLATTENING: f64 = 1.0 / 298.257_223_563;
const POLAR: f64 = EQUATOR * (1.0 - FLATTENING);
const ECCENTRICITY_SQUARED: f64 = FLATTENING * (2.0 - FLATTENING);

/// A point in space, metres from the middle of the earth.
#[derive(Clone, Copy, Debug)]
struct Space([f64; 3]);

impl Space {
    /// On the ellipsoid, from a longitude (x) and a latitude (y) in degrees.
    fn of(at: Coord<f64>) -> Self {
        let ((sin_lon, cos_lon), (sin_lat, cos_lat)) = (at.x.to_radians().sin_cos(), at.y.to_radians().sin_cos());
        let across = EQUATOR / (1.0 - ECCENTRICITY_SQUARED * sin_lat * sin_lat).sqrt();
        Self([across * cos_lat * cos_lon, across * cos_lat * sin_lon, across * (1.0 - ECCENTRICITY_SQUARED) * sin_lat])
    }

    fn at(self, axis: usize) -> f64 {
        self.0.get(axis).copied().unwrap_or_default()
    }

    fn plus(self, other: Self, times: f64) -> Self {
        let each = |at: usize| self.at(at) + other.at(at) * times;
        Self([each(0), each(1), each(2)])
    }

    fn dot(self, other: Self) -> f64 {
        (0..3).map(|at| self.at(at) * other.at(at)).sum()
    }

    fn length(self) -> f64 {
        self.dot(self).sqrt()
    }

    /// Longitude and latitude of a point of the ellipsoid.
    fn on_globe(self) -> Coord<f64> {
        let Self([x, y, z]) = self;
        Coord { x: y.atan2(x).to_degrees(), y: z.atan2((1.0 - ECCENTRICITY_SQUARED) * x.hypot(y)).to_degrees() }
    }
}

/// A ball that holds a shape: its middle and how far its farthest point is, for telling quickly what lies far off.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Ball {
    middle: Space,
    /// Metres.
    reach: f64,
}

impl Ball {
    /// Round a shape.
    pub(crate) fn of(geometry: &Geometry<f64>) -> Self {
        let points = || geometry.coords_iter().map(Space::of);
        let count = geometry.coords_count().max(1) as f64;
        let middle = points().fold(Space([0.0; 3]), |sum, at| sum.plus(at, 1.0 / count));
        let reach = points().map(|at| at.plus(middle, -1.0).length()).fold(0.0, f64::max);
        // A long edge bulges out of the straight line between its ends, by its square over eight times the radius.
        Self { middle, reach: reach + reach * reach / (2.0 * POLAR) }
    }

    /// Whether two shapes may lie within so many metres of one another.
    pub(crate) fn may_lie_within(&self, other: &Self, metres: f64) -> bool {
        self.middle.plus(other.middle, -1.0).length() <= self.reach + other.reach + metres
    }
}

/// The plane. Its x runs east and its y north, in metres from where it touches.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Plane {
    touches: Space,
    east: Space,
    north: Space,
    up: Space,
}

impl Plane {
    /// That which touches in the middle of a shape.
    pub(crate) fn at(ball: &Ball) -> Self {
        let at = ball.middle.on_globe();
        let ((sin_lon, cos_lon), (sin_lat, cos_lat)) = (at.x.to_radians().sin_cos(), at.y.to_radians().sin_cos());
        Self {
            touches: Space::of(at),
            east: Space([-sin_lon, cos_lon, 0.0]),
            north: Space([-sin_lat * cos_lon, -sin_lat * sin_lon, cos_lat]),
            up: Space([cos_lat * cos_lon, cos_lat * sin_lon, sin_lat]),
        }
    }

    /// A point of the globe on the plane.
    pub(crate) fn on(&self, at: Coord<f64>) -> Coord<f64> {
        let from = Space::of(at).plus(self.touches, -1.0);
        Coord { x: from.dot(self.east), y: from.dot(self.north) }
    }

    /// A point of the plane on the globe: where the ellipsoid lies under it. One beyond the rim comes to the nearest that there is.
    pub(crate) fn off(&self, at: Coord<f64>) -> Coord<f64> {
        let above = self.touches.plus(self.east, at.x).plus(self.north, at.y);
        // The ellipsoid made a ball of radius 1.
        let round = |Space([x, y, z]): Space| Space([x / EQUATOR, y / EQUATOR, z / POLAR]);
        let (from, up) = (round(above), round(self.up));
        let (a, b, c) = (up.dot(up), from.dot(up), from.dot(from) - 1.0);
        let down = -c / (b + (b * b - a * c).max(0.0).sqrt());
        above.plus(self.up, down).on_globe()
    }

    /// Polygons on the plane.
    pub(crate) fn polygons(&self, of: &MultiPolygon<f64>) -> MultiPolygon<f64> {
        of.map_coords(|at| self.on(at))
    }

    /// Polygons of the plane on the globe.
    pub(crate) fn to_globe(self, of: &MultiPolygon<f64>) -> MultiPolygon<f64> {
        of.map_coords(|at| self.off(at))
    }
}

#[cfg(test)]
mod tests {
    use geo::{Coord, Distance, Geodesic, Geometry, Point};

    use super::{Ball, Plane};

    fn plane(x: f64, y: f64) -> Plane {
        Plane::at(&Ball::of(&Geometry::Point(Point::new(x, y))))
    }

    /// Against geodesics of the library that follows Karney (2013), in fields at all latitudes, at the seam and at a pole.
    #[test]
    fn lengths_on_the_plane_are_those_on_the_ground() {
        for (x, y) in [(-96.4, 41.2), (0.0, 0.0), (180.0, -17.0), (-179.999, 65.0), (12.0, 89.99), (0.0, -90.0)] {
            let plane = plane(x, y);
            for (east, north) in [(100.0, 0.0), (-3000.0, 40.0), (1234.5, -2345.6), (5000.0, 7000.0)] {
                let at = Coord { x: east, y: north };
                let there = plane.off(at);
                let back = plane.on(there);
                assert!((back.x - east).abs() < 1e-6 && (back.y - north).abs() < 1e-6, "{x} {y}: {back:?}");
                let metres = Geodesic.distance(Point::new(x, y), Point(there));
                let drawn = east.hypot(north);
                assert!((metres / drawn - 1.0).abs() < 2e-6, "{x} {y}: {metres} for {drawn}");
            }
        }
    }

    #[test]
    fn what_is_far_off_is_told_quickly() {
        let ball = |x, y| Ball::of(&Geometry::Point(Point::new(x, y)));
        assert!(ball(180.0, 10.0).may_lie_within(&ball(-179.9999, 10.0), 20.0));
        assert!(!ball(-96.4, 41.2).may_lie_within(&ball(-96.3, 41.2), 1000.0));
    }
}
