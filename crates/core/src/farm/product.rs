//! A product: a pesticide, adjuvant, water conditioner or foliar feed as its label describes it.

use serde::{Deserialize, Serialize};

use super::formulation::Formulation;
use super::label::Statement;
use crate::language::{Say, say, t};
use crate::quantity::{ActiveBasis, Amount, AsTyped, Concentration, Density, Mass, Price, Volume};

/// A product as its label describes it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Product {
    /// The name on the front panel.
    pub name: String,
    /// What it is for.
    pub kind: ProductKind,
    /// Type of formulation, by its two-letter code.
    pub formulation: Formulation,
    /// Adjuvant class, for an adjuvant.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub class: Option<AdjuvantClass>,
    /// Active ingredients, or the salt of a conditioner.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub actives: Vec<Active>,
    /// Surfactant built into the formulation; for an adjuvant, what it is itself.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub surfactant: Option<Surfactant>,
    /// That its label says, or its maker, that no surfactant is built in. Without it and without [`Product::surfactant`] that is not known.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub no_surfactant: bool,
    /// Grade, for ammonium sulfate and other salts.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub grade: Option<Grade>,
    /// Density.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub density: Option<AsTyped<Density>>,
    /// Registration number.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub registration: String,
    /// Signal word.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub signal_word: String,
    /// Only a certified applicator may buy and use it.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub restricted: bool,
    /// What it is sold in, and how much is on hand.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub containers: Vec<Container>,
    /// The day on which it was last counted: from then on none on hand means none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub counted: Option<jiff::civil::Date>,
    /// Whether it was counted after that day's spraying, and not before it.
    #[serde(default, skip_serializing_if = "super::is_default")]
    pub counted_after: bool,
    /// The finest mark it is measured with, where that differs from the farm's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub measuring_step: Option<AsTyped<Amount>>,
    /// What it costs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub price: Option<AsTyped<Price>>,
    /// Which label this was typed from, and when.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub typed_from: String,
    /// What the label says, statement by statement.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub label: Vec<Statement>,
}

impl Product {
    /// A product with nothing but a name, a kind and a formulation.
    pub fn new(name: &str, kind: ProductKind, formulation: Formulation) -> Self {
        Self {
            name: name.to_owned(),
            kind,
            formulation,
            class: None,
            actives: Vec::new(),
            surfactant: None,
            no_surfactant: false,
            grade: None,
            density: None,
            registration: String::new(),
            signal_word: String::new(),
            restricted: false,
            containers: Vec::new(),
            counted: None,
            counted_after: false,
            measuring_step: None,
            price: None,
            typed_from: String::new(),
            label: Vec::new(),
        }
    }

    /// Whether its formulation holds a surfactant that its label calls complete.
    pub fn is_loaded(&self) -> bool {
        self.surfactant.is_some_and(|surfactant| surfactant.complete)
    }

    /// Its class, where it is something that helps a spray and not a pesticide.
    pub fn adjuvant_class(&self) -> Option<AdjuvantClass> {
        self.class.filter(|_| !self.kind.is_pesticide())
    }

    /// Nothing of it: no volume of a liquid, no mass of a dry product.
    pub fn nothing(&self) -> Amount {
        if self.is_liquid() { Amount::Volume(Volume::ZERO) } else { Amount::Mass(Mass::ZERO) }
    }

    /// Whether it is measured by volume.
    pub fn is_liquid(&self) -> bool {
        self.formulation.is_liquid()
    }
}

/// What a product is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum ProductKind {
    /// Kills weeds.
    Herbicide,
    /// Controls disease.
    Fungicide,
    /// Controls insects.
    Insecticide,
    /// Changes the growth of the crop.
    GrowthRegulator,
    /// Helps the spray, without being a pesticide.
    Adjuvant,
    /// Ties up what hard water holds.
    Conditioner,
    /// Feeds through the leaf.
    FoliarFeed,
    /// Anything else that goes into a tank.
    Other,
}

impl ProductKind {
    /// All of them.
    pub const ALL: [Self; 8] = [
        Self::Herbicide,
        Self::Fungicide,
        Self::Insecticide,
        Self::GrowthRegulator,
        Self::Adjuvant,
        Self::Conditioner,
        Self::FoliarFeed,
        Self::Other,
    ];

    /// The word by which tables, labels and files know it: the same whatever language is spoken.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Herbicide => "herbicide",
            Self::Fungicide => "fungicide",
            Self::Insecticide => "insecticide",
            Self::GrowthRegulator => "growth regulator",
            Self::Adjuvant => "adjuvant",
            Self::Conditioner => "water conditioner",
            Self::FoliarFeed => "foliar feed",
            Self::Other => "other",
        }
    }

    /// In words.
    pub fn name(self) -> &'static str {
        match self {
            Self::Herbicide => t!("farm-herbicide"),
            Self::Fungicide => t!("farm-fungicide"),
            Self::Insecticide => t!("farm-insecticide"),
            Self::GrowthRegulator => t!("farm-growth-regulator"),
            Self::Adjuvant => t!("farm-adjuvant"),
            Self::Conditioner => t!("farm-water-conditioner"),
            Self::FoliarFeed => t!("farm-foliar-feed"),
            Self::Other => t!("farm-other-kind"),
        }
    }

    /// Whether what it holds counts as an active in records and season totals.
    pub const fn holds_actives(self) -> bool {
        !matches!(self, Self::Adjuvant | Self::Conditioner)
    }

    /// Whether a label with limits in law stands behind it.
    pub const fn is_pesticide(self) -> bool {
        matches!(self, Self::Herbicide | Self::Fungicide | Self::Insecticide | Self::GrowthRegulator)
    }
}

