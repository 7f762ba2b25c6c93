//! The list of fields. A row is edited in the row.

use egui::{Label, ScrollArea, Sense, Stroke, Ui, Vec2};
use tankard_core::farm::{Farm, Field, Id};
use tankard_core::language::days::day_month;
use tankard_core::plausible::Slot;
use tankard_core::quantity::{Area, AsTyped, Quantity, Units};
use tankard_core::season::Log;
use tankard_core::t;

use crate::app::Desk;
use crate::command::Command;
use crate::look;

use crate::parts::{boxes, lists, offers};

/// Room between two columns.
const GAP: f32 = 6.0;
/// Room before the first column.
const EDGE: f32 = 8.0;
/// Room that the words of a box keep from its edge, and the last column from the bar that scrolls.
const INSET: f32 = 8.0;
/// Room from which on the last column is shown.
const LAST: f32 = 80.0;

/// Widths of the columns.
#[derive(Clone, Copy)]
struct Widths {
    name: f32,
    area: f32,
    crop: f32,
    stage: f32,
    /// What is left for the passes; none where that is too little.
    last: Option<f32>,
}

impl Widths {
    fn of(room: f32) -> Self {
        let (name, area, crop, stage) = (144.0, 74.0, 104.0, 76.0);
        let last = room - EDGE - name - area - crop - stage - 4.0 * GAP - INSET;
        if last >= LAST {
            return Self { name, area, crop, stage, last: Some(last) };
        }
        let (crop, stage) = (102.0, 74.0);
        Self { name: room - EDGE - area - crop - stage - 3.0 * GAP, area, crop, stage, last: None }
    }
}

/// Shows the list.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui) {
    ui.horizontal_wrapped(|ui| {
        boxes::find(ui, t!("fields-find-a-field-or-crop"), &mut desk.fields.find, 220.0);
        let farm = desk.document.farm();
        let total: Area = farm.fields.values().map(|field| field.area.value()).sum();
        ui.label(look::soft(ui, t!("fields-field", count = farm.fields.len(), total = total.show(farm.units))));
    });
    ui.add_space(4.0);
    let widths = Widths::of(ui.available_width());
    if !desk.document.farm().fields.is_empty() {
        head(ui, &widths, super::map::column(&desk.fields.map));
    }
    let wanted = desk.fields.find.trim().to_lowercase();
    let farm = desk.document.farm();
    let shown: Vec<Id> = farm
        .fields
        .iter()
        .filter(|(_, field)| {
            wanted.is_empty()
                || [&field.name, &field.crop, &field.stage, &field.note]
                    .iter()
                    .any(|text| text.to_lowercase().contains(&wanted))
        })
        .map(|(id, _)| id.clone())
        .collect();
    let height = ui.available_height() - 74.0;
    let mut area = ScrollArea::vertical().max_height(height).auto_shrink([false, true]);
    let at = shown.iter().position(|id| desk.fields.chosen.as_ref() == Some(id)).filter(|_| desk.fields.reveal);
    if let Some(at) = at {
        area = area.vertical_scroll_offset((at as f32 * (look::ROW + 7.0) - height / 2.0).max(0.0));
    }
    desk.fields.reveal = false;
    area.show_rows(ui, look::ROW + 7.0, shown.len(), |ui, rows| {
        ui.spacing_mut().item_spacing.y = 0.0;
        for id in shown.get(rows).unwrap_or_default() {
            ui.push_id(id, |ui| row(desk, ui, &widths, id));
        }
    });
    if shown.is_empty() && !wanted.is_empty() {
        lists::empty(ui, t!("fields-no-field-is-like-that"));
    }
    ui.add_space(6.0);
    ui.horizontal_wrapped(|ui| {
        if boxes::act(ui, t!("fields-add-a-field")).clicked() {
            add(desk);
        }
        ui.add_space(look::GRID);
        if boxes::act(ui, &Command::ImportBoundaries.text()).clicked() {
            desk.run(Command::ImportBoundaries, ui.ctx());
        }
    });
    acts(desk, ui);
}

fn head(ui: &mut Ui, widths: &Widths, last: &str) {
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = GAP;
        ui.add_space(EDGE);
        let columns = [
            (widths.name, t!("fields-head-field")),
            (widths.area, t!("fields-head-area")),
            (widths.crop, t!("fields-head-crop")),
            (widths.stage, t!("fields-head-stage")),
        ];
        // In line with the words in the boxes; those of the last column have no box.
        for (width, text) in columns {
            boxes::slot_of(ui, Vec2::new(width, 18.0), |ui| {
                ui.add_space(INSET);
                ui.add(Label::new(look::soft(ui, text)).truncate());
            });
        }
        if let Some(width) = widths.last {
            boxes::slot_of(ui, Vec2::new(width, 18.0), |ui| ui.add(Label::new(look::soft(ui, last)).truncate()));
        }
    });
}

