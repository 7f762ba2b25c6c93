//! What comes from a farm or an import stays where it belongs: a text is never a formula, markup or another file's name, and a
//! packed file puts nothing on the disk.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use std::collections::BTreeMap;
use std::io::{Cursor, Write};
use std::path::Path;

use csv::ReaderBuilder;
use proptest::prelude::*;
use serde_json::Value;
use tankard::demo;
use tankard_core::farm::Farm;
use tankard_file::cell::{guarded, unguarded};
use tankard_file::ground::{open, read};
use tankard_file::store::{self, Report, StoreError};
use tankard_file::{records_csv, records_import, records_json};
use tankard_tests::cases;
use zip::write::SimpleFileOptions;

/// Texts by which a cell becomes a formula. Source: OWASP, CSV Injection; the last are commands in a cell as reports of such
/// attacks have them, made harmless.
const FORMULAS: [&str; 22] = [
    "=1+1",
    "+1+1",
    "-1+1",
    "@SUM(1,1)",
    "\t=1+1",
    "\r=1+1",
    "\n=1+1",
    " =1+1",
    "\"=1+1",
    "\";=1+1;\"",
    ";=1+1",
    "a\n=1+1\nb",
    "a\t=1+1\tb",
    "＝1+1",
    "＋1",
    "－1",
    "＠SUM(1)",
    "\u{feff}=1+1",
    "\u{a0}=1+1",
    "'=1+1",
    "=HYPERLINK(\"x\",\"y\")",
    "=cmd|' /C calc'!A0",
];

/// The places of the texts of a document, those of one kind together: "/records/*/lines/*/name".
fn texts(value: &Value, path: &str, all: &mut BTreeMap<String, Vec<String>>) {
    let kind = |key: &str| {
        let kinds = ["fields", "products", "waters", "rigs", "passes", "records", "cards", "surroundings"];
        kinds.iter().any(|kind| path == format!("/{kind}")).then_some("*").unwrap_or(key).to_owned()
    };
    match value {
        Value::String(_) => {}
        Value::Array(all_of) => {
            for (at, one) in all_of.iter().enumerate() {
                step(one, path, &at.to_string(), "*", all);
            }
        }
        Value::Object(map) => {
            for (key, one) in map {
                step(one, path, key, &kind(key), all);
            }
        }
        _ => {}
    }
}

fn step(one: &Value, path: &str, _key: &str, kind: &str, all: &mut BTreeMap<String, Vec<String>>) {
    let path = format!("{path}/{kind}");
    if let Value::String(text) = one {
        all.entry(path).or_default().push(text.clone());
    } else {
        texts(one, &path, all);
    }
}

/// Puts a text in place of all those of one kind.
fn put(value: &mut Value, parts: &[&str], text: &str) {
    let Some((first, rest)) = parts.split_first() else { return };
    let mut at = |one: &mut Value| match one {
        Value::String(old) if rest.is_empty() => text.clone_into(old),
        other => put(other, rest, text),
    };
    match value {
        Value::Array(all) if *first == "*" => all.iter_mut().for_each(at),
        Value::Object(map) if *first == "*" => map.values_mut().for_each(at),
        Value::Object(map) => {
            if let Some(one) = map.get_mut(*first) {
                at(one);
            }
        }
        _ => {}
    }
}

/// The demo farm with a text wherever a farm takes any text, and how many kinds of places that are.
fn spoilt(text: &str) -> (Farm, usize) {
    let farm = demo::farm().unwrap();
    let mut value = serde_json::to_value(&farm).unwrap();
    let mut kinds = BTreeMap::new();
    texts(&value, "", &mut kinds);
    let mut taken = 0;
    for path in kinds.keys() {
        let parts: Vec<&str> = path.split('/').skip(1).collect();
        let mut other = value.clone();
        put(&mut other, &parts, text);
        if serde_json::from_value::<Farm>(other.clone()).is_ok() {
            value = other;
            taken += 1;
        }
    }
    (serde_json::from_value(value).unwrap(), taken)
}

/// The first cell that a spreadsheet would reckon, whatever it takes for the separator.
fn formula(text: &str) -> Option<String> {
    let unseen = |letter: char| {
        letter.is_whitespace() || letter.is_control() || matches!(letter, '\u{feff}' | '\u{200b}'..='\u{200f}')
    };
    [b',', b';', b'\t'].into_iter().find_map(|separator| {
        let mut reader =
            ReaderBuilder::new().delimiter(separator).flexible(true).has_headers(false).from_reader(text.as_bytes());
        reader.records().map(Result::unwrap).find_map(|row| {
            let begins = |cell: &&str| {
                cell.trim_start_matches(unseen).starts_with(['=', '+', '-', '@', '＝', '＋', '－', '＠'])
                    && cell.parse::<f64>().is_err()
            };
            row.iter().find(begins).map(str::to_owned)
        })
    })
}

