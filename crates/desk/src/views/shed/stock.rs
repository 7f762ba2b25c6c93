//! Stock: what is on hand of each product, what the planned passes take, what is left or short.

use std::collections::HashMap;

use egui::{Align, CentralPanel, Frame, Layout, Margin, ScrollArea, Ui, Vec2};
use tankard_core::farm::{Farm, Id, Product};
use tankard_core::finding::Level;
use tankard_core::quantity::{Amount, AsTyped, Mass, Quantity, Units, Volume};

use super::{Bench, Page, cell, hairline, named, quiet, sheets, tight, word};
use crate::document::Document;
use crate::look;
use crate::parts::{boxes, lists, mark};

/// What is held of a product.
#[derive(Clone, Debug, Default)]
pub(super) struct Held {
    /// In all containers; `None` where none is typed, or volumes and weights do not add up.
    pub(super) on_hand: Option<Amount>,
    /// What the passes that are not recorded yet take.
    pub(super) planned: Option<Amount>,
    /// The same, pass by pass.
    pub(super) by_pass: Vec<(Id, Amount)>,
    /// What they leave; may be below zero.
    pub(super) left: Option<Amount>,
    /// What is missing.
    pub(super) short: Option<Amount>,
}

/// What is held of every product.
#[derive(Debug, Default)]
pub(super) struct Stock(HashMap<Id, Held>);

impl Stock {
    /// Sums the containers and the plans of the passes that have no record.
    pub(super) fn of(document: &mut Document) -> Self {
        let farm = document.farm();
        let open: Vec<Id> = farm.passes.keys().filter(|id| !farm.is_recorded(id)).cloned().collect();
        let mut all: HashMap<Id, Held> = farm
            .products
            .iter()
            .map(|(id, product)| (id.clone(), Held { on_hand: on_hand(product), ..Held::default() }))
            .collect();
        for pass in open {
            let Some(plan) = document.plan(&pass) else { continue };
            for line in &plan.lines {
                if let Some(held) = all.get_mut(&line.product) {
                    held.by_pass.push((pass.clone(), line.demand));
                    held.planned = match held.planned {
                        None => Some(line.demand),
                        Some(before) => before.plus(line.demand),
                    };
                }
            }
        }
        for held in all.values_mut() {
            let Some(on_hand) = held.on_hand else { continue };
            held.left = held.planned.map_or(Some(on_hand), |planned| on_hand.minus(planned));
            held.short = held.planned.filter(|planned| exceeds(*planned, on_hand)).and_then(|p| p.minus(on_hand));
        }
        Self(all)
    }

    /// What is held of one product.
    pub(super) fn get(&self, id: &str) -> Option<&Held> {
        self.0.get(id)
    }
}

fn exceeds(amount: Amount, limit: Amount) -> bool {
    match (amount, limit) {
        (Amount::Volume(amount), Amount::Volume(limit)) => amount.exceeds(limit),
        (Amount::Mass(amount), Amount::Mass(limit)) => amount.exceeds(limit),
        _ => false,
    }
}

/// The sum of the containers, liquids by volume and dry products by weight.
fn on_hand(product: &Product) -> Option<Amount> {
    if product.containers.is_empty() {
        return None;
    }
    let nothing = if product.is_liquid() { Amount::Volume(Volume::ZERO) } else { Amount::Mass(Mass::ZERO) };
    product.containers.iter().try_fold(nothing, |sum, container| {
        let full = in_kind(container.size.value().times(f64::from(container.full)), product)?;
        let opened = container.opened.as_ref().map_or(Some(nothing), |opened| in_kind(opened.value(), product))?;
        sum.plus(full)?.plus(opened)
    })
}

/// An amount as a volume for a liquid and as a weight for a dry product, through the density where need be.
fn in_kind(amount: Amount, product: &Product) -> Option<Amount> {
    let density = product.density.as_ref().map(AsTyped::value);
    match amount {
        Amount::Mass(mass) if product.is_liquid() => mass.volume(density?).map(Amount::Volume),
        Amount::Volume(volume) if !product.is_liquid() => Some(Amount::Mass(volume.mass(density?))),
        other => Some(other),
    }
}

