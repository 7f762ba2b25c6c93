//! Names of weeds and of chemical families, which the rule tables have in English, in Spanish too: `assets/names.csv`. What people typed is
//! shown as they typed it, unless it is a name of the tables; and a weed is the same weed in both languages.

use std::sync::LazyLock;

use rustc_hash::FxHashMap;
use serde::Deserialize;

use super::{Language, Say, spoken};
use crate::fold::folded;

#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
enum Kind {
    Weed,
    Family,
}

#[derive(Clone, Debug, Deserialize)]
struct Row {
    kind: Kind,
    /// Apart by `|`, that of the tables first.
    english: String,
    /// Apart by `|`, that which is shown first.
    spanish: String,
    /// On what it rests.
    #[cfg_attr(not(test), allow(dead_code))] // It is looked up in the table by who doubts a name.
    source: String,
}

fn read() -> Result<Vec<Row>, csv::Error> {
    crate::table::read(include_str!("../../../../assets/names.csv"))
}

fn rows() -> &'static [Row] {
    static ROWS: LazyLock<Vec<Row>> = LazyLock::new(|| read().unwrap_or_default());
    &ROWS
}

/// A name that is called otherwise in another language.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Name {
    english: &'static str,
    spanish: &'static str,
}

impl Name {
    /// In a language.
    pub const fn in_language(self, language: Language) -> &'static str {
        match language {
            Language::English => self.english,
            Language::Spanish => self.spanish,
        }
    }
}

fn first(names: &str) -> &str {
    names.split('|').next().unwrap_or_default()
}

/// The row with a name, in the language of the tables or in both.
fn row(kind: Kind, name: &str, in_spanish_too: bool) -> Option<&'static Row> {
    type Places = FxHashMap<String, usize>;
    static BY_NAME: LazyLock<[Places; 2]> = LazyLock::new(|| {
        let mut all: [Places; 2] = Default::default();
        let [english, both] = &mut all;
        for (at, row) in rows().iter().enumerate() {
            let key = |name: &str| format!("{:?} {}", row.kind, folded(name));
            for name in row.english.split('|') {
                english.entry(key(name)).or_insert(at);
                both.entry(key(name)).or_insert(at);
            }
            for name in row.spanish.split('|') {
                both.entry(key(name)).or_insert(at);
            }
        }
        all
    });
    let [english, both] = &*BY_NAME;
    let places = if in_spanish_too { both } else { english };
    rows().get(*places.get(&format!("{kind:?} {}", folded(name.trim())))?)
}

/// A weed as each language calls it, where it is called as the rule tables do; else as typed.
pub(crate) fn weed(name: &str) -> Say {
    row(Kind::Weed, name, false).map_or_else(
        || Say::from(name.trim()),
        |row| Say::Named(Name { english: first(&row.english), spanish: first(&row.spanish) }),
    )
}

/// What the rule tables call a weed, where it is known by its Spanish name or by another English one.
pub(crate) fn weed_of_tables(name: &str) -> Option<&'static str> {
    row(Kind::Weed, name, true).map(|row| first(&row.english))
}

/// A chemical family of the rule tables in the language that is spoken.
pub(crate) fn family(name: &str) -> &str {
    match spoken() {
        Language::English => name,
        Language::Spanish => row(Kind::Family, name, false).map_or(name, |row| first(&row.spanish)),
    }
}

#[cfg(test)]
mod tests {
    use super::{Kind, family, read, row, weed};
    use crate::language::{Language, speaking};
    use crate::mix::{actives, guidance};

    #[test]
    fn every_row_is_read_and_has_a_source() {
        let rows = read().unwrap();
        assert!(rows.len() > 60);
        assert!(rows.iter().all(|row| !row.english.is_empty() && !row.spanish.is_empty() && !row.source.is_empty()));
    }

    /// What the program itself says in English would stay so in Spanish.
    #[test]
    fn every_family_and_every_weed_of_the_tables_is_named() {
        for facts in actives::table() {
            assert!(row(Kind::Family, &facts.family, false).is_some(), "{}", facts.family);
        }
        for weed in guidance::weeds() {
            assert!(row(Kind::Weed, weed, false).is_some(), "{weed}");
        }
    }

    #[test]
    fn what_is_known_is_said_in_each_language_and_the_rest_stays_as_typed() {
        for (typed, said) in
            [("Velvetleaf", "malva terciopelo"), ("malva terciopelo", "malva terciopelo"), ("bur oak", "bur oak")]
        {
            assert_eq!(weed(typed).in_language(Language::Spanish), said);
        }
        assert_eq!(weed("kochia").in_language(Language::English), "kochia");
        assert_eq!(family("sulfonylurea"), "sulfonylurea");
        speaking(Language::Spanish, || {
            assert_eq!((family("sulfonylurea"), family("some other")), ("sulfonilurea", "some other"));
        });
    }
}
