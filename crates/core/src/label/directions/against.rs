//! What was read, against what the form holds: the same, something else, or nothing yet; and taking it over.

use super::Found;
use crate::farm::{Product, Says, Statement, crop};
use crate::label::stage;
use crate::language::t;
use crate::quantity::{AsTyped, Quantity, Units};
use crate::words::{plain, to};

/// How a statement that was read stands to the form.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Stands {
    /// The form has nothing of its kind for its crop.
    New,
    /// It says the same; at which place.
    Same(usize),
    /// It says something else; at which places.
    Otherwise(Vec<usize>),
}

/// Whether a typed statement is for a crop and always.
pub(super) fn is_for(typed: &Statement, name: &str) -> bool {
    crop::same(&typed.crop, name) && typed.when.is_empty() && typed.from_stage.is_empty() && typed.to_stage.is_empty()
}

/// Of what among others of its kind a statement speaks: an adjuvant class, a neighbour, a partner. There may be many such, each with
/// a row of its own.
pub(super) fn speaks_of(says: &Says) -> String {
    match says {
        Says::Adjuvant { class, .. } => class.key().to_owned(),
        Says::Buffer { to: what, .. }
        | Says::NotWith { what, .. }
        | Says::Wear { what }
        | Says::Handling { what }
        | Says::CleanOut { how: what, .. }
        | Says::PlantBack { next_crop: what, .. } => plain(what),
        _ => String::new(),
    }
}

/// Whether a typed statement is of the kind of another, for the same crop and thing.
fn of_kind(typed: &Statement, wanted: &Statement) -> bool {
    let is_for = if wanted.says == Says::CropStage {
        crop::same(&typed.crop, &wanted.crop) && typed.when.is_empty()
    } else {
        is_for(typed, &wanted.crop)
    };
    typed.says.name() == wanted.says.name() && is_for && speaks_of(&typed.says) == speaks_of(&wanted.says)
}

/// How it stands to what is typed. What is typed for a stage or a condition speaks of something else.
pub fn stands(found: &Found, product: &Product) -> Stands {
    let wanted = &found.statement;
    let of_kind: Vec<(usize, &Statement)> =
        product.label.iter().enumerate().filter(|(_, typed)| self::of_kind(typed, wanted)).collect();
    // Compared in one system, so that "2 pt/a" is "2 pt/ac".
    let same = |typed: &Statement| in_form(typed, Some(Units::Metric)) == in_form(wanted, Some(Units::Metric));
    match of_kind.iter().find(|(_, typed)| same(typed)) {
        Some((at, _)) => Stands::Same(*at),
        None if of_kind.is_empty() => Stands::New,
        None => Stands::Otherwise(of_kind.into_iter().map(|(at, _)| at).collect()),
    }
}

/// Enters what was read, with its place on the label: in the place of a typed statement of its kind, or beside all.
pub fn enter(found: &Found, at: &str, instead_of: Option<usize>, product: &mut Product) {
    let statement = Statement { at: at.trim().to_owned(), ..found.statement.clone() };
    let slot = instead_of.and_then(|place| product.label.get_mut(place));
    match slot.filter(|typed| {
        typed.says.name() == statement.says.name() && speaks_of(&typed.says) == speaks_of(&statement.says)
    }) {
        Some(typed) => *typed = statement,
        None => product.label.push(statement),
    }
}

/// What a statement has in its boxes, in words: "16 to 22 fl oz/ac". As typed, or shown in a system of units.
pub fn in_form(statement: &Statement, units: Option<Units>) -> String {
    match &statement.says {
        Says::CropStage => stage::range(statement),
        Says::Adjuvant { class, stance, least, most, .. } => {
            let rate = between(least.as_ref(), most.as_ref(), units);
            if rate.is_empty() {
                t!("label-adjuvant-in-form", class = class.name(), stance = stance.name())
            } else {
                t!("label-adjuvant-in-form-at", class = class.name(), stance = stance.name(), rate = rate)
            }
        }
        Says::Temperature { least, most } => between(least.as_ref(), most.as_ref(), units),
        Says::Buffer { to, width, downwind_only: true } => {
            t!("label-buffer-downwind-in-form", width = text(width, units), to = to)
        }
        Says::Buffer { to, width, .. } => t!("label-buffer-in-form", width = text(width, units), to = to),
        Says::NotWith { what, .. } | Says::Wear { what } | Says::Handling { what } => what.clone(),
        Says::CleanOut { before, how } if before.is_empty() => how.clone(),
        Says::PlantBack { next_crop, months: 1 } => t!("label-next-crop-in-form-one", crop = next_crop),
        Says::PlantBack { next_crop, months } => t!("label-next-crop-in-form", crop = next_crop, months = months),
        Says::BoomHeight { most } => t!("label-at-most-text", text = text(most, units)),
        Says::GroundSpeed { most } => t!("label-at-most-text", text = text(most, units)),
        Says::Humidity { least, most } => between(least.as_ref(), most.as_ref(), units),
        Says::Rate { least, most } => between(least.as_ref(), most.as_ref(), units),
        Says::Carrier { least, most } => between(least.as_ref(), most.as_ref(), units),
        Says::SeasonTotal { most, per } => t!("label-at-most-text-per", text = text(most, units), per = per.name()),
        Says::ActiveSeasonTotal { active, most, per } => {
            t!("label-active-at-most-text-per", active = active, text = text(most, units), per = per.name())
        }
        Says::Applications { most, days_apart: 0, per } => t!("label-at-most-most-per", most = most, per = per.name()),
        Says::Applications { most, days_apart, per } => {
            t!("label-at-most-days-apart", most = most, per = per.name(), days_apart = days_apart)
        }
        Says::HarvestInterval { days: 1 } => t!("label-1-day-before-harvest-or-grazing").to_owned(),
        Says::HarvestInterval { days } => t!("label-days-before-harvest-or-grazing", days = days),
        Says::ReEntry { hours: 1 } => t!("label-1-hour-without-protection").to_owned(),
        Says::ReEntry { hours } => t!("label-hours-without-protection", hours = hours),
        Says::RainFree { hours: 1 } => t!("label-1-hour-without-rain").to_owned(),
        Says::RainFree { hours } => t!("label-hours-without-rain", hours = hours),
        Says::Wind { most, least: Some(least), .. } => to(&text(least, units), &text(most, units)),
        Says::Wind { most, .. } => t!("label-at-most-text", text = text(most, units)),
        Says::Droplets { finest, coarsest: Some(coarsest) } if finest == coarsest => {
            t!("label-alone", finest = finest.name())
        }
        Says::Droplets { finest, coarsest: Some(coarsest) } => {
            t!("label-finest-to-coarsest", finest = finest.name(), coarsest = coarsest.name())
        }
        Says::Droplets { finest, coarsest: None } => t!("label-or-coarser", finest = finest.name()),
        // Not read from directions.
        other => other.name().to_owned(),
    }
}

fn text<Q: Quantity>(value: &AsTyped<Q>, units: Option<Units>) -> String {
    units.map_or_else(|| value.text().trim().to_owned(), |units| value.show(units))
}

fn between<Q: Quantity>(least: Option<&AsTyped<Q>>, most: Option<&AsTyped<Q>>, units: Option<Units>) -> String {
    match (least.map(|least| text(least, units)), most.map(|most| text(most, units))) {
        (Some(least), Some(most)) if least == most => least,
        (Some(least), Some(most)) => to(&least, &most),
        (Some(least), None) => t!("label-at-least-least", least = least),
        (None, Some(most)) => t!("label-at-most-most", most = most),
        (None, None) => String::new(),
    }
}
