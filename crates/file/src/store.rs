//! Farms on disk: opening and saving; and reports, which never take the place of something else.

use std::fs::File;
use std::io::{self, Read};
use std::path::{Path, PathBuf};

use tankard_core::farm::{FORMAT, Farm};
use tankard_core::progress::{Cancelled, Tell, untold};
use tankard_core::t;
use thiserror::Error;

use crate::backups::Backups;
use crate::document::{ReadError, read_told, says_the_same, write};
use crate::doing::Doing;
use crate::put::{Content, Step, Target, Watch, put_watched};
use crate::quick;
use crate::side::saving_in_spare;
use crate::stamp::Stamping;

pub use crate::stamp::Stamp;

/// A farm file that is many times larger than any farm is something else.
const LARGEST: u64 = 1 << 30;

/// A file that is larger was hardly typed in by hand.
pub(crate) const BY_HAND: u64 = 4 << 20;

/// Why a farm could not be opened or saved.
#[derive(Debug, Error)]
pub enum StoreError {
    /// The disk said no.
    #[error("{}", .doing.failed(.source, .path))]
    Io {
        /// What was being done.
        doing: Doing,
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
    #[error("{}", t!("file-larger-than-a-farm", mb = LARGEST >> 20, path = .path.display()))]
    TooLarge {
        /// Where.
        path: PathBuf,
    },
    /// Somebody else changed the file since it was opened.
    #[error("{}", t!("file-changed-by-something-else", path = .path.display()))]
    ChangedOnDisk {
        /// Where.
        path: PathBuf,
    },
    /// The file is marked as not to be written.
    #[error("{}", t!("file-marked-read-only", path = .path.display()))]
    ReadOnly {
        /// Where.
        path: PathBuf,
    },
    /// The file had to be written in place and that failed halfway.
    #[error("{}", t!("file-could-not-be-replaced", source = .source, copy = .copy.display(), path = .path.display()))]
    Broken {
        /// What the system said.
        source: io::Error,
        /// Where the whole of it is.
        copy: PathBuf,
        /// Where.
        path: PathBuf,
    },
    /// The farm has grown beyond what is opened.
    #[error("{}", t!("file-farm-has-grown", mb = LARGEST >> 20, path = .path.display()))]
    Grown {
        /// Where.
        path: PathBuf,
    },
    /// The file is not there any more.
    #[error("{}", t!("file-not-there-any-more", path = .path.display()))]
    Gone {
        /// Where.
        path: PathBuf,
    },
    /// A report would take the place of something else.
    #[error("{}", .found.left_alone(.path))]
    OtherKind {
        /// What it is.
        found: OtherKind,
        /// Where.
        path: PathBuf,
    },
    /// Nobody waited for it any more.
    #[error(transparent)]
    Cancelled(#[from] Cancelled),
    /// The document could not be written as text.
    #[error("{}", t!("file-the-farm-could-not-be-written", it = .0))]
    Write(#[from] ron::Error),
}

/// What stands where a report would be written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OtherKind {
    /// A link to another place.
    Link,
    /// A farm.
    Farm,
    /// Something else than a PDF, where one would be written.
    NotPdf,
    /// A PDF, where something else would be written.
    Pdf,
}

impl OtherKind {
    fn left_alone(self, path: &Path) -> String {
        let path = path.display();
        match self {
            Self::Link => t!("file-there-is-a-link", path = path),
            Self::Farm => t!("file-there-is-a-farm", path = path),
            Self::NotPdf => t!("file-there-is-no-pdf", path = path),
            Self::Pdf => t!("file-there-is-a-pdf", path = path),
        }
    }
}

pub(crate) fn io_error(doing: Doing, path: &Path) -> impl FnOnce(io::Error) -> StoreError + '_ {
    move |source| StoreError::Io { doing, source, path: path.to_owned() }
}

/// What a file holds, by its bytes.
pub fn stamp(bytes: &[u8]) -> Stamp {
    Stamp::of(bytes)
}

/// What a file holds now, whether it reads as a farm or not.
///
/// # Errors
/// [`StoreError`] where it cannot be read at all.
pub fn stamp_of(path: &Path) -> Result<Stamp, StoreError> {
    let mut file = File::open(path).map_err(io_error(Doing::Opening, path))?.take(LARGEST + 1);
    let (mut stamping, mut some) = (Stamping::default(), Vec::new());
    while file.by_ref().take(1 << 20).read_to_end(&mut some).map_err(io_error(Doing::Reading, path))? > 0 {
        stamping.add(&some);
        some.clear();
    }
    if stamping.length() > LARGEST {
        return Err(StoreError::TooLarge { path: path.to_owned() });
    }
    Ok(stamping.stamp())
}

pub(crate) fn bytes_of(path: &Path) -> Result<Vec<u8>, StoreError> {
    let file = File::open(path).map_err(io_error(Doing::Opening, path))?;
    let mut bytes = Vec::new();
    file.take(LARGEST + 1).read_to_end(&mut bytes).map_err(io_error(Doing::Reading, path))?;
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
    open_told(path, &untold)
}

/// The same, told how many of the farm's entries are read.
///
/// # Errors
/// As [`open`], and where it is ended.
pub fn open_told(path: &Path, tell: &Tell<'_>) -> Result<(Farm, Stamp), StoreError> {
    let file = File::open(path).map_err(io_error(Doing::Opening, path))?;
    if file.metadata().is_ok_and(|data| data.len() > BY_HAND) {
        let quick = quick::read_from(file.take(LARGEST + 1), tell).map_err(io_error(Doing::Reading, path))?;
        if let Some((farm, stamp, _)) = quick.filter(|(farm, _, length)| farm.format == FORMAT && *length <= LARGEST) {
            return Ok((farm, stamp));
        }
        tell(0, None)?;
    }
    let bytes = bytes_of(path)?;
    let farm = read_told(&bytes, tell).map_err(|source| StoreError::Read { source, path: path.to_owned() })?;
    Ok((farm, Stamp::of(&bytes)))
}

/// Saves a farm without a backup of what stood there, as for a file that is new.
///
/// # Errors
/// As [`Save::run`].
pub fn save(path: &Path, farm: &Farm, stamp: Option<Stamp>) -> Result<Stamp, StoreError> {
    Save { path, farm, stamp, backups: None }.run().map(|saved| saved.stamp)
}

/// A save: into a new file in the same folder, flushed to disk, then put in the place of the old one, of which a backup is
/// flushed before. A farm that says what the file says already leaves the file as it is, byte for byte.
#[derive(Clone, Copy, Debug)]
pub struct Save<'a> {
    /// Where to.
    pub path: &'a Path,
    /// What.
    pub farm: &'a Farm,
    /// What the file held when it was opened; `None` to write over whatever is there.
    pub stamp: Option<Stamp>,
    /// How what stood there is kept; `None` for not at all.
    pub backups: Option<&'a Backups>,
}

