//! From a rate on any basis to an amount of product over ground.

use crate::farm::pass::Line;
use crate::farm::{Active, Id, Product, ProductKind};
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
        Rate::VolumePerArea(_) | Rate::VolumePerSpray(_) => Err(format!(
            "{name} is dry ({}) but its rate is a volume; type a mass, such as \"2 oz/ac\"",
            product.formulation.code()
        )),
        Rate::OuncesPerArea(_) | Rate::OuncesPerSpray(_) if product.is_liquid() => Err(format!(
            "{name} is a liquid, and \"oz\" may be fluid or weighed; type \"fl oz\", or \"oz wt\" if it is weighed"
        )),
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
        return Err(format!(
            "{} is a solution: \"lb\" may be of the solution or of the salt in it; type \"lb ai/100 gal\" for the salt, or a \
             volume for the solution",
            product.name
        ));
    }
    density
        .and_then(|density| rate.through(MassPerVolume::from_grams_per_litre(density.to_kilograms_per_cubic_metre())))
        .map(AmountPerArea::Volume)
        .ok_or_else(|| {
            format!(
                "{} is a liquid but its rate is a mass; type \"fl oz\" if fluid ounces are meant, \"lb ai/100 gal\" to go \
                 through its content, or give its density",
                product.name
            )
        })
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
            return Err(format!(
                "{name} has no active typed, so a rate of active cannot be reckoned; type its content in the shed"
            ));
        }
        [one] => one,
        _ => {
            return Err(format!(
                "{name} holds several actives, so \"{}\" does not say which; rate it by product",
                basis.short()
            ));
        }
    };
    if active.basis != basis {
        return Err(format!(
            "The rate counts {}, the label of {name} counts {}; type the rate on the label's basis",
            basis.short(),
            active.basis.short()
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
        format!(
            "The content of {} in {name} does not reach its {}; give its density",
            active.name,
            if product.is_liquid() { "volume" } else { "mass" }
        )
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
        return Err(format!("{}: \"at least\" lies above \"at most\"", product.name));
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
    let mut working = Working::new(format!("{} over ground", product.name))
        .step(format!("rate as typed: {}", line.rate.text()), plain.show(units));
    match line.rate.value() {
        Rate::VolumePerSpray(_) | Rate::MassPerSpray(_) | Rate::OuncesPerSpray(_) | Rate::ActivePerSpray(..) => {
            working = working.step(format!("in {} of finished spray", carrier.show(units)), plain.show(units));
        }
        Rate::ActivePerArea(_, basis) => {
            if let Some(active) = product.actives.first() {
                working = working.step(
                    format!("÷ content of {} ({}), {}", active.name, basis.short(), active.content.text()),
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
        working = working.step("raised to at least", floor.show(units));
    }
    if let Some(ceiling) = ceiling
        && floor.map_or(plain, |floor| plain.larger(floor)).exceeds(ceiling) == Some(true)
    {
        working = working.step("lowered to at most", ceiling.show(units));
    }
    Ok((amount, working))
}
