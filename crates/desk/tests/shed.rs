//! The shed as a person meets it: found by what it says, typed into, undone.
//!
//! The harness fails on a box without a name for screen readers and on a letter that the fonts lack.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::shed::{Shed, farm, press, put, q, shed};
use egui::accesskit::Role;
use egui_kittest::kittest::{NodeT, Queryable};
use jiff::civil::date;
use tankard::command::Command;
use tankard::demo;
use tankard_core::farm::label::{OrderPlace, Stance};
use tankard_core::farm::{
    AdjuvantClass, Droplets, Farm, Formulation, Period, Product, ProductKind, Rig, Says, Statement, Water, When,
};
use tankard_core::quantity::{AsTyped, Units};

fn demo_shed() -> Shed {
    shed(demo::farm().unwrap(), [1366.0, 768.0])
}

#[test]
fn a_quantity_is_typed_and_undone() {
    let mut harness = demo_shed();
    let content = |harness: &Shed| farm(harness).products["glyphosate-540"].actives[0].content.text().to_owned();
    put(&mut harness, "content of glyphosate", "360 g/L");
    assert_eq!(content(&harness), "360 g/L");
    assert!(harness.state().document.is_unsaved());
    let ctx = harness.ctx.clone();
    harness.state_mut().run(Command::Undo, &ctx);
    harness.run();
    assert_eq!(content(&harness), "540 g/L");
    assert!(!harness.state().document.is_unsaved());
}

#[test]
fn a_text_that_cannot_be_read_keeps_the_farm_and_says_why() {
    let mut harness = demo_shed();
    let before = farm(&harness).clone();
    put(&mut harness, "content of glyphosate", "540 apples");
    assert_eq!(*farm(&harness), before);
    // The reason, with a text that would do, at the box and at the foot of the window.
    assert_eq!(harness.query_all_by_label_contains("is not a content").count(), 2);
    assert_eq!(harness.query_all_by_label_contains("write it like \"540 g/L\"").count(), 2);
}

#[test]
fn products_are_found_by_active() {
    let mut harness = demo_shed();
    put(&mut harness, "find a product", "TEBUCON");
    let listed: Vec<String> =
        harness.get_all_by_role(Role::ListBoxOption).filter_map(|node| node.accesskit_node().label()).collect();
    assert_eq!(listed.len(), 1, "{listed:?}");
    assert!(listed[0].starts_with("Prothioconazole + tebuconazole"), "{listed:?}");
    put(&mut harness, "find a product", "no such thing");
    harness.get_by_label("No product has this in its name or among its actives.");
}

#[test]
fn a_product_is_added_filled_in_and_removed() {
    let mut harness = demo_shed();
    let before = farm(&harness).products.len();
    press(&mut harness, "+ From a label");
    put(&mut harness, "name of the product", "Saflufenacil 342 SC (demo)");
    // Its first active is there to fill in.
    put(&mut harness, "active 1", "saflufenacil");
    put(&mut harness, "content of saflufenacil", "342 g/L");
    press(&mut harness, "+ Another statement from the label");
    press(&mut harness, "Add rate");
    put(&mut harness, "rate at most", "2 fl oz/ac");
    put(&mut harness, "rate at", "page 4");
    let (_, product) = farm(&harness).products.last().unwrap();
    assert_eq!(product.name, "Saflufenacil 342 SC (demo)");
    assert_eq!(product.actives[0].content.text(), "342 g/L");
    assert_eq!(product.label, [Statement::new(Says::Rate { least: None, most: Some(q("2 fl oz/ac")) }, "page 4")]);
    // No pass uses it, and undo brings it back, so nothing is asked.
    press(&mut harness, "Remove: Saflufenacil 342 SC (demo)");
    assert_eq!(farm(&harness).products.len(), before);
}

#[test]
fn removing_what_passes_use_asks_first() {
    let mut harness = demo_shed();
    let before = farm(&harness).clone();
    press(&mut harness, "Remove: Glyphosate 540 SL (demo)");
    assert_eq!(*farm(&harness), before);
    harness.get_by_label("3 passes use Glyphosate 540 SL (demo)");
    press(&mut harness, "Keep it");
    assert_eq!(*farm(&harness), before);
    press(&mut harness, "Remove: Glyphosate 540 SL (demo)");
    press(&mut harness, "Remove it all the same");
    assert!(!farm(&harness).products.contains_key("glyphosate-540"));
    for (page, name) in [("Waters", "Yard well"), ("Rigs", "Big boom")] {
        press(&mut harness, page);
        press(&mut harness, &format!("Remove: {name}"));
        assert!(harness.query_by_label_contains(&format!("passes use {name}")).is_some());
        press(&mut harness, "Remove it all the same");
    }
    assert!(!farm(&harness).waters.contains_key("yard-well"));
    assert!(!farm(&harness).rigs.contains_key("big-boom"));
}

