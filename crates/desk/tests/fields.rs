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
fn what_it_may_not_get_stands_on_a_page_of_its_own() {
    let mut harness = demo_fields();
    press(&mut harness, "What it may not get (2)");
    // Atrazine was sprayed on 4 May 2031; its label, as invented, keeps 15 months to winter wheat: 4 August 2032.
    harness.get_by_label("not before 4 August 2032");
    harness.get_by_label_contains("15 months; label of Atrazine 480 SC (demo)");
    // Nicosulfuron went out on 28 May, and its label keeps 14 days between two: 11 June is free again. The clock says 11 June.
    assert!(harness.query_by_label_contains("14 days between two").is_none());
    // Fomesafen of 22 May 2030 kept corn off for 10 months, to 22 March 2031, which has run out.
    harness.get_by_label("no limit that is typed keeps it off");
    press(&mut harness, "Open the record of 4 May 2031 for winter wheat");
    assert!(harness.state().view == View::SeasonLog && harness.state().season_log.chosen.is_some());
}

#[test]
fn what_it_got_is_told_year_by_year() {
    let mut harness = demo_fields();
    press(&mut harness, "What it got (9)");
    harness.get_by_label("Crops by year");
    harness.get_by_label("as typed; 3 records");
    // Glyphosate came in each season of the records; the review says the same.
    harness.get_by_label_contains("herbicide 9 came twice in 2030");
    assert!(harness.query_all_by_label("herbicide 9 again").count() > 0);
}

#[test]
fn a_field_without_anything_says_so_also_in_a_small_window() {
    let mut farm = tankard_core::farm::Farm::new("Bare");
    let name = "A field with a name that goes on and on without an end of it to be seen anywhere near";
    farm.fields.insert("f".to_owned(), tankard_core::farm::Field::new(name, AsTyped::parse("8 ac").unwrap()));
    let mut desk = Desk::new(Document::copy(farm), clock);
    desk.view = View::Fields;
    let mut harness = common::window(desk, [911.0, 512.0]);
    harness.run();
    harness.get_by_label("no boundary yet: draw it on the map, or import one");
    press(&mut harness, "What it may not get");
    harness.get_by_label_contains("Nothing, as far as the labels are typed");
    harness.get_by_label_contains("No label of what it got names a following crop");
    press(&mut harness, "What it got");
    for words in ["No crop is typed", "No record of it holds", "Nothing is recorded on it yet."] {
        harness.get_by_label_contains(words);
    }
}

#[test]
fn the_two_areas_stand_beside_each_other_and_one_is_chosen() {
    let mut harness = demo_fields();
    // A hundredth of a degree square on this latitude is 230 ac (WGS 84, Karney 2013), three times the stated 74.6.
    let square = "POLYGON ((-96.4 41.2, -96.39 41.2, -96.39 41.21, -96.4 41.21, -96.4 41.2))";
    harness.state_mut().document.edit(|farm| {
        farm.fields["mill-field"].boundary = Some(tankard_core::farm::Shape::parse(square).unwrap());
        farm.fields["mill-field"].gateways = vec![tankard_core::farm::Gateway {
            name: "road".to_owned(),
            at: tankard_core::farm::Shape::parse("POINT (-96.4 41.205)").unwrap(),
        }];
        farm.surroundings.insert(
            "creek".to_owned(),
            tankard_core::farm::Surrounding {
                name: "Mill creek".to_owned(),
                kind: tankard_core::farm::SurroundingKind::Water,
                shape: tankard_core::farm::Shape::parse("LINESTRING (-96.401 41.19, -96.401 41.22)").unwrap(),
                note: String::new(),
            },
        );
    });
    harness.run();
    harness.get_by_label_contains("more than stated");
    harness.get_by_label_contains("the plan goes by the stated area");
    harness.get_by_label_contains("water, west side, ");
    harness.get_by_label("41.20500, -96.40000");
    press(&mut harness, "Which area plans go by: the stated area");
    press(&mut harness, "the area from the boundary");
    let field = || harness.state().document.farm().fields["mill-field"].clone();
    assert_eq!(field().area_from, tankard_core::farm::AreaFrom::Boundary);
    harness.get_by_label_contains("the plan goes by the boundary");
    press(&mut harness, "Take out gateway 1");
    assert!(harness.state().document.farm().fields["mill-field"].gateways.is_empty());
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
