//! What may not go on a field, or be done on it, with until when, on what basis and by which records.

use jiff::civil::{Date, DateTime};

use super::planting::{self, Because};
use super::product;
use super::re_entry;
use crate::farm::{Farm, Field, Id, Record};
use crate::finding::{Basis, Level};
use crate::label::plant_back::planted_too_early;
use crate::language::days::{moment, short_date};
use crate::language::t;
use crate::season::Log;
use crate::season::binds::{Binds, binds};
use crate::season::keep_out::DAYS;
use crate::season::worker_protection::entry;
use crate::weather::sun;

/// Something that may not be.
#[derive(Clone, Debug, PartialEq)]
pub struct Barred {
    /// By which rule.
    pub bars: Bars,
    /// The product that may not go on, where it is about one.
    pub product: Option<Id>,
    /// A Stop, or a Check where a person must decide.
    pub level: Level,
    /// What is barred and why, in words.
    pub text: String,
    /// Until when.
    pub until: Until,
    /// The records that it comes from, the latest first; none where it comes from the label and the day alone.
    pub records: Vec<Id>,
    /// Who says so.
    pub basis: Basis,
}

/// The rules by which something may not be.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Bars {
    /// People may not enter.
    Entry,
    /// Harvest and grazing have to wait.
    Harvest,
    /// The crop stands where it was planted too early.
    Standing,
    /// The next crop has to wait.
    NextCrop,
    /// The number of applications is used up.
    Applications,
    /// The days between two applications still run.
    Spacing,
    /// The most of a product is used up.
    Total,
    /// The most of an active is used up.
    ActiveTotal,
    /// Less days than the harvest interval are left before the expected harvest.
    BeforeHarvest,
    /// The label allows it on other days of the year.
    Dates,
}

/// Until when something may not be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Until {
    /// Free on this day.
    Day(Date),
    /// Free from this moment on.
    Moment(DateTime),
    /// As long as this crop stands.
    NextCrop,
    /// As long as the harvest is expected on that day.
    Harvest(Date),
    /// It cannot be told.
    Open,
}

impl Until {
    /// In words that follow "until".
    pub fn words(self) -> String {
        match self {
            Self::Day(Date::MAX) => t!("season-beyond-the-calendar").to_owned(),
            Self::Day(day) => short_date(day),
            Self::Moment(at) => moment(at),
            Self::NextCrop => t!("season-the-next-crop").to_owned(),
            Self::Harvest(_) => t!("season-after-the-harvest").to_owned(),
            Self::Open => t!("season-see-the-label").to_owned(),
        }
    }
}

/// All of it: first what holds of the field, then product by product.
pub(super) fn barred(farm: &Farm, log: &Log, id: &Id, now: DateTime) -> Vec<Barred> {
    let Some((id, field)) = farm.fields.get_key_value(id) else { return Vec::new() };
    let mut all = Vec::new();
    all.extend(entering(farm, log, id, now));
    of_records(farm, log, (id, field), now.date(), &mut all);
    product::barred(farm, log, (id, field), now.date(), &mut all);
    all
}

/// Re-entry times that still run, the one that ends last; and the latest record of which it is not known.
fn entering(farm: &Farm, log: &Log, id: &Id, now: DateTime) -> Vec<Barred> {
    let zone = farm.place.as_ref().and_then(|place| sun::zone(place).ok());
    let mut all = Vec::new();
    let running = re_entry::of_records((farm, log), id, now.date(), zone.as_ref()).filter(|kept| kept.until > now);
    if let Some(last) = running.max_by_key(|kept| kept.until) {
        let end = if last.record.end.is_some() { "known" } else { "day" };
        all.push(Barred {
            bars: Bars::Entry,
            product: None,
            level: Level::Stop,
            text: t!(
                "season-nobody-enters-without-protection-keeps-h",
                name = last.line.name,
                hours = last.hours,
                end = end
            ),
            until: Until::Moment(last.until),
            records: vec![last.record_id.clone()],
            basis: Basis::Label(last.line.name.to_string()),
        });
    }
    let recent = |record: &Record| (0..=DAYS).contains(&(now.date() - record.date).get_days());
    let unknown = log
        .on_field(farm, id)
        .filter(|(_, record)| recent(record))
        .map(|(id, record)| (id, record, entry(farm, record).unknown))
        .filter(|(.., unknown)| !unknown.is_empty())
        .max_by_key(|(_, record, _)| record.date);
    if let Some((record_id, record, unknown)) = unknown {
        all.push(Barred {
            bars: Bars::Entry,
            product: None,
            level: Level::Check,
            text: t!(
                "season-whether-people-may-enter-is-not",
                unknown = unknown.join(", "),
                date = short_date(record.date)
            ),
            until: Until::Open,
            records: vec![record_id.clone()],
            basis: Basis::Label(unknown.join("; ")),
        });
    }
    all
}

/// What records still keep from being done: harvest, the crop that stands, the next crop.
fn of_records(farm: &Farm, log: &Log, (id, field): (&Id, &Field), today: Date, all: &mut Vec<Barred>) {
    let start = field.planted.unwrap_or(today).min(today);
    let bound = binds(farm, log, id, field, start);
    let of = |bars, level, text: String, because: Because| Barred {
        bars,
        product: None,
        level,
        text,
        until: Until::Day(because.until),
        records: vec![because.record],
        basis: Basis::Label(because.at),
    };
    let running = bound.iter().filter(|bind| bind.until > today && bind.record.date <= today);
    let latest = running
        .filter(|bind| matches!(bind.binds, Binds::Harvest { .. }))
        .reduce(|latest, bind| if bind.until > latest.until { bind } else { latest });
    if let Some((bind, Binds::Harvest { days })) = latest.map(|bind| (bind, &bind.binds)) {
        let text = t!(
            "season-no-harvest-or-grazing-of-keeps",
            name = bind.product.name,
            date = short_date(bind.record.date),
            days = days
        );
        // The day that is expected is judged as it is for a pass.
        let text = match field.harvest.filter(|harvest| *harvest < bind.until) {
            Some(harvest) => t!("season-it-is-expected-on", text = text, harvest = short_date(harvest)),
            None => text,
        };
        all.push(of(Bars::Harvest, Level::Check, text, Because::of(bind, 0)));
    }
    if let Some((bind, Binds::Planting { months, .. })) =
        planted_too_early(&bound, id, field, today).map(|bind| (bind, &bind.binds))
    {
        let (crop, name, date) = (field.crop.trim(), &bind.product.name, short_date(bind.record.date));
        let text = match field.planted.map(short_date) {
            Some(day) => t!(
                "season-stands-too-early-of-keeps-months",
                crop = crop,
                name = name,
                date = date,
                months = months,
                day = day
            ),
            None => {
                t!("season-stands-too-early-planting-not-typed", crop = crop, name = name, date = date, months = months)
            }
        };
        all.push(of(Bars::Standing, Level::Check, capital(&text), Because::of(bind, *months)));
    }
    let next = field.next_crop.trim();
    let after_today = binds(farm, log, id, field, today);
    if let Some(because) =
        Some(next).filter(|next| !next.is_empty()).and_then(|next| planting::latest(&after_today, next))
    {
        let text = t!(
            "season-no-is-planted-of-keeps-months",
            next = next,
            product = because.product,
            sprayed = short_date(because.sprayed),
            months = because.months
        );
        all.push(of(Bars::NextCrop, Level::Check, text, because));
    }
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}
