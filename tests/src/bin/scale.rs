//! How long things take as a farm grows: `cargo run --release -p tankard-tests --bin scale [FIELDS:RECORDS …]`.
//!
//! It is no bench, since those of this package pull in the desk and its typesetting, which takes an hour to optimise; this one needs
//! core and file alone. Times are the best of several runs by the clock, and the mean of what the
//! processors spent, which other work on the machine hardly touches.

use std::error::Error;
use std::fs;
use std::hint::black_box;
use std::path::Path;
use std::process::Command;
use std::time::{Duration, Instant};

use jiff::civil::date;
use tankard_core::farm::Farm;
use tankard_core::plan::{plan, plan_of};
use tankard_core::quantity::AsTyped;
use tankard_core::season::review::{Choice, Index};
use tankard_core::season::{Log, find};
use tankard_core::stock::Accounts;
use tankard_file::backups::{Backups, Keep};
use tankard_file::store::{self, Save};
use tankard_tests::large::{self, OPEN, Size};

/// What a run took: by the clock, and of the processors, all threads together.
#[derive(Clone, Copy)]
struct Took {
    clock: Duration,
    processors: Duration,
}

/// What the processors spent on this thread, to the nanosecond, and on the whole process, in hundredths of a second.
fn spent() -> (Duration, Duration) {
    let own = fs::read_to_string("/proc/thread-self/schedstat").unwrap_or_default();
    let own = own.split_whitespace().next().and_then(|number| number.parse().ok()).unwrap_or(0);
    let all = fs::read_to_string("/proc/self/stat").unwrap_or_default();
    // User and system time are the 14th and 15th field; the name, the second, may hold blanks.
    let fields = all.rsplit_once(')').map(|(_, fields)| fields).unwrap_or_default().split_whitespace().skip(11).take(2);
    let ticks: u64 = fields.filter_map(|number| number.parse::<u64>().ok()).sum();
    (Duration::from_nanos(own), Duration::from_millis(10 * ticks))
}

fn took<T>(run: impl FnOnce() -> T) -> (Took, T) {
    let (begun, before) = (Instant::now(), spent());
    let value = run();
    let (clock, now) = (begun.elapsed(), spent());
    let (own, all) = (now.0.saturating_sub(before.0), now.1.saturating_sub(before.1));
    (Took { clock, processors: own.max(all) }, value)
}

/// Of so many runs the best by the clock, and the mean of the processors, whose account is kept some milliseconds at a time.
fn best<T>(runs: u32, mut run: impl FnMut() -> T) -> Took {
    let mut clock = Duration::MAX;
    let (all, ()) = took(|| {
        for _ in 0..runs {
            let begun = Instant::now();
            let value = black_box(run());
            clock = clock.min(begun.elapsed());
            drop(value);
        }
    });
    Took { clock, processors: all.processors / runs }
}

fn say(what: &str, took: Took) {
    let [clock, processors] = [took.clock, took.processors].map(|time| time.as_secs_f64() * 1000.0);
    println!("  {what:<58} {clock:>9.2} ms {processors:>9.2} ms of processors");
}

/// Resident memory and the most of it, in MB.
fn memory() -> String {
    let text = fs::read_to_string("/proc/self/status").unwrap_or_default();
    let of = |name: &str| {
        let line = text.lines().find(|line| line.starts_with(name)).unwrap_or_default();
        let kilobytes: f64 = line.split_whitespace().nth(1).and_then(|number| number.parse().ok()).unwrap_or(f64::NAN);
        format!("{:.0} MB", kilobytes / 1024.0)
    };
    format!("{} resident, {} at most", of("VmRSS:"), of("VmHWM:"))
}

/// In a process of its own, so that nothing but the farm is in memory.
fn open_alone(path: &Path) -> Result<(), Box<dyn Error>> {
    let (time, opened) = took(|| store::open(path));
    let (farm, _) = opened?;
    say("open, cold", time);
    println!("  {:<58} {}", "memory after opening", memory());
    let (time, _) = took(|| plan_of(&farm, &Log::of(&farm), OPEN));
    say("first plan, with the look-up", time);
    println!("  {:<58} {}", "memory with a plan", memory());
    Ok(())
}

