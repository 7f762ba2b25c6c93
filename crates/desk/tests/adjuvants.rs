//! Which adjuvant suits every partner, as a person chooses it beside the plan.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use egui::Rect;
use egui::accesskit::Role;
use egui_kittest::kittest::{NodeT, Queryable};
use egui_kittest::{Harness, Node};
use jiff::civil::{DateTime, datetime};
use tankard::app::Desk;
use tankard::command::View;
use tankard::demo;
use tankard::document::Document;
use tankard::views::tank_loads::Page;
use tankard_core::farm::label::{Says, Stance, Statement};
use tankard_core::farm::{AdjuvantClass, CarrierKind, Farm, Lean, Line, Pass};
use tankard_core::quantity::{AsTyped, Quantity};

const PASS: &str = "2031-06-12-corn-second-post";
const BEANS: &str = "2031-06-24-glufosinate-beans";

type Window = Harness<'static, Desk>;

fn evening(_zone: &str) -> DateTime {
    datetime(2031, 6, 11, 20, 14, 0, 0)
}

fn window(farm: Farm, pass: &str, size: [f32; 2]) -> Window {
    let mut desk = Desk::new(Document::copy(farm), evening);
    desk.view = View::TankLoads;
    desk.tank_loads.choose(pass);
    let mut harness = common::window(desk, size);
    harness.run();
    harness
}

fn demo_window() -> Window {
    window(demo::farm().unwrap(), PASS, [1366.0, 768.0])
}

fn pass(harness: &Window) -> &Pass {
    &harness.state().document.farm().passes[PASS]
}

/// The products of the mix with their rates, as typed.
fn mix(harness: &Window) -> Vec<(&str, &str)> {
    pass(harness).mix.iter().map(|line| (line.product.as_str(), line.rate.text())).collect()
}

fn press(harness: &mut Window, name: &str) {
    harness.get_by_label(name).click();
    harness.run();
}

/// Chooses a row of the list that is open by its letters, wherever it is scrolled to.
fn pick(harness: &mut Window, row: &str) {
    harness.event(egui::Event::Text(row.to_owned()));
    harness.run();
    harness.key_press(egui::Key::Enter);
    harness.run();
}

fn type_over(harness: &mut Window, name: &str, text: &str) {
    harness.get_by_role_and_label(Role::TextInput, name).focus();
    harness.run();
    harness.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::A);
    harness.run();
    harness.event(egui::Event::Text(text.to_owned()));
    harness.run();
}

fn q<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap()
}

fn label_of(node: &Node<'_>) -> String {
    let node = node.accesskit_node();
    node.label().or_else(|| node.value()).unwrap_or_default()
}

/// Where every part with a name stands, of some roles.
fn parts(harness: &Window, roles: &[Role]) -> Vec<(String, Rect)> {
    let nodes = harness.get_all_by(|node| roles.contains(&node.role()));
    nodes.map(|node| (label_of(&node), node.rect())).collect()
}

/// The texts and boxes of the plan's own column: right of the list, left of what there is to settle. A tile holds its texts,
/// so it is left out.
fn column(harness: &Window) -> Vec<(String, Rect)> {
    let left = harness.get_by_label("Name of the pass").rect().left();
    let settle = harness.query_by_label("To settle").or_else(|| harness.query_by_label("Worth knowing"));
    let right = settle.unwrap().rect().left() - 2.0;
    let roles = [Role::Label, Role::Button, Role::TextInput, Role::ComboBox, Role::CheckBox, Role::Image];
    let mut parts = parts(harness, &roles);
    parts.retain(|(_, rect)| rect.left() >= left && rect.left() < right && rect.top() > 56.0);
    parts
}

fn assert_nothing_overlaps(parts: &[(String, Rect)]) {
    for (at, (name, rect)) in parts.iter().enumerate() {
        for (other, that) in &parts[at + 1..] {
            let shared = rect.intersect(*that);
            assert!(
                shared.width() < 1.0 || shared.height() < 1.0,
                "\"{name}\" {rect:?} and \"{other}\" {that:?} lie on each other"
            );
        }
    }
}

