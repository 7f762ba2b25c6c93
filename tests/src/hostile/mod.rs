//! What must hold for any bytes that come in as a file or a text: the reader ends, in bounded time and memory, without a panic;
//! what it refuses it explains; what it accepts can be written, reads back the same, and can be planned with.
//!
//! One function for each kind of file. The fuzzers of `tests/fuzz` hand them what they make up; `tests/corpus.rs` what they kept.
//!
//! # Panics
//! Each function panics where one of these does not hold: that is the finding.

mod farm;
mod forecast;
mod ground;
mod quantities;
mod records;
mod revalue;
mod spreadsheet;

use tankard_core::farm::Farm;

pub use farm::farm;
pub use forecast::forecast;
pub use ground::{geojson, kml, shapefile, taskdata};
pub use quantities::quantities;
pub use records::records;
pub use revalue::revalue;
pub use spreadsheet::spreadsheet;

/// A check that bytes are handed to; it says whether they were read as what it is for.
pub type Check = fn(&[u8]) -> bool;

/// All of them by name, which is that of the fuzzer and of the folder of its corpus.
pub const CHECKS: [(&str, Check); 9] = [
    ("farm", farm),
    ("quantities", quantities),
    ("forecast", forecast),
    ("records", records),
    ("spreadsheet", spreadsheet),
    ("geojson", geojson),
    ("shapefile", shapefile),
    ("kml", kml),
    ("taskdata", taskdata),
];

/// A small farm into which files are read.
pub const YARD: &str = include_str!("yard.ron");

fn yard() -> Farm {
    let farm = tankard_file::read(YARD.as_bytes());
    assert!(farm.is_ok(), "the small farm does not read: {farm:?}");
    farm.unwrap_or_else(|_| Farm::new(""))
}

/// A farm is written, and reads back the same.
fn lasts(farm: &Farm) {
    let text = tankard_file::write(farm);
    assert!(text.is_ok(), "it cannot be written: {:?}", text.err());
    let text = text.unwrap_or_default();
    match tankard_file::read(text.as_bytes()) {
        Ok(back) => {
            assert!(back == *farm, "it does not read back the same");
            assert!(tankard_file::write(&back).is_ok_and(|again| again == text), "it is written otherwise again");
        }
        Err(error) => assert!(text.is_empty(), "what was written is refused: {error}"),
    }
}

/// A refusal has words; it is a refusal.
fn says(error: &impl ToString) -> bool {
    let said = error.to_string();
    assert!(said.len() > 10, "{said:?} says nothing");
    assert!(said.len() < 20_000, "it says {} letters", said.len());
    false
}

/// No number in a value, as Rust shows it, is endless or none.
fn finite(shown: &str) {
    let mut quoted = false;
    let mut escaped = false;
    let mut word = String::new();
    for letter in shown.chars() {
        match letter {
            _ if escaped => escaped = false,
            '\\' => escaped = true,
            '"' => quoted = !quoted,
            _ if quoted => {}
            _ if letter.is_alphanumeric() || letter == '_' => word.push(letter),
            _ => {
                assert!(!matches!(word.as_str(), "NaN" | "inf"), "a number is {word}");
                word.clear();
            }
        }
    }
}
