//! The ground, field by field.

use egui::Ui;
use tankard_core::farm::{Farm, Id, Record};
use tankard_core::quantity::Quantity;
use tankard_core::season::record::whole_field;

use super::rows::{TAKE, add, as_planned, beside_plan, captions, section_with, slot, soft_line, take};
use crate::look;
use crate::parts::boxes;

/// Width of the boxes of a field.
const AREA: f32 = 84.0;
const CROP: f32 = 96.0;
const STAGE: f32 = 72.0;

pub(super) fn fields(ui: &mut Ui, farm: &Farm, record: &mut Record, planned: Option<&Record>) {
    let units = farm.units;
    section_with(ui, "Fields", |ui| {
        let mut words = Vec::new();
        if record.fields.len() > 1 {
            words.push(format!("{} in all", record.area().show(units)));
        }
        if let Some(planned) = planned {
            words.push(beside_plan(&planned.area().show(units), record.area().ratio(planned.area())));
        }
        ui.label(look::soft(ui, words.join(" · ")));
    });
    let name_width = (ui.available_width() - AREA - CROP - STAGE - TAKE - 4.0 * 8.0).max(80.0);
    if !record.fields.is_empty() {
        captions(ui, &[("field", name_width), ("area", AREA), ("crop", CROP), ("stage", STAGE)]);
    }
    let mut taken = None;
    for (id, field) in &mut record.fields {
        ui.push_id(("field", id), |ui| {
            ui.horizontal(|ui| {
                slot(ui, name_width, |ui| ui.add(egui::Label::new(&field.name).truncate()));
                boxes::quantity(ui, &format!("Area of {}", field.name), &mut field.area, AREA);
                boxes::text(ui, &format!("Crop on {}", field.name), &mut field.crop, CROP);
                boxes::text(ui, &format!("Stage on {}", field.name), &mut field.stage, STAGE);
                if take(ui, &field.name) {
                    taken = Some(id.clone());
                }
            });
            let mut words = Vec::new();
            // "CROP ac" needs no second reading; another unit does.
            let shown = field.area.show(units);
            if shown.split_once(' ').is_some_and(|(_, unit)| !field.area.text().to_lowercase().ends_with(unit)) {
                words.push(format!("= {shown}"));
            }
            if let Some(planned) = planned {
                match planned.fields.get(id) {
                    None => words.push("not in the plan".to_owned()),
                    Some(before) => {
                        let ratio = field.area.ratio(before.area.value());
                        if !ratio.is_some_and(as_planned) {
                            words.push(beside_plan(&before.area.show(units), ratio));
                        }
                    }
                }
            }
            if !words.is_empty() {
                soft_line(ui, name_width, "", &words.join(" · "));
            }
        });
    }
    if let Some(id) = taken {
        record.fields.shift_remove(&id);
    }
    let others: Vec<Id> = farm.fields.keys().filter(|id| !record.fields.contains_key(*id)).cloned().collect();
    let name = |id: &Id| farm.fields.get(id).map(|field| field.name.clone());
    if let Some(id) = add(ui, "Add a field…", &others, name)
        && let Some(field) = farm.fields.get(&id)
    {
        record.fields.insert(id, whole_field(field, units));
    }
}