/// The rows of the sets: all that stands between their heading and the loads.
fn sets(harness: &Window) -> Vec<(String, Rect)> {
    let top = harness.get_by_label("Which adjuvant suits every partner?").rect().bottom();
    let bottom = harness.get_by_label("Loads").rect().top();
    let mut parts = column(harness);
    parts
        .retain(|(_, rect)| rect.center().y > top && rect.center().y < bottom && rect.left() < right_of_sheet(harness));
    parts
}

/// The sheets end where the box for the fill ends.
fn right_of_sheet(harness: &Window) -> f32 {
    harness.get_by_label("Fill the tank to").rect().right()
}

/// What hovers over a text after the pointer has stood still on it; a second copy of the text is the one that hovers.
fn hovers(harness: &mut Window, over: egui::Pos2, text: &str) -> bool {
    harness.remove_cursor();
    harness.run_steps(4);
    let before = harness.query_all_by_label_contains(text).count();
    harness.hover_at(over);
    harness.run_steps(60);
    let after = harness.query_all_by_label_contains(text).count();
    harness.remove_cursor();
    harness.run_steps(4);
    after > before
}

#[test]
fn the_sets_stand_in_order_with_their_reasons() {
    let harness = demo_window();
    // What the demo labels say: mesotrione prefers crop oil concentrate and ammonium sulfate, glyphosate prefers ammonium
    // sulfate and discourages urea ammonium nitrate.
    harness.get_by_label_contains("Mesotrione wants crop oil concentrate and ammonium sulfate. Glyphosate wants");
    harness.get_by_label("Glyphosate advises against urea ammonium nitrate");
    harness.get_by_label("in the mix");
    let row = |title: &str| sets(&harness).into_iter().find(|(name, _)| name == title).unwrap().1.top();
    let order = [row("Crop oil concentrate"), row("Methylated seed oil"), row("Non-ionic surfactant")];
    assert!(order.is_sorted(), "{order:?}");
    // 1 % v/v at 15 gal/ac is 0.15 gal/ac: at the demo's 16.00 / gal that is 2.40; arithmetic.
    let price = harness.state().document.farm().products["crop-oil-concentrate"].price.as_ref().unwrap().text();
    assert_eq!(price, "16.00 / gal");
    harness.get_by_label("1 % v/v, AMS 8.5 lb/100 gal · $3.06/ac");
    // What stands in the mix already is neither taken nor compared.
    assert!(
        harness
            .query_by_label("Take Crop oil concentrate 83 % (demo) and Ammonium sulfate, spray grade (demo)")
            .is_none()
    );
}

const BEFORE: [(&str, &str); 4] = [
    ("glyphosate-540", "22 fl oz/ac"),
    ("mesotrione-480", "3 fl oz/ac"),
    ("crop-oil-concentrate", "1 % v/v"),
    ("ammonium-sulfate", "8.5 lb/100 gal"),
];
const SEED_OIL: &str = "Take Methylated seed oil (demo) and Ammonium sulfate, spray grade (demo)";

#[test]
fn a_set_is_taken_with_a_click_and_one_undo_brings_the_mix_back() {
    let mut harness = demo_window();
    assert_eq!(mix(&harness), BEFORE);
    press(&mut harness, SEED_OIL);
    // The demo label of mesotrione allows methylated seed oil at 1 % v/v.
    let taken = [BEFORE[0], BEFORE[1], ("methylated-seed-oil", "1 % v/v"), BEFORE[3]];
    assert_eq!(mix(&harness), taken);
    harness.get_by_label_contains("Methylated seed oil (demo) in load 1:");
    assert!(harness.query_by_label(SEED_OIL).is_none());
    harness.get_by_label("Take Crop oil concentrate 83 % (demo) and Ammonium sulfate, spray grade (demo)");
    press(&mut harness, "Undo");
    assert_eq!(mix(&harness), BEFORE);
    assert!(!harness.state().document.is_unsaved());
}

