//! The account of a product: what was counted, and what came in, was sprayed and went out since.
//!
//! # Method
//! The count holds from its moment on: before that day's spraying, or after it where that is typed. From then on come in what was bought
//! or found, and go off what records used and what went out otherwise, in the order of `happened`. The balance is count + in −
//! out, and may fall below zero where a purchase or a count is missing; containers never do. What is below zero is taken from the next
//! that comes in. A record takes from the lots it names, in their order, then from containers without a lot, then from any.
//! What was mixed and left over goes off with its record, as `left_over` tells.
//! Where no day of a count is typed, the containers are what is there now, and nothing is taken off.

use std::collections::HashMap;
use std::sync::Arc;

use jiff::civil::Date;

use super::happened::{self, Moment};
use super::kept::WentOn;
use super::left_over::went_on_with;
use super::on_hand::{Held, OnHand};
use super::shelf::{self, Shelves};
use super::walk::Walk;
use crate::farm::{ContainerKind, Empties, Farm, Id, Movement, Product};
use crate::quantity::{Amount, AsTyped};
use crate::season::Log;

/// What may be wrong with an account.
#[derive(Clone, Debug, PartialEq)]
pub enum Doubt {
    /// More went off than there was.
    Below {
        /// The most that was missing at any time.
        most: Amount,
        /// What is missing now; nothing where what came in later made up for it.
        now: Amount,
        /// On which day it first went below.
        date: Date,
        /// The record that did it; `None` where it was a movement.
        record: Option<Id>,
    },
    /// A record, or a movement, names a lot of which nothing was counted or came in.
    NoLot {
        /// The lot.
        lot: String,
        /// On which day.
        date: Date,
        /// The record; `None` for a movement.
        record: Option<Id>,
    },
    /// A record, or a movement, takes more of its lots than was there of them; the rest was taken from others.
    LotOver {
        /// The lots it names.
        lots: String,
        /// What was taken from others.
        over: Amount,
        /// On which day.
        date: Date,
        /// The record; `None` for a movement.
        record: Option<Id>,
    },
    /// An amount is a weight of a liquid or a volume of a dry product, and there is no density.
    NoDensity {
        /// The amount as typed.
        amount: String,
        /// On which day; `None` for what was counted.
        date: Option<Date>,
        /// The record; `None` for a movement or the count.
        record: Option<Id>,
    },
    /// More empty containers were given back than there were.
    TooManyBack {
        /// What they are, and how many too many.
        empties: Empties,
    },
    /// A record leaves spray over, of which it is not known what of the product was in it; or which is taken to have gone out with a later
    /// record of the same pass.
    LeftOver {
        /// On which day.
        date: Date,
        /// The record.
        record: Id,
        /// Whether a later record of the pass is taken to hold it.
        goes_on: bool,
    },
    /// It was bought on the day of the count that holds, and is added to that: it may be counted already.
    OnDayOfCount {
        /// What was bought.
        amount: String,
        /// The day.
        date: Date,
    },
    /// Records of work for customers took from here.
    ForCustomers {
        /// How many of its record lines.
        records: u32,
        /// How much they took.
        amount: Amount,
    },
    /// Records or movements are not reckoned, because no day of a count is typed.
    NoDay,
}

/// The account of a product.
#[derive(Clone, Debug, PartialEq)]
pub struct Account {
    /// What is on hand now.
    pub on_hand: OnHand,
    /// The day of the count that it goes by.
    pub since: Option<Date>,
    /// What was counted; `None` where that is not known.
    pub counted: Option<Amount>,
    /// What came in since.
    pub came: Amount,
    /// What records used since, with what of their mix was left over.
    pub used: Amount,
    /// What went out otherwise since.
    pub went: Amount,
    /// Count + in − out; below zero where more went off than there was. `None` where it is not known.
    pub balance: Option<Amount>,
    /// Empty containers to give back. They come from what was sprayed since the count, and from those that were counted.
    pub empties: Vec<Empties>,
    /// What may be wrong.
    pub doubts: Vec<Doubt>,
    /// What came in, by day.
    pub(super) arrivals: Vec<(Date, Amount)>,
}

impl Account {
    /// What is on hand for a pass of a day: all that is recorded is used, and what comes in later is not there yet. `None` where it is
    /// not known.
    pub fn for_day(&self, day: Date) -> Option<Amount> {
        let later = self.arrivals.iter().filter(|(date, _)| *date > day);
        let now = self.on_hand.amount?;
        later.map(|(_, amount)| *amount).try_fold(now, |left, amount| Some(super::needs::remains(left, amount)))
    }

    /// What comes in after a day, and when first.
    pub fn after(&self, day: Date) -> Option<(Date, Amount)> {
        let mut later = self.arrivals.iter().filter(|(date, _)| *date > day);
        let (date, first) = later.next()?;
        Some((*date, later.fold(*first, |sum, (_, amount)| sum.plus(*amount).unwrap_or(sum))))
    }

    /// What is left in opened containers of a kind and size; nothing where none is open.
    pub fn opened(&self, kind: ContainerKind, size: &AsTyped<Amount>) -> Option<Amount> {
        let alike = |held: &&Held| {
            held.container.as_ref().is_some_and(|(own, typed)| *own == kind && shelf::is_size(typed, size))
        };
        let rests = self.on_hand.held.iter().filter(alike).flat_map(|held| &held.opened).copied();
        rests.reduce(|sum, rest| sum.plus(rest).unwrap_or(sum))
    }
}

