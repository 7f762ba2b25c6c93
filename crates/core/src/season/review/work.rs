//! Water by source, hours by rig.

use super::Picked;
use crate::quantity::{Area, Duration, Volume};

/// Water and hours.
#[derive(Clone, Debug, PartialEq)]
pub struct Work {
    /// By water, the most used first.
    pub waters: Vec<WaterRow>,
    /// By rig, the one with the most ground first.
    pub rigs: Vec<RigRow>,
}

/// A source of water. A record's spray is shared among its fields by area.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct WaterRow {
    /// Its name in the records; empty where none is typed.
    pub name: String,
    /// The spray mixed with it.
    pub spray: Volume,
    /// That less the liquid products in it, as if volumes add up.
    pub water: Volume,
    /// In how many records.
    pub times: usize,
    /// How many of them do not say how much spray they used; they are in no sum.
    pub without_volume: usize,
}

/// A rig. A record's time is shared among its fields by area.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct RigRow {
    /// Its name in the records; empty where none is typed.
    pub name: String,
    /// From start to end: spraying, turning, filling, road and breaks.
    pub time: Duration,
    /// The ground treated in that time.
    pub timed: Area,
    /// The ground treated in all.
    pub treated: Area,
    /// In how many records.
    pub times: usize,
    /// How many of them have no start and end, or none apart; their ground is not in [`Self::timed`].
    pub without_times: usize,
}

impl RigRow {
    /// Ground in an hour, from start to end; `None` where no time is known.
    pub fn area_per_hour(&self) -> Option<Area> {
        let hours = self.time.to_hours();
        (hours > 0.0).then(|| self.timed * (1.0 / hours))
    }
}

/// The page, of what is picked.
pub fn page(picked: &Picked<'_>) -> Work {
    let index = picked.index;
    let mut waters: Vec<WaterRow> = index
        .waters
        .iter()
        .map(|name| WaterRow {
            name: name.clone(),
            spray: Volume::ZERO,
            water: Volume::ZERO,
            times: 0,
            without_volume: 0,
        })
        .collect();
    let mut rigs: Vec<RigRow> = index
        .rigs
        .iter()
        .map(|name| RigRow {
            name: name.clone(),
            time: Duration::ZERO,
            timed: Area::ZERO,
            treated: Area::ZERO,
            times: 0,
            without_times: 0,
        })
        .collect();
    for (_, entry) in picked.entries() {
        if let Some(row) = waters.get_mut(entry.water as usize) {
            row.times += 1;
            row.without_volume += usize::from(entry.volume.is_none());
        }
        if let Some(row) = rigs.get_mut(entry.rig as usize) {
            row.times += 1;
            row.without_times += usize::from(entry.lasted.is_none());
        }
    }
    for (_, ground, entry) in picked.ground() {
        if let (Some(row), Some(spray)) = (waters.get_mut(entry.water as usize), entry.volume) {
            row.spray = row.spray + spray * ground.share;
            row.water = row.water + (spray - entry.liquid).max(Volume::ZERO) * ground.share;
        }
        if let Some(row) = rigs.get_mut(entry.rig as usize) {
            row.treated = row.treated + ground.area;
            if let Some(lasted) = entry.lasted {
                row.time = row.time + lasted * ground.share;
                row.timed = row.timed + ground.area;
            }
        }
    }
    waters.retain(|row| row.times > 0);
    waters.sort_by_key(|row| std::cmp::Reverse(row.spray));
    rigs.retain(|row| row.times > 0);
    rigs.sort_by_key(|row| std::cmp::Reverse(row.treated));
    Work { waters, rigs }
}
