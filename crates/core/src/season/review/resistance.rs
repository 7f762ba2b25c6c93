//! Resistance groups by field and season, and where one came again too soon.
//!
//! A group counts within its kind of product and once for a record; a product of two groups counts in both. Parts of one
//! application are one. That a group came again is said, not that a weed will resist it.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use jiff::civil::Date;
use serde::Deserialize;

use super::{Picked, slice};
use crate::farm::{Id, ProductKind};
use crate::finding::Basis;
use crate::language;

/// Resistance groups by field and season.
#[derive(Clone, Debug, PartialEq)]
pub struct Resistance {
    /// By field, in the order in which the records name them first.
    pub fields: Vec<FieldGroups>,
    /// Products of which no group is known, with how often they went on a field; they are counted in no group.
    pub groupless: Vec<(String, usize)>,
}

/// The groups that a field had.
#[derive(Clone, Debug, PartialEq)]
pub struct FieldGroups {
    /// The field.
    pub field: Id,
    /// Its name.
    pub name: String,
    /// By kind, then by group.
    pub rows: Vec<GroupRow>,
}

/// A group on a field.
#[derive(Clone, Debug, PartialEq)]
pub struct GroupRow {
    /// The kind of product.
    pub kind: ProductKind,
    /// Its group by the global numbers, such as "9" or "4A".
    pub group: String,
    /// How often in each season of the time picked in which it came.
    pub years: Vec<(i16, usize)>,
    /// Where it came again too soon.
    pub repeats: Vec<Repeat>,
}

impl GroupRow {
    /// Whether a day belongs to what came again too soon.
    pub fn came_again_on(&self, day: Date) -> bool {
        self.repeats.iter().any(|repeat| match repeat.again {
            Again::InSeason { year, .. } => year == day.year(),
            Again::InYears { from, to } => (from..=to).contains(&day.year()),
            Again::InARow { from, to, .. } => (from..=to).contains(&day),
        })
    }

    /// Whether it came again too soon in a season, or in a run that the season belongs to.
    pub fn came_again(&self, of: i16) -> bool {
        self.repeats.iter().any(|repeat| match repeat.again {
            Again::InSeason { year, .. } => year == of,
            Again::InYears { from, to } => (from..=to).contains(&of),
            Again::InARow { from, to, .. } => (from.year()..=to.year()).contains(&of),
        })
    }
}

/// A group that came again too soon.
#[derive(Clone, Debug, PartialEq)]
pub struct Repeat {
    /// How.
    pub again: Again,
    /// More often than so many times, seasons or applications in a row.
    pub most: usize,
    /// Who says so.
    pub basis: Basis,
}

/// How a group came again. What lies before the time picked counts where it runs into it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Again {
    /// Several times in a season.
    InSeason {
        /// Which.
        year: i16,
        /// How often.
        times: usize,
    },
    /// In seasons one after the other.
    InYears {
        /// The first.
        from: i16,
        /// The last.
        to: i16,
    },
    /// In applications of its kind of product one after the other, none without it between them.
    InARow {
        /// The day of the first.
        from: Date,
        /// The day of the last.
        to: Date,
        /// How many.
        times: usize,
    },
}

/// A row of `assets/rotation.csv`.
#[derive(Debug, Deserialize)]
struct Rule {
    kind: String,
    groups: String,
    again: String,
    most: usize,
    source: String,
}

fn rules() -> &'static [Rule] {
    static RULES: LazyLock<Vec<Rule>> =
        LazyLock::new(|| crate::table::read(include_str!("../../../../../assets/rotation.csv")).unwrap_or_default());
    &RULES
}

/// The first rule of a kind that names the group, or all of them.
fn rule(kind: ProductKind, group: &str, again: &str) -> Option<&'static Rule> {
    let names = |rule: &Rule| rule.groups == "*" || rule.groups.split(';').any(|named| named == group);
    rules().iter().find(|rule| rule.kind == kind.word() && rule.again == again && names(rule))
}

/// The page, of what is picked.
pub fn page(picked: &Picked<'_>) -> Resistance {
    let index = picked.index;
    let taken = picked.taken();
    let mut groupless = vec![0; index.products.len()];
    for (_, ground, _) in picked.ground() {
        for used in index.uses_of(ground) {
            if let Some(count) = groupless.get_mut(used.product as usize) {
                *count += usize::from(used.groupless);
            }
        }
    }
    let fields = index.fields.iter().zip(picked.on_fields()).filter(|(field, on)| *on && !field.id.is_empty());
    let fields = fields.map(|(field, _)| FieldGroups {
        field: field.id.clone(),
        name: field.name.clone(),
        rows: rows(picked, &field.ground, &taken),
    });
    Resistance { fields: fields.filter(|field| !field.rows.is_empty()).collect(), groupless: index.counted(groupless) }
}

/// What happened with a group on a field.
#[derive(Default)]
struct Story {
    /// How often in each season, and how often of these in what is picked.
    years: BTreeMap<i16, (usize, usize)>,
    /// Runs of applications of its kind: first day, last day, how many, the number of the last among those of the kind.
    runs: Vec<(Date, Date, usize, usize)>,
}

/// The applications with a kind of product, as they come.
#[derive(Default)]
struct OfKind {
    all: Vec<u32>,
    highest: u32,
}

