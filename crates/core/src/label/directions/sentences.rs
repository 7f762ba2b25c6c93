//! Cuts a pasted text into sentences. Lines of a paper are broken anywhere, so a new line alone ends nothing; an empty line, a bullet
//! and a heading do.

use super::crops;
use super::items::items;
use crate::quantity::Units;

/// A sentence, and the heading it stands under.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Piece {
    pub(super) text: String,
    /// The heading over its paragraph, and the one before the colon that its paragraph begins with.
    pub(super) headings: Vec<String>,
    /// Whether the last of them stands in its own text.
    pub(super) is_own_in_text: bool,
    /// Whether it stands behind a semicolon, so that what narrows the part before it may narrow it, too.
    pub(super) follows: bool,
    /// Whether it looks like a heading itself.
    pub(super) is_heading: bool,
}

/// A heading has no more words.
const HEADING: usize = 6;

/// After these a full stop ends no sentence.
const SHORT: [&str; 9] = ["no", "approx", "e.g", "i.e", "max", "min", "reg", "vs", "fl"];

/// The sentences of a text.
pub(super) fn cut(text: &str) -> Vec<Piece> {
    let mut all = Vec::new();
    let mut over: Option<String> = None;
    for Paragraph { text, is_bullet } in paragraphs(text) {
        if is_heading(&text) {
            // A bullet stands over nothing; it may itself name a droplet class or a number of applications.
            if !is_bullet {
                over = Some(text.trim_end_matches(':').trim().to_owned());
            }
            all.push(Piece { text, headings: Vec::new(), is_own_in_text: false, follows: false, is_heading: true });
            continue;
        }
        let own = text.split_once(':').map(|(head, _)| head.trim()).filter(|head| is_heading(head));
        let headings: Vec<String> = over.iter().cloned().chain(own.map(str::to_owned)).collect();
        let mut follows = false;
        for (at, sentence) in sentences(&text).into_iter().enumerate() {
            let is_own_in_text = at == 0 && own.is_some();
            let goes_on = sentence.ends_with(';');
            all.push(Piece { text: sentence, headings: headings.clone(), is_own_in_text, follows, is_heading: false });
            follows = goes_on;
        }
    }
    all
}

/// Words with which a sentence begins that tells one what to do: no heading begins with them.
const OPENS: [&str; 22] = [
    "do", "never", "avoid", "apply", "use", "wear", "keep", "allow", "observe", "wait", "no", "add", "include",
    "spray", "aplique", "use", "agregue", "evite", "mantenga", "deje", "always", "requires",
];

/// A few words that begin with a capital letter, without figures and without an end.
fn is_heading(text: &str) -> bool {
    let first = text.split_whitespace().next().unwrap_or_default().to_lowercase();
    text.starts_with(char::is_uppercase)
        && text.split_whitespace().count() <= HEADING
        && !text.contains(|c: char| c.is_numeric())
        && !text.ends_with(['.', ';', '!', '?', ','])
        && !OPENS.contains(&first.as_str())
}

struct Paragraph {
    text: String,
    is_bullet: bool,
}

/// Whether a line is a row of a table, such as "REI: 12 hours": a heading of its own with what it says, and no end.
fn is_row(line: &str) -> bool {
    line.split_once(':').is_some_and(|(head, says)| is_heading(head) && !says.trim().is_empty())
}

/// Whether a row begins with crops: what is below may be of them, too.
fn names_crops(row: &str) -> bool {
    let head = row.split(':').next().unwrap_or_default();
    let words = items(head, true, Units::Metric).items;
    crops::of(&words, &vec![false; words.len()]).map_or(true, |crops| !crops.at.is_empty())
}

/// Whether a text has a sentence, or several, in each line: then no paper broke it, and what begins a line as a heading heads it alone.
fn is_line_by_line(text: &str) -> bool {
    let lines = || text.lines().map(str::trim).filter(|line| !line.is_empty());
    let ended = lines().filter(|line| line.ends_with(['.', ';', '!', '?'])).count();
    ended > 2 && ended * 5 >= lines().count() * 4
}

