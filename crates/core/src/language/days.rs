//! Days and times of day as people read them, everywhere alike: the month in a word, since 6/12 is read in two ways, and the hour of 24.
//!
//! A day, a time of day or a moment that is handed to [`t!`](crate::t) is said so by itself. In boxes and in files stand days as they are
//! typed, "2031-06-12".

use jiff::civil::{Date, DateTime, Time, Weekday};

use super::{Say, say};
use crate::farm::MonthDay;

/// "12 June 2031".
pub fn short_date(date: Date) -> String {
    day(date).aloud()
}

/// "Thursday 12 June 2031".
pub fn long_date(date: Date) -> String {
    long_day(date).aloud()
}

/// "12 June".
pub fn day_month(date: Date) -> String {
    of_month(date.day(), date.month())
}

/// "05:40".
pub fn clock(at: impl Into<Time>) -> String {
    let at: Time = at.into();
    format!("{:02}:{:02}", at.hour(), at.minute())
}

/// "12 June 2031, 05:40".
pub fn moment(at: DateTime) -> String {
    moment_said(at).aloud()
}

/// The same in each language.
pub fn moment_said(at: DateTime) -> Say {
    say("card-moment").with("day", day(at.date())).with("time", clock(at))
}

/// A date with its day of the week.
pub fn long_day(date: Date) -> Say {
    say("card-long-day").with("weekday", weekday(date)).with("date", day(date))
}

/// The day of the week.
pub fn weekday(date: Date) -> Say {
    say(match date.weekday() {
        Weekday::Monday => "card-weekday-1",
        Weekday::Tuesday => "card-weekday-2",
        Weekday::Wednesday => "card-weekday-3",
        Weekday::Thursday => "card-weekday-4",
        Weekday::Friday => "card-weekday-5",
        Weekday::Saturday => "card-weekday-6",
        Weekday::Sunday => "card-weekday-7",
    })
}

/// A date with its month in a word.
pub fn day(date: Date) -> Say {
    say("card-day").with("day", date.day().to_string()).with("month", month(date)).with("year", date.year().to_string())
}

/// The month.
pub fn month(date: Date) -> Say {
    month_of(date.month())
}

fn month_of(month: i8) -> Say {
    const MONTHS: [&str; 12] = [
        "card-month-1",
        "card-month-2",
        "card-month-3",
        "card-month-4",
        "card-month-5",
        "card-month-6",
        "card-month-7",
        "card-month-8",
        "card-month-9",
        "card-month-10",
        "card-month-11",
        "card-month-12",
    ];
    let month = usize::try_from(month).ok().and_then(|month| MONTHS.get(month.saturating_sub(1)));
    month.map_or(Say::nothing(), |month| say(month))
}

fn of_month(day: i8, month: i8) -> String {
    say("card-day-month").with("day", day.to_string()).with("month", month_of(month)).aloud()
}

/// A value of a message, which `t!` asks how it is said. Days and times have words of their own; where a value has none, the call falls
/// through to [`AsShown`], so that each kind of value is said in one way and nobody has to think of it.
#[doc(hidden)]
#[derive(Clone, Copy, Debug)]
pub struct Value<'v, T: ?Sized>(AsShown<'v, T>);

/// A value that is said as it is shown.
#[doc(hidden)]
#[derive(Clone, Copy, Debug)]
pub struct AsShown<'v, T: ?Sized>(&'v T);

impl<'v, T: ?Sized> Value<'v, T> {
    /// Of a value.
    #[doc(hidden)]
    pub const fn of(value: &'v T) -> Self {
        Self(AsShown(value))
    }
}

impl<'v, T: ?Sized> std::ops::Deref for Value<'v, T> {
    type Target = AsShown<'v, T>;

    fn deref(&self) -> &Self::Target {
        &self.0
    }
}

impl<'v, T: std::fmt::Display + ?Sized> AsShown<'v, T> {
    /// The value.
    #[doc(hidden)]
    pub const fn said(&self) -> &'v T {
        self.0
    }
}

macro_rules! in_words {
    ($($kind:ty => $say:expr),+ $(,)?) => {
        $(
            impl Value<'_, $kind> {
                /// In words.
                #[doc(hidden)]
                pub fn said(&self) -> String {
                    $say(*self.0.0)
                }
            }

            impl Value<'_, &$kind> {
                /// In words.
                #[doc(hidden)]
                pub fn said(&self) -> String {
                    $say(**self.0.0)
                }
            }
        )+
    };
}

in_words! {
    Date => short_date,
    DateTime => moment,
    Time => clock,
    MonthDay => |at: MonthDay| of_month(at.day, at.month),
}

#[cfg(test)]
mod tests {
    use jiff::civil::date;

    use super::{clock, day_month, moment};
    use crate::farm::MonthDay;
    use crate::language::{Language, speaking};
    use crate::t;

    #[test]
    fn days_are_said_with_their_month_in_a_word() {
        let at = date(2027, 5, 10).at(5, 4, 59, 0);
        assert_eq!([day_month(at.date()), clock(at), moment(at)], ["10 May", "05:04", "10 May 2027, 05:04"]);
        speaking(Language::Spanish, || assert_eq!(moment(at), "10 de mayo de 2027, 05:04"));
    }

    /// A message with a day in it that is handed over as it is.
    #[test]
    fn a_message_says_days_by_itself() {
        let (day, other) = (date(2027, 5, 10), MonthDay { month: 6, day: 5 });
        let said = |told: String| told;
        assert_eq!(said(t!("label-not-before", day = day)), said(t!("label-not-before", day = "10 May 2027")));
        assert_eq!(said(t!("label-not-before", day = &day)), said(t!("label-not-before", day = "10 May 2027")));
        assert_eq!(said(t!("label-not-before", day = other)), said(t!("label-not-before", day = "5 June")));
        assert_eq!(
            said(t!("label-not-before", day = day.at(6, 0, 0, 0).time())),
            said(t!("label-not-before", day = "06:00"))
        );
    }
}
