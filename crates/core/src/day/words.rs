//! What one order has over another, in words.

use super::order::{Cost, Second};
use crate::language::t;
use crate::quantity::{Duration, Quantity, Units};

/// A small number in a word.
pub(super) fn count(number: u32) -> String {
    t!("day-count", number = number)
}

/// "one pass", "two passes".
fn passes(number: u32) -> String {
    t!("day-pass", number = count(number), count = number)
}

/// A time in seconds as people read it; below half a minute it is less than a minute.
pub(super) fn time(seconds: Second, units: Units) -> String {
    if seconds < 30 {
        return t!("day-less-than-a-minute").to_owned();
    }
    duration(seconds).show(units)
}

/// A length of the line of time as a quantity.
pub(super) fn duration(seconds: Second) -> Duration {
    Duration::from_seconds(seconds as f64)
}

/// The first part in which an order costs more than another, and by how much.
enum More {
    LeftOut(u32),
    Parted(u32),
    Doubtful(u32),
    Hurts(u32),
    CleanOuts(u32),
    Changes(Second),
}

impl More {
    fn of(cheaper: Cost, dearer: Cost) -> Option<Self> {
        let part = |of: fn(&Cost) -> u32| of(&dearer).checked_sub(of(&cheaper)).filter(|more| *more > 0);
        let changes = Some(dearer.changes - cheaper.changes).filter(|more| *more > 0);
        part(|cost| cost.left_out)
            .map(Self::LeftOut)
            .or_else(|| part(|cost| cost.parted).map(Self::Parted))
            .or_else(|| part(|cost| cost.doubtful).map(Self::Doubtful))
            .or_else(|| part(|cost| cost.hurts).map(Self::Hurts))
            .or_else(|| part(|cost| cost.clean_outs).map(Self::CleanOuts))
            .or_else(|| changes.map(Self::Changes))
    }
}

/// What the cheaper of two orders has over the other: "one clean-out fewer". The first that differs decides; `None` where none does.
pub(super) fn gain(cheaper: Cost, other: Cost, units: Units) -> Option<String> {
    Some(match More::of(cheaper, other) {
        Some(More::LeftOut(more)) => {
            t!("day-more-find-a-place", passes = passes(more), count = more)
        }
        Some(More::Parted(more)) => {
            t!("day-more-right-after-what-leaves-spray", passes = passes(more), count = more)
        }
        Some(More::Doubtful(more)) => t!("day-fewer-in-doubtful-hours", more = passes(more)),
        Some(More::Hurts(more)) => t!("day-fewer-after-a-mix-that-hurts", more = passes(more)),
        Some(More::CleanOuts(more)) => t!("day-clean-out-fewer", number = count(more), count = more),
        Some(More::Changes(more)) => t!("day-less-for-cleaning-and-road", time = time(more, units)),
        None if other.ends > cheaper.ends => t!("day-home-sooner", time = time(other.ends - cheaper.ends, units)),
        None => return None,
    })
}

/// What the dearer of two orders costs more than the best: "one clean-out more, home 35 min later than in the best order".
pub(super) fn loss(best: Cost, dearer: Cost, units: Units) -> Option<String> {
    let first = More::of(best, dearer).map(|more| match more {
        More::LeftOut(more) => t!("day-more-without-a-place", more = passes(more)),
        More::Parted(more) => {
            t!("day-more-that-do-not-come-right", passes = passes(more), count = more)
        }
        More::Doubtful(more) => t!("day-more-in-doubtful-hours", more = passes(more)),
        More::Hurts(more) => t!("day-more-after-a-mix-that-hurts", more = passes(more)),
        More::CleanOuts(more) => t!("day-clean-out-more", number = count(more), count = more),
        More::Changes(more) => t!("day-more-for-cleaning-and-road", time = time(more, units)),
    });
    // Where fewer passes are sprayed, being home sooner is no merit, and later says nothing.
    let home = (dearer.left_out == best.left_out && dearer.ends > best.ends)
        .then(|| t!("day-home-later", time = time(dearer.ends - best.ends, units)));
    let parts: Vec<String> = first.into_iter().chain(home).collect();
    (!parts.is_empty()).then(|| t!("day-than-in-the-best-order", parts = parts.join(", ")))
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
