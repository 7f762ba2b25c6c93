//! When the field is not what the map said: what is left in the tank, more ground, another rate from here on. The answer
//! stands beside the boxes at once; one click makes it a pass with cards of its own.

use std::collections::BTreeMap;

use egui::Ui;
use tankard_core::farm::{Farm, Id, Line};
use tankard_core::finding::{Finding, Level};
use tankard_core::loads::rest::{Change, Changed, carry_into, ground_left, rest, takers};
use tankard_core::plan::{Plan, plan};
use tankard_core::quantity::{Area, AsTyped, CarrierRate, Quantity, Volume};
use tankard_core::t;

use super::{Editor, Page};
use crate::app::Desk;
use crate::look;
use crate::parts::{boxes, mark};

/// What is typed, and the answer to it.
#[derive(Clone, Default)]
pub(crate) struct Form {
    of: Id,
    after: u32,
    in_tank: Option<AsTyped<Volume>>,
    left: BTreeMap<Id, AsTyped<Area>>,
    more: BTreeMap<Id, AsTyped<Area>>,
    carrier: Option<AsTyped<CarrierRate>>,
    mix: Vec<Line>,
    answer: Option<(u64, Change, Answer)>,
}

/// What a change comes to.
#[derive(Clone)]
struct Answer {
    /// In sentences.
    words: Vec<String>,
    /// What must be settled before its cards are printed.
    stops: Vec<Finding>,
    /// Whether ground is left; `None` where the change cannot be.
    ground: Option<bool>,
}

/// Opens the form for a pass with the chosen load as the last one filled, or closes it.
pub(super) fn toggle(desk: &mut Desk, id: &str) {
    let state = &mut desk.tank_loads;
    if state.editor == Some(Editor::Rest) {
        state.editor = None;
        return;
    }
    let mix = desk.document.farm().passes.get(id).map(|pass| pass.mix.clone()).unwrap_or_default();
    state.rest = Form { of: id.to_owned(), after: state.load, mix, ..Form::default() };
    state.editor = Some(Editor::Rest);
}

/// Shows the form.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui, id: &str, planned: &Plan) {
    let mut form = std::mem::take(&mut desk.tank_loads.rest);
    let revision = desk.document.revision();
    let farm = desk.document.farm();
    let Some(pass) = farm.passes.get(id) else { return };
    if form.of != id {
        form = Form { of: id.to_owned(), after: 1, mix: pass.mix.clone(), ..Form::default() };
    }
    ui.label(look::heading(t!("tank-loads-it-came-out-differently-in-the-field")));
    boxes::row(ui, t!("tank-loads-loads-filled-so-far"), |ui| {
        for number in 0..=u32::try_from(planned.loads.len()).unwrap_or(u32::MAX) {
            let text = if number == 0 { t!("tank-loads-none-yet").to_owned() } else { number.to_string() };
            ui.selectable_value(&mut form.after, number, text);
        }
    });
    boxes::row(ui, t!("tank-loads-still-in-the-tank"), |ui| {
        boxes::quantity_hinted(
            ui,
            t!("tank-loads-still-in-the-tank-095"),
            &mut form.in_tank,
            110.0,
            t!("tank-loads-nothing"),
        );
    });
    grounds(ui, farm, planned, &mut form);
    boxes::row(ui, t!("tank-loads-volume-from-here-on"), |ui| {
        let usual = pass.carrier.as_ref().map(|carrier| carrier.text().to_owned()).unwrap_or_default();
        boxes::quantity_hinted(ui, t!("tank-loads-spray-volume-from-here-on"), &mut form.carrier, 110.0, &usual);
    });
    rates(ui, farm, &mut form.mix);
    let change = change(&form, &pass.mix);
    if form.answer.as_ref().is_none_or(|(known, of, _)| *known != revision || *of != change) {
        form.answer = Some((revision, change.clone(), answer(farm, planned, &change)));
    }
    let shown = form.answer.as_ref().map(|(.., answer)| answer.clone());
    desk.tank_loads.rest = form;
    if let Some(answer) = shown {
        ui.add_space(4.0);
        answered(desk, ui, id, planned, &change, &answer);
    }
}

/// The rates from here on, as many in a row as there is room for.
fn rates(ui: &mut Ui, farm: &Farm, mix: &mut [Line]) {
    boxes::row(ui, t!("tank-loads-rates-from-here-on"), |ui| {
        let width = 322.0_f32.min(ui.available_width());
        for line in mix.iter_mut() {
            let product = farm.products.get(&line.product);
            let name = product.map_or(line.product.as_str(), |product| product.name.as_str());
            boxes::slot(ui, width, |ui| {
                super::cell(ui, width - 132.0, false, |ui| {
                    ui.add(egui::Label::new(look::soft(ui, name)).truncate());
                });
                boxes::quantity(ui, &t!("tank-loads-rate-of-from-here-on", name = name), &mut line.rate, 110.0);
            });
        }
    });
}