#[test]
fn moving_stays_under_the_heading() {
    let mut harness = demo_shed();
    let adjuvants = |harness: &Shed| -> Vec<String> {
        let kinds = [ProductKind::Adjuvant, ProductKind::Conditioner];
        farm(harness).products.iter().filter(|(_, p)| kinds.contains(&p.kind)).map(|(id, _)| id.clone()).collect()
    };
    let before = adjuvants(&harness);
    let name = farm(&harness).products[&before[0]].name.clone();
    harness.state_mut().shed.choose_product(&before[0]);
    harness.run();
    press(&mut harness, &format!("Move down: {name}"));
    let after = adjuvants(&harness);
    assert_eq!((&after[0], &after[1]), (&before[1], &before[0]));
    press(&mut harness, &format!("Move up: {name}"));
    press(&mut harness, &format!("Move up: {name}"));
    assert_eq!(adjuvants(&harness), before);
    press(&mut harness, &format!("Copy: {name}"));
    assert_eq!(adjuvants(&harness).len(), before.len() + 1);
}

/// Every kind of statement there is. A new kind does not compile in the view until it has its row there.
fn every_statement() -> Vec<Says> {
    vec![
        Says::Rate { least: Some(q("1.2 L/ha")), most: Some(q("32 fl oz/ac")) },
        Says::Carrier { least: Some(q("100 L/ha")), most: None },
        Says::SeasonTotal { most: q("64 fl oz/ac"), per: Period::Year },
        Says::ActiveSeasonTotal { active: "glyphosate".to_owned(), most: q("4 lb ae/ac"), per: Period::Year },
        Says::Applications { most: 2, days_apart: 14, per: Period::Year },
        Says::CropStage,
        Says::HarvestInterval { days: 45 },
        Says::ReEntry { hours: 12 },
        Says::PlantBack { next_crop: "soybean".to_owned(), months: 10 },
        Says::Droplets { finest: Droplets::Medium, coarsest: Some(Droplets::VeryCoarse) },
        Says::Wind { most: q("10 mph"), least: None, gust: None },
        Says::Temperature { least: None, most: Some(q("85 °F")) },
        Says::Dates { from: "05-01".parse().ok(), to: None },
        Says::Controls { weeds: "waterhemp".to_owned() },
        Says::Buffer { to: "creek".to_owned(), width: q("66 ft"), downwind_only: false },
        Says::RainFree { hours: 1 },
        Says::Adjuvant {
            class: AdjuvantClass::CropOilConcentrate,
            stance: Stance::Preferred,
            least: Some(q("1 % v/v")),
            most: None,
            at_least: Some(q("2 qt/ac")),
            at_most: None,
        },
        Says::MixingOrder { place: OrderPlace::Last, tank_full: Some(q("75 %")) },
        Says::NotWith { what: "foliar organophosphate".to_owned(), days: 0 },
        Says::Wear { what: "gloves".to_owned() },
        Says::Handling { what: "Shake the jug first.".to_owned() },
        Says::Caution { what: "Leaves may whiten.".to_owned() },
    ]
}

fn everything(size: [f32; 2]) -> Shed {
    let mut product = Product::new("Everything (demo)", ProductKind::Herbicide, Formulation::SC);
    product.label = every_statement().into_iter().map(|says| Statement::new(says, "")).collect();
    let mut farm = Farm::new("Test");
    farm.products.insert("everything".to_owned(), product);
    shed(farm, size)
}

fn label(harness: &Shed) -> &[Statement] {
    &farm(harness).products["everything"].label
}

#[test]
fn every_kind_of_statement_has_its_row_and_can_be_added() {
    for size in [[1366.0, 768.0], [910.0, 512.0]] {
        let mut harness = everything(size);
        let before = label(&harness).len();
        for says in every_statement() {
            let name = says.name();
            harness.get_by_label(&format!("{name} for crop"));
            harness.get_by_label(&format!("Remove: {name}"));
        }
        assert!(!harness.state().document.is_unsaved(), "nothing is changed by being looked at");
        if size[0] < 1000.0 {
            continue;
        }
        for (at, says) in every_statement().into_iter().enumerate() {
            press(&mut harness, "+ Another statement from the label");
            press(&mut harness, &format!("Add {}", says.name()));
            assert_eq!(label(&harness).last().map(|added| added.says.name()), Some(says.name()));
            assert_eq!(label(&harness).len(), before + at + 1);
        }
        press(&mut harness, "Remove: rate 2");
        assert_eq!(label(&harness).len(), before * 2 - 1);
        harness.get_by_label("Remove: rate");
    }
}

