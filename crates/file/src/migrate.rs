//! Formats, one after another. The day the format changes, the old nouns are frozen beside this file with one step to the
//! next format, and `read` walks the steps.

use tankard_core::farm::{FORMAT, Farm};

use crate::document::{ReadError, options};

/// Reads a text of a format and brings it to the present one.
pub(crate) fn read(format: u32, text: &str) -> Result<Farm, ReadError> {
    match format {
        FORMAT => Ok(options().from_str::<Farm>(text)?),
        newer if newer > FORMAT => Err(ReadError::Newer { found: newer }),
        older => Err(ReadError::NoSuchFormat { found: older }),
    }
}
