//! The mixing order: the label first, then a published order by formulation type.
//!
//! What all of them agree on: water and agitation first, never concentrates together, dry products before oils, bags before
//! fertilizer, each dispersed before the next.
//!
//! Where published orders disagree about two products of the mix, a Note names both, because an order that clots costs a
//! tank, and no order is right for every pair.

use crate::language::{self, t, yes_or_no};
use std::sync::LazyLock;

use serde::Deserialize;

use crate::farm::label::{OrderPlace, Says};
use crate::farm::{AdjuvantClass, CarrierKind, Formulation, Id, Product, ProductKind};
use crate::finding::{Basis, Finding, Subject};
use crate::language::{Say, say};
use crate::mix::line::PlannedLine;
use crate::words::all_of;
use crate::working::Working;

/// A row of `assets/mixing-orders.csv`: the types that go in at one rank of one published order.
#[derive(Clone, Debug, Deserialize)]
pub struct OrderRow {
    /// Short name of the order.
    pub order: String,
    /// Who published it.
    pub title: String,
    /// From first to last.
    pub rank: u32,
    /// Formulation codes and adjuvant class keys, apart by spaces.
    pub keys: String,
    /// How full the tank is before these go in, in per cent.
    pub full_before: f64,
    /// Why there, in the words of common practice; the sources give the order alone.
    pub why: String,
    /// Where it is printed.
    pub source: String,
}

/// Where the compatibility agent goes in a carrier of fertilizer.
const AGENT_FIRST: &str =
    "South Dakota State University Extension (Shaffer); Oklahoma State University Extension, PSS-2789";

/// All published orders, row by row.
pub fn table() -> &'static [OrderRow] {
    static TABLE: LazyLock<Vec<OrderRow>> =
        LazyLock::new(|| crate::table::read(include_str!("../../../../assets/mixing-orders.csv")).unwrap_or_default());
    &TABLE
}

/// The names of the published orders with their titles, in the order of the table; the first is the default.
pub fn orders() -> Vec<(&'static str, &'static str)> {
    let mut names: Vec<(&str, &str)> = Vec::new();
    for row in table() {
        if !names.iter().any(|(name, _)| *name == row.order) {
            names.push((&row.order, &row.title));
        }
    }
    names
}

/// Where a product goes in, and why.
#[derive(Clone, Debug, PartialEq)]
pub struct Placed {
    /// The product.
    pub product: Id,
    /// How full the tank must be before it, as a share of the load.
    pub full_before: f64,
    /// Why here: a sentence.
    pub why: String,
    /// How it is put in and what to wait for before the next; may be empty.
    pub how: String,
    /// On what that rests.
    pub basis: Basis,
}

/// The keys under which the table may speak of a product, the most particular first.
fn keys(product: &Product) -> [&'static str; 3] {
    let particular = match (product.kind, product.class) {
        (ProductKind::Adjuvant | ProductKind::Conditioner, Some(class)) => class.key(),
        (ProductKind::Adjuvant, None) => AdjuvantClass::Other.key(),
        (ProductKind::Conditioner, None) => AdjuvantClass::ConditionerWithoutAmmonium.key(),
        (ProductKind::FoliarFeed, _) => "FOLIAR",
        _ => "",
    };
    let sulfate = product.adjuvant_class() == Some(AdjuvantClass::AmmoniumSulfate);
    let premix = if sulfate && product.surfactant.is_some() { "AMS+SURFACTANT" } else { "" };
    [premix, particular, product.formulation.code()]
}

/// How a product is put in: in its label's own words, or in those of its formulation; and what to wait for.
pub(crate) fn how(product: &Product, carrier: CarrierKind) -> Say {
    let own: Vec<&str> = product
        .label
        .iter()
        .filter_map(|statement| match &statement.says {
            Says::Handling { what } => Some(what.as_str()),
            _ => None,
        })
        .collect();
    if !own.is_empty() {
        return own.join("; ").into();
    }
    let handling = match (carrier, product.formulation) {
        (CarrierKind::Water, formulation) => formulation.handling(),
        (_, Formulation::WSP) => say("card-handle-dissolve-first"),
        (_, Formulation::WG) => say("card-handle-slurry"),
        (_, formulation) => formulation.handling(),
    };
    Say::all([handling, product.formulation.pause()], "; ")
}

fn row_for<'table>(order: &str, product: &Product) -> Option<&'table OrderRow> {
    keys(product).into_iter().filter(|key| !key.is_empty()).find_map(|key| {
        table().iter().find(|row| row.order == order && row.keys.split(' ').any(|listed| listed == key))
    })
}

