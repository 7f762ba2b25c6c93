//! What the products cost.

use egui::Ui;
use tankard_core::season::review::figures::{self, whole};
use tankard_core::season::review::{Cost, CostRow, remarks, words};
use tankard_core::t;
use tankard_core::words::capital;

use super::table::{self, Column};
use super::{MOST, Shown, hatched_bars, no_product, notes, sheet};
use crate::look;
use crate::parts::boxes;
use crate::parts::chart::Chart;
use crate::parts::chart_rows::Lying;

/// By what it is told apart.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) enum By {
    #[default]
    Field,
    Crop,
    Kind,
    Class,
}

impl By {
    const ALL: [Self; 4] = [Self::Field, Self::Crop, Self::Kind, Self::Class];

    fn name(self) -> &'static str {
        match self {
            Self::Field => t!("season-log-head-field"),
            Self::Crop => t!("season-log-head-crop"),
            Self::Kind => t!("season-log-kind-of-product"),
            Self::Class => t!("season-log-adjuvant-class"),
        }
    }

    /// The rows of it, by name.
    fn rows(self, cost: &Cost) -> Vec<CostRow<String>> {
        fn named<K>(rows: &[CostRow<K>], name: impl Fn(&K) -> String) -> Vec<CostRow<String>> {
            let row = |row: &CostRow<K>| CostRow { of: name(&row.of), spent: row.spent, treated: row.treated };
            rows.iter().map(row).collect()
        }
        match self {
            Self::Field => named(&cost.fields, |(id, name)| words::field(id, name).to_owned()),
            Self::Crop => named(&cost.crops, |crop| words::crop(crop).to_owned()),
            Self::Kind => named(&cost.kinds, |kind| capital(words::kind(*kind))),
            Self::Class => named(&cost.classes, |class| capital(class.name())),
        }
    }
}

pub(super) fn show(ui: &mut Ui, by: &mut By, shown: &Shown<'_>) {
    let (cost, figures) = (shown.pages.cost(), shown.figures);
    if cost.kinds.is_empty() {
        ui.label(no_product());
        return;
    }
    ui.label(look::strong(capital(&remarks::cost_in_all(cost, figures))));
    notes(ui, remarks::cost(cost));
    ui.horizontal(|ui| {
        ui.label(look::soft(ui, t!("season-log-head-by")));
        boxes::choice(ui, t!("season-log-cost-by"), by, &By::ALL, |by| by.name().to_owned(), 150.0);
    });
    let rows = by.rows(cost);
    if rows.is_empty() {
        ui.label(t!("season-log-nothing-is-known-by", by = by.name()));
        return;
    }
    if rows.iter().any(|row| figures::length(row.spent.money) > 0.0) {
        sheet(ui, &t!("season-log-cost-by-by", by = by.name()), |ui| {
            let bars: Vec<Lying> = rows
                .iter()
                .take(MOST)
                .map(|row| Lying {
                    name: row.of.clone(),
                    value: figures::length(row.spent.money),
                    words: figures.spent(row.spent),
                    partial: row.spent.without_price > 0,
                })
                .collect();
            let name = t!("season-log-cost-by-by", by = by.name());
            let chart = Chart { name: &name, unit: &figures.currency };
            hatched_bars(ui, chart, &bars, rows.len(), t!("season-log-the-highest-cost"), remarks::hatched_cost());
        });
    }
    sheet(ui, &t!("season-log-cost-by-in-figures", by = by.name()), |ui| {
        let columns = [
            Column::Words(by.name(), 1.0),
            Column::Figure(t!("season-log-head-cost"), 150.0),
            Column::Figure(t!("season-log-over-ground"), 130.0),
            Column::Figure(t!("season-log-head-ground"), 100.0),
            Column::Figure(t!("season-log-uses-without-a-price"), 130.0),
        ];
        table::show(ui, t!("season-log-cost"), &columns, rows.len(), false, |at| {
            rows.get(at).map_or_else(Vec::new, |row| {
                vec![
                    row.of.clone(),
                    figures.spent(row.spent),
                    figures.per_ground(row.spent, row.treated),
                    figures.show(row.treated),
                    whole(row.spent.without_price),
                ]
            })
        });
    });
}
