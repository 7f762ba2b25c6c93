//! Days as people write them: "2031-06-12", "Jun 12 2031", "12 de junio de 2031". In figures alone the order of day and month differs from
//! one side of a border to the other, so such a day is read only where one of the two is no month.

use jiff::civil::Date;

use super::Refused;
use crate::farm::MonthDay;
use crate::language::t;
use crate::words::plain;

/// The months by their names, English and Spanish; each may be cut short to three letters or more.
const MONTHS: [&[&str]; 12] = [
    &["january", "enero"],
    &["february", "febrero"],
    &["march", "marzo"],
    &["april", "abril"],
    &["may", "mayo"],
    &["june", "junio"],
    &["july", "julio"],
    &["august", "agosto"],
    &["september", "septiembre", "setiembre"],
    &["october", "octubre"],
    &["november", "noviembre"],
    &["december", "diciembre"],
];

/// Words between the parts of a day.
const BETWEEN: [&str; 6] = ["de", "del", "of", "the", "º", "°"];

/// The month of a word; January is 1.
fn month(word: &str) -> Option<i8> {
    if word.chars().count() < 3 {
        return None;
    }
    let at = MONTHS.iter().position(|names| names.iter().any(|name| name.starts_with(word)))?;
    i8::try_from(at + 1).ok()
}

/// A part of a day.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Part {
    /// A number, and in how many figures it stands.
    Number(i16, usize),
    Month(i8),
}

fn parts(text: &str) -> Option<Vec<Part>> {
    plain(text)
        .split(|sign: char| sign.is_whitespace() || matches!(sign, ',' | '.' | '/' | '-' | '–' | '\u{2212}'))
        .filter(|word| !word.is_empty() && !BETWEEN.contains(word))
        .map(|word| {
            if let Some(month) = month(word) {
                return Some(Part::Month(month));
            }
            // "5th", "1.º"
            let figures = word.trim_end_matches(|sign: char| !sign.is_ascii_digit());
            let ending = word.get(figures.len()..)?;
            if !["", "st", "nd", "rd", "th", "º", "°", "o"].contains(&ending) || figures.len() > 4 {
                return None;
            }
            figures.parse().ok().map(|number| Part::Number(number, figures.len()))
        })
        .collect()
}

fn date(year: i16, month: i16, day: i16) -> Option<Date> {
    Date::new(year, i8::try_from(month).ok()?, i8::try_from(day).ok()?).ok()
}

/// A year of two figures is one of this century; that is offered and not taken.
const CENTURY: i16 = 2000;

/// Reads a day.
///
/// # Valid range
/// With a year of four figures: "2031-06-12", "2031/6/12", "12.6.2031", a name of a month in English or Spanish, whole or cut short, in any
/// case and in any usual order. "10/25/2027" can be read in one way alone and is.
///
/// # Errors
/// What is no day. "10/05/2027" may be either of two, which are offered; so is the day of a year of two figures.
///
/// # Examples
/// ```
/// use jiff::civil::date;
/// use tankard_core::typed::day;
/// assert_eq!(day("Oct 5 2027").ok(), Some(date(2027, 10, 5)));
/// assert_eq!(day("10/05/2027").unwrap_err().meant, ["2027-10-05", "2027-05-10"]);
/// ```
pub fn day(text: &str) -> Result<Date, Refused> {
    let text = text.trim();
    let wrong = || Refused::new(t!("typed-is-not-a-day", text = text));
    let all = parts(text).ok_or_else(wrong)?;
    match all.as_slice() {
        [Part::Number(year, 4), Part::Number(month, 1..=2), Part::Number(day, 1..=2)] => {
            date(*year, *month, *day).ok_or_else(wrong)
        }
        [Part::Number(day, 1..=2), Part::Number(month, 1..=2), Part::Number(year, 4)] if is_apart_by_dots(text) => {
            date(*year, *month, *day).ok_or_else(wrong)
        }
        [Part::Number(first, 1..=2), Part::Number(second, 1..=2), Part::Number(year, figures @ (2 | 4))] => {
            let whole = if *figures == 4 { *year } else { CENTURY + year };
            let mut both: Vec<Date> =
                [date(whole, *first, *second), date(whole, *second, *first)].into_iter().flatten().collect();
            both.dedup();
            match both.as_slice() {
                [] => Err(wrong()),
                [only] if *figures == 4 => Ok(*only),
                [month_first, day_first] => {
                    let texts = vec![month_first.to_string(), day_first.to_string()];
                    Err(Refused::meant(
                        t!(
                            "typed-may-be-two-days",
                            text = text,
                            month_first = in_words(*month_first),
                            day_first = in_words(*day_first)
                        ),
                        texts,
                    ))
                }
                [only, ..] => Err(of_two_figures(text, *only)),
            }
        }
        [Part::Month(month), Part::Number(day, 1..=2), Part::Number(year, figures @ (2 | 4))]
        | [Part::Number(day, 1..=2), Part::Month(month), Part::Number(year, figures @ (2 | 4))]
        | [Part::Number(year, figures @ 4), Part::Month(month), Part::Number(day, 1..=2)] => {
            let whole = if *figures == 4 { *year } else { CENTURY + year };
            let found = date(whole, i16::from(*month), *day).ok_or_else(wrong)?;
            if *figures == 4 { Ok(found) } else { Err(of_two_figures(text, found)) }
        }
        [Part::Month(_), Part::Number(_, 1..=2)] | [Part::Number(_, 1..=2), Part::Month(_)] => {
            Err(Refused::new(t!("typed-the-year-is-missing", text = text)))
        }
        _ => Err(wrong()),
    }
}

