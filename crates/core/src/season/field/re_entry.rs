//! When re-entry times of records on a field end.

use jiff::civil::{Date, DateTime};
use jiff::tz::TimeZone;

use crate::farm::{Farm, Id, Record, RecordLine};
use crate::season::Log;
use crate::season::worker_protection::entry_hours;
use crate::weather::sun;

/// The re-entry time of a line of a record.
pub(crate) struct Kept<'a> {
    pub(crate) record_id: &'a Id,
    pub(crate) record: &'a Record,
    pub(crate) line: &'a RecordLine,
    pub(crate) hours: u32,
    pub(crate) until: DateTime,
}

/// The end of a day, from which hours run where the finish is not known.
pub(crate) fn midnight(day: Date) -> Option<DateTime> {
    day.tomorrow().ok().map(|next| next.at(0, 0, 0, 0))
}

/// All re-entry times of the records of a field up to a day, as recorded, else by the labels in the shed. They run from the end of the
/// application; where that is not known, from the end of its day.
pub(crate) fn of_records<'a>(
    (farm, log): (&'a Farm, &'a Log),
    field: &str,
    date: Date,
    zone: Option<&TimeZone>,
) -> impl Iterator<Item = Kept<'a>> {
    log.on_field(farm, field).filter(move |(_, record)| record.date <= date).flat_map(move |(record_id, record)| {
        let finish = if record.end.is_some() { record.ended() } else { midnight(record.date) };
        let lines = record.lines.iter().filter(|line| !line.amount.is_zero());
        lines.filter_map(move |line| {
            let hours = entry_hours(farm, line)?;
            Some(Kept { record_id, record, line, hours, until: later(finish?, hours, zone)? })
        })
    })
}

/// So many hours later by the clock of the farm; where its zone is not known, by a clock that is not changed.
pub(crate) fn later(at: DateTime, hours: u32, zone: Option<&TimeZone>) -> Option<DateTime> {
    let by_zone = zone.and_then(|zone| {
        let second = sun::second(zone, at, true)?;
        sun::civil(zone, second.checked_add(i64::from(hours).checked_mul(3600)?)?)
    });
    by_zone.or_else(|| at.checked_add(jiff::Span::new().try_hours(hours).ok()?).ok())
}
