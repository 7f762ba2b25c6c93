//! Statements of the form, out of what phrases caught in a sentence.

use super::build::Becomes;
use super::items::{Figure, Item, quantity};
use super::phrases::Catch;
use super::table::Says as Phrase;
use super::units::Measure;
use super::{adjuvants, lists};
use crate::farm::{Period, Product, Says};
use crate::language::t;
use crate::mix::actives;
use crate::quantity::{AsTyped, CarrierRate, Quantity, Rate};
use crate::words::named_in;

/// What a phrase comes to, each with what is to be said of it.
pub(super) type Made = Vec<(Becomes, &'static str)>;

/// Said where a sentence has one figure for a form that asks for two.
fn one_figure() -> &'static str {
    t!("label-one-figure-so-it-is-entered")
}

/// The sentence that something was caught in.
pub(super) struct Of<'s> {
    pub(super) text: &'s str,
    pub(super) items: &'s [Item],
    pub(super) product: &'s Product,
}

impl Of<'_> {
    /// What of it enters the form as it stands.
    fn words(&self, caught: &[Catch]) -> Option<String> {
        let words = caught.iter().find_map(|catch| if let Catch::Words(range) = catch { Some(range) } else { None })?;
        Some(lists::text(self.text, self.items, words)).filter(|text| !text.is_empty())
    }
}

/// What a phrase with its catches becomes.
///
/// # Errors
/// Why the form cannot hold it.
pub(super) fn made(says: Phrase, caught: &[Catch], of: &Of) -> Result<Made, String> {
    let product = of.product;
    let unread = || t!("label-a-figure-in-it-cannot-be").to_owned();
    let figure = |at: usize| match caught.iter().filter_map(of_figure).nth(at) {
        Some(figure) => Ok(figure),
        None => Err(unread()),
    };
    let days = || time(figure(0)?, &DAYS);
    let length = || match figure(0)? {
        Figure { most, measure: Measure::Length(unit), .. } => quantity(most, unit).ok_or_else(unread),
        _ => Err(unread()),
    };
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
        Phrase::ReEntry => one(Says::ReEntry { hours: time(figure(0)?, &HOURS)? }),
        Phrase::RainFree => match figure(0)? {
            Figure { most, measure: Measure::Minutes, .. } => {
                // Upwards, so that it is kept.
                let hours = whole(most).ok_or_else(unread)?.div_ceil(60);
                Ok(vec![(Becomes::Says(Says::RainFree { hours }), t!("label-minutes-are-entered-as-the-next"))])
            }
            figure => one(Says::RainFree { hours: time(figure, &HOURS)? }),
        },
        Phrase::PlantBack | Phrase::PlantBackRow => {
            let (months, note) = months(figure(0)?)?;
            let crop = caught.iter().find_map(|catch| if let Catch::Crop(crop) = catch { Some(crop) } else { None });
            let next_crop = crop.ok_or_else(unread)?.clone();
            Ok(vec![(Becomes::Says(Says::PlantBack { next_crop, months }), note)])
        }
        Phrase::Wind | Phrase::WindBetween => {
            let figure = figure(0)?;
            let Measure::Speed(unit) = &figure.measure else { return Err(unread()) };
            let most = quantity(&figure.most, unit).ok_or_else(unread)?;
            let least = figure.least.as_ref().map(|least| quantity(least, unit).ok_or_else(unread)).transpose()?;
            one(Says::Wind { most, least, gust: None })
        }
        Phrase::WindOutside => {
            let Measure::Speed(unit) = &figure(0)?.measure else { return Err(unread()) };
            let bare =
                caught.iter().find_map(|catch| if let Catch::Bare(number) = catch { Some(number) } else { None });
            let (least, most) = match bare {
                Some(bare) => (bare, &figure(0)?.most),
                None if figure(1)?.measure == figure(0)?.measure => (&figure(0)?.most, &figure(1)?.most),
                None => return Err(unread()),
            };
            let least = Some(quantity(least, unit).ok_or_else(unread)?);
            one(Says::Wind { most: quantity(most, unit).ok_or_else(unread)?, least, gust: None })
        }
        Phrase::DropletsFinest => {
            let finest = caught.iter().find_map(|catch| match catch {
                Catch::Droplets { finest, coarsest: Some(coarsest) } if finest == coarsest => Some(*finest),
                _ => None,
            });
            one(Says::Droplets { finest: finest.ok_or_else(unread)?, coarsest: None })
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
        Phrase::TemperatureBetween => match figure(0)? {
            Figure { least: Some(least), most, measure: Measure::Degrees(unit) } => {
                let (least, most) = (quantity(least, unit), quantity(most, unit));
                one(Says::Temperature { least: Some(least.ok_or_else(unread)?), most: Some(most.ok_or_else(unread)?) })
            }
            _ => Err(unread()),
        },
        Phrase::HumidityMost | Phrase::HumidityLeast => {
            let end = Some(quantity(&figure(0)?.most, "%").ok_or_else(unread)?);
            let is_least = says == Phrase::HumidityLeast;
            let (least, most) = if is_least { (end, None) } else { (None, end) };
            one(Says::Humidity { least, most })
        }
        Phrase::BoomHeight => one(Says::BoomHeight { most: length()? }),
        Phrase::GroundSpeed => match figure(0)? {
            Figure { most, measure: Measure::Speed(unit), .. } => {
                one(Says::GroundSpeed { most: quantity(most, unit).ok_or_else(unread)? })
            }
            _ => Err(unread()),
        },
        Phrase::NoInversion => one(Says::NoInversion),
        Phrase::StageTo | Phrase::StageUpTo | Phrase::StageFrom | Phrase::StageBetween => {
            let stages: Vec<&String> = caught
                .iter()
                .filter_map(|catch| if let Catch::Stage(stage) = catch { Some(stage) } else { None })
                .collect();
            let (from, to) = match (says, stages.as_slice()) {
                // "BBCH 12-16" is caught as one.
                (Phrase::StageBetween, [both]) => {
                    both.split_once('/').map(|(from, to)| (from.to_owned(), to.to_owned())).ok_or_else(unread)?
                }
                (Phrase::StageFrom, [from]) => ((*from).clone(), String::new()),
                (Phrase::StageBetween, [from, to]) => ((*from).clone(), (*to).clone()),
                (Phrase::StageTo | Phrase::StageUpTo, [to]) => (String::new(), (*to).clone()),
                _ => return Err(unread()),
            };
            let note = if says == Phrase::StageUpTo { t!("label-up-to-a-stage-is-entered") } else { "" };
            Ok(vec![(Becomes::Stages { from, to }, note)])
        }
        Phrase::Buffer | Phrase::BufferDownwind => {
            let downwind_only = says == Phrase::BufferDownwind;
            one(Says::Buffer { to: of.words(caught).ok_or_else(unread)?, width: length()?, downwind_only })
        }
        Phrase::CleanOut => one(Says::CleanOut { before: String::new(), how: of.words(caught).ok_or_else(unread)? }),
        Phrase::Handling => one(Says::Handling { what: of.words(caught).ok_or_else(unread)? }),
        Phrase::NotWith => one(Says::NotWith { what: of.words(caught).ok_or_else(unread)?, days: 0 }),
        Phrase::Wear => one(Says::Wear { what: of.words(caught).ok_or_else(unread)? }),
        Phrase::AdjuvantRequired
        | Phrase::AdjuvantPreferred
        | Phrase::AdjuvantAllowed
        | Phrase::AdjuvantDiscouraged
        | Phrase::AdjuvantForbidden => adjuvants::made(says, caught),
        Phrase::Aside
        | Phrase::Timing
        | Phrase::Heading
        | Phrase::HeadingOfOthers
        | Phrase::Rotation
        | Phrase::Year
        | Phrase::Crop
        | Phrase::Season
        | Phrase::Piece
        | Phrase::Guard
        | Phrase::Condition
        | Phrase::Elsewhere
        | Phrase::Limit => Ok(Vec::new()),
    }
}

