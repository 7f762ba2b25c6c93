//! What happened to a product, line by line, with the balance after each.

use jiff::civil::Date;

use super::happened::{self, Happened, What};
use super::left_over::LeftOver;
use super::shelf::{self, Shelves, plain};
use crate::farm::{ContainerKind, Farm, Id, Moved, Movement, Product, Record, RecordLine};
use crate::language::t;
use crate::quantity::{Amount, AsTyped, Price, Quantity};
use crate::season::Log;

/// A line of the account of a product.
#[derive(Clone, Debug, PartialEq)]
pub struct Entry {
    /// The day.
    pub date: Date,
    /// What happened.
    pub kind: Kind,
    /// How much more there is after it, below zero for less. `None` where that cannot be told: the first count, an amount that needs a
    /// density, and containers given back.
    pub change: Option<Amount>,
    /// What there is after it, below zero where more went off than there was. `None` where it is not known.
    pub balance: Option<Amount>,
    /// The lot, or the lots; may be empty.
    pub lot: String,
    /// Why, or anything else.
    pub note: String,
    /// Who wrote it down.
    pub by: String,
    /// Its place among the farm's movements; `None` for a record, and for a count that was typed on the product alone.
    pub place: Option<usize>,
}

/// What happened.
#[derive(Clone, Debug, PartialEq)]
pub enum Kind {
    /// It was counted. Its change is what the count corrected.
    Counted {
        /// Whether it was counted after that day's spraying.
        after: bool,
        /// What the accounts had come to at the time.
        reckoned: Option<AsTyped<Amount>>,
        /// Whether this is the count that holds.
        holds: bool,
    },
    /// Full containers were bought.
    Bought {
        /// What they are.
        kind: ContainerKind,
        /// What one holds.
        size: AsTyped<Amount>,
        /// How many.
        count: u32,
        /// The price on the bill.
        price: Option<AsTyped<Price>>,
        /// From whom.
        from: String,
    },
    /// A record used it.
    Record {
        /// The record.
        id: Id,
        /// What it is called.
        name: String,
    },
    /// It went out without being sprayed.
    Out,
    /// It came in without being bought.
    In,
    /// Empty containers were given back.
    Returned {
        /// What they are.
        kind: ContainerKind,
        /// What one held.
        size: AsTyped<Amount>,
        /// How many.
        count: u32,
        /// To whom.
        to: String,
        /// Whether they were rinsed.
        rinsed: bool,
    },
}

/// The account of a product in order of time, as [`super::account`] and `happened` tell it; empty for a product that is not on the
/// farm. Before the count that holds, an earlier count begins the balance anew; before the first it is not known.
///
/// It looks at each record of the product once.
pub fn ledger(farm: &Farm, log: &Log, product: &str) -> Vec<Entry> {
    let Some(of) = farm.products.get(product) else { return Vec::new() };
    let list = happened::of(farm, log, &[product], None).pop().unwrap_or_default();
    let holds = happened::counted(of);
    let mut walk = Ledger { product: of, balance: None, out: Vec::new() };
    let counted =
        |happened: &Happened| matches!(happened.what, What::Movement(_, Movement { what: Moved::Counted { .. }, .. }));
    // Of several counts at one moment the last holds.
    let own = list.iter().rposition(|happened| Some(happened.at) == holds && counted(happened));
    let mut is_open = holds.is_some() && own.is_none();
    for (at, happened) in list.iter().enumerate() {
        if let Some(moment) = holds.filter(|moment| is_open && happened.at >= *moment) {
            walk.count_of_product(moment.0, of.counted_after, None);
            is_open = false;
        }
        match happened.what {
            What::Movement(place, movement) if own == Some(at) => {
                walk.count_of_product(movement.date, of.counted_after, Some((place, movement)));
            }
            What::Movement(place, movement) => {
                let is_before = holds.is_some_and(|moment| happened.at < moment);
                walk.movement(place, movement, is_before);
            }
            What::Record(id, record, line, left) => {
                let used = plain(line.amount.value(), of).map(|used| -used * left.times());
                let note = record_note(farm, of, record, line, left);
                let kind = Kind::Record { id: id.clone(), name: record.name.to_string() };
                walk.moved(record.date, kind, used, About { lot: &line.lot, note: &note, ..About::default() });
            }
        }
    }
    if let Some((date, _)) = holds.filter(|_| is_open) {
        walk.count_of_product(date, of.counted_after, None);
    }
    walk.out
}

