//! The season log as a person uses it: through the names that a screen reader says.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use jiff::civil::{DateTime, datetime};
use tankard::app::Desk;
use tankard::command::View;
use tankard::demo;
use tankard::document::Document;
use tankard::files::Purpose;
use tankard::views::season_log::{self, Season};
use tankard_core::farm::{Farm, Record};

const PASS: &str = "2031-06-12-corn-second-post";

fn noon(_zone: &str) -> DateTime {
    datetime(2031, 6, 12, 12, 0, 0, 0)
}

fn window(farm: Farm) -> Harness<'static, Desk> {
    let mut desk = Desk::new(Document::copy(farm), noon);
    desk.view = View::SeasonLog;
    common::window(desk, [1366.0, 768.0])
}

fn demo_window() -> Harness<'static, Desk> {
    window(demo::farm().unwrap())
}

fn chosen<'a>(harness: &'a Harness<'_, Desk>) -> &'a Record {
    let desk = harness.state();
    &desk.document.farm().records[desk.season_log.chosen.as_ref().unwrap()]
}

/// Types over what is in a box, letter by letter, as a person does.
fn type_over(harness: &mut Harness<'_, Desk>, name: &str, text: &str) {
    harness.get_by_role_and_label(egui::accesskit::Role::TextInput, name).focus();
    harness.run();
    harness.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::A);
    harness.run();
    for letter in text.chars() {
        harness.event(egui::Event::Text(letter.to_string()));
        harness.run();
    }
}

/// Picks from an open choice; the same words may stand in the list, too.
fn pick(harness: &mut Harness<'_, Desk>, name: &str) {
    harness.get_by_role_and_label(egui::accesskit::Role::Button, name).click();
    harness.run();
}

#[test]
fn a_recorded_pass_is_open_with_its_plan_beside_it() {
    let mut harness = demo_window();
    harness.run();
    season_log::record_pass(harness.state_mut(), PASS);
    harness.run();
    let record = chosen(&harness);
    assert_eq!((record.name.as_str(), record.date.to_string().as_str()), ("Corn, second post", "2031-06-12"));
    // As in the record before it.
    assert_eq!(record.operator, "A. Demo");
    assert_eq!(record.pass.as_deref(), Some(PASS));
    assert!(record.start.is_none() && record.wind.is_none());
    harness.get_by_label("2031-06-12, Corn, second post, still open: start, end, wind, temperature");
    harness.get_by_label("still open: start, end, wind, temperature");
    harness.get_by_label("225.8 ac in all · as planned");
    assert_eq!(harness.query_all_by_label("as planned").count(), record.lines.len());
    // It can be undone like anything else.
    harness.state_mut().document.undo();
    harness.run();
    assert!(harness.query_by_label("Humidity").is_none());
}

/// The label of mesotrione as typed has wind of at most 10 mph: that it was more is told, and nothing is blocked.
#[test]
fn what_was_measured_stands_beside_what_was_expected_and_is_judged() {
    let mut harness = demo_window();
    season_log::record_pass(harness.state_mut(), PASS);
    harness.run();
    harness.get_by_label("measured at the boom, and beside it what was expected");
    assert!(chosen(&harness).expected.is_some());
    assert!(harness.query_by_label("As it was sprayed").is_none());
    // The limits stand where the figure is typed.
    harness.get_by_label_contains("limit: at most 10 mph");
    type_over(&mut harness, "Wind", "12 mph");
    type_over(&mut harness, "Gust", "17 mph");
    harness.get_by_label("As it was sprayed");
    harness.get_by_label_contains("it was sprayed at 12 mph");
    assert_eq!(chosen(&harness).gust.as_ref().unwrap().text(), "17 mph");
    harness.get_by_label("Droplets: not typed").scroll_to_me();
    harness.run();
    harness.get_by_label("Droplets: not typed").click();
    harness.run();
    pick(&mut harness, "fine");
    assert_eq!(chosen(&harness).droplets, Some(tankard_core::farm::Droplets::Fine));
    // The forecast of other hours is taken where it was sprayed then.
    type_over(&mut harness, "Start", "1800");
    type_over(&mut harness, "End", "2000");
    let before = chosen(&harness).expected.clone();
    harness.get_by_label("Take the forecast for these hours").scroll_to_me();
    harness.run();
    harness.get_by_label("Take the forecast for these hours").click();
    harness.run();
    assert_ne!(chosen(&harness).expected, before);
    assert!(chosen(&harness).expected.as_ref().unwrap().source.ends_with("18:00 to 20:00"));
}

#[test]
fn what_was_recorded_reads_back_from_the_file() {
    let mut harness = demo_window();
    season_log::record_pass(harness.state_mut(), PASS);
    let farm = harness.state().document.farm().clone();
    let text = tankard_file::write(&farm).unwrap();
    assert_eq!(tankard_file::read(text.as_bytes()).unwrap(), farm);
}

