//! Limits of a label whose ends stand the wrong way round: at least 3, at most 2.5. Nothing can keep both, so what they forbid says nothing
//! of the pass.

use super::{place, stage};
use crate::farm::label::Says;
use crate::farm::{Id, Product, Statement};
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;
use crate::mix::line::per_area;
use crate::quantity::{AsTyped, CarrierRate, Quantity, Rate, Units};

/// The statements of a product's label that cannot be kept.
pub(crate) fn judge(id: &Id, product: &Product, carrier: CarrierRate, units: Units, findings: &mut Vec<Finding>) {
    for statement in &product.label {
        let ends = of_values(statement, product, carrier, units).or_else(|| of_stages(statement));
        let Some((least, most)) = ends else { continue };
        let text = t!(
            "label-ends-the-wrong-way-round",
            name = product.name,
            kind = statement.says.name(),
            least = least,
            most = most
        );
        findings.push(
            Finding::check(Subject::Product(id.clone()), text, Basis::Label(place(product, statement)))
                .hint(t!("label-hold-both-ends-against-the-label")),
        );
    }
}

/// Both ends in words, where the first lies above the last.
type Ends = Option<(String, String)>;

fn ends<Q: Quantity>(
    least: Option<&AsTyped<Q>>,
    most: Option<&AsTyped<Q>>,
    is_above: impl Fn(&Q, &Q) -> bool,
    units: Units,
) -> Ends {
    let (least, most) = (least?, most?);
    is_above(least, most).then(|| (least.show(units), most.show(units)))
}

fn of_values(statement: &Statement, product: &Product, carrier: CarrierRate, units: Units) -> Ends {
    match &statement.says {
        Says::Rate { least, most } => {
            let amount = |rate: &Rate| per_area(*rate, product, carrier).ok();
            let is_above = |least: &Rate, most: &Rate| {
                amount(least).zip(amount(most)).is_some_and(|(least, most)| least.exceeds(most) == Some(true))
            };
            ends(least.as_ref(), most.as_ref(), is_above, units)
        }
        Says::Carrier { least, most } => ends(least.as_ref(), most.as_ref(), |least, most| least.exceeds(*most), units),
        Says::Wind { least, most, .. } => ends(least.as_ref(), Some(most), |least, most| least.exceeds(*most), units),
        Says::Humidity { least, most } => {
            ends(least.as_ref(), most.as_ref(), |least, most| least.exceeds(*most), units)
        }
        Says::DeltaT { least, most } => ends(least.as_ref(), most.as_ref(), |least, most| least > most, units),
        Says::Temperature { least, most } => ends(least.as_ref(), most.as_ref(), |least, most| least > most, units),
        Says::Droplets { finest, coarsest: Some(coarsest) } if finest > coarsest => {
            Some((finest.name().to_owned(), coarsest.name().to_owned()))
        }
        Says::Adjuvant { least, most, at_least, at_most, .. } => {
            let is_above = |least: &Rate, most: &Rate| above(*least, *most);
            ends(least.as_ref(), most.as_ref(), is_above, units)
                .or_else(|| ends(at_least.as_ref(), at_most.as_ref(), is_above, units))
        }
        _ => None,
    }
}

/// Whether a rate of an adjuvant is above another of its kind; rates of two kinds are told by the product, which is not known here.
fn above(one: Rate, other: Rate) -> bool {
    match (one, other) {
        (Rate::VolumePerArea(one), Rate::VolumePerArea(other)) => one.exceeds(other),
        (Rate::MassPerArea(one), Rate::MassPerArea(other)) => one.exceeds(other),
        (Rate::VolumePerSpray(one), Rate::VolumePerSpray(other)) => one.exceeds(other),
        (Rate::MassPerSpray(one), Rate::MassPerSpray(other)) => one.exceeds(other),
        _ => false,
    }
}

/// Growth stages, on the crop that the statement names.
fn of_stages(statement: &Statement) -> Ends {
    let (from, to) = (statement.from_stage.trim(), statement.to_stage.trim());
    let is_above = !from.is_empty() && stage::within(&statement.crop, from, "", to) == Some(false);
    is_above.then(|| (from.to_owned(), to.to_owned()))
}
