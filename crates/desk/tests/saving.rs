//! Saving as a person meets it: backups, unsaved work of runs that crashed, two windows on one farm, a file that something else
//! changed, and a large farm that is saved while work goes on.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use std::fs;
use std::path::PathBuf;
use std::time::{Duration, Instant};

use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use jiff::civil::date;
use tankard::app::Desk;
use tankard::command::{Command, View};
use tankard::document::Document;
use tankard::files::Purpose;
use tankard::recent::Remembered;
use tankard_core::farm::{Farm, Field, Record};
use tankard_core::quantity::AsTyped;
use tankard_file::{backups, lock, side, store};

type Window = Harness<'static, Desk>;

fn farm(name: &str) -> Farm {
    let mut farm = Farm::new(name);
    for (id, name) in [("mill", "Mill field"), ("brook", "Brook field")] {
        farm.fields.insert(id.to_owned(), Field::new(name, AsTyped::parse("74.6 ac").unwrap()));
    }
    farm
}

/// A folder with a farm, and one in which the desk remembers things.
struct Place {
    folder: tempfile::TempDir,
    data: tempfile::TempDir,
}

impl Place {
    fn with(farm: &Farm) -> Self {
        let place = Self { folder: tempfile::tempdir().unwrap(), data: tempfile::tempdir().unwrap() };
        store::save(&place.farm(), farm, None).unwrap();
        place
    }

    fn farm(&self) -> PathBuf {
        self.folder.path().join("farm.ron")
    }

    fn names(&self) -> Vec<String> {
        let mut names: Vec<_> = fs::read_dir(self.folder.path())
            .unwrap()
            .map(|entry| entry.unwrap().file_name().into_string().unwrap())
            .collect();
        names.sort();
        names
    }

    /// A desk that remembers and keeps unsaved work at once.
    fn desk(&self) -> Desk {
        let remembered = Remembered { folder: Some(self.data.path().to_owned()), ..Remembered::default() };
        let document = Document::open(self.farm()).unwrap();
        Desk::new(document, common::evening).keep_every(Duration::ZERO).remember(remembered)
    }

    /// The same, which looks at the disk in every frame.
    fn watching(&self) -> Window {
        shown(self.desk().watch_every(Duration::ZERO))
    }

    fn open(&self) -> Window {
        shown(self.desk())
    }

    fn on_disk(&self) -> Farm {
        store::open(&self.farm()).unwrap().0
    }
}

fn shown(mut desk: Desk) -> Window {
    desk.view = View::Fields;
    let mut harness = common::window(desk, [1366.0, 768.0]);
    harness.run_steps(3);
    harness
}

fn rename(harness: &mut Window, name: &str) {
    let name = name.to_owned();
    harness.state_mut().document.edit(|farm| farm.name = name);
    harness.run_steps(3);
}

fn run(harness: &mut Window, command: Command) {
    let ctx = harness.ctx.clone();
    harness.state_mut().run(command, &ctx);
    harness.run_steps(3);
}

fn click(harness: &mut Window, words: &str) {
    harness.get_by_role_and_label(egui::accesskit::Role::Button, words).click();
    harness.run_steps(3);
}

fn says(harness: &Window, words: &str) -> bool {
    harness.query_all_by_label_contains(words).count() > 0
}

/// A run ends without an answer to anything.
fn crash(harness: Window) {
    drop(harness);
}

