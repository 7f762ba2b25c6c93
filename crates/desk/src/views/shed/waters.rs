//! Waters: what a laboratory report states, and what it means for the tank.

use egui::Ui;
use tankard_core::farm::{Farm, Id, Pass, Water};
use tankard_core::plan::plan;
use tankard_core::quantity::number::show;
use tankard_core::quantity::{AsTyped, IonContent, Quantity, Units};
use tankard_core::water::{conditioner, hardness, need};
use tankard_core::working::Working;

use super::{Bench, line, named, quiet, section, sheets, title_box, users, word};
use crate::look;
use crate::parts::{boxes, lists, workings};

fn using(farm: &Farm, id: &str) -> Vec<(Id, Pass)> {
    users(farm, |pass| pass.water == id)
}

/// The list.
pub(super) fn list(bench: &mut Bench, ui: &mut Ui) {
    let farm = bench.farm();
    if farm.waters.is_empty() {
        lists::empty(
            ui,
            "No water yet. Take a laboratory report and add the first one: calcium and magnesium matter most.",
        );
    }
    let entries = farm.waters.iter().map(|(id, water)| {
        let summary = hardness(water)
            .map_or_else(|| "no analysis".to_owned(), |hardness| format!("{} hard", hardness.show(farm.units)));
        (id.clone(), named(&water.name), summary)
    });
    let entries: Vec<_> = entries.collect();
    let chosen = bench.state.water.clone();
    super::rows(bench, ui, chosen.as_ref(), entries);
}

/// The foot of the list.
pub(super) fn foot(bench: &mut Bench, ui: &mut Ui) {
    let chosen = bench
        .state
        .water
        .clone()
        .and_then(|id| bench.farm().waters.get(&id).map(|water| (id.clone(), named(&water.name))));
    let uses = chosen.as_ref().map_or(0, |(id, _)| using(bench.farm(), id).len());
    let (added, done) = super::foot(bench, ui, "+ Add a water", chosen, uses);
    if added {
        let mut id = Id::new();
        bench.desk.document.edit(|farm| {
            id = tankard_core::farm::id::fresh(&farm.waters, "water");
            farm.waters.insert(id.clone(), Water { name: "New water".to_owned(), ..Water::default() });
        });
        bench.state.choose(id);
    }
    if let Some(done) = done {
        super::apply(
            &mut bench.desk.document,
            bench.state,
            done,
            |farm| &mut farm.waters,
            |water| {
                water.name = format!("{}, copy", water.name);
                water.name.clone()
            },
        );
    }
}

/// The page of the chosen water.
pub(super) fn page(bench: &mut Bench, ui: &mut Ui) {
    super::with_sheets(
        bench,
        ui,
        340.0,
        |bench, ui| {
            let chosen = bench.state.water.clone();
            let Some((id, mut water)) =
                chosen.and_then(|id| bench.farm().waters.get(&id).cloned().map(|water| (id, water)))
            else {
                ui.label(look::title("Waters"));
                lists::empty(ui, "Here stands what a laboratory found in the water that fills the tank.");
                return;
            };
            let before = water.clone();
            let units = bench.farm().units;
            ui.push_id(&id, |ui| {
                quiet(ui);
                form(ui, &mut water, units);
            });
            if water != before {
                bench.desk.document.edit(|farm| {
                    if let Some(slot) = farm.waters.get_mut(&id) {
                        *slot = water;
                    }
                });
            }
        },
        |bench, ui| {
            let Some(id) = bench.state.water.clone() else { return };
            let Some(water) = bench.farm().waters.get(&id).cloned() else { return };
            let units = bench.farm().units;
            let (ties, hard) = reckoned(&water, units);
            hardness_sheet(ui, &water, &hard);
            need_sheet(ui, &water, units, &ties);
            let passes = using(bench.farm(), &id);
            sheets::planned(bench, ui, "No planned pass takes it.", &passes, |_| None);
        },
    );
}

