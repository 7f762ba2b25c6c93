//! Whether what is on hand reaches for a pass, when the passes before it have taken theirs.

use std::collections::HashMap;

use jiff::civil::Date;

use super::account::{Account, Accounts, Doubt};
use super::needs::{lacks, mixed_for, remains, taken};
use super::shopping::buy;
use crate::farm::{Farm, Formulation, Id, Pass, Product};
use crate::finding::{Basis, Finding, Subject};
use crate::label::listed;
use crate::language::t;
use crate::loads::Load;
use crate::mix::line::PlannedLine;
use crate::quantity::{Amount, Area, CarrierRate, Quantity, Volume};
use crate::season::Log;

/// A product of the pass of which it is known what is on hand.
struct Wanted<'a> {
    id: &'a str,
    product: &'a Product,
    account: &'a Account,
    held: Amount,
    needed: Amount,
    /// What the passes before it take.
    earlier: Vec<Earlier<'a>>,
}

/// What an earlier pass takes of a product.
struct Earlier<'a> {
    day: Date,
    id: &'a Id,
    name: &'a str,
    amount: Amount,
}

impl Wanted<'_> {
    /// What the passes before it leave.
    fn there(&self) -> Amount {
        let taken = self.earlier.iter().fold(self.held.times(0.0), |sum, one| sum.plus(one.amount).unwrap_or(sum));
        remains(self.held, taken)
    }
}

/// Finds a product of a pass that does not reach for its loads, which hold more than the ground takes where they are decided so or
/// topped up. Of the other passes only those are reckoned that come before it and take
/// such a product, and the records are looked at only where it matters whether these were sprayed.
pub(crate) fn judge(
    (farm, log): (&Farm, &Log),
    accounts: &Accounts,
    (pass_id, pass): (&Id, &Pass),
    treated: Area,
    lines: &[PlannedLine],
    (carrier, loads): (CarrierRate, &[Load]),
    findings: &mut Vec<Finding>,
) {
    let asked = mixed_for(pass, treated, carrier);
    let laid = loads.iter().map(Load::new_spray).sum::<Volume>().ground(carrier).unwrap_or(Area::ZERO);
    let mixed = if laid.exceeds(asked) { laid } else { asked };
    // Where an amount cannot be told nothing is judged, which is said.
    for (line, account) in lines.iter().filter_map(|line| Some((line, accounts.get(&line.product)?))) {
        let dark = account.doubts.iter().filter(|doubt| matches!(doubt, Doubt::NoDensity { date: Some(_), .. }));
        findings.extend(dark.map(|doubt| super::doubts::finding(farm, &line.product, doubt)));
    }
    let mut wanted: Vec<Wanted<'_>> = lines
        .iter()
        .filter_map(|line| {
            let (id, product) = farm.products.get_key_value(&line.product)?;
            let account = accounts.get(id)?;
            let (held, exact) = (account.for_day(pass.date)?, line.per_area.over(mixed));
            // A water-soluble bag goes in whole; of all else a mark more or less is found in the jug.
            let in_bags = product.formulation == Formulation::WSP && !loads.is_empty();
            let needed = if in_bags { measured(loads, id, exact) } else { exact };
            Some(Wanted { id, product, account, held, needed, earlier: Vec::new() })
        })
        .collect();
    if wanted.is_empty() {
        return;
    }
    let products: Vec<(&str, &Product)> = wanted.iter().map(|wanted| (wanted.id, wanted.product)).collect();
    for (id, other) in before(farm, (pass_id, pass)) {
        for (product, amount) in taken(farm, other, &products) {
            if let Some(wanted) = wanted.iter_mut().find(|wanted| wanted.id == product) {
                wanted.earlier.push(Earlier { day: other.date, id, name: &other.name, amount });
            }
        }
    }
    wanted.retain(|wanted| lacks(wanted.needed, wanted.there()).is_some());
    if wanted.is_empty() {
        return;
    }
    // What was sprayed was there, and is taken off already.
    let Some(left) = log.unrecorded(farm, pass_id) else { return };
    let mut shares: HashMap<&str, f64> = HashMap::new();
    for mut wanted in wanted {
        wanted.needed = wanted.needed.times(left.share());
        for earlier in &mut wanted.earlier {
            let share = *shares.entry(earlier.id).or_insert_with(|| share_left(farm, log, earlier.id));
            earlier.amount = earlier.amount.times(share);
        }
        wanted.earlier.retain(|earlier| !earlier.amount.is_zero());
        wanted.earlier.sort_by_key(|earlier| earlier.day);
        if let Some(short) = lacks(wanted.needed, wanted.there()) {
            findings.push(finding(farm, pass.date, &wanted, left.partly, short));
            let below = wanted.account.doubts.iter().filter(|doubt| matches!(doubt, Doubt::Below { .. }));
            findings.extend(below.map(|doubt| super::doubts::finding(farm, wanted.id, doubt)));
        }
    }
}

