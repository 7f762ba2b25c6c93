//! How much ammonium sulfate the ions of a water tie up, and what the labels of the mix ask for.

use std::sync::LazyLock;

use serde::Deserialize;

use super::WaterPlan;
use super::hardness::{CALCIUM, MAGNESIUM};
use crate::farm::label::{Says, Stance};
use crate::farm::product::AdjuvantClass;
use crate::farm::{Farm, Field, Water};
use crate::finding::{Basis, Finding, Subject};
use crate::mix::line::PlannedLine;
use crate::quantity::number::show;
use crate::quantity::{Amount, CarrierRate, MassPerVolume, Quantity, Rate, Units, Volume};
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

/// Ammonium sulfate that the ions of a water tie up.
#[derive(Clone, Debug, PartialEq)]
pub struct ConditionerNeed {
    /// Without the iron term; the low end where calcium and magnesium are only known together.
    pub without_iron: MassPerVolume,
    /// Without the iron term; the high end, equal to the low one where both ions are known.
    pub without_iron_most: MassPerVolume,
    /// With the iron term, on top of the high end; `None` where the analysis does not state iron.
    pub with_iron: Option<MassPerVolume>,
    /// Ions the analysis does not state.
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
            missing.push("magnesium");
            (coefficient("calcium") * calcium, coefficient("calcium") * calcium)
        }
        (None, Some(magnesium), None) => {
            missing.push("calcium");
            (coefficient("magnesium") * magnesium, coefficient("magnesium") * magnesium)
        }
        (None, None, None) => return None,
    };
    let mut others = 0.0;
    for (name, content) in [("sodium", ppm(&water.sodium)), ("potassium", ppm(&water.potassium))] {
        match content {
            Some(content) => others += coefficient(name) * content,
            None => missing.push(name),
        }
    }
    let iron = ppm(&water.iron);
    if iron.is_none() {
        missing.push("iron");
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
    let mut working = Working::new(format!("Ammonium sulfate tied up by {}", water.name));
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
                format!("{factor} × {} ppm {name}", show(content.to_ppm(), 2)),
                format!("{} lb/100 gal", show(factor * content.to_ppm(), 3)),
            );
        }
    }
    if need.without_iron == need.without_iron_most {
        working = working.step("without iron", need.without_iron.show(units));
    } else {
        working = working
            .step("hardness all calcium or all magnesium, least", need.without_iron.show(units))
            .step("most", need.without_iron_most.show(units));
    }
    if let (Some(iron), Some(with)) = (&water.iron, need.with_iron) {
        working = working.step(format!("+ 0.042 × {} ppm iron", show(iron.to_ppm(), 2)), with.show(units));
    }
    working
}

