//! Reference checks against published values, and whole-program tests.
//!
//! The checks stand in `tests/`; the published values, each with its source, in the tables of `reference/`.
//! [`ground`] makes boundaries of any number for the benches of maps and imports,
//! [`hostile`] has what must hold for any bytes that are read, for fuzzers and for the test that replays what they found,
//! [`log`] makes a farm with many records for the checks of the season review and for its bench, and [`large`] out of both a farm that
//! is large in every way.

pub mod ground;
pub mod hostile;
pub mod large;
pub mod log;

use proptest::test_runner::{Config, RngSeed};

/// How a property is tried: the same cases on every run; with `PROPTEST_CASES` so many others.
#[must_use]
pub fn cases(cases: u32) -> Config {
    let all = Config { failure_persistence: None, ..Config::default() };
    match std::env::var_os("PROPTEST_CASES") {
        Some(_) => all,
        None => Config { cases, rng_seed: RngSeed::Fixed(2031), ..all },
    }
}

/// The demo farm.
///
/// # Errors
/// Where its file does not read.
pub fn demo() -> Result<tankard_core::farm::Farm, tankard_file::ReadError> {
    tankard_file::read(include_bytes!("../../demo-farm/larkspur-bend.ron"))
}
