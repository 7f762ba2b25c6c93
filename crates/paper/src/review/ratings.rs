//! Ratings by the adjuvants that were in the tank, what comparing them tells, and trials.

use std::collections::HashSet;

use tankard_core::farm::{AdjuvantClass, Effect, Id, Trial};
use tankard_core::quantity::number::show;
use tankard_core::season::review::compare::{Comparison, Side, Verdict, compare};
use tankard_core::season::review::words::{
    band, by_pairs, by_sets, classes, effect, interval, looks, no_cause, too_few_pairs,
};
use tankard_core::season::review::{Outcomes, RatedRow, remarks};
use tankard_core::season::stats::Summary;
use tankard_core::season::trials::judge;
use tankard_core::t;
use tankard_core::words::capital;

use super::content::Shown;
use super::parts::{Dot, Part, Row, Tick, figure, notes, part, say, step, table, words};

pub(super) fn outcomes(shown: &Shown<'_>) -> Vec<Part> {
    let outcomes = &shown.review.outcomes;
    let open = remarks::outcomes(outcomes);
    if outcomes.rows.is_empty() {
        let none = say(remarks::not_rated());
        return std::iter::once(none).chain((!open.is_empty()).then(|| notes(open))).collect();
    }
    let mut parts = vec![
        Part::Strong { words: t!("paper-rated", count = outcomes.rated) },
        notes(std::iter::once(t!("paper-mean-with-the-interval-in-which").to_owned()).chain(open)),
    ];
    let mut compared = Told::default();
    for rows in outcomes.rows.chunk_by(|a, b| a.effect == b.effect) {
        let Some(first) = rows.first() else { continue };
        parts.push(ratings(&first.effect, rows));
        compared.all(shown, outcomes, &first.effect);
    }
    parts.extend(compared.parts());
    parts.push(say(no_cause()));
    parts
}

fn ratings(of: &Effect, rows: &[RatedRow]) -> Part {
    let dots = rows.iter().map(|row| {
        let (mean, n) = (show(row.ratings.mean, 1), row.ratings.n);
        let ends = row.ratings.interval.map_or_else(String::new, |ends| format!(" ({})", interval(ends)));
        Dot {
            name: capital(&format!("{}: {}", band(row.days), classes(&row.classes))),
            at: part(row.ratings.mean, 100.0),
            ends: row.ratings.interval.map(|(low, high)| (part(low, 100.0), part(high, 100.0))),
            words: format!("{mean}{ends}, n {n}"),
        }
    });
    let ticks = [0, 25, 50, 75, 100].map(|value| Tick { at: f64::from(value) / 100.0, words: value.to_string() });
    Part::Dots { title: t!("paper-per-cent", of = capital(&effect(of))), ticks: ticks.to_vec(), dots: dots.collect() }
}

/// Comparisons of an adjuvant class with none of it.
#[derive(Default)]
struct Told {
    dots: Vec<(f64, (f64, f64), String)>,
    statements: Vec<String>,
    looked_at: usize,
    too_few: usize,
}

impl Told {
    fn all(&mut self, shown: &Shown<'_>, outcomes: &Outcomes, of: &Effect) {
        let rated = outcomes.rows.iter().filter(|row| row.effect == *of);
        let mut known: Vec<AdjuvantClass> = rated.flat_map(|row| row.classes.iter().copied()).collect();
        known.sort();
        known.dedup();
        for class in known {
            let (one, other) = (Side::with(class), Side::without(class));
            for comparison in &compare(shown.picked, Some(of), &one, &other).comparisons {
                self.one(comparison, &one.name, &other.name);
            }
        }
    }

    fn one(&mut self, comparison: &Comparison, one: &str, other: &str) {
        self.looked_at += 1;
        let of = format!("{}, {}, {one}", capital(&effect(&comparison.effect)), band(comparison.days));
        let pairs = by_pairs(comparison, one, other);
        let sets = by_sets(comparison, one, other);
        let mut is_told = false;
        if let (false, Some(paired)) = (is_too_few(pairs.verdict), comparison.paired) {
            is_told = true;
            self.dots.push((paired.mean, paired.interval, t!("paper-of-pairs", of = of, n = paired.n)));
            self.statements.push(t!("paper-in-pairs-field-by-field-in", text = pairs.text));
        }
        if !is_too_few(sets.verdict) {
            is_told = true;
            if let Some(welch) = comparison.unpaired {
                let n = [comparison.one, comparison.other].map(|side| side.map_or(0, |side| side.n));
                let name = t!("paper-and-ratings-no-pairs", of = of, n = n[0], n2 = n[1]);
                self.dots.push((welch.difference, welch.interval, name));
            }
            self.statements.push(t!("paper-all-ratings-without-pairs", text = sets.text));
        }
        self.too_few += usize::from(!is_told);
    }

