//! What a label says, statement by statement, as the user typed it from the booklet.
//!
//! A statement has a kind with its values, the crop and stages it speaks of, and where on the label it stands. Label
//! statements beat every rule table.

use serde::{Deserialize, Serialize};

use super::pass::CarrierKind;
use super::product::AdjuvantClass;
use super::rig::Droplets;
use super::sun_time::SunTime;
use crate::language::t;
use crate::quantity::{AsTyped, CarrierRate, Length, Rate, Share, Speed, Temperature, TemperatureSpan};

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
    /// Under which conditions, all of them at once; empty for always.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub when: Vec<When>,
    /// Where on the label: "page 4".
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub at: String,
}

impl Statement {
    /// A statement for every crop, stage and condition.
    pub fn new(says: Says, at: &str) -> Self {
        Self {
            says,
            crop: String::new(),
            from_stage: String::new(),
            to_stage: String::new(),
            when: Vec::new(),
            at: at.to_owned(),
        }
    }
}

/// A condition under which a statement speaks, beside crop and stage.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub enum When {
    /// The crop or the weeds stand in extreme heat.
    Heat,
    /// They stand in cold.
    Cold,
    /// They stand in drought.
    Drought,
    /// The weeds are large for the product.
    LargeWeeds,
    /// The weeds stand thick.
    HeavyPressure,
    /// Against a weed, by its name.
    Weed(String),
    /// With a partner in the mix: an active, a group such as "group 1", an adjuvant class or a product.
    With(String),
    /// Without another pesticide in the mix.
    Alone,
    /// The formulation holds no surfactant that its label calls complete.
    NoSurfactantBuiltIn,
    /// A partner in the mix holds a surfactant that its label calls complete.
    LoadedPartner,
    /// In a carrier.
    Carrier(CarrierKind),
    /// Where less than this is sprayed over ground.
    CarrierBelow(AsTyped<CarrierRate>),
    /// Where more than this is sprayed over ground.
    CarrierAbove(AsTyped<CarrierRate>),
    /// The droplets are of a finer class.
    DropletsFinerThan(Droplets),
    /// They are of this class or a coarser one.
    DropletsAtLeast(Droplets),
    /// The product's own rate is higher.
    RateAbove(AsTyped<Rate>),
    /// It is this or lower.
    RateUpTo(AsTyped<Rate>),
    /// The air is warmer.
    WarmerThan(AsTyped<Temperature>),
    /// The air is colder.
    ColderThan(AsTyped<Temperature>),
}

/// Over what a total or a number of applications is counted.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum Period {
    /// The calendar year of the pass.
    #[default]
    Year,
    /// The crop that stands on the field, from its planting on.
    Crop,
    /// The twelve months up to the pass.
    TwelveMonths,
}

impl Period {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Year, Self::Crop, Self::TwelveMonths];

    /// In words, after "a most".
    pub fn name(self) -> &'static str {
        match self {
            Self::Year => t!("farm-a-year"),
            Self::Crop => t!("farm-a-crop"),
            Self::TwelveMonths => t!("farm-in-12-months"),
        }
    }
}

/// A day of any year, such as "06-20".
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct MonthDay {
    /// January is 1.
    pub month: i8,
    /// From 1.
    pub day: i8,
}

impl MonthDay {
    /// In a year; 29 February falls on 28 February where the year has none.
    pub fn in_year(self, year: i16) -> Option<jiff::civil::Date> {
        jiff::civil::Date::new(year, self.month, self.day)
            .or_else(|_| jiff::civil::Date::new(year, self.month, self.day - 1))
            .ok()
    }
}

impl std::fmt::Display for MonthDay {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{:02}-{:02}", self.month, self.day)
    }
}

impl std::str::FromStr for MonthDay {
    type Err = String;

    fn from_str(text: &str) -> Result<Self, String> {
        let wrong = || t!("farm-is-no-day-of-the-year", text = text.trim());
        let (month, day) = text.trim().split_once('-').ok_or_else(wrong)?;
        let read = Self { month: month.parse().map_err(|_| wrong())?, day: day.parse().map_err(|_| wrong())? };
        // A leap year, so that 29 February is a day.
        jiff::civil::Date::new(2028, read.month, read.day).map_err(|_| wrong())?;
        Ok(read)
    }
}

impl TryFrom<String> for MonthDay {
    type Error = String;

    fn try_from(text: String) -> Result<Self, String> {
        text.parse()
    }
}

impl From<MonthDay> for String {
    fn from(day: MonthDay) -> Self {
        day.to_string()
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

    /// What a speaker does who takes this stance.
    pub fn verb(self) -> &'static str {
        match self {
            Self::Required => t!("farm-requires"),
            Self::Preferred => t!("farm-prefers"),
            Self::Allowed => t!("farm-allows"),
            Self::Discouraged => t!("farm-advises-against"),
            Self::Forbidden => t!("farm-forbids"),
        }
    }

