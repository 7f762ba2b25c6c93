//! Finding words in the guide.

use tankard_core::fold::bare;

use super::markdown::{Block, plain};
use super::pages::Read;

/// A part of a page, from one heading to the next, that holds all words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Hit {
    /// The place of the page in the list.
    pub page: usize,
    /// By what a link finds the heading.
    pub anchor: String,
    /// The heading.
    pub heading: String,
    /// The line that shows most of the words; empty where the heading alone has them.
    pub line: String,
    rank: Rank,
}

/// What comes first is listed first: all words in the title, in the heading, in one line, or spread over the part.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Rank {
    Title,
    Heading,
    Line,
    Spread,
}

/// The words that are looked for.
pub fn terms(query: &str) -> Vec<String> {
    query.split_whitespace().map(str::to_lowercase).collect()
}

/// Where a word begins like the term, as bytes of the text. Lower and upper case are the same, and a letter is the same with an accent and
/// without, since many keyboards have none.
pub fn found(text: &str, term: &str) -> Vec<(usize, usize)> {
    let mut all = Vec::new();
    let mut before = ' ';
    for (at, letter) in text.char_indices() {
        if !before.is_alphanumeric()
            && let Some(rest) = text.get(at..)
            && let Some(length) = begins(rest, term)
        {
            all.push((at, at + length));
        }
        before = letter;
    }
    all
}

/// How many bytes of a text are the term, where it begins so.
fn begins(text: &str, term: &str) -> Option<usize> {
    let mut letters = text.char_indices();
    for wanted in term.chars() {
        let (_, letter) = letters.next()?;
        if bare(letter) != bare(wanted) {
            return None;
        }
    }
    Some(letters.next().map_or(text.len(), |(at, _)| at))
}

fn has(text: &str, term: &str) -> bool {
    !found(text, term).is_empty()
}

/// The parts of pages that hold all words of the query, the best first; none for an empty query.
pub fn search(pages: &[Read], query: &str) -> Vec<Hit> {
    let terms = terms(query);
    if terms.is_empty() {
        return Vec::new();
    }
    let mut hits: Vec<Hit> = pages.iter().enumerate().flat_map(|(at, page)| parts(at, page, &terms)).collect();
    // A stable sort: of equal ones the order of the list and of the page holds.
    hits.sort_by_key(|hit| hit.rank);
    hits
}

fn parts(at: usize, page: &Read, terms: &[String]) -> Vec<Hit> {
    let mut hits = Vec::new();
    let mut anchor = "";
    let mut heading = page.title.clone();
    let mut lines: Vec<String> = Vec::new();
    let mut end =
        |anchor: &str, heading: &str, lines: &[String]| hits.extend(part(at, page, anchor, heading, lines, terms));
    for block in &page.blocks {
        match block {
            Block::Heading { level: 1, anchor: own, .. } => anchor = own,
            Block::Heading { anchor: own, runs, .. } => {
                end(anchor, &heading, &lines);
                anchor = own;
                heading = plain(runs);
                lines.clear();
            }
            Block::Paragraph(runs) | Block::Item { runs, .. } => lines.push(plain(runs)),
            Block::Lines(text) => lines.extend(text.lines().map(str::to_owned)),
        }
    }
    end(anchor, &heading, &lines);
    hits
}

fn part(at: usize, page: &Read, anchor: &str, heading: &str, lines: &[String], terms: &[String]) -> Option<Hit> {
    let in_heading = |term: &String| has(&page.title, term) || has(heading, term);
    let is_held = |term: &String| in_heading(term) || lines.iter().any(|line| has(line, term));
    if !terms.iter().all(is_held) {
        return None;
    }
    let count = |line: &&String| terms.iter().filter(|term| has(line, term)).count();
    // Of equal ones the first, which `max_by_key` would pass over.
    let best = lines.iter().rev().max_by_key(count).filter(|line| count(line) > 0);
    let is_first = heading == page.title;
    let rank = if is_first && terms.iter().all(|term| has(&page.title, term)) {
        Rank::Title
    } else if !is_first && terms.iter().any(|term| has(heading, term)) && terms.iter().all(in_heading) {
        Rank::Heading
    } else if best.is_some_and(|line| terms.iter().all(|term| has(line, term))) {
        Rank::Line
    } else if best.is_some() {
        Rank::Spread
    } else {
        // The title alone has them, and the first part of the page stands for it.
        return None;
    };
    let (anchor, heading) = (anchor.to_owned(), heading.to_owned());
    Some(Hit { page: at, anchor, heading, line: best.cloned().unwrap_or_default(), rank })
}

#[cfg(test)]
mod tests {
    use super::super::markdown::{blocks, plain};
    use super::super::pages::Read;
    use super::{found, search};

    fn page(name: &'static str, text: &str) -> Read {
        let blocks = blocks(text);
        let title = match blocks.first() {
            Some(super::Block::Heading { runs, .. }) => plain(runs),
            _ => String::new(),
        };
        Read { group: || "", name, title, blocks }
    }

    #[test]
    fn all_words_are_asked_for_and_title_comes_before_heading_before_text() {
        let pages = [
            page("a", "# Spraying\n\nHard water ties up a salt.\n\nThe water is first.\n\n## Wind\n\nMeasure it."),
            page("b", "# The tank\n\n## Hard water\n\nOther words."),
            page("c", "# Hard water\n\nWords."),
            page("d", "# Notes\n\nWater here.\n\nA hard frost there.\n\n## Other\n\nWater alone."),
        ];
        let names: Vec<(usize, String)> =
            search(&pages, "WATER hard").into_iter().map(|hit| (hit.page, hit.line)).collect();
        assert_eq!(
            names,
            [
                (2, String::new()),
                (1, String::new()),
                (0, "Hard water ties up a salt.".to_owned()),
                (3, "Water here.".to_owned())
            ]
        );
        assert!(search(&pages, "water hail").is_empty() && search(&pages, "  ").is_empty());
    }

    #[test]
    fn a_term_is_the_beginning_of_a_word() {
        assert_eq!(found("Water, waterhemp, underwater, WATER", "water"), [(0, 5), (7, 12), (30, 35)]);
        assert_eq!(found("an Öl film", "öl"), [(3, 6)]);
        assert_eq!(found("Inversión térmica", "termica"), [(11, 19)]);
        assert_eq!(found("una señal", "senal"), [(4, 10)]);
    }
}
