//! Height of the nozzles above what is sprayed, against the labels' most.
//!
//! It is counted from the nozzle to the top of the canopy, or to the ground where there is none (APVMA, definitions).

use super::{End, Here};
use crate::farm::Id;
use crate::farm::label::Says;
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;
use crate::quantity::{AsTyped, Quantity};

/// The height of a pass against the labels and the laws on a field. Where none is typed, says so through `open`, once for the pass.
pub(crate) fn judge(here: &Here, findings: &mut Vec<Finding>, open: &mut Vec<(String, Basis)>) {
    let units = here.farm.units;
    let height = here.pass.height_in(here.farm).map(AsTyped::value);
    for spoken in here.asked(|says| matches!(says, Says::BoomHeight { .. })) {
        let Says::BoomHeight { most } = &spoken.statement.says else { continue };
        let Some(height) = height else {
            open.push((format!("{} ({})", most.show(units), spoken.speaker.name()), spoken.basis()));
            continue;
        };
        if height.exceeds(most.value()) {
            let text = t!(
                "label-asks-for-nozzles-at-most-above",
                speaker = spoken.speaker.name(),
                most = most.show(units),
                height = height.show(units)
            );
            findings.push(spoken.forbid(spoken.about(here), text).hint(t!("label-lower-the-boom-and-type-the")));
        }
    }
}

/// One Check for all that limit the height where none is typed.
pub(crate) fn not_typed(pass: &Id, open: Vec<(String, Basis)>) -> Option<Finding> {
    let (asked, basis) = super::asked_once(open, Some(End::Most))?;
    Some(
        Finding::check(Subject::Pass(pass.clone()), t!("label-the-height-of-the-boom-is", asked = asked), basis)
            .hint(t!("label-type-the-height-of-the-nozzles")),
    )
}
