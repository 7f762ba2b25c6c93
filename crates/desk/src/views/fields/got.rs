//! What a field got: its crops by year, its resistance groups by season, and its records.

use egui::{Label, Ui};
use tankard_core::farm::{Farm, Id, ProductKind};
use tankard_core::finding::Level;
use tankard_core::language::days::short_date;
use tankard_core::quantity::Quantity;
use tankard_core::season::field::{CropYear, Sprayed};
use tankard_core::season::review::words::again;
use tankard_core::season::review::{FieldGroups, GroupRow};
use tankard_core::t;

use crate::look;
use crate::parts::{boxes, lists, mark};
use crate::views::tank_loads::cell;

/// How many records of a field are listed; the others are found in the season log.
const SHOWN: usize = 40;
/// How many seasons of groups stand beside one another.
const SEASONS: usize = 6;
const NAME: f32 = 120.0;
const YEAR: f32 = 52.0;

/// The crops, the latest year first.
pub(super) fn crops(ui: &mut Ui, years: &[CropYear]) {
    ui.label(look::heading(t!("fields-crops-by-year")));
    if years.is_empty() {
        lists::empty(ui, t!("fields-no-crop-is-typed-and-no"));
    }
    for year in years {
        ui.horizontal(|ui| {
            boxes::slot(ui, 60.0, |ui| ui.label(year.year.to_string()));
            let crops: Vec<&str> = year.crops.iter().map(|(crop, _)| crop.as_str()).collect();
            let from: Vec<&str> = year.crops.iter().map(|(_, from)| from.name()).collect();
            let crops =
                if crops.is_empty() { t!("fields-crop-not-typed").to_owned() } else { crops.join(t!("fields-then")) };
            ui.label(crops);
            let records = match year.records {
                0 => t!("fields-no-record").to_owned(),
                count => t!("fields-records", count = count),
            };
            let from = if from.is_empty() { records } else { format!("{}; {records}", from.join(", ")) };
            ui.label(look::soft(ui, from));
        });
    }
}

/// "Herbicide group 9".
fn name(kind: ProductKind, group: &str) -> String {
    format!("{} {group}", kind.name())
}

/// The groups by season; what came again too soon carries the triangle of a Check.
pub(super) fn groups(ui: &mut Ui, groups: Option<&FieldGroups>) {
    ui.label(look::heading(t!("fields-resistance-groups-by-season")));
    let Some(groups) = groups else {
        lists::empty(ui, t!("fields-no-record-of-it-holds-a"));
        return;
    };
    let mut years: Vec<i16> = groups.rows.iter().flat_map(|row| row.years.iter().map(|(year, _)| *year)).collect();
    years.sort_unstable_by_key(|year| std::cmp::Reverse(*year));
    years.dedup();
    years.truncate(SEASONS);
    years.reverse();
    ui.horizontal(|ui| {
        cell(ui, NAME, false, |ui| drop(ui.label(look::soft(ui, t!("fields-head-group")))));
        for year in &years {
            cell(ui, YEAR, true, |ui| drop(ui.label(look::soft(ui, year.to_string()))));
        }
    });
    for row in &groups.rows {
        ui.horizontal(|ui| {
            cell(ui, NAME, false, |ui| {
                ui.add(Label::new(name(row.kind, &row.group)).truncate());
            });
            for year in &years {
                cell(ui, YEAR, true, |ui| {
                    let times = row.years.iter().find(|(of, _)| of == year).map_or(0, |(_, times)| *times);
                    ui.label(if times == 0 { "–".to_owned() } else { times.to_string() });
                    if times > 0 && row.came_again(*year) {
                        mark::show(ui, Level::Check);
                    }
                });
            }
        });
        repeats(ui, row);
    }
    sources(ui, groups);
}

/// How a group came again, in one line.
fn repeats(ui: &mut Ui, row: &GroupRow) {
    if row.repeats.is_empty() {
        return;
    }
    let all: Vec<String> = row.repeats.iter().map(again).collect();
    ui.horizontal_top(|ui| {
        ui.spacing_mut().item_spacing.x = 4.0;
        ui.add_space(look::GRID);
        mark::show(ui, Level::Check);
        ui.add(
            Label::new(look::soft(ui, t!("fields-came", name = name(row.kind, &row.group), all = all.join("; "))))
                .wrap(),
        );
    });
}

/// Who says that it was too soon, each once.
fn sources(ui: &mut Ui, groups: &FieldGroups) {
    let mut said: Vec<String> = Vec::new();
    for repeat in groups.rows.iter().flat_map(|row| &row.repeats) {
        let source = repeat.basis.to_string();
        if !said.contains(&source) {
            said.push(source);
        }
    }
    for source in said {
        ui.add(Label::new(look::soft(ui, t!("fields-by", source = source))).wrap());
    }
}

/// The records, the latest first.
pub(super) fn sprayed(ui: &mut Ui, sprayed: &[Sprayed], farm: &Farm, open: &mut Option<Id>) {
    ui.label(look::heading(t!("fields-what-it-got")));
    if sprayed.is_empty() {
        lists::empty(ui, t!("fields-nothing-is-recorded-on-it-yet"));
    }
    for (at, one) in sprayed.iter().take(SHOWN).enumerate() {
        if at > 0 {
            boxes::hairline(ui);
        }
        record(ui, one, farm, open);
    }
    let older = sprayed.len().saturating_sub(SHOWN);
    if older > 0 {
        ui.label(look::soft(ui, t!("fields-older-ones-stand-in-the-season", older = older)));
    }
}

fn record(ui: &mut Ui, sprayed: &Sprayed, farm: &Farm, open: &mut Option<Id>) {
    ui.horizontal(|ui| {
        boxes::slot(ui, 110.0, |ui| ui.label(short_date(sprayed.date)));
        let name = t!("fields-open-the-record-of", name = sprayed.name, date = sprayed.date);
        if boxes::act(ui, &sprayed.name).accessible_name(name).clicked() {
            *open = Some(sprayed.record.clone());
        }
        let on = &sprayed.on;
        let area = on.area.map(|area| area.show(farm.units)).unwrap_or_default();
        let about: Vec<&str> =
            [on.crop.as_str(), on.part.as_str(), area.as_str()].into_iter().filter(|text| !text.is_empty()).collect();
        ui.add(Label::new(look::soft(ui, about.join(", "))).truncate());
    });
    let lines: Vec<String> = sprayed
        .lines
        .iter()
        .map(|line| {
            let rate = line.rate.map(|rate| format!(" {}", rate.show(farm.units))).unwrap_or_default();
            let actives =
                if line.actives.is_empty() { String::new() } else { format!(" ({})", line.actives.join(", ")) };
            format!("{}{rate}{actives}", line.name.trim_end_matches(" (demo)"))
        })
        .collect();
    ui.add(Label::new(lines.join(" · ")).wrap());
    if !sprayed.groups.is_empty() {
        ui.horizontal_wrapped(|ui| {
            ui.spacing_mut().item_spacing.x = 4.0;
            ui.label(look::soft(ui, t!("fields-head-groups")));
            for (kind, group, again) in &sprayed.groups {
                let words = name(*kind, group);
                if *again {
                    mark::show(ui, Level::Check);
                    ui.label(look::soft(ui, t!("fields-again", words = words)).color(look::colours(ui).check));
                } else {
                    ui.label(look::soft(ui, words));
                }
            }
        });
    }
}
