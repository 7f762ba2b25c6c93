//! The forecast's sheet as a person uses it: through the names that a screen reader says.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use common::{evening, type_over};
use std::fmt::Write as _;
use std::path::PathBuf;

use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use jiff::civil::datetime;
use tankard::app::Desk;
use tankard::demo;
use tankard::document::Document;
use tankard::files::Purpose;
use tankard::look;
use tankard::views::tank_loads::forecast;
use tankard_core::farm::{Farm, Forecast};
use tempfile::TempDir;

const PASS: &str = "2031-06-12-corn-second-post";

const FILE: &str = "made by;nobody\n\ntime;temp (°C);rh (%);wind;rain (mm)\n\
    2031-06-12 05:00;14,2;88;9;0\n2031-06-12 06:00;14,9;104;11;0\n2031-06-12 07:00;15,5;80;12;0,2\n";

/// The demo farm before it had a forecast.
fn farm() -> Farm {
    Farm { forecast: Forecast::default(), ..demo::farm().unwrap() }
}

/// The sheet alone in a window.
fn sheet(farm: Farm, size: [f32; 2]) -> Harness<'static, Desk> {
    let mut desk = Desk::new(Document::copy(farm), evening);
    desk.tank_loads.choose(PASS);
    let mut harness = Harness::builder().with_size(size).with_context_setup(look::install).build_ui_state(
        |ui, desk: &mut Desk| {
            desk.finish_work();
            egui::ScrollArea::vertical().show(ui, |ui| forecast::show(desk, ui));
        },
        desk,
    );
    harness.run();
    harness
}

fn file(text: &str) -> (TempDir, PathBuf) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("invented.csv");
    std::fs::write(&path, text).unwrap();
    (folder, path)
}

fn with_file(text: &str, size: [f32; 2]) -> Harness<'static, Desk> {
    let (_folder, path) = file(text);
    let mut harness = sheet(farm(), size);
    forecast::read_file(harness.state_mut(), &path);
    harness.run();
    harness
}

fn own<'a>(harness: &'a Harness<'_, Desk>) -> &'a Forecast {
    &harness.state().document.farm().forecast
}

fn choose(harness: &mut Harness<'_, Desk>, name: &str, what: &str) {
    harness.get_by_label(name).click();
    harness.run();
    // Wherever the list is scrolled to.
    harness.get_by_label(what).click_accesskit();
    harness.run();
}

#[test]
fn a_file_is_looked_at_and_taken_and_undo_takes_it_back() {
    let mut harness = with_file(FILE, [850.0, 900.0]);
    harness.get_by_label("A forecast is no measurement. Measure at the boom before starting.");
    // Nothing of the farm has changed, and nothing can be taken before the wind has a unit.
    assert!(!harness.state().document.is_unsaved());
    harness.get_by_label("Choose the unit of \"wind\"; the file does not say it.");
    harness.get_by_label("Take the hours").click();
    harness.run();
    assert!(own(&harness).hours.is_empty());
    choose(&mut harness, "Unit of \"wind\": choose", "km/h");
    harness.get_by_label("2 hours, Thu 12 June, 05:00 to Thu 12 June, 07:00");
    harness.get_by_label("The first: Thu 12 June, 05:00, air 14,2 °C, humidity 88 %, wind 9 km/h, rain 0 mm");
    harness.get_by_label("1 line is left out");
    harness.get_by_label("Line 5: humidity \"104\": it is above 100 %");
    harness.get_by_label("Take these 2 hours").click();
    harness.run();
    assert_eq!(own(&harness).hours.len(), 2);
    assert_eq!(own(&harness).hours[0].wind.as_ref().unwrap().text(), "9 km/h");
    assert_eq!(own(&harness).read, Some(evening("")));
    assert!(harness.query_by_label("Leave the file").is_none());
    harness.get_by_label(
        "2 hours, Thu 12 June, 05:00 to Thu 12 June, 07:00, from invented.csv, Wed 11 June 2031 at 20:14",
    );
    harness.state_mut().document.undo();
    harness.run();
    assert_eq!(*own(&harness), Forecast::default());
    harness.state_mut().document.redo();
    assert_eq!(own(&harness).hours.len(), 2);
}

