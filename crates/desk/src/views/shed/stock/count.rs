//! The form of a count: what is there by container and lot, against what the account has.

use egui::{Label, Ui};
use tankard_core::farm::{Container, ContainerKind, Empties, Id, Product};
use tankard_core::quantity::{Amount, AsTyped, Quantity, Units};
use tankard_core::stock::{self, Account, Count};
use tankard_core::t;

use super::super::{Bench, cross, word};
use super::forms::{Form, row, sold_in, usual};
use super::rounded;
use crate::look;
use crate::parts::boxes;
use crate::report::needs::round;

/// An amount as it could be typed.
fn as_typed(amount: Amount, units: Units) -> Option<AsTyped<Amount>> {
    AsTyped::parse(&amount.show(units).replace(',', "")).ok()
}

/// What the account has, to be typed over by what is there.
pub(super) fn counted(
    product: &Product,
    account: &Account,
    (kind, size): (ContainerKind, Option<&AsTyped<Amount>>),
    units: Units,
) -> (Vec<Container>, Vec<Empties>) {
    let mut rows = Vec::new();
    for held in &account.on_hand.held {
        let Some((kind, size)) = held.container.clone().or_else(|| Some((kind, size?.clone()))) else { continue };
        let row = |full, rest: Option<&Amount>| Container {
            kind,
            size: size.clone(),
            full,
            opened: rest.and_then(|rest| as_typed(*rest, units)),
            lot: held.lot.clone(),
        };
        rows.push(row(held.full, held.opened.first()));
        rows.extend(held.opened.iter().skip(1).map(|rest| row(0, Some(rest))));
    }
    let mut sizes = sold_in(product);
    sizes.extend(size.filter(|_| sizes.is_empty()).map(|size| (kind, size.clone())));
    let mut empties = account.empties.clone();
    for (kind, size) in sizes {
        if !rows.iter().any(|row: &Container| row.kind == kind && row.size == size) {
            rows.push(Container { kind, size: size.clone(), full: 0, opened: None, lot: String::new() });
        }
        if !empties.iter().any(|one| one.kind == kind && one.size == size) {
            empties.push(Empties { kind, size, count: 0 });
        }
    }
    (rows, empties)
}

/// The boxes of a count.
pub(super) fn show(bench: &mut Bench, ui: &mut Ui, id: &Id, product: &Product, form: &mut Form) {
    let units = bench.farm().units;
    let mut gone = None;
    for (at, container) in form.rows.iter_mut().enumerate() {
        let n = at + 1;
        ui.push_id(("count", at), |ui| {
            row(ui, if at == 0 { t!("shed-there-are") } else { "" }, |ui| {
                ui.spacing_mut().item_spacing.x = 5.0;
                boxes::count(ui, &t!("shed-full-row", n = n), &mut container.full, 40.0);
                word(ui, t!("shed-full"));
                let say = |kind: &ContainerKind| kind.name(1).to_owned();
                boxes::choice(
                    ui,
                    &t!("shed-container-row", n = n),
                    &mut container.kind,
                    &ContainerKind::ALL,
                    say,
                    68.0,
                );
                word(ui, t!("shed-of-size"));
                boxes::quantity(ui, &t!("shed-size-row", n = n), &mut container.size, 70.0);
                word(ui, t!("shed-opened"));
                boxes::quantity_hinted(ui, &t!("shed-opened-row", n = n), &mut container.opened, 84.0, t!("shed-none"));
                word(ui, t!("shed-lot-box"));
                boxes::text_or_empty(ui, &t!("shed-lot-row", n = n), &mut container.lot, 84.0, t!("shed-lot-box"));
                if cross(ui, &t!("shed-row", n = n)) {
                    gone = Some(at);
                }
            });
        });
    }
    if let Some(at) = gone {
        form.rows.remove(at);
    }
    row(ui, "", |ui| {
        ui.spacing_mut().button_padding.x = 0.0;
        if boxes::act(ui, t!("shed-another-lot-or-size")).clicked() {
            let (kind, size) = usual(product, units);
            let like = form.rows.last().map(|row| (row.kind, row.size.clone())).or_else(|| Some((kind, size?)));
            form.rows.extend(like.map(|(kind, size)| Container {
                kind,
                size,
                full: 0,
                opened: None,
                lot: String::new(),
            }));
        }
    });
    for (at, one) in form.empties.iter_mut().enumerate() {
        row(ui, if at == 0 { t!("shed-empty-ones") } else { "" }, |ui| {
            let name = t!("shed-empty-of", kind = one.kind.name(2), size = one.size);
            boxes::count(ui, &name, &mut one.count, 40.0);
            word(ui, &t!("shed-empty-of-to-give-back", kind = one.kind.name(one.count), size = one.size));
        });
    }
    row(ui, t!("shed-on-day"), |ui| {
        boxes::date(ui, t!("shed-day-of-the-count"), &mut form.date, 96.0);
        let say = |after: &bool| {
            if *after { t!("shed-after-that-days-spraying") } else { t!("shed-before-that-days-spraying") }.to_owned()
        };
        boxes::choice(ui, t!("shed-counted-box"), &mut form.after, &[false, true], say, 200.0);
    });
    boxes::hairline(ui);
    against(bench, ui, id, product, form);
}

/// What the accounts had come to, what the difference is, and why.
fn against(bench: &Bench, ui: &mut Ui, id: &Id, product: &Product, form: &mut Form) {
    let units = bench.farm().units;
    let made_for = (bench.desk.document.revision(), form.date, form.after);
    let reckoned = match form.reckoned {
        Some((for_state, reckoned)) if for_state == made_for => reckoned,
        _ => stock::reckoned(bench.farm(), id, form.date, form.after).and_then(|account| account.balance),
    };
    form.reckoned = Some((made_for, reckoned));
    match of(form, String::new()).against(product, reckoned) {
        Err(problem) => {
            ui.add(Label::new(egui::RichText::new(problem).color(look::colours(ui).stop)).wrap());
        }
        Ok(difference) => {
            let counted = round(difference.counted, units);
            let text = match (difference.reckoned, difference.differs) {
                (None, _) => t!("shed-counted-what-the-account-had-come", counted = counted),
                (Some(reckoned), None) => {
                    t!("shed-counted-as-the-account-has-it", counted = counted, round = round(reckoned, units))
                }
                (Some(reckoned), Some(off)) => {
                    let (shown, account) = (rounded(off, units), round(reckoned, units));
                    match shown.strip_prefix('-') {
                        Some(less) => t!("shed-counted-less", counted = counted, account = account, less = less),
                        None => t!("shed-counted-more", counted = counted, account = account, more = shown),
                    }
                }
            };
            ui.add(Label::new(look::strong(text)).wrap());
            row(ui, if difference.differs.is_some() { t!("shed-why") } else { t!("shed-note") }, |ui| {
                let width = ui.available_width().min(320.0);
                let hint =
                    if difference.differs.is_some() { t!("shed-why-it-differs") } else { t!("shed-anything-else-380") };
                boxes::sentence(ui, t!("shed-why-it-differs"), &mut form.note, width, hint);
            });
        }
    }
}

/// The count as it is typed.
pub(super) fn of(form: &Form, by: String) -> Count {
    Count {
        date: form.date,
        after: form.after,
        containers: form.rows.clone(),
        empties: form.empties.clone(),
        by,
        reason: form.note.clone(),
    }
}
