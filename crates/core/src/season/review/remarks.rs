//! What stands under the figures of the review: how they are counted, and what is not in them. Sentences without a full stop, the
//! same on the screen and on paper.

use super::figures::Figures;
use super::weather::Outside;
use super::words::{distinct, uses};
use super::{Actives, Adjuvants, Cost, Outcomes, Passes, Planned, Products, Resistance, Spent};
use crate::language::t;

/// On bars of adjuvant classes.
pub fn several_classes() -> &'static str {
    t!("season-remark-several-classes")
}
/// On bars of money.
pub fn hatched_cost() -> &'static str {
    t!("season-remark-hatched-cost")
}
/// On bars of spray.
pub fn hatched_spray() -> &'static str {
    t!("season-remark-hatched-spray")
}
/// On bars of hours.
pub fn hatched_hours() -> &'static str {
    t!("season-remark-hatched-hours")
}
/// On actives.
pub fn bases() -> &'static str {
    t!("season-remark-bases")
}
/// On errors.
pub fn error() -> &'static str {
    t!("season-remark-error")
}
/// Where nothing is planned.
pub fn no_plan() -> &'static str {
    t!("season-remark-no-plan")
}
/// On the weather.
pub fn weather() -> &'static str {
    t!("season-remark-weather")
}
/// On groups that came again.
pub fn again() -> &'static str {
    t!("season-remark-again")
}
/// On water.
pub fn water() -> &'static str {
    t!("season-remark-water")
}
/// Where no resistance group is known; a whole sentence.
pub fn no_group() -> &'static str {
    t!("season-remark-no-group")
}
/// Where nothing is rated; a whole sentence.
pub fn not_rated() -> &'static str {
    t!("season-remark-not-rated")
}
/// On hours.
pub fn hours() -> &'static str {
    t!("season-remark-hours")
}
/// On ground under cost.
fn products_alone() -> &'static str {
    t!("season-remark-products-alone")
}

/// On ground.
pub fn passes(passes: &Passes, figures: &Figures) -> Vec<String> {
    let sprayed = distinct(passes.distinct, figures.units);
    let mut remarks = vec![t!("season-ground-sprayed-twice-counts-twice-was", sprayed = sprayed)];
    if passes.distinct.least != passes.distinct.most {
        remarks.push(t!("season-the-lesser-figure-takes-passes-on").to_owned());
    }
    if passes.without_area > 0 {
        remarks.push(t!("season-ground-without-an-area", count = passes.without_area));
    }
    remarks
}

/// "12 uses have no price and are in no sum", or nothing.
pub fn without_price(spent: Spent) -> Option<String> {
    (spent.without_price > 0).then(|| t!("season-no-price-that-fits-and-is", uses = spent.without_price))
}

/// On products.
pub fn products(products: &Products) -> Vec<String> {
    let from_shed =
        products.rows.iter().any(|row| row.from_shed).then(|| t!("season-where-a-record-does-not-say").to_owned());
    without_price(products.spent).into_iter().chain(from_shed).collect()
}

/// On actives.
pub fn actives(actives: &Actives) -> Vec<String> {
    let mut remarks = vec![bases().to_owned()];
    if !actives.silent.is_empty() {
        remarks.push(t!("season-in-no-sum-since-the-records", silent = uses(&actives.silent)));
    }
    remarks
}

/// What stands in a table of groups by field and season, with the sign of a group that came again.
pub fn groups(sign: &str) -> String {
    t!("season-group-numbers-with-how-often-they", sign = sign)
}

/// How many of so many records lay outside limits.
pub fn outside(records: usize, outside: Outside) -> String {
    t!(
        "season-held-against-labels-laws-and-practice",
        count = records,
        of_label_or_law = outside.of_label_or_law,
        of_practice = outside.of_practice
    )
}

/// On products whose group is not known.
pub fn resistance(resistance: &Resistance) -> Option<String> {
    (!resistance.groupless.is_empty())
        .then(|| t!("season-counted-in-no-group-since-none", groupless = uses(&resistance.groupless)))
}

/// On adjuvants.
pub fn adjuvants(adjuvants: &Adjuvants, figures: &Figures) -> Vec<String> {
    let from_shed = adjuvants
        .rows
        .iter()
        .any(|row| row.from_shed)
        .then(|| t!("season-where-a-record-does-not-say-the-class-of").to_owned());
    let all = t!("season-in-all", spent = figures.spent(adjuvants.spent));
    std::iter::once(all).chain(without_price(adjuvants.spent)).chain(from_shed).collect()
}

/// Where no adjuvant went out; a whole sentence.
pub fn no_adjuvant(adjuvants: &Adjuvants, figures: &Figures) -> String {
    t!("season-no-adjuvant-and-no-conditioner-went", figures = figures.show(adjuvants.without))
}

/// On planned against applied.
pub fn planned(planned: &Planned) -> Vec<String> {
    let mut remarks = vec![error().to_owned()];
    if planned.without_plan > 0 {
        remarks.push(t!("season-nothing-of-a-plan", count = planned.without_plan));
    }
    if planned.lines_without > 0 {
        remarks.push(t!("season-not-keep-what-was-planned-or", uses = planned.lines_without));
    }
    remarks
}

/// What was left over, of so many records; a whole sentence.
pub fn left(planned: &Planned, records: usize, figures: &Figures) -> String {
    match planned.left_told {
        0 => t!("season-no-record-says-what-was-left").to_owned(),
        told => t!("season-in-all-of-say-what-was", figures = figures.show(planned.left), told = told, count = records),
    }
}

/// On cost.
pub fn cost(cost: &Cost) -> Vec<String> {
    let named = (!cost.without_price.is_empty())
        .then(|| t!("season-without-a-price", without_price = uses(&cost.without_price)));
    without_price(cost.all.spent).into_iter().chain(named).chain([products_alone().to_owned()]).collect()
}

/// "$1,200.00 in all, $12.50/ac over 96 ac".
pub fn cost_in_all(cost: &Cost, figures: &Figures) -> String {
    let over = figures.per_ground(cost.all.spent, cost.all.treated);
    let over =
        if over.is_empty() { over } else { t!("season-over", over = over, figures = figures.show(cost.all.treated)) };
    t!("season-spent-in-all-over", spent = figures.spent(cost.all.spent), over = over)
}

/// On ratings that stand in no row.
pub fn outcomes(outcomes: &Outcomes) -> Vec<String> {
    let mut remarks = Vec::new();
    if outcomes.outside_bands > 0 {
        remarks.push(t!("season-on-the-day-itself-or-more", ratings = outcomes.outside_bands));
    }
    if outcomes.stray > 0 {
        remarks.push(t!("season-of-a-field-that-their-record", ratings = outcomes.stray));
    }
    remarks
}
