//! What people type into a box that is no quantity with its unit: days, times of day, and quantities whose unit is missing. What can be
//! read in one way alone is read; what may mean two things is refused with both of them to take.

mod bare;
mod day;
mod time;

pub use bare::{example, meant};
pub use day::{day, month_day};
pub use time::time_of_day;

/// Why a typed text is not read, and what it may have been meant as.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Refused {
    /// Why, and what to do, as a sentence.
    pub why: String,
    /// Texts that can be read, the likeliest first; empty where none is at hand.
    pub meant: Vec<String>,
}

impl Refused {
    fn new(why: impl Into<String>) -> Self {
        Self { why: why.into(), meant: Vec::new() }
    }

    fn meant(why: impl Into<String>, meant: Vec<String>) -> Self {
        Self { why: why.into(), meant }
    }
}

impl From<String> for Refused {
    fn from(why: String) -> Self {
        Self::new(why)
    }
}
