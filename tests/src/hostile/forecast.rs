//! Forecasts as CSV.

use jiff::civil::date;
use jiff::tz::TimeZone;
use tankard_core::weather::sun;
use tankard_file::forecast_csv::{guess, needs_unit, read, table, units};

use super::{lasts, says, yard};

/// Reads bytes as a forecast, with what is guessed and with the first unit of each kind where none is known.
///
/// # Panics
/// A reader panics; a line is neither taken nor refused nor between hours; hours stand out of order or twice.
pub fn forecast(bytes: &[u8]) -> bool {
    let table = match table(bytes) {
        Ok(table) => table,
        Err(error) => return says(&error),
    };
    let mut farm = yard();
    let zone: Option<TimeZone> = farm.place.as_ref().and_then(|place| sun::zone(place).ok());
    assert!(zone.is_some());
    let mut layout = guess(&table, &[]);
    let as_guessed = read(&table, &layout, zone.as_ref());
    assert!(as_guessed.to_choose.is_empty() || as_guessed.hours.is_empty());
    for take in &mut layout.takes {
        if take.unit.is_empty() && needs_unit(take.holds) {
            units(take.holds).first().copied().unwrap_or_default().clone_into(&mut take.unit);
        }
    }
    let reading = read(&table, &layout, zone.as_ref());
    assert!(reading.hours.len() + reading.refused.len() <= table.rows.len());
    let times: Vec<_> = reading.hours.iter().map(|hour| (hour.at, hour.again)).collect();
    assert!(times.is_sorted_by(|one, next| one < next), "hours out of order: {times:?}");
    // The same layout is known again by its header, where the file has one.
    if table.has_header() {
        assert_eq!(guess(&table, std::slice::from_ref(&layout)), layout);
    }
    let now = date(2031, 6, 11).at(18, 0, 0, 0);
    let days: Vec<_> = reading.hours.iter().map(|hour| hour.at.date()).collect();
    farm.forecast.take(reading.hours, "forecast.csv", now, layout);
    // The pass is planned on the first of the days that are expected.
    if let (Some(pass), Some(day)) = (farm.passes.get_mut("post"), days.first()) {
        pass.date = *day;
    }
    lasts(&farm);
    super::farm::planned(&farm);
    !days.is_empty()
}
