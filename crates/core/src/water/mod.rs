//! Water: hardness, how much ammonium sulfate its ions tie up, from where on it matters for the mix, which conditioner
//! serves, and blending two waters.

pub mod blend;
pub mod carrier;
mod classes;
pub mod conditioner;
mod demands;
pub mod dose;
pub mod hardness;
pub mod need;
pub mod ranges;
pub mod thresholds;
pub mod verdict;
mod without_ammonium;

pub use carrier::load_of_ions;
pub use conditioner::ConditionerChoice;
pub use hardness::hardness;
pub use need::{ConditionerNeed, need};

use crate::farm::{AdjuvantClass, CarrierKind, Farm, Field, Id, Pass};
use crate::finding::{Basis, Finding, Subject, TypedAt};
use crate::language::t;
use crate::mix::choice::Adjuvants;
use crate::mix::line::PlannedLine;
use crate::quantity::{CarrierRate, Hardness, MassPerVolume, Quantity};
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
    /// Ammonium sulfate in the spray that is recommended: the need, but never less than the least that a label in the mix
    /// names and never more than its most. `None` where no label range is known, and where ammonium is forbidden.
    pub recommended: Option<MassPerVolume>,
    /// The product to condition with; `None` where the mix needs none.
    pub conditioner: Option<ConditionerChoice>,
}

/// Judges the water of a pass by itself; what it comes to for the mix follows in [`judge_mix`].
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
            Finding::check(about_pass, t!("water-no-water-is-chosen-so-its"), Basis::Arithmetic)
                .hint(t!("water-choose-the-water-in-the-heading"))
                .at(TypedAt::Water),
        );
        return WaterPlan::default();
    }
    let Some(water) = farm.waters.get(&pass.water) else {
        findings.push(
            Finding::stop(about_pass, t!("water-the-pass-takes-water-which-is", water = pass.water), Basis::Arithmetic)
                .hint(t!("water-choose-another-water-or-add-it"))
                .at(TypedAt::Water),
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
                t!("water-has-no-analysis-so-its-need", name = water.name),
                Basis::Arithmetic,
            )
            .hint(t!("water-type-calcium-and-magnesium-or-the"))
            .at(TypedAt::Analysis),
        );
    }
    if let (Some(calcium), Some(magnesium), Some(stated)) = (&water.calcium, &water.magnesium, &water.hardness) {
        let reckoned = hardness::from_ions(calcium.value(), magnesium.value());
        if (reckoned.to_ppm() - stated.to_ppm()).abs() > 0.1 * stated.to_ppm().max(20.0) {
            findings.push(Finding::check(
                about.clone(),
                t!(
                    "water-calcium-and-magnesium-make-the-report",
                    name = water.name,
                    reckoned = reckoned.show(farm.units),
                    stated = stated.show(farm.units)
                ),
                Basis::Arithmetic,
            ));
        }
    }
    if let Some(need) = &need {
        if !need.missing.is_empty() {
            findings.push(Finding::note(
                about,
                t!("water-the-analysis-of-does-not-state", name = water.name, missing = need.missing.join(", ")),
                Basis::Arithmetic,
            ));
        }
        workings.push(need::working(water, need, farm.units));
    }
    if let Some(hardness) = hardness {
        workings.push(hardness::working(water, hardness));
    }
    WaterPlan { id: pass.water.clone(), name: water.name.clone(), hardness, need, ..WaterPlan::default() }
}

/// What the choice of adjuvants has to say of ammonium in a mix.
#[derive(Clone, Debug, Default)]
pub(crate) struct Ammonium {
    /// What publications or advisers have against it, beside the labels.
    pub(crate) forbidden: Option<Basis>,
    /// Ammonium sulfate in the spray of the set that suits the mix best.
    pub(crate) in_best_set: Option<MassPerVolume>,
}

impl Ammonium {
    /// From the sets on offer.
    pub(crate) fn of(adjuvants: &Adjuvants, farm: &Farm, carrier: CarrierRate) -> Self {
        let sulfate = adjuvants.choices.first().and_then(|choice| {
            let member = choice.members.iter().find(|member| member.class == AdjuvantClass::AmmoniumSulfate)?;
            let dose = dose::Dose::of(member.per_area?, carrier)?;
            match (dose, member.product.as_ref().and_then(|id| farm.products.get(id))) {
                (dose::Dose::Dry(content), _) => Some(content),
                (dose::Dose::Liquid(share), Some(product)) => {
                    dose::salt_in(product).map(|salt| salt * share.to_fraction())
                }
                (dose::Dose::Liquid(_), None) => None,
            }
        });
        Self { forbidden: adjuvants.ammonium_forbidden.clone(), in_best_set: sulfate }
    }
}

