//! What people type: bare numbers, days and times of day as they write them, the time zone, and a choice of adjuvants on a label.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::shed::{Shed, farm, press, put, shed};
use egui::Key;
use egui::accesskit::Role;
use egui_kittest::kittest::{NodeT, Queryable};
use jiff::civil::date;
use tankard::command::Command;
use tankard_core::farm::label::Stance;
use tankard_core::farm::{AdjuvantClass, Farm, Formulation, Place, Product, ProductKind, Says, Statement, Water};
use tankard_core::quantity::Units;

fn of(label: Vec<Statement>) -> Farm {
    let mut farm = Farm::new("Test");
    let mut product = Product::new("Invented 480 SC", ProductKind::Herbicide, Formulation::SC);
    product.label = label;
    farm.products.insert("it".to_owned(), product);
    farm.waters.insert("well".to_owned(), Water { name: "Well".to_owned(), ..Water::default() });
    farm
}

fn with(farm: Farm) -> Shed {
    shed(farm, [1366.0, 768.0])
}

fn label(harness: &Shed) -> &[Statement] {
    &farm(harness).products["it"].label
}

fn key(harness: &mut Shed, key: Key) {
    harness.key_press(key);
    harness.run();
}

/// A bare number is not taken while it is typed; its likely value is one key or one click away, and taken when its box is left.
#[test]
fn a_bare_number_is_offered_with_the_unit_of_the_farm() {
    let mut harness = with(of(Vec::new()));
    press(&mut harness, "Waters");
    put(&mut harness, "calcium", "92");
    assert!(farm(&harness).waters["well"].calcium.is_none(), "nothing is taken by itself");
    assert!(harness.query_all_by_label_contains("the unit after 92 is missing").next().is_some());
    key(&mut harness, Key::F2);
    assert_eq!(farm(&harness).waters["well"].calcium.as_ref().unwrap().text(), "92 ppm");
    assert!(harness.query_by_label("Take 92 ppm").is_none());
    // By a click.
    put(&mut harness, "magnesium", "31");
    press(&mut harness, "Take 31 ppm");
    assert_eq!(farm(&harness).waters["well"].magnesium.as_ref().unwrap().text(), "31 ppm");
    let ctx = harness.ctx.clone();
    harness.state_mut().run(Command::Undo, &ctx);
    harness.run();
    assert!(farm(&harness).waters["well"].magnesium.is_none(), "it is an edit like any other");
    // By Tab, where it can be meant in one way alone.
    put(&mut harness, "sodium", "40");
    assert!(farm(&harness).waters["well"].sodium.is_none());
    harness.get_by_label("F2, or leaving the box, takes 40 ppm");
    key(&mut harness, Key::Tab);
    assert_eq!(farm(&harness).waters["well"].sodium.as_ref().unwrap().text(), "40 ppm");
    // Parts per million or grains: a person says which.
    put(&mut harness, "hardness", "20");
    harness.get_by_label("F2 takes 20 ppm");
    key(&mut harness, Key::Tab);
    assert!(farm(&harness).waters["well"].hardness.is_none());
    harness.get_by_label_contains("the unit after 20 is missing");
    // Escape gives up what was typed.
    put(&mut harness, "iron", "3");
    key(&mut harness, Key::Escape);
    assert!(farm(&harness).waters["well"].iron.is_none());
}

#[test]
fn half_a_unit_is_offered_whole() {
    let mut harness = with(of(vec![Statement::new(Says::Rate { least: None, most: None }, "")]));
    put(&mut harness, "rate at most", "32 fl oz");
    assert_eq!(label(&harness)[0].says, Says::Rate { least: None, most: None });
    press(&mut harness, "Take 32 fl oz/ac");
    let Says::Rate { most: Some(most), .. } = &label(&harness)[0].says else { panic!("no rate") };
    assert_eq!(most.text(), "32 fl oz/ac");
}

