//! The account of a product: what was counted, and what came in, was sprayed and went out since.
//!
//! # Method
//! The count holds from its moment on: before that day's spraying, or after it where that is typed. From then on come in what was bought
//! or found, and go off what records used and what went out otherwise, in the order of [`super::happened`]. The balance is count + in −
//! out, and may fall below zero where a purchase or a count is missing; containers never do. What is below zero is taken from the next
//! that comes in. A record takes from the lots it names, in their order, then from containers without a lot, then from any.
//! Where no day of a count is typed, the containers are what is there now, and nothing is taken off.

use std::collections::HashMap;

use jiff::civil::Date;

use super::happened::{self, Happened, Moment, What};
use super::on_hand::{self, Held, OnHand};
use super::shelf::{self, From, Shelves, plain};
use crate::farm::{ContainerKind, Empties, Farm, Id, Moved, Movement, Product, Record, RecordLine};
use crate::quantity::{Amount, AsTyped};

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
    /// What records used since.
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
    arrivals: Vec<(Date, Amount)>,
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

/// The accounts of some products.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Accounts(HashMap<Id, Account>);

impl Accounts {
    /// Of all products of a farm. It looks at each record once: reckon it once for a state of the farm.
    pub fn of(farm: &Farm) -> Self {
        Self::among(farm, farm.products.keys().map(String::as_str))
    }

    /// Of some products.
    pub fn among<'a>(farm: &'a Farm, ids: impl IntoIterator<Item = &'a str>) -> Self {
        let products: Vec<(&Id, &Product)> = ids.into_iter().filter_map(|id| farm.products.get_key_value(id)).collect();
        let counted: Vec<(&str, &Product)> = products
            .iter()
            .filter(|(_, product)| product.counted.is_some())
            .map(|(id, product)| (id.as_str(), *product))
            .collect();
        let names: Vec<&str> = counted.iter().map(|(id, _)| *id).collect();
        let from = counted.iter().filter_map(|(_, product)| product.counted).min();
        let all = happened::of(farm, &names, from);
        let mut accounts: HashMap<Id, Account> = counted
            .iter()
            .zip(all)
            .map(|((id, product), list)| ((*id).to_owned(), Walk::over(product, &list, None).done()))
            .collect();
        for (id, product) in products {
            accounts.entry(id.clone()).or_insert_with(|| as_it_stands(product));
        }
        Self(accounts)
    }

    /// The account of a product; `None` where it is not among them.
    pub fn get(&self, id: &str) -> Option<&Account> {
        self.0.get(id)
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
    let list = happened::of(farm, &[id], Some(from)).pop()?;
    Some(Walk::over(product, &list, Some(until)).done())
}

/// The lots of which something is there at the beginning of a day, or comes in on it, for a record of that day to choose from:
/// those with an opened container first. Of a product without a day of its count, or on a day before it, the lots as they are typed.
///
/// It looks at each record once.
pub fn lots(farm: &Farm, product: &str, day: Date) -> Vec<String> {
    let Some(of) = farm.products.get(product) else { return Vec::new() };
    let Some(moment) = happened::counted(of).filter(|moment| *moment < (day, happened::Part::Record)) else {
        return Shelves::of(of).0.lots();
    };
    let list = happened::of(farm, &[product], Some(moment.0)).pop().unwrap_or_default();
    Walk::over(of, &list, Some((day, happened::Part::Record))).shelves.lots()
}

/// An account on its way through time.
struct Walk<'a> {
    product: &'a Product,
    shelves: Shelves,
    /// Containers of the count of which it is not known what they hold.
    unknown: Vec<Held>,
    counted: f64,
    came: f64,
    used: f64,
    went: f64,
    balance: f64,
    /// What is below zero.
    owed: f64,
    /// The most that was, on which day and by which record it began.
    below: Option<(f64, Date, Option<&'a Id>)>,
    /// Whether an amount could not be told.
    dark: bool,
    /// The lots that were there at any time, and whether there was something without one.
    lots: Vec<String>,
    nameless: bool,
    empties: Vec<Empties>,
    arrivals: Vec<(Date, Amount)>,
    doubts: Vec<Doubt>,
}

