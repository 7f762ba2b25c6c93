//! What the sheet must hold on paper: 40 CFR 170.311(b)(1). The records are invented.

#![allow(clippy::unwrap_used)]

use jiff::civil::date;
use typst::layout::Transform;

use super::*;
use crate::book::full_record;
use crate::tests::{Run, assert_is_clear, ink, runs};

const PRINTED: Date = date(2031, 6, 13);

fn farm(paper: Paper, records: Vec<Record>) -> Farm {
    let mut farm = Farm { name: "Larkspur Bend (demo)".into(), paper, ..Farm::new("") };
    farm.emergency = vec!["Emergency 555-0100".into()];
    farm.records = records.into_iter().enumerate().map(|(at, record)| (format!("r{at}"), record)).collect();
    farm
}

fn pages(farm: &Farm) -> (Vec<Vec<Run>>, Vec<Finding>) {
    let ids: Vec<Id> = farm.records.keys().cloned().collect();
    let (document, warnings, findings) = compile(farm, &ids, PRINTED).unwrap();
    assert_eq!(crate::in_words(&warnings), "");
    if let Ok(folder) = std::env::var("TANKARD_CARDS") {
        let bytes = pdf(farm, &ids, PRINTED).unwrap().0;
        std::fs::write(format!("{folder}/workers-{:?}.pdf", farm.paper), bytes).unwrap();
    }
    let page = |frame| {
        let mut found = Vec::new();
        runs(frame, Transform::identity(), &mut found);
        found
    };
    (document.pages().iter().map(|one| page(&one.frame)).collect(), findings)
}

#[test]
fn all_that_is_displayed_is_on_the_sheet() {
    let (pages, findings) = pages(&farm(Paper::Letter, vec![full_record()]));
    assert_eq!(findings, []);
    assert_eq!(pages.len(), 1);
    let printed: String = pages.iter().flatten().map(|run| ink(&run.words)).collect();
    // 12 h from 20:30 on 12 June; 30 days and two years on from 13 June.
    for wanted in [
        "Mill field",
        "74.6 ac",
        "corn",
        "NW quarter of section 14",
        "Glyphosate 540 SL (demo)",
        "00000-1",
        "Glyphosate",
        "Thursday 12 June 2031",
        "17:00",
        "20:30",
        "12 h, the longest of the products",
        "Friday 13 June 2031, 08:30",
        "13 July 2031",
        "13 July 2033, from memory, check",
        "the two years are from memory, check 40 CFR 170.311(b)(6)",
        "25 ft from the sprayer",
        "safety data sheets",
        "Emergency 555-0100",
        "The label and local law govern",
        "Page 1 of 1",
        "Printed 13 June 2031",
    ] {
        assert!(printed.contains(&ink(wanted)), "not on the sheet: {wanted}");
    }
}

/// 40 CFR 170.405(a)(1) counts the height from the soil; a record has that above what was sprayed.
#[test]
fn no_sheet_says_that_no_exclusion_zone_holds() {
    let height = |text: &str| Some(tankard_core::quantity::AsTyped::parse(text).unwrap());
    let low = Record { height: height("10 in"), ..full_record() };
    let odd = Record { method: "chemigation".into(), ..full_record() };
    let printed = |record| -> String {
        pages(&farm(Paper::Letter, vec![record])).0.iter().flatten().map(|run| ink(&run.words)).collect()
    };
    assert!(
        printed(low)
            .contains(&ink("25 ft from the sprayer, on every side, unless the nozzles were within 12 in of the soil"))
    );
    assert!(printed(odd).contains(&ink("not known for this method")));
}

#[test]
fn sheets_are_clear_and_what_is_missing_is_told() {
    for paper in [Paper::Letter, Paper::A4] {
        let mut bare = Record { lines: full_record().lines, ..Record::new("Bare", date(2031, 7, 1)) };
        for line in &mut bare.lines {
            line.entry = None;
        }
        let (pages, findings) = pages(&farm(paper, vec![full_record(), bare]));
        assert_eq!(pages.len(), 2);
        for runs in &pages {
            assert_is_clear(&format!("{paper:?}"), runs, paper);
        }
        assert!(findings.iter().any(|finding| finding.text.contains("Restricted-entry interval of")));
        assert!(findings.iter().any(|finding| finding.text.contains("exclusion zone")));
    }
    assert_eq!(pdf(&Farm::new(""), &[], PRINTED).map(|(bytes, _)| bytes), Err(PaperError::NoRecords));
}
