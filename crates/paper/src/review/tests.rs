//! What the sheets of a review must hold. The farms are invented; products are named by what is in them.
//!
//! `TANKARD_CARDS=folder cargo test -p tankard-paper` leaves the sheets in that folder, to be looked at.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use jiff::civil::{Date, date};
use tankard_core::farm::{
    AdjuvantClass, Effect, Farm, Field, Outcome, Paper, Plot, ProductKind, Record, RecordActive, RecordField,
    RecordLine, Trial,
};
use tankard_core::quantity::{ActiveBasis, AsTyped, Quantity, Units};
use tankard_core::season::review::Choice;
use typst::layout::Transform;

use super::{Content, Part, compile, content, pdf};
use crate::tests::{MARGIN, Run, assert_is_clear, ink, pages_of_pdf, runs};

const PRINTED: Date = date(2032, 1, 10);

fn typed<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap()
}

fn line(at: usize) -> RecordLine {
    let mut line =
        RecordLine::new(&format!("p{at}"), &format!("Demo product number {at} SL (demo)"), typed("12.5 gal"));
    line.kind = Some(ProductKind::Herbicide);
    line.actives.push(RecordActive {
        name: format!("active {at}").into(),
        group: (at % 9 + 1).to_string().into(),
        basis: ActiveBasis::AcidEquivalent,
        mass: typed("20 lb"),
    });
    if !at.is_multiple_of(4) {
        line.price = Some(typed("21.40 / gal"));
    }
    line.planned = Some(typed(if at.is_multiple_of(3) { "12 gal" } else { "12.5 gal" }));
    line
}

fn adjuvant(class: AdjuvantClass) -> RecordLine {
    let name = format!("{} (demo)", class.name());
    let mut line = RecordLine::new(&name, &name, typed("5 gal"));
    (line.kind, line.class, line.price) = (Some(ProductKind::Adjuvant), Some(class), Some(typed("12 / gal")));
    line
}

/// A farm of so many seasons, fields and products, with ratings, a plan, gaps and a trial.
fn farm(seasons: i16, fields: usize, products: usize) -> Farm {
    let mut farm = Farm::new("Larkspur Bend (demo)");
    "$".clone_into(&mut farm.currency);
    for field in 0..fields {
        farm.fields.insert(format!("f{field}"), Field::new(&format!("Field {field}"), typed("80 ac")));
    }
    let mut pairs = Vec::new();
    for season in 0..seasons {
        let year = 2031 - season;
        for field in 0..fields {
            for half in 0..2_usize {
                let at = field + usize::from(season.unsigned_abs()) + half;
                let month = i8::try_from(4 + at % 4).unwrap();
                let day = date(year, month, i8::try_from(1 + field % 27).unwrap());
                let mut record = Record::new(&format!("Pass {half} on field {field}"), day);
                let mut ground = RecordField::new(&format!("Field {field}"), typed("40 ac"));
                ground.crop = ["corn", "soybean", ""][at % 3].into();
                ground.planned = Some(typed("40 ac"));
                let id = format!("f{field}");
                record.fields.insert(id.clone(), ground);
                record.lines.extend([line(at % products), line((at + 1) % products)]);
                record.lines.push(adjuvant(AdjuvantClass::ALL[half + season.unsigned_abs() as usize % 2]));
                record.volume = (!at.is_multiple_of(5)).then(|| typed("600 gal"));
                record.rig = ["Big boom", "Small boom"][at % 2].into();
                record.water = ["Yard well", ""][at % 2].into();
                record.wind = at.is_multiple_of(2).then(|| typed("6 mph"));
                record.outcomes.push(Outcome {
                    field: id.as_str().into(),
                    date: day + jiff::ToSpan::days(14),
                    effect: Some(Effect::Control("waterhemp".into())),
                    rating: Some(typed(&format!("{} %", 70 + at % 25))),
                    by: "".into(),
                    photos: Vec::new(),
                    note: "".into(),
                });
                farm.records.insert(format!("r{year}-{field}-{half}"), record);
            }
            let plot = |half: usize| Plot { record: format!("r{year}-{field}-{half}"), field: format!("f{field}") };
            pairs.push((plot(0), plot(1)));
        }
    }
    let trial = Trial {
        name: "Oil or surfactant".into(),
        one: "oil".into(),
        other: "surfactant".into(),
        pairs,
        ..Trial::default()
    };
    farm.trials.insert("t".into(), trial);
    farm
}

