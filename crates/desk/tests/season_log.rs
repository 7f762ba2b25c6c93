//! The season log as a person uses it: through the names that a screen reader says.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use common::shed::press;
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use jiff::civil::{DateTime, datetime};
use tankard::app::Desk;
use tankard::command::View;
use tankard::demo;
use tankard::document::Document;
use tankard::files::Purpose;
use tankard::views::season_log::{self, Season};
use tankard_core::farm::{Effect, Farm, Record};

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
    if text.is_empty() {
        harness.key_press(egui::Key::Backspace);
        harness.run();
    }
    for letter in text.chars() {
        harness.event(egui::Event::Text(letter.to_string()));
        harness.run();
    }
}

/// The pass in its plan.
fn tank_loads() -> Harness<'static, Desk> {
    let mut harness = demo_window();
    harness.state_mut().view = View::TankLoads;
    harness.state_mut().tank_loads.chosen = Some(PASS.to_owned());
    harness.run();
    harness
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
    harness.get_by_label("12 June 2031, Corn, second post, still open: start, end, wind, temperature");
    harness.get_by_label("still open: start, end, wind, temperature");
    harness.get_by_label("225.8 ac in all · as planned");
    assert_eq!(harness.query_all_by_label_contains("as planned").count(), record.lines.len() + 2);
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
    harness.get_by_label_contains("As it was sprayed: ").click_accesskit();
    harness.run();
    harness.get_by_label_contains("it was sprayed at 12 mph");
    assert_eq!(chosen(&harness).gust.as_ref().unwrap().text(), "17 mph");
    harness.get_by_label_contains("Machine: ground boom · 110 degree, size 06").click_accesskit();
    harness.run();
    harness.get_by_label("Droplets: coarse").scroll_to_me();
    harness.run();
    harness.get_by_label("Droplets: coarse").click();
    harness.run();
    pick(&mut harness, "fine");
    assert_eq!(chosen(&harness).droplets, Some(tankard_core::farm::Droplets::Fine));
    // The forecast of other hours is taken where it was sprayed then.
    let place = |harness: &Harness<'_, Desk>| {
        let of = |name| harness.get_by_role_and_label(egui::accesskit::Role::TextInput, name).rect().top();
        of("Wind") - of("Start")
    };
    let apart = place(&harness);
    type_over(&mut harness, "Start", "1800");
    type_over(&mut harness, "End", "2000");
    let before = chosen(&harness).expected.clone();
    // The act that appears moves no box.
    harness.get_by_role_and_label(egui::accesskit::Role::TextInput, "End").scroll_to_me();
    harness.run();
    assert!((place(&harness) - apart).abs() < 0.5, "{} and {apart}", place(&harness));
    harness.get_by_label("Show the forecast for these hours").scroll_to_me();
    harness.run();
    harness.get_by_label("Show the forecast for these hours").click();
    harness.run();
    assert_ne!(chosen(&harness).expected, before);
    assert!(chosen(&harness).expected.as_ref().unwrap().source.ends_with("18:00 to 20:00"));
}

/// A finding that appears with the first letter takes the keyboard from no box, whatever box it is.
#[test]
fn a_finding_that_appears_while_one_types_leaves_the_focus() {
    let mut harness = demo_window();
    season_log::record_pass(harness.state_mut(), PASS);
    harness.run();
    assert!(harness.query_by_label("As it was sprayed").is_none());
    type_over(&mut harness, "Wind from", "n");
    // The label of mesotrione as typed has wind of at most 10 mph; as if the letter had brought it.
    let id = harness.state().season_log.chosen.clone().unwrap();
    harness.state_mut().document.edit(|farm| {
        farm.records[&id].wind = Some(tankard_core::quantity::AsTyped::parse("12 mph").unwrap());
    });
    harness.run();
    harness.get_by_label("As it was sprayed");
    harness.event(egui::Event::Text("w".to_owned()));
    harness.run();
    assert_eq!(chosen(&harness).wind_from, "nw");
    assert!(harness.get_by_role_and_label(egui::accesskit::Role::TextInput, "Wind from").is_focused());
    // The whole list is a click away.
    harness.get_by_label_contains("As it was sprayed: ").click_accesskit();
    harness.run();
    harness.get_by_label_contains("it was sprayed at 12 mph");
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
    (own.operator, own.certificate) = ("B. Demo".into(), "demo B".into());
    let mut harness = window(farm);
    season_log::record_pass(harness.state_mut(), PASS);
    assert_eq!(chosen(&harness).certificate, "demo B");
}