#[test]
fn work_of_several_crashes_is_offered_with_when_and_what_differs() {
    let place = Place::with(&farm("Saved"));
    let mut harness = place.open();
    rename(&mut harness, "First run");
    // Undone to what is saved, nothing is left to offer.
    run(&mut harness, Command::Undo);
    assert_eq!(place.names(), ["farm.ron", "farm.ron.lock"]);
    run(&mut harness, Command::Redo);
    crash(harness);
    let mut harness = place.open();
    assert!(says(&harness, "Work from an earlier run was found that was never saved, kept 11 June 2031, 20:14"));
    harness.get_by_label("What it has otherwise than what is open:");
    harness.get_by_label("of the farm itself: the name");
    // It is not answered, and this run crashes too: its work stands beside the other.
    harness.state_mut().document.edit(|farm| drop(farm.fields.shift_remove("brook")));
    harness.run_steps(3);
    crash(harness);
    assert_eq!(place.names(), ["farm.ron", "farm.ron.unsaved", "farm.ron.unsaved-2"]);
    let mut harness = place.open();
    assert!(says(&harness, "1 more to look at after this"));
    let offers = |harness: &Window| says(harness, "Work from an earlier run");
    // Both are of one minute here, so either may come first.
    let is_first_name = says(&harness, "of the farm itself: the name");
    click(&mut harness, "Drop it");
    assert_eq!(says(&harness, "1 field gone: Brook field"), is_first_name);
    click(&mut harness, "Take it up");
    assert!(!offers(&harness));
    let document = &harness.state().document;
    assert!(document.is_unsaved());
    assert_eq!(document.farm().fields.len(), if is_first_name { 1 } else { 2 });
    // It stays kept until it is saved, and one step of undo comes back to what was open.
    assert_eq!(place.names().iter().filter(|name| name.contains("unsaved")).count(), 1);
    run(&mut harness, Command::Undo);
    assert_eq!(*harness.state().document.farm(), farm("Saved"));
    run(&mut harness, Command::Redo);
    run(&mut harness, Command::Save);
    assert_eq!(place.names(), ["farm backups", "farm.ron", "farm.ron.lock"]);
    assert_eq!(place.on_disk(), *harness.state().document.farm());
}

#[test]
fn work_that_was_saved_since_is_not_offered_and_a_file_saved_elsewhere_is_told() {
    let place = Place::with(&farm("Saved"));
    let stamp = store::open(&place.farm()).unwrap().1;
    let first = side::beside(&place.farm());
    let head = side::Head { begun_from: Some(stamp), at: None };
    side::keep(&first, &farm("Saved"), head).unwrap();
    drop(place.open());
    assert!(!first.exists(), "what is in the file already is dropped");
    side::keep(&first, &farm("Kept"), head).unwrap();
    store::save(&place.farm(), &farm("Saved on the other machine"), None).unwrap();
    let harness = place.open();
    assert!(says(&harness, "never saved; the file has been saved since, from elsewhere"));
    assert!(first.exists());
}

#[test]
fn that_unsaved_work_cannot_be_kept_is_said_once_and_tried_again() {
    let place = Place::with(&farm("Saved"));
    // Neither beside the farm nor where the desk remembers things.
    let first = side::beside(&place.farm());
    let taken: Vec<PathBuf> = (1..=20)
        .map(|run| if run == 1 { first.clone() } else { PathBuf::from(format!("{}-{run}", first.display())) })
        .collect();
    for side in &taken {
        fs::create_dir(side).unwrap();
    }
    fs::write(place.data.path().join("unsaved"), "in the way").unwrap();
    let mut harness = place.open();
    rename(&mut harness, "Only in memory");
    assert!(says(&harness, "Unsaved work is only in memory: "));
    click(&mut harness, "Close this line");
    assert!(!says(&harness, "Unsaved work is only in memory: "));
    for side in &taken {
        fs::remove_dir(side).unwrap();
    }
    harness.run_steps(3);
    assert_eq!(side::find(&first).unwrap().farm.name, "Only in memory");
    drop(harness);
    side::drop(&first);
    // Where nothing can be put beside the farm it is kept where the desk remembers things, and found there.
    for side in &taken {
        fs::create_dir(side).unwrap();
    }
    fs::remove_file(place.data.path().join("unsaved")).unwrap();
    let mut harness = place.open();
    rename(&mut harness, "Far away");
    drop(harness);
    assert!(says(&place.open(), "Work from an earlier run"));
}

#[test]
fn a_save_that_fails_says_what_to_do_and_that_nothing_is_lost() {
    let place = Place::with(&farm("Saved"));
    let mut harness = place.open();
    rename(&mut harness, "Mine");
    let nowhere = place.folder.path().join("stick").join("farm.ron");
    harness.state_mut().ask_path(Purpose::SaveFarm, nowhere);
    harness.run_steps(3);
    click(&mut harness, "Save");
    assert!(says(&harness, "put the stick or the share back that it is on, or save under another name"));
    assert!(says(&harness, "Nothing is lost: your work is open here and kept in "));
    assert!(harness.state().document.is_unsaved());
    assert_eq!(side::find(&side::beside(&place.farm())).unwrap().farm.name, "Mine");
    assert_eq!(harness.state().document.path(), Some(&place.farm()));
}