    fn parts(self) -> Vec<Part> {
        if self.looked_at == 0 {
            return vec![say(t!("paper-no-class-is-compared"))];
        }
        let title = t!("paper-ratings-with-an-adjuvant-class-less");
        let mut parts: Vec<Part> = differences(title, &self.dots).into_iter().collect();
        parts.extend(self.statements.into_iter().map(say));
        if self.too_few > 0 {
            parts.push(say(t!("paper-comparisons-have-too-few", n = self.too_few)));
        }
        parts.extend(looks(self.looked_at - self.too_few).map(|words| notes([words])));
        parts
    }
}

fn is_too_few(verdict: Verdict) -> bool {
    matches!(verdict, Verdict::TooFew { .. })
}

/// Differences with their intervals to both sides of a line.
fn differences(title: &str, all: &[(f64, (f64, f64), String)]) -> Option<Part> {
    if all.is_empty() {
        return None;
    }
    // Beyond 100 points there is no rating.
    let far = all.iter().map(|(_, (low, high), _)| low.abs().max(high.abs())).fold(5.0, f64::max).min(100.0);
    let at = |value: f64| part(value + far, 2.0 * far);
    let by = step(far);
    let by = if far / by > 3.0 { by * 2.0 } else { by };
    let ticks = (-3..=3).map(|count| f64::from(count) * by).filter(|value| value.abs() <= far);
    let ticks = ticks.map(|value| Tick { at: at(value), words: show(value, usize::from(by < 1.0)) }).collect();
    let dots = all.iter().map(|(value, (low, high), name)| Dot {
        name: name.clone(),
        at: at(*value),
        ends: Some((at(*low), at(*high))),
        words: format!("{} ({})", show(*value, 1), interval((*low, *high))),
    });
    Some(Part::Dots { title: title.to_owned(), ticks, dots: dots.collect() })
}

pub(super) fn trials(shown: &Shown<'_>) -> Vec<Part> {
    let picked: HashSet<&Id> = shown.picked.ids().collect();
    let of_time = |trial: &&Trial| {
        trial.pairs.iter().any(|(one, other)| picked.contains(&one.record) || picked.contains(&other.record))
    };
    let trials: Vec<&Trial> = shown.farm.trials.values().filter(of_time).collect();
    if trials.is_empty() {
        return vec![say(t!("paper-no-trial-in-what-is-chosen"))];
    }
    let mut parts: Vec<Part> = trials.into_iter().flat_map(|trial| a_trial(shown, trial)).collect();
    parts.push(say(no_cause()));
    parts
}

fn a_trial(shown: &Shown<'_>, trial: &Trial) -> Vec<Part> {
    let judged = judge(shown.farm, trial);
    let mut parts = vec![
        Part::Strong { words: trial.name.clone() },
        say(t!("paper-one-against-other", one = trial.one, other = trial.other)),
    ];
    if judged.comparisons.is_empty() {
        parts.push(say(t!("paper-no-pair-is-rated")));
    }
    let dots: Vec<_> = judged
        .comparisons
        .iter()
        .filter_map(|comparison| {
            let paired = comparison.paired.filter(|_| !is_too_few(comparison.by_pairs))?;
            let of = format!("{}, {}", capital(&effect(&comparison.effect)), band(comparison.days));
            Some((paired.mean, paired.interval, t!("paper-of-pairs", of = of, n = paired.n)))
        })
        .collect();
    let title = t!("paper-less-per-cent-points-right-of", one = trial.one, other = trial.other);
    parts.extend(differences(&title, &dots));
    let told = judged.comparisons.iter().filter(|of| !is_too_few(of.by_pairs) && of.paired.is_some());
    parts.extend(told.map(|of| say(format!("{}.", by_pairs(of, &trial.one, &trial.other).text))));
    parts.extend(too_few_pairs(judged.comparisons.iter()).map(|words| say(format!("{words}."))));
    if !judged.comparisons.is_empty() {
        parts.push(pairs(trial, &judged.comparisons));
    }
    let open = judged.open.into_iter().chain(looks(judged.comparisons.len()));
    parts.push(notes(open));
    parts
}

/// Each comparison with its pairs below it.
fn pairs(trial: &Trial, comparisons: &[Comparison]) -> Part {
    let mean = |side: Option<Summary>| side.map_or_else(String::new, |side| show(side.mean, 1));
    let rows = comparisons.iter().map(|of| {
        let each = of
            .pairs
            .iter()
            .map(|pair| t!("paper-and", name = pair.name, show = show(pair.one, 1), show2 = show(pair.other, 1)));
        let cells = vec![
            capital(&effect(&of.effect)),
            band(of.days),
            of.pairs.len().to_string(),
            mean(of.one),
            mean(of.other),
            of.paired.map_or_else(|| t!("paper-one-pair").to_owned(), |paired| show(paired.mean, 1)),
        ];
        Row { under: each.collect::<Vec<_>>().join("; "), ..Row::of(cells) }
    });
    let columns = vec![
        words(t!("paper-column-rated"), 1.4),
        words(t!("paper-column-days"), 1.2),
        figure(t!("paper-column-pairs")),
        figure(t!("paper-one-side")),
        figure(t!("paper-other-side")),
        figure(t!("paper-column-difference")),
    ];
    let title = t!("paper-the-pairs-mean-ratings-in-per", one = trial.one, other = trial.other);
    table(&title, columns, rows)
}
