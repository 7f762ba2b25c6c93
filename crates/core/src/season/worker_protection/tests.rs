//! Against the rule's text: 40 CFR 170.311(b) (what is displayed and how long), 170.405(a)(1) (exclusion zone), 170.305 (the interval
//! runs from the end of the application). That the longest interval of a mix counts is 40 CFR 170.407(a).

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use jiff::civil::{date, time};

use super::*;
use crate::farm::{RecordActive, RecordField};
use crate::quantity::{ActiveBasis, AsTyped};

fn line(name: &str, entry: Option<u32>) -> RecordLine {
    let actives = vec![RecordActive {
        name: "Glyphosate".into(),
        group: "9".into(),
        basis: ActiveBasis::AcidEquivalent,
        mass: AsTyped::parse("10 lb").unwrap(),
    }];
    let kind = Some(ProductKind::Herbicide);
    let registration = "00000-1".into();
    RecordLine { registration, kind, entry, actives, ..RecordLine::new("p", name, AsTyped::parse("10 gal").unwrap()) }
}

/// A record that leaves nothing out: sprayed until 20:30 on 12 June.
fn record(lines: Vec<RecordLine>) -> Record {
    let field = RecordField {
        crop: "corn".into(),
        location: "NW quarter of section 14".into(),
        ..RecordField::new("Mill field", AsTyped::parse("74.6 ac").unwrap())
    };
    Record {
        start: Some(time(17, 0, 0, 0)),
        end: Some(time(20, 30, 0, 0)),
        fields: [("mill".to_owned(), field)].into_iter().collect(),
        lines,
        droplets: Some(Droplets::Coarse),
        height: Some(AsTyped::parse("24 in").unwrap()),
        ..Record::new("Corn, second post", date(2031, 6, 12))
    }
}

fn of(record: &Record) -> Posting {
    posting(&Farm::new(""), &"r".to_owned(), record)
}

#[test]
fn the_longest_interval_runs_from_the_end_and_thirty_days_and_two_years_follow() {
    let posted = of(&record(vec![line("A", Some(12)), line("B", Some(24)), line("C", Some(4))]));
    assert_eq!(posted.entry.hours, Some(24));
    assert_eq!(posted.entry.ends, Some(date(2031, 6, 13).at(20, 30, 0, 0)));
    assert_eq!(posted.display_until, Some(date(2031, 7, 13)));
    assert_eq!(posted.keep_until, Some(date(2033, 7, 13)));
    assert_eq!(posted.findings, []);
}

#[test]
fn an_application_past_midnight_ends_on_the_next_day() {
    let late = Record { end: Some(time(1, 0, 0, 0)), ..record(vec![line("A", Some(12))]) };
    assert_eq!(of(&late).entry.ends, Some(date(2031, 6, 13).at(13, 0, 0, 0)));
}

/// Holds the fault of an interval that is told too short because one product's is not known.
#[test]
fn with_one_product_unknown_no_end_is_told() {
    let mut oil = line("Oil", None);
    oil.kind = Some(ProductKind::Adjuvant);
    assert!(of(&record(vec![line("A", Some(12)), oil])).entry.ends.is_some());
    let posted = of(&record(vec![line("A", Some(12)), line("B", None)]));
    assert_eq!((posted.entry.ends, posted.display_until, posted.keep_until), (None, None, None));
    assert_eq!(posted.entry.unknown, ["B"]);
    assert!(posted.findings.iter().any(|finding| finding.text.contains("interval of B is not known")));
}

#[test]
fn without_an_interval_the_days_count_from_the_application() {
    let none = Record { end: None, ..record(vec![line("A", Some(0))]) };
    let posted = of(&none);
    assert_eq!((posted.entry.ends, posted.display_until), (None, Some(date(2031, 7, 12))));
    let untimed = Record { end: None, ..record(vec![line("A", Some(12))]) };
    assert_eq!(of(&untimed).display_until, None);
}

