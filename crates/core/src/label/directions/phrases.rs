//! How a phrase of the table fits into a sentence, and what it catches there.

use std::ops::Range;

use rustc_hash::FxHashSet;

use super::crops;
use super::items::{Figure, Item, What};
use super::lists::{self, Dose, Joined, word};
use super::table::{Part, Phrase, Says, Slot, of_kind};
use super::tokens::in_digits;
use super::units::Measure;
use crate::farm::{Droplets, Period};

/// A gap takes in so many words at most.
const GAP: usize = 14;

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
    /// A number without a unit.
    Bare(String),
    Crop(String),
    /// Words that enter the form as they stand.
    Words(Range<usize>),
}

/// Where a phrase was found, and what it caught.
pub(super) struct Fit {
    pub(super) from: usize,
    pub(super) to: usize,
    pub(super) caught: Vec<Catch>,
}

impl Fit {
    /// Marks the items it accounts for; what is left to be read otherwise is not.
    pub(super) fn mark(&self, taken: &mut [bool]) {
        let is_within =
            |at: usize| self.caught.iter().any(|catch| matches!(catch, Catch::Within(range) if range.contains(&at)));
        for at in (self.from..self.to).filter(|at| !is_within(*at)) {
            if let Some(slot) = taken.get_mut(at) {
                *slot = true;
            }
        }
    }
}

/// The words of a sentence.
pub(super) fn words_of(items: &[Item]) -> FxHashSet<&str> {
    items.iter().filter_map(|item| if let What::Word(word) = &item.what { Some(word.as_str()) } else { None }).collect()
}

impl Phrase {
    /// Whether a sentence has the words that may not be missing; most phrases are told off by that.
    pub(super) fn may_fit(&self, words: &FxHashSet<&str>) -> bool {
        self.parts.iter().all(|part| match part {
            Part::Words { any, may_miss: false } => any.iter().any(|word| words.contains(word.as_str())),
            _ => true,
        })
    }

