//! What was probably meant in place of what is typed: at the box, and beside the finding. Taking it is one key or one click, and an edit
//! like any other. A view says in each frame what is offered; the boxes of the frame show what is for them.

use egui::{Area, Context, Frame, Id, Order, Pos2, Rect, Response, RichText, Stroke, StrokeKind, Ui, Vec2};
use tankard_core::finding::Finding;
use tankard_core::plausible::{Offer, Slot};
use tankard_core::t;
use tankard_core::typed::Refused;

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

fn asked() -> Id {
    Id::unique("tankard slot whose box is to take the keyboard")
}

/// How many frames a box may keep one waiting.
const PATIENCE: u64 = 30;

/// Gives the keyboard to the box of a slot as soon as it is drawn.
pub fn want(ctx: &Context, slot: &Slot) {
    let until = ctx.cumulative_pass_nr() + PATIENCE;
    ctx.data_mut(|data| data.insert_temp(asked(), (slot.clone(), until)));
    ctx.request_repaint();
}

/// Gives the keyboard to a box that was just drawn where it is this one that is wanted.
fn claim(ui: &mut Ui, name: &str, slot: &Slot) {
    let Some((wanted, until)) = ui.data(|data| data.get_temp::<(Slot, u64)>(asked())) else { return };
    let is_waiting = wanted != *slot && ui.ctx().cumulative_pass_nr() <= until;
    // What is clicked keeps the keyboard for the frame of the click.
    if is_waiting || ui.input(|input| input.pointer.any_click()) {
        return;
    }
    ui.data_mut(|data| data.remove::<(Slot, u64)>(asked()));
    if wanted == *slot {
        boxes::focus(ui, name);
        if let Some(response) = ui.ctx().read_response(boxes::edit_id(ui, name)) {
            response.scroll_to_me(Some(egui::Align::Center));
        }
    }
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
    claim(ui, name, slot);
    let ctx = ui.ctx().clone();
    let all: Vec<Offer> = ctx.data(|data| data.get_temp(shown())).unwrap_or_default();
    let offers: Vec<Offer> = all.into_iter().filter(|offer| offer.is_for(slot)).collect();
    let Some(first) = offers.first() else { return };
    let id = boxes::edit_id(ui, name);
    // What cannot be read has its own.
    if boxes::is_unread(ui, name) {
        return;
    }
    let Some(response) = ctx.read_response(id) else { return };
    let colour = look::colours(ui).check;
    ui.painter().rect_stroke(response.rect, 4, Stroke::new(1.5, colour), StrokeKind::Inside);
    let has_focus = response.has_focus();
    if has_focus && offer::TAKE.taken(&ctx) {
        take(&ctx, first);
    }
    below(ui, id.with("offers"), response.rect, has_focus, |ui| {
        acts(ui, &offers);
        key_takes(ui, &first.text());
    });
}

/// Says by which key what comes first is taken.
fn key_takes(ui: &mut Ui, first: &str) {
    ui.label(look::soft(ui, t!("parts-takes", keys = keys::any_of(offer::TAKE.keys), first = first)));
}

/// Says by which key the first of the offers is taken in a box that is in use, and takes it by that.
pub fn by_key(ui: &mut Ui, first: &Offer) {
    if offer::TAKE.taken(ui.ctx()) {
        take(ui.ctx(), first);
    }
    key_takes(ui, &first.text());
}

/// Why the text of a box cannot be read, and what it was probably meant as: that is given when it is taken. `sure` is what it is taken as
/// when the box is left.
pub fn in_place(ui: &Ui, id: Id, response: &Response, refused: &Refused, sure: Option<&String>) -> Option<String> {
    let first = refused.meant.first()?;
    let mut taken = None;
    let has_focus = response.has_focus();
    if has_focus && offer::TAKE.taken(ui.ctx()) {
        taken = Some(first.clone());
    }
    below(ui, id.with("meant"), response.rect, has_focus || response.hovered(), |ui| {
        ui.label(RichText::new(&refused.why).color(look::colours(ui).stop));
        ui.horizontal_wrapped(|ui| {
            ui.spacing_mut().button_padding.x = 0.0;
            ui.spacing_mut().item_spacing.x = 10.0;
            for meant in &refused.meant {
                if boxes::act(ui, &t!("parts-take", offer = meant)).clicked() {
                    taken = Some(meant.clone());
                }
            }
        });
        if sure == Some(first) {
            let keys = keys::any_of(offer::TAKE.keys);
            ui.label(look::soft(ui, t!("parts-takes-and-leaving", keys = keys, first = first)));
        } else {
            key_takes(ui, first);
        }
    });
    taken
}

/// What stands below a box while that is in use, and moves nothing.
fn below(ui: &Ui, id: Id, of: Rect, is_in_use: bool, add: impl FnOnce(&mut Ui)) {
    let ctx = ui.ctx();
    // A click on it takes the keyboard from the box, and it must not go before the click is done.
    let was: Option<Rect> = ctx.data(|data| data.get_temp(id));
    let is_over = was.zip(ctx.input(|input| input.pointer.latest_pos())).is_some_and(|(rect, at)| rect.contains(at));
    if !is_in_use && !is_over {
        ctx.data_mut(|data| data.remove::<Rect>(id));
        return;
    }
    let room = ctx.content_rect();
    let at = Pos2::new(of.left().min(room.right() - 260.0), of.bottom() + 2.0);
    let area = Area::new(id).order(Order::Foreground).fixed_pos(at).constrain_to(room).show(ctx, |ui| {
        Frame::popup(ui.style()).inner_margin(Vec2::new(8.0, 4.0)).show(ui, |ui| {
            ui.set_max_width(240.0);
            ui.spacing_mut().item_spacing.y = 1.0;
            add(ui);
        });
    });
    ctx.data_mut(|data| data.insert_temp(id, area.response.rect));
}
