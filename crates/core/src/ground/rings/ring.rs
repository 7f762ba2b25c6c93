//! One ring: what is odd of it by itself.

use std::collections::HashMap;

use geo::algorithm::line_measures::{Distance, Geodesic};
use geo::{Coord, Point};

use super::contacts::{Kind, contacts};
use super::{Budget, NoGround, Ring, nest, place};
use crate::language::t;
use crate::quantity::number::show;

/// Twice the signed area in square degrees; more than nothing where it runs against the clock.
pub(super) fn signed(ring: &[Coord<f64>]) -> f64 {
    // From the first point on, as small fields far from the origin would lose their digits.
    let Some(origin) = ring.first().copied() else { return 0.0 };
    let cross =
        |(a, b): (&Coord<f64>, &Coord<f64>)| (a.x - origin.x) * (b.y - origin.y) - (b.x - origin.x) * (a.y - origin.y);
    ring.iter().zip(ring.iter().cycle().skip(1)).map(cross).sum()
}

/// Closes a ring (its last point is then not said again), takes out points that stand twice, and spikes.
pub(super) fn clean(drawn: Ring, said: &mut Vec<String>) -> Result<Ring, NoGround> {
    let mut ring = drawn;
    match (ring.first().copied(), ring.last().copied()) {
        (Some(first), Some(last)) if first == last => {
            ring.pop();
        }
        (Some(first), Some(last)) if ring.len() > 2 => {
            let gap = Geodesic.distance(Point(last), Point(first));
            said.push(t!("ground-an-open-ring-is-closed-over", show = show(gap, if gap < 10.0 { 2 } else { 0 })));
        }
        _ => {}
    }
    let before = ring.len();
    ring.dedup();
    while ring.len() > 1 && ring.first() == ring.last() {
        ring.pop();
    }
    let twice = before - ring.len();
    if twice > 0 {
        said.push(t!("ground-that-the-one-before-taken-out", count = twice));
    }
    let spikes = without_spikes(&mut ring);
    match spikes.as_slice() {
        [] => {}
        [tip] => said.push(t!("ground-a-spike-without-area-is-cut", tip = place(*tip))),
        [tip, ..] => {
            said.push(t!("ground-spikes-without-area-are-cut-off", spikes = spikes.len(), tip = place(*tip)));
        }
    }
    if ring.len() < 3 {
        return Err(match ring.first() {
            Some(at) => NoGround::at(t!("ground-a-ring-has-no-area"), *at),
            None => NoGround(t!("ground-a-ring-has-no-points").to_owned()),
        });
    }
    Ok(ring)
}

/// Whether the way from a over b to c turns right back on itself.
fn turns_back(a: Coord<f64>, b: Coord<f64>, c: Coord<f64>) -> bool {
    use geo::kernels::{Kernel, Orientation, RobustKernel};
    RobustKernel::orient2d(a, b, c) == Orientation::Collinear
        && (b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y) < 0.0
}

/// Takes out the tips of ways that go out and straight back; gives the tips.
fn without_spikes(ring: &mut Ring) -> Vec<Coord<f64>> {
    let mut tips = Vec::new();
    let mut kept: Ring = Vec::with_capacity(ring.len());
    for at in ring.drain(..) {
        add(&mut kept, at, &mut tips);
    }
    // The seam: the first point may be a tip, or lie on the way back from one.
    let mut from = 0;
    while let Some([first, second]) = kept.get(from..from + 2).and_then(|pair| <[_; 2]>::try_from(pair).ok()) {
        let [.., before, last] = kept.as_slice() else { break };
        if kept.len() - from < 3 {
            break;
        }
        if first == *last {
            kept.pop();
        } else if turns_back(*before, *last, first) {
            tips.extend(kept.pop());
        } else if turns_back(*last, first, second) {
            tips.push(first);
            from += 1;
        } else {
            break;
        }
    }
    kept.drain(..from);
    *ring = kept;
    tips
}

fn add(kept: &mut Ring, at: Coord<f64>, tips: &mut Vec<Coord<f64>>) {
    while let [.., a, b] = kept.as_slice() {
        if !turns_back(*a, *b, at) {
            break;
        }
        tips.push(*b);
        kept.pop();
    }
    if kept.last() != Some(&at) {
        kept.push(at);
    }
}

/// What a ring that touches itself comes to.
pub(super) struct Parts {
    pub(super) outers: Vec<Ring>,
    pub(super) holes: Vec<Ring>,
}

/// Splits a ring where it touches itself at a corner: into parts that run the same way beside one another, and holes that run the
/// other way within. A double line that leads to a hole goes.
///
/// # Errors
/// It crosses itself, or runs along itself.
pub(super) fn split(ring: &Ring, budget: &mut Budget, said: &mut Vec<String>) -> Result<Parts, NoGround> {
    for contact in contacts(&[ring], budget)? {
        match contact.kind {
            Kind::Cross => return Err(NoGround::at(t!("ground-a-ring-crosses-itself"), contact.at)),
            Kind::Touch if !contact.is_at_corners => {
                return Err(NoGround::at(t!("ground-a-ring-touches-itself"), contact.at));
            }
            Kind::Along if !contact.is_double => {
                return Err(NoGround::at(t!("ground-a-ring-runs-along-itself"), contact.at));
            }
            Kind::Touch | Kind::Along => {}
        }
    }
    let (loops, touch) = loops(ring);
    let Some(touch) = touch else { return Ok(Parts { outers: loops, holes: Vec::new() }) };
    let loops: Vec<Ring> = loops.into_iter().filter(|one| one.len() > 2).collect();
    let depths = nest::depths(&loops, budget)?;
    let way = loops.iter().zip(&depths).find(|(_, depth)| **depth == 0).is_some_and(|(one, _)| signed(one) > 0.0);
    let mut parts = Parts { outers: Vec::new(), holes: Vec::new() };
    for (one, depth) in loops.into_iter().zip(depths) {
        match (depth, (signed(&one) > 0.0) == way) {
            (0, true) => parts.outers.push(one),
            (1, false) => parts.holes.push(one),
            _ => return Err(NoGround::at(t!("ground-a-ring-crosses-itself"), touch)),
        }
    }
    if parts.outers.is_empty() {
        return Err(NoGround::at(t!("ground-a-ring-has-no-area"), touch));
    }
    said.push(t!(
        "ground-a-ring-that-touches-itself-at",
        touch = place(touch),
        parts = parts.outers.len(),
        holes = parts.holes.len()
    ));
    Ok(parts)
}

/// The simple loops of a ring, and the first corner that it comes to twice.
fn loops(ring: &Ring) -> (Vec<Ring>, Option<Coord<f64>>) {
    // Zero has two signs.
    let key = |at: Coord<f64>| ((at.x + 0.0).to_bits(), (at.y + 0.0).to_bits());
    let (mut done, mut touch) = (Vec::new(), None);
    let mut way: Ring = Vec::with_capacity(ring.len());
    let mut stands: HashMap<(u64, u64), usize> = HashMap::with_capacity(ring.len());
    for at in ring {
        if let Some(from) = stands.get(&key(*at)).copied() {
            touch.get_or_insert(*at);
            let one = way.split_off(from);
            for gone in one.iter().skip(1) {
                stands.remove(&key(*gone));
            }
            done.push(one);
        } else {
            stands.insert(key(*at), way.len());
        }
        way.push(*at);
    }
    done.push(way);
    (done, touch)
}
