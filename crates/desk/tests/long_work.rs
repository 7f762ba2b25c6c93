//! Long work as a person meets it: it is shown at the foot, can be cancelled, and never holds up the window. Each test holds the work
//! at a gate and opens that, so that nothing here goes by time.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::mpsc::{Sender, channel};
use std::sync::{Arc, Condvar, Mutex};
use std::time::{Duration, Instant};

use egui::{Key, Modifiers, ViewportCommand};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use jiff::civil::date;
use tankard::app::{Desk, Failed, Task};
use tankard::command::{Command, View};
use tankard::demo;
use tankard::document::Document;
use tankard::files::Purpose;
use tankard_core::farm::{Farm, Record};
use tankard_file::{records_csv, store};

type Window = Harness<'static, Desk>;

/// What work waits for.
#[derive(Clone, Default)]
struct Gate(Arc<(Mutex<bool>, Condvar)>);

impl Gate {
    fn wait(&self) {
        let (is_open, told) = &*self.0;
        drop(told.wait_while(is_open.lock().unwrap(), |is_open| !*is_open).unwrap());
    }

    fn set(&self, open: bool) {
        *self.0.0.lock().unwrap() = open;
        self.0.1.notify_all();
    }
}

fn farm(name: &str) -> Farm {
    let mut farm = Farm::new(name);
    farm.records.insert("first".to_owned(), Record::new("Burndown", date(2031, 5, 1)));
    farm
}

/// A window that waits for nothing and shows all work at once.
fn at_once(desk: Desk) -> Window {
    let mut desk = desk.patience(Duration::ZERO).show_work_after(Duration::ZERO);
    desk.view = View::SeasonLog;
    let mut harness = common::window(desk, [1366.0, 768.0]);
    harness.run_steps(3);
    harness
}

fn window(name: &str) -> Window {
    at_once(Desk::new(Document::copy(farm(name)), common::evening))
}

/// The same with a gate before all work.
fn gated(farm: Farm) -> (Window, Gate) {
    let gate = Gate::default();
    let own = gate.clone();
    (at_once(Desk::new(Document::copy(farm), common::evening).before_work(move || own.wait())), gate)
}

fn says(harness: &Window, words: &str) -> bool {
    harness.query_all_by_label_contains(words).count() > 0
}

/// Draws until something is so; what never is, fails.
fn until(harness: &mut Window, what: &str, is_so: impl Fn(&Window) -> bool) {
    let began = Instant::now();
    harness.step();
    while !is_so(harness) {
        assert!(began.elapsed() < Duration::from_mins(2), "never: {what}");
        std::thread::yield_now();
        harness.step();
    }
    // What came up in this frame has its place from the next one on.
    harness.run_steps(2);
}

fn until_says(harness: &mut Window, words: &str) {
    until(harness, words, |harness| says(harness, words));
}

fn run(harness: &mut Window, command: Command) {
    let ctx = harness.ctx.clone();
    harness.state_mut().run(command, &ctx);
    harness.run_steps(2);
}

fn click(harness: &mut Window, words: &str) {
    harness.get_by_role_and_label(egui::accesskit::Role::Button, words).click();
    harness.run_steps(2);
}

/// Chooses a path for a purpose, as with the path box.
fn choose(harness: &mut Window, purpose: Purpose, path: &Path, verb: &str) {
    harness.state_mut().ask_path(purpose, path.to_owned());
    harness.run_steps(2);
    click(harness, verb);
}

/// Counts stones, one for each that is handed to it.
fn count_stones(harness: &mut Window) -> Sender<usize> {
    let (sender, stones) = channel();
    harness.state_mut().start(
        Task::looks("Counting stones", "The stones were not counted").counting("stone", "stones"),
        move |going| {
            let mut count = 0;
            while let Ok(more) = stones.recv() {
                count += more;
                going.tell(count, Some(5))?;
            }
            Ok(count)
        },
        |desk, count| desk.tell(format!("There are {count} stones")),
    );
    harness.run_steps(2);
    sender
}

