//! What stays in the rig after the last load, and how it is rinsed.

use crate::farm::{Farm, Id, Pass};
use crate::finding::Finding;
use crate::quantity::{Area, CarrierRate, Share, Volume};
use crate::working::Working;

/// The plan for rinsing after a pass.
#[derive(Clone, Debug, PartialEq)]
pub struct RinsePlan {
    /// What stays in tank, lines and boom.
    pub residual: Volume,
    /// Water for the rinses.
    pub water: Volume,
    /// Ways to use it, the best first.
    pub ways: Vec<RinseWay>,
    /// Ground that the residual would still spray at the pass's volume: what to leave for the last of the spray.
    pub last_ground: Option<Area>,
    /// The arithmetic.
    pub working: Working,
    /// Steps of cleaning before the next pass of this rig, each with its source.
    pub steps: Vec<CleanStep>,
}

/// One way to use the rinsing water.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RinseWay {
    /// How many rinses.
    pub rinses: u32,
    /// Water in each.
    pub each: Volume,
    /// Share of the spray's strength that is left.
    pub left: Share,
}

/// A step of cleaning.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CleanStep {
    /// What to do.
    pub what: String,
    /// Why, and on what it rests.
    pub basis: crate::finding::Basis,
}

/// What stays in the rig after a pass, and how it is rinsed.
pub(crate) fn judge(
    _farm: &Farm,
    _pass_id: &Id,
    _pass: &Pass,
    _carrier: Option<CarrierRate>,
    _findings: &mut Vec<Finding>,
) -> Option<RinsePlan> {
    None
}
