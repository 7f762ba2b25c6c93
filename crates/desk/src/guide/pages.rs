//! The pages of the guide, from one list. They lie as Markdown in `assets/guide/`, where they can be read without the program.

use std::sync::LazyLock;

use super::markdown::{Block, blocks, plain};

/// A page as it lies in the folder.
#[derive(Clone, Copy, Debug)]
pub struct Page {
    /// Under which words it stands in the list of pages.
    pub group: &'static str,
    /// The name of its file, without the ending.
    pub name: &'static str,
    /// What stands in it.
    pub text: &'static str,
}

macro_rules! pages {
    ($($group:literal: $($name:literal),+;)+) => {
        /// All pages, in the order of the list.
        pub const PAGES: &[Page] = &[$($(Page {
            group: $group,
            name: $name,
            text: include_str!(concat!("../../../../assets/guide/", $name, ".md")),
        }),+),+];
    };
}

pages! {
    "The evening before":
        "first-farm", "plan-a-pass", "levels", "adjuvants", "water", "partners", "sprayer", "hours", "loads", "day", "load-card", "jar-test", "safety";
    "The farm":
        "product", "fields", "calibration", "stock", "advice-and-law";
    "After spraying":
        "record", "review", "regulator";
    "Your file":
        "file", "exchange", "command-line", "keyboard";
    "The numbers":
        "numbers", "numbers-water", "numbers-sprayer", "numbers-hours", "numbers-labels", "numbers-season";
}

/// A page as it is read.
#[derive(Debug)]
pub struct Read {
    /// Under which words it stands in the list of pages.
    pub group: &'static str,
    /// The name of its file, without the ending.
    pub name: &'static str,
    /// Its heading.
    pub title: String,
    /// What stands in it, the heading first.
    pub blocks: Vec<Block>,
}

/// All pages, read once.
pub fn all() -> &'static [Read] {
    static READ: LazyLock<Vec<Read>> = LazyLock::new(|| {
        let read = |page: &Page| {
            let blocks = blocks(page.text);
            let title = blocks.iter().find_map(|block| match block {
                Block::Heading { level: 1, runs, .. } => Some(plain(runs)),
                _ => None,
            });
            Read { group: page.group, name: page.name, title: title.unwrap_or_else(|| page.name.to_owned()), blocks }
        };
        PAGES.iter().map(read).collect()
    });
    &READ
}

/// The place of a page in the list.
pub fn at(name: &str) -> Option<usize> {
    all().iter().position(|page| page.name == name)
}

impl Read {
    /// The words of a heading by its anchor.
    pub fn heading(&self, anchor: &str) -> Option<String> {
        self.blocks.iter().find_map(|block| match block {
            Block::Heading { anchor: known, runs, .. } if known == anchor => Some(plain(runs)),
            _ => None,
        })
    }
}
