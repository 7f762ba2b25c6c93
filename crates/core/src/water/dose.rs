//! What the recommended conditioner comes to in each load: dry by mass, a solution by volume.

use super::WaterPlan;
use crate::farm::{Product, ProductKind};
use crate::language::t;
use crate::loads::Load;
use crate::quantity::{
    Amount, AmountPerArea, AsTyped, CarrierRate, Mass, MassPerVolume, Quantity, Share, Units, Volume,
};
use crate::working::Working;

/// How much of a product goes into the finished spray.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Dose {
    /// Dry, by mass.
    Dry(MassPerVolume),
    /// Liquid, by volume.
    Liquid(Share),
}

impl Dose {
    /// What of it goes into a volume of finished spray.
    pub fn over(self, spray: Volume) -> Amount {
        match self {
            Self::Dry(content) => Amount::Mass(content * spray),
            Self::Liquid(share) => Amount::Volume(spray * share.to_fraction()),
        }
    }

    /// From an amount over ground; `None` where no water is sprayed.
    pub fn of(amount: AmountPerArea, carrier: CarrierRate) -> Option<Self> {
        match amount {
            AmountPerArea::Volume(_) => amount.share_of(carrier).map(Self::Liquid),
            AmountPerArea::Mass(mass) if !carrier.is_zero() => Some(Self::Dry(MassPerVolume::from_grams_per_litre(
                mass.to_kilograms_per_hectare() * 1000.0 / carrier.to_litres_per_hectare(),
            ))),
            AmountPerArea::Mass(_) => None,
        }
    }

    /// Prints as a rate in the spray.
    pub fn show(self, units: Units) -> String {
        match self {
            Self::Dry(content) => content.show(units),
            Self::Liquid(share) => format!("{} % v/v", crate::quantity::number::show(share.to_percent(), 2)),
        }
    }
}

/// Ammonium sulfate in a volume of a liquid product, as its content is typed. It is never taken from a fertilizer grade:
/// 8-0-0-9 is quoted as 3.4 lb/gal, and its 8 % of nitrogen would make 3.8 lb/gal. `None` for a dry product, and where it
/// is not typed or does not reach a volume.
pub fn salt_in(product: &Product) -> Option<MassPerVolume> {
    let density = product.density.as_ref().map(AsTyped::value);
    let content = product.actives.first()?.content.per_volume(density)?;
    (product.is_liquid() && !content.is_zero()).then_some(content)
}

/// How much of a product brings a content of ammonium sulfate; `None` for a liquid whose content is not typed.
///
/// # Examples
/// 8.5 lb/100 gal from a liquid of 3.4 lb/gal is 2.5 % v/v, as trials used it (Devkota and Johnson, Weed Technology).
/// ```
/// use tankard_core::farm::{Active, Formulation, Product, ProductKind};
/// use tankard_core::quantity::{ActiveBasis, AsTyped, MassPerVolume};
/// use tankard_core::water::dose::{Dose, of_salt};
/// let mut liquid = Product::new("Ammonium sulfate solution (demo)", ProductKind::Conditioner, Formulation::SL);
/// let salt = |content| Active {
///     name: "ammonium sulfate".to_owned(),
///     group: String::new(),
///     basis: ActiveBasis::ActiveIngredient,
///     content,
/// };
/// assert_eq!(of_salt(MassPerVolume::from_pounds_per_100_us_gallons(8.5), &liquid), None);
/// liquid.actives.push(salt(AsTyped::parse("3.4 lb/gal")?));
/// let Some(Dose::Liquid(share)) = of_salt(MassPerVolume::from_pounds_per_100_us_gallons(8.5), &liquid) else { unreachable!() };
/// assert!((share.to_percent() - 2.5).abs() < 1e-9);
/// # Ok::<(), tankard_core::quantity::QuantityError>(())
/// ```
pub fn of_salt(salt: MassPerVolume, product: &Product) -> Option<Dose> {
    if product.is_liquid() {
        let content = salt_in(product)?;
        return salt.ratio(content).map(|share| Dose::Liquid(Share::from_fraction(share)));
    }
    let density = product.density.as_ref().map(AsTyped::value);
    let pure = product
        .actives
        .first()
        .filter(|_| product.kind == ProductKind::Conditioner)
        .and_then(|active| active.content.per_mass(density))
        .map(Share::to_fraction)
        .filter(|pure| *pure > 0.0);
    Some(Dose::Dry(salt * (1.0 / pure.unwrap_or(1.0))))
}

/// The recommended conditioner in one load.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LoadDose {
    /// The load's number.
    pub load: u32,
    /// Ammonium sulfate as such; `None` for a conditioner without ammonium.
    pub salt: Option<Mass>,
    /// The product; `None` where its dose is not known.
    pub product: Option<Amount>,
}

/// What the recommendation comes to in each load, whether the mix already holds it or not, with the arithmetic; empty
/// where nothing is recommended.
///
/// # Units
/// dose in the spray × new spray of the load; for a solution ÷ its content.
pub fn per_load(water: &WaterPlan, loads: &[Load], units: Units) -> (Vec<LoadDose>, Option<Working>) {
    let Some(choice) = &water.conditioner else { return (Vec::new(), None) };
    let salt = water.recommended;
    if salt.is_none() && choice.per_spray.is_none() {
        return (Vec::new(), None);
    }
    let mut working = Working::new(t!("water-as-recommended-for-each-load", name = choice.name));
    if let Some(salt) = salt {
        working = working.step(t!("water-ammonium-sulfate-in-the-spray"), salt.show(units));
    }
    if let Some(dose) = choice.per_spray {
        match (dose, choice.content) {
            (Dose::Liquid(_), Some(content)) => {
                let content = crate::quantity::Concentration::MassPerVolume(content, None).show(units);
                working = working.step(t!("water-in-the-solution", content = content), dose.show(units));
            }
            (Dose::Liquid(_), None) => working = working.step(t!("water-in-the-spray-by-its-label"), dose.show(units)),
            (Dose::Dry(content), _) if salt != Some(content) => {
                working = working.step(t!("water-of-the-product"), dose.show(units));
            }
            (Dose::Dry(_), _) => {}
        }
    }
    let mut doses = Vec::new();
    for load in loads {
        let dose = LoadDose {
            load: load.number,
            salt: salt.map(|salt| salt * load.new_spray()),
            product: choice.per_spray.map(|dose| dose.over(load.new_spray())),
        };
        let amount = dose.product.or(dose.salt.map(Amount::Mass));
        if let Some(amount) = amount {
            let amount = match amount {
                Amount::Mass(mass) => mass.show(units),
                Amount::Volume(volume) => volume.show(units),
            };
            working = working
                .step(t!("water-of-load", new_spray = load.new_spray().show(units), number = load.number), amount);
        }
        doses.push(dose);
    }
    (doses, Some(working))
}
