//! What the hours of a forecast come to, whatever is sprayed: wet bulb, Delta T, sun, and what points to an inversion. Made once
//! for a forecast; passes are held against it.

use jiff::civil::Date;
use jiff::tz::TimeZone;

use super::practice::{self, inversion};
use super::sun::{self, Second, Sun};
use super::{Sky, Span, psychro};
use crate::farm::{Farm, Hour, SunTime};
use crate::finding::Basis;
use crate::quantity::{AsTyped, Bearing, Length, Pressure, Quantity, Share, Speed, Temperature, TemperatureSpan};

/// How long an hour of a forecast lasts, in seconds, where the next does not begin before.
const HOUR: Second = 3600;

/// What is known of the air, whether expected or measured.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(crate) struct Air {
    pub(crate) wind: Option<Speed>,
    pub(crate) gust: Option<Speed>,
    pub(crate) wind_from: Option<Bearing>,
    pub(crate) temperature: Option<Temperature>,
    pub(crate) humidity: Option<Share>,
    pub(crate) delta_t: Option<TemperatureSpan>,
}

/// Whether warm air lies over cold.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Lies {
    /// Nothing points to it.
    No,
    /// Something points to it.
    Likely,
    /// Where the sun stands is not known, nor is it measured.
    Unknown,
}

/// An hour with what it comes to.
#[derive(Clone, Debug)]
pub(crate) struct Seen {
    pub(crate) from: Second,
    pub(crate) to: Second,
    pub(crate) air: Air,
    pub(crate) sky: Sky,
    pub(crate) inversion: Lies,
}

/// Rain from an hour on, for looking ahead quickly.
#[derive(Clone, Copy, Debug)]
struct Ahead {
    /// When the next hour with rain begins, this one included.
    rain: Second,
    /// When the next in which rain is likely.
    likely: Second,
    /// When the next of which nothing is known.
    unknown: Second,
    /// To when the forecast goes on without a gap.
    to: Second,
}

/// Rain in a time ahead.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Rain {
    /// None.
    No,
    /// Some.
    Yes,
    /// Its chance is one that counts as wet.
    Likely,
    /// An hour of it is not in the forecast, or nothing of its rain.
    Unknown,
}

/// A forecast, hour by hour in order of time, with what each hour comes to.
///
/// Where the zone of the farm is not known, each day has 24 hours and the sun is not told; nor is it where place and zone contradict
/// one another.
#[derive(Clone, Debug)]
pub struct Outlook {
    pub(crate) zone: TimeZone,
    pub(crate) sun: Option<Sun>,
    pub(crate) hours: Vec<Seen>,
    ahead: Vec<Ahead>,
}

impl Outlook {
    /// All of a farm's forecast.
    pub fn of(farm: &Farm) -> Self {
        let days = || farm.forecast.hours.iter().map(|hour| hour.at.date());
        let (Some(first), Some(last)) = (days().min(), days().max()) else {
            return Self { zone: TimeZone::UTC, sun: None, hours: Vec::new(), ahead: Vec::new() };
        };
        Self::of_days(farm, first, last)
    }

    /// The forecast of some days, both included, with the rain that follows them.
    pub fn of_days(farm: &Farm, first: Date, last: Date) -> Self {
        let place = farm.place.as_ref();
        let known = place.and_then(|place| sun::zone(place).ok());
        let sun = place.and_then(|place| Sun::at(place, first, last));
        let zone = known.unwrap_or(TimeZone::UTC);
        let pressure = pressure(farm);
        let mut timed: Vec<(Second, usize, &Hour)> = farm
            .forecast
            .hours
            .iter()
            .enumerate()
            .filter(|(_, hour)| hour.at.date() >= first)
            .filter_map(|(at, hour)| Some((begins(&zone, hour)?, at, hour)))
            .collect();
        timed.sort_by_key(|(from, at, _)| (*from, *at));
        // Of two entries for one hour the first counts.
        timed.dedup_by_key(|(from, ..)| *from);
        let ahead = ahead(farm, &timed);
        let next = timed.iter().skip(1).map(|(from, ..)| *from).chain(std::iter::once(Second::MAX));
        let hours = timed
            .iter()
            .zip(next)
            .take_while(|((_, _, hour), _)| hour.at.date() <= last)
            .map(|((from, _, hour), next)| seen((*from, next.min(from + HOUR)), hour, sun.as_ref(), pressure))
            .collect();
        Self { zone, sun, hours, ahead }
    }

    /// What each hour comes to.
    pub fn skies(&self) -> impl Iterator<Item = &Sky> {
        self.hours.iter().map(|hour| &hour.sky)
    }

    /// Whether the sun can be told.
    pub fn knows_the_sun(&self) -> bool {
        self.sun.is_some()
    }

    /// Sunrise in a day and the sunset that follows.
    pub fn sun(&self, day: Date) -> Option<Span> {
        self.sun.as_ref()?.of_day(&self.zone, day)
    }

    /// Days of which there are hours, in order.
    pub fn days(&self) -> Vec<Date> {
        let mut days: Vec<Date> = self.hours.iter().map(|hour| hour.sky.at.date()).collect();
        days.dedup();
        days
    }

    /// Rain in an hour and in so many hours after its end.
    pub(crate) fn rain(&self, at: usize, hours_after: u32) -> Rain {
        let Some((hour, ahead)) = self.hours.get(at).zip(self.ahead.get(at)) else { return Rain::Unknown };
        let until = hour.to.saturating_add(Second::from(hours_after).saturating_mul(HOUR));
        if ahead.rain < until {
            Rain::Yes
        } else if ahead.likely < until {
            Rain::Likely
        } else if ahead.unknown < until || ahead.to < until {
            Rain::Unknown
        } else {
            Rain::No
        }
    }
}

