//! What the review says in words, in one place: for the screen, for paper and for the terminal.

use super::compare::{Band, Comparison, Verdict};
use super::{Again, Distinct, Repeat, Spent};
use crate::farm::{AdjuvantClass, Effect, ProductKind};
use crate::quantity::number::show;
use crate::quantity::{Quantity, Units};
use crate::season::stats::FEWEST;

/// What stands under every comparison.
pub const NO_CAUSE: &str = "It says what was rated on this farm and not why: fields, weather, size of the weeds and whoever looked may have \
                            differed along with what is compared. What the label says holds, whatever was rated.";

/// A sentence, and whether it tells two things apart.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Statement {
    /// The sentence.
    pub text: String,
    /// What it rests on.
    pub verdict: Verdict,
}

/// "11 to 17 days after".
pub fn band(days: Band) -> String {
    format!("{} to {} days after", days.from, days.to)
}

/// "control of waterhemp", "injury: leaf burn".
pub fn effect(effect: &Effect) -> String {
    match effect {
        Effect::Control(weed) => format!("control of {}", weed.trim()),
        Effect::Injury(how) if how.trim().is_empty() => "injury of the crop".to_owned(),
        Effect::Injury(how) => format!("injury: {}", how.trim()),
    }
}

/// "crop oil concentrate and ammonium sulfate", "no adjuvant".
pub fn classes(classes: &[AdjuvantClass]) -> String {
    match classes {
        [] => "no adjuvant".to_owned(),
        [one] => one.name().to_owned(),
        [most @ .., last] => {
            format!("{} and {}", most.iter().map(|class| class.name()).collect::<Vec<_>>().join(", "), last.name())
        }
    }
}

/// What the pairs of a comparison tell.
pub fn by_pairs(comparison: &Comparison, one: &str, other: &str) -> Statement {
    let verdict = comparison.by_pairs;
    let of = format!("{}, {}", effect(&comparison.effect), band(comparison.days));
    let n = comparison.pairs.len();
    let text = match (verdict, comparison.paired) {
        (Verdict::TooFew { .. }, _) => {
            format!("{of}: too few to tell: {}. {TOO_FEW_PAIRS}", count(n, "pair", "pairs"))
        }
        (_, None) => {
            let by = comparison.pairs.first().map_or(0.0, |pair| pair.one - pair.other);
            format!(
                "{of}: all {n} pairs differ alike, by {} per cent points ({one} less {other}); the differences do not spread, so no interval can be told",
                show(by, 1)
            )
        }
        (_, Some(paired)) => {
            let rank = paired.rank.and_then(|rank| rank.interval);
            let rank = rank.map_or_else(String::new, |ends| format!("; by ranks {}", interval(ends)));
            let ends = format!("95 % interval {}{rank}", interval(paired.interval));
            told(&of, verdict, one, other, paired.mean, &format!("over {n} pairs"), &ends)
        }
    };
    Statement { text: crate::words::capital(&text), verdict }
}

/// What the ratings of a comparison tell without pairs.
pub fn by_sets(comparison: &Comparison, one: &str, other: &str) -> Statement {
    let verdict = comparison.by_sets;
    let of = format!("{}, {}", effect(&comparison.effect), band(comparison.days));
    let counts = [comparison.one, comparison.other].map(|side| side.map_or(0, |side| side.n));
    let pieces = format!("on {} and {} pieces of ground", comparison.ground[0], comparison.ground[1]);
    let text = match (verdict, comparison.unpaired) {
        (Verdict::TooFew { .. }, _) => format!(
            "{of}: too few to tell: {} with {one}, {} with {other}, {pieces}; fewer than {FEWEST} of either are not compared",
            count(counts[0], "record", "records"),
            counts[1]
        ),
        (_, None) => {
            format!("{of}: the records of each side were rated all alike and do not spread, so no interval can be told")
        }
        (_, Some(welch)) => {
            let over = format!("{} and {} records, {pieces}", counts[0], counts[1]);
            told(
                &of,
                verdict,
                one,
                other,
                welch.difference,
                &over,
                &format!("95 % interval {}", interval(welch.interval)),
            )
        }
    };
    Statement { text: crate::words::capital(&text), verdict }
}

/// Why few pairs tell nothing.
const TOO_FEW_PAIRS: &str =
    "Fewer than six cannot be told from chance at 5 % by their signs and ranks, whatever they show";

fn told(of: &str, verdict: Verdict, one: &str, other: &str, by: f64, over: &str, ends: &str) -> String {
    let points = |value: f64| format!("{} per cent points", show(value.abs(), 1));
    match verdict {
        Verdict::OneHigher => {
            format!("{of} was rated {} higher with {one} than with {other} ({over}; {ends})", points(by))
        }
        Verdict::OtherHigher => {
            format!("{of} was rated {} higher with {other} than with {one} ({over}; {ends})", points(by))
        }
        Verdict::NotApart | Verdict::TooFew { .. } => {
            format!("{of}: the data do not tell {one} and {other} apart ({over}; difference {}; {ends})", show(by, 1))
        }
    }
}

fn interval((low, high): (f64, f64)) -> String {
    format!("{} to {}", show(low, 1), show(high, 1))
}

/// What to keep in mind where several comparisons stand together; `None` for one.
pub fn looks(comparisons: usize) -> Option<String> {
    (comparisons > 1).then(|| {
        format!(
            "{comparisons} comparisons stand here. Of comparisons in which nothing differs about one in 20 seems to, by chance alone; one that \
             stands out among many is a reason to lay out a trial, not yet an answer"
        )
    })
}

/// "group 9", "fungicide group 11".
pub fn group(kind: ProductKind, group: &str) -> String {
    if kind == ProductKind::Herbicide { format!("group {group}") } else { format!("{} group {group}", kind.name()) }
}

/// How a group came again.
pub fn again(repeat: &Repeat) -> String {
    match repeat.again {
        Again::InSeason { year, times: 2 } => format!("twice in {year}"),
        Again::InSeason { year, times } => format!("{times} times in {year}"),
        Again::InYears { from, to } => format!("in each season from {from} to {to}"),
        Again::InARow { from, to, times } => format!("{times} applications in a row, {from} to {to}"),
    }
}

/// "$120.00", and what is not in it; "no price" where nothing has one.
pub fn spent(spent: &Spent, currency: &str) -> String {
    let money = format!("{currency}{}", spent.money.show());
    match spent.without_price {
        0 => money,
        _ if spent.priced == 0 => "no price".to_owned(),
        1 => format!("{money}, without 1 use that has no price"),
        many => format!("{money}, without {many} uses that have no price"),
    }
}

/// "74.6 ac", or both ends.
pub fn distinct(distinct: Distinct, units: Units) -> String {
    let (least, most) = (distinct.least.show(units), distinct.most.show(units));
    if least == most { least } else { crate::words::ends(&least, "to", &most) }
}

/// "1 record", "3 records".
pub fn count(n: usize, one: &str, many: &str) -> String {
    format!("{n} {}", if n == 1 { one } else { many })
}
