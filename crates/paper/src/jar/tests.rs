//! What the page of a jar test must hold. The sheets are invented; products are named by what is in them.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use tankard_core::farm::Paper;
use tankard_core::mix::jar::sheet::{JarSheet, signs};

use super::{compile, pdf};
use crate::PaperError;
use crate::tests::{MARGIN, Run, assert_is_clear, ink, runs, step};

/// Ten products of a fertilizer carrier, in two jars: as full as a sheet gets.
fn full(paper: Paper) -> JarSheet {
    let mut steps = vec![
        step(0, "Urea ammonium nitrate", "", "237 mL", "8 fl oz"),
        step(0, "Compatibility agent, jar B only", "", "1.2 mL", "about 1/4 tsp"),
    ];
    for number in 1..=10 {
        let what = format!("Cloransulam-methyl 84 WDG number {number} (demo)");
        let hint = if number == 3 {
            "pour slowly; wait until dispersed. Stock 1 in 100: stir 1 g to 100 mL with urea ammonium nitrate; shake it and take 3.5 mL at once"
        } else {
            "shake the container first"
        };
        steps.push(step(number, &what, hint, "11.5 mL", "about 2 tbsp 1 3/4 tsp"));
    }
    steps.push(step(
        0,
        "Urea ammonium nitrate",
        "to the line; dry products take up little room",
        "to 473 mL",
        "about 222 mL, 7.5 fl oz",
    ));
    let lines = |lines: &[&str]| lines.iter().map(|line| (*line).to_owned()).collect::<Vec<_>>();
    JarSheet {
        paper,
        farm: "Larkspur Bend (demo)".into(),
        pass: "Corn, before emergence with starter".into(),
        date: "Thursday 12 June 2031".into(),
        facts: vec![
            ("Jar, filled to".into(), "1 US pint (473 mL)".into()),
            ("Carrier".into(), "urea ammonium nitrate".into()),
            ("Spray volume".into(), "15 gal/ac".into()),
            ("Carrier in the jar".into(), "442 mL, 14.9 fl oz".into()),
        ],
        jars: lines(&["A", "B"]),
        before: lines(&[
            "Take two clear jars, A and B, each with a lid and a line at 473 mL; about twice as large, so that it can be shaken.",
            "Take the carrier from the delivery that fills the tank, at the same temperature.",
            "After each product: lid on, turn over gently until it is even, only then the next.",
        ]),
        steps,
        after: lines(&[
            "Lid on. Shake for 10 seconds. Feel whether the jar gets warm.",
            "Let it stand and look at the times below. Then turn it over gently, ten times, and look again.",
            "Leave it overnight if the spray may stand in the tank.",
        ]),
        looks: lines(&["5 min", "15 min", "30 min", "overnight"]),
        signs: signs().iter().map(|sign| (sign.sign.clone(), sign.means.words().to_owned())).collect(),
        results: lines(&[
            "Even at every look: the products bear each other in this jar.",
            "Parted, but came back on gentle turning: keep the agitator running until the tank is empty.",
            "Got warm, or did not come back: do not spray this mix.",
            "Jar B is even and jar A is not: take the compatibility agent into the mix, or do not spray it.",
        ]),
        wear: lines(&["Chemical-resistant gloves, long sleeves, shoes and socks (all)"]),
        cautions: lines(&[
            "Work outdoors, away from people, food and animals. Wear gloves, eye protection and all that the labels ask for.",
            "Write on the jar what is in it. Never use a kitchen jar or spoon, and never one of these in a kitchen again.",
            "Put each product into the carrier, never two concentrates together.",
        ]),
        open: lines(&[
            "Check: The plan has a Stop; a jar test does not lift it. Settle it on the plan before the mix is sprayed.",
        ]),
        limits:
            "A jar test shows only whether the products bear each other in the jar. The label and local law govern."
                .into(),
    }
}

/// One product in water: as little as a sheet can hold.
fn small(paper: Paper) -> JarSheet {
    let mut sheet = full(paper);
    sheet.jars.clear();
    sheet.open.clear();
    sheet.wear.clear();
    sheet.results.truncate(3);
    sheet.looks = vec!["15 min".into(), "30 min".into(), "overnight".into()];
    sheet.steps = vec![
        step(0, "Water", "", "250 mL", ""),
        step(1, "Glyphosate 540 SL (demo)", "", "5.7 mL", ""),
        step(0, "Water", "to the line; dry products take up little room", "to 500 mL", "about 244 mL"),
    ];
    sheet
}

