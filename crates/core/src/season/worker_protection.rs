//! What the Worker Protection Standard asks to be displayed after an application: 40 CFR 170.311(b), and how far others keep away
//! while it is made, 40 CFR 170.405(a). When that rule binds a farm is for the farm to know; the label and local law govern.

use jiff::civil::{Date, DateTime};

use crate::farm::{Droplets, Farm, Id, ProductKind, Record, RecordLine};
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;
use crate::loads::card::re_entry_hours;
use crate::quantity::Length;
use crate::season::profile::{after_hours, display_until, keep_until, profile};
use crate::words::plain_apart_by;

/// When people may enter again after an application.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Entry {
    /// The longest interval of the products in hours, as far as known; none where none of them has one.
    pub hours: Option<u32>,
    /// Pesticides of which it is not known.
    pub unknown: Vec<String>,
    /// When it ends: the longest of the products, from the end of the application. None where a pesticide's is not known, since one
    /// that is too short would let people in too early, or where the end of the application is not.
    pub ends: Option<DateTime>,
}

impl Entry {
    /// Whether people have to stay out, or may have to.
    pub fn binds(&self) -> bool {
        !self.unknown.is_empty() || self.hours.is_some_and(|hours| hours > 0)
    }
}

/// What follows from a record. None where something is missing that it hangs on; the findings say what.
#[derive(Clone, Debug, PartialEq)]
pub struct Posting {
    /// The restricted-entry interval.
    pub entry: Entry,
    /// Last day on which the information is displayed: 30 days after the interval, or after the application without one.
    pub display_until: Option<Date>,
    /// Last day on which it is kept: two years after that, from memory, check. Two years from the end of the interval would be less.
    pub keep_until: Option<Date>,
    /// How far others stay away while it is sprayed, or why that cannot be told.
    pub zone: Result<Zone, Unzoned>,
    /// What is missing on the sheet.
    pub findings: Vec<Finding>,
}

/// Whether a line of a record is a pesticide, by the record or else by the product in the shed. One of which it is not known counts as one,
/// and so does one of another kind than the program has: a rodenticide or a defoliant is one.
pub fn is_pesticide(farm: &Farm, line: &RecordLine) -> bool {
    let kind = line.kind.or_else(|| farm.products.get(&line.product).map(|product| product.kind));
    !matches!(kind, Some(ProductKind::Adjuvant | ProductKind::Conditioner | ProductKind::FoliarFeed))
}

/// Hours before people may enter, as recorded; else by the label as it now is in the shed.
pub fn entry_hours(farm: &Farm, line: &RecordLine) -> Option<u32> {
    line.entry.or_else(|| farm.products.get(&line.product).and_then(re_entry_hours))
}

/// When people may enter again: the longest interval of all products, whatever they are, since that of a label binds; from the end of
/// the application. A pesticide must have one, be it of 0 h; another product need not.
///
/// # References
/// 40 CFR 170.112(a)(3), now 170.407: of products that go out together the longest counts. It runs from the end of the application
/// (170.305, from memory, check).
pub fn entry(farm: &Farm, record: &Record) -> Entry {
    let unknown = record.lines.iter().filter(|line| is_pesticide(farm, line) && entry_hours(farm, line).is_none());
    let unknown: Vec<String> = unknown.map(|line| line.name.to_string()).collect();
    let hours = record.lines.iter().filter_map(|line| entry_hours(farm, line)).max();
    let ended = record.ended().filter(|_| unknown.is_empty());
    Entry { hours, unknown, ends: ended.map(|end| after_hours(end, hours.unwrap_or_default())) }
}

/// How far others stay away from the sprayer while it sprays.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Zone {
    /// 100 ft.
    Far,
    /// 25 ft.
    Near,
    /// 25 ft, unless the nozzles were within 12 in of the soil.
    NearUnlessLow,
}

/// How far others stay away from sprayer and spray while it goes out: 40 CFR 170.405(a)(1). 100 ft by air, by air blast, as fumigant,
/// smoke, mist or fog, or in droplets finer than medium; 25 ft in medium or coarser droplets from higher than 12 in above the soil;
/// else nothing is asked for.
///
/// The height of a record is that above what was sprayed, which stands above the soil: weeds do before a crop comes up. So a low one
/// does not prove that nothing is asked for, and the answer stays open.
///
/// # Errors
/// What has to be known first.
pub fn exclusion_zone(method: &str, droplets: Option<Droplets>, height: Option<Length>) -> Result<Zone, Unzoned> {
    let method = Method::of(method);
    let fine = |droplets| matches!(droplets, Droplets::ExtremelyFine | Droplets::VeryFine | Droplets::Fine);
    if method == Method::Air || droplets.is_some_and(fine) {
        Ok(Zone::Far)
    } else if method == Method::Other {
        Err(Unzoned::Method)
    } else if droplets.is_none() {
        Err(Unzoned::Droplets)
    } else if height.is_some_and(|height| height.exceeds(Length::from_inches(12.0))) {
        Ok(Zone::Near)
    } else {
        Ok(Zone::NearUnlessLow)
    }
}

/// Why the exclusion zone cannot be told.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unzoned {
    /// The method is not one of which the program knows whether it goes by air.
    Method,
    /// The droplet class is not written down.
    Droplets,
}

/// How it was put out, as far as the exclusion zone asks.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Method {
    /// From the air, with a blast of air, or as fumigant, smoke, mist or fog.
    Air,
    /// From the ground through nozzles.
    Ground,
    /// Not known.
    Other,
}

