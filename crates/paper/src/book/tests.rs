//! What the record book must hold on paper. The records are invented; products are named by what is in them.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use jiff::civil::{date, time};
use tankard_core::farm::{
    Amendment, Change, Customer, Droplets, Expected, Left, OwnElement, ProductKind, RecordActive, Signature,
};
use tankard_core::quantity::ActiveBasis;
use typst::layout::Transform;

use super::*;
use crate::tests::{Run, assert_is_clear, ink, pages_of_pdf, runs};

const PRINTED: Date = date(2031, 12, 1);

fn typed<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap()
}

fn line(name: &str) -> RecordLine {
    let active = RecordActive {
        name: "Glyphosate".into(),
        group: "9".into(),
        basis: ActiveBasis::AcidEquivalent,
        mass: typed("56.3 lb"),
    };
    RecordLine {
        registration: "00000-1".into(),
        lot: "GL-2231".into(),
        kind: Some(ProductKind::Herbicide),
        restricted: true,
        entry: Some(12),
        harvest: Some(50),
        actives: vec![active],
        ..RecordLine::new("p", name, typed("15 gal"))
    }
}

/// A record in which nothing is left out.
pub(crate) fn full() -> Record {
    let field = |name: &str, area: &str| RecordField {
        crop: "corn".into(),
        stage: "V6".into(),
        variety: "early one".into(),
        planted: Some(date(2031, 5, 2)),
        location: "NW quarter of section 14".into(),
        parcel: "P-17".into(),
        crop_code: "ZEAMX".into(),
        part: "north strip".into(),
        ..RecordField::new(name, typed(area))
    };
    let fields =
        [("long".to_owned(), field("Long bottom", "96 ac")), ("mill".to_owned(), field("Mill field", "74.6 ac"))];
    let change = Change {
        what: "/fields/mill/area".into(),
        was: Some(Said::Text("70 ac".into())),
        is: Some(Said::Text("74.6 ac".into())),
    };
    Record {
        start: Some(time(17, 0, 0, 0)),
        end: Some(time(20, 30, 0, 0)),
        fields: fields.into_iter().collect(),
        volume: Some(typed("2559 gal")),
        left: Some(Left { volume: typed("40 gal"), went: "thinned and sprayed out".into() }),
        lines: vec![line("Glyphosate 540 SL (demo)"), line("Mesotrione 480 SC (demo)")],
        weeds: vec!["velvetleaf".into(), "giant foxtail".into()],
        water: "Yard well".into(),
        rig: "Big boom".into(),
        method: "ground boom".into(),
        nozzles: "110 degree, size 06".into(),
        height: Some(typed("24 in")),
        clean_out: "triple rinse after it".into(),
        wind: Some(typed("6 mph")),
        wind_from: "south-west".into(),
        gust: Some(typed("9 mph")),
        temperature: Some(typed("72 °F")),
        humidity: Some(typed("55 %")),
        readings: vec![Reading { at: Some(time(20, 30, 0, 0)), wind: Some(typed("4 mph")), ..Reading::default() }],
        droplets: Some(Droplets::Coarse),
        expected: Some(Box::new(Expected { source: "Forecast of 11 June".into(), ..Expected::default() })),
        operator: "A. Operator".into(),
        certificate: "C-123".into(),
        supervisor: "A. Supervisor".into(),
        customer: Some(Box::new(Customer {
            name: "A. Customer".into(),
            address: "Mill road 1".into(),
            ..Customer::default()
        })),
        more: [("site-id".to_owned(), "S-9".to_owned())].into_iter().collect(),
        note: "Gate was open.".into(),
        signed: Some(Box::new(Signature {
            by: "A. Signer".into(),
            at: date(2031, 6, 12).at(21, 5, 0, 0),
            hash: String::new(),
        })),
        amendments: vec![Amendment {
            by: "A. Clerk".into(),
            at: date(2031, 6, 20).at(8, 15, 0, 0),
            why: "the map was wrong".into(),
            changes: vec![change],
            hash: String::new(),
        }],
        ..Record::new("Corn, second post", date(2031, 6, 12))
    }
}

