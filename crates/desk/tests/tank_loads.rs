//! Tank loads, Fields and the window as a person uses them: through the names that a screen reader says.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use common::type_over;
use std::path::{Path, PathBuf};
use std::time::Duration;

use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use jiff::civil::{DateTime, datetime};
use tankard::app::Desk;
use tankard::command::{Command, View};
use tankard::demo;
use tankard::document::Document;
use tankard::files::Purpose;
use tankard::recent::Remembered;
use tankard::views::tank_loads::Page;
use tankard::views::tank_loads::cards::{self, Printing};
use tankard_core::farm::{Farm, LoadSplit, Pass};
use tankard_file::store;

const PASS: &str = "2031-06-12-corn-second-post";

fn evening(_zone: &str) -> DateTime {
    datetime(2031, 6, 11, 20, 14, 0, 0)
}

fn window(farm: Farm, view: View) -> Harness<'static, Desk> {
    let mut desk = Desk::new(Document::copy(farm), evening);
    desk.view = view;
    shown(desk)
}

fn shown(desk: Desk) -> Harness<'static, Desk> {
    let mut harness = common::window(desk, [1366.0, 768.0]);
    harness.run();
    harness
}

fn demo_window(view: View) -> Harness<'static, Desk> {
    window(demo::farm().unwrap(), view)
}

fn pass<'a>(harness: &'a Harness<'_, Desk>) -> &'a Pass {
    &harness.state().document.farm().passes[PASS]
}

#[test]
fn every_view_shows_without_a_nameless_widget_or_a_missing_glyph() {
    for view in View::ALL {
        let mut harness = demo_window(view);
        for other in View::ALL {
            harness.get_by_role_and_label(egui::accesskit::Role::Tab, other.name()).click();
            harness.run();
            assert_eq!(harness.state().view, other);
        }
    }
}

#[test]
fn an_empty_farm_says_what_to_do_first() {
    for view in View::ALL {
        window(Farm::new("Empty"), view);
    }
    let harness = window(Farm::new("Empty"), View::TankLoads);
    harness.get_by_label_contains("first add its fields in Fields, its products in Shed");
}

#[test]
fn the_plan_changes_as_the_rate_is_typed_and_undo_brings_it_back() {
    let mut harness = demo_window(View::TankLoads);
    harness.get_by_label("Glyphosate 540 SL (demo) in load 1: 13 gal 3 qt, show working");
    type_over(&mut harness, "Rate of Glyphosate 540 SL (demo)", "1.5 pt/a");
    assert_eq!(pass(&harness).mix[0].rate.text(), "1.5 pt/a");
    harness.get_by_label("Glyphosate 540 SL (demo) in load 1: 15 gal, show working");
    harness.key_press(egui::Key::Tab);
    harness.run();
    harness.get_by_label("Undo").click();
    harness.run();
    assert_eq!(pass(&harness).mix[0].rate.text(), "22 fl oz/ac");
    assert!(!harness.state().document.is_unsaved());
    harness.get_by_label("Redo").click();
    harness.run();
    assert_eq!(pass(&harness).mix[0].rate.text(), "1.5 pt/a");
}

#[test]
fn a_text_that_cannot_be_read_is_kept_in_the_box_and_explained_and_changes_nothing() {
    let mut harness = demo_window(View::TankLoads);
    type_over(&mut harness, "Rate of Glyphosate 540 SL (demo)", "22 flz/ac");
    assert_eq!(pass(&harness).mix[0].rate.text(), "22 fl oz/ac");
    // At the box, and at the foot for as long as it stands there.
    let why = "\"flz\" is not a unit of volume or mass; write it like \"22 fl oz/ac\"";
    assert_eq!(harness.query_all_by_label_contains(why).count(), 2);
    harness.get_by_label_contains("Until then the farm has 22 fl oz/ac there.");
    assert_eq!(harness.get_by_label("Rate of Glyphosate 540 SL (demo)").value().as_deref(), Some("22 flz/ac"));
    // No card is issued past it.
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("cards.pdf");
    harness.state_mut().tank_loads.printing = Some(tankard::views::tank_loads::cards::Printing::Issue(PASS.to_owned()));
    tankard::views::tank_loads::cards::save(harness.state_mut(), &path);
    assert!(!path.exists());
    harness.run();
    harness.get_by_label("Drop what was typed").click();
    harness.run();
    assert!(harness.query_by_label_contains("Until then").is_none());
    assert_eq!(harness.get_by_label("Rate of Glyphosate 540 SL (demo)").value().as_deref(), Some("22 fl oz/ac"));
}

