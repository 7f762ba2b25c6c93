//! Records of past seasons from a spreadsheet of any layout, in three steps: [`table()`] finds the table in the bytes,
//! [`guess`] suggests what its columns hold, and [`preview`] makes records of it by a mapping that a person has looked at.
//! Nothing enters the farm before [`enter`].
//!
//! What the file does not say is not guessed: a figure without a unit waits until one is chosen, a day such as 12/06/2031 or a
//! figure such as 1,250 until it is said how it is meant. Rows of one day, field, start and pass are one record; where one of
//! them does not read, none of them is taken, and each is named with its line and the reason.

mod day;
mod figure;
mod ground;
mod holds;
mod mapping;
mod preview;
mod row;
mod scale;

use std::path::Path;

use crate::table::{Row, Sought, when};

pub use crate::table::{Refused, Table, TableError};
pub use day::DayOrder;
pub(crate) use day::{Written, short_years};
pub use figure::Comma;
pub use holds::Holds;
pub use mapping::{Mapping, Take, guess, guess_marks};
pub use preview::{Coming, Preview, enter, preview, preview_first, preview_told};

/// By what a table of records is known.
const SOUGHT: Sought = Sought {
    of: "records",
    largest: 20 << 20,
    most_rows: 200_000,
    most_columns: 200,
    is_of_it: has_day,
    is_row_of_units,
    has_remarks: false,
};

fn has_day(row: &Row) -> bool {
    (0..row.written().min(30))
        .map(|at| row.cell(at))
        .any(|cell| day::Written::of(cell).is_some() || when::is_timely(cell))
}

fn is_row_of_units(row: &Row) -> bool {
    let cells: Vec<&str> = (0..row.len()).map(|at| row.cell(at)).filter(|cell| !cell.is_empty()).collect();
    let is_unit = |cell: &&&str| Holds::ALL.into_iter().any(|holds| holds.is_unit(cell));
    !cells.is_empty() && cells.iter().all(|cell| is_unit(&cell))
}

/// Finds the table in a file. Of a file that is too large no more is read than it takes to see that.
///
/// # Errors
/// [`TableError`] says why there is none.
pub fn open(path: &Path) -> Result<Table, TableError> {
    Table::open(path, &SOUGHT)
}

/// Finds the table.
///
/// # Valid range
/// At most 20 MB, 200,000 rows, 200 columns.
///
/// # Errors
/// [`TableError`] says why there is none.
pub fn table(bytes: &[u8]) -> Result<Table, TableError> {
    Table::read(bytes, &SOUGHT)
}