fn farm(paper: Paper, records: Vec<Record>) -> Farm {
    let mut farm = Farm { name: "Larkspur Bend (demo)".into(), paper, ..Farm::new("") };
    farm.records = records.into_iter().enumerate().map(|(at, record)| (format!("r{at}"), record)).collect();
    farm
}

fn pages(farm: &Farm, options: Options) -> Vec<Vec<Run>> {
    let ids: Vec<Id> = farm.records.keys().cloned().collect();
    let (document, warnings) = compile(farm, &ids, options, PRINTED, &untold).unwrap();
    assert_eq!(crate::in_words(&warnings), "");
    let page = |frame| {
        let mut found = Vec::new();
        runs(frame, Transform::identity(), &mut found);
        found
    };
    document.pages().iter().map(|one| page(&one.frame)).collect()
}

fn words(pages: &[Vec<Run>]) -> String {
    pages.iter().flatten().map(|run| ink(&run.words)).collect()
}

fn keep(name: &str, farm: &Farm, options: Options) {
    if let Ok(folder) = std::env::var("TANKARD_CARDS") {
        let ids: Vec<Id> = farm.records.keys().cloned().collect();
        std::fs::write(format!("{folder}/book-{name}.pdf"), pdf(farm, &ids, options, PRINTED).unwrap()).unwrap();
    }
}

const ONE: Options = Options { by: By::Date, one_a_page: true };

#[test]
fn everything_in_a_record_is_on_the_page() {
    let mut farm = farm(Paper::Letter, vec![full()]);
    farm.keeping.holder = "Bend Spraying (demo)".into();
    farm.keeping.own.insert("site-id".into(), OwnElement { name: "Site number".into(), ..OwnElement::default() });
    let printed = words(&pages(&farm, Options::default()));
    for wanted in [
        "Bend Spraying (demo)",
        "Corn, second post",
        "Thursday 12 June 2031",
        "17:00",
        "20:30",
        "Long bottom (north strip)",
        "74.6 ac",
        "ZEAMX",
        "early one",
        "V6",
        "2 May 2031",
        "NW quarter of section 14",
        "P-17",
        "Glyphosate 540 SL (demo)",
        "restricted use",
        "00000-1",
        "GL-2231",
        "Glyphosate (group 9) 56.3 lb ae",
        "keep out 12 h",
        "15 gal",
        "2559 gal",
        "40 gal, thinned and sprayed out",
        "velvetleaf, giant foxtail",
        "Yard well",
        "Big boom",
        "110 degree, size 06",
        "triple rinse after it",
        "6 mph",
        "south-west",
        "9 mph",
        "72 °F",
        "55 %",
        "4 mph",
        "coarse",
        "Forecast of 11 June",
        "A. Operator",
        "C-123",
        "A. Supervisor",
        "A. Customer, Mill road 1",
        "Site number",
        "S-9",
        "Gate was open.",
        "A. Signer, 12 June 2031, 21:05",
        "Amended by A. Clerk, 20 June 2031, 08:15",
        "the map was wrong",
        "fields, mill, area: was 70 ac, is 74.6 ac",
        "Printed 1 December 2031",
        "Page 1 of 1",
        "The label and local law govern",
    ] {
        assert!(printed.contains(&ink(wanted)), "not on the page: {wanted}");
    }
}

/// 15 gal on 170.6 ac are 1920 fl oz on 170.6 ac, 11.25 fl oz/ac (arithmetic).
#[test]
fn the_rate_is_the_amount_over_the_ground() {
    let printed = words(&pages(&farm(Paper::Letter, vec![full()]), Options::default()));
    assert!(printed.contains("11.25floz/ac") || printed.contains("11.3floz/ac"), "{printed}");
}

