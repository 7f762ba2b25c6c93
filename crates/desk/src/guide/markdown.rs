//! The small part of Markdown that the guide is written in: headings, paragraphs, lists, bold for words of the screen, text to type,
//! links. Pictures are for who reads the pages without the program, and are passed over.

use pulldown_cmark::{Event, Parser, Tag, TagEnd};

/// How a piece of text is set.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Face {
    /// As any other.
    Plain,
    /// Words as they stand on the screen or on paper.
    Bold,
    /// What is typed.
    Typed,
    /// Leads to another page, or to a file beside the guide.
    Link(String),
}

/// A piece of text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Run {
    /// The text.
    pub text: String,
    /// How it is set.
    pub face: Face,
}

/// A part of a page.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Block {
    /// A heading.
    Heading {
        /// 1 for that of the page.
        level: u8,
        /// By what a link finds it.
        anchor: String,
        /// Its words.
        runs: Vec<Run>,
    },
    /// A paragraph.
    Paragraph(Vec<Run>),
    /// An entry of a list.
    Item {
        /// Its number, in a list that has numbers.
        number: Option<u64>,
        /// 0 for a list that lies in no other.
        depth: usize,
        /// Its words.
        runs: Vec<Run>,
    },
    /// Lines to type.
    Lines(String),
}

/// The words without how they are set.
pub fn plain(runs: &[Run]) -> String {
    runs.iter().map(|run| run.text.as_str()).collect()
}

/// By what links find a heading, as the usual viewers of a repository make it.
pub fn anchor(heading: &str) -> String {
    heading
        .to_lowercase()
        .chars()
        .filter(|letter| letter.is_alphanumeric() || matches!(letter, ' ' | '-' | '_'))
        .map(|letter| if letter == ' ' { '-' } else { letter })
        .collect()
}

/// Reads a page.
pub fn blocks(text: &str) -> Vec<Block> {
    let mut reading = Reading::default();
    for event in Parser::new(text) {
        reading.take(event);
    }
    reading.blocks
}

#[derive(Default)]
struct Reading {
    blocks: Vec<Block>,
    runs: Vec<Run>,
    bold: bool,
    link: Option<String>,
    /// The number of the next entry of each list that is open.
    lists: Vec<Option<u64>>,
    lines: Option<String>,
    is_picture: bool,
}

impl Reading {
    fn take(&mut self, event: Event<'_>) {
        match event {
            Event::Start(Tag::Strong) => self.bold = true,
            Event::End(TagEnd::Strong) => self.bold = false,
            Event::Start(Tag::Link { dest_url, .. }) => self.link = Some(dest_url.into_string()),
            Event::End(TagEnd::Link) => self.link = None,
            Event::Start(Tag::Image { .. }) => self.is_picture = true,
            Event::End(TagEnd::Image) => self.is_picture = false,
            Event::Start(Tag::List(first)) => {
                // A list that begins within an entry ends that entry's own words.
                self.item();
                self.lists.push(first);
            }
            Event::End(TagEnd::List(_)) => {
                self.lists.pop();
            }
            Event::End(TagEnd::Item) => {
                self.item();
                if let Some(Some(number)) = self.lists.last_mut() {
                    *number += 1;
                }
            }
            Event::Start(Tag::CodeBlock(_)) => self.lines = Some(String::new()),
            Event::End(TagEnd::CodeBlock) => {
                let lines = self.lines.take().unwrap_or_default();
                self.blocks.push(Block::Lines(lines.trim_end().to_owned()));
            }
            Event::Text(text) => match &mut self.lines {
                Some(lines) => lines.push_str(&text),
                None => self.say(&text, None),
            },
            Event::Code(text) => self.say(&text, Some(Face::Typed)),
            Event::SoftBreak | Event::HardBreak => self.say(" ", None),
            Event::End(TagEnd::Heading(level)) => {
                let runs = std::mem::take(&mut self.runs);
                self.blocks.push(Block::Heading { level: level as u8, anchor: anchor(&plain(&runs)), runs });
            }
            Event::End(TagEnd::Paragraph) if self.lists.is_empty() => {
                let runs = std::mem::take(&mut self.runs);
                if !runs.is_empty() {
                    self.blocks.push(Block::Paragraph(runs));
                }
            }
            _ => {}
        }
    }

    fn say(&mut self, text: &str, face: Option<Face>) {
        if self.is_picture {
            return;
        }
        let face = match (&self.link, face) {
            (Some(link), _) => Face::Link(link.clone()),
            (None, Some(face)) => face,
            (None, None) if self.bold => Face::Bold,
            (None, None) => Face::Plain,
        };
        match self.runs.last_mut() {
            Some(last) if last.face == face => last.text.push_str(text),
            _ => self.runs.push(Run { text: text.to_owned(), face }),
        }
    }

    /// Ends an entry of a list.
    fn item(&mut self) {
        let runs = std::mem::take(&mut self.runs);
        if let (false, Some(number)) = (runs.is_empty(), self.lists.last()) {
            self.blocks.push(Block::Item { number: *number, depth: self.lists.len() - 1, runs });
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Block, Face, Run, anchor, blocks, plain};

    #[test]
    fn a_page_is_read_as_blocks() {
        let read = blocks(
            "# A page\n\nFirst **Take** the `1 gal`,\nthen [go](levels.md#stop).\n\n![a picture](pictures/a.png)\n\n1. One\n2. Two\n   - \
             within\n\n```sh\ntankard plan\n```\n",
        );
        let words: Vec<String> = read
            .iter()
            .map(|block| match block {
                Block::Heading { level, anchor, runs } => format!("{level} {anchor} {}", plain(runs)),
                Block::Paragraph(runs) => plain(runs),
                Block::Item { number, depth, runs } => format!("{number:?} {depth} {}", plain(runs)),
                Block::Lines(lines) => lines.clone(),
            })
            .collect();
        assert_eq!(
            words,
            [
                "1 a-page A page",
                "First Take the 1 gal, then go.",
                "Some(1) 0 One",
                "Some(2) 0 Two",
                "None 1 within",
                "tankard plan"
            ]
        );
        let Some(Block::Paragraph(runs)) = read.get(1) else { unreachable!() };
        let link = Run { text: "go".to_owned(), face: Face::Link("levels.md#stop".to_owned()) };
        assert!(runs.contains(&link) && runs.iter().any(|run| run.face == Face::Bold && run.text == "Take"));
    }

    #[test]
    fn an_anchor_is_what_viewers_of_a_repository_make() {
        assert_eq!(anchor("Stop, Check, Note"), "stop-check-note");
        assert_eq!(anchor("Which bases win?"), "which-bases-win");
    }
}
