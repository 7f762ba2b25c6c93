//! Local advice as a person types it in the shed.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::shed::{choose, farm, press, put, q, shed};
use egui_kittest::kittest::Queryable;
use jiff::civil::date;
use tankard::command::Command;
use tankard::demo;
use tankard_core::farm::label::{Says, Stance, Statement, When};
use tankard_core::farm::{AdjuvantClass, Advice, Farm};
use tankard_file::{read, write};

fn oil() -> Statement {
    let says = Says::Adjuvant {
        class: AdjuvantClass::MethylatedSeedOil,
        stance: Stance::Preferred,
        least: Some(q("1 % v/v")),
        most: Some(q("1 % v/v")),
        at_least: Some(q("1 pt/ac")),
        at_most: None,
    };
    Statement { crop: "corn".to_owned(), to_stage: "V8".to_owned(), ..Statement::new(says, "") }
}

fn county() -> Advice {
    Advice {
        whose: "County adviser".to_owned(),
        given: Some(date(2031, 5, 3)),
        about: "group 27".to_owned(),
        water: "yard-well".to_owned(),
        says: oil(),
    }
}

#[test]
fn advice_is_typed_and_goes_through_the_file() {
    let mut demo = demo::farm().unwrap();
    demo.advice.clear();
    demo.advice.clear();
    let water = demo.waters["yard-well"].name.clone();
    let mut harness = shed(demo, [1366.0, 768.0]);
    press(&mut harness, "Advice");
    harness.get_by_label("Local advice stands below every label and above general publications.");
    press(&mut harness, "+ Add advice");
    let empty = &farm(&harness).advice[0];
    assert!(matches!(&empty.says.says, Says::Caution { what } if what.is_empty()), "it changes no plan yet");
    put(&mut harness, "whose advice it is", "County adviser");
    put(&mut harness, "given on", "2031-05-03");
    choose(&mut harness, "about something from the shed: or pick", "group 27");
    choose(&mut harness, "with water: any", &water);
    choose(&mut harness, "it speaks of: in free words", "an adjuvant");
    choose(&mut harness, "adjuvant class: non-ionic surfactant", "methylated seed oil");
    choose(&mut harness, "stance: allowed", "preferred");
    put(&mut harness, "rate at least", "1 % v/v");
    put(&mut harness, "rate at most", "1 % v/v");
    put(&mut harness, "over ground at least", "1 pt/ac");
    choose(&mut harness, "crop from the fields: or pick", "corn");
    put(&mut harness, "to stage", "V8");
    assert_eq!(farm(&harness).advice[0], county());
    let sentence = format!(
        "County adviser, 3 May 2031: for group 27 in corn, up to V8, with water of {water}, methylated seed oil \
         preferred, 1\u{a0}%\u{a0}v/v, but at least 1\u{a0}pt/ac"
    );
    harness.get_by_label(&sentence);
    let text = write(farm(&harness)).unwrap();
    assert_eq!(read(text.as_bytes()).unwrap(), *farm(&harness));
}

#[test]
fn free_words_and_what_not_to_mix_are_typed() {
    let mut test = Farm::new("Test");
    test.advice.insert("one".to_owned(), county());
    let mut harness = shed(test, [1366.0, 768.0]);
    press(&mut harness, "Advice");
    choose(&mut harness, "it speaks of: an adjuvant", "in free words");
    put(&mut harness, "in these words", "Not in dew.");
    assert!(matches!(&farm(&harness).advice[0].says.says, Says::Caution { what } if what == "Not in dew."));
    choose(&mut harness, "it speaks of: in free words", "what not to mix it with");
    put(&mut harness, "not together with", "group 1");
    put(&mut harness, "nor within days", "5");
    assert_eq!(farm(&harness).advice[0].says.says, Says::NotWith { what: "group 1".to_owned(), days: 5 });
    assert!(harness.query_all_by_label_contains("not together with group 1, nor within 5 days of it").count() >= 1);
    // A water that the farm has no more is said and not dropped.
    harness.get_by_label("with water: yard-well, which is gone");
}

#[test]
fn it_stands_beside_the_products_it_speaks_of_and_leads_to_them() {
    let mut demo = demo::farm().unwrap();
    demo.advice.clear();
    let mut advice = county();
    advice.says.when = vec![When::Drought, When::With("group 1".to_owned())];
    demo.advice.insert("one".to_owned(), advice);
    let names = |group: &str| -> Vec<String> {
        let holds = |product: &&tankard_core::farm::Product| product.actives.iter().any(|active| active.group == group);
        demo.products.values().filter(holds).map(|product| product.name.clone()).collect()
    };
    let (about, other) = (names("27"), names("9"));
    assert!(!about.is_empty() && !other.is_empty());
    let mut harness = shed(demo, [1366.0, 768.0]);
    press(&mut harness, "Advice");
    assert!(harness.query_by_label(&other[0]).is_none());
    assert!(harness.query_all_by_label_contains("in drought, with group 1").count() >= 1);
    press(&mut harness, &about[0]);
    harness.get_by_label("Local advice (1)");
    assert!(harness.query_all_by_label("County adviser, 3 May 2031").count() >= 1);
    harness.get_by_label_contains("It stands on the label too: Methylated seed oil preferred");
}

#[test]
fn advice_is_copied_moved_removed_and_brought_back() {
    let mut test = Farm::new("Test");
    test.advice.insert("one".to_owned(), county());
    let mut harness = shed(test.clone(), [1366.0, 768.0]);
    press(&mut harness, "Advice");
    press(&mut harness, "Copy: County adviser, 3 May 2031");
    assert_eq!(farm(&harness).advice.len(), 2);
    press(&mut harness, "Remove: County adviser, 3 May 2031");
    press(&mut harness, "Remove: County adviser, 3 May 2031");
    assert!(farm(&harness).advice.is_empty());
    assert!(harness.query_by_label_contains("No advice yet.").is_some());
    let ctx = harness.ctx.clone();
    for _ in 0..3 {
        harness.state_mut().run(Command::Undo, &ctx);
        harness.run();
    }
    assert_eq!(*farm(&harness), test);
}

#[test]
fn the_page_stands_in_a_small_window_and_with_nothing_that_it_speaks_of() {
    let mut test = Farm::new("Test");
    test.advice.insert("one".to_owned(), county());
    for size in [[1366.0, 768.0], [910.0, 512.0]] {
        let mut harness = shed(test.clone(), size);
        press(&mut harness, "Advice");
        assert!(harness.query_by_label_contains("None in the shed.").is_some());
        assert!(!harness.state().document.is_unsaved());
    }
}