#[test]
fn a_time_is_typed_letter_by_letter_and_stays_as_typed_until_it_is_left() {
    let mut harness = demo_window(View::SeasonLog);
    let id = harness.state().document.farm().records.keys().next_back().unwrap().clone();
    harness.state_mut().season_log.chosen = Some(id.clone());
    harness.run();
    harness.get_by_role_and_label(egui::accesskit::Role::TextInput, "End").focus();
    harness.run();
    harness.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::A);
    harness.run();
    for letter in "8:30".chars() {
        harness.event(egui::Event::Text(letter.to_string()));
        harness.run();
    }
    assert_eq!(harness.get_by_role_and_label(egui::accesskit::Role::TextInput, "End").value().as_deref(), Some("8:30"));
    harness.key_press(egui::Key::Tab);
    harness.run();
    assert_eq!(
        harness.get_by_role_and_label(egui::accesskit::Role::TextInput, "End").value().as_deref(),
        Some("08:30")
    );
    assert_eq!(harness.state().document.farm().records[&id].end, Some(jiff::civil::time(8, 30, 0, 0)));
}

#[test]
fn a_number_opens_its_working() {
    let mut harness = demo_window(View::TankLoads);
    harness.get_by_label("Glyphosate 540 SL (demo) in load 1: 13 gal 3 qt, show working").click();
    harness.run();
    harness.get_by_label("Working: Glyphosate 540 SL (demo) in load 1");
    harness.get_by_label("1,200 gal ÷ 15 gal/ac");
}

#[test]
fn even_loads_and_full_tanks() {
    let mut harness = demo_window(View::TankLoads);
    harness.get_by_label("even loads").click();
    harness.run();
    assert_eq!(pass(&harness).split, LoadSplit::EvenLoads);
    harness.get_by_label_contains("Load 1: 1,129 gal");
    harness.get_by_label("full tanks, then a rest").click();
    harness.run();
    harness.get_by_label_contains("Load 3: 987 gal").click();
    harness.run();
    assert_eq!(harness.state().tank_loads.load, 3);
    harness.get_by_label("Load 3, as it goes in");
}

#[test]
fn a_pass_is_planned_from_nothing_with_the_keyboard_and_the_boxes() {
    let mut harness = demo_window(View::TankLoads);
    harness.get_by_label("+ Plan a pass").click();
    harness.run();
    let id = harness.state().tank_loads.chosen.clone().unwrap();
    harness.get_by_label_contains("Stop: The pass has no field yet");
    type_over(&mut harness, "Name of the pass", "Corn, late");
    harness.get_by_label_contains("Add a field:").click();
    harness.run();
    harness.get_by_label_contains("Mill field · 74.6 ac corn").click();
    harness.run();
    harness.get_by_label_contains("Add a product to the mix:").click();
    harness.run();
    harness.get_by_role_and_label(egui::accesskit::Role::Button, "Glyphosate 540 SL (demo)").click();
    harness.run();
    let farm = harness.state().document.farm();
    let pass = &farm.passes[&id];
    assert_eq!((pass.name.as_str(), pass.fields.as_slice()), ("Corn, late", &["mill-field".to_owned()][..]));
    assert_eq!(pass.mix[0].product, "glyphosate-540");
    assert!(pass.carrier.is_some());
    // A new pass is loaded by the farm's aims.
    assert_eq!(pass.split, LoadSplit::ByAims);
    harness.get_by_label_contains("Load 1: ");
    harness.get_by_label("full tanks, then a rest").click();
    harness.run();
    harness.get_by_label_contains("Load 1: 1,200 gal, 60 ac, Mill field");
}

