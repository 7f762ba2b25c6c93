//! Hardness from calcium and magnesium, and the words for it.

use crate::farm::Water;
use crate::language::t;
use crate::quantity::number::show;
use crate::quantity::{Hardness, IonContent};
use crate::working::Working;

pub use super::classes::{Scheme, class};

/// ppm of hardness as CaCO3 for one ppm of calcium: 100.087 / 40.078.
///
/// Standard Methods for the Examination of Water and Wastewater, 2340 B, rounded there to 2.497.
pub const CALCIUM: f64 = 2.497;
/// ppm of hardness as CaCO3 for one ppm of magnesium: 100.087 / 24.305, rounded to 4.118.
pub const MAGNESIUM: f64 = 4.118;

/// Hardness from the two ions that make it.
///
/// # Units
/// ppm CaCO3 = 2.497 × ppm Ca + 4.118 × ppm Mg.
///
/// # References
/// Hardness by calculation, Method 314A of Standard Methods, 16th ed. 1985, p. 209 (now 2340 B), as in UC Davis
/// Analytical Laboratory SOP 875.
///
/// # Examples
/// ```
/// use tankard_core::quantity::IonContent;
/// use tankard_core::water::hardness::from_ions;
/// let hard = from_ions(IonContent::from_ppm(100.0), IonContent::from_ppm(30.0));
/// assert!((hard.to_ppm() - 373.2).abs() < 0.1);
/// ```
pub fn from_ions(calcium: IonContent, magnesium: IonContent) -> Hardness {
    Hardness::from_ppm(CALCIUM * calcium.to_ppm() + MAGNESIUM * magnesium.to_ppm())
}

/// The hardness of a water: from its ions where both are stated, else as the laboratory states it, else from the one ion
/// that is stated.
pub fn hardness(water: &Water) -> Option<Hardness> {
    match (&water.calcium, &water.magnesium, &water.hardness) {
        (Some(calcium), Some(magnesium), _) => Some(from_ions(calcium.value(), magnesium.value())),
        (_, _, Some(stated)) => Some(stated.value()),
        (Some(calcium), None, None) => Some(from_ions(calcium.value(), IonContent::ZERO)),
        (None, Some(magnesium), None) => Some(from_ions(IonContent::ZERO, magnesium.value())),
        (None, None, None) => None,
    }
}

/// How the hardness was found.
pub(crate) fn working(water: &Water, hardness: Hardness) -> Working {
    let title = t!("water-hardness-of", name = water.name);
    let total = t!("water-ppm-caco3", show = show(hardness.to_ppm(), 1));
    match (&water.calcium, &water.magnesium, &water.hardness) {
        (Some(calcium), Some(magnesium), _) => Working::new(title)
            .step(t!("water-2-497-ppm-calcium", show = show(calcium.to_ppm(), 2)), show(CALCIUM * calcium.to_ppm(), 1))
            .step(
                t!("water-4-118-ppm-magnesium", show = show(magnesium.to_ppm(), 2)),
                show(MAGNESIUM * magnesium.to_ppm(), 1),
            )
            .step(t!("water-hardness-standard-methods-2340-b"), total),
        (_, _, Some(stated)) => Working::new(title).step(t!("water-as-stated", stated = stated.text()), total),
        _ => Working::new(title).step(t!("water-from-the-one-ion-stated"), total),
    }
}
