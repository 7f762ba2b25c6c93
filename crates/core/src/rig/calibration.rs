//! What a calibration says: flow, speed, volume over ground, and which nozzles are worn or blocked.

use crate::farm::{Farm, Id, Pass};
use crate::finding::Finding;
use crate::quantity::{CarrierRate, Flow, Share, Speed};
use crate::working::Working;

/// What a calibration comes to.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Calibrated {
    /// Mean flow of a nozzle, of water at the pressure of the test.
    pub flow: Option<Flow>,
    /// Mean flow against a new nozzle: +5 % is 5 % more.
    pub against_new: Option<Share>,
    /// Speed over the course.
    pub speed: Option<Speed>,
    /// Volume over ground.
    pub carrier: Option<CarrierRate>,
    /// Each nozzle that was caught, from left to right.
    pub nozzles: Vec<Caught>,
    /// What there is to say.
    pub findings: Vec<Finding>,
    /// The arithmetic.
    pub workings: Vec<Working>,
}

/// One nozzle of a catch.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Caught {
    /// Its place on the boom, from 1 at the left end.
    pub place: usize,
    /// Its flow.
    pub flow: Flow,
    /// Against the average of those caught.
    pub against_average: Share,
    /// Against a new one, where the rating is typed.
    pub against_new: Option<Share>,
    /// What it looks like.
    pub state: State,
}

/// What a nozzle looks like.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum State {
    /// Inside the rules.
    Good,
    /// It gives too much against a new one or the average: worn.
    Worn,
    /// It gives too little: blocked, or its strainer is.
    Blocked,
    /// So far off that it is likely of another size.
    OtherSize,
}

/// What a pass must know of its rig's last calibration.
pub(crate) fn judge_pass(_farm: &Farm, _pass_id: &Id, _pass: &Pass, _findings: &mut Vec<Finding>) {}
