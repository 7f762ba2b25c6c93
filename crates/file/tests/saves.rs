//! Saves that go wrong at each step, backups, unsaved work and locks. What must hold after each: one whole copy of the last
//! confirmed save is on disk.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use std::fs;
use std::io::{self, ErrorKind};
use std::path::{Path, PathBuf};
use std::time::{Duration, SystemTime};

use jiff::civil::{DateTime, datetime};
use tankard_core::farm::{Farm, Field};
use tankard_core::quantity::AsTyped;
use tankard_file::backups::{self, Backups, Keep};
use tankard_file::lock::{self, Holder, Lock, Taken};
use tankard_file::put::{self, Step};
use tankard_file::side::{self, Head};
use tankard_file::store::{self, Save, Saved, StoreError};

fn evening(second: i8) -> DateTime {
    datetime(2031, 6, 11, 20, 14, second, 0)
}

/// Large enough to be written in several steps.
fn farm(name: &str) -> Farm {
    let mut farm = Farm::new(name);
    for number in 0..250 {
        let field = Field::new(&format!("Field {number}"), AsTyped::parse("74.6 ac").unwrap());
        farm.fields.insert(format!("field-{number}"), field);
    }
    farm
}

fn at(second: i8, spare: Option<&Path>) -> Backups {
    Backups { keep: Keep::default(), now: evening(second), spare: spare.map(Path::to_owned) }
}

fn names(folder: &Path) -> Vec<String> {
    let mut names: Vec<_> =
        fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect();
    names.sort();
    names
}

/// Every farm that reads in a folder and the folders in it.
fn readable(folder: &Path) -> Vec<String> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            found.extend(readable(&path));
        } else if let Ok((farm, _)) = store::open(&path) {
            found.push(farm.name);
        }
    }
    found
}

#[test]
fn each_save_keeps_the_one_before_in_a_folder_with_a_plain_name() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("home farm.ron");
    let mut stamp = None;
    for (second, name) in ["one", "two", "three"].into_iter().enumerate() {
        let backups = at(i8::try_from(second).unwrap(), None);
        let saved = Save { path: &path, farm: &farm(name), stamp, backups: Some(&backups) }.run().unwrap();
        assert_eq!((saved.backup.is_some(), &saved.remark), (second > 0, &None));
        stamp = Some(saved.stamp);
    }
    assert_eq!(names(folder.path()), ["home farm backups", "home farm.ron"]);
    let moments = ["home farm 2031-06-11 20.14.01.ron", "home farm 2031-06-11 20.14.02.ron"];
    assert_eq!(names(&backups::folder(&path)), moments);
    let listed = backups::list(&path, None);
    let held: Vec<_> = listed.iter().map(|backup| store::open(&backup.path).unwrap().0.name).collect();
    assert_eq!(held, ["two", "one"]);
    assert_eq!(listed[0].made, evening(2));
    assert_eq!(listed[0].size, fs::metadata(&listed[0].path).unwrap().len());
    // Two saves in one second are two backups; a file put there by hand is neither listed nor removed.
    fs::write(backups::folder(&path).join("home farm before harvest.ron"), "mine").unwrap();
    let backups = Backups { keep: Keep { latest: 2, days: 0 }, ..at(2, None) };
    Save { path: &path, farm: &farm("four"), stamp, backups: Some(&backups) }.run().unwrap();
    let left = [moments[1], "home farm 2031-06-11 20.14.02 02.ron", "home farm before harvest.ron"];
    let mut expected = left.to_vec();
    expected.sort_unstable();
    assert_eq!(names(&backups::folder(&path)), expected);
    assert_eq!(backups::list(&path, None).len(), 2);
    // The file that earlier versions of the program kept is offered last.
    fs::write(folder.path().join("home farm.ron.before"), tankard_file::write(&farm("old")).unwrap()).unwrap();
    assert_eq!(store::open(&backups::list(&path, None)[2].path).unwrap().0.name, "old");
}

