//! The loads of a pass: how it is split, and each load to choose from.

use egui::{Sense, Stroke, StrokeKind, Ui, Vec2};
use tankard_core::farm::{Farm, InTank, LoadSplit, Pass};
use tankard_core::loads::Sizing;
use tankard_core::loads::sizing::{Choice, typed};
use tankard_core::plan::Plan;
use tankard_core::quantity::Quantity;
use tankard_core::t;
use tankard_core::words::capital;

use super::Shown;
use crate::app::Desk;
use crate::look;
use crate::parts::{boxes, lists};

const TILE: Vec2 = Vec2::new(170.0, 48.0);

/// Width of the box for how full the tank is filled.
const FILL: f32 = 84.0;

/// Shows the loads.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui, id: &str, plan: &Plan) {
    let Some(before) = desk.document.farm().passes.get(id).cloned() else { return };
    let mut pass = before.clone();
    look::sheet(ui).show(ui, |ui| {
        ui.set_width(ui.available_width());
        let is_narrow = ui.available_width() < one_line(ui, plan.loads.len());
        ui.horizontal(|ui| {
            ui.label(look::heading(t!("tank-loads-loads")));
            if super::worked(ui, plan.loads.len().to_string(), t!("loads-number-of-loads")) {
                desk.tank_loads.working = Some(Shown::Titled(t!("loads-number-of-loads").to_owned()));
            }
            ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
                ui.spacing_mut().item_spacing.x = 6.0;
                boxes::quantity_hinted(
                    ui,
                    t!("tank-loads-fill-the-tank-to"),
                    &mut pass.fill_to,
                    FILL,
                    t!("tank-loads-its-mark"),
                );
                ui.label(look::soft(ui, t!("tank-loads-fill-to")));
                ui.add_space(8.0);
                if !is_narrow {
                    ui.with_layout(egui::Layout::left_to_right(egui::Align::Center), |ui| splits(ui, &mut pass.split));
                }
            });
        });
        if is_narrow {
            ui.horizontal_wrapped(|ui| splits(ui, &mut pass.split));
        }
        if plan.loads.is_empty() {
            lists::empty(ui, t!("tank-loads-the-loads-appear-when-the-pass"));
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
        more(ui, desk.document.farm(), id, &mut pass, plan);
    });
    if pass != before {
        desk.document.edit(|farm| {
            farm.passes.insert(id.to_owned(), pass);
        });
    }
}

/// The width that the heading, the ways to split and the box beside them take in one line.
fn one_line(ui: &Ui, loads: usize) -> f32 {
    let gap = ui.spacing().item_spacing.x;
    let padding = 2.0 * ui.spacing().button_padding.x;
    let ways: f32 = WAYS.iter().map(|(_, name)| look::width(ui, name()) + padding + gap).sum();
    let words = look::width(ui, look::heading(t!("tank-loads-loads"))) + look::width(ui, loads.to_string());
    words + ways + look::width(ui, look::soft(ui, t!("tank-loads-fill-to"))) + FILL + 8.0 + 5.0 * gap
}

