//! A water: a source of carrier water with its laboratory analysis.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};

use crate::language::t;
use crate::quantity::{Acidity, AsTyped, Conductivity, Flow, Hardness, IonContent};

/// A source of carrier water. What the analysis does not state stays empty; nothing is assumed to be zero silently.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Water {
    /// What people call it.
    pub name: String,
    /// Calcium.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub calcium: Option<AsTyped<IonContent>>,
    /// Magnesium.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub magnesium: Option<AsTyped<IonContent>>,
    /// Sodium.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub sodium: Option<AsTyped<IonContent>>,
    /// Potassium.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub potassium: Option<AsTyped<IonContent>>,
    /// Iron.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub iron: Option<AsTyped<IonContent>>,
    /// Manganese.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub manganese: Option<AsTyped<IonContent>>,
    /// Hardness as the laboratory states it, where calcium and magnesium are not given apart.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hardness: Option<AsTyped<Hardness>>,
    /// Bicarbonate.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bicarbonate: Option<AsTyped<IonContent>>,
    /// Acidity.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub acidity: Option<AsTyped<Acidity>>,
    /// Electrical conductivity, which tells how much salt there is and not which.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub conductivity: Option<AsTyped<Conductivity>>,
    /// How clear it is to the eye.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub clarity: Option<Clarity>,
    /// What its pump or hydrant gives when the tank is filled.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub flow: Option<AsTyped<Flow>>,
    /// Day of the sample.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub sampled: Option<Date>,
    /// Who analysed it, or anything else.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
}

/// How clear a water is to the eye.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
pub enum Clarity {
    /// Nothing floats in it.
    Clear,
    /// It is not clear, and a coin on the bottom of a bucket is still seen.
    Cloudy,
    /// A coin on the bottom of a bucket is not seen.
    Dirty,
}

impl Clarity {
    /// All of them, the clearest first.
    pub const ALL: [Self; 3] = [Self::Clear, Self::Cloudy, Self::Dirty];

    /// The word by which tables, labels and files know it: the same whatever language is spoken.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Clear => "clear",
            Self::Cloudy => "cloudy",
            Self::Dirty => "dirty",
        }
    }

    /// In words.
    pub fn name(self) -> &'static str {
        match self {
            Self::Clear => t!("farm-clear"),
            Self::Cloudy => t!("farm-cloudy"),
            Self::Dirty => t!("farm-dirty"),
        }
    }
}
