//! The rig: what its nozzles deliver and how fine, how it is set for a pass, whether it delivers what was planned, what stays
//! in it, and how much ground it covers in a day.

pub(crate) mod asked;
pub mod before;
pub mod calibration;
mod choose;
pub mod clean_out;
pub mod density;
pub mod flow;
pub mod nozzle;
mod reckon;
pub mod rinse;
pub mod setting;
pub mod work;

use crate::farm::{Farm, Id, Layout, NozzleSet, Pass, Rig};
use crate::quantity::Share;

/// The nozzle set of a pass: the one it names, else the one usually fitted, else the rig's first.
pub fn set_of<'a>(farm: &'a Farm, pass: &Pass) -> Option<(&'a Id, &'a NozzleSet)> {
    let rig = farm.rigs.get(&pass.rig)?;
    if pass.nozzles.is_empty() { fitted(rig) } else { rig.sets.get_key_value(&pass.nozzles) }
}

/// The set usually fitted, else the first.
pub fn fitted(rig: &Rig) -> Option<(&Id, &NozzleSet)> {
    if rig.fitted.is_empty() { rig.sets.first() } else { rig.sets.get_key_value(&rig.fitted) }
}

/// The share of the ground that the bands of a pass cover; `None` where it sprays the whole ground, and where the band is not
/// narrower than the rows are apart.
pub fn in_bands(farm: &Farm, pass: &Pass) -> Option<Share> {
    match &set_of(farm, pass)?.1.layout {
        Some(Layout::Band { width, rows, .. }) => {
            width.value().ratio(rows.value()).filter(|share| *share < 1.0).map(Share::from_fraction)
        }
        _ => None,
    }
}
