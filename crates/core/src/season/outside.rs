//! What was measured when a record was made, against what its labels, the laws of its day and the farm's own limits say; and what
//! the forecast had for the time.
//!
//! A record is kept as it is: it says what happened. The labels are read as they are typed now.

use jiff::Span;
use jiff::civil::{DateTime, Time};

use crate::farm::{Expected, Farm, Field, Hour, Id, Line, Pass, Reading, Record, Says};
use crate::finding::{Basis, Finding, Subject};
use crate::label::weather::asked_droplets;
use crate::label::{droplets, once, when};
use crate::language::days::{clock, moment};
use crate::language::{t, yes_or_no};
use crate::plan::Plan;
use crate::quantity::{AsTyped, Bearing, Quantity, Rate, Temperature};
use crate::weather::limits::{self, Held, Kind};
use crate::weather::sky::{Air, can_be, pressure, value};
use crate::weather::{Limit, Verdict, psychro, sun};
use crate::words::all_of;

/// What labels and laws ask of the weather of a record, as they are typed now.
pub fn asked(farm: &Farm, record: &Record) -> Vec<Limit> {
    let fields = as_fields(farm, record);
    limits::asked(farm, &as_pass(farm, record), &fields.iter().collect::<Vec<_>>())
}

/// What of a record lies outside a limit, at its first reading and at each later one. A label and a law give a Check, what the farm keeps to
/// a Note. What was not measured is not judged.
pub fn judge(farm: &Farm, id: &Id, record: &Record) -> Vec<Finding> {
    let pass = as_pass(farm, record);
    let fields: Vec<Field> = as_fields(farm, record);
    let fields: Vec<&Field> = fields.iter().collect();
    let with_air = |reading: Reading| {
        let air = measured(farm, &reading);
        (reading, air)
    };
    let readings: Vec<(Reading, Air)> = record.all_readings().map(with_air).collect();
    let mut findings = Vec::new();
    let mut say = |limit: &Limit, told: bool, found: String| {
        let allowed = allowed(limit, told);
        let unknown = air_unknown(told);
        let text = t!(
            "season-of-it-was-sprayed",
            name = record.name,
            date = record.date,
            found = found,
            allowed = allowed,
            unknown = unknown
        );
        let about = Subject::Record(id.clone());
        findings.push(match &limit.basis {
            Basis::Label(_) | Basis::Law(_) => {
                Finding::check(about, text, limit.basis.clone()).hint(t!("season-the-record-stays-as-it-is"))
            }
            basis => Finding::note(about, text, basis.clone()),
        });
    };
    for limit in limits::on(farm, &pass, &fields) {
        for (place, (reading, air)) in readings.iter().enumerate() {
            let outside = match &limit.kind {
                // The time of the whole record.
                Kind::Daylight { .. } => place == 0 && by_the_sun(farm, record, &limit.kind),
                kind => limits::in_air(kind, air) == Some(Held::Outside),
            };
            match limits::speaks_in(&limit, air) {
                Some(false) => {}
                told if outside => {
                    let found = found(farm, (record, reading), &limit.kind, air);
                    say(&limit, told.is_some(), format!("{found}{}", when_read(place, reading)));
                }
                _ => {}
            }
        }
    }
    for (place, (reading, _)) in readings.iter().enumerate() {
        let Some(humidity) = reading.humidity.as_ref().filter(|humidity| !can_be(humidity.value())) else { continue };
        let when = when_read(place, reading);
        findings.push(
            Finding::check(
                Subject::Record(id.clone()),
                t!(
                    "season-of-a-humidity-of-is-written",
                    name = record.name,
                    date = record.date,
                    humidity = humidity,
                    when = when
                ),
                Basis::Arithmetic,
            )
            .hint(t!("season-mend-the-humidity-of-the-record")),
        );
    }
    if let Some(class) = record.droplets {
        for asked in asked_droplets(farm, &pass, &fields) {
            let Says::Droplets { finest, coarsest } = *asked.says else { continue };
            // Droplets are those of the whole record: what any reading asks for holds.
            let airs = readings.iter().enumerate().filter(|(place, (_, air))| *place == 0 || air.temperature.is_some());
            let told = airs.map(|(_, (_, air))| when::hold_in_air(&asked.air, air.temperature));
            let told = told.reduce(|one, other| match (one, other) {
                (Some(true), _) | (_, Some(true)) => Some(true),
                (Some(false), other) => other,
                (None, _) => None,
            });
            let told = told.flatten();
            if told != Some(false) && (class < finest || coarsest.is_some_and(|coarsest| class > coarsest)) {
                let asks = if told.is_some() && asked.doubt.is_empty() { "asks" } else { "may-ask" };
                let conditions =
                    asked.air.iter().map(when::words).chain(Some(asked.doubt).filter(|doubt| !doubt.is_empty()));
                let conditions: Vec<String> = conditions.collect();
                let text = t!(
                    "season-of-it-was-sprayed-with-droplets",
                    name = record.name,
                    date = record.date,
                    class = class.name(),
                    basis = asked.basis,
                    asks = asks,
                    words = droplets::words(finest, coarsest),
                    conditional = yes_or_no(!conditions.is_empty()),
                    conditions = all_of(&conditions),
                    unknown = air_unknown(told.is_some())
                );
                findings.push(Finding::check(Subject::Record(id.clone()), text, asked.basis));
            }
        }
    }
    findings
}

