//! A time of day by the sun, as labels and laws name it: "sunrise", "1 h after sunrise", "2 h before sunset".

use serde::{Deserialize, Serialize};

use crate::language::{Say, say, t};
use crate::quantity::{Duration, Quantity};

/// A time of day by the sun.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct SunTime {
    /// Counted from sunset; else from sunrise.
    pub sunset: bool,
    /// Minutes after it; before it where negative.
    pub minutes: i32,
}

impl SunTime {
    /// Sunrise itself.
    pub const SUNRISE: Self = Self { sunset: false, minutes: 0 };
    /// Sunset itself.
    pub const SUNSET: Self = Self { sunset: true, minutes: 0 };
}

impl SunTime {
    /// In words on a card.
    pub fn on_card(self) -> Say {
        let (hours, minutes) = (self.minutes.abs() / 60, self.minutes.abs() % 60);
        let span = match (hours, minutes) {
            (0, 0) => return say(if self.sunset { "card-sunset" } else { "card-sunrise" }),
            (hours, 0) => format!("{hours} h"),
            (0, minutes) => format!("{minutes} min"),
            (hours, minutes) => format!("{hours} h {minutes} min"),
        };
        let id = match (self.minutes < 0, self.sunset) {
            (true, false) => "card-before-sunrise",
            (false, false) => "card-after-sunrise",
            (true, true) => "card-before-sunset",
            (false, true) => "card-after-sunset",
        };
        say(id).with("span", span)
    }
}

impl std::fmt::Display for SunTime {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let event = if self.sunset { "sunset" } else { "sunrise" };
        let (hours, minutes) = (self.minutes.abs() / 60, self.minutes.abs() % 60);
        let word = if self.minutes < 0 { "before" } else { "after" };
        match (hours, minutes) {
            (0, 0) => f.write_str(event),
            (hours, 0) => write!(f, "{hours} h {word} {event}"),
            (0, minutes) => write!(f, "{minutes} min {word} {event}"),
            (hours, minutes) => write!(f, "{hours} h {minutes} min {word} {event}"),
        }
    }
}

impl std::str::FromStr for SunTime {
    type Err = String;

    fn from_str(text: &str) -> Result<Self, String> {
        let wrong = || t!("farm-is-no-time-by-the-sun", text = text.trim());
        let lower = text.trim().to_lowercase();
        let (rest, sunset) = match (lower.strip_suffix("sunrise"), lower.strip_suffix("sunset")) {
            (Some(rest), _) => (rest.trim(), false),
            (_, Some(rest)) => (rest.trim(), true),
            _ => return Err(wrong()),
        };
        if rest.is_empty() {
            return Ok(Self { sunset, minutes: 0 });
        }
        let (span, sign) = match (rest.strip_suffix("after"), rest.strip_suffix("before")) {
            (Some(span), _) => (span, 1.0),
            (_, Some(span)) => (span, -1.0),
            _ => return Err(wrong()),
        };
        let minutes = (Duration::parse(span).map_err(|_| wrong())?.to_seconds() / 60.0).round() * sign;
        if minutes.abs() > 720.0 {
            return Err(wrong());
        }
        #[allow(clippy::cast_possible_truncation)] // At most half a day.
        Ok(Self { sunset, minutes: minutes as i32 })
    }
}

impl TryFrom<String> for SunTime {
    type Error = String;

    fn try_from(text: String) -> Result<Self, String> {
        text.parse()
    }
}

impl From<SunTime> for String {
    fn from(time: SunTime) -> Self {
        time.to_string()
    }
}

#[cfg(test)]
mod tests {
    use super::SunTime;

    #[test]
    fn times_by_the_sun_are_read_and_shown() {
        for text in [
            "sunrise",
            "sunset",
            "1 h after sunrise",
            "2 h before sunset",
            "30 min before sunrise",
            "1 h 30 min after sunset",
        ] {
            assert_eq!(text.parse::<SunTime>().unwrap().to_string(), text);
        }
        assert_eq!("60 min after Sunrise".parse::<SunTime>().unwrap(), SunTime { sunset: false, minutes: 60 });
        for text in ["", "noon", "1 h sunrise", "after sunrise", "13 h after sunrise", "-1 h after sunrise"] {
            assert!(text.parse::<SunTime>().is_err(), "{text}");
        }
    }
}
