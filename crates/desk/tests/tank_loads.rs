//! Tank loads, Fields and the window as a person uses them: through the names that a screen reader says.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use jiff::civil::{DateTime, datetime};
use tankard::app::Desk;
use tankard::command::{Command, View};
use tankard::document::Document;
use tankard::views::tank_loads::Page;
use tankard::{demo, look};
use tankard_core::farm::{Farm, LoadSplit, Pass};

const PASS: &str = "2031-06-12-corn-second-post";

fn evening(_zone: &str) -> DateTime {
    datetime(2031, 6, 11, 20, 14, 0, 0)
}

fn window(farm: Farm, view: View) -> Harness<'static, Desk> {
    let mut desk = Desk::new(Document::copy(farm), evening);
    desk.view = view;
    let mut harness = Harness::builder()
        .with_size([1366.0, 768.0])
        .with_context_setup(look::install)
        .build_ui_state(|ui, desk: &mut Desk| desk.show(ui), desk);
    harness.run();
    harness
}

fn demo_window(view: View) -> Harness<'static, Desk> {
    window(demo::farm().unwrap(), view)
}

fn type_over(harness: &mut Harness<'_, Desk>, name: &str, text: &str) {
    harness.get_by_label(name).focus();
    harness.run();
    harness.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::A);
    harness.run();
    harness.event(egui::Event::Text(text.to_owned()));
    harness.run();
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
    harness.get_by_label_contains("\"flz\" is not a unit of volume or mass; write it like \"22 fl oz/ac\"");
    assert_eq!(harness.get_by_label("Rate of Glyphosate 540 SL (demo)").value().as_deref(), Some("22 flz/ac"));
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

#[test]
fn issued_cards_are_kept_and_superseded_when_the_plan_changes() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("cards.pdf");
    let mut harness = demo_window(View::TankLoads);
    harness.state_mut().tank_loads.page = Page::Cards;
    harness.run_steps(3);
    harness.get_by_label("Not issued yet");
    // As when the file box answers with a path.
    tankard::views::tank_loads::cards::save(harness.state_mut(), &path);
    harness.run_steps(3);
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
    tankard::views::tank_loads::cards::save(harness.state_mut(), &path);
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
    harness.state_mut().ask_path(tankard::files::Purpose::SaveFarm, path.clone());
    harness.run();
    harness.get_by_role_and_label(egui::accesskit::Role::Button, "Save").click();
    harness.run();
    assert_eq!(tankard_file::store::open(&path).unwrap().0.name, "Typed path");
    assert!(!harness.state().document.is_unsaved());
    harness.get_by_label_contains("Saved as ");
    // A file that cannot be read leaves the open farm alone and says why.
    std::fs::write(&path, "Farm(").unwrap();
    harness.state_mut().ask_path(tankard::files::Purpose::OpenFarm, path);
    harness.run();
    harness.get_by_role_and_label(egui::accesskit::Role::Button, "Open").click();
    harness.run();
    harness.get_by_label_contains("The farm was not opened: line ");
    assert_eq!(harness.state().document.farm().name, "Typed path");
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
