//! The account of one product: what is on hand now, what can be written down, and what happened, line by line.

use egui::{Ui, Vec2};
use tankard_core::farm::{Farm, Id, Product};
use tankard_core::language::yes_or_no;
use tankard_core::quantity::{Amount, Quantity, Units};
use tankard_core::stock::{self, Account};
use tankard_core::t;

use super::super::{Bench, named, sheets, word};
use super::forms;
use super::held::Lines;
use super::{Row, lines, rows};
use crate::look;
use crate::parts::{boxes, findings};
use crate::report::needs::round;

/// The page.
pub(super) fn show(bench: &mut Bench, ui: &mut Ui, id: &Id) {
    let known = bench.state.stock.lines(bench.desk, id);
    let Some(product) = bench.farm().products.get(id).cloned() else { return };
    ways(bench, ui, id);
    ui.add(egui::Label::new(look::title(named(&product.name))).wrap());
    ui.scope(|ui| on_hand(bench, ui, id, &product));
    costs(bench, ui, id, &product, &known);
    if !known.findings.is_empty() {
        ui.add_space(look::GRID);
        findings::show(ui, &known.findings);
    }
    ui.add_space(look::GRID);
    forms::acts(bench, ui, id, &product, &known.entries);
    ui.add_space(look::GRID);
    lines::show(bench, ui, &known.entries);
}

/// Back to all products, to the next, and to its label.
fn ways(bench: &mut Bench, ui: &mut Ui, id: &Id) {
    let near = |by: isize| {
        let products = &bench.farm().products;
        let at = products.get_index_of(id)?.checked_add_signed(by)?;
        products.get_index(at).map(|(id, product)| (id.clone(), named(&product.name)))
    };
    let (before, after) = (near(-1), near(1));
    let (mut back, mut label, mut next) = (false, false, None);
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().button_padding.x = 0.0;
        ui.spacing_mut().item_spacing.x = 14.0;
        back = boxes::act(ui, t!("shed-all-products")).clicked();
        for (text, to) in [(t!("shed-before-f5e"), before), (t!("shed-next"), after)] {
            if let Some((id, name)) = to
                && boxes::act(ui, text).on_hover_text(&name).accessible_name(format!("{text}: {name}")).clicked()
            {
                next = Some(id);
            }
        }
        label = boxes::act(ui, t!("shed-its-label")).clicked();
    });
    if back {
        bench.state.stock.open = None;
        bench.state.stock.form = None;
    }
    if let Some(id) = next {
        bench.state.stock.open_account(&id);
    }
    if label {
        bench.state.choose_product(id);
    }
}

/// A pair that stands together, not at the far edge of a wide page.
fn pair(ui: &mut Ui, what: &str, amount: &str, strong: bool) {
    let width = ui.available_width().min(440.0);
    ui.allocate_ui(Vec2::new(width, 18.0), |ui| {
        ui.set_width(width);
        if strong {
            sheets::pair(ui, look::strong(what), look::strong(amount));
        } else {
            sheets::pair(ui, what, amount);
        }
    });
}

fn on_hand(bench: &Bench, ui: &mut Ui, id: &str, product: &Product) {
    let units = bench.farm().units;
    let Some(account) = bench.stock.accounts.get(id) else { return };
    ui.add_space(look::GRID);
    ui.label(look::heading(t!("shed-on-hand-d01")).color(look::colours(ui).soft));
    boxes::hairline(ui);
    ui.add_space(2.0);
    ui.spacing_mut().item_spacing.y = 3.0;
    for Row { what, amount, .. } in rows(account, units) {
        pair(ui, &what, &amount, false);
    }
    match account.on_hand.amount {
        Some(amount) => pair(ui, t!("shed-in-all"), &amount.show(units), true),
        None if account.on_hand.typed => {
            boxes::say(ui, t!("shed-how-much-that-is-in-all"));
        }
        None => boxes::say(ui, t!("shed-nothing-is-counted-yet")),
    }
    boxes::say(ui, &since(account, product, bench.farm()));
    if !account.empties.is_empty() {
        let each = account
            .empties
            .iter()
            .map(|one| t!("shed-empty", count = one.count, size = one.size, kind = one.kind.name(one.count)));
        let all: Vec<String> = each.collect();
        ui.label(t!("shed-to-give-back", all = all.join(", ")));
    }
}

/// Since when it is reckoned, and what happened since.
fn since(account: &Account, product: &Product, farm: &Farm) -> String {
    let Some(day) = account.since else {
        return t!("shed-no-day-of-a-count-is").to_owned();
    };
    t!(
        "shed-counted-on-that-days-spraying-what",
        day = sheets::day(day),
        counted = counted(account, farm.units),
        since = happened(account, farm.units),
        which = yes_or_no(product.counted_after)
    )
}

/// The same in short, for where there is no room to say on which side of the count its day falls.
pub(in super::super) fn since_in_short(account: &Account, units: Units) -> String {
    account.since.map_or_else(
        || t!("shed-no-day-of-a-count-is").to_owned(),
        |day| {
            t!(
                "shed-counted-and-since",
                day = sheets::day(day),
                counted = counted(account, units),
                since = happened(account, units)
            )
        },
    )
}

/// ": 8 gal", where it is known.
fn counted(account: &Account, units: Units) -> String {
    account.counted.map_or_else(String::new, |amount| format!(": {}", round(amount, units)))
}

/// What came in, was sprayed and went out since the count.
fn happened(account: &Account, units: Units) -> String {
    let mut since = Vec::new();
    let shown = |amount: Amount| (!amount.is_zero()).then(|| round(amount, units));
    since.extend(shown(account.came).map(|amount| t!("shed-amount-came-in", amount = amount)));
    since.extend(shown(account.used).map(|amount| t!("shed-amount-was-sprayed", amount = amount)));
    since.extend(shown(account.went).map(|amount| t!("shed-amount-went-out", amount = amount)));
    if since.is_empty() {
        t!("shed-nothing-happened-since").to_owned()
    } else {
        t!("shed-since-then", since = since.join(", "))
    }
}

/// What it costs, what the last bill said, and what the purchases of the year come to.
fn costs(bench: &mut Bench, ui: &mut Ui, id: &Id, product: &Product, known: &Lines) {
    let farm = bench.farm();
    let year = bench.desk.now().date().year();
    let Some((date, price)) = stock::latest_price(farm, id) else { return };
    let (sign, day, price) = (farm.currency.clone(), sheets::day(date), price.clone());
    let mut take = false;
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().button_padding.x = 0.0;
        word(ui, &t!("shed-bought-last-at-on", sign = sign, price = price, day = day));
        if product.price.as_ref().is_some_and(|own| *own == price) {
            word(ui, t!("shed-that-is-its-price-in-the"));
        } else {
            let own = product.price.as_ref().map_or_else(|| t!("shed-none").to_owned(), |own| format!("{sign}{own}"));
            word(ui, &t!("shed-its-price-in-the-shed", own = own));
            take = boxes::act(ui, t!("shed-take-the-price-of-the-bill")).clicked();
        }
        if known.spent != (tankard_core::quantity::Money::default(), 0) {
            let sum = crate::report::needs::sum_bought(bench.farm(), known.spent);
            word(ui, &t!("shed-purchases-of-cost", year = year, sum = sum));
        }
    });
    if take {
        bench.desk.document.edit(|farm| {
            if let Some(product) = farm.products.get_mut(id) {
                product.price = Some(price);
            }
        });
    }
}
