//! Two treatments beside one another: the ratings of their pairs, and how far they lie apart.

use jiff::civil::Date;

use crate::farm::{Effect, Farm, Plot, Record, Trial};
use crate::quantity::{AsTyped, Share};

/// How many days the two looks of a pair may lie apart and still count as one. Common practice, no source.
const APART: i32 = 3;

/// What was rated on both sides.
#[derive(Clone, Debug, PartialEq)]
pub struct Compared {
    /// What.
    pub effect: Effect,
    /// How many days after the pass, on the one side of the first pair.
    pub days: i32,
    /// The pairs that have it on both sides, by their place in the trial, each with its two ratings.
    pub pairs: Vec<(usize, Share, Share)>,
}

impl Compared {
    /// The mean of the one side, of the other, and the one less the other.
    pub fn means(&self) -> (Share, Share, Share) {
        let mean = |of: fn(&(usize, Share, Share)) -> Share| {
            let sum: f64 = self.pairs.iter().map(|pair| of(pair).to_fraction()).sum();
            #[allow(clippy::cast_precision_loss)] // No trial has 2^52 pairs.
            let count = self.pairs.len().max(1) as f64;
            Share::from_fraction(sum / count)
        };
        let (one, other) = (mean(|pair| pair.1), mean(|pair| pair.2));
        (one, other, Share::from_fraction(one.to_fraction() - other.to_fraction()))
    }
}

/// How many days after a pass somebody looked; below zero where it was before.
pub fn days_after(record: &Record, looked: Date) -> i32 {
    (looked - record.date).get_days()
}

/// The ratings of a trial that both sides of a pair have, by what was rated and how many days after.
pub fn compare(farm: &Farm, trial: &Trial) -> Vec<Compared> {
    let mut all: Vec<Compared> = Vec::new();
    for (at, (one, other)) in trial.pairs.iter().enumerate() {
        let others = ratings(farm, other);
        for (effect, days, rating) in ratings(farm, one) {
            let beside = others
                .iter()
                .filter(|(of, later, _)| *of == effect && (later - days).abs() <= APART)
                .min_by_key(|(_, later, _)| (later - days).abs());
            let Some((_, _, other)) = beside else { continue };
            let is_it = |known: &&mut Compared| {
                known.effect == *effect
                    && (known.days - days).abs() <= APART
                    && known.pairs.iter().all(|(pair, _, _)| *pair != at)
            };
            match all.iter_mut().find(is_it) {
                Some(known) => known.pairs.push((at, rating, *other)),
                None => all.push(Compared { effect: effect.clone(), days, pairs: vec![(at, rating, *other)] }),
            }
        }
    }
    all.sort_by(|a, b| (&a.effect, a.days).cmp(&(&b.effect, b.days)));
    all
}

/// What was rated on a plot: what, how many days after, how much.
fn ratings<'a>(farm: &'a Farm, plot: &Plot) -> Vec<(&'a Effect, i32, Share)> {
    let Some(record) = farm.records.get(&plot.record) else { return Vec::new() };
    let own = record.outcomes.iter().filter(|outcome| outcome.field == plot.field);
    own.filter_map(|outcome| {
        let rating = outcome.rating.as_ref().map(AsTyped::value)?;
        Some((outcome.effect.as_ref()?, days_after(record, outcome.date), rating))
    })
    .collect()
}

/// The plots of two records side by side: strips of the fields that both sprayed, else their fields in order.
pub fn pair_up(one: (&str, &Record), other: (&str, &Record)) -> Vec<(Plot, Plot)> {
    let plot = |id: &str, field: &str| Plot { record: id.to_owned(), field: field.to_owned() };
    let shared: Vec<(Plot, Plot)> = one
        .1
        .fields
        .keys()
        .filter(|field| other.1.fields.contains_key(*field))
        .map(|field| (plot(one.0, field), plot(other.0, field)))
        .collect();
    if !shared.is_empty() {
        return shared;
    }
    one.1.fields.keys().zip(other.1.fields.keys()).map(|(a, b)| (plot(one.0, a), plot(other.0, b))).collect()
}

#[cfg(test)]
mod tests {
    use super::{compare, pair_up};
    use crate::farm::{Effect, Farm, Outcome, Record, RecordField, Trial};
    use crate::quantity::AsTyped;
    use jiff::civil::date;

    fn weed(name: &str) -> Effect {
        Effect::Control(name.to_owned())
    }

    fn farm() -> Farm {
        let mut farm = Farm::new("Test");
        for (id, day, fields) in [("oil", 1, ["a", "b"]), ("surfactant", 2, ["c", "d"])] {
            let mut record = Record::new(id, date(2030, 6, day));
            for field in fields {
                record.fields.insert(field.to_owned(), RecordField::new(field, AsTyped::parse("40 ac").unwrap()));
            }
            farm.records.insert(id.to_owned(), record);
        }
        for (record, field, day, name, rating) in [
            ("oil", "a", 15, "waterhemp", "90 %"),
            ("oil", "b", 15, "waterhemp", "80 %"),
            ("oil", "a", 29, "waterhemp", "95 %"),
            ("oil", "a", 15, "velvetleaf", "99 %"),
            ("surfactant", "c", 15, "waterhemp", "70 %"),
            ("surfactant", "d", 15, "waterhemp", "75 %"),
            ("surfactant", "c", 29, "waterhemp", "85 %"),
        ] {
            farm.records[record].outcomes.push(Outcome {
                field: field.to_owned(),
                date: date(2030, 6, day),
                effect: Some(weed(name)),
                rating: Some(AsTyped::parse(rating).unwrap()),
                by: String::new(),
                photos: Vec::new(),
                note: String::new(),
            });
        }
        farm
    }

    #[test]
    fn like_is_held_against_like() {
        let farm = farm();
        let pairs = pair_up(("oil", &farm.records["oil"]), ("surfactant", &farm.records["surfactant"]));
        assert_eq!(pairs.len(), 2);
        let trial = Trial { pairs, ..Trial::default() };
        let compared = compare(&farm, &trial);
        // 14 days on the one side and 13 on the other are one look; velvetleaf was rated on one side only.
        assert_eq!(compared.iter().map(|each| (each.days, each.pairs.len())).collect::<Vec<_>>(), [(14, 2), (28, 1)]);
        assert!(compared.iter().all(|each| each.effect == weed("waterhemp")));
        // (90 + 80) / 2 and (70 + 75) / 2.
        let (one, other, apart) = compared[0].means();
        assert!((one.to_percent() - 85.0).abs() < 1e-9 && (other.to_percent() - 72.5).abs() < 1e-9);
        assert!((apart.to_percent() - 12.5).abs() < 1e-9);
    }

    #[test]
    fn strips_of_one_field_are_paired_with_one_another() {
        let mut farm = farm();
        farm.records["surfactant"]
            .fields
            .insert("b".to_owned(), RecordField::new("b", AsTyped::parse("5 ac").unwrap()));
        let pairs = pair_up(("oil", &farm.records["oil"]), ("surfactant", &farm.records["surfactant"]));
        assert_eq!(pairs.iter().map(|(a, b)| (a.field.as_str(), b.field.as_str())).collect::<Vec<_>>(), [("b", "b")]);
    }

    #[test]
    fn a_record_that_is_gone_leaves_nothing_to_compare() {
        let mut farm = farm();
        let pairs = pair_up(("oil", &farm.records["oil"]), ("surfactant", &farm.records["surfactant"]));
        farm.records.shift_remove("surfactant");
        assert!(compare(&farm, &Trial { pairs, ..Trial::default() }).is_empty());
    }
}
