//! Passes and ground over time.

use std::collections::BTreeMap;

use super::Picked;
use crate::quantity::Area;

/// Passes and ground over time.
#[derive(Clone, Debug, PartialEq)]
pub struct Passes {
    /// How many records.
    pub passes: usize,
    /// The ground they treated; ground sprayed twice counts twice.
    pub treated: Area,
    /// The ground that was sprayed at least once in all the time picked.
    pub distinct: Distinct,
    /// The months of each season with records, January to December, in order.
    pub months: Vec<Month>,
    /// The seasons with records, in order.
    pub years: Vec<Year>,
    /// How many records have ground without an area.
    pub without_area: usize,
}

/// Ground sprayed at least once. Which part of a field a record sprayed is not drawn, so there are two ends.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Distinct {
    /// The largest application of each field, as if the others lay on the same ground.
    pub least: Area,
    /// All applications of each field beside one another, up to what of the field can be sprayed.
    pub most: Area,
}

/// A month.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Month {
    /// The year.
    pub year: i16,
    /// The month, 1 to 12.
    pub month: i8,
    /// How many records.
    pub passes: usize,
    /// The ground they treated.
    pub treated: Area,
    /// With that of the months before in this year.
    pub so_far: Area,
}

/// A season.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Year {
    /// The year.
    pub year: i16,
    /// How many records.
    pub passes: usize,
    /// The ground they treated.
    pub treated: Area,
    /// The ground they sprayed at least once.
    pub distinct: Distinct,
}

/// The page, of what is picked.
pub fn page(picked: &Picked<'_>) -> Passes {
    let mut months: BTreeMap<i16, [(usize, Area); 12]> = BTreeMap::new();
    let month_of = |month: i8| usize::try_from(month - 1).unwrap_or(0);
    for (_, entry) in picked.entries() {
        let year = months.entry(entry.date.year()).or_insert([(0, Area::ZERO); 12]);
        if let Some((passes, _)) = year.get_mut(month_of(entry.date.month())) {
            *passes += 1;
        }
    }
    let mut without_area: Vec<u32> = Vec::new();
    for (_, ground, entry) in picked.ground() {
        let year = months.entry(entry.date.year()).or_insert([(0, Area::ZERO); 12]);
        if let Some((_, treated)) = year.get_mut(month_of(entry.date.month())) {
            *treated = *treated + ground.area;
        }
        if ground.area.is_zero() {
            without_area.push(ground.record);
        }
    }
    without_area.dedup();
    let years: Vec<Year> = months
        .iter()
        .map(|(year, months)| Year {
            year: *year,
            passes: months.iter().map(|(passes, _)| passes).sum(),
            treated: months.iter().map(|(_, treated)| *treated).sum(),
            distinct: distinct(picked, Some(*year)),
        })
        .collect();
    Passes {
        passes: picked.records(),
        treated: years.iter().map(|year| year.treated).sum(),
        distinct: distinct(picked, None),
        months: months.iter().flat_map(|(year, months)| by_month(*year, months)).collect(),
        years,
        without_area: without_area.len(),
    }
}

fn by_month(year: i16, months: &[(usize, Area); 12]) -> impl Iterator<Item = Month> {
    let mut so_far = Area::ZERO;
    (1..).zip(months).map(move |(month, (passes, treated))| {
        so_far = so_far + *treated;
        Month { year, month, passes: *passes, treated: *treated, so_far }
    })
}

fn distinct(picked: &Picked<'_>, year: Option<i16>) -> Distinct {
    // Of each field its applications: which, and how much ground they drove over.
    let mut fields: Vec<BTreeMap<u32, Area>> = vec![BTreeMap::new(); picked.index.fields.len()];
    for (_, ground, entry) in picked.ground() {
        if year.is_none_or(|year| entry.date.year() == year)
            && let Some(field) = fields.get_mut(ground.field as usize)
        {
            let sum = field.entry(ground.application).or_insert(Area::ZERO);
            *sum = *sum + ground.driven;
        }
    }
    let none = Distinct { least: Area::ZERO, most: Area::ZERO };
    fields.iter().zip(&picked.index.fields).fold(none, |sum, (applications, field)| {
        let largest = applications.values().copied().fold(Area::ZERO, Area::max);
        let all: Area = applications.values().copied().sum();
        // More than the field has been sprayed at once only where its area was typed anew since.
        let most = field.area.map_or(all, |area| all.min(area)).max(largest);
        Distinct { least: sum.least + largest, most: sum.most + most }
    })
}
