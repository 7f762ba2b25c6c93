//! Ratings by the adjuvants that were in the tank, and two choices of adjuvants compared.

use std::rc::Rc;

use egui::Ui;
use tankard_core::farm::{AdjuvantClass, Effect};
use tankard_core::quantity::number::show as figure;
use tankard_core::season::review::compare::{Band, Compared, Comparison, Of, Side};
use tankard_core::season::review::figures::whole;
use tankard_core::season::review::words::{band, by_pairs, by_sets, classes, effect, interval, looks, no_cause};
use tankard_core::season::review::{Outcomes, RatedRow, remarks};
use tankard_core::t;
use tankard_core::words::capital;

use super::kept::Kept;
use super::table::{self, Column};
use super::{Shown, notes, sheet};
use crate::look;
use crate::parts::boxes;
use crate::parts::chart::Chart;
use crate::parts::chart_rows::{self, Dot};

/// What is chosen on the page.
#[derive(Debug, Default)]
pub(super) struct State {
    effect: Option<Effect>,
    days: Option<Band>,
    one: Option<Choice>,
    other: Option<Choice>,
}

/// One of two choices that are compared.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Choice {
    With(AdjuvantClass),
    Without(AdjuvantClass),
    Nothing,
}

impl Choice {
    fn side(self) -> Side {
        match self {
            Self::With(class) => Side::with(class),
            Self::Without(class) => Side::without(class),
            Self::Nothing => Side { name: t!("season-log-no-adjuvant").to_owned(), of: Of::Exactly(Vec::new()) },
        }
    }
}

pub(super) fn show(ui: &mut Ui, state: &mut State, kept: &mut Kept, shown: &Shown<'_>) {
    let outcomes = shown.pages.outcomes();
    let open = remarks::outcomes(outcomes);
    let mut effects: Vec<&Effect> = outcomes.rows.iter().map(|row| &row.effect).collect();
    effects.dedup();
    let Some(first) = effects.first() else {
        ui.label(remarks::not_rated());
        notes(ui, open);
        return;
    };
    let mut chosen =
        state.effect.clone().filter(|effect| effects.contains(&effect)).unwrap_or_else(|| (*first).clone());
    let all: Vec<Effect> = effects.iter().map(|effect| (*effect).clone()).collect();
    ui.horizontal_wrapped(|ui| {
        boxes::choice(ui, t!("season-log-rated"), &mut chosen, &all, |of| capital(&effect(of)), 220.0);
        let mut bands: Vec<Band> = rows(outcomes, &chosen).map(|row| row.days).collect();
        bands.sort();
        bands.dedup();
        let most = |days: &Band| {
            rows(outcomes, &chosen).filter(|row| row.days == *days).map(|row| row.ratings.n).sum::<usize>()
        };
        // To begin with, the days of which most is known.
        let known = state.days.filter(|days| bands.contains(days));
        if let Some(mut days) = known.or_else(|| bands.iter().copied().max_by_key(most)) {
            boxes::choice(ui, t!("season-log-days"), &mut days, &bands, |days| capital(&band(*days)), 170.0);
            state.days = Some(days);
        }
        ui.label(look::soft(ui, t!("season-log-count-rated", count = outcomes.rated)));
    });
    state.effect = Some(chosen.clone());
    if let Some(days) = state.days {
        sheet(
            ui,
            &t!("season-log-by-adjuvants-in-the-tank", chosen = capital(&effect(&chosen)), days = band(days)),
            |ui| {
                let of: Vec<&RatedRow> = rows(outcomes, &chosen).filter(|row| row.days == days).collect();
                ratings_chart(ui, &chosen, days, &of);
            },
        );
    }
    sheet(ui, &t!("season-log-in-figures", chosen = capital(&effect(&chosen))), |ui| {
        let of: Vec<&RatedRow> = rows(outcomes, &chosen).collect();
        ratings_table(ui, &of);
        notes(ui, open);
    });
    let compared = compared(ui, state, kept, outcomes, &chosen);
    ui.add(egui::Label::new(no_cause()).wrap());
    if let Some(compared) = compared {
        pairs_table(ui, &compared.comparisons);
    }
}

fn rows<'a>(outcomes: &'a Outcomes, effect: &'a Effect) -> impl Iterator<Item = &'a RatedRow> {
    outcomes.rows.iter().filter(move |row| row.effect == *effect)
}

