//! Directions of labels against `reference/wording.csv`: sentences as labels in the United States, Canada, Australia, Europe and in Spanish
//! word them, all invented, each with the statements that it makes, or with none where it speaks of another use, place or condition.
//!
//! The sentences of the half `working` were looked at while the phrases were written; those of the half `aside` were written with them and
//! looked at when the phrases were done. Those of `later` and of `last` were written after that, so that what was read of them at first sight
//! tells what can be hoped for of a label: 35 of 65, and 38 of 53 when the phrases had been added that `later` lacked; no reading was
//! wrong. Then the phrases were added that they lacked, too. A row marked `unread` makes a statement that is not read: where it is read after all the mark is stale, and the test
//! fails. A wrong reading has no mark: there must be none.

use std::collections::BTreeMap;

use serde::Deserialize;
use tankard_core::farm::{Active, Formulation, Product, ProductKind, Says};
use tankard_core::label::directions::against::in_form;
use tankard_core::label::directions::{Reading, read};
use tankard_core::quantity::{ActiveBasis, AsTyped, Units};

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Row {
    half: String,
    /// What it is about, as the table is counted.
    about: String,
    text: String,
    /// Statements, with a stroke between them; empty where it makes none that the form can hold.
    says: String,
    /// "unread" where it makes one that is not read.
    mark: String,
    source: String,
}

impl Row {
    fn says(&self) -> Vec<&str> {
        self.says.split(" | ").filter(|says| !says.is_empty()).collect()
    }
}

fn rows() -> Result<Vec<Row>, csv::Error> {
    let path = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("reference/wording.csv");
    csv::Reader::from_path(path)?.deserialize().collect()
}

fn product() -> Product {
    let mut product = Product::new("Invented", ProductKind::Herbicide, Formulation::SL);
    if let Ok(content) = AsTyped::parse("540 g ae/L") {
        let name = "inventedone".to_owned();
        product.actives.push(Active { name, group: String::new(), basis: ActiveBasis::AcidEquivalent, content });
    }
    product
}

fn reading(text: &str) -> Reading {
    read(text, &product(), Units::UsCustomary)
}

/// "rate in corn: 16 to 22 fl oz/ac".
fn lines(reading: &Reading) -> Vec<String> {
    let line = |found: &tankard_core::label::directions::Found| {
        let crop = match found.statement.crop.as_str() {
            "" => String::new(),
            crop => format!(" in {crop}"),
        };
        format!("{}{crop}: {}", found.statement.says.name(), in_form(&found.statement, None))
    };
    reading.found.iter().map(line).collect()
}

#[test]
fn each_sentence_is_read_as_it_was() {
    let mut failures = Vec::new();
    let mut counts: BTreeMap<String, [usize; 3]> = BTreeMap::new();
    for row in rows().unwrap() {
        assert_eq!(row.source, "wording as labels use it, invented", "{}", row.text);
        let (wanted, reading) = (row.says(), reading(&row.text));
        let got = lines(&reading);
        let expected: Vec<&str> = if row.mark == "unread" { Vec::new() } else { wanted.clone() };
        if got != expected {
            failures.push(format!("{}: {}\n  read as {got:?}\n  instead of {expected:?}", row.about, row.text));
        }
        // What is not read is told, with why.
        if expected.is_empty() {
            assert!(reading.left.iter().all(|left| !left.why.is_empty()) && !reading.left.is_empty(), "{}", row.text);
        }
        assert!(["", "unread"].contains(&row.mark.as_str()) && !(wanted.is_empty() && row.mark == "unread"));
        let at = if wanted.is_empty() { 2 } else { usize::from(row.mark == "unread") };
        let count = counts.entry(row.half.clone()).or_default();
        count[at] += 1;
    }
    assert!(failures.is_empty(), "{} readings changed:\n{}", failures.len(), failures.join("\n"));
    for (half, [right, unread, left]) in &counts {
        println!("{half}: {right} of {} read, none wrong; {left} that make no statement are left", right + unread);
    }
    assert!(counts["working"].iter().sum::<usize>() >= 200 && counts["aside"].iter().sum::<usize>() >= 200);
}

/// Whether a statement may be read from a sentence that holds a word which turns others.
fn is_in_own_words(says: &Says) -> bool {
    matches!(says, Says::Wear { .. } | Says::Handling { .. } | Says::CleanOut { .. } | Says::NotWith { .. })
}

/// A word that turns a sentence keeps it from being read, wherever it stands in it.
#[test]
fn a_word_that_turns_is_never_passed_over() {
    for row in
        rows().unwrap().iter().filter(|row| !row.says.is_empty() && row.mark.is_empty() && row.about != "spanish")
    {
        let words: Vec<&str> = row.text.split(' ').collect();
        for (at, turn) in
            (0..=words.len()).zip(["unless", "except", "aerial", "pasture", "livestock"].into_iter().cycle())
        {
            let mut turned = words.clone();
            turned.insert(at, turn);
            let text = turned.join(" ");
            for found in reading(&text).found.iter().filter(|found| !is_in_own_words(&found.statement.says)) {
                let own = |word: &str| found.sentences.iter().any(|sentence| sentence.text.contains(word));
                assert!(!own(turn), "{text}\n  read as {:?}", found.statement.says);
            }
        }
    }
}

/// Without its "not" a sentence does not say what it says with it.
#[test]
fn what_is_forbidden_is_not_read_without_its_not() {
    let rows = rows().unwrap();
    let mut tried = 0;
    for row in rows.iter().filter(|row| !row.says.is_empty() && row.mark.is_empty()) {
        for word in ["not ", "NOT ", "No "] {
            if row.text.matches(word).count() != 1 || row.text.contains("No more") || row.text.contains("No later") {
                continue;
            }
            tried += 1;
            let text = row.text.replacen(word, "", 1);
            let with = lines(&reading(&row.text));
            let without = lines(&reading(&text));
            // Sentences beside it say what they said.
            let of_it: Vec<&String> = without.iter().filter(|line| with.contains(line)).collect();
            let alone = row.text.matches(". ").count() == 0 && row.text.matches(';').count() == 0;
            assert!(!alone || of_it.is_empty(), "{text}\n  read as {of_it:?}");
        }
    }
    assert!(tried > 50, "{tried}");
}
