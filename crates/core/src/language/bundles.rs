//! The messages, read once.

use std::sync::LazyLock;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource};

use super::Language;

/// The files of each language, in the order of [`Language::ALL`].
const FILES: [(Language, &[&str]); 2] = [
    (Language::English, &[include_str!("../../../../assets/words/en/card.ftl")]),
    (Language::Spanish, &[include_str!("../../../../assets/words/es/card.ftl")]),
];

static BUNDLES: LazyLock<Vec<(Language, FluentBundle<FluentResource>)>> = LazyLock::new(|| {
    let read = |(language, files): &(Language, &[&str])| {
        let mut bundle = FluentBundle::new_concurrent(vec![language.code().parse().unwrap_or_default()]);
        // Signs that set a value apart from text in the other direction are boxes on paper; both languages run from left to right.
        bundle.set_use_isolating(false);
        for text in *files {
            // What cannot be read is left out; a test holds that nothing is.
            let resource = FluentResource::try_new((*text).to_owned()).unwrap_or_else(|(read, _)| read);
            bundle.add_resource_overriding(resource);
        }
        (*language, bundle)
    };
    FILES.iter().map(read).collect()
});

fn bundle(language: Language) -> Option<&'static FluentBundle<FluentResource>> {
    BUNDLES.iter().find(|(known, _)| *known == language).map(|(_, bundle)| bundle)
}

/// A message with what stands in it; `None` where there is no such message in the language.
pub(super) fn format(language: Language, id: &str, with: &FluentArgs<'_>) -> Option<String> {
    let bundle = bundle(language)?;
    let pattern = bundle.get_message(id)?.value()?;
    // What is missing shows as its name in braces.
    Some(bundle.format_pattern(pattern, Some(with), &mut Vec::new()).into_owned())
}
