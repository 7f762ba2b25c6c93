//! What crops are called: in English, the language of the rule tables, and in Spanish, by `assets/crop-names.csv`. A crop stays as it was
//! typed; a name in one language means the crop of that name in the other, wherever names are held against each other.

use std::sync::LazyLock;

use rustc_hash::FxHashMap;
use serde::Deserialize;

use crate::fold::folded;
use crate::language::{Language, spoken};
use crate::season::profile;

/// A row of the table.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Row {
    /// Spanish names of one crop, apart by strokes; the first is the one that is offered.
    spanish: String,
    /// What each of them is in English, apart by strokes.
    english: String,
    /// Where it comes from.
    #[cfg_attr(not(test), expect(dead_code, reason = "read by the test that asks each row for one"))]
    source: String,
}

fn rows() -> &'static [Row] {
    static ROWS: LazyLock<Vec<Row>> = LazyLock::new(|| read().unwrap_or_default());
    &ROWS
}

fn read() -> Result<Vec<Row>, csv::Error> {
    crate::table::read(include_str!("../../../../assets/crop-names.csv"))
}

/// A Spanish name in English.
#[derive(Default)]
struct English {
    /// As the rule tables write it.
    names: Vec<&'static str>,
    /// As [`plain`] gives them.
    plain: Vec<String>,
}

/// By the Spanish name, as [`plain`] gives it.
static ENGLISH: LazyLock<FxHashMap<String, &'static English>> = LazyLock::new(|| {
    static ALL: LazyLock<Vec<English>> = LazyLock::new(|| {
        let names = rows().iter().map(|row| row.english.split('|').collect::<Vec<_>>());
        names.map(|names| English { plain: names.iter().map(|name| plain(name)).collect(), names }).collect()
    });
    let of_row = |(row, english): (&'static Row, &'static English)| {
        row.spanish.split('|').map(move |name| (plain(name), english))
    };
    rows().iter().zip(ALL.iter()).flat_map(of_row).collect()
});

/// The longest Spanish name has so many words.
const LONGEST: usize = 6;

/// A crop's name without what people write differently for the same crop: case, accents, spaces and a plural's end. Another word
/// for it is another crop here, since a label may mean field corn and not sweet corn; that is said where it matters.
pub(crate) fn plain(name: &str) -> String {
    let mut plain = String::with_capacity(name.len());
    for word in folded(name).split_whitespace() {
        if !plain.is_empty() {
            plain.push(' ');
        }
        plain.push_str(word.strip_suffix('s').unwrap_or(word));
    }
    plain
}

/// What a name is in English, where it is Spanish.
fn english(plain: &str) -> Option<&'static English> {
    ENGLISH.get(plain).copied()
}

/// A name, read once to be held against many.
pub(crate) struct Named {
    /// As [`plain`] gives it.
    pub(crate) plain: String,
    /// What it is in English, where it is Spanish.
    pub(crate) english: &'static [String],
}

impl Named {
    pub(crate) fn of(name: &str) -> Self {
        let plain = plain(name);
        let english = english(&plain).map_or(&[][..], |english| &english.plain);
        Self { plain, english }
    }

    /// Whether two names are one crop's.
    pub(crate) fn is(&self, other: &Self) -> bool {
        self.plain == other.plain
            || self.english.contains(&other.plain)
            || other.english.contains(&self.plain)
            || self.english.iter().any(|name| other.english.contains(name))
    }
}

/// Whether two names are one crop's: in the singular or the plural, with or without accents, in English or in Spanish.
///
/// # References
/// The Spanish of Mexico and the United States: common practice, no source.
///
/// # Examples
/// ```
/// use tankard_core::farm::crop::same;
/// assert!(same("Maiz", "corn") && same("soja", "soybeans") && same("frijol", "Frijoles"));
/// assert!(!same("maíz dulce", "corn") && !same("corn", "sweet corn"));
/// ```
pub fn same(one: &str, other: &str) -> bool {
    one == other || Named::of(one).is(&Named::of(other))
}

/// What a crop is put together with others by: its first English name where it is known in Spanish, else its own in small letters.
pub(crate) fn key(name: &str) -> String {
    let known = english(&plain(name)).and_then(|english| english.names.first());
    known.map_or_else(|| crate::words::plain(name), |name| (*name).to_owned())
}

/// Words that name a crop, each as [`plain`] gives it: those that were typed, and what any of them, or several together, are in English.
/// "trigo de invierno, irrigated" has "wheat" among its words.
pub(crate) fn words(typed: &str) -> Vec<String> {
    let is_apart = |letter: char| letter.is_whitespace() || letter == ',' || letter == '-' || letter == ';';
    let plain: Vec<String> = typed.split(is_apart).map(plain).filter(|word| !word.is_empty()).collect();
    let of_names = named_in(&plain).into_iter().flat_map(|english| &english.plain).flat_map(|name| name.split(' '));
    let of_names: Vec<String> = of_names.map(str::to_owned).collect();
    plain.into_iter().chain(of_names).collect()
}

/// What a text names in Spanish, in English.
pub(crate) fn in_english(typed: &str) -> Vec<&'static str> {
    let words: Vec<String> =
        typed.split(|letter: char| !letter.is_alphanumeric()).map(plain).filter(|word| !word.is_empty()).collect();
    named_in(&words).into_iter().flat_map(|english| english.names.iter().copied()).collect()
}

