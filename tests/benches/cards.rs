//! How long load cards take: one card as PDF and as a preview, and all cards of the demo farm in one PDF.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use tankard_core::farm::CardContent;
use tankard_core::loads::card::cards;
use tankard_core::plan::plan;
use tankard_paper::Sheet;

fn sheets(contents: &[CardContent]) -> Vec<Sheet<'_>> {
    contents.iter().map(|content| Sheet { number: "2031-0001", issued: None, reprint: None, content }).collect()
}

fn printing(c: &mut Criterion) {
    let Ok(farm) = tankard::demo::farm() else { return };
    let all: Vec<CardContent> =
        farm.passes.keys().filter_map(|id| plan(&farm, id)).flat_map(|plan| cards(&farm, &plan)).collect();
    let mut group = c.benchmark_group("cards");
    group.sample_size(10);
    group.bench_function("one card as PDF, changed each time", |b| {
        let mut round = 0;
        b.iter(|| {
            round += 1;
            let mut one: Vec<CardContent> = all.iter().take(1).cloned().collect();
            for card in &mut one {
                card.note = format!("change {round}");
            }
            black_box(tankard_paper::pdf(&sheets(&one)).map(|bytes| bytes.len()))
        });
    });
    group.bench_function(format!("all {} cards of the demo farm as one PDF", all.len()), |b| {
        b.iter(|| black_box(tankard_paper::pdf(&sheets(&all)).map(|bytes| bytes.len())));
    });
    group.finish();
}

criterion_group!(benches, printing);
criterion_main!(benches);
