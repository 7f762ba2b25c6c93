//! The list beside the counts: what to buy, and the water of the day.

use egui::{Label, Ui};
use tankard_core::farm::Id;
use tankard_core::quantity::Quantity;
use tankard_core::t;

use super::super::{Bench, named, sheets};
use super::short_day;
use crate::look;
use crate::parts::{boxes, lists};
use crate::report::needs::{self, PRICE_OR_SIZE};

/// The list.
pub(in super::super) fn list(bench: &mut Bench, ui: &mut Ui) {
    ui.add_space(4.0);
    ui.label(look::heading(t!("shed-to-buy")).color(look::colours(ui).soft));
    let chosen = to_buy(bench, ui);
    not_typed(bench, ui);
    water(bench, ui);
    open(bench, ui);
    if let Some(id) = chosen {
        bench.state.stock.open_account(&id);
    }
}

/// What is short, each with what to buy.
fn to_buy(bench: &Bench, ui: &mut Ui) -> Option<Id> {
    let (farm, stock) = (bench.farm(), bench.stock);
    let short: Vec<_> = stock.season.products.iter().filter(|need| need.short.is_some()).collect();
    if farm.products.is_empty() {
        lists::empty(ui, t!("shed-no-product-yet-so-there-is"));
        return None;
    }
    if short.is_empty() {
        lists::empty(ui, t!("shed-nothing-is-short-of-what-is"));
        return None;
    }
    let mut chosen = None;
    for need in &short {
        let (Some(product), Some(amount)) = (farm.products.get(&need.product), need.short) else { continue };
        let name = named(&product.name);
        let buying = needs::buying(farm, need).unwrap_or_default();
        let spoken = t!(
            "shed-name-short-by-round-buying",
            name = name,
            round = needs::round(amount, farm.units),
            buying = buying
        );
        let response = lists::row(ui, false, &spoken, |ui| {
            ui.add(Label::new(&name).truncate()).on_hover_text(&name);
            sheets::short_of(ui, amount, farm.units);
            ui.add(Label::new(&buying).wrap());
        });
        if response.clicked() {
            chosen = Some(need.product.clone());
        }
    }
    let sum = needs::sum_words(farm, needs::bill(farm, &stock.season), PRICE_OR_SIZE);
    egui::Frame::new().inner_margin(egui::Margin::symmetric(10, 4)).show(ui, |ui| {
        ui.add(Label::new(look::strong(t!("shed-in-all-sum", sum = sum))).wrap());
    });
    chosen
}

/// How many products the passes take of which it is not known what is on hand.
fn not_typed(bench: &Bench, ui: &mut Ui) {
    let count = bench.stock.season.products.iter().filter(|need| need.on_hand.amount.is_none()).count();
    if count > 0 {
        boxes::say(ui, &t!("shed-it-is-not-known-what-is", count = count));
    }
}

/// The water of the day, and how often a nurse tank is filled.
fn water(bench: &Bench, ui: &mut Ui) {
    let (farm, stock) = (bench.farm(), bench.stock);
    let Some(day) = stock.day.filter(|_| !stock.of_day.waters.is_empty()) else { return };
    ui.add_space(10.0);
    ui.label(look::heading(t!("shed-water-on", day = short_day(day))).color(look::colours(ui).soft));
    egui::Frame::new().inner_margin(egui::Margin::symmetric(10, 5)).show(ui, |ui| {
        ui.spacing_mut().item_spacing.y = 2.0;
        for need in &stock.of_day.waters {
            sheets::pair(ui, needs::source(farm, need), look::strong(need.volume.show(farm.units)));
        }
        for nurse in &stock.of_day.nurses {
            let Some(tanks) = needs::tanks(nurse, farm.units) else { continue };
            let of = if stock.of_day.waters.len() > 1 {
                format!(", {}", needs::source(farm, &nurse.need))
            } else {
                String::new()
            };
            boxes::say(ui, &format!("{}{of}: {tanks}", needs::rig_name(farm, nurse)));
        }
    });
}

/// What could not be reckoned.
fn open(bench: &Bench, ui: &mut Ui) {
    let (farm, stock) = (bench.farm(), bench.stock);
    if stock.season.open.is_empty() {
        return;
    }
    ui.add_space(10.0);
    ui.label(look::heading(t!("shed-not-reckoned")).color(look::colours(ui).soft));
    egui::Frame::new().inner_margin(egui::Margin::symmetric(10, 5)).show(ui, |ui| {
        ui.spacing_mut().item_spacing.y = 4.0;
        for (id, what) in &stock.season.open {
            let pass = farm.passes.get(id).map_or_else(|| id.clone(), |pass| named(&pass.name));
            boxes::say(ui, &format!("{pass}: {what}."));
        }
    });
}
