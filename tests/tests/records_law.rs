//! Records against what rules ask for: each legal element of `reference/record-elements.csv`, written out apart from the program
//! with its citation, is an element of its profile, is read from a record and is missed where it is not there. And the days by which
//! records are due, worked out by hand.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use jiff::civil::{Date, Time, date, datetime, time};
use serde::Deserialize;
use tankard_core::farm::{
    Customer, Farm, Formulation, Layout, NozzleSet, OwnElement, Pass, Product, ProductKind, Reading, Record,
    RecordActive, RecordField, RecordLine, Rig, Says, Signature, Statement, SunTime,
};
use tankard_core::finding::{Basis, Finding, Level};
use tankard_core::language::days::{moment, short_date};
use tankard_core::quantity::{ActiveBasis, AsTyped, Quantity};
use tankard_core::season::profile::{self, At, Due, dates, kept, missing};
use tankard_core::season::worker_protection::posting;

const ELEMENTS: &str = include_str!("../reference/record-elements.csv");
const DAY: Date = date(2031, 6, 12);

fn typed<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

/// An element of a rule: the profile, its key there, what the rule calls it, a piece of what a full record shows for it, the rule.
#[derive(Debug, Deserialize)]
struct Legal {
    profile: String,
    key: String,
    element: String,
    shows: String,
    citation: String,
}

fn legal() -> Vec<Legal> {
    csv::Reader::from_reader(ELEMENTS.as_bytes()).deserialize().collect::<Result<_, _>>().unwrap()
}

fn pesticide(name: &str) -> Product {
    let mut product = Product::new(name, ProductKind::Herbicide, Formulation::SC);
    product.restricted = true;
    let mut staged = Statement::new(Says::CropStage, "page 3");
    "V2".clone_into(&mut staged.from_stage);
    "V8".clone_into(&mut staged.to_stage);
    let sun = |text: &str| text.parse::<SunTime>().unwrap();
    product.label = vec![
        staged,
        Statement::new(Says::Daylight { from: sun("sunrise"), to: sun("sunset") }, "page 4"),
        Statement::new(Says::Temperature { least: None, most: Some(typed("85 °F")) }, "page 4"),
        Statement::new(Says::RainFree { hours: 4 }, "page 4"),
        Statement::new(Says::Humidity { least: Some(typed("40 %")), most: None }, "page 4"),
    ];
    product
}

fn line(id: &str, name: &str, amount: &str, kind: ProductKind) -> RecordLine {
    RecordLine { kind: Some(kind), ..RecordLine::new(id, name, typed(amount)) }
}

/// A farm that keeps to one profile, with the labels of two restricted products.
fn farm(profile: &str) -> Farm {
    let mut farm = Farm::new("Test");
    farm.keeping.profiles = vec![profile.to_owned()];
    "Demo Spraying".clone_into(&mut farm.keeping.holder);
    "1 Yard Road".clone_into(&mut farm.keeping.address);
    "N-9".clone_into(&mut farm.keeping.number);
    farm.products.insert("atrazine".to_owned(), pesticide("Atrazine 480 SC (demo)"));
    farm.products.insert("dicamba".to_owned(), pesticide("Dicamba 350 SL (demo)"));
    farm
}

