//! What one order has over another, in words.

use super::order::{Cost, Second};
use crate::quantity::{Duration, Quantity, Units};

/// A small number in a word.
pub(super) fn count(number: u32) -> String {
    let words =
        ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];
    words.get(number as usize).map_or_else(|| number.to_string(), |word| (*word).to_owned())
}

/// "one pass", "two passes".
fn passes(number: u32) -> String {
    format!("{} pass{}", count(number), if number == 1 { "" } else { "es" })
}

/// A time in seconds as people read it; below half a minute it is less than a minute.
pub(super) fn time(seconds: Second, units: Units) -> String {
    if seconds < 30 {
        return "less than a minute".to_owned();
    }
    duration(seconds).show(units)
}

/// A length of the line of time as a quantity.
pub(super) fn duration(seconds: Second) -> Duration {
    Duration::from_seconds(seconds as f64)
}

/// What the cheaper of two orders has over the other: "one clean-out fewer". The first that differs decides; `None` where none does.
pub(super) fn gain(cheaper: Cost, other: Cost, units: Units) -> Option<String> {
    let part = |of: fn(&Cost) -> u32| of(&other).checked_sub(of(&cheaper)).filter(|more| *more > 0);
    Some(if let Some(more) = part(|cost| cost.left_out) {
        format!("{} more find{} a place", passes(more), if more == 1 { "s" } else { "" })
    } else if let Some(more) = part(|cost| cost.parted) {
        format!("{} more right after what leaves {} spray", passes(more), if more == 1 { "its" } else { "their" })
    } else if let Some(more) = part(|cost| cost.doubtful) {
        format!("{} fewer in doubtful hours", passes(more))
    } else if let Some(more) = part(|cost| cost.hurts) {
        format!("{} fewer after a mix that hurts the crop", passes(more))
    } else if let Some(more) = part(|cost| cost.clean_outs) {
        format!("{} clean-out{} fewer", count(more), if more == 1 { "" } else { "s" })
    } else if other.changes > cheaper.changes {
        format!("{} less for cleaning and road", time(other.changes - cheaper.changes, units))
    } else if other.ends > cheaper.ends {
        format!("home {} sooner", time(other.ends - cheaper.ends, units))
    } else {
        return None;
    })
}

/// What the dearer of two orders costs more than the best: "one clean-out more, home 35 min later than in the best order".
pub(super) fn loss(best: Cost, dearer: Cost, units: Units) -> Option<String> {
    let part = |of: fn(&Cost) -> u32| of(&dearer).checked_sub(of(&best)).filter(|more| *more > 0);
    let first = if let Some(more) = part(|cost| cost.left_out) {
        Some(format!("{} more without a place", passes(more)))
    } else if let Some(more) = part(|cost| cost.parted) {
        let its = if more == 1 { "its" } else { "their" };
        Some(format!(
            "{} more that do{} not come right after what leaves {its} spray",
            passes(more),
            if more == 1 { "es" } else { "" }
        ))
    } else if let Some(more) = part(|cost| cost.doubtful) {
        Some(format!("{} more in doubtful hours", passes(more)))
    } else if let Some(more) = part(|cost| cost.hurts) {
        Some(format!("{} more after a mix that hurts the crop", passes(more)))
    } else if let Some(more) = part(|cost| cost.clean_outs) {
        Some(format!("{} clean-out{} more", count(more), if more == 1 { "" } else { "s" }))
    } else if dearer.changes > best.changes {
        Some(format!("{} more for cleaning and road", time(dearer.changes - best.changes, units)))
    } else {
        None
    };
    // Where fewer passes are sprayed, being home sooner is no merit, and later says nothing.
    let home = (dearer.left_out == best.left_out && dearer.ends > best.ends)
        .then(|| format!("home {} later", time(dearer.ends - best.ends, units)));
    let parts: Vec<String> = first.into_iter().chain(home).collect();
    (!parts.is_empty()).then(|| format!("{} than in the best order", parts.join(", ")))
}

#[cfg(test)]
mod tests {
    use super::{Cost, gain, loss};
    use crate::quantity::Units;

    #[test]
    fn the_first_that_differs_is_told() {
        let best = Cost { clean_outs: 1, changes: 3600, ends: 50_000, ..Cost::default() };
        let units = Units::Metric;
        let told = |other| (gain(best, other, units).unwrap_or_default(), loss(best, other, units).unwrap_or_default());
        assert_eq!(told(best), (String::new(), String::new()));
        let two = |one: &str, other: &str| (one.to_owned(), format!("{other} than in the best order"));
        assert_eq!(
            told(Cost { clean_outs: 2, ends: 52_100, ..best }),
            two("one clean-out fewer", "one clean-out more, home 35 min later")
        );
        assert_eq!(
            told(Cost { changes: 4320, ..best }),
            two("12 min less for cleaning and road", "12 min more for cleaning and road")
        );
        assert_eq!(told(Cost { ends: 53_600, ..best }), two("home 1 h sooner", "home 1 h later"));
        assert_eq!(
            told(Cost { left_out: 2, ends: 60_000, ..best }),
            two("two passes more find a place", "two passes more without a place")
        );
        assert_eq!(
            told(Cost { doubtful: 1, ..best }),
            two("one pass fewer in doubtful hours", "one pass more in doubtful hours")
        );
        assert_eq!(
            told(Cost { parted: 1, ends: 40_000, ..best }),
            two(
                "one pass more right after what leaves its spray",
                "one pass more that does not come right after what leaves its spray"
            )
        );
        assert!(gain(Cost { clean_outs: 2, ..best }, best, units).is_none());
    }
}
