//! All products: what is on hand of each, what the day and all passes from then on take and leave.

use egui::{Align, Label, Layout, Ui, Vec2};
use tankard_core::farm::{Id, Product};
use tankard_core::finding::Level;
use tankard_core::stock::{Account, Need, Needs};
use tankard_core::t;

use super::super::{Bench, named, tight, word};
use super::{Held, is_doubtful, rows, short_day};
use crate::look;
use crate::parts::{boxes, lists, mark};
use crate::report::needs::{self, PRICE, round};

/// Widths of the columns.
#[derive(Clone, Copy)]
struct Columns {
    /// Of the product; in a narrow page it stands above the rest.
    name: f32,
    amount: f32,
    left: f32,
    gap: f32,
    stacked: bool,
}

impl Columns {
    /// For a width of the table.
    fn within(width: f32) -> Self {
        let wide = Self { name: 0.0, amount: 74.0, left: 104.0, gap: 8.0, stacked: false };
        let name = width - wide.amount * 3.0 - wide.left * 2.0 - wide.gap * 5.0;
        if name >= 190.0 {
            return Self { name, ..wide };
        }
        let gap = 4.0;
        let amount = ((width - gap * 4.0) * 0.17).min(wide.amount);
        Self {
            name: width,
            amount,
            left: ((width - gap * 4.0 - amount * 3.0) / 2.0).min(wide.left),
            gap,
            stacked: true,
        }
    }
}

/// The table.
pub(super) fn show(bench: &mut Bench, ui: &mut Ui) {
    if bench.farm().products.is_empty() {
        lists::empty(ui, t!("shed-no-product-yet-add-the-first"));
        return;
    }
    let columns = Columns::within(ui.available_width());
    tight(ui);
    ui.spacing_mut().item_spacing.x = columns.gap;
    ui.horizontal(|ui| {
        if !columns.stacked {
            boxes::slot(ui, columns.name, |ui| word(ui, t!("shed-product")));
        }
        let head = |ui: &mut Ui, width: f32, text: &str| {
            right(ui, width, |ui| drop(ui.add(Label::new(look::soft(ui, text)).truncate())));
        };
        head(ui, columns.amount, t!("shed-on-hand-861"));
        if let Some(day) = bench.stock.day {
            head(ui, columns.amount, &short_day(day));
            head(ui, columns.left, t!("shed-leaves"));
            head(ui, columns.amount, t!("shed-from-then"));
            head(ui, columns.left, t!("shed-leaves"));
        }
    });
    boxes::hairline(ui);
    let ids: Vec<Id> = bench.farm().products.keys().cloned().collect();
    let mut open = None;
    for id in ids {
        if ui.push_id(&id, |ui| product_rows(bench, ui, &id, columns)).inner {
            open = Some(id);
        }
        boxes::hairline(ui);
    }
    if let Some(id) = open {
        bench.state.stock.open_account(&id);
    }
    costs(bench, ui);
}

/// What the products cost, on the day and in all.
fn costs(bench: &Bench, ui: &mut Ui) {
    let (farm, stock) = (bench.farm(), bench.stock);
    let Some(day) = stock.day else { return };
    let cost = |needs: &Needs| needs::sum_words(farm, needs::cost(needs), PRICE);
    ui.add_space(look::GRID);
    boxes::say(ui, &t!("shed-what-is-taken-on-costs", day = short_day(day), of_day = cost(&stock.of_day)));
    boxes::say(ui, &t!("shed-what-is-taken-from-then-on", season = cost(&stock.season)));
}

/// Room of a width for a number.
pub(super) fn right(ui: &mut Ui, width: f32, add: impl FnOnce(&mut Ui)) {
    ui.allocate_ui_with_layout(Vec2::new(width, look::ROW), Layout::right_to_left(Align::Center), |ui| {
        ui.set_width(width);
        add(ui);
    });
}

