//! What a person types for a quantity.

use tankard_core::quantity::{
    Acidity, Amount, Area, AsTyped, Bearing, CarrierRate, Concentration, Conductivity, Density, Duration, Flow,
    Hardness, IonContent, Length, Mass, MassPerArea, MassPerVolume, Pressure, Price, Quantity, Rate, Share, Speed,
    Temperature, TemperatureSpan, Units, Volume, VolumePerArea,
};

const SYSTEMS: [Units; 3] = [Units::UsCustomary, Units::Imperial, Units::Metric];

/// Reads a text as each quantity.
///
/// # Panics
/// A reader panics; a number is not finite; what is printed does not read, or reads and prints otherwise.
pub fn quantities(bytes: &[u8]) -> bool {
    let Ok(text) = std::str::from_utf8(bytes) else { return false };
    // Each is tried, whatever the others said.
    [
        one::<Acidity>(text),
        one::<Amount>(text),
        one::<Area>(text),
        one::<Bearing>(text),
        one::<CarrierRate>(text),
        one::<Concentration>(text),
        one::<Conductivity>(text),
        one::<Density>(text),
        one::<Duration>(text),
        one::<Flow>(text),
        one::<Hardness>(text),
        one::<IonContent>(text),
        one::<Length>(text),
        one::<Mass>(text),
        one::<MassPerArea>(text),
        one::<MassPerVolume>(text),
        one::<Pressure>(text),
        one::<Price>(text),
        one::<Rate>(text),
        one::<Share>(text),
        one::<Speed>(text),
        one::<Temperature>(text),
        one::<TemperatureSpan>(text),
        one::<Volume>(text),
        one::<VolumePerArea>(text),
    ]
    .contains(&true)
}

/// Whether it is one.
fn one<Q: Quantity + std::fmt::Debug>(text: &str) -> bool {
    let value = match AsTyped::<Q>::parse(text) {
        Ok(typed) => {
            assert_eq!(typed.text(), text);
            typed.value()
        }
        Err(error) => {
            assert!(!error.problem.is_empty() && !error.to_string().is_empty());
            return false;
        }
    };
    super::finite(&format!("{value:?}"));
    for units in SYSTEMS {
        let shown = value.show(units);
        let is_number = |word: &str| shown.split(|letter: char| !letter.is_alphanumeric()).any(|own| own == word);
        assert!(!shown.is_empty() && !is_number("NaN") && !is_number("inf"), "{text:?} shows as {shown:?}");
        // Rounding may lead over the border to another unit once: 63.99 fl oz show as 64 fl oz, and these as 4 pt.
        let Some(once) = read_back::<Q>(text, &shown) else { continue };
        let once = once.show(units);
        let Some(twice) = read_back::<Q>(text, &once) else { continue };
        assert_eq!(twice.show(units), once, "{text:?} creeps as {} in {units:?}", Q::called());
    }
    true
}

/// What is printed reads back. "1,200" is read by a person; the reader asks which of two it means, and never takes the wrong
/// one. Nothing for what is beyond what a person types, such as the largest figure in the smallest unit.
fn read_back<Q: Quantity>(text: &str, shown: &str) -> Option<Q> {
    match Q::parse(shown) {
        Ok(back) => Some(back),
        Err(error) if error.problem.contains("too large") => None,
        Err(error) => {
            assert!(shown.contains(','), "{text:?} shows as {shown:?}: {error}");
            let plain = Q::parse(&shown.replace(',', ""));
            if let Err(error) = &plain {
                assert!(error.problem.contains("too large"), "{text:?} shows as {shown:?}: {error}");
            }
            plain.ok()
        }
    }
}
