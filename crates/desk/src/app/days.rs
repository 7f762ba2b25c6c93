//! The order of a day's passes. Where a rig has many of them the search for it is long, and goes on beside the window.

use std::collections::HashMap;
use std::sync::Arc;

use jiff::civil::Date;
use tankard_core::day::{DayPlan, plan_day_told};
use tankard_core::plan::Plan;
use tankard_core::t;

use super::Desk;
use super::work::{Moment, Task};

/// So many passes of one rig are ordered within a frame.
const WITHIN_A_FRAME: usize = 9;

/// The name under which an order is looked for.
const LOOKING: &str = "day";

/// What was asked for last.
pub(super) type Asked = (Moment, Date);

impl Desk {
    /// The plan of a day; none while the order of its passes is looked for, or where that was cancelled.
    pub(crate) fn day(&mut self, date: Date) -> Option<Arc<DayPlan>> {
        if let Some(known) = self.document.known_day(date) {
            return Some(known);
        }
        if self.is_quickly_ordered(date) {
            return Some(self.document.day(date));
        }
        let asked = (self.moment(), date);
        if self.day_asked != Some(asked) {
            self.day_asked = Some(asked);
            self.look_for_order(asked);
        }
        None
    }

    /// Whether the order of a day is reckoned within a frame.
    pub(crate) fn is_quickly_ordered(&self, date: Date) -> bool {
        self.most_passes(date) <= WITHIN_A_FRAME
    }

    /// How many passes the rig has that has most of them.
    fn most_passes(&self, date: Date) -> usize {
        let mut of_rig: HashMap<&str, usize> = HashMap::new();
        for pass in self.document.farm().passes.values().filter(|pass| pass.date == date) {
            *of_rig.entry(&pass.rig).or_default() += 1;
        }
        of_rig.into_values().max().unwrap_or_default()
    }

    fn look_for_order(&mut self, asked: Asked) {
        let date = asked.1;
        let (plans, log) = (self.document.plans_of(date), self.document.log());
        let snapshot = self.document.snapshot();
        self.start(
            Task::looks(t!("app-looking-for-the-best-order-of"), t!("app-the-order-of-the-day-was"))
                .counting(t!("app-order-tried"), t!("app-orders-tried"))
                .in_place(LOOKING),
            move |going| {
                let plans: Vec<&Plan> = plans.iter().map(AsRef::as_ref).collect();
                Ok(plan_day_told(&snapshot.into_farm(), &log, date, &plans, &|done, of| going.tell(done, of))?)
            },
            move |desk, day| {
                if desk.moment() == asked.0 {
                    desk.document.know_day(day);
                }
            },
        );
    }

    /// Whether the order of a day is being looked for.
    pub(crate) fn is_looking_for_order(&self) -> bool {
        self.is_at_work(LOOKING)
    }

    /// Has the order looked for once more, after that was cancelled.
    pub(crate) fn look_for_order_again(&mut self) {
        self.day_asked = None;
    }
}
