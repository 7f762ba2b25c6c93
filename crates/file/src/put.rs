//! Putting bytes in the place of a file so that at each moment one whole copy is on disk: a new file is written and flushed,
//! then renamed over the old one. Where that cannot be done, a whole copy is flushed elsewhere before the file is written in
//! place.

use std::fs::{self, File, OpenOptions};
use std::io::{self, Read, Write};
use std::path::{Path, PathBuf};
use std::time::Duration;

use tankard_core::t;
use tempfile::NamedTempFile;

use crate::doing::Doing;
use crate::store::{StoreError, io_error, with_ending};

/// A step of saving, told before it is done.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Step {
    /// A folder for backups is made.
    Folder,
    /// A new file is made.
    Make,
    /// Bytes are written, after so many.
    Write(usize),
    /// Rights of the file before are given to the new one.
    Rights,
    /// The new file is flushed to disk.
    Flush,
    /// The new file takes the place of the old one.
    Rename,
    /// The folder is flushed to disk, and with it the name.
    FlushFolder,
    /// The file is written in place, after so many bytes.
    InPlace(usize),
    /// What was written in place is flushed to disk.
    FlushInPlace,
    /// What is not needed any more is removed.
    Remove,
}

/// Is told each step before it is done; an error makes the step fail.
pub type Watch<'a> = dyn FnMut(Step) -> io::Result<()> + 'a;

/// What is put somewhere.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Content<'a> {
    Bytes(&'a [u8]),
    /// What a file holds, which may be more than is good to have in memory.
    File(&'a Path),
}

impl<'a> Content<'a> {
    fn reader(self) -> io::Result<Box<dyn Read + 'a>> {
        Ok(match self {
            Self::Bytes(bytes) => Box::new(bytes),
            Self::File(path) => Box::new(File::open(path)?),
        })
    }

    fn length(self) -> io::Result<u64> {
        match self {
            Self::Bytes(bytes) => Ok(bytes.len() as u64),
            Self::File(path) => fs::metadata(path).map(|data| data.len()),
        }
    }

    /// Whether both are the same to the last byte.
    pub(crate) fn is_same(self, other: Content<'_>) -> io::Result<bool> {
        if self.length()? != other.length()? {
            return Ok(false);
        }
        let (mut own, mut theirs) = (self.reader()?, other.reader()?);
        let (mut one, mut two) = (Vec::new(), Vec::new());
        loop {
            one.clear();
            two.clear();
            own.by_ref().take(COMPARED).read_to_end(&mut one)?;
            theirs.by_ref().take(COMPARED).read_to_end(&mut two)?;
            if one != two || one.is_empty() {
                return Ok(one == two);
            }
        }
    }
}

/// How much is compared at a time.
const COMPARED: u64 = 256 << 10;

/// How much is written between two steps.
const CHUNK: u64 = 16 << 10;

/// How a new file is called until it takes the place of the old one.
const PART: (&str, &str) = (".tankard-", ".part");

/// After which time a part belongs to no save that still runs.
const LEFT_BEHIND: Duration = Duration::from_hours(1);

/// Puts bytes in the place of a file, all or nothing.
///
/// # Errors
/// [`StoreError`]; one whole copy is left at least, which the error names where it is not the old file.
pub fn put(path: &Path, bytes: &[u8]) -> Result<(), StoreError> {
    put_watched(path, Content::Bytes(bytes), &mut |_| Ok(()))
}

/// Puts bytes in the place of a file whose name is ours, beside a person's: unsaved work, a lock. A link of that name is none of
/// ours, and whoever made it would decide what is written over.
///
/// # Errors
/// As [`put`].
pub(crate) fn put_own(path: &Path, bytes: &[u8]) -> Result<(), StoreError> {
    no_link(path).map_err(io_error(Doing::RemovingLink, path))?;
    put(path, bytes)
}

fn no_link(path: &Path) -> io::Result<()> {
    if path.is_symlink() { fs::remove_file(path) } else { Ok(()) }
}

pub(crate) fn put_watched(path: &Path, content: Content<'_>, watch: &mut Watch<'_>) -> Result<(), StoreError> {
    Target::of(path)?.put(content, None, watch)
}