fn zone(method: &str, droplets: Option<Droplets>, inches: Option<f64>) -> Result<Zone, Unzoned> {
    exclusion_zone(method, droplets, inches.map(Length::from_inches))
}

#[test]
fn the_exclusion_zone_goes_by_droplets_and_height() {
    assert_eq!(zone("", Some(Droplets::Fine), None), Ok(Zone::Far));
    assert_eq!(zone("", Some(Droplets::Medium), Some(20.0)), Ok(Zone::Near));
    assert_eq!(zone("", None, Some(20.0)), Err(Unzoned::Droplets));
    // Higher than 12 in above a canopy is higher above the soil; 12 in and less above a canopy prove nothing.
    assert_eq!(zone("", Some(Droplets::Medium), Some(12.1)), Ok(Zone::Near));
    assert_eq!(zone("", Some(Droplets::UltraCoarse), Some(12.0)), Ok(Zone::NearUnlessLow));
    assert_eq!(zone("", Some(Droplets::Coarse), None), Ok(Zone::NearUnlessLow));
}

/// 40 CFR 170.405(a)(1)(i): by air, air blast, as fumigant, smoke, mist or fog whatever the droplets are.
#[test]
fn the_exclusion_zone_goes_by_the_method() {
    for method in [
        "by air",
        "Aerial",
        "plane",
        "Airplane",
        "UAV",
        "UAV boom",
        "spray drone",
        "helicopter with boom",
        "air-blast sprayer",
        "airblast",
        "air blast",
        "Air-assisted boom",
        "orchard blower",
        "mist blower",
        "backpack mistblower",
        "cold fogging",
        "fog",
        "soil fumigation",
        "fumigant",
        "smoke",
        "fixed wing",
    ] {
        assert_eq!(zone(method, Some(Droplets::Coarse), Some(10.0)), Ok(Zone::Far), "{method}");
        assert_eq!(zone(method, None, None), Ok(Zone::Far), "{method}");
    }
    for method in [
        "",
        " ",
        "ground boom",
        "Boom sprayer",
        "boomless nozzles",
        "ground",
        "hand gun",
        "hand-gun",
        "handgun",
        "backpack",
        "Knapsack",
        "ground boom, air-induction nozzles",
        "tractor, air inclusion",
    ] {
        assert_eq!(zone(method, Some(Droplets::Coarse), Some(20.0)), Ok(Zone::Near), "{method}");
    }
    for method in ["chemigation", "broadcast", "wiper", "from above", "ULV", "avion"] {
        assert_eq!(zone(method, Some(Droplets::Coarse), Some(20.0)), Err(Unzoned::Method), "{method}");
        // No zone is wider than that of fine droplets, so it holds for any method.
        assert_eq!(zone(method, Some(Droplets::Fine), None), Ok(Zone::Far), "{method}");
    }
    let posted = of(&Record { method: "chemigation".into(), ..record(vec![line("A", Some(12))]) });
    assert!(posted.findings[0].text.contains("not known for this method"), "{:?}", posted.findings);
}

#[test]
fn what_the_sheet_must_hold_and_the_record_lacks_is_told() {
    let mut bare = record(vec![RecordLine::new("p", "A", AsTyped::parse("1 gal").unwrap())]);
    bare.fields = [("m".to_owned(), RecordField::new("Mill", AsTyped::parse("1 ac").unwrap()))].into_iter().collect();
    (bare.start, bare.end, bare.height) = (None, None, None);
    let found: Vec<String> = of(&bare).findings.iter().map(|finding| finding.text.clone()).collect();
    for words in [
        "Crop",
        "Location",
        "registration number",
        "Active ingredients",
        "began",
        "ended",
        "interval",
        "exclusion zone",
    ] {
        assert!(found.iter().any(|text| text.contains(words)), "{words} not in {found:?}");
    }
}
