//! Cuts a pasted text into sentences. Lines of a paper are broken anywhere, so a new line alone ends nothing; an empty line, a bullet
//! and a heading do.

/// A sentence, and the heading it stands under.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Piece {
    pub(super) text: String,
    /// The heading over its paragraph, or before the colon that its paragraph begins with; empty for none.
    pub(super) heading: String,
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
    let mut heading = String::new();
    for paragraph in paragraphs(text) {
        if is_heading(&paragraph) {
            paragraph.trim_end_matches(':').trim().clone_into(&mut heading);
            // It may itself name a droplet class or a number of applications.
            all.push(Piece { text: paragraph, heading: String::new(), is_heading: true });
            continue;
        }
        let own = paragraph.split_once(':').map(|(head, _)| head.trim()).filter(|head| is_heading(head));
        let over = own.map_or_else(|| heading.clone(), str::to_owned);
        for sentence in sentences(&paragraph) {
            all.push(Piece { text: sentence, heading: over.clone(), is_heading: false });
        }
    }
    all
}

/// A few words that begin with a capital letter, without figures and without an end.
fn is_heading(text: &str) -> bool {
    text.starts_with(char::is_uppercase)
        && text.split_whitespace().count() <= HEADING
        && !text.contains(|c: char| c.is_numeric())
        && !text.ends_with(['.', ';', '!', '?', ','])
}

fn paragraphs(text: &str) -> Vec<String> {
    let mut all: Vec<String> = Vec::new();
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
        let names_itself = bare.split_once(':').is_some_and(|(head, _)| is_heading(head));
        let ended = all.last().is_none_or(|last| last.ends_with(['.', ';', '!', '?', ':']));
        match all.last_mut() {
            Some(last) if open && !is_bullet && !((heads || names_itself) && ended) => {
                last.push(' ');
                last.push_str(bare);
            }
            _ => all.push(bare.to_owned()),
        }
        // Nothing is joined to a heading.
        open = !(heads && (ended || is_bullet || all.last().is_some_and(|last| last == bare)));
    }
    all
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
        let begins = next.is_none_or(|next| !next.is_lowercase());
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
        cut(text).into_iter().map(|piece| (piece.heading, piece.text)).collect()
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
                ("Soybean", "Soybean: apply 2 pt/A."),
                ("Soybean", "Wait."),
            ]
        );
    }
}
