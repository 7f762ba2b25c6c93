//! What the sheet of a day must hold on paper. The days are invented; products are named by what is in them.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use tankard_core::day::sheet::{SheetContent, SheetField, SheetLine, SheetPass, SheetRig};
use tankard_core::day::{Block, BlockKind, Row, Tick, Timeline};
use tankard_core::farm::Paper;
use tankard_core::farm::card::CardField;
use tankard_core::progress::untold;
use typst::layout::Transform;

use super::{compile, pdf};
use crate::tests::{Run, assert_is_clear, ink, pages_of_pdf, runs, sheet as card_sheet, typical};
use crate::{PaperError, Sheet};

/// The least print on the sheet, in points.
const LEAST: f64 = 7.5;

fn lines(lines: &[&str]) -> Vec<String> {
    lines.iter().map(|&line| line.into()).collect()
}

fn line(what: &str, amount: &str, detail: &str) -> SheetLine {
    SheetLine { what: what.into(), amount: amount.into(), detail: detail.into() }
}

fn pass(number: u32) -> SheetPass {
    SheetPass {
        pass: String::new(),
        number,
        name: ["Corn, second post", "Volunteer corn in beans", "Wheat, head timing"][number as usize % 3].into(),
        time: format!("{:02}:40 to {:02}:25", 4 + number, 6 + number),
        untimed: String::new(),
        doubt: String::new(),
        before: if number % 3 == 2 { lines(&["Clean out the rig, 45 min", "Road, 12 min"]) } else { Vec::new() },
        fields: vec![
            CardField { name: format!("Mill field {number}"), area: "74.6 ac".into() },
            CardField { name: format!("Long bottom {number}"), area: "96 ac".into() },
        ],
        spray: "2,559 gal".into(),
        loads: "3 loads".into(),
        rate: "15 gal/ac".into(),
        window: "05:40 to 13:00".into(),
        limits: "wind 3 to 10 mph, not in an inversion, air 50 to 85 °F, 4 h without rain".into(),
        operator: if number.is_multiple_of(2) { "A. Operator".into() } else { String::new() },
        open: "2 Checks".into(),
        no_cards: Vec::new(),
        note: String::new(),
    }
}

