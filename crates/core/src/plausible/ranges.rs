//! What a value lies between wherever it is typed rightly: the rows of `assets/plausible-ranges.csv`. A row names two ranges: outside
//! of the wide one a value is doubted, and only what lies in the narrow one is offered in its place.

use std::sync::LazyLock;

use serde::Deserialize;

use crate::finding::Basis;
use crate::quantity::{
    CarrierRate, Conductivity, Density, Flow, Hardness, Length, MassPerVolume, Pressure, Quantity, Speed, Temperature,
    Volume,
};

/// A row of the table.
#[derive(Clone, Debug, Deserialize)]
pub struct Row {
    /// Of what: "tank", "spacing", "class".
    pub what: String,
    /// Which of these; empty where there is one alone.
    pub of: String,
    /// What is less is doubted.
    pub least: String,
    /// What is more is doubted.
    pub most: String,
    /// What is less is not offered.
    pub likely_least: String,
    /// What is more is not offered.
    pub likely_most: String,
    /// Where that stands.
    pub source: String,
}

impl Row {
    /// On what it rests.
    pub fn basis(&self) -> Basis {
        Basis::of_source(&self.source)
    }

    /// The wide range and the narrow one; `None` where an end cannot be read, which a test forbids.
    pub fn read<Q: Quantity>(&self) -> Option<Ends<Q>> {
        let read = |text: &str| Q::parse(text).ok();
        Some(Ends {
            least: read(&self.least)?,
            most: read(&self.most)?,
            likely_least: read(&self.likely_least)?,
            likely_most: read(&self.likely_most)?,
            basis: self.basis(),
        })
    }
}

/// The two ranges of a row.
#[derive(Clone, Debug, PartialEq)]
pub struct Ends<Q> {
    /// What is less is doubted.
    pub least: Q,
    /// What is more is doubted.
    pub most: Q,
    /// What is less is not offered.
    pub likely_least: Q,
    /// What is more is not offered.
    pub likely_most: Q,
    /// Where that stands.
    pub basis: Basis,
}

impl<Q: PartialOrd> Ends<Q> {
    /// Whether a value is usual.
    pub(crate) fn is_likely(&self, value: &Q) -> bool {
        *value >= self.likely_least && *value <= self.likely_most
    }
}

/// Rows that are read once.
macro_rules! rows {
    ($($(#[$doc:meta])* $name:ident: $kind:ty = $what:literal, $of:literal;)+) => {
        $(
            $(#[$doc])*
            pub(crate) fn $name() -> Option<&'static Ends<$kind>> {
                static ENDS: LazyLock<Option<Ends<$kind>>> = LazyLock::new(|| row($what, $of)?.read());
                ENDS.as_ref()
            }
        )+
    };
}

rows! {
    /// Spray volume of a boom over ground.
    carrier: CarrierRate = "carrier", "boom";
    /// What a tank holds.
    tank: Volume = "tank", "";
    /// How wide a boom is.
    boom: Length = "boom", "";
    /// How far nozzles stand apart.
    spacing: Length = "spacing", "";
    /// How high they stand.
    height: Length = "height", "";
    /// Over ground, while spraying.
    speed: Speed = "speed", "";
    /// In the boom.
    pressure: Pressure = "pressure", "";
    /// Of one nozzle.
    nozzle_flow: Flow = "nozzle flow", "";
    /// Of a liquid product.
    density: Density = "density", "liquid";
    /// Of an active in a liquid product.
    content: MassPerVolume = "content", "liquid";
    /// Of the air that is sprayed in.
    air: Temperature = "air", "";
    /// Of the wind that is sprayed in.
    wind: Speed = "wind", "";
    /// Of water.
    hardness: Hardness = "hardness", "";
    /// Of water.
    conductivity: Conductivity = "conductivity", "";
}

/// The table.
pub fn table() -> &'static [Row] {
    static TABLE: LazyLock<Vec<Row>> = LazyLock::new(|| {
        crate::table::read(include_str!("../../../../assets/plausible-ranges.csv")).unwrap_or_default()
    });
    &TABLE
}

/// A row of the table.
pub(crate) fn row(what: &str, of: &str) -> Option<&'static Row> {
    table().iter().find(|row| row.what == what && row.of == of)
}

#[cfg(test)]
mod tests {
    use super::table;
    use crate::quantity::{
        CarrierRate, Conductivity, Density, Flow, Hardness, Length, MassPerVolume, Pressure, Rate, Speed, Temperature,
        Volume,
    };

    #[test]
    fn every_row_reads_and_holds_the_narrow_in_the_wide() {
        for row in table() {
            macro_rules! ends {
                ($kind:ty, $to:ident) => {{
                    let ends = row.read::<$kind>().unwrap_or_else(|| panic!("{row:?}"));
                    let size = |end: $kind| end.$to();
                    assert!(size(ends.least) <= size(ends.likely_least), "{row:?}");
                    assert!(size(ends.likely_least) < size(ends.likely_most), "{row:?}");
                    assert!(size(ends.likely_most) <= size(ends.most), "{row:?}");
                }};
            }
            match row.what.as_str() {
                "class" => assert!(row.read::<Rate>().is_some(), "{row:?}"),
                "carrier" => ends!(CarrierRate, to_litres_per_hectare),
                "tank" => ends!(Volume, to_litres),
                "boom" | "spacing" | "height" => ends!(Length, to_metres),
                "speed" | "wind" => ends!(Speed, to_kilometres_per_hour),
                "pressure" => ends!(Pressure, to_bar),
                "nozzle flow" => ends!(Flow, to_litres_per_minute),
                "density" => ends!(Density, to_kilograms_per_litre),
                "content" => ends!(MassPerVolume, to_grams_per_litre),
                "air" => ends!(Temperature, to_celsius),
                "hardness" => ends!(Hardness, to_ppm),
                "conductivity" => ends!(Conductivity, to_microsiemens_per_centimetre),
                other => panic!("{other}"),
            }
        }
    }
}
