//! What comes from a farm or an import stays where it belongs: a text is never a formula, markup or another file's name, and a
//! packed file puts nothing on the disk.
//!
//! `TANKARD_EXPORTS=folder cargo test -p tankard-tests --test contained` leaves the exports in that folder, for
//! `/usr/bin/python3 tests/scripts/spreadsheet.py formulas folder/*.csv`, which opens them in LibreOffice Calc.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use std::collections::BTreeSet;
use std::io::{Cursor, Write};
use std::path::Path;

use csv::ReaderBuilder;
use proptest::prelude::*;
use serde_json::Value;
use tankard::demo;
use tankard_core::day::plan_day;
use tankard_core::day::sheet::sheet;
use tankard_core::farm::Farm;
use tankard_core::plan::plan;
use tankard_core::progress::untold;
use tankard_core::season::review::Choice;
use tankard_file::cell::{guarded, unguarded};
use tankard_file::ground::{open, read};
use tankard_file::store::{self, Report, StoreError};
use tankard_file::{records_csv, records_import, records_json, side};
use tankard_paper::{book, evening, review, worker_protection};
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
fn texts(value: &Value, path: &str, all: &mut BTreeSet<String>) {
    let kind = |key: &str| {
        let kinds = ["fields", "products", "waters", "rigs", "passes", "records", "cards", "surroundings"];
        let is_id = kinds.iter().any(|kind| path == format!("/{kind}"));
        if is_id { "*".to_owned() } else { key.to_owned() }
    };
    let mut below = |one: &Value, kind: &str| {
        let path = format!("{path}/{kind}");
        if one.is_string() {
            all.insert(path);
        } else {
            texts(one, &path, all);
        }
    };
    match value {
        Value::Array(of) => of.iter().for_each(|one| below(one, "*")),
        Value::Object(of) => of.iter().for_each(|(key, one)| below(one, &kind(key))),
        _ => {}
    }
}

/// Puts a text in place of all those of one kind.
fn put(value: &mut Value, parts: &[&str], text: &str) {
    let Some((first, rest)) = parts.split_first() else { return };
    let at = |one: &mut Value| match one {
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

/// Some of the demo farm as JSON, and the kinds of places in it that take any text.
fn free() -> (Value, Vec<String>) {
    let mut farm = demo::farm().unwrap();
    // A few of each are enough, and each try reads all of it.
    farm.records = farm.records.into_iter().take(4).collect();
    farm.fields = farm.fields.into_iter().take(2).collect();
    farm.products = farm.products.into_iter().take(3).collect();
    farm.passes = farm.passes.into_iter().take(2).collect();
    farm.cards.clear();
    farm.forecast.hours.clear();
    let value = serde_json::to_value(&farm).unwrap();
    let mut kinds = BTreeSet::new();
    texts(&value, "", &mut kinds);
    let takes = |path: &String| {
        let mut other = value.clone();
        put(&mut other, &path.split('/').skip(1).collect::<Vec<_>>(), "any text");
        serde_json::from_value::<Farm>(other).is_ok()
    };
    let free = kinds.into_iter().filter(takes).collect();
    (value, free)
}

/// The farm with a text in all these places.
fn spoilt((value, free): &(Value, Vec<String>), text: &str) -> Farm {
    let mut value = value.clone();
    for path in free {
        put(&mut value, &path.split('/').skip(1).collect::<Vec<_>>(), text);
    }
    serde_json::from_value(value).unwrap()
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
    let free = free();
    assert!(free.1.len() > 60, "{} kinds of texts", free.1.len());
    for text in FORMULAS {
        let farm = spoilt(&free, text);
        let csv = records_csv::write(&farm, |_| true).unwrap();
        assert!(csv.contains('1'), "{text:?}");
        assert_eq!(formula(&csv), None, "{text:?}");
        if let Ok(folder) = std::env::var("TANKARD_EXPORTS") {
            let number = FORMULAS.iter().position(|one| *one == text).unwrap();
            std::fs::write(format!("{folder}/records-{number}.csv"), &csv).unwrap();
        }
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
fn sums_stay_numbers() {
    let farm = demo::farm().unwrap();
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
    let found = open(&file, None, &untold).unwrap();
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
        let said = format!("{:?}", open(&file, None, &untold));
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
    // What is kept beside a farm under a name of ours is not written through a link either.
    let farm = Farm::new("Linked (demo)");
    store::save(&at("farm.ron"), &farm, None).unwrap();
    let side = side::beside(&at("farm.ron"));
    std::os::unix::fs::symlink(at("precious.txt"), &side).unwrap();
    side::keep(&side, &farm, side::Head::default()).unwrap();
    assert!(!side.is_symlink() && side::find(&side).is_some());
    assert_eq!(std::fs::read_to_string(at("precious.txt")).unwrap(), "precious");
    // A pipe beside a shapefile would keep a reader waiting for ever.
    std::fs::copy("reference/boundaries/wgs84.shp", at("wgs84.shp")).unwrap();
    let made = std::process::Command::new("mkfifo").arg(at("wgs84.dbf")).status().unwrap();
    assert!(made.success());
    assert!(!open(&at("wgs84.shp"), None, &untold).unwrap().pieces.is_empty());
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

#[test]
fn no_text_of_a_farm_is_markup_on_paper() {
    let text = "#panic() #read(\"/etc/passwd\") #import \"@preview/x:0.1.0\": * @nowhere <x> $x/0$ `raw` \\u{0}";
    let farm = spoilt(&free(), text);
    let day = farm.passes.values().next().unwrap().date;
    let ids: Vec<_> = farm.records.keys().cloned().collect();
    let is_pdf = |bytes: Vec<u8>| bytes.starts_with(b"%PDF");
    assert!(is_pdf(book::pdf(&farm, &ids, book::Options::default(), day).unwrap()));
    assert!(is_pdf(worker_protection::pdf(&farm, &ids, day).unwrap().0));
    assert!(is_pdf(review::pdf(&farm, &Choice::all(), day).unwrap()));
    let plans: Vec<_> = farm.passes.keys().filter_map(|id| plan(&farm, id)).collect();
    let plans: Vec<_> = plans.iter().collect();
    let sheet = sheet(&farm, day, &plans, &plan_day(&farm, day, &plans).slots().collect::<Vec<_>>());
    assert!(!sheet.is_empty() && is_pdf(evening::pdf(&sheet, &[]).unwrap()));
}