impl OfKind {
    /// The number of an application among them, from 1.
    fn number(&mut self, application: u32) -> usize {
        // Mostly it is a new one, and has a higher mark than all before.
        let may_be_known = application <= self.highest;
        let known = if may_be_known { self.all.iter().rposition(|one| *one == application) } else { None };
        self.highest = self.highest.max(application);
        known.unwrap_or_else(|| {
            self.all.push(application);
            self.all.len() - 1
        }) + 1
    }
}

fn rows(picked: &Picked<'_>, ground: &[u32], taken: &[bool]) -> Vec<GroupRow> {
    let index = picked.index;
    let mut stories: BTreeMap<u32, Story> = BTreeMap::new();
    let mut of_kind: Vec<(ProductKind, OfKind)> =
        ProductKind::ALL.into_iter().map(|kind| (kind, OfKind::default())).collect();
    for at in ground {
        let Some(here) = index.ground.get(*at as usize) else { continue };
        let Some(entry) = index.entries.get(here.record as usize).filter(|entry| entry.date <= picked.choice.to) else {
            continue;
        };
        let is_taken = taken.get(*at as usize).copied().unwrap_or(false);
        let groups = slice(&index.in_groups, &entry.groups);
        for group in groups {
            let Some((kind, _)) = index.groups.get_index(*group as usize) else { continue };
            let Some((_, of_kind)) = of_kind.iter_mut().find(|(known, _)| known == kind) else { continue };
            let count = of_kind.number(here.application);
            let story = stories.entry(*group).or_default();
            // Another part of an application is not another time.
            if story.runs.last().is_some_and(|(.., last)| *last >= count) {
                continue;
            }
            let (times, picked) = story.years.entry(entry.date.year()).or_default();
            *times += 1;
            *picked += usize::from(is_taken);
            match story.runs.last_mut().filter(|(.., last)| last + 1 == count) {
                Some((_, to, times, last)) => (*to, *times, *last) = (entry.date, *times + 1, count),
                None => story.runs.push((entry.date, entry.date, 1, count)),
            }
        }
    }
    let mut rows: Vec<GroupRow> = stories
        .into_iter()
        .filter_map(|(group, story)| {
            let (kind, name) = index.groups.get_index(group as usize)?;
            let repeats = repeats(*kind, name, &story, picked.choice.from);
            let years: Vec<_> = story
                .years
                .into_iter()
                .filter(|(_, (_, picked))| *picked > 0)
                .map(|(year, (_, picked))| (year, picked))
                .collect();
            (!years.is_empty()).then(|| GroupRow { kind: *kind, group: name.to_uppercase(), years, repeats })
        })
        .collect();
    let number = |group: &str| {
        group.trim_end_matches(|letter: char| !letter.is_ascii_digit()).parse::<u32>().unwrap_or(u32::MAX)
    };
    let order = |row: &GroupRow| {
        (ProductKind::ALL.iter().position(|kind| *kind == row.kind), number(&row.group), row.group.clone())
    };
    rows.sort_by_cached_key(order);
    rows
}

fn repeats(kind: ProductKind, group: &str, story: &Story, from: Date) -> Vec<Repeat> {
    let mut repeats = Vec::new();
    let mut say = |rule: &Rule, again| {
        repeats.push(Repeat { again, most: rule.most, basis: Basis::of_source(language::row(&rule.source)) });
    };
    if let Some(rule) = rule(kind, group, "season") {
        for (year, (times, picked)) in &story.years {
            if *picked > 0 && *times > rule.most {
                say(rule, Again::InSeason { year: *year, times: *times });
            }
        }
    }
    if let Some(rule) = rule(kind, group, "years") {
        let mut run: Option<(i16, i16)> = None;
        for year in story.years.keys().copied().map(Some).chain([None]) {
            match (run, year) {
                (Some((first, last)), Some(year)) if last + 1 == year => run = Some((first, year)),
                (ended, next) => {
                    let long = ended.filter(|(first, last)| {
                        usize::from(first.abs_diff(*last)) + 1 > rule.most && *last >= from.year()
                    });
                    if let Some((first, last)) = long {
                        say(rule, Again::InYears { from: first, to: last });
                    }
                    run = next.map(|year| (year, year));
                }
            }
        }
    }
    if let Some(rule) = rule(kind, group, "row") {
        for (first, last, times, _) in &story.runs {
            if *times > rule.most && *last >= from {
                say(rule, Again::InARow { from: *first, to: *last, times: *times });
            }
        }
    }
    repeats
}

#[cfg(test)]
mod tests {
    use super::{ProductKind, rule, rules};

    #[test]
    fn every_rule_reads() {
        assert!(rules().len() >= 6);
        for rule in rules() {
            assert!(ProductKind::ALL.iter().any(|kind| kind.word() == rule.kind), "{}", rule.kind);
            assert!(["season", "years", "row"].contains(&rule.again.as_str()) && rule.most > 0, "{}", rule.again);
        }
        assert_eq!(rule(ProductKind::Fungicide, "11", "row").map(|rule| rule.most), Some(1));
        assert_eq!(rule(ProductKind::Fungicide, "3", "row").map(|rule| rule.most), Some(2));
        assert!(rule(ProductKind::GrowthRegulator, "3", "row").is_none());
    }
}
