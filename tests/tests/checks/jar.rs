//! Checks of the jar test: a farm made from the row, planned, brought down to a jar.

use tankard_core::farm::{CarrierKind, Line};
use tankard_core::mix::jar::{Jar, Second, jar as jar_test, measure, sheet};
use tankard_core::quantity::{Amount, Quantity, Units, Volume};

use super::Verdict;
use super::planned::{farm, pass, planned, product, typed};
use super::quantities::amount_in;
use crate::{Row, close};

/// The question that `ask` names, of the jar test of one product at the row's rate.
pub(super) fn jar(row: &Row) -> Result<Verdict, String> {
    let size = match row.need("jar")? {
        "pint" => Jar::Pint,
        "quart" => Jar::Quart,
        "500ml" => Jar::HalfLitre,
        "1l" => Jar::Litre,
        other => return Err(format!("\"{other}\" is no jar")),
    };
    let mut farm = farm(row)?;
    let line = Line::new("product", typed(&row.input)?);
    pass(&mut farm)?.mix.push(line);
    match row.with("kind") {
        None => {}
        Some("fertilizer") => pass(&mut farm)?.carrier_kind = CarrierKind::LiquidFertilizer,
        Some(other) => return Err(format!("\"{other}\" is no carrier")),
    }
    farm.products.insert("product".to_owned(), product(row)?);
    let test = jar_test(&planned(&farm)?, &farm, size).ok_or("there is no jar test")?;
    let item = test.items.first().ok_or("the jar holds no product")?;
    let text = |found: String| Verdict { agrees: found == row.expected, found };
    match row.need("ask")? {
        "amount" => close(row, amount_in(item.exact, &row.unit)?),
        "measured" => close(row, amount_in(item.measured.amount, &row.unit)?),
        "text" => Ok(text(item.measured.text.clone())),
        "beside" => Ok(text(item.beside())),
        "spray" => close(row, amount_in(Amount::Volume(size.volume()), &row.unit)?),
        "carrier" => close(row, amount_in(Amount::Volume(test.carrier_volume), &row.unit)?),
        "shake" => close(row, test.shake.to_seconds()),
        "look" => close(row, test.looks.first().ok_or("nobody looks")?.to_seconds() / 60.0),
        "jars" => close(row, if test.second.is_some() { 2.0 } else { 1.0 }),
        "agent" => match test.second {
            Some(Second::With { exact, .. }) => close(row, amount_in(Amount::Volume(exact), &row.unit)?),
            _ => Err("no jar takes an agent".to_owned()),
        },
        // How many signs of the source stand on the sheet.
        "signs" => {
            let signs = sheet::sheet(&farm, &test).ok_or("there is no sheet")?.signs;
            let wanted: Vec<&str> = row.need("words")?.split(' ').collect();
            let found = wanted.iter().filter(|word| signs.iter().any(|(sign, _)| sign.starts_with(**word))).count();
            close(row, found as f64)
        }
        other => Err(format!("\"{other}\" cannot be asked")),
    }
}

/// An amount in the spoons of a US kitchen, in words.
pub(super) fn spoons(row: &Row) -> Result<Verdict, String> {
    let volume = Volume::parse(&row.input).map_err(|error| error.to_string())?;
    let found = measure::spoons(volume, Units::UsCustomary);
    Ok(Verdict { agrees: found == row.expected, found })
}
