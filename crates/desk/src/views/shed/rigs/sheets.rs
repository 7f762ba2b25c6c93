//! The sheets beside a rig's pages.

use egui::Ui;
use tankard_core::farm::{Id, Rig};
use tankard_core::quantity::number::show_significant;
use tankard_core::quantity::{Area, Quantity, Units};
use tankard_core::rig::rinse::{RinsePlan, RinseWay, strength};
use tankard_core::rig::set_of;
use tankard_core::t;

use super::super::Bench;
use super::super::sheets::{doubts, pair, planned, sheet};
use super::{Part, calibrations, using};
use crate::look;
use crate::parts::boxes;

/// The sheets of the page that is open.
pub(super) fn show(bench: &mut Bench, ui: &mut Ui) {
    doubts(bench, ui);
    let Some(id) = bench.state.rig.clone() else { return };
    let Some(rig) = bench.farm().rigs.get(&id).cloned() else { return };
    match bench.state.rigs.part {
        Part::Rig => {
            work(ui, &rig, bench.farm().units);
            rinsing(bench, ui, &id, &rig);
            let passes = using(bench.farm(), &id);
            planned(bench, ui, t!("shed-no-planned-pass-goes-with-it"), &passes, |_| None);
        }
        Part::Nozzles => {
            let Some(set) = bench.state.rigs.set.clone() else { return };
            let mut passes = using(bench.farm(), &id);
            passes.retain(|(_, pass)| set_of(bench.farm(), pass).is_some_and(|(id, _)| *id == set));
            planned(bench, ui, t!("shed-no-planned-pass-goes-with-this"), &passes, |_| None);
        }
        Part::Calibration => calibrations::sheets(bench, ui, &id),
    }
}

/// Ground an hour: speed × width × efficiency.
fn work(ui: &mut Ui, rig: &Rig, units: Units) {
    sheet(ui, t!("shed-how-much-it-covers"), |ui| {
        let (Some(speed), Some(boom), Some(efficiency)) = (&rig.speed, &rig.boom, &rig.efficiency) else {
            boxes::say(ui, t!("shed-type-working-width-speed-and-field"));
            return;
        };
        let (one, name) = match units {
            Units::Metric => (Area::from_hectares(1.0), "ha"),
            _ => (Area::from_acres(1.0), "ac"),
        };
        let Some(time) = one.time(speed.value(), boom.value(), efficiency.value()).filter(|time| !time.is_zero())
        else {
            boxes::say(ui, t!("shed-with-nothing-of-speed-width-or"));
            return;
        };
        let covered = format!("{} {name}/h", show_significant(1.0 / time.to_hours()));
        pair(ui, t!("shed-while-in-the-field"), look::strong(covered));
        boxes::say(ui, &format!("{speed} × {boom} × {efficiency}"));
        boxes::say(ui, t!("shed-filling-and-the-road-are-not"));
    });
}

/// What stays in it, and how it is rinsed, by the next planned pass with it.
fn rinsing(bench: &mut Bench, ui: &mut Ui, id: &Id, rig: &Rig) {
    let units = bench.farm().units;
    let log = bench.desk.document.log();
    let next = using(bench.farm(), id).into_iter().find(|(pass, _)| !log.is_recorded(bench.farm(), pass));
    let plan = next.as_ref().and_then(|(pass, _)| bench.desk.document.plan(pass)).and_then(|plan| plan.rinse.clone());
    sheet(ui, t!("shed-rinsing"), |ui| {
        let Some(plan) = plan else {
            let text = match rig.residual.as_ref().filter(|residual| !residual.is_zero()) {
                Some(_) if next.is_some() => t!("shed-type-what-the-clean-water-tank"),
                Some(_) => t!("shed-plan-a-pass-with-it-to"),
                None => t!("shed-type-what-stays-when-it-is"),
            };
            boxes::say(ui, text);
            return;
        };
        ways(ui, &plan, units);
        if let Some((_, pass)) = next {
            boxes::say(ui, &t!("shed-after", name = super::named(&pass.name)));
        }
    });
}

fn ways(ui: &mut Ui, plan: &RinsePlan, units: Units) {
    pair(ui, t!("shed-stays-when-run-dry"), plan.residual.show(units));
    let words = |way: &RinseWay| t!("shed-counted-of-each", rinses = way.rinses, each = way.each.show(units));
    for (at, way) in plan.ways.iter().enumerate() {
        let each = words(way);
        // What several print stands once, with all their names.
        if plan.ways.iter().take(at).any(|other| words(other) == each) {
            continue;
        }
        let mut beneath: Vec<&str> =
            plan.ways.iter().filter(|other| words(other) == each).map(|other| other.basis.source()).collect();
        if !way.on_board {
            beneath.push(t!("shed-more-than-the-clean-water-tank"));
        }
        pair(ui, each, look::strong(t!("shed-left", left = strength(way.left))));
        boxes::say(ui, &beneath.join("; "));
        ui.add_space(2.0);
    }
    if let Some(ground) = plan.last_ground {
        pair(ui, t!("shed-what-stays-would-spray"), ground.show(units));
    }
}
