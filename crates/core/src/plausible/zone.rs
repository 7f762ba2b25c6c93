//! Time zones that were probably meant: by the words in which people name them, by a city, and by where the farm lies. Each is a proposal.
//!
//! Where a farm lies tells its zone only with the borders of all zones, which are not in the program; the nearest of the cities after which
//! zones are called is mostly in the same one, and is said as the nearest.

use std::sync::LazyLock;

use geo::{Distance, Haversine, Point};
use jiff::civil::Date;
use jiff::tz::{TimeZone, TimeZoneDatabase};
use serde::Deserialize;

use super::{Offer, Slot};
use crate::farm::{Place, Position};
use crate::fold::folded;
use crate::language::t;
use crate::weather::sun::{off_noon, offsets, standard};
use crate::words::plain;

/// A row of `assets/time-zones.csv`: a zone and the city after which it is called.
#[derive(Clone, Debug, Deserialize)]
struct City {
    zone: String,
    latitude: f64,
    longitude: f64,
    comments: String,
    #[cfg_attr(not(test), allow(dead_code))] // It is looked up in the table by who doubts a place.
    source: String,
}

/// A row of `assets/time-zone-words.csv`: words, and the zones that they may mean.
#[derive(Clone, Debug, Deserialize)]
struct Named {
    words: String,
    zones: String,
    #[cfg_attr(not(test), allow(dead_code))] // The words rest on it, not a number.
    source: String,
}

fn cities() -> &'static [City] {
    static ROWS: LazyLock<Vec<City>> =
        LazyLock::new(|| crate::table::read(include_str!("../../../../assets/time-zones.csv")).unwrap_or_default());
    &ROWS
}

fn words() -> &'static [Named] {
    static ROWS: LazyLock<Vec<Named>> = LazyLock::new(|| {
        crate::table::read(include_str!("../../../../assets/time-zone-words.csv")).unwrap_or_default()
    });
    &ROWS
}

/// So many are offered at most.
const MOST: usize = 4;
/// Nor does one whose clock is so many hours off the sun's own time of the farm. Spain and the west of Argentina come closest to it. Common
/// practice, no source.
const OFF: f64 = 1.75;
/// A city farther away says nothing of a farm's zone. Common practice, no source.
const FAR: f64 = 1_500.0;

fn zone(name: &str) -> Option<TimeZone> {
    TimeZoneDatabase::bundled().get(name).ok()
}

/// Kilometres between two places, each by its latitude and longitude in degrees, on a globe.
fn apart(one: (f64, f64), other: (f64, f64)) -> f64 {
    Haversine.distance(Point::new(one.1, one.0), Point::new(other.1, other.0)) / 1000.0
}

fn degrees(position: Position) -> (f64, f64) {
    (position.latitude.to_degrees(), position.longitude.to_degrees())
}

/// The city of a zone, "New York".
fn city(zone: &str) -> String {
    zone.rsplit('/').next().unwrap_or(zone).replace('_', " ")
}

/// Whether words begin like others, accents apart.
fn begins(text: &str, with: &str) -> bool {
    bare(text).starts_with(&bare(with))
}

fn bare(text: &str) -> String {
    folded(&plain(text)).replace(['_', '-'], " ")
}

/// What to offer for the time zone of a place: those that what is typed may mean, the nearest first where latitude and longitude are typed;
/// where nothing is typed, or nothing that is known, those of the nearest cities. Empty where the zone is known.
///
/// # References
/// Coordinates of the cities: IANA time zone database, zone.tab. Distances are on a sphere, which is a half per cent off at most.
pub fn zones(place: &Place, day: Date) -> Vec<Offer> {
    let typed = place.zone.trim();
    if !typed.is_empty() && zone(typed).is_some_and(|_| typed.contains('/') || typed.eq_ignore_ascii_case("utc")) {
        return Vec::new();
    }
    let here = place.position().ok().map(degrees);
    let mut all = if typed.is_empty() { Vec::new() } else { named(typed, here) };
    if all.is_empty() {
        all = here.map(|here| nearest(here, day)).unwrap_or_default();
    }
    all.truncate(MOST);
    all
}

/// The zones that what is typed may mean, as a question; empty where none is at hand.
pub(crate) fn suggested(place: &Place) -> String {
    let all = named(place.zone.trim(), place.position().ok().map(degrees));
    super::either(&all.iter().take(MOST).map(Offer::text).collect::<Vec<_>>())
}

fn distance(zone: &str, here: (f64, f64)) -> Option<f64> {
    let city = cities().iter().find(|city| city.zone == zone)?;
    Some(apart(here, (city.latitude, city.longitude)))
}

/// Zones that words may mean.
fn named(typed: &str, here: Option<(f64, f64)>) -> Vec<Offer> {
    let is = |word: &str| bare(word) == bare(typed);
    // From three letters on, so that "C" is not a list of all that begin so.
    let may_be = |word: &str| is(word) || (typed.chars().count() >= 3 && begins(word, typed));
    let by_words = words().iter().filter(|row| row.words.split('|').any(may_be)).flat_map(|row| row.zones.split('|'));
    let by_city = cities()
        .iter()
        .filter(|row| may_be(&city(&row.zone)) || may_be(&row.zone) || may_be(&row.comments))
        .map(|row| row.zone.as_str());
    let mut all: Vec<&str> = Vec::new();
    for zone in by_words.chain(by_city) {
        if !all.contains(&zone) {
            all.push(zone);
        }
    }
    // Where the farm lies somewhere, the nearest come first.
    let far = |zone: &str| here.and_then(|here| distance(zone, here)).unwrap_or(f64::MAX);
    let mut all: Vec<(f64, &str)> = all.into_iter().map(|zone| (far(zone), zone)).collect();
    all.sort_by(|a, b| a.0.total_cmp(&b.0));
    all.into_iter()
        .map(|(_, zone)| Offer::of(Slot::Zone, zone, &t!("plausible-zone-named", typed = typed, zone = zone)))
        .collect()
}

