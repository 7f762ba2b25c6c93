//! The table in a text file of any layout: its header and its rows, below whatever stands before them. What is looked for
//! ([`Sought`]) says by what a line of the table is known, and how large it may be.

mod cells;
pub(crate) mod encoding;
pub(crate) mod when;

use std::collections::HashMap;
use std::fs::{self, File};
use std::io::{self, Read};
use std::path::Path;

use csv::{ReaderBuilder, StringRecord};
use tankard_core::t;
use thiserror::Error;

pub(crate) use cells::{Nothing, has_unit, is_bare, nothing};

/// What a table is looked for: how it is known, and what is more than it can be.
#[derive(Debug)]
pub(crate) struct Sought {
    /// Of what, by which messages choose: "forecast" or "records".
    pub(crate) of: &'static str,
    /// Bytes of the largest file.
    pub(crate) largest: usize,
    /// The most lines.
    pub(crate) most_rows: usize,
    /// The most columns.
    pub(crate) most_columns: usize,
    /// Whether a line looks like one of the table.
    pub(crate) is_of_it: fn(&Row) -> bool,
    /// Whether a line below the header gives the units of the columns.
    pub(crate) is_row_of_units: fn(&Row) -> bool,
    /// Whether a line that begins with "#" is a remark.
    pub(crate) has_remarks: bool,
}

/// How many lines are looked at to see how a file is laid out.
const SAMPLE: usize = 400;
/// How much text that may be.
const SAMPLE_BYTES: usize = 256 << 10;
/// Tried in this order, since a comma may be a decimal mark and the others hardly stand in a table for anything else.
const SEPARATORS: [u8; 3] = [b'\t', b';', b','];

impl Sought {
    const fn too_many(&self) -> TableError {
        TableError::TooMany { rows: self.most_rows, columns: self.most_columns }
    }
}

/// The bytes of a file, no more of it than it takes to see that it is too large.
///
/// # Errors
/// [`TableError::Io`] where the disk says no.
pub(crate) fn bytes(path: &Path, largest: usize) -> Result<Vec<u8>, TableError> {
    let problem = |error: io::Error| TableError::Io(error.to_string());
    if fs::metadata(path).map_err(problem)?.is_dir() {
        return Err(TableError::Io(t!("file-it-is-a-folder").to_owned()));
    }
    let mut bytes = Vec::new();
    File::open(path).map_err(problem)?.take(largest as u64 + 1).read_to_end(&mut bytes).map_err(problem)?;
    Ok(bytes)
}

/// Why a file holds no table that can be read.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum TableError {
    /// The disk said no.
    #[error("{}", t!("file-it-cannot-be-opened", why = .0))]
    Io(String),
    /// Nothing is in it.
    #[error("{}", t!("file-the-file-is-empty"))]
    Empty,
    /// It is too large.
    #[error("{}", t!("file-the-table-is-too-large", of = .of, mb = .largest >> 20))]
    TooLarge {
        /// Bytes of the largest one that is read.
        largest: usize,
        /// Of what, by which the message chooses: "forecast" or "records".
        of: &'static str,
    },
    /// It has too many lines or columns.
    #[error("{}", t!("file-more-lines-or-columns", rows = .rows, columns = .columns))]
    TooMany {
        /// The most lines that are read.
        rows: usize,
        /// The most columns.
        columns: usize,
    },
    /// It is a workbook.
    #[error("{}", t!("file-a-workbook-not-a-csv"))]
    Workbook,
    /// It is not text.
    #[error("{}", t!("file-not-text-so-no-csv"))]
    NotText,
    /// No lines with the same number of columns and a day or a time in them.
    #[error("{}", t!("file-no-table-was-found"))]
    NoTable,
}

/// A line that is left out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refused {
    /// Its number in the file, from 1.
    pub line: u64,
    /// Why.
    pub why: String,
}

