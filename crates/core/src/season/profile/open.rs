//! A record held against the profiles that the farm keeps to, and what is open of it.

use jiff::civil::Date;

use super::element::more;
use super::{Deadline, Due, Element, Lack, Place, Profile, Scope, asked, chosen, dates};
use crate::farm::{Farm, Id, OwnElement, Record};
use crate::finding::{Basis, Finding, Level, Subject};
use crate::language::t;
use crate::words::{all_of, any_of};

/// A record against one profile, or against what the farm itself asks for.
#[derive(Clone, Debug, PartialEq)]
pub struct Kept<'a> {
    /// For whom it is kept: the name of the profile, or who asked for it.
    pub name: &'a str,
    /// The profile; none for what the farm asks for.
    pub profile: Option<&'static str>,
    /// On what it rests.
    pub basis: Basis,
    /// The elements that are asked for.
    pub rows: Vec<Row<'a>>,
}

/// An element of a record.
#[derive(Clone, Debug, PartialEq)]
pub struct Row<'a> {
    /// Its key.
    pub key: &'a str,
    /// Its name in the words of the rule.
    pub name: &'a str,
    /// A word or two for it.
    pub short: &'a str,
    /// Where it is typed; what the farm asks for stands under its key.
    pub place: Option<Place>,
    /// By when it is due; none where that is not known.
    pub due: Option<Deadline>,
    /// On what it rests.
    pub basis: Basis,
    /// What the record holds of it, or what it lacks.
    pub held: Result<String, Lack>,
}

impl Row<'_> {
    /// What of it is open, in the words of the rule; none where it is there.
    pub fn lacks(&self) -> Option<String> {
        Some(match self.held.as_ref().err()? {
            Lack::Itself => self.name.to_owned(),
            Lack::Of(names) => t!("season-name-of-names", name = self.name, names = all_of(names)),
            Lack::NoField => t!("season-lacks-fields").to_owned(),
            Lack::NoProduct => t!("season-lacks-products").to_owned(),
        })
    }

    /// The same in a word or two.
    fn short(&self) -> Option<&str> {
        Some(match self.held.as_ref().err()? {
            Lack::NoField => t!("season-lacks-fields"),
            Lack::NoProduct => t!("season-lacks-products"),
            Lack::Itself | Lack::Of(_) => self.short,
        })
    }

    /// How much it weighs while it is open: from the day on which it is due, a person must look. Without such a day it is open
    /// from the application on.
    pub fn level(&self, applied: Date, today: Date) -> Level {
        let from = self.due.map_or(applied, |due| due.day);
        if today < from { Level::Note } else { Level::Check }
    }
}

/// The record against each profile that the farm chose and that speaks of it, or the plain one where none does; then against what the
/// farm itself asks for.
pub fn kept<'a>(farm: &'a Farm, record: &Record) -> Vec<Kept<'a>> {
    let speaking = |profile| of_profile(farm, record, profile);
    let mut all: Vec<Kept> = chosen(farm).into_iter().filter_map(speaking).collect();
    if all.is_empty() {
        all.extend(super::all().iter().take(1).filter_map(speaking));
    }
    for (key, own) in &farm.keeping.own {
        if !own.restricted_only || record.lines.iter().any(|line| asked::is_restricted(farm, line)) {
            let (row, name) = (of_farm(record, key, own), asked_by(own));
            match all.iter_mut().find(|kept| kept.profile.is_none() && kept.name == name) {
                Some(kept) => kept.rows.push(row),
                None => all.push(Kept { name, profile: None, basis: row.basis.clone(), rows: vec![row] }),
            }
        }
    }
    all
}

fn asked_by(own: &OwnElement) -> &str {
    match own.asked_by.trim() {
        "" => t!("season-this-farm"),
        name => name,
    }
}