#[test]
fn the_choice_is_remembered_for_the_next_file_with_this_header() {
    let mut harness = with_file(FILE, [850.0, 900.0]);
    choose(&mut harness, "Unit of \"wind\": choose", "kn");
    choose(&mut harness, "What \"rain (mm)\" holds: rain", "not taken");
    harness.get_by_label("Take these 2 hours").click();
    harness.run();
    let (_folder, path) = file(&FILE.replace("12 05:00", "12 06:00").replace("104", "84"));
    forecast::read_file(harness.state_mut(), &path);
    harness.run();
    harness.get_by_label("Unit of \"wind\": kn");
    harness.get_by_label("What \"rain (mm)\" holds: not taken");
    harness.get_by_label("They replace the forecast from Thu 12 June, 06:00 on; earlier hours stay.");
    harness.get_by_label_contains("its hour stands on line 4 already");
    harness.get_by_label("Take these 2 hours").click();
    harness.run();
    let hours: Vec<i8> = own(&harness).hours.iter().map(|hour| hour.at.hour()).collect();
    assert_eq!(hours, [5, 6, 7]);
    assert_eq!(own(&harness).layouts.len(), 1);
}

#[test]
fn a_file_that_is_left_or_cannot_be_read_changes_nothing() {
    let mut harness = with_file(FILE, [850.0, 900.0]);
    harness.get_by_label("Leave the file").click();
    harness.run();
    assert!(harness.query_by_label("Take the hours").is_none());
    let (folder, path) = file("no table at all");
    forecast::read_file(harness.state_mut(), &path);
    forecast::read_file(harness.state_mut(), folder.path());
    forecast::read_file(harness.state_mut(), &folder.path().join("missing.csv"));
    harness.run();
    assert!(harness.query_by_label("Take the hours").is_none());
    assert!(!harness.state().document.is_unsaved());
}

#[test]
fn the_path_box_leads_to_the_file_and_a_problem_is_told() {
    let (folder, path) = file("no table at all");
    let mut harness = common::window(Desk::new(Document::copy(farm()), evening), [1366.0, 768.0]);
    harness.run();
    harness.state_mut().ask_path(Purpose::ReadForecast, path);
    harness.run();
    harness.get_by_label("Read").click();
    harness.run();
    harness.get_by_label_contains("The forecast was not read: no table was found");
    assert!(folder.path().join("invented.csv").is_file());
}

#[test]
fn times_against_utc_wait_for_the_farms_zone() {
    let text = "time,temp_c\n2031-06-12T10:00Z,14\n";
    let mut harness = with_file(text, [850.0, 900.0]);
    harness.get_by_label("1 hour, Thu 12 June, 05:00");
    harness.state_mut().document.edit(|farm| farm.place = None);
    harness.run();
    harness.get_by_label_contains("type the farm's time zone in the shed");
    assert!(harness.query_by_label("1 hour, Thu 12 June, 05:00").is_none());
    harness.state_mut().document.undo();
    harness.run();
    harness.get_by_label("Take this hour").click();
    harness.run();
    assert_eq!(own(&harness).hours[0].at, datetime(2031, 6, 12, 5, 0, 0, 0));
}

#[test]
fn many_lines_and_columns_are_reached_a_few_at_a_time() {
    let mut text = String::from("time,temp_c,a,b,c,d,e,f,g,h,i,j,k\n");
    for hour in 0..24 {
        let figure = if hour < 20 { "x" } else { "14" };
        let _ = writeln!(text, "2031-06-12 {hour:02}:00,{figure},1,1,1,1,1,1,1,1,1,1,1");
    }
    let mut harness = with_file(&text, [850.0, 900.0]);
    harness.get_by_label("20 lines are left out");
    harness.get_by_label("Line 2: air \"x\": \"x\" does not begin with a number");
    assert!(harness.query_by_label_contains("Line 10:").is_none());
    for _ in 0..4 {
        harness.get_by_label("Lines left out after these").click();
        harness.run();
    }
    harness.get_by_label("17 to 20");
    harness.get_by_label_contains("Line 21:");
    harness.get_by_label("Lines left out before these").click();
    harness.run();
    harness.get_by_label("9 to 16");
    assert!(harness.query_by_label_contains("What \"k\" holds").is_none());
    harness.get_by_label("Show 11 more columns").click();
    harness.run();
    choose(&mut harness, "What \"k\" holds: not taken", "humidity");
    choose(&mut harness, "Unit of \"k\": choose", "fraction");
    harness.get_by_label("The first: Thu 12 June, 20:00, air 14 °C, humidity 100 %");
}

