//! Days and moments in words, in the language of who reads them. Where the year stands too, the core has the words.

use jiff::civil::{Date, DateTime};
use tankard_core::language::Say;
use tankard_core::loads::card;
use tankard_core::t;

/// "12 June".
pub fn day_month(date: Date) -> String {
    t!("parts-day-month", day = date.day(), month = card::month(date).aloud())
}

/// "Thu 12 June, 05:40".
pub fn moment(at: DateTime) -> String {
    t!(
        "parts-moment",
        weekday = short(&card::weekday(at.date())),
        day = at.day(),
        month = card::month(at.date()).aloud(),
        time = at.strftime("%H:%M")
    )
}

/// "Thu 12 June 2031".
pub fn weekday(date: Date) -> String {
    t!(
        "parts-weekday",
        weekday = short(&card::weekday(date)),
        day = date.day(),
        month = card::month(date).aloud(),
        year = date.year()
    )
}

/// "12 Jun 2031, 05:40".
pub fn short_moment(at: DateTime) -> String {
    t!(
        "parts-short-moment",
        day = at.day(),
        month = short(&card::month(at.date())),
        year = at.year(),
        time = at.strftime("%H:%M")
    )
}

/// The first three letters of a month or a day of the week, as both languages shorten them.
fn short(word: &Say) -> String {
    word.aloud().chars().take(3).collect()
}

#[cfg(test)]
mod tests {
    use super::{day_month, moment, short_moment, weekday};
    use jiff::civil::date;
    use tankard_core::language::{Language, speaking};

    #[test]
    fn days_are_said_in_both_languages() {
        let at = date(2031, 6, 12).at(5, 40, 0, 0);
        assert_eq!(
            [day_month(at.date()), moment(at), weekday(at.date()), short_moment(at)],
            ["12 June", "Thu 12 June, 05:40", "Thu 12 June 2031", "12 Jun 2031, 05:40"]
        );
        speaking(Language::Spanish, || {
            assert_eq!(moment(at), "jue 12 de junio, 05:40");
            assert_eq!(short_moment(at), "12 jun 2031, 05:40");
        });
    }
}
