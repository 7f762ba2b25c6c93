//! Checks of the shopping list: a product in some sizes, and a shortfall of it.

use tankard_core::farm::{Container, ContainerKind, Formulation, Product, ProductKind};
use tankard_core::quantity::{Amount, Quantity};
use tankard_core::stock::buy;

use super::Verdict;
use super::planned::typed;
use super::quantities::amount_in;
use crate::{Row, close};

/// The amount that is bought, in as many containers as the row says.
pub(super) fn shopping(row: &Row) -> Result<Verdict, String> {
    let short = Amount::parse(&row.input).map_err(|error| error.to_string())?;
    let formulation = if matches!(short, Amount::Volume(_)) { Formulation::SL } else { Formulation::WG };
    let mut product = Product::new("Product", ProductKind::Herbicide, formulation);
    for size in row.need("sizes")?.split(", ") {
        let size = typed(size)?;
        product.containers.push(Container {
            kind: ContainerKind::Jug,
            size,
            full: 0,
            opened: None,
            lot: String::new(),
        });
    }
    let purchase = buy(&product, short)?;
    let count: u32 = purchase.items.iter().map(|(_, count)| count).sum();
    let wanted: u32 = row.need("count")?.parse().map_err(|_| "no count".to_owned())?;
    let mut verdict = close(row, amount_in(purchase.amount, &row.unit)?)?;
    verdict.agrees &= count == wanted;
    verdict.found = format!("{} in {count} containers: {}", verdict.found, purchase.words(&product));
    Ok(verdict)
}
