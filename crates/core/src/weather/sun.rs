//! Sunrise and sunset, by the clock of the farm's time zone with its daylight saving.
//!
//! # References
//! I. Reda and A. Andreas, Solar position algorithm for solar radiation applications, Solar Energy 76 (2004), 577 (NREL/TP-560-34302).
//! Sunrise and sunset are those of the sun's upper edge at sea level with 34 minutes of arc of refraction: hills and the weather
//! shift what is seen by minutes.

use jiff::Timestamp;
use jiff::civil::{Date, DateTime};
use jiff::tz::{TimeZone, TimeZoneDatabase};
use solar_positioning::time::JulianDate;
use solar_positioning::{Horizon, Location, SolarEvents, SolarPositions, delta_t};

use super::Span;
use crate::farm::{Place, Position, SunTime};
use crate::language::t;
use crate::plausible::suggested_zones;

/// Seconds on the line of time, as a computer counts them.
pub(crate) type Second = i64;

/// How far the fast model of the sun may be off, in days: two minutes, many times its error. Where the sun grazes the horizon it may
/// be more, and its own time stands.
const NEAR: f64 = 2.0 / 1440.0;

/// Before and after anything that is told here.
const EVER: Second = i64::MAX / 4;

/// The zone of a place, from the rules that are built into the program.
///
/// # Errors
/// What is wrong with it, and what to do.
pub fn zone(place: &Place) -> Result<TimeZone, String> {
    let name = place.zone.trim();
    if name.is_empty() {
        return Err(t!("weather-the-farms-time-zone-is-not").to_owned());
    }
    TimeZoneDatabase::bundled().get(name).map_err(|_| match suggested_zones(place).as_str() {
        "" => t!("weather-is-no-time-zone-known-here", name = name),
        all => t!("weather-is-no-time-zone-known-here-but", name = name, all = all),
    })
}

/// How far the sun's noon may lie from twelve by the standard time of a zone, in hours. The zone that stretches furthest today puts it
/// three hours late (the west of China, 74 degrees east, has the time of 120); a longitude with the wrong sign puts it further off
/// wherever it lies more than some 45 degrees from Greenwich. From memory, no source.
const MOST_OFF: f64 = 4.0;

/// A place that does not go with its time zone, so that times by the sun would have nothing to do with the clock.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Misfit {
    /// What does not fit.
    pub text: String,
    /// What to do.
    pub hint: String,
}

/// Where a place and its time zone contradict one another on a day; `None` where they go together, and where one of them is not known.
pub fn misfit(place: &Place, day: Date) -> Option<Misfit> {
    let (position, zone) = (place.position().ok()?, zone(place).ok()?);
    let standard = offsets(&zone, day).map(standard)?;
    let east = position.longitude.to_degrees();
    let off = |degrees: f64| off_noon(degrees, standard).abs();
    if off(east) <= MOST_OFF {
        return None;
    }
    let north = position.latitude.to_degrees();
    let typed = place.longitude.trim();
    let (turned, swapped) = (off(-east), off(north));
    let hint = if turned.min(swapped) > MOST_OFF {
        t!("weather-mend-the-longitude-or-the-time").to_owned()
    } else if swapped < turned {
        t!("weather-latitude-and-longitude-may-stand-in").to_owned()
    } else if east > 0.0 {
        t!("weather-west-is-typed-with-a-minus", east = -east)
    } else {
        t!("weather-east-is-typed-without-a-minus", east = -east)
    };
    #[allow(clippy::cast_possible_truncation)] // Minutes of a day.
    let noon = ((12.0 - off_noon(east, standard)) * 60.0).round().rem_euclid(1440.0) as i32;
    Some(Misfit {
        text: t!(
            "weather-the-longitude-does-not-fit-the",
            typed = typed,
            zone = place.zone.trim(),
            noon = format_args!("{:02}", noon / 60),
            noon2 = format_args!("{:02}", noon % 60)
        ),
        hint,
    })
}

/// What the clock of a zone keeps in January and in July of a year, in seconds east of UTC.
pub(crate) fn offsets(zone: &TimeZone, day: Date) -> Option<[i32; 2]> {
    let at = |month: i8| {
        let noon = Date::new(day.year(), month, 1).ok()?.at(12, 0, 0, 0);
        Some(zone.to_offset(zone.to_timestamp(noon).ok()?).seconds())
    };
    Some([at(1)?, at(7)?])
}

