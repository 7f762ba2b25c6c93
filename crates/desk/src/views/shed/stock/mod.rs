//! Stock: what is on hand of each product by its account, what the passes of a day and all after them take, what is left
//! or short; and the account of a product, line by line.

mod account;
mod count;
mod forms;
mod held;
mod lines;
mod list;
mod table;

use egui::{CentralPanel, Frame, Margin, ScrollArea, Ui};
use jiff::civil::Date;
use tankard_core::farm::Id;
use tankard_core::quantity::{Amount, Quantity, Units};
use tankard_core::stock::{Account, Doubt};
use tankard_core::t;

pub(super) use account::since_in_short;
pub(super) use held::{Held, Known, Stock};
pub(super) use list::list;

use super::{Bench, quiet, sheets, word};
use crate::look;
use crate::parts::boxes;
use crate::report::needs;

/// Whether something in an account is in doubt that a person has to mend, not only to know.
pub(super) fn is_doubtful(account: &Account) -> bool {
    let is_to_know =
        |doubt: &Doubt| matches!(doubt, Doubt::TooManyBack { .. } | Doubt::ForCustomers { .. } | Doubt::NoDay);
    !account.doubts.iter().all(is_to_know)
}

/// "12 June".
fn short_day(day: Date) -> String {
    tankard_core::language::days::day_month(day)
}

/// An amount rounded, below zero too.
fn rounded(amount: Amount, units: Units) -> String {
    let text = needs::round(amount, units);
    if text.starts_with('-') { format!("-{}", needs::round(amount.times(-1.0), units)) } else { text }
}

/// What is on hand of a product in containers of one kind.
pub(super) struct Row {
    /// What it is.
    pub(super) what: String,
    /// How much that is.
    pub(super) amount: String,
    /// Full containers, which are told by their number.
    full: bool,
}

/// What is on hand of a product, container by container.
pub(super) fn rows(account: &Account, units: Units) -> impl Iterator<Item = Row> {
    account.on_hand.held.iter().flat_map(move |held| {
        let lot = if held.lot.is_empty() { String::new() } else { t!("shed-lot", lot = held.lot) };
        let mut rows = Vec::new();
        if let Some((kind, size)) = held.container.as_ref().filter(|_| held.full > 0) {
            let what =
                t!("shed-full-kind-of-size-lot", full = held.full, kind = kind.name(held.full), size = size, lot = lot);
            rows.push(Row { what, amount: size.times(f64::from(held.full)).show(units), full: true });
        }
        for rest in &held.opened {
            let what = match &held.container {
                Some((kind, size)) => t!("shed-in-an-opened-of", kind = kind.name(1), size = size, lot = lot),
                None => t!("shed-without-a-container-typed", lot = lot),
            };
            rows.push(Row { what, amount: rest.show(units), full: false });
        }
        rows
    })
}

/// The foot of the list.
pub(super) fn foot(_bench: &mut Bench, ui: &mut Ui) {
    boxes::say(ui, t!("shed-from-the-day-of-a-count"));
}

impl Known {
    /// Opens the account of a product.
    pub(super) fn open_account(&mut self, id: &str) {
        self.open = Some(id.to_owned());
        self.form = None;
    }
}

/// The table of all products, or the account of one.
pub(super) fn page(bench: &mut Bench, ui: &mut Ui) {
    let open: Option<Id> = bench.state.stock.open.clone().filter(|id| bench.farm().products.contains_key(id));
    CentralPanel::default().frame(Frame::new().fill(look::colours(ui).ground)).show(ui, |ui| {
        ScrollArea::vertical().id_salt(("stock", &open)).auto_shrink(false).show(ui, |ui| {
            Frame::new().inner_margin(Margin { left: 16, right: 20, top: 10, bottom: 24 }).show(ui, |ui| {
                ui.set_width(ui.available_width());
                quiet(ui);
                if let Some(id) = open {
                    account::show(bench, ui, &id);
                } else {
                    super::title(ui, t!("shed-stock"));
                    heading(bench, ui);
                    ui.add_space(look::GRID);
                    table::show(bench, ui);
                }
            });
        });
    });
}

/// Which day is looked at, and its passes.
fn heading(bench: &mut Bench, ui: &mut Ui) {
    let stock = bench.stock;
    let Some(day) = stock.day else {
        boxes::say(ui, t!("shed-open-a-product-to-count-it"));
        return;
    };
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 8.0;
        word(ui, t!("shed-what-the-passes-take-on"));
        let mut chosen = day;
        boxes::choice(ui, t!("shed-day"), &mut chosen, &stock.days, |day| sheets::day(*day), 140.0);
        if chosen != day {
            bench.state.stock.chosen = Some(chosen);
        }
        let passes = look::soft(ui, needs::passes(bench.farm(), &stock.of_day));
        ui.add(egui::Label::new(passes).truncate());
    });
    if let Some(earlier) = needs::earlier(&stock.of_day) {
        boxes::say(ui, &format!("{earlier}."));
    }
}
