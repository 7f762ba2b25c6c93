//! Ratings of one choice against those of another: in bands of days after the application, without pairs and in pairs.
//!
//! Several ratings of one effect on one piece of ground in one band are one, their mean, since they are of the same plants. What
//! comes out says what was rated; it never says why.

use super::index::{Index, Rating, bit};
use super::{Picked, effects};
use crate::farm::{AdjuvantClass, Effect, Id};
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
    /// Without pairs: the means of all ratings of the one and of the other side. `None` where there is no room for chance in it.
    pub unpaired: Option<Welch>,
    /// What that tells.
    pub by_sets: Verdict,
    /// What stood beside one another.
    pub pairs: Vec<Pair>,
    /// In pairs.
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
        let (mut ones, mut others) = (Vec::new(), Vec::new());
        for seen in of_one {
            let Some(ground) = index.ground.get(seen.ground as usize) else { continue };
            let Some(entry) = index.entries.get(ground.record as usize) else { continue };
            let at = ((ground.field, entry.date.year()), seen.rating);
            match (in_side(&first, ground.record), in_side(&second, ground.record)) {
                (true, false) => ones.push(at),
                (false, true) => others.push(at),
                _ => {}
            }
        }
        let (Some(seen), false) = (of_one.first(), ones.is_empty() || others.is_empty()) else { continue };
        let Some(effect) = index.effects.get(seen.effect as usize) else { continue };
        let pairs = in_pairs(index, &ones, &others);
        let numbers = |all: &[(_, f64)]| all.iter().map(|(_, rating)| *rating).collect::<Vec<f64>>();
        found.push(comparison(effect.clone(), seen.band, &numbers(&ones), &numbers(&others), pairs));
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
    let mean = |same: &[(_, f64)]| same.iter().map(|(_, rating)| rating).sum::<f64>() / same.len() as f64;
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

type At = (u32, i16);

/// A field in a year on which there was both: the mean of either.
fn in_pairs(index: &Index, ones: &[(At, f64)], others: &[(At, f64)]) -> Vec<Pair> {
    let mut at: Vec<At> =
        ones.iter().map(|(at, _)| *at).filter(|at| others.iter().any(|(other, _)| other == at)).collect();
    at.sort_unstable();
    at.dedup();
    let mean = |all: &[(At, f64)], at: At| {
        let (sum, n) =
            all.iter().filter(|(other, _)| *other == at).fold((0.0, 0), |(sum, n), (_, rating)| (sum + rating, n + 1));
        sum / f64::from(n)
    };
    at.into_iter()
        .map(|at| {
            let name = index.fields.get(at.0 as usize).map_or("", |field| field.name.as_str());
            Pair { name: format!("{name}, {}", at.1), one: mean(ones, at), other: mean(others, at) }
        })
        .collect()
}

pub(crate) fn comparison(effect: Effect, days: Band, ones: &[f64], others: &[f64], pairs: Vec<Pair>) -> Comparison {
    let differences: Vec<f64> = pairs.iter().map(|pair| pair.one - pair.other).collect();
    let (unpaired, paired) = (welch(ones, others), paired(&differences));
    Comparison {
        effect,
        days,
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
    use super::{BANDS, Band, FEWEST, Verdict, verdict};

    #[test]
    fn bands_follow_one_another() {
        for pair in BANDS.windows(2) {
            assert_eq!(pair[0].to + 1, pair[1].from);
        }
        assert_eq!(Band::of(14), Some(Band { from: 11, to: 17 }));
        assert_eq!((Band::of(0), Band::of(71)), (None, None));
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