/// A day of so many passes on two rigs, three of four on the first.
fn day(paper: Paper, number: u32) -> SheetContent {
    let first = number.div_ceil(4) * 3;
    let rig = |name: &str, passes: std::ops::RangeInclusive<u32>| SheetRig {
        name: name.into(),
        passes: passes.map(pass).collect(),
    };
    let rigs = [rig("Big boom", 1..=first.min(number)), rig("Small boom", first + 1..=number)];
    let rigs: Vec<SheetRig> = rigs.into_iter().filter(|rig| !rig.passes.is_empty()).collect();
    let share = |hour: f64| (hour - 5.0) / 12.0;
    let row = |rig: &SheetRig| {
        let mut at = 5.0;
        let mut blocks = Vec::new();
        let long = 11.0 / rig.passes.len() as f64;
        for pass in &rig.passes {
            let mut push = |kind, hours: f64, name: &str| {
                let loads = if name.is_empty() { Vec::new() } else { vec![share(at + hours / 2.0)] };
                let (from, to) = (share(at), share(at + hours));
                at += hours;
                blocks.push(Block { from, to, kind, number: pass.number, name: name.into(), loads });
            };
            if !pass.before.is_empty() {
                push(BlockKind::CleanOut, 0.2 * long, "");
                push(BlockKind::Road, 0.1 * long, "");
            }
            push(BlockKind::Pass, 0.7 * long, &pass.name);
        }
        Row { rig: rig.name.clone(), blocks }
    };
    let ticks = (0..=12).map(|at| Tick { at: f64::from(at) / 12.0, label: format!("{:02}:00", 5 + at) }).collect();
    let timeline = Some(Timeline { ticks, rows: rigs.iter().map(row).collect() });
    let fields = (1..=number).map(|at| SheetField {
        name: format!("Mill field {at}"),
        enter: "Friday 00:25 if on time (12 h, Mesotrione)".into(),
        harvest: "11 August 2031 (60 days, Mesotrione)".into(),
        beside: if at % 2 == 0 { "creek (south, 110 ft)".into() } else { String::new() },
    });
    SheetContent {
        paper,
        farm: "Larkspur Bend (demo)".into(),
        date: "Thursday 12 June 2031".into(),
        day: lines(&["Sun up 05:52 to 20:58", "Rigs home by 19:00"]),
        note: if number < 8 { "The fuel truck comes at six.".into() } else { String::new() },
        timeline,
        rigs,
        left_out: Vec::new(),
        products: vec![
            line("Glyphosate 540 SL (demo)", "68 gal 2 qt", "27 jugs of 2.5 gal + 1 gal; lot GL-2231"),
            line("Mesotrione 480 SC (demo)", "9 gal 1 qt 8 fl oz", "3 jugs of 2.5 gal + 1 gal 3 qt 8 fl oz"),
            line("Crop oil concentrate (demo)", "60 gal", "24 jugs of 2.5 gal"),
            line("Ammonium sulfate (demo)", "510 lb", "10 bags of 51 lb"),
        ],
        water: vec![
            line(
                "Yard well",
                "5,900 gal",
                "for 6 loads; the nurse tank of Big boom is filled 3 times with up to 2,400 gal",
            ),
            line("Clean water for rinsing Big boom", "120 gal", "to begin with; filling it again is not counted"),
        ],
        not_counted: String::new(),
        wear: lines(&["chemical-resistant gloves, long sleeves, shoes and socks (Glyphosate 540 SL (demo))"]),
        fields: fields.collect(),
        outlines: Vec::new(),
        silent: lines(&["No harvest interval is typed for Clethodim 240 EC (demo) on Mill field 1; see the label."]),
        cautions: lines(&["The label and the law win over this sheet.", "A forecast is no measurement."]),
        emergency: lines(&["Emergency 555-0100", "Poison advice 555-0111"]),
    }
}

/// Long words wherever a person may type them.
fn long(paper: Paper) -> SheetContent {
    let mut day = day(paper, 3);
    let endless = "Unterwasserschutzgebietsverordnungsfeld".repeat(3);
    day.farm.clone_from(&endless);
    for rig in &mut day.rigs {
        rig.name.clone_from(&endless);
        for pass in &mut rig.passes {
            pass.name.clone_from(&endless);
            pass.operator.clone_from(&endless);
            pass.fields[0].name.clone_from(&endless);
            pass.spray = "1,234,567.8 gal and some more".into();
            pass.no_cards = vec![endless.clone()];
            pass.note.clone_from(&endless);
        }
    }
    for row in &mut day.timeline.as_mut().unwrap().rows {
        row.rig.clone_from(&endless);
        for block in &mut row.blocks {
            block.name.clone_from(&endless);
        }
    }
    for product in &mut day.products {
        product.what.clone_from(&endless);
        product.amount = "123 gal 3 qt 16 fl oz and 2 qt".into();
    }
    day.fields[0].name.clone_from(&endless);
    day.fields[0].beside.clone_from(&endless);
    day.wear.push(endless);
    day
}

/// The runs of text of each page of a sheet that lays out without a warning.
fn pages(sheet: &SheetContent, cards: &[Sheet]) -> Vec<Vec<Run>> {
    let (document, warnings) = compile(sheet, cards, &untold).unwrap();
    assert_eq!(crate::in_words(&warnings), "");
    let page = |frame| {
        let mut found = Vec::new();
        runs(frame, Transform::identity(), &mut found);
        found
    };
    document.pages().iter().map(|one| page(&one.frame)).collect()
}