/// Judges the water of a pass for its mix.
#[allow(clippy::too_many_arguments)] // The walk's state, handed on.
pub(crate) fn judge_mix(
    farm: &Farm,
    pass: &Pass,
    fields: &[&Field],
    lines: &[PlannedLine],
    spray: CarrierRate,
    ammonium: Ammonium,
    plan: &mut WaterPlan,
    findings: &mut Vec<Finding>,
    workings: &mut Vec<Working>,
) {
    let mix: Vec<thresholds::Mixed<'_>> = lines
        .iter()
        .filter_map(|line| {
            Some(thresholds::Mixed { product: farm.products.get(&line.product)?, per_area: line.per_area })
        })
        .collect();
    let in_best_set = ammonium.in_best_set;
    let judged = conditioner::Judged { farm, pass, fields, lines, carrier: spray, mix: &mix, in_best_set };
    conditioner::judge(&judged, ammonium.forbidden, plan, findings, workings);
    let Some(water) = farm.waters.get(&plan.id).filter(|_| pass.carrier_kind == CarrierKind::Water) else { return };
    let about = || Subject::Water(plan.id.clone());
    let least = carrier::least(&judged);
    let has_sulfate = mix.iter().any(|mixed| mixed.product.class == Some(AdjuvantClass::AmmoniumSulfate));
    for verdict in verdict::verdicts(water, &mix) {
        // With ammonium sulfate in the mix, what it holds has been set against what the ions tie up.
        if verdict.factor == thresholds::Factor::Hardness && has_sulfate {
            continue;
        }
        let mut finding = verdict.finding(about(), water, farm.units);
        if verdict.factor == thresholds::Factor::Hardness
            && let Some(sentence) = least.and_then(|least| carrier::sentence(least, spray, farm.units))
        {
            finding.hint = [finding.hint, sentence].join(" ").trim_start().into();
        }
        findings.push(finding);
    }
    if has_sulfate || !verdict::concerned(thresholds::Factor::Hardness, &mix).is_empty() {
        workings.extend(carrier::working(plan, spray, least, farm.units));
    }
    let concerned = verdict::concerned(thresholds::Factor::Bicarbonate, &mix);
    if water.bicarbonate.is_none() && !concerned.is_empty() && plan.hardness.is_some() {
        findings.push(Finding::note(
            about(),
            t!(
                "water-the-analysis-of-name-does-not-state-bicarbonate-which",
                name = water.name,
                concerned = concerned.join(", ")
            ),
            Basis::Published(t!("water-chemcert-australia-saskatchewan-agriculture").to_owned()),
        ));
    }
}

#[cfg(test)]
mod tests {
    use super::{WaterPlan, judge_mix, need};
    use crate::farm::{Active, AdjuvantClass, Farm, Field, Formulation, Product, ProductKind, Water};
    use crate::finding::Basis;
    use crate::mix::line::PlannedLine;
    use crate::quantity::{ActiveBasis, Amount, AmountPerArea, AsTyped, CarrierRate, Volume, VolumePerArea};

    /// Ammonium with over-the-top dicamba is forbidden: Singh et al. 2024, Weed Technology.
    #[test]
    fn a_published_ban_on_ammonium_counts_where_no_label_has_one() {
        let mut farm = Farm::new("Test");
        let mut product = Product::new("Herbicide (demo)", ProductKind::Herbicide, Formulation::SL);
        product.actives.push(Active {
            name: "glyphosate".to_owned(),
            group: String::new(),
            basis: ActiveBasis::AcidEquivalent,
            content: AsTyped::parse("480 g/L").unwrap(),
        });
        farm.products.insert("h".to_owned(), product);
        let water = Water { name: "Well".to_owned(), hardness: AsTyped::parse("400 ppm").ok(), ..Water::default() };
        let plan = WaterPlan {
            id: "w".to_owned(),
            name: water.name.clone(),
            hardness: super::hardness(&water),
            need: need(&water),
            ..WaterPlan::default()
        };
        farm.waters.insert("w".to_owned(), water);
        let lines = [PlannedLine {
            product: "h".to_owned(),
            name: "Herbicide (demo)".to_owned(),
            number: 1,
            per_area: AmountPerArea::Volume(VolumePerArea::from_litres_per_hectare(2.0)),
            demand: Amount::Volume(Volume::from_litres(2.0)),
            cost: None,
        }];
        let field = Field::new("Field", AsTyped::parse("1 ha").unwrap());
        let pass = crate::farm::Pass::new("Pass", jiff::civil::date(2031, 6, 12));
        let judged = |ban: Option<Basis>| {
            let (mut plan, mut findings) = (plan.clone(), Vec::new());
            let ammonium = super::Ammonium { forbidden: ban, in_best_set: None };
            let carrier = CarrierRate::from_litres_per_hectare(150.0);
            judge_mix(&farm, &pass, &[&field], &lines, carrier, ammonium, &mut plan, &mut findings, &mut Vec::new());
            (plan, findings)
        };
        let (free, _) = judged(None);
        assert!(free.recommended.is_some());
        let ban = Basis::Published("Singh et al. 2024, Weed Technology".to_owned());
        let (banned, findings) = judged(Some(ban.clone()));
        assert_eq!(banned.recommended, None);
        let choice = banned.conditioner.unwrap();
        assert_eq!((choice.class, &choice.basis), (AdjuvantClass::ConditionerWithoutAmmonium, &ban));
        assert!(findings.iter().any(|finding| finding.text.contains("guidance (Singh et al. 2024")));
    }
}