/// A save that is confirmed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Saved {
    /// What the file holds now.
    pub stamp: Stamp,
    /// Where what stood there before is kept.
    pub backup: Option<PathBuf>,
    /// Why what stood there before could not be kept, though the farm is saved.
    pub remark: Option<String>,
}

impl Save<'_> {
    /// Saves.
    ///
    /// # Errors
    /// [`StoreError::ChangedOnDisk`] and [`StoreError::Gone`] where the stamp does not fit; [`StoreError::Io`] where the disk says no. In each case
    /// one whole copy is left at least: the old file, or where that had to be written in place, what is named.
    pub fn run(&self) -> Result<Saved, StoreError> {
        self.run_watched(&mut |_| Ok(()))
    }

    /// Saves, with each step told before it is done; a watch that gives an error makes that step fail.
    ///
    /// # Errors
    /// As [`Save::run`].
    pub fn run_watched(&self, watch: &mut Watch<'_>) -> Result<Saved, StoreError> {
        let path = self.path;
        let standing = match stamp_of(path) {
            Ok(stamp) => Some(stamp),
            Err(StoreError::Io { source, .. }) if source.kind() == io::ErrorKind::NotFound => None,
            Err(error) => return Err(error),
        };
        match (self.stamp, standing) {
            (Some(stamp), Some(standing)) if standing != stamp => {
                return Err(StoreError::ChangedOnDisk { path: path.to_owned() });
            }
            // Where a stick was, an empty folder may be left, and what is saved there is hidden when the stick is back.
            (Some(_), None) => return Err(StoreError::Gone { path: path.to_owned() }),
            _ => {}
        }
        let text = write(self.farm)?;
        if text.len() as u64 > LARGEST {
            return Err(StoreError::Grown { path: path.to_owned() });
        }
        if let Some(stamp) = standing
            && says_the_same(path, &text).map_err(io_error(Doing::Reading, path))?
        {
            return Ok(Saved { stamp, backup: None, remark: None });
        }
        let target = Target::of(path)?;
        let kept = self.backups.filter(|_| standing.is_some()).map(|backups| backups.keep(path, watch));
        let spare = self.backups.and_then(|backups| Some(saving_in_spare(path, backups.spare.as_ref()?)));
        target.put(Content::Bytes(text.as_bytes()), spare.as_deref(), watch)?;
        let (backup, remark) = match kept {
            Some(Ok(backup)) => (Some(backup), None),
            Some(Err(error)) => (None, Some(error.to_string())),
            None => (None, None),
        };
        Ok(Saved { stamp: Stamp::of(text.as_bytes()), backup, remark })
    }
}

