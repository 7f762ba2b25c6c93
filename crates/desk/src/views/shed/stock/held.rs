//! What is held of every product, and what the passes take: reckoned once for a state of the farm.

use std::collections::HashMap;
use std::sync::Arc;

use jiff::civil::Date;
use tankard_core::farm::{Farm, Id};
use tankard_core::quantity::Amount;
use tankard_core::stock::needs::{from_day, needs, next_day, not_recorded, of_day};
use tankard_core::stock::{Need, Needs, OnHand, Take};

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
    fn of(on_hand: &OnHand, need: Option<&Need>) -> Self {
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
}

impl Known {
    /// The stock as the farm stands now.
    pub(in super::super) fn fresh(&mut self, desk: &Desk) -> Arc<Stock> {
        let made_for = (desk.document.revision(), self.chosen, desk.now().date());
        if self.made_for != Some(made_for) {
            self.stock = Arc::new(Stock::of(desk.document.farm(), self.chosen, made_for.2));
            self.made_for = Some(made_for);
        }
        Arc::clone(&self.stock)
    }
}

impl Stock {
    /// Of a farm: for a chosen day where it has passes, else for the next day that has, else for the last.
    fn of(farm: &Farm, chosen: Option<Date>, today: Date) -> Self {
        let mut days: Vec<Date> =
            not_recorded(farm).iter().filter_map(|id| farm.passes.get(id)).map(|pass| pass.date).collect();
        days.dedup();
        let day =
            chosen.filter(|day| days.contains(day)).or_else(|| next_day(farm, today)).or_else(|| days.last().copied());
        let all = needs(farm, |_| true);
        let held = farm
            .products
            .iter()
            .map(|(id, product)| {
                let need = all.products.iter().find(|need| need.product == *id);
                (id.clone(), Held::of(&OnHand::of(product), need))
            })
            .collect();
        let (of_day, season) = day.map(|day| (of_day(farm, day), from_day(farm, day))).unwrap_or_default();
        Self { held, days, day, of_day, season }
    }

    /// What is held of one product.
    pub(in super::super) fn get(&self, id: &str) -> Option<&Held> {
        self.held.get(id)
    }
}
