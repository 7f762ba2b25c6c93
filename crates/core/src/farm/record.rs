//! A record: what was really applied. It repeats what it needs from the plan, so that it stays true when a product or a
//! field is changed afterwards.

use indexmap::IndexMap;
use jiff::civil::{Date, DateTime, Time};
use serde::{Deserialize, Serialize};

use super::{Droplets, Id};
use crate::quantity::{ActiveBasis, Amount, Area, AsTyped, Mass, Share, Speed, Temperature, Volume};

/// What was really sprayed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Record {
    /// The pass it was planned as, if it was.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pass: Option<Id>,
    /// What the pass was called.
    pub name: String,
    /// The day.
    pub date: Date,
    /// When spraying began.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub start: Option<Time>,
    /// When it ended.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub end: Option<Time>,
    /// The ground covered, by field.
    #[serde(deserialize_with = "super::unique::map")]
    pub fields: IndexMap<Id, RecordField>,
    /// Spray volume used.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub volume: Option<AsTyped<Volume>>,
    /// What went out, product by product.
    pub lines: Vec<RecordLine>,
    /// Name of the water.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub water: String,
    /// Name of the rig.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub rig: String,
    /// Wind at boom height.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wind: Option<AsTyped<Speed>>,
    /// Direction from which it blew.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub wind_from: String,
    /// Strongest gust.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gust: Option<AsTyped<Speed>>,
    /// Air temperature.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub temperature: Option<AsTyped<Temperature>>,
    /// Relative humidity.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub humidity: Option<AsTyped<Share>>,
    /// Droplet class.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub droplets: Option<Droplets>,
    /// What the forecast had for the time, kept when the record was made.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub expected: Option<Expected>,
    /// Who sprayed.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub operator: String,
    /// Certificate number of the applicator.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub certificate: String,
    /// Anything else.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
}

/// The weather that was expected when a record was made.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Expected {
    /// From which forecast, and for which hours.
    pub source: String,
    /// Mean wind: the weakest and the strongest hour.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wind: Option<(AsTyped<Speed>, AsTyped<Speed>)>,
    /// Strongest gust.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gust: Option<AsTyped<Speed>>,
    /// Direction from which it was to blow.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub wind_from: String,
    /// Air temperature: the coldest and the warmest hour.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub temperature: Option<(AsTyped<Temperature>, AsTyped<Temperature>)>,
    /// Relative humidity: the driest and the dampest hour.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub humidity: Option<(AsTyped<Share>, AsTyped<Share>)>,
}

/// A field as it was that day.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RecordField {
    /// Its name then.
    pub name: String,
    /// The area sprayed.
    pub area: AsTyped<Area>,
    /// Its crop.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub crop: String,
    /// Its stage.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub stage: String,
}

/// A product as it was used.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RecordLine {
    /// The product.
    pub product: Id,
    /// Its name then.
    pub name: String,
    /// Its registration number then.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub registration: String,
    /// How much of it went out in all.
    pub amount: AsTyped<Amount>,
    /// The actives in that amount.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub actives: Vec<RecordActive>,
}

/// An active in a recorded line.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RecordActive {
    /// ISO common name.
    pub name: String,
    /// Resistance group.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub group: String,
    /// How it is counted.
    pub basis: ActiveBasis,
    /// How much of it.
    pub mass: AsTyped<Mass>,
}

impl Record {
    /// A record of a day with nothing in it yet.
    pub fn new(name: &str, date: Date) -> Self {
        Self {
            pass: None,
            name: name.to_owned(),
            date,
            start: None,
            end: None,
            fields: IndexMap::new(),
            volume: None,
            lines: Vec::new(),
            water: String::new(),
            rig: String::new(),
            wind: None,
            wind_from: String::new(),
            gust: None,
            temperature: None,
            humidity: None,
            droplets: None,
            expected: None,
            operator: String::new(),
            certificate: String::new(),
            note: String::new(),
        }
    }

    /// When it ended, where that is typed; one that ends before it begins ended on the next day.
    pub fn ended(&self) -> Option<DateTime> {
        let end = self.end?;
        let past_midnight = self.start.is_some_and(|start| end < start);
        Some(if past_midnight { self.date.tomorrow().ok()? } else { self.date }.to_datetime(end))
    }

    /// The ground covered in all.
    pub fn area(&self) -> Area {
        self.fields.values().map(|field| field.area.value()).sum()
    }
}
