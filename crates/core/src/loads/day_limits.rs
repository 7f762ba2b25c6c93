//! The limits on the weather of a day as they stand on a card: of each kind the tightest, both ends of one thing together.

use std::sync::Arc;

use super::Load;
use super::card::from_to;
use crate::farm::{Farm, Id, Pass};
use crate::finding::Basis;
use crate::label::once;
use crate::language::{Language, Say, say, t};
use crate::plan::Plan;
use crate::quantity::{Quantity, Units};
use crate::weather::Limit;
use crate::weather::limits::{self, Kind};

/// The limits of a load.
pub(super) struct OfLoad {
    /// What labels and laws say, each with the product or the rule that it comes from: "wind at most 10 mph (Mesotrione)".
    pub(super) asked: Vec<String>,
    /// What is usual beyond that: "wind at least 3 mph".
    pub(super) usual: Vec<String>,
}

/// The limits of a load, those of labels and laws apart from what is usual.
pub(super) fn of_load(farm: &Farm, plan: &Plan, pass: &Pass, load: &Load) -> OfLoad {
    let fields: Vec<&Id> = load.fields.iter().map(|(id, _)| id).collect();
    let (asked, usual) = all(farm, plan, pass, &fields);
    let on_card = |all: Vec<Say>| all.into_iter().map(|limit| limit.in_languages(&farm.card_languages)).collect();
    OfLoad { asked: on_card(asked), usual: on_card(usual) }
}

/// The limits of a pass on all its fields in a line: "wind at most 10 mph (Mesotrione). Usual practice: wind at least 3 mph".
pub(crate) fn of_pass(farm: &Farm, plan: &Plan, pass: &Pass) -> String {
    let fields: Vec<&Id> = plan.fields.iter().map(|field| &field.field).collect();
    let (asked, usual) = all(farm, plan, pass, &fields);
    let line = |all: Vec<Say>| all.into_iter().map(|limit| limit.aloud()).collect::<Vec<_>>().join(", ");
    let usual = Some(line(usual)).filter(|usual| !usual.is_empty());
    let usual = usual.map(|usual| t!("loads-usual-practice", limits = usual));
    Some(line(asked)).filter(|asked| !asked.is_empty()).into_iter().chain(usual).collect::<Vec<_>>().join(". ")
}

/// Whether a label or a law says so, and it does not only follow from what one says.
fn is_asked(limit: &Limit) -> bool {
    limit.asks && matches!(limit.basis, Basis::Label(_) | Basis::Law(_))
}

/// What labels and laws say, and what is usual beyond that.
fn all(farm: &Farm, plan: &Plan, pass: &Pass, fields: &[&Id]) -> (Vec<Say>, Vec<Say>) {
    // Without a forecast the plan has no hours and no limits of them; the day has its limits all the same.
    let of_day =
        if plan.hours.limits.is_empty() { limits::of(farm, pass).into() } else { Arc::clone(&plan.hours.limits) };
    let (asked, usual): (Vec<&Limit>, Vec<&Limit>) = of_day.iter().partition(|limit| is_asked(limit));
    let mut said = Vec::new();
    let asked = of_kind(farm, plan, fields, asked, &mut said);
    let usual = of_kind(farm, plan, fields, usual, &mut said);
    (asked, usual)
}

/// Limits in words; of what the wind must not blow toward only what was not said before.
fn of_kind(farm: &Farm, plan: &Plan, fields: &[&Id], limits: Vec<&Limit>, said: &mut Vec<Say>) -> Vec<Say> {
    // Those that hang on the air of the hour, or on what cannot be told, stand in their own words.
    let (sure, unsure): (Vec<&Limit>, Vec<&Limit>) = limits.into_iter().partition(|limit| limit.doubts().is_empty());
    let card = Card { farm, plan, sure };
    let mut all: Vec<Say> = Vec::new();
    all.extend(card.range("card-wind", wind));
    all.extend(card.range("card-gusts", gusts));
    all.extend(card.not_toward(fields, said));
    all.extend(card.first(|kind| *kind == Kind::NoInversion));
    all.extend(card.range("card-air", air));
    all.extend(card.range("card-humidity", humidity));
    all.extend(card.range("card-delta-t", delta_t));
    all.extend(card.all(|kind| matches!(kind, Kind::Daylight { .. })));
    all.extend(card.rain());
    all.extend(unsure.into_iter().map(|limit| card.with_source(limit.said.clone(), &[limit])));
    all
}

/// An end of a limit: whether it is the lower one, its size to compare by, and its words.
type End = (bool, f64, String);

fn wind(kind: &Kind, units: Units) -> Option<End> {
    match kind {
        Kind::LeastWind(wind) => Some((true, wind.to_metres_per_second(), wind.show(units))),
        Kind::MostWind(wind) => Some((false, wind.to_metres_per_second(), wind.show(units))),
        _ => None,
    }
}

fn gusts(kind: &Kind, units: Units) -> Option<End> {
    match kind {
        Kind::MostGust(gust) => Some((false, gust.to_metres_per_second(), gust.show(units))),
        _ => None,
    }
}

fn air(kind: &Kind, units: Units) -> Option<End> {
    match kind {
        Kind::LeastAir(air) => Some((true, air.to_celsius(), air.show(units))),
        Kind::MostAir(air) => Some((false, air.to_celsius(), air.show(units))),
        _ => None,
    }
}

