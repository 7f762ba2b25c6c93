//! Hours from a table, by a layout; and the lines that give none, each with its reason.

use std::collections::{BTreeMap, BTreeSet};

use jiff::civil::DateTime;
use jiff::tz::{AmbiguousOffset, TimeZone};
use tankard_core::farm::{FileLayout, Holds, Hour};
use tankard_core::language::days::clock;
use tankard_core::t;

use super::cell::Column;
use super::units::{needs_unit, units};
use crate::table::when::{self, How, Moment, short};
use crate::table::{Nothing, Refused, Row, Table, nothing};

/// More hours are a history and no forecast: 45 days.
const MOST_HOURS: usize = 45 * 24;

/// What a table gives.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Reading {
    /// The hours, in order.
    pub hours: Vec<Hour>,
    /// The lines that are left out, in order.
    pub refused: Vec<Refused>,
    /// What a person should know of how it was read.
    pub notes: Vec<String>,
    /// What must be chosen or mended first; no hours are given while anything stands here.
    pub to_choose: Vec<String>,
}

/// Reads the hours of a table by a layout. Times that are given against UTC are put on the farm's clock, which is that of the
/// zone; times without an offset are taken as they stand.
pub fn read(table: &Table, layout: &FileLayout, zone: Option<&TimeZone>) -> Reading {
    let mut reading = Reading::default();
    let Some(plan) = Plan::of(table, layout, &mut reading.to_choose) else { return reading };
    let mut reader = Reader { zone, ..Reader::default() };
    let mut found: Vec<Found> = Vec::new();
    for row in &table.rows {
        match reader.row(row, &plan, table.header.len()) {
            Ok(Some(one)) => found.push(one),
            Ok(None) => {}
            Err(why) => reading.refused.push(Refused { line: row.line, why }),
        }
    }
    if reader.lacks_zone {
        reading.to_choose.push(t!("file-the-times-are-given-against-utc").to_owned());
        reading.refused.clear();
        return reading;
    }
    // Hours of the world's time lie between those of the clock where a zone is half an hour off.
    if found.iter().any(Found::on_the_hour) {
        let before = found.len();
        found.retain(Found::on_the_hour);
        reader.between += (before - found.len()) as u64;
    }
    settle_twice(&mut found, &mut reading.refused);
    settle_alike(&mut found, &mut reading.refused);
    if found.len() > MOST_HOURS {
        reading.to_choose.push(t!(
            "file-the-file-holds-hours-a-forecast",
            found = found.len(),
            most_hours = MOST_HOURS
        ));
        return reading;
    }
    found.sort_by_key(|one| (one.hour.at, one.hour.again));
    reader.note(&found, &mut reading.notes);
    reading.hours = found.into_iter().map(|one| one.hour).collect();
    reading.refused.sort_by_key(|refused| refused.line);
    reading
}

/// Which columns are read, and how.
struct Plan<'a> {
    when: (usize, Option<usize>),
    how: How,
    columns: Vec<Column<'a>>,
}

