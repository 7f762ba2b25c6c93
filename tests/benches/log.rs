//! How long a log of ten seasons of 2,000 records takes: to open, to save, to check its seals, to look up and to plan over, to find in, to
//! lay out for the review, and the review page by page.

use std::hint::black_box;

use criterion::{BatchSize, Criterion, criterion_group, criterion_main};
use jiff::civil::date;
use tankard::document::Document;
use tankard_core::farm::{AdjuvantClass, Farm, Id, Record, differs};
use tankard_core::plan::{plan, plan_of};
use tankard_core::season::review::compare::{Of, Side, compare};
use tankard_core::season::review::{self, Choice, Index, Picked, weather};
use tankard_core::season::{Log, field, find, profile, seal, totals, used};
use tankard_core::stock::Accounts;
use tankard_file::backups::{Backups, Keep};
use tankard_file::records_csv;
use tankard_file::store::Save;
use tankard_tests::log::{self, FIRST, Shape};

/// A log of ten seasons on 60 fields.
fn of_ten_seasons(records: u32) -> Option<Farm> {
    log::farm(Shape { seasons: 10, records, fields: 60, untidy: false, seed: 7 }).ok()
}

/// What is done now and then.
fn seldom(c: &mut Criterion, farm: &Farm) {
    let Ok(text) = tankard_file::write(farm) else { return };
    let Ok(csv) = records_csv::write(farm, |_| true) else { return };
    let at = date(FIRST + 10, 1, 7).at(12, 0, 0, 0);
    let mut signed = farm.clone();
    for record in signed.records.values_mut() {
        *record = seal::sign(record, "A. Demo", at).unwrap_or_else(|_| record.clone());
    }
    let mut slow = c.benchmark_group("ten seasons of 2,000 records");
    slow.sample_size(10);
    slow.bench_function(format!("open ({} MB)", text.len() / 1_000_000), |b| {
        b.iter(|| tankard_file::read(black_box(text.as_bytes())).map(|farm| farm.records.len()));
    });
    slow.bench_function("write", |b| b.iter(|| tankard_file::write(black_box(farm)).map(|text| text.len())));
    let mut document = Document::new(farm.clone());
    let mut edits = 0_u32;
    slow.bench_function("make a snapshot to save, after an edit, which the window waits for", |b| {
        b.iter(|| {
            edits += 1;
            document.edit(|farm| farm.name = edits.to_string());
            document.take_point();
            document.snapshot().state().revision
        });
    });
    slow.bench_function("save with a backup, on its thread", |b| {
        let Ok(folder) = tempfile::tempdir() else { return };
        let (path, mut count) = (folder.path().join("farm.ron"), 0_u32);
        let backups =
            Backups { keep: Keep { latest: 2, days: 0 }, now: date(FIRST, 6, 12).at(12, 0, 0, 0), spare: None };
        b.iter(|| {
            count += 1;
            document.edit(|farm| farm.name = count.to_string());
            let farm = document.snapshot().into_farm();
            Save { path: &path, farm: &farm, stamp: None, backups: Some(&backups) }.run().is_ok()
        });
    });
    slow.bench_function("what differs from a backup", |b| {
        let mut backup = farm.clone();
        backup.records.shift_remove_index(7);
        b.iter(|| differs::between(black_box(&backup), black_box(farm)).nouns.len());
    });
    slow.bench_function("verify the seals, all signed", |b| b.iter(|| seal::findings(black_box(&signed)).len()));
    slow.bench_function("write as CSV", |b| {
        b.iter(|| records_csv::write(black_box(farm), |_| true).map(|csv| csv.len()));
    });
    slow.bench_function("read from CSV", |b| {
        b.iter(|| records_csv::read(black_box(csv.as_bytes())).map(|reading| reading.records.len()));
    });
    slow.bench_function("lay out for the review", |b| b.iter(|| Index::of(black_box(farm)).seasons().len()));
    slow.bench_function("the weather of one season", |b| b.iter(|| weather_of(black_box(farm))));
    slow.finish();
}

/// A log with a pass of the demo over six of their fields.
fn with_pass(log: &Farm, demo: &Farm) -> (Farm, Id) {
    let (mut farm, id) = (log.clone(), "pass".to_owned());
    let date = date(FIRST + 9, 6, 12);
    for field in farm.fields.values_mut() {
        (field.crop, field.planted) = ("corn".to_owned(), date.checked_sub(jiff::Span::new().days(45)).ok());
    }
    farm.products.extend(demo.products.clone());
    farm.rigs.extend(demo.rigs.clone());
    farm.waters.extend(demo.waters.clone());
    if let Some(pass) = demo.passes.values().max_by_key(|pass| pass.mix.len()) {
        let mut pass = pass.clone();
        (pass.date, pass.fields) = (date, farm.fields.keys().take(6).cloned().collect());
        pass.parts.clear();
        // The records hold what the pass sprays, so that its season totals, spacing and groups have something to count.
        let mix: Vec<&Id> = pass.mix.iter().map(|line| &line.product).collect();
        for (n, line) in farm.records.values_mut().flat_map(|record| &mut record.lines).enumerate() {
            let known = |id: &Id| demo.products.get(id).map(tankard_core::farm::Product::is_liquid);
            let is_liquid = matches!(line.amount.value(), tankard_core::quantity::Amount::Volume(_));
            if let Some(id) = mix.get(n % mix.len()).filter(|id| known(id) == Some(is_liquid)) {
                line.product = id.as_str().into();
            }
        }
        farm.passes.insert(id.clone(), pass);
    }
    (farm, id)
}

