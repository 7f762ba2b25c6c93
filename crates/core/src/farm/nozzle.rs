//! A nozzle set: what the nozzles of a boom deliver, and how fine.

use serde::{Deserialize, Serialize};

use super::rig::Droplets;
use crate::quantity::{AsTyped, Flow, Length, Pressure};

/// A set of nozzles of one kind that can be fitted to a rig.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct NozzleSet {
    /// What people call it: "110 degree, size 06".
    pub name: String,
    /// Size number after ISO 10625, such as "06".
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub size: String,
    /// What a new one delivers of water, and at which pressure.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rated: Option<Rated>,
    /// How they stand along the boom.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub layout: Option<Layout>,
    /// How many are on the boom; where it is not typed, working width by spacing.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub count: Option<u32>,
    /// Least pressure of the nozzle maker's table.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub least: Option<AsTyped<Pressure>>,
    /// Most pressure of the nozzle maker's table.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub most: Option<AsTyped<Pressure>>,
    /// Droplet classes as the nozzle maker's table lists them, by pressure.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub droplets: Vec<ClassAt>,
    /// Anything else.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
}

/// The rating of a nozzle. Sizes are defined in two ways that are 1.3 % apart (US gallons at 40 psi; litres at 3 bar), so flow
/// and pressure are kept together as typed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Rated {
    /// What one nozzle delivers of water.
    pub flow: AsTyped<Flow>,
    /// At this pressure.
    pub at: AsTyped<Pressure>,
}

/// A line of the nozzle maker's droplet table.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ClassAt {
    /// At this pressure.
    pub at: AsTyped<Pressure>,
    /// The droplets are of this class.
    pub class: Droplets,
}

/// How the nozzles stand along the boom.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub enum Layout {
    /// Over the whole ground, this far apart.
    Broadcast {
        /// From nozzle to nozzle.
        spacing: AsTyped<Length>,
    },
    /// A band over each row; what lies between the bands is not sprayed. Volumes and rates hold for the ground in the bands.
    Band {
        /// Width of the band.
        width: AsTyped<Length>,
        /// From row to row.
        rows: AsTyped<Length>,
        /// Nozzles to a row.
        nozzles: u32,
    },
    /// Several nozzles directed at each row, which together wet the whole ground that the row stands for.
    Directed {
        /// From row to row.
        rows: AsTyped<Length>,
        /// Nozzles to a row.
        nozzles: u32,
    },
}
