//! Of which records a profile speaks, and when it asks for an element.

use serde::Deserialize;

use super::crop_code;
use crate::farm::crop::words;
use crate::farm::{Farm, Product, Record, RecordField, RecordLine, Says, Statement, When};
use crate::language::t;
use crate::mix::actives;
use crate::quantity::Area;
use crate::season::worker_protection::{entry, is_pesticide};

/// Of which records a profile speaks.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(try_from = "String")]
pub enum Scope {
    /// All of them.
    Every,
    /// Those of a pesticide.
    Pesticide,
    /// Those of a product that only a certified applicator may use.
    Restricted,
    /// Those of an active, on one of these crops where there are any.
    Active {
        /// ISO common name.
        name: String,
        /// The crops, by their names; empty for all.
        crops: Vec<String>,
    },
}

impl TryFrom<String> for Scope {
    type Error = String;

    fn try_from(text: String) -> Result<Self, String> {
        match text.as_str() {
            "every" => Ok(Self::Every),
            "pesticide" => Ok(Self::Pesticide),
            "restricted" => Ok(Self::Restricted),
            _ => text
                .strip_prefix("active:")
                .map(|text| {
                    let (name, crops) = text.split_once(" on ").unwrap_or((text, ""));
                    let crops = crops.split('|').filter(|crop| !crop.is_empty()).map(str::to_owned).collect();
                    Self::Active { name: name.to_owned(), crops }
                })
                .ok_or_else(|| t!("season-names-no-records", text = text)),
        }
    }
}

impl Scope {
    /// The lines of a record of which it speaks; `None` where it does not speak of the record. A record without any line may
    /// become one of which it speaks.
    pub(super) fn lines<'a>(&self, farm: &Farm, record: &'a Record) -> Option<Vec<&'a RecordLine>> {
        let speaks = |line: &&RecordLine| match self {
            Self::Every => true,
            Self::Pesticide => is_pesticide(farm, line),
            Self::Restricted => is_restricted(farm, line),
            Self::Active { name, .. } => line.actives.iter().any(|active| actives::same(name, &active.name)),
        };
        if matches!(self, Self::Active { crops, .. } if !stood(crops, record)) {
            return None;
        }
        let lines: Vec<&RecordLine> = record.lines.iter().filter(speaks).collect();
        let may_come = record.lines.is_empty() && !matches!(self, Self::Active { .. });
        (!lines.is_empty() || may_come || *self == Self::Every).then_some(lines)
    }
}

/// Whether one of these crops stood on a field of the record, by its EPPO code or by its name; a field whose crop is not written down
/// may have had any.
fn stood(crops: &[String], record: &Record) -> bool {
    let is = |field: &RecordField, crop: &String| {
        let code = crop_code(crop).map(|crop| crop.code.as_str());
        let own = crop_code(&field.crop).map(|crop| crop.code.as_str());
        let named = words(&field.crop).iter().any(|word| word.starts_with(crop.as_str()));
        named || (code.is_some() && (own == code || code == Some(field.crop_code.trim())))
    };
    let may = |field: &RecordField| {
        let silent = field.crop.trim().is_empty() && field.crop_code.trim().is_empty();
        silent || crops.iter().any(|crop| is(field, crop))
    };
    crops.is_empty() || record.fields.is_empty() || record.fields.values().any(may)
}

/// Whether only a certified applicator might use it, by the record or, in one made before it was kept there, by the shed.
pub(super) fn is_restricted(farm: &Farm, line: &RecordLine) -> bool {
    line.restricted || farm.products.get(&line.product).is_some_and(|product| product.restricted)
}

/// When an element is asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Deserialize)]
pub enum Asked {
    /// Always.
    #[serde(rename = "always")]
    Always,
    /// Unless it was a spot under 1/10 acre.
    #[serde(rename = "unless a spot")]
    UnlessSpot,
    /// Where a restricted product went out.
    #[serde(rename = "restricted")]
    Restricted,
    /// Where it was sprayed for a customer.
    #[serde(rename = "customer")]
    Customer,
    /// Where somebody supervised.
    #[serde(rename = "supervised")]
    Supervised,
    /// Where a product has a time before people may enter, or where that is not known.
    #[serde(rename = "re-entry time")]
    ReEntry,
    /// Where a label limits the time of day.
    #[serde(rename = "label limits the time")]
    TimeLimited,
    /// Where a label limits the stage of the crop.
    #[serde(rename = "label limits the stage")]
    StageLimited,
    /// Where a label limits the temperature.
    #[serde(rename = "label limits the temperature")]
    TemperatureLimited,
    /// Where a label limits the humidity.
    #[serde(rename = "label limits the humidity")]
    HumidityLimited,
    /// Where a label names hours without rain.
    #[serde(rename = "label limits the rain")]
    RainLimited,
    /// Where weather was measured later than at the start.
    #[serde(rename = "later readings")]
    LaterReadings,
}

impl Asked {
    /// Whether it is asked for in a record, of whose lines the profile speaks of some. A label that is not in the shed any more
    /// may have limited anything.
    pub(super) fn holds(self, farm: &Farm, record: &Record, lines: &[&RecordLine]) -> bool {
        let label = |limits: fn(&Statement) -> bool| {
            let product = |line: &&RecordLine| farm.products.get(&line.product);
            let limited = |product: Option<&Product>| product.is_none_or(|product| product.label.iter().any(limits));
            lines.iter().any(|line| limited(product(line)))
        };
        match self {
            Self::Always => true,
            Self::UnlessSpot => !is_spot(record),
            Self::Restricted => record.lines.iter().any(|line| is_restricted(farm, line)),
            Self::Customer => record.customer.is_some(),
            Self::Supervised => !record.supervisor.trim().is_empty(),
            Self::ReEntry => entry(farm, record).binds(),
            Self::TimeLimited => label(|statement| matches!(statement.says, Says::Daylight { .. })),
            Self::StageLimited => {
                label(|statement| !statement.from_stage.trim().is_empty() || !statement.to_stage.trim().is_empty())
            }
            Self::TemperatureLimited => label(|statement| {
                matches!(statement.says, Says::Temperature { .. } | Says::DeltaT { .. })
                    || statement.when.iter().any(|when| matches!(when, When::WarmerThan(_) | When::ColderThan(_)))
            }),
            Self::RainLimited => label(|statement| matches!(statement.says, Says::RainFree { .. })),
            Self::LaterReadings => !record.readings.is_empty(),
            Self::HumidityLimited => {
                label(|statement| matches!(statement.says, Says::Humidity { .. } | Says::DeltaT { .. }))
            }
        }
    }
}

/// Whether all of it was a spot: less than 1/10 acre in all, and every field says "spot" (Minnesota Department of Agriculture,
/// private applicator recordkeeping, quoting the USDA).
pub(super) fn is_spot(record: &Record) -> bool {
    Area::from_acres(0.1).exceeds(record.area())
        && !record.fields.is_empty()
        && record.fields.values().all(|field| field.part.to_lowercase().contains("spot"))
}