fn row(desk: &mut Desk, ui: &mut Ui, widths: &Widths, id: &Id) {
    let Some(before) = desk.document.farm().fields.get(id).cloned() else { return };
    let mut field = before.clone();
    let colours = look::colours(ui);
    let chosen = desk.fields.chosen.as_ref() == Some(id);
    let back = ui.painter().add(egui::Shape::Noop);
    let log = desk.document.log();
    let passes =
        super::map::words(desk, id).unwrap_or_else(|| passes_of(desk.document.farm(), &log, id, desk.now().date()));
    let inner = ui.horizontal(|ui| {
        ui.set_min_size(Vec2::new(ui.available_width(), look::ROW + 6.0));
        ui.spacing_mut().item_spacing.x = GAP;
        ui.add_space(EDGE);
        let hint = t!("fields-head-name");
        let name = boxes::plain(ui, t!("fields-name-of-the-field"), &mut field.name, widths.name, chosen, hint);
        if desk.fields.fresh.as_ref() == Some(id) {
            // A field that was just added is named first.
            desk.fields.fresh = None;
            name.request_focus();
            name.scroll_to_me(None);
        }
        let mut focused = name.has_focus();
        let area = t!("fields-area-of", name = field.name);
        boxes::quantity(ui, &area, &mut field.area, widths.area);
        offers::at_box(ui, &area, &Slot::Area(id.clone()));
        focused |= boxes::plain(
            ui,
            &t!("fields-crop-of", name = before.name),
            &mut field.crop,
            widths.crop,
            false,
            t!("fields-head-crop"),
        )
        .has_focus();
        focused |= boxes::plain(
            ui,
            &t!("fields-stage-of", name = before.name),
            &mut field.stage,
            widths.stage,
            false,
            t!("fields-head-stage"),
        )
        .has_focus();
        let Some(width) = widths.last else { return focused };
        let open =
            boxes::slot(ui, width, |ui| ui.add(Label::new(look::soft(ui, passes)).truncate().sense(Sense::click())));
        let open = open.accessible_name(t!("fields-open", name = before.name));
        if open.clicked() {
            // Where there is room for one, the page takes the place of the list.
            desk.list.page_in_front();
        }
        focused || open.clicked() || open.has_focus()
    });
    let rect = inner.response.rect;
    if chosen {
        ui.painter().set(back, egui::Shape::rect_filled(rect, 0, colours.selected));
    }
    ui.painter().hline(rect.x_range(), rect.bottom(), Stroke::new(1.0, colours.hairline));
    if inner.inner
        || ui.input(|input| {
            input.pointer.primary_pressed() && input.pointer.interact_pos().is_some_and(|at| rect.contains(at))
        })
    {
        if desk.fields.chosen.as_ref() != Some(id) {
            desk.fields.removing = false;
        }
        desk.fields.chosen = Some(id.clone());
    }
    if field != before {
        desk.document.edit(|farm| {
            farm.fields.insert(id.clone(), field);
        });
    }
}

/// "Corn, first post 22 May; next 12 June".
fn passes_of(farm: &Farm, log: &Log, id: &Id, today: jiff::civil::Date) -> String {
    let day = day_month;
    let last = log.last_on(id);
    let next = farm
        .passes
        .iter()
        .filter(|(pass_id, pass)| pass.fields.contains(id) && !log.is_recorded(farm, pass_id))
        .map(|(_, pass)| pass.date)
        .filter(|date| *date >= today || last.is_none_or(|last| *date > last))
        .min();
    match (last, next) {
        (Some(last), Some(next)) => t!("fields-next", last = day(last), next = day(next)),
        (Some(last), None) => day(last),
        (None, Some(next)) => t!("fields-next-next", next = day(next)),
        (None, None) => "–".to_owned(),
    }
}

pub(super) fn add(desk: &mut Desk) {
    let farm = desk.document.farm();
    let nothing = if farm.units == Units::Metric { "0 ha" } else { "0 ac" };
    let Ok(area) = AsTyped::parse(nothing) else { return };
    let field = Field::new("", area);
    let id = tankard_core::farm::id::fresh(&farm.fields, "field");
    let new = id.clone();
    desk.document.edit(|farm| {
        farm.fields.insert(new, field);
    });
    desk.fields.find.clear();
    desk.fields.fresh = Some(id.clone());
    desk.fields.chosen = Some(id);
}

fn acts(desk: &mut Desk, ui: &mut Ui) {
    let Some(id) = desk.fields.chosen.clone() else { return };
    let farm = desk.document.farm();
    let Some(name) = farm.fields.get(&id).map(|field| field.name.clone()) else { return };
    if desk.fields.removing {
        let passes = farm.passes.values().filter(|pass| pass.fields.contains(&id)).count();
        ui.horizontal_wrapped(|ui| {
            ui.label(t!("fields-remove", name = name, passes = passes));
            if ui.button(t!("fields-remove-it")).clicked() {
                desk.fields.removing = false;
                apply(desk, lists::Act::Remove, &id);
            }
            if ui.button(t!("fields-keep-it")).clicked() {
                desk.fields.removing = false;
            }
        });
        return;
    }
    match lists::acts(ui, &name) {
        Some(lists::Act::Remove) => desk.fields.removing = true,
        Some(act) => apply(desk, act, &id),
        None => {}
    }
}

fn apply(desk: &mut Desk, act: lists::Act, id: &str) {
    let mut next = None;
    desk.document.edit(|farm| {
        next = lists::apply(act, &mut farm.fields, id, |field| {
            field.name = t!("fields-copy", name = field.name);
            field.name.clone()
        });
        if act == lists::Act::Remove {
            // A field to come may get the same id, and has roads of its own.
            farm.roads.retain(|road| road.from != id && road.to != id);
        }
    });
    desk.fields.chosen = next;
}
