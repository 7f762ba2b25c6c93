//! What to buy for a shortfall, in the container sizes typed on the product.
//!
//! # Method
//! A price is per amount, so the least cost is the least amount that covers the shortfall; of several ways to buy it the one
//! with the fewest containers is taken. Every way that may be the best is looked at: of each size but the largest so many as
//! cannot be exchanged for fewer larger ones of the same amount (twelve jugs of 2.5 gal are a drum of 30), and of the largest
//! what is still missing. Amounts that differ by less than one part in 10⁹ are taken as the same.

use std::cmp::Ordering;

use super::on_hand::in_kind;
use crate::farm::Product;
use crate::label::listed;
use crate::language::t;
use crate::quantity::number::show;
use crate::quantity::{Amount, Money};

/// What to buy.
#[derive(Clone, Debug, PartialEq)]
pub struct Purchase {
    /// Which of the product's containers, from 0, and how many; the largest first.
    pub items: Vec<(usize, u32)>,
    /// What they hold.
    pub amount: Amount,
    /// What remains of it when the shortfall is covered.
    pub over: Amount,
    /// What it costs; `None` where no price is typed.
    pub cost: Option<Money>,
}

impl Purchase {
    /// In words: "2 jugs of 2.5 gal and 1 drum of 30 gal".
    pub fn words(&self, product: &Product) -> String {
        let items: Vec<String> = self
            .items
            .iter()
            .filter_map(|(at, count)| {
                let container = product.containers.get(*at)?;
                Some(t!(
                    "stock-show-kind-of-size",
                    show = show(f64::from(*count), 0),
                    kind = container.kind.name(*count),
                    size = container.size
                ))
            })
            .collect();
        listed(&items)
    }
}

/// The most ways that are looked at. Two sizes are at most a few thousand; what is above is no shelf of containers.
const MOST_WAYS: f64 = 1e6;
/// The most containers of a size that a list asks for.
const MOST_CONTAINERS: f64 = 99_999.0;
/// The most of a smaller size that are tried as an exchange for larger ones.
const MOST_EXCHANGED: u32 = 1000;
/// What is arithmetic and not product.
const HAIR: f64 = 1e-9;

/// A size that can be bought.
struct Size {
    container: usize,
    /// How many shortfalls it holds.
    part: f64,
    /// Fewer than this many of it are bought.
    below: f64,
}

/// What to buy for a shortfall of a product, which is above nothing.
///
/// # Errors
/// Why that cannot be told, and what to do: no container size is typed, the sizes do not compare with the shortfall, or they
/// are too small for it.
pub fn buy(product: &Product, short: Amount) -> Result<Purchase, String> {
    let mut sizes: Vec<Size> = Vec::new();
    for (container, typed) in product.containers.iter().enumerate() {
        let size = in_kind(typed.size.value(), product);
        let Some(part) = size.and_then(|size| size.ratio(short)).filter(|part| *part > 0.0) else { continue };
        // Two lots of one size are one size to buy.
        if !sizes.iter().any(|known| same(known.part, part)) {
            sizes.push(Size { container, part, below: 0.0 });
        }
    }
    sizes.sort_by(|a, b| b.part.total_cmp(&a.part));
    if sizes.is_empty() {
        return Err(t!("stock-type-in-the-shed-what-it").to_owned());
    }
    bound(&mut sizes);
    let ways: f64 = sizes.iter().skip(1).map(|size| size.below).product();
    let largest = sizes.first().map_or(0.0, |size| covering(1.0, size.part));
    if ways > MOST_WAYS || largest > MOST_CONTAINERS {
        return Err(t!("stock-its-containers-are-too-small-for").to_owned());
    }
    let mut best = Best::default();
    look(&sizes, &mut vec![0.0; sizes.len()], 1, 0.0, &mut best);
    let mut items = Vec::new();
    let mut amount: Option<Amount> = None;
    for (size, count) in sizes.iter().zip(&best.counts) {
        let Some(container) = product.containers.get(size.container).filter(|_| *count > 0.0) else { continue };
        // A whole number below the most that a list asks for.
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        items.push((size.container, *count as u32));
        let here = in_kind(container.size.value(), product).map(|size| size.times(*count));
        amount = match (amount, here) {
            (Some(before), Some(here)) => before.plus(here),
            (None, here) => here,
            (before, None) => before,
        };
    }
    let amount = amount.ok_or_else(|| t!("stock-look-at-the-sizes-of-its").to_owned())?;
    let over = amount.minus(short).unwrap_or(amount);
    // A hair too little is arithmetic.
    let over = if best.amount <= 1.0 { over.times(0.0) } else { over };
    let cost = product.price.as_ref().and_then(|price| price.of(amount));
    Ok(Purchase { items, amount, over, cost })
}

fn same(a: f64, b: f64) -> bool {
    (a - b).abs() <= HAIR * a.abs().max(b.abs())
}

/// How many of a part cover what is missing.
fn covering(missing: f64, part: f64) -> f64 {
    if missing <= HAIR { 0.0 } else { ((missing - HAIR) / part).ceil() }
}

/// Bounds each size but the largest by what covers everything, and by what larger ones hold in fewer containers.
fn bound(sizes: &mut [Size]) {
    let parts: Vec<f64> = sizes.iter().map(|size| size.part).collect();
    for (at, size) in sizes.iter_mut().enumerate().skip(1) {
        let exchanged = parts
            .iter()
            .take(at)
            .filter_map(|larger| {
                (1..=MOST_EXCHANGED).map(f64::from).find(|count| {
                    let fewer = (count * size.part / larger).round();
                    fewer >= 1.0 && same(fewer * larger, count * size.part)
                })
            })
            .fold(f64::INFINITY, f64::min);
        size.below = exchanged.min(covering(1.0, size.part) + 1.0);
    }
}

