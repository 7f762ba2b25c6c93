//! How long a log of ten seasons of 2,000 records takes: to read, to lay out for the review, to filter, and page by page.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use tankard_core::farm::{AdjuvantClass, Farm};
use tankard_core::season::review::compare::{Of, Side, compare};
use tankard_core::season::review::{Choice, Index, review, weather};
use tankard_core::season::totals;
use tankard_tests::log::{Shape, farm};

fn log(c: &mut Criterion) {
    let shape = Shape { seasons: 10, records: 2_000, fields: 60, untidy: false, seed: 7 };
    let Ok(farm) = farm(shape) else { return };
    let Ok(text) = tankard_file::write(&farm) else { return };
    let mut slow = c.benchmark_group("ten seasons of 2,000 records");
    slow.sample_size(10);
    slow.bench_function(format!("read ({} MB)", text.len() / 1_000_000), |b| {
        b.iter(|| tankard_file::read(black_box(text.as_bytes())).map(|farm| farm.records.len()));
    });
    slow.bench_function("write", |b| b.iter(|| tankard_file::write(black_box(&farm)).map(|text| text.len())));
    slow.bench_function("lay out for the review", |b| b.iter(|| Index::of(black_box(&farm)).seasons().len()));
    slow.bench_function("the weather of one season", |b| b.iter(|| weather_of(black_box(&farm))));
    slow.finish();

    let index = Index::of(&farm);
    let fields: Vec<String> = index.fields().take(20).map(|(id, _)| id.clone()).collect();
    let choices = [
        ("all", Choice::all()),
        ("one season", Choice::season(2035)),
        ("20 fields and a crop", Choice { fields, crops: vec!["corn".to_owned()], ..Choice::all() }),
    ];
    for (name, choice) in choices {
        c.bench_function(&format!("filter and all pages, {name}"), |b| {
            b.iter(|| review(&index.pick(black_box(&choice))).passes.passes);
        });
        c.bench_function(&format!("filter alone, {name}"), |b| b.iter(|| index.pick(black_box(&choice)).records()));
    }
    let picked = index.pick(&Choice::all());
    let side = |of| Side { name: String::new(), of };
    let (one, other) = (Of::With(AdjuvantClass::CropOilConcentrate), Of::With(AdjuvantClass::MethylatedSeedOil));
    let (one, other) = (side(one), side(other));
    c.bench_function("compare two adjuvants, all effects", |b| {
        b.iter(|| compare(black_box(&picked), None, &one, &other).comparisons.len());
    });
    c.bench_function("totals of a season without an index", |b| b.iter(|| totals(black_box(&farm), 2035).passes));
}

fn weather_of(farm: &Farm) -> usize {
    let of_season = farm.records.iter().filter(|(_, record)| record.date.year() == 2035);
    of_season.map(|(id, _)| weather::of_record(farm, id).len()).sum()
}

criterion_group!(benches, log);
criterion_main!(benches);
