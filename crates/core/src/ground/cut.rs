//! Cutting strips out of a boundary, and which way from it something lies.
//!
//! All is done on the plane of the boundary. A strip is what of the field lies in the sum, point by point, of what is drawn and a
//! figure round it: a disc as wide as the strip, or, down the wind alone, the sector of that disc that lies up the wind. From there
//! going down the wind comes to it within the width. Both figures are drawn round their arcs, so that a strip is never narrower than
//! asked; it is wider by a thousandth at most.

use std::sync::{Arc, Mutex, PoisonError};

use geo::{
    Area as _, BooleanOps, BoundingRect, Contains, ConvexHull, Coord, Distance, Euclidean, Geometry, HasDimensions,
    Intersects, Length as _, Line, LineString, MultiPoint, MultiPolygon, Polygon, Rect, unary_union,
};

use super::directions::Directions;
use super::plane::Plane;
use crate::farm::Shape;
use crate::quantity::{Area, Bearing, Length};
use crate::weather::practice::toward;

/// Degrees of an arc that a straight line stands for.
const STEP: f64 = 5.0;

/// Square metres that are left of rounding where a strip just touches the field, or all but takes it: about a square foot.
const SLIVER: f64 = 0.1;

/// What is left out of a field for a strip.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Part {
    /// To what it is kept.
    pub(crate) to: Shape,
    pub(crate) width: Length,
    /// Where the wind comes from; `None` for all round.
    pub(crate) wind: Option<Directions>,
}

/// What strips take of a field.
#[derive(Clone, Debug)]
pub(crate) struct Cut {
    /// `None` where they take nothing.
    pub(crate) shape: Option<Shape>,
    pub(crate) area: Area,
    /// How much of the field's edge lies in them.
    pub(crate) edge: Length,
    /// Nothing of the field lies outside of them.
    pub(crate) takes_all: bool,
    /// The ground, in the field and beyond, that lies too near.
    zone: MultiPolygon<f64>,
}

/// How something lies to a field.
#[derive(Clone, Debug)]
pub(crate) struct Beside {
    /// Nothing where it lies in it or touches it.
    pub(crate) distance: Length,
    /// In which directions it lies, seen from the ground from which it is within reach.
    pub(crate) directions: Directions,
    /// In which direction it lies where it is nearest.
    pub(crate) nearest: Bearing,
}

/// A boundary on its plane. What was cut out of it once is kept, since a plan is made anew with each key: the same strips of the same
/// boundary are asked for again and again.
#[derive(Debug)]
pub(crate) struct OnPlane {
    plane: Plane,
    polygons: MultiPolygon<f64>,
    bounds: Rect<f64>,
    /// Longitudes and latitudes; `None` where a window of these says nothing: over 180 degrees, or at a pole.
    window: Option<Rect<f64>>,
    cuts: Memo<Vec<Part>, Arc<Cut>>,
    beside: Memo<Question, Option<Arc<Beside>>>,
    distances: Memo<(Shape, Length), Option<Length>>,
}

/// Strips left out before, what is looked for and within which reach.
type Question = (Vec<Part>, Shape, Length);

/// As many answers are kept as a field has rules and things that may lie beside it, and some more for another wind.
const KEPT: usize = 512;

/// Answers by what was asked, the oldest first.
type Memo<K, V> = Mutex<Vec<(K, V)>>;

fn kept<K: PartialEq, V: Clone>(memo: &Memo<K, V>, key: K, make: impl FnOnce(&K) -> V) -> V {
    let lock = || memo.lock().unwrap_or_else(PoisonError::into_inner);
    if let Some((_, value)) = lock().iter().find(|(other, _)| *other == key) {
        return value.clone();
    }
    let value = make(&key);
    let mut all = lock();
    if all.len() >= KEPT {
        all.remove(0);
    }
    all.push((key, value.clone()));
    value
}

/// What of a shape lies near a field, on its plane.
struct Near {
    /// Edges; a point is one without length.
    lines: Vec<Line<f64>>,
    polygons: MultiPolygon<f64>,
}