/// The best way found.
#[derive(Default)]
struct Best {
    counts: Vec<f64>,
    amount: f64,
    number: f64,
}

/// Looks at all counts of the sizes from `at` on, then at what is missing in the largest.
fn look(sizes: &[Size], counts: &mut Vec<f64>, at: usize, bought: f64, best: &mut Best) {
    let Some(size) = sizes.get(at) else {
        let Some(largest) = sizes.first() else { return };
        let count = covering(1.0 - bought, largest.part);
        let amount = bought + count * largest.part;
        let number = counts.iter().skip(1).sum::<f64>() + count;
        let better = match (best.counts.is_empty(), same(amount, best.amount)) {
            (true, _) => true,
            (false, true) => number.total_cmp(&best.number) == Ordering::Less,
            (false, false) => amount < best.amount,
        };
        if better {
            if let Some(first) = counts.first_mut() {
                *first = count;
            }
            *best = Best { counts: counts.clone(), amount, number };
        }
        return;
    };
    let mut count = 0.0;
    while count < size.below {
        let with = bought + count * size.part;
        if let Some(slot) = counts.get_mut(at) {
            *slot = count;
        }
        look(sizes, counts, at + 1, with, best);
        if with >= 1.0 - HAIR {
            break;
        }
        count += 1.0;
    }
    if let Some(slot) = counts.get_mut(at) {
        *slot = 0.0;
    }
}

#[cfg(test)]
mod tests {
    use super::{Purchase, buy};
    use crate::farm::{Container, ContainerKind, Formulation, Product, ProductKind};
    use crate::quantity::{Amount, AsTyped, Quantity, Units};

    fn sold(sizes: &[(ContainerKind, &str)], price: &str) -> Product {
        let mut product = Product::new("Test", ProductKind::Herbicide, Formulation::SL);
        product.containers = sizes
            .iter()
            .map(|(kind, size)| Container {
                kind: *kind,
                size: AsTyped::parse(size).unwrap(),
                full: 0,
                opened: None,
                lot: String::new(),
            })
            .collect();
        product.price = AsTyped::parse(price).ok();
        product
    }

    fn bought(product: &Product, short: &str) -> Purchase {
        buy(product, Amount::parse(short).unwrap()).unwrap()
    }

    #[test]
    fn the_least_that_covers_in_the_fewest_containers() {
        let product = sold(&[(ContainerKind::Jug, "2.5 gal"), (ContainerKind::Drum, "30 gal")], "10 / gal");
        // By hand: 33 gal are a drum and two jugs, 35 gal; 14 jugs hold as much and are more to carry.
        let out = bought(&product, "33 gal");
        assert_eq!(out.words(&product), "1 drum of 30 gal and 2 jugs of 2.5 gal");
        assert_eq!(out.over.show(Units::UsCustomary), "2 gal");
        assert_eq!(out.cost.unwrap().show(), "350.00");
        // 28 gal: twelve jugs and a drum hold the same 30 gal.
        assert_eq!(bought(&product, "28 gal").words(&product), "1 drum of 30 gal");
        // 27 gal: eleven jugs hold 27.5.
        assert_eq!(bought(&product, "27 gal").words(&product), "11 jugs of 2.5 gal");
        assert_eq!(bought(&product, "2.5 gal").over.show(Units::UsCustomary), "0 gal");
    }

    #[test]
    fn a_larger_size_may_stay_on_the_shelf() {
        // 12 L: two of 6 and not a 10 with a 6.
        let product = sold(&[(ContainerKind::Jug, "6 L"), (ContainerKind::Jug, "10 L")], "");
        let out = bought(&product, "12 L");
        assert_eq!((out.words(&product).as_str(), out.cost), ("2 jugs of 6 L", None));
    }

    #[test]
    fn sizes_of_two_systems_and_by_weight() {
        let product = sold(&[(ContainerKind::Jug, "2.5 gal"), (ContainerKind::Jug, "10 L")], "");
        assert_eq!(bought(&product, "18.9 L").words(&product), "2 jugs of 2.5 gal");
        assert_eq!(bought(&product, "19 L").words(&product), "1 jug of 10 L and 1 jug of 2.5 gal");
        let mut heavy = sold(&[(ContainerKind::Jug, "20 lb")], "");
        assert!(buy(&heavy, Amount::parse("3 gal").unwrap()).unwrap_err().contains("sold in"));
        heavy.density = Some(AsTyped::parse("8 lb/gal").unwrap());
        assert_eq!(bought(&heavy, "3 gal").words(&heavy), "2 jugs of 20 lb");
    }

    #[test]
    fn what_cannot_be_told_is_said() {
        let none = sold(&[], "");
        assert!(buy(&none, Amount::parse("1 gal").unwrap()).unwrap_err().contains("what it is sold in"));
        let drops = sold(&[(ContainerKind::Jug, "1 mL")], "");
        assert!(buy(&drops, Amount::parse("5000 gal").unwrap()).unwrap_err().contains("too small"));
        let zero = sold(&[(ContainerKind::Jug, "0 L")], "");
        assert!(buy(&zero, Amount::parse("1 gal").unwrap()).is_err());
    }
}
