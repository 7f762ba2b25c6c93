//! Signing and amending a record on its page, and a signed record that was changed by hand.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use std::process::Command;

use common::shed::{Shed, edit, put};
use egui::accesskit::Role;
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use jiff::civil::{DateTime, datetime};
use tankard::app::Desk;
use tankard::command::View;
use tankard::demo;
use tankard::document::Document;
use tankard_core::farm::{Farm, Outcome, Record};
use tankard_core::quantity::AsTyped;
use tankard_core::season::amend::original;
use tankard_core::season::seal::{Verdict, sign, verify};

const ID: &str = "2031-05-31-west-sandhill-first-post";
const AMOUNT: &str = "Amount of Glyphosate 540 SL (demo)";

fn noon(_zone: &str) -> DateTime {
    datetime(2031, 6, 12, 12, 0, 0, 400_000_000)
}

fn signed_farm() -> Farm {
    let mut farm = demo::farm().unwrap();
    let signed = sign(&farm.records[ID], "A. Demo", datetime(2031, 5, 31, 20, 0, 0, 0)).unwrap();
    farm.records[ID] = signed;
    farm
}

/// The page of the record, in a window high enough for all of it.
fn page(farm: Farm) -> Harness<'static, Desk> {
    let mut desk = Desk::new(Document::copy(farm), noon);
    desk.view = View::SeasonLog;
    desk.season_log.chosen = Some(ID.to_owned());
    let mut harness = common::window(desk, [1366.0, 1400.0]);
    harness.run();
    harness
}

fn record<'a>(harness: &'a Harness<'_, Desk>) -> &'a Record {
    &harness.state().document.farm().records[ID]
}

fn click(harness: &mut Harness<'_, Desk>, name: &str) {
    harness.get_by_role_and_label(Role::Button, name).scroll_to_me();
    harness.run();
    harness.get_by_role_and_label(Role::Button, name).click();
    harness.run();
}

fn is_disabled(harness: &Shed, name: &str) -> bool {
    edit(harness, name).accesskit_node().is_disabled()
}

#[test]
fn a_record_is_signed_and_then_it_is_read() {
    let mut harness = page(demo::farm().unwrap());
    assert!(!is_disabled(&harness, AMOUNT));
    click(&mut harness, "Sign the record…");
    harness.get_by_label_contains("amended, not edited");
    // The operator of the record signs it, unless somebody else does.
    assert_eq!(harness.get_by_label("Who signs").value().as_deref(), Some("A. Demo"));
    put(&mut harness, "Who signs", " ");
    click(&mut harness, "Sign it");
    harness.get_by_label_contains("Who does it is not typed");
    assert!(record(&harness).signed.is_none());
    put(&mut harness, "Who signs", "B. Demo");
    click(&mut harness, "Sign it");
    let signature = record(&harness).signed.clone().unwrap();
    assert_eq!((signature.by.as_str(), signature.at), ("B. Demo", datetime(2031, 6, 12, 12, 0, 0, 0)));
    assert_eq!(verify(record(&harness)), Verdict::Intact);
    assert!(harness.query_all_by_label("Signed by B. Demo, 12 Jun 2031, 12:00").count() > 1);
    for name in ["Name of the pass", "Operator", "Wind", AMOUNT, "Note"] {
        assert!(is_disabled(&harness, name), "{name}");
    }
    assert!(harness.query_by_label("Remove Glyphosate 540 SL (demo)").is_none());
    assert!(harness.query_by_label("Add a product: Add a product…").is_none());
    // Signing is a step like any other.
    harness.state_mut().document.undo();
    harness.run();
    assert!(record(&harness).signed.is_none() && !is_disabled(&harness, AMOUNT));
}

#[test]
fn what_is_typed_into_a_signed_record_does_not_arrive() {
    let farm = signed_farm();
    let mut harness = page(farm.clone());
    harness.get_by_role_and_label(Role::MultilineTextInput, "Note").focus();
    harness.run();
    harness.event(egui::Event::Text("typed".to_owned()));
    harness.run();
    harness.get_by_role_and_label(Role::TextInput, AMOUNT).click();
    harness.run();
    harness.event(egui::Event::Text("1 gal".to_owned()));
    harness.run();
    assert_eq!(*harness.state().document.farm(), farm);
}

#[test]
fn an_amendment_is_typed_kept_shown_and_undone() {
    let farm = signed_farm();
    let signed = farm.records[ID].clone();
    let mut harness = page(farm);
    click(&mut harness, "Amend the record…");
    assert!(!is_disabled(&harness, AMOUNT));
    put(&mut harness, AMOUNT, "20 gal");
    harness.get_by_label("Amount of Glyphosate 540 SL (demo): 22.875 gal, now 20 gal");
    // Until it is kept the farm has what was signed.
    assert_eq!(record(&harness), &signed);
    assert!(!harness.state().document.is_unsaved());
    click(&mut harness, "Keep the amendment");
    harness.get_by_label_contains("Why it is changed is not typed");
    assert_eq!(record(&harness), &signed);
    put(&mut harness, "Why it is amended", "the gauge was read wrongly");
    click(&mut harness, "Keep the amendment");
    let amended = record(&harness).clone();
    assert_eq!(amended.lines[0].amount.text(), "20 gal");
    assert_eq!(verify(&amended), Verdict::Intact);
    assert_eq!(original(&amended).unwrap(), signed);
    let amendment = &amended.amendments[0];
    assert_eq!((amendment.by.as_str(), amendment.why.as_str()), ("A. Demo", "the gauge was read wrongly"));
    // What stood there is shown, with who, when and why.
    harness.get_by_label("1. 12 Jun 2031, 12:00, A. Demo");
    harness.get_by_label("The gauge was read wrongly");
    harness.get_by_label("Amount of Glyphosate 540 SL (demo): 22.875 gal, now 20 gal");
    assert!(is_disabled(&harness, AMOUNT));
    harness.state_mut().document.undo();
    harness.run();
    assert_eq!(record(&harness), &signed);
    assert!(harness.query_by_label("1. 12 Jun 2031, 12:00, A. Demo").is_none());
    harness.state_mut().document.redo();
    harness.run();
    assert_eq!(record(&harness), &amended);
}

