//! What may not go on a field or be done on it, until when; and which crops may follow from which day on.

use egui::{Label, Ui};
use tankard_core::farm::{Farm, Field, Id};
use tankard_core::loads::card::short_date;
use tankard_core::season::field::{Barred, Because, Following, NextCrop, Until};

use crate::look;
use crate::parts::{boxes, lists, mark};
use crate::views::tank_loads::cell;

/// Width of the day in front of a row.
const UNTIL: f32 = 150.0;

/// What may not be, each with until when, its basis and the records it comes from.
pub(super) fn show(ui: &mut Ui, barred: &[Barred], farm: &Farm, open: &mut Option<Id>) {
    ui.label(look::heading("What may not go on it, or be done on it"));
    if barred.is_empty() {
        let words = "Nothing, as far as the labels are typed: no total or number is used up, and no days are running.";
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
        Until::Day(_) | Until::Moment(_) => format!("until {}", until.words()),
        Until::NextCrop => "as long as this crop stands".to_owned(),
        Until::Harvest(_) => "until after the harvest".to_owned(),
        Until::Open => "see the label for how long".to_owned(),
    }
}

/// Leads to a record, by its day.
fn record(ui: &mut Ui, farm: &Farm, id: &Id, open: &mut Option<Id>) {
    let Some(record) = farm.records.get(id) else { return };
    let name = format!("Open the record {} of {}", record.name, record.date);
    if boxes::act(ui, &short_date(record.date)).accessible_name(name).on_hover_text(&record.name).clicked() {
        *open = Some(id.clone());
    }
}

/// Which crops may follow.
pub(super) fn following(ui: &mut Ui, following: &Following, field: &Field, open: &mut Option<Id>) {
    ui.label(look::heading("What may follow, by the plant-back times of what it got"));
    if following.crops.is_empty() {
        let words =
            "No label of what it got names a following crop, as typed, and no next crop is typed for the field.";
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
                    let (labels, name) = if next.silent.len() == 1 { ("label", "does") } else { ("labels", "do") };
                    let words = format!("the {labels} of {} {name} not name it, as typed", next.silent.join(", "));
                    mark::line(ui, tankard_core::finding::Level::Check, &words);
                }
            });
        });
    }
    if field.next_crop.trim().is_empty() && !following.crops.is_empty() {
        boxes::say(ui, "Type the next crop under \"As typed\" to have it stand first.");
    }
    if !following.untyped.is_empty() {
        let words = format!(
            "No plant-back time is typed of {}, which it had in the last 12 months",
            following.untyped.join(", ")
        );
        mark::line(ui, tankard_core::finding::Level::Check, &words);
    }
}

fn first_day(ui: &mut Ui, next: &NextCrop, open: &mut Option<Id>) {
    let Some(because) = &next.because else {
        let is_told = next.silent.is_empty();
        ui.label(if is_told { "may be planted now" } else { "no limit that is typed keeps it off" });
        return;
    };
    ui.horizontal_wrapped(|ui| {
        let day = Until::Day(because.until).words();
        ui.label(look::strong(format!("not before {day}")));
        ui.label(look::soft(ui, reason(because)));
        let name = format!("Open the record of {} for {}", because.sprayed, next.crop);
        if boxes::act(ui, &short_date(because.sprayed)).accessible_name(name).clicked() {
            *open = Some(because.record.clone());
        }
    });
}

fn reason(because: &Because) -> String {
    format!("{} months; label of {}, as typed; sprayed on", because.months, because.at)
}
