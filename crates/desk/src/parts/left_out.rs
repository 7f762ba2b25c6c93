//! Lines of a file that are left out, each with its reason.

use egui::Ui;
use tankard_core::finding::Level;
use tankard_core::t;
use tankard_file::forecast_csv::Refused;

use super::{boxes, mark};
use crate::look;

/// So many lines are shown at once.
const FEW: usize = 8;

/// Shows the lines a few at a time, so that the keyboard reaches all of them; `from` is the first one shown.
pub fn show(ui: &mut Ui, refused: &[Refused], from: &mut usize) {
    let all = refused.len();
    if all == 0 {
        return;
    }
    ui.add_space(4.0);
    ui.horizontal_wrapped(|ui| {
        mark::show(ui, Level::Check);
        ui.label(look::strong(t!("parts-lines-are-left-out", all = all)));
        if all > FEW {
            let last = (*from + FEW).min(all);
            ui.label(look::soft(ui, t!("parts-to", from = *from + 1, last = last)));
            if boxes::act(ui, t!("parts-those-before"))
                .accessible_name(t!("parts-lines-left-out-before-these"))
                .clicked()
            {
                *from = from.saturating_sub(FEW);
            }
            if boxes::act(ui, t!("parts-those-after")).accessible_name(t!("parts-lines-left-out-after-these")).clicked()
                && last < all
            {
                *from += FEW;
            }
        }
    });
    for refused in refused.iter().skip(*from).take(FEW) {
        boxes::say(ui, &t!("parts-line", line = refused.line, why = refused.why));
    }
}
