//! The shed in a window, and the ways in which a person types into it.

use egui::accesskit::Role;
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use jiff::civil::{DateTime, date};
use tankard::app::Desk;
use tankard::command::View;
use tankard::document::Document;
use tankard_core::farm::Farm;
use tankard_core::quantity::{AsTyped, Quantity};

pub(crate) type Shed = Harness<'static, Desk>;

fn clock(_zone: &str) -> DateTime {
    date(2031, 6, 11).at(18, 0, 0, 0)
}

/// The whole desk with the shed in front, so that undo and the rest are there as in the program.
pub(crate) fn shed(farm: Farm, size: [f32; 2]) -> Shed {
    let mut desk = Desk::new(Document::copy(farm), clock);
    desk.view = View::Shed;
    let mut harness = super::window(desk, size);
    harness.run();
    harness
}

pub(crate) fn edit<'a>(harness: &'a Shed, name: &'a str) -> egui_kittest::Node<'a> {
    harness.get_by(|node| {
        matches!(node.role(), Role::TextInput | Role::MultilineTextInput) && node.label().as_deref() == Some(name)
    })
}

/// Types a text into a box in place of what is in it.
pub(crate) fn put(harness: &mut Shed, name: &str, text: &str) {
    edit(harness, name).scroll_to_me();
    harness.run();
    edit(harness, name).focus();
    harness.run();
    harness.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::A);
    harness.run();
    if text.is_empty() {
        harness.key_press(egui::Key::Delete);
    } else {
        edit(harness, name).type_text(text);
    }
    harness.run();
}

pub(crate) fn press(harness: &mut Shed, name: &str) {
    harness.get_by_label(name).scroll_to_me();
    harness.run();
    harness.get_by_label(name).click();
    harness.run();
}

pub(crate) fn choose(harness: &mut Shed, closed: &str, chosen: &str) {
    press(harness, closed);
    press(harness, chosen);
}

pub(crate) fn farm(harness: &Shed) -> &Farm {
    harness.state().document.farm()
}

pub(crate) fn q<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap()
}
