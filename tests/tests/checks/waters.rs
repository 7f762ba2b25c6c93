//! Checks of a water: alone, and for a mix.

use tankard_core::farm::{Active, AdjuvantClass, Clarity, Formulation, Line, Product, ProductKind, Water};
use tankard_core::plan::Plan;
use tankard_core::quantity::{ActiveBasis, Amount, AmountPerArea, Hardness, MassPerVolume, Quantity, Units};
use tankard_core::water::dose::{Dose, of_salt, per_load};
use tankard_core::water::hardness::{Scheme, class};
use tankard_core::water::load_of_ions;
use tankard_core::water::ranges;
use tankard_core::water::thresholds::{Factor, Mixed};
use tankard_core::water::verdict::verdicts;

use super::Verdict;
use super::planned::{farm, pass, planned, typed};
use super::quantities::{amount_in, parse, per_area_in};
use crate::{Row, close};

/// A plan with the row's water, "K 2, Na 10, Ca 20, Mg 5, Fe 0", in ppm; "hardness 400" as stated; "pH 8", "EC 900" in
/// µS/cm, "clarity dirty".
fn with_water(row: &Row) -> Result<Plan, String> {
    let mut farm = farm(row)?;
    pass(&mut farm)?.water = "water".into();
    farm.waters.insert("water".to_owned(), water(row)?);
    planned(&farm)
}

fn water(row: &Row) -> Result<Water, String> {
    let mut water = Water { name: "Water".to_owned(), ..Water::default() };
    for part in row.input.split(',') {
        let (ion, value) = part.trim().split_once(' ').ok_or_else(|| format!("\"{part}\" has no figure"))?;
        let ppm = format!("{value} ppm");
        match ion {
            "K" => water.potassium = Some(typed(&ppm)?),
            "Na" => water.sodium = Some(typed(&ppm)?),
            "Ca" => water.calcium = Some(typed(&ppm)?),
            "Mg" => water.magnesium = Some(typed(&ppm)?),
            "Fe" => water.iron = Some(typed(&ppm)?),
            "hardness" => water.hardness = Some(typed(&ppm)?),
            "Mn" => water.manganese = Some(typed(&ppm)?),
            "HCO3" => water.bicarbonate = Some(typed(&ppm)?),
            "pH" => water.acidity = Some(typed(value)?),
            "EC" => water.conductivity = Some(typed(&format!("{value} µS/cm"))?),
            "clarity" => water.clarity = Clarity::ALL.into_iter().find(|clarity| clarity.name() == value),
            other => return Err(format!("\"{other}\" is no ion")),
        }
    }
    Ok(water)
}

/// The hardness of a water.
pub(super) fn hardness(row: &Row) -> Result<Verdict, String> {
    let hardness = with_water(row)?.water.hardness.ok_or("the hardness is not known")?;
    let found = match row.unit.as_str() {
        "ppm" => hardness.to_ppm(),
        "gpg" => hardness.to_grains_per_us_gallon(),
        other => return Err(format!("hardness has no unit \"{other}\" here")),
    };
    close(row, found)
}

/// The ammonium sulfate that a water ties up.
pub(super) fn conditioner(row: &Row) -> Result<Verdict, String> {
    let need = with_water(row)?.water.need.ok_or("the need is not known")?;
    let found = match row.need("ask")? {
        "without_iron" => need.without_iron,
        "with_iron" => need.with_iron.ok_or("the iron is not known")?,
        "most" => need.without_iron_most,
        other => return Err(format!("\"{other}\" cannot be asked")),
    };
    close(row, found.to_pounds_per_100_us_gallons())
}

/// The word of a scheme for a hardness.
pub(super) fn class_of(row: &Row) -> Result<Verdict, String> {
    let key = row.need("scheme")?;
    let scheme = Scheme::ALL.into_iter().find(|scheme| scheme.key() == key).ok_or("no such scheme")?;
    let found = class(parse::<Hardness>(&row.input)?, scheme).to_owned();
    Ok(Verdict { agrees: found == row.expected, found })
}

/// A published range of ammonium sulfate.
pub(super) fn range(row: &Row) -> Result<Verdict, String> {
    let range = match row.input.as_str() {
        "labels" => ranges::labels(),
        "practice" => ranges::practice(),
        "good water" => ranges::good_water(),
        other => return Err(format!("there is no range \"{other}\"")),
    }
    .ok_or("the range is not in the table")?;
    let end = if row.need("ask")? == "least" { range.least } else { range.most };
    close(row, end.to_pounds_per_100_us_gallons())
}

