//! The farm's own limits, where no label and no law says more. Left empty they are those of the table
//! `assets/weather-limits.csv`, each with its source.

use serde::{Deserialize, Serialize};

use crate::quantity::{AsTyped, Length, Share, Speed, Temperature, TemperatureSpan};

/// What this farm keeps to.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Practice {
    /// Least wind: in still air spray hangs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub least_wind: Option<AsTyped<Speed>>,
    /// Strongest mean wind.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub most_wind: Option<AsTyped<Speed>>,
    /// Strongest gust.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub most_gust: Option<AsTyped<Speed>>,
    /// Delta T from which spraying is good.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub least_delta_t: Option<AsTyped<TemperatureSpan>>,
    /// Delta T up to which spraying is good.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub good_delta_t: Option<AsTyped<TemperatureSpan>>,
    /// Delta T above which not to spray.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub most_delta_t: Option<AsTyped<TemperatureSpan>>,
    /// Coldest air.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub least_air: Option<AsTyped<Temperature>>,
    /// Warmest air.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub most_air: Option<AsTyped<Temperature>>,
    /// Chance of rain from which an hour counts as wet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wet_chance: Option<AsTyped<Share>>,
    /// A neighbour nearer than this is not to lie down the wind, though no label or law names it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub near: Option<AsTyped<Length>>,
    /// The area from a field's boundary and the stated one may differ by so much of the stated one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub area_differs: Option<AsTyped<Share>>,
    /// Days after which a calibration is old; where it is not typed, at the end of its season.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub calibration_days: Option<u32>,
}
