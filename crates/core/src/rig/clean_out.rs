//! Cleaning the rig between two passes: what the labels say word for word, then what publications and common practice add,
//! the rows of `assets/cleaning.csv`.

use std::sync::LazyLock;

use serde::Deserialize;

use super::rinse::CleanStep;
use crate::farm::{Farm, Field, Id, Pass, Product, Says, Statement};
use crate::finding::Basis;
use crate::label;
use crate::label::when::{self, Situation};
use crate::mix::actives;
use crate::quantity::{Duration, Quantity};
use crate::season::binds::names_crop;

/// A row of the table.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Row {
    /// "rinse", "strength", "sensitive", "step", "last" or "safety".
    pub kind: String,
    /// The active that hurts, or "family:" with a chemical family.
    active: String,
    /// The crops that it hurts, apart by commas.
    crop: String,
    /// The share of the strength that may be left.
    pub left: Option<f64>,
    /// How many rinses.
    pub rinses: Option<u32>,
    /// Water in each, in per cent of the tank.
    pub percent: Option<f64>,
    /// A sentence that says it.
    pub says: String,
    /// Where it is printed.
    pub source: String,
}

impl Row {
    /// On what it rests.
    pub(crate) fn basis(&self) -> Basis {
        Basis::of_source(&self.source)
    }

    /// Whether a product holds what hurts.
    fn holds(&self, product: &Product) -> bool {
        product.kind.is_pesticide()
            && product.actives.iter().any(|active| match self.active.strip_prefix("family:") {
                Some(family) => actives::facts(&active.name).is_some_and(|facts| facts.family == family),
                None => {
                    actives::same(&self.active, &active.name) || {
                        // "dicamba diglycolamine" is dicamba; "2,4-DB" is not 2,4-D.
                        let (name, typed) = (self.active.to_lowercase(), active.name.trim().to_lowercase());
                        typed.strip_prefix(&name).is_some_and(|rest| rest.starts_with([' ', '-']))
                    }
                }
            })
    }

    /// Whether a field bears a crop that it hurts. A variety that says it stands the active is not hurt.
    fn hurts(&self, field: &Field) -> bool {
        let variety = field.variety.to_lowercase();
        let stands = variety.contains(&self.active.to_lowercase())
            && ["toleran", "resistan"].iter().any(|word| variety.contains(word));
        !stands && names_crop(&self.crop, &field.crop) == Some(true)
    }
}

/// The table.
pub(crate) fn table() -> &'static [Row] {
    static TABLE: LazyLock<Vec<Row>> = LazyLock::new(|| read().unwrap_or_default());
    &TABLE
}

fn read() -> Result<Vec<Row>, csv::Error> {
    crate::table::read(include_str!("../../../../assets/cleaning.csv"))
}

/// What a clean-out takes where nothing else is known: common practice, no source.
pub fn usual_time() -> Duration {
    #[derive(Deserialize)]
    struct Usual {
        what: String,
        time: String,
    }
    static TIME: LazyLock<Duration> = LazyLock::new(|| {
        let rows: Vec<Usual> =
            crate::table::read(include_str!("../../../../assets/work-usual.csv")).unwrap_or_default();
        rows.iter()
            .find(|row| row.what == "clean_out")
            .and_then(|row| Duration::parse(&row.time).ok())
            .unwrap_or(Duration::ZERO)
    });
    *TIME
}

/// The pesticides of a pass.
fn pesticides<'a>(farm: &'a Farm, pass: &'a Pass) -> impl Iterator<Item = (&'a Id, &'a Product)> {
    pass.mix
        .iter()
        .filter_map(|line| farm.products.get_key_value(&line.product))
        .filter(|(_, product)| product.kind.is_pesticide())
}

/// Whether the rig is cleaned out between two passes: they take the same rig, and the first holds a pesticide that the second
/// does not.
pub fn takes_clean_out(farm: &Farm, first: &str, second: &str) -> bool {
    let (Some(first), Some(second)) = (farm.passes.get(first), farm.passes.get(second)) else { return false };
    first.rig == second.rig && pesticides(farm, first).any(|(id, _)| !second.mix.iter().any(|line| line.product == *id))
}

/// The steps of cleaning between two passes; empty where none is needed.
pub fn between(farm: &Farm, first: &str, second: &str) -> Vec<CleanStep> {
    if !takes_clean_out(farm, first, second) {
        return Vec::new();
    }
    let (Some(pass), Some(next)) = (farm.passes.get(first), farm.passes.get(second)) else { return Vec::new() };
    let gone = |id: &Id| !next.mix.iter().any(|line| line.product == *id);
    steps(farm, pass, Some(next), gone)
}

/// The steps of cleaning after a pass that no other follows.
pub(crate) fn after(farm: &Farm, pass: &str) -> Vec<CleanStep> {
    match farm.passes.get(pass) {
        Some(pass) if pesticides(farm, pass).next().is_some() => steps(farm, pass, None, |_| true),
        _ => Vec::new(),
    }
}