#[test]
fn backups_go_to_the_spare_folder_where_none_can_be_written_beside() {
    let folder = tempfile::tempdir().unwrap();
    let spare = folder.path().join("data");
    let path = folder.path().join("farm.ron");
    let stamp = store::save(&path, &farm("one"), None).unwrap();
    // A file stands where the folder should be.
    fs::write(backups::folder(&path), "in the way").unwrap();
    let save = |backups: &Backups, stamp, name: &str| {
        Save { path: &path, farm: &farm(name), stamp: Some(stamp), backups: Some(backups) }.run().unwrap()
    };
    let saved = save(&at(1, Some(&spare)), stamp, "two");
    assert!(saved.backup.unwrap().starts_with(&spare));
    assert_eq!(saved.remark, None);
    let listed = backups::list(&path, Some(&spare));
    assert_eq!(store::open(&listed[0].path).unwrap().0.name, "one");
    // Nowhere at all: the farm is saved, and it is said.
    let saved = save(&at(2, None), saved.stamp, "three");
    assert!(saved.backup.is_none() && saved.remark.unwrap().contains("making a folder for backups failed"));
    assert_eq!(store::open(&path).unwrap().0.name, "three");
}

/// The steps of a save, in order.
fn steps(save: &Save<'_>) -> (Result<Saved, StoreError>, Vec<Step>) {
    let mut steps = Vec::new();
    let saved = save.run_watched(&mut |step| {
        steps.push(step);
        Ok(())
    });
    (saved, steps)
}

/// What a power cut may take is what was not flushed: so each new file is flushed before its name is put in place, the backup
/// before the file.
#[test]
fn what_is_written_is_flushed_before_it_takes_its_place() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("farm.ron");
    let stamp = store::save(&path, &farm("one"), None).unwrap();
    let backups = at(1, None);
    let two = farm("two");
    let (_, steps) = steps(&Save { path: &path, farm: &two, stamp: Some(stamp), backups: Some(&backups) });
    let plain: Vec<Step> = steps.into_iter().filter(|step| !matches!(step, Step::Write(_))).collect();
    let one = [Step::Make, Step::Rights, Step::Flush, Step::Rename, Step::FlushFolder];
    assert_eq!(plain, [&[Step::Folder], &one[..], &one[..]].concat());
}

/// Each step fails once, in each way that disks know: the file holds the last confirmed save, whole, or the new one where
/// that was confirmed; and the next save goes through.
#[test]
fn a_step_that_fails_loses_nothing() {
    let (one, two, three) = (farm("one"), farm("two"), farm("three"));
    let kinds = [ErrorKind::StorageFull, ErrorKind::PermissionDenied, ErrorKind::NotFound, ErrorKind::Other];
    let mut failed = 0;
    for kind in kinds {
        for failing in 0.. {
            let folder = tempfile::tempdir().unwrap();
            let path = folder.path().join("farm.ron");
            let stamp = store::save(&path, &one, None).unwrap();
            let backups = at(1, None);
            let save = Save { path: &path, farm: &two, stamp: Some(stamp), backups: Some(&backups) };
            let mut count = 0;
            let saved = save.run_watched(&mut |_| {
                count += 1;
                if count == failing + 1 { Err(io::Error::from(kind)) } else { Ok(()) }
            });
            if count <= failing {
                break;
            }
            let holds = store::open(&path).unwrap();
            match &saved {
                Ok(saved) => assert_eq!((&holds.0, holds.1), (&two, saved.stamp), "{kind}, {failing}"),
                Err(error) => {
                    failed += 1;
                    assert_eq!(holds, (one.clone(), stamp), "{kind}, {failing}");
                    let says = error.to_string();
                    assert!(says.contains(" failed: ") && says.contains("save under another name"), "{says}");
                }
            }
            // Nothing half is left behind, and the next save is none the worse.
            let of_farm: Vec<String> = names(folder.path());
            assert!(of_farm.iter().all(|name| ["farm backups", "farm.ron"].contains(&name.as_str())), "{of_farm:?}");
            Save { stamp: Some(holds.1), farm: &three, ..save }.run().unwrap();
            assert_eq!(store::open(&path).unwrap().0, three);
        }
    }
    assert!(failed > 20, "{failed}");
}

