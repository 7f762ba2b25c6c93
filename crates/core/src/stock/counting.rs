//! Counting the shed, and writing down what came in and went out.

use jiff::civil::Date;

use super::account::{Account, at_moment};
use super::happened::{self, moment};
use super::on_hand::OnHand;
use super::shelf::is_size;
use crate::farm::{Container, ContainerKind, Empties, Farm, Moved, Movement, Product};
use crate::language::t;
use crate::quantity::{Amount, AsTyped, Quantity, Units};

/// Below this share of the larger a count and the accounts are taken as the same: nobody sees less in a jug. Common practice, no
/// source.
const LITTLE: f64 = 1e-3;

/// A count of a product.
#[derive(Clone, Debug, PartialEq)]
pub struct Count {
    /// The day.
    pub date: Date,
    /// Whether it was counted after that day's spraying, and not before it.
    pub after: bool,
    /// What is there.
    pub containers: Vec<Container>,
    /// The empty containers that are there to be given back.
    pub empties: Vec<Empties>,
    /// Who counted.
    pub by: String,
    /// Why it differs from what the accounts had come to.
    pub reason: String,
}

/// A count against the account.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Difference {
    /// What the accounts come to at that moment; `None` where that is not known.
    pub reckoned: Option<Amount>,
    /// What is counted.
    pub counted: Amount,
    /// Counted less reckoned, where both are known and differ by more than one part in a thousand of the larger.
    pub differs: Option<Amount>,
}

impl Count {
    /// What it would correct, where the accounts come to so much at its moment ([`reckoned`]).
    ///
    /// # Errors
    /// Where it cannot hold: another count is later, or containers do not add up without a density.
    pub fn against(&self, product: &Product, reckoned: Option<Amount>) -> Result<Difference, String> {
        let own = moment(self.date, self.after);
        if let Some(later) = happened::counted(product).filter(|holds| *holds > own) {
            return Err(t!("stock-a-count-of-holds-which-is", later = later.0));
        }
        let of_count = Product { containers: self.containers.clone(), counted: Some(self.date), ..product.clone() };
        let counted = OnHand::of(&of_count).amount.ok_or(t!("stock-some-containers-are-counted-by-weight"))?;
        let differs = reckoned.and_then(|reckoned| {
            let off = counted.minus(reckoned)?;
            let shares = [counted, reckoned].into_iter().filter_map(|amount| off.ratio(amount)).map(f64::abs);
            let share = shares.fold(f64::INFINITY, f64::min);
            (share > LITTLE && !off.is_zero()).then_some(off)
        });
        Ok(Difference { reckoned, counted, differs })
    }
}

/// What the accounts of a product come to at the moment of a count; `None` where no count holds yet.
///
/// It looks at each record once.
pub fn reckoned(farm: &Farm, id: &str, date: Date, after: bool) -> Option<Account> {
    at_moment(farm, id, moment(date, after))
}

/// Takes a count over: the product's containers and the day of its count, and a movement with what the accounts had come to. A size
/// that the product was sold in stays on its list, and so does their order.
///
/// # Errors
/// As [`Count::against`], where the product is not on the farm, and where the count differs from the accounts and no reason is given.
/// The farm is then as before.
pub fn count(farm: &mut Farm, id: &str, count: Count) -> Result<(), String> {
    let come_to = reckoned(farm, id, count.date, count.after).and_then(|account| account.balance);
    let units = farm.units;
    let product = farm.products.get_mut(id).ok_or(t!("stock-the-product-is-not-in-the"))?;
    let difference = count.against(product, come_to)?;
    if difference.differs.is_some() && count.reason.trim().is_empty() {
        return Err(t!("stock-it-differs-from-what-the-accounts").to_owned());
    }
    product.containers = ordered(&product.containers, count.containers);
    product.counted = Some(count.date);
    product.counted_after = count.after;
    // An amount below zero cannot be written down as one.
    let there = |amount: Amount| super::needs::remains(amount, amount.times(0.0));
    let what = Moved::Counted {
        reckoned: come_to.map(|reckoned| written(there(reckoned), units)),
        counted: written(difference.counted, units),
        after: count.after,
        empties: count.empties.into_iter().filter(|one| one.count > 0).collect(),
    };
    let note = count.reason.trim().to_owned();
    farm.movements.push(Movement { product: id.to_owned(), date: count.date, what, by: count.by, note });
    Ok(())
}

/// What is counted in the order of the sizes before, each of which stays, though there be none.
fn ordered(before: &[Container], counted: Vec<Container>) -> Vec<Container> {
    let same = |a: &Container, b: &Container| a.kind == b.kind && is_size(&a.size, &b.size);
    let (mut here, none): (Vec<Container>, Vec<Container>) = counted.into_iter().partition(super::on_hand::holds);
    let mut out: Vec<Container> = Vec::new();
    for size in before.iter().chain(&none) {
        if out.iter().any(|known| same(known, size)) {
            continue;
        }
        let (of_size, others): (Vec<_>, Vec<_>) = here.into_iter().partition(|container| same(container, size));
        here = others;
        if of_size.is_empty() {
            out.push(Container { full: 0, opened: None, lot: String::new(), ..size.clone() });
        }
        out.extend(of_size);
    }
    out.extend(here);
    out
}

/// Writes down what came in, went out or was given back. What is bought in a kind or size that the product was not sold in yet joins its
/// list.
pub fn enter(farm: &mut Farm, movement: Movement) {
    if let (Moved::Bought { kind, size, .. }, Some(product)) =
        (&movement.what, farm.products.get_mut(&movement.product))
    {
        let is_known = |container: &Container| container.kind == *kind && is_size(&container.size, size);
        if !product.containers.iter().any(is_known) {
            product.containers.push(sold_in(*kind, size));
        }
    }
    farm.movements.push(movement);
}

fn sold_in(kind: ContainerKind, size: &AsTyped<Amount>) -> Container {
    Container { kind, size: size.clone(), full: 0, opened: None, lot: String::new() }
}

/// Strikes out a movement, by its place; nothing where there is none.
pub fn strike(farm: &mut Farm, place: usize) {
    if place < farm.movements.len() {
        farm.movements.remove(place);
    }
}

/// An amount as a person would type it, in nine digits.
fn written(amount: Amount, units: Units) -> AsTyped<Amount> {
    let (value, unit) = match (amount, units) {
        (Amount::Volume(volume), Units::UsCustomary) => (volume.to_us_gallons(), "gal"),
        (Amount::Volume(volume), Units::Imperial) => (volume.to_imperial_gallons(), "imp gal"),
        (Amount::Volume(volume), Units::Metric) => (volume.to_litres(), "L"),
        (Amount::Mass(mass), Units::Metric) => (mass.to_kilograms(), "kg"),
        (Amount::Mass(mass), _) => (mass.to_pounds(), "lb"),
    };
    let text = format!("{value:.9}");
    let text = format!("{} {unit}", text.trim_end_matches('0').trim_end_matches('.'));
    Amount::parse(&text).map_or_else(|_| AsTyped::of(&text, amount), |read| AsTyped::of(&text, read))
}
