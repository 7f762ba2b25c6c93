//! What went out of each product.

use super::{Amounts, Picked, Spent};
use crate::farm::{AdjuvantClass, Id, ProductKind};
use crate::language::t;
use crate::quantity::Area;

/// What went out, product by product.
#[derive(Clone, Debug, PartialEq)]
pub struct Products {
    /// By kind, then by name.
    pub rows: Vec<ProductRow>,
    /// What all of it cost.
    pub spent: Spent,
}

/// A product.
#[derive(Clone, Debug, PartialEq)]
pub struct ProductRow {
    /// The product.
    pub product: Id,
    /// Its name on the farm, else in its last record.
    pub name: String,
    /// What it was for; `None` where neither the records nor the shed know.
    pub kind: Option<ProductKind>,
    /// Its adjuvant class.
    pub class: Option<AdjuvantClass>,
    /// Some record does not say kind and class, so those of the shed today stand.
    pub from_shed: bool,
    /// How much went out.
    pub amounts: Amounts,
    /// The ground it went on; twice sprayed counts twice.
    pub treated: Area,
    /// In how many records.
    pub times: usize,
    /// What it cost.
    pub spent: Spent,
}

impl ProductRow {
    /// Its adjuvant class, else its kind.
    pub fn role(&self) -> &'static str {
        match (self.class, self.kind) {
            (Some(class), _) => class.name(),
            (None, Some(kind)) => kind.name(),
            (None, None) => t!("season-kind-not-known"),
        }
    }
}

/// The page, of what is picked.
pub fn page(picked: &Picked<'_>) -> Products {
    let infos = &picked.index.products;
    let mut rows: Vec<ProductRow> = infos
        .iter()
        .map(|info| ProductRow {
            product: info.id.clone(),
            name: info.name.clone(),
            kind: None,
            class: None,
            from_shed: false,
            amounts: Amounts::default(),
            treated: Area::ZERO,
            times: 0,
            spent: Spent::default(),
        })
        .collect();
    // The record and the ground that counted last, since a record may hold a product in two lines.
    let mut last = vec![(u32::MAX, u32::MAX); rows.len()];
    for (used, ground, _) in picked.uses() {
        let at = used.product as usize;
        let (Some(row), Some(last)) = (rows.get_mut(at), last.get_mut(at)) else { continue };
        row.kind = used.kind.or(row.kind);
        row.class = used.class.or(row.class);
        row.from_shed |= used.from_shed;
        row.amounts.add(used.amount);
        row.spent.add(used.cost);
        let here = (ground.record, ground.field);
        row.times += usize::from(last.0 != here.0);
        if *last != here {
            row.treated = row.treated + ground.area;
        }
        *last = here;
    }
    rows.retain(|row| row.times > 0);
    let order =
        |row: &ProductRow| ProductKind::ALL.iter().position(|kind| Some(*kind) == row.kind).unwrap_or(usize::MAX);
    rows.sort_by(|a, b| order(a).cmp(&order(b)).then_with(|| a.name.cmp(&b.name)));
    let spent = rows.iter().fold(Spent::default(), |sum, row| sum.plus(row.spent));
    Products { rows, spent }
}
