//! The shed's page Stock: counts by container and lot, what the passes take, what is short and what to buy; and the same on the
//! command line.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)] // A test stops where its ground is missing.

mod common;

use std::process::Command;

use common::shed::{Shed, choose, edit, farm, press, put, q, shed};
use egui_kittest::kittest::Queryable;
use jiff::civil::date;
use tankard_core::farm::{
    Container, ContainerKind, Farm, Field, Formulation, Line, Pass, Product, ProductKind, Record, RecordLine, Rig,
    Water,
};

fn pass(name: &str, day: i8) -> Pass {
    let mut pass = Pass::new(name, date(2031, 6, day));
    pass.fields = vec!["home".to_owned()];
    "well".clone_into(&mut pass.water);
    "rig".clone_into(&mut pass.rig);
    pass.carrier = Some(q("10 gal/ac"));
    pass.mix = vec![Line::new("oil", q("1 pt/ac"))];
    pass
}

/// 8 gal of an oil on hand, 10 gal to be sprayed on each of two days; on the second a dry product besides, which nobody counted.
fn test_farm() -> Farm {
    let mut test = Farm::new("Test");
    let mut oil = Product::new("Oil (demo)", ProductKind::Adjuvant, Formulation::EC);
    oil.containers = vec![Container {
        kind: ContainerKind::Jug,
        size: q("2.5 gal"),
        full: 3,
        opened: Some(q("2 qt")),
        lot: String::new(),
    }];
    oil.price = Some(q("20 / gal"));
    test.products.insert("oil".to_owned(), oil);
    let sulfate = Product::new("Sulfate (demo)", ProductKind::Conditioner, Formulation::SG);
    test.products.insert("sulfate".to_owned(), sulfate);
    test.fields.insert("home".to_owned(), Field::new("Home", q("80 ac")));
    test.waters.insert("well".to_owned(), Water { name: "Well".to_owned(), ..Water::default() });
    test.rigs.insert("rig".to_owned(), Rig { nurse: Some(q("500 gal")), ..Rig::new("Rig", q("500 gal")) });
    test.passes.insert("first".to_owned(), pass("First", 12));
    let mut second = pass("Second", 14);
    second.mix.push(Line::new("sulfate", q("1 lb/ac")));
    test.passes.insert("second".to_owned(), second);
    test
}

fn stock(farm: Farm) -> Shed {
    let mut harness = shed(farm, [1366.0, 768.0]);
    press(&mut harness, "Stock");
    harness
}

#[test]
fn what_is_short_is_told_with_what_to_buy() {
    let mut harness = stock(test_farm());
    // By hand: 3 × 2.5 gal + 2 qt = 8 gal on hand; 80 ac × 1 pt = 10 gal on 12 June, 20 gal with the second pass. So 12 gal are
    // missing: five jugs, 12.5 gal, at 20 a gallon.
    harness.get_by_label("8 gal");
    harness.get_by_label("10 gal");
    harness.get_by_label("20 gal");
    harness.get_by_label("short 2 gal");
    harness.get_by_label("short 12 gal");
    harness.get_by_label("Oil (demo), short by 12 gal, buy 5 jugs of 2.5 gal, $250.00; 2 qt over");
    harness.get_by_label("in all $250.00");
    harness.get_by_label("1 product is taken of which it is not known what is on hand.");
    count_oil(&mut harness, "9", "2 qt");
    press(&mut harness, "All products");
    harness.get_by_label("23 gal");
    harness.get_by_label("13 gal");
    harness.get_by_label("3 gal");
    harness.get_by_label("Nothing is short of what is counted.");
    assert!(harness.query_by_label_contains("short by").is_none());
}

/// Counts the jugs of oil of the first row.
fn count_oil(harness: &mut Shed, full: &str, opened: &str) {
    press(harness, "Account: Oil (demo)");
    press(harness, "Count…");
    put(harness, "full, row 1", full);
    put(harness, "opened, row 1", opened);
    press(harness, "Write it down");
}

#[test]
fn none_is_none_once_it_is_counted() {
    let mut harness = stock(test_farm());
    assert!(harness.query_by_label_contains("short 80 lb").is_none());
    press(&mut harness, "Account: Sulfate (demo)");
    harness.get_by_label_contains("Nothing is counted yet");
    press(&mut harness, "Count…");
    put(&mut harness, "day of the count", "2031-06-11");
    press(&mut harness, "Write it down");
    assert_eq!(farm(&harness).products["sulfate"].counted, Some(date(2031, 6, 11)));
    press(&mut harness, "All products");
    harness.get_by_label("short 80 lb");
    // The bag of the count is what it is sold in from now on.
    harness.get_by_label("Sulfate (demo), short by 80 lb, buy 2 bags of 50 lb; 20 lb over");
    harness.get_by_label("in all $250.00, without 1 product whose price or container is not typed");
}