#[test]
fn each_value_of_a_statement_can_be_typed() {
    let mut harness = everything([1366.0, 768.0]);
    for (name, text) in [
        ("rate at least", "20 fl oz/ac"),
        ("spray volume at most", "30 gal/ac"),
        ("most a season at most", "50 fl oz/ac"),
        ("most active a season active", "mesotrione"),
        ("most active a season at most", "0.24 lb ai/ac"),
        ("applications at most", "3"),
        ("applications days apart", "21"),
        ("crop stage to stage", "V8"),
        ("harvest, graze days", "60"),
        ("keep out hours", "24"),
        ("next crop is", "sugar beet"),
        ("next crop months", "18"),
        ("wind at most", "8 mph"),
        ("wind at least", "3 mph"),
        ("temperature at least", "10 °C"),
        ("temperature at most", "30 °C"),
        ("dates from", "04-15"),
        ("dates to", "06-20"),
        ("controls", "waterhemp, kochia"),
        ("not together with within days", "7"),
        ("adjuvant at least over ground", "1 pt/ac"),
        ("adjuvant at most over ground", "2 pt/ac"),
        ("buffer width", "20 m"),
        ("buffer to", "pond"),
        ("rain-free hours", "4"),
        ("adjuvant at most", "2 % v/v"),
        ("mixing order tank filled to", "50 %"),
        ("not together with", "oil"),
        ("wear", "gloves and boots"),
        ("when mixing", "Stir."),
        ("caution", "Slow."),
    ] {
        put(&mut harness, name, text);
    }
    for (closed, chosen) in [
        ("droplets finest: medium or coarser", "fine or coarser"),
        ("droplets coarsest: very coarse at most", "any coarser"),
        ("adjuvant stance: preferred", "required"),
        ("adjuvant class: crop oil concentrate", "methylated seed oil"),
        ("mixing order place: after all others", "before all others"),
        ("most a season counted: a year", "a crop"),
        ("most active a season counted: a year", "in 12 months"),
        ("applications counted: a year", "a crop"),
    ] {
        press(&mut harness, closed);
        press(&mut harness, chosen);
    }
    let says: Vec<Says> = label(&harness).iter().map(|statement| statement.says.clone()).collect();
    assert_eq!(
        says,
        [
            Says::Rate { least: Some(q("20 fl oz/ac")), most: Some(q("32 fl oz/ac")) },
            Says::Carrier { least: Some(q("100 L/ha")), most: Some(q("30 gal/ac")) },
            Says::SeasonTotal { most: q("50 fl oz/ac"), per: Period::Crop },
            Says::ActiveSeasonTotal {
                active: "mesotrione".to_owned(),
                most: q("0.24 lb ai/ac"),
                per: Period::TwelveMonths
            },
            Says::Applications { most: 3, days_apart: 21, per: Period::Crop },
            Says::CropStage,
            Says::HarvestInterval { days: 60 },
            Says::ReEntry { hours: 24 },
            Says::PlantBack { next_crop: "sugar beet".to_owned(), months: 18 },
            Says::Droplets { finest: Droplets::Fine, coarsest: None },
            Says::Wind { most: q("8 mph"), least: Some(q("3 mph")), gust: None },
            Says::Temperature { least: Some(q("10 °C")), most: Some(q("30 °C")) },
            Says::Dates { from: "04-15".parse().ok(), to: "06-20".parse().ok() },
            Says::Controls { weeds: "waterhemp, kochia".to_owned() },
            Says::Buffer { to: "pond".to_owned(), width: q("20 m"), downwind_only: false },
            Says::RainFree { hours: 4 },
            Says::Adjuvant {
                class: AdjuvantClass::MethylatedSeedOil,
                stance: Stance::Required,
                least: Some(q("1 % v/v")),
                most: Some(q("2 % v/v")),
                at_least: Some(q("1 pt/ac")),
                at_most: Some(q("2 pt/ac")),
            },
            Says::MixingOrder { place: OrderPlace::First, tank_full: Some(q("50 %")) },
            Says::NotWith { what: "oil".to_owned(), days: 7 },
            Says::Wear { what: "gloves and boots".to_owned() },
            Says::Handling { what: "Stir.".to_owned() },
            Says::Caution { what: "Slow.".to_owned() },
        ]
    );
    assert_eq!(label(&harness)[5].to_stage, "V8");
}

