//! What differs between two states of a farm, in lines, as it is shown before one takes the place of the other.

use egui::{Label, ScrollArea, Ui};
use tankard_core::t;

use crate::look;

/// How high the lines may stand at the foot of the window before they are rolled through.
const HIGHEST: f32 = 110.0;

/// Shows the lines under a title; that nothing differs is said.
pub fn show(ui: &mut Ui, title: &str, lines: &[String]) {
    ui.label(look::soft(ui, format!("{title}:")));
    ScrollArea::vertical().id_salt(title).max_height(HIGHEST).auto_shrink([false, true]).show(ui, |ui| all(ui, lines));
}

/// Shows the lines alone, however many there are.
pub fn all(ui: &mut Ui, lines: &[String]) {
    if lines.is_empty() {
        ui.label(t!("parts-nothing-by-name-what-is-alike"));
    }
    for line in lines {
        ui.add(Label::new(line).wrap());
    }
}
