//! The picture of a day: one row a rig, its passes as blocks along the clock.

use jiff::civil::{Date, DateTime};
use serde::Serialize;

use super::Slot;
use crate::plan::Plan;
use crate::quantity::Duration;
use crate::weather::Span;

/// The day as a picture. Places along it are shares of its length, 0 at its first hour and 1 at its last.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Timeline {
    /// The whole hours of the scale.
    pub ticks: Vec<Tick>,
    /// The rigs.
    pub rows: Vec<Row>,
}

/// An hour on the scale.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Tick {
    /// Where it stands.
    pub at: f64,
    /// "05:00".
    pub label: String,
}

/// A rig's day.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Row {
    /// The rig's name.
    pub rig: String,
    /// What it does, in the order of the day.
    pub blocks: Vec<Block>,
}

/// A span of a rig's day.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Block {
    /// Where it begins.
    pub from: f64,
    /// Where it ends.
    pub to: f64,
    /// What is done in it.
    pub kind: BlockKind,
    /// The number of the pass on the sheet; for cleaning and road that of the pass it leads to.
    pub number: u32,
    /// The name of the pass; empty for cleaning and road.
    pub name: String,
    /// Where its second load begins, and each further one.
    pub loads: Vec<f64>,
}

/// What a rig does in a span of its day.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum BlockKind {
    /// A pass, filling included.
    Pass,
    /// Cleaning out before the next pass.
    CleanOut,
    /// Road to the next pass.
    Road,
}

/// A pass to be drawn.
pub(super) struct Drawn<'a> {
    pub(super) number: u32,
    pub(super) name: &'a str,
    pub(super) plan: &'a Plan,
    pub(super) slot: &'a Slot,
}

/// A block in seconds of the day's clock.
struct Placed<'a> {
    from: f64,
    to: f64,
    kind: BlockKind,
    pass: &'a Drawn<'a>,
}

/// The picture of the passes of a day, rig by rig; `None` where no pass has its time.
pub(super) fn timeline(date: Date, rigs: &[(String, Vec<Drawn>)]) -> Option<Timeline> {
    let rows: Vec<(&str, Vec<Placed>)> = rigs
        .iter()
        .map(|(name, passes)| (name.as_str(), placed(date, passes)))
        .filter(|(_, blocks)| !blocks.is_empty())
        .collect();
    let all = || rows.iter().flat_map(|(_, blocks)| blocks);
    let hour = Duration::from_hours(1.0).to_seconds();
    let first = all().map(|block| block.from).min_by(f64::total_cmp)?;
    let last = all().map(|block| block.to).max_by(f64::total_cmp)?;
    let (first, last) = ((first / hour).floor(), (last / hour).ceil());
    let hours = (last - first).max(1.0);
    let share = |seconds: f64| (seconds / hour - first) / hours;
    // Each hour has its label while there is room for it.
    let step = (hours / 14.0).ceil();
    let mut ticks = Vec::new();
    let mut at = first;
    while at <= first + hours {
        ticks.push(Tick { at: (at - first) / hours, label: label(at) });
        at += step;
    }
    let rows = rows
        .iter()
        .map(|(rig, blocks)| Row {
            rig: (*rig).to_owned(),
            blocks: blocks
                .iter()
                .map(|block| {
                    let is_pass = block.kind == BlockKind::Pass;
                    let starts = if is_pass { starts(block.pass.plan) } else { Vec::new() };
                    let within = |part: f64| share(block.from + part * (block.to - block.from));
                    Block {
                        from: share(block.from),
                        to: share(block.to),
                        kind: block.kind,
                        number: block.pass.number,
                        name: if is_pass { block.pass.name.to_owned() } else { String::new() },
                        loads: starts.into_iter().map(within).collect(),
                    }
                })
                .collect(),
        })
        .collect();
    Some(Timeline { ticks, rows })
}

/// "05:00" for the fifth hour; after midnight the clock begins anew.
fn label(hour: f64) -> String {
    let of_day = if hour > 24.0 { hour.rem_euclid(24.0) } else { hour };
    format!("{of_day:02.0}:00")
}

/// The passes that have their time, with cleaning and road right after what was before, or right before the pass where that
/// is not known.
fn placed<'a>(date: Date, passes: &'a [Drawn<'a>]) -> Vec<Placed<'a>> {
    let mut blocks: Vec<Placed> = Vec::new();
    let mut free: Option<f64> = None;
    for pass in passes {
        let Some(Span { from, to }) = pass.slot.span else {
            free = None;
            continue;
        };
        let (from, to) = (seconds(date, from), seconds(date, to));
        let length = |time: Option<Duration>| time.map_or(0.0, Duration::to_seconds);
        let (clean_out, road) = (length(pass.slot.clean_out), length(pass.slot.travel));
        let latest = from - clean_out - road;
        let begin = free.map_or(latest, |free| free.min(latest));
        let mut before = |from: f64, length: f64, kind: BlockKind| {
            if length > 0.0 {
                blocks.push(Placed { from, to: from + length, kind, pass });
            }
        };
        before(begin, clean_out, BlockKind::CleanOut);
        before(begin + clean_out, road, BlockKind::Road);
        blocks.push(Placed { from, to, kind: BlockKind::Pass, pass });
        free = Some(to);
    }
    blocks
}

/// Seconds from the beginning of the day, by the clock.
fn seconds(date: Date, at: DateTime) -> f64 {
    at.duration_since(date.at(0, 0, 0, 0)).as_secs_f64()
}

/// Where in a pass its second load begins, and each further one: by filling times and ground, the road spread over all.
fn starts(plan: &Plan) -> Vec<f64> {
    let Some(work) = &plan.work else { return Vec::new() };
    let times: Vec<f64> = plan
        .loads
        .iter()
        .enumerate()
        .map(|(at, load)| {
            let fill = work.fills.get(at).copied().unwrap_or(Duration::ZERO).to_seconds();
            fill + load.area.ratio(plan.area).unwrap_or_default() * work.spraying.to_seconds()
        })
        .collect();
    let whole: f64 = times.iter().sum();
    if whole <= 0.0 {
        return Vec::new();
    }
    let mut done = 0.0;
    let ends = times.iter().map(|time| {
        done += time;
        done / whole
    });
    ends.take(times.len().saturating_sub(1)).collect()
}
