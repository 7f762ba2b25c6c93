//! What a number with a unit measures, and how the form writes that unit.

use crate::quantity::unit::normal;
use crate::quantity::{CarrierRate, Length, Quantity, Rate, Speed, Units, Volume};

#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Measure {
    /// Of product, over ground or in the spray.
    Rate(String),
    /// Of spray over ground.
    Water(String),
    /// Of spray, without a word on the ground it is for.
    WaterAlone(String),
    Speed(String),
    Length(String),
    Degrees(String),
    /// Of something that is weighed where the product is poured, or poured where it is weighed: an adjuvant.
    OtherRate(String),
    Days,
    Hours,
    Weeks,
    Months,
    Minutes,
    /// A bare per cent.
    Share,
}

/// Lengths as labels spell them out; "in" is a word of every sentence.
const LENGTHS: [&str; 12] =
    ["foot", "feet", "ft", "yard", "yards", "meter", "meters", "metre", "metres", "m", "inch", "inches"];

/// Spelled units, and how they are typed.
const SHORT: [(&str, &str); 29] = [
    ("gallon", "gal"),
    ("gallons", "gal"),
    ("gals", "gal"),
    ("quart", "qt"),
    ("quarts", "qt"),
    ("qts", "qt"),
    ("pint", "pt"),
    ("pints", "pt"),
    ("pts", "pt"),
    ("fluid ounce", "fl oz"),
    ("fluid ounces", "fl oz"),
    ("fluid oz", "fl oz"),
    ("floz", "fl oz"),
    ("pound", "lb"),
    ("pounds", "lb"),
    ("lbs", "lb"),
    ("ounce", "oz"),
    ("ounces", "oz"),
    ("l", "L"),
    ("liter", "L"),
    ("liters", "L"),
    ("litres", "L"),
    ("litre", "L"),
    ("ml", "mL"),
    ("milliliters", "mL"),
    ("millilitres", "mL"),
    ("acre", "ac"),
    ("a", "ac"),
    ("hectare", "ha"),
];

fn short(name: &str) -> &str {
    SHORT.iter().find(|(long, _)| *long == name).map_or(name, |(_, short)| short)
}

/// A unit as people type it: "fl oz/ac" for "fl. oz. per acre".
pub(super) fn typed(unit: &str) -> String {
    let unit = normal(unit);
    let basis = |top: &str| {
        let (bare, basis) = [" ae", " ai"]
            .iter()
            .find_map(|basis| top.strip_suffix(basis).map(|bare| (bare, *basis)))
            .unwrap_or((top, ""));
        format!("{}{basis}", short(bare.trim()))
    };
    match unit.as_str() {
        "%v/v" => "% v/v".to_owned(),
        _ => match unit.split_once('/') {
            Some((top, bottom)) => {
                // "100 gallons" below the stroke keeps its number.
                let (count, name) = match bottom.split_once(' ') {
                    Some((count, name)) if count.starts_with(|c: char| c.is_ascii_digit()) => {
                        (format!("{count} "), name)
                    }
                    _ => (String::new(), bottom),
                };
                format!("{}/{count}{}", basis(top), short(name.trim()))
            }
            None => short(&unit).to_owned(),
        },
    }
}