/// A record in which nothing is left out: two pesticides and an oil on two fields, of 112 ac and as much again, for a customer.
fn full(day: Date) -> Record {
    let mut record = Record::new("Corn, post", day);
    record.start = Some(time(6, 20, 0, 0));
    record.end = Some(time(9, 50, 0, 0));
    for (id, name) in [("creek", "Creek piece"), ("mill", "Mill field")] {
        record.fields.insert(
            id.to_owned(),
            RecordField {
                crop: "corn".into(),
                stage: "BBCH 14".into(),
                planted: Some(date(2031, 5, 2)),
                location: "T12N R5W S8".into(),
                parcel: "P-77".into(),
                crop_code: "ZEAMX".into(),
                ..RecordField::new(name, typed("112 ac"))
            },
        );
    }
    let of = |id: &str, name: &str, active: &str, number: &str, amount: &str, hours: u32| RecordLine {
        registration: number.into(),
        restricted: true,
        entry: Some(hours),
        actives: vec![RecordActive {
            name: active.into(),
            group: "".into(),
            basis: ActiveBasis::ActiveIngredient,
            mass: typed("56 lb"),
        }],
        ..line(id, name, amount, ProductKind::Herbicide)
    };
    record.lines = vec![
        of("atrazine", "Atrazine 480 SC (demo)", "atrazine", "demo 1", "14 gal", 12),
        of("dicamba", "Dicamba 350 SL (demo)", "dicamba", "demo 2", "28 gal", 24),
        line("oil", "Crop oil (demo)", "16 gal", ProductKind::Adjuvant),
    ];
    record.weeds = vec!["waterhemp".into()];
    record.method = "hand gun".into();
    record.nozzles = "flat fan 04".into();
    record.pressure = Some(typed("40 psi"));
    record.clean_out = "three rinses before and after".into();
    record.wind = Some(typed("5 mph"));
    record.wind_from = "W".into();
    record.temperature = Some(typed("66 °F"));
    record.humidity = Some(typed("61 %"));
    record.readings = vec![Reading {
        at: record.end,
        wind: Some(typed("8 mph")),
        wind_from: "SW".into(),
        temperature: Some(typed("74 °F")),
        ..Reading::default()
    }];
    record.operator = "A. Demo".into();
    record.certificate = "C-17".into();
    record.supervisor = "B. Demo".into();
    record.helpers = "H. Demo".into();
    record.customer = Some(Box::new(Customer {
        name: "Neighbour Demo".into(),
        address: "2 Mill Lane".into(),
        phone: "555 0100".into(),
        copied: Some(date(2031, 6, 20)),
    }));
    record.signed =
        Some(Box::new(Signature { by: "S. Demo".into(), at: datetime(2031, 6, 12, 18, 0, 0, 0), hash: String::new() }));
    for (key, text) in [
        ("sds", "in the office"),
        ("displayed", "2031-06-12 11:00, yard board"),
        ("machine-readable", "exported 2031-06-13"),
        ("maker", "Demo Works"),
        ("recommended-by", "D. Demo"),
        ("exchange", "told E. Demo, 2031-06-11 17:00"),
        ("planted-area", "120 ac planted"),
        ("site-id", "site 3"),
        ("reported", "sent in July"),
        ("training", "certificate of February"),
        ("receipts", "receipt 5"),
        ("label-copy", "in the binder"),
        ("buffer", "240 ft"),
        ("sensitive-survey", "looked on 2031-06-11"),
        ("emergence", "after emergence"),
        ("runoff-points", "3"),
        ("bulletin", "none for June"),
        ("forecast-temperature", "78 °F"),
        ("mix-site", "at the pump"),
        ("supplier", "Demo Supply"),
        ("rain", "no rain"),
        ("certificates", "A. Demo C-17; B. Demo C-18"),
    ] {
        record.more.insert(key.to_owned(), text.to_owned());
    }
    record
}

