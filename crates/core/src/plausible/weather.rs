//! Weather that was measured or is expected: against what is sprayed in anywhere, and against the forecast that was kept with a record.

use super::confusions::Kind;
use super::{Held, Measured, Slot, ranges};
use crate::farm::{Farm, Id, Pass, Reading, Record};
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;
use crate::quantity::{AsTyped, Quantity, Speed, Temperature, Units};

/// So many degrees Celsius beside what was expected, the air is doubted. Common practice, no source.
const AIR_OFF: f64 = 15.0;
/// And no farther off is what is offered.
const AIR_NEAR: f64 = 6.0;

/// The warmest air that is expected of a pass.
pub(super) fn of_pass(farm: &Farm, id: &Id, pass: &Pass) -> Option<Finding> {
    let typed = pass.growing.air.as_ref()?;
    let what = t!("plausible-the-warmest-air-of-the-pass").to_owned();
    air(typed, Slot::PassAir(id.clone()), Subject::Pass(id.clone()), what, farm.units, None)
}

/// What was measured of a record.
pub(super) fn of_record(farm: &Farm, id: &Id, record: &Record, findings: &mut Vec<Finding>) {
    let before = findings.len();
    let expected = record.expected.as_ref();
    for (at, Reading { temperature, wind, gust, .. }) in record.all_readings().enumerate() {
        let slot = |what| Slot::Measured { record: id.clone(), reading: at.checked_sub(1), what };
        let about = || Subject::Record(id.clone());
        if let Some(typed) = &temperature {
            let expected = expected.and_then(|expected| expected.temperature.as_ref());
            let expected = expected.map(|(cold, warm)| (cold.value(), warm.value()));
            findings.extend(air(
                typed,
                slot(Measured::Air),
                about(),
                t!("plausible-the-air-of", name = record.name),
                farm.units,
                expected,
            ));
        }
        if let Some(typed) = &wind {
            let what = t!("plausible-the-wind-of-record", name = record.name);
            findings.extend(blows(typed, slot(Measured::Wind), about(), what, farm.units));
        }
        if let Some(typed) = &gust {
            let what = t!("plausible-the-gust-of", name = record.name);
            findings.extend(blows(typed, slot(Measured::Gust), about(), what, farm.units));
        }
    }
    if record.signed.is_some() {
        // A signed record is amended, not edited.
        for finding in findings.iter_mut().skip(before) {
            finding.offers.clear();
            t!("plausible-it-is-signed-amend-it-in").clone_into(&mut finding.hint);
        }
    }
}

fn air(
    typed: &AsTyped<Temperature>,
    slot: Slot,
    about: Subject,
    what: String,
    units: Units,
    expected: Option<(Temperature, Temperature)>,
) -> Option<Finding> {
    let held = Held { kind: Kind::Temperature, typed, slot, about, what, units };
    let Some((cold, warm)) = expected else { return held.against(ranges::air()) };
    let beside = |air: &Temperature, room: f64| {
        air.to_celsius() < cold.to_celsius() - room || air.to_celsius() > warm.to_celsius() + room
    };
    if !beside(&typed.value(), AIR_OFF) {
        return held.against(ranges::air());
    }
    let offers = held.offers(|meant| !beside(meant, AIR_NEAR));
    let why = t!("plausible-to-were-expected", cold = cold.show(units), warm = warm.show(units));
    held.doubted(&why, t!("plausible-be-beside-that"), Basis::Arithmetic, offers)
}

fn blows(typed: &AsTyped<Speed>, slot: Slot, about: Subject, what: String, units: Units) -> Option<Finding> {
    Held { kind: Kind::Speed, typed, slot, about, what, units }.against(ranges::wind())
}
