//! The table of phrases, and how one fits into a sentence.
//!
//! A phrase is words in a row. `a|b` is either word, `a?` may be missing, `^` is the beginning of the sentence, `*` is whatever stands
//! between and is read otherwise, and a word in braces is what is caught: a figure, a number of applications, a period, droplet classes,
//! adjuvants, growth stages, neighbours, words as they stand, or names of crops, which may be missing. Commas, brackets and colons
//! between words do not count.

use std::ops::Range;
use std::sync::LazyLock;

use serde::Deserialize;

use super::items::{Figure, Item, Measure, What};
use super::lists::{self, Dose, Joined, word};
use super::{crops, lists::is_stage};
use crate::farm::{Droplets, Period};

#[derive(Clone, Debug, Deserialize)]
struct Row {
    says: Says,
    phrase: String,
    /// On what it rests.
    #[cfg_attr(not(test), allow(dead_code))] // It is looked up in the table by who doubts a phrase.
    source: String,
}

/// What a sentence with a phrase says.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(super) enum Says {
    Rate,
    RateLeast,
    RateMost,
    RateAndWater,
    Carrier,
    CarrierLeast,
    CarrierMost,
    SeasonTotal,
    Applications,
    Apart,
    Harvest,
    ReEntry,
    RainFree,
    Wind,
    WindBetween,
    Droplets,
    /// A harvest interval of the grain alone.
    HarvestGrain,
    /// A temperature above which, or below which, it is not applied.
    TemperatureMost,
    TemperatureLeast,
    NoInversion,
    /// Up to a stage, from one on, between two.
    StageTo,
    StageUpTo,
    StageFrom,
    StageBetween,
    Buffer,
    AdjuvantRequired,
    AdjuvantPreferred,
    AdjuvantAllowed,
    AdjuvantDiscouraged,
    AdjuvantForbidden,
    NotWith,
    Wear,
    /// Not a phrase: words that no phrase may leave over.
    Guard,
    /// Not a phrase: words by which a sentence is told to hold a limit.
    Limit,
}

impl Says {
    /// Whether every word of its sentence must be accounted for: what it says often holds under a condition that has no word of its own
    /// ("in postemergence applications").
    pub(super) const fn is_strict(self) -> bool {
        matches!(
            self,
            Self::Buffer
                | Self::AdjuvantRequired
                | Self::AdjuvantPreferred
                | Self::AdjuvantAllowed
                | Self::AdjuvantDiscouraged
                | Self::AdjuvantForbidden
                | Self::NotWith
        )
    }

    const fn is_phrase(self) -> bool {
        !matches!(self, Self::Guard | Self::Limit)
    }
}

/// What is caught.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Slot {
    Rate,
    Rates,
    Water,
    Waters,
    Volume,
    Volumes,
    Days,
    Hours,
    Speed,
    Speeds,
    Count,
    Times,
    Period,
    Classes,
    Length,
    Degrees,
    Doses,
    Stage,
    Near,
    Partners,
    Rest,
}

/// A gap takes in so many words at most.
const GAP: usize = 14;

#[derive(Clone, Debug)]
enum Part {
    Start,
    /// Words that are left to be read otherwise.
    Gap,
    Words {
        any: Vec<String>,
        may_miss: bool,
    },
    Slot(Slot),
    /// The name of a crop, or of several, or none; from these it is told afterwards for which crop the sentence is.
    Crops,
}

/// A phrase of the table.
#[derive(Clone, Debug)]
pub(super) struct Phrase {
    pub(super) says: Says,
    parts: Vec<Part>,
}

/// What was caught by a phrase.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Catch {
    Figure(Figure),
    Count(u32),
    /// A season is not told apart from a year or a crop.
    Period(Option<Period>),
    /// Words within the phrase that are left to be read otherwise.
    Within(Range<usize>),
    Droplets {
        finest: Droplets,
        coarsest: Option<Droplets>,
    },
    Doses(Vec<Dose>, Joined),
    Stage(String),
    /// Words that enter the form as they stand.
    Words(Range<usize>),
}

fn slot(name: &str) -> Option<Slot> {
    Some(match name {
        "rate" => Slot::Rate,
        "rates" => Slot::Rates,
        "water" => Slot::Water,
        "waters" => Slot::Waters,
        "volume" => Slot::Volume,
        "volumes" => Slot::Volumes,
        "days" => Slot::Days,
        "hours" => Slot::Hours,
        "speed" => Slot::Speed,
        "speeds" => Slot::Speeds,
        "count" => Slot::Count,
        "times" => Slot::Times,
        "period" => Slot::Period,
        "classes" => Slot::Classes,
        "length" => Slot::Length,
        "degrees" => Slot::Degrees,
        "doses" => Slot::Doses,
        "stage" => Slot::Stage,
        "near" => Slot::Near,
        "partners" => Slot::Partners,
        "rest" => Slot::Rest,
        _ => return None,
    })
}

