//! What may be wrong with an account, in words.

use super::account::{Accounts, Doubt};
use crate::farm::{Farm, Id, Moved};
use crate::finding::{Basis, Finding, Subject};
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
        Some(Some(record)) => format!("the record \"{}\"", record.name),
        Some(None) => "a record".to_owned(),
        None => "a movement".to_owned(),
    };
    match doubt {
        Doubt::Below { most, now, date, record } => {
            let first = format!("{} of {date} is the first", by(record));
            let what = if record.is_some() { "records use" } else { "more went out:" };
            if now.is_zero() {
                let text = format!(
                    "{name}: {what} up to {} more than was counted and bought by then; what came in later makes up for it; {first}",
                    most.show(units)
                );
                Finding::check(about(), text, Basis::Arithmetic)
                    .hint("Look whether a purchase is dated too late, or is missing.")
            } else {
                let text = format!(
                    "{name}: {what} {} more than was counted and bought: a purchase or a count is missing; {first}",
                    now.show(units)
                );
                Finding::check(about(), text, Basis::Arithmetic)
                    .hint("Type in the shed what was bought, or count what is there; or mend the record.")
            }
        }
        Doubt::NoLot { lot, date, record } => {
            let text = format!(
                "{name}: {} of {date} takes from lot {lot}, of which nothing was counted or bought",
                by(record)
            );
            Finding::check(about(), text, Basis::Arithmetic)
                .hint("Mend the lot there, or on the count or the purchase; until then it is taken from other lots.")
        }
        Doubt::LotOver { lots, over, date, record } => {
            let text = format!(
                "{name}: {} of {date} takes {} more of lot {lots} than there was of it; that is taken from other lots",
                by(record),
                over.show(units)
            );
            Finding::check(about(), text, Basis::Arithmetic)
                .hint("Add the other lot there, or mend the count or the purchase.")
        }
        Doubt::NoDensity { amount, date, record } => {
            let who = date.map_or_else(|| "the count".to_owned(), |date| format!("{} of {date}", by(record)));
            let other = if farm.products.get(product).is_some_and(crate::farm::Product::is_liquid) {
                "a weight of a liquid"
            } else {
                "a volume of a dry product"
            };
            let text = format!("{name}: {who} has {amount}, {other}, so what is on hand is not known");
            Finding::check(about(), text, Basis::Arithmetic).hint("Type its density in the shed, or mend the amount.")
        }
        Doubt::TooManyBack { empties } => {
            let text = format!(
                "{name}: {} more empty {} of {} were given back than were emptied since the count",
                empties.count,
                empties.kind.name(empties.count),
                AsTyped::text(&empties.size)
            );
            Finding::note(about(), text, Basis::Arithmetic)
                .hint("Where they are older than the count, count the empty ones too.")
        }
        Doubt::LeftOver { date, record, goes_on } => {
            let who = by(&Some(record.clone()));
            let (what, hint) = if *goes_on {
                (
                    "which are taken to have gone out with a later record of the pass",
                    "If they were poured out, write down in the shed what of it went out otherwise.",
                )
            } else {
                (
                    "but not how much spray went on the ground, so what of it was left over is not taken off",
                    "Type the spray volume used on the record.",
                )
            };
            let left = farm.records.get(record).and_then(|record| record.left.as_ref());
            let left = left.map_or_else(String::new, |left| left.volume.text().to_owned());
            let text = format!("{name}: {who} of {date} says that {left} were left over, {what}");
            Finding::note(about(), text, Basis::Arithmetic).hint(hint)
        }
        Doubt::OnDayOfCount { amount, date } => {
            let text = format!(
                "{name}: {amount} were bought on {date}, the day of the count, and are added to it; were they counted already?"
            );
            Finding::note(about(), text, Basis::Arithmetic)
                .hint("If they were counted, date the purchase to the day before; if not, all is right.")
        }
        Doubt::ForCustomers { records, amount } => {
            let text = format!(
                "{name}: {} took {} from this shed for customers",
                if *records == 1 { "1 record".to_owned() } else { format!("{records} records") },
                amount.show(units)
            );
            Finding::note(about(), text, Basis::Arithmetic)
                .hint("Where a customer brought the product, write down in the shed that it came in.")
        }
        Doubt::NoDay => {
            let text =
                format!("{name}: no day of a count is typed, so records take nothing off, and purchases add nothing");
            Finding::note(about(), text, Basis::Arithmetic)
                .hint("Type the day of the count so that records are taken off, or count it anew.")
        }
    }
}
