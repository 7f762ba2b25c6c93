//! What the printed page must hold. The cards are invented; products are named by what is in them.
//!
//! `TANKARD_CARDS=folder cargo test -p tankard-paper` leaves the pages in that folder, to be looked at.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use tankard_core::farm::Paper;
use tankard_core::farm::card::{CardContent, CardField, CardOutline, CardStep, Gauge, Layer, Mark, ShortRow};
use typst::layout::{Frame, FrameItem, Point, Transform};

use super::*;

/// Points of the margin on every side, as all templates have it.
pub(crate) const MARGIN: f64 = 30.0;

// ---------------------------------------------------------------------------------------------- cards

pub(crate) fn step(number: u32, what: &str, hint: &str, amount: &str, detail: &str) -> CardStep {
    let number = (number > 0).then_some(number);
    CardStep {
        number,
        what: what.into(),
        hint: hint.into(),
        amount: amount.into(),
        rate: String::new(),
        detail: detail.into(),
    }
}

fn fields(fields: &[(&str, &str)]) -> Vec<CardField> {
    fields.iter().map(|&(name, area)| CardField { name: name.into(), area: area.into() }).collect()
}

fn lines(lines: &[&str]) -> Vec<String> {
    lines.iter().map(|&line| line.into()).collect()
}

/// The gauge of a tank of `full` gallons, from the gallons up to which each step fills it; number 0 is water.
fn gauge(full: f64, steps: &[(u32, f64)]) -> Gauge {
    let mut gauge = Gauge::default();
    let mut level = 0.0;
    for &(number, to) in steps {
        let (from, to_share) = (level / full, to / full);
        let label = if number > 0 { format!("product {number}") } else { "water".to_owned() };
        gauge.layers.push(Layer {
            number: (number > 0).then_some(number),
            label,
            amount: String::new(),
            from,
            to: to_share,
        });
        if number == 0 {
            gauge.marks.push(Mark {
                at: to_share,
                label: if to < 1000.0 {
                    format!("{to} gal")
                } else {
                    format!("{},{:03} gal", (to / 1000.0).floor(), to % 1000.0)
                },
            });
        }
        level = to;
    }
    gauge
}

/// Two fields, five products, three fillings of water: what most cards look like.
pub(crate) fn typical(paper: Paper) -> CardContent {
    CardContent {
        languages: Vec::new(),
        paper,
        farm: "Larkspur Bend (demo)".into(),
        pass: "Corn, second post".into(),
        date: "Thursday 12 June 2031".into(),
        load: 1,
        of: 3,
        fields: fields(&[("Mill field", "74.6 ac"), ("Long bottom", "5.4 of 96.0 ac")]),
        fill_to: "1,200 gal".into(),
        water: "Yard well".into(),
        rig: "Big boom".into(),
        settings: lines(&["15 gal/ac, 12 mph, 38 psi", "Size 08 nozzles, 20 in apart", "Coarse droplets, boom 24 in"]),
        calibrated: String::new(),
        spray_between: String::new(),
        limits: Vec::new(),
        usual: Vec::new(),
        blanks: Vec::new(),
        steps: vec![
            step(0, "Water", "Agitator on, induction clear", "to 600 gal", ""),
            step(
                1,
                "Ammonium sulfate, spray grade",
                "Through the strainer; wait until no grains are left",
                "2 bags",
                "102 lb",
            ),
            step(2, "Mesotrione 480 SC (demo)", "Shake the jug first", "1 gal 3 qt 16 fl oz", "240 fl oz"),
            step(3, "S-metolachlor 915 EC (demo)", "", "12 gal 2 qt", "5 jugs of 2½ gal"),
            step(0, "Water", "", "to 900 gal", ""),
            step(4, "Glyphosate 540 SL (demo)", "", "13 gal 3 qt", "5 jugs of 2½ gal and 1 gal 1 qt"),
            step(5, "Crop oil concentrate (demo)", "Rinse the jugs three times into the tank", "12 gal", "1 % v/v"),
            step(0, "Water", "Keep agitating until empty", "to 1,200 gal", ""),
        ],
        short: Vec::new(),
        outlines: Vec::new(),
        gauge: gauge(
            1200.0,
            &[(0, 600.0), (1, 607.0), (2, 609.0), (3, 621.4), (0, 900.0), (4, 913.75), (5, 925.75), (0, 1200.0)],
        ),
        wear: lines(&[
            "Chemical-resistant gloves, long sleeves, shoes and socks (all)",
            "Eye protection (S-metolachlor 915 EC)",
        ]),
        keep_out: "13 June 2031, 20:14 (24 h)".into(),
        harvest: "11 August 2031 (60 days)".into(),
        cautions: lines(&[
            "Do not let the mix stand without agitation.",
            "Keep 66 ft from the creek at the east side of Long bottom.",
        ]),
        open_findings: lines(&[
            "Check: wind at the boom must lie between 3 and 10 mph; the forecast says 11 mph from 09:00.",
        ]),
        emergency: lines(&["Emergency 555-0100", "Farm yard 555-0142"]),
        note: "Start at the north gate. Leave the last two passes along the road for the morning.".into(),
    }
}

