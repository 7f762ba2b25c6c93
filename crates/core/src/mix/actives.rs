//! What is known of an active by its ISO common name: resistance group, chemical family, how labels count it.
//!
//! An active goes by more than one name: "fluazifop" in speech, "fluazifop-P-butyl" on the label; "2,4-D amine" for a salt
//! that is counted as 2,4-D. The table holds these names, so that they mean one active everywhere; a salt or an ester that it does not
//! name is known by its words ("2,4-D, choline salt"), since a total that missed it would be too low in silence.

use std::borrow::Cow;
use std::collections::{HashMap, HashSet};
use std::sync::LazyLock;

use serde::Deserialize;

use crate::farm::{Active, Product, ProductKind};
use crate::plausible::salts;
use crate::quantity::ActiveBasis;

/// A row of `assets/actives.csv`.
#[derive(Clone, Debug, Deserialize)]
pub struct ActiveFacts {
    /// ISO common name.
    pub name: String,
    /// Other names, apart by semicolons: without the ester, or of a salt.
    also: String,
    /// HRAC group, by its global number.
    pub group: String,
    /// Chemical family.
    pub family: String,
    /// "ae" or "ai": how labels usually count it.
    basis: String,
    /// Where it is printed.
    pub source: String,
}

impl ActiveFacts {
    /// How labels usually count it.
    pub fn basis(&self) -> ActiveBasis {
        if self.basis == "ae" { ActiveBasis::AcidEquivalent } else { ActiveBasis::ActiveIngredient }
    }

    /// All its names, the ISO common name first.
    pub fn names(&self) -> impl Iterator<Item = &str> {
        std::iter::once(self.name.as_str()).chain(self.also.split(';').map(str::trim).filter(|name| !name.is_empty()))
    }
}

/// The table.
pub fn table() -> &'static [ActiveFacts] {
    static TABLE: LazyLock<Vec<ActiveFacts>> =
        LazyLock::new(|| crate::table::read(include_str!("../../../../assets/actives.csv")).unwrap_or_default());
    &TABLE
}

/// What is compared of a name: small letters, and one space for a hyphen or several spaces.
fn plain(name: &str) -> String {
    crate::words::plain_apart_by(name, |letter| letter == '-' || letter.is_whitespace())
}

/// What is known of an active, by any of its names and however that is written.
pub fn facts(name: &str) -> Option<&'static ActiveFacts> {
    known(&plain(name)).map(|(facts, _)| *facts)
}

/// What is known by a name in its plain form, with the one text for all names of that active.
fn known(plain_name: &str) -> Option<&'static (&'static ActiveFacts, String)> {
    static NAMES: LazyLock<HashMap<String, (&ActiveFacts, String)>> = LazyLock::new(|| {
        table()
            .iter()
            .flat_map(|facts| facts.names().map(move |name| (plain(name), (facts, plain(&facts.name)))))
            .collect()
    });
    NAMES.get(plain_name).or_else(|| {
        let (bare, first) = without_form(plain_name)?;
        let others = bare.strip_prefix(first.as_str()).unwrap_or_default();
        let alone = !others.split(' ').any(|word| NAMES.contains_key(word));
        NAMES.get(&bare).or_else(|| NAMES.get(&first).filter(|_| alone))
    })
}

/// Words beside those of `assets/salts.csv` that say in which form an active is, and not which it is. From memory: the statements of
/// ingredients on US labels ("dimethylamine salt of 2,4-D", "glyphosate, in the form of its potassium salt") and abbreviations of the trade.
const FORMS: [&str; 40] = [
    "salt",
    "salts",
    "ester",
    "esters",
    "acid",
    "amine",
    "of",
    "the",
    "its",
    "as",
    "a",
    "in",
    "form",
    "lv",
    "lv4",
    "lv6",
    "low",
    "volatile",
    "isooctyl",
    "butyl",
    "butotyl",
    "etexyl",
    "meptyl",
    "olamine",
    "trolamine",
    "isopropylammonium",
    "dimethylammonium",
    "monoethanolammonium",
    "diglycolammonium",
    "triethylammonium",
    "diethanolamine",
    "triethanolamine",
    "dma",
    "dga",
    "ipa",
    "mea",
    "tea",
    "tipa",
    "bapma",
    "ehe",
];

/// What of a text stands outside brackets.
fn outside(text: &str) -> String {
    let mut depth = 0_u32;
    let is_outside = |letter: &char| {
        match letter {
            '(' => depth += 1,
            ')' => {
                depth = depth.saturating_sub(1);
                return false;
            }
            _ => {}
        }
        depth == 0
    };
    text.chars().filter(is_outside).collect()
}

