//! Law as a person types it in the shed.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::shed::{Shed, choose, edit, farm, press, put, q, shed};
use egui_kittest::kittest::Queryable;
use jiff::civil::date;
use tankard::command::Command;
use tankard::demo;
use tankard_core::farm::label::{Says, Statement, When};
use tankard_core::farm::{Droplets, Farm, Law, SunTime};
use tankard_file::{read, write};

/// The shed with its page open.
fn laws(farm: Farm, size: [f32; 2]) -> Shed {
    let mut harness = shed(farm, size);
    press(&mut harness, "Law");
    harness
}

/// A rule of the state of Larkspur, which does not exist.
fn wind() -> Law {
    let says = Says::Wind { most: q("10 mph"), least: Some(q("3 mph")), gust: None };
    Law {
        name: "Larkspur drift rule, paragraph 4".to_owned(),
        since: Some(date(2030, 1, 1)),
        until: None,
        about: "group 4".to_owned(),
        says: Statement { crop: "soybean".to_owned(), ..Statement::new(says, "") },
    }
}

#[test]
fn a_rule_is_typed_and_goes_through_the_file() {
    let mut demo = demo::farm().unwrap();
    demo.laws.clear();
    let mut harness = laws(demo, [1366.0, 768.0]);
    assert!(harness.query_by_label_contains("No rule yet.").is_some());
    assert!(harness.query_by_label_contains("The program knows no law.").is_some());
    press(&mut harness, "+ Add a rule");
    let empty = &farm(&harness).laws[0];
    assert!(matches!(&empty.says.says, Says::Caution { what } if what.is_empty()), "it changes no plan yet");
    put(&mut harness, "name of the rule", "Larkspur drift rule, paragraph 4");
    put(&mut harness, "in force since", "2030-01-01");
    choose(&mut harness, "about something from the shed: or pick", "group 4");
    choose(&mut harness, "it speaks of: caution", "wind");
    harness.get_by_label("still to type");
    put(&mut harness, "wind at most", "10 mph");
    harness.get_by_label("Add a condition to the rule");
    put(&mut harness, "wind at least", "3 mph");
    choose(&mut harness, "crop from the fields: or pick", "soybean");
    assert_eq!(farm(&harness).laws[0], wind());
    harness.get_by_label("For group 4 in soybean: wind at most 10 mph, at least 3 mph");
    harness.get_by_label("Now, and until you type its end.");
    let text = write(farm(&harness)).unwrap();
    assert_eq!(read(text.as_bytes()).unwrap(), *farm(&harness));
}

#[test]
fn each_kind_that_is_offered_can_be_typed_and_is_read_out() {
    let mut test = Farm::new("Test");
    test.laws.insert("one".to_owned(), wind());
    let mut harness = laws(test, [1366.0, 768.0]);
    let says = |harness: &Shed| farm(harness).laws[0].says.says.clone();
    for (before, kind, expected, words) in [
        ("wind", "no inversion", Says::NoInversion, "not while warm air lies over cold"),
        (
            "no inversion",
            "daylight",
            Says::Daylight { from: SunTime::SUNRISE, to: SunTime::SUNSET },
            "from sunrise to sunset",
        ),
        (
            "daylight",
            "droplets",
            Says::Droplets { finest: Droplets::Medium, coarsest: None },
            "droplets medium or coarser",
        ),
        ("droplets", "boom height", Says::BoomHeight { most: q("0 in") }, "boom height at most 0 in"),
        ("boom height", "ground speed", Says::GroundSpeed { most: q("0 mph") }, "ground speed at most 0 mph"),
        ("ground speed", "Delta T", Says::DeltaT { least: None, most: None }, "nothing typed yet"),
        ("Delta T", "spray volume", Says::Carrier { least: None, most: None }, "nothing typed yet"),
        (
            "spray volume",
            "buffer",
            Says::Buffer { to: String::new(), width: q("0 ft"), downwind_only: false },
            "buffer of 0 ft",
        ),
        ("buffer", "wind toward", Says::NotToward { what: String::new() }, "nothing typed yet"),
    ] {
        choose(&mut harness, &format!("it speaks of: {before}"), kind);
        assert_eq!(says(&harness), expected);
        harness.get_by_label(&format!("For group 4 in soybean: {words}"));
        // What no plan is held against says so.
        let is_kept_alone = kind == "spray volume";
        assert_eq!(harness.query_by_label_contains("does not hold plans against").is_some(), is_kept_alone, "{kind}");
    }
    choose(&mut harness, "it speaks of: wind toward", "wear");
    harness.get_by_label_contains("It stands on the load cards");
    choose(&mut harness, "it speaks of: wear", "wind toward");
    put(&mut harness, "wind toward", "vineyards");
    assert_eq!(says(&harness), Says::NotToward { what: "vineyards".to_owned() });
    // Beside the whole sentence it stands in the list.
    harness.get_by_label("For group 4 in soybean: not with wind toward vineyards");
    harness.get_by_label("Larkspur drift rule, paragraph 4, group 4: not with wind toward vineyards");
}

#[test]
fn conditions_and_days_are_said_and_a_wrong_end_is_noticed() {
    let mut test = Farm::new("Test");
    let mut law = wind();
    law.says.when = vec![When::Drought];
    law.until = Some(date(2031, 5, 31));
    test.laws.insert("one".to_owned(), law);
    let mut harness = laws(test, [1366.0, 768.0]);
    harness.get_by_label("It ended with 31 May 2031 and is held against no pass after it.");
    assert!(harness.query_all_by_label_contains("in soybean, in drought").count() >= 1);
    put(&mut harness, "up to and including", "2029-12-31");
    harness.get_by_label("It ends before it begins, so it never holds; mend the days.");
    put(&mut harness, "up to and including", "2031-12-31");
    harness.get_by_label("Now, and up to and including 31 December 2031.");
    // Who leaves the box has meant what stands in it.
    harness.key_press(egui::Key::Escape);
    harness.run();
    put(&mut harness, "up to and including", "when it rains");
    assert_eq!(farm(&harness).laws[0].until, Some(date(2031, 12, 31)));
    assert_eq!(harness.state().unread.len(), 1);
}

#[test]
fn rules_are_copied_removed_and_brought_back() {
    let mut test = Farm::new("Test");
    test.laws.insert("one".to_owned(), wind());
    let mut harness = laws(test.clone(), [910.0, 512.0]);
    press(&mut harness, "Copy: Larkspur drift rule, paragraph 4");
    assert_eq!(farm(&harness).laws.len(), 2);
    press(&mut harness, "Remove: Larkspur drift rule, paragraph 4, copy");
    press(&mut harness, "Remove: Larkspur drift rule, paragraph 4");
    assert!(farm(&harness).laws.is_empty());
    let ctx = harness.ctx.clone();
    for _ in 0..3 {
        harness.state_mut().run(Command::Undo, &ctx);
        harness.run();
    }
    assert_eq!(*farm(&harness), test);
}

#[test]
fn it_leads_to_the_products_it_speaks_of() {
    let mut demo = demo::farm().unwrap();
    demo.laws.clear();
    demo.laws.insert("one".to_owned(), wind());
    let holds = |product: &&tankard_core::farm::Product| product.actives.iter().any(|active| active.group == "4");
    let product = demo.products.values().find(holds).unwrap().name.clone();
    let mut harness = laws(demo, [1366.0, 768.0]);
    press(&mut harness, &product);
    edit(&harness, "name of the product");
}