#[test]
fn the_keyboard_alone_chooses_a_pass_and_opens_a_working() {
    let mut harness = demo_window(View::TankLoads);
    harness.get_by_role_and_label(egui::accesskit::Role::ListBoxOption, "Soybean, post").focus();
    harness.run();
    harness.key_press(egui::Key::Enter);
    harness.run();
    assert_eq!(harness.state().tank_loads.chosen.as_deref(), Some("2031-06-14-soybean-post"));
    harness.get_by_label_contains("Fomesafen 240 SL (demo) in load 1:").focus();
    harness.run();
    harness.key_press(egui::Key::Space);
    harness.run();
    harness.get_by_label("Working: Fomesafen 240 SL (demo) in load 1");
}

#[test]
fn removing_asks_first() {
    let mut harness = demo_window(View::TankLoads);
    let remove = "Remove: Corn, second post";
    harness.get_by_label(remove).scroll_to_me();
    harness.run();
    harness.get_by_label(remove).click();
    harness.run();
    assert!(harness.state().document.farm().passes.contains_key(PASS));
    harness.get_by_label("Keep it").click();
    harness.run();
    assert!(harness.state().document.farm().passes.contains_key(PASS));
    harness.get_by_label(remove).click();
    harness.run();
    harness.get_by_label("Remove it").click();
    harness.run();
    assert!(!harness.state().document.farm().passes.contains_key(PASS));
}

/// A preview laid out on its own thread keeps the window asking for frames until it is there.
fn settle(harness: &mut Harness<'_, Desk>) {
    for _ in 0..200 {
        harness.run_steps(2);
        std::thread::sleep(std::time::Duration::from_millis(20));
    }
}

/// As when cards are to be issued and the file box answers with a path.
fn issue(harness: &mut Harness<'_, Desk>, pass: &str, path: &Path) {
    harness.state_mut().tank_loads.printing = Some(Printing::Issue(pass.to_owned()));
    cards::save(harness.state_mut(), path);
    harness.run_steps(3);
}

fn click(harness: &mut Harness<'_, Desk>, words: &str) {
    harness.get_by_role_and_label(egui::accesskit::Role::Button, words).click();
    harness.run_steps(4);
}

fn rename(harness: &mut Harness<'_, Desk>, name: &str) {
    harness.state_mut().document.edit(|farm| name.clone_into(&mut farm.name));
    harness.run_steps(3);
}

#[test]
fn issued_cards_are_kept_and_superseded_when_the_plan_changes() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("cards.pdf");
    let mut harness = demo_window(View::TankLoads);
    harness.state_mut().tank_loads.page = Page::Cards;
    harness.run_steps(3);
    harness.get_by_label("Not issued yet");
    issue(&mut harness, PASS, &path);
    assert!(std::fs::read(&path).unwrap().starts_with(b"%PDF-"));
    let numbers: Vec<String> = harness.state().document.farm().cards.keys().cloned().collect();
    assert_eq!(numbers, ["2031-0001", "2031-0002", "2031-0003"]);
    harness.get_by_label_contains("Cards 2031-0001 to 2031-0003, 11 June 2031, 20:14");
    // The plan changes: the old cards stay as they were, and the page says that they no longer hold.
    let before = harness.state().document.farm().cards.clone();
    harness.state_mut().document.edit(|farm| {
        farm.passes[PASS].carrier = tankard_core::quantity::AsTyped::parse("12 gal/ac").ok();
    });
    harness.run_steps(3);
    harness.get_by_label("Superseded");
    assert_eq!(harness.state().document.farm().cards, before);
    settle(&mut harness);
}

#[test]
fn a_stop_keeps_cards_from_being_issued() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("cards.pdf");
    let mut harness = demo_window(View::TankLoads);
    harness.state_mut().tank_loads.choose("2031-06-13-wheat-head-timing");
    harness.state_mut().tank_loads.page = Page::Cards;
    harness.run_steps(3);
    harness.get_by_label("1 Stop to settle before cards can be issued");
    assert!(harness.query_by_label("Issue and open for printing").is_none());
    issue(&mut harness, "2031-06-13-wheat-head-timing", &path);
    assert!(!path.exists() && harness.state().document.farm().cards.is_empty());
    settle(&mut harness);
}