/// The same with what the plan says of rig and hours.
fn timed(paper: Paper) -> CardContent {
    CardContent {
        settings: lines(&[
            "15 gal/ac",
            "12 mph (8.5 to 15.1 mph)",
            "41 psi (20 to 65 psi)",
            "110 degree, size 06",
            "coarse droplets, boom at 24 in",
        ]),
        calibrated: "10 April 2031".into(),
        spray_between: "05:40 and 08:50".into(),
        limits: lines(&[
            "wind at most 10 mph (Mesotrione)",
            "no wind toward farmyard on the east of Mill field",
            "no rain for 2 h after it (Glyphosate)",
        ]),
        usual: lines(&["wind at least 3 mph", "gusts at most 10 mph", "no inversion", "air 41 to 86 °F"]),
        blanks: lines(&[
            "Wind at the boom, and from where",
            "Gust",
            "Temperature",
            "Humidity",
            "Start",
            "Finish",
            "Mixed by",
            "Signature",
        ]),
        ..typical(paper)
    }
}

/// As little as a card can hold.
fn minimal(paper: Paper) -> CardContent {
    CardContent {
        pass: "Burndown".into(),
        of: 1,
        fields: fields(&[("Hill piece", "12.0 ac")]),
        fill_to: "180 gal".into(),
        settings: lines(&["15 gal/ac, 8 mph, 40 psi"]),
        steps: vec![
            step(0, "Water", "", "to 90 gal", ""),
            step(1, "Glyphosate 540 SL (demo)", "", "2 gal 8 fl oz", "264 fl oz"),
            step(0, "Water", "", "to 180 gal", ""),
        ],
        short: Vec::new(),
        outlines: Vec::new(),
        gauge: gauge(300.0, &[(0, 90.0), (1, 92.0), (0, 180.0)]),
        wear: lines(&["Gloves, long sleeves"]),
        harvest: String::new(),
        cautions: Vec::new(),
        open_findings: Vec::new(),
        emergency: lines(&["Emergency 555-0100"]),
        note: String::new(),
        ..typical(paper)
    }
}

