//! Carriers other than water: a heavier liquid leaves a nozzle more slowly.

use std::sync::LazyLock;

use serde::Deserialize;

use crate::farm::{CarrierKind, Pass};
use crate::language::t;
use crate::quantity::{AsTyped, Density, Units};

/// Weight of water in the table of factors.
///
/// # Units
/// 8.34 lb/US gal (0.9993 kg/L). Physics has 8.330 at 20 °C; the difference to the factor of a 28 % solution is below 0.001.
pub const WATER: Density = Density::from_pounds_per_us_gallon(8.34);

/// A carrier with its density.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
pub struct Carrier {
    /// Its kind.
    pub kind: CarrierKind,
    /// Its grade: "28-0-0".
    pub name: String,
    /// What it weighs.
    pub density: AsTyped<Density>,
    /// Where that is printed.
    pub source: String,
}

/// Carriers whose density is printed.
pub fn carriers() -> &'static [Carrier] {
    static TABLE: LazyLock<Vec<Carrier>> = LazyLock::new(|| {
        crate::table::read(include_str!("../../../../assets/carrier-densities.csv")).unwrap_or_default()
    });
    &TABLE
}

/// How much more water a nozzle must be able to give, to give as much of a liquid of this density: the root of the density
/// over that of water. `None` for a density of nothing.
///
/// # References
/// University of Nebraska-Lincoln, CropWatch, 2016; University of Georgia Extension (Sumner).
///
/// # Examples
/// ```
/// use tankard_core::quantity::Density;
/// use tankard_core::rig::density::factor;
/// // 28-0-0, printed as 1.13.
/// assert!((factor(Density::from_pounds_per_us_gallon(10.65)).unwrap() - 1.13).abs() < 0.005);
/// ```
pub fn factor(density: Density) -> Option<f64> {
    density.ratio(WATER).filter(|ratio| *ratio > 0.0).map(f64::sqrt)
}

/// The factor of a pass, with the density that it comes from; 1 for water, and where the density is not typed.
pub(crate) fn of_pass(pass: &Pass) -> (f64, Option<Density>) {
    let typed = pass.density.as_ref().map(AsTyped::value);
    match typed.and_then(factor) {
        Some(factor) => (factor, typed),
        None => (1.0, None),
    }
}

/// What the table offers for a kind of carrier, in a sentence, and where that is printed.
pub(crate) fn offered(kind: CarrierKind, units: Units) -> (String, String) {
    let of_kind = || carriers().iter().filter(|carrier| carrier.kind == kind);
    let names: Vec<String> =
        of_kind().map(|carrier| t!("rig-for", density = carrier.density.show(units), name = carrier.name)).collect();
    (crate::label::listed(&names), of_kind().next().map(|carrier| carrier.source.clone()).unwrap_or_default())
}

#[cfg(test)]
mod tests {
    use super::{WATER, carriers};
    use crate::farm::CarrierKind;

    #[test]
    fn the_table_reads_and_its_water_is_ours() {
        assert_eq!(carriers().len(), 7);
        for carrier in carriers() {
            assert_eq!(carrier.kind == CarrierKind::Water, carrier.density.value() == WATER, "{}", carrier.name);
            assert!((0.9..1.6).contains(&carrier.density.to_kilograms_per_litre()), "{}", carrier.name);
        }
    }
}