/// A product with a day of its count, and what moved of it.
struct Counted<'a> {
    id: &'a str,
    product: &'a Arc<Product>,
    movements: Vec<&'a Movement>,
}

/// The accounts of some products.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Accounts(HashMap<Id, Arc<Account>>);

impl Accounts {
    /// Of all products of a farm. It looks at each record once: reckon it once for a state of the farm.
    pub fn of(farm: &Farm) -> Self {
        Self::of_all(farm, &Log::of(farm))
    }

    /// The same with the records looked up before.
    pub fn of_all(farm: &Farm, log: &Log) -> Self {
        Self::among(farm, log, farm.products.keys().map(String::as_str))
    }

    /// Of some products. Those that the log keeps and that hold still are not reckoned anew.
    pub fn among<'a>(farm: &'a Farm, log: &Log, ids: impl IntoIterator<Item = &'a str>) -> Self {
        let mut accounts: HashMap<Id, Arc<Account>> = HashMap::new();
        let mut counted: Vec<Counted> = Vec::new();
        for (id, product) in ids.into_iter().filter_map(|id| Some((id, farm.products.shared(id)?))) {
            if product.counted.is_some() {
                counted.push(Counted { id, product, movements: Vec::new() });
            } else {
                accounts.entry(id.to_owned()).or_insert_with(|| Arc::new(as_it_stands(product)));
            }
        }
        let places: HashMap<&str, usize> = counted.iter().enumerate().map(|(at, one)| (one.id, at)).collect();
        for movement in &farm.movements {
            if let Some(one) = places.get(movement.product.as_str()).and_then(|at| counted.get_mut(*at)) {
                one.movements.push(movement);
            }
        }
        let kept = log.kept(farm);
        let went_on: WentOn =
            Arc::new(went_on_with(farm, log).map(|(from, volume)| (from.to_owned(), volume)).collect());
        counted.retain(|one| {
            let known = kept.and_then(|kept| kept.get(one.id, one.product, &one.movements, &went_on));
            let is_new = known.is_none();
            accounts.extend(known.map(|known| (one.id.to_owned(), known)));
            is_new
        });
        let names: Vec<&str> = counted.iter().map(|one| one.id).collect();
        let from = counted.iter().filter_map(|one| one.product.counted).min();
        for (one, list) in counted.iter().zip(happened::of(farm, log, &names, from)) {
            let account = Arc::new(Walk::over(one.product, &list, None).done());
            if let Some(kept) = kept {
                kept.keep(one.id, one.product, &one.movements, &went_on, &account);
            }
            accounts.insert(one.id.to_owned(), account);
        }
        Self(accounts)
    }

    /// The account of a product; `None` where it is not among them.
    pub fn get(&self, id: &str) -> Option<&Account> {
        self.0.get(id).map(AsRef::as_ref)
    }

    /// What is on hand for a pass of a day; `None` where it is not known.
    pub fn for_day(&self, id: &str, day: Date) -> Option<Amount> {
        self.get(id)?.for_day(day)
    }
}

/// A product without a day of its count: its containers are what is there now.
fn as_it_stands(product: &Product) -> Account {
    let nothing = product.nothing();
    let on_hand = OnHand::of(product);
    Account {
        since: None,
        counted: None,
        came: nothing,
        used: nothing,
        went: nothing,
        balance: on_hand.amount,
        empties: Vec::new(),
        doubts: Vec::new(),
        arrivals: Vec::new(),
        on_hand,
    }
}

/// What the accounts come to at the moment of a count; `None` where that is not known.
pub(super) fn at_moment(farm: &Farm, id: &str, until: Moment) -> Option<Account> {
    let product = farm.products.get(id)?;
    let from = product.counted?;
    let list = happened::of(farm, &Log::of(farm), &[id], Some(from)).pop()?;
    Some(Walk::over(product, &list, Some(until)).done())
}

/// The lots of which something is there at the beginning of a day, or comes in on it, for a record of that day to choose from:
/// those with an opened container first. Of a product without a day of its count, or on a day before it, the lots as they are typed.
///
/// It looks at each record of the product once.
pub fn lots(farm: &Farm, log: &Log, product: &str, day: Date) -> Vec<String> {
    on(farm, log, product, day).map(|shelves| shelves.lots()).unwrap_or_default()
}

/// The lot of what there is of a product before a day's records, where all of it is of one lot; else nothing.
pub fn only_lot(farm: &Farm, log: &Log, product: &str, day: Date) -> String {
    on(farm, log, product, day).and_then(|shelves| shelves.only_lot()).unwrap_or_default()
}

/// The shelves of a product before a day's records.
fn on(farm: &Farm, log: &Log, product: &str, day: Date) -> Option<Shelves> {
    let of = farm.products.get(product)?;
    let Some(moment) = happened::counted(of).filter(|moment| *moment < (day, happened::Part::Record)) else {
        return Some(Shelves::of(of).0);
    };
    let list = happened::of(farm, log, &[product], Some(moment.0)).pop().unwrap_or_default();
    Some(Walk::over(of, &list, Some((day, happened::Part::Record))).shelves)
}
