//! What is written down of a product: bought, counted, gone out, come in, empty containers given back. Each form stands in its place
//! on the page; nothing changes before it is written down.

use egui::{Label, Ui};
use jiff::civil::Date;
use tankard_core::farm::{Container, ContainerKind, Empties, Farm, Id, Moved, Movement, Product};
use tankard_core::language::yes_or_no;
use tankard_core::quantity::{Amount, AsTyped, Price, Quantity, Units};
use tankard_core::stock::{self, Account, Entry};
use tankard_core::t;

use super::super::{Bench, sheets, word};
use super::count;
use crate::look;
use crate::parts::boxes;

/// What can be written down.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum What {
    Bought,
    Count,
    Out,
    In,
    Back,
}

impl What {
    const ALL: [Self; 5] = [Self::Bought, Self::Count, Self::Out, Self::In, Self::Back];

    fn text(self) -> &'static str {
        match self {
            Self::Bought => t!("shed-bought"),
            Self::Count => t!("shed-count"),
            Self::Out => t!("shed-went-out-act"),
            Self::In => t!("shed-came-in-act"),
            Self::Back => t!("shed-gave-back-empties"),
        }
    }
}

/// A form that is being filled in.
#[derive(Clone, Debug)]
pub(super) struct Form {
    what: What,
    pub(super) date: Date,
    /// Counted after that day's spraying.
    pub(super) after: bool,
    /// Which of the sizes that the product is sold in; beyond the last another one.
    sold: usize,
    kind: ContainerKind,
    size: Option<AsTyped<Amount>>,
    count: u32,
    amount: Option<AsTyped<Amount>>,
    lot: String,
    price: Option<AsTyped<Price>>,
    /// From whom, or to whom.
    whom: String,
    pub(super) note: String,
    rinsed: bool,
    /// Of a product that nobody counted there was none before.
    none_before: bool,
    pub(super) rows: Vec<Container>,
    pub(super) empties: Vec<Empties>,
    /// What the accounts come to at the moment of the count, for a state of the farm.
    pub(super) reckoned: Option<((u64, Date, bool), Option<Amount>)>,
    /// Why it cannot be written down.
    problem: Option<String>,
}

/// Width of the labels of a form.
const LABEL: f32 = 84.0;

/// The kinds and sizes that a product is sold in, each once.
pub(super) fn sold_in(product: &Product) -> Vec<(ContainerKind, AsTyped<Amount>)> {
    let mut out: Vec<(ContainerKind, AsTyped<Amount>)> = Vec::new();
    for container in &product.containers {
        if !out.iter().any(|(kind, size)| *kind == container.kind && *size == container.size) {
            out.push((container.kind, container.size.clone()));
        }
    }
    out
}

/// A kind and size to begin with.
pub(super) fn usual(product: &Product, units: Units) -> (ContainerKind, Option<AsTyped<Amount>>) {
    let (kind, size) = match (product.is_liquid(), units) {
        (true, Units::UsCustomary) => (ContainerKind::Jug, "2.5 gal"),
        (true, _) => (ContainerKind::Jug, "10 L"),
        (false, Units::Metric) => (ContainerKind::Bag, "10 kg"),
        (false, _) => (ContainerKind::Bag, "50 lb"),
    };
    (kind, AsTyped::parse(size).ok())
}

impl Form {
    fn new(what: What, product: &Product, account: &Account, entries: &[Entry], today: Date, units: Units) -> Self {
        let (kind, size) = sold_in(product)
            .into_iter()
            .next()
            .map_or_else(|| usual(product, units), |(kind, size)| (kind, Some(size)));
        // A farm may run ahead of the clock, as the demo does. What was written down of the day was there to be counted.
        let last = entries.last().map(|entry| entry.date).max(product.counted);
        let date = last.map_or(today, |last| last.max(today));
        let after = entries.iter().any(|entry| entry.date == date && entry.change.is_some())
            || (product.counted == Some(date) && product.counted_after);
        let (rows, empties) = if what == What::Count {
            count::counted(product, account, (kind, size.as_ref()), units)
        } else {
            Default::default()
        };
        Self {
            what,
            date,
            after,
            sold: 0,
            kind,
            size,
            count: 1,
            amount: None,
            lot: String::new(),
            price: None,
            whom: String::new(),
            note: String::new(),
            rinsed: false,
            none_before: false,
            rows,
            empties,
            reckoned: None,
            problem: None,
        }
    }
}

