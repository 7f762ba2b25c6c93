//! Tells the order that was found for the passes of a rig: the places with their reasons, and what there is to say of them.

use jiff::civil::Date;

use super::joined::Joined;
use super::lay::{Day, Trip, travel};
use super::order::{Cost, EXACT, Order, Placed, Problem, Second, solve, solve_told};
use super::{DayCost, RigDay, Slot, road, words};
use crate::farm::{Farm, Field, Id, Pass, Rig};
use crate::finding::{Basis, Finding, Level, Subject};
use crate::label::listed;
use crate::language::days::clock;
use crate::language::t;
use crate::quantity::{Length, Units};
use crate::rig::before::{Sprayed, last_before};
use crate::rig::clean_out::{hurt, unknown, usual_time};
use crate::weather::Verdict;
use crate::weather::hours::span;

/// When the rig leaves the yard, or begins to be cleaned there.
pub(super) fn leaves_at(problem: &Problem, order: &Order) -> Option<Second> {
    let (first, starts) = order.placed().next()?;
    Some(starts - problem.change(None, first.job).takes)
}

/// Whom traces of the pass before hurt, and of whom that cannot be told. The day is that of a pass before the day.
fn traces(
    farm: &Farm,
    (last, day): (Sprayed, Option<Date>),
    (id, pass): (&Id, &Pass),
    proven: bool,
    findings: &mut Vec<Finding>,
) {
    let names = |fields: &[&Field]| listed(&fields.iter().map(|field| field.name.clone()).collect::<Vec<_>>());
    let after = day.map_or_else(|| last.name().to_owned(), |day| t!("day-of", name = last.name(), day = day));
    let mix = last.pesticides(farm);
    for (row, fields) in hurt(farm, &mix, pass) {
        let hint = if day.is_some() {
            t!("day-clean-the-rig-out-as-the")
        } else if !proven {
            t!("day-clean-out-as-the-labels-say")
        } else {
            t!("day-no-order-without-that-is-as")
        };
        let text = t!("day-goes-to-after", name = pass.name, fields = names(&fields), after = after, says = row.says());
        findings.push(Finding::check(Subject::Pass(id.clone()), text, row.basis()).hint(hint));
    }
    for (row, fields) in unknown(farm, &mix, pass) {
        let text = t!(
            "day-goes-to-after-whether-traces-of",
            name = pass.name,
            fields = names(&fields),
            after = after,
            what = row.what_said()
        );
        findings.push(
            Finding::check(Subject::Pass(id.clone()), text, row.basis()).hint(t!("day-type-the-crop-by-its-usual")),
        );
    }
}

/// How good an order is.
pub(super) fn proof(found: &Order, held: bool, units: Units) -> String {
    match found.least {
        None if held => t!("day-with-what-is-held-no-order").to_owned(),
        None => t!("day-no-order-costs-less-this-is").to_owned(),
        Some(least) => t!(
            "day-more-than-passes-on-one-rig",
            exact = EXACT,
            gain = words::gain(least, found.cost, units).unwrap_or_else(|| t!("day-being-home-sooner").to_owned())
        ),
    }
}

/// An order that is being told.
pub(super) struct Told<'a> {
    pub(super) day: &'a Day<'a>,
    pub(super) rig_id: &'a Id,
    pub(super) trips: &'a [Trip<'a>],
    pub(super) problem: &'a Problem,
    pub(super) found: &'a Order,
    pub(super) clock: bool,
}

