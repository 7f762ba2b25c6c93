//! A field: a piece of ground with a crop on it.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};

use crate::quantity::{Area, AsTyped, Length};

/// A piece of ground with an area, a crop and its growth stage, and neighbours that matter.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Field {
    /// What people call it.
    pub name: String,
    /// The area that is farmed.
    pub area: AsTyped<Area>,
    /// Ground inside it that stays unsprayed: buffers, waterways, wet spots.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub unsprayed: Option<AsTyped<Area>>,
    /// The crop, such as "corn".
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub crop: String,
    /// Whose ground it is, where that matters.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub owner: String,
    /// Growth stage: "V6", "R1", "BBCH 14".
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub stage: String,
    /// Variety and the herbicide traits it carries.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub variety: String,
    /// Day of planting.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub planted: Option<Date>,
    /// Earliest day of harvest or grazing that is expected.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub harvest: Option<Date>,
    /// Road from the yard to its gate.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub road: Option<AsTyped<Length>>,
    /// Where it lies: county, township, range and section, a legal description, or latitude and longitude.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub location: String,
    /// The reference of its parcel in the aid claim.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub parcel: String,
    /// Crop that follows.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub next_crop: String,
    /// Weeds on it that stand up to a resistance group.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub resistant: Vec<Resistant>,
    /// What lies beside it and must not be hit.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub neighbours: Vec<Neighbour>,
    /// Anything else.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
}

impl Field {
    /// What of it can be sprayed: its area less what stays unsprayed; nothing where more stays unsprayed than there is.
    pub fn sprayable(&self) -> Area {
        match &self.unsprayed {
            Some(unsprayed) if unsprayed.exceeds(self.area.value()) => Area::ZERO,
            Some(unsprayed) => self.area.value() - unsprayed.value(),
            None => self.area.value(),
        }
    }

    /// A field of an area, with nothing on it yet.
    pub fn new(name: &str, area: AsTyped<Area>) -> Self {
        Self {
            name: name.to_owned(),
            area,
            unsprayed: None,
            crop: String::new(),
            owner: String::new(),
            stage: String::new(),
            variety: String::new(),
            planted: None,
            harvest: None,
            road: None,
            location: String::new(),
            parcel: String::new(),
            next_crop: String::new(),
            resistant: Vec::new(),
            neighbours: Vec::new(),
            note: String::new(),
        }
    }
}

/// A weed on a field that a resistance group no longer controls.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Resistant {
    /// The weed, by name.
    pub weed: String,
    /// The HRAC group, such as "9".
    pub group: String,
}

/// Something beside a field that spray must not reach.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Neighbour {
    /// What it is: "creek", "beehives", "vineyard".
    pub what: String,
    /// On which side of the field.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub side: String,
    /// How far from the edge.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub distance: Option<AsTyped<Length>>,
}