impl Method {
    /// By the words of a record. What is not surely sprayed from the ground is not taken to be.
    fn of(method: &str) -> Self {
        /// What names an aircraft or a blower wherever it stands in a word.
        const WITHIN: [&str; 9] =
            ["aerial", "plane", "copter", "drone", "aircraft", "blower", "fumig", "smoke", "dusting"];
        /// What does so at the beginning of a word.
        const AT_START: [&str; 9] = ["air", "uav", "uas", "rpas", "mist", "fog", "flown", "wing", "gyro"];
        /// Ways of spraying from the ground.
        const GROUND: [&str; 13] = [
            "boom",
            "ground rig",
            "ground sprayer",
            "tractor",
            "hand gun",
            "handgun",
            "spray gun",
            "lance",
            "wand",
            "backpack",
            "back pack",
            "knapsack",
            "hand sprayer",
        ];
        let method = plain_apart_by(method, |letter| !letter.is_alphanumeric());
        let words: Vec<&str> = method.split(' ').collect();
        // An air-induction nozzle draws in air and blasts none.
        let draws_in = |word: &str, next: &str| {
            ["induc", "inclu", "inject"].iter().any(|kind| {
                (word == "air" && next.starts_with(kind))
                    || word.strip_prefix("air").is_some_and(|end| end.starts_with(kind))
            })
        };
        let by_air = words.iter().enumerate().any(|(at, word)| {
            let next = words.get(at + 1).copied().unwrap_or_default();
            WITHIN.iter().any(|part| word.contains(part))
                || (AT_START.iter().any(|part| word.starts_with(part)) && !draws_in(word, next))
        });
        if by_air {
            Self::Air
        } else if method.is_empty() || method == "ground" || GROUND.iter().any(|way| holds(&method, way)) {
            Self::Ground
        } else {
            Self::Other
        }
    }
}

/// Whether a word, or one after the other, stands in a text; the last may go on: "booms", "boomless".
fn holds(text: &str, words: &str) -> bool {
    text.starts_with(words) || text.contains(&format!(" {words}"))
}

/// What follows from a record: 40 CFR 170.311(b).
pub fn posting(farm: &Farm, id: &Id, record: &Record) -> Posting {
    let pesticides: Vec<&RecordLine> = record.lines.iter().filter(|line| is_pesticide(farm, line)).collect();
    let entry = entry(farm, record);
    // The days are those of the record profile of the same rule.
    let kept = profile("us-wps");
    let display_until = kept.and_then(|profile| display_until(farm, record, profile).date());
    let keep_until = kept.and_then(|profile| keep_until(farm, record, profile));
    let zone =
        exclusion_zone(&record.method, record.droplets, record.height.as_ref().map(crate::quantity::AsTyped::value));
    let findings = missing(id, record, &pesticides, &entry.unknown, zone);
    Posting { entry, display_until, keep_until, zone, findings }
}

/// What the sheet has to hold and the record does not say.
fn missing(
    id: &Id,
    record: &Record,
    pesticides: &[&RecordLine],
    unknown: &[String],
    zone: Result<Zone, Unzoned>,
) -> Vec<Finding> {
    let check = |text: String, hint: &str, rule: &str| {
        Finding::check(Subject::Record(id.clone()), text, Basis::Law(rule.to_owned())).hint(hint)
    };
    let information = "40 CFR 170.311(b)(1)";
    let mut found = Vec::new();
    if record.fields.values().any(|field| field.crop.trim().is_empty()) {
        found.push(check(
            t!("season-crop-or-site-treated-is-not").into(),
            t!("season-write-the-crop-into-the-record"),
            information,
        ));
    }
    if record.fields.values().any(|field| field.location.trim().is_empty()) {
        let hint = t!("season-describe-the-area-where-it-lies");
        found.push(check(t!("season-location-of-the-treated-area-is").into(), hint, information));
    }
    if pesticides.is_empty() {
        found.push(check(
            t!("season-no-pesticide-is-written-down").into(),
            t!("season-write-down-the-products-that-went"),
            information,
        ));
    }
    for line in pesticides {
        if line.registration.trim().is_empty() {
            let text = t!("season-epa-registration-number-of-is-not", name = line.name);
            found.push(check(text, t!("season-it-stands-on-the-label"), information));
        }
        if line.actives.is_empty() {
            let text = t!("season-active-ingredients-of-are-not-written", name = line.name);
            found.push(check(text, t!("season-they-stand-on-the-label"), information));
        }
    }
    let times = [
        (t!("season-the-time-at-which-it-began"), record.start),
        (t!("season-the-time-at-which-it-ended"), record.end),
    ];
    for (text, time) in times {
        if time.is_none() {
            found.push(check(text.into(), t!("season-write-it-into-the-record"), information));
        }
    }
    for name in unknown {
        let text = t!("season-restricted-entry-interval-of-is-not", name = name);
        found.push(check(text, t!("season-write-the-hours-of-its-label"), "40 CFR 170.407(a)"));
    }
    let zone_rule = "40 CFR 170.405(a)(1)";
    match zone {
        Err(Unzoned::Method) => found.push(check(
            t!("season-the-exclusion-zone-is-not-known", method = record.method.trim()),
            t!("season-look-it-up-in-the-rule"),
            zone_rule,
        )),
        Err(Unzoned::Droplets) => found.push(check(
            t!("season-the-exclusion-zone-cannot-be-told").into(),
            t!("season-write-it-into-the-record"),
            zone_rule,
        )),
        Ok(Zone::NearUnlessLow) => found.push(
            Finding::note(
                Subject::Record(id.clone()),
                t!("season-the-exclusion-zone-hangs-on-whether"),
                Basis::Law(zone_rule.to_owned()),
            )
            .hint(t!("season-keep-25-ft-unless-they-were")),
        ),
        Ok(Zone::Far | Zone::Near) => {}
    }
    found
}

#[cfg(test)]
mod tests;
