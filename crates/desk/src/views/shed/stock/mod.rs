//! Stock: what is on hand of each product by container and lot, what the passes of a day and all after them take, what is left
//! or short.

mod held;
mod list;

use egui::{Align, CentralPanel, Frame, Layout, Margin, ScrollArea, Ui, Vec2};
use jiff::civil::Date;
use tankard_core::farm::{Container, Id, Product};
use tankard_core::finding::Level;
use tankard_core::stock::{Need, Needs};

pub(super) use held::{Held, Known, Stock};
pub(super) use list::list;

use super::{Bench, Page, cell, hairline, named, quiet, sheets, tight, word};
use crate::look;
use crate::parts::{boxes, lists, mark};
use crate::report::needs::{self, PRICE, round};

/// "12 June".
fn short_day(day: Date) -> String {
    day.strftime("%-d %B").to_string()
}

/// The foot of the list.
pub(super) fn foot(_bench: &mut Bench, ui: &mut Ui) {
    sheets::say(
        ui,
        "Counted against the passes that have no record yet. A recorded pass takes nothing off the count: count again.",
    );
}

/// Widths of the columns.
#[derive(Clone, Copy)]
struct Columns {
    name: f32,
    container: f32,
    lot: f32,
    full: f32,
    opened: f32,
    counted: f32,
    amount: f32,
    left: f32,
    gap: f32,
}

impl Columns {
    /// The least width of the table; a smaller window scrolls it.
    const LEAST: f32 = 900.0;

    /// For a width of the table.
    fn within(width: f32) -> Self {
        let fixed = Self {
            name: 0.0,
            container: 86.0,
            lot: 84.0,
            full: 34.0,
            opened: 66.0,
            counted: 80.0,
            amount: 72.0,
            left: 104.0,
            gap: 7.0,
        };
        let taken = fixed.container
            + fixed.lot
            + fixed.full
            + fixed.opened
            + fixed.counted
            + fixed.amount * 3.0
            + fixed.left * 2.0
            + fixed.gap * 10.0;
        Self { name: (width - taken).max(110.0), ..fixed }
    }
}

/// The table of all products.
pub(super) fn page(bench: &mut Bench, ui: &mut Ui) {
    CentralPanel::default().frame(Frame::new().fill(look::colours(ui).ground)).show(ui, |ui| {
        ScrollArea::both().id_salt("stock table").auto_shrink(false).show(ui, |ui| {
            Frame::new().inner_margin(Margin { left: 16, right: 20, top: 10, bottom: 24 }).show(ui, |ui| {
                ui.set_width(ui.available_width().max(Columns::LEAST));
                quiet(ui);
                ui.label(look::title("Stock"));
                heading(bench, ui);
                ui.add_space(look::GRID);
                table(bench, ui);
            });
        });
    });
}

/// Which day is looked at, and its passes.
fn heading(bench: &mut Bench, ui: &mut Ui) {
    let stock = bench.stock;
    let Some(day) = stock.day else {
        sheets::say(ui, "Count what stands in the shed and type it here. No pass is planned that has no record yet.");
        return;
    };
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 8.0;
        word(ui, "what the passes take on");
        let mut chosen = day;
        boxes::choice(ui, "day", &mut chosen, &stock.days, |day| sheets::day(*day), 140.0);
        if chosen != day {
            bench.state.stock.chosen = Some(chosen);
        }
        let passes = look::soft(ui, needs::passes(bench.farm(), &stock.of_day));
        ui.add(egui::Label::new(passes).truncate());
    });
    if let Some(earlier) = needs::earlier(&stock.of_day) {
        sheets::say(ui, &format!("{earlier}."));
    }
}

fn table(bench: &mut Bench, ui: &mut Ui) {
    if bench.farm().products.is_empty() {
        lists::empty(ui, "No product yet. Add the first one under Products, with what it is sold in.");
        return;
    }
    let columns = Columns::within(ui.available_width());
    tight(ui);
    ui.spacing_mut().item_spacing.x = columns.gap;
    ui.horizontal(|ui| {
        cell(ui, columns.name, |ui| word(ui, "product"));
        cell(ui, columns.container, |ui| word(ui, "container"));
        cell(ui, columns.lot, |ui| word(ui, "lot"));
        cell(ui, columns.full, |ui| word(ui, "full"));
        cell(ui, columns.opened, |ui| word(ui, "opened"));
        cell(ui, columns.counted, |ui| word(ui, "counted on"));
        right(ui, columns.amount, |ui| word(ui, "on hand"));
        if let Some(day) = bench.stock.day {
            right(ui, columns.amount, |ui| word(ui, &short_day(day)));
            right(ui, columns.left, |ui| word(ui, "leaves"));
            right(ui, columns.amount, |ui| word(ui, "from then on"));
            right(ui, columns.left, |ui| word(ui, "leaves"));
        }
    });
    hairline(ui);
    let ids: Vec<Id> = bench.farm().products.keys().cloned().collect();
    for id in ids {
        ui.push_id(&id, |ui| product_rows(bench, ui, &id, columns));
        hairline(ui);
    }
    costs(bench, ui);
}

