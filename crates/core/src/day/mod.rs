//! A day of spraying: the passes of each rig in the order that costs least, with the roads and clean-outs between them.
//!
//! `road` tells the way between two places; `lay` makes jobs of passes; [`order`] finds their order; `tell` reads it, in the words of
//! `words`; `joined` knows spray that goes on from pass to pass; `fields` looks for a better order of the fields within a pass;
//! [`sheet`] puts a day on one page, with the picture of `timeline`.
//!
//! What weighs more is settled before what weighs less: passes without a place, passes that do not come right after the one whose
//! spray they begin with, passes in doubtful hours, crops that come after a mix
//! which hurts them, clean-outs, time for cleaning and road, the hour at which the rig is home. Rigs do not wait for one another.

mod fields;
mod joined;
mod lay;
pub mod order;
pub(crate) mod road;
pub mod sheet;
mod tell;
mod timeline;
mod words;

pub use timeline::{Block, BlockKind, Row, Tick, Timeline};

use jiff::civil::{Date, DateTime};

use crate::farm::{Farm, Id};
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;
use crate::plan::Plan;
use crate::progress::{Cancelled, Tell, untold};
use crate::quantity::Duration;
use crate::season::Log;
use crate::weather::{Span, Verdict};

/// A pass that begins before this hour may be meant so, and is said: common practice, no source.
const EARLY: i8 = 5;

/// The passes of a day.
#[derive(Clone, Debug, PartialEq)]
pub struct DayPlan {
    /// The day.
    pub date: Date,
    /// The rigs, in the order in which the passes name them.
    pub rigs: Vec<RigDay>,
    /// Passes without a rig, as listed.
    pub loose: Vec<Slot>,
    /// What there is to say, the weightiest first.
    pub findings: Vec<Finding>,
}

/// The day of a rig.
#[derive(Clone, Debug, PartialEq)]
pub struct RigDay {
    /// The rig.
    pub rig: Id,
    /// Passes of the day that are recorded as sprayed.
    pub done: Vec<Id>,
    /// The others in their order; those that find no place come last.
    pub slots: Vec<Slot>,
    /// When it leaves the yard; `None` where no clock can be told, or where no pass finds a place.
    pub leaves: Option<DateTime>,
    /// The road home from the last pass, as far as it is known.
    pub way_home: Duration,
    /// What the order costs.
    pub cost: DayCost,
    /// Where passes are held at places: what the best order without that costs.
    pub best: Option<DayCost>,
    /// What holding them costs, in words; empty where none is held.
    pub held: String,
    /// How good the order is, in words.
    pub proof: String,
}

/// What an order of passes costs. The first that differs decides which of two is better.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DayCost {
    /// Passes that find no place.
    pub no_place: u32,
    /// Passes that do not come right after the one whose spray they begin with.
    pub parted: u32,
    /// Passes in doubtful hours.
    pub doubtful: u32,
    /// Passes on a crop that the mix before it hurts.
    pub sensitive: u32,
    /// Clean-outs between passes.
    pub clean_outs: u32,
    /// Time for cleaning and road between passes, to the first and home from the last; roads within a pass are in its own time.
    pub not_spraying: Duration,
    /// From leaving the yard to being home, waiting included.
    pub lasts: Duration,
    /// When the rig is home, where a clock can be told.
    pub home: Option<DateTime>,
}

/// A pass in its place in a day.
#[derive(Clone, Debug, PartialEq)]
pub struct Slot {
    /// The pass.
    pub pass: Id,
    /// The rig; empty where none is chosen.
    pub rig: Id,
    /// Cleaning the rig before it.
    pub clean_out: Option<Duration>,
    /// Road to where it begins, from the pass before it or from the yard; `None` where that is not known or there is none.
    pub travel: Option<Duration>,
    /// How long it takes, with the roads within it; `None` where that is not known.
    pub takes: Option<Duration>,
    /// From when to when it is sprayed; `None` where it finds no place or no clock can be told.
    pub span: Option<Span>,
    /// How its hours are judged, forbidden where it finds no place; `None` where the forecast does not tell of them.
    pub verdict: Option<Verdict>,
    /// The place it is held at.
    pub held: Option<u32>,
    /// It takes the same spray as the pass before it, so that what is left over of that can go on into it.
    pub goes_on: bool,
    /// How many fillings fewer it takes where the loads of both are joined.
    pub fills_saved: u32,
    /// What there is to say of its place.
    pub why: String,
}

