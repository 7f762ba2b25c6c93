//! Local advice, as the user typed it: whose, when, for what.
//!
//! It stands below every label and above general publications, since what holds in one region may not in another.

use crate::language::days::short_date;
use crate::language::t;
use jiff::civil::Date;
use serde::{Deserialize, Serialize};

use super::{Id, Statement};

/// What an adviser, a dealer or a county office said.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Advice {
    /// Whose: a person or an office.
    pub whose: String,
    /// When it was given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub given: Option<Date>,
    /// For which product: an active, a group such as "group 1", or a product by its name; empty for every pesticide.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub about: String,
    /// For which water alone; empty for all.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub water: Id,
    /// What it says, with its crop, stages and conditions.
    pub says: Statement,
}

impl Advice {
    /// Whose and when, as a finding names it.
    pub fn source(&self) -> String {
        let whose = if self.whose.trim().is_empty() { t!("farm-someone-not-named") } else { self.whose.trim() };
        match self.given {
            Some(day) => format!("{whose}, {}", short_date(day)),
            None => t!("farm-no-day-typed", whose = whose),
        }
    }
}