#[test]
fn a_day_is_typed_as_people_write_it() {
    let mut harness = with(of(Vec::new()));
    press(&mut harness, "Waters");
    for text in ["Oct 5 2027", "5 octubre 2027", "October 5, 2027", "2027-10-05"] {
        put(&mut harness, "sampled", text);
        assert_eq!(farm(&harness).waters["well"].sampled, Some(date(2027, 10, 5)), "{text}");
    }
    put(&mut harness, "sampled", "10/25/2027");
    assert_eq!(farm(&harness).waters["well"].sampled, Some(date(2027, 10, 25)));
    // Either of two is taken by a person. Until then the farm has what it had when the box was entered.
    key(&mut harness, Key::Tab);
    put(&mut harness, "sampled", "10/05/2027");
    assert_eq!(farm(&harness).waters["well"].sampled, Some(date(2027, 10, 25)));
    assert!(harness.query_all_by_label_contains("may be 5 October 2027 or 10 May 2027").next().is_some());
    press(&mut harness, "Take 2027-05-10");
    assert_eq!(farm(&harness).waters["well"].sampled, Some(date(2027, 5, 10)));
    // With US units whoever goes on has meant the month first; with others nobody knows.
    put(&mut harness, "sampled", "3/1/2027");
    key(&mut harness, Key::Tab);
    assert_eq!(farm(&harness).waters["well"].sampled, Some(date(2027, 3, 1)));
    let mut metric = of(Vec::new());
    metric.units = Units::Metric;
    let mut harness = with(metric);
    press(&mut harness, "Waters");
    put(&mut harness, "sampled", "3/1/2027");
    key(&mut harness, Key::Tab);
    assert_eq!(farm(&harness).waters["well"].sampled, None);
}

#[test]
fn a_time_zone_is_proposed_by_words_and_by_the_place() {
    let mut own = of(Vec::new());
    own.place = Some(Place { latitude: "41.2".to_owned(), longitude: "-96.4".to_owned(), ..Place::default() });
    let mut harness = with(own);
    harness.get_by_role_and_label(Role::Tab, "Farm").click();
    harness.run();
    // Nothing is typed: where the farm lies proposes.
    harness.get_by_label("Take America/Chicago");
    put(&mut harness, "time zone", "Mountain");
    assert_eq!(farm(&harness).place.as_ref().unwrap().zone, "Mountain");
    press(&mut harness, "Take America/Denver");
    assert_eq!(farm(&harness).place.as_ref().unwrap().zone, "America/Denver");
    assert!(harness.query_by_label_contains("Take America").is_none());
    put(&mut harness, "time zone", "central");
    key(&mut harness, Key::F2);
    assert_eq!(farm(&harness).place.as_ref().unwrap().zone, "America/Chicago");
}

fn adjuvant(class: AdjuvantClass) -> Statement {
    let says =
        Says::Adjuvant { class, stance: Stance::Required, least: None, most: None, at_least: None, at_most: None };
    Statement::new(says, "page 3")
}

/// "COC or NIS" is two rows, and the form says that either will do.
#[test]
fn one_of_several_adjuvants_is_typed() {
    let mut harness = with(of(vec![adjuvant(AdjuvantClass::CropOilConcentrate)]));
    assert!(harness.query_by_label_contains("any one of them will do").is_none());
    press(&mut harness, "Or another class in place of adjuvant");
    assert_eq!(
        label(&harness),
        [adjuvant(AdjuvantClass::CropOilConcentrate), adjuvant(AdjuvantClass::NonIonicSurfactant),]
    );
    harness.get_by_label("any one of them will do: crop oil concentrate or non-ionic surfactant");
    // An objection has no alternatives.
    common::shed::choose(&mut harness, "adjuvant 2 stance: required", "forbidden");
    assert!(harness.query_by_label_contains("any one of them will do").is_none());
}

#[test]
fn no_pasted_sentence_vanishes_and_all_lines_are_ticked_at_once() {
    let mut harness = with(of(vec![Statement::new(Says::ReEntry { hours: 12 }, "page 2")]));
    press(&mut harness, "Paste directions…");
    harness.event(egui::Event::Text(
        "Shake well. Always add COC at 1% v/v or NIS at 0.25% v/v. Do not use methylated seed oil in postemergence \
         applications. Do not apply to corn after V8. REI 12 h."
            .to_owned(),
    ));
    harness.run();
    harness.get_by_label("Do not use methylated seed oil in postemergence applications.");
    assert!(harness.query_by_label_contains("1 sentence was not understood").is_some());
    assert!(harness.query_by_label_contains("1 more sentence has no figure").is_some());
    harness.get_by_label("Shake well.");
    // What limits stands first, and is marked.
    let at = |label: &str| harness.get_by_label(label).rect().top();
    assert!(at("Do not use methylated seed oil in postemergence applications.") < at("Shake well."));
    press(&mut harness, "Tick all 3 lines");
    press(&mut harness, "Enter 3 ticked lines");
    assert_eq!(label(&harness).len(), 4);
    assert!(
        label(&harness).iter().any(|row| row.says == Says::CropStage && row.to_stage == "V8" && row.crop == "corn")
    );
    assert!(harness.query_by_label_contains("Tick all").is_none());
    press(&mut harness, "Put the text away");
    harness.get_by_label("any one of them will do: crop oil concentrate or non-ionic surfactant");
    let node = harness.get_by_label("Or another class in place of adjuvant 2");
    assert!(node.accesskit_node().label().is_some());
}
