//! Spray volume over ground, against the label's range.

use super::Here;
use crate::farm::label::Says;
use crate::finding::Finding;
use crate::language::t;
use crate::quantity::apart;

/// The carrier volume of a pass on a field.
pub(crate) fn judge(here: &Here, findings: &mut Vec<Finding>) {
    let units = here.farm.units;
    for spoken in here.spoken() {
        let Says::Carrier { least, most } = &spoken.statement.says else { continue };
        let name = &here.product.name;
        let mut broken = |text: String, hint: &str| {
            findings.push(spoken.forbid(here.about_product(), text).hint(hint));
        };
        if let Some(least) = least
            && least.exceeds(here.carrier)
        {
            let (carrier, least) = apart::carriers(here.carrier, least.value(), units);
            let text = t!("label-asks-for-more-spray", name = name, least = least, carrier = carrier);
            broken(text, t!("label-raise-the-carrier-volume"));
        }
        if let Some(most) = most
            && here.carrier.exceeds(most.value())
        {
            let (carrier, most) = apart::carriers(here.carrier, most.value(), units);
            let text = t!("label-asks-for-less-spray", name = name, most = most, carrier = carrier);
            broken(text, t!("label-lower-the-carrier-volume"));
        }
    }
}
