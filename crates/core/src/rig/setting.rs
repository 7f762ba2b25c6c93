//! How a nozzle set is to be set for a pass.

use crate::farm::{Droplets, Farm, Id, Pass};
use crate::finding::{Basis, Finding};
use crate::quantity::{CarrierRate, Flow, Pressure, Share, Speed};
use crate::working::Working;

/// A lower and an upper end, both included.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Between<T> {
    /// The lower end.
    pub least: T,
    /// The upper end.
    pub most: T,
}

/// Droplet classes at a pressure. Between two lines of the nozzle maker's table it may be either.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Classes {
    /// The finest that it may be.
    pub finest: Droplets,
    /// The coarsest.
    pub coarsest: Droplets,
}

/// How a nozzle set is set for a pass, as far as it can be told.
#[derive(Clone, Debug, PartialEq)]
pub struct Setting {
    /// The set.
    pub set: Id,
    /// Its name.
    pub name: String,
    /// The speed this is for.
    pub speed: Speed,
    /// What each nozzle must give of the spray.
    pub flow: Flow,
    /// The pressure at which it gives that; `None` where the rating is not typed.
    pub pressure: Option<Pressure>,
    /// The share of the time that the valves stand open, with pulsed valves.
    pub duty: Option<Share>,
    /// Droplet classes at that pressure; `None` where the table does not reach.
    pub classes: Option<Classes>,
    /// Speeds at which pressure and droplets stay inside the set's range and the labels; `None` where there is none.
    pub speeds: Option<Between<Speed>>,
    /// The pressures that belong to those speeds.
    pub pressures: Option<Between<Pressure>>,
    /// Pressure and droplets over speed, for the plot.
    pub curve: Vec<CurvePoint>,
}

/// One point of pressure and droplets over speed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CurvePoint {
    /// The speed.
    pub speed: Speed,
    /// The pressure it takes.
    pub pressure: Pressure,
    /// The droplet classes there.
    pub classes: Option<Classes>,
    /// Whether range and labels allow it.
    pub allowed: bool,
}

/// How well a set does a pass.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Fit {
    /// As planned.
    Suits,
    /// At another speed than planned.
    AtAnotherSpeed,
    /// Something is not typed, so it cannot be told.
    NotKnown,
    /// At no speed.
    No,
}

/// A nozzle set with its place among the rig's.
#[derive(Clone, Debug, PartialEq)]
pub struct RankedSet {
    /// How it is set.
    pub setting: Setting,
    /// How well it does the pass.
    pub fit: Fit,
    /// The speed to drive with it.
    pub speed: Option<Speed>,
    /// Whether it is the set of the pass.
    pub chosen: bool,
    /// Why it stands here, each with its basis.
    pub reasons: Vec<(String, Basis)>,
}

/// The setting of a pass with its set, and the rig's sets in order of how well they do it.
pub(crate) fn judge(
    _farm: &Farm,
    _pass_id: &Id,
    _pass: &Pass,
    _carrier: CarrierRate,
    _findings: &mut Vec<Finding>,
    _workings: &mut Vec<Working>,
) -> (Option<Setting>, Vec<RankedSet>) {
    (None, Vec::new())
}