fn ratings_chart(ui: &mut Ui, of: &Effect, days: Band, rows: &[&RatedRow]) {
    let dots: Vec<Dot> = rows
        .iter()
        .map(|row| {
            let n = row.ratings.n;
            let words = match row.ratings.interval {
                Some(ends) => format!("{} ({}), n {n}", figure(row.ratings.mean, 1), interval(ends)),
                None => format!("{}, n {n}", figure(row.ratings.mean, 1)),
            };
            Dot {
                name: capital(&classes(&row.classes)),
                value: row.ratings.mean,
                interval: row.ratings.interval,
                words,
            }
        })
        .collect();
    let name = t!("season-log-by-adjuvants", of = capital(&effect(of)), days = band(days));
    chart_rows::dots(ui, Chart { name: &name, unit: "%" }, (0.0, 100.0), &dots);
    let means = match of {
        Effect::Control(_) => t!("season-log-100-is-all-dead"),
        Effect::Injury(_) => t!("season-log-0-is-no-injury"),
    };
    notes(ui, [t!("season-log-mean-with-the-interval-in-which", means = means)]);
}

fn ratings_table(ui: &mut Ui, rows: &[&RatedRow]) {
    let columns = [
        Column::Words(t!("season-log-head-adjuvants"), 2.0),
        Column::Words(t!("season-log-head-days"), 1.0),
        Column::Figure("n", 40.0),
        Column::Figure(t!("season-log-head-mean"), 60.0),
        Column::Figure(t!("season-log-head-median"), 60.0),
        Column::Figure(t!("season-log-95-interval"), 120.0),
    ];
    table::show(ui, t!("season-log-ratings"), &columns, rows.len(), false, |at| {
        rows.get(at).map_or_else(Vec::new, |row| {
            vec![
                capital(&classes(&row.classes)),
                band(row.days),
                whole(row.ratings.n),
                format!("{} %", figure(row.ratings.mean, 1)),
                format!("{} %", figure(row.ratings.median, 1)),
                row.ratings.interval.map_or_else(|| t!("season-log-one-rating").to_owned(), interval),
            ]
        })
    });
}

fn compared(ui: &mut Ui, state: &mut State, kept: &mut Kept, outcomes: &Outcomes, of: &Effect) -> Option<Rc<Compared>> {
    let mut known: Vec<AdjuvantClass> = outcomes.rows.iter().flat_map(|row| row.classes.iter().copied()).collect();
    known.sort();
    known.dedup();
    let first = known.first().copied()?;
    let mut found = None;
    let ones: Vec<Choice> = known.iter().copied().map(Choice::With).collect();
    let mut one = state.one.filter(|one| ones.contains(one)).unwrap_or(Choice::With(first));
    sheet(ui, t!("season-log-two-choices-compared"), |ui| {
        let mut other = Choice::Nothing;
        ui.horizontal_wrapped(|ui| {
            boxes::choice(ui, t!("season-log-compare"), &mut one, &ones, |choice| choice.side().name, 220.0);
            ui.label(look::soft(ui, t!("season-log-head-with")));
            let without = if let Choice::With(class) = one { Choice::Without(class) } else { Choice::Nothing };
            let others: Vec<Choice> = [without, Choice::Nothing]
                .into_iter()
                .chain(ones.iter().copied().filter(|choice| *choice != one))
                .collect();
            other = state.other.filter(|other| others.contains(other)).unwrap_or(without);
            boxes::choice(ui, t!("season-log-compare-with"), &mut other, &others, |choice| choice.side().name, 220.0);
        });
        (state.one, state.other) = (Some(one), Some(other));
        let (one, other) = (one.side(), other.side());
        let compared = kept.compared(of, &one, &other);
        if compared.in_both > 0 {
            notes(ui, [t!("season-log-both-and-on-neither-side", count = compared.in_both)]);
        }
        if compared.comparisons.is_empty() {
            ui.label(t!("season-log-nothing-was-rated-with-both-in"));
            return;
        }
        differences_chart(ui, &compared.comparisons, &one.name, &other.name);
        differences_table(ui, &compared.comparisons);
        for comparison in &compared.comparisons {
            for (kind, statement) in [
                (t!("season-log-in-pairs-field-by-field-in"), by_pairs(comparison, &one.name, &other.name)),
                (t!("season-log-all-ratings-without-pairs"), by_sets(comparison, &one.name, &other.name)),
            ] {
                ui.label(look::soft(ui, kind));
                ui.add(egui::Label::new(format!("{}.", statement.text)).wrap());
            }
        }
        if let Some(looks) = looks(compared.comparisons.len()) {
            ui.add(egui::Label::new(look::soft(ui, format!("{looks}."))).wrap());
        }
        found = Some(compared);
    });
    found
}

