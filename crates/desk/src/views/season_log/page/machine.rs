//! With what it was sprayed, how much of it, and what was left over.

use egui::Ui;
use tankard_core::farm::{Left, Record, RecordLine};
use tankard_core::label::listed;
use tankard_core::language::yes_or_no;
use tankard_core::quantity::{Quantity, Units};
use tankard_core::rig::setting::Classes;
use tankard_core::season::portion;
use tankard_core::t;

use super::Page;
use super::rows::{
    LABEL, SHORT, beside_plan, box_width, folded, offer, pair, row, section, soft_line, with_before, with_offers,
};
use crate::parts::boxes;

/// What usually becomes of spray that is left over.
fn went() -> [String; 4] {
    [
        t!("season-log-kept-in-the-tank"),
        t!("season-log-thinned-and-sprayed-out"),
        t!("season-log-kept-in-a-marked-container"),
        t!("season-log-taken-back-to-the-collecting-tank"),
    ]
    .map(str::to_owned)
}

/// How many loads, how much spray, and what was left over of it.
pub(super) fn spray(ui: &mut Ui, page: &Page<'_>, record: &mut Record) {
    let units = page.farm.units;
    section(ui, t!("season-log-spray"));
    pair(
        ui,
        (t!("season-log-loads-used"), |ui| {
            boxes::count_or_none(ui, t!("season-log-loads-used"), &mut record.loads, SHORT, t!("season-log-e-g-3"));
        }),
        (t!("season-log-spray-volume"), |ui| {
            boxes::quantity_or_none(ui, t!("season-log-spray-volume"), &mut record.volume, box_width(ui));
        }),
    );
    let mut left = record.left.as_ref().map(|left| left.volume.clone());
    pair(
        ui,
        (t!("season-log-left-over"), |ui| {
            boxes::quantity_hinted(ui, t!("season-log-left-over"), &mut left, SHORT, t!("season-log-head-none"));
        }),
        (t!("season-log-water"), |ui| {
            with_before(ui, t!("season-log-water"), &mut record.water, box_width(ui), "", &page.used.waters);
        }),
    );
    if left.as_ref() != record.left.as_ref().map(|left| &left.volume) {
        let went = record.left.take().map(|left| left.went).unwrap_or_default();
        record.left = left.map(|volume| Left { volume, went });
    }
    if let Some(left) = &mut record.left {
        row(ui, t!("season-log-it-went"), |ui| {
            let width = ui.available_width();
            let hint = t!("season-log-as-the-label-and-the-law");
            with_offers(
                ui,
                t!("season-log-where-it-went"),
                &mut left.went,
                width,
                hint,
                (&went(), t!("season-log-usual-answers")),
            );
        });
    }
    let mut words = Vec::new();
    if let Some(volume) = &record.volume
        && let Some(rate) = volume.over(record.area())
    {
        words.push(t!("season-log-on-the-ground", rate = rate.show(units)));
    }
    if let Some(planned) = page.planned_volume(record) {
        let ratio = record.volume.as_ref().and_then(|volume| volume.ratio(planned.value()));
        words.push(beside_plan(&planned.show(units), ratio));
    }
    if let Some(planned) = page.planned.and_then(|planned| planned.loads)
        && record.loads.is_some_and(|loads| loads != planned)
    {
        words.push(t!("season-log-loads-in-the-plan", planned = planned));
    }
    if !words.is_empty() {
        soft_line(ui, LABEL, "", &words.join(" · "));
    }
    balance(ui, page, record);
}

