//! The ground of the farm laid flat for drawing: once for each shape, with fewer points the farther away it is seen from.

use std::cell::OnceCell;
use std::collections::HashMap;
use std::rc::Rc;

use geo::{BoundingRect, Coord, Geometry, LineString, Polygon, Simplify};
use tankard_core::farm::{Farm, Id, Shape};
use tankard_core::ground::projection::Projection;

/// Metres east and north of the middle of the projection.
pub(super) type Spot = [f32; 2];

/// How fine each level is, in metres.
const LEVELS: [f32; 6] = [0.0, 0.5, 2.0, 8.0, 32.0, 128.0];
/// How much of a point of the screen may be left out.
const FINE: f64 = 0.6;
/// The projection is kept while the farm lies within so many metres of its middle, so that no shape is laid flat anew.
const NEAR: f32 = 60_000.0;

/// The least and the largest of some places.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Bounds {
    pub(super) west: f32,
    pub(super) south: f32,
    pub(super) east: f32,
    pub(super) north: f32,
}

impl Bounds {
    /// Of nothing.
    pub(super) const NONE: Self =
        Self { west: f32::INFINITY, south: f32::INFINITY, east: f32::NEG_INFINITY, north: f32::NEG_INFINITY };

    pub(super) fn is_none(&self) -> bool {
        self.west > self.east
    }

    pub(super) fn add(&mut self, [x, y]: Spot) {
        *self =
            Self { west: self.west.min(x), south: self.south.min(y), east: self.east.max(x), north: self.north.max(y) };
    }

    pub(super) fn join(&mut self, other: &Self) {
        if !other.is_none() {
            self.add([other.west, other.south]);
            self.add([other.east, other.north]);
        }
    }

    pub(super) fn meets(&self, other: &Self) -> bool {
        self.west <= other.east && other.west <= self.east && self.south <= other.north && other.south <= self.north
    }

    pub(super) fn holds(&self, [x, y]: Spot) -> bool {
        (self.west..=self.east).contains(&x) && (self.south..=self.north).contains(&y)
    }

    pub(super) fn width(&self) -> f32 {
        (self.east - self.west).max(0.0)
    }

    pub(super) fn height(&self) -> f32 {
        (self.north - self.south).max(0.0)
    }

    pub(super) fn middle(&self) -> Spot {
        [f32::midpoint(self.west, self.east), f32::midpoint(self.south, self.north)]
    }
}

/// Polygons as they are drawn from one distance.
#[derive(Default)]
pub(super) struct Level {
    /// All rings, without the last point that is the first again.
    pub(super) rings: Vec<Vec<Spot>>,
    /// The points of all rings, one after another.
    pub(super) points: Vec<Spot>,
    /// Three places in `points` for each triangle.
    pub(super) triangles: Vec<u32>,
}

/// A shape laid flat.
pub(super) struct Piece {
    pub(super) shape: Shape,
    pub(super) bounds: Bounds,
    /// Where its name stands.
    pub(super) label: Spot,
    /// The room for its name there, from west to east.
    pub(super) room: f32,
    pub(super) dots: Vec<Spot>,
    pub(super) lines: Vec<Vec<Spot>>,
    polygons: Vec<Polygon<f32>>,
    levels: [OnceCell<Level>; LEVELS.len()],
}

impl Piece {
    fn of(shape: &Shape, flat: &Projection) -> Self {
        let mut piece = Self {
            shape: shape.clone(),
            bounds: Bounds::NONE,
            label: [0.0; 2],
            room: 0.0,
            dots: Vec::new(),
            lines: Vec::new(),
            polygons: Vec::new(),
            levels: Default::default(),
        };
        let line = |line: &LineString<f64>| line.0.iter().map(|at| spot(flat.to_plane(*at))).collect::<Vec<_>>();
        match shape.geometry() {
            Geometry::Point(at) => piece.dots.push(spot(flat.to_plane(at.0))),
            Geometry::MultiPoint(all) => piece.dots = all.0.iter().map(|at| spot(flat.to_plane(at.0))).collect(),
            Geometry::LineString(one) => piece.lines.push(line(one)),
            Geometry::MultiLineString(all) => piece.lines = all.0.iter().map(line).collect(),
            Geometry::Polygon(one) => piece.polygons.push(polygon(one, flat)),
            Geometry::MultiPolygon(all) => piece.polygons = all.0.iter().map(|one| polygon(one, flat)).collect(),
            _ => {}
        }
        for at in piece.dots.iter().chain(piece.lines.iter().flatten()) {
            piece.bounds.add(*at);
        }
        for rect in piece.polygons.iter().filter_map(BoundingRect::bounding_rect) {
            piece.bounds.add([rect.min().x, rect.min().y]);
            piece.bounds.add([rect.max().x, rect.max().y]);
        }
        (piece.label, piece.room) = piece.widest();
        piece
    }