/// Twelve steps, five fields, long names, six findings.
fn crowded(paper: Paper) -> CardContent {
    CardContent {
        farm: "Larkspur Bend and the three places rented from the county (demo)".into(),
        pass: "Soybean, layered residual with the first post and the micronutrients that the leaf test asked for".into(),
        load: 12,
        of: 14,
        fields: fields(&[
            ("Mill field", "74.6 ac"),
            ("Long bottom below the old railway embankment", "5.4 of 96.0 ac"),
            ("Schoolhouse quarter, west half", "22.5 ac"),
            ("Orchard strip", "3.1 of 4.0 ac"),
            ("Section 14 north of the ditch", "118.3 ac"),
        ]),
        water: "Yard well, softened on 2 May".into(),
        rig: "Big boom with the new recirculating lines".into(),
        steps: vec![
            step(0, "Water", "Agitator on, induction clear", "to 400 gal", ""),
            step(1, "Ammonium sulfate solution, liquid conditioner (demo)", "Measure with the clean jug", "30 gal", "2.5 % v/v"),
            step(2, "Flumioxazin 51 WDG (demo)", "Slurry first in 5 gal of water; wait 10 min, no grains left", "15 lb", "3 oz/ac, 5 bags of 3 lb"),
            step(3, "Cloransulam-methyl 84 WDG (demo)", "Slurry first", "1 lb 8 oz", "0.3 oz/ac"),
            step(4, "Metribuzin 480 SC (demo)", "Shake the jug first", "6 gal 1 qt", "10 fl oz/ac"),
            step(0, "Water", "", "to 900 gal", ""),
            step(5, "S-metolachlor 915 EC (demo)", "", "13 gal 3 qt 16 fl oz", "5 jugs of 2½ gal, 1 gal 1 qt 16 fl oz"),
            step(6, "Clethodim 240 EC (demo)", "", "5 gal 2 qt 12 fl oz", "9 fl oz/ac"),
            step(7, "Glyphosate 540 SL, potassium salt (demo)", "", "13 gal 3 qt", "22 fl oz/ac"),
            step(8, "Manganese EDTA chelate 6 % (demo)", "Last of the nutrients", "10 gal", "1 pt/ac"),
            step(9, "Methylated seed oil with emulsifier (demo)", "Rinse the jugs three times into the tank", "12 gal", "1 % v/v"),
            step(0, "Water", "Keep agitating until empty", "to 1,200 gal", ""),
        ],
        short: Vec::new(),
        outlines: Vec::new(),
        gauge: gauge(
            1200.0,
            &[
                (0, 400.0),
                (1, 430.0),
                (2, 431.5),
                (3, 431.7),
                (4, 438.0),
                (0, 900.0),
                (5, 913.9),
                (6, 919.5),
                (7, 933.2),
                (8, 943.2),
                (9, 955.2),
                (0, 1200.0),
            ],
        ),
        wear: lines(&[
            "Chemical-resistant gloves of barrier laminate or nitrile, 14 mil or more (flumioxazin 51 WDG, metribuzin 480 SC)",
            "Long-sleeved shirt, long trousers, shoes and socks (all)",
            "Protective eyewear (S-metolachlor 915 EC, clethodim 240 EC)",
            "Chemical-resistant apron when mixing and cleaning (metribuzin 480 SC)",
        ]),
        cautions: lines(&[
            "Do not let the mix stand without agitation; drain and rinse the same day.",
            "Keep 66 ft from the creek and 200 ft from the reservoir.",
            "Clean the rig before any crop other than soybean: flumioxazin clings to hoses.",
            "Dust of the granules: open bags below the rim.",
        ]),
        open_findings: lines(&[
            "Check: wind at the boom must lie between 3 and 10 mph; the forecast says 11 mph from 09:00.",
            "Check: the growth stage of Schoolhouse quarter was last looked at on 28 May.",
            "Check: flumioxazin with an oil may burn leaves that are wet; the label says so on page 6.",
            "Note: third use of group 15 in two years on Mill field.",
            "Note: the jar test of 10 June was with 68 °F water; the well gives 54 °F.",
            "Check: the county rule on evening sprays near the school was typed in 2029.",
        ]),
        emergency: lines(&["Emergency 555-0100", "Poison advice 555-0111", "Farm yard 555-0142, night 555-0143"]),
        note: "Start at the north gate. Leave the last two passes along the road for the morning; the neighbour's bees are \
               shut in until ten. Fuel for the pump is in the blue can."
            .into(),
        ..timed(paper)
    }
}

/// Twenty steps, as no card should have and one may.
fn twenty_steps(paper: Paper) -> CardContent {
    let mut card = crowded(paper);
    let more = card.steps[1..9].to_vec();
    card.steps.splice(9..9, more);
    card
}

pub(crate) fn sheet(content: &CardContent) -> Sheet<'_> {
    Sheet { number: "2031-0037", issued: Some("11 June 2031, 20:14".into()), reprint: None, content }
}

fn draft(content: &CardContent) -> Sheet<'_> {
    Sheet { number: DRAFT, issued: None, reprint: None, content }
}

// ---------------------------------------------------------------------------------------------- looking at a page

/// A run of text on a page: left, top, right and bottom in points, and the words.
#[derive(Debug)]
pub(crate) struct Run {
    pub(crate) left: f64,
    pub(crate) top: f64,
    pub(crate) right: f64,
    pub(crate) bottom: f64,
    pub(crate) size: f64,
    pub(crate) words: String,
}

