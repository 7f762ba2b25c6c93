//! A list at the left of a view: rows to choose from, with a line of less weight beneath.

use egui::{Context, Id, Response, Sense, Stroke, Ui};
use tankard_core::farm::Nouns;
use tankard_core::t;

use super::spoken;
use crate::look;

/// A row of a list; `name` is what a screen reader says.
pub fn row(ui: &mut Ui, chosen: bool, name: &str, add: impl FnOnce(&mut Ui)) -> Response {
    let response = plain_row(ui, chosen, name, add);
    if chosen
        && ui.data_mut(|data| data.remove_temp::<u64>(wants_keys())).is_some_and(|since| since + 2 >= pass(ui.ctx()))
    {
        response.request_focus();
    }
    if response.clicked() {
        ui.data_mut(|data| data.insert_temp(was_clicked(), ()));
    }
    response
}

/// A row of which nothing is remembered.
pub fn plain_row(ui: &mut Ui, chosen: bool, name: &str, add: impl FnOnce(&mut Ui)) -> Response {
    let colours = look::colours(ui);
    let back = ui.painter().add(egui::Shape::Noop);
    let width = ui.available_width();
    let inner = ui.scope_builder(egui::UiBuilder::new().sense(Sense::click()), |ui| {
        ui.set_width(width);
        egui::Frame::new().inner_margin(egui::Margin::symmetric(10, 5)).show(ui, |ui| {
            ui.set_width(ui.available_width());
            ui.spacing_mut().item_spacing.y = 1.0;
            add(ui);
        });
    });
    let response = inner.response.on_hover_cursor(egui::CursorIcon::PointingHand);
    let rect = response.rect;
    if chosen {
        ui.painter().set(back, egui::Shape::rect_filled(rect, 0, colours.sheet));
        ui.painter().vline(rect.left() + 1.0, rect.y_range(), Stroke::new(3.0, colours.brass));
    } else if response.hovered() {
        ui.painter().set(back, egui::Shape::rect_filled(rect, 0, colours.sheet.gamma_multiply(0.6)));
    }
    response.widget_info(|| egui::WidgetInfo::selected(egui::Role::ListBoxOption, true, chosen, name));
    spoken::selected(&response, chosen);
    response
}

fn pass(ctx: &Context) -> u64 {
    ctx.cumulative_pass_nr()
}

fn wants_keys() -> Id {
    Id::unique("tankard chosen row that gets the keyboard")
}

fn was_clicked() -> Id {
    Id::unique("tankard row that was clicked")
}

/// Gives the keyboard to the chosen row of the list that is drawn in the next frame; where none is, nobody gets it.
pub fn give_keys(ctx: &Context) {
    let now = pass(ctx);
    ctx.data_mut(|data| data.insert_temp(wants_keys(), now));
}

/// Whether a row was clicked since the last call.
pub fn take_clicked(ctx: &Context) -> bool {
    ctx.data_mut(|data| data.remove_temp::<()>(was_clicked())).is_some()
}

/// What can be done with the chosen thing of a list.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Act {
    /// Put it one place up.
    Up,
    /// Put it one place down.
    Down,
    /// Make another like it.
    Copy,
    /// Take it away.
    Remove,
}

/// The line of acts on the chosen thing; `what` names it.
pub fn acts(ui: &mut Ui, what: &str) -> Option<Act> {
    let mut done = None;
    ui.horizontal_wrapped(|ui| {
        for (text, act) in [
            (t!("parts-move-up"), Act::Up),
            (t!("parts-move-down"), Act::Down),
            (t!("parts-copy"), Act::Copy),
            (t!("parts-remove"), Act::Remove),
        ] {
            let response = super::boxes::act(ui, text).accessible_name(format!("{text}: {what}"));
            if response.clicked() {
                done = Some(act);
            }
        }
    });
    done
}

/// What to say where a list is empty.
pub fn empty(ui: &mut Ui, text: &str) {
    ui.add_space(look::GRID);
    ui.label(look::soft(ui, text));
    ui.add_space(look::GRID);
}

/// Does an act on an ordered map; gives the id to choose afterwards.
pub fn apply<T: Clone>(
    act: Act,
    map: &mut Nouns<T>,
    id: &str,
    rename: impl FnOnce(&mut T) -> String,
) -> Option<String> {
    let at = map.get_index_of(id)?;
    match act {
        Act::Up if at > 0 => map.swap_indices(at, at - 1),
        Act::Down if at + 1 < map.len() => map.swap_indices(at, at + 1),
        Act::Up | Act::Down => {}
        Act::Copy => {
            let mut copy = map.get(id)?.clone();
            let name = rename(&mut copy);
            let new = tankard_core::farm::id::fresh(map, &name);
            map.shift_insert(at + 1, new.clone(), copy);
            return Some(new);
        }
        Act::Remove => {
            map.shift_remove(id);
            return map.get_index(at.min(map.len().saturating_sub(1))).map(|(id, _)| id.clone());
        }
    }
    Some(id.to_owned())
}
