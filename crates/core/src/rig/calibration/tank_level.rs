//! What it takes to fill the tank up again after a measured piece of ground.

use super::{Calibrated, Measured, against, apart, beyond, limits};
use crate::farm::Layout;
use crate::finding::{Basis, Finding};
use crate::language::t;
use crate::quantity::number::show;
use crate::quantity::{Area, CarrierRate, Quantity, Units, Volume};
use crate::typed::example;
use crate::working::Working;

/// Volume over ground is what was used ÷ the ground.
pub(crate) fn judge(measured: &Measured, area: Area, used: Volume, set_to: Option<CarrierRate>, out: &mut Calibrated) {
    let units = measured.units;
    let metric = units == Units::Metric;
    if used.is_zero() {
        out.findings.push(measured.lacks(t!("rig-nothing-was-sprayed"), t!("rig-type-what-it-took-to-fill")));
        return;
    }
    let Some(rate) = used.spread(area) else {
        out.findings.push(measured.lacks(
            t!("rig-no-ground-was-sprayed-so-the"),
            &t!("rig-type-the-ground-that-was-sprayed", example = if metric { "1 ha" } else { "2 ac" }),
        ));
        return;
    };
    let carrier = CarrierRate::from_litres_per_hectare(rate.to_litres_per_hectare());
    out.carrier = Some(carrier);
    if matches!(measured.set.and_then(|set| set.layout.as_ref()), Some(Layout::Band { .. })) {
        out.findings.push(Finding::note(
            measured.about.clone(),
            t!("rig-the-ground-is-taken-for-that"),
            Basis::Arithmetic,
        ));
    }
    let mut working = Working::new(t!("rig-tank-level"))
        .step(format!("{} ÷ {}", used.show(units), area.show(units)), carrier.show(units));
    if let Some(set_to) = set_to {
        out.against_typed = against(carrier.ratio(set_to));
        match (out.against_typed, limits::of("volume").next()) {
            (Some(off), Some(limit)) => {
                working = working.step(t!("rig-against-as-it-was-set", set_to = set_to.show(units)), apart(off));
                if beyond(off, limit.share()) {
                    out.findings.push(
                        Finding::check(
                            measured.about.clone(),
                            t!(
                                "rig-the-rig-gave-where-it-was",
                                carrier = carrier.show(units),
                                set_to = set_to.show(units),
                                off = apart(off),
                                show = show(limit.share().to_percent(), 1)
                            ),
                            limit.basis(),
                        )
                        .hint(t!("rig-look-at-speed-pressure-and-nozzles")),
                    );
                }
            }
            _ => out.findings.push(measured.lacks(
                t!("rig-the-rig-was-set-to-no"),
                &t!("rig-type-what-it-was-set-to", example = example::<CarrierRate>(units)),
            )),
        }
    }
    out.workings.push(working);
}
