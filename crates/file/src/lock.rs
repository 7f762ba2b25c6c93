//! The lock: a small file beside a farm that says who has it open, so that two windows, or two machines on one share, notice
//! each other. It stops nobody by force; who takes it over does so with open eyes, and the other one is told.

use std::fs::{self, File, OpenOptions};
use std::io::{self, Write};
use std::path::{Path, PathBuf};
use std::time::{Duration, SystemTime};

use jiff::civil::DateTime;
use tankard_core::language::days::moment;
use tankard_core::t;

use crate::doing::Doing;
use crate::put::put_own;
use crate::store::{StoreError, bytes_of, io_error, with_ending};

/// How often a lock is to be refreshed.
pub const REFRESH: Duration = Duration::from_secs(20);

/// Without a sign for so long, whoever had it open is gone or cut off: three refreshes and some time for a slow share.
const STALE: Duration = Duration::from_secs(90);

/// Who has a farm open.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Holder {
    /// The person's name on the machine.
    pub user: String,
    /// The machine.
    pub host: String,
    /// The number of the process there.
    pub process: u32,
    /// Since when, by the farm's clock.
    pub since: DateTime,
    /// What tells two windows of one process apart.
    pub window: u64,
}

impl Holder {
    /// In words: "ann on barn-pc (process 123) since 11 June 2031, 20:14".
    pub fn words(&self) -> String {
        t!(
            "file-on-process-since",
            user = self.user,
            host = self.host,
            process = self.process,
            since = moment(self.since)
        )
    }

    /// The text of the lock. Who finds the file must know what it is.
    fn text(&self) -> String {
        format!(
            "Tankard has the farm of this name open. This file goes when it is closed.\n\
             user: {}\nhost: {}\nprocess: {}\nsince: {}\nwindow: {}\n",
            line(&self.user),
            line(&self.host),
            self.process,
            self.since,
            self.window
        )
    }

    fn parse(text: &str) -> Option<Self> {
        let fact = |name: &str| {
            text.lines().find_map(|line| line.strip_prefix(name)?.strip_prefix(": ")).map(str::trim).map(str::to_owned)
        };
        Some(Self {
            user: fact("user")?,
            host: fact("host")?,
            process: fact("process")?.parse().ok()?,
            since: fact("since")?.parse().ok()?,
            window: fact("window")?.parse().ok()?,
        })
    }
}

fn line(text: &str) -> String {
    text.replace(['\r', '\n'], " ")
}

/// What is known of a lock that someone else has.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Other {
    /// Who; none where the lock does not read.
    pub holder: Option<Holder>,
    /// Why whoever had it open seems to be gone; none where it is refreshed.
    pub stale: Option<String>,
}

impl Other {
    /// In a sentence without a full stop.
    pub fn words(&self) -> String {
        let who = self.holder.as_ref().map_or_else(|| t!("file-someone").to_owned(), Holder::words);
        match &self.stale {
            None => t!("file-has-this-farm-open", who = who),
            Some(why) => t!("file-had-this-farm-open-and-did", who = who, why = why),
        }
    }
}

/// A lock of our own. It goes when this is dropped, unless it was taken over.
#[derive(Debug)]
pub struct Lock {
    path: PathBuf,
    me: Holder,
}

/// What came of taking a lock.
#[derive(Debug)]
pub enum Taken {
    /// It is ours.
    Ours(Lock),
    /// Someone else has it.
    Theirs(Other),
}

/// Where the lock of a farm is.
pub fn beside(path: &Path) -> PathBuf {
    // Through a link the same farm has the same lock.
    with_ending(&fs::canonicalize(path).unwrap_or_else(|_| path.to_owned()), ".lock")
}

impl Lock {
    /// Takes the lock of a farm if nobody has it. `me` is who asks.
    ///
    /// # Errors
    /// [`StoreError`] where no lock can be written, as in a folder that is read-only.
    pub fn take(farm: &Path, me: Holder) -> Result<Taken, StoreError> {
        let path = beside(farm);
        let mut new = OpenOptions::new();
        match new.write(true).create_new(true).open(&path) {
            Ok(mut file) => {
                let written = file.write_all(me.text().as_bytes());
                written.map_err(io_error(Doing::WritingLock, &path))?;
                Ok(Taken::Ours(Self { path, me }))
            }
            Err(error) if error.kind() == io::ErrorKind::AlreadyExists => Ok(Taken::Theirs(look(&path, &me.host))),
            Err(error) => Err(io_error(Doing::WritingLock, &path)(error)),
        }
    }

