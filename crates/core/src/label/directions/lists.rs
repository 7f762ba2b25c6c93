//! What is caught of a sentence that is no figure: adjuvants with their rates, growth stages, neighbours, names of partners, and words
//! that enter the form as they stand.

use std::ops::Range;
use std::sync::LazyLock;

use super::crops;
use super::items::{Figure, Item, What};
use super::table::turns;
use super::units::Measure;
use crate::farm::{AdjuvantClass, Droplets};
use crate::ground::named::words_of_neighbours;
use crate::label::stage::{Stage, is_named};

/// An adjuvant class that a sentence names, and its rate.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Dose {
    pub(super) class: AdjuvantClass,
    pub(super) rate: Option<Figure>,
}

/// How several stand together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Joined {
    /// There is one.
    Alone,
    /// "COC or NIS".
    Or,
    /// "COC and AMS", "COC plus AMS", "COC + AMS".
    And,
}

/// How labels and publications write the classes beside their own word and key.
const WRITTEN: [(&str, AdjuvantClass); 16] = [
    ("surfactante no iónico", AdjuvantClass::NonIonicSurfactant),
    ("concentrado de aceite agrícola", AdjuvantClass::CropOilConcentrate),
    ("aceite agrícola concentrado", AdjuvantClass::CropOilConcentrate),
    ("aceite de semilla metilado", AdjuvantClass::MethylatedSeedOil),
    ("sulfato de amonio", AdjuvantClass::AmmoniumSulfate),
    ("antiespumante", AdjuvantClass::Defoamer),
    ("nonionic surfactant", AdjuvantClass::NonIonicSurfactant),
    ("crop oil concentrates", AdjuvantClass::CropOilConcentrate),
    ("methylated seed oils", AdjuvantClass::MethylatedSeedOil),
    ("high surfactant oil concentrate", AdjuvantClass::HighSurfactantOil),
    ("organosilicone surfactant", AdjuvantClass::Organosilicone),
    ("ammonium sulphate", AdjuvantClass::AmmoniumSulfate),
    ("urea ammonium nitrate solution", AdjuvantClass::UreaAmmoniumNitrate),
    ("drift control agent", AdjuvantClass::DriftRetardant),
    ("drift reduction agent", AdjuvantClass::DriftRetardant),
    ("defoamer", AdjuvantClass::Defoamer),
];

/// The classes that a sentence can name without doubt: "buffer" is a strip, too.
const NAMED: [AdjuvantClass; 10] = [
    AdjuvantClass::NonIonicSurfactant,
    AdjuvantClass::CropOilConcentrate,
    AdjuvantClass::MethylatedSeedOil,
    AdjuvantClass::HighSurfactantOil,
    AdjuvantClass::Organosilicone,
    AdjuvantClass::AmmoniumSulfate,
    AdjuvantClass::UreaAmmoniumNitrate,
    AdjuvantClass::VolatilityReducer,
    AdjuvantClass::DriftRetardant,
    AdjuvantClass::Defoamer,
];

/// Droplet classes as labels write them in English and in Spanish, the longer names first.
const DROPLETS: [(&str, Droplets); 14] = [
    ("extremely fine", Droplets::ExtremelyFine),
    ("very fine", Droplets::VeryFine),
    ("very coarse", Droplets::VeryCoarse),
    ("extremely coarse", Droplets::ExtremelyCoarse),
    ("ultra coarse", Droplets::UltraCoarse),
    ("muy gruesas", Droplets::VeryCoarse),
    ("extremadamente gruesas", Droplets::ExtremelyCoarse),
    ("fine", Droplets::Fine),
    ("medium", Droplets::Medium),
    ("coarse", Droplets::Coarse),
    ("finas", Droplets::Fine),
    ("medianas", Droplets::Medium),
    ("medias", Droplets::Medium),
    ("gruesas", Droplets::Coarse),
];

/// One class of droplets and how many words it takes.
pub(super) fn droplets(items: &[Item]) -> Option<(Droplets, usize)> {
    DROPLETS.iter().find_map(|(name, class)| words(items, 0, name).map(|length| (*class, length)))
}