impl OnPlane {
    /// Of a boundary; `None` where it has no ground on its plane.
    pub(crate) fn of(shape: &Shape) -> Option<Self> {
        let plane = Plane::at(shape.ball());
        let polygons = plane.polygons(&shape.polygons()?);
        let (bounds, globe) = (polygons.bounding_rect()?, shape.bounds());
        let window = (globe.width() < 180.0 && globe.min().y > -89.0 && globe.max().y < 89.0).then_some(globe);
        Some(Self {
            plane,
            polygons,
            bounds,
            window,
            cuts: Mutex::default(),
            beside: Mutex::default(),
            distances: Mutex::default(),
        })
    }

    /// What strips take, together.
    pub(crate) fn cut(&self, parts: &[Part]) -> Arc<Cut> {
        kept(&self.cuts, parts.to_vec(), |parts| Arc::new(self.cut_anew(parts)))
    }

    fn cut_anew(&self, parts: &[Part]) -> Cut {
        let (mut pieces, mut inside) = (Vec::new(), Vec::new());
        for part in parts.iter().filter(|part| !part.width.is_zero()) {
            let near = self.near(&part.to, part.width.to_metres());
            for figure in figures(part.width.to_metres(), part.wind.as_ref()) {
                pieces.extend(near.lines.iter().map(|line| sum(line, &figure)));
            }
            inside.push(near.polygons);
        }
        let mut zone = unary_union(&pieces);
        for polygons in inside.iter().filter(|polygons| !polygons.is_empty()) {
            zone = zone.union(polygons);
        }
        let on_plane = if zone.is_empty() { zone.clone() } else { self.polygons.intersection(&zone) };
        let area = on_plane.unsigned_area();
        if area < SLIVER {
            return Cut {
                shape: None,
                area: Area::ZERO,
                edge: Length::ZERO,
                takes_all: false,
                zone: MultiPolygon(Vec::new()),
            };
        }
        let edge = self.rings().flat_map(LineString::lines).map(|edge| length_within(&edge, &zone)).sum();
        let globe = self.plane.to_globe(&on_plane);
        let shape = Shape::new(match <[Polygon<f64>; 1]>::try_from(globe.0) {
            Ok([one]) => Geometry::Polygon(one),
            Err(several) => Geometry::MultiPolygon(MultiPolygon(several)),
        });
        let takes_all = self.polygons.unsigned_area() - area < SLIVER;
        let (area, edge) = (Area::from_square_metres(area), Length::from_metres(edge));
        Cut { shape: shape.ok(), area, edge, takes_all, zone }
    }

    fn rings(&self) -> impl Iterator<Item = &LineString<f64>> {
        self.polygons.iter().flat_map(|one| std::iter::once(one.exterior()).chain(one.interiors()))
    }

    /// How something lies to the field, seen from what strips leave of it; `None` where it lies out of reach of that.
    pub(crate) fn beside(&self, without: &[Part], what: &Shape, reach: Length) -> Option<Arc<Beside>> {
        kept(&self.beside, (without.to_vec(), what.clone(), reach), |(without, what, reach)| {
            self.look(without, what, *reach).map(Arc::new)
        })
    }

    /// How far something lies from the field; `None` where it lies out of reach.
    pub(crate) fn distance(&self, what: &Shape, reach: Length) -> Option<Length> {
        kept(&self.distances, (what.clone(), reach), |(what, reach)| {
            let near = self.near(what, reach.to_metres());
            if near.polygons.intersects(&self.polygons) {
                return Some(Length::ZERO);
            }
            let lines = near.lines.iter().map(|line| Euclidean.distance(line, &self.polygons));
            lines.reduce(f64::min).filter(|distance| *distance <= reach.to_metres()).map(Length::from_metres)
        })
    }

