//! Texts that no spreadsheet takes for a formula, in files and in what is copied to be pasted elsewhere.
//!
//! Source: OWASP, CSV Injection: the letters that begin a formula, full-width ones among them, and the separators, quotes and
//! line ends by which a text may begin a cell of its own. That is so wherever a file is opened with another separator than it
//! was written with: many systems open a file with commas as one with semicolons.

/// What begins a formula where a cell begins.
const SIGNS: [char; 8] = ['=', '+', '-', '@', '＝', '＋', '－', '＠'];
/// What a spreadsheet may drop at the head of a cell, so that what follows begins it.
const DROPPED: [char; 3] = ['\t', '\r', '\n'];
/// What ends a cell or a row where the columns are taken to be apart by semicolons or tabs. A text with a comma stands in quotes.
const ENDS: [char; 4] = [';', '\t', '\r', '\n'];

/// The mark before such a text. One that has it already gets another, so that every text reads back as it was.
const MARK: char = '\'';

/// A text as it stands in a cell: with a mark before whatever would begin a formula.
pub fn guarded(text: &str) -> String {
    in_pieces(text, |is_first, core| if begins(core, is_first) { (Some(MARK), core) } else { (None, core) })
}

/// The text that a cell stands for.
pub fn unguarded(cell: &str) -> String {
    in_pieces(cell, |is_first, core| match core.strip_prefix(MARK) {
        Some(rest) if begins(rest, is_first) => (None, rest),
        _ => (None, core),
    })
}

/// Puts a text together again from the pieces that may begin a cell. What is not seen, spaces and quotes stay before a piece.
fn in_pieces<'a>(text: &'a str, mut change: impl FnMut(bool, &'a str) -> (Option<char>, &'a str)) -> String {
    let mut out = String::with_capacity(text.len() + 1);
    for (at, piece) in text.split_inclusive(ENDS).enumerate() {
        let core = piece.trim_start_matches(|letter| !ENDS.contains(&letter) && is_passed_over(letter));
        out.push_str(piece.strip_suffix(core).unwrap_or_default());
        let (mark, core) = change(at == 0, core);
        out.extend(mark);
        out.push_str(core);
    }
    out
}

/// Spaces, quotes, and letters that are not seen.
fn is_passed_over(letter: char) -> bool {
    letter == '"' || letter.is_whitespace() || is_unseen(letter)
}

/// Letters that have no shape of their own: controls, joiners, marks of direction and of byte order (Unicode's general
/// categories Cc and Cf, as far as they are met with in texts).
pub(crate) fn is_unseen(letter: char) -> bool {
    letter.is_control()
        || matches!(letter, '\u{ad}' | '\u{61c}' | '\u{180e}' | '\u{200b}'..='\u{200f}' | '\u{2028}'..='\u{202e}')
        || matches!(letter, '\u{2060}'..='\u{206f}' | '\u{feff}' | '\u{fff9}'..='\u{fffb}' | '\u{e0000}'..='\u{e007f}')
}

/// Whether a formula begins there, behind any marks. At the head of a cell, what may be dropped there counts too.
fn begins(core: &str, is_first: bool) -> bool {
    let core = core.trim_start_matches(MARK);
    core.starts_with(SIGNS) || is_first && core.starts_with(DROPPED)
}

#[cfg(test)]
mod tests {
    use super::{DROPPED, SIGNS, guarded, unguarded};

    #[test]
    fn nothing_is_reckoned_and_all_reads_back() {
        for text in [
            "",
            "'",
            "''",
            "'''",
            "=1+1",
            "'=1+1",
            "''=1+1",
            "-2 °C",
            "+49 1",
            "@a",
            "\tx",
            "\rx",
            "\nx",
            "'tis",
            "'-",
            "＝1",
            "a=b",
            "a\tb",
            "a\n\nb",
            ";",
            "\"",
            " ",
            "\u{feff}=1",
            "\u{202e}=1",
            "a;'=1",
            "a\r\n=1",
            "\u{0}=1",
        ] {
            let cell = guarded(text);
            assert!(!cell.starts_with(SIGNS) && !cell.starts_with(DROPPED), "{cell:?}");
            assert_eq!(unguarded(&cell), text, "{cell:?}");
        }
        assert_eq!(guarded("'tis"), "'tis");
        assert_eq!(guarded("=1+1"), "'=1+1");
        assert_eq!(guarded("a\n\nb"), "a\n\nb");
    }

    #[test]
    fn a_text_begins_no_formula_behind_what_separates_cells_elsewhere() {
        for (text, cell) in [
            (" =1", " '=1"),
            ("\"=1", "\"'=1"),
            ("a;=1", "a;'=1"),
            ("a; \"=1", "a; \"'=1"),
            ("a\t+1", "a\t'+1"),
            ("a\n@x\r\n- y", "a\n'@x\r\n'- y"),
            ("\u{200b}＝1", "\u{200b}'＝1"),
            // Not a beginning: within a text, and behind a comma, which always stands in quotes.
            ("a,=1", "a,=1"),
            ("5-10", "5-10"),
        ] {
            assert_eq!(guarded(text), cell);
            assert_eq!(unguarded(cell), text);
        }
    }
}