impl<'a> Plan<'a> {
    fn of(table: &Table, layout: &'a FileLayout, problems: &mut Vec<String>) -> Option<Self> {
        let before = problems.len();
        let mut places: BTreeMap<Holds, (usize, &str, &str)> = BTreeMap::new();
        for take in &layout.takes {
            let name = take.column.as_str();
            let Some(at) = table.column(name) else {
                problems.push(t!("file-the-file-has-no-column-choose", name = name));
                continue;
            };
            if let Some((_, other, _)) = places.insert(take.holds, (at, name, &take.unit)) {
                problems.push(t!(
                    "file-and-both-hold-choose-one-of",
                    other = other,
                    name = name,
                    holds = take.holds.name()
                ));
            }
            let is_day = matches!(take.holds, Holds::DateAndTime | Holds::Date);
            if take.unit.is_empty() {
                if is_day {
                    problems.push(t!("file-choose-how-the-days-of-are", name = name));
                } else if needs_unit(take.holds) && table.is_bare(at) {
                    problems.push(t!("file-choose-the-unit-of-the-file", name = name));
                }
            } else if needs_unit(take.holds) && !units(take.holds).contains(&take.unit.as_str()) {
                problems.push(t!("file-is-no-unit-known-for-choose", unit = take.unit, holds = take.holds.name()));
            }
        }
        let day_and_time = places.remove(&Holds::DateAndTime);
        let (day, time) = (places.remove(&Holds::Date), places.remove(&Holds::Time));
        let when = match (day_and_time, day, time) {
            (Some((at, _, unit)), None, None) => Some(((at, None), unit)),
            (None, Some((at, _, unit)), Some((time, ..))) => Some(((at, Some(time)), unit)),
            (Some(_), ..) => {
                problems.push(t!("file-day-and-time-stand-in-one").to_owned());
                None
            }
            (None, Some(_), None) => {
                problems.push(t!("file-choose-the-column-that-holds-the").to_owned());
                None
            }
            (None, None, Some(_)) => {
                problems.push(t!("file-choose-the-column-that-holds-the-day").to_owned());
                None
            }
            (None, None, None) => {
                problems.push(t!("file-choose-the-column-that-holds-day").to_owned());
                None
            }
        };
        let columns: Vec<Column<'a>> = places
            .into_iter()
            .map(|(holds, (at, _, unit))| Column { at, holds, unit, decimal_comma: table.decimal_comma })
            .collect();
        if columns.is_empty() && problems.len() == before {
            problems.push(t!("file-choose-at-least-one-column-of").to_owned());
        }
        let (when, unit) = when?;
        let how = How::of(unit);
        if how.is_none() && problems.len() == before {
            problems.push(t!("file-is-no-way-to-write-a", unit = unit));
        }
        if problems.len() > before { None } else { Some(Self { when, how: how?, columns }) }
    }
}

/// An hour with where it was found.
struct Found {
    line: u64,
    hour: Hour,
    /// Whether the clock shows it twice and no offset says which of the two it is.
    is_open: bool,
}

impl Found {
    fn on_the_hour(&self) -> bool {
        is_full(self.hour.at)
    }
}

/// Whether the clock shows a full hour.
fn is_full(at: DateTime) -> bool {
    (at.minute(), at.second()) == (0, 0)
}

#[derive(Default)]
struct Reader<'a> {
    zone: Option<&'a TimeZone>,
    lacks_zone: bool,
    between: u64,
    no_figure: u64,
    by_clock: bool,
}

impl Reader<'_> {
    /// `None` for a line between full hours, both by the clock and by the world's time.
    fn row(&mut self, row: &Row, plan: &Plan, columns: usize) -> Result<Option<Found>, String> {
        if row.written() < columns || row.len() > columns {
            let written = if row.len() > columns { row.len() } else { row.written() };
            return Err(t!("file-it-has-and-the-header-has", count = written, columns = columns));
        }
        let (hour, is_open) = self.hour(row, plan)?;
        let Some(mut hour) = hour else { return Ok(None) };
        let mut any = false;
        for column in &plan.columns {
            let cell = row.cell(column.at);
            match nothing(cell) {
                Some(Nothing::Figure) => self.no_figure += 1,
                Some(Nothing::Said) => {}
                None => {
                    put(&mut hour, column, cell)?;
                    any = true;
                }
            }
        }
        if any {
            Ok(Some(Found { line: row.line, hour, is_open }))
        } else {
            Err(t!("file-nothing-but-a-time-stands-in").to_owned())
        }
    }

    fn hour(&mut self, row: &Row, plan: &Plan) -> Result<(Option<Hour>, bool), String> {
        let first = row.cell(plan.when.0);
        let text = match plan.when.1 {
            Some(time) => format!("{first} {}", row.cell(time)),
            None => first.to_owned(),
        };
        if text.trim().is_empty() {
            return Err(t!("file-no-day-and-time-stand-in").to_owned());
        }
        let (at, again, is_open) = match when::moment(text.trim(), plan.how)? {
            Moment::World(moment) => {
                let Some(zone) = self.zone else {
                    self.lacks_zone = true;
                    return Ok((None, false));
                };
                let at = zone.to_datetime(moment);
                // Of two hours that the clock shows alike, the second has the offset that is kept afterwards.
                let again = match zone.to_ambiguous_timestamp(at).offset() {
                    AmbiguousOffset::Fold { after, .. } => zone.to_offset(moment) == after,
                    _ => false,
                };
                (at, again, false)
            }
            Moment::Clock(at) => {
                self.by_clock = true;
                match self.zone.map(|zone| zone.to_ambiguous_timestamp(at).offset()) {
                    Some(AmbiguousOffset::Gap { .. }) => {
                        return Err(t!("file-the-clock-is-put-forward-over", text = short(&text)));
                    }
                    Some(AmbiguousOffset::Fold { .. }) => (at, false, true),
                    _ => (at, false, false),
                }
            }
        };
        let in_the_world = self.zone.and_then(|zone| zone.to_timestamp(at).ok()).map(|at| at.as_second() % 3600);
        if !is_full(at) && in_the_world != Some(0) {
            self.between += 1;
            return Ok((None, false));
        }
        Ok((Some(Hour { again, ..Hour::new(at) }), is_open))
    }

    fn note(&self, found: &[Found], notes: &mut Vec<String>) {
        if self.between > 0 {
            notes.push(t!("file-between-full-hours-by-the-farms", count = self.between));
        }
        if let Some(first) = found.first().filter(|first| !first.on_the_hour()) {
            notes.push(t!("file-the-hours-begin-minutes-past-the", minute = first.hour.at.minute()));
        }
        let steps = || {
            found
                .iter()
                .zip(found.iter().skip(1))
                .map(|(one, next)| next.hour.at.duration_since(one.hour.at).as_hours())
        };
        let usual = steps().min().unwrap_or(1);
        if usual > 1 {
            notes.push(t!("file-there-is-an-hour-only-every", usual = usual));
        }
        if self.by_clock {
            notes.push(t!("file-times-without-an-offset-are-taken").to_owned());
        }
        if self.no_figure > 0 {
            notes.push(t!("file-999-and-the-like-are-taken", count = self.no_figure));
        }
    }
}

