//! The 1/128-acre method: a fluid ounce caught in the time that the course takes is a gallon to the acre.
//!
//! # References
//! Utah State University, Horticulture/Vegetables 2014-03; Louisiana State University AgCenter (Barbosa, Koske, Parish):
//! 43,560 ft² ÷ 128 = 340.3125 ft², often printed as 340.

use super::wear::{self, Given};
use super::{Calibrated, Measured, flow_of, seconds, speed_of};
use crate::finding::{Basis, Finding};
use crate::language::t;
use crate::quantity::{Area, AsTyped, CarrierRate, Duration, Length, Quantity, Volume};
use crate::rig::flow::width_together;
use crate::working::Working;

/// The ground of the method.
pub fn acre_fraction() -> Area {
    Area::from_acres(1.0 / 128.0)
}

/// How long the course is for a width: the spacing of the nozzles, the band, or the row whose nozzles are caught together.
/// `None` for no width.
///
/// # Examples
/// ```
/// use tankard_core::quantity::Length;
/// use tankard_core::rig::calibration::acre_course;
/// let course = acre_course(Length::from_inches(20.0)).map(|course| course.to_feet());
/// assert!(course.is_some_and(|feet| (feet - 204.1875).abs() < 1e-9));
/// ```
pub fn acre_course(width: Length) -> Option<Length> {
    (!width.is_zero()).then(|| Length::from_metres(acre_fraction().to_square_metres() / width.to_metres()))
}

/// Volume over ground is what was caught ÷ 1/128 acre; the course ÷ the time is the speed.
pub(crate) fn judge(measured: &Measured, time: Duration, caught: &[AsTyped<Volume>], out: &mut Calibrated) {
    let units = measured.units;
    if time.is_zero() {
        out.findings
            .push(measured.lacks(t!("rig-the-course-was-driven-in-no"), t!("rig-type-how-long-the-course-took")));
        return;
    }
    let total: Volume = caught.iter().map(AsTyped::value).sum();
    let count = u32::try_from(caught.len()).unwrap_or(u32::MAX);
    if total.is_zero() {
        out.findings
            .push(measured.lacks(t!("rig-nothing-was-caught-in-the-time"), t!("rig-type-what-one-nozzle-or-all")));
        return;
    }
    let layout = measured.set.and_then(|set| set.layout.as_ref()).map(width_together);
    let mean = total * (1.0 / f64::from(count));
    out.carrier =
        mean.spread(acre_fraction()).map(|rate| CarrierRate::from_litres_per_hectare(rate.to_litres_per_hectare()));
    let mut working = Working::new(t!("rig-1-128-acre"));
    let course = layout.and_then(|(width, _)| acre_course(width).map(|course| (width, course)));
    if let Some((width, course)) = course {
        working = working.step(format!("1/128 ac ÷ {}", width.show(units)), course.show(units));
        out.speed = speed_of(course, time);
        if let Some(speed) = out.speed {
            working = working.step(format!("÷ {}", seconds(time)), speed.show(units));
        }
    } else {
        out.findings.push(
            Finding::note(measured.about.clone(), t!("rig-how-far-the-nozzles-stand-apart"), Basis::Arithmetic)
                .hint(t!("rig-type-how-the-nozzles-of-the")),
        );
    }
    if let Some(carrier) = out.carrier {
        working = working.step(format!("{} ÷ 1/128 ac", mean.show(units)), carrier.show(units));
    }
    // Where a row has several nozzles, what was caught of a row comes from all of them.
    let together = layout.map_or(1, |(_, nozzles)| nozzles.max(1));
    if together > 1 {
        out.findings.push(Finding::note(
            measured.about.clone(),
            t!("rig-each-figure-is-taken-for-what", together = together),
            Basis::Arithmetic,
        ));
    }
    let given: Vec<Given> = caught
        .iter()
        .enumerate()
        .filter_map(|(at, volume)| {
            let flow = flow_of(volume.value(), time)?;
            Some(Given { place: at + 1, flow: flow * (1.0 / f64::from(together)) })
        })
        .collect();
    wear::judge(measured, &given, if together > 1 { "row" } else { "nozzle" }, working, out);
}
