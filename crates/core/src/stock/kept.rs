//! Accounts that were reckoned before and hold still, so that a plan walks over the records of a product once for many letters typed.
//!
//! An account follows from its product, the movements and the records of it, and from which spray of these went on with other passes. The
//! records are those of the [`Log`](crate::season::Log) that keeps the accounts, which takes out what a change of theirs bears on; the rest
//! is held against what the farm says each time an account is asked for.

use std::fmt;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use rustc_hash::FxHashMap;

use super::account::Account;
use crate::farm::{Id, Movement, Product, Record};
use crate::language::{Language, spoken};
use crate::quantity::Volume;

/// The accounts that are kept beside a log.
#[derive(Default)]
pub(crate) struct Kept(Mutex<FxHashMap<Id, Vec<Entry>>>);

/// An account with all that it follows from beside the records.
#[derive(Clone)]
struct Entry {
    product: Arc<Product>,
    movements: Vec<Movement>,
    went_on: WentOn,
    /// In which its doubts say amounts.
    language: Language,
    account: Arc<Account>,
}

/// Which spray recorded passes began with, by the pass that it came from, in the order of the farm.
pub(super) type WentOn = Arc<Vec<(Id, Volume)>>;

impl Kept {
    fn all(&self) -> MutexGuard<'_, FxHashMap<Id, Vec<Entry>>> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// The account of a product, where it was reckoned from the same.
    pub(super) fn get(
        &self,
        id: &str,
        product: &Arc<Product>,
        movements: &[&Movement],
        went_on: &WentOn,
    ) -> Option<Arc<Account>> {
        let language = spoken();
        let holds = |entry: &&Entry| {
            entry.language == language
                && (Arc::ptr_eq(&entry.product, product) || entry.product == *product)
                && entry.movements.iter().eq(movements.iter().copied())
                && entry.went_on == *went_on
        };
        self.all().get(id)?.iter().find(holds).map(|entry| Arc::clone(&entry.account))
    }

    /// Keeps an account, in the place of what was kept of the product in this language.
    pub(super) fn keep(
        &self,
        id: &str,
        product: &Arc<Product>,
        movements: &[&Movement],
        went_on: &WentOn,
        account: &Arc<Account>,
    ) {
        let entry = Entry {
            product: Arc::clone(product),
            movements: movements.iter().copied().cloned().collect(),
            went_on: Arc::clone(went_on),
            language: spoken(),
            account: Arc::clone(account),
        };
        let mut all = self.all();
        let of_product = all.entry(id.to_owned()).or_default();
        of_product.retain(|known| known.language != entry.language);
        of_product.push(entry);
    }

    /// Lets go the accounts of the products of a record.
    pub(crate) fn forget(&mut self, record: &Record) {
        let all = self.0.get_mut().unwrap_or_else(PoisonError::into_inner);
        for line in &record.lines {
            all.remove(line.product.as_str());
        }
    }
}

/// Whether two states of a record take the same off the same products.
pub(crate) fn takes_alike(was: &Record, is: &Record) -> bool {
    was.date == is.date
        && was.start == is.start
        && was.pass == is.pass
        && was.left == is.left
        && was.volume == is.volume
        && was.customer.is_some() == is.customer.is_some()
        && was.lines == is.lines
}

impl Clone for Kept {
    fn clone(&self) -> Self {
        Self(Mutex::new(self.all().clone()))
    }
}

impl fmt::Debug for Kept {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_tuple("Kept").field(&self.all().keys()).finish()
    }
}
