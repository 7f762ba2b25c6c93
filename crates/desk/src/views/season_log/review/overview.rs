//! Passes and ground over time.

use egui::Ui;
use tankard_core::quantity::number;
use tankard_core::season::review::figures::whole;
use tankard_core::season::review::words::{distinct, month, month_names};
use tankard_core::season::review::{Month, Passes, remarks};
use tankard_core::t;

use super::table::{self, Column};
use super::{Shown, beside, notes, sheet};
use crate::look;
use crate::parts::chart::{self, Chart, Series};

/// How many lines a chart has at most: more could not be told apart.
const LINES: usize = 12;

pub(super) fn show(ui: &mut Ui, shown: &Shown<'_>) {
    let (passes, figures) = (shown.pages.passes(), shown.figures);
    ui.label(look::strong(t!("season-log-treated", count = passes.passes, figures = figures.show(passes.treated))));
    notes(ui, remarks::passes(passes, figures));
    let Some(newest) = passes.years.last().map(|year| year.year) else { return };
    let several = passes.years.len() > 1;
    if several {
        sheet(ui, t!("season-log-ground-treated-season-by-season"), |ui| {
            let columns: Vec<_> = passes
                .years
                .iter()
                .map(|year| chart::Column {
                    name: year.year.to_string(),
                    value: figures.area(year.treated),
                    words: number::show(figures.area(year.treated), 0),
                })
                .collect();
            chart::columns(
                ui,
                Chart { name: t!("season-log-ground-treated-by-season"), unit: figures.ground() },
                &columns,
            );
        });
    }
    beside(
        ui,
        |ui| {
            sheet(ui, &t!("season-log-ground-treated-by-month", newest = newest), |ui| {
                by_month(ui, shown, passes, newest);
            });
        },
        |ui| sheet(ui, t!("season-log-ground-treated-since-january"), |ui| so_far(ui, shown, passes)),
    );
    sheet(ui, t!("season-log-by-season"), |ui| {
        let columns = [
            Column::Words(t!("season-log-head-season"), 1.0),
            Column::Figure(t!("season-log-head-passes"), 70.0),
            Column::Figure(t!("season-log-head-treated"), 110.0),
            Column::Figure(t!("season-log-at-least-once"), 170.0),
        ];
        table::show(ui, t!("season-log-by-season"), &columns, passes.years.len(), false, |at| {
            passes.years.get(at).map_or_else(Vec::new, |year| {
                vec![
                    year.year.to_string(),
                    whole(year.passes),
                    figures.show(year.treated),
                    distinct(year.distinct, figures.units),
                ]
            })
        });
    });
    let worked: Vec<&Month> = passes.months.iter().filter(|month| month.passes > 0).collect();
    sheet(ui, t!("season-log-by-month"), |ui| {
        let columns = [
            Column::Words(t!("season-log-head-month"), 1.0),
            Column::Figure(t!("season-log-head-passes"), 70.0),
            Column::Figure(t!("season-log-head-treated"), 110.0),
            Column::Figure(t!("season-log-since-january"), 170.0),
        ];
        table::show(ui, t!("season-log-by-month"), &columns, worked.len(), false, |at| {
            worked.get(at).map_or_else(Vec::new, |of| {
                vec![
                    format!("{} {}", month(of.month), of.year),
                    whole(of.passes),
                    figures.show(of.treated),
                    figures.show(of.so_far),
                ]
            })
        });
    });
}

fn by_month(ui: &mut Ui, shown: &Shown<'_>, passes: &Passes, year: i16) {
    let figures = shown.figures;
    let of_year = passes.months.iter().filter(|month| month.year == year);
    let columns: Vec<_> = of_year
        .map(|of| chart::Column {
            name: month(of.month).to_owned(),
            value: figures.area(of.treated),
            words: if of.passes > 0 { number::show(figures.area(of.treated), 0) } else { String::new() },
        })
        .collect();
    let name = t!("season-log-ground-treated-by-month-in", year = year);
    chart::columns(ui, Chart { name: &name, unit: figures.ground() }, &columns);
}

fn so_far(ui: &mut Ui, shown: &Shown<'_>, passes: &Passes) {
    let figures = shown.figures;
    let newest = passes.years.last().map(|year| year.year);
    let skipped = passes.years.len().saturating_sub(LINES);
    let lines: Vec<Series> = passes
        .years
        .iter()
        .skip(skipped)
        .map(|year| {
            let months = passes.months.iter().filter(|month| month.year == year.year);
            // What is still to come of a season is not drawn: it ends with this month, or with the last one that was worked.
            let worked = months.clone().filter(|month| month.passes > 0).map(|month| month.month).max().unwrap_or(0);
            let now = if year.year == shown.this_year { shown.this_month } else { 0 };
            let known = |month: &&Month| year.year < shown.this_year || month.month <= worked.max(now);
            Series {
                name: year.year.to_string(),
                values: months.take_while(known).map(|month| figures.area(month.so_far)).collect(),
                first: Some(year.year) == newest,
            }
        })
        .collect();
    let name = t!("season-log-ground-treated-since-january-season-by");
    chart::lines(ui, Chart { name, unit: figures.ground() }, &month_names(), &lines, |value| figures.whole_area(value));
    if skipped > 0 {
        notes(ui, [t!("season-log-the-chart-has-the-newest-seasons", lines = LINES)]);
    }
}
