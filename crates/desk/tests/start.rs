//! A product begun from its active, what others print about it, and its front panel, as a person meets them in the shed.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use egui::accesskit::Role;
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use jiff::civil::{DateTime, date};
use tankard::app::Desk;
use tankard::command::{Command, View};
use tankard::demo;
use tankard::document::Document;
use tankard_core::farm::label::Stance;
use tankard_core::farm::{
    AdjuvantClass, Charge, Farm, Formulation, Grade, Product, ProductKind, Says, Statement, Surfactant,
};
use tankard_core::mix::{guidance, start};
use tankard_core::quantity::ActiveBasis;

fn clock(_zone: &str) -> DateTime {
    date(2031, 6, 11).at(18, 0, 0, 0)
}

type Shed = Harness<'static, Desk>;

/// How the acts that confirm a guidance begin.
const ACT: &str = "It stands on the label too: ";

fn shed(farm: Farm, size: [f32; 2]) -> Shed {
    let mut desk = Desk::new(Document::copy(farm), clock);
    desk.view = View::Shed;
    let mut harness = common::window(desk, size);
    harness.run();
    harness
}

fn one(product: Product) -> Shed {
    let mut farm = Farm::new("Test");
    farm.products.insert("it".to_owned(), product);
    shed(farm, [1366.0, 768.0])
}

fn press(harness: &mut Shed, name: &str) {
    harness.get_by_label(name).scroll_to_me();
    harness.run();
    harness.get_by_label(name).click();
    harness.run();
}

fn key(harness: &mut Shed, key: egui::Key) {
    harness.key_press(key);
    harness.run();
}

/// Types into whatever has the focus.
fn type_text(harness: &mut Shed, text: &str) {
    harness.event(egui::Event::Text(text.to_owned()));
    harness.run();
}

fn choose(harness: &mut Shed, closed: &str, chosen: &str) {
    press(harness, closed);
    press(harness, chosen);
}

fn farm(harness: &Shed) -> &Farm {
    harness.state().document.farm()
}

fn it(harness: &Shed) -> &Product {
    &farm(harness).products["it"]
}

/// A product begun from a line, with the name that the line gives it.
fn glyphosate() -> Product {
    start::read("glyphosate, SL, 540 g ae/L").unwrap().product(&Farm::new("Test"))
}

#[test]
fn a_product_is_begun_from_an_active_by_the_keyboard_alone() {
    let mut harness = shed(Farm::new("Test"), [1366.0, 768.0]);
    harness.get_by_label("+ From an active…").focus();
    harness.run();
    key(&mut harness, egui::Key::Enter);
    // The box is stepped into by itself. Enter on a line that is not whole yet says what is missing and stays.
    type_text(&mut harness, "glyphosate, SL");
    assert!(harness.query_by_label_contains("Still missing: the content").is_some());
    key(&mut harness, egui::Key::Enter);
    assert!(farm(&harness).products.is_empty());
    type_text(&mut harness, ", 540 g ae/L");
    harness.get_by_label("Glyphosate 540 SL");
    key(&mut harness, egui::Key::Enter);
    let (id, product) = farm(&harness).products.first().unwrap();
    assert_eq!((id.as_str(), product.name.as_str()), ("glyphosate-540-sl", "Glyphosate 540 SL"));
    assert_eq!((product.kind, product.formulation), (ProductKind::Herbicide, Formulation::SL));
    let active = &product.actives[0];
    // HRAC group 9; labels count glyphosate as acid equivalent: the row of `assets/actives.csv`.
    assert_eq!((active.name.as_str(), active.group.as_str()), ("glyphosate", "9"));
    assert_eq!((active.basis, active.content.text()), (ActiveBasis::AcidEquivalent, "540 g ae/L"));
    assert!(product.label.is_empty() && product.typed_from.is_empty(), "nothing of a label is invented");
    // Its page is open, the box is closed, and all of it is one step back.
    harness.get_by_label("content of glyphosate");
    assert!(harness.query_by_label("start from an active").is_none());
    let ctx = harness.ctx.clone();
    harness.state_mut().run(Command::Undo, &ctx);
    harness.run();
    assert!(farm(&harness).products.is_empty());
}

