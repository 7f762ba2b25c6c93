//! Which crops may follow on a field, and from which day on, by the plant-back times of what it got.

use jiff::civil::Date;

use crate::farm::{Farm, Field, Id, Product, Record, Says};
use crate::label::harvest::months_after;
use crate::label::names::split_or;
use crate::label::names_crop as speaks_of;
use crate::language::t;
use crate::season::Log;
use crate::season::binds::{Bind, Binds, binds, names_crop};
use crate::words::plain;

/// What the label of a product says of crops that it does not name.
/// As it is compared; it is said in the language of who reads it.
const OTHER: &str = "any other crop";
/// For how many months a pesticide without a typed plant-back time is named. Common practice, no source.
const NAMED: u32 = 12;

/// What may follow.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Following {
    /// The crops that the labels name, and the next crop of the field: first what is planned, then by day.
    pub crops: Vec<NextCrop>,
    /// Pesticides of the last twelve months without a plant-back time as typed.
    pub untyped: Vec<String>,
}

/// A crop that may follow.
#[derive(Clone, Debug, PartialEq)]
pub struct NextCrop {
    /// The crop.
    pub crop: String,
    /// Whether the field has it as its next crop.
    pub planned: bool,
    /// The limit that ends last, where one still runs; the crop may be planted today where none does.
    pub because: Option<Because>,
    /// Products with a limit still running whose label, as typed, does not speak of the crop.
    pub silent: Vec<String>,
}

impl NextCrop {
    /// The first day on which it may be planted, where a limit still runs; the end of the calendar where it lies beyond.
    pub fn first(&self) -> Option<Date> {
        self.because.as_ref().map(|because| because.until)
    }
}

/// The limit that keeps a crop from being planted.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Because {
    /// The first day that is free of it.
    pub until: Date,
    /// The label's months.
    pub months: u32,
    /// The product.
    pub product: String,
    /// Its record.
    pub record: Id,
    /// The day of the record.
    pub sprayed: Date,
    /// Where the label says so.
    pub at: String,
}

impl Because {
    pub(super) fn of(bind: &Bind, months: u32) -> Self {
        Self {
            until: bind.until,
            months,
            product: bind.product.name.clone(),
            record: bind.record_id.clone(),
            sprayed: bind.record.date,
            at: bind.at.clone(),
        }
    }
}

/// What may follow on a field, seen from a day.
pub(super) fn following(farm: &Farm, log: &Log, id: &Id, today: Date) -> Following {
    let Some(field) = farm.fields.get(id) else { return Following::default() };
    let bound = binds(farm, log, id, field, today);
    let mut crops = crops_named(farm, log, id, field);
    let next = field.next_crop.trim();
    crops.retain(|crop| !same(crop, next));
    if !next.is_empty() {
        crops.insert(0, next.to_owned());
    }
    let mut all: Vec<NextCrop> = crops
        .into_iter()
        .map(|crop| NextCrop {
            planned: !next.is_empty() && same(&crop, next),
            because: latest(&bound, &crop),
            silent: silent(&bound, &crop),
            crop,
        })
        .collect();
    all.sort_by_cached_key(|next| (!next.planned, same(&next.crop, OTHER), next.first(), next.crop.to_lowercase()));
    for next in all.iter_mut().filter(|next| next.crop == OTHER && !next.planned) {
        t!("season-any-other-crop").clone_into(&mut next.crop);
    }
    Following { crops: all, untyped: untyped(farm, log, id, today) }
}

fn same(one: &str, other: &str) -> bool {
    names_crop(one, other) == Some(true) || plain(one) == plain(other)
}

/// The limit on a crop that ends last; of several that end together, the first.
pub(super) fn latest(bound: &[Bind], crop: &str) -> Option<Because> {
    let keep = bound.iter().filter(|bind| bind.keeps_from(crop));
    let latest = keep.reduce(|latest, bind| if bind.until > latest.until { bind } else { latest })?;
    let Binds::Planting { months, .. } = latest.binds else { return None };
    Some(Because::of(latest, months))
}

/// What labels of the products that a field got name as following crops, each once.
fn crops_named(farm: &Farm, log: &Log, id: &Id, field: &Field) -> Vec<String> {
    let mut crops: Vec<String> = Vec::new();
    let mut seen: Vec<(&str, &str)> = Vec::new();
    for (_, record) in log.on_field(farm, id) {
        let stood = stood(record, id, field);
        for line in record.lines.iter().filter(|line| !line.amount.is_zero()) {
            if seen.contains(&(line.product.as_str(), stood)) {
                continue;
            }
            seen.push((&line.product, stood));
            let Some(product) = farm.products.get(&line.product) else { continue };
            for crop in plant_backs(product, stood).flat_map(|(crop, _)| parts(crop)) {
                let crop = if names_crop(crop, "a crop that nobody names").is_some() { OTHER } else { crop };
                if !crops.iter().any(|known| same(known, crop)) {
                    crops.push(crop.to_owned());
                }
            }
        }
    }
    crops
}

fn parts(crops: &str) -> impl Iterator<Item = &str> {
    crops.split(',').flat_map(split_or).map(str::trim).filter(|part| !part.is_empty())
}

fn stood<'a>(record: &'a Record, id: &Id, field: &'a Field) -> &'a str {
    let then = record.fields.get(id).map_or("", |then| then.crop.trim());
    if then.is_empty() { field.crop.trim() } else { then }
}

/// The plant-back times of a label that speak of a crop that stood, or may.
fn plant_backs<'a>(product: &'a Product, stood: &str) -> impl Iterator<Item = (&'a str, u32)> {
    let speak = move |statement: &&crate::farm::Statement| stood.is_empty() || speaks_of(statement, stood);
    product.label.iter().filter(speak).filter_map(|statement| match &statement.says {
        Says::PlantBack { next_crop, months } => Some((next_crop.as_str(), *months)),
        _ => None,
    })
}

/// Products with a limit that still runs, of which none speaks of the crop.
fn silent(bound: &[Bind], crop: &str) -> Vec<String> {
    let mut silent: Vec<String> = Vec::new();
    for bind in bound.iter().filter(|bind| matches!(bind.binds, Binds::Planting { .. })) {
        let speaks = plant_backs(bind.product, bind.crop).any(|(named, _)| names_crop(named, crop).is_some());
        if !speaks && !silent.contains(&bind.product.name) {
            silent.push(bind.product.name.clone());
        }
    }
    silent
}

fn untyped(farm: &Farm, log: &Log, id: &Id, today: Date) -> Vec<String> {
    let mut untyped: Vec<String> = Vec::new();
    let recent = |record: &Record| months_after(record.date, NAMED).is_none_or(|until| until > today);
    for (_, record) in log.on_field(farm, id).filter(|(_, record)| recent(record)) {
        for line in record.lines.iter().filter(|line| !line.amount.is_zero()) {
            let Some(product) = farm.products.get(&line.product) else { continue };
            let typed = || product.label.iter().any(|said| matches!(said.says, Says::PlantBack { .. }));
            if product.kind.is_pesticide() && !untyped.contains(&product.name) && !typed() {
                untyped.push(product.name.clone());
            }
        }
    }
    untyped
}