#[test]
fn the_operator_of_the_pass_goes_into_the_record() {
    let mut farm = demo::farm().unwrap();
    farm.passes.get_mut(PASS).unwrap().operator = "B. Demo".to_owned();
    let mut harness = window(farm.clone());
    season_log::record_pass(harness.state_mut(), PASS);
    let record = chosen(&harness);
    assert_eq!(record.operator, "B. Demo");
    // That of the last record is another person's.
    assert_eq!(record.certificate, "");
    let own = farm.records.values_mut().min_by_key(|record| record.date).unwrap();
    (own.operator, own.certificate) = ("B. Demo".to_owned(), "demo B".to_owned());
    let mut harness = window(farm);
    season_log::record_pass(harness.state_mut(), PASS);
    assert_eq!(chosen(&harness).certificate, "demo B");
}

#[test]
fn a_second_record_of_a_pass_says_so_and_an_empty_pass_is_not_recorded() {
    let mut harness = demo_window();
    season_log::record_pass(harness.state_mut(), PASS);
    season_log::record_pass(harness.state_mut(), PASS);
    harness.run();
    harness.get_by_label_contains("recorded a second time");
    let records = harness.state().document.farm().records.len();
    harness.state_mut().document.edit(|farm| farm.passes[PASS].mix.clear());
    season_log::record_pass(harness.state_mut(), PASS);
    season_log::record_pass(harness.state_mut(), "no such pass");
    assert_eq!(harness.state().document.farm().records.len(), records);
}

#[test]
fn the_list_finds_words_in_any_place() {
    let mut harness = demo_window();
    harness.run();
    harness.get_by_label("6 records");
    for (words, count) in [
        ("metolachlor", 2),
        ("LONG bottom", 3),
        ("demo burndown", 1),
        ("west sandhill glyphosate", 1),
        ("wheat head", 0),
    ] {
        type_over(&mut harness, "Find records", words);
        harness.get_by_label(&format!("{count} of 6 records"));
    }
    harness.get_by_label("No record holds \"wheat head\".");
    harness.get_by_label("Show all records").click();
    harness.run();
    harness.get_by_label("6 records");
    harness.state_mut().season_log.season = Season::All;
    harness.run();
    harness.get_by_label("10 records");
    harness.get_by_label("All seasons");
}

#[test]
fn only_what_is_listed_goes_into_the_csv() {
    let folder = tempfile::tempdir().unwrap();
    let mut harness = demo_window();
    harness.state_mut().season_log.filter = "sandhill, first".to_owned();
    season_log::export::save(harness.state_mut(), Purpose::SaveRecords, &folder.path().join("records"));
    harness.run();
    harness.get_by_label_contains("1 record saved as");
    let text = std::fs::read_to_string(folder.path().join("records.csv")).unwrap();
    // The head, and a line for each of two products on one field.
    assert_eq!(text.lines().count(), 3, "{text}");
    season_log::export::save(
        harness.state_mut(),
        Purpose::SaveRecords,
        &folder.path().join("no such folder").join("records.csv"),
    );
    harness.run();
    harness.get_by_label_contains("The records were not saved");
}

#[test]
fn the_arrow_keys_walk_the_list() {
    let mut harness = demo_window();
    harness.run();
    harness.get_by_label("2031-05-31, West sandhill, first post").focus();
    harness.run();
    harness.key_press(egui::Key::Enter);
    harness.run();
    assert_eq!(chosen(&harness).name, "West sandhill, first post");
    harness.key_press(egui::Key::ArrowDown);
    harness.run();
    harness.key_press(egui::Key::ArrowDown);
    harness.run();
    assert_eq!(chosen(&harness).name, "Triangle, before emergence");
    harness.key_press(egui::Key::ArrowUp);
    harness.run();
    assert_eq!(chosen(&harness).name, "Corn, first post");
}

/// The fault: each letter of an amount is an amount of its own, and scaling from one to the next would leave rounding (or
/// nothing at all, after "0") in the actives.
#[test]
fn a_typed_amount_takes_its_actives_along() {
    let mut harness = demo_window();
    harness.state_mut().season_log.chosen = Some("2031-05-31-west-sandhill-first-post".to_owned());
    harness.run();
    let name = "Amount of Glyphosate 540 SL (demo)";
    // 22.875 gal hold 103.09 lb.
    for (typed, pounds) in [("20.5 gal", 92.387), ("0 gal", 0.0), ("0.5 gal", 2.2533), ("22.875 gal", 103.09)] {
        type_over(&mut harness, name, typed);
        let line = &chosen(&harness).lines[0];
        assert_eq!(line.amount.text(), typed);
        assert_eq!(line.actives.len(), 1);
        assert!((line.actives[0].mass.to_pounds() - pounds).abs() < 0.002, "{typed}: {}", line.actives[0].mass);
    }
    assert_eq!(chosen(&harness).lines[0].actives[0].mass.text(), "103.09 lb");
}

