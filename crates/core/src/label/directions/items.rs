//! Words and figures in a sentence. A figure is a number, or two with a dash or "to" between them, and the unit behind it, read by the
//! parser that reads what people type.

use std::ops::Range;

use super::brackets;
use super::tokens::{Sort, Token, in_digits, tokens};
use super::units::{Measure, measure};
use crate::quantity::{AsTyped, Quantity, Units, number};

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

/// A unit has no more pieces.
const PIECES: usize = 11;

/// Words that may stand within a unit and name what is measured: "10 gallons of water per acre".
const WATER: [&str; 10] =
    ["water", "spray", "carrier", "solution", "mixture", "mix", "diluent", "volume", "agua", "caldo"];
const PRODUCT: [&str; 7] = ["of", "this", "product", "formulation", "de", "este", "producto"];
/// "1.5 pints of this product may be applied per acre"
const APPLIED: [&str; 3] = ["may", "be", "applied"];

/// Behind a dash a unit: "12-hour", "30-foot".
const DASHED: [&str; 15] = [
    "day", "days", "hour", "hours", "foot", "ft", "yard", "meter", "metre", "m", "week", "month", "months", "minute",
    "inch",
];

/// What a sentence is made of.
pub(super) struct Cut {
    pub(super) items: Vec<Item>,
    /// Bytes of brackets that say an amount once more in other units, which are no items.
    pub(super) asides: Vec<Range<usize>>,
}

/// The words and figures of a sentence.
pub(super) fn items(text: &str, is_liquid: bool, units: Units) -> Cut {
    let mut tokens = tokens(text);
    let asides = brackets::take_asides(text, &mut tokens);
    let slice = |range: &Range<usize>| text.get(range.clone()).unwrap_or_default();
    let mut all: Vec<Item> = Vec::new();
    let mut at = 0;
    while let Some(token) = tokens.get(at) {
        let own = slice(&token.at).to_lowercase();
        let is_number = token.sort == Sort::Number;
        if is_number || in_digits(&own).is_some() {
            let after_between = matches!(all.last(), Some(Item { what: What::Word(word), .. }) if word == "between");
            let found = Figures { text, tokens: &tokens, is_liquid, units }.at(at, after_between);
            let (what, used) = match found {
                Some((figure, used)) => (What::Figure(figure), used),
                None if is_number => (What::Number(own), 1),
                None => (What::Word(own), 1),
            };
            let end = tokens.get(at + used - 1).map_or(token.at.end, |last| last.at.end);
            all.push(Item { what, at: token.at.start..end });
            at += used;
            continue;
        }
        match token.sort {
            Sort::Word => all.push(Item { what: What::Word(own.replace(['.', '’', '-'], "")), at: token.at.clone() }),
            Sort::Plus => all.push(Item { what: What::Word("plus".to_owned()), at: token.at.clone() }),
            Sort::Stop if at > 0 && is_shortened(&tokens, at, text) => {}
            // "4 pints/acre/year"
            Sort::Stroke if tokens.get(at + 1).is_some_and(|next| is_counted_over(slice(&next.at))) => {
                all.push(Item { what: What::Word("per".to_owned()), at: token.at.clone() });
            }
            Sort::Stop => all.push(Item { what: What::Stop, at: token.at.clone() }),
            Sort::Number | Sort::Dash | Sort::Stroke | Sort::Percent | Sort::Open | Sort::Close => {}
        }
        at += 1;
    }
    Cut { items: all, asides }
}

/// Whether a dot stands behind a shortened word.
fn is_shortened(tokens: &[Token], at: usize, text: &str) -> bool {
    let before = at.checked_sub(1).and_then(|before| tokens.get(before)).and_then(|token| text.get(token.at.clone()));
    before.is_some_and(|word| ["max", "min", "approx", "no"].contains(&word.to_lowercase().as_str()))
        && tokens.get(at + 1).is_some()
}

/// Whether a word is one over which totals and numbers are counted.
fn is_counted_over(word: &str) -> bool {
    ["year", "season", "crop", "application"].contains(&word.to_lowercase().as_str())
}

/// Where figures are looked for.
struct Figures<'s> {
    text: &'s str,
    tokens: &'s [Token],
    is_liquid: bool,
    units: Units,
}