#[test]
fn a_set_is_taken_with_the_keyboard() {
    let mut harness = demo_window();
    for _ in 0..200 {
        harness.key_press(egui::Key::Tab);
        harness.run();
        if harness.get_by_label(SEED_OIL).is_focused() {
            break;
        }
    }
    assert!(harness.get_by_label(SEED_OIL).is_focused(), "not reached with Tab");
    harness.key_press(egui::Key::Enter);
    harness.run();
    assert_eq!(mix(&harness)[2], ("methylated-seed-oil", "1 % v/v"));
    harness.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::Z);
    harness.run();
    assert_eq!(mix(&harness), BEFORE);
}

#[test]
fn two_sets_are_compared_and_back_returns() {
    let mut harness = demo_window();
    let compare = "Compare Crop oil concentrate 83 % (demo) and Urea ammonium nitrate 28 % (demo)";
    press(&mut harness, compare);
    harness.get_by_label("In the mix now");
    harness.get_by_label("5. Crop oil concentrate and urea ammonium nitrate");
    // 1 % of 1200 gal is 12 gal, 2.5 % is 30 gal; 15 gal/ac is 1920 fl oz/ac, 1 % of it 19.2 and 2.5 % 48; arithmetic on exact definitions.
    harness.get_by_label_contains("Crop oil concentrate 83 % (demo) 19.2 fl oz/ac, 12 gal in load 1\nAmmonium sulfate");
    harness.get_by_label_contains("Urea ammonium nitrate 28 % (demo) 48 fl oz/ac, 30 gal in load 1");
    harness.get_by_label("$3.06/ac");
    harness.get_by_label("$3.19/ac");
    harness.get_by_label("only here");
    assert!(harness.query_all_by_label_contains("Glyphosate 540 SL (demo) advises against").count() >= 1);
    assert_nothing_overlaps(&column(&harness));
    press(&mut harness, "Back to all sets");
    harness.get_by_label(compare);
    assert_eq!(mix(&harness), BEFORE);
    // From there it is taken too.
    press(&mut harness, compare);
    press(&mut harness, "Take this set into the mix");
    assert_eq!(mix(&harness)[2..], [("crop-oil-concentrate", "1 % v/v"), ("uan-28", "2.5 % v/v")]);
    harness.get_by_label(SEED_OIL);
}

#[test]
fn the_lean_is_kept_in_the_farm() {
    let mut harness = demo_window();
    for lean in [Lean::WeedControl, Lean::CropSafety, Lean::Even] {
        press(&mut harness, &format!("Lean to {}", lean.name()));
        assert_eq!(pass(&harness).lean, lean);
    }
}

#[test]
fn weeds_day_and_carrier_are_typed() {
    let mut harness = demo_window();
    press(&mut harness, "Weeds and day");
    type_over(&mut harness, "Weeds", "volunteer corn, waterhemp");
    for tick in ["large for the products", "thick", "drought", "extreme heat", "cold"] {
        press(&mut harness, tick);
    }
    type_over(&mut harness, "Air at its warmest", "95 °F");
    press(&mut harness, "Carrier: water");
    press(&mut harness, "urea ammonium nitrate");
    assert_nothing_overlaps(&column(&harness));
    let pass = pass(&harness);
    assert_eq!(pass.weeds, ["volunteer corn", "waterhemp"]);
    let growing = &pass.growing;
    assert!(growing.large_weeds && growing.heavy_pressure && growing.drought && growing.heat && growing.cold);
    assert_eq!(growing.air.as_ref().unwrap().text(), "95 °F");
    assert_eq!(pass.carrier_kind, CarrierKind::UreaAmmoniumNitrate);
    let summary = "volunteer corn, waterhemp, large weeds, thick weeds, drought, heat, cold, in urea ammonium nitrate";
    press(&mut harness, summary);
    assert!(harness.query_by_label("Air at its warmest").is_none());
}

fn requires(class: AdjuvantClass) -> Statement {
    let says = Says::Adjuvant {
        class,
        stance: Stance::Required,
        least: Some(q("1 % v/v")),
        most: None,
        at_least: None,
        at_most: None,
    };
    Statement::new(says, "page 3")
}

