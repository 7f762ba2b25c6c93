//! What happened to products, in order of time.
//!
//! # Method
//! On one day comes first a count made before the spraying, then what came in (bought or not, as written down), then the records by the time at
//! which they began (those without one after them, in the order of the farm), then what went out and what was given back (as written
//! down), then a count made after the spraying.

use std::collections::HashMap;

use jiff::civil::{Date, Time};

use super::left_over::{LeftOver, LeftOvers};
use crate::farm::{Farm, Id, Moved, Movement, Product, Record, RecordLine};
use crate::season::Log;

/// A part of a day.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Part {
    /// Counted before the spraying.
    CountedBefore,
    /// What came in.
    In,
    /// What was sprayed.
    Record,
    /// What went out, and what was given back.
    Out,
    /// Counted after the spraying.
    CountedAfter,
}

/// The moment of a count.
pub(super) type Moment = (Date, Part);

/// The moment of a count on a day.
pub(super) const fn moment(date: Date, after: bool) -> Moment {
    (date, if after { Part::CountedAfter } else { Part::CountedBefore })
}

/// The moment from which on the count of a product holds.
pub(super) fn counted(product: &Product) -> Option<Moment> {
    product.counted.map(|date| moment(date, product.counted_after))
}

/// What happened.
#[derive(Clone, Copy, Debug)]
pub(super) enum What<'a> {
    /// A movement, with its place in the farm.
    Movement(usize, &'a Movement),
    /// A line of a record, with what of it is taken off beside.
    Record(&'a Id, &'a Record, &'a RecordLine, LeftOver),
}

/// Something that happened to a product.
#[derive(Clone, Copy, Debug)]
pub(super) struct Happened<'a> {
    pub(super) at: Moment,
    /// When spraying began; without a time after all others.
    start: (bool, Option<Time>),
    /// Its place among the records or the movements.
    place: usize,
    pub(super) what: What<'a>,
}

/// What happened to some products from a day on, beside them; from the beginning without a day. Movements are looked at
/// once, of the records those that hold one of the products.
pub(super) fn of<'a>(farm: &'a Farm, log: &Log, products: &[&str], from: Option<Date>) -> Vec<Vec<Happened<'a>>> {
    let mut out: Vec<Vec<Happened<'a>>> = products.iter().map(|_| Vec::new()).collect();
    if products.is_empty() {
        return out;
    }
    let places: HashMap<&str, usize> = products.iter().enumerate().map(|(at, id)| (*id, at)).collect();
    let is_later = |date: Date| from.is_none_or(|from| date >= from);
    for (place, movement) in farm.movements.iter().enumerate().filter(|(_, movement)| is_later(movement.date)) {
        let Some(list) = places.get(movement.product.as_str()).and_then(|at| out.get_mut(*at)) else { continue };
        let part = match &movement.what {
            Moved::Bought { .. } | Moved::In { .. } => Part::In,
            Moved::Out { .. } | Moved::Returned { .. } => Part::Out,
            Moved::Counted { after: false, .. } => Part::CountedBefore,
            Moved::Counted { after: true, .. } => Part::CountedAfter,
        };
        let (at, start) = ((movement.date, part), (false, None));
        list.push(Happened { at, start, place, what: What::Movement(place, movement) });
    }
    let left = LeftOvers::of(farm, log, from);
    for (product, list) in products.iter().zip(&mut out) {
        for place in log.of_product(product, from) {
            let Some((id, record)) = farm.records.get_index(place) else { continue };
            let left = left.of_record(record, place);
            let (at, start) = ((record.date, Part::Record), (record.start.is_none(), record.start));
            let lines = record.lines.iter().filter(|line| line.product == *product);
            list.extend(lines.map(|line| Happened { at, start, place, what: What::Record(id, record, line, left) }));
        }
    }
    for list in &mut out {
        // The sort keeps the lines of one record in their order.
        list.sort_by_key(|happened| (happened.at, happened.start, happened.place));
    }
    out
}
