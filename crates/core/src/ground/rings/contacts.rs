//! Where the edges of rings meet.

use geo::line_intersection::{LineIntersection, line_intersection};
use geo::{Coord, Line};

use super::{Budget, NoGround, Ring};

/// How two edges meet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Kind {
    /// Each goes through the other.
    Cross,
    /// An end of one lies on the other.
    Touch,
    /// They have a stretch in common.
    Along,
}

/// Two edges that meet and do not follow each other in one ring.
#[derive(Clone, Copy, Debug)]
pub(super) struct Contact {
    /// The ring of one.
    pub(super) a: usize,
    /// The ring of the other.
    pub(super) b: usize,
    /// How.
    pub(super) kind: Kind,
    /// Where.
    pub(super) at: Coord<f64>,
    /// An end of one is an end of the other.
    pub(super) is_at_corners: bool,
    /// One is the other, there and back.
    pub(super) is_double: bool,
}

/// More are not told.
const MOST: usize = 20_000;

struct Edge {
    line: Line<f64>,
    ring: usize,
    place: usize,
    length: usize,
}

/// A box around edges that follow each other.
#[derive(Clone, Copy)]
struct Around {
    least: Coord<f64>,
    most: Coord<f64>,
}

impl Around {
    fn of(line: Line<f64>) -> Self {
        let (a, b) = (line.start, line.end);
        Self { least: Coord { x: a.x.min(b.x), y: a.y.min(b.y) }, most: Coord { x: a.x.max(b.x), y: a.y.max(b.y) } }
    }

    fn with(self, other: Self) -> Self {
        Self {
            least: Coord { x: self.least.x.min(other.least.x), y: self.least.y.min(other.least.y) },
            most: Coord { x: self.most.x.max(other.most.x), y: self.most.y.max(other.most.y) },
        }
    }

    fn meets(self, other: Self) -> bool {
        self.least.x <= other.most.x
            && other.least.x <= self.most.x
            && self.least.y <= other.most.y
            && other.least.y <= self.most.y
    }
}

/// All contacts of rings with each other and with themselves. Rings are open: the last point is not the first again.
///
/// Edges that follow each other lie near each other, so boxes around ever longer runs of them make a tree without sorting.
pub(super) fn contacts(rings: &[&Ring], budget: &mut Budget) -> Result<Vec<Contact>, NoGround> {
    let mut edges = Vec::new();
    for (number, ring) in rings.iter().enumerate() {
        let next = ring.iter().cycle().skip(1);
        for (place, (start, end)) in ring.iter().zip(next).enumerate() {
            edges.push(Edge { line: Line::new(*start, *end), ring: number, place, length: ring.len() });
        }
    }
    // levels[0] has a box for each edge, each further level one for two of the level below.
    let mut levels: Vec<Vec<Around>> = vec![edges.iter().map(|edge| Around::of(edge.line)).collect()];
    while let Some(last) = levels.last().filter(|last| last.len() > 1) {
        let above = last.chunks(2).filter_map(|pair| pair.iter().copied().reduce(Around::with)).collect();
        levels.push(above);
    }
    let mut found = Vec::new();
    let top = levels.len().saturating_sub(1);
    // A pair of boxes of one level; where both are one box its halves are held against each other.
    let mut open = vec![(top, 0_usize, 0_usize)];
    let around = |level: usize, at: usize| levels.get(level).and_then(|boxes| boxes.get(at)).copied();
    while let Some((level, a, b)) = open.pop() {
        budget.spend(1)?;
        let (Some(one), Some(other)) = (around(level, a), around(level, b)) else { continue };
        if a != b && !one.meets(other) {
            continue;
        }
        if level == 0 {
            if let (true, Some(one), Some(other)) = (a != b, edges.get(a), edges.get(b)) {
                found.extend(meeting(one, other));
                if found.len() > MOST {
                    return Err(NoGround::tangled());
                }
            }
            continue;
        }
        let (a, b) = (2 * a, 2 * b);
        open.extend([(level - 1, a, b), (level - 1, a, b + 1), (level - 1, a + 1, b + 1)]);
        if a != b {
            open.push((level - 1, a + 1, b));
        }
    }
    Ok(found)
}

fn meeting(one: &Edge, other: &Edge) -> Option<Contact> {
    if one.ring == other.ring {
        let apart = one.place.abs_diff(other.place);
        if apart == 1 || apart + 1 == one.length {
            return None;
        }
    }
    let (a, b) = (one.line, other.line);
    let is_at_corners = a.start == b.start || a.start == b.end || a.end == b.start || a.end == b.end;
    let is_double = (a.start == b.end && a.end == b.start) || (a.start == b.start && a.end == b.end);
    let (kind, at) = match line_intersection(a, b)? {
        LineIntersection::SinglePoint { intersection, is_proper: true } => (Kind::Cross, intersection),
        LineIntersection::SinglePoint { intersection, .. } => (Kind::Touch, intersection),
        LineIntersection::Collinear { intersection } if intersection.start == intersection.end => {
            (Kind::Touch, intersection.start)
        }
        LineIntersection::Collinear { intersection } => (Kind::Along, intersection.start),
    };
    Some(Contact { a: one.ring, b: other.ring, kind, at, is_at_corners, is_double })
}
