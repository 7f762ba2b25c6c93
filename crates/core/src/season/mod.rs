//! Records: how they come from a plan, how they are signed and amended, and sums over them: what a field has had, what a season
//! came to.

pub mod amend;
mod application;
pub mod binds;
pub mod close;
pub mod field;
pub mod find;
pub mod keep_out;
mod log;
pub mod outside;
pub mod period;
pub mod portion;
pub mod profile;
pub mod record;
pub mod review;
pub mod seal;
mod shares;
pub mod stats;
pub mod too_much;
mod totals;
pub mod trials;
pub mod used;
pub mod worker_protection;

pub(crate) use application::{by_application, driven_over};
pub use log::Log;
pub use shares::{FieldShare, shared_fields, shares};
pub use totals::{Totals, sum, totals};

use crate::farm::{Farm, Id, Record};
use crate::language::t;
use crate::mix::actives::Wanted;
use crate::quantity::{ActiveBasis, AmountPerArea, MassPerArea};
use jiff::civil::Date;
use std::cell::OnceCell;
use std::collections::HashMap;

/// What a field has had, and which records could not be counted in.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct SoFar<T> {
    /// The sum over ground of what could be counted.
    pub sum: T,
    /// Records that belong to it and could not be counted, each with the reason.
    pub left_out: Vec<String>,
}

/// Which records a season total looks at.
#[derive(Clone, Copy, Debug)]
pub struct Reach<'a> {
    /// From which day on.
    pub from: Date,
    /// Up to and including which day.
    pub to: Date,
    /// The field.
    pub field: &'a Id,
    /// The pass that is planned: its own record of the same day is the pass itself and does not count, nor does the record of
    /// another part of the same application, which lies on other ground.
    pub pass: &'a Id,
    /// The day of that pass.
    pub date: Date,
}

impl<'a> Reach<'a> {
    /// All records of a field, whenever they were.
    pub fn always(field: &'a Id, pass: &'a Id, date: Date) -> Self {
        Self { from: Date::MIN, to: Date::MAX, field, pass, date }
    }

    /// The records.
    pub fn records(self, farm: &'a Farm, log: &'a Log) -> impl Iterator<Item = &'a Record> + use<'a> {
        let (first, itself) = (farm.first_part(self.pass), OnceCell::new());
        log.on_field(farm, self.field).map(|(_, record)| record).filter(move |record| {
            (self.from..=self.to).contains(&record.date)
                && !record.pass.as_ref().is_some_and(|of| {
                    if of == self.pass {
                        let itself = itself.get_or_init(|| self.itself(farm, log));
                        itself.iter().any(|own| std::ptr::eq(*own, *record))
                    } else {
                        farm.first_part(of) == first
                    }
                })
        })
    }

    /// The records of the pass itself: the application of its day with all its parts; where the pass is recorded in parts alone and
    /// none of its day, these.
    fn itself(self, farm: &'a Farm, log: &'a Log) -> Vec<&'a Record> {
        let own = log.of_pass(farm, self.pass).filter(|record| record.fields.contains_key(self.field));
        let mut applications = by_application(farm, self.field, own);
        if let [parts] = applications.as_mut_slice()
            && parts.len() > 1
        {
            return std::mem::take(parts);
        }
        applications.retain(|parts| parts.iter().any(|record| record.date == self.date));
        applications.concat()
    }
}

fn named(record: &Record) -> String {
    t!("season-name-of-date", name = record.name, date = record.date)
}

/// How much of a product a field has had, over ground; `None` for nothing.
///
/// Each record's amount is spread evenly over the ground of that record. Of parts of one application, of which any ground has had
/// but one, the largest counts.
pub fn product_so_far(farm: &Farm, log: &Log, reach: Reach<'_>, product: &str) -> SoFar<Option<AmountPerArea>> {
    let liquid = farm.products.get(product).is_some_and(crate::farm::Product::is_liquid);
    let mut so_far: SoFar<Option<AmountPerArea>> = SoFar::default();
    let plus = |sum: Option<AmountPerArea>, rate: AmountPerArea| sum.map_or(Some(rate), |before| before.plus(rate));
    for parts in by_application(farm, reach.field, reach.records(farm, log)) {
        let mut largest: Option<AmountPerArea> = None;
        for record in parts {
            let mut sum = None;
            for line in record.lines.iter().filter(|line| line.product == product) {
                let rate = line.amount.value().spread(record.area());
                let fits = matches!(
                    (rate, liquid),
                    (Some(AmountPerArea::Volume(_)), true) | (Some(AmountPerArea::Mass(_)), false)
                );
                match (rate, fits) {
                    (Some(rate), true) => sum = plus(sum, rate),
                    (Some(_), false) => {
                        so_far.left_out.push(t!(
                            "season-has-it-as",
                            record = named(record),
                            amount = line.amount.text()
                        ));
                    }
                    (None, _) => so_far.left_out.push(t!("season-has-no-area", record = named(record))),
                }
            }
            largest = largest.into_iter().chain(sum).reduce(AmountPerArea::larger);
        }
        so_far.sum = largest.map_or(so_far.sum, |rate| plus(so_far.sum, rate));
    }
    so_far
}

/// How much of an active a field has had, over ground, from all products, on the basis asked for.
pub fn active_so_far(farm: &Farm, log: &Log, reach: Reach<'_>, active: &str, basis: ActiveBasis) -> SoFar<MassPerArea> {
    let mut so_far = SoFar { sum: MassPerArea::ZERO, left_out: Vec::new() };
    let mut meant = Meant { wanted: Wanted::new(active), names: HashMap::new(), products: HashMap::new() };
    for parts in by_application(farm, reach.field, reach.records(farm, log)) {
        let one = |record| active_in(farm, record, &mut meant, basis, &mut so_far.left_out);
        let largest = parts.into_iter().map(one).fold(MassPerArea::ZERO, MassPerArea::max);
        so_far.sum = so_far.sum + largest;
    }
    so_far
}

/// An active with what was compared with it: thousands of lines name a handful of actives and products.
struct Meant<'a> {
    wanted: Wanted<'a>,
    names: HashMap<&'a str, bool>,
    products: HashMap<&'a str, bool>,
}

impl<'a> Meant<'a> {
    fn is(&mut self, name: &'a str) -> bool {
        *self.names.entry(name).or_insert_with(|| self.wanted.is(name))
    }

    fn is_in(&mut self, farm: &Farm, id: &'a str) -> bool {
        let made = || farm.products.get(id).is_some_and(|product| self.wanted.is_in(product));
        *self.products.entry(id).or_insert_with(made)
    }
}

/// How much of an active a record put on its ground.
fn active_in<'a>(
    farm: &Farm,
    record: &'a Record,
    meant: &mut Meant<'a>,
    basis: ActiveBasis,
    left_out: &mut Vec<String>,
) -> MassPerArea {
    let mut sum = MassPerArea::ZERO;
    for line in &record.lines {
        let held: Vec<_> = line.actives.iter().filter(|held| meant.is(&held.name)).collect();
        if held.is_empty() && !line.amount.is_zero() && meant.is_in(farm, &line.product) {
            left_out.push(t!("season-does-not-say-how-much-of", record = named(record), name = line.name));
        }
        for held in held {
            match held.mass.value().over(record.area()) {
                Some(rate) if held.basis == basis => sum = sum + rate,
                Some(_) => left_out.push(t!("season-counts-it-as", record = named(record), short = held.basis.short())),
                None => left_out.push(t!("season-has-no-area", record = named(record))),
            }
        }
    }
    sum
}