fn steps(farm: &Farm, pass: &Pass, next: Option<&Pass>, cleaned: impl Fn(&Id) -> bool) -> Vec<CleanStep> {
    let mut steps = Vec::new();
    for (id, product) in pesticides(farm, pass).filter(|(id, _)| cleaned(id)) {
        for statement in product.label.iter().filter(|statement| speaks(farm, pass, id, product, statement)) {
            let Says::CleanOut { before, how } = &statement.says else { continue };
            let Some(known) = for_next(farm, before, next) else { continue };
            let what = if known { how.trim().to_owned() } else { format!("Before {}: {}", before.trim(), how.trim()) };
            steps.push(CleanStep { what, basis: Basis::Label(label::place(product, statement)) });
        }
    }
    let of = |kind: &'static str, practice: bool| {
        table()
            .iter()
            .filter(move |row| row.kind == kind && (row.basis() == Basis::Practice) == practice)
            .map(|row| CleanStep { what: row.says.clone(), basis: row.basis() })
    };
    // Of the two rules for the rinsing water the one that takes more.
    let most = table()
        .iter()
        .filter(|row| row.kind == "rinse")
        .max_by(|a, b| a.percent.unwrap_or_default().total_cmp(&b.percent.unwrap_or_default()));
    steps.extend(most.map(|row| CleanStep { what: row.says.clone(), basis: row.basis() }));
    steps.extend(of("step", false));
    steps.extend(of("step", true));
    steps.extend(of("last", true));
    steps.extend(of("safety", true));
    steps
}

/// Whether a statement on cleaning speaks for what a pass sprays; where it cannot be told, it does.
fn speaks(farm: &Farm, pass: &Pass, id: &Id, product: &Product, statement: &Statement) -> bool {
    if !matches!(statement.says, Says::CleanOut { .. }) {
        return false;
    }
    let mut fields = pass.fields.iter().filter_map(|field| farm.fields.get(field)).peekable();
    let crop = fields.peek().is_none()
        || fields.any(|field| field.crop.trim().is_empty() || label::for_crop(statement, field));
    crop && when::holds(&statement.when, &Situation::new(farm, pass, id, product)) != Some(false)
}

/// Whether words for the crop that comes next speak: `Some(true)` where they do, `Some(false)` where it cannot be told.
fn for_next(farm: &Farm, before: &str, next: Option<&Pass>) -> Option<bool> {
    if before.trim().is_empty() {
        return Some(true);
    }
    let crops: Vec<&str> = next
        .into_iter()
        .flat_map(|next| &next.fields)
        .filter_map(|field| farm.fields.get(field))
        .map(|field| field.crop.trim())
        .collect();
    if crops.iter().any(|crop| names_crop(before, crop).is_some()) {
        Some(true)
    } else if crops.is_empty() || crops.contains(&"") {
        Some(false)
    } else {
        None
    }
}

/// The next pass of the same rig, by day and then as listed, that is not recorded.
pub(crate) fn next_of_rig<'a>(farm: &'a Farm, pass_id: &str, pass: &Pass) -> Option<(&'a Id, &'a Pass)> {
    let place = farm.passes.get_index_of(pass_id)?;
    farm.passes
        .iter()
        .enumerate()
        .filter(|(at, (_, other))| other.rig == pass.rig && (other.date, *at) > (pass.date, place))
        .filter(|(_, (id, _))| !farm.is_recorded(id))
        .min_by_key(|(at, (_, other))| (other.date, *at))
        .map(|(_, found)| found)
}

/// The rows that speak of traces of a mix in the next one, each with the fields that it hurts. An active that the next mix holds
/// itself is not one of them.
pub(crate) fn hurts<'a>(farm: &'a Farm, pass: &Pass, next: &Pass) -> Vec<(&'static Row, Vec<&'a Field>)> {
    table()
        .iter()
        .filter(|row| row.kind == "sensitive")
        .filter(|row| pesticides(farm, pass).any(|(_, product)| row.holds(product)))
        .filter(|row| !pesticides(farm, next).any(|(_, product)| row.holds(product)))
        .filter_map(|row| {
            let fields: Vec<&Field> = next
                .fields
                .iter()
                .filter_map(|field| farm.fields.get(field))
                .filter(|field| row.hurts(field))
                .collect();
            (!fields.is_empty()).then_some((row, fields))
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::{read, usual_time};

    #[test]
    fn every_row_reads_and_has_a_source() {
        let rows = read().unwrap_or_default();
        assert!(rows.len() >= 14);
        for row in &rows {
            assert!(!row.says.is_empty() && !row.source.is_empty(), "{row:?}");
            match row.kind.as_str() {
                "rinse" => assert!(row.rinses.is_some() && row.percent.is_some(), "{row:?}"),
                "strength" => assert!(row.left.is_some(), "{row:?}"),
                "sensitive" => assert!(!row.active.is_empty() && !row.crop.is_empty(), "{row:?}"),
                "step" | "last" | "safety" => {}
                other => assert_eq!(other, "", "no such kind"),
            }
        }
        assert!(!usual_time().is_zero());
    }
}
