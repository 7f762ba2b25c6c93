//! Rows back to records. A record is taken whole or not at all: a row that does not read takes its record with it.

use std::collections::HashMap;
use std::io::Read as _;
use std::path::Path;
use std::str::FromStr;

use csv::{ReaderBuilder, StringRecord};
use jiff::civil::{Date, Time};
use serde::de::DeserializeOwned;
use serde_json::Value;
use tankard_core::farm::{Id, Left, Record, RecordField, RecordLine, Text};
use tankard_core::progress::{Cancelled, Tell, untold};
use tankard_core::quantity::{Amount, AsTyped, Quantity};
use tankard_core::season::seal::{self, Verdict};
use tankard_core::season::shares;
use tankard_core::t;
use thiserror::Error;

use super::columns::{COLUMNS, Of};
use super::read_days::Days;
use crate::cell::unguarded;
use crate::table::{self, Refused, TableError, refuse_all};

/// Bytes of the largest file: some hundred thousand records.
const LARGEST: usize = 200 << 20;
/// Bytes in which the head line ends, of however many columns.
const HEAD: u64 = 64 << 10;
/// The columns of days. A spreadsheet that rewrites them does so alike in both.
const DAYS: [&str; 2] = ["date", "planted"];
/// The most rows.
const MOST_ROWS: usize = 1_000_000;

/// Why a file gives no records at all.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum OwnError {
    /// The disk said no.
    #[error("{0}")]
    Disk(TableError),
    /// It is too large.
    #[error("{}", t!("file-export-a-season-at-a-time", mb = LARGEST >> 20))]
    TooLarge,
    /// It has too many rows.
    #[error("{}", t!("file-the-file-has-more-than-rows", rows = MOST_ROWS))]
    TooMany,
    /// Its letters are not UTF-8.
    #[error("{}", t!("file-the-file-is-not-in-utf"))]
    NotUtf8,
    /// Its head line is another.
    #[error("{}", t!("file-the-head-line-is-not-that"))]
    OtherHead,
    /// Nobody waited for it any more.
    #[error(transparent)]
    Cancelled(#[from] Cancelled),
}

/// A record from a file.
#[derive(Clone, Debug, PartialEq)]
pub struct Coming {
    /// Its id there.
    pub id: Id,
    /// The record.
    pub record: Record,
    /// The line on which it begins, from 1.
    pub line: u64,
}

/// What a file gives.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Reading {
    /// The records, in the order of the file.
    pub records: Vec<Coming>,
    /// The lines that are left out, in order.
    pub refused: Vec<Refused>,
    /// What a person should know of how it was read.
    pub notes: Vec<String>,
}

/// Whether bytes begin with the head line of exported records, apart by commas, semicolons or tabs.
pub fn is_own(bytes: &[u8]) -> bool {
    let head = bytes.split(|byte| matches!(byte, b'\n' | b'\r')).next().unwrap_or_default();
    std::str::from_utf8(head).is_ok_and(|head| separator(head.strip_prefix('\u{feff}').unwrap_or(head)).is_some())
}

/// Whether a file begins so; one that cannot be read does not.
pub fn is_own_file(path: &Path) -> bool {
    let mut head = Vec::new();
    let read = std::fs::File::open(path).and_then(|file| file.take(HEAD).read_to_end(&mut head));
    read.is_ok() && is_own(&head)
}

/// What stands between the columns, where all of them are there.
fn separator(head: &str) -> Option<u8> {
    [b',', b';', b'\t'].into_iter().find(|separator| {
        let own: Vec<&str> = head.split(char::from(*separator)).map(|cell| cell.trim().trim_matches('"')).collect();
        COLUMNS.iter().all(|column| own.contains(&column.name))
    })
}

/// Reads a file, told how many of its records are read.
///
/// # Errors
/// [`OwnError`] says why there are no records in it.
pub fn open(path: &Path, tell: &Tell<'_>) -> Result<Reading, OwnError> {
    read_told(&table::bytes(path, LARGEST).map_err(OwnError::Disk)?, tell)
}

