//! What is decided about a day as a whole, and the roads between fields.

use indexmap::IndexMap;
use jiff::civil::Time;
use serde::{Deserialize, Serialize};

use super::Id;
use crate::quantity::{AsTyped, Length};

/// Decisions on a day of spraying. The day itself is its key in the farm: "2031-06-12".
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Day {
    /// No rig leaves the yard before.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub from: Option<Time>,
    /// The rigs are home by then.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub to: Option<Time>,
    /// Passes held at a place among those of their rig, from 1; the others are ordered around them.
    #[serde(default, skip_serializing_if = "IndexMap::is_empty", deserialize_with = "super::unique::map")]
    pub pinned: IndexMap<Id, u32>,
    /// Words for the crew, printed on the sheet of the day.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
}

impl Day {
    /// Whether the rigs are to be home on the day after: where the hour is not after the one at which they leave.
    pub fn home_on_the_next_day(&self) -> bool {
        self.from.zip(self.to).is_some_and(|(from, to)| to <= from)
    }
}

/// The road between two fields, the same both ways.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Road {
    /// One field.
    pub from: Id,
    /// The other.
    pub to: Id,
    /// From gate to gate.
    pub length: AsTyped<Length>,
}
