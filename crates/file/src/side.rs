//! The side file: work that is not saved yet, kept for the next start. Its first line says which state of the farm file the
//! work began from; to RON it is a comment.

use std::fs;
use std::path::{Path, PathBuf};

use tankard_core::farm::Farm;

use crate::document::{read, write};
use crate::store::{Stamp, StoreError, bytes_of, put, with_ending};

/// What stands before the stamp in the first line.
const BEGUN_FROM: &str = "// begun from ";

/// Unsaved work of an earlier run.
#[derive(Clone, Debug, PartialEq)]
pub struct Kept {
    /// The work.
    pub farm: Farm,
    /// The state of the farm file it began from; none where it was never a file, or where nobody wrote that down.
    pub begun_from: Option<Stamp>,
}

/// The side file of a farm file.
pub fn beside(path: &Path) -> PathBuf {
    with_ending(path, ".unsaved")
}

/// Keeps unsaved work in a side file.
///
/// # Errors
/// [`StoreError`] where the disk says no.
pub fn keep(side: &Path, farm: &Farm, begun_from: Option<Stamp>) -> Result<(), StoreError> {
    let head = begun_from.map(|stamp| format!("{BEGUN_FROM}{stamp}\n")).unwrap_or_default();
    put(side, format!("{head}{}", write(farm)?).as_bytes())
}

/// The work kept in a side file, if there is any that reads.
pub fn find(side: &Path) -> Option<Kept> {
    let bytes = bytes_of(side).ok()?;
    let farm = read(&bytes).ok()?;
    let first = std::str::from_utf8(&bytes).ok()?.lines().next()?;
    Some(Kept { farm, begun_from: first.strip_prefix(BEGUN_FROM).and_then(Stamp::parse) })
}

/// Drops a side file.
pub fn drop(side: &Path) {
    // Not being there is just as well; what cannot be dropped is offered again, and can be dropped then.
    let _ = fs::remove_file(side);
}
