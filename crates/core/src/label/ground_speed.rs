//! Speed over ground while spraying, against the labels' most.

use super::{End, Here};
use crate::farm::Id;
use crate::farm::label::Says;
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;
use crate::quantity::Quantity;
use crate::rig::asked::speed_of;

/// The speed of a pass against the labels and the laws on a field. Where none is typed, says so through `open`, once for the pass.
pub(crate) fn judge(here: &Here, findings: &mut Vec<Finding>, open: &mut Vec<(String, Basis)>) {
    let units = here.farm.units;
    for spoken in here.asked(|says| matches!(says, Says::GroundSpeed { .. })) {
        let Says::GroundSpeed { most } = &spoken.statement.says else { continue };
        let Some(speed) = speed_of(here.farm, here.pass) else {
            open.push((format!("{} ({})", most.show(units), spoken.speaker.name()), spoken.basis()));
            continue;
        };
        if speed.exceeds(most.value()) {
            let text = t!(
                "label-asks-for-at-most-over-ground",
                speaker = spoken.speaker.name(),
                most = most.show(units),
                speed = speed.show(units)
            );
            findings.push(spoken.forbid(spoken.about(here), text).hint(t!("label-drive-slower-with-a-set-that")));
        }
    }
}

/// One Check for all that limit the speed where none is typed.
pub(crate) fn not_typed(pass: &Id, open: Vec<(String, Basis)>) -> Option<Finding> {
    let (asked, basis) = super::asked_once(open, Some(End::Most))?;
    Some(
        Finding::check(Subject::Pass(pass.clone()), t!("label-the-speed-of-this-pass-is", asked = asked), basis)
            .hint(t!("label-type-the-speed-for-the-rig")),
    )
}
