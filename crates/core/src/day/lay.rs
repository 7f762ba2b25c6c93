//! Makes jobs of the passes of a rig, and reads the order that is found for them.

use jiff::civil::{Date, DateTime};

use super::order::{Change, Job, Problem, Run, Second, solve_told};
use super::road::{self, Place};
use super::tell::{Told, leaves_at, proof};
use super::{RigDay, Slot, fields, words};
use crate::farm::{self, Farm, Fills, Id, Pass, Rig};
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;
use crate::plan::Plan;
use crate::progress::Tell;
use crate::quantity::{AsTyped, Duration};
use crate::rig::clean_out::{hurts, takes_clean_out, usual_time};
use crate::season::Log;
use crate::weather::hours::{judge_hours, runs};
use crate::weather::{self, Outlook, Verdict, sun};

/// What holds for all rigs of a day.
pub(super) struct Day<'a> {
    pub(super) farm: &'a Farm,
    pub(super) log: &'a Log,
    pub(super) date: Date,
    pub(super) outlook: Outlook,
    /// Whether the forecast tells of the day, and of the one after it.
    pub(super) covered: (bool, bool),
    /// The two midnights.
    ends: Run,
    pub(super) decided: farm::Day,
    /// Who hears of a long search.
    pub(super) tell: &'a Tell<'a>,
}

/// A pass that is to find its place.
pub(super) struct Trip<'a> {
    pub(super) id: &'a Id,
    pub(super) pass: &'a Pass,
    pub(super) plan: &'a Plan,
    pub(super) begins_at: Place<'a>,
    pub(super) ends_at: Place<'a>,
    pub(super) takes: Second,
}

/// Whole seconds, none lost.
pub(super) fn seconds(time: Duration) -> Second {
    // Of a sum of quarters of an hour, the last bits are arithmetic.
    #[allow(clippy::cast_possible_truncation)] // A float that is too large becomes the largest whole number.
    let whole = (time.to_seconds() - 1e-6).ceil() as Second;
    whole.clamp(0, Second::from(u32::MAX))
}

impl<'a> Day<'a> {
    pub(super) fn new(farm: &'a Farm, log: &'a Log, date: Date, tell: &'a Tell<'a>) -> Self {
        let next = date.tomorrow().unwrap_or(date);
        let outlook = Outlook::of_days(farm, date, next);
        let ends = sun::day_ends(&outlook.zone, date).unwrap_or_default();
        let covered = (weather::covers(farm, date), next != date && weather::covers(farm, next));
        let decided = farm.days.get(&date.to_string()).cloned().unwrap_or_default();
        Self { farm, log, date, outlook, covered, ends, decided, tell }
    }

    pub(super) fn has_forecast(&self) -> bool {
        self.covered.0
    }

    fn second(&self, date: Date, time: jiff::civil::Time) -> Option<Second> {
        sun::second(&self.outlook.zone, date.to_datetime(time), false)
    }

    pub(super) fn clock(&self, second: Second) -> Option<DateTime> {
        sun::civil(&self.outlook.zone, second)
    }

    /// When the rigs are to be home. An hour not after the one typed at which they leave is of the next day; when a rig is free
    /// of what it sprayed already does not change it.
    fn to(&self) -> Option<Second> {
        let time = self.decided.to?;
        let day = if self.decided.home_on_the_next_day() { self.date.tomorrow().ok()? } else { self.date };
        self.second(day, time)
    }

    /// The runs of time in which a pass may be sprayed: inside every limit, and with doubtful hours among them.
    pub(super) fn runs(&self, plan: &Plan, takes: Second, from: Second, to: Option<Second>) -> (Vec<Run>, Vec<Run>) {
        if !self.covered.0 {
            let all_day = vec![(from, to.unwrap_or(self.ends.1.max(from)))];
            return (all_day.clone(), all_day);
        }
        let mut free = judge_hours(&self.outlook, &plan.hours.limits, self.date).1;
        if let (true, Ok(next)) = (self.covered.1, self.date.tomorrow()) {
            free.extend(judge_hours(&self.outlook, &plan.hours.limits, next).1);
        }
        // A pass of the day begins on that day, unless the rigs are told to be out into the next.
        let latest = to.unwrap_or(self.ends.1 - 1 + takes);
        let of = |worst| -> Vec<Run> {
            let all = runs(&free, worst, from).into_iter().map(|(from, to)| (from, to.min(latest)));
            all.filter(|(from, to)| from < to).collect()
        };
        (of(Verdict::Allowed), of(Verdict::Doubtful))
    }
}

