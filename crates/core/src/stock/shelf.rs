//! Containers of a product as they are used up.
//!
//! # Method
//! Opened containers are used before full ones, the one with the least left first; of full ones the smallest first, and of one size
//! those first that stand first in the count or were bought first. A full one that is begun becomes an opened one, so that what
//! is in all containers falls by exactly what is taken.

use super::on_hand::Held;
use crate::farm::{Container, ContainerKind, Empties, Product};
use crate::quantity::{Amount, AsTyped, Mass, Volume};

/// What is below this share of a container is arithmetic, not product.
const HAIR: f64 = 1e-12;

/// An amount as a plain number: cubic metres of a liquid, kilograms of a dry product; `None` where it is typed the other way
/// and there is no density.
pub(super) fn plain(amount: Amount, product: &Product) -> Option<f64> {
    super::on_hand::in_kind(amount, product).map(|amount| match amount {
        Amount::Volume(volume) => volume.to_cubic_metres(),
        Amount::Mass(mass) => mass.to_kilograms(),
    })
}

/// The reverse of [`plain`].
pub(super) fn amount(plain: f64, product: &Product) -> Amount {
    if product.is_liquid() {
        Amount::Volume(Volume::from_cubic_metres(plain))
    } else {
        Amount::Mass(Mass::from_kilograms(plain))
    }
}

/// Containers of one kind, size and lot that came in together.
#[derive(Clone, Debug)]
struct Shelf {
    /// What they are, and what one holds when full; `None` for what came in without a container.
    container: Option<(ContainerKind, AsTyped<Amount>)>,
    size: f64,
    lot: String,
    full: u32,
    /// What is left in each opened one.
    opened: Vec<f64>,
}

impl Shelf {
    fn is_empty(&self) -> bool {
        self.full == 0 && self.opened.is_empty()
    }

    fn holds(&self) -> f64 {
        self.size * f64::from(self.full) + self.opened.iter().sum::<f64>()
    }
}

/// Whether two texts name one lot.
pub(super) fn same_lot(a: &str, b: &str) -> bool {
    a.trim().eq_ignore_ascii_case(b.trim())
}

/// From which containers is taken.
#[derive(Clone, Copy)]
pub(super) enum From<'a> {
    /// From any.
    Any,
    /// From those of a lot; without a name from those without one.
    Lot(&'a str),
}

impl From<'_> {
    fn takes(self, shelf: &Shelf) -> bool {
        match self {
            Self::Any => true,
            Self::Lot(lot) => same_lot(&shelf.lot, lot),
        }
    }
}

/// All containers of a product.
#[derive(Clone, Debug, Default)]
pub(super) struct Shelves(Vec<Shelf>);

impl Shelves {
    /// What a count found; `Err` with the first container that cannot be told without a density.
    pub(super) fn of(product: &Product) -> (Self, Vec<&Container>) {
        let mut out = Self::default();
        let mut unknown = Vec::new();
        for container in product.containers.iter().filter(|container| super::on_hand::holds(container)) {
            let opened = container.opened.as_ref().map(|opened| plain(opened.value(), product));
            match (plain(container.size.value(), product), opened) {
                (Some(size), None) => out.add(container, size, container.full, None),
                (Some(size), Some(Some(opened))) => out.add(container, size, container.full, Some(opened)),
                _ => unknown.push(container),
            }
        }
        (out, unknown)
    }

    fn add(&mut self, container: &Container, size: f64, full: u32, opened: Option<f64>) {
        self.put((container.kind, &container.size, size), &container.lot, full, opened.filter(|rest| *rest > 0.0));
    }

    /// Adds full containers, and one that is opened.
    pub(super) fn put(
        &mut self,
        (kind, typed, size): (ContainerKind, &AsTyped<Amount>, f64),
        lot: &str,
        full: u32,
        opened: Option<f64>,
    ) {
        // Empty ones of no size hold nothing to take.
        let full = if size > 0.0 { full } else { 0 };
        if full == 0 && opened.is_none() {
            return;
        }
        let container = Some((kind, typed.clone()));
        let lot = lot.trim().to_owned();
        self.0.push(Shelf { container, size, lot, full, opened: opened.into_iter().collect() });
    }

    /// Adds what came in without a container.
    pub(super) fn put_loose(&mut self, amount: f64, lot: &str) {
        if amount > 0.0 {
            let lot = lot.trim().to_owned();
            self.0.push(Shelf { container: None, size: 0.0, lot, full: 0, opened: vec![amount] });
        }
    }

    /// What all of them hold.
    pub(super) fn total(&self) -> f64 {
        self.0.iter().map(Shelf::holds).sum()
    }