    fn look(&self, without: &[Part], what: &Shape, reach: Length) -> Option<Beside> {
        let (near, metres) = (self.near(what, reach.to_metres()), reach.to_metres());
        let cut = (!without.is_empty()).then(|| self.cut(without));
        // By the zone and not by what it takes: the edge of the field would leave slivers of that.
        let mut ground = match cut {
            Some(cut) if !cut.zone.is_empty() => self.polygons.difference(&cut.zone),
            _ => self.polygons.clone(),
        };
        ground.0.retain(|polygon| polygon.unsigned_area() > SLIVER);
        if ground.is_empty() {
            return None;
        }
        let of_lines = near.lines.iter().map(|line| Euclidean.distance(line, &ground)).reduce(f64::min);
        let touches = near.polygons.intersects(&ground);
        let distance = if touches { 0.0 } else { of_lines.filter(|distance| *distance <= metres)? };
        // Ground that it lies on looks at it from a hand's breadth off, lest it lie nowhere.
        let gap = (metres / 20.0).clamp(0.01, 0.3);
        let open = if distance <= gap {
            let discs = figures(gap, None);
            let touching = near.lines.iter().filter(|line| Euclidean.distance(*line, &ground) <= gap);
            let on_it: Vec<Polygon<f64>> = touching.flat_map(|line| discs.iter().map(|disc| sum(line, disc))).collect();
            let mut hidden = unary_union(&on_it);
            if !near.polygons.is_empty() {
                hidden = hidden.union(&near.polygons);
            }
            ground.difference(&hidden)
        } else {
            ground
        };
        if open.is_empty() {
            let (distance, nearest) = (Length::ZERO, Bearing::from_degrees(0.0));
            return Some(Beside { distance, directions: Directions::all(), nearest });
        }
        let edges = open.iter().flat_map(|one| std::iter::once(one.exterior()).chain(one.interiors()));
        let edges: Vec<Line<f64>> = edges.flat_map(LineString::lines).collect();
        let (mut arcs, mut shortest) = (Vec::new(), Coord { x: f64::INFINITY, y: 0.0 });
        for line in &near.lines {
            let around = grown(line.bounding_rect(), metres);
            for edge in edges.iter().filter(|edge| around.intersects(&edge.bounding_rect())) {
                arcs.extend(arc(edge, line, metres));
                let between = shortest_way(edge, line);
                if between.x.hypot(between.y) < shortest.x.hypot(shortest.y) {
                    shortest = between;
                }
            }
        }
        let nearest = Bearing::from_degrees(shortest.x.atan2(shortest.y).to_degrees());
        Some(Beside { distance: Length::from_metres(distance), directions: Directions::of(arcs), nearest })
    }

    /// What of a shape lies within so many metres of the field.
    fn near(&self, shape: &Shape, metres: f64) -> Near {
        let around = grown(self.bounds, metres);
        let window = self.window.map(|window| Window::round(window, metres));
        let (mut lines, mut polygons) = (Vec::new(), MultiPolygon(Vec::new()));
        let mut take = |from: Coord<f64>, to: Coord<f64>| {
            if window.as_ref().is_none_or(|window| window.may_hold(from, to)) {
                let line = Line::new(self.plane.on(from), self.plane.on(to));
                if around.intersects(&line.bounding_rect()) {
                    lines.push(line);
                }
            }
        };
        let mut of_line = |line: &LineString<f64>| line.lines().for_each(|line| take(line.start, line.end));
        match shape.geometry() {
            Geometry::Point(point) => take(point.0, point.0),
            Geometry::MultiPoint(points) => points.iter().for_each(|point| take(point.0, point.0)),
            Geometry::LineString(line) => of_line(line),
            Geometry::MultiLineString(all) => all.iter().for_each(of_line),
            Geometry::Polygon(_) | Geometry::MultiPolygon(_) => {
                let all = shape.polygons().unwrap_or(MultiPolygon(Vec::new()));
                all.iter().flat_map(|one| std::iter::once(one.exterior()).chain(one.interiors())).for_each(of_line);
                polygons = self.plane.polygons(&all);
            }
            _ => {}
        }
        Near { lines, polygons }
    }
}

/// Longitudes and latitudes round a field, by which it is quickly told what lies far off: a creek has many edges there.
struct Window {
    south: f64,
    north: f64,
    middle: f64,
    half: f64,
}

impl Window {
    /// So many metres wider than the field.
    fn round(field: Rect<f64>, metres: f64) -> Self {
        // A degree of latitude has 110,574 m at least.
        let more = metres / 110_000.0;
        let cos = (field.max().y.abs().max(field.min().y.abs()) + more).min(89.9).to_radians().cos();
        Self {
            south: field.min().y - more,
            north: field.max().y + more,
            middle: field.center().x,
            half: field.width() / 2.0 + more / cos,
        }
    }

