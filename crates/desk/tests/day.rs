//! The day as a whole in the window.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::{tank_loads, type_over};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use jiff::civil::date;
use tankard::app::Desk;
use tankard::views::tank_loads::cards::{self, Printing};
use tankard_core::farm::Farm;

const DAY: &str = "The day as a whole: Thursday 12 June 2031";

fn demo() -> Farm {
    tankard::demo::farm().unwrap()
}

fn press(harness: &mut Harness<'_, Desk>, name: &str) {
    harness.get_by_label(name).scroll_to_me();
    harness.run();
    harness.get_by_label(name).click();
    harness.run();
}

#[test]
fn a_pass_without_cards_is_said_beside_the_order() {
    let mut harness = tank_loads(demo(), [1366.0, 768.0]);
    press(&mut harness, DAY);
    harness.get_by_label("Nothing stands against this order.");
    press(&mut harness, "Settle Volunteer corn in beans");
    let state = &harness.state().tank_loads;
    assert_eq!((state.chosen.as_deref(), state.day), (Some("2031-06-12-volunteer-corn"), None));
}

#[test]
fn a_pass_that_finds_no_place_has_no_time() {
    let mut harness = tank_loads(demo(), [1366.0, 768.0]);
    press(&mut harness, DAY);
    assert!(harness.query_by_label("no place").is_none());
    type_over(&mut harness, "The rigs leave at", "05:30");
    type_over(&mut harness, "The rigs are home by", "12:00");
    harness.get_by_label("no place");
}

#[test]
fn passes_that_take_the_same_spray_are_joined_from_the_day() {
    let mut farm = demo();
    let mut beans = farm.passes["2031-06-12-volunteer-corn"].clone();
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
    let mut harness = tank_loads(farm, [1366.0, 768.0]);
    press(&mut harness, DAY);
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
    assert_eq!(farm.passes["2031-06-12-corn-second-post"].operator, "B. Demo");
}

#[test]
fn the_keyboard_stays_with_the_pass_that_it_moved() {
    let mut harness = tank_loads(demo(), [1366.0, 768.0]);
    press(&mut harness, DAY);
    type_over(&mut harness, "The rigs leave at", "05:30");
    let is_moved = |harness: &Harness<'_, Desk>, place: u32| {
        let days = &harness.state().document.farm().days;
        assert_eq!(days["2031-06-12"].pinned.get("2031-06-12-corn-second-post"), Some(&place));
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
    let mut harness = tank_loads(demo(), [1366.0, 768.0]);
    press(&mut harness, DAY);
    for (printing, said) in [
        (Printing::Sheet(date(2031, 6, 12)), "The evening sheet written to"),
        (Printing::Day(date(2031, 6, 12)), "The evening sheet with 3 cards written to"),
    ] {
        harness.state_mut().tank_loads.printing = Some(printing);
        cards::save(harness.state_mut(), &path);
        harness.run();
        harness.get_by_label_contains(said);
        assert!(std::fs::read(&path).unwrap().starts_with(b"%PDF"));
    }
    harness.state_mut().tank_loads.printing = Some(Printing::Sheet(date(2031, 6, 12)));
    cards::save(harness.state_mut(), &folder.path().join("none").join("sheet.pdf"));
    harness.run();
    harness.get_by_label_contains("The evening sheet was not written");
}
