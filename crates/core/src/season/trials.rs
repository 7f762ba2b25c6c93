//! Trials: two treatments beside one another, pair by pair.

use jiff::civil::Date;

use super::review::compare::{Band, Comparison, Pair, comparison};
use super::review::effects;
use crate::farm::{Effect, Farm, Plot, Record, RecordField, Trial};
use crate::language::t;

/// What a trial came to.
#[derive(Clone, Debug, PartialEq)]
pub struct Judged {
    /// By effect and band of days, in which at least one pair was rated on both sides.
    pub comparisons: Vec<Comparison>,
    /// What is wrong with it, or missing, in sentences that say where.
    pub open: Vec<String>,
}

/// A plot with what it was rated.
struct Seen<'a> {
    record: &'a Record,
    field: &'a RecordField,
    ratings: Vec<(&'a Effect, Band, f64)>,
}

impl<'a> Seen<'a> {
    fn of(farm: &'a Farm, plot: &'a Plot) -> Option<Self> {
        let record = farm.records.get(&plot.record)?;
        let field = record.fields.get(&plot.field)?;
        let ratings = record.outcomes.iter().filter(|outcome| outcome.field == plot.field).filter_map(|outcome| {
            let days = days_after(record, outcome.date);
            Some((outcome.effect.as_ref()?, Band::of(days)?, outcome.rating.as_ref()?.to_percent()))
        });
        Some(Self { record, field, ratings: ratings.collect() })
    }

    /// The mean of what was rated of an effect in a band: several ratings are of the same plants.
    fn rated(&self, effect: &Effect, days: Band) -> Option<f64> {
        let of = |(rated, band, _): &&(&Effect, Band, f64)| *band == days && effects::same(rated, effect);
        let (sum, n) = self.ratings.iter().filter(of).fold((0.0, 0), |(sum, n), (.., rating)| (sum + rating, n + 1));
        (n > 0).then(|| sum / f64::from(n))
    }
}

/// Compares the two sides of a trial.
pub fn judge(farm: &Farm, trial: &Trial) -> Judged {
    let mut open = Vec::new();
    let mut pairs: Vec<(Seen<'_>, Seen<'_>)> = Vec::new();
    let mut used: Vec<&Plot> = Vec::new();
    for (number, (one, other)) in (1..).zip(&trial.pairs) {
        if one == other || used.iter().any(|plot| [one, other].contains(plot)) {
            open.push(t!("season-pair-has-ground-that-stands-in", number = number));
            continue;
        }
        used.extend([one, other]);
        match (Seen::of(farm, one), Seen::of(farm, other)) {
            (Some(one), Some(other)) => pairs.push((one, other)),
            _ => open.push(t!("season-pair-speaks-of-a-record-that", number = number)),
        }
    }
    let mut looks: Vec<(&Effect, Band)> = Vec::new();
    for (one, other) in &pairs {
        for (effect, days, _) in one.ratings.iter().chain(&other.ratings) {
            if !looks.iter().any(|(known, band)| band == days && effects::same(known, effect)) {
                looks.push((effect, *days));
            }
        }
    }
    looks.sort_by_cached_key(|(effect, days)| (effects::order(effect), *days));
    let mut comparisons = Vec::new();
    for (effect, days) in looks {
        let both: Vec<Pair> = pairs
            .iter()
            .filter_map(|(one, other)| {
                Some(Pair { name: name(one, other), one: one.rated(effect, days)?, other: other.rated(effect, days)? })
            })
            .collect();
        let words = || format!("{}, {}", super::review::words::effect(effect), super::review::words::band(days));
        if both.len() < pairs.len() {
            open.push(t!("season-of-pairs-are-rated-on-both", both = both.len(), pairs = pairs.len(), words = words()));
        }
        if both.is_empty() {
            continue;
        }
        let ones: Vec<f64> = both.iter().map(|pair| pair.one).collect();
        let others: Vec<f64> = both.iter().map(|pair| pair.other).collect();
        comparisons.push(comparison(effect.clone(), days, &ones, &others, both));
    }
    Judged { comparisons, open }
}

/// "Mill field, 2031", "Mill field, north and south, 2031", or both fields.
fn name(one: &Seen<'_>, other: &Seen<'_>) -> String {
    let year = one.record.date.year();
    let parts = [one.field.part.trim(), other.field.part.trim()];
    if one.field.name != other.field.name {
        t!("season-name-and-name2-year", name = one.field.name, name2 = other.field.name, year = year)
    } else if parts.iter().all(|part| !part.is_empty()) && parts[0] != parts[1] {
        t!("season-name-parts-and-parts2-year", name = one.field.name, parts = parts[0], parts2 = parts[1], year = year)
    } else {
        format!("{}, {year}", one.field.name)
    }
}

/// How many days after a pass somebody looked; below zero where it was before.
pub fn days_after(record: &Record, looked: Date) -> i32 {
    (looked - record.date).get_days()
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
    use super::pair_up;
    use crate::farm::{Record, RecordField};
    use crate::quantity::AsTyped;
    use jiff::civil::date;

    fn record(fields: &[&str]) -> Record {
        let mut record = Record::new("Pass", date(2030, 6, 1));
        for field in fields {
            let then = RecordField::new(field, AsTyped::parse("40 ac").unwrap());
            record.fields.insert((*field).to_owned(), then);
        }
        record
    }

    #[test]
    fn strips_of_one_field_are_paired_with_one_another() {
        let fields = |one: &[&str], other: &[&str]| -> Vec<(String, String)> {
            let pairs = pair_up(("one", &record(one)), ("other", &record(other)));
            pairs.into_iter().map(|(a, b)| (a.field, b.field)).collect()
        };
        let named = |a: &str, b: &str| (a.to_owned(), b.to_owned());
        assert_eq!(fields(&["a", "b"], &["c", "d", "b"]), [named("b", "b")]);
        // Fields that differ are paired as they stand.
        assert_eq!(fields(&["a", "b"], &["c", "d"]), [named("a", "c"), named("b", "d")]);
    }
}
