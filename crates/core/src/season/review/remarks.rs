//! What stands under the figures of the review: how they are counted, and what is not in them. Sentences without a full stop, the
//! same on the screen and on paper.

use super::figures::Figures;
use super::weather::Outside;
use super::words::{count, distinct, uses};
use super::{Actives, Adjuvants, Cost, Outcomes, Passes, Planned, Products, Resistance, Spent};

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
    let mut remarks = vec![format!("Ground sprayed twice counts twice. {sprayed} was sprayed at least once")];
    if passes.distinct.least != passes.distinct.most {
        remarks.push(
            "The lesser figure takes passes on a field as if they lay on the same ground, the greater as if they lay beside one \
             another: which part of a field a record sprayed is not drawn"
                .to_owned(),
        );
    }
    if passes.without_area > 0 {
        remarks.push(format!("{} ground without an area", count(passes.without_area, "record has", "records have")));
    }
    remarks
}

/// "12 uses have no price and are in no sum", or nothing.
pub fn without_price(spent: Spent) -> Option<String> {
    (spent.without_price > 0).then(|| {
        let uses = count(spent.without_price, "use of a product has", "uses of products have");
        format!("{uses} no price that fits, and is in no sum; a product on two fields is two uses")
    })
}

/// On products.
pub fn products(products: &Products) -> Vec<String> {
    let from_shed = products.rows.iter().any(|row| row.from_shed).then(|| {
        "Where a record does not say the kind or class of a product, what the shed says today stands".to_owned()
    });
    without_price(products.spent).into_iter().chain(from_shed).collect()
}

/// On actives.
pub fn actives(actives: &Actives) -> Vec<String> {
    let mut remarks = vec![BASES.to_owned()];
    if !actives.silent.is_empty() {
        remarks.push(format!(
            "In no sum, since the records do not say how much active went out: {}",
            uses(&actives.silent)
        ));
    }
    remarks
}

/// What stands in a table of groups by field and season, with the sign of a group that came again.
pub fn groups(sign: &str) -> String {
    format!(
        "Group numbers with how often they came in a season; a {sign}: it came again too soon, see below. Parts of one application \
         count once"
    )
}

/// How many of so many records lay outside limits.
pub fn outside(records: usize, outside: Outside) -> String {
    format!(
        "{} held against labels, laws and practice: {} outside a label or a law, {} outside practice alone",
        count(records, "record", "records"),
        outside.of_label_or_law,
        outside.of_practice
    )
}

/// On products whose group is not known.
pub fn resistance(resistance: &Resistance) -> Option<String> {
    (!resistance.groupless.is_empty())
        .then(|| format!("Counted in no group, since none is known: {}", uses(&resistance.groupless)))
}

/// On adjuvants.
pub fn adjuvants(adjuvants: &Adjuvants, figures: &Figures) -> Vec<String> {
    let from_shed = adjuvants
        .rows
        .iter()
        .any(|row| row.from_shed)
        .then(|| "Where a record does not say the class of a product, that of the shed today stands".to_owned());
    let all = format!("In all {}", figures.spent(adjuvants.spent));
    std::iter::once(all).chain(without_price(adjuvants.spent)).chain(from_shed).collect()
}

/// Where no adjuvant went out; a whole sentence.
pub fn no_adjuvant(adjuvants: &Adjuvants, figures: &Figures) -> String {
    format!("No adjuvant and no conditioner went out: {} were treated without.", figures.show(adjuvants.without))
}

/// On planned against applied.
pub fn planned(planned: &Planned) -> Vec<String> {
    let mut remarks = vec![ERROR.to_owned()];
    if planned.without_plan > 0 {
        remarks.push(format!("{} nothing of a plan", count(planned.without_plan, "record keeps", "records keep")));
    }
    if planned.lines_without > 0 {
        let uses = count(planned.lines_without, "use of a product does", "uses of products do");
        remarks.push(format!("{uses} not keep what was planned, or on what ground"));
    }
    remarks
}

/// What was left over, of so many records; a whole sentence.
pub fn left(planned: &Planned, records: usize, figures: &Figures) -> String {
    match planned.left_told {
        0 => "No record says what was left over.".to_owned(),
        told => format!(
            "{} in all; {told} of {} say what was left over.",
            figures.show(planned.left),
            count(records, "record", "records")
        ),
    }
}

/// On cost.
pub fn cost(cost: &Cost) -> Vec<String> {
    let named = (!cost.without_price.is_empty()).then(|| format!("Without a price: {}", uses(&cost.without_price)));
    without_price(cost.all.spent).into_iter().chain(named).chain([PRODUCTS_ALONE.to_owned()]).collect()
}

/// "$1,200.00 in all, $12.50/ac over 96 ac".
pub fn cost_in_all(cost: &Cost, figures: &Figures) -> String {
    let over = figures.per_ground(cost.all.spent, cost.all.treated);
    let over = if over.is_empty() { over } else { format!(", {over} over {}", figures.show(cost.all.treated)) };
    format!("{} in all{over}", figures.spent(cost.all.spent))
}

/// On ratings that stand in no row.
pub fn outcomes(outcomes: &Outcomes) -> Vec<String> {
    let mut remarks = Vec::new();
    if outcomes.outside_bands > 0 {
        let ratings = count(outcomes.outside_bands, "rating lies", "ratings lie");
        let are = if outcomes.outside_bands == 1 { "is" } else { "are" };
        remarks.push(format!("{ratings} on the day itself or more than ten weeks after it, and {are} in no row"));
    }
    if outcomes.stray > 0 {
        let ratings = count(outcomes.stray, "rating is", "ratings are");
        remarks.push(format!(
            "{ratings} of a field that their record did not spray, or of a day before it; look at the records"
        ));
    }
    remarks
}