/// An amount rounded to about three figures, since a plan's demand is not measured out here; little is shown in small
/// units.
pub(super) fn round(amount: Amount, units: Units) -> String {
    let (size, shown) = match (amount, units) {
        (Amount::Volume(volume), Units::Metric) => (volume.to_litres(), volume.show(units)),
        (Amount::Volume(volume), _) => (volume.to_us_gallons(), volume.show(units)),
        (Amount::Mass(mass), Units::Metric) => (mass.to_kilograms(), mass.show(units)),
        (Amount::Mass(mass), _) => (mass.to_pounds(), mass.show(units)),
    };
    if size.abs() >= 1.0 || amount.is_zero() { shown } else { amount.show(units) }
}

/// The products that are short, in the farm's order.
fn short(farm: &Farm, stock: &Stock) -> Vec<(Id, String, Amount)> {
    farm.products
        .iter()
        .filter_map(|(id, product)| Some((id.clone(), named(&product.name), stock.get(id)?.short?)))
        .collect()
}

/// The list: what is short for the planned passes.
pub(super) fn list(bench: &mut Bench, ui: &mut Ui) {
    let units = bench.farm().units;
    let short = short(bench.farm(), bench.stock);
    ui.add_space(4.0);
    ui.label(look::heading("Short for the planned passes").color(look::colours(ui).soft));
    if bench.farm().products.is_empty() {
        lists::empty(ui, "No product yet, so there is nothing to count.");
    } else if short.is_empty() {
        lists::empty(ui, "Nothing is short for the passes planned so far.");
    }
    for (id, name, amount) in short {
        let spoken = format!("{name}, short by {}", round(amount, units));
        let response = lists::row(ui, false, &spoken, |ui| {
            ui.label(&name);
            sheets::short_of(ui, amount, units);
        });
        if response.clicked() {
            bench.state.choose_product(&id);
        }
    }
}

/// The foot of the list.
pub(super) fn foot(_bench: &mut Bench, ui: &mut Ui) {
    sheets::say(
        ui,
        "Planned are all passes that have no record yet. A recorded pass takes nothing off the count: count again.",
    );
}

/// Widths of the columns.
#[derive(Clone, Copy)]
struct Columns {
    name: f32,
    container: f32,
    full: f32,
    opened: f32,
    amount: f32,
    left: f32,
    gap: f32,
}

impl Columns {
    /// For a width of the table.
    fn within(width: f32) -> Self {
        let fixed = if width < 860.0 {
            Self { name: 0.0, container: 96.0, full: 40.0, opened: 76.0, amount: 84.0, left: 108.0, gap: 6.0 }
        } else {
            Self { name: 0.0, container: 116.0, full: 56.0, opened: 92.0, amount: 112.0, left: 136.0, gap: 10.0 }
        };
        let taken = fixed.container + fixed.full + fixed.opened + fixed.amount * 2.0 + fixed.left + fixed.gap * 6.0;
        Self { name: (width - taken).max(110.0), ..fixed }
    }
}

/// The table of all products.
pub(super) fn page(bench: &mut Bench, ui: &mut Ui) {
    CentralPanel::default().frame(Frame::new().fill(look::colours(ui).ground)).show(ui, |ui| {
        ScrollArea::vertical().id_salt("stock table").auto_shrink(false).show(ui, |ui| {
            Frame::new().inner_margin(Margin { left: 16, right: 20, top: 10, bottom: 24 }).show(ui, |ui| {
                ui.set_width(ui.available_width());
                quiet(ui);
                ui.label(look::title("Stock"));
                sheets::say(
                    ui,
                    "Count what stands in the shed and type it here; the planned passes are set against it.",
                );
                ui.add_space(look::GRID);
                table(bench, ui);
            });
        });
    });
}

