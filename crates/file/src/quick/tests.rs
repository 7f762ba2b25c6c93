//! The quick reader against RON's own, on the demo farm and on what it becomes when letters of it are changed.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use tankard_core::farm::Farm;
use tankard_core::progress::untold;

use super::blocks::Blocks;
use super::{in_blocks, whole};
use crate::document::{layout, options, write};

const DEMO: &str = include_str!("../../../../demo-farm/larkspur-bend.ron");
/// Small enough for several blocks.
const SIZE: usize = 9_000;

fn by_ron(text: &str) -> Option<Farm> {
    options().from_str(text).ok()
}

/// What is read quickly is what RON's own reader reads.
fn agrees(text: &str, what: &str) -> (bool, bool) {
    let (quick, split) = (whole(text), in_blocks(text.as_bytes(), SIZE, &untold).ok().map(|(farm, _)| farm));
    if quick.is_none() && split.is_none() {
        return (false, false);
    }
    let slow = by_ron(text).and_then(|farm| write(&farm).ok());
    for farm in [&quick, &split].into_iter().flatten() {
        assert_eq!(write(farm).ok(), slow, "{what}");
    }
    (quick.is_some(), split.is_some())
}

#[test]
fn the_demo_farm_is_read_quickly_and_in_blocks() {
    let mut blocks = Blocks::new(DEMO.as_bytes(), SIZE);
    blocks.head().unwrap().unwrap();
    let count = std::iter::from_fn(|| blocks.next().unwrap()).count();
    assert!(count > 5, "{count}");
    assert_eq!(agrees(DEMO, "the demo farm"), (true, true));
}

/// A large log has its records laid out in fewer lines, which both readers take as they take any other layout.
#[test]
fn records_laid_out_closely_are_read_in_blocks() {
    for depth in 2..5 {
        let text = options().to_string_pretty(&by_ron(DEMO).unwrap(), layout().depth_limit(depth)).unwrap();
        assert_eq!(agrees(&text, "closely"), (true, true), "{depth}");
    }
}

#[test]
fn comments_other_blanks_and_escapes_are_read_quickly() {
    for (what, text) in [
        ("a comment", DEMO.replacen("    format: 1,", "// mine\n  format /* a /* b */ */ : 1,", 1)),
        ("no blanks", DEMO.replace("\n        ", "\n")),
        ("no names", DEMO.replace(": Record(", ": (")),
        ("tabs and line ends of another system", DEMO.replace("    ", "\t").replace('\n', "\r\n")),
        ("an escape", DEMO.replacen("Poison control", "Poison \\\"control\\\" \\n\\t\\\\ here", 1)),
        ("other letters", DEMO.replacen("Poison control", "Gift-Notruf für Köln, 中毒", 1)),
        ("a comma left out", DEMO.replacen("\n    cards: {},\n)", "\n    cards: {}\n)", 1)),
    ] {
        assert_ne!(text, DEMO, "{what}");
        assert!(agrees(&text, what).0, "{what}");
    }
}

#[test]
fn what_it_does_not_know_is_left_to_the_other_reader() {
    for (what, text) in [
        ("a setting", format!("#![enable(implicit_some)]\n{DEMO}")),
        ("a raw text", DEMO.replacen("\"Larkspur Bend (demo)\"", "r#\"Larkspur Bend (demo)\"#", 1)),
        ("a letter by number", DEMO.replacen("Larkspur", "\\u{4c}arkspur", 1)),
        ("a number in another base", DEMO.replacen("format: 1", "format: 0x1", 1)),
        (
            "that something is there, said",
            DEMO.replacen("place: Place(", "place: Some(Place(", 1).replacen(
                "zone: \"America/Chicago\",\n    ),",
                "zone: \"America/Chicago\",\n    )),",
                1,
            ),
        ),
    ] {
        assert_ne!(text, DEMO, "{what}");
        assert_eq!(agrees(&text, what), (false, false), "{what}");
        assert!(by_ron(&text).is_some(), "{what}");
    }
}

