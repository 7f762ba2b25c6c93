//! What went out, product by product.

use egui::Ui;
use tankard_core::farm::record::RecordActive;
use tankard_core::farm::{Farm, Id, Product, Record, RecordLine};
use tankard_core::plausible::Slot;
use tankard_core::quantity::{Amount, AsTyped, Units};
use tankard_core::season::record::{none_of, of_product, record_line, with_amount};
use tankard_core::stock;
use tankard_core::t;

use super::rows::{
    FOLD, SHORT, TAKE, add, beside_plan, box_width, captions, indented_line, pair, section, take, triangle, with_before,
};
use super::{Page, State, Typing};
use crate::look;
use crate::parts::{boxes, offers};

pub(super) fn lines(ui: &mut Ui, page: &Page<'_>, state: &mut State, record: &mut Record) {
    let (farm, planned) = (page.farm, page.planned);
    let units = farm.units;
    let area = record.area();
    section(ui, t!("season-log-products"));
    let amount_width = 176.0;
    let rate_width = 96.0;
    let name_width = (ui.available_width() - FOLD - amount_width - rate_width - TAKE - 4.0 * 8.0).max(100.0);
    if !record.lines.is_empty() {
        captions(
            ui,
            &[
                ("", FOLD),
                (t!("season-log-head-product"), name_width),
                (t!("season-log-amount-in-all"), amount_width),
                (t!("season-log-over-ground"), rate_width),
            ],
        );
    }
    let all: Vec<Id> = farm.products.keys().cloned().collect();
    let mut taken = None;
    for (at, line) in record.lines.iter_mut().enumerate() {
        ui.push_id(("line", at), |ui| {
            let open = ui.horizontal(|ui| {
                let open =
                    triangle(ui, page.fold(&format!("line {at}")), &t!("season-log-more-about", name = line.name));
                let mut product = line.product.to_string();
                let say = |id: &Id| {
                    farm.products.get(id).map_or_else(|| line.name.to_string(), |product| product.name.clone())
                };
                // The box of a choice grows with its words unless the room ends.
                boxes::slot(ui, name_width, |ui| {
                    boxes::choice(ui, t!("season-log-product"), &mut product, &all, say, name_width);
                });
                let mut amount = line.amount.clone();
                let name = t!("season-log-amount-of", name = line.name);
                boxes::quantity(ui, &name, &mut amount, amount_width);
                let slot = Slot::RecordAmount { record: page.id.to_owned(), product: line.product.to_string() };
                offers::at_box(ui, &name, &slot);
                if amount != line.amount {
                    retype(state, line, amount, farm);
                }
                boxes::slot(ui, rate_width, |ui| {
                    if let Some(rate) = line.amount.value().spread(area) {
                        ui.label(look::soft(ui, format!("= {}", rate.show(units))));
                    }
                });
                if take(ui, &line.name) {
                    taken = Some(at);
                }
                if line.product != product
                    && let Some(other) = farm.products.get(&product)
                {
                    replace(line, &product, other, units);
                }
                open
            });
            let words: Vec<String> = line.actives.iter().map(|active| active_words(active, units)).collect();
            let mut right = vec![beside(line, planned, units)];
            if !line.lot.trim().is_empty() {
                right.push(t!("season-log-lot-words", lot = line.lot.trim()));
            }
            let right: Vec<String> = right.into_iter().filter(|text| !text.is_empty()).collect();
            if !words.is_empty() || !right.is_empty() {
                indented_line(ui, FOLD, name_width, &words.join(", "), &right.join(" · "));
                ui.add_space(2.0);
            }
            if open.inner {
                let lots = page.used.lots_of((farm, page.log), &line.product, record.date);
                more(ui, line, &lots);
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
                    t!(
                        "season-log-planned-and-not-recorded-of",
                        amount = missing.amount.show(units),
                        name = missing.name
                    ),
                ));
            }
        }
    }
    let name = |id: &Id| farm.products.get(id).map(|product| product.name.clone());
    if let Some(id) = add(ui, t!("season-log-add-a-product"), &all, name)
        && let Some(product) = farm.products.get(&id)
    {
        let nothing = none_of(product, units);
        let mut line = record_line(&id, product, nothing.value(), units);
        line.amount = nothing;
        line.actives.clear();
        line.lot = stock::only_lot(farm, page.log, &id, record.date).into();
        record.lines.push(line);
    }
}

/// How far an amount is from what was planned: as the record keeps it, else as the plan has it now.
fn beside(line: &RecordLine, planned: Option<&Record>, units: Units) -> String {
    let now = || {
        let planned = planned?;
        Some(planned.lines.iter().find(|other| other.product == line.product).map(|before| before.amount.clone()))
    };
    match line.planned.clone().map(Some).or_else(now) {
        None => String::new(),
        Some(None) => t!("season-log-not-in-the-plan").to_owned(),
        Some(Some(before)) => beside_plan(&before.show(units), line.amount.value().ratio(before.value())),
    }
}

/// What is seldom typed of a product.
fn more(ui: &mut Ui, line: &mut RecordLine, lots: &[String]) {
    let name = line.name.clone();
    let of = |what: &str| t!("season-log-of", what = what, name = name);
    pair(
        ui,
        (t!("season-log-lot"), |ui| {
            with_before(
                ui,
                &of(t!("season-log-lot")),
                &mut line.lot,
                box_width(ui),
                t!("season-log-as-on-the-container"),
                lots,
            );
        }),
        (t!("season-log-price"), |ui| {
            boxes::quantity_or_none(ui, &of(t!("season-log-price")), &mut line.price, box_width(ui));
        }),
    );
    pair(
        ui,
        (t!("season-log-registration"), |ui| {
            boxes::text(ui, &of(t!("season-log-registration")), &mut line.registration, box_width(ui))
        }),
        (t!("season-log-restricted"), |ui| {
            if ui.is_enabled() {
                boxes::tick(ui, &mut line.restricted, t!("season-log-certified-use-only"))
                    .accessible_name(of(t!("season-log-restricted-use")))
            } else {
                ui.label(if line.restricted { t!("season-log-yes-certified-use-only") } else { t!("season-log-no") })
            }
        }),
    );
    pair(
        ui,
        (t!("season-log-re-entry-h"), |ui| {
            boxes::count_or_none(
                ui,
                &of(t!("season-log-hours-before-re-entry")),
                &mut line.entry,
                SHORT,
                t!("season-log-head-hours"),
            );
        }),
        (t!("season-log-harvest-d"), |ui| {
            boxes::count_or_none(
                ui,
                &of(t!("season-log-days-before-harvest")),
                &mut line.harvest,
                SHORT,
                t!("season-log-head-days"),
            );
        }),
    );
    ui.add_space(4.0);
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
