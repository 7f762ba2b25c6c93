//! The days between the last application and harvest or grazing.

use jiff::Span;
use jiff::civil::Date;

use super::{for_crop, place};
use crate::farm::label::Says;
use crate::farm::{Field, Id, Product};
use crate::finding::{Basis, Finding, Subject};

/// A day so many days later; `None` beyond the calendar.
pub fn days_after(day: Date, days: u32) -> Option<Date> {
    day.checked_add(Span::new().try_days(days).ok()?).ok()
}

/// A day so many months later; `None` beyond the calendar.
pub fn months_after(day: Date, months: u32) -> Option<Date> {
    day.checked_add(Span::new().try_months(months).ok()?).ok()
}

/// The earliest day of harvest that a product allows on a field, with the days and where they stand.
pub(crate) fn earliest(product: &Product, field: &Field, sprayed: Date) -> Option<(Date, u32, String)> {
    product
        .label
        .iter()
        .filter_map(|statement| match statement.says {
            Says::HarvestInterval { days } if for_crop(statement, field) => {
                // An interval beyond the calendar ends with it.
                Some((days_after(sprayed, days).unwrap_or(Date::MAX), days, place(product, statement)))
            }
            _ => None,
        })
        .max_by_key(|(day, ..)| *day)
}

/// The harvest interval of a product on a field.
pub(crate) fn judge(
    id: &Id,
    product: &Product,
    field_id: &Id,
    field: &Field,
    sprayed: Date,
    findings: &mut Vec<Finding>,
) {
    let Some((earliest, days, at)) = earliest(product, field, sprayed) else { return };
    match field.harvest {
        Some(harvest) if harvest < earliest => {
            let left = sprayed.until(harvest).map_or(0, |span| span.get_days());
            findings.push(
                Finding::stop(
                    Subject::Field(field_id.clone()),
                    format!(
                        "{} keeps {days} days to harvest; {} is expected to be harvested {left} days after this pass",
                        product.name, field.name
                    ),
                    Basis::Label(at),
                )
                .hint(format!("Harvest not before {earliest}, or choose another product.")),
            );
        }
        Some(_) => {}
        None => findings.push(
            Finding::note(
                Subject::Product(id.clone()),
                format!("{} may not be harvested before {earliest}: {} keeps {days} days", field.name, product.name),
                Basis::Label(at),
            )
            .hint("Type the expected day of harvest on the field's page to have this judged."),
        ),
    }
}
