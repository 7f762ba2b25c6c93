//! Whether what is drawn can be a boundary, and why not.

use geo::algorithm::line_intersection::line_intersection;
use geo::algorithm::validation::{InvalidMultiPolygon, InvalidPolygon, RingRole};
use geo::{Coord, Geometry, Line, MultiPolygon, Validation};
use tankard_core::t;

/// Looks at what is finished.
///
/// # Errors
/// Why it cannot be.
pub(super) fn check(geometry: &Geometry<f64>) -> Result<(), String> {
    match geometry {
        Geometry::Polygon(one) => check_all(&MultiPolygon(vec![one.clone()])),
        Geometry::MultiPolygon(all) => check_all(all),
        _ => Ok(()),
    }
}

fn check_all(all: &MultiPolygon<f64>) -> Result<(), String> {
    all.check_validation().map_err(|error| {
        let words = match error {
            InvalidMultiPolygon::InvalidPolygon(_, inside) => match inside {
                InvalidPolygon::TooFewPointsInRing(_) => t!("fields-it-needs-three-points-that-do"),
                InvalidPolygon::SelfIntersection(RingRole::Exterior) => t!("fields-its-edge-would-cross-itself-like"),
                InvalidPolygon::SelfIntersection(RingRole::Interior(_)) => {
                    t!("fields-the-edge-of-the-hole-would")
                }
                InvalidPolygon::NonFiniteCoord(..) => t!("fields-a-point-is-no-place-on"),
                InvalidPolygon::InteriorRingNotContainedInExteriorRing(_) => t!("fields-a-hole-must-lie-inside-its"),
                InvalidPolygon::IntersectingRingsOnALine(..) | InvalidPolygon::IntersectingRingsOnAnArea(..) => {
                    t!("fields-a-hole-would-cross-another-edge")
                }
            },
            InvalidMultiPolygon::ElementsOverlaps(..) => t!("fields-its-parts-would-cover-one-another"),
            InvalidMultiPolygon::ElementsTouchOnALine(..) => {
                t!("fields-two-of-its-parts-would-share")
            }
        };
        words.to_owned()
    })
}

/// Which edge a new point's edge would cross: the number of the point at which that begins, from 1.
pub(super) fn crossed(points: &[Coord<f64>], new: Coord<f64>) -> Option<usize> {
    let last = points.last()?;
    let edge = Line::new(*last, new);
    let mut others = points.windows(2).enumerate();
    let count = points.len().saturating_sub(1);
    others.find_map(|(at, pair)| {
        let &[from, to] = pair else { return None };
        let met = line_intersection(Line::new(from, to), edge)?;
        let is_joint = at + 1 == count && is_at(&met, *last);
        let is_closing = at == 0 && new == from && is_at(&met, from);
        (!is_joint && !is_closing).then_some(at + 1)
    })
}

fn is_at(met: &geo::algorithm::line_intersection::LineIntersection<f64>, point: Coord<f64>) -> bool {
    use geo::algorithm::line_intersection::LineIntersection;
    matches!(met, LineIntersection::SinglePoint { intersection, .. } if *intersection == point)
}

#[cfg(test)]
mod tests {
    use geo::Coord;

    use super::crossed;

    fn points(all: &[(f64, f64)]) -> Vec<Coord<f64>> {
        all.iter().map(|(x, y)| Coord { x: *x, y: *y }).collect()
    }

    #[test]
    fn a_bow_tie_is_seen_while_it_is_drawn() {
        let three = points(&[(0.0, 0.0), (1.0, 0.0), (1.0, 1.0)]);
        assert_eq!(crossed(&three, Coord { x: 0.0, y: 1.0 }), None);
        assert_eq!(crossed(&three, Coord { x: 0.5, y: -1.0 }), Some(1));
        // Back along the edge it came.
        assert_eq!(crossed(&three, Coord { x: 1.0, y: 0.5 }), Some(2));
        // Closing.
        assert_eq!(crossed(&three, three[0]), None);
        let open = points(&[(0.0, 0.0), (1.0, 0.0), (0.2, 1.0), (0.8, 1.0)]);
        assert_eq!(crossed(&open, open[0]), Some(2));
    }
}
