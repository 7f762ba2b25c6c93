//! Checks through the one door: a farm made from the row, planned.

use tankard_core::farm::label::OrderPlace;
use tankard_core::farm::{
    Active, AdjuvantClass, CarrierKind, Charge, Farm, Field, Formulation, Line, LoadSplit, Pass, Product, ProductKind,
    Rig, Says, Statement, Surfactant, Water,
};
use tankard_core::mix::line::active_per_area;
use tankard_core::plan::{Plan, plan};
use tankard_core::quantity::{ActiveBasis, Amount, AmountPerArea, AsTyped, Quantity, Volume};

use super::Verdict;
use super::quantities::{amount_in, area_in, per_area_in};
use crate::{Row, close};

const PASS: &str = "pass";

fn typed<Q: Quantity>(text: &str) -> Result<AsTyped<Q>, String> {
    AsTyped::parse(text).map_err(|error| error.to_string())
}

/// One field, one rig, one pass without a mix. What the row leaves out is a plain figure that no answer depends on.
fn farm(row: &Row) -> Result<Farm, String> {
    let mut farm = Farm::new("Reference");
    farm.fields.insert("field".to_owned(), Field::new("Field", typed(row.with("area").unwrap_or("1 ac"))?));
    farm.rigs.insert("rig".to_owned(), Rig::new("Rig", typed(row.with("tank").unwrap_or("1000 gal"))?));
    let date = serde_json::from_str("\"2031-06-12\"").map_err(|error| error.to_string())?;
    let mut pass = Pass::new("Pass", date);
    pass.fields.push("field".to_owned());
    pass.rig = "rig".into();
    pass.carrier = Some(typed(row.with("carrier").unwrap_or("10 gal/ac"))?);
    pass.mixing_order = row.with("order").unwrap_or("").into();
    if row.with("in") == Some("fertilizer") {
        pass.carrier_kind = CarrierKind::LiquidFertilizer;
    }
    if let Some(part) = row.with("part") {
        pass.parts.insert("field".to_owned(), typed(part)?);
    }
    if row.with("split") == Some("even") {
        pass.split = LoadSplit::EvenLoads;
    }
    farm.passes.insert(PASS.to_owned(), pass);
    Ok(farm)
}

/// The pass of [`farm`].
fn pass(farm: &mut Farm) -> Result<&mut Pass, String> {
    farm.passes.get_mut(PASS).ok_or_else(|| "the farm has no pass".to_owned())
}

fn planned(farm: &Farm) -> Result<Plan, String> {
    plan(farm, PASS).ok_or_else(|| "the pass is not planned".to_owned())
}

/// A product as the row describes it.
fn product(row: &Row) -> Result<Product, String> {
    let formulation = match row.with("product") {
        Some("dry") => Formulation::WP,
        _ => Formulation::SC,
    };
    let mut product = Product::new("Product", ProductKind::Herbicide, formulation);
    if let Some(content) = row.with("content") {
        let basis = if content.contains("ae") { ActiveBasis::AcidEquivalent } else { ActiveBasis::ActiveIngredient };
        product.actives.push(Active {
            name: "active".to_owned(),
            group: String::new(),
            basis,
            content: typed(content)?,
        });
    }
    product.density = row.with("density").map(typed).transpose()?;
    Ok(product)
}

/// The question that `ask` names, of the plan of one product at the row's rate.
pub(super) fn loads(row: &Row) -> Result<Verdict, String> {
    let product = product(row)?;
    let mut line = Line::new("product", typed(&row.input)?);
    line.at_least = row.with("at_least").map(typed).transpose()?;
    line.at_most = row.with("at_most").map(typed).transpose()?;
    let mut farm = farm(row)?;
    pass(&mut farm)?.mix.push(line);
    if let Some(rate) = row.with("also") {
        pass(&mut farm)?.mix.push(Line::new("also", typed(rate)?));
        farm.products.insert("also".to_owned(), Product::new("Also", ProductKind::Adjuvant, Formulation::SL));
    }
    farm.products.insert("product".to_owned(), product.clone());
    let plan = planned(&farm)?;
    let line = plan.lines.iter().find(|line| line.product == "product").ok_or_else(|| {
        let texts: Vec<&str> = plan.findings.iter().map(|finding| finding.text.as_str()).collect();
        format!("the line is not planned: {}", texts.join("; "))
    })?;
    let (ask, number) = row.need("ask")?.split_once(':').unwrap_or((row.need("ask")?, "1"));
    let load = || {
        plan.loads
            .iter()
            .find(|load| load.number.to_string() == number)
            .ok_or_else(|| format!("there is no load {number} of {}", plan.loads.len()))
    };
    let exact = |load: &tankard_core::loads::Load| {
        let item = load.items.iter().find(|item| item.product == "product").ok_or("the load lacks the product")?;
        Ok::<_, String>(item.measured.clone())
    };
    match ask {
        "count" => close(row, plan.loads.len() as f64),
        "rate" => close(row, per_area_in(line.per_area, &row.unit)?),
        "active" => {
            let active = product.actives.first().ok_or("the product has no content")?;
            let mass = active_per_area(line.per_area, active, &product).ok_or("the active is not known")?;
            close(row, per_area_in(AmountPerArea::Mass(mass), &row.unit)?)
        }
        "demand" => close(row, amount_in(line.demand, &row.unit)?),
        "spray" => close(row, amount_in(Amount::Volume(plan.spray_volume), &row.unit)?),
        "volume" => close(row, amount_in(Amount::Volume(load()?.volume), &row.unit)?),
        "water" => close(row, amount_in(Amount::Volume(load()?.water), &row.unit)?),
        "area" => close(row, area_in(load()?.area, &row.unit)?),
        "item" => close(row, amount_in(exact(load()?)?.exact, &row.unit)?),
        "measure" => {
            let found = exact(load()?)?.text;
            Ok(Verdict { agrees: found == row.expected, found })
        }
        "sum" => {
            let mut sum = Volume::ZERO;
            for load in &plan.loads {
                let Amount::Volume(volume) = exact(load)?.exact else { return Err("not a liquid".to_owned()) };
                sum = sum + volume;
            }
            close(row, amount_in(Amount::Volume(sum), &row.unit)?)
        }
        other => Err(format!("\"{other}\" cannot be asked")),
    }
}

