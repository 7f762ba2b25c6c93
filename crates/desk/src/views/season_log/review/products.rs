//! Products and actives.

use egui::Ui;
use tankard_core::quantity::ActiveBasis;
use tankard_core::quantity::rate::show_active;
use tankard_core::season::review::figures::{self, whole};
use tankard_core::season::review::{ActiveRow, Actives, ProductRow, Products, remarks, words};
use tankard_core::t;

use super::table::{self, Column};
use super::{MOST, Shown, beside, no_product, notes, of_all, sheet};
use crate::parts::boxes;
use crate::parts::chart::Chart;
use crate::parts::chart_rows::{self, Lying};

/// What is chosen on the page.
#[derive(Debug, Default)]
pub(super) struct State {
    /// The active that is shown field by field: name and basis.
    active: Option<(String, ActiveBasis)>,
}

pub(super) fn show(ui: &mut Ui, state: &mut State, shown: &Shown<'_>) {
    let (products, actives) = (shown.pages.products(), shown.pages.actives());
    if products.rows.is_empty() {
        ui.label(no_product());
        return;
    }
    beside(
        ui,
        |ui| sheet(ui, t!("season-log-products-by-ground-treated"), |ui| products_chart(ui, shown, products)),
        |ui| {
            if !actives.rows.is_empty() {
                sheet(ui, t!("season-log-actives-over-the-ground-of-the"), |ui| actives_chart(ui, shown, actives));
            }
        },
    );
    sheet(ui, t!("season-log-products"), |ui| products_table(ui, shown, products));
    if !actives.rows.is_empty() {
        sheet(ui, t!("season-log-actives"), |ui| actives_table(ui, shown, actives));
        sheet(ui, t!("season-log-an-active-field-by-field"), |ui| by_field(ui, state, shown, actives));
    }
}

fn products_chart(ui: &mut Ui, shown: &Shown<'_>, products: &Products) {
    let mut most: Vec<&ProductRow> = products.rows.iter().collect();
    most.sort_by_key(|row| std::cmp::Reverse(row.treated));
    most.truncate(MOST);
    let bars: Vec<Lying> = most
        .iter()
        .map(|row| Lying {
            name: row.name.clone(),
            value: shown.figures.area(row.treated),
            words: shown.figures.show(row.treated),
            partial: false,
        })
        .collect();
    chart_rows::lying(
        ui,
        Chart { name: t!("season-log-ground-treated-by-product"), unit: shown.figures.ground() },
        &bars,
    );
    notes(ui, of_all(bars.len(), products.rows.len(), t!("season-log-most-ground")));
}

fn actives_chart(ui: &mut Ui, shown: &Shown<'_>, actives: &Actives) {
    let mut most: Vec<&ActiveRow> = actives.rows.iter().filter(|row| row.on_farm.is_some()).collect();
    most.sort_by_key(|row| std::cmp::Reverse(row.on_farm));
    most.truncate(MOST);
    let bars: Vec<Lying> = most
        .iter()
        .filter_map(|row| {
            let rate = row.on_farm?;
            Some(Lying {
                name: row.name.clone(),
                value: shown.figures.active_over(rate),
                words: show_active(rate, row.basis, shown.figures.units),
                partial: false,
            })
        })
        .collect();
    chart_rows::lying(
        ui,
        Chart { name: t!("season-log-actives-over-the-ground-of-the"), unit: shown.figures.active() },
        &bars,
    );
    let ground = shown.figures.show(actives.ground);
    notes(ui, [t!("season-log-over-of-ground-that-can-be", ground = ground)]);
    notes(ui, of_all(bars.len(), actives.rows.len(), t!("season-log-most")));
}

fn products_table(ui: &mut Ui, shown: &Shown<'_>, products: &Products) {
    let figures = shown.figures;
    let columns = [
        Column::Words(t!("season-log-head-product"), 2.0),
        Column::Words(t!("season-log-head-kind"), 1.0),
        Column::Figure(t!("season-log-went-out"), 150.0),
        Column::Figure(t!("season-log-head-ground"), 90.0),
        Column::Figure(t!("season-log-head-records"), 60.0),
        Column::Figure(t!("season-log-head-cost"), 140.0),
    ];
    table::show(ui, t!("season-log-products"), &columns, products.rows.len(), false, |at| {
        products.rows.get(at).map_or_else(Vec::new, |row| {
            vec![
                row.name.clone(),
                row.role().to_owned(),
                figures.amounts(&row.amounts),
                figures.show(row.treated),
                whole(row.times),
                figures.spent(row.spent),
            ]
        })
    });
    notes(ui, remarks::products(products));
}

fn actives_table(ui: &mut Ui, shown: &Shown<'_>, actives: &Actives) {
    let columns = [
        Column::Words(t!("season-log-head-active"), 2.0),
        Column::Figure(t!("season-log-went-out"), 120.0),
        Column::Figure(t!("season-log-over-the-farms-ground"), 160.0),
        Column::Figure(t!("season-log-head-records"), 60.0),
    ];
    let units = shown.figures.units;
    table::show(ui, t!("season-log-actives"), &columns, actives.rows.len(), false, |at| {
        actives.rows.get(at).map_or_else(Vec::new, |row| {
            vec![
                row.name.clone(),
                figures::mass(shown.figures, row.mass, row.basis),
                row.on_farm
                    .map_or_else(|| t!("season-log-not-known").to_owned(), |rate| show_active(rate, row.basis, units)),
                whole(row.times),
            ]
        })
    });
    notes(ui, remarks::actives(actives));
}

fn by_field(ui: &mut Ui, state: &mut State, shown: &Shown<'_>, actives: &Actives) {
    let all: Vec<(String, ActiveBasis)> = actives.rows.iter().map(|row| (row.name.clone(), row.basis)).collect();
    let chosen = state.active.clone().filter(|active| all.contains(active));
    let Some(mut active) = chosen.or_else(|| all.first().cloned()) else { return };
    let say = |(name, basis): &(String, ActiveBasis)| format!("{name}, {}", basis.short());
    boxes::choice(ui, t!("season-log-active"), &mut active, &all, say, 240.0);
    let Some(row) = actives.rows.iter().find(|row| (&row.name, row.basis) == (&active.0, active.1)) else { return };
    state.active = Some(active);
    let columns = [
        Column::Words(t!("season-log-head-field"), 2.0),
        Column::Figure(t!("season-log-went-out"), 120.0),
        Column::Figure(t!("season-log-over-the-field"), 160.0),
        Column::Figure(t!("season-log-head-records"), 60.0),
    ];
    let units = shown.figures.units;
    let name = t!("season-log-by-field", name = row.name);
    table::show(ui, &name, &columns, row.fields.len(), false, |at| {
        row.fields.get(at).map_or_else(Vec::new, |on| {
            vec![
                words::field(&on.field, &on.name).to_owned(),
                figures::mass(shown.figures, on.mass, row.basis),
                on.over_ground.map_or_else(|| words::gone().to_owned(), |rate| show_active(rate, row.basis, units)),
                whole(on.times),
            ]
        })
    });
}
