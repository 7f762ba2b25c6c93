//! What of a record's mix was left over: it left the containers as much as what went on the ground.
//!
//! # Method
//! The lines of a record hold what went on the ground: its loads less what was left over. What is left over is as strong, so of each product as
//! much again is taken off as its amount on the ground × left ÷ spray on the ground. Where spray of a pass goes on, it stands in the lines of
//! the record that it goes out with, and is taken off there: a later record of the same pass, or that of a pass which begins with it
//! (`in_tank`), once that has a record. What then remains was poured out, or is kept for nobody yet, and stays taken off here.

use std::cell::OnceCell;

use rustc_hash::FxHashMap;

use jiff::civil::{Date, Time};

use crate::farm::{Farm, Record};
use crate::quantity::{AsTyped, Volume};
use crate::season::Log;

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

/// What recorded passes began with, each with the pass that it came from, in the order of the farm.
pub(super) fn went_on_with<'a>(farm: &'a Farm, log: &Log) -> impl Iterator<Item = (&'a str, Volume)> {
    farm.passes.iter().filter(|(id, _)| log.has_record(id)).filter_map(|(id, pass)| {
        let in_tank = pass.begins_with().filter(|in_tank| in_tank.from != *id)?;
        Some((in_tank.from.as_str(), in_tank.volume.value()))
    })
}

/// What was left over of the records of a farm from a day on, or of all.
pub(super) struct LeftOvers<'a> {
    farm: &'a Farm,
    log: &'a Log,
    from: Option<Date>,
    /// What recorded passes began with, by the pass it came from; looked up once something was left over.
    went_on: OnceCell<FxHashMap<&'a str, Volume>>,
}

type When = (Date, bool, Option<Time>, usize);

fn when(record: &Record, place: usize) -> When {
    (record.date, record.start.is_none(), record.start, place)
}

fn left(record: &Record) -> Option<Volume> {
    record.left.as_ref().map(|left| left.volume.value()).filter(|left| left.exceeds(Volume::ZERO))
}

impl<'a> LeftOvers<'a> {
    pub(super) fn of(farm: &'a Farm, log: &'a Log, from: Option<Date>) -> Self {
        Self { farm, log, from, went_on: OnceCell::new() }
    }

    fn went_on(&self, pass: &str) -> Volume {
        let all = self.went_on.get_or_init(|| {
            let mut went_on: FxHashMap<&str, Volume> = FxHashMap::default();
            for (from, volume) in went_on_with(self.farm, self.log) {
                let sum = went_on.entry(from).or_insert(Volume::ZERO);
                *sum = *sum + volume;
            }
            went_on
        });
        all.get(pass).copied().unwrap_or(Volume::ZERO)
    }

    /// When the last record of a pass was.
    fn last_of(&self, pass: &str) -> Option<When> {
        let places = self.log.places_of_pass(pass, self.from);
        places.filter_map(|place| self.farm.records.get_index(place).map(|(_, record)| when(record, place))).max()
    }

    /// What of a record, by its place in the farm, is taken off beside its lines.
    pub(super) fn of_record(&self, record: &Record, place: usize) -> LeftOver {
        let Some(mut left) = left(record) else { return LeftOver::Nothing };
        if let Some(pass) = record.pass.as_deref() {
            if self.last_of(pass).is_some_and(|last| last > when(record, place)) {
                return LeftOver::GoesOn;
            }
            let on = self.went_on(pass);
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
