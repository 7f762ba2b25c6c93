//! The tank mix: product, rate, amount over ground and in the chosen load, cost.

use egui::Ui;
use tankard_core::farm::{Farm, Id, Line, ProductKind};
use tankard_core::mix::line::PlannedLine;
use tankard_core::plan::Plan;
use tankard_core::plausible::Slot;
use tankard_core::quantity::{AsTyped, Money, Quantity, Rate, Units};
use tankard_core::t;

use super::{Shown, cell, worked};
use crate::app::Desk;
use crate::look;
use crate::parts::{boxes, lists, offers};

/// Widths of the columns.
struct Widths {
    product: f32,
    rate: f32,
    ground: f32,
    load: f32,
    cost: f32,
    acts: f32,
    /// Whether the name of a product stands over its figures, so that nothing lies beside the window.
    over: bool,
    /// Whether the names stand in tight letters, all of them alike.
    tight: bool,
}

impl Widths {
    fn of(ui: &Ui) -> Self {
        let (rate, load, cost, acts, gaps) = (112.0, 110.0, 42.0, 32.0, 5.0 * 4.0);
        // Where room is short the amount over ground is read from the working of the rate.
        let ground = if ui.available_width() < 500.0 { 0.0 } else { 74.0 };
        let product = ui.available_width() - rate - ground - load - cost - acts - gaps;
        if product < NAME {
            let (name, load) = (ui.available_width() - cost - acts - 2.0 * 4.0, ui.available_width() - rate - 4.0);
            return Self { product: name, rate, ground: 0.0, load, cost, acts, over: true, tight: false };
        }
        Self { product, rate, ground, load, cost, acts, over: false, tight: false }
    }

    /// Where one name is too long for its column, all are in tight letters.
    fn for_names<'n>(self, ui: &Ui, names: impl Iterator<Item = &'n str>) -> Self {
        let longest = names.map(|name| look::width(ui, name)).fold(0.0, f32::max);
        Self { tight: longest + PLACE > self.product, ..self }
    }
}

/// Room for the place in the order before a name.
const PLACE: f32 = 14.0;
/// Room that a product's name needs beside its figures.
const NAME: f32 = 110.0;

/// Shows the mix.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui, id: &str, plan: &Plan) {
    let Some(before) = desk.document.farm().passes.get(id).cloned() else { return };
    let mut pass = before.clone();
    let mut working = None;
    look::sheet(ui).show(ui, |ui| {
        ui.set_width(ui.available_width());
        let over = Widths::of(ui).over;
        ui.horizontal(|ui| {
            ui.label(look::heading(t!("tank-loads-tank-mix")));
            if !over {
                ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| totals(desk, ui, plan));
            }
        });
        if over {
            ui.horizontal(|ui| totals(desk, ui, plan));
        }
        ui.spacing_mut().item_spacing = egui::vec2(4.0, 2.0);
        let farm = desk.document.farm();
        let names = pass.mix.iter().filter_map(|line| farm.products.get(&line.product)).map(|product| &*product.name);
        let widths = Widths::of(ui).for_names(ui, names);
        if pass.mix.is_empty() {
            let [volume, mass, active] = match farm.units {
                Units::UsCustomary => ["22 fl oz/ac", "17 lb/100 gal", "0.75 lb ae/ac"],
                Units::Imperial => ["22 imp fl oz/ac", "17 lb/100 imp gal", "0.75 lb ae/ac"],
                Units::Metric => ["1.6 L/ha", "2 kg/100 L", "0.84 kg ae/ha"],
            };
            let text = t!("tank-loads-add-the-products-of-this-pass", volume = volume, mass = mass, active = active);
            lists::empty(ui, &text);
        } else {
            head(ui, &widths, farm.units, &farm.currency);
        }
        let mut remove = None;
        for (at, line) in pass.mix.iter_mut().enumerate() {
            ui.push_id(("line", at), |ui| {
                if row(ui, farm, plan, line, &widths, desk.tank_loads.load, &mut working) {
                    remove = Some(at);
                }
            });
            boxes::hairline(ui);
        }
        if let Some(at) = remove {
            pass.mix.remove(at);
        }
        ui.horizontal(|ui| {
            let width = (ui.available_width() - 330.0).clamp(120.0, 200.0);
            add(ui, farm, &mut pass.mix, width);
            if !pass.mix.is_empty() && !widths.over {
                order(ui, &mut pass, plan);
            }
        });
        if !pass.mix.is_empty() && widths.over {
            ui.horizontal(|ui| order(ui, &mut pass, plan));
        }
    });
    if pass != before {
        desk.document.edit(|farm| {
            farm.passes.insert(id.to_owned(), pass);
        });
    }
    if working.is_some() {
        desk.tank_loads.working = working;
    }
}

