//! What may be wrong with an account, in words.

use super::account::{Accounts, Doubt};
use crate::farm::{Farm, Id, Moved};
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;
use crate::quantity::{AsTyped, Quantity};

/// What there is to say of the account of a product: Checks of what is below zero, of lots that do not exist or do not reach, of amounts that
/// need a density; Notes of empty containers, of what was left over, of a purchase on the day of the count, of work for customers, and of records that are not taken off because no day of a count is typed.
pub fn findings(farm: &Farm, accounts: &Accounts, product: &str) -> Vec<Finding> {
    let Some(account) = accounts.get(product) else { return Vec::new() };
    let mut out: Vec<Finding> = account.doubts.iter().map(|doubt| finding(farm, product, doubt)).collect();
    if account.since.is_none() && is_used(farm, product) {
        out.push(finding(farm, product, &Doubt::NoDay));
    }
    out
}

/// Whether a record or a movement holds it.
fn is_used(farm: &Farm, product: &str) -> bool {
    let in_record = || farm.records.values().any(|record| record.lines.iter().any(|line| line.product == product));
    let moved = farm.movements.iter().filter(|movement| !matches!(movement.what, Moved::Counted { .. }));
    moved.into_iter().any(|movement| movement.product == product) || in_record()
}

/// A doubt in words.
pub(super) fn finding(farm: &Farm, product: &str, doubt: &Doubt) -> Finding {
    let units = farm.units;
    let about = || Subject::Product(product.to_owned());
    let name = farm.products.get(product).map_or(product, |product| product.name.as_str());
    let by = |record: &Option<Id>| match record.as_ref().map(|id| farm.records.get(id)) {
        Some(Some(record)) => t!("stock-the-record", name = record.name),
        Some(None) => t!("stock-a-record").to_owned(),
        None => t!("stock-a-movement").to_owned(),
    };
    match doubt {
        Doubt::Below { most, now, date, record } => {
            let first = t!("stock-of-is-the-first", record = by(record), date = date);
            let who = if record.is_some() { "records" } else { "other" };
            if now.is_zero() {
                let text = t!(
                    "stock-up-to-more-than-was-counted",
                    name = name,
                    who = who,
                    most = most.show(units),
                    first = first
                );
                Finding::check(about(), text, Basis::Arithmetic).hint(t!("stock-look-whether-a-purchase-is-dated"))
            } else {
                let text = t!(
                    "stock-more-than-was-counted-and-bought",
                    name = name,
                    who = who,
                    now = now.show(units),
                    first = first
                );
                Finding::check(about(), text, Basis::Arithmetic).hint(t!("stock-type-in-the-shed-what-was"))
            }
        }
        Doubt::NoLot { lot, date, record } => {
            let text = t!("stock-of-takes-from-lot-of-which", name = name, record = by(record), date = date, lot = lot);
            Finding::check(about(), text, Basis::Arithmetic).hint(t!("stock-mend-the-lot-there-or-on"))
        }
        Doubt::LotOver { lots, over, date, record } => {
            let text = t!(
                "stock-of-takes-more-of-lot-than",
                name = name,
                record = by(record),
                date = date,
                over = over.show(units),
                lots = lots
            );
            Finding::check(about(), text, Basis::Arithmetic).hint(t!("stock-add-the-other-lot-there-or"))
        }
        Doubt::NoDensity { amount, date, record } => {
            let who = date.map_or_else(
                || t!("stock-the-count").to_owned(),
                |date| t!("stock-of", record = by(record), date = date),
            );
            let is_liquid = farm.products.get(product).is_some_and(crate::farm::Product::is_liquid);
            let kind = if is_liquid { "liquid" } else { "dry" };
            let text = t!("stock-has-so-what-is-on-hand", name = name, who = who, amount = amount, kind = kind);
            Finding::check(about(), text, Basis::Arithmetic).hint(t!("stock-type-its-density-in-the-shed"))
        }
        Doubt::TooManyBack { empties } => {
            let text = t!(
                "stock-more-empty-of-were-given-back",
                name = name,
                count = empties.count,
                kind = empties.kind.name(empties.count),
                size = AsTyped::text(&empties.size)
            );
            Finding::note(about(), text, Basis::Arithmetic).hint(t!("stock-where-they-are-older-than-the"))
        }
        Doubt::LeftOver { date, record, goes_on } => {
            let who = by(&Some(record.clone()));
            let left = farm.records.get(record).and_then(|record| record.left.as_ref());
            let left = left.map_or_else(String::new, |left| left.volume.text().to_owned());
            let (text, hint) = if *goes_on {
                (
                    t!("stock-of-says-that-were-left-over-and-went", name = name, who = who, date = date, left = left),
                    t!("stock-if-they-were-poured-out-write"),
                )
            } else {
                (
                    t!("stock-of-says-that-were-left-over", name = name, who = who, date = date, left = left),
                    t!("stock-type-the-spray-volume-used-on"),
                )
            };
            Finding::note(about(), text, Basis::Arithmetic).hint(hint)
        }
        Doubt::OnDayOfCount { amount, date } => {
            let text = t!("stock-were-bought-on-the-day-of", name = name, amount = amount, date = date);
            Finding::note(about(), text, Basis::Arithmetic).hint(t!("stock-if-they-were-counted-date-the"))
        }
        Doubt::ForCustomers { records, amount } => {
            let text = t!(
                "stock-took-from-this-shed-for-customers",
                name = name,
                records = records,
                amount = amount.show(units)
            );
            Finding::note(about(), text, Basis::Arithmetic).hint(t!("stock-where-a-customer-brought-the-product"))
        }
        Doubt::NoDay => {
            let text = t!("stock-no-day-of-a-count-is", name = name);
            Finding::note(about(), text, Basis::Arithmetic).hint(t!("stock-type-the-day-of-the-count"))
        }
    }
}