#[test]
fn a_statement_is_bound_to_conditions_and_freed_again() {
    let mut harness = everything([1366.0, 768.0]);
    let add = |harness: &mut Shed, words: &str| {
        press(harness, "rate only if");
        press(harness, words);
    };
    add(&mut harness, "in drought");
    add(&mut harness, "with a partner");
    add(&mut harness, "below a spray volume");
    harness.get_by_label("still to type");
    put(&mut harness, "rate condition 2", "group 1");
    put(&mut harness, "rate condition 3", "10 gal/ac");
    harness.get_by_label("in drought");
    assert_eq!(
        label(&harness)[0].when,
        [When::Drought, When::With("group 1".to_owned()), When::CarrierBelow(q("10 gal/ac"))]
    );
    press(&mut harness, "Remove: rate condition 1");
    assert_eq!(label(&harness)[0].when.len(), 2);
    assert!(label(&harness)[1].when.is_empty());
    // The bounds over ground of an adjuvant in the spray are behind the same act.
    put(&mut harness, "adjuvant at least over ground", "");
    assert!(harness.query_by_label("adjuvant at most over ground").is_none());
    press(&mut harness, "adjuvant only if");
    press(&mut harness, "but at least, or at most, over ground");
    put(&mut harness, "adjuvant at most over ground", "2 pt/ac");
}

#[test]
fn a_day_of_the_year_that_is_none_is_refused() {
    let mut harness = everything([1366.0, 768.0]);
    put(&mut harness, "dates to", "02-30");
    assert!(harness.query_all_by_label_contains("no day of the year").count() >= 1);
    assert!(label(&harness).iter().any(|said| said.says == Says::Dates { from: "05-01".parse().ok(), to: None }));
}

#[test]
fn a_choice_is_made() {
    let mut harness = demo_shed();
    press(&mut harness, "restricted use: no");
    press(&mut harness, "yes, for certified applicators only");
    assert!(farm(&harness).products["glyphosate-540"].restricted);
}

#[test]
fn a_water_shows_its_hardness_and_need() {
    let mut test = Farm::new("Test");
    let water = Water {
        name: "Well".to_owned(),
        calcium: Some(q("100 ppm")),
        magnesium: Some(q("30 ppm")),
        sodium: Some(q("50 ppm")),
        potassium: Some(q("5 ppm")),
        iron: Some(q("1 ppm")),
        ..Water::default()
    };
    test.waters.insert("well".to_owned(), water);
    let mut harness = shed(test, [1366.0, 768.0]);
    press(&mut harness, "Waters");
    // Standard Methods 2340 B: 2.497 × 100 + 4.118 × 30 = 373.2 ppm; a grain per US gallon is 17.118 ppm, a German
    // degree 17.848 ppm, a French degree 10 ppm (by definition).
    for text in ["373", "21.8", "20.9", "37.3"] {
        harness.get_by_label(text);
    }
    // Zollinger, NDSU Extension, Crop & Pest Report, 2 July 2015: 0.002 × 5 + 0.005 × 50 + 0.009 × 100 + 0.014 × 30
    // = 1.58 lb/100 gal, and 0.042 more for 1 ppm of iron.
    assert!(harness.query_all_by_label("1.58 lb/100 gal").count() >= 1);
    assert!(harness.query_all_by_label("1.62 lb/100 gal").count() >= 1);
    put(&mut harness, "calcium", "hard");
    assert_eq!(farm(&harness).waters["well"].calcium.as_ref().map(AsTyped::text), Some("100 ppm"));
    put(&mut harness, "pH", "7.4");
    put(&mut harness, "sampled", "2031-03-18");
    let water = &farm(&harness).waters["well"];
    assert_eq!(water.acidity.as_ref().map(AsTyped::text), Some("7.4"));
    assert_eq!(water.sampled, Some(date(2031, 3, 18)));
}