#[test]
fn another_lot_is_counted_apart() {
    let mut harness = stock(test_farm());
    press(&mut harness, "Account: Oil (demo)");
    press(&mut harness, "Count…");
    put(&mut harness, "lot, row 1", "A-17");
    press(&mut harness, "+ Another lot or size");
    put(&mut harness, "lot, row 2", "B-02");
    put(&mut harness, "full, row 2", "1");
    press(&mut harness, "Write it down");
    let containers = &farm(&harness).products["oil"].containers;
    let held: Vec<(&str, u32)> = containers.iter().map(|one| (one.lot.as_str(), one.full)).collect();
    assert_eq!(held, [("A-17", 3), ("B-02", 1)]);
    assert!(containers[1].opened.is_none());
    harness.get_by_label("10 gal 2 qt");
    // Beside the product each lot stands for itself.
    press(&mut harness, "Its label");
    harness.get_by_label("1 jug of 2.5 gal, lot B-02");
}

/// The oil counted before the spraying of 10 June, and 3 gal of it sprayed on the 11th.
fn counted_farm() -> Farm {
    let mut test = test_farm();
    test.products["oil"].counted = Some(date(2031, 6, 10));
    let mut record = Record::new("Headland", date(2031, 6, 11));
    record.lines.push(RecordLine::new("oil", "Oil (demo)", q("3 gal")));
    test.records.insert("headland".to_owned(), record);
    test
}

#[test]
fn the_account_falls_with_records_and_rises_with_bills() {
    let mut harness = stock(counted_farm());
    // By hand: 8 gal less 3 are 5 gal: the half gallon and one jug are gone, two jugs are left.
    harness.get_by_label("5 gal");
    harness.get_by_label("short 5 gal");
    press(&mut harness, "Account: Oil (demo)");
    harness.get_by_label("2 jugs of 2.5 gal");
    harness.get_by_label_contains("Since then 3 gal were sprayed.");
    harness.get_by_label("2 empty 2.5 gal jugs to give back");
    harness.get_by_label("sprayed: Headland");
    harness.get_by_label("-3 gal");
    press(&mut harness, "Bought…");
    put(&mut harness, "how many", "4");
    put(&mut harness, "lot", "B-02");
    put(&mut harness, "price on the bill", "18 / gal");
    put(&mut harness, "bought from", "the dealer");
    press(&mut harness, "Write it down");
    harness.get_by_label("bought 4 jugs of 2.5 gal at $18 / gal from the dealer, lot B-02");
    harness.get_by_label("4 jugs of 2.5 gal, lot B-02");
    harness.get_by_label("Purchases of 2031 cost $180.00.");
    press(&mut harness, "Take the price of the bill");
    assert_eq!(farm(&harness).products["oil"].price.as_ref().unwrap().text(), "18 / gal");
    press(&mut harness, "Gave back empties…");
    harness.get_by_label("of 2 empty");
    put(&mut harness, "how many", "2");
    press(&mut harness, "Write it down");
    assert!(harness.query_by_label_contains("to give back").is_none());
    press(&mut harness, "Went out…");
    put(&mut harness, "how much", "1 gal");
    press(&mut harness, "Write it down");
    harness.get_by_label("Say why");
    put(&mut harness, "why", "spilt");
    press(&mut harness, "Write it down");
    harness.get_by_label("went out: spilt");
    assert_eq!(farm(&harness).movements.len(), 3);
    // All of it can be taken back.
    harness.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::Z);
    harness.run();
    assert_eq!(farm(&harness).movements.len(), 2);
    press(&mut harness, "All products");
    harness.get_by_label("15 gal");
}

#[test]
fn the_page_of_a_product_says_whether_records_are_taken_off() {
    let label_of_oil = |farm: Farm| {
        let mut harness = stock(farm);
        press(&mut harness, "Account: Oil (demo)");
        press(&mut harness, "Its label");
        harness
    };
    let harness = label_of_oil(counted_farm());
    harness.get_by_label("5 gal");
    harness.get_by_label("Counted on 10 June 2031: 8 gal. Since then 3 gal were sprayed.");
    harness.get_by_label("passes not recorded yet take");
    assert!(harness.query_by_label("Something in its account is in doubt").is_none());
    let mut undated = counted_farm();
    undated.products["oil"].counted = None;
    label_of_oil(undated).get_by_label(
        "No day of a count is typed: this is what is typed to be there, records take nothing off and purchases add nothing.",
    );
    let mut short = counted_farm();
    short.records["headland"].lines[0].amount = q("11 gal");
    label_of_oil(short).get_by_label("Something in its account is in doubt");
}

