//! How much ground a rig covers: spraying, filling, road.

use crate::farm::{Farm, Id, Pass};
use crate::finding::Finding;
use crate::loads::Load;
use crate::plan::PlannedField;
use crate::quantity::{Area, Duration};
use crate::working::Working;

/// The time that a pass takes, as far as it can be told.
#[derive(Clone, Debug, PartialEq)]
pub struct Work {
    /// Spraying, turns included.
    pub spraying: Duration,
    /// Filling each load, beside the loads of the plan; empty where the water's flow is not typed.
    pub fills: Vec<Duration>,
    /// Road: out, between fields, home, and to the yard for filling.
    pub road: Option<Duration>,
    /// All of it that is known.
    pub total: Duration,
    /// What is not in it, in words.
    pub lacks: Vec<String>,
    /// Ground covered in an hour of spraying.
    pub in_an_hour: Area,
    /// Loads in an hour, filling and road included.
    pub loads_an_hour: Option<f64>,
}

/// The time that a pass takes.
#[allow(clippy::too_many_arguments)] // The walk's state, handed on.
pub(crate) fn reckon(
    _farm: &Farm,
    _pass_id: &Id,
    _pass: &Pass,
    _fields: &[PlannedField],
    _loads: &[Load],
    _spraying: Option<Duration>,
    _findings: &mut Vec<Finding>,
    _workings: &mut Vec<Working>,
) -> Option<Work> {
    None
}