/// What the products cost, on the day and in all.
fn costs(bench: &Bench, ui: &mut Ui) {
    let (farm, stock) = (bench.farm(), bench.stock);
    let Some(day) = stock.day else { return };
    let cost = |needs: &Needs| needs::sum_words(farm, needs::cost(needs), PRICE);
    ui.add_space(look::GRID);
    sheets::say(ui, &format!("What is taken on {} costs {}.", short_day(day), cost(&stock.of_day)));
    sheets::say(ui, &format!("What is taken from then on costs {}.", cost(&stock.season)));
}

fn right(ui: &mut Ui, width: f32, add: impl FnOnce(&mut Ui)) {
    ui.allocate_ui_with_layout(Vec2::new(width, look::ROW), Layout::right_to_left(Align::Center), |ui| {
        ui.set_width(width);
        add(ui);
    });
}

fn product_rows(bench: &mut Bench, ui: &mut Ui, id: &str, columns: Columns) {
    let Some(mut product) = bench.farm().products.get(id).cloned() else { return };
    let before = product.clone();
    let stock = bench.stock;
    let held = stock.get(id).cloned().unwrap_or_default();
    let name = named(&product.name);
    let mut led = false;
    let mut another = None;
    let rows = product.containers.len().max(1);
    let spoken = spoken(&product, &name);
    for at in 0..rows {
        ui.horizontal(|ui| {
            cell(ui, columns.name, |ui| {
                if at == 0 {
                    ui.spacing_mut().button_padding.x = 0.0;
                    let text = egui::RichText::new(&name).color(look::colours(ui).ink);
                    led = ui.add(egui::Button::new(text).frame(false).truncate()).on_hover_text(&name).clicked();
                }
            });
            if let (Some(container), Some(which)) = (product.containers.get_mut(at), spoken.get(at)) {
                ui.push_id(at, |ui| {
                    if container_cells(ui, container, which, columns) {
                        another = Some(at);
                    }
                });
            } else {
                cell(ui, columns.container + columns.lot + columns.full + columns.opened + columns.gap * 3.0, |ui| {
                    word(ui, "no container typed");
                });
            }
            if at == 0 {
                cell(ui, columns.counted, |ui| {
                    let spoken = format!("counted on, {name}");
                    boxes::date_hinted(ui, &spoken, &mut product.counted, columns.counted, "day");
                });
                amounts(bench, ui, id, &held, columns);
            }
        });
    }
    if let Some(at) = another
        && let Some(container) = product.containers.get(at).cloned()
    {
        product.containers.insert(at + 1, Container { full: 0, opened: None, lot: String::new(), ..container });
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

/// What a screen reader says of each container: the product, its size where there are several, its place where two are of a
/// size.
fn spoken(product: &Product, name: &str) -> Vec<String> {
    let containers = &product.containers;
    containers
        .iter()
        .enumerate()
        .map(|(at, container)| {
            let alike = containers.iter().filter(|other| other.size == container.size).count();
            match (containers.len(), alike) {
                (1, _) => name.to_owned(),
                (_, 1) => format!("{name}, {}", container.size),
                _ => format!("{name}, {}, {}", container.size, at + 1),
            }
        })
        .collect()
}

/// The count of one kind of container and lot; whether another lot of it is wanted.
fn container_cells(ui: &mut Ui, container: &mut Container, which: &str, columns: Columns) -> bool {
    cell(ui, columns.container, |ui| {
        ui.add(egui::Label::new(format!("{} of {}", container.kind.name(1), container.size)).truncate());
    });
    let another = cell(ui, columns.lot, |ui| {
        ui.spacing_mut().item_spacing.x = 2.0;
        boxes::text_or_empty(ui, &format!("lot, {which}"), &mut container.lot, columns.lot - 14.0, "lot");
        ui.spacing_mut().button_padding.x = 0.0;
        let more = boxes::act(ui, "+").on_hover_text("Count another lot apart");
        more.accessible_name(format!("Another lot: {which}")).clicked()
    });
    cell(ui, columns.full, |ui| {
        boxes::count(ui, &format!("full, {which}"), &mut container.full, columns.full);
    });
    cell(ui, columns.opened, |ui| {
        let spoken = format!("opened, {which}");
        boxes::quantity_hinted(ui, &spoken, &mut container.opened, columns.opened, "none");
    });
    another
}

/// What is on hand, what the day takes and leaves, what all from then on take and leave.
fn amounts(bench: &Bench, ui: &mut Ui, id: &str, held: &Held, columns: Columns) {
    let units = bench.farm().units;
    right(ui, columns.amount, |ui| match held.on_hand {
        Some(amount) => {
            ui.label(round(amount, units));
        }
        None if held.typed => word(ui, "density?"),
        None => word(ui, "not typed"),
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
        lines.push(format!("passes before take {} first", round(need.before, farm.units)));
    }
    if let Some(cost) = need.cost {
        lines.push(format!("cost {}{}", farm.currency, cost.show()));
    }
    lines.join("\n")
}
