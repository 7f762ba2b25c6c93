//! Figures of a column: with as many decimals as all others, so that their points stand under each other.

use tankard_core::quantity::{Area, Quantity, Units};

/// Units that are shown to so many decimals at most, of which those that are nought are left out in a sentence.
const DECIMALS: [(&str, usize); 3] = [(" ac", 1), (" ha", 2), (" %", 1)];

/// An area to a hundredth of a hectare, or to a tenth of an acre.
pub fn area(area: Area, units: Units) -> String {
    padded(&area.show(units))
}

/// A figure with the decimals that a sentence leaves out: "1,770.0 ac" of "1,770 ac". What is no such figure stays as it is.
pub fn padded(text: &str) -> String {
    let is_number = |number: &str| {
        !number.is_empty() && number.chars().all(|letter| letter.is_ascii_digit() || "+-–,.".contains(letter))
    };
    for (unit, decimals) in DECIMALS {
        if let Some(number) = text.strip_suffix(unit).filter(|number| is_number(number)) {
            let there = number.split_once('.').map_or(0, |(_, part)| part.len());
            let point = if there == 0 { "." } else { "" };
            let noughts = "0".repeat(decimals.saturating_sub(there));
            return if noughts.is_empty() { text.to_owned() } else { format!("{number}{point}{noughts}{unit}") };
        }
    }
    text.to_owned()
}

#[cfg(test)]
mod tests {
    use super::padded;

    #[test]
    fn points_stand_under_each_other() {
        for (text, shown) in [
            ("1,770 ac", "1,770.0 ac"),
            ("2,184.6 ac", "2,184.6 ac"),
            ("34.8 ha", "34.80 ha"),
            ("0.29 ac", "0.29 ac"),
            ("+2 %", "+2.0 %"),
            ("at least 5 %", "at least 5 %"),
            ("347 gal", "347 gal"),
            ("12", "12"),
            ("", ""),
        ] {
            assert_eq!(padded(text), shown);
        }
    }
}
