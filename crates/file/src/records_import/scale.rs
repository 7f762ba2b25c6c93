//! Whether what comes to the ground is of the size that labels speak of. An amount per acre that was taken for the total is too
//! small by the size of the field.

use std::collections::BTreeMap;

use tankard_core::farm::{Product, Says};
use tankard_core::mix::line::per_area;
use tankard_core::quantity::{Amount, AmountPerArea, Area, CarrierRate, Rate, Units};
use tankard_core::t;

use super::Table;
use super::holds::Holds;
use super::mapping::Mapping;

/// So many times off the label's range is told.
const FAR: f64 = 5.0;

/// What is far from the labels' rates, by product.
#[derive(Debug, Default)]
pub(super) struct Scale {
    low: BTreeMap<String, Off>,
    high: BTreeMap<String, Off>,
}

#[derive(Debug)]
struct Off {
    count: usize,
    line: u64,
    rate: AmountPerArea,
    range: (AmountPerArea, AmountPerArea),
}

impl Scale {
    /// Looks at an amount of a product on an area.
    pub(super) fn look(&mut self, product: &Product, amount: Amount, area: Area, line: u64) {
        let Some((rate, range)) = amount.spread(area).zip(range(product)).filter(|(rate, _)| !rate.is_zero()) else {
            return;
        };
        let off = match (ratio(range.0, rate), ratio(rate, range.1)) {
            (Some(times), _) if times > FAR => &mut self.low,
            (_, Some(times)) if times > FAR => &mut self.high,
            _ => return,
        };
        off.entry(product.name.clone()).or_insert(Off { count: 0, line, rate, range }).count += 1;
    }

    /// Adds what was seen elsewhere.
    pub(super) fn join(&mut self, other: Self) {
        for (own, other) in [(&mut self.low, other.low), (&mut self.high, other.high)] {
            for (name, off) in other {
                let count = off.count;
                own.entry(name).or_insert(Off { count: 0, ..off }).count += count;
            }
        }
    }

    /// What a person should know of it.
    pub(super) fn notes(&self, table: &Table, mapping: &Mapping, units: Units) -> Vec<String> {
        let amount = mapping.of(Holds::Amount).is_some();
        let take = mapping.of(Holds::Amount).or_else(|| mapping.of(Holds::Rate));
        let heading = take.and_then(|take| table.header.get(take.column)).map_or("", String::as_str);
        let note = |all: &BTreeMap<String, Off>, like: &str| {
            let (name, off) = all.iter().next()?;
            let more = all.values().map(|off| off.count).sum::<usize>().saturating_sub(1);
            let (least, most) = (off.range.0.show(units), off.range.1.show(units));
            let label = if least == most { most } else { t!("file-to", least = least, most = most) };
            Some(t!(
                "file-the-figures-in-on-line-comes",
                heading = heading,
                like = like,
                name = name,
                line = off.line,
                rate = off.rate.show(units),
                label = label,
                more = more
            ))
        };
        // The words by which the message chooses.
        let (low, high) =
            if amount { ("amounts-per-ground", "large-amounts") } else { ("small-rates", "amounts-of-fields") };
        note(&self.low, low).into_iter().chain(note(&self.high, high)).collect()
    }
}

/// The smallest and the largest rate over ground that a label has. Shares of the spray volume are left out.
fn range(product: &Product) -> Option<(AmountPerArea, AmountPerArea)> {
    let ground = |rate: Rate| match rate {
        Rate::VolumePerSpray(_) | Rate::MassPerSpray(_) | Rate::OuncesPerSpray(_) | Rate::ActivePerSpray(..) => None,
        rate => per_area(rate, product, CarrierRate::ZERO).ok(),
    };
    let rates = product.label.iter().flat_map(|statement| match &statement.says {
        Says::Rate { least, most } => [least, most].map(Option::as_ref),
        _ => [None, None],
    });
    let rates: Vec<AmountPerArea> = rates.flatten().filter_map(|rate| ground(rate.value())).collect();
    let first = *rates.first()?;
    Some(rates.into_iter().fold((first, first), |(least, most), rate| {
        (if least.exceeds(rate) == Some(true) { rate } else { least }, most.larger(rate))
    }))
}

fn ratio(one: AmountPerArea, other: AmountPerArea) -> Option<f64> {
    match (one, other) {
        (AmountPerArea::Volume(one), AmountPerArea::Volume(other)) => one.ratio(other),
        (AmountPerArea::Mass(one), AmountPerArea::Mass(other)) => one.ratio(other),
        _ => None,
    }
}