#[test]
fn demands_that_collide_are_shown_with_their_ways_out() {
    let mut farm = demo::farm().unwrap();
    // The demo label of glufosinate forbids both oils; its partner requires one.
    let mut partner = farm.products["imazethapyr-240"].clone();
    partner.name = "Oil lover (demo)".to_owned();
    partner.label.retain(|statement| !matches!(statement.says, Says::Adjuvant { .. }));
    partner.label.push(requires(AdjuvantClass::CropOilConcentrate));
    farm.products.insert("oil-lover".to_owned(), partner);
    farm.passes[BEANS].mix.insert(1, Line::new("oil-lover", q("4 fl oz/ac")));
    let harness = window(farm, BEANS, [1366.0, 768.0]);
    harness.get_by_label(
        "No set suits all: Oil lover (demo) requires crop oil concentrate; Glufosinate 280 SL (demo) forbids crop oil \
         concentrate.",
    );
    harness.get_by_label(
        "Spray Oil lover (demo) and Glufosinate 280 SL (demo) in two passes, as far apart as their labels ask.",
    );
    assert!(harness.query_all_by_label_contains("Stop: ").count() >= 1);
    assert_nothing_overlaps(&column(&harness));
}

#[test]
fn what_has_to_be_bought_is_shown_and_is_put_into_the_shed_to_be_taken() {
    let mut farm = demo::farm().unwrap();
    // Mesotrione's demo label prefers crop oil concentrate; neither it nor the other oil is in the shed.
    for gone in ["crop-oil-concentrate", "methylated-seed-oil"] {
        farm.products.shift_remove(gone).unwrap();
    }
    farm.passes[PASS].mix.retain(|line| line.product != "crop-oil-concentrate");
    let mut harness = window(farm, PASS, [1366.0, 768.0]);
    let bought = harness.query_all_by_label_contains(", to buy").count();
    assert!(bought >= 1);
    let named = |words: &str| -> Vec<String> {
        parts(&harness, &[Role::Button])
            .into_iter()
            .map(|(name, _)| name)
            .filter(|name| name.starts_with(words))
            .collect()
    };
    let oils = |names: Vec<String>| names.into_iter().filter(|name| name.contains("crop oil concentrate")).count();
    assert_eq!(oils(named("Take ")), 0);
    let compare: Vec<String> =
        named("Compare ").into_iter().filter(|name| name.contains("crop oil concentrate")).collect();
    // Beside the other it is shown as it is offered, not as if it were left out.
    press(&mut harness, &compare[0]);
    harness.get_by_label_contains("crop oil concentrate 19.2 fl oz/ac, to buy");
    assert_eq!(harness.query_all_by_label("known once crop oil concentrate is in the shed").count(), 2);
    assert!(harness.query_by_label("Take this set into the mix").is_none());
    press(&mut harness, "Back to all sets");
    let add: Vec<String> = parts(&harness, &[Role::Button])
        .into_iter()
        .map(|(name, _)| name)
        .filter(|name| name.starts_with("Add to the shed and take crop oil concentrate"))
        .collect();
    press(&mut harness, &add[0]);
    let farm = &harness.state().document.farm();
    let (id, new) = farm.products.last().unwrap();
    assert_eq!((new.class, new.name.as_str()), (Some(AdjuvantClass::CropOilConcentrate), "Crop oil concentrate"));
    let line = pass(&harness).mix.iter().find(|line| line.product == *id).unwrap();
    // As the demo label has it.
    assert_eq!(line.rate.text(), "1 % v/v");
}

#[test]
fn a_set_chosen_by_hand_is_judged_too() {
    let mut farm = demo::farm().unwrap();
    // Two oils at once are on no list.
    farm.passes[PASS].mix.push(Line::new("methylated-seed-oil", q("1 % v/v")));
    let harness = window(farm, PASS, [1366.0, 768.0]);
    harness.get_by_label("in the mix, chosen by hand");
    assert!(harness.query_by_label("in the mix").is_none());
    assert_nothing_overlaps(&column(&harness));
    // The sets on offer can be taken instead.
    harness.get_by_label(SEED_OIL);
}