/// A letter typed in a rate box.
fn type_a_letter(farm: &mut Farm, step: u32) {
    let rate = AsTyped::parse(&format!("{}.{} fl oz/ac", 20 + step % 3, step % 10));
    if let (Some(line), Ok(rate)) = (farm.passes.get_mut(OPEN).and_then(|pass| pass.mix.first_mut()), rate) {
        line.rate = rate;
    }
}

fn one_size(fields: u32, records: u32) -> Result<(), Box<dyn Error>> {
    let products = (fields / 10).clamp(20, 500);
    let seasons = i16::try_from((records / 2_000).clamp(2, 20))?;
    let size = Size { fields, records, products, seasons, passes: 200.min(records), cards: 200, ..Size::default() };
    let mut farm = large::farm(&tankard_tests::demo()?, size).map_err(|wrong| format!("{wrong:?}"))?;
    let folder = tempfile::tempdir()?;
    let path = folder.path().join("large.ron");
    let text = tankard_file::write(&farm)?;
    println!(
        "{fields} fields, {products} products, {seasons} seasons, {records} records: {} MB",
        text.len() / 1_000_000
    );
    fs::write(&path, &text)?;
    let alone = Command::new(std::env::current_exe()?).arg("--open").arg(&path).output()?;
    print!("{}{}", String::from_utf8_lossy(&alone.stdout), String::from_utf8_lossy(&alone.stderr));
    say("read, warm", best(3, || tankard_file::read(text.as_bytes()).map(|farm| farm.records.len())));
    say("write", best(3, || tankard_file::write(&farm).map(|text| text.len())));
    drop(text);
    let backups = Backups { keep: Keep { latest: 2, days: 0 }, now: date(2031, 6, 12).at(12, 0, 0, 0), spare: None };
    let mut count = 0;
    let save = best(3, || {
        count += 1;
        farm.name = count.to_string();
        Save { path: &path, farm: &farm, stamp: None, backups: Some(&backups) }.run().is_ok()
    });
    say("save with a backup, on its thread", save);
    say("look up by field and pass", best(10, || Log::of(&farm)));
    let log = Log::of(&farm);
    say("plan, looked up before", best(20, || plan_of(&farm, &log, OPEN)));
    say("plan, with the look-up", best(10, || plan(&farm, OPEN)));
    let (mut step, mut known) = (0, log.clone());
    let letter = best(20, || {
        step += 1;
        type_a_letter(&mut farm, step);
        known.catch_up(&farm);
        plan_of(&farm, &known, OPEN)
    });
    say("a letter in a rate box, to the plan", letter);
    let letter = best(20, || {
        if let Some((_, record)) = farm.records.last_mut() {
            record.note = format!("{}.", record.note).into();
        }
        known.catch_up(&farm);
        plan_of(&farm, &known, OPEN)
    });
    say("a letter in a record's note, to the plan of a pass", letter);
    say("accounts of the shed", best(5, || Accounts::of_all(&farm, &log)));
    say("lay out for the review", best(5, || Index::of(&farm)));
    let index = Index::of(&farm);
    say("filter by a season", best(10, || index.pick(&Choice::season(2031)).records()));
    let texts: Vec<String> = farm.records.values().map(find::text).collect();
    let words = find::words("corn glyph");
    say(
        "find, each letter after the first",
        best(10, || texts.iter().filter(|text| find::holds(text, &words)).count()),
    );
    drop((index, texts));
    let mut points: Vec<Farm> = Vec::new();
    say("copy of the farm for undo or saving", best(5, || points.push(farm.clone())));
    let record = best(5, || {
        points.push(farm.clone());
        if let Some((_, record)) = farm.records.last_mut() {
            record.note = format!("{}.", record.note).into();
        }
    });
    say("such a copy, and then an edit of a record", record);
    Ok(())
}

fn main() -> Result<(), Box<dyn Error>> {
    let asked: Vec<String> = std::env::args().skip(1).collect();
    if let [open, path] = asked.as_slice()
        && open == "--open"
    {
        return open_alone(Path::new(path));
    }
    let sizes =
        if asked.is_empty() { vec!["100:1000".into(), "1000:10000".into(), "5000:100000".into()] } else { asked };
    for size in sizes {
        let (fields, records) = size.split_once(':').ok_or("write a size as FIELDS:RECORDS, such as 1000:10000")?;
        one_size(fields.parse()?, records.parse()?)?;
    }
    Ok(())
}