/// Below this share of what ever came in a balance is arithmetic.
const HAIR: f64 = 1e-9;

impl<'a> Walk<'a> {
    /// From the count of a product on, to a moment or to the end.
    fn over(product: &'a Product, list: &[Happened<'a>], until: Option<Moment>) -> Self {
        let (shelves, unknown) = Shelves::of(product);
        let mut doubts = Vec::new();
        for container in &unknown {
            let amount = format!("{} of {}", container.kind.name(container.full), container.size);
            doubts.push(Doubt::NoDensity { amount, date: None, record: None });
        }
        let counted = shelves.total();
        let mut walk = Walk {
            product,
            unknown: unknown.iter().map(|container| on_hand::as_typed(container, product)).collect(),
            counted,
            came: 0.0,
            used: 0.0,
            went: 0.0,
            balance: counted,
            owed: 0.0,
            below: None,
            dark: !unknown.is_empty(),
            lots: Vec::new(),
            nameless: false,
            empties: Vec::new(),
            arrivals: Vec::new(),
            doubts,
            shelves,
        };
        for container in product.containers.iter().filter(|container| on_hand::holds(container)) {
            walk.know(&container.lot);
        }
        let since = happened::counted(product);
        walk.empties = counted_empties(list, since);
        let is_in = |happened: &&Happened| {
            since.is_none_or(|since| happened.at > since) && until.is_none_or(|until| happened.at < until)
        };
        for happened in list.iter().filter(is_in) {
            match happened.what {
                What::Record(id, record, line) => walk.record(id, record, line),
                What::Movement(_, movement) => walk.movement(movement),
            }
        }
        walk
    }

    fn know(&mut self, lot: &str) {
        if lot.trim().is_empty() {
            self.nameless = true;
        } else if !self.lots.iter().any(|known| shelf::same_lot(known, lot)) {
            self.lots.push(lot.to_owned());
        }
    }

    /// An amount as a number, or a doubt.
    fn plain(&mut self, amount: Amount, typed: impl Fn() -> String, date: Date, record: Option<&Id>) -> Option<f64> {
        let plain = plain(amount, self.product);
        if plain.is_none() {
            self.dark = true;
            self.doubts.push(Doubt::NoDensity { amount: typed(), date: Some(date), record: record.cloned() });
        }
        plain
    }

    fn record(&mut self, id: &'a Id, record: &Record, line: &RecordLine) {
        let Some(used) = self.plain(line.amount.value(), || line.amount.text().to_owned(), record.date, Some(id))
        else {
            return;
        };
        self.used += used;
        self.take(used, &line.lot, record.date, Some(id));
    }

    fn movement(&mut self, movement: &Movement) {
        let date = movement.date;
        match &movement.what {
            Moved::Bought { kind, size, count, lot, .. } => {
                let all = || format!("{count} {} of {size}", kind.name(*count));
                let Some(each) = self.plain(size.value(), all, date, None) else { return };
                self.know(lot);
                self.shelves.put((*kind, size, each), lot, *count, None);
                self.arrived(each * f64::from(*count), date);
            }
            Moved::In { amount, lot } => {
                let Some(came) = self.plain(amount.value(), || amount.text().to_owned(), date, None) else { return };
                self.know(lot);
                self.shelves.put_loose(came, lot);
                self.arrived(came, date);
            }
            Moved::Out { amount, lot } => {
                let Some(went) = self.plain(amount.value(), || amount.text().to_owned(), date, None) else { return };
                self.went += went;
                self.take(went, lot, date, None);
            }
            Moved::Returned { kind, size, count, .. } => self.returned(*kind, size, *count),
            // A count is history; the one that holds is where the walk began.
            Moved::Counted { .. } => {}
        }
    }

    fn arrived(&mut self, came: f64, date: Date) {
        self.came += came;
        self.balance += came;
        self.arrivals.push((date, shelf::amount(came, self.product)));
        if self.owed > 0.0 {
            let owed = std::mem::take(&mut self.owed);
            self.owed = self.shelves.take(owed, From::Any, &mut |kind, size, count| {
                shelf::add_empties(&mut self.empties, kind, size, count);
            });
        }
    }

    fn take(&mut self, wanted: f64, lots: &str, date: Date, record: Option<&'a Id>) {
        self.balance -= wanted;
        let mut rest = wanted;
        let empties = &mut self.empties;
        // What goes out otherwise mostly goes with its container.
        let mut emptied = |kind: ContainerKind, size: &AsTyped<Amount>, count: u32| {
            if record.is_some() {
                shelf::add_empties(empties, kind, size, count);
            }
        };
        let named: Vec<&str> = lots.split(',').map(str::trim).filter(|lot| !lot.is_empty()).collect();
        for lot in &named {
            rest = self.shelves.take(rest, From::Lot(lot), &mut emptied);
        }
        if !named.is_empty() {
            rest = self.shelves.take(rest, From::Lot(""), &mut emptied);
        }
        let others = rest;
        rest = self.shelves.take(rest, From::Any, &mut emptied);
        if !named.is_empty() && !self.nameless {
            self.doubt_lots(&named, (others, others - rest), wanted, date, record);
        }
        if rest > HAIR * (self.counted + self.came).max(wanted) {
            self.owed += rest;
            match &mut self.below {
                Some((most, ..)) => *most = most.max(self.owed),
                None => self.below = Some((self.owed, date, record)),
            }
        }
    }

    /// Lots that do not exist, or of which less was there than is taken.
    fn doubt_lots(
        &mut self,
        named: &[&str],
        (others, taken): (f64, f64),
        wanted: f64,
        date: Date,
        record: Option<&'a Id>,
    ) {
        let record = record.cloned();
        let unknown: Vec<&&str> =
            named.iter().filter(|lot| !self.lots.iter().any(|known| shelf::same_lot(known, lot))).collect();
        let all_known = unknown.is_empty();
        for lot in unknown {
            self.doubts.push(Doubt::NoLot { lot: (**lot).to_owned(), date, record: record.clone() });
        }
        if all_known && taken > HAIR * wanted {
            let over = shelf::amount(others, self.product);
            self.doubts.push(Doubt::LotOver { lots: named.join(", "), over, date, record });
        }
    }

    fn returned(&mut self, kind: ContainerKind, size: &AsTyped<Amount>, count: u32) {
        let alike = |one: &&mut Empties| one.kind == kind && shelf::is_size(&one.size, size);
        let there = self.empties.iter_mut().find(alike);
        let had = there.as_ref().map_or(0, |one| one.count);
        if let Some(one) = there {
            one.count = one.count.saturating_sub(count);
        }
        if count > had {
            let empties = Empties { kind, size: size.clone(), count: count - had };
            self.doubts.push(Doubt::TooManyBack { empties });
        }
    }

    fn done(self) -> Account {
        let product = self.product;
        let amount = |plain: f64| shelf::amount(plain, product);
        let mut doubts = Vec::new();
        if let Some((most, date, record)) = self.below {
            doubts.push(Doubt::Below { most: amount(most), now: amount(self.owed), date, record: record.cloned() });
        }
        doubts.extend(self.doubts);
        let mut held = self.shelves.held(product);
        held.extend(self.unknown);
        let known = |plain: f64| (!self.dark).then(|| amount(plain));
        let mut empties = self.empties;
        empties.retain(|one| one.count > 0);
        Account {
            on_hand: OnHand { held, amount: known(self.shelves.total()), typed: true },
            since: product.counted,
            counted: known(self.counted),
            came: amount(self.came),
            used: amount(self.used),
            went: amount(self.went),
            balance: known(self.balance),
            empties,
            doubts,
            arrivals: self.arrivals,
        }
    }
}

/// The empty containers that the count found which holds.
fn counted_empties(list: &[Happened], since: Option<Moment>) -> Vec<Empties> {
    let of_count = list.iter().rev().find_map(|happened| match happened.what {
        What::Movement(_, Movement { what: Moved::Counted { empties, .. }, .. }) if Some(happened.at) == since => {
            Some(empties)
        }
        _ => None,
    });
    of_count.cloned().unwrap_or_default()
}
