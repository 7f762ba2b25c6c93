//! The days that follow from a record: when people may enter again, until when it is displayed, when it and its copy are due, how
//! long it is kept.

use std::fmt;

use jiff::Span;
use jiff::civil::{Date, DateTime};

use super::{Deadline, KeepFrom, Profile, chosen};
use crate::farm::{Farm, Record};
use crate::finding::Basis;
use crate::label::harvest::after_days;
use crate::language::t;
use crate::season::worker_protection::entry;
use crate::words::all_of;

/// A day that follows from a record.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Dated {
    /// What is then: "people may enter".
    pub what: String,
    /// For which profile; none where it holds for all.
    pub profile: Option<&'static str>,
    /// When.
    pub at: At,
    /// On what it rests.
    pub basis: Basis,
}

/// When something is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum At {
    /// A moment by the farm's clock, or a day.
    Known(Deadline),
    /// What is lacking to tell.
    Unknown(String),
}

impl At {
    fn day(day: Date) -> Self {
        Self::Known(Deadline { day, time: None })
    }

    fn hour(at: DateTime) -> Self {
        Self::Known(Deadline { day: at.date(), time: Some(at.time()) })
    }

    /// The day, where it is known.
    pub fn date(&self) -> Option<Date> {
        match self {
            Self::Known(deadline) => Some(deadline.day),
            Self::Unknown(_) => None,
        }
    }
}

impl fmt::Display for At {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Known(deadline) => deadline.fmt(f),
            Self::Unknown(why) => write!(f, "{}", t!("season-not-known", why = why)),
        }
    }
}

/// The days that follow from a record, for the profiles that the farm chose and that speak of it.
pub fn dates(farm: &Farm, record: &Record) -> Vec<Dated> {
    let mut all = Vec::new();
    if let Some(at) = entry_ends(farm, record) {
        let source = t!("season-40-cfr-170-112-a-3");
        let basis = Basis::Published(source.to_owned());
        all.push(Dated { what: t!("season-re-entry-time-ends").to_owned(), profile: None, at, basis });
    }
    for profile in chosen(farm) {
        let Some(kept) = super::open::of_profile(farm, record, profile) else { continue };
        let mut say = |what: String, at: At, basis: Basis| {
            all.push(Dated { what, profile: Some(profile.name()), at, basis });
        };
        if let Some(due) = profile.due {
            say(t!("season-the-record-is-due").to_owned(), At::Known(due.of(record)), profile.basis());
        }
        for wanted in profile.elements.iter().filter(|wanted| wanted.due.is_some()) {
            let row = kept.rows.iter().find(|row| row.key == wanted.element.key());
            if let Some((due, row)) = wanted.due.zip(row) {
                say(t!("season-is-due", name = row.name), At::Known(due.of(record)), wanted.basis());
            }
        }
        if profile.display_days.is_some() {
            say(t!("season-displayed-until").to_owned(), display_until(farm, record, profile), profile.basis());
        }
        if profile.keep_years.is_some() {
            let at = keep_until(farm, record, profile);
            let unknown = || At::Unknown(t!("season-the-end-of-the-display-is").to_owned());
            say(t!("season-kept-until").to_owned(), at.map_or_else(unknown, At::day), profile.keep_basis());
        }
    }
    all
}

/// When people may enter again; none where no pesticide went out, nor anything else that has a time before it.
fn entry_ends(farm: &Farm, record: &Record) -> Option<At> {
    let entry = entry(farm, record);
    Some(match entry.ends {
        _ if entry.hours.is_none() && entry.unknown.is_empty() => return None,
        Some(ends) => At::hour(ends),
        None if entry.unknown.is_empty() => At::Unknown(t!("season-the-end-of-spraying-is-not").to_owned()),
        None => {
            let names = all_of(&entry.unknown);
            At::Unknown(t!("season-no-re-entry-time-of-is", names = names))
        }
    })
}

/// Until when it is displayed: so many days after the re-entry time ended, or after the application where there is none.
pub(crate) fn display_until(farm: &Farm, record: &Record, profile: &Profile) -> At {
    let days = profile.display_days.unwrap_or_default();
    let entry = entry(farm, record);
    match (entry.ends, entry_ends(farm, record)) {
        (Some(end), _) => At::day(after_days(end.date(), days)),
        (None, Some(unknown)) if entry.binds() => unknown,
        (None, _) => At::day(after_days(record.date, days)),
    }
}

/// Up to and including which day a record is kept; none where that is not known.
pub(crate) fn keep_until(farm: &Farm, record: &Record, profile: &Profile) -> Option<Date> {
    let years = profile.keep_years?;
    match profile.keep_from? {
        KeepFrom::Application => Some(after_years(record.date, years)),
        KeepFrom::Display => Some(after_years(display_until(farm, record, profile).date()?, years)),
        KeepFrom::NewYear => {
            let last = record.date.last_of_year();
            Some(after_years(last, years))
        }
    }
}

/// The same day so many years later; where there is no 29 February, 1 March, since a record kept a day too long harms nobody.
fn after_years(day: Date, years: u32) -> Date {
    let later = Span::new().try_years(years).map_or(Date::MAX, |span| day.saturating_add(span));
    if later.day() == day.day() { later } else { after_days(later, 1) }
}
