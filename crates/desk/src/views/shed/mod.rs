//! View.

use egui::Ui;

use crate::app::Desk;

/// What is chosen in this view.
#[derive(Debug, Default)]
pub struct State {
    /// Id of the chosen thing.
    pub chosen: Option<String>,
}

impl State {
    /// Chooses a product.
    pub fn choose_product(&mut self, id: &str) {
        self.chosen = Some(id.to_owned());
    }

    /// Chooses a water.
    pub fn choose_water(&mut self, id: &str) {
        self.chosen = Some(id.to_owned());
    }

    /// Chooses a rig.
    pub fn choose_rig(&mut self, id: &str) {
        self.chosen = Some(id.to_owned());
    }
}

/// Shows the view.
pub fn show(desk: &mut Desk, ui: &mut Ui) {
    let _ = desk;
    ui.label("…");
}
