//! Ratings of one choice against those of another: in bands of days after the application, without pairs and in pairs.
//!
//! Several ratings of one effect on one piece of ground in one band are one, their mean, since they are of the same plants. The fields
//! of one record had one tank, one day and one weather, so they do not repeat the application: without pairs a record is one, the mean of
//! its fields, and pairs of the same two records are one pair. What comes out says what was rated; it never says why.

use std::collections::{BTreeMap, BTreeSet};

use super::index::{Index, Rating, bit};
use super::{Picked, effects};
use crate::farm::{AdjuvantClass, Effect, Id};
use crate::label::listed;
use crate::language::t;
use crate::season::stats::{FEWEST, Paired, Summary, Welch, paired, summary, welch};

/// Days after an application that are looked at together.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Band {
    /// The first day.
    pub from: i32,
    /// The last day.
    pub to: i32,
}

/// The bands: about 3, 7, 14, 21, 28, 42 and 56 days, the days on which trials are usually rated. Common practice, no source.
pub const BANDS: [Band; 7] = [
    Band { from: 1, to: 3 },
    Band { from: 4, to: 10 },
    Band { from: 11, to: 17 },
    Band { from: 18, to: 24 },
    Band { from: 25, to: 34 },
    Band { from: 35, to: 48 },
    Band { from: 49, to: 70 },
];

impl Band {
    /// The band of some days after an application; `None` outside all of them.
    pub fn of(days: i32) -> Option<Self> {
        BANDS.into_iter().find(|band| (band.from..=band.to).contains(&days))
    }
}

/// One of the two choices that are compared.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Side {
    /// What it is called.
    pub name: String,
    /// Which records it takes.
    pub of: Of,
}

impl Side {
    /// What had an adjuvant of a class.
    pub fn with(class: AdjuvantClass) -> Self {
        Self { name: class.name().to_owned(), of: Of::With(class) }
    }

    /// What had none of a class.
    pub fn without(class: AdjuvantClass) -> Self {
        Self { name: t!("season-no", class = class.name()), of: Of::Without(class) }
    }
}

/// Which records a side takes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Of {
    /// Those with an adjuvant of the class, whatever else there was.
    With(AdjuvantClass),
    /// Those without an adjuvant of the class.
    Without(AdjuvantClass),
    /// Those with exactly these classes; none for no adjuvant at all.
    Exactly(Vec<AdjuvantClass>),
    /// Those in which a product went out.
    Product(Id),
    /// These.
    Records(Vec<Id>),
}

/// A rating of each of a pair.
#[derive(Clone, Debug, PartialEq)]
pub struct Pair {
    /// Where and when: "Mill field, 2031".
    pub name: String,
    /// Of the one side, in per cent.
    pub one: f64,
    /// Of the other.
    pub other: f64,
}

/// Two choices compared on one effect in one band. Numbers are in per cent, differences in per cent points: the one side less the
/// other.
#[derive(Clone, Debug, PartialEq)]
pub struct Comparison {
    /// What was rated.
    pub effect: Effect,
    /// How many days after.
    pub days: Band,
    /// The one side.
    pub one: Option<Summary>,
    /// The other side.
    pub other: Option<Summary>,
    /// On how many pieces of ground either side was rated; several of one record are one in the summaries.
    pub ground: [usize; 2],
    /// Without pairs: the means of all records of the one and of the other side. `None` where there is no room for chance in it.
    pub unpaired: Option<Welch>,
    /// What that tells.
    pub by_sets: Verdict,
    /// What stood beside one another.
    pub pairs: Vec<Pair>,
    /// In pairs. `None` for fewer than two, and where all differ alike: the differences then do not spread.
    pub paired: Option<Paired>,
    /// What that tells.
    pub by_pairs: Verdict,
}

/// What a comparison tells.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// There are too few: fewer than [`FEWEST`].
    TooFew {
        /// How many there are; without pairs the fewer of both sides.
        have: usize,
    },
    /// The interval holds zero: the data do not tell them apart.
    NotApart,
    /// The one side was rated higher.
    OneHigher,
    /// The other side was.
    OtherHigher,
}

