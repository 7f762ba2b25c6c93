//! What the review says in words, in one place: for the screen, for paper and for the terminal.

use super::compare::{Band, Comparison, Verdict};
use super::{Again, BARS, Distinct, Repeat, Spent};
use crate::farm::{AdjuvantClass, Effect, ProductKind};
use crate::language::t;
use crate::quantity::number::show;
use crate::quantity::{Quantity, Units};
use crate::season::stats::FEWEST;

/// What stands under every comparison.
pub fn no_cause() -> &'static str {
    t!("season-no-cause")
}

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
    t!("season-to-days-after", from = days.from, to = days.to)
}

/// "control of waterhemp", "injury: leaf burn".
pub fn effect(effect: &Effect) -> String {
    match effect {
        Effect::Control(weed) => t!("season-control-of", weed = weed.trim()),
        Effect::Injury(how) if how.trim().is_empty() => t!("season-injury-of-the-crop").to_owned(),
        Effect::Injury(how) => t!("season-injury", how = how.trim()),
    }
}

/// "crop oil concentrate and ammonium sulfate", "no adjuvant".
pub fn classes(classes: &[AdjuvantClass]) -> String {
    match classes {
        [] => t!("season-no-adjuvant").to_owned(),
        [one] => one.name().to_owned(),
        [most @ .., last] => {
            t!(
                "season-and",
                most = most.iter().map(|class| class.name()).collect::<Vec<_>>().join(", "),
                last = last.name()
            )
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
            t!("season-too-few-to-tell", of = of, n = n)
        }
        (_, None) => {
            let by = comparison.pairs.first().map_or(0.0, |pair| pair.one - pair.other);
            t!("season-all-pairs-differ-alike-by-per", of = of, n = n, show = show(by, 1), one = one, other = other)
        }
        (_, Some(paired)) => {
            let rank = paired.rank.and_then(|rank| rank.interval);
            let rank = rank.map_or_else(String::new, |ends| t!("season-by-ranks", ends = interval(ends)));
            let ends = t!("season-95-interval", interval = interval(paired.interval), rank = rank);
            told(&of, verdict, one, other, paired.mean, &t!("season-over-pairs", n = n), &ends)
        }
    };
    Statement { text: crate::words::capital(&text), verdict }
}

/// What the ratings of a comparison tell without pairs.
pub fn by_sets(comparison: &Comparison, one: &str, other: &str) -> Statement {
    let verdict = comparison.by_sets;
    let of = format!("{}, {}", effect(&comparison.effect), band(comparison.days));
    let counts = [comparison.one, comparison.other].map(|side| side.map_or(0, |side| side.n));
    let pieces = t!("season-on-and-pieces-of-ground", ground = comparison.ground[0], ground2 = comparison.ground[1]);
    let text = match (verdict, comparison.unpaired) {
        (Verdict::TooFew { .. }, _) => t!(
            "season-too-few-to-tell-with-with",
            of = of,
            count = counts[0],
            one = one,
            counts = counts[1],
            other = other,
            pieces = pieces,
            fewest = FEWEST
        ),
        (_, None) => {
            t!("season-the-records-of-each-side-were", of = of)
        }
        (_, Some(welch)) => {
            let over = t!("season-and-records", counts = counts[0], counts2 = counts[1], pieces = pieces);
            told(
                &of,
                verdict,
                one,
                other,
                welch.difference,
                &over,
                &t!("season-95-interval-interval", interval = interval(welch.interval)),
            )
        }
    };
    Statement { text: crate::words::capital(&text), verdict }
}

/// Those comparisons of which there are too few pairs, in one sentence; `None` where there is none.
pub fn too_few_pairs<'a>(comparisons: impl Iterator<Item = &'a Comparison>) -> Option<String> {
    let few = comparisons.filter(|of| matches!(of.by_pairs, Verdict::TooFew { .. }) || of.paired.is_none());
    let few: Vec<String> = few
        .map(|of| {
            let rated = format!("{}, {}", effect(&of.effect), band(of.days));
            t!("season-few-pairs", of = rated, n = of.pairs.len())
        })
        .collect();
    (!few.is_empty()).then(|| t!("season-too-few-to-tell-few-too-few-pairs", few = few.join("; ")))
}

fn told(of: &str, verdict: Verdict, one: &str, other: &str, by: f64, over: &str, ends: &str) -> String {
    let points = |value: f64| t!("season-per-cent-points", show = show(value.abs(), 1));
    match verdict {
        Verdict::OneHigher => {
            t!(
                "season-was-rated-higher-with-than-with",
                of = of,
                by = points(by),
                one = one,
                other = other,
                over = over,
                ends = ends
            )
        }
        Verdict::OtherHigher => {
            t!(
                "season-of-was-rated-by-higher-with-other-than-with",
                of = of,
                by = points(by),
                other = other,
                one = one,
                over = over,
                ends = ends
            )
        }
        Verdict::NotApart | Verdict::TooFew { .. } => {
            t!(
                "season-the-data-do-not-tell-and",
                of = of,
                one = one,
                other = other,
                over = over,
                show = show(by, 1),
                ends = ends
            )
        }
    }
}

/// Both ends of an interval: "3.5 to 8.1".
pub fn interval((low, high): (f64, f64)) -> String {
    t!("season-show-to-show2", show = show(low, 1), show2 = show(high, 1))
}

/// What to keep in mind where several comparisons stand together; `None` for one.
pub fn looks(comparisons: usize) -> Option<String> {
    (comparisons > 1).then(|| t!("season-comparisons-stand-here-of-comparisons-in", comparisons = comparisons))
}