#[test]
fn a_count_that_differs_asks_why() {
    let mut harness = stock(counted_farm());
    press(&mut harness, "Account: Oil (demo)");
    press(&mut harness, "Count…");
    harness.get_by_label("Counted 5 gal, as the account has it (5 gal).");
    assert_eq!(edit(&harness, "empty jugs of 2.5 gal").value().as_deref(), Some("2"));
    put(&mut harness, "full, row 1", "1");
    harness.get_by_label("Counted 2.5 gal, the account had come to 5 gal: 2.5 gal less.");
    press(&mut harness, "Write it down");
    harness.get_by_label("It differs from what the accounts had come to; say why");
    assert!(farm(&harness).movements.is_empty());
    put(&mut harness, "why it differs", "a jug leaked");
    press(&mut harness, "Write it down");
    harness.get_by_label("counted after that day's spraying; the account had come to 5 gal: a jug leaked");
    harness
        .get_by_label_contains("Counted on 11 June 2031 after that day's spraying: 2.5 gal. Nothing happened since.");
    assert_eq!(farm(&harness).products["oil"].containers[0].full, 1);
    harness.get_by_label("2 empty 2.5 gal jugs to give back");
}

#[test]
fn more_used_than_there_was_is_seen() {
    let mut test = counted_farm();
    test.records["headland"].lines[0].amount = q("11 gal");
    let mut harness = stock(test);
    press(&mut harness, "Account: Oil (demo)");
    harness.get_by_label_contains("records use 3 gal more than was counted and bought");
    harness.get_by_label("-3 gal");
}

#[test]
fn water_of_the_day_and_nurse_tanks() {
    let mut harness = stock(test_farm());
    // 800 gal of spray less 10 gal of oil.
    harness.get_by_label("Water on 12 June");
    harness.get_by_label("790 gal");
    harness.get_by_label("Rig: 2 nurse tanks of 500 gal");
    choose(&mut harness, "day: 12 June 2031", "14 June 2031");
    harness.get_by_label("Water on 14 June");
    // The first pass takes its 10 gal before: what is left is nothing, so all of the second is short.
    assert_eq!(harness.query_all_by_label("short 10 gal").count(), 2);
    harness.get_by_label("1 pass before that day has no record; it takes its part of the shed first.");
}

#[test]
fn a_farm_without_passes_is_only_counted() {
    let mut test = test_farm();
    test.passes.clear();
    let harness = stock(test);
    harness.get_by_label_contains("No pass is planned that has no record yet.");
    harness.get_by_label("8 gal");
    assert!(harness.query_by_label_contains("leaves").is_none());
}

#[test]
fn the_command_line_tells_the_same() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("test.ron");
    tankard_file::store::save(&path, &test_farm(), None).unwrap();
    let run = |more: &[&str]| {
        let out = Command::new(env!("CARGO_BIN_EXE_tankard"))
            .args(["--language", "en"])
            .arg("needs")
            .arg(&path)
            .args(more)
            .output()
            .unwrap();
        assert_eq!(out.status.code(), Some(0), "{}", String::from_utf8_lossy(&out.stderr));
        String::from_utf8(out.stdout).unwrap()
    };
    let text = run(&["--date", "2031-06-12"]);
    for part in [
        "Thursday 12 June 2031 take: First",
        "short 12 gal",
        "buy 5 jugs of 2.5 gal, $250.00",
        "2 nurse tanks of 500 gal",
    ] {
        assert!(text.contains(part), "{part} in {text}");
    }
    let json: serde_json::Value = serde_json::from_str(&run(&["--date", "2031-06-14", "--json"])).unwrap();
    let oil = &json["day"]["products"][0];
    assert_eq!((oil["product"].as_str(), oil["buy"]["containers"][0]["count"].as_u64()), (Some("oil"), Some(4)));
    assert!((oil["taken_before_l"].as_f64().unwrap() - 37.854_117_84).abs() < 1e-6);
    let lot = &oil["by_lot"][0];
    assert_eq!((lot["container"].as_str(), lot["lot"].as_str()), (Some("2.5 gal"), Some("")));
    assert!((lot["on_hand_l"].as_f64().unwrap() - 30.283_294_272).abs() < 1e-6);
    assert_eq!(json["season"]["nurse_tanks"][0]["tanks"].as_u64(), Some(2));
    assert!(run(&["--date", "2032-01-01"]).contains("No pass of Thursday 1 January 2032 is to be sprayed."));
}
