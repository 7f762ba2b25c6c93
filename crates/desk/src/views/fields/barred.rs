//! What may not go on a field or be done on it, until when; and which crops may follow from which day on.

use egui::{Label, Ui};
use tankard_core::farm::{Farm, Field, Id};
use tankard_core::language::days::short_date;
use tankard_core::season::field::{Barred, Because, Following, NextCrop, Until};
use tankard_core::t;

use crate::look;
use crate::parts::{boxes, lists, mark};
use crate::views::tank_loads::cell;

/// Width of the day in front of a row.
const UNTIL: f32 = 150.0;

/// What may not be, each with until when, its basis and the records it comes from.
pub(super) fn show(ui: &mut Ui, barred: &[Barred], farm: &Farm, open: &mut Option<Id>) {
    ui.label(look::heading(t!("fields-what-may-not-go-on-it")));
    if barred.is_empty() {
        let words = t!("fields-nothing-as-far-as-the-labels");
        lists::empty(ui, words);
        return;
    }
    for (at, row) in barred.iter().enumerate() {
        if at > 0 {
            boxes::hairline(ui);
        }
        ui.horizontal_top(|ui| {
            mark::show(ui, row.level).on_hover_text(row.level.word());
            ui.vertical(|ui| {
                ui.spacing_mut().item_spacing.y = 1.0;
                ui.add(Label::new(look::sentence(ui, row.level, &row.text)).wrap());
                ui.horizontal_wrapped(|ui| {
                    ui.label(look::strong(until(row.until)));
                    ui.label(look::soft(ui, row.basis.to_string()));
                    for id in &row.records {
                        record(ui, farm, id, open);
                    }
                });
            });
        });
    }
}

/// "until 4 August 2032", or what else ends it.
fn until(until: Until) -> String {
    match until {
        Until::Day(_) | Until::Moment(_) => t!("fields-until", until = until.words()),
        Until::NextCrop => t!("fields-as-long-as-this-crop-stands").to_owned(),
        Until::Harvest(_) => t!("fields-until-after-the-harvest").to_owned(),
        Until::Open => t!("fields-see-the-label-for-how-long").to_owned(),
    }
}

/// Leads to a record, by its day.
fn record(ui: &mut Ui, farm: &Farm, id: &Id, open: &mut Option<Id>) {
    let Some(record) = farm.records.get(id) else { return };
    let name = t!("fields-open-the-record-of", name = record.name, date = record.date);
    if boxes::act(ui, &short_date(record.date)).accessible_name(name).on_hover_text(record.name.as_str()).clicked() {
        *open = Some(id.clone());
    }
}

/// Which crops may follow.
pub(super) fn following(ui: &mut Ui, following: &Following, field: &Field, open: &mut Option<Id>) {
    ui.label(look::heading(t!("fields-what-may-follow-by-the-plant")));
    if following.crops.is_empty() {
        let words = t!("fields-no-label-of-what-it-got");
        lists::empty(ui, words);
    }
    for next in &following.crops {
        ui.horizontal_top(|ui| {
            cell(ui, UNTIL, false, |ui| {
                let text = if next.planned { look::strong(&next.crop) } else { next.crop.clone().into() };
                ui.add(Label::new(text).truncate()).on_hover_text(&next.crop);
            });
            ui.vertical(|ui| {
                ui.spacing_mut().item_spacing.y = 1.0;
                first_day(ui, next, open);
                if !next.silent.is_empty() {
                    let names = next.silent.join(", ");
                    let words = t!("fields-the-of-not-name-it-as", count = next.silent.len(), names = names);
                    mark::line(ui, tankard_core::finding::Level::Check, &words);
                }
            });
        });
    }
    if field.next_crop.trim().is_empty() && !following.crops.is_empty() {
        boxes::say(ui, t!("fields-type-the-next-crop-under-as"));
    }
    if !following.untyped.is_empty() {
        let words = t!("fields-no-plant-back-time-is-typed", untyped = following.untyped.join(", "));
        mark::line(ui, tankard_core::finding::Level::Check, &words);
    }
}

fn first_day(ui: &mut Ui, next: &NextCrop, open: &mut Option<Id>) {
    let Some(because) = &next.because else {
        let is_told = next.silent.is_empty();
        let words = if is_told { t!("fields-may-be-planted-now") } else { t!("fields-no-limit-that-is-typed-keeps") };
        ui.horizontal(|ui| ui.label(words));
        return;
    };
    let day = Until::Day(because.until).words();
    ui.horizontal(|ui| ui.label(look::strong(t!("fields-not-before", day = day))));
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().interact_size.y = 18.0;
        ui.label(look::soft(ui, reason(because)));
        let name = t!("fields-open-the-record-of-for", sprayed = because.sprayed, crop = next.crop);
        if boxes::act(ui, &short_date(because.sprayed)).accessible_name(name).clicked() {
            *open = Some(because.record.clone());
        }
    });
}

fn reason(because: &Because) -> String {
    t!("fields-months-label-of-as-typed-sprayed", months = because.months, at = because.at)
}
