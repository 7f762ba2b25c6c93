//! The page of a field as a person meets it.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::shed::{press, put};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use jiff::civil::{DateTime, date};
use tankard::app::Desk;
use tankard::command::View;
use tankard::demo;
use tankard::document::Document;
use tankard_core::farm::{Resistant, Road};
use tankard_core::quantity::AsTyped;

fn clock(_zone: &str) -> DateTime {
    date(2031, 6, 11).at(18, 0, 0, 0)
}

type Page = Harness<'static, Desk>;

fn demo_fields() -> Page {
    let mut desk = Desk::new(Document::copy(demo::farm().unwrap()), clock);
    desk.view = View::Fields;
    let mut harness = common::window(desk, [1366.0, 768.0]);
    harness.run();
    harness
}

#[test]
fn a_resistant_weed_is_typed_and_taken_out() {
    let mut harness = demo_fields();
    press(&mut harness, "+ Add a resistant weed");
    put(&mut harness, "Resistant weed 1", "waterhemp");
    put(&mut harness, "Group of resistant weed 1", "9");
    let typed = |harness: &Page| harness.state().document.farm().fields["mill-field"].resistant.clone();
    assert_eq!(typed(&harness), [Resistant { weed: "waterhemp".to_owned(), group: "9".to_owned() }]);
    press(&mut harness, "Take out resistant weed 1");
    assert_eq!(typed(&harness), []);
}

#[test]
fn what_the_records_bind_is_listed() {
    let harness = demo_fields();
    // Atrazine was sprayed on 4 May 2031; its label, as invented, keeps 15 months to winter wheat: 4 August 2032.
    harness.get_by_label("no winter wheat before 4 August 2032");
    // Fomesafen of 22 May 2030 kept corn off for 10 months, to 22 March 2031, which has run out.
    assert!(harness.query_by_label_contains("no corn before").is_none());
}

#[test]
fn a_road_between_two_fields_is_typed_once_for_both() {
    let mut harness = demo_fields();
    let roads = |harness: &Page| harness.state().document.farm().roads.clone();
    press(&mut harness, "Add a road to another field: + Add a road to…");
    press(&mut harness, "Hill sixty");
    assert_eq!(roads(&harness), [], "a road without a length is none");
    put(&mut harness, "Road to Hill sixty", "0.9 mi");
    assert_eq!(roads(&harness).len(), 1);
    assert_eq!((roads(&harness)[0].from.as_str(), roads(&harness)[0].to.as_str()), ("mill-field", "hill-sixty"));
    assert_eq!(roads(&harness)[0].length.text(), "0.9 mi");
    // It stands on the page of the other field too, and is mended there.
    harness.state_mut().fields.chosen = Some("hill-sixty".to_owned());
    harness.run();
    common::type_over(&mut harness, "Road to Mill field", "1.1 mi");
    assert_eq!(roads(&harness).len(), 1);
    assert_eq!(roads(&harness)[0].length.text(), "1.1 mi");
    press(&mut harness, "Take out the road to Mill field");
    assert_eq!(roads(&harness), []);
}

#[test]
fn a_field_takes_its_roads_with_it() {
    let mut harness = demo_fields();
    harness.state_mut().document.edit(|farm| {
        let length = AsTyped::parse("1 mi").unwrap();
        for to in ["hill-sixty", "long-bottom"] {
            let (from, to) = ("creek-piece".to_owned(), to.to_owned());
            farm.roads.push(Road { from, to, length: AsTyped::clone(&length) });
        }
    });
    harness.state_mut().fields.chosen = Some("hill-sixty".to_owned());
    harness.run();
    press(&mut harness, "Remove: Hill sixty");
    press(&mut harness, "Remove it");
    let left: Vec<&str> = harness.state().document.farm().roads.iter().map(|road| road.to.as_str()).collect();
    assert_eq!(left, ["long-bottom"]);
}
