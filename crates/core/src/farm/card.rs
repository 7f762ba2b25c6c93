//! An issued load card: what was printed, kept so that a reprint is identical.
//!
//! Everything on the page stands here as it was printed, text for text. The paper room lays it out and adds nothing.

use jiff::civil::DateTime;
use serde::{Deserialize, Serialize};

use super::{Id, Paper};
use crate::language::Language;

/// A card that was handed out.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Card {
    /// The pass it belongs to.
    pub pass: Id,
    /// When it was issued, by the farm's clock.
    pub issued: DateTime,
    /// What stood on it.
    pub content: CardContent,
}

/// What stands on a card, apart from its number and the time of issue.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CardContent {
    /// Paper size.
    pub paper: Paper,
    /// The languages it speaks, the first on top; English where none is named.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub languages: Vec<Language>,
    /// The farm.
    pub farm: String,
    /// The pass.
    pub pass: String,
    /// The day, in words.
    pub date: String,
    /// Which load this is, from 1.
    pub load: u32,
    /// How many there are.
    pub of: u32,
    /// The fields this load covers: name, and area with a remark such as "5.4 of 96.0 ac".
    pub fields: Vec<CardField>,
    /// To which mark the tank is filled in the end.
    pub fill_to: String,
    /// The water it is filled with.
    pub water: String,
    /// The rig's name.
    pub rig: String,
    /// Its settings, one a line.
    pub settings: Vec<String>,
    /// The day of the rig's last calibration, in words.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub calibrated: String,
    /// The span of hours in which it may be sprayed, such as "05:40 and 08:50".
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub spray_between: String,
    /// The limits on the weather of the day, each with where it comes from; on cards issued before `usual` was told apart, all.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub limits: Vec<String>,
    /// What is usual beyond that, which no label and no law of the day says.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub usual: Vec<String>,
    /// The blanks to fill in; empty on cards issued before they could differ.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub blanks: Vec<String>,
    /// What to do, in order.
    pub steps: Vec<CardStep>,
    /// What it takes where less ground is left than planned, from little to much.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub short: Vec<ShortRow>,
    /// The fields drawn small, with what of them stays unsprayed.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub outlines: Vec<CardOutline>,
    /// The tank drawn to scale.
    pub gauge: Gauge,
    /// Protective equipment, one a line with its product.
    pub wear: Vec<String>,
    /// When people may enter again.
    pub keep_out: String,
    /// When the crop may be harvested.
    pub harvest: String,
    /// Cautions of the labels and the usual ones.
    pub cautions: Vec<String>,
    /// Findings that were open when the card was issued, with their level in words.
    pub open_findings: Vec<String>,
    /// Telephone lines for an emergency.
    pub emergency: Vec<String>,
    /// Words for the crew.
    pub note: String,
}

/// A field on a card.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CardField {
    /// Its name.
    pub name: String,
    /// The area in words.
    pub area: String,
}

/// A field drawn small, north at its top. Places are thousandths of the longer side of the drawing, from its upper left corner, written
/// "120,340"; lines and rings are places with spaces between them.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CardOutline {
    /// The field.
    pub field: String,
    /// From west to east, in thousandths of the longer side.
    pub width: i32,
    /// From north to south, in thousandths of the longer side.
    pub height: i32,
    /// The rings of its edge.
    pub edge: Vec<String>,
    /// The rings of what stays unsprayed for strips.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub unsprayed: Vec<String>,
    /// What lies near as lines.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub lines: Vec<String>,
    /// What lies near as rings.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub areas: Vec<String>,
    /// What lies near as places.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub points: Vec<String>,
    /// The ways into it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub gateways: Vec<String>,
    /// The strips in words: "leave 110 ft along Mill creek, west side, 1,320 ft of the edge (Alpha)".
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub strips: Vec<String>,
    /// From where the wind of the pass comes, as typed for it: "NW"; empty where it is not.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub wind: String,
    /// The same in degrees from north.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wind_from: Option<i32>,
}

/// One line to tick.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CardStep {
    /// Its number in the mixing order; none for water.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub number: Option<u32>,
    /// What goes in.
    pub what: String,
    /// How to handle it.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub hint: String,
    /// How much, large.
    pub amount: String,
    /// Its rate over ground, for a product.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub rate: String,
    /// The same in other words: containers, and the exact figure.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub detail: String,
}

/// What a load on less ground takes.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ShortRow {
    /// The ground.
    pub ground: String,
    /// The mark to fill to.
    pub spray: String,
    /// Of each product, in mixing order.
    pub amounts: Vec<String>,
}

/// The sight gauge: the tank upright, to scale, filling in mixing order. Heights are shares of the full tank, 0 to 1.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Gauge {
    /// From the bottom up.
    pub layers: Vec<Layer>,
    /// The volumes at which something happens, from the bottom up.
    pub marks: Vec<Mark>,
}

/// A layer of the gauge.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Layer {
    /// Its number in the mixing order; none for water.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub number: Option<u32>,
    /// What it is: the product's short name, or "water to 600 gal".
    pub label: String,
    /// How much of it, for a product.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub amount: String,
    /// Where it begins.
    pub from: f64,
    /// Where it ends.
    pub to: f64,
}

/// A mark at the side of the gauge.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Mark {
    /// How high.
    pub at: f64,
    /// What the sight gauge reads there.
    pub label: String,
}
