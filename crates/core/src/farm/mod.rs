//! The document: one [`Farm`], plain data, saved as it stands.
//!
//! It holds decisions and facts and nothing derived, with two exceptions that must not change afterwards: an issued load
//! card and a record. Quantities are kept as typed. Collections keep the order the user gave them; links are ids.

pub mod advice;
pub mod aim;
pub mod calibration;
pub mod card;
pub mod crop;
pub mod day;
pub mod differs;
pub mod field;
pub mod forecast;
pub mod formulation;
pub mod id;
pub mod keeping;
pub mod label;
pub mod law;
pub mod movement;
mod nouns;
pub mod nozzle;
pub mod outcome;
pub mod pass;
pub mod practice;
pub mod product;
pub mod record;
pub mod rig;
pub mod seal;
pub mod shape;
pub mod sun_time;
pub mod surrounding;
pub mod text;
mod unique;
pub mod water;

use serde::{Deserialize, Serialize};

pub use advice::Advice;
pub use aim::{Aim, Apart};
pub use calibration::{Calibration, Test};
pub use card::{Card, CardContent, ShortRow};
pub use day::{Day, Road};
pub use field::{AreaFrom, Field, Neighbour, Resistant};
pub use forecast::{FileLayout, Forecast, Holds, Hour, Take};
pub use formulation::Formulation;
pub use id::Id;
pub use keeping::{Keeping, OwnElement};
pub use label::{MonthDay, Period, Says, Stance, Statement, When};
pub use law::Law;
pub use movement::{Empties, Moved, Movement};
pub use nouns::Nouns;
pub use nozzle::{ClassAt, Layout, NozzleSet, Rated};
pub use outcome::{ClosedSeason, Effect, Outcome, Plot, Trial};
pub use pass::{CarrierKind, Fills, Growing, InTank, Lean, Line, LoadSplit, Pass};
pub use practice::Practice;
pub use product::{Active, AdjuvantClass, Charge, Container, ContainerKind, Grade, Product, ProductKind, Surfactant};
pub use record::{Customer, Expected, Left, Reading, Record, RecordActive, RecordField, RecordLine};
pub use rig::{Droplets, Pulse, Rig};
pub use seal::{Amendment, Change, Said, Signature};
pub use shape::{Shape, ShapeError};
pub use sun_time::SunTime;
pub use surrounding::{Background, Gateway, Surrounding, SurroundingKind};
pub use text::Text;
pub use water::{Clarity, Water};

use crate::language::{Language, t};
use crate::quantity::{Area, AsTyped, Length, Mass, Units, Volume};

/// The format version this program writes.
pub const FORMAT: u32 = 1;

