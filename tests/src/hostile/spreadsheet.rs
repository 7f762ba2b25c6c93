//! Records of past seasons from spreadsheets.

use tankard_file::records_import::{Comma, DayOrder, Mapping, Table, enter, guess, preview, preview_first, table};

use super::{lasts, says, yard};

/// Reads bytes as a spreadsheet of records: with what is guessed, and with what a person may choose where nothing is.
///
/// # Panics
/// The reader panics; a row is neither taken nor refused, or both; what was read does not last in a farm.
pub fn spreadsheet(bytes: &[u8]) -> bool {
    let table = match table(bytes) {
        Ok(table) => table,
        Err(error) => return says(&error),
    };
    let guessed = guess(&table);
    let mut taken = look(&table, &guessed);
    for (days, comma) in DayOrder::ALL.into_iter().zip(Comma::ALL) {
        let mut mapping = guessed.clone();
        mapping.days = mapping.days.or(Some(days));
        mapping.comma = mapping.comma.or(Some(comma));
        mapping.alike = days == DayOrder::MonthFirst;
        for take in &mut mapping.takes {
            if take.unit.is_empty() {
                take.holds.units().first().copied().unwrap_or_default().clone_into(&mut take.unit);
            }
        }
        taken |= look(&table, &mapping);
    }
    taken
}

/// Whether any record was read.
fn look(table: &Table, mapping: &Mapping) -> bool {
    let mut farm = yard();
    let first = preview_first(table, mapping, &farm, 3);
    assert!(first.records.len() <= 3);
    let preview = preview(table, mapping, &farm);
    if !preview.to_choose.is_empty() {
        assert!(preview.records.is_empty());
        return false;
    }
    let mut lines: Vec<u64> = preview.records.iter().flat_map(|coming| coming.lines.iter().copied()).collect();
    lines.extend(preview.refused.iter().map(|refused| refused.line));
    lines.sort_unstable();
    assert!(lines.is_sorted_by(|one, next| one < next), "a row is taken twice, or taken and refused: {lines:?}");
    assert_eq!(lines.len(), table.rows.len());
    for refused in &preview.refused {
        assert!(!refused.why.is_empty());
    }
    let entered = enter(&mut farm, &preview.records);
    assert_eq!(entered.len(), preview.records.len());
    lasts(&farm);
    super::records::read_back(&farm);
    super::farm::looked_back_on(&farm);
    !entered.is_empty()
}
