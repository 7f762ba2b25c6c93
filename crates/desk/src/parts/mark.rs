//! The shapes of the three levels: square Stop, triangle Check, dot Note. Drawn, since the face has no such glyphs.

use egui::{Color32, Label, Painter, Pos2, Rect, Response, Sense, Shape, Stroke, Ui, Vec2};
use tankard_core::finding::Level;

use crate::look;

/// Draws the mark of a level.
pub fn paint(painter: &Painter, centre: Pos2, level: Level, colour: Color32) {
    match level {
        Level::Stop => {
            painter.rect_filled(Rect::from_center_size(centre, Vec2::splat(7.0)), 0, colour);
        }
        Level::Check => {
            let corner = |x: f32, y: f32| centre + Vec2::new(x, y);
            painter.add(Shape::convex_polygon(
                vec![corner(0.0, -4.5), corner(4.5, 3.5), corner(-4.5, 3.5)],
                colour,
                Stroke::NONE,
            ));
        }
        Level::Note => {
            painter.circle_filled(centre, 2.5, colour);
        }
    }
}

/// A sentence with the mark of its level before it.
pub fn line(ui: &mut Ui, level: Level, text: &str) {
    ui.horizontal_top(|ui| {
        ui.spacing_mut().item_spacing.x = 4.0;
        show(ui, level);
        ui.add(Label::new(text).wrap());
    });
}

/// Room for a mark in a row, with the mark in it.
pub fn show(ui: &mut Ui, level: Level) -> Response {
    let colour = look::of_level(look::colours(ui), level);
    let (rect, response) = ui.allocate_exact_size(Vec2::new(12.0, 16.0), Sense::hover());
    paint(ui.painter(), rect.center(), level, colour);
    response
}
