//! From a rate on any basis to an amount of product over ground.

use crate::farm::pass::Line;
use crate::farm::{Active, Id, Product, ProductKind};
use crate::language::{t, yes_or_no};
use crate::quantity::{
    ActiveBasis, Amount, AmountPerArea, CarrierRate, Density, MassPerArea, MassPerVolume, Money, Quantity, Rate, Units,
};
use crate::working::Working;

/// One product of the mix, reckoned.
#[derive(Clone, Debug, PartialEq)]
pub struct PlannedLine {
    /// The product.
    pub product: Id,
    /// Its name.
    pub name: String,
    /// Its place in the mixing order, from 1.
    pub number: u32,
    /// How much of it over ground.
    pub per_area: AmountPerArea,
    /// How much of it in all.
    pub demand: Amount,
    /// What that costs; `None` without a price.
    pub cost: Option<Money>,
}

/// How much of a product a rate puts on the ground.
///
/// # Errors
/// A sentence that says what is missing and what to type, where the rate's basis does not reach the product: a volume of
/// a dry product, a mass of a liquid one without density, an active without content.
pub fn per_area(rate: Rate, product: &Product, carrier: CarrierRate) -> Result<AmountPerArea, String> {
    let name = &product.name;
    let density = product.density.as_ref().map(crate::quantity::AsTyped::value);
    match rate {
        Rate::VolumePerArea(rate) if product.is_liquid() => Ok(AmountPerArea::Volume(rate)),
        Rate::VolumePerSpray(share) if product.is_liquid() => Ok(AmountPerArea::Volume(carrier.share(share))),
        Rate::VolumePerArea(_) | Rate::VolumePerSpray(_) => {
            Err(t!("mix-is-dry-but-its-rate-is", name = name, code = product.formulation.code()))
        }
        Rate::OuncesPerArea(_) | Rate::OuncesPerSpray(_) if product.is_liquid() => {
            Err(t!("mix-is-a-liquid-and-oz-may", name = name))
        }
        Rate::MassPerArea(rate) | Rate::OuncesPerArea(rate) => weighed(rate, product, density),
        Rate::MassPerSpray(content) | Rate::OuncesPerSpray(content) => {
            weighed(carrier.content(content), product, density)
        }
        Rate::ActivePerArea(rate, basis) => through_active(rate, basis, product, density),
        Rate::ActivePerSpray(content, basis) => through_active(carrier.content(content), basis, product, density),
    }
}

fn weighed(rate: MassPerArea, product: &Product, density: Option<Density>) -> Result<AmountPerArea, String> {
    if !product.is_liquid() {
        return Ok(AmountPerArea::Mass(rate));
    }
    if product.kind == ProductKind::Conditioner && !product.actives.is_empty() {
        return Err(t!("mix-is-a-solution-lb-may-be", name = product.name));
    }
    density
        .and_then(|density| rate.through(MassPerVolume::from_grams_per_litre(density.to_kilograms_per_cubic_metre())))
        .map(AmountPerArea::Volume)
        .ok_or_else(|| t!("mix-is-a-liquid-but-its-rate", name = product.name))
}

fn through_active(
    rate: MassPerArea,
    basis: ActiveBasis,
    product: &Product,
    density: Option<Density>,
) -> Result<AmountPerArea, String> {
    let name = &product.name;
    let active = match product.actives.as_slice() {
        [] => {
            return Err(t!("mix-has-no-active-typed-so-a", name = name));
        }
        [one] => one,
        _ => {
            return Err(t!("mix-holds-several-actives-so-does-not", name = name, short = basis.short()));
        }
    };
    if active.basis != basis {
        return Err(t!(
            "mix-the-rate-counts-the-label-of",
            short = basis.short(),
            name = name,
            short2 = active.basis.short()
        ));
    }
    let reckoned = if product.is_liquid() {
        active.content.per_volume(density).and_then(|content| rate.through(content)).map(AmountPerArea::Volume)
    } else {
        active
            .content
            .per_mass(density)
            .filter(|share| share.to_fraction() > 0.0)
            .map(|share| AmountPerArea::Mass(rate * (1.0 / share.to_fraction())))
    };
    reckoned.ok_or_else(|| {
        t!("mix-the-content-of-in-does-not", name = active.name, name2 = name, which = yes_or_no(product.is_liquid()))
    })
}

