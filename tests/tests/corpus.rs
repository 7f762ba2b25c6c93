//! What fuzzers made up and what they found, handed once more to the checks of `tankard_tests::hostile`: `fuzz/corpus/` holds
//! the fewest inputs that reach all that was reached, `fuzz/found/` each input that once brought out a fault, named after it.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::panic)]

use std::collections::BTreeSet;
use std::fs;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};

use proptest::prelude::*;
use tankard_tests::cases;
use tankard_tests::hostile::{CHECKS, YARD, farm, revalue};

fn fuzz() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("fuzz")
}

/// The files of a folder by name; none where there is no folder.
fn files(folder: &Path) -> Vec<(String, Vec<u8>)> {
    let Ok(entries) = fs::read_dir(folder) else { return Vec::new() };
    let mut files: Vec<_> = entries
        .map(|entry| entry.unwrap().path())
        .map(|path| (path.file_name().unwrap().to_string_lossy().into_owned(), fs::read(path).unwrap()))
        .collect();
    files.sort();
    files
}

/// Hands the files of a folder to each check; gives how many it took and refused.
fn replay(folder: &str) -> Vec<(&'static str, usize, usize)> {
    let mut counts = Vec::new();
    for (name, check) in CHECKS {
        let (mut taken, mut refused) = (0, 0);
        for (file, bytes) in files(&fuzz().join(folder).join(name)) {
            match catch_unwind(AssertUnwindSafe(|| check(&bytes))) {
                Ok(true) => taken += 1,
                Ok(false) => refused += 1,
                Err(broke) => {
                    panic!("tests/fuzz/{folder}/{name}/{file} does not hold: {broke:?}; what broke stands above")
                }
            }
        }
        counts.push((name, taken, refused));
    }
    counts
}

#[test]
fn what_fuzzers_reached_holds() {
    for (name, taken, refused) in replay("corpus") {
        assert!(
            taken > 0 && refused > 0,
            "{name}: {taken} inputs taken and {refused} refused, so one way is not tried"
        );
    }
}

#[test]
fn what_fuzzers_found_stays_mended() {
    let found: usize = replay("found").iter().map(|(_, taken, refused)| taken + refused).sum();
    assert!(found > 0);
}

/// A target without a fuzzer, or one whose corpus nobody replays, would look as if it were checked.
#[test]
fn every_check_has_its_fuzzer_and_every_folder_its_check() {
    let checks: BTreeSet<String> = CHECKS.iter().map(|(name, _)| (*name).to_owned()).collect();
    let shells = files(&fuzz().join("fuzz_targets"));
    assert_eq!(shells.iter().map(|(name, _)| name.trim_end_matches(".rs").to_owned()).collect::<BTreeSet<_>>(), checks);
    for (name, text) in shells {
        let call = format!("hostile::{}(", name.trim_end_matches(".rs"));
        assert!(String::from_utf8_lossy(&text).contains(&call), "{name} hands its bytes to another check");
    }
    for folder in ["corpus", "found"] {
        for entry in fs::read_dir(fuzz().join(folder)).unwrap() {
            let name = entry.unwrap().file_name().to_string_lossy().into_owned();
            assert!(checks.contains(&name), "tests/fuzz/{folder}/{name} belongs to no check");
        }
    }
    let listed = fs::read_to_string(fuzz().join("Cargo.toml")).unwrap();
    for name in checks {
        assert!(listed.contains(&format!("name = \"{name}\"")), "{name} is not built");
    }
}

proptest! {
    #![proptest_config(cases(300))]

    /// The changes that the fuzzer of farms makes, on the small farm; most are such that it still reads.
    #[test]
    fn a_farm_with_odd_values_is_refused_or_planned(seed in any::<u32>()) {
        let changed = revalue(YARD.as_bytes(), 64 << 10, seed);
        prop_assert!(changed.is_some());
        farm(&changed.unwrap_or_default());
    }
}