/// Reads records that [`write`](super::write()) wrote, also where a spreadsheet saved them again with other separators, with
/// the columns or rows in another order, or with more columns.
///
/// # Valid range
/// At most 200 MB and 1,000,000 rows, in UTF-8 with or without a mark.
///
/// # Errors
/// [`OwnError`] says why there are no records in it.
pub fn read(bytes: &[u8]) -> Result<Reading, OwnError> {
    read_told(bytes, &untold)
}

fn read_told(bytes: &[u8], tell: &Tell<'_>) -> Result<Reading, OwnError> {
    if bytes.len() > LARGEST {
        return Err(OwnError::TooLarge);
    }
    let text = std::str::from_utf8(bytes).map_err(|_| OwnError::NotUtf8)?;
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let head = text.split(['\n', '\r']).next().unwrap_or_default();
    let separator = separator(head).ok_or(OwnError::OtherHead)?;
    let mut csv = ReaderBuilder::new().flexible(true).delimiter(separator).from_reader(text.as_bytes());
    let head = csv.headers().map_err(|_| OwnError::OtherHead)?.clone();
    let mut reading = Reading::default();
    let places = Places::of(&head, &mut reading.notes);
    let mut groups: Vec<(Id, Vec<Row>)> = Vec::new();
    let mut known: HashMap<Id, usize> = HashMap::new();
    let mut count = 0;
    let mut cells = StringRecord::new();
    while csv.read_record(&mut cells).map_err(|_| OwnError::NotUtf8)? {
        count += 1;
        if count > MOST_ROWS {
            return Err(OwnError::TooMany);
        }
        tell(0, None)?;
        let row = Row { line: table::line(text, &cells), cells: cells.iter().map(unguarded).collect() };
        if cells.iter().all(str::is_empty) {
            continue;
        }
        let id = row.get(&places, "record").to_owned();
        if id.is_empty() {
            reading.refused.push(Refused { line: row.line, why: t!("file-it-names-no-record").to_owned() });
            continue;
        }
        let at = *known.entry(id.clone()).or_insert_with(|| {
            groups.push((id, Vec::new()));
            groups.len() - 1
        });
        if let Some((_, rows)) = groups.get_mut(at) {
            rows.push(row);
        }
    }
    let days =
        Days::of(groups.iter().flat_map(|(_, rows)| rows).flat_map(|row| DAYS.map(|name| row.get(&places, name))));
    reading.notes.extend(days.notes());
    let all = groups.len();
    for (at, (id, rows)) in groups.into_iter().enumerate() {
        tell(at, Some(all))?;
        match record(&rows, &places, head.len(), days).map(|record| with_own_line_ends(record, &rows)) {
            Ok(record) => {
                reading.records.push(Coming { id, record, line: rows.first().map_or(0, |row| row.line) });
            }
            Err(wrong) => {
                let beside = |first: u64| t!("file-it-is-of-the-record-of", id = id, first = first);
                reading.refused.extend(refuse_all(rows.iter().map(|row| row.line), &wrong, beside));
            }
        }
    }
    reading.refused.sort_by_key(|refused| refused.line);
    Ok(reading)
}

/// A record with the line ends that its texts had: a program that saves files with other ones changes those in texts too. A
/// signed record keeps those over which its seal holds, if it does over either; any other has line feeds.
fn with_own_line_ends(record: Record, rows: &[Row]) -> Record {
    // As it is, or as JSON has it.
    let has_both = |cell: &str| cell.contains("\r\n") || cell.contains("\\r\\n");
    if !rows.iter().any(|row| row.cells.iter().any(has_both)) {
        return record;
    }
    let Some(mended) = seal::with_line_feeds(&record) else { return record };
    let keeps = seal::is_signed(&record) && matches!(seal::verify(&mended), Verdict::Broken { .. });
    if keeps || matches!(seal::verify(&record), Verdict::Intact) { record } else { mended }
}

/// Where the columns stand in this file.
struct Places {
    /// By their names.
    at: HashMap<&'static str, usize>,
}

impl Places {
    fn of(head: &StringRecord, notes: &mut Vec<String>) -> Self {
        let find = |name: &str| head.iter().position(|own| own.trim() == name).unwrap_or(usize::MAX);
        let foreign: Vec<&str> = head
            .iter()
            .filter(|own| COLUMNS.iter().all(|column| column.name != own.trim()) && !own.trim().is_empty())
            .collect();
        if !foreign.is_empty() {
            notes.push(t!("file-no-column-of-a-record-so", foreign = foreign.join(", ")));
        }
        Self { at: COLUMNS.iter().map(|column| (column.name, find(column.name))).collect() }
    }

