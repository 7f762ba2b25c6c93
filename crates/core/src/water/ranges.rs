//! The figures for ammonium sulfate that publications print beside the equation: the rows of `assets/water-ranges.csv`.

use std::sync::LazyLock;

use serde::Deserialize;

use crate::quantity::{MassPerVolume, Quantity, Units};

/// A row of the table, as it stands there.
#[derive(Deserialize)]
struct Row {
    figure: String,
    least: String,
    most: String,
    active: String,
    source: String,
}

/// A range of ammonium sulfate in the finished spray, as a publication prints it.
#[derive(Clone, Debug, PartialEq)]
pub struct Range {
    /// At least.
    pub least: MassPerVolume,
    /// At most.
    pub most: MassPerVolume,
    /// The active it is printed for; empty for any.
    pub active: String,
    /// Where it is printed.
    pub source: String,
}

impl Range {
    /// "8.5 to 17 lb/100 gal".
    pub fn show(&self, units: Units) -> String {
        show(self.least, self.most, units)
    }
}

/// Two figures with their unit once: "8.5 to 17 lb/100 gal".
pub(crate) fn show(least: MassPerVolume, most: MassPerVolume, units: Units) -> String {
    let (low, high) = (least.show(units), most.show(units));
    if low == high { high } else { crate::words::to(&low, &high) }
}

fn find(figure: &str) -> Option<&'static Range> {
    static TABLE: LazyLock<Vec<(String, Range)>> = LazyLock::new(|| rows().iter().filter_map(read).collect());
    TABLE.iter().find(|(name, _)| name == figure).map(|(_, range)| range)
}

fn rows() -> Vec<Row> {
    crate::table::read(include_str!("../../../../assets/water-ranges.csv")).unwrap_or_default()
}

fn read(row: &Row) -> Option<(String, Range)> {
    let (least, most) = (MassPerVolume::parse(&row.least).ok()?, MassPerVolume::parse(&row.most).ok()?);
    Some((row.figure.clone(), Range { least, most, active: row.active.clone(), source: row.source.clone() }))
}

/// What the equation gives for good water: up to here a water needs no conditioner.
pub fn good_water() -> Option<&'static Range> {
    find("good water")
}

/// North Dakota practice for most hard water.
pub fn practice() -> Option<&'static Range> {
    find("practice")
}

/// What labels ask for, for mixes with the active it is printed for.
pub fn labels() -> Option<&'static Range> {
    find("labels")
}

#[cfg(test)]
mod tests {
    use super::{good_water, labels, practice, read, rows};

    #[test]
    fn every_row_reads_and_has_a_source() {
        let rows = rows();
        assert_eq!(rows.len(), 3);
        for row in &rows {
            let (_, range) = read(row).unwrap_or_else(|| panic!("{}", row.figure));
            assert!(!range.source.is_empty() && range.most > range.least, "{}", row.figure);
        }
        assert!([good_water(), practice(), labels()].iter().all(Option::is_some));
    }
}
