//! Boundaries into the fields and out of them as a person does it: through the names that a screen reader says.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use common::evening;
use std::path::PathBuf;

use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use tankard::app::Desk;
use tankard::command::{Command, View};
use tankard::demo;
use tankard::document::Document;
use tankard::files::Purpose;
use tankard::views::fields::{export, import};
use tankard_core::farm::{Farm, SurroundingKind};
use tankard_core::progress::untold;
use tempfile::TempDir;

/// A field of the demo, one that it does not have, a creek, and a ring that is no ring. A hundredth of a degree square at 41.2 degrees
/// north holds 230 ac (WGS 84, Karney 2013).
const FILE: &str = r#"{"type": "FeatureCollection", "features": [
 {"type": "Feature", "properties": {"name": "Mill field"}, "geometry": {"type": "Polygon", "coordinates":
  [[[-96.400, 41.200], [-96.394, 41.200], [-96.394, 41.2054], [-96.400, 41.2054], [-96.400, 41.200]]]}},
 {"type": "Feature", "properties": {"name": "New forty"}, "geometry": {"type": "Polygon", "coordinates":
  [[[-96.390, 41.200], [-96.384, 41.200], [-96.384, 41.204], [-96.390, 41.204], [-96.390, 41.200]]]}},
 {"type": "Feature", "properties": {"name": "Mill creek"}, "geometry": {"type": "LineString", "coordinates":
  [[-96.401, 41.199], [-96.401, 41.207]]}},
 {"type": "Feature", "properties": {"name": "Half a field"}, "geometry": {"type": "Polygon", "coordinates":
  [[[-96.380, 41.200], [-96.374, 41.200], [-96.380, 41.200]]]}}]}"#;

fn window(farm: Farm, size: [f32; 2]) -> Harness<'static, Desk> {
    let mut desk = Desk::new(Document::copy(farm), evening);
    desk.view = View::Fields;
    let mut harness = common::window(desk, size);
    harness.run();
    harness
}

/// The demo as it was before anything of it was drawn.
fn undrawn() -> Farm {
    let mut farm = demo::farm().unwrap();
    farm.surroundings.clear();
    for field in farm.fields.values_mut() {
        field.boundary = None;
        field.gateways.clear();
    }
    farm
}

fn file(text: &str) -> (TempDir, PathBuf) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("north.geojson");
    std::fs::write(&path, text).unwrap();
    (folder, path)
}

fn farm<'a>(harness: &'a Harness<'_, Desk>) -> &'a Farm {
    harness.state().document.farm()
}

fn choose(harness: &mut Harness<'_, Desk>, name: &str, what: &str) {
    harness.get_by_label(name).click();
    harness.run();
    harness.get_by_label(what).click();
    harness.run();
}

#[test]
fn a_file_is_looked_at_and_taken_and_undo_takes_it_back() {
    let before = undrawn();
    let mut harness = window(before.clone(), [1366.0, 768.0]);
    let (_folder, path) = file(FILE);
    import::read_file(harness.state_mut(), &path);
    harness.run();
    harness.get_by_label("Boundaries from north.geojson");
    harness.get_by_label_contains("Nothing is changed before you take them.");
    harness.get_by_label("1 piece is refused");
    harness.get_by_label_contains("Half a field");
    // The field of that name is suggested, and held against its stated 74.6 ac.
    harness.get_by_label_contains("stated 74.6 ac: ");
    assert!(!harness.state().document.is_unsaved());
    choose(&mut harness, "What becomes of Mill creek, feature 3: among the fields: other", "among the fields: water");
    harness.get_by_label("Take 3 pieces").click();
    harness.run();
    let now = farm(&harness);
    assert_eq!(now.fields.len(), before.fields.len() + 1);
    assert!(now.fields["mill-field"].boundary.is_some() && now.fields["mill-field"].area.text() == "74.6 ac");
    assert_eq!(now.fields["new-forty"].name, "New forty");
    assert_eq!(now.surroundings["mill-creek"].kind, SurroundingKind::Water);
    harness.get_by_label_contains("1 new field, 1 boundary, 1 thing among the fields taken from north.geojson");
    assert!(harness.query_by_label("Leave the file").is_none());
    harness.state_mut().document.undo();
    harness.run();
    assert_eq!(*farm(&harness), before);
}

#[test]
fn what_becomes_of_a_piece_is_chosen() {
    let mut harness = window(undrawn(), [1366.0, 768.0]);
    let (_folder, path) = file(FILE);
    import::read_file(harness.state_mut(), &path);
    harness.run();
    // Ten times too small for the field.
    choose(&mut harness, "What becomes of New forty, feature 2: a new field", "the boundary of");
    choose(&mut harness, "Field of New forty, feature 2: Mill field", "Long bottom");
    harness.get_by_label_contains("stated 96.0 ac: ");
    harness.get_by_label("Leave all out").click();
    harness.run();
    assert!(harness.get_by_label("Take 0 pieces").accesskit_node().is_disabled());
    harness.get_by_label("As suggested").click();
    harness.run();
    harness.get_by_label("Take 3 pieces");
    // The farm changes under it.
    harness.state_mut().document.edit(|farm| {
        farm.fields["mill-field"].area = tankard_core::quantity::AsTyped::parse("10 ac").unwrap();
    });
    harness.run();
    harness.get_by_label_contains("stated 10 ac: ");
    harness.get_by_label("Leave the file").click();
    harness.run();
    assert!(farm(&harness).fields["mill-field"].boundary.is_none());
}