/// An adjuvant by the key of its class.
fn adjuvant(name: &str, key: &str) -> Result<Product, String> {
    let class = AdjuvantClass::ALL
        .into_iter()
        .find(|class| class.key() == key)
        .ok_or_else(|| format!("\"{key}\" is neither a formulation nor a class"))?;
    let formulation = match class {
        AdjuvantClass::AmmoniumSulfate => Formulation::SG,
        AdjuvantClass::CropOilConcentrate | AdjuvantClass::MethylatedSeedOil => Formulation::EC,
        _ => Formulation::SL,
    };
    let mut product = Product::new(name, ProductKind::Adjuvant, formulation);
    product.class = Some(class);
    Ok(product)
}

/// A product by its formulation code or adjuvant class, "SL!last" with a place that its label gives it.
fn by_key(token: &str) -> Result<Product, String> {
    let (key, place) = token.split_once('!').unwrap_or((token, ""));
    // "AMS+NIS" is a sulfate that comes mixed with a surfactant.
    let (key, surfactant) = key.strip_suffix("+NIS").map_or((key, false), |key| (key, true));
    let mut product = match Formulation::ALL.into_iter().find(|formulation| formulation.code() == key) {
        Some(formulation) => Product::new(token, ProductKind::Herbicide, formulation),
        None => adjuvant(token, key)?,
    };
    if surfactant {
        product.surfactant = Some(Surfactant { charge: Charge::NonIonic, complete: false });
    }
    let place = match place {
        "" => return Ok(product),
        "first" => OrderPlace::First,
        "last" => OrderPlace::Last,
        other => return Err(format!("\"{other}\" is no place")),
    };
    product.label.push(Statement::new(Says::MixingOrder { place, tank_full: None }, "page 1"));
    Ok(product)
}

/// The plan of a mix of products by their keys.
fn mixed(row: &Row) -> Result<Plan, String> {
    let mut farm = farm(row)?;
    for token in row.input.split_whitespace() {
        let product = by_key(token)?;
        let rate = if product.is_liquid() { "1 fl oz/ac" } else { "1 oz/ac" };
        pass(&mut farm)?.mix.push(Line::new(token, typed(rate)?));
        farm.products.insert(token.to_owned(), product);
    }
    let plan = planned(&farm)?;
    match plan.findings.iter().find(|finding| finding.text.contains("mixing order is called")) {
        Some(finding) => Err(finding.text.clone()),
        None => Ok(plan),
    }
}

/// The order of a load's products against "AMS > WG > EC COC": one after another, groups apart by spaces in any order.
pub(super) fn order(row: &Row) -> Result<Verdict, String> {
    let plan = mixed(row)?;
    let load = plan.loads.first().ok_or("there is no load")?;
    let found: Vec<&str> = load.items.iter().map(|item| item.product.as_str()).collect();
    let mut rest = found.as_slice();
    let mut agrees = true;
    for group in row.expected.split('>') {
        let mut wanted: Vec<&str> = group.split_whitespace().collect();
        let (head, tail) = rest.split_at(wanted.len().min(rest.len()));
        let mut head = head.to_vec();
        wanted.sort_unstable();
        head.sort_unstable();
        agrees &= wanted == head;
        rest = tail;
    }
    Ok(Verdict { agrees: agrees && rest.is_empty(), found: found.join(", ") })
}

/// How full the tank is before a product of a mix.
pub(super) fn fill(row: &Row) -> Result<Verdict, String> {
    let plan = mixed(row)?;
    let asked = row.need("ask")?;
    let placed = plan.order.iter().find(|placed| placed.product == asked).ok_or("the product is not placed")?;
    close(row, placed.full_before * 100.0)
}

/// A plan with the row's water, "K 2, Na 10, Ca 20, Mg 5, Fe 0", in ppm; "hardness 400" as stated.
fn with_water(row: &Row) -> Result<Plan, String> {
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
            other => return Err(format!("\"{other}\" is no ion")),
        }
    }
    let mut farm = farm(row)?;
    pass(&mut farm)?.water = "water".into();
    farm.waters.insert("water".to_owned(), water);
    planned(&farm)
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
