//! Brackets that say an amount once more in other units: "1.5 pints (24 fl oz) per acre". They are taken out of the sentence, and held
//! against what stands before them.

use std::ops::Range;

use super::items::{Figure, Item, What, quantity};
use super::table::turns;
use super::tokens::{Sort, Token, in_digits, tokens};
use super::units::{Measure, typed};
use crate::quantity::{AsTyped, CarrierRate, Length, Rate, Speed, Temperature};

/// Takes the brackets out that say an amount or a number once more, and tells the bytes of those that say an amount.
pub(super) fn take_asides(text: &str, tokens: &mut Vec<Token>) -> Vec<Range<usize>> {
    let mut asides = Vec::new();
    let mut from = 0;
    while let Some(open) = (from..tokens.len()).find(|at| sort(tokens, *at) == Some(Sort::Open)) {
        from = open + 1;
        let Some(close) = (open + 1..tokens.len()).find(|at| sort(tokens, *at) == Some(Sort::Close)) else { break };
        let slice = |at: usize| tokens.get(at).and_then(|token| text.get(token.at.clone())).unwrap_or_default();
        if sort(tokens, open + 1) != Some(Sort::Number) || open == 0 {
            continue;
        }
        let before = slice(open - 1).to_lowercase();
        if close == open + 2 {
            // "one (1)"
            if in_digits(&before).unwrap_or(&before) == slice(open + 1) {
                tokens.drain(open..=close);
            }
            continue;
        }
        // Behind the unit of an amount, which has its number not far before it.
        let is_unit = matches!(sort(tokens, open - 1), Some(Sort::Word | Sort::Percent));
        let counts = (open.saturating_sub(8)..open).any(|at| sort(tokens, at) == Some(Sort::Number));
        let bytes = tokens.get(open + 1).zip(tokens.get(close - 1)).map(|(first, last)| first.at.start..last.at.end);
        if let (true, true, Some(bytes)) = (is_unit, counts, bytes) {
            asides.push(bytes);
            tokens.drain(open..=close);
            from = open;
        }
    }
    asides
}

fn sort(tokens: &[Token], at: usize) -> Option<Sort> {
    tokens.get(at).map(|token| token.sort)
}

/// The first aside that does not say what the figure before it says.
pub(super) fn unlike<'t>(text: &'t str, items: &[Item], asides: &[Range<usize>]) -> Option<&'t str> {
    asides.iter().find_map(|aside| {
        let own = text.get(aside.clone())?;
        let figure = items.iter().rev().find_map(|item| match &item.what {
            What::Figure(figure) if item.at.start < aside.start => Some(figure),
            _ => None,
        });
        (!figure.is_some_and(|figure| says_again(figure, own))).then_some(own)
    })
}

/// Whether a text says the amount of a figure, in other units or as an active.
fn says_again(figure: &Figure, own: &str) -> bool {
    let Some((numbers, unit)) = numbers_and_unit(own) else { return false };
    let words: Vec<String> = unit.split([' ', '/']).map(|word| word.replace('.', "")).collect();
    let is_active = words.iter().any(|word| ["ae", "ai", "active", "acid"].contains(&word.as_str()));
    let of = match &figure.measure {
        // How much of the active that is follows from the product's content. A word that turns it makes it something else.
        Measure::Rate(_) | Measure::OtherRate(_) if is_active => {
            return !words.iter().any(|word| word != "per" && turns(word));
        }
        Measure::Rate(unit)
        | Measure::OtherRate(unit)
        | Measure::Water(unit)
        | Measure::Length(unit)
        | Measure::Speed(unit)
        | Measure::Degrees(unit) => unit,
        Measure::Days => "days",
        Measure::Weeks => "weeks",
        _ => return false,
    };
    let ends: Vec<&str> = figure.least.iter().map(String::as_str).chain([figure.most.as_str()]).collect();
    ends.len() == numbers.len()
        && ends.iter().zip(&numbers).all(|(end, number)| same_amount((end, of), (number, &unit)))
}

/// "1 to 2 quarts per 100 gallons of spray mix" as its numbers and "qt/100 gal".
fn numbers_and_unit(text: &str) -> Option<(Vec<String>, String)> {
    const NOTHING: [&str; 10] =
        ["of", "this", "product", "spray", "mix", "mixture", "solution", "water", "dry", "approximately"];
    let tokens = tokens(text);
    let slice = |at: usize| tokens.get(at).and_then(|token| text.get(token.at.clone())).unwrap_or_default();
    let is_number = |at: usize| sort(&tokens, at) == Some(Sort::Number);
    let joins = sort(&tokens, 1) == Some(Sort::Dash) || slice(1) == "to";
    let is_range = joins && is_number(2);
    let mut numbers = vec![slice(0).to_owned()];
    numbers.extend(is_range.then(|| slice(2).to_owned()));
    let from = tokens.get(if is_range { 2 } else { 0 })?.at.end;
    let words = text.get(from..)?.to_lowercase().replace('/', " / ");
    let unit: Vec<&str> = words.split_whitespace().filter(|word| !NOTHING.contains(word)).collect();
    Some((numbers, unit.join(" ")))
}