/// What is said where a limit hangs on the temperature of a record that has none.
fn air_unknown(told: bool) -> &'static str {
    if told { "" } else { t!("season-air-not-measured") }
}

/// What a limit leaves, in a sentence. `told` is whether the air tells that it speaks.
fn allowed(limit: &Limit, told: bool) -> String {
    match (&limit.basis, limit.outside) {
        (Basis::Practice | Basis::Published(_), _) => t!("season-usual-is", limit = limit.text()),
        (basis, Verdict::Forbidden) if told => {
            let (whose, place) = plain(basis);
            t!("season-the-as-it-is-typed-now", whose = whose, place = place, limit = limit.text())
        }
        (basis, _) => {
            let (whose, place) = plain(basis);
            t!("season-the-basis-as-it-is-typed-now-may-ask", whose = whose, place = place, limit = limit.text())
        }
    }
}

fn plain(basis: &Basis) -> (&'static str, String) {
    match basis {
        Basis::Label(place) => ("label", place.clone()),
        other => ("rule", other.to_string()),
    }
}

/// When something was read, in a sentence; nothing for the first reading.
fn when_read(place: usize, reading: &Reading) -> String {
    match (place, reading.at) {
        (0, _) => String::new(),
        (_, Some(at)) => t!("season-read-at", strftime = clock(at)),
        (place, None) => t!("season-in-later-reading", place = place),
    }
}

/// What was measured, as it stands in a reading.
fn found(farm: &Farm, (record, reading): (&Record, &Reading), kind: &Kind, air: &Air) -> String {
    let units = farm.units;
    let at = |text: Option<&str>| text.unwrap_or(t!("season-an-unknown-value")).to_owned();
    match kind {
        Kind::MostWind(_) | Kind::LeastWind(_) => {
            t!("season-at-wind", wind = at(reading.wind.as_ref().map(AsTyped::text)))
        }
        Kind::MostGust(most) => match &reading.gust {
            Some(gust) if gust.exceeds(*most) => t!("season-with-gusts-of", gust = gust.text()),
            // Mean wind above the limit of a gust is above it, whatever the gust.
            _ => t!("season-in-wind-of-which-no-gust", wind = at(reading.wind.as_ref().map(AsTyped::text))),
        },
        Kind::NotToward { .. } => t!("season-with-wind-from", wind_from = reading.wind_from.trim()),
        Kind::MostAir(_) | Kind::LeastAir(_) => {
            t!("season-at-temperature", temperature = at(reading.temperature.as_ref().map(AsTyped::text)))
        }
        Kind::MostHumidity(_) | Kind::LeastHumidity(_) => {
            t!("season-at-a-humidity-of", humidity = at(reading.humidity.as_ref().map(AsTyped::text)))
        }
        Kind::MostDeltaT(_) | Kind::LeastDeltaT(_) => {
            t!("season-at-a-delta-t-of", delta_t = air.delta_t.map_or_else(String::new, |span| span.show(units)))
        }
        Kind::Daylight { .. } | Kind::NoInversion | Kind::RainFree { .. } => {
            let time = |time: Option<Time>| time.map_or_else(|| "?".to_owned(), clock);
            t!("season-from-to", start = time(record.start), end = time(record.end))
        }
    }
}

