//! The sight gauge on screen: the tank upright, to scale, with its layers and marks.

use egui::{Color32, CornerRadius, FontId, Pos2, Rect, Sense, Stroke, StrokeKind, Ui, Vec2};
use tankard_core::farm::card::Gauge;
use tankard_core::t;

use crate::look;

/// Height of a line of text beside the tank.
const LINE: f32 = 16.0;
/// Least height of a product's layer: thinner ones could not be seen, nor could a dry product, which takes no room.
const THIN: f32 = 6.0;

/// Text beside the tank.
struct Label {
    /// Where its middle stands.
    at: f32,
    /// The height on the tank it belongs to.
    mark: f32,
    lines: Vec<(String, FontId, Color32)>,
}

impl Label {
    fn half(&self) -> f32 {
        LINE * 0.5 * self.lines.len() as f32
    }
}

/// Draws a gauge into the room there is; `full` is what the tank holds, in words.
pub fn show(ui: &mut Ui, gauge: &Gauge, full: &str, size: Vec2) {
    let colours = look::colours(ui);
    let (rect, response) = ui.allocate_exact_size(size, Sense::hover());
    response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Image, true, spoken(gauge, full)));
    let painter = ui.painter_at(rect.expand(2.0));
    let tank = Rect::from_min_max(
        rect.min + Vec2::new(2.0, 10.0),
        Pos2::new(rect.left() + (size.x * 0.27).clamp(40.0, 90.0), rect.bottom() - 4.0),
    );
    let height = |share: f64| {
        // A share lies between 0 and 1, which both types hold.
        #[allow(clippy::cast_possible_truncation)]
        let share = share as f32;
        tank.bottom() - tank.height() * share
    };
    painter.rect_filled(tank, 6, colours.sheet);
    let mut labels: Vec<Label> = Vec::new();
    let mut products = 0;
    let mut drawn = tank.bottom();
    for layer in &gauge.layers {
        let top = match layer.number {
            Some(_) => height(layer.to).min(drawn - THIN),
            None => height(layer.to).min(drawn),
        };
        let band = Rect::from_min_max(Pos2::new(tank.left(), top), Pos2::new(tank.right(), drawn));
        let fill = if layer.number.is_none() {
            colours.selected
        } else {
            products += 1;
            colours.layers.get((products - 1) % colours.layers.len()).copied().unwrap_or(colours.selected)
        };
        let foot = CornerRadius { sw: 6, se: 6, ..CornerRadius::ZERO };
        painter.rect_filled(band, if drawn >= tank.bottom() { foot } else { CornerRadius::ZERO }, fill);
        painter.hline(tank.x_range(), top, Stroke::new(1.0, colours.soft));
        labels.push(match layer.number {
            Some(number) => Label {
                at: band.center().y,
                mark: band.center().y,
                lines: vec![
                    (format!("{number}  {}", layer.amount), look::gauge_number(), colours.ink),
                    (layer.label.clone(), look::gauge_font(), colours.soft),
                ],
            },
            None => Label { at: top, mark: top, lines: vec![(layer.label.clone(), look::gauge_font(), colours.water)] },
        });
        drawn = top;
    }
    painter.rect_stroke(tank, 6, Stroke::new(2.0, colours.ink), StrokeKind::Middle);
    spread(&mut labels, rect.top() + 2.0, rect.bottom() - 2.0);
    for label in labels {
        let from = Pos2::new(tank.right() + 1.0, label.mark);
        let to = Pos2::new(tank.right() + 12.0, label.at);
        painter.line_segment([from, to], Stroke::new(1.0, colours.soft));
        let room = rect.right() - to.x - 4.0;
        let mut line_at = label.at - label.half();
        for (text, font, colour) in label.lines {
            let mut job = egui::text::LayoutJob::simple_singleline(text, font, colour);
            job.wrap = egui::text::TextWrapping::truncate_at_width(room);
            let galley = painter.layout_job(job);
            let at = Pos2::new(to.x + 4.0, line_at);
            if galley.elided {
                let whole = galley.text().to_owned();
                let rect = Rect::from_min_size(at, galley.size());
                ui.interact(rect, response.id.with(&whole), Sense::hover()).on_hover_text(whole);
            }
            painter.galley(at, galley, colour);
            line_at += LINE;
        }
    }
}

/// Moves labels apart, from the bottom up, so that none covers another and all stay in the room.
fn spread(labels: &mut [Label], top: f32, bottom: f32) {
    let mut limit = bottom;
    for label in labels.iter_mut() {
        label.at = label.at.min(limit - label.half());
        limit = label.at - label.half();
    }
    // Those that were pushed out at the top push the ones below them down again.
    let mut limit = top;
    for label in labels.iter_mut().rev() {
        label.at = label.at.max(limit + label.half());
        limit = label.at + label.half();
    }
}

fn spoken(gauge: &Gauge, full: &str) -> String {
    let layers: Vec<String> =
        gauge.layers.iter().map(|layer| format!("{} {}", layer.amount, layer.label).trim().to_owned()).collect();
    t!("parts-sight-gauge-of-a-tank-of", full = full, layers = layers.join(", "))
}
