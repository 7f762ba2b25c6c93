//! Speed over ground while spraying, against the labels' most.

use super::{Here, listed};
use crate::farm::Id;
use crate::farm::label::Says;
use crate::finding::{Finding, Subject};
use crate::quantity::Quantity;
use crate::rig::asked::speed_of;

/// The speed of a pass against a product's label on a field. Where none is typed, says so through `open`, once for the pass.
pub(crate) fn judge(here: &Here, findings: &mut Vec<Finding>, open: &mut Vec<(String, String)>) {
    let units = here.farm.units;
    for spoken in here.spoken() {
        let Says::GroundSpeed { most } = &spoken.statement.says else { continue };
        let Some(speed) = speed_of(here.farm, here.pass) else {
            open.push((format!("{} ({})", most.show(units), here.product.name), spoken.at()));
            continue;
        };
        if speed.exceeds(most.value()) {
            let text = format!(
                "{} asks for at most {} over ground; the pass is driven at {}",
                here.product.name,
                most.show(units),
                speed.show(units)
            );
            findings.push(
                spoken.forbid(here.about_product(), text).hint("Drive slower, with a set that suits that speed."),
            );
        }
    }
}

/// One Check for all labels that limit the speed where none is typed.
pub(crate) fn not_typed(pass: &Id, open: Vec<(String, String)>) -> Option<Finding> {
    let (asked, basis) = super::asked_once(open);
    (!asked.is_empty()).then(|| {
        Finding::check(
            Subject::Pass(pass.clone()),
            format!("The speed of this pass is not typed; the labels ask for at most {}", listed(&asked)),
            basis,
        )
        .hint("Type the speed for the rig or the pass.")
    })
}