/// Takes out of a record, or of what the farm says of its holder, all that one element reads.
fn empty(farm: &mut Farm, record: &mut Record, key: &str) {
    let fields = |record: &mut Record, change: fn(&mut RecordField)| record.fields.values_mut().for_each(change);
    let lines = |record: &mut Record, change: fn(&mut RecordLine)| record.lines.iter_mut().for_each(change);
    let customer = |record: &mut Record, change: fn(&mut Customer)| change(record.customer.as_mut().unwrap());
    match key {
        "product" => lines(record, |line| line.name = "".into()),
        "registration" | "mix" => lines(record, |line| line.registration = "".into()),
        "actives" => lines(record, |line| line.actives.clear()),
        "amount" | "dose" | "field-amounts" => lines(record, |line| line.amount = typed("0 gal")),
        "entry" => lines(record, |line| line.entry = None),
        "location" => fields(record, |field| field.location = "".into()),
        "parcel" => fields(record, |field| field.parcel = "".into()),
        "area" | "covered-area" => fields(record, |field| field.area = typed("0 ac")),
        "crop" => fields(record, |field| field.crop = "".into()),
        "crop-code" => fields(record, |field| field.crop_code = "".into()),
        // A stage of another scale is not of BBCH.
        "bbch" => fields(record, |field| field.stage = "V4".into()),
        "planted" => fields(record, |field| field.planted = None),
        // A record without a field is of no surface that the program knows.
        "type-of-use" => record.fields.clear(),
        "start" => record.start = None,
        "end" => record.end = None,
        "wind" => record.wind = None,
        "wind-from" => record.wind_from = "".into(),
        "temperature" => record.temperature = None,
        "humidity" => record.humidity = None,
        "wind-at-end" | "temperature-at-end" => record.readings.clear(),
        "wind-changes" => record.readings[0].wind_from = "".into(),
        "weather" => (record.wind, record.temperature, record.humidity) = (None, None, None),
        "pest" => record.weeds.clear(),
        "nozzles" => record.nozzles = "".into(),
        "pressure" => record.pressure = None,
        "clean-out" => record.clean_out = "".into(),
        "operator" | "involved" => record.operator = "".into(),
        "uncertified" => {
            record.operator = "".into();
            record.helpers = "".into();
        }
        "applicator" => {
            record.operator = "".into();
            record.supervisor = "".into();
        }
        "certificate" => record.certificate = "".into(),
        "signature" => record.signed = None,
        "customer" => customer(record, |customer| customer.name = "".into()),
        "customer-address" => customer(record, |customer| customer.address = "".into()),
        "customer-phone" => customer(record, |customer| customer.phone = "".into()),
        "customer-copy" => customer(record, |customer| customer.copied = None),
        "holder" => farm.keeping.holder.clear(),
        "holder-address" => farm.keeping.address.clear(),
        "holder-number" => farm.keeping.number.clear(),
        other => assert!(record.more.shift_remove(other).is_some(), "nobody knows how to empty \"{other}\""),
    }
}

/// A full record of which the profile speaks: the dicamba labels end in 2028 and are for soybean and cotton.
fn full_for(profile: &str) -> Record {
    let dicamba = profile == "us-dicamba";
    let mut record = full(if dicamba { date(2027, 6, 12) } else { DAY });
    for field in record.fields.values_mut().filter(|_| dicamba) {
        field.crop = "soybean".into();
        field.crop_code = "GLXMA".into();
    }
    record
}

fn found(farm: &Farm, record: &Record, today: Date) -> Vec<Finding> {
    missing(farm, &"it".to_owned(), record, today)
}

#[test]
fn each_legal_element_is_read_from_the_record_and_missed_where_it_is_not_there() {
    let legal = legal();
    assert!(legal.len() > 150, "{}", legal.len());
    for row in legal {
        assert!(row.citation.len() > 10, "{row:?}");
        let (farm, mut record) = (farm(&row.profile), full_for(&row.profile));
        let profile = profile::profile(&row.profile).unwrap_or_else(|| panic!("no profile {}", row.profile));
        let wanted = profile.elements.iter().find(|wanted| wanted.element.key() == row.key);
        let wanted = wanted.unwrap_or_else(|| panic!("{} does not ask for {}", row.profile, row.element));
        let all = kept(&farm, &record);
        let held = all[0].rows.iter().find(|held| held.key == row.key);
        let held = held.unwrap_or_else(|| panic!("{row:?} is not asked for in a full record"));
        let text = held.held.as_ref().unwrap_or_else(|lack| panic!("{row:?}: {lack:?}"));
        let shows = if row.key == "date" { short_date(record.date) } else { row.shows.clone() };
        assert!(text.contains(&shows), "{row:?} reads \"{text}\"");
        let today = record.date.tomorrow().unwrap();
        assert_eq!(found(&farm, &record, today), [], "{}: a full record lacks nothing", row.profile);
        // A date cannot be left out of a record, and an empty method is a ground boom.
        if row.key == "date" || row.key == "method" {
            continue;
        }
        let mut farm = farm;
        empty(&mut farm, &mut record, &row.key);
        let findings = found(&farm, &record, today);
        assert!(findings.iter().any(|finding| finding.text.contains(wanted.name())), "{row:?}: {findings:?}");
    }
}