    /// The first place in a sentence that it fits and no other phrase has taken.
    pub(super) fn find(&self, items: &[Item], taken: &[bool]) -> Option<Fit> {
        (0..items.len()).find_map(|from| {
            let mut caught = Vec::new();
            let to = fits(&self.parts, items, taken, from, &mut caught)?;
            // Optional words alone are no phrase.
            let says_all = !self.says.states() || self.says == Says::NoInversion;
            (to > from && (says_all || !caught.is_empty())).then_some(Fit { from, to, caught })
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
        Part::Run(words) => {
            let is_one = |at: usize| matches!(items.get(at).map(|item| &item.what), Some(What::Word(word)) if words.contains(word));
            let end = (at..items.len()).find(|at| !is_one(*at) || !is_free(*at)).unwrap_or(items.len());
            let before = caught.len();
            // The last of them may be the first of what follows.
            (at..=end).rev().find_map(|end| {
                caught.truncate(before);
                fits(rest, items, taken, end, caught)
            })
        }
        Part::Crops { may_miss } => {
            let end = crops::list(items, taken, at);
            if end > at {
                caught.push(Catch::Within(at..end));
                if let Some(end) = fits(rest, items, taken, end, caught) {
                    return Some(end);
                }
                caught.pop();
            }
            may_miss.then(|| fits(rest, items, taken, at, caught)).flatten()
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
        Slot::Times => match word(items, 0) {
            "once" => Some((Catch::Count(1), 1)),
            "twice" => Some((Catch::Count(2), 1)),
            _ if ["times", "time", "veces", "vez"].contains(&word(items, 1)) => {
                count(items).map(|count| (Catch::Count(count), 2))
            }
            _ => None,
        },
        Slot::Bare => match &items.first()?.what {
            What::Number(number) => Some((Catch::Bare(number.clone()), 1)),
            _ => None,
        },
        Slot::Crop => crops::following(all, taken, at).map(|(names, length)| (Catch::Crop(names), length)),
        Slot::Codes => lists::codes(items).map(|(codes, length)| (Catch::Stage(codes), length)),
        Slot::Doses => lists::doses(items).map(|(doses, joined, length)| (Catch::Doses(doses, joined), length)),
        Slot::Stage => lists::stage(items).map(|(stage, length)| (Catch::Stage(stage), length)),
        Slot::Near => {
            let end = lists::neighbours(items)?;
            let from = usize::from(["a", "an", "the", "any", "all"].contains(&word(items, 0)));
            Some((Catch::Words(at + from..at + end), end))
        }
        Slot::Partners => lists::partners(items, taken.get(at..)?).map(words),
        Slot::Rest => lists::rest(items).map(words),
        Slot::Period => {
            let (period, length) = period(items)?;
            // "The maximum in-crop rate" counts over nothing.
            let counts = ["per", "each", "one", "any", "single", "a", "por", "cada"];
            let is_counted = at.checked_sub(1).is_some_and(|before| counts.contains(&word(all, before)));
            (period != Some(Period::Crop) || length > 1 || is_counted).then_some((Catch::Period(period), length))
        }
        Slot::Classes => classes(items),
        _ => {
            let Some(What::Figure(figure)) = items.first().map(|item| &item.what) else { return None };
            let single = figure.least.is_none();
            let fits = match (slot, &figure.measure) {
                (Slot::Rate, Measure::Rate(_))
                | (Slot::Water, Measure::Water(_))
                | (Slot::Speed, Measure::Speed(_))
                | (Slot::Days, Measure::Days | Measure::Weeks)
                | (Slot::Hours, Measure::Hours)
                | (Slot::Dry, Measure::Hours | Measure::Minutes)
                | (Slot::Away, Measure::Hours | Measure::Days)
                | (Slot::Next, Measure::Months | Measure::Days | Measure::Weeks)
                | (Slot::Share, Measure::Share)
                | (Slot::Length, Measure::Length(_))
                | (Slot::Degrees, Measure::Degrees(_))
                | (Slot::Volume, Measure::Water(_) | Measure::Rate(_)) => single,
                (Slot::Volumes, Measure::Water(_) | Measure::Rate(_))
                | (Slot::Rates, Measure::Rate(_))
                | (Slot::DoseRates, Measure::Rate(_) | Measure::OtherRate(_))
                | (Slot::Waters, Measure::Water(_) | Measure::WaterAlone(_)) => true,
                (Slot::Speeds, Measure::Speed(_)) | (Slot::DegreesBetween, Measure::Degrees(_)) => !single,
                _ => false,
            };
            fits.then(|| (Catch::Figure(figure.clone()), 1))
        }
    }
}

/// A whole number in digits or in a word.
fn count(items: &[Item]) -> Option<u32> {
    let digits = match &items.first()?.what {
        What::Number(number) => number,
        What::Word(word) => in_digits(word)?,
        _ => return None,
    };
    digits.parse().ok().filter(|count| (1..100).contains(count))
}

fn period(items: &[Item]) -> Option<(Option<Period>, usize)> {
    let twelve = |what: &What| matches!(what, What::Figure(Figure { least: None, most, measure: Measure::Months }) if most == "12");
    if items.first().is_some_and(|item| twelve(&item.what)) {
        return Some((Some(Period::TwelveMonths), 1 + usize::from(word(items, 1) == "period")));
    }
    let named = [(Says::Year, Some(Period::Year)), (Says::Crop, Some(Period::Crop)), (Says::Season, None)];
    let free = vec![false; items.len()];
    let ends = named.into_iter().filter_map(|(says, period)| {
        let end = of_kind(says).filter_map(|phrase| fits(&phrase.parts, items, &free, 0, &mut Vec::new())).max()?;
        Some((period, end))
    });
    ends.max_by_key(|(_, end)| *end)
}

/// "coarse", "medium to coarse", "coarse or coarser".
fn classes(items: &[Item]) -> Option<(Catch, usize)> {
    let (finest, length) = lists::droplets(items)?;
    let behind = items.get(length..)?;
    let joined = ["or", "and", "o", "y"].contains(&word(behind, 0));
    if joined && ["coarser", "larger", "bigger", "greater"].contains(&word(behind, 1)) {
        return Some((Catch::Droplets { finest, coarsest: None }, length + 2));
    }
    if joined && word(behind, 1) == "más" && ["gruesa", "gruesas"].contains(&word(behind, 2)) {
        return Some((Catch::Droplets { finest, coarsest: None }, length + 3));
    }
    // "medium or fine", "coarse or very coarse": one range, or a choice.
    if joined && (["finer", "smaller", "más"].contains(&word(behind, 1)) || lists::droplets(behind.get(1..)?).is_some())
    {
        return None;
    }
    if ["to", "through", "a"].contains(&word(behind, 0)) {
        let (coarsest, more) = lists::droplets(behind.get(1..)?)?;
        return (finest < coarsest)
            .then_some((Catch::Droplets { finest, coarsest: Some(coarsest) }, length + 1 + more));
    }
    Some((Catch::Droplets { finest, coarsest: Some(finest) }, length))
}
