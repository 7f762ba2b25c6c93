//! What each nozzle, or a sample of them, gives in a time.

use super::wear::{self, Given};
use super::{Calibrated, Measured, flow_of, seconds};
use crate::quantity::{AsTyped, Duration, Quantity, Volume};
use crate::working::Working;

/// Flow of each nozzle: volume ÷ time.
pub(crate) fn judge(measured: &Measured, time: Duration, caught: &[Option<AsTyped<Volume>>], out: &mut Calibrated) {
    if time.is_zero() {
        out.findings.push(measured.lacks(
            "The nozzles were caught for no time, so their flow is not known",
            "Type how long each nozzle was caught, such as \"30 s\".",
        ));
        return;
    }
    let all: Vec<(usize, Volume)> = caught
        .iter()
        .enumerate()
        .filter_map(|(at, caught)| caught.as_ref().map(|volume| (at + 1, volume.value())))
        .collect();
    let total: Volume = all.iter().map(|(_, volume)| *volume).sum();
    if total.is_zero() {
        out.findings.push(measured.lacks(
            "Nothing was caught at any nozzle",
            "Type what each nozzle gave, such as \"32 fl oz\" or \"900 mL\".",
        ));
        return;
    }
    if let Some(count) = measured.set.and_then(|set| set.count).and_then(|count| usize::try_from(count).ok())
        && caught.len() > count
    {
        out.findings.push(measured.lacks(
            format!("{} nozzles are typed as caught; the set has {count}", caught.len()),
            "Mend the number of nozzles of the set, or take out what was not caught.",
        ));
    }
    let given: Vec<Given> = all
        .iter()
        .filter_map(|(place, volume)| flow_of(*volume, time).map(|flow| Given { place: *place, flow }))
        .collect();
    let working = Working::new("Catch at the nozzles").step(
        format!("{} from {}, each in {}", total.show(measured.units), all.len(), seconds(time)),
        "flow is volume ÷ time",
    );
    wear::judge(measured, &given, "nozzle", working, out);
}