/// A surfactant in a formulation. It serves its own product; what a partner wants is another matter.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Surfactant {
    /// Its charge in water.
    pub charge: Charge,
    /// Whether the label says that the product needs no other.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub complete: bool,
}

/// Charge of a surfactant in water.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum Charge {
    /// None.
    NonIonic,
    /// Positive, such as the tallow amines.
    Cationic,
    /// Negative, such as the sulfonates.
    Anionic,
    /// Both, by acidity.
    Amphoteric,
    /// The label does not say.
    NotStated,
}

impl Charge {
    /// All of them.
    pub const ALL: [Self; 5] = [Self::NotStated, Self::NonIonic, Self::Cationic, Self::Anionic, Self::Amphoteric];

    /// The word by which tables, labels and files know it: the same whatever language is spoken.
    pub const fn word(self) -> &'static str {
        match self {
            Self::NonIonic => "non-ionic",
            Self::Cationic => "cationic",
            Self::Anionic => "anionic",
            Self::Amphoteric => "amphoteric",
            Self::NotStated => "not stated",
        }
    }

    /// In words.
    pub fn name(self) -> &'static str {
        match self {
            Self::NonIonic => t!("farm-non-ionic"),
            Self::Cationic => t!("farm-cationic"),
            Self::Anionic => t!("farm-anionic"),
            Self::Amphoteric => t!("farm-amphoteric"),
            Self::NotStated => t!("farm-charge-not-stated"),
        }
    }
}

/// Grade of a salt that goes into a spray tank.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum Grade {
    /// Made for spraying: dissolves without residue.
    Spray,
    /// Made for spreading: impurities may tie up a herbicide and block screens.
    Fertilizer,
}

impl Grade {
    /// All of them.
    pub const ALL: [Self; 2] = [Self::Spray, Self::Fertilizer];

    /// In words.
    pub fn name(self) -> &'static str {
        match self {
            Self::Spray => t!("farm-spray-grade"),
            Self::Fertilizer => t!("farm-fertilizer-grade"),
        }
    }
}

/// Adjuvant classes, in the terms of ASTM E1519.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
pub enum AdjuvantClass {
    /// Non-ionic surfactant, NIS.
    NonIonicSurfactant,
    /// Crop oil concentrate, COC: petroleum oil with 15 to 20 % surfactant.
    CropOilConcentrate,
    /// Methylated seed oil, MSO.
    MethylatedSeedOil,
    /// High-surfactant oil concentrate, HSOC.
    HighSurfactantOil,
    /// Organosilicone surfactant.
    Organosilicone,
    /// Ammonium sulfate, AMS.
    AmmoniumSulfate,
    /// Urea ammonium nitrate solution, UAN.
    UreaAmmoniumNitrate,
    /// Water conditioner without ammonium.
    ConditionerWithoutAmmonium,
    /// Acidifier or buffer.
    Buffer,
    /// Agent that lowers the volatility of a herbicide.
    VolatilityReducer,
    /// Drift retardant.
    DriftRetardant,
    /// Compatibility agent.
    CompatibilityAgent,
    /// Antifoaming agent.
    Defoamer,
    /// Any other.
    Other,
}

impl AdjuvantClass {
    /// All of them.
    pub const ALL: [Self; 14] = [
        Self::NonIonicSurfactant,
        Self::CropOilConcentrate,
        Self::MethylatedSeedOil,
        Self::HighSurfactantOil,
        Self::Organosilicone,
        Self::AmmoniumSulfate,
        Self::UreaAmmoniumNitrate,
        Self::ConditionerWithoutAmmonium,
        Self::Buffer,
        Self::VolatilityReducer,
        Self::DriftRetardant,
        Self::CompatibilityAgent,
        Self::Defoamer,
        Self::Other,
    ];