#[test]
fn a_backup_is_looked_at_restored_and_undone() {
    let place = Place::with(&farm("First"));
    for theme in [egui::Theme::Light, egui::Theme::Dark] {
        let mut harness = place.open();
        harness.ctx.set_theme(theme);
        rename(&mut harness, "Second");
        harness.state_mut().document.edit(|farm| drop(farm.fields.shift_remove("brook")));
        run(&mut harness, Command::Save);
        let saved = fs::read(place.farm()).unwrap();
        run(&mut harness, Command::Backups);
        assert!(says(&harness, "backup of 11 June 2031, 20:14:00, "));
        assert!(says(&harness, "The farm as it was before the save of 11 June 2031, 20:14:00"));
        harness.get_by_label("1 field added: Brook field");
        harness.get_by_label("of the farm itself: the name");
        click(&mut harness, "Restore this backup");
        assert_eq!(*harness.state().document.farm(), farm("First"));
        assert!(harness.state().document.is_unsaved());
        assert!(fs::read(place.farm()).unwrap() == saved, "the file stays as it is until it is saved");
        run(&mut harness, Command::Undo);
        assert_eq!(harness.state().document.farm().name, "Second");
        run(&mut harness, Command::Redo);
        run(&mut harness, Command::Save);
        assert_eq!(place.on_disk(), farm("First"));
    }
    // Two backups, and one that somebody spoilt, which is told and cannot be restored.
    let spoilt = &backups::list(&place.farm(), None)[0].path;
    fs::write(spoilt, "Farm(").unwrap();
    let mut harness = place.open();
    run(&mut harness, Command::Backups);
    assert!(says(&harness, "It cannot be read: line "));
    assert!(harness.query_by_label("Restore this backup").is_none());
    common::type_over(&mut harness, "how many of the latest backups stay", "3");
    harness.key_press(egui::Key::Tab);
    harness.run_steps(3);
    let kept = fs::read_to_string(place.data.path().join("desk.ron")).unwrap();
    assert!(kept.contains("backups:Some((3,90))"), "{kept}");
    click(&mut harness, "Back to the farm");
    assert!(harness.query_by_label("Backups").is_none());
}

#[test]
fn a_farm_that_was_never_saved_has_no_backups_and_says_so() {
    let mut harness = shown(Desk::new(Document::copy(farm("New")), common::evening));
    run(&mut harness, Command::Backups);
    assert!(says(&harness, "This farm was never saved."));
    run(&mut harness, Command::Go(View::Shed));
    assert!(!says(&harness, "This farm was never saved."));
}

#[test]
fn two_windows_notice_each_other_and_one_takes_over() {
    let place = Place::with(&farm("Saved"));
    let mut first = place.watching();
    let mut second = place.watching();
    assert!(says(&second, "has this farm open; here it is open for reading"));
    second.get_by_label("for reading");
    rename(&mut second, "By the second");
    run(&mut second, Command::Save);
    assert!(says(&second, "The farm was not saved: "));
    assert_eq!(place.on_disk().name, "Saved");
    // What the second one types is not kept where the first one's is looked for.
    assert!(!side::beside(&place.farm()).exists());
    click(&mut second, "Keep reading");
    assert!(!says(&second, "here it is open for reading"));
    run(&mut second, Command::Save);
    click(&mut second, "Take it over");
    assert!(says(&second, "The farm is yours to save now"));
    first.run_steps(3);
    assert!(says(&first, "The farm was taken over: "));
    run(&mut second, Command::Save);
    assert_eq!(place.on_disk().name, "By the second");
    rename(&mut first, "By the first");
    run(&mut first, Command::Save);
    assert_eq!(place.on_disk().name, "By the second");
    // When the second one closes, the first one may save again; that the file was changed is asked about then.
    drop(second);
    first.run_steps(3);
    assert!(says(&first, "The farm is yours to save now"));
    run(&mut first, Command::Save);
    assert!(says(&first, "was changed by something else since it was opened"));
    drop(first);
    assert!(!lock::beside(&place.farm()).exists());
}

