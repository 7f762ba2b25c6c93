//! Statements of what phrases caught in a sentence, and what the sentences of a text come to together.

use super::items::{Figure, Item, Measure, What, items, quantity};
use super::phrases::{Catch, Fit, Says as Phrase, table, turns};
use super::sentences::Piece;
use super::{Sentence, crops};
use crate::farm::{Period, Product, Says};
use crate::language::t;
use crate::quantity::{AsTyped, CarrierRate, Quantity, Rate, Units};

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
    /// Days between two applications, which the form holds together with their number.
    Apart(u32),
}

/// Said where a sentence has one figure for a form that asks for two.
fn one_figure() -> &'static str {
    t!("label-one-figure-so-it-is-entered")
}

/// What a sentence says; nothing where it has neither figures nor droplet classes.
///
/// # Errors
/// A sentence that says why it is not understood.
pub(super) fn of_sentence(piece: &Piece, product: &Product, units: Units) -> Result<Vec<Caught>, String> {
    let items = items(&piece.text, product.is_liquid(), units);
    if items.len() > MOST_ITEMS {
        return Err(t!("label-it-is-too-long-to-be").to_owned());
    }
    let mut taken = vec![false; items.len()];
    let mut fits: Vec<(Phrase, Fit)> = Vec::new();
    for phrase in table() {
        while let Some(fit) = phrase.find(&items, &taken) {
            let is_within =
                |at: usize| fit.caught.iter().any(|catch| matches!(catch, Catch::Within(range) if range.contains(&at)));
            for at in (fit.from..fit.to).filter(|at| !is_within(*at)) {
                if let Some(slot) = taken.get_mut(at) {
                    *slot = true;
                }
            }
            fits.push((phrase.says, fit));
        }
    }
    if fits.is_empty() {
        return if is_of_interest(&items) {
            Err(t!("label-no-phrase-known-here-fits-it").to_owned())
        } else {
            Ok(Vec::new())
        };
    }
    left_over(&piece.text, &items, &taken)?;
    let named = crops::of(&items, &taken)?;
    for at in &named.at {
        if let Some(slot) = taken.get_mut(*at) {
            *slot = true;
        }
    }
    let crop = if named.names.is_empty() { crop_of_heading(piece, product, units)? } else { named.names };
    let sentence = Sentence { text: piece.text.clone(), read: read_ranges(&items, &taken) };
    fits.sort_by_key(|(_, fit)| fit.from);
    let mut all = Vec::new();
    for (says, fit) in fits {
        for (becomes, note) in made(says, &fit.caught, product)? {
            let note = note.to_owned();
            all.push(Caught { becomes, crop: crop.clone(), sentence: sentence.clone(), note });
        }
    }
    Ok(all)
}

/// The crop of the heading that a sentence stands under.
fn crop_of_heading(piece: &Piece, product: &Product, units: Units) -> Result<String, String> {
    let words = items(&piece.heading, product.is_liquid(), units);
    match crops::of(&words, &vec![false; words.len()]) {
        // A heading that says more than the crop ("Preplant, corn") may limit what stands under it.
        Ok(crops)
            if !crops.at.is_empty()
                && words
                    .iter()
                    .enumerate()
                    .any(|(at, item)| !crops.at.contains(&at) && item.what != What::Word("and".to_owned())) =>
        {
            Err(t!("label-it-stands-under-the-heading-which", heading = piece.heading))
        }
        Ok(crops) => Ok(crops.names),
        Err(_) => Err(t!("label-it-stands-under-the-heading-whose", heading = piece.heading)),
    }
}

/// Whether a sentence without a known phrase is worth saying that it was not understood.
fn is_of_interest(items: &[Item]) -> bool {
    let has = |words: &[&str]| {
        items.iter().any(|item| matches!(&item.what, What::Word(word) if words.contains(&word.as_str())))
    };
    let figures = items.iter().any(|item| matches!(item.what, What::Number(_) | What::Figure(_)));
    figures
        || (has(&["droplet", "droplets", "spray"]) && has(&["fine", "finer", "medium", "coarse", "coarser"]))
        || (has(&["applications", "treatments"]) && has(&["two", "three", "four", "five", "six"]))
}

