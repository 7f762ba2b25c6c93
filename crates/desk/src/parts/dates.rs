//! Days and moments with shortened words, where the room is small. Whole ones are the core's.

use jiff::civil::{Date, DateTime};
use tankard_core::language::Say;
use tankard_core::language::days::{self, clock};
use tankard_core::t;

/// "Thu 12 June, 05:40".
pub fn moment(at: DateTime) -> String {
    t!(
        "parts-moment",
        weekday = first_three(&days::weekday(at.date())),
        day = at.day(),
        month = days::month(at.date()).aloud(),
        time = clock(at)
    )
}

/// "Thu 12 June 2031".
pub fn weekday(date: Date) -> String {
    t!(
        "parts-weekday",
        weekday = first_three(&days::weekday(date)),
        day = date.day(),
        month = days::month(date).aloud(),
        year = date.year()
    )
}

/// "12 Jun 2031", for columns.
pub fn short(date: Date) -> String {
    t!("parts-short-day", day = date.day(), month = first_three(&days::month(date)), year = date.year())
}

/// "12 Jun 2031, 05:40".
pub fn short_moment(at: DateTime) -> String {
    t!(
        "parts-short-moment",
        day = at.day(),
        month = first_three(&days::month(at.date())),
        year = at.year(),
        time = clock(at)
    )
}

/// The first three letters of a month or a day of the week, as both languages shorten them.
fn first_three(word: &Say) -> String {
    word.aloud().chars().take(3).collect()
}

#[cfg(test)]
mod tests {
    use super::{moment, short, short_moment, weekday};
    use jiff::civil::date;
    use tankard_core::language::{Language, speaking};

    #[test]
    fn days_are_said_in_both_languages() {
        let at = date(2031, 6, 12).at(5, 40, 0, 0);
        assert_eq!(
            [short(at.date()), moment(at), weekday(at.date()), short_moment(at)],
            ["12 Jun 2031", "Thu 12 June, 05:40", "Thu 12 June 2031", "12 Jun 2031, 05:40"]
        );
        speaking(Language::Spanish, || {
            assert_eq!(moment(at), "jue 12 de junio, 05:40");
            assert_eq!(short_moment(at), "12 jun 2031, 05:40");
        });
    }
}
