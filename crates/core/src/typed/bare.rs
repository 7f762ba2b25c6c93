//! A number without its unit, or with half of it, and what it was probably meant as: in the unit of what stood in the box before, else in the
//! units of the farm. Nothing is taken by itself.

use crate::quantity::number::take;
use crate::quantity::{Quantity, Units};

/// Units in which a kind of quantity is usually typed, the likeliest first. The kinds are told apart by their examples. Common practice,
/// no source.
struct Usual {
    /// The example of the kind.
    of: &'static str,
    /// On farms with US units, with imperial and with metric ones.
    units: [&'static [&'static str]; 3],
    /// An example on farms with imperial and with metric units.
    examples: [&'static str; 2],
}

const USUAL: [Usual; 20] = [
    usual("74.6 ac", [&["ac"], &["ac"], &["ha"]], ["74.6 ac", "30.2 ha"]),
    usual("1200 gal", [&["gal"], &["imp gal"], &["L"]], ["1000 imp gal", "4500 L"]),
    usual("51 lb", [&["lb"], &["lb"], &["kg"]], ["51 lb", "25 kg"]),
    usual("15 gal/ac", [&["gal/ac"], &["imp gal/ac"], &["L/ha"]], ["15 imp gal/ac", "140 L/ha"]),
    usual(
        "22 fl oz/ac",
        [
            &["fl oz/ac", "lb/ac", "% v/v", "fl oz/100 gal", "lb/100 gal"],
            &["imp fl oz/ac", "lb/ac", "% v/v"],
            &["L/ha", "kg/ha", "% v/v", "L/100 L"],
        ],
        ["22 imp fl oz/ac", "1.6 L/ha"],
    ),
    usual("1.5 lb/ac", [&["lb/ac"], &["lb/ac"], &["kg/ha"]], ["1.5 lb/ac", "1.7 kg/ha"]),
    usual("17 lb/100 gal", [&["lb/100 gal"], &["lb/100 imp gal"], &["g/L"]], ["17 lb/100 imp gal", "20 g/L"]),
    usual("10.2 lb/gal", [&["lb/gal"], &["lb/imp gal"], &["kg/L"]], ["12.2 lb/imp gal", "1.22 kg/L"]),
    usual("350 ppm", [&["ppm", "gpg"], &["ppm"], &["ppm"]], ["350 ppm", "350 ppm"]),
    usual("118 ppm", [&["ppm"], &["ppm"], &["ppm"]], ["118 ppm", "118 ppm"]),
    usual("750 µS/cm", [&["µS/cm"], &["µS/cm"], &["µS/cm"]], ["750 µS/cm", "750 µS/cm"]),
    usual("120 ft", [&["ft", "in"], &["ft", "in"], &["m", "cm"]], ["120 ft", "36 m"]),
    usual("12 mph", [&["mph"], &["mph"], &["km/h"]], ["12 mph", "20 km/h"]),
    usual("40 psi", [&["psi"], &["psi"], &["bar"]], ["40 psi", "2.8 bar"]),
    usual("0.4 gal/min", [&["gal/min"], &["imp gal/min"], &["L/min"]], ["0.35 imp gal/min", "1.5 L/min"]),
    usual("65 %", [&["%"], &["%"], &["%"]], ["65 %", "65 %"]),
    usual("68 °F", [&["°F"], &["°F"], &["°C"]], ["68 °F", "20 °C"]),
    usual("540 g/L", [&["g/L", "lb/gal", "% w/w"], &["g/L", "% w/w"], &["g/L", "% w/w"]], ["540 g/L", "540 g/L"]),
    usual("2.5 gal", [&["gal", "lb"], &["imp gal", "lb"], &["L", "kg"]], ["2.5 imp gal", "10 L"]),
    usual(
        "24.50 / gal",
        [&["/ gal", "/ lb"], &["/ imp gal", "/ lb"], &["/ L", "/ kg"]],
        ["29.50 / imp gal", "6.50 / L"],
    ),
];

