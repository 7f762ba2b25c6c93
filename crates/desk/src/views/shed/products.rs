//! Products: the list by what they are for, and the page that follows a label.

use egui::Ui;
use tankard_core::farm::{Container, ContainerKind, Farm, Id, Product, ProductKind};
use tankard_core::quantity::{AsTyped, Quantity, Units};
use tankard_core::t;

use super::stock::Held;
use super::{
    Bench, front, guidance, line, lines, named, paste, quiet, section, sheets, start, statements, tight, title_box,
    users, word,
};
use crate::look;
use crate::parts::boxes;
use crate::parts::lists::{self, Act};
use crate::report::needs::round;

/// Width of the page in which every row of the label has room.
const PAGE: f32 = 800.0;

/// What a heading of the list gathers.
fn group(kind: ProductKind) -> &'static str {
    match kind {
        ProductKind::Herbicide => t!("shed-herbicides"),
        ProductKind::Fungicide => t!("shed-fungicides"),
        ProductKind::Insecticide => t!("shed-insecticides"),
        ProductKind::GrowthRegulator => t!("shed-growth-regulators"),
        ProductKind::Adjuvant | ProductKind::Conditioner => t!("shed-adjuvants-and-conditioners"),
        ProductKind::FoliarFeed => t!("shed-foliar-feeds"),
        ProductKind::Other => t!("shed-others"),
    }
}

/// In the order of the list.
fn groups() -> [&'static str; 7] {
    [
        t!("shed-herbicides"),
        t!("shed-fungicides"),
        t!("shed-insecticides"),
        t!("shed-growth-regulators"),
        t!("shed-adjuvants-and-conditioners"),
        t!("shed-foliar-feeds"),
        t!("shed-others"),
    ]
}

fn matches(product: &Product, wanted: &str) -> bool {
    let wanted = wanted.trim().to_lowercase();
    product.name.to_lowercase().contains(&wanted)
        || product.actives.iter().any(|active| active.name.to_lowercase().contains(&wanted))
}

/// "group 9 · 62 gal on hand".
fn summary(product: &Product, held: &Held, units: Units) -> String {
    let mut parts = Vec::new();
    let mut groups: Vec<&str> =
        product.actives.iter().map(|active| active.group.as_str()).filter(|group| !group.is_empty()).collect();
    groups.dedup();
    if let Some(class) = product.class {
        parts.push(class.name().to_owned());
    } else if groups.len() == 1 {
        parts.push(t!("shed-group", group = groups.concat()));
    } else if !groups.is_empty() {
        parts.push(t!("shed-groups", groups = groups.join(", ")));
    }
    match held.on_hand {
        Some(amount) if amount.is_zero() => parts.push(t!("shed-none-on-hand").to_owned()),
        Some(amount) => parts.push(t!("shed-on-hand", round = round(amount, units))),
        None => parts.push(t!("shed-not-counted").to_owned()),
    }
    parts.join(" · ")
}

/// The list, under headings.
pub(super) fn list(bench: &mut Bench, ui: &mut Ui) {
    let units = bench.farm().units;
    let mut chosen = None;
    let wanted = &bench.state.find;
    let found = bench.farm().products.values().filter(|product| matches(product, wanted)).count();
    if bench.farm().products.is_empty() || found == 0 {
        let text = if bench.farm().products.is_empty() {
            t!("shed-no-product-yet-take-a-label")
        } else {
            t!("shed-no-product-has-this-in-its")
        };
        lists::empty(ui, text);
    }
    for heading in groups() {
        let mut first = true;
        let of_group = bench.farm().products.iter().filter(|(_, product)| group(product.kind) == heading);
        for (id, product) in of_group.filter(|(_, product)| matches(product, wanted)) {
            if std::mem::take(&mut first) {
                ui.add_space(6.0);
                ui.label(look::heading(heading).color(look::colours(ui).soft));
                ui.add_space(2.0);
            }
            let held = bench.stock.get(id).cloned().unwrap_or_default();
            let summary = summary(product, &held, units);
            let name = named(&product.name);
            let is_chosen = bench.state.product.as_ref() == Some(id);
            let spoken = match held.short {
                Some(short) => t!("shed-short-by", name = name, summary = summary, round = round(short, units)),
                None => format!("{name}, {summary}"),
            };
            let response = lists::row(ui, is_chosen, &spoken, |ui| {
                ui.spacing_mut().item_spacing.y = 0.0;
                let title = if is_chosen { look::strong(&name) } else { egui::RichText::new(&name) };
                ui.add(egui::Label::new(title).truncate());
                match held.short {
                    Some(short) => sheets::short_of(ui, short, units),
                    None => {
                        ui.add(egui::Label::new(look::soft(ui, summary)).truncate());
                    }
                }
            });
            if is_chosen && bench.state.reveal {
                response.scroll_to_me(None);
            }
            if response.clicked() {
                chosen = Some(id.clone());
            }
        }
    }
    bench.state.reveal = false;
    if let Some(id) = chosen {
        bench.state.choose(id);
    }
}