/// One step, then only what differed is typed: this is what a minute is enough for.
#[test]
fn a_pass_is_recorded_in_one_step_and_only_differences_are_typed() {
    let mut harness = tank_loads();
    harness.get_by_label("Record as sprayed").click();
    harness.run();
    let record = chosen(&harness).clone();
    assert_eq!(record.made, Some(datetime(2031, 6, 12, 12, 0, 0, 0)));
    // All that the plan knows stands there.
    assert_eq!((record.loads, record.method.as_str()), (Some(3), "ground boom"));
    assert_eq!(record.nozzles, "110 degree, size 06");
    assert_eq!(record.speed.as_ref().unwrap().text(), "12 mph");
    assert_eq!((record.operator.as_str(), record.certificate.as_str()), ("A. Demo", "demo"));
    for (name, text) in [
        ("Start", "0610"),
        ("End", "0950"),
        ("Wind", "6 mph"),
        ("Gust", "9 mph"),
        ("Wind from", "E"),
        ("Temperature", "66 °F"),
        ("Humidity", "70 %"),
    ] {
        type_over(&mut harness, name, text);
    }
    assert!(harness.query_by_label_contains("still open: ").is_none());
    let typed = chosen(&harness);
    assert_eq!((typed.lines.as_slice(), &typed.fields), (record.lines.as_slice(), &record.fields));
    // What was clicked instead of typed is the clock's time.
    harness.get_by_label("End now").click();
    harness.run();
    assert_eq!(chosen(&harness).end, Some(jiff::civil::time(12, 0, 0, 0)));
}

#[test]
fn another_area_leaves_the_amounts_until_they_are_scaled() {
    let mut harness = demo_window();
    season_log::record_pass(harness.state_mut(), PASS);
    harness.run();
    let before = chosen(&harness).lines.clone();
    // 225.8 acres less 21: 204.8.
    type_over(&mut harness, "Area of Long bottom", "75 ac");
    assert_eq!(chosen(&harness).lines, before);
    press(&mut harness, "Scale the amounts to the area");
    let ratio = chosen(&harness).lines[1].amount.value().ratio(before[1].amount.value()).unwrap();
    // To the mark of the jug.
    assert!((ratio - 204.8 / 225.8).abs() < 5e-4, "{ratio}");
    assert!(harness.query_by_label("Scale the amounts to the area").is_none());
    assert_eq!(chosen(&harness).volume.as_ref().unwrap().text(), "3072 gal");
    // A left over is taken off what was scaled, and the offer says what comes of it.
    type_over(&mut harness, "Left over", "40 gal");
    harness
        .get_by_label_contains("3,072 gal mixed in the loads, scaled to the area, less 40 gal left over is 3,032 gal");
    harness.get_by_label_contains("From that: 3,032 gal of spray and ");
    press(&mut harness, "Take the amounts from that");
    assert_eq!(chosen(&harness).volume.as_ref().unwrap().text(), "3032 gal");
    assert!(harness.query_by_label("Take the amounts from that").is_none());
    assert!(harness.query_by_label("Scale the amounts to the area").is_none());
}

