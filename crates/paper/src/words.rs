//! What the templates say by themselves: that of the load card in the languages of the card, the others in the one that is spoken.

use std::collections::BTreeMap;

use tankard_core::language::{self, Say, plain, say};
use tankard_core::t;

use crate::world::Template;
use crate::{NOT_ISSUED, Sheet};

/// The headings and remarks of the template. Those that a value stands in are made in [`of`].
const FIXED: [&str; 38] = [
    "card-draft",
    "card-reprint",
    "card-read-second",
    "card-read-wear",
    "card-read-keep-out",
    "card-read-harvest",
    "card-read-open",
    "card-read-cautions",
    "card-read-emergency",
    "card-read-unsprayed",
    "card-read-note",
    "card-read-short",
    "card-field",
    "card-fields",
    "card-fill-to",
    "card-rig",
    "card-spray-between",
    "card-spray-only-with",
    "card-usual-practice",
    "card-unsprayed",
    "card-no-strip",
    "card-no-room-to-draw",
    "card-left-unsprayed",
    "card-gateway",
    "card-north",
    "card-wear",
    "card-after-spraying",
    "card-keep-out",
    "card-harvest",
    "card-open",
    "card-cautions",
    "card-emergency",
    "card-note",
    "card-less-ground",
    "card-remarks",
    "card-no-room-tank",
    "card-no-room-short",
    "card-foot",
];

/// The words of a sheet, by the names of their messages.
pub(crate) fn of(sheet: &Sheet) -> BTreeMap<&'static str, String> {
    let card = sheet.content;
    let mut words = BTreeMap::new();
    let mut add = |id: &'static str, said: Say| words.insert(id, said.in_languages(&card.languages));
    for id in FIXED {
        add(id, say(id));
    }
    let (load, of) = (card.load.to_string(), card.of.to_string());
    for id in ["card-load", "card-load-second"] {
        add(id, say(id).with("load", load.as_str()).with("of", of.as_str()));
    }
    add(
        "card-number",
        match sheet.number {
            NOT_ISSUED => say("card-not-issued"),
            number => say("card-number").with("number", number),
        },
    );
    add("card-issued", say("card-issued").with("when", sheet.issued.as_deref().unwrap_or_default()));
    add("card-with", say("card-with").with("water", card.water.as_str()));
    add("card-calibrated", say("card-calibrated").with("day", card.calibrated.as_str()));
    // The wind stands between the two, set by the template.
    add("card-wind-from", say("card-wind-from").with("from", ""));
    words
}

/// The file from which the other sheets take their words.
pub(crate) const WORDS_DATA: &str = "words.json";

/// What `evening-sheet.typ` says.
const EVENING: [&str; 29] = [
    "paper-evening-sheet",
    "paper-spraying-of-the-day",
    "paper-the-next-load-begins",
    "paper-cleaning-out",
    "paper-road",
    "paper-hours",
    "paper-by",
    "paper-before-it",
    "paper-limits",
    "paper-note-says",
    "paper-see-the-plan",
    "paper-has-no-cards",
    "paper-harvest-not-before",
    "paper-beside-it",
    "paper-for-the-crew",
    "paper-products-on-the-truck",
    "paper-also-on-the-truck",
    "paper-mind",
    "paper-no-strip-is-left",
    "paper-leave-unsprayed",
    "paper-evening-governs",
    "paper-head-field",
    "paper-nobody-enters-before",
    "paper-water",
    "paper-wear",
    "paper-in-an-emergency",
    "card-north",
    "card-left-unsprayed",
    "card-gateway",
];

/// What `jar-test.typ` says.
const JAR: [&str; 14] = [
    "paper-jar-test",
    "paper-tick-what-you-see",
    "paper-tested-on",
    "paper-carrier-temperature",
    "paper-tested-by",
    "paper-signature",
    "paper-remarks",
    "paper-before",
    "paper-then",
    "paper-open-when-printed",
    "paper-wear",
    "paper-cautions",
    "paper-put-in-in-this-order",
    "paper-result",
];

/// What `record-book.typ` says.
const BOOK: [&str; 23] = [
    "paper-record-book",
    "paper-it-was",
    "paper-it-is",
    "paper-head-field",
    "paper-head-ground",
    "paper-head-crop",
    "paper-head-stage",
    "paper-head-planted",
    "paper-head-location",
    "paper-head-product",
    "paper-head-registration",
    "paper-head-amount",
    "paper-head-rate",
    "paper-restricted-use",
    "paper-head-weather-at",
    "paper-head-wind",
    "paper-head-from",
    "paper-head-gust",
    "paper-head-air",
    "paper-head-humidity",
    "paper-signed",
    "paper-book-governs",
    "paper-number",
];

/// What `worker-protection.typ` says.
const WORKERS: [&str; 22] = [
    "paper-application-information",
    "paper-date-of-the-application",
    "paper-area-treated",
    "paper-crop-or-site",
    "paper-location-and-description",
    "paper-epa-registration-number",
    "paper-active-ingredients",
    "paper-restricted-entry",
    "paper-restricted-entry-interval",
    "paper-nobody-enters-before",
    "paper-exclusion-zone",
    "paper-exclusion-zone-rule",
    "paper-display-until",
    "paper-keep-until",
    "paper-safety-data-sheets",
    "paper-display-both",
    "paper-in-an-emergency",
    "paper-nearest-medical-facility",
    "paper-workers-governs",
    "paper-began",
    "paper-ended",
    "paper-head-product",
];

/// What `season-review.typ` says.
const REVIEW: [&str; 2] = ["paper-season-review", "paper-governs"];

/// What the template of a sheet says by itself, by the names of its messages, in the language that is spoken. Load cards bring their own.
pub(crate) fn spoken(template: Template) -> BTreeMap<&'static str, String> {
    let ids: &[&'static str] = match template {
        Template::Cards => &[],
        Template::Evening => &EVENING,
        Template::Jar => &JAR,
        Template::Book => &BOOK,
        Template::Workers => &WORKERS,
        Template::Review => &REVIEW,
    };
    let mut words: BTreeMap<&'static str, String> = ids.iter().map(|id| (*id, plain(id).to_owned())).collect();
    words.insert("language", language::spoken().code().to_owned());
    // Which page it is, and of how many, only the layout knows: it puts them where these marks stand.
    let (printed, page, pages) = ("{printed}", "{page}", "{pages}");
    words.insert("paper-page-of", t!("paper-page-of", page = page, pages = pages));
    words.insert("paper-printed-page-of", t!("paper-printed-page-of", printed = printed, page = page, pages = pages));
    words.insert("paper-printed-page", t!("paper-printed-page", printed = printed, page = page, pages = pages));
    // The wind stands behind it, set by the template.
    words.insert("card-wind-from", t!("card-wind-from", from = ""));
    words
}
