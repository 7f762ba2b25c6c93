//! Plans in words and as JSON, for the command line.

pub mod json;
pub mod text;
