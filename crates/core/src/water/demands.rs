//! What the labels of a mix say of ammonium sulfate, set against what the mix holds of it.

use super::conditioner::Judged;
use super::dose;
use crate::farm::label::{Says, Stance};
use crate::farm::product::AdjuvantClass;
use crate::farm::{Grade, Product};
use crate::finding::{Basis, Finding, Subject, TypedAt};
use crate::label::place;
use crate::language::t;
use crate::quantity::{Amount, AsTyped, CarrierRate, MassPerVolume, Quantity, Rate, Volume};

/// What the labels of a mix say of ammonium sulfate.
#[derive(Default)]
pub(super) struct Asked {
    /// One requires or prefers it.
    pub(super) wanted: bool,
    /// One advises against it.
    pub(super) discouraged: bool,
    /// The largest least, and where it stands.
    pub(super) least: Option<(MassPerVolume, String)>,
    /// The smallest most, and where it stands.
    pub(super) most: Option<(MassPerVolume, String)>,
}

impl Asked {
    /// Where the range stands: one place, or the two of its ends.
    pub(super) fn places(&self) -> Option<String> {
        match (&self.least, &self.most) {
            (Some((_, least)), Some((_, most))) if least != most => Some(format!("{least}; {most}")),
            (Some((_, at)), _) | (None, Some((_, at))) => Some(at.clone()),
            (None, None) => None,
        }
    }
}

pub(super) fn is_sulfate(product: &Product) -> bool {
    product.class == Some(AdjuvantClass::AmmoniumSulfate)
}

/// The ammonium sulfate that the mix holds, in its spray.
pub(super) fn held(judged: &Judged<'_>) -> Option<MassPerVolume> {
    // The spray over a hectare, so that both are amounts.
    let area = crate::quantity::Area::from_hectares(1.0);
    let spray: Volume = judged.carrier * area;
    let mut total: Option<f64> = None;
    for (line, product) in judged.products().filter(|(_, product)| is_sulfate(product)) {
        let density = product.density.as_ref().map(AsTyped::value);
        let mass = match line.per_area.over(area) {
            Amount::Mass(mass) => match product.actives.first() {
                Some(salt) => salt.content.per_mass(density).map(|share| mass * share.to_fraction()),
                None => Some(mass),
            },
            Amount::Volume(volume) => dose::salt_in(product).map(|content| content * volume),
        };
        if let Some(mass) = mass
            && !spray.is_zero()
        {
            total = Some(total.unwrap_or(0.0) + mass.to_kilograms() / spray.to_cubic_metres());
        }
    }
    total.map(MassPerVolume::from_grams_per_litre)
}

/// A solution whose content is not typed, or does not reach its volume: there is some, but nobody knows how much.
pub(super) fn untold(judged: &Judged<'_>, findings: &mut Vec<Finding>) -> bool {
    let untold = judged
        .products()
        .find(|(_, product)| is_sulfate(product) && product.is_liquid() && dose::salt_in(product).is_none());
    let Some((line, product)) = untold else { return false };
    // A share of its weight is typed, and what a gallon weighs is not.
    let lacks_density = product.actives.first().is_some_and(|active| active.content.per_volume(None).is_none())
        && product.density.is_none();
    let (text, hint) = if lacks_density {
        (t!("water-what-a-gallon-weighs-is-not-typed", name = product.name), t!("water-type-its-density-in-the-shed"))
    } else {
        (t!("water-how-much-ammonium-sulfate-holds-is", name = product.name), t!("water-type-its-content-in-the-shed"))
    };
    let at = if lacks_density { TypedAt::Density } else { TypedAt::Active };
    findings.push(Finding::check(Subject::Product(line.product.clone()), text, Basis::Arithmetic).hint(hint).at(at));
    true
}

