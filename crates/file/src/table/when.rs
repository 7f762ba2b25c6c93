//! Days and times as files write them.

use jiff::Timestamp;
use jiff::civil::{Date, DateTime, Time};
use jiff::tz::Offset;

use tankard_core::t;

use super::Row;

/// In which order a day is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Order {
    YearFirst,
    Dots,
    DayFirst,
    MonthFirst,
    Seconds,
}

/// How the days of a column are written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct How {
    order: Order,
    /// Whether its times are UTC where they do not say otherwise.
    pub(crate) utc: bool,
}

/// The words for them in a layout.
pub(crate) const DAYS: [&str; 8] = [
    "year-month-day",
    "day.month.year",
    "day/month/year",
    "month/day/year",
    "year-month-day, UTC",
    "day.month.year, UTC",
    "day/month/year, UTC",
    "month/day/year, UTC",
];
/// The word for seconds since 1970.
pub(crate) const UNIX: &str = "unix";

/// How days are written, as it is shown.
pub(crate) fn day_words(unit: &str) -> &str {
    match unit {
        "year-month-day" => t!("file-year-month-day"),
        "day.month.year" => t!("file-day-dot-month-dot-year"),
        "day/month/year" => t!("file-day-month-year"),
        "month/day/year" => t!("file-month-day-year"),
        "year-month-day, UTC" => t!("file-year-month-day-utc"),
        "day.month.year, UTC" => t!("file-day-dot-month-dot-year-utc"),
        "day/month/year, UTC" => t!("file-day-month-year-utc"),
        "month/day/year, UTC" => t!("file-month-day-year-utc"),
        UNIX => t!("file-unix"),
        other => other,
    }
}

impl How {
    pub(crate) fn of(unit: &str) -> Option<Self> {
        let (days, utc) = unit.strip_suffix(", UTC").map_or((unit, false), |days| (days, true));
        let order = match days {
            "year-month-day" => Order::YearFirst,
            "day.month.year" => Order::Dots,
            "day/month/year" => Order::DayFirst,
            "month/day/year" => Order::MonthFirst,
            UNIX => Order::Seconds,
            _ => return None,
        };
        Some(Self { order, utc })
    }
}

/// A moment as a file gives it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Moment {
    /// By a clock on the wall.
    Clock(DateTime),
    /// In the world's time.
    World(Timestamp),
}

/// Whether a day and a time of day are written in a cell.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Shape {
    /// What stands between the parts of the day, and whether the year comes first.
    pub(crate) day: Option<(char, bool)>,
    pub(crate) time: bool,
    /// Whether the distance from UTC is given.
    pub(crate) offset: bool,
}

/// What a cell looks like; `None` for neither day nor time.
pub(crate) fn shape(cell: &str) -> Option<Shape> {
    // Longer texts are prose.
    if cell.len() > 40 || !cell.starts_with(|c: char| c.is_ascii_digit()) {
        return None;
    }
    let parts = Parts::of(cell).ok()?;
    let time = parts.time.is_some();
    let clear = parts.day.is_some() || cell.contains(':') || cell.to_ascii_lowercase().ends_with('m');
    clear.then_some(Shape {
        day: parts.day.map(|day| (day.mark, day.year_first())),
        time,
        offset: parts.offset.is_some(),
    })
}

/// Whether a cell may be a number of seconds since 1970, after 1973 and before the year 5138.
pub(crate) fn is_seconds(cell: &str) -> bool {
    (9..=11).contains(&cell.len()) && cell.bytes().all(|byte| byte.is_ascii_digit())
}

/// Whether a cell is meant for a day or a time, even one that cannot be read.
pub(crate) fn is_timely(cell: &str) -> bool {
    let first = cell.split(|c: char| c.is_whitespace() || c == 'T').next().unwrap_or("");
    shape(cell).is_some() || is_seconds(cell) || (first.len() < 12 && Day::of(first).is_some())
}

/// Whether a day, a time or seconds since 1970 stand in a row.
pub(crate) fn has_time(row: &Row) -> bool {
    // Times stand in the first columns; a table of a hundred columns is not searched to its end.
    (0..row.written().min(12)).map(|at| row.cell(at)).any(is_timely)
}