fn left_over(text: &str, items: &[Item], taken: &[bool]) -> Result<(), String> {
    for (at, (item, taken)) in items.iter().zip(taken).enumerate() {
        match &item.what {
            _ if *taken => {}
            What::Number(_) | What::Figure(_) => {
                // With the word behind it, by which it is found.
                let end = match items.get(at + 1) {
                    Some(Item { what: What::Word(_), at }) => at.end,
                    _ => item.at.end,
                };
                let figure = text.get(item.at.start..end).unwrap_or_default();
                return Err(t!("label-no-phrase-known-here-accounts-for", figure = figure));
            }
            What::Word(word) if turns(word) => return Err(t!("label-the-word-may-turn-what-it", word = word)),
            What::Word(_) | What::Stop => {}
        }
    }
    Ok(())
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

type Made = Vec<(Becomes, &'static str)>;

/// What a phrase with its catches becomes.
fn made(says: Phrase, caught: &[Catch], product: &Product) -> Result<Made, String> {
    let unread = || t!("label-a-figure-in-it-cannot-be").to_owned();
    let figure = |at: usize| match caught.iter().filter_map(of_figure).nth(at) {
        Some(figure) => Ok(figure),
        None => Err(unread()),
    };
    let days = || whole(&figure(0)?.most).ok_or_else(|| t!("label-the-form-takes-whole-days-and").to_owned());
    let one = |says| Ok(vec![(Becomes::Says(says), "")]);
    match says {
        Phrase::Rate => {
            let (least, most, note) = both(figure(0)?, rate_unit(figure(0)?).ok_or_else(unread)?).ok_or_else(unread)?;
            of_active(&most, product)?;
            Ok(vec![(Becomes::Says(Says::Rate { least: Some(least), most: Some(most) }), note)])
        }
        Phrase::RateLeast | Phrase::RateMost => {
            let figure = figure(0)?;
            let end: AsTyped<Rate> =
                quantity(&figure.most, rate_unit(figure).ok_or_else(unread)?).ok_or_else(unread)?;
            of_active(&end, product)?;
            let is_least = says == Phrase::RateLeast;
            let (least, most) = if is_least { (Some(end), None) } else { (None, Some(end)) };
            one(Says::Rate { least, most })
        }
        Phrase::RateAndWater => {
            let unit = rate_unit(figure(0)?).ok_or_else(unread)?;
            let mut all = made(Phrase::Rate, caught, product)?;
            let volume =
                water_unit(figure(1)?, unit).ok_or_else(|| t!("label-it-does-not-say-over-which").to_owned())?;
            let (least, most, note) = both(figure(1)?, &volume).ok_or_else(unread)?;
            all.push((Becomes::Says(Says::Carrier { least: Some(least), most: Some(most) }), note));
            Ok(all)
        }
        Phrase::Carrier => {
            let volume = water_unit(figure(0)?, "").ok_or_else(|| t!("label-it-does-not-say-over-which").to_owned())?;
            let (least, most, note) = both(figure(0)?, &volume).ok_or_else(unread)?;
            Ok(vec![(Becomes::Says(Says::Carrier { least: Some(least), most: Some(most) }), note)])
        }
        Phrase::CarrierLeast | Phrase::CarrierMost => {
            let volume = water_unit(figure(0)?, "").ok_or_else(unread)?;
            let end: AsTyped<CarrierRate> = quantity(&figure(0)?.most, &volume).ok_or_else(unread)?;
            let is_least = says == Phrase::CarrierLeast;
            let (least, most) = if is_least { (Some(end), None) } else { (None, Some(end)) };
            one(Says::Carrier { least, most })
        }
        Phrase::SeasonTotal => {
            let figure = figure(0)?;
            let most: AsTyped<Rate> =
                quantity(&figure.most, rate_unit(figure).ok_or_else(unread)?).ok_or_else(unread)?;
            let (per, note) = period(caught);
            Ok(vec![(
                Becomes::Says(match of_active(&most, product)? {
                    Some(active) => Says::ActiveSeasonTotal { active, most, per },
                    None => Says::SeasonTotal { most, per },
                }),
                note,
            )])
        }
        Phrase::Applications => {
            let count =
                caught.iter().find_map(|catch| if let Catch::Count(count) = catch { Some(*count) } else { None });
            let (per, note) = period(caught);
            let most = count.ok_or_else(unread)?;
            Ok(vec![(Becomes::Says(Says::Applications { most, days_apart: 0, per }), note)])
        }
        Phrase::Apart => Ok(vec![(Becomes::Apart(days()?), "")]),
        Phrase::Harvest => one(Says::HarvestInterval { days: days()? }),
        Phrase::ReEntry => one(Says::ReEntry { hours: days()? }),
        Phrase::RainFree => one(Says::RainFree { hours: days()? }),
        Phrase::Wind | Phrase::WindBetween => {
            let figure = figure(0)?;
            let Measure::Speed(unit) = &figure.measure else { return Err(unread()) };
            let most = quantity(&figure.most, unit).ok_or_else(unread)?;
            let least = figure.least.as_ref().map(|least| quantity(least, unit).ok_or_else(unread)).transpose()?;
            one(Says::Wind { most, least, gust: None })
        }
        Phrase::Droplets => {
            let classes = caught.iter().find_map(|catch| match catch {
                Catch::Droplets { finest, coarsest } => Some((*finest, *coarsest)),
                _ => None,
            });
            let (finest, coarsest) = classes.ok_or_else(unread)?;
            let note = if coarsest == Some(finest) { t!("label-one-class-so-neither-finer-nor") } else { "" };
            Ok(vec![(Becomes::Says(Says::Droplets { finest, coarsest }), note)])
        }
        Phrase::Guard => Ok(Vec::new()),
    }
}

fn of_figure(catch: &Catch) -> Option<&Figure> {
    if let Catch::Figure(figure) = catch { Some(figure) } else { None }
}

fn whole(number: &str) -> Option<u32> {
    number.parse().ok().filter(|days| *days < 10_000)
}

fn rate_unit(figure: &Figure) -> Option<&str> {
    if let Measure::Rate(unit) = &figure.measure { Some(unit) } else { None }
}

/// The unit of a spray volume; without a word on the ground it is that of the rate beside it.
fn water_unit(figure: &Figure, rate: &str) -> Option<String> {
    match &figure.measure {
        Measure::Water(unit) | Measure::Rate(unit) => Some(unit.clone()),
        Measure::WaterAlone(unit) => rate.split_once('/').map(|(_, ground)| format!("{unit}/{ground}")),
        _ => None,
    }
}

fn both<Q: Quantity>(figure: &Figure, unit: &str) -> Option<(AsTyped<Q>, AsTyped<Q>, &'static str)> {
    let most: AsTyped<Q> = quantity(&figure.most, unit)?;
    Some(match &figure.least {
        Some(least) => (quantity(least, unit)?, most, ""),
        None => (most.clone(), most, one_figure()),
    })
}

/// The active that a rate counts; none where it counts the product.
fn of_active(rate: &AsTyped<Rate>, product: &Product) -> Result<Option<String>, String> {
    if !matches!(rate.value(), Rate::ActivePerArea(..) | Rate::ActivePerSpray(..)) {
        return Ok(None);
    }
    match product.actives.as_slice() {
        [only] if !only.name.trim().is_empty() => Ok(Some(only.name.clone())),
        _ => Err(t!("label-it-counts-an-active-that-is").to_owned()),
    }
}

/// Over what is counted, and what is to be said of it.
fn period(caught: &[Catch]) -> (Period, &'static str) {
    match caught.iter().find_map(|catch| if let Catch::Period(period) = catch { Some(*period) } else { None }) {
        Some(Some(period)) => (period, ""),
        Some(None) => (Period::Year, t!("label-a-season-is-entered-as-a")),
        None => (Period::Year, t!("label-it-does-not-say-over-what")),
    }
}