fn measured(farm: &Farm, reading: &Reading) -> Air {
    let temperature = value(reading.temperature.as_ref());
    let humidity = value(reading.humidity.as_ref()).filter(|humidity| can_be(*humidity));
    let delta_t = temperature
        .zip(humidity)
        .zip(pressure(farm))
        .and_then(|((air, humidity), pressure)| psychro::delta_t(air, humidity, pressure));
    Air {
        wind: value(reading.wind.as_ref()),
        gust: value(reading.gust.as_ref()),
        wind_from: Bearing::parse(&reading.wind_from).ok(),
        temperature,
        humidity,
        delta_t,
    }
}

/// The record as a pass: that which it was planned as, with the products that went out.
fn as_pass(farm: &Farm, record: &Record) -> Pass {
    let planned = record.pass.as_ref().and_then(|id| farm.passes.get(id)).cloned();
    let mut pass = planned.unwrap_or_else(|| Pass::new(&record.name, record.date));
    pass.date = record.date;
    pass.fields = record.fields.keys().cloned().collect();
    // How much went out does not matter here.
    let rate = AsTyped::of("0 gal/ac", Rate::VolumePerArea(crate::quantity::VolumePerArea::ZERO));
    pass.mix = record
        .lines
        .iter()
        .filter(|line| !line.amount.is_zero())
        .map(|line| Line::new(&line.product, rate.clone()))
        .collect();
    pass
}

/// The fields as they were that day.
fn as_fields(farm: &Farm, record: &Record) -> Vec<Field> {
    let then = |(id, then): (&Id, &crate::farm::RecordField)| {
        let mut field = Field::new(&then.name, then.area.clone());
        if let Some(now) = farm.fields.get(id) {
            field.neighbours.clone_from(&now.neighbours);
            field.boundary.clone_from(&now.boundary);
        }
        field.crop = then.crop.to_string();
        field.stage = then.stage.to_string();
        field
    };
    record.fields.iter().map(then).collect()
}

/// When a record began and ended.
fn times(record: &Record) -> Option<(DateTime, DateTime)> {
    Some((record.date.to_datetime(record.start?), record.ended()?))
}

/// Whether a record surely lies outside times by the sun.
fn by_the_sun(farm: &Farm, record: &Record, kind: &Kind) -> bool {
    let (Kind::Daylight { from, to }, Some((start, end))) = (kind, times(record)) else { return false };
    let Some(place) = &farm.place else { return false };
    let Ok(zone) = sun::zone(place) else { return false };
    let Some(sun) = sun::Sun::at(place, record.date, end.date()) else { return false };
    let (Some(start), Some(end)) = (sun::second(&zone, start, false), sun::second(&zone, end, false)) else {
        return false;
    };
    // Times are written to the minute.
    let end = end.max(start + 60);
    sun.within((start, end), *from, *to).is_none_or(|(first, last)| first - start >= 60 || end - last >= 60)
}

