//! What lies among the fields and must not be hit, where it is drawn on the map, and the picture that lies under the map.

use crate::language::t;
use serde::{Deserialize, Serialize};

use super::{Shape, is_default};

/// Something on the map that spray must not reach. It matters to every field that it lies beside.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Surrounding {
    /// What people call it: "Mill creek".
    pub name: String,
    /// What it is.
    #[serde(default, skip_serializing_if = "is_default")]
    pub kind: SurroundingKind,
    /// Where it lies.
    pub shape: Shape,
    /// Anything else, such as whom to call.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
}

/// What it is that spray must not reach.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum SurroundingKind {
    /// A stream, a ditch, a pond, a lake, wetland.
    Water,
    /// A well.
    Well,
    /// Homes and yards.
    Home,
    /// A school, a playground, a hospital.
    School,
    /// Hives.
    Hives,
    /// A crop that the spray would hurt.
    SensitiveCrop,
    /// Organic land.
    Organic,
    /// Trees, hedges, wild ground.
    Habitat,
    /// Anything else.
    #[default]
    Other,
}

impl SurroundingKind {
    /// All of them.
    pub const ALL: [Self; 9] = [
        Self::Water,
        Self::Well,
        Self::Home,
        Self::School,
        Self::Hives,
        Self::SensitiveCrop,
        Self::Organic,
        Self::Habitat,
        Self::Other,
    ];

    /// The word by which tables, labels and files know it: the same whatever language is spoken.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Water => "water",
            Self::Well => "well",
            Self::Home => "home",
            Self::School => "school",
            Self::Hives => "hives",
            Self::SensitiveCrop => "sensitive crop",
            Self::Organic => "organic land",
            Self::Habitat => "trees and wild ground",
            Self::Other => "other",
        }
    }

    /// In words.
    pub fn name(self) -> &'static str {
        match self {
            Self::Water => t!("farm-open-water"),
            Self::Well => t!("farm-well"),
            Self::Home => t!("farm-home"),
            Self::School => t!("farm-school"),
            Self::Hives => t!("farm-hives"),
            Self::SensitiveCrop => t!("farm-sensitive-crop"),
            Self::Organic => t!("farm-organic-land"),
            Self::Habitat => t!("farm-trees-and-wild-ground"),
            Self::Other => t!("farm-other-surrounding"),
        }
    }
}

/// A way into a field.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Gateway {
    /// What people call it; may be empty.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub name: String,
    /// A point.
    pub at: Shape,
}

/// A picture that lies under the map, north at its top.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Background {
    /// Its file, by a path from the folder of the farm's own file.
    pub file: String,
    /// A point: its upper left corner.
    pub north_west: Shape,
    /// A point: its lower right corner.
    pub south_east: Shape,
}
