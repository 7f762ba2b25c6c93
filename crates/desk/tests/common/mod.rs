//! The desk in a window of a size, as every test of it begins.

use egui_kittest::Harness;
use tankard::app::Desk;
use tankard::look;

/// A desk in a window, before its first frame.
pub(crate) fn window(desk: Desk, size: [f32; 2]) -> Harness<'static, Desk> {
    Harness::builder()
        .with_size(size)
        .with_context_setup(look::install)
        .build_ui_state(|ui, desk: &mut Desk| desk.show(ui), desk)
}
