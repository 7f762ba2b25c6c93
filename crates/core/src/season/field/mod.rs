//! What the farm knows of a field on a day: its crops, what it got, what may follow, and what may not go on it until when.
//!
//! Whatever is forbidden here is asked of the rules that judge a pass, with a pass of one product on that day; so a plan of such a
//! pass says the same.

mod barred;
mod crops;
mod planting;
mod product;
pub(crate) mod re_entry;
mod sprayed;

pub use barred::{Barred, Bars, Until};
pub use crops::{CropFrom, CropYear};
pub use planting::{Because, Following, NextCrop};
pub use sprayed::{Line, OnField, Sprayed};

use jiff::civil::DateTime;

use super::Log;
use super::review::FieldGroups;
use crate::farm::{Farm, Id};

/// What the farm knows of a field.
#[derive(Clone, Debug, PartialEq)]
pub struct FieldPage {
    /// Its crops, the latest year first.
    pub crops: Vec<CropYear>,
    /// What it got, the latest first.
    pub sprayed: Vec<Sprayed>,
    /// Resistance groups by season, with what came again too soon.
    pub groups: Option<FieldGroups>,
    /// What may follow.
    pub following: Following,
    /// What may not go on it, or be done on it.
    pub barred: Vec<Barred>,
}

/// What the farm knows of a field at a moment; `None` where the farm has no field of that id.
///
/// # Examples
/// ```
/// use jiff::civil::date;
/// use tankard_core::farm::Farm;
/// use tankard_core::season::{Log, field};
/// let farm = Farm::new("Test");
/// assert!(field::page(&farm, &Log::of(&farm), "mill", date(2031, 6, 12).at(6, 0, 0, 0)).is_none());
/// ```
pub fn page(farm: &Farm, log: &Log, field: &str, now: DateTime) -> Option<FieldPage> {
    let (id, _): (&Id, _) = farm.fields.get_key_value(field)?;
    let (sprayed, groups) = sprayed::on_field(farm, log, id);
    Some(FieldPage {
        crops: crops::by_year(farm, log, id, now.date()),
        sprayed,
        groups,
        following: planting::following(farm, log, id, now.date()),
        barred: barred::barred(farm, log, id, now),
    })
}
