//! A record: what was really applied. It repeats what it needs from the plan, so that it stays true when a product or a
//! field is changed afterwards.
//!
//! What is signed is the record without its [`Record::signed`], [`Record::amendments`] and [`Record::outcomes`]: a rating comes
//! weeks later and changes nothing of what was sprayed.

use indexmap::IndexMap;
use jiff::civil::{Date, DateTime, Time};
use serde::{Deserialize, Serialize};

use super::{AdjuvantClass, Amendment, Droplets, Id, Outcome, ProductKind, Signature, Text, is_default};
use crate::quantity::{
    ActiveBasis, Amount, Area, AsTyped, Length, Mass, Pressure, Price, Share, Speed, Temperature, Volume,
};

/// What was really sprayed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Record {
    /// The pass it was planned as, if it was.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pass: Option<Text>,
    /// What the pass was called.
    pub name: Text,
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
    /// Spray volume that was planned.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub planned: Option<AsTyped<Volume>>,
    /// How many loads were sprayed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub loads: Option<u32>,
    /// What was left over.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub left: Option<Left>,
    /// What went out, product by product.
    pub lines: Vec<RecordLine>,
    /// The weeds or pests it was meant for, by name.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub weeds: Vec<Text>,
    /// Name of the water.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub water: Text,
    /// Name of the rig.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub rig: Text,
    /// How it was put out, such as "ground boom" or "hand gun"; empty for a ground boom.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub method: Text,
    /// The nozzles, as their maker calls them.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub nozzles: Text,
    /// Pressure at the boom.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pressure: Option<AsTyped<Pressure>>,
    /// Speed over ground.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub speed: Option<AsTyped<Speed>>,
    /// Height of the nozzles above what was sprayed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub height: Option<AsTyped<Length>>,
    /// How the rig was cleaned out before and after.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub clean_out: Text,
    /// Wind at boom height, at the start.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wind: Option<AsTyped<Speed>>,
    /// Direction from which it blew.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub wind_from: Text,
    /// Strongest gust.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gust: Option<AsTyped<Speed>>,
    /// Air temperature.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub temperature: Option<AsTyped<Temperature>>,
    /// Relative humidity.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub humidity: Option<AsTyped<Share>>,
    /// What was measured later: at each change worth noting, and at the end.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub readings: Vec<Reading>,
    /// Droplet class.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub droplets: Option<Droplets>,
    /// What the forecast had for the time, kept when the record was made.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub expected: Option<Box<Expected>>,
    /// Who sprayed.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub operator: Text,
    /// Certificate number of the applicator.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub certificate: Text,
    /// Who supervised, where the one who sprayed is not certified.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub supervisor: Text,
    /// Others who worked on it, such as who mixed and loaded.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub helpers: Text,
    /// For whom it was sprayed, where it was not for the farm itself.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub customer: Option<Box<Customer>>,
    /// What else a place or the farm asks for, by the key of the record profile's element or of the farm's own.
    #[serde(default, skip_serializing_if = "IndexMap::is_empty", deserialize_with = "super::unique::map")]
    pub more: IndexMap<Id, String>,
    /// When the record was made, by the farm's clock.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub made: Option<DateTime>,
    /// Anything else.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub note: Text,
    /// Who signed it. From then on it is amended, not edited.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub signed: Option<Box<Signature>>,
    /// What was changed after it was signed, in order.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub amendments: Vec<Amendment>,
    /// What came of it: ratings, photos, notes.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub outcomes: Vec<Outcome>,
}

/// Spray that was left over.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Left {
    /// How much.
    pub volume: AsTyped<Volume>,
    /// Where it went, in words: "thinned and sprayed out on the first field".
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub went: Text,
}

/// A reading of the weather after the first.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Reading {
    /// When.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub at: Option<Time>,
    /// Wind at boom height.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wind: Option<AsTyped<Speed>>,
    /// Direction from which it blew.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub wind_from: Text,
    /// Strongest gust.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gust: Option<AsTyped<Speed>>,
    /// Air temperature.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub temperature: Option<AsTyped<Temperature>>,
    /// Relative humidity.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub humidity: Option<AsTyped<Share>>,
}

/// For whom it was sprayed.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Customer {
    /// Name.
    pub name: Text,
    /// Address.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub address: Text,
    /// Telephone.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub phone: Text,
    /// The day on which a copy was handed over.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub copied: Option<Date>,
}

