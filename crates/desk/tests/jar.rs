//! The jar test as a person meets it: on the desk through the names that a screen reader says, and from a script.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use std::path::{Path, PathBuf};
use std::process::{Command, Output};

use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use jiff::civil::{DateTime, datetime};
use tankard::app::Desk;
use tankard::command::View;
use tankard::demo;
use tankard::document::Document;
use tankard::views::tank_loads::{Page, jar};
use tankard_core::farm::{CarrierKind, Farm};
use tankard_core::mix::jar::Jar;
use tankard_core::quantity::AsTyped;

const PASS: &str = "2031-06-12-corn-second-post";

fn evening(_zone: &str) -> DateTime {
    datetime(2031, 6, 11, 20, 14, 0, 0)
}

fn window(farm: Farm, size: [f32; 2]) -> Harness<'static, Desk> {
    let mut desk = Desk::new(Document::copy(farm), evening);
    desk.view = View::TankLoads;
    desk.tank_loads.choose(PASS);
    let mut harness = common::window(desk, size);
    harness.run();
    harness
}

fn on_the_page(farm: Farm) -> Harness<'static, Desk> {
    let mut harness = window(farm, [1366.0, 768.0]);
    harness.get_by_label("Jar test").click();
    harness.run();
    harness
}

#[test]
fn the_page_shows_the_amounts_and_their_working() {
    let mut harness = on_the_page(demo::farm().unwrap());
    assert_eq!(harness.state().tank_loads.page, Page::Jar);
    // 22 fl oz/ac at 15 gal/ac in a pint of 473.176473 mL: 22/(15 × 128) of it, 5.42 mL; arithmetic on exact definitions.
    harness.get_by_label("Glyphosate 540 SL (demo) in the jar: 5.4 mL, show working").click();
    harness.run();
    harness.get_by_label("Working: Glyphosate 540 SL (demo) in the jar");
    harness.get_by_label("5.42 mL");
    // 8.5 lb/100 gal is 4.819 g in a pint.
    harness.get_by_label("Ammonium sulfate, spray grade (demo) in the jar: 4.82 g, show working");
    harness.get_by_label_contains("shows nothing of weed control");
    harness.get_by_label("Heat: the jar gets warm");
}

#[test]
fn another_jar_is_chosen_and_kept_from_pass_to_pass() {
    let mut harness = on_the_page(demo::farm().unwrap());
    harness.get_by_label("Jar: 1 US pint (473 mL)").click();
    harness.run();
    harness.get_by_label("1 US quart (946 mL)").click();
    harness.run();
    harness.get_by_label("Glyphosate 540 SL (demo) in the jar: 11 mL, show working");
    harness.state_mut().tank_loads.choose("2031-06-14-soybean-post");
    harness.run();
    harness.get_by_label("Jar: 1 US quart (946 mL)");
    assert!(!harness.state().document.is_unsaved());
}

#[test]
fn the_page_is_reached_and_worked_by_keyboard_alone() {
    let mut harness = window(demo::farm().unwrap(), [1366.0, 768.0]);
    let tab_to = |harness: &mut Harness<'static, Desk>, name: &str| {
        for _ in 0..150 {
            harness.key_press(egui::Key::Tab);
            harness.run();
            if harness.query_by_label(name).is_some_and(|node| node.is_focused()) {
                harness.key_press(egui::Key::Enter);
                harness.run();
                return;
            }
        }
        panic!("{name} is not reached with Tab");
    };
    tab_to(&mut harness, "Jar test");
    assert_eq!(harness.state().tank_loads.page, Page::Jar);
    tab_to(&mut harness, "Glyphosate 540 SL (demo) in the jar: 5.4 mL, show working");
    harness.get_by_label("Working: Glyphosate 540 SL (demo) in the jar");
    tab_to(&mut harness, "Jar: 1 US pint (473 mL)");
    harness.get_by_label("500 mL");
}