/// The mass of an active that an amount of product over ground holds; `None` where content or density is missing.
pub fn active_per_area(amount: AmountPerArea, active: &Active, product: &Product) -> Option<MassPerArea> {
    let density = product.density.as_ref().map(crate::quantity::AsTyped::value);
    match amount {
        AmountPerArea::Volume(rate) => active.content.per_volume(density).map(|content| rate.content(content)),
        AmountPerArea::Mass(rate) => active.content.per_mass(density).map(|share| rate * share.to_fraction()),
    }
}

/// A line of the mix over ground, its floor and ceiling applied.
///
/// # Errors
/// As [`per_area`], and where the floor lies above the ceiling.
pub fn over_ground(line: &Line, product: &Product, carrier: CarrierRate) -> Result<AmountPerArea, String> {
    let plain = per_area(line.rate.value(), product, carrier)?;
    let (floor, ceiling) = bounds(line, product, carrier)?;
    let raised = floor.map_or(plain, |floor| plain.larger(floor));
    Ok(ceiling.map_or(raised, |ceiling| raised.smaller(ceiling)))
}

/// The floor and the ceiling of a line over ground.
fn bounds(
    line: &Line,
    product: &Product,
    carrier: CarrierRate,
) -> Result<(Option<AmountPerArea>, Option<AmountPerArea>), String> {
    let bound = |text: &Option<crate::quantity::AsTyped<Rate>>| -> Result<Option<AmountPerArea>, String> {
        text.as_ref().map(|rate| per_area(rate.value(), product, carrier)).transpose()
    };
    let (floor, ceiling) = (bound(&line.at_least)?, bound(&line.at_most)?);
    if let (Some(floor), Some(ceiling)) = (floor, ceiling)
        && floor.exceeds(ceiling) == Some(true)
    {
        return Err(t!("mix-at-least-lies-above-at-most", name = product.name));
    }
    Ok((floor, ceiling))
}

/// The same with the working.
///
/// # Errors
/// As [`over_ground`].
pub fn reckon(
    line: &Line,
    product: &Product,
    carrier: CarrierRate,
    units: Units,
) -> Result<(AmountPerArea, Working), String> {
    let amount = over_ground(line, product, carrier)?;
    let plain = per_area(line.rate.value(), product, carrier)?;
    let mut working = Working::new(t!("mix-over-ground", name = product.name))
        .step(t!("mix-rate-as-typed", rate = line.rate.text()), plain.show(units));
    match line.rate.value() {
        Rate::VolumePerSpray(_) | Rate::MassPerSpray(_) | Rate::OuncesPerSpray(_) | Rate::ActivePerSpray(..) => {
            working = working.step(t!("mix-in-of-finished-spray", carrier = carrier.show(units)), plain.show(units));
        }
        Rate::ActivePerArea(_, basis) => {
            if let Some(active) = product.actives.first() {
                working = working.step(
                    t!("mix-content-of", name = active.name, short = basis.short(), content = active.content.text()),
                    plain.show(units),
                );
            }
        }
        _ => {}
    }
    let (floor, ceiling) = bounds(line, product, carrier)?;
    if let Some(floor) = floor
        && floor.exceeds(plain) == Some(true)
    {
        working = working.step(t!("mix-raised-to-at-least"), floor.show(units));
    }
    if let Some(ceiling) = ceiling
        && floor.map_or(plain, |floor| plain.larger(floor)).exceeds(ceiling) == Some(true)
    {
        working = working.step(t!("mix-lowered-to-at-most"), ceiling.show(units));
    }
    Ok((amount, working))
}