/// The weather that was expected when a record was made.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Expected {
    /// From which forecast, and for which hours.
    pub source: Text,
    /// Mean wind: the weakest and the strongest hour.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wind: Option<(AsTyped<Speed>, AsTyped<Speed>)>,
    /// Strongest gust.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gust: Option<AsTyped<Speed>>,
    /// Direction from which it was to blow.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub wind_from: Text,
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
    pub name: Text,
    /// The area sprayed.
    pub area: AsTyped<Area>,
    /// Its crop.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub crop: Text,
    /// Its stage.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub stage: Text,
    /// The area that was planned.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub planned: Option<AsTyped<Area>>,
    /// Which part of it, in words: "spot", "north strip"; empty for all of it.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub part: Text,
    /// Its variety.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub variety: Text,
    /// Day of planting.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub planted: Option<Date>,
    /// Where it lies: county, township, range and section, a legal description, or latitude and longitude.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub location: Text,
    /// The reference of the parcel in the aid claim.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub parcel: Text,
    /// The EPPO code of the crop.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub crop_code: Text,
}

impl RecordField {
    /// A field with an area, and nothing else known.
    pub fn new(name: &str, area: AsTyped<Area>) -> Self {
        Self {
            name: name.into(),
            area,
            crop: Text::new(),
            stage: Text::new(),
            planned: None,
            part: Text::new(),
            variety: Text::new(),
            planted: None,
            location: Text::new(),
            parcel: Text::new(),
            crop_code: Text::new(),
        }
    }
}

/// A product as it was used.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RecordLine {
    /// The product.
    pub product: Text,
    /// Its name then.
    pub name: Text,
    /// Its registration number then.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub registration: Text,
    /// How much of it went out in all.
    pub amount: AsTyped<Amount>,
    /// How much was planned.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub planned: Option<AsTyped<Amount>>,
    /// The lots it came from, as printed on the containers, apart by commas.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub lot: Text,
    /// Its price then.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub price: Option<AsTyped<Price>>,
    /// What it was for.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub kind: Option<ProductKind>,
    /// Its adjuvant class.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub class: Option<AdjuvantClass>,
    /// Whether only a certified applicator might use it.
    #[serde(default, skip_serializing_if = "is_default")]
    pub restricted: bool,
    /// Hours before people might enter, by its label then.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub entry: Option<u32>,
    /// Days before harvest, by its label then.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub harvest: Option<u32>,
    /// The actives in that amount.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub actives: Vec<RecordActive>,
}

impl RecordLine {
    /// An amount of a product, and nothing else known.
    pub fn new(product: &str, name: &str, amount: AsTyped<Amount>) -> Self {
        Self {
            product: product.into(),
            name: name.into(),
            registration: Text::new(),
            amount,
            planned: None,
            lot: Text::new(),
            price: None,
            kind: None,
            class: None,
            restricted: false,
            entry: None,
            harvest: None,
            actives: Vec::new(),
        }
    }
}

/// An active in a recorded line.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RecordActive {
    /// ISO common name.
    pub name: Text,
    /// Resistance group.
    #[serde(default, skip_serializing_if = "Text::is_empty")]
    pub group: Text,
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
            name: name.into(),
            date,
            start: None,
            end: None,
            fields: IndexMap::new(),
            volume: None,
            planned: None,
            loads: None,
            left: None,
            lines: Vec::new(),
            weeds: Vec::new(),
            water: Text::new(),
            rig: Text::new(),
            method: Text::new(),
            nozzles: Text::new(),
            pressure: None,
            speed: None,
            height: None,
            clean_out: Text::new(),
            wind: None,
            wind_from: Text::new(),
            gust: None,
            temperature: None,
            humidity: None,
            readings: Vec::new(),
            droplets: None,
            expected: None,
            operator: Text::new(),
            certificate: Text::new(),
            supervisor: Text::new(),
            helpers: Text::new(),
            customer: None,
            more: IndexMap::new(),
            made: None,
            note: Text::new(),
            signed: None,
            amendments: Vec::new(),
            outcomes: Vec::new(),
        }
    }

    /// Gives back the room that reading a record reserved beyond need: with a hundred thousand of them it is a third of the memory.
    pub fn give_back_room(&mut self) {
        self.fields.shrink_to_fit();
        self.lines.shrink_to_fit();
        for line in &mut self.lines {
            line.actives.shrink_to_fit();
        }
        self.weeds.shrink_to_fit();
        self.readings.shrink_to_fit();
        self.outcomes.shrink_to_fit();
    }

    /// When it ended, where that is typed; one that ends before it begins ended on the next day.
    pub fn ended(&self) -> Option<DateTime> {
        let end = self.end?;
        let past_midnight = self.start.is_some_and(|start| end < start);
        Some(if past_midnight { self.date.tomorrow().ok()? } else { self.date }.to_datetime(end))
    }

    /// What was measured: at the start, and then the later readings in their order.
    pub fn all_readings(&self) -> impl Iterator<Item = Reading> {
        let first = Reading {
            at: self.start,
            wind: self.wind.clone(),
            wind_from: self.wind_from.clone(),
            gust: self.gust.clone(),
            temperature: self.temperature.clone(),
            humidity: self.humidity.clone(),
        };
        std::iter::once(first).chain(self.readings.iter().cloned())
    }

    /// The ground covered in all.
    pub fn area(&self) -> Area {
        self.fields.values().map(|field| field.area.value()).sum()
    }
}
