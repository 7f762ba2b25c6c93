//! What a field got, record by record, and which resistance groups came again.

use jiff::civil::Date;

use crate::farm::{Farm, Id, ProductKind};
use crate::quantity::{AmountPerArea, Area};
use crate::season::review::{Choice, FieldGroups, Index, resistance};
use crate::season::{Log, driven_over};

/// A record of a field.
#[derive(Clone, Debug, PartialEq)]
pub struct Sprayed {
    /// The record.
    pub record: Id,
    /// Its name.
    pub name: String,
    /// Its day.
    pub date: Date,
    /// On what ground of the field.
    pub on: OnField,
    /// What went out.
    pub lines: Vec<Line>,
    /// The resistance groups, each with whether it came again too soon then.
    pub groups: Vec<(ProductKind, String, bool)>,
}

/// The ground of a record on the field.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct OnField {
    /// The crop then; empty where it was not typed.
    pub crop: String,
    /// Which part, in words; empty for all.
    pub part: String,
    /// The ground driven over.
    pub area: Option<Area>,
}

/// A product of a record.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// The product.
    pub product: Id,
    /// Its name then.
    pub name: String,
    /// How much over ground; `None` where the record has no area.
    pub rate: Option<AmountPerArea>,
    /// Its actives as recorded, else as the shed has them.
    pub actives: Vec<String>,
}

/// The records of a field, the latest first, and its groups by season.
pub(super) fn on_field(farm: &Farm, log: &Log, id: &Id) -> (Vec<Sprayed>, Option<FieldGroups>) {
    let index = Index::on_field(farm, log, id);
    let all = Choice { fields: vec![id.clone()], ..Choice::all() };
    let groups = resistance::page(&index.pick(&all)).fields.into_iter().find(|field| field.field == *id);
    let again = |kind: ProductKind, group: &str, day: Date| {
        let rows = groups.iter().flat_map(|field| &field.rows);
        rows.filter(|row| row.kind == kind && row.group == group).any(|row| row.came_again_on(day))
    };
    let mut sprayed: Vec<Sprayed> = log
        .on_field(farm, id)
        .zip(index.groups())
        .map(|((record_id, record), of_record)| {
            let then = record.fields.get(id);
            let lines = record.lines.iter().filter(|line| !line.amount.is_zero()).map(|line| Line {
                product: line.product.to_string(),
                name: line.name.to_string(),
                rate: line.amount.value().spread(record.area()),
                actives: if line.actives.is_empty() {
                    let product = farm.products.get(&line.product);
                    product.into_iter().flat_map(|product| &product.actives).map(|held| held.name.clone()).collect()
                } else {
                    line.actives.iter().map(|held| held.name.to_string()).collect()
                },
            });
            let groups = of_record.into_iter().map(|(kind, group)| {
                let group = group.to_uppercase();
                let repeated = again(kind, &group, record.date);
                (kind, group, repeated)
            });
            Sprayed {
                record: record_id.clone(),
                name: record.name.to_string(),
                date: record.date,
                on: OnField {
                    crop: then.map(|then| then.crop.trim().to_owned()).unwrap_or_default(),
                    part: then.map(|then| then.part.trim().to_owned()).unwrap_or_default(),
                    area: driven_over(farm, record, id),
                },
                lines: lines.collect(),
                groups: groups.collect(),
            }
        })
        .collect();
    sprayed.sort_by_key(|sprayed| std::cmp::Reverse(sprayed.date));
    (sprayed, groups)
}
