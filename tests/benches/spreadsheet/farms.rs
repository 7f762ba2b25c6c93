//! Farms with many passes: fields, products and records as [`tankard_tests::log`] makes them, with rigs, waters and mixes.

use jiff::civil::date;
use tankard_core::farm::{Farm, Line, LoadSplit, Pass, Rig, Water};
use tankard_core::quantity::{AsTyped, QuantityError};
use tankard_tests::log::{self, Shape};

/// A farm of so many passes over up to eight fields each, with 500 records.
///
/// # Errors
/// Where a text of it does not read.
pub(crate) fn made(passes: u32) -> Result<Farm, QuantityError> {
    let shape = Shape { seasons: 2, records: 250, fields: passes * 2, untidy: false, seed: 2031 };
    let mut farm = log::farm(shape)?;
    farm.passes.clear();
    for (id, tank) in [("large", "1200 gal"), ("small", "300 gal"), ("metric", "4000 L")] {
        let mut rig = Rig::new(id, AsTyped::parse(tank)?);
        rig.boom = Some(AsTyped::parse("90 ft")?);
        rig.speed = Some(AsTyped::parse("10 mph")?);
        farm.rigs.insert(id.to_owned(), rig);
    }
    for n in 0..4 {
        let mut water = Water { name: format!("Well {n}"), ..Water::default() };
        water.calcium = Some(AsTyped::parse(&format!("{} ppm", 40 + 37 * n))?);
        water.magnesium = Some(AsTyped::parse(&format!("{} ppm", 12 + 11 * n))?);
        water.sodium = Some(AsTyped::parse(&format!("{} ppm", 8 + 5 * n))?);
        water.potassium = Some(AsTyped::parse("4 ppm")?);
        water.iron = Some(AsTyped::parse("0.3 ppm")?);
        farm.waters.insert(format!("well-{n}"), water);
    }
    // Product by its number in the log's list, and a rate of each kind.
    let rates = [
        ("product-0", "22 fl oz/ac"),
        ("product-0", "0.75 lb ae/ac"),
        ("product-1", "1.33 pt/ac"),
        ("product-3", "2.5 L/ha"),
        ("product-4", "1.5 lb/ac"),
        ("product-8", "210 g/ha"),
        ("product-10", "1 % v/v"),
        ("product-11", "1.5 pt/ac"),
        ("product-12", "8.5 lb/100 gal"),
        ("product-13", "1 qt/100 gal"),
    ];
    for n in 0..passes {
        let mut pass = Pass::new(&format!("Pass {n}"), date(2033, 5, 1));
        pass.fields = (0..=n % 8).map(|field| format!("field-{}", (n * 2 + field * 3) % (passes * 2))).collect();
        pass.fields.sort();
        pass.fields.dedup();
        ["large", "small", "metric"].get(n as usize % 3).copied().unwrap_or_default().clone_into(&mut pass.rig);
        pass.water = format!("well-{}", n % 4);
        let carrier = ["15 gal/ac", "10 gal/ac", "187 L/ha"].get(n as usize / 3 % 3).copied().unwrap_or_default();
        pass.carrier = Some(AsTyped::parse(carrier)?);
        pass.split = if n % 4 == 3 { LoadSplit::EvenLoads } else { LoadSplit::FullTanks };
        for (at, (product, rate)) in (0..).zip(rates) {
            let is_there = pass.mix.iter().any(|line| line.product == product);
            if (at + n) % 3 == 0 && !is_there {
                pass.mix.push(Line::new(product, AsTyped::parse(rate)?));
            }
        }
        farm.passes.insert(format!("pass-{n}"), pass);
    }
    Ok(farm)
}
