//! Records: how they come from a plan, and sums over them: what a field has had, what a season came to.

pub mod record;
mod totals;

pub use totals::{Totals, sum, totals};

use crate::farm::{Farm, Id, Record};
use crate::quantity::{AmountPerArea, MassPerArea};

/// The records of a calendar year on a field, but for those of one pass (so that a recorded pass is not counted twice).
fn on_field<'a>(farm: &'a Farm, year: i16, field: &'a Id, but: &'a Id) -> impl Iterator<Item = &'a Record> {
    farm.records.values().filter(move |record| {
        record.date.year() == year && record.fields.contains_key(field) && record.pass.as_ref() != Some(but)
    })
}

/// How much of a product a field has had in a year, over ground; `None` for nothing.
///
/// Each record's amount is spread evenly over the ground of that record.
pub fn product_so_far(farm: &Farm, year: i16, field: &Id, product: &Id, but_pass: &Id) -> Option<AmountPerArea> {
    let mut total: Option<AmountPerArea> = None;
    for record in on_field(farm, year, field, but_pass) {
        for line in record.lines.iter().filter(|line| line.product == *product) {
            if let Some(rate) = line.amount.value().spread(record.area()) {
                total = match total {
                    Some(before) => before.plus(rate).or(Some(before)),
                    None => Some(rate),
                };
            }
        }
    }
    total
}

/// How much of an active a field has had in a year, over ground, from all products.
pub fn active_so_far(farm: &Farm, year: i16, field: &Id, active: &str, but_pass: &Id) -> MassPerArea {
    on_field(farm, year, field, but_pass)
        .flat_map(|record| record.lines.iter().flat_map(|line| &line.actives).map(move |held| (record, held)))
        .filter(|(_, held)| held.name.eq_ignore_ascii_case(active))
        .filter_map(|(record, held)| held.mass.value().over(record.area()))
        .sum()
}