#[test]
fn every_profile_is_full_with_a_full_record_and_every_element_of_it_has_been_looked_at() {
    let legal = legal();
    for profile in profile::all() {
        let (farm, record) = (farm(&profile.key), full_for(&profile.key));
        assert_eq!(found(&farm, &record, record.date), [], "{}", profile.key);
        // An empty record lacks what the profile asks for in all cases, and says on what that rests.
        let mut bare = Farm::new("Bare");
        bare.keeping.profiles = vec![profile.key.clone()];
        let nothing = Record::new("Nothing yet", record.date);
        let findings = found(&bare, &nothing, nothing.date);
        // Where it speaks of one active alone, the plain record is kept until that is in it.
        let speaking = if profile.key == "us-dicamba" { &profile::all()[0] } else { profile };
        assert!(!findings.is_empty(), "{}", profile.key);
        assert!(findings.iter().all(|finding| finding.basis == speaking.basis()), "{}", profile.key);
    }
    let listed = |profile: &str| legal.iter().filter(|row| row.profile == profile).count();
    // What the federal rule numbers (1) to (5), and the copy.
    assert_eq!(listed("us-rup"), 10);
}

#[test]
fn days_by_which_records_are_due() {
    let mut record = full(date(2032, 2, 20));
    let day = |due: Due, record: &Record| due.of(record).day;
    // February 2032 has 29 days: 20 + 14 = 34, the 5th of March; 20 + 30 = 50, the 21st.
    assert_eq!(day(Due::Days(14), &record), date(2032, 3, 5));
    assert_eq!(day(Due::Days(30), &record), date(2032, 3, 21));
    record.date = date(2031, 2, 20);
    assert_eq!(day(Due::Days(14), &record), date(2031, 3, 6));
    assert_eq!(day(Due::Days(30), &record), date(2031, 3, 22));
    record.date = date(2031, 12, 25);
    assert_eq!(day(Due::Days(14), &record), date(2032, 1, 8));
    assert_eq!(day(Due::NextMonth(10), &record), date(2032, 1, 10));
    assert_eq!(day(Due::SameDay, &record), record.date);
    // 24 hours from 09:50.
    let by = Due::Hours(24).of(&record);
    assert_eq!((by.day, by.time), (date(2031, 12, 26), Some(time(9, 50, 0, 0))));
    // Past midnight: it began at 22:00 and ended at 01:30 of the next day.
    record.start = Some(time(22, 0, 0, 0));
    record.end = Some(time(1, 30, 0, 0));
    assert_eq!(Due::Hours(24).of(&record).to_string(), "27 December 2031, 01:30");
    // Without an end they run from the start, without that from midnight.
    record.end = None;
    assert_eq!(Due::Hours(72).of(&record).to_string(), "28 December 2031, 22:00");
    record.start = None;
    assert_eq!(Due::Hours(24).of(&record).time, Some(Time::midnight()));
    // Nothing runs out of the calendar.
    record.date = Date::MAX;
    for due in [Due::Days(u32::MAX), Due::Hours(u32::MAX), Due::NextMonth(10)] {
        assert_eq!(day(due, &record).year(), 9999);
    }
}

fn at(farm: &Farm, record: &Record, what: &str) -> At {
    let all = dates(farm, record);
    all.iter().find(|dated| dated.what == what).unwrap_or_else(|| panic!("no {what} in {all:?}")).at.clone()
}