/// Whether the window asked to be closed in this frame.
fn is_closing(harness: &Window) -> bool {
    harness.output().viewport_output[&egui::ViewportId::ROOT].commands.contains(&ViewportCommand::Close)
}

#[test]
fn work_shows_what_it_does_and_how_far_it_is_and_its_result_comes_once() {
    for theme in [egui::Theme::Light, egui::Theme::Dark] {
        let mut harness = window("Saved");
        harness.ctx.set_theme(theme);
        let stones = count_stones(&mut harness);
        harness.get_by_label("Counting stones");
        stones.send(2).unwrap();
        until_says(&mut harness, "2 of 5 stones");
        // The desk stays usable.
        harness.state_mut().document.edit(|farm| farm.name = "Typed meanwhile".to_owned());
        drop(stones);
        until_says(&mut harness, "There are 2 stones");
        assert!(harness.query_by_label("Counting stones").is_none());
        assert_eq!(harness.state().document.farm().name, "Typed meanwhile");
        click(&mut harness, "Close this line");
        harness.run_steps(3);
        assert!(!says(&harness, "There are 2 stones"), "a result comes once");
    }
}

#[test]
fn work_that_is_soon_over_is_not_shown() {
    let mut harness = window("Saved");
    let desk = Desk::new(Document::copy(farm("Saved")), common::evening);
    *harness.state_mut() = desk.patience(Duration::ZERO).show_work_after(Duration::from_hours(1));
    let stones = count_stones(&mut harness);
    harness.run_steps(3);
    assert!(harness.query_by_label("Counting stones").is_none());
    drop(stones);
    until_says(&mut harness, "There are 0 stones");
}

#[test]
fn work_is_cancelled_by_its_button_by_escape_and_by_the_key_and_its_thread_ends() {
    for way in ["click", "escape", "key", "menu"] {
        let mut harness = window("Saved");
        let stones = count_stones(&mut harness);
        let name = "Cancel: Counting stones";
        match way {
            "click" => harness.get_by_label(name).click(),
            "escape" => {
                harness.get_by_label(name).focus();
                harness.run_steps(2);
                harness.key_press(Key::Escape);
            }
            "key" => harness.key_press_modifiers(Modifiers::COMMAND, Key::Period),
            _ => run(&mut harness, Command::CancelWork),
        }
        harness.run_steps(3);
        assert!(says(&harness, "The stones were not counted: it was cancelled"), "{way}");
        assert!(harness.query_by_label("Counting stones").is_none(), "{way}");
        // The next stone finds that nobody waits; then nobody takes any.
        let began = Instant::now();
        while stones.send(1).is_ok() {
            assert!(began.elapsed() < Duration::from_mins(2), "{way}: the thread goes on");
            std::thread::yield_now();
        }
        run(&mut harness, Command::CancelWork);
    }
}

#[test]
fn two_at_once_have_a_line_each_and_come_in_their_own_time() {
    let mut harness = window("Saved");
    let stones = count_stones(&mut harness);
    let (sheep, heard) = channel::<()>();
    harness.state_mut().start(
        Task::looks("Counting sheep", "The sheep were not counted"),
        move |_| heard.recv().map_err(Failed::of),
        |desk, ()| desk.tell("There are enough sheep"),
    );
    harness.run_steps(2);
    harness.get_by_label("Counting stones");
    harness.get_by_label("Counting sheep");
    sheep.send(()).unwrap();
    until_says(&mut harness, "There are enough sheep");
    harness.get_by_label("Counting stones");
    drop(stones);
    until_says(&mut harness, "There are 0 stones");
}

