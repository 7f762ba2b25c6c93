//! Rings as people and programs draw them, mended where there is one way to do it, and refused where there are two.
//!
//! All is reckoned in plain degrees; on a field of a few miles an edge drawn so and the shortest way on the ellipsoid lie inches
//! apart. The time that it takes is bounded, however a ring winds: `geo`'s own validation holds each edge against each other, which
//! takes minutes on a river of 50,000 points and for ever on a file that is made to do so; a test holds this one against it.

use crate::language::t;
mod antimeridian;
mod contacts;
mod nest;
mod place;
mod ring;

use geo::{Area as _, BooleanOps, BoundingRect, Coord, Intersects, LineString, MultiPolygon, Polygon};

use contacts::{Kind, contacts};
pub use nest::nest;
pub use place::{Order, order};

/// The points of a ring as they stand in a file: longitudes (x) and latitudes (y) in degrees. Nothing is closed yet.
pub type Ring = Vec<Coord<f64>>;

/// Up to this share of the smaller one two parts may overlap, as boundaries do that were drawn by hand.
const SLIVER: f64 = 0.01;
/// An overlap up to this share is none.
const CRUMB: f64 = 1e-9;

/// Which way round the outer rings of a kind of file run.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Turn {
    /// Against the clock, as RFC 7946 has it.
    Counterclockwise,
    /// With the clock, as shapefiles have it.
    Clockwise,
    /// Nothing is said.
    Either,
}

/// Polygons that can be worked with: outer rings against the clock, holes with it, nothing crossing.
#[derive(Clone, Debug, PartialEq)]
pub struct Mended {
    /// Cut at the 180th meridian where they cross it.
    pub polygons: MultiPolygon<f64>,
    /// What was mended, in words.
    pub said: Vec<String>,
}

/// Why rings are no ground, and where.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{0}")]
pub struct NoGround(String);

impl NoGround {
    fn at(why: &str, at: Coord<f64>) -> Self {
        Self(t!("ground-at", why = why, at = place(at)))
    }

    fn tangled() -> Self {
        Self(t!("ground-its-rings-cross-or-touch-so").to_owned())
    }
}

/// A point in words: "latitude 41.005, longitude -99.995".
pub fn place(at: Coord<f64>) -> String {
    let degrees = |value: f64| {
        let text = format!("{value:.6}");
        text.trim_end_matches('0').trim_end_matches('.').to_owned()
    };
    t!("ground-latitude-longitude", y = degrees(at.y), x = degrees(at.x))
}

/// So many single steps are spent on one piece of ground before it is called tangled.
pub(crate) struct Budget(u64);

impl Budget {
    fn new() -> Self {
        Self(100_000_000)
    }

    fn spend(&mut self, steps: usize) -> Result<(), NoGround> {
        self.0 = self.0.checked_sub(steps as u64 + 1).ok_or_else(NoGround::tangled)?;
        Ok(())
    }
}

/// Mends the polygons of one piece of ground; in each the outer ring stands first, its holes after it.
///
/// Open rings are closed, points that stand twice and spikes are taken out, rings that touch themselves are split, rings that run
/// the other way are turned, a hole is given to the part that it lies in, and what crosses the 180th meridian is cut there.
///
/// # Errors
/// Where there is no area, or several ways to mend it: a ring that crosses itself or another, a hole outside, parts that overlap.
///
/// # References
/// OGC 06-103r4, section 6.1.11 (what a polygon is); RFC 7946, sections 3.1.6 (which way rings run) and 3.1.9 (180th meridian).
///
/// # Examples
/// ```
/// use geo::Coord;
/// use tankard_core::ground::rings::{Turn, mend};
/// let ring = |points: [(f64, f64); 4]| points.iter().map(|&(x, y)| Coord { x, y }).collect::<Vec<_>>();
/// let square = mend(vec![vec![ring([(0.0, 0.0), (0.01, 0.0), (0.01, 0.01), (0.0, 0.01)])]], Turn::Either).unwrap();
/// assert_eq!(square.said, ["an open ring is closed over the last 1,106 m"]);
/// assert!(mend(vec![vec![ring([(0.0, 0.0), (0.01, 0.01), (0.01, 0.0), (0.0, 0.01)])]], Turn::Either).is_err());
/// ```
pub fn mend(drawn: Vec<Vec<Ring>>, turn: Turn) -> Result<Mended, NoGround> {
    let (mut said, mut budget) = (Vec::new(), Budget::new());
    let (mut outers, mut holes) = (Vec::new(), Vec::new());
    for polygon in drawn {
        let mut rings = polygon.into_iter();
        let Some(outer) = rings.next() else { continue };
        let outer = ring::clean(antimeridian::unwrap(outer)?, &mut said)?;
        let about = outer.first().map_or(0.0, |at| at.x);
        let parts = ring::split(&outer, &mut budget, &mut said)?;
        outers.extend(parts.outers);
        holes.extend(parts.holes);
        for hole in rings {
            let hole = ring::clean(antimeridian::beside(antimeridian::unwrap(hole)?, about), &mut said)?;
            let parts = ring::split(&hole, &mut budget, &mut said)?;
            if !parts.holes.is_empty() {
                return Err(NoGround(t!("ground-a-hole-has-a-hole-in").to_owned()));
            }
            holes.extend(parts.outers);
        }
    }
    match once(&mut outers) {
        0 => {}
        twice => said.push(t!("ground-parts-twice-and-taken-once", count = twice)),
    }
    match once(&mut holes) {
        0 => {}
        twice => said.push(t!("ground-holes-twice-and-taken-once", count = twice)),
    }
    let mut turned = 0;
    for outer in &mut outers {
        let runs = if ring::signed(outer) > 0.0 { Turn::Counterclockwise } else { Turn::Clockwise };
        turned += usize::from(turn != Turn::Either && turn != runs);
        if runs == Turn::Clockwise {
            turn_round(outer);
        }
    }
    if turned > 0 {
        said.push(t!("ground-the-wrong-way-round-and-turned", turned = turned));
    }
    for hole in holes.iter_mut().filter(|hole| ring::signed(hole) > 0.0) {
        turn_round(hole);
    }
    let touching = held_apart(&outers, &holes, &mut budget)?;
    let mut polygons = nest::given(outers, holes, touching.holes, &mut budget)?;
    if touching.parts {
        polygons = joined(polygons, &mut said)?;
    }
    nest::apart(&polygons, &mut budget)?;
    let whole = polygons.len();
    let polygons = antimeridian::cut(polygons, &mut said)?;
    if polygons.0.len() > whole {
        stays_sound(&polygons, &mut budget)?;
    }
    if polygons.0.is_empty() {
        return Err(NoGround(t!("ground-it-has-no-rings").to_owned()));
    }
    Ok(Mended { polygons, said })
}

