//! Records as CSV and back: one row a field, a product and a record, so that a spreadsheet can sum them. A record without
//! fields, or without products, has one row for what is missing, so that nothing is lost.
//!
//! [`COLUMNS`] says what each column holds. A text is exactly what was typed, so that [`read()`] gives the same records as
//! were written; the columns of [`Of::Sum`] stand beside it in litres, kilograms and hectares, as the field's share by area,
//! so that their sums over any rows are right. A text that a spreadsheet would reckon has an apostrophe before it.

mod columns;
mod enter;
mod read;
mod read_days;
mod write;

use jiff::civil::Time;

pub use columns::{COLUMNS, Column, Of};
pub use enter::{Entered, Meets, alike, alike_told, enter, meets};
pub use read::{Coming, OwnError, Reading, is_own, is_own_file, open, read};
pub(crate) use write::cost;
pub use write::{write, write_told};

/// A time of day as the file has it, which does not follow how people read one: hours and minutes, and the rest where there is any.
fn time_text(time: Time) -> String {
    let is_whole = time.second() == 0 && time.subsec_nanosecond() == 0;
    if is_whole { time.strftime("%H:%M").to_string() } else { time.to_string() }
}