/// Hours east of UTC without daylight saving: the lesser of winter's and summer's.
pub(crate) fn standard([winter, summer]: [i32; 2]) -> f64 {
    f64::from(winter.min(summer)) / 3600.0
}

/// How many hours the sun is ahead of a clock, from -12 to 12.
pub(crate) fn off_noon(degrees_east: f64, hours_east: f64) -> f64 {
    (degrees_east / 15.0 - hours_east + 12.0).rem_euclid(24.0) - 12.0
}

/// When a time of the clock is. In the hour that the clock shows twice it is the first, or the second where `again`; what the
/// clock skips is moved on by the skip.
pub(crate) fn second(zone: &TimeZone, at: DateTime, again: bool) -> Option<Second> {
    let at = zone.to_ambiguous_timestamp(at);
    if again { at.later() } else { at.compatible() }.ok().map(Timestamp::as_second)
}

/// What the clock shows then.
pub(crate) fn civil(zone: &TimeZone, second: Second) -> Option<DateTime> {
    Timestamp::from_second(second).ok().map(|at| zone.to_datetime(at))
}

/// Where a day begins and where it ends: 23, 24 or 25 hours apart.
pub(crate) fn day_ends(zone: &TimeZone, day: Date) -> Option<(Second, Second)> {
    let midnight = |day: Date| second(zone, day.at(0, 0, 0, 0), false);
    Some((midnight(day)?, midnight(day.tomorrow().ok()?)?))
}

/// A time that the sun is up, without an end where that lies beyond the days looked at.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Up {
    rise: Option<Second>,
    set: Option<Second>,
}

/// When the sun is up over some days.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(crate) struct Sun {
    up: Vec<Up>,
}

impl Sun {
    /// The sun over a place from a day to another; `None` where the place or its zone is not known or they contradict one another.
    pub(crate) fn at(place: &Place, first: Date, last: Date) -> Option<Self> {
        if misfit(place, first).is_some() {
            return None;
        }
        Self::over(place.position().ok()?, &zone(place).ok()?, first, last)
    }

    /// The sun over a place from a day to another, and a day about them. `None` for years that astronomy does not reach.
    pub(crate) fn over(position: Position, zone: &TimeZone, first: Date, last: Date) -> Option<Self> {
        let from = day_ends(zone, first.yesterday().ok()?)?.0;
        let to = day_ends(zone, last.tomorrow().ok()?)?.1;
        let year = f64::from(first.year()) + (f64::from(first.month()) - 0.5) / 12.0;
        let terrestrial = delta_t::estimate(year).ok()?;
        let location =
            Location { latitude: position.latitude.to_degrees(), longitude: position.longitude.to_degrees() };
        let horizon = Horizon::SunriseSunset;
        // The fast model finds, the exact one says when: alone it takes ten times as long. The fast one knows the years 2010 to 2110.
        let fast = (2011..2110).contains(&first.year()) && (2011..2110).contains(&last.year());
        let events = if fast { SolarEvents::grena3() } else { SolarEvents::new() };
        let positions = SolarPositions::new();
        let height = |at: f64| -> Option<f64> {
            let at = JulianDate::new(at, terrestrial).ok()?;
            Some(positions.at_from_julian(at, location, 0.0, None).ok()?.elevation_angle() - horizon.elevation_angle())
        };
        let rise_after = |from: f64| {
            let rough = events.next_rise_from_julian(from, julian(to), location, terrestrial, horizon).ok()?;
            Some(rough.map(|at| exactly(at, height).filter(|exact| *exact > from).unwrap_or(at)))
        };
        let set_after = |from: f64| {
            let rough = events.next_set_from_julian(from, julian(to), location, terrestrial, horizon).ok()?;
            Some(rough.map(|at| exactly(at, height).filter(|exact| *exact > from).unwrap_or(at)))
        };
        let (mut rise, set) = (rise_after(julian(from))?, set_after(julian(from))?);
        let mut up = Vec::new();
        let already = match (rise, set) {
            (Some(rise), Some(set)) => set < rise,
            (None, Some(_)) => true,
            (Some(_), None) => false,
            (None, None) => height(julian(from))? > 0.0,
        };
        if already {
            up.push(Up { rise: None, set: set.map(unix) });
        }
        // Once a day and a few days: this ends.
        while let Some(at) = rise {
            let set = set_after(at)?;
            up.push(Up { rise: Some(unix(at)), set: set.map(unix) });
            rise = match set {
                Some(set) => rise_after(set)?,
                None => None,
            };
        }
        Some(Self { up })
    }