/// The other way round, from the same first point.
fn turn_round(ring: &mut Ring) {
    if let Some((_, rest)) = ring.split_first_mut() {
        rest.reverse();
    }
}

/// Rings that stand twice, point for point, are taken once; gives how many.
fn once(rings: &mut Vec<Ring>) -> usize {
    let key = |ring: &Ring| {
        let mut bits: Vec<(u64, u64)> = ring.iter().map(|at| (at.x.to_bits(), at.y.to_bits())).collect();
        bits.sort_unstable();
        bits
    };
    let mut known = std::collections::HashSet::new();
    let before = rings.len();
    rings.retain(|ring| known.insert(key(ring)));
    before - rings.len()
}

/// What has to be looked at once more, as rings may also cross at their corners.
#[derive(Default)]
struct Touching {
    parts: bool,
    holes: bool,
}

/// What touches.
///
/// # Errors
/// A hole crosses something, or runs along it.
fn held_apart(outers: &[Ring], holes: &[Ring], budget: &mut Budget) -> Result<Touching, NoGround> {
    let rings: Vec<&Ring> = outers.iter().chain(holes).collect();
    let is_hole = |ring: usize| ring >= outers.len();
    let mut touching = Touching::default();
    // Each by itself was looked at when it was split.
    if rings.len() < 2 {
        return Ok(touching);
    }
    for contact in contacts(&rings, budget)?.into_iter().filter(|contact| contact.a != contact.b) {
        match contact.kind {
            _ if !is_hole(contact.a) && !is_hole(contact.b) => touching.parts = true,
            Kind::Touch => touching.holes = true,
            Kind::Cross => return Err(NoGround::at(t!("ground-a-hole-crosses-the-edge-or"), contact.at)),
            Kind::Along => return Err(NoGround::at(t!("ground-a-hole-runs-along-the-edge"), contact.at)),
        }
    }
    Ok(touching)
}

/// The shortest way over the meridian is not the straight line of degrees: far corners may come to lie beyond a neighbour's edge.
///
/// # Errors
/// Cut there, a ring crosses itself or another.
fn stays_sound(cut: &MultiPolygon<f64>, budget: &mut Budget) -> Result<(), NoGround> {
    let open = |ring: &LineString<f64>| ring.0.split_last().map_or_else(Vec::new, |(_, rest)| rest.to_vec());
    for polygon in cut {
        let rings: Vec<Ring> = std::iter::once(polygon.exterior()).chain(polygon.interiors()).map(open).collect();
        let mut contacts = contacts(&rings.iter().collect::<Vec<_>>(), budget)?.into_iter();
        if let Some(crossing) = contacts.find(|contact| contact.kind != Kind::Touch || !contact.is_at_corners) {
            return Err(NoGround::at(t!("ground-cut-at-the-180th-meridian-its"), crossing.at));
        }
    }
    Ok(())
}

/// Parts that overlap by a sliver are joined.
fn joined(polygons: Vec<Polygon<f64>>, said: &mut Vec<String>) -> Result<Vec<Polygon<f64>>, NoGround> {
    let mut whole: Vec<Polygon<f64>> = Vec::new();
    for polygon in polygons {
        let mut joined = MultiPolygon(vec![polygon]);
        let mut apart = Vec::new();
        for other in whole {
            let one = MultiPolygon(vec![other]);
            let is_near = one.bounding_rect().zip(joined.bounding_rect()).is_some_and(|(a, b)| a.intersects(&b));
            let shared = if is_near { one.intersection(&joined) } else { MultiPolygon(Vec::new()) };
            let (common, least) = (shared.unsigned_area(), one.unsigned_area().min(joined.unsigned_area()));
            // Edges in common leave crumbs of rounding.
            if common <= CRUMB * least {
                apart.extend(one);
            } else if common <= SLIVER * least {
                let at = shared.0.first().and_then(|sliver| sliver.exterior().0.first().copied()).unwrap_or_default();
                said.push(t!("ground-two-parts-that-overlap-by-a", at = place(at)));
                joined = one.union(&joined);
            } else {
                let at = shared.0.first().and_then(|sliver| sliver.exterior().0.first().copied()).unwrap_or_default();
                return Err(NoGround::at(t!("ground-two-parts-overlap"), at));
            }
        }
        whole = apart;
        whole.extend(joined);
    }
    Ok(whole)
}

/// A ring with its first point at its end again.
fn closed(mut ring: Ring) -> LineString<f64> {
    ring.extend(ring.first().copied());
    LineString(ring)
}

#[cfg(test)]
mod tests;