fn pages(content: &Content) -> Vec<Vec<Run>> {
    let (document, warnings) = compile(content).unwrap();
    assert_eq!(crate::in_words(&warnings), "");
    let of_page = |page: &typst_layout::Page| {
        let mut found = Vec::new();
        runs(&page.frame, Transform::identity(), &mut found);
        found
    };
    document.pages().iter().map(of_page).collect()
}

fn printed(content: &Content) -> String {
    pages(content).iter().flatten().map(|run| ink(&run.words)).collect()
}

fn keep(name: &str, farm: &Farm, choice: &Choice) {
    if let Ok(folder) = std::env::var("TANKARD_CARDS") {
        std::fs::write(format!("{folder}/{name}.pdf"), pdf(farm, choice, PRINTED).unwrap()).unwrap();
    }
}

#[test]
fn nothing_is_cut_off_and_nothing_lies_on_another() {
    for paper in [Paper::Letter, Paper::A4] {
        for (name, mut farm, choice) in [
            ("season", farm(3, 6, 8), Choice::season(2031)),
            ("seasons", farm(3, 6, 8), Choice::all()),
            ("empty", Farm::new("Empty"), Choice::all()),
        ] {
            farm.paper = paper;
            if paper == Paper::A4 {
                farm.units = Units::Metric;
            }
            keep(&format!("review-{name}-{paper:?}"), &farm, &choice);
            for page in pages(&content(&farm, &choice, PRINTED)) {
                assert_is_clear(&format!("{name} {paper:?}"), &page, paper);
            }
        }
    }
}

#[test]
fn ten_seasons_of_many_fields_run_over_pages_with_their_heads() {
    let farm = farm(10, 20, 45);
    keep("review-long", &farm, &Choice::all());
    let pages = pages(&content(&farm, &Choice::all(), PRINTED));
    assert!(pages.len() > 4, "{} pages", pages.len());
    let whole: Vec<String> = pages.iter().map(|page| page.iter().map(|run| ink(&run.words)).collect()).collect();
    for (at, (runs, words)) in pages.iter().zip(&whole).enumerate() {
        assert_is_clear(&format!("page {at}"), runs, Paper::Letter);
        assert!(words.contains(&ink(&format!("page {} of {}", at + 1, pages.len()))), "page {at}");
    }
    // The table of products runs over a page and begins with its head there.
    let with_products = whole.iter().filter(|words| words.contains("Demoproductnumber") && words.contains("wentout"));
    assert!(with_products.count() >= 2);
    // No heading stands at the foot with nothing below it.
    for runs in &pages {
        let heading = runs.iter().filter(|run| run.size > 11.5 && run.size < 12.5);
        for heading in heading.filter(|run| run.left < MARGIN + 2.0) {
            let below = runs.iter().filter(|run| run.top > heading.bottom && run.bottom < 792.0 - MARGIN - 14.0);
            assert!(below.count() > 0, "{heading:?}");
        }
    }
    let all = whole.concat();
    for field in 0..20 {
        assert!(all.contains(&format!("Field{field}")), "field {field}");
    }
}

#[test]
fn an_empty_farm_says_so_on_one_page_and_unknown_things_in_a_sentence() {
    let empty = Farm::new("Empty");
    let bytes = pdf(&empty, &Choice::all(), PRINTED).unwrap();
    assert_eq!(pages_of_pdf(&bytes), 1);
    assert!(printed(&content(&empty, &Choice::all(), PRINTED)).contains(&ink("No record fits what is chosen.")));

    // One bare record: no area by month to speak of, no product, no rating.
    let mut bare = Farm::new("Bare");
    bare.records.insert("r".into(), Record::new("Pass", date(2031, 5, 1)));
    let content = content(&bare, &Choice::season(2031), PRINTED);
    let words = printed(&content);
    for sentence in [
        "No product stands in the records.",
        "No adjuvant and no conditioner went out",
        "No record keeps what was planned.",
        "Nothing is rated yet",
        "No trial has ground in what is chosen.",
    ] {
        assert!(words.contains(&ink(sentence)), "{sentence}: {words}");
    }
    assert!(pages(&content).len() <= 2);
}

