//! All that Typst may see: a template, what it lays out as virtual files, and our fonts.

use std::path::PathBuf;
use std::sync::LazyLock;

use tankard_core::progress::{Cancelled, Tell, untold};
use typst::diag::{FileError, FileResult};
use typst::foundations::{Bytes, Datetime, Duration};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt, World};

static CARDS: LazyLock<Source> =
    LazyLock::new(|| source("load-card.typ", include_str!("../../../assets/typst/load-card.typ")));
static OUTLINE: LazyLock<Source> =
    LazyLock::new(|| source("outline.typ", include_str!("../../../assets/typst/outline.typ")));
static EVENING: LazyLock<Source> =
    LazyLock::new(|| source("evening-sheet.typ", include_str!("../../../assets/typst/evening-sheet.typ")));
static JAR: LazyLock<Source> =
    LazyLock::new(|| source("jar-test.typ", include_str!("../../../assets/typst/jar-test.typ")));
static BOOK_OF_RECORDS: LazyLock<Source> =
    LazyLock::new(|| source("record-book.typ", include_str!("../../../assets/typst/record-book.typ")));
static WORKERS: LazyLock<Source> =
    LazyLock::new(|| source("worker-protection.typ", include_str!("../../../assets/typst/worker-protection.typ")));
static REVIEW: LazyLock<Source> =
    LazyLock::new(|| source("season-review.typ", include_str!("../../../assets/typst/season-review.typ")));
static LIBRARY: LazyLock<LazyHash<Library>> = LazyLock::new(|| LazyHash::new(Library::default()));
/// One family for all faces, so that the template asks by weight and stretch. Left alone, Typst would go by the short
/// names inside the files and take "IBM Plex Sans SmBld" for a family of its own.
static BOOK: LazyLock<LazyHash<FontBook>> = LazyLock::new(|| {
    let mut book = FontBook::new();
    for font in FONTS.iter() {
        let mut info = font.info().clone();
        "IBM Plex Sans".clone_into(&mut info.family);
        book.push(info);
    }
    LazyHash::new(book)
});
static FONTS: LazyLock<Vec<Font>> = LazyLock::new(|| {
    let faces: [&'static [u8]; 5] = [
        include_bytes!("../../../assets/fonts/IBMPlexSans-Regular.ttf"),
        include_bytes!("../../../assets/fonts/IBMPlexSans-SemiBold.ttf"),
        include_bytes!("../../../assets/fonts/IBMPlexSans-Bold.ttf"),
        include_bytes!("../../../assets/fonts/IBMPlexSansCondensed-Regular.ttf"),
        include_bytes!("../../../assets/fonts/IBMPlexSansCondensed-SemiBold.ttf"),
    ];
    faces.into_iter().flat_map(|face| Font::iter(Bytes::new(face))).collect()
});

/// What is laid out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Template {
    /// Load cards.
    Cards,
    /// The sheet of a jar test.
    Jar,
    /// The sheet of a day, which takes the load cards in behind it.
    Evening,
    /// The record book.
    Book,
    /// Information on applications, to be displayed for workers.
    Workers,
    /// The season review.
    Review,
}

/// What a template reads: the name of a file, and what stands in it.
pub(crate) type Data = (&'static str, String);

/// The file from which load cards are laid out.
pub(crate) const CARDS_DATA: &str = "cards.json";

impl Template {
    fn source(self) -> &'static Source {
        match self {
            Self::Cards => &CARDS,
            Self::Jar => &JAR,
            Self::Evening => &EVENING,
            Self::Book => &BOOK_OF_RECORDS,
            Self::Workers => &WORKERS,
            Self::Review => &REVIEW,
        }
    }
}

/// Who hears of the pieces that are laid out, and how many there are.
#[derive(Clone, Copy)]
pub(crate) struct Told<'a> {
    pub(crate) tell: &'a Tell<'a>,
    pub(crate) of: usize,
}

impl Told<'_> {
    /// For a layout that is over at once.
    pub(crate) const NOBODY: Told<'static> = Told { tell: &untold, of: 0 };

    fn behind(self, count: usize) -> Result<(), Cancelled> {
        (self.tell)(count, Some(self.of).filter(|of| *of > 0))
    }

    /// Says that all of it is laid out; an error where nobody waits for it.
    pub(crate) fn all_behind(self) -> Result<(), Cancelled> {
        self.behind(self.of)
    }
}

/// A template reads an empty file of this name and a number before it lays out the piece of that number. Typst asks nobody whether it is to
/// go on, so that is where a layout is told of and ended.
const BEHIND: &str = "behind/";

/// The desk on which one layout is made.
pub(crate) struct Desk<'a> {
    template: Template,
    data: Vec<(&'static str, Bytes)>,
    told: Told<'a>,
}

impl<'a> Desk<'a> {
    /// A desk with a template on it and what it lays out, as JSON.
    pub(crate) fn new(template: Template, data: Vec<Data>, told: Told<'a>) -> Self {
        let data = data.into_iter().map(|(name, text)| (name, Bytes::from_string(text))).collect();
        Self { template, data, told }
    }
}

impl World for Desk<'_> {
    fn library(&self) -> &LazyHash<Library> {
        &LIBRARY
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &BOOK
    }

    fn main(&self) -> FileId {
        self.template.source().id()
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        let template = self.template.source();
        if id == template.id() {
            Ok(template.clone())
        } else if id == CARDS.id() {
            // The sheet of a day takes the cards in.
            Ok(CARDS.clone())
        } else if id == OUTLINE.id() {
            // What both draw a field with.
            Ok(OUTLINE.clone())
        } else {
            Err(missing(id))
        }
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        // A package would have files of its own.
        if *id.root() != VirtualRoot::Project {
            return Err(missing(id));
        }
        let wanted = id.vpath().get_without_slash();
        if let Some(count) = wanted.strip_prefix(BEHIND) {
            let told = self.told.behind(count.parse().unwrap_or_default());
            return told.map(|()| Bytes::new([])).map_err(|ended| FileError::Other(Some(ended.to_string().into())));
        }
        let found = self.data.iter().find(|(name, _)| *name == wanted);
        found.map(|(_, bytes)| bytes.clone()).ok_or_else(|| missing(id))
    }

    fn font(&self, index: usize) -> Option<Font> {
        FONTS.get(index).cloned()
    }

    /// None: a card carries its dates as text, and a clock would make two prints differ.
    fn today(&self, _offset: Option<Duration>) -> Option<Datetime> {
        None
    }
}

/// A template under its own name, so that one may take in another.
fn source(name: &str, text: &str) -> Source {
    match VirtualPath::new(name) {
        Ok(path) => Source::new(RootedPath::new(VirtualRoot::Project, path).intern(), text.to_owned()),
        Err(_) => Source::detached(text),
    }
}

fn missing(id: FileId) -> FileError {
    FileError::NotFound(PathBuf::from(id.vpath().get_without_slash()))
}

#[cfg(test)]
mod tests;
