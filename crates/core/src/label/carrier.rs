//! Spray volume over ground, against the label's range.

use super::{Speaks, place, speaks};
use crate::farm::label::Says;
use crate::farm::{Field, Id, Product};
use crate::finding::{Basis, Finding, Subject};
use crate::quantity::{CarrierRate, Quantity, Units};

/// The carrier volume of a pass on a field.
pub(crate) fn judge(
    id: &Id,
    product: &Product,
    field: &Field,
    carrier: CarrierRate,
    units: Units,
    findings: &mut Vec<Finding>,
) {
    for statement in &product.label {
        let Says::Carrier { least, most } = &statement.says else { continue };
        if matches!(speaks(statement, field), Speaks::OtherCrop | Speaks::OtherStage) {
            continue;
        }
        let mut broken = |word: &str, limit: &str, hint: &str| {
            findings.push(
                Finding::stop(
                    Subject::Product(id.clone()),
                    format!("{} asks for {word} {limit} of spray; the pass has {}", product.name, carrier.show(units)),
                    Basis::Label(place(product, statement)),
                )
                .hint(hint),
            );
        };
        if let Some(least) = least
            && least.exceeds(carrier)
        {
            broken("at least", &least.show(units), "Raise the carrier volume.");
        }
        if let Some(most) = most
            && carrier.exceeds(most.value())
        {
            broken("at most", &most.show(units), "Lower the carrier volume.");
        }
    }
}
