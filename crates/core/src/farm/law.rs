//! A rule of law, as the user typed it: which rule, since when, what it says.
//!
//! The program knows no law. It holds passes and hours against what is typed here, below the labels and above practice.

use crate::language::t;
use jiff::civil::Date;
use serde::{Deserialize, Serialize};

use super::Statement;

/// A rule that binds the farm.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Law {
    /// Which rule: its name and paragraph.
    pub name: String,
    /// In force since.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub since: Option<Date>,
    /// In force up to and including.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub until: Option<Date>,
    /// For which product: an active, a group such as "group 4", or a product by its name; empty for every pesticide.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub about: String,
    /// What it says, with its crop, stages and conditions. Its place is kept in `name`.
    pub says: Statement,
}

impl Law {
    /// Whether it is in force on a day.
    pub fn holds_on(&self, day: Date) -> bool {
        self.since.is_none_or(|since| since <= day) && self.until.is_none_or(|until| day <= until)
    }

    /// The rule as a finding names it.
    pub fn source(&self) -> String {
        match self.name.trim() {
            "" => t!("farm-a-rule-without-a-name").to_owned(),
            name => name.to_owned(),
        }
    }
}
