//! Spray volume over ground, against the label's range.

use super::Here;
use crate::farm::label::Says;
use crate::finding::Finding;
use crate::quantity::Quantity;

/// The carrier volume of a pass on a field.
pub(crate) fn judge(here: &Here, findings: &mut Vec<Finding>) {
    let units = here.farm.units;
    for spoken in here.spoken() {
        let Says::Carrier { least, most } = &spoken.statement.says else { continue };
        let mut broken = |word: &str, limit: &str, hint: &str| {
            let text = format!(
                "{} asks for {word} {limit} of spray; the pass has {}",
                here.product.name,
                here.carrier.show(units)
            );
            findings.push(spoken.forbid(here.about_product(), text).hint(hint));
        };
        if let Some(least) = least
            && least.exceeds(here.carrier)
        {
            broken("at least", &least.show(units), "Raise the carrier volume.");
        }
        if let Some(most) = most
            && here.carrier.exceeds(most.value())
        {
            broken("at most", &most.show(units), "Lower the carrier volume.");
        }
    }
}
