//! Planned against applied. An error is what was done over what was planned, less one: +2 % is two hundredths too much.

use super::{Picked, index::Entry};
use crate::farm::{Id, Record, RecordLine};
use crate::quantity::{Area, AsTyped, Share, Volume};
use crate::season::stats::median;

/// A record against its plan, as far as it keeps one.
#[derive(Clone, Debug, Default)]
pub(super) struct Against {
    area: Option<f64>,
    volume: Option<f64>,
    /// By product.
    rates: Vec<(u32, f64)>,
    /// Products whose planned amount, or the planned ground, is not kept.
    lines_without: usize,
    left: Option<Volume>,
}

impl Against {
    fn has_plan(&self) -> bool {
        self.area.is_some() || self.volume.is_some() || !self.rates.is_empty()
    }
}

pub(super) fn against<'a>(record: &'a Record, mut number: impl FnMut(&'a RecordLine) -> u32) -> Against {
    let planned: Option<Area> = record.fields.values().map(|field| field.planned.as_ref().map(AsTyped::value)).sum();
    let area = planned.and_then(|planned| record.area().ratio(planned));
    let volume = record.volume.as_ref().zip(record.planned.as_ref());
    let mut rates = Vec::new();
    for line in &record.lines {
        let amount = line.planned.as_ref().and_then(|planned| line.amount.value().ratio(planned.value()));
        // The amount over its ground, against the planned amount over the planned ground.
        if let Some(error) = amount.zip(area.filter(|area| *area > 0.0)).map(|(amount, area)| amount / area - 1.0) {
            rates.push((number(line), error));
        }
    }
    Against {
        area: area.map(|area| area - 1.0),
        volume: volume.and_then(|(sprayed, planned)| sprayed.value().ratio(planned.value())).map(|ratio| ratio - 1.0),
        lines_without: record.lines.len() - rates.len(),
        rates,
        left: record.left.as_ref().map(|left| left.volume.value()),
    }
}

/// Planned against applied. A record counts in full where any of its ground is picked.
#[derive(Clone, Debug, PartialEq)]
pub struct Planned {
    /// Errors of the amounts over ground, product by product.
    pub rate: Option<Errors>,
    /// Errors of the ground, record by record.
    pub area: Option<Errors>,
    /// Errors of the spray volume, record by record.
    pub volume: Option<Errors>,
    /// What was left over in all.
    pub left: Volume,
    /// How many records say what was left over.
    pub left_told: usize,
    /// The largest errors of amounts over ground, the largest first.
    pub worst: Vec<Worst>,
    /// How many records keep nothing of a plan.
    pub without_plan: usize,
    /// How many products in records with a plan do not keep what was planned of them, or on what ground.
    pub lines_without: usize,
}

/// How many of the largest errors are listed.
const WORST: usize = 10;

/// The ends of the bars of [`Errors::bars`], in per cent; two more bars lie beyond.
pub const BARS: [i32; 8] = [-20, -10, -5, -2, 2, 5, 10, 20];

/// Errors in a few numbers.
#[derive(Clone, Debug, PartialEq)]
pub struct Errors {
    /// How many.
    pub n: usize,
    /// Mean.
    pub mean: Share,
    /// Median.
    pub median: Share,
    /// The most too little.
    pub least: Share,
    /// The most too much.
    pub most: Share,
    /// How many lie below the first of [`BARS`], from each to below the next, and from the last on.
    pub bars: [usize; BARS.len() + 1],
}

/// A large error.
#[derive(Clone, Debug, PartialEq)]
pub struct Worst {
    /// The record.
    pub record: Id,
    /// What it is called.
    pub name: String,
    /// Its day.
    pub date: jiff::civil::Date,
    /// The product's name.
    pub product: String,
    /// How far off.
    pub error: Share,
}

/// The page, of what is picked.
pub fn page(picked: &Picked<'_>) -> Planned {
    let (mut rates, mut areas, mut volumes) = (Vec::new(), Vec::new(), Vec::new());
    let mut largest: Vec<(&Entry, u32, f64)> = Vec::new();
    let (mut left, mut left_told, mut without_plan, mut lines_without) = (Volume::ZERO, 0, 0, 0);
    for (_, entry) in picked.entries() {
        let against = &entry.against;
        left = left + against.left.unwrap_or(Volume::ZERO);
        left_told += usize::from(against.left.is_some());
        if !against.has_plan() {
            without_plan += 1;
            continue;
        }
        lines_without += against.lines_without;
        areas.extend(against.area);
        volumes.extend(against.volume);
        for (product, error) in &against.rates {
            rates.push(*error);
            let smaller = |(_, _, other): &(&Entry, u32, f64)| other.abs() < error.abs();
            let at = largest.iter().position(smaller).unwrap_or(largest.len());
            if at < WORST && *error != 0.0 {
                largest.insert(at, (entry, *product, *error));
                largest.truncate(WORST);
            }
        }
    }
    let name = |at: u32| picked.index.products.get(at as usize).map(|product| product.name.clone()).unwrap_or_default();
    let worst = largest.into_iter().map(|(entry, product, error)| Worst {
        record: entry.id.clone(),
        name: entry.name.clone(),
        date: entry.date,
        product: name(product),
        error: Share::from_fraction(error),
    });
    Planned {
        worst: worst.collect(),
        rate: errors(&rates),
        area: errors(&areas),
        volume: errors(&volumes),
        left,
        left_told,
        without_plan,
        lines_without,
    }
}

fn errors(all: &[f64]) -> Option<Errors> {
    let mut bars = [0; BARS.len() + 1];
    for error in all {
        // A rounding of the last digit does not move an error over an end.
        let per_cent = (error * 1e11).round() / 1e9;
        let bar = BARS.iter().take_while(|end| per_cent >= f64::from(**end)).count();
        if let Some(count) = bars.get_mut(bar) {
            *count += 1;
        }
    }
    let of = Share::from_fraction;
    Some(Errors {
        n: all.len(),
        mean: of(all.iter().sum::<f64>() / all.len() as f64),
        median: of(median(all)?),
        least: of(all.iter().copied().fold(f64::INFINITY, f64::min)),
        most: of(all.iter().copied().fold(f64::NEG_INFINITY, f64::max)),
        bars,
    })
}