    /// The part of a time in which the clock stands between two times by the sun; the longest where there are several, `None`
    /// where there is none. While the sun does not set, nothing is after sunset and all is after sunrise.
    pub(crate) fn within(
        &self,
        (from, to): (Second, Second),
        begin: SunTime,
        end: SunTime,
    ) -> Option<(Second, Second)> {
        let shift = |time: SunTime| Second::from(time.minutes) * 60;
        let mut best: Option<(Second, Second)> = None;
        // Times by the sun reach half a day from it, so that those about the time are enough.
        let first = self.up.partition_point(|up| up.set.is_some_and(|set| set < from - 86_400));
        for (at, up) in self.up.iter().enumerate().skip(first) {
            if up.rise.is_some_and(|rise| rise > to + 86_400) {
                break;
            }
            let begins = if begin.sunset { up.set.unwrap_or(EVER) } else { up.rise.unwrap_or(-EVER) } + shift(begin);
            let ends = if end.sunset {
                up.set.unwrap_or(EVER)
            } else if begin.sunset {
                // Through the night.
                self.up.get(at + 1).and_then(|next| next.rise).unwrap_or(EVER)
            } else {
                up.rise.unwrap_or(-EVER)
            } + shift(end);
            let part = (begins.max(from), ends.min(to));
            if part.0 < part.1 && best.is_none_or(|best| part.1 - part.0 > best.1 - best.0) {
                best = Some(part);
            }
        }
        best
    }

    /// Sunrise in a day, and the sunset that follows, where there are both.
    pub(crate) fn of_day(&self, zone: &TimeZone, day: Date) -> Option<Span> {
        let (from, to) = day_ends(zone, day)?;
        let up = self.up.iter().find(|up| up.rise.is_some_and(|rise| (from..to).contains(&rise)))?;
        Some(Span { from: civil(zone, up.rise?)?, to: civil(zone, up.set?)? })
    }
}

/// Sunrise in a day, and the sunset that follows, by the clock of the zone, to the second; `None` where the sun does not rise or
/// does not set.
///
/// # Examples
/// ```
/// use jiff::civil::date;
/// use tankard_core::farm::Place;
/// use tankard_core::weather::sun;
/// let place = Place { latitude: "41.2".into(), longitude: "-96.4".into(), zone: "America/Chicago".into(), ..Place::default() };
/// let day = sun::times(place.position()?, &sun::zone(&place)?, date(2031, 6, 12));
/// assert!(day.is_some_and(|day| (day.from.hour(), day.to.hour()) == (5, 20)));
/// # Ok::<(), String>(())
/// ```
pub fn times(position: Position, zone: &TimeZone, day: Date) -> Option<Span> {
    Sun::over(position, zone, day, day)?.of_day(zone, day)
}

/// Where the sun's height above the horizon is nothing near a time, both as Julian dates, by the line through two heights half a
/// minute apart: the sun's way bends by nothing that matters in that time.
fn exactly(near: f64, height: impl Fn(f64) -> Option<f64>) -> Option<f64> {
    let step = 0.5 / 1440.0;
    let (before, after) = (height(near)?, height(near + step)?);
    let away = before / (before - after) * step;
    (away.abs() <= NEAR).then_some(near + away)
}

/// Julian date, in days.
fn julian(second: Second) -> f64 {
    second as f64 / 86_400.0 + 2_440_587.5
}

#[allow(clippy::cast_possible_truncation)] // Some ten digits.
fn unix(julian: f64) -> Second {
    ((julian - 2_440_587.5) * 86_400.0).round() as Second
}

#[cfg(test)]
mod tests {
    use super::{Sun, day_ends, misfit, times, zone};
    use crate::farm::{Place, SunTime};
    use jiff::civil::date;

    fn place(latitude: &str, longitude: &str, zone: &str) -> Place {
        let text = str::to_owned;
        Place { latitude: text(latitude), longitude: text(longitude), zone: text(zone), ..Place::default() }
    }