/// Lays out the day of a rig.
pub(super) fn of_rig(day: &Day, rig_id: &Id, plans: &[&Plan], findings: &mut Vec<Finding>) -> RigDay {
    let farm = day.farm;
    let (sprayed, open): (Vec<&Plan>, Vec<&Plan>) =
        plans.iter().partition(|plan| day.log.is_recorded(farm, &plan.pass));
    for plan in &open {
        findings.extend(partly(farm, day.log, plan));
        fields::judge(farm, plan, findings);
    }
    let done: Vec<Id> = sprayed.iter().map(|plan| plan.pass.clone()).collect();
    let all: Vec<Trip> = open.iter().filter_map(|plan| trip(farm, plan)).collect();
    let (trips, unknown): (Vec<Trip>, Vec<Trip>) = all.into_iter().partition(|trip| trip.takes > 0);
    let (before, free_from) = last_done(day, &sprayed);
    let typed_starts = || trips.iter().filter_map(|trip| day.second(day.date, trip.pass.start?)).min();
    let from = day.decided.from.and_then(|time| day.second(day.date, time));
    // Without a forecast and an hour to leave at, the earliest hour typed with a pass is the one from which the clock is told.
    let clock = day.covered.0 || from.is_some() || free_from.is_some() || typed_starts().is_some();
    let morning = if day.covered.0 { day.ends.0 } else { typed_starts().unwrap_or(day.ends.0) };
    let begin = from.unwrap_or(morning).max(free_from.unwrap_or(Second::MIN));
    let mut problem = problem(day, rig_id, &trips, before, begin);
    hold(day, &trips, done.len(), &mut problem, findings);
    let found = solve_told(&problem, day.tell);
    let held_any = problem.jobs.iter().any(|job| job.held.is_some());
    let free = held_any.then(|| solve_told(&without_holds(&problem), day.tell));
    let mut told = Told { day, rig_id, trips: &trips, problem: &problem, found: &found, clock };
    let (slots, leaves) = told.slots(before);
    let held = free.as_ref().map_or_else(String::new, |free| told.held(free, findings));
    let rig_day = RigDay {
        rig: rig_id.clone(),
        done,
        leaves: leaves.filter(|_| clock).and_then(|leaves| day.clock(leaves)),
        way_home: words::duration(problem.way_home(found.placed().next_back().map(|(last, _)| last.job))),
        cost: told.cost(&found, leaves),
        best: free.as_ref().map(|free| told.cost(free, leaves_at(&problem, free))),
        held,
        proof: proof(&found, held_any, farm.units),
        slots: slots.into_iter().chain(unknown.iter().map(|trip| not_known(rig_id, trip))).collect(),
    };
    told.judge(&rig_day, before, &unknown, findings);
    rig_day
}

/// A pass whose time is not known.
fn not_known(rig: &Id, trip: &Trip) -> Slot {
    let why =
        if trip.plan.area.is_zero() { t!("day-it-has-no-ground-yet") } else { t!("day-how-long-it-takes-is-not") };
    Slot { why: why.to_owned(), ..Slot::new(trip.id, rig) }
}

fn trip<'a>(farm: &'a Farm, plan: &'a Plan) -> Option<Trip<'a>> {
    let (id, pass) = farm.passes.get_key_value(&plan.pass)?;
    let takes = plan.work.as_ref().map(|work| work.total - work.out - work.home).or(plan.spray_time);
    let last = match pass.fills {
        Fills::AtField => None,
        Fills::AtYard => plan.loads.last().and_then(|load| load.fields.last()).map(|(field, _)| field),
    };
    Some(Trip {
        id,
        pass,
        plan,
        begins_at: plan.fields.first().map(|field| &field.field).filter(|_| pass.fills == Fills::AtField),
        ends_at: last.or_else(|| plan.fields.last().map(|field| &field.field)),
        takes: takes.map_or(0, seconds),
    })
}

/// Says that a pass is recorded in part.
fn partly(farm: &Farm, log: &Log, plan: &Plan) -> Option<Finding> {
    let words = log.unrecorded(farm, &plan.pass)?.words(farm)?;
    let text = t!("day-times-here-are-of-the-whole", name = farm.passes.get(&plan.pass)?.name, words = words);
    let hint = t!("day-record-what-is-left-once-it");
    Some(Finding::note(Subject::Pass(plan.pass.clone()), text, Basis::Arithmetic).hint(hint))
}

