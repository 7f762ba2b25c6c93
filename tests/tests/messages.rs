//! The messages of each language: all there, all used, with the same values in them; and the load card in Spanish.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use fluent_syntax::parser::parse;
use tankard_core::language::Language;
use tankard_core::loads::card::cards;
use tankard_core::plan::plan;

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

fn values_in<'t>(pattern: &Pattern<&'t str>, names: &mut BTreeSet<&'t str>) {
    for element in &pattern.elements {
        if let PatternElement::Placeable { expression } = element {
            match expression {
                Expression::Inline(InlineExpression::VariableReference { id }) => {
                    names.insert(id.name);
                }
                Expression::Select { selector, variants } => {
                    if let InlineExpression::VariableReference { id } = selector {
                        names.insert(id.name);
                    }
                    for variant in variants {
                        values_in(&variant.value, names);
                    }
                }
                Expression::Inline(InlineExpression::StringLiteral { .. }) => {}
                other @ Expression::Inline(_) => panic!("a message uses what the test does not look into: {other:?}"),
            }
        }
    }
}

/// The messages of a language, each with the names of what stands in it.
fn messages(language: Language) -> BTreeMap<String, BTreeSet<String>> {
    let mut all = BTreeMap::new();
    let folder = root().join("assets/words").join(language.code());
    for file in std::fs::read_dir(folder).unwrap() {
        let text = std::fs::read_to_string(file.unwrap().path()).unwrap();
        for entry in parse(text.as_str()).unwrap_or_else(|(_, errors)| panic!("{}: {errors:?}", language.name())).body {
            if let Entry::Message(message) = entry {
                let mut names = BTreeSet::new();
                values_in(message.value.as_ref().unwrap(), &mut names);
                let names = names.into_iter().map(str::to_owned).collect();
                assert!(all.insert(message.id.name.to_owned(), names).is_none(), "{} stands twice", message.id.name);
            }
        }
    }
    assert!(all.len() > 150, "{}: {}", language.name(), all.len());
    all
}

fn sources(folder: &Path, text: &mut String) {
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            sources(&path, text);
        } else if path.extension().is_some_and(|end| ["rs", "typ", "csv"].iter().any(|known| end == *known)) {
            text.push_str(&std::fs::read_to_string(path).unwrap());
        }
    }
}

/// A message that one language lacks would be said by its name on the card, and a value left out would be missing at the tank.
#[test]
fn each_language_has_each_message_with_the_same_values() {
    let english = messages(Language::English);
    for language in Language::ALL {
        let here = messages(language);
        for (id, values) in &english {
            assert_eq!(here.get(id), Some(values), "{id} in {}", language.name());
        }
        assert_eq!(here.len(), english.len(), "{}", language.name());
    }
}

/// Each name in quotes, or behind a point as templates write it.
fn named(text: &str) -> BTreeSet<&str> {
    let is_part = |letter: char| letter.is_ascii_lowercase() || letter.is_ascii_digit() || letter == '-';
    let mut names = BTreeSet::new();
    for (at, _) in text.match_indices(['"', '.', ',']) {
        let rest = &text[at + 1..];
        names.insert(&rest[..rest.find(|letter| !is_part(letter)).unwrap_or(rest.len())]);
    }
    names
}

/// Each `t!` with its message and the names of its values, and where it stands in the text.
fn said(text: &str) -> Vec<(&str, BTreeSet<&str>)> {
    let mut all = Vec::new();
    for (at, _) in text.match_indices("t!(") {
        let inside = text[at + 3..].trim_start();
        if text[..at].ends_with(|before: char| before.is_alphanumeric() || before == '_') || !inside.starts_with('"') {
            continue;
        }
        let (id, rest) = inside[1..].split_once('"').unwrap();
        // Values stand one level deep, behind a comma; texts in quotes are jumped over.
        let (mut names, mut depth, mut from, mut quoted, mut before) = (BTreeSet::new(), 0, None, false, ' ');
        for (at, letter) in rest.char_indices() {
            match letter {
                '"' if before != '\\' => quoted = !quoted,
                _ if quoted => {}
                '(' | '[' | '{' => depth += 1,
                ')' | ']' | '}' if depth > 0 => depth -= 1,
                ')' => break,
                ',' if depth == 0 => from = Some(at + 1),
                '=' if depth == 0 => {
                    if let Some(from) = from.take() {
                        names.insert(rest[from..at].trim());
                    }
                }
                _ => {}
            }
            before = letter;
        }
        all.push((id, names));
    }
    all
}

