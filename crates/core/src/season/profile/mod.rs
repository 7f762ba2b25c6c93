//! What a record must hold, by record profiles: the tables `assets/record-profiles.csv` (who keeps which records, how long, due
//! when) and `assets/record-elements.csv` (what stands in them). [`kept`] holds a record against the profiles that the farm
//! chose, [`missing`] says what is open, [`dates`] the days that follow from it.
//!
//! The tables are a help to keep what some rules ask for. They do not decide what the law requires of a farm.

mod asked;
mod crops;
mod dates;
mod due;
mod element;
mod open;

use std::sync::LazyLock;

use jiff::civil::Date;
use serde::Deserialize;

pub use asked::{Asked, Scope};
pub use crops::{Crop, crop_code, table as crops};
pub use dates::{At, Dated, dates};
pub(crate) use dates::{display_until, keep_until};
pub(crate) use due::after_hours;
pub use due::{Deadline, Due};
pub use element::{Element, Lack, Place};
pub use open::{Kept, Open, Row, kept, missing, open};

use crate::farm::{Farm, Id};
use crate::finding::{Basis, Finding, Subject};
use crate::language::{row, t};

/// What is said wherever profiles are shown.
pub fn not_the_law() -> &'static str {
    t!("season-not-the-law")
}

/// Words of the column `evidence` for what nobody has looked up again.
const FROM_MEMORY: &str = "from memory, check";

/// A row of `assets/record-profiles.csv`, with its elements.
#[derive(Clone, Debug, Deserialize)]
pub struct Profile {
    /// Its key, which a farm holds.
    pub key: String,
    name: String,
    who: String,
    /// The profile whose elements it takes over, by key; may be empty.
    with: String,
    /// Of which records it speaks.
    pub scope: Scope,
    /// The last day of an application that it speaks of; none for no end.
    pub until: Option<Date>,
    /// By when the record is due; none where that is not known.
    pub due: Option<Due>,
    /// How many years it is kept; none where that is not known.
    pub keep_years: Option<u32>,
    /// From when on these years count.
    keep_from: Option<KeepFrom>,
    /// Where it is printed how long it is kept; empty for where the rest is.
    keep_source: String,
    /// How sure that is; empty for as sure as the rest.
    keep_evidence: String,
    /// For how many days after the re-entry time it is displayed; none where it is not.
    display_days: Option<u32>,
    /// How sure the row is, in words.
    evidence: String,
    /// Where it is printed.
    pub source: String,
    note: String,
    /// What it asks for.
    #[serde(skip)]
    pub elements: Vec<Wanted>,
}

/// From when on the years count in which a record is kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "lowercase")]
enum KeepFrom {
    /// The day of the application.
    Application,
    /// The end of the display.
    Display,
    /// 1 January of the next year.
    #[serde(rename = "new year")]
    NewYear,
}

/// A row of `assets/record-elements.csv`: what a profile asks for.
#[derive(Clone, Debug, Deserialize)]
pub struct Wanted {
    /// The profile, by key.
    profile: String,
    /// What fact of a record it is.
    pub element: Element,
    /// When it is asked for.
    pub asked: Asked,
    /// By when it is due, where that differs from the record.
    pub due: Option<Due>,
    name: String,
    /// Where it is printed.
    pub source: String,
    /// How sure the row is, in words.
    evidence: String,
}

impl Profile {
    /// What it is called.
    pub fn name(&self) -> &str {
        row(&self.name)
    }

    /// Who keeps such records.
    pub fn who(&self) -> &str {
        row(&self.who)
    }

    /// How sure it is, in words.
    pub fn evidence(&self) -> &str {
        row(&self.evidence)
    }

    /// What else there is to know; may be empty.
    pub fn note(&self) -> &str {
        row(&self.note)
    }

    /// On what it rests; what nobody has looked up again is said.
    pub fn basis(&self) -> Basis {
        of(&self.source, &self.evidence)
    }

    /// On what it rests how long records are kept.
    pub fn keep_basis(&self) -> Basis {
        let source = if self.keep_source.is_empty() { &self.source } else { &self.keep_source };
        of(source, self.keep_evidence())
    }

    fn keep_evidence(&self) -> &str {
        if self.keep_evidence.is_empty() { &self.evidence } else { &self.keep_evidence }
    }

    /// How long records are kept, in words.
    pub fn keep_words(&self) -> String {
        let years = self.years_words();
        if self.keep_years.is_some() && self.keep_evidence() == FROM_MEMORY {
            format!("{years} ({})", t!("season-from-memory-check"))
        } else {
            years
        }
    }

    fn years_words(&self) -> String {
        match (self.keep_years, self.keep_from) {
            (Some(years), Some(KeepFrom::Display)) => t!("season-years-from-the-end-of-the-display", years = years),
            (Some(years), Some(KeepFrom::NewYear)) => t!("season-years-from-1-january-of-the-next", years = years),
            (Some(years), _) => t!("season-years-from-the-application", years = years),
            (None, _) => t!("season-for-how-long-is-not-known").to_owned(),
        }
    }
}

impl Wanted {
    /// The element, in the words of the rule.
    pub fn name(&self) -> &str {
        row(&self.name)
    }

    /// On what it rests; what nobody has looked up again is said.
    pub fn basis(&self) -> Basis {
        of(&self.source, &self.evidence)
    }
}