#[test]
fn a_finding_leads_to_what_it_speaks_of() {
    let mut harness = demo_window(View::TankLoads);
    harness.get_by_label_contains("Check: Long bottom is at V7; Mesotrione").click();
    harness.run();
    assert_eq!(harness.state().view, View::Fields);
    assert_eq!(harness.state().fields.chosen.as_deref(), Some("long-bottom"));
}

#[test]
fn a_field_is_edited_in_its_row_added_copied_and_moved() {
    let mut harness = demo_window(View::Fields);
    type_over(&mut harness, "Stage of Mill field", "V8");
    type_over(&mut harness, "Area of Mill field", "30,2 ha");
    let field = &harness.state().document.farm().fields["mill-field"];
    assert_eq!((field.stage.as_str(), field.area.text()), ("V8", "30,2 ha"));
    harness.get_by_label("Copy: Mill field").click();
    harness.run();
    assert_eq!(harness.state().document.farm().fields.get_index_of("mill-field-copy"), Some(1));
    harness.get_by_label("Move down: Mill field (copy)").click();
    harness.run();
    assert_eq!(harness.state().document.farm().fields.get_index_of("mill-field-copy"), Some(2));
    harness.get_by_label("+ Add a field").click();
    harness.run();
    assert!(harness.state().document.farm().fields.contains_key("field"));
    // What is typed next is its name.
    harness.event(egui::Event::Text("Back forty".to_owned()));
    harness.run();
    assert_eq!(harness.state().document.farm().fields["field"].name, "Back forty");
}

#[test]
fn unsaved_work_is_not_lost_without_a_question() {
    let mut harness = demo_window(View::TankLoads);
    harness.state_mut().document.edit(|farm| farm.name = "Changed".to_owned());
    let ctx = harness.ctx.clone();
    harness.state_mut().run(Command::New, &ctx);
    harness.run();
    harness.get_by_label("Changed holds work that is not saved");
    assert_eq!(harness.state().document.farm().name, "Changed");
    harness.get_by_label("Stay here").click();
    harness.run();
    assert_eq!(harness.state().document.farm().name, "Changed");
    harness.state_mut().run(Command::New, &ctx);
    harness.run();
    harness.get_by_label("Let it go").click();
    harness.run();
    assert_eq!(harness.state().document.farm().name, "New farm");
}

#[test]
fn the_path_box_saves_and_opens_where_no_dialog_answers() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("farm.ron");
    let mut harness = demo_window(View::TankLoads);
    harness.state_mut().document.edit(|farm| farm.name = "Typed path".to_owned());
    harness.state_mut().ask_path(Purpose::SaveFarm, path.clone());
    harness.run();
    harness.get_by_role_and_label(egui::accesskit::Role::Button, "Save").click();
    harness.run();
    assert_eq!(tankard_file::store::open(&path).unwrap().0.name, "Typed path");
    assert!(!harness.state().document.is_unsaved());
    harness.get_by_label_contains("Saved as ");
    // A file that cannot be read leaves the open farm alone and says why.
    std::fs::write(&path, "Farm(").unwrap();
    harness.state_mut().ask_path(Purpose::OpenFarm, path);
    harness.run();
    harness.get_by_role_and_label(egui::accesskit::Role::Button, "Open").click();
    harness.run();
    harness.get_by_label_contains("The farm was not opened: line ");
    assert_eq!(harness.state().document.farm().name, "Typed path");
}

#[test]
fn undo_does_not_take_back_what_was_printed() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("farm.ron");
    store::save(&path, &demo::farm().unwrap(), None).unwrap();
    let mut harness = shown(Desk::new(Document::open(path.clone()).unwrap(), evening));
    rename(&mut harness, "Renamed");
    issue(&mut harness, PASS, &folder.path().join("cards.pdf"));
    click(&mut harness, "Undo");
    let document = &harness.state().document;
    assert_eq!((document.farm().name.as_str(), document.farm().cards.len()), ("Larkspur Bend (demo)", 3));
    assert!(document.is_unsaved() && !document.can_undo());
    let ctx = harness.ctx.clone();
    harness.state_mut().run(Command::New, &ctx);
    harness.run_steps(3);
    harness.get_by_label("Larkspur Bend (demo) holds work that is not saved and 3 issued cards");
    click(&mut harness, "Stay here");
    click(&mut harness, "Redo");
    issue(&mut harness, PASS, &folder.path().join("again.pdf"));
    assert_eq!(harness.state().document.farm().cards.keys().next_back().unwrap(), "2031-0006");
    harness.state_mut().run(Command::Save, &ctx);
    harness.run_steps(3);
    assert!(!harness.state().document.is_unsaved());
    assert_eq!(store::open(&path).unwrap().0.cards.len(), 6);
}