/// "group 9", "fungicide group 11".
pub fn group(kind: ProductKind, group: &str) -> String {
    if kind == ProductKind::Herbicide {
        t!("season-group", group = group)
    } else {
        t!("season-kind-group-group", kind = kind.name(), group = group)
    }
}

/// How a group came again.
pub fn again(repeat: &Repeat) -> String {
    match repeat.again {
        Again::InSeason { year, times } => t!("season-times-in", times = times, year = year),
        Again::InYears { from, to } => t!("season-in-each-season-from-to", from = from, to = to),
        Again::InARow { from, to, times } => t!("season-applications-in-a-row-to", times = times, from = from, to = to),
    }
}

/// "$120.00", and what is not in it; "no price" where nothing has one.
pub fn spent(spent: &Spent, currency: &str) -> String {
    let money = format!("{currency}{}", spent.money.show());
    match spent.without_price {
        0 => money,
        _ if spent.priced == 0 => t!("season-no-price").to_owned(),
        many => t!("season-without-uses-that-have-no-price", money = money, many = many),
    }
}

/// "74.6 ac", or both ends.
pub fn distinct(distinct: Distinct, units: Units) -> String {
    let (least, most) = (distinct.least.show(units), distinct.most.show(units));
    if least == most { least } else { crate::words::to(&least, &most) }
}

/// "1 record", "3 records".
pub fn count(n: usize, one: &str, many: &str) -> String {
    format!("{n} {}", if n == 1 { one } else { many })
}

/// "Demo SL 3 times, Other WG once", cut after some.
pub fn uses(of: &[(String, usize)]) -> String {
    const SOME: usize = 6;
    let mut words: Vec<String> =
        of.iter().take(SOME).map(|(name, n)| t!("season-name-times", name = name, n = n)).collect();
    if of.len() > SOME {
        words.push(t!("season-and-more", of = of.len() - SOME));
    }
    words.join(", ")
}

/// The crop as typed, or that it was not.
pub fn crop(crop: &str) -> &str {
    if crop.is_empty() { t!("season-crop-not-typed") } else { crop }
}

/// The water as typed, or that it was not.
pub fn water(name: &str) -> &str {
    if name.is_empty() { t!("season-water-not-typed") } else { name }
}

/// The rig as typed, or that it was not.
pub fn rig(name: &str) -> &str {
    if name.is_empty() { t!("season-rig-not-typed") } else { name }
}

/// The name of a field by its id; an empty one is that of records without a field.
pub fn field<'a>(id: &str, name: &'a str) -> &'a str {
    if id.is_empty() { t!("season-no-field-in-the-record") } else { name }
}

/// What stands for figures over a field that is gone.
pub fn gone() -> &'static str {
    t!("season-no-longer-on-the-farm")
}

/// The kind of a product, or that it is not known.
pub fn kind(kind: Option<ProductKind>) -> &'static str {
    kind.map_or(t!("season-kind-not-known"), ProductKind::name)
}

/// The class of an adjuvant, or that it is not known.
pub fn class(class: Option<AdjuvantClass>) -> &'static str {
    class.map_or(t!("season-class-not-known"), AdjuvantClass::name)
}

/// The month, 1 to 12: "Jun".
pub fn month(month: i8) -> &'static str {
    usize::try_from(month - 1).ok().and_then(|at| month_names().get(at).copied()).unwrap_or_default()
}

/// The months of a year.
pub fn month_names() -> [&'static str; 12] {
    [
        t!("season-month-1"),
        t!("season-month-2"),
        t!("season-month-3"),
        t!("season-month-4"),
        t!("season-month-5"),
        t!("season-month-6"),
        t!("season-month-7"),
        t!("season-month-8"),
        t!("season-month-9"),
        t!("season-month-10"),
        t!("season-month-11"),
        t!("season-month-12"),
    ]
}

/// What a bar of errors holds: "-5 to -2"; `gap` stands after the first word.
pub fn bar(at: usize, gap: &str) -> String {
    let end = |at: usize| BARS.get(at).copied().unwrap_or_default();
    let signed = |end: i32| if end > 0 { format!("+{end}") } else { end.to_string() };
    match at {
        0 => t!("season-below-gap", gap = gap, end = end(0)),
        at if at == BARS.len() => t!("season-at-gap-and-more", at = signed(end(at - 1)), gap = gap),
        at => t!("season-at-gap-to-at2", at = signed(end(at - 1)), gap = gap, at2 = signed(end(at))),
    }
}

/// By what fields are put in order, so that "Field 10" comes after "Field 9".
pub fn by_number(name: &str) -> (String, u64, String) {
    let at = name.find(|letter: char| letter.is_ascii_digit()).unwrap_or(name.len());
    let (words, rest) = name.split_at(at);
    let digits: String = rest.chars().take_while(char::is_ascii_digit).collect();
    (words.to_lowercase(), digits.parse().unwrap_or(0), rest.to_lowercase())
}

#[cfg(test)]
mod tests {
    use super::{BARS, bar, by_number};

    #[test]
    fn bars_are_named_by_their_ends() {
        let names: Vec<String> = (0..=BARS.len()).map(|at| bar(at, " ")).collect();
        assert_eq!(names[0], "below -20");
        assert_eq!(names[4], "-2 to +2");
        assert_eq!(names[8], "+20 and more");
    }

    #[test]
    fn fields_stand_by_their_numbers() {
        let mut names = vec!["Field 10", "Church corner", "Field 9", "field 1", "Quarter"];
        names.sort_by_key(|name| by_number(name));
        assert_eq!(names, ["Church corner", "field 1", "Field 9", "Field 10", "Quarter"]);
    }
}