    /// Whether an edge may come into it.
    fn may_hold(&self, from: Coord<f64>, to: Coord<f64>) -> bool {
        if (from.y < self.south && to.y < self.south) || (from.y > self.north && to.y > self.north) {
            return false;
        }
        let off = |x: f64| (x - self.middle) - 360.0 * ((x - self.middle) / 360.0).round();
        let (a, b) = (off(from.x), off(to.x));
        (a - b).abs() > 180.0 || !((a < -self.half && b < -self.half) || (a > self.half && b > self.half))
    }
}

/// How much of an edge lies in a zone, in metres.
fn length_within(edge: &Line<f64>, zone: &MultiPolygon<f64>) -> f64 {
    let (along, length) = (edge.end - edge.start, Euclidean.length(edge));
    let bounds = edge.bounding_rect();
    if length <= 0.0 || !zone.bounding_rect().is_some_and(|zone| zone.intersects(&bounds)) {
        return 0.0;
    }
    let cross = |a: Coord<f64>, b: Coord<f64>| a.x * b.y - a.y * b.x;
    let mut ends = vec![0.0, 1.0];
    for side in
        zone.iter().flat_map(|one| std::iter::once(one.exterior()).chain(one.interiors())).flat_map(LineString::lines)
    {
        let (other, off) = (side.end - side.start, side.start - edge.start);
        let turn = cross(along, other);
        if turn.abs() > f64::EPSILON {
            let (at, of_side) = (cross(off, other) / turn, cross(off, along) / turn);
            if (0.0..=1.0).contains(&at) && (0.0..=1.0).contains(&of_side) {
                ends.push(at);
            }
        }
    }
    ends.sort_by(f64::total_cmp);
    let pieces = ends.iter().zip(ends.iter().skip(1)).filter(|(from, to)| *to - *from > 1e-12);
    let inside = pieces.filter(|(from, to)| zone.contains(&(edge.start + along * f64::midpoint(**from, **to))));
    inside.map(|(from, to)| (to - from) * length).sum()
}

/// A window made larger on all sides.
fn grown(rect: Rect<f64>, by: f64) -> Rect<f64> {
    let by = Coord { x: by, y: by };
    Rect::new(rect.min() - by, rect.max() + by)
}

/// The figures whose sum with what is drawn is the zone of a strip: a disc, or the sectors up the wind, none wider than a third of a
/// turn, so that each bulges nowhere inward. Fields down the wind are those within as many degrees as the table of the weather says.
fn figures(metres: f64, wind: Option<&Directions>) -> Vec<Vec<Coord<f64>>> {
    let at = |degrees: f64, metres: f64| {
        let (east, north) = degrees.to_radians().sin_cos();
        Coord { x: east * metres, y: north * metres }
    };
    let rim = |from: f64, turn: f64| -> Vec<Coord<f64>> {
        let steps = parts_of(turn, STEP);
        let each = turn / f64::from(steps);
        let outer = metres / (each / 2.0).to_radians().cos();
        // Lines that touch the arc meet at these corners.
        (0..steps).map(|step| at(from + (f64::from(step) + 0.5) * each, outer)).collect()
    };
    let up = wind.map(|wind| wind.wider(toward())).filter(|up| !up.is_all());
    let Some(up) = up else { return vec![rim(0.0, 360.0)] };
    let mut all = Vec::new();
    for arc in up.arcs() {
        let pieces = parts_of(arc.to_degrees(), 120.0);
        let turn = arc.to_degrees() / f64::from(pieces);
        for piece in 0..pieces {
            let from = arc.from.to_degrees() + f64::from(piece) * turn;
            let mut figure = vec![Coord { x: 0.0, y: 0.0 }, at(from, metres)];
            figure.extend(rim(from, turn));
            figure.push(at(from + turn, metres));
            all.push(figure);
        }
    }
    all
}

/// Into how many equal parts a turn falls, none of more degrees than the most.
fn parts_of(turn: f64, most: f64) -> u32 {
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // Of 360 degrees at most.
    let parts = (turn / most).ceil() as u32;
    parts.max(1)
}

