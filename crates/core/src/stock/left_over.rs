//! What of a record's mix was left over: it left the containers as much as what went on the ground.
//!
//! # Method
//! The lines of a record hold what went on the ground: its loads less what was left over. What is left over is as strong, so of each product as
//! much again is taken off as its amount on the ground × left ÷ spray on the ground. Where spray of a pass goes on, it stands in the lines of
//! the record that it goes out with, and is taken off there: a later record of the same pass, or that of a pass which begins with it
//! (`in_tank`), once that has a record. What then remains was poured out, or is kept for nobody yet, and stays taken off here.

use rustc_hash::FxHashMap;

use jiff::civil::{Date, Time};

use crate::farm::{Farm, Id, Record};
use crate::quantity::{AsTyped, Volume};

/// What of a record's mix is taken off beside its lines.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum LeftOver {
    /// Nothing: nothing was left over, or all of it went out with the record of another pass.
    Nothing,
    /// So much of each of its lines again, which is the spray that was left over for good.
    Share(f64, Volume),
    /// Something was left over, but not how much spray went on the ground, so that it cannot be told.
    Unknown,
    /// A later record of the same pass is taken to hold it.
    GoesOn,
}

impl LeftOver {
    /// How many times its lines a record's mix took.
    pub(super) fn times(self) -> f64 {
        if let Self::Share(share, _) = self { 1.0 + share } else { 1.0 }
    }
}

/// What was left over of the records of a farm.
pub(super) struct LeftOvers<'a> {
    /// What recorded passes began with, by the pass it came from.
    went_on: FxHashMap<&'a str, Volume>,
    /// The last record of each pass of which something was left over, by when it was and its place.
    last: FxHashMap<&'a str, When>,
}

type When = (Date, bool, Option<Time>, usize);

/// Before any record.
const FIRST: When = (Date::MIN, false, None, 0);

fn when(record: &Record, place: usize) -> When {
    (record.date, record.start.is_none(), record.start, place)
}

fn left(record: &Record) -> Option<Volume> {
    record.left.as_ref().map(|left| left.volume.value()).filter(|left| left.exceeds(Volume::ZERO))
}

impl<'a> LeftOvers<'a> {
    /// Of the records of a farm from a day on, or of all. It looks at each once, and no more where nothing was left over.
    pub(super) fn of(farm: &'a Farm, from: Option<Date>) -> Self {
        let mut out = Self { went_on: FxHashMap::default(), last: FxHashMap::default() };
        let is_later = |record: &Record| from.is_none_or(|from| record.date >= from);
        let leaves = farm.records.values().filter(|record| is_later(record) && left(record).is_some());
        out.last.extend(leaves.filter_map(|record| record.pass.as_deref()).map(|pass| (pass, FIRST)));
        if out.last.is_empty() {
            return out;
        }
        let mut takers: FxHashMap<&str, (&'a Id, Volume)> = FxHashMap::default();
        for (id, pass) in &farm.passes {
            if let Some(in_tank) = pass.begins_with().filter(|in_tank| in_tank.from != *id) {
                takers.insert(id, (&in_tank.from, in_tank.volume.value()));
            }
        }
        for (place, record) in farm.records.values().enumerate().filter(|(_, record)| is_later(record)) {
            let last = record.pass.as_deref().and_then(|pass| out.last.get_mut(pass));
            if let Some(last) = last {
                *last = (*last).max(when(record, place));
            }
        }
        for pass in farm.records.values().filter_map(|record| record.pass.as_deref()) {
            if takers.is_empty() {
                break;
            }
            // Once for each pass that goes on with it.
            if let Some((giver, volume)) = takers.remove(pass) {
                let sum = out.went_on.entry(giver).or_insert(Volume::ZERO);
                *sum = *sum + volume;
            }
        }
        out
    }

    /// What of a record, by its place in the farm, is taken off beside its lines.
    pub(super) fn of_record(&self, record: &Record, place: usize) -> LeftOver {
        let Some(mut left) = left(record) else { return LeftOver::Nothing };
        if let Some(pass) = record.pass.as_deref() {
            if self.last.get(pass).is_some_and(|last| *last > when(record, place)) {
                return LeftOver::GoesOn;
            }
            let on = self.went_on.get(pass).copied().unwrap_or(Volume::ZERO);
            // What is typed of a tank is rounded.
            left = if left.exceeds(on * (1.0 + 1e-5)) { left - on } else { return LeftOver::Nothing };
        }
        let on_ground = record.volume.as_ref().map(AsTyped::value).filter(|volume| !volume.is_zero());
        match on_ground.and_then(|on_ground| left.ratio(on_ground)) {
            Some(share) => LeftOver::Share(share, left),
            None => LeftOver::Unknown,
        }
    }
}
