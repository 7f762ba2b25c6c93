//! Statements of what phrases caught in a sentence, and what the sentences of a text come to together.

use super::items::{Figure, Item, Measure, What, items, quantity};
use super::lists;
use super::phrases::{Catch, Fit, Says as Phrase, limits, table, turns};
use super::sentences::Piece;
use super::{Sentence, adjuvants, crops};
use crate::farm::{Period, Product, Says};
use crate::language::t;
use crate::mix::actives;
use crate::quantity::{AsTyped, CarrierRate, Quantity, Rate, Units};
use crate::words::named_in;

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

/// Said where a sentence has one figure for a form that asks for two.
fn one_figure() -> &'static str {
    t!("label-one-figure-so-it-is-entered")
}

/// What a sentence says; never nothing.
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
        return Err(if has_limit(&piece.text) {
            t!("label-no-phrase-known-here-fits-it").to_owned()
        } else {
            t!("label-it-has-none-of-the-words").to_owned()
        });
    }
    let named = crops::of(&items, &taken)?;
    for at in &named.at {
        if let Some(slot) = taken.get_mut(*at) {
            *slot = true;
        }
    }
    left_over(&piece.text, &items, &taken, fits.iter().any(|(says, _)| says.is_strict()))?;
    let timing = timing(&items, &taken);
    let crop = if named.names.is_empty() { crop_of_heading(piece, product, units)? } else { named.names };
    let sentence = Sentence { text: piece.text.clone(), read: read_ranges(&items, &taken) };
    fits.sort_by_key(|(_, fit)| fit.from);
    let mut all = Vec::new();
    for (says, fit) in fits {
        let of = Of { text: &piece.text, items: &items, product };
        for (becomes, note) in made(says, &fit.caught, &of)? {
            let note =
                [note, timing.as_str()].into_iter().filter(|note| !note.is_empty()).collect::<Vec<_>>().join(" ");
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

/// Whether a sentence has figures, or words that limits are written with.
pub(super) fn has_limit(text: &str) -> bool {
    text.contains(char::is_numeric)
        || text.to_lowercase().replace('’', "'").split(|sign: char| !sign.is_alphanumeric() && sign != '\'').any(limits)
}

/// Said where a sentence holds at one time of the crop alone, which the form does not ask for.
fn timing(items: &[Item], taken: &[bool]) -> String {
    const TIMES: [&str; 9] = [
        "postemergence",
        "preemergence",
        "postemergent",
        "preemergent",
        "preplant",
        "burndown",
        "layby",
        "post",
        "pre",
    ];
    let left = items.iter().zip(taken).filter(|(_, taken)| !**taken);
    let said = left.filter_map(|(item, _)| if let What::Word(word) = &item.what { Some(word) } else { None });
    let time = said.into_iter().find(|word| TIMES.contains(&word.as_str()));
    time.map_or_else(String::new, |time| t!("label-it-says-at-which-time", time = time))
}

/// Words that may be left over where every word counts.
const FILLERS: [&str; 12] =
    ["the", "this", "product", "herbicide", "in", "on", "to", "for", "of", "and", "field", "fields"];

fn left_over(text: &str, items: &[Item], taken: &[bool], is_strict: bool) -> Result<(), String> {
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
            What::Word(word) if turns(word) || (is_strict && !FILLERS.contains(&word.as_str())) => {
                return Err(t!("label-the-word-may-turn-what-it", word = word));
            }
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

pub(super) type Made = Vec<(Becomes, &'static str)>;

/// The sentence that something was caught in.
struct Of<'s> {
    text: &'s str,
    items: &'s [Item],
    product: &'s Product,
}

impl Of<'_> {
    /// What of it enters the form as it stands.
    fn words(&self, caught: &[Catch]) -> Option<String> {
        let words = caught.iter().find_map(|catch| if let Catch::Words(range) = catch { Some(range) } else { None })?;
        Some(lists::text(self.text, self.items, words)).filter(|text| !text.is_empty())
    }
}

/// What a phrase with its catches becomes.
fn made(says: Phrase, caught: &[Catch], of: &Of) -> Result<Made, String> {
    let product = of.product;
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
            of_active(&most, product, of.text)?;
            Ok(vec![(Becomes::Says(Says::Rate { least: Some(least), most: Some(most) }), note)])
        }
        Phrase::RateLeast | Phrase::RateMost => {
            let figure = figure(0)?;
            let end: AsTyped<Rate> =
                quantity(&figure.most, rate_unit(figure).ok_or_else(unread)?).ok_or_else(unread)?;
            of_active(&end, product, of.text)?;
            let is_least = says == Phrase::RateLeast;
            let (least, most) = if is_least { (Some(end), None) } else { (None, Some(end)) };
            one(Says::Rate { least, most })
        }
        Phrase::RateAndWater => {
            let unit = rate_unit(figure(0)?).ok_or_else(unread)?;
            let mut all = made(Phrase::Rate, caught, of)?;
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
                Becomes::Says(match of_active(&most, product, of.text)? {
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
        Phrase::HarvestGrain => {
            let interval = Says::HarvestInterval { days: days()? };
            Ok(vec![(Becomes::Says(interval), t!("label-it-speaks-of-the-grain-alone"))])
        }
        Phrase::TemperatureMost | Phrase::TemperatureLeast => {
            let figure = figure(0)?;
            let Measure::Degrees(unit) = &figure.measure else { return Err(unread()) };
            let end = Some(quantity(&figure.most, unit).ok_or_else(unread)?);
            let is_least = says == Phrase::TemperatureLeast;
            let (least, most) = if is_least { (end, None) } else { (None, end) };
            one(Says::Temperature { least, most })
        }
        Phrase::NoInversion => one(Says::NoInversion),
        Phrase::StageTo | Phrase::StageUpTo | Phrase::StageFrom | Phrase::StageBetween => {
            let stages: Vec<&String> = caught
                .iter()
                .filter_map(|catch| if let Catch::Stage(stage) = catch { Some(stage) } else { None })
                .collect();
            let (from, to) = match (says, stages.as_slice()) {
                (Phrase::StageFrom, [from]) => ((*from).clone(), String::new()),
                (Phrase::StageBetween, [from, to]) => ((*from).clone(), (*to).clone()),
                (Phrase::StageTo | Phrase::StageUpTo, [to]) => (String::new(), (*to).clone()),
                _ => return Err(unread()),
            };
            let note = if says == Phrase::StageUpTo { t!("label-up-to-a-stage-is-entered") } else { "" };
            Ok(vec![(Becomes::Stages { from, to }, note)])
        }
        Phrase::Buffer => {
            let figure = figure(0)?;
            let Measure::Length(unit) = &figure.measure else { return Err(unread()) };
            let width = quantity(&figure.most, unit).ok_or_else(unread)?;
            one(Says::Buffer { to: of.words(caught).ok_or_else(unread)?, width, downwind_only: false })
        }
        Phrase::NotWith => one(Says::NotWith { what: of.words(caught).ok_or_else(unread)?, days: 0 }),
        Phrase::Wear => one(Says::Wear { what: of.words(caught).ok_or_else(unread)? }),
        Phrase::AdjuvantRequired
        | Phrase::AdjuvantPreferred
        | Phrase::AdjuvantAllowed
        | Phrase::AdjuvantDiscouraged
        | Phrase::AdjuvantForbidden => adjuvants::made(says, caught),
        Phrase::Guard | Phrase::Limit => Ok(Vec::new()),
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

pub(super) fn both<Q: Quantity>(figure: &Figure, unit: &str) -> Option<(AsTyped<Q>, AsTyped<Q>, &'static str)> {
    let most: AsTyped<Q> = quantity(&figure.most, unit)?;
    Some(match &figure.least {
        Some(least) => (quantity(least, unit)?, most, ""),
        None => (most.clone(), most, one_figure()),
    })
}

/// The active that a rate counts; none where it counts the product.
fn of_active(rate: &AsTyped<Rate>, product: &Product, text: &str) -> Result<Option<String>, String> {
    if !matches!(rate.value(), Rate::ActivePerArea(..) | Rate::ActivePerSpray(..)) {
        return Ok(None);
    }
    match product.actives.as_slice() {
        // A sentence that names another active counts that one, or all of its products.
        [only] if !only.name.trim().is_empty() && !names_another(text, &only.name) => Ok(Some(only.name.clone())),
        _ => Err(t!("label-it-counts-an-active-that-is").to_owned()),
    }
}

/// Whether a text names an active of the table beside one.
fn names_another(text: &str, own: &str) -> bool {
    let names = || actives::table().iter().flat_map(actives::ActiveFacts::names);
    names().any(|name| named_in(name, text) && !named_in(name, own) && !actives::same(name, own))
}

/// Over what is counted, and what is to be said of it.
fn period(caught: &[Catch]) -> (Period, &'static str) {
    match caught.iter().find_map(|catch| if let Catch::Period(period) = catch { Some(*period) } else { None }) {
        Some(Some(period)) => (period, ""),
        Some(None) => (Period::Year, t!("label-a-season-is-entered-as-a")),
        None => (Period::Year, t!("label-it-does-not-say-over-what")),
    }
}
