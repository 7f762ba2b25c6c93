//! What nozzles, speed and volume are held against: the rows of `assets/nozzle-limits.csv`.
//!
//! Two kinds of published rule stand beside each other and are not merged: against a new nozzle, and against the average of
//! those caught. Of the second kind there are two figures.

use std::sync::LazyLock;

use serde::Deserialize;

use crate::finding::Basis;
use crate::quantity::Share;

/// A row of the table.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Limit {
    /// "new", "average", "volume", "speed" or "size".
    pub against: String,
    percent: f64,
    /// What the source says.
    pub says: String,
    /// Where it is printed.
    pub source: String,
}

impl Limit {
    /// How far off it may be.
    pub fn share(&self) -> Share {
        Share::from_percent(self.percent)
    }

    /// On what it rests.
    pub fn basis(&self) -> Basis {
        Basis::of_source(&self.source)
    }
}

/// The table.
pub fn table() -> &'static [Limit] {
    static TABLE: LazyLock<Vec<Limit>> = LazyLock::new(|| read().unwrap_or_default());
    &TABLE
}

fn read() -> Result<Vec<Limit>, csv::Error> {
    crate::table::read(include_str!("../../../../../assets/nozzle-limits.csv"))
}

/// The rows against something, in the order of the table.
pub(crate) fn of(against: &str) -> impl Iterator<Item = &'static Limit> + use<'_> {
    table().iter().filter(move |limit| limit.against == against)
}

/// The sources of rows, in one text.
pub(crate) fn sources(rows: &[&Limit]) -> String {
    rows.iter().map(|row| row.source.as_str()).collect::<Vec<_>>().join("; ")
}

#[cfg(test)]
mod tests {
    use super::{of, read};

    #[test]
    fn every_row_reads_and_has_a_source() {
        let rows = read().unwrap_or_default();
        assert!(rows.len() >= 7);
        for row in &rows {
            assert!(row.percent > 0.0 && row.percent < 100.0 && !row.says.is_empty() && !row.source.is_empty());
        }
        for against in ["new", "average", "volume", "speed", "size"] {
            assert!(of(against).next().is_some(), "{against}");
        }
    }
}
