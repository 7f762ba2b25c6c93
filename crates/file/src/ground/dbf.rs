//! The table beside a shapefile (dBASE III and IV).

use super::limits::{FACTS, tidy};
use crate::table::encoding;
use tankard_core::t;

/// The columns and rows of a table.
pub(super) struct Table {
    columns: Vec<Column>,
    rows: Vec<u8>,
    length: usize,
    /// How many rows there are.
    pub(super) count: usize,
}

struct Column {
    name: String,
    from: usize,
    length: usize,
    is_text: bool,
    is_read: bool,
}

impl Table {
    /// # Errors
    /// The lengths in its head do not fit it.
    pub(super) fn read(bytes: &[u8]) -> Result<Self, String> {
        let short = || t!("file-it-is-too-short").to_owned();
        let two = |at: usize| Some(usize::from(u16::from_le_bytes(bytes.get(at..at + 2)?.try_into().ok()?)));
        let four = |at: usize| Some(u32::from_le_bytes(bytes.get(at..at + 4)?.try_into().ok()?));
        let stated = usize::try_from(four(4).ok_or_else(short)?).unwrap_or(usize::MAX);
        let (head, length) = (two(8).ok_or_else(short)?, two(10).ok_or_else(short)?);
        let (mut columns, mut from) = (Vec::new(), 1);
        for at in (32..head.saturating_sub(1)).step_by(32) {
            let column = bytes.get(at..at + 32).ok_or_else(short)?;
            let (Some((name, _)), [_, _, _, _, _, _, _, _, _, _, _, kind, _, _, _, _, own, ..]) =
                (column.split_at_checked(11), column)
            else {
                return Err(short());
            };
            if column.first() == Some(&0x0d) {
                break;
            }
            let name: Vec<u8> = name.iter().copied().take_while(|byte| *byte != 0).collect();
            let own = usize::from(*own);
            columns.push(Column {
                name: tidy(&encoding::eight_bit(&name)),
                from,
                length: own,
                is_text: *kind == b'C',
                is_read: matches!(kind, b'C' | b'N' | b'F' | b'D' | b'L'),
            });
            from += own;
        }
        columns.truncate(FACTS);
        if length != from || columns.is_empty() {
            return Err(t!("file-the-lengths-of-its-columns-do").to_owned());
        }
        let rows = bytes.get(head..).ok_or_else(short)?.to_vec();
        if rows.len() / length < stated {
            return Err(t!("file-it-ends-after-of-rows", rows = rows.len() / length, stated = stated));
        }
        Ok(Self { columns, rows, length, count: stated })
    }

    /// Names and values of a row, empty ones left out.
    pub(super) fn row(&self, number: usize, letters: fn(&[u8]) -> String) -> Vec<(String, String)> {
        let row = number.checked_mul(self.length).and_then(|from| self.rows.get(from..from + self.length));
        let value = |column: &Column| {
            let bytes = row?.get(column.from..column.from + column.length)?;
            let text = if column.is_text { letters(bytes) } else { encoding::eight_bit(bytes) };
            let text = text.trim_matches(|letter: char| letter == '\0' || letter.is_whitespace()).to_owned();
            // What is not filled in stands as stars.
            (!text.is_empty() && !text.bytes().all(|byte| byte == b'*')).then(|| (column.name.clone(), text))
        };
        self.columns.iter().filter(|column| column.is_read).filter_map(value).collect()
    }
}

/// Letters by what stands in the `.cpg`, and whether it is not known.
pub(super) fn code_page(cpg: Option<&[u8]>) -> Result<fn(&[u8]) -> String, String> {
    let Some(cpg) = cpg else { return Ok(encoding::eight_bit) };
    let named = tidy(&encoding::eight_bit(cpg));
    let plain: String = named.to_lowercase().chars().filter(char::is_ascii_alphanumeric).collect();
    match plain.as_str() {
        "" | "utf8" | "65001" => Ok(encoding::eight_bit),
        "1252" | "ansi1252" | "cp1252" | "windows1252" | "88591" | "iso88591" | "latin1" => Ok(encoding::cp1252),
        _ => Err(named),
    }
}