#[test]
fn who_reads_sees_what_was_saved_meanwhile_once_the_farm_is_free() {
    let place = Place::with(&farm("Saved"));
    let mut first = place.watching();
    let mut second = place.watching();
    rename(&mut first, "Saved by the first");
    run(&mut first, Command::Save);
    second.run_steps(3);
    assert!(says(&second, "The file was changed by something else since it was opened"));
    drop(first);
    second.run_steps(3);
    assert_eq!(second.state().document.farm().name, "Saved by the first");
    rename(&mut second, "Saved by the second");
    run(&mut second, Command::Save);
    assert_eq!(place.on_disk().name, "Saved by the second");
}

#[test]
fn a_lock_left_by_a_crash_is_explained_and_taken_over() {
    let place = Place::with(&farm("Saved"));
    let text = "Tankard has the farm of this name open.\nuser: ann\nhost: barn-pc\nprocess: 77\nsince: 2031-06-11T07:00:00\n\
                window: 1\n";
    fs::write(lock::beside(&place.farm()), text).unwrap();
    let file = fs::OpenOptions::new().write(true).open(lock::beside(&place.farm())).unwrap();
    file.set_modified(std::time::SystemTime::now() - Duration::from_secs(630)).unwrap();
    let mut harness = place.open();
    let words = "ann on barn-pc (process 77) since 11 June 2031, 07:00 had this farm open and did not close it: no sign of it for 10 minutes";
    assert!(says(&harness, words));
    click(&mut harness, "Take it over");
    rename(&mut harness, "Mine");
    run(&mut harness, Command::Save);
    assert_eq!(place.on_disk().name, "Mine");
}

/// The farm is open with work in it, and another program writes the file.
fn changed_meanwhile(place: &Place) -> Window {
    let mut harness = place.open();
    rename(&mut harness, "Mine");
    let mut theirs = farm("Theirs");
    theirs.records.insert("r".to_owned(), Record::new("Corn", date(2031, 6, 1)));
    store::save(&place.farm(), &theirs, None).unwrap();
    run(&mut harness, Command::Save);
    assert!(says(&harness, "was changed by something else since it was opened"));
    harness.get_by_label("What mine has otherwise than theirs:");
    harness.get_by_label("1 record gone: Corn (1 June 2031)");
    assert_eq!(place.on_disk().name, "Theirs");
    harness
}

#[test]
fn a_change_by_another_program_is_asked_about_before_it_is_written_over() {
    let place = Place::with(&farm("Saved"));
    let mut harness = changed_meanwhile(&place);
    click(&mut harness, "Cancel");
    assert!(harness.query_by_label("Keep mine").is_none());
    assert_eq!(place.on_disk().name, "Theirs");
    run(&mut harness, Command::Save);
    click(&mut harness, "Keep mine");
    assert_eq!(place.on_disk().name, "Mine");
    let backups = backups::list(&place.farm(), None);
    assert_eq!(store::open(&backups[0].path).unwrap().0.name, "Theirs", "theirs is in the backups");

    let place = Place::with(&farm("Saved"));
    let mut harness = changed_meanwhile(&place);
    click(&mut harness, "Take theirs");
    assert_eq!(harness.state().document.farm().name, "Theirs");
    assert!(!harness.state().document.is_unsaved());
    run(&mut harness, Command::Undo);
    assert_eq!(harness.state().document.farm().name, "Mine");
    // What is on disk is known now, so this is no conflict any more.
    run(&mut harness, Command::Save);
    assert_eq!(place.on_disk().name, "Mine");

    let place = Place::with(&farm("Saved"));
    let mut harness = changed_meanwhile(&place);
    click(&mut harness, "Save mine as another file…");
    let other = place.folder.path().join("farm mine.ron");
    harness.state_mut().ask_path(Purpose::SaveFarm, other.clone());
    harness.run_steps(3);
    click(&mut harness, "Save");
    assert_eq!((place.on_disk().name.as_str(), store::open(&other).unwrap().0.name.as_str()), ("Theirs", "Mine"));
    assert_eq!(place.names(), ["farm mine.ron", "farm mine.ron.lock", "farm.ron"]);

    // Over a farm that someone has open nothing is saved without saying so.
    let other = place.open();
    harness.state_mut().ask_path(Purpose::SaveFarm, place.farm());
    harness.run_steps(3);
    click(&mut harness, "Save");
    assert!(says(&harness, "exists, and ") && says(&harness, " has this farm open"));
    drop(other);
}