#[test]
fn what_is_left_over_is_taken_off_when_asked() {
    let mut harness = demo_window();
    season_log::record_pass(harness.state_mut(), PASS);
    harness.run();
    type_over(&mut harness, "Left over", "87 gal");
    harness.get_by_label_contains("3,387 gal mixed in the loads, less 87 gal left over is 3,300 gal");
    assert_eq!(chosen(&harness).volume.as_ref().unwrap().text(), "3387 gal");
    press(&mut harness, "Take the amounts from that");
    assert_eq!(chosen(&harness).volume.as_ref().unwrap().text(), "3300 gal");
    press(&mut harness, "Where it went, usual answers");
    pick(&mut harness, "kept in the tank for the next pass");
    assert_eq!(chosen(&harness).left.as_ref().unwrap().went, "kept in the tank for the next pass");
    type_over(&mut harness, "Left over", "");
    assert_eq!(chosen(&harness).left, None);
}

#[test]
fn some_loads_first_and_the_rest_later() {
    let mut harness = tank_loads();
    harness.get_by_label("Some of it…").click();
    harness.run();
    for load in ["Load 1", "Load 2"] {
        harness.get_by_role_and_label(egui::accesskit::Role::CheckBox, load).click();
        harness.run();
    }
    harness.get_by_label("Record these loads").click();
    harness.run();
    let first = chosen(&harness).clone();
    assert_eq!((first.loads, first.note.as_str()), (Some(2), "Loads 1 to 2 of 3"));
    // Two loads of 1200 gal at 15 gal/ac.
    assert!((first.area().to_acres() - 160.0).abs() < 1e-3, "{:?}", first.area());
    harness.state_mut().view = View::TankLoads;
    harness.run();
    harness.get_by_label("Record what is left of it").click();
    harness.run();
    let rest = chosen(&harness).clone();
    assert_eq!(rest.loads, Some(1));
    assert!((rest.area().to_acres() - 65.8).abs() < 1e-3, "{:?}", rest.area());
    harness.get_by_label_contains("What was left of Corn, second post is recorded");
    assert!(!rest.fields.contains_key("mill-field"));
    harness.state_mut().view = View::TankLoads;
    harness.run();
    harness.get_by_label("Record it again");
}

#[test]
fn custom_work_for_a_neighbour_needs_no_plan() {
    let mut harness = demo_window();
    harness.run();
    harness.get_by_label("Record without a plan").click();
    harness.run();
    press(&mut harness, "Ground of somebody else");
    // Its name is the name of its box, too, which changes with each letter.
    type_over(&mut harness, "Name of New ground", "C");
    type_over(&mut harness, "Area of C", "40 ac");
    type_over(&mut harness, "Location of C", "Section 3 (demo)");
    press(&mut harness, "Customer: none");
    type_over(&mut harness, "Customer", "C. Neighbour (demo)");
    type_over(&mut harness, "Address of the customer", "The mill (demo)");
    type_over(&mut harness, "Copy handed over on", "2031-06-20");
    let record = chosen(&harness);
    let customer = record.customer.as_ref().unwrap();
    assert_eq!(
        (customer.name.as_str(), customer.copied),
        ("C. Neighbour (demo)", Some(jiff::civil::date(2031, 6, 20)))
    );
    assert_eq!(record.pass, None);
    let field = record.fields.values().next().unwrap();
    assert_eq!((field.name.as_str(), field.area.text(), field.location.as_str()), ("C", "40 ac", "Section 3 (demo)"));
    // Emptied again, there is none.
    for name in ["Customer", "Address of the customer", "Copy handed over on"] {
        type_over(&mut harness, name, "");
    }
    assert_eq!(chosen(&harness).customer, None);
}

