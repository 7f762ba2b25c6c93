//! Checks of quantities alone: through what a person may type, and the public accessors.

use tankard_core::quantity::{
    Amount, AmountPerArea, Area, CarrierRate, Concentration, Density, Duration, Flow, Hardness, Length, Mass, Pressure,
    Quantity, Rate, Share, Speed, Temperature, Units, Volume, VolumePerArea,
};

use super::Verdict;
use crate::{Row, close, number};

/// Reads a quantity as a person would type it.
pub(super) fn parse<Q: Quantity>(text: &str) -> Result<Q, String> {
    Q::parse(text).map_err(|error| error.to_string())
}

fn no_unit(of: &str, unit: &str) -> String {
    format!("{of} has no unit \"{unit}\" here")
}

/// A text, read as the kind of quantity named by `as`, in `unit`.
pub(super) fn convert(row: &Row) -> Result<Verdict, String> {
    let (kind, text, unit) = (row.need("as")?, row.input.as_str(), row.unit.as_str());
    let missing = || no_unit(kind, unit);
    let found = match kind {
        "area" => area_in(parse(text)?, unit)?,
        "volume" => amount_in(Amount::Volume(parse(text)?), unit)?,
        "mass" => amount_in(Amount::Mass(parse(text)?), unit)?,
        "carrier" => {
            let rate: CarrierRate = parse(text)?;
            match unit {
                "L/ha" => rate.to_litres_per_hectare(),
                "gal/ac" => rate.to_us_gallons_per_acre(),
                "imp gal/ac" => rate.to_imperial_gallons_per_acre(),
                _ => return Err(missing()),
            }
        }
        "rate" => rate_in(parse(text)?, unit)?,
        "content" => {
            let content: Concentration = parse(text)?;
            let content = content.per_volume(None).ok_or("a share of the mass is no mass per volume")?;
            match unit {
                "g/L" => content.to_grams_per_litre(),
                "lb/gal" => content.to_pounds_per_us_gallon(),
                _ => return Err(missing()),
            }
        }
        "density" => {
            let density: Density = parse(text)?;
            match unit {
                "kg/L" => density.to_kilograms_per_litre(),
                "lb/gal" => density.to_pounds_per_us_gallon(),
                _ => return Err(missing()),
            }
        }
        "length" => {
            let length: Length = parse(text)?;
            match unit {
                "m" => length.to_metres(),
                "ft" => length.to_feet(),
                _ => return Err(missing()),
            }
        }
        "speed" => {
            let speed: Speed = parse(text)?;
            match unit {
                "m/s" => speed.to_metres_per_second(),
                "mph" => speed.to_miles_per_hour(),
                "km/h" => speed.to_kilometres_per_hour(),
                "ft/min" => Length::from_metres(speed.to_metres_per_second()).to_feet() * 60.0,
                _ => return Err(missing()),
            }
        }
        "pressure" => {
            let pressure: Pressure = parse(text)?;
            match unit {
                "Pa" => pressure.to_pascals(),
                "bar" => pressure.to_bar(),
                "psi" => pressure.to_psi(),
                _ => return Err(missing()),
            }
        }
        "flow" => {
            let flow: Flow = parse(text)?;
            match unit {
                "L/min" => flow.to_litres_per_minute(),
                "gal/min" => flow.to_us_gallons_per_minute(),
                _ => return Err(missing()),
            }
        }
        "temperature" => {
            let temperature: Temperature = parse(text)?;
            match unit {
                "°C" => temperature.to_celsius(),
                "°F" => temperature.to_fahrenheit(),
                _ => return Err(missing()),
            }
        }
        "hardness" => {
            let hardness: Hardness = parse(text)?;
            match unit {
                "ppm" => hardness.to_ppm(),
                "gpg" => hardness.to_grains_per_us_gallon(),
                "°dH" => hardness.to_german_degrees(),
                "°fH" => hardness.to_french_degrees(),
                "Clark" => hardness.to_clark_degrees(),
                "mmol/L" => hardness.to_millimoles_per_litre(),
                _ => return Err(missing()),
            }
        }
        other => return Err(format!("\"{other}\" is not a kind of quantity")),
    };
    close(row, found)
}

/// An area in a unit.
pub(super) fn area_in(area: Area, unit: &str) -> Result<f64, String> {
    Ok(match unit {
        "m2" => area.to_square_metres(),
        "ha" => area.to_hectares(),
        "ac" => area.to_acres(),
        _ => return Err(no_unit("an area", unit)),
    })
}