/// What of a record's line is not what went on the farm's own ground.
fn record_note(farm: &Farm, product: &Product, record: &Record, line: &RecordLine, left: LeftOver) -> String {
    let left = match left {
        LeftOver::Nothing => None,
        LeftOver::Share(share, spray) => {
            let over = plain(line.amount.value(), product).map(|used| shelf::amount(used * share, product));
            over.map(|over| {
                t!("stock-with-in-of-spray-left-over", over = over.show(farm.units), spray = spray.show(farm.units))
            })
        }
        LeftOver::Unknown => Some(t!("stock-without-what-was-left-over-which").to_owned()),
        LeftOver::GoesOn => Some(t!("stock-what-was-left-over-goes-on").to_owned()),
    };
    let customer = record.customer.as_ref().map(|customer| match customer.name.trim() {
        "" => t!("stock-for-a-customer-from-this-shed").to_owned(),
        name => t!("stock-for-from-this-shed", name = name),
    });
    left.into_iter().chain(customer).collect::<Vec<_>>().join("; ")
}

/// What an entry says beside its kind.
#[derive(Clone, Copy, Default)]
struct About<'a> {
    lot: &'a str,
    note: &'a str,
    by: &'a str,
    place: Option<usize>,
}

struct Ledger<'a> {
    product: &'a Product,
    balance: Option<f64>,
    out: Vec<Entry>,
}

impl Ledger<'_> {
    /// The count that holds: what the containers of the product say.
    fn count_of_product(&mut self, date: Date, after: bool, movement: Option<(usize, &Movement)>) {
        let (shelves, unknown) = Shelves::of(self.product);
        let total = unknown.is_empty().then(|| shelves.total());
        let reckoned = movement.and_then(|(_, movement)| match &movement.what {
            Moved::Counted { reckoned, .. } => reckoned.clone(),
            _ => None,
        });
        let kind = Kind::Counted { after, reckoned, holds: true };
        let about = movement.map(|(place, movement)| About {
            lot: "",
            note: &movement.note,
            by: &movement.by,
            place: Some(place),
        });
        self.count(date, kind, total, about.unwrap_or_default());
    }

    fn count(&mut self, date: Date, kind: Kind, total: Option<f64>, about: About) {
        let change = total.zip(self.balance).map(|(total, before)| total - before);
        self.balance = total;
        self.push(date, kind, change, about);
    }

    fn moved(&mut self, date: Date, kind: Kind, change: Option<f64>, about: About) {
        self.balance = self.balance.zip(change).map(|(before, change)| before + change);
        self.push(date, kind, change, about);
    }

    fn push(&mut self, date: Date, kind: Kind, change: Option<f64>, about: About) {
        let amount = |plain: Option<f64>| plain.map(|plain| shelf::amount(plain, self.product));
        let (change, balance) = (amount(change), amount(self.balance));
        let [lot, note, by] = [about.lot, about.note, about.by].map(str::to_owned);
        self.out.push(Entry { date, kind, change, balance, lot, note, by, place: about.place });
    }

    fn movement(&mut self, place: usize, movement: &Movement, is_before: bool) {
        let product = self.product;
        let date = movement.date;
        let about = About { lot: "", note: &movement.note, by: &movement.by, place: Some(place) };
        match &movement.what {
            Moved::Bought { kind, size, count, lot, price, from } => {
                let came = plain(size.value(), product).map(|each| each * f64::from(*count));
                let kind = Kind::Bought {
                    kind: *kind,
                    size: size.clone(),
                    count: *count,
                    price: price.clone(),
                    from: from.clone(),
                };
                self.moved(date, kind, came, About { lot, ..about });
            }
            Moved::In { amount, lot } => {
                self.moved(date, Kind::In, plain(amount.value(), product), About { lot, ..about });
            }
            Moved::Out { amount, lot } => {
                self.moved(date, Kind::Out, plain(amount.value(), product).map(|went| -went), About { lot, ..about });
            }
            Moved::Returned { kind, size, count, to, rinsed } => {
                let kind =
                    Kind::Returned { kind: *kind, size: size.clone(), count: *count, to: to.clone(), rinsed: *rinsed };
                self.push(date, kind, None, about);
            }
            Moved::Counted { reckoned, counted, after, .. } => {
                let kind = Kind::Counted { after: *after, reckoned: reckoned.clone(), holds: false };
                if is_before {
                    self.count(date, kind, plain(counted.value(), product), about);
                } else {
                    // A count of which the product knows nothing is history.
                    self.push(date, kind, None, about);
                }
            }
        }
    }
}
