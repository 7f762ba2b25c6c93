//! The rig itself, in the order in which a person walks round it: tank, boom, nozzles, setting, filling and road, rinsing.

use egui::Ui;
use tankard_core::farm::{Id, Pulse, Rig};
use tankard_core::plausible::Slot;
use tankard_core::quantity::{AsTyped, Duration, Units};

use super::super::{Bench, line, lines, section, statements, word};
use super::{Part, doubtful, nozzles, optional, tick};
use crate::parts::{boxes, offers};

/// The form.
pub(super) fn show(bench: &mut Bench, ui: &mut Ui, id: &Id, rig: &mut Rig) {
    let units = bench.farm().units;
    section(ui, "Tank");
    line(ui, "full to its mark", |ui| {
        boxes::quantity(ui, "full to its mark", &mut rig.tank, 120.0);
        offers::at_box(ui, "full to its mark", &Slot::Tank(id.clone()));
        boxes::understood(ui, Some(&rig.tank), units);
    });
    optional(ui, "finest mark", &mut rig.mark, units, "on the tank or the meter; loads are sized to it");
    optional(ui, "least that is stirred", &mut rig.least, units, "");
    section(ui, "Boom");
    doubtful(ui, "working width", &mut rig.boom, units, Slot::Boom(id.clone()), "");
    doubtful(
        ui,
        "usual height",
        &mut rig.height,
        units,
        Slot::RigHeight(id.clone()),
        "of the nozzles above what is sprayed",
    );
    pulse(ui, rig);
    section(ui, "Nozzles");
    if rig.sets.is_empty() {
        in_words(bench, ui, rig);
    } else {
        line(ui, "usually fitted", |ui| {
            nozzles::fitted(ui, rig);
            to_the_sets(bench, ui, "Nozzle sets of this rig");
        });
    }
    section(ui, "Usual setting");
    doubtful(ui, "speed", &mut rig.speed, units, Slot::RigSpeed(id.clone()), "");
    doubtful(ui, "pressure", &mut rig.pressure, units, Slot::RigPressure(id.clone()), "");
    optional(ui, "field efficiency", &mut rig.efficiency, units, "share of the time that is spent spraying");
    section(ui, "Filling and road");
    time(ui, "stop of a filling", &mut rig.stop, "hose on and off, rinsing jugs; without running water");
    time(ui, "each product added", &mut rig.addition, "");
    optional(ui, "nurse tank holds", &mut rig.nurse, units, "");
    optional(ui, "speed on the road", &mut rig.road_speed, units, "");
    section(ui, "Rinsing");
    optional(ui, "stays when run dry", &mut rig.residual, units, "in tank, lines and boom");
    optional(ui, "lines and boom hold", &mut rig.lines, units, "between the tank and the nozzles");
    optional(ui, "clean-water tank", &mut rig.clean_water, units, "");
    section(ui, "Anything else");
    line(ui, "note", |ui| {
        let width = ui.available_width();
        boxes::sentence(ui, "note", &mut rig.note, width, "anything else");
    });
}

/// Nozzles in words and one class, where no set is typed.
fn in_words(bench: &mut Bench, ui: &mut Ui, rig: &mut Rig) {
    line(ui, "nozzles", |ui| {
        let width = ui.available_width();
        boxes::sentence(ui, "nozzles", &mut rig.nozzles, width, "angle, size, how far apart");
    });
    lines(ui, "droplets", |ui| {
        boxes::droplets_or_none(ui, "droplets", &mut rig.droplets, "not known", 160.0);
        word(ui, "from the nozzle maker's table, at the usual pressure");
    });
    lines(ui, "", |ui| {
        to_the_sets(bench, ui, "Type a nozzle set");
        word(ui, "then speed, pressure and droplets can be reckoned for a pass");
    });
}

fn to_the_sets(bench: &mut Bench, ui: &mut Ui, text: &str) {
    if boxes::act(ui, text).clicked() {
        bench.state.rigs.part = Part::Nozzles;
    }
}

/// Valves that open and close many times a second.
fn pulse(ui: &mut Ui, rig: &mut Rig) {
    lines(ui, "pulsed valves", |ui| {
        let mut is_fitted = rig.pulse.is_some();
        tick(ui, "valves pulse", "", &mut is_fitted);
        if is_fitted && rig.pulse.is_none() {
            // The least share is the valve maker's; it begins at nothing, which is noticed.
            if let (Ok(least), Ok(most)) = (AsTyped::parse("0 %"), AsTyped::parse("100 %")) {
                rig.pulse = Some(Pulse { least, most });
            }
        } else if !is_fitted {
            rig.pulse = None;
        }
        match &mut rig.pulse {
            None => word(ui, "valves that open and close the nozzles many times a second"),
            Some(pulse) => {
                word(ui, "open at least");
                boxes::quantity(ui, "least share open", &mut pulse.least, 60.0);
                word(ui, "and at most");
                boxes::quantity(ui, "most share open", &mut pulse.most, 60.0);
                word(ui, "of the time");
                if pulse.least.text().starts_with("0 ") {
                    statements::understood(ui, &pulse.least, Units::default());
                }
            }
        }
    });
}

/// A time of a few minutes.
fn time(ui: &mut Ui, name: &str, value: &mut Option<AsTyped<Duration>>, beside: &str) {
    lines(ui, name, |ui| {
        boxes::quantity_in(ui, name, value, 120.0, "not known", "min");
        word(ui, beside);
    });
}
