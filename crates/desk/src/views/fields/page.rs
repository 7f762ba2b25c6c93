//! The page of a field: what it is, what it got, and what it may not get until when.

use egui::{ScrollArea, Ui};
use tankard_core::farm::{Farm, Field, Id, Neighbour, Resistant};
use tankard_core::loads::card::short_date;
use tankard_core::quantity::Quantity;
use tankard_core::season::binds::{Binds, binds};

use crate::app::Desk;
use crate::look;
use crate::parts::{boxes, lists};

/// Shows the page.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui, id: &Id) {
    let Some(before) = desk.document.farm().fields.get(id).cloned() else { return };
    let mut field = before.clone();
    ScrollArea::both().auto_shrink(false).show(ui, |ui| {
        ui.push_id(("page", id), |ui| {
            ui.label(look::title(if field.name.trim().is_empty() { "A field without a name" } else { &field.name }));
            ui.label(look::soft(ui, sprayable(&field, desk.document.farm())));
            ui.add_space(look::GRID);
            look::sheet(ui).show(ui, |ui| {
                ui.set_width((ui.available_width() - look::GRID).max(480.0));
                form(ui, &mut field, desk.document.farm());
            });
            ui.add_space(look::GRID);
            look::sheet(ui).show(ui, |ui| {
                ui.set_width((ui.available_width() - look::GRID).max(480.0));
                super::roads::show(desk, ui, id);
            });
            ui.add_space(look::GRID);
            look::sheet(ui).show(ui, |ui| {
                ui.set_width((ui.available_width() - look::GRID).max(480.0));
                neighbours(ui, &mut field);
            });
            ui.add_space(look::GRID);
            look::sheet(ui).show(ui, |ui| {
                ui.set_width((ui.available_width() - look::GRID).max(480.0));
                resistant(ui, &mut field);
            });
            ui.add_space(look::GRID);
            look::sheet(ui).show(ui, |ui| {
                ui.set_width((ui.available_width() - look::GRID).max(480.0));
                got(desk, ui, id);
            });
            ui.add_space(look::GRID);
            look::sheet(ui).show(ui, |ui| {
                ui.set_width((ui.available_width() - look::GRID).max(480.0));
                may_not(desk, ui, id, &field);
            });
        });
    });
    if field != before {
        desk.document.edit(|farm| {
            farm.fields.insert(id.clone(), field);
        });
    }
}

fn sprayable(field: &Field, farm: &Farm) -> String {
    match &field.unsprayed {
        Some(unsprayed) if unsprayed.exceeds(field.area.value()) => {
            "more stays unsprayed than there is; mend the areas".to_owned()
        }
        Some(unsprayed) => format!(
            "{}, of which {} can be sprayed",
            field.area.show(farm.units),
            (field.area.value() - unsprayed.value()).show(farm.units)
        ),
        None => format!("{}, all of it to be sprayed", field.area.show(farm.units)),
    }
}

fn form(ui: &mut Ui, field: &mut Field, farm: &Farm) {
    ui.spacing_mut().item_spacing.y = 2.0;
    boxes::row(ui, "stays unsprayed", |ui| {
        boxes::quantity_or_none(ui, "Area that stays unsprayed", &mut field.unsprayed, look::BOX);
        boxes::understood(ui, field.unsprayed.as_ref(), farm.units);
        ui.label(look::soft(ui, "buffers, waterways, wet spots"));
    });
    boxes::row(ui, "variety and traits", |ui| {
        boxes::text(ui, "Variety and traits", &mut field.variety, 320.0);
    });
    boxes::row(ui, "owner", |ui| {
        boxes::text(ui, "Owner", &mut field.owner, 320.0);
    });
    boxes::row(ui, "planted", |ui| boxes::date_or_none(ui, "Day of planting", &mut field.planted, look::BOX));
    boxes::row(ui, "harvest or grazing from", |ui| {
        boxes::date_or_none(ui, "Expected day of harvest", &mut field.harvest, look::BOX);
        ui.label(look::soft(ui, "harvest intervals are judged against it"));
    });
    boxes::row(ui, "road from the yard", |ui| {
        boxes::quantity_hinted(ui, "Road from the yard to the gate", &mut field.road, look::BOX, "not known");
        boxes::understood(ui, field.road.as_ref(), farm.units);
        ui.label(look::soft(ui, "to its gate; for the time a pass takes"));
    });
    boxes::row(ui, "location", |ui| {
        let hint = "section, township, range; or latitude, longitude";
        boxes::text_or_empty(ui, "Location", &mut field.location, 320.0, hint);
    });
    boxes::row(ui, "parcel", |ui| {
        boxes::text_or_empty(ui, "Parcel", &mut field.parcel, 320.0, "reference in the aid claim");
    });
    boxes::row(ui, "next crop", |ui| {
        boxes::text(ui, "Next crop", &mut field.next_crop, look::BOX);
    });
    boxes::row(ui, "note", |ui| {
        boxes::text(ui, "Note on the field", &mut field.note, 320.0);
    });
}

