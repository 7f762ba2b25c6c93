//! Words and figures in a sentence. A figure is a number, or two with a dash or "to" between them, and the unit behind it, read by the
//! parser that reads what people type.

use std::ops::Range;

use crate::quantity::unit::normal;
use crate::quantity::{AsTyped, CarrierRate, Length, Quantity, Rate, Speed, Units, Volume, number};

/// A word, a figure, or where a phrase ends.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Item {
    pub(super) what: What,
    /// Its bytes in the sentence.
    pub(super) at: Range<usize>,
}

#[derive(Clone, Debug, PartialEq)]
pub(super) enum What {
    /// In small letters.
    Word(String),
    /// A number whose unit is none of those looked for, or is missing.
    Number(String),
    Figure(Figure),
    /// A full stop or a semicolon, over which no phrase reaches.
    Stop,
}

/// Numbers with a unit.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Figure {
    /// The smaller of two; none where there is one.
    pub(super) least: Option<String>,
    pub(super) most: String,
    pub(super) measure: Measure,
}

impl Figure {
    /// The number as it stands, with the unit.
    pub(super) fn text(number: &str, unit: &str) -> String {
        format!("{number} {unit}")
    }
}

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
}

/// Lengths as labels spell them out; "in" is a word of every sentence.
const LENGTHS: [&str; 9] = ["foot", "feet", "ft", "yard", "yards", "meter", "meters", "metres", "m"];

/// A unit has no more pieces.
const PIECES: usize = 9;

/// Words that may stand within a unit and name what is measured: "10 gallons of water per acre".
const WATER: [&str; 8] = ["water", "spray", "carrier", "solution", "mixture", "mix", "diluent", "volume"];
const PRODUCT: [&str; 4] = ["of", "this", "product", "formulation"];

/// Spelled units, and how they are typed.
const SHORT: [(&str, &str); 26] = [
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
    ("liters", "L"),
    ("litres", "L"),
    ("litre", "L"),
    ("ml", "mL"),
    ("acre", "ac"),
    ("a", "ac"),
    ("hectare", "ha"),
];

fn short(name: &str) -> &str {
    SHORT.iter().find(|(long, _)| *long == name).map_or(name, |(_, short)| short)
}

