//! Fields: a list with area, crop, stage, last pass and next limit, edited in the row; beside it the chosen field's page.

mod barred;
pub mod export;
mod got;
mod ground;
pub mod import;
mod kept;
mod list;
pub mod map;
mod neighbours;
mod page;
mod roads;
mod typed;

pub use page::Page;

use egui::{CentralPanel, Frame, Margin, Panel, Ui};
use tankard_core::plausible;
use tankard_core::t;

use crate::app::{Desk, Shown};
use crate::command::View;
use crate::look;
use crate::parts::{lists, offers};

/// What is chosen in this view.
#[derive(Default)]
pub struct State {
    /// Id of the chosen field.
    pub chosen: Option<String>,
    /// What is looked for.
    pub find: String,
    /// A field that was just added, until its name has the keyboard.
    pub fresh: Option<String>,
    /// A field about to be removed.
    pub removing: bool,
    /// Which page of the field is shown.
    pub page: Page,
    /// What the farm knows of it.
    kept: kept::Kept,
    /// A file of boundaries that is looked at.
    import: import::State,
    /// A road that is being typed: from the field of the page to another.
    pub road: Option<(String, String)>,
    /// Whether the list still has to come to the chosen field.
    pub reveal: bool,
    /// What is chosen on the map.
    pub map: map::State,
}

/// Adds a field and steps into its name.
pub fn begin(desk: &mut Desk) {
    show_list(desk);
    list::add(desk);
}

/// Steps into a field that was begun.
pub fn go_on(desk: &mut Desk, id: &str) {
    show_list(desk);
    desk.fields.find.clear();
    desk.fields.chosen = Some(id.to_owned());
    desk.fields.reveal = true;
    if desk.document.farm().fields.get(id).is_some_and(|field| field.name.trim().is_empty()) {
        desk.fields.fresh = Some(id.to_owned());
    }
}

fn show_list(desk: &mut Desk) {
    desk.view = View::Fields;
    desk.fields.map.open = false;
    desk.fields.page = Page::Typed;
}

/// Shows the view.
pub fn show(desk: &mut Desk, ui: &mut Ui) {
    if desk.fields.import.is_open() {
        import::show(desk, ui);
        return;
    }
    if desk.fields.chosen.as_ref().is_none_or(|id| !desk.document.farm().fields.contains_key(id)) {
        desk.fields.chosen = desk.document.farm().fields.keys().next().cloned();
        desk.fields.removing = false;
    }
    if let Some(id) = &desk.fields.chosen {
        let mut doubts = Vec::new();
        plausible::of_field(desk.document.farm(), id, &mut doubts);
        offers::set(ui.ctx(), &doubts);
    }
    let shown = desk.list.shown(ui.ctx());
    if shown == Shown::List {
        let frame = Frame::new().inner_margin(Margin { left: 14, right: 10, top: 10, bottom: 8 });
        CentralPanel::default().frame(frame).show(ui, |ui| list::show(desk, ui));
        return;
    }
    // On a small screen the list keeps its boxes and gives up its last column.
    let width = if ui.available_width() < 1000.0 { 440.0_f32.min(ui.available_width() * 0.66) } else { 590.0 };
    if shown == Shown::Both {
        Panel::left("fields")
            .exact_size(width)
            .resizable(false)
            .frame(Frame::new().inner_margin(Margin { left: 14, right: 10, top: 10, bottom: 8 }))
            .show(ui, |ui| list::show(desk, ui));
    }
    CentralPanel::default().frame(Frame::new().inner_margin(Margin { left: 16, right: 16, top: 10, bottom: 10 })).show(
        ui,
        |ui| {
            if map::tabs(desk, ui) {
                map::show(desk, ui);
            } else if let Some(id) = desk.fields.chosen.clone() {
                page::show(desk, ui, &id);
            } else {
                ui.label(look::title(t!("fields-no-field-yet")));
                lists::empty(ui, t!("fields-add-the-first-one-at-the"));
            }
        },
    );
}
