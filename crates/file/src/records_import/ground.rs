//! Whether a heading speaks of ground: "Amount per acre" is a rate, and taken for the total it would be wrong by the size of
//! the field.

/// What a heading says of ground.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Ground {
    /// Nothing.
    None,
    /// It is over so much ground; the text goes behind the unit of an amount and makes it that of a rate.
    Over(&'static str),
    /// It is over something, or names ground, and does not say clearly which.
    Doubtful,
}

/// Words that stand before what something is over, in English, German, French and Spanish.
const PER: [&str; 6] = ["/", "per", "je", "pro", "par", "por"];
const ACRES: [&str; 3] = ["ac", "acre", "acres"];
const HECTARES: [&str; 8] = ["ha", "hectare", "hectares", "hektar", "hectárea", "hectarea", "hectáreas", "hectareas"];
/// As units are written with a power.
const POWERS: [(&str, &str); 6] =
    [("ac-1", "/ac"), ("acre-1", "/ac"), ("ac⁻¹", "/ac"), ("ha-1", "/ha"), ("ha⁻¹", "/ha"), ("ha^-1", "/ha")];

/// What a heading says of ground.
pub(super) fn of(heading: &str) -> Ground {
    let lower = heading.to_lowercase().replace('_', " ");
    if let Some((_, over)) = POWERS.iter().find(|(power, _)| lower.contains(power)) {
        return Ground::Over(over);
    }
    // A stroke in brackets may be between two units: "(L/kg)".
    let outside = lower.split(['(', '[']).next().unwrap_or_default().replace('/', " / ");
    let spaced = lower.replace('/', " / ");
    let words: Vec<&str> = spaced
        .split(|c: char| !(c.is_alphanumeric() || c == '/'))
        .filter(|word| !word.is_empty() && *word != "1")
        .collect();
    for (at, word) in words.iter().enumerate().filter(|(_, word)| PER.contains(word)) {
        // "per treated acre"
        let near = if *word == "/" { 1 } else { 2 };
        let mut after = words.iter().skip(at + 1).take(near);
        if let Some(over) = after.find_map(|word| over(word)) {
            return Ground::Over(over);
        }
    }
    let names = words.iter().any(|word| over(word).is_some());
    let is_over = outside.split(|c: char| c.is_whitespace()).any(|word| PER.contains(&word) || word == "each");
    if names || is_over { Ground::Doubtful } else { Ground::None }
}

fn over(word: &str) -> Option<&'static str> {
    if ACRES.contains(&word) {
        Some("/ac")
    } else if HECTARES.contains(&word) {
        Some("/ha")
    } else {
        None
    }
}

#[cfg(test)]
mod tests {
    use super::{Ground, of};

    #[test]
    fn headings_over_ground() {
        for (heading, ground) in [
            ("Amount per acre (pt)", Ground::Over("/ac")),
            ("Amount/ac", Ground::Over("/ac")),
            ("Amount / treated acre", Ground::Doubtful),
            ("Qty per treated acre", Ground::Over("/ac")),
            ("Menge je ha (L)", Ground::Over("/ha")),
            ("Menge pro Hektar", Ground::Over("/ha")),
            ("Quantité par hectare", Ground::Over("/ha")),
            ("Cantidad por ha", Ground::Over("/ha")),
            ("Menge (l/ha)", Ground::Over("/ha")),
            ("amount_per_1_ha", Ground::Over("/ha")),
            ("Menge L ha-1", Ground::Over("/ha")),
            ("Amount acre", Ground::Doubtful),
            ("Amount per tank (gal)", Ground::Doubtful),
            ("Amount (L/kg)", Ground::None),
            ("Amount (pt)", Ground::None),
        ] {
            assert_eq!(of(heading), ground, "{heading}");
        }
    }
}
