//! How much of a file is read, so that no file takes all memory or all day.

use std::cell::Cell;

use tankard_core::t;

use super::GroundError;

/// No file is read that is larger, as it is or unpacked.
pub const LARGEST: u64 = 64 << 20;
/// So many points are read.
pub(super) const POINTS: usize = 1_000_000;
/// So many pieces are read.
pub(super) const PIECES: usize = 20_000;
/// So deep may elements stand within each other.
pub(super) const DEPTH: usize = 64;
/// So many names and values of a piece are kept.
pub(super) const FACTS: usize = 256;
/// So many letters of a name or a value are kept.
const LETTERS: usize = 500;

/// What may still be read.
pub(super) struct Left {
    points: Cell<usize>,
    pieces: Cell<usize>,
}

impl Left {
    pub(super) fn new() -> Self {
        Self { points: Cell::new(POINTS), pieces: Cell::new(PIECES) }
    }

    /// # Errors
    /// There are too many.
    pub(super) fn points(&self, many: usize) -> Result<(), GroundError> {
        take(&self.points, many).ok_or(GroundError::TooMany { most: POINTS, of: t!("file-points") })
    }

    /// # Errors
    /// There are too many.
    pub(super) fn piece(&self) -> Result<(), GroundError> {
        take(&self.pieces, 1).ok_or(GroundError::TooMany { most: PIECES, of: t!("file-pieces-of-ground") })
    }
}

fn take(left: &Cell<usize>, many: usize) -> Option<()> {
    left.set(left.get().checked_sub(many)?);
    Some(())
}

/// A name or value on one line, without what no screen can show, and cut where it is endless.
pub(super) fn tidy(text: &str) -> String {
    let shown = |letter: char| if letter.is_control() { ' ' } else { letter };
    let text: String = text.trim().chars().take(LETTERS).map(shown).collect();
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}
