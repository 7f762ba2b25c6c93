//! The rig itself, in the order in which a person walks round it: tank, boom, nozzles, setting, filling and road, rinsing.

use egui::Ui;
use tankard_core::farm::{Id, Pulse, Rig};
use tankard_core::plausible::Slot;
use tankard_core::quantity::{AsTyped, Duration, Units};
use tankard_core::t;

use super::super::{Bench, line, section, statements, word};
use super::{Part, doubtful, nozzles, optional, tick};
use crate::parts::{boxes, offers};

/// The form.
pub(super) fn show(bench: &mut Bench, ui: &mut Ui, id: &Id, rig: &mut Rig) {
    let units = bench.farm().units;
    section(ui, t!("shed-tank"));
    line(ui, t!("shed-full-to-its-mark"), |ui| {
        boxes::quantity(ui, t!("shed-full-to-its-mark"), &mut rig.tank, 120.0);
        offers::at_box(ui, t!("shed-full-to-its-mark"), &Slot::Tank(id.clone()));
        statements::understood(ui, &rig.tank, units);
    });
    line(ui, t!("shed-finest-mark"), |ui| {
        let example = match units {
            Units::UsCustomary => "10 gal",
            Units::Imperial => "10 imp gal",
            Units::Metric => "50 L",
        };
        boxes::quantity_hinted(ui, t!("shed-finest-mark"), &mut rig.mark, 120.0, &t!("parts-e-g", example = example));
        boxes::understood(ui, rig.mark.as_ref(), units);
        word(ui, t!("shed-on-the-tank-or-the-meter"));
    });
    optional(ui, t!("shed-least-that-is-stirred"), &mut rig.least, units, "");
    section(ui, t!("shed-boom"));
    doubtful(ui, t!("shed-working-width"), &mut rig.boom, units, Slot::Boom(id.clone()), "");
    doubtful(
        ui,
        t!("shed-usual-height"),
        &mut rig.height,
        units,
        Slot::RigHeight(id.clone()),
        t!("shed-of-the-nozzles-above-what-is"),
    );
    pulse(ui, rig);
    section(ui, t!("shed-nozzles"));
    if rig.sets.is_empty() {
        in_words(bench, ui, rig);
    } else {
        line(ui, t!("shed-usually-fitted"), |ui| {
            nozzles::fitted(ui, rig);
            to_the_sets(bench, ui, t!("shed-nozzle-sets-of-this-rig"));
        });
    }
    section(ui, t!("shed-usual-setting"));
    doubtful(ui, t!("shed-speed"), &mut rig.speed, units, Slot::RigSpeed(id.clone()), "");
    doubtful(ui, t!("shed-pressure"), &mut rig.pressure, units, Slot::RigPressure(id.clone()), "");
    optional(ui, t!("shed-field-efficiency"), &mut rig.efficiency, units, t!("shed-share-of-the-time-that-is"));
    section(ui, t!("shed-filling-and-road"));
    time(ui, t!("shed-stop-of-a-filling"), &mut rig.stop, t!("shed-hose-on-and-off-rinsing-jugs"));
    time(ui, t!("shed-each-product-added"), &mut rig.addition, "");
    optional(ui, t!("shed-nurse-tank-holds"), &mut rig.nurse, units, "");
    optional(ui, t!("shed-speed-on-the-road"), &mut rig.road_speed, units, "");
    section(ui, t!("shed-rinsing"));
    optional(ui, t!("shed-stays-when-run-dry"), &mut rig.residual, units, t!("shed-in-tank-lines-and-boom"));
    optional(ui, t!("shed-lines-and-boom-hold"), &mut rig.lines, units, t!("shed-between-the-tank-and-the-nozzles"));
    optional(ui, t!("shed-clean-water-tank"), &mut rig.clean_water, units, "");
    section(ui, t!("shed-anything-else"));
    line(ui, t!("shed-note"), |ui| {
        let width = ui.available_width();
        boxes::sentence(ui, t!("shed-note"), &mut rig.note, width, t!("shed-anything-else-380"));
    });
}

/// Nozzles in words and one class, where no set is typed.
fn in_words(bench: &mut Bench, ui: &mut Ui, rig: &mut Rig) {
    line(ui, t!("shed-nozzles-row"), |ui| {
        let width = ui.available_width();
        boxes::sentence(ui, t!("shed-nozzles-row"), &mut rig.nozzles, width, t!("shed-angle-size-how-far-apart"));
    });
    line(ui, t!("shed-droplets-row"), |ui| {
        boxes::droplets_or_none(ui, t!("shed-droplets-row"), &mut rig.droplets, t!("shed-not-known"), 160.0);
        word(ui, t!("shed-from-the-nozzle-makers-table-at"));
    });
    line(ui, "", |ui| {
        to_the_sets(bench, ui, t!("shed-type-a-nozzle-set"));
        word(ui, t!("shed-then-speed-pressure-and-droplets-can"));
    });
}

fn to_the_sets(bench: &mut Bench, ui: &mut Ui, text: &str) {
    if boxes::act(ui, text).clicked() {
        bench.state.rigs.part = Part::Nozzles;
    }
}

/// Valves that open and close many times a second.
fn pulse(ui: &mut Ui, rig: &mut Rig) {
    line(ui, t!("shed-pulsed-valves"), |ui| {
        let mut is_fitted = rig.pulse.is_some();
        tick(ui, t!("shed-valves-pulse"), "", &mut is_fitted);
        if is_fitted && rig.pulse.is_none() {
            // The least share is the valve maker's; it begins at nothing, which is noticed.
            if let (Ok(least), Ok(most)) = (AsTyped::parse("0 %"), AsTyped::parse("100 %")) {
                rig.pulse = Some(Pulse { least, most });
            }
        } else if !is_fitted {
            rig.pulse = None;
        }
        match &mut rig.pulse {
            None => word(ui, t!("shed-valves-that-open-and-close-the")),
            Some(pulse) => {
                word(ui, t!("shed-open-at-least"));
                boxes::quantity(ui, t!("shed-least-share-open"), &mut pulse.least, 60.0);
                word(ui, t!("shed-and-at-most"));
                boxes::quantity(ui, t!("shed-most-share-open"), &mut pulse.most, 60.0);
                word(ui, t!("shed-of-the-time"));
                if pulse.least.text().starts_with("0 ") {
                    statements::understood(ui, &pulse.least, Units::default());
                }
            }
        }
    });
}

/// A time of a few minutes.
fn time(ui: &mut Ui, name: &str, value: &mut Option<AsTyped<Duration>>, beside: &str) {
    line(ui, name, |ui| {
        boxes::quantity_in(ui, name, value, 120.0, &t!("parts-e-g", example = "20 min"), "min");
        word(ui, beside);
    });
}
