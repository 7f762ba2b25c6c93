//! Fertilizer in the place of water: what may not go into it, what it brings, and what must be done before.
//!
//! What single products do in it stands in `assets/pairs.csv`; what their labels say of it is judged with the labels.

use super::pairs::{InTank, in_tank};
use crate::farm::{AdjuvantClass, CarrierKind, Farm, Field, Formulation, Id, Pass, ProductKind, crop};
use crate::finding::{Basis, Finding, Subject};
use crate::label::stage;
use crate::language::t;
use crate::mix::line::PlannedLine;
use crate::plan::PlannedField;
use crate::quantity::{CarrierRate, Density, MassPerArea, MassPerVolume, Quantity, Units};

/// Where the density of nitrogen solutions is printed.
const DENSITIES: &str = "University of Nebraska-Lincoln, CropWatch, 2016, spray carriers other than water";
/// Where the limits on emerged corn are.
const LIMITS: &str = "Iowa State University (Sawyer and Hartzler), 2007 and 2015";
/// Where the full carrier on emerged corn is.
const FULL_CARRIER: &str = "University of Illinois, Pest Management & Crop Development Bulletin, 25 May 2001";

/// Judges a mix whose carrier is a fertilizer.
pub(crate) fn judge(
    farm: &Farm,
    pass_id: &Id,
    pass: &Pass,
    fields: &[PlannedField],
    lines: &[PlannedLine],
    carrier: CarrierRate,
    findings: &mut Vec<Finding>,
) {
    if pass.carrier_kind == CarrierKind::Water {
        return;
    }
    let tank = in_tank(farm, lines);
    agent(pass_id, pass.carrier_kind, &tank, findings);
    dry(pass.carrier_kind, &tank, findings);
    if pass.carrier_kind == CarrierKind::UreaAmmoniumNitrate {
        ammonium(&tank, findings);
        let herbicide = tank.iter().any(|held| held.product.kind == ProductKind::Herbicide);
        for (id, field) in fields.iter().filter_map(|planned| farm.fields.get_key_value(&planned.field)) {
            corn(id, field, carrier, herbicide, farm.units, findings);
        }
    }
}

fn agent(pass_id: &Id, kind: CarrierKind, tank: &[InTank<'_>], findings: &mut Vec<Finding>) {
    if tank.is_empty()
        || tank.iter().any(|held| held.product.adjuvant_class() == Some(AdjuvantClass::CompatibilityAgent))
    {
        return;
    }
    findings.push(
        Finding::check(
            Subject::Pass(pass_id.clone()),
            t!("mix-the-carrier-is-and-no-compatibility", kind = kind.name()),
            Basis::Published(t!("mix-university-of-arizona-kopec-may-1999").to_owned()),
        )
        .hint(t!("mix-make-a-jar-test-with-this")),
    );
}

fn dry(kind: CarrierKind, tank: &[InTank<'_>], findings: &mut Vec<Finding>) {
    for held in tank {
        let about = Subject::Product(held.id.clone());
        let (name, carrier) = (&held.product.name, kind.name());
        match held.product.formulation {
            Formulation::WSP => findings.push(
                Finding::check(
                    about,
                    t!("mix-comes-in-water-soluble-bags-which", name = name, carrier = carrier),
                    Basis::Published(t!("mix-manitoba-guide-to-crop-protection-via").to_owned()),
                )
                .hint(t!("mix-dissolve-the-bags-in-water-first")),
            ),
            // Salts of conditioners dissolve by themselves or are spoken of elsewhere.
            formulation if !formulation.is_liquid() && held.product.kind.is_pesticide() => findings.push(
                Finding::note(
                    about,
                    t!("mix-is-dry-it-disperses-in-water", name = name, carrier = carrier),
                    Basis::Practice,
                )
                .hint(t!("mix-mix-it-with-water-to-a")),
            ),
            _ => {}
        }
    }
}

fn ammonium(tank: &[InTank<'_>], findings: &mut Vec<Finding>) {
    for held in tank.iter().filter(|held| held.product.adjuvant_class().is_some_and(AdjuvantClass::holds_ammonium)) {
        findings.push(
            Finding::note(
                Subject::Product(held.id.clone()),
                t!("mix-the-carrier-brings-ammonium-already-may", name = held.product.name),
                Basis::Practice,
            )
            .hint(t!("mix-leave-it-out-unless-a-label")),
        );
    }
}

/// Nitrogen that a carrier rate of a solution puts on the ground.
fn nitrogen(carrier: CarrierRate, density: Density, percent: f64) -> MassPerArea {
    let content = density.to_kilograms_per_cubic_metre() * percent / 100.0;
    carrier.content(MassPerVolume::from_grams_per_litre(content))
}

/// The limits on emerged corn. The grade of the solution is not typed, so both usual grades are shown and none is chosen.
fn corn(id: &Id, field: &Field, carrier: CarrierRate, herbicide: bool, units: Units, findings: &mut Vec<Finding>) {
    let is_corn = crop::words(&field.crop).iter().any(|word| word == "corn" || word == "maize");
    // "BBCH 10" is the first leaf through the coleoptile.
    let emerged = stage::within(&field.crop, &field.stage, "VE", "")
        .or_else(|| stage::within(&field.crop, &field.stage, "BBCH 10", ""));
    if !is_corn || emerged == Some(false) {
        return;
    }
    let about = || Subject::Field(id.clone());
    let stage = if field.stage.trim().is_empty() { t!("mix-a-stage-that-is-not-typed") } else { field.stage.trim() };
    if herbicide {
        findings.push(
            Finding::check(
                about(),
                t!("mix-is-corn-at-labels-of-herbicides", name = field.name, stage = stage),
                Basis::Published(FULL_CARRIER.to_owned()),
            )
            .hint(t!("mix-look-at-every-label-a-few")),
        );
    }
    let weak = nitrogen(carrier, Density::from_pounds_per_us_gallon(10.65), 28.0);
    let strong = nitrogen(carrier, Density::from_pounds_per_us_gallon(11.06), 32.0);
    let within = |from, to| stage::within(&field.crop, &field.stage, from, to) == Some(true);
    let most = if within("V3", "V4") {
        Some(MassPerArea::from_pounds_per_acre(90.0))
    } else if within("V5", "V7") {
        Some(MassPerArea::from_pounds_per_acre(60.0))
    } else if within("V8", "") {
        Some(MassPerArea::ZERO)
    } else {
        None
    };
    let text = t!(
        "mix-bring-of-nitrogen-as-28-solution",
        name = field.name,
        carrier = carrier.show(units),
        weak = weak.show(units),
        strong = strong.show(units),
        from_pounds_per_acre = MassPerArea::from_pounds_per_acre(90.0).show(units),
        from_pounds_per_acre2 = MassPerArea::from_pounds_per_acre(60.0).show(units)
    );
    let basis = Basis::Published(t!("mix-densities", limits = LIMITS, densities = DENSITIES));
    findings.push(if most.is_some_and(|most| !strong.exceeds(most)) {
        Finding::note(about(), text, basis)
    } else {
        Finding::check(about(), text, basis).hint(t!("mix-look-at-the-grade-of-your"))
    });
}