    /// As it is drawn at so many metres a point.
    pub(super) fn at(&self, metres: f64) -> &Level {
        let level = LEVELS.iter().rposition(|fine| f64::from(*fine) <= metres * FINE).unwrap_or_default();
        let fine = LEVELS.get(level).copied().unwrap_or_default();
        let Some(kept) = self.levels.get(level) else { return self.finest() };
        kept.get_or_init(|| self.level(fine))
    }

    /// As it is, with all its points.
    pub(super) fn finest(&self) -> &Level {
        let [finest, ..] = &self.levels;
        finest.get_or_init(|| self.level(0.0))
    }

    fn level(&self, fine: f32) -> Level {
        let mut level = Level::default();
        let mut cutter = earcut::Earcut::new();
        let mut triangles: Vec<u32> = Vec::new();
        for polygon in &self.polygons {
            let plain = if fine > 0.0 { polygon.simplify(fine) } else { polygon.clone() };
            let first = u32::try_from(level.points.len()).unwrap_or_default();
            let mut points: Vec<Spot> = Vec::new();
            let mut holes: Vec<u32> = Vec::new();
            for ring in std::iter::once(plain.exterior()).chain(plain.interiors()) {
                let open = ring.0.split_last().map_or(&[][..], |(_, open)| open);
                let ring: Vec<Spot> = open.iter().map(|at| [at.x, at.y]).collect();
                if !points.is_empty() {
                    holes.push(u32::try_from(points.len()).unwrap_or_default());
                }
                points.extend(&ring);
                level.rings.push(ring);
            }
            cutter.earcut_slice(&points, &holes, &mut triangles);
            level.triangles.extend(triangles.iter().map(|at| at + first));
            level.points.append(&mut points);
        }
        level
    }

    /// All its points as they are, path by path: rings, lines, then the bare points; and whether the path closes.
    pub(super) fn paths(&self) -> impl Iterator<Item = (&[Spot], bool)> {
        let rings = self.finest().rings.iter().map(|ring| (ring.as_slice(), true));
        let lines = self.lines.iter().map(|line| (line.as_slice(), false));
        let dots = (!self.dots.is_empty()).then_some((self.dots.as_slice(), false));
        rings.chain(lines).chain(dots)
    }

    /// Whether a place lies inside its polygons.
    pub(super) fn holds(&self, at: Spot) -> bool {
        self.bounds.holds(at) && is_inside(&self.finest().rings, at)
    }

    /// The middle of the widest stretch on some lines from west to east, nearer the middle of it where two are alike; and how wide it is.
    fn widest(&self) -> (Spot, f32) {
        if self.polygons.is_empty() {
            // A line carries its name at its middle point.
            let middle = self.lines.first().and_then(|line| line.get(line.len() / 2)).or(self.dots.first()).copied();
            return (middle.unwrap_or([0.0; 2]), self.bounds.width());
        }
        let rings = || self.polygons.iter().flat_map(|one| std::iter::once(one.exterior()).chain(one.interiors()));
        let mut best = (self.bounds.middle(), 0.0_f32, 0.0_f32);
        for share in [0.5_f32, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74] {
            let y = self.bounds.south + self.bounds.height() * share;
            let mut crossings: Vec<f32> = rings()
                .flat_map(LineString::lines)
                .filter_map(|edge| {
                    let (from, to) = (edge.start, edge.end);
                    ((from.y > y) != (to.y > y)).then(|| from.x + (y - from.y) / (to.y - from.y) * (to.x - from.x))
                })
                .collect();
            crossings.sort_by(f32::total_cmp);
            for pair in crossings.chunks_exact(2) {
                let &[from, to] = pair else { continue };
                let worth = (to - from) * (1.0 - (share - 0.5).abs());
                if worth > best.2 {
                    best = ([f32::midpoint(from, to), y], to - from, worth);
                }
            }
        }
        (best.0, best.1)
    }
}