/// A share on which no file can be renamed over another: the file is written in place, with a whole copy beside it meanwhile.
#[test]
fn where_no_file_can_be_renamed_it_is_written_in_place_beside_a_whole_copy() {
    let (one, two) = (farm("one"), farm("two"));
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("farm.ron");
    let mut seen = Vec::new();
    let no_rename = |step: Step| match step {
        Step::Rename => Err(io::Error::from(ErrorKind::Unsupported)),
        _ => Ok(()),
    };
    let stamp = store::save(&path, &one, None).unwrap();
    let save = Save { path: &path, farm: &two, stamp: Some(stamp), backups: None };
    let saved = save.run_watched(&mut |step| {
        seen.push(step);
        if matches!(step, Step::InPlace(_) | Step::FlushInPlace) {
            assert_eq!(store::open(&put::saving(&path)).unwrap().0, two);
        }
        no_rename(step)
    });
    assert_eq!(saved.unwrap().stamp, store::open(&path).unwrap().1);
    assert!(seen.contains(&Step::InPlace(0)) && seen.contains(&Step::FlushInPlace), "{seen:?}");
    assert_eq!(names(folder.path()), ["farm.ron"]);
    // Each step of it fails once. What is left is the old file, or the copy that the message names.
    let mut broken = 0;
    for failing in 0.. {
        fs::write(&path, tankard_file::write(&one).unwrap()).unwrap();
        let mut count = 0;
        let saved = save.run_watched(&mut |step| {
            no_rename(step)?;
            count += 1;
            if count == failing + 1 { Err(io::Error::from(ErrorKind::StorageFull)) } else { Ok(()) }
        });
        match saved {
            Ok(_) => assert_eq!(store::open(&path).unwrap().0, two),
            Err(StoreError::Broken { copy, .. }) => {
                broken += 1;
                assert_eq!(store::open(&copy).unwrap().0, two);
                // The next start finds it.
                assert_eq!(side::half_saved(&path, None).unwrap().farm, two);
                fs::remove_file(copy).unwrap();
            }
            Err(_) => assert_eq!(store::open(&path).unwrap().0, one),
        }
        let _ = fs::remove_file(put::saving(&path));
        if count <= failing {
            break;
        }
    }
    assert!(broken > 2, "{broken}");
}

/// Nothing new may be made beside a file that itself may be written: the copy is made in the spare folder.
#[test]
fn a_file_in_a_folder_that_is_read_only_is_written_with_the_copy_in_the_spare_folder() {
    let folder = tempfile::tempdir().unwrap();
    let (path, spare) = (folder.path().join("farm.ron"), folder.path().join("data"));
    let stamp = store::save(&path, &farm("one"), None).unwrap();
    let two = farm("two");
    // The third new file is the farm's own: the first two are backups, beside it and in the spare folder.
    let run = |spare: Option<&Path>, made_before: usize| {
        let backups = at(1, spare);
        let mut made = 0;
        Save { path: &path, farm: &two, stamp: Some(stamp), backups: Some(&backups) }.run_watched(&mut |step| {
            made += usize::from(step == Step::Make);
            let is_denied = step == Step::Make && made == made_before + 1;
            if is_denied { Err(io::Error::from(ErrorKind::PermissionDenied)) } else { Ok(()) }
        })
    };
    let says = run(None, 1).unwrap_err().to_string();
    assert!(says.contains("in a folder of your own"), "{says}");
    assert_eq!(store::open(&path).unwrap().0.name, "one");
    run(Some(&spare), 1).unwrap();
    assert_eq!(store::open(&path).unwrap().0, two);
    assert_eq!(side::half_saved(&path, Some(&spare)), None);
}

#[test]
fn a_file_that_is_marked_read_only_is_left_alone() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("farm.ron");
    let stamp = store::save(&path, &farm("one"), None).unwrap();
    let mut rights = fs::metadata(&path).unwrap().permissions();
    rights.set_readonly(true);
    fs::set_permissions(&path, rights).unwrap();
    let error = store::save(&path, &farm("two"), Some(stamp)).unwrap_err();
    assert!(matches!(error, StoreError::ReadOnly { .. }) && error.to_string().contains("save under another name"));
    assert_eq!(store::open(&path).unwrap().0.name, "one");
}

#[cfg(unix)]
#[test]
fn the_rights_of_a_file_stay() {
    use std::os::unix::fs::{MetadataExt, PermissionsExt};
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("farm.ron");
    for mode in [0o600, 0o640, 0o664] {
        let stamp = store::save(&path, &farm(&format!("{mode}")), None).unwrap();
        fs::set_permissions(&path, fs::Permissions::from_mode(mode)).unwrap();
        let owner = fs::metadata(&path).map(|data| (data.uid(), data.gid())).unwrap();
        store::save(&path, &farm("after"), Some(stamp)).unwrap();
        let after = fs::metadata(&path).unwrap();
        assert_eq!((after.mode() & 0o777, (after.uid(), after.gid())), (mode, owner));
    }
}

