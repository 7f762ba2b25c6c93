//! The box and the list of what was found, below the bar.

use egui::{Area, Context, EventFilter, Frame, Id, Label, Order, Pos2, ScrollArea, TextEdit, Ui, Vec2};
use tankard_core::farm::Farm;
use tankard_core::t;

use super::index::{self, Thing};
use super::{Open, State};
use crate::look;
use crate::parts::{boxes, lists, spoken};

/// How wide it is where there is room.
const WIDTH: f32 = 560.0;
/// How high its list is at most.
const HEIGHT: f32 = 420.0;

impl State {
    /// Shows it, where it is open; gives what was clicked. `of` says which state of which farm is open.
    pub fn show(&mut self, ctx: &Context, farm: &Farm, of: (u64, u64)) -> Option<Thing> {
        let open = self.open.as_mut()?;
        open.look(farm, of);
        if !open.index.is_whole() {
            ctx.request_repaint();
        }
        let room = ctx.content_rect();
        let width = WIDTH.min(room.width() - 24.0);
        let at = Pos2::new(room.center().x - width / 2.0, room.top() + look::BAR + 4.0);
        let area = Area::new(Id::unique("tankard find anything")).order(Order::Foreground).fixed_pos(at);
        let shown = area.constrain_to(room).show(ctx, |ui| {
            let frame = Frame::popup(ui.style()).fill(look::colours(ui).ground).inner_margin(Vec2::splat(10.0));
            frame
                .show(ui, |ui| open.inside(ui, farm, width, (room.height() - look::BAR - 110.0).clamp(80.0, HEIGHT)))
                .inner
        });
        open.look(farm, of);
        let clicked = shown.inner;
        let outside = ctx.input(|input| {
            input.pointer.any_pressed()
                && input.pointer.interact_pos().is_some_and(|at| !shown.response.rect.contains(at))
        });
        if clicked.is_some() || outside {
            self.open = None;
            return clicked;
        }
        self.go(ctx)
    }
}

impl Open {
    fn inside(&mut self, ui: &mut Ui, farm: &Farm, width: f32, height: f32) -> Option<Thing> {
        ui.set_width(width - 20.0);
        // Tab moves in the list, since there is nothing else to go to.
        let filter = EventFilter { tab: true, horizontal_arrows: true, vertical_arrows: true, escape: true };
        let edit = TextEdit::singleline(&mut self.query)
            .desired_width(f32::INFINITY)
            .hint_text(t!("find-a-field-pass-product-day-command"))
            .event_filter(filter);
        let edit = ui.add(edit).accessible_name(t!("find-find-anything"));
        if std::mem::take(&mut self.is_fresh) || !edit.has_focus() {
            edit.request_focus();
        }
        // Where the letters of this frame are not looked for yet, the list is that of the last.
        let Some((_, _, found)) = &self.found else { return None };
        let things = found.things.clone();
        let said = self.said();
        ui.add_space(2.0);
        let count = ui.label(look::soft(ui, said));
        spoken::live(ui.ctx(), count.id);
        if things.is_empty() {
            return None;
        }
        let mut clicked = None;
        let reveal = std::mem::take(&mut self.reveal);
        ScrollArea::vertical().id_salt("found").max_height(height).min_scrolled_height(height).show(ui, |ui| {
            ui.spacing_mut().item_spacing.y = 0.0;
            for (at, thing) in things.iter().enumerate() {
                let Some((name, beside)) = index::words(farm, *thing) else { continue };
                let is_chosen = at == self.chosen;
                let kind = thing.kind.word();
                let row = lists::plain_row(ui, is_chosen, &spoken(&name, kind, &beside), |ui| {
                    row(ui, &name, kind, &beside, is_chosen);
                });
                if is_chosen {
                    // The box keeps the keyboard; a screen reader is told which row is meant.
                    spoken::active(ui.ctx(), edit.id, row.id);
                    if reveal {
                        row.scroll_to_me_animation(None, egui::style::ScrollAnimation::none());
                    }
                }
                if row.clicked() {
                    clicked = Some(*thing);
                }
            }
        });
        clicked
    }

    /// How much was found, and whether there is more than is listed.
    fn said(&self) -> String {
        let Some((query, _, found)) = &self.found else { return String::new() };
        if query.trim().is_empty() {
            return t!("find-type-some-letters-down-and-up").to_owned();
        }
        let not_yet = if self.index.is_whole() { "" } else { t!("find-so-far") };
        let is_cut = found.counts.iter().any(|count| *count > index::LISTED);
        match found.count() {
            0 if !self.index.is_whole() => t!("find-nothing-has-these-words-so-far").to_owned(),
            0 => t!("find-nothing-has-these-words").to_owned(),
            count if is_cut => {
                t!("find-found-of-each-kind-the-best", count = count, not_yet = not_yet, listed = index::LISTED)
            }
            count => t!("find-found", count = count, not_yet = not_yet),
        }
    }
}

fn row(ui: &mut Ui, name: &str, kind: &str, beside: &str, is_chosen: bool) {
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = look::GRID;
        let name = if is_chosen { look::strong(name) } else { egui::RichText::new(name) };
        boxes::slot_of(ui, Vec2::new(62.0, 18.0), |ui| ui.label(look::soft(ui, kind)));
        let room = ui.available_width();
        ui.scope(|ui| {
            ui.set_max_width(room * if beside.is_empty() { 1.0 } else { 0.62 });
            ui.add(Label::new(name).truncate());
        });
        if !beside.is_empty() {
            ui.add(Label::new(look::soft(ui, beside)).truncate());
        }
    });
}

fn spoken(name: &str, kind: &str, beside: &str) -> String {
    if beside.is_empty() { format!("{name}, {kind}") } else { format!("{name}, {kind}, {beside}") }
}
