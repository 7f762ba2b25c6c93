//! Reads the number at the head of a text: "22", "0,25", "1/2", "2 1/2", "2½", "1,200.5".
//!
//! A comma may be a decimal mark or a thousands mark. Where the text alone does not tell ("1,200"), it is refused with
//! both readings, because a planner that guesses here is wrong by a factor of a thousand.

use std::borrow::Cow;

use crate::language::t;
/// Largest number accepted; anything above is a slip of the finger.
const LARGEST: f64 = 1e9;

/// Takes a number off the head of `text` and returns it with what follows.
///
/// # Errors
/// A sentence that says what is wrong, without the example.
pub fn take(text: &str) -> Result<(f64, &str), String> {
    let text = text.trim_start();
    let (negative, body) = match text.strip_prefix(['-', '\u{2212}']) {
        Some(rest) => (true, rest.trim_start()),
        None => (false, text),
    };
    let (mut value, mut rest, mut whole) = match take_fraction_sign(body) {
        Some((value, rest)) => (value, rest, false),
        None => take_digits(body)?,
    };
    if whole {
        if let Some((part, after)) = take_fraction_sign(rest.trim_start()) {
            (value, rest, whole) = (value + part, after, false);
        } else if let Some((bottom, after)) = rest.trim_start().strip_prefix('/').and_then(take_whole) {
            if bottom == 0.0 {
                return Err(t!("quantity-a-fraction-over-0-is-no").to_owned());
            }
            (value, rest, whole) = (value / bottom, after, false);
        }
    }
    if whole && rest.starts_with(' ') {
        // "2 1/2": a whole number, a space, a fraction.
        let next = rest.trim_start();
        if let Some((top, after_top)) = take_whole(next)
            && let Some((bottom, after)) = after_top.strip_prefix('/').and_then(take_whole)
            && bottom > 0.0
        {
            (value, rest) = (value + top / bottom, after);
        }
    }
    // Hundreds of digits over hundreds of digits are no number at all.
    if value.is_nan() || value > LARGEST {
        return Err(t!("quantity-is-too-large-to-be-meant", value = format_args!("{:.0}", value)));
    }
    Ok((if negative { -value } else { value }, rest))
}

fn take_fraction_sign(text: &str) -> Option<(f64, &str)> {
    let first = text.chars().next()?;
    let value = match first {
        '½' => 0.5,
        '¼' => 0.25,
        '¾' => 0.75,
        '⅓' => 1.0 / 3.0,
        '⅔' => 2.0 / 3.0,
        '⅛' => 0.125,
        '⅜' => 0.375,
        '⅝' => 0.625,
        '⅞' => 0.875,
        _ => return None,
    };
    Some((value, text.get(first.len_utf8()..)?))
}

fn take_whole(text: &str) -> Option<(f64, &str)> {
    let end = text.find(|c: char| !c.is_ascii_digit()).unwrap_or(text.len());
    let (digits, rest) = text.split_at_checked(end)?;
    Some((digits.parse().ok()?, rest))
}

fn take_digits(text: &str) -> Result<(f64, &str, bool), String> {
    let mut end = text.find(|c: char| !(c.is_ascii_digit() || c == '.' || c == ',')).unwrap_or(text.len());
    // A mark at the very end belongs to the sentence, not to the number.
    while end > 0 && text.as_bytes().get(end - 1).is_some_and(|b| !b.is_ascii_digit()) {
        end -= 1;
    }
    let (digits, rest) = text.split_at_checked(end).unwrap_or((text, ""));
    if digits.is_empty() {
        return Err(if text.is_empty() {
            t!("quantity-a-number-and-a-unit-are").to_owned()
        } else {
            t!("quantity-does-not-begin-with-a-number", trim_end = text.trim_end())
        });
    }
    let plain = plain_decimal(digits)?;
    let value: f64 = plain.parse().map_err(|_| t!("quantity-is-not-a-number", digits = digits))?;
    Ok((value, rest, !plain.contains('.')))
}

