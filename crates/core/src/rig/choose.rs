//! Which of the rig's nozzle sets does a pass best, and why.

use std::cmp::Ordering;

use super::reckon::{Reckoned, Task, in_tenths, open_words, within};
use super::setting::{Between, Classes, CurvePoint, Fit, RankedSet};
use crate::farm::Id;
use crate::finding::Basis;
use crate::language::t;
use crate::quantity::{Pressure, Quantity, Share, Speed};

/// The sets in order: those that do the pass as planned, those that do it at another speed, those of which too little is typed,
/// those that do not do it. Among equals comes first the set that is fitted, since nothing need be changed; then the one whose
/// pressure (or valves) stays nearest the middle of its range, or whose speed stays nearest the planned one.
pub(super) fn rank(task: &Task, reckoned: &[Reckoned], chosen: Option<&Id>, fitted: Option<&Id>) -> Vec<RankedSet> {
    let mut ranked: Vec<(f64, RankedSet)> = reckoned
        .iter()
        .map(|one| {
            let (fit, speed) = fit(task, one);
            let is_fitted = Some(one.id) == fitted;
            let mut reasons = reasons(task, one, fit, speed);
            if is_fitted && fit <= Fit::AtAnotherSpeed && reckoned.len() > 1 {
                reasons.push((t!("rig-it-is-the-set-usually-fitted").to_owned(), Basis::Practice));
            }
            let set = RankedSet { setting: one.setting.clone(), fit, speed, chosen: Some(one.id) == chosen, reasons };
            (if is_fitted { -1.0 } else { off_the_middle(task, one, fit, speed) }, set)
        })
        .collect();
    ranked.sort_by(|(a, one), (b, other)| match one.fit.cmp(&other.fit) {
        Ordering::Equal => a.total_cmp(b),
        unlike => unlike,
    });
    ranked.into_iter().map(|(_, set)| set).collect()
}

/// How well a set does the pass, and the speed to drive with it.
pub(super) fn fit(task: &Task, one: &Reckoned) -> (Fit, Option<Speed>) {
    if !one.lacks.is_empty() {
        return (Fit::NotKnown, None);
    }
    match one.drive(task) {
        Some(speed) if speed == task.speed => (Fit::Suits, Some(speed)),
        Some(speed) => (Fit::AtAnotherSpeed, Some(speed)),
        None => (Fit::No, None),
    }
}

/// 0 in the middle of the range, 1 at its ends; at another speed, how far that is from the planned one.
fn off_the_middle(task: &Task, one: &Reckoned, fit: Fit, speed: Option<Speed>) -> f64 {
    fn off(least: f64, value: f64, most: f64) -> f64 {
        if most > least { ((2.0 * value - least - most) / (most - least)).abs() } else { 0.0 }
    }
    match (fit, one.setting.pressure, one.range, one.setting.duty.zip(task.may_open())) {
        (Fit::Suits, _, _, Some((duty, may))) => {
            off(may.least.to_fraction(), duty.to_fraction(), may.most.to_fraction())
        }
        (Fit::Suits, Some(pressure), Some(range), None) => {
            off(range.least.to_pascals(), pressure.to_pascals(), range.most.to_pascals())
        }
        (Fit::AtAnotherSpeed, ..) => {
            speed.and_then(|speed| speed.ratio(task.speed)).map_or(0.0, |ratio| (ratio - 1.0).abs())
        }
        _ => 0.0,
    }
}

/// What a set gives at a speed: "Size 06 gives 15 gal/ac at 12 mph with 40 psi; coarse, as both labels ask".
pub(super) fn gives(task: &Task, name: &str, point: &CurvePoint) -> String {
    let units = task.units;
    let valves = point.duty.map_or_else(String::new, |duty| t!("rig-valves-open", show_whole = duty.show_whole()));
    let droplets = match point.classes {
        Some(classes) if task.asked.droplets.is_some() && task.asked.suit(classes) => {
            t!("rig-droplets-as-asked", classes = classes.words(), who = task.asked.who())
        }
        Some(classes) => format!("; {}", classes.words()),
        None => String::new(),
    };
    t!(
        "rig-gives-at-with",
        name = name,
        carrier = task.carrier.show(units),
        speed = point.speed.show(units),
        pressure = point.pressure.show(units),
        valves = valves,
        droplets = droplets
    )
}

