//! The day as a whole: its order is seen, held by hand or by key, and let go; spray goes on from pass to pass; the sheet is
//! written with the cards.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::{tank_loads, type_over};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use tankard::app::Desk;
use tankard_core::farm::Farm;

const CORN: &str = "2031-06-12-corn-second-post";
const BEANS: &str = "2031-06-12-volunteer-corn";

fn day(farm: Farm) -> Harness<'static, Desk> {
    let mut harness = tank_loads(farm, [1366.0, 768.0]);
    harness.get_by_label("The day as a whole: Thursday 12 June 2031").click();
    harness.run();
    harness
}

fn demo() -> Farm {
    tankard::demo::farm().unwrap()
}

fn pinned(harness: &Harness<'_, Desk>) -> Vec<(String, u32)> {
    let days = &harness.state().document.farm().days;
    days.get("2031-06-12").map(|day| day.pinned.clone().into_iter().collect()).unwrap_or_default()
}

#[test]
fn a_pass_is_held_its_cost_is_told_and_it_is_let_go() {
    let mut harness = day(demo());
    harness.get_by_label_contains("No order costs less");
    harness.get_by_label("Spray Volunteer corn in beans earlier in the day").click();
    harness.run();
    assert_eq!(pinned(&harness), [(BEANS.to_owned(), 1)]);
    // What it costs is seen at once.
    harness.get_by_label("Take the best order for Big boom").click();
    harness.run();
    assert_eq!(pinned(&harness), []);
    assert!(!harness.state().document.farm().days.contains_key("2031-06-12"), "nothing is left in the file");
}

#[test]
fn a_block_moves_by_key_and_by_dragging() {
    let mut harness = day(demo());
    let block = |harness: &Harness<'_, Desk>, name: &str| harness.get_by_label_contains(name).rect();
    let beans = "Volunteer corn in beans, 17:00";
    harness.get_by_label_contains(beans).focus();
    harness.run();
    harness.key_press(egui::Key::ArrowLeft);
    harness.run();
    assert_eq!(pinned(&harness), [(BEANS.to_owned(), 1)]);
    harness.state_mut().document.undo();
    harness.run();
    let (from, to) = (block(&harness, beans).center(), block(&harness, "Corn, second post, 07:00").left_center());
    let press = |pressed, pos| egui::Event::PointerButton {
        pos,
        button: egui::PointerButton::Primary,
        pressed,
        modifiers: egui::Modifiers::NONE,
    };
    // What hovers while the pointer rests asks for some frames more.
    for event in [egui::Event::PointerMoved(from), press(true, from), egui::Event::PointerMoved(to), press(false, to)] {
        harness.event(event);
        harness.run_steps(8);
    }
    assert_eq!(pinned(&harness), [(BEANS.to_owned(), 1)]);
}

#[test]
fn the_hour_of_leaving_is_kept_with_the_day() {
    let mut harness = day(demo());
    type_over(&mut harness, "The rigs leave at", "08:15");
    let farm = harness.state().document.farm();
    assert_eq!(farm.days["2031-06-12"].from, Some(jiff::civil::time(8, 15, 0, 0)));
    harness.get_by_label_contains("leaves at 08:");
    // A click on a pass leads to it.
    harness.get_by_label("Open Corn, second post").click();
    harness.run();
    let state = &harness.state().tank_loads;
    assert_eq!((state.chosen.as_deref(), state.day), (Some(CORN), None));
}

/// Two passes with one spray: 3,387 gal take 3 tanks of 1,200 gal and 150 gal more take a fourth; filled through, 3,537 gal
/// take 3.
#[test]
fn loads_are_filled_through() {
    let mut farm = demo();
    farm.passes.shift_remove(BEANS);
    let mut other = farm.passes[CORN].clone();
    other.name = "Corn, last strip".into();
    other.fields = vec!["hill-sixty".into()];
    other.parts.insert("hill-sixty".into(), tankard_core::quantity::AsTyped::parse("10 ac").unwrap());
    farm.passes.insert("strip".into(), other);
    let mut harness = day(farm);
    harness.get_by_label("Join the loads").click();
    harness.run();
    let farm = harness.state().document.farm();
    let (giver, taker) = if farm.passes[CORN].extra.is_some() { (CORN, "strip") } else { ("strip", CORN) };
    let (extra, tank) = (&farm.passes[giver].extra, &farm.passes[taker].in_tank);
    assert_eq!(extra.as_ref().map(tankard_core::quantity::AsTyped::text), tank.as_ref().map(|tank| tank.volume.text()));
    assert_eq!(tank.as_ref().map(|tank| tank.from.as_str()), Some(giver));
    assert!(harness.query_by_label("Join the loads").is_none());
}

#[test]
fn the_sheet_alone_issues_nothing_and_with_cards_it_issues_those_without_a_stop() {
    use tankard::views::tank_loads::cards::{Printing, save};
    let folder = tempfile::tempdir().unwrap();
    let date = jiff::civil::date(2031, 6, 12);
    let mut harness = day(demo());
    let desk = harness.state_mut();
    let mut pages = Vec::new();
    for (name, printing, issued) in [("a.pdf", Printing::Sheet(date), 0), ("b.pdf", Printing::Day(date), 3)] {
        let before = desk.document.farm().cards.len();
        desk.tank_loads.printing = Some(printing);
        save(desk, &folder.path().join(name));
        assert_eq!(desk.document.farm().cards.len() - before, issued, "{name}");
        pages.push(std::fs::read(folder.path().join(name)).unwrap().len());
    }
    assert!(pages[1] > pages[0]);
    // The second pass of the day has a Stop and gets none.
    assert!(desk.document.farm().cards.values().all(|card| card.pass == CORN));
}