struct Rank<'a> {
    id: &'a Id,
    product: &'a Product,
    /// −1 and 1 for the label's "first" and "last", 0 else.
    by_label: i8,
    /// A compatibility agent in a carrier of fertilizer goes in before what it keeps apart, in every order.
    agent: bool,
    label: Option<(f64, String)>,
    row: Option<&'static OrderRow>,
}

/// Puts the products of a mix in order.
pub fn place(mix: &[(&Id, &Product)], wanted: &str, carrier: CarrierKind, findings: &mut Vec<Finding>) -> Vec<Placed> {
    let known = orders();
    let order = known
        .iter()
        .map(|(name, _)| *name)
        .find(|name| *name == wanted)
        .or(known.first().map(|(name, _)| *name))
        .unwrap_or("");
    if !wanted.is_empty() && order != wanted {
        findings.push(
            Finding::check(
                Subject::Farm,
                t!("mix-no-published-mixing-order-is-called", wanted = wanted, order = order),
                Basis::Arithmetic,
            )
            .hint(t!("mix-choose-an-order-beside-the-mix")),
        );
    }
    let mut ranks: Vec<Rank<'_>> = mix
        .iter()
        .map(|(id, product)| {
            let stated = product.label.iter().find_map(|statement| match &statement.says {
                Says::MixingOrder { place, tank_full } => {
                    let full = tank_full.as_ref().map_or(0.0, |share| share.to_fraction());
                    Some((*place, full, crate::label::place(product, statement)))
                }
                _ => None,
            });
            let by_label = match &stated {
                Some((OrderPlace::First, ..)) => -1,
                Some((OrderPlace::Last, ..)) => 1,
                None => 0,
            };
            let agent = carrier != CarrierKind::Water
                && by_label == 0
                && product.adjuvant_class() == Some(AdjuvantClass::CompatibilityAgent);
            let row = row_for(order, product);
            Rank { id, product, by_label, agent, label: stated.map(|(_, full, at)| (full, at)), row }
        })
        .collect();
    // A stable sort: products of one rank stay as the user listed them.
    ranks.sort_by_key(|rank| (rank.by_label, !rank.agent, rank.row.map_or(u32::MAX, |row| row.rank)));
    disagreements(order, &ranks, findings);
    for place in [-1, 1] {
        let claims: Vec<&Rank<'_>> = ranks.iter().filter(|rank| rank.by_label == place).collect();
        if let [first, second, ..] = claims.as_slice() {
            findings.push(Finding::check(
                Subject::Product(second.id.clone()),
                t!(
                    "mix-the-labels-of-and-both-want",
                    name = first.product.name,
                    name2 = second.product.name,
                    which = yes_or_no(place < 0)
                ),
                Basis::Label(first.label.as_ref().map(|(_, at)| at.clone()).unwrap_or_default()),
            ));
        }
    }
    let title = known.iter().find(|(name, _)| *name == order).map_or("", |(_, title)| title);
    ranks
        .into_iter()
        .map(|rank| {
            let type_name = rank
                .product
                .class
                .filter(|_| !rank.product.kind.is_pesticide())
                .map_or_else(|| rank.product.formulation.name(), AdjuvantClass::name);
            let how = how(rank.product, carrier).aloud();
            match (rank.label, rank.row) {
                (None, Some(row)) if rank.agent => Placed {
                    product: rank.id.clone(),
                    full_before: row.full_before / 100.0,
                    why: t!("mix-in-the-compatibility-agent-goes-in", carrier = carrier.name()),
                    how,
                    basis: Basis::Published(AGENT_FIRST.to_owned()),
                },
                (Some((full, at)), row) => Placed {
                    product: rank.id.clone(),
                    full_before: if full > 0.0 {
                        full
                    } else {
                        row.map_or(if rank.by_label > 0 { 0.75 } else { 0.5 }, |row| row.full_before / 100.0)
                    },
                    why: t!("mix-its-label-puts-it", which = yes_or_no(rank.by_label < 0)),
                    how,
                    basis: Basis::Label(at),
                },
                (None, Some(row)) => Placed {
                    product: rank.id.clone(),
                    full_before: row.full_before / 100.0,
                    why: t!(
                        "mix-place-in",
                        why = language::row(&row.why),
                        type_name = type_name,
                        rank = row.rank,
                        title = title
                    ),
                    how,
                    basis: Basis::Published(row.source.clone()),
                },
                (None, None) => {
                    findings.push(Finding::check(
                        Subject::Product(rank.id.clone()),
                        t!("mix-does-not-say-where-goes-it", title = title, name = rank.product.name),
                        Basis::Published(title.to_owned()),
                    ));
                    Placed {
                        product: rank.id.clone(),
                        full_before: 0.75,
                        why: t!("mix-no-order-speaks-of-it-so").to_owned(),
                        how,
                        basis: Basis::Practice,
                    }
                }
            }
        })
        .collect()
}