/// What looks like a border between records stands inside one, and records stand elsewhere.
#[test]
fn a_false_border_is_none() {
    let false_border = "a\n        ),\n        \"2031-x\": Record(\n            name: \"b";
    let in_note = DEMO.replacen("    records: {\n", &format!("    records: {{\n        \"false\": Record(\n            name: \"{}\",\n            date: \"2031-01-01\",\n            fields: {{}},\n            lines: [],\n        ),\n", false_border.replace("\"2031-x\"", "\\\"2031-x\\\"").replace(": \"b", ": \\\"b")), 1);
    assert_eq!(by_ron(&in_note).unwrap().records.len(), by_ron(DEMO).unwrap().records.len() + 1);
    agrees(&in_note, "in a text");
    let in_comment = DEMO.replacen("    records: {\n", &format!("    records: {{\n/* {false_border}\n */\n"), 1);
    agrees(&in_comment, "in a comment");
    // The farm's records come first elsewhere: the place that looks like theirs is in a comment.
    let before = DEMO.replacen("Farm(\n", "Farm(\n/*\n    records: {\n    } */\n", 1);
    assert_eq!(agrees(&before, "in a comment before"), (true, false));
    let first = DEMO.find("        \"20").map(|at| &DEMO[at..]).unwrap();
    let id = &first[..first.find(": Record").unwrap_or(40)];
    let twice = DEMO.replacen("\n    records: {\n", &format!("\n    records: {{\n{id}: Record(\n            name: \"b\",\n            date: \"2031-01-01\",\n            fields: {{}},\n            lines: [],\n        ),\n"), 1);
    agrees(&twice, "an id twice");
}

/// Numbers that look like chance (`splitmix64`, Steele, Lea and Flood 2014).
struct Draw(u64);

impl Draw {
    fn below(&mut self, end: usize) -> usize {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        usize::try_from((z ^ (z >> 31)) >> 8).unwrap() % end.max(1)
    }
}

/// The demo farm cut down to what is read in a blink: its first fields, all kinds of nouns, ten records.
fn small() -> String {
    let mut farm = by_ron(DEMO).unwrap();
    let kept = |at: usize, every: usize| at.is_multiple_of(every);
    let ids: Vec<String> =
        farm.records.keys().enumerate().filter(|(at, _)| kept(*at, 7)).map(|(_, id)| id.clone()).collect();
    farm.records.retain(|id, _| ids.contains(id));
    let ids: Vec<String> = farm.products.keys().take(2).cloned().collect();
    farm.products.retain(|id, _| ids.contains(id));
    farm.forecast.hours.truncate(2);
    write(&farm).unwrap()
}

/// Each change of a letter, a word or a line is read by both readers alike, or by RON's own alone.
#[test]
fn changed_letters_are_read_alike() {
    const SIGNS: [&str; 30] = [
        "\"", "\\", "(", ")", "[", "]", "{", "}", ",", ":", "/", "//", "/*", "*/", "\n", " ", "0", "1", "-", ".", "_",
        "a", "None", "Some(", "true", "r#", "é", "'", "\u{85}", "\u{0}",
    ];
    let cases: usize = std::env::var("PROPTEST_CASES").ok().and_then(|cases| cases.parse().ok()).unwrap_or(400);
    let (text, mut draw) = (small(), Draw(2031));
    let (mut quick, mut slow) = (0, 0);
    for case in 0..cases {
        let mut changed = text.clone();
        for _ in 0..=draw.below(2) {
            let place = |draw: &mut Draw, text: &str| {
                let at = draw.below(text.len());
                (at..text.len()).find(|at| text.is_char_boundary(*at)).unwrap_or(0)
            };
            let at = place(&mut draw, &changed);
            let end = (at + 1 + draw.below(3)..=changed.len())
                .find(|at| changed.is_char_boundary(*at))
                .unwrap_or(changed.len());
            let sign = SIGNS[draw.below(SIGNS.len())];
            match draw.below(5) {
                0 => changed.replace_range(at..end, ""),
                1 => changed.replace_range(at..end, sign),
                2 => changed.insert_str(at, sign),
                3 => {
                    // A line comes twice or goes.
                    let line = changed[at..].find('\n').map_or(changed.len(), |end| at + end + 1);
                    let end = changed[line..].find('\n').map_or(changed.len(), |end| line + end + 1);
                    let own = changed[line..end].to_owned();
                    if draw.below(2) == 0 {
                        changed.insert_str(line, &own);
                    } else {
                        changed.replace_range(line..end, "");
                    }
                }
                _ => {
                    let other = place(&mut draw, &changed);
                    let (from, to) = (at.min(other), at.max(other).min(at.min(other) + 400));
                    let to = (to..=changed.len()).find(|at| changed.is_char_boundary(*at)).unwrap_or(from);
                    changed.replace_range(from..to, "");
                }
            }
        }
        let (whole, _) = agrees(&changed, &format!("case {case}"));
        if whole { quick += 1 } else { slow += 1 }
    }
    // Both happen, or nothing is tried.
    assert!(quick > cases / 20 && slow > cases / 20, "{quick} were read quickly, {slow} were not");
}
