//! Reference checks against published values, and whole-program tests.
//!
//! The checks stand in `tests/`; the published values, each with its source, in the tables of `reference/`.