/// What can be written down, and the form of what is.
pub(super) fn acts(bench: &mut Bench, ui: &mut Ui, id: &Id, product: &Product, entries: &[Entry]) {
    let open = bench.state.stock.form.as_ref().map(|form| form.what);
    let mut chosen = None;
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing = egui::Vec2::new(8.0, 4.0);
        for what in What::ALL {
            if ui.button(what.text()).clicked() {
                chosen = Some(what);
            }
        }
    });
    if let Some(what) = chosen {
        let (today, units) = (bench.desk.now().date(), bench.farm().units);
        let account = bench.stock.accounts.get(id).filter(|_| open != Some(what));
        bench.state.stock.form = account.map(|account| Form::new(what, product, account, entries, today, units));
    }
    let Some(mut form) = bench.state.stock.form.take() else { return };
    let mut ended = Ended::No;
    ui.add_space(4.0);
    look::sheet(ui).show(ui, |ui| {
        ui.set_width(ui.available_width());
        // On the sheet a pale box would not be seen without its outline.
        ui.visuals_mut().widgets.inactive.bg_stroke = egui::Stroke::new(1.0, look::colours(ui).hairline);
        // Nor would two of them be told apart that touch.
        ui.spacing_mut().item_spacing.y = 4.0;
        ui.label(look::strong(form.what.text().trim_end_matches('…')));
        ui.push_id((id, form.what as u8), |ui| match form.what {
            What::Bought => bought(bench, ui, product, &mut form),
            What::Count => count::show(bench, ui, id, product, &mut form),
            What::Out | What::In => moved(bench, ui, id, product, &mut form),
            What::Back => back(bench, ui, id, product, &mut form),
        });
        ended = end(ui, &mut bench.state.stock.by, &mut form);
    });
    match ended {
        Ended::No => bench.state.stock.form = Some(form),
        Ended::Left => {}
        Ended::Written => {
            let by = bench.state.stock.by.trim().to_owned();
            // A farm that is only read does not change: what cannot be written down is found before.
            match written(bench.farm(), id, product, &form, by) {
                Ok(done) => bench.desk.document.edit(|farm| *farm = done),
                Err(problem) => bench.state.stock.form = Some(Form { problem: Some(problem), ..form }),
            }
        }
    }
}

/// How a form ends.
enum Ended {
    No,
    Left,
    Written,
}

pub(super) fn row(ui: &mut Ui, label: &str, add: impl FnOnce(&mut Ui)) {
    boxes::beside(ui, LABEL, label, add);
}

/// Who writes it down, and the ways out.
fn end(ui: &mut Ui, by: &mut String, form: &mut Form) -> Ended {
    row(ui, t!("shed-by"), |ui| {
        boxes::text_or_empty(ui, t!("shed-written-down-by"), by, 150.0, t!("shed-who-writes-it-down"));
    });
    if let Some(problem) = &form.problem {
        ui.add(Label::new(egui::RichText::new(problem).color(look::colours(ui).stop)).wrap());
    }
    let mut ended = Ended::No;
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 8.0;
        if ui.button(t!("shed-write-it-down")).clicked() {
            ended = Ended::Written;
        }
        if ui.button(t!("shed-leave-it")).clicked() {
            ended = Ended::Left;
        }
    });
    ended
}

fn on_day(ui: &mut Ui, form: &mut Form) {
    row(ui, t!("shed-on-day"), |ui| boxes::date(ui, t!("shed-day-it-happened"), &mut form.date, 96.0));
}

