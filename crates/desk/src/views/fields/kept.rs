//! What the farm knows of the field of the page, asked once a revision and minute.

use std::sync::Arc;

use jiff::civil::DateTime;
use tankard_core::farm::Id;
use tankard_core::season::field::{self, FieldPage};

use crate::app::Desk;

/// What was asked last.
#[derive(Debug, Default)]
pub(super) struct Kept(Option<(Asked, Arc<FieldPage>)>);

#[derive(Debug, PartialEq, Eq)]
struct Asked {
    revision: u64,
    field: Id,
    now: DateTime,
}

/// What the farm knows of a field, and as of when. A demo or an old farm is read as at the end of the day of its last record.
pub(super) fn of(desk: &mut Desk, id: &Id) -> Option<(Arc<FieldPage>, DateTime, bool)> {
    let log = desk.document.log();
    let clock = desk.now();
    let last = log.last_day().map(|day| day.at(23, 59, 0, 0));
    let is_later = last.is_some_and(|last| last.date() > clock.date());
    let now = if is_later { last.unwrap_or(clock) } else { clock.date().at(clock.hour(), clock.minute(), 0, 0) };
    let asked = Asked { revision: desk.document.revision(), field: id.clone(), now };
    if let Some((known, page)) = &desk.fields.kept.0
        && *known == asked
    {
        return Some((Arc::clone(page), now, is_later));
    }
    let page = Arc::new(field::page(desk.document.farm(), &log, id, now)?);
    desk.fields.kept.0 = Some((asked, Arc::clone(&page)));
    Some((page, now, is_later))
}