/// Sets what the labels of the mix ask for beside what the water needs and what the mix holds.
pub(crate) fn judge(
    farm: &Farm,
    fields: &[&Field],
    lines: &[PlannedLine],
    carrier: CarrierRate,
    water: &mut WaterPlan,
    findings: &mut Vec<Finding>,
) {
    let held = held(farm, lines, carrier);
    // A solution whose content is not typed: there is some, but nobody knows how much.
    let untold = lines
        .iter()
        .filter_map(|line| Some((line, farm.products.get(&line.product)?)))
        .find(|(_, product)| {
            product.class == Some(AdjuvantClass::AmmoniumSulfate) && product.is_liquid() && product.actives.is_empty()
        })
        .map(|(line, product)| {
            findings.push(
                Finding::check(
                    Subject::Product(line.product.clone()),
                    format!("How much ammonium sulfate {} holds is not typed, so it is not judged", product.name),
                    Basis::Arithmetic,
                )
                .hint("Type its content in the shed, such as \"3.4 lb/gal\", from its label or its maker."),
            );
        })
        .is_some();
    let need = water.need.as_ref().map(ConditionerNeed::most);
    let mut label_least: Option<(MassPerVolume, String)> = None;
    let mut label_most: Option<MassPerVolume> = None;
    for line in lines {
        let Some(product) = farm.products.get(&line.product) else { continue };
        for statement in &product.label {
            let Says::Adjuvant { class: AdjuvantClass::AmmoniumSulfate, stance, least, most, .. } = &statement.says
            else {
                continue;
            };
            if !fields.iter().any(|field| crate::label::for_crop(statement, field)) {
                continue;
            }
            let basis = || Basis::Label(crate::label::place(product, statement));
            let about = || Subject::Product(line.product.clone());
            if [least, most].into_iter().flatten().any(|rate| in_spray(rate.value(), carrier).is_none()) {
                findings.push(
                    Finding::check(
                        about(),
                        format!("What {} says of ammonium sulfate is no mass, so it is not compared", product.name),
                        basis(),
                    )
                    .hint("Type it like \"8.5 lb/100 gal\"."),
                );
            }
            let least = least.as_ref().and_then(|rate| in_spray(rate.value(), carrier));
            let most = most.as_ref().and_then(|rate| in_spray(rate.value(), carrier));
            match stance {
                Stance::Required | Stance::Preferred if untold => {}
                Stance::Required if held.is_none() => findings.push(Finding::stop(
                    about(),
                    format!("{} requires ammonium sulfate, and the mix has none", product.name),
                    basis(),
                )),
                Stance::Preferred if held.is_none() => findings.push(Finding::check(
                    about(),
                    format!("{} asks for ammonium sulfate, and the mix has none", product.name),
                    basis(),
                )),
                _ => {}
            }
            if let (Some(held), Some(least)) = (held, least)
                && matches!(stance, Stance::Required | Stance::Preferred | Stance::Allowed)
                && least.exceeds(held)
            {
                let text = format!(
                    "{} asks for at least {} of ammonium sulfate; the mix holds {}",
                    product.name,
                    least.show(farm.units),
                    held.show(farm.units)
                );
                findings.push(if *stance == Stance::Required {
                    Finding::stop(about(), text, basis())
                } else {
                    Finding::check(about(), text, basis())
                });
            }
            if let Some(most) = most {
                label_most = Some(label_most.map_or(most, |before| before.min(most)));
            }
            if let (Some(held), Some(most)) = (held, most)
                && held.exceeds(most)
            {
                findings.push(Finding::stop(
                    about(),
                    format!(
                        "{} allows {} of ammonium sulfate at most; the mix holds {}",
                        product.name,
                        most.show(farm.units),
                        held.show(farm.units)
                    ),
                    basis(),
                ));
            }
            if let Some(least) = least
                && matches!(stance, Stance::Required | Stance::Preferred)
                && label_least.as_ref().is_none_or(|(before, _)| least > *before)
            {
                label_least = Some((least, crate::label::place(product, statement)));
            }
        }
    }
    let (Some(need), Some(hardness)) = (need, water.hardness) else { return };
    if let Some(held) = held
        && need.exceeds(held)
    {
        findings.push(
            Finding::check(
                Subject::Water(water.id.clone()),
                format!(
                    "{} ties up {} of ammonium sulfate; the mix holds {}",
                    water.name,
                    need.show(farm.units),
                    held.show(farm.units)
                ),
                Basis::Published(SOURCE.to_owned()),
            )
            .hint("The label of each product decides whether more may be added."),
        );
    }
    let Some((label, at)) = label_least else { return };
    // Whatever the water needs, the labels' most is the most.
    let wanted = need.max(label);
    let recommended = label_most.map_or(wanted, |most| wanted.min(most));
    water.recommended = Some(recommended);
    findings.push(
        Finding::note(
            Subject::Water(water.id.clone()),
            format!(
                "{}, {} hard, ties up {} by its ions; the label asks for {} at least, so plan {}",
                water.name,
                hardness.show(farm.units),
                need.show(farm.units),
                label.show(farm.units),
                recommended.show(farm.units)
            ),
            Basis::Published(format!("{SOURCE}; label of {at}, as typed")),
        )
        .hint("North Dakota practice for most hard water is 4 to 6 lb/100 gal (same page); labels ask for 8.5 to 17. The label governs."),
    );
}

/// The ammonium sulfate that the mix holds, in its spray.
fn held(farm: &Farm, lines: &[PlannedLine], carrier: CarrierRate) -> Option<MassPerVolume> {
    let mut total: Option<f64> = None;
    for line in lines {
        let Some(product) = farm.products.get(&line.product) else { continue };
        if product.class != Some(AdjuvantClass::AmmoniumSulfate) {
            continue;
        }
        // The spray over a hectare, so that both are amounts.
        let area = crate::quantity::Area::from_hectares(1.0);
        let spray: Volume = carrier * area;
        let amount = line.per_area.over(area);
        let content = product.actives.first().map(|active| active.content.value());
        let density = product.density.as_ref().map(crate::quantity::AsTyped::value);
        let mass = match (amount, content) {
            (Amount::Mass(mass), Some(content)) => content.per_mass(density).map(|share| mass * share.to_fraction()),
            (Amount::Mass(mass), None) => Some(mass),
            (Amount::Volume(volume), Some(content)) => content.per_volume(density).map(|content| content * volume),
            (Amount::Volume(_), None) => None,
        };
        if let Some(mass) = mass
            && !spray.is_zero()
        {
            total = Some(total.unwrap_or(0.0) + mass.to_kilograms() / spray.to_cubic_metres());
        }
    }
    total.map(MassPerVolume::from_grams_per_litre)
}

/// A conditioner's rate as a content of the spray.
fn in_spray(rate: Rate, carrier: CarrierRate) -> Option<MassPerVolume> {
    match rate {
        Rate::MassPerSpray(content) | Rate::OuncesPerSpray(content) | Rate::ActivePerSpray(content, _) => Some(content),
        Rate::MassPerArea(mass) | Rate::OuncesPerArea(mass) | Rate::ActivePerArea(mass, _) if !carrier.is_zero() => {
            Some(MassPerVolume::from_grams_per_litre(
                mass.to_kilograms_per_hectare() * 1000.0 / carrier.to_litres_per_hectare(),
            ))
        }
        _ => None,
    }
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