fn is_apart_by_dots(text: &str) -> bool {
    text.contains('.') && !text.contains(['/', '-', '–', '\u{2212}'])
}

fn of_two_figures(text: &str, date: Date) -> Refused {
    Refused::meant(t!("typed-the-year-has-two-figures", text = text), vec![date.to_string()])
}

/// "5 October 2027", so that nobody takes the one for the other.
fn in_words(date: Date) -> String {
    crate::language::days::short_date(date)
}

/// Reads a day of any year: "06-20", "June 20", "20 de junio".
///
/// # Errors
/// What is no such day, as a sentence.
pub fn month_day(text: &str) -> Result<MonthDay, Refused> {
    let named = parts(text).and_then(|all| match all.as_slice() {
        [Part::Month(month), Part::Number(day, 1..=2)] | [Part::Number(day, 1..=2), Part::Month(month)] => {
            // A leap year, so that 29 February is a day.
            let date = date(2028, i16::from(*month), *day)?;
            Some(MonthDay { month: date.month(), day: date.day() })
        }
        _ => None,
    });
    named.map_or_else(|| text.parse::<MonthDay>().map_err(Refused::new), Ok)
}

#[cfg(test)]
mod tests {
    use super::{day, month_day};
    use crate::farm::MonthDay;
    use crate::language::{Language, speaking};
    use jiff::civil::date;

    // How dates are written in English and Spanish: common practice, no source; the first is ISO 8601.
    #[test]
    fn days_as_people_write_them() {
        for text in [
            "2027-10-05",
            "2027-10-5",
            "2027/10/05",
            "5.10.2027",
            " 05.10.2027 ",
            "Oct 5 2027",
            "oct 5, 2027",
            "Oct. 5th, 2027",
            "OCTOBER 5 2027",
            "October 5, 2027",
            "5 Oct 2027",
            "5-Oct-2027",
            "5 October 2027",
            "5 oct. 2027",
            "2027 Oct 5",
            "5 de octubre de 2027",
            "5 de Octubre del 2027",
            "octubre 5 2027",
            "the 5th of October 2027",
        ] {
            assert_eq!(day(text).ok(), Some(date(2027, 10, 5)), "{text}");
        }
        for (text, is) in [
            ("1 ene 2027", date(2027, 1, 1)),
            ("1.º de abril de 2027", date(2027, 4, 1)),
            ("Sept 9 2027", date(2027, 9, 9)),
            ("9 set 2027", date(2027, 9, 9)),
            ("31 ago 2027", date(2027, 8, 31)),
            ("Dic 24, 2027", date(2027, 12, 24)),
            // One of the two is no month.
            ("10/25/2027", date(2027, 10, 25)),
            ("25/10/2027", date(2027, 10, 25)),
            ("25-10-2027", date(2027, 10, 25)),
            ("7/7/2027", date(2027, 7, 7)),
        ] {
            assert_eq!(day(text).ok(), Some(is), "{text}");
        }
    }

    #[test]
    fn what_may_be_two_days_is_refused_with_both() {
        for text in ["10/05/2027", "10-5-2027", "10/5/27", "10 05 2027"] {
            let refused = day(text).unwrap_err();
            assert_eq!(refused.meant, ["2027-10-05", "2027-05-10"], "{text}");
            assert!(refused.why.contains("5 October 2027") && refused.why.contains("10 May 2027"), "{}", refused.why);
        }
        speaking(Language::Spanish, || {
            let why = day("10/05/2027").unwrap_err().why;
            assert!(why.contains("5 de octubre de 2027") && why.contains("10 de mayo de 2027"), "{why}");
        });
        for text in ["5 Oct 27", "10/25/27"] {
            assert_eq!(day(text).unwrap_err().meant.len(), 1, "{text}");
        }
    }

    #[test]
    fn what_is_no_day_is_refused() {
        for text in [
            "",
            "tomorrow",
            "2031-13-01",
            "2031-02-30",
            "2031-06",
            "Feb 30 2027",
            "13/13/2027",
            "Oct 2027",
            "Oct 5",
            "5",
            "12.6.31.4",
            "Ma 5 2027",
            "10/05/12027",
            "Octopus 5 2027",
        ] {
            let refused = day(text).unwrap_err();
            assert!(refused.meant.is_empty() && !refused.why.is_empty(), "{text}: {refused:?}");
        }
        assert!(day("Oct 5").unwrap_err().why.contains("year"));
    }

    #[test]
    fn days_of_any_year() {
        for text in ["06-20", "June 20", "20 jun", "20 de junio", "Jun. 20th"] {
            assert_eq!(month_day(text).ok(), Some(MonthDay { month: 6, day: 20 }), "{text}");
        }
        for text in ["6/20", "June", "June 31", ""] {
            assert!(month_day(text).is_err(), "{text}");
        }
    }
}