/// The pressure of the air at the farm: the standard one at its height, at sea level where that is not typed.
pub(crate) fn pressure(farm: &Farm) -> Option<Pressure> {
    let height = farm.place.as_ref().and_then(|place| place.altitude.as_ref());
    psychro::pressure_at(height.map_or(Length::ZERO, AsTyped::value))
}

/// When an hour begins; `None` for one that the clock skips.
fn begins(zone: &TimeZone, hour: &Hour) -> Option<Second> {
    let from = sun::second(zone, hour.at, hour.again)?;
    (sun::civil(zone, from)? == hour.at).then_some(from)
}

pub(crate) fn value<Q: Quantity>(typed: Option<&AsTyped<Q>>) -> Option<Q> {
    typed.map(AsTyped::value)
}

/// Whether a share can be a humidity: what is above 100 % is a slip and is taken as not known.
pub(crate) fn can_be(humidity: Share) -> bool {
    !humidity.exceeds(Share::from_percent(100.0))
}

fn seen((from, to): (Second, Second), hour: &Hour, sun: Option<&Sun>, pressure: Option<Pressure>) -> Seen {
    let temperature = value(hour.temperature.as_ref());
    let humidity =
        value(hour.humidity.as_ref()).or_else(|| psychro::humidity(temperature?, value(hour.dew_point.as_ref())?));
    let wet_bulb = temperature
        .zip(humidity)
        .zip(pressure)
        .and_then(|((air, humidity), pressure)| psychro::wet_bulb(air, humidity, pressure));
    let delta_t = temperature.zip(wet_bulb).map(|(air, bulb)| air - bulb);
    let air = Air {
        wind: value(hour.wind.as_ref()),
        gust: value(hour.gust.as_ref()),
        wind_from: value(hour.wind_from.as_ref()),
        temperature,
        humidity: humidity.filter(|humidity| can_be(*humidity)),
        delta_t,
    };
    let (lies, signs) = signs(hour, (from, to), sun);
    let sun_up = sun.map(|sun| sun.within((from, to), SunTime::SUNRISE, SunTime::SUNSET) == Some((from, to)));
    Seen {
        from,
        to,
        air,
        sky: Sky { at: hour.at, again: hour.again, wet_bulb, delta_t, sun_up, inversion: signs },
        inversion: lies,
    }
}

/// What points to warm air over cold. Two heights decide where both are in the forecast; else the sun, cloud and wind: cloud or
/// wind that is not known clears nothing.
fn signs(hour: &Hour, time: (Second, Second), sun: Option<&Sun>) -> (Lies, Vec<(String, Basis)>) {
    let rule = inversion();
    let sign = |limit: &str| (practice::why(limit).to_owned(), practice::source(limit));
    if let Some((lower, higher)) = hour.temperature.as_ref().zip(hour.higher.as_ref()) {
        let warmer = (higher.value() - lower.value()).to_celsius() > rule.heights.to_celsius() + 1e-6;
        return if warmer { (Lies::Likely, vec![sign("inversion_heights")]) } else { (Lies::No, Vec::new()) };
    }
    let cloud = value(hour.cloud.as_ref());
    let wind = value(hour.wind.as_ref());
    if cloud.is_some_and(|cloud| !rule.overcast.exceeds(cloud)) || wind.is_some_and(|wind| !rule.wind.exceeds(wind)) {
        return (Lies::No, Vec::new());
    }
    let Some(sun) = sun else { return (Lies::Unknown, Vec::new()) };
    #[allow(clippy::cast_possible_truncation)] // An hour or so.
    let minutes = |span: crate::quantity::Duration| (span.to_seconds() / 60.0).round() as i32;
    let clear_from = SunTime { sunset: false, minutes: minutes(rule.after_sunrise) };
    let clear_to = SunTime { sunset: true, minutes: -minutes(rule.before_sunset) };
    if sun.within(time, clear_from, clear_to) == Some(time) {
        return (Lies::No, Vec::new());
    }
    let mut all = vec![sign("inversion_before_sunset")];
    let night = sun.within(time, SunTime::SUNRISE, SunTime::SUNSET) != Some(time);
    let clear = cloud.is_some_and(|cloud| !cloud.exceeds(rule.cloud));
    if night && clear && wind.is_some_and(|wind| rule.calm.exceeds(wind)) {
        all.push(sign("inversion_calm"));
    }
    (Lies::Likely, all)
}

/// Looks back from the last hour, so that each knows what follows it.
fn ahead(farm: &Farm, timed: &[(Second, usize, &Hour)]) -> Vec<Ahead> {
    let wet = practice::of(farm, "wet_chance", |practice| &practice.wet_chance).map(|(wet, _)| wet);
    let mut next = Ahead { rain: Second::MAX, likely: Second::MAX, unknown: Second::MAX, to: Second::MIN };
    let mut begins = Second::MAX;
    let mut all: Vec<Ahead> = timed
        .iter()
        .rev()
        .map(|&(from, _, hour)| {
            let chance = value(hour.rain_chance.as_ref());
            let rain = value(hour.rain.as_ref());
            if rain.is_some_and(|rain| rain.exceeds(Length::ZERO)) {
                next.rain = from;
            }
            if chance.zip(wet).is_some_and(|(chance, wet)| !wet.exceeds(chance)) {
                next.likely = from;
            }
            if rain.is_none() && chance.is_none() {
                next.unknown = from;
            }
            if begins > from + HOUR {
                next.to = from + HOUR;
            }
            begins = from;
            next
        })
        .collect();
    all.reverse();
    all
}
