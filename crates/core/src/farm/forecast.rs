//! A forecast: the weather that is expected, hour by hour, and how the files it comes from are read.

use jiff::civil::{Date, DateTime};
use serde::{Deserialize, Serialize};

use super::is_default;
use crate::language::t;
use crate::quantity::{AsTyped, Bearing, Length, Share, Speed, Temperature};

/// The hours that are expected. A forecast is no measurement.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Forecast {
    /// Where it comes from: the file's name, or "typed by hand".
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub source: String,
    /// When it was read or typed, by the farm's clock.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub read: Option<DateTime>,
    /// The hours, in order.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub hours: Vec<Hour>,
    /// How files are read, remembered by their header line.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub layouts: Vec<FileLayout>,
}

/// How long hours that are past stay, counted back from the first hour of a newer forecast.
const KEPT_DAYS: i32 = 31;
/// The source of hours that come from no file, as the file keeps it.
pub const BY_HAND: &str = "typed by hand";
/// What the source of a file's hours says once some of them were typed over, as the file keeps it.
const CHANGED: &str = ", changed by hand";

impl Forecast {
    /// Where the hours come from, in words; empty where it is not said.
    pub fn source_said(&self) -> String {
        match self.source.trim() {
            BY_HAND => t!("farm-typed-by-hand").to_owned(),
            source => match source.strip_suffix(CHANGED) {
                Some(source) => t!("farm-changed-by-hand", source = source),
                None => source.to_owned(),
            },
        }
    }

    /// Takes hours from a file: they replace the forecast from their first hour on. Earlier hours stay, for a month, since they
    /// tell what was expected; and so does the layout, by which a file with the same header is read the next time.
    pub fn take(&mut self, hours: Vec<Hour>, source: &str, read: DateTime, layout: FileLayout) {
        let Some(first) = hours.iter().map(|hour| (hour.at, hour.again)).min() else { return };
        let oldest = first.0.saturating_sub(jiff::Span::new().days(KEPT_DAYS));
        self.hours.retain(|hour| (hour.at, hour.again) < first && hour.at >= oldest);
        self.hours.extend(hours);
        self.hours.sort_by_key(|hour| (hour.at, hour.again));
        source.clone_into(&mut self.source);
        self.read = Some(read);
        self.layouts.retain(|known| known.header != layout.header);
        self.layouts.push(layout);
    }

    /// Takes the hours of a day as a person typed them, in the place of those that stand there.
    pub fn take_day(&mut self, day: Date, hours: Vec<Hour>, now: DateTime) {
        let was_empty = self.hours.is_empty();
        self.hours.retain(|hour| hour.at.date() != day);
        self.hours.extend(hours);
        self.hours.sort_by_key(|hour| (hour.at, hour.again));
        if self.hours.is_empty() {
            self.source.clear();
            self.read = None;
        } else if was_empty || self.source.is_empty() || self.source == BY_HAND {
            BY_HAND.clone_into(&mut self.source);
            self.read = Some(now);
        } else if !self.source.ends_with(CHANGED) {
            self.source.push_str(CHANGED);
        }
    }
}

/// One hour; where another begins within it, it lasts until then. What is not known stays empty and is not taken for calm, dry or cool.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Hour {
    /// When it begins, by the farm's clock.
    pub at: DateTime,
    /// The second of two hours that the clock shows alike, in the night in which it is put back.
    #[serde(default, skip_serializing_if = "is_default")]
    pub again: bool,
    /// The air.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub temperature: Option<AsTyped<Temperature>>,
    /// The air at the greater of two heights, where both are measured; `temperature` is the lower then.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub higher: Option<AsTyped<Temperature>>,
    /// Relative humidity.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub humidity: Option<AsTyped<Share>>,
    /// Dew point, where humidity is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub dew_point: Option<AsTyped<Temperature>>,
    /// Mean wind.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wind: Option<AsTyped<Speed>>,
    /// Strongest gust.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gust: Option<AsTyped<Speed>>,
    /// From where the wind blows.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wind_from: Option<AsTyped<Bearing>>,
    /// Rain in the hour.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rain: Option<AsTyped<Length>>,
    /// How likely rain is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rain_chance: Option<AsTyped<Share>>,
    /// Share of the sky that clouds cover.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cloud: Option<AsTyped<Share>>,
}

impl Hour {
    /// An hour of which nothing is known yet.
    pub fn new(at: DateTime) -> Self {
        Self {
            at,
            again: false,
            temperature: None,
            higher: None,
            humidity: None,
            dew_point: None,
            wind: None,
            gust: None,
            wind_from: None,
            rain: None,
            rain_chance: None,
            cloud: None,
        }
    }
}

/// How the columns of a file are read.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FileLayout {
    /// The header line by which a file of this layout is known again.
    pub header: Vec<String>,
    /// What of it is taken.
    pub takes: Vec<Take>,
}

/// A column that is taken.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Take {
    /// Its heading.
    pub column: String,
    /// What it holds.
    pub holds: Holds,
    /// The unit of its figures, or how its dates are written; empty where each figure has its own.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub unit: String,
}

/// What a column may hold.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
pub enum Holds {
    /// Day and time of day together.
    DateAndTime,
    /// The day alone.
    Date,
    /// The time of day alone.
    Time,
    /// The air.
    Temperature,
    /// The air at the greater of two heights.
    Higher,
    /// Relative humidity.
    Humidity,
    /// Dew point.
    DewPoint,
    /// Mean wind.
    Wind,
    /// Strongest gust.
    Gust,
    /// From where the wind blows.
    WindFrom,
    /// Rain in the hour.
    Rain,
    /// How likely rain is.
    RainChance,
    /// Share of the sky that clouds cover.
    Cloud,
}

impl Holds {
    /// All of them.
    pub const ALL: [Self; 13] = [
        Self::DateAndTime,
        Self::Date,
        Self::Time,
        Self::Temperature,
        Self::Higher,
        Self::Humidity,
        Self::DewPoint,
        Self::Wind,
        Self::Gust,
        Self::WindFrom,
        Self::Rain,
        Self::RainChance,
        Self::Cloud,
    ];

    /// In words.
    pub fn name(self) -> &'static str {
        match self {
            Self::DateAndTime => t!("farm-day-and-time"),
            Self::Date => t!("farm-holds-day"),
            Self::Time => t!("farm-time-of-day"),
            Self::Temperature => t!("farm-holds-air"),
            Self::Higher => t!("farm-air-higher-up"),
            Self::Humidity => t!("farm-holds-humidity"),
            Self::DewPoint => t!("farm-dew-point"),
            Self::Wind => t!("farm-holds-wind"),
            Self::Gust => t!("farm-holds-gusts"),
            Self::WindFrom => t!("farm-wind-from"),
            Self::Rain => t!("farm-holds-rain"),
            Self::RainChance => t!("farm-chance-of-rain"),
            Self::Cloud => t!("farm-holds-cloud"),
        }
    }
}
