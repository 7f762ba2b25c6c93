//! What the carrier brings along: half the water carries half the ions.

use super::WaterPlan;
use super::conditioner::Judged;
use super::need::ConditionerNeed;
use crate::farm::label::Says;
use crate::language::t;
use crate::quantity::number::show;
use crate::quantity::{AsTyped, CarrierRate, MassPerArea, MassPerVolume, Quantity, Share, Units};
use crate::working::Working;

/// What a content of the water puts on the ground: hardness as calcium carbonate, an ion, or the ammonium sulfate that the
/// ions tie up.
///
/// # References
/// Arithmetic: content × spray volume over ground, so half the water carries half.
///
/// # Examples
/// ```
/// use tankard_core::quantity::{CarrierRate, Hardness};
/// use tankard_core::water::load_of_ions;
/// let hard = Hardness::from_ppm(400.0);
/// let full = load_of_ions(hard, CarrierRate::from_litres_per_hectare(200.0));
/// let half = load_of_ions(hard, CarrierRate::from_litres_per_hectare(100.0));
/// assert!((full.to_kilograms_per_hectare() - 0.08).abs() < 1e-12);
/// assert!((half.to_kilograms_per_hectare() - 0.04).abs() < 1e-12);
/// ```
pub fn load_of_ions(content: impl Into<MassPerVolume>, carrier: CarrierRate) -> MassPerArea {
    carrier.content(content.into())
}

/// What the water of a mix puts on the ground, and half of it.
pub(super) fn working(
    water: &WaterPlan,
    carrier: CarrierRate,
    least: Option<CarrierRate>,
    units: Units,
) -> Option<Working> {
    let (hardness, need) = (water.hardness?, water.need.as_ref().map(ConditionerNeed::most)?);
    let at = |carrier: CarrierRate| load_of_ions(need, carrier).show(units);
    let mut working = Working::new(t!("water-ions-over-ground-from", name = water.name))
        .step(
            t!("water-hardness", hardness = hardness.show(units), carrier = carrier.show(units)),
            load_of_ions(hardness, carrier).show(units),
        )
        .step(
            t!("water-ammonium-sulfate-tied-up", need = need.show(units), carrier = carrier.show(units)),
            at(carrier),
        );
    if let Some(least) = least {
        working = working.step(t!("water-at-the-least-that-the-labels", least = least.show(units)), at(least));
    }
    Some(working.step(t!("water-at-half-the-spray-volume-half"), at(carrier * 0.5)))
}

/// The least spray volume that every pesticide's label allows, where that is clearly less than the planned one; `None`
/// where one of the labels names none.
pub(super) fn least(judged: &Judged<'_>) -> Option<CarrierRate> {
    let mut all: Option<CarrierRate> = None;
    for (_, product) in judged.products().filter(|(_, product)| product.kind.is_pesticide()) {
        let named = product
            .label
            .iter()
            .filter(|statement| judged.applies(statement))
            .filter_map(|statement| match &statement.says {
                Says::Carrier { least, .. } => least.as_ref().map(AsTyped::value),
                _ => None,
            })
            .max()?;
        all = Some(all.map_or(named, |before| before.max(named)));
    }
    all.filter(|least| (*least * 1.1) < judged.carrier)
}

/// A word on less water, for a water that matters.
pub(super) fn sentence(least: CarrierRate, carrier: CarrierRate, units: Units) -> Option<String> {
    let less = Share::from_fraction(1.0 - least.ratio(carrier)?);
    Some(t!(
        "water-at-least-the-least-that-the-labels-name-instead",
        least = least.show(units),
        carrier = carrier.show(units),
        show = show(less.to_percent(), 0)
    ))
}
