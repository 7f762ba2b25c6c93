//! Which crops stood on a field, year by year.

use std::collections::BTreeMap;

use jiff::civil::Date;

use crate::farm::crop::same;
use crate::farm::{Farm, Id};
use crate::language::t;
use crate::season::Log;

/// A year of a field.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CropYear {
    /// The calendar year.
    pub year: i16,
    /// Its crops, as written, each once, with where that is known from.
    pub crops: Vec<(String, CropFrom)>,
    /// How many records there are of it.
    pub records: usize,
}

/// Where a crop is known from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CropFrom {
    /// It is typed for the field.
    Field,
    /// A closed season has it.
    Closed,
    /// Records of the year name it.
    Records,
}

impl CropFrom {
    /// In words.
    pub fn name(self) -> &'static str {
        match self {
            Self::Field => t!("season-as-typed"),
            Self::Closed => t!("season-closed-season"),
            Self::Records => t!("season-from-records"),
        }
    }
}

/// The crops of a field, the latest year first. The crop that is typed for the field stands in the year in which it was planted, else
/// in that of the day.
pub(super) fn by_year(farm: &Farm, log: &Log, id: &Id, today: Date) -> Vec<CropYear> {
    let mut years: BTreeMap<i16, CropYear> = BTreeMap::new();
    let mut put = |year: i16, crop: &str, from: CropFrom| {
        let here = years.entry(year).or_insert_with(|| CropYear { year, crops: Vec::new(), records: 0 });
        here.records += usize::from(from == CropFrom::Records);
        if !crop.is_empty() && !here.crops.iter().any(|(known, _)| same(known, crop)) {
            here.crops.push((crop.to_owned(), from));
        }
    };
    if let Some(field) = farm.fields.get(id).filter(|field| !field.crop.trim().is_empty()) {
        put(field.planted.unwrap_or(today).year(), field.crop.trim(), CropFrom::Field);
    }
    for (year, season) in &farm.closed {
        if let (Ok(year), Some(crop)) = (year.parse(), season.crops.get(id)) {
            put(year, crop.trim(), CropFrom::Closed);
        }
    }
    for (_, record) in log.on_field(farm, id) {
        let crop = record.fields.get(id).map_or("", |then| then.crop.trim());
        put(record.date.year(), crop, CropFrom::Records);
    }
    years.into_values().rev().collect()
}
