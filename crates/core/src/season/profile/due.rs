//! By when something is due after an application.

use std::fmt;

use jiff::Span;
use jiff::civil::{Date, DateTime, Time};
use serde::Deserialize;

use crate::farm::Record;
use crate::label::harvest::after_days;
use crate::language::days::{moment, short_date};
use crate::language::t;

/// By when something is due.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Deserialize)]
#[serde(try_from = "String")]
pub enum Due {
    /// At once.
    WithoutDelay,
    /// By the close of the day.
    SameDay,
    /// So many days after the day of the application, which itself does not count.
    Days(u32),
    /// So many hours after its end.
    Hours(u32),
    /// On a day of the month after the application.
    NextMonth(i8),
}

impl TryFrom<String> for Due {
    type Error = String;

    fn try_from(text: String) -> Result<Self, String> {
        let number = |end: &str| text.strip_suffix(end).and_then(|number| number.parse().ok());
        match text.as_str() {
            "without delay" => Some(Self::WithoutDelay),
            "same day" => Some(Self::SameDay),
            _ => number(" days")
                .map(Self::Days)
                .or_else(|| number(" hours").map(Self::Hours))
                .or_else(|| text.strip_suffix("th of next month")?.parse().ok().map(Self::NextMonth)),
        }
        .ok_or_else(|| t!("season-is-no-time-by-which-something", text = text))
    }
}

impl Due {
    /// In words: "within 14 days".
    pub fn words(self) -> String {
        match self {
            Self::WithoutDelay => t!("season-without-delay").to_owned(),
            Self::SameDay => t!("season-on-the-same-day").to_owned(),
            Self::Days(days) => t!("season-within-days", days = days),
            Self::Hours(hours) => t!("season-within-hours", hours = hours),
            Self::NextMonth(day) => t!("season-by-the-th-of-the-next", day = day),
        }
    }

    /// By when, for a record. Hours count from the end of the application; where that is not typed from its start, and where
    /// that is not typed either from the beginning of the day, so that they never end too late.
    pub fn of(self, record: &Record) -> Deadline {
        match self {
            Self::WithoutDelay | Self::SameDay => Deadline { day: record.date, time: None },
            Self::Days(days) => Deadline { day: after_days(record.date, days), time: None },
            Self::Hours(hours) => {
                let begun = record.date.to_datetime(record.start.unwrap_or(Time::midnight()));
                let at = after_hours(record.ended().unwrap_or(begun), hours);
                Deadline { day: at.date(), time: Some(at.time()) }
            }
            Self::NextMonth(day) => {
                let first = record.date.first_of_month().saturating_add(Span::new().months(1));
                let last = first.days_in_month();
                let day = day.clamp(1, last);
                Deadline { day: first.with().day(day).build().unwrap_or(first), time: None }
            }
        }
    }
}

/// A moment so many hours later by a clock that is not changed between; the last that there is where there is none.
pub(crate) fn after_hours(at: DateTime, hours: u32) -> DateTime {
    Span::new().try_hours(hours).map_or(DateTime::MAX, |span| at.saturating_add(span))
}

/// A moment by which something is due.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Deadline {
    /// The day.
    pub day: Date,
    /// The time on it; none for its end.
    pub time: Option<Time>,
}

impl fmt::Display for Deadline {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.time.map_or_else(|| short_date(self.day), |time| moment(self.day.to_datetime(time))))
    }
}
