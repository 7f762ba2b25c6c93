//! The change of the year: what stands open, what grew and what comes next on each field, and the act that closes the season.

use egui::{Margin, Panel, ScrollArea, Ui};
use indexmap::IndexMap;
use tankard_core::farm::Id;
use tankard_core::finding::Finding;
use tankard_core::season::close;
use tankard_core::t;

use crate::app::Desk;
use crate::look;
use crate::parts::{boxes, findings};

const NAME: f32 = 220.0;
const CROP: f32 = 160.0;

/// What is being decided.
#[derive(Debug)]
pub(super) struct Form {
    year: i16,
    crops: IndexMap<Id, String>,
    note: String,
    /// What a person should know first, found once for a state of the farm.
    told: (u64, Vec<Finding>),
}

impl Form {
    /// Of a year.
    pub(super) fn new(desk: &Desk, year: i16) -> Self {
        let farm = desk.document.farm();
        let told = (desk.document.revision(), close::before_closing(farm, year));
        Self { year, crops: close::next_crops(farm), note: String::new(), told }
    }
}

/// Shows the form; gives it back while it is open.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui, mut form: Form) -> Option<Form> {
    let revision = desk.document.revision();
    if form.told.0 != revision {
        form.told = (revision, close::before_closing(desk.document.farm(), form.year));
    }
    let mut done = None;
    let mut lead = None;
    // Below a long list of fields, and always in sight.
    let frame = egui::Frame::new().inner_margin(Margin { left: 16, right: 16, top: 8, bottom: 10 });
    Panel::bottom("close the season").frame(frame).show(ui, |ui| {
        ui.horizontal_wrapped(|ui| {
            if ui.button(t!("season-log-close-season", year = form.year)).clicked() {
                done = Some(true);
            }
            if ui.button(t!("season-log-leave-it-open")).clicked()
                || ui.input(|input| input.key_pressed(egui::Key::Escape))
            {
                done = Some(false);
            }
        });
    });
    ScrollArea::vertical().auto_shrink(false).show(ui, |ui| {
        egui::Frame::new().inner_margin(Margin { left: 16, right: 16, top: 4, bottom: 16 }).show(ui, |ui| {
            ui.set_max_width(ui.available_width().min(760.0));
            ui.label(look::title(t!("season-log-close-season", year = form.year)));
            ui.label(t!("season-log-records-passes-and-cards-stay-in"));
            if !form.told.1.is_empty() {
                ui.add_space(look::GRID);
                lead = findings::show(ui, &form.told.1).map(|led| led.about);
            }
            ui.add_space(look::GRID);
            fields(desk, ui, &mut form);
            ui.add_space(look::GRID);
            ui.label(look::soft(ui, t!("season-log-what-the-season-taught-in-words")));
            let width = ui.available_width();
            boxes::lines(ui, t!("season-log-what-the-season-taught"), &mut form.note, width, 3);
        });
    });
    if let Some(subject) = lead {
        desk.lead_to(&subject);
    }
    match done {
        None => Some(form),
        Some(false) => None,
        Some(true) => {
            let today = desk.now().date();
            desk.document.edit(|farm| *farm = close::close(farm, form.year, today, &form.crops, &form.note));
            desk.tell(t!("season-log-season-is-closed-undo-opens-it", year = form.year));
            None
        }
    }
}

fn fields(desk: &Desk, ui: &mut Ui, form: &mut Form) {
    let farm = desk.document.farm();
    if farm.fields.is_empty() {
        return;
    }
    egui::Grid::new("crops of the next season").num_columns(3).spacing([16.0, 2.0]).show(ui, |ui| {
        for text in [t!("season-log-head-field"), t!("season-log-head-grew"), t!("season-log-goes-on-with")] {
            ui.label(look::soft(ui, text));
        }
        ui.end_row();
        for (id, field) in &farm.fields {
            ui.scope(|ui| {
                ui.set_max_width(NAME);
                ui.add(egui::Label::new(&field.name).truncate());
            });
            ui.label(if field.crop.trim().is_empty() { "–" } else { &field.crop });
            let crop = form.crops.entry(id.clone()).or_default();
            boxes::text_or_empty(
                ui,
                &t!("season-log-next-crop-on", name = field.name),
                crop,
                CROP,
                t!("season-log-not-decided"),
            );
            ui.end_row();
        }
    });
}
