//! Backups: what a farm file held before each save, in a folder beside it that a person can find and read without this
//! program. Where nothing can be written there they go to a spare folder.

use std::fs;
use std::io;
use std::path::{Path, PathBuf};

use jiff::civil::{Date, DateTime};
use tankard_core::t;

use crate::doing::Doing;
use crate::put::{Content, Step, Watch, flush_folder, put_watched};
use crate::store::{Stamp, StoreError, io_error, with_ending};

/// How many backups stay.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Keep {
    /// So many of the latest, 1 at least.
    pub latest: u32,
    /// Beyond these, the last of each day for so many days.
    pub days: u32,
}

impl Default for Keep {
    /// An evening of saves, and a season to find out that something is gone.
    fn default() -> Self {
        Self { latest: 20, days: 90 }
    }
}

/// How backups are kept.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Backups {
    /// How many.
    pub keep: Keep,
    /// The moment, by the farm's clock.
    pub now: DateTime,
    /// A folder for them where none can be written beside the farm.
    pub spare: Option<PathBuf>,
}

/// A backup.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Backup {
    /// Where it is.
    pub path: PathBuf,
    /// When it was made: right before a save, so it holds what was saved before that.
    pub made: DateTime,
    /// Its size in bytes.
    pub size: u64,
}

/// The folder of the backups beside a farm.
pub fn folder(path: &Path) -> PathBuf {
    path.with_file_name(format!("{} backups", stem(path)))
}

/// The folder of the backups of a farm inside a spare folder. Farms of one name in several folders are kept apart.
pub fn spare_folder(path: &Path, spare: &Path) -> PathBuf {
    let real = fs::canonicalize(path).unwrap_or_else(|_| path.to_owned());
    let place = Stamp::of(real.as_os_str().as_encoded_bytes()).to_string();
    spare.join("backups").join(format!("{} {}", stem(path), place.get(..8).unwrap_or(&place)))
}

/// The file before the last save, as programs up to November 2026 kept it.
fn before(path: &Path) -> PathBuf {
    with_ending(path, ".before")
}

fn stem(path: &Path) -> String {
    path.file_stem().map(|stem| stem.to_string_lossy().into_owned()).unwrap_or_default()
}

/// Colons are not allowed in names everywhere.
const MOMENT: &str = "%Y-%m-%d %H.%M.%S";

/// The backups of a farm, the latest first.
pub fn list(path: &Path, spare: Option<&Path>) -> Vec<Backup> {
    let mut found = in_folder(&folder(path), &stem(path));
    if let Some(spare) = spare {
        found.extend(in_folder(&spare_folder(path, spare), &stem(path)));
    }
    found.sort_by(|one, other| (other.made, &other.path).cmp(&(one.made, &one.path)));
    if let Ok(data) = fs::metadata(before(path))
        && data.is_file()
    {
        // It has no moment in its name and is older than all that have one.
        found.push(Backup { path: before(path), made: DateTime::MIN, size: data.len() });
    }
    found
}

fn in_folder(folder: &Path, stem: &str) -> Vec<Backup> {
    let Ok(entries) = fs::read_dir(folder) else { return Vec::new() };
    let backup = |entry: fs::DirEntry| {
        let path = entry.path();
        let name = path.file_name()?.to_str()?;
        // What a person puts into the folder under another name is none of ours, and is never removed.
        let moment = name.strip_prefix(stem)?.strip_prefix(' ')?.strip_suffix(".ron")?;
        let moment = moment.get(..19).filter(|_| moment.len() == 19 || moment.get(19..20) == Some(" "))?;
        let made = DateTime::strptime(MOMENT, moment).ok()?;
        let data = entry.metadata().ok().filter(fs::Metadata::is_file)?;
        Some(Backup { path, made, size: data.len() })
    };
    entries.flatten().filter_map(backup).collect()
}

impl Backups {
    /// Keeps what a farm file holds before it is replaced, and lets go what is too old.
    pub(crate) fn keep(&self, path: &Path, watch: &mut Watch<'_>) -> Result<PathBuf, StoreError> {
        let beside = folder(path);
        let kept = match self.keep_in(&beside, path, watch) {
            Err(error) => match &self.spare {
                Some(spare) => self.keep_in(&spare_folder(path, spare), path, watch).map_err(|_| error)?,
                None => return Err(error),
            },
            Ok(kept) => kept,
        };
        // Also in the spare folder, where the place beside the farm could not be written for some time.
        let mut all = list(path, self.spare.as_deref());
        all.retain(|backup| backup.path != before(path));
        for old in too_old(&all, self.keep, self.now.date()) {
            if old.path != kept && watch(Step::Remove).is_ok() {
                let _ = fs::remove_file(&old.path);
            }
        }
        Ok(kept)
    }

