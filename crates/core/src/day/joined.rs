//! Spray that goes on from one pass into the next.

use super::lay::Trip;
use crate::farm::{Farm, Rig};
use crate::loads::carry::same_spray;
use crate::loads::split::fewest_fills;
use crate::quantity::Volume;
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
        let goes_on =
            last.is_some_and(|last| same_spray(farm, last.pass, next.pass) && !takes_clean_out(farm, last.id, next.id));
        if !goes_on {
            *self = Self { spray: next.plan.spray_volume, loads: own };
            return (false, 0);
        }
        let fill = last.zip(rig).map(|(last, rig)| last.pass.filled_to(rig).min(next.pass.filled_to(rig)));
        self.spray = self.spray + next.plan.spray_volume;
        let apart = self.loads + own;
        self.loads = fill.and_then(|fill| fewest_fills(self.spray, fill)).unwrap_or(apart).min(apart);
        (true, apart - self.loads)
    }
}