    /// The word by which tables, labels and files know it: the same whatever language is spoken.
    pub const fn word(self) -> &'static str {
        match self {
            Self::NonIonicSurfactant => "non-ionic surfactant",
            Self::CropOilConcentrate => "crop oil concentrate",
            Self::MethylatedSeedOil => "methylated seed oil",
            Self::HighSurfactantOil => "high-surfactant oil concentrate",
            Self::Organosilicone => "organosilicone",
            Self::AmmoniumSulfate => "ammonium sulfate",
            Self::UreaAmmoniumNitrate => "urea ammonium nitrate",
            Self::ConditionerWithoutAmmonium => "conditioner without ammonium",
            Self::Buffer => "acidifier or buffer",
            Self::VolatilityReducer => "volatility reducer",
            Self::DriftRetardant => "drift retardant",
            Self::CompatibilityAgent => "compatibility agent",
            Self::Defoamer => "antifoaming agent",
            Self::Other => "other",
        }
    }

    /// In words.
    pub fn name(self) -> &'static str {
        match self {
            Self::NonIonicSurfactant => t!("farm-non-ionic-surfactant"),
            Self::CropOilConcentrate => t!("farm-crop-oil-concentrate"),
            Self::MethylatedSeedOil => t!("farm-methylated-seed-oil"),
            Self::HighSurfactantOil => t!("farm-high-surfactant-oil-concentrate"),
            Self::Organosilicone => t!("farm-organosilicone"),
            Self::AmmoniumSulfate => t!("farm-ammonium-sulfate"),
            Self::UreaAmmoniumNitrate => t!("farm-urea-ammonium-nitrate"),
            Self::ConditionerWithoutAmmonium => t!("farm-conditioner-without-ammonium"),
            Self::Buffer => t!("farm-acidifier-or-buffer"),
            Self::VolatilityReducer => t!("farm-volatility-reducer"),
            Self::DriftRetardant => t!("farm-drift-retardant"),
            Self::CompatibilityAgent => t!("farm-compatibility-agent"),
            Self::Defoamer => t!("farm-antifoaming-agent"),
            Self::Other => t!("farm-other-class"),
        }
    }

    /// The class of a key of the rule tables.
    pub fn of_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|class| class.key() == key)
    }

    /// Whether it carries ammonium into the tank.
    pub const fn holds_ammonium(self) -> bool {
        matches!(self, Self::AmmoniumSulfate | Self::UreaAmmoniumNitrate)
    }

    /// Whether it is an oil.
    pub const fn is_oil(self) -> bool {
        matches!(self, Self::CropOilConcentrate | Self::MethylatedSeedOil | Self::HighSurfactantOil)
    }

    /// The key under which rule tables speak of it.
    pub const fn key(self) -> &'static str {
        match self {
            Self::NonIonicSurfactant => "NIS",
            Self::CropOilConcentrate => "COC",
            Self::MethylatedSeedOil => "MSO",
            Self::HighSurfactantOil => "HSOC",
            Self::Organosilicone => "OSS",
            Self::AmmoniumSulfate => "AMS",
            Self::UreaAmmoniumNitrate => "UAN",
            Self::ConditionerWithoutAmmonium => "COND",
            Self::Buffer => "BUF",
            Self::VolatilityReducer => "VRA",
            Self::DriftRetardant => "DRT",
            Self::CompatibilityAgent => "COMPAT",
            Self::Defoamer => "DEFOAM",
            Self::Other => "OTHER",
        }
    }
}

/// An active ingredient in a product.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Active {
    /// ISO common name.
    pub name: String,
    /// Resistance group.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub group: String,
    /// How the label counts it.
    pub basis: ActiveBasis,
    /// How much of it the product holds.
    pub content: AsTyped<Concentration>,
}

/// What a product is sold in.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Container {
    /// What it is.
    pub kind: ContainerKind,
    /// What it holds when full.
    pub size: AsTyped<Amount>,
    /// How many full ones are on hand.
    #[serde(default, skip_serializing_if = "super::is_default")]
    pub full: u32,
    /// What is left in an opened one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub opened: Option<AsTyped<Amount>>,
    /// The lot, as printed on it.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub lot: String,
}

/// Kinds of container.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum ContainerKind {
    /// Jug.
    Jug,
    /// Bag.
    Bag,
    /// Box.
    Box,
    /// Drum.
    Drum,
    /// Tote or shuttle.
    Tote,
}

impl ContainerKind {
    /// All of them.
    pub const ALL: [Self; 5] = [Self::Jug, Self::Bag, Self::Box, Self::Drum, Self::Tote];

    /// A number of them on a card.
    pub fn on_card(self, count: u32) -> Say {
        say(match self {
            Self::Jug => "card-container-jug",
            Self::Bag => "card-container-bag",
            Self::Box => "card-container-box",
            Self::Drum => "card-container-drum",
            Self::Tote => "card-container-tote",
        })
        .with("count", count)
    }

    /// In words, for a number of them.
    pub fn name(self, count: u32) -> &'static str {
        match (self, count) {
            (Self::Jug, 1) => t!("farm-jug"),
            (Self::Jug, _) => t!("farm-jugs"),
            (Self::Bag, 1) => t!("farm-bag"),
            (Self::Bag, _) => t!("farm-bags"),
            (Self::Box, 1) => t!("farm-box"),
            (Self::Box, _) => t!("farm-boxes"),
            (Self::Drum, 1) => t!("farm-drum"),
            (Self::Drum, _) => t!("farm-drums"),
            (Self::Tote, 1) => t!("farm-tote"),
            (Self::Tote, _) => t!("farm-totes"),
        }
    }
}
