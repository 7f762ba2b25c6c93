//! Boundaries of a county: 2,000 fields with 200,000 points read from GeoJSON and mended. It is to take less than 2 s.

use criterion::{Criterion, criterion_group, criterion_main};
use tankard_core::farm::Farm;
use tankard_file::ground::{read, suggest, take};
use tankard_tests::ground::{farm, geojson};

fn import(criterion: &mut Criterion) {
    let text = geojson(2000, 100);
    let mut group = criterion.benchmark_group("ground");
    group.sample_size(10);
    group.bench_function("read and mend 2,000 fields, 200,000 points", |bench| {
        bench.iter(|| read("county.geojson", text.as_bytes(), &[], None));
    });
    let one = geojson(1, 50_000);
    group.bench_function("read and mend a field of 50,000 points", |bench| {
        bench.iter(|| read("winding.geojson", one.as_bytes(), &[], None));
    });
    let (Ok(found), Ok(known)) = (read("county.geojson", text.as_bytes(), &[], None), farm(2000, 100)) else { return };
    group.bench_function("match 2,000 pieces to 2,000 fields", |bench| bench.iter(|| suggest(&known, &found)));
    let empty = Farm::new("Empty");
    group.bench_function("take 2,000 new fields", |bench| {
        let becomes = suggest(&empty, &found);
        bench.iter(|| take(&empty, &found, &becomes));
    });
    group.finish();
}

criterion_group!(benches, import);
criterion_main!(benches);
