//! Planned against applied.

use egui::Ui;
use tankard_core::finding::Subject;
use tankard_core::language::days::short_date;
use tankard_core::season::review::figures::{self, whole};
use tankard_core::season::review::words::bar;
use tankard_core::season::review::{BARS, Errors, remarks};
use tankard_core::t;

use super::table::{self, Column};
use super::{Shown, beside, notes, record, sheet};
use crate::parts::chart::{self, Chart};

pub(super) fn show(ui: &mut Ui, shown: &Shown<'_>) -> Option<Subject> {
    let (planned, figures) = (shown.pages.planned(), shown.figures);
    let all = [
        (t!("season-log-amounts-over-ground"), t!("season-log-head-uses"), &planned.rate),
        (t!("season-log-ground"), t!("season-log-head-records"), &planned.area),
        (t!("season-log-spray-volume"), t!("season-log-head-records"), &planned.volume),
    ];
    notes(ui, remarks::planned(planned));
    if all.iter().all(|(.., errors)| errors.is_none()) {
        ui.label(format!("{}.", remarks::no_plan()));
    } else {
        let draw = |ui: &mut Ui, (name, unit, errors): &(&str, &'static str, &Option<Errors>)| {
            if let Some(errors) = errors {
                distribution(ui, name, unit, errors);
            }
        };
        let [rate, area, volume] = &all;
        beside(ui, |ui| draw(ui, rate), |ui| draw(ui, area));
        if planned.volume.is_some() {
            beside(ui, |ui| draw(ui, volume), |ui| numbers(ui, &all));
        } else {
            numbers(ui, &all);
        }
    }
    let records = shown.pages.records;
    sheet(ui, t!("season-log-left-over"), |ui| {
        ui.label(remarks::left(planned, records, figures));
    });
    let mut led = None;
    if !planned.worst.is_empty() {
        sheet(ui, t!("season-log-the-largest-errors-of-amounts-over"), |ui| {
            let columns = [
                Column::Words(t!("season-log-head-record"), 1.6),
                Column::Words(t!("season-log-head-product"), 1.6),
                Column::Figure(t!("season-log-head-error"), 90.0),
            ];
            let clicked =
                table::show(ui, t!("season-log-the-largest-errors"), &columns, planned.worst.len(), true, |at| {
                    planned.worst.get(at).map_or_else(Vec::new, |worst| {
                        vec![
                            format!("{}, {}", short_date(worst.date), worst.name),
                            worst.product.clone(),
                            figures::error(worst.error),
                        ]
                    })
                });
            led = clicked.and_then(|at| planned.worst.get(at)).map(|worst| record(&worst.record));
            notes(ui, [t!("season-log-a-click-leads-to-the-record").to_owned()]);
        });
    }
    led
}

fn distribution(ui: &mut Ui, name: &str, unit: &str, errors: &Errors) {
    sheet(ui, &t!("season-log-how-often-so-far-off-per", name = name), |ui| {
        let columns: Vec<_> = errors
            .bars
            .iter()
            .enumerate()
            .map(|(at, count)| chart::Column {
                name: bar(at, "\n"),
                value: *count as f64,
                words: if *count > 0 { whole(*count) } else { String::new() },
            })
            .collect();
        let name = t!("season-log-errors-in-per-cent", name = name.to_lowercase());
        chart::columns(ui, Chart { name: &name, unit }, &columns);
    });
}

/// The same figures as a table: how often in each bar, and what they come to.
fn numbers(ui: &mut Ui, all: &[(&str, &str, &Option<Errors>); 3]) {
    sheet(ui, t!("season-log-errors-in-figures"), |ui| {
        let told: Vec<(&str, &Errors)> =
            all.iter().filter_map(|(name, _, errors)| Some((*name, errors.as_ref()?))).collect();
        let columns = [
            Column::Words(t!("season-log-head-error"), 1.0),
            Column::Figure(t!("season-log-head-amounts"), 80.0),
            Column::Figure(t!("season-log-head-ground"), 80.0),
            Column::Figure(t!("season-log-head-volume"), 80.0),
        ];
        let of = |take: &dyn Fn(&Errors) -> String| -> Vec<String> {
            all.iter()
                .map(|(.., errors)| errors.as_ref().map_or_else(|| t!("season-log-head-none").to_owned(), take))
                .collect()
        };
        let mut rows: Vec<(String, Vec<String>)> = vec![
            (t!("season-log-how-many").to_owned(), of(&|errors| whole(errors.n))),
            (t!("season-log-head-mean").to_owned(), of(&|errors| figures::error(errors.mean))),
            (t!("season-log-head-median").to_owned(), of(&|errors| figures::error(errors.median))),
            (t!("season-log-most-too-little").to_owned(), of(&|errors| figures::error(errors.least))),
            (t!("season-log-most-too-much").to_owned(), of(&|errors| figures::error(errors.most))),
        ];
        for at in 0..=BARS.len() {
            let count = |errors: &Errors| errors.bars.get(at).copied().unwrap_or_default();
            if told.iter().any(|(_, errors)| count(errors) > 0) {
                rows.push((format!("{} %", bar(at, " ")), of(&|errors| whole(count(errors)))));
            }
        }
        table::show(ui, t!("season-log-errors-in-figures"), &columns, rows.len(), false, |at| {
            rows.get(at).map_or_else(Vec::new, |(name, figures)| {
                std::iter::once(name.clone()).chain(figures.iter().cloned()).collect()
            })
        });
    });
}
