//! A small drawing of a field for paper: its edge, what stays unsprayed, its gateways and what lies near.

use geo::{
    BooleanOps, BoundingRect, Coord, Geometry, Intersects, LineString, MultiLineString, MultiPolygon, Polygon, Rect,
    Simplify,
};

use super::projection::Projection;
use crate::farm::{Field, Surrounding, SurroundingKind};
use crate::quantity::Length;

/// How many steps the longer side of the drawing has; what is finer is left out.
const STEPS: f64 = 400.0;
/// How much is shown about the field, as a share of its longer side, and at least, in metres.
const MARGIN: f64 = 0.15;
const LEAST_MARGIN: f64 = 20.0;

/// A place in the drawing, from its lower left corner.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spot {
    /// East of the corner.
    pub east: Length,
    /// North of the corner.
    pub north: Length,
}

/// A polygon in the drawing; the last point of a ring is its first.
#[derive(Clone, Debug, PartialEq)]
pub struct OutlinePolygon {
    /// Its edge.
    pub edge: Vec<Spot>,
    /// The edges of its holes.
    pub holes: Vec<Vec<Spot>>,
}

/// Something near the field, as far as it lies in the drawing.
#[derive(Clone, Debug, PartialEq)]
pub struct Near {
    /// What people call it.
    pub name: String,
    /// What it is.
    pub kind: SurroundingKind,
    /// Where it is points.
    pub points: Vec<Spot>,
    /// Where it is lines.
    pub lines: Vec<Vec<Spot>>,
    /// Where it is polygons.
    pub polygons: Vec<OutlinePolygon>,
}

/// A small drawing of a field, north at its top.
#[derive(Clone, Debug, PartialEq)]
pub struct Outline {
    /// From west to east.
    pub width: Length,
    /// From south to north.
    pub height: Length,
    /// The field.
    pub field: Vec<OutlinePolygon>,
    /// What of it stays unsprayed.
    pub unsprayed: Vec<OutlinePolygon>,
    /// The ways into it, with their names.
    pub gateways: Vec<(String, Spot)>,
    /// What lies near.
    pub near: Vec<Near>,
}

/// Draws a field with what of it stays unsprayed (on WGS 84, may be empty) and those of the farm's surroundings that lie in the
/// drawing. `None` where the field has no boundary.
pub fn outline<'a>(
    field: &Field,
    unsprayed: &MultiPolygon<f64>,
    surroundings: impl IntoIterator<Item = &'a Surrounding>,
) -> Option<Outline> {
    let boundary = field.boundary.as_ref()?;
    let polygons = boundary.polygons()?;
    let flat = Projection::about(boundary.bounds().center());
    let edge = flat.flat(&polygons);
    let bounds = edge.bounding_rect()?;
    let longer = bounds.width().max(bounds.height());
    let margin = (longer * MARGIN).max(LEAST_MARGIN);
    let frame = Rect::new(bounds.min() - Coord { x: margin, y: margin }, bounds.max() + Coord { x: margin, y: margin });
    let drawing = Drawing { corner: frame.min(), finest: frame.width().max(frame.height()) / STEPS, frame };
    let gateways = field.gateways.iter().filter_map(|gateway| {
        let Geometry::Point(point) = gateway.at.geometry() else { return None };
        let at = flat.to_plane(point.0);
        drawing.frame.intersects(&at).then(|| (gateway.name.clone(), drawing.spot(at)))
    });
    Some(Outline {
        width: Length::from_metres(frame.width()),
        height: Length::from_metres(frame.height()),
        gateways: gateways.collect(),
        field: drawing.polygons(&edge),
        unsprayed: drawing.polygons(&flat.flat(unsprayed)),
        near: surroundings.into_iter().filter_map(|near| drawing.near(near, &flat)).collect(),
    })
}

struct Drawing {
    frame: Rect<f64>,
    corner: Coord<f64>,
    finest: f64,
}

impl Drawing {
    fn spot(&self, at: Coord<f64>) -> Spot {
        let from = at - self.corner;
        Spot { east: Length::from_metres(from.x), north: Length::from_metres(from.y) }
    }

    fn line(&self, line: &LineString<f64>) -> Vec<Spot> {
        line.0.iter().map(|at| self.spot(*at)).collect()
    }

    fn polygons(&self, all: &MultiPolygon<f64>) -> Vec<OutlinePolygon> {
        let plain = all.iter().map(|one| one.simplify(self.finest));
        plain
            .map(|one: Polygon<f64>| OutlinePolygon {
                edge: self.line(one.exterior()),
                holes: one.interiors().iter().map(|hole| self.line(hole)).collect(),
            })
            .collect()
    }

