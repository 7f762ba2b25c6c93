//! When it was sprayed, by whom and with what.

use egui::Ui;
use tankard_core::farm::{Farm, Record};
use tankard_core::plan::Plan;
use tankard_core::quantity::Quantity;
use tankard_core::weather::Limit;

use super::rows::{BOX, LABEL, SHORT, beside_plan, pair, plain, soft_line};
use super::weather;
use crate::parts::boxes;

pub(super) fn day(
    ui: &mut Ui,
    farm: &Farm,
    record: &mut Record,
    planned: Option<&Record>,
    plan: Option<&Plan>,
    asked: &[Limit],
) {
    let units = farm.units;
    let width = |ui: &Ui| BOX.min(ui.available_width());
    pair(
        ui,
        ("Date", |ui| boxes::date(ui, "Date", &mut record.date, width(ui))),
        ("Operator", |ui| plain(ui, "Operator", &mut record.operator)),
    );
    pair(
        ui,
        ("Start", |ui| boxes::time_or_none(ui, "Start", &mut record.start, SHORT)),
        ("Certificate", |ui| plain(ui, "Certificate", &mut record.certificate)),
    );
    pair(
        ui,
        ("End", |ui| boxes::time_or_none(ui, "End", &mut record.end, SHORT)),
        ("Rig", |ui| plain(ui, "Rig", &mut record.rig)),
    );
    weather::weather(ui, farm, record, plan, asked);
    pair(
        ui,
        ("Spray volume", |ui| {
            boxes::quantity_or_none(ui, "Spray volume", &mut record.volume, BOX.min(ui.available_width()));
        }),
        ("Water", |ui| plain(ui, "Water", &mut record.water)),
    );
    let mut words = Vec::new();
    if let Some(volume) = &record.volume {
        let area = record.area();
        if let Some(rate) = volume.over(area) {
            words.push(format!("= {}", rate.show(units)));
        }
    }
    if let Some(planned) = planned.and_then(|planned| planned.volume.as_ref()) {
        let ratio = record.volume.as_ref().and_then(|volume| volume.ratio(planned.value()));
        words.push(beside_plan(&planned.show(units), ratio));
    }
    if !words.is_empty() {
        soft_line(ui, LABEL, "", &words.join(" · "));
    }
}