#[test]
fn cards_are_issued_for_the_pass_they_were_asked_for_and_not_over_a_farm() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("farm.ron");
    store::save(&path, &demo::farm().unwrap(), None).unwrap();
    let mut harness = demo_window(View::TankLoads);
    // Another pass is chosen while the file dialog is open.
    harness.state_mut().tank_loads.printing = Some(Printing::Issue(PASS.to_owned()));
    harness.state_mut().tank_loads.choose("2031-06-14-soybean-post");
    cards::save(harness.state_mut(), &folder.path().join("cards.pdf"));
    harness.run_steps(3);
    let issued = &harness.state().document.farm().cards;
    assert!(issued.len() == 3 && issued.values().all(|card| card.pass == PASS));
    issue(&mut harness, PASS, &path);
    harness.get_by_label_contains("The cards were not written: there is a file of this name already that is a farm");
    assert_eq!(harness.state().document.farm().cards.len(), 3);
    assert!(store::open(&path).is_ok());
    tankard::views::season_log::export::save(harness.state_mut(), tankard::files::Purpose::SaveRecords, &path);
    harness.run_steps(3);
    harness.get_by_label_contains("The records were not saved: there is a file of this name already that is a farm");
    assert!(store::open(&path).is_ok());
}

#[test]
fn closing_with_unsaved_work_asks_by_key_and_by_menu() {
    let mut harness = demo_window(View::TankLoads);
    rename(&mut harness, "Changed");
    harness.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::Q);
    harness.run_steps(3);
    click(&mut harness, "Stay here");
    click(&mut harness, "Farm");
    harness.get_by_label_contains("Close").click();
    harness.run_steps(1);
    let closes = |harness: &Harness<'_, Desk>| {
        let viewport = &harness.output().viewport_output[&egui::ViewportId::ROOT];
        viewport.commands.contains(&egui::ViewportCommand::Close)
    };
    assert!(!closes(&harness));
    harness.run_steps(3);
    harness.get_by_label("Changed holds work that is not saved");
    harness.get_by_role_and_label(egui::accesskit::Role::Button, "Let it go").click();
    harness.run_steps(1);
    assert!(
        closes(&harness) || {
            harness.run_steps(1);
            closes(&harness)
        }
    );
}

#[test]
fn saving_over_another_file_asks_first() {
    let folder = tempfile::tempdir().unwrap();
    let (own, other) = (folder.path().join("own.ron"), folder.path().join("other.ron"));
    store::save(&own, &demo::farm().unwrap(), None).unwrap();
    store::save(&other, &Farm::new("Other"), None).unwrap();
    let name = |path: &PathBuf| store::open(path).unwrap().0.name;
    let mut harness = shown(Desk::new(Document::open(own.clone()).unwrap(), evening));
    let save_as = |harness: &mut Harness<'_, Desk>, path: &Path| {
        harness.state_mut().ask_path(Purpose::SaveFarm, path.to_owned());
        harness.run_steps(3);
        click(harness, "Save");
    };
    rename(&mut harness, "First");
    save_as(&mut harness, &own);
    assert_eq!(name(&own), "First");
    rename(&mut harness, "Second");
    // The ending is added before it is looked whether the file exists.
    save_as(&mut harness, &folder.path().join("other"));
    harness.get_by_label(&format!("{} exists", other.display()));
    assert_eq!(name(&other), "Other");
    click(&mut harness, "Cancel");
    assert_eq!(harness.state().document.path(), Some(&own));
    save_as(&mut harness, &other);
    click(&mut harness, "Choose another name");
    assert_eq!(harness.get_by_label("Path of the file").value(), Some(other.display().to_string()));
    click(&mut harness, "Save");
    click(&mut harness, "Write over it");
    assert_eq!((name(&other), name(&own)), ("Second".to_owned(), "First".to_owned()));
    assert_eq!(harness.state().document.path(), Some(&other));
}

