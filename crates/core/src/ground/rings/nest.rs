//! Which ring lies in which.

use crate::language::t;
use geo::coordinate_position::{CoordPos, coord_pos_relative_to_ring};
use geo::{BoundingRect, Coord, LineString, Polygon, Rect};

use super::{Budget, NoGround, Ring, closed, ring};

/// A ring with the box around it.
struct Kept {
    ring: LineString<f64>,
    around: Rect<f64>,
}

impl Kept {
    fn new(ring: Ring) -> Option<Self> {
        let ring = closed(ring);
        let around = ring.bounding_rect()?;
        Some(Self { ring, around })
    }

    /// Whether another ring, which does not cross it, lies within.
    fn holds(&self, other: &Self, budget: &mut Budget) -> Result<bool, NoGround> {
        if !lies_in(other.around, self.around) {
            return Ok(false);
        }
        // A corner or the middle of an edge may lie on the ring where they touch; the next one tells.
        for line in other.ring.lines() {
            let middle = Coord { x: line.start.x.midpoint(line.end.x), y: line.start.y.midpoint(line.end.y) };
            for at in [line.start, middle] {
                budget.spend(self.ring.0.len())?;
                match coord_pos_relative_to_ring(at, &self.ring) {
                    CoordPos::Inside => return Ok(true),
                    CoordPos::Outside => return Ok(false),
                    CoordPos::OnBoundary => {}
                }
            }
        }
        Ok(false)
    }

    /// Whether no corner of another ring and no middle of its edges lies outside.
    fn holds_all(&self, other: &Self, budget: &mut Budget) -> Result<bool, NoGround> {
        for line in other.ring.lines() {
            let middle = Coord { x: line.start.x.midpoint(line.end.x), y: line.start.y.midpoint(line.end.y) };
            for at in [line.start, middle] {
                budget.spend(self.ring.0.len())?;
                if coord_pos_relative_to_ring(at, &self.ring) == CoordPos::Outside {
                    return Ok(false);
                }
            }
        }
        Ok(true)
    }
}

/// Whether a box lies in another, edges in common or not.
fn lies_in(inner: Rect<f64>, outer: Rect<f64>) -> bool {
    outer.min().x <= inner.min().x
        && outer.min().y <= inner.min().y
        && outer.max().x >= inner.max().x
        && outer.max().y >= inner.max().y
}

/// In how many of the others each ring lies.
pub(super) fn depths(rings: &[Ring], budget: &mut Budget) -> Result<Vec<usize>, NoGround> {
    let kept: Vec<Kept> = rings.iter().filter_map(|ring| Kept::new(ring.clone())).collect();
    let mut depths = Vec::with_capacity(kept.len());
    for (number, one) in kept.iter().enumerate() {
        let mut depth = 0;
        for (other, outer) in kept.iter().enumerate() {
            budget.spend(1)?;
            depth += usize::from(other != number && outer.holds(one, budget)?);
        }
        depths.push(depth);
    }
    Ok(depths)
}

/// Gives each hole to the outer ring that it lies in. Where holes touch something they may cross it at corners.
///
/// # Errors
/// A hole lies in none, or in a hole.
pub(super) fn given(
    outers: Vec<Ring>,
    holes: Vec<Ring>,
    are_touching: bool,
    budget: &mut Budget,
) -> Result<Vec<Polygon<f64>>, NoGround> {
    let outers: Vec<Kept> = outers.into_iter().filter_map(Kept::new).collect();
    let holes: Vec<Kept> = holes.into_iter().filter_map(Kept::new).collect();
    let mut own: Vec<Vec<LineString<f64>>> = outers.iter().map(|_| Vec::new()).collect();
    for (number, hole) in holes.iter().enumerate() {
        for (other, outer) in holes.iter().enumerate() {
            budget.spend(1)?;
            if other != number && outer.holds(hole, budget)? {
                return Err(outside(t!("ground-a-hole-lies-within-another-hole"), &hole.ring));
            }
        }
        let mut within = None;
        for (number, outer) in outers.iter().enumerate() {
            budget.spend(1)?;
            if outer.holds(hole, budget)? {
                if are_touching && !outer.holds_all(hole, budget)? {
                    return Err(outside(t!("ground-a-hole-crosses-the-edge"), &hole.ring));
                }
                within = Some(number);
                break;
            }
        }
        match within.and_then(|number| own.get_mut(number)) {
            Some(own) => own.push(hole.ring.clone()),
            None => return Err(outside(t!("ground-a-hole-does-not-lie-within"), &hole.ring)),
        }
    }
    Ok(outers.into_iter().zip(own).map(|(outer, holes)| Polygon::new(outer.ring, holes)).collect())
}

/// # Errors
/// A part lies within another one, and not in a hole of it.
pub(super) fn apart(polygons: &[Polygon<f64>], budget: &mut Budget) -> Result<(), NoGround> {
    let keep = |ring: &LineString<f64>| ring.bounding_rect().map(|around| Kept { ring: ring.clone(), around });
    let outers: Vec<Kept> = polygons.iter().filter_map(|polygon| keep(polygon.exterior())).collect();
    for (number, inner) in outers.iter().enumerate() {
        for (other, (outer, polygon)) in outers.iter().zip(polygons).enumerate() {
            budget.spend(1)?;
            if other == number || !outer.holds(inner, budget)? {
                continue;
            }
            let mut is_in_hole = false;
            for hole in polygon.interiors().iter().filter_map(keep) {
                is_in_hole |= hole.holds(inner, budget)?;
            }
            if !is_in_hole {
                return Err(outside(t!("ground-a-part-lies-within-another-part"), &inner.ring));
            }
        }
    }
    Ok(())
}

fn outside(why: &str, ring: &LineString<f64>) -> NoGround {
    NoGround::at(why, ring.0.first().copied().unwrap_or_default())
}

/// Makes polygons of rings of which it is not said which are outer ones: one that lies in none is, one within it is its hole, one
/// within that is an outer one again.
///
/// # Errors
/// They are too many to be looked through.
pub fn nest(rings: Vec<Ring>) -> Result<Vec<Vec<Ring>>, NoGround> {
    if rings.len() < 2 {
        return Ok(vec![rings]);
    }
    let mut budget = Budget::new();
    let mut sorted: Vec<(f64, Kept, Ring)> = Vec::new();
    for ring in rings {
        let size = ring::signed(&ring).abs();
        if let Some(kept) = Kept::new(ring.clone()) {
            sorted.push((size, kept, ring));
        }
    }
    sorted.sort_by(|a, b| b.0.total_cmp(&a.0));
    // For each ring its depth, and the polygon that it belongs to where it is an outer one.
    let mut stands: Vec<(usize, usize)> = Vec::new();
    let mut polygons: Vec<Vec<Ring>> = Vec::new();
    let mut kept: Vec<Kept> = Vec::new();
    for (_, one, ring) in sorted {
        // The smallest that holds it is the last one.
        let mut parent = None;
        for (outer, stand) in kept.iter().zip(&stands).rev() {
            budget.spend(1)?;
            if outer.holds(&one, &mut budget)? {
                parent = Some(*stand);
                break;
            }
        }
        match parent {
            Some((depth, polygon)) if depth % 2 == 0 => {
                if let Some(rings) = polygons.get_mut(polygon) {
                    rings.push(ring);
                }
                stands.push((depth + 1, polygon));
            }
            _ => {
                stands.push((parent.map_or(0, |(depth, _)| depth + 1), polygons.len()));
                polygons.push(vec![ring]);
            }
        }
        kept.push(one);
    }
    Ok(polygons)
}
