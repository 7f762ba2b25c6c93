//! The shed's page Stock: counts by container and lot, what the passes take, what is short and what to buy; and the same on the
//! command line.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)] // A test stops where its ground is missing.

mod common;

use std::process::Command;

use common::shed::{Shed, choose, edit, farm, press, put, q, shed};
use egui::accesskit::Role;
use egui_kittest::kittest::Queryable;
use jiff::civil::date;
use tankard_core::farm::{
    Container, ContainerKind, Farm, Field, Formulation, Line, Pass, Product, ProductKind, Rig, Water,
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
    put(&mut harness, "full, Oil (demo)", "9");
    harness.get_by_label("23 gal");
    harness.get_by_label("13 gal");
    harness.get_by_label("3 gal");
    harness.get_by_label("Nothing is short of what is counted.");
    assert!(harness.query_by_label_contains("short by").is_none());
    put(&mut harness, "opened, Oil (demo)", "");
    let container = &farm(&harness).products["oil"].containers[0];
    assert_eq!((container.full, &container.opened), (9, &None));
}

#[test]
fn none_is_none_once_it_is_counted() {
    let mut harness = stock(test_farm());
    assert!(harness.query_by_label_contains("short 80 lb").is_none());
    put(&mut harness, "counted on, Sulfate (demo)", "2031-06-11");
    assert_eq!(farm(&harness).products["sulfate"].counted, Some(date(2031, 6, 11)));
    harness.get_by_label("short 80 lb");
    harness.get_by_label("Sulfate (demo), short by 80 lb, type in the shed what it is sold in");
    harness.get_by_label("in all $250.00, without 1 product whose price or container is not typed");
}

#[test]
fn another_lot_is_counted_apart() {
    let mut harness = stock(test_farm());
    put(&mut harness, "lot, Oil (demo)", "A-17");
    press(&mut harness, "Another lot: Oil (demo)");
    put(&mut harness, "lot, Oil (demo), 2.5 gal, 2", "B-02");
    put(&mut harness, "full, Oil (demo), 2.5 gal, 2", "1");
    let containers = &farm(&harness).products["oil"].containers;
    let held: Vec<(&str, u32)> = containers.iter().map(|one| (one.lot.as_str(), one.full)).collect();
    assert_eq!(held, [("A-17", 3), ("B-02", 1)]);
    assert!(containers[1].opened.is_none());
    harness.get_by_label("10.5 gal");
    // Beside the product each lot stands for itself.
    harness.get_by_role_and_label(Role::Button, "Oil (demo)").click();
    harness.run();
    harness.get_by_label("1 jug of 2.5 gal, lot B-02");
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
    assert!(edit(&harness, "full, Oil (demo)").value().is_some_and(|text| text == "3"));
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
        let out = Command::new(env!("CARGO_BIN_EXE_tankard")).arg("needs").arg(&path).args(more).output().unwrap();
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
