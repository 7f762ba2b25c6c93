//! A forecast from a CSV of any layout, in three steps: [`table()`] finds the table in the bytes, [`guess`] suggests what
//! its columns hold, and [`read`] makes hours of it by a layout that a person has looked at.
//!
//! What the file does not say is not guessed: a column without a unit waits until one is chosen, and a day written with
//! strokes until it is said whether the day or the month comes first. A line that cannot be read is left out and reported
//! with its number.

mod cell;
mod guess;
mod read;
mod units;

use std::path::Path;

use crate::table::{Sought, when};

pub use crate::table::{Refused, Row, Table, TableError};
pub use guess::guess;
pub use read::{Reading, read};
pub use units::{needs_unit, unit_words, units};

/// By what a forecast is known. 20,000 lines are two months of a line every five minutes.
const SOUGHT: Sought = Sought {
    of: "forecast",
    largest: 10 << 20,
    most_rows: 20_000,
    most_columns: 100,
    is_of_it: when::has_time,
    is_row_of_units: units::is_row_of_units,
    has_remarks: true,
};

/// Finds the table of a forecast in a file. Of a file that is too large no more is read than it takes to see that.
///
/// # Errors
/// [`TableError`] says why there is none.
pub fn open(path: &Path) -> Result<Table, TableError> {
    Table::open(path, &SOUGHT)
}

/// Finds the table of a forecast.
///
/// # Valid range
/// At most 10 MB, 20,000 lines, 100 columns: what is read while a window waits for it.
///
/// # Errors
/// [`TableError`] says why there is none.
pub fn table(bytes: &[u8]) -> Result<Table, TableError> {
    Table::read(bytes, &SOUGHT)
}
