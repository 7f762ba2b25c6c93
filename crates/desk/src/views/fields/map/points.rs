//! The points of a shape, path by path: rings without their last point, lines, and bare points as one path. A shape is taken apart,
//! a point moved, put in or taken out, and the shape made again.

use geo::{Coord, Geometry, LineString, MultiPoint, Point, Polygon};
use tankard_core::farm::Shape;
use tankard_core::t;

use super::sound;

/// A point: in which path, and which of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Place {
    pub(super) path: usize,
    pub(super) at: usize,
}

/// The paths of a shape.
pub(super) fn paths(shape: &Shape) -> Vec<Vec<Coord<f64>>> {
    let open = |ring: &LineString<f64>| ring.0.split_last().map_or_else(Vec::new, |(_, open)| open.to_vec());
    let rings =
        |one: &Polygon<f64>| std::iter::once(one.exterior()).chain(one.interiors()).map(open).collect::<Vec<_>>();
    match shape.geometry() {
        Geometry::Point(at) => vec![vec![at.0]],
        Geometry::MultiPoint(all) => vec![all.0.iter().map(|at| at.0).collect()],
        Geometry::LineString(line) => vec![line.0.clone()],
        Geometry::MultiLineString(all) => all.0.iter().map(|line| line.0.clone()).collect(),
        Geometry::Polygon(one) => rings(one),
        Geometry::MultiPolygon(all) => all.0.iter().flat_map(rings).collect(),
        _ => Vec::new(),
    }
}

/// A shape of the same make with other points.
fn made(like: &Shape, paths: Vec<Vec<Coord<f64>>>) -> Result<Shape, String> {
    let mut paths = paths.into_iter();
    let mut ring = || LineString(paths.next().unwrap_or_default());
    let mut polygon = |of: &Polygon<f64>| {
        let edge = ring();
        // A polygon closes its rings.
        Polygon::new(edge, of.interiors().iter().map(|_| ring()).collect())
    };
    let geometry = match like.geometry() {
        Geometry::Polygon(one) => Geometry::Polygon(polygon(one)),
        Geometry::MultiPolygon(all) => Geometry::MultiPolygon(all.0.iter().map(polygon).collect()),
        Geometry::LineString(_) => Geometry::LineString(ring()),
        Geometry::MultiLineString(all) => Geometry::MultiLineString(all.0.iter().map(|_| ring()).collect()),
        Geometry::MultiPoint(_) => Geometry::MultiPoint(MultiPoint(ring().0.into_iter().map(Point).collect())),
        other => ring().0.first().map_or_else(|| other.clone(), |at| Geometry::Point(Point(*at))),
    };
    sound::check(&geometry)?;
    Shape::new(geometry).map_err(|error| error.to_string())
}

/// How few points a path may have.
fn least(shape: &Shape) -> usize {
    match shape.geometry() {
        Geometry::Polygon(_) | Geometry::MultiPolygon(_) => 3,
        Geometry::LineString(_) | Geometry::MultiLineString(_) => 2,
        _ => 1,
    }
}

/// With a point moved.
///
/// # Errors
/// Why it cannot lie there.
pub(super) fn moved(shape: &Shape, place: Place, to: Coord<f64>) -> Result<Shape, String> {
    let mut paths = paths(shape);
    if let Some(at) = paths.get_mut(place.path).and_then(|path| path.get_mut(place.at)) {
        *at = to;
    }
    made(shape, paths)
}

/// With a point put in before another.
///
/// # Errors
/// Why it cannot lie there.
pub(super) fn put_in(shape: &Shape, before: Place, at: Coord<f64>) -> Result<Shape, String> {
    let mut paths = paths(shape);
    if let Some(path) = paths.get_mut(before.path) {
        path.insert(before.at.min(path.len()), at);
    }
    made(shape, paths)
}

/// With a point taken out.
///
/// # Errors
/// Why it cannot go.
pub(super) fn taken_out(shape: &Shape, place: Place) -> Result<Shape, String> {
    let mut paths = paths(shape);
    let least = least(shape);
    if let Some(path) = paths.get_mut(place.path).filter(|path| place.at < path.len()) {
        if path.len() <= least {
            return Err(t!("fields-it-has-only-points-here-and", least = least));
        }
        path.remove(place.at);
    }
    made(shape, paths)
}

#[cfg(test)]
mod tests {
    use geo::Coord;
    use tankard_core::farm::Shape;

    use super::{Place, moved, paths, put_in, taken_out};

    fn shape(text: &str) -> Shape {
        Shape::parse(text).unwrap()
    }

    const WITH_HOLE: &str = "POLYGON((0 0, 0.1 0, 0.1 0.1, 0 0.1, 0 0), (0.02 0.02, 0.04 0.02, 0.04 0.04, 0.02 0.02))";

    #[test]
    fn points_are_moved_put_in_and_taken_out() {
        let shape = shape(WITH_HOLE);
        let corner = Place { path: 0, at: 2 };
        let out = moved(&shape, corner, Coord { x: 0.12, y: 0.12 }).unwrap();
        assert_eq!(paths(&out)[0][2], Coord { x: 0.12, y: 0.12 });
        assert_eq!(paths(&out)[1], paths(&shape)[1]);
        let more = put_in(&shape, corner, Coord { x: 0.11, y: 0.05 }).unwrap();
        assert_eq!(paths(&more)[0].len(), 5);
        assert_eq!(paths(&taken_out(&more, corner).unwrap()), paths(&shape));
        assert!(taken_out(&shape, Place { path: 1, at: 0 }).is_err(), "a hole needs three points");
    }

    #[test]
    fn what_would_cross_is_refused() {
        let shape = shape(WITH_HOLE);
        let bow_tie = moved(&shape, Place { path: 0, at: 2 }, Coord { x: -0.05, y: 0.05 });
        assert!(bow_tie.unwrap_err().contains("cross"));
        let hole_out = moved(&shape, Place { path: 1, at: 1 }, Coord { x: 0.2, y: 0.02 });
        assert!(hole_out.is_err());
    }

    #[test]
    fn lines_and_points_keep_their_kind() {
        let line = shape("LINESTRING(0 0, 1 1, 2 0)");
        let short = taken_out(&line, Place { path: 0, at: 1 }).unwrap();
        assert_eq!(paths(&short), [vec![Coord { x: 0.0, y: 0.0 }, Coord { x: 2.0, y: 0.0 }]]);
        assert!(taken_out(&short, Place { path: 0, at: 1 }).is_err());
        let point = moved(&shape("POINT(1 1)"), Place { path: 0, at: 0 }, Coord { x: 2.0, y: 2.0 }).unwrap();
        assert_eq!(point.as_text(), "POINT(2 2)");
    }
}