#[test]
fn an_error_is_said_and_work_that_breaks_down_is_a_message_and_no_lost_window() {
    let mut harness = window("Saved");
    harness.state_mut().start(
        Task::looks("Counting", "The stones were not counted"),
        |_| Err::<(), _>(Failed::Because("they are too many".to_owned())),
        |_, ()| {},
    );
    until_says(&mut harness, "The stones were not counted: they are too many");
    harness.state_mut().start(
        Task::looks("Counting", "The sheep were not counted"),
        |_| -> Result<(), Failed> { panic!("a wolf came") },
        |_, ()| {},
    );
    until_says(
        &mut harness,
        "The sheep were not counted: the work on it ended without an answer (a wolf came); try again",
    );
    assert_eq!(harness.state().document.farm().name, "Saved");
}

/// A folder with a farm on disk.
fn on_disk(name: &str) -> (tempfile::TempDir, PathBuf) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("other.ron");
    store::save(&path, &farm(name), None).unwrap();
    (folder, path)
}

#[test]
fn a_farm_is_read_while_the_other_is_worked_on_and_cancelling_leaves_that() {
    let (folder, path) = on_disk("Other");
    let (mut harness, gate) = gated(farm("First"));
    run(&mut harness, Command::OpenPath(path.clone()));
    harness.get_by_label("Reading other.ron");
    assert_eq!(harness.state().document.farm().name, "First");
    run(&mut harness, Command::CancelWork);
    assert!(says(&harness, "The farm was not opened: it was cancelled"));
    gate.set(true);
    harness.run_steps(5);
    assert_eq!(harness.state().document.farm().name, "First");
    // Once more, and let through.
    run(&mut harness, Command::OpenPath(path.clone()));
    until(&mut harness, "the other is open", |harness| harness.state().document.farm().name == "Other");
    assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 1, "nothing is left beside it");
    // What is typed while the next one is read is asked about before it goes.
    gate.set(false);
    run(&mut harness, Command::OpenPath(path));
    harness.state_mut().document.edit(|farm| farm.name = "Typed meanwhile".to_owned());
    gate.set(true);
    until_says(&mut harness, "Typed meanwhile holds work that is not saved");
    click(&mut harness, "Stay here");
    assert_eq!(harness.state().document.farm().name, "Typed meanwhile");
    run(&mut harness, Command::OpenDemo);
    click(&mut harness, "Let it go");
    assert_ne!(harness.state().document.farm().name, "Typed meanwhile");
}

#[test]
fn the_window_is_there_before_the_first_farm_is_read() {
    let (_folder, path) = on_disk("Other");
    let begin = |path: &Path| {
        let gate = Gate::default();
        let own = gate.clone();
        let desk = Desk::opening(path, common::evening).before_work(move || own.wait());
        let mut harness = at_once(desk);
        harness.state_mut().open_path(path);
        harness.run_steps(3);
        (harness, gate)
    };
    let (mut harness, gate) = begin(&path);
    harness.get_by_label("Reading other.ron…");
    run(&mut harness, Command::Save);
    assert!(says(&harness, "The farm is still being read; do that when it is there"));
    gate.set(true);
    until(&mut harness, "it is open", |harness| harness.state().document.farm().name == "Other");
    assert!(!says(&harness, "Reading other.ron"));
    // Given up, there is an empty farm; and so there is where the file does not read.
    let (mut harness, _gate) = begin(&path);
    run(&mut harness, Command::CancelWork);
    assert!(says(&harness, "The farm was not opened: it was cancelled"));
    assert_eq!(harness.state().document.farm().name, "New farm");
    fs::write(&path, "Farm(").unwrap();
    let (mut harness, gate) = begin(&path);
    gate.set(true);
    until_says(&mut harness, "The farm was not opened: line ");
    assert_eq!(harness.state().document.farm().name, "New farm");
    assert!(!harness.state().document.is_unsaved());
}

