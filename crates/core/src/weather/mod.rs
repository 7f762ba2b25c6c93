//! The hours in which a pass may be sprayed: what the forecast comes to, hour by hour, against labels, law and practice.

//!
//! The way is straight: [`psychro`] gives the wet bulb and [`sun`] the sun's times; [`sky`] makes of each hour of the forecast what it
//! comes to; [`limits`] gathers what binds a pass, over the usual limits of [`practice`]; [`hours`] holds one against the other.

pub mod hours;
pub mod limits;
pub mod practice;
pub mod psychro;
pub mod sky;
pub mod sun;

use std::sync::Arc;

use jiff::civil::{Date, DateTime};

use crate::farm::Farm;
use crate::farm::label::When;
use crate::finding::Basis;
use crate::label::when::said;
use crate::language::days::clock;
use crate::language::{Say, say, t};
use crate::quantity::{Duration, Share, Temperature, TemperatureSpan};

pub(crate) use hours::judge;
pub use sky::Outlook;

/// Whether an hour may be used.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Verdict {
    /// Inside every limit that is known.
    Allowed,
    /// A person must decide, or something is not in the forecast.
    Doubtful,
    /// A label or a law forbids it.
    Forbidden,
}

impl Verdict {
    /// The word.
    pub fn word(self) -> &'static str {
        match self {
            Self::Allowed => t!("weather-verdict-allowed"),
            Self::Doubtful => t!("weather-verdict-doubtful"),
            Self::Forbidden => t!("weather-verdict-forbidden"),
        }
    }
}

/// What the forecast of an hour comes to, whatever is sprayed.
#[derive(Clone, Debug, PartialEq)]
pub struct Sky {
    /// When the hour begins, by the farm's clock.
    pub at: DateTime,
    /// The second of two hours that the clock shows alike.
    pub again: bool,
    /// Wet bulb.
    pub wet_bulb: Option<Temperature>,
    /// Dry bulb less wet bulb.
    pub delta_t: Option<TemperatureSpan>,
    /// Whether the sun is up in all of the hour; `None` where the place is not typed.
    pub sun_up: Option<bool>,
    /// Why warm air may lie over cold in it, each with its source; empty where nothing points to it.
    pub inversion: Vec<(String, Basis)>,
}

/// A limit that the hours of a pass are held against.
#[derive(Clone, Debug, PartialEq)]
pub struct Limit {
    /// In any language: "wind at most 10 mph".
    pub said: Say,
    /// On what it rests.
    pub basis: Basis,
    /// How an hour outside it is judged.
    pub outside: Verdict,
    /// What it holds an hour against.
    pub kind: limits::Kind,
    /// Whether an hour is doubtful of which it cannot be told.
    pub asks: bool,
    /// In which air alone it speaks, which each hour has for itself; empty for any.
    pub air: Vec<When>,
    /// What cannot be told about whether it speaks else, in words; empty where it surely does.
    pub doubt: String,
}

impl Limit {
    /// All that it hangs on, in words: the air in which alone it speaks, and what cannot be told; empty where it always speaks.
    pub fn doubts(&self) -> String {
        self.doubts_said().aloud()
    }

    /// The same in any language, but for what the crop and its stage leave open, which is in the language that is spoken.
    pub(crate) fn doubts_said(&self) -> Say {
        let doubt = Some(Say::from(self.doubt.as_str())).filter(|_| !self.doubt.is_empty());
        let all = self.air.iter().map(said).chain(doubt);
        all.reduce(|a, b| say("card-and").with("a", a).with("b", b)).unwrap_or(Say::nothing())
    }

    /// In words: "wind at most 10 mph".
    pub fn text(&self) -> String {
        self.said.aloud()
    }
}

/// An hour judged for a pass.
#[derive(Clone, Debug, PartialEq)]
pub struct JudgedHour {
    /// When it begins.
    pub at: DateTime,
    /// The second of two hours that the clock shows alike.
    pub again: bool,
    /// How long it lasts: an hour, or to where the next begins.
    pub lasts: Duration,
    /// Whether it may be used.
    pub verdict: Verdict,
    /// The limits it is outside of, or that cannot be told: place in `Hours::limits`, and how that is judged. The weightiest first.
    pub binds: Vec<(usize, Verdict)>,
    /// Where a time by the sun cuts it: the part that is left, and how that is judged. `verdict` speaks of the whole hour.
    pub part: Option<(Span, Verdict)>,
}

/// A span of hours.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Span {
    /// When it begins, by the farm's clock.
    pub from: DateTime,
    /// When it ends.
    pub to: DateTime,
}

impl Span {
    /// By the clock: "09:00 to 14:00". A span that ends with its day ends at 24:00.
    pub fn words(self) -> String {
        let [from, to] = self.ends();
        t!("weather-to", from = from, to = to)
    }

    /// With its end at the whole minute at or after it: work that ends at 10:36:20 is not done at 10:36.
    #[must_use]
    pub fn to_whole_minute(self) -> Self {
        Self { to: whole_minute(self.to), ..self }
    }

    /// Its two ends by the clock.
    pub fn ends(self) -> [String; 2] {
        let ends_its_day = self.to.date() > self.from.date() && self.to.time() == jiff::civil::Time::midnight();
        [clock(self.from), if ends_its_day { "24:00".to_owned() } else { clock(self.to) }]
    }
}

/// The whole minute at or after a time.
pub(crate) fn whole_minute(at: DateTime) -> DateTime {
    let beyond = jiff::SignedDuration::new(i64::from(at.second()), at.subsec_nanosecond());
    let to_go = jiff::SignedDuration::from_secs(60).saturating_sub(beyond);
    if beyond.is_zero() { at } else { at.checked_add(to_go).unwrap_or(at) }
}

/// The hours of a pass.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Hours {
    /// The limits.
    pub limits: Arc<[Limit]>,
    /// The hours of the pass's day that the forecast holds, in order.
    pub hours: Vec<JudgedHour>,
    /// How long the pass takes; `None` where that is not known.
    pub needs: Option<Duration>,
    /// What that counts beside spraying, in words: "filling and road"; empty for nothing.
    pub counted: &'static str,
    /// The best span of allowed hours that is long enough.
    pub best: Option<Span>,
    /// Where none is: the longest, and the share of the pass that fits into it.
    pub longest: Option<(Span, Share)>,
    /// Sunrise and sunset of the day.
    pub sun: Option<Span>,
}

/// Whether the forecast has hours of a day.
pub fn covers(farm: &Farm, day: Date) -> bool {
    farm.forecast.hours.iter().any(|hour| hour.at.date() == day)
}
