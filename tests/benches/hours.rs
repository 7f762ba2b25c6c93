//! How long it takes to judge a week of hours for 50 passes, and what of it the forecast itself costs.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use jiff::Span;
use jiff::civil::date;
use tankard_core::farm::{
    Farm, Field, Formulation, Hour, Line, Neighbour, Pass, Place, Product, ProductKind, Says, Statement, SunTime,
};
use tankard_core::quantity::{AsTyped, Duration, Quantity, QuantityError};
use tankard_core::weather::hours::judge_days;
use tankard_core::weather::{Outlook, limits};

fn typed<Q: Quantity>(text: &str) -> Result<AsTyped<Q>, QuantityError> {
    AsTyped::parse(text)
}

/// 168 hours, and 50 passes of five products over three fields, each label with six words on the weather.
fn farm() -> Result<Farm, QuantityError> {
    let mut farm = Farm::new("A week");
    farm.place = Some(Place {
        latitude: "41.2".to_owned(),
        longitude: "-96.4".to_owned(),
        zone: "America/Chicago".to_owned(),
        ..Place::default()
    });
    let first = date(2031, 6, 12).at(0, 0, 0, 0);
    for n in 0..168 {
        let mut hour = Hour::new(first.saturating_add(Span::new().hours(n)));
        hour.temperature = Some(typed(&format!("{} °F", 60 + (n * 7) % 25))?);
        hour.humidity = Some(typed(&format!("{} %", 40 + (n * 11) % 50))?);
        hour.wind = Some(typed(&format!("{} mph", 2 + (n * 5) % 11))?);
        hour.gust = Some(typed(&format!("{} mph", 4 + (n * 5) % 14))?);
        hour.wind_from = Some(typed(&format!("{}", (n * 17) % 360))?);
        hour.rain = Some(typed(if n % 40 == 0 { "1 mm" } else { "0 mm" })?);
        hour.cloud = Some(typed(&format!("{} %", (n * 13) % 100))?);
        farm.forecast.hours.push(hour);
    }
    for n in 0..3 {
        let mut field = Field::new(&format!("Field {n}"), typed("80 ac")?);
        "soybean".clone_into(&mut field.crop);
        field.neighbours = vec![
            Neighbour { what: "creek".to_owned(), side: "N".to_owned(), distance: None },
            Neighbour { what: "vineyard".to_owned(), side: "SE".to_owned(), distance: None },
        ];
        farm.fields.insert(format!("f{n}"), field);
    }
    for n in 0..5 {
        let mut product = Product::new(&format!("Product {n} (demo)"), ProductKind::Herbicide, Formulation::SL);
        let says = [
            Says::Wind { most: typed(&format!("{} mph", 8 + n))?, least: Some(typed("3 mph")?), gust: None },
            Says::NoInversion,
            Says::RainFree { hours: 1 + n },
            Says::Daylight { from: SunTime { sunset: false, minutes: 60 }, to: SunTime::SUNSET },
            Says::Temperature { least: None, most: Some(typed("85 °F")?) },
            Says::NotToward { what: "vineyards, beehives".to_owned() },
        ];
        product.label.extend(says.into_iter().map(|says| Statement::new(says, "page 3")));
        farm.products.insert(format!("p{n}"), product);
    }
    for n in 0..50 {
        let mut pass = Pass::new(&format!("Pass {n}"), date(2031, 6, 12));
        pass.fields = (0..3).map(|n| format!("f{n}")).collect();
        for n in 0..5 {
            pass.mix.push(Line::new(&format!("p{n}"), typed("1 pt/ac")?));
        }
        farm.passes.insert(format!("pass-{n}"), pass);
    }
    Ok(farm)
}

fn judging(c: &mut Criterion) {
    let Ok(farm) = farm() else { return };
    let needs = Some(Duration::from_hours(3.0));
    c.bench_function("what a week of 168 hours comes to", |b| b.iter(|| Outlook::of(black_box(&farm)).skies().count()));
    c.bench_function("the limits of a pass", |b| {
        b.iter(|| farm.passes.first().map(|(_, pass)| limits::of(black_box(&farm), pass).len()));
    });
    c.bench_function("judge a week of 168 hours for 50 passes", |b| {
        b.iter(|| {
            let outlook = Outlook::of(black_box(&farm));
            farm.passes.values().map(|pass| judge_days(&farm, &outlook, pass, needs).len()).sum::<usize>()
        });
    });
}

criterion_group!(benches, judging);
criterion_main!(benches);