pub(crate) fn runs(frame: &Frame, transform: Transform, found: &mut Vec<Run>) {
    for (at, item) in frame.items() {
        let here = transform.pre_concat(Transform::translate(at.x, at.y));
        match item {
            FrameItem::Group(group) => runs(&group.frame, here.pre_concat(group.transform), found),
            FrameItem::Text(text) => {
                let start = Point::zero().transform(here);
                let end = Point::with_x(text.width()).transform(here);
                let size = text.size.to_pt() * here.sy.get();
                found.push(Run {
                    left: start.x.to_pt(),
                    top: start.y.to_pt() - 0.7 * size,
                    right: end.x.to_pt(),
                    bottom: start.y.to_pt() + 0.1 * size,
                    size,
                    words: text.text.to_string(),
                });
            }
            _ => {}
        }
    }
}

/// The runs of text of a sheet that lays out on one page without a warning.
fn page(sheet: &Sheet) -> Vec<Run> {
    let (document, warnings) = compile(std::slice::from_ref(sheet), &untold).unwrap();
    assert_eq!(in_words(&warnings), "");
    assert_eq!(document.pages().len(), 1);
    let mut found = Vec::new();
    runs(&document.pages()[0].frame, Transform::identity(), &mut found);
    found
}

/// All words of a page without spaces, since lines break where they must.
pub(crate) fn ink(words: &str) -> String {
    words.chars().filter(|letter| !letter.is_whitespace() && *letter != '\u{200b}').collect()
}

fn printed(sheet: &Sheet) -> String {
    page(sheet).iter().map(|run| ink(&run.words)).collect()
}

/// Leaves a page for the eye, where asked to.
fn keep(name: &str, sheets: &[Sheet]) {
    if let Ok(folder) = std::env::var("TANKARD_CARDS") {
        std::fs::write(format!("{folder}/{name}.pdf"), pdf(sheets).unwrap()).unwrap();
    }
}

pub(crate) fn pages_of_pdf(bytes: &[u8]) -> usize {
    let text = String::from_utf8_lossy(bytes);
    text.matches("/Type/Page").count() - text.matches("/Type/Pages").count()
}

/// The last load of a pass, with what it takes on less ground.
fn short(paper: Paper) -> CardContent {
    let row = |ten: u32| ShortRow {
        ground: format!("{ten}0 ac"),
        spray: format!("{} gal", ten * 150),
        amounts: lines(&["12 lb 12 oz", "1 qt 4 fl oz", "1 gal 2 qt 8 fl oz", "1 gal 2 qt 28 fl oz", "1 gal 2 qt"]),
    };
    CardContent { load: 3, short: (1..=7).map(row).collect(), ..typical(paper) }
}

// ---------------------------------------------------------------------------------------------- tests

#[test]
fn every_sheet_is_one_page() {
    let (one, two, three) = (typical(Paper::Letter), minimal(Paper::A4), crowded(Paper::Letter));
    let sheets = [sheet(&one), draft(&two), sheet(&three)];
    let bytes = pdf(&sheets).unwrap();
    assert!(bytes.starts_with(b"%PDF-1.7"));
    assert_eq!(pages_of_pdf(&bytes), 3);

    let (document, _) = compile(&sheets, &untold).unwrap();
    let sizes: Vec<(f64, f64)> = document
        .pages()
        .iter()
        .map(|page| (page.frame.width().to_pt().round(), page.frame.height().to_pt().round()))
        .collect();
    // Letter is 8.5 by 11 inches (ANSI/ASME Y14.1), A4 210 by 297 mm (ISO 216); a point is 1/72 inch.
    assert_eq!(sizes, [(612.0, 792.0), (595.0, 842.0), (612.0, 792.0)]);
}

#[test]
fn the_same_card_gives_the_same_bytes() {
    let card = typical(Paper::Letter);
    let first = pdf(&[sheet(&card)]).unwrap();
    let other = crowded(Paper::A4);
    pdf(&[sheet(&other)]).unwrap();
    assert!(first == pdf(&[sheet(&card)]).unwrap());
    assert!(!String::from_utf8_lossy(&first).contains("CreationDate"));
}

