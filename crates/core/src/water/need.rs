//! How much ammonium sulfate the ions of a water tie up, by the published equation.

use std::sync::LazyLock;

use serde::Deserialize;

use super::hardness::{CALCIUM, MAGNESIUM};
use crate::farm::Water;
use crate::language::t;
use crate::quantity::number::show;
use crate::quantity::{MassPerVolume, Quantity, Units};
use crate::working::Working;

/// Where the equation is printed.
pub const SOURCE: &str = "Zollinger, NDSU Extension, Crop & Pest Report, 2 July 2015; after Nalewaja and Matysiak 1993";

/// A row of `assets/conditioner-need.csv`.
#[derive(Deserialize)]
struct Row {
    ion: String,
    lb_per_100_gal_per_ppm: f64,
    #[allow(dead_code)] // Read by the test that every row has a source.
    source: String,
}

fn coefficient(ion: &str) -> f64 {
    static TABLE: LazyLock<Vec<Row>> = LazyLock::new(|| {
        crate::table::read(include_str!("../../../../assets/conditioner-need.csv")).unwrap_or_default()
    });
    TABLE.iter().find(|row| row.ion == ion).map_or(0.0, |row| row.lb_per_100_gal_per_ppm)
}

/// An ion of the table, in words.
fn ion(key: &str) -> &'static str {
    match key {
        "calcium" => t!("water-ion-calcium"),
        "magnesium" => t!("water-ion-magnesium"),
        "sodium" => t!("water-ion-sodium"),
        "potassium" => t!("water-ion-potassium"),
        _ => t!("water-ion-iron"),
    }
}

/// Ammonium sulfate that the ions of a water tie up.
#[derive(Clone, Debug, PartialEq)]
pub struct ConditionerNeed {
    /// Without the iron term; the low end where calcium and magnesium are only known together.
    pub without_iron: MassPerVolume,
    /// Without the iron term; the high end, equal to the low one where both ions are known.
    pub without_iron_most: MassPerVolume,
    /// With the iron term, on top of the high end; `None` where the analysis does not state iron.
    pub with_iron: Option<MassPerVolume>,
    /// Ions the analysis does not state, in words.
    pub missing: Vec<&'static str>,
}

impl ConditionerNeed {
    /// The largest of the figures, which is the one to plan with.
    pub fn most(&self) -> MassPerVolume {
        self.with_iron.unwrap_or(self.without_iron_most).max(self.without_iron_most)
    }
}

/// Ammonium sulfate needed to tie up the ions of a water; `None` without calcium, magnesium or hardness.
///
/// # Units
/// lb/100 US gal = 0.002 K + 0.005 Na + 0.009 Ca + 0.014 Mg (+ 0.042 Fe), ions in ppm.
///
/// # Valid range
/// An empirical bioassay equation for glyphosate, not a stoichiometric one. Where only the hardness is stated, the split
/// into calcium and magnesium is unknown and the answer is a range.
///
/// # References
/// R. Zollinger, NDSU Extension, Crop & Pest Report, 2 July 2015, with the iron term; J. D. Nalewaja and R. Matysiak,
/// Weed Technology 7 (1993), without it.
pub fn need(water: &Water) -> Option<ConditionerNeed> {
    let ppm =
        |ion: &Option<crate::quantity::AsTyped<crate::quantity::IonContent>>| ion.as_ref().map(|ion| ion.to_ppm());
    let (calcium, magnesium) = (ppm(&water.calcium), ppm(&water.magnesium));
    let mut missing = Vec::new();
    let (hard_least, hard_most) = match (calcium, magnesium, &water.hardness) {
        (Some(calcium), Some(magnesium), _) => {
            let both = coefficient("calcium") * calcium + coefficient("magnesium") * magnesium;
            (both, both)
        }
        (Some(calcium), None, Some(stated)) => {
            let rest = ((stated.to_ppm() - CALCIUM * calcium) / MAGNESIUM).max(0.0);
            let both = coefficient("calcium") * calcium + coefficient("magnesium") * rest;
            (both, both)
        }
        (None, Some(magnesium), Some(stated)) => {
            let rest = ((stated.to_ppm() - MAGNESIUM * magnesium) / CALCIUM).max(0.0);
            let both = coefficient("calcium") * rest + coefficient("magnesium") * magnesium;
            (both, both)
        }
        (None, None, Some(stated)) => {
            let all_calcium = coefficient("calcium") * stated.to_ppm() / CALCIUM;
            let all_magnesium = coefficient("magnesium") * stated.to_ppm() / MAGNESIUM;
            (all_calcium.min(all_magnesium), all_calcium.max(all_magnesium))
        }
        (Some(calcium), None, None) => {
            missing.push(ion("magnesium"));
            (coefficient("calcium") * calcium, coefficient("calcium") * calcium)
        }
        (None, Some(magnesium), None) => {
            missing.push(ion("calcium"));
            (coefficient("magnesium") * magnesium, coefficient("magnesium") * magnesium)
        }
        (None, None, None) => return None,
    };
    let mut others = 0.0;
    for (name, content) in [("sodium", ppm(&water.sodium)), ("potassium", ppm(&water.potassium))] {
        match content {
            Some(content) => others += coefficient(name) * content,
            None => missing.push(ion(name)),
        }
    }
    let iron = ppm(&water.iron);
    if iron.is_none() {
        missing.push(ion("iron"));
    }
    let per_100 = MassPerVolume::from_pounds_per_100_us_gallons;
    Some(ConditionerNeed {
        without_iron: per_100(hard_least + others),
        without_iron_most: per_100(hard_most + others),
        with_iron: iron.map(|iron| per_100(hard_most + others + coefficient("iron") * iron)),
        missing,
    })
}

/// How the need was found.
pub(crate) fn working(water: &Water, need: &ConditionerNeed, units: Units) -> Working {
    let mut working = Working::new(t!("water-ammonium-sulfate-tied-up-by", name = water.name));
    let ions = [
        ("potassium", &water.potassium),
        ("sodium", &water.sodium),
        ("calcium", &water.calcium),
        ("magnesium", &water.magnesium),
    ];
    for (name, content) in ions {
        if let Some(content) = content {
            let factor = coefficient(name);
            working = working.step(
                t!("water-ppm-of-an-ion", factor = factor, ppm = show(content.to_ppm(), 2), ion = ion(name)),
                format!("{} lb/100 gal", show(factor * content.to_ppm(), 3)),
            );
        }
    }
    if need.without_iron == need.without_iron_most {
        working = working.step(t!("water-without-iron"), need.without_iron.show(units));
    } else {
        working = working
            .step(t!("water-hardness-all-calcium-or-all-magnesium"), need.without_iron.show(units))
            .step(t!("water-most"), need.without_iron_most.show(units));
    }
    if let (Some(iron), Some(with)) = (&water.iron, need.with_iron) {
        working = working.step(t!("water-0-042-ppm-iron", show = show(iron.to_ppm(), 2)), with.show(units));
    }
    working
}

#[cfg(test)]
mod tests {
    use super::Row;

    #[test]
    fn five_ions_each_with_a_source() {
        let rows: Vec<Row> = crate::table::read(include_str!("../../../../assets/conditioner-need.csv")).unwrap();
        assert_eq!(rows.len(), 5);
        assert!(rows.iter().all(|row| !row.source.is_empty() && row.lb_per_100_gal_per_ppm > 0.0));
    }
}