/// Where the whole copy is while a file is written in place.
pub fn saving(path: &Path) -> PathBuf {
    with_ending(path, ".saving")
}

/// The file that bytes are put in the place of.
pub(crate) struct Target<'a> {
    /// As it was named.
    path: &'a Path,
    /// Behind links.
    real: PathBuf,
    folder: PathBuf,
    /// What the file there is like.
    before: Option<fs::Metadata>,
}

impl<'a> Target<'a> {
    pub(crate) fn of(path: &'a Path) -> Result<Self, StoreError> {
        let real = behind_links(path).map_err(io_error(Doing::FollowingLink, path))?;
        let before = fs::metadata(&real).ok();
        // A device or a folder is no place for a file, and must not be replaced by one.
        if before.as_ref().is_some_and(|data| !data.is_file()) {
            let source = io::Error::new(io::ErrorKind::InvalidInput, t!("file-it-is-no-ordinary-file"));
            return Err(io_error(Doing::Writing, path)(source));
        }
        if before.as_ref().is_some_and(|data| data.permissions().readonly()) {
            return Err(StoreError::ReadOnly { path: path.to_owned() });
        }
        let folder = match real.parent() {
            Some(folder) if !folder.as_os_str().is_empty() => folder.to_owned(),
            _ => PathBuf::from("."),
        };
        Ok(Self { path, real, folder, before })
    }

    /// Puts something there. `spare` is a place for the whole copy where none can be made beside a file that can be
    /// written.
    pub(crate) fn put(
        &self,
        content: Content<'_>,
        spare: Option<&Path>,
        watch: &mut Watch<'_>,
    ) -> Result<(), StoreError> {
        let part = match self.part(content, watch) {
            Ok(part) => part,
            // The file may be written although nothing new may be made beside it.
            Err(StoreError::Io { source, .. }) if may_not(source.kind()) && self.before.is_some() => {
                return match spare {
                    Some(copy) => self.in_place(copy, content, watch),
                    None => Err(io_error(Doing::MakingFile, self.path)(source)),
                };
            }
            Err(error) => return Err(error),
        };
        let renamed = watch(Step::Rename).and_then(|()| part.persist(&self.real).map_err(|error| error.error));
        match renamed {
            Ok(_) => {
                // The name is in place, so a save is not called failed where only this cannot be done, as on some shares.
                if watch(Step::FlushFolder).is_ok() {
                    flush_folder(&self.folder);
                }
                self.sweep();
                Ok(())
            }
            // Some shares do not rename over a file, and say so in many ways.
            Err(error) if error.kind() != io::ErrorKind::NotFound && self.folder.is_dir() => {
                self.in_place(&saving(&self.real), content, watch)
            }
            Err(error) => Err(io_error(Doing::PuttingInPlace, self.path)(error)),
        }
    }

    /// The new file, whole and flushed.
    fn part(&self, content: Content<'_>, watch: &mut Watch<'_>) -> Result<NamedTempFile, StoreError> {
        let mut builder = tempfile::Builder::new();
        builder.prefix(PART.0).suffix(PART.1);
        let made = watch(Step::Make).and_then(|()| builder.tempfile_in(&self.folder));
        let mut part = made.map_err(io_error(Doing::MakingFile, self.path))?;
        write_in_steps(part.as_file_mut(), content, Step::Write, watch).map_err(io_error(Doing::Writing, self.path))?;
        // A temporary file is private by default; the farm keeps the rights it had.
        let rights = watch(Step::Rights).and_then(|()| match &self.before {
            Some(before) => same_rights(part.as_file(), before),
            None => ordinary_rights(part.as_file()),
        });
        rights.map_err(io_error(Doing::SettingRights, self.path))?;
        let flushed = watch(Step::Flush).and_then(|()| part.as_file().sync_all());
        flushed.map_err(io_error(Doing::Flushing, self.path))?;
        Ok(part)
    }

