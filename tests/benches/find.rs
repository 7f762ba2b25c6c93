//! Finding anything on a farm of 5,000 fields and 100,000 records: the index, and a letter.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use jiff::ToSpan;
use jiff::civil::date;
use tankard::find::index::Index;
use tankard_core::farm::{Farm, Field, Record, RecordField};
use tankard_core::quantity::{Area, AsTyped};

/// Fields in parishes, and records of twenty seasons on them, each with three of them.
fn farm(fields: usize, records: usize) -> Option<Farm> {
    let mut farm = Farm::new("Large");
    let area: AsTyped<Area> = AsTyped::parse("74.6 ac").ok()?;
    for number in 0..fields {
        let mut field = Field::new(&format!("Parish {} field {number}", number % 97), area.clone());
        let crop = ["corn", "soybean", "winter wheat", "oats"].get(number % 4).copied().unwrap_or_default();
        crop.clone_into(&mut field.crop);
        farm.fields.insert(format!("field-{number}"), field);
    }
    let first = date(2012, 1, 1);
    for number in 0..records {
        let day = first.checked_add(i64::try_from(number % 7_300).ok()?.days()).ok()?;
        let mut record = Record::new(&format!("Post emergence {}", number % 211), day);
        for step in 0..3 {
            let at = (number * 7 + step * 31) % fields;
            let (id, field) = farm.fields.get_index(at)?;
            record.fields.insert(id.clone(), RecordField::new(&field.name, area.clone()));
        }
        farm.records.insert(format!("record-{number}"), record);
    }
    Some(farm)
}

fn find(c: &mut Criterion) {
    let Some(farm) = farm(5_000, 100_000) else { return };
    let mut slow = c.benchmark_group("find anything, 5,000 fields, 100,000 records");
    slow.sample_size(10);
    slow.bench_function("all pieces of the index", |b| b.iter(|| Index::whole(black_box(&farm)).len()));
    slow.bench_function("the first frame, one piece", |b| {
        b.iter(|| {
            let mut index = Index::new(black_box(&farm));
            index.go_on(&farm);
            index.len()
        });
    });
    let index = Index::whole(&farm);
    for query in ["p", "pa", "parish 12", "2024-06", "june", "field 4711", "no such words"] {
        slow.bench_function(format!("a letter, to \"{query}\""), |b| b.iter(|| index.find(black_box(query)).count()));
    }
    slow.finish();
}

criterion_group!(benches, find);
criterion_main!(benches);
