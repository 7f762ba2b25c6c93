//! A pass: one trip over one or more fields with one tank mix, one water, one rig, on a planned date.

use indexmap::IndexMap;
use jiff::civil::{Date, Time};
use serde::{Deserialize, Serialize};

use super::rig::Droplets;
use super::{Farm, Id, is_default};
use crate::language::{Say, say, t};
use crate::quantity::{
    Area, AsTyped, Bearing, CarrierRate, Density, Length, Pressure, Rate, Share, Speed, Temperature, Volume,
};

/// A planned trip.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Pass {
    /// What people call it: "Corn, second post".
    pub name: String,
    /// The planned day.
    pub date: Date,
    /// The fields, in the order in which they are sprayed.
    #[serde(default)]
    pub fields: Vec<Id>,
    /// Where less than the whole sprayable area of a field is to be sprayed: how much.
    #[serde(default, skip_serializing_if = "IndexMap::is_empty", deserialize_with = "super::unique::map")]
    pub parts: IndexMap<Id, AsTyped<Area>>,
    /// The water.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub water: Id,
    /// The rig.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub rig: Id,
    /// Spray volume over ground.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub carrier: Option<AsTyped<CarrierRate>>,
    /// The rig's nozzle set; empty for the one usually fitted.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub nozzles: Id,
    /// Speed, where it differs from the rig's usual one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub speed: Option<AsTyped<Speed>>,
    /// Pressure, where it differs from the rig's usual one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pressure: Option<AsTyped<Pressure>>,
    /// Droplet class, where it differs from the rig's usual one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub droplets: Option<Droplets>,
    /// Height of the nozzles above what is sprayed, where it differs from the rig's usual one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub height: Option<AsTyped<Length>>,
    /// Where the wind is expected to come from, where that is not taken from the forecast.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wind_from: Option<AsTyped<Bearing>>,
    /// Density of the carrier, where it is not water: "10.65 lb/gal".
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub density: Option<AsTyped<Density>>,
    /// Where the tank is filled.
    #[serde(default, skip_serializing_if = "is_default")]
    pub fills: Fills,
    /// Not to begin before, where the user decides it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub start: Option<Time>,
    /// What carries the products.
    #[serde(default, skip_serializing_if = "is_default")]
    pub carrier_kind: CarrierKind,
    /// The weeds it is meant for, by name.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub weeds: Vec<String>,
    /// How crop and weeds stand on the day.
    #[serde(default, skip_serializing_if = "is_default")]
    pub growing: Growing,
    /// What weighs more where adjuvants differ: control of the weeds or safety of the crop.
    #[serde(default, skip_serializing_if = "is_default")]
    pub lean: Lean,
    /// The products with their rates.
    #[serde(default)]
    pub mix: Vec<Line>,
    /// How the spray volume is split into loads.
    #[serde(default, skip_serializing_if = "is_default")]
    pub split: LoadSplit,
    /// The loads that are decided, such as those already sprayed, in order; what remains is split.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub sizes: Vec<AsTyped<Volume>>,
    /// What is in the tank before the first load.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub in_tank: Option<InTank>,
    /// Mixed beyond what the ground takes: for what stays in the rig, or for a pass that goes on with it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub extra: Option<AsTyped<Volume>>,
    /// The pass of which this one sprays the rest: the same application on other ground of the same fields.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub rest_of: Id,
    /// Who sprays.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub operator: String,
    /// Fill the tank only to here, where it is not to be filled to its mark.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fill_to: Option<AsTyped<Volume>>,
    /// Which published mixing order to follow where the labels are silent; empty for the first of the table.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub mixing_order: String,
    /// How full the tank is before the first product, where the published order's own mark is not wanted.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub first_fill: Option<AsTyped<Share>>,
    /// Words for the crew, printed on the card.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
}