/// The sum, point by point, of a straight line and a figure that bulges nowhere inward.
fn sum(line: &Line<f64>, figure: &[Coord<f64>]) -> Polygon<f64> {
    let ends = if line.start == line.end { vec![line.start] } else { vec![line.start, line.end] };
    let points = ends.into_iter().flat_map(|end| figure.iter().map(move |at| end + *at));
    MultiPoint(points.map(Into::into).collect()).convex_hull()
}

/// The shortest way from one edge to another that it does not cross.
fn shortest_way(from: &Line<f64>, to: &Line<f64>) -> Coord<f64> {
    let foot = |at: Coord<f64>, on: &Line<f64>| {
        let (along, off) = (on.end - on.start, at - on.start);
        let square = along.x * along.x + along.y * along.y;
        let share = if square > 0.0 { ((off.x * along.x + off.y * along.y) / square).clamp(0.0, 1.0) } else { 0.0 };
        on.start + along * share
    };
    let ways = [
        foot(from.start, to) - from.start,
        foot(from.end, to) - from.end,
        to.start - foot(to.start, from),
        to.end - foot(to.end, from),
    ];
    ways.into_iter().min_by(|a, b| a.x.hypot(a.y).total_cmp(&b.x.hypot(b.y))).unwrap_or_default()
}

/// In which directions one edge lies from another, as far as it is within reach: where the arc begins and its turn in degrees.
fn arc(from: &Line<f64>, to: &Line<f64>, metres: f64) -> Option<(f64, f64)> {
    let corners = [to.start - from.start, to.end - from.start, to.end - from.end, to.start - from.end];
    let mut seen: Option<(f64, f64, f64)> = None;
    let mut see = |at: Coord<f64>| {
        let degrees = at.x.atan2(at.y).to_degrees();
        match &mut seen {
            None => seen = Some((degrees, 0.0, 0.0)),
            Some((first, left, right)) => {
                let turned = (degrees - *first + 180.0).rem_euclid(360.0) - 180.0;
                *left = left.min(turned);
                *right = right.max(turned);
            }
        }
    };
    for (at, corner) in corners.iter().enumerate() {
        if corner.x.hypot(corner.y) <= metres {
            see(*corner);
        }
        let along = *corners.get((at + 1) % 4)? - *corner;
        // Where the edge crosses the rim.
        let (a, b) = (along.x * along.x + along.y * along.y, corner.x * along.x + corner.y * along.y);
        let c = corner.x * corner.x + corner.y * corner.y - metres * metres;
        let root = b * b - a * c;
        if a > 0.0 && root >= 0.0 {
            for share in [(-b - root.sqrt()) / a, (-b + root.sqrt()) / a] {
                if (0.0..=1.0).contains(&share) {
                    see(*corner + along * share);
                }
            }
        }
    }
    let (first, left, right) = seen?;
    Some((first + left, right - left))
}

#[cfg(test)]
mod tests {
    use geo::{Coord, Line, Rect};

    use super::{Window, arc, figures, shortest_way};
    use crate::ground::directions::Directions;
    use crate::weather::practice::toward;

    /// Pairs of edges within a square of 100 m; any numbers do, these come by a common linear rule.
    fn pairs() -> Vec<(Line<f64>, Line<f64>)> {
        let mut state = 7_u32;
        let mut draw = || {
            state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            f64::from(state >> 16) / 655.36
        };
        let mut at = || Coord { x: draw(), y: draw() };
        (0..120).map(|_| (Line::new(at(), at()), Line::new(at(), at()))).collect()
    }

    /// From each of some points of one edge to each of some of the other; every way between them is near one of these.
    fn ways(from: &Line<f64>, to: &Line<f64>) -> Vec<Coord<f64>> {
        let of = |line: &Line<f64>, part: i32| line.start + (line.end - line.start) * (f64::from(part) / 50.0);
        (0..=50)
            .flat_map(|one| (0..=50).map(move |other| (one, other)))
            .map(|(one, other)| of(to, other) - of(from, one))
            .collect()
    }

    /// How far a way may be from the nearest of [`ways`].
    const NEAR: f64 = 3.0;