/// Whether a place lies inside some rings, by the even-odd rule.
pub(super) fn is_inside(rings: &[Vec<Spot>], [x, y]: Spot) -> bool {
    let mut inside = false;
    for ring in rings {
        let before = ring.iter().cycle().skip(ring.len().saturating_sub(1));
        for ([ax, ay], [bx, by]) in before.zip(ring) {
            if (*ay > y) != (*by > y) && x < (bx - ax) * (y - ay) / (by - ay) + ax {
                inside = !inside;
            }
        }
    }
    inside
}

#[allow(clippy::cast_possible_truncation)] // Metres of a farm.
pub(super) fn spot(at: Coord<f64>) -> Spot {
    [at.x as f32, at.y as f32]
}

pub(super) fn coord([x, y]: Spot) -> Coord<f64> {
    Coord { x: f64::from(x), y: f64::from(y) }
}

#[allow(clippy::cast_possible_truncation)] // Metres of a farm.
fn polygon(of: &Polygon<f64>, flat: &Projection) -> Polygon<f32> {
    let ring = |ring: &LineString<f64>| {
        let point = |at: &Coord<f64>| {
            let at = flat.to_plane(*at);
            Coord { x: at.x as f32, y: at.y as f32 }
        };
        LineString(ring.0.iter().map(point).collect())
    };
    Polygon::new(ring(of.exterior()), of.interiors().iter().map(ring).collect())
}

/// The farm's ground, kept from revision to revision.
pub(super) struct Land {
    revision: Option<u64>,
    pub(super) flat: Projection,
    /// The fields that have a boundary, in the order of the farm.
    pub(super) fields: Vec<(Id, Rc<Piece>)>,
    /// The surroundings, in the order of the farm.
    pub(super) beside: Vec<(Id, Rc<Piece>)>,
    /// Gateways with their field, and which of its own each is.
    pub(super) gateways: Vec<(Id, usize, Spot)>,
    /// All of it.
    pub(super) bounds: Bounds,
}

impl Default for Land {
    fn default() -> Self {
        Self {
            revision: None,
            flat: Projection::about(Coord { x: 0.0, y: 0.0 }),
            fields: Vec::new(),
            beside: Vec::new(),
            gateways: Vec::new(),
            bounds: Bounds::NONE,
        }
    }
}

impl Land {
    /// Takes up what the farm now holds. What has not changed is not laid flat again.
    pub(super) fn take_up(&mut self, farm: &Farm, revision: u64) {
        if self.revision == Some(revision) {
            return;
        }
        self.revision = Some(revision);
        self.lay(farm);
        let [x, y] = self.bounds.middle();
        let is_far = !self.bounds.is_none() && x.hypot(y) > NEAR;
        if is_far {
            let middle = self.flat.to_globe(coord([x, y]));
            self.begin_at(middle);
            self.lay(farm);
        } else if self.bounds.is_none()
            && let Some(position) = farm.place.as_ref().and_then(|place| place.position().ok())
        {
            self.begin_at(Coord { x: position.longitude.to_degrees(), y: position.latitude.to_degrees() });
        }
    }

    fn begin_at(&mut self, middle: Coord<f64>) {
        self.flat = Projection::about(middle);
        self.fields.clear();
        self.beside.clear();
    }

