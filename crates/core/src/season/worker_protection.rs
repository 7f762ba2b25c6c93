//! What the Worker Protection Standard asks to be displayed after an application: 40 CFR 170.311(b), and how far others keep away
//! while it is made, 40 CFR 170.405(a). When that rule binds a farm is for the farm to know; the label and local law govern.

use jiff::ToSpan as _;
use jiff::civil::{Date, DateTime};

use crate::farm::{Droplets, Farm, Id, ProductKind, Record, RecordLine};
use crate::finding::{Basis, Finding, Subject};
use crate::loads::card::re_entry_hours;
use crate::quantity::Length;

/// Days for which the information stays on display after the restricted-entry interval: 40 CFR 170.311(b)(5).
const DISPLAY_DAYS: i64 = 30;
/// Years for which it is kept after that: 40 CFR 170.311(b)(6), from memory.
const KEEP_YEARS: i64 = 2;

/// What follows from a record. None where something is missing that it hangs on; the findings say what.
#[derive(Clone, Debug, PartialEq)]
pub struct Posting {
    /// The longest restricted-entry interval of the products in hours, as far as known; 0 where none has one.
    pub entry_hours: u32,
    /// Products of which it is not known.
    pub entry_unknown: Vec<String>,
    /// When the interval ends: the longest of the products, from the end of the application.
    pub entry_ends: Option<DateTime>,
    /// Last day on which the information is displayed: 30 days after the interval, or after the application without one.
    pub display_until: Option<Date>,
    /// Last day on which it is kept: two years after that.
    pub keep_until: Option<Date>,
    /// How far others stay away while it is sprayed; zero where the rule asks for nothing.
    pub zone: Option<Length>,
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

/// How far others stay away from sprayer and spray while it goes out; zero where nothing is asked for, `None` where class of
/// droplets or height is not known.
///
/// 40 CFR 170.405(a)(1): 100 ft by air, by air blast, as fumigant, smoke, mist or fog, or in droplets finer than medium; 25 ft in
/// medium or coarser droplets from higher than 12 in above the soil; else none.
pub fn exclusion_zone(method: &str, droplets: Option<Droplets>, height: Option<Length>) -> Option<Length> {
    const FAR: [&str; 12] = [
        "aerial",
        "aircraft",
        "airplane",
        "aeroplane",
        "helicopter",
        "drone",
        "air blast",
        "air-blast",
        "airblast",
        "fumig",
        "smoke",
        "fog",
    ];
    let method = method.to_lowercase();
    if FAR.iter().any(|word| method.contains(word)) || method.split(' ').any(|word| word.starts_with("mist")) {
        return Some(Length::from_feet(100.0));
    }
    match droplets? {
        Droplets::ExtremelyFine | Droplets::VeryFine | Droplets::Fine => Some(Length::from_feet(100.0)),
        _ if height?.exceeds(Length::from_inches(12.0)) => Some(Length::from_feet(25.0)),
        _ => Some(Length::ZERO),
    }
}

/// What follows from a record: 40 CFR 170.311(b).
pub fn posting(farm: &Farm, id: &Id, record: &Record) -> Posting {
    let pesticides: Vec<&RecordLine> = record.lines.iter().filter(|line| is_pesticide(farm, line)).collect();
    let hours: Vec<Option<u32>> = record.lines.iter().map(|line| entry_hours(farm, line)).collect();
    let unknown = pesticides.iter().filter(|line| entry_hours(farm, line).is_none());
    let entry_unknown: Vec<String> = unknown.map(|line| line.name.clone()).collect();
    let entry_hours = hours.into_iter().flatten().max().unwrap_or(0);
    let ended = record.ended();
    // An interval that is too short would let people in too early: with one product unknown its end is not told.
    let entry_ends =
        ended.filter(|_| entry_unknown.is_empty()).and_then(|end| end.checked_add(i64::from(entry_hours).hours()).ok());
    // Without an interval the days count from the application, of which the day is always known.
    let from = entry_ends
        .map(DateTime::date)
        .or_else(|| (entry_hours == 0 && entry_unknown.is_empty() && record.end.is_none()).then_some(record.date));
    let display_until = from.and_then(|day| day.checked_add(DISPLAY_DAYS.days()).ok());
    let keep_until = display_until.and_then(|day| day.checked_add(KEEP_YEARS.years()).ok());
    let zone =
        exclusion_zone(&record.method, record.droplets, record.height.as_ref().map(crate::quantity::AsTyped::value));
    let findings = missing(id, record, &pesticides, &entry_unknown, zone);
    Posting { entry_hours, entry_unknown, entry_ends, display_until, keep_until, zone, findings }
}

/// What the sheet has to hold and the record does not say.
fn missing(
    id: &Id,
    record: &Record,
    pesticides: &[&RecordLine],
    entry_unknown: &[String],
    zone: Option<Length>,
) -> Vec<Finding> {
    let check = |text: String, hint: &str, rule: &str| {
        Finding::check(Subject::Record(id.clone()), text, Basis::Law(rule.to_owned())).hint(hint)
    };
    let information = "40 CFR 170.311(b)(1)";
    let mut found = Vec::new();
    if record.fields.values().any(|field| field.crop.trim().is_empty()) {
        found.push(check(
            "Crop or site treated is not written down".into(),
            "Write the crop into the record",
            information,
        ));
    }
    if record.fields.values().any(|field| field.location.trim().is_empty()) {
        let hint = "Describe the area: where it lies, or by a map beside the sheet";
        found.push(check("Location of the treated area is not written down".into(), hint, information));
    }
    if pesticides.is_empty() {
        found.push(check("No pesticide is written down".into(), "Write down the products that went out", information));
    }
    for line in pesticides {
        if line.registration.trim().is_empty() {
            let text = format!("EPA registration number of {} is not written down", line.name);
            found.push(check(text, "It stands on the label", information));
        }
        if line.actives.is_empty() {
            let text = format!("Active ingredients of {} are not written down", line.name);
            found.push(check(text, "They stand on the label", information));
        }
    }
    for (name, time) in [("began", record.start), ("ended", record.end)] {
        if time.is_none() {
            let text = format!("The time at which the application {name} is not written down");
            found.push(check(text, "Write it into the record", information));
        }
    }
    for name in entry_unknown {
        let text = format!("Restricted-entry interval of {name} is not known, so its end is not told");
        found.push(check(
            text,
            "Write the hours of its label into the record, 0 where it has none",
            "40 CFR 170.407(a)",
        ));
    }
    let zone_rule = "40 CFR 170.405(a)(1)";
    match zone {
        None => found.push(check(
            "The exclusion zone cannot be told: droplet class or nozzle height is not written down".into(),
            "Write both into the record",
            zone_rule,
        )),
        Some(zone) if zone == Length::ZERO => found.push(
            Finding::note(
                Subject::Record(id.clone()),
                "The record has the height above what was sprayed; the rule counts from the soil",
                Basis::Law(zone_rule.to_owned()),
            )
            .hint("Keep 25 ft where the nozzles were higher than 12 in above the soil"),
        ),
        Some(_) => {}
    }
    found
}

#[cfg(test)]
mod tests;
