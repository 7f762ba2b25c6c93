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
