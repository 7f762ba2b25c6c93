//! The days of exported records, also where a spreadsheet saved them again as it shows them.

use jiff::civil::Date;
use tankard_core::t;

use crate::records_import::{DayOrder, Written, short_years};
use crate::table::when::short;

/// How the days of a file are written.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Days {
    /// Which comes first in days with strokes, where they tell.
    order: Option<DayOrder>,
    /// Whether any is written otherwise than year-month-day, and whether a year has two digits.
    rewritten: bool,
    short_year: bool,
}

impl Days {
    /// Looks at all cells of days.
    pub(super) fn of<'a>(cells: impl Iterator<Item = &'a str>) -> Self {
        let rewritten = cells.filter(|cell| !cell.is_empty() && cell.parse::<Date>().is_err());
        let rewritten: Vec<Option<Written<'_>>> = rewritten.map(Written::of).collect();
        let days = || rewritten.iter().flatten();
        Self {
            order: DayOrder::told_by(days().copied()),
            rewritten: !rewritten.is_empty(),
            short_year: days().any(|day| day.short_year),
        }
    }

    /// The day in a cell.
    pub(super) fn day(self, cell: &str) -> Result<Date, String> {
        if let Ok(day) = cell.parse() {
            return Ok(day);
        }
        let why = match Written::of(cell).map(|written| written.read(self.order, cell)) {
            Some(Ok((day, _))) => return Ok(day),
            Some(Err(why)) => why,
            None => t!("file-is-no-day", cell = short(cell)),
        };
        Err(t!("file-a-spreadsheet-seems-to-have-rewritten", why = why))
    }

    /// What a person should know of how they were read.
    pub(super) fn notes(self) -> Vec<String> {
        let mut notes = Vec::new();
        if self.rewritten {
            let note = match self.order {
                None => t!("file-rewritten-dates"),
                Some(DayOrder::DayFirst) => t!("file-rewritten-dates-day-first"),
                Some(DayOrder::MonthFirst) => t!("file-rewritten-dates-month-first"),
            };
            notes.push(note.to_owned());
        }
        if self.short_year {
            notes.push(short_years());
        }
        notes
    }
}
