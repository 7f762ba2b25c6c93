//! What a sentence says: its clauses, the phrases that fit them, what of them is left over, and for which crop they are.

use super::items::{Cut, Item, What, items};
use super::made::{Of, made};
use super::phrases::{Fit, words_of};
use super::sentences::Piece;
use super::table::{Says as Phrase, how_it_turns, limits, of_kind, statements};
use super::{Sentence, brackets, clauses, crops, headings, table};
use crate::farm::{Product, Says};
use crate::language::t;
use crate::quantity::Units;

/// A longer sentence is none.
const MOST_ITEMS: usize = 150;

/// What of a sentence becomes what.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Caught {
    pub(super) becomes: Becomes,
    pub(super) crop: String,
    pub(super) sentence: Sentence,
    pub(super) note: String,
}

#[derive(Clone, Debug, PartialEq)]
pub(super) enum Becomes {
    Says(Says),
    /// The stages in which it may be used; an empty end is open.
    Stages {
        from: String,
        to: String,
    },
    /// Days between two applications, which the form holds together with their number.
    Apart(u32),
}

/// What a sentence says; never nothing.
///
/// # Errors
/// A sentence that says why it is not understood.
pub(super) fn of_sentence(piece: &Piece, product: &Product, units: Units) -> Result<Vec<Caught>, String> {
    let Cut { items, asides } = items(&piece.text, product.is_liquid(), units);
    if items.len() > MOST_ITEMS {
        return Err(t!("label-it-is-too-long-to-be").to_owned());
    }
    let whole: Vec<usize> = (0..items.len()).collect();
    let clauses = clauses::of(&items);
    let (said, read) = match of_clauses(piece, &items, &[whole], product) {
        Err(_) if clauses.len() > 1 => of_clauses(piece, &items, &clauses, product),
        read => read,
    }?;
    // What enters in the words of the label enters with its brackets.
    let is_told_so = |said: &Said| matches!(&said.becomes, Becomes::Says(says) if is_in_own_words(says));
    if let Some(aside) = brackets::unlike(&piece.text, &items, &asides).filter(|_| !said.iter().all(is_told_so)) {
        return Err(t!("label-in-brackets-stands-something-else", aside = aside));
    }
    let sentence = Sentence { text: piece.text.clone(), read: read_ranges(&items, &read) };
    Ok(said
        .into_iter()
        .map(|Said { becomes, crop, note }| Caught { becomes, crop, sentence: sentence.clone(), note })
        .collect())
}

/// What clauses say, each given by the places of its items, and which of the items phrases account for.
fn of_clauses(
    piece: &Piece,
    items: &[Item],
    clauses: &[Vec<usize>],
    product: &Product,
) -> Result<(Vec<Said>, Vec<bool>), String> {
    let mut read = vec![false; items.len()];
    let mut said = Vec::new();
    for clause in clauses {
        let own: Vec<Item> = clause.iter().filter_map(|at| items.get(*at).cloned()).collect();
        let (of_clause, taken) = of_clause(piece, &own, product)?;
        said.extend(of_clause);
        for (at, _) in clause.iter().zip(taken).filter(|(_, taken)| *taken) {
            if let Some(slot) = read.get_mut(*at) {
                *slot = true;
            }
        }
    }
    Ok((said, read))
}

/// What a sentence says that stands behind a semicolon: it is for the crop of the part before, where it names none.
///
/// # Errors
/// Where the part before is not understood, since what narrows it may narrow this one, too.
pub(super) fn behind(before: Option<&[Caught]>, mut own: Vec<Caught>, piece: &Piece) -> Result<Vec<Caught>, String> {
    if headings::are_of_rotation(piece) {
        return Ok(own);
    }
    let before = before.ok_or_else(|| t!("label-the-part-before-it-is-not").to_owned())?;
    let crop = before.last().map(|caught| caught.crop.clone()).unwrap_or_default();
    for caught in own.iter_mut().filter(|caught| caught.crop.is_empty()) {
        caught.crop.clone_from(&crop);
    }
    Ok(own)
}

/// Whether a statement is in the words of the label.
const fn is_in_own_words(says: &Says) -> bool {
    matches!(says, Says::Wear { .. } | Says::CleanOut { .. } | Says::Handling { .. })
}

/// What a clause says, without the sentence it stands in.
struct Said {
    becomes: Becomes,
    crop: String,
    note: String,
}

