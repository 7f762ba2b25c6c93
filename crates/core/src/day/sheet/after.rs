//! The fields after spraying: when people may enter again, when the crop may be harvested, what lies beside.

use jiff::civil::{Date, DateTime};
use jiff::tz::TimeZone;

use super::{OfDay, SheetField};
use crate::farm::{Farm, Field, Id, Neighbour};
use crate::ground::side_on_card;
use crate::label::when::Situation;
use crate::label::{harvest, listed, once};
use crate::language::days::{clock, long_date, short_date, weekday};
use crate::language::t;
use crate::loads::card::{longest_re_entry, re_entry_hours};
use crate::season::Log;
use crate::season::binds::{Binds, binds};
use crate::season::field::re_entry;
use crate::weather::{sun, whole_minute};

/// The fields of the day, each once; those of which the same holds together. What was sprayed on them before counts too.
pub(super) fn fields((farm, log): (&Farm, &Log), date: Date, passes: &[&OfDay]) -> Vec<SheetField> {
    let zone = farm.place.as_ref().and_then(|place| sun::zone(place).ok());
    let mut together: Vec<(String, String, Vec<&Field>)> = Vec::new();
    for id in once(passes.iter().flat_map(|pass| &pass.plan.fields).map(|field| &field.field)) {
        let Some(field) = farm.fields.get(id) else { continue };
        let sprays = |pass: &&&OfDay| pass.plan.fields.iter().any(|planned| planned.field == *id);
        let here: Vec<&OfDay> = passes.iter().filter(sprays).copied().collect();
        let (enter, harvest) = (
            enter(&here, sprayed_before((farm, log), id, date, zone.as_ref()), date, zone.as_ref()),
            harvest_from((farm, log), (id, field), &here, date),
        );
        match together.iter_mut().find(|known| (&known.0, &known.1) == (&enter, &harvest)) {
            Some((.., fields)) => fields.push(field),
            None => together.push((enter, harvest, vec![field])),
        }
    }
    together
        .into_iter()
        .map(|(enter, harvest, fields)| SheetField {
            name: fields.iter().map(|field| field.name.as_str()).collect::<Vec<_>>().join(", "),
            enter,
            harvest,
            beside: beside_all(farm, &fields),
        })
        .collect()
}

/// What lies beside some fields; where there are several, with the field's name.
fn beside_all(farm: &Farm, fields: &[&Field]) -> String {
    let of_field = |field: &&Field| {
        let all: Vec<String> = field.neighbours.iter().map(|neighbour| beside(farm, neighbour)).collect();
        match all.join(", ") {
            none if none.is_empty() => None,
            all if fields.len() > 1 => Some(format!("{}: {all}", field.name)),
            all => Some(all),
        }
    };
    fields.iter().filter_map(of_field).collect::<Vec<_>>().join("; ")
}

fn beside(farm: &Farm, neighbour: &Neighbour) -> String {
    let distance = neighbour.distance.as_ref().map(|distance| distance.show(farm.units));
    let where_it_lies = [Some(side_on_card(neighbour.side.trim()).aloud()), distance].into_iter().flatten();
    let where_it_lies: Vec<String> = where_it_lies.filter(|text| !text.is_empty()).collect();
    if where_it_lies.is_empty() {
        neighbour.what.clone()
    } else {
        format!("{} ({})", neighbour.what, where_it_lies.join(", "))
    }
}

/// Until when re-entry times keep people out of a field that was sprayed before, beyond the beginning of a day: of records, and of
/// passes of earlier days that have none yet. Where the finish is not known, they run from the end of their day.
fn sprayed_before(
    (farm, log): (&Farm, &Log),
    field: &Id,
    date: Date,
    zone: Option<&TimeZone>,
) -> Option<(DateTime, String)> {
    let recorded = re_entry::of_records((farm, log), field, date, zone).map(|kept| {
        (kept.until, t!("day-h-of", hours = kept.hours, name = kept.line.name, date = short_date(kept.record.date)))
    });
    let planned = farm.passes.iter().filter(|(id, pass)| {
        pass.date < date && pass.fields.contains(field) && log.is_open(farm, id, std::slice::from_ref(field))
    });
    let planned = planned.flat_map(|(_, pass)| {
        pass.mix.iter().map(move |line| (&line.product, pass.date, re_entry::midnight(pass.date)))
    });
    let planned = planned.filter_map(|(product, day, finish)| {
        let product = farm.products.get(product)?;
        let hours = re_entry_hours(product)?;
        let until = re_entry::later(finish?, hours, zone)?;
        Some((until, t!("day-hours-h-name-of-day", hours = hours, name = product.name, day = short_date(day))))
    });
    recorded.chain(planned).filter(|(until, _)| *until > date.at(0, 0, 0, 0)).max_by_key(|(until, _)| *until)
}