    /// Name and place of the columns of one kind.
    fn which(&self, of: Of) -> impl Iterator<Item = (&'static str, usize)> {
        COLUMNS.iter().filter(move |column| column.of == of).map(|column| (column.name, self.place(column.name)))
    }

    fn place(&self, name: &str) -> usize {
        self.at.get(name).copied().unwrap_or(usize::MAX)
    }
}

struct Row {
    line: u64,
    /// As they were typed.
    cells: StringRecord,
}

impl Row {
    fn get(&self, places: &Places, name: &str) -> &str {
        self.cells.get(places.place(name)).unwrap_or("")
    }

    /// Whether a row says the same in some columns; else the first that differs.
    fn differs(&self, other: &Self, mut columns: impl Iterator<Item = (&'static str, usize)>) -> Option<&'static str> {
        columns.find(|(_, at)| self.cells.get(*at) != other.cells.get(*at)).map(|(name, _)| name)
    }
}

/// The record of some rows.
fn record(rows: &[Row], places: &Places, columns: usize, days: Days) -> Result<Record, Vec<Refused>> {
    let mut wrong: Vec<Refused> = Vec::new();
    let mut no = |line: u64, why: String| wrong.push(Refused { line, why });
    let Some(first) = rows.first() else { return Err(wrong) };
    for row in rows {
        if row.cells.len() != columns {
            no(row.line, t!("file-it-has-columns-and-the-head", cells = row.cells.len(), columns = columns));
        } else if let Some(name) = row.differs(first, places.which(Of::Record)) {
            no(row.line, t!("file-is-not-as-on-line-though", name = name, line = first.line));
        }
    }
    // The rows of each field, in the order in which they come.
    let mut by_field: Vec<(Option<&str>, Vec<&Row>)> = Vec::new();
    let mut known: HashMap<Option<&str>, usize> = HashMap::new();
    for row in rows {
        let has_field = !row.get(places, "area").is_empty();
        let stray = places.which(Of::Field).find(|(_, at)| row.cells.get(*at).is_some_and(|cell| !cell.is_empty()));
        if let (false, Some((name, _))) = (has_field, stray) {
            no(row.line, t!("file-is-typed-and-the-area-is", name = name));
        }
        let field = has_field.then(|| row.get(places, "field"));
        let at = *known.entry(field).or_insert_with(|| {
            by_field.push((field, Vec::new()));
            by_field.len() - 1
        });
        let Some((_, rows)) = by_field.get_mut(at) else { continue };
        if let Some(name) = rows.first().and_then(|first| row.differs(first, places.which(Of::Field))) {
            no(row.line, t!("file-is-not-as-on-the-row", name = name));
        }
        rows.push(row);
    }
    if by_field.len() > 1 && by_field.iter().any(|(field, _)| field.is_none()) {
        no(first.line, t!("file-some-rows-of-the-record-name").to_owned());
    }
    let lines_of = |rows: &[&Row]| rows.iter().filter(|row| !row.get(places, "amount").is_empty()).count();
    let of_first = by_field.first().map(|(_, rows)| rows.clone()).unwrap_or_default();
    for (_, rows) in by_field.iter().skip(1) {
        if lines_of(rows) != lines_of(&of_first) || rows.len() != of_first.len() {
            let line = rows.first().map_or(first.line, |row| row.line);
            no(line, t!("file-its-field-has-other-products-than").to_owned());
            continue;
        }
        for (row, other) in rows.iter().zip(&of_first) {
            if let Some(name) = row.differs(other, places.which(Of::Line)) {
                no(row.line, t!("file-name-is-not-as-on-line-line-though-both", name = name, line = other.line));
            }
        }
    }
    let mut record = match whole(&Cells { row: first, places, days }) {
        Ok(record) => Some(record),
        Err(why) => {
            no(first.line, why);
            None
        }
    };
    for row in &of_first {
        match line(&Cells { row, places, days }) {
            Ok(Some(line)) => {
                if let Some(record) = &mut record {
                    record.lines.push(line);
                }
            }
            Ok(None) if of_first.len() > 1 => {
                no(row.line, t!("file-it-names-no-amount-though-its").to_owned());
            }
            Ok(None) => {}
            Err(why) => no(row.line, why),
        }
    }
    for (id, rows) in &by_field {
        let (Some(id), Some(row)) = (id, rows.first()) else { continue };
        match field(&Cells { row, places, days }) {
            Ok(field) => {
                if let Some(record) = &mut record {
                    record.fields.insert((*id).to_owned(), field);
                }
            }
            Err(why) => no(row.line, why),
        }
    }
    if let Some(record) = record.as_ref().filter(|_| wrong.is_empty()) {
        for ((_, rows), share) in by_field.iter().zip(shares(record)) {
            for (row, line) in rows.iter().zip(&record.lines) {
                if let Some(why) = off_share(row, places, line, share.fraction()) {
                    wrong.push(Refused { line: row.line, why });
                }
            }
        }
    }
    wrong.sort_by_key(|wrong| wrong.line);
    record.filter(|_| wrong.is_empty()).ok_or(wrong)
}

/// Whether the share that stands in a row is another than that of its field: then a field of the record has no row in the file,
/// or a text was changed and the figure beside it was not. An empty cell says nothing.
fn off_share(row: &Row, places: &Places, line: &RecordLine, share: f64) -> Option<String> {
    let (name, own) = match line.amount.value().times(share) {
        Amount::Volume(volume) => ("amount_l", volume.to_litres()),
        Amount::Mass(mass) => ("amount_kg", mass.to_kilograms()),
    };
    let said: f64 = row.get(places, name).trim().replace(',', ".").parse().ok()?;
    // A spreadsheet may have rounded it.
    let is_near = (said - own).abs() <= 0.005 + 1e-3 * own;
    (!is_near)
        .then(|| t!("file-is-where-the-share-by-area", name = name, said = said, own = format_args!("{:.3}", own)))
}

/// The cells of a row by name, each read for what it is to be.
struct Cells<'a> {
    row: &'a Row,
    places: &'a Places,
    days: Days,
}

impl Cells<'_> {
    fn text(&self, name: &str) -> Text {
        self.row.get(self.places, name).into()
    }