pub(super) fn of_profile(farm: &Farm, record: &Record, profile: &'static Profile) -> Option<Kept<'static>> {
    if profile.until.is_some_and(|until| until < record.date) {
        return None;
    }
    let lines = profile.scope.lines(farm, record)?;
    let rows = profile.elements.iter().filter(|wanted| wanted.asked.holds(farm, record, &lines)).map(|wanted| Row {
        key: wanted.element.key(),
        name: wanted.name(),
        short: wanted.element.short(),
        place: Some(wanted.element.place()),
        due: wanted.due.or(profile.due).map(|due| due.of(record)),
        basis: wanted.basis(),
        held: wanted.element.text(farm, record, &lines),
    });
    Some(Kept { name: profile.name(), profile: Some(&profile.key), basis: profile.basis(), rows: rows.collect() })
}

fn of_farm<'a>(record: &Record, key: &'a Id, own: &'a OwnElement) -> Row<'a> {
    Row {
        key,
        name: &own.name,
        short: &own.name,
        place: None,
        due: own.due_days.map(|days| Due::Days(days).of(record)),
        basis: match own.asked_by.trim() {
            "" => Basis::Own,
            name => Basis::Local(t!("season-name-as-typed", name = name)),
        },
        held: more(record, key),
    }
}

/// What is open of a record, in a word or two each, and how much it weighs.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Open {
    /// What is open, each once.
    pub names: Vec<String>,
    /// The weightiest level; none where nothing is open.
    pub level: Option<Level>,
}

/// What is open of a record on a day, over all that it is kept for.
pub fn open(farm: &Farm, record: &Record, today: Date) -> Open {
    let mut open = Open::default();
    for kept in kept(farm, record) {
        if is_over(farm, record, &kept, today) {
            continue;
        }
        for row in &kept.rows {
            let Some(short) = row.short() else { continue };
            open.level = open.level.max(Some(row.level(record.date, today)));
            if !open.names.iter().any(|known| known == short) {
                open.names.push(short.to_owned());
            }
        }
    }
    open
}

/// Whether the record need not be kept for it any more.
fn is_over(farm: &Farm, record: &Record, kept: &Kept, today: Date) -> bool {
    kept.profile
        .and_then(super::profile)
        .and_then(|profile| dates::keep_until(farm, record, profile))
        .is_some_and(|at| at < today)
}

/// What is open of a record on a day: a finding for each profile and each day by which it is due. From that day on it is a Check,
/// before it a Note; a record that need not be kept any more lacks nothing.
pub fn missing(farm: &Farm, id: &Id, record: &Record, today: Date) -> Vec<Finding> {
    let mut findings = Vec::new();
    for kept in kept(farm, record) {
        if is_over(farm, record, &kept, today) {
            continue;
        }
        let mut dues: Vec<Option<Deadline>> =
            kept.rows.iter().filter(|row| row.held.is_err()).map(|row| row.due).collect();
        dues.sort_unstable();
        dues.dedup();
        for due in dues {
            let rows: Vec<&Row> = kept.rows.iter().filter(|row| row.due == due && row.held.is_err()).collect();
            let mut names: Vec<String> = Vec::new();
            for name in rows.iter().filter_map(|row| row.lacks()) {
                if !names.contains(&name) {
                    names.push(name);
                }
            }
            let when = match due {
                Some(due) if due.day < today => t!("season-it-was-due-by", due = due),
                Some(due) => t!("season-due-by", due = due),
                None => t!("season-by-when-it-is-due-is").to_owned(),
            };
            let level = rows.iter().map(|row| row.level(record.date, today)).max().unwrap_or(Level::Note);
            let mut hint = if rows.iter().all(|row| row.place == Some(Place::Keeping)) {
                t!("season-type-it-in-the-shed-records")
            } else if rows.iter().any(|row| row.place == Some(Place::Keeping)) {
                t!("season-type-it-in-the-record-what")
            } else {
                t!("season-type-it-in-the-record")
            }
            .to_owned();
            if matches!(kept.basis, Basis::Published(_)) {
                hint = t!("season-whether-the-law-asks-for-it", hint = hint);
            }
            let text = t!(
                "season-of-lacks-for",
                name = record.name,
                date = record.date,
                name2 = kept.name,
                names = names.join(", "),
                when = when
            );
            let about = Subject::Record(id.clone());
            findings.push(Finding::new(level, about, text, kept.basis.clone()).hint(hint));
        }
    }
    findings
}

impl Scope {
    /// In words: of which records it speaks.
    pub fn words(&self) -> String {
        match self {
            Self::Every => t!("season-every-record").to_owned(),
            Self::Pesticide => t!("season-records-of-pesticides").to_owned(),
            Self::Restricted => t!("season-records-of-restricted-use-products").to_owned(),
            Self::Active { name, crops } if crops.is_empty() => t!("season-records-of", name = name),
            Self::Active { name, crops } => t!("season-records-of-on", name = name, crops = any_of(crops)),
        }
    }
}

/// The elements a profile asks for, in the words of the rule.
impl Profile {
    /// The names of what it asks for.
    pub fn asks(&self) -> impl Iterator<Item = (&str, Element)> {
        self.elements.iter().map(|wanted| (wanted.name(), wanted.element))
    }
}