#[test]
fn a_cancelled_export_leaves_the_file_that_was_there_and_nothing_else() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("records.csv");
    fs::write(&path, "what was there").unwrap();
    let (mut harness, gate) = gated(farm("First"));
    choose(&mut harness, Purpose::SaveRecords, &path, "Save");
    harness.get_by_label("Writing records.csv");
    harness.get_by_label("Cancel: Writing records.csv").click();
    harness.run_steps(2);
    // It may be past the point where it can stop, so its word is waited for.
    harness.get_by_label("ending…");
    gate.set(true);
    until_says(&mut harness, "The records were not saved: it was cancelled, and no file is left of it");
    assert_eq!(fs::read_to_string(&path).unwrap(), "what was there");
    assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 1);
}

#[test]
fn an_export_is_of_the_moment_it_was_asked_for_and_says_so() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("records.csv");
    let (mut harness, gate) = gated(farm("First"));
    choose(&mut harness, Purpose::SaveRecords, &path, "Save");
    harness.state_mut().document.edit(|farm| {
        farm.records.insert("second".to_owned(), Record::new("Later", date(2031, 5, 2)));
    });
    gate.set(true);
    until_says(&mut harness, "1 record saved as");
    assert!(says(&harness, ", as the farm was when you asked for it"));
    let written = records_csv::read(&fs::read(&path).unwrap()).unwrap();
    assert_eq!(written.records.len(), 1);
    assert_eq!(written.records[0].record, farm("First").records["first"]);
}

#[test]
fn a_preview_holds_what_it_read_against_the_farm_as_it_is_then() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("records.csv");
    fs::write(&path, records_csv::write(&farm("First"), |_| true).unwrap()).unwrap();
    let (mut harness, gate) = gated(Farm::new("Empty"));
    choose(&mut harness, Purpose::ReadRecords, &path, "Read");
    harness.get_by_label("Reading records.csv");
    // The same record is typed meanwhile, so it is none that is new.
    harness.state_mut().document.edit(|own| own.records = farm("First").records);
    run(&mut harness, Command::Go(View::Shed));
    gate.set(true);
    until_says(&mut harness, "records.csv is read; look at it in Season log");
    run(&mut harness, Command::Go(View::SeasonLog));
    until_says(&mut harness, "1 record in a file of exported records, 0 of them new.");
    // Cancelled while it looks again, it can be asked to.
    gate.set(false);
    harness.state_mut().document.edit(|farm| farm.records.clear());
    harness.run_steps(2);
    harness.get_by_label("The rows are being looked at…");
    run(&mut harness, Command::CancelWork);
    gate.set(true);
    click(&mut harness, "Look at the rows again");
    until_says(&mut harness, "1 record in a file of exported records, 1 of them new.");
    click(&mut harness, "Import 1 record");
    assert_eq!(harness.state().document.farm().records, farm("First").records);
}

#[test]
fn another_farm_does_not_get_what_was_looked_at_for_the_one_before() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("records.csv");
    fs::write(&path, records_csv::write(&farm("First"), |_| true).unwrap()).unwrap();
    let (mut harness, gate) = gated(Farm::new("Empty"));
    choose(&mut harness, Purpose::ReadRecords, &path, "Read");
    run(&mut harness, Command::New);
    gate.set(true);
    harness.run_steps(5);
    assert!(!says(&harness, "records.csv"));
}

#[test]
fn a_closing_window_waits_for_a_file_that_is_written_and_not_for_one_that_is_read() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("records.csv");
    let (mut harness, gate) = gated(farm("First"));
    choose(&mut harness, Purpose::SaveRecords, &path, "Save");
    run(&mut harness, Command::Quit);
    assert!(says(
        &harness,
        "Writing records.csv goes on; the window closes when it is done. Cancel it to wait no longer"
    ));
    gate.set(true);
    until_closed(&mut harness);
    assert!(path.is_file());

    // Cancelled, the window closes too, and there is no file.
    fs::remove_file(&path).unwrap();
    let (mut harness, gate) = gated(farm("First"));
    choose(&mut harness, Purpose::SaveRecords, &path, "Save");
    run(&mut harness, Command::Quit);
    run(&mut harness, Command::CancelWork);
    gate.set(true);
    until_closed(&mut harness);
    assert!(!path.exists());

    let (mut harness, _gate) = gated(farm("First"));
    choose(&mut harness, Purpose::ReadRecords, &path, "Read");
    let ctx = harness.ctx.clone();
    harness.state_mut().run(Command::Quit, &ctx);
    harness.step();
    assert!(is_closing(&harness));
}

