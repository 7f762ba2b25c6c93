//! Days as spreadsheets write them.

use jiff::civil::{Date, Time};
use tankard_core::t;

use crate::table::when::{clock, short};

/// What is told where a year has two digits.
pub(crate) fn short_years() -> String {
    t!("file-short-years").to_owned()
}

/// Which comes first in a day with strokes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DayOrder {
    /// 12/06/2031 is 12 June.
    DayFirst,
    /// 12/06/2031 is December 6.
    MonthFirst,
}

impl DayOrder {
    /// Both.
    pub const ALL: [Self; 2] = [Self::DayFirst, Self::MonthFirst];

    /// In words.
    pub fn name(self) -> &'static str {
        match self {
            Self::DayFirst => t!("file-day-month-year"),
            Self::MonthFirst => t!("file-month-day-year"),
        }
    }

    /// The word by which messages choose.
    const fn word(self) -> &'static str {
        match self {
            Self::DayFirst => "day-first",
            Self::MonthFirst => "month-first",
        }
    }

    /// The order of days of which some can only be read in one; `None` where none tells it, or where they tell both.
    pub(crate) fn told_by<'a>(days: impl Iterator<Item = Written<'a>>) -> Option<Self> {
        let mut told = days.filter_map(|day| day.tells());
        let first = told.next()?;
        told.all(|order| order == first).then_some(first)
    }
}

/// What stands in a cell that may be a day.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Written<'a> {
    day: Written3,
    /// What stands behind the day.
    rest: &'a str,
    /// Whether the year was written with two digits.
    pub(crate) short_year: bool,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Written3 {
    /// Year, month, day.
    Clear(i16, i8, i8),
    /// Two numbers with strokes, and the year.
    Strokes(i8, i8, i16),
}

/// English, German, French and Spanish months by their first three letters.
const MONTHS: [&[&str]; 12] = [
    &["jan", "ene"],
    &["feb", "fév", "fev"],
    &["mar", "mär", "mrz"],
    &["apr", "avr", "abr"],
    &["may", "mai"],
    &["jun"],
    &["jul"],
    &["aug", "aoû", "aou", "ago"],
    &["sep"],
    &["oct", "okt"],
    &["nov"],
    &["dec", "dez", "déc", "dic"],
];

impl<'a> Written<'a> {
    /// `None` for what is no day.
    pub(crate) fn of(cell: &'a str) -> Option<Self> {
        let cell = cell.trim();
        // Longer texts are prose.
        if cell.is_empty() || cell.len() > 48 {
            return None;
        }
        Self::of_numbers(cell).or_else(|| Self::of_words(cell))
    }

    fn of_numbers(cell: &'a str) -> Option<Self> {
        let end = cell.find(|c: char| c.is_whitespace() || matches!(c, 'T' | ',')).unwrap_or(cell.len());
        let (first, rest) = cell.split_at_checked(end)?;
        let rest = rest.trim_start_matches(|c: char| c.is_whitespace() || matches!(c, 'T' | ','));
        for mark in ['-', '/', '.'] {
            let parts: Vec<&str> = first.split(mark).collect();
            let [one, two, three] = parts.as_slice() else { continue };
            let is_number =
                |text: &&str| (1..=4).contains(&text.len()) && text.bytes().all(|byte| byte.is_ascii_digit());
            if ![one, two, three].into_iter().all(is_number) {
                return None;
            }
            if one.len() == 4 {
                let day = Written3::Clear(one.parse().ok()?, two.parse().ok()?, three.parse().ok()?);
                return Some(Self { day, rest, short_year: false });
            }
            let (year, short_year) = year(three)?;
            let (one, two) = (one.parse().ok()?, two.parse().ok()?);
            // With dots the day comes first wherever dots are used. Common practice, no source.
            let day = if mark == '.' { Written3::Clear(year, two, one) } else { Written3::Strokes(one, two, year) };
            return Some(Self { day, rest, short_year });
        }
        None
    }

    /// "12 Jun 2031", "Jun 12, 2031", "12-Jun-31", "Thursday 12 June 2031".
    fn of_words(cell: &'a str) -> Option<Self> {
        let is_between = |c: char| c.is_whitespace() || matches!(c, ',' | '-' | '.' | '/');
        let mut numbers: Vec<&str> = Vec::new();
        let mut month = None;
        let mut from = 0;
        while numbers.len() < 2 || month.is_none() {
            let rest = cell.get(from..)?;
            let start = from + rest.find(|c: char| !is_between(c))?;
            let rest = cell.get(start..)?;
            let end = start + rest.find(is_between).unwrap_or(rest.len());
            let part = cell.get(start..end)?;
            from = end;
            if part.starts_with(|c: char| c.is_ascii_digit()) {
                let number =
                    ["st", "nd", "rd", "th"].into_iter().find_map(|end| part.strip_suffix(end)).unwrap_or(part);
                numbers.push(number);
                if numbers.len() > 2 {
                    return None;
                }
            } else if let Some(found) = month_of(part) {
                if month.replace(found).is_some() {
                    return None;
                }
            } else if !is_weekday(part) {
                return None;
            }
        }
        let [one, two] = numbers.as_slice() else { return None };
        let (year_text, day) = if one.len() == 4 { (one, two) } else { (two, one) };
        let (year, short_year) = year(year_text)?;
        let day = Written3::Clear(year, month?, day.parse().ok()?);
        Some(Self { day, rest: cell.get(from..)?.trim_start_matches(is_between), short_year })
    }

