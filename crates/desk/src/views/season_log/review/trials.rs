//! What the trials of the farm came to, whatever is chosen at the top.

use egui::{Label, Ui};
use tankard_core::season::review::words::{by_pairs, looks, no_cause};
use tankard_core::t;

use super::kept::Held;
use super::{notes, sheet};
use crate::look;

pub(super) fn show(ui: &mut Ui, trials: &[Held]) {
    if trials.is_empty() {
        ui.label(t!("season-log-no-trial-is-laid-out-yet"));
        return;
    }
    notes(ui, [t!("season-log-all-trials-of-the-farm-whatever").to_owned()]);
    for Held { name, one, other, judged } in trials {
        sheet(ui, name, |ui| {
            ui.label(look::soft(ui, t!("season-log-against", one = one, other = other)));
            if judged.comparisons.is_empty() {
                ui.label(t!("season-log-no-pair-is-rated-on-both"));
            }
            for comparison in &judged.comparisons {
                ui.add(Label::new(format!("{}.", by_pairs(comparison, one, other).text)).wrap());
            }
            notes(ui, judged.open.iter().cloned());
            notes(ui, looks(judged.comparisons.len()));
        });
    }
    ui.add(Label::new(no_cause()).wrap());
}