const fn usual(of: &'static str, units: [&'static [&'static str]; 3], examples: [&'static str; 2]) -> Usual {
    Usual { of, units, examples }
}

fn of<Q: Quantity>() -> Option<&'static Usual> {
    USUAL.iter().find(|usual| usual.of == Q::EXAMPLE)
}

const fn system(units: Units) -> usize {
    match units {
        Units::UsCustomary => 0,
        Units::Imperial => 1,
        Units::Metric => 2,
    }
}

/// An example of a quantity in a farm's own system.
///
/// ```
/// use tankard_core::quantity::{Area, Units};
/// assert_eq!(tankard_core::typed::example::<Area>(Units::Metric), "30.2 ha");
/// ```
pub fn example<Q: Quantity>(units: Units) -> &'static str {
    let own = of::<Q>().and_then(|usual| usual.examples.get(system(units).checked_sub(1)?));
    own.copied().unwrap_or(Q::EXAMPLE)
}

/// So many are offered at most.
const MOST: usize = 3;

/// What a text was probably meant as that cannot be read, since its unit or the end of that is missing: "36 ac" for "36", "32 fl oz/ac" for
/// "32 fl oz". `before` is what stood in the box. Empty where the text is wrong otherwise.
///
/// ```
/// use tankard_core::quantity::{Area, Length, Rate, Units};
/// use tankard_core::typed::meant;
/// assert_eq!(meant::<Area>("36", "", Units::UsCustomary), ["36 ac"]);
/// assert_eq!(meant::<Rate>("32 fl oz", "", Units::UsCustomary)[0], "32 fl oz/ac");
/// assert_eq!(meant::<Length>("15", "20 in", Units::UsCustomary)[0], "15 in");
/// ```
pub fn meant<Q: Quantity>(text: &str, before: &str, units: Units) -> Vec<String> {
    let text = text.trim();
    if Q::parse(text).is_ok() {
        return Vec::new();
    }
    let Some((number, typed)) = apart(text) else { return Vec::new() };
    let own = of::<Q>().and_then(|usual| usual.units.get(system(units))).copied().unwrap_or_default();
    let was = Q::parse(before).ok().and_then(|_| apart(before)).map(|(_, unit)| unit);
    let likely: Vec<&str> = was.into_iter().filter(|unit| !unit.is_empty()).chain(own.iter().copied()).collect();
    let mut all: Vec<String> = Vec::new();
    for unit in likely {
        let whole = if typed.is_empty() {
            Some(format!("{number} {unit}"))
        } else {
            ended(typed, unit).map(|unit| format!("{number} {unit}"))
        };
        let Some(whole) = whole.filter(|whole| Q::parse(whole).is_ok()) else { continue };
        if !all.contains(&whole) {
            all.push(whole);
        }
    }
    all.truncate(MOST);
    all
}

/// A number and its unit, as typed; none where the text does not begin with a number or holds two.
fn apart(text: &str) -> Option<(&str, &str)> {
    let text = text.trim();
    let (_, rest) = take(text).ok()?;
    let number = text.get(..text.len().checked_sub(rest.len())?)?.trim_end();
    Some((number, rest.trim()))
}

/// A unit of which the end is missing, with the end of a likely one: "fl oz" with "/ac", "%" with " v/v".
fn ended(typed: &str, unit: &str) -> Option<String> {
    if typed.contains('/') || typed.contains(" per ") {
        return None;
    }
    if unit.starts_with('%') {
        return (typed == "%").then(|| unit.to_owned());
    }
    let (_, bottom) = unit.split_once('/')?;
    Some(format!("{typed}/{bottom}"))
}

#[cfg(test)]
mod tests {
    use super::{USUAL, example, meant};
    use crate::quantity::{
        Amount, Area, CarrierRate, Concentration, Conductivity, Density, Flow, Hardness, IonContent, Length, Mass,
        MassPerArea, MassPerVolume, Pressure, Price, Quantity, Rate, Share, Speed, Temperature, Units, Volume,
    };

