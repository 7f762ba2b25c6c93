//! What stands under the figures of the review: how they are counted, and what is not in them. Sentences without a full stop, the
//! same on the screen and on paper.

use super::figures::Figures;
use super::weather::Outside;
use super::words::{count, distinct, uses};
use super::{Actives, Adjuvants, Cost, Outcomes, Passes, Planned, Products, Resistance, Spent};
use crate::language::t;

/// On bars of adjuvant classes.
pub const SEVERAL_CLASSES: &str = "Ground that had several classes counts with each of them";
/// On bars of money.
pub const HATCHED_COST: &str = "Hatched: some of it has no price, so it cost more";
/// On bars of spray.
pub const HATCHED_SPRAY: &str = "Hatched: some records do not say how much, so it was more";
/// On bars of hours.
pub const HATCHED_HOURS: &str = "Hatched: some records have no start or end, so it was more";
/// On actives.
pub const BASES: &str = "ae is acid equivalent, ai active ingredient; the two are not added";
/// On errors.
pub const ERROR: &str = "An error is what was done over what was planned: +2 % is two hundredths too much";
/// Where nothing is planned.
pub const NO_PLAN: &str =
    "No record keeps what was planned. Records made from a plan do; it can be typed on the page of a record too";
/// On the weather.
pub const WEATHER: &str = "What was not measured is not judged. Labels are read as they are typed now. Whether something has to be reported is for \
     the law to say";
/// On groups that came again.
pub const AGAIN: &str = "That a group came again is told, not that a weed will resist it. What the label says holds";
/// On water.
pub const WATER: &str =
    "Water is the spray less the liquid products in it, as if volumes add up. What has no volume is in no sum";
/// Where no resistance group is known; a whole sentence.
pub const NO_GROUP: &str = "No product of a known resistance group went out on a field.";
/// Where nothing is rated; a whole sentence.
pub const NOT_RATED: &str = "Nothing is rated yet: rate a field on the page of its record.";
/// On hours.
pub const HOURS: &str = "From start to end: spraying, turning, filling, road and breaks";
/// On ground under cost.
const PRODUCTS_ALONE: &str = "Products alone, at the prices of the records; neither water nor hours nor the rig. Ground sprayed twice counts twice";

/// On ground.
pub fn passes(passes: &Passes, figures: &Figures) -> Vec<String> {
    let sprayed = distinct(passes.distinct, figures.units);
    let mut remarks = vec![t!("season-ground-sprayed-twice-counts-twice-was", sprayed = sprayed)];
    if passes.distinct.least != passes.distinct.most {
        remarks.push(t!("season-the-lesser-figure-takes-passes-on").to_owned());
    }
    if passes.without_area > 0 {
        remarks.push(t!(
            "season-ground-without-an-area",
            count = count(passes.without_area, t!("season-record-has"), t!("season-records-have"))
        ));
    }
    remarks
}

/// "12 uses have no price and are in no sum", or nothing.
pub fn without_price(spent: Spent) -> Option<String> {
    (spent.without_price > 0).then(|| {
        let uses = count(spent.without_price, t!("season-use-of-a-product-has"), t!("season-uses-of-products-have"));
        t!("season-no-price-that-fits-and-is", uses = uses)
    })
}

/// On products.
pub fn products(products: &Products) -> Vec<String> {
    let from_shed =
        products.rows.iter().any(|row| row.from_shed).then(|| t!("season-where-a-record-does-not-say").to_owned());
    without_price(products.spent).into_iter().chain(from_shed).collect()
}

/// On actives.
pub fn actives(actives: &Actives) -> Vec<String> {
    let mut remarks = vec![BASES.to_owned()];
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
        count = count(records, "record", "records"),
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
    let mut remarks = vec![ERROR.to_owned()];
    if planned.without_plan > 0 {
        remarks.push(t!(
            "season-nothing-of-a-plan",
            count = count(planned.without_plan, t!("season-record-keeps"), t!("season-records-keep"))
        ));
    }
    if planned.lines_without > 0 {
        let uses = count(planned.lines_without, t!("season-use-of-a-product-does"), t!("season-uses-of-products-do"));
        remarks.push(t!("season-not-keep-what-was-planned-or", uses = uses));
    }
    remarks
}

/// What was left over, of so many records; a whole sentence.
pub fn left(planned: &Planned, records: usize, figures: &Figures) -> String {
    match planned.left_told {
        0 => t!("season-no-record-says-what-was-left").to_owned(),
        told => t!(
            "season-in-all-of-say-what-was",
            figures = figures.show(planned.left),
            told = told,
            count = count(records, "record", "records")
        ),
    }
}

/// On cost.
pub fn cost(cost: &Cost) -> Vec<String> {
    let named = (!cost.without_price.is_empty())
        .then(|| t!("season-without-a-price", without_price = uses(&cost.without_price)));
    without_price(cost.all.spent).into_iter().chain(named).chain([PRODUCTS_ALONE.to_owned()]).collect()
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
        let ratings = count(outcomes.outside_bands, t!("season-rating-lies"), t!("season-ratings-lie"));
        let are = if outcomes.outside_bands == 1 { "is" } else { "are" };
        remarks.push(t!("season-on-the-day-itself-or-more", ratings = ratings, are = are));
    }
    if outcomes.stray > 0 {
        let ratings = count(outcomes.stray, t!("season-rating-is"), t!("season-ratings-are"));
        remarks.push(t!("season-of-a-field-that-their-record", ratings = ratings));
    }
    remarks
}
