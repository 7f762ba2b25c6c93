//! Words in the language of who reads them.
//!
//! What is said is a [`Say`]: which message, and what stands in it. The messages themselves are Fluent files, one folder a language, under
//! `assets/words/`. What a person typed is said as typed in every language.

mod bundles;
mod say;

use serde::{Deserialize, Serialize};

pub use say::{Say, say};

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

    /// Its code (ISO 639-1), which is also the name of its folder.
    pub const fn code(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Spanish => "es",
        }
    }
}
