//! The quick reader: farms as this program writes them, records in pieces beside one another.
//!
//! RON's own reader takes two thirds of the time it takes to open a large farm to go over blanks and words letter by letter. This one reads
//! what the program writes, however it is laid out and with comments, and nothing else: whatever it does not know makes it give up, and then
//! RON's own reader takes the whole text and is the only one that ever says what is wrong, and where.

mod text;

use std::num::NonZero;
use std::ops::Range;
use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::thread;

use serde::Deserialize;
use tankard_core::farm::{Farm, Id, Nouns, Record};
use tankard_core::progress::Tell;

use text::{GivesUp, Text};

/// The least text for which threads are worth their while.
const PIECE: usize = 1 << 20;
/// How many threads are of use at most.
const THREADS: usize = 8;

/// What stands before the first record, where the program wrote it.
const BEFORE: &str = "\n    records: {";
/// What stands between two records.
const BETWEEN: &str = "\n        ),\n        \"";
/// What then follows their id.
const RECORD: &str = ": Record(\n";

/// Reads a farm, told how many records are read; `None` where another reader must, or nobody waits for it any more.
pub(crate) fn read(text: &str, tell: &Tell<'_>) -> Option<Farm> {
    in_pieces(text, PIECE, tell).or_else(|| tell(0, None).ok().and_then(|()| whole(text)))
}

/// Reads it from its beginning to its end.
fn whole(text: &str) -> Option<Farm> {
    let mut reader = Text::new(text);
    let farm = Farm::deserialize(&mut reader).ok()?;
    reader.ends().ok()?;
    Some(farm)
}

/// Reads the records in pieces of about a size, several at a time, and all else around them.
///
/// Where a piece begins is guessed by what stands there, which may just as well stand in a note. That does no harm: each piece must begin at
/// the very place where the one before ends, and the first where the farm's records begin, so that what is read is what would be read
/// in one go.
fn in_pieces(text: &str, size: usize, tell: &Tell<'_>) -> Option<Farm> {
    let first = text.find(BEFORE)? + BEFORE.len();
    let pieces = pieces(text, first, size);
    if pieces.len() < 2 {
        return None;
    }
    let (next, count) = (AtomicUsize::new(0), AtomicUsize::new(0));
    let threads = thread::available_parallelism().map_or(1, NonZero::get).min(THREADS).min(pieces.len());
    let work = || {
        let mut done = Vec::new();
        while let at = next.fetch_add(1, Ordering::Relaxed)
            && let Some(piece) = pieces.get(at)
            && tell(count.load(Ordering::Relaxed), None).is_ok()
        {
            let read = records(text, piece);
            count.fetch_add(read.as_ref().map_or(0, |piece| piece.records.len()), Ordering::Relaxed);
            done.push((at, read));
        }
        done
    };
    let mut read = thread::scope(|scope| {
        let others: Vec<_> = (1..threads).map(|_| scope.spawn(work)).collect();
        let own = work();
        let others = others.into_iter().map(|other| other.join().unwrap_or_default());
        others.fold(own, |all, other| [all, other].into_iter().flatten().collect())
    });
    if read.len() < pieces.len() {
        return None;
    }
    read.sort_unstable_by_key(|(at, _)| *at);
    let mut records: Nouns<Record> = Nouns::new();
    let mut end = first;
    for (_, piece) in read {
        let piece = piece.ok()?;
        for (id, record) in piece.records {
            if records.insert_shared(id, record).is_some() {
                return None;
            }
        }
        end = piece.end;
    }
    let mut reader = Text::new(text);
    reader.leave_out("Farm", "records", first..end);
    let farm = Farm::deserialize(&mut reader).ok()?;
    reader.ends().ok()?;
    // Left out they must have been, or they would come twice.
    (reader.has_left_out() && farm.records.is_empty()).then_some(Farm { records, ..farm })
}

/// Where pieces begin and end; the last has no end yet.
fn pieces(text: &str, first: usize, size: usize) -> Vec<Range<usize>> {
    let mut pieces = Vec::new();
    let mut begin = first;
    while let Some(next) = border(text, begin + size) {
        pieces.push(begin..next);
        begin = next;
    }
    pieces.push(begin..usize::MAX);
    pieces
}

/// The next place, from about a place on, at which a record seems to begin.
fn border(text: &str, from: usize) -> Option<usize> {
    let mut from = (from..text.len()).find(|at| text.is_char_boundary(*at))?;
    loop {
        let at = from + text.get(from..)?.find(BETWEEN)?;
        let id = at + BETWEEN.len();
        let line = text.get(id..)?;
        let line = line.get(..=line.find('\n')?)?;
        if line.ends_with(RECORD) {
            return Some(id - 1);
        }
        from = id;
    }
}

/// What was read of a piece.
struct Piece {
    records: Vec<(Id, Arc<Record>)>,
    /// Where it ended.
    end: usize,
}

/// Reads the records of a piece: up to its end, or of the last up to the end of the map.
fn records(text: &str, piece: &Range<usize>) -> Result<Piece, GivesUp> {
    let mut reader = Text::from(text, piece.start);
    let mut records = Vec::new();
    while let at = reader.next_begins()?
        && at < piece.end
        && !reader.is_at_end_of_map()
    {
        let (id, mut record) = reader.entry::<Record>()?;
        record.give_back_room();
        records.push((id, Arc::new(record)));
    }
    let end = reader.next_begins()?;
    let as_it_should = if piece.end == usize::MAX { reader.is_at_end_of_map() } else { end == piece.end };
    if as_it_should { Ok(Piece { records, end }) } else { Err(GivesUp) }
}

#[cfg(test)]
mod tests;