/// Ammonium sulfate: dry, or a solution of the row's content.
fn sulfate(row: &Row) -> Result<Product, String> {
    let liquid = row.with("content").is_some() || row.check == "solution";
    let formulation = if liquid { Formulation::SL } else { Formulation::SG };
    let mut product = Product::new("Ammonium sulfate 8-0-0-9", ProductKind::Conditioner, formulation);
    product.class = Some(AdjuvantClass::AmmoniumSulfate);
    if let Some(content) = row.with("content") {
        product.actives.push(Active {
            name: "ammonium sulfate".to_owned(),
            group: String::new(),
            basis: ActiveBasis::ActiveIngredient,
            content: typed(content)?,
        });
    }
    Ok(product)
}

/// How much of a solution brings a content of ammonium sulfate.
pub(super) fn solution(row: &Row) -> Result<Verdict, String> {
    match (of_salt(parse::<MassPerVolume>(&row.input)?, &sulfate(row)?), row.expected.as_str()) {
        (None, expected) => Ok(Verdict { agrees: expected == "none", found: "none".to_owned() }),
        (Some(Dose::Liquid(share)), _) => close(row, share.to_percent()),
        (Some(Dose::Dry(_)), _) => Err("a solution has no dry dose".to_owned()),
    }
}

/// What the recommended ammonium sulfate comes to in a full load, through the plan of a glyphosate in hard water.
pub(super) fn load(row: &Row) -> Result<Verdict, String> {
    let mut farm = farm(row)?;
    farm.fields.insert("field".to_owned(), tankard_core::farm::Field::new("Field", typed("500 ac")?));
    let stated = Water { hardness: Some(typed("400 ppm")?), name: "Water".to_owned(), ..Water::default() };
    farm.waters.insert("water".to_owned(), stated);
    farm.products.insert("herbicide".to_owned(), herbicide("glyphosate", ActiveBasis::AcidEquivalent)?);
    farm.products.insert("sulfate".to_owned(), sulfate(row)?);
    let pass = pass(&mut farm)?;
    pass.water = "water".into();
    pass.mix.push(Line::new("herbicide", typed("1 L/ha")?));
    let plan = planned(&farm)?;
    let recommended = plan.water.recommended.ok_or("nothing is recommended")?;
    if recommended.show(Units::UsCustomary) != row.input {
        return Err(format!("{} is recommended", recommended.show(Units::UsCustomary)));
    }
    let (doses, _) = per_load(&plan.water, &plan.loads, Units::UsCustomary);
    let amount: Amount = doses.first().and_then(|dose| dose.product).ok_or("the dose is not known")?;
    close(row, amount_in(amount, &row.unit)?)
}

/// What the hardness of a water puts on the ground.
pub(super) fn ions(row: &Row) -> Result<Verdict, String> {
    let hardness = water(row)?.hardness.ok_or("no hardness")?.value();
    let mass = load_of_ions(hardness, parse(row.need("carrier")?)?);
    close(row, per_area_in(AmountPerArea::Mass(mass), &row.unit)?)
}

fn herbicide(active: &str, basis: ActiveBasis) -> Result<Product, String> {
    let mut product = Product::new("Herbicide", ProductKind::Herbicide, Formulation::SL);
    product.actives.push(Active { name: active.to_owned(), group: String::new(), basis, content: typed("500 g/L")? });
    Ok(product)
}

/// The verdict on a water for "glyphosate@400 g ae/ha" in a factor: "Check from 125 ppm", "Note to 700 ppm", "nothing".
pub(super) fn limit(row: &Row) -> Result<Verdict, String> {
    let (active, rate) = row.need("mix")?.split_once('@').ok_or("the mix has no rate")?;
    let basis = if rate.contains("ae") { ActiveBasis::AcidEquivalent } else { ActiveBasis::ActiveIngredient };
    let product = herbicide(active, basis)?;
    let per_area = tankard_core::mix::line::per_area(parse(rate)?, &product, parse("150 L/ha")?)?;
    let key = row.need("factor")?;
    let factor = Factor::ALL.into_iter().find(|factor| factor.key() == key).ok_or("no such factor")?;
    let all = verdicts(&water(row)?, &[Mixed { product: &product, per_area }]);
    let mut of_factor = all.iter().filter(|verdict| verdict.factor == factor);
    let found = of_factor.next().map_or("nothing".to_owned(), |verdict| {
        let (end, limit) =
            if row.expected.contains(" to ") { ("to", verdict.last.limit) } else { ("from", verdict.first.limit) };
        format!("{} {end} {}", verdict.level.word(), limit.show(Units::UsCustomary))
    });
    if of_factor.next().is_some() {
        return Err("one factor has two verdicts".to_owned());
    }
    Ok(Verdict { agrees: found == row.expected, found })
}