/// The pass of the day that was recorded as sprayed last, and when the rig was free after it.
fn last_done<'a>(day: &Day, done: &[&'a Plan]) -> (Option<&'a Id>, Option<Second>) {
    let end = |id: &Id| {
        let records = day.log.of_pass(day.farm, id);
        records.filter_map(|record| sun::second(&day.outlook.zone, record.ended()?, false)).max()
    };
    let last = done.iter().map(|plan| &plan.pass).max_by_key(|id| end(id));
    (last, last.and_then(end))
}

fn problem(day: &Day, rig_id: &Id, trips: &[Trip], before: Option<&Id>, from: Second) -> Problem {
    let farm = day.farm;
    let rig = farm.rigs.get(rig_id);
    let cleaning = seconds(usual_time());
    let road = |from: Place, to: Place| travel(farm, rig, from, to).map_or(0, seconds);
    let change = |from: Option<(&Id, Place)>, to: &Trip| {
        let first = from.and_then(|(id, _)| Some((id, farm.passes.get(id)?)));
        let clean_out = first.is_some_and(|(id, _)| takes_clean_out(farm, id, to.id));
        Change {
            takes: road(from.and_then(|(_, place)| place), to.begins_at) + if clean_out { cleaning } else { 0 },
            clean_out,
            hurts: first.is_some_and(|(_, first)| !hurts(farm, first, to.pass).is_empty()),
            parted: is_parted(farm, trips, first.map(|(id, _)| id), to),
        }
    };
    let to = day.to();
    let jobs = trips.iter().map(|trip| {
        let (allowed, possible) = day.runs(trip.plan, trip.takes, from, to);
        let not_before = trip.pass.start.and_then(|start| day.second(day.date, start));
        Job { takes: trip.takes, not_before, allowed, possible, held: None }
    });
    Problem {
        jobs: jobs.collect(),
        // The rig stands in the yard, with what it sprayed last in the day still on it.
        first: trips.iter().map(|to| change(before.map(|id| (id, None)), to)).collect(),
        between: trips
            .iter()
            .map(|from| trips.iter().map(|to| change(Some((from.id, from.ends_at)), to)).collect())
            .collect(),
        home: trips.iter().map(|trip| road(trip.ends_at, None)).collect(),
        from,
        to,
    }
}

/// Whether a pass begins with spray that was not left by the pass before it. Of a pass of another rig its own plan tells.
fn is_parted(farm: &Farm, trips: &[Trip], before: Option<&Id>, to: &Trip) -> bool {
    let Some(in_tank) = to.pass.begins_with() else { return false };
    let giver = &in_tank.from;
    if farm.passes.get(giver).is_some_and(|other| other.rig != to.pass.rig) {
        return false;
    }
    match before {
        Some(before) => before != giver,
        // In the morning the tank holds what was left on an earlier day, but nothing of the day.
        None => giver != to.id && trips.iter().any(|trip| trip.id == giver),
    }
}

/// The time on a road, where both are known.
pub(super) fn travel(farm: &Farm, rig: Option<&Rig>, from: Place, to: Place) -> Option<Duration> {
    let way = road::way(farm, from, to)?;
    let speed = rig.and_then(|rig| rig.road_speed.as_ref()).map(AsTyped::value);
    if way.is_zero() { Some(Duration::ZERO) } else { road::time(way, speed?) }
}

/// Holds passes at their places. Those sprayed already have the first places of the day; two that are held at one place come one
/// after the other.
fn hold(day: &Day, trips: &[Trip], done: usize, problem: &mut Problem, findings: &mut Vec<Finding>) {
    let mut held: Vec<(u32, usize)> =
        trips.iter().enumerate().filter_map(|(at, trip)| Some((*day.decided.pinned.get(trip.id)?, at))).collect();
    held.sort_unstable();
    let mut last = 0;
    let count = held.len();
    for (at, (wanted, job)) in held.into_iter().enumerate() {
        let asked = (wanted as usize).saturating_sub(done).max(1);
        // So many held ones still come after it.
        let most = problem.jobs.len() - (count - 1 - at);
        let place = asked.max(last + 1).min(most);
        last = place;
        if let Some(job) = problem.jobs.get_mut(job) {
            job.held = Some(place);
        }
        if let Some(trip) = trips.get(job).filter(|_| place != asked) {
            findings.push(
                Finding::check(
                    Subject::Pass(trip.id.clone()),
                    t!("day-is-held-at-place-which-is", name = trip.pass.name, wanted = wanted, place = place + done),
                    Basis::Arithmetic,
                )
                .hint(t!("day-hold-it-at-another-place-or")),
            );
        }
    }
}

fn without_holds(problem: &Problem) -> Problem {
    let mut problem = problem.clone();
    for job in &mut problem.jobs {
        job.held = None;
    }
    problem
}