    /// By the law of daylight saving in the United States: clocks go on on the second Sunday in March, back on the first in
    /// November.
    #[test]
    fn days_are_as_long_as_the_clock_makes_them() {
        let zone = zone(&place("41.2", "-96.4", "america/chicago")).unwrap();
        for (day, hours) in [(date(2031, 3, 9), 23), (date(2031, 11, 2), 25), (date(2031, 6, 12), 24)] {
            let (from, to) = day_ends(&zone, day).unwrap();
            assert_eq!(to - from, hours * 3600, "{day}");
        }
    }

    /// Longyearbyen has midnight sun in June and polar night in December; Fairbanks has its June sunset after midnight.
    #[test]
    fn far_north() {
        let north = place("78.2", "15.6", "Arctic/Longyearbyen");
        let (position, zone_there) = (north.position().unwrap(), zone(&north).unwrap());
        for (day, up) in [(date(2031, 6, 12), true), (date(2031, 12, 12), false)] {
            assert_eq!(times(position, &zone_there, day), None, "{day}");
            let sun = Sun::over(position, &zone_there, day, day).unwrap();
            let all = day_ends(&zone_there, day).unwrap();
            assert_eq!(sun.within(all, SunTime::SUNRISE, SunTime::SUNSET), up.then_some(all), "{day}");
        }
        let fairbanks = place("64.8", "-147.7", "America/Anchorage");
        let span = times(fairbanks.position().unwrap(), &zone(&fairbanks).unwrap(), date(2031, 6, 12)).unwrap();
        assert_eq!(span.to.date(), date(2031, 6, 13));
    }

    #[test]
    fn a_place_that_contradicts_its_zone_is_told() {
        let day = date(2031, 6, 12);
        let told = |latitude, longitude, zone| misfit(&place(latitude, longitude, zone), day);
        // Places and zones that go together, from memory: the far ends of China, Alaska, Spain and Argentina, Kiritimati over the
        // date line, Ireland whose saving is in winter, Nepal and Lord Howe Island off the full hour.
        for (latitude, longitude, zone) in [
            ("41.2", "-96.4", "America/Chicago"),
            ("39.5", "75.9", "Asia/Shanghai"),
            ("53.9", "-166.5", "America/Anchorage"),
            ("43.3", "-8.4", "Europe/Madrid"),
            ("-53.2", "-70.3", "America/Argentina/Ushuaia"),
            ("1.9", "-157.4", "Pacific/Kiritimati"),
            ("-43.9", "-176.5", "Pacific/Chatham"),
            ("53.3", "-6.3", "Europe/Dublin"),
            ("27.7", "85.3", "Asia/Kathmandu"),
            ("-31.5", "159.1", "Australia/Lord_Howe"),
            ("41.2", "96.4", "no zone"),
            ("", "96.4", "America/Chicago"),
        ] {
            assert_eq!(told(latitude, longitude, zone), None, "{longitude} {zone}");
        }
        // By hand: 12:00 less 6 h and less 96.4 ÷ 15 h is 23:34 of the day before.
        let west = told("41.2", "96.4", "America/Chicago").unwrap();
        assert_eq!(
            west.text,
            "The longitude 96.4 does not fit the time zone America/Chicago: the sun would stand highest at 23:34 by its clock"
        );
        assert!(west.hint.contains("\"-96.4\""), "{}", west.hint);
        let east = told("-34.9", "-138.6", "Australia/Adelaide").unwrap();
        assert!(east.hint.contains("without a minus: \"138.6\""), "{}", east.hint);
        let swapped = told("-79.4", "43.7", "America/Toronto").unwrap();
        assert!(swapped.hint.contains("each other's box"), "{}", swapped.hint);
        let zone = told("52.5", "13.4", "Australia/Sydney").unwrap();
        assert!(zone.hint.contains("or the time zone"), "{}", zone.hint);
        assert_eq!(Sun::at(&place("41.2", "96.4", "America/Chicago"), day, day), None);
        assert!(Sun::at(&place("41.2", "-96.4", "America/Chicago"), day, day).is_some());
    }

    #[test]
    fn nonsense_is_told() {
        assert!(zone(&place("", "", "Mars/Olympus")).unwrap_err().contains("Mars/Olympus"));
        assert!(zone(&place("", "", " ")).unwrap_err().contains("not typed"));
        let sane = place("41.2", "-96.4", "America/Chicago");
        let zone = zone(&sane).unwrap();
        for day in [jiff::civil::Date::MIN, jiff::civil::Date::MAX, date(9000, 1, 1)] {
            assert_eq!(times(sane.position().unwrap(), &zone, day), None, "{day}");
        }
    }
}
