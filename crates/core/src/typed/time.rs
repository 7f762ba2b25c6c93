//! Times of day as people write them: "18:10", "6:10 pm", "6 p.m.".

use jiff::civil::Time;

use super::Refused;
use crate::language::days::clock;
use crate::language::t;

fn time(hour: i8, minute: i8) -> Option<Time> {
    Time::new(hour, minute, 0, 0).ok()
}

/// A time without its "am" or "pm", and whether it is "pm".
fn half(text: &str) -> (String, Option<bool>) {
    let text = text.trim().to_lowercase();
    let bare: String = text.chars().filter(|sign| !sign.is_whitespace() && *sign != '.').collect();
    for (ending, is_after_noon) in [("am", false), ("pm", true), ("a", false), ("p", true)] {
        if bare.ends_with(ending) {
            // Cut where the letters begin, so that a dot between hour and minute stays.
            let figures = text.find(|sign: char| sign.is_alphabetic()).and_then(|at| text.get(..at));
            return (figures.unwrap_or_default().trim().to_owned(), Some(is_after_noon));
        }
    }
    (text, None)
}

/// Reads a time of day.
///
/// # Valid range
/// By 24 hours ("05:40", "5:40", "0540", "18:10") or by twice twelve with "am" or "pm", with or without dots and blanks ("6 pm",
/// "6:10p.m."). 12 am is midnight and 12 pm is noon.
///
/// # Errors
/// What is none, as a sentence. A bare hour may be before or after noon: both are offered.
///
/// # Examples
/// ```
/// use jiff::civil::time;
/// assert_eq!(tankard_core::typed::time_of_day("6:10 pm").ok(), Some(time(18, 10, 0, 0)));
/// ```
pub fn time_of_day(text: &str) -> Result<Time, Refused> {
    let typed = text.trim();
    let wrong = || Refused::new(t!("typed-is-not-a-time-of-day", text = typed));
    let (bare, after_noon) = half(typed);
    let number = |text: &str| {
        let is_plain = (1..=2).contains(&text.len()) && text.bytes().all(|sign| sign.is_ascii_digit());
        is_plain.then(|| text.parse::<i8>().ok()).flatten()
    };
    let (hour, minute) = match bare.split_once([':', '.']) {
        Some((hour, minute)) if minute.len() == 2 => (number(hour), number(minute)),
        Some(_) => return Err(wrong()),
        None if (3..=4).contains(&bare.len()) && bare.is_ascii() => {
            let (hour, minute) = bare.split_at(bare.len() - 2);
            (number(hour), number(minute))
        }
        None => match (number(&bare), after_noon) {
            (Some(hour), Some(_)) => (Some(hour), Some(0)),
            (Some(hour), None) => return Err(bare_hour(typed, hour)),
            (None, _) => return Err(wrong()),
        },
    };
    let (Some(hour), Some(minute)) = (hour, minute) else { return Err(wrong()) };
    let hour = match after_noon {
        None => hour,
        Some(is_after) if (1..=12).contains(&hour) => hour % 12 + if is_after { 12 } else { 0 },
        Some(_) => {
            let meant = time(hour, minute).map(clock);
            return Err(Refused::meant(
                t!("typed-that-hour-goes-without-am-and-pm", text = typed),
                meant.into_iter().collect(),
            ));
        }
    };
    time(hour, minute).ok_or_else(wrong)
}

fn bare_hour(typed: &str, hour: i8) -> Refused {
    let hours = [Some(hour), (1..12).contains(&hour).then_some(hour + 12)];
    let meant: Vec<String> = hours.into_iter().flatten().filter_map(|hour| time(hour, 0)).map(clock).collect();
    let why = if meant.is_empty() {
        t!("typed-is-not-a-time-of-day", text = typed)
    } else {
        t!("typed-is-an-hour-without-minutes", text = typed)
    };
    Refused::meant(why, meant)
}

#[cfg(test)]
mod tests {
    use super::time_of_day;
    use jiff::civil::time;

    // Twice twelve hours: common practice, no source.
    #[test]
    fn times_as_people_write_them() {
        for text in
            ["18:10", "6:10 pm", "6:10 PM", "6:10pm", "6:10p.m.", "6:10 p. m.", "6.10 pm", "1810", "06:10 p", "610 pm"]
        {
            assert_eq!(time_of_day(text).ok(), Some(time(18, 10, 0, 0)), "{text}");
        }
        for (text, is) in [
            ("08:30", time(8, 30, 0, 0)),
            ("8:30", time(8, 30, 0, 0)),
            ("0830", time(8, 30, 0, 0)),
            ("830", time(8, 30, 0, 0)),
            ("8.30", time(8, 30, 0, 0)),
            ("6 pm", time(18, 0, 0, 0)),
            ("6pm", time(18, 0, 0, 0)),
            ("6 a.m.", time(6, 0, 0, 0)),
            ("12 am", time(0, 0, 0, 0)),
            ("12:30 am", time(0, 30, 0, 0)),
            ("12 pm", time(12, 0, 0, 0)),
            ("12:30 pm", time(12, 30, 0, 0)),
            ("00:00", time(0, 0, 0, 0)),
        ] {
            assert_eq!(time_of_day(text).ok(), Some(is), "{text}");
        }
    }

    #[test]
    fn what_is_none_is_refused() {
        for text in [
            "8:3",
            "25:00",
            "08:61",
            "noon",
            "ö30",
            "",
            "pm",
            "6:1 pm",
            "6:10 xm",
            "-6:10",
            "+6:10",
            "6:10:20 pm",
            "6:75 pm",
        ] {
            let refused = time_of_day(text).unwrap_err();
            assert!(refused.meant.is_empty() && !refused.why.is_empty(), "{text}: {refused:?}");
        }
        assert_eq!(time_of_day("6").unwrap_err().meant, ["06:00", "18:00"]);
        assert_eq!(time_of_day("18").unwrap_err().meant, ["18:00"]);
        assert_eq!(time_of_day("12").unwrap_err().meant, ["12:00"]);
        assert_eq!(time_of_day("18:10 pm").unwrap_err().meant, ["18:10"]);
        assert_eq!(time_of_day("0 pm").unwrap_err().meant, ["00:00"]);
    }
}