#[test]
fn jar_and_water_conditioner_stand_beside_the_plan_and_open_their_working() {
    let mut harness = demo_window();
    // 8.5 lb/100 gal of 1200 gal is 102 lb; arithmetic.
    harness.get_by_label("plan 8.5 lb/100 gal, 102 lb in load 1");
    // In metric units 46.266 kg are measured to the mark of the scale, and that stands in both places.
    let mut metric = demo::farm().unwrap();
    metric.units = tankard_core::quantity::Units::Metric;
    let beside = window(metric, PASS, [1366.0, 768.0]);
    beside.get_by_label("plan 10.19 g/L, 46.26 kg in load 1");
    beside.get_by_label_contains("Ammonium sulfate, spray grade (demo) in load 1: 46.26 kg");
    // 22 fl oz/ac at 15 gal/ac in a pint of 473.176473 mL is 5.42 mL; arithmetic on exact definitions.
    press(&mut harness, "Glyphosate 540 SL (demo) in the jar: 5.4 mL, show working");
    harness.get_by_label("Working: Glyphosate 540 SL (demo) in the jar");
    harness.get_by_label("5.42 mL");
    press(&mut harness, "Working shown: Glyphosate 540 SL (demo) in the jar");
    pick(&mut harness, "Water and jar test");
    // What the water ties up has its working too.
    let need = "Need of Yard well: the ions tie up 1.86 lb/100 gal, show working";
    press(&mut harness, need);
    harness.get_by_label("Working: Ammonium sulfate tied up by Yard well");
    press(&mut harness, "Working shown: Ammonium sulfate tied up by Yard well");
    pick(&mut harness, "Water and jar test");
    press(&mut harness, "Jar test, to print");
    assert_eq!(harness.state().tank_loads.page, Page::Jar);
}

#[test]
fn the_demo_pass_is_seen_whole_on_a_small_laptop() {
    let harness = demo_window();
    let whole = Rect::from_min_max(egui::pos2(0.0, 0.0), egui::pos2(1366.0, 760.0));
    let names = ["Tank mix", "Which adjuvant suits every partner?", "Loads"];
    for name in names {
        assert!(whole.contains_rect(harness.get_by_label(name).rect()), "{name}");
    }
    // What opens more than the usual may lie below, where one scrolls to.
    for (name, rect) in column(&harness).into_iter().filter(|(name, _)| !name.starts_with("Other sizes of loads")) {
        assert!(whole.contains_rect(rect), "{name} {rect:?}");
    }
    let loads: Vec<Rect> = parts(&harness, &[Role::ListBoxOption])
        .into_iter()
        .filter(|(name, _)| name.starts_with("Load "))
        .map(|(_, rect)| rect)
        .collect();
    assert!(loads.len() == 3 && loads.iter().all(|rect| whole.contains_rect(*rect)), "{loads:?}");
    // Four amounts for the jar, and the gauge.
    let jar: Vec<Rect> = harness.get_all_by_label_contains(" in the jar: ").map(|node| node.rect()).collect();
    assert_eq!(jar.len(), 4);
    assert!(jar.iter().all(|rect| whole.contains_rect(*rect)), "{jar:?}");
    assert!(whole.contains_rect(harness.get_by_label_contains("Sight gauge of a tank").rect()));
    assert_nothing_overlaps(&column(&harness));
}

#[test]
fn nothing_overlaps_where_room_is_short() {
    for (size, scale) in [([1366.0, 768.0], 1.0), ([1024.0, 700.0], 1.0), ([1366.0, 768.0], 1.5)] {
        let mut harness = window(demo::farm().unwrap(), PASS, size);
        harness.ctx.set_zoom_factor(scale);
        harness.run();
        let (left, right) = (harness.get_by_label("Tank mix").rect().left(), right_of_sheet(&harness));
        let rows = sets(&harness);
        assert!(rows.len() >= 15, "{}", rows.len());
        for (name, rect) in &rows {
            assert!(
                rect.left() >= left - 0.5 && rect.right() <= right + 0.5,
                "{name} {rect:?} {left} {right} {size:?}"
            );
        }
        assert_nothing_overlaps(&column(&harness));
    }
}