/// Water in the chosen load, and what all products cost over ground.
fn totals(desk: &Desk, ui: &mut Ui, plan: &Plan) {
    let farm = desk.document.farm();
    if let Some(cost) = plan.cost.and_then(|cost| per_area(cost, plan, farm.units)) {
        let per = if farm.units == Units::Metric { "ha" } else { "ac" };
        ui.label(look::strong(format!("{}{cost}/{per}", farm.currency)));
        ui.add_space(6.0);
    }
    if let Some(load) = plan.loads.iter().find(|load| load.number == desk.tank_loads.load) {
        let carrier =
            farm.passes.get(&plan.pass).map_or(t!("tank-loads-water-short"), |pass| pass.carrier_kind.short());
        ui.label(look::soft(
            ui,
            t!(
                "tank-loads-water-carrier-in-load-number",
                water = load.water.show(farm.units),
                carrier = carrier,
                number = load.number
            ),
        ));
    }
}

fn head(ui: &mut Ui, widths: &Widths, units: Units, currency: &str) {
    let cost = format!("{currency}/{}", if units == Units::Metric { "ha" } else { "ac" });
    let product = (widths.product, false, t!("tank-loads-product-by-its-place"));
    let figures = [
        (widths.rate, false, t!("tank-loads-rate")),
        (widths.ground, true, t!("tank-loads-over-ground")),
        (widths.load, true, t!("tank-loads-in-this-load")),
    ];
    let cost = (widths.cost, true, cost.as_str());
    let line = |ui: &mut Ui, words: &[(f32, bool, &str)]| {
        ui.horizontal(|ui| {
            for (width, right, text) in words.iter().copied().filter(|(width, ..)| *width > 0.0) {
                cell(ui, width, right, |ui| {
                    ui.label(look::soft(ui, text));
                });
            }
        });
    };
    if widths.over {
        line(ui, &[product, cost]);
        line(ui, &figures);
    } else {
        let [rate, ground, load] = figures;
        line(ui, &[product, rate, ground, load, cost]);
    }
    boxes::hairline(ui);
}

fn row(
    ui: &mut Ui,
    farm: &Farm,
    plan: &Plan,
    line: &mut Line,
    widths: &Widths,
    load: u32,
    working: &mut Option<Shown>,
) -> bool {
    let product = farm.products.get(&line.product);
    let name = product
        .map_or_else(|| t!("tank-loads-not-in-the-shed", product = line.product), |product| product.name.clone());
    let planned = plan.lines.iter().find(|planned| planned.product == line.product);
    let mut done = Done::default();
    if widths.over {
        ui.horizontal(|ui| {
            named(ui, plan, line, planned, &name, widths, working);
            costs(ui, farm, plan, planned, widths);
            acts(ui, line, &name, widths, &mut done);
        });
    }
    ui.horizontal(|ui| {
        if !widths.over {
            named(ui, plan, line, planned, &name, widths, working);
        }
        let rate = t!("tank-loads-rate-of", name = name);
        boxes::quantity(ui, &rate, &mut line.rate, widths.rate - 8.0);
        offers::at_box(ui, &rate, &Slot::Rate { pass: plan.pass.clone(), product: line.product.clone() });
        if widths.ground > 0.0 {
            cell(ui, widths.ground, true, |ui| over_ground(ui, farm.units, line, planned, &name, working));
        }
        cell(ui, widths.load, true, |ui| {
            let item = plan
                .loads
                .iter()
                .find(|candidate| candidate.number == load)
                .and_then(|load| load.items.iter().find(|item| item.product == line.product));
            if let Some(item) = item
                && worked(ui, item.measured.text.clone(), &t!("tank-loads-name-in-load-load", name = name, load = load))
            {
                *working = Some(Shown::InLoad(line.product.clone()));
            }
        });
        if !widths.over {
            costs(ui, farm, plan, planned, widths);
            acts(ui, line, &name, widths, &mut done);
        }
    });
    bounds(ui, line, &name, done.more);
    done.removed
}

