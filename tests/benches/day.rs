//! How long a day takes: twelve passes on one rig, 60 loads in all, planned from nothing; and the order alone.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use jiff::Span;
use jiff::civil::{Date, Time, date};
use tankard_core::day::order::{Change, Job, Problem, solve};
use tankard_core::day::plan_day;
use tankard_core::farm::{
    Active, Day, Farm, Field, Formulation, Hour, Line, Pass, Place, Product, ProductKind, Rig, Says, Statement, SunTime,
};
use tankard_core::plan::{Plan, plan};
use tankard_core::quantity::{ActiveBasis, AsTyped, Quantity, QuantityError};

const DAY: Date = date(2031, 6, 12);

fn typed<Q: Quantity>(text: &str) -> Result<AsTyped<Q>, QuantityError> {
    AsTyped::parse(text)
}

/// Twelve passes of five loads each, five mixes of three products, two days of changing wind.
fn farm() -> Result<Farm, QuantityError> {
    let mut farm = Farm::new("A day");
    farm.place = Some(Place {
        latitude: "41.2".to_owned(),
        longitude: "-96.4".to_owned(),
        zone: "America/Chicago".to_owned(),
        ..Place::default()
    });
    let begin = DAY.at(0, 0, 0, 0);
    for n in 0..48 {
        let mut hour = Hour::new(begin.saturating_add(Span::new().hours(n)));
        hour.temperature = Some(typed(&format!("{} °F", 60 + (n * 7) % 25))?);
        hour.humidity = Some(typed(&format!("{} %", 40 + (n * 11) % 50))?);
        hour.wind = Some(typed(&format!("{} mph", 4 + (n / 5 * 3) % 8))?);
        hour.rain_chance = Some(typed("10 %")?);
        hour.cloud = Some(typed("90 %")?);
        farm.forecast.hours.push(hour);
    }
    for n in 0..7 {
        let mut product = Product::new(&format!("Product {n} (demo)"), ProductKind::Herbicide, Formulation::SC);
        let name = if n == 3 { "dicamba".to_owned() } else { format!("zine {n}") };
        let basis = ActiveBasis::ActiveIngredient;
        product.actives.push(Active { name, group: "9".to_owned(), basis, content: typed("240 g/L")? });
        product.label = vec![
            Statement::new(Says::Wind { most: typed(&format!("{} mph", 8 + n))?, least: None, gust: None }, "page 3"),
            Statement::new(Says::Daylight { from: SunTime::SUNRISE, to: SunTime::SUNSET }, "page 3"),
        ];
        farm.products.insert(format!("p{n}"), product);
    }
    let mut rig = Rig::new("Rig", typed("300 gal")?);
    (rig.boom, rig.speed, rig.efficiency) = (Some(typed("120 ft")?), Some(typed("12 mph")?), Some(typed("65 %")?));
    rig.road_speed = Some(typed("20 mph")?);
    farm.rigs.insert("r".to_owned(), rig);
    let decided = Day { from: Some(Time::constant(5, 0, 0, 0)), ..Day::default() };
    farm.days.insert(DAY.to_string(), decided);
    for n in 0..12 {
        let mut field = Field::new(&format!("Field {n}"), typed(&format!("{} ac", 145 + n % 5))?);
        if n % 4 == 0 { "soybean" } else { "corn" }.clone_into(&mut field.crop);
        field.road = Some(typed(&format!("{} mi", 1 + (n * 5) % 7))?);
        farm.fields.insert(format!("f{n}"), field);
        let mut pass = Pass::new(&format!("Pass {n}"), DAY);
        pass.fields = vec![format!("f{n}")];
        "r".clone_into(&mut pass.rig);
        pass.carrier = Some(typed("10 gal/ac")?);
        for product in n % 5..n % 5 + 3 {
            pass.mix.push(Line::new(&format!("p{product}"), typed("16 fl oz/ac")?));
        }
        farm.passes.insert(format!("pass-{n}"), pass);
    }
    Ok(farm)
}

/// Twelve jobs with two runs of time each, five mixes and roads on a grid.
fn twelve() -> Problem {
    let far =
        |one: i64, other: i64| 120 * ((one * 7 % 11 - other * 7 % 11).abs() + (one * 5 % 13 - other * 5 % 13).abs());
    let change = |one: i64, other: i64| {
        let clean_out = one % 5 != other % 5;
        Change {
            takes: far(one, other) + if clean_out { 2700 } else { 0 },
            clean_out,
            parted: false,
            hurts: clean_out && (one + 2 * other) % 5 == 1,
        }
    };
    Problem {
        jobs: (0..12)
            .map(|n| {
                let allowed = vec![(18_000 + n * 900, 36_000), (54_000, 72_000 + n * 1200)];
                Job { takes: 2400 + n * 120, allowed, possible: vec![(18_000, 80_000)], ..Job::default() }
            })
            .collect(),
        first: (0..12).map(|n| Change { takes: far(n, 0), ..Change::default() }).collect(),
        between: (0..12).map(|one| (0..12).map(|other| change(one, other)).collect()).collect(),
        home: (0..12).map(|n| far(n, 0)).collect(),
        from: 18_000,
        to: None,
    }
}

fn days(c: &mut Criterion) {
    let problem = twelve();
    c.bench_function("the best order of 12 jobs", |b| b.iter(|| solve(black_box(&problem)).cost));
    let Ok(farm) = farm() else { return };
    let plans = |farm: &Farm| -> Vec<Plan> { farm.passes.keys().filter_map(|id| plan(farm, id)).collect() };
    let all = plans(&farm);
    let loads: usize = all.iter().map(|plan| plan.loads.len()).sum();
    c.bench_function(&format!("a day of 12 passes and {loads} loads, from nothing"), |b| {
        b.iter(|| {
            let plans = plans(black_box(&farm));
            plan_day(&farm, DAY, &plans.iter().collect::<Vec<_>>()).rigs.len()
        });
    });
    let plans: Vec<&Plan> = all.iter().collect();
    c.bench_function("of it, the day", |b| b.iter(|| plan_day(black_box(&farm), DAY, &plans).rigs.len()));
}

criterion_group!(benches, days);
criterion_main!(benches);
