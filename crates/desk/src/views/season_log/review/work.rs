//! Water by source, hours by rig.

use egui::Ui;
use tankard_core::quantity::number;
use tankard_core::season::review::figures::whole;
use tankard_core::season::review::{RigRow, remarks, words};
use tankard_core::t;

use super::table::{self, Column};
use super::{MOST, Shown, beside, hatched_bars, notes, sheet};
use crate::parts::chart::Chart;
use crate::parts::chart_rows::Lying;

/// A sum in words, of which so many of all records are not known.
fn told(sum: String, unknown: usize, of: usize) -> String {
    match unknown {
        0 => sum,
        unknown if unknown == of => t!("season-log-not-known").to_owned(),
        _ => t!("season-log-at-least", sum = sum),
    }
}

fn hours(row: &RigRow) -> String {
    format!("{} h", number::show(row.time.to_hours(), 1))
}

pub(super) fn show(ui: &mut Ui, shown: &Shown<'_>) {
    let (work, figures) = (shown.pages.work(), shown.figures);
    beside(
        ui,
        |ui| {
            sheet(ui, t!("season-log-spray-by-water"), |ui| {
                let bars: Vec<Lying> = work
                    .waters
                    .iter()
                    .take(MOST)
                    .map(|row| Lying {
                        name: words::water(&row.name).to_owned(),
                        value: figures.volume(row.spray),
                        words: told(figures.show(row.spray), row.without_volume, row.times),
                        partial: row.without_volume > 0,
                    })
                    .collect();
                let chart = Chart { name: t!("season-log-spray-by-water"), unit: figures.liquid() };
                hatched_bars(
                    ui,
                    chart,
                    &bars,
                    work.waters.len(),
                    t!("season-log-most-spray"),
                    remarks::hatched_spray(),
                );
            });
        },
        |ui| {
            sheet(ui, t!("season-log-hours-by-rig-from-start-to"), |ui| {
                let bars: Vec<Lying> = work
                    .rigs
                    .iter()
                    .take(MOST)
                    .map(|row| Lying {
                        name: words::rig(&row.name).to_owned(),
                        value: row.time.to_hours(),
                        words: told(hours(row), row.without_times, row.times),
                        partial: row.without_times > 0,
                    })
                    .collect();
                let chart = Chart { name: t!("season-log-hours-by-rig"), unit: "h" };
                hatched_bars(ui, chart, &bars, work.rigs.len(), t!("season-log-most-ground"), remarks::hatched_hours());
            });
        },
    );
    sheet(ui, t!("season-log-water"), |ui| {
        let columns = [
            Column::Words("water", 1.0),
            Column::Figure("spray", 140.0),
            Column::Figure(t!("season-log-water-in-it"), 140.0),
            Column::Figure("records", 70.0),
            Column::Figure(t!("season-log-without-a-volume"), 110.0),
        ];
        table::show(ui, t!("season-log-water"), &columns, work.waters.len(), false, |at| {
            work.waters.get(at).map_or_else(Vec::new, |row| {
                vec![
                    words::water(&row.name).to_owned(),
                    told(figures.show(row.spray), row.without_volume, row.times),
                    told(figures.show(row.water), row.without_volume, row.times),
                    whole(row.times),
                    whole(row.without_volume),
                ]
            })
        });
        notes(ui, [remarks::water().to_owned()]);
    });
    sheet(ui, t!("season-log-hours"), |ui| {
        let columns = [
            Column::Words("rig", 1.0),
            Column::Figure("time", 120.0),
            Column::Figure(t!("season-log-ground-in-it"), 110.0),
            Column::Figure(t!("season-log-in-an-hour"), 100.0),
            Column::Figure(t!("season-log-ground-in-all"), 110.0),
            Column::Figure("records", 70.0),
            Column::Figure(t!("season-log-without-times"), 90.0),
        ];
        table::show(ui, t!("season-log-hours"), &columns, work.rigs.len(), false, |at| {
            work.rigs.get(at).map_or_else(Vec::new, |row| {
                vec![
                    words::rig(&row.name).to_owned(),
                    told(hours(row), row.without_times, row.times),
                    figures.show(row.timed),
                    row.area_per_hour().map_or_else(
                        || t!("season-log-not-known").to_owned(),
                        |area| format!("{}/h", figures.show(area)),
                    ),
                    figures.show(row.treated),
                    whole(row.times),
                    whole(row.without_times),
                ]
            })
        });
        notes(ui, [remarks::hours().to_owned()]);
    });
}