    /// Writes the file in place, once a whole copy is flushed elsewhere. The copy goes when the file reads as it should.
    fn in_place(&self, copy: &Path, content: Content<'_>, watch: &mut Watch<'_>) -> Result<(), StoreError> {
        if let Some(folder) = copy.parent() {
            let made = watch(Step::Make).and_then(|()| fs::create_dir_all(folder));
            made.map_err(io_error(Doing::MakingCopy, copy))?;
        }
        let write_copy = |watch: &mut Watch<'_>| {
            no_link(copy)?;
            let mut file = File::create(copy)?;
            write_in_steps(&mut file, content, Step::Write, watch)?;
            watch(Step::Flush)?;
            file.sync_all()
        };
        if let Err(error) = write_copy(watch) {
            // Half a copy is none; the file itself is not touched yet.
            let _ = fs::remove_file(copy);
            return Err(io_error(Doing::MakingCopy, copy)(error));
        }
        if let Some(folder) = copy.parent() {
            flush_folder(folder);
        }
        let write_here = |watch: &mut Watch<'_>| {
            // Made empty first, and that flushed: half of the new state followed by half of the old one may read as a farm.
            let mut file = OpenOptions::new().write(true).create(true).truncate(true).open(&self.real)?;
            file.sync_all()?;
            write_in_steps(&mut file, content, Step::InPlace, watch)?;
            watch(Step::FlushInPlace)?;
            file.sync_all()?;
            // A share may say that all is well and have written something else.
            let stands = content.is_same(Content::File(&self.real))?;
            if stands { Ok(()) } else { Err(io::Error::other(t!("file-what-was-written-does-not-read"))) }
        };
        write_here(watch).map_err(|source| StoreError::Broken {
            source,
            copy: copy.to_owned(),
            path: self.path.to_owned(),
        })?;
        flush_folder(&self.folder);
        // A copy that stays is offered at the next start, and is then found to say the same.
        let _ = watch(Step::Remove).and_then(|()| fs::remove_file(copy));
        Ok(())
    }

    /// Removes parts that a save left behind that was ended halfway. By the clock of the disk, which may be another machine's.
    fn sweep(&self) {
        let Ok(now) = fs::metadata(&self.real).and_then(|data| data.modified()) else { return };
        let Ok(entries) = fs::read_dir(&self.folder) else { return };
        for entry in entries.flatten() {
            let name = entry.file_name();
            let name = name.to_string_lossy();
            let is_part = name.starts_with(PART.0) && name.ends_with(PART.1);
            let is_old = || {
                let age = entry.metadata().and_then(|data| data.modified()).map(|at| now.duration_since(at));
                age.is_ok_and(|age| age.is_ok_and(|age| age > LEFT_BEHIND))
            };
            if is_part && is_old() {
                let _ = fs::remove_file(entry.path());
            }
        }
    }
}

/// Whether the system says that something may not be written there at all.
fn may_not(kind: io::ErrorKind) -> bool {
    matches!(kind, io::ErrorKind::PermissionDenied | io::ErrorKind::ReadOnlyFilesystem)
}

fn write_in_steps(
    file: &mut File,
    content: Content<'_>,
    step: fn(usize) -> Step,
    watch: &mut Watch<'_>,
) -> io::Result<()> {
    let (mut reader, mut chunk, mut written) = (content.reader()?, Vec::new(), 0);
    while reader.by_ref().take(CHUNK).read_to_end(&mut chunk)? > 0 {
        watch(step(written))?;
        file.write_all(&chunk)?;
        written += chunk.len();
        chunk.clear();
    }
    Ok(())
}

/// Flushes the names in a folder. Without this a name may be lost in a power cut though the content is not; some systems
/// cannot do it.
pub(crate) fn flush_folder(folder: &Path) {
    if let Ok(folder) = File::open(folder) {
        let _ = folder.sync_all();
    }
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
    Err(io::Error::other(t!("file-it-leads-round-in-a-circle")))
}

#[cfg(unix)]
fn same_rights(file: &File, before: &fs::Metadata) -> io::Result<()> {
    use std::os::unix::fs::{MetadataExt, fchown};
    // In a folder that several people share, the file stays whose it was; who may not give it away keeps the group at least.
    if fchown(file, Some(before.uid()), Some(before.gid())).is_err() {
        let _ = fchown(file, None, Some(before.gid()));
    }
    // After the owner, since giving a file away takes some rights off.
    file.set_permissions(before.permissions())
}

#[cfg(not(unix))]
fn same_rights(file: &File, before: &fs::Metadata) -> io::Result<()> {
    file.set_permissions(before.permissions())
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