impl Figures<'_> {
    fn slice(&self, at: usize) -> &str {
        self.tokens.get(at).and_then(|token| self.text.get(token.at.clone())).unwrap_or_default()
    }

    fn sort(&self, at: usize) -> Option<Sort> {
        self.tokens.get(at).map(|token| token.sort)
    }

    /// The number that stands at a token, in digits.
    fn number(&self, at: usize) -> Option<String> {
        match self.sort(at)? {
            Sort::Number => Some(self.slice(at).to_owned()),
            Sort::Word => in_digits(&self.slice(at).to_lowercase()).map(str::to_owned),
            _ => None,
        }
    }

    /// Whether a token joins two numbers to a range.
    fn joins(&self, at: usize, after_between: bool) -> bool {
        let word = self.slice(at).to_lowercase();
        self.sort(at) == Some(Sort::Dash)
            || word == "to"
            || word == "a"
            || (after_between && (word == "and" || word == "y"))
    }

    /// The figure that begins at a token, and how many tokens it takes.
    fn at(&self, at: usize, after_between: bool) -> Option<(Figure, usize)> {
        let first = self.number(at)?;
        if self.joins(at + 1, after_between)
            && let Some(most) = self.number(at + 2)
        {
            // What does not rise is no range.
            (value(&first)? < value(&most)?).then_some(())?;
            let (measure, used) = self.unit(at + 3, &[&first, &most])?;
            return Some((Figure { least: Some(first), most, measure }, 3 + used));
        }
        let (measure, used) = self.unit(at + 1, &[&first])?;
        // "0 months" before another crop is a figure, and no other nothing is.
        value(&first).or_else(|| (first == "0" && measure == Measure::Months).then_some(0.0))?;
        let end = at + 1 + used;
        // "50°F to 85°F" has its unit twice.
        if self.joins(end, after_between)
            && let Some(most) = self.number(end + 1)
        {
            let (of_most, more) = self.unit(end + 2, &[&most])?;
            let is_range = of_most == measure && value(&first)? < value(&most)?;
            return is_range.then_some((Figure { least: Some(first), most, measure }, 1 + used + 2 + more));
        }
        Some((Figure { least: None, most: first, measure }, 1 + used))
    }

    /// What the unit measures that begins at a token, for each of the numbers before it, and how many tokens it takes.
    fn unit(&self, unit_at: usize, numbers: &[&String]) -> Option<(Measure, usize)> {
        let mut unit = String::new();
        let mut is_water = false;
        let mut best = None;
        for next in unit_at..unit_at + PIECES {
            let word = self.slice(next).to_lowercase();
            match self.sort(next) {
                // "0.25 % by volume" is no volume of water.
                Some(Sort::Word) if WATER.contains(&word.as_str()) && !unit.is_empty() && !unit.ends_with(" by") => {
                    is_water = true;
                }
                Some(Sort::Word)
                    if (PRODUCT.contains(&word.as_str()) || APPLIED.contains(&word.as_str())) && !unit.is_empty() =>
                {
                    continue;
                }
                Some(Sort::Word) => {
                    unit.push(' ');
                    unit.push_str(&word);
                }
                Some(Sort::Stroke) if !unit.is_empty() => unit.push('/'),
                Some(Sort::Percent) => unit.push('%'),
                Some(Sort::Dash)
                    if unit.is_empty() && DASHED.contains(&self.slice(next + 1).to_lowercase().as_str()) =>
                {
                    continue;
                }
                // The dot of an abbreviation, where the unit goes on behind it.
                Some(Sort::Stop)
                    if self.slice(next) == "." && matches!(self.sort(next + 1), Some(Sort::Word | Sort::Stroke)) =>
                {
                    continue;
                }
                // "per 100 gallons"
                Some(Sort::Number) if unit.ends_with("per") || unit.ends_with("por") || unit.ends_with('/') => {
                    unit.push(' ');
                    unit.push_str(&word);
                }
                _ => break,
            }
            // "50 feet of water" measures no water.
            let of_water = |found: &Measure| {
                matches!(found, Measure::Water(_) | Measure::WaterAlone(_) | Measure::Rate(_) | Measure::OtherRate(_))
            };
            let measured = |number: &str| {
                measure(number, &unit, is_water, self.is_liquid, self.units)
                    .filter(|found| !is_water || of_water(found))
            };
            // All must be of one kind, each read by itself.
            let mut found = numbers.iter().map(|number| measured(number));
            if let Some(Some(first)) = found.next()
                && found.all(|other| other.as_ref() == Some(&first))
            {
                best = Some((first, next + 1 - unit_at));
            }
        }
        best
    }
}

/// What a number is, above nothing.
fn value(text: &str) -> Option<f64> {
    number::take(text).ok().filter(|(value, rest)| *value > 0.0 && rest.is_empty()).map(|(value, _)| value)
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
            .items
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
                        Measure::Weeks => "weeks".to_owned(),
                        Measure::Months => "months".to_owned(),
                        Measure::Minutes => "minutes".to_owned(),
                        Measure::Share => "%".to_owned(),
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
            ("between 50°F and 85°F", "50..85 °F"),
            ("4 inches", "4 in"),
            ("two weeks", "2 weeks"),
            ("twelve (12) hours", "12 hours"),
            ("10 months", "10 months"),
            ("30 minutes", "30 minutes"),
            ("2.5 pints (40 fl oz) per acre", "2.5 pt/ac"),
            ("0.25 percent v/v", "0.25 % v/v"),
            ("20 kilometres per hour", "20 km/h"),
            ("1.5 a 2 litros por hectárea", "1.5..2 L/ha"),
            ("64 onzas líquidas por acre", "64 fl oz/ac"),
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
            ("10", true),
            ("2 l/A", true),
        ] {
            // A number that is left keeps the whole sentence from being read.
            let figures = figures(text, is_liquid);
            assert!(figures.iter().any(|figure| figure.starts_with('?')), "{text}: {figures:?}");
        }
        assert!(items("2 pt/A", true, Units::Imperial).items.iter().all(|item| !matches!(item.what, What::Figure(_))));
    }
}
