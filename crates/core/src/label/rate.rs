//! The rate of one application, against the label's range for crop and stage.

use super::{Here, Speaks, crop_doubt, forbid, place, speaks, stage, when};
use crate::farm::Statement;
use crate::farm::label::Says;
use crate::finding::{Basis, Finding};
use crate::language::t;
use crate::mix::line::{PlannedLine, per_area};
use crate::quantity::{AmountPerArea, AsTyped, Rate, Units, apart};
use crate::words::all_of;

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
            (Some(least), Some(most)) => t!("label-to", least = least.show(units), most = most.show(units)),
            (Some(least), None) => t!("label-at-least-least", least = least.show(units)),
            (None, Some(most)) => t!("label-at-most-most", most = most.show(units)),
            (None, None) => continue,
        };
        let doubts = crop_doubt(statement, field).into_iter().chain(when::doubts(&statement.when, here.situation));
        let doubt = all_of(doubts);
        fitting.push(Range { least: least_amount, most: most_amount, shown, at: place(product, statement), doubt });
    }
    if let Some(findings) = findings {
        if let Some((problem, at)) = broken {
            findings.push(Finding::check(
                here.about_product(),
                t!("label-a-rate-on-the-label-cannot", problem = problem),
                Basis::Label(at),
            ));
        }
        if let Some(at) = unclear {
            findings.push(
                Finding::check(
                    here.about_product(),
                    t!("label-the-rate-of-depends-on-a", name = product.name, name2 = field.name),
                    Basis::Label(at),
                )
                .hint(t!("label-write-stages-like-v6-r1-or")),
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
    let crop = if field.crop.is_empty() { t!("label-a-field-without-a-crop") } else { field.crop.as_str() };
    if fitting.is_empty() {
        if any && product.kind.is_pesticide() {
            findings.push(
                Finding::stop(
                    about(),
                    if field.stage.is_empty() {
                        t!("label-has-no-rate-for-as-its", name = product.name, crop = crop)
                    } else {
                        t!("label-has-no-rate-for-at-stage", name = product.name, crop = crop, stage = field.stage)
                    },
                    Basis::Label(product.name.clone()),
                )
                .hint(t!("label-if-the-label-has-one-type")),
            );
        } else if product.kind.is_pesticide() {
            findings.push(
                Finding::check(
                    about(),
                    t!("label-no-rate-is-typed-from-the", name = product.name),
                    Basis::Label(product.name.clone()),
                )
                .hint(t!("label-type-the-labels-rate-in-the")),
            );
        }
        return;
    }
    let over = |range: &&Range| range.most.is_some_and(|most| line.per_area.exceeds(most) == Some(true));
    let under = |range: &&Range| range.least.is_some_and(|least| least.exceeds(line.per_area) == Some(true));
    let broken: Vec<&Range> = fitting.iter().filter(over).collect();
    // One range that surely speaks and is broken is enough.
    if let Some(range) = broken.iter().find(|range| range.doubt.is_empty()).or(broken.first()) {
        let (planned, shown) = beside(line, range.most, range, units);
        let text =
            t!("label-is-planned-at-on-its-label", name = product.name, planned = planned, crop = crop, shown = shown);
        // Only a statement that names a most, and one that can be compared, allows anything.
        let allowing = fitting.iter().any(|range| range.most.is_some() && !over(&range));
        if allowing {
            findings.push(
                Finding::check(
                    about(),
                    t!("label-though-another-statement-of-the-label", text = text),
                    Basis::Label(range.at.clone()),
                )
                .hint(t!("label-see-which-of-the-two-statements")),
            );
        } else {
            findings.push(
                forbid(&range.doubt, about(), text, Basis::Label(range.at.clone())).hint(t!("label-lower-the-rate")),
            );
        }
    }
    if fitting.iter().all(|range| under(&range))
        && let Some(range) = fitting.first()
    {
        let name = &product.name;
        let (planned, shown) = beside(line, range.least, range, units);
        let text = if range.doubt.is_empty() {
            t!("label-is-planned-at-on-below-its", name = name, planned = planned, crop = crop, shown = shown)
        } else {
            t!(
                "label-is-planned-perhaps-below",
                name = name,
                planned = planned,
                crop = crop,
                shown = shown,
                doubt = range.doubt
            )
        };
        findings.push(
            Finding::check(about(), text, Basis::Label(range.at.clone()))
                .hint(t!("label-less-than-the-labels-rate-may")),
        );
    }
}

/// What is planned and the range that it breaks at an end, in words in which both are told apart.
fn beside(line: &PlannedLine, end: Option<AmountPerArea>, range: &Range, units: Units) -> (String, String) {
    let usual = (line.per_area.show(units), range.shown.clone());
    let Some(end) = end.filter(|end| end.show(units) == usual.0) else { return usual };
    let (planned, end) = apart::amounts(line.per_area, end, units);
    let is_most = range.most.is_some_and(|most| line.per_area.exceeds(most) == Some(true));
    let shown = if is_most { t!("label-at-most-most", most = end) } else { t!("label-at-least-least", least = end) };
    (planned, shown)
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