/// How far two roundings of one amount lie apart at most: "25 feet (7.6 m)", "10 gallons (38 L)".
const ROUNDING: f64 = 0.06;

/// Whether two numbers with units are one amount. The second may leave out over what it is.
fn same_amount((number, unit): (&str, &str), (own, own_unit): (&str, &str)) -> bool {
    let near = |ratio: Option<f64>| ratio.is_some_and(|ratio| (ratio - 1.0).abs() <= ROUNDING);
    let days = |number: &str, unit: &str| {
        let each = [("days", 1.0), ("day", 1.0), ("weeks", 7.0), ("week", 7.0)].into_iter().find(|it| it.0 == unit)?.1;
        number.parse::<f64>().ok().map(|number| number * each)
    };
    if let (Some(one), Some(other)) = (days(number, unit), days(own, own_unit)) {
        return near(Some(one / other));
    }
    let below = unit.split_once('/').map(|(_, below)| format!("{own_unit}/{below}"));
    let own_units = [Some(own_unit.to_owned()), below];
    own_units.into_iter().flatten().map(|unit| typed(&unit)).any(|own_unit| {
        let rates: Option<(AsTyped<Rate>, AsTyped<Rate>)> = quantity(number, unit).zip(quantity(own, &own_unit));
        let waters: Option<(AsTyped<CarrierRate>, AsTyped<CarrierRate>)> =
            quantity(number, unit).zip(quantity(own, &own_unit));
        let lengths: Option<(AsTyped<Length>, AsTyped<Length>)> = quantity(number, unit).zip(quantity(own, &own_unit));
        let speeds: Option<(AsTyped<Speed>, AsTyped<Speed>)> = quantity(number, unit).zip(quantity(own, &own_unit));
        let degrees: Option<(AsTyped<Temperature>, AsTyped<Temperature>)> =
            quantity(number, unit).zip(quantity(own, &own_unit));
        near(rates.and_then(|(one, other)| match (one.value(), other.value()) {
            (Rate::VolumePerArea(one), Rate::VolumePerArea(other)) => one.ratio(other),
            (Rate::VolumePerSpray(one), Rate::VolumePerSpray(other)) => one.ratio(other),
            (
                Rate::MassPerArea(one) | Rate::OuncesPerArea(one),
                Rate::MassPerArea(other) | Rate::OuncesPerArea(other),
            ) => one.ratio(other),
            (
                Rate::MassPerSpray(one) | Rate::OuncesPerSpray(one),
                Rate::MassPerSpray(other) | Rate::OuncesPerSpray(other),
            ) => one.ratio(other),
            _ => None,
        })) || near(waters.and_then(|(one, other)| one.value().ratio(other.value())))
            || near(lengths.and_then(|(one, other)| one.value().ratio(other.value())))
            || near(speeds.and_then(|(one, other)| one.value().ratio(other.value())))
            || degrees.is_some_and(|(one, other)| (one.value().to_celsius() - other.value().to_celsius()).abs() < 1.0)
    })
}

#[cfg(test)]
mod tests {
    use super::{take_asides, unlike};
    use crate::label::directions::items::items;
    use crate::label::directions::tokens::tokens;
    use crate::quantity::Units;

    #[test]
    fn an_amount_in_brackets_is_the_one_before_it() {
        for text in [
            "1.5 pints (24 fl oz) per acre",
            "0.25 to 0.5% v/v (1 to 2 quarts per 100 gallons of spray mix)",
            "3 fl oz/A (0.094 lb ai/A)",
            "16 fluid ounces (0.56 pound acid equivalent) per acre",
            "25 feet (7.6 m) from wells",
            "10 gallons per acre (94 L/ha) of water",
            "above 85°F (29°C)",
            "42 days (6 weeks)",
            "10 mph (16 km/h)",
        ] {
            assert_eq!(take_asides(text, &mut tokens(text)).len(), 1, "{text}");
            let cut = items(text, true, Units::UsCustomary);
            assert_eq!(unlike(text, &cut.items, &cut.asides), None, "{text}");
        }
        for text in
            ["1.5 pints (32 fl oz) per acre", "22 fl oz/A (32 fl oz/A for perennials)", "25 feet (50 m) from wells"]
        {
            let cut = items(text, true, Units::UsCustomary);
            assert!(unlike(text, &cut.items, &cut.asides).is_some(), "{text}");
        }
        for text in ["the V3 (REI)", "two (2) applications", "weeds (4 inches)", "one (2)"] {
            assert!(take_asides(text, &mut tokens(text)).is_empty(), "{text}");
        }
    }
}
