//! The names people write for units, each with its exact factor to the SI base unit.
//!
//! Names are matched without regard to case, dots or doubled spaces. A bare "gal", "qt", "pt" or "fl oz" is always the US
//! measure; the imperial one is written "imp gal" and so on, so that the two are never mixed up. The "a" of "pt/a" is an
//! acre below a US or imperial unit only, since below a metric one it may be an are.

use super::factor as f;

/// One unit: the names it goes by and its size in SI base units.
#[derive(Clone, Copy, Debug)]
pub struct Unit {
    /// Lower-case names without dots.
    pub names: &'static [&'static str],
    /// Size in SI base units.
    pub factor: f64,
}

const fn unit(names: &'static [&'static str], factor: f64) -> Unit {
    Unit { names, factor }
}

/// Volumes, in cubic metres.
pub const VOLUME: &[Unit] = &[
    unit(&["gal", "gals", "gallon", "gallons", "us gal", "usgal"], f::US_GALLON),
    unit(&["qt", "qts", "quart", "quarts", "us qt"], f::US_QUART),
    unit(&["pt", "pts", "pint", "pints", "us pt"], f::US_PINT),
    unit(&["fl oz", "floz", "fluid oz", "fluid ounce", "fluid ounces", "us fl oz"], f::US_FLUID_OUNCE),
    unit(&["cup", "cups"], f::US_PINT / 2.0),
    unit(&["tbsp"], f::US_FLUID_OUNCE / 2.0),
    unit(&["tsp"], f::US_FLUID_OUNCE / 6.0),
    unit(&["imp gal", "impgal", "uk gal", "imperial gallon", "imperial gallons", "gal (imp)"], f::IMPERIAL_GALLON),
    unit(&["imp qt", "uk qt"], f::IMPERIAL_GALLON / 4.0),
    unit(&["imp pt", "uk pt", "pt (imp)"], f::IMPERIAL_PINT),
    unit(&["imp fl oz", "uk fl oz", "fl oz (imp)"], f::IMPERIAL_FLUID_OUNCE),
    unit(&["l", "ltr", "liter", "liters", "litre", "litres"], f::LITRE),
    unit(&["ml", "milliliter", "milliliters", "millilitre", "millilitres", "cc", "cm3"], f::LITRE / 1000.0),
    unit(&["hl"], f::LITRE * 100.0),
    unit(&["m3", "cubic metre", "cubic meter"], 1.0),
];

/// Masses, in kilograms.
pub const MASS: &[Unit] = &[
    unit(&["lb", "lbs", "pound", "pounds"], f::POUND),
    unit(&["oz", "ounce", "ounces"], f::OUNCE),
    unit(&["dry oz", "oz wt"], f::OUNCE),
    unit(&["kg", "kilo", "kilogram", "kilograms"], 1.0),
    unit(&["g", "gram", "grams"], 0.001),
    unit(&["mg"], 1e-6),
    unit(&["t", "tonne", "tonnes"], 1000.0),
];

/// Areas, in square metres.
pub const AREA: &[Unit] = &[
    unit(&["ac", "acre", "acres"], f::ACRE),
    unit(&["ha", "hectare", "hectares"], f::HECTARE),
    unit(&["m2", "sq m"], 1.0),
    unit(&["ft2", "sq ft"], f::FOOT * f::FOOT),
    unit(&["1000 ft2", "1000 sq ft"], 1000.0 * f::FOOT * f::FOOT),
];

/// Lengths, in metres.
pub const LENGTH: &[Unit] = &[
    unit(&["ft", "foot", "feet"], f::FOOT),
    unit(&["in", "inch", "inches"], f::INCH),
    unit(&["yd", "yard", "yards"], f::FOOT * 3.0),
    unit(&["mi", "mile", "miles"], f::MILE),
    unit(&["m", "metre", "metres", "meter", "meters"], 1.0),
    unit(&["cm"], 0.01),
    unit(&["mm"], 0.001),
    unit(&["km"], 1000.0),
];

/// Speeds, in metres per second.
pub const SPEED: &[Unit] = &[
    unit(&["mph", "mi/h", "miles/hour"], f::MPH),
    unit(&["km/h", "kph", "kmh"], f::KMH),
    unit(&["m/s"], 1.0),
    unit(&["ft/min"], f::FOOT / 60.0),
    unit(&["kn", "knot", "knots"], 1852.0 / 3600.0),
];

/// Pressures, in pascals.
pub const PRESSURE: &[Unit] = &[
    unit(&["psi", "lb/in2"], f::PSI),
    unit(&["bar"], 1e5),
    unit(&["kpa"], 1e3),
    unit(&["mpa"], 1e6),
    unit(&["pa"], 1.0),
];

/// Flows, in cubic metres per second.
pub const FLOW: &[Unit] = &[
    unit(&["gpm", "gal/min"], f::US_GALLON / 60.0),
    unit(&["fl oz/min"], f::US_FLUID_OUNCE / 60.0),
    unit(&["imp gal/min"], f::IMPERIAL_GALLON / 60.0),
    unit(&["l/min", "lpm"], f::LITRE / 60.0),
    unit(&["ml/min"], f::LITRE / 60_000.0),
    unit(&["m3/h"], 1.0 / 3600.0),
];

/// Densities, in kilograms per cubic metre.
pub const DENSITY: &[Unit] = &[
    unit(&["lb/gal"], f::POUND / f::US_GALLON),
    unit(&["lb/imp gal"], f::POUND / f::IMPERIAL_GALLON),
    unit(&["kg/l", "g/ml", "g/cm3"], 1000.0),
    unit(&["g/l", "kg/m3"], 1.0),
];

