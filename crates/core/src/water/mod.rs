//! Water: hardness, and how much ammonium sulfate its ions tie up.

pub mod conditioner;
pub mod hardness;

pub use conditioner::{ConditionerNeed, need};
pub use hardness::hardness;

use crate::farm::{Farm, Id, Pass};
use crate::finding::{Basis, Finding, Subject};
use crate::quantity::{Hardness, MassPerVolume, Quantity};
use crate::working::Working;

/// What the analysis of a pass's water comes to.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct WaterPlan {
    /// Which water; empty where none is chosen.
    pub id: Id,
    /// Its name.
    pub name: String,
    /// Hardness as CaCO3.
    pub hardness: Option<Hardness>,
    /// Ammonium sulfate that its ions tie up, by the published equation.
    pub need: Option<ConditionerNeed>,
    /// What is recommended: the need, but never less than the least that a label in the mix asks for.
    pub recommended: Option<MassPerVolume>,
}

/// Judges the water of a pass by itself; the labels' own demands come in [`conditioner::judge`].
pub(crate) fn judge(
    farm: &Farm,
    pass_id: &Id,
    pass: &Pass,
    findings: &mut Vec<Finding>,
    workings: &mut Vec<Working>,
) -> WaterPlan {
    let about_pass = Subject::Pass(pass_id.clone());
    if pass.water.is_empty() {
        findings.push(
            Finding::check(about_pass, "No water is chosen, so its hardness is not judged", Basis::Arithmetic)
                .hint("Choose the water in the heading line of the pass."),
        );
        return WaterPlan::default();
    }
    let Some(water) = farm.waters.get(&pass.water) else {
        findings.push(
            Finding::stop(
                about_pass,
                format!("The pass takes water \"{}\", which is not in the shed", pass.water),
                Basis::Arithmetic,
            )
            .hint("Choose another water, or add it in the shed."),
        );
        return WaterPlan::default();
    };
    let about = Subject::Water(pass.water.clone());
    let hardness = hardness(water);
    let need = need(water);
    if need.is_none() {
        findings.push(
            Finding::check(
                about.clone(),
                format!("{} has no analysis, so its need of conditioner is not known", water.name),
                Basis::Arithmetic,
            )
            .hint("Type calcium and magnesium, or the hardness, from a laboratory report."),
        );
    }
    if let (Some(calcium), Some(magnesium), Some(stated)) = (&water.calcium, &water.magnesium, &water.hardness) {
        let reckoned = hardness::from_ions(calcium.value(), magnesium.value());
        if (reckoned.to_ppm() - stated.to_ppm()).abs() > 0.1 * stated.to_ppm().max(20.0) {
            findings.push(Finding::check(
                about.clone(),
                format!(
                    "{}: calcium and magnesium make {}, the report states {}; the plan uses the ions",
                    water.name,
                    reckoned.show(farm.units),
                    stated.show(farm.units)
                ),
                Basis::Arithmetic,
            ));
        }
    }
    if let Some(need) = &need {
        if !need.missing.is_empty() {
            findings.push(Finding::note(
                about,
                format!(
                    "The analysis of {} does not state {}; the need counts none of it",
                    water.name,
                    need.missing.join(", ")
                ),
                Basis::Arithmetic,
            ));
        }
        workings.push(conditioner::working(water, need, farm.units));
    }
    if let Some(hardness) = hardness {
        workings.push(hardness::working(water, hardness));
    }
    WaterPlan { id: pass.water.clone(), name: water.name.clone(), hardness, need, recommended: None }
}
