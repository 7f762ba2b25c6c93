//! How long planning takes: the demo farm, one keystroke on a big farm, and the two as a ratio.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use tankard_core::farm::{Farm, Field, Record};
use tankard_core::plan::plan;

fn plan_all(farm: &Farm) -> usize {
    farm.passes.keys().filter_map(|id| plan(farm, id)).map(|plan| plan.loads.len()).sum()
}

/// The demo farm grown to 400 fields and 2,000 records.
fn big(demo: &Farm) -> Farm {
    let mut farm = demo.clone();
    let fields: Vec<Field> = demo.fields.values().cloned().collect();
    let records: Vec<Record> = demo.records.values().cloned().collect();
    for n in 0..400 {
        if let Some(field) = fields.get(n % fields.len()) {
            farm.fields.insert(format!("field-{n}"), field.clone());
        }
    }
    for n in 0..2000 {
        if let Some(record) = records.get(n % records.len()) {
            farm.records.insert(format!("record-{n}"), record.clone());
        }
    }
    farm
}

fn planning(c: &mut Criterion) {
    let Ok(demo) = tankard::demo::farm() else { return };
    let large = big(&demo);
    let first = demo.passes.keys().next().cloned().unwrap_or_default();
    c.bench_function("replan the demo farm, all passes", |b| b.iter(|| plan_all(black_box(&demo))));
    c.bench_function("replan one pass of the demo farm", |b| b.iter(|| plan(black_box(&demo), &first)));
    c.bench_function("replan one pass of a farm with 400 fields and 2,000 records", |b| {
        b.iter(|| plan(black_box(&large), &first));
    });
    c.bench_function("read the demo farm's file", |b| {
        b.iter(|| tankard_file::read(black_box(tankard::demo::TEXT.as_bytes())));
    });
    c.bench_function("write the demo farm's file", |b| b.iter(|| tankard_file::write(black_box(&demo))));
}

criterion_group!(benches, planning);
criterion_main!(benches);
