//! The rate of one application, against the label's range for crop and stage.

use super::{Here, Speaks, crop_doubt, forbid, place, speaks, stage, when};
use crate::farm::Statement;
use crate::farm::label::Says;
use crate::finding::{Basis, Finding};
use crate::mix::line::{PlannedLine, per_area};
use crate::quantity::{AmountPerArea, AsTyped, Rate, Units};

struct Range {
    least: Option<AmountPerArea>,
    most: Option<AmountPerArea>,
    shown: String,
    at: String,
    /// What cannot be told of its crop and its conditions.
    doubt: String,
}

fn ranges(here: &Here, units: Units, findings: Option<&mut Vec<Finding>>) -> (Vec<Range>, bool) {
    let (product, field) = (here.product, here.field);
    let mut fitting = Vec::new();
    let mut any = false;
    let mut unclear = None;
    let mut broken = None;
    for statement in &product.label {
        let Says::Rate { least, most } = &statement.says else { continue };
        any = true;
        match speaks(statement, field) {
            Speaks::OtherCrop | Speaks::OtherStage => continue,
            Speaks::Unclear if stage::is_unclear(statement, field) => unclear = Some(place(product, statement)),
            Speaks::Unclear | Speaks::Yes => {}
        }
        if when::holds(&statement.when, here.situation) == Some(false) {
            continue;
        }
        let mut read = |rate: &Option<AsTyped<Rate>>| {
            let rate = rate.as_ref()?;
            match per_area(rate.value(), product, here.carrier) {
                Ok(amount) => Some(amount),
                Err(problem) => {
                    broken = Some((problem, place(product, statement)));
                    None
                }
            }
        };
        let (least_amount, most_amount) = (read(least), read(most));
        let shown = match (least, most) {
            (Some(least), Some(most)) => format!("{} to {}", least.show(units), most.show(units)),
            (Some(least), None) => format!("at least {}", least.show(units)),
            (None, Some(most)) => format!("at most {}", most.show(units)),
            (None, None) => continue,
        };
        let doubts = crop_doubt(statement, field).into_iter().chain(when::doubts(&statement.when, here.situation));
        let doubt = doubts.collect::<Vec<_>>().join(" and ");
        fitting.push(Range { least: least_amount, most: most_amount, shown, at: place(product, statement), doubt });
    }
    if let Some(findings) = findings {
        if let Some((problem, at)) = broken {
            findings.push(Finding::check(
                here.about_product(),
                format!("A rate on the label cannot be compared: {problem}"),
                Basis::Label(at),
            ));
        }
        if let Some(at) = unclear {
            findings.push(
                Finding::check(
                    here.about_product(),
                    format!(
                        "The rate of {} depends on a stage that {} does not state in a way that compares",
                        product.name, field.name
                    ),
                    Basis::Label(at),
                )
                .hint("Write stages like V6, R1 or BBCH 14."),
            );
        }
    }
    (fitting, any)
}

/// The rate of a line on a field.
pub(crate) fn judge(line: &PlannedLine, here: &Here, findings: &mut Vec<Finding>) {
    let units = here.farm.units;
    let (product, field) = (here.product, here.field);
    let about = || here.about_product();
    let (fitting, any) = ranges(here, units, Some(findings));
    let crop = if field.crop.is_empty() { "a field without a crop" } else { field.crop.as_str() };
    if fitting.is_empty() {
        if any && product.kind.is_pesticide() {
            findings.push(
                Finding::stop(
                    about(),
                    format!(
                        "{} has no rate for {crop}{} as its label is typed",
                        product.name,
                        if field.stage.is_empty() { String::new() } else { format!(" at {}", field.stage) }
                    ),
                    Basis::Label(product.name.clone()),
                )
                .hint("If the label has one, type it in the shed; if not, the product may not be used here."),
            );
        } else if product.kind.is_pesticide() {
            findings.push(
                Finding::check(
                    about(),
                    format!("No rate is typed from the label of {}, so its rate is not judged", product.name),
                    Basis::Label(product.name.clone()),
                )
                .hint("Type the label's rate in the shed."),
            );
        }
        return;
    }
    let over = |range: &&Range| range.most.is_some_and(|most| line.per_area.exceeds(most) == Some(true));
    let under = |range: &&Range| range.least.is_some_and(|least| least.exceeds(line.per_area) == Some(true));
    let planned = line.per_area.show(units);
    let broken: Vec<&Range> = fitting.iter().filter(over).collect();
    // One range that surely speaks and is broken is enough.
    if let Some(range) = broken.iter().find(|range| range.doubt.is_empty()).or(broken.first()) {
        let text = format!("{} is planned at {planned} on {crop}; its label allows {}", product.name, range.shown);
        // Only a statement that names a most, and one that can be compared, allows anything.
        let allowing = fitting.iter().any(|range| range.most.is_some() && !over(&range));
        if allowing {
            findings.push(
                Finding::check(
                    about(),
                    format!("{text}, though another statement of the label allows more"),
                    Basis::Label(range.at.clone()),
                )
                .hint("See which of the two statements fits the weeds and the soil."),
            );
        } else {
            findings.push(forbid(&range.doubt, about(), text, Basis::Label(range.at.clone())).hint("Lower the rate."));
        }
    }
    if fitting.iter().all(|range| under(&range))
        && let Some(range) = fitting.first()
    {
        let doubt = if range.doubt.is_empty() { String::new() } else { format!(" {}", range.doubt) };
        findings.push(
            Finding::check(
                about(),
                format!("{} is planned at {planned} on {crop}, below its label's {}{doubt}", product.name, range.shown),
                Basis::Label(range.at.clone()),
            )
            .hint("Less than the label's rate may fail, and it breeds resistance."),
        );
    }
}

