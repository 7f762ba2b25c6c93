//! What is held of every product, and what the passes take: reckoned once for a state of the farm.

use std::collections::HashMap;
use std::sync::Arc;

use jiff::civil::Date;
use tankard_core::farm::{Farm, Id};
use tankard_core::finding::Finding;
use tankard_core::quantity::{Amount, Money};
use tankard_core::season::Log;
use tankard_core::stock::needs::{needs, not_recorded};
use tankard_core::stock::{self, Account, Accounts, Entry, Need, Needs, Take};

use super::forms::Form;
use crate::app::Desk;

/// What is held of a product.
#[derive(Clone, Debug, Default)]
pub(in super::super) struct Held {
    /// In all containers; `None` where it is not typed, or volumes and weights do not add up.
    pub(in super::super) on_hand: Option<Amount>,
    /// Whether it is typed.
    pub(in super::super) typed: bool,
    /// What the passes that are not recorded yet take.
    pub(in super::super) planned: Option<Amount>,
    /// The same, pass by pass.
    pub(in super::super) by_pass: Vec<Take>,
    /// What they leave; may be below zero.
    pub(in super::super) left: Option<Amount>,
    /// What is missing.
    pub(in super::super) short: Option<Amount>,
}

impl Held {
    fn of(account: &Account, need: Option<&Need>) -> Self {
        let on_hand = &account.on_hand;
        Self {
            on_hand: on_hand.amount,
            typed: on_hand.typed,
            planned: need.map(|need| need.amount),
            by_pass: need.map(|need| need.by_pass.clone()).unwrap_or_default(),
            left: need.map_or(on_hand.amount, |need| need.left),
            short: need.and_then(|need| need.short),
        }
    }
}

/// What is held of every product, against the passes of a day and all from that day on.
#[derive(Debug, Default)]
pub(in super::super) struct Stock {
    /// What was counted of every product, and what happened since.
    pub(in super::super) accounts: Accounts,
    held: HashMap<Id, Held>,
    /// The days with passes that are not recorded.
    pub(super) days: Vec<Date>,
    /// The day that is looked at.
    pub(super) day: Option<Date>,
    /// What its passes take.
    pub(super) of_day: Needs,
    /// What they and all after them take.
    pub(super) season: Needs,
}

/// The stock as it was last reckoned.
#[derive(Debug, Default)]
pub(in super::super) struct Known {
    made_for: Option<(u64, Option<Date>, Date)>,
    stock: Arc<Stock>,
    /// The day that a person chose to look at.
    pub(super) chosen: Option<Date>,
    /// The product whose account is open.
    pub(super) open: Option<Id>,
    /// What is being written down.
    pub(super) form: Option<Form>,
    /// Who wrote down the last thing.
    pub(super) by: String,
    lines: Option<Lines>,
}

/// The account of a product, line by line, as it was last reckoned.
#[derive(Clone, Debug)]
pub(super) struct Lines {
    made_for: (u64, Id, Date),
    /// The lines, in order of time.
    pub(super) entries: Arc<Vec<Entry>>,
    /// What there is to say.
    pub(super) findings: Arc<Vec<Finding>>,
    /// What the purchases of the year cost, and of how many that is not known.
    pub(super) spent: (Money, usize),
}

impl Known {
    /// The stock as the farm stands now.
    pub(in super::super) fn fresh(&mut self, desk: &mut Desk) -> Arc<Stock> {
        let made_for = (desk.document.revision(), self.chosen, desk.now().date());
        if self.made_for != Some(made_for) {
            let log = desk.document.log();
            self.stock = Arc::new(Stock::of((desk.document.farm(), &log), self.chosen, made_for.2));
            self.made_for = Some(made_for);
        }
        Arc::clone(&self.stock)
    }

    /// The account of a product, line by line, as the farm stands now.
    pub(super) fn lines(&mut self, desk: &mut Desk, id: &Id) -> Lines {
        let today = desk.now().date();
        let made_for = (desk.document.revision(), id.clone(), today);
        match &self.lines {
            Some(lines) if lines.made_for == made_for => lines.clone(),
            _ => {
                let log = desk.document.log();
                let farm = desk.document.farm();
                let lines = Lines {
                    entries: Arc::new(stock::ledger(farm, &log, id)),
                    findings: Arc::new(stock::findings(farm, &self.stock.accounts, id)),
                    spent: stock::spent(farm, Some(id), today.year()),
                    made_for,
                };
                self.lines = Some(lines.clone());
                lines
            }
        }
    }
}

impl Stock {
    /// Of a farm: for a chosen day where it has passes, else for the next day that has, else for the last.
    fn of((farm, log): (&Farm, &Log), chosen: Option<Date>, today: Date) -> Self {
        let mut days: Vec<Date> =
            not_recorded(farm, log).iter().filter_map(|id| farm.passes.get(id)).map(|pass| pass.date).collect();
        days.dedup();
        let next = || days.iter().copied().find(|day| *day >= today);
        let day = chosen.filter(|day| days.contains(day)).or_else(next).or_else(|| days.last().copied());
        let accounts = Accounts::of_all(farm, log);
        let all = needs(farm, log, &accounts, |_| true);
        let held = farm
            .products
            .keys()
            .filter_map(|id| {
                let need = all.products.iter().find(|need| need.product == *id);
                Some((id.clone(), Held::of(accounts.get(id)?, need)))
            })
            .collect();
        let of_day = day.map(|day| needs(farm, log, &accounts, |date| date == day)).unwrap_or_default();
        let season = day.map(|day| needs(farm, log, &accounts, |date| date >= day)).unwrap_or_default();
        Self { accounts, held, days, day, of_day, season }
    }

    /// What is held of one product.
    pub(in super::super) fn get(&self, id: &str) -> Option<&Held> {
        self.held.get(id)
    }
}