    /// What is taken out, as far as it is there; what is missing. Containers that become empty are told.
    pub(super) fn take(
        &mut self,
        wanted: f64,
        from: From,
        emptied: &mut dyn FnMut(ContainerKind, &AsTyped<Amount>, u32),
    ) -> f64 {
        let mut rest = wanted;
        while rest > 0.0 {
            let Some((shelf, at)) = self.least_left(from) else { break };
            let Some(there) = shelf.opened.get_mut(at) else { break };
            if *there > rest + HAIR * there.max(shelf.size) {
                *there -= rest;
                rest = 0.0;
            } else {
                rest = (rest - *there).max(0.0);
                shelf.opened.remove(at);
                if let Some((kind, size)) = &shelf.container {
                    emptied(*kind, size, 1);
                }
            }
        }
        while rest > 0.0 {
            let smallest = self.0.iter_mut().filter(|shelf| shelf.full > 0 && from.takes(shelf));
            let Some(shelf) = smallest.min_by(|a, b| a.size.total_cmp(&b.size)) else { break };
            if rest <= HAIR * shelf.size {
                rest = 0.0;
                break;
            }
            let whole = (rest / shelf.size + HAIR).floor().min(f64::from(shelf.full));
            // A whole number between nothing and the number of full ones.
            #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
            let count = whole as u32;
            shelf.full -= count;
            rest = (rest - whole * shelf.size).max(0.0);
            if let Some((kind, size)) = shelf.container.as_ref().filter(|_| count > 0) {
                emptied(*kind, size, count);
            }
            if shelf.full > 0 && rest > HAIR * shelf.size {
                shelf.full -= 1;
                shelf.opened.push(shelf.size - rest);
                rest = 0.0;
            }
        }
        self.0.retain(|shelf| !shelf.is_empty());
        rest
    }

    /// The opened container with the least in it.
    fn least_left(&mut self, from: From) -> Option<(&mut Shelf, usize)> {
        let opened = |shelf: &Shelf| {
            let least = shelf.opened.iter().enumerate().min_by(|a, b| a.1.total_cmp(b.1));
            least.map(|(at, rest)| (at, *rest))
        };
        self.0
            .iter_mut()
            .filter(|shelf| from.takes(shelf))
            .filter_map(|shelf| opened(shelf).map(|(at, rest)| (shelf, at, rest)))
            .min_by(|a, b| a.2.total_cmp(&b.2))
            .map(|(shelf, at, _)| (shelf, at))
    }

    /// The lots, those with an opened container first.
    pub(super) fn lots(&self) -> Vec<String> {
        let (opened, closed): (Vec<&Shelf>, Vec<&Shelf>) = self.0.iter().partition(|shelf| !shelf.opened.is_empty());
        let all = opened.into_iter().chain(closed).filter(|shelf| !shelf.lot.is_empty());
        crate::label::once(all.map(|shelf| shelf.lot.clone()))
    }

    /// The lot of all of it, where that is one.
    pub(super) fn only_lot(&self) -> Option<String> {
        let mut all = self.0.iter().map(|shelf| &shelf.lot);
        let first = all.next()?;
        all.all(|lot| lot == first).then(|| first.clone())
    }

    /// As they are told to others.
    pub(super) fn held(&self, product: &Product) -> Vec<Held> {
        let mut out: Vec<Held> = Vec::new();
        for shelf in &self.0 {
            let opened = shelf.opened.iter().map(|rest| amount(*rest, product));
            let holds = amount(shelf.holds(), product);
            let alike = |held: &&mut Held| match (&held.container, &shelf.container) {
                (Some((kind, size)), Some((own, typed))) => kind == own && is_size(size, typed),
                (known, own) => known.is_none() && own.is_none(),
            };
            match out.iter_mut().filter(|held| same_lot(&held.lot, &shelf.lot)).find(alike) {
                Some(held) => {
                    held.full = held.full.saturating_add(shelf.full);
                    held.opened.extend(opened);
                    held.amount = held.amount.and_then(|before| before.plus(holds));
                }
                None => out.push(Held {
                    container: shelf.container.clone(),
                    lot: shelf.lot.clone(),
                    full: shelf.full,
                    opened: opened.collect(),
                    amount: Some(holds),
                }),
            }
        }
        out
    }
}

/// Adds up empty containers by kind and size.
pub(super) fn add_empties(all: &mut Vec<Empties>, kind: ContainerKind, size: &AsTyped<Amount>, count: u32) {
    let alike = |one: &&mut Empties| one.kind == kind && is_size(&one.size, size);
    match all.iter_mut().find(alike) {
        Some(one) => one.count = one.count.saturating_add(count),
        None => all.push(Empties { kind, size: size.clone(), count }),
    }
}

/// Whether two sizes are the same, however they are typed.
pub(super) fn is_size(a: &AsTyped<Amount>, b: &AsTyped<Amount>) -> bool {
    a == b || a.ratio(b.value()).is_some_and(|ratio| (ratio - 1.0).abs() <= 1e-9)
}
