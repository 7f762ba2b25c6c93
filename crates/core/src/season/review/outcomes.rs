//! Ratings by the adjuvants that were in the tank: each set of classes, each effect, each band of days.

use super::compare::{Band, observed};
use super::index::classes;
use super::{Picked, effects as names};
use crate::farm::{AdjuvantClass, Effect};
use crate::season::stats::{Summary, summary};

/// Ratings by adjuvants.
#[derive(Clone, Debug, PartialEq)]
pub struct Outcomes {
    /// By effect, band and classes.
    pub rows: Vec<RatedRow>,
    /// How many ratings lie in no band of days; they are in no row.
    pub outside_bands: usize,
    /// How many ratings of all records are of a field that their record did not spray, or of a day before it.
    pub stray: usize,
    /// How many records have a rating.
    pub rated: usize,
}

/// Ratings of one effect in one band with one set of adjuvant classes.
#[derive(Clone, Debug, PartialEq)]
pub struct RatedRow {
    /// What was rated.
    pub effect: Effect,
    /// How many days after.
    pub days: Band,
    /// The classes in the tank; none for no adjuvant.
    pub classes: Vec<AdjuvantClass>,
    /// Its ratings in per cent, one for each piece of ground.
    pub ratings: Summary,
}

/// The page, of what is picked.
pub fn page(picked: &Picked<'_>) -> Outcomes {
    let index = picked.index;
    let taken = picked.taken();
    let is_taken = |ground: u32| taken.get(ground as usize).copied().unwrap_or(false);
    let bits = |ground: u32| {
        let record = index.ground.get(ground as usize).map_or(0, |ground| ground.record);
        index.entries.get(record as usize).map_or(0, |entry| entry.classes)
    };
    let mut all: Vec<_> = observed(index, |rating| is_taken(rating.ground))
        .into_iter()
        .map(|seen| ((seen.effect, seen.band, bits(seen.ground)), seen.rating))
        .collect();
    all.sort_by_key(|(key, _)| *key);
    let rows = all.chunk_by(|(a, _), (b, _)| a == b).filter_map(|same| {
        let ((effect, days, bits), _) = *same.first()?;
        let ratings: Vec<f64> = same.iter().map(|(_, rating)| *rating).collect();
        let effect = index.effects.get(effect as usize)?.clone();
        Some(RatedRow { effect, days, classes: classes(bits), ratings: summary(&ratings)? })
    });
    let rows = rows.collect();
    let of_taken = || index.ratings.iter().filter(|rating| is_taken(rating.ground));
    let mut rated: Vec<u32> =
        of_taken().filter_map(|rating| Some(index.ground.get(rating.ground as usize)?.record)).collect();
    rated.sort_unstable();
    rated.dedup();
    Outcomes {
        rows,
        outside_bands: of_taken().filter(|rating| Band::of(rating.days).is_none()).count(),
        stray: index.stray,
        rated: rated.len(),
    }
}

/// What was rated in what is picked, each effect once, weeds before injuries, by name.
pub fn effects(picked: &Picked<'_>) -> Vec<Effect> {
    let index = picked.index;
    let taken = picked.taken();
    let mut seen = vec![false; index.effects.len()];
    for rating in index.ratings.iter().filter(|rating| taken.get(rating.ground as usize) == Some(&true)) {
        if let Some(here) = seen.get_mut(rating.effect as usize) {
            *here = true;
        }
    }
    let mut rated: Vec<Effect> =
        index.effects.iter().zip(seen).filter(|(_, seen)| *seen).map(|(effect, _)| effect.clone()).collect();
    rated.sort_by_cached_key(names::order);
    rated
}