/// What the forecast has for the time of a pass: the times given, else its best hours, else its day. `None` where the forecast does not reach.
pub fn expected(farm: &Farm, plan: &Plan, start: Option<Time>, end: Option<Time>) -> Option<Expected> {
    let pass = farm.passes.get(&plan.pass)?;
    let (from, to) = match (start, end) {
        (Some(start), Some(end)) => {
            let day = if end < start { pass.date.tomorrow().ok()? } else { pass.date };
            (pass.date.to_datetime(start), day.to_datetime(end))
        }
        (Some(start), None) => {
            let from = pass.date.to_datetime(start);
            (from, from.checked_add(Span::new().hours(1)).ok()?)
        }
        _ => usual_time(plan, pass)?,
    };
    // An hour lasts until the next entry, where that begins before.
    let hour_ends = |hour: &Hour| {
        let whole = hour.at.checked_add(Span::new().hours(1)).unwrap_or(hour.at);
        let later = farm.forecast.hours.iter().map(|other| other.at).filter(|at| *at > hour.at);
        later.min().map_or(whole, |next| next.min(whole))
    };
    let near = |hour: &Hour| from < hour.at.checked_add(Span::new().hours(1)).unwrap_or(hour.at);
    let hours: Vec<&Hour> = farm
        .forecast
        .hours
        .iter()
        .filter(|hour| hour.at == from || (hour.at < to && near(hour) && from < hour_ends(hour)))
        .collect();
    if hours.is_empty() {
        return None;
    }
    let source = match farm.forecast.source_said() {
        source if source.is_empty() => t!("season-forecast-source").to_owned(),
        source => source,
    };
    let read = farm.forecast.read.map_or_else(String::new, |read| t!("season-text", strftime = moment(read)));
    Some(Expected {
        source: t!("season-to", source = source, read = read, strftime = moment(from), strftime2 = clock(to)).into(),
        wind: ends(&hours, |hour| hour.wind.as_ref(), |a, b| a < b),
        gust: ends(&hours, |hour| hour.gust.as_ref(), |a, b| a < b).map(|(_, most)| most),
        wind_from: directions(&hours).into(),
        temperature: ends(&hours, |hour| hour.temperature.as_ref(), |a: &Temperature, b| a < b),
        humidity: ends(&hours, |hour| hour.humidity.as_ref(), |a, b| a < b),
    })
}

/// From the begin of the best span on as long as the pass takes; the whole day where no hour is allowed.
fn usual_time(plan: &Plan, pass: &Pass) -> Option<(DateTime, DateTime)> {
    let Some(span) = plan.hours.best.or(plan.hours.longest.map(|(span, _)| span)) else {
        return Some((pass.date.at(0, 0, 0, 0), pass.date.tomorrow().ok()?.at(0, 0, 0, 0)));
    };
    #[allow(clippy::cast_possible_truncation)] // A float that is too large becomes the largest whole number.
    let long = |needs: crate::quantity::Duration| Span::new().try_seconds(needs.to_seconds().ceil() as i64).ok();
    let end = plan.hours.needs.and_then(long).and_then(|long| span.from.checked_add(long).ok());
    Some((span.from, end.map_or(span.to, |end| end.min(span.to))))
}

/// The least and the most of a kind, as typed.
fn ends<Q: Quantity>(
    hours: &[&Hour],
    of: fn(&Hour) -> Option<&AsTyped<Q>>,
    less: fn(&Q, &Q) -> bool,
) -> Option<(AsTyped<Q>, AsTyped<Q>)> {
    let mut all = hours.iter().filter_map(|hour| of(hour));
    let first = all.next()?;
    let (mut least, mut most) = (first, first);
    for value in all {
        if less(&value.value(), &least.value()) {
            least = value;
        }
        if less(&most.value(), &value.value()) {
            most = value;
        }
    }
    Some((least.clone(), most.clone()))
}

/// From where the wind was to blow: each point of the compass once, in order of time.
fn directions(hours: &[&Hour]) -> String {
    once(hours.iter().filter_map(|hour| hour.wind_from.as_ref()).map(|from| from.point())).join(", ")
}
