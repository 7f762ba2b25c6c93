//! Files of every format that the program ever wrote, which open for ever; and files of a newer one, which are left alone.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use std::fs;
use std::path::{Path, PathBuf};

use tankard_core::farm::FORMAT;
use tankard_file::store::{self, StoreError};
use tankard_file::{ReadError, read, write};

/// The kept samples with their formats, oldest first: "format-1-2026-11-25.ron".
fn samples() -> Vec<(u32, PathBuf)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/reference/farms");
    let mut found: Vec<PathBuf> = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).collect();
    found.sort();
    let format = |path: &PathBuf| {
        let name = path.file_stem().unwrap().to_str().unwrap();
        name.strip_prefix("format-").unwrap().split('-').next().unwrap().parse().unwrap()
    };
    found.into_iter().map(|path| (format(&path), path)).collect()
}

#[test]
fn every_format_has_a_sample_that_opens() {
    let samples = samples();
    for format in 1..=FORMAT {
        assert!(samples.iter().any(|(of, _)| *of == format), "no sample of format {format}");
    }
    for (format, path) in samples {
        let text = fs::read_to_string(&path).unwrap();
        assert!(text.starts_with(&format!("Farm(\n    format: {format},")), "{}", path.display());
        let (farm, _) = store::open(&path).unwrap();
        assert_eq!(farm.format, FORMAT);
        // Counted in the text by hand: nothing of it is dropped on the way.
        let counts = [farm.fields.len(), farm.waters.len(), farm.rigs.len(), farm.products.len(), farm.passes.len()];
        assert_eq!(counts, [8, 2, 2, 21, 7], "{}", path.display());
        let records = if path.to_str().unwrap().contains("11-25") { 10 } else { 25 };
        assert_eq!(farm.records.len(), records, "{}", path.display());
        // What was written in the present format is still written byte for byte.
        if format == FORMAT {
            assert!(write(&farm).unwrap() == text, "{} is written anew in another way", path.display());
        }
    }
}

#[test]
fn a_file_of_a_newer_format_is_refused_and_left_as_it_is() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("newer.ron");
    let text = fs::read_to_string(&samples()[0].1).unwrap();
    let newer = FORMAT + 1;
    // It may hold what this program does not know, and be of another shape altogether.
    for text in [
        text.replace(&format!("format: {FORMAT},"), &format!("format: {newer},\n    drones: {{}},")),
        format!("Farm(format: {newer}, everything: Other([1, 2, 3]))\n"),
    ] {
        fs::write(&path, &text).unwrap();
        let moment = fs::metadata(&path).unwrap().modified().unwrap();
        let error = store::open(&path).unwrap_err();
        assert!(
            matches!(error, StoreError::Read { source: ReadError::Newer { found }, .. } if found == newer),
            "{error}"
        );
        let says = error.to_string();
        assert!(says.starts_with(&format!("the file has format {newer}; ")), "{says}");
        assert!(says.contains("Open it with a newer Tankard"), "{says}");
        assert_eq!(fs::read_to_string(&path).unwrap(), text);
        assert_eq!(fs::metadata(&path).unwrap().modified().unwrap(), moment);
        assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 1, "nothing is put beside it");
    }
}

/// New facts come into a format without a new number, so an older program meets words it does not know.
#[test]
fn a_word_that_is_not_known_is_named_with_its_place_and_what_may_be_behind_it() {
    let text = fs::read_to_string(&samples()[0].1).unwrap();
    for (from, to) in [("crop: \"corn\"", "corp: \"corn\""), ("formulation: SL", "formulation: QQ")] {
        let broken = text.replacen(from, to, 1);
        assert_ne!(broken, text);
        let says = read(broken.as_bytes()).unwrap_err().to_string();
        assert!(says.starts_with("line ") && says.ends_with("a newer Tankard may have written it"), "{says}");
    }
}
