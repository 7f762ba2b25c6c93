//! The passes of a day laid out one after another, rig by rig, in the order in which the farm has them; those with a typed start in
//! the order of their starts.

use jiff::civil::Date;

use super::hours::{judge_hours, runs, span};
use super::sky::Outlook;
use super::sun::Second;
use super::{Span, Verdict};
use crate::farm::{Farm, Id, Pass};
use crate::finding::Level;
use crate::plan::Plan;
use crate::quantity::{AsTyped, Duration, Length};
use crate::rig::clean_out::{takes_clean_out, usual_time};

/// A pass in its place in a day.
#[derive(Clone, Debug, PartialEq)]
pub struct Slot {
    /// The pass.
    pub pass: Id,
    /// The rig; empty where none is chosen.
    pub rig: Id,
    /// Cleaning the rig before it, where the mix before it differs.
    pub clean_out: Option<Duration>,
    /// Road from the pass before it, where that is known and not in the time of the passes.
    pub travel: Option<Duration>,
    /// From when to when it is sprayed; `None` where that cannot be told.
    pub span: Option<Span>,
    /// How its hours are judged; `None` where the forecast does not tell of them.
    pub verdict: Option<Verdict>,
    /// What there is to say of its place.
    pub why: String,
}

/// Lays out the passes of a day: on each rig one after another in the order of the farm, where those with a typed start change places
/// among themselves so that the earlier start comes first; each from the earliest time that is
/// allowed for as long as it takes, or the earliest that is doubtful where none is allowed. No order is sought that would be better.
pub fn lay_out(farm: &Farm, day: Date, plans: &[&Plan]) -> Vec<Slot> {
    let outlook = Outlook::of_days(farm, day, day);
    let mut slots = Vec::new();
    let of_day = |id: &Id| plans.iter().find(|plan| plan.pass == *id);
    let mut passes: Vec<(&Id, &Pass, &Plan)> = farm
        .passes
        .iter()
        .filter(|(_, pass)| pass.date == day)
        .filter_map(|(id, pass)| Some((id, pass, *of_day(id)?)))
        .collect();
    let mut rigs: Vec<&Id> = Vec::new();
    for (_, pass, _) in &passes {
        if !rigs.contains(&&pass.rig) {
            rigs.push(&pass.rig);
        }
    }
    passes.sort_by_key(|(_, pass, _)| rigs.iter().position(|rig| **rig == pass.rig));
    passes.chunk_by_mut(|(_, a, _), (_, b, _)| a.rig == b.rig).for_each(by_start);
    let mut before: Option<(&Pass, &Plan)> = None;
    let mut free_from = Second::MIN;
    for (id, pass, plan) in passes {
        if before.is_none_or(|(other, _)| other.rig != pass.rig || pass.rig.is_empty()) {
            (before, free_from) = (None, Second::MIN);
        }
        let cleaned = before.is_some_and(|(_, planned)| takes_clean_out(farm, &planned.pass, id));
        let clean_out = cleaned.then(usual_time);
        let travel = before.and_then(|(other, planned)| travel(farm, other, planned, pass, plan));
        let mut slot = Slot {
            pass: id.clone(),
            rig: pass.rig.clone(),
            clean_out,
            travel,
            span: None,
            verdict: None,
            why: String::new(),
        };
        let ready = free_from.saturating_add(clean_out.map_or(0, seconds)).saturating_add(travel.map_or(0, seconds));
        if let Some(ends) = place(&outlook, farm, pass, plan, ready, &mut slot) {
            free_from = ends;
        }
        if plan.count(Level::Stop) > 0 {
            slot.why = format!("{}. It has a Stop to settle first", slot.why);
        }
        slots.push(slot);
        before = Some((pass, plan));
    }
    slots
}

