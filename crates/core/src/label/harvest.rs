//! The days between the last application and harvest or grazing.

use jiff::Span;
use jiff::civil::Date;

use super::when::{Situation, holds};
use super::{Here, Speaks, Spoken, place, speaks};
use crate::farm::label::Says;
use crate::farm::{Field, Product};
use crate::finding::{Basis, Finding};
use crate::language::t;
use crate::season::binds::{Binds, binds};

/// A day so many days later; `None` beyond the calendar.
pub fn days_after(day: Date, days: u32) -> Option<Date> {
    day.checked_add(Span::new().try_days(days).ok()?).ok()
}

/// A day so many days later; the last of the calendar where it lies beyond.
pub(crate) fn after_days(day: Date, days: u32) -> Date {
    days_after(day, days).unwrap_or(Date::MAX)
}

/// A day so many months later; `None` beyond the calendar.
pub fn months_after(day: Date, months: u32) -> Option<Date> {
    day.checked_add(Span::new().try_months(months).ok()?).ok()
}

/// The earliest day of harvest that a product allows on a field, with the days and where they stand. A statement whose
/// crop, condition or stage cannot be told counts.
pub(crate) fn earliest(
    product: &Product,
    field: &Field,
    situation: &Situation,
    sprayed: Date,
) -> Option<(Date, u32, String)> {
    product
        .label
        .iter()
        .filter(|statement| {
            !matches!(speaks(statement, field), Speaks::OtherCrop | Speaks::OtherStage)
                && holds(&statement.when, situation) != Some(false)
        })
        .filter_map(|statement| match statement.says {
            Says::HarvestInterval { days } => {
                // An interval beyond the calendar ends with it.
                Some((after_days(sprayed, days), days, place(product, statement)))
            }
            _ => None,
        })
        .max_by_key(|(day, ..)| *day)
}

/// The longest harvest interval of a label on a field with its days, of the statements that surely speak or of all.
fn longest<'a>(here: &Here<'a>, sure: bool) -> Option<(u32, Spoken<'a>)> {
    here.spoken()
        .filter(|spoken| !sure || spoken.doubt.is_empty())
        .filter_map(|spoken| match spoken.statement.says {
            Says::HarvestInterval { days } => Some((days, spoken)),
            _ => None,
        })
        .max_by_key(|(days, _)| *days)
}

/// The interval that a spraying on the day of the pass breaks against the expected harvest, with its days. What surely speaks weighs
/// more than a longer interval that may not.
pub(crate) fn broken<'a>(here: &Here<'a>, harvest: Date) -> Option<(u32, Spoken<'a>)> {
    let breaks = |(days, _): &(u32, Spoken)| harvest < after_days(here.pass.date, *days);
    longest(here, true).filter(breaks).or_else(|| longest(here, false).filter(breaks))
}

/// The harvest interval of a product on a field.
pub(crate) fn judge(here: &Here, findings: &mut Vec<Finding>) {
    let sprayed = here.pass.date;
    let until = |days: u32| after_days(sprayed, days);
    let field = here.field;
    let Some(harvest) = field.harvest else {
        let Some((most, doubtful)) = longest(here, false) else { return };
        // No days are kept, so there is nothing to wait for.
        if most == 0 {
            return;
        }
        let (earliest, product) = (until(most), &here.product.name);
        findings.push(
            Finding::note(
                here.about_product(),
                doubtful.with_doubt(t!(
                    "label-may-not-be-harvested-before-keeps",
                    name = field.name,
                    earliest = earliest,
                    product = product,
                    most = most
                )),
                doubtful.basis(),
            )
            .hint(t!("label-type-the-expected-day-of-harvest")),
        );
        return;
    };
    let Some((days, spoken)) = broken(here, harvest) else { return };
    let left = sprayed.until(harvest).map_or(0, |span| span.get_days());
    if left < 0 {
        let text = t!(
            "label-keeps-days-and-the-harvest-lies-before",
            name = here.product.name,
            days = days,
            name2 = field.name,
            harvest = harvest
        );
        let hint = t!("label-type-the-harvest-to-come-or-the-crop", days = until(days));
        findings.push(spoken.forbid(here.about_field(), text).hint(hint));
        return;
    }
    let text = t!(
        "label-keeps-days-to-harvest-is-expected",
        name = here.product.name,
        days = days,
        name2 = field.name,
        left = left
    );
    findings.push(
        spoken
            .forbid(here.about_field(), text)
            .hint(t!("label-harvest-not-before-or-choose-another", days = until(days))),
    );
}

/// Harvest intervals of earlier records that run beyond the expected harvest, where that is typed. One finding a field.
pub(crate) fn recorded(here: &Here, findings: &mut Vec<Finding>) {
    let field = here.field;
    let Some(harvest) = field.harvest else { return };
    let all = binds(here.farm, here.log, here.field_id, field, harvest);
    let latest = all
        .iter()
        .filter(|bind| bind.record.pass.as_deref() != Some(here.pass_id.as_str()) || bind.record.date != here.pass.date)
        .filter(|bind| matches!(bind.binds, Binds::Harvest { .. }) && bind.record.date <= harvest)
        .max_by_key(|bind| bind.until);
    let Some(bind) = latest else { return };
    findings.push(
        Finding::check(
            here.about_field(),
            t!(
                "label-had-on-which-keeps-it-from",
                name = field.name,
                name2 = bind.product.name,
                date = bind.record.date,
                until = bind.until,
                harvest = harvest
            ),
            Basis::Label(bind.at.clone()),
        )
        .hint(t!("label-harvest-not-before", until = bind.until)),
    );
}
