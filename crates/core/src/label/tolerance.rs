//! Herbicides that a crop in leaf stands only where its variety was bred for it: the rows of `assets/tolerance.csv` against the words of crop
//! and variety. A label is typed for "soybean"; that it means tolerant soybean alone, only the variety on the field can tell.

use std::sync::LazyLock;

use serde::Deserialize;

use super::names::{grows, stands};
use super::stage::Stage;
use super::{Here, listed};
use crate::farm::Field;
use crate::finding::{Basis, Finding};
use crate::language::t;
use crate::mix::actives;

/// A row of the table.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Row {
    /// ISO common name.
    active: String,
    /// What it is called in Spanish.
    also: String,
    /// Crops, apart by commas.
    crop: String,
    /// Where it is printed.
    source: String,
}

fn table() -> &'static [Row] {
    static TABLE: LazyLock<Vec<Row>> = LazyLock::new(|| read().unwrap_or_default());
    &TABLE
}

fn read() -> Result<Vec<Row>, csv::Error> {
    crate::table::read(include_str!("../../../../assets/tolerance.csv"))
}

/// Whether a crop is up and not yet ripe, so that what hurts leaves hurts it. From R6 on it may be sprayed to dry down.
fn is_in_leaf(field: &Field) -> bool {
    match Stage::read(&field.stage) {
        Some(Stage::Leaf(stage)) => stage < 106.0,
        Some(Stage::Bbch(code)) => (10.0..85.0).contains(&code),
        None => false,
    }
}

/// The products of a pass on the varieties of its fields, once for a product.
pub(crate) fn judge(all: &[Here], findings: &mut Vec<Finding>) {
    let ids = super::once(all.iter().map(|here| here.id));
    for id in ids {
        let rows = || all.iter().filter(|here| here.id == id && is_in_leaf(here.field));
        for active in rows().next().map_or(&[][..], |here| &here.product.actives) {
            let Some(row) = table().iter().find(|row| actives::same(&row.active, &active.name)) else { continue };
            let hurt: Vec<&Here> = rows()
                .filter(|here| grows(&row.crop, here.field) && !stands(&[&row.active, &row.also], here.field))
                .collect();
            let (open, told): (Vec<&Here>, Vec<&Here>) =
                hurt.into_iter().partition(|here| here.field.variety.trim().is_empty());
            for (fields, is_open) in [(told, false), (open, true)] {
                let Some(first) = fields.first() else { continue };
                let names: Vec<String> = fields.iter().map(|here| here.field.name.clone()).collect();
                let (name, active, fields) = (&first.product.name, &active.name, listed(&names));
                let (about, basis) = (first.about_product(), Basis::of_source(&row.source));
                findings.push(if is_open {
                    let text = t!("label-only-on-tolerant-varieties", name = name, active = active, fields = fields);
                    Finding::note(about, text, basis).hint(t!("label-type-the-variety-with-what-it-stands"))
                } else {
                    let text = t!("label-variety-is-not-said-to-stand", name = name, active = active, fields = fields);
                    Finding::check(about, text, basis).hint(t!("label-leave-it-out-or-type-what-it-stands"))
                });
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::read;
    use crate::mix::actives;

    #[test]
    fn every_row_names_an_active_of_the_table() {
        let rows = read().unwrap();
        assert!(rows.len() >= 6);
        assert!(rows.iter().all(|row| actives::facts(&row.active).is_some_and(|facts| facts.name == row.active)));
    }
}
