//! Time over a measured course, for the speed.
//!
//! # References
//! Montana State University (Tharp) and Utah State University, NR/RM/05, 2001: miles an hour are feet × 60 ÷ (seconds × 88).

use super::{Calibrated, Measured, against, apart, beyond, limits, seconds, speed_of};
use crate::finding::Finding;
use crate::language::t;
use crate::quantity::{AsTyped, Duration, Length, Quantity, Speed, Units};
use crate::working::Working;

/// Speed is the length ÷ the mean of the times.
pub(crate) fn judge(
    measured: &Measured,
    length: Length,
    times: &[AsTyped<Duration>],
    shown: Option<Speed>,
    out: &mut Calibrated,
) {
    let units = measured.units;
    let metric = units == Units::Metric;
    if length.is_zero() {
        out.findings.push(measured.lacks(
            t!("rig-the-course-has-no-length-so"),
            &t!("rig-type-its-length-such-as-300", example = if metric { "100 m" } else { "300 ft" }),
        ));
        return;
    }
    if times.is_empty() || times.iter().any(|time| time.is_zero()) {
        out.findings.push(measured.lacks(t!("rig-a-run-over-the-course-has"), t!("rig-type-how-long-each-run-took")));
        return;
    }
    let total: Duration = times.iter().map(AsTyped::value).sum();
    let mean = total * (1.0 / f64::from(u32::try_from(times.len()).unwrap_or(u32::MAX)));
    let Some(speed) = speed_of(length, mean) else { return };
    out.speed = Some(speed);
    let mut working = Working::new(t!("rig-speed-over-a-course"))
        .step(t!("rig-mean-of-run", times = times.len()), seconds(mean))
        .step(format!("{} ÷ {}", length.show(units), seconds(mean)), speed.show(units));
    if let Some(shown) = shown {
        out.against_typed = against(shown.ratio(speed));
        if let (Some(off), Some(limit)) = (out.against_typed, limits::of("speed").next()) {
            working = working.step(t!("rig-shown-in-the-cab-against-it", shown = shown.show(units)), apart(off));
            if beyond(off, limit.share()) {
                out.findings.push(
                    Finding::check(
                        measured.about.clone(),
                        t!(
                            "rig-the-cab-showed-the-course-gives",
                            shown = shown.show(units),
                            speed = speed.show(units),
                            off = apart(off)
                        ),
                        limit.basis(),
                    )
                    .hint(t!("rig-set-the-speed-sensor-or-the")),
                );
            }
        }
    }
    out.workings.push(working);
}
