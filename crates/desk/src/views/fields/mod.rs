//! Fields: a list with area, crop, stage, last pass and next limit, edited in the row; beside it the chosen field's page.

mod list;
mod page;

use egui::{CentralPanel, Frame, Margin, Panel, Ui};

use crate::app::Desk;
use crate::look;
use crate::parts::lists;

/// What is chosen in this view.
#[derive(Debug, Default)]
pub struct State {
    /// Id of the chosen field.
    pub chosen: Option<String>,
    /// What is looked for.
    pub find: String,
    /// A field about to be removed.
    pub removing: bool,
}

/// Shows the view.
pub fn show(desk: &mut Desk, ui: &mut Ui) {
    if desk.fields.chosen.as_ref().is_none_or(|id| !desk.document.farm().fields.contains_key(id)) {
        desk.fields.chosen = desk.document.farm().fields.keys().next().cloned();
        desk.fields.removing = false;
    }
    Panel::left("fields")
        .exact_size(590.0)
        .resizable(false)
        .frame(Frame::new().inner_margin(Margin { left: 14, right: 10, top: 10, bottom: 8 }))
        .show(ui, |ui| list::show(desk, ui));
    CentralPanel::default().frame(Frame::new().inner_margin(Margin { left: 16, right: 16, top: 10, bottom: 10 })).show(ui, |ui| {
        if let Some(id) = desk.fields.chosen.clone() { page::show(desk, ui, &id) } else {
            ui.label(look::title("No field yet"));
            lists::empty(ui, "Add the first one at the left with its name and area, such as \"74.6 ac\" or \"30.2 ha\"; then its crop and stage.");
        }
    });
}