/// Where loads or left over say that another amount went out than the record has.
fn balance(ui: &mut Ui, page: &Page<'_>, record: &mut Record) {
    let Some(found) = page.plan.and_then(|plan| portion::balance(page.farm, plan, record)) else { return };
    if found.is_in(record) {
        return;
    }
    let units = page.farm.units;
    let rate = found.out.over(record.area());
    // What a click would make of it.
    let mut then = record.clone();
    found.put(page.farm, &mut then);
    let spray = found.out.show(units);
    let of = |line: &RecordLine| t!("season-log-so-much-of", amount = line.amount.show(units), name = line.name);
    let changed = then.lines.iter().filter(|line| found.amounts.iter().any(|(product, _)| *product == line.product));
    let products: Vec<String> = changed.map(of).collect();
    let kept = portion::typed_otherwise(page.farm, record);
    let says = t!(
        "season-log-mixed-in-from-that-of-spray",
        mixed = found.mixed.show(units),
        all = yes_or_no(found.loads == found.of),
        loads = found.loads,
        of = found.of,
        scaled = yes_or_no(found.scaled),
        less = yes_or_no(!found.left.is_zero()),
        left = found.left.show(units),
        out = spray,
        over = yes_or_no(rate.is_some()),
        rate = rate.map(|rate| rate.show(units)).unwrap_or_default(),
        product = yes_or_no(!products.is_empty()),
        products = listed(&products),
        stays = yes_or_no(!kept.is_empty()),
        kept = listed(&kept)
    );
    if offer(ui, &says, t!("season-log-take-the-amounts-from-that")) {
        found.put(page.farm, record);
    }
}

/// The rig and how it was set.
pub(super) fn machine(ui: &mut Ui, page: &Page<'_>, record: &mut Record) {
    let units = page.farm.units;
    let shown = [
        record.method.trim().to_owned(),
        record.nozzles.trim().to_owned(),
        record.pressure.as_ref().map(|pressure| pressure.show(units)).unwrap_or_default(),
        record.speed.as_ref().map(|speed| speed.show(units)).unwrap_or_default(),
        record.height.as_ref().map(|height| height.show(units)).unwrap_or_default(),
        record.droplets.map(|class| t!("season-log-droplets", class = class.name())).unwrap_or_default(),
    ];
    let shown: Vec<String> = shown.into_iter().filter(|text| !text.is_empty()).collect();
    let summary = if shown.is_empty() { t!("season-log-not-typed").to_owned() } else { shown.join(" · ") };
    folded(ui, page.fold("machine"), t!("season-log-machine"), &summary, |ui| {
        pair(
            ui,
            (t!("season-log-method"), |ui| {
                with_before(
                    ui,
                    t!("season-log-method"),
                    &mut record.method,
                    box_width(ui),
                    t!("season-log-ground-boom"),
                    &page.used.methods,
                );
            }),
            (t!("season-log-nozzles"), |ui| {
                with_before(ui, t!("season-log-nozzles"), &mut record.nozzles, box_width(ui), "", &page.used.nozzles);
            }),
        );
        pair(
            ui,
            (t!("season-log-pressure"), |ui| {
                boxes::quantity_or_none(ui, t!("season-log-pressure"), &mut record.pressure, SHORT);
            }),
            (t!("season-log-speed"), |ui| {
                boxes::quantity_or_none(ui, t!("season-log-speed"), &mut record.speed, SHORT);
            }),
        );
        pair(
            ui,
            (t!("season-log-boom-height"), |ui| {
                boxes::quantity_hinted(
                    ui,
                    t!("season-log-boom-height"),
                    &mut record.height,
                    SHORT,
                    &t!("parts-e-g", example = if units == Units::Metric { "50 cm" } else { "20 in" }),
                );
            }),
            (t!("season-log-droplets-446"), |ui| {
                boxes::droplets_or_none(
                    ui,
                    t!("season-log-droplets-446"),
                    &mut record.droplets,
                    t!("season-log-not-typed"),
                    136.0,
                );
            }),
        );
        let classes = page.plan.and_then(|plan| plan.setting.as_ref()?.classes).map(Classes::words);
        if let Some(classes) = classes {
            soft_line(ui, LABEL, "", &t!("season-log-droplets-by-the-plan", classes = classes));
        }
        row(ui, t!("season-log-cleaned-out"), |ui| {
            let width = ui.available_width();
            let hint = t!("season-log-before-and-after-such-as-triple");
            boxes::text_or_empty(ui, t!("season-log-how-it-was-cleaned-out"), &mut record.clean_out, width, hint);
        });
    });
}
