//! What it cost: by field, crop, kind of product and adjuvant class.

use super::{Picked, Spent};
use crate::farm::{AdjuvantClass, Id, ProductKind};
use crate::quantity::Area;

/// What the products cost.
#[derive(Clone, Debug, PartialEq)]
pub struct Cost {
    /// In all.
    pub all: CostRow<()>,
    /// By field: id and name; empty for records without one.
    pub fields: Vec<CostRow<(Id, String)>>,
    /// By crop, as typed; empty where it was not.
    pub crops: Vec<CostRow<String>>,
    /// By kind of product; `None` where neither the records nor the shed know.
    pub kinds: Vec<CostRow<Option<ProductKind>>>,
    /// By adjuvant class, of what has one.
    pub classes: Vec<CostRow<AdjuvantClass>>,
    /// Products of which no or no fitting price is known in some records, with how often that is so for a field.
    pub without_price: Vec<(String, usize)>,
}

/// What a part cost.
#[derive(Clone, Debug, PartialEq)]
pub struct CostRow<K> {
    /// The part.
    pub of: K,
    /// What it cost.
    pub spent: Spent,
    /// The ground it was spent on; twice sprayed counts twice.
    pub treated: Area,
}

impl<K> CostRow<K> {
    fn new(of: K) -> Self {
        Self { of, spent: Spent::default(), treated: Area::ZERO }
    }
}

/// A sum that takes each piece of ground once.
struct Sum<K> {
    row: CostRow<K>,
    last: u32,
}

impl<K> Sum<K> {
    fn new(of: K) -> Self {
        Self { row: CostRow::new(of), last: u32::MAX }
    }

    fn ground(&mut self, at: u32, area: Area) {
        if self.last != at {
            self.row.treated = self.row.treated + area;
            self.last = at;
        }
    }
}

/// The page, of what is picked.
pub fn page(picked: &Picked<'_>) -> Cost {
    let index = picked.index;
    let mut all = Sum::new(());
    let mut fields: Vec<_> =
        index.fields.iter().map(|field| Sum::new((field.id.clone(), field.name.clone()))).collect();
    let mut crops: Vec<_> = index.crops.iter().map(|(_, crop)| Sum::new(crop.clone())).collect();
    let mut kinds: Vec<_> = ProductKind::ALL.into_iter().map(Some).chain([None]).map(Sum::new).collect();
    let mut classes: Vec<_> = AdjuvantClass::ALL.into_iter().map(Sum::new).collect();
    let mut without = vec![0; index.products.len()];
    for (at, ground, _) in picked.ground() {
        let field = fields.get_mut(ground.field as usize);
        let crop = crops.get_mut(ground.crop as usize);
        all.ground(at, ground.area);
        let (Some(field), Some(crop)) = (field, crop) else { continue };
        field.ground(at, ground.area);
        crop.ground(at, ground.area);
        for used in index.uses_of(ground) {
            let kind =
                ProductKind::ALL.iter().position(|kind| Some(*kind) == used.kind).unwrap_or(ProductKind::ALL.len());
            let class = used.class.and_then(|class| AdjuvantClass::ALL.iter().position(|other| *other == class));
            all.row.spent.add(used.cost);
            field.row.spent.add(used.cost);
            crop.row.spent.add(used.cost);
            if let Some(kind) = kinds.get_mut(kind) {
                kind.row.spent.add(used.cost);
                kind.ground(at, ground.area);
            }
            if let Some(class) = class.and_then(|class| classes.get_mut(class)) {
                class.row.spent.add(used.cost);
                class.ground(at, ground.area);
            }
            if let (None, Some(count)) = (used.cost, without.get_mut(used.product as usize)) {
                *count += 1;
            }
        }
    }
    Cost {
        all: all.row,
        fields: rows(fields),
        crops: rows(crops),
        kinds: rows(kinds),
        classes: rows(classes),
        without_price: index.counted(without),
    }
}

/// Those of which there was any, the dearest first.
fn rows<K>(sums: Vec<Sum<K>>) -> Vec<CostRow<K>> {
    let mut rows: Vec<CostRow<K>> = sums.into_iter().filter(|sum| sum.last != u32::MAX).map(|sum| sum.row).collect();
    rows.sort_by_key(|row| std::cmp::Reverse(row.spent.money));
    rows
}
