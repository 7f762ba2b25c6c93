//! With what it was sprayed, how much of it, and what was left over.

use egui::Ui;
use tankard_core::farm::{Left, Record};
use tankard_core::quantity::Quantity;
use tankard_core::rig::setting::Classes;
use tankard_core::season::portion;

use super::Page;
use super::rows::{
    LABEL, SHORT, beside_plan, box_width, folded, offer, pair, row, section, soft_line, with_before, with_offers,
};
use crate::parts::boxes;

/// What usually becomes of spray that is left over.
const WENT: [&str; 4] = [
    "kept in the tank for the next pass",
    "thinned and sprayed out on the field",
    "kept in a marked container",
    "taken back to the collecting tank",
];

/// How many loads, how much spray, and what was left over of it.
pub(super) fn spray(ui: &mut Ui, page: &Page<'_>, record: &mut Record) {
    let units = page.farm.units;
    section(ui, "Spray");
    pair(
        ui,
        ("Loads used", |ui| boxes::count_or_none(ui, "Loads used", &mut record.loads, SHORT, "e.g. 3")),
        ("Spray volume", |ui| {
            boxes::quantity_or_none(ui, "Spray volume", &mut record.volume, box_width(ui));
        }),
    );
    let mut left = record.left.as_ref().map(|left| left.volume.clone());
    pair(
        ui,
        ("Left over", |ui| boxes::quantity_hinted(ui, "Left over", &mut left, SHORT, "none")),
        ("Water", |ui| {
            with_before(ui, "Water", &mut record.water, box_width(ui), "", &page.used.waters);
        }),
    );
    if left.as_ref() != record.left.as_ref().map(|left| &left.volume) {
        let went = record.left.take().map(|left| left.went).unwrap_or_default();
        record.left = left.map(|volume| Left { volume, went });
    }
    if let Some(left) = &mut record.left {
        row(ui, "It went", |ui| {
            let width = ui.available_width();
            let hint = "as the label and the law allow";
            let usual = WENT.map(str::to_owned);
            with_offers(ui, "Where it went", &mut left.went, width, hint, (&usual, "usual answers"));
        });
    }
    let mut words = Vec::new();
    if let Some(volume) = &record.volume
        && let Some(rate) = volume.over(record.area())
    {
        words.push(format!("= {} on the ground", rate.show(units)));
    }
    if let Some(planned) = page.planned_volume(record) {
        let ratio = record.volume.as_ref().and_then(|volume| volume.ratio(planned.value()));
        words.push(beside_plan(&planned.show(units), ratio));
    }
    if let Some(planned) = page.planned.and_then(|planned| planned.loads)
        && record.loads.is_some_and(|loads| loads != planned)
    {
        words.push(format!("{planned} loads in the plan"));
    }
    if !words.is_empty() {
        soft_line(ui, LABEL, "", &words.join(" · "));
    }
    balance(ui, page, record);
}

/// Where loads or left over say that another amount went out than the record has.
fn balance(ui: &mut Ui, page: &Page<'_>, record: &mut Record) {
    let Some(found) = page.plan.and_then(|plan| portion::balance(plan, record)) else { return };
    if found.is_in(record) {
        return;
    }
    let units = page.farm.units;
    let loads =
        if found.loads == found.of { "the loads".to_owned() } else { format!("{} of {} loads", found.loads, found.of) };
    let scaled = if found.scaled { ", scaled to the area" } else { "" };
    let less = if found.left.is_zero() {
        String::new()
    } else {
        format!(", less {} left over is {}", found.left.show(units), found.out.show(units))
    };
    let rate =
        found.out.over(record.area()).map_or_else(String::new, |rate| format!(", {} on the ground", rate.show(units)));
    // What a click would make of it, by spray and first product.
    let mut then = record.clone();
    found.put(page.farm, &mut then);
    let spray = found.out.show(units);
    let first = then.lines.first().map(|line| format!(" and {} of {}", line.amount.show(units), line.name));
    let says = format!(
        "{} mixed in {loads}{scaled}{less}{rate}. From that: {spray} of spray{}.",
        found.mixed.show(units),
        first.unwrap_or_default()
    );
    if offer(ui, &says, "Take the amounts from that") {
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
        record.droplets.map(|class| format!("{} droplets", class.name())).unwrap_or_default(),
    ];
    let shown: Vec<String> = shown.into_iter().filter(|text| !text.is_empty()).collect();
    let summary = if shown.is_empty() { "not typed".to_owned() } else { shown.join(" · ") };
    folded(ui, page.fold("machine"), "Machine", &summary, |ui| {
        pair(
            ui,
            ("Method", |ui| {
                with_before(ui, "Method", &mut record.method, box_width(ui), "ground boom", &page.used.methods);
            }),
            ("Nozzles", |ui| with_before(ui, "Nozzles", &mut record.nozzles, box_width(ui), "", &page.used.nozzles)),
        );
        pair(
            ui,
            ("Pressure", |ui| boxes::quantity_or_none(ui, "Pressure", &mut record.pressure, SHORT)),
            ("Speed", |ui| boxes::quantity_or_none(ui, "Speed", &mut record.speed, SHORT)),
        );
        pair(
            ui,
            ("Boom height", |ui| boxes::quantity_hinted(ui, "Boom height", &mut record.height, SHORT, "e.g. 20 in")),
            ("Droplets", |ui| {
                boxes::droplets_or_none(ui, "Droplets", &mut record.droplets, "not typed", 136.0);
            }),
        );
        let classes = page.plan.and_then(|plan| plan.setting.as_ref()?.classes).map(Classes::words);
        if let Some(classes) = classes {
            soft_line(ui, LABEL, "", &format!("droplets by the plan: {classes}"));
        }
        row(ui, "Cleaned out", |ui| {
            let width = ui.available_width();
            let hint = "before and after, such as triple rinse";
            boxes::text_or_empty(ui, "How it was cleaned out", &mut record.clean_out, width, hint);
        });
    });
}