/// The whole document.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Farm {
    /// Version of the file format, [`FORMAT`].
    pub format: u32,
    /// What the farm is called on its cards.
    pub name: String,
    /// The units its people read.
    #[serde(default)]
    pub units: Units,
    /// Sign of the currency, put before an amount.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub currency: String,
    /// Where it lies.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub place: Option<Place>,
    /// The paper its cards are printed on.
    #[serde(default, skip_serializing_if = "is_default")]
    pub paper: Paper,
    /// The languages of its load cards, the first on top; English where none is named.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub card_languages: Vec<Language>,
    /// The finest marks that are measured with.
    #[serde(default, skip_serializing_if = "is_default")]
    pub measuring: Measuring,
    /// Telephone lines for an emergency, printed on the cards: one a line.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub emergency: Vec<String>,
    /// Pieces of ground.
    #[serde(default)]
    pub fields: Nouns<Field>,
    /// What lies among the fields and must not be hit, where it is drawn.
    #[serde(default, skip_serializing_if = "Nouns::is_empty")]
    pub surroundings: Nouns<Surrounding>,
    /// The picture under the map.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub background: Option<Background>,
    /// Sources of carrier water.
    #[serde(default)]
    pub waters: Nouns<Water>,
    /// Sprayers.
    #[serde(default)]
    pub rigs: Nouns<Rig>,
    /// Pesticides, adjuvants, conditioners, feeds.
    #[serde(default)]
    pub products: Nouns<Product>,
    /// Local advice.
    #[serde(default, skip_serializing_if = "Nouns::is_empty")]
    pub advice: Nouns<Advice>,
    /// Rules of law.
    #[serde(default, skip_serializing_if = "Nouns::is_empty")]
    pub laws: Nouns<Law>,
    /// What the farm keeps to where no label and no law says more.
    #[serde(default, skip_serializing_if = "is_default")]
    pub practice: Practice,
    /// The weather that is expected.
    #[serde(default, skip_serializing_if = "is_default")]
    pub forecast: Forecast,
    /// What load sizes aim at, the weightiest first; empty for [`Aim::ALL`].
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub aims: Vec<Aim>,
    /// What keeps fields from sharing a load; none typed for [`Apart::ALL`].
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub apart: Option<Vec<Apart>>,
    /// How far apart the rows of ground lie on a card that tell what a shorter load takes.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub short_step: Option<AsTyped<Area>>,
    /// Roads between fields.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub roads: Vec<Road>,
    /// What is decided about days, by date such as "2031-06-12".
    #[serde(default, skip_serializing_if = "Nouns::is_empty")]
    pub days: Nouns<Day>,
    /// Planned trips.
    #[serde(default)]
    pub passes: Nouns<Pass>,
    /// What was really sprayed.
    #[serde(default)]
    pub records: Nouns<Record>,
    /// How records are kept.
    #[serde(default, skip_serializing_if = "is_default")]
    pub keeping: Keeping,
    /// What came into the shed and went out of it beside what was sprayed, in the order in which it was written down.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub movements: Vec<Movement>,
    /// Treatments beside one another.
    #[serde(default, skip_serializing_if = "Nouns::is_empty")]
    pub trials: Nouns<Trial>,
    /// Seasons that are closed, by year such as "2031".
    #[serde(default, skip_serializing_if = "Nouns::is_empty")]
    pub closed: Nouns<ClosedSeason>,
    /// Load cards as they were printed, by card number.
    #[serde(default)]
    pub cards: Nouns<Card>,
}

impl Farm {
    /// Whether two passes are one application in parts: one of them sprays the rest of the other, or both of a third.
    pub fn is_one_application(&self, a: &str, b: &str) -> bool {
        a == b || self.first_part(a) == self.first_part(b)
    }

    /// The pass of which a pass sprays the rest, or the rest of the rest.
    pub(crate) fn first_part<'a>(&'a self, id: &'a str) -> &'a str {
        let mut first = id;
        // A farm cannot have a longer chain, and one that closes on itself ends here too.
        for _ in 0..self.passes.len() {
            match self.passes.get(first) {
                Some(pass) if !pass.rest_of.is_empty() => first = &pass.rest_of,
                _ => break,
            }
        }
        first
    }

    /// A farm with nothing on it yet.
    pub fn new(name: &str) -> Self {
        Self {
            format: FORMAT,
            name: name.to_owned(),
            units: Units::default(),
            currency: "$".to_owned(),
            place: None,
            paper: Paper::default(),
            card_languages: Vec::new(),
            measuring: Measuring::default(),
            emergency: Vec::new(),
            fields: Nouns::new(),
            surroundings: Nouns::new(),
            background: None,
            waters: Nouns::new(),
            rigs: Nouns::new(),
            products: Nouns::new(),
            advice: Nouns::new(),
            laws: Nouns::new(),
            practice: Practice::default(),
            forecast: Forecast::default(),
            aims: Vec::new(),
            apart: None,
            short_step: None,
            roads: Vec::new(),
            days: Nouns::new(),
            passes: Nouns::new(),
            records: Nouns::new(),
            keeping: Keeping::default(),
            movements: Vec::new(),
            trials: Nouns::new(),
            closed: Nouns::new(),
            cards: Nouns::new(),
        }
    }
}

/// Where the farm lies, for its clock.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Place {
    /// Degrees north, as typed.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub latitude: String,
    /// Degrees east, as typed.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub longitude: String,
    /// Height above the sea, for the pressure of the air.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub altitude: Option<AsTyped<Length>>,
    /// IANA time zone, such as "America/Chicago".
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub zone: String,
}

