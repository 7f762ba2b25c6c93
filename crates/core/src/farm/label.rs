//! What a label says, statement by statement, as the user typed it from the booklet.
//!
//! A statement has a kind with its values, the crop and stages it speaks of, and where on the label it stands. Label
//! statements beat every rule table.

use serde::{Deserialize, Serialize};

use super::product::AdjuvantClass;
use super::rig::Droplets;
use crate::quantity::{AsTyped, CarrierRate, Length, Rate, Share, Speed};

/// One statement of a label.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Statement {
    /// What it says.
    pub says: Says,
    /// For which crop; empty for all.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub crop: String,
    /// From which growth stage; empty for any.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub from_stage: String,
    /// Up to and including which growth stage; empty for any.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub to_stage: String,
    /// Where on the label: "page 4".
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub at: String,
}

impl Statement {
    /// A statement for every crop and stage.
    pub fn new(says: Says, at: &str) -> Self {
        Self { says, crop: String::new(), from_stage: String::new(), to_stage: String::new(), at: at.to_owned() }
    }
}

/// Where in the mixing order a label puts its product.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum OrderPlace {
    /// Before all others.
    First,
    /// After all others.
    Last,
}

/// How a label stands to an adjuvant class.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum Stance {
    /// Must be in the tank.
    Required,
    /// Should be.
    Preferred,
    /// May be.
    Allowed,
    /// Better not.
    Discouraged,
    /// Must not be.
    Forbidden,
}

impl Stance {
    /// All of them.
    pub const ALL: [Self; 5] = [Self::Required, Self::Preferred, Self::Allowed, Self::Discouraged, Self::Forbidden];

    /// In words.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Required => "required",
            Self::Preferred => "preferred",
            Self::Allowed => "allowed",
            Self::Discouraged => "discouraged",
            Self::Forbidden => "forbidden",
        }
    }
}

/// The kinds of statement, each with its values.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub enum Says {
    /// Rate of one application.
    Rate {
        /// At least.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        least: Option<AsTyped<Rate>>,
        /// At most.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        most: Option<AsTyped<Rate>>,
    },
    /// Spray volume over ground.
    Carrier {
        /// At least.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        least: Option<AsTyped<CarrierRate>>,
        /// At most.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        most: Option<AsTyped<CarrierRate>>,
    },
    /// Most product in a season.
    SeasonTotal {
        /// At most.
        most: AsTyped<Rate>,
    },
    /// Most of an active in a season, from all products that hold it.
    ActiveSeasonTotal {
        /// ISO common name.
        active: String,
        /// At most.
        most: AsTyped<Rate>,
    },
    /// How many applications a season, and how far apart.
    Applications {
        /// At most.
        most: u32,
        /// Days between two.
        #[serde(default, skip_serializing_if = "super::is_default")]
        days_apart: u32,
    },
    /// The crop stages in which it may be used, given by the statement's own stages.
    CropStage,
    /// Days from the last application to harvest or grazing.
    HarvestInterval {
        /// Days.
        days: u32,
    },
    /// Hours before people may enter without protection.
    ReEntry {
        /// Hours.
        hours: u32,
    },
    /// Months before another crop may be planted.
    PlantBack {
        /// The crop.
        next_crop: String,
        /// Months.
        months: u32,
    },
    /// Droplet classes.
    Droplets {
        /// This class or coarser.
        finest: Droplets,
        /// This class or finer.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        coarsest: Option<Droplets>,
    },
    /// Strongest wind.
    Wind {
        /// At most.
        most: AsTyped<Speed>,
    },
    /// Strip to a neighbour that stays unsprayed.
    Buffer {
        /// To what.
        to: String,
        /// How wide.
        width: AsTyped<Length>,
    },
    /// Hours without rain that it needs.
    RainFree {
        /// Hours.
        hours: u32,
    },
    /// An adjuvant class.
    Adjuvant {
        /// The class.
        class: AdjuvantClass,
        /// How the label stands to it.
        stance: Stance,
        /// At least.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        least: Option<AsTyped<Rate>>,
        /// At most.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        most: Option<AsTyped<Rate>>,
    },
    /// Its place in the mixing order.
    MixingOrder {
        /// Where.
        place: OrderPlace,
        /// How full the tank must be before it goes in.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        tank_full: Option<AsTyped<Share>>,
    },
    /// What it may not be mixed with.
    NotWith {
        /// In the label's words.
        what: String,
    },
    /// Protective equipment for those who mix and spray.
    Wear {
        /// In the label's words.
        what: String,
    },
    /// How to handle it when mixing.
    Handling {
        /// In the label's words.
        what: String,
    },
    /// A caution.
    Caution {
        /// In the label's words.
        what: String,
    },
}

impl Says {
    /// The kind in words, as the shed's page lists it.
    pub const fn name(&self) -> &'static str {
        match self {
            Self::Rate { .. } => "rate",
            Self::Carrier { .. } => "spray volume",
            Self::SeasonTotal { .. } => "most a season",
            Self::ActiveSeasonTotal { .. } => "most active a season",
            Self::Applications { .. } => "applications",
            Self::CropStage => "crop stage",
            Self::HarvestInterval { .. } => "harvest, graze",
            Self::ReEntry { .. } => "keep out",
            Self::PlantBack { .. } => "next crop",
            Self::Droplets { .. } => "droplets",
            Self::Wind { .. } => "wind",
            Self::Buffer { .. } => "buffer",
            Self::RainFree { .. } => "rain-free",
            Self::Adjuvant { .. } => "adjuvant",
            Self::MixingOrder { .. } => "mixing order",
            Self::NotWith { .. } => "not together with",
            Self::Wear { .. } => "wear",
            Self::Handling { .. } => "when mixing",
            Self::Caution { .. } => "caution",
        }
    }
}