impl Pass {
    /// A pass on a day, with everything still to choose.
    pub fn new(name: &str, date: Date) -> Self {
        Self {
            name: name.to_owned(),
            date,
            fields: Vec::new(),
            parts: IndexMap::new(),
            water: Id::new(),
            rig: Id::new(),
            carrier: None,
            nozzles: Id::new(),
            speed: None,
            pressure: None,
            droplets: None,
            height: None,
            wind_from: None,
            density: None,
            fills: Fills::default(),
            start: None,
            carrier_kind: CarrierKind::default(),
            weeds: Vec::new(),
            growing: Growing::default(),
            lean: Lean::default(),
            mix: Vec::new(),
            split: LoadSplit::default(),
            sizes: Vec::new(),
            in_tank: None,
            extra: None,
            rest_of: Id::new(),
            operator: String::new(),
            fill_to: None,
            mixing_order: String::new(),
            first_fill: None,
            note: String::new(),
        }
    }
}

impl Pass {
    /// Its speed: its own, else the usual one of its rig.
    pub fn speed_in<'a>(&'a self, farm: &'a Farm) -> Option<&'a AsTyped<Speed>> {
        self.speed.as_ref().or_else(|| farm.rigs.get(&self.rig)?.speed.as_ref())
    }

    /// Its spray volume over ground; `None` where that is not typed or nothing.
    pub fn carrier_rate(&self) -> Option<CarrierRate> {
        self.carrier.as_ref().map(AsTyped::value).filter(|carrier| !carrier.is_zero())
    }

    /// How far the tank of a rig is filled for it.
    pub fn filled_to(&self, rig: &super::Rig) -> Volume {
        self.fill_to.as_ref().map_or(rig.tank.value(), AsTyped::value)
    }

    /// The spray that it begins with; `None` where the tank is empty.
    pub fn begins_with(&self) -> Option<&InTank> {
        self.in_tank.as_ref().filter(|in_tank| !in_tank.volume.is_zero())
    }

    /// How much spray is in the tank before it.
    pub fn carried(&self) -> Volume {
        self.in_tank.as_ref().map_or(Volume::ZERO, |in_tank| in_tank.volume.value())
    }

    /// How much is mixed beyond what its ground takes.
    pub fn beyond(&self) -> Volume {
        self.extra.as_ref().map_or(Volume::ZERO, AsTyped::value)
    }

    /// Its pressure: its own, else the usual one of its rig.
    pub fn pressure_in<'a>(&'a self, farm: &'a Farm) -> Option<&'a AsTyped<Pressure>> {
        self.pressure.as_ref().or_else(|| farm.rigs.get(&self.rig)?.pressure.as_ref())
    }

    /// The height of its nozzles: its own, else the usual one of its rig.
    pub fn height_in<'a>(&'a self, farm: &'a Farm) -> Option<&'a AsTyped<Length>> {
        self.height.as_ref().or_else(|| farm.rigs.get(&self.rig)?.height.as_ref())
    }
}

/// Where the tank is filled.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum Fills {
    /// At the field, from a nurse tank.
    #[default]
    AtField,
    /// In the yard: the rig drives home for each load.
    AtYard,
}

impl Fills {
    /// Both.
    pub const ALL: [Self; 2] = [Self::AtField, Self::AtYard];

    /// In words.
    pub fn name(self) -> &'static str {
        match self {
            Self::AtField => t!("farm-at-the-field-from-a-nurse"),
            Self::AtYard => t!("farm-in-the-yard"),
        }
    }
}

/// What carries the products of a mix.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum CarrierKind {
    /// Water.
    #[default]
    Water,
    /// Urea ammonium nitrate solution.
    UreaAmmoniumNitrate,
    /// Another liquid fertilizer.
    LiquidFertilizer,
}

