//! Adjuvant classes that a label forbids. What suits every partner is a room of its own and not judged here.

use super::{place, same_crop};
use crate::farm::label::{Says, Stance};
use crate::farm::{Farm, Field, Id, Product};
use crate::finding::{Basis, Finding, Subject};
use crate::mix::line::PlannedLine;

/// Whether the mix holds a class that the product's label forbids for the crop.
pub(crate) fn judge(
    id: &Id,
    product: &Product,
    field: &Field,
    farm: &Farm,
    lines: &[PlannedLine],
    findings: &mut Vec<Finding>,
) {
    for statement in &product.label {
        let Says::Adjuvant { class, stance: Stance::Forbidden, .. } = &statement.says else { continue };
        if !(statement.crop.is_empty() || same_crop(&statement.crop, &field.crop)) {
            continue;
        }
        for line in lines {
            let Some(partner) = farm.products.get(&line.product).filter(|partner| partner.class == Some(*class)) else {
                continue;
            };
            findings.push(
                Finding::stop(
                    Subject::Product(id.clone()),
                    format!("{} forbids {}, and {} is in the mix", product.name, class.name(), partner.name),
                    Basis::Label(place(product, statement)),
                )
                .hint("Take one of the two out, or split the pass."),
            );
        }
    }
}
