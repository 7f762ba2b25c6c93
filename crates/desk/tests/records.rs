//! What records are kept for, as a person sets it in the shed and finds it on the page of a record.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use std::process::Command;

use common::shed::{press, put};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use jiff::civil::{DateTime, datetime};
use tankard::app::Desk;
use tankard::command::View;
use tankard::demo;
use tankard::document::Document;
use tankard_core::farm::OwnElement;
use tankard_core::season::profile::not_the_law;

/// The day after the demo's first record of 2031.
fn later(_zone: &str) -> DateTime {
    datetime(2031, 5, 14, 12, 0, 0, 0)
}

fn shed() -> Harness<'static, Desk> {
    let mut desk = Desk::new(Document::copy(demo::farm().unwrap()), later);
    desk.view = View::Shed;
    let mut harness = common::window(desk, [1366.0, 768.0]);
    harness.run();
    harness.get_by_label("Records").click();
    harness.run();
    harness
}

#[test]
fn profiles_are_ticked_in_the_shed() {
    let mut harness = shed();
    harness.get_by_label(not_the_law());
    // Nothing is chosen, so the plain one holds.
    assert!(harness.state().document.farm().keeping.profiles.is_empty());
    let name =
        "US restricted-use products: Certified applicators in the United States who apply a restricted-use product";
    press(&mut harness, name);
    assert_eq!(harness.state().document.farm().keeping.profiles, ["us-rup"]);
    press(&mut harness, name);
    assert!(harness.state().document.farm().keeping.profiles.is_empty());
    put(&mut harness, "name of the business", "Larkspur Bend");
    put(&mut harness, "number of the business", "N-9");
    let keeping = &harness.state().document.farm().keeping;
    assert_eq!((keeping.holder.as_str(), keeping.number.as_str()), ("Larkspur Bend", "N-9"));
    harness.state_mut().document.undo();
    harness.run();
    assert!(harness.state().document.farm().keeping.number.is_empty());
}

#[test]
fn an_element_of_ones_own_is_added_and_taken_away() {
    let mut harness = shed();
    press(&mut harness, "+ Add an element");
    put(&mut harness, "Name of element 1", "lot numbers");
    put(&mut harness, "Who asks for element 1", "the mill");
    put(&mut harness, "Days until element 1 is due", "7");
    let own = OwnElement {
        name: "lot numbers".to_owned(),
        asked_by: "the mill".to_owned(),
        due_days: Some(7),
        restricted_only: false,
    };
    assert_eq!(harness.state().document.farm().keeping.own["own"], own);
    press(&mut harness, "Remove: element 1");
    assert!(harness.state().document.farm().keeping.own.is_empty());
}

/// A record of the demo with a restricted product, of 13 May 2031, on the day after.
fn page(profiles: &[&str]) -> Harness<'static, Desk> {
    let mut farm = demo::farm().unwrap();
    farm.keeping.profiles = profiles.iter().map(|key| (*key).to_owned()).collect();
    farm.keeping.own.insert("own".to_owned(), OwnElement { name: "lot numbers".to_owned(), ..OwnElement::default() });
    let id = farm.records.keys().find(|id| id.starts_with("2031-05-13")).unwrap().clone();
    farm.records[&id].certificate = "".into();
    let mut desk = Desk::new(Document::copy(farm), later);
    desk.view = View::SeasonLog;
    desk.season_log.chosen = Some(id);
    let mut harness = common::window(desk, [1366.0, 1400.0]);
    harness.run();
    harness
}

#[test]
fn a_record_says_what_it_is_kept_for_and_has_boxes_for_the_rest() {
    let mut harness = page(&["us-rup", "us-wps"]);
    harness.get_by_label(not_the_law());
    harness.get_by_label("certification number of the applicator");
    // 13 May and 14 days; the display was due within 24 hours.
    assert!(harness.query_all_by_label("due by 27 May 2031").count() > 0);
    put(&mut harness, "safety data sheet on display", "yard office");
    put(&mut harness, "lot numbers", "A7");
    let desk = harness.state();
    let record = &desk.document.farm().records[desk.season_log.chosen.as_ref().unwrap()];
    assert_eq!(record.more["sds"], "yard office");
    assert_eq!(record.more["own"], "A7");
    put(&mut harness, "lot numbers", "");
    let desk = harness.state();
    assert!(!desk.document.farm().records[desk.season_log.chosen.as_ref().unwrap()].more.contains_key("own"));
}

#[test]
fn the_list_names_what_is_open_over_all_profiles() {
    let harness = page(&["us-rup", "plain"]);
    harness.get_by_label("2031-05-13, Triangle, before emergence, still open: location, certificate, lot numbers");
}

#[test]
fn check_tells_of_records_for_a_day_also_as_json() {
    let demo = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../demo-farm/larkspur-bend.ron");
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("farm.ron");
    std::fs::write(&file, std::fs::read_to_string(demo).unwrap().replace("certificate: \"demo\",", "")).unwrap();
    let check = |more: &[&str]| {
        let out = Command::new(env!("CARGO_BIN_EXE_tankard"))
            .args(["--language", "en"])
            .arg("check")
            .arg(&file)
            .args(more)
            .output()
            .unwrap();
        String::from_utf8(out.stdout).unwrap()
    };
    let words = check(&["--date", "2031-06-12"]);
    let line = words.lines().find(|line| line.starts_with("2031-05-13")).unwrap();
    assert!(
        line.contains("Check ")
            && line.contains("lacks for Plain record: certificate of the applicator; it was due by 13 May 2031"),
        "{line}"
    );
    assert!(words.contains(not_the_law()));
    // Before that day it is not due yet.
    let words = check(&["--date", "2031-05-01"]);
    assert!(words.lines().any(|line| line.starts_with("2031-05-13") && line.contains(": Note ")), "{words}");
    let json: serde_json::Value = serde_json::from_str(&check(&["--date", "2031-06-12", "--json"])).unwrap();
    assert_eq!(json["date"], "2031-06-12");
    let records = json["records"].as_array().unwrap();
    assert!(records.iter().any(|finding| {
        finding["about"].as_str().unwrap().starts_with("record:2031-05-13") && finding["basis"]["kind"] == "practice"
    }));
}
