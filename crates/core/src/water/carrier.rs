//! What the carrier brings along: half the water carries half the ions.

use crate::quantity::{CarrierRate, MassPerArea, MassPerVolume};

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
