//! What a farm says of files stays where it belongs: names that are offered for saving, and pictures that are opened.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use std::path::Path;

use tankard::app::Desk;
use tankard::document::Document;
use tankard_core::farm::Farm;
use tankard_file::store;

#[test]
fn a_name_that_is_offered_stays_beside_the_farm() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("farm.ron");
    store::save(&path, &Farm::new("../../Larkspur: Bend (demo)"), None).unwrap();
    let saved = Desk::new(Document::open(path).unwrap(), common::evening);
    let new = Desk::new(Document::copy(Farm::new("../../CON")), common::evening);
    for id in ["2031-06-12-mill", "../../x", "/etc/x", "C:\\x", "\\\\host\\share", "nul", "a\0b", "", ".."] {
        for rest in ["-load-cards.pdf", "-jar-test.pdf", "-workers.pdf", "-taskdata.zip"] {
            let beside = saved.beside_as(id, rest);
            assert_eq!(beside.parent(), Some(folder.path()), "{id:?}");
            assert!(beside.to_str().unwrap().ends_with(rest), "{id:?}");
            assert_eq!(new.beside_as(id, rest).parent(), Some(Path::new("")), "{id:?}");
        }
    }
    // A farm that was never saved is called after its name.
    assert_eq!(new.beside("csv"), Path::new("_con.csv"));
}
