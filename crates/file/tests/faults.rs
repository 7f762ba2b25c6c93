//! Files that are wrong, each with the one message it must give; and saves that must not lose anything.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use std::fs;

use tankard_core::farm::{Farm, Field};
use tankard_core::quantity::AsTyped;
use tankard_file::put;
use tankard_file::store::{self, Report, StoreError};
use tankard_file::{ReadError, read, write};

fn farm() -> Farm {
    let mut farm = Farm::new("Test farm");
    farm.fields.insert("mill-field".to_owned(), Field::new("Mill field", AsTyped::parse("74.6 ac").unwrap()));
    farm
}

fn message(text: &str) -> String {
    read(text.as_bytes()).unwrap_err().to_string()
}

#[test]
fn writing_and_reading_gives_the_same_bytes() {
    let text = write(&farm()).unwrap();
    assert!(text.starts_with("Farm(\n    format: 1,\n"), "{text}");
    assert_eq!(write(&read(text.as_bytes()).unwrap()).unwrap(), text);
}

#[test]
fn each_fault_is_named_with_its_place() {
    let good = write(&farm()).unwrap();
    let half = &good[..good.len() / 2];
    assert!(message(half).starts_with("line "), "{}", message(half));
    assert_eq!(read(b""), Err(ReadError::Empty));
    assert_eq!(read(b"  \n"), Err(ReadError::Empty));
    assert_eq!(read(&[0xff, 0xfe, 0x00]), Err(ReadError::NotText));
    for (from, to, says) in [
        ("74.6 ac", "74.6 gal", "\"gal\" is not a unit known here"),
        ("74.6 ac", "-74.6 ac", "below zero"),
        ("74.6 ac", "NaN ac", "does not begin with a number"),
        ("74.6 ac", "", "a number and a unit are missing"),
        ("area:", "aera:", "aera"),
        ("format: 1", "format: 2", "newer Tankard"),
        ("format: 1", "format: 0", "never was"),
        ("format: 1", "format: one", "line 2"),
    ] {
        let text = good.replace(from, to);
        assert_ne!(text, good);
        assert!(message(&text).contains(says), "{to}: {}", message(&text));
    }
    let line = message(&good.replace("74.6 ac", "74.6 gal"));
    assert!(line.starts_with("line 9, column "), "{line}");
}

#[test]
fn a_byte_order_mark_is_no_fault() {
    let text = format!("\u{feff}{}", write(&farm()).unwrap());
    assert_eq!(read(text.as_bytes()).unwrap(), farm());
}

#[test]
fn a_file_that_says_the_same_is_left_byte_for_byte() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("farm.ron");
    let text = format!("// kept by hand\n{}", write(&farm()).unwrap());
    fs::write(&path, &text).unwrap();
    let (opened, stamp) = store::open(&path).unwrap();
    store::save(&path, &opened, Some(stamp)).unwrap();
    assert_eq!(fs::read_to_string(&path).unwrap(), text);
}

/// To `==` two maps with the same entries are alike, but people put fields in an order that means something.
#[test]
fn fields_in_another_order_are_saved() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("farm.ron");
    let mut ours = farm();
    ours.fields.insert("brook".to_owned(), Field::new("Brook field", AsTyped::parse("20 ac").unwrap()));
    let stamp = store::save(&path, &ours, None).unwrap();
    ours.fields.swap_indices(0, 1);
    store::save(&path, &ours, Some(stamp)).unwrap();
    assert_eq!(store::open(&path).unwrap().0.fields.keys().collect::<Vec<_>>(), ["brook", "mill-field"]);
}

#[test]
fn a_change_by_somebody_else_is_not_written_over() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("farm.ron");
    let stamp = store::save(&path, &farm(), None).unwrap();
    let mut theirs = farm();
    theirs.name = "Theirs".to_owned();
    store::save(&path, &theirs, None).unwrap();
    let mut ours = farm();
    ours.name = "Ours".to_owned();
    assert!(matches!(store::save(&path, &ours, Some(stamp)), Err(StoreError::ChangedOnDisk { .. })));
    assert_eq!(store::open(&path).unwrap().0.name, "Theirs");
}

#[test]
fn a_report_takes_the_place_of_a_report_and_of_nothing_else() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("there");
    let farm = write(&farm()).unwrap();
    let commented = format!("\u{feff}// mine\n/* old */ #![enable(implicit_some)]\n{farm}");
    let broken = "// half\nFarm(\n    form";
    let pdf = "%PDF-1.7 old";
    let csv = "record,pass\n";
    for (there, report, is_replaced) in [
        ("", Report::Pdf, true),
        ("", Report::Csv, true),
        (pdf, Report::Pdf, true),
        (csv, Report::Csv, true),
        (pdf, Report::Csv, false),
        (csv, Report::Pdf, false),
        ("some notes", Report::Pdf, false),
        (&farm, Report::Pdf, false),
        (&farm, Report::Csv, false),
        (&commented, Report::Csv, false),
        (broken, Report::Csv, false),
    ] {
        fs::write(&path, there).unwrap();
        let put = store::put_report(&path, b"new", report);
        let now = fs::read_to_string(&path).unwrap();
        assert_eq!(now, if is_replaced { "new" } else { there }, "{report:?} over {there}");
        if !is_replaced {
            let says = put.unwrap_err().to_string();
            assert!(says.contains("left alone; choose another name: "), "{says}");
        }
    }
}

