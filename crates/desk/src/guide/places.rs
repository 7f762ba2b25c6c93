//! Which page of the guide explains what a room of the core says or reckons. The table is `assets/guide/places.csv`.

use std::sync::LazyLock;

use tankard_core::room::Room;

use super::Place;

/// The table.
pub const TABLE: &str = include_str!("../../../../assets/guide/places.csv");

/// A row: a room of the core, or a folder of them, with where its findings and where its workings are explained.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// "label/rate", or "label" for all rooms below it that have no row of their own.
    pub room: String,
    /// Where its findings are explained.
    pub finding: Place,
    /// Where its workings are explained.
    pub working: Place,
}

/// The rows of the table.
pub fn rows() -> &'static [Row] {
    static ROWS: LazyLock<Vec<Row>> = LazyLock::new(|| {
        let row = |line: &str| {
            let mut cells = line.split(',').map(str::trim);
            let (room, finding) = (cells.next()?, cells.next()?);
            let working = cells.next().filter(|working| !working.is_empty()).unwrap_or(finding);
            Some(Row { room: room.to_owned(), finding: Place::read(finding), working: Place::read(working) })
        };
        TABLE.lines().skip(1).filter_map(row).collect()
    });
    &ROWS
}

/// The row of a room: its own, else that of the nearest folder.
pub fn row(room: &str) -> Option<&'static Row> {
    let mut name = room;
    loop {
        if let Some(row) = rows().iter().find(|row| row.room == name) {
            return Some(row);
        }
        name = name.rsplit_once('/')?.0;
    }
}

/// Where a finding is explained. One from a room that has no row leads to what the levels mean.
pub fn of_finding(room: Room) -> Place {
    row(&room.name()).map_or_else(|| Place::read("levels"), |row| row.finding.clone())
}

/// Where a working is explained. One from a room that has no row leads to where the numbers come from.
pub fn of_working(room: Room) -> Place {
    row(&room.name()).map_or_else(|| Place::read("numbers"), |row| row.working.clone())
}
