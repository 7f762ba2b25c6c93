//! Two sets side by side: what stands in the mix and what might, with amounts, cost and what there would be to settle.

use std::sync::Arc;

use egui::{Label, Ui};
use tankard_core::farm::Pass;
use tankard_core::finding::{Finding, Level};
use tankard_core::mix::choice::{Choice, per_ground};
use tankard_core::plan::{Plan, plan_as};
use tankard_core::quantity::Units;
use tankard_core::t;
use tankard_core::words::capital;

use super::adjuvants::take;
use super::cell;
use crate::app::Desk;
use crate::look;
use crate::parts::{boxes, mark};

/// The plan of a pass with another set, kept while nothing changes.
#[derive(Default)]
pub(crate) struct Other {
    revision: u64,
    key: String,
    plan: Option<Arc<Plan>>,
}

/// Shows the set in the mix beside another.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui, id: &str, plan: &Plan, choice: &Choice) {
    let Some(other) = planned(desk, id, choice) else { return };
    let farm = desk.document.farm();
    let units = farm.units;
    let column = ((ui.available_width() - 90.0 - 12.0) / 2.0).max(120.0);
    let to_buy = choice.members.iter().find(|member| member.product.is_none());
    let mut act = None;
    ui.horizontal(|ui| {
        cell(ui, 90.0, false, |ui| {
            if boxes::act(ui, t!("tank-loads-back")).accessible_name(t!("tank-loads-back-to-all-sets")).clicked() {
                act = Some(false);
            }
        });
        cell(ui, column, false, |ui| {
            ui.label(look::strong(t!("tank-loads-in-the-mix-now")));
        });
        cell(ui, column, true, |ui| {
            if to_buy.is_none()
                && boxes::act(ui, t!("tank-loads-take"))
                    .accessible_name(t!("tank-loads-take-this-set-into-the-mix"))
                    .clicked()
            {
                act = Some(true);
            }
            ui.with_layout(egui::Layout::left_to_right(egui::Align::Center), |ui| {
                ui.add(Label::new(look::strong(format!("{}. {}", choice.rank, capital(&choice.title())))).truncate());
            });
        });
    });
    boxes::hairline(ui);
    let load = desk.tank_loads.load;
    // Of the other the set as it is offered, since a plan cannot hold what has still to be bought.
    let sides = [(plan, plan.adjuvants.current.as_ref()), (other.as_ref(), Some(choice))];
    line(ui, column, t!("tank-loads-adjuvants"), sides.map(|(side, set)| adjuvants(side, set, load, farm.units)));
    let cost = sides.map(|(_, set)| {
        set.and_then(|set| set.cost_per_hectare)
            .map_or(t!("tank-loads-price-not-typed").to_owned(), |cost| per_ground(cost, units, &farm.currency))
    });
    line(ui, column, t!("tank-loads-their-cost"), cost);
    let whole = sides.map(|(side, set)| {
        let known = set.is_none_or(|set| set.members.iter().all(|member| member.product.is_some()));
        side.cost.filter(|_| known).map_or(t!("tank-loads-not-known").to_owned(), |cost| {
            t!("tank-loads-for-the-pass", currency = farm.currency, cost = cost.show())
        })
    });
    line(ui, column, t!("tank-loads-all-products"), whole);
    let reasons = sides.map(|(_, set)| {
        set.map_or(String::new(), |set| {
            set.verdicts
                .iter()
                .map(|verdict| format!("{} {}", verdict.name, verdict.plain()))
                .collect::<Vec<_>>()
                .join(". ")
        })
    });
    line(ui, column, t!("tank-loads-why"), reasons);
    ui.horizontal_top(|ui| {
        cell(ui, 90.0, false, |ui| {
            ui.label(look::soft(ui, t!("tank-loads-only-here")));
        });
        for (this, that) in [(plan, other.as_ref()), (other.as_ref(), plan)] {
            super::column(ui, column, |ui| match to_buy {
                Some(member) => {
                    let text = t!("tank-loads-known-once-is-in-the-shed", class = member.class.name());
                    ui.add(Label::new(look::soft(ui, text)).wrap());
                }
                None => only_here(ui, this, that),
            });
        }
    });
    match act {
        Some(true) => take(desk, id, choice),
        Some(false) => desk.tank_loads.compared = None,
        None => {}
    }
}

fn planned(desk: &mut Desk, id: &str, choice: &Choice) -> Option<Arc<Plan>> {
    let revision = desk.document.revision();
    let key = format!("{id}/{}", super::adjuvants::key(choice));
    if desk.tank_loads.other.plan.is_none()
        || desk.tank_loads.other.revision != revision
        || desk.tank_loads.other.key != key
    {
        let log = desk.document.log();
        let farm = desk.document.farm();
        let (pass_id, pass) = farm.passes.get_key_value(id)?;
        let mut pass: Pass = pass.clone();
        choice.take(&mut pass, farm);
        let plan = Some(Arc::new(plan_as(farm, &log, pass_id, &pass)));
        desk.tank_loads.other = Other { revision, key, plan };
    }
    desk.tank_loads.other.plan.clone()
}

fn line(ui: &mut Ui, column: f32, label: &str, texts: [String; 2]) {
    ui.horizontal_top(|ui| {
        cell(ui, 90.0, false, |ui| {
            ui.label(look::soft(ui, label));
        });
        for text in texts {
            super::column(ui, column, |ui| {
                ui.add(Label::new(look::narrow(text)).wrap());
            });
        }
    });
    boxes::hairline(ui);
}

/// The adjuvants of a plan with what they come to in a load.
fn adjuvants(plan: &Plan, set: Option<&Choice>, load: u32, units: Units) -> String {
    let Some(set) = set else { return String::new() };
    if set.members.is_empty() {
        return t!("tank-loads-none").to_owned();
    }
    let lines: Vec<String> = set
        .members
        .iter()
        .map(|member| {
            let rate = member.per_area.map(|amount| amount.show(units)).unwrap_or_default();
            let in_load = plan
                .loads
                .iter()
                .find(|known| known.number == load)
                .and_then(|known| known.items.iter().find(|item| Some(&item.product) == member.product.as_ref()))
                .map(|item| &item.measured.text);
            let name = &member.name;
            match in_load {
                _ if member.product.is_none() => t!("tank-loads-member-to-buy", name = name, rate = rate),
                Some(text) => t!("tank-loads-in-load", name = name, rate = rate, text = text, load = load),
                None => format!("{name} {rate}"),
            }
        })
        .collect();
    lines.join("\n")
}

/// What there is to settle on one side and not on the other.
fn only_here(ui: &mut Ui, this: &Plan, that: &Plan) {
    let only: Vec<&Finding> = this
        .findings
        .iter()
        .filter(|finding| finding.level > Level::Note && !that.findings.contains(finding))
        .collect();
    if only.is_empty() {
        ui.label(look::soft(ui, t!("tank-loads-nothing-to-settle-that-the-other")));
    }
    for finding in only.iter().take(4) {
        mark::line(ui, finding.level, &finding.text);
    }
    if only.len() > 4 {
        ui.label(look::soft(ui, t!("tank-loads-and-more", only = only.len() - 4)));
    }
}