/// Refuses all lines of a record that is not taken: each for what is wrong with it; one with which nothing is wrong for what is
/// said of the first line of those that are.
pub(crate) fn refuse_all(
    lines: impl IntoIterator<Item = u64>,
    wrong: &[Refused],
    beside: impl Fn(u64) -> String,
) -> impl Iterator<Item = Refused> {
    let first = wrong.first().map_or(0, |wrong| wrong.line);
    let mut own: HashMap<u64, &Refused> = HashMap::new();
    for wrong in wrong {
        own.entry(wrong.line).or_insert(wrong);
    }
    lines.into_iter().map(move |line| match own.get(&line) {
        Some(wrong) => (*wrong).clone(),
        None => Refused { line, why: beside(first) },
    })
}

/// A line of the table.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// Its number in the file, from 1.
    pub line: u64,
    cells: StringRecord,
}

impl Row {
    /// What stands in a column, without the spaces around it; empty where there is no such column.
    pub fn cell(&self, column: usize) -> &str {
        self.cells.get(column).unwrap_or("").trim()
    }

    /// How many columns it has; empty ones at its end are not counted.
    pub fn len(&self) -> usize {
        (0..self.cells.len()).rev().find(|at| !self.cell(*at).is_empty()).map_or(0, |last| last + 1)
    }

    /// Whether nothing stands in it.
    pub fn is_empty(&self) -> bool {
        self.len() == 0
    }

    /// How many columns it was written with.
    pub(crate) fn written(&self) -> usize {
        self.cells.len()
    }
}

/// The table in a file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Table {
    /// The headings, no two alike. Where a line of units stands below them, each has its unit in brackets.
    pub header: Vec<String>,
    /// The lines below.
    pub rows: Vec<Row>,
    /// What stands before the header, shortened.
    pub before: String,
    /// What stands between columns: a comma, a semicolon or a tab.
    pub separator: char,
    /// Whether figures have a decimal comma.
    pub decimal_comma: bool,
}

impl Table {
    /// Finds the table in a file. Of a file that is too large no more is read than it takes to see that.
    ///
    /// # Errors
    /// [`TableError`] says why there is none.
    pub(crate) fn open(path: &Path, sought: &Sought) -> Result<Self, TableError> {
        Self::read(&bytes(path, sought.largest)?, sought)
    }

    /// Finds the table.
    ///
    /// # Errors
    /// [`TableError`] says why there is none.
    pub(crate) fn read(bytes: &[u8], sought: &Sought) -> Result<Self, TableError> {
        if bytes.len() > sought.largest {
            return Err(TableError::TooLarge { largest: sought.largest, of: sought.of });
        }
        let text = encoding::text(bytes)?;
        if text.trim().is_empty() {
            return Err(TableError::Empty);
        }
        // A lone quotation mark would swallow the rest of the file; then it is read without regard to them.
        match Self::find(&text, true, sought) {
            Err(TableError::NoTable) => Self::find(&text, false, sought),
            found => found,
        }
    }

    fn find(text: &str, quotes: bool, sought: &Sought) -> Result<Self, TableError> {
        let head = text.get(..cut(text, SAMPLE_BYTES)).unwrap_or(text);
        let mut best: Option<(usize, usize, Found)> = None;
        for separator in SEPARATORS {
            let rows = records(head, separator, quotes, SAMPLE, sought)?;
            if let Some(found) = Found::of(&rows, sought) {
                let fitting =
                    rows.iter().filter(|row| row.written() == found.columns && (sought.is_of_it)(row)).count();
                // A header of as many columns tells a separator from a decimal comma.
                let headed = usize::from(found.header.is_some());
                if best.as_ref().is_none_or(|(h, f, _)| (headed, fitting) > (*h, *f)) {
                    best = Some((headed, fitting, Found { separator, ..found }));
                }
            }
        }
        let (_, _, found) = best.ok_or(TableError::NoTable)?;
        if found.columns > sought.most_columns {
            return Err(sought.too_many());
        }
        let mut rows = records(text, found.separator, quotes, usize::MAX, sought)?;
        let body = rows.split_off(found.body.min(rows.len()));
        let units = found.units.and_then(|at| rows.get(at));
        let header = names(found.header.and_then(|at| rows.get(at)), units, found.columns);
        let until = found.header.unwrap_or(found.body);
        let before: Vec<String> = rows.iter().take(until.min(40)).map(said).collect();
        let rows: Vec<Row> = body
            .into_iter()
            .filter(|row| !(row.is_empty() || sought.has_remarks && row.cell(0).starts_with('#')))
            .collect();
        let separator = char::from(found.separator);
        let decimal_comma = separator != ',' && has_decimal_comma(&rows);
        Ok(Self { header, rows, before: before.join("\n"), separator, decimal_comma })
    }