/// Reads a moment from the text of one column, or of two put together.
pub(crate) fn moment(text: &str, how: How) -> Result<Moment, String> {
    if how.order == Order::Seconds {
        let seconds = text.strip_suffix(".0").unwrap_or(text);
        let seconds: i64 = seconds.parse().map_err(|_| t!("file-no-number-of-seconds", text = short(text)))?;
        if seconds.abs() > 99_999_999_999 {
            return Err(t!("file-too-large-for-seconds", text = short(text)));
        }
        return Timestamp::from_second(seconds)
            .map(Moment::World)
            .map_err(|_| t!("file-is-no-time", text = short(text)));
    }
    let parts = Parts::of(text)?;
    let day = parts.day.ok_or_else(|| t!("file-no-day-in", text = short(text)))?.read(how.order, text)?;
    let (time, is_next_day) = parts.time.ok_or_else(|| t!("file-no-time-of-day-in", text = short(text)))?;
    let day = if is_next_day { day.tomorrow().map_err(|_| t!("file-is-no-day", cell = short(text)))? } else { day };
    let clock = day.to_datetime(time);
    let offset = parts.offset.or(how.utc.then_some(0));
    let Some(offset) = offset else { return Ok(Moment::Clock(clock)) };
    Offset::from_seconds(offset)
        .and_then(|offset| offset.to_timestamp(clock))
        .map(Moment::World)
        .map_err(|_| t!("file-is-no-time", text = short(text)))
}

/// A text short enough for a message.
pub(crate) fn short(text: &str) -> String {
    let text = text.trim();
    if text.chars().count() > 40 {
        format!("{}…", text.chars().take(40).collect::<String>())
    } else {
        text.to_owned()
    }
}

/// The three numbers of a day.
#[derive(Clone, Copy)]
struct Day<'a> {
    parts: [&'a str; 3],
    mark: char,
}

impl<'a> Day<'a> {
    fn of(text: &'a str) -> Option<Self> {
        let is_number = |text: &str| (1..=4).contains(&text.len()) && text.bytes().all(|byte| byte.is_ascii_digit());
        for mark in ['-', '.', '/'] {
            let mut all = text.split(mark);
            if let (Some(one), Some(two), Some(three), None) = (all.next(), all.next(), all.next(), all.next())
                && [one, two, three].into_iter().all(is_number)
                && [one, three].into_iter().any(|part| part.len() == 4)
                && two.len() <= 2
            {
                return Some(Self { parts: [one, two, three], mark });
            }
        }
        // 20310612
        if text.len() == 8
            && text.bytes().all(|byte| byte.is_ascii_digit())
            && (text.starts_with("19") || text.starts_with("20"))
        {
            return Some(Self { parts: [text.get(..4)?, text.get(4..6)?, text.get(6..)?], mark: '-' });
        }
        None
    }

    fn year_first(&self) -> bool {
        self.parts[0].len() == 4
    }

    fn read(&self, order: Order, text: &str) -> Result<Date, String> {
        let [one, two, three] = self.parts;
        let order_word = match order {
            Order::YearFirst => "year-first",
            Order::Dots => "dots",
            Order::DayFirst => "day-first",
            Order::MonthFirst | Order::Seconds => "month-first",
        };
        let wrong = || t!("file-is-no-day-written", cell = short(text), order = order_word);
        let fits = match order {
            Order::YearFirst => self.year_first(),
            Order::Dots => !self.year_first() && self.mark == '.',
            _ => !self.year_first() && self.mark != '.',
        };
        if !fits {
            return Err(wrong());
        }
        let (year, month, day) = match order {
            Order::YearFirst => (one, two, three),
            Order::Dots | Order::DayFirst => (three, two, one),
            Order::MonthFirst | Order::Seconds => (three, one, two),
        };
        match (year.parse(), month.parse(), day.parse()) {
            (Ok(year), Ok(month), Ok(day)) => Date::new(year, month, day).map_err(|_| wrong()),
            _ => Err(wrong()),
        }
    }
}

/// A text taken apart.
struct Parts<'a> {
    day: Option<Day<'a>>,
    /// The time of day, and whether it is the midnight that ends the day.
    time: Option<(Time, bool)>,
    /// Seconds east of UTC.
    offset: Option<i32>,
}

impl<'a> Parts<'a> {
    fn of(text: &'a str) -> Result<Self, String> {
        let text = text.trim();
        let end = text.find(|c: char| c.is_whitespace() || matches!(c, 'T' | 't' | ',' | '_')).unwrap_or(text.len());
        let (first, rest) = text.split_at_checked(end).unwrap_or((text, ""));
        let (day, rest) = match Day::of(first) {
            Some(day) => {
                (Some(day), rest.trim_start_matches(|c: char| c.is_whitespace() || matches!(c, 'T' | 't' | ',' | '_')))
            }
            None => (None, text),
        };
        if rest.is_empty() {
            return Ok(Self { day, time: None, offset: None });
        }
        let (clock, offset) = split_offset(rest)?;
        Ok(Self { day, time: Some(time_of_day(clock, rest)?), offset })
    }
}

