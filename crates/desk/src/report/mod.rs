//! Plans in words and as JSON, for the command line.

pub mod day;
pub mod jar;
pub mod json;
pub mod needs;
pub mod review;
pub mod text;
pub mod words;