impl Told<'_> {
    pub(super) fn cost(&self, order: &Order, leaves: Option<Second>) -> DayCost {
        let Cost { left_out, parted, doubtful, hurts, clean_outs, changes, ends } = order.cost;
        DayCost {
            no_place: left_out,
            parted,
            doubtful,
            sensitive: hurts,
            clean_outs,
            not_spraying: words::duration(changes),
            lasts: words::duration(leaves.map_or(0, |leaves| ends - leaves)),
            home: leaves.filter(|_| self.clock).and_then(|_| self.day.clock(ends)),
        }
    }

    /// The passes in their places, those without one last; and when the rig leaves the yard.
    pub(super) fn slots(&mut self, before: Option<&Id>) -> (Vec<Slot>, Option<Second>) {
        let farm = self.day.farm;
        let rig = farm.rigs.get(self.rig_id);
        let lost = self.found.places.iter().filter(|place| place.starts.is_none());
        let mut slots = Vec::new();
        let mut last: Option<usize> = None;
        let mut joined = Joined::NONE;
        for (place, starts) in self.found.placed() {
            let Some(trip) = self.trips.get(place.job) else { continue };
            let change = self.problem.change(last, place.job);
            let (was_first, last_trip) = (last.is_none(), last.and_then(|last| self.trips.get(last)));
            last = Some(place.job);
            let travel = travel(farm, rig, last_trip.and_then(|last| last.ends_at), trip.begins_at);
            let (goes_on, fills_saved) = joined.add(farm, last_trip, trip, rig);
            let mut slot = Slot {
                clean_out: change.clean_out.then(usual_time),
                travel: travel.filter(|travel| !travel.is_zero()),
                takes: Some(words::duration(trip.takes)),
                span: span(&self.day.outlook, starts, starts + trip.takes).filter(|_| self.clock),
                verdict: self.day.covered.0.then_some(if place.doubtful {
                    Verdict::Doubtful
                } else {
                    Verdict::Allowed
                }),
                held: self.held_at(trip),
                goes_on,
                fills_saved,
                ..Slot::new(trip.id, self.rig_id)
            };
            slot.why = self.why(&place, &slot, was_first && before.is_none());
            slots.push(slot);
        }
        for place in lost {
            let Some(trip) = self.trips.get(place.job) else { continue };
            slots.push(Slot {
                takes: Some(words::duration(trip.takes)),
                verdict: Some(Verdict::Forbidden),
                held: self.held_at(trip),
                why: crate::words::capital(&self.no_place(trip, place.job)),
                ..Slot::new(trip.id, self.rig_id)
            });
        }
        (slots, leaves_at(self.problem, self.found))
    }

    fn held_at(&self, trip: &Trip) -> Option<u32> {
        self.day.decided.pinned.get(trip.id).copied()
    }

    /// Why it stands where it stands.
    fn why(&self, place: &Placed, slot: &Slot, first: bool) -> String {
        let mut parts = Vec::new();
        if let Some(at) = slot.held {
            parts.push(t!("day-held-at-place", at = at));
        } else if let Some(order) = self.against_next(place) {
            parts.push(order);
        }
        if place.doubtful {
            parts.push(t!("day-here-no-allowed-hours-are-long").to_owned());
        }
        if slot.goes_on {
            parts.push(match slot.fills_saved {
                0 => t!("day-it-takes-the-same-spray-so").to_owned(),
                saved => {
                    t!("day-same-spray-saves-fillings", saved = words::count(saved), count = saved)
                }
            });
        } else if !first && slot.clean_out.is_none() {
            parts.push(t!("day-it-needs-no-clean-out").to_owned());
        }
        let stops = self.trips.get(place.job).map_or(0, |trip| trip.plan.count(Level::Stop));
        if stops > 0 {
            parts.push(t!("day-it-has-a-stop-to-settle").to_owned());
        }
        if parts.is_empty() && slot.verdict.is_some() {
            parts.push(t!("day-the-earliest-allowed-hours-that-are").to_owned());
        }
        parts.join(". ")
    }

    /// What it has over the order with this pass and the next one exchanged: "Before Oak field: one clean-out fewer".
    fn against_next(&self, place: &Placed) -> Option<String> {
        let order: Vec<usize> = self.found.places.iter().map(|place| place.job).collect();
        let at = order.iter().position(|job| *job == place.job)?;
        let next = self.found.places.get(at + 1).filter(|next| next.starts.is_some())?;
        let other = self.trips.get(next.job).filter(|trip| self.held_at(trip).is_none())?;
        if order.len() > EXACT {
            return None;
        }
        let mut exchanged = order;
        exchanged.swap(at, at + 1);
        let cost = solve(&self.problem.held_as(&exchanged)).cost;
        let gain = words::gain(self.found.cost, cost, self.day.farm.units)?;
        Some(t!("day-before", name = other.pass.name, gain = gain))
    }

    /// What holding passes at places costs, said once.
    pub(super) fn held(&self, free: &Order, findings: &mut Vec<Finding>) -> String {
        let held: Vec<(&Trip, u32)> = self.trips.iter().filter_map(|trip| Some((trip, self.held_at(trip)?))).collect();
        let Some((first, at)) = held.first() else { return String::new() };
        let (who, about) = if held.len() == 1 {
            (t!("day-held-at-place", at = at), Subject::Pass(first.id.clone()))
        } else {
            (t!("day-held-at-their-places").to_owned(), Subject::Rig(self.rig_id.clone()))
        };
        let Some(loss) = words::loss(free.cost, self.found.cost, self.day.farm.units) else {
            return t!("day-it-costs-nothing", who = who);
        };
        let names: Vec<String> = held.iter().map(|(trip, _)| trip.pass.name.clone()).collect();
        let text = format!("{who}: {loss}");
        findings.push(
            Finding::note(about, format!("{}. {text}", listed(&names)), Basis::Arithmetic)
                .hint(t!("day-let-it-go-to-have-the")),
        );
        text
    }

    /// Why a pass finds no place.
    fn no_place(&self, trip: &Trip, job: usize) -> String {
        let takes = words::time(trip.takes, self.day.farm.units);
        let Some(of) = self.problem.jobs.get(job) else { return String::new() };
        let late = of.not_before.unwrap_or(self.problem.from).max(self.problem.from);
        let fits = |to: Option<Second>| {
            let (_, possible) = self.day.runs(trip.plan, trip.takes, self.problem.from, to);
            possible.iter().any(|(from, to)| to - (*from).max(late) >= trip.takes)
        };
        if fits(self.problem.to) {
            t!("day-no-order-leaves-room-for-its", takes = takes)
        } else if self.problem.to.is_some() && fits(None) {
            t!("day-its-do-not-end-before-the", takes = takes)
        } else if self.day.covered.0 {
            t!("day-no-span-of-the-day-is", takes = takes)
        } else {
            t!("day-the-day-is-not-long-enough", takes = takes)
        }
    }

    pub(super) fn judge(&self, rig_day: &RigDay, before: Option<&Id>, unknown: &[Trip], findings: &mut Vec<Finding>) {
        let farm = self.day.farm;
        let date = self.day.date;
        let rig = farm.rigs.get(self.rig_id);
        let rig_name = rig.map_or(self.rig_id.as_str(), |rig| rig.name.as_str());
        let about_rig = || Subject::Rig(self.rig_id.clone());
        for place in self.found.places.iter().filter(|place| place.starts.is_none()) {
            let Some(trip) = self.trips.get(place.job) else { continue };
            findings.push(
                Finding::check(
                    Subject::Pass(trip.id.clone()),
                    t!(
                        "day-finds-no-place-on",
                        name = trip.pass.name,
                        date = date,
                        no_place = self.no_place(trip, place.job)
                    ),
                    Basis::Arithmetic,
                )
                .hint([t!("day-move-it-to-another-day-or"), self.without_end().as_str()].join(" ").trim_end()),
            );
        }
        for trip in unknown {
            let (text, hint) = if trip.plan.fields.is_empty() {
                (t!("day-has-no-place-without-a-field", name = trip.pass.name), t!("day-choose-its-fields"))
            } else if trip.plan.area.is_zero() {
                (t!("day-has-no-place-without-ground", name = trip.pass.name), t!("day-type-the-areas-of-its-fields"))
            } else {
                (t!("day-has-no-place-in-the-day", name = trip.pass.name), t!("day-type-speed-boom-width-and-field"))
            };
            findings.push(Finding::check(Subject::Pass(trip.id.clone()), text, Basis::Arithmetic).hint(hint));
        }
        let proven = self.found.least.is_none() && self.problem.jobs.iter().all(|job| job.held.is_none());
        // A pass with a Stop may not be sprayed, and then what came before it is still in the rig.
        let mut may_be_in: Vec<(Sprayed, Option<Date>)> = match before.and_then(|id| farm.passes.get(id)) {
            Some(last) => vec![(Sprayed::Plan(last), None)],
            None => last_before(farm, self.day.log, self.rig_id, date)
                .into_iter()
                .map(|last| (last, Some(last.when().0)))
                .collect(),
        };
        for slot in rig_day.slots.iter().filter(|slot| slot.takes.is_some() && slot.verdict != Some(Verdict::Forbidden))
        {
            let Some(pass) = farm.passes.get(&slot.pass) else { continue };
            for last in &may_be_in {
                traces(farm, *last, (&slot.pass, pass), proven, findings);
            }
            if let Some(span) = slot.span.filter(|span| {
                span.to.date() > date && span.to > date.at(0, 0, 0, 0).saturating_add(jiff::Span::new().days(1))
            }) {
                findings.push(
                    Finding::check(
                        Subject::Pass(slot.pass.clone()),
                        t!("day-runs-past-midnight-until", name = pass.name, strftime = clock(span.to)),
                        Basis::Arithmetic,
                    )
                    .hint(t!("day-type-the-hour-at-which-the-rigs-are-to")),
                );
            }
            let stopped = self.trips.iter().any(|trip| *trip.id == slot.pass && trip.plan.count(Level::Stop) > 0);
            if !stopped {
                may_be_in.clear();
            }
            may_be_in.push((Sprayed::Plan(pass), None));
        }
        self.judge_parted(findings);
        self.judge_roads(rig, rig_name, findings);
        if !self.trips.is_empty() && !self.day.covered.0 {
            let (text, hint) = if self.clock {
                (
                    t!("day-the-forecast-does-not-tell-of", date = date, rig_name = rig_name),
                    t!("day-open-a-forecast-that-reaches-it"),
                )
            } else {
                (
                    t!("day-the-forecast-does-not-tell-of-date-and-no", date = date, rig_name = rig_name),
                    t!("day-open-a-forecast-that-reaches-it-or-type-the"),
                )
            };
            findings.push(Finding::check(about_rig(), text, Basis::Arithmetic).hint(hint));
        }
        if self.found.least.is_some() {
            findings.push(
                Finding::note(about_rig(), format!("{rig_name}: {}", rig_day.proof), Basis::Arithmetic)
                    .hint(t!("day-hold-passes-at-places-where-you")),
            );
        }
    }

    /// Passes that begin with what another leaves, and do not come right after it.
    fn judge_parted(&self, findings: &mut Vec<Finding>) {
        let mut last = None;
        for (place, _) in self.found.placed() {
            let change = self.problem.change(last.replace(place.job), place.job);
            let Some(trip) = self.trips.get(place.job).filter(|_| change.parted) else { continue };
            let Some(in_tank) = &trip.pass.in_tank else { continue };
            let name = &trip.pass.name;
            let text = match self.day.farm.passes.get(&in_tank.from).filter(|_| in_tank.from != *trip.id) {
                Some(giver) => {
                    t!("day-begins-with-spray-of-but-does", name = name, name2 = giver.name)
                }
                None => t!(
                    "day-begins-with-that-are-in-the",
                    name = name,
                    volume = in_tank.volume.show(self.day.farm.units)
                ),
            };
            findings.push(
                Finding::check(Subject::Pass(trip.id.clone()), text, Basis::Arithmetic)
                    .hint(t!("day-hold-both-at-places-where-one")),
            );
        }
    }

    /// When the rig would be home, were it not to be home at an hour.
    fn without_end(&self) -> String {
        let Some(to) = self.problem.to.and_then(|to| self.day.clock(to)) else { return String::new() };
        let mut late = Problem { to: None, ..self.problem.clone() };
        for (job, trip) in late.jobs.iter_mut().zip(self.trips) {
            (job.allowed, job.possible) = self.day.runs(trip.plan, trip.takes, late.from, None);
        }
        let found = solve_told(&late, self.day.tell);
        let home = self.day.clock(found.cost.ends).filter(|_| found.cost.left_out < self.found.cost.left_out);
        home.map_or_else(String::new, |home| {
            t!(
                "day-were-the-rigs-not-to-be",
                strftime = clock(to),
                strftime2 = clock(home),
                left_out = words::count(self.found.cost.left_out - found.cost.left_out)
            )
        })
    }

    /// Names the roads that count as nothing because they are not known.
    fn judge_roads(&self, rig: Option<&Rig>, rig_name: &str, findings: &mut Vec<Finding>) {
        let farm = self.day.farm;
        let ends = self.trips.iter().flat_map(|trip| [trip.begins_at, trip.ends_at]).flatten();
        let mut fields: Vec<&Id> = Vec::new();
        for field in ends {
            if !fields.contains(&field) {
                fields.push(field);
            }
        }
        let lacking: Vec<String> = fields
            .iter()
            .filter(|field| road::way(farm, None, Some(field)).is_none())
            .map(|field| road::words(farm, None, Some(field)))
            .collect();
        let no_speed = rig.is_none_or(|rig| rig.road_speed.as_ref().is_none_or(|speed| speed.is_zero()));
        let has_road =
            fields.iter().any(|field| road::way(farm, None, Some(field)).is_some_and(|way| way != Length::ZERO));
        let missing: Vec<String> = lacking
            .into_iter()
            .chain((no_speed && has_road).then(|| t!("day-how-fast-is-on-the-road", rig_name = rig_name)))
            .collect();
        if !missing.is_empty() {
            findings.push(
                Finding::check(
                    Subject::Rig(self.rig_id.clone()),
                    t!("day-not-known-and-counted-as-nothing", rig_name = rig_name, missing = listed(&missing)),
                    Basis::Arithmetic,
                )
                .hint(t!("day-type-roads-with-the-fields-and")),
            );
        }
    }
}
