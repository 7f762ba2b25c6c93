//! The messages, read once a language.

use std::fmt::{Display, Write as _};
use std::sync::LazyLock;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use fluent_syntax::unicode::unescape_unicode_to_string;
use rustc_hash::FxHashMap;

use super::Language;

macro_rules! files {
    ($language:literal) => {
        [
            include_str!(concat!("../../../../assets/words/", $language, "/app.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/card.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/cli.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/core.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/day.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/farm.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/fields.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/file.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/find.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/ground.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/guide.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/keys.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/label.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/loads.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/mix.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/paper.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/parts.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/plausible.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/quantity.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/report.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/rig.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/rows.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/season-log.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/season.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/shed.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/stock.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/tank-loads.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/typed.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/water.ftl")),
            include_str!(concat!("../../../../assets/words/", $language, "/weather.ftl")),
        ]
    };
}

struct Messages {
    bundle: FluentBundle<FluentResource>,
    /// Most messages are plain, and are said many times a frame.
    known: FxHashMap<Box<str>, Message>,
}

enum Message {
    Plain(Box<str>),
    Parts(Vec<Part>),
    /// Fluent has to choose by the values of these names.
    Chosen(Vec<Box<str>>),
}

enum Part {
    Text(Box<str>),
    Value(Box<str>),
}

static ENGLISH: LazyLock<Messages> = LazyLock::new(|| read(Language::English, &files!("en")));
static SPANISH: LazyLock<Messages> = LazyLock::new(|| read(Language::Spanish, &files!("es")));

fn messages(language: Language) -> &'static Messages {
    match language {
        Language::English => &ENGLISH,
        Language::Spanish => &SPANISH,
    }
}

fn read(language: Language, files: &[&str]) -> Messages {
    let mut bundle = FluentBundle::new_concurrent(vec![language.code().parse().unwrap_or_default()]);
    // Signs that set a value apart from text in the other direction are boxes on paper; both languages run from left to right.
    bundle.set_use_isolating(false);
    let mut known = FxHashMap::default();
    for text in files {
        // What cannot be read is left out; a test holds that nothing is.
        let resource = FluentResource::try_new((*text).to_owned()).unwrap_or_else(|(read, _)| read);
        for entry in resource.entries() {
            if let Entry::Message(message) = entry
                && let Some(pattern) = &message.value
            {
                known.insert(message.id.name.into(), laid(pattern));
            }
        }
        bundle.add_resource_overriding(resource);
    }
    Messages { bundle, known }
}

fn laid(pattern: &Pattern<&str>) -> Message {
    let mut parts = Vec::with_capacity(pattern.elements.len());
    let mut text = String::new();
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { value } => text.push_str(value),
            PatternElement::Placeable { expression: Expression::Inline(InlineExpression::StringLiteral { value }) } => {
                text.push_str(&unescape_unicode_to_string(value));
            }
            PatternElement::Placeable {
                expression: Expression::Inline(InlineExpression::VariableReference { id }),
            } => {
                if !text.is_empty() {
                    parts.push(Part::Text(std::mem::take(&mut text).into()));
                }
                parts.push(Part::Value(id.name.into()));
            }
            PatternElement::Placeable { .. } => {
                let mut names = Vec::new();
                choosing(pattern, &mut names);
                return Message::Chosen(names);
            }
        }
    }
    if parts.is_empty() {
        return Message::Plain(text.into());
    }
    if !text.is_empty() {
        parts.push(Part::Text(text.into()));
    }
    Message::Parts(parts)
}

/// The names of the values by which a message is chosen.
fn choosing(pattern: &Pattern<&str>, names: &mut Vec<Box<str>>) {
    for element in &pattern.elements {
        if let PatternElement::Placeable { expression: Expression::Select { selector, variants } } = element {
            if let InlineExpression::VariableReference { id } = selector {
                names.push(id.name.into());
            }
            for variant in variants {
                choosing(&variant.value, names);
            }
        }
    }
}

/// A message without values; English where the language lacks it, its name where English lacks it too.
pub(super) fn plain(language: Language, id: &'static str) -> &'static str {
    let plain = |language| match messages(language).known.get(id) {
        Some(Message::Plain(text)) => Some(&**text),
        _ => None,
    };
    plain(language).or_else(|| plain(Language::English)).unwrap_or(id)
}

/// Which message says a sentence of a rule table.
static ROWS: LazyLock<FxHashMap<&'static str, &'static str>> = LazyLock::new(|| {
    let of_tables = ENGLISH.known.iter().filter(|(id, _)| id.starts_with("row-"));
    of_tables
        .filter_map(|(id, message)| match message {
            Message::Plain(text) => Some((&**text, &**id)),
            _ => None,
        })
        .collect()
});

/// All sentences of rule tables that are messages.
#[cfg(test)]
pub(super) fn rows() -> impl Iterator<Item = &'static str> {
    ROWS.keys().copied()
}

/// A sentence of a rule table in a language; as the table has it where the language lacks it.
pub(super) fn row(language: Language, sentence: &str) -> &str {
    match language {
        Language::English => sentence,
        Language::Spanish => ROWS.get(sentence).map_or(sentence, |id| plain(language, id)),
    }
}

/// A message with values in it; English where the language lacks it, its name where English lacks it too.
pub(super) fn filled(language: Language, id: &str, with: &[(&str, &dyn Display)]) -> String {
    let said = said(language, id, with).or_else(|| said(Language::English, id, with));
    said.unwrap_or_else(|| id.to_owned())
}

fn said(language: Language, id: &str, with: &[(&str, &dyn Display)]) -> Option<String> {
    let messages = messages(language);
    let value = |name: &str| with.iter().find(|(known, _)| *known == name).map(|(_, value)| *value);
    match messages.known.get(id)? {
        Message::Plain(text) => Some(text.to_string()),
        Message::Parts(parts) => {
            let mut said = String::new();
            for part in parts {
                // What is missing shows as its name in braces, as in Fluent.
                let written = match part {
                    Part::Text(text) => said.write_str(text),
                    Part::Value(name) => match value(name) {
                        Some(value) => write!(said, "{value}"),
                        None => write!(said, "{{${name}}}"),
                    },
                };
                written.ok()?;
            }
            Some(said)
        }
        Message::Chosen(names) => {
            let mut args = FluentArgs::with_capacity(with.len());
            for (name, value) in with {
                let text = value.to_string();
                let count = names.iter().any(|known| **known == **name).then(|| text.parse().ok()).flatten();
                args.set(*name, count.map_or_else(|| FluentValue::from(text), FluentValue::Number));
            }
            format(language, id, &args)
        }
    }
}

/// A message with what stands in it; `None` where there is no such message in the language.
pub(super) fn format(language: Language, id: &str, with: &FluentArgs<'_>) -> Option<String> {
    let bundle = &messages(language).bundle;
    let pattern = bundle.get_message(id)?.value()?;
    // What is missing shows as its name in braces.
    Some(bundle.format_pattern(pattern, Some(with), &mut Vec::new()).into_owned())
}
