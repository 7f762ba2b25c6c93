//! The side file: work that is not saved yet, kept for the next start. Its first lines say which state of which farm file the
//! work began from and when it was kept; to RON they are comments. Each run that ends without an answer leaves one of its own.

use std::fs;
use std::path::{Path, PathBuf};

use jiff::civil::DateTime;
use tankard_core::farm::Farm;

use crate::document::{read, write};
use crate::doing::Doing;
use crate::put::{put_own, saving};
use crate::store::{Stamp, StoreError, bytes_of, io_error, with_ending};

/// What stands before each fact at the head.
const BEGUN_FROM: &str = "// begun from ";
const KEPT_AT: &str = "// kept ";

/// How many runs can leave work behind before the last of them is written over.
const RUNS: u32 = 20;

/// What is said of unsaved work at its head.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Head {
    /// The state of the farm file it began from; none where it was never a file, or where nobody wrote that down.
    pub begun_from: Option<Stamp>,
    /// When it was kept, by the farm's clock.
    pub at: Option<DateTime>,
}

/// Unsaved work of an earlier run.
#[derive(Clone, Debug, PartialEq)]
pub struct Kept {
    /// The work.
    pub farm: Farm,
    /// What is said of it.
    pub head: Head,
    /// Where it is.
    pub path: PathBuf,
}

/// The side file of a farm file.
pub fn beside(path: &Path) -> PathBuf {
    with_ending(path, ".unsaved")
}

/// The side file of a farm file inside a spare folder, where none can be written beside it.
pub fn in_spare(path: &Path, spare: &Path) -> PathBuf {
    with_ending(&named_in_spare(path, spare), ".unsaved")
}

/// The whole copy of a farm file inside a spare folder, while it is written in place.
pub(crate) fn saving_in_spare(path: &Path, spare: &Path) -> PathBuf {
    saving(&named_in_spare(path, spare))
}

/// Farms of one name in several folders are kept apart.
fn named_in_spare(path: &Path, spare: &Path) -> PathBuf {
    let real = fs::canonicalize(path).unwrap_or_else(|_| path.to_owned());
    let place = Stamp::of(real.as_os_str().as_encoded_bytes());
    let name = path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
    spare.join("unsaved").join(format!("{place} {name}"))
}

/// The side files by number: "farm.ron.unsaved", "farm.ron.unsaved-2" and so on.
fn numbered(first: &Path) -> impl Iterator<Item = PathBuf> {
    let first = first.to_owned();
    (1..=RUNS).map(move |run| if run == 1 { first.clone() } else { with_ending(&first, &format!("-{run}")) })
}

/// The first side file that no run before has left work in.
pub fn free(first: &Path) -> PathBuf {
    numbered(first).find(|side| !side.exists()).or_else(|| numbered(first).last()).unwrap_or_else(|| first.to_owned())
}

/// Whether any run before has left work in a side file.
pub fn is_any(first: &Path) -> bool {
    numbered(first).any(|side| side.exists())
}

/// Keeps unsaved work in a side file.
///
/// # Errors
/// [`StoreError`] where the disk says no.
pub fn keep(side: &Path, farm: &Farm, head: Head) -> Result<(), StoreError> {
    let begun = head.begun_from.map(|stamp| format!("{BEGUN_FROM}{stamp}\n")).unwrap_or_default();
    let at = head.at.map(|at| format!("{KEPT_AT}{at}\n")).unwrap_or_default();
    if let Some(folder) = side.parent().filter(|folder| !folder.as_os_str().is_empty()) {
        fs::create_dir_all(folder).map_err(io_error(Doing::MakingSideFolder, folder))?;
    }
    put_own(side, format!("{begun}{at}{}", write(farm)?).as_bytes())
}

/// The work kept in a side file, if there is any that reads.
pub fn find(side: &Path) -> Option<Kept> {
    let bytes = bytes_of(side).ok()?;
    let farm = read(&bytes).ok()?;
    let mut head = Head::default();
    for line in std::str::from_utf8(&bytes).ok()?.lines().take_while(|line| line.starts_with("//")) {
        if let Some(stamp) = line.strip_prefix(BEGUN_FROM) {
            head.begun_from = Stamp::parse(stamp);
        } else if let Some(at) = line.strip_prefix(KEPT_AT) {
            head.at = at.parse().ok();
        }
    }
    Some(Kept { farm, head, path: side.to_owned() })
}

/// All work that earlier runs left for a side file, the latest first.
pub fn find_all(first: &Path) -> Vec<Kept> {
    let mut found: Vec<Kept> = numbered(first).filter_map(|side| find(&side)).collect();
    // One without a moment may be of any, and is looked at last.
    found.sort_by_key(|kept| std::cmp::Reverse(kept.head.at));
    found
}

/// The whole copy that was left where a farm file was being written in place when the save was ended.
pub fn half_saved(path: &Path, spare: Option<&Path>) -> Option<Kept> {
    find(&saving(path)).or_else(|| find(&saving_in_spare(path, spare?)))
}

/// Whether a copy was left where a farm file was being written in place.
pub fn is_half_saved(path: &Path, spare: Option<&Path>) -> bool {
    saving(path).exists() || spare.is_some_and(|spare| saving_in_spare(path, spare).exists())
}

/// Drops a side file.
pub fn drop(side: &Path) {
    // Not being there is just as well; what cannot be dropped is offered again, and can be dropped then.
    let _ = fs::remove_file(side);
}