/// Takes "Z", "UTC", "+02:00", "-0500" or "+02" off the end.
fn split_offset(text: &str) -> Result<(&str, Option<i32>), String> {
    let lower = text.to_ascii_lowercase();
    for word in ["z", "utc", "gmt"] {
        if lower.ends_with(word) {
            return Ok((text.get(..text.len() - word.len()).unwrap_or("").trim_end(), Some(0)));
        }
    }
    let Some(at) = text.rfind(['+', '-']) else { return Ok((text, None)) };
    let wrong = || t!("file-no-distance-from-utc", text = short(text.get(at..).unwrap_or(text)));
    let (clock, offset) = text.split_at_checked(at).ok_or_else(wrong)?;
    let digits: String = offset.chars().skip(1).filter(|c| *c != ':').collect();
    if !digits.bytes().all(|byte| byte.is_ascii_digit()) {
        return Err(wrong());
    }
    let (hours, minutes) = match digits.len() {
        1 | 2 => (digits.as_str(), "0"),
        4 => digits.split_at_checked(2).ok_or_else(wrong)?,
        _ => return Err(wrong()),
    };
    let hours: i32 = hours.parse().map_err(|_| wrong())?;
    let minutes: i32 = minutes.parse().map_err(|_| wrong())?;
    // No place on earth is further from UTC.
    if hours > 14 || minutes > 59 {
        return Err(wrong());
    }
    let seconds = (hours * 60 + minutes) * 60;
    let clock = clock.trim_end();
    // "12:00 GMT+2"
    let clock =
        ["utc", "UTC", "gmt", "GMT"].into_iter().find_map(|word| clock.strip_suffix(word)).unwrap_or(clock).trim_end();
    Ok((clock, Some(if offset.starts_with('-') { -seconds } else { seconds })))
}

/// Reads a time of day alone.
pub(crate) fn clock(text: &str) -> Result<Time, String> {
    match time_of_day(text, text)? {
        (time, false) => Ok(time),
        (_, true) => Err(t!("file-the-end-of-the-day", text = short(text))),
    }
}

/// Reads "05:00", "5:00 PM", "05:00:00.000", "0500", "05", "05h", "24:00".
fn time_of_day(text: &str, whole: &str) -> Result<(Time, bool), String> {
    let wrong = || t!("file-no-time-of-day", text = short(whole));
    let lower = text.trim().to_ascii_lowercase();
    let half = [("am", false), ("a.m.", false), ("pm", true), ("p.m.", true)]
        .into_iter()
        .find_map(|(word, after_noon)| lower.strip_suffix(word).map(|clock| (clock.trim_end(), after_noon)));
    let clock = half.map_or(lower.as_str(), |(clock, _)| clock);
    let clock = clock.strip_suffix('h').unwrap_or(clock);
    let clock = clock.replace('h', ":");
    let mut all = clock.split(':');
    let first = all.next().unwrap_or("");
    if !first.bytes().all(|byte| byte.is_ascii_digit()) {
        return Err(wrong());
    }
    let (hour, minute) = match (first.len(), all.next()) {
        (1 | 2, minute) => (first, minute.unwrap_or("0")),
        (3 | 4, None) => first.split_at_checked(first.len() - 2).ok_or_else(wrong)?,
        _ => return Err(wrong()),
    };
    let second = all.next().unwrap_or("0");
    let whole_second = second.split_once('.').map_or(second, |(second, _)| second);
    if all.next().is_some() {
        return Err(wrong());
    }
    let number = |text: &str| {
        if text.is_empty() || !text.bytes().all(|byte| byte.is_ascii_digit()) {
            Err(wrong())
        } else {
            text.parse::<i8>().map_err(|_| wrong())
        }
    };
    let (mut hour, minute, second) = (number(hour)?, number(minute)?, number(whole_second)?);
    if let Some((_, after_noon)) = half {
        // Twelve stands for the hour before one.
        if !(1..=12).contains(&hour) {
            return Err(wrong());
        }
        hour = hour % 12 + if after_noon { 12 } else { 0 };
    }
    if hour == 24 && minute == 0 && second == 0 {
        return Ok((Time::midnight(), true));
    }
    Time::new(hour, minute, second, 0).map(|time| (time, false)).map_err(|_| wrong())
}