    const US: Units = Units::UsCustomary;

    #[test]
    fn a_bare_number_gets_the_units_of_the_farm() {
        assert_eq!(meant::<Area>("36", "", Units::Metric), ["36 ha"]);
        assert_eq!(meant::<IonContent>(" 92 ", "", US), ["92 ppm"]);
        assert_eq!(meant::<Speed>("9", "", US), ["9 mph"]);
        assert_eq!(meant::<Share>("65", "", US), ["65 %"]);
        assert_eq!(meant::<Volume>("1000", "", Units::Imperial), ["1000 imp gal"]);
        assert_eq!(meant::<Length>("20", "", US), ["20 ft", "20 in"]);
        assert_eq!(meant::<Rate>("32", "0 fl oz/ac", US), ["32 fl oz/ac", "32 lb/ac", "32 % v/v"]);
        // What stood in the box says more than the farm.
        assert_eq!(meant::<Rate>("0.3", "0.25 % v/v", US)[0], "0.3 % v/v");
        assert_eq!(meant::<Rate>("1 1/2", "1 pt/ac", US)[0], "1 1/2 pt/ac");
    }

    #[test]
    fn half_a_unit_gets_its_other_half() {
        assert_eq!(meant::<Rate>("32 fl oz", "", US), ["32 fl oz/ac", "32 fl oz/100 gal"]);
        assert_eq!(meant::<Rate>("2 L", "", Units::Metric), ["2 L/ha", "2 L/100 L"]);
        assert_eq!(meant::<Rate>("0.25 %", "", US), ["0.25 % v/v"]);
        assert_eq!(meant::<CarrierRate>("15 gal", "", US), ["15 gal/ac"]);
        assert_eq!(meant::<Flow>("0.4 gal", "", US), ["0.4 gal/min"]);
        assert_eq!(meant::<Density>("10.2 lb", "", US), ["10.2 lb/gal"]);
    }

    #[test]
    fn what_reads_or_is_wrong_otherwise_has_no_offer() {
        for text in ["36 ac", "", "many", "36 gal", "36 zz", "-5"] {
            assert!(meant::<Area>(text, "", US).is_empty(), "{text}: {:?}", meant::<Area>(text, "", US));
        }
        assert!(meant::<Rate>("120 % v/v", "", US).is_empty());
    }

    /// Each row is of a kind, its units are read as it and so are its examples.
    #[test]
    fn the_table_fits_the_quantities() {
        fn fits<Q: Quantity>() -> usize {
            let row = USUAL.iter().position(|usual| usual.of == Q::EXAMPLE).unwrap();
            for unit in USUAL[row].units.iter().copied().flatten() {
                assert!(Q::parse(&format!("20 {unit}")).is_ok(), "{unit}");
            }
            for units in [Units::UsCustomary, Units::Imperial, Units::Metric] {
                assert!(Q::parse(example::<Q>(units)).is_ok());
                assert!(!meant::<Q>("20", "", units).is_empty());
            }
            row
        }
        let mut rows = vec![
            fits::<Area>(),
            fits::<Volume>(),
            fits::<Mass>(),
            fits::<CarrierRate>(),
            fits::<Rate>(),
            fits::<MassPerArea>(),
            fits::<MassPerVolume>(),
            fits::<Density>(),
            fits::<Hardness>(),
            fits::<IonContent>(),
            fits::<Conductivity>(),
            fits::<Length>(),
            fits::<Speed>(),
            fits::<Pressure>(),
            fits::<Flow>(),
            fits::<Share>(),
            fits::<Temperature>(),
            fits::<Concentration>(),
            fits::<Amount>(),
            fits::<Price>(),
        ];
        rows.sort_unstable();
        assert_eq!(rows, (0..USUAL.len()).collect::<Vec<_>>());
        assert_eq!(example::<Price>(US), Price::EXAMPLE);
        assert_eq!(meant::<Price>("24.50", "", US)[0], "24.50 / gal");
    }
}
