//! What lies beside a field: typed by hand, and drawn on the map.

use egui::{Label, Ui};
use tankard_core::farm::{Farm, Field, Neighbour};
use tankard_core::ground;
use tankard_core::quantity::Quantity;
use tankard_core::t;

use crate::look;
use crate::parts::boxes;
use crate::views::tank_loads::cell;

/// Width from which on all that is typed of a neighbour stands in one line.
const ONE_LINE: f32 = 570.0;

/// Shows both.
pub(super) fn show(ui: &mut Ui, field: &mut Field, farm: &Farm) {
    ui.label(look::heading(t!("fields-neighbours-that-matter")));
    let mut remove = None;
    for (at, neighbour) in field.neighbours.iter_mut().enumerate() {
        ui.push_id(("neighbour", at), |ui| {
            let first = |ui: &mut Ui, neighbour: &mut Neighbour| {
                boxes::text(ui, t!("fields-what-the-neighbour-is"), &mut neighbour.what, 190.0);
                ui.label(look::soft(ui, t!("fields-head-side")));
                boxes::text(ui, t!("fields-side-of-the-field"), &mut neighbour.side, 80.0);
            };
            // Where room is short the distance stands in a line of its own.
            let one_line = ui.available_width() >= ONE_LINE;
            if !one_line {
                ui.horizontal(|ui| first(ui, neighbour));
            }
            ui.horizontal(|ui| {
                if one_line {
                    first(ui, neighbour);
                }
                ui.label(look::soft(ui, t!("fields-label-from-the-edge")));
                boxes::quantity_or_none(ui, t!("fields-distance-from-the-edge"), &mut neighbour.distance, 100.0);
                if boxes::act(ui, t!("fields-take-out"))
                    .accessible_name(t!("fields-take-out-what", what = neighbour.what))
                    .clicked()
                {
                    remove = Some(at);
                }
            });
        });
    }
    if let Some(at) = remove {
        field.neighbours.remove(at);
    }
    let drawn = ground::around(farm, field);
    if field.neighbours.is_empty() {
        let words = if drawn.is_empty() {
            t!("fields-none-is-typed-creeks-wells-homes")
        } else {
            t!("fields-none-is-typed-beside-what-is")
        };
        ui.label(look::soft(ui, words));
    }
    for around in &drawn {
        ui.horizontal(|ui| {
            cell(ui, 190.0, false, |ui| {
                ui.add(Label::new(&around.drawn.name).truncate());
            });
            let distance = if around.distance.is_zero() {
                t!("fields-at-its-edge").to_owned()
            } else {
                t!("fields-from-the-edge", distance = around.distance.show(farm.units))
            };
            let side = ground::side_of(&around.directions);
            ui.label(look::soft(
                ui,
                t!("fields-drawn", kind = around.drawn.kind.name(), side = side, distance = distance),
            ));
        });
    }
    if boxes::act(ui, t!("fields-add-a-neighbour")).clicked() {
        field.neighbours.push(Neighbour::default());
    }
}
