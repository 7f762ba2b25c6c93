//! What was probably meant in place of what is typed: at the box, and beside the finding. Taking it is one key or one click, and an edit
//! like any other. A view says in each frame what is offered; the boxes of the frame show what is for them.

use egui::{Area, Context, Frame, Id, Order, Pos2, Rect, Stroke, StrokeKind, Ui, Vec2};
use tankard_core::finding::Finding;
use tankard_core::plausible::{Offer, Slot};
use tankard_core::t;

use super::boxes;
use crate::keys::{self, offer};
use crate::look;

fn shown() -> Id {
    Id::unique("tankard offers of this frame")
}

fn wanted() -> Id {
    Id::unique("tankard offer that is taken")
}

/// Says what is offered in this frame.
pub fn set<'a>(ctx: &Context, findings: impl IntoIterator<Item = &'a Finding>) {
    let all: Vec<Offer> = findings.into_iter().flat_map(|finding| finding.offers.iter().cloned()).collect();
    ctx.data_mut(|data| data.insert_temp(shown(), all));
}

/// The offer that was taken in this frame, once.
pub fn taken(ctx: &Context) -> Option<Offer> {
    ctx.data_mut(|data| data.remove_temp::<Option<Offer>>(wanted())).flatten()
}

fn take(ctx: &Context, offer: &Offer) {
    ctx.data_mut(|data| data.insert_temp(wanted(), Some(offer.clone())));
    ctx.request_repaint();
}

/// Acts that take what is offered, in a row that wraps.
pub fn acts(ui: &mut Ui, offers: &[Offer]) {
    if offers.is_empty() {
        return;
    }
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().button_padding.x = 0.0;
        ui.spacing_mut().item_spacing.x = 10.0;
        for offer in offers {
            if act(ui, offer) {
                take(ui.ctx(), offer);
            }
        }
    });
}

fn act(ui: &mut Ui, offer: &Offer) -> bool {
    boxes::act(ui, &t!("parts-take", offer = offer.text()))
        .on_hover_text(t!("parts-probably-meant", why = offer.why))
        .clicked()
}

/// What is offered for a box that was just drawn under this name in the same place: an outline, and while the box is in use what to take
/// below it, which moves nothing.
pub fn at_box(ui: &mut Ui, name: &str, slot: &Slot) {
    let ctx = ui.ctx().clone();
    let all: Vec<Offer> = ctx.data(|data| data.get_temp(shown())).unwrap_or_default();
    let offers: Vec<Offer> = all.into_iter().filter(|offer| offer.is_for(slot)).collect();
    let Some(first) = offers.first() else { return };
    let id = boxes::edit_id(ui, name);
    let Some(response) = ctx.read_response(id) else { return };
    let colour = look::colours(ui).check;
    ui.painter().rect_stroke(response.rect, 4, Stroke::new(1.5, colour), StrokeKind::Inside);
    let below = id.with("offers");
    let has_focus = response.has_focus();
    // A click on it takes the keyboard from the box, and it must not go before the click is done.
    let was: Option<Rect> = ctx.data(|data| data.get_temp(below));
    let is_over = was.zip(ctx.input(|input| input.pointer.latest_pos())).is_some_and(|(rect, at)| rect.contains(at));
    if !has_focus && !is_over {
        ctx.data_mut(|data| data.remove::<Rect>(below));
        return;
    }
    if has_focus && offer::TAKE.taken(&ctx) {
        take(&ctx, first);
    }
    let room = ctx.content_rect();
    let at = Pos2::new(response.rect.left().min(room.right() - 260.0), response.rect.bottom() + 2.0);
    let area = Area::new(below).order(Order::Foreground).fixed_pos(at).constrain_to(room).show(&ctx, |ui| {
        Frame::popup(ui.style()).inner_margin(Vec2::new(8.0, 4.0)).show(ui, |ui| {
            ui.set_max_width(240.0);
            ui.spacing_mut().item_spacing.y = 1.0;
            acts(ui, &offers);
            ui.label(look::soft(ui, t!("parts-takes", keys = keys::any_of(offer::TAKE.keys), first = first.text())));
        });
    });
    ctx.data_mut(|data| data.insert_temp(below, area.response.rect));
}
