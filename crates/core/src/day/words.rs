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

/// "s" for several.
const fn several(number: u32) -> &'static str {
    if number == 1 { "" } else { "s" }
}

/// Whose spray: of one pass or of several.
const fn whose(number: u32) -> &'static str {
    if number == 1 { "its" } else { "their" }
}

/// What the cheaper of two orders has over the other: "one clean-out fewer". The first that differs decides; `None` where none does.
pub(super) fn gain(cheaper: Cost, other: Cost, units: Units) -> Option<String> {
    Some(match More::of(cheaper, other) {
        Some(More::LeftOut(more)) => {
            format!("{} more find{} a place", passes(more), if more == 1 { "s" } else { "" })
        }
        Some(More::Parted(more)) => format!("{} more right after what leaves {} spray", passes(more), whose(more)),
        Some(More::Doubtful(more)) => format!("{} fewer in doubtful hours", passes(more)),
        Some(More::Hurts(more)) => format!("{} fewer after a mix that hurts the crop", passes(more)),
        Some(More::CleanOuts(more)) => format!("{} clean-out{} fewer", count(more), several(more)),
        Some(More::Changes(more)) => format!("{} less for cleaning and road", time(more, units)),
        None if other.ends > cheaper.ends => format!("home {} sooner", time(other.ends - cheaper.ends, units)),
        None => return None,
    })
}

/// What the dearer of two orders costs more than the best: "one clean-out more, home 35 min later than in the best order".
pub(super) fn loss(best: Cost, dearer: Cost, units: Units) -> Option<String> {
    let first = More::of(best, dearer).map(|more| match more {
        More::LeftOut(more) => format!("{} more without a place", passes(more)),
        More::Parted(more) => format!(
            "{} more that do{} not come right after what leaves {} spray",
            passes(more),
            if more == 1 { "es" } else { "" },
            whose(more)
        ),
        More::Doubtful(more) => format!("{} more in doubtful hours", passes(more)),
        More::Hurts(more) => format!("{} more after a mix that hurts the crop", passes(more)),
        More::CleanOuts(more) => format!("{} clean-out{} more", count(more), several(more)),
        More::Changes(more) => format!("{} more for cleaning and road", time(more, units)),
    });
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