/// Nothing reaches into the margin of a page, and nothing lies on another.
pub(crate) fn assert_is_clear(name: &str, runs: &[Run], paper: Paper) {
    // Letter is 8.5 by 11 inches (ANSI/ASME Y14.1), A4 210 by 297 mm (ISO 216); a point is 1/72 inch.
    let (width, height) = if paper == Paper::A4 { (595.3, 841.9) } else { (612.0, 792.0) };
    for run in runs {
        let inside = run.left > MARGIN - 1.0
            && run.right < width - MARGIN + 1.0
            && run.top > MARGIN - 1.0
            && run.bottom < height - MARGIN + 1.0;
        assert!(inside, "{name}: cut off: {run:?}");
    }
    for (index, a) in runs.iter().enumerate() {
        for b in &runs[index + 1..] {
            let apart = a.right <= b.left + 0.3
                || b.right <= a.left + 0.3
                || a.bottom <= b.top + 0.3
                || b.bottom <= a.top + 0.3;
            assert!(apart, "{name}: {a:?} lies on {b:?}");
        }
    }
}

#[test]
fn nothing_overlaps_and_nothing_is_cut_off() {
    for paper in [Paper::Letter, Paper::A4] {
        for (name, card) in [
            ("typical", typical(paper)),
            ("timed", timed(paper)),
            ("short", short(paper)),
            ("minimal", minimal(paper)),
            ("crowded", crowded(paper)),
            ("twenty", twenty_steps(paper)),
        ] {
            let mut sheet = if name == "minimal" { draft(&card) } else { sheet(&card) };
            if name == "crowded" {
                sheet.reprint = Some("reprinted 12 June 2031, 05:02".into());
            }
            keep(&format!("{name}-{paper:?}"), std::slice::from_ref(&sheet));
            let pages = pages(&sheet);
            // Twenty steps leave no room on Letter for what is read beside them.
            let two = name == "twenty" && paper == Paper::Letter;
            assert_eq!(pages.len(), if two { 2 } else { 1 }, "{name} {paper:?}");
            for runs in &pages {
                assert_is_clear(&format!("{name} {paper:?}"), runs, paper);
            }
        }
    }
}

#[test]
fn everything_on_the_card_is_on_the_page() {
    let card = crowded(Paper::Letter);
    let sheet = Sheet { reprint: Some("reprinted 12 June 2031, 05:02".into()), ..sheet(&card) };
    let page = printed(&sheet);
    let mut wanted = vec!["Load 12 of 14", "2031-0037", "11 June 2031, 20:14", "reprinted 12 June 2031, 05:02"];
    wanted.extend([&card.farm, &card.pass, &card.date, &card.fill_to, &card.water, &card.rig].map(String::as_str));
    wanted.extend([&card.keep_out, &card.harvest, &card.note].map(String::as_str));
    wanted.extend([&card.calibrated, &card.spray_between].map(String::as_str));
    for texts in
        [&card.settings, &card.limits, &card.blanks, &card.wear, &card.cautions, &card.open_findings, &card.emergency]
    {
        wanted.extend(texts.iter().map(String::as_str));
    }
    wanted.extend(card.fields.iter().flat_map(|field| [field.name.as_str(), &field.area]));
    wanted.extend(card.steps.iter().flat_map(|step| [step.what.as_str(), &step.hint, &step.amount, &step.detail]));
    wanted.extend(card.gauge.marks.iter().map(|mark| mark.label.as_str()));
    for words in wanted {
        assert!(page.contains(&ink(words)), "not on the page: {words}");
    }
}

#[test]
fn a_draft_says_so_and_an_issued_card_does_not() {
    let card = minimal(Paper::Letter);
    let warning = ink("Draft, not for use at the tank");
    assert!(printed(&draft(&card)).contains(&warning));
    assert!(!printed(&sheet(&card)).contains(&warning));
    assert!(!printed(&sheet(&card)).contains("Reprint"));
    assert!(!printed(&sheet(&card)).contains(&ink("Open when this card was issued")));
}

