//! The page Sprayer of a pass as a person uses it: through the names that a screen reader says.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use common::{tank_loads, type_over};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use jiff::civil::time;
use tankard::app::Desk;
use tankard::command::View;
use tankard::demo;
use tankard::views::tank_loads::{Editor, Page};
use tankard_core::farm::{CarrierKind, Farm, Fills, Pass};

const PASS: &str = "2031-06-12-corn-second-post";

fn sprayer(farm: Farm) -> Harness<'static, Desk> {
    let mut harness = tank_loads(farm, [1366.0, 768.0]);
    harness.state_mut().tank_loads.page = Page::Sprayer;
    harness.run();
    harness
}

fn pass<'a>(harness: &'a Harness<'_, Desk>) -> &'a Pass {
    &harness.state().document.farm().passes[PASS]
}

/// 15 gal/ac × 12 mph × 20 in are 0.606 gal/min; size 06 gives that at 40 psi × (0.606 ÷ 0.6)², which is 41 psi.
#[test]
fn the_page_opens_by_keyboard_and_answers_its_question() {
    let mut harness = tank_loads(demo::farm().unwrap(), [1366.0, 768.0]);
    harness.get_by_role_and_label(egui::accesskit::Role::Tab, "Sprayer").focus();
    harness.run();
    harness.key_press(egui::Key::Enter);
    harness.run();
    assert_eq!(harness.state().tank_loads.page, Page::Sprayer);
    harness.get_by_label("Which nozzles do this pass best?");
    harness.get_by_label_contains("Picture of pressure over speed with 110 degree, size 06. Planned: 12 mph, 41 psi");
    harness.get_by_label(
        "Between 8.5 and 15.1 mph pressure stays between 20 and 65 psi and droplets medium to very coarse.",
    );
    harness.get_by_label("each nozzle gives: 0.61 gal/min, show working").click();
    harness.run();
    harness.get_by_label("Working: Setting of 110 degree, size 06");
    harness.get_by_label_contains("10 April 2031: catch at the nozzles");
    // 12 gal stay; each of three rinses with 40 gal leaves 12 of 52 parts: 1.2 %.
    harness.get_by_label("3 times with 40 gal");
    harness.get_by_label("leaves 1.2 % of the strength");
}

#[test]
fn another_set_is_looked_at_taken_with_its_speed_and_undone() {
    let mut harness = sprayer(demo::farm().unwrap());
    // 0.606 gal/min through a size 08: 40 psi × (0.606 ÷ 0.8)² is 23 psi, below its table.
    harness.get_by_label("not as planned: 12 mph, 23 psi");
    harness.get_by_label("Show air induction, size 08 in the picture").click();
    harness.run();
    harness.get_by_label("Pressure and droplets over speed: air induction, size 08");
    assert!(pass(&harness).nozzles.is_empty());
    harness.get_by_label("Take air induction, size 08 for this pass").focus();
    harness.run();
    harness.key_press(egui::Key::Enter);
    harness.run();
    assert_eq!(pass(&harness).nozzles, "air-08");
    assert_eq!(pass(&harness).speed.as_ref().unwrap().text(), "13.8 mph");
    harness.get_by_label("Undo").click();
    harness.run();
    assert!(pass(&harness).nozzles.is_empty() && pass(&harness).speed.is_none());
}

#[test]
fn a_rig_without_a_set_says_what_to_type_and_leads_there() {
    let mut farm = demo::farm().unwrap();
    farm.rigs["big-boom"].sets.clear();
    farm.rigs["big-boom"].fitted.clear();
    let mut harness = sprayer(farm);
    harness.get_by_label_contains("Big boom has no nozzle set yet.");
    harness.get_by_label("Go to Big boom in Shed").click();
    harness.run();
    assert_eq!(harness.state().view, View::Shed);
}

#[test]
fn the_rigs_editor_takes_set_height_filling_start_and_density() {
    let mut harness = tank_loads(demo::farm().unwrap(), [1366.0, 900.0]);
    harness.state_mut().tank_loads.editor = Some(Editor::Rig);
    harness.run();
    assert!(harness.query_by_label("Carrier density").is_none());
    harness.get_by_label("Nozzle set: usually fitted: 110 degree, size 06").click();
    harness.run();
    harness.get_by_role_and_label(egui::accesskit::Role::Button, "110 degree, size 05").click();
    harness.run();
    // The class follows from the set and its pressure, not from what is typed for the rig.
    harness.get_by_label("Droplet class: as the set gives");
    type_over(&mut harness, "Boom height", "30 in");
    type_over(&mut harness, "Not to begin before", "6:30");
    harness.get_by_label("The tank is filled: at the field, from a nurse tank").click();
    harness.run();
    harness.get_by_role_and_label(egui::accesskit::Role::Button, "in the yard").click();
    harness.run();
    harness.state_mut().document.edit(|farm| farm.passes[PASS].carrier_kind = CarrierKind::UreaAmmoniumNitrate);
    harness.run();
    type_over(&mut harness, "Carrier density", "10.65 lb/gal");
    let pass = pass(&harness);
    assert_eq!((pass.nozzles.as_str(), pass.fills), ("size-05", Fills::AtYard));
    assert_eq!(pass.height.as_ref().unwrap().text(), "30 in");
    assert_eq!(pass.density.as_ref().unwrap().text(), "10.65 lb/gal");
    assert_eq!(pass.start, Some(time(6, 30, 0, 0)));
}

#[test]
fn the_page_shows_whole_in_small_windows_and_in_metric_units() {
    for size in [[1366.0, 768.0], [1024.0, 700.0], [910.0, 512.0]] {
        let mut farm = demo::farm().unwrap();
        farm.units = tankard_core::quantity::Units::Metric;
        let mut harness = tank_loads(farm, size);
        harness.state_mut().tank_loads.page = Page::Sprayer;
        harness.run();
        harness.get_by_label_contains("Planned: 19.3 km/h, 2.81 bar");
        let right = size[0] - if size[0] < 1150.0 { 214.0 } else { 276.0 };
        for name in ["Take 110 degree, size 05 for this pass", "Show 110 degree, size 06 in the picture"] {
            let rect = harness.get_by_label(name).rect();
            assert!(rect.right() <= right + 1.0, "{name} ends at {} of {right}", rect.right());
        }
    }
}
