//! The loads of a pass: how it is split, and each load to choose from.

use egui::{Sense, Stroke, StrokeKind, Ui, Vec2};
use tankard_core::farm::LoadSplit;
use tankard_core::plan::Plan;
use tankard_core::quantity::Quantity;

use super::Shown;
use crate::app::Desk;
use crate::look;
use crate::parts::{boxes, lists};

const TILE: Vec2 = Vec2::new(170.0, 48.0);

/// Below this width the way of splitting stands under the heading.
const NARROW: f32 = 420.0;

/// Shows the loads.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui, id: &str, plan: &Plan) {
    let Some(before) = desk.document.farm().passes.get(id).cloned() else { return };
    let mut pass = before.clone();
    look::sheet(ui).show(ui, |ui| {
        ui.set_width(ui.available_width());
        let is_narrow = ui.available_width() < NARROW;
        ui.horizontal(|ui| {
            ui.label(look::heading("Loads"));
            if super::worked(ui, plan.loads.len().to_string(), "Number of loads") {
                desk.tank_loads.working = Some(Shown::Titled("Number of loads".to_owned()));
            }
            if is_narrow {
                return;
            }
            ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
                ui.spacing_mut().item_spacing.x = 6.0;
                boxes::quantity_hinted(ui, "Fill the tank to", &mut pass.fill_to, 84.0, "its mark");
                ui.label(look::soft(ui, "fill to"));
                ui.add_space(8.0);
                ui.selectable_value(&mut pass.split, LoadSplit::EvenLoads, "even loads");
                ui.selectable_value(&mut pass.split, LoadSplit::FullTanks, "full tanks, then a rest");
            });
        });
        if is_narrow {
            ui.horizontal_wrapped(|ui| {
                ui.selectable_value(&mut pass.split, LoadSplit::FullTanks, "full tanks, then a rest");
                ui.selectable_value(&mut pass.split, LoadSplit::EvenLoads, "even loads");
            });
            ui.horizontal(|ui| {
                ui.label(look::soft(ui, "fill to"));
                boxes::quantity_hinted(ui, "Fill the tank to", &mut pass.fill_to, 84.0, "its mark");
            });
        }
        if plan.loads.is_empty() {
            lists::empty(ui, "The loads appear when the pass has fields, a rig and a spray volume.");
        }
        ui.horizontal_wrapped(|ui| {
            ui.spacing_mut().item_spacing = Vec2::splat(8.0);
            for load in &plan.loads {
                let farm = desk.document.farm();
                let fields: Vec<&str> = load
                    .fields
                    .iter()
                    .filter_map(|(id, _)| farm.fields.get(id))
                    .map(|field| field.name.as_str())
                    .collect();
                let volume = load.volume.show(farm.units);
                let ground = load.area.show(farm.units);
                if tile(ui, load.number, &volume, &ground, &fields.join(", "), load.number == desk.tank_loads.load) {
                    desk.tank_loads.load = load.number;
                }
            }
        });
    });
    if pass != before {
        desk.document.edit(|farm| {
            farm.passes.insert(id.to_owned(), pass);
        });
    }
}

fn tile(ui: &mut Ui, number: u32, volume: &str, ground: &str, fields: &str, chosen: bool) -> bool {
    let colours = look::colours(ui);
    let (rect, response) = ui.allocate_exact_size(TILE, Sense::click());
    let (face, edge) = if chosen {
        (colours.selected, Stroke::new(2.0, colours.water))
    } else if response.hovered() || response.has_focus() {
        (colours.sheet, Stroke::new(1.5, colours.brass))
    } else {
        (colours.sheet, Stroke::new(1.0, colours.hairline))
    };
    ui.painter().rect(rect, 2, face, edge, StrokeKind::Inside);
    let room = rect.shrink2(Vec2::new(10.0, 3.0));
    let mut inside =
        ui.new_child(egui::UiBuilder::new().max_rect(room).layout(egui::Layout::top_down(egui::Align::Min)));
    inside.spacing_mut().item_spacing.y = 0.0;
    inside.horizontal(|ui| {
        ui.label(look::strong(number.to_string()));
        ui.label(volume);
        ui.label(look::soft(ui, ground));
    });
    inside.add(egui::Label::new(look::soft(ui, fields)).truncate());
    response.widget_info(|| {
        egui::WidgetInfo::selected(
            egui::Role::ListBoxOption,
            true,
            chosen,
            format!("Load {number}: {volume}, {ground}, {fields}"),
        )
    });
    response.on_hover_cursor(egui::CursorIcon::PointingHand).clicked()
}