    fn quantity<Q: Quantity>(&self, name: &str) -> Result<Option<AsTyped<Q>>, String> {
        let text = self.row.get(self.places, name);
        if text.is_empty() {
            return Ok(None);
        }
        AsTyped::parse(text).map(Some).map_err(|error| format!("{name}: {error}"))
    }

    fn value<T: FromStr>(&self, name: &str, wrong: fn(&str, &str) -> String) -> Result<Option<T>, String> {
        let text = self.row.get(self.places, name);
        if text.is_empty() {
            return Ok(None);
        }
        text.parse().map(Some).map_err(|_| wrong(name, &table::when::short(text)))
    }

    /// A time of day, also as a spreadsheet shows it: "5:30", "5:30:00", "5:30 AM".
    fn time(&self, name: &str) -> Result<Option<Time>, String> {
        let text = self.row.get(self.places, name);
        let shown = if text.contains(':') { table::when::clock(text).ok() } else { None };
        self.value(name, |name, text| t!("file-time-of-day-write-it-like", name = name, text = text))
            .or_else(|why| shown.map(Some).ok_or(why))
    }

    fn day(&self, name: &str) -> Result<Option<Date>, String> {
        let text = self.row.get(self.places, name);
        if text.is_empty() { Ok(None) } else { self.days.day(text).map(Some).map_err(|why| format!("{name}: {why}")) }
    }

    fn word<T: DeserializeOwned>(&self, name: &str) -> Result<Option<T>, String> {
        let text = self.row.get(self.places, name);
        if text.is_empty() {
            return Ok(None);
        }
        serde_json::from_value(Value::String(text.to_owned()))
            .map(Some)
            .map_err(|_| t!("file-is-none-of-those-known", name = name, text = table::when::short(text)))
    }

    fn json<T: DeserializeOwned + Default>(&self, name: &str) -> Result<T, String> {
        let text = self.row.get(self.places, name);
        if text.is_empty() {
            return Ok(T::default());
        }
        serde_json::from_str(text).map_err(|error| format!("{name}: {error}"))
    }
}