impl DayPlan {
    /// All passes, rig by rig, those without a rig last.
    pub fn slots(&self) -> impl Iterator<Item = &Slot> {
        self.rigs.iter().flat_map(|rig| &rig.slots).chain(&self.loose)
    }
}

/// Plans a day: the passes of that date with the plans given, those that are recorded set apart. It depends on nothing but the farm.
///
/// # Valid range
/// On each rig up to [`order::EXACT`] passes come in the best order there is; of more it is told how far from the best theirs may be.
pub fn plan_day(farm: &Farm, date: Date, plans: &[&Plan]) -> DayPlan {
    plan_day_of(farm, &Log::of(farm), date, plans)
}

/// As [`plan_day`], with the records of the farm looked up already.
pub fn plan_day_of(farm: &Farm, log: &Log, date: Date, plans: &[&Plan]) -> DayPlan {
    let none = || DayPlan { date, rigs: Vec::new(), loose: Vec::new(), findings: Vec::new() };
    plan_day_told(farm, log, date, plans, &untold).unwrap_or_else(|_| none())
}

/// As [`plan_day_of`], told how many orders of the passes of a rig are tried, where there are more than [`order::EXACT`].
///
/// # Errors
/// [`Cancelled`] where it is ended.
pub fn plan_day_told(
    farm: &Farm,
    log: &Log,
    date: Date,
    plans: &[&Plan],
    tell: &Tell<'_>,
) -> Result<DayPlan, Cancelled> {
    let mut findings = Vec::new();
    let day = lay::Day::new(farm, log, date, tell);
    let mut rigs: Vec<(&Id, Vec<&Plan>)> = Vec::new();
    let mut loose = Vec::new();
    for (id, pass) in farm.passes.iter().filter(|(_, pass)| pass.date == date) {
        let Some(plan) = plans.iter().copied().find(|plan| plan.pass == *id) else { continue };
        if !farm.rigs.contains_key(&pass.rig) {
            let why =
                if pass.rig.is_empty() { t!("day-no-rig-is-chosen-for-it") } else { t!("day-its-rig-is-not-in-the") };
            loose.push(Slot { why: why.to_owned(), ..Slot::new(id, &pass.rig) });
        } else if let Some((_, plans)) = rigs.iter_mut().find(|(rig, _)| **rig == pass.rig) {
            plans.push(plan);
        } else {
            rigs.push((&pass.rig, vec![plan]));
        }
    }
    let rigs: Vec<RigDay> =
        rigs.into_iter().map(|(rig, plans)| lay::of_rig(&day, rig, &plans, &mut findings)).collect();
    let at_night = |rig: &RigDay| rig.slots.iter().filter_map(|slot| slot.span).any(|span| span.from.hour() < EARLY);
    if day.decided.from.is_none() && day.has_forecast() && rigs.iter().any(at_night) {
        findings.push(
            Finding::note(Subject::Farm, t!("day-no-hour-is-typed-at-which"), Basis::Arithmetic)
                .hint(t!("day-type-the-hour-at-which-the")),
        );
    }
    findings.sort_by_key(|finding| std::cmp::Reverse(finding.level));
    // An order of which the search was ended is none.
    tell(0, None)?;
    Ok(DayPlan { date, rigs, loose, findings })
}

impl Slot {
    /// A pass of a rig whose place is not known yet.
    pub fn new(pass: &Id, rig: &Id) -> Self {
        Self {
            pass: pass.clone(),
            rig: rig.clone(),
            clean_out: None,
            travel: None,
            takes: None,
            span: None,
            verdict: None,
            held: None,
            goes_on: false,
            fills_saved: 0,
            why: String::new(),
        }
    }
}