/// A unit as people type it: "fl oz/ac" for "fl. oz. per acre".
fn typed(unit: &str) -> String {
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
fn measure(number: &str, unit: &str, is_water: bool, is_liquid: bool, units: Units) -> Option<Measure> {
    let plain = normal(unit);
    match plain.as_str() {
        "day" | "days" => return Some(Measure::Days),
        "hour" | "hours" | "hr" | "hrs" | "h" => return Some(Measure::Hours),
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
            "meter" | "meters" | "metres" => "m",
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

/// A piece of a sentence before figures are put together.
#[derive(Clone, Debug)]
struct Token {
    sort: Sort,
    at: Range<usize>,
}

#[derive(Clone, Copy, Debug, PartialEq)]
enum Sort {
    Word,
    Number,
    Dash,
    Stroke,
    Percent,
    Plus,
    Stop,
}

/// Behind a dash a unit: "12-hour", "30-foot".
const DASHED: [&str; 9] = ["day", "days", "hour", "hours", "foot", "ft", "yard", "meter", "m"];

const FRACTIONS: [char; 9] = ['½', '¼', '¾', '⅓', '⅔', '⅛', '⅜', '⅝', '⅞'];

fn tokens(text: &str) -> Vec<Token> {
    let mut all = Vec::new();
    let mut at = 0;
    while let Some(sign) = text.get(at..).and_then(|rest| rest.chars().next()) {
        let (sort, length) = if sign.is_ascii_digit() || FRACTIONS.contains(&sign) {
            (Some(Sort::Number), number_at(text, at))
        } else if sign.is_alphabetic() {
            (Some(Sort::Word), word_at(text, at))
        } else {
            let sort = match sign {
                '-' | '–' | '—' | '\u{2212}' | '\u{2010}' | '\u{2011}' => Some(Sort::Dash),
                '/' => Some(Sort::Stroke),
                '%' => Some(Sort::Percent),
                '+' => Some(Sort::Plus),
                '.' | ';' | '!' | '?' => Some(Sort::Stop),
                _ => None,
            };
            (sort, sign.len_utf8())
        };
        let length = length.max(sign.len_utf8());
        if let Some(sort) = sort {
            all.push(Token { sort, at: at..at + length });
        }
        at += length;
    }
    all
}

/// The bytes of the number that begins here: "1.5", "1 1/2", "2½".
fn number_at(text: &str, at: usize) -> usize {
    let Some(rest) = text.get(at..) else { return 0 };
    let digits = |text: &str| text.find(|c: char| !c.is_ascii_digit()).unwrap_or(text.len());
    let sign = |text: &str| text.chars().next().filter(|c| FRACTIONS.contains(c)).map_or(0, char::len_utf8);
    let fraction = |text: &str| -> usize {
        let top = digits(text);
        let below = text.get(top..).and_then(|rest| rest.strip_prefix('/')).map_or(0, digits);
        if top > 0 && below > 0 { top + 1 + below } else { 0 }
    };
    if sign(rest) > 0 {
        return sign(rest);
    }
    if fraction(rest) > 0 {
        return fraction(rest);
    }
    let mut end = rest.find(|c: char| !(c.is_ascii_digit() || c == '.' || c == ',')).unwrap_or(rest.len());
    while end > 0 && rest.as_bytes().get(end - 1).is_some_and(|b| !b.is_ascii_digit()) {
        end -= 1;
    }
    let behind = rest.get(end..).unwrap_or_default();
    if sign(behind) > 0 {
        return end + sign(behind);
    }
    match behind.strip_prefix(' ') {
        Some(next) if fraction(next) > 0 => end + 1 + fraction(next),
        Some(next) if sign(next) > 0 => end + 1 + sign(next),
        _ => end,
    }
}

/// The bytes of the word that begins here; "a.i." is one.
fn word_at(text: &str, at: usize) -> usize {
    let rest = text.get(at..).unwrap_or_default();
    let signs: Vec<(usize, char)> = rest.char_indices().collect();
    for (place, (at, sign)) in signs.iter().enumerate() {
        let next = signs.get(place + 1).map(|(_, sign)| *sign);
        let inside = sign.is_alphanumeric()
            || (matches!(sign, '\'' | '’') && next.is_some_and(char::is_alphabetic))
            || (*sign == '.' && next.is_some_and(char::is_alphabetic));
        if !inside {
            return *at;
        }
    }
    rest.len()
}

/// The words and figures of a sentence.
pub(super) fn items(text: &str, is_liquid: bool, units: Units) -> Vec<Item> {
    let tokens = tokens(text);
    let slice = |range: &Range<usize>| text.get(range.clone()).unwrap_or_default();
    let mut all: Vec<Item> = Vec::new();
    let mut at = 0;
    while let Some(token) = tokens.get(at) {
        match token.sort {
            Sort::Number => {
                let after_between =
                    matches!(all.last(), Some(Item { what: What::Word(word), .. }) if word == "between");
                let (what, used) = figure(text, &tokens, at, after_between, is_liquid, units)
                    .unwrap_or_else(|| (What::Number(slice(&token.at).to_owned()), 1));
                let end = tokens.get(at + used - 1).map_or(token.at.end, |last| last.at.end);
                all.push(Item { what, at: token.at.start..end });
                at += used;
                continue;
            }
            Sort::Word => {
                let word = slice(&token.at).to_lowercase().replace(['.', '’'], "");
                all.push(Item { what: What::Word(word), at: token.at.clone() });
            }
            Sort::Plus => all.push(Item { what: What::Word("plus".to_owned()), at: token.at.clone() }),
            Sort::Stop => all.push(Item { what: What::Stop, at: token.at.clone() }),
            Sort::Dash | Sort::Stroke | Sort::Percent => {}
        }
        at += 1;
    }
    all
}

/// The figure that begins at a number, and how many tokens it takes.
fn figure(
    text: &str,
    tokens: &[Token],
    at: usize,
    after_between: bool,
    is_liquid: bool,
    units: Units,
) -> Option<(What, usize)> {
    let slice = |at: usize| tokens.get(at).and_then(|token| text.get(token.at.clone())).unwrap_or_default();
    let sort = |at: usize| tokens.get(at).map(|token| token.sort);
    let value = |text: &str| {
        number::take(text).ok().filter(|(value, rest)| *value > 0.0 && rest.is_empty()).map(|(value, _)| value)
    };
    let joins = |at: usize| {
        sort(at) == Some(Sort::Dash)
            || slice(at).eq_ignore_ascii_case("to")
            || (after_between && slice(at).eq_ignore_ascii_case("and"))
    };
    let first = slice(at);
    let (least, most, unit_at) = if joins(at + 1) && sort(at + 2) == Some(Sort::Number) {
        // What does not rise is no range.
        (value(first)? < value(slice(at + 2))?).then_some(())?;
        (Some(first.to_owned()), slice(at + 2).to_owned(), at + 3)
    } else {
        (None, first.to_owned(), at + 1)
    };
    value(&most)?;
    let mut unit = String::new();
    let mut is_water = false;
    let mut best = None;
    for next in unit_at..unit_at + PIECES {
        let word = slice(next).to_lowercase();
        match sort(next) {
            // "0.25 % by volume" is no volume of water.
            Some(Sort::Word) if WATER.contains(&word.as_str()) && !unit.is_empty() && !unit.ends_with(" by") => {
                is_water = true;
            }
            Some(Sort::Word) if PRODUCT.contains(&word.as_str()) && !unit.is_empty() => continue,
            Some(Sort::Word) => {
                unit.push(' ');
                unit.push_str(&word);
            }
            Some(Sort::Stroke) if !unit.is_empty() => unit.push('/'),
            Some(Sort::Percent) => unit.push('%'),
            Some(Sort::Dash) if unit.is_empty() && DASHED.contains(&slice(next + 1).to_lowercase().as_str()) => {
                continue;
            }
            // The dot of an abbreviation, where the unit goes on behind it.
            Some(Sort::Stop)
                if slice(next) == "."
                    && tokens
                        .get(next + 1)
                        .is_some_and(|token| token.sort == Sort::Word || token.sort == Sort::Stroke) =>
            {
                continue;
            }
            // "per 100 gallons"
            Some(Sort::Number) if unit.ends_with("per") || unit.ends_with('/') => {
                unit.push(' ');
                unit.push_str(&word);
            }
            _ => break,
        }
        // "50 feet of water" measures no water.
        let of_water = |found: &Measure| {
            matches!(found, Measure::Water(_) | Measure::WaterAlone(_) | Measure::Rate(_) | Measure::OtherRate(_))
        };
        let measured = |number: &String| {
            measure(number, &unit, is_water, is_liquid, units).filter(|found| !is_water || of_water(found))
        };
        // Both ends must be of one kind, each read by itself.
        if let Some(found) = measured(&most)
            && least.as_ref().is_none_or(|least| measured(least).as_ref() == Some(&found))
        {
            best = Some((found, next + 1 - at));
        }
    }
    let (measure, used) = best?;
    Some((What::Figure(Figure { least, most, measure }), used))
}

/// A quantity of the text of a figure.
pub(super) fn quantity<Q: Quantity>(number: &str, unit: &str) -> Option<AsTyped<Q>> {
    AsTyped::parse(&Figure::text(number, unit)).ok()
}

#[cfg(test)]
mod tests {
    use super::{Measure, What, items};
    use crate::quantity::Units;

    fn figures(text: &str, is_liquid: bool) -> Vec<String> {
        items(text, is_liquid, Units::UsCustomary)
            .into_iter()
            .filter_map(|item| match item.what {
                What::Figure(figure) => {
                    let unit = match figure.measure {
                        Measure::Rate(unit) | Measure::Speed(unit) | Measure::Length(unit) | Measure::Degrees(unit) => {
                            unit
                        }
                        // Of the product itself it is none.
                        Measure::OtherRate(unit) => return Some(format!("?{unit}")),
                        Measure::Water(unit) => format!("{unit} water"),
                        Measure::WaterAlone(unit) => format!("{unit} water alone"),
                        Measure::Days => "days".to_owned(),
                        Measure::Hours => "hours".to_owned(),
                    };
                    Some(format!(
                        "{}{} {unit}",
                        figure.least.map_or_else(String::new, |least| format!("{least}..")),
                        figure.most
                    ))
                }
                What::Number(number) => Some(format!("?{number}")),
                _ => None,
            })
            .collect()
    }

    #[test]
    fn figures_with_their_units() {
        for (text, expected) in [
            ("16 to 22 fl. oz. per acre", "16..22 fl oz/ac"),
            ("16-22 fl oz/A", "16..22 fl oz/ac"),
            ("1 1/2 pints per acre", "1 1/2 pt/ac"),
            ("1/2 to 1 pt/A of this product", "1/2..1 pt/ac"),
            ("0.25% v/v", "0.25 % v/v"),
            ("1 quart per 100 gallons of spray", "1 qt/100 gal"),
            ("2 lb a.e./A", "2 lb ae/ac"),
            ("10 gallons of water per acre", "10 gal/ac water"),
            ("10 gallons per acre of spray solution", "10 gal/ac water"),
            ("10 GPA", "10 gpa water"),
            ("150-200 l water", "150..200 L water alone"),
            ("100–200 L/ha water", "100..200 L/ha water"),
            ("10 miles per hour", "10 mph"),
            ("12 hours", "12 hours"),
            ("12-hour", "12 hours"),
            ("30-foot", "30 ft"),
            ("50 meters", "50 m"),
            ("85°F", "85 °F"),
            ("85 degrees Fahrenheit", "85 °F"),
        ] {
            assert_eq!(figures(text, true), [expected], "{text}");
        }
    }

    #[test]
    fn what_may_mean_two_things_is_no_figure() {
        for (text, is_liquid) in [
            ("3 oz/A", true),
            ("3 fl oz/A", false),
            ("22 to 16 fl oz/A", true),
            ("1-1/2 pt/A", true),
            ("1,200 gal/A of water", true),
            ("4 inches", true),
            ("10", true),
            ("2 l/A", true),
        ] {
            // A number that is left keeps the whole sentence from being read.
            let figures = figures(text, is_liquid);
            assert!(figures.iter().any(|figure| figure.starts_with('?')), "{text}: {figures:?}");
        }
        assert!(items("2 pt/A", true, Units::Imperial).iter().all(|item| !matches!(item.what, What::Figure(_))));
    }
}