/// Puts the passes of a rig that have a typed start in the order of their starts; the others keep their places.
fn by_start(passes: &mut [(&Id, &Pass, &Plan)]) {
    let mut typed: Vec<_> = passes.iter().copied().filter(|(_, pass, _)| pass.start.is_some()).collect();
    typed.sort_by_key(|(_, pass, _)| pass.start);
    let places = passes.iter_mut().filter(|(_, pass, _)| pass.start.is_some());
    places.zip(typed).for_each(|(place, pass)| *place = pass);
}

/// Finds the place of a pass and says how it comes about; gives when the rig is free again.
fn place(outlook: &Outlook, farm: &Farm, pass: &Pass, plan: &Plan, ready: Second, slot: &mut Slot) -> Option<Second> {
    if !super::covers(farm, pass.date) {
        "The forecast does not tell of this day".clone_into(&mut slot.why);
        return None;
    }
    let Some(needs) = plan.hours.needs.filter(|needs| !needs.is_zero()) else {
        "How long it takes is not known; type speed, boom width and field efficiency of its rig"
            .clone_into(&mut slot.why);
        return None;
    };
    let typed = pass.start.and_then(|start| super::sun::second(&outlook.zone, pass.date.to_datetime(start), false));
    let not_before = ready.max(typed.unwrap_or(Second::MIN));
    let (_, free) = judge_hours(outlook, &plan.hours.limits, pass.date);
    let length = seconds(needs);
    for verdict in [Verdict::Allowed, Verdict::Doubtful] {
        let found = runs(&free, verdict, not_before).into_iter().find(|(from, to)| to - from >= length);
        if let Some((from, _)) = found {
            slot.span = span(outlook, from, from + length);
            slot.verdict = Some(verdict);
            slot.why = match verdict {
                Verdict::Allowed => "The earliest span of allowed hours that is long enough".to_owned(),
                _ => {
                    "No span of allowed hours is long enough; this is the earliest with doubtful hours in it".to_owned()
                }
            };
            if let Some(start) = pass.start.filter(|_| typed.is_some_and(|typed| from > typed)) {
                slot.why = format!("{}. It cannot begin at {}, as typed", slot.why, start.strftime("%H:%M"));
            }
            return Some(from + length);
        }
    }
    let takes = plan.hours.takes(farm.units).unwrap_or_default();
    let ends = super::sun::day_ends(&outlook.zone, pass.date).map(|(_, to)| to);
    let last = runs(&free, Verdict::Doubtful, not_before).last().map(|(_, to)| *to);
    // Whether it may be sprayed into the next day is not known, which is not the same as forbidden.
    let goes_on = ends.is_some() && last == ends;
    slot.verdict = Some(if goes_on { Verdict::Doubtful } else { Verdict::Forbidden });
    slot.why = format!("No span of the day is long enough for the {takes} it takes");
    if goes_on {
        slot.why = format!("{}; {}", slot.why, super::hours::GOES_ON);
    }
    None
}

/// Whole seconds, none lost.
fn seconds(time: Duration) -> Second {
    #[allow(clippy::cast_possible_truncation)] // A float that is too large becomes the largest whole number.
    let whole = time.to_seconds().ceil() as Second;
    whole.min(Second::from(u32::MAX))
}

/// Road by way of the yard, from the last field of a pass to the first of the next, where the time of neither pass holds it.
fn travel(farm: &Farm, before: &Pass, planned: &Plan, after: &Pass, plan: &Plan) -> Option<Duration> {
    let held = |plan: &Plan| plan.work.as_ref().is_some_and(|work| work.road.is_some());
    if held(planned) || held(plan) || before.fields.last() == after.fields.first() {
        return None;
    }
    let road = |id: Option<&Id>| -> Option<Length> { farm.fields.get(id?)?.road.as_ref().map(AsTyped::value) };
    let way = road(before.fields.last())? + road(after.fields.first())?;
    let speed = farm.rigs.get(&after.rig)?.road_speed.as_ref()?.value().to_metres_per_second();
    (speed > 0.0).then(|| Duration::from_seconds(way.to_metres() / speed))
}
