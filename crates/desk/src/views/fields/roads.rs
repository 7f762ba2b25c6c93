//! Roads from a field to others, where they are shorter than by way of the yard. A road stands on the pages of both its fields.

use egui::Ui;
use tankard_core::farm::{Farm, Id, Road};
use tankard_core::quantity::{AsTyped, Length};
use tankard_core::t;

use crate::app::Desk;
use crate::look;
use crate::parts::boxes;
use crate::views::tank_loads::cell;

/// Shows the roads of a field, with a row to add one.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui, id: &Id) {
    ui.label(look::heading(t!("fields-roads-to-other-fields")));
    let farm = desk.document.farm();
    let mut rows: Vec<Id> = farm.roads.iter().filter_map(|road| other_end(road, id)).cloned().collect();
    if let Some((from, to)) = &desk.fields.road
        && from == id
        && !rows.contains(to)
    {
        rows.push(to.clone());
    }
    let mut changed = None;
    for other in &rows {
        let before = farm.roads.iter().find(|road| other_end(road, id) == Some(other)).map(|road| road.length.clone());
        let mut length = before.clone();
        let name = name_of(farm, other);
        let mut out = false;
        ui.push_id(("road", other), |ui| {
            ui.horizontal_wrapped(|ui| {
                cell(ui, 190.0, false, |ui| {
                    ui.add(egui::Label::new(&name).truncate());
                });
                boxes::quantity_hinted(
                    ui,
                    &t!("fields-road-to", name = name),
                    &mut length,
                    100.0,
                    t!("fields-by-the-yard"),
                );
                ui.label(look::soft(ui, t!("fields-from-gate-to-gate")));
                out = boxes::act(ui, t!("fields-take-out"))
                    .accessible_name(t!("fields-take-out-the-road", name = name))
                    .clicked();
            });
        });
        if out || length != before {
            changed = Some((other.clone(), length.filter(|_| !out), out));
        }
    }
    if rows.is_empty() {
        ui.label(look::soft(ui, t!("fields-none-is-typed-from-field-to")));
    }
    let mut add = Id::new();
    let free: Vec<Id> = farm.fields.keys().filter(|other| *other != id && !rows.contains(other)).cloned().collect();
    if !free.is_empty() {
        let all: Vec<Id> = std::iter::once(Id::new()).chain(free).collect();
        let say =
            |other: &Id| if other.is_empty() { t!("fields-add-a-road-to").to_owned() } else { name_of(farm, other) };
        boxes::choice(ui, t!("fields-add-a-road-to-another-field"), &mut add, &all, say, 190.0);
    }
    if !add.is_empty() {
        desk.fields.road = Some((id.clone(), add));
    }
    if let Some((other, length, out)) = changed {
        // An emptied box stays until its row is taken out.
        desk.fields.road = (!out).then(|| (id.clone(), other.clone()));
        desk.document.edit(|farm| put(farm, id, other, length));
    }
}

/// The field at the other end of a road; `None` where it does not touch this one.
fn other_end<'a>(road: &'a Road, id: &Id) -> Option<&'a Id> {
    match (road.from == *id, road.to == *id) {
        (true, false) => Some(&road.to),
        (false, true) => Some(&road.from),
        _ => None,
    }
}

fn name_of(farm: &Farm, id: &Id) -> String {
    farm.fields.get(id).map_or_else(|| t!("fields-not-on-the-farm", id = id), |field| field.name.clone())
}

/// Puts a road in the place of the one that was there; without a length there is none.
fn put(farm: &mut Farm, from: &Id, to: Id, length: Option<AsTyped<Length>>) {
    let is_it = |road: &Road| other_end(road, from) == Some(&to);
    match (farm.roads.iter_mut().find(|road| is_it(road)), length) {
        (Some(road), Some(length)) => road.length = length,
        (None, Some(length)) => farm.roads.push(Road { from: from.clone(), to, length }),
        (_, None) => farm.roads.retain(|road| !is_it(road)),
    }
}
