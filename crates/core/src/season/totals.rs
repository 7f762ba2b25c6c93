//! A season in a few numbers.

use crate::farm::{Farm, Record};
use crate::quantity::{Area, AsTyped, Volume};

/// What was sprayed in a season.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Totals {
    /// How many passes are recorded.
    pub passes: usize,
    /// The ground they covered; ground sprayed twice counts twice.
    pub area: Area,
    /// The spray they used.
    pub volume: Volume,
    /// How many of them do not say how much spray they used.
    pub without_volume: usize,
}

/// Sums the records of a calendar year.
pub fn totals(farm: &Farm, year: i16) -> Totals {
    sum(farm.records.values().filter(|record| record.date.year() == year))
}

/// Sums any records.
pub fn sum<'a>(records: impl Iterator<Item = &'a Record>) -> Totals {
    let none = Totals { passes: 0, area: Area::ZERO, volume: Volume::ZERO, without_volume: 0 };
    records.fold(none, |sum, record| Totals {
        passes: sum.passes + 1,
        area: sum.area + record.area(),
        volume: sum.volume + record.volume.as_ref().map_or(Volume::ZERO, AsTyped::value),
        without_volume: sum.without_volume + usize::from(record.volume.is_none()),
    })
}

#[cfg(test)]
mod tests {
    use super::totals;
    use crate::farm::{Farm, Field, Record};
    use crate::quantity::AsTyped;
    use crate::season::record::whole_field;
    use jiff::civil::date;

    #[test]
    fn only_the_year_counts_and_a_missing_volume_is_told() {
        let mut farm = Farm::new("Test");
        let field = Field::new("Mill field", AsTyped::parse("74.6 ac").unwrap());
        for (id, day, volume) in
            [("a", date(2031, 5, 1), Some("1119 gal")), ("b", date(2031, 6, 1), None), ("c", date(2030, 6, 1), None)]
        {
            let mut record = Record::new("Pass", day);
            record.fields.insert("mill".to_owned(), whole_field(&field, farm.units));
            record.volume = volume.map(|text| AsTyped::parse(text).unwrap());
            farm.records.insert(id.to_owned(), record);
        }
        let sum = totals(&farm, 2031);
        assert_eq!((sum.passes, sum.without_volume), (2, 1));
        assert!((sum.area.to_acres() - 149.2).abs() < 1e-9 && (sum.volume.to_us_gallons() - 1119.0).abs() < 1e-9);
        assert_eq!(totals(&farm, 2029).passes, 0);
    }
}