/// Carrier volumes per area, in cubic metres per square metre.
pub const CARRIER: &[Unit] = &[
    unit(&["gal/ac", "gpa", "gal/acre", "gal/a", "gallons/acre"], f::US_GALLON_PER_ACRE),
    unit(&["imp gal/ac", "imp gal/acre"], f::IMPERIAL_GALLON / f::ACRE),
    unit(&["l/ha", "litres/hectare", "liters/hectare"], f::LITRE / f::HECTARE),
    unit(&["l/ac", "l/acre"], f::LITRE / f::ACRE),
];

/// Hardness as calcium carbonate, in kilograms per cubic metre.
pub const HARDNESS: &[Unit] = &[
    unit(&["ppm", "mg/l", "ppm caco3", "mg/l caco3"], f::MG_PER_LITRE),
    unit(&["gpg", "grains/gal", "grain/gal", "gr/gal", "grains"], f::GRAIN_PER_US_GALLON),
    unit(&["°dh", "dh"], f::GERMAN_DEGREE),
    unit(&["°fh", "fh"], f::FRENCH_DEGREE),
    unit(&["°e", "°clark", "clark"], f::CLARK_DEGREE),
    unit(&["mmol/l"], f::CACO3_MOLAR),
    unit(&["meq/l"], f::CACO3_MOLAR / 2.0),
];

/// Content of one ion in water, in kilograms per cubic metre.
pub const ION: &[Unit] = &[unit(&["ppm", "mg/l"], f::MG_PER_LITRE), unit(&["g/l"], 1.0)];

/// Electrical conductivities, in siemens per metre. Both signs for "micro" are read.
pub const CONDUCTIVITY: &[Unit] = &[
    unit(&["µs/cm", "μs/cm", "us/cm", "µmho/cm", "μmho/cm", "umho/cm"], f::MICROSIEMENS_PER_CENTIMETRE),
    unit(&["ms/cm", "ds/m", "mmho/cm"], 0.1),
    unit(&["ms/m"], 1e-3),
    unit(&["s/m"], 1.0),
];

/// Times, in seconds.
pub const TIME: &[Unit] = &[
    unit(&["h", "hr", "hrs", "hour", "hours"], 3600.0),
    unit(&["min", "mins", "minute", "minutes"], 60.0),
    unit(&["s", "sec", "seconds"], 1.0),
];

/// Shares of a whole.
pub const SHARE: &[Unit] = &[unit(&["%", "percent"], 0.01)];

/// Brings a unit's text to the form of the tables: lower case, one space, no dots, "per" as a stroke.
pub fn normal(text: &str) -> String {
    // Nearly all that is typed is like that already, and a large log has millions of it.
    if is_normal(text.trim()) {
        return text.trim().to_owned();
    }
    let lower = without_dots(&text.to_lowercase()).replace('²', "2").replace('³', "3");
    let words: Vec<&str> = lower.split_whitespace().map(|word| if word == "per" { "/" } else { word }).collect();
    words.join(" ").replace(" /", "/").replace("/ ", "/").replace("% ", "%")
}

/// Whether a text has the form of the tables for sure: plain words, or one with strokes or a per cent sign.
fn is_normal(text: &str) -> bool {
    let is_plain = |byte: u8| byte.is_ascii_lowercase() || byte.is_ascii_digit();
    let mut words = text.split(' ');
    if text.contains(' ') {
        words.all(|word| !word.is_empty() && word != "per" && word.bytes().all(is_plain))
    } else {
        text != "per" && text.bytes().all(|byte| is_plain(byte) || matches!(byte, b'/' | b'%'))
    }
}

/// Takes the dots of abbreviations away ("fl. oz.") and leaves those of numbers ("2.5 gal").
fn without_dots(text: &str) -> String {
    let next_is_digit =
        |at: usize| text.get(at + 1..).is_some_and(|rest| rest.starts_with(|c: char| c.is_ascii_digit()));
    text.char_indices().filter(|(at, letter)| *letter != '.' || next_is_digit(*at)).map(|(_, letter)| letter).collect()
}

/// Whether a unit of volume or mass is a metric one.
pub fn is_metric(normal_name: &str) -> bool {
    const METRIC: [&str; 14] =
        ["l", "ltr", "liter", "liters", "litre", "litres", "ml", "cc", "hl", "kg", "g", "mg", "t", "gram"];
    METRIC.contains(&normal_name)
}

/// Finds a unit by its normal name.
pub fn find<'table>(table: &'table [Unit], normal_name: &str) -> Option<&'table Unit> {
    table.iter().find(|unit| unit.names.contains(&normal_name))
}

#[cfg(test)]
mod tests {
    use super::normal;

    /// What is taken as it stands is what the long way would make of it.
    #[test]
    fn what_is_normal_already_is_left_as_it_is() {
        let names = [super::VOLUME, super::MASS, super::AREA, super::SPEED, super::CARRIER, super::SHARE];
        for name in names.into_iter().flatten().flat_map(|unit| unit.names) {
            assert_eq!(normal(name), *name);
            // A dot makes it go the long way.
            assert_eq!(normal(&format!("  {name}. ")), *name);
        }
        for (typed, is) in
            [("per", "/"), ("L per ha", "l/ha"), ("l per ha", "l/ha"), ("gal  / ac", "gal/ac"), ("% v/v", "%v/v")]
        {
            assert_eq!(normal(typed), is);
        }
    }
}