/// Puts the user's own first fill in the place of the published one: for the first product and all others that the order
/// puts in at the same mark.
pub fn first_fill(order: &mut [Placed], own: Option<crate::quantity::Share>) {
    let (Some(own), Some(first)) = (own, order.first().map(|placed| placed.full_before)) else { return };
    for placed in
        order.iter_mut().filter(|placed| placed.full_before <= first && !matches!(placed.basis, Basis::Label(_)))
    {
        placed.full_before = own.to_fraction();
    }
}

/// The order with the reason for each place; `None` for a mix of one.
pub(crate) fn working(lines: &[PlannedLine], order: &[Placed]) -> Option<Working> {
    (lines.len() > 1).then(|| {
        let placed = |line: &PlannedLine| order.iter().find(|placed| placed.product == line.product);
        lines.iter().filter_map(|line| Some((line, placed(line)?))).fold(
            Working::new(t!("mix-mixing-order")),
            |working, (line, placed)| {
                let how = if placed.how.is_empty() { String::new() } else { format!("; {}", placed.how) };
                working.step(format!("{}. {}: {}{how}", line.number, line.name, placed.why), "")
            },
        )
    })
}

/// Notes which products other published orders put the other way round: one Note for a product and the orders against it.
fn disagreements(chosen: &str, ranks: &[Rank<'_>], findings: &mut Vec<Finding>) {
    let (mine, others): (Vec<_>, Vec<_>) = orders().into_iter().partition(|(name, _)| *name == chosen);
    let chosen_title = mine.first().map_or("", |(_, title)| title);
    for (at, first) in ranks.iter().enumerate() {
        let mut reversed: Vec<(Vec<&str>, Vec<&Rank<'_>>)> = Vec::new();
        for second in ranks.iter().skip(at + 1) {
            // Where a label speaks, no published order does.
            let (Some(a), Some(b)) = (first.row, second.row) else { continue };
            if first.by_label != 0 || second.by_label != 0 || first.agent || a.rank >= b.rank {
                continue;
            }
            let against: Vec<&str> = others
                .iter()
                .filter(|(name, _)| match (row_for(name, first.product), row_for(name, second.product)) {
                    (Some(a), Some(b)) => a.rank > b.rank,
                    _ => false,
                })
                .map(|(_, title)| *title)
                .collect();
            match reversed.iter_mut().find(|(known, _)| *known == against) {
                Some((_, later)) => later.push(second),
                None if !against.is_empty() => reversed.push((against, vec![second])),
                None => {}
            }
        }
        for (against, later) in reversed {
            let names: Vec<&str> = later.iter().map(|rank| rank.product.name.as_str()).collect();
            let source = first.row.map_or("", |row| row.source.as_str());
            findings.push(
                Finding::note(
                    Subject::Product(first.id.clone()),
                    t!(
                        "mix-published-orders-differ-puts-before-the",
                        chosen_title = chosen_title,
                        name = first.product.name,
                        names = all_of(names),
                        against = all_of(&against)
                    ),
                    Basis::Published(format!("{source}; {}", against.join("; "))),
                )
                .hint(t!("mix-a-jar-test-tells-which-suits")),
            );
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{orders, table};
    use crate::farm::{AdjuvantClass, Formulation};

    #[test]
    fn the_table_reads_and_every_row_has_a_source() {
        assert!(table().len() > 30);
        for row in table() {
            assert!(
                !row.source.is_empty() && !row.why.is_empty() && (0.0..=100.0).contains(&row.full_before),
                "{row:?}"
            );
        }
    }

    #[test]
    fn ranks_rise_within_each_order_and_the_tank_only_fills() {
        for (order, _) in orders() {
            let rows: Vec<_> = table().iter().filter(|row| row.order == order).collect();
            assert!(
                rows.windows(2).all(|pair| pair[0].rank <= pair[1].rank && pair[0].full_before <= pair[1].full_before),
                "{order}"
            );
        }
    }

    #[test]
    fn every_order_places_every_formulation_and_the_main_classes() {
        for (order, _) in orders() {
            let keys: Vec<&str> =
                table().iter().filter(|row| row.order == order).flat_map(|row| row.keys.split(' ')).collect();
            for code in Formulation::ALL.map(Formulation::code) {
                assert!(keys.contains(&code), "{order} lacks {code}");
            }
            for class in
                [AdjuvantClass::NonIonicSurfactant, AdjuvantClass::CropOilConcentrate, AdjuvantClass::AmmoniumSulfate]
            {
                assert!(keys.contains(&class.key()), "{order} lacks {class:?}");
            }
        }
    }
}
