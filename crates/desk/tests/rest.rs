//! The field is not what the map said: answered beside the cards, and planned in one click.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::{tank_loads, type_over};
use egui_kittest::kittest::Queryable;
use tankard::views::tank_loads::Page;
use tankard_core::farm::InTank;
use tankard_core::quantity::AsTyped;

#[test]
fn a_hundred_and_eighty_gallons_left_become_the_rest_of_the_pass() {
    let mut harness = tank_loads(tankard::demo::farm().unwrap(), [1366.0, 768.0]);
    let id = harness.state().tank_loads.chosen.clone().unwrap();
    harness.get_by_label("Load cards").click();
    harness.run();
    harness.get_by_label("Card of load 2").click();
    harness.run();
    harness.get_by_label("It came out differently in the field…").click();
    harness.run();
    // First gesture: what is left is typed; the answer stands there.
    type_over(&mut harness, "Still in the tank", "180 gal");
    harness.get_by_label_contains("180 gal of them in the tank");
    assert_eq!(harness.state().document.farm().passes.len(), tankard::demo::farm().unwrap().passes.len());
    // Second gesture.
    harness.get_by_label("Plan the rest and see its cards").click();
    harness.run();
    let state = harness.state();
    let rest = state.tank_loads.chosen.clone().unwrap();
    let pass = &state.document.farm().passes[&rest];
    assert_eq!(pass.rest_of, id);
    assert_eq!(state.tank_loads.page, Page::Cards);
    assert!(pass.in_tank.as_ref().is_some_and(|tank| (tank.volume.to_us_gallons() - 180.0).abs() < 1e-6));
    harness.state_mut().document.undo();
    assert!(!harness.state().document.farm().passes.contains_key(&rest));
}

#[test]
fn more_ground_and_another_rate_are_held_against_the_label() {
    let mut harness = tank_loads(tankard::demo::farm().unwrap(), [1366.0, 768.0]);
    harness.get_by_label("Load cards").click();
    harness.run();
    harness.get_by_label("It came out differently in the field…").click();
    harness.run();
    let field = harness.state().document.farm().fields["mill-field"].name.clone();
    let before = harness.state().document.farm().fields["mill-field"].area.clone();
    type_over(&mut harness, &format!("More ground of {field}"), "12 ac");
    harness.get_by_label_contains(&format!("{field} is now"));
    type_over(&mut harness, "Rate of Glyphosate 540 SL (demo) from here on", "90 fl oz/ac");
    // More than its label allows: said before anything is planned.
    harness.get_by_label_contains("its label allows");
    harness.get_by_label("Plan the rest and see its cards").scroll_to_me();
    harness.run();
    harness.get_by_label("Plan the rest and see its cards").click();
    // The picture of a card comes from a thread of its own, and may ask for frames of its own in between.
    harness.run_steps(8);
    let after = harness.state().document.farm().fields["mill-field"].area.clone();
    assert!((after.to_acres() - before.to_acres() - 12.0).abs() < 1e-6);
}

#[test]
fn a_copy_of_a_rest_is_an_application_of_its_own() {
    let mut farm = tankard::demo::farm().unwrap();
    let id = tank_loads(farm.clone(), [1366.0, 768.0]).state().tank_loads.chosen.clone().unwrap();
    let pass = &mut farm.passes[&id];
    pass.rest_of = "another".to_owned();
    pass.in_tank = Some(InTank { volume: AsTyped::parse("40 gal").unwrap(), from: "another".to_owned() });
    let name = pass.name.clone();
    let mut harness = tank_loads(farm, [1366.0, 768.0]);
    harness.get_by_label(&format!("Copy: {name}")).click();
    harness.run();
    let copy = harness.state().tank_loads.chosen.clone().unwrap();
    let copy = &harness.state().document.farm().passes[&copy];
    assert_eq!(copy.name, format!("{name} (copy)"));
    assert_eq!((copy.rest_of.as_str(), &copy.in_tank), ("", &None));
}