#[test]
fn an_active_is_picked_or_left() {
    let mut harness = shed(Farm::new("Test"), [1366.0, 768.0]);
    press(&mut harness, "+ From an active…");
    type_text(&mut harness, "glyph");
    press(&mut harness, "Take glyphosate");
    choose(&mut harness, "formulation to start with: formulation", "SL, soluble concentrate");
    assert!(harness.query_by_label_contains("Still missing: the content").is_some());
    press(&mut harness, "Not now");
    assert!(farm(&harness).products.is_empty());
    press(&mut harness, "+ From an active…");
    choose(&mut harness, "known active: known actives", "glyphosate");
    harness.get_by_label("start from an active").focus();
    harness.run();
    key(&mut harness, egui::Key::End);
    type_text(&mut harness, " 75 SG");
    // What was not typed is said: the unit of a bare number.
    assert!(harness.query_by_label_contains("75 was read as 75 % w/w").is_some());
    press(&mut harness, "Add it");
    assert_eq!(farm(&harness).products[0].actives[0].content.text(), "75 % w/w");
    press(&mut harness, "+ From an active…");
    type_text(&mut harness, "inventedone 100 EC");
    assert!(harness.query_by_label_contains("type its group and basis from the label").is_some());
    key(&mut harness, egui::Key::Escape);
    assert_eq!(farm(&harness).products.len(), 1);
    harness.get_by_label("+ From an active…");
}

#[test]
fn every_guidance_on_a_product_is_shown_with_its_source_and_goes_to_the_label_only_when_asked() {
    let mut harness = one(glyphosate());
    let expected: Vec<_> = guidance::on(it(&harness)).collect();
    assert!(!expected.is_empty());
    for (guidance, _) in &expected {
        assert!(harness.query_all_by_label(guidance.basis.source()).count() >= 1, "{}", guidance.id);
    }
    let acts = expected.iter().filter(|(guidance, _)| !guidance.statements.is_empty()).count();
    assert_eq!(harness.query_all_by_label_contains(ACT).count(), acts);
    harness.get_by_label("Guidance to be checked; what you type from the label decides.");
    // Zollinger, NDSU Extension, Crop & Pest Report, 2 July 2015: ammonium sulfate at 8.5 to 17 lb/100 gal with glyphosate.
    let printed = "Ammonium sulfate preferred, 8.5 to 17\u{a0}lb/100\u{a0}gal";
    assert!(harness.query_all_by_label_contains(printed).count() >= 1);
    assert!(!harness.state().document.is_unsaved(), "nothing goes to the label by itself");
    harness.query_all_by_label_contains(ACT).next().unwrap().click();
    harness.run();
    let label = it(&harness).label.clone();
    assert!(label.iter().all(|statement| statement.at.is_empty()), "the page is typed from the booklet");
    let without_place = |statement: &Statement| Statement { at: String::new(), ..statement.clone() };
    assert!(
        expected.iter().any(|(guidance, _)| guidance.statements.iter().map(without_place).collect::<Vec<_>>() == label),
        "{label:?}"
    );
    assert!(harness.query_all_by_label("On the label as well; type its page there.").count() >= 1);
    assert!(harness.query_all_by_label_contains(ACT).count() < acts, "it is not added twice");
    let page = if label.len() == 1 { "adjuvant at" } else { "adjuvant 1 at" };
    harness.get_by_label(page).focus();
    harness.run();
    type_text(&mut harness, "page 7");
    assert_eq!(it(&harness).label[0].at, "page 7");
    assert!(harness.query_all_by_label("The label says the same, page 7.").count() >= 1);
}

#[test]
fn a_label_that_says_otherwise_is_named() {
    let mut product = glyphosate();
    // No label that anybody knows of forbids it; no guidance can say the same.
    let says = Says::Adjuvant {
        class: AdjuvantClass::AmmoniumSulfate,
        stance: Stance::Forbidden,
        least: None,
        most: None,
        at_least: None,
        at_most: None,
    };
    product.label.push(Statement::new(says, "page 3"));
    let harness = one(product);
    assert!(harness.query_all_by_label("The label speaks of it in its own way, page 3.").count() >= 1);
}