/// What was clicked in a row.
#[derive(Default)]
struct Done {
    removed: bool,
    more: bool,
}

/// The place of a product in the order and its name.
fn named(
    ui: &mut Ui,
    plan: &Plan,
    line: &Line,
    planned: Option<&PlannedLine>,
    name: &str,
    widths: &Widths,
    working: &mut Option<Shown>,
) {
    cell(ui, widths.product, false, |ui| {
        if let Some(planned) = planned {
            let why = plan.order.iter().find(|placed| placed.product == line.product).map(|placed| placed.why.as_str());
            let place = egui::Button::new(look::heading(planned.number.to_string())).frame(false);
            ui.spacing_mut().button_padding.x = 0.0;
            let response = ui.add(place).accessible_name(t!(
                "tank-loads-place-of-show-the-order",
                number = planned.number,
                name = name
            ));
            if response.on_hover_text(why.unwrap_or_default()).clicked() {
                *working = Some(Shown::Titled(t!("mix-mixing-order").to_owned()));
            }
        }
        let name = if widths.tight { look::narrow(name) } else { egui::RichText::new(name) };
        ui.add(egui::Label::new(name).truncate());
    });
}

/// What a product costs over ground.
fn costs(ui: &mut Ui, farm: &Farm, plan: &Plan, planned: Option<&PlannedLine>, widths: &Widths) {
    cell(ui, widths.cost, true, |ui| {
        let cost = planned.and_then(|planned| planned.cost).and_then(|cost| per_area(cost, plan, farm.units));
        ui.label(cost.unwrap_or_default());
    });
}

/// What can be done with a line.
fn acts(ui: &mut Ui, line: &Line, name: &str, widths: &Widths, done: &mut Done) {
    cell(ui, widths.acts, true, |ui| {
        done.removed = boxes::act(ui, "×")
            .on_hover_text(t!("tank-loads-take-it-out-of-the-mix"))
            .accessible_name(t!("tank-loads-take-out-of-the-mix", name = name))
            .clicked();
        done.more = in_the_spray(line)
            && line.at_least.is_none()
            && line.at_most.is_none()
            && boxes::act(ui, "…")
                .on_hover_text(t!("tank-loads-but-at-least-at-most-over"))
                .accessible_name(t!("tank-loads-bounds-over-ground-for", name = name))
                .clicked();
    });
}

/// Whether a rate is typed by the spray, so that its amount over ground hangs on the spray volume.
fn in_the_spray(line: &Line) -> bool {
    !matches!(
        line.rate.value(),
        Rate::VolumePerArea(_) | Rate::MassPerArea(_) | Rate::OuncesPerArea(_) | Rate::ActivePerArea(..)
    )
}

/// What a rate that is not typed over ground comes to there.
fn over_ground(
    ui: &mut Ui,
    units: Units,
    line: &Line,
    planned: Option<&PlannedLine>,
    name: &str,
    working: &mut Option<Shown>,
) {
    let Some(planned) = planned else {
        ui.label(look::soft(ui, t!("tank-loads-not-reckoned")))
            .on_hover_text(t!("tank-loads-see-what-there-is-to-settle"));
        return;
    };
    let plain = matches!(line.rate.value(), Rate::VolumePerArea(_) | Rate::MassPerArea(_) | Rate::OuncesPerArea(_));
    if !plain && worked(ui, planned.per_area.show(units), &t!("tank-loads-name-over-ground", name = name)) {
        *working = Some(Shown::Titled(t!("mix-over-ground", name = name)));
    }
}

/// Under a rate in the spray: its floor and ceiling over ground, once they are asked for.
fn bounds(ui: &mut Ui, line: &mut Line, name: &str, more: bool) {
    let id = ui.make_persistent_id("bounds");
    if more {
        ui.data_mut(|data| data.insert_temp(id, true));
    }
    let asked = ui.data(|data| data.get_temp::<bool>(id).unwrap_or(false));
    if !in_the_spray(line) || !(line.at_least.is_some() || line.at_most.is_some() || asked) {
        return;
    }
    ui.horizontal_wrapped(|ui| {
        ui.add_space(16.0);
        ui.label(look::soft(ui, t!("tank-loads-but-at-least")));
        boxes::quantity_or_none(ui, &t!("tank-loads-least-of-over-ground", name = name), &mut line.at_least, 112.0);
        ui.label(look::soft(ui, t!("tank-loads-at-most")));
        boxes::quantity_or_none(ui, &t!("tank-loads-most-of-over-ground", name = name), &mut line.at_most, 112.0);
        ui.label(look::soft(ui, t!("tank-loads-over-ground")));
    });
}

