//! The page of a field: what is typed of it, what it got, and what it may not get until when.

use egui::{ScrollArea, Ui};
use jiff::civil::DateTime;
use tankard_core::farm::{Farm, Field, Id};
use tankard_core::finding::{Level, Subject};
use tankard_core::language::days::{clock, short_date};
use tankard_core::quantity::{AsTyped, Quantity};
use tankard_core::season::field::FieldPage;
use tankard_core::t;

use super::{barred, got, ground, kept, neighbours, roads, typed};
use crate::app::Desk;
use crate::look;

/// The pages of a field.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Page {
    /// What is typed.
    #[default]
    Typed,
    /// What it may not get, and what may follow.
    MayNot,
    /// What it got, year by year.
    Got,
}

/// Shows the page.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui, id: &Id) {
    let Some(before) = desk.document.farm().fields.get(id).cloned() else { return };
    let Some((known, now, is_later)) = kept::of(desk, id) else { return };
    let mut field = before.clone();
    let mut open = None;
    ui.push_id(("page", id), |ui| {
        head(desk, ui, &field, &known);
        // Each page has a scroll place of its own.
        ui.push_id(desk.fields.page as u8, |ui| {
            ScrollArea::vertical().auto_shrink(false).show(ui, |ui| match desk.fields.page {
                Page::Typed => all_typed(desk, ui, id, &mut field),
                Page::MayNot => {
                    as_of(ui, now, is_later);
                    sheet(ui, |ui| barred::show(ui, &known.barred, desk.document.farm(), &mut open));
                    sheet(ui, |ui| barred::following(ui, &known.following, &field, &mut open));
                }
                Page::Got => {
                    sheet(ui, |ui| got::crops(ui, &known.crops));
                    sheet(ui, |ui| got::groups(ui, known.groups.as_ref()));
                    sheet(ui, |ui| got::sprayed(ui, &known.sprayed, desk.document.farm(), &mut open));
                }
            });
        });
    });
    if field != before {
        desk.document.edit(|farm| {
            farm.fields.insert(id.clone(), field);
        });
    }
    if let Some(record) = open {
        desk.lead_to(&Subject::Record(record));
    }
}

fn head(desk: &mut Desk, ui: &mut Ui, field: &Field, known: &FieldPage) {
    let name = if field.name.trim().is_empty() { t!("fields-a-field-without-a-name-736") } else { &field.name };
    ui.add(egui::Label::new(look::title(name)).truncate());
    ui.add(egui::Label::new(look::soft(ui, sprayable(field, desk.document.farm()))).truncate());
    ui.add_space(2.0);
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = look::PAGES;
        let weighs = known.barred.iter().filter(|barred| barred.level > Level::Note).count();
        for (page, words) in [
            (Page::Typed, t!("fields-as-typed").to_owned()),
            (Page::MayNot, t!("fields-what-it-may-not-get", count = weighs)),
            (Page::Got, t!("fields-what-it-got-got", count = known.sprayed.len())),
        ] {
            if look::page(ui, &words, desk.fields.page == page).clicked() {
                desk.fields.page = page;
            }
        }
    });
    ui.add_space(6.0);
}

/// On which day it is asked, where that is not today.
fn as_of(ui: &mut Ui, now: DateTime, is_later: bool) {
    let day = short_date(now.date());
    let words = if is_later {
        t!("fields-as-on-the-evening-of-the", day = day)
    } else {
        t!("fields-as-on-day-strftime", day = day, time = clock(now))
    };
    ui.label(look::soft(ui, t!("fields-as-typed-from-the-labels-the", words = words)));
    ui.add_space(4.0);
}

fn sheet(ui: &mut Ui, add: impl FnOnce(&mut Ui)) {
    look::sheet(ui).show(ui, |ui| {
        ui.set_width(ui.available_width() - look::GRID);
        add(ui);
    });
    ui.add_space(look::GRID);
}

fn all_typed(desk: &mut Desk, ui: &mut Ui, id: &Id, field: &mut Field) {
    sheet(ui, |ui| ground::show(ui, id, field, desk.document.farm()));
    sheet(ui, |ui| typed::form(ui, id, field, desk.document.farm()));
    sheet(ui, |ui| neighbours::show(ui, field, desk.document.farm()));
    sheet(ui, |ui| typed::resistant(ui, field));
    sheet(ui, |ui| roads::show(desk, ui, id));
}

fn sprayable(field: &Field, farm: &Farm) -> String {
    let ground = field.ground();
    let unsprayed = field.unsprayed.as_ref().map(AsTyped::value);
    match unsprayed {
        Some(unsprayed) if unsprayed.exceeds(ground) => t!("fields-more-stays-unsprayed-than-there-is").to_owned(),
        Some(_) => {
            t!(
                "fields-of-which-can-be-sprayed",
                ground = ground.show(farm.units),
                sprayable = field.sprayable().show(farm.units)
            )
        }
        None => t!("fields-all-of-it-to-be-sprayed", ground = ground.show(farm.units)),
    }
}