/// Holds the fault of a reprint that is not what was printed: cards of before know neither hours nor other blanks.
#[test]
fn a_card_of_before_keeps_its_facts_and_its_blanks() {
    let before = printed(&sheet(&typical(Paper::Letter)));
    for words in ["Wind at boom", "Temperature, humidity", "Keep out", "Harvest from"] {
        assert!(before.contains(&ink(words)), "{words}");
    }
    for words in ["Spray between", "Spray only with", "calibrated", "Gust", "After spraying"] {
        assert!(!before.contains(&ink(words)), "{words}");
    }
    let text = serde_json::to_string(&typical(Paper::Letter)).unwrap();
    for field in ["calibrated", "spray_between", "limits", "blanks", "short", "outlines"] {
        assert!(!text.contains(field), "{field} is written though it is empty");
    }
    assert_eq!(serde_json::from_str::<CardContent>(&text).unwrap(), typical(Paper::Letter));
}

#[test]
fn the_hours_stand_large_and_without_them_the_limits_alone() {
    let card = timed(Paper::Letter);
    let page = page(&sheet(&card));
    let hours = page.iter().find(|run| run.words == "05:40 and 08:50").unwrap();
    assert!(hours.size >= 13.0, "{} pt", hours.size);
    let amount = page.iter().find(|run| run.words == "1 gal 3 qt 16 fl oz").unwrap();
    assert!(amount.size >= 16.0, "{} pt", amount.size);
    let card = CardContent { spray_between: String::new(), ..card };
    let words = printed(&sheet(&card));
    assert!(words.contains(&ink("Spray only with")) && words.contains(&ink("wind at most 10 mph")));
    assert!(words.contains(&ink("Keep out")) && words.contains(&ink(&card.keep_out)));
}

#[test]
fn less_ground_stands_on_the_last_card_whatever_its_room_and_on_others_where_they_have_some() {
    for paper in [Paper::Letter, Paper::A4] {
        let last = short(paper);
        assert!(printed(&sheet(&last)).contains(&ink("1 gal 2 qt 28 fl oz")));
        let rows = last.short;
        let full = CardContent { short: rows.clone(), ..crowded(paper) };
        let (last, other) = (CardContent { load: full.of, ..full.clone() }, CardContent { load: 1, of: 2, ..full });
        assert!(printed(&sheet(&last)).contains(&ink("Less ground")));
        // Another full one says that it does without.
        assert!(!printed(&sheet(&other)).contains(&ink("1 gal 2 qt 28 fl oz")));
        assert!(printed(&sheet(&other)).contains(&ink("Less ground: there is no room for it on this card")));
    }
}

/// Holds the fault of pasting text into markup.
#[test]
fn text_prints_as_typed() {
    let odd = r#"#panic("x") *bold* _low_ $x^2$ @ref <label> \ "quoted" 'single' `raw` [b] {c} // -- ~ = + %"#;
    let mut card = typical(Paper::A4);
    card.farm = odd.into();
    card.note = odd.into();
    card.fields[0].name = odd.into();
    card.steps[1].what = odd.into();
    card.steps[1].amount = "#1 *2* $3".into();
    card.settings[0] = odd.into();
    card.cautions[0] = odd.into();
    card.gauge.marks[0].label = "#6_0".into();
    let page = printed(&sheet(&card));
    assert_eq!(page.matches(&ink(odd)).count(), 6);
    assert!(page.contains("#1*2*$3"));
    assert!(page.contains("#6_0"));
}

#[test]
fn amounts_stay_large_and_on_one_line_with_twelve_steps() {
    let card = crowded(Paper::Letter);
    let amount = page(&sheet(&card)).into_iter().find(|run| run.words == "13 gal 3 qt 16 fl oz").unwrap();
    assert!(amount.size >= 16.0, "{} pt", amount.size);
    let card = typical(Paper::Letter);
    let amount = page(&sheet(&card)).into_iter().find(|run| run.words == "1 gal 3 qt 16 fl oz").unwrap();
    assert!(amount.size >= 18.0, "{} pt", amount.size);
}

