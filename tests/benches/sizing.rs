//! How long load sizes take: a pass of 60 loads with six products, 1,200 marks in the tank, and every alternative beside.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use tankard_core::farm::{
    Container, ContainerKind, Farm, Field, Formulation, Line, LoadSplit, Pass, Product, ProductKind, Rig,
};
use tankard_core::plan::plan;
use tankard_core::quantity::{AsTyped, Quantity, QuantityError};

fn typed<Q: Quantity>(text: &str) -> Result<AsTyped<Q>, QuantityError> {
    AsTyped::parse(text)
}

fn farm(split: LoadSplit, sizes: usize) -> Result<Farm, QuantityError> {
    let mut farm = Farm::new("Sixty loads");
    farm.fields.insert("f".to_owned(), Field::new("Field", typed("4777.3 ac")?));
    let mut rig = Rig::new("Rig", typed("1200 gal")?);
    rig.mark = Some(typed("1 gal")?);
    rig.least = Some(typed("100 gal")?);
    farm.rigs.insert("r".to_owned(), rig);
    let mut pass = Pass::new("Pass", jiff::civil::date(2031, 6, 12));
    pass.fields = vec!["f".to_owned()];
    "r".clone_into(&mut pass.rig);
    pass.carrier = Some(typed("15 gal/ac")?);
    pass.split = split;
    pass.sizes = (0..sizes).map(|_| typed("1200 gal")).collect::<Result<_, _>>()?;
    for (at, rate) in
        ["22 fl oz/ac", "3.2 fl oz/ac", "1.37 pt/ac", "0.25 % v/v", "8 fl oz/ac", "1 qt/ac"].iter().enumerate()
    {
        let mut product = Product::new(&format!("Product {at} SL (demo)"), ProductKind::Adjuvant, Formulation::SL);
        product.containers.push(Container {
            kind: ContainerKind::Jug,
            size: typed("2.5 gal")?,
            full: 0,
            opened: Some(typed("1 gal")?),
            lot: String::new(),
        });
        farm.products.insert(at.to_string(), product);
        pass.mix.push(Line::new(&at.to_string(), typed(rate)?));
    }
    farm.passes.insert("p".to_owned(), pass);
    Ok(farm)
}

fn sizing(c: &mut Criterion) {
    // With all but the last load decided there is next to nothing to look for: the difference is the search.
    for (name, split, decided) in [
        ("plan 60 loads by the aims", LoadSplit::ByAims, 0),
        ("plan 60 loads of which 59 are decided", LoadSplit::FullTanks, 59),
    ] {
        let Ok(farm) = farm(split, decided) else { continue };
        c.bench_function(name, |b| b.iter(|| plan(black_box(&farm), "p").map(|plan| plan.loads.len())));
    }
}

criterion_group!(benches, sizing);
criterion_main!(benches);