fn keep(name: &str, sheet: &SheetContent) {
    if let Ok(folder) = std::env::var("TANKARD_CARDS") {
        std::fs::write(format!("{folder}/evening-{name}.pdf"), pdf(sheet, &[]).unwrap()).unwrap();
    }
}

fn printed(sheet: &SheetContent) -> String {
    pages(sheet, &[]).iter().flatten().map(|run| ink(&run.words)).collect()
}

#[test]
fn a_day_of_eight_passes_is_one_page_and_twenty_flow_on() {
    for paper in [Paper::Letter, Paper::A4] {
        for (number, wanted) in [(3, 1..=1), (8, 1..=1), (20, 2..=3)] {
            let day = day(paper, number);
            keep(&format!("{number}-{paper:?}"), &day);
            let count = pages(&day, &[]).len();
            assert!(wanted.contains(&count), "{number} passes on {paper:?}: {count} pages");
        }
    }
}

#[test]
fn nothing_overlaps_nothing_is_cut_off_and_no_print_is_small() {
    for paper in [Paper::Letter, Paper::A4] {
        for (name, day) in [("one", day(paper, 1)), ("eight", day(paper, 8)), ("long", long(paper))] {
            keep(&format!("{name}-{paper:?}"), &day);
            for runs in pages(&day, &[]) {
                assert_is_clear(&format!("{name} {paper:?}"), &runs, paper);
                for run in &runs {
                    // A name too wide for its place is made smaller.
                    assert!(name == "long" || run.size > LEAST - 0.01, "{name} {paper:?}: too small: {run:?}");
                }
            }
        }
    }
}

#[test]
fn everything_on_the_sheet_is_on_the_page() {
    let mut day = day(Paper::Letter, 4);
    day.rigs[0].passes[0].no_cards = lines(&["The wind is too strong. Wait for the evening."]);
    day.rigs[0].passes[1].note = "Mind the gate.".into();
    day.rigs[0].passes[1].doubt = "Not all of this time is inside the limits.".into();
    (day.rigs[0].passes[2].time, day.rigs[0].passes[2].untimed) = (String::new(), "start not typed".into());
    day.left_out = lines(&["Burndown is recorded as sprayed."]);
    day.not_counted = "Not counted, having no cards: 1 Volunteer corn in beans.".into();
    let page = printed(&day);
    let mut wanted = vec![&day.farm, &day.date, &day.note, &day.not_counted];
    for texts in [&day.day, &day.left_out, &day.wear, &day.silent, &day.cautions, &day.emergency] {
        wanted.extend(texts);
    }
    wanted.extend(day.products.iter().chain(&day.water).flat_map(|line| [&line.what, &line.amount, &line.detail]));
    wanted.extend(day.fields.iter().flat_map(|field| [&field.name, &field.enter, &field.harvest, &field.beside]));
    for rig in &day.rigs {
        wanted.push(&rig.name);
        for pass in &rig.passes {
            wanted.extend([&pass.name, &pass.time, &pass.untimed, &pass.spray, &pass.loads, &pass.rate, &pass.window]);
            wanted.extend([&pass.limits, &pass.operator, &pass.open, &pass.note, &pass.doubt]);
            wanted.extend(pass.before.iter().chain(&pass.no_cards));
            wanted.extend(pass.fields.iter().flat_map(|field| [&field.name, &field.area]));
        }
    }
    wanted.extend(day.timeline.iter().flat_map(|picture| &picture.ticks).map(|tick| &tick.label));
    for words in wanted {
        assert!(page.contains(&ink(words)), "not on the page: {words}");
    }
}

#[test]
fn start_and_loads_stand_large() {
    let day = day(Paper::Letter, 8);
    let pages = pages(&day, &[]);
    for words in ["05:40 to 07:25", "3 loads"] {
        let run = pages.iter().flatten().find(|run| ink(&run.words) == ink(words)).unwrap();
        assert!(run.size >= 12.0, "{words}: {} pt", run.size);
    }
}

