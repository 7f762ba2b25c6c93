//! How the page of a record is laid out: sections, labelled boxes side by side, rows in columns, soft lines under them.

use egui::{Align, Layout, Ui, Vec2};
use tankard_core::farm::Id;

use crate::look;
use crate::parts::boxes;

/// Width of a label before a box.
pub(super) const LABEL: f32 = 86.0;
/// Width of a box beside a label.
pub(super) const BOX: f32 = 150.0;
/// Width of a box for a short quantity.
pub(super) const SHORT: f32 = 100.0;
/// Height of a line of soft words under a row.
const SOFT: f32 = 16.0;
/// Width of the act that takes a row away.
pub(super) const TAKE: f32 = 56.0;

pub(super) fn plain(ui: &mut Ui, name: &str, value: &mut String) {
    let width = BOX.min(ui.available_width());
    boxes::text(ui, name, value, width);
}

/// Closer than a twentieth of a per cent, which is how it would be shown.
pub(super) fn as_planned(ratio: f64) -> bool {
    (ratio - 1.0).abs() < 0.000_5
}

/// What was planned, and how far from it the record is.
pub(super) fn beside_plan(planned: &str, ratio: Option<f64>) -> String {
    match ratio {
        Some(ratio) if as_planned(ratio) => "as planned".to_owned(),
        Some(ratio) => {
            let sign = if ratio > 1.0 { "+" } else { "–" };
            format!("planned {planned}, {sign}{:.1} %", (ratio - 1.0).abs() * 100.0)
        }
        None => format!("planned {planned}"),
    }
}

pub(super) fn section(ui: &mut Ui, title: &str) {
    section_with(ui, title, |_| {});
}

pub(super) fn section_with(ui: &mut Ui, title: &str, add: impl FnOnce(&mut Ui)) {
    ui.add_space(look::GRID);
    let line = ui.available_rect_before_wrap();
    ui.painter().hline(line.x_range(), line.top(), egui::Stroke::new(1.0, look::colours(ui).hairline));
    ui.add_space(6.0);
    ui.horizontal(|ui| {
        ui.label(look::heading(title));
        add(ui);
    });
}

/// Two labelled boxes side by side.
pub(super) fn pair<L, R>(
    ui: &mut Ui,
    left: (&str, impl FnOnce(&mut Ui) -> L),
    right: (&str, impl FnOnce(&mut Ui) -> R),
) {
    let width = (ui.available_width() - 16.0) / 2.0;
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 8.0;
        slot(ui, width, |ui| labelled(ui, left.0, left.1));
        slot(ui, width, |ui| labelled(ui, right.0, right.1));
    });
}

pub(super) fn labelled<R>(ui: &mut Ui, label: &str, add: impl FnOnce(&mut Ui) -> R) {
    slot(ui, LABEL, |ui| ui.label(look::soft(ui, label)));
    add(ui);
}

/// A line of less weight under a row: words under its first column, words under its second.
pub(super) fn soft_line(ui: &mut Ui, first: f32, left: &str, right: &str) {
    ui.scope(|ui| {
        ui.spacing_mut().interact_size.y = SOFT;
        ui.horizontal(|ui| {
            slot_of(ui, Vec2::new(first, SOFT), |ui| ui.add(egui::Label::new(look::soft(ui, left)).truncate()));
            ui.label(look::soft(ui, right));
        });
    });
}

/// Room of a fixed width in a row.
pub(super) fn slot<R>(ui: &mut Ui, width: f32, add: impl FnOnce(&mut Ui) -> R) {
    slot_of(ui, Vec2::new(width, look::ROW), add);
}

pub(super) fn slot_of<R>(ui: &mut Ui, size: Vec2, add: impl FnOnce(&mut Ui) -> R) {
    ui.allocate_ui_with_layout(size, Layout::left_to_right(Align::Center), |ui| {
        ui.set_min_width(size.x);
        ui.set_max_width(size.x);
        add(ui);
    });
}

pub(super) fn captions(ui: &mut Ui, columns: &[(&str, f32)]) {
    ui.horizontal(|ui| {
        ui.spacing_mut().interact_size.y = SOFT;
        for (text, width) in columns {
            slot_of(ui, Vec2::new(*width, SOFT), |ui| ui.label(look::soft(ui, *text)));
        }
    });
}

/// The act that takes a row away.
pub(super) fn take(ui: &mut Ui, what: &str) -> bool {
    boxes::act(ui, "Remove").accessible_name(format!("Remove {what}")).clicked()
}

/// A choice that adds what is chosen.
pub(super) fn add(ui: &mut Ui, prompt: &str, all: &[Id], name: impl Fn(&Id) -> Option<String>) -> Option<Id> {
    if all.is_empty() {
        return None;
    }
    ui.add_space(2.0);
    let mut picked = Id::new();
    let say = |id: &Id| name(id).unwrap_or_else(|| prompt.to_owned());
    boxes::choice(ui, prompt.trim_end_matches('…'), &mut picked, all, say, 180.0);
    (!picked.is_empty()).then_some(picked)
}