/// What a letter typed costs.
fn letters(c: &mut Criterion, farm: &Farm, demo: &Farm) {
    for (name, records) in [("200", 20), ("20,000", 2_000)] {
        let Some(log) = of_ten_seasons(records) else { return };
        let (farm, pass) = with_pass(&log, demo);
        let known = Log::of(&farm);
        c.bench_function(&format!("look up {name} records by field and pass"), |b| {
            b.iter(|| Log::of(black_box(&farm)));
        });
        c.bench_function(&format!("plan six fields over {name} records"), |b| b.iter(|| plan(black_box(&farm), &pass)));
        c.bench_function(&format!("plan six fields over {name} records, looked up before"), |b| {
            b.iter(|| plan_of(black_box(&farm), &known, &pass));
        });
        let now = date(FIRST + 9, 6, 12).at(6, 0, 0, 0);
        c.bench_function(&format!("the page of a field among {name} records, looked up before"), |b| {
            let field = farm.fields.keys().next().map(String::as_str).unwrap_or_default();
            b.iter(|| field::page(black_box(&farm), &known, field, now).map(|page| page.sprayed.len()));
        });
        c.bench_function(&format!("accounts of the shed over {name} records"), |b| {
            b.iter(|| Accounts::of(black_box(&farm)));
        });
    }
    let first = farm.records.values().next();
    let all = || farm.records.values();
    let texts: Vec<String> = all().map(find::text).collect();
    let words = find::words("corn glyph");
    c.bench_function("find in 20,000 records, the first letter", |b| {
        b.iter(|| all().filter(|record| find::holds(&find::text(record), black_box(&words))).count());
    });
    c.bench_function("find in 20,000 records, each letter after it", |b| {
        b.iter(|| texts.iter().filter(|text| find::holds(text, black_box(&words))).count());
    });
    c.bench_function("who sprayed before", |b| {
        b.iter(|| used::before(black_box(farm), |record: &Record| [record.operator.as_str()]));
    });
    c.bench_function("the certificate of an operator", |b| {
        b.iter(|| used::certificate_of(black_box(farm), "", "A. Demo"));
    });
    if let Some(record) = first {
        c.bench_function("what is open of one record", |b| {
            b.iter(|| profile::open(black_box(farm), record, record.date));
        });
    }
    c.bench_function("totals of a season without an index", |b| b.iter(|| totals(black_box(farm), 2035).passes));
    let mut slow = c.benchmark_group("a point for undo");
    slow.sample_size(10);
    slow.bench_function("after another record was edited", |b| {
        let mut document = Document::new(farm.clone());
        b.iter(|| {
            document.edit(|farm| {
                if let Some((_, record)) = farm.records.last_mut() {
                    record.note = format!("{}.", record.note).into();
                }
            });
            document.take_point();
        });
    });
    slow.bench_function("back one step and forth again", |b| {
        let mut document = Document::new(farm.clone());
        document.edit(|farm| "other".clone_into(&mut farm.name));
        document.take_point();
        b.iter_batched(|| (), |()| (document.undo(), document.redo()), BatchSize::SmallInput);
    });
    slow.finish();
}

type Page = (&'static str, fn(&Picked<'_>) -> usize);

/// The pages, each with a count of its own so that none is left out as unused.
const PAGES: [Page; 9] = [
    ("passes", |picked| black_box(review::passes::page(picked)).months.len()),
    ("products", |picked| black_box(review::products::page(picked)).rows.len()),
    ("actives", |picked| black_box(review::actives::page(picked)).rows.len()),
    ("resistance", |picked| black_box(review::resistance::page(picked)).fields.len()),
    ("adjuvants", |picked| black_box(review::adjuvants::page(picked)).rows.len()),
    ("planned", |picked| black_box(review::planned::page(picked)).worst.len()),
    ("cost", |picked| black_box(review::cost::page(picked)).fields.len()),
    ("work", |picked| black_box(review::work::page(picked)).rigs.len()),
    ("outcomes", |picked| black_box(review::outcomes::page(picked)).rows.len()),
];

fn pages(c: &mut Criterion, farm: &Farm) {
    let index = Index::of(farm);
    let fields: Vec<String> = index.fields().take(20).map(|(id, _)| id.clone()).collect();
    let choices = [
        ("all", Choice::all()),
        ("one season", Choice::season(2035)),
        ("20 fields and a crop", Choice { fields, crops: vec!["corn".to_owned()], ..Choice::all() }),
    ];
    for (name, choice) in choices {
        c.bench_function(&format!("filter alone, {name}"), |b| b.iter(|| index.pick(black_box(&choice)).records()));
        let picked = index.pick(&choice);
        for (page, of) in PAGES {
            c.bench_function(&format!("page of {page}, {name}"), |b| b.iter(|| of(black_box(&picked))));
        }
    }
    let picked = index.pick(&Choice::all());
    let side = |of| Side { name: String::new(), of };
    let (one, other) = (Of::With(AdjuvantClass::CropOilConcentrate), Of::With(AdjuvantClass::MethylatedSeedOil));
    let (one, other) = (side(one), side(other));
    c.bench_function("compare two adjuvants, all effects", |b| {
        b.iter(|| compare(black_box(&picked), None, &one, &other).comparisons.len());
    });
}

fn weather_of(farm: &Farm) -> usize {
    let of_season = farm.records.iter().filter(|(_, record)| record.date.year() == 2035);
    of_season.map(|(id, _)| weather::of_record(farm, id).len()).sum()
}

fn log(c: &mut Criterion) {
    let (Some(farm), Ok(demo)) = (of_ten_seasons(2_000), tankard::demo::farm()) else { return };
    seldom(c, &farm);
    letters(c, &farm, &demo);
    pages(c, &farm);
}

criterion_group!(benches, log);
criterion_main!(benches);