#[test]
fn an_amendment_is_left_and_one_that_was_begun_waits_on_its_page() {
    let farm = signed_farm();
    let mut harness = page(farm.clone());
    click(&mut harness, "Amend the record…");
    put(&mut harness, "Note", "another");
    // Another record, and back.
    harness.state_mut().season_log.chosen = Some("2031-04-20-burndown".to_owned());
    harness.run();
    assert!(!is_disabled(&harness, "Note"));
    harness.state_mut().season_log.chosen = Some(ID.to_owned());
    harness.run();
    harness.get_by_label_contains(", now another");
    // It is in no file yet, so the farm does not go away under it.
    let ctx = harness.ctx.clone();
    harness.state_mut().season_log.chosen = None;
    harness.state_mut().run(tankard::command::Command::New, &ctx);
    harness.run();
    harness.get_by_label_contains("An amendment is begun here");
    click(&mut harness, "Leave it as it was");
    assert!(is_disabled(&harness, "Note"));
    assert_eq!(*harness.state().document.farm(), farm);
    assert!(harness.query_by_label("Keep the amendment").is_none());
}

#[test]
fn a_signed_record_goes_after_stronger_words_and_comes_back() {
    let mut harness = page(signed_farm());
    click(&mut harness, "Remove the record…");
    harness.get_by_label("Remove this signed record? The law may ask to keep it for years.");
    click(&mut harness, "Remove it");
    assert!(!harness.state().document.farm().records.contains_key(ID));
    harness.state_mut().document.undo();
    harness.run();
    assert_eq!(verify(record(&harness)), Verdict::Intact);
}

/// The demo farm with the signed record changed in the file.
fn altered(folder: &tempfile::TempDir) -> std::path::PathBuf {
    let mut farm = signed_farm();
    farm.records[ID].outcomes.push(Outcome {
        field: "west-sandhill".into(),
        date: jiff::civil::date(2031, 6, 10),
        effect: None,
        rating: Some(AsTyped::parse("90 %").unwrap()),
        by: "".into(),
        photos: Vec::new(),
        note: "".into(),
    });
    let text = tankard_file::write(&farm).unwrap();
    assert_eq!(text.matches("\"22.875 gal\"").count(), 1);
    let path = folder.path().join("farm.ron");
    std::fs::write(&path, text.replace("\"22.875 gal\"", "\"21.875 gal\"")).unwrap();
    path
}

#[test]
fn a_record_changed_by_hand_is_said_on_opening_and_can_be_taken_as_it_is() {
    let folder = tempfile::tempdir().unwrap();
    let path = altered(&folder);
    let before = std::fs::read(&path).unwrap();
    let mut desk = Desk::new(Document::copy(Farm::new("Other")), noon);
    desk.view = View::SeasonLog;
    let mut harness = common::window(desk, [1366.0, 1400.0]);
    harness.run();
    let ctx = harness.ctx.clone();
    harness.state_mut().run(tankard::command::Command::OpenPath(path.clone()), &ctx);
    harness.run();
    harness.get_by_label_contains(
        "\"West sandhill, first post\" of 31 May 2031 was changed outside of an amendment; its page",
    );
    let opened = record(&harness).clone();
    harness.get_by_label("2031-05-31, West sandhill, first post, still open: broken seal");
    harness.state_mut().season_log.chosen = Some(ID.to_owned());
    harness.run();
    harness.get_by_label_contains("Check: The signed record");
    harness.get_by_label("this seal does not hold");
    assert!(harness.query_by_label("Amend the record…").is_none());
    click(&mut harness, "Take it as it is…");
    put(&mut harness, "Why it is amended", "mended in the file after the jug was weighed");
    click(&mut harness, "Take it as it is");
    let taken = record(&harness).clone();
    assert_eq!(verify(&taken), Verdict::Taken { amendment: 0 });
    assert_eq!((&taken.signed, &taken.lines, &taken.outcomes), (&opened.signed, &opened.lines, &opened.outcomes));
    harness.get_by_label_contains("Note: The signed record");
    harness.get_by_label("2031-05-31, West sandhill, first post");
    // It goes on.
    click(&mut harness, "Amend the record…");
    put(&mut harness, "Note", "weighed anew");
    put(&mut harness, "Why it is amended", "for the file");
    click(&mut harness, "Keep the amendment");
    assert_eq!(record(&harness).amendments.len(), 2);
    // Nothing went to the disk by itself.
    assert_eq!(std::fs::read(&path).unwrap(), before);
}

#[test]
fn a_broken_seal_is_said_on_the_command_line() {
    let folder = tempfile::tempdir().unwrap();
    let path = altered(&folder);
    let said = |path: &std::path::Path| {
        let output = Command::new(env!("CARGO_BIN_EXE_tankard"))
            .args(["--language", "en"])
            .arg("check")
            .arg(path)
            .output()
            .unwrap();
        String::from_utf8(output.stdout).unwrap()
    };
    let line = format!(
        "record:{ID}: Check The signed record \"West sandhill, first post\" of 31 May 2031 was changed outside"
    );
    assert!(said(&path).contains(&line), "{}", said(&path));
    let whole = folder.path().join("whole.ron");
    std::fs::write(&whole, tankard_file::write(&signed_farm()).unwrap()).unwrap();
    assert!(!said(&whole).contains("record:"));
}