/// A plain name without the words for its form, and what stands before its first comma; none where no such word is in it. What stands in
/// brackets is left out.
fn without_form(plain_name: &str) -> Option<(String, String)> {
    static WORDS: LazyLock<HashSet<String>> = LazyLock::new(|| {
        let salts = salts::table().iter().map(|salt| outside(&plain(&salt.salt)));
        let words = salts.flat_map(|salt| salt.split(' ').map(str::to_owned).collect::<Vec<_>>());
        words.chain(FORMS.into_iter().map(str::to_owned)).collect()
    });
    let name = outside(plain_name);
    let words = || name.split([' ', ';']).map(|word| word.trim_matches(',')).filter(|word| !word.is_empty());
    let is_form = |word: &&str| WORDS.contains(*word);
    if name == plain_name && !words().any(|word| is_form(&word)) {
        return None;
    }
    let bare: Vec<&str> = words().filter(|word| !is_form(word)).collect();
    let first = name.split(", ").next().unwrap_or_default().trim();
    Some((bare.join(" "), first.to_owned()))
}

/// One text for all names of an active, by which tables are looked up.
pub(crate) fn key(name: &str) -> Cow<'static, str> {
    let plain = plain(name);
    match known(&plain) {
        Some((_, key)) => Cow::Borrowed(key),
        None => Cow::Owned(plain),
    }
}

/// A chemical family of insecticides, by which herbicide labels name partners: "organophosphate insecticides".
#[derive(Debug, Deserialize)]
struct InsecticideFamily {
    /// IRAC group, such as "1B".
    group: String,
    family: String,
    #[cfg_attr(not(test), expect(dead_code, reason = "read by the test that asks each row for one"))]
    source: String,
}

fn insecticides() -> &'static [InsecticideFamily] {
    static TABLE: LazyLock<Vec<InsecticideFamily>> = LazyLock::new(|| {
        crate::table::read(include_str!("../../../../assets/insecticide-families.csv")).unwrap_or_default()
    });
    &TABLE
}

/// The families of an insecticide by its group, as typed.
pub(crate) fn insecticide_families(kind: ProductKind, group: &str) -> impl Iterator<Item = &'static str> {
    let is = move |row: &&InsecticideFamily| {
        kind == ProductKind::Insecticide && row.group.eq_ignore_ascii_case(group.trim())
    };
    insecticides().iter().filter(is).map(|row| row.family.as_str())
}

/// All of them.
pub(crate) fn all_insecticide_families() -> impl Iterator<Item = &'static str> {
    insecticides().iter().map(|row| row.family.as_str())
}

/// The resistance group of an active: as typed, else as the table knows it; empty where neither is known.
pub fn group(active: &Active) -> &str {
    group_or(&active.name, &active.group)
}

/// The same for a name and what is typed of its group, as a record keeps them.
pub(crate) fn group_or<'a>(name: &str, typed: &'a str) -> &'a str {
    match typed.trim() {
        "" => facts(name).map_or("", |facts| facts.group.as_str()),
        typed => typed,
    }
}

/// Whether two names mean the same active. An empty name means none.
///
/// # Examples
/// ```
/// use tankard_core::mix::actives::same;
/// assert!(same("Quizalofop", "quizalofop-P-ethyl"));
/// assert!(same("2,4-D choline", "2,4-D"));
/// assert!(!same("2,4-DB", "2,4-D"));
/// assert!(!same("S-metolachlor", "metolachlor"));
/// ```
pub fn same(a: &str, b: &str) -> bool {
    let first = key(a);
    !first.is_empty() && first == key(b)
}

/// An active that many names are compared with.
#[derive(Clone, Debug)]
pub(crate) struct Wanted<'a> {
    name: &'a str,
    key: Cow<'static, str>,
}

impl<'a> Wanted<'a> {
    pub(crate) fn new(name: &'a str) -> Self {
        Self { name: name.trim(), key: key(name) }
    }

    /// Whether a name means it.
    pub(crate) fn is(&self, name: &str) -> bool {
        // Mostly both are written alike, which is quickly told.
        !self.key.is_empty() && (self.name.eq_ignore_ascii_case(name.trim()) || key(name) == self.key)
    }

