//! What a screen reader is told beyond the name of a thing: which of several is chosen, whether a part stands open, what is said anew.

use egui::{Context, Id, Response};

/// Of several the one in use.
pub fn selected(response: &Response, is_so: bool) {
    response.ctx.accesskit_node_builder(response.id, |node| node.set_selected(is_so));
}

/// Something that opens and closes a part.
pub fn expanded(response: &Response, is_so: bool) {
    response.ctx.accesskit_node_builder(response.id, |node| node.set_expanded(is_so));
}

/// What is said in place of what was said before, and read when it changes.
pub fn live(ctx: &Context, id: Id) {
    ctx.accesskit_node_builder(id, |node| node.set_live(egui::accesskit::Live::Polite));
}

/// The row that is meant while the keyboard stays in a box.
pub fn active(ctx: &Context, edit: Id, row: Id) {
    ctx.accesskit_node_builder(edit, |node| node.set_active_descendant(row.accesskit_id()));
}