#[test]
fn a_file_that_does_not_read_any_more_or_is_gone_is_asked_about_too() {
    let place = Place::with(&farm("Saved"));
    let mut harness = place.open();
    rename(&mut harness, "Mine");
    fs::write(place.farm(), "Farm(").unwrap();
    run(&mut harness, Command::Save);
    assert!(says(&harness, "was changed by something else and does not read: line "));
    click(&mut harness, "Keep mine");
    assert_eq!(place.on_disk().name, "Mine");
    rename(&mut harness, "Mine again");
    fs::remove_file(place.farm()).unwrap();
    run(&mut harness, Command::Save);
    assert!(says(&harness, "is not there any more: moved, removed, or on a stick or share that was taken away"));
    assert!(!place.farm().exists());
    click(&mut harness, "Save it there again");
    assert_eq!(place.on_disk().name, "Mine again");
}

#[test]
fn of_a_file_that_does_not_read_the_latest_copy_is_offered() {
    let place = Place::with(&farm("First"));
    let mut harness = place.open();
    rename(&mut harness, "Second");
    run(&mut harness, Command::Save);
    drop(harness);
    fs::write(place.farm(), "Farm(\n    format: 1,\n    na").unwrap();
    let remembered = Remembered { folder: Some(place.data.path().to_owned()), ..Remembered::default() };
    let mut harness = shown(Desk::new(Document::copy(farm("New")), common::evening).remember(remembered));
    run(&mut harness, Command::OpenPath(place.farm()));
    assert!(says(&harness, "The farm was not opened: line "));
    click(&mut harness, "Open the backup of 11 June 2031, 20:14");
    assert_eq!(harness.state().document.farm().name, "First");
    assert!(harness.state().document.is_unsaved());
    assert!(fs::read_to_string(place.farm()).unwrap().ends_with("na"), "the file stays as it is");
    run(&mut harness, Command::Save);
    assert_eq!(place.on_disk().name, "First");
}

#[test]
fn a_large_farm_is_saved_while_work_goes_on_and_closing_waits_for_it() {
    let mut large = farm("Large");
    for number in 0..4000 {
        large.records.insert(format!("r{number}"), Record::new(&format!("Record {number}"), date(2031, 6, 1)));
    }
    let place = Place::with(&large);
    let mut harness = shown(place.desk().patience(Duration::ZERO).keep_every(Duration::from_mins(5)));
    rename(&mut harness, "To be saved");
    let ctx = harness.ctx.clone();
    let began = Instant::now();
    harness.state_mut().run(Command::Save, &ctx);
    let asked = began.elapsed();
    harness.step();
    harness.get_by_label("saving…");
    // What is typed meanwhile is not lost, and not called saved.
    harness.state_mut().document.edit(|farm| farm.name = "Typed meanwhile".to_owned());
    harness.state_mut().run(Command::Quit, &ctx);
    harness.step();
    let done = |harness: &mut Window, word: &str| {
        let began = Instant::now();
        while says(harness, word) {
            assert!(began.elapsed() < Duration::from_mins(2), "it is never done");
            std::thread::sleep(Duration::from_millis(20));
            harness.step();
        }
    };
    done(&mut harness, "saving…");
    assert_eq!(place.on_disk().name, "To be saved");
    assert!(harness.state().document.is_unsaved());
    assert!(says(&harness, "Typed meanwhile holds work that is not saved"), "closing asks about what was typed since");
    // The question has its place from the next frame on.
    harness.run_steps(2);
    click(&mut harness, "Save it");
    let mut is_closed = false;
    let began = Instant::now();
    while !is_closed && began.elapsed() < Duration::from_mins(2) {
        std::thread::sleep(Duration::from_millis(20));
        harness.step();
        let viewport = &harness.output().viewport_output[&egui::ViewportId::ROOT];
        is_closed = viewport.commands.contains(&egui::ViewportCommand::Close);
    }
    let document = &harness.state().document;
    assert!(is_closed, "{} is on disk, unsaved: {}", place.on_disk().name, document.is_unsaved());
    assert_eq!(place.on_disk().name, "Typed meanwhile");
    assert_eq!(place.on_disk().records.len(), 4000);
    println!("asking for the save took {} ms", asked.as_millis());
}
