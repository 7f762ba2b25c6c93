//! A piece of ground drawn small.

use egui::{Pos2, Rect, Stroke, Ui, Vec2};
use geo::{Coord, CoordsIter, Geometry, LineString};
use tankard_core::farm::Shape;

use crate::look;

/// How large it is.
pub(super) const SIZE: Vec2 = Vec2::new(52.0, 40.0);
/// No more points of a line are drawn; there is no room to tell more apart.
const POINTS: usize = 200;

/// The lines of a shape, each point as a share of its longer side from the upper left corner, and its points.
#[derive(Debug)]
pub(super) struct Thumb {
    lines: Vec<Vec<Vec2>>,
    points: Vec<Vec2>,
}

impl Thumb {
    /// A shape, with its longitudes as long as they are at its latitude.
    pub(super) fn of(shape: &Shape) -> Self {
        let bounds = shape.bounds();
        let shrink = bounds.center().y.to_radians().cos().max(0.01);
        let wide = (bounds.width() * shrink).max(1e-9);
        let tall = bounds.height().max(1e-9);
        // The box has a shape of its own, and what is drawn stands in its middle.
        let unit = (wide / f64::from(SIZE.x)).max(tall / f64::from(SIZE.y));
        #[allow(clippy::cast_possible_truncation)] // A share of a small box.
        let at = |coord: Coord<f64>| {
            let east = (coord.x - bounds.center().x) * shrink / unit / f64::from(SIZE.x);
            let south = (bounds.center().y - coord.y) / unit / f64::from(SIZE.y);
            Vec2::new(east as f32, south as f32)
        };
        let line = |line: &LineString<f64>| -> Vec<Vec2> {
            let step = line.0.len().div_ceil(POINTS).max(1);
            let mut points: Vec<Vec2> = line.0.iter().step_by(step).map(|coord| at(*coord)).collect();
            points.extend(line.0.last().map(|coord| at(*coord)));
            points
        };
        let (mut lines, mut points) = (Vec::new(), Vec::new());
        match shape.geometry() {
            Geometry::LineString(one) => lines.push(line(one)),
            Geometry::MultiLineString(all) => lines.extend(all.iter().map(line)),
            _ => match shape.polygons() {
                Some(all) => {
                    for polygon in &all {
                        lines.push(line(polygon.exterior()));
                        lines.extend(polygon.interiors().iter().map(line));
                    }
                }
                None => points.extend(shape.geometry().coords_iter().take(POINTS).map(at)),
            },
        }
        Self { lines, points }
    }

    /// Draws it.
    pub(super) fn show(&self, ui: &mut Ui) {
        let (rect, _) = ui.allocate_exact_size(SIZE, egui::Sense::hover());
        let colours = look::colours(ui);
        let inner = Rect::from_center_size(rect.center(), SIZE - Vec2::splat(6.0));
        let put = |at: &Vec2| -> Pos2 { inner.center() + *at * inner.size() };
        for line in &self.lines {
            ui.painter().line(line.iter().map(put).collect(), Stroke::new(1.5, colours.water));
        }
        for point in &self.points {
            ui.painter().circle_filled(put(point), 2.5, colours.water);
        }
    }
}