    /// As far as it lies in the drawing; `None` where nothing of it does.
    fn near(&self, surrounding: &Surrounding, flat: &Projection) -> Option<Near> {
        let geometry = flat.flat(surrounding.shape.geometry());
        if !geometry.bounding_rect()?.intersects(&self.frame) {
            return None;
        }
        let mut near = Near {
            name: surrounding.name.clone(),
            kind: surrounding.kind,
            points: Vec::new(),
            lines: Vec::new(),
            polygons: Vec::new(),
        };
        let frame = self.frame.to_polygon();
        let mut lines = MultiLineString::new(Vec::new());
        match geometry {
            Geometry::Point(point) => near.points.push(self.spot(point.0)),
            Geometry::MultiPoint(points) => {
                let inside = points.0.iter().filter(|point| self.frame.intersects(*point));
                near.points = inside.map(|point| self.spot(point.0)).collect();
            }
            Geometry::LineString(line) => lines = frame.clip(&MultiLineString::new(vec![line]), false),
            Geometry::MultiLineString(all) => lines = frame.clip(&all, false),
            Geometry::Polygon(one) => near.polygons = self.polygons(&frame.intersection(&one)),
            Geometry::MultiPolygon(all) => near.polygons = self.polygons(&frame.intersection(&all)),
            _ => {}
        }
        near.lines = lines.iter().map(|line| self.line(&line.simplify(self.finest))).collect();
        (!near.points.is_empty() || !near.lines.is_empty() || !near.polygons.is_empty()).then_some(near)
    }
}

#[cfg(test)]
mod tests {
    use geo::MultiPolygon;

    use super::{Outline, outline};
    use crate::farm::{Field, Gateway, Shape, Surrounding, SurroundingKind};
    use crate::quantity::AsTyped;

    fn shape(text: &str) -> Shape {
        Shape::parse(text).unwrap()
    }

    fn field(boundary: &str) -> Field {
        let mut field = Field::new("Mill field", AsTyped::parse("74.6 ac").unwrap());
        field.boundary = Some(shape(boundary));
        field
    }

    fn surrounding(name: &str, text: &str) -> Surrounding {
        Surrounding { name: name.to_owned(), kind: SurroundingKind::Water, shape: shape(text), note: String::new() }
    }

    const SQUARE: &str = "POLYGON ((-96.4 41.2, -96.39 41.2, -96.39 41.21, -96.4 41.21, -96.4 41.2))";

    fn drawn(field: &Field, surroundings: &[Surrounding]) -> Outline {
        outline(field, &MultiPolygon(Vec::new()), surroundings).unwrap()
    }

    #[test]
    fn a_field_stands_in_its_frame() {
        let mut field = field(SQUARE);
        field.gateways = vec![Gateway { name: "road".to_owned(), at: shape("POINT (-96.4 41.205)") }];
        let outline = drawn(&field, &[]);
        // A hundredth of a degree is 1,110.6 m of latitude and 838.8 m of longitude there (WGS 84); 15 % of the longer side about it.
        assert!((outline.height.to_metres() - 1110.6 * 1.3).abs() < 1.5, "{:?}", outline.height);
        assert!((outline.width.to_metres() - (838.8 + 2.0 * 0.15 * 1110.6)).abs() < 1.5, "{:?}", outline.width);
        assert_eq!(outline.field.len(), 1);
        assert_eq!(outline.field[0].edge.len(), 5);
        let (name, gateway) = &outline.gateways[0];
        assert_eq!(name, "road");
        assert!((gateway.east.to_metres() - 0.15 * 1110.6).abs() < 1.0);
        assert!((gateway.north.to_metres() - outline.height.to_metres() / 2.0).abs() < 1.0);
    }

    #[test]
    fn a_field_without_a_boundary_has_no_drawing() {
        let bare = Field::new("Mill field", AsTyped::parse("74.6 ac").unwrap());
        assert_eq!(outline(&bare, &MultiPolygon(Vec::new()), []), None);
    }

    #[test]
    fn what_lies_near_is_drawn_as_far_as_the_frame() {
        let field = field(SQUARE);
        let creek = surrounding("Mill creek", "LINESTRING (-97 41.199, -95 41.199)");
        let far = surrounding("Far pond", "POLYGON ((-96.2 41.2, -96.19 41.2, -96.19 41.21, -96.2 41.2))");
        let wood = surrounding("Wood", "POLYGON ((-96.39 41.2, -96.3 41.2, -96.3 41.21, -96.39 41.21, -96.39 41.2))");
        let outline = drawn(&field, &[creek, far, wood]);
        let names: Vec<&str> = outline.near.iter().map(|near| near.name.as_str()).collect();
        assert_eq!(names, ["Mill creek", "Wood"]);
        let all = outline
            .near
            .iter()
            .flat_map(|near| near.lines.iter().flatten().chain(near.polygons.iter().flat_map(|polygon| &polygon.edge)));
        let mut points = 0;
        for spot in all {
            points += 1;
            assert!((-0.01..=outline.width.to_metres() + 0.01).contains(&spot.east.to_metres()), "{spot:?}");
            assert!((-0.01..=outline.height.to_metres() + 0.01).contains(&spot.north.to_metres()), "{spot:?}");
        }
        assert!(points >= 7, "{points}");
    }

    /// A boundary walked with a receiver has thousands of points; a drawing of a few centimetres shows some hundred.
    #[test]
    fn fine_detail_is_left_out() {
        let ring: Vec<String> = (0..=5000)
            .map(|at| {
                let turn = f64::from(at % 5000) / 5000.0 * std::f64::consts::TAU;
                format!("{} {}", -96.4 + 0.005 * turn.cos(), 41.2 + 0.004 * turn.sin())
            })
            .collect();
        let outline = drawn(&field(&format!("POLYGON (({}))", ring.join(", "))), &[]);
        let points = outline.field[0].edge.len();
        assert!((20..200).contains(&points), "{points}");
    }
}