/// What a row says of its record as a whole.
fn whole(cells: &Cells<'_>) -> Result<Record, String> {
    let date = cells.day("date")?.ok_or(t!("file-date-the-day-is-missing"))?;
    let left = cells.quantity("left")?;
    let went = cells.text("left_went");
    if left.is_none() && !went.is_empty() {
        return Err(t!("file-left-went-is-typed-and-what").to_owned());
    }
    let weeds = cells.text("weeds");
    Ok(Record {
        pass: Some(cells.text("pass")).filter(|pass| !pass.is_empty()),
        start: cells.time("start")?,
        end: cells.time("end")?,
        volume: cells.quantity("spray_volume")?,
        planned: cells.quantity("planned_volume")?,
        loads: cells.value("loads", |name, text| t!("file-number-of-loads", name = name, text = text))?,
        left: left.map(|volume| Left { volume, went }),
        weeds: match weeds.as_str() {
            "" => Vec::new(),
            listed if listed.starts_with('[') => cells.json("weeds")?,
            plain => plain.split("; ").map(Text::from).collect(),
        },
        water: cells.text("water"),
        rig: cells.text("rig"),
        method: cells.text("method"),
        nozzles: cells.text("nozzles"),
        pressure: cells.quantity("pressure")?,
        speed: cells.quantity("speed")?,
        height: cells.quantity("height")?,
        clean_out: cells.text("clean_out"),
        wind: cells.quantity("wind")?,
        wind_from: cells.text("wind_from"),
        gust: cells.quantity("gust")?,
        temperature: cells.quantity("temperature")?,
        humidity: cells.quantity("humidity")?,
        readings: cells.json("readings")?,
        droplets: cells.word("droplets")?,
        expected: cells.json("expected")?,
        operator: cells.text("operator"),
        certificate: cells.text("certificate"),
        supervisor: cells.text("supervisor"),
        helpers: cells.text("helpers"),
        customer: cells.json("customer")?,
        more: cells.json("more")?,
        made: cells.value("made", |name, text| t!("file-moment-write-it-like-2031-06", name = name, text = text))?,
        note: cells.text("note"),
        signed: cells.json("signed")?,
        amendments: cells.json("amendments")?,
        outcomes: cells.json("outcomes")?,
        ..Record::new(&cells.text("name"), date)
    })
}

/// What a row says of its field, which has an area.
fn field(cells: &Cells<'_>) -> Result<RecordField, String> {
    let area = cells.quantity("area")?.ok_or(t!("file-area-it-is-missing"))?;
    Ok(RecordField {
        crop: cells.text("crop"),
        stage: cells.text("stage"),
        planned: cells.quantity("planned_area")?,
        part: cells.text("part"),
        variety: cells.text("variety"),
        planted: cells.day("planted")?,
        location: cells.text("location"),
        parcel: cells.text("parcel"),
        crop_code: cells.text("crop_code"),
        ..RecordField::new(&cells.text("field_name"), area)
    })
}

/// What a row says of its product, if it has one.
fn line(cells: &Cells<'_>) -> Result<Option<RecordLine>, String> {
    let Some(amount) = cells.quantity("amount")? else {
        let mut own = cells.places.which(Of::Line);
        return match own.find(|(_, at)| cells.row.cells.get(*at).is_some_and(|cell| !cell.is_empty())) {
            Some((name, _)) => Err(t!("file-is-typed-and-the-amount-is", name = name)),
            None => Ok(None),
        };
    };
    let restricted = match cells.text("restricted").as_str() {
        "" | "no" => false,
        "yes" => true,
        other => return Err(t!("file-restricted-is-neither-yes-nor-empty", other = other)),
    };
    Ok(Some(RecordLine {
        registration: cells.text("registration"),
        planned: cells.quantity("planned_amount")?,
        lot: cells.text("lot"),
        price: cells.quantity("price")?,
        kind: cells.word("kind")?,
        class: cells.word("class")?,
        restricted,
        entry: cells.value("entry_hours", |name, text| t!("file-number-of-hours", name = name, text = text))?,
        harvest: cells.value("harvest_days", |name, text| t!("file-number-of-days", name = name, text = text))?,
        actives: cells.json("actives")?,
        ..RecordLine::new(&cells.text("product"), &cells.text("product_name"), amount)
    }))
}
