//! What tests of the desk have in common: a window of a size, an hour of the evening, a text typed over another.

#![allow(dead_code)] // Each test takes what it needs of it.

pub(crate) mod seen;
pub(crate) mod shed;

use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use jiff::civil::{DateTime, datetime};
use tankard::app::Desk;
use tankard::command::View;
use tankard::document::Document;
use tankard::look;
use tankard_core::farm::Farm;

/// A desk in a window, before its first frame.
pub(crate) fn window(desk: Desk, size: [f32; 2]) -> Harness<'static, Desk> {
    Harness::builder()
        .with_size(size)
        .with_context_setup(look::install)
        .build_ui_state(|ui, desk: &mut Desk| desk.show(ui), desk)
}

/// The evening before the demo farm sprays.
pub(crate) fn evening(_zone: &str) -> DateTime {
    datetime(2031, 6, 11, 20, 14, 0, 0)
}

/// A farm with its tank loads in front.
pub(crate) fn tank_loads(farm: Farm, size: [f32; 2]) -> Harness<'static, Desk> {
    let mut desk = Desk::new(Document::copy(farm), evening);
    desk.view = View::TankLoads;
    let mut harness = window(desk, size);
    harness.run();
    harness
}

/// Types a text in place of what a box holds.
pub(crate) fn type_over(harness: &mut Harness<'_, Desk>, name: &str, text: &str) {
    harness.get_by_label(name).focus();
    harness.run();
    harness.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::A);
    harness.run();
    harness.event(egui::Event::Text(text.to_owned()));
    harness.run();
}