#[test]
fn long_names_stay_within_the_page() {
    let mut card = crowded(Paper::Letter);
    let endless = "Unterwasserschutzgebietsverordnungsfeld".repeat(2);
    card.farm.clone_from(&endless);
    card.pass.clone_from(&endless);
    card.rig.clone_from(&endless);
    card.fill_to = "1,234,567.8 gal to the upper weld".into();
    for step in &mut card.steps {
        step.what.clone_from(&endless);
        step.amount = "123 gal 3 qt 16 fl oz and 123 gal 3 qt 16 fl oz".into();
        step.detail = "one jug and ".repeat(8);
    }
    for mark in &mut card.gauge.marks {
        mark.label = "1,234,567.8 gal by the sight glass".into();
    }
    keep("long", &[sheet(&card)]);
    let pages = pages(&sheet(&card));
    let runs = || pages.iter().flatten();
    assert!(runs().all(|run| run.right < 612.0 - MARGIN + 1.0));
    // What is done at the tank stays together.
    assert!(pages.len() <= 2 && card.steps.iter().all(|step| words_of(&pages[0]).contains(&ink(&step.detail))));
}

/// The runs of text of each page of a sheet.
fn pages(sheet: &Sheet) -> Vec<Vec<Run>> {
    let (document, warnings) = compile(std::slice::from_ref(sheet), &untold).unwrap();
    assert_eq!(in_words(&warnings), "");
    let of_page = |page: &typst_layout::Page| {
        let mut found = Vec::new();
        runs(&page.frame, Transform::identity(), &mut found);
        found
    };
    document.pages().iter().map(of_page).collect()
}

fn words_of(runs: &[Run]) -> String {
    runs.iter().map(|run| ink(&run.words)).collect()
}

/// 7 pt is the least that a card is printed at: under it, nobody reads at the tank (common practice, no source).
fn least_print(runs: &[Run]) -> f64 {
    runs.iter().map(|run| run.size).fold(f64::INFINITY, f64::min)
}

#[test]
fn a_card_that_is_too_full_goes_on_to_a_second_page_and_says_so() {
    for paper in [Paper::Letter, Paper::A4] {
        let mut full = CardContent { short: short(paper).short, ..crowded(paper) };
        full.note = "Mind the gate and the dog of the neighbour. ".repeat(90);
        full.outlines = vec![outline("Mill field")];
        keep(&format!("second-{paper:?}"), &[sheet(&full)]);
        let pages = pages(&sheet(&full));
        // The second page may flow on.
        assert!((2..=3).contains(&pages.len()), "{} pages", pages.len());
        for runs in &pages {
            assert!(least_print(runs) >= 6.99, "{}", least_print(runs));
            assert_is_clear("second page", runs, paper);
        }
        let first = words_of(&pages[0]);
        let second: String = pages[1..].iter().map(|runs| words_of(runs)).collect();
        assert!(first.contains(&ink("Read the second page before you begin")));
        assert!(second.contains(&ink("Load 12 of 14, second page")) && second.contains(&ink("Card 2031-0037")));
        // What is done at the tank stays on the first page; what is read beside it is on the second, whole.
        for step in &full.steps {
            assert!(first.contains(&ink(&step.what)) && first.contains(&ink(&step.amount)), "{}", step.what);
        }
        for words in full.cautions.iter().chain(&full.wear).chain(&full.open_findings).chain([&full.note]) {
            assert!(second.contains(&ink(words)), "not on the second page: {words}");
        }
        for words in [full.keep_out.as_str(), "Less ground", "leave 110 ft along Mill creek"] {
            assert!(second.contains(&ink(words)), "not on the second page: {words}");
        }
    }
}

#[test]
fn a_note_without_an_end_flows_on() {
    let fine = typical(Paper::Letter);
    let mut endless = typical(Paper::Letter);
    endless.note = "Mind the gate and the dog. ".repeat(1000);
    let both = [sheet(&fine), Sheet { number: "2031-0038", ..sheet(&endless) }];
    assert!(pages_of_pdf(&pdf(&both).unwrap()) > 3);
    let pages = pages(&both[1]);
    let all: String = pages.iter().map(|runs| words_of(runs)).collect();
    assert!(all.contains(&ink(endless.note.trim())));
    assert!(pages.iter().all(|runs| least_print(runs) >= 6.99));
}

