//! What each nozzle, or a sample of them, gives in a time.

use super::wear::{self, Given};
use super::{Calibrated, Measured, flow_of, seconds};
use crate::language::t;
use crate::quantity::{AsTyped, Duration, Quantity, Volume};
use crate::working::Working;

/// Flow of each nozzle: volume ÷ time.
pub(crate) fn judge(measured: &Measured, time: Duration, caught: &[Option<AsTyped<Volume>>], out: &mut Calibrated) {
    if time.is_zero() {
        out.findings
            .push(measured.lacks(t!("rig-the-nozzles-were-caught-for-no"), t!("rig-type-how-long-each-nozzle-was")));
        return;
    }
    let all: Vec<(usize, Volume)> = caught
        .iter()
        .enumerate()
        .filter_map(|(at, caught)| caught.as_ref().map(|volume| (at + 1, volume.value())))
        .collect();
    let total: Volume = all.iter().map(|(_, volume)| *volume).sum();
    if total.is_zero() {
        out.findings.push(
            measured.lacks(t!("rig-nothing-was-caught-at-any-nozzle"), t!("rig-type-what-each-nozzle-gave-such")),
        );
        return;
    }
    if let Some(count) = measured.set.and_then(|set| set.count).and_then(|count| usize::try_from(count).ok())
        && caught.len() > count
    {
        out.findings.push(measured.lacks(
            t!("rig-nozzles-are-typed-as-caught-the", caught = caught.len(), count = count),
            t!("rig-mend-the-number-of-nozzles-of"),
        ));
    }
    let given: Vec<Given> = all
        .iter()
        .filter_map(|(place, volume)| flow_of(*volume, time).map(|flow| Given { place: *place, flow }))
        .collect();
    let working = Working::new(t!("rig-catch-at-the-nozzles")).step(
        t!("rig-from-each-in", total = total.show(measured.units), all = all.len(), time = seconds(time)),
        t!("rig-flow-is-volume-time"),
    );
    wear::judge(measured, &given, "nozzle", working, out);
}