    fn keep_in(&self, folder: &Path, path: &Path, watch: &mut Watch<'_>) -> Result<PathBuf, StoreError> {
        if !folder.is_dir() {
            // A folder that is not there is made, but not the one that the farm should be in.
            let make = |()| match folder.parent() {
                Some(parent) if self.spare.as_ref().is_some_and(|spare| folder.starts_with(spare)) => {
                    fs::create_dir_all(folder).map(|()| flush_folder(parent))
                }
                parent => fs::create_dir(folder).map(|()| flush_folder(parent.unwrap_or(Path::new(".")))),
            };
            watch(Step::Folder).and_then(make).map_err(io_error(Doing::MakingBackupFolder, folder))?;
        }
        let moment = self.now.strftime(MOMENT).to_string();
        let all = in_folder(folder, &stem(path));
        // The same state twice is of no use to anyone.
        if let Some(latest) = all.iter().max_by(|one, other| (one.made, &one.path).cmp(&(other.made, &other.path)))
            && Content::File(path).is_same(Content::File(&latest.path)).is_ok_and(|is_same| is_same)
        {
            return Ok(latest.path.clone());
        }
        let name = |count: u32| match count {
            1 => format!("{} {moment}.ron", stem(path)),
            count => format!("{} {moment} {count:02}.ron", stem(path)),
        };
        let free = (1..100).map(|count| folder.join(name(count))).find(|free| !free.exists() && !free.is_symlink());
        let full = || io::Error::new(io::ErrorKind::AlreadyExists, t!("file-a-hundred-backups-of-one-second"));
        let free = free.ok_or_else(full).map_err(io_error(Doing::KeepingBackup, folder))?;
        put_watched(&free, Content::File(path), watch)?;
        Ok(free)
    }
}

/// So many bytes may the backups of a farm take together; beyond that the oldest go, but not the latest three.
pub const TOGETHER: u64 = 1 << 30;
const ALWAYS: usize = 3;

/// Those that need not stay: beyond the latest, all but the last of each day, those of days too long ago, and what takes too
/// much room.
fn too_old(latest_first: &[Backup], keep: Keep, today: Date) -> Vec<&Backup> {
    let latest = usize::try_from(keep.latest.max(1)).unwrap_or(usize::MAX);
    let mut day = latest_first.get(latest - 1).map(|last| last.made.date());
    let mut old = Vec::new();
    for backup in latest_first.iter().skip(latest) {
        let own = backup.made.date();
        let age = today.since(own).map_or(i32::MAX, |span| span.get_days());
        if Some(own) == day || age > i32::try_from(keep.days).unwrap_or(i32::MAX) {
            old.push(backup);
        }
        day = Some(own);
    }
    let (mut bytes, mut count) = (0_u64, 0);
    let mut too_much = Vec::new();
    for backup in latest_first.iter().filter(|backup| !old.contains(backup)) {
        bytes = bytes.saturating_add(backup.size);
        count += 1;
        if bytes > TOGETHER && count > ALWAYS {
            too_much.push(backup);
        }
    }
    old.extend(too_much);
    old
}

#[cfg(test)]
mod tests {
    use super::{Backup, Keep, too_old};
    use jiff::ToSpan;
    use jiff::civil::{Date, date};
    use std::path::PathBuf;

    /// Four saves a day for so many days, the latest first.
    fn saves(today: Date, days: i32) -> Vec<Backup> {
        let of_day = |day: Date| {
            [18, 14, 10, 6].map(|hour| Backup { path: PathBuf::new(), made: day.at(hour, 0, 0, 0), size: 1 })
        };
        (0..days).flat_map(|ago| of_day(today - ago.days())).collect()
    }

    #[test]
    fn the_latest_stay_and_then_the_last_of_each_day() {
        let today = date(2031, 6, 11);
        let all = saves(today, 10);
        let old = too_old(&all, Keep { latest: 6, days: 5 }, today);
        let left: Vec<_> = all.iter().filter(|backup| !old.contains(backup)).map(|backup| backup.made).collect();
        let mut expected: Vec<_> = all.iter().take(6).map(|backup| backup.made).collect();
        // The sixth is of the day before, of which the last is among them already.
        expected.extend((2..=5).map(|ago| (today - ago.days()).at(18, 0, 0, 0)));
        assert_eq!(left, expected);
    }

    /// A farm of many seasons has tens of megabytes, and a hundred of them fill a small disk.
    #[test]
    fn large_ones_stay_as_far_as_there_is_room_and_three_at_least() {
        let today = date(2031, 6, 11);
        // 1 GiB is 16 times 65 MB and a bit.
        for (megabytes, stay) in [(65, 16), (600, 3)] {
            let mut all = saves(today, 5);
            for backup in &mut all {
                backup.size = megabytes * 1_000_000;
            }
            let old = too_old(&all, Keep::default(), today);
            assert_eq!(all.len() - old.len(), stay);
            assert!(all.iter().take(stay).all(|backup| !old.contains(&backup)));
        }
    }

    #[test]
    fn the_latest_stays_however_old_it_is() {
        let all = saves(date(2029, 1, 1), 1);
        assert_eq!(too_old(&all, Keep { latest: 0, days: 0 }, date(2031, 6, 11)).len(), 3);
        assert!(too_old(&all, Keep { latest: 20, days: 0 }, date(2031, 6, 11)).is_empty());
    }
}