#[test]
fn two_waters_blend_to_a_hardness_and_the_blend_is_kept() {
    let mut test = Farm::new("Test");
    for (id, name, hard) in [("well", "Well", "400 ppm"), ("rain", "Rain", "20 ppm")] {
        let water = Water { name: name.to_owned(), hardness: Some(q(hard)), ..Water::default() };
        test.waters.insert(id.to_owned(), water);
    }
    let mut harness = shed(test, [1366.0, 768.0]);
    press(&mut harness, "Waters");
    // US Geological Survey: above 180 ppm very hard.
    harness.get_by_label("very hard");
    press(&mut harness, "blend with: choose a water");
    harness.get_all_by_label("Rain").last().unwrap().click();
    harness.run();
    put(&mut harness, "hardness wanted", "500 ppm");
    harness.get_by_label("A blend of the two has between 20 and 400 ppm.");
    // (400 - 248) / (400 - 20) = 40 % (arithmetic).
    put(&mut harness, "hardness wanted", "248 ppm");
    harness.get_by_label("60 % Well and 40 % Rain");
    press(&mut harness, "Keep the blend as a water of its own");
    let kept = &farm(&harness).waters["well-with-rain-40"];
    assert_eq!((kept.name.as_str(), kept.hardness.as_ref().unwrap().text()), ("Well with Rain, 40 %", "248 ppm"));
    harness.get_by_label("248");
    let ctx = harness.ctx.clone();
    harness.state_mut().run(Command::Undo, &ctx);
    harness.run();
    assert_eq!(farm(&harness).waters.len(), 2);
}

#[test]
fn a_rig_shows_how_much_it_covers() {
    let mut test = Farm::new("Test");
    test.rigs.insert("boom".to_owned(), Rig::new("Boom", q("500 gal")));
    let mut harness = shed(test, [1366.0, 768.0]);
    press(&mut harness, "Rigs");
    harness.get_by_label("Type working width, speed and field efficiency to see it.");
    put(&mut harness, "working width", "60 ft");
    put(&mut harness, "speed", "10 mph");
    put(&mut harness, "field efficiency", "65 %");
    // By definition of the units: 52,800 ft/h × 60 ft × 0.65 / 43,560 ft² an acre = 47.3 ac/h.
    harness.get_by_label("47.3 ac/h");
    assert_eq!(farm(&harness).rigs["boom"].droplets, None);
    press(&mut harness, "droplets: not known");
    press(&mut harness, "very coarse");
    assert_eq!(farm(&harness).rigs["boom"].droplets, Some(Droplets::VeryCoarse));
}

#[test]
fn an_empty_farm_says_what_to_do_first() {
    let mut harness = shed(Farm::new("New farm"), [1366.0, 768.0]);
    assert!(harness.query_by_label_contains("No product yet. Take a label booklet").is_some());
    for (page, says) in [("Waters", "No water yet."), ("Rigs", "No rig yet."), ("Stock", "No product yet")] {
        press(&mut harness, page);
        assert!(harness.query_all_by_label_contains(says).count() >= 1, "{page}");
    }
    for (page, add) in [("Waters", "+ Add a water"), ("Rigs", "+ Add a rig"), ("Products", "+ From a label")] {
        press(&mut harness, page);
        press(&mut harness, add);
    }
    let farm = farm(&harness);
    assert_eq!((farm.waters.len(), farm.rigs.len(), farm.products.len()), (1, 1, 1));
}

#[test]
fn every_page_of_the_demo_renders_in_all_units_and_in_a_small_window() {
    let wide = [1366.0, 768.0];
    for (units, size) in [(Units::UsCustomary, [910.0, 512.0]), (Units::Imperial, wide), (Units::Metric, wide)] {
        let mut demo = demo::farm().unwrap();
        demo.units = units;
        let before = demo.clone();
        let mut harness = shed(demo, size);
        for id in before.products.keys() {
            harness.state_mut().shed.choose_product(id);
            harness.step();
        }
        for page in ["Waters", "Rigs", "Stock"] {
            press(&mut harness, page);
        }
        assert_eq!(*farm(&harness), before);
    }
}

#[test]
fn a_place_that_contradicts_its_zone_is_told_where_it_is_typed() {
    let mut harness = demo_shed();
    harness.get_by_role_and_label(Role::Tab, "Farm").click();
    harness.run();
    assert!(harness.query_by_label_contains("does not fit the time zone").is_none());
    let longitude = farm(&harness).place.as_ref().unwrap().longitude.clone();
    let east = longitude.trim_start_matches('-').to_owned();
    assert_ne!(longitude, east, "the demo lies in the west");
    put(&mut harness, "longitude", &east);
    harness.get_by_label_contains(&format!("The longitude {east} does not fit the time zone"));
    harness.get_by_label_contains(&format!("West is typed with a minus: \"-{east}\""));
    press(&mut harness, &format!("Take {longitude}"));
    assert_eq!(farm(&harness).place.as_ref().unwrap().longitude, longitude);
    put(&mut harness, "latitude", "95");
    harness.get_by_label_contains("\"95\" is no latitude");
}