#[test]
fn another_farm_closes_the_file_box_of_the_one_before() {
    let folder = tempfile::tempdir().unwrap();
    let mut harness = demo_window(View::TankLoads);
    harness.state_mut().ask_path(Purpose::SaveFarm, folder.path().join("demo.ron"));
    harness.run_steps(3);
    harness.get_by_label("Path of the file");
    let ctx = harness.ctx.clone();
    harness.state_mut().run(Command::New, &ctx);
    harness.run_steps(3);
    assert!(harness.query_by_label("Path of the file").is_none());
}

/// A desk that remembers in a folder and keeps unsaved work at once.
fn remembering(document: Document, folder: &Path) -> Harness<'static, Desk> {
    let remembered = Remembered { folder: Some(folder.to_owned()), ..Remembered::default() };
    shown(Desk::new(document, evening).keep_every(Duration::ZERO).remember(remembered))
}

#[test]
fn a_farm_that_was_never_saved_is_offered_at_the_next_start() {
    let folder = tempfile::tempdir().unwrap();
    let names =
        || -> Vec<_> { std::fs::read_dir(folder.path()).unwrap().map(|entry| entry.unwrap().file_name()).collect() };
    let mut harness = remembering(Document::copy(demo::farm().unwrap()), folder.path());
    rename(&mut harness, "Never saved");
    assert_eq!(names(), ["never-saved.ron.unsaved"]);
    drop(harness);
    let mut harness = remembering(Document::copy(demo::farm().unwrap()), folder.path());
    click(&mut harness, "Take it up");
    assert_eq!(harness.state().document.farm().name, "Never saved");
    let ctx = harness.ctx.clone();
    harness.state_mut().run(Command::New, &ctx);
    harness.run_steps(3);
    click(&mut harness, "Let it go");
    assert!(!names().contains(&"never-saved.ron.unsaved".into()));
    rename(&mut harness, "Another");
    harness.state_mut().ask_path(Purpose::SaveFarm, folder.path().join("farm.ron"));
    harness.run_steps(3);
    click(&mut harness, "Save");
    assert!(!names().contains(&"never-saved.ron.unsaved".into()) && names().contains(&"farm.ron".into()));
}

#[test]
fn both_themes_and_all_scales_show_whole() {
    for theme in [egui::Theme::Light, egui::Theme::Dark] {
        for scale in [0.8, 1.0, 1.5, 2.0] {
            for view in View::ALL {
                let mut harness = demo_window(view);
                harness.ctx.set_theme(theme);
                harness.ctx.set_zoom_factor(scale);
                harness.run();
                harness.get_by_role_and_label(egui::accesskit::Role::Tab, view.name());
            }
        }
    }
}

/// A window of 1024 by 700 at 150 % is as wide as 683 points: nothing of the plan lies beside it.
#[test]
fn the_plan_stays_in_its_column_where_room_is_short() {
    let harness = common::tank_loads(demo::farm().unwrap(), [683.0, 467.0]);
    let right = harness.get_by_label("To settle").rect().left();
    let rates: Vec<_> = harness.query_all_by_label_contains("Rate of ").map(|node| node.rect()).collect();
    let amounts: Vec<_> = harness.query_all_by_label_contains(" in load 1: ").map(|node| node.rect()).collect();
    assert_eq!((rates.len(), amounts.len()), (4, 4));
    for (rate, amount) in rates.iter().zip(&amounts) {
        assert!(rate.right() <= amount.left() && amount.right() < right, "{rate:?} {amount:?} {right}");
    }
    for name in ["Take Methylated seed oil", "Compare Methylated seed oil", "Lean to crop safety"] {
        let node = harness.query_all_by_label_contains(name).next().map(|node| node.rect());
        assert!(node.is_some_and(|rect| rect.right() < right), "{name}: {node:?} {right}");
    }
    assert!(harness.get_by_label("even loads").rect().right() < right);
}