fn parts(phrase: &str) -> Option<Vec<Part>> {
    phrase
        .split_whitespace()
        .map(|word| {
            if word == "^" {
                return Some(Part::Start);
            }
            if word == "*" {
                return Some(Part::Gap);
            }
            if let Some(name) = word.strip_prefix('{').and_then(|name| name.strip_suffix('}')) {
                return if name == "crops" { Some(Part::Crops) } else { slot(name).map(Part::Slot) };
            }
            let (words, may_miss) = word.strip_suffix('?').map_or((word, false), |words| (words, true));
            let any: Vec<String> = words.split('|').map(str::to_owned).collect();
            let plain = |word: &String| !word.is_empty() && word.chars().all(char::is_alphabetic);
            any.iter().all(plain).then_some(Part::Words { any, may_miss })
        })
        .collect()
}

fn rows() -> Result<Vec<Row>, csv::Error> {
    crate::table::read(include_str!("../../../../../assets/direction-phrases.csv"))
}

/// The phrases, the longer of two that begin alike first.
pub(super) fn table() -> &'static [Phrase] {
    static TABLE: LazyLock<Vec<Phrase>> = LazyLock::new(|| {
        let rows = rows().unwrap_or_default();
        let phrases = rows.iter().filter(|row| row.says.is_phrase());
        phrases.filter_map(|row| Some(Phrase { says: row.says, parts: parts(&row.phrase)? })).collect()
    });
    &TABLE
}

fn listed(says: Says) -> Vec<String> {
    let rows = rows().unwrap_or_default();
    let of_kind = rows.iter().filter(|row| row.says == says);
    of_kind.flat_map(|row| row.phrase.split('|').map(str::to_owned)).collect()
}

/// Whether a word that no phrase accounts for may turn what its sentence says.
pub(super) fn turns(word: &str) -> bool {
    static WORDS: LazyLock<Vec<String>> = LazyLock::new(|| listed(Says::Guard));
    WORDS.iter().any(|known| known == word) || is_stage(word)
}

/// Whether a word is one of those that limits are written with.
pub(super) fn limits(word: &str) -> bool {
    static WORDS: LazyLock<Vec<String>> = LazyLock::new(|| listed(Says::Limit));
    WORDS.iter().any(|known| known == word)
}

/// Where a phrase was found, and what it caught.
pub(super) struct Fit {
    pub(super) from: usize,
    pub(super) to: usize,
    pub(super) caught: Vec<Catch>,
}

impl Phrase {
    /// The first place in a sentence that it fits and no other phrase has taken.
    pub(super) fn find(&self, items: &[Item], taken: &[bool]) -> Option<Fit> {
        (0..items.len()).find_map(|from| {
            let mut caught = Vec::new();
            let to = fits(&self.parts, items, taken, from, &mut caught)?;
            // Optional words alone are no phrase.
            (to > from && (!caught.is_empty() || self.says == Says::NoInversion)).then_some(Fit { from, to, caught })
        })
    }
}

/// Where the rest of a phrase ends that begins at an item.
fn fits(parts: &[Part], items: &[Item], taken: &[bool], at: usize, caught: &mut Vec<Catch>) -> Option<usize> {
    let Some((part, rest)) = parts.split_first() else { return Some(at) };
    let is_free = |at: usize| taken.get(at) == Some(&false);
    match part {
        Part::Start => (at == 0).then(|| fits(rest, items, taken, at, caught)).flatten(),
        Part::Words { any, may_miss } => {
            let here = items.get(at).is_some_and(|item| matches!(&item.what, What::Word(word) if any.contains(word)));
            if here && is_free(at) {
                let before = caught.len();
                if let Some(end) = fits(rest, items, taken, at + 1, caught) {
                    return Some(end);
                }
                caught.truncate(before);
            }
            may_miss.then(|| fits(rest, items, taken, at, caught)).flatten()
        }
        Part::Crops => {
            let end = crops::list(items, taken, at);
            if end > at {
                caught.push(Catch::Within(at..end));
                if let Some(end) = fits(rest, items, taken, end, caught) {
                    return Some(end);
                }
                caught.pop();
            }
            fits(rest, items, taken, at, caught)
        }
        Part::Gap => (at..=items.len().min(at + GAP)).find_map(|end| {
            let crossed = items.get(at..end)?.iter().any(|item| item.what == What::Stop);
            if crossed {
                return None;
            }
            caught.push(Catch::Within(at..end));
            let found = fits(rest, items, taken, end, caught);
            if found.is_none() {
                caught.pop();
            }
            found
        }),
        Part::Slot(slot) => {
            let (catch, length) = take(*slot, items, taken, at)?;
            if !(at..at + length).all(is_free) {
                return None;
            }
            caught.push(catch);
            let end = fits(rest, items, taken, at + length, caught);
            if end.is_none() {
                caught.pop();
            }
            end
        }
    }
}

