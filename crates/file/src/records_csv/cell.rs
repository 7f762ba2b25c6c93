//! Texts that no spreadsheet takes for a formula.

/// A text that begins with one of these is reckoned by spreadsheets. Source: OWASP, CSV Injection (the list with line feed
/// and the full-width signs).
const RECKONED: [char; 11] = ['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠'];

/// The mark before such a text. One that has it already gets another, so that every text reads back as it was.
const MARK: char = '\'';

/// A text as it stands in the file.
pub(super) fn guarded(text: &str) -> String {
    if is_taken(text) || text.strip_prefix(MARK).is_some_and(begins_so) {
        format!("{MARK}{text}")
    } else {
        text.to_owned()
    }
}

/// The text that stands in a cell.
pub(super) fn unguarded(cell: &str) -> &str {
    cell.strip_prefix(MARK).filter(|rest| begins_so(rest)).unwrap_or(cell)
}

fn is_taken(text: &str) -> bool {
    text.starts_with(RECKONED)
}

fn begins_so(rest: &str) -> bool {
    is_taken(rest) || rest.starts_with(MARK)
}

#[cfg(test)]
mod tests {
    use super::{guarded, unguarded};

    #[test]
    fn nothing_is_reckoned_and_all_reads_back() {
        for text in [
            "", "'", "''", "'''", "=1+1", "'=1+1", "''=1+1", "-2 °C", "+49 1", "@a", "\tx", "\rx", "\nx", "'tis", "'-",
            "＝1", "a=b",
        ] {
            let cell = guarded(text);
            assert!(!cell.starts_with(super::RECKONED), "{cell:?}");
            assert_eq!(unguarded(&cell), text, "{cell:?}");
        }
        assert_eq!(guarded("'tis"), "'tis");
        assert_eq!(guarded("=1+1"), "'=1+1");
    }
}
