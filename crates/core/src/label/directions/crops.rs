//! For which crop a sentence is: the crops of `assets/crops.csv` as it names them. Another word before or behind a crop's name ("tolerant corn",
//! "wheat stubble") may make it something else; then it cannot be told.

use super::items::{Item, What};
use crate::language::t;
use crate::season::profile::crop_code;

/// The longest name of a crop has so many words.
const LONGEST: usize = 3;

/// Words that may stand before the name of a crop, or behind it, without making it another.
const BEFORE: [&str; 12] =
    ["in", "on", "to", "of", "for", "and", "the", "all", "established", "apply", "harvest", "harvesting"];
const BEHIND: [&str; 14] =
    ["in", "on", "at", "and", "by", "to", "from", "is", "are", "apply", "use", "do", "phi", "rei"];

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
        let is_free = |at: usize| taken.get(at) == Some(&false);
        let before = word(items, at.checked_sub(1)).filter(|_| at > 0 && is_free(at - 1));
        let behind = word(items, Some(at + length)).filter(|_| is_free(at + length));
        let next_is_crop = name_at(items, taken, at + length).is_some();
        let follows_crop = last.is_some_and(|last| last == at);
        let doubt = before
            .filter(|word| !BEFORE.contains(word) && !follows_crop)
            .or_else(|| behind.filter(|word| !BEHIND.contains(word) && !next_is_crop));
        if let Some(doubt) = doubt {
            return Err(t!("label-it-speaks-of-with-the-word", name = name, doubt = doubt));
        }
        // Several crops are one list, with commas and "and" between them.
        if let Some(last) = last
            && !(last == at || (last + 1 == at && word(items, Some(last)) == Some("and")))
        {
            return Err(t!("label-it-speaks-of-several-crops-in").to_owned());
        }
        names.push(name);
        crops.at.extend(at..at + length);
        at += length;
        last = Some(at);
    }
    names.dedup();
    crops.names = names.join(", ");
    Ok(crops)
}

/// Where a list of crops ends that begins at a word: "corn and soybean"; at the word itself where there is none.
pub(super) fn list(items: &[Item], taken: &[bool], at: usize) -> usize {
    let mut end = at;
    let mut next = at;
    while let Some((_, length)) = name_at(items, taken, next) {
        end = next + length;
        next = if word(items, Some(end)) == Some("and") { end + 1 } else { end };
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
