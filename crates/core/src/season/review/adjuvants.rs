//! Adjuvants by class, and what they cost.

use super::{Amounts, Picked, Spent};
use crate::farm::{AdjuvantClass, ProductKind};
use crate::quantity::Area;

/// Adjuvants and conditioners by class.
#[derive(Clone, Debug, PartialEq)]
pub struct Adjuvants {
    /// In the order of [`AdjuvantClass::ALL`], those without a class last.
    pub rows: Vec<ClassRow>,
    /// The ground that was treated without any.
    pub without: Area,
    /// What they cost in all.
    pub spent: Spent,
}

/// A class.
#[derive(Clone, Debug, PartialEq)]
pub struct ClassRow {
    /// The class; `None` where none is typed.
    pub class: Option<AdjuvantClass>,
    /// The products of it, by name.
    pub products: Vec<String>,
    /// How much went out.
    pub amounts: Amounts,
    /// The ground it went on; twice sprayed counts twice.
    pub treated: Area,
    /// In how many records.
    pub times: usize,
    /// What it cost.
    pub spent: Spent,
    /// Some record does not say the class, so that of the shed today stands.
    pub from_shed: bool,
}

/// The page, of what is picked.
pub fn page(picked: &Picked<'_>) -> Adjuvants {
    let index = picked.index;
    let keys = || AdjuvantClass::ALL.into_iter().map(Some).chain([None]);
    let mut rows: Vec<(ClassRow, Vec<u32>, (u32, u32))> = keys()
        .map(|class| {
            let row = ClassRow {
                class,
                products: Vec::new(),
                amounts: Amounts::default(),
                treated: Area::ZERO,
                times: 0,
                spent: Spent::default(),
                from_shed: false,
            };
            (row, Vec::new(), (u32::MAX, u32::MAX))
        })
        .collect();
    let (mut spent, mut without) = (Spent::default(), Area::ZERO);
    for (_, ground, _) in picked.ground() {
        let mut any = false;
        for used in index.uses_of(ground) {
            let helps =
                matches!(used.kind, Some(ProductKind::Adjuvant | ProductKind::Conditioner)) || used.class.is_some();
            let Some((row, products, last)) = keys().position(|key| key == used.class).and_then(|at| rows.get_mut(at))
            else {
                continue;
            };
            if !helps {
                continue;
            }
            any = true;
            spent.add(used.cost);
            row.spent.add(used.cost);
            row.amounts.add(used.amount);
            row.from_shed |= used.from_shed;
            if !products.contains(&used.product) {
                products.push(used.product);
            }
            let here = (ground.record, ground.field);
            row.times += usize::from(last.0 != here.0);
            if *last != here {
                row.treated = row.treated + ground.area;
            }
            *last = here;
        }
        if !any {
            without = without + ground.area;
        }
    }
    let name = |at: &u32| index.products.get(*at as usize).map(|product| product.name.clone());
    let rows = rows.into_iter().filter(|(row, ..)| row.times > 0).map(|(mut row, products, _)| {
        row.products = products.iter().filter_map(name).collect();
        row.products.sort();
        row
    });
    Adjuvants { rows: rows.collect(), without, spent }
}
