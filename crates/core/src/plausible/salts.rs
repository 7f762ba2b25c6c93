//! How much heavier the salts and esters of an active are than its acid: the rows of `assets/salts.csv`.

use std::sync::LazyLock;

use serde::Deserialize;

use crate::mix::actives::same;

/// A salt or an ester of an active.
#[derive(Clone, Debug, Deserialize)]
pub struct Salt {
    /// ISO common name of the active.
    pub active: String,
    /// With what: "isopropylamine".
    pub salt: String,
    /// Formula of the acid.
    pub acid_formula: String,
    /// Molar mass of the acid, in g/mol.
    pub acid_mass: f64,
    /// Formula of the salt or ester.
    pub salt_formula: String,
    /// Molar mass of the salt or ester, in g/mol.
    pub salt_mass: f64,
    /// Where that is from.
    pub source: String,
}

impl Salt {
    /// How many kilograms of it hold a kilogram of the acid.
    pub fn ratio(&self) -> f64 {
        self.salt_mass / self.acid_mass
    }
}

/// The table.
pub fn table() -> &'static [Salt] {
    static TABLE: LazyLock<Vec<Salt>> =
        LazyLock::new(|| crate::table::read(include_str!("../../../../assets/salts.csv")).unwrap_or_default());
    &TABLE
}

/// The salts and esters of an active, by any of its names.
pub fn of(active: &str) -> impl Iterator<Item = &'static Salt> {
    table().iter().filter(move |salt| same(&salt.active, active))
}

#[cfg(test)]
mod tests {
    use super::{of, table};

    #[test]
    fn every_row_reads_and_is_heavier_than_its_acid() {
        assert!(table().len() >= 40);
        assert!(table().iter().all(|salt| salt.ratio() > 1.0 && salt.ratio() < 2.0));
        assert_eq!(of("glyphosate IPA").count(), of("glyphosate").count());
    }
}
