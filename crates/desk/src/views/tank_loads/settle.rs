//! What there is to settle, and the working of the chosen number.

use egui::{ScrollArea, Ui};
use tankard_core::finding::Level;
use tankard_core::loads::working_of;
use tankard_core::plan::Plan;
use tankard_core::working::Working;

use super::Shown;
use crate::app::Desk;
use crate::look;
use crate::parts::{boxes, findings, lists, workings};

/// Shows both.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui, plan: &Plan) {
    let height = ui.available_height();
    let settle = if plan.level().is_none_or(|level| level < Level::Check) { "Worth knowing" } else { "To settle" };
    ui.label(look::heading(settle).color(look::colours(ui).soft));
    let mut led = None;
    ScrollArea::vertical().id_salt("findings").max_height(height * 0.56).auto_shrink([false, false]).show(ui, |ui| {
        ui.add_space(4.0);
        if plan.findings.is_empty() {
            lists::empty(ui, "Nothing speaks against this pass, as far as it is judged.");
        }
        led = findings::show(ui, &plan.findings);
    });
    if let Some(subject) = led {
        desk.lead_to(&subject);
    }
    ui.add_space(look::GRID);
    look::sheet(ui).show(ui, |ui| {
        ui.set_width(ui.available_width());
        ui.set_min_height(ui.available_height() - 18.0);
        working(desk, ui, plan);
    });
}

fn working(desk: &mut Desk, ui: &mut Ui, plan: &Plan) {
    let units = desk.document.farm().units;
    let shown: Option<Working> = match &desk.tank_loads.working {
        Some(Shown::Titled(title)) => plan.workings.iter().find(|working| working.title == *title).cloned(),
        Some(Shown::InLoad(product)) => working_of(plan, desk.tank_loads.load, product, units),
        Some(Shown::InJar(product)) => super::jar::working(desk, plan, product),
        None => None,
    };
    let mut title = shown.as_ref().map(|working| working.title.clone()).unwrap_or_default();
    let before = title.clone();
    let mut titles: Vec<String> = plan.workings.iter().map(|working| working.title.clone()).collect();
    if !title.is_empty() && !titles.contains(&title) {
        titles.push(title.clone());
    }
    let say = |title: &String| if title.is_empty() { "Choose a working".to_owned() } else { title.clone() };
    boxes::choice(ui, "Working shown", &mut title, &titles, say, ui.available_width() - 12.0);
    if title != before {
        desk.tank_loads.working = Some(Shown::Titled(title));
    }
    ui.add_space(4.0);
    ScrollArea::vertical().id_salt("working").auto_shrink([false, true]).show(ui, |ui| match &shown {
        Some(working) => workings::show(ui, working),
        None => lists::empty(ui, "A click on a number shows how it came about."),
    });
}