/// A product; whether its account is wanted.
fn product_rows(bench: &Bench, ui: &mut Ui, id: &str, columns: Columns) -> bool {
    let Some(product) = bench.farm().products.get(id) else { return false };
    let held = bench.stock.get(id).cloned().unwrap_or_default();
    let account = bench.stock.accounts.get(id);
    let mut wanted = false;
    let about = |ui: &mut Ui| {
        let text = summary(bench, product, account);
        ui.add(Label::new(look::soft(ui, &text)).truncate()).on_hover_text(&text);
    };
    if columns.stacked {
        wanted = title(ui, product, account);
        about(ui);
        ui.horizontal(|ui| amounts(bench, ui, id, &held, columns));
    } else {
        ui.horizontal(|ui| {
            boxes::slot(ui, columns.name, |ui| wanted = title(ui, product, account));
            amounts(bench, ui, id, &held, columns);
        });
        about(ui);
        ui.add_space(2.0);
    }
    wanted
}

/// The name of a product, with a mark where its account is in doubt.
fn title(ui: &mut Ui, product: &Product, account: Option<&Account>) -> bool {
    let name = named(&product.name);
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 2.0;
        if account.is_some_and(is_doubtful) {
            mark::show(ui, Level::Check).on_hover_text(t!("shed-something-in-its-account-is-in"));
        }
        ui.spacing_mut().button_padding.x = 0.0;
        let text = egui::RichText::new(&name).color(look::colours(ui).ink);
        let button = boxes::lead(ui, text);
        button
            .on_hover_text(t!("shed-open-its-account"))
            .accessible_name(t!("shed-account-name", name = name))
            .clicked()
    })
    .inner
}

/// "counted 9 June, 5 gal used since: 2 jugs of 2.5 gal, lot A; in an opened jug 2 qt".
fn summary(bench: &Bench, product: &Product, account: Option<&Account>) -> String {
    let units = bench.farm().units;
    let Some(account) = account else { return String::new() };
    let mut parts = Vec::new();
    if let Some(day) = account.since {
        parts.push(if account.used.is_zero() {
            t!("shed-counted-day", day = short_day(day))
        } else {
            t!("shed-counted-day-used", day = short_day(day), used = round(account.used, units))
        });
    }
    parts.extend(
        rows(account, units).map(|row| if row.full { row.what } else { format!("{} {}", row.amount, row.what) }),
    );
    match (parts.is_empty(), product.containers.is_empty()) {
        (true, true) => t!("shed-no-container-typed").to_owned(),
        (true, false) => t!("shed-not-counted").to_owned(),
        (false, _) => parts.join("; "),
    }
}

/// What is on hand, what the day takes and leaves, what all from then on take and leave.
fn amounts(bench: &Bench, ui: &mut Ui, id: &str, held: &Held, columns: Columns) {
    let units = bench.farm().units;
    right(ui, columns.amount, |ui| match held.on_hand {
        Some(amount) => {
            ui.label(round(amount, units));
        }
        None if held.typed => word(ui, t!("shed-density-asked")),
        None => word(ui, t!("shed-not-typed")),
    });
    if bench.stock.day.is_none() {
        return;
    }
    for needs in [&bench.stock.of_day, &bench.stock.season] {
        let need = needs.products.iter().find(|need| need.product == id);
        right(ui, columns.amount, |ui| match need {
            Some(need) => {
                ui.label(round(need.amount, units)).on_hover_text(by_pass(bench, need));
            }
            None => word(ui, "–"),
        });
        right(ui, columns.left, |ui| match need {
            Some(need) if need.short.is_some() => {
                ui.spacing_mut().item_spacing.x = 2.0;
                ui.label(look::strong(needs::left(need, units)).color(look::colours(ui).stop));
                mark::show(ui, Level::Stop);
            }
            Some(need) => {
                if let Some(left) = need.left {
                    ui.label(round(left, units));
                }
            }
            None => {}
        });
    }
}

/// What each pass takes, line by line, and what it costs.
fn by_pass(bench: &Bench, need: &Need) -> String {
    let farm = bench.farm();
    let mut lines: Vec<String> = need
        .by_pass
        .iter()
        .map(|take| {
            let pass = farm.passes.get(&take.pass).map_or_else(|| take.pass.clone(), |pass| named(&pass.name));
            format!("{pass}: {}", round(take.amount, farm.units))
        })
        .collect();
    if !need.before.is_zero() {
        lines.push(t!("shed-passes-before-take-first", round = round(need.before, farm.units)));
    }
    if let Some(cost) = need.cost {
        lines.push(t!("shed-cost", currency = farm.currency, cost = cost.show()));
    }
    lines.join("\n")
}