/// The crops that words name in Spanish; of two names that begin at one word the longer.
fn named_in(words: &[String]) -> Vec<&'static English> {
    let mut found = Vec::new();
    let mut at = 0;
    while at < words.len() {
        let longest =
            (1..=LONGEST).rev().find_map(|length| Some((length, english(&words.get(at..at + length)?.join(" "))?)));
        found.extend(longest.map(|(_, english)| english));
        at += longest.map_or(1, |(length, _)| length);
    }
    found
}

/// Names of crops to choose from, in the language that is spoken: the first of each row of `assets/crops.csv`.
pub fn offered() -> Vec<&'static str> {
    let english = profile::crops().iter().filter_map(|crop| crop.names().next());
    let mut names: Vec<&str> = match spoken() {
        Language::English => english.collect(),
        Language::Spanish => english.map(in_spanish).collect(),
    };
    names.sort_by_cached_key(|name| folded(name));
    names
}

/// The Spanish name of a crop, where there is one.
fn in_spanish(english: &str) -> &str {
    let is = |row: &&Row| row.english.split('|').any(|name| name == english);
    let row = rows().iter().find(is);
    row.and_then(|row| row.spanish.split('|').next()).unwrap_or(english)
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::{ENGLISH, LONGEST, in_english, in_spanish, key, offered, plain, read, same, words};
    use crate::language::{Language, speaking};
    use crate::season::profile;

    #[test]
    fn each_row_reads_and_no_spanish_name_stands_twice() {
        let rows = read().unwrap();
        let names: Vec<String> = rows.iter().flat_map(|row| row.spanish.split('|')).map(plain).collect();
        let apart: BTreeSet<&String> = names.iter().collect();
        assert_eq!(names.len(), apart.len(), "{names:?}");
        assert_eq!(ENGLISH.len(), names.len());
        for row in &rows {
            assert!(!row.source.is_empty() && !row.english.is_empty(), "{row:?}");
            assert!(row.spanish.split('|').all(|name| name.split(' ').count() <= LONGEST), "{row:?}");
        }
    }

    // Common practice, no source: the Spanish of Mexico and the United States.
    #[test]
    fn a_crop_in_either_language_is_the_same_crop() {
        for (spanish, english) in [
            ("maíz", "corn"),
            ("MAIZ", "Maize"),
            ("mai\u{301}z", "corn"),
            ("soya", "soybeans"),
            ("Soja", "soybean"),
            ("trigo", "wheat"),
            ("Trigo de Invierno", "winter wheat"),
            ("sorgo", "sorghum"),
            ("algodón", "cotton"),
            ("ALGODON", "Cotton"),
            ("betabel azucarero", "sugarbeets"),
            ("papas", "potatoes"),
            ("frijoles", "dry beans"),
            ("caña de azúcar", "sugar cane"),
            ("remolacha azucarera", "betabel azucarero"),
        ] {
            assert!(same(spanish, english) && same(english, spanish), "{spanish} and {english}");
        }
        for (spanish, english) in [
            ("maíz", "sweet corn"),
            ("maíz dulce", "corn"),
            ("trigo", "winter wheat"),
            ("trigo sarraceno", "wheat"),
            ("", "corn"),
            ("corn", "maize"),
        ] {
            assert!(!same(spanish, english) && !same(english, spanish), "{spanish} and {english}");
        }
    }

    #[test]
    fn what_is_put_together_has_one_key() {
        assert_eq!(key("Maíz"), key("corn"));
        assert_eq!(key("soja"), key("Soybean"));
        assert_eq!(key("Maiz"), key("maíz"));
        assert_ne!(key("maíz"), key("maíz dulce"));
        assert_eq!(key(" Quinoa "), "quinoa");
    }

    #[test]
    fn words_of_a_crop_are_found_among_others() {
        assert!(words("trigo de invierno, con riego").contains(&"wheat".to_owned()));
        assert!(words("trigo candeal").contains(&"wheat".to_owned()), "the longest known name within");
        assert!(words("winter wheats").contains(&"wheat".to_owned()));
        assert!(!words("trigo").contains(&"corn".to_owned()));
        assert_eq!(in_english("soya; tolerante"), ["soybean", "soya", "soy", "soya bean", "soy bean", "soyabean"]);
        assert_eq!(in_english("maíz dulce"), ["sweet corn"]);
        assert!(in_english("corn").is_empty());
    }

    #[test]
    fn each_crop_is_offered_in_the_language_that_is_spoken() {
        let english = offered();
        let spanish = speaking(Language::Spanish, offered);
        assert_eq!(english.len(), profile::crops().len());
        assert_eq!(spanish.len(), english.len());
        assert!(english.contains(&"soybean") && !english.contains(&"soya"));
        assert!(spanish.contains(&"soya") && spanish.contains(&"maíz") && spanish.contains(&"algodón"));
        let of_rows: Vec<String> = read().unwrap().iter().flat_map(|row| row.spanish.split('|')).map(plain).collect();
        for name in english {
            assert!(of_rows.contains(&plain(in_spanish(name))), "{name} has no Spanish name");
            assert!(same(name, in_spanish(name)), "{name}");
            assert_eq!(profile::crop_code(name), profile::crop_code(in_spanish(name)), "{name}");
        }
    }
}
