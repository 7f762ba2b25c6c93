//! Time over a measured course, for the speed.
//!
//! # References
//! Montana State University (Tharp) and Utah State University, NR/RM/05, 2001: miles an hour are feet × 60 ÷ (seconds × 88).

use super::{Calibrated, Measured, against, apart, beyond, limits, seconds, speed_of};
use crate::finding::Finding;
use crate::quantity::{AsTyped, Duration, Length, Quantity, Speed};
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
    if length.is_zero() {
        out.findings.push(
            measured
                .lacks("The course has no length, so the speed is not known", "Type its length, such as \"300 ft\"."),
        );
        return;
    }
    if times.is_empty() || times.iter().any(|time| time.is_zero()) {
        out.findings.push(measured.lacks(
            "A run over the course has no time, so the speed is not known",
            "Type how long each run took, such as \"41 s\".",
        ));
        return;
    }
    let total: Duration = times.iter().map(AsTyped::value).sum();
    let mean = total * (1.0 / f64::from(u32::try_from(times.len()).unwrap_or(u32::MAX)));
    let Some(speed) = speed_of(length, mean) else { return };
    out.speed = Some(speed);
    let mut working = Working::new("Speed over a course")
        .step(format!("mean of {} run{}", times.len(), if times.len() == 1 { "" } else { "s" }), seconds(mean))
        .step(format!("{} ÷ {}", length.show(units), seconds(mean)), speed.show(units));
    if let Some(shown) = shown {
        out.against_typed = against(shown.ratio(speed));
        if let (Some(off), Some(limit)) = (out.against_typed, limits::of("speed").next()) {
            working = working.step(format!("{} shown in the cab, against it", shown.show(units)), apart(off));
            if beyond(off, limit.share()) {
                out.findings.push(
                    Finding::check(
                        measured.about.clone(),
                        format!(
                            "The cab showed {}; the course gives {}, so what it shows is {} off",
                            shown.show(units),
                            speed.show(units),
                            apart(off)
                        ),
                        limit.basis(),
                    )
                    .hint("Set the speed sensor or the wheel size anew, and drive the course again."),
                );
            }
        }
    }
    out.workings.push(working);
}
