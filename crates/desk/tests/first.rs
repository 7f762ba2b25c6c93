//! The first hour: where to begin, what comes next on a new farm, a product typed row by row, and directions pasted from a label.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::evening;
use common::shed::{Shed, farm, press, put, q, shed};
use egui::Key;
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use tankard::app::Desk;
use tankard::command::{Command, View};
use tankard::demo;
use tankard::document::Document;
use tankard_core::begin::{Next, new_farm, next};
use tankard_core::farm::{Card, Droplets, Farm, Field, Formulation, Place, Product, ProductKind, Says, Statement};
use tankard_core::loads::card::cards;

fn start() -> Harness<'static, Desk> {
    let desk = Desk::new(Document::copy(demo::farm().unwrap()), evening).choosing();
    let mut harness = common::window(desk, [1366.0, 768.0]);
    harness.run();
    harness
}

fn key(harness: &mut Harness<'_, Desk>, key: Key) {
    harness.key_press(key);
    harness.run();
}

/// Types into whatever has the keyboard, and goes on by so many tabs.
fn type_on(harness: &mut Harness<'_, Desk>, text: &str, tabs: usize) {
    harness.event(egui::Event::Text(text.to_owned()));
    harness.run();
    for _ in 0..tabs {
        key(harness, Key::Tab);
    }
}

fn focused(harness: &Harness<'_, Desk>) -> String {
    // A method's name is not general enough over the lifetime of a node.
    #[allow(clippy::redundant_closure_for_method_calls)]
    let focused = egui_kittest::kittest::By::new().predicate(|node| node.is_focused());
    let node = harness.query_all(focused).last();
    node.and_then(|node| node.accesskit_node().label()).unwrap_or_default()
}

/// A click leads to a box as a key does: what is typed then goes there.
#[test]
fn the_next_step_is_led_to_by_the_mouse_too() {
    let mut harness = start();
    harness.get_by_label("Begin my own farm").click();
    harness.run();
    assert_eq!(focused(&harness), "name of the farm");
    type_on(&mut harness, "Our farm", 2);
    assert_eq!(focused(&harness), "sign of the currency");
    harness.get_by_label("Type the latitude").click();
    harness.run();
    assert_eq!(focused(&harness), "latitude");
    let ctx = harness.ctx.clone();
    harness.state_mut().run(Command::Go(View::Shed), &ctx);
    harness.run();
    harness.get_by_role_and_label(egui::accesskit::Role::Tab, "Products").click();
    harness.run();
    harness.get_by_label("+ From a label").click();
    harness.run();
    assert_eq!(focused(&harness), "name of the product");
}

#[test]
fn there_are_three_ways_in() {
    let mut harness = start();
    for way in ["Look around in the demo farm", "Begin my own farm", "Open a file…"] {
        harness.get_by_label(way);
    }
    // Nothing of the demo farm is in sight, and the keyboard stands at the first way.
    assert!(harness.query_by_label("Tank mix").is_none());
    assert_eq!(focused(&harness), "Look around in the demo farm");
    key(&mut harness, Key::Enter);
    harness.get_by_label("Tank mix");
    assert!(harness.query_by_label("Begin my own farm").is_none());
    // A farm with records needs no first steps.
    assert!(harness.query_by_label_contains("Step 1").is_none());

    let mut harness = start();
    key(&mut harness, Key::Tab);
    assert_eq!(focused(&harness), "Begin my own farm");
    key(&mut harness, Key::Enter);
    assert_eq!(harness.state().document.farm().name, new_farm());
    harness.get_by_label("Step 1 of 7");
    assert_eq!(focused(&harness), "name of the farm");

    let mut harness = start();
    let ctx = harness.ctx.clone();
    harness.state_mut().run(Command::Go(View::Shed), &ctx);
    harness.run();
    harness.get_by_label("Front panel");
}

