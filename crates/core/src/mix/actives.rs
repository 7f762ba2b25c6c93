//! What is known of an active by its ISO common name: resistance group, chemical family, how labels count it.

use std::sync::LazyLock;

use serde::Deserialize;

use crate::quantity::ActiveBasis;

/// A row of `assets/actives.csv`.
#[derive(Clone, Debug, Deserialize)]
pub struct ActiveFacts {
    /// ISO common name.
    pub name: String,
    /// HRAC group, by number.
    pub group: String,
    /// Chemical family.
    pub family: String,
    /// "ae" or "ai": how labels usually count it.
    basis: String,
    /// Where it is printed.
    pub source: String,
}

impl ActiveFacts {
    /// How labels usually count it.
    pub fn basis(&self) -> ActiveBasis {
        if self.basis == "ae" { ActiveBasis::AcidEquivalent } else { ActiveBasis::ActiveIngredient }
    }
}

/// The table.
pub fn table() -> &'static [ActiveFacts] {
    static TABLE: LazyLock<Vec<ActiveFacts>> =
        LazyLock::new(|| crate::table::read(include_str!("../../../../assets/actives.csv")).unwrap_or_default());
    &TABLE
}

/// Whether two names mean one active.
pub fn same(a: &str, b: &str) -> bool {
    a.trim().eq_ignore_ascii_case(b.trim())
}

/// What is known of an active, however its name is written.
pub fn facts(name: &str) -> Option<&'static ActiveFacts> {
    table().iter().find(|facts| facts.name.eq_ignore_ascii_case(name.trim()))
}

#[cfg(test)]
mod tests {
    use super::table;

    #[test]
    fn every_active_has_a_group_a_family_a_basis_and_a_source() {
        assert!(!table().is_empty());
        for facts in table() {
            assert!(
                !facts.group.is_empty()
                    && !facts.family.is_empty()
                    && !facts.source.is_empty()
                    && ["ae", "ai"].contains(&facts.basis.as_str()),
                "{facts:?}"
            );
        }
    }
}
