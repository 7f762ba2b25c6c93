//! For which crop a sentence is: the crops of `assets/crops.csv` as it names them. A word before or behind the name that makes it something
//! else ("tolerant corn", "wheat stubble") is none that a sentence may leave over.

use super::items::{Item, What};
use crate::label::{listed, once};
use crate::language::t;
use crate::season::profile::crop_code;

/// The longest name of a crop has so many words.
const LONGEST: usize = 3;

/// What of a sentence names its crops.
#[derive(Debug, Default, PartialEq, Eq)]
pub(super) struct Crops {
    /// As a statement has them: apart by commas; empty for none.
    pub(super) names: String,
    /// Places of their words.
    pub(super) at: Vec<usize>,
}

fn word(items: &[Item], at: Option<usize>) -> Option<&str> {
    match items.get(at?).map(|item| &item.what) {
        Some(What::Word(word)) => Some(word),
        _ => None,
    }
}

/// Whether a word stands between the last two of a list: with "or" each may be meant, so each is entered.
fn joins(word: &str) -> bool {
    ["and", "or", "y", "o"].contains(&word)
}

/// The crops that words name which no phrase has taken.
///
/// # Errors
/// A sentence that says why it cannot be told which crops are meant.
pub(super) fn of(items: &[Item], taken: &[bool]) -> Result<Crops, String> {
    let mut crops = Crops::default();
    let mut names: Vec<String> = Vec::new();
    let mut last: Option<usize> = None;
    let mut at = 0;
    while at < items.len() {
        let Some((name, length)) = name_at(items, taken, at) else {
            at += 1;
            continue;
        };
        // Several crops are one list, with commas and "and" between them.
        if let Some(last) = last
            && names.iter().any(|other| *other != name)
            && !(last == at || (last + 1 == at && word(items, Some(last)).is_some_and(joins)))
        {
            names.push(name);
            return Err(t!("label-it-speaks-of-several-crops-in", crops = listed(&once(names))));
        }
        names.push(name);
        // With the word that joins it to the one before.
        let from = last.filter(|last| *last == at || *last + 1 == at).unwrap_or(at);
        crops.at.extend(from..at + length);
        at += length;
        last = Some(at);
    }
    crops.names = once(names).join(", ");
    Ok(crops)
}

/// Crops that may follow, as a statement has them, and how many words they take: "wheat, barley and all other crops".
pub(super) fn following(items: &[Item], taken: &[bool], at: usize) -> Option<(String, usize)> {
    let other = |at: usize| {
        let words = [word(items, Some(at)), word(items, Some(at + 1)), word(items, Some(at + 2))];
        if matches!(words, [Some("all" | "any"), Some("crop" | "crops"), _]) {
            return Some((words.into_iter().take(2).flatten().collect::<Vec<_>>().join(" "), 2));
        }
        let is_other = matches!(words, [Some("all" | "any"), Some("other"), Some("crop" | "crops")]);
        is_other.then(|| (words.into_iter().flatten().collect::<Vec<_>>().join(" "), 3))
    };
    let mut names: Vec<String> = Vec::new();
    let (mut end, mut next) = (at, at);
    while let Some((name, length)) = name_at(items, taken, next).or_else(|| other(next)) {
        names.push(name);
        end = next + length;
        next = end + usize::from(word(items, Some(end)).is_some_and(joins));
    }
    (end > at).then(|| (names.join(", "), end - at))
}

/// Where a list of crops ends that begins at a word: "corn and soybean"; at the word itself where there is none.
pub(super) fn list(items: &[Item], taken: &[bool], at: usize) -> usize {
    let mut end = at;
    let mut next = at;
    while let Some((_, length)) = name_at(items, taken, next) {
        end = next + length;
        next = if word(items, Some(end)).is_some_and(joins) { end + 1 } else { end };
    }
    end
}

/// The name of a crop that begins at a word, the longest there is.
fn name_at(items: &[Item], taken: &[bool], at: usize) -> Option<(String, usize)> {
    (1..=LONGEST).rev().find_map(|length| {
        let words: Option<Vec<&str>> =
            (at..at + length).map(|at| word(items, Some(at)).filter(|_| taken.get(at) == Some(&false))).collect();
        let name = words?.join(" ");
        crop_code(&name).is_some().then_some((name, length))
    })
}