pub(super) fn word(items: &[Item], at: usize) -> &str {
    match items.get(at).map(|item| &item.what) {
        Some(What::Word(word)) => word,
        _ => "",
    }
}

/// Whether the items from a place on are the words of a name, and how many these are. A plural is its singular.
fn words(items: &[Item], at: usize, name: &str) -> Option<usize> {
    let wanted: Vec<&str> = name.split([' ', '-']).filter(|word| !word.is_empty()).collect();
    let is = |(off, name): (usize, &&str)| {
        let here = word(items, at + off);
        let one = here.strip_suffix("es").into_iter().chain(here.strip_suffix('s'));
        here == *name || (off + 1 == wanted.len() && one.into_iter().any(|one| one == *name))
    };
    wanted.iter().enumerate().all(is).then_some(wanted.len())
}

fn class(items: &[Item], at: usize) -> Option<(AdjuvantClass, usize)> {
    let by_word = NAMED.iter().map(|class| (class.word(), *class)).chain(WRITTEN);
    let long =
        by_word.filter_map(|(name, class)| Some((class, words(items, at, name)?))).max_by_key(|(_, length)| *length);
    let key = |at: usize| {
        let here = word(items, at).to_uppercase();
        NAMED.iter().copied().find(|class| class.key() == here)
    };
    match long {
        // "crop oil concentrate (COC)"
        Some((class, length)) if key(at + length) == Some(class) => Some((class, length + 1)),
        Some(found) => Some(found),
        None => key(at).map(|class| (class, 1)),
    }
}

fn skip(items: &[Item], at: usize, any: &[&str]) -> usize {
    at + usize::from(any.contains(&word(items, at)))
}

fn rate(items: &[Item], at: usize) -> Option<&Figure> {
    match items.get(at).map(|item| &item.what) {
        Some(What::Figure(figure)) if matches!(figure.measure, Measure::Rate(_) | Measure::OtherRate(_)) => {
            Some(figure)
        }
        _ => None,
    }
}

/// One adjuvant, its rate before or behind it: "COC at 1 % v/v", "0.25 % v/v NIS".
fn dose(items: &[Item], at: usize) -> Option<(Dose, usize)> {
    let begin = skip(items, at, &["a", "an", "the", "any"]);
    if let Some(before) = rate(items, begin) {
        let named = skip(items, begin + 1, &["of"]);
        let (class, length) = class(items, skip(items, named, &["a", "an"]))?;
        let named = skip(items, named, &["a", "an"]);
        return Some((Dose { class, rate: Some(before.clone()) }, named + length - at));
    }
    let (class, length) = class(items, begin)?;
    let end = begin + length;
    let mut behind = skip(items, end, &["at"]);
    for any in [&["a", "the"][..], &["rate"], &["of"]] {
        behind = skip(items, behind, any);
    }
    match rate(items, behind) {
        Some(figure) => Some((Dose { class, rate: Some(figure.clone()) }, behind + 1 - at)),
        None => Some((Dose { class, rate: None }, end - at)),
    }
}

/// Adjuvants, one or several that stand together in one way.
pub(super) fn doses(items: &[Item]) -> Option<(Vec<Dose>, Joined, usize)> {
    let (first, mut end) = dose(items, 0)?;
    let mut all = vec![first];
    let mut joined = Joined::Alone;
    // Commas do not count, so "NIS, COC or MSO" has one word between its last two alone.
    let mut apart = 0;
    loop {
        let here = match word(items, end) {
            "or" => Some(Joined::Or),
            "and" | "plus" => Some(Joined::And),
            _ => None,
        };
        let next = end + usize::from(here.is_some());
        let Some((one, length)) = items.get(next..).and_then(|items| dose(items, 0)) else { break };
        match here {
            Some(here) if joined == Joined::Alone || joined == here => joined = here,
            Some(_) => return None,
            None => apart += 1,
        }
        all.push(one);
        end = next + length;
    }
    // Two names without a word between them may be one or the other or both.
    (apart == 0 || joined != Joined::Alone).then_some((all, joined, end))
}