    /// The shortest way is one between the edges, and as short as the shortest of many.
    #[test]
    fn no_way_is_shorter_than_the_shortest() {
        for (from, to) in pairs() {
            let (found, all) = (shortest_way(&from, &to), ways(&from, &to));
            let least = all.iter().map(|way| way.x.hypot(way.y)).fold(f64::INFINITY, f64::min);
            // Edges that cross have none.
            if least < NEAR {
                continue;
            }
            let length = found.x.hypot(found.y);
            assert!(length < least + 1e-9 && length > least - NEAR, "{from:?} {to:?}: {length}, {least}");
            assert!(
                all.iter().any(|way| (way.x - found.x).hypot(way.y - found.y) < NEAR),
                "{from:?} {to:?}: {found:?}"
            );
        }
    }

    /// Every way within reach lies in the arc, and one lies at each of its ends.
    #[test]
    fn an_arc_holds_every_way_within_reach_and_no_more() {
        let mut looked_at = 0;
        for ((from, to), metres) in pairs().into_iter().zip([20.0, 35.0, 50.0, 80.0].into_iter().cycle()) {
            let all = ways(&from, &to);
            let length = |way: &Coord<f64>| way.x.hypot(way.y);
            if all.iter().any(|way| length(way) < NEAR) {
                continue;
            }
            let within: Vec<&Coord<f64>> = all.iter().filter(|way| length(way) <= metres).collect();
            let Some((first, turn)) = arc(&from, &to, metres) else {
                assert!(within.is_empty(), "{from:?} {to:?}");
                continue;
            };
            looked_at += 1;
            assert!((0.0..180.0).contains(&turn), "{turn}");
            for way in within {
                let along = (way.x.atan2(way.y).to_degrees() - first + 1e-6).rem_euclid(360.0);
                assert!(along <= turn + 2e-6, "{from:?} {to:?}: {along} of {turn}");
            }
            for end in [first, first + turn] {
                let (east, north) = end.to_radians().sin_cos();
                let at_end = |way: &&Coord<f64>| {
                    (way.x * north - way.y * east).abs() < NEAR && way.x * east + way.y * north > 0.0
                };
                assert!(all.iter().filter(at_end).any(|way| length(way) < metres + NEAR), "{from:?} {to:?}: {end}");
            }
        }
        assert!(looked_at > 30, "{looked_at}");
    }

    /// The sectors of a wide arc lie side by side from its one end to its other.
    #[test]
    fn sectors_lie_side_by_side() {
        let wind = Directions::of([(350.0, 160.0)]);
        let up = wind.wider(toward());
        let [whole] = up.arcs() else { panic!("{up:?}") };
        assert!(whole.to_degrees() > 120.0 && !up.is_all());
        let degrees = |at: &Coord<f64>| at.x.atan2(at.y).to_degrees();
        let mut at = whole.from.to_degrees();
        let all = figures(40.0, Some(&wind));
        assert!(all.len() > 1);
        for figure in &all {
            let (first, last) = (degrees(&figure[1]), degrees(figure.last().unwrap()));
            let off = (first - at).rem_euclid(360.0);
            assert!(off.min(360.0 - off) < 1e-9, "{first} for {at}");
            at += (last - first).rem_euclid(360.0);
        }
        assert!((at - whole.from.to_degrees() - whole.to_degrees()).abs() < 1e-9, "{at}");
    }

    /// At 60° a degree of longitude has half the metres of one at the equator: 111.3 km there. Across the date line it is as elsewhere.
    #[test]
    fn a_window_holds_what_lies_within_its_metres() {
        for middle in [10.0, 179.999, -179.999] {
            let at = |x: f64, y: f64| Coord { x, y };
            let window = Window::round(Rect::new(at(middle - 0.005, 59.99), at(middle + 0.005, 60.0)), 120.0);
            let east = |metres: f64| {
                let x: f64 = middle + 0.005 + metres / (111_320.0 * 0.5);
                if x > 180.0 { x - 360.0 } else { x }
            };
            let edge = |metres: f64| window.may_hold(at(east(metres), 59.995), at(east(metres), 59.996));
            assert!(edge(-100.0) && edge(0.0) && edge(115.0) && !edge(2000.0), "{middle}");
            let north = |metres: f64| at(middle, 60.0 + metres / 111_320.0);
            assert!(window.may_hold(north(115.0), north(115.0)) && !window.may_hold(north(2000.0), north(2000.0)));
        }
    }
}
