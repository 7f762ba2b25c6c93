//! A field: a piece of ground with a crop on it.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};

use super::{Gateway, Shape, is_default};
use crate::language::t;
use crate::quantity::{Area, AsTyped, Length};

/// A piece of ground with an area, a crop and its growth stage, and neighbours that matter.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Field {
    /// What people call it.
    pub name: String,
    /// The area that is farmed, as it is stated: tilled, insured, claimed.
    pub area: AsTyped<Area>,
    /// Ground inside it that stays unsprayed: buffers, waterways, wet spots.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub unsprayed: Option<AsTyped<Area>>,
    /// Whether what is sprayed is worked out from the stated area or from the boundary.
    #[serde(default, skip_serializing_if = "is_default")]
    pub area_from: AreaFrom,
    /// The strips that labels keep to what is drawn on the map are part of what stays unsprayed, and not left out once more.
    #[serde(default, skip_serializing_if = "is_default")]
    pub strips_in_unsprayed: bool,
    /// Where its edge runs: polygons.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub boundary: Option<Shape>,
    /// The ways into it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub gateways: Vec<Gateway>,
    /// Its soil, in words: "silt loam, 2.4 % organic matter, pH 6.3".
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub soil: String,
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
    /// The area that its plans go by.
    pub fn ground(&self) -> Area {
        match &self.boundary {
            Some(boundary) if self.area_from == AreaFrom::Boundary => boundary.area(),
            _ => self.area.value(),
        }
    }

    /// What of it can be sprayed whatever is sprayed: its area less what stays unsprayed; nothing where more stays unsprayed than there
    /// is. What a pass can spray may be less ([`crate::ground::sprayable`]).
    pub fn sprayable(&self) -> Area {
        match &self.unsprayed {
            Some(unsprayed) if unsprayed.exceeds(self.ground()) => Area::ZERO,
            Some(unsprayed) => self.ground() - unsprayed.value(),
            None => self.ground(),
        }
    }

    /// A field of an area, with nothing on it yet.
    pub fn new(name: &str, area: AsTyped<Area>) -> Self {
        Self {
            name: name.to_owned(),
            area,
            unsprayed: None,
            area_from: AreaFrom::Stated,
            strips_in_unsprayed: false,
            boundary: None,
            gateways: Vec::new(),
            soil: String::new(),
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

/// Which of its two areas a field's plans go by.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum AreaFrom {
    /// The one that is stated.
    #[default]
    Stated,
    /// The one that is measured from its boundary.
    Boundary,
}

impl AreaFrom {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Stated, Self::Boundary];

    /// In words.
    pub fn name(self) -> &'static str {
        match self {
            Self::Stated => t!("farm-stated"),
            Self::Boundary => t!("farm-from-the-boundary"),
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