#[test]
fn every_input_has_a_name_of_its_own() {
    let mut harness = demo_window();
    for editor in ["Weeds and day", "Big boom", "Yard well", "Mill field, Long bottom, Hill sixty"] {
        press(&mut harness, editor);
        let roles = [Role::Button, Role::TextInput, Role::ComboBox, Role::CheckBox, Role::RadioButton];
        let mut names: Vec<String> = parts(&harness, &roles).into_iter().map(|(name, _)| name).collect();
        assert!(names.len() > 40 && names.iter().all(|name| !name.trim().is_empty()), "{names:?}");
        let inputs = [Role::TextInput, Role::ComboBox, Role::CheckBox];
        names = parts(&harness, &inputs).into_iter().map(|(name, _)| name).collect();
        names.sort();
        let all = names.len();
        names.dedup();
        assert_eq!(names.len(), all, "{names:?}");
    }
}

const LONG: &str = "A product with a name that nobody could ever fit into a narrow column, number";

/// Eight products with long names, and a shed from which many sets can be made.
fn crowded() -> Farm {
    let mut farm = demo::farm().unwrap();
    for number in 1..=4 {
        let mut product = farm.products["mesotrione-480"].clone();
        product.name = format!("{LONG} {number} (demo)");
        product.price = Some(q("9250.00 / gal"));
        let id = format!("long-{number}");
        farm.products.insert(id.clone(), product);
        farm.passes[PASS].mix.insert(2, Line::new(&id, q("3 fl oz/ac")));
    }
    for (id, class) in [("oil-plus", AdjuvantClass::HighSurfactantOil), ("silicone", AdjuvantClass::Organosilicone)] {
        let mut product = farm.products["crop-oil-concentrate"].clone();
        product.name = format!("{LONG} {id} (demo)");
        product.class = Some(class);
        farm.products.insert(id.to_owned(), product);
        let says = Says::Adjuvant {
            class,
            stance: Stance::Allowed,
            least: Some(q("0.5 % v/v")),
            most: None,
            at_least: None,
            at_most: None,
        };
        farm.products["mesotrione-480"].label.push(Statement::new(says, "page 3"));
    }
    "The field with the long name behind the old mill at the end of the gravel road"
        .clone_into(&mut farm.fields["mill-field"].name);
    farm
}

#[test]
fn many_rows_scroll_and_long_names_tell_themselves() {
    let mut harness = window(crowded(), PASS, [1366.0, 768.0]);
    assert_eq!(harness.query_all_by_label_contains("Rate of ").count(), 8);
    let compare = harness.query_all_by_label_contains("Compare ").count();
    assert!(compare >= 5, "{compare} sets to compare");
    for (size, scale) in [([1366.0, 768.0], 1.0), ([1024.0, 700.0], 1.0), ([1366.0, 768.0], 1.5)] {
        let mut other = window(crowded(), PASS, size);
        other.ctx.set_zoom_factor(scale);
        other.run();
        assert_nothing_overlaps(&column(&other));
    }
    // The last load comes into sight.
    let last = "Load 3: 987 gal";
    assert!(harness.get_by_label_contains(last).rect().bottom() > 758.0);
    harness.get_by_label_contains(last).scroll_to_me();
    harness.run_steps(30);
    let rect = harness.get_by_label_contains(last).rect();
    assert!(rect.bottom() <= 768.0, "{rect:?}");
    harness.get_by_label("Which adjuvant suits every partner?").scroll_to_me();
    harness.run_steps(30);
    // In the mix and in the list of the jar a name that is cut tells itself under the pointer.
    let mut harness = window(crowded(), PASS, [1366.0, 768.0]);
    let name = format!("{LONG} 1 (demo)");
    let places: Vec<Rect> = parts(&harness, &[Role::Label])
        .into_iter()
        .filter(|(text, rect)| *text == name && rect.bottom() < 745.0)
        .map(|(_, rect)| rect)
        .collect();
    assert!(places.len() >= 2, "{places:?}");
    for place in places {
        assert!(hovers(&mut harness, place.center(), &name), "{place:?}");
    }
    // And so does a published order that its box cuts.
    let order = "Oklahoma State University, A-W-A-M-L-E-S";
    let mut harness = window(demo::farm().unwrap(), PASS, [1024.0, 700.0]);
    let at = harness.get_by_label_contains("Published mixing order: ").rect().center();
    assert!(hovers(&mut harness, at, order));
}
