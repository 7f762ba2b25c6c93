//! What is seldom typed: for whom it was sprayed, and against which weeds.

use egui::Ui;
use tankard_core::farm::{Customer, Record};

use super::Page;
use super::rows::{box_width, folded, names, pair, row, with_before};
use crate::parts::boxes;

/// The weeds that it was meant for.
pub(super) fn weeds(ui: &mut Ui, page: &Page<'_>, record: &mut Record) {
    let summary = if record.weeds.is_empty() { "not typed".to_owned() } else { record.weeds.join(", ") };
    folded(ui, page.fold("weeds"), "Weeds", &summary, |ui| {
        let width = ui.available_width();
        names(ui, "Weeds, apart by commas", &mut record.weeds, width, "waterhemp, velvetleaf");
    });
}

/// For whom it was sprayed, where that is not the farm itself.
pub(super) fn customer(ui: &mut Ui, page: &Page<'_>, record: &mut Record) {
    let name = record.customer.as_ref().map(|customer| customer.name.trim().to_owned()).unwrap_or_default();
    let summary = match &record.customer {
        None => "none".to_owned(),
        Some(Customer { copied: Some(day), .. }) => format!("{name} · copy handed over on {day}"),
        Some(_) => name,
    };
    folded(ui, page.fold("customer"), "Customer", &summary, |ui| {
        let mut customer = record.customer.clone().unwrap_or_default();
        let before = customer.name.clone();
        pair(
            ui,
            ("Name", |ui| {
                with_before(ui, "Customer", &mut customer.name, box_width(ui), "a neighbour", &page.used.customers);
            }),
            ("Telephone", |ui| boxes::text(ui, "Telephone of the customer", &mut customer.phone, box_width(ui))),
        );
        row(ui, "Address", |ui| {
            let width = ui.available_width();
            boxes::text(ui, "Address of the customer", &mut customer.address, width);
        });
        pair(
            ui,
            ("Copy given", |ui| {
                boxes::date_hinted(ui, "Copy handed over on", &mut customer.copied, box_width(ui), "not yet");
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
        record.customer = (customer != Customer::default()).then_some(customer);
    });
}

fn known<'a>(page: &Page<'a>, name: &str) -> Option<&'a Customer> {
    let all = page.farm.records.values().filter_map(|record| Some((record.date, record.customer.as_ref()?)));
    all.filter(|(_, known)| known.name == name && !name.is_empty())
        .max_by_key(|(date, _)| *date)
        .map(|(_, known)| known)
}