fn per_area(cost: Money, plan: &Plan, units: Units) -> Option<String> {
    let units = if units == Units::Metric { plan.area.to_hectares() } else { plan.area.to_acres() };
    cost.per(units).map(Money::show)
}

fn add(ui: &mut Ui, farm: &Farm, mix: &mut Vec<Line>, width: f32) {
    if farm.products.is_empty() {
        ui.label(look::soft(ui, t!("tank-loads-the-shed-has-no-product-yet")));
        return;
    }
    let mut chosen: Id = String::new();
    let mut all: Vec<Id> = vec![String::new()];
    for kind in ProductKind::ALL {
        all.extend(
            farm.products
                .iter()
                .filter(|(id, product)| product.kind == kind && !mix.iter().any(|line| line.product == **id))
                .map(|(id, _)| id.clone()),
        );
    }
    let say = |id: &Id| {
        farm.products.get(id).map_or_else(|| t!("tank-loads-add-a-product").to_owned(), |product| product.name.clone())
    };
    boxes::choice(ui, t!("tank-loads-add-a-product-to-the-mix"), &mut chosen, &all, say, width.min(230.0));
    if let Some(product) = farm.products.get(&chosen)
        && let Some(rate) = first_rate(farm, &chosen, product.is_liquid())
    {
        mix.push(Line::new(&chosen, rate));
    }
}

/// The rate a product begins with: as in the pass that used it last, else its label's least, else none of it.
fn first_rate(farm: &Farm, id: &Id, liquid: bool) -> Option<AsTyped<Rate>> {
    let used = farm
        .passes
        .values()
        .filter(|pass| pass.mix.iter().any(|line| line.product == *id))
        .max_by_key(|pass| pass.date)
        .and_then(|pass| pass.mix.iter().find(|line| line.product == *id))
        .map(|line| line.rate.clone());
    let label = farm.products.get(id).and_then(|product| {
        product.label.iter().find_map(|statement| match &statement.says {
            tankard_core::farm::Says::Rate { least, most } => least.clone().or_else(|| most.clone()),
            _ => None,
        })
    });
    let nothing = match (liquid, farm.units) {
        (true, Units::UsCustomary) => "0 fl oz/ac",
        (true, Units::Imperial) => "0 imp fl oz/ac",
        (true, Units::Metric) => "0 L/ha",
        (false, Units::Metric) => "0 kg/ha",
        (false, _) => "0 lb/ac",
    };
    used.or(label).or_else(|| AsTyped::parse(nothing).ok())
}

/// Which published order is followed, and how full the tank is before the first product.
fn order(ui: &mut Ui, pass: &mut tankard_core::farm::Pass, plan: &Plan) {
    ui.label(look::soft(ui, t!("tank-loads-order")));
    let orders = tankard_core::mix::order::orders();
    let first = orders.first().map_or("", |(name, _)| name);
    let mut chosen = if pass.mixing_order.is_empty() { first.to_owned() } else { pass.mixing_order.clone() };
    let all: Vec<String> = orders.iter().map(|(name, _)| (*name).to_owned()).collect();
    let say = |name: &String| {
        orders.iter().find(|(known, _)| known == name).map_or_else(|| name.clone(), |(_, title)| (*title).to_owned())
    };
    boxes::choice(
        ui,
        t!("tank-loads-published-mixing-order"),
        &mut chosen,
        &all,
        say,
        (ui.available_width() - 130.0).clamp(90.0, 300.0),
    );
    let wanted = if chosen == first { String::new() } else { chosen };
    if wanted != pass.mixing_order {
        pass.mixing_order = wanted;
    }
    ui.label(look::soft(ui, t!("tank-loads-first-fill")));
    let usual = plan.order.first().map_or(50.0, |placed| placed.full_before * 100.0);
    let hint = format!("{usual:.0} %");
    boxes::quantity_hinted(ui, t!("tank-loads-how-full-before-the-first-product"), &mut pass.first_fill, 52.0, &hint);
}
