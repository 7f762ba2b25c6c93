//! View.

pub mod cards;

use egui::Ui;

use crate::app::Desk;

/// What is chosen in this view.
#[derive(Debug, Default)]
pub struct State {
    /// Id of the chosen thing.
    pub chosen: Option<String>,
    /// Number of the chosen load.
    pub load: u32,
}

impl State {
    /// Chooses a pass.
    pub fn choose(&mut self, id: &str) {
        self.chosen = Some(id.to_owned());
        self.load = 1;
    }
}

/// Shows the view.
pub fn show(desk: &mut Desk, ui: &mut Ui) {
    let _ = desk;
    ui.label("…");
}
