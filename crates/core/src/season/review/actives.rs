//! What went out of each active, by ISO common name and basis. Acid equivalent and active ingredient are not added, nor are an
//! isomer and the mixture that holds it: they have names of their own.

use std::collections::HashMap;

use super::{Picked, slice};
use crate::farm::Id;
use crate::quantity::{ActiveBasis, Area, Mass, MassPerArea};
use crate::words::plain;

/// What went out, active by active.
#[derive(Clone, Debug, PartialEq)]
pub struct Actives {
    /// By name, then by basis.
    pub rows: Vec<ActiveRow>,
    /// Ground of the farm: what can be sprayed of the fields picked that are still on it.
    pub ground: Area,
    /// Products of which some records do not say how much active went out, with how often that is so for a field; they are in no sum.
    pub silent: Vec<(String, usize)>,
}

/// An active.
#[derive(Clone, Debug, PartialEq)]
pub struct ActiveRow {
    /// ISO common name, or as typed.
    pub name: String,
    /// How it is counted.
    pub basis: ActiveBasis,
    /// How much.
    pub mass: Mass,
    /// Over the ground of the farm, in all the time picked.
    pub on_farm: Option<MassPerArea>,
    /// In how many records.
    pub times: usize,
    /// Field by field, the field with the most over its ground first.
    pub fields: Vec<OnField>,
}

/// An active on a field.
#[derive(Clone, Debug, PartialEq)]
pub struct OnField {
    /// The field; empty for records without one.
    pub field: Id,
    /// Its name.
    pub name: String,
    /// How much.
    pub mass: Mass,
    /// Over what of the field can be sprayed, in all the time picked; `None` where it is no longer on the farm.
    pub over_ground: Option<MassPerArea>,
    /// In how many records.
    pub times: usize,
}

/// The page, of what is picked.
pub fn page(picked: &Picked<'_>) -> Actives {
    let index = picked.index;
    let mut sums: HashMap<(u32, u32), (Mass, usize, u32)> = HashMap::new();
    let mut times = vec![(0, u32::MAX); index.actives.len()];
    let mut silent = vec![0; index.products.len()];
    let on_field = picked.on_fields();
    for (used, ground, _) in picked.uses() {
        if let Some(count) = silent.get_mut(used.product as usize) {
            *count += usize::from(used.silent);
        }
        for (active, mass) in slice(&index.masses, &used.actives) {
            let (sum, count, last) = sums.entry((*active, ground.field)).or_insert((Mass::ZERO, 0, u32::MAX));
            *sum = *sum + *mass;
            *count += usize::from(*last != ground.record);
            *last = ground.record;
            if let Some((count, last)) = times.get_mut(*active as usize) {
                *count += usize::from(*last != ground.record);
                *last = ground.record;
            }
        }
    }
    let chosen = |id: &Id| picked.choice.fields.is_empty() || picked.choice.fields.contains(id);
    let areas = index.fields.iter().zip(&on_field);
    let by_crop = !picked.choice.crops.is_empty();
    // All fields of the farm count, sprayed or not; of chosen crops those that were sprayed, since a crop is known of records alone.
    let ground: Area = if by_crop {
        areas.filter(|(_, on)| **on).filter_map(|(field, _)| field.area).sum()
    } else {
        index.farm_fields.iter().filter(|(id, _)| chosen(id)).map(|(_, area)| *area).sum()
    };
    let mut rows: Vec<ActiveRow> = index
        .actives
        .iter()
        .zip(&times)
        .map(|((name, basis), (times, _))| ActiveRow {
            name: name.clone(),
            basis: *basis,
            mass: Mass::ZERO,
            on_farm: None,
            times: *times,
            fields: Vec::new(),
        })
        .collect();
    // In the order of the index, so that the same farm always adds up to the same last digit.
    let mut sums: Vec<_> = sums.into_iter().collect();
    sums.sort_unstable_by_key(|(key, _)| *key);
    for ((active, field), (mass, times, _)) in sums {
        let (Some(row), Some(field)) = (rows.get_mut(active as usize), index.fields.get(field as usize)) else {
            continue;
        };
        row.mass = row.mass + mass;
        let over_ground = field.area.and_then(|area| mass.over(area));
        row.fields.push(OnField { field: field.id.clone(), name: field.name.clone(), mass, over_ground, times });
    }
    rows.retain(|row| row.times > 0);
    for row in &mut rows {
        row.on_farm = row.mass.over(ground);
        row.fields.sort_by(|a, b| b.over_ground.cmp(&a.over_ground).then_with(|| a.name.cmp(&b.name)));
    }
    rows.sort_by_cached_key(|row| (plain(&row.name), row.basis.short()));
    Actives { rows, ground, silent: index.counted(silent) }
}
