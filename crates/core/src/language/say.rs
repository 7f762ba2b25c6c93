//! What is said, in no language yet.

use fluent_bundle::{FluentArgs, FluentValue};

use super::{Language, Name, bundles, or_english, spoken};

/// Words that can be said in each language.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub enum Say {
    /// As a person typed it, or a quantity as it stands on jugs and gauges: the same in each language.
    Typed(String),
    /// A name that each language has its own for.
    Named(Name),
    /// A number that decides between one and many.
    Count(u32),
    /// A message of the files under `assets/words/`.
    Message {
        /// Its name.
        id: &'static str,
        /// What stands in it.
        with: Vec<(&'static str, Say)>,
    },
    /// One after the other.
    All {
        /// What.
        all: Vec<Say>,
        /// What stands between two of them.
        between: &'static str,
    },
}

/// A message of the files under `assets/words/`.
///
/// ```
/// use tankard_core::language::{Language, say};
/// let words = say("card-container-jug").with("count", 5_u32);
/// assert_eq!(words.in_language(Language::English), "5 jugs");
/// assert_eq!(words.in_languages(&[Language::Spanish, Language::English]), "5 bidones / 5 jugs");
/// ```
pub const fn say(id: &'static str) -> Say {
    Say::Message { id, with: Vec::new() }
}

impl Say {
    /// Nothing.
    pub const fn nothing() -> Self {
        Self::Typed(String::new())
    }

    /// Puts something into a message; elsewhere it has no place.
    #[must_use]
    pub fn with(mut self, name: &'static str, value: impl Into<Self>) -> Self {
        if let Self::Message { with, .. } = &mut self {
            with.push((name, value.into()));
        }
        self
    }

    /// One after the other, with something between.
    pub fn all(all: impl IntoIterator<Item = Self>, between: &'static str) -> Self {
        Self::All { all: all.into_iter().collect(), between }
    }

    /// In one language. A message that the language lacks is said by its name, which a test keeps from happening.
    pub fn in_language(&self, language: Language) -> String {
        match self {
            Self::Typed(text) => text.clone(),
            Self::Named(name) => name.in_language(language).to_owned(),
            Self::Count(count) => count.to_string(),
            Self::Message { id, with } => {
                let mut args = FluentArgs::with_capacity(with.len());
                for (name, value) in with {
                    args.set(
                        *name,
                        match value {
                            Self::Count(count) => FluentValue::from(*count),
                            said => FluentValue::from(said.in_language(language)),
                        },
                    );
                }
                bundles::format(language, id, &args).unwrap_or_else(|| (*id).to_owned())
            }
            Self::All { all, between } => {
                let words = all.iter().map(|one| one.in_language(language)).filter(|words| !words.is_empty());
                words.collect::<Vec<_>>().join(between)
            }
        }
    }

    /// In the language that is spoken.
    pub fn aloud(&self) -> String {
        self.in_language(spoken())
    }

    /// In several languages, with a stroke between, once where they say the same. In English where none is named.
    pub fn in_languages(&self, languages: &[Language]) -> String {
        self.lines(languages).join(" / ")
    }

    /// The same, a line for each language.
    pub fn lines(&self, languages: &[Language]) -> Vec<String> {
        let mut lines: Vec<String> = Vec::new();
        for language in or_english(languages) {
            let words = self.in_language(*language);
            if !words.is_empty() && !lines.contains(&words) {
                lines.push(words);
            }
        }
        lines
    }
}

impl From<String> for Say {
    fn from(text: String) -> Self {
        Self::Typed(text)
    }
}

impl From<&str> for Say {
    fn from(text: &str) -> Self {
        Self::Typed(text.to_owned())
    }
}

impl From<u32> for Say {
    fn from(count: u32) -> Self {
        Self::Count(count)
    }
}
