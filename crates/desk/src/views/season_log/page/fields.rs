//! The ground, field by field.

use egui::Ui;
use tankard_core::farm::{Id, Record, RecordField};
use tankard_core::quantity::{Area, AsTyped, Quantity};
use tankard_core::season::portion;
use tankard_core::season::record::whole_field;
use tankard_core::t;

use super::Page;
use super::rows::{
    FOLD, TAKE, add, as_planned, beside_plan, box_width, captions, fold, offer, pair, row, section_with, soft_line,
    take, triangle,
};
use crate::look;
use crate::parts::boxes;

/// Width of the boxes of a field.
const AREA: f32 = 84.0;
const CROP: f32 = 96.0;
const STAGE: f32 = 72.0;

pub(super) fn fields(ui: &mut Ui, page: &Page<'_>, record: &mut Record) {
    let units = page.farm.units;
    section_with(ui, t!("season-log-fields"), |ui| {
        let mut words = Vec::new();
        if record.fields.len() > 1 {
            words.push(t!("season-log-in-all", area = record.area().show(units)));
        }
        if let Some(planned) = planned_area(page, record) {
            let ratio = record.area().ratio(planned);
            // That of a single field stands under it.
            if record.fields.len() > 1 || ratio.is_some_and(as_planned) {
                words.push(beside_plan(&planned.show(units), ratio));
            }
        }
        ui.label(look::soft(ui, words.join(" · ")));
    });
    let name_width = (ui.available_width() - FOLD - AREA - CROP - STAGE - TAKE - 5.0 * 8.0).max(80.0);
    if !record.fields.is_empty() {
        let columns = [
            ("", FOLD),
            (t!("season-log-head-field"), name_width),
            (t!("season-log-head-area"), AREA),
            (t!("season-log-head-crop"), CROP),
            (t!("season-log-head-stage"), STAGE),
        ];
        captions(ui, &columns);
    }
    let mut taken = None;
    for (id, field) in &mut record.fields {
        ui.push_id(("field", id), |ui| {
            let open = ui.horizontal(|ui| {
                let about = t!("season-log-more-about", name = field.name);
                let open = triangle(ui, page.fold(&format!("field {id}")), &about);
                boxes::slot(ui, name_width, |ui| ui.add(egui::Label::new(field.name.as_str()).truncate()));
                boxes::quantity(ui, &t!("season-log-area-of", name = field.name), &mut field.area, AREA);
                boxes::text(ui, &t!("season-log-crop-on", name = field.name), &mut field.crop, CROP);
                boxes::text(ui, &t!("season-log-stage-on", name = field.name), &mut field.stage, STAGE);
                if take(ui, &field.name) {
                    taken = Some(id.clone());
                }
                open
            });
            let words = beneath(page, id, field);
            if !words.is_empty() {
                soft_line(ui, FOLD + name_width + 8.0, "", &words.join(" · "));
            }
            if open.inner {
                more(ui, field);
            }
        });
    }
    if let Some(id) = taken {
        record.fields.shift_remove(&id);
    }
    scale(ui, page, record);
    let others: Vec<Id> = page.farm.fields.keys().filter(|id| !record.fields.contains_key(*id)).cloned().collect();
    let name = |id: &Id| page.farm.fields.get(id).map(|field| field.name.clone());
    ui.horizontal(|ui| {
        if let Some(id) = add(ui, t!("season-log-add-a-field"), &others, name)
            && let Some(field) = page.farm.fields.get(&id)
        {
            record.fields.insert(id, whole_field(field, units));
        }
        if ui.is_enabled() && boxes::act(ui, t!("season-log-ground-of-somebody-else")).clicked() {
            let id = tankard_core::farm::id::fresh_where("ground", |id| !record.fields.contains_key(id));
            let area = AsTyped::parse(if units == tankard_core::quantity::Units::Metric { "0 ha" } else { "0 ac" });
            if let Ok(area) = area {
                fold(ui, page.fold(&format!("field {id}")), true);
                record.fields.insert(id, RecordField::new(t!("season-log-new-ground"), area));
            }
        }
    });
}

