//! The days of exported records, also where a spreadsheet saved them again as it shows them.

use jiff::civil::Date;

use crate::records_import::{DayOrder, Written};
use crate::table::when::short;

/// How the days of a file are written.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Days {
    /// Whether one can only have the day first, and whether one can only have the month first.
    tells: [bool; 2],
    /// Whether any is written otherwise than year-month-day, and whether a year has two digits.
    rewritten: bool,
    short_year: bool,
}

impl Days {
    /// Looks at all cells of days.
    pub(super) fn of<'a>(cells: impl Iterator<Item = &'a str>) -> Self {
        let mut days = Self::default();
        for cell in cells.filter(|cell| !cell.is_empty() && cell.parse::<Date>().is_err()) {
            days.rewritten = true;
            let Some(written) = Written::of(cell) else { continue };
            days.short_year |= written.short_year;
            match written.tells() {
                Some(DayOrder::DayFirst) => days.tells[0] = true,
                Some(DayOrder::MonthFirst) => days.tells[1] = true,
                None => {}
            }
        }
        days
    }

    fn order(self) -> Option<DayOrder> {
        match self.tells {
            [true, false] => Some(DayOrder::DayFirst),
            [false, true] => Some(DayOrder::MonthFirst),
            _ => None,
        }
    }

    /// The day in a cell.
    pub(super) fn day(self, cell: &str) -> Result<Date, String> {
        if let Ok(day) = cell.parse() {
            return Ok(day);
        }
        let why = match Written::of(cell).map(|written| written.read(self.order(), cell)) {
            Some(Ok((day, _))) => return Ok(day),
            Some(Err(why)) => why,
            None => format!("\"{}\" is no day", short(cell)),
        };
        Err(format!(
            "{why}; a spreadsheet seems to have rewritten the dates; write it year-month-day, such as 2031-06-12, or export the \
             records again and read that file"
        ))
    }

    /// What a person should know of how they were read.
    pub(super) fn notes(self) -> Vec<String> {
        let mut notes = Vec::new();
        if self.rewritten {
            let how = self.order().map_or("", |order| match order {
                DayOrder::DayFirst => "; those with strokes are read as day/month/year, as one of them can only be",
                DayOrder::MonthFirst => "; those with strokes are read as month/day/year, as one of them can only be",
            });
            notes.push(format!("a spreadsheet seems to have rewritten the dates{how}"));
        }
        if self.short_year {
            notes.push("years of two digits are read as 2000 and later".to_owned());
        }
        notes
    }
}