fn paragraphs(text: &str) -> Vec<Paragraph> {
    let is_line_by_line = is_line_by_line(text);
    let mut all: Vec<Paragraph> = Vec::new();
    let mut open = false;
    let lines: Vec<&str> = text.lines().map(str::trim).collect();
    for (at, line) in lines.iter().enumerate() {
        if line.is_empty() {
            open = false;
            continue;
        }
        let bare = line.trim_start_matches(['•', '·', '*', '–', '—', '-', '▪', '●', ' ']);
        let is_bullet = bare.len() < line.len();
        let goes_on = lines.get(at + 1).is_some_and(|next| next.starts_with(char::is_lowercase));
        let heads = is_heading(bare) && !goes_on;
        let last = all.last().map_or("", |last| last.text.as_str());
        let ended = last.is_empty() || last.ends_with(['.', ';', '!', '?', ':']);
        // A row begins anew below a row, though that has no end.
        let begins = (heads && ended)
            || (is_row(bare) && (ended || is_row(last)))
            || (is_line_by_line && ended && is_row(last) && !names_crops(last));
        match all.last_mut() {
            Some(last) if open && !is_bullet && !begins => {
                last.text.push(' ');
                last.text.push_str(bare);
            }
            _ => all.push(Paragraph { text: bare.to_owned(), is_bullet }),
        }
        // Nothing is joined to a heading.
        open = !(heads && (ended || is_bullet || all.last().is_some_and(|last| last.text == bare)));
    }
    all
}

/// Whether what stands behind a semicolon says something of its own, and does not take back what stands before.
fn begins_anew(paragraph: &str, at: usize) -> bool {
    const TURNS: [&str; 16] = [
        "except",
        "unless",
        "but",
        "if",
        "when",
        "or",
        "and",
        "however",
        "only",
        "provided",
        "otherwise",
        "where",
        "salvo",
        "excepto",
        "pero",
        "si",
    ];
    let behind = paragraph.get(at + 1..).unwrap_or_default();
    let word: String = behind.trim_start().chars().take_while(|sign| sign.is_alphabetic()).collect();
    !word.is_empty() && !TURNS.contains(&word.to_lowercase().as_str())
}

fn sentences(paragraph: &str) -> Vec<String> {
    let mut all = Vec::new();
    let mut from = 0;
    let signs: Vec<(usize, char)> = paragraph.char_indices().collect();
    for (place, (at, sign)) in signs.iter().enumerate() {
        if !matches!(sign, '.' | '!' | '?' | ';') {
            continue;
        }
        let mut behind = signs.iter().skip(place + 1).map(|(_, sign)| *sign);
        let spaced = behind.next().is_none_or(char::is_whitespace);
        let next = behind.find(|sign| !sign.is_whitespace());
        let begins = next.is_none_or(|next| !next.is_lowercase()) || (*sign == ';' && begins_anew(paragraph, *at));
        let before = paragraph.get(from..*at).unwrap_or_default();
        let word = before.rsplit(|c: char| c.is_whitespace() || c == '(').next().unwrap_or_default().to_lowercase();
        let is_short = *sign == '.' && SHORT.contains(&word.as_str());
        if spaced && begins && !is_short {
            let end = at + sign.len_utf8();
            all.extend(paragraph.get(from..end).map(|text| text.trim().to_owned()));
            from = end;
        }
    }
    all.extend(paragraph.get(from..).map(|text| text.trim().to_owned()));
    all.retain(|text| !text.is_empty());
    all
}

#[cfg(test)]
mod tests {
    use super::cut;

    fn texts(text: &str) -> Vec<(String, String)> {
        cut(text).into_iter().map(|piece| (piece.headings.join(" / "), piece.text)).collect()
    }

    #[test]
    fn lines_that_a_paper_broke_are_one_sentence() {
        let cut = texts(
            "Apply 16 to 22 fl. oz. per acre in a\nminimum of 10 gallons. Do not\nspray at noon.\n\n- PHI: 35 days\n- REI 12 h",
        );
        let only: Vec<&str> = cut.iter().map(|(_, text)| text.as_str()).collect();
        assert_eq!(
            only,
            [
                "Apply 16 to 22 fl. oz. per acre in a minimum of 10 gallons.",
                "Do not spray at noon.",
                "PHI: 35 days",
                "REI 12 h"
            ]
        );
    }

    #[test]
    fn a_heading_stands_over_what_follows_it() {
        let cut = texts("Corn\nApply 3 fl oz/A.\nRestrictions\nREI 12 h.\nSoybean: apply 2 pt/A. Wait.");
        let heads: Vec<(&str, &str)> = cut.iter().map(|(head, text)| (head.as_str(), text.as_str())).collect();
        assert_eq!(
            heads,
            [
                ("", "Corn"),
                ("Corn", "Apply 3 fl oz/A."),
                ("", "Restrictions"),
                ("Restrictions", "REI 12 h."),
                ("Restrictions / Soybean", "Soybean: apply 2 pt/A."),
                ("Restrictions / Soybean", "Wait."),
            ]
        );
    }
}
