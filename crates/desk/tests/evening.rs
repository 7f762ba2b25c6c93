//! The day as a whole: its order is seen, held by hand or by key, and let go; spray goes on from pass to pass; the sheet is
//! written with the cards.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::{tank_loads, type_over};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use jiff::civil::{Date, date};
use tankard::app::Desk;
use tankard::views::tank_loads::cards::{self, Printing};
use tankard_core::farm::Farm;
use tankard_core::finding::Subject;

const DATE: Date = date(2031, 6, 12);
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

fn press(harness: &mut Harness<'_, Desk>, name: &str) {
    harness.get_by_label(name).scroll_to_me();
    harness.run();
    harness.get_by_label(name).click();
    harness.run();
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

/// The list of passes has those of a day in the order that is reckoned, and moving one there holds it at its place.
#[test]
fn the_list_of_passes_stands_in_the_order_of_the_day() {
    let mut farm = demo();
    // In the file the corn stands first; it is decided that the beans come first.
    let mut decided = tankard_core::farm::Day::default();
    decided.pinned.insert(BEANS.to_owned(), 1);
    farm.days.insert("2031-06-12".to_owned(), decided);
    let mut harness = tank_loads(farm, [1366.0, 768.0]);
    for _ in 0..20 {
        harness.step();
    }
    let top = |harness: &Harness<'_, Desk>, name: &str| {
        let rows: Vec<f32> = harness
            .query_all_by_label(name)
            .map(|node| node.rect())
            .filter(|rect| rect.right() < 230.0)
            .map(|rect| rect.top())
            .collect();
        rows.into_iter().next().unwrap()
    };
    let (corn, beans) = ("Corn, second post", "Volunteer corn in beans");
    assert!(top(&harness, beans) < top(&harness, corn));
    harness.state_mut().tank_loads.choose(BEANS);
    harness.run();
    press(&mut harness, &format!("Move down: {beans}"));
    assert_eq!(pinned(&harness), [(BEANS.to_owned(), 2)]);
    for _ in 0..20 {
        harness.step();
    }
    assert!(top(&harness, beans) > top(&harness, corn));
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
    let folder = tempfile::tempdir().unwrap();
    let mut harness = day(demo());
    let mut pages = Vec::new();
    for (name, printing, issued) in [("a.pdf", Printing::Sheet(DATE), 0), ("b.pdf", Printing::Day(DATE), 3)] {
        let desk = harness.state_mut();
        let before = desk.document.farm().cards.len();
        desk.tank_loads.printing = Some(printing);
        cards::save(desk, &folder.path().join(name));
        harness.run();
        assert_eq!(harness.state().document.farm().cards.len() - before, issued, "{name}");
        pages.push(std::fs::read(folder.path().join(name)).unwrap().len());
    }
    assert!(pages[1] > pages[0]);
    // The second pass of the day has a Stop and gets none.
    assert!(harness.state().document.farm().cards.values().all(|card| card.pass == CORN));
}

#[test]
fn a_pass_without_cards_is_said_beside_the_order() {
    let mut harness = day(demo());
    harness.get_by_label("Nothing stands against this order.");
    press(&mut harness, "Settle Volunteer corn in beans");
    let state = &harness.state().tank_loads;
    assert_eq!((state.chosen.as_deref(), state.day), (Some(BEANS), None));
}

#[test]
fn a_pass_that_finds_no_place_has_no_time() {
    let mut harness = day(demo());
    assert!(harness.query_by_label("no place").is_none());
    type_over(&mut harness, "The rigs leave at", "05:30");
    type_over(&mut harness, "The rigs are home by", "12:00");
    harness.get_by_label("no place");
}

#[test]
fn passes_that_take_the_same_spray_are_joined_from_the_day() {
    let mut farm = demo();
    let mut beans = farm.passes[BEANS].clone();
    let mut west = beans.clone();
    // 1,072 gal and 1,372 gal from a tank of 500 gal: 3 and 3 loads, 5 of them joined.
    for (pass, field) in [(&mut beans, "east-sandhill"), (&mut west, "west-sandhill")] {
        pass.rig = "small-boom".to_owned();
        pass.fields = vec![field.to_owned()];
        pass.mix.truncate(1);
    }
    farm.passes.clear();
    farm.apart = Some(Vec::new());
    farm.passes.insert("east".to_owned(), beans);
    farm.passes.insert("west".to_owned(), west);
    let mut harness = day(farm);
    press(&mut harness, "Join the loads");
    let passes = &harness.state().document.farm().passes;
    assert!(passes.values().any(|pass| pass.in_tank.is_some()));
    assert!(harness.query_by_label("Join the loads").is_none());
}

#[test]
fn the_operator_is_typed_with_the_rig() {
    let mut harness = tank_loads(demo(), [1366.0, 768.0]);
    press(&mut harness, "Big boom");
    type_over(&mut harness, "Operator of the pass", "B. Demo");
    let farm = harness.state().document.farm();
    assert_eq!(farm.passes[CORN].operator, "B. Demo");
}

#[test]
fn the_keyboard_stays_with_the_pass_that_it_moved() {
    let mut harness = day(demo());
    type_over(&mut harness, "The rigs leave at", "05:30");
    let is_moved = |harness: &Harness<'_, Desk>, place: u32| {
        let days = &harness.state().document.farm().days;
        assert_eq!(days["2031-06-12"].pinned.get(CORN), Some(&place));
        assert_eq!(days["2031-06-12"].pinned.len(), 1);
    };
    let block = |harness: &Harness<'_, Desk>| harness.get_by_label_contains("Corn, second post, ").is_focused();
    harness.get_by_label_contains("Corn, second post, ").focus();
    harness.run();
    harness.key_press(egui::Key::ArrowRight);
    harness.run();
    is_moved(&harness, 2);
    assert!(block(&harness));
    harness.key_press(egui::Key::ArrowLeft);
    harness.run();
    is_moved(&harness, 1);
    assert!(block(&harness));
    // So it is with the words in its row.
    harness.get_by_label("Spray Corn, second post later in the day").focus();
    harness.run();
    harness.key_press(egui::Key::Enter);
    harness.run();
    is_moved(&harness, 2);
    assert!(!harness.get_by_label("Spray Corn, second post earlier in the day").is_focused());
}

#[test]
fn the_sheet_is_saved_under_its_own_name_with_the_cards_or_without() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("sheet.pdf");
    let mut harness = day(demo());
    for (printing, said) in [
        (Printing::Sheet(DATE), "The evening sheet written to"),
        (Printing::Day(DATE), "The evening sheet with 3 cards written to"),
    ] {
        harness.state_mut().tank_loads.printing = Some(printing);
        cards::save(harness.state_mut(), &path);
        harness.run();
        harness.get_by_label_contains(said);
        assert!(std::fs::read(&path).unwrap().starts_with(b"%PDF"));
    }
    harness.state_mut().tank_loads.printing = Some(Printing::Sheet(DATE));
    cards::save(harness.state_mut(), &folder.path().join("none").join("sheet.pdf"));
    harness.run();
    harness.get_by_label_contains("The evening sheet was not written");
}

/// The pass that is chosen already is led to as any other is.
#[test]
fn what_leads_to_a_pass_leads_out_of_the_day() {
    let mut harness = day(demo());
    let chosen = harness.state().tank_loads.chosen.clone().unwrap();
    harness.state_mut().lead_to(&Subject::Pass(chosen.clone()));
    harness.run();
    let state = &harness.state().tank_loads;
    assert_eq!((state.chosen.as_ref(), state.day), (Some(&chosen), None));
    assert!(harness.query_by_label("Name of the pass").is_some());
}