#[test]
fn nothing_overlaps_and_nothing_is_cut_off() {
    for paper in [Paper::Letter, Paper::A4] {
        let mut long = full();
        let endless = "Unterwasserschutzgebietsverordnungsfeld".repeat(3);
        long.name = endless.as_str().into();
        long.operator = endless.as_str().into();
        long.lines[0].name = endless.as_str().into();
        long.fields[0].name = endless.as_str().into();
        let bare = Record::new("Bare", date(2031, 7, 1));
        let farm = farm(paper, vec![full(), long, bare]);
        for (name, options) in
            [("date", Options::default()), ("field", Options { by: By::Field, one_a_page: false }), ("one", ONE)]
        {
            keep(&format!("{name}-{paper:?}"), &farm, options);
            for runs in pages(&farm, options) {
                assert_is_clear(&format!("{name} {paper:?}"), &runs, paper);
            }
        }
    }
}

#[test]
fn a_record_of_two_fields_stands_whole_under_one_and_is_named_under_the_other() {
    let farm = farm(Paper::A4, vec![full(), Record::new("Bare", date(2031, 7, 1))]);
    let printed = words(&pages(&farm, Options { by: By::Field, one_a_page: false }));
    assert_eq!(printed.matches("A.Operator").count(), 1);
    assert!(printed.contains(&ink("12 June 2031, Corn, second post: see Long bottom")));
    assert!(printed.contains(&ink("No field written down")));
}

#[test]
fn one_a_page_is_one_a_page_even_where_a_record_is_long() {
    let mut long = full();
    long.lines = (0..40).map(|at| line(&format!("Product {at} (demo)"))).collect();
    let farm = farm(Paper::Letter, vec![full(), long, full()]);
    let pages = pages(&farm, ONE);
    assert_eq!(pages.len(), 3);
    for runs in &pages {
        assert_is_clear("long", runs, Paper::Letter);
    }
}

#[test]
fn two_hundred_records_are_one_book() {
    let records = (0..200).map(|at| Record { name: format!("Pass number {at}").into(), ..full() }).collect();
    let farm = farm(Paper::Letter, records);
    let ids: Vec<Id> = farm.records.keys().cloned().collect();
    let bytes = pdf(&farm, &ids, Options::default(), PRINTED).unwrap();
    assert!((67..=200).contains(&pages_of_pdf(&bytes)), "{}", pages_of_pdf(&bytes));
}

#[test]
fn without_records_and_with_unknown_ones_it_says_so() {
    let farm = farm(Paper::A4, Vec::new());
    assert_eq!(pdf(&farm, &[], Options::default(), PRINTED), Err(PaperError::NoRecords));
    let unknown = PaperError::UnknownRecord { id: "x".into() };
    assert_eq!(pdf(&farm, &["x".to_owned()], Options::default(), PRINTED), Err(unknown));
}

/// Holds the fault of pasting text into markup.
#[test]
fn text_prints_as_typed() {
    let odd = r#"#panic("x") *bold* _low_ $x^2$ @ref <label> \ "quoted" 'single' `raw` [b] {c} // -- ~ = + %"#;
    let record = Record { note: odd.into(), operator: odd.into(), ..full() };
    assert_eq!(words(&pages(&farm(Paper::A4, vec![record]), Options::default())).matches(&ink(odd)).count(), 2);
}

#[test]
fn a_layout_tells_each_record_and_ends_where_nobody_waits_for_it() {
    use std::sync::Mutex;
    let farm = farm(Paper::A4, vec![full(), full(), full()]);
    let ids: Vec<Id> = farm.records.keys().cloned().collect();
    let options = Options { by: By::Date, one_a_page: true };
    let told = Mutex::new(Vec::new());
    let made = pdf_told(&farm, &ids, options, PRINTED, &|done, of| {
        told.lock().unwrap().push((done, of));
        Ok(())
    });
    assert_eq!(made, pdf(&farm, &ids, options, PRINTED));
    let told = told.into_inner().unwrap();
    for record in 0..=ids.len() {
        assert!(told.contains(&(record, Some(ids.len()))), "{record} of {told:?}");
    }
    let ended = pdf_told(&farm, &ids, options, PRINTED, &|_, _| Err(tankard_core::progress::Cancelled));
    assert_eq!(ended, Err(PaperError::Cancelled(tankard_core::progress::Cancelled)));
}