    /// Takes the lock over, on a person's word. Whoever has it learns so at the next refresh.
    ///
    /// # Errors
    /// [`StoreError`] where no lock can be written.
    pub fn take_over(farm: &Path, me: Holder) -> Result<Self, StoreError> {
        let path = beside(farm);
        put_own(&path, me.text().as_bytes())?;
        Ok(Self { path, me })
    }

    /// Says that we are still there. Gives who has taken it over, if anyone has.
    ///
    /// # Errors
    /// [`StoreError`] where the lock can be neither read nor written, as when a share is cut off.
    pub fn refresh(&self) -> Result<Option<Other>, StoreError> {
        match self.stands() {
            // The same bytes in place: the disk gives them its own moment, and who reads them meanwhile reads the same.
            Some(holder) if holder == self.me => {
                let file = OpenOptions::new().write(true).open(&self.path);
                let refreshed = file.and_then(|mut file| file.write_all(self.me.text().as_bytes()));
                refreshed.map_err(io_error(Doing::RefreshingLock, &self.path))?;
                Ok(None)
            }
            Some(_) => Ok(Some(look(&self.path, &self.me.host))),
            // Someone removed it by hand, or it is half written: it is ours until another name stands there.
            None => put_own(&self.path, self.me.text().as_bytes()).map(|()| None),
        }
    }

    fn stands(&self) -> Option<Holder> {
        Holder::parse(&String::from_utf8(bytes_of(&self.path).ok()?).ok()?)
    }
}

impl Drop for Lock {
    fn drop(&mut self) {
        if self.stands().as_ref() == Some(&self.me) {
            let _ = fs::remove_file(&self.path);
        }
    }
}

/// Who has a farm open that is not ours, if anyone has.
pub fn other(farm: &Path, host: &str) -> Option<Other> {
    let path = beside(farm);
    path.exists().then(|| look(&path, host))
}

fn look(path: &Path, host: &str) -> Other {
    let holder = bytes_of(path).ok().and_then(|bytes| Holder::parse(&String::from_utf8(bytes).ok()?));
    let stale = match &holder {
        Some(holder) if holder.host == host && is_gone(holder.process) => {
            Some(t!("file-its-process-has-ended-as-after").to_owned())
        }
        _ => age(path)
            .filter(|age| *age > STALE)
            .map(|age| t!("file-no-sign-of-it-for-minutes", minutes = age.as_secs() / 60)),
    };
    Other { holder, stale }
}

/// Whether a process of this machine has ended. Where the system does not tell, the age of the lock does.
fn is_gone(process: u32) -> bool {
    let processes = Path::new("/proc");
    let Ok(stat) = fs::read_to_string(processes.join(process.to_string()).join("stat")) else {
        return processes.join("self").exists();
    };
    // One that has ended and that nobody asked about yet is still listed, as a zombie: the letter behind the name.
    stat.rsplit_once(')').is_some_and(|(_, rest)| rest.trim_start().starts_with(['Z', 'X']))
}

/// For how long a lock was not refreshed.
fn age(path: &Path) -> Option<Duration> {
    let refreshed = fs::metadata(path).and_then(|data| data.modified()).ok()?;
    now_of(path).duration_since(refreshed).ok()
}

/// The moment by the clock of the disk that a file is on, since the clocks of two machines on one share differ; by our own
/// where that cannot be asked.
fn now_of(path: &Path) -> SystemTime {
    let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
    let probe = tempfile::Builder::new().prefix(".tankard-").suffix(".part").tempfile_in(folder);
    let asked = probe.and_then(|probe| {
        // A byte, since some shares give a moment only to what is written.
        let mut file: &File = probe.as_file();
        file.write_all(b"?")?;
        file.metadata()?.modified()
    });
    asked.unwrap_or_else(|_| SystemTime::now())
}
