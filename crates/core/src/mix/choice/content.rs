//! What an adjuvant should hold to count as one of its class. Sources name different least contents; the finding shows all.

use crate::language::t;
use crate::words::any_of;
use std::sync::LazyLock;

use serde::Deserialize;

use crate::farm::{Farm, Product};
use crate::finding::{Basis, Finding, Subject};
use crate::mix::line::PlannedLine;
use crate::quantity::number::show;
use crate::quantity::{AsTyped, Share};

/// A row of `assets/adjuvant-content.csv`.
#[derive(Deserialize)]
struct Row {
    class: String,
    what: String,
    least_percent: f64,
    source: String,
}

impl Row {
    /// What it speaks of, in words.
    fn words(&self) -> &str {
        match self.what.as_str() {
            "surface-active content" => t!("mix-surface-active-content"),
            "emulsifier" => t!("mix-emulsifier"),
            other => other,
        }
    }
}

fn table() -> &'static [Row] {
    static TABLE: LazyLock<Vec<Row>> = LazyLock::new(|| {
        crate::table::read(include_str!("../../../../../assets/adjuvant-content.csv")).unwrap_or_default()
    });
    &TABLE
}

/// The content typed for an adjuvant, by weight: of what the row speaks of, by its name, or the only one there is.
fn held(product: &Product, what: &str) -> Option<Share> {
    let named = product.actives.iter().find(|active| what.contains(&active.name.trim().to_lowercase()));
    let only = product.actives.first().filter(|_| product.actives.len() == 1 && what.starts_with("surface"));
    let density = product.density.as_ref().map(AsTyped::value);
    named.or(only)?.content.per_mass(density)
}

/// Adjuvants of the mix that hold less than a source asks of their class.
pub(super) fn judge(farm: &Farm, lines: &[PlannedLine], findings: &mut Vec<Finding>) {
    for line in lines {
        let Some(product) = farm.products.get(&line.product) else { continue };
        let Some(class) = product.adjuvant_class() else { continue };
        let rows: Vec<&Row> = table().iter().filter(|row| row.class == class.key()).collect();
        let short: Vec<(&&Row, Share)> = rows
            .iter()
            .filter_map(|row| Some((row, held(product, &row.what)?)))
            .filter(|(row, held)| Share::from_percent(row.least_percent).exceeds(*held))
            .collect();
        let Some((first, content)) = short.first() else { continue };
        let asked: Vec<String> =
            rows.iter().map(|row| format!("{} % ({})", show(row.least_percent, 0), row.source)).collect();
        let text = t!(
            "mix-holds-a-is-asked-for-at",
            name = product.name,
            show = show(content.to_percent(), 1),
            what = first.words(),
            class = class.name(),
            asked = any_of(asked)
        );
        let about = Subject::Product(line.product.clone());
        let basis = Basis::Published(short.iter().map(|(row, _)| row.source.as_str()).collect::<Vec<_>>().join("; "));
        findings.push(if short.len() == rows.len() {
            Finding::check(about, text, basis).hint(t!("mix-read-on-each-label-what-it"))
        } else {
            Finding::note(about, text, basis).hint(t!("mix-sources-differ-read-on-each-label"))
        });
    }
}

#[cfg(test)]
mod tests {
    use super::table;
    use crate::farm::AdjuvantClass;

    #[test]
    fn every_row_has_a_class_and_a_source() {
        assert!(table().len() >= 3);
        assert!(table().iter().all(|row| AdjuvantClass::of_key(&row.class).is_some() && !row.source.is_empty()));
    }
}