#[test]
fn no_text_of_a_farm_is_a_formula_in_an_export_and_all_read_back() {
    assert_eq!(formula("a,b\nc,=1\n").as_deref(), Some("=1"), "the test sees a formula");
    assert_eq!(formula("a,b;=1\n").as_deref(), Some("=1"), "and one behind another separator");
    for text in FORMULAS {
        let (farm, taken) = spoilt(text);
        assert!(taken > 60, "{taken} kinds of texts");
        let csv = records_csv::write(&farm, |_| true).unwrap();
        assert!(csv.contains("1"), "{text:?}");
        assert_eq!(formula(&csv), None, "{text:?}");
        let reading = records_csv::read(csv.as_bytes()).unwrap();
        assert!(reading.refused.is_empty(), "{text:?}: {:?}", reading.refused.first());
        assert_eq!(reading.records.len(), farm.records.len());
        for coming in &reading.records {
            assert_eq!(coming.record, farm.records[&coming.id], "{text:?}");
        }
        // Where nothing is reckoned, nothing is changed either.
        let json = records_json::write(&farm, |_| true, None, jiff::civil::date(2031, 12, 1)).unwrap();
        assert!(serde_json::from_str::<Value>(&json).is_ok());
    }
}

#[test]
fn a_number_below_nothing_stays_a_number() {
    let mut farm = demo::farm().unwrap();
    let line = farm.records.values_mut().flat_map(|record| &mut record.lines).next().unwrap();
    line.price = Some(
        tankard_core::quantity::AsTyped::parse("-3 / gal")
            .or_else(|_| {
                // Where a price cannot lie below nothing, neither can a sum.
                tankard_core::quantity::AsTyped::parse("3 / gal")
            })
            .unwrap(),
    );
    let csv = records_csv::write(&farm, |_| true).unwrap();
    let mut reader = csv::Reader::from_reader(csv.as_bytes());
    let sums: Vec<usize> = records_csv::COLUMNS
        .iter()
        .enumerate()
        .filter(|(_, column)| column.of == records_csv::Of::Sum && column.name != "actives_kg")
        .map(|(at, _)| at)
        .collect();
    let mut numbers = 0;
    for row in reader.records() {
        let row = row.unwrap();
        for at in &sums {
            let cell = &row[*at];
            assert!(cell.is_empty() || cell.parse::<f64>().is_ok(), "{cell}");
            numbers += usize::from(!cell.is_empty());
        }
    }
    assert!(numbers > 50, "{numbers}");
}

proptest! {
    #![proptest_config(cases(2000))]

    #[test]
    fn every_text_reads_back_from_its_cell(text in "[=+\\-@＝'\"; \t\r\na0\u{feff}\u{202e}]{0,12}") {
        let cell = guarded(&text);
        prop_assert_eq!(unguarded(&cell), text.clone());
        let mut writer = csv::Writer::from_writer(Vec::new());
        writer.write_record(["first", &cell, "last"]).unwrap();
        let row = String::from_utf8(writer.into_inner().unwrap()).unwrap();
        prop_assert_eq!(formula(&row), None, "{:?}", text);
    }
}

/// A zip with files of such names, each the same KML.
fn packed(names: &[&str]) -> Vec<u8> {
    let mut zip = zip::ZipWriter::new(Cursor::new(Vec::new()));
    for name in names {
        zip.start_file(*name, SimpleFileOptions::default()).unwrap();
        zip.write_all(KML.as_bytes()).unwrap();
    }
    zip.finish().unwrap().into_inner()
}

const KML: &str = "<kml><Placemark><name>../../evil</name><Polygon><outerBoundaryIs><LinearRing><coordinates>\
    -96.4,41.2 -96.39,41.2 -96.39,41.21 -96.4,41.21 -96.4,41.2\
    </coordinates></LinearRing></outerBoundaryIs></Polygon></Placemark></kml>";

fn names(folder: &Path) -> Vec<String> {
    let mut found: Vec<String> = std::fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().file_name().to_string_lossy().into_owned())
        .collect();
    found.sort();
    found
}