/// What a clause says, and which of its items phrases account for.
fn of_clause(piece: &Piece, items: &[Item], product: &Product) -> Result<(Vec<Said>, Vec<bool>), String> {
    let mut taken = vec![false; items.len()];
    let mut fits: Vec<(Phrase, Fit)> = Vec::new();
    let is_rotation = headings::are_of_rotation(piece);
    let words = words_of(items);
    let may_be = |phrase: &&'static table::Phrase| is_rotation || phrase.says != Phrase::PlantBackRow;
    for phrase in statements().filter(|phrase| phrase.may_fit(&words)).filter(may_be) {
        while let Some(fit) = phrase.find(items, &taken) {
            fit.mark(&mut taken);
            fits.push((phrase.says, fit));
        }
    }
    if fits.is_empty() {
        let words = items.iter().filter_map(|item| if let What::Word(word) = &item.what { Some(word) } else { None });
        let elsewhere = words.clone().find(|word| how_it_turns(word) == Some(Phrase::Elsewhere));
        return Err(if let Some(word) = elsewhere {
            t!("label-the-word-speaks-of-another-use", word = word)
        } else if has_limit(&piece.text) {
            t!("label-no-phrase-known-here-fits-it").to_owned()
        } else {
            t!("label-it-has-none-of-the-words").to_owned()
        });
    }
    let named = crops::of(items, &taken)?;
    for at in &named.at {
        if let Some(slot) = taken.get_mut(*at) {
            *slot = true;
        }
    }
    let read: Vec<bool> = taken.clone();
    headings::take_own(piece, items, &mut taken);
    take(Phrase::Aside, items, &mut taken);
    let is_strict = fits.iter().any(|(says, _)| says.is_strict());
    let timing = timing(piece, items);
    if !is_strict {
        take(Phrase::Timing, items, &mut taken);
    }
    left_over(&piece.text, items, &taken)?;
    let crop = headings::crop(piece, &named.names, fits.iter().any(|(says, _)| says.is_rate()))?;
    fits.sort_by_key(|(_, fit)| fit.from);
    let mut all = Vec::new();
    for (says, fit) in fits {
        let of = Of { text: &piece.text, items, product };
        // What may follow on a field is for whatever crop stands there.
        let crop = if matches!(says, Phrase::PlantBack | Phrase::PlantBackRow) { String::new() } else { crop.clone() };
        for (becomes, note) in made(says, &fit.caught, &of)? {
            let note =
                [note, timing.as_str()].into_iter().filter(|note| !note.is_empty()).collect::<Vec<_>>().join(" ");
            all.push(Said { becomes, crop: crop.clone(), note });
        }
    }
    Ok((all, read))
}

/// Takes all that phrases of a kind fit.
pub(super) fn take(says: Phrase, items: &[Item], taken: &mut [bool]) {
    let words = words_of(items);
    for phrase in of_kind(says).filter(|phrase| phrase.may_fit(&words)) {
        while let Some(fit) = phrase.find(items, taken) {
            fit.mark(taken);
        }
    }
}

/// Whether a sentence has figures, or words that limits are written with.
pub(super) fn has_limit(text: &str) -> bool {
    text.contains(char::is_numeric)
        || text.to_lowercase().replace('’', "'").split(|sign: char| !sign.is_alphanumeric() && sign != '\'').any(limits)
}

/// Said where a sentence or its heading holds at one time of the crop alone, which the form does not ask for.
fn timing(piece: &Piece, items: &[Item]) -> String {
    // Words that enter the form as they stand may hold one, too.
    let free = vec![false; items.len()];
    let in_sentence = of_kind(Phrase::Timing).find_map(|phrase| {
        let fit = phrase.find(items, &free)?;
        let (from, to) = (items.get(fit.from)?.at.start, items.get(fit.to.checked_sub(1)?)?.at.end);
        piece.text.get(from..to)
    });
    let time = in_sentence.map(str::to_lowercase).or_else(|| headings::timing(piece));
    time.map_or_else(String::new, |time| t!("label-it-says-at-which-time", time = time))
}

fn left_over(text: &str, items: &[Item], taken: &[bool]) -> Result<(), String> {
    let left = || items.iter().enumerate().zip(taken).filter(|(_, taken)| !**taken).map(|(item, _)| item);
    for (at, item) in left() {
        if matches!(item.what, What::Number(_) | What::Figure(_)) {
            // With the word behind it, by which it is found.
            let end = match items.get(at + 1) {
                Some(Item { what: What::Word(_), at }) => at.end,
                _ => item.at.end,
            };
            let figure = text.get(item.at.start..end).unwrap_or_default();
            return Err(t!("label-no-phrase-known-here-accounts-for", figure = figure));
        }
    }
    let words: Vec<&String> =
        left().filter_map(|(_, item)| if let What::Word(word) = &item.what { Some(word) } else { None }).collect();
    if let Some(why) = turned(&words) {
        return Err(why);
    }
    words.first().map_or(Ok(()), |word| Err(t!("label-the-word-may-narrow-what-it", word = word)))
}

/// Why a sentence is not told for sure that leaves these words over; none where none of them may turn it.
fn turned(words: &[&String]) -> Option<String> {
    let find = |wanted: Phrase| words.iter().find(|word| how_it_turns(word) == Some(wanted));
    if let Some(word) = find(Phrase::Elsewhere) {
        Some(t!("label-the-word-speaks-of-another-use", word = word))
    } else if let Some(word) = find(Phrase::Condition) {
        Some(t!("label-the-word-makes-a-condition", word = word))
    } else {
        find(Phrase::Guard).map(|word| t!("label-the-word-may-turn-what-it", word = word))
    }
}

fn read_ranges(items: &[Item], taken: &[bool]) -> Vec<std::ops::Range<usize>> {
    let mut all: Vec<std::ops::Range<usize>> = Vec::new();
    let mut before = false;
    for (item, taken) in items.iter().zip(taken) {
        match all.last_mut() {
            Some(last) if *taken && before => last.end = item.at.end,
            _ if *taken => all.push(item.at.clone()),
            _ => {}
        }
        before = *taken;
    }
    all
}
