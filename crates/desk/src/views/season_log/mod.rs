//! View.

use egui::Ui;

use crate::app::Desk;

/// What is chosen in this view.
#[derive(Debug, Default)]
pub struct State {
    /// Id of the chosen thing.
    pub chosen: Option<String>,
}

/// Shows the view.
pub fn show(desk: &mut Desk, ui: &mut Ui) {
    let _ = desk;
    ui.label("…");
}

/// Saves the records as CSV.
pub fn save_csv(desk: &mut Desk, path: &std::path::Path) {
    let _ = (desk, path);
}

/// Records a pass.
pub fn record_pass(desk: &mut Desk, pass_id: &str) {
    let _ = (desk, pass_id);
}
