//! A day in words and as JSON.

use std::fmt::Write;

use serde_json::{Value, json};
use tankard_core::day::{DayCost, DayPlan, RigDay, Slot};
use tankard_core::farm::Farm;
use tankard_core::language::days::long_date;
use tankard_core::quantity::Duration;
use tankard_core::t;

use super::{json, text, words};

/// The passes of a day in their order, as a person reads them in a terminal.
pub fn day(farm: &Farm, day: &DayPlan) -> String {
    let mut out = String::new();
    // Writing to a string does not fail.
    let _ = write(farm, day, &mut out);
    out
}

fn write(farm: &Farm, day: &DayPlan, out: &mut String) -> std::fmt::Result {
    writeln!(out, "{}", long_date(day.date))?;
    let name = |id: &str| farm.passes.get(id).map_or_else(|| id.to_owned(), |pass| pass.name.clone());
    for rig in &day.rigs {
        writeln!(out, "  {}", farm.rigs.get(&rig.rig).map_or(rig.rig.as_str(), |rig| rig.name.as_str()))?;
        for id in &rig.done {
            writeln!(out, "{}", t!("report-sprayed", id = name(id), id2 = id))?;
        }
        for (at, slot) in rig.slots.iter().enumerate() {
            writeln!(out, "  {:>2}. {}   [{}]", at + 1 + rig.done.len(), name(&slot.pass), slot.pass)?;
            writeln!(out, "      {}.", words::slot_words(slot, farm.units))?;
        }
        for words in words::day_words(rig, farm.units) {
            writeln!(out, "    {words}.")?;
        }
    }
    for slot in &day.loose {
        writeln!(out, "   - {}   [{}]", name(&slot.pass), slot.pass)?;
        writeln!(out, "      {}.", words::slot_words(slot, farm.units))?;
    }
    for finding in &day.findings {
        writeln!(out, "  {}", text::finding(finding))?;
    }
    Ok(())
}

/// The same as JSON, times by the farm's clock and lengths of time in seconds. Keys are only added, never renamed.
pub fn json(farm: &Farm, days: &[DayPlan]) -> Value {
    let of = |day: &DayPlan| {
        json!({
            "date": day.date.to_string(),
            "rigs": day.rigs.iter().map(rig).collect::<Vec<_>>(),
            "without_rig": day.loose.iter().map(slot).collect::<Vec<_>>(),
            "findings": day.findings.iter().map(json::finding).collect::<Vec<_>>(),
        })
    };
    json!({ "format": 1, "farm": farm.name, "days": days.iter().map(of).collect::<Vec<_>>() })
}

fn rig(rig: &RigDay) -> Value {
    json!({
        "id": rig.rig,
        "sprayed": rig.done,
        "passes": rig.slots.iter().map(slot).collect::<Vec<_>>(),
        "leaves": rig.leaves.map(|time| time.to_string()),
        "way_home_s": rig.way_home.to_seconds(),
        "cost": cost(&rig.cost),
        "best": rig.best.as_ref().map(cost),
        "held": rig.held,
        "proof": rig.proof,
    })
}

fn cost(cost: &DayCost) -> Value {
    json!({
        "no_place": cost.no_place,
        "parted": cost.parted,
        "doubtful": cost.doubtful,
        "sensitive": cost.sensitive,
        "clean_outs": cost.clean_outs,
        "not_spraying_s": cost.not_spraying.to_seconds(),
        "lasts_s": cost.lasts.to_seconds(),
        "home": cost.home.map(|time| time.to_string()),
    })
}

fn slot(slot: &Slot) -> Value {
    json!({
        "pass": slot.pass,
        "from": slot.span.map(|span| span.from.to_string()),
        "to": slot.span.map(|span| span.to.to_string()),
        "takes_s": slot.takes.map(Duration::to_seconds),
        "clean_out_s": slot.clean_out.map(Duration::to_seconds),
        "road_s": slot.travel.map(Duration::to_seconds),
        "verdict": slot.verdict.map(json::verdict),
        "held": slot.held,
        "goes_on": slot.goes_on,
        "fills_saved": slot.fills_saved,
        "why": slot.why,
    })
}