    /// The word by which tables, labels and files know it: the same whatever language is spoken.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Required => "required",
            Self::Preferred => "preferred",
            Self::Allowed => "allowed",
            Self::Discouraged => "discouraged",
            Self::Forbidden => "forbidden",
        }
    }

    /// In words.
    pub fn name(self) -> &'static str {
        match self {
            Self::Required => t!("farm-required"),
            Self::Preferred => t!("farm-preferred"),
            Self::Allowed => t!("farm-allowed"),
            Self::Discouraged => t!("farm-discouraged"),
            Self::Forbidden => t!("farm-forbidden"),
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
        /// Counted over what.
        #[serde(default, skip_serializing_if = "super::is_default")]
        per: Period,
    },
    /// Most of an active in a season, from all products that hold it.
    ActiveSeasonTotal {
        /// ISO common name.
        active: String,
        /// At most.
        most: AsTyped<Rate>,
        /// Counted over what.
        #[serde(default, skip_serializing_if = "super::is_default")]
        per: Period,
    },
    /// How many applications a season, and how far apart.
    Applications {
        /// At most.
        most: u32,
        /// Days between two.
        #[serde(default, skip_serializing_if = "super::is_default")]
        days_apart: u32,
        /// Counted over what.
        #[serde(default, skip_serializing_if = "super::is_default")]
        per: Period,
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
        /// At least, where still air is forbidden.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        least: Option<AsTyped<Speed>>,
        /// Strongest gust, where the label names one.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        gust: Option<AsTyped<Speed>>,
    },
    /// Not while the wind blows toward something beside the field.
    NotToward {
        /// In the label's words, apart by commas: "sensitive crops, vineyards".
        what: String,
    },
    /// Not while warm air lies over cold.
    NoInversion,
    /// Relative humidity.
    Humidity {
        /// At least.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        least: Option<AsTyped<Share>>,
        /// At most.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        most: Option<AsTyped<Share>>,
    },
    /// Dry bulb less wet bulb.
    DeltaT {
        /// At least.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        least: Option<AsTyped<TemperatureSpan>>,
        /// At most.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        most: Option<AsTyped<TemperatureSpan>>,
    },
    /// Times of day by the sun between which it may be used.
    Daylight {
        /// Not before.
        from: SunTime,
        /// Not after.
        to: SunTime,
    },
    /// Height of the nozzles above what is sprayed.
    BoomHeight {
        /// At most.
        most: AsTyped<Length>,
    },
    /// Speed over ground while spraying.
    GroundSpeed {
        /// At most.
        most: AsTyped<Speed>,
    },
    /// How the rig is cleaned after it.
    CleanOut {
        /// Before which crop is sprayed, apart by commas; empty for any.
        #[serde(default, skip_serializing_if = "String::is_empty")]
        before: String,
        /// In the label's words.
        how: String,
    },
    /// Temperature of the air.
    Temperature {
        /// At least.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        least: Option<AsTyped<Temperature>>,
        /// At most.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        most: Option<AsTyped<Temperature>>,
    },
    /// Days of the year between which it may be used, both included.
    Dates {
        /// Not before.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        from: Option<MonthDay>,
        /// Not after.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        to: Option<MonthDay>,
    },
    /// Weeds it controls at the statement's rates.
    Controls {
        /// Their names, apart by commas.
        weeds: String,
    },
    /// Strip to a neighbour that stays unsprayed.
    Buffer {
        /// To what.
        to: String,
        /// How wide.
        width: AsTyped<Length>,
        /// Only where the wind blows from the field toward it.
        #[serde(default, skip_serializing_if = "super::is_default")]
        downwind_only: bool,
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
        /// "… but at least": a floor over ground for a rate in the spray.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        at_least: Option<AsTyped<Rate>>,
        /// "… but at most": a ceiling over ground for a rate in the spray.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        at_most: Option<AsTyped<Rate>>,
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
        /// In the label's words: an active, a group such as "group 14", an adjuvant class, a kind of product.
        what: String,
        /// Nor within so many days before and after on the same field; 0 for in the tank alone.
        #[serde(default, skip_serializing_if = "super::is_default")]
        days: u32,
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
    pub fn name(&self) -> &'static str {
        match self {
            Self::Rate { .. } => t!("farm-says-rate"),
            Self::Carrier { .. } => t!("farm-spray-volume"),
            Self::SeasonTotal { .. } => t!("farm-most-a-season"),
            Self::ActiveSeasonTotal { .. } => t!("farm-most-active-a-season"),
            Self::Applications { .. } => t!("farm-says-applications"),
            Self::CropStage => t!("farm-crop-stage"),
            Self::HarvestInterval { .. } => t!("farm-harvest-graze"),
            Self::ReEntry { .. } => t!("farm-keep-out"),
            Self::PlantBack { .. } => t!("farm-next-crop"),
            Self::Droplets { .. } => t!("farm-says-droplets"),
            Self::Wind { .. } => t!("farm-says-wind"),
            Self::NotToward { .. } => t!("farm-wind-toward"),
            Self::NoInversion => t!("farm-no-inversion"),
            Self::Humidity { .. } => t!("farm-says-humidity"),
            Self::DeltaT { .. } => t!("farm-delta-t"),
            Self::Daylight { .. } => t!("farm-says-daylight"),
            Self::BoomHeight { .. } => t!("farm-boom-height"),
            Self::GroundSpeed { .. } => t!("farm-ground-speed"),
            Self::CleanOut { .. } => t!("farm-says-cleaning"),
            Self::Temperature { .. } => t!("farm-says-temperature"),
            Self::Dates { .. } => t!("farm-says-dates"),
            Self::Controls { .. } => t!("farm-says-controls"),
            Self::Buffer { .. } => t!("farm-says-buffer"),
            Self::RainFree { .. } => t!("farm-says-rain-free"),
            Self::Adjuvant { .. } => t!("farm-says-adjuvant"),
            Self::MixingOrder { .. } => t!("farm-mixing-order"),
            Self::NotWith { .. } => t!("farm-not-together-with"),
            Self::Wear { .. } => t!("farm-says-wear"),
            Self::Handling { .. } => t!("farm-when-mixing"),
            Self::Caution { .. } => t!("farm-says-caution"),
        }
    }
}
