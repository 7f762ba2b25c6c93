//! Days: a year that slipped, against the days that must lie before and after it.

use jiff::civil::{Date, DateTime};

use super::{Offer, Slot, doubted};
use crate::farm::{Farm, Field, Id, Pass, Record};
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;

/// A pass so many days before planting or after harvest is of another year. A field goes on with the days of last year until new ones are
/// typed, and a pass of last year stays in the file, so that one year is not enough.
const ANOTHER_YEAR: i32 = 700;
/// A crop that is sown to be cut once stands for less than so many days.
const STANDS: i32 = 500;
/// A record of a day so far from its pass is of another year.
const OFF_PLAN: i32 = 300;
/// What was sprayed is written down within so many days of the plan.
const AROUND: i32 = 60;

/// Within so many days of today a pass is still looked at.
const NOW: i32 = 14;

fn days(from: Date, to: Date) -> i32 {
    from.until(to).map_or(0, |span| span.get_days())
}

/// The same day in other years, the nearest first.
fn other_years(date: Date) -> impl Iterator<Item = Date> {
    (1..=30_i16).flat_map(|off| [off, -off]).filter_map(move |off| {
        let year = date.year().checked_add(off)?;
        Date::new(year, date.month(), date.day()).ok()
    })
}

/// The day in the nearest year in which it fits.
fn in_another_year(date: Date, slot: &Slot, fits: impl Fn(Date) -> bool) -> Vec<Offer> {
    let meant = other_years(date).find(|date| fits(*date));
    meant.map(|date| Offer::of(slot.clone(), date.to_string(), t!("plausible-another-year"))).into_iter().collect()
}

/// Harvest before planting.
pub(super) fn of_field(id: &Id, field: &Field) -> Option<Finding> {
    let (planted, harvest) = (field.planted?, field.harvest?);
    if harvest >= planted {
        return None;
    }
    // A crop stands for less than a year and a half.
    let stands = |planted: Date, harvest: Date| (20..STANDS).contains(&days(planted, harvest));
    let mut offers = in_another_year(harvest, &Slot::Harvest(id.clone()), |harvest| stands(planted, harvest));
    offers.extend(in_another_year(planted, &Slot::Planted(id.clone()), |planted| stands(planted, harvest)));
    let text = t!("plausible-is-harvested-on-before-it-is", name = field.name, harvest = harvest, planted = planted);
    doubted(Subject::Field(id.clone()), &text, t!("plausible-come-in-order"), Basis::Arithmetic, offers)
}

/// A pass in another year than the crops of its fields.
pub(super) fn of_pass(farm: &Farm, id: &Id, pass: &Pass) -> Option<Finding> {
    let fields = || pass.fields.iter().filter_map(|id| farm.fields.get(id)).filter(|field| field.planted.is_some());
    let fits = |date: Date| {
        fields().all(|field| {
            let Some(planted) = field.planted else { return true };
            // What stands for years, and of which no harvest is typed, may be sprayed in any of them.
            let harvest = field.harvest.filter(|harvest| *harvest >= planted);
            days(date, planted) <= ANOTHER_YEAR && harvest.is_none_or(|harvest| days(harvest, date) <= ANOTHER_YEAR)
        })
    };
    let field = fields().next()?;
    if fits(pass.date) {
        return None;
    }
    let grows = |date: Date| {
        fields().all(|field| {
            let (planted, harvest) = (field.planted.unwrap_or(date), field.harvest);
            days(date, planted) <= AROUND
                && harvest.is_none_or(|harvest| days(harvest, date) <= AROUND)
                && days(planted, date) <= STANDS
        })
    };
    let offers = in_another_year(pass.date, &Slot::PassDate(id.clone()), grows);
    let planted = field.planted?;
    let text = t!("plausible-the-pass-is-typed-for-is", date = pass.date, name = field.name, planted = planted);
    doubted(Subject::Pass(id.clone()), &text, t!("plausible-fall-in-its-season"), Basis::Practice, offers)
}

/// A record of a day that has not come, or of another year than its pass.
pub(super) fn of_record(farm: &Farm, id: &Id, record: &Record, today: Date) -> Option<Finding> {
    let about = || Subject::Record(id.clone());
    let slot = Slot::RecordDate(id.clone());
    let open = |offers: Vec<Offer>| if record.signed.is_some() { Vec::new() } else { offers };
    let planned = record.pass.as_ref().and_then(|pass| farm.passes.get(pass)).map(|pass| pass.date);
    let is_near = |date: Date| planned.is_none_or(|planned| days(planned, date).abs() <= AROUND);
    // A clock may be set wrongly, and a farm may be invented: what was made or is planned later says that it is later.
    let now = || {
        let planned = farm.passes.values().map(|pass| pass.date);
        planned.chain(record.made.map(DateTime::date)).fold(today, Date::max)
    };
    if record.date > today && record.date > now() {
        let now = now();
        let of_plan = planned
            .filter(|planned| *planned <= now)
            .map(|planned| Offer::of(slot.clone(), planned.to_string(), t!("plausible-the-day-of-its-pass")));
        let mut offers = in_another_year(record.date, &slot, |date| date <= now && is_near(date));
        offers.extend(of_plan.filter(|_| offers.is_empty()));
        let text = t!("plausible-is-recorded-for-which-has-not", name = record.name, date = record.date);
        return doubted(about(), &text, t!("plausible-be-past"), Basis::Arithmetic, open(offers));
    }
    let planned = planned?;
    if let Some(finding) = on_another_day(farm, id, record, planned, today) {
        return Some(finding);
    }
    // A pass that is planned anew for another year has moved away from its record, and was not written down beside it.
    let made = record.made.map(DateTime::date)?;
    if days(planned, record.date).abs() <= OFF_PLAN || !is_near(made) {
        return None;
    }
    let offers = in_another_year(record.date, &slot, is_near);
    let counted = record.lines.iter().filter_map(|line| farm.products.get(&line.product)?.counted).max();
    let counted = counted.filter(|counted| record.date < *counted && planned >= *counted);
    let text = t!(
        "plausible-is-recorded-for-and-its-pass",
        name = record.name,
        date = record.date,
        planned = planned,
        counted =
            counted.map_or_else(String::new, |counted| t!("plausible-what-it-took-was-counted-on", counted = counted))
    );
    doubted(about(), &text, t!("plausible-be-beside-that"), Basis::Arithmetic, open(offers))
}

/// A record whose pass is still planned for another day beside it: the plan then counts it as an application before or after its own.
fn on_another_day(farm: &Farm, id: &Id, record: &Record, planned: Date, today: Date) -> Option<Finding> {
    let pass = record.pass.as_ref()?;
    let is_now = |date: Date| days(date, today).abs() <= NOW;
    let of_pass = || farm.records.values().filter(|other| other.pass.as_ref() == Some(pass));
    if planned == record.date || !is_now(planned) || !is_now(record.date) || of_pass().count() != 1 {
        return None;
    }
    let text = t!("plausible-sprayed-on-another-day", name = record.name, date = record.date, planned = planned);
    let slot = Slot::PassDate(pass.to_string());
    let offer = Offer::of(slot, record.date.to_string(), t!("plausible-the-day-of-the-record"));
    let finding = Finding::check(Subject::Record(id.clone()), text, Basis::Arithmetic);
    Some(finding.hint(t!("plausible-move-the-pass-or-plan-another")).offering(vec![offer]))
}