#[test]
fn every_part_has_a_name_of_its_own_also_where_room_is_short() {
    for size in [[1366.0, 768.0], [910.0, 512.0]] {
        let mut harness = window(demo::farm().unwrap(), size);
        harness.state_mut().tank_loads.page = Page::Jar;
        harness.run();
        // A second node of one name would make this panic.
        harness.get_by_label("Jar: 1 US pint (473 mL)");
        harness.get_by_label("Save the jar test as PDF…");
    }
}

#[test]
fn the_sheet_is_saved_where_the_user_said() {
    let mut harness = on_the_page(demo::farm().unwrap());
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("jar.pdf");
    harness.state_mut().tank_loads.jar.asked = Some((PASS.to_owned(), Jar::Quart));
    jar::save(harness.state_mut(), &path);
    assert!(std::fs::read(&path).unwrap().starts_with(b"%PDF"));
    // Asked once, written once.
    let again = folder.path().join("again.pdf");
    jar::save(harness.state_mut(), &again);
    assert!(!again.exists());
}

#[test]
fn a_line_that_cannot_be_reckoned_keeps_the_sheet_from_paper() {
    let mut farm = demo::farm().unwrap();
    farm.passes[PASS].mix[0].rate = AsTyped::parse("22 oz/ac").unwrap();
    let mut harness = on_the_page(farm);
    harness.get_by_label_contains("Glyphosate 540 SL (demo) could not be reckoned, so it is missing from the jar");
    assert!(harness.query_by_label("Save the jar test as PDF…").is_none());
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("jar.pdf");
    harness.state_mut().tank_loads.jar.asked = Some((PASS.to_owned(), Jar::Pint));
    jar::save(harness.state_mut(), &path);
    assert!(!path.exists());
}

#[test]
fn fertilizer_shows_two_jars_and_no_carrier_says_what_is_missing() {
    let mut farm = demo::farm().unwrap();
    farm.passes[PASS].carrier_kind = CarrierKind::UreaAmmoniumNitrate;
    let harness = on_the_page(farm.clone());
    harness.get_by_label("Compatibility agent, jar B only");
    farm.passes[PASS].carrier = None;
    on_the_page(farm).get_by_label_contains("it needs the spray volume over ground");
}

fn tankard(arguments: &[&str], folder: &Path) -> Output {
    Command::new(env!("CARGO_BIN_EXE_tankard"))
        .args(["--language", "en"])
        .args(arguments)
        .current_dir(folder)
        .output()
        .unwrap()
}

#[test]
fn the_command_prints_every_pass_or_writes_the_sheet_of_one() {
    let path: PathBuf = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../demo-farm/larkspur-bend.ron");
    let file = path.to_str().unwrap();
    let folder = tempfile::tempdir().unwrap();
    let out = tankard(&["jar", file, "--pass", PASS, "--jar", "quart"], folder.path());
    let text = String::from_utf8(out.stdout).unwrap();
    assert_eq!(out.status.code(), Some(0));
    assert!(
        text.contains("Jar test: Corn, second post") && text.contains("11 mL") && text.contains("do not spray"),
        "{text}"
    );
    for size in ["pint", "quart", "500ml", "1l"] {
        let out = tankard(&["jar", file, "--pass", PASS, "--jar", size, "--out", "jar.pdf"], folder.path());
        assert_eq!(out.status.code(), Some(0), "{size}");
        assert!(std::fs::read(folder.path().join("jar.pdf")).unwrap().starts_with(b"%PDF"));
    }
    let all = tankard(&["jar", file], folder.path());
    assert!(String::from_utf8(all.stdout).unwrap().matches("Jar test: ").count() >= 6);
    let several = tankard(&["jar", file, "--out", "several.pdf"], folder.path());
    assert_eq!(several.status.code(), Some(64));
    assert!(String::from_utf8(several.stderr).unwrap().contains(PASS));
    assert_eq!(tankard(&["jar", file, "--jar", "barrel"], folder.path()).status.code(), Some(64));
    assert_eq!(tankard(&["jar", "gone.ron"], folder.path()).status.code(), Some(3));
    assert!(!folder.path().join("several.pdf").exists());
}