/// A growth stage as a sentence writes it, and how many words it takes: "V8", "BBCH 14", "flag leaf".
pub(super) fn stage(items: &[Item]) -> Option<(String, usize)> {
    let first = word(items, 0).to_uppercase();
    if is_stage(&first) {
        return Some((first, 1));
    }
    if let Some(What::Number(number)) = items.get(1).map(|item| &item.what) {
        let both = format!("{first} {number}");
        if !first.is_empty() && Stage::read(&both).is_some() {
            return Some((both, 2));
        }
    }
    (1..=LONGEST_STAGE).rev().find_map(|length| {
        let words: Vec<&str> = (0..length).map(|at| word(items, at)).collect();
        let name = words.join(" ");
        (!words.contains(&"") && is_named(&name)).then_some((name, length))
    })
}

/// The name of a stage has so many words at most.
const LONGEST_STAGE: usize = 4;

/// The last of two codes of one scale, with the first before a stroke: "BBCH 12-16" is "BBCH 12/BBCH 16".
pub(super) fn codes(items: &[Item]) -> Option<(String, usize)> {
    let (first, length) = stage(items)?;
    let scale = first.split_once(' ')?.0;
    let next = length + usize::from(["to", "through", "a"].contains(&word(items, length)));
    let What::Number(last) = &items.get(next)?.what else { return None };
    let last = format!("{scale} {last}");
    Stage::read(&last).is_some().then(|| (format!("{first}/{last}"), next + 1))
}

/// Whether a word is a stage of growth.
pub(super) fn is_stage(word: &str) -> bool {
    word.len() <= 4 && Stage::read(word).is_some()
}

/// Things beside a field, as far as the table of surroundings knows them; none where a word among them is not known.
pub(super) fn neighbours(items: &[Item]) -> Option<usize> {
    static KNOWN: LazyLock<Vec<String>> = LazyLock::new(words_of_neighbours);
    let one = |at: usize| {
        let mut from = skip(items, at, &["any", "the", "a", "an", "all", "los", "las"]);
        from = skip(items, from, &["perennial", "intermittent", "natural", "open", "permanent"]);
        let length = KNOWN.iter().filter_map(|name| words(items, from, name)).max()?;
        Some(from + length)
    };
    let mut end = one(0)?;
    loop {
        let next = end + usize::from(["or", "and", "y", "o"].contains(&word(items, end)));
        match one(next) {
            Some(after) => end = after,
            None => return Some(end),
        }
    }
}

/// Names of what may not be mixed in, up to the end or to the crop: words alone, of which none may turn the sentence.
pub(super) fn partners(items: &[Item], taken: &[bool]) -> Option<usize> {
    let mut end = 0;
    while let Some(Item { what: What::Word(word), .. }) = items.get(end) {
        let is_crop = ["in", "on"].contains(&word.as_str()) && crops::list(items, taken, end + 1) > end + 1;
        if is_crop || taken.get(end) != Some(&false) {
            break;
        }
        // "Products that forbid it" are no names.
        let is_clause =
            ["that", "which", "whose", "it", "them", "this", "any", "other", "products"].contains(&word.as_str());
        if is_clause || (turns(word) && !["or", "and"].contains(&word.as_str())) {
            return None;
        }
        end += 1;
    }
    let is_whole = matches!(items.get(end).map(|item| &item.what), None | Some(What::Stop | What::Word(_)));
    (end > 0 && end <= 8 && is_whole).then_some(end)
}

/// All that a sentence still says.
pub(super) fn rest(items: &[Item]) -> Option<usize> {
    let ends = matches!(items.last().map(|item| &item.what), Some(What::Stop));
    let end = items.len() - usize::from(ends);
    (end > 0).then_some(end)
}

/// The text of some items.
pub(super) fn text(sentence: &str, items: &[Item], range: &Range<usize>) -> String {
    let from = items.get(range.start).map_or(0, |item| item.at.start);
    let to = range.end.checked_sub(1).and_then(|last| items.get(last)).map_or(from, |item| item.at.end);
    sentence.get(from..to).unwrap_or_default().trim().to_owned()
}