    /// A product's actives that it means. The salt of a conditioner is no active.
    pub(crate) fn in_product(&self, product: &'a Product) -> impl Iterator<Item = &'a Active> {
        product.actives.iter().filter(|active| product.kind.holds_actives() && self.is(&active.name))
    }

    /// Whether a product holds it.
    pub(crate) fn is_in(&self, product: &Product) -> bool {
        product.kind.holds_actives() && product.actives.iter().any(|active| self.is(&active.name))
    }
}

#[cfg(test)]
mod tests {
    use std::collections::HashSet;

    use super::{facts, plain, same, table};

    #[test]
    fn the_families_of_insecticides_read() {
        assert!(super::insecticides().len() >= 4);
        assert!(super::insecticides().iter().all(|row| !row.source.is_empty() && facts(&row.family).is_none()));
    }

    /// As US labels state ingredients, from memory.
    #[test]
    fn a_salt_or_an_ester_is_its_active_in_any_words() {
        for (spoken, iso) in [
            ("2,4-D dimethylamine salt", "2,4-D"),
            ("2,4-D, choline salt", "2,4-D"),
            ("Dimethylamine salt of 2,4-D", "2,4-D"),
            ("2,4-D isooctyl ester", "2,4-D"),
            ("2,4-D, 2-ethylhexyl ester (2,4-dichlorophenoxyacetic acid)", "2,4-D"),
            ("2,4-DB dimethylamine salt", "2,4-DB"),
            ("dicamba diglycolamine salt", "dicamba"),
            ("dicamba (DGA)", "dicamba"),
            ("Dicamba, sodium salt", "dicamba"),
            ("dicamba N,N-bis(3-aminopropyl)methylamine salt", "dicamba"),
            ("Glyphosate, N-(phosphonomethyl)glycine, in the form of its potassium salt", "glyphosate"),
            ("glyphosate isopropylammonium salt", "glyphosate"),
            ("fomesafen sodium salt", "fomesafen"),
            ("mecoprop-P potassium salt", "mecoprop-P"),
            ("thifensulfuron-methyl", "thifensulfuron-methyl"),
        ] {
            assert_eq!(facts(spoken).map(|facts| facts.name.as_str()), Some(iso), "{spoken}");
        }
        for other in [
            "ammonium sulfate",
            "potassium salt",
            "salt",
            "2",
            "glyphosate and dicamba",
            "glyphosate, dicamba DGA salt",
            "S-metolachlor of",
            "",
        ] {
            let known = facts(other).map(|facts| facts.name.as_str());
            assert!(known.is_none() || known == Some("S-metolachlor"), "{other}: {known:?}");
        }
        assert!(!same("metolachlor salt", "S-metolachlor"));
    }

    #[test]
    fn every_active_has_a_group_a_family_a_basis_and_a_source() {
        assert!(table().len() >= 60);
        for facts in table() {
            assert!(
                facts.group.parse::<u32>().is_ok_and(|group| (1..=34).contains(&group))
                    && !facts.family.is_empty()
                    && !facts.source.is_empty()
                    && ["ae", "ai"].contains(&facts.basis.as_str()),
                "{facts:?}"
            );
        }
    }

    #[test]
    fn no_name_means_two_actives() {
        let mut seen = HashSet::new();
        for name in table().iter().flat_map(super::ActiveFacts::names) {
            assert!(seen.insert(plain(name)), "{name} stands twice");
        }
    }

    /// A family has one mode of action, so all of it stands in one group.
    #[test]
    fn a_family_is_in_one_group() {
        for facts in table() {
            for other in table().iter().filter(|other| other.family == facts.family) {
                assert_eq!(facts.group, other.group, "{} and {}", facts.name, other.name);
            }
        }
    }

    #[test]
    fn an_active_is_known_without_its_ester_and_by_its_salt() {
        for (spoken, iso) in [
            ("fluazifop", "fluazifop-P-butyl"),
            ("QUIZALOFOP", "quizalofop-P-ethyl"),
            ("thifensulfuron", "thifensulfuron-methyl"),
            ("halauxifen", "halauxifen-methyl"),
            ("thifensulfuron methyl", "thifensulfuron-methyl"),
            (" 2,4-D ester ", "2,4-D"),
        ] {
            assert!(same(spoken, iso), "{spoken}");
            assert_eq!(facts(spoken).map(|facts| facts.name.as_str()), Some(iso));
        }
        for (one, other) in [("2,4-D", "2,4-DB"), ("MCPA", "MCPB"), ("", ""), ("glufosinate", "glufosinate-P")] {
            assert!(!same(one, other), "{one} and {other}");
        }
        assert!(same("an active of tomorrow", "An active of  tomorrow"));
    }
}
