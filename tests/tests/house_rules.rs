//! Rules of the house that no compiler knows: where colours and fonts are set, who may import whom, and that every row of
//! a rule table has its source.

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