fn of_figure(catch: &Catch) -> Option<&Figure> {
    if let Catch::Figure(figure) = catch { Some(figure) } else { None }
}

fn whole(number: &str) -> Option<u32> {
    number.parse().ok().filter(|days| *days < 10_000)
}

/// How many of what is entered each measure has.
type Times = [(Measure, u32); 2];

const DAYS: Times = [(Measure::Days, 1), (Measure::Weeks, 7)];
const HOURS: Times = [(Measure::Hours, 1), (Measure::Days, 24)];

/// A time in whole days or hours.
fn time(figure: &Figure, times: &Times) -> Result<u32, String> {
    let unread = || t!("label-the-form-takes-whole-days-and").to_owned();
    let each = times.iter().find(|(measure, _)| *measure == figure.measure).map(|(_, each)| each).ok_or_else(unread)?;
    whole(&figure.most).map(|count| count * each).ok_or_else(unread)
}

/// Fewest days in so many months on end, February among them.
const DAYS_IN_MONTHS: [u32; 24] = [
    28, 59, 89, 120, 150, 181, 212, 242, 273, 303, 334, 365, 393, 424, 454, 485, 515, 546, 577, 607, 638, 668, 699, 730,
];

/// Months; days are entered as the months that hold so many whenever they begin.
fn months(figure: &Figure) -> Result<(u32, &'static str), String> {
    if figure.measure == Measure::Months {
        return whole(&figure.most)
            .map(|months| (months, ""))
            .ok_or_else(|| t!("label-a-figure-in-it-cannot-be").to_owned());
    }
    let days = time(figure, &DAYS)?;
    let months = (1..).zip(DAYS_IN_MONTHS).find(|(_, least)| *least >= days).map(|(months, _)| months);
    months
        .map(|months| (months, t!("label-days-are-entered-as-the-next")))
        .ok_or_else(|| t!("label-a-figure-in-it-cannot-be").to_owned())
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
