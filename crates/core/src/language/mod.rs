//! Words in the language of who reads them.
//!
//! The messages are Fluent files under `assets/words/`, one folder a language, one file a room. [`t!`](crate::t) says one in the language
//! that is [`spoken`]. Where several languages stand beside each other, as on a card, a [`Say`] keeps which message it is and what
//! stands in it. What a person typed is said as typed in every language.

mod bundles;
pub mod days;
mod longer;
pub(crate) mod names;
mod say;
mod spoken;

use serde::{Deserialize, Serialize};

pub use crate::t;
pub use names::Name;
pub use say::{Say, say};
pub use spoken::{as_here, row, speak, speaking, spoken, yes_or_no};
#[doc(hidden)]
pub use spoken::{filled, lengthen, plain};

/// English where no language is named.
pub(crate) const fn or_english(languages: &[Language]) -> &[Language] {
    if languages.is_empty() { &[Language::English] } else { languages }
}

/// A language with a complete set of messages.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
pub enum Language {
    /// English.
    #[default]
    English,
    /// Spanish.
    Spanish,
}

impl Language {
    /// All of them.
    pub const ALL: [Self; 2] = [Self::English, Self::Spanish];

    /// As its speakers call it.
    pub const fn name(self) -> &'static str {
        match self {
            Self::English => "English",
            Self::Spanish => "Español",
        }
    }

    /// The language of a locale such as "es-MX" or "es_MX.UTF-8", where there are messages in it.
    pub fn of_locale(locale: &str) -> Option<Self> {
        let code = locale.split(['-', '_', '.', '@']).next().unwrap_or_default().to_ascii_lowercase();
        Self::ALL.into_iter().find(|language| language.code() == code)
    }

    /// Its code (ISO 639-1), which is also the name of its folder.
    pub const fn code(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Spanish => "es",
        }
    }
}

#[cfg(test)]
mod tests {
    use std::collections::{BTreeSet, HashMap};

    use super::{Language, bundles, row, speaking};

    /// What a table says in a column.
    fn cells(table: &str, column: &str) -> Vec<String> {
        let rows: Vec<HashMap<String, String>> = crate::table::read(table).unwrap();
        rows.into_iter().map(|mut row| row.remove(column).unwrap()).filter(|cell| !cell.is_empty()).collect()
    }

    /// A sentence that was mended in its table alone would be said in English to who reads Spanish.
    #[test]
    fn each_sentence_of_these_tables_is_a_message_and_the_other_way_round() {
        let tables = [
            (include_str!("../../../../assets/pairs.csv"), "says"),
            (include_str!("../../../../assets/pairs.csv"), "way_out"),
            (include_str!("../../../../assets/mixing-orders.csv"), "why"),
            (include_str!("../../../../assets/adjuvant-guidance.csv"), "says"),
            (include_str!("../../../../assets/water-thresholds.csv"), "says"),
            (include_str!("../../../../assets/weather-limits.csv"), "says"),
            (include_str!("../../../../assets/jar-signs.csv"), "sign"),
            (include_str!("../../../../assets/formulations.csv"), "name"),
            (include_str!("../../../../assets/cleaning.csv"), "says"),
            (include_str!("../../../../assets/rotation.csv"), "source"),
            (include_str!("../../../../assets/confusions.csv"), "says"),
            (include_str!("../../../../assets/record-profiles.csv"), "name"),
            (include_str!("../../../../assets/record-profiles.csv"), "who"),
            (include_str!("../../../../assets/record-profiles.csv"), "note"),
            (include_str!("../../../../assets/record-profiles.csv"), "evidence"),
            (include_str!("../../../../assets/record-elements.csv"), "name"),
            (include_str!("../../../../assets/record-elements.csv"), "evidence"),
        ];
        let of_tables: BTreeSet<String> = tables.into_iter().flat_map(|(table, column)| cells(table, column)).collect();
        assert!(of_tables.len() > 400);
        // States that are called the same in Spanish.
        let same = ["Nebraska", "Victoria", "Washington"];
        for sentence in &of_tables {
            let in_spanish = speaking(Language::Spanish, || row(sentence));
            assert_eq!(in_spanish == sentence, same.contains(&sentence.as_str()), "{sentence}");
        }
        for sentence in bundles::rows() {
            assert!(of_tables.contains(sentence), "no table says \"{sentence}\"");
        }
    }
}
