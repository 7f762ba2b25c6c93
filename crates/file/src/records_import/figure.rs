//! What commas and dots mean in the figures of a spreadsheet.

use super::Row;
use super::mapping::Mapping;
use tankard_core::t;

/// What a comma means in a figure; a dot then means the other.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Comma {
    /// "12,5" is twelve and a half, "1.250" a thousand and more.
    Decimal,
    /// "1,250" is a thousand and more, "1.250" one and a quarter.
    Thousands,
}

impl Comma {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Decimal, Self::Thousands];

    /// In words.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Decimal => "1.250,5",
            Self::Thousands => "1,250.5",
        }
    }
}

/// What the figures of a table show.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Seen {
    decimal: bool,
    thousands: bool,
    /// A figure that may be read in two ways, and both.
    pub(super) doubtful: Option<(String, [String; 2])>,
}

impl Seen {
    /// Looks at all figures of the columns taken.
    pub(super) fn of(rows: &[Row], mapping: &Mapping) -> Self {
        let mut seen = Self::default();
        for take in mapping.takes.iter().filter(|take| !take.holds.units().is_empty()) {
            for row in rows {
                seen.look(row.cell(take.column));
            }
        }
        seen
    }

    fn look(&mut self, cell: &str) {
        let (_, digits, _) = split(cell);
        let both = (digits.contains(','), digits.contains('.'));
        let mark = match both {
            (false, false) => return,
            (true, false) => ',',
            (false, true) => '.',
            (true, true) => {
                // The last mark is the decimal one.
                self.say(digits.rfind(',') > digits.rfind('.'));
                return;
            }
        };
        if is_doubtful(digits, mark) {
            let readings = [digits.replace(mark, ""), digits.replace(mark, ".")];
            self.doubtful.get_or_insert_with(|| (cell.to_owned(), readings));
            return;
        }
        // One that stands several times is between thousands; what makes no figure says nothing.
        let is_decimal = match digits.split(mark).collect::<Vec<_>>().as_slice() {
            [_, part] if !part.is_empty() => true,
            [_, _, ..] if is_grouped(digits, mark) => false,
            _ => return,
        };
        self.say(is_decimal == (mark == ','));
    }

    /// A figure in which the comma is the decimal mark, or is not.
    fn say(&mut self, is_decimal: bool) {
        let seen = if is_decimal { &mut self.decimal } else { &mut self.thousands };
        *seen = true;
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

/// The sign, digits and marks at the head of a text, and the rest.
fn split(text: &str) -> (&str, &str, &str) {
    let text = text.trim();
    let signed = text.trim_start_matches(['+', '-', '\u{2212}']);
    let (sign, body) = text.split_at_checked(text.len() - signed.len()).unwrap_or(("", text));
    let end = body.find(|c: char| !(c.is_ascii_digit() || c == '.' || c == ',')).unwrap_or(body.len());
    let (digits, rest) = body.split_at_checked(end).unwrap_or((body, ""));
    (sign, digits, rest)
}

/// One to three digits, a mark and three more, or several of these: as thousands are written.
fn is_grouped(digits: &str, mark: char) -> bool {
    let all = |text: &str| text.bytes().all(|byte| byte.is_ascii_digit());
    let mut groups = digits.split(mark);
    let is_head = |head: &str| (1..=3).contains(&head.len()) && !head.starts_with('0') && all(head);
    digits.contains(mark) && groups.next().is_some_and(is_head) && groups.all(|group| group.len() == 3 && all(group))
}

/// One mark before three digits: "1.250" may be one and a quarter, or a thousand and more.
fn is_doubtful(digits: &str, mark: char) -> bool {
    digits.matches(mark).count() == 1 && is_grouped(digits, mark)
}

/// A figure as the farm reads it. One that reads in one way alone is left as it was typed.
///
/// # Errors
/// Both readings of a figure that has two where nothing says which is meant.
pub(super) fn plain(cell: &str, comma: Option<Comma>) -> Result<String, String> {
    let cell = cell.trim();
    let cell = cell.strip_prefix('+').unwrap_or(cell);
    let (sign, digits, rest) = split(cell);
    let Some(comma) = comma else {
        return match [',', '.'].into_iter().find(|mark| is_doubtful(digits, *mark)) {
            Some(mark) => Err(t!(
                "file-may-mean-or",
                cell = cell,
                one = digits.replace(mark, ""),
                other = digits.replace(mark, ".")
            )),
            None => Ok(cell.to_owned()),
        };
    };
    let (decimal, between) = match comma {
        Comma::Decimal => (',', '.'),
        Comma::Thousands => ('.', ','),
    };
    let (whole, part) = digits.split_once(decimal).map_or((digits, None), |(whole, part)| (whole, Some(part)));
    Ok(if is_grouped(whole, between) && part.is_none_or(|part| part.bytes().all(|byte| byte.is_ascii_digit())) {
        let part = part.map(|part| format!(".{part}")).unwrap_or_default();
        format!("{sign}{}{part}{rest}", whole.replace(between, ""))
    } else if is_doubtful(digits, decimal) {
        format!("{sign}{}{rest}", digits.replace(decimal, "."))
    } else {
        cell.to_owned()
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
        // The other way round: as figures are written where the comma is the decimal mark.
        assert_eq!(seen(&["1.250", "40"]), (None, true));
        assert_eq!(seen(&["1.250", "3,5"]), (Some(Comma::Decimal), true));
        assert_eq!(seen(&["1.250", "2.5"]), (Some(Comma::Thousands), true));
        assert_eq!(seen(&["1.250.000 L"]), (Some(Comma::Decimal), false));
        assert_eq!(seen(&["0.250"]), (Some(Comma::Thousands), false));
        assert_eq!(seen(&["12.06.2031", "12.", "40"]), (None, false));
        assert_eq!(read("1.250 L", Comma::Decimal), "1250 L");
        assert_eq!(read("-1.250.000,25", Comma::Decimal), "-1250000.25");
        assert_eq!(read("1.250", Comma::Thousands), "1.250");
        assert_eq!(read("2.5", Comma::Decimal), "2.5");
        for cell in ["1.250 L", "1,250", "-12.500"] {
            assert!(plain(cell, None).unwrap_err().contains("may mean"), "{cell}");
        }
        assert_eq!(plain("2.5 L", None).unwrap(), "2.5 L");
    }
}