/// Each message is named somewhere, each name is a message, and what is said hands over what the message holds.
#[test]
fn no_message_is_missing_or_left_over() {
    let mut text = String::new();
    sources(&root().join("crates"), &mut text);
    sources(&root().join("assets"), &mut text);
    let (messages, named) = (messages(Language::English), named(&text));
    // Sentences of rule tables are found by their words, which a test of the core holds.
    let unused: Vec<&String> =
        messages.keys().filter(|id| !named.contains(id.as_str()) && !id.starts_with("row-")).collect();
    assert!(unused.is_empty(), "no one says {unused:?}");
    let missing: Vec<&&str> =
        named.iter().filter(|id| id.starts_with("card-") && !messages.contains_key(**id)).collect();
    assert!(missing.is_empty(), "there is no message {missing:?}");
    let said = said(&text);
    assert!(said.len() > 4_000, "{}", said.len());
    for (id, names) in said {
        let message = messages.get(id).unwrap_or_else(|| panic!("there is no message {id}"));
        assert!(
            message.iter().map(String::as_str).eq(names.iter().copied()),
            "{id} holds {message:?} and is given {names:?}"
        );
    }
}

fn texts(language: &[Language]) -> Vec<String> {
    let mut farm = tankard_file::read(&std::fs::read(root().join("demo-farm/larkspur-bend.ron")).unwrap()).unwrap();
    farm.card_languages = language.to_vec();
    let mut all = Vec::new();
    for id in farm.passes.keys() {
        for card in cards(&farm, &plan(&farm, id).unwrap()) {
            all.push(format!("{card:#?}"));
        }
    }
    assert!(all.len() > 5);
    all
}

/// The safety lines are all there in Spanish and none is left in English; names, amounts and volumes are the same.
#[test]
fn the_spanish_card_says_all_that_the_english_one_does() {
    let (english, spanish) = (texts(&[]), texts(&[Language::Spanish]));
    assert_eq!(english.len(), spanish.len());
    let numbers = |text: &str| -> Vec<String> {
        // The Spanish card has no commas in its thousands.
        let signs: Vec<char> = text.chars().collect();
        let digit = |at: usize| signs.get(at).is_some_and(char::is_ascii_digit);
        let kept = |at: &usize| signs[*at] != ',' || *at == 0 || !digit(at - 1) || !digit(at + 1);
        let text: String = (0..signs.len()).filter(kept).map(|at| signs[at]).collect();
        let words = text.split(|letter: char| !(letter.is_ascii_digit() || letter == '.' || letter == ':'));
        // "4.ª" is "4th".
        let words = words.map(|word| word.trim_end_matches('.'));
        words.filter(|word| word.chars().any(|letter| letter.is_ascii_digit())).map(str::to_owned).collect()
    };
    for (english, spanish) in english.iter().zip(&spanish) {
        let sorted = |text: &str| {
            let mut all = numbers(text);
            all.sort();
            all
        };
        // What waits in the plan is said in the plan's language.
        assert_eq!(sorted(english), sorted(spanish), "{spanish}");
        for word in [
            "\"agitator on\"",
            "Rinse each",
            "air gap",
            "after the last of the spray",
            "Wind at the boom",
            "no inversion",
            " to 600 gal",
            "Signature",
        ] {
            assert!(!spanish.contains(word), "\"{word}\" stands in\n{spanish}");
        }
        for word in [
            "agitador encendido",
            "Enjuague tres veces",
            "válvula antirretorno",
            "Nunca junte concentrados",
            "inversión térmica",
            "Firma",
        ] {
            assert!(spanish.contains(word), "\"{word}\" is missing in\n{spanish}");
        }
    }
}

/// A card in two languages holds each text in both, the first on top.
#[test]
fn a_card_in_two_languages_says_each_thing_twice() {
    let both = texts(&[Language::Spanish, Language::English]);
    for card in &both {
        assert!(card.contains("agitador encendido / agitator on"), "{card}");
        let (first, second) = (card.find("Enjuague tres veces").unwrap(), card.find("Rinse each emptied").unwrap());
        assert!(first < second, "{card}");
    }
}