/// An amount in a unit of its kind.
pub(super) fn amount_in(amount: Amount, unit: &str) -> Result<f64, String> {
    Ok(match (amount, unit) {
        (Amount::Volume(volume), "L") => volume.to_litres(),
        (Amount::Volume(volume), "mL") => volume.to_litres() * 1000.0,
        (Amount::Volume(volume), "gal") => volume.to_us_gallons(),
        (Amount::Volume(volume), "qt") => volume.to_us_gallons() * 4.0,
        (Amount::Volume(volume), "pt") => volume.to_us_gallons() * 8.0,
        (Amount::Volume(volume), "fl oz") => volume.to_us_fluid_ounces(),
        (Amount::Volume(volume), "imp gal") => volume.to_imperial_gallons(),
        (Amount::Volume(volume), "imp fl oz") => volume.to_imperial_fluid_ounces(),
        (Amount::Mass(mass), "kg") => mass.to_kilograms(),
        (Amount::Mass(mass), "g") => mass.to_grams(),
        (Amount::Mass(mass), "lb") => mass.to_pounds(),
        (Amount::Mass(mass), "oz") => mass.to_ounces(),
        _ => return Err(no_unit("the amount", unit)),
    })
}

/// A rate of its kind in a unit.
pub(super) fn rate_in(rate: Rate, unit: &str) -> Result<f64, String> {
    Ok(match (rate, unit) {
        (Rate::VolumePerArea(rate), _) => per_area_in(AmountPerArea::Volume(rate), unit)?,
        (Rate::MassPerArea(rate) | Rate::OuncesPerArea(rate) | Rate::ActivePerArea(rate, _), _) => {
            per_area_in(AmountPerArea::Mass(rate), unit)?
        }
        (Rate::VolumePerSpray(share), "%") => share.to_percent(),
        (Rate::VolumePerSpray(share), "mL/L") => share.to_fraction() * 1000.0,
        (Rate::MassPerSpray(content) | Rate::ActivePerSpray(content, _), _) => match unit {
            "g/L" => content.to_grams_per_litre(),
            "g/gal" => (content * Volume::from_us_gallons(1.0)).to_grams(),
            "lb/100 gal" => content.to_pounds_per_100_us_gallons(),
            "lb/100 imp gal" => content.to_pounds_per_100_imperial_gallons(),
            _ => return Err(no_unit("the rate", unit)),
        },
        _ => return Err(no_unit("the rate", unit)),
    })
}

/// An amount over ground in a unit of its kind.
pub(super) fn per_area_in(rate: AmountPerArea, unit: &str) -> Result<f64, String> {
    Ok(match (rate, unit) {
        (AmountPerArea::Volume(rate), "L/ha") => rate.to_litres_per_hectare(),
        (AmountPerArea::Volume(rate), "mL/ha") => rate.to_litres_per_hectare() * 1000.0,
        (AmountPerArea::Volume(rate), "gal/ac") => rate.to_us_fluid_ounces_per_acre() / 128.0,
        (AmountPerArea::Volume(rate), "pt/ac") => rate.to_us_pints_per_acre(),
        (AmountPerArea::Volume(rate), "fl oz/ac") => rate.to_us_fluid_ounces_per_acre(),
        (AmountPerArea::Mass(rate), "kg/ha") => rate.to_kilograms_per_hectare(),
        (AmountPerArea::Mass(rate), "g/ha") => rate.to_kilograms_per_hectare() * 1000.0,
        (AmountPerArea::Mass(rate), "lb/ac") => rate.to_pounds_per_acre(),
        (AmountPerArea::Mass(rate), "oz/ac") => rate.to_ounces_per_acre(),
        _ => return Err(no_unit("the rate", unit)),
    })
}

/// How many times the first text holds the second, where both are on one basis.
fn times(kind: &str, first: &str, second: &str) -> Result<Option<f64>, String> {
    Ok(match kind {
        "amount" => parse::<Amount>(first)?.ratio(parse(second)?),
        "rate" => match (parse(first)?, parse(second)?) {
            (Rate::VolumePerArea(a), Rate::VolumePerArea(b)) => a.ratio(b),
            (Rate::MassPerArea(a) | Rate::OuncesPerArea(a), Rate::MassPerArea(b) | Rate::OuncesPerArea(b)) => {
                a.ratio(b)
            }
            (Rate::VolumePerSpray(a), Rate::VolumePerSpray(b)) => a.ratio(b),
            (Rate::MassPerSpray(a), Rate::MassPerSpray(b)) => a.ratio(b),
            _ => None,
        },
        other => return Err(format!("\"{other}\" cannot be compared here")),
    })
}