/// Common practice, no source: 0 % is no effect, 100 % all dead.
#[test]
fn ratings_are_per_cent_and_the_next_weed_is_offered() {
    let mut harness = demo_window();
    harness.state_mut().season_log.chosen = Some("2031-05-28-corn-first-post".to_owned());
    harness.run();
    press(&mut harness, "Weeds: not typed");
    type_over(&mut harness, "Weeds, apart by commas", "waterhemp, velvetleaf");
    press(&mut harness, "Add a rating");
    type_over(&mut harness, "Rating 1", "90");
    press(&mut harness, "Add a rating");
    type_over(&mut harness, "Rating 2", "101");
    let looks = &chosen(&harness).outcomes;
    assert_eq!(looks[0].rating.as_ref().unwrap().text(), "90 %");
    assert_eq!(looks[0].effect, Some(Effect::Control("waterhemp".into())));
    assert_eq!(looks[1].effect, Some(Effect::Control("velvetleaf".into())));
    // "10" could be read on the way to "101", and is not what was meant.
    assert_eq!(looks[1].rating, None);
    let why = "does not lie between 0 and 100 %: 0 % is no effect, 100 % all dead";
    assert!(harness.query_all_by_label_contains(why).count() > 0);
    type_over(&mut harness, "Rating 2", "95 %");
    assert_eq!(chosen(&harness).outcomes[1].rating.as_ref().unwrap().text(), "95 %");
    // Fifteen days lie between 28 May and 12 June.
    assert_eq!(harness.query_all_by_label("15 d").count(), 2);
    press(&mut harness, "Add a photo");
    type_over(&mut harness, "Photo 1", "no such photo.jpg");
    harness.get_by_label("not there");
    press(&mut harness, "Remove look 1");
    assert_eq!(chosen(&harness).outcomes.len(), 1);
}

#[test]
fn readings_follow_the_first() {
    let mut harness = demo_window();
    harness.state_mut().season_log.chosen = Some("2031-05-28-corn-first-post".to_owned());
    harness.run();
    press(&mut harness, "Add a reading");
    type_over(&mut harness, "Time of reading 2", "0930");
    type_over(&mut harness, "Wind, reading 2", "7");
    type_over(&mut harness, "Humidity, reading 2", "55");
    let reading = &chosen(&harness).readings[0];
    assert_eq!(reading.wind.as_ref().unwrap().text(), "7 mph");
    assert_eq!(reading.humidity.as_ref().unwrap().text(), "55 %");
    press(&mut harness, "Remove reading 2");
    assert!(chosen(&harness).readings.is_empty());
}

#[test]
fn the_certificate_follows_the_operator() {
    let mut farm = demo::farm().unwrap();
    let own = farm.records.get_mut("2027-05-24-soybean-first-post").unwrap();
    (own.operator, own.certificate) = ("B. Demo".into(), "demo B".into());
    let mut harness = window(farm);
    season_log::record_pass(harness.state_mut(), PASS);
    harness.run();
    assert_eq!(chosen(&harness).certificate, "demo");
    type_over(&mut harness, "Operator", "C. Demo");
    assert_eq!(chosen(&harness).certificate, "");
    press(&mut harness, "Operator, typed before");
    pick(&mut harness, "B. Demo");
    assert_eq!((chosen(&harness).operator.as_str(), chosen(&harness).certificate.as_str()), ("B. Demo", "demo B"));
}

/// Nobody needs the mouse: from the date on Tab leads through the boxes, and Space opens what is folded away.
#[test]
fn a_record_is_typed_by_keyboard_alone() {
    let mut harness = demo_window();
    season_log::record_pass(harness.state_mut(), PASS);
    harness.run();
    // A fresh record waits for its hours.
    for (tabs, text) in [(0, "0610"), (1, "0950")] {
        for _ in 0..tabs {
            harness.key_press(egui::Key::Tab);
            harness.run();
        }
        harness.event(egui::Event::Text(text.to_owned()));
        harness.run();
    }
    let (start, end) = (jiff::civil::time(6, 10, 0, 0), jiff::civil::time(9, 50, 0, 0));
    assert_eq!((chosen(&harness).start, chosen(&harness).end), (Some(start), Some(end)));
    // Past the two acts that take the present time; what stands there is selected.
    for _ in 0..3 {
        harness.key_press(egui::Key::Tab);
        harness.run();
    }
    harness.event(egui::Event::Text("O. Demo".to_owned()));
    harness.run();
    assert_eq!(chosen(&harness).operator, "O. Demo");
    harness.get_by_label("Supervisor and helpers: none").focus();
    harness.run();
    harness.key_press(egui::Key::Space);
    harness.run();
    harness.key_press(egui::Key::Tab);
    harness.run();
    harness.event(egui::Event::Text("S. Demo".to_owned()));
    harness.run();
    assert_eq!(chosen(&harness).supervisor, "S. Demo");
}