fn humidity(kind: &Kind, units: Units) -> Option<End> {
    match kind {
        Kind::LeastHumidity(humidity) => Some((true, humidity.to_fraction(), humidity.show(units))),
        Kind::MostHumidity(humidity) => Some((false, humidity.to_fraction(), humidity.show(units))),
        _ => None,
    }
}

fn delta_t(kind: &Kind, units: Units) -> Option<End> {
    match kind {
        Kind::LeastDeltaT(span) => Some((true, span.to_celsius(), span.show(units))),
        Kind::MostDeltaT(span) => Some((false, span.to_celsius(), span.show(units))),
        _ => None,
    }
}

struct Card<'a> {
    farm: &'a Farm,
    plan: &'a Plan,
    sure: Vec<&'a Limit>,
}

impl Card<'_> {
    /// "wind 3 to 10 mph", from the highest of the lower ends to the lowest of the upper ones.
    fn range(&self, what: &'static str, of: fn(&Kind, Units) -> Option<End>) -> Option<Say> {
        let end = |lower: bool| {
            let ends = self.sure.iter().filter_map(|limit| Some((*limit, of(&limit.kind, self.farm.units)?)));
            ends.filter(|(_, end)| end.0 == lower).reduce(|a, b| {
                let tighter = if lower { b.1.1 > a.1.1 } else { b.1.1 < a.1.1 };
                if tighter { b } else { a }
            })
        };
        let (least, most) = (end(true), end(false));
        let text = match (&least, &most) {
            (Some((_, (.., least))), Some((_, (.., most)))) => {
                say("card-what-between").with("range", from_to(least, most))
            }
            (Some((_, (.., least))), None) => say("card-at-least").with("least", least.as_str()),
            (None, Some((_, (.., most)))) => say("card-at-most").with("most", most.as_str()),
            (None, None) => return None,
        };
        let from: Vec<&Limit> = [least, most].into_iter().flatten().map(|(limit, _)| limit).collect();
        Some(self.with_source(text.with("what", say(what)), &from))
    }

    /// What the wind must not blow toward beside some fields, each once.
    fn not_toward(&self, fields: &[&Id], said: &mut Vec<Say>) -> Option<Say> {
        let here = |of: &Say| {
            let of = of.in_language(Language::English);
            fields.iter().filter_map(|id| self.farm.fields.get(id)).any(|field| of.ends_with(&field.name))
        };
        let mut whats: Vec<Say> = Vec::new();
        let mut from: Vec<&Limit> = Vec::new();
        for limit in &self.sure {
            if let Kind::NotToward { what, .. } = &limit.kind
                && here(what)
                && !said.contains(what)
            {
                whats.push(what.clone());
                from.push(limit);
                said.push(what.clone());
            }
        }
        let whats = whats.into_iter().reduce(|a, b| say("card-nor").with("a", a).with("b", b))?;
        Some(self.with_source(say("card-no-wind-toward").with("what", whats), &from))
    }

    /// The weightiest of a kind.
    fn first(&self, is: fn(&Kind) -> bool) -> Option<Say> {
        let limit = self.sure.iter().find(|limit| is(&limit.kind))?;
        Some(self.with_source(limit.said.clone(), &[*limit]))
    }

    /// All of a kind.
    fn all(&self, is: fn(&Kind) -> bool) -> Vec<Say> {
        let limits = self.sure.iter().filter(|limit| is(&limit.kind));
        limits.map(|limit| self.with_source(limit.said.clone(), &[*limit])).collect()
    }

    /// The longest time without rain.
    fn rain(&self) -> Option<Say> {
        let hours = |limit: &Limit| match limit.kind {
            Kind::RainFree { hours } => Some(hours),
            _ => None,
        };
        // The first of the longest, which is the weightiest.
        let limit = self.sure.iter().rev().filter(|limit| hours(limit).is_some()).max_by_key(|limit| hours(limit))?;
        Some(self.with_source(limit.said.clone(), &[*limit]))
    }

    /// A text with the products and the rules that say it behind it, or the farm where it is its own limit. What is usual needs no name,
    /// and a label has no part in what only follows from it.
    fn with_source(&self, text: Say, from: &[&Limit]) -> Say {
        let sources = once(from.iter().filter_map(|limit| match &limit.basis {
            Basis::Label(place) if is_asked(limit) => Some(Say::from(self.short_name(place))),
            // The rule's name alone; its paragraph and its date stand in the plan.
            Basis::Law(rule) if is_asked(limit) => Some(Say::from(rule.split(',').next().unwrap_or(rule))),
            Basis::Own => Some(say("card-this-farm")),
            _ => None,
        }));
        if sources.is_empty() {
            text
        } else {
            say("card-said-by").with("what", text).with("who", Say::all(sources, ", "))
        }
    }

    /// The short name of the product that a place on a label begins with.
    fn short_name(&self, place: &str) -> String {
        // Of "Alpha" and "Alpha, dry" in one mix the longer one is meant where both begin it.
        let named = |id: &String| {
            let name = &self.farm.products.get(id)?.name;
            let rest = place.strip_prefix(name.as_str())?;
            (rest.is_empty() || rest.starts_with(',')).then_some(name.len())
        };
        let names = self.plan.names.iter().filter_map(|name| Some((named(&name.product)?, name)));
        names.max_by_key(|(length, _)| *length).map_or_else(|| place.to_owned(), |(_, name)| name.short.clone())
    }
}
