//! A time of day by the sun, as labels and laws name it: "sunrise", "1 h after sunrise", "2 h before sunset".

use serde::{Deserialize, Serialize};

use crate::fold::folded;
use crate::language::{Say, say, t};
use crate::quantity::{Duration, Quantity};
use crate::words::plain;

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
    /// In words, as they can be typed.
    pub fn words(self) -> String {
        self.on_card().aloud()
    }

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

/// As files hold it, whatever language is spoken.
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

/// What is typed for the event, in any language, and whether it is sunset; the longer first.
const EVENTS: [(&str, bool); 8] = [
    ("sunrise", false),
    ("sunset", true),
    ("la salida del sol", false),
    ("la puesta del sol", true),
    ("salida del sol", false),
    ("puesta del sol", true),
    ("amanecer", false),
    ("atardecer", true),
];
/// What is typed before it.
const SIDES: [(&str, f64); 6] = [
    ("after", 1.0),
    ("before", -1.0),
    ("despues de", 1.0),
    ("antes de", -1.0),
    ("despues del", 1.0),
    ("antes del", -1.0),
];

impl std::str::FromStr for SunTime {
    type Err = String;

    fn from_str(text: &str) -> Result<Self, String> {
        let wrong = || t!("farm-is-no-time-by-the-sun", text = text.trim());
        let typed = plain(&folded(text));
        let (rest, sunset) = EVENTS
            .iter()
            .find_map(|(event, sunset)| Some((typed.strip_suffix(event)?.trim_end(), *sunset)))
            .ok_or_else(wrong)?;
        if rest.is_empty() {
            return Ok(Self { sunset, minutes: 0 });
        }
        let (span, sign) =
            SIDES.iter().find_map(|(word, sign)| Some((rest.strip_suffix(word)?, *sign))).ok_or_else(wrong)?;
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
    use crate::language::{Language, speaking};

    #[test]
    fn times_are_typed_and_said_in_each_language_and_kept_in_one() {
        for language in Language::ALL {
            for kept in ["sunrise", "sunset", "1 h after sunrise", "2 h before sunset", "1 h 30 min after sunset"] {
                let time: SunTime = kept.parse().unwrap();
                let said = speaking(language, || time.words());
                assert_eq!(said.parse(), Ok(time), "{said}");
                assert_eq!(time.to_string(), kept);
            }
        }
        assert_eq!("30 min despues del amanecer".parse::<SunTime>().map(|time| time.minutes), Ok(30));
        assert_eq!("Puesta del Sol".parse(), Ok(SunTime::SUNSET));
        assert!("1 h amanecer".parse::<SunTime>().is_err());
    }

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
