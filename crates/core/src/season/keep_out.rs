//! Until when the records of a field keep people out of it.

use jiff::civil::{Date, DateTime};

use super::Log;
use super::field::re_entry::{later, midnight};
use super::worker_protection::{entry_hours, is_pesticide};
use crate::farm::{Farm, Record, RecordLine};
use crate::weather::sun;

/// For how long a record without a known re-entry time is still spoken of: longer than any that labels usually ask for (common
/// practice, no source).
pub(crate) const DAYS: i32 = 30;

/// Whether people may enter a field.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum KeepOut {
    /// Not before a moment.
    Until {
        /// The moment, by the clock of the farm.
        until: DateTime,
        /// The re-entry time that ends last.
        hours: u32,
        /// Its product.
        product: String,
    },
    /// A product without a known re-entry time was sprayed in the last 30 days.
    NotKnown {
        /// The product.
        product: String,
        /// The day.
        date: Date,
    },
    /// No re-entry time runs any more, as far as it is typed.
    Over,
    /// Nothing was sprayed in the last 30 days, as far as it is recorded.
    NothingLately,
}

/// Whether the records of a field keep people out of it at a moment. A time runs from the end of the application; where that is not
/// known, from the end of its day. The hours are those of the record, else of the label in the shed.
pub fn keep_out(farm: &Farm, log: &Log, field: &str, now: DateTime) -> KeepOut {
    let zone = farm.place.as_ref().and_then(|place| sun::zone(place).ok());
    let lately = |record: &Record| {
        let days = record.date.until(now.date()).map_or(i32::MAX, |span| span.get_days());
        (0..=DAYS).contains(&days)
    };
    let mut latest: Option<(DateTime, u32, &RecordLine)> = None;
    let mut unknown: Option<(Date, &RecordLine)> = None;
    let mut any = false;
    for (_, record) in log.on_field(farm, field).filter(|(_, record)| lately(record)) {
        any = true;
        let finish = if record.end.is_some() { record.ended() } else { midnight(record.date) };
        for line in record.lines.iter().filter(|line| !line.amount.is_zero()) {
            match entry_hours(farm, line) {
                Some(hours) => {
                    let until = finish.and_then(|finish| later(finish, hours, zone.as_ref()));
                    let until = until.filter(|until| *until > now && latest.is_none_or(|(known, ..)| *until > known));
                    latest = until.map(|until| (until, hours, line)).or(latest);
                }
                None if is_pesticide(farm, line) => {
                    unknown = unknown.filter(|(date, _)| *date >= record.date).or(Some((record.date, line)));
                }
                None => {}
            }
        }
    }
    match (latest, unknown) {
        (Some((until, hours, line)), _) => KeepOut::Until { until, hours, product: line.name.to_string() },
        (None, Some((date, line))) => KeepOut::NotKnown { product: line.name.to_string(), date },
        (None, None) if any => KeepOut::Over,
        (None, None) => KeepOut::NothingLately,
    }
}

#[cfg(test)]
mod tests {
    use jiff::civil::{date, time};

    use super::{KeepOut, keep_out};
    use crate::farm::{Farm, Record, RecordField, RecordLine};
    use crate::quantity::AsTyped;
    use crate::season::Log;

    fn farm(entry: Option<u32>, is_end_known: bool) -> Farm {
        let mut farm = Farm::new("Test");
        let mut record = Record::new("Corn, first post", date(2031, 6, 12));
        record.start = Some(time(5, 40, 0, 0));
        record.end = is_end_known.then(|| time(8, 10, 0, 0));
        let area = AsTyped::parse("74.6 ac").unwrap();
        record.fields.insert("mill-field".to_owned(), RecordField::new("Mill field", area));
        let mut line = RecordLine::new("a", "Atrazine 480 SC (demo)", AsTyped::parse("10 gal").unwrap());
        line.entry = entry;
        record.lines.push(line);
        farm.records.insert("r".to_owned(), record);
        farm
    }

    fn at(farm: &Farm, day: i8, hour: i8) -> KeepOut {
        keep_out(farm, &Log::of(farm), "mill-field", date(2031, 6, day).at(hour, 0, 0, 0))
    }

    /// Hours run from the end of the application: 40 CFR 170.305, "restricted-entry interval".
    #[test]
    fn hours_run_from_the_end() {
        let farm = farm(Some(24), true);
        let product = "Atrazine 480 SC (demo)".to_owned();
        let until = date(2031, 6, 13).at(8, 10, 0, 0);
        assert_eq!(at(&farm, 13, 8), KeepOut::Until { until, hours: 24, product });
        assert_eq!(at(&farm, 13, 9), KeepOut::Over);
        assert_eq!(
            keep_out(&farm, &Log::of(&farm), "mill-field", date(2031, 8, 1).at(0, 0, 0, 0)),
            KeepOut::NothingLately
        );
    }

    #[test]
    fn without_an_end_they_run_from_the_end_of_the_day() {
        let KeepOut::Until { until, .. } = at(&farm(Some(12), false), 12, 20) else { panic!() };
        assert_eq!(until, date(2031, 6, 13).at(12, 0, 0, 0));
    }

    #[test]
    fn a_time_that_is_not_typed_is_not_taken_for_over() {
        let product = "Atrazine 480 SC (demo)".to_owned();
        assert_eq!(at(&farm(None, true), 13, 9), KeepOut::NotKnown { product, date: date(2031, 6, 12) });
    }
}