fn of(source: &str, evidence: &str) -> Basis {
    match Basis::of_source(source) {
        Basis::Published(source) if evidence == FROM_MEMORY => {
            Basis::Published(format!("{source}; {}", t!("season-from-memory-check")))
        }
        basis => basis,
    }
}

/// All profiles, the plain one first.
pub fn all() -> &'static [Profile] {
    static TABLE: LazyLock<Vec<Profile>> = LazyLock::new(|| read().unwrap_or_default());
    &TABLE
}

fn read() -> Result<Vec<Profile>, csv::Error> {
    let mut profiles: Vec<Profile> = crate::table::read(include_str!("../../../../../assets/record-profiles.csv"))?;
    let wanted: Vec<Wanted> = crate::table::read(include_str!("../../../../../assets/record-elements.csv"))?;
    for profile in &mut profiles {
        let of = |key: &str| wanted.iter().filter(|row| row.profile == key).cloned().collect::<Vec<Wanted>>();
        profile.elements = of(&profile.key);
        // What is taken over comes first, without what the profile words for itself.
        let mut over = of(&profile.with);
        over.retain(|row| profile.elements.iter().all(|own| own.element != row.element));
        over.append(&mut profile.elements);
        profile.elements = over;
    }
    Ok(profiles)
}

/// A profile by its key.
pub fn profile(key: &str) -> Option<&'static Profile> {
    all().iter().find(|profile| profile.key == key)
}

/// The profiles that the farm keeps to; the plain one where it chose none that is known.
pub fn chosen(farm: &Farm) -> Vec<&'static Profile> {
    let known: Vec<&Profile> = farm.keeping.profiles.iter().filter_map(|key| profile(key)).collect();
    if known.is_empty() { all().iter().take(1).collect() } else { known }
}

/// The keys of profiles that the farm holds and the table does not.
pub fn unknown(farm: &Farm) -> impl Iterator<Item = &Id> {
    farm.keeping.profiles.iter().filter(|key| profile(key).is_none())
}

/// Says which profiles of the farm are not known, so that nothing is judged by them.
pub fn judge_farm(farm: &Farm) -> Vec<Finding> {
    let say = |key: &Id| {
        let text = t!("season-the-farm-keeps-to-a-record", key = key);
        Finding::check(Subject::Farm, text, Basis::Own).hint(t!("season-choose-another-in-the-shed-records"))
    };
    unknown(farm).map(say).collect()
}

#[cfg(test)]
mod tests {
    use super::{FROM_MEMORY, KeepFrom, all, profile, read};
    use crate::farm::Farm;

    #[test]
    fn the_tables_read_and_say_where_they_come_from_and_how_sure_they_are() {
        let profiles = read().unwrap();
        assert_eq!(profiles.first().map(|profile| profile.key.as_str()), Some("plain"));
        let evidence = ["read in the rule", "secondary source", FROM_MEMORY, "common practice"];
        let mut rows = 0;
        for profile in &profiles {
            assert!(evidence.contains(&profile.evidence.as_str()), "{}", profile.key);
            assert!(!profile.source.is_empty() && !profile.elements.is_empty(), "{}", profile.key);
            assert_eq!(profile.keep_years.is_some(), profile.keep_from.is_some(), "{}", profile.key);
            assert!(evidence.contains(&profile.keep_evidence()), "{}", profile.key);
            let kept_apart = !profile.keep_source.is_empty() || !profile.keep_evidence.is_empty();
            assert!(!kept_apart || profile.keep_years.is_some(), "{}", profile.key);
            assert_eq!(
                profile.display_days.is_some(),
                profile.keep_from == Some(KeepFrom::Display),
                "{}: what is kept from the end of the display is displayed",
                profile.key
            );
            for row in profile.elements.iter().filter(|row| row.profile == profile.key) {
                rows += 1;
                assert!(evidence.contains(&row.evidence.as_str()) && !row.source.is_empty(), "{row:?}");
            }
            let mut elements: Vec<_> = profile.elements.iter().map(|row| row.element).collect();
            let count = elements.len();
            elements.sort_unstable();
            elements.dedup();
            assert_eq!(elements.len(), count, "{} asks for a thing twice", profile.key);
        }
        // Each row belongs to a profile that there is.
        let lines = include_str!("../../../../../assets/record-elements.csv").lines().count() - 1;
        assert_eq!(rows, lines);
        assert!(profiles.iter().all(|profile| profile.with.is_empty() || super::profile(&profile.with).is_some()));
    }

    #[test]
    fn the_plain_one_holds_where_none_is_chosen() {
        let mut farm = Farm::new("Test");
        assert_eq!(super::chosen(&farm).iter().map(|profile| profile.key.as_str()).collect::<Vec<_>>(), ["plain"]);
        farm.keeping.profiles = vec!["gone".to_owned()];
        assert_eq!(super::chosen(&farm).len(), 1);
        assert_eq!(super::judge_farm(&farm).len(), 1);
        farm.keeping.profiles.push("us-rup".to_owned());
        assert_eq!(super::chosen(&farm).iter().map(|profile| profile.key.as_str()).collect::<Vec<_>>(), ["us-rup"]);
        assert_eq!(profile("us-ne").map(|profile| profile.elements.len()), profile("us-rup").map(|p| p.elements.len()));
        assert!(all().len() > 10);
    }
}
