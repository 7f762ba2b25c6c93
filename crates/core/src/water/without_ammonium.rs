//! Mixes into which ammonium may not go: who forbids it, and what conditions the water instead.

use super::WaterPlan;
use super::conditioner::{ConditionerChoice, Judged};
use super::dose::Dose;
use crate::farm::label::{Says, Stance};
use crate::farm::product::AdjuvantClass;
use crate::farm::{Formulation, Product, ProductKind, Statement};
use crate::finding::{Basis, Finding, Subject};
use crate::label::names::list;
use crate::label::place;
use crate::language::t;
use crate::mix::line::per_area;
use crate::quantity::{AsTyped, MassPerVolume, Quantity, Rate};

/// The label that forbids ammonium in this mix, and its basis. A statement whose condition is not known here counts.
pub(super) fn forbidden(judged: &Judged<'_>) -> Option<(String, Basis)> {
    // Labels are held against its name and that of its class.
    let mut salt = Product::new("ammonium sulfate", ProductKind::Conditioner, Formulation::SG);
    salt.class = Some(AdjuvantClass::AmmoniumSulfate);
    judged.products().find_map(|(_, product)| {
        product
            .label
            .iter()
            .find(|statement| judged.applies(statement) && forbids(statement, &salt))
            .map(|statement| (t!("water-the-label-of", name = product.name), Basis::Label(place(product, statement))))
    })
}

/// Whether a statement forbids a product in the tank.
fn forbids(statement: &Statement, product: &Product) -> bool {
    match &statement.says {
        Says::Adjuvant { class, stance: Stance::Forbidden, .. } => product.class == Some(*class),
        Says::NotWith { what, .. } => list(what, product),
        _ => false,
    }
}

/// What conditions the water where ammonium may not go in.
pub(super) fn choose(
    judged: &Judged<'_>,
    water: &WaterPlan,
    need: MassPerVolume,
    (who, basis): (String, Basis),
    findings: &mut Vec<Finding>,
) -> ConditionerChoice {
    const CLASS: AdjuvantClass = AdjuvantClass::ConditionerWithoutAmmonium;
    let units = judged.units();
    let refused = |candidate: &Product| {
        let by_partner = judged
            .products()
            .any(|(_, product)| product.label.iter().any(|says| judged.applies(says) && forbids(says, candidate)));
        let by_itself = candidate
            .label
            .iter()
            .any(|says| judged.applies(says) && judged.products().any(|(_, partner)| forbids(says, partner)));
        by_partner || by_itself
    };
    let in_mix = judged.of_class(CLASS);
    let in_shed = || judged.farm.products.iter().find(|(_, product)| product.class == Some(CLASS) && !refused(product));
    let chosen = in_mix.or_else(in_shed);
    let (least, most) = chosen.map_or((None, None), |(_, product)| label_dose(judged, product));
    let rate = match (least, most) {
        (Some(least), Some(most)) if least != most => {
            t!("core-to", first = least.show(units), last = most.show(units))
        }
        (Some(one), _) | (None, Some(one)) => one.show(units),
        (None, None) => String::new(),
    };
    let about = Subject::Water(water.id.clone());
    let tied = t!("water-ties-up-what-of-ammonium-sulfate", name = water.name, need = need.show(units), who = who);
    let (why, finding) = match (chosen, in_mix.is_some()) {
        (Some((_, product)), true) => {
            let why = t!("water-in-the-mix-holds-none", tied = tied, name = product.name);
            (why.clone(), Finding::note(about, why, basis.clone()))
        }
        (Some((_, product)), false) => {
            let name = &product.name;
            let (why, hint) = if rate.is_empty() {
                (
                    t!("water-of-the-shed-conditions-without-it", tied = tied, name = name),
                    t!("water-type-its-labels-rate-in-the"),
                )
            } else {
                (
                    t!("water-of-the-shed-conditions-at-a-rate", tied = tied, name = name, rate = rate),
                    t!("water-read-whether-the-partners-labels-accept"),
                )
            };
            (why.clone(), Finding::check(about, why, basis.clone()).hint(hint))
        }
        (None, _) => {
            let partners: Vec<&str> = judged
                .products()
                .filter(|(_, product)| product.kind.is_pesticide())
                .map(|(_, product)| product.name.as_str())
                .collect();
            let why = t!("water-the-shed-has-no-conditioner-without", tied = tied);
            let hint = t!("water-buy-one-whose-label-is-accepted", partners = partners.join(", "));
            (why.clone(), Finding::check(about, why, basis.clone()).hint(hint))
        }
    };
    findings.push(finding);
    ConditionerChoice {
        product: chosen.map(|(id, _)| id.clone()),
        in_mix: in_mix.is_some(),
        class: CLASS,
        name: chosen
            .map_or_else(|| t!("water-conditioner-without-ammonium").to_owned(), |(_, product)| product.name.clone()),
        per_spray: least.or(most),
        per_spray_most: most,
        content: None,
        why,
        basis,
    }
}

/// The range that a conditioner's own label gives, else what a partner's label gives for its class.
fn label_dose(judged: &Judged<'_>, product: &Product) -> (Option<Dose>, Option<Dose>) {
    let dose = |rate: Option<&AsTyped<Rate>>| {
        let amount = per_area(rate?.value(), product, judged.carrier).ok()?;
        Dose::of(amount, judged.carrier)
    };
    let own = product.label.iter().filter(|statement| judged.applies(statement)).find_map(|statement| match &statement
        .says
    {
        Says::Rate { least, most } => Some((dose(least.as_ref()), dose(most.as_ref()))),
        _ => None,
    });
    own.unwrap_or_else(|| {
        let partners = judged.products().flat_map(|(_, partner)| &partner.label);
        partners
            .filter(|statement| judged.applies(statement))
            .find_map(|statement| match &statement.says {
                Says::Adjuvant { class, least, most, stance, .. }
                    if Some(*class) == product.class && *stance != Stance::Forbidden =>
                {
                    Some((dose(least.as_ref()), dose(most.as_ref())))
                }
                _ => None,
            })
            .unwrap_or((None, None))
    })
}
