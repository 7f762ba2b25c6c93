//! What a file holds, as one number: enough to notice that something else changed it.

use std::array;
use std::fmt;

use crate::store::BY_HAND;

const START: u64 = 0xcbf2_9ce4_8422_2325;
const PRIME: u64 = 0x0000_0100_0000_01b3;

/// In pieces of which length a large file is stamped.
const PIECE: usize = 64 << 10;
/// How many pieces are stamped at a time: each step of one waits for the step before, and the processor has time for others meanwhile.
const AT_A_TIME: usize = 4;

/// What a file held when it was last read or written, to notice a change by somebody else.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stamp(u64);

/// FNV-1a for 64 bits (G. Fowler, L. C. Noll, K.-P. Vo), gone on with: a side file keeps the stamp between two runs, so it must not
/// change with the compiler, as the standard library's hasher may.
fn hashed(state: u64, bytes: &[u8]) -> u64 {
    bytes.iter().fold(state, |state, byte| (state ^ u64::from(*byte)).wrapping_mul(PRIME))
}

/// The hashes of four pieces of one length.
fn hashed_together(pieces: &[u8]) -> [u64; AT_A_TIME] {
    let mut each = pieces.chunks(PIECE);
    let [one, two, three, four] = array::from_fn(|_| each.next().unwrap_or_default());
    let mut states = [START; AT_A_TIME];
    for (((one, two), three), four) in one.iter().zip(two).zip(three).zip(four) {
        let bytes = [one, two, three, four];
        states = array::from_fn(|at| match (states.get(at), bytes.get(at)) {
            (Some(state), Some(byte)) => (state ^ u64::from(**byte)).wrapping_mul(PRIME),
            _ => START,
        });
    }
    states
}

impl Stamp {
    /// What some bytes come to.
    pub(crate) fn of(bytes: &[u8]) -> Self {
        let mut stamping = Stamping::default();
        stamping.add(bytes);
        stamping.stamp()
    }

    /// Reads what [`fmt::Display`] wrote.
    pub(crate) fn parse(text: &str) -> Option<Self> {
        u64::from_str_radix(text, 16).ok().map(Self)
    }
}

impl fmt::Display for Stamp {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:016x}", self.0)
    }
}

/// A stamp in the making, of bytes as they come.
///
/// What is no larger than a person types has the plain hash of all bytes. Beyond that it is the hash over the hashes of its pieces, which
/// takes a quarter of the time.
pub(crate) struct Stamping {
    length: u64,
    /// Of the bytes so far, up to [`BY_HAND`] and one.
    plain: u64,
    /// Over the hashes of the pieces so far.
    of_pieces: u64,
    /// Bytes of pieces that are not whole yet.
    rest: Vec<u8>,
}

impl Default for Stamping {
    fn default() -> Self {
        Self { length: 0, plain: START, of_pieces: START, rest: Vec::new() }
    }
}

impl Stamping {
    /// How many bytes came.
    pub(crate) fn length(&self) -> u64 {
        self.length
    }

    /// Takes what comes next.
    pub(crate) fn add(&mut self, bytes: &[u8]) {
        if let Some(left) = BY_HAND.checked_sub(self.length) {
            let left = usize::try_from(left).unwrap_or(usize::MAX).min(bytes.len());
            self.plain = hashed(self.plain, bytes.get(..left).unwrap_or_default());
        }
        self.length += bytes.len() as u64;
        let mut bytes = bytes;
        if !self.rest.is_empty() {
            let missing = (AT_A_TIME * PIECE - self.rest.len()).min(bytes.len());
            let (first, behind) = bytes.split_at(missing);
            self.rest.extend_from_slice(first);
            bytes = behind;
            if self.rest.len() < AT_A_TIME * PIECE {
                return;
            }
            let whole = std::mem::take(&mut self.rest);
            self.add_together(&whole);
        }
        let mut whole = bytes.chunks_exact(AT_A_TIME * PIECE);
        for pieces in whole.by_ref() {
            self.add_together(pieces);
        }
        self.rest.extend_from_slice(whole.remainder());
    }

    fn add_together(&mut self, pieces: &[u8]) {
        for hash in hashed_together(pieces) {
            self.of_pieces = hashed(self.of_pieces, &hash.to_le_bytes());
        }
    }

    /// The stamp of all that came.
    pub(crate) fn stamp(&self) -> Stamp {
        if self.length <= BY_HAND {
            return Stamp(self.plain);
        }
        let rest = self.rest.chunks(PIECE).map(|piece| hashed(START, piece));
        Stamp(rest.fold(self.of_pieces, |state, hash| hashed(state, &hash.to_le_bytes())))
    }
}

#[cfg(test)]
mod tests {
    use super::{BY_HAND, PIECE, START, Stamp, Stamping, hashed};

    // The values that the authors of FNV-1a publish for these texts.
    #[test]
    fn stamps_are_the_published_hash() {
        for (text, hash) in [("", "cbf29ce484222325"), ("a", "af63dc4c8601ec8c"), ("foobar", "85944171f73967e8")] {
            let stamp = Stamp::of(text.as_bytes());
            assert_eq!(stamp.to_string(), hash);
            assert_eq!(Stamp::parse(hash), Some(stamp));
        }
    }

    /// However the bytes come, and held against the rule written out plainly.
    #[test]
    fn a_large_file_is_stamped_by_its_pieces() {
        let largest = usize::try_from(BY_HAND).unwrap();
        let bytes: Vec<u8> =
            (0..largest + 5 * PIECE + 77).map(|at| u8::try_from(at * 31 % 251).unwrap_or_default()).collect();
        for length in [largest, largest + 1, largest + 3 * PIECE, largest + 4 * PIECE, bytes.len()] {
            let bytes = &bytes[..length];
            let plainly = if length <= largest {
                hashed(START, bytes)
            } else {
                bytes.chunks(PIECE).fold(START, |state, piece| hashed(state, &hashed(START, piece).to_le_bytes()))
            };
            assert_eq!(Stamp::of(bytes), Stamp(plainly), "{length}");
            for size in [1_000, PIECE, 4 * PIECE + 3, 3 << 20] {
                let mut stamping = Stamping::default();
                bytes.chunks(size).for_each(|some| stamping.add(some));
                assert_eq!(
                    (stamping.stamp(), stamping.length()),
                    (Stamp(plainly), length as u64),
                    "{length} by {size}"
                );
            }
        }
        let mut other = bytes.clone();
        other[largest / 2] ^= 128;
        assert_ne!(Stamp::of(&bytes), Stamp::of(&other));
    }
}
