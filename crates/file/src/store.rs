//! Farms on disk: atomic save, a backup of the file before, and a side file for what is not saved yet.

use std::fs::{self, File};
use std::hash::{DefaultHasher, Hash, Hasher};
use std::io::{self, Read, Write};
use std::path::{Path, PathBuf};

use tankard_core::farm::Farm;
use thiserror::Error;

use crate::document::{ReadError, read, unchanged, write};

/// A farm file that is many times larger than any farm is something else.
const LARGEST: u64 = 256 << 20;

/// Why a farm could not be opened or saved.
#[derive(Debug, Error)]
pub enum StoreError {
    /// The disk said no.
    #[error("{doing} failed: {source}: {}", path.display())]
    Io {
        /// What was being done.
        doing: &'static str,
        /// What the system said.
        source: io::Error,
        /// Where.
        path: PathBuf,
    },
    /// The text is no farm.
    #[error("{source}: {}", path.display())]
    Read {
        /// Why.
        source: ReadError,
        /// Where.
        path: PathBuf,
    },
    /// The file is too large to be a farm.
    #[error("the file is larger than {} MB, so it is no farm file: {}", LARGEST >> 20, path.display())]
    TooLarge {
        /// Where.
        path: PathBuf,
    },
    /// Somebody else changed the file since it was opened.
    #[error("the file was changed by something else since it was opened; save under another name, or open it again: {}", path.display())]
    ChangedOnDisk {
        /// Where.
        path: PathBuf,
    },
    /// The document could not be written as text.
    #[error("the farm could not be written as text: {0}")]
    Write(#[from] ron::Error),
}

fn io_error<'a>(doing: &'static str, path: &'a Path) -> impl FnOnce(io::Error) -> StoreError + 'a {
    move |source| StoreError::Io { doing, source, path: path.to_owned() }
}

/// What a file held when it was last read or written, to notice a change by somebody else.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stamp(u64);

impl Stamp {
    fn of(bytes: &[u8]) -> Self {
        let mut hasher = DefaultHasher::new();
        bytes.hash(&mut hasher);
        Self(hasher.finish())
    }
}

fn bytes_of(path: &Path) -> Result<Vec<u8>, StoreError> {
    let file = File::open(path).map_err(io_error("opening", path))?;
    let mut bytes = Vec::new();
    file.take(LARGEST + 1).read_to_end(&mut bytes).map_err(io_error("reading", path))?;
    if bytes.len() as u64 > LARGEST {
        return Err(StoreError::TooLarge { path: path.to_owned() });
    }
    Ok(bytes)
}

/// Opens a farm.
///
/// # Errors
/// [`StoreError`], with the path last. The file is not touched.
pub fn open(path: &Path) -> Result<(Farm, Stamp), StoreError> {
    let bytes = bytes_of(path)?;
    let farm = read(&bytes).map_err(|source| StoreError::Read { source, path: path.to_owned() })?;
    Ok((farm, Stamp::of(&bytes)))
}

/// Saves a farm: into a new file in the same folder, flushed to disk, then put in the place of the old one, which is kept
/// beside it as a backup. A farm that says what the file says already leaves the file as it is, byte for byte.
///
/// `stamp` is what the file held when it was opened; `None` to write over whatever is there.
///
/// # Errors
/// [`StoreError::ChangedOnDisk`] where the stamp does not fit; [`StoreError::Io`] where the disk says no. In each case the
/// old file is still whole.
pub fn save(path: &Path, farm: &Farm, stamp: Option<Stamp>) -> Result<Stamp, StoreError> {
    let before = match bytes_of(path) {
        Ok(bytes) => Some(bytes),
        Err(StoreError::Io { source, .. }) if source.kind() == io::ErrorKind::NotFound => None,
        Err(error) => return Err(error),
    };
    if let (Some(stamp), Some(before)) = (stamp, &before)
        && Stamp::of(before) != stamp
    {
        return Err(StoreError::ChangedOnDisk { path: path.to_owned() });
    }
    if let Some(before) = &before
        && unchanged(before, farm)
    {
        return Ok(Stamp::of(before));
    }
    let text = write(farm)?;
    if let Some(before) = before {
        put(&backup(path), &before)?;
    }
    put(path, text.as_bytes())?;
    Ok(Stamp::of(text.as_bytes()))
}

/// Puts bytes in the place of a file, all or nothing.
///
/// # Errors
/// [`StoreError::Io`]; the old file is still whole.
pub fn put(path: &Path, bytes: &[u8]) -> Result<(), StoreError> {
    // A link is followed, so that the file it points to is replaced and not the link.
    let real = fs::canonicalize(path).unwrap_or_else(|_| path.to_owned());
    // A device or a folder is no place for a file, and must not be replaced by one.
    if fs::metadata(&real).is_ok_and(|data| !data.is_file()) {
        let source = io::Error::new(io::ErrorKind::InvalidInput, "it is no ordinary file");
        return Err(io_error("writing", path)(source));
    }
    let folder = match real.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder,
        _ => Path::new("."),
    };
    let mut builder = tempfile::Builder::new();
    builder.prefix(".tankard-").suffix(".part");
    // A temporary file is private by default; the farm keeps the rights it had.
    let rights = fs::metadata(&real).map(|data| data.permissions()).ok();
    let mut part = builder.tempfile_in(folder).map_err(io_error("making a new file", path))?;
    part.write_all(bytes).map_err(io_error("writing", path))?;
    match rights {
        Some(rights) => part.as_file().set_permissions(rights).map_err(io_error("setting the rights", path))?,
        None => ordinary_rights(part.as_file()).map_err(io_error("setting the rights", path))?,
    }
    part.as_file().sync_all().map_err(io_error("flushing to disk", path))?;
    part.persist(&real).map_err(|error| io_error("putting the new file in place", path)(error.error))?;
    // Without this the name may be lost in a power cut though the content is not; some systems cannot do it.
    if let Ok(folder) = File::open(folder) {
        let _ = folder.sync_all();
    }
    Ok(())
}

#[cfg(unix)]
fn ordinary_rights(file: &File) -> io::Result<()> {
    use std::os::unix::fs::PermissionsExt;
    file.set_permissions(fs::Permissions::from_mode(0o644))
}

#[cfg(not(unix))]
fn ordinary_rights(_: &File) -> io::Result<()> {
    Ok(())
}

/// Where the file before the last save is kept.
pub fn backup(path: &Path) -> PathBuf {
    with_ending(path, ".before")
}

/// Where what is not saved yet is kept.
pub fn side_file(path: &Path) -> PathBuf {
    with_ending(path, ".unsaved")
}

fn with_ending(path: &Path, ending: &str) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push(ending);
    PathBuf::from(name)
}

/// Keeps unsaved work in the side file.
///
/// # Errors
/// [`StoreError`] where the disk says no.
pub fn keep_unsaved(path: &Path, farm: &Farm) -> Result<(), StoreError> {
    let text = write(farm)?;
    put(&side_file(path), text.as_bytes())
}

/// Unsaved work of an earlier run, if there is any that reads and differs from the file.
pub fn unsaved(path: &Path, farm: &Farm) -> Option<Farm> {
    let (kept, _) = open(&side_file(path)).ok()?;
    (kept != *farm).then_some(kept)
}

/// Drops the side file.
pub fn drop_unsaved(path: &Path) {
    // Not being there is just as well.
    let _ = fs::remove_file(side_file(path));
}