/// The ratings of two choices compared: for each effect and band in which both were rated. `effect` picks one.
pub fn compare(picked: &Picked<'_>, effect: Option<&Effect>, one: &Side, other: &Side) -> Compared {
    let index = picked.index;
    let (first, second) = (of_side(index, &one.of), of_side(index, &other.of));
    let in_side = |side: &[bool], at: u32| side.get(at as usize).copied().unwrap_or(false);
    let in_both = picked.entries().filter(|(at, _)| in_side(&first, *at) && in_side(&second, *at)).count();
    let wanted: Vec<bool> =
        index.effects.iter().map(|known| effect.is_none_or(|effect| effects::same(known, effect))).collect();
    let taken = picked.taken();
    let observed = observed(index, |rating| in_side(&taken, rating.ground) && in_side(&wanted, rating.effect));
    let mut found = Vec::new();
    for of_one in observed.chunk_by(|a, b| (a.effect, a.band) == (b.effect, b.band)) {
        let (mut ones, mut others): (Vec<Rated>, Vec<Rated>) = (Vec::new(), Vec::new());
        for seen in of_one {
            let Some(ground) = index.ground.get(seen.ground as usize) else { continue };
            let Some(entry) = index.entries.get(ground.record as usize) else { continue };
            let at = Rated { at: (ground.field, entry.date.year()), record: ground.record, rating: seen.rating };
            match (in_side(&first, ground.record), in_side(&second, ground.record)) {
                (true, false) => ones.push(at),
                (false, true) => others.push(at),
                _ => {}
            }
        }
        let (Some(seen), false) = (of_one.first(), ones.is_empty() || others.is_empty()) else { continue };
        let Some(effect) = index.effects.get(seen.effect as usize) else { continue };
        let pairs = in_pairs(index, &ones, &others);
        let ground = [ones.len(), others.len()];
        let of_band = comparison(effect.clone(), seen.band, &by_record(&ones), &by_record(&others), pairs);
        found.push(Comparison { ground, ..of_band });
    }
    Compared { comparisons: found, in_both }
}

/// What was compared.
#[derive(Clone, Debug, PartialEq)]
pub struct Compared {
    /// By effect and band.
    pub comparisons: Vec<Comparison>,
    /// How many records belong to both sides and so to none.
    pub in_both: usize,
}

/// What a piece of ground was rated in a band.
pub(super) struct Observed {
    pub(super) effect: u32,
    pub(super) band: Band,
    pub(super) ground: u32,
    /// In per cent.
    pub(super) rating: f64,
}

/// What was rated, by effect, band and ground.
pub(super) fn observed(index: &Index, wanted: impl Fn(&Rating) -> bool) -> Vec<Observed> {
    let in_band = |rating: &Rating| Some((rating.effect, Band::of(rating.days)?, rating.ground));
    let mut all: Vec<_> = index
        .ratings
        .iter()
        .filter(|rating| wanted(rating))
        .filter_map(|rating| Some((in_band(rating)?, rating.share.to_percent())))
        .collect();
    all.sort_by_key(|(key, _)| *key);
    let mean = |same: &[(_, f64)]| mean(&same.iter().map(|(_, rating)| *rating).collect::<Vec<f64>>());
    all.chunk_by(|(a, _), (b, _)| a == b)
        .filter_map(|same| {
            let ((effect, band, ground), _) = *same.first()?;
            Some(Observed { effect, band, ground, rating: mean(same) })
        })
        .collect()
}

/// Which records a side takes.
fn of_side(index: &Index, of: &Of) -> Vec<bool> {
    let by_class = |takes: &dyn Fn(u16) -> bool| index.entries.iter().map(|entry| takes(entry.classes)).collect();
    match of {
        Of::With(class) => by_class(&|classes| classes & bit(*class) != 0),
        Of::Without(class) => by_class(&|classes| classes & bit(*class) == 0),
        Of::Exactly(wanted) => {
            let wanted = wanted.iter().fold(0, |bits, class| bits | bit(*class));
            by_class(&|classes| classes == wanted)
        }
        Of::Records(ids) => index.entries.iter().map(|entry| ids.contains(&entry.id)).collect(),
        Of::Product(id) => {
            let wanted = index.products.iter().position(|product| product.id == *id);
            let mut takes = vec![false; index.entries.len()];
            for ground in &index.ground {
                let used = index.uses_of(ground).iter().any(|used| Some(used.product as usize) == wanted);
                if let Some(takes) = takes.get_mut(ground.record as usize) {
                    *takes |= used;
                }
            }
            takes
        }
    }
}

/// A field in a year.
type At = (u32, i16);

/// What a piece of ground of a side was rated.
struct Rated {
    at: At,
    record: u32,
    rating: f64,
}

fn mean(ratings: &[f64]) -> f64 {
    ratings.iter().sum::<f64>() / ratings.len() as f64
}

/// The mean of each record.
fn by_record(seen: &[Rated]) -> Vec<f64> {
    let mut all: BTreeMap<u32, Vec<f64>> = BTreeMap::new();
    for one in seen {
        all.entry(one.record).or_default().push(one.rating);
    }
    all.values().map(|ratings| mean(ratings)).collect()
}

/// A field in a year on which there was both: the mean of either. Fields of the same records on both sides are one pair.
fn in_pairs(index: &Index, ones: &[Rated], others: &[Rated]) -> Vec<Pair> {
    let by_field = |all: &[Rated]| {
        let mut by_field: BTreeMap<At, (BTreeSet<u32>, Vec<f64>)> = BTreeMap::new();
        for one in all {
            let (records, ratings) = by_field.entry(one.at).or_default();
            records.insert(one.record);
            ratings.push(one.rating);
        }
        by_field
    };
    let (ones, others) = (by_field(ones), by_field(others));
    let mut by_records: BTreeMap<_, Beside> = BTreeMap::new();
    for (at, (of_one, ratings)) in &ones {
        let Some((of_other, other_ratings)) = others.get(at) else { continue };
        let pair = by_records.entry((of_one, of_other)).or_default();
        pair.at.push(*at);
        pair.ones.push(mean(ratings));
        pair.others.push(mean(other_ratings));
    }
    let mut pairs: Vec<Beside> = by_records.into_values().collect();
    pairs.sort_by_key(|pair| pair.at.first().copied());
    let name = |at: &[At]| {
        let names: Vec<String> = at
            .iter()
            .map(|(field, _)| index.fields.get(*field as usize).map_or_else(String::new, |field| field.name.clone()))
            .collect();
        let year = at.first().map_or(0, |(_, year)| *year);
        format!("{}, {year}", listed(&names))
    };
    let pair = |pair: Beside| Pair { name: name(&pair.at), one: mean(&pair.ones), other: mean(&pair.others) };
    pairs.into_iter().map(pair).collect()
}

