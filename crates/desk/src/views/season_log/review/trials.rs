//! What the trials of the farm came to, whatever is chosen at the top.

use egui::{Label, Ui};
use tankard_core::season::review::words::{NO_CAUSE, by_pairs, looks};

use super::kept::Held;
use super::{notes, sheet};
use crate::look;

pub(super) fn show(ui: &mut Ui, trials: &[Held]) {
    if trials.is_empty() {
        ui.label("No trial is laid out yet. A trial holds two treatments against one another, pair by pair.");
        return;
    }
    notes(ui, ["All trials of the farm, whatever is chosen above".to_owned()]);
    for Held { name, one, other, judged } in trials {
        sheet(ui, name, |ui| {
            ui.label(look::soft(ui, format!("{one} against {other}")));
            if judged.comparisons.is_empty() {
                ui.label("No pair is rated on both sides yet: rate its fields on the pages of their records.");
            }
            for comparison in &judged.comparisons {
                ui.add(Label::new(format!("{}.", by_pairs(comparison, one, other).text)).wrap());
            }
            notes(ui, judged.open.iter().cloned());
            notes(ui, looks(judged.comparisons.len()));
        });
    }
    ui.add(Label::new(NO_CAUSE).wrap());
}