#[test]
fn a_file_that_is_gone_is_not_made_anew_unasked() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("stick").join("farm.ron");
    fs::create_dir(path.parent().unwrap()).unwrap();
    let stamp = store::save(&path, &farm("one"), None).unwrap();
    // What is left of a stick that was taken away may be an empty folder, or none.
    fs::remove_file(&path).unwrap();
    assert!(matches!(store::save(&path, &farm("two"), Some(stamp)), Err(StoreError::Gone { .. })));
    fs::remove_dir(path.parent().unwrap()).unwrap();
    assert!(matches!(store::save(&path, &farm("two"), Some(stamp)), Err(StoreError::Gone { .. })));
    let says = store::save(&path, &farm("two"), None).unwrap_err().to_string();
    assert!(says.contains("put the stick or the share back"), "{says}");
    assert!(!path.parent().unwrap().exists());
}

/// A disk that is really full, where a small one can be made for the test (as root on Linux); the steps above fail in its
/// place elsewhere.
#[cfg(target_os = "linux")]
#[test]
fn a_full_disk_keeps_the_last_save() {
    use std::process::Command;
    let folder = tempfile::tempdir().unwrap();
    let run = |program: &str, arguments: &[&str]| {
        Command::new(program).args(arguments).arg(folder.path()).output().is_ok_and(|out| out.status.success())
    };
    if !run("mount", &["-t", "tmpfs", "-o", "size=120k", "tmpfs"]) {
        println!("left out: no disk can be mounted here");
        return;
    }
    let outcome = std::panic::catch_unwind(|| {
        let path = folder.path().join("farm.ron");
        let mut stamp = store::save(&path, &farm("0"), None).unwrap();
        let mut last = farm("0");
        let mut full = 0;
        for count in 1..12 {
            let next = farm(&count.to_string());
            let backups = at(count, None);
            match (Save { path: &path, farm: &next, stamp: Some(stamp), backups: Some(&backups) }).run() {
                Ok(saved) => {
                    full += usize::from(saved.remark.is_some());
                    (stamp, last) = (saved.stamp, next);
                }
                Err(error) => {
                    full += 1;
                    assert!(error.to_string().contains("there is no room"), "{error}");
                }
            }
            assert_eq!(store::open(&path).unwrap(), (last.clone(), stamp));
        }
        assert!(full > 5, "the disk was never full: {full}");
    });
    assert!(run("umount", &[]));
    outcome.unwrap();
}

#[test]
fn unsaved_work_of_each_run_is_found_again_with_what_is_said_of_it() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("farm.ron");
    let stamp = store::save(&path, &farm("saved"), None).unwrap();
    let first = side::beside(&path);
    // Three runs, each of which ends without an answer.
    for (second, name) in ["first", "second", "third"].into_iter().enumerate() {
        let head = Head { begun_from: Some(stamp), at: Some(evening(i8::try_from(second).unwrap())) };
        side::keep(&side::free(&first), &farm(name), head).unwrap();
    }
    let expected = ["farm.ron", "farm.ron.unsaved", "farm.ron.unsaved-2", "farm.ron.unsaved-3"];
    assert_eq!(names(folder.path()), expected);
    assert!(
        fs::read_to_string(&first)
            .unwrap()
            .starts_with(&format!("// begun from {stamp}\n// kept 2031-06-11T20:14:00\n"))
    );
    let found = side::find_all(&first);
    assert_eq!(found.iter().map(|kept| kept.farm.name.as_str()).collect::<Vec<_>>(), ["third", "second", "first"]);
    assert!(found.iter().all(|kept| kept.head.begun_from == Some(stamp)));
    side::drop(&found[1].path);
    assert_eq!(side::find_all(&first).len(), 2);
    // The number that is free is taken next; work that does not say when it was kept is looked at last.
    side::keep(&side::free(&first), &farm("new"), Head::default()).unwrap();
    assert_eq!(names(folder.path()), expected);
    assert_eq!(side::find_all(&first)[2].farm.name, "new");
    // In a spare folder farms of one name are kept apart.
    let spare = folder.path().join("data");
    let other = folder.path().join("other").join("farm.ron");
    assert_ne!(side::in_spare(&path, &spare), side::in_spare(&other, &spare));
    side::keep(&side::in_spare(&path, &spare), &farm("far"), Head::default()).unwrap();
    assert_eq!(side::find_all(&side::in_spare(&path, &spare))[0].farm.name, "far");
}

fn me(window: u64) -> Holder {
    Holder {
        user: "ann".to_owned(),
        host: "barn-pc".to_owned(),
        process: std::process::id(),
        since: evening(0),
        window,
    }
}

