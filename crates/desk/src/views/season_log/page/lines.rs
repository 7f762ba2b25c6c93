//! What went out, product by product.

use egui::Ui;
use tankard_core::farm::record::RecordActive;
use tankard_core::farm::{Farm, Id, Product, Record, RecordLine};
use tankard_core::quantity::{Amount, AsTyped, Quantity, Units};
use tankard_core::season::record::{none_of, of_product, record_line, with_amount};

use super::rows::{TAKE, add, beside_plan, captions, section, slot, soft_line, take};
use super::{State, Typing};
use crate::look;
use crate::parts::boxes;

pub(super) fn lines(ui: &mut Ui, state: &mut State, farm: &Farm, record: &mut Record, planned: Option<&Record>) {
    let units = farm.units;
    let area = record.area();
    section(ui, "Products");
    let amount_width = 112.0;
    let rate_width = 96.0;
    let name_width = (ui.available_width() - amount_width - rate_width - TAKE - 3.0 * 8.0).max(100.0);
    if !record.lines.is_empty() {
        captions(ui, &[("product", name_width), ("amount in all", amount_width), ("over ground", rate_width)]);
    }
    let all: Vec<Id> = farm.products.keys().cloned().collect();
    let mut taken = None;
    for (at, line) in record.lines.iter_mut().enumerate() {
        ui.push_id(("line", at), |ui| {
            ui.horizontal(|ui| {
                let mut product = line.product.clone();
                let say =
                    |id: &Id| farm.products.get(id).map_or_else(|| line.name.clone(), |product| product.name.clone());
                // The box of a choice grows with its words unless the room ends.
                slot(ui, name_width, |ui| boxes::choice(ui, "Product", &mut product, &all, say, name_width));
                let mut amount = line.amount.clone();
                boxes::quantity(ui, &format!("Amount of {}", line.name), &mut amount, amount_width);
                if amount != line.amount {
                    retype(state, line, amount, farm);
                }
                slot(ui, rate_width, |ui| {
                    if let Some(rate) = line.amount.value().spread(area) {
                        ui.label(look::soft(ui, format!("= {}", rate.show(units))));
                    }
                });
                if take(ui, &line.name) {
                    taken = Some(at);
                }
                if product != line.product
                    && let Some(other) = farm.products.get(&product)
                {
                    replace(line, &product, other, units);
                }
            });
            let words: Vec<String> = line.actives.iter().map(|active| active_words(active, units)).collect();
            let beside = planned.map(|planned| {
                planned.lines.iter().find(|other| other.product == line.product).map_or_else(
                    || "not in the plan".to_owned(),
                    |before| {
                        let ratio = line.amount.value().ratio(before.amount.value());
                        beside_plan(&before.amount.show(units), ratio)
                    },
                )
            });
            if !words.is_empty() || beside.is_some() {
                soft_line(ui, name_width, &words.join(", "), &beside.unwrap_or_default());
                ui.add_space(4.0);
            }
        });
    }
    if let Some(at) = taken {
        record.lines.remove(at);
    }
    if let Some(planned) = planned {
        for missing in &planned.lines {
            if record.lines.iter().all(|line| line.product != missing.product) {
                ui.label(look::soft(
                    ui,
                    format!("planned and not recorded: {} of {}", missing.amount.show(units), missing.name),
                ));
            }
        }
    }
    let name = |id: &Id| farm.products.get(id).map(|product| product.name.clone());
    if let Some(id) = add(ui, "Add a product…", &all, name)
        && let Some(product) = farm.products.get(&id)
    {
        let nothing = none_of(product, units);
        let mut line = record_line(&id, product, nothing.value(), units);
        line.amount = nothing;
        line.actives.clear();
        record.lines.push(line);
    }
}

/// Gives a line the amount that is being typed, and its actives in proportion to what it was before the typing began.
fn retype(state: &mut State, line: &mut RecordLine, amount: AsTyped<Amount>, farm: &Farm) {
    let before = match state.typing.take() {
        Some(typing) if typing.now == *line => typing.before,
        _ => line.clone(),
    };
    *line = with_amount(&before, amount, farm.products.get(&before.product), farm.units);
    state.typing = Some(Typing { before, now: line.clone() });
}

/// Another product in the same line. The amount stays where it can be measured out of the other one, too.
fn replace(line: &mut RecordLine, id: &Id, product: &Product, units: Units) {
    let nothing = none_of(product, units);
    let amount = if nothing.value().plus(line.amount.value()).is_some() { line.amount.clone() } else { nothing };
    *line = of_product(id, product, amount, units);
}

fn active_words(active: &RecordActive, units: Units) -> String {
    format!("{} {} {}", active.name, active.mass.show(units), active.basis.short())
}
