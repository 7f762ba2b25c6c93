//! How long load cards take: one card as PDF, all cards of the demo farm in one PDF, and the sheet of a day of eight passes with
//! its cards behind it.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use tankard_core::day::plan_day;
use tankard_core::day::sheet::sheet;
use tankard_core::farm::CardContent;
use tankard_core::loads::card::cards;
use tankard_core::plan::{Plan, plan};
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
    // A day of eight passes: those of the demo farm and the first once more, all on its first day.
    let mut busy = farm.clone();
    let day = busy.passes.first().map(|(_, pass)| pass.date).unwrap_or_default();
    let again = busy.passes.first().map(|(_, pass)| pass.clone());
    busy.passes.extend(again.map(|pass| ("again".to_owned(), pass)));
    for pass in busy.passes.values_mut() {
        pass.date = day;
    }
    let plans: Vec<Plan> = busy.passes.keys().filter_map(|id| plan(&busy, id)).collect();
    let of_day: Vec<&Plan> = plans.iter().collect();
    let behind: Vec<CardContent> = plans.iter().flat_map(|plan| cards(&busy, plan)).collect();
    let title =
        format!("the sheet of {} passes and its {} cards as one PDF, changed each time", plans.len(), behind.len());
    let mut round = 0;
    group.bench_function(title, |b| {
        b.iter(|| {
            let planned = plan_day(&busy, day, &of_day);
            let mut content = sheet(&busy, day, &of_day, &planned.slots().collect::<Vec<_>>());
            let mut behind = behind.clone();
            round += 1;
            content.note = format!("change {round}");
            for card in &mut behind {
                card.note.clone_from(&content.note);
            }
            black_box(tankard_paper::evening::pdf(&content, &sheets(&behind)).map(|bytes| bytes.len()))
        });
    });
    // As many loads as a contractor's busiest day has, each card another.
    let many: Vec<CardContent> = all
        .iter()
        .cycle()
        .take(200)
        .enumerate()
        .map(|(at, card)| CardContent { note: format!("load {at} of the day"), ..card.clone() })
        .collect();
    let mut round = 0;
    group.bench_function("200 cards as one PDF, changed each time", |b| {
        b.iter(|| {
            round += 1;
            let mut many = many.clone();
            for card in &mut many {
                card.note = format!("{}, {round}", card.note);
            }
            black_box(tankard_paper::pdf(&sheets(&many)).map(|bytes| bytes.len()))
        });
    });
    group.finish();
}

criterion_group!(benches, printing);
criterion_main!(benches);