#[cfg(unix)]
#[test]
fn a_link_is_followed_even_where_its_file_is_not_there_yet() {
    use std::os::unix::fs::symlink;
    let folder = tempfile::tempdir().unwrap();
    let (real, inner, outer) =
        (folder.path().join("real.ron"), folder.path().join("inner.ron"), folder.path().join("outer.ron"));
    symlink("real.ron", &inner).unwrap();
    symlink(&inner, &outer).unwrap();
    for text in ["first", "second"] {
        put::put(&outer, text.as_bytes()).unwrap();
        assert!(outer.is_symlink() && inner.is_symlink() && !real.is_symlink());
        assert_eq!(fs::read_to_string(&real).unwrap(), text);
    }
    let circle = folder.path().join("circle.ron");
    symlink(&circle, &circle).unwrap();
    assert!(put::put(&circle, b"nowhere").unwrap_err().to_string().contains("circle"));
}

#[test]
fn an_id_that_stands_twice_is_refused_with_its_place() {
    let good = fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/../../demo-farm/larkspur-bend.ron")).unwrap();
    for map in ["fields", "waters", "rigs", "products", "passes", "records"] {
        // The first entry of the map once more, before itself.
        let start = good.find(&format!("\n    {map}: {{\n")).unwrap() + format!("\n    {map}: {{\n").len();
        let end = start + good[start..].find("\n        ),\n").unwrap() + "\n        ),\n".len();
        let entry = &good[start..end];
        let id = entry.trim_start().split('"').nth(1).unwrap();
        let doubled = format!("{}{entry}{}", &good[..end], &good[end..]);
        let line = good[..end].lines().count() + 1;
        let says = message(&doubled);
        assert!(says.starts_with(&format!("line {line}, column ")), "{map}, {line}: {says}");
        assert!(says.ends_with(&format!("the id \"{id}\" stands twice")), "{map}: {says}");
    }
}

#[test]
fn sums_over_the_records_csv_are_the_records_sums() {
    use tankard_core::farm::{Record, RecordField, RecordLine};
    let field = |name: &str, area: &str| RecordField {
        crop: "corn".into(),
        ..RecordField::new(name, AsTyped::parse(area).unwrap())
    };
    let line = |name: &str, amount: &str| RecordLine::new(name, name, AsTyped::parse(amount).unwrap());
    let mut farm = farm();
    let record = Record {
        fields: [("a".to_owned(), field("A", "30 ha")), ("b".to_owned(), field("B", "10 ha"))].into(),
        volume: Some(AsTyped::parse("6000 L").unwrap()),
        lines: vec![line("liquid", "64 L"), line("dry", "8 kg")],
        note: "one, two".into(),
        ..Record::new("Two fields, \"quoted\"", "2031-06-12".parse().unwrap())
    };
    farm.records.insert("r".to_owned(), record);
    let text = tankard_file::records_csv::write(&farm, |_| true).unwrap();
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let head: Vec<String> = reader.headers().unwrap().iter().map(str::to_owned).collect();
    assert_eq!(head, tankard_file::records_csv::COLUMNS.map(|column| column.name));
    let rows: Vec<csv::StringRecord> = reader.records().map(Result::unwrap).collect();
    let column = |name: &str| head.iter().position(|column| column == name).unwrap();
    let sum = |name: &str| rows.iter().filter_map(|row| row[column(name)].parse::<f64>().ok()).sum::<f64>();
    assert_eq!(rows.len(), 4);
    for (name, expected) in [("spray_volume_l", 6000.0), ("amount_l", 64.0), ("amount_kg", 8.0)] {
        assert!((sum(name) - expected).abs() < 1e-9, "{name}: {}", sum(name));
    }
    assert_eq!(&rows[0][column("note")], "one, two");
}

#[test]
fn an_id_that_stands_twice_inside_a_pass_is_refused_too() {
    let mut farm = farm();
    let mut pass = tankard_core::farm::Pass::new("Pass", "2031-06-12".parse().unwrap());
    pass.parts.insert("mill-field".to_owned(), AsTyped::parse("20 ac").unwrap());
    farm.passes.insert("p".to_owned(), pass);
    let good = write(&farm).unwrap();
    let text = good.replace("\"mill-field\": \"20 ac\",", "\"mill-field\": \"20 ac\", \"mill-field\": \"5 ac\",");
    assert_ne!(text, good);
    assert!(message(&text).ends_with("the id \"mill-field\" stands twice"), "{}", message(&text));
}
