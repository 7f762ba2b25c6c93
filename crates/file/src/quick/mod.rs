//! The quick reader, and the quick writer (`write.rs`): farms as this program writes them, records in blocks beside one another.
//!
//! RON's own reader takes two thirds of the time it takes to open a large farm to go over blanks and words letter by letter. This one reads
//! what the program writes, however it is laid out and with comments, and nothing else: whatever it does not know makes it give up, and then
//! RON's own reader takes the whole text and is the only one that ever says what is wrong, and where.

mod blocks;
mod text;
mod write;

use std::io::{self, Read};
use std::num::NonZero;
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::sync::{Arc, Mutex, PoisonError};
use std::thread;

use serde::Deserialize;
use tankard_core::farm::{Farm, Id, Nouns, Record, text::sharing};
use tankard_core::progress::Tell;

use crate::stamp::Stamp;
use blocks::{Block, Blocks};
use text::{GivesUp, Text};

pub(crate) use write::write;

/// How much of a text is read at a time; below twice that threads are not worth their while.
const SIZE: usize = 1 << 20;
/// How many threads are of use at most.
const THREADS: usize = 8;

/// Reads a farm, told how many records are read; `None` where another reader must, or nobody waits for it any more.
pub(crate) fn read(text: &str, tell: &Tell<'_>) -> Option<Farm> {
    let quick =
        if text.len() < 2 * SIZE { None } else { in_blocks(text.as_bytes(), SIZE, tell).ok().map(|(farm, _)| farm) };
    quick.or_else(|| tell(0, None).ok().and_then(|()| whole(text)))
}

/// Reads a farm from a file as it comes, so that its text is never in memory as a whole. With it the stamp and the length of what was read.
///
/// # Errors
/// What the disk says; that it is not read this way, with nothing said, is [`None`].
pub(crate) fn read_from(file: impl Read + Send, tell: &Tell<'_>) -> io::Result<Option<(Farm, Stamp, u64)>> {
    match in_blocks(file, SIZE, tell) {
        Ok((farm, (stamp, length))) => Ok(Some((farm, stamp, length))),
        Err(Ends::GivesUp) => Ok(None),
        Err(Ends::Disk(error)) => Err(error),
    }
}

/// Reads it from its beginning to its end.
fn whole(text: &str) -> Option<Farm> {
    let mut reader = Text::new(text);
    let farm = sharing(|| Farm::deserialize(&mut reader)).ok()?;
    reader.ends().ok()?;
    Some(farm)
}

/// Why a farm is not read in blocks.
enum Ends {
    GivesUp,
    Disk(io::Error),
}

impl From<GivesUp> for Ends {
    fn from(_: GivesUp) -> Self {
        Self::GivesUp
    }
}

impl From<io::Error> for Ends {
    fn from(error: io::Error) -> Self {
        Self::Disk(error)
    }
}

/// Reads the records in blocks of about a size, several at a time, and then all else around them.
///
/// Where a block begins is guessed by what stands there, which may just as well stand in a note. That does no harm: each block must hold whole
/// records to its end, and the first must begin where the farm's records do, so that what is read is what would be read in one go.
fn in_blocks(source: impl Read + Send, size: usize, tell: &Tell<'_>) -> Result<(Farm, (Stamp, u64)), Ends> {
    let mut blocks = Blocks::new(source, size);
    let head = blocks.head()?.ok_or(Ends::GivesUp)?;
    let blocks = Mutex::new(blocks);
    let (count, is_over) = (AtomicUsize::new(0), AtomicBool::new(false));
    let next = || {
        let is_wanted = !is_over.load(Ordering::Relaxed) && tell(count.load(Ordering::Relaxed), None).is_ok();
        if is_wanted { blocks.lock().unwrap_or_else(PoisonError::into_inner).next() } else { Ok(None) }
    };
    let work = || {
        let mut done = Vec::new();
        while let Some(block) = next()? {
            let read = records(&block);
            is_over.fetch_or(read.is_err(), Ordering::Relaxed);
            let read = read?;
            count.fetch_add(read.records.len(), Ordering::Relaxed);
            done.push(read);
        }
        Ok::<_, Ends>(done)
    };
    let threads = thread::available_parallelism().map_or(1, NonZero::get).min(THREADS);
    let mut read = thread::scope(|scope| {
        let others: Vec<_> = (1..threads).map(|_| scope.spawn(|| sharing(work))).collect();
        let mut all = sharing(work)?;
        for other in others {
            all.extend(other.join().map_err(|_| Ends::GivesUp)??);
        }
        Ok::<_, Ends>(all)
    })?;
    read.sort_unstable_by_key(|piece| piece.number);
    // Where nobody waits for it any more, some are missing.
    let tail = read.last_mut().and_then(|last| last.tail.take()).ok_or(Ends::GivesUp)?;
    let mut records: Nouns<Record> = Nouns::new();
    for (id, record) in read.into_iter().flat_map(|piece| piece.records) {
        if records.insert_shared(id, record).is_some() {
            return Err(Ends::GivesUp);
        }
    }
    let farm = around(head, &tail, records)?;
    let blocks = blocks.into_inner().unwrap_or_else(PoisonError::into_inner);
    Ok((farm, blocks.stamp()))
}

/// Reads what stands around the records.
fn around(head: Vec<u8>, tail: &str, records: Nouns<Record>) -> Result<Farm, GivesUp> {
    let head = String::from_utf8(head).map_err(|_| GivesUp)?;
    let text = [head.strip_prefix('\u{feff}').unwrap_or(&head), tail].concat();
    let inside = text.len() - tail.len();
    let mut reader = Text::new(&text);
    reader.leave_out("Farm", "records", inside);
    let farm = Farm::deserialize(&mut reader)?;
    reader.ends()?;
    // It must have been the farm's records that stood there, or they would come twice.
    if reader.has_left_out() && farm.records.is_empty() { Ok(Farm { records, ..farm }) } else { Err(GivesUp) }
}

/// What was read of a block.
struct Piece {
    number: usize,
    records: Vec<(Id, Arc<Record>)>,
    /// What follows the records, where they end in it.
    tail: Option<String>,
}

/// Reads the records of a block: all of it, or of the last up to the end of the map.
fn records(block: &Block) -> Result<Piece, GivesUp> {
    let text = std::str::from_utf8(&block.bytes).map_err(|_| GivesUp)?;
    let mut reader = Text::new(text);
    let mut records = Vec::new();
    let end = loop {
        let at = reader.next_begins()?;
        if at == text.len() || reader.is_at_end_of_map() {
            break at;
        }
        let (id, mut record) = reader.entry::<Record>()?;
        record.give_back_room();
        records.push((id, Arc::new(record)));
    };
    let tail = text.get(end..).filter(|tail| !tail.is_empty());
    // Only in the last block do the records end before it does.
    if tail.is_some() == block.is_last {
        Ok(Piece { number: block.number, records, tail: tail.map(str::to_owned) })
    } else {
        Err(GivesUp)
    }
}

#[cfg(test)]
mod tests;
