//! Whether what is on hand reaches for a pass, when the passes before it have taken theirs.

use super::needs::{lacks, mixed_for, remains, taken};
use super::on_hand::known;
use super::shopping::buy;
use crate::farm::{Farm, Id, Pass, Product};
use crate::finding::{Basis, Finding, Subject};
use crate::label::listed;
use crate::mix::line::PlannedLine;
use crate::quantity::{Amount, Area, CarrierRate, Quantity};

/// What an earlier pass takes of a product.
struct Earlier<'a> {
    id: &'a str,
    name: &'a str,
    amount: Amount,
}

/// Finds a product of a pass that does not reach. Of the other passes only those are looked at that come before it and take
/// that product, and the records only where it matters whether these were sprayed.
pub(crate) fn judge(
    farm: &Farm,
    (pass_id, pass): (&Id, &Pass),
    treated: Area,
    lines: &[PlannedLine],
    carrier: CarrierRate,
    findings: &mut Vec<Finding>,
) {
    let mixed = mixed_for(pass, treated, carrier);
    for line in lines {
        let Some(product) = farm.products.get(&line.product) else { continue };
        let Some(held) = known(product) else { continue };
        let needed = line.per_area.over(mixed);
        let mut earlier = earlier(farm, (pass_id, pass), &line.product, product);
        if lacks(needed, remains(held, sum(held, &earlier))).is_none() {
            continue;
        }
        if farm.is_recorded(pass_id) {
            // What was sprayed was there.
            return;
        }
        earlier.retain(|taker| !farm.is_recorded(taker.id));
        let there = remains(held, sum(held, &earlier));
        let Some(short) = lacks(needed, there) else { continue };
        let units = farm.units;
        let are = if there.is_zero() { "none is".to_owned() } else { format!("{} are", there.show(units)) };
        let after = if earlier.is_empty() {
            format!("{are} on hand")
        } else {
            let takers: Vec<String> =
                earlier.iter().map(|taker| format!("{} for {}", taker.amount.show(units), taker.name)).collect();
            format!("{are} on hand after what earlier passes take ({} less {})", held.show(units), listed(&takers))
        };
        let hint = match buy(product, short) {
            Ok(purchase) => {
                format!("Buy {}, lower the area, or correct the count in the shed.", purchase.words(product))
            }
            Err(why) => {
                format!("Buy {} or more, lower the area, or correct the count in the shed; {why}.", short.show(units))
            }
        };
        findings.push(
            Finding::stop(
                Subject::Product(line.product.clone()),
                format!("{}: this pass needs {}; {after}", product.name, needed.show(units)),
                Basis::Arithmetic,
            )
            .hint(hint),
        );
    }
}

fn sum(like: Amount, earlier: &[Earlier<'_>]) -> Amount {
    earlier.iter().fold(like.times(0.0), |sum, taker| sum.plus(taker.amount).unwrap_or(sum))
}

/// The passes that come before one, by date and then in the order of the farm, and take a product.
fn earlier<'a>(farm: &'a Farm, (pass_id, pass): (&Id, &Pass), id: &Id, product: &Product) -> Vec<Earlier<'a>> {
    let own = farm.passes.get_index_of(pass_id).unwrap_or(usize::MAX);
    let mut takers: Vec<(jiff::civil::Date, Earlier<'a>)> = farm
        .passes
        .iter()
        .enumerate()
        .filter(|(at, (_, other))| *at != own && (other.date, *at) < (pass.date, own))
        .filter_map(|(_, (other_id, other))| {
            let amount = taken(farm, other, id, product)?;
            Some((other.date, Earlier { id: other_id, name: &other.name, amount }))
        })
        .collect();
    takers.sort_by_key(|(date, _)| *date);
    takers.into_iter().map(|(_, taker)| taker).collect()
}
