//! The sight gauge on screen: the tank upright, to scale, with its layers and marks.

use egui::{Align2, Color32, CornerRadius, Pos2, Rect, Sense, Stroke, StrokeKind, Ui, Vec2};
use tankard_core::farm::card::Gauge;

use crate::look;

/// Least distance between two lines of text beside the tank.
const LINE: f32 = 17.0;

/// Draws a gauge into the room there is; `full` is what the tank holds, in words.
pub fn show(ui: &mut Ui, gauge: &Gauge, full: &str, size: Vec2) {
    let colours = look::colours(ui);
    let (rect, response) = ui.allocate_exact_size(size, Sense::hover());
    response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Image, true, spoken(gauge, full)));
    let painter = ui.painter_at(rect.expand(2.0));
    let tank = Rect::from_min_max(
        rect.min + Vec2::new(2.0, 10.0),
        Pos2::new(rect.left() + (size.x * 0.34).clamp(40.0, 90.0), rect.bottom() - 4.0),
    );
    let height = |share: f64| {
        // A share lies between 0 and 1, which both types hold.
        #[allow(clippy::cast_possible_truncation)]
        let share = share as f32;
        tank.bottom() - tank.height() * share
    };
    painter.rect_filled(tank, 6, colours.sheet);
    let mut labels: Vec<(f32, f32, String, Color32, bool)> = Vec::new();
    let mut products = 0;
    for layer in &gauge.layers {
        let (top, bottom) = (height(layer.to), height(layer.from));
        let band = Rect::from_min_max(Pos2::new(tank.left(), top), Pos2::new(tank.right(), bottom));
        let fill = match layer.number {
            None => colours.selected,
            Some(_) => {
                products += 1;
                colours.layers.get((products - 1) % colours.layers.len()).copied().unwrap_or(colours.selected)
            }
        };
        let rounding =
            if layer.from <= 0.0 { CornerRadius { sw: 6, se: 6, ..CornerRadius::ZERO } } else { CornerRadius::ZERO };
        painter.rect_filled(band, rounding, fill);
        painter.hline(tank.x_range(), top, Stroke::new(1.0, colours.soft));
        match layer.number {
            Some(number) => {
                if band.height() >= 13.0 {
                    painter.text(band.center(), Align2::CENTER_CENTER, number, look::gauge_number(), colours.ink);
                }
                let middle = f32::midpoint(top, bottom);
                labels.push((middle, middle, format!("{number}  {}", layer.label), colours.ink, true));
            }
            None => labels.push((top, top, layer.label.clone(), colours.water, false)),
        }
    }
    painter.rect_stroke(tank, 6, Stroke::new(2.0, colours.ink), StrokeKind::Middle);
    if gauge.layers.is_empty() {
        painter.text(
            tank.right_top() + Vec2::new(10.0, 0.0),
            Align2::LEFT_TOP,
            full,
            look::gauge_font(),
            colours.water,
        );
        return;
    }
    spread(&mut labels, rect.top() + 8.0, rect.bottom() - 8.0);
    for (at, mark, text, colour, _) in labels {
        let from = Pos2::new(tank.right() + 1.0, mark);
        let to = Pos2::new(tank.right() + 10.0, at);
        painter.line_segment([from, to], Stroke::new(1.0, colours.soft));
        let room = rect.right() - to.x - 4.0;
        let galley = painter.layout_job({
            let mut job = egui::text::LayoutJob::simple_singleline(text, look::gauge_font(), colour);
            job.wrap = egui::text::TextWrapping::truncate_at_width(room);
            job
        });
        painter.galley(Pos2::new(to.x + 4.0, at - galley.size().y / 2.0), galley, colour);
    }
}

/// Moves labels apart, from the bottom up, so that none covers another and all stay in the room.
fn spread(labels: &mut [(f32, f32, String, Color32, bool)], top: f32, bottom: f32) {
    let mut limit = bottom;
    for label in labels.iter_mut() {
        label.0 = label.0.min(limit).max(top);
        limit = label.0 - LINE;
    }
    // Those pushed against the top push the ones below them down again.
    let mut limit = top;
    for label in labels.iter_mut().rev() {
        label.0 = label.0.max(limit);
        limit = label.0 + LINE;
    }
}

fn spoken(gauge: &Gauge, full: &str) -> String {
    let layers: Vec<&str> = gauge.layers.iter().map(|layer| layer.label.as_str()).collect();
    format!("Sight gauge of a tank of {full}, from the bottom up: {}", layers.join(", "))
}
