//! How much ground a rig covers: spraying, filling, road.

use crate::quantity::{Area, Duration};

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
