//! A rig: a sprayer with its tank, boom and usual setting.

use serde::{Deserialize, Serialize};

use super::{Calibration, Id, Nouns, NozzleSet, is_default};
use crate::language::{Say, say, t};
use crate::quantity::{AsTyped, Duration, Length, Pressure, Share, Speed, Volume};

/// A sprayer.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Rig {
    /// What people call it.
    pub name: String,
    /// What the tank holds when full to its mark.
    pub tank: AsTyped<Volume>,
    /// The least volume that the agitation still keeps in motion.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub least: Option<AsTyped<Volume>>,
    /// The finest mark to which it is filled, on the tank or on the meter.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<AsTyped<Volume>>,
    /// What the nurse tank that serves it holds.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub nurse: Option<AsTyped<Volume>>,
    /// What stays in tank, lines and boom when it runs dry.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub residual: Option<AsTyped<Volume>>,
    /// What lines and boom hold between the tank and the nozzles: what is sprayed before a new mix arrives there.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lines: Option<AsTyped<Volume>>,
    /// What the tank for clean rinsing water holds.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub clean_water: Option<AsTyped<Volume>>,
    /// Working width of the boom.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub boom: Option<AsTyped<Length>>,
    /// Share of the time in the field that is spent spraying.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub efficiency: Option<AsTyped<Share>>,
    /// Usual speed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub speed: Option<AsTyped<Speed>>,
    /// Usual pressure.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pressure: Option<AsTyped<Pressure>>,
    /// Usual height of the nozzles above what is sprayed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub height: Option<AsTyped<Length>>,
    /// The nozzles fitted, in words, where no set is typed.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub nozzles: String,
    /// Droplet class at the usual setting, copied from the nozzle maker's table, where no set holds it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub droplets: Option<Droplets>,
    /// The nozzle sets there are for it.
    #[serde(default, skip_serializing_if = "Nouns::is_empty")]
    pub sets: Nouns<NozzleSet>,
    /// The set that is usually fitted; empty for the first.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub fitted: Id,
    /// Valves that open and close the nozzles many times a second, where fitted.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pulse: Option<Pulse>,
    /// What was measured on it, the latest last.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub calibrations: Vec<Calibration>,
    /// Whether the flow measured last is used in place of the rating.
    #[serde(default, skip_serializing_if = "is_default")]
    pub measured_flow: bool,
    /// Speed on the road.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub road_speed: Option<AsTyped<Speed>>,
    /// What a filling takes beside running water and products: hose on and off, rinsing jugs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub stop: Option<AsTyped<Duration>>,
    /// What each product added takes.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub addition: Option<AsTyped<Duration>>,
    /// Anything else.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
}

impl Rig {
    /// A rig with a tank, and nothing else known.
    pub fn new(name: &str, tank: AsTyped<Volume>) -> Self {
        Self {
            name: name.to_owned(),
            tank,
            least: None,
            mark: None,
            nurse: None,
            residual: None,
            lines: None,
            clean_water: None,
            boom: None,
            efficiency: None,
            speed: None,
            pressure: None,
            height: None,
            nozzles: String::new(),
            droplets: None,
            sets: Nouns::new(),
            fitted: Id::new(),
            pulse: None,
            calibrations: Vec::new(),
            measured_flow: false,
            road_speed: None,
            stop: None,
            addition: None,
            note: String::new(),
        }
    }
}

/// Valves that open and close the nozzles many times a second, so that the flow changes and the pressure stays.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Pulse {
    /// The least share of the time that they may stand open.
    pub least: AsTyped<Share>,
    /// The most.
    pub most: AsTyped<Share>,
}

/// Droplet size classes of ASABE S572 and ISO 25358, from fine to coarse.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
pub enum Droplets {
    /// XF.
    ExtremelyFine,
    /// VF.
    VeryFine,
    /// F.
    Fine,
    /// M.
    Medium,
    /// C.
    Coarse,
    /// VC.
    VeryCoarse,
    /// XC.
    ExtremelyCoarse,
    /// UC.
    UltraCoarse,
}

impl Droplets {
    /// All of them, from fine to coarse.
    pub const ALL: [Self; 8] = [
        Self::ExtremelyFine,
        Self::VeryFine,
        Self::Fine,
        Self::Medium,
        Self::Coarse,
        Self::VeryCoarse,
        Self::ExtremelyCoarse,
        Self::UltraCoarse,
    ];

    /// The name of the class, on a card.
    pub const fn on_card(self) -> Say {
        say(match self {
            Self::ExtremelyFine => "card-class-extremely-fine",
            Self::VeryFine => "card-class-very-fine",
            Self::Fine => "card-class-fine",
            Self::Medium => "card-class-medium",
            Self::Coarse => "card-class-coarse",
            Self::VeryCoarse => "card-class-very-coarse",
            Self::ExtremelyCoarse => "card-class-extremely-coarse",
            Self::UltraCoarse => "card-class-ultra-coarse",
        })
    }

    /// The word by which tables, labels and files know it: the same whatever language is spoken.
    pub const fn word(self) -> &'static str {
        match self {
            Self::ExtremelyFine => "extremely fine",
            Self::VeryFine => "very fine",
            Self::Fine => "fine",
            Self::Medium => "medium",
            Self::Coarse => "coarse",
            Self::VeryCoarse => "very coarse",
            Self::ExtremelyCoarse => "extremely coarse",
            Self::UltraCoarse => "ultra coarse",
        }
    }

    /// The name of the class.
    pub fn name(self) -> &'static str {
        match self {
            Self::ExtremelyFine => t!("farm-extremely-fine"),
            Self::VeryFine => t!("farm-very-fine"),
            Self::Fine => t!("farm-fine"),
            Self::Medium => t!("farm-medium"),
            Self::Coarse => t!("farm-coarse"),
            Self::VeryCoarse => t!("farm-very-coarse"),
            Self::ExtremelyCoarse => t!("farm-extremely-coarse"),
            Self::UltraCoarse => t!("farm-ultra-coarse"),
        }
    }
}
