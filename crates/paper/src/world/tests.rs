//! A template gives away nothing: it reads what it is given and no more, and a text is never markup. The texts are what the language
//! of templates would act on. Source: Typst's reference, Syntax, and its functions for files, packages, plugins and dates.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::Value;
use tankard_core::farm::Paper;
use tankard_core::farm::card::CardContent;
use typst_layout::PagedDocument;

use super::*;
use crate::tests::{runs, typical};
use crate::{Sheet, pdf};

/// The world of a template with another text in the template's place.
struct Probe<'a> {
    desk: Desk<'a>,
    main: Source,
}

impl World for Probe<'_> {
    fn library(&self) -> &LazyHash<Library> {
        self.desk.library()
    }
    fn book(&self) -> &LazyHash<FontBook> {
        self.desk.book()
    }
    fn main(&self) -> FileId {
        self.main.id()
    }
    fn source(&self, id: FileId) -> FileResult<Source> {
        if id == self.main.id() { Ok(self.main.clone()) } else { self.desk.source(id) }
    }
    fn file(&self, id: FileId) -> FileResult<Bytes> {
        self.desk.file(id)
    }
    fn font(&self, index: usize) -> Option<Font> {
        self.desk.font(index)
    }
    fn today(&self, offset: Option<Duration>) -> Option<Datetime> {
        self.desk.today(offset)
    }
}

/// Whether a template of these words can be laid out.
fn lays_out(words: &str) -> Result<(), String> {
    let desk = Desk::new(Template::Cards, vec![("cards.json", "[]".to_owned())], Told::NOBODY);
    let probe = Probe { desk, main: source("probe.typ", words) };
    let compiled = typst::compile::<PagedDocument>(&probe);
    compiled.output.map(|_| ()).map_err(|errors| errors.iter().map(|one| one.message.to_string()).collect())
}

#[test]
fn a_template_reads_what_it_is_given_and_nothing_else() {
    for words in ["#json(\"cards.json\")", "#read(\"/cards.json\")", "#import \"outline.typ\": compass", "words"] {
        assert_eq!(lays_out(words), Ok(()), "{words}");
    }
    // A file that is there, and the package that most templates of others begin with.
    assert!(std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("Cargo.toml").is_file());
    for words in [
        "#read(\"/etc/passwd\")",
        "#read(\"Cargo.toml\")",
        "#read(\"../cards.json\")",
        "#read(\"../../../../../../etc/passwd\")",
        "#read(\"C:\\\\Windows\\\\win.ini\")",
        "#read(\"\\\\\\\\host\\\\share\\\\x\")",
        "#read(\"file:///etc/passwd\")",
        "#read(\"http://localhost/x\")",
        "#read(\"evening.json\")",
        "#csv(\"/etc/passwd\")",
        "#image(\"/etc/passwd\")",
        "#image(\"assets/day.png\")",
        "#plugin(\"x.wasm\")",
        "#bibliography(\"x.bib\")",
        "#include \"/etc/passwd\"",
        "#include \"jar-test.typ\"",
        "#import \"other.typ\": x",
        "#import \"@preview/cetz:0.3.0\": canvas",
        "#import \"@local/x:0.1.0\": x",
        "#datetime.today()",
    ] {
        assert!(lays_out(words).is_err(), "{words}");
    }
    // What is handed in by a template is the farm's alone.
    assert_eq!(lays_out("#assert(sys.inputs.len() == 0)"), Ok(()));
}

#[test]
fn no_package_has_the_name_of_what_is_given() {
    let desk = Desk::new(Template::Cards, vec![("cards.json", "[]".to_owned())], Told::NOBODY);
    let of_package = |path: &str| {
        let root = VirtualRoot::Package("@preview/x:0.1.0".parse().unwrap());
        RootedPath::new(root, VirtualPath::new(path).unwrap()).intern()
    };
    for path in ["cards.json", "load-card.typ", "outline.typ", "typst.toml"] {
        assert!(desk.file(of_package(path)).is_err(), "{path}");
        assert!(desk.source(of_package(path)).is_err(), "{path}");
    }
    let own = RootedPath::new(VirtualRoot::Project, VirtualPath::new("cards.json").unwrap()).intern();
    assert!(desk.file(own).is_ok());
    assert_eq!(desk.today(None), None);
}

