//! What hands do in boxes and lists: a text that cannot be read changes nothing, Enter goes on, letters choose.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use egui::accesskit::Role;
use egui::{Event, Key};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use tankard::app::Desk;
use tankard::command::View;
use tankard::demo;
use tankard::document::Document;
use tankard_core::farm::Formulation;

/// Types letter by letter over what a box holds, a frame each.
fn type_slowly(harness: &mut Harness<'_, Desk>, name: &str, text: &str) {
    harness.get_by_role_and_label(Role::TextInput, name).focus();
    harness.run();
    harness.key_press_modifiers(egui::Modifiers::COMMAND, Key::A);
    harness.run();
    for letter in text.chars() {
        harness.event(Event::Text(letter.to_string()));
        harness.run();
    }
}

fn shed() -> Harness<'static, Desk> {
    let mut desk = Desk::new(Document::copy(demo::farm().unwrap()), common::evening);
    desk.view = View::Shed;
    let mut harness = common::window(desk, [1366.0, 768.0]);
    harness.run();
    harness
}

#[test]
fn a_text_that_cannot_be_read_leaves_what_was_there() {
    let mut harness = common::tank_loads(demo::farm().unwrap(), [1366.0, 768.0]);
    let rate = |harness: &Harness<'_, Desk>| {
        let farm = harness.state().document.farm();
        farm.passes
            .values()
            .flat_map(|pass| &pass.mix)
            .find(|line| line.product == "glyphosate-540")
            .unwrap()
            .rate
            .text()
            .to_owned()
    };
    let before = rate(&harness);
    let name = "Rate of Glyphosate 540 SL (demo)";
    // "30 fl oz/ac" is read on the way to what is not, and then is not what is held.
    type_slowly(&mut harness, name, "30 fl oz/acc");
    assert_eq!(rate(&harness), before);
    harness.key_press(Key::Backspace);
    harness.run();
    assert_eq!(rate(&harness), "30 fl oz/ac");
}

#[test]
fn enter_goes_on_but_not_from_a_text_that_cannot_be_read() {
    let mut harness = shed();
    harness.get_by_role_and_label(Role::Tab, "Farm").click();
    harness.run();
    let focused = |harness: &Harness<'_, Desk>| harness.ctx.memory(egui::Memory::focused);
    let first = harness.get_by_role_and_label(Role::TextInput, "name of the farm");
    first.focus();
    harness.run();
    let at = focused(&harness);
    harness.key_press(Key::Enter);
    harness.run();
    assert!(focused(&harness).is_some() && focused(&harness) != at, "{:?}", focused(&harness));
}

/// The product whose page is open, which is liquid at first.
fn formulation(harness: &Harness<'_, Desk>) -> Formulation {
    harness.state().document.farm().products["glyphosate-540"].formulation
}

#[test]
fn letters_lead_to_a_row_of_an_open_list() {
    let mut harness = shed();
    let id = "glyphosate-540".to_owned();
    assert!(harness.state().document.farm().products.contains_key(&id));
    assert_eq!(formulation(&harness), Formulation::SL);
    harness.query_all_by_role(Role::ComboBox).find(|node| named(node).starts_with("formulation: SL")).unwrap().focus();
    harness.run();
    harness.key_press(Key::Enter);
    harness.run();
    // It opens at what is chosen: a step down and up again is the same.
    for key in [Key::ArrowDown, Key::ArrowUp] {
        harness.key_press(key);
        harness.run();
    }
    harness.key_press(Key::Enter);
    harness.run();
    assert_eq!(formulation(&harness), Formulation::SL);
    harness.key_press(Key::Enter);
    harness.run();
    // A blank after letters is one of them and chooses nothing.
    for (key, text) in [(Key::E, "e"), (Key::C, "c"), (Key::Comma, ","), (Key::Space, " ")] {
        harness.key_press(key);
        harness.event(Event::Text(text.to_owned()));
    }
    harness.run();
    assert_eq!(formulation(&harness), Formulation::SL);
    harness.key_press(Key::Enter);
    harness.run();
    assert_eq!(formulation(&harness), Formulation::EC);
}

#[test]
fn a_record_of_a_day_to_come_cannot_be_signed() {
    let mut harness = common::tank_loads(demo::farm().unwrap(), [1366.0, 768.0]);
    harness.get_by_label("Record as sprayed").click();
    harness.run();
    harness.get_by_label_contains("is still to come: it can be signed once it is sprayed");
    assert!(harness.query_by_label("Sign the record…").is_none());
}

fn named(node: &egui_kittest::Node<'_>) -> String {
    let node = node.accesskit_node();
    node.label().or_else(|| node.value()).unwrap_or_default()
}
