//! Cleaning the rig between two passes: what the labels say word for word, then what publications and common practice add,
//! the rows of `assets/cleaning.csv`.

use std::cmp::Ordering;
use std::sync::LazyLock;

use serde::Deserialize;

use super::rinse::CleanStep;
use crate::farm::{Farm, Field, Id, Pass, Product, Says, Statement};
use crate::finding::Basis;
use crate::label;
use crate::label::names;
use crate::label::when::{self, Situation};
use crate::language::{self, row, t};
use crate::mix::actives;
use crate::quantity::{Duration, Quantity};
use crate::season::Log;
use crate::season::binds::names_crop;
use crate::words::named_in;

/// A row of the table.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Row {
    /// "rinse", "strength", "sensitive", "stands", "step", "last" or "safety".
    pub kind: String,
    /// The active that hurts, or "family:" with a chemical family.
    active: String,
    /// The crops that it hurts, or that stand it, apart by commas.
    crop: String,
    /// The share of the strength that may be left.
    pub left: Option<f64>,
    /// How many rinses.
    pub rinses: Option<u32>,
    /// Water in each, in per cent of the tank.
    pub percent: Option<f64>,
    says: String,
    /// Where it is printed.
    pub source: String,
}

impl Row {
    /// On what it rests.
    pub(crate) fn basis(&self) -> Basis {
        Basis::of_source(&self.source)
    }

    /// A sentence that says it.
    pub(crate) fn says(&self) -> &str {
        row(&self.says)
    }

    /// The active, or the family, in the language that is spoken.
    pub(crate) fn what_said(&self) -> &str {
        self.family().map_or(&self.active, language::names::family)
    }

    /// The active, or the family, as the table has it.
    pub(crate) fn what(&self) -> &str {
        self.family().unwrap_or(&self.active)
    }

    fn family(&self) -> Option<&str> {
        self.active.strip_prefix("family:")
    }

    /// Whether a product holds what hurts, by any of its names or as a salt or an ester.
    fn holds(&self, product: &Product) -> bool {
        product.kind.is_pesticide()
            && product.actives.iter().any(|active| match self.family() {
                Some(family) => actives::facts(&active.name).is_some_and(|facts| facts.family == family),
                None => actives::same(&self.active, &active.name) || named_in(&self.active, &active.name),
            })
    }

    /// Whether the crop of a field is among the row's.
    fn bears(&self, field: &Field) -> bool {
        names::grows(&self.crop, field)
    }

    /// Whether crop and variety, as typed, say that they stand the active.
    fn tolerated(&self, field: &Field) -> bool {
        names::stands(&[self.what()], field)
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
pub(super) fn pesticides<'a>(farm: &'a Farm, pass: &'a Pass) -> impl Iterator<Item = (&'a Id, &'a Product)> {
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

/// What the label of a product that a pass sprays says of cleaning before the next one.
pub(super) fn of_label(
    farm: &Farm,
    pass: &Pass,
    (id, product): (&Id, &Product),
    next: Option<&Pass>,
) -> Vec<CleanStep> {
    let mut steps = Vec::new();
    for statement in product.label.iter().filter(|statement| speaks(farm, pass, id, product, statement)) {
        let Says::CleanOut { before, how } = &statement.says else { continue };
        let Some(known) = for_next(farm, before, next) else { continue };
        let what =
            if known { how.trim().to_owned() } else { t!("rig-before", before = before.trim(), how = how.trim()) };
        steps.push(CleanStep { what, basis: Basis::Label(label::place(product, statement)) });
    }
    steps
}

fn steps(farm: &Farm, pass: &Pass, next: Option<&Pass>, cleaned: impl Fn(&Id) -> bool) -> Vec<CleanStep> {
    let pesticides = pesticides(farm, pass).filter(|(id, _)| cleaned(id));
    let mut steps: Vec<CleanStep> = pesticides.flat_map(|product| of_label(farm, pass, product, next)).collect();
    let of = |kind: &'static str, practice: bool| {
        table()
            .iter()
            .filter(move |row| row.kind == kind && (row.basis() == Basis::Practice) == practice)
            .map(|row| CleanStep { what: row.says().to_owned(), basis: row.basis() })
    };
    // Of the two rules for the rinsing water the one that takes more.
    let most = table()
        .iter()
        .filter(|row| row.kind == "rinse")
        .max_by(|a, b| a.percent.unwrap_or_default().total_cmp(&b.percent.unwrap_or_default()));
    steps.extend(most.map(|row| CleanStep { what: row.says().to_owned(), basis: row.basis() }));
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

/// The next pass of the same rig that is not recorded: by day, then by the times that they start at where both are typed, else
/// as listed.
pub(crate) fn next_of_rig<'a>(farm: &'a Farm, log: &Log, pass_id: &str, pass: &Pass) -> Option<(&'a Id, &'a Pass)> {
    let place = farm.passes.get_index_of(pass_id)?;
    let order = |(at, a): (usize, &Pass), (other_at, b): (usize, &Pass)| {
        let start = a.start.zip(b.start).map_or(Ordering::Equal, |(a, b)| a.cmp(&b));
        a.date.cmp(&b.date).then(start).then(at.cmp(&other_at))
    };
    farm.passes
        .iter()
        .enumerate()
        .filter(|(at, (_, other))| other.rig == pass.rig && order((*at, other), (place, pass)).is_gt())
        .filter(|(_, (id, _))| !log.is_recorded(farm, id))
        .min_by(|(at, (_, one)), (other_at, (_, other))| order((*at, one), (*other_at, other)))
        .map(|(_, found)| found)
}

/// The rows of a kind that speak of traces of a mix in the next one. An active that the next mix holds itself is not one of them.
fn traces(farm: &Farm, mix: &[&Product], next: &Pass, kind: &str) -> impl Iterator<Item = &'static Row> {
    table()
        .iter()
        .filter(move |row| row.kind == kind)
        .filter(|row| mix.iter().any(|product| row.holds(product)))
        .filter(|row| !pesticides(farm, next).any(|(_, product)| row.holds(product)))
}