/// What a template would act on, were it not a text.
const MARKUP: [&str; 26] = [
    "#read(\"/etc/passwd\")",
    "#import \"@preview/x:0.1.0\": *",
    "#panic()",
    "#while true {}",
    "#set page(width: 1pt)",
    "#pagebreak()",
    "#x",
    "$x^2 / 0$",
    "@ref",
    "<label>",
    "`raw`",
    "```typ #panic() ```",
    "*bold*",
    "_it_",
    "= Heading",
    "- item",
    "+ item",
    "/ term: x",
    "\\u{41}",
    "\\",
    "// gone",
    "/* gone",
    "[x]",
    "{x}",
    "\"quoted\" 'quoted'",
    "http://localhost/x",
];

/// What lays out badly: letters that are not seen, turn the direction, or cannot stand in a PDF; and far too many of them.
fn odd() -> Vec<String> {
    let short =
        ["\u{0}\u{7}\u{1b}[2J", "\u{202e}abc\u{202c}\u{2066}x", "\u{feff}\u{fffe}a\u{300}\u{301}😀", "אבג\r\n\tx"];
    short.map(str::to_owned).into_iter().chain(["x".repeat(3_000), "x ".repeat(500)]).collect()
}

/// A document with a text wherever it takes any.
fn spoilt<T: Serialize + DeserializeOwned>(of: &T, text: &str) -> (T, usize) {
    fn places(value: &Value, at: &str, all: &mut Vec<String>) {
        match value {
            Value::String(_) => all.push(at.to_owned()),
            Value::Array(of) => of.iter().enumerate().for_each(|(n, one)| places(one, &format!("{at}/{n}"), all)),
            Value::Object(of) => of.iter().for_each(|(key, one)| places(one, &format!("{at}/{key}"), all)),
            _ => {}
        }
    }
    let mut value = serde_json::to_value(of).unwrap();
    let mut all = Vec::new();
    places(&value, "", &mut all);
    let mut taken = 0;
    for at in all {
        let old = value.pointer(&at).cloned().unwrap();
        *value.pointer_mut(&at).unwrap() = Value::String(text.to_owned());
        if serde_json::from_value::<T>(value.clone()).is_ok() {
            taken += 1;
        } else {
            *value.pointer_mut(&at).unwrap() = old;
        }
    }
    (serde_json::from_value(value).unwrap(), taken)
}

/// A card with one or two of each thing.
fn small(paper: Paper) -> CardContent {
    let mut card = typical(paper);
    card.steps.truncate(2);
    card.gauge.layers.truncate(1);
    card.gauge.marks.truncate(1);
    card.fields.truncate(1);
    for list in [&mut card.settings, &mut card.wear, &mut card.cautions, &mut card.open_findings, &mut card.emergency] {
        list.truncate(1);
    }
    card
}

/// The words on the pages of a card.
fn words(content: &CardContent) -> String {
    let sheet = Sheet { number: "2031-0001", issued: None, reprint: None, content };
    let (document, warnings) = crate::compile(std::slice::from_ref(&sheet), &untold).unwrap();
    assert!(warnings.is_empty(), "{warnings:?}");
    let mut found = Vec::new();
    for page in document.pages() {
        runs(&page.frame, typst::layout::Transform::identity(), &mut found);
    }
    found.into_iter().map(|run| run.words).collect()
}

#[test]
fn a_text_on_a_card_is_never_markup() {
    let plain = |text: &str| text.chars().filter(|letter| !letter.is_whitespace()).collect::<String>();
    // A layout is made for some at a time, as far as a page takes them.
    for texts in MARKUP.chunks(4) {
        let (card, taken) = spoilt(&small(Paper::Letter), &texts.join("\n"));
        assert!(taken > 20, "{taken}");
        // Each begins a line, as some markup must; lines are broken anywhere.
        let page = plain(&words(&card));
        for text in texts {
            assert!(page.contains(&plain(text)), "{text}");
        }
    }
}

#[test]
fn odd_texts_are_laid_out_or_refused() {
    for text in odd() {
        let (card, _) = spoilt(&small(Paper::A4), &text);
        let sheet = Sheet { number: "2031-0001", issued: None, reprint: None, content: &card };
        match pdf(std::slice::from_ref(&sheet)) {
            Ok(bytes) => assert!(bytes.starts_with(b"%PDF")),
            Err(crate::PaperError::TooLong { .. }) => assert!(text.len() > 100, "{text:?}"),
            Err(other) => panic!("{text:?}: {other}"),
        }
    }
}