    /// Whether the file gives its columns names.
    pub fn has_header(&self) -> bool {
        self.header.iter().enumerate().any(|(at, heading)| *heading != unnamed(at))
    }

    /// The place of a column.
    pub fn column(&self, heading: &str) -> Option<usize> {
        self.header.iter().position(|own| own == heading)
    }

    /// Whether most figures of a column have no unit of their own.
    pub fn is_bare(&self, column: usize) -> bool {
        let (bare, own) = self
            .first(column, SAMPLE)
            .filter(|text| nothing(text).is_none())
            .fold((0_usize, 0_usize), |(bare, own), text| {
                (bare + usize::from(is_bare(text)), own + usize::from(has_unit(text)))
            });
        bare >= own
    }

    /// The first texts of a column that are not empty.
    pub fn first(&self, column: usize, most: usize) -> impl Iterator<Item = &str> {
        self.rows.iter().map(move |row| row.cell(column)).filter(|cell| !cell.is_empty()).take(most)
    }
}

/// Where in a list of records the table is.
struct Found {
    separator: u8,
    columns: usize,
    header: Option<usize>,
    units: Option<usize>,
    body: usize,
}

impl Found {
    fn of(rows: &[Row], sought: &Sought) -> Option<Self> {
        let columns = usual(rows, sought)?;
        let is_body = |at: usize| rows.get(at).is_some_and(|row| row.written() == columns && (sought.is_of_it)(row));
        // A line such as "made on; 2031-06-11 18:00" before the table is followed by something else.
        let body =
            (0..rows.len()).find(|at| is_body(*at) && (is_body(at + 1) || is_body(at + 2) || at + 1 == rows.len()))?;
        // A first line that cannot be read must not be taken for the header, so that is looked for above it too.
        let above = |from: usize, fits: fn(&Row) -> bool| {
            let is_near = |row: &Row| row.len() > 1 && row.written().abs_diff(columns) <= 1;
            (from.saturating_sub(6)..from).rev().find(|at| rows.get(*at).is_some_and(|row| is_near(row) && fits(row)))
        };
        let header = above(body, is_header);
        let units = above(body, sought.is_row_of_units);
        let (header, units) = match (header, units) {
            // The units may look like a header themselves.
            (Some(at), Some(units)) if at == units => (above(units, is_header), Some(units)),
            (Some(at), Some(units)) if units != at + 1 => (Some(at), None),
            both => both,
        };
        let body = units.max(header).map_or(body, |last| last + 1);
        Some(Self { separator: 0, columns, header, units, body })
    }
}

/// Whether most of what stands in a row is neither a figure nor a time.
fn is_header(row: &Row) -> bool {
    let cells: Vec<&str> = (0..row.len()).map(|at| row.cell(at)).filter(|cell| !cell.is_empty()).collect();
    let is_text = |cell: &&&str| cell.contains(char::is_alphabetic) && !when::is_timely(cell) && !is_bare(cell);
    cells.iter().filter(is_text).count() * 2 > cells.len()
}

