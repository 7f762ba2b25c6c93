//! What is seldom typed: for whom it was sprayed, and against which weeds.

use egui::Ui;
use tankard_core::farm::{Customer, Record, Text};
use tankard_core::t;

use super::Page;
use super::rows::{box_width, folded, names, pair, row, with_before};
use crate::parts::boxes;

/// The weeds that it was meant for.
pub(super) fn weeds(ui: &mut Ui, page: &Page<'_>, record: &mut Record) {
    let summary = if record.weeds.is_empty() {
        t!("season-log-not-typed").to_owned()
    } else {
        record.weeds.iter().map(Text::as_str).collect::<Vec<_>>().join(", ")
    };
    folded(ui, page.fold("weeds"), t!("season-log-weeds"), &summary, |ui| {
        let width = ui.available_width();
        names(
            ui,
            t!("season-log-weeds-apart-by-commas"),
            &mut record.weeds,
            width,
            t!("season-log-waterhemp-velvetleaf"),
        );
    });
}

/// For whom it was sprayed, where that is not the farm itself.
pub(super) fn customer(ui: &mut Ui, page: &Page<'_>, record: &mut Record) {
    let name = record.customer.as_ref().map(|customer| customer.name.trim().to_owned()).unwrap_or_default();
    let summary = match record.customer.as_deref() {
        None => t!("season-log-head-none").to_owned(),
        Some(Customer { copied: Some(day), .. }) => t!("season-log-copy-handed-over-on", name = name, day = day),
        Some(_) => name,
    };
    folded(ui, page.fold("customer"), t!("season-log-customer"), &summary, |ui| {
        let mut customer = record.customer.as_deref().cloned().unwrap_or_default();
        let before = customer.name.clone();
        pair(
            ui,
            (t!("season-log-name"), |ui| {
                with_before(
                    ui,
                    t!("season-log-customer"),
                    &mut customer.name,
                    box_width(ui),
                    t!("season-log-a-neighbour"),
                    &page.used.customers,
                );
            }),
            (t!("season-log-telephone"), |ui| {
                boxes::text(ui, t!("season-log-telephone-of-the-customer"), &mut customer.phone, box_width(ui))
            }),
        );
        row(ui, t!("season-log-address"), |ui| {
            let width = ui.available_width();
            boxes::text(ui, t!("season-log-address-of-the-customer"), &mut customer.address, width);
        });
        pair(
            ui,
            (t!("season-log-copy-given"), |ui| {
                boxes::date_hinted(
                    ui,
                    t!("season-log-copy-handed-over-on-6b3"),
                    &mut customer.copied,
                    box_width(ui),
                    t!("season-log-not-yet"),
                );
            }),
            ("", |_: &mut Ui| {}),
        );
        // Address and telephone are those of the same person in an earlier record.
        if customer.name != before
            && customer.address.is_empty()
            && customer.phone.is_empty()
            && let Some(known) = known(page, &customer.name)
        {
            customer.address.clone_from(&known.address);
            customer.phone.clone_from(&known.phone);
        }
        record.customer = (customer != Customer::default()).then(|| Box::new(customer));
    });
}

fn known<'a>(page: &Page<'a>, name: &str) -> Option<&'a Customer> {
    let all = page.farm.records.values().filter_map(|record| Some((record.date, record.customer.as_deref()?)));
    all.filter(|(_, known)| known.name == name && !name.is_empty())
        .max_by_key(|(date, _)| *date)
        .map(|(_, known)| known)
}
