//! What a comma means in the figures of a spreadsheet.

use super::Table;
use super::mapping::Mapping;

/// What a comma means in a figure.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Comma {
    /// "12,5" is twelve and a half.
    Decimal,
    /// "1,250" is a thousand and more.
    Thousands,
}

impl Comma {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Decimal, Self::Thousands];

    /// In words.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Decimal => "1,250 is 1.25",
            Self::Thousands => "1,250 is 1250",
        }
    }
}

/// What the figures of a table show.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Seen {
    decimal: bool,
    thousands: bool,
    /// A figure that may be read in two ways.
    pub(super) doubtful: Option<String>,
}

impl Seen {
    /// Looks at all figures of the columns taken.
    pub(super) fn of(table: &Table, mapping: &Mapping) -> Self {
        let mut seen = Self::default();
        for take in mapping.takes.iter().filter(|take| !take.holds.units().is_empty()) {
            for row in &table.rows {
                seen.look(row.cell(take.column));
            }
        }
        seen
    }

    fn look(&mut self, cell: &str) {
        let (digits, _) = split(cell);
        let commas = digits.matches(',').count();
        match (commas, digits.split_once('.')) {
            (0, Some((_, part))) => self.thousands |= part.len() != 3 && !part.contains('.'),
            (0, None) => {}
            (_, Some(_)) => {
                // The last mark is the decimal one.
                if digits.rfind(',') > digits.rfind('.') { self.decimal = true } else { self.thousands = true }
            }
            (1, None) => {
                if is_doubtful(digits) {
                    self.doubtful.get_or_insert_with(|| cell.to_owned());
                } else {
                    self.decimal = true;
                }
            }
            (_, None) => self.thousands = true,
        }
    }

    /// What a comma means, where the figures tell.
    pub(super) fn comma(&self) -> Option<Comma> {
        match (self.decimal, self.thousands) {
            (true, false) => Some(Comma::Decimal),
            (false, true) => Some(Comma::Thousands),
            _ => None,
        }
    }
}

/// Digits and marks at the head of a text, and the rest.
fn split(text: &str) -> (&str, &str) {
    let text = text.trim();
    let end = text.find(|c: char| !(c.is_ascii_digit() || c == '.' || c == ',')).unwrap_or(text.len());
    text.split_at_checked(end).unwrap_or((text, ""))
}

/// One to three digits, a comma and three more.
fn is_doubtful(digits: &str) -> bool {
    digits.split_once(',').is_some_and(|(before, after)| {
        let all = |text: &str| text.bytes().all(|byte| byte.is_ascii_digit());
        (1..=3).contains(&before.len()) && before != "0" && after.len() == 3 && all(before) && all(after)
    })
}

/// A figure as the farm reads it. One that reads in one way alone is left as it was typed.
pub(super) fn plain(cell: &str, comma: Option<Comma>) -> Result<String, String> {
    let cell = cell.trim();
    let cell = cell.strip_prefix('+').unwrap_or(cell);
    let (digits, rest) = split(cell);
    Ok(match comma {
        Some(Comma::Decimal) => {
            let dots = digits.matches('.').count();
            let is_grouped = digits.rsplit('.').next().is_some_and(|last| last.len() == 3);
            if digits.contains(',') && dots > 0 {
                format!("{}{rest}", digits.replace('.', "").replace(',', "."))
            } else if dots == 1 && is_grouped || dots > 1 {
                return Err(format!(
                    "\"{cell}\": the file's other figures have a decimal comma, so the dot may mean anything"
                ));
            } else if is_doubtful(digits) {
                format!("{}{rest}", digits.replace(',', "."))
            } else {
                cell.to_owned()
            }
        }
        Some(Comma::Thousands) => {
            let mut groups = digits.split('.').next().unwrap_or("").split(',');
            let first = groups.next().is_some_and(|first| (1..=3).contains(&first.len()));
            if digits.contains(',') && first && groups.all(|group| group.len() == 3) {
                format!("{}{rest}", digits.replace(',', ""))
            } else {
                cell.to_owned()
            }
        }
        None => cell.to_owned(),
    })
}

#[cfg(test)]
mod tests {
    use super::{Comma, Seen, plain};

    #[test]
    fn commas_mean_what_the_file_shows() {
        let seen = |cells: &[&str]| {
            let mut seen = Seen::default();
            for cell in cells {
                seen.look(cell);
            }
            (seen.comma(), seen.doubtful.is_some())
        };
        assert_eq!(seen(&["12,5", "1,250"]), (Some(Comma::Decimal), true));
        assert_eq!(seen(&["12.5", "1,250"]), (Some(Comma::Thousands), true));
        assert_eq!(seen(&["1.234,5"]), (Some(Comma::Decimal), false));
        assert_eq!(seen(&["1,234.5", "7"]), (Some(Comma::Thousands), false));
        assert_eq!(seen(&["1,250", "40"]), (None, true));
        assert_eq!(seen(&["12,5", "12.5"]), (None, false));
        assert_eq!(seen(&["0,250 L"]), (Some(Comma::Decimal), false));
        let read = |cell: &str, comma| plain(cell, Some(comma)).unwrap();
        assert_eq!(read("1,250 L", Comma::Decimal), "1.250 L");
        assert_eq!(read("12,5 L", Comma::Decimal), "12,5 L");
        assert_eq!(read("1.234,5", Comma::Decimal), "1234.5");
        assert_eq!(read("1,250 L", Comma::Thousands), "1250 L");
        assert_eq!(read("1,234,567.5", Comma::Thousands), "1234567.5");
        assert!(plain("1.250", Some(Comma::Decimal)).is_err());
    }
}