/// Fertilizer grade in the mix, or a dry salt of which the grade is not typed.
pub(super) fn grade(judged: &Judged<'_>, findings: &mut Vec<Finding>) {
    for (line, product) in judged.products().filter(|(_, product)| is_sulfate(product)) {
        let about = Subject::Product(line.product.clone());
        if product.grade == Some(Grade::Fertilizer) {
            findings.push(
                Finding::check(
                    about,
                    t!("water-is-of-fertilizer-grade-its-impurities", name = product.name),
                    Basis::Practice,
                )
                .hint(t!("water-take-spray-grade-which-washington-state"))
                .at(TypedAt::Grade),
            );
        } else if product.grade.is_none() && !product.is_liquid() {
            findings.push(
                Finding::note(about, t!("water-the-grade-of-is-not-typed", name = product.name), Basis::Practice)
                    .hint(t!("water-spray-grade-dissolves-without-residue-type"))
                    .at(TypedAt::Grade),
            );
        }
    }
}

/// How much ammonium sulfate each label names, set against what the mix holds. Whether there is any is for the choice of
/// adjuvants to say.
pub(super) fn asked(judged: &Judged<'_>, held: Option<MassPerVolume>, findings: &mut Vec<Finding>) -> Asked {
    let (carrier, units) = (judged.carrier, judged.units());
    let mut asked = Asked::default();
    for (line, product) in judged.products() {
        for statement in product.label.iter().filter(|statement| judged.applies(statement)) {
            let Says::Adjuvant { class: AdjuvantClass::AmmoniumSulfate, stance, least, most, .. } = &statement.says
            else {
                continue;
            };
            let basis = || Basis::Label(place(product, statement));
            let about = || Subject::Product(line.product.clone());
            if [least, most].into_iter().flatten().any(|rate| in_spray(rate.value(), carrier).is_none()) {
                findings.push(
                    Finding::check(about(), t!("water-what-says-of-ammonium-sulfate-is", name = product.name), basis())
                        .hint(t!("water-type-it-like-8-5-lb")),
                );
            }
            let least = least.as_ref().and_then(|rate| in_spray(rate.value(), carrier));
            let most = most.as_ref().and_then(|rate| in_spray(rate.value(), carrier));
            let names = matches!(stance, Stance::Required | Stance::Preferred | Stance::Allowed);
            asked.discouraged |= *stance == Stance::Discouraged;
            asked.wanted |= matches!(stance, Stance::Required | Stance::Preferred);
            if let (Some(held), Some(least)) = (held, least)
                && names
                && least.exceeds(held)
            {
                let text = t!(
                    "water-asks-for-at-least-of-ammonium",
                    name = product.name,
                    least = least.show(units),
                    held = held.show(units)
                );
                findings.push(if *stance == Stance::Required {
                    Finding::stop(about(), text, basis())
                } else {
                    Finding::check(about(), text, basis())
                });
            }
            if let (Some(held), Some(most)) = (held, most)
                && held.exceeds(most)
            {
                let text = t!(
                    "water-allows-of-ammonium-sulfate-at-most",
                    name = product.name,
                    most = most.show(units),
                    held = held.show(units)
                );
                findings.push(Finding::stop(about(), text, basis()));
            }
            if let Some(most) = most
                && asked.most.as_ref().is_none_or(|(before, _)| most < *before)
            {
                asked.most = Some((most, place(product, statement)));
            }
            if let Some(least) = least
                && names
                && asked.least.as_ref().is_none_or(|(before, _)| least > *before)
            {
                asked.least = Some((least, place(product, statement)));
            }
        }
    }
    asked
}

/// A conditioner's rate as a content of the spray.
fn in_spray(rate: Rate, carrier: CarrierRate) -> Option<MassPerVolume> {
    match rate {
        Rate::MassPerSpray(content) | Rate::OuncesPerSpray(content) | Rate::ActivePerSpray(content, _) => Some(content),
        Rate::MassPerArea(mass) | Rate::OuncesPerArea(mass) | Rate::ActivePerArea(mass, _) if !carrier.is_zero() => {
            Some(MassPerVolume::from_grams_per_litre(
                mass.to_kilograms_per_hectare() * 1000.0 / carrier.to_litres_per_hectare(),
            ))
        }
        _ => None,
    }
}