#[test]
fn days_that_follow_from_a_record() {
    let day = |farm: &Farm, record: &Record, what| at(farm, record, what).to_string();
    let record = full(DAY);
    // 40 CFR 170.112(a)(3): the longest of 12 h and 24 h, from the end at 09:50.
    let wps = farm("us-wps");
    assert_eq!(day(&wps, &record, "re-entry time ends"), "13 June 2031, 09:50");
    // 40 CFR 170.122: until 30 days after the interval; 13 June + 30 = 13 July. Then 2 years.
    assert_eq!(day(&wps, &record, "displayed until"), "13 July 2031");
    assert_eq!(day(&wps, &record, "kept until"), "13 July 2033");
    assert_eq!(day(&wps, &record, "the record is due"), "13 June 2031, 09:50");
    // 7 CFR 110.3 as told by UF/IFAS PI280: 14 days, 2 years, copy in 30 days.
    let rup = farm("us-rup");
    assert_eq!(day(&rup, &record, "the record is due"), "26 June 2031");
    assert_eq!(day(&rup, &record, "copy for the customer is due"), "12 July 2031");
    assert_eq!(day(&rup, &record, "kept until"), "12 June 2033");
    // Germany counts 3 years from 1 January 2032: to the end of 2034.
    assert_eq!(day(&farm("de"), &record, "kept until"), "31 December 2034");
    // 2 years from a leap day: there is no 29 February 2034, and a day more harms nobody.
    assert_eq!(day(&rup, &full(date(2032, 2, 29)), "kept until"), "1 March 2034");
    assert_eq!(day(&farm("us-ne"), &full(date(2032, 2, 28)), "kept until"), "28 February 2035");
    // What is not typed is not made up.
    let mut open = full(DAY);
    open.end = None;
    assert!(matches!(at(&wps, &open, "re-entry time ends"), At::Unknown(_)));
    assert!(matches!(at(&wps, &open, "kept until"), At::Unknown(_)));
    open.end = record.end;
    open.lines[1].entry = None;
    let At::Unknown(why) = at(&wps, &open, "re-entry time ends") else { panic!("a time is missing") };
    assert!(why.contains("Dicamba 350 SL (demo)"), "{why}");
    // Hours that end in another month: 48 h from 30 June 09:50.
    let mut june = full(date(2031, 6, 30));
    june.lines[0].entry = Some(48);
    assert_eq!(day(&wps, &june, "re-entry time ends"), "2 July 2031, 09:50");
}

/// 40 CFR 170.112(a)(3), now 170.407: the longest of all products counts. The sheet for workers and the record say the same, also in
/// the days that follow from it.
#[test]
fn the_sheet_for_workers_and_the_record_know_one_re_entry_time() {
    let mut farm = farm("us-wps");
    let same = |farm: &Farm, record: &Record| {
        let posted = posting(farm, &"it".to_owned(), record);
        let ends = at(farm, record, "re-entry time ends");
        let posted_ends = posted.entry.ends.map_or("not known".to_owned(), moment);
        assert!(ends.to_string().starts_with(&posted_ends), "{ends} is not {posted_ends}");
        assert_eq!(at(farm, record, "displayed until").date(), posted.display_until);
        assert_eq!(at(farm, record, "kept until").date(), posted.keep_until);
        ends.to_string()
    };
    // An oil whose label has 48 h binds like any other label.
    let mut record = full(DAY);
    record.lines[2].entry = Some(48);
    assert_eq!(same(&farm, &record), "14 June 2031, 09:50");
    // What is not recorded stands on the label in the shed.
    record.lines[2].entry = None;
    record.lines[1].entry = None;
    assert!(same(&farm, &record).starts_with("not known"));
    farm.products["dicamba"].label.push(Statement::new(Says::ReEntry { hours: 36 }, "page 1"));
    assert_eq!(same(&farm, &record), "13 June 2031, 21:50");
    // Without an interval and without an end the days count from the application.
    for line in &mut record.lines {
        line.entry = Some(0);
    }
    record.end = None;
    same(&farm, &record);
    assert_eq!(at(&farm, &record, "displayed until").to_string(), "12 July 2031");
    // 24 h from 09:50 on 29 January 2032 and 30 days more are 29 February; two years on there is none, so 1 March.
    let mut leap = full(date(2032, 1, 29));
    leap.lines[1].entry = Some(24);
    assert_eq!(same(&farm, &leap), "30 January 2032, 09:50");
    assert_eq!(at(&farm, &leap, "displayed until").to_string(), "29 February 2032");
    assert_eq!(at(&farm, &leap, "kept until").to_string(), "1 March 2034");
}