/// Which kind and size.
fn container(ui: &mut Ui, product: &Product, form: &mut Form) {
    let sold = sold_in(product);
    let other = sold.len();
    let all: Vec<usize> = (0..=other).collect();
    let say = |at: &usize| {
        sold.get(*at).map_or_else(
            || t!("shed-another").to_owned(),
            |(kind, size)| t!("shed-kind-of-size", kind = kind.name(1), size = size),
        )
    };
    row(ui, t!("shed-container"), |ui| {
        let before = form.sold;
        boxes::choice(ui, t!("shed-container"), &mut form.sold, &all, say, 130.0);
        if let Some((kind, size)) = sold.get(form.sold) {
            form.kind = *kind;
            form.size = Some(size.clone());
        } else {
            if before != form.sold {
                form.size = None;
            }
            boxes::choice(
                ui,
                t!("shed-kind"),
                &mut form.kind,
                &ContainerKind::ALL,
                |kind| kind.name(1).to_owned(),
                76.0,
            );
            word(ui, t!("shed-of-size"));
            boxes::quantity_or_none(ui, t!("shed-size"), &mut form.size, 84.0);
        }
    });
}

/// What a day before the count means.
fn in_the_count(ui: &mut Ui, product: &Product, form: &Form) {
    let Some(counted) = product.counted else { return };
    if form.date < counted || (form.date == counted && product.counted_after) {
        let text = t!(
            "shed-it-was-counted-on-what-happened",
            counted = sheets::day(counted),
            which = yes_or_no(product.counted_after)
        );
        boxes::say(ui, &text);
    }
}

fn bought(bench: &Bench, ui: &mut Ui, product: &Product, form: &mut Form) {
    container(ui, product, form);
    row(ui, t!("shed-how-many"), |ui| {
        boxes::count(ui, t!("shed-how-many"), &mut form.count, 48.0);
        word(ui, t!("shed-lot-box"));
        boxes::text_or_empty(ui, t!("shed-lot-box"), &mut form.lot, 110.0, t!("shed-as-printed-on-it"));
        if let Some(size) = form.size.as_ref().filter(|_| form.count > 1) {
            word(ui, &format!("= {}", size.times(f64::from(form.count)).show(bench.farm().units)));
        }
    });
    row(ui, t!("shed-price-row"), |ui| {
        boxes::quantity_or_none(ui, t!("shed-price-on-the-bill"), &mut form.price, 110.0);
        word(ui, t!("shed-bought-from-row"));
        boxes::text_or_empty(ui, t!("shed-bought-from"), &mut form.whom, 130.0, t!("shed-from-whom"));
    });
    on_day(ui, form);
    row(ui, t!("shed-note"), |ui| {
        let width = ui.available_width().min(320.0);
        boxes::sentence(ui, t!("shed-note"), &mut form.note, width, t!("shed-delivery-note-or-anything-else"));
    });
    in_the_count(ui, product, form);
    if product.counted.is_none() {
        boxes::say(ui, t!("shed-no-day-of-a-count-is-typed-so-purchases"));
        if product.containers.iter().all(|container| container.full == 0 && container.opened.is_none()) {
            boxes::tick(ui, &mut form.none_before, t!("shed-there-was-none-of-it-before"));
        }
    }
}

