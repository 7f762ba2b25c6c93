//! A typed text taken apart into its number and its unit, and put together again with another one of them.

use crate::quantity::number::take;

/// One number with one unit, as typed.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Typed<'a> {
    /// The number, digit for digit.
    pub(crate) number: &'a str,
    /// What it is.
    pub(crate) value: f64,
    /// The unit, in the letters typed.
    pub(crate) unit: String,
}

impl<'a> Typed<'a> {
    /// Takes a text apart; `None` where it does not begin with a number. A sum such as "13 gal 3 qt" has a unit that nobody knows.
    pub(crate) fn of(text: &'a str) -> Option<Self> {
        let text = text.trim();
        let (value, rest) = take(text).ok()?;
        let number = text.get(..text.len().checked_sub(rest.len())?)?.trim_end();
        Some(Self { number, value, unit: rest.trim().to_owned() })
    }
}

/// The number times a factor, in as many figures, with the decimal mark that was typed.
pub(crate) fn shifted(typed: &Typed, by: f64, figures: i32) -> String {
    let text = plain(typed.value * by, figures);
    let is_comma = typed.number.matches(',').count() == 1 && !typed.number.contains('.');
    let comma = text.replace('.', ",");
    // "1,234" may mean two things.
    if is_comma && take(&comma).is_ok() { comma } else { text }
}

/// A number in so many figures at most, without marks between thousands.
pub(crate) fn plain(value: f64, figures: i32) -> String {
    if value == 0.0 || !value.is_finite() {
        return "0".to_owned();
    }
    #[allow(clippy::cast_possible_truncation)] // A number that was typed has few digits before its point.
    let whole = value.abs().log10().floor() as i32 + 1;
    let decimals = usize::try_from(figures - whole).unwrap_or(0).min(12);
    let text = format!("{value:.decimals$}");
    if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.').to_owned() } else { text }
}

#[cfg(test)]
mod tests {
    use super::{Typed, plain, shifted};

    #[test]
    fn a_text_comes_apart() {
        for (text, number, unit) in [
            ("22 fl oz/ac", "22", "fl oz/ac"),
            ("2 1/2 pt/ac", "2 1/2", "pt/ac"),
            ("½ oz/ac", "½", "oz/ac"),
            ("0,25% v/v", "0,25", "% v/v"),
        ] {
            let typed = Typed::of(text).unwrap();
            assert_eq!((typed.number, typed.unit.as_str()), (number, unit));
        }
        assert_eq!(Typed::of("much"), None);
    }

    #[test]
    fn a_number_is_shifted_in_its_own_marks() {
        for (text, by, wanted) in [
            ("22 x", 0.1, "2.2"),
            ("0,25 x", 10.0, "2,5"),
            ("1.5 x", 0.001, "0.0015"),
            ("1/2 x", 10.0, "5"),
            ("1200 x", 0.001, "1.2"),
        ] {
            assert_eq!(shifted(&Typed::of(text).unwrap(), by, 9), wanted, "{text}");
        }
        assert_eq!(plain(118.13, 3), "118");
        assert_eq!(plain(0.0, 3), "0");
    }
}