/// A file beside another, called after it.
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

/// As [`put`](crate::put::put), for a report: an earlier report is replaced, a file of another kind is not, and no link is followed.
///
/// # Errors
/// [`StoreError::OtherKind`] where something else stands there; [`StoreError::Io`]. In each case the old file is whole.
pub fn put_report(path: &Path, bytes: &[u8], report: Report) -> Result<(), StoreError> {
    put_report_told(path, bytes, report, &untold)
}

/// The same, which asks whether it is to go on until the whole of it stands beside the file, and leaves nothing where it is ended. It tells
/// no numbers.
///
/// # Errors
/// As [`put_report`], and [`StoreError::Cancelled`].
pub fn put_report_told(path: &Path, bytes: &[u8], report: Report, tell: &Tell<'_>) -> Result<(), StoreError> {
    // Whoever made the link decided what would be written over, not the one who chose the name.
    if path.is_symlink() {
        return Err(StoreError::OtherKind { found: OtherKind::Link, path: path.to_owned() });
    }
    if path.is_file() {
        let mut head = Vec::new();
        let file = File::open(path).map_err(io_error(Doing::Looking, path))?;
        file.take(HEAD).read_to_end(&mut head).map_err(io_error(Doing::Looking, path))?;
        let is_pdf = head.starts_with(b"%PDF");
        let found = match report {
            _ if head.is_empty() => None,
            _ if is_farm(&head) => Some(OtherKind::Farm),
            Report::Pdf if !is_pdf => Some(OtherKind::NotPdf),
            Report::Csv | Report::Json if is_pdf => Some(OtherKind::Pdf),
            Report::Pdf | Report::Csv | Report::Json => None,
        };
        if let Some(found) = found {
            return Err(StoreError::OtherKind { found, path: path.to_owned() });
        }
    }
    // From the moment at which it takes the place of the old file it is no longer ended.
    let mut watch = |step| match step {
        Step::Make | Step::Write(_) | Step::Rights | Step::Flush => tell(0, None).map_err(io::Error::other),
        _ => Ok(()),
    };
    put_watched(path, Content::Bytes(bytes), &mut watch).map_err(|error| match error {
        StoreError::Io { source, .. } if is_cancelled(&source) => StoreError::Cancelled(Cancelled),
        error => error,
    })
}

fn is_cancelled(error: &io::Error) -> bool {
    matches!(error.get_ref(), Some(inner) if inner.is::<Cancelled>())
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