/// How much of a pass is still to be sprayed.
fn share_left(farm: &Farm, log: &Log, pass: &Id) -> f64 {
    log.unrecorded(farm, pass).map_or(0.0, |left| left.share())
}

/// What loads take of a product as it is measured out.
fn measured(loads: &[Load], id: &str, exact: Amount) -> Amount {
    let items = loads.iter().flat_map(|load| &load.items).filter(|item| item.product == id);
    items.fold(exact.times(0.0), |sum, item| sum.plus(item.measured.amount).unwrap_or(sum))
}

/// The passes that come before one, by date and then in the order of the farm.
fn before<'a>(farm: &'a Farm, (pass_id, pass): (&Id, &Pass)) -> impl Iterator<Item = (&'a Id, &'a Pass)> {
    let (own, date) = (farm.passes.get_index_of(pass_id).unwrap_or(usize::MAX), pass.date);
    farm.passes
        .iter()
        .enumerate()
        .filter(move |(at, (_, other))| *at != own && (other.date, *at) < (date, own))
        .map(|(_, other)| other)
}

fn finding(farm: &Farm, day: Date, wanted: &Wanted<'_>, partly: bool, short: Amount) -> Finding {
    let units = farm.units;
    let there = wanted.there();
    let after = if wanted.earlier.is_empty() {
        if there.is_zero() {
            t!("stock-none-on-hand").to_owned()
        } else {
            t!("stock-on-hand", there = there.show(units))
        }
    } else {
        let takers: Vec<String> = wanted
            .earlier
            .iter()
            .map(|taker| t!("stock-for", amount = taker.amount.show(units), name = taker.name))
            .collect();
        let (held, takers) = (wanted.held.show(units), listed(&takers));
        if there.is_zero() {
            t!("stock-none-after-what-earlier-passes", held = held, takers = takers)
        } else {
            t!("stock-on-hand-after-what-earlier-passes", there = there.show(units), held = held, takers = takers)
        }
    };
    let after = match wanted.account.after(day) {
        Some((date, amount)) => {
            t!("stock-come-in-on-or-later", after = after, amount = amount.show(units), date = date)
        }
        None => after,
    };
    let hint = match buy(wanted.product, short) {
        Ok(purchase) => {
            t!("stock-buy-lower-the-area-or-type", purchase = purchase.words(wanted.product))
        }
        Err(why) => {
            t!("stock-buy-or-more-lower-the-area", short = short.show(units), why = why)
        }
    };
    let (name, needed) = (&wanted.product.name, wanted.needed.show(units));
    let text = if partly {
        t!("stock-what-is-left-of-this-pass-needs", name = name, needed = needed, after = after)
    } else {
        t!("stock-this-pass-needs", name = name, needed = needed, after = after)
    };
    Finding::stop(Subject::Product(wanted.id.to_owned()), text, Basis::Arithmetic).hint(hint)
}
