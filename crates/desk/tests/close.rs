//! The change of the year as a person makes it.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use egui_kittest::kittest::Queryable;
use tankard::app::Desk;
use tankard::command::View;
use tankard::demo;
use tankard::document::Document;

#[test]
fn a_season_is_closed_and_opened_again() {
    let farm = demo::farm().unwrap();
    let (first, field) = farm.fields.first().unwrap();
    let (id, name, grew) = (first.clone(), field.name.clone(), field.crop.clone());
    let records = farm.records.clone();
    let mut desk = Desk::new(Document::copy(farm), common::evening);
    desk.view = View::SeasonLog;
    let mut harness = common::window(desk, [1366.0, 768.0]);
    harness.run();
    harness.get_by_label("Close the season…").click();
    harness.run();
    // The demo has passes that are still to be sprayed.
    harness.get_by_label_contains("\"Corn, second post\" of 12 June 2031 has no record");
    let next = format!("Next crop on {name}");
    harness.get_by_label(&next).scroll_to_me();
    harness.run();
    common::type_over(&mut harness, &next, "winter wheat");
    harness.get_by_role_and_label(egui::accesskit::Role::Button, "Close season 2031").click();
    harness.run();
    let farm = harness.state().document.farm();
    assert_eq!(farm.fields[&id].crop, "winter wheat");
    assert_eq!(farm.closed["2031"].crops[&id], grew);
    assert_eq!(farm.records, records);
    harness.get_by_label("closed on 11 June 2031");
    assert!(harness.query_by_label("Close the season…").is_none());
    harness.state_mut().document.undo();
    harness.run();
    harness.get_by_label("Close the season…");
}

#[test]
fn it_can_be_left_open() {
    let farm = demo::farm().unwrap();
    let mut desk = Desk::new(Document::copy(farm.clone()), common::evening);
    desk.view = View::SeasonLog;
    let mut harness = common::window(desk, [1366.0, 768.0]);
    harness.run();
    harness.get_by_label("Close the season…").click();
    harness.run();
    harness.get_by_label("Leave it open").click();
    harness.run();
    assert_eq!(*harness.state().document.farm(), farm);
    harness.get_by_label("Find records");
}