/// From an empty farm to the plan of a first card, by the keyboard alone.
#[test]
fn the_keyboard_alone_leads_to_the_first_card() {
    let mut harness = start();
    let ctx = harness.ctx.clone();
    harness.state_mut().run(Command::New, &ctx);
    harness.run();
    type_on(&mut harness, "Invented farm", 3);
    assert_eq!(focused(&harness), "latitude");
    type_on(&mut harness, "41.2", 1);
    type_on(&mut harness, "-96.4", 1);
    type_on(&mut harness, "America/Chicago", 0);
    harness.get_by_label("Step 2 of 7");
    key(&mut harness, Key::F3);
    type_on(&mut harness, "North forty", 1);
    type_on(&mut harness, "40 ac", 1);
    type_on(&mut harness, "corn", 1);
    type_on(&mut harness, "V5", 0);
    harness.get_by_label("Step 3 of 7");
    key(&mut harness, Key::F3);
    assert_eq!(focused(&harness), "name of the rig");
    type_on(&mut harness, "Yard sprayer", 0);
    // A name is no sprayer: its tank, its boom and its nozzles come next, and no size stands there that nobody typed.
    harness.get_by_label("Step 3 of 7");
    harness.get_by_label("still to type");
    key(&mut harness, Key::F3);
    assert_eq!(focused(&harness), "full to its mark");
    type_on(&mut harness, "800 gal", 0);
    assert_eq!(farm(&harness).rigs[0].tank.text(), "800 gal");
    key(&mut harness, Key::F3);
    assert_eq!(focused(&harness), "working width");
    type_on(&mut harness, "90 ft", 0);
    key(&mut harness, Key::F3);
    assert_eq!(focused(&harness), "+ Add a nozzle set");
    key(&mut harness, Key::Enter);
    assert_eq!(farm(&harness).rigs[0].sets.len(), 1);
    harness.get_by_label("Step 4 of 7");
    key(&mut harness, Key::F3);
    type_on(&mut harness, "Yard well", 0);
    key(&mut harness, Key::F3);
    assert_eq!(focused(&harness), "calcium");
    type_on(&mut harness, "118 ppm", 1);
    type_on(&mut harness, "42 ppm", 0);
    harness.get_by_label("Step 5 of 7");
    key(&mut harness, Key::F3);
    type_on(&mut harness, "Invented 540 SL", 0);
    key(&mut harness, Key::F3);
    assert_eq!(focused(&harness), "active 1");
    type_on(&mut harness, "glyphosate", 1);
    type_on(&mut harness, "540 g ae/L", 0);
    key(&mut harness, Key::F3);
    assert_eq!(focused(&harness), "rate at least");
    // From row to row by Enter, past crop, stages and page.
    type_on(&mut harness, "16 fl oz/ac", 1);
    type_on(&mut harness, "32 fl oz/ac", 0);
    key(&mut harness, Key::Enter);
    assert_eq!(focused(&harness), "spray volume at least");
    type_on(&mut harness, "10 gal/ac", 0);
    harness.get_by_label("Step 6 of 7");
    key(&mut harness, Key::F3);
    assert!(focused(&harness).starts_with("Add a field"), "{}", focused(&harness));
    let (pass, field, product) = {
        let farm = harness.state().document.farm();
        (
            farm.passes.keys().next().unwrap().clone(),
            farm.fields.keys().next().unwrap().clone(),
            farm.products.keys().next().unwrap().clone(),
        )
    };
    // Chosen by the keyboard, which goes back to the box from its list; the list opens at what is chosen.
    key(&mut harness, Key::Enter);
    key(&mut harness, Key::ArrowDown);
    key(&mut harness, Key::Enter);
    assert_eq!(harness.state().document.farm().passes[&pass].fields, [field]);
    // Water and rig are the only ones there are, so the pass has them.
    key(&mut harness, Key::F3);
    assert_eq!(focused(&harness), "Spray volume over ground");
    type_on(&mut harness, "15 gal/ac", 0);
    key(&mut harness, Key::F3);
    assert!(focused(&harness).starts_with("Add a product to the mix"), "{}", focused(&harness));
    let line = tankard_core::farm::Line::new(&product, q("22 fl oz/ac"));
    harness.state_mut().document.edit(|farm| farm.passes[&pass].mix.push(line));
    harness.run();
    harness.get_by_label("Step 7 of 7");
    assert_eq!(next(harness.state().document.farm()), Some(Next::Card(pass.clone())));
    // Once it is issued that is said once, and gone when one goes on.
    let plan = harness.state_mut().document.plan(&pass).unwrap();
    let content = cards(harness.state().document.farm(), &plan).remove(0);
    let card = Card { pass: pass.clone(), issued: evening(""), content };
    harness.state_mut().document.issue([("1".to_owned(), card)]);
    harness.run();
    assert!(harness.query_by_label_contains("Your first load card is issued").is_some());
    harness.state_mut().run(Command::Go(View::Fields), &ctx);
    harness.run();
    harness.state_mut().run(Command::Go(View::TankLoads), &ctx);
    harness.run();
    assert!(harness.query_by_label_contains("Your first load card is issued").is_none());
    assert!(harness.query_by_label_contains("Step 7").is_none());
}

