//! How many applications of a product a label allows in a period, and how many days it keeps between two.
//!
//! Each record of the field that holds the product is one application, however little of it; the records of parts of one are
//! one. Two records, or a record and this pass, that together cover no more than the field may lie on different parts of it; that
//! is a Check and not a Stop.

use super::{Here, Spoken, harvest};
use crate::farm::label::{Period, Says};
use crate::farm::{Field, Record};
use crate::finding::{Finding, Level};
use crate::language::days::short_date;
use crate::language::t;
use crate::quantity::Area;
use crate::season::period::Window;
use crate::season::{Reach, by_application};
use crate::working::Working;

/// The number and the spacing of the applications of a product on a field.
pub(crate) fn judge(here: &Here, findings: &mut Vec<Finding>, workings: &mut Vec<Working>) {
    for spoken in here.spoken() {
        if let Says::Applications { most, days_apart, per } = spoken.statement.says {
            number(here, &spoken, most, per, findings, workings);
            spacing(here, &spoken, days_apart, findings);
        }
    }
}

/// The applications of a product on a field in a period.
pub(crate) struct Counted<'a> {
    /// Each with its parts.
    pub(crate) applications: Vec<Vec<&'a Record>>,
    /// The period around the day of the pass.
    pub(crate) window: Window,
    /// They and the pass may lie on different parts of the field.
    fit_beside: bool,
}

impl Counted<'_> {
    /// How many there are.
    pub(crate) fn count(&self) -> u32 {
        u32::try_from(self.applications.len()).unwrap_or(u32::MAX)
    }

    /// How heavily it weighs that there is one more; none where the label allows it.
    pub(crate) fn one_more(&self, most: u32, spoken: &Spoken) -> Option<Level> {
        let sure = !(most > 0 && self.fit_beside) && spoken.doubt.is_empty();
        (self.count() >= most).then_some(if sure { Level::Stop } else { Level::Check })
    }
}

/// What is recorded of the product in the period around the day of the pass.
pub(crate) fn counted<'a>(here: &Here<'a>, per: Period) -> Counted<'a> {
    let window = Window::of(per, here.field, here.pass.date);
    let reach =
        Reach { from: window.from, to: window.to, field: here.field_id, pass: here.pass_id, date: here.pass.date };
    let earlier: Vec<&Record> = with_product(here, reach).collect();
    Counted {
        applications: by_application(here.farm, here.field_id, earlier.iter().copied()),
        window,
        fit_beside: fits_beside(here.field, here.area, &earlier, here),
    }
}

/// The record of the product that is nearer than a label keeps two apart, the latest of them, with the days from it to the pass.
pub(crate) fn too_near<'a>(here: &Here<'a>, days_apart: u32) -> Option<(i32, &'a Record)> {
    with_product(here, Reach::always(here.field_id, here.pass_id, here.pass.date))
        .filter_map(|record| Some((here.pass.date.since(record.date).ok()?.get_days(), record)))
        .filter(|(days, _)| days.unsigned_abs() < days_apart)
        .max_by_key(|(_, record)| record.date)
}

/// How heavily it weighs that a record is too near.
pub(crate) fn weight_of_near(here: &Here, record: &Record, spoken: &Spoken) -> Level {
    let sure = !fits_beside(here.field, here.area, &[record], here) && spoken.doubt.is_empty();
    if sure { Level::Stop } else { Level::Check }
}

fn with_product<'a>(here: &Here<'a>, reach: Reach<'a>) -> impl Iterator<Item = &'a Record> + use<'a> {
    let product = here.id;
    reach
        .records(here.farm, here.log)
        .filter(move |record| record.lines.iter().any(|line| line.product == *product && !line.amount.is_zero()))
}

fn number(
    here: &Here,
    spoken: &Spoken,
    most: u32,
    per: Period,
    findings: &mut Vec<Finding>,
    workings: &mut Vec<Working>,
) {
    let counted = counted(here, per);
    let (count, window) = (counted.count(), &counted.window);
    let (product, field) = (&here.product.name, &here.field.name);
    workings.push(
        Working::new(t!("label-applications-of-on", product = product, field = field, words = window.words))
            .step(t!("label-applications-so-far"), count.to_string())
            .step(t!("label-this-pass"), count.saturating_add(1).to_string())
            .step(t!("label-labels-most"), most.to_string()),
    );
    findings.extend(window.stand_in(here.field_id, here.field, here.product));
    if counted.one_more(most, spoken).is_none() {
        return;
    }
    let days: Vec<String> =
        counted.applications.iter().filter_map(|parts| parts.first()).map(|record| short_date(record.date)).collect();
    let (number, season) = (count.saturating_add(1), &window.words);
    let text = if days.is_empty() {
        t!(
            "label-one-application-too-many",
            field = field,
            number = number,
            product = product,
            season = season,
            most = most
        )
    } else {
        t!(
            "label-one-application-too-many-after",
            field = field,
            number = number,
            product = product,
            season = season,
            days = days.join(", "),
            most = most
        )
    };
    let found = if most > 0 && counted.fit_beside {
        Finding::check(here.about_field(), t!("label-unless-they-lie-on-different-parts", text = text), spoken.basis())
    } else {
        spoken.forbid(here.about_field(), text)
    };
    findings.push(found.hint(t!("label-leave-the-field-out-or-choose")));
}

fn spacing(here: &Here, spoken: &Spoken, days_apart: u32, findings: &mut Vec<Finding>) {
    let Some((days, record)) = too_near(here, days_apart) else { return };
    let (product, field) = (&here.product.name, &here.field.name);
    let date = record.date;
    let text = match days {
        0 => {
            t!("label-too-near-on-the-same-day", field = field, product = product, date = date, days_apart = days_apart)
        }
        1.. => t!(
            "label-too-near-after",
            field = field,
            product = product,
            date = date,
            apart = in_days(days),
            days_apart = days_apart
        ),
        _ => t!(
            "label-too-near-before",
            field = field,
            product = product,
            date = date,
            apart = in_days(-days),
            days_apart = days_apart
        ),
    };
    let found = if fits_beside(here.field, here.area, &[record], here) {
        Finding::check(here.about_field(), t!("label-unless-they-lie-on-different-parts", text = text), spoken.basis())
    } else {
        spoken.forbid(here.about_field(), text)
    };
    let hint = harvest::days_after(record.date, days_apart)
        .map_or_else(|| t!("label-choose-another-product").to_owned(), |day| t!("label-not-before", day = day));
    findings.push(found.hint(hint));
}

pub(crate) fn in_days(days: i32) -> String {
    t!("label-days", days = days)
}

/// Whether what was sprayed and what is to be sprayed may lie beside each other on the field.
fn fits_beside(field: &Field, area: Area, records: &[&Record], here: &Here) -> bool {
    let sprayed: Area =
        records.iter().filter_map(|record| record.fields.get(here.field_id)).map(|field| field.area.value()).sum();
    !(sprayed + area).exceeds(field.ground())
}
