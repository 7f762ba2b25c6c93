//! Words in the language of who reads them.
//!
//! The messages are Fluent files under `assets/words/`, one folder a language, one file a room. [`t!`](crate::t) says one in the language
//! that is [`spoken`]. Where several languages stand beside each other, as on a card, a [`Say`] keeps which message it is and what
//! stands in it. What a person typed is said as typed in every language.

mod bundles;
mod say;
mod spoken;

use serde::{Deserialize, Serialize};

pub use crate::t;
pub use say::{Say, say};
pub use spoken::{as_here, speak, speaking, spoken};
#[doc(hidden)]
pub use spoken::{filled, plain};

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