/// Two texts that mean the same.
pub(super) fn equal(row: &Row) -> Result<Verdict, String> {
    let allowed = number(row.tolerance.trim_end_matches('%'))? / 100.0;
    let ratio = times(row.need("as")?, &row.input, &row.expected)?;
    Ok(match ratio {
        Some(ratio) => Verdict { agrees: (ratio - 1.0).abs() <= allowed, found: format!("{ratio} times that") },
        None => Verdict { agrees: false, found: "another basis".to_owned() },
    })
}

/// Two texts that must not be taken for each other: of another basis, or further apart than the tolerance.
pub(super) fn differ(row: &Row) -> Result<Verdict, String> {
    let apart = number(row.tolerance.trim_end_matches('%'))? / 100.0;
    let ratio = times(row.need("as")?, &row.input, &row.expected)?;
    Ok(match ratio {
        Some(ratio) => Verdict { agrees: (ratio - 1.0).abs() > apart, found: format!("{ratio} times that") },
        None => Verdict { agrees: true, found: "another basis".to_owned() },
    })
}

/// What a rate in the spray puts on the ground at a carrier volume.
pub(super) fn content(row: &Row) -> Result<Verdict, String> {
    let carrier: CarrierRate = parse(row.need("carrier")?)?;
    let per_area = match parse(&row.input)? {
        Rate::VolumePerSpray(share) => AmountPerArea::Volume(carrier.share(share)),
        Rate::MassPerSpray(content) => AmountPerArea::Mass(carrier.content(content)),
        other => return Err(format!("{} is not in the spray", other.kind())),
    };
    close(row, per_area_in(per_area, &row.unit)?)
}

/// The share of the spray that a rate over ground takes at a carrier volume.
pub(super) fn share(row: &Row) -> Result<Verdict, String> {
    let Rate::VolumePerArea(rate) = parse(&row.input)? else { return Err("not a volume over ground".to_owned()) };
    let share: Share =
        AmountPerArea::Volume(rate).share_of(parse(row.need("carrier")?)?).ok_or("there is no such share")?;
    close(row, share.to_percent())
}

/// The ground of a rectangle, "8.25 ft x 1 mi".
pub(super) fn rectangle(row: &Row) -> Result<Verdict, String> {
    let (length, width) = row.input.split_once(" x ").ok_or("a rectangle has two sides")?;
    let (length, width): (Length, Length) = (parse(length)?, parse(width)?);
    close(row, area_in(Area::from_square_metres(length.to_metres() * width.to_metres()), &row.unit)?)
}

/// A volume caught over an area, as a spray volume per area.
pub(super) fn spread(row: &Row) -> Result<Verdict, String> {
    let volume: Volume = parse(&row.input)?;
    let rate: VolumePerArea = volume.spread(parse(row.need("area")?)?).ok_or("the area is nothing")?;
    close(row, per_area_in(AmountPerArea::Volume(rate), &row.unit)?)
}

fn duration_in(time: Duration, unit: &str) -> Result<f64, String> {
    Ok(match unit {
        "s" => time.to_seconds(),
        "min" => time.to_seconds() / 60.0,
        "h" => time.to_hours(),
        _ => return Err(no_unit("a time", unit)),
    })
}

/// The time to cover an area.
pub(super) fn time(row: &Row) -> Result<Verdict, String> {
    let area: Area = parse(&row.input)?;
    let time = area
        .time(parse(row.need("speed")?)?, parse(row.need("width")?)?, parse(row.need("efficiency")?)?)
        .ok_or("there is no such time")?;
    close(row, duration_in(time, &row.unit)?)
}

/// The time to drive a course.
pub(super) fn course(row: &Row) -> Result<Verdict, String> {
    let (length, width): (Length, Length) = (parse(&row.input)?, Length::from_metres(1.0));
    let strip = Area::from_square_metres(length.to_metres() * width.to_metres());
    let time =
        strip.time(parse(row.need("speed")?)?, width, Share::from_percent(100.0)).ok_or("there is no such time")?;
    close(row, duration_in(time, &row.unit)?)
}

/// An amount as it is printed to be measured out.
pub(super) fn sizes(row: &Row) -> Result<Verdict, String> {
    let units = match row.need("units")? {
        "us" => Units::UsCustomary,
        "imperial" => Units::Imperial,
        "metric" => Units::Metric,
        other => return Err(format!("\"{other}\" is no system of units")),
    };
    let found = match row.with("as") {
        Some("mass") => parse::<Mass>(&row.input).map(Amount::Mass)?,
        _ => parse::<Amount>(&row.input)?,
    }
    .show(units);
    Ok(Verdict { agrees: found == row.expected, found })
}