/// Tells apart the two hours that the clock shows alike, by their order, where both are there and the file is in order.
fn settle_twice(found: &mut Vec<Found>, refused: &mut Vec<Refused>) {
    let mut times: BTreeMap<DateTime, usize> = BTreeMap::new();
    for one in found.iter().filter(|one| one.is_open) {
        *times.entry(one.hour.at).or_insert(0) += 1;
    }
    let is_ordered = found.is_sorted_by_key(|one| one.hour.at);
    let mut seen = BTreeSet::new();
    found.retain_mut(|one| {
        if !one.is_open {
            return true;
        }
        if is_ordered && times.get(&one.hour.at) == Some(&2) {
            one.hour.again = !seen.insert(one.hour.at);
            return true;
        }
        let why = t!("file-the-clock-shows-twice-in-this", time = clock(one.hour.at));
        refused.push(Refused { line: one.line, why });
        false
    });
}

/// Leaves out an hour that was given on a line before.
fn settle_alike(found: &mut Vec<Found>, refused: &mut Vec<Refused>) {
    let mut lines = BTreeMap::new();
    found.retain(|one| match lines.insert((one.hour.at, one.hour.again), one.line) {
        None => true,
        Some(before) => {
            lines.insert((one.hour.at, one.hour.again), before);
            refused.push(Refused { line: one.line, why: t!("file-its-hour-stands-on-line-already", before = before) });
            false
        }
    });
}

fn put(hour: &mut Hour, column: &Column, cell: &str) -> Result<(), String> {
    match column.holds {
        Holds::Temperature => hour.temperature = Some(column.temperature(cell)?),
        Holds::Higher => hour.higher = Some(column.temperature(cell)?),
        Holds::DewPoint => hour.dew_point = Some(column.temperature(cell)?),
        Holds::Humidity => hour.humidity = Some(column.share(cell)?),
        Holds::Wind => hour.wind = Some(column.speed(cell)?),
        Holds::Gust => hour.gust = Some(column.speed(cell)?),
        Holds::WindFrom => hour.wind_from = column.bearing(cell)?,
        Holds::Rain => hour.rain = Some(column.rain(cell)?),
        Holds::RainChance => hour.rain_chance = Some(column.share(cell)?),
        Holds::Cloud => hour.cloud = Some(column.share(cell)?),
        Holds::DateAndTime | Holds::Date | Holds::Time => {}
    }
    Ok(())
}
