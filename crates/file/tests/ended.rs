//! Work on files that is told of and ended: wherever it ends, nothing is left of it, and it ends at the next piece.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use std::fs;
use std::path::Path;
use std::sync::atomic::{AtomicUsize, Ordering};

use jiff::civil::date;
use tankard_core::farm::{Farm, Field, Record};
use tankard_core::progress::Cancelled;
use tankard_core::quantity::AsTyped;
use tankard_file::store::{self, Report, StoreError};
use tankard_file::{ReadError, ground, records_csv, records_import, records_json};

/// Ends work after it was told of so many pieces; counts how many it was told of.
struct Ends {
    after: usize,
    told: AtomicUsize,
}

impl Ends {
    fn after(after: usize) -> Self {
        Self { after, told: AtomicUsize::new(0) }
    }

    fn never() -> Self {
        Self::after(usize::MAX)
    }

    fn tell(&self) -> impl Fn(usize, Option<usize>) -> Result<(), Cancelled> + Sync + '_ {
        move |_, _| {
            let told = self.told.fetch_add(1, Ordering::Relaxed) + 1;
            if told > self.after { Err(Cancelled) } else { Ok(()) }
        }
    }

    fn told(&self) -> usize {
        self.told.load(Ordering::Relaxed)
    }
}

fn farm() -> Farm {
    let mut farm = Farm::new("Told of");
    for number in 0..40 {
        let id = format!("r{number}");
        farm.records.insert(id, Record::new("Burndown", date(2031, 5, 1)));
        farm.fields.insert(format!("f{number}"), Field::new("Mill field", AsTyped::parse("74.6 ac").unwrap()));
    }
    farm
}

fn names(folder: &Path) -> Vec<String> {
    fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect()
}

#[test]
fn a_report_that_is_ended_anywhere_leaves_the_old_file_and_no_other() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("records.csv");
    let bytes = vec![b'a'; 100_000];
    fs::write(&path, "what was there").unwrap();
    let mut after = 0;
    loop {
        let ends = Ends::after(after);
        match store::put_report_told(&path, &bytes, Report::Csv, &ends.tell()) {
            Err(StoreError::Cancelled(_)) => {
                assert_eq!(fs::read_to_string(&path).unwrap(), "what was there", "ended after {after}");
            }
            done => {
                done.unwrap();
                break;
            }
        }
        assert_eq!(names(folder.path()), ["records.csv"], "ended after {after}");
        after += 1;
    }
    // Made, written in seven pieces, its rights set, flushed.
    assert_eq!(after, 10);
    assert_eq!(fs::read(&path).unwrap(), bytes);
    assert_eq!(names(folder.path()), ["records.csv"]);
}

#[test]
fn reading_a_farm_tells_each_entry_gives_the_same_farm_and_ends_at_the_next() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("farm.ron");
    store::save(&path, &farm(), None).unwrap();
    let text = fs::read_to_string(&path).unwrap();
    // As the program wrote it, in one go.
    let ends = Ends::after(0);
    let ended = store::open_told(&path, &ends.tell());
    assert!(matches!(ended, Err(StoreError::Read { source: ReadError::Cancelled(_), .. })));
    // As a person may write it, which RON's own reader reads.
    fs::write(&path, text.replacen("\"Told of\"", "r\"Told of\"", 1)).unwrap();
    let ends = Ends::never();
    let (read, stamp) = store::open_told(&path, &ends.tell()).unwrap();
    assert_eq!((&read, stamp), (&farm(), store::open(&path).unwrap().1));
    // Before and after the quick reader gives up, each of the entries, and once at the end.
    assert_eq!(ends.told(), 83);
    for after in [0, 1, 2, 50, 80] {
        let ends = Ends::after(after);
        let ended = store::open_told(&path, &ends.tell());
        assert!(matches!(ended, Err(StoreError::Read { source: ReadError::Cancelled(_), .. })), "{after}");
        assert!(ends.told() <= after + 2, "it goes on after {after}");
    }
    // What does not read says the same with and without.
    fs::write(&path, "Farm(format: 1, name: \"a\", nothing: 3)").unwrap();
    let ends = Ends::never();
    let [told, untold] = [store::open_told(&path, &ends.tell()), store::open(&path)].map(|read| read.unwrap_err());
    assert_eq!(told.to_string(), untold.to_string());
}

#[test]
fn records_that_are_written_read_and_looked_at_end_at_the_next_piece() {
    let farm = farm();
    let text = records_csv::write(&farm, |_| true).unwrap();
    let never = Ends::never();
    assert_eq!(records_csv::write_told(&farm, |_| true, &never.tell()).unwrap(), text);
    assert_eq!(never.told(), 40);
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("records.csv");
    fs::write(&path, &text).unwrap();
    let coming = records_csv::read(text.as_bytes()).unwrap().records;
    let table =
        records_import::table(b"date,field,product,amount\n2031-05-01,Mill,Demo,3 L\n2031-05-02,Mill,Demo,3 L\n");
    let table = table.unwrap();
    let mapping = records_import::guess(&table);
    assert_eq!(records_import::preview(&table, &mapping, &farm).records.len(), 2);
    let day = date(2031, 5, 1);
    let map = folder.path().join("fields.geojson");
    fs::write(&map, r#"{"type":"Point","coordinates":[-96.4,41.2]}"#).unwrap();
    for after in 0..2 {
        let ends = || Ends::after(after);
        assert!(records_csv::write_told(&farm, |_| true, &ends().tell()).is_err());
        assert!(records_json::write_told(&farm, |_| true, None, day, &ends().tell()).is_err());
        assert_eq!(records_csv::open(&path, &ends().tell()).unwrap_err().to_string(), "it was cancelled");
        assert_eq!(records_csv::alike_told(&farm, &coming, &ends().tell()), Err(Cancelled));
        assert!(records_import::preview_told(&table, &mapping, &farm, 9, &ends().tell()).is_err());
    }
    assert!(matches!(ground::open(&map, None, &Ends::after(0).tell()), Err(ground::GroundError::Cancelled(_))));
}