#[test]
fn hours_are_typed_by_keyboard_and_taken_away_again() {
    // Wide enough for one line an hour, and too narrow for it.
    for width in [850.0, 500.0] {
        let mut harness = sheet(farm(), [width, 900.0]);
        let tab_to = |harness: &mut Harness<'static, Desk>, name: &str| {
            for _ in 0..40 {
                harness.key_press(egui::Key::Tab);
                harness.run();
                if harness.query_by_label(name).is_some_and(|node| node.is_focused()) {
                    return;
                }
            }
            panic!("the keyboard does not reach {name}");
        };
        tab_to(&mut harness, "Type hours by hand");
        harness.key_press(egui::Key::Enter);
        harness.run();
        harness.get_by_label("Hours of Thursday 12 June 2031");
        tab_to(&mut harness, "Add 05:00");
        harness.key_press(egui::Key::Enter);
        harness.run();
        assert_eq!(own(&harness).source, "typed by hand");
        assert_eq!(own(&harness).read, Some(evening("")));
        for (name, text) in [
            ("Air at 05:00", "58 °F"),
            ("Humidity at 05:00", "88 %"),
            ("Wind at 05:00", "6 mph"),
            ("Gusts at 05:00", "9 mph"),
            ("Wind from at 05:00", "SW"),
            ("Rain at 05:00", "0 in"),
            ("Cloud at 05:00", "20 %"),
        ] {
            type_over(&mut harness, name, text);
        }
        // A figure without a unit is kept in the box and is not guessed at.
        type_over(&mut harness, "Wind at 05:00", "7");
        let hour = &own(&harness).hours[0];
        assert_eq!(hour.at, datetime(2031, 6, 12, 5, 0, 0, 0));
        assert_eq!(hour.wind.as_ref().unwrap().text(), "6 mph");
        assert_eq!(hour.wind_from.as_ref().unwrap().text(), "SW");
        assert_eq!(hour.cloud.as_ref().unwrap().text(), "20 %");
        harness.key_press(egui::Key::Escape);
        harness.run();
        harness.get_by_label("Add 06:00").click();
        harness.run();
        choose(&mut harness, "Hour to add: 07:00", "03:00");
        harness.get_by_label("Add 03:00").click();
        harness.run();
        let hours: Vec<i8> = own(&harness).hours.iter().map(|hour| hour.at.hour()).collect();
        assert_eq!(hours, [3, 5, 6]);
        for name in ["Remove 03:00", "Remove 05:00", "Remove 06:00"] {
            harness.get_by_label(name).click();
            harness.run();
        }
        assert_eq!(*own(&harness), Forecast::default());
    }
}

#[test]
fn a_file_typed_over_says_so_and_a_skipped_hour_is_not_offered() {
    let mut harness = with_file(&FILE.replace("wind", "wind (km/h)"), [850.0, 900.0]);
    harness.get_by_label("Take these 2 hours").click();
    harness.run();
    harness.get_by_label("Type hours by hand").click();
    harness.run();
    type_over(&mut harness, "Air at 07:00", "61 °F");
    assert_eq!(own(&harness).source, "invented.csv, changed by hand");
    // In 2031 clocks in Chicago go forward on 9 March at 2:00: United States Code, title 15, section 260a.
    harness.state_mut().document.edit(|farm| farm.passes[PASS].date = jiff::civil::date(2031, 3, 9));
    harness.run();
    harness.get_by_label("Hour to add: 05:00").click();
    harness.run();
    assert!(harness.query_by_label("02:00").is_none());
    harness.get_by_label("03:00");
}

#[test]
fn a_script_reads_a_forecast_into_a_copy_and_writes_over_nothing() {
    let (folder, path) = file(FILE);
    let before_it = folder.path().join("farm.ron");
    std::fs::write(&before_it, tankard_file::write(&farm()).unwrap()).unwrap();
    let out = folder.path().join("with-forecast.ron");
    let ask = |from: &std::path::Path| {
        std::process::Command::new(env!("CARGO_BIN_EXE_tankard"))
            .args(["--language", "en"])
            .arg("forecast")
            .arg(&before_it)
            .arg("--from")
            .arg(from)
            .arg("--out")
            .arg(&out)
            .output()
            .unwrap()
    };
    // The wind has no unit yet.
    let said = ask(&path);
    assert_eq!(said.status.code(), Some(2));
    assert!(String::from_utf8_lossy(&said.stderr).contains("choose the unit of \"wind\""));
    assert!(!out.exists());
    let clear = folder.path().join("clear.csv");
    std::fs::write(&clear, FILE.replace(";wind;", ";wind (m/s);")).unwrap();
    let said = ask(&clear);
    assert_eq!(said.status.code(), Some(0), "{said:?}");
    assert!(String::from_utf8_lossy(&said.stderr).contains("line 5 is left out: humidity"));
    let (written, _) = tankard_file::store::open(&out).unwrap();
    assert_eq!((written.forecast.hours.len(), written.forecast.source.as_str()), (2, "clear.csv"));
    let before = std::fs::read(&out).unwrap();
    let said = ask(&clear);
    assert_eq!(said.status.code(), Some(3));
    assert!(String::from_utf8_lossy(&said.stderr).contains("left alone"));
    assert_eq!(std::fs::read(&out).unwrap(), before);
}