#[test]
fn a_packed_file_puts_nothing_on_the_disk() {
    let long = format!("{}.kml", "x".repeat(4000));
    let hostile = [
        "../../evil.kml",
        "/evil.kml",
        "C:\\evil.kml",
        "\\\\host\\share\\evil.kml",
        "nul.kml",
        "CON.kml",
        "a\0b.kml",
        "evil.kml.",
        " evil .kml",
        "\u{202e}lmk.live.kml",
        "a/../../b.kml",
        &long,
        "a\nb.kml",
        "./.kml",
        "TASKDATA/../x.kml",
    ];
    let outer = tempfile::tempdir().unwrap();
    let folder = outer.path().join("inner");
    std::fs::create_dir(&folder).unwrap();
    let file = folder.join("fields.zip");
    std::fs::write(&file, packed(&hostile)).unwrap();
    let found = open(&file, None).unwrap();
    assert!(found.pieces.len() >= hostile.len() - 2, "{}", found.pieces.len());
    assert_eq!(names(&folder), ["fields.zip"]);
    assert_eq!(names(outer.path()), ["inner"]);
    // The names inside stay texts: one becomes the name of a field, and no path.
    assert!(found.pieces.iter().all(|piece| !piece.name.is_empty()));
}

#[test]
fn what_a_file_names_is_not_read() {
    let folder = tempfile::tempdir().unwrap();
    std::fs::write(folder.path().join("secret.xml"), "<XFC><PFD A=\"PFD1\" C=\"secret\"/></XFC>").unwrap();
    std::fs::create_dir(folder.path().join("inner")).unwrap();
    // An external entity, a link to a network, and a further file that stands elsewhere.
    let entity =
        "<!DOCTYPE kml [<!ENTITY x SYSTEM \"file:///etc/passwd\">]><kml><Placemark><name>&x;</name></Placemark></kml>";
    let problem = read("x.kml", entity.as_bytes(), &[], None).unwrap_err().to_string();
    assert!(problem.contains("entities of its own"), "{problem}");
    let link =
        KML.replace("</kml>", "<NetworkLink><Link><href>http://localhost:9/x.kml</href></Link></NetworkLink></kml>");
    let found = read("x.kml", link.as_bytes(), &[], None).unwrap();
    assert_eq!(found.pieces.len(), 1);
    for named in ["../secret", "../secret.xml", "..\\secret", "secret"] {
        let task = format!("<ISO11783_TaskData VersionMajor=\"4\"><XFR A=\"{named}\" B=\"1\"/></ISO11783_TaskData>");
        let file = folder.path().join("inner/TASKDATA.XML");
        std::fs::write(&file, task).unwrap();
        let said = format!("{:?}", open(&file, None));
        assert!(!said.contains("\"secret\"") || named == "secret", "{named}: {said}");
    }
}

#[cfg(unix)]
#[test]
fn a_report_follows_no_link_and_companions_are_files() {
    let folder = tempfile::tempdir().unwrap();
    let at = |name: &str| folder.path().join(name);
    std::fs::write(at("precious.txt"), "precious").unwrap();
    for (link, target) in [("records.csv", "precious.txt"), ("new.csv", "not-there.txt")] {
        std::os::unix::fs::symlink(at(target), at(link)).unwrap();
        let refused = store::put_report(&at(link), b"a,b\n", Report::Csv);
        assert!(matches!(refused, Err(StoreError::OtherKind { .. })), "{refused:?}");
    }
    assert_eq!(std::fs::read_to_string(at("precious.txt")).unwrap(), "precious");
    assert!(!at("not-there.txt").exists());
    // A pipe beside a shapefile would keep a reader waiting for ever.
    std::fs::copy("reference/boundaries/wgs84.shp", at("wgs84.shp")).unwrap();
    let made = std::process::Command::new("mkfifo").arg(at("wgs84.dbf")).status().unwrap();
    assert!(made.success());
    assert!(!open(&at("wgs84.shp"), None).unwrap().pieces.is_empty());
}

#[test]
fn a_spreadsheet_of_past_seasons_brings_texts_and_no_paths() {
    let csv = "date,field,product,rate,area\n2030-06-01,../../etc,=1+1,1 pt/ac,10 ac\n";
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("past.csv");
    std::fs::write(&file, csv).unwrap();
    let table = records_import::open(&file).unwrap();
    let mut farm = Farm::new("Past (demo)");
    let preview = records_import::preview(&table, &records_import::guess(&table), &farm);
    records_import::enter(&mut farm, &preview.records);
    for id in farm.records.keys().chain(farm.fields.keys()).chain(farm.products.keys()) {
        assert_eq!(tankard_file::names::safe(id, ""), *id);
    }
    assert_eq!(names(folder.path()), ["past.csv"]);
}