/// The number of columns that most lines with a day or a time have.
fn usual(rows: &[Row], sought: &Sought) -> Option<usize> {
    let mut counts = std::collections::BTreeMap::new();
    for row in rows.iter().filter(|row| row.written() > 1 && (sought.is_of_it)(row)) {
        *counts.entry(row.written()).or_insert(0_usize) += 1;
    }
    counts.into_iter().max_by_key(|(columns, times)| (*times, *columns)).map(|(columns, _)| columns)
}

fn records(text: &str, separator: u8, quotes: bool, most: usize, sought: &Sought) -> Result<Vec<Row>, TableError> {
    let mut reader = ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .delimiter(separator)
        .quoting(quotes)
        .from_reader(text.as_bytes());
    let mut rows = Vec::new();
    let mut record = StringRecord::new();
    while rows.len() < most && reader.read_record(&mut record).map_err(|_| TableError::NotText)? {
        if rows.len() > sought.most_rows {
            return Err(sought.too_many());
        }
        // A line of separators alone would take more room than it is worth.
        if record.len() > 2 * sought.most_columns {
            record.truncate(2 * sought.most_columns);
        }
        rows.push(Row { line: line(text, &record), cells: record.clone() });
    }
    Ok(rows)
}

/// The number of the line on which a record of a text begins, from 1.
pub(crate) fn line(text: &str, record: &StringRecord) -> u64 {
    let (line, byte) = record.position().map_or((0, 0), |at| (at.line(), at.byte()));
    // The reader gives the place before the empty lines that it skips.
    let skipped = usize::try_from(byte).ok().and_then(|byte| text.as_bytes().get(byte..)).map_or(0, |rest| {
        rest.iter().take_while(|byte| matches!(byte, b'\n' | b'\r')).filter(|byte| **byte == b'\n').count()
    });
    line + skipped as u64
}

/// The end of the last whole line within a number of bytes.
fn cut(text: &str, most: usize) -> usize {
    if text.len() <= most {
        return text.len();
    }
    text.as_bytes().iter().take(most).rposition(|byte| *byte == b'\n').map_or(text.len(), |at| at + 1)
}

fn said(row: &Row) -> String {
    let cells: Vec<&str> = row.cells.iter().collect();
    cells.join(" ").chars().take(200).collect()
}

/// The heading of a column that has none.
fn unnamed(at: usize) -> String {
    format!("column {}", at + 1)
}

/// The headings: made up where there are none, and each with a number where two are alike.
fn names(header: Option<&Row>, units: Option<&Row>, columns: usize) -> Vec<String> {
    let mut names: Vec<String> = Vec::with_capacity(columns);
    for at in 0..columns {
        let own = header.map_or("", |row| row.cell(at));
        let own = if at == 0 { own.trim_start_matches(['#', '%']).trim_start() } else { own };
        let own: String = own.split_whitespace().collect::<Vec<_>>().join(" ").chars().take(80).collect();
        let own = if own.is_empty() { unnamed(at) } else { own };
        let unit = units.map_or("", |row| row.cell(at)).trim_matches(['(', ')', '[', ']', '#']).trim();
        let own = if nothing(unit).is_some() { own } else { format!("{own} ({unit})") };
        let mut name = own.clone();
        let mut number = 1;
        while names.contains(&name) {
            number += 1;
            name = format!("{own} #{number}");
        }
        names.push(name);
    }
    names
}

/// Whether figures are written "18,4" and none "18.4".
fn has_decimal_comma(rows: &[Row]) -> bool {
    let is = |cell: &str, mark: char| {
        cell.trim_start_matches(['-', '+']).split_once(mark).is_some_and(|(whole, part)| {
            let all = |text: &str| !text.is_empty() && text.bytes().all(|byte| byte.is_ascii_digit());
            all(whole) && all(part)
        })
    };
    let cells = || rows.iter().take(SAMPLE).flat_map(|row| row.cells.iter().map(str::trim));
    cells().any(|cell| is(cell, ',')) && !cells().any(|cell| is(cell, '.'))
}
