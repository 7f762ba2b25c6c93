//! The account of a product on its way through time, from its count on.

use jiff::civil::Date;

use super::account::{Account, Doubt};
use super::happened::{self, Happened, Moment, What};
use super::left_over::LeftOver;
use super::on_hand::{self, Held, OnHand};
use super::shelf::{self, From, Shelves, plain};
use crate::farm::{ContainerKind, Empties, Id, Moved, Movement, Product, Record, RecordLine};
use crate::language::t;
use crate::quantity::{Amount, AsTyped};

/// An account on its way through time.
pub(super) struct Walk<'a> {
    product: &'a Product,
    pub(super) shelves: Shelves,
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
    /// The day of the count, where it was made before that day's spraying.
    counted_before: Option<Date>,
    /// How many records were for customers, and what they took.
    for_customers: (u32, f64),
}

/// Below this share of what ever came in a balance is arithmetic.
const HAIR: f64 = 1e-9;

impl<'a> Walk<'a> {
    /// From the count of a product on, to a moment or to the end.
    pub(super) fn over(product: &'a Product, list: &[Happened<'a>], until: Option<Moment>) -> Self {
        let (shelves, unknown) = Shelves::of(product);
        let mut doubts = Vec::new();
        for container in &unknown {
            let amount = t!("stock-kind-of-size", kind = container.kind.name(container.full), size = container.size);
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
            counted_before: product.counted.filter(|_| !product.counted_after),
            for_customers: (0, 0.0),
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
                What::Record(id, record, line, left) => walk.record(id, record, line, left),
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

    fn record(&mut self, id: &'a Id, record: &Record, line: &RecordLine, left: LeftOver) {
        let Some(on_ground) = self.plain(line.amount.value(), || line.amount.text().to_owned(), record.date, Some(id))
        else {
            return;
        };
        let used = on_ground * left.times();
        if matches!(left, LeftOver::Unknown | LeftOver::GoesOn) && used > 0.0 {
            let goes_on = left == LeftOver::GoesOn;
            self.doubts.push(Doubt::LeftOver { date: record.date, record: id.clone(), goes_on });
        }
        if record.customer.is_some() {
            self.for_customers = (self.for_customers.0 + 1, self.for_customers.1 + used);
        }
        self.used += used;
        self.take(used, &line.lot, record.date, Some(id));
    }

    fn movement(&mut self, movement: &Movement) {
        let date = movement.date;
        match &movement.what {
            Moved::Bought { kind, size, count, lot, .. } => {
                let all = || t!("stock-count-kind-of-size", count = count, kind = kind.name(*count), size = size);
                let Some(each) = self.plain(size.value(), all, date, None) else { return };
                self.know(lot);
                if self.counted_before == Some(date) {
                    self.doubts.push(Doubt::OnDayOfCount { amount: all(), date });
                }
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

    pub(super) fn done(self) -> Account {
        let product = self.product;
        let amount = |plain: f64| shelf::amount(plain, product);
        let mut doubts = Vec::new();
        if let Some((most, date, record)) = self.below {
            doubts.push(Doubt::Below { most: amount(most), now: amount(self.owed), date, record: record.cloned() });
        }
        doubts.extend(self.doubts);
        if self.for_customers.0 > 0 {
            doubts.push(Doubt::ForCustomers { records: self.for_customers.0, amount: amount(self.for_customers.1) });
        }
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
