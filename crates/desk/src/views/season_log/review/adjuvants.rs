//! Adjuvants and conditioners by class.

use egui::Ui;
use tankard_core::season::review::figures::whole;
use tankard_core::season::review::{ClassRow, remarks, words};
use tankard_core::t;
use tankard_core::words::capital;

use super::table::{self, Column};
use super::{Shown, notes, sheet};
use crate::parts::chart::Chart;
use crate::parts::chart_rows::{self, Lying};

pub(super) fn show(ui: &mut Ui, shown: &Shown<'_>) {
    let (adjuvants, figures) = (shown.pages.adjuvants(), shown.figures);
    if adjuvants.rows.is_empty() {
        ui.label(remarks::no_adjuvant(adjuvants, figures));
        return;
    }
    sheet(ui, t!("season-log-classes-by-ground-treated"), |ui| {
        let mut most: Vec<&ClassRow> = adjuvants.rows.iter().collect();
        most.sort_by_key(|row| std::cmp::Reverse(row.treated));
        let mut bars: Vec<Lying> = most
            .iter()
            .map(|row| Lying {
                name: capital(words::class(row.class)),
                value: figures.area(row.treated),
                words: figures.show(row.treated),
                partial: false,
            })
            .collect();
        bars.push(Lying {
            name: t!("season-log-without-any").to_owned(),
            value: figures.area(adjuvants.without),
            words: figures.show(adjuvants.without),
            partial: true,
        });
        chart_rows::lying(
            ui,
            Chart { name: t!("season-log-ground-treated-by-adjuvant-class"), unit: figures.ground() },
            &bars,
        );
        notes(ui, [t!("season-log-hatched-with-none", several_classes = remarks::several_classes())]);
    });
    sheet(ui, t!("season-log-use-and-cost"), |ui| {
        let columns = [
            Column::Words(t!("season-log-head-class"), 1.2),
            Column::Words(t!("season-log-head-products"), 1.8),
            Column::Figure(t!("season-log-went-out"), 150.0),
            Column::Figure(t!("season-log-head-ground"), 90.0),
            Column::Figure(t!("season-log-head-records"), 60.0),
            Column::Figure(t!("season-log-head-cost"), 140.0),
            Column::Figure(t!("season-log-over-ground"), 130.0),
        ];
        table::show(ui, t!("season-log-use-and-cost"), &columns, adjuvants.rows.len(), false, |at| {
            adjuvants.rows.get(at).map_or_else(Vec::new, |row| {
                vec![
                    capital(words::class(row.class)),
                    row.products.join(", "),
                    figures.amounts(&row.amounts),
                    figures.show(row.treated),
                    whole(row.times),
                    figures.spent(row.spent),
                    figures.per_ground(row.spent, row.treated),
                ]
            })
        });
        notes(ui, remarks::adjuvants(adjuvants, figures));
    });
}
