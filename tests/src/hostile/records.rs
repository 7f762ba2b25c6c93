//! Records as the program exports them.

use tankard_core::farm::Farm;
use tankard_file::records_csv::{self, enter};

use super::{lasts, says};

/// Reads bytes as exported records.
///
/// # Panics
/// The reader panics; what was read cannot be entered, or does not last in a farm or in another export.
pub fn records(bytes: &[u8]) -> bool {
    let reading = match records_csv::read(bytes) {
        Ok(reading) => reading,
        Err(error) => return says(&error),
    };
    for refused in &reading.refused {
        // Where lines end with a carriage return alone, all of them are the first.
        assert!(refused.line > 0 && !refused.why.is_empty(), "{refused:?}");
    }
    let mut farm = Farm::new("Records (demo)");
    let done = enter(&mut farm, &reading.records, false);
    assert_eq!(done.entered.len(), reading.records.len());
    lasts(&farm);
    read_back(&farm);
    super::farm::looked_back_on(&farm);
    // The same file once more brings nothing.
    assert!(enter(&mut farm, &reading.records, true).entered.is_empty());
    !reading.records.is_empty()
}

/// Records are written, and read back the same.
pub(super) fn read_back(farm: &Farm) {
    let text = records_csv::write(farm, |_| true);
    assert!(text.is_ok(), "they cannot be written: {:?}", text.err());
    let text = text.unwrap_or_default();
    let back = records_csv::read(text.as_bytes());
    assert!(back.is_ok(), "what was written is refused: {:?}", back.err());
    let back = back.unwrap_or_default();
    assert!(back.refused.is_empty(), "what was written is refused: {:?}", back.refused);
    assert_eq!(back.records.len(), farm.records.len());
    for ((id, own), other) in farm.records.iter().zip(&back.records) {
        assert_eq!(*id, other.id);
        // Line ends are those of the farm's file.
        let own = tankard_core::season::seal::with_line_feeds(own).unwrap_or_else(|| own.clone());
        let other = tankard_core::season::seal::with_line_feeds(&other.record).unwrap_or_else(|| other.record.clone());
        assert_eq!(own, other);
    }
}
