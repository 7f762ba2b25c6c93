//! Files that are wrong, each with the one message it must give; and saves that must not lose anything.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use std::fs;

use tankard_core::farm::{Farm, Field};
use tankard_core::quantity::AsTyped;
use tankard_file::store::{self, StoreError};
use tankard_file::{ReadError, read, write};

fn farm() -> Farm {
    let mut farm = Farm::new("Test farm");
    farm.fields.insert("mill-field".to_owned(), Field::new("Mill field", AsTyped::parse("74.6 ac").unwrap()));
    farm
}

fn message(text: &str) -> String {
    read(text.as_bytes()).unwrap_err().to_string()
}

#[test]
fn writing_and_reading_gives_the_same_bytes() {
    let text = write(&farm()).unwrap();
    assert!(text.starts_with("Farm(\n    format: 1,\n"), "{text}");
    assert_eq!(write(&read(text.as_bytes()).unwrap()).unwrap(), text);
}

#[test]
fn each_fault_is_named_with_its_place() {
    let good = write(&farm()).unwrap();
    let half = &good[..good.len() / 2];
    assert!(message(half).starts_with("line "), "{}", message(half));
    assert_eq!(read(b""), Err(ReadError::Empty));
    assert_eq!(read(b"  \n"), Err(ReadError::Empty));
    assert_eq!(read(&[0xff, 0xfe, 0x00]), Err(ReadError::NotText));
    for (from, to, says) in [
        ("74.6 ac", "74.6 gal", "\"gal\" is not a unit known here"),
        ("74.6 ac", "-74.6 ac", "below zero"),
        ("74.6 ac", "NaN ac", "does not begin with a number"),
        ("74.6 ac", "", "a number and a unit are missing"),
        ("area:", "aera:", "aera"),
        ("format: 1", "format: 2", "newer Tankard"),
        ("format: 1", "format: 0", "never was"),
        ("format: 1", "format: one", "line 2"),
    ] {
        let text = good.replace(from, to);
        assert_ne!(text, good);
        assert!(message(&text).contains(says), "{to}: {}", message(&text));
    }
    let line = message(&good.replace("74.6 ac", "74.6 gal"));
    assert!(line.starts_with("line 9, column "), "{line}");
}

#[test]
fn a_byte_order_mark_is_no_fault() {
    let text = format!("\u{feff}{}", write(&farm()).unwrap());
    assert_eq!(read(text.as_bytes()).unwrap(), farm());
}

#[test]
fn saving_keeps_the_file_before_and_leaves_no_parts() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("farm.ron");
    let first = farm();
    let stamp = store::save(&path, &first, None).unwrap();
    let before = fs::read(&path).unwrap();
    let mut second = first.clone();
    second.name = "Renamed".to_owned();
    store::save(&path, &second, Some(stamp)).unwrap();
    assert_eq!(fs::read(store::backup(&path)).unwrap(), before);
    assert_eq!(store::open(&path).unwrap().0, second);
    let mut names: Vec<_> = fs::read_dir(folder.path()).unwrap().map(|entry| entry.unwrap().file_name()).collect();
    names.sort();
    assert_eq!(names, ["farm.ron", "farm.ron.before"]);
}

#[test]
fn a_file_that_says_the_same_is_left_byte_for_byte() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("farm.ron");
    let text = format!("// kept by hand\n{}", write(&farm()).unwrap());
    fs::write(&path, &text).unwrap();
    let (opened, stamp) = store::open(&path).unwrap();
    store::save(&path, &opened, Some(stamp)).unwrap();
    assert_eq!(fs::read_to_string(&path).unwrap(), text);
}

#[test]
fn a_change_by_somebody_else_is_not_written_over() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("farm.ron");
    let stamp = store::save(&path, &farm(), None).unwrap();
    let mut theirs = farm();
    theirs.name = "Theirs".to_owned();
    store::save(&path, &theirs, None).unwrap();
    let mut ours = farm();
    ours.name = "Ours".to_owned();
    assert!(matches!(store::save(&path, &ours, Some(stamp)), Err(StoreError::ChangedOnDisk { .. })));
    assert_eq!(store::open(&path).unwrap().0.name, "Theirs");
}

#[test]
fn unsaved_work_is_found_again() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("farm.ron");
    store::save(&path, &farm(), None).unwrap();
    let mut edited = farm();
    edited.name = "Edited".to_owned();
    store::keep_unsaved(&path, &edited).unwrap();
    assert_eq!(store::unsaved(&path, &farm()), Some(edited));
    store::drop_unsaved(&path);
    assert_eq!(store::unsaved(&path, &farm()), None);
}