fn differences_chart(ui: &mut Ui, comparisons: &[Comparison], one: &str, other: &str) {
    let dots: Vec<Dot> = comparisons
        .iter()
        .flat_map(|comparison| {
            let paired = comparison
                .paired
                .map(|paired| (paired.mean, paired.interval, t!("season-log-count-pairs", count = paired.n)));
            let sets = comparison.unpaired.map(|welch| {
                let n = [comparison.one, comparison.other].map(|side| side.map_or(0, |side| side.n));
                (welch.difference, welch.interval, t!("season-log-and-records-no-pairs", one = n[0], other = n[1]))
            });
            [paired, sets].into_iter().flatten().map(|(value, ends, n)| Dot {
                name: capital(&format!("{}, {n}", band(comparison.days))),
                value,
                interval: Some(ends),
                words: format!("{} ({})", figure(value, 1), interval(ends)),
            })
        })
        .collect();
    if dots.is_empty() {
        return;
    }
    let far =
        dots.iter().filter_map(|dot| dot.interval.map(|(low, high)| low.abs().max(high.abs()))).fold(5.0, f64::max);
    // Beyond 100 points there is no rating.
    let far = (far * 1.05).min(100.0);
    let name = t!("season-log-less", one = capital(one), other = other);
    ui.label(look::soft(ui, t!("season-log-in-per-cent-points-right-of", name = name, one = one)));
    chart_rows::dots(ui, Chart { name: &name, unit: t!("season-log-per-cent-points") }, (-far, far), &dots);
}

fn differences_table(ui: &mut Ui, comparisons: &[Comparison]) {
    let columns = [
        Column::Words(t!("season-log-head-days"), 1.4),
        Column::Figure(t!("season-log-head-pairs"), 50.0),
        Column::Figure(t!("season-log-difference-in-pairs"), 130.0),
        Column::Figure(t!("season-log-95-interval"), 120.0),
        Column::Figure(t!("season-log-head-ratings"), 80.0),
        Column::Figure(t!("season-log-difference-of-all"), 120.0),
        Column::Figure(t!("season-log-95-interval"), 120.0),
    ];
    let none = || t!("season-log-not-told").to_owned();
    table::show(ui, t!("season-log-differences"), &columns, comparisons.len(), false, |at| {
        comparisons.get(at).map_or_else(Vec::new, |of| {
            let n = [of.one, of.other].map(|side| side.map_or(0, |side| side.n));
            vec![
                band(of.days),
                whole(of.pairs.len()),
                of.paired.map_or_else(none, |paired| figure(paired.mean, 1)),
                of.paired.map_or_else(none, |paired| interval(paired.interval)),
                t!("season-log-and", one = n[0], other = n[1]),
                of.unpaired.map_or_else(none, |welch| figure(welch.difference, 1)),
                of.unpaired.map_or_else(none, |welch| interval(welch.interval)),
            ]
        })
    });
}

fn pairs_table(ui: &mut Ui, comparisons: &[Comparison]) {
    let pairs: Vec<_> = comparisons.iter().flat_map(|of| of.pairs.iter().map(move |pair| (of.days, pair))).collect();
    if pairs.is_empty() {
        return;
    }
    sheet(ui, t!("season-log-the-pairs-mean-ratings-in-per"), |ui| {
        let columns = [
            Column::Words(t!("season-log-field-and-season"), 1.4),
            Column::Words(t!("season-log-head-days"), 1.0),
            Column::Figure(t!("season-log-head-one"), 60.0),
            Column::Figure(t!("season-log-head-other"), 60.0),
            Column::Figure(t!("season-log-head-difference"), 80.0),
        ];
        table::show(ui, t!("season-log-pairs"), &columns, pairs.len(), false, |at| {
            pairs.get(at).map_or_else(Vec::new, |(days, pair)| {
                vec![
                    pair.name.clone(),
                    band(*days),
                    figure(pair.one, 1),
                    figure(pair.other, 1),
                    figure(pair.one - pair.other, 1),
                ]
            })
        });
    });
}
