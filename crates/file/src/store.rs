//! Farms on disk: atomic save and a backup of the file before; and reports, which never take the place of something else.

use std::fmt;
use std::fs::{self, File};
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
    /// A report would take the place of something else.
    #[error("there is a file of this name already that is {found}, so it is left alone; choose another name: {}", path.display())]
    OtherKind {
        /// What it is, or is not, in words.
        found: &'static str,
        /// Where.
        path: PathBuf,
    },
    /// The document could not be written as text.
    #[error("the farm could not be written as text: {0}")]
    Write(#[from] ron::Error),
}

pub(crate) fn io_error<'a>(doing: &'static str, path: &'a Path) -> impl FnOnce(io::Error) -> StoreError + 'a {
    move |source| StoreError::Io { doing, source, path: path.to_owned() }
}

/// What a file held when it was last read or written, to notice a change by somebody else.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stamp(u64);

impl Stamp {
    /// FNV-1a for 64 bits (G. Fowler, L. C. Noll, K.-P. Vo): a side file keeps the stamp between two runs, so it must not
    /// change with the compiler, as the standard library's hasher may.
    pub(crate) fn of(bytes: &[u8]) -> Self {
        Self(
            bytes.iter().fold(0xcbf2_9ce4_8422_2325, |state, byte| {
                (state ^ u64::from(*byte)).wrapping_mul(0x0000_0100_0000_01b3)
            }),
        )
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

pub(crate) fn bytes_of(path: &Path) -> Result<Vec<u8>, StoreError> {
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
    let real = behind_links(path).map_err(io_error("following the link", path))?;
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

/// The file that a link points to, so that it is replaced and not the link; also where it does not exist yet.
fn behind_links(path: &Path) -> io::Result<PathBuf> {
    if let Ok(real) = fs::canonicalize(path) {
        return Ok(real);
    }
    let mut real = path.to_owned();
    // As many links in a row as systems follow.
    for _ in 0..40 {
        let Ok(target) = fs::read_link(&real) else { return Ok(real) };
        real = real.parent().unwrap_or(Path::new("")).join(target);
    }
    Err(io::Error::other("it leads round in a circle"))
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

pub(crate) fn with_ending(path: &Path, ending: &str) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push(ending);
    PathBuf::from(name)
}

/// What a report is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Report {
    /// Load cards.
    Pdf,
    /// Records.
    Csv,
    /// Records for machines.
    Json,
}

/// As [`put`], for a report: an earlier report is replaced, a file of another kind is not.
///
/// # Errors
/// [`StoreError::OtherKind`] where something else stands there; [`StoreError::Io`]. In each case the old file is whole.
pub fn put_report(path: &Path, bytes: &[u8], report: Report) -> Result<(), StoreError> {
    if path.is_file() {
        let mut head = Vec::new();
        let file = File::open(path).map_err(io_error("looking at the file there", path))?;
        file.take(HEAD).read_to_end(&mut head).map_err(io_error("looking at the file there", path))?;
        let is_pdf = head.starts_with(b"%PDF");
        let found = match report {
            _ if head.is_empty() => None,
            _ if is_farm(&head) => Some("a farm"),
            Report::Pdf if !is_pdf => Some("no PDF"),
            Report::Csv | Report::Json if is_pdf => Some("a PDF"),
            Report::Pdf | Report::Csv | Report::Json => None,
        };
        if let Some(found) = found {
            return Err(StoreError::OtherKind { found, path: path.to_owned() });
        }
    }
    put(path, bytes)
}

/// How much of a file is read to see what it is.
const HEAD: u64 = 1 << 20;

/// Whether a text begins like a farm, after comments and settings of RON; also where it was broken by hand further down.
fn is_farm(head: &[u8]) -> bool {
    let text = String::from_utf8_lossy(head);
    let mut rest = text.trim_start_matches('\u{feff}').trim_start();
    loop {
        let end = match rest {
            _ if rest.starts_with("//") => "\n",
            _ if rest.starts_with("/*") => "*/",
            _ if rest.starts_with("#!") => "]",
            _ => break,
        };
        let Some((_, after)) = rest.split_once(end) else { return false };
        rest = after.trim_start();
    }
    rest.strip_prefix("Farm").unwrap_or(rest).trim_start().starts_with('(')
}

#[cfg(test)]
mod tests {
    use super::Stamp;

    // The values that the authors of FNV-1a publish for these texts.
    #[test]
    fn stamps_are_the_published_hash() {
        for (text, hash) in [("", "cbf29ce484222325"), ("a", "af63dc4c8601ec8c"), ("foobar", "85944171f73967e8")] {
            let stamp = Stamp::of(text.as_bytes());
            assert_eq!(stamp.to_string(), hash);
            assert_eq!(Stamp::parse(hash), Some(stamp));
        }
    }
}