/// Fields on which the same records of both sides stood beside one another.
#[derive(Default)]
struct Beside {
    at: Vec<At>,
    ones: Vec<f64>,
    others: Vec<f64>,
}

pub(crate) fn comparison(effect: Effect, days: Band, ones: &[f64], others: &[f64], pairs: Vec<Pair>) -> Comparison {
    let differences: Vec<f64> = pairs.iter().map(|pair| pair.one - pair.other).collect();
    // Differences that are all alike leave no room for chance; they do not tell that there is none.
    let paired = paired(&differences).filter(|paired| spreads(paired.sd, paired.mean));
    let unpaired = welch(ones, others);
    Comparison {
        effect,
        days,
        ground: [ones.len(), others.len()],
        one: summary(ones),
        other: summary(others),
        unpaired,
        by_sets: verdict(ones.len().min(others.len()), unpaired.map(|welch| welch.interval), None),
        pairs,
        paired,
        by_pairs: verdict(
            differences.len(),
            paired.map(|paired| paired.interval),
            paired.and_then(|paired| paired.rank).and_then(|rank| rank.interval),
        ),
    }
}

/// Whether numbers spread by more than arithmetic about their mean.
fn spreads(sd: f64, mean: f64) -> bool {
    sd > 1e-9 * mean.abs()
}

/// Ratings lie between two ends and few of them make no bell, so that both intervals must leave zero out where there are two.
fn verdict(have: usize, interval: Option<(f64, f64)>, by_rank: Option<(f64, f64)>) -> Verdict {
    if have < FEWEST {
        return Verdict::TooFew { have };
    }
    let Some((low, high)) = interval else { return Verdict::NotApart };
    let (low, high) = by_rank.map_or((low, high), |(rank_low, rank_high)| (low.min(rank_low), high.max(rank_high)));
    if low > 0.0 {
        Verdict::OneHigher
    } else if high < 0.0 {
        Verdict::OtherHigher
    } else {
        Verdict::NotApart
    }
}

#[cfg(test)]
mod tests {
    use super::{BANDS, Band, FEWEST, Pair, Verdict, comparison, verdict};
    use crate::farm::Effect;
    use crate::season::review::words;

    #[test]
    fn bands_follow_one_another() {
        for pair in BANDS.windows(2) {
            assert_eq!(pair[0].to + 1, pair[1].from);
        }
        assert_eq!(Band::of(14), Some(Band { from: 11, to: 17 }));
        assert_eq!((Band::of(0), Band::of(71)), (None, None));
    }

    /// Six pairs that all differ by five: there is no spread from which an interval, or how likely chance is, could be told.
    #[test]
    fn differences_that_do_not_spread_tell_no_interval() {
        let effect = || Effect::Control("waterhemp".into());
        for by in [5.0, 0.0] {
            let ones = [90.0, 85.0, 80.0, 75.3, 70.1, 65.7];
            let others = ones.map(|one| one - by);
            let pairs = ones.iter().zip(others).map(|(one, other)| Pair { name: String::new(), one: *one, other });
            let found = comparison(effect(), BANDS[2], &ones, &others, pairs.collect());
            assert_eq!((found.paired, found.by_pairs), (None, Verdict::NotApart));
            let says = words::by_pairs(&found, "oil", "none").text;
            assert!(says.contains("the differences do not spread") && says.contains("6 pairs"), "{says}");
        }
        let found = comparison(effect(), BANDS[2], &[90.0; 6], &[80.0; 6], Vec::new());
        assert_eq!((found.unpaired, found.by_sets), (None, Verdict::NotApart));
    }

    #[test]
    fn zero_between_the_ends_tells_nothing() {
        assert_eq!(verdict(FEWEST - 1, Some((1.0, 2.0)), None), Verdict::TooFew { have: FEWEST - 1 });
        assert_eq!(verdict(FEWEST, Some((0.0, 2.0)), None), Verdict::NotApart);
        assert_eq!(verdict(FEWEST, Some((0.5, 2.0)), None), Verdict::OneHigher);
        assert_eq!(verdict(FEWEST, Some((0.5, 2.0)), Some((-0.5, 2.0))), Verdict::NotApart);
        assert_eq!(verdict(FEWEST, Some((-2.0, -0.5)), Some((-2.0, -0.1))), Verdict::OtherHigher);
        assert_eq!(verdict(FEWEST, None, None), Verdict::NotApart);
    }
}
