//! A forecast from a CSV of any layout, in three steps: [`Table::read`] finds the table in the bytes, [`guess`] suggests what
//! its columns hold, and [`read`] makes hours of it by a layout that a person has looked at.
//!
//! What the file does not say is not guessed: a column without a unit waits until one is chosen, and a day written with
//! strokes until it is said whether the day or the month comes first. A line that cannot be read is left out and reported
//! with its number.

mod cell;
mod encoding;
mod guess;
mod read;
mod table;
mod units;
mod when;

pub use guess::guess;
pub use read::{Reading, Refused, read};
pub use table::{Row, Table, TableError};
pub use units::{needs_unit, units};