fn take(path: &Path, me: Holder) -> Taken {
    Lock::take(path, me).unwrap()
}

#[test]
fn two_windows_notice_each_other() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("farm.ron");
    store::save(&path, &farm("one"), None).unwrap();
    let Taken::Ours(first) = take(&path, me(1)) else { panic!("the lock was free") };
    assert_eq!(names(folder.path()), ["farm.ron", "farm.ron.lock"]);
    let Taken::Theirs(other) = take(&path, me(2)) else { panic!("two have it") };
    let process = std::process::id();
    assert_eq!(
        other.words(),
        format!("ann on barn-pc (process {process}) since 11 June 2031, 20:14 has this farm open")
    );
    assert_eq!(first.refresh().unwrap(), None);
    // It is taken over with open eyes, and the first one learns of it.
    let second = Lock::take_over(&path, me(2)).unwrap();
    assert_eq!(first.refresh().unwrap().unwrap().holder, Some(me(2)));
    drop(first);
    assert!(lock::beside(&path).exists(), "a lock that was taken over is another's");
    drop(second);
    assert_eq!(names(folder.path()), ["farm.ron"]);
    assert_eq!(lock::other(&path, "barn-pc"), None);
}

#[test]
fn a_lock_that_nobody_refreshes_is_explained() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("farm.ron");
    store::save(&path, &farm("one"), None).unwrap();
    let lock = lock::beside(&path);
    let Taken::Ours(ours) = take(&path, me(1)) else { panic!("the lock was free") };
    let file = fs::OpenOptions::new().write(true).open(&lock).unwrap();
    file.set_modified(SystemTime::now() - Duration::from_secs(450)).unwrap();
    let Taken::Theirs(other) = take(&path, Holder { host: "house-pc".to_owned(), ..me(2) }) else {
        panic!("two have it")
    };
    assert!(other.stale.as_ref().unwrap().starts_with("no sign of it for 7 minutes"), "{other:?}");
    assert_eq!(ours.refresh().unwrap(), None);
    let Taken::Theirs(other) = take(&path, me(2)) else { panic!("two have it") };
    assert_eq!(other.stale, None);
    drop(ours);
    // A lock without sense is someone's all the same.
    fs::write(&lock, "what is this").unwrap();
    let Taken::Theirs(other) = take(&path, me(2)) else { panic!("two have it") };
    assert_eq!((other.words(), other.holder), ("someone has this farm open".to_owned(), None));
}

#[cfg(target_os = "linux")]
#[test]
fn a_lock_of_a_process_that_has_ended_is_stale_at_once() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("farm.ron");
    let mut child = std::process::Command::new("true").spawn().unwrap();
    // Ended, but nobody asked about it yet.
    std::mem::forget(Lock::take_over(&path, Holder { process: child.id(), ..me(1) }).unwrap());
    let began = std::time::Instant::now();
    while lock::other(&path, "barn-pc").unwrap().stale.is_none() {
        assert!(began.elapsed() < Duration::from_mins(1), "a zombie counts as gone");
        std::thread::sleep(Duration::from_millis(5));
    }
    child.wait().unwrap();
    drop(Lock::take_over(&path, me(1)).unwrap());
    // Left behind by a process that has ended.
    std::mem::forget(Lock::take_over(&path, Holder { process: child.id(), ..me(1) }).unwrap());
    let Taken::Theirs(other) = take(&path, me(2)) else { panic!("it is there") };
    assert!(other.stale.as_ref().unwrap().starts_with("its process has ended"), "{other:?}");
    // On another machine the number says nothing.
    assert_eq!(lock::other(&path, "house-pc").unwrap().stale, None);
}

#[test]
fn nothing_of_a_save_is_found_where_it_does_not_belong() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("farm.ron");
    // A part of a save that was ended two hours ago, one of a save that runs, and one of another program.
    let old: PathBuf = folder.path().join(".tankard-Old123.part");
    for name in [".tankard-Old123.part", ".tankard-New123.part", "other.part"] {
        fs::write(folder.path().join(name), "half").unwrap();
    }
    let file = fs::OpenOptions::new().write(true).open(&old).unwrap();
    file.set_modified(SystemTime::now() - Duration::from_hours(2)).unwrap();
    store::save(&path, &farm("one"), None).unwrap();
    assert_eq!(names(folder.path()), [".tankard-New123.part", "farm.ron", "other.part"]);
    assert_eq!(readable(folder.path()), ["one"]);
}
