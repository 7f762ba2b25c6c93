//! Adjuvant classes as the partners' labels speak of them: those they forbid, and the most and least they name. What suits
//! every partner is a room of its own and not judged here.

use super::{place, same_crop};
use crate::farm::label::{Says, Stance};
use crate::farm::product::AdjuvantClass;
use crate::farm::{Farm, Field, Id, Product, Statement};
use crate::finding::{Basis, Finding, Subject};
use crate::mix::line::{PlannedLine, per_area};
use crate::quantity::{AmountPerArea, AsTyped, CarrierRate, Rate};

/// What a product's label says on the field's crop about the classes in the mix.
pub(crate) fn judge(
    id: &Id,
    product: &Product,
    field: &Field,
    farm: &Farm,
    lines: &[PlannedLine],
    carrier: CarrierRate,
    findings: &mut Vec<Finding>,
) {
    for statement in &product.label {
        let Says::Adjuvant { class, stance, least, most } = &statement.says else { continue };
        if !(statement.crop.is_empty() || same_crop(&statement.crop, &field.crop)) {
            continue;
        }
        for line in lines {
            let Some(partner) = farm.products.get(&line.product).filter(|partner| partner.class == Some(*class)) else {
                continue;
            };
            let basis = || Basis::Label(place(product, statement));
            let about = || Subject::Product(id.clone());
            if *stance == Stance::Forbidden {
                let text = format!("{} forbids {}, and {} is in the mix", product.name, class.name(), partner.name);
                findings
                    .push(Finding::stop(about(), text, basis()).hint("Take one of the two out, or split the pass."));
                continue;
            }
            // Ammonium sulfate is judged with the water, where a liquid one counts by its content.
            if *class == AdjuvantClass::AmmoniumSulfate {
                continue;
            }
            let planned = line.per_area.show(farm.units);
            if let Some(most) = over_ground(most.as_ref(), partner, carrier)
                && line.per_area.exceeds(most) == Some(true)
            {
                let text = format!(
                    "{} allows {} of {} at most; {planned} is planned",
                    product.name,
                    most.show(farm.units),
                    partner.name
                );
                findings.push(Finding::stop(about(), text, basis()).hint("Lower its rate."));
            }
            if let Some(least) = over_ground(least.as_ref(), partner, carrier)
                && least.exceeds(line.per_area) == Some(true)
            {
                let text = format!(
                    "{} names {} of {} at least; {planned} is planned",
                    product.name,
                    least.show(farm.units),
                    partner.name
                );
                findings.push(Finding::check(about(), text, basis()));
            }
        }
    }
}

fn over_ground(rate: Option<&AsTyped<Rate>>, partner: &Product, carrier: CarrierRate) -> Option<AmountPerArea> {
    per_area(rate?.value(), partner, carrier).ok()
}

/// How far the rounding of an adjuvant may go: the smallest most that a partner's label names for its class and that the
/// plan itself keeps.
pub(crate) fn cap(
    line: &PlannedLine,
    product: &Product,
    farm: &Farm,
    lines: &[PlannedLine],
    carrier: CarrierRate,
) -> Option<AmountPerArea> {
    let named = |statement: &Statement| match &statement.says {
        Says::Adjuvant { class, most, .. } if product.class == Some(*class) => {
            over_ground(most.as_ref(), product, carrier)
        }
        _ => None,
    };
    lines
        .iter()
        .filter_map(|partner| farm.products.get(&partner.product))
        .flat_map(|partner| partner.label.iter().filter_map(named))
        .filter(|most| line.per_area.exceeds(*most) == Some(false))
        .reduce(AmountPerArea::smaller)
}