/// What nobody has looked up again is said of each fact: the two years of 40 CFR 170.311(b)(6) and the three of Regulation (EC)
/// 1107/2009, Article 67(1), while the rest of the profile rests on a source.
#[test]
fn how_long_it_is_kept_says_how_sure_it_is() {
    for (key, source) in [("us-wps", "40 CFR 170.311(b)(6)"), ("eu", "Article 67(1)"), ("de", "Article 67(1)")] {
        let all = dates(&farm(key), &full(DAY));
        let kept = all.iter().find(|dated| dated.what == "kept until").unwrap();
        let Basis::Published(text) = &kept.basis else { panic!("{kept:?}") };
        assert!(text.contains(source) && text.ends_with("from memory, check"), "{text}");
        assert!(profile::profile(key).unwrap().keep_words().ends_with("(from memory, check)"), "{key}");
    }
    assert_eq!(profile::profile("us-rup").unwrap().keep_words(), "2 years from the application");
}

#[test]
fn a_finding_is_a_note_until_the_day_and_a_check_from_it_on() {
    let (farm, mut record) = (farm("us-rup"), full(DAY));
    record.certificate = "".into();
    record.fields["mill"].location = "".into();
    let on = |today| {
        let findings = found(&farm, &record, today);
        assert_eq!(findings.len(), 1, "{findings:?}");
        findings.into_iter().next().unwrap()
    };
    let early = on(date(2031, 6, 25));
    assert_eq!(early.level, Level::Note);
    assert!(early.text.ends_with("certification number of the applicator; due by 26 June 2031"), "{}", early.text);
    assert!(early.text.contains("location of the application of Mill field,"), "{}", early.text);
    assert!(matches!(&early.basis, Basis::Published(source) if source.starts_with("7 CFR 110.3")));
    assert_eq!(on(date(2031, 6, 26)).level, Level::Check);
    let late = on(date(2031, 6, 27));
    assert!(late.level == Level::Check && late.text.ends_with("it was due by 26 June 2031"), "{}", late.text);
    // Up to the last day it is kept, and no longer.
    on(date(2033, 6, 12));
    assert_eq!(found(&farm, &record, date(2033, 6, 13)), []);
}

/// For whom a record is kept.
fn spoken(farm: &Farm, record: &Record) -> Vec<String> {
    profile::kept(farm, record).into_iter().map(|kept| kept.name.to_owned()).collect()
}

#[test]
fn a_profile_speaks_of_its_own_records_alone() {
    let (mut farm, mut record) = (farm("us-rup"), full(DAY));
    // Adjuvants need no registration number in the federal record, and unrestricted products no record.
    record.operator = "".into();
    record.supervisor = "".into();
    assert_eq!(found(&farm, &record, DAY).len(), 1);
    farm.products.values_mut().for_each(|product| product.restricted = false);
    assert_eq!(found(&farm, &record, DAY).len(), 1, "the record holds that they were restricted");
    record.lines.iter_mut().for_each(|line| line.restricted = false);
    assert_eq!(spoken(&farm, &record), ["Plain record"]);
    // The dicamba labels end on 6 February 2028.
    farm.keeping.profiles = vec!["us-dicamba".to_owned()];
    record.fields["mill"].crop = "Dicamba-tolerant soybeans".into();
    record.date = date(2028, 2, 6);
    assert!(!found(&farm, &record, record.date).is_empty());
    record.date = date(2028, 2, 7);
    assert_eq!(spoken(&farm, &record), ["Plain record"]);
}

/// Labels of dicamba over the top are for tolerant soybean and cotton (University of Georgia Extension, 2018; Kansas State University,
/// article 682-1): dicamba in corn is another label's matter. A field whose crop is not written down may be one of them.
#[test]
fn dicamba_over_the_top_is_for_soybean_and_cotton() {
    let farm = farm("us-dicamba");
    let speaks = |crop: &str, code: &str| {
        let mut record = full(date(2027, 6, 12));
        for field in record.fields.values_mut() {
            field.crop = crop.into();
            field.crop_code = code.into();
        }
        spoken(&farm, &record) != ["Plain record"]
    };
    for (crop, code) in [("soybean", ""), ("Soya bean", ""), ("cotton, tolerant", ""), ("Baumwolle", "GOSHI"), ("", "")]
    {
        assert!(speaks(crop, code), "{crop} {code}");
    }
    for (crop, code) in [("corn", "ZEAMX"), ("wheat", ""), ("", "ZEAMX")] {
        assert!(!speaks(crop, code), "{crop} {code}");
    }
}

