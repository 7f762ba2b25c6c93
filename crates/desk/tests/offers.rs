//! What was probably meant, at the box and beside the finding, through the names that a screen reader says.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use common::shed::{farm, press, put, shed};
use common::{evening, tank_loads, type_over, window};
use egui_kittest::kittest::{NodeT, Queryable};
use tankard::app::Desk;
use tankard::command::{Command, View};
use tankard::demo;
use tankard::document::Document;

const PASS: &str = "2031-06-12-corn-second-post";
const RATE: &str = "Rate of Glyphosate 540 SL (demo)";

fn rate(harness: &egui_kittest::Harness<'_, Desk>) -> String {
    harness.state().document.farm().passes[PASS].mix[0].rate.text().to_owned()
}

#[test]
fn a_rate_is_taken_with_one_key_and_undone() {
    let mut harness = tank_loads(demo::farm().unwrap(), [1366.0, 768.0]);
    assert!(harness.query_by_label_contains("Take 22").is_none());
    type_over(&mut harness, RATE, "22 pt/ac");
    assert_eq!(rate(&harness), "22 pt/ac");
    harness.get_by_label("F2 takes 22 fl oz/ac");
    harness.key_press(egui::Key::F2);
    harness.run();
    assert_eq!(rate(&harness), "22 fl oz/ac");
    assert!(harness.query_by_label_contains("F2 takes").is_none());
    harness.state_mut().document.undo();
    harness.run();
    assert_eq!(rate(&harness), "22 pt/ac", "what was typed is a step of its own");
    harness.state_mut().document.redo();
    harness.run();
    assert_eq!(rate(&harness), "22 fl oz/ac");
}

#[test]
fn a_rate_is_taken_beside_the_finding() {
    let mut harness = tank_loads(demo::farm().unwrap(), [1366.0, 768.0]);
    type_over(&mut harness, RATE, "220 fl oz/ac");
    // Away from the box, so that the one beside the finding is left.
    harness.key_press(egui::Key::Tab);
    harness.run();
    harness.run();
    let all = harness.get_all_by_label("Take 22 fl oz/ac").count();
    assert!(all >= 1);
    harness.get_all_by_label("Take 22 fl oz/ac").last().unwrap().scroll_to_me();
    harness.run();
    harness.get_all_by_label("Take 22 fl oz/ac").last().unwrap().click();
    harness.run();
    assert_eq!(rate(&harness), "22 fl oz/ac");
}

#[test]
fn a_product_and_a_water_in_the_shed() {
    let mut harness = shed(demo::farm().unwrap(), [1366.0, 768.0]);
    put(&mut harness, "content of glyphosate", "540 lb/gal");
    harness.get_by_label("Perhaps typed wrongly");
    harness.key_press(egui::Key::F2);
    harness.run();
    assert_eq!(farm(&harness).products["glyphosate-540"].actives[0].content.text(), "540 g/L");
    assert!(harness.query_by_label("Perhaps typed wrongly").is_none());
    press(&mut harness, "Waters");
    put(&mut harness, "hardness", "27.3 ppm");
    harness.key_press(egui::Key::F2);
    harness.run();
    assert_eq!(farm(&harness).waters["yard-well"].hardness.as_ref().unwrap().text(), "27.3 gpg");
}

#[test]
fn the_area_of_a_field() {
    let mut desk = Desk::new(Document::copy(demo::farm().unwrap()), evening);
    desk.view = View::Fields;
    let mut harness = window(desk, [1366.0, 768.0]);
    harness.run();
    type_over(&mut harness, "Stated area of Mill field", "74.6 ha");
    harness.run();
    harness.key_press(egui::Key::F2);
    harness.run();
    assert_eq!(harness.state().document.farm().fields["mill-field"].area.text(), "74.6 ac");
    let ctx = harness.ctx.clone();
    harness.state_mut().run(Command::Undo, &ctx);
    harness.run();
    assert_eq!(harness.state().document.farm().fields["mill-field"].area.text(), "74.6 ha");
}

/// What has the keyboard.
fn focused(harness: &egui_kittest::Harness<'_, Desk>) -> String {
    // A method's name is not general enough over the lifetime of a node.
    #[allow(clippy::redundant_closure_for_method_calls)]
    let focused = egui_kittest::kittest::By::new().predicate(|node| node.is_focused());
    let node = harness.query_all(focused).last();
    node.and_then(|node| node.accesskit_node().label()).unwrap_or_default()
}

/// The pass after something in the farm was changed, a finding of it clicked: what has the keyboard then.
fn led_by(change: impl FnOnce(&mut tankard_core::farm::Farm), finding: &str) -> (View, String) {
    let mut farm = demo::farm().unwrap();
    change(&mut farm);
    let mut desk = Desk::new(Document::copy(farm), evening);
    desk.view = View::TankLoads;
    desk.tank_loads.choose(PASS);
    let mut harness = window(desk, [1366.0, 768.0]);
    harness.run();
    harness.get_by_label_contains(finding).scroll_to_me();
    harness.run();
    harness.get_by_label_contains(finding).click();
    harness.run();
    harness.run_steps(3);
    (harness.state().view, focused(&harness))
}

#[test]
fn a_finding_leads_to_the_box_of_its_cause() {
    use tankard_core::farm::Says;
    let glyphosate = "glyphosate-540";
    let led = led_by(
        |farm| {
            let product = &mut farm.products[glyphosate];
            product.surfactant = None;
            product.label.retain(|statement| !matches!(statement.says, Says::Adjuvant { .. }));
        },
        "holds a surfactant of its own",
    );
    assert_eq!(led, (View::Shed, "surfactant built in: not typed".to_owned()));
    let led = led_by(
        |farm| farm.products[glyphosate].label.retain(|statement| !matches!(statement.says, Says::ReEntry { .. })),
        "From the label of Glyphosate 540 SL (demo), a re-entry time is not typed",
    );
    assert_eq!(led, (View::Shed, "keep out hours".to_owned()));
    let led = led_by(|farm| farm.passes[PASS].carrier = None, "Stop: The spray volume over ground is not typed");
    assert_eq!(led, (View::TankLoads, "Spray volume over ground".to_owned()));
    let led = led_by(|farm| farm.passes[PASS].mix.clear(), "The tank mix is empty");
    assert_eq!(led.0, View::TankLoads);
    assert!(led.1.to_lowercase().contains("add a product to the mix"), "{}", led.1);
    // What was probably typed wrongly, where it was typed.
    let led = led_by(
        |farm| farm.passes[PASS].mix[0].rate = tankard_core::quantity::AsTyped::parse("220 fl oz/ac").unwrap(),
        "Check: 220 fl oz/ac of Glyphosate 540 SL (demo) is",
    );
    assert_eq!(led, (View::TankLoads, RATE.to_owned()));
    // The label's most, on the label's row.
    let led = led_by(
        |farm| farm.passes[PASS].mix[0].rate = tankard_core::quantity::AsTyped::parse("40 fl oz/ac").unwrap(),
        "Stop: Glyphosate 540 SL (demo) is planned at",
    );
    assert_eq!(led, (View::Shed, "rate 1 at least".to_owned()));
    let led = led_by(
        |farm| farm.products[glyphosate].containers.iter_mut().for_each(|one| (one.full, one.opened) = (0, None)),
        "Glyphosate 540 SL (demo): this pass needs",
    );
    assert_eq!(led.0, View::Shed);
}
