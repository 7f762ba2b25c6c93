//! Planned against applied.

use egui::Ui;
use tankard_core::finding::Subject;
use tankard_core::season::review::words::count;
use tankard_core::season::review::{BARS, Errors};

use super::figures::whole;
use super::table::{self, Column};
use super::{Shown, beside, figures, notes, record, sheet};
use crate::parts::chart::{self, Chart};

/// What a bar of errors holds: "-5 to -2"; `gap` stands after the first word.
fn ends(at: usize, gap: &str) -> String {
    let end = |at: usize| BARS.get(at).copied().unwrap_or_default();
    let signed = |end: i32| if end > 0 { format!("+{end}") } else { end.to_string() };
    match at {
        0 => format!("below{gap}{}", end(0)),
        at if at == BARS.len() => format!("{}{gap}and more", signed(end(at - 1))),
        at => format!("{}{gap}to {}", signed(end(at - 1)), signed(end(at))),
    }
}

pub(super) fn show(ui: &mut Ui, shown: &Shown<'_>) -> Option<Subject> {
    let (planned, figures) = (shown.pages.planned(), shown.figures);
    let all = [
        ("Amounts over ground", "uses", &planned.rate),
        ("Ground", "records", &planned.area),
        ("Spray volume", "records", &planned.volume),
    ];
    notes(
        ui,
        [
            Some("An error is what was done over what was planned: +2 % is two hundredths too much".to_owned()),
            (planned.without_plan > 0)
                .then(|| format!("{} nothing of a plan", count(planned.without_plan, "record keeps", "records keep"))),
            (planned.lines_without > 0).then(|| {
                let uses = count(planned.lines_without, "use of a product does", "uses of products do");
                format!("{uses} not keep what was planned, or on what ground")
            }),
        ],
    );
    if all.iter().all(|(.., errors)| errors.is_none()) {
        ui.label("No record keeps what was planned. Records made from a plan do; it can be typed on the page of a record too.");
    } else {
        let draw = |ui: &mut Ui, (name, unit, errors): &(&str, &'static str, &Option<Errors>)| {
            if let Some(errors) = errors {
                distribution(ui, name, unit, errors);
            }
        };
        let [rate, area, volume] = &all;
        beside(ui, &mut (), |ui, ()| draw(ui, rate), |ui, ()| draw(ui, area));
        if planned.volume.is_some() {
            beside(ui, &mut (), |ui, ()| draw(ui, volume), |ui, ()| numbers(ui, &all));
        } else {
            numbers(ui, &all);
        }
    }
    let told = planned.left_told;
    let of = shown.pages.records;
    sheet(ui, "Left over", |ui| {
        ui.label(if told == 0 {
            "No record says what was left over.".to_owned()
        } else {
            format!(
                "{} in all; {told} of {} say what was left over.",
                figures.show(planned.left),
                count(of, "record", "records")
            )
        });
    });
    let mut led = None;
    if !planned.worst.is_empty() {
        sheet(ui, "The largest errors of amounts over ground", |ui| {
            let columns = [Column::Words("record", 1.6), Column::Words("product", 1.6), Column::Figure("error", 90.0)];
            let clicked = table::show(ui, "The largest errors", &columns, planned.worst.len(), true, |at| {
                planned.worst.get(at).map_or_else(Vec::new, |worst| {
                    vec![format!("{}, {}", worst.date, worst.name), worst.product.clone(), figures::error(worst.error)]
                })
            });
            led = clicked.and_then(|at| planned.worst.get(at)).map(|worst| record(&worst.record));
            notes(ui, [Some("A click leads to the record".to_owned())]);
        });
    }
    led
}

fn distribution(ui: &mut Ui, name: &str, unit: &str, errors: &Errors) {
    sheet(ui, &format!("{name}: how often so far off, per cent"), |ui| {
        let columns: Vec<_> = errors
            .bars
            .iter()
            .enumerate()
            .map(|(at, count)| chart::Column {
                name: ends(at, "\n"),
                value: *count as f64,
                words: if *count > 0 { whole(*count) } else { String::new() },
            })
            .collect();
        let name = format!("Errors in per cent: {}", name.to_lowercase());
        chart::columns(ui, Chart { name: &name, unit }, &columns);
    });
}

/// The same figures as a table: how often in each bar, and what they come to.
fn numbers(ui: &mut Ui, all: &[(&str, &str, &Option<Errors>); 3]) {
    sheet(ui, "Errors in figures", |ui| {
        let told: Vec<(&str, &Errors)> =
            all.iter().filter_map(|(name, _, errors)| Some((*name, errors.as_ref()?))).collect();
        let columns = [
            Column::Words("error", 1.0),
            Column::Figure("amounts", 80.0),
            Column::Figure("ground", 80.0),
            Column::Figure("volume", 80.0),
        ];
        let of = |take: &dyn Fn(&Errors) -> String| -> Vec<String> {
            all.iter().map(|(.., errors)| errors.as_ref().map_or_else(|| "none".to_owned(), take)).collect()
        };
        let mut rows: Vec<(String, Vec<String>)> = vec![
            ("how many".to_owned(), of(&|errors| whole(errors.n))),
            ("mean".to_owned(), of(&|errors| figures::error(errors.mean))),
            ("median".to_owned(), of(&|errors| figures::error(errors.median))),
            ("most too little".to_owned(), of(&|errors| figures::error(errors.least))),
            ("most too much".to_owned(), of(&|errors| figures::error(errors.most))),
        ];
        for at in 0..=BARS.len() {
            let count = |errors: &Errors| errors.bars.get(at).copied().unwrap_or_default();
            if told.iter().any(|(_, errors)| count(errors) > 0) {
                rows.push((format!("{} %", ends(at, " ")), of(&|errors| whole(count(errors)))));
            }
        }
        table::show(ui, "Errors in figures", &columns, rows.len(), false, |at| {
            rows.get(at).map_or_else(Vec::new, |(name, figures)| {
                std::iter::once(name.clone()).chain(figures.iter().cloned()).collect()
            })
        });
    });
}

#[cfg(test)]
mod tests {
    use super::{BARS, ends};

    #[test]
    fn bars_are_named_by_their_ends() {
        let names: Vec<String> = (0..=BARS.len()).map(|at| ends(at, " ")).collect();
        assert_eq!(names[0], "below -20");
        assert_eq!(names[4], "-2 to +2");
        assert_eq!(names[8], "+20 and more");
    }
}