#[test]
fn steps_taken_elsewhere_are_seen_and_the_line_can_be_hidden() {
    let mut farm = Farm::new(new_farm());
    farm.fields.insert("f".to_owned(), Field::new("North", q("40 ac")));
    let mut harness = shed(farm, [1366.0, 768.0]);
    harness.get_by_label("Step 1 of 7");
    let (latitude, longitude, zone) = ("41.2".to_owned(), "-96.4".to_owned(), "America/Chicago".to_owned());
    harness
        .state_mut()
        .document
        .edit(|farm| farm.place = Some(Place { latitude, longitude, zone, ..Place::default() }));
    harness.run();
    // The field is there already.
    harness.get_by_label("Step 3 of 7");
    press(&mut harness, "Add the sprayer");
    assert_eq!(farm_rigs(&harness), 1);
    // Pressing it again goes on with the one that was begun.
    key(&mut harness, Key::F3);
    assert_eq!((farm_rigs(&harness), focused(&harness).as_str()), (1, "name of the rig"));
    press(&mut harness, "Hide the first steps");
    assert!(harness.query_by_label("Step 3 of 7").is_none());
    let ctx = harness.ctx.clone();
    harness.state_mut().run(Command::FirstSteps, &ctx);
    harness.run();
    harness.get_by_label("Step 3 of 7");
}

fn farm_rigs(harness: &Shed) -> usize {
    farm(harness).rigs.len()
}

fn with_product() -> Shed {
    let mut farm = Farm::new("Test");
    let mut product = Product::new("Invented 540 SL", ProductKind::Herbicide, Formulation::SL);
    product.label.push(Statement::new(Says::ReEntry { hours: 24 }, "page 2"));
    farm.products.insert("it".to_owned(), product);
    shed(farm, [1366.0, 768.0])
}

fn label(harness: &Shed) -> &[Statement] {
    &farm(harness).products["it"].label
}

#[test]
fn pasted_directions_enter_line_by_line_as_they_are_ticked() {
    let mut harness = with_product();
    press(&mut harness, "Paste directions…");
    assert_eq!(focused(&harness), "directions from the label");
    type_on(
        &mut harness,
        "Apply 16 to 22 fl oz per acre. Do not enter treated areas for 12 hours. Do not apply within 50 days of harvest. \
         Weeds must be less than 4 inches tall.",
        0,
    );
    assert_eq!(label(&harness).len(), 1, "nothing enters by itself");
    assert!(harness.query_by_label_contains("1 sentence was not understood").is_some());
    harness.get_by_label("Weeds must be less than 4 inches tall.");
    // What is typed already stands beside what would take its place.
    harness.get_by_label("the form has 24 hours, without protection");
    put(&mut harness, "directions stand on", "page 3");
    press(&mut harness, "Enter Rate: 16 to 22 fl oz/ac");
    press(&mut harness, "Enter Keep out: 12 hours, without protection");
    press(&mut harness, "Enter 2 ticked lines");
    assert_eq!(
        label(&harness),
        [
            Statement::new(Says::ReEntry { hours: 12 }, "page 3"),
            Statement::new(Says::Rate { least: Some(q("16 fl oz/ac")), most: Some(q("22 fl oz/ac")) }, "page 3"),
        ]
    );
    // What was not ticked did not enter; what did is not offered again.
    harness.get_by_label("Enter Harvest, graze: 50 days before harvest or grazing");
    assert!(harness.query_by_label("Enter Rate: 16 to 22 fl oz/ac").is_none());
    press(&mut harness, "Put the text away");
    assert!(harness.query_by_label("directions from the label").is_none());
    let ctx = harness.ctx.clone();
    harness.state_mut().run(Command::Undo, &ctx);
    harness.run();
    assert_eq!(label(&harness), [Statement::new(Says::ReEntry { hours: 24 }, "page 2")]);
}

