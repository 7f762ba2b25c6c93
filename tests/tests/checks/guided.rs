//! Checks of what publications say of adjuvants: an invented product, and the guidance on it.

use tankard_core::farm::label::{Says, Stance, When};
use tankard_core::farm::{Active, AdjuvantClass, CarrierKind, Formulation, Product, ProductKind, Statement};
use tankard_core::finding::Basis;
use tankard_core::mix::guidance::{self, Guidance};
use tankard_core::quantity::{ActiveBasis, AsTyped, Rate};

use super::Verdict;
use super::quantities::rate_in;
use crate::{Row, close};

/// A product of the row's active, or of its adjuvant class. Where the row names no content, one that no row speaks of.
fn product(row: &Row) -> Result<Product, String> {
    if let Some(class) = AdjuvantClass::of_key(&row.input) {
        let mut product = Product::new("Invented", ProductKind::Adjuvant, Formulation::SL);
        product.class = Some(class);
        return Ok(product);
    }
    let code = row.with("formulation").unwrap_or("DC");
    let formulation = Formulation::ALL
        .into_iter()
        .find(|formulation| formulation.code() == code)
        .ok_or_else(|| format!("\"{code}\" is no formulation"))?;
    let mut product = Product::new("Invented", ProductKind::Herbicide, formulation);
    product.actives.push(Active {
        name: row.input.clone(),
        group: String::new(),
        basis: ActiveBasis::ActiveIngredient,
        content: AsTyped::parse(row.with("content").unwrap_or("7 lb/gal")).map_err(|error| error.to_string())?,
    });
    Ok(product)
}

/// A condition as the table writes it.
fn condition(when: &When) -> String {
    match when {
        When::Heat => "heat".to_owned(),
        When::Cold => "cold".to_owned(),
        When::Drought => "drought".to_owned(),
        When::LargeWeeds => "large weeds".to_owned(),
        When::HeavyPressure => "heavy pressure".to_owned(),
        When::Alone => "alone".to_owned(),
        When::NoSurfactantBuiltIn => "no surfactant built in".to_owned(),
        When::LoadedPartner => "loaded partner".to_owned(),
        When::Weed(weed) => format!("weed={weed}"),
        When::With(partner) => format!("with={partner}"),
        When::Carrier(CarrierKind::UreaAmmoniumNitrate) => "carrier=UAN".to_owned(),
        When::CarrierBelow(limit) => format!("carrier below={}", limit.text()),
        When::CarrierAbove(limit) => format!("carrier above={}", limit.text()),
        other => format!("{other:?}"),
    }
}

/// Whether a statement is for the row's crop: by name, or for every crop where the row names none.
fn on_crop(statement: &Statement, crop: Option<&str>) -> bool {
    match crop {
        None => statement.crop.is_empty(),
        Some(crop) => statement.crop.split(',').any(|name| name.trim() == crop),
    }
}

/// Whether a guidance rests on the source that the row names by its first words.
fn rests_on(guidance: &Guidance, from: &str) -> bool {
    match &guidance.basis {
        Basis::Published(source) => source.starts_with(from),
        Basis::Practice => from == "practice",
        _ => false,
    }
}

struct Told {
    stance: Stance,
    least: Option<AsTyped<Rate>>,
    most: Option<AsTyped<Rate>>,
    at_least: Option<AsTyped<Rate>>,
    at_most: Option<AsTyped<Rate>>,
}

fn told(statement: &Statement, wanted: &str) -> Option<Told> {
    match statement.says.clone() {
        Says::Adjuvant { class, stance, least, most, at_least, at_most } if class.key() == wanted => {
            Some(Told { stance, least, most, at_least, at_most })
        }
        _ => None,
    }
}

/// What the row's source says of a class of adjuvant for the row's active, crop and conditions: one stance, and among its
/// rates the expected one.
pub(super) fn guided(row: &Row) -> Result<Verdict, String> {
    let product = product(row)?;
    let (from, class) = (row.need("from")?, row.need("class")?);
    let conditions = row.with("when").unwrap_or("");
    let mut conditions: Vec<&str> = conditions.split(',').map(str::trim).filter(|word| !word.is_empty()).collect();
    conditions.sort_unstable();
    let mut found = Vec::new();
    for (guidance, _) in guidance::on(&product).filter(|(guidance, _)| rests_on(guidance, from)) {
        for statement in guidance.statements.iter().filter(|statement| on_crop(statement, row.with("crop"))) {
            let mut when: Vec<String> = statement.when.iter().map(condition).collect();
            when.sort_unstable();
            found.extend(told(statement, class).filter(|_| when == conditions));
        }
    }
    if found.is_empty() {
        return Err(format!("no guidance says anything of {class} there"));
    }
    let ask = row.need("ask")?;
    let stance = if ask == "stance" { row.expected.as_str() } else { row.need("stance")? };
    // A source may say two things of a class: what it asks for, and what will do.
    let stances: Vec<&str> = found.iter().map(|told| told.stance.name()).collect();
    if !stances.contains(&stance) {
        return Ok(Verdict { agrees: false, found: stances.join(", ") });
    }
    if ask == "stance" {
        return Ok(Verdict { agrees: true, found: stance.to_owned() });
    }
    let mut verdicts = Vec::new();
    for told in found.into_iter().filter(|told| told.stance.name() == stance) {
        let rate = match ask {
            "least" => told.least,
            "most" => told.most,
            "at_least" => told.at_least,
            "at_most" => told.at_most,
            other => return Err(format!("\"{other}\" cannot be asked")),
        };
        // A rate on another basis is another rate.
        if let Some(Ok(rate)) = rate.map(|rate| rate_in(rate.value(), &row.unit)) {
            verdicts.push(close(row, rate)?);
        }
    }
    let agrees = verdicts.iter().any(|verdict| verdict.agrees);
    let found: Vec<String> = verdicts.into_iter().map(|verdict| verdict.found).collect();
    Ok(Verdict { agrees, found: if found.is_empty() { "no such rate".to_owned() } else { found.join(", ") } })
}

/// That nobody, or not the source that the row names, takes the row's stance to a class of adjuvant for the row's active
/// on its crop, whatever the conditions.
pub(super) fn unguided(row: &Row) -> Result<Verdict, String> {
    let product = product(row)?;
    let (class, stance, crop) = (row.need("class")?, row.need("stance")?, row.need("crop")?);
    if !Stance::ALL.iter().any(|known| known.name() == stance) {
        return Err(format!("\"{stance}\" is no stance"));
    }
    let ids: Vec<&str> = guidance::on(&product)
        .filter(|(guidance, _)| row.with("from").is_none_or(|from| rests_on(guidance, from)))
        .filter(|(guidance, _)| {
            guidance.statements.iter().any(|statement| {
                (statement.crop.is_empty() || on_crop(statement, Some(crop)))
                    && told(statement, class).is_some_and(|told| told.stance.name() == stance)
            })
        })
        .map(|(guidance, _)| guidance.id.as_str())
        .collect();
    let found = if ids.is_empty() { "none".to_owned() } else { ids.join(", ") };
    Ok(Verdict { agrees: found == row.expected, found })
}