/// Until when nobody enters: the finish and the longest time of each pass, and what was sprayed before; the latest of them.
fn enter(here: &[&OfDay], before: Option<(DateTime, String)>, date: Date, zone: Option<&TimeZone>) -> String {
    let mut latest = before;
    let mut longest: Option<(u32, String)> = None;
    let mut planned = false;
    for pass in here {
        let Some((hours, id, _)) = longest_re_entry(&pass.products) else { continue };
        let from = t!("day-hours-of-today", hours = hours, name = pass.short(id));
        let finish = pass.slot.and_then(|slot| slot.span).map(|span| whole_minute(span.to));
        match finish.and_then(|finish| re_entry::later(finish, hours, zone)) {
            Some(until) if latest.as_ref().is_none_or(|(known, _)| until > *known) => {
                latest = Some((until, from));
                planned = true;
            }
            None if longest.as_ref().is_none_or(|(known, _)| hours > *known) => longest = Some((hours, pass.short(id))),
            Some(_) | None => {}
        }
    }
    // Who is late must see that the hours run from the end, and not from the plan of it.
    let until = latest.map(|(until, from)| {
        let moment = moment(until, date);
        if planned {
            t!("day-enter-from-if-on-time", moment = moment, from = from)
        } else {
            t!("day-enter-from", moment = moment, from = from)
        }
    });
    let after = longest.map(|(hours, name)| t!("day-h-after-the-last-of-the", hours = hours, name = name));
    match (until, after) {
        (Some(until), Some(after)) => t!("day-enter-from-and-after", until = until, after = after),
        (Some(one), None) | (None, Some(one)) => one,
        (None, None) => t!("day-see-the-labels-none-is-typed").to_owned(),
    }
}

/// "Friday 00:50", or with the whole date where that is a week off and more.
fn moment(at: DateTime, day: Date) -> String {
    let days = day.until(at.date()).map_or(i32::MAX, |span| span.get_days());
    let name = if days < 7 { weekday(at.date()).aloud() } else { long_date(at.date()) };
    format!("{name} {}", clock(at))
}

/// The latest of the days that the labels keep to harvest, those of records on the field among them.
fn harvest_from((farm, log): (&Farm, &Log), (id, field): (&Id, &Field), here: &[&OfDay], date: Date) -> String {
    let of_day = here
        .iter()
        .flat_map(|pass| pass.products.iter().map(move |(id, product)| (*pass, *id, *product)))
        .filter_map(|(pass, id, product)| {
            let situation = Situation::new(farm, pass.pass, id, product);
            let (day, days, _) = harvest::earliest(product, field, &situation, pass.pass.date)?;
            Some((day, t!("day-days", days = days, short = pass.short(id))))
        });
    let recorded = binds(farm, log, id, field, date).into_iter().filter_map(|bind| match bind.binds {
        Binds::Harvest { days } => Some((
            bind.until,
            t!("day-days-of", days = days, name = bind.product.name, date = short_date(bind.record.date)),
        )),
        Binds::Planting { .. } => None,
    });
    let latest = recorded.chain(of_day).max_by_key(|(day, _)| *day);
    latest.map_or_else(
        || t!("day-see-the-labels-none-is-typed").to_owned(),
        |(day, from)| format!("{} ({from})", short_date(day)),
    )
}

/// The pesticides without a harvest interval, with the fields on which none speaks.
pub(super) fn without_harvest(farm: &Farm, passes: &[&OfDay]) -> Vec<String> {
    let mut silent: Vec<(&str, Vec<String>)> = Vec::new();
    for pass in passes {
        for (id, product) in pass.products.iter().filter(|(_, product)| product.kind.is_pesticide()) {
            let situation = Situation::new(farm, pass.pass, id, product);
            let fields = pass.plan.fields.iter().filter_map(|planned| farm.fields.get(&planned.field));
            for field in fields.filter(|field| harvest::earliest(product, field, &situation, pass.pass.date).is_none())
            {
                match silent.iter_mut().find(|(name, _)| *name == product.name) {
                    Some((_, fields)) if fields.contains(&field.name) => {}
                    Some((_, fields)) => fields.push(field.name.clone()),
                    None => silent.push((&product.name, vec![field.name.clone()])),
                }
            }
        }
    }
    let words = |(name, fields): (&str, Vec<String>)| {
        t!("day-no-harvest-interval-is-typed-for", name = name, fields = listed(&fields))
    };
    silent.into_iter().map(words).collect()
}
