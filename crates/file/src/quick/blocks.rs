//! A farm's text as it comes from a file, cut where a record seems to begin, so that no more of it is in memory than is being read.

use std::io::{self, Read};

use crate::stamp::{Stamp, Stamping};

/// What stands before the first record, where the program wrote it.
const BEFORE: &[u8] = b"\n    records: {";
/// What stands between two records, up to the id of the second.
const BETWEEN: &[u8] = b"),\n        \"";
/// What then follows the id.
const RECORD: &[u8] = b"\": Record(";
/// How many bytes of the beginning of a record are looked at for that.
const LINE: usize = 1 << 10;

/// The text of a farm in blocks.
pub(super) struct Blocks<R> {
    source: R,
    stamping: Stamping,
    /// What was read and is not handed out.
    buffer: Vec<u8>,
    has_ended: bool,
    /// About how large a block is.
    size: usize,
    given: usize,
}

/// A block that was handed out.
pub(super) struct Block {
    pub(super) bytes: Vec<u8>,
    /// Which it is, from 0.
    pub(super) number: usize,
    /// Whether what follows the records stands in it, too.
    pub(super) is_last: bool,
}

impl<R: Read> Blocks<R> {
    pub(super) fn new(source: R, size: usize) -> Self {
        Self { source, stamping: Stamping::default(), buffer: Vec::new(), has_ended: false, size, given: 0 }
    }

    /// The stamp of what was read, and how many bytes that is.
    pub(super) fn stamp(&self) -> (Stamp, u64) {
        (self.stamping.stamp(), self.stamping.length())
    }

    /// Reads on until there are so many bytes, or no more.
    fn fill(&mut self, least: usize) -> io::Result<()> {
        while !self.has_ended && self.buffer.len() < least {
            let before = self.buffer.len();
            let wanted = (least - before).max(self.size);
            let read = self.source.by_ref().take(wanted as u64).read_to_end(&mut self.buffer)?;
            self.stamping.add(self.buffer.get(before..).unwrap_or_default());
            self.has_ended = read < wanted;
        }
        Ok(())
    }

    /// All up to the first record; `None` where nothing looks like it.
    pub(super) fn head(&mut self) -> io::Result<Option<Vec<u8>>> {
        let mut from = 0;
        loop {
            if let Some(at) = find(&self.buffer, from, BEFORE) {
                return Ok(Some(self.hand_out(at + BEFORE.len())));
            }
            if self.has_ended {
                return Ok(None);
            }
            from = (self.buffer.len() + 1).saturating_sub(BEFORE.len());
            self.fill(self.buffer.len() + 1)?;
        }
    }

    /// The next records, up to where one more seems to begin; `None` after the last.
    pub(super) fn next(&mut self) -> io::Result<Option<Block>> {
        let mut from = self.size;
        let end = loop {
            self.fill(from + LINE)?;
            if let Some(border) = border(&self.buffer, from) {
                break Some(border);
            }
            if self.has_ended {
                break None;
            }
            from = from.max(self.buffer.len().saturating_sub(LINE));
            self.fill(self.buffer.len() + 1)?;
        };
        if end.is_none() && self.buffer.is_empty() {
            return Ok(None);
        }
        let bytes = self.hand_out(end.unwrap_or(self.buffer.len()));
        self.given += 1;
        Ok(Some(Block { bytes, number: self.given - 1, is_last: end.is_none() }))
    }

    fn hand_out(&mut self, end: usize) -> Vec<u8> {
        let rest = self.buffer.split_off(end.min(self.buffer.len()));
        std::mem::replace(&mut self.buffer, rest)
    }
}

/// The next place, from one on, at which a record seems to begin. It may just as well stand in a note.
fn border(bytes: &[u8], from: usize) -> Option<usize> {
    let mut from = from;
    loop {
        let id = find(bytes, from, BETWEEN)? + BETWEEN.len();
        let rest = bytes.get(id..)?;
        let length = rest.iter().take(LINE).position(|byte| matches!(byte, b'"' | b'\n' | b'\\'));
        if length.and_then(|length| rest.get(length..)).is_some_and(|behind| behind.starts_with(RECORD)) {
            return Some(id - 1);
        }
        from = id;
    }
}

/// Where something stands, from a place on.
fn find(bytes: &[u8], from: usize, what: &[u8]) -> Option<usize> {
    bytes.get(from..)?.windows(what.len()).position(|some| some == what).map(|at| from + at)
}