/// The first row by which traces of an active, or of a family, hurt the crop of a field.
fn hurt_by(active: &str, field: &Field) -> Option<&'static Row> {
    table().iter().find(|row| row.kind == "sensitive" && row.active == active && row.bears(field))
}

/// The rows that say whom traces of a mix hurt in the next one, each with its fields.
pub(crate) fn hurts<'a>(farm: &'a Farm, pass: &Pass, next: &Pass) -> Vec<(&'static Row, Vec<&'a Field>)> {
    let mix: Vec<&Product> = pesticides(farm, pass).map(|(_, product)| product).collect();
    hurt(farm, &mix, next)
}

/// The same of some products.
pub(crate) fn hurt<'a>(farm: &'a Farm, mix: &[&Product], next: &Pass) -> Vec<(&'static Row, Vec<&'a Field>)> {
    with_fields(farm, next, traces(farm, mix, next, "sensitive"), |row, field| {
        hurt_by(&row.active, field).is_some_and(|by| std::ptr::eq(by, row))
    })
}

/// The rows that say who stands traces of a mix, each with the fields of the next one of which that cannot be told.
pub(crate) fn unclear<'a>(farm: &'a Farm, pass: &Pass, next: &Pass) -> Vec<(&'static Row, Vec<&'a Field>)> {
    let mix: Vec<&Product> = pesticides(farm, pass).map(|(_, product)| product).collect();
    unknown(farm, &mix, next)
}

/// The same of some products.
pub(crate) fn unknown<'a>(farm: &'a Farm, mix: &[&Product], next: &Pass) -> Vec<(&'static Row, Vec<&'a Field>)> {
    with_fields(farm, next, traces(farm, mix, next, "stands"), |row, field| {
        hurt_by(&row.active, field).is_none() && names_crop(&row.crop, &field.crop) != Some(true)
    })
}

fn with_fields<'a>(
    farm: &'a Farm,
    pass: &Pass,
    rows: impl Iterator<Item = &'static Row>,
    speaks: impl Fn(&'static Row, &Field) -> bool,
) -> Vec<(&'static Row, Vec<&'a Field>)> {
    let fields = || pass.fields.iter().filter_map(|field| farm.fields.get(field));
    rows.map(|row| (row, fields().filter(|field| !row.tolerated(field) && speaks(row, field)).collect::<Vec<_>>()))
        .filter(|(_, fields)| !fields.is_empty())
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
                // Without a row of who stands it, a crop that is not known would pass in silence.
                "sensitive" => assert!(
                    !row.crop.is_empty()
                        && rows.iter().filter(|other| other.kind == "stands" && other.active == row.active).count()
                            == 1,
                    "{row:?}"
                ),
                "stands" => assert!(!row.active.is_empty() && !row.crop.is_empty(), "{row:?}"),
                "step" | "last" | "safety" => {}
                other => assert_eq!(other, "", "no such kind"),
            }
        }
        assert!(!usual_time().is_zero());
    }
}
