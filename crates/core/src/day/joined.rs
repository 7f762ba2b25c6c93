//! Spray that goes on from one pass into the next.

use super::lay::Trip;
use crate::farm::{Farm, LoadSplit, Pass, Rig};
use crate::loads::split::split;
use crate::quantity::{AmountPerArea, AsTyped, Volume};
use crate::rig::clean_out::takes_clean_out;

/// Passes of one spray that follow one another, their loads joined.
pub(super) struct Joined {
    spray: Volume,
    loads: u32,
}

impl Joined {
    /// Nothing yet.
    pub(super) const NONE: Self = Self { spray: Volume::ZERO, loads: 0 };

    /// Whether a pass goes on with the spray of the one before, and how many fillings that saves.
    pub(super) fn add(&mut self, farm: &Farm, last: Option<&Trip>, next: &Trip, rig: Option<&Rig>) -> (bool, u32) {
        let own = u32::try_from(next.plan.loads.len()).unwrap_or(u32::MAX);
        let goes_on = last.is_some_and(|last| same_spray(last, next) && !takes_clean_out(farm, last.id, next.id));
        if !goes_on {
            *self = Self { spray: next.plan.spray_volume, loads: own };
            return (false, 0);
        }
        let full = |pass: &Pass| pass.fill_to.as_ref().map(AsTyped::value).or_else(|| Some(rig?.tank.value()));
        let fill = last.and_then(|last| full(last.pass)).zip(full(next.pass)).map(|(one, other)| one.min(other));
        self.spray = self.spray + next.plan.spray_volume;
        let joined = fill.and_then(|fill| split(self.spray, fill, LoadSplit::FullTanks).ok());
        let apart = self.loads + own;
        self.loads = joined.and_then(|loads| u32::try_from(loads.len()).ok()).unwrap_or(apart).min(apart);
        (true, apart - self.loads)
    }
}

/// Whether two passes take the same spray: products at the same rates in the same volume of the same water.
fn same_spray(one: &Trip, other: &Trip) -> bool {
    let close = |one: f64, other: f64| (one - other).abs() <= 1e-9 * one.abs().max(other.abs());
    let same_rate = |one: AmountPerArea, other: AmountPerArea| match (one, other) {
        (AmountPerArea::Volume(one), AmountPerArea::Volume(other)) => {
            close(one.to_litres_per_hectare(), other.to_litres_per_hectare())
        }
        (AmountPerArea::Mass(one), AmountPerArea::Mass(other)) => {
            close(one.to_kilograms_per_hectare(), other.to_kilograms_per_hectare())
        }
        _ => false,
    };
    let (lines, others) = (&one.plan.lines, &other.plan.lines);
    let carriers = one.plan.carrier.zip(other.plan.carrier);
    !lines.is_empty()
        && lines.len() == others.len()
        && lines.len() == one.pass.mix.len()
        && others.len() == other.pass.mix.len()
        && lines.iter().all(|line| {
            others.iter().any(|other| other.product == line.product && same_rate(line.per_area, other.per_area))
        })
        && carriers.is_some_and(|(one, other)| close(one.to_litres_per_hectare(), other.to_litres_per_hectare()))
        && (one.pass.carrier_kind, &one.pass.water) == (other.pass.carrier_kind, &other.pass.water)
}
