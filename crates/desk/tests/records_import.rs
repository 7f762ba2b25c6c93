//! Records out of the season log and into it as a person does it: through the names that a screen reader says.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use common::evening;
use std::path::PathBuf;

use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use tankard::app::Desk;
use tankard::command::View;
use tankard::demo;
use tankard::document::Document;
use tankard::files::Purpose;
use tankard::views::season_log::{Season, export, import};
use tankard_core::farm::Farm;
use tempfile::TempDir;

const SHEET: &str = "Date,Field,Acres,Product,Rate,Total (gal),Who\n\
    5/6/2030,North,40,Oil (demo),1.5 pt/ac,,A. Demo\n5/6/2030,South,30,Oil (demo),,5,A. Demo\n,,,Total,,12.5,\n";

fn window(farm: Farm, size: [f32; 2]) -> Harness<'static, Desk> {
    let mut desk = Desk::new(Document::copy(farm), evening);
    desk.view = View::SeasonLog;
    let mut harness = common::window(desk, size);
    harness.run();
    harness
}

fn file(text: &str) -> (TempDir, PathBuf) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("past.csv");
    std::fs::write(&path, text).unwrap();
    (folder, path)
}

fn farm<'a>(harness: &'a Harness<'_, Desk>) -> &'a Farm {
    harness.state().document.farm()
}

fn choose(harness: &mut Harness<'_, Desk>, name: &str, what: &str) {
    harness.get_by_label(name).click();
    harness.run();
    // Wherever the list is scrolled to.
    harness.get_by_label(what).click_accesskit();
    harness.run();
}

#[test]
fn a_spreadsheet_is_looked_at_and_imported_and_undo_takes_it_back() {
    let mut harness = window(Farm::new("Bare"), [1366.0, 900.0]);
    let (_folder, path) = file(SHEET);
    import::read_file(harness.state_mut(), &path);
    harness.run();
    assert!(!harness.state().document.is_unsaved());
    harness.get_by_label("Choose how days are written: \"5/6/2030\" on line 2 may be one of two.");
    assert!(harness.get_by_label("Import 0 records").accesskit_node().is_disabled());
    choose(&mut harness, "How days with strokes are written: not said", "month/day/year");
    harness.get_by_label("2 records of 2 lines. Nothing enters the log before you import.");
    harness.get_by_label("1 line is left out");
    harness.get_by_label("Line 4: there is no day");
    harness.get_by_label("1 amount is reckoned from the rate.");
    // A column that is not wanted is put aside, and its words are gone from the records.
    choose(&mut harness, "What \"Who\" holds: operator", "not taken");
    harness.get_by_label("Import 2 records").click();
    harness.run();
    let records: Vec<_> = farm(&harness).records.values().collect();
    assert_eq!((records.len(), records[0].operator.as_str(), records[0].date.month()), (2, "", 5));
    // 40 ac × 1.5 pt/ac = 60 pt = 7.5 gal.
    assert_eq!(records[0].lines[0].amount.text(), "7 gal 2 qt");
    harness.get_by_label_contains("2 records imported from past.csv");
    assert!(harness.query_by_label("Leave the file").is_none());
    assert!(harness.state().season_log.season == Season::All && harness.state().season_log.chosen.is_some());
    harness.state_mut().document.undo();
    harness.run();
    assert!(farm(&harness).records.is_empty());
}

#[test]
fn an_export_comes_back_and_what_is_here_already_is_said() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("records.csv");
    let mut harness = window(demo::farm().unwrap(), [1366.0, 768.0]);
    harness.state_mut().season_log.season = Season::All;
    harness.state_mut().season_log.filter.clear();
    export::save(harness.state_mut(), Purpose::SaveRecords, &path);
    let all = farm(&harness).records.clone();
    let mut mended = demo::farm().unwrap();
    mended.records[0].note = format!("{}; mended", mended.records[0].note).into();
    mended.records.shift_remove_index(1);
    let mut other = window(mended.clone(), [1366.0, 768.0]);
    import::read_file(other.state_mut(), &path);
    other.run();
    other.get_by_label(&format!("{} records in a file of exported records, 1 of them new.", all.len()));
    other.get_by_label("1 has the id of a record here that says something else");
    other.get_by_label_contains("left out, \"");
    other.get_by_label("Take these as new records beside those that are here").click();
    other.run();
    other.get_by_label("Import 2 records").click();
    other.run();
    let now = &farm(&other).records;
    assert_eq!(now.len(), all.len() + 1);
    let (id, first) = all.get_index(0).unwrap();
    assert!(now[id] != *first && now.values().any(|record| record == first));
    let (id, second) = all.get_index(1).unwrap();
    assert_eq!(now[id], *second);
    other.state_mut().document.undo();
    assert_eq!(*farm(&other), mended);
}