fn neighbours(ui: &mut Ui, field: &mut Field) {
    ui.label(look::heading("Neighbours that matter"));
    let mut remove = None;
    for (at, neighbour) in field.neighbours.iter_mut().enumerate() {
        ui.push_id(("neighbour", at), |ui| {
            ui.horizontal(|ui| {
                boxes::text(ui, "What the neighbour is", &mut neighbour.what, 190.0);
                ui.label(look::soft(ui, "side"));
                boxes::text(ui, "Side of the field", &mut neighbour.side, 80.0);
                ui.label(look::soft(ui, "from the edge"));
                boxes::quantity_or_none(ui, "Distance from the edge", &mut neighbour.distance, 100.0);
                if boxes::act(ui, "Take out").accessible_name(format!("Take out {}", neighbour.what)).clicked() {
                    remove = Some(at);
                }
            });
        });
    }
    if let Some(at) = remove {
        field.neighbours.remove(at);
    }
    if field.neighbours.is_empty() {
        ui.label(look::soft(ui, "None is typed. Creeks, wells, homes, hives, sensitive crops belong here."));
    }
    if boxes::act(ui, "+ Add a neighbour").clicked() {
        field.neighbours.push(Neighbour::default());
    }
}

/// Weeds that a resistance group no longer controls here.
fn resistant(ui: &mut Ui, field: &mut Field) {
    ui.label(look::heading("Weeds that stand up to a group"));
    let mut remove = None;
    for (at, resistant) in field.resistant.iter_mut().enumerate() {
        ui.push_id(("resistant", at), |ui| {
            ui.horizontal(|ui| {
                boxes::text(ui, &format!("Resistant weed {}", at + 1), &mut resistant.weed, 190.0);
                ui.label(look::soft(ui, "to group"));
                boxes::text(ui, &format!("Group of resistant weed {}", at + 1), &mut resistant.group, 80.0);
                if boxes::act(ui, "Take out").accessible_name(format!("Take out resistant weed {}", at + 1)).clicked() {
                    remove = Some(at);
                }
            });
        });
    }
    if let Some(at) = remove {
        field.resistant.remove(at);
    }
    if field.resistant.is_empty() {
        ui.label(look::soft(
            ui,
            "None is typed. A group that a weed here stands up to does not count as effective on it.",
        ));
    }
    if boxes::act(ui, "+ Add a resistant weed").clicked() {
        field.resistant.push(Resistant::default());
    }
}

/// How many records of a field are listed; the others are found in the season log.
const SHOWN: usize = 40;

fn got(desk: &mut Desk, ui: &mut Ui, id: &Id) {
    ui.label(look::heading("What it got"));
    let log = desk.document.log();
    let farm = desk.document.farm();
    let mut records: Vec<_> = log.on_field(farm, id).collect();
    records.sort_by_key(|(_, record)| std::cmp::Reverse(record.date));
    if records.is_empty() {
        lists::empty(ui, "Nothing is recorded on it yet.");
    }
    let mut open = None;
    let older = records.len().saturating_sub(SHOWN);
    for (record_id, record) in records.into_iter().take(SHOWN) {
        ui.horizontal(|ui| {
            boxes::slot(ui, 110.0, |ui| ui.label(short_date(record.date)));
            if boxes::act(ui, &record.name)
                .accessible_name(format!("Open the record {} of {}", record.name, record.date))
                .clicked()
            {
                open = Some(record_id.clone());
            }
            let rates: Vec<String> = record
                .lines
                .iter()
                .map(|line| {
                    let rate =
                        line.amount.value().spread(record.area()).map(|rate| rate.show(farm.units)).unwrap_or_default();
                    format!("{} {rate}", line.name.trim_end_matches(" (demo)"))
                })
                .collect();
            ui.add(egui::Label::new(look::soft(ui, rates.join(" · "))).truncate());
        });
    }
    if older > 0 {
        ui.label(look::soft(ui, format!("{older} older ones stand in the season log")));
    }
    if let Some(record) = open {
        desk.lead_to(&tankard_core::finding::Subject::Record(record));
    }
}

/// Limits that still run on this field from its records: harvest and next crops.
fn may_not(desk: &mut Desk, ui: &mut Ui, id: &Id, field: &Field) {
    let log = desk.document.log();
    let farm = desk.document.farm();
    // A demo or an old farm is read as on the day of its last record.
    let last = log.last_day();
    let today = desk.now().date().max(last.unwrap_or(desk.now().date()));
    ui.label(look::heading("What its records still bind"));
    let mut lines: Vec<(String, String)> = Vec::new();
    for bind in binds(farm, &log, id, field, today) {
        let text = match bind.binds {
            Binds::Harvest { .. } => format!("no harvest before {}", short_date(bind.until)),
            Binds::Planting { crop, .. } => format!("no {crop} before {}", short_date(bind.until)),
        };
        if !lines.iter().any(|(known, _)| *known == text) {
            lines.push((text, bind.at));
        }
    }
    if lines.is_empty() {
        ui.label(look::soft(
            ui,
            "No harvest interval or plant-back time still runs from its records, as far as the labels are typed.",
        ));
    }
    for (text, at) in lines {
        ui.horizontal(|ui| {
            ui.label(text);
            ui.label(look::soft(ui, at));
        });
    }
    ui.label(look::soft(ui, "as typed from the labels; the label and local law govern"));
}