fn table(bench: &mut Bench, ui: &mut Ui) {
    if bench.farm().products.is_empty() {
        lists::empty(ui, "No product yet. Add the first one under Products, with what it is sold in.");
        return;
    }
    let columns = Columns::within(ui.available_width());
    if columns.gap < 10.0 {
        tight(ui);
    }
    ui.spacing_mut().item_spacing.x = columns.gap;
    ui.horizontal(|ui| {
        cell(ui, columns.name, |ui| word(ui, "product"));
        cell(ui, columns.container, |ui| word(ui, "container"));
        cell(ui, columns.full, |ui| word(ui, "full"));
        cell(ui, columns.opened, |ui| word(ui, "opened"));
        for (width, text) in [(columns.amount, "on hand"), (columns.amount, "planned"), (columns.left, "left")] {
            right(ui, width, |ui| word(ui, text));
        }
    });
    hairline(ui);
    let ids: Vec<Id> = bench.farm().products.keys().cloned().collect();
    for id in ids {
        ui.push_id(&id, |ui| product_rows(bench, ui, &id, columns));
        hairline(ui);
    }
}

fn right(ui: &mut Ui, width: f32, add: impl FnOnce(&mut Ui)) {
    ui.allocate_ui_with_layout(Vec2::new(width, look::ROW), Layout::right_to_left(Align::Center), |ui| {
        ui.set_width(width);
        add(ui);
    });
}

fn product_rows(bench: &mut Bench, ui: &mut Ui, id: &str, columns: Columns) {
    let units = bench.farm().units;
    let Some(mut product) = bench.farm().products.get(id).cloned() else { return };
    let before = product.clone();
    let held = bench.stock.get(id).cloned().unwrap_or_default();
    let name = named(&product.name);
    let mut led = false;
    let rows = product.containers.len().max(1);
    for at in 0..rows {
        ui.horizontal(|ui| {
            cell(ui, columns.name, |ui| {
                if at == 0 {
                    ui.spacing_mut().button_padding.x = 0.0;
                    let text = egui::RichText::new(&name).color(look::colours(ui).ink);
                    led = ui.add(egui::Button::new(text).frame(false).truncate()).on_hover_text(&name).clicked();
                }
            });
            if let Some(container) = product.containers.get_mut(at) {
                let which = if rows == 1 { name.clone() } else { format!("{name}, {}", container.size) };
                cell(ui, columns.container, |ui| {
                    ui.label(format!("{} of {}", container.kind.name(1), container.size));
                });
                ui.push_id(at, |ui| {
                    cell(ui, columns.full, |ui| {
                        boxes::count(ui, &format!("full, {which}"), &mut container.full, columns.full);
                    });
                    cell(ui, columns.opened, |ui| {
                        let spoken = format!("opened, {which}");
                        boxes::quantity_hinted(ui, &spoken, &mut container.opened, columns.opened, "none");
                    });
                });
            } else {
                cell(ui, columns.container + columns.full + columns.opened + columns.gap * 2.0, |ui| {
                    word(ui, "no container typed");
                });
            }
            if at == 0 {
                let amount = |amount: Option<Amount>| amount.map(|amount| round(amount, units));
                right(ui, columns.amount, |ui| match amount(held.on_hand) {
                    Some(text) => {
                        ui.label(text);
                    }
                    None => word(ui, "not known"),
                });
                right(ui, columns.amount, |ui| match amount(held.planned) {
                    Some(text) => {
                        ui.label(text);
                    }
                    None => word(ui, "none"),
                });
                right(ui, columns.left, |ui| match (held.short, amount(held.left)) {
                    (Some(short), _) => {
                        ui.spacing_mut().item_spacing.x = 2.0;
                        let text = format!("short {}", round(short, units));
                        ui.label(look::strong(text).color(look::colours(ui).check));
                        mark::show(ui, Level::Check);
                    }
                    (None, Some(text)) => {
                        ui.label(text);
                    }
                    (None, None) => {}
                });
            }
        });
    }
    if product != before {
        bench.desk.document.edit(|farm| {
            if let Some(slot) = farm.products.get_mut(id) {
                *slot = product;
            }
        });
    }
    if led {
        bench.state.page = Page::Products;
        bench.state.choose_product(id);
    }
}
