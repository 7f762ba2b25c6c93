//! Reads the rule tables of `assets/`, which are compiled in. A test in each room checks that its table reads.

use serde::de::DeserializeOwned;

/// Reads a table with a head line into its rows.
///
/// # Errors
/// Where a row does not fit; the message names the line.
pub(crate) fn read<Row: DeserializeOwned>(text: &str) -> Result<Vec<Row>, csv::Error> {
    csv::Reader::from_reader(text.as_bytes()).deserialize().collect()
}
