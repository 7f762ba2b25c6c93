//! Words for hardness. Schemes differ, so each is asked by its name.

use std::sync::LazyLock;

use serde::Deserialize;

use crate::language::t;
use crate::quantity::Hardness;

/// A row of `assets/water-classes.csv`. A class reaches from the end of the one before to its own, so that no figure falls
/// between two, though most schemes print whole numbers.
#[derive(Deserialize)]
struct Row {
    scheme: String,
    class: String,
    /// Empty for the hardest class.
    up_to_ppm: Option<f64>,
    /// "within" where the limit itself still belongs to the class, "beyond" where it belongs to the next.
    limit_itself: String,
    source: String,
}

fn table() -> &'static [Row] {
    static TABLE: LazyLock<Vec<Row>> =
        LazyLock::new(|| crate::table::read(include_str!("../../../../assets/water-classes.csv")).unwrap_or_default());
    &TABLE
}

/// Who draws the limits between soft and hard.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Scheme {
    /// US Geological Survey.
    GeologicalSurvey,
    /// Water Quality Association.
    WaterQualityAssociation,
    /// Vermont Department of Health.
    Vermont,
    /// An environmental engineering textbook.
    Engineering,
    /// United Kingdom.
    UnitedKingdom,
}

impl Row {
    /// The word, of the table's in the language that is spoken.
    fn words(&self) -> &str {
        match self.class.as_str() {
            "soft" => t!("water-class-soft"),
            "moderately hard" => t!("water-class-moderately-hard"),
            "hard" => t!("water-class-hard"),
            "very hard" => t!("water-class-very-hard"),
            "slightly hard" => t!("water-class-slightly-hard"),
            "moderately soft" => t!("water-class-moderately-soft"),
            other => other,
        }
    }
}

impl Scheme {
    /// All of them.
    pub const ALL: [Self; 5] =
        [Self::GeologicalSurvey, Self::WaterQualityAssociation, Self::Vermont, Self::Engineering, Self::UnitedKingdom];

    /// In words.
    pub fn name(self) -> &'static str {
        match self {
            Self::GeologicalSurvey => t!("water-us-geological-survey"),
            Self::WaterQualityAssociation => t!("water-water-quality-association"),
            Self::Vermont => t!("water-vermont"),
            Self::Engineering => t!("water-engineering-textbook"),
            Self::UnitedKingdom => t!("water-united-kingdom"),
        }
    }

    /// The key under which the table speaks of it.
    pub const fn key(self) -> &'static str {
        match self {
            Self::GeologicalSurvey => "usgs",
            Self::WaterQualityAssociation => "wqa",
            Self::Vermont => "vermont",
            Self::Engineering => "engineering",
            Self::UnitedKingdom => "uk",
        }
    }

    fn rows(self) -> impl Iterator<Item = &'static Row> {
        table().iter().filter(move |row| row.scheme == self.key())
    }

    /// Where it is printed.
    pub fn source(self) -> &'static str {
        self.rows().next().map_or("", |row| row.source.as_str())
    }
}

/// The word of a scheme for a hardness.
///
/// # Examples
/// ```
/// use tankard_core::quantity::Hardness;
/// use tankard_core::water::hardness::{Scheme, class};
/// assert_eq!(class(Hardness::from_ppm(60.5), Scheme::GeologicalSurvey), "moderately hard");
/// ```
pub fn class(hardness: Hardness, scheme: Scheme) -> &'static str {
    let within = |row: &&Row| {
        row.up_to_ppm.is_none_or(|limit| {
            let limit = Hardness::from_ppm(limit);
            if row.limit_itself == "within" { !hardness.exceeds(limit) } else { limit.exceeds(hardness) }
        })
    };
    scheme.rows().find(within).map_or("", |row| row.words())
}

#[cfg(test)]
mod tests {
    use super::{Scheme, table};

    #[test]
    fn every_scheme_rises_to_an_open_end_and_has_a_source() {
        assert!(!table().is_empty());
        for scheme in Scheme::ALL {
            let rows: Vec<_> = scheme.rows().collect();
            let limits: Vec<f64> = rows.iter().filter_map(|row| row.up_to_ppm).collect();
            assert_eq!(limits.len() + 1, rows.len(), "{scheme:?}");
            assert!(limits.is_sorted(), "{scheme:?}");
            assert!(rows.last().is_some_and(|row| row.up_to_ppm.is_none()), "{scheme:?}");
            assert!(rows.iter().all(|row| !row.source.is_empty() && !row.class.is_empty()), "{scheme:?}");
            let edges = rows.iter().filter(|row| row.up_to_ppm.is_some());
            assert!(edges.into_iter().all(|row| ["within", "beyond"].contains(&row.limit_itself.as_str())));
        }
        assert!(table().iter().all(|row| Scheme::ALL.iter().any(|scheme| scheme.key() == row.scheme)));
    }
}
