//! Which calibration holds on a day, and what a pass must know of it.

use jiff::civil::Date;

use super::{judge, set_of};
use crate::farm::{Calibration, Farm, Pass, Rig, Test};
use crate::finding::{Basis, Finding, Level, Subject};
use crate::language::t;
use crate::rig::flow::Law;

/// Whether a calibration was made with a set; one without a set is for the set usually fitted.
fn is_for(rig: &Rig, calibration: &Calibration, set: &str) -> bool {
    match set_of(rig, calibration) {
        Some((id, _)) => id == set,
        None => calibration.set == set,
    }
}

/// The latest of some calibrations of a rig up to and including a day; of two on one day the one typed last.
fn latest_of(rig: &Rig, day: Date, wanted: impl Fn(&Calibration) -> bool) -> Option<&Calibration> {
    rig.calibrations
        .iter()
        .filter(|calibration| calibration.date <= day && wanted(calibration))
        .max_by_key(|calibration| calibration.date)
}

/// The latest calibration of a nozzle set up to and including a day. A speed over a course is none: it says nothing of the
/// nozzles. The id is empty for a rig without sets.
pub fn latest<'a>(rig: &'a Rig, set: &str, day: Date) -> Option<&'a Calibration> {
    latest_of(rig, day, |calibration| !matches!(calibration.test, Test::Course { .. }) && is_for(rig, calibration, set))
}

/// Mean flow of a nozzle as measured last with a set up to and including a day, at which pressure, and when that was. Whether it
/// is used in place of the rating is for the rig to say, [`Rig::measured_flow`].
pub fn measured_flow(farm: &Farm, rig_id: &str, set: &str, day: Date) -> Option<(Law, Date)> {
    let rig = farm.rigs.get(rig_id)?;
    let measured = latest_of(rig, day, |calibration| {
        matches!(calibration.test, Test::Catch { .. } | Test::AcreFraction { .. })
            && calibration.pressure.as_ref().is_some_and(|pressure| !pressure.is_zero())
            && is_for(rig, calibration, set)
    })?;
    let law = Law::new(judge(farm, rig_id, measured).flow?, measured.pressure.as_ref()?.value())?;
    Some((law, measured.date))
}

/// Whether a calibration is too old for a day, and by whose word. Where the farm types no days, one of an earlier year is.
fn old(farm: &Farm, calibration: &Calibration, day: Date) -> Option<(String, Basis)> {
    if let Some(days) = farm.practice.calibration_days {
        let age = day.since(calibration.date).map_or(0, |span| span.get_days());
        return (i64::from(age) > i64::from(days))
            .then(|| (t!("rig-days-before-this-pass-this-farm", age = age, days = days), Basis::Own));
    }
    (calibration.date.year() < day.year()).then(|| (t!("rig-before-this-season-a-rig-is").to_owned(), Basis::Practice))
}

/// What a pass must know of its rig's last calibrations: that there is none, that it is old, that it found something.
pub(crate) fn judge_pass(farm: &Farm, pass: &Pass, findings: &mut Vec<Finding>) {
    let Some(rig) = farm.rigs.get(&pass.rig) else { return };
    let set = crate::rig::set_of(farm, pass);
    let set_id = set.map_or("", |(id, _)| id.as_str());
    let about = || Subject::Rig(pass.rig.clone());
    // A pass that names a set the rig does not have is judged where it is set.
    if set.is_none() && !rig.sets.is_empty() {
        return;
    }
    let with = set.map_or_else(String::new, |(_, set)| t!("rig-with", name = set.name));
    let Some(last) = latest(rig, set_id, pass.date) else {
        if set.is_some() {
            findings.push(
                Finding::note(
                    about(),
                    t!("rig-no-calibration-of-up-to-the", name = rig.name, with = with),
                    Basis::Practice,
                )
                .hint(t!("rig-catch-the-nozzles-or-measure-the")),
            );
        }
        return;
    };
    if let Some((why, basis)) = old(farm, last, pass.date) {
        findings.push(
            Finding::check(
                about(),
                t!("rig-the-last-calibration-of-is-of", name = rig.name, with = with, date = last.date, why = why),
                basis,
            )
            .hint(t!("rig-calibrate-it-before-this-pass-and")),
        );
    }
    // Each way to measure speaks by its latest, so that a tank level does not hide a worn nozzle.
    let kinds: [fn(&Test) -> bool; 4] = [
        |test| matches!(test, Test::Catch { .. }),
        |test| matches!(test, Test::AcreFraction { .. }),
        |test| matches!(test, Test::Course { .. }),
        |test| matches!(test, Test::TankLevel { .. }),
    ];
    for of_kind in kinds {
        let found = latest_of(rig, pass.date, |calibration| {
            of_kind(&calibration.test)
                && (matches!(calibration.test, Test::Course { .. }) || is_for(rig, calibration, set_id))
        });
        let Some(calibration) = found.filter(|calibration| old(farm, calibration, pass.date).is_none()) else {
            continue;
        };
        let said = judge(farm, &pass.rig, calibration).findings;
        let mut weighty = said.iter().filter(|finding| finding.level >= Level::Check);
        let Some(first) = weighty.next() else { continue };
        let more = match weighty.count() {
            0 => String::new(),
            more => t!("rig-and-more", more = more),
        };
        findings.push(
            Finding::check(
                about(),
                t!(
                    "rig-the-calibration-of-of-found",
                    name = rig.name,
                    date = calibration.date,
                    test = calibration.test.name(),
                    text = first.text,
                    more = more
                ),
                first.basis.clone(),
            )
            .hint(t!("rig-mend-it-and-calibrate-again-the")),
        );
    }
}