#[test]
fn a_trial_holds_two_records_against_one_another() {
    let mut harness = demo_window();
    harness.state_mut().season_log.season = Season::Year(2030);
    harness.run();
    harness.get_by_label("Trials").click();
    harness.run();
    // 84, 88, 83 and 86 beside 70, 76, 74 and 77 %: 85.25 and 74.25.
    harness.get_by_label_contains("The difference is crop oil concentrate, 1 % v/v less");
    harness.get_by_label("85.2 %");
    harness.get_by_label("74.2 %");
    harness.state_mut().document.edit(|farm| {
        farm.trials["oil-or-surfactant"].pairs.clear();
    });
    harness.run();
    harness.get_by_label_contains("No pair yet");
    for (side, record) in
        [("one", "3 June 2030, Corn, post, with oil"), ("other", "3 June 2030, Corn, post, with surfactant")]
    {
        harness.get_by_label(&format!("Record of the {side} side: choose a record")).click();
        harness.run();
        pick(&mut harness, record);
    }
    harness.get_by_label("Add the pair").click();
    harness.run();
    let farm = harness.state().document.farm();
    let (one, other) = &farm.trials["oil-or-surfactant"].pairs[0];
    assert_eq!((one.field.as_str(), other.field.as_str()), ("east-sandhill", "west-sandhill"));
    // Giant foxtail after 14 days: 86 less 77.
    harness.get_by_label("+9");
    harness.get_by_label_contains("Pair 1, one side: East sandhill").click();
    harness.run();
    assert_eq!(chosen(&harness).name, "Corn, post, with oil");
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
    harness.get_by_label("25 records");
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
    harness.get_by_label("31 May 2031, West sandhill, first post").focus();
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
    harness.get_by_label("20 April 2031, Burndown").click();
    harness.run();
    harness.get_by_label("Remove the record…").click();
    harness.run();
    assert_eq!(harness.state().document.farm().records.len(), 25);
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
    harness.get_by_label("Add a product: Add a product…").scroll_to_me();
    harness.run();
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
    record.certificate = "".into();
    let mut harness = window(farm);
    harness.run();
    harness.get_by_label("13 May 2031, Triangle, before emergence, still open: certificate");
}

#[test]
fn a_record_led_to_from_elsewhere_is_brought_into_sight() {
    let mut harness = demo_window();
    harness.run();
    let id = "2030-06-05-corn-post".to_owned();
    harness.state_mut().lead_to(&tankard_core::finding::Subject::Record(id));
    harness.run();
    harness.get_by_label("Season 2030");
    harness.get_by_label("5 June 2030, Corn, post");
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
    harness.get_by_label("4806 records");
    let drawn = |harness: &Harness<'_, Desk>| harness.query_all_by_role(egui::accesskit::Role::ListBoxOption).count();
    assert!((20..60).contains(&drawn(&harness)));
    harness.state_mut().season_log.chosen = Some("2031-04-16-wheat-broadleaf".to_owned());
    harness.run();
    assert!(harness.query_all_by_label("16 April 2031, Wheat, broadleaf weeds").count() > 1);
    assert!((20..60).contains(&drawn(&harness)));
}
