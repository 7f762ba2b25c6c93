//! What there is to settle, and the working of the chosen number.

use egui::{ScrollArea, Ui};
use tankard_core::finding::Level;
use tankard_core::loads::working_of;
use tankard_core::plan::{Plan, not_judged};
use tankard_core::quantity::practical::show_amount;
use tankard_core::quantity::{Amount, Quantity};
use tankard_core::t;
use tankard_core::water::dose::per_load;
use tankard_core::working::Working;

use super::{Page, Shown};
use crate::app::Desk;
use crate::app::landing::Led;
use crate::look;
use crate::parts::{boxes, findings, lists, workings};

/// Height below which both scroll as one.
const LOW: f32 = 320.0;

/// Shows both.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui, plan: &Plan) {
    let height = ui.available_height();
    let settle = if plan.level().is_none_or(|level| level < Level::Check) {
        t!("tank-loads-worth-knowing")
    } else {
        t!("tank-loads-to-settle")
    };
    ui.label(look::heading(settle).color(look::colours(ui).soft));
    if height < LOW {
        ScrollArea::vertical().id_salt(("settle", &plan.pass)).auto_shrink(false).show(ui, |ui| {
            let led = to_settle(ui, plan);
            ui.add_space(look::GRID);
            look::sheet(ui).show(ui, |ui| {
                ui.set_width(ui.available_width());
                working(desk, ui, plan);
            });
            if let Some(led) = led {
                desk.land(&led, ui.ctx());
            }
        });
        return;
    }
    let mut led = None;
    ScrollArea::vertical()
        .id_salt(("findings", &plan.pass))
        .max_height(height * 0.52)
        .auto_shrink([false, false])
        .show(ui, |ui| led = to_settle(ui, plan));
    if let Some(led) = led {
        desk.land(&led, ui.ctx());
    }
    ui.add_space(look::GRID);
    look::sheet(ui).show(ui, |ui| {
        ui.set_width(ui.available_width());
        ui.set_min_height((ui.available_height() - 18.0).max(0.0));
        working(desk, ui, plan);
    });
}

/// The findings; gives where the one leads that was clicked.
fn to_settle(ui: &mut Ui, plan: &Plan) -> Option<Led> {
    ui.add_space(4.0);
    if plan.findings.is_empty() {
        lists::empty(ui, t!("tank-loads-nothing-speaks-against-this-pass-as"));
    }
    let led = findings::show(ui, &plan.findings);
    ui.label(look::soft(ui, t!("tank-loads-not-judged-yet-decide-from-the", not_judged = not_judged().join("; "))));
    led
}

fn working(desk: &mut Desk, ui: &mut Ui, plan: &Plan) {
    let units = desk.document.farm().units;
    let shown: Option<Working> = match &desk.tank_loads.working {
        Some(Shown::Titled(title)) => {
            let rinse = plan.rinse.iter().map(|rinse| &rinse.working);
            plan.workings.iter().chain(rinse).find(|working| working.title == *title).cloned()
        }
        Some(Shown::InLoad(product)) => working_of(plan, desk.tank_loads.load, product, units),
        Some(Shown::InJar(product)) => super::jar::working(desk, plan, product),
        None => None,
    };
    let mut title = shown.as_ref().map(|working| working.title.clone()).unwrap_or_default();
    let before = title.clone();
    let mut titles: Vec<String> = vec![String::new()];
    titles.extend(plan.workings.iter().map(|working| working.title.clone()));
    if !titles.contains(&title) {
        titles.push(title.clone());
    }
    let say =
        |title: &String| if title.is_empty() { t!("tank-loads-water-and-jar-test").to_owned() } else { title.clone() };
    boxes::choice(ui, t!("tank-loads-working-shown"), &mut title, &titles, say, ui.available_width() - 12.0);
    if title != before {
        desk.tank_loads.working = (!title.is_empty()).then_some(Shown::Titled(title));
    }
    ui.add_space(4.0);
    ScrollArea::vertical().id_salt(("working", &plan.pass)).auto_shrink([false, true]).show(ui, |ui| {
        if let Some(working) = &shown {
            workings::show(ui, working);
            return;
        }
        water(desk, ui, plan);
        // The jar's own page shows the same amounts.
        if desk.tank_loads.page != Page::Jar {
            ui.add_space(6.0);
            super::jar::shortly(desk, ui, plan);
        }
        ui.add_space(4.0);
        lists::empty(ui, t!("tank-loads-a-click-on-a-number-shows"));
    });
}

/// What the water ties up and what conditions it, with what goes into the chosen load.
fn water(desk: &mut Desk, ui: &mut Ui, plan: &Plan) {
    let farm = desk.document.farm();
    let units = farm.units;
    let water = &plan.water;
    ui.label(look::heading(t!("tank-loads-water-conditioner")));
    if let Some(need) = &water.need {
        let text = t!("tank-loads-the-ions-tie-up", most = need.most().show(units));
        if super::worked_soft(ui, &text, &t!("tank-loads-need-of", name = water.name)) {
            desk.tank_loads.working = Some(Shown::Titled(t!("water-ammonium-sulfate-tied-up-by", name = water.name)));
        }
    }
    let Some(choice) = &water.conditioner else {
        lists::empty(
            ui,
            if water.id.is_empty() {
                t!("tank-loads-no-water-is-chosen")
            } else {
                t!("tank-loads-nothing-in-this-mix-asks-for")
            },
        );
        return;
    };
    let (doses, _) = per_load(water, &plan.loads, units);
    let load = doses.iter().find(|dose| dose.load == desk.tank_loads.load);
    let mut parts: Vec<String> = choice.per_spray.map(|dose| dose.show(units)).into_iter().collect();
    if let Some(amount) = load.and_then(|dose| dose.product.or(dose.salt.map(Amount::Mass))) {
        // What the mix holds of it is measured to a mark; the same amount is shown alike in both places.
        let measured = plan
            .loads
            .iter()
            .find(|load| load.number == desk.tank_loads.load)
            .and_then(|load| load.items.iter().find(|item| Some(&item.product) == choice.product.as_ref()))
            .filter(|item| is_same(item.measured.exact, amount))
            .map(|item| item.measured.text.clone());
        let words = measured.unwrap_or_else(|| show_amount(amount, units));
        parts.push(t!("tank-loads-words-in-load-load", words = words, load = desk.tank_loads.load));
    }
    let what = match (choice.in_mix, &choice.product) {
        (true, _) => t!("tank-loads-plan-row").to_owned(),
        (false, Some(_)) => t!("tank-loads-not-in-the-mix", name = choice.name),
        (false, None) => t!("tank-loads-none-in-the-shed", name = choice.name),
    };
    ui.label(format!("{what} {}", parts.join(", ")))
        .on_hover_text(format!("{}. {}. {}", choice.name, choice.why, choice.basis));
}

/// Whether two amounts are alike, but for what arithmetic may miss.
fn is_same(a: Amount, b: Amount) -> bool {
    let ratio = match (a, b) {
        (Amount::Mass(a), Amount::Mass(b)) => a.ratio(b),
        (Amount::Volume(a), Amount::Volume(b)) => a.ratio(b),
        _ => None,
    };
    ratio.is_some_and(|ratio| (ratio - 1.0).abs() < 1e-6)
}
