//! A working: steps at the left, what comes out at the right.

use egui::{Align, Layout, Ui};
use tankard_core::t;
use tankard_core::working::Working;

use crate::guide::{self, places};
use crate::look;

/// Shows one working.
pub fn show(ui: &mut Ui, working: &Working) {
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing.x = 6.0;
        ui.label(look::heading(t!("parts-working", title = working.title)));
        guide::link(ui, places::of_working(working.room));
    });
    for step in &working.steps {
        // A result in words would leave no room for the step, so both stand one under the other.
        if step.result.is_empty() || step.result.chars().count() > 28 {
            ui.add(egui::Label::new(&step.what).wrap());
            if !step.result.is_empty() {
                ui.add(egui::Label::new(&step.result).wrap());
            }
            continue;
        }
        ui.horizontal(|ui| {
            ui.set_width(ui.available_width());
            ui.with_layout(Layout::right_to_left(Align::Min), |ui| {
                ui.label(&step.result);
                ui.with_layout(Layout::left_to_right(Align::Min), |ui| {
                    ui.add(egui::Label::new(&step.what).wrap());
                });
            });
        });
    }
}