/// Zones of the nearest cities, one for each way in which the clock goes.
fn nearest(here: (f64, f64), day: Date) -> Vec<Offer> {
    let mut by_distance: Vec<(f64, &City)> =
        cities().iter().map(|city| (apart(here, (city.latitude, city.longitude)), city)).collect();
    by_distance.sort_by(|a, b| a.0.total_cmp(&b.0));
    let mut clocks = Vec::new();
    let mut all = Vec::new();
    for (far, row) in by_distance.into_iter().take_while(|(far, _)| *far <= FAR) {
        let Some(clock) = zone(&row.zone).and_then(|zone| offsets(&zone, day)) else { continue };
        if clocks.contains(&clock) || off_noon(here.1, standard(clock)).abs() > OFF {
            continue;
        }
        clocks.push(clock);
        let why =
            t!("plausible-zone-near", city = city(&row.zone), far = format_args!("{:.0}", (far / 10.0).round() * 10.0));
        // By its usual name, where that of the nearest city is a small one with the same clock.
        let is_same = |name: &&str| {
            distance(name, here).is_some_and(|far| far <= FAR)
                && zone(name).and_then(|zone| offsets(&zone, day)) == Some(clock)
        };
        let usual = words().iter().flat_map(|row| row.zones.split('|')).find(is_same);
        all.push(Offer::of(Slot::Zone, usual.unwrap_or(&row.zone), &why));
        if all.len() == MOST {
            break;
        }
    }
    all
}

#[cfg(test)]
mod tests {
    use super::{apart, cities, city, words, zone, zones};
    use crate::farm::Place;
    use jiff::civil::date;

    fn offered(latitude: &str, longitude: &str, typed: &str) -> Vec<String> {
        let place = Place {
            latitude: latitude.to_owned(),
            longitude: longitude.to_owned(),
            zone: typed.to_owned(),
            ..Place::default()
        };
        zones(&place, date(2027, 6, 1)).iter().map(super::super::Offer::text).collect()
    }

    #[test]
    fn each_row_is_a_zone_of_the_program() {
        assert!(cities().len() > 400 && words().len() > 15);
        for row in cities() {
            assert!(zone(&row.zone).is_some() && !row.source.is_empty(), "{}", row.zone);
        }
        for row in words() {
            assert!(!row.source.is_empty());
            for name in row.zones.split('|') {
                assert!(cities().iter().any(|city| city.zone == name), "{name}");
            }
        }
    }

    #[test]
    fn words_and_cities_propose_their_zones() {
        for (typed, first) in [
            ("Central", "America/Chicago"),
            ("eastern", "America/New_York"),
            ("Mountain Time", "America/Denver"),
            ("PACIFIC", "America/Los_Angeles"),
            ("CST", "America/Chicago"),
            ("chicago", "America/Chicago"),
            ("new york", "America/New_York"),
            ("Pacifico", "America/Los_Angeles"),
            ("America/Chic", "America/Chicago"),
            ("sydney", "Australia/Sydney"),
        ] {
            assert_eq!(offered("", "", typed).first().map(String::as_str), Some(first), "{typed}");
        }
        // Where the farm lies puts them in order.
        assert_eq!(offered("49.9", "-97.2", "central").first().map(String::as_str), Some("America/Winnipeg"));
        assert_eq!(offered("33.4", "-112.0", "mountain").first().map(String::as_str), Some("America/Phoenix"));
        for known in ["America/Chicago", "UTC"] {
            assert!(offered("41.2", "-96.4", known).is_empty(), "{known}");
        }
        assert!(offered("", "", "").is_empty() && offered("", "", "nowhere at all").is_empty());
    }

    #[test]
    fn where_the_farm_lies_proposes_the_zones_of_the_nearest_cities() {
        for (latitude, longitude, right) in [
            ("41.2", "-96.4", "America/Chicago"),
            ("40.1", "-88.2", "America/Chicago"),
            ("39.0", "-84.5", "America/New_York"),
            ("46.6", "-120.5", "America/Los_Angeles"),
            ("52.1", "-106.7", "America/Regina"),
        ] {
            let all = offered(latitude, longitude, "");
            let clock = |name: &str| super::offsets(&zone(name).unwrap(), date(2027, 6, 1));
            assert!(all.iter().any(|name| clock(name) == clock(right)), "{latitude} {longitude}: {all:?}");
            assert!(all.len() > 1, "it is a choice: {all:?}");
        }
        // The nearest city need not be in the zone: this one lies in the next.
        assert_eq!(offered("40.1", "-88.2", "")[..2], ["America/New_York", "America/Chicago"]);
        // Nothing is near in the middle of an ocean that has no cities.
        assert!(offered("-50", "-130", "").is_empty());
    }

    // Chicago to New York: 1,145 km along the great circle, as such distances are commonly given; from memory, no source.
    #[test]
    fn distances_are_right() {
        assert!((apart((41.85, -87.65), (40.7142, -74.0064)) - 1145.0).abs() < 10.0);
        assert_eq!(city("America/Argentina/Buenos_Aires"), "Buenos Aires");
    }
}
