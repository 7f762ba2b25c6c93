//! A calibration: what was measured on a rig on a day.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};

use super::Id;
use crate::language::t;
use crate::quantity::{Area, AsTyped, CarrierRate, Duration, Length, Pressure, Speed, Volume};

/// What was measured on a day. Old ones are kept.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Calibration {
    /// The day.
    pub date: Date,
    /// The nozzle set that was fitted.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub set: Id,
    /// Who measured.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub by: String,
    /// Pressure at the nozzles meanwhile.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pressure: Option<AsTyped<Pressure>>,
    /// What was measured, and how.
    pub test: Test,
    /// Anything else.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
}

/// Ways to measure. Water is caught, not spray.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub enum Test {
    /// What each nozzle, or a sample of them, gives in a time.
    Catch {
        /// How long each was caught.
        time: AsTyped<Duration>,
        /// What was caught, from the left end of the boom to the right; `None` where a nozzle was not caught.
        caught: Vec<Option<AsTyped<Volume>>>,
    },
    /// The 1/128-acre method: the time to drive the course that one nozzle, or the nozzles of a row, sprays 1/128 acre on, then what
    /// these give in that time. A fluid ounce is then a gallon to the acre.
    AcreFraction {
        /// Time to drive the course.
        time: AsTyped<Duration>,
        /// What was caught in that time, from one nozzle or from all of a row.
        caught: Vec<AsTyped<Volume>>,
    },
    /// Time over a measured course, for the speed.
    Course {
        /// Length of the course.
        length: AsTyped<Length>,
        /// Time of each run.
        times: Vec<AsTyped<Duration>>,
        /// What the cab showed meanwhile.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        shown: Option<AsTyped<Speed>>,
    },
    /// What it takes to fill the tank up again after a measured piece of ground.
    TankLevel {
        /// The ground that was sprayed.
        area: AsTyped<Area>,
        /// What it took to fill up again.
        used: AsTyped<Volume>,
        /// What it was set to.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        set_to: Option<AsTyped<CarrierRate>>,
    },
}

impl Test {
    /// The way in words.
    pub fn name(&self) -> &'static str {
        match self {
            Self::Catch { .. } => t!("farm-catch-at-the-nozzles"),
            Self::AcreFraction { .. } => t!("farm-1-128-acre"),
            Self::Course { .. } => t!("farm-speed-over-a-course"),
            Self::TankLevel { .. } => t!("farm-tank-level"),
        }
    }
}
