//! When it was sprayed and by whom.

use egui::Ui;
use jiff::civil::Time;
use tankard_core::farm::Record;
use tankard_core::season::used;

use super::Page;
use super::rows::{BOX, SHORT, folded, pair, with_before};
use crate::parts::boxes;

pub(super) fn day(ui: &mut Ui, page: &Page<'_>, record: &mut Record) {
    let width = |ui: &Ui| BOX.min(ui.available_width());
    let now = page.now.time();
    let operator = record.operator.clone();
    pair(
        ui,
        ("Date", |ui| boxes::date(ui, "Date", &mut record.date, width(ui))),
        ("Operator", |ui| with_before(ui, "Operator", &mut record.operator, width(ui), "", &page.used.operators)),
    );
    if record.operator != operator {
        used::follow_operator(page.farm, page.id, record);
    }
    pair(
        ui,
        ("Start", |ui| time(ui, "Start", &mut record.start, now)),
        ("Certificate", |ui| {
            with_before(ui, "Certificate", &mut record.certificate, width(ui), "", &page.used.certificates);
        }),
    );
    pair(
        ui,
        ("End", |ui| time(ui, "End", &mut record.end, now)),
        ("Rig", |ui| with_before(ui, "Rig", &mut record.rig, width(ui), "", &page.used.rigs)),
    );
    let others: Vec<&str> =
        [record.supervisor.trim(), record.helpers.trim()].into_iter().filter(|name| !name.is_empty()).collect();
    let summary = if others.is_empty() { "none".to_owned() } else { others.join(" · ") };
    folded(ui, page.fold("others"), "Supervisor and helpers", &summary, |ui| {
        pair(
            ui,
            ("Supervisor", |ui| {
                with_before(ui, "Supervisor", &mut record.supervisor, width(ui), "", &page.used.operators);
            }),
            ("Helpers", |ui| {
                with_before(ui, "Helpers", &mut record.helpers, width(ui), "mixed and loaded", &page.used.helpers);
            }),
        );
    });
}

/// A time of day, and an act that takes the present one.
fn time(ui: &mut Ui, name: &str, value: &mut Option<Time>, now: Time) {
    boxes::time_or_none(ui, name, value, SHORT);
    if ui.is_enabled() && boxes::act(ui, "Now").accessible_name(format!("{name} now")).clicked() {
        *value = Time::new(now.hour(), now.minute(), 0, 0).ok();
    }
}
