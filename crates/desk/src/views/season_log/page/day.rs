//! When it was sprayed and by whom.

use egui::Ui;
use jiff::civil::Time;
use tankard_core::farm::Record;
use tankard_core::plausible::Slot;
use tankard_core::season::used;
use tankard_core::t;

use super::Page;
use super::rows::{LABEL, SHORT, box_width, folded, pair, row, with_before};
use crate::parts::{boxes, offers};

/// `begin` gives the keyboard to the first box that a fresh record waits for.
pub(super) fn day(ui: &mut Ui, page: &Page<'_>, record: &mut Record, begin: bool) {
    let now = page.now.time();
    let operator = record.operator.clone();
    // Column by column, as Tab goes: the hours are typed one after the other, and the acts that take the present one follow.
    let right = ui.available_width() / 2.0 + 8.0;
    let (left, acts) = (LABEL + SHORT + 8.0, right - LABEL - SHORT - 24.0);
    ui.horizontal_top(|ui| {
        ui.spacing_mut().item_spacing.x = 8.0;
        column(ui, left, |ui| {
            row(ui, t!("season-log-date"), |ui| {
                boxes::date(ui, t!("season-log-date"), &mut record.date, SHORT);
                offers::at_box(ui, t!("season-log-date"), &Slot::RecordDate(page.id.to_owned()));
            });
            row(ui, t!("season-log-start"), |ui| {
                if begin {
                    boxes::focus(ui, t!("season-log-start"));
                }
                boxes::time_or_none(ui, t!("season-log-start"), &mut record.start, SHORT);
            });
            row(ui, t!("season-log-end"), |ui| boxes::time_or_none(ui, t!("season-log-end"), &mut record.end, SHORT));
        });
        column(ui, acts, |ui| {
            ui.allocate_space(egui::Vec2::new(acts, crate::look::ROW));
            ui.horizontal(|ui| {
                boxes::slot(ui, acts, |ui| at_once(ui, t!("season-log-start-now"), &mut record.start, now));
            });
            ui.horizontal(|ui| boxes::slot(ui, acts, |ui| at_once(ui, t!("season-log-end-now"), &mut record.end, now)));
        });
        let rest = ui.available_width();
        column(ui, rest, |ui| {
            row(ui, t!("season-log-operator"), |ui| {
                with_before(
                    ui,
                    t!("season-log-operator"),
                    &mut record.operator,
                    box_width(ui),
                    "",
                    &page.used.operators,
                );
            });
            row(ui, t!("season-log-certificate"), |ui| {
                with_before(
                    ui,
                    t!("season-log-certificate"),
                    &mut record.certificate,
                    box_width(ui),
                    "",
                    &page.used.certificates,
                );
            });
            row(ui, t!("season-log-rig"), |ui| {
                with_before(ui, t!("season-log-rig"), &mut record.rig, box_width(ui), "", &page.used.rigs);
            });
        });
    });
    if record.operator != operator {
        used::follow_operator(page.farm, page.id, record);
    }
    let others: Vec<&str> =
        [record.supervisor.trim(), record.helpers.trim()].into_iter().filter(|name| !name.is_empty()).collect();
    let summary = if others.is_empty() { t!("season-log-head-none").to_owned() } else { others.join(" · ") };
    folded(ui, page.fold("others"), t!("season-log-supervisor-and-helpers"), &summary, |ui| {
        pair(
            ui,
            (t!("season-log-supervisor"), |ui| {
                with_before(
                    ui,
                    t!("season-log-supervisor"),
                    &mut record.supervisor,
                    box_width(ui),
                    "",
                    &page.used.operators,
                );
            }),
            (t!("season-log-helpers"), |ui| {
                with_before(
                    ui,
                    t!("season-log-helpers"),
                    &mut record.helpers,
                    box_width(ui),
                    t!("season-log-mixed-and-loaded"),
                    &page.used.helpers,
                );
            }),
        );
    });
}

fn column(ui: &mut Ui, width: f32, add: impl FnOnce(&mut Ui)) {
    // Where there is hardly room, it is the scroll bar's.
    let width = width.max(0.0);
    ui.vertical(|ui| {
        ui.set_min_width(width);
        ui.set_max_width(width);
        add(ui);
    });
}

/// An act that takes the present time.
fn at_once(ui: &mut Ui, name: &str, value: &mut Option<Time>, now: Time) {
    if ui.is_enabled() && boxes::act(ui, t!("season-log-now")).accessible_name(name).clicked() {
        *value = Time::new(now.hour(), now.minute(), 0, 0).ok();
    }
}