/// The foot of the list.
pub(super) fn foot(bench: &mut Bench, ui: &mut Ui) {
    let chosen = bench
        .state
        .product
        .clone()
        .and_then(|id| bench.farm().products.get(&id).map(|product| (id.clone(), named(&product.name))));
    let uses = chosen.as_ref().map_or(0, |(id, _)| using(bench.farm(), id).len());
    start::acts(bench, ui);
    let done = if bench.state.starting.is_none() { super::foot_acts(bench, ui, chosen, uses) } else { None };
    // Not an id that records of a product long gone still carry.
    let copied = done.as_ref().and_then(|(id, _)| {
        Some(bench.farm().fresh_product_id(&t!("shed-name-copy", name = bench.farm().products.get(id)?.name)))
    });
    match done {
        Some((id, act @ (Act::Up | Act::Down))) => bench.desk.document.edit(|farm| move_in_group(farm, &id, act)),
        Some(done) => super::apply(
            &mut bench.desk.document,
            bench.state,
            done,
            |farm| &mut farm.products,
            |product| {
                product.name = t!("shed-name-copy", name = product.name);
                // A copy is another label, but not another heap of containers.
                for container in &mut product.containers {
                    container.full = 0;
                    container.opened = None;
                }
                copied.unwrap_or_default()
            },
        ),
        None => {}
    }
}

fn using(farm: &Farm, id: &str) -> Vec<(Id, tankard_core::farm::Pass)> {
    users(farm, |pass| pass.mix.iter().any(|line| line.product == id))
}

/// Changes places with the next product under the same heading, since the ones between are listed elsewhere.
fn move_in_group(farm: &mut Farm, id: &str, act: Act) {
    let Some((at, _, product)) = farm.products.get_full(id) else { return };
    let heading = group(product.kind);
    let same = |(place, (_, other)): (usize, (&Id, &Product))| (group(other.kind) == heading).then_some(place);
    let mut places = farm.products.iter().enumerate().filter_map(same);
    let other = match act {
        Act::Up => places.take_while(|place| *place < at).last(),
        _ => places.find(|place| *place > at),
    };
    if let Some(other) = other {
        farm.products.swap_indices(at, other);
    }
}

/// The page of the chosen product.
pub(super) fn page(bench: &mut Bench, ui: &mut Ui) {
    // In a wide window the words of others get the room that a row of the label does not need.
    let width = (ui.available_width() - PAGE).clamp(284.0, 380.0);
    super::with_sheets(
        bench,
        ui,
        width,
        |bench, ui| {
            let chosen = bench.state.product.clone();
            let Some((id, mut product)) =
                chosen.and_then(|id| bench.farm().products.get(&id).cloned().map(|product| (id, product)))
            else {
                ui.label(look::title(t!("shed-products")));
                lists::empty(ui, t!("shed-here-stands-what-a-label-says"));
                return;
            };
            let before = product.clone();
            ui.push_id(&id, |ui| {
                quiet(ui);
                form(bench, ui, &id, &mut product);
            });
            if product != before {
                bench.desk.document.edit(|farm| {
                    if let Some(slot) = farm.products.get_mut(&id) {
                        *slot = product;
                    }
                });
            }
        },
        |bench, ui| {
            sheets::doubts(bench, ui);
            let Some(id) = bench.state.product.clone() else { return };
            guidance::show(bench, ui, &id);
            sheets::on_hand(bench, ui, &id);
            let stock = bench.stock;
            let units = bench.farm().units;
            let passes = using(bench.farm(), &id);
            sheets::planned(bench, ui, t!("shed-no-planned-pass-uses-it"), &passes, |pass| {
                let taken = stock.get(&id)?.by_pass.iter().find(|take| take.pass == *pass)?;
                Some(round(taken.amount, units))
            });
            sheets::went(bench, ui, &id);
        },
    );
}

fn form(bench: &mut Bench, ui: &mut Ui, id: &Id, product: &mut Product) {
    title_box(ui, t!("shed-name-of-the-product"), &mut product.name);
    ui.scope(|ui| {
        tight(ui);
        ui.visuals_mut().text_edit_bg_color = Some(look::colours(ui).ground);
        ui.horizontal(|ui| {
            ui.spacing_mut().item_spacing.x = 4.0;
            ui.spacing_mut().button_padding.x = 0.0;
            word(ui, t!("shed-typed-from"));
            let width = ui.available_width();
            boxes::text_or_empty(
                ui,
                t!("shed-typed-from"),
                &mut product.typed_from,
                width,
                t!("shed-which-label-and-when"),
            );
        });
    });
    let units = bench.farm().units;
    let is_filling = bench.state.filling.as_ref() == Some(id);
    front::show(ui, id, product, units, is_filling);
    paste::show(bench, ui, product);
    statements::show(bench, ui, id, product);
    front::elsewhere(ui, id, product, units);
    // Not on the label, so after it.
    containers(bench, ui, product);
}

