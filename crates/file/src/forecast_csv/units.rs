//! Which units a column may have, and the words that files write for them.

use tankard_core::farm::Holds;
use tankard_core::t;

use crate::table::{Row, when};

/// A share written from 0 to 1.
pub(super) const FRACTION: &str = "fraction";
/// Eighths of the sky.
pub(super) const OKTAS: &str = "oktas";
/// A direction as a point of the compass.
pub(super) const POINT: &str = "compass point";

/// The units that can be chosen for what a column holds, in the words of a layout; for a day, how it is written.
pub const fn units(holds: Holds) -> &'static [&'static str] {
    match holds {
        Holds::DateAndTime => &[
            when::DAYS[0],
            when::DAYS[1],
            when::DAYS[2],
            when::DAYS[3],
            when::DAYS[4],
            when::DAYS[5],
            when::DAYS[6],
            when::DAYS[7],
            when::UNIX,
        ],
        Holds::Date => &when::DAYS,
        Holds::Time => &[],
        Holds::Temperature | Holds::Higher | Holds::DewPoint => &["°C", "°F"],
        Holds::Wind | Holds::Gust => &["mph", "km/h", "m/s", "kn"],
        Holds::WindFrom => &["°", POINT],
        Holds::Rain => &["mm", "in"],
        Holds::Humidity | Holds::RainChance => &["%", FRACTION],
        Holds::Cloud => &["%", FRACTION, OKTAS],
    }
}

/// A unit of a layout as it is shown; signs of units are the same in each language.
pub fn unit_words(unit: &str) -> &str {
    match unit {
        FRACTION => t!("file-unit-fraction"),
        OKTAS => t!("file-unit-oktas"),
        POINT => t!("file-unit-compass-point"),
        unit => when::day_words(unit),
    }
}

/// Whether a column must have a unit, unless each of its figures has its own.
pub const fn needs_unit(holds: Holds) -> bool {
    !units(holds).is_empty()
}

/// The unit of a layout that a word in a heading or below it stands for.
pub(super) fn unit_of(holds: Holds, word: &str) -> Option<&'static str> {
    let mut word = word.trim().to_lowercase().replace(['º', '˚'], "°");
    word.retain(|letter| !matches!(letter, ' ' | '.' | '(' | ')' | '[' | ']'));
    let word = word.as_str();
    let found = match holds {
        Holds::Temperature | Holds::Higher | Holds::DewPoint => match word {
            "°c" | "c" | "degc" | "celsius" | "℃" | "degreescelsius" | "degreesc" => "°C",
            "°f" | "f" | "degf" | "fahrenheit" | "℉" | "degreesfahrenheit" | "degreesf" => "°F",
            _ => return None,
        },
        Holds::Wind | Holds::Gust => match word {
            "mph" | "mi/h" | "mi/hr" | "miles/h" | "miles/hour" | "milesperhour" => "mph",
            "km/h" | "kmh" | "kph" | "kmph" | "km/hr" | "kmh-1" => "km/h",
            "m/s" | "ms" | "mps" | "m_s" | "ms-1" | "m/sec" => "m/s",
            "kn" | "kt" | "kts" | "knot" | "knots" => "kn",
            _ => return None,
        },
        Holds::WindFrom => match word {
            "°" | "deg" | "degree" | "degrees" | "degt" | "°t" | "°true" | "degreestrue" | "azimuth" => "°",
            "point" | "compass" | "compasspoint" | "cardinal" => POINT,
            _ => return None,
        },
        Holds::Rain => match word {
            "mm" | "millimetre" | "millimetres" | "millimeter" | "millimeters" | "l/m2" | "l/m²" | "mm/h" => "mm",
            "in" | "inch" | "inches" | "\"" | "in/h" | "in/hr" => "in",
            _ => return None,
        },
        Holds::Humidity | Holds::RainChance | Holds::Cloud => match word {
            "%" | "percent" | "pct" | "prozent" | "%rh" => "%",
            "fraction" | "frac" | "0-1" | "0…1" | "01" => FRACTION,
            "okta" | "oktas" | "octas" | "eighths" | "1/8" | "/8" if matches!(holds, Holds::Cloud) => OKTAS,
            _ => return None,
        },
        Holds::DateAndTime | Holds::Date | Holds::Time => return None,
    };
    Some(found)
}

/// Whether a line below the header gives the units of its columns.
pub(super) fn is_row_of_units(row: &Row) -> bool {
    let cells: Vec<&str> = (0..row.len()).map(|at| row.cell(at)).filter(|cell| !cell.is_empty()).collect();
    let is_unit = |cell: &&&str| Holds::ALL.into_iter().any(|holds| unit_of(holds, cell).is_some());
    // What stands below the times may be anything, such as "UTC".
    let units = cells.iter().filter(is_unit).count();
    units > 0 && units * 2 + 2 > cells.len()
}