fn moved(bench: &Bench, ui: &mut Ui, id: &str, product: &Product, form: &mut Form) {
    row(ui, t!("shed-how-much"), |ui| {
        boxes::quantity_or_none(ui, t!("shed-how-much"), &mut form.amount, 100.0);
        boxes::understood(ui, form.amount.as_ref(), bench.farm().units);
        word(ui, t!("shed-lot-box"));
        let held = bench.stock.accounts.get(id).map(|account| account.on_hand.held.as_slice()).unwrap_or_default();
        let lot = held.iter().find(|held| !held.lot.is_empty());
        let hint = lot.map_or_else(|| t!("shed-if-known").to_owned(), |held| t!("shed-such-as", lot = held.lot));
        boxes::text_or_empty(ui, t!("shed-lot-box"), &mut form.lot, 110.0, &hint);
    });
    row(ui, t!("shed-why"), |ui| {
        let width = ui.available_width().min(320.0);
        let hint =
            if form.what == What::Out { t!("shed-spilt-lent-handed-in") } else { t!("shed-found-given-back-borrowed") };
        boxes::sentence(ui, t!("shed-why"), &mut form.note, width, hint);
    });
    on_day(ui, form);
    in_the_count(ui, product, form);
    if product.counted.is_none() {
        boxes::say(ui, t!("shed-no-day-of-a-count-is-typed-so-it"));
    }
}

fn back(bench: &Bench, ui: &mut Ui, id: &str, product: &Product, form: &mut Form) {
    let there = bench.stock.accounts.get(id).map(|account| account.empties.as_slice()).unwrap_or_default();
    container(ui, product, form);
    row(ui, t!("shed-how-many"), |ui| {
        boxes::count(ui, t!("shed-how-many"), &mut form.count, 48.0);
        let alike = |one: &&Empties| one.kind == form.kind && form.size.as_ref() == Some(&one.size);
        let count = there.iter().find(alike).map_or(0, |one| one.count);
        word(ui, &t!("shed-of-empty", count = count));
        boxes::tick(ui, &mut form.rinsed, t!("shed-rinsed-box"));
    });
    row(ui, t!("shed-to-whom-row"), |ui| {
        boxes::text_or_empty(ui, t!("shed-given-back-to"), &mut form.whom, 200.0, t!("shed-to-whom"));
    });
    on_day(ui, form);
    in_the_count(ui, product, form);
}

/// The farm with what was written down, or what is missing.
fn written(farm: &Farm, id: &Id, product: &Product, form: &Form, by: String) -> Result<Farm, String> {
    let mut farm = farm.clone();
    let (of_container, much) = match (product.is_liquid(), farm.units) {
        (true, Units::UsCustomary) => ("2.5 gal", "1 gal"),
        (true, Units::Imperial) => ("10 L", "1 imp gal"),
        (true, Units::Metric) => ("10 L", "5 L"),
        (false, Units::Metric) => ("10 kg", "5 kg"),
        (false, _) => ("50 lb", "10 lb"),
    };
    let size =
        || form.size.clone().ok_or_else(|| t!("shed-type-what-one-container-holds-such", example = of_container));
    let amount = || form.amount.clone().ok_or_else(|| t!("shed-type-how-much-such-as-1", example = much));
    let lot = form.lot.trim().to_owned();
    if matches!(form.what, What::Bought | What::Back) && form.count == 0 {
        return Err(t!("shed-type-how-many-containers").to_owned());
    }
    if matches!(form.what, What::Out | What::In) && form.note.trim().is_empty() {
        return Err(t!("shed-say-why").to_owned());
    }
    let (kind, count, whom) = (form.kind, form.count, form.whom.trim().to_owned());
    let what = match form.what {
        What::Count => {
            stock::count(&mut farm, id, count::of(form, by))?;
            return Ok(farm);
        }
        What::Bought => Moved::Bought { kind, size: size()?, count, lot, price: form.price.clone(), from: whom },
        What::Out => Moved::Out { amount: amount()?, lot },
        What::In => Moved::In { amount: amount()?, lot },
        What::Back => Moved::Returned { kind, size: size()?, count, to: whom, rinsed: form.rinsed },
    };
    if form.what == What::Bought
        && form.none_before
        && product.counted.is_none()
        && let Some(product) = farm.products.get_mut(id)
    {
        product.counted = Some(form.date);
        product.counted_after = false;
    }
    stock::enter(
        &mut farm,
        Movement { product: id.clone(), date: form.date, what, by, note: form.note.trim().to_owned() },
    );
    Ok(farm)
}
