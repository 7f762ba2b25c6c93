//! Rules of the house that no compiler knows: where colours and fonts are set, who may import whom, that every row of a rule table
//! has its source, and that what the documents name is there.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use std::fs;
use std::path::{Path, PathBuf};

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

fn sources(folder: &Path) -> Vec<(PathBuf, String)> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            found.extend(sources(&path));
        } else if path.extension().is_some_and(|ending| ending == "rs") {
            let text = fs::read_to_string(&path).unwrap();
            found.push((path, text));
        }
    }
    found
}

#[test]
fn colours_and_fonts_are_set_in_the_look_alone() {
    for (path, text) in sources(&root().join("crates/desk/src")) {
        if path.ends_with("look.rs") || path.ends_with("look/colour_vision.rs") {
            continue;
        }
        for word in ["Color32::from", "FontId::new", "FontId::proportional", "Rgba::from", "hex(0x"] {
            assert!(!text.contains(word), "{word} in {}", path.display());
        }
    }
}

#[test]
fn arrows_point_one_way() {
    for (room, may_not) in [
        ("core", &["tankard_file", "tankard_paper", "egui", "std::fs", "std::io", "SystemTime", "Zoned", "typst"][..]),
        ("file", &["tankard_paper", "egui", "typst", "Zoned"][..]),
        ("paper", &["tankard_file", "egui", "std::fs", "Zoned"][..]),
        ("desk", &["typst::"][..]),
    ] {
        for (path, text) in sources(&root().join("crates").join(room).join("src")) {
            if path.ends_with("tests.rs") {
                continue;
            }
            let code: Vec<&str> = text.lines().filter(|line| !line.trim_start().starts_with("//")).collect();
            let text = code.join("\n");
            for word in may_not {
                assert!(!text.contains(word), "{word} in {}", path.display());
            }
        }
    }
}

#[test]
fn every_row_of_a_rule_table_has_its_source() {
    let mut tables = 0;
    for entry in fs::read_dir(root().join("assets")).unwrap() {
        let path = entry.unwrap().path();
        if path.extension().is_none_or(|ending| ending != "csv") {
            continue;
        }
        tables += 1;
        let mut reader = csv::Reader::from_path(&path).unwrap();
        let source = reader.headers().unwrap().iter().position(|name| name == "source").unwrap();
        for row in reader.records() {
            let row = row.unwrap();
            assert!(row[source].len() > 12, "{}: {row:?}", path.display());
        }
    }
    assert!(tables >= 3);
}

/// All files and folders below a folder, as paths from there.
fn below(folder: &Path, from: &str, all: &mut Vec<String>) {
    for entry in fs::read_dir(folder).unwrap() {
        let entry = entry.unwrap();
        let name = format!("{from}{}", entry.file_name().to_string_lossy());
        let is_folder = entry.file_type().unwrap().is_dir();
        if is_folder && !name.ends_with("target") && name != ".git" {
            below(&entry.path(), &format!("{name}/"), all);
        }
        all.push(name);
    }
}

/// Each path in backticks, and each test, bench and program of a command, is there; so a file that moves takes its words with it.
#[test]
fn what_the_documents_name_is_there() {
    let mut all = Vec::new();
    below(&root(), "", &mut all);
    let is_there = |name: &str| all.iter().any(|path| path == name || path.ends_with(&format!("/{name}")));
    let is_open = |name: &str| name.split(['/', '.', '-']).any(|word| ["N", "NAME", "DAY", "FILE"].contains(&word));
    let endings = [".rs", ".csv", ".md", ".toml", ".typ", ".ftl", ".ron", ".py", ".sh"];
    let (mut stale, mut paths, mut targets) = (Vec::new(), 0, 0);
    for document in ["README.md", "DEVELOPERS.md"] {
        let text = fs::read_to_string(root().join(document)).unwrap();
        let prose: String = text.split("```").step_by(2).collect();
        for name in prose.split('`').skip(1).step_by(2).map(|name| name.trim_end_matches('/')) {
            let letters = |letter: char| letter.is_ascii_alphanumeric() || "_-./".contains(letter);
            let is_path = name.contains('/') || endings.iter().any(|ending| name.ends_with(ending));
            if !is_path || !name.chars().all(letters) || !name.contains(|letter: char| letter.is_ascii_lowercase()) {
                continue;
            }
            // What a build or a person makes is not there yet.
            if !is_open(name) && !name.starts_with("target/") {
                paths += 1;
                if !is_there(name) && !is_there(&format!("{name}.rs")) {
                    stale.push(format!("{document}: {name}"));
                }
            }
        }
        for (option, folder) in [("--test ", "tests"), ("--bench ", "benches"), ("--bin ", "bin")] {
            for (at, _) in text.match_indices(option) {
                let rest = &text[at + option.len()..];
                let name =
                    &rest[..rest.find(|letter: char| !letter.is_alphanumeric() && letter != '_').unwrap_or(rest.len())];
                targets += 1;
                // One that is put together for measuring.
                let own = format!("{folder}/{name}");
                if name != "all" && !is_there(&own) && !is_there(&format!("{own}.rs")) {
                    stale.push(format!("{document}: {option}{name}"));
                }
            }
        }
    }
    assert!(stale.is_empty(), "not there: {stale:#?}");
    assert!(paths > 200 && targets > 5, "{paths} paths, {targets} targets");
    // The check can fail.
    assert!(!is_there("crates/core/src/nowhere.rs") && is_there("core/src/plan.rs"));
}
