//! Writing the records of a large farm beside one another: the writer writes some at a time on each thread, as part of a farm with
//! nothing else, and the lines are put together. So many records are not read by a person from end to end, and two fifths of
//! their text would be blanks: each of their facts stands on one line, whatever is in it.

use std::collections::BTreeMap;
use std::num::NonZero;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::mpsc;
use std::thread;

use serde::ser::SerializeMap;
use serde::{Serialize, Serializer};
use tankard_core::farm::{Farm, Nouns, Record};

use crate::document::{in_lines, one_after_another};

/// How many records are written together.
pub(crate) const TOGETHER: usize = 500;
/// How many threads are of use at most.
const THREADS: usize = 8;

/// How deep lines are broken: farm, records, and the facts of a record.
const DEPTH: usize = 3;

/// What stands where a farm has no records.
const NONE: &str = "\n    records: {},\n";
/// What stands before records, and behind them.
const AROUND: (&str, &str) = ("\n    records: {\n", "    },\n");

/// A farm of nothing but some of its records.
#[derive(Serialize)]
#[serde(rename = "Farm")]
struct Part<'a> {
    records: Since<'a>,
}

/// The records from a place on.
struct Since<'a>(&'a Farm, usize);

impl Serialize for Since<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(None)?;
        for (id, record) in (self.1..self.1 + TOGETHER).map_while(|place| self.0.records.get_index(place)) {
            map.serialize_entry(id, record)?;
        }
        map.end()
    }
}

/// The lines of the records from a place on.
fn lines(farm: &Farm, from: usize) -> Result<String, ron::Error> {
    let mut text = in_lines(&Part { records: Since(farm, from) }, DEPTH)?;
    let (begin, end) = (text.find(AROUND.0).map(|at| at + AROUND.0.len()), text.rfind(AROUND.1));
    if let (Some(begin), Some(end)) = (begin, end) {
        text.truncate(end);
        text.drain(..begin);
    }
    Ok(text)
}

/// Writes a farm.
///
/// # Errors
/// Only where the serializer fails, which no farm makes it do.
pub(crate) fn write(farm: &Farm) -> Result<String, ron::Error> {
    let rest = one_after_another(&Farm { records: Nouns::<Record>::new(), ..farm.clone() })?;
    // A line feed within a text is not written as one, so that this stands nowhere else.
    let Some((before, behind)) = rest.split_once(NONE) else { return one_after_another(farm).map(|text| text + "\n") };
    let pieces = farm.records.len().div_ceil(TOGETHER);
    let (next, (done, coming)) = (AtomicUsize::new(0), mpsc::sync_channel(4 * THREADS));
    let threads = thread::available_parallelism().map_or(1, NonZero::get).min(THREADS);
    let mut text = String::from(before);
    text.push_str(AROUND.0);
    thread::scope(|scope| {
        for _ in 0..threads {
            let (next, done) = (&next, done.clone());
            scope.spawn(move || {
                while let piece = next.fetch_add(1, Ordering::Relaxed)
                    && piece < pieces
                    && done.send((piece, lines(farm, piece * TOGETHER))).is_ok()
                {}
            });
        }
        drop(done);
        let (mut wanted, mut early) = (0, BTreeMap::new());
        for (piece, lines) in coming {
            early.insert(piece, lines?);
            while let Some(lines) = early.remove(&wanted) {
                text.push_str(&lines);
                wanted += 1;
            }
        }
        Ok::<(), ron::Error>(())
    })?;
    text.push_str(AROUND.1);
    text.push_str(behind);
    text.push('\n');
    Ok(text)
}
