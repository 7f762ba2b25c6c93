//! What a record is kept for: the profiles that the farm chose, what is there and what is open, and the days that follow.

use egui::{CollapsingHeader, Label, RichText, Ui};
use jiff::civil::Date;
use tankard_core::farm::{Farm, Record};
use tankard_core::season::profile::{self, Dated, Kept, Place, Row, not_the_law};
use tankard_core::t;

use crate::look;
use crate::parts::{boxes, mark};

/// Width of the name of an element before its box.
const NAME: f32 = 220.0;

/// What is open of the record, in a line; nothing where nothing is.
pub(super) fn still_open(ui: &mut Ui, farm: &Farm, record: &Record, today: Date) {
    let open = profile::open(farm, record, today);
    let Some(level) = open.level else { return };
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing.x = 4.0;
        mark::show(ui, level);
        ui.label(look::strong(level.word()).color(look::of_level(look::colours(ui), level)));
        ui.label(t!("season-log-still-open", names = open.names.join(", ")));
    });
}

/// The section of the page.
pub(super) fn show(ui: &mut Ui, farm: &Farm, record: &mut Record, today: Date) {
    let all = profile::kept(farm, record);
    let dates = profile::dates(farm, record);
    let words = match farm.keeping.profiles.as_slice() {
        [] => t!("season-log-the-plain-record-other-profiles-are"),
        _ => t!("season-log-the-profiles-are-chosen-in-the"),
    };
    ui.label(look::soft(ui, words));
    for kept in &all {
        ui.push_id(("kept", kept.name), |ui| {
            ui.add_space(look::GRID);
            one(ui, kept, record, today);
        });
    }
    if all.is_empty() {
        ui.label(look::soft(ui, t!("season-log-no-chosen-profile-speaks-of-this")));
    }
    if !dates.is_empty() {
        ui.add_space(look::GRID);
        ui.label(look::strong(t!("season-log-days-that-follow")));
        for dated in &dates {
            day(ui, dated);
        }
    }
    ui.add_space(look::GRID);
    boxes::say(ui, not_the_law());
}

/// A profile: what is open of it, the boxes of what has no place elsewhere, and what is there.
fn one(ui: &mut Ui, kept: &Kept, record: &mut Record, today: Date) {
    ui.label(look::strong(kept.name)).on_hover_text(kept.basis.to_string());
    let has_box = |row: &&Row| matches!(row.place, None | Some(Place::More(_)));
    let open: Vec<&Row> = kept.rows.iter().filter(|row| row.held.is_err()).collect();
    if open.is_empty() {
        ui.label(look::soft(ui, t!("season-log-all-that-is-asked-for-is")));
    }
    for row in open.iter().filter(|row| !has_box(row)) {
        ui.horizontal_wrapped(|ui| {
            ui.spacing_mut().item_spacing.x = 4.0;
            mark::show(ui, row.level(record.date, today));
            ui.label(row.lacks().unwrap_or_default()).on_hover_text(row.basis.to_string());
            let due = due(row, today);
            let is_kept = row.place == Some(Place::Keeping);
            ui.label(look::soft(ui, if is_kept { t!("season-log-in-the-shed-records", due = due) } else { due }));
        });
    }
    for row in kept.rows.iter().filter(has_box) {
        ui.horizontal(|ui| {
            boxes::slot(ui, NAME, |ui| {
                ui.spacing_mut().item_spacing.x = 4.0;
                if row.held.is_err() {
                    mark::show(ui, row.level(record.date, today));
                }
                ui.add(Label::new(look::soft(ui, row.name)).truncate()).on_hover_text(row.basis.to_string());
            });
            let mut text = record.more.get(row.key).cloned().unwrap_or_default();
            let hint = match &row.held {
                Ok(held) => held.clone(),
                Err(_) => due(row, today),
            };
            let width = ui.available_width();
            if boxes::text_or_empty(ui, row.name, &mut text, width, &hint).changed() {
                if text.is_empty() {
                    record.more.shift_remove(row.key);
                } else {
                    record.more.insert(row.key.to_owned(), text);
                }
            }
        });
    }
    let there: Vec<(&Row, &String)> =
        kept.rows.iter().filter(|row| !has_box(row)).filter_map(|row| Some((row, row.held.as_ref().ok()?))).collect();
    if there.is_empty() {
        return;
    }
    let words =
        t!("season-log-of-are-there", there = there.len(), all = kept.rows.iter().filter(|row| !has_box(row)).count());
    CollapsingHeader::new(RichText::new(words).color(look::colours(ui).soft)).id_salt("there").show(ui, |ui| {
        for (row, text) in there {
            ui.horizontal_wrapped(|ui| {
                ui.label(look::soft(ui, format!("{}:", row.name))).on_hover_text(row.basis.to_string());
                ui.label(text);
            });
        }
        boxes::say(ui, &t!("season-log-from", basis = kept.basis));
    });
}

fn due(row: &Row, today: Date) -> String {
    match row.due {
        Some(due) if due.day < today => t!("season-log-was-due-by", due = due),
        Some(due) => t!("season-log-due-by", due = due),
        None => t!("season-log-by-when-is-not-known-here").to_owned(),
    }
}

fn day(ui: &mut Ui, dated: &Dated) {
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing.x = 4.0;
        ui.label(look::soft(ui, format!("{}:", dated.what))).on_hover_text(dated.basis.to_string());
        ui.label(dated.at.to_string());
        if let Some(profile) = dated.profile {
            ui.label(look::soft(ui, format!("({profile})")));
        }
    });
}
