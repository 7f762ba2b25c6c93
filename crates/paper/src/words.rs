//! What the template of the load card says by itself, in the languages of the card.

use std::collections::BTreeMap;

use tankard_core::language::{Say, say};

use crate::{NOT_ISSUED, Sheet};

/// The headings and remarks of the template. Those that a value stands in are made in [`of`].
const FIXED: [&str; 37] = [
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
