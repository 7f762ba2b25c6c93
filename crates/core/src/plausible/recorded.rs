//! What is recorded of a product: against the rates of its label and against what was planned. What was really sprayed stays in the record;
//! but a figure that slipped is found while it is known.

use super::confusions::{Kind, meant};
use super::text::Typed;
use super::{Offer, Slot};
use crate::farm::{Farm, Id, Product, Record, RecordLine, Says};
use crate::finding::{Basis, Finding, Subject};
use crate::label::{laws, names_crop};
use crate::language::{t, yes_or_no};
use crate::mix::line::per_area;
use crate::quantity::number::show;
use crate::quantity::{Amount, AmountPerArea, CarrierRate, Quantity};
use crate::season::portion::other_ground;

/// Beyond so many times what was planned, or below one part of so many, an amount is doubted. Common practice, no source.
const OFF_PLAN: f64 = 3.0;
/// What is offered lies so near to the plan, or one part of so much.
const NEAR_PLAN: f64 = 1.25;
/// So much more than a label names is what jugs and ground, both measured, leave open. Common practice, no source.
const MEASURED: f64 = 0.02;

/// The amounts of a record.
pub(super) fn judge(farm: &Farm, id: &Id, record: &Record, findings: &mut Vec<Finding>) {
    let area = record.area();
    let carrier = record.volume.as_ref().and_then(|volume| volume.value().over(area));
    let ground = other_ground(record).unwrap_or(1.0);
    for line in record.lines.iter().filter(|line| !line.amount.is_zero()) {
        let Some(product) = farm.products.get(&line.product) else { continue };
        let planned = line.planned.as_ref().map(|planned| planned.value().times(ground));
        let to_plan = planned.and_then(|planned| line.amount.value().ratio(planned));
        let rate = line.amount.value().spread(area);
        let offers = || planned.map_or_else(Vec::new, |planned| likely(farm, id, line, planned));
        // What is named for an adjuvant hangs on its partners.
        let over = rate.filter(|_| product.kind.is_pesticide());
        let over = over.and_then(|rate| over_label(farm, product, record, rate, carrier));
        let finding = if let Some((over, most, basis)) = over {
            let text = t!(
                "plausible-recorded-over-the-label",
                name = record.name,
                amount = line.amount.show(farm.units),
                product = product.name,
                rate = rate.map(|rate| rate.show(farm.units)).unwrap_or_default(),
                times = show(over, usize::from(over < 10.0)),
                most = most
            );
            Some((text, basis))
        } else {
            to_plan.filter(|ratio| *ratio > OFF_PLAN || *ratio * OFF_PLAN < 1.0).map(|ratio| {
                let text = t!(
                    "plausible-recorded-off-the-plan",
                    name = record.name,
                    amount = line.amount.show(farm.units),
                    product = product.name,
                    planned = planned.map(|planned| planned.show(farm.units)).unwrap_or_default(),
                    more = yes_or_no(ratio > 1.0),
                    times = show(if ratio > 1.0 { ratio } else { 1.0 / ratio }, 1)
                );
                (text, Basis::Arithmetic)
            })
        };
        let Some((text, basis)) = finding else { continue };
        let finding = Finding::check(Subject::Record(id.clone()), text, basis);
        findings.push(if record.signed.is_some() {
            finding.hint(t!("plausible-it-is-signed-amend-it-in"))
        } else {
            finding.hint(t!("plausible-what-was-sprayed-stays")).offering(offers())
        });
    }
}

/// How many times the most that the label, or a law, names for a crop of the record, where it is more; with the rate as typed there. A
/// condition is taken to hold, so that the most of all that may speak counts.
fn over_label(
    farm: &Farm,
    product: &Product,
    record: &Record,
    rate: AmountPerArea,
    carrier: Option<CarrierRate>,
) -> Option<(f64, String, Basis)> {
    let carrier = carrier.unwrap_or(CarrierRate::ZERO);
    let of_crop = |crop: &str| {
        let mut all = Vec::new();
        for (speaker, statement) in laws::binding(farm, product, record.date, |says| matches!(says, Says::Rate { .. }))
        {
            let Says::Rate { most, .. } = &statement.says else { continue };
            if !crop.is_empty() && !names_crop(statement, crop) {
                continue;
            }
            // A rate without an upper end allows what a season may have.
            let most = most.as_ref()?;
            let limit = per_area(most.value(), product, carrier).ok()?;
            all.push((rate.ratio(limit)?, most.text().to_owned(), speaker.basis(statement)));
        }
        all.into_iter().min_by(|(one, ..), (other, ..)| one.total_cmp(other))
    };
    let crops = record.fields.values().map(|field| field.crop.trim());
    let worst = crops.filter_map(of_crop).max_by(|(one, ..), (other, ..)| one.total_cmp(other));
    worst.filter(|(ratio, ..)| *ratio > 1.0 + MEASURED)
}

/// What the text of an amount may have been meant as, where that lies beside the plan.
fn likely(farm: &Farm, id: &Id, line: &RecordLine, planned: Amount) -> Vec<Offer> {
    let is_near =
        |amount: Amount| amount.ratio(planned).is_some_and(|ratio| ratio < NEAR_PLAN && ratio * NEAR_PLAN > 1.0);
    let text = line.amount.text();
    // Of a sum of units nobody knows which part slipped.
    if Typed::of(text).is_none_or(|typed| typed.unit.contains(|letter: char| letter.is_ascii_digit())) {
        return Vec::new();
    }
    let slot = || Slot::RecordAmount { record: id.clone(), product: line.product.to_string() };
    let all = meant::<Amount>(Kind::Amount, text, farm.units).into_iter().filter(|meant| is_near(meant.value));
    all.map(|meant| Offer::of(slot(), meant.text.clone(), meant.why())).collect()
}
