//! The sheets beside a page.

use egui::{Align, Label, Layout, RichText, Ui};
use tankard_core::farm::{Farm, Id, Pass};
use tankard_core::finding::{Level, Subject};
use tankard_core::quantity::{Amount, Area, Quantity};
use tankard_core::t;

use super::{Bench, stock};
use crate::look;
use crate::parts::{boxes, findings, mark};
use crate::report::needs::round;

/// A sheet with a heading.
pub(super) fn sheet(ui: &mut Ui, heading: &str, add: impl FnOnce(&mut Ui)) {
    look::sheet(ui).show(ui, |ui| {
        ui.set_width(ui.available_width());
        ui.spacing_mut().item_spacing.y = 3.0;
        ui.label(look::heading(heading).color(look::colours(ui).soft));
        add(ui);
    });
    ui.add_space(12.0);
}

/// What there is to doubt of what is chosen, with what was probably meant.
pub(super) fn doubts(bench: &Bench, ui: &mut Ui) {
    if !bench.doubts.is_empty() {
        sheet(ui, t!("shed-perhaps-typed-wrongly"), |ui| {
            // They speak of this page, so that a click leads nowhere else.
            if let Some(led) = findings::show(ui, bench.doubts) {
                led.want(ui.ctx());
            }
        });
    }
}

/// What it is at the left, how much at the right.
pub(super) fn pair(ui: &mut Ui, what: impl Into<RichText>, value: impl Into<RichText>) {
    let (what, value) = (what.into(), value.into());
    ui.horizontal(|ui| {
        ui.set_width(ui.available_width());
        ui.with_layout(Layout::right_to_left(Align::Min), |ui| {
            ui.label(value);
            ui.with_layout(Layout::left_to_right(Align::Min), |ui| {
                ui.add(Label::new(what).wrap());
            });
        });
    });
}

/// A day in words.
pub(super) fn day(date: jiff::civil::Date) -> String {
    tankard_core::language::days::short_date(date)
}

/// The passes that use a thing; a click leads to one.
pub(super) fn planned(
    bench: &mut Bench,
    ui: &mut Ui,
    nothing: &str,
    passes: &[(Id, Pass)],
    amount: impl Fn(&Id) -> Option<String>,
) {
    let log = bench.desk.document.log();
    sheet(ui, t!("shed-where-it-is-planned"), |ui| {
        let open: Vec<&(Id, Pass)> = passes.iter().filter(|(id, _)| !log.is_recorded(bench.farm(), id)).collect();
        if open.is_empty() {
            boxes::say(ui, nothing);
        }
        ui.spacing_mut().interact_size.y = 16.0;
        ui.spacing_mut().button_padding = egui::Vec2::ZERO;
        for (id, pass) in open {
            let name = super::named(&pass.name);
            let (amount, day) = (amount(id), day(pass.date));
            let led = ui
                .horizontal(|ui| {
                    ui.set_width(ui.available_width());
                    ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
                        match &amount {
                            Some(amount) => ui.label(amount),
                            None => ui.label(look::soft(ui, &day)),
                        };
                        ui.with_layout(Layout::left_to_right(Align::Center), |ui| {
                            let text = look::act(ui, &name);
                            boxes::lead(ui, text).clicked()
                        })
                        .inner
                    })
                    .inner
                })
                .inner;
            if amount.is_some() {
                ui.add_space(-2.0);
                boxes::say(ui, &day);
                ui.add_space(4.0);
            }
            if led {
                bench.desk.lead_to(&Subject::Pass(id.clone()));
            }
        }
    });
}