/// What was planned in all: as the record keeps it, else as the plan has it now.
fn planned_area(page: &Page<'_>, record: &Record) -> Option<Area> {
    let kept: Area = record.fields.values().filter_map(|field| field.planned.as_ref()).map(AsTyped::value).sum();
    if kept.is_zero() { page.planned.map(Record::area) } else { Some(kept) }
}

/// What stands under a field: how its area was understood, how far it is from the plan, and what is folded away.
fn beneath(page: &Page<'_>, id: &Id, field: &RecordField) -> Vec<String> {
    let units = page.farm.units;
    let mut words = Vec::new();
    // "CROP ac" needs no second reading; another unit does.
    let shown = field.area.show(units);
    if shown.split_once(' ').is_some_and(|(_, unit)| !field.area.text().to_lowercase().ends_with(unit)) {
        words.push(format!("= {shown}"));
    }
    let now = page.planned.map(|planned| planned.fields.get(id).map(|field| field.area.clone()));
    match field.planned.clone().map(Some).or(now) {
        None => {}
        Some(None) => words.push(t!("season-log-not-in-the-plan").to_owned()),
        Some(Some(before)) => {
            let ratio = field.area.ratio(before.value());
            if !ratio.is_some_and(as_planned) {
                words.push(beside_plan(&before.show(units), ratio));
            }
        }
    }
    words.extend(Some(field.part.trim().to_owned()).filter(|part| !part.is_empty()));
    words
}

/// What is seldom typed of a field.
fn more(ui: &mut Ui, field: &mut RecordField) {
    let name = field.name.clone();
    let of = |what: &str| t!("season-log-of", what = what, name = name);
    pair(
        ui,
        (t!("season-log-name"), |ui| boxes::text(ui, &of(t!("season-log-name")), &mut field.name, box_width(ui))),
        (t!("season-log-part"), |ui| {
            boxes::text_or_empty(
                ui,
                &of(t!("season-log-part")),
                &mut field.part,
                box_width(ui),
                t!("season-log-spot-north-strip"),
            )
        }),
    );
    pair(
        ui,
        (t!("season-log-planted"), |ui| {
            boxes::date_or_none(ui, &of(t!("season-log-planted")), &mut field.planted, box_width(ui));
        }),
        (t!("season-log-crop-code"), |ui| {
            boxes::text_or_empty(ui, &of(t!("season-log-crop-code")), &mut field.crop_code, box_width(ui), "EPPO")
        }),
    );
    for (what, value, hint) in [
        (t!("season-log-variety"), &mut field.variety, ""),
        (t!("season-log-location"), &mut field.location, t!("season-log-county-section-or-latitude-and-longitude")),
        (t!("season-log-parcel"), &mut field.parcel, t!("season-log-its-reference-in-the-aid-claim")),
    ] {
        row(ui, what, |ui| {
            let width = ui.available_width();
            boxes::text_or_empty(ui, &of(what), value, width, hint);
        });
    }
    ui.add_space(6.0);
}

/// Where other ground was sprayed than planned and the amounts are still those of the plan: what rate that is, and one click that
/// scales them.
fn scale(ui: &mut Ui, page: &Page<'_>, record: &mut Record) {
    let Some(ratio) = portion::other_ground(record) else { return };
    if !portion::is_out_of_proportion(page.farm, record, ratio) {
        return;
    }
    // What was scaled and then had its left over taken off is as it was.
    let balance = page.plan.and_then(|plan| portion::balance(page.farm, plan, record));
    if balance.is_some_and(|found| found.scaled && found.is_in(record)) {
        return;
    }
    let units = page.farm.units;
    let volume = record.volume.as_ref().and_then(|volume| volume.over(record.area()));
    let area = record.area().show(units);
    let says = match volume {
        Some(rate) => t!("season-log-another-area-and-rate", area = area, rate = rate.show(units)),
        None => t!("season-log-another-area-than-planned-the-amounts", area = area),
    };
    if offer(ui, &says, t!("season-log-scale-the-amounts-to-the-area")) {
        portion::in_proportion(page.farm, record, ratio);
    }
}