#[test]
fn a_problem_is_told_and_small_windows_and_bare_farms_do() {
    let (folder, path) = file("no boundaries at all");
    let mut harness = window(Farm::new("Bare"), [911.0, 512.0]);
    import::read_file(harness.state_mut(), &path);
    harness.run();
    harness.get_by_label_contains("The boundaries were not read: ");
    import::read_file(harness.state_mut(), &folder.path().join("missing.geojson"));
    harness.run();
    assert!(harness.query_by_label("Leave the file").is_none());
    let (_folder, path) = file(&FILE.replace("New forty", &"a name without an end ".repeat(20)));
    import::read_file(harness.state_mut(), &path);
    harness.run();
    harness.get_by_label("Take 3 pieces").click();
    harness.run();
    assert_eq!((farm(&harness).fields.len(), farm(&harness).surroundings.len()), (2, 1));
    let (_folder, path) = file(r#"{"type": "FeatureCollection", "features": []}"#);
    import::read_file(harness.state_mut(), &path);
    harness.run();
    harness.get_by_label("The file holds nothing that can be taken.");
}

#[test]
fn boundaries_and_a_pass_go_out() {
    let folder = tempfile::tempdir().unwrap();
    let mut harness = window(undrawn(), [1366.0, 768.0]);
    let ctx = harness.ctx.clone();
    harness.state_mut().run(Command::ExportBoundaries, &ctx);
    harness.run();
    harness.get_by_label_contains("nothing to export");
    let (_kept, path) = file(FILE);
    import::read_file(harness.state_mut(), &path);
    harness.run();
    harness.get_by_label("Take 3 pieces").click();
    harness.run();
    export::save_boundaries(harness.state_mut(), &folder.path().join("out"));
    harness.run();
    harness.get_by_label_contains("3 boundaries and surroundings saved as");
    // What went out comes in again as the same ground (RFC 7946).
    let back = tankard_file::ground::open(&folder.path().join("out.geojson"), None, &untold).unwrap();
    let areas: Vec<f64> = back.pieces.iter().map(|piece| piece.shape.area().to_square_metres().round()).collect();
    let own = |id: &str| farm(&harness).fields[id].boundary.as_ref().unwrap().area().to_square_metres().round();
    assert_eq!(back.pieces.len(), 3);
    for (area, id) in areas.iter().zip(["mill-field", "new-forty"]) {
        assert!((area - own(id)).abs() < 1.0, "{id}: {area}");
    }
    // A pass whose plan has a Stop is not sent to a terminal.
    let stopped = farm(&harness)
        .passes
        .keys()
        .find(|id| tankard_core::plan::plan(farm(&harness), id).unwrap().count(tankard_core::finding::Level::Stop) > 0);
    if let Some(id) = stopped.cloned() {
        harness.state_mut().tank_loads.chosen = Some(id);
        harness.state_mut().run(Command::ExportTaskData, &ctx);
        harness.run();
        harness.get_by_label_contains("No task data of \"");
    }
    let open = farm(&harness).passes.keys().find(|id| {
        tankard_core::plan::plan(farm(&harness), id).unwrap().count(tankard_core::finding::Level::Stop) == 0
    });
    let id = open.unwrap().clone();
    harness.state_mut().tank_loads.chosen = Some(id);
    export::save_task_data(harness.state_mut(), &folder.path().join("task.xml"));
    let text = std::fs::read_to_string(folder.path().join("task.xml")).unwrap();
    assert!(text.contains("<ISO11783_TaskData"));
    export::save_task_data(harness.state_mut(), &folder.path().join("task"));
    assert!(std::fs::read(folder.path().join("task.zip")).unwrap().starts_with(b"PK"));
    harness.state_mut().ask_path(Purpose::SaveTaskData, folder.path().join("again.zip"));
    harness.run();
    harness.get_by_label("Save").click();
    harness.run();
    assert!(folder.path().join("again.zip").is_file());
}

#[test]
fn the_list_and_the_menu_lead_there() {
    let mut harness = window(demo::farm().unwrap(), [1366.0, 768.0]);
    harness.get_by_label("Import boundaries…");
    harness.get_by_label("Farm").click();
    harness.run();
    harness.get_by_label_contains("Export boundaries as GeoJSON…");
    harness.get_by_label_contains("Export the chosen pass as task data…");
}
