//! One figure of a table, with its unit, as the farm keeps it.

use tankard_core::farm::Holds;
use tankard_core::quantity::number::{show, take};
use tankard_core::quantity::{AsTyped, Bearing, Length, Quantity, Share, Speed, Temperature};
use tankard_core::t;

use super::units::{FRACTION, OKTAS, POINT};
use crate::table::is_bare;
use crate::table::when::short;

/// How cells of a column are read.
#[derive(Clone, Copy)]
pub(super) struct Column<'a> {
    pub(super) at: usize,
    pub(super) holds: Holds,
    pub(super) unit: &'a str,
    pub(super) decimal_comma: bool,
}

impl Column<'_> {
    /// A cell as a temperature.
    pub(super) fn temperature(&self, cell: &str) -> Result<AsTyped<Temperature>, String> {
        self.typed(cell, &self.with_unit(cell)?)
    }

    /// A cell as a wind or a gust.
    pub(super) fn speed(&self, cell: &str) -> Result<AsTyped<Speed>, String> {
        let read: AsTyped<Speed> = self.typed(cell, &self.with_unit(cell)?)?;
        // A slip, whatever the storm.
        if read.value() > Speed::from_metres_per_second(100.0) {
            return Err(self.wrong(cell, t!("file-no-wind-is-that-strong")));
        }
        Ok(read)
    }

    /// A cell as rain in an hour.
    pub(super) fn rain(&self, cell: &str) -> Result<AsTyped<Length>, String> {
        let read: AsTyped<Length> = self.typed(cell, &self.with_unit(cell)?)?;
        // A slip, whatever the storm.
        if read.value() > Length::from_metres(0.5) {
            return Err(self.wrong(cell, t!("file-no-hour-is-that-wet")));
        }
        Ok(read)
    }

    /// A cell as a direction; `None` where the wind has none.
    pub(super) fn bearing(&self, cell: &str) -> Result<Option<AsTyped<Bearing>>, String> {
        if ["calm", "vrb", "variable", "var"].contains(&cell.to_ascii_lowercase().as_str()) {
            return Ok(None);
        }
        if self.unit == POINT && is_bare(cell) {
            return Err(self.wrong(cell, t!("file-it-is-no-point-of-the")));
        }
        let text = if self.unit == "°" { self.with_unit(cell)? } else { cell.to_owned() };
        self.typed(cell, &text.replace(" °", "°")).map(Some)
    }

    /// A cell as a share.
    pub(super) fn share(&self, cell: &str) -> Result<AsTyped<Share>, String> {
        let text = match self.unit {
            FRACTION | OKTAS => {
                let plain = self.plain(cell)?;
                let (value, rest) = take(&plain).map_err(|problem| self.wrong(cell, &problem))?;
                let of = if self.unit == OKTAS { 8.0 } else { 1.0 };
                if !rest.trim().is_empty() || !(0.0..=of).contains(&value) {
                    return Err(self.wrong(cell, &t!("file-it-lies-between-0-and", of = of)));
                }
                format!("{} %", show(value / of * 100.0, 4))
            }
            _ => self.with_unit(cell)?,
        };
        let read: AsTyped<Share> = self.typed(cell, &text)?;
        if read.value().exceeds(Share::from_percent(100.0)) {
            return Err(self.wrong(cell, t!("file-it-is-above-100")));
        }
        Ok(read)
    }

    fn typed<Q: Quantity>(&self, cell: &str, text: &str) -> Result<AsTyped<Q>, String> {
        AsTyped::parse(text).map_err(|error| self.wrong(cell, &error.problem))
    }

    fn with_unit(&self, cell: &str) -> Result<String, String> {
        if self.unit.is_empty() {
            return Ok(cell.to_owned());
        }
        let plain = self.plain(cell)?;
        if !is_bare(&plain) {
            // Let the reader say what is wrong with the figure, if it is the figure.
            take(&plain).map_err(|problem| self.wrong(cell, &problem))?;
            return Err(self.wrong(cell, &t!("file-it-is-no-plain-number-of", unit = self.unit)));
        }
        Ok(format!("{plain} {}", self.unit))
    }

    /// The figure without a plus, without a power of ten, and without a mark that can be read in two ways.
    fn plain(&self, cell: &str) -> Result<String, String> {
        let cell = cell.strip_prefix('+').unwrap_or(cell);
        if cell.contains(['e', 'E'])
            && let Ok(value) = cell.parse::<f64>()
            && value.abs() < 1e9
        {
            return Ok(format!("{value}"));
        }
        if self.decimal_comma && is_bare(&cell.replace(['.', ','], "")) {
            if cell.contains('.') && !cell.contains(',') {
                return Err(self.wrong(cell, t!("file-the-files-other-figures-have-a")));
            }
            // "1,250" could be a thousand and more; here it is not.
            if take(cell).is_err() && cell.matches(',').count() == 1 {
                return Ok(cell.replace(',', "."));
            }
        }
        Ok(cell.to_owned())
    }

    fn wrong(&self, cell: &str, problem: &str) -> String {
        format!("{} \"{}\": {problem}", self.holds.name(), short(cell))
    }
}
