//! A saving process that is ended at any moment: what it had confirmed is on disk, in the file or in the copy that the next
//! start offers.
//!
//! The long form ends 2,000 saves: `TANKARD_KILLS=2000 cargo test -p tankard-file --test kills -- --nocapture`

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use std::env;
use std::fs::{self, File};
use std::io::{self, BufRead, BufReader, ErrorKind, Read, Write};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::thread;
use std::time::{Duration, Instant};

use jiff::civil::date;
use tankard_core::farm::{Farm, Field};
use tankard_core::quantity::AsTyped;
use tankard_file::backups::{self, Backups, Keep};
use tankard_file::put::Step;
use tankard_file::side::{self, Head};
use tankard_file::store::{self, Save};

/// Where the child saves; without it the child's test does nothing.
const FOLDER: &str = "TANKARD_KILLS_IN";
/// The step before which the child ends itself; none where it is killed from outside.
const STOP_AT: &str = "TANKARD_KILLS_STOP_AT";
/// Whether names cannot be replaced, as on some shares.
const NO_RENAME: &str = "TANKARD_KILLS_NO_RENAME";
/// How many kills there are.
const KILLS: &str = "TANKARD_KILLS";

/// A farm whose state is a number, large enough to be written in several steps.
fn farm(state: u32) -> Farm {
    let mut farm = Farm::new(&state.to_string());
    for number in 0..250 {
        let field = Field::new(&format!("Field {number} of {state}"), AsTyped::parse("74.6 ac").unwrap());
        farm.fields.insert(format!("field-{number}"), field);
    }
    farm
}

/// The state of a farm, which must be whole.
fn state(farm: &Farm) -> u32 {
    let state = farm.name.parse().unwrap();
    assert!(*farm == self::farm(state), "a mixture that reads as {state}");
    state
}

/// Not a test of its own: what the tests below start, and end.
#[test]
fn child_that_saves() {
    let Ok(folder) = env::var(FOLDER) else { return };
    let path = Path::new(&folder).join("farm.ron");
    let stop_at: Option<usize> = env::var(STOP_AT).ok().map(|step| step.parse().unwrap());
    let is_without_rename = env::var(NO_RENAME).is_ok();
    let (mut last, mut stamp) = match store::open(&path) {
        Ok((farm, stamp)) => (state(&farm), Some(stamp)),
        Err(_) => (0, None),
    };
    let mut done = 0;
    let noon = date(2031, 6, 12).at(12, 0, 0, 0);
    for _ in 0..200 {
        let next = last + 1;
        let backups = Backups { keep: Keep { latest: 3, days: 0 }, now: noon, spare: None };
        // What is not saved is kept first, as the desk does it.
        side::keep(&side::beside(&path), &farm(next), Head { begun_from: stamp, at: Some(noon) }).unwrap();
        let save = Save { path: &path, farm: &farm(next), stamp, backups: Some(&backups) };
        let saved = save.run_watched(&mut |step| {
            if stop_at == Some(done) {
                std::process::abort();
            }
            done += 1;
            let is_refused = is_without_rename && step == Step::Rename;
            if is_refused { Err(io::Error::from(ErrorKind::Unsupported)) } else { Ok(()) }
        });
        stamp = Some(saved.unwrap().stamp);
        // Confirmed: whoever reads this may rely on it.
        println!("saved {next}");
        io::stdout().flush().unwrap();
        last = next;
        if stop_at.is_some() {
            println!("steps {done}");
            return;
        }
    }
}

fn child(folder: &Path, more: &[(&str, &str)]) -> Child {
    Command::new(env::current_exe().unwrap())
        .args(["--exact", "child_that_saves", "--nocapture"])
        .env(FOLDER, folder)
        .envs(more.iter().copied())
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()
        .unwrap()
}

/// What a child said, once it is ended.
#[derive(Debug, Default)]
struct Said {
    /// The last save it confirmed.
    confirmed: Option<u32>,
    /// How many steps its save had.
    steps: Option<usize>,
}

fn said(out: impl Read) -> Said {
    let mut said = Said::default();
    for line in BufReader::new(out).lines() {
        let line = line.unwrap();
        // The harness of the tests writes its own words before the first line.
        let number = |word: &str| line.split_once(word).and_then(|(_, number)| number.trim().parse::<u32>().ok());
        said.confirmed = number("saved ").or(said.confirmed);
        said.steps = number("steps ").map(|steps| steps as usize).or(said.steps);
    }
    said
}

/// Where the last confirmed save was found.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Found {
    /// The file is as it was confirmed.
    File,
    /// The file holds the save after, which was in place but not confirmed yet.
    After,
    /// The file is broken; the copy beside it and the backup are whole.
    Copy,
}

/// The file, or where that had to be written in place its copy, holds the last confirmed save or the one that was being made.
/// All else that is there is whole.
fn check(folder: &Path, confirmed: u32, is_share: bool) -> Found {
    let path = folder.join("farm.ron");
    let backups = backups::list(&path, None);
    let read = backups.iter().filter_map(|backup| store::open(&backup.path).ok());
    let whole: Vec<u32> = read.map(|(farm, _)| state(&farm)).collect();
    // One new name may hold half a backup where names cannot be replaced, not even one that is new; the file is whole then.
    assert!(whole.len() == backups.len() || is_share, "{} of {} backups read", whole.len(), backups.len());
    if let Some(kept) = side::find(&side::beside(&path)) {
        state(&kept.farm);
    }
    let found = match store::open(&path) {
        Ok((farm, _)) if state(&farm) == confirmed => Found::File,
        Ok((farm, _)) => {
            assert_eq!(state(&farm), confirmed + 1);
            Found::After
        }
        Err(store::StoreError::Io { source, .. }) if confirmed == 0 => {
            assert_eq!(source.kind(), ErrorKind::NotFound);
            Found::File
        }
        Err(error) => {
            let copy = side::half_saved(&path, None).unwrap_or_else(|| panic!("nothing is whole: {error}"));
            assert_eq!(state(&copy.farm), confirmed + 1);
            assert!(whole.contains(&confirmed), "{whole:?} without {confirmed}");
            // What the desk does when it is taken up.
            fs::copy(&copy.path, &path).unwrap();
            Found::Copy
        }
    };
    if found == Found::After {
        assert!(whole.contains(&confirmed) || confirmed == 0, "{whole:?} without {confirmed}");
    }
    found
}