/// The ground that is left, field by field.
fn grounds(ui: &mut Ui, farm: &Farm, planned: &Plan, form: &mut Form) {
    let tank = form.in_tank.as_ref().map_or(Volume::ZERO, AsTyped::value);
    let left = ground_left(planned, form.after, tank);
    for field in &planned.fields {
        let Some(name) = farm.fields.get(&field.field).map(|field| field.name.as_str()) else { continue };
        let ground = left.iter().find(|(id, _)| *id == field.field).map_or(Area::ZERO, |(_, area)| *area);
        ui.push_id(("rest", &field.field), |ui| {
            boxes::row(ui, &t!("tank-loads-left-of", name = name), |ui| {
                let usual = ground.show(farm.units);
                let mut typed = form.left.remove(&field.field);
                boxes::quantity_hinted(ui, &t!("tank-loads-ground-left-of", name = name), &mut typed, 110.0, &usual);
                form.left.extend(typed.map(|typed| (field.field.clone(), typed)));
                ui.label(look::soft(ui, t!("tank-loads-and-on-top-of-that")));
                let mut more = form.more.remove(&field.field);
                boxes::quantity_hinted(
                    ui,
                    &t!("tank-loads-more-ground-of", name = name),
                    &mut more,
                    110.0,
                    t!("tank-loads-nothing-more"),
                );
                form.more.extend(more.map(|more| (field.field.clone(), more)));
            });
        });
    }
}

fn change(form: &Form, mix: &[Line]) -> Change {
    Change {
        after: form.after,
        in_tank: form.in_tank.clone(),
        ground: form.left.clone().into_iter().collect(),
        more: form.more.clone().into_iter().collect(),
        carrier: form.carrier.clone(),
        mix: if form.mix == mix { Vec::new() } else { form.mix.clone() },
    }
}

fn answer(farm: &Farm, planned: &Plan, change: &Change) -> Answer {
    let Changed { farm: after, rest, mut said } = match rest(farm, planned, change) {
        Ok(changed) => changed,
        Err(problem) => return Answer { words: vec![problem], stops: Vec::new(), ground: None },
    };
    let units = farm.units;
    let mut stops = Vec::new();
    if let Some(plan) = rest.as_ref().and_then(|id| plan(&after, id)) {
        let tank = change.in_tank.as_ref().map_or(Volume::ZERO, AsTyped::value);
        let ground: Area = plan.fields.iter().map(|field| field.covered).sum();
        let (ground, spray, loads) = (ground.show(units), plan.spray_volume.show(units), plan.loads.len());
        let left = if tank.is_zero() {
            t!("tank-loads-are-left-of-spray-load", ground = ground, spray = spray, loads = loads)
        } else {
            let tank = tank.show(units);
            t!("tank-loads-are-left-some-in-the-tank", ground = ground, spray = spray, tank = tank, loads = loads)
        };
        said.insert(0, left);
        stops = plan.findings.into_iter().filter(|finding| finding.level == Level::Stop).collect();
    } else if rest.is_none() {
        said.insert(0, t!("tank-loads-no-ground-is-left").to_owned());
    }
    Answer { words: said, stops, ground: Some(rest.is_some()) }
}

/// The answer, and what can be done with it.
fn answered(desk: &mut Desk, ui: &mut Ui, id: &str, planned: &Plan, change: &Change, answer: &Answer) {
    for words in &answer.words {
        let text = egui::RichText::new(format!("{words}."));
        ui.label(if answer.ground.is_none() { text.color(look::colours(ui).stop) } else { text });
    }
    for stop in &answer.stops {
        ui.horizontal_wrapped(|ui| {
            mark::show(ui, Level::Stop);
            ui.label(egui::RichText::new(format!("{}.", stop.text)).color(look::colours(ui).stop));
            ui.label(look::soft(ui, &stop.hint));
        });
    }
    let Some(ground) = answer.ground else { return };
    ui.horizontal_wrapped(|ui| {
        let words =
            if ground { t!("tank-loads-plan-the-rest-and-see-its") } else { t!("tank-loads-keep-what-was-sprayed") };
        if ui.button(words).clicked() {
            match rest(desk.document.farm(), planned, change) {
                Ok(changed) => done(desk, changed.farm, changed.rest.as_deref(), &answer.words),
                Err(problem) => desk.tell_problem(problem),
            }
        }
        if ground || change.in_tank.is_none() {
            return;
        }
        let log = desk.document.log();
        let into: Vec<(Id, String)> = takers(desk.document.farm(), &log, id)
            .into_iter()
            .map(|(id, pass)| (id.clone(), pass.name.clone()))
            .collect();
        for (other, name) in into {
            if boxes::act(ui, &t!("tank-loads-carry-it-into", name = name)).clicked() {
                match carry_into(desk.document.farm(), planned, change, &other) {
                    Ok(farm) => done(desk, farm, Some(&other), &answer.words),
                    Err(problem) => desk.tell_problem(problem),
                }
            }
        }
    });
}

fn done(desk: &mut Desk, farm: Farm, next: Option<&str>, words: &[String]) {
    desk.document.edit(|now| *now = farm);
    if let Some(next) = next {
        desk.tank_loads.choose(next);
        desk.tank_loads.reveal = true;
    }
    desk.tank_loads.editor = None;
    desk.tank_loads.page = Page::Cards;
    desk.tell(words.join(". "));
}
