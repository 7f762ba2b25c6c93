//! What kind of text stands in a cell.

use tankard_core::quantity::number::take;
use tankard_core::quantity::{Bearing, Quantity};

/// What stands where nothing was measured.
const NOTHING: [&str; 12] = ["", "-", "--", "---", "/", "n/a", "na", "nan", "null", "none", "m", "missing"];
/// Figures that stand where nothing was measured.
const NO_FIGURE: [f64; 3] = [-999.0, -9999.0, -99_999.0];

/// Whether a cell says that there is no value: in words, or by a figure that nothing has.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Nothing {
    Said,
    Figure,
}

/// Whether a cell holds no value.
pub(crate) fn nothing(cell: &str) -> Option<Nothing> {
    if NOTHING.contains(&cell.to_ascii_lowercase().as_str()) {
        return Some(Nothing::Said);
    }
    let figure: f64 = cell.parse().ok()?;
    NO_FIGURE.iter().any(|none| (figure - none).abs() < 1e-6).then_some(Nothing::Figure)
}

/// Whether a cell is a figure without a unit of its own.
pub(crate) fn is_bare(cell: &str) -> bool {
    cell.parse::<f64>().is_ok()
        || take(cell.strip_prefix('+').unwrap_or(cell)).is_ok_and(|(_, rest)| rest.trim().is_empty())
}

/// Whether a cell says its own unit: a figure with something behind it, or a point of the compass.
pub(crate) fn has_unit(cell: &str) -> bool {
    take(cell).map_or_else(|_| Bearing::parse(cell).is_ok(), |_| !is_bare(cell))
}