/// A way to split a pass into loads, with its name.
type Way = (LoadSplit, fn() -> &'static str);

/// Them all.
const WAYS: [Way; 3] = [
    (LoadSplit::FullTanks, || t!("tank-loads-full-tanks-then-a-rest")),
    (LoadSplit::EvenLoads, || t!("tank-loads-even-loads")),
    (LoadSplit::ByAims, || t!("tank-loads-by-your-aims")),
];

/// The ways to split a pass into loads.
fn splits(ui: &mut Ui, split: &mut LoadSplit) {
    for (way, name) in WAYS {
        let response = ui.selectable_value(split, way, name());
        if way == LoadSplit::ByAims {
            response.on_hover_text(t!("tank-loads-their-order-is-set-in-the"));
        }
    }
}

/// What most passes do without: other sizes, spray in the tank and beyond the ground, loads decided by hand.
fn more(ui: &mut Ui, farm: &Farm, id: &str, pass: &mut Pass, plan: &Plan) {
    let stretches = plan.sizing.iter().flat_map(|sizing| &sizing.stretches);
    let title = match stretches.map(|stretch| stretch.others.len()).sum::<usize>() {
        0 => t!("tank-loads-spray-in-the-tank-loads-decided").to_owned(),
        count => t!("tank-loads-other-sizes-of-loads", count = count),
    };
    let is_used = pass.in_tank.is_some() || pass.extra.is_some() || !pass.sizes.is_empty();
    let place = ui.make_persistent_id("more on loads");
    let mut open = ui.data(|data| data.get_temp(place)).unwrap_or(is_used);
    if super::toggle(ui, open, &title) {
        open = !open;
        ui.data_mut(|data| data.insert_temp(place, open));
    }
    if open {
        self::others(ui, farm, pass, plan);
        beside(ui, farm, id, pass, plan);
    }
}

/// What is in the tank already, what is mixed beyond the ground, and the loads that are decided by hand.
fn beside(ui: &mut Ui, farm: &Farm, id: &str, pass: &mut Pass, plan: &Plan) {
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing.x = 6.0;
        ui.label(look::soft(ui, t!("tank-loads-in-the-tank-already")));
        let mut volume = pass.in_tank.as_ref().map(|in_tank| in_tank.volume.clone());
        boxes::quantity_hinted(
            ui,
            t!("tank-loads-in-the-tank-already-24f"),
            &mut volume,
            76.0,
            t!("tank-loads-nothing"),
        );
        let from = pass.in_tank.take().map(|in_tank| in_tank.from).unwrap_or_default();
        pass.in_tank = volume.map(|volume| InTank { volume, from });
        if let Some(in_tank) = &mut pass.in_tank {
            let all: Vec<String> = std::iter::once(String::new()).chain(farm.passes.keys().cloned()).collect();
            let say = |from: &String| match farm.passes.get(from) {
                Some(_) if from == id => t!("tank-loads-this-pass").to_owned(),
                Some(other) => other.name.clone(),
                None => t!("tank-loads-mixed-elsewhere").to_owned(),
            };
            boxes::choice(ui, t!("tank-loads-the-pass-that-it-was-mixed"), &mut in_tank.from, &all, say, 150.0);
        }
        ui.add_space(8.0);
        ui.label(look::soft(ui, t!("tank-loads-beyond-the-ground")));
        boxes::quantity_hinted(
            ui,
            t!("tank-loads-mixed-beyond-the-ground"),
            &mut pass.extra,
            76.0,
            t!("tank-loads-nothing"),
        );
        ui.add_space(8.0);
        let mut sizes = Vec::new();
        for (at, size) in pass.sizes.drain(..).enumerate() {
            ui.label(look::soft(ui, t!("tank-loads-load-at", at = at + 1)));
            let mut size = Some(size);
            boxes::quantity_or_none(ui, &t!("tank-loads-load-as-decided", at = at + 1), &mut size, 76.0);
            sizes.extend(size);
        }
        pass.sizes = sizes;
        let next = plan.loads.get(pass.sizes.len());
        if let Some(next) = next
            && boxes::act(ui, &t!("tank-loads-decide-load", number = next.number)).clicked()
        {
            pass.sizes.push(typed(next.volume, farm.units));
        }
    });
}

/// Other ways to load the pass, with what each gains and costs.
fn others(ui: &mut Ui, farm: &Farm, pass: &mut Pass, plan: &Plan) {
    let Some(sizing) = &plan.sizing else { return };
    for stretch in &sizing.stretches {
        if sizing.stretches.len() > 1 {
            let names = stretch.fields.iter().filter_map(|id| farm.fields.get(id));
            let names: Vec<&str> = names.map(|field| field.name.as_str()).collect();
            ui.label(look::strong(names.join(", ")));
        }
        ui.label(look::soft(ui, figures(&stretch.chosen, sizing, farm)));
        for other in &stretch.others {
            ui.horizontal_wrapped(|ui| {
                let take = boxes::act(ui, t!("tank-loads-take")).on_hover_text(figures(&other.choice, sizing, farm));
                if take.accessible_name(t!("tank-loads-take-words", words = other.choice.words)).clicked() {
                    other.take.into_pass(pass);
                }
                ui.label(&other.choice.words);
                ui.label(look::soft(ui, format!("{}. {}.", capital(&other.label), other.trade)));
            });
        }
    }
}

/// The figures of a way in the order of the aims.
fn figures(choice: &Choice, sizing: &Sizing, farm: &Farm) -> String {
    let words: Vec<String> = sizing.aims.iter().map(|aim| choice.figures.words(*aim, farm.units)).collect();
    format!("{}: {}", choice.words, words.join(", "))
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
            t!(
                "tank-loads-load-number-volume-ground-fields",
                number = number,
                volume = volume,
                ground = ground,
                fields = fields
            ),
        )
    });
    response.on_hover_cursor(egui::CursorIcon::PointingHand).clicked()
}
