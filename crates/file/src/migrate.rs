//! Formats, one after another. The day the format changes, the old nouns are frozen beside this file with one step to the
//! next format, and `read` walks the steps.

use tankard_core::farm::{FORMAT, Farm};
use tankard_core::progress::Tell;

use crate::document::{ReadError, options};
use crate::told::Told;

/// Reads a text of a format and brings it to the present one.
pub(crate) fn read(format: u32, text: &str, tell: &Tell<'_>) -> Result<Farm, ReadError> {
    match format {
        FORMAT => Ok(options().from_str_seed(text, Told::<Farm>::new(tell))?),
        newer if newer > FORMAT => Err(ReadError::Newer { found: newer }),
        older => Err(ReadError::NoSuchFormat { found: older }),
    }
}
