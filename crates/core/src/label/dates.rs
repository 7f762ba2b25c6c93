//! Days of the year between which a label allows its product.
//!
//! Several windows with both ends are alternatives; an end typed alone always counts. A window that begins after it ends
//! runs over the turn of the year.

use crate::language::t;
use crate::words::any_of;
use jiff::civil::Date;

use super::{Here, Spoken, by_crop};
use crate::farm::label::{MonthDay, Says};
use crate::finding::Finding;

/// The day of the pass against the days of the label.
pub(crate) fn judge(here: &Here, findings: &mut Vec<Finding>) {
    let day = here.pass.date;
    let mut windows: Vec<(Spoken, String, bool)> = Vec::new();
    for spoken in here.spoken() {
        let Says::Dates { from, to } = spoken.statement.says else { continue };
        let words = match (from, to) {
            (None, None) => continue,
            (Some(from), None) => t!("label-from-on", from = from),
            (None, Some(to)) => t!("label-up-to", to = to),
            (Some(from), Some(to)) => t!("label-from-to", from = from, to = to),
        };
        let inside = holds(from, to, day);
        if from.is_some() && to.is_some() {
            windows.push((spoken, words, inside));
        } else if !inside {
            findings.push(outside(here, &spoken, &words));
        }
    }
    for of_crop in by_crop(&windows, |(spoken, ..)| spoken.statement, here.field) {
        if of_crop.iter().any(|(.., inside)| *inside) {
            continue;
        }
        let all = any_of(of_crop.iter().map(|(_, words, _)| words));
        // A window that may not speak weakens what all of them forbid.
        if let Some((spoken, ..)) = of_crop.iter().max_by_key(|(spoken, ..)| !spoken.doubt.is_empty()) {
            findings.push(outside(here, spoken, &all));
        }
    }
}

fn outside(here: &Here, spoken: &Spoken, words: &str) -> Finding {
    let text = t!("label-may-be-used-month-day-this", name = here.product.name, words = words, date = here.pass.date);
    spoken.forbid(here.about_product(), text).hint(t!("label-move-the-pass-or-choose-another"))
}

fn holds(from: Option<MonthDay>, to: Option<MonthDay>, day: Date) -> bool {
    let in_year = |end: Option<MonthDay>| end.and_then(|end| end.in_year(day.year()));
    let after = in_year(from).is_none_or(|from| day >= from);
    let before = in_year(to).is_none_or(|to| day <= to);
    let over_the_turn = from.zip(to).is_some_and(|(from, to)| from > to);
    if over_the_turn { after || before } else { after && before }
}

#[cfg(test)]
mod tests {
    use super::holds;
    use crate::farm::label::MonthDay;
    use jiff::civil::date;

    #[test]
    fn ends_count_and_windows_may_turn_the_year() {
        let end = |text: &str| -> Option<MonthDay> { text.parse().ok() };
        assert!(holds(end("05-01"), end("06-12"), date(2031, 6, 12)));
        assert!(!holds(end("05-01"), end("06-12"), date(2031, 6, 13)));
        assert!(holds(end("10-01"), end("03-15"), date(2031, 1, 5)));
        assert!(holds(end("10-01"), end("03-15"), date(2031, 10, 1)));
        assert!(!holds(end("10-01"), end("03-15"), date(2031, 6, 1)));
        // 29 February is the last of the month in either kind of year.
        assert!(holds(None, end("02-29"), date(2031, 2, 28)) && holds(None, end("02-29"), date(2032, 2, 29)));
        assert!(!holds(None, end("02-29"), date(2031, 3, 1)));
        assert!(holds(None, None, date(2031, 3, 1)));
    }
}