/// What each place sets by itself, apart from its list: Western Australia 7 days and 2 years (BAM Regulations 2020, r. 4), Quebec 5 years
/// (Pesticides Management Code, s. 84), Washington 7 years and the same day (from memory, check), California's growers by the 10th of the
/// next month and its businesses within 7 days (3 CCR 6626 and the authority's overview).
#[test]
fn days_of_some_places() {
    let record = full(DAY);
    let day = |profile, what| at(&farm(profile), &record, what).to_string();
    assert_eq!(day("au-wa", "the record is due"), "19 June 2031");
    assert_eq!(day("au-wa", "kept until"), "12 June 2033");
    assert_eq!(day("ca-qc", "kept until"), "12 June 2036");
    assert_eq!(day("us-wa", "the record is due"), "12 June 2031");
    assert_eq!(day("us-wa", "kept until"), "12 June 2038");
    assert_eq!(day("us-ca", "monthly report is due"), "10 July 2031");
    assert_eq!(day("us-ca-business", "report is due"), "19 June 2031");
    let claims = |profile| dates(&farm(profile), &record).iter().any(|dated| dated.what == "the record is due");
    assert!(!claims("us-ca") && !claims("us-ca-business") && !claims("ca-qc"));
}

/// Penn State Extension: names and certification numbers of everyone involved. Of one who did it alone the record's own number is all.
#[test]
fn everyone_involved_has_a_certification_number() {
    let (farm, mut record) = (farm("us-pa"), full(DAY));
    record.more.shift_remove("certificates");
    assert_eq!(found(&farm, &record, DAY).len(), 1);
    record.supervisor = "".into();
    assert_eq!(found(&farm, &record, DAY).len(), 1, "a helper has one too");
    record.helpers = "".into();
    assert_eq!(found(&farm, &record, DAY), []);
}

/// Pesticides Regulation 2017 (NSW), clause 36: wind at each significant change, rain only where the label names it.
#[test]
fn later_readings_hold_the_wind_and_rain_is_asked_for_where_the_label_names_it() {
    let (mut farm, mut record) = (farm("au-nsw"), full(DAY));
    let later = Reading { at: Some(time(8, 0, 0, 0)), temperature: Some(typed("70 °F")), ..Reading::default() };
    record.readings.push(later);
    let findings = found(&farm, &record, DAY);
    assert!(findings[0].text.contains("at each significant change of 08:00;"), "{findings:?}");
    record.readings.clear();
    record.more.shift_remove("rain");
    assert!(found(&farm, &record, DAY)[0].text.contains("New South Wales: rain;"));
    for product in farm.products.values_mut() {
        product.label.retain(|statement| !matches!(statement.says, Says::RainFree { .. }));
    }
    assert_eq!(found(&farm, &record, DAY), []);
}

/// 7 U.S.C. 136(u) (FIFRA, section 2(u), from memory, check): defoliants and desiccants are pesticides, and rodents are pests. The
/// program has no kind for them, so "other" counts as one, as does what has no kind; a water conditioner does not.
#[test]
fn a_product_of_another_kind_counts_as_a_pesticide() {
    let (farm, mut record) = (farm("gb"), full(DAY));
    let mut lacks = |kind| {
        record.lines = vec![RecordLine { kind, ..line("gone", "Demo product", "1 gal", ProductKind::Other) }];
        record.fields["creek"].crop = "".into();
        !found(&farm, &record, DAY).is_empty()
    };
    assert!(lacks(Some(ProductKind::Other)) && lacks(None));
    assert!(!lacks(Some(ProductKind::Conditioner)));
}

