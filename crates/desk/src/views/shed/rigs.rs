//! Rigs: tank, boom and usual setting of each sprayer.

use egui::Ui;
use tankard_core::farm::{Droplets, Farm, Id, Pass, Rig};
use tankard_core::quantity::number::show_significant;
use tankard_core::quantity::{Area, AsTyped, Quantity, Units};

use super::{Bench, line, named, quiet, section, sheets, title_box, users};
use crate::look;
use crate::parts::{boxes, lists};

fn using(farm: &Farm, id: &str) -> Vec<(Id, Pass)> {
    users(farm, |pass| pass.rig == id)
}

/// The list.
pub(super) fn list(bench: &mut Bench, ui: &mut Ui) {
    let farm = bench.farm();
    if farm.rigs.is_empty() {
        lists::empty(ui, "No rig yet. Walk round the sprayer and add it: the tank first, then the boom.");
    }
    let entries = farm.rigs.iter().map(|(id, rig)| {
        let summary = match &rig.boom {
            Some(boom) => format!("tank {} · boom {boom}", rig.tank),
            None => format!("tank {}", rig.tank),
        };
        (id.clone(), named(&rig.name), summary)
    });
    let entries: Vec<_> = entries.collect();
    let chosen = bench.state.rig.clone();
    super::rows(bench, ui, chosen.as_ref(), entries);
}

/// The foot of the list.
pub(super) fn foot(bench: &mut Bench, ui: &mut Ui) {
    let chosen =
        bench.state.rig.clone().and_then(|id| bench.farm().rigs.get(&id).map(|rig| (id.clone(), named(&rig.name))));
    let uses = chosen.as_ref().map_or(0, |(id, _)| using(bench.farm(), id).len());
    let tank = if bench.farm().units == Units::Metric { "1000 L" } else { "1000 gal" };
    let (added, done) = super::foot(bench, ui, "+ Add a rig", chosen, uses);
    if added && let Ok(tank) = AsTyped::parse(tank) {
        let mut id = Id::new();
        bench.desk.document.edit(|farm| {
            id = tankard_core::farm::id::fresh(&farm.rigs, "rig");
            farm.rigs.insert(id.clone(), Rig::new("New rig", tank));
        });
        bench.state.choose(id);
    }
    if let Some(done) = done {
        super::apply(
            &mut bench.desk.document,
            bench.state,
            done,
            |farm| &mut farm.rigs,
            |rig| {
                rig.name = format!("{}, copy", rig.name);
                rig.name.clone()
            },
        );
    }
}

/// The page of the chosen rig.
pub(super) fn page(bench: &mut Bench, ui: &mut Ui) {
    super::with_sheets(
        bench,
        ui,
        300.0,
        |bench, ui| {
            let chosen = bench.state.rig.clone();
            let Some((id, mut rig)) = chosen.and_then(|id| bench.farm().rigs.get(&id).cloned().map(|rig| (id, rig)))
            else {
                ui.label(look::title("Rigs"));
                lists::empty(ui, "Here stands what a load must fit into, and how fast it is sprayed.");
                return;
            };
            let before = rig.clone();
            let units = bench.farm().units;
            ui.push_id(&id, |ui| {
                quiet(ui);
                form(ui, &mut rig, units);
            });
            if rig != before {
                bench.desk.document.edit(|farm| {
                    if let Some(slot) = farm.rigs.get_mut(&id) {
                        *slot = rig;
                    }
                });
            }
        },
        |bench, ui| {
            let Some(id) = bench.state.rig.clone() else { return };
            let Some(rig) = bench.farm().rigs.get(&id).cloned() else { return };
            work_sheet(ui, &rig, bench.farm().units);
            let passes = using(bench.farm(), &id);
            sheets::planned(bench, ui, "No planned pass goes with it.", &passes, |_| None);
        },
    );
}

fn form(ui: &mut Ui, rig: &mut Rig, units: Units) {
    title_box(ui, "name of the rig", &mut rig.name);
    section(ui, "Tank");
    line(ui, "full to its mark", |ui| {
        boxes::quantity(ui, "full to its mark", &mut rig.tank, 120.0);
        boxes::understood(ui, Some(&rig.tank), units);
    });
    optional(ui, "least that is stirred", &mut rig.least, units);
    optional(ui, "stays when run dry", &mut rig.residual, units);
    section(ui, "Boom and nozzles");
    optional(ui, "working width", &mut rig.boom, units);
    line(ui, "nozzles", |ui| {
        let width = ui.available_width();
        boxes::sentence(ui, "nozzles", &mut rig.nozzles, width, "angle, size, how far apart");
    });
    line(ui, "droplets", |ui| {
        let all: Vec<Option<Droplets>> = std::iter::once(None).chain(Droplets::ALL.into_iter().map(Some)).collect();
        let say = |class: &Option<Droplets>| class.map_or("not known", Droplets::name).to_owned();
        boxes::choice(ui, "droplets", &mut rig.droplets, &all, say, 160.0);
        super::word(ui, "from the nozzle maker's table, at the usual pressure");
    });
    section(ui, "Usual setting");
    optional(ui, "speed", &mut rig.speed, units);
    optional(ui, "pressure", &mut rig.pressure, units);
    optional(ui, "field efficiency", &mut rig.efficiency, units);
    section(ui, "Anything else");
    line(ui, "note", |ui| {
        let width = ui.available_width();
        boxes::sentence(ui, "note", &mut rig.note, width, "anything else");
    });
}

fn optional<Q: Quantity>(ui: &mut Ui, name: &str, value: &mut Option<AsTyped<Q>>, units: Units) {
    line(ui, name, |ui| {
        boxes::quantity_hinted(ui, name, value, 120.0, "not known");
        boxes::understood(ui, value.as_ref(), units);
    });
}

/// Ground an hour: speed × width × efficiency.
fn work_sheet(ui: &mut Ui, rig: &Rig, units: Units) {
    sheets::sheet(ui, "How much it covers", |ui| {
        let (Some(speed), Some(boom), Some(efficiency)) = (&rig.speed, &rig.boom, &rig.efficiency) else {
            sheets::say(ui, "Type working width, speed and field efficiency to see it.");
            return;
        };
        let (one, name) = match units {
            Units::Metric => (Area::from_hectares(1.0), "ha"),
            _ => (Area::from_acres(1.0), "ac"),
        };
        let Some(time) = one.time(speed.value(), boom.value(), efficiency.value()).filter(|time| !time.is_zero())
        else {
            sheets::say(ui, "With nothing of speed, width or efficiency it covers nothing.");
            return;
        };
        let covered = format!("{} {name}/h", show_significant(1.0 / time.to_hours()));
        sheets::pair(ui, "while in the field", look::strong(covered));
        sheets::say(ui, &format!("{speed} × {boom} × {efficiency}"));
        sheets::say(ui, "Filling and the road are not in it.");
    });
}