/// What a statement of a label allows over ground.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Band {
    pub(crate) least: Option<AmountPerArea>,
    pub(crate) most: Option<AmountPerArea>,
}

/// Below a band that names no least, so little of its most is not what was meant. Common practice, no source.
const LITTLE: f64 = 0.05;
/// Above a band that names no most, so many times its least is not.
const MUCH: f64 = 20.0;

impl Band {
    /// Whether it names an end.
    pub(crate) fn names(&self) -> bool {
        self.least.is_some() || self.most.is_some()
    }

    /// Whether an amount lies in it, its ends included.
    pub(crate) fn holds(&self, amount: AmountPerArea) -> bool {
        self.least.is_none_or(|least| least.exceeds(amount) == Some(false))
            && self.most.is_none_or(|most| amount.exceeds(most) == Some(false))
    }

    /// Whether an amount that lies in it may be what was meant: a band with one end has no other, but not all of what is left is likely.
    pub(crate) fn may_mean(&self, amount: AmountPerArea) -> bool {
        self.holds(amount)
            && match (self.least, self.most) {
                (Some(least), None) => amount.exceeds(least.times(MUCH)) == Some(false),
                (None, Some(most)) => most.times(LITTLE).exceeds(amount) == Some(false),
                _ => true,
            }
    }
}

/// The bands of the statements that speak on a field, or may; none where one of them cannot be reckoned.
pub(crate) fn bands<'a>(here: &Here<'a>) -> Vec<(Band, &'a Statement)> {
    let end =
        |rate: &Option<AsTyped<Rate>>| rate.as_ref().map(|rate| per_area(rate.value(), here.product, here.carrier));
    let speaking = here.product.label.iter().filter(|statement| {
        !matches!(speaks(statement, here.field), Speaks::OtherCrop | Speaks::OtherStage)
            && when::holds(&statement.when, here.situation) != Some(false)
    });
    let mut all = Vec::new();
    for statement in speaking {
        let Says::Rate { least, most } = &statement.says else { continue };
        // One that cannot be reckoned may hold the rate, so nothing is known of the others.
        let (Ok(least), Ok(most)) = (end(least).transpose(), end(most).transpose()) else { return Vec::new() };
        let band = Band { least, most };
        if band.names() {
            all.push((band, statement));
        }
    }
    all
}

/// The least over ground that a label names for one application on a field; none where it names none.
pub(crate) fn least(here: &Here) -> Option<AmountPerArea> {
    let (fitting, _) = ranges(here, Units::default(), None);
    // A range without a least allows any little.
    let least: Option<Vec<AmountPerArea>> = fitting.iter().map(|range| range.least).collect();
    least?.into_iter().reduce(AmountPerArea::smaller)
}

/// How little and how much over ground the rounding may come to on a field: the smallest least and the smallest most that
/// the label names and the plan itself keeps.
pub(crate) fn bounds(line: &PlannedLine, here: &Here) -> (Option<AmountPerArea>, Option<AmountPerArea>) {
    let (fitting, _) = ranges(here, Units::default(), None);
    let least =
        fitting.iter().filter_map(|range| range.least).filter(|least| least.exceeds(line.per_area) == Some(false));
    let most = fitting.iter().filter_map(|range| range.most).filter(|most| line.per_area.exceeds(*most) == Some(false));
    (least.reduce(AmountPerArea::smaller), most.reduce(AmountPerArea::smaller))
}
