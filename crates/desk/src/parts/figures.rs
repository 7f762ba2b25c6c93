//! Figures of a column: with as many decimals as all others, so that their points stand under each other.

use tankard_core::quantity::{Area, Units};

/// An area in hectares to a hundredth, or in acres to a tenth.
pub fn area(area: Area, units: Units) -> String {
    match units {
        Units::Metric => format!("{:.2} ha", area.to_hectares()),
        Units::UsCustomary | Units::Imperial => format!("{:.1} ac", area.to_acres()),
    }
}
