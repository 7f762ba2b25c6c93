//! Checks of moist air and of the sun.

use jiff::civil::{Date, DateTime};
use tankard_core::farm::Place;
use tankard_core::quantity::{Length, Pressure, Share, Temperature, TemperatureSpan};
use tankard_core::weather::{psychro, sun};

use super::Verdict;
use super::quantities::parse;
use crate::{Row, close, number};

const SEA_LEVEL: f64 = 101_325.0;

fn pressure(row: &Row) -> Result<Pressure, String> {
    row.with("pressure").map_or(Ok(Pressure::from_pascals(SEA_LEVEL)), parse)
}

/// The humidity of the row, or that of its dew point.
fn humidity(row: &Row, air: Temperature) -> Result<Share, String> {
    match row.with("dew_point") {
        Some(dew_point) => psychro::humidity(air, parse(dew_point)?).ok_or_else(|| "no such dew point".to_owned()),
        None => parse(row.need("humidity")?),
    }
}

fn told<T>(found: Option<T>) -> Result<T, String> {
    found.ok_or_else(|| "it is not told".to_owned())
}

/// The wet bulb of an air temperature.
pub(super) fn wet_bulb(row: &Row) -> Result<Verdict, String> {
    let air = parse(&row.input)?;
    close(row, told(psychro::wet_bulb(air, humidity(row, air)?, pressure(row)?))?.to_celsius())
}

/// The wet bulb by the short formula.
pub(super) fn stull(row: &Row) -> Result<Verdict, String> {
    let air = parse(&row.input)?;
    close(row, told(psychro::stull(air, humidity(row, air)?))?.to_celsius())
}

/// Delta T, by full psychrometrics or `by=stull`.
fn span(row: &Row) -> Result<TemperatureSpan, String> {
    let air: Temperature = parse(&row.input)?;
    let humidity = humidity(row, air)?;
    told(match row.with("by") {
        Some("stull") => psychro::stull(air, humidity).map(|bulb| air - bulb),
        _ => psychro::delta_t(air, humidity, pressure(row)?),
    })
}

pub(super) fn delta_t(row: &Row) -> Result<Verdict, String> {
    close(row, span(row)?.to_celsius())
}

/// On which side of a limit Delta T lies.
pub(super) fn side(row: &Row) -> Result<Verdict, String> {
    let limit: TemperatureSpan = parse(row.need("limit")?)?;
    let found = if span(row)? > limit { "above" } else { "not above" }.to_owned();
    Ok(Verdict { agrees: found == row.expected, found })
}

/// What dry and wet bulb say of the water in the air: `ask` humidity, dew_point or ratio.
pub(super) fn bulbs(row: &Row) -> Result<Verdict, String> {
    let (air, wet): (Temperature, Temperature) = (parse(&row.input)?, parse(row.need("wet")?)?);
    let pressure = pressure(row)?;
    let humidity = || told(psychro::humidity_of_bulbs(air, wet, pressure));
    let found = match row.need("ask")? {
        "humidity" => humidity()?.to_percent(),
        "dew_point" => told(psychro::dew_point(air, humidity()?))?.to_celsius(),
        "ratio" => told(psychro::humidity_ratio(air, wet, pressure))?.to_fraction(),
        other => return Err(format!("\"{other}\" cannot be asked")),
    };
    close(row, found)
}

pub(super) fn dew_point(row: &Row) -> Result<Verdict, String> {
    let air = parse(&row.input)?;
    close(row, told(psychro::dew_point(air, humidity(row, air)?))?.to_celsius())
}

/// The pressure of the air at a height.
pub(super) fn height(row: &Row) -> Result<Verdict, String> {
    close(row, told(psychro::pressure_at(parse::<Length>(&row.input)?))?.to_pascals())
}

/// Sunrise or sunset of a day by the clock of a zone; the tolerance is in seconds.
pub(super) fn sun(row: &Row) -> Result<Verdict, String> {
    let place = Place {
        latitude: row.need("latitude")?.to_owned(),
        longitude: row.need("longitude")?.to_owned(),
        zone: row.need("zone")?.to_owned(),
        ..Place::default()
    };
    let day: Date = row.input.parse().map_err(|_| format!("\"{}\" is no day", row.input))?;
    let span = told(sun::times(place.position()?, &sun::zone(&place)?, day))?;
    let found = if row.need("event")? == "rise" { span.from } else { span.to };
    let expected: DateTime = row.expected.parse().map_err(|_| format!("\"{}\" is no time", row.expected))?;
    let apart = found.duration_since(expected).as_secs_f64().abs();
    Ok(Verdict { agrees: apart <= number(&row.tolerance)?, found: found.to_string() })
}