fn containers(bench: &Bench, ui: &mut Ui, product: &mut Product) {
    let farm = bench.farm();
    let units = farm.units;
    section(ui, t!("shed-containers-and-price"));
    let mut gone = None;
    let mut more = false;
    let (count, counted) = (product.containers.len(), product.counted.is_some());
    if count == 0 {
        line(ui, t!("shed-sold-in"), |ui| {
            ui.spacing_mut().button_padding.x = 0.0;
            more = boxes::act(ui, t!("shed-add-a-container")).clicked();
        });
    }
    for (at, container) in product.containers.iter_mut().enumerate() {
        ui.push_id(("container", at), |ui| {
            lines(ui, if at == 0 { t!("shed-sold-in") } else { "" }, |ui| {
                let n = at + 1;
                let say = |kind: &ContainerKind| kind.name(1).to_owned();
                // Where there is less room the boxes are narrower, so that they stay in a line.
                let less = if ui.available_width() < 520.0 { 12.0 } else { 0.0 };
                let width = 76.0 - less;
                boxes::choice(ui, &t!("shed-container-n", n = n), &mut container.kind, &ContainerKind::ALL, say, width);
                word(ui, t!("shed-of-size"));
                boxes::quantity(ui, &t!("shed-size-of-container", n = n), &mut container.size, 84.0 - less);
                // What is on hand now is reckoned from it.
                word(ui, if counted { t!("shed-counted-box") } else { t!("shed-on-hand-861") });
                boxes::count(ui, &t!("shed-full-of-container", n = n), &mut container.full, 44.0);
                word(ui, t!("shed-full-and"));
                let opened = t!("shed-opened-of-container", n = n);
                boxes::quantity_hinted(ui, &opened, &mut container.opened, 76.0 - less, t!("shed-nothing"));
                word(ui, t!("shed-opened"));
                if super::cross(ui, &t!("shed-container-n", n = n)) {
                    gone = Some(at);
                }
                if at + 1 == count {
                    more |=
                        boxes::act(ui, t!("shed-another-container")).on_hover_text(t!("shed-add-container")).clicked();
                }
            });
        });
    }
    if let Some(at) = gone {
        product.containers.remove(at);
    }
    if more {
        let (kind, size) = match (product.is_liquid(), units) {
            (true, Units::UsCustomary) => (ContainerKind::Jug, "2.5 gal"),
            (true, _) => (ContainerKind::Jug, "10 L"),
            (false, Units::Metric) => (ContainerKind::Bag, "10 kg"),
            (false, _) => (ContainerKind::Bag, "50 lb"),
        };
        if let Ok(size) = AsTyped::parse(size) {
            product.containers.push(Container { kind, size, full: 0, opened: None, lot: String::new() });
            boxes::want(ui.ctx(), &t!("shed-size-of-container", n = product.containers.len()));
        }
    }
    line(ui, t!("shed-measuring-step"), |ui| {
        let usual = if product.is_liquid() {
            farm.measuring.liquid(units).show(units)
        } else {
            farm.measuring.dry(units).show(units)
        };
        boxes::quantity_hinted(ui, t!("shed-measuring-step"), &mut product.measuring_step, 120.0, &usual);
        if product.measuring_step.is_none() {
            word(ui, t!("shed-as-everywhere-on-the-farm"));
        }
        boxes::understood(ui, product.measuring_step.as_ref(), units);
    });
    let label = if farm.currency.is_empty() {
        t!("shed-price-row").to_owned()
    } else {
        t!("shed-price", currency = farm.currency)
    };
    line(ui, &label, |ui| {
        boxes::quantity_or_none(ui, t!("shed-price-row"), &mut product.price, 120.0);
        understood_price(ui, product, units, &farm.currency);
    });
}

/// The price in the farm's units, where it was typed in others.
fn understood_price(ui: &mut Ui, product: &Product, units: Units, currency: &str) {
    let Some(price) = &product.price else { return };
    let unit = |text: &str| text.rsplit('/').next().unwrap_or_default().trim().to_lowercase();
    let shown = price.show(units);
    if unit(&shown) != unit(price.text()) {
        word(ui, &format!("= {currency}{shown}"));
    }
}
