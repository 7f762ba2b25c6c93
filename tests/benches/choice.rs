//! How long the choice of adjuvants takes: 40 in the shed, 8 products in the mix, every class spoken of. The whole plan is
//! measured, so the choice itself takes less; the same plan with an empty shed tells how much less.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use tankard_core::farm::label::{Says, Stance};
use tankard_core::farm::{
    Active, AdjuvantClass, Farm, Field, Formulation, Line, Pass, Product, ProductKind, Rig, Statement,
};
use tankard_core::plan::plan;
use tankard_core::quantity::{ActiveBasis, AsTyped, Quantity, QuantityError};

fn typed<Q: Quantity>(text: &str) -> Result<AsTyped<Q>, QuantityError> {
    AsTyped::parse(text)
}

/// Eight herbicides that each have a word for or against every class, and so many adjuvants, spread over all classes; every
/// fifth may not go with another of the shed.
fn farm(adjuvants: usize) -> Result<Farm, QuantityError> {
    let mut farm = Farm::new("Many adjuvants");
    let mut field = Field::new("Field", typed("80 ac")?);
    "corn".clone_into(&mut field.crop);
    farm.fields.insert("f".to_owned(), field);
    farm.rigs.insert("r".to_owned(), Rig::new("Rig", typed("1200 gal")?));
    let mut pass = Pass::new("Pass", jiff::civil::date(2031, 6, 12));
    pass.fields = vec!["f".to_owned()];
    "r".clone_into(&mut pass.rig);
    pass.carrier = Some(typed("15 gal/ac")?);
    let actives =
        ["glyphosate", "mesotrione", "atrazine", "dicamba", "nicosulfuron", "bromoxynil", "tembotrione", "clopyralid"];
    for (at, active) in actives.into_iter().enumerate() {
        let mut product = Product::new(&format!("{active} SC (demo)"), ProductKind::Herbicide, Formulation::SC);
        product.actives.push(Active {
            name: active.to_owned(),
            group: String::new(),
            basis: ActiveBasis::ActiveIngredient,
            content: typed("240 g/L")?,
        });
        for (n, class) in AdjuvantClass::ALL.into_iter().enumerate() {
            let stance = match (at + n) % 4 {
                1 => Stance::Preferred,
                3 => Stance::Discouraged,
                _ => Stance::Allowed,
            };
            let says = Says::Adjuvant { class, stance, least: None, most: None, at_least: None, at_most: None };
            product.label.push(Statement::new(says, "page 3"));
        }
        farm.products.insert(active.to_owned(), product);
        pass.mix.push(Line::new(active, typed("8 fl oz/ac")?));
    }
    for (n, class) in AdjuvantClass::ALL.into_iter().cycle().enumerate().take(adjuvants) {
        let mut product = Product::new(&format!("Adjuvant {n} (demo)"), ProductKind::Adjuvant, Formulation::SL);
        product.class = Some(class);
        product.price = Some(typed(&format!("{}/gal", 5 + n % 17))?);
        product.label.push(Statement::new(Says::Rate { least: Some(typed("0.25 % v/v")?), most: None }, "page 1"));
        if n % 5 == 0 {
            let what = format!("Adjuvant {} (demo)", (n + 7) % 40);
            product.label.push(Statement::new(Says::NotWith { what, days: 0 }, "page 2"));
        }
        farm.products.insert(format!("adjuvant-{n}"), product);
    }
    farm.passes.insert("p".to_owned(), pass);
    Ok(farm)
}

fn choosing(c: &mut Criterion) {
    for (adjuvants, name) in
        [(0, "plan 8 products, nothing to choose from"), (40, "plan 8 products and choose among 40 adjuvants")]
    {
        let Ok(farm) = farm(adjuvants) else { continue };
        c.bench_function(name, |b| b.iter(|| plan(black_box(&farm), "p").map(|plan| plan.adjuvants.choices.len())));
    }
}

criterion_group!(benches, choosing);
criterion_main!(benches);