#[test]
fn a_record_goes_only_after_a_second_click() {
    let mut harness = demo_window();
    harness.run();
    harness.get_by_label("2031-04-20, Burndown").click();
    harness.run();
    harness.get_by_label("Remove the record…").click();
    harness.run();
    assert_eq!(harness.state().document.farm().records.len(), 10);
    harness.get_by_label("Keep it").click();
    harness.run();
    assert!(harness.query_by_label("Remove it").is_none());
    harness.get_by_label("Remove the record…").click();
    harness.run();
    harness.get_by_label("Remove it").click();
    harness.run();
    assert!(!harness.state().document.farm().records.contains_key("2031-04-20-burndown"));
    assert!(harness.state().season_log.chosen.is_none());
    harness.get_by_label("5 records");
}

#[test]
fn fields_and_products_come_and_go_in_place() {
    let mut harness = demo_window();
    harness.run();
    harness.get_by_label("Record without a plan").click();
    harness.run();
    assert_eq!(chosen(&harness).date.to_string(), "2031-06-12");
    harness.get_by_label("still open: fields, products, start, end, wind, temperature");
    harness.get_by_label("Add a field: Add a field…").click();
    harness.run();
    pick(&mut harness, "Church corner");
    // The grass strip before the hives is not sprayed: 88.2 less 2.2 acres.
    assert_eq!(chosen(&harness).fields["church-corner"].area.text(), "86 ac");
    harness.get_by_label("Add a product: Add a product…").click();
    harness.run();
    pick(&mut harness, "Glyphosate 540 SL (demo)");
    type_over(&mut harness, "Amount of Glyphosate 540 SL (demo)", "10 gal");
    let line = &chosen(&harness).lines[0];
    // 540 g/L are 4.5065 lb/gal.
    assert!((line.actives[0].mass.to_pounds() - 45.065).abs() < 0.01, "{}", line.actives[0].mass);
    harness.get_by_label("Remove Glyphosate 540 SL (demo)").click();
    harness.run();
    harness.get_by_label("Remove Church corner").click();
    harness.run();
    assert!(chosen(&harness).lines.is_empty() && chosen(&harness).fields.is_empty());
}

#[test]
fn a_restricted_product_asks_for_the_certificate() {
    let mut farm = demo::farm().unwrap();
    let record = farm.records.get_mut("2031-05-13-triangle-before-emergence").unwrap();
    assert!(record.lines.iter().any(|line| farm.products[&line.product].restricted));
    record.certificate.clear();
    let mut harness = window(farm);
    harness.run();
    harness.get_by_label("2031-05-13, Triangle, before emergence, still open: certificate");
}

#[test]
fn a_record_led_to_from_elsewhere_is_brought_into_sight() {
    let mut harness = demo_window();
    harness.run();
    let id = "2030-06-05-corn-post".to_owned();
    harness.state_mut().lead_to(&tankard_core::finding::Subject::Record(id));
    harness.run();
    harness.get_by_label("Season 2030");
    harness.get_by_label("2030-06-05, Corn, post");
}

#[test]
fn an_empty_farm_says_what_to_do() {
    let mut harness = window(Farm::new("New farm"));
    harness.run();
    harness.get_by_label_contains("Nothing is recorded yet.");
    harness.get_by_label("Record without a plan").click();
    harness.run();
    assert_eq!(harness.state().document.farm().records.len(), 1);
}

/// Twenty thousand records: only the rows in sight are drawn, and a record far down is reached.
#[test]
fn many_years_stay_quick() {
    let mut farm = demo::farm().unwrap();
    let some: Vec<Record> = farm.records.values().cloned().collect();
    for at in 0..20_000 {
        farm.records.insert(format!("many-{at}"), some[at % some.len()].clone());
    }
    let mut harness = window(farm);
    harness.run();
    harness.get_by_label("12006 records");
    let drawn = |harness: &Harness<'_, Desk>| harness.query_all_by_role(egui::accesskit::Role::ListBoxOption).count();
    assert!((20..60).contains(&drawn(&harness)));
    harness.state_mut().season_log.chosen = Some("2031-04-16-wheat-broadleaf".to_owned());
    harness.run();
    assert!(harness.query_all_by_label("2031-04-16, Wheat, broadleaf weeds").count() > 1);
    assert!((20..60).contains(&drawn(&harness)));
}