/// Holds the fault of pasting text into markup.
#[test]
fn text_prints_as_typed() {
    let odd = r#"#panic("x") *bold* _low_ $x^2$ @ref <label> \ "quoted" 'single' `raw` [b] {c} // -- ~ = + %"#;
    let mut day = day(Paper::A4, 1);
    day.note = odd.into();
    day.rigs[0].name = odd.into();
    day.rigs[0].passes[0].note = odd.into();
    day.products[0].what = odd.into();
    day.emergency[0] = odd.into();
    assert_eq!(printed(&day).matches(&ink(odd)).count(), 5);
}

#[test]
fn a_day_without_times_has_no_picture_and_prints_all_the_same() {
    let mut day = day(Paper::Letter, 2);
    day.timeline = None;
    day.products.clear();
    day.water.clear();
    day.wear.clear();
    day.fields.clear();
    day.silent.clear();
    day.emergency.clear();
    let page = printed(&day);
    assert!(!page.contains("Productsonthetruck") && !page.contains("Nobodyentersbefore"));
    assert!(page.contains(&ink("Spraying of the day")));
}

#[test]
fn the_cards_follow_the_sheet_each_on_its_page() {
    let (day, card) = (day(Paper::A4, 2), typical(Paper::Letter));
    let sheets = [card_sheet(&card), card_sheet(&card)];
    let pages = pages(&day, &sheets);
    assert_eq!(pages.len(), 3);
    let words = |page: &[Run]| page.iter().map(|run| ink(&run.words)).collect::<String>();
    assert!(words(&pages[0]).contains(&ink("Spraying of the day")));
    for page in &pages[1..] {
        assert!(words(page).contains(&ink("Load 1 of 3")) && !words(page).contains(&ink("This sheet is a reckoning")));
    }
    let bytes = pdf(&day, &sheets).unwrap();
    assert_eq!(pages_of_pdf(&bytes), 3);
    assert!(bytes == pdf(&day, &sheets).unwrap());
    // A card is the same behind the sheet as by itself.
    let alone = crate::compile(&sheets[..1], &untold).unwrap().0;
    let mut found = Vec::new();
    runs(&alone.pages()[0].frame, Transform::identity(), &mut found);
    assert_eq!(words(&pages[1]), words(&found));
}

#[test]
fn fields_are_drawn_where_the_page_has_room_left() {
    for paper in [Paper::Letter, Paper::A4] {
        let drawn = |number: u32| SheetContent {
            outlines: (1..=number).map(|at| crate::tests::outline(&format!("Mill field {at}"))).collect(),
            ..day(paper, number)
        };
        keep(&format!("drawn-{paper:?}"), &drawn(1));
        let said = |sheet: &SheetContent| {
            let document = compile(sheet, &[], &untold).unwrap().0;
            let mut found = Vec::new();
            for page in document.pages() {
                runs(&page.frame, Transform::identity(), &mut found);
            }
            (document.pages().len(), found)
        };
        let (pages, found) = said(&drawn(1));
        assert_eq!(pages, 1);
        assert_is_clear("drawn", &found, paper);
        let words: String = found.iter().map(|run| ink(&run.words)).collect();
        assert!(
            words.contains(&ink("leave 110 ft along Mill creek, west side")) && words.contains(&ink("wind from NW"))
        );
        // A full day keeps its one page.
        let (pages, _) = said(&drawn(8));
        assert_eq!(pages, 1);
    }
}

#[test]
fn a_card_too_long_is_refused_by_its_number() {
    let mut card = typical(Paper::Letter);
    let step = card.steps[1].clone();
    card.steps = vec![step; 90];
    let refused = pdf(&day(Paper::Letter, 1), &[card_sheet(&card)]);
    assert_eq!(refused.unwrap_err(), PaperError::TooLong { number: "2031-0037".into() });
}