#[test]
fn a_card_beyond_any_page_is_refused_by_its_number() {
    let fine = typical(Paper::Letter);
    let mut endless = typical(Paper::Letter);
    endless.steps = (0..90).map(|number| step(number, "Glyphosate 540 SL (demo)", "", "1 gal", "")).collect();
    let sheets = [sheet(&fine), Sheet { number: "2031-0038", ..sheet(&endless) }];
    assert_eq!(pdf(&sheets).unwrap_err(), PaperError::TooLong { number: "2031-0038".into() });
    assert_eq!(pdf(&[]), Err(PaperError::NoSheets));
}

/// A field with a creek along its west side, a pond, a gateway, and a strip.
pub(crate) fn outline(name: &str) -> CardOutline {
    CardOutline {
        field: name.into(),
        width: 840,
        height: 1000,
        edge: lines(&["130,130 710,130 710,870 130,820 130,130", "400,400 460,400 460,470 400,400"]),
        unsprayed: lines(&["130,130 165,130 165,823 130,820 130,130"]),
        lines: lines(&["110,0 118,400 112,1000"]),
        areas: lines(&["600,920 700,930 690,1000 590,1000 600,920"]),
        points: lines(&["770,300"]),
        gateways: lines(&["710,500"]),
        strips: lines(&["leave 110 ft along Mill creek, west side, 1,320 ft of the edge (Atrazine 480 SC (demo))"]),
        wind: "NW".into(),
        wind_from: Some(315),
    }
}

#[test]
fn fields_are_drawn_where_there_is_room_and_their_strips_told_in_any_case() {
    for paper in [Paper::Letter, Paper::A4] {
        let two = vec![outline("Mill field"), CardOutline { strips: Vec::new(), ..outline("Long bottom") }];
        let roomy = CardContent { outlines: two.clone(), ..timed(paper) };
        keep(&format!("drawn-{paper:?}"), &[sheet(&roomy)]);
        let runs = page(&sheet(&roomy));
        assert_is_clear("drawn", &runs, paper);
        let words = words_of(&runs);
        for said in [&two[0].strips[0], "no strip is left", "wind from NW", "left unsprayed", "gateway"] {
            assert!(words.contains(&ink(said)), "{said}");
        }
        let full = CardContent { outlines: two, ..crowded(paper) };
        keep(&format!("told-{paper:?}"), &[sheet(&full)]);
        let runs = page(&sheet(&full));
        assert_is_clear("told", &runs, paper);
        let words = words_of(&runs);
        assert!(words.contains(&ink(&full.outlines[0].strips[0])));
        assert!(words.contains(&ink("There is no room to draw the fields")) && !words.contains(&ink("wind from NW")));
        assert!(least_print(&runs) >= 6.99);
    }
}

#[test]
fn a_gauge_that_makes_no_sense_still_prints() {
    let mut card = typical(Paper::Letter);
    card.gauge.layers[0].to = f64::NAN;
    card.gauge.layers[1].from = -3.0;
    card.gauge.layers[2].to = f64::INFINITY;
    card.gauge.marks[0].at = f64::NEG_INFINITY;
    page(&sheet(&card));
    card.gauge = Gauge::default();
    card.steps.clear();
    card.fields.clear();
    keep("bare", &[sheet(&card)]);
    page(&sheet(&card));
}

#[test]
fn a_picture_has_the_size_of_the_page_and_ink_on_it() {
    let card = typical(Paper::Letter);
    let picture = picture(&draft(&card), 1.5).unwrap();
    assert_eq!((picture.width, picture.height), (918, 1188));
    assert_eq!(picture.rgba.len(), 918 * 1188 * 4);
    let pixels: Vec<&[u8]> = picture.rgba.chunks_exact(4).collect();
    assert!(pixels.iter().all(|pixel| pixel[3] == 255));
    let dark = pixels.iter().filter(|pixel| pixel[0] < 100).count();
    let white = pixels.iter().filter(|pixel| pixel[0] == 255).count();
    assert!(dark > pixels.len() / 100, "{dark} dark of {}", pixels.len());
    assert!(white > pixels.len() / 2, "{white} white of {}", pixels.len());
    for scale in [0.0, -1.0, f32::NAN, f32::INFINITY] {
        assert!(matches!(super::picture(&draft(&card), scale), Err(PaperError::PictureScale { .. })));
    }
}