impl Place {
    /// Where it lies on the globe.
    ///
    /// # Errors
    /// What is missing or wrong, and what to do.
    ///
    /// # Examples
    /// ```
    /// use tankard_core::farm::Place;
    /// let place = Place { latitude: "41.2".into(), longitude: "96.4 W".into(), ..Place::default() };
    /// assert_eq!(place.position().map(|position| position.longitude.to_degrees()), Ok(-96.4));
    /// ```
    pub fn position(&self) -> Result<Position, String> {
        if self.latitude.trim().is_empty() || self.longitude.trim().is_empty() {
            return Err(t!("farm-where-the-farm-lies-is-not").to_owned());
        }
        let latitude = degrees(&self.latitude, 'n', 's').and_then(Latitude::from_degrees).ok_or_else(|| {
            let is_swapped = degrees(&self.latitude, 'e', 'w').and_then(Longitude::from_degrees).is_some()
                && degrees(&self.longitude, 'n', 's').and_then(Latitude::from_degrees).is_some();
            if is_swapped {
                return t!(
                    "farm-is-no-latitude-and-may-be",
                    latitude = self.latitude.trim(),
                    longitude = self.longitude.trim()
                );
            }
            t!("farm-is-no-latitude-write-degrees-from", latitude = self.latitude.trim())
        })?;
        let longitude = degrees(&self.longitude, 'e', 'w')
            .and_then(Longitude::from_degrees)
            .ok_or_else(|| t!("farm-is-no-longitude-write-degrees-from", longitude = self.longitude.trim()))?;
        Ok(Position { latitude, longitude })
    }
}

/// Degrees as people write them: "41.2", "41,2°", "96.4 W".
fn degrees(text: &str, plus: char, minus: char) -> Option<f64> {
    let (value, rest) = crate::quantity::number::take(text).ok()?;
    let rest: String = rest.to_lowercase().chars().filter(|letter| !letter.is_whitespace() && *letter != '°').collect();
    match rest.as_str() {
        "" => Some(value),
        side if side == plus.to_string() && value >= 0.0 => Some(value),
        side if side == minus.to_string() && value >= 0.0 => Some(-value),
        _ => None,
    }
}

/// A point on the globe.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Position {
    /// North or south.
    pub latitude: Latitude,
    /// East or west.
    pub longitude: Longitude,
}

/// A latitude: degrees north of the equator, -90 to 90.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Latitude(f64);

impl Latitude {
    /// From degrees north; `None` outside -90 to 90.
    pub fn from_degrees(degrees: f64) -> Option<Self> {
        (-90.0..=90.0).contains(&degrees).then_some(Self(degrees))
    }

    /// Degrees north.
    pub const fn to_degrees(self) -> f64 {
        self.0
    }
}

/// A longitude: degrees east of Greenwich, -180 to 180.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Longitude(f64);

impl Longitude {
    /// From degrees east; `None` outside -180 to 180.
    pub fn from_degrees(degrees: f64) -> Option<Self> {
        (-180.0..=180.0).contains(&degrees).then_some(Self(degrees))
    }

    /// Degrees east.
    pub const fn to_degrees(self) -> f64 {
        self.0
    }
}

/// Paper sizes.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub enum Paper {
    /// US Letter.
    #[default]
    Letter,
    /// ISO A4.
    A4,
}

/// The finest marks of the measuring jug and the scale. Left empty they are usual ones of the farm's units.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Measuring {
    /// For liquids.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub liquid: Option<AsTyped<Volume>>,
    /// For dry products.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub dry: Option<AsTyped<Mass>>,
}

impl Measuring {
    /// The finest mark for liquids: as typed, or a fluid ounce, or 10 mL.
    pub fn liquid(&self, units: Units) -> Volume {
        self.liquid.as_ref().map_or(
            match units {
                Units::UsCustomary => Volume::from_us_fluid_ounces(1.0),
                Units::Imperial => Volume::from_imperial_fluid_ounces(1.0),
                Units::Metric => Volume::from_litres(0.01),
            },
            AsTyped::value,
        )
    }

    /// The finest mark for dry products: as typed, or an ounce, or 10 g.
    pub fn dry(&self, units: Units) -> Mass {
        self.dry.as_ref().map_or(
            match units {
                Units::UsCustomary | Units::Imperial => Mass::from_ounces(1.0),
                Units::Metric => Mass::from_grams(10.0),
            },
            AsTyped::value,
        )
    }
}

pub(crate) fn is_default<T: Default + PartialEq>(value: &T) -> bool {
    *value == T::default()
}
