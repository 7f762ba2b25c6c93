//! Files that nobody meant to write: the demo farm with pieces cut out, doubled and overwritten. Each is refused with a
//! place or planned; none stops the program.

use proptest::prelude::*;
use tankard::{demo, report};
use tankard_core::loads::card::cards;
use tankard_core::plan::plan;
use tankard_tests::cases;

/// What gets written over the text: marks of the format, numbers at the edge, words of other units.
const PIECES: [&str; 22] = [
    "",
    "(",
    ")",
    "{",
    "\"",
    ",",
    ":",
    "-1",
    "0",
    "4294967295",
    "99999999999999999999",
    "1e308",
    "0 ac",
    "0.0001 fl oz",
    "1000000000 gal",
    "% v/v",
    "lb ai/100 gal",
    "imp gal",
    "9999-12-31",
    "BBCH 99",
    "None",
    "°é½",
];

fn mutated() -> impl Strategy<Value = String> {
    prop::collection::vec((any::<prop::sample::Index>(), 0..24_usize, prop::sample::select(&PIECES[..])), 1..4)
        .prop_map(|cuts| {
            let mut text: Vec<char> = demo::TEXT.chars().collect();
            for (at, length, piece) in cuts {
                let start = at.index(text.len());
                let end = (start + length).min(text.len());
                text.splice(start..end, piece.chars());
            }
            text.into_iter().collect()
        })
}

/// Only values in quotes change, so that most files still read.
fn revalued() -> impl Strategy<Value = String> {
    prop::collection::vec((any::<prop::sample::Index>(), prop::sample::select(&PIECES[..])), 1..6).prop_map(|changes| {
        let mut parts: Vec<String> = demo::TEXT.split('"').map(str::to_owned).collect();
        for (at, piece) in changes {
            // The odd parts stand within quotes.
            let place = at.index(parts.len() / 2) * 2 + 1;
            if let Some(part) = parts.get_mut(place) {
                piece.clone_into(part);
            }
        }
        parts.join("\"")
    })
}

fn survives(text: &str) {
    let Ok(farm) = tankard_file::read(text.as_bytes()) else { return };
    for id in farm.passes.keys() {
        if let Some(plan) = plan(&farm, id) {
            for content in cards(&farm, &plan) {
                assert!(content.of >= content.load);
            }
            assert!(!report::text::plan(&farm, &plan).is_empty());
            report::json::plans(&farm, &[plan]);
        }
    }
    let _ = tankard_file::records_csv::write(&farm, |_| true).map(|text| text.len());
    assert_eq!(tankard_file::read(tankard_file::write(&farm).unwrap_or_default().as_bytes()).ok(), Some(farm));
}

proptest! {
    #![proptest_config(cases(300))]

    #[test]
    fn a_broken_file_is_refused_or_planned(text in mutated()) {
        survives(&text);
    }

    #[test]
    fn strange_values_are_refused_or_planned(text in revalued()) {
        survives(&text);
    }
}

#[test]
fn counts_beyond_the_calendar_are_no_panic() {
    let text = demo::TEXT.replace("days: 30", "days: 4294967295").replace("days: 50", "days: 4294967295");
    assert_ne!(text, demo::TEXT);
    survives(&text);
}
