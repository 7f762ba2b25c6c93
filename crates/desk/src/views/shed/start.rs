//! Begins a product: from its label, or from an active with a formulation and a content typed in one line.

use egui::{Key, Label, Ui};
use tankard_core::begin::new_product;
use tankard_core::farm::{Formulation, Id, Product, ProductKind};
use tankard_core::mix::actives;
use tankard_core::mix::start::{self, Started};
use tankard_core::t;

use super::{Bench, State};
use crate::document::Document;
use crate::look;
use crate::parts::boxes;

/// How many known actives are offered while one is typed.
const OFFERED: usize = 3;
/// Room for what was understood, so that the list above stands still while a person types.
const READING: f32 = 72.0;

/// What is being typed.
#[derive(Debug, Default)]
pub(super) struct Draft {
    line: String,
    /// Whether the box was just opened and still has to be stepped into.
    fresh: bool,
}

/// The two acts, or the box where one of them is at work.
pub(super) fn acts(bench: &mut Bench, ui: &mut Ui) {
    if bench.state.starting.is_some() {
        line(bench, ui);
        return;
    }
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().button_padding.x = 0.0;
        ui.spacing_mut().item_spacing.x = super::gap(ui);
        if boxes::act(ui, t!("shed-from-a-label")).clicked() {
            from_a_label(&mut bench.desk.document, bench.state);
            boxes::want(ui.ctx(), t!("shed-name-of-the-product"));
        }
        if boxes::act(ui, t!("shed-from-an-active")).clicked() {
            bench.state.starting = Some(Draft { line: String::new(), fresh: true });
        }
    });
}

/// Adds a product with nothing typed of it yet.
pub(super) fn from_a_label(document: &mut Document, state: &mut State) {
    add(document, state, Product::new(new_product(), ProductKind::Herbicide, Formulation::SL), "product");
}

fn add(document: &mut Document, state: &mut State, product: Product, name: &str) {
    let mut id = Id::new();
    document.edit(|farm| {
        id = farm.fresh_product_id(name);
        farm.products.insert(id.clone(), product);
    });
    state.fill_in(&id);
}

/// The line, what it is understood as, and what to do with it.
fn line(bench: &mut Bench, ui: &mut Ui) {
    let Some(mut draft) = bench.state.starting.take() else { return };
    ui.spacing_mut().item_spacing.y = 4.0;
    ui.label(look::soft(ui, t!("shed-active-formulation-content")));
    let width = ui.available_width();
    let response = boxes::text_or_empty(ui, t!("shed-start-from-an-active"), &mut draft.line, width, start::EXAMPLE);
    if std::mem::take(&mut draft.fresh) {
        response.request_focus();
    }
    let (entered, left) = ui.input(|input| (input.key_pressed(Key::Enter), input.key_pressed(Key::Escape)));
    let entered = entered && response.lost_focus();
    choices(ui, &mut draft.line);
    let read = start::read(&draft.line);
    ui.scope(|ui| {
        ui.set_min_size(egui::Vec2::new(width, READING));
        ui.spacing_mut().item_spacing.y = 1.0;
        match &read {
            Ok(started) => understood(ui, started),
            Err(problem) => missing(ui, &mut draft.line, problem),
        }
    });
    let mut added = false;
    let mut closed = left;
    ui.horizontal(|ui| {
        ui.spacing_mut().button_padding.x = 0.0;
        ui.spacing_mut().item_spacing.x = 14.0;
        if read.is_ok() {
            added = boxes::act(ui, t!("shed-add-it")).clicked();
        } else {
            ui.add_enabled(false, egui::Button::new(t!("shed-add-it")).frame(false));
        }
        closed |= boxes::act(ui, t!("shed-not-now")).clicked();
    });
    match read {
        Ok(started) if added || entered => {
            let product = started.product(bench.farm());
            let name = product.name.clone();
            add(&mut bench.desk.document, bench.state, product, &name);
            boxes::want(ui.ctx(), t!("shed-name-of-the-product"));
        }
        _ if closed => {}
        _ => {
            // Enter on a line that cannot be read yet leaves the person in it.
            draft.fresh = entered;
            bench.state.starting = Some(draft);
        }
    }
}

/// The known actives and the formulations to pick from; what is picked is written into the line.
fn choices(ui: &mut Ui, line: &mut String) {
    let Ok(parts) = start::parts(line) else { return };
    let mut picked = parts.clone();
    ui.horizontal_top(|ui| {
        ui.spacing_mut().item_spacing.x = 6.0;
        let width = (ui.available_width() - 6.0) / 2.0;
        let mut known: Vec<&str> = actives::table().iter().map(|facts| facts.name.as_str()).collect();
        known.sort_unstable();
        let all: Vec<String> = known.into_iter().map(str::to_owned).collect();
        let say = |name: &String| {
            if name.is_empty() { t!("shed-known-actives").to_owned() } else { name.clone() }
        };
        let mut active = actives::facts(&parts.active).map(|facts| facts.name.clone()).unwrap_or_default();
        let before = active.clone();
        boxes::choice(ui, t!("shed-known-active"), &mut active, &all, say, width);
        if active != before {
            picked.active = active;
        }
        let all: Vec<Option<Formulation>> = Formulation::ALL.into_iter().map(Some).collect();
        let say = |formulation: &Option<Formulation>| {
            formulation.map_or_else(|| t!("shed-formulation").to_owned(), |it| format!("{}, {}", it.code(), it.name()))
        };
        boxes::choice(ui, t!("shed-formulation-to-start-with"), &mut picked.formulation, &all, say, width);
    });
    if picked != parts {
        *line = picked.line();
    }
}

fn understood(ui: &mut Ui, started: &Started) {
    ui.add(Label::new(look::strong(started.name())).wrap());
    let group = if started.group().is_empty() {
        t!("shed-group-not-known").to_owned()
    } else {
        t!("shed-group", group = started.group())
    };
    let text = t!(
        "shed-group-content-counted-as-short",
        group = group,
        content = started.content.text(),
        short = started.basis.short()
    );
    ui.add(Label::new(look::soft(ui, text)).wrap());
    for note in &started.notes {
        ui.add(Label::new(look::soft(ui, note).color(look::colours(ui).check)).wrap());
    }
}

/// What is still missing, with the known actives that begin as the line does.
fn missing(ui: &mut Ui, line: &mut String, problem: &str) {
    let parts = start::parts(line).unwrap_or_default();
    let typed = parts.active.to_lowercase();
    let offered: Vec<&str> = actives::table()
        .iter()
        .map(|facts| facts.name.as_str())
        .filter(|name| !typed.is_empty() && *name != typed && name.to_lowercase().starts_with(&typed))
        .take(OFFERED)
        .collect();
    ui.add(Label::new(look::soft(ui, problem)).wrap());
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().button_padding.x = 0.0;
        for name in offered {
            if boxes::act(ui, name).accessible_name(t!("shed-take", name = name)).clicked() {
                let mut taken = parts.clone();
                name.clone_into(&mut taken.active);
                *line = taken.line();
            }
        }
    });
}
