//! What a water comes to for a mix.
//!
//! Publications spread widely, so a verdict names the lowest and the highest limit that is printed for the mix and never
//! one alone. There is one verdict for each factor, however many rows and actives speak of it.

use super::thresholds::{Factor, Hit, Measure, Mixed, Threshold, push, table};
use crate::farm::Water;
use crate::finding::{Basis, Finding, Level, Subject};
use crate::label::listed;
use crate::language::{self, t};
use crate::quantity::Units;

/// What a water comes to for a mix, in one factor.
#[derive(Clone, Debug)]
pub struct Verdict {
    /// What about the water.
    pub factor: Factor,
    /// How much it weighs.
    pub level: Level,
    /// What the analysis states.
    pub found: Measure,
    /// The actives, or products, that it concerns.
    pub concerns: Vec<String>,
    /// Whether one of them may be an ester, which it does not concern.
    pub unclear: bool,
    /// The row with the limit that is passed first.
    pub first: &'static Threshold,
    /// The row with the limit that is passed last, or not yet; the same where publications agree.
    pub last: &'static Threshold,
    /// The rows that are passed and have a word to say, the heaviest first.
    pub passed: Vec<&'static Threshold>,
}

/// The verdicts on a water for a mix, at most one a factor.
pub fn verdicts(water: &Water, mix: &[Mixed<'_>]) -> Vec<Verdict> {
    Factor::ALL.into_iter().filter_map(|factor| verdict(factor, water, mix)).collect()
}

fn verdict(factor: Factor, water: &Water, mix: &[Mixed<'_>]) -> Option<Verdict> {
    let found = factor.of(water)?;
    let mut rows: Vec<(&'static Threshold, Hit)> = table()
        .iter()
        .filter(|row| row.factor == factor)
        .map(|row| (row, row.hit(mix)))
        .filter(|(_, hit)| !hit.names.is_empty())
        .collect();
    rows.sort_by(|(a, _), (b, _)| a.limit.size().total_cmp(&b.limit.size()));
    let passed: Vec<&(&'static Threshold, Hit)> = rows.iter().filter(|(row, _)| row.is_passed(found)).collect();
    let (lead, _) = passed.first()?;
    let first = *lead;
    let last = rows.iter().rev().find(|(row, _)| row.same_side(first)).map_or(first, |(row, _)| *row);
    let mut concerns = Vec::new();
    for name in passed.iter().flat_map(|(_, hit)| &hit.names) {
        push(&mut concerns, name);
    }
    let mut speaking: Vec<&'static Threshold> =
        passed.iter().map(|(row, _)| *row).filter(|row| !row.says.is_empty()).collect();
    speaking.sort_by_key(|row| std::cmp::Reverse(row.level));
    Some(Verdict {
        factor,
        level: passed.iter().map(|(row, _)| row.eased(mix)).max()?,
        found,
        concerns,
        unclear: passed.iter().any(|(_, hit)| hit.unclear),
        first,
        last,
        passed: speaking,
    })
}

/// The actives of a mix that a factor concerns, whatever the water holds.
pub fn concerned(factor: Factor, mix: &[Mixed<'_>]) -> Vec<String> {
    let mut names = Vec::new();
    for name in table().iter().filter(|row| row.factor == factor).flat_map(|row| row.hit(mix).names) {
        push(&mut names, &name);
    }
    names
}

impl Verdict {
    /// As a finding on a water.
    pub(crate) fn finding(&self, about: Subject, water: &Water, units: Units) -> Finding {
        let (name, found, concerns) = (&water.name, self.found.show(units), listed(&self.concerns));
        let (first, last) = (self.first.show_limit(units), self.last.show_limit(units));
        let spread = self.last.limit.size() > self.first.limit.size();
        let text = match self.factor {
            Factor::Hardness if spread => t!(
                "water-is-hard-which-may-tie-up",
                name = name,
                found = found,
                concerns = concerns,
                first = first,
                last = last
            ),
            Factor::Hardness => t!(
                "water-name-is-found-hard-which-may-tie-up-concerns",
                name = name,
                found = found,
                concerns = concerns,
                first = first
            ),
            Factor::Bicarbonate if spread => t!(
                "water-holds-of-bicarbonate-which-may-weaken",
                name = name,
                found = found,
                concerns = concerns,
                first = first,
                last = last
            ),
            Factor::Bicarbonate => {
                t!(
                    "water-name-holds-found-of-bicarbonate-which-may-weaken",
                    name = name,
                    found = found,
                    concerns = concerns,
                    first = first
                )
            }
            Factor::Iron => {
                t!(
                    "water-holds-of-iron-which-may-weaken",
                    name = name,
                    found = found,
                    concerns = concerns,
                    first = first
                )
            }
            Factor::Acidity => {
                t!("water-has-which-may-not-suit-the", name = name, found = found, concerns = concerns, first = first)
            }
            Factor::Clarity => t!("water-is-and-soil-in-the-water", name = name, found = found, concerns = concerns),
            Factor::Conductivity => {
                t!("water-has-a-conductivity-of-so-it", name = name, found = found, first = first)
            }
        };
        let mut says: Vec<&str> = Vec::new();
        for row in &self.passed {
            let sentence = language::row(&row.says);
            if !says.contains(&sentence) {
                says.push(sentence);
            }
        }
        let mut hint = says.join(". ");
        if !hint.is_empty() {
            hint.push('.');
        }
        if self.unclear {
            hint = [hint.as_str(), t!("water-whether-it-is-an-amine-or")].join(" ");
        }
        let mut sources: Vec<&str> = Vec::new();
        for row in [self.first, self.last].into_iter().chain(self.passed.iter().copied()) {
            if !sources.contains(&row.source.as_str()) {
                sources.push(&row.source);
            }
        }
        Finding::new(self.level, about, text, Basis::Published(sources.join("; "))).hint(hint.trim_start())
    }
}
