//! Workings: the arithmetic behind a number, step by step.

use crate::room::Room;

/// The arithmetic behind one number.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Working {
    /// Which number: "glyphosate in load 1".
    pub title: String,
    /// From what was typed to the result.
    pub steps: Vec<WorkingStep>,
    /// Which room of the core reckons it.
    pub room: Room,
}

/// One line of a working.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct WorkingStep {
    /// What is done: "× 22 fl oz/ac".
    pub what: String,
    /// What comes out: "1,760 fl oz".
    pub result: String,
}

impl Working {
    /// A working without steps yet.
    #[track_caller]
    pub fn new(title: impl Into<String>) -> Self {
        Self { title: title.into(), steps: Vec::new(), room: Room::here() }
    }

    /// With one more step.
    #[must_use]
    pub fn step(mut self, what: impl Into<String>, result: impl Into<String>) -> Self {
        self.steps.push(WorkingStep { what: what.into(), result: result.into() });
        self
    }
}
