//! Reference checks against published values, and whole-program tests.
//!
//! The checks stand in `tests/`; the published values, each with its source, in the tables of `reference/`.
//! [`log`] makes a farm with many records for the checks of the season review and for its bench.

pub mod log;
