//! Spray volume over ground, against the label's range.

use super::Here;
use crate::farm::label::Says;
use crate::finding::Finding;
use crate::language::t;
use crate::quantity::Quantity;

/// The carrier volume of a pass on a field.
pub(crate) fn judge(here: &Here, findings: &mut Vec<Finding>) {
    let units = here.farm.units;
    for spoken in here.spoken() {
        let Says::Carrier { least, most } = &spoken.statement.says else { continue };
        let mut broken = |word: &str, limit: &str, hint: &str| {
            let text = t!(
                "label-asks-for-of-spray-the-pass",
                name = here.product.name,
                word = word,
                limit = limit,
                carrier = here.carrier.show(units)
            );
            findings.push(spoken.forbid(here.about_product(), text).hint(hint));
        };
        if let Some(least) = least
            && least.exceeds(here.carrier)
        {
            broken(t!("label-at-least"), &least.show(units), t!("label-raise-the-carrier-volume"));
        }
        if let Some(most) = most
            && here.carrier.exceeds(most.value())
        {
            broken(t!("label-at-most-2e7"), &most.show(units), t!("label-lower-the-carrier-volume"));
        }
    }
}
