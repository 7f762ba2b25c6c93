//! Runs the tables of `tests/reference/` against the core.
//!
//! # The tables
//! One row is one check: `id`, `check` (which function of [`checks`] runs it), `input` and `with` (further inputs,
//! `name=value; name=value`), `expected`, `tolerance` (absolute in `unit`, or relative where it ends with `%`; empty
//! where texts are compared), `unit`, `mark`, `source` (a key of `sources.csv`), `at` (where in the source, or what the
//! row catches) and `deviation`.
//!
//! A row is marked `published` where its figure is printed in its source, and `derived` where it is our own arithmetic
//! on exact definitions or on published figures. A row with a `deviation` is expected **not** to agree, and says why: a
//! printed value that was rounded or misprinted. Where such a row does agree the mark is stale, and the test fails.
//!
//! In `guidance.csv` a published rate stands in SI units, reckoned apart from the program by exact definitions; how it is
//! printed stands under `at`. Rows of common practice, and of a class that the source means without naming it, are marked
//! `derived`.

mod checks;

use std::collections::{BTreeMap, BTreeSet};
use std::path::PathBuf;

use checks::Verdict;
use serde::Deserialize;

/// Tables that must be there, so that none is lost unnoticed.
const TABLES: [&str; 19] = [
    "active",
    "calibration",
    "convert",
    "course",
    "delta_t",
    "density",
    "equal",
    "ground",
    "guidance",
    "jar",
    "loads",
    "nozzle",
    "order",
    "rinse",
    "shopping",
    "sizes",
    "sun",
    "water",
    "wet_bulb",
];
/// Fewest published rows that must pass.
const LEAST_ROWS: usize = 400;
/// Fewest published sources of which a row must pass.
const LEAST_SOURCES: usize = 60;

/// One row of a table.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Row {
    id: String,
    check: String,
    input: String,
    with: String,
    expected: String,
    tolerance: String,
    unit: String,
    mark: Mark,
    source: String,
    #[allow(dead_code)] // For the reader of the table.
    at: String,
    deviation: String,
}

/// Where the expected value comes from.
#[derive(Clone, Copy, Debug, Deserialize, PartialEq, Eq)]
#[serde(rename_all = "lowercase")]
enum Mark {
    Published,
    Derived,
}

#[derive(Deserialize)]
struct Source {
    key: String,
    citation: String,
}

impl Row {
    /// A further input.
    fn with(&self, name: &str) -> Option<&str> {
        self.with
            .split(';')
            .filter_map(|pair| pair.split_once('='))
            .find(|(key, _)| key.trim() == name)
            .map(|(_, v)| v.trim())
    }

    /// A further input that must be there.
    fn need(&self, name: &str) -> Result<&str, String> {
        self.with(name).ok_or_else(|| format!("the row has no \"{name}\""))
    }
}

fn read<T: for<'de> Deserialize<'de>>(name: &str) -> Result<Vec<T>, String> {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("reference").join(format!("{name}.csv"));
    // A table that a script makes says so in its first line.
    let mut reader =
        csv::ReaderBuilder::new().comment(Some(b'#')).from_path(&path).map_err(|error| format!("{name}: {error}"))?;
    reader.deserialize().collect::<Result<_, _>>().map_err(|error| format!("{name}: {error}"))
}

fn number(text: &str) -> Result<f64, String> {
    text.parse().map_err(|_| format!("\"{text}\" is not a number"))
}

/// Whether a found number is the expected one within the row's tolerance.
fn close(row: &Row, found: f64) -> Result<Verdict, String> {
    let expected = number(&row.expected)?;
    let allowed = match row.tolerance.strip_suffix('%') {
        Some(percent) => expected.abs() * number(percent)? / 100.0,
        None => number(&row.tolerance)?,
    };
    // A printed value that lies exactly on the edge of rounding must not depend on the last bit.
    let agrees = (found - expected).abs() <= allowed * (1.0 + 1e-9) + f64::EPSILON * expected.abs();
    Ok(Verdict { agrees, found: format!("{found} {}", row.unit) })
}

#[test]
fn published_values_hold() -> Result<(), String> {
    let sources: BTreeMap<String, String> =
        read::<Source>("sources")?.into_iter().map(|source| (source.key, source.citation)).collect();
    let mut failures = Vec::new();
    let mut ids = BTreeSet::new();
    let mut used = BTreeSet::new();
    let mut passed = Vec::new();
    let mut by_check: BTreeMap<String, (usize, usize, usize)> = BTreeMap::new();
    for table in TABLES {
        for row in read::<Row>(table)? {
            if !ids.insert(row.id.clone()) {
                failures.push(format!("{table}: {}: the id stands twice", row.id));
            }
            if sources.get(&row.source).is_none_or(|citation| citation.trim().is_empty()) {
                failures.push(format!("{table}: {}: \"{}\" is not in sources.csv", row.id, row.source));
            }
            used.insert(row.source.clone());
            let counts = by_check.entry(row.check.clone()).or_default();
            match (checks::run(&row), row.deviation.is_empty()) {
                (Ok(Verdict { agrees: true, .. }), true) => {
                    match row.mark {
                        Mark::Published => counts.0 += 1,
                        Mark::Derived => counts.1 += 1,
                    }
                    passed.push((row.mark, row.source));
                }
                (Ok(Verdict { agrees: false, found }), false) => {
                    counts.2 += 1;
                    println!("known deviation {}: expected {}, found {found}: {}", row.id, row.expected, row.deviation);
                }
                (Ok(Verdict { agrees: false, found }), true) => {
                    failures.push(format!("{table}: {}: expected {}, found {found}", row.id, row.expected));
                }
                (Ok(Verdict { agrees: true, found }), false) => {
                    failures.push(format!("{table}: {}: marked as a deviation, yet it agrees ({found})", row.id));
                }
                (Err(problem), _) => failures.push(format!("{table}: {}: {problem}", row.id)),
            }
        }
    }
    failures.extend(sources.keys().filter(|key| !used.contains(*key)).map(|key| format!("sources: no row uses {key}")));

    for (check, (published, derived, deviations)) in &by_check {
        println!("{check}: {published} published, {derived} derived, {deviations} known deviations");
    }
    let published: Vec<&String> = passed.iter().filter(|(mark, _)| *mark == Mark::Published).map(|(_, s)| s).collect();
    let from: BTreeSet<&String> = published.iter().copied().collect();
    let deviations: usize = by_check.values().map(|counts| counts.2).sum();
    println!(
        "{} rows from {} sources passed, {deviations} known deviations; {} derived rows passed besides",
        published.len(),
        from.len(),
        passed.len() - published.len(),
    );
    assert!(failures.is_empty(), "{} rows failed:\n{}", failures.len(), failures.join("\n"));
    assert!(published.len() >= LEAST_ROWS, "only {} published rows passed", published.len());
    assert!(from.len() >= LEAST_SOURCES, "only {} published sources passed", from.len());
    Ok(())
}