#[test]
fn a_product_without_guidance_says_to_read_the_label() {
    let harness = one(Product::new("Boom dye (demo)", ProductKind::Other, Formulation::SL));
    harness.get_by_label("No guidance: read the label.");
}

#[test]
fn the_front_panel_holds_what_decides_a_mix() {
    let mut harness = one(glyphosate());
    choose(&mut harness, "surfactant built in: not typed", "yes, cationic");
    assert_eq!(it(&harness).surfactant, Some(Surfactant { charge: Charge::Cationic, complete: false }));
    press(&mut harness, "the label says that no other surfactant is needed");
    assert_eq!(it(&harness).surfactant, Some(Surfactant { charge: Charge::Cationic, complete: true }));
    harness.get_by_label("It serves this product; a partner may want another.");
    choose(&mut harness, "surfactant built in: yes, cationic", "not typed");
    assert_eq!(it(&harness).surfactant, None);
    assert!(harness.query_by_label_contains("grade:").is_none());
    assert!(harness.query_by_label_contains("adjuvant class:").is_none());
    // The basis that labels usually use is named where another is chosen.
    assert!(harness.query_by_label("the content says ae").is_none());
    choose(&mut harness, "basis of glyphosate: ae", "ai");
    harness.get_by_label("the content says ae");

    let mut harness = one(Product::new("Salt (demo)", ProductKind::Conditioner, Formulation::SG));
    choose(&mut harness, "adjuvant class: not stated", "ammonium sulfate");
    choose(&mut harness, "grade: not stated", "fertilizer grade");
    assert_eq!(
        (it(&harness).class, it(&harness).grade),
        (Some(AdjuvantClass::AmmoniumSulfate), Some(Grade::Fertilizer))
    );
    assert!(harness.query_by_label_contains("surfactant built in").is_none());

    let mut harness = one(Product::new("Wetter (demo)", ProductKind::Adjuvant, Formulation::SL));
    choose(&mut harness, "charge: not stated", "non-ionic");
    assert_eq!(it(&harness).surfactant, Some(Surfactant { charge: Charge::NonIonic, complete: false }));
}

/// The boxes of the page in the order in which Tab comes to them.
fn tabbed(harness: &mut Shed, first: &str, count: usize) -> Vec<String> {
    harness.get_by_label(first).focus();
    harness.run();
    let mut names = Vec::new();
    for _ in 0..count {
        key(harness, egui::Key::Tab);
        let focused = harness.get_by(|node| node.is_focused() && node.role() != Role::Window);
        names.push(focused.accesskit_node().label().unwrap_or_default());
    }
    names
}

#[test]
fn tab_goes_down_the_front_panel_before_it_goes_to_what_others_print() {
    let mut harness = one(glyphosate());
    let names = tabbed(&mut harness, "name of the product", 20);
    let place = |name: &str| {
        names.iter().position(|tabbed| tabbed.starts_with(name)).unwrap_or_else(|| panic!("{name}: {names:?}"))
    };
    let order = [
        "typed from",
        "kind",
        "formulation",
        "active 1",
        "content of glyphosate",
        "basis of glyphosate",
        "group of glyphosate",
        "registration",
        "signal word",
        "restricted use",
        "Paste directions",
        "+ Another statement from the label",
        "surfactant built in",
        "density",
        "+ Add a container",
    ];
    let places: Vec<usize> = order.iter().map(|name| place(name)).collect();
    assert!(places.is_sorted(), "{names:?}");
    assert!(!names.iter().any(|name| name.starts_with("It stands on the label too")), "{names:?}");
}

#[test]
fn the_pages_stand_in_a_small_window_too() {
    for size in [[1366.0, 768.0], [910.0, 512.0]] {
        let mut harness = shed(demo::farm().unwrap(), size);
        press(&mut harness, "+ From an active…");
        type_text(&mut harness, "glyphosate 540 SL ai");
        harness.get_by_label("Add it");
        harness.get_by_label("What others print");
    }
}