/// What is on hand of a product, and what the planned passes leave of it.
pub(super) fn on_hand(bench: &Bench, ui: &mut Ui, id: &str) {
    let units = bench.farm().units;
    let (Some(product), Some(held)) = (bench.farm().products.get(id), bench.stock.get(id)) else { return };
    let account = bench.stock.accounts.get(id);
    sheet(ui, t!("shed-on-hand-d01"), |ui| {
        for stock::Row { what, amount, .. } in account.iter().flat_map(|account| stock::rows(account, units)) {
            pair(ui, what, amount);
        }
        match held.on_hand {
            None if product.containers.is_empty() => boxes::say(ui, t!("shed-no-container-is-typed-so-nothing")),
            None if !held.typed => {
                boxes::say(ui, t!("shed-nothing-is-counted-yet-where-there"));
            }
            None => {
                boxes::say(ui, t!("shed-its-containers-are-counted-by-volume"));
            }
            Some(on_hand) => {
                pair(ui, look::strong(t!("shed-in-all")), look::strong(on_hand.show(units)));
            }
        }
        if let Some(account) = account.filter(|_| held.typed) {
            if stock::is_doubtful(account) {
                mark::line(ui, Level::Check, t!("shed-something-in-its-account-is-in"));
            }
            boxes::say(ui, &stock::since_in_short(account, units));
        }
        if let Some(planned) = held.planned.filter(|planned| !planned.is_zero()) {
            pair(ui, t!("shed-planned-passes-take"), round(planned, units));
        }
        if let Some(short) = held.short {
            short_of(ui, short, units);
        } else if let Some(left) = held.left.filter(|_| held.planned.is_some_and(|planned| !planned.is_zero())) {
            pair(ui, t!("shed-left-then"), round(left, units));
        }
    });
}

/// "short by 12 gal", with its mark.
pub(super) fn short_of(ui: &mut Ui, short: Amount, units: tankard_core::quantity::Units) {
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 2.0;
        mark::show(ui, Level::Stop);
        let text = t!("shed-short-by-round", round = round(short, units));
        ui.label(look::strong(text).color(look::colours(ui).stop));
    });
}

/// One year of a product.
#[derive(Clone, Debug)]
pub(super) struct Year {
    of: i16,
    passes: usize,
    fields: Vec<Id>,
    area: Area,
    amount: Option<Amount>,
}

fn years(farm: &Farm, id: &str) -> Vec<Year> {
    let mut years: Vec<Year> = Vec::new();
    for record in farm.records.values() {
        let Some(line) = record.lines.iter().find(|line| line.product == id) else { continue };
        let year = record.date.year();
        let at = years.iter().position(|known| known.of == year).unwrap_or_else(|| {
            years.push(Year { of: year, passes: 0, fields: Vec::new(), area: Area::ZERO, amount: None });
            years.len() - 1
        });
        let Some(known) = years.get_mut(at) else { continue };
        // Amounts of two kinds do not add up; the first kind is kept rather than a wrong sum.
        known.amount = match known.amount {
            None => Some(line.amount.value()),
            Some(before) => before.plus(line.amount.value()).or(Some(before)),
        };
        known.passes += 1;
        known.area = known.area + record.area();
        for field in record.fields.keys() {
            if !known.fields.contains(field) {
                known.fields.push(field.clone());
            }
        }
    }
    years.sort_by_key(|year| std::cmp::Reverse(year.of));
    years
}

/// Where a product went, year by year.
pub(super) fn went(bench: &mut Bench, ui: &mut Ui, id: &str) {
    let units = bench.farm().units;
    let made_for = (bench.desk.document.revision(), id.to_owned());
    if bench.state.went.as_ref().is_none_or(|(known, _)| *known != made_for) {
        bench.state.went = Some((made_for, years(bench.farm(), id)));
    }
    let years = bench.state.went.as_ref().map_or(&[][..], |(_, years)| years.as_slice());
    sheet(ui, t!("shed-where-it-went"), |ui| {
        if years.is_empty() {
            boxes::say(ui, t!("shed-no-record-holds-it-yet"));
        }
        for year in years {
            let amount = year.amount.map_or_else(String::new, |amount| round(amount, units));
            pair(ui, format!("{}, {}", year.of, year.area.show(units)), amount);
            ui.add_space(-2.0);
            boxes::say(
                ui,
                &format!(
                    "{}, {}",
                    t!("shed-count-passes", passes = year.passes),
                    t!("shed-count-fields", fields = year.fields.len())
                ),
            );
            ui.add_space(4.0);
        }
    });
}
