//! A rig: a sprayer with its tank, boom and usual setting.

use serde::{Deserialize, Serialize};

use crate::quantity::{AsTyped, Length, Pressure, Share, Speed, Volume};

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
    /// What stays in tank, lines and boom when it runs dry.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub residual: Option<AsTyped<Volume>>,
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
    /// The nozzles fitted, by size.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub nozzles: String,
    /// Droplet class at that setting, copied from the nozzle maker's table.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub droplets: Option<Droplets>,
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
            residual: None,
            boom: None,
            efficiency: None,
            speed: None,
            pressure: None,
            nozzles: String::new(),
            droplets: None,
            note: String::new(),
        }
    }
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

    /// The name of the class.
    pub const fn name(self) -> &'static str {
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
}