#[test]
fn odd_and_long_names_print_as_typed() {
    let odd = r#"#panic("x") *bold* _low_ $x^2$ @ref <label> \ "quoted" `raw` [b] {c} // -- ~ = +"#;
    let endless = "Unterwasserschutzgebietsverordnungsfeld".repeat(4);
    let mut farm = farm(1, 3, 4);
    farm.name = odd.into();
    farm.keeping.holder = endless.as_str().into();
    let mut lines = 0;
    for record in farm.records.values_mut() {
        for field in record.fields.values_mut() {
            field.crop = endless.as_str().into();
        }
        record.rig = odd.into();
        record.water = endless.as_str().into();
        for line in &mut record.lines {
            line.name = if lines % 2 == 0 { odd.into() } else { endless.as_str().into() };
            lines += 1;
        }
    }
    for field in farm.fields.values_mut() {
        field.name = endless.as_str().into();
    }
    for trial in farm.trials.values_mut() {
        (trial.name, trial.one, trial.other) = (odd.into(), endless.clone(), odd.into());
    }
    farm.currency = "CHF ".into();
    keep("review-odd", &farm, &Choice::all());
    let content = content(&farm, &Choice::all(), PRINTED);
    for (at, page) in pages(&content).iter().enumerate() {
        assert_is_clear(&format!("odd, page {at}"), page, Paper::Letter);
    }
    let words = printed(&content);
    assert!(words.matches(&ink(odd)).count() >= 3);
    assert!(words.contains(&endless));
}

/// What a part says.
fn say(part: &Part, wanted: &mut Vec<String>) {
    match part {
        Part::Strong { words } | Part::Say { words } => wanted.push(words.clone()),
        Part::Notes { lines } => wanted.extend(lines.clone()),
        Part::Columns { title, bars } => {
            wanted.push(title.clone());
            wanted.extend(bars.iter().map(|post| post.words.clone()));
        }
        Part::Lines { title, lines, .. } => {
            wanted.push(title.clone());
            wanted.extend(lines.iter().map(|line| line.name.clone()));
        }
        Part::Table { title, columns, rows } => {
            wanted.push(title.clone());
            wanted.extend(columns.iter().map(|column| column.heading.clone()));
            wanted.extend(rows.iter().flat_map(|row| row.cells.iter().chain([&row.under]).cloned()));
        }
        Part::Matrix { title, years, rows } => {
            wanted.push(title.clone());
            wanted.extend(years.clone());
            wanted.extend(rows.iter().flat_map(|(_, cells)| cells.iter().flatten()).map(|cell| cell.words.clone()));
        }
        Part::Dots { title, dots, .. } => {
            wanted.push(title.clone());
            wanted.extend(dots.iter().flat_map(|dot| [dot.name.clone(), dot.words.clone()]));
        }
        Part::Beside { left, right } => {
            say(left, wanted);
            say(right, wanted);
        }
    }
}

#[test]
fn all_that_the_content_says_is_on_the_sheets() {
    let content = content(&farm(3, 6, 8), &Choice::all(), PRINTED);
    let sheets = printed(&content);
    let mut wanted: Vec<String> = vec![content.of.clone(), content.printed.clone()];
    wanted.extend(content.about.clone());
    for section in &content.sections {
        wanted.push(section.title.clone());
        section.parts.iter().for_each(|part| say(part, &mut wanted));
    }
    for words in wanted {
        assert!(sheets.contains(&ink(&words)), "not on the sheets: {words}");
    }
    // Every kind of part is there, so that none goes unlooked at.
    let kinds = serde_json::to_string(&content).unwrap();
    for kind in ["strong", "say", "notes", "columns", "lines", "table", "matrix", "dots", "beside"] {
        assert!(kinds.contains(&format!(r#""kind":"{kind}""#)), "{kind}");
    }
}

/// Sums by hand: three seasons of six fields with two passes of 40 ac each.
#[test]
fn figures_are_those_of_the_records() {
    let words = printed(&content(&farm(3, 6, 8), &Choice::season(2031), PRINTED));
    assert!(words.contains(&ink("12 passes, 480 ac treated")), "{words}");
    assert!(words.contains(&ink("Season 2031")) && words.contains(&ink("printed 10 January 2032")));
    let all = printed(&content(&farm(3, 6, 8), &Choice::all(), PRINTED));
    assert!(all.contains(&ink("36 passes, 1,440 ac treated")) && all.contains(&ink("Seasons 2029 to 2031")));
}

#[test]
fn the_same_review_gives_the_same_bytes() {
    let farm = farm(2, 3, 4);
    let once = pdf(&farm, &Choice::all(), PRINTED).unwrap();
    assert!(once == pdf(&farm, &Choice::all(), PRINTED).unwrap());
    assert!(!String::from_utf8_lossy(&once).contains("CreationDate"));
}
