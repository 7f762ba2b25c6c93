//! How what a record put out is shared among its fields: by area; where none has an area, evenly. What a record without a field
//! put out stays whole.

use crate::farm::{Id, Record, RecordField};
use crate::quantity::{Area, Money};

/// A field's share of what its record put out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FieldShare {
    fraction: f64,
    /// From which part of the whole to which it reaches, the fields laid end to end.
    from: f64,
    to: f64,
}

impl FieldShare {
    /// All of it.
    pub const WHOLE: Self = Self { fraction: 1.0, from: 0.0, to: 1.0 };

    /// As a fraction, 0 to 1.
    pub const fn fraction(self) -> f64 {
        self.fraction
    }

    /// Its part of an amount of money, so that the parts of all fields add up to the amount to the last decimal; `None` where the
    /// number does not fit.
    pub fn of_money(self, money: Money) -> Option<Money> {
        money.between(self.from, self.to)
    }
}

/// The shares of a record's fields, in their order; [`FieldShare::WHOLE`] alone where it has none.
pub fn shares(record: &Record) -> Vec<FieldShare> {
    if record.fields.is_empty() {
        return vec![FieldShare::WHOLE];
    }
    let (whole, many) = (record.area(), record.fields.len() as f64);
    let mut before = Area::ZERO;
    let fields = record.fields.values().enumerate().map(|(at, field)| {
        let (area, from) = (field.area.value(), before);
        before = before + area;
        let even = || FieldShare { fraction: 1.0 / many, from: at as f64 / many, to: (at + 1) as f64 / many };
        let by_area =
            || Some(FieldShare { fraction: area.ratio(whole)?, from: from.ratio(whole)?, to: before.ratio(whole)? });
        by_area().unwrap_or_else(even)
    });
    fields.collect()
}

/// A record's fields with their shares, in their order; no field and [`FieldShare::WHOLE`] where it has none.
pub fn shared_fields(record: &Record) -> impl Iterator<Item = (Option<(&Id, &RecordField)>, FieldShare)> {
    let none = record.fields.is_empty().then_some(None);
    none.into_iter().chain(record.fields.iter().map(Some)).zip(shares(record))
}

#[cfg(test)]
mod tests {
    use super::shares;
    use crate::farm::{Record, RecordField};
    use crate::quantity::{AsTyped, Money};
    use jiff::civil::date;
    use rust_decimal::Decimal;

    fn record(areas: &[&str]) -> Record {
        let mut record = Record::new("Pass", date(2031, 5, 1));
        for (at, area) in areas.iter().enumerate() {
            let field = RecordField::new("", AsTyped::parse(area).unwrap());
            record.fields.insert(format!("f{at}"), field);
        }
        record
    }

    /// By the rule itself: fractions add up to one, money to the last decimal, however odd the areas.
    #[test]
    fn parts_add_up() {
        let many: Vec<String> = (1..=37).map(|n| format!("{}.{n} ac", n * 7 % 11)).collect();
        let many: Vec<&str> = many.iter().map(String::as_str).collect();
        for areas in [
            &["7.3 ac", "11.9 ac", "0.001 ac"][..],
            &["3 ac", "0 ac", "6.1 ha"],
            &["0 ac", "0 ac", "0 ha"],
            &["0 ac"],
            &[],
            &many,
        ] {
            let shares = shares(&record(areas));
            assert_eq!(shares.len(), areas.len().max(1));
            assert!((shares.iter().map(|share| share.fraction()).sum::<f64>() - 1.0).abs() < 1e-12, "{areas:?}");
            for cost in ["0", "0.01", "1000.0000000003", "98765432.1"] {
                let cost = Money::new(cost.parse::<Decimal>().unwrap());
                let parts: Vec<Money> = shares.iter().map(|share| share.of_money(cost).unwrap()).collect();
                assert_eq!(parts.iter().fold(Money::default(), |sum, part| sum.plus(*part)), cost, "{areas:?}");
                assert!(parts.iter().all(|part| *part >= Money::default()));
            }
        }
        // 3 of 3 + 0 + 15.07... acres, and a third each where there is none.
        let shares_of =
            |areas: &[&str]| shares(&record(areas)).iter().map(|share| share.fraction()).collect::<Vec<_>>();
        assert_eq!(shares_of(&["3 ac", "0 ac", "9 ac"]), [0.25, 0.0, 0.75]);
        assert_eq!(shares_of(&["0 ac", "0 ha"]), [0.5, 0.5]);
    }
}