/// Numbers that look like chance (`splitmix64`, Steele, Lea and Flood 2014).
fn draw(seed: &mut u64) -> u64 {
    *seed = seed.wrapping_add(0x9E37_79B9_7F4A_7C15);
    let mut z = *seed;
    z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
    z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
    z ^ (z >> 31)
}

#[test]
fn a_process_that_is_killed_while_it_saves_loses_nothing_it_confirmed() {
    let kills: u32 = env::var(KILLS).map_or(60, |kills| kills.parse().unwrap());
    let (mut seed, mut counts, mut confirmed, mut saves) = (42, [0; 3], [0; 2], 0);
    // How long a save takes here; the first one of a child begins with its start.
    let mut takes = Duration::ZERO;
    let homes = [tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap()];
    for kill in 0..kills {
        // Every fourth one where names cannot be replaced.
        let is_share = kill % 4 == 3;
        let home = &homes[usize::from(is_share)];
        let last = &mut confirmed[usize::from(is_share)];
        let mut child = child(home.path(), if is_share { &[(NO_RENAME, "1")] } else { &[] });
        let mut out = BufReader::new(child.stdout.take().unwrap());
        // After some confirmed saves, at a moment of the next.
        let wanted = 1 + draw(&mut seed) % 2;
        let mut line = String::new();
        let (mut seen, mut began) = (0, Instant::now());
        while seen < wanted && out.read_line(&mut line).unwrap() > 0 {
            if line.contains("saved ") {
                seen += 1;
                takes = began.elapsed();
                began = Instant::now();
            }
            line.clear();
        }
        thread::sleep(takes.mul_f64((draw(&mut seed) % 1000) as f64 / 1000.0));
        child.kill().unwrap();
        child.wait().unwrap();
        // What was read above are the first lines; the last one counts.
        let said = said(out);
        let known = *last + u32::try_from(seen).unwrap();
        let now = said.confirmed.unwrap_or(known);
        saves += now - *last;
        let found = check(home.path(), now, is_share);
        counts[found as usize] += 1;
        *last = if found == Found::File { now } else { now + 1 };
    }
    println!(
        "{kills} kills, {saves} confirmed saves: the file was as confirmed {} times, one save further {}, broken beside a whole \
         copy {}",
        counts[0], counts[1], counts[2]
    );
    let left: Vec<PathBuf> =
        homes.iter().flat_map(|home| fs::read_dir(home).unwrap()).map(|it| it.unwrap().path()).collect();
    println!("{} files are left behind", left.len());
    assert!(saves > kills / 4, "the children hardly came to save: {saves}");
}

/// The child ends itself before each step of a save, one after another.
#[test]
fn a_process_that_ends_before_any_step_of_a_save_loses_nothing_it_confirmed() {
    for more in [&[][..], &[(NO_RENAME, "1")]] {
        let (mut all, mut counts) = (usize::MAX, [0; 3]);
        let mut at = 0;
        while at < all {
            let home = tempfile::tempdir().unwrap();
            let path = home.path().join("farm.ron");
            store::save(&path, &farm(7), None).unwrap();
            let step = at.to_string();
            let all_more: Vec<(&str, &str)> = more.iter().copied().chain([(STOP_AT, step.as_str())]).collect();
            let mut child = child(home.path(), &all_more);
            let said = said(child.stdout.take().unwrap());
            child.wait().unwrap();
            all = said.steps.unwrap_or(all);
            counts[check(home.path(), said.confirmed.unwrap_or(7), !more.is_empty()) as usize] += 1;
            // Work that was not confirmed is in the side file.
            assert_eq!(side::find(&side::beside(&path)).map(|kept| state(&kept.farm)), Some(8));
            at += 1;
        }
        println!(
            "{all} steps: as confirmed {}, one further {}, beside a whole copy {}",
            counts[0], counts[1], counts[2]
        );
        assert!(all > 10, "{all}");
        assert_eq!(counts[2] > 0, !more.is_empty(), "only a file that is written in place breaks: {counts:?}");
    }
}

/// A line for the state of a file that no step stands for: half of it, as a machine without power leaves it.
#[test]
fn a_file_cut_anywhere_is_told_and_its_backup_reads() {
    let home = tempfile::tempdir().unwrap();
    let path = home.path().join("farm.ron");
    let stamp = store::save(&path, &farm(1), None).unwrap();
    let backups = Backups { keep: Keep::default(), now: date(2031, 6, 12).at(12, 0, 0, 0), spare: None };
    Save { path: &path, farm: &farm(2), stamp: Some(stamp), backups: Some(&backups) }.run().unwrap();
    let whole = fs::read(&path).unwrap();
    for part in [0, 1, whole.len() / 3, whole.len() - 3] {
        File::create(&path).unwrap().write_all(&whole[..part]).unwrap();
        let says = store::open(&path).unwrap_err().to_string();
        assert!(says.contains("line ") || says.contains("the file is empty; take a backup"), "{says}");
        let latest = &backups::list(&path, None)[0];
        assert_eq!(state(&store::open(&latest.path).unwrap().0), 1);
    }
}