/// Why a set cannot be driven at a speed as things are.
pub(super) fn against(task: &Task, one: &Reckoned, point: &CurvePoint) -> Vec<(String, Basis)> {
    let (units, mut why) = (task.units, Vec::new());
    let speed = point.speed.show(units);
    if let Some((above, limit)) = one.range.and_then(|range| beyond(range, point.pressure)) {
        let limit = limit.show(units);
        let shown = point.pressure.show(units);
        let side = match (above, shown == limit) {
            (true, false) => "above",
            (true, true) => "just-above",
            (false, false) => "below",
            (false, true) => "just-below",
        };
        let text = if point.duty.is_some() {
            t!("rig-at-it-is-held-beyond-the-table", speed = speed, shown = shown, side = side, limit = limit)
        } else {
            t!("rig-at-it-needs-beyond-the-table", speed = speed, shown = shown, side = side, limit = limit)
        };
        why.push((text, Basis::Arithmetic));
    }
    if let Some((duty, may)) = point.duty.zip(task.may_open())
        && !within(may, duty, Share::exceeds)
    {
        why.push((
            t!(
                "rig-at-the-valves-would-stand-open",
                speed = speed,
                open_words = open_words(duty, may).aloud(),
                show_whole = may.least.show_whole(),
                show_whole2 = may.most.show_whole()
            ),
            Basis::Arithmetic,
        ));
    }
    if task.asked.droplets.is_some() {
        let pressure = point.pressure.show(units);
        match point.classes {
            Some(classes) if !task.asked.suit(classes) => why.push((
                t!(
                    "rig-at-its-droplets-are-for",
                    pressure = pressure,
                    classes = classes.words(),
                    who = task.asked.who(),
                    droplet_words = task.asked.droplet_words()
                ),
                task.asked.places(),
            )),
            None if !one.set.droplets.is_empty() => {
                why.push((t!("rig-its-droplet-table-does-not-reach", pressure = pressure), Basis::Arithmetic));
            }
            _ => {}
        }
    }
    let speed = task.asked.speed.filter(|most| point.speed.exceeds(*most)).zip(task.asked.speed_at.clone());
    if let Some((most, at)) = speed {
        let who = if matches!(at, Basis::Law(_)) { "law" } else { "label" };
        why.push((t!("rig-the-asks-for-at-most-over", who = who, most = most.show(units)), at));
    }
    why
}

/// Which end of a range a pressure lies beyond, and whether that is the upper one.
pub(super) fn beyond(range: Between<Pressure>, pressure: Pressure) -> Option<(bool, Pressure)> {
    if pressure.exceeds(range.most) {
        Some((true, range.most))
    } else if range.least.exceeds(pressure) {
        Some((false, range.least))
    } else {
        None
    }
}

/// The speeds of a set in words, in tenths that lie inside: "from 8.2 to 12.4 mph".
pub(super) fn speeds(task: &Task, speeds: Option<Between<Speed>>) -> Option<String> {
    let tenths = in_tenths(speeds?, task.units)?;
    Some(if tenths.least == tenths.most {
        t!("rig-at", least = tenths.least.show(task.units))
    } else {
        t!("rig-from-to", least = tenths.least.show(task.units), most = tenths.most.show(task.units))
    })
}

/// Why a set stands where it does.
fn reasons(task: &Task, one: &Reckoned, fit: Fit, speed: Option<Speed>) -> Vec<(String, Basis)> {
    if fit == Fit::NotKnown {
        let lacks: Vec<String> = one.lacks.iter().map(|lack| lack.words().to_owned()).collect();
        let text = t!("rig-not-known-it-lacks", lacks = crate::label::listed(&lacks));
        return vec![(text, Basis::Arithmetic)];
    }
    let planned = one.at(task, task.speed);
    let mut reasons = match (&planned, fit) {
        (_, Fit::Suits) | (None, _) => Vec::new(),
        (Some(point), _) => against(task, one, point),
    };
    if let Some(point) = speed.and_then(|speed| one.at(task, speed)) {
        let basis = || match point.classes {
            Some(classes) if task.asked.droplets.is_some() && task.asked.suit(classes) => task.asked.places(),
            _ => Basis::Arithmetic,
        };
        // The way out first, then what stands against the speed planned.
        reasons.insert(0, (gives(task, &one.set.name, &point), basis()));
    }
    match (fit, speeds(task, one.setting.speeds)) {
        (Fit::Suits | Fit::AtAnotherSpeed, Some(speeds)) => {
            reasons.push((t!("rig-it-can-be-driven", speeds = speeds), Basis::Arithmetic));
        }
        (Fit::No, _) => reasons.push((nowhere(task, one), Basis::Arithmetic)),
        _ => {}
    }
    reasons
}

/// Why no speed will do.
fn nowhere(task: &Task, one: &Reckoned) -> String {
    let pulsed = one.setting.duty.is_some();
    match one.setting.pressure.and_then(|pressure| one.nearest_run(pressure)) {
        None => t!("rig-at-no-pressure-of-its-table", droplet_words = task.asked.droplet_words()),
        Some(run) if pulsed && !one.setting.pressure.is_some_and(|at| within(run, at, Pressure::exceeds)) => {
            t!("rig-with-a-pressure-from-to-it", least = run.least.show(task.units), most = run.most.show(task.units))
        }
        Some(_) => t!("rig-at-no-speed-do-pressure-droplets").to_owned(),
    }
}

impl Classes {
    /// One class.
    pub const fn of(class: crate::farm::Droplets) -> Self {
        Self { finest: class, coarsest: class }
    }

    /// In words: "coarse", "medium to coarse".
    pub fn words(self) -> String {
        crate::label::droplets::words(self.finest, Some(self.coarsest))
    }
}
