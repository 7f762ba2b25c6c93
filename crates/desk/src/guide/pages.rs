//! The pages of the guide, from one list. They lie as Markdown in `assets/guide/`, where they can be read without the program: English
//! in the folder itself, any other language in a folder by its code.

use std::sync::LazyLock;

use tankard_core::language::{Language, speaking, spoken};
use tankard_core::t;

use super::keyboard;
use super::markdown::{Block, Run, blocks, plain};

/// A page as it lies in the folder.
#[derive(Clone, Copy, Debug)]
pub struct Page {
    /// Under which words it stands in the list of pages.
    pub group: fn() -> &'static str,
    /// The name of its file, without the ending.
    pub name: &'static str,
    /// What stands in it.
    pub text: &'static str,
}

macro_rules! pages {
    ($($group:literal: $($name:literal),+;)+) => {
        /// All pages, in the order of the list.
        pub const PAGES: &[Page] = &[$($(Page {
            group: || t!($group),
            name: $name,
            text: include_str!(concat!("../../../../assets/guide/", $name, ".md")),
        }),+),+];
    };
}

pages! {
    "guide-the-evening-before":
        "first-farm", "plan-a-pass", "levels", "adjuvants", "water", "partners", "sprayer", "hours", "loads", "day", "load-card", "jar-test", "safety";
    "guide-the-farm":
        "product", "directions", "fields", "calibration", "stock", "advice-and-law";
    "guide-after-spraying":
        "record", "review", "regulator";
    "guide-your-file":
        "file", "exchange", "command-line", "keyboard";
    "guide-the-numbers":
        "numbers", "numbers-water", "numbers-sprayer", "numbers-hours", "numbers-labels", "numbers-season";
}

macro_rules! translated {
    ($folder:literal: $($name:literal),+ $(,)?) => {
        &[$(($name, include_str!(concat!("../../../../assets/guide/", $folder, "/", $name, ".md")))),+]
    };
}

/// The pages in Spanish, by their names.
pub const SPANISH: &[(&str, &str)] = translated! {
    "es":
        "first-farm", "plan-a-pass", "levels", "adjuvants", "water", "partners", "sprayer", "hours", "loads", "day", "load-card", "jar-test", "safety",
        "product", "directions", "fields", "calibration", "stock", "advice-and-law",
        "record", "review", "regulator",
        "file", "exchange", "command-line", "keyboard",
        "numbers", "numbers-water", "numbers-sprayer", "numbers-hours", "numbers-labels", "numbers-season",
};

impl Page {
    /// What stands in it in a language; the English page where that language lacks it.
    pub fn text_in(&self, language: Language) -> &'static str {
        let translated = match language {
            Language::English => &[],
            Language::Spanish => SPANISH,
        };
        translated.iter().find(|(name, _)| *name == self.name).map_or(self.text, |(_, text)| text)
    }
}

/// A page as it is read.
#[derive(Debug)]
pub struct Read {
    /// Under which words it stands in the list of pages.
    pub group: fn() -> &'static str,
    /// The name of its file, without the ending.
    pub name: &'static str,
    /// Its heading.
    pub title: String,
    /// What stands in it, the heading first.
    pub blocks: Vec<Block>,
}

/// All pages in the language that is spoken, read once.
pub fn all() -> &'static [Read] {
    in_language(spoken())
}

/// All pages in a language, read once.
pub fn in_language(language: Language) -> &'static [Read] {
    static ENGLISH: LazyLock<Vec<Read>> = LazyLock::new(|| read(Language::English));
    static SPANISH: LazyLock<Vec<Read>> = LazyLock::new(|| read(Language::Spanish));
    match language {
        Language::English => &ENGLISH,
        Language::Spanish => &SPANISH,
    }
}

fn read(language: Language) -> Vec<Read> {
    let read = |page: &Page| {
        // What it says of keys is asked of the desk.
        let blocks = if page.name == keyboard::NAME {
            blocks(&speaking(language, keyboard::page))
        } else {
            blocks(page.text_in(language))
        };
        let title = blocks.iter().find_map(|block| match block {
            Block::Heading { level: 1, runs, .. } => Some(plain(runs)),
            _ => None,
        });
        Read { group: page.group, name: page.name, title: title.unwrap_or_else(|| page.name.to_owned()), blocks }
    };
    PAGES.iter().map(read).collect()
}

/// The place of a page in the list.
pub fn at(name: &str) -> Option<usize> {
    PAGES.iter().position(|page| page.name == name)
}

impl Read {
    /// Its headings: by what a link finds each, and its words.
    pub fn headings(&self) -> impl Iterator<Item = (&str, &[Run])> {
        self.blocks.iter().filter_map(|block| match block {
            Block::Heading { anchor, runs, .. } => Some((anchor.as_str(), runs.as_slice())),
            _ => None,
        })
    }

    /// A heading by its anchor, or by that of the heading at the same place of the English page, so that one table of places serves all
    /// languages.
    pub fn heading(&self, anchor: &str) -> Option<(&str, &[Run])> {
        self.headings().find(|(own, _)| *own == anchor).or_else(|| {
            let english = in_language(Language::English).iter().find(|page| page.name == self.name)?;
            self.headings().nth(english.headings().position(|(known, _)| known == anchor)?)
        })
    }
}

#[cfg(test)]
mod tests {
    use tankard_core::language::Language;

    use super::{PAGES, Page};

    #[test]
    fn a_page_that_a_language_lacks_is_the_english_one() {
        let new = Page { group: PAGES[0].group, name: "not translated yet", text: "# New" };
        assert_eq!(new.text_in(Language::Spanish), "# New");
        assert_ne!(PAGES[0].text_in(Language::Spanish), PAGES[0].text);
        assert_eq!(PAGES[0].text_in(Language::English), PAGES[0].text);
    }
}