/// What a number with a unit measures; none where it is nothing looked for, or may mean two things.
pub(super) fn measure(number: &str, unit: &str, is_water: bool, is_liquid: bool, units: Units) -> Option<Measure> {
    let unit = &english(unit);
    let plain = normal(unit);
    match plain.as_str() {
        "day" | "days" => return Some(Measure::Days),
        "hour" | "hours" | "hr" | "hrs" | "h" => return Some(Measure::Hours),
        "week" | "weeks" | "wk" | "wks" => return Some(Measure::Weeks),
        "month" | "months" | "mo" => return Some(Measure::Months),
        "minute" | "minutes" | "min" | "mins" => return Some(Measure::Minutes),
        "%" | "percent" => return Some(Measure::Share),
        _ => {}
    }
    let of_us = ["gal", "qt", "quart", "pt", "pint", "fl oz", "fluid", "gpa"].iter().any(|name| plain.contains(name));
    let says_which = ["imp", "uk ", "us "].iter().any(|name| plain.contains(name));
    if of_us && units == Units::Imperial && !says_which {
        return None;
    }
    let neat = typed(unit);
    let as_typed = |unit: &str| format!("{number} {unit}");
    if is_water || plain == "gpa" {
        if let Some(unit) =
            [neat.as_str(), plain.as_str()].into_iter().find(|unit| CarrierRate::parse(&as_typed(unit)).is_ok())
        {
            return Some(Measure::Water(unit.to_owned()));
        }
        if Volume::parse(&as_typed(&plain)).is_ok() {
            return Some(Measure::WaterAlone(neat));
        }
    }
    if let Ok(rate) = Rate::parse(&as_typed(&plain)) {
        let same = Rate::parse(&as_typed(&neat)).is_ok_and(|again| again == rate);
        let unit = if same { neat } else { plain };
        return match rate {
            // Fluid ounces and weighed ones are one word.
            Rate::OuncesPerArea(_) | Rate::OuncesPerSpray(_) => (!is_liquid).then_some(Measure::Rate(unit)),
            Rate::MassPerArea(_) | Rate::MassPerSpray(_) if is_liquid => Some(Measure::OtherRate(unit)),
            Rate::VolumePerArea(_) if !is_liquid => Some(Measure::OtherRate(unit)),
            _ => Some(Measure::Rate(unit)),
        };
    }
    if LENGTHS.contains(&plain.as_str()) && Length::parse(&as_typed(&plain)).is_ok() {
        let unit = match plain.as_str() {
            "foot" | "feet" => "ft",
            "meter" | "meters" | "metre" | "metres" => "m",
            "inch" | "inches" => "in",
            other => other,
        };
        return Some(Measure::Length(unit.to_owned()));
    }
    let degrees = plain.trim_start_matches("degrees").trim_start_matches("deg").trim();
    if let Some(sign) = ["f", "c"].into_iter().find(|sign| *sign == degrees || long(sign) == degrees) {
        return Some(Measure::Degrees(format!("°{}", sign.to_uppercase())));
    }
    (Speed::parse(&as_typed(&plain)).is_ok())
        .then(|| Measure::Speed(if plain == "miles/hour" || plain == "mi/h" { "mph".to_owned() } else { plain }))
}

fn long(sign: &str) -> &'static str {
    if sign == "f" { "fahrenheit" } else { "celsius" }
}

/// Words of units in Spanish, and of long forms that the parser of units does not know.
const WRITTEN: [(&str, &str); 42] = [
    ("por", "per"),
    ("hectárea", "hectare"),
    ("hectáreas", "hectare"),
    ("onzas líquidas", "fl oz"),
    ("onza líquida", "fl oz"),
    ("onzas", "oz"),
    ("galones", "gallons"),
    ("galón", "gallon"),
    ("cuartos", "quarts"),
    ("cuarto", "quart"),
    ("pintas", "pints"),
    ("pinta", "pint"),
    ("libras", "pounds"),
    ("libra", "pound"),
    ("litros", "litres"),
    ("litro", "litre"),
    ("mililitros", "ml"),
    ("kilos", "kg"),
    ("kilogramos", "kg"),
    ("gramos", "g"),
    ("día", "day"),
    ("días", "days"),
    ("hora", "hour"),
    ("horas", "hours"),
    ("semana", "week"),
    ("semanas", "weeks"),
    ("mes", "month"),
    ("meses", "months"),
    ("minuto", "minute"),
    ("minutos", "minutes"),
    ("metro", "metre"),
    ("metros", "metres"),
    ("pie", "foot"),
    ("pies", "feet"),
    ("millas", "miles"),
    ("milla", "mile"),
    ("kilómetros", "kilometres"),
    ("kilometers per hour", "km/h"),
    ("kilometres per hour", "km/h"),
    ("acid equivalent", "ae"),
    ("active ingredient", "ai"),
    ("percent v/v", "% v/v"),
];

/// A unit in the words that the parser of units knows.
fn english(unit: &str) -> String {
    let mut all = format!(" {} ", unit.trim().replace("/ ", "/"));
    for (written, known) in WRITTEN {
        if all.contains(written) {
            all = all.replace(&format!(" {written} "), &format!(" {known} "));
        }
    }
    all.trim().to_owned()
}