    fn lay(&mut self, farm: &Farm) {
        let flat = self.flat;
        let known = |all: &mut Vec<(Id, Rc<Piece>)>| all.drain(..).collect::<HashMap<_, _>>();
        let piece = |known: &HashMap<Id, Rc<Piece>>, id: &Id, shape: &Shape| {
            let same = known.get(id).filter(|piece| piece.shape == *shape).cloned();
            (id.clone(), same.unwrap_or_else(|| Rc::new(Piece::of(shape, &flat))))
        };
        let fields = known(&mut self.fields);
        let with_boundary = farm.fields.iter().filter_map(|(id, field)| Some((id, field.boundary.as_ref()?)));
        self.fields = with_boundary.map(|(id, shape)| piece(&fields, id, shape)).collect();
        let beside = known(&mut self.beside);
        self.beside = farm.surroundings.iter().map(|(id, one)| piece(&beside, id, &one.shape)).collect();
        self.gateways = farm
            .fields
            .iter()
            .flat_map(|(id, field)| field.gateways.iter().enumerate().map(move |(at, gateway)| (id, at, gateway)))
            .map(|(id, at, gateway)| (id.clone(), at, spot(flat.to_plane(gateway.at.bounds().center()))))
            .collect();
        self.bounds = Bounds::NONE;
        for (_, piece) in self.fields.iter().chain(&self.beside) {
            self.bounds.join(&piece.bounds);
        }
        for (.., at) in &self.gateways {
            self.bounds.add(*at);
        }
    }

    /// Another shape laid flat with it.
    pub(super) fn piece(&self, shape: &Shape) -> Rc<Piece> {
        Rc::new(Piece::of(shape, &self.flat))
    }

    /// A field's piece.
    pub(super) fn field(&self, id: &str) -> Option<&Rc<Piece>> {
        self.fields.iter().find(|(known, _)| known == id).map(|(_, piece)| piece)
    }
}

#[cfg(test)]
mod tests {
    use std::rc::Rc;

    use tankard_core::farm::{Farm, Field, Shape};
    use tankard_core::quantity::AsTyped;

    use super::Land;

    fn farm(boundary: &str) -> Farm {
        let mut farm = Farm::new("Test");
        let mut field = Field::new("Mill field", AsTyped::parse("74.6 ac").unwrap());
        field.boundary = Some(Shape::parse(boundary).unwrap());
        farm.fields.insert("mill".to_owned(), field);
        farm
    }

    /// A horseshoe with a hole: neither its middle nor its hole is ground.
    const HORSESHOE: &str = "POLYGON ((8.00 50.00, 8.03 50.00, 8.03 50.02, 8.02 50.02, 8.02 50.01, 8.01 50.01, 8.01 50.02, 8.00 50.02, 8.00 50.00), (8.014 50.003, 8.016 50.003, 8.016 50.005, 8.014 50.005, 8.014 50.003))";

    fn area(land: &Land) -> f64 {
        let level = land.fields[0].1.finest();
        let corner = |at: u32| level.points[at as usize].map(f64::from);
        level
            .triangles
            .chunks_exact(3)
            .map(|three| {
                let [[ax, ay], [bx, by], [cx, cy]] = [corner(three[0]), corner(three[1]), corner(three[2])];
                ((bx - ax) * (cy - ay) - (cx - ax) * (by - ay)).abs() / 2.0
            })
            .sum()
    }

    /// What is filled is the area on the ellipsoid, to a part in five hundred.
    #[test]
    fn concave_ground_with_a_hole_is_filled_as_it_is() {
        let farm = farm(HORSESHOE);
        let mut land = Land::default();
        land.take_up(&farm, 1);
        let wanted = farm.fields["mill"].boundary.as_ref().unwrap().area().to_square_metres();
        assert!((area(&land) / wanted - 1.0).abs() < 0.002, "{} {wanted}", area(&land));
        let piece = &land.fields[0].1;
        let at = |x: f64, y: f64| super::spot(land.flat.to_plane(geo::Coord { x, y }));
        assert!(piece.holds(at(8.005, 50.015)) && piece.holds(piece.label));
        assert!(!piece.holds(at(8.015, 50.015)) && !piece.holds(at(8.015, 50.004)));
    }

    #[test]
    fn what_has_not_changed_is_not_laid_flat_again() {
        let mut farm = farm(HORSESHOE);
        let mut land = Land::default();
        land.take_up(&farm, 1);
        let before = Rc::clone(&land.fields[0].1);
        farm.fields["mill"].crop = "corn".to_owned();
        land.take_up(&farm, 2);
        assert!(Rc::ptr_eq(&before, &land.fields[0].1));
        farm.fields["mill"].boundary = Some(Shape::parse("POLYGON ((8 50, 8.01 50, 8.01 50.01, 8 50))").unwrap());
        land.take_up(&farm, 3);
        assert!(!Rc::ptr_eq(&before, &land.fields[0].1));
    }
}