#[test]
fn a_sentence_that_was_not_understood_stands_above_the_row_it_is_typed_in() {
    let mut harness = with_product();
    press(&mut harness, "Paste directions…");
    let wind = "If the wind changes or exceeds 12 mph, stop.";
    let inside = "Unless all is cut green, enter treated fields no sooner than 3 days.";
    let lost = "Keep 2 of them.";
    type_on(&mut harness, &format!("{wind} {inside} {lost}"), 0);
    assert!(harness.query_by_label_contains(&format!(": {lost}")).is_none(), "its words do not tell where it belongs");
    // No row for the wind yet: it is put in, on the page of the pasted text, and has the keyboard.
    put(&mut harness, "directions stand on", "page 3");
    harness.get_by_label(&format!("Type under wind: {wind}")).focus();
    harness.run();
    key(&mut harness, Key::Enter);
    assert_eq!(focused(&harness), "wind at most");
    assert_eq!(harness.query_all_by_label(wind).count(), 2, "in the pasted text and above its row");
    put(&mut harness, "wind at most", "12 mph");
    assert_eq!(
        label(&harness)[1..],
        [Statement::new(Says::Wind { most: q("12 mph"), least: None, gust: None }, "page 3")]
    );
    // On to the next one, which has a row.
    press(&mut harness, "Next sentence");
    assert_eq!(focused(&harness), "keep out hours");
    assert_eq!(label(&harness).len(), 2);
    assert_eq!(harness.query_all_by_label(wind).count(), 1);
    assert_eq!(harness.query_all_by_label(inside).count(), 2);
    assert!(harness.query_by_label("Next sentence").is_none());
    press(&mut harness, "+ Another row");
    assert_eq!(focused(&harness), "keep out 2 hours");
    press(&mut harness, "Put the sentence away");
    assert_eq!(harness.query_all_by_label(inside).count(), 1);
}

#[test]
fn what_is_typed_may_stay_beside_what_is_read() {
    let mut harness = with_product();
    press(&mut harness, "Paste directions…");
    type_on(&mut harness, "REI 12 h", 0);
    common::shed::choose(
        &mut harness,
        "how Keep out: 12 hours, without protection is entered: in its place",
        "beside it",
    );
    press(&mut harness, "Enter Keep out: 12 hours, without protection");
    press(&mut harness, "Enter 1 ticked line");
    assert_eq!(label(&harness).len(), 2);
    // Another text has no tick of the one before.
    put(&mut harness, "directions from the label", "REI 48 h. PHI 30 days.");
    assert!(harness.query_by_label_contains("ticked line").is_none());
}

#[test]
fn empty_rows_are_nothing_until_something_is_typed_in_them() {
    let mut harness = with_product();
    assert!(harness.query_by_label("wind at most").is_none());
    press(&mut harness, "Empty rows for what is not typed yet");
    put(&mut harness, "wind at most", "10 mph");
    put(&mut harness, "harvest, graze days", "50");
    put(&mut harness, "applications at most", "2");
    assert_eq!(
        label(&harness)[1..],
        [
            Statement::new(Says::Wind { most: q("10 mph"), least: None, gust: None }, "page 2"),
            Statement::new(Says::HarvestInterval { days: 50 }, "page 2"),
            Statement::new(
                Says::Applications { most: 2, days_apart: 0, per: tankard_core::farm::Period::Year },
                "page 2"
            ),
        ]
    );
    // Enter leads on past a class that the label does not state.
    harness.get_by_label("droplets finest: not typed").focus();
    harness.run();
    key(&mut harness, Key::Enter);
    assert_eq!(focused(&harness), "wind at most");
    assert!(!label(&harness).iter().any(|statement| matches!(statement.says, Says::Droplets { .. })));
    // One that is chosen by the keyboard leads to the next row, and not beyond it.
    harness.get_by_label("droplets finest: not typed").focus();
    harness.run();
    key(&mut harness, Key::Space);
    key(&mut harness, Key::ArrowDown);
    key(&mut harness, Key::Enter);
    assert_eq!(focused(&harness), "wind at most");
    assert!(matches!(label(&harness)[4].says, Says::Droplets { coarsest: None, .. }));
    // Each class can be chosen, also the one that a new statement begins with.
    for class in Droplets::ALL {
        let mut harness = with_product();
        press(&mut harness, "Empty rows for what is not typed yet");
        common::shed::choose(&mut harness, "droplets finest: not typed", class.name());
        assert_eq!(label(&harness)[1].says, Says::Droplets { finest: class, coarsest: None });
    }
    // Into a sentence and out of it, too.
    put(&mut harness, "harvest, graze days", "50");
    key(&mut harness, Key::Enter);
    assert_eq!(focused(&harness), "wear");
    type_on(&mut harness, "gloves", 0);
    key(&mut harness, Key::Enter);
    assert_eq!(focused(&harness), "keep out hours");
    press(&mut harness, "Hide the empty rows");
    assert!(harness.query_by_label("rate at least").is_none());
    assert_eq!(label(&harness).len(), 6);
}