fn page(sheet: &JarSheet) -> Vec<Run> {
    let (document, warnings) = compile(sheet).unwrap();
    assert_eq!(crate::in_words(&warnings), "");
    assert_eq!(document.pages().len(), 1);
    let mut found = Vec::new();
    runs(&document.pages()[0].frame, typst::layout::Transform::identity(), &mut found);
    found
}

fn keep(name: &str, sheet: &JarSheet) {
    if let Ok(folder) = std::env::var("TANKARD_CARDS") {
        std::fs::write(format!("{folder}/{name}.pdf"), pdf(sheet).unwrap()).unwrap();
    }
}

#[test]
fn ten_products_stand_on_one_page_and_nothing_is_cut_off_or_lies_on_another() {
    for paper in [Paper::Letter, Paper::A4] {
        for (name, sheet) in [("jar-full", full(paper)), ("jar-small", small(paper))] {
            keep(&format!("{name}-{paper:?}"), &sheet);
            assert_is_clear(&format!("{name} {paper:?}"), &page(&sheet), paper);
        }
    }
}

#[test]
fn amounts_can_be_read_at_arm_s_length() {
    // Common practice, no source: 12 point is a comfortable least for a page that lies on a bench.
    for (sheet, words, least) in [(full(Paper::Letter), "11.5 mL", 12.0), (small(Paper::A4), "5.7 mL", 17.0)] {
        let amount = page(&sheet).into_iter().find(|run| run.words == words).unwrap();
        assert!(amount.size >= least, "{words}: {} pt", amount.size);
    }
}

#[test]
fn everything_on_the_sheet_is_on_the_page() {
    let sheet = full(Paper::Letter);
    let page: String = page(&sheet).iter().map(|run| ink(&run.words)).collect();
    let mut wanted: Vec<&str> =
        vec!["Jar test", "Result", "Cautions", "Wear", &sheet.farm, &sheet.pass, &sheet.date, &sheet.limits];
    for texts in [&sheet.before, &sheet.after, &sheet.looks, &sheet.results, &sheet.wear, &sheet.cautions, &sheet.open]
    {
        wanted.extend(texts.iter().map(String::as_str));
    }
    wanted.extend(sheet.facts.iter().chain(&sheet.signs).flat_map(|(a, b)| [a.as_str(), b.as_str()]));
    wanted.extend(sheet.steps.iter().flat_map(|step| [step.what.as_str(), &step.hint, &step.amount, &step.detail]));
    for words in wanted {
        assert!(page.contains(&ink(words)), "not on the page: {words}");
    }
    // A box for each jar at each look.
    assert_eq!(page.matches("AB").count(), sheet.looks.len() * sheet.signs.len());
}

#[test]
fn odd_and_long_names_print_as_typed() {
    let odd = r#"#panic("x") *bold* _low_ $x^2$ @ref <label> \ "quoted" `raw` [b] {c} // -- ~ = +"#;
    let mut sheet = full(Paper::Letter);
    sheet.farm = odd.into();
    sheet.steps[2].what = odd.into();
    let endless = "Unterwasserschutzgebietsverordnungsfeld".repeat(3);
    sheet.pass.clone_from(&endless);
    sheet.steps[3].what.clone_from(&endless);
    sheet.steps[4].amount = "1,234,567.8 mL of the stock solution".into();
    sheet.facts[1].1.clone_from(&endless);
    keep("jar-long", &sheet);
    let runs = page(&sheet);
    assert!(runs.iter().all(|run| run.right < 612.0 - MARGIN + 1.0));
    let page: String = runs.iter().map(|run| ink(&run.words)).collect();
    assert_eq!(page.matches(&ink(odd)).count(), 2);
}

#[test]
fn a_sheet_beyond_any_page_is_refused_and_the_same_sheet_gives_the_same_bytes() {
    let sheet = small(Paper::A4);
    assert!(pdf(&sheet).unwrap() == pdf(&sheet).unwrap());
    let mut endless = sheet;
    endless.cautions.push("Mind the gate and the dog. ".repeat(1000));
    assert_eq!(pdf(&endless), Err(PaperError::JarTooLong));
}
