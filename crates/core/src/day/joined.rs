//! Spray that goes on from one pass into the next.

use super::lay::Trip;
use crate::farm::{Farm, Pass, Rig};
use crate::loads::carry::same_spray;
use crate::quantity::{AsTyped, Volume};
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
        let full = |pass: &Pass| pass.fill_to.as_ref().map(AsTyped::value).or_else(|| Some(rig?.tank.value()));
        let fill = last.and_then(|last| full(last.pass)).zip(full(next.pass)).map(|(one, other)| one.min(other));
        self.spray = self.spray + next.plan.spray_volume;
        let apart = self.loads + own;
        self.loads = fill.and_then(|fill| fewest(self.spray, fill)).unwrap_or(apart).min(apart);
        (true, apart - self.loads)
    }
}

/// The fewest fillings that hold a spray; `None` for a tank of nothing. A part in 10⁹ of a tank is arithmetic.
fn fewest(spray: Volume, fill: Volume) -> Option<u32> {
    let fills = (spray.ratio(fill)? - 1e-9).ceil().max(0.0);
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    // A float that is too large becomes the largest number.
    Some(fills as u32)
}