    /// Whether it may be one of two days.
    pub(super) fn is_ambiguous(&self) -> bool {
        matches!(self.day, Written3::Strokes(one, two, _) if one <= 12 && two <= 12 && one != two)
    }

    /// In which order it must be written, where it says so.
    fn tells(&self) -> Option<DayOrder> {
        match self.day {
            Written3::Strokes(one, two, _) if one > 12 && two <= 12 => Some(DayOrder::DayFirst),
            Written3::Strokes(one, two, _) if two > 12 && one <= 12 => Some(DayOrder::MonthFirst),
            _ => None,
        }
    }

    /// The day, and the time behind it.
    pub(crate) fn read(&self, order: Option<DayOrder>, cell: &str) -> Result<(Date, Option<Time>), String> {
        let (year, month, day) = match (self.day, order.or(self.tells())) {
            (Written3::Clear(year, month, day), _) => (year, month, day),
            (Written3::Strokes(one, two, year), Some(DayOrder::MonthFirst)) => (year, one, two),
            (Written3::Strokes(one, two, year), Some(DayOrder::DayFirst)) => (year, two, one),
            (Written3::Strokes(one, two, year), None) if one == two => (year, one, two),
            (Written3::Strokes(..), None) => return Err(t!("file-may-be-one-of-two-days", cell = short(cell))),
        };
        let wrong = || match order {
            None => t!("file-is-no-day", cell = short(cell)),
            Some(order) => t!("file-is-no-day-written", cell = short(cell), order = order.word()),
        };
        let date = Date::new(year, month, day).map_err(|_| wrong())?;
        // Midnight is what spreadsheets put behind a day without a time.
        let time =
            if self.rest.is_empty() { None } else { Some(clock(self.rest)?).filter(|time| *time != Time::midnight()) };
        Ok((date, time))
    }
}

fn year(text: &str) -> Option<(i16, bool)> {
    match text.len() {
        2 => Some((2000 + text.parse::<i16>().ok()?, true)),
        4 => Some((text.parse().ok()?, false)),
        _ => None,
    }
}

fn month_of(word: &str) -> Option<i8> {
    let word: String = word.to_lowercase().chars().take(3).collect();
    let at = MONTHS.iter().position(|names| names.contains(&word.as_str()))?;
    i8::try_from(at + 1).ok()
}

fn is_weekday(word: &str) -> bool {
    let word: String = word.to_lowercase().chars().take(3).collect();
    ["mon", "tue", "wed", "thu", "fri", "sat", "sun"].contains(&word.as_str())
}

/// Why a cell is no day.
pub(super) fn no_day(cell: &str) -> String {
    if cell.trim().is_empty() {
        return t!("file-there-is-no-day").to_owned();
    }
    // Days since the end of 1899, as spreadsheets count them: 1954 to 2119.
    if cell.trim().parse::<f64>().is_ok_and(|number| (20_000.0..80_000.0).contains(&number)) {
        return t!("file-may-be-a-day-as-the", cell = short(cell));
    }
    t!("file-is-no-day", cell = short(cell))
}

#[cfg(test)]
mod tests {
    use super::{DayOrder, Written};
    use jiff::civil::{date, time};

    #[test]
    fn days_as_spreadsheets_write_them() {
        let june = date(2031, 6, 12);
        for text in [
            "2031-06-12",
            "2031/6/12",
            "12.6.2031",
            "12.06.31",
            "12 Jun 2031",
            "Jun 12, 2031",
            "June 12th 2031",
            "12-Jun-31",
            "Thursday, 12 June 2031",
            "12. Juni 2031",
            "2031 Jun 12",
            "2031-06-12 00:00:00",
            "2031-06-12T00:00",
        ] {
            assert_eq!(Written::of(text).unwrap().read(None, text), Ok((june, None)), "{text}");
        }
        let text = "6/12/2031 5:30 AM";
        assert!(Written::of(text).unwrap().is_ambiguous() && Written::of(text).unwrap().read(None, text).is_err());
        let read = |order| Written::of(text).unwrap().read(Some(order), text);
        assert_eq!(read(DayOrder::MonthFirst), Ok((june, Some(time(5, 30, 0, 0)))));
        assert_eq!(read(DayOrder::DayFirst), Ok((date(2031, 12, 6), Some(time(5, 30, 0, 0)))));
        assert_eq!(Written::of("13/06/31").unwrap().tells(), Some(DayOrder::DayFirst));
        assert_eq!(Written::of("06/13/31").unwrap().tells(), Some(DayOrder::MonthFirst));
        assert!(!Written::of("6/6/31").unwrap().is_ambiguous());
        for text in ["", "12", "June", "22 fl oz/ac", "1/2/3/4", "Mill field", "40.5", "12/06", "44927", "mar", "a-b-c"]
        {
            assert_eq!(Written::of(text), None, "{text}");
        }
        assert!(Written::of("2031-02-30").unwrap().read(None, "2031-02-30").is_err());
    }
}
