//! What came of a pass: how the weeds died and how the crop stood it.

use indexmap::IndexMap;
use jiff::civil::Date;
use serde::{Deserialize, Serialize};

use super::{Id, Text};
use crate::quantity::{AsTyped, Share};

/// A look at a field after a pass.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Outcome {
    /// The field.
    pub field: Text,
    /// The day.
    pub date: Date,
    /// What was rated; none for a note or a photo alone.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub effect: Option<Effect>,
    /// 0 % for no effect, 100 % for all dead.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rating: Option<AsTyped<Share>>,
    /// Who looked.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub by: Text,
    /// Where photos are, as paths.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub photos: Vec<String>,
    /// In words.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub note: Text,
}

/// What is rated.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
pub enum Effect {
    /// Control of a weed, by its name.
    Control(Text),
    /// Injury of the crop: burn, stunting, bleaching, in words.
    Injury(Text),
}

/// Two treatments beside one another: strips of a field, or paired fields.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Trial {
    /// What it asks: "Does the oil pay?".
    pub name: String,
    /// What the one side is.
    pub one: String,
    /// What the other side is.
    pub other: String,
    /// The pairs: each ground of the one side beside its ground of the other.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub pairs: Vec<(Plot, Plot)>,
    /// Anything else.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
}

/// A field as a record sprayed it.
#[derive(Clone, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Plot {
    /// The record.
    pub record: Id,
    /// The field.
    pub field: Id,
}

/// A season that is closed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ClosedSeason {
    /// The day on which it was closed.
    pub closed: Date,
    /// What grew on each field.
    #[serde(default, skip_serializing_if = "IndexMap::is_empty", deserialize_with = "super::unique::map")]
    pub crops: IndexMap<Id, String>,
    /// What was learnt, in words.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
}
