//! Prints amounts the way they are measured out: "13 gal 3 qt", "1 gal 3 qt 16 fl oz", "350 mL", "3 lb 4 oz".

use super::factor as f;
use super::number::show;
use super::{Amount, Mass, Units, Volume};

/// Prints an amount in practical units of the system.
pub fn show_amount(amount: Amount, units: Units) -> String {
    match amount {
        Amount::Volume(volume) => show_volume(volume, units),
        Amount::Mass(mass) => show_mass(mass, units),
    }
}

/// Prints a volume in practical units: gallons, quarts and fluid ounces, or litres and millilitres.
///
/// Rounded to a hundredth of the smallest unit shown, or finer; nothing is rounded away that a measuring jug could show.
///
/// ```
/// use tankard_core::quantity::{Units, Volume, practical::show_volume};
/// assert_eq!(show_volume(Volume::from_us_gallons(13.75), Units::UsCustomary), "13 gal 3 qt");
/// assert_eq!(show_volume(Volume::from_us_fluid_ounces(240.0), Units::UsCustomary), "1 gal 3 qt 16 fl oz");
/// assert_eq!(show_volume(Volume::from_litres(0.35), Units::Metric), "350 mL");
/// ```
pub fn show_volume(volume: Volume, units: Units) -> String {
    match units {
        Units::UsCustomary => {
            // Below one fluid ounce a cup's marks end and a syringe's begin.
            if volume.to_us_fluid_ounces().abs() < 0.995 && !volume.is_zero() {
                return millilitres(volume);
            }
            mixed(volume.to_cubic_metres(), &[(f::US_GALLON, "gal"), (f::US_QUART, "qt"), (f::US_FLUID_OUNCE, "fl oz")])
        }
        Units::Imperial => {
            if volume.to_imperial_fluid_ounces().abs() < 0.995 && !volume.is_zero() {
                return millilitres(volume);
            }
            mixed(
                volume.to_cubic_metres(),
                &[
                    (f::IMPERIAL_GALLON, "imp gal"),
                    (f::IMPERIAL_PINT, "imp pt"),
                    (f::IMPERIAL_FLUID_OUNCE, "imp fl oz"),
                ],
            )
        }
        Units::Metric if volume.to_litres().abs() < 0.999_5 && !volume.is_zero() => millilitres(volume),
        Units::Metric => format!("{} L", show(volume.to_litres(), 3)),
    }
}

fn millilitres(volume: Volume) -> String {
    format!("{} mL", show_small(volume.to_litres() * 1000.0))
}

/// A small number with three significant figures or more.
fn show_small(value: f64) -> String {
    let decimals = match value.abs() {
        size if size >= 100.0 => 1,
        size if size >= 2.0 => 2,
        size if size >= 1.0 => 3,
        _ => 5,
    };
    show(value, decimals)
}

/// Prints a mass in practical units: pounds and ounces, or kilograms and grams.
pub fn show_mass(mass: Mass, units: Units) -> String {
    match units {
        Units::Metric if mass.to_kilograms().abs() < 0.999_95 && !mass.is_zero() => {
            format!("{} g", show_small(mass.to_grams()))
        }
        Units::Metric => format!("{} kg", show(mass.to_kilograms(), 3)),
        _ if mass.to_ounces().abs() < 0.995 && !mass.is_zero() => format!("{} g", show_small(mass.to_grams())),
        _ => mixed(mass.to_kilograms(), &[(f::POUND, "lb"), (f::OUNCE, "oz")]),
    }
}

/// Splits into units from large to small; the smallest takes the rest, to a hundredth, or to a thousandth where there is
/// little of it.
fn mixed(base: f64, units: &[(f64, &str)]) -> String {
    let Some(&(smallest, smallest_name)) = units.last() else { return String::new() };
    // Counting in whole parts of the smallest unit keeps "3 qt 32 fl oz" from appearing.
    let (fine, decimals) = if base.abs() < smallest * 10.0 { (1000.0, 3) } else { (100.0, 2) };
    let mut left = (base.abs() / smallest * fine).round();
    let mut parts = Vec::new();
    for &(size, name) in units {
        let step = (size / smallest * fine).round();
        if name == smallest_name {
            if left > 0.0 || parts.is_empty() {
                parts.push(format!("{} {name}", show(left / fine, decimals)));
            }
        } else {
            let count = (left / step).floor();
            if count > 0.0 {
                parts.push(format!("{} {name}", show(count, 0)));
                left -= count * step;
            }
        }
    }
    let text = if base == 0.0 { format!("0 {}", units.first().map_or("", |unit| unit.1)) } else { parts.join(" ") };
    if base < 0.0 { format!("-{text}") } else { text }
}