impl CarrierKind {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Water, Self::UreaAmmoniumNitrate, Self::LiquidFertilizer];

    /// The word by which tables, labels and files know it: the same whatever language is spoken.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Water => "water",
            Self::UreaAmmoniumNitrate => "urea ammonium nitrate",
            Self::LiquidFertilizer => "liquid fertilizer",
        }
    }

    /// In words.
    pub fn name(self) -> &'static str {
        match self {
            Self::Water => t!("farm-water"),
            Self::UreaAmmoniumNitrate => t!("farm-urea-ammonium-nitrate"),
            Self::LiquidFertilizer => t!("farm-liquid-fertilizer"),
        }
    }

    /// In a word, where room is short.
    pub fn short(self) -> &'static str {
        match self {
            Self::Water => t!("farm-water"),
            Self::UreaAmmoniumNitrate => t!("farm-uan"),
            Self::LiquidFertilizer => t!("farm-fertilizer"),
        }
    }

    /// As it stands on a card, as a thing to run in.
    pub const fn on_card(self) -> Say {
        say(match self {
            Self::Water => "card-water",
            Self::UreaAmmoniumNitrate => "card-uan",
            Self::LiquidFertilizer => "card-fertilizer",
        })
    }

    /// In words on a card, within a sentence.
    pub const fn named_on_card(self) -> Say {
        say(match self {
            Self::Water => "card-named-water",
            Self::UreaAmmoniumNitrate => "card-named-uan",
            Self::LiquidFertilizer => "card-named-fertilizer",
        })
    }

    /// In a word on a card, where room is short.
    pub const fn short_on_card(self) -> Say {
        say(match self {
            Self::Water => "card-short-water",
            Self::UreaAmmoniumNitrate => "card-short-uan",
            Self::LiquidFertilizer => "card-short-fertilizer",
        })
    }
}

/// How crop and weeds stand on the day.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[allow(clippy::struct_excessive_bools)] // Five questions with yes or no, each apart from the others.
pub struct Growing {
    /// In extreme heat.
    #[serde(default, skip_serializing_if = "is_default")]
    pub heat: bool,
    /// In cold.
    #[serde(default, skip_serializing_if = "is_default")]
    pub cold: bool,
    /// In drought.
    #[serde(default, skip_serializing_if = "is_default")]
    pub drought: bool,
    /// The weeds are large for the products.
    #[serde(default, skip_serializing_if = "is_default")]
    pub large_weeds: bool,
    /// The weeds stand thick.
    #[serde(default, skip_serializing_if = "is_default")]
    pub heavy_pressure: bool,
    /// The air that is expected at its warmest.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub air: Option<AsTyped<Temperature>>,
}

/// What weighs more where adjuvants differ and no label decides.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum Lean {
    /// Control of the weeds.
    WeedControl,
    /// Neither.
    #[default]
    Even,
    /// Safety of the crop.
    CropSafety,
}

impl Lean {
    /// All of them, from one end to the other.
    pub const ALL: [Self; 3] = [Self::WeedControl, Self::Even, Self::CropSafety];

    /// In words.
    pub fn name(self) -> &'static str {
        match self {
            Self::WeedControl => t!("farm-weed-control"),
            Self::Even => t!("farm-even"),
            Self::CropSafety => t!("farm-crop-safety"),
        }
    }
}

/// One product of a tank mix with its rate.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Line {
    /// The product.
    pub product: Id,
    /// Its rate.
    pub rate: AsTyped<Rate>,
    /// "… but at least": a floor over ground for a rate in the spray.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub at_least: Option<AsTyped<Rate>>,
    /// "… but at most": a ceiling over ground for a rate in the spray.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub at_most: Option<AsTyped<Rate>>,
}

impl Line {
    /// A product at a rate.
    pub fn new(product: &str, rate: AsTyped<Rate>) -> Self {
        Self { product: product.to_owned(), rate, at_least: None, at_most: None }
    }
}

/// How the spray volume is split into loads.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub enum LoadSplit {
    /// Full tanks and a remainder.
    #[default]
    FullTanks,
    /// The same volume in each load.
    EvenLoads,
    /// As the farm's aims are met best.
    ByAims,
}

/// Spray that is in the tank before a pass begins.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct InTank {
    /// How much.
    pub volume: AsTyped<Volume>,
    /// The pass that it was mixed for; empty where it is not one of the farm's.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub from: Id,
}