fn until_closed(harness: &mut Window) {
    let began = Instant::now();
    harness.step();
    while !is_closing(harness) {
        assert!(began.elapsed() < Duration::from_mins(2), "it is never closed");
        std::thread::yield_now();
        harness.step();
    }
}

#[test]
fn new_cards_hold_the_farm_and_give_each_number_once() {
    let farm = demo::farm().unwrap();
    let issued_before = farm.cards.len();
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("cards.pdf");
    let (mut harness, gate) = gated(farm);
    harness.state_mut().view = View::TankLoads;
    harness.state_mut().tank_loads.choose("2031-06-12-corn-second-post");
    let issue = |harness: &mut Window| {
        let printing = tankard::views::tank_loads::cards::Printing::Issue("2031-06-12-corn-second-post".to_owned());
        harness.state_mut().tank_loads.printing = Some(printing);
        choose(harness, Purpose::SaveCards, &path, "Save");
    };
    issue(&mut harness);
    harness.get_by_label("Laying out cards");
    // Not two at once, or a number would be given twice.
    issue(&mut harness);
    assert!(says(&harness, "The cards were not written: other new cards are being laid out"));
    // The farm stays until the numbers are in it.
    run(&mut harness, Command::New);
    assert!(says(&harness, "Laying out cards goes on; the farm stays open until then"));
    assert_eq!(harness.state().document.farm().cards.len(), issued_before);
    gate.set(true);
    until_says(&mut harness, "holds work that is not saved");
    assert!(path.is_file());
    assert!(harness.state().document.farm().cards.len() > issued_before);
    click(&mut harness, "Stay here");

    // Cancelled, none is issued.
    gate.set(false);
    let issued = harness.state().document.farm().cards.len();
    fs::remove_file(&path).unwrap();
    issue(&mut harness);
    run(&mut harness, Command::CancelWork);
    gate.set(true);
    until_says(&mut harness, "The cards were not written: it was cancelled, and no file is left of it");
    assert_eq!(harness.state().document.farm().cards.len(), issued);
    assert!(!path.exists());
}

#[test]
fn the_order_of_a_crowded_day_is_looked_for_beside_the_window() {
    let day = date(2031, 6, 12);
    let mut farm = demo::farm().unwrap();
    let pass = farm.passes["2031-06-12-corn-second-post"].clone();
    for number in 0..10 {
        let mut pass = pass.clone();
        pass.name = format!("Pass {number}");
        farm.passes.insert(format!("pass-{number}"), pass);
    }
    let (mut harness, gate) = gated(farm);
    harness.state_mut().view = View::TankLoads;
    harness.run_steps(3);
    harness.get_by_label("The day as a whole: Thursday 12 June 2031").click();
    harness.run_steps(3);
    harness.get_by_label("Looking for the best order of the day");
    assert!(says(&harness, "The best order of the day is being looked for"));
    // What would print it waits.
    let printing = tankard::views::tank_loads::cards::Printing::Sheet(day);
    harness.state_mut().tank_loads.printing = Some(printing);
    let folder = tempfile::tempdir().unwrap();
    choose(&mut harness, Purpose::SaveSheet, &folder.path().join("sheet.pdf"), "Save");
    assert!(says(&harness, "The evening sheet was not written: the order of the day is not there yet"));
    run(&mut harness, Command::CancelWork);
    assert!(says(&harness, "The order below is not looked for to the end."));
    gate.set(true);
    click(&mut harness, "Look for the best order");
    until(&mut harness, "the order is there", |harness| harness.query_by_label("Open Pass 7").is_some());
    assert!(!says(&harness, "being looked for") && !says(&harness, "The order below is not"));
}