/// Minnesota Department of Agriculture, private applicator recordkeeping, quoting the USDA: under 1/10 acre brand name, number, date,
/// amount and location with the word "spot" do.
#[test]
fn spots_under_a_tenth_of_an_acre() {
    let (farm, mut record) = (farm("us-rup"), full(DAY));
    record.fields.shift_remove("mill");
    let field = &mut record.fields["creek"];
    field.crop = "".into();
    field.area = typed("0.09 ac");
    record.certificate = "".into();
    assert_eq!(found(&farm, &record, DAY).len(), 1, "nothing says that it was a spot");
    record.fields["creek"].part = "Spot at the gate".into();
    assert_eq!(found(&farm, &record, DAY), []);
    let all = kept(&farm, &record);
    let location = all[0].rows.iter().find(|row| row.key == "location").unwrap();
    assert_eq!(location.held.as_deref(), Ok("Spot at the gate, T12N R5W S8"));
    record.fields["creek"].area = typed("0.11 ac");
    assert_eq!(found(&farm, &record, DAY).len(), 1);
}

/// Guidance of the USDA: an 80-acre grove sprayed in alternate middles is 80 acres. Bands of a third are recorded as the whole
/// field.
#[test]
fn bands_are_recorded_as_the_whole_field() {
    let mut farm = farm("us-rup");
    let mut rig = Rig::new("Band rig", typed("300 gal"));
    let set = NozzleSet {
        layout: Some(Layout::Band { width: typed("10 in"), rows: typed("30 in"), nozzles: 1 }),
        ..NozzleSet::default()
    };
    rig.sets.insert("bands".to_owned(), set);
    farm.rigs.insert("rig".to_owned(), rig);
    let mut pass = Pass::new("Grove", DAY);
    pass.rig = "rig".to_owned();
    pass.nozzles = "bands".to_owned();
    farm.passes.insert("grove".to_owned(), pass);
    let mut record = full(DAY);
    record.pass = Some("grove".into());
    record.fields.shift_remove("mill");
    record.fields["creek"].area = typed("26.666667 ac");
    let all = kept(&farm, &record);
    let area = all[0].rows.iter().find(|row| row.key == "covered-area").unwrap();
    let text = area.held.as_ref().unwrap();
    assert!(text.starts_with("80") && text.ends_with("of which 26.666667 ac in bands"), "{text}");
}

#[test]
fn what_the_farm_asks_for_itself() {
    let (mut farm, mut record) = (farm("us-rup"), full(DAY));
    let own = |name: &str, asked_by: &str, due_days, restricted_only| OwnElement {
        name: name.to_owned(),
        asked_by: asked_by.to_owned(),
        due_days,
        restricted_only,
    };
    farm.keeping.own.insert("lot".to_owned(), own("lot numbers", "the mill", Some(7), false));
    farm.keeping.own.insert("photo".to_owned(), own("photo", "", None, true));
    let findings = found(&farm, &record, date(2031, 6, 18));
    assert_eq!(findings.len(), 2, "{findings:?}");
    assert!(findings[0].text.ends_with("lacks for the mill: lot numbers; due by 19 June 2031"), "{}", findings[0].text);
    assert_eq!((findings[0].level, findings[1].level), (Level::Note, Level::Check));
    assert!(matches!((&findings[0].basis, &findings[1].basis), (Basis::Local(_), Basis::Own)));
    record.more.insert("lot".to_owned(), "A7".to_owned());
    record.lines.iter_mut().for_each(|line| line.restricted = false);
    farm.products.values_mut().for_each(|product| product.restricted = false);
    assert_eq!(found(&farm, &record, DAY), []);
}

/// Common practice, no source: what a record holds where the farm chose no profile.
#[test]
fn the_plain_record() {
    let mut farm = farm("plain");
    farm.keeping.profiles.clear();
    let mut record = full(DAY);
    let names = |farm: &Farm, record: &Record| profile::open(farm, record, DAY).names;
    record.start = None;
    record.wind = None;
    record.certificate = "".into();
    assert_eq!(names(&farm, &record), ["start", "wind", "certificate"]);
    record.lines.iter_mut().for_each(|line| line.restricted = false);
    farm.products.values_mut().for_each(|product| product.restricted = false);
    assert_eq!(names(&farm, &record), ["start", "wind"]);
    record.fields.clear();
    assert_eq!(names(&farm, &record).first().map(String::as_str), Some("fields"));
    assert_eq!(
        names(&farm, &Record::new("Nothing", DAY)),
        ["fields", "products", "start", "end", "wind", "temperature", "operator"]
    );
    assert_eq!(found(&farm, &record, DAY)[0].basis, Basis::Practice);
}