fn form(ui: &mut Ui, water: &mut Water, units: Units) {
    title_box(ui, "name of the water", &mut water.name);
    ui.label(look::soft(
        ui,
        "As the laboratory states it. What the report does not state stays empty and is not taken for nothing.",
    ));
    section(ui, "Ions");
    ion(ui, "calcium", &mut water.calcium, units);
    ion(ui, "magnesium", &mut water.magnesium, units);
    ion(ui, "sodium", &mut water.sodium, units);
    ion(ui, "potassium", &mut water.potassium, units);
    ion(ui, "iron", &mut water.iron, units);
    ion(ui, "bicarbonate", &mut water.bicarbonate, units);
    section(ui, "Hardness and pH");
    line(ui, "hardness", |ui| {
        boxes::quantity_hinted(ui, "hardness", &mut water.hardness, 120.0, "not stated");
        boxes::understood(ui, water.hardness.as_ref(), units);
        if water.hardness.is_none() {
            word(ui, "only where calcium and magnesium are not given apart");
        } else if water.calcium.is_some() && water.magnesium.is_some() {
            word(ui, "calcium and magnesium are used instead");
        }
    });
    line(ui, "pH", |ui| {
        boxes::quantity_hinted(ui, "pH", &mut water.acidity, 120.0, "not stated");
    });
    section(ui, "Sample");
    line(ui, "sampled", |ui| {
        boxes::date_or_none(ui, "sampled", &mut water.sampled, 120.0);
    });
    line(ui, "note", |ui| {
        let width = ui.available_width();
        boxes::sentence(ui, "note", &mut water.note, width, "who analysed it, or anything else");
    });
}

fn ion(ui: &mut Ui, name: &str, value: &mut Option<AsTyped<IonContent>>, units: Units) {
    line(ui, name, |ui| {
        boxes::quantity_hinted(ui, name, value, 120.0, "not stated");
        boxes::understood(ui, value.as_ref(), units);
    });
}

fn hardness_sheet(ui: &mut Ui, water: &Water, reckoned: &[Working]) {
    sheets::sheet(ui, "Hardness, as calcium carbonate", |ui| {
        let Some(hardness) = hardness(water) else {
            sheets::say(ui, "Type calcium and magnesium, or the hardness, to see it.");
            return;
        };
        for (unit, value) in [
            ("ppm", show(hardness.to_ppm(), 0)),
            ("grains/gal", show(hardness.to_grains_per_us_gallon(), 1)),
            ("German degrees", show(hardness.to_german_degrees(), 1)),
            ("French degrees", show(hardness.to_french_degrees(), 1)),
        ] {
            sheets::pair(ui, unit, value);
        }
        show_workings(ui, reckoned);
    });
}

fn need_sheet(ui: &mut Ui, water: &Water, units: Units, reckoned: &[Working]) {
    sheets::sheet(ui, "Ammonium sulfate that it ties up", |ui| {
        let Some(need) = need(water) else {
            sheets::say(ui, "Type calcium and magnesium, or the hardness, to see it.");
            return;
        };
        let without = if need.without_iron == need.without_iron_most {
            need.without_iron.show(units)
        } else {
            format!("{} to {}", need.without_iron.show(units), need.without_iron_most.show(units))
        };
        sheets::pair(ui, "without iron", look::strong(without));
        match need.with_iron {
            Some(with) => sheets::pair(ui, "with iron", look::strong(with.show(units))),
            None => sheets::pair(ui, "with iron", look::soft(ui, "not known")),
        }
        if !need.missing.is_empty() {
            sheets::say(ui, &format!("Not stated, so not counted: {}.", need.missing.join(", ")));
        }
        show_workings(ui, reckoned);
        ui.add_space(4.0);
        sheets::say(ui, conditioner::SOURCE);
    });
}

/// Workings in small letters, so that a step stays on its line.
fn show_workings(ui: &mut Ui, all: &[Working]) {
    ui.scope(|ui| {
        super::small(ui);
        for working in all {
            ui.add_space(4.0);
            workings::show(ui, working);
        }
    });
}

/// The workings of a water by itself: of what it ties up, and of its hardness. They come through the plan of a pass that
/// has nothing but this water, so that they are the same as those of the passes.
fn reckoned(water: &Water, units: Units) -> (Vec<Working>, Vec<Working>) {
    let name = "this water";
    let mut farm = Farm { units, ..Farm::new("") };
    farm.waters.insert(name.to_owned(), Water { name: name.to_owned(), ..water.clone() });
    let mut pass = Pass::new("", jiff::civil::Date::ZERO);
    name.clone_into(&mut pass.water);
    farm.passes.insert(Id::new(), pass);
    let all = plan(&farm, "").map(|plan| plan.workings).unwrap_or_default();
    all.into_iter()
        .filter(|working| working.title.ends_with(name))
        .partition(|working| !working.title.starts_with("Hardness"))
}