fn take(slot: Slot, all: &[Item], taken: &[bool], at: usize) -> Option<(Catch, usize)> {
    let items = all.get(at..)?;
    let words = |length: usize| (Catch::Words(at..at + length), length);
    match slot {
        Slot::Count => count(items).map(|count| (Catch::Count(count), 1)),
        Slot::Times => {
            let times = ["once", "twice"].iter().position(|times| *times == word(items, 0))?;
            Some((Catch::Count(u32::try_from(times + 1).ok()?), 1))
        }
        Slot::Doses => lists::doses(items).map(|(doses, joined, length)| (Catch::Doses(doses, joined), length)),
        Slot::Stage => lists::stage(items).map(|(stage, length)| (Catch::Stage(stage), length)),
        Slot::Near => lists::neighbours(items).map(words),
        Slot::Partners => lists::partners(items, taken.get(at..)?).map(words),
        Slot::Rest => lists::rest(items).map(words),
        Slot::Period => period(items).map(|(period, length)| (Catch::Period(period), length)),
        Slot::Classes => classes(items),
        _ => {
            let Some(What::Figure(figure)) = items.first().map(|item| &item.what) else { return None };
            let single = figure.least.is_none();
            let fits = match (slot, &figure.measure) {
                (Slot::Rate, Measure::Rate(_))
                | (Slot::Water, Measure::Water(_))
                | (Slot::Speed, Measure::Speed(_))
                | (Slot::Days, Measure::Days)
                | (Slot::Hours, Measure::Hours)
                | (Slot::Length, Measure::Length(_))
                | (Slot::Degrees, Measure::Degrees(_))
                | (Slot::Volume, Measure::Water(_) | Measure::Rate(_)) => single,
                (Slot::Volumes, Measure::Water(_) | Measure::Rate(_))
                | (Slot::Rates, Measure::Rate(_))
                | (Slot::Waters, Measure::Water(_) | Measure::WaterAlone(_)) => true,
                (Slot::Speeds, Measure::Speed(_)) => !single,
                _ => false,
            };
            fits.then(|| (Catch::Figure(figure.clone()), 1))
        }
    }
}

/// A whole number in digits or in a word.
fn count(items: &[Item]) -> Option<u32> {
    const WORDS: [&str; 6] = ["one", "two", "three", "four", "five", "six"];
    match &items.first()?.what {
        What::Number(number) => number.parse().ok().filter(|count| (1..100).contains(count)),
        What::Word(word) => WORDS.iter().position(|known| known == word).and_then(|at| u32::try_from(at + 1).ok()),
        _ => None,
    }
}

fn period(items: &[Item]) -> Option<(Option<Period>, usize)> {
    let is_twelve = matches!(items.first().map(|item| &item.what), Some(What::Number(number)) if number == "12")
        || word(items, 0) == "twelve";
    if is_twelve && ["month", "months"].contains(&word(items, 1)) {
        return Some((Some(Period::TwelveMonths), if word(items, 2) == "period" { 3 } else { 2 }));
    }
    Some(match (word(items, 0), word(items, 1)) {
        ("calendar", "year") => (Some(Period::Year), 2),
        ("growing" | "use" | "crop" | "cropping", "season") => (None, 2),
        ("crop", "cycle") => (Some(Period::Crop), 2),
        ("crop", _) => (Some(Period::Crop), 1),
        ("year" | "annually" | "annual" | "yearly", _) => (Some(Period::Year), 1),
        ("season" | "seasonal", _) => (None, 1),
        _ => return None,
    })
}

/// One class and how many words it takes.
fn class(items: &[Item]) -> Option<(Droplets, usize)> {
    Droplets::ALL.into_iter().rev().find_map(|class| {
        let words: Vec<&str> = class.name().split(' ').collect();
        let here = words.iter().enumerate().all(|(at, wanted)| word(items, at) == *wanted);
        here.then_some((class, words.len()))
    })
}

/// "coarse", "medium to coarse", "coarse or coarser".
fn classes(items: &[Item]) -> Option<(Catch, usize)> {
    let (finest, length) = class(items)?;
    let behind = items.get(length..)?;
    let joined = ["or", "and"].contains(&word(behind, 0));
    if joined && ["coarser", "larger", "bigger"].contains(&word(behind, 1)) {
        return Some((Catch::Droplets { finest, coarsest: None }, length + 2));
    }
    if joined && ["finer", "smaller"].contains(&word(behind, 1)) {
        return None;
    }
    if ["to", "through"].contains(&word(behind, 0)) {
        let (coarsest, more) = class(behind.get(1..)?)?;
        return (finest < coarsest)
            .then_some((Catch::Droplets { finest, coarsest: Some(coarsest) }, length + 1 + more));
    }
    Some((Catch::Droplets { finest, coarsest: Some(finest) }, length))
}

#[cfg(test)]
mod tests {
    use super::{parts, rows, table};

    #[test]
    fn each_phrase_reads_and_has_its_source() {
        let rows = rows().unwrap();
        assert!(rows.len() > 90);
        for row in &rows {
            assert!(!row.source.trim().is_empty(), "{}", row.phrase);
            assert!(!row.says.is_phrase() || parts(&row.phrase).is_some(), "{}", row.phrase);
        }
        assert_eq!(table().len(), rows.iter().filter(|row| row.says.is_phrase()).count());
    }
}