#[test]
fn the_head_leads_to_files_and_a_problem_is_told() {
    let mut harness = window(demo::farm().unwrap(), [1366.0, 768.0]);
    harness.get_by_label("Import records…");
    harness.get_by_label("Export what the list shows…").click();
    harness.run();
    harness.get_by_label("JSON, for a machine…");
    let (folder, path) = file("no table at all");
    harness.state_mut().ask_path(Purpose::ReadRecords, path);
    harness.run();
    harness.get_by_label("Read").click();
    harness.run();
    harness.get_by_label_contains("The records were not read: no table was found");
    import::read_file(harness.state_mut(), folder.path());
    import::read_file(harness.state_mut(), &folder.path().join("missing.csv"));
    harness.run();
    assert!(harness.query_by_label("Leave the file").is_none());
    let json = folder.path().join("records");
    export::save(harness.state_mut(), Purpose::SaveRecordsJson, &json);
    let text = std::fs::read_to_string(json.with_extension("json")).unwrap();
    assert!(text.contains("\"format\": \"tankard-records\""));
}

#[test]
fn a_file_that_is_left_changes_nothing_also_in_a_small_window() {
    let mut harness = window(demo::farm().unwrap(), [911.0, 512.0]);
    let before = farm(&harness).clone();
    let (_folder, path) = file(SHEET);
    import::read_file(harness.state_mut(), &path);
    harness.run();
    harness.get_by_label("Leave the file").click();
    harness.run();
    assert!(harness.query_by_label("Leave the file").is_none() && *farm(&harness) == before);
    assert!(!harness.state().document.is_unsaved());
}

#[test]
fn a_long_file_is_looked_at_whole_before_it_is_imported() {
    let mut harness = window(Farm::new("Bare"), [1366.0, 900.0]);
    let rows: Vec<String> = (0..5_001).map(|at| format!("2030-06-05,Field {},10,Oil (demo),2\n", at % 5_000)).collect();
    let rows = rows.concat();
    let (_folder, path) =
        file(&format!("Date,Field,Acres,Product,Amount (gal)\n{rows}2030-06-05,Last,10,Oil (demo),much\n"));
    import::read_file(harness.state_mut(), &path);
    harness.run();
    harness.get_by_label("The first 5000 of 5002 rows are looked at while you choose.");
    assert!(harness.query_by_label_contains("Import 5").is_none());
    harness.get_by_label("Look at all 5002 rows").click();
    harness.run();
    harness.get_by_label("1 line is left out");
    harness.get_by_label("Import 5000 records").click();
    harness.run();
    let records = &farm(&harness).records;
    assert_eq!((records.len(), records[0].lines.len()), (5_000, 2));
}

#[test]
fn what_looks_like_one_in_the_log_is_taken_only_where_a_person_says_so() {
    let mut harness = window(Farm::new("Bare"), [1366.0, 900.0]);
    let (_folder, path) = file("Date,Field,Acres,Product,Amount (gal)\n2030-06-05,North,10,Oil (demo),2\n");
    import::read_file(harness.state_mut(), &path);
    harness.run();
    harness.get_by_label("Import 1 record").click();
    harness.run();
    let (_folder, path) = file("Date,Field,Acres,Product,Amount (gal)\n2030-06-05,North,10,Oil (demo),3\n");
    import::read_file(harness.state_mut(), &path);
    harness.run();
    harness.get_by_label("Line 2: looks like one in the log: \"North\" of 5 June 2030");
    assert!(harness.get_by_label("Import 0 records").accesskit_node().is_disabled());
    harness.get_by_label("Take records that look like one in the log all the same").click();
    harness.run();
    harness.get_by_label("Import 1 record").click();
    harness.run();
    assert_eq!(farm(&harness).records.len(), 2);
}