/// Rewrites digits with marks as digits with one decimal dot at most.
fn plain_decimal(digits: &str) -> Result<Cow<'_, str>, String> {
    let dots = digits.matches('.').count();
    let commas = digits.matches(',').count();
    let bad = || t!("quantity-the-marks-in-do-not-make", digits = digits);
    match (dots, commas) {
        (0 | 1, 0) => Ok(digits.into()),
        (0, 1) => {
            let (whole, part) = digits.split_once(',').unwrap_or((digits, ""));
            let thousands = part.len() == 3 && (1..=3).contains(&whole.len()) && !whole.starts_with('0');
            if thousands {
                Err(t!("quantity-may-mean-or-write-one-of", digits = digits, whole = whole, part = part))
            } else {
                Ok(format!("{whole}.{part}").into())
            }
        }
        // One kind of mark repeats: thousands. The other kind, if there, is the decimal mark.
        _ => {
            let (group, decimal) = match (dots, commas) {
                (d, c) if d > 1 && c <= 1 => ('.', ','),
                (d, c) if c > 1 && d <= 1 => (',', '.'),
                (1, 1) if digits.find(',') < digits.find('.') => (',', '.'),
                (1, 1) => ('.', ','),
                _ => return Err(bad()),
            };
            let (whole, part) = digits.split_once(decimal).unwrap_or((digits, ""));
            let mut groups = whole.split(group);
            let head_fits = groups.next().is_some_and(|head| (1..=3).contains(&head.len()));
            if !head_fits || part.contains(group) || !groups.all(|g| g.len() == 3) {
                return Err(bad());
            }
            let whole: String = whole.chars().filter(|c| *c != group).collect();
            Ok(if part.is_empty() { whole } else { format!("{whole}.{part}") }.into())
        }
    }
}

/// Prints a number with at most `decimals` places, no trailing zeros, and commas between thousands.
///
/// ```
/// use tankard_core::quantity::number::show;
/// assert_eq!(show(1200.0, 2), "1,200");
/// assert_eq!(show(13.75, 2), "13.75");
/// assert_eq!(show(0.100_4, 2), "0.1");
/// ```
pub fn show(value: f64, decimals: usize) -> String {
    let text = format!("{:.*}", decimals, value.abs());
    let text = if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { &text };
    let (whole, part) = text.split_once('.').unwrap_or((text, ""));
    let mut grouped = String::with_capacity(text.len() + 4);
    for (at, digit) in whole.chars().enumerate() {
        if at > 0 && (whole.len() - at).is_multiple_of(3) {
            grouped.push(',');
        }
        grouped.push(digit);
    }
    let sign = if value < 0.0 && text.bytes().any(|b| (b'1'..=b'9').contains(&b)) { "-" } else { "" };
    if part.is_empty() { format!("{sign}{grouped}") } else { format!("{sign}{grouped}.{part}") }
}

/// Prints a number with about three significant figures, never fewer whole digits than it has.
pub fn show_significant(value: f64) -> String {
    let size = value.abs();
    let decimals = if size >= 100.0 {
        0
    } else if size >= 10.0 {
        1
    } else if size >= 0.1 || size == 0.0 {
        2
    } else if size >= 0.001 {
        4
    } else {
        6
    };
    show(value, decimals)
}

#[cfg(test)]
mod tests {
    use super::{show, take};

    fn value(text: &str) -> f64 {
        take(text).map_or(f64::NAN, |(v, _)| v)
    }

    #[test]
    #[allow(clippy::float_cmp)]
    fn numbers_as_people_write_them() {
        for (text, expected) in [
            ("22", 22.0),
            ("1.5", 1.5),
            ("0,25", 0.25),
            ("0,250", 0.25),
            ("1/2", 0.5),
            ("2 1/2", 2.5),
            ("2½", 2.5),
            ("½", 0.5),
            ("1,200.5", 1200.5),
            ("1.200,5", 1200.5),
            ("1,200,000", 1_200_000.0),
            ("-3", -3.0),
        ] {
            assert_eq!(value(text), expected, "{text}");
        }
    }

    #[test]
    fn a_comma_that_may_mean_two_things_is_refused_with_both() {
        let message = take("1,200 gal").unwrap_err();
        assert!(message.contains("1200") && message.contains("1.200"), "{message}");
        assert!(take("1,20,0").is_err());
        assert!(take("1.2.3").is_err());
        assert!(take("NaN gal").is_err());
        assert!(take("inf").is_err());
        assert!(take("9999999999999").is_err());
        assert!(take("1/0 gal").is_err());
    }

    #[test]
    fn what_follows_is_left_alone() {
        assert_eq!(take("22 fl oz/ac"), Ok((22.0, " fl oz/ac")));
        assert_eq!(take("13 gal 3 qt"), Ok((13.0, " gal 3 qt")));
        assert_eq!(take("22, then"), Ok((22.0, ", then")));
        assert_eq!(take("22."), Ok((22.0, ".")));
    }

    #[test]
    fn printed_numbers_group_and_trim() {
        assert_eq!(show(1_234_567.891, 1), "1,234,567.9");
        assert_eq!(show(-0.001, 2), "0");
        assert_eq!(show(999.0, 0), "999");
    }
}
