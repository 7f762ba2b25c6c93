//! What it takes to fill the tank up again after a measured piece of ground.

use super::{Calibrated, Measured, against, apart, beyond, limits};
use crate::farm::Layout;
use crate::finding::{Basis, Finding};
use crate::quantity::number::show;
use crate::quantity::{Area, CarrierRate, Quantity, Volume};
use crate::working::Working;

/// Volume over ground is what was used ÷ the ground.
pub(crate) fn judge(measured: &Measured, area: Area, used: Volume, set_to: Option<CarrierRate>, out: &mut Calibrated) {
    let units = measured.units;
    if used.is_zero() {
        out.findings.push(measured.lacks("Nothing was sprayed", "Type what it took to fill the tank up again."));
        return;
    }
    let Some(rate) = used.spread(area) else {
        out.findings.push(measured.lacks(
            "No ground was sprayed, so the volume over ground is not known",
            "Type the ground that was sprayed, such as \"2 ac\".",
        ));
        return;
    };
    let carrier = CarrierRate::from_litres_per_hectare(rate.to_litres_per_hectare());
    out.carrier = Some(carrier);
    if matches!(measured.set.and_then(|set| set.layout.as_ref()), Some(Layout::Band { .. })) {
        out.findings.push(Finding::note(
            measured.about.clone(),
            "The ground is taken for that in the bands alone, as rates are in band spraying",
            Basis::Arithmetic,
        ));
    }
    let mut working =
        Working::new("Tank level").step(format!("{} ÷ {}", used.show(units), area.show(units)), carrier.show(units));
    if let Some(set_to) = set_to {
        out.against_typed = against(carrier.ratio(set_to));
        match (out.against_typed, limits::of("volume").next()) {
            (Some(off), Some(limit)) => {
                working = working.step(format!("against {}, as it was set", set_to.show(units)), apart(off));
                if beyond(off, limit.share()) {
                    out.findings.push(
                        Finding::check(
                            measured.about.clone(),
                            format!(
                                "The rig gave {} where it was set to {}, {}; the survey that this is held against counts a \
                                 sprayer as accurate within {} %",
                                carrier.show(units),
                                set_to.show(units),
                                apart(off),
                                show(limit.share().to_percent(), 1)
                            ),
                            limit.basis(),
                        )
                        .hint("Look at speed, pressure and nozzles, mend what is off, and measure again."),
                    );
                }
            }
            _ => out.findings.push(measured.lacks(
                "The rig was set to no volume over ground",
                "Type what it was set to, such as \"15 gal/ac\", or clear it.",
            )),
        }
    }
    out.workings.push(working);
}
