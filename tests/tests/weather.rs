//! The hours of a pass: every kind of limit with an hour inside and one outside, what is not known, the days on which the clock
//! changes, gaps, and values that nobody would type in earnest. The limits are typed here as a label would name them; the hours are
//! such that the rule beside each check decides.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use jiff::civil::{Date, DateTime, Time, date};
use proptest::prelude::*;
use tankard_core::day::plan_day;
use tankard_core::farm::{
    Active, Farm, Field, Formulation, Hour, Law, Line, Neighbour, Pass, Place, Product, ProductKind, Reading, Record,
    Rig, Says, Statement, SunTime, When,
};
use tankard_core::finding::{Basis, Finding, Level};
use tankard_core::plan::{Plan, plan};
use tankard_core::quantity::{ActiveBasis, AsTyped, Duration, Pressure, Quantity, Share, Temperature};
use tankard_core::season::Log;
use tankard_core::season::outside;
use tankard_core::season::record::{from_plan, record_line, whole_field};
use tankard_core::weather::psychro::{dew_point, humidity_of_bulbs, wet_bulb};
use tankard_core::weather::{Hours, JudgedHour, Limit, Outlook, Span, Verdict, hours};
use tankard_tests::cases;

fn q<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

const DAY: Date = date(2031, 6, 12);

/// An hour that nothing is wrong with: Delta T is 4.86 °C (PsychroLib 2.5.0), cloud clears it of an inversion.
fn fair(at: DateTime) -> Hour {
    let mut hour = Hour::new(at);
    hour.temperature = Some(q("20 °C"));
    hour.humidity = Some(q("60 %"));
    hour.wind = Some(q("6 mph"));
    hour.gust = Some(q("8 mph"));
    hour.wind_from = Some(q("W"));
    hour.rain = Some(q("0 mm"));
    hour.rain_chance = Some(q("10 %"));
    hour.cloud = Some(q("50 %"));
    hour
}

fn fair_days(first: Date, days: i64) -> Vec<Hour> {
    let start = first.at(0, 0, 0, 0);
    (0..24 * days).map(|n| fair(start.checked_add(jiff::Span::new().hours(n)).unwrap())).collect()
}

/// 80 ac of soybean with "Alpha" in the mix, and two fair days of forecast.
fn farm() -> Farm {
    let mut farm = Farm::new("Weather");
    farm.place = Some(Place {
        latitude: "41.2".to_owned(),
        longitude: "-96.4".to_owned(),
        zone: "America/Chicago".to_owned(),
        ..Place::default()
    });
    let mut field = Field::new("Mill field", q("80 ac"));
    "soybean".clone_into(&mut field.crop);
    "V3".clone_into(&mut field.stage);
    farm.fields.insert("f".to_owned(), field);
    farm.rigs.insert("r".to_owned(), Rig::new("Boom", q("1200 gal")));
    for (id, name) in [("a", "Alpha 480 SL (demo)"), ("b", "Beta 480 SL (demo)")] {
        let mut product = Product::new(name, ProductKind::Herbicide, Formulation::SL);
        product.actives.push(Active {
            name: format!("{id}zine"),
            group: "9".to_owned(),
            basis: ActiveBasis::ActiveIngredient,
            content: q("480 g/L"),
        });
        farm.products.insert(id.to_owned(), product);
    }
    let mut pass = Pass::new("Pass", DAY);
    pass.fields.push("f".to_owned());
    "r".clone_into(&mut pass.rig);
    pass.carrier = Some(q("15 gal/ac"));
    pass.mix.push(Line::new("a", q("32 fl oz/ac")));
    farm.passes.insert("p".to_owned(), pass);
    "typed by hand".clone_into(&mut farm.forecast.source);
    farm.forecast.hours = fair_days(DAY, 2);
    farm
}

fn saying(says: Says) -> Farm {
    let mut farm = farm();
    farm.products["a"].label.push(Statement::new(says, "page 3"));
    farm
}

fn wind(most: &str, least: Option<&str>, gust: Option<&str>) -> Says {
    Says::Wind { most: q(most), least: least.map(q), gust: gust.map(q) }
}

fn planned(farm: &Farm) -> Plan {
    plan(farm, "p").unwrap()
}

fn hours_of(farm: &Farm) -> Hours {
    planned(farm).hours
}

fn at(farm: &Farm, hour: i8) -> JudgedHour {
    hours_of(farm).hours.into_iter().find(|judged| judged.at == DAY.at(hour, 0, 0, 0)).unwrap()
}

/// The judgement of the hour with the reason that stands first.
fn why(farm: &Farm, hour: i8) -> (Verdict, String) {
    let hours = hours_of(farm);
    let judged = hours.hours.iter().find(|judged| judged.at == DAY.at(hour, 0, 0, 0)).unwrap();
    let reasons = hours.reasons(&Outlook::of_days(farm, DAY, DAY), judged, farm.units);
    assert_eq!(reasons.len(), judged.binds.len());
    (judged.verdict, reasons.into_iter().next().unwrap_or_default())
}

fn found(farm: &Farm, words: &str) -> Option<Finding> {
    planned(farm).findings.into_iter().find(|finding| finding.text.contains(words))
}

fn edit(farm: &mut Farm, hour: usize, change: impl Fn(&mut Hour)) {
    change(&mut farm.forecast.hours[hour]);
}

#[allow(clippy::unnecessary_wraps)] // As it is asked for.
fn needs(hours: f64) -> Option<Duration> {
    Some(Duration::from_hours(hours))
}

/// The hours of the pass on its day for a time that it takes.
fn taking(farm: &Farm, time: Option<Duration>) -> Hours {
    let outlook = Outlook::of(farm);
    let all = hours::judge_days(farm, &outlook, &farm.passes["p"], time);
    all.into_iter().find(|(day, _)| *day == DAY).unwrap().1
}

#[test]
fn a_fair_day_is_allowed_from_end_to_end() {
    let farm = farm();
    let hours = hours_of(&farm);
    assert_eq!(hours.hours.len(), 24);
    assert!(hours.hours.iter().all(|hour| hour.verdict == Verdict::Allowed && hour.binds.is_empty()), "{hours:#?}");
    let best = hours.best.unwrap();
    assert_eq!((best.from, best.to), (DAY.at(0, 0, 0, 0), date(2031, 6, 13).at(0, 0, 0, 0)));
    // pvlib 0.16.1: 05:52:19 and 20:58:52.
    let sun = hours.sun.unwrap();
    assert_eq!((sun.from.hour(), sun.to.hour()), (5, 20));
    assert_eq!(found(&farm, "on the day"), None, "the hours take the place of the Note");
    assert_eq!(found(&farm, "No hour"), None);
}

/// A kind of limit: what the label says, an hour inside it, one outside, one of which it is not known.
type Case = (Says, fn(&mut Hour), fn(&mut Hour), fn(&mut Hour), &'static str);

#[test]
fn every_limit_has_two_sides_and_what_is_not_known_is_not_allowed() {
    let cases: [Case; 12] = [
        (
            wind("9 mph", None, None),
            |h| h.wind = Some(q("8 mph")),
            |h| h.wind = Some(q("10 mph")),
            |h| h.wind = None,
            "wind",
        ),
        // 16 km/h are 9.94 mph.
        (
            wind("10 mph", None, None),
            |h| h.wind = Some(q("16 km/h")),
            |h| h.wind = Some(q("17 km/h")),
            |h| h.wind = None,
            "wind",
        ),
        (
            wind("10 mph", Some("4 mph"), None),
            |h| h.wind = Some(q("4 mph")),
            |h| h.wind = Some(q("3.9 mph")),
            |h| h.wind = None,
            "wind",
        ),
        (
            wind("10 mph", None, Some("12 mph")),
            |h| h.gust = Some(q("12 mph")),
            |h| h.gust = Some(q("13 mph")),
            |h| h.gust = None,
            "gust",
        ),
        (
            Says::Temperature { least: Some(q("50 °F")), most: Some(q("80 °F")) },
            |h| h.temperature = Some(q("79 °F")),
            |h| h.temperature = Some(q("81 °F")),
            |h| h.temperature = None,
            "air",
        ),
        (
            Says::Temperature { least: Some(q("10 °C")), most: None },
            |h| h.temperature = Some(q("50 °F")),
            |h| h.temperature = Some(q("49 °F")),
            |h| h.temperature = None,
            "air",
        ),
        (
            Says::Humidity { least: Some(q("40 %")), most: None },
            |h| h.humidity = Some(q("50 %")),
            |h| h.humidity = Some(q("39 %")),
            |h| h.humidity = None,
            "humidity",
        ),
        (
            Says::Humidity { least: None, most: Some(q("75 %")) },
            |h| h.humidity = Some(q("75 %")),
            |h| h.humidity = Some(q("76 %")),
            |h| h.humidity = Some(q("150 %")),
            "humidity",
        ),
        // At 25 °C, 60 % Delta T is 5.529; at 50 % it is 7.111 (PsychroLib 2.5.0).
        (
            Says::DeltaT { least: None, most: Some(q("7 °C")) },
            |h| (h.temperature, h.humidity) = (Some(q("25 °C")), Some(q("60 %"))),
            |h| (h.temperature, h.humidity) = (Some(q("25 °C")), Some(q("50 %"))),
            |h| h.humidity = None,
            "Delta T",
        ),
        (
            Says::DeltaT { least: Some(q("3 °C")), most: None },
            |h| (h.temperature, h.humidity) = (Some(q("25 °C")), Some(q("70 %"))),
            |h| (h.temperature, h.humidity) = (Some(q("25 °C")), Some(q("80 %"))),
            |h| h.temperature = None,
            "Delta T",
        ),
        (
            Says::RainFree { hours: 4 },
            |h| h.rain = Some(q("0 mm")),
            |h| h.rain = Some(q("0.5 mm")),
            |h| (h.rain, h.rain_chance) = (None, None),
            "rain",
        ),
        (
            Says::RainFree { hours: 4 },
            |h| (h.rain, h.rain_chance) = (None, Some(q("20 %"))),
            |h| h.rain = Some(q("0.1 in")),
            |h| h.rain_chance = Some(q("60 %")),
            "rain",
        ),
    ];
    for (says, inside, outside, unknown, word) in cases {
        let mut farm = saying(says.clone());
        for (change, expected) in
            [(inside, Verdict::Allowed), (outside, Verdict::Forbidden), (unknown, Verdict::Doubtful)]
        {
            farm.forecast.hours[12] = fair(DAY.at(12, 0, 0, 0));
            edit(&mut farm, 12, change);
            let (verdict, words) = why(&farm, 12);
            assert_eq!(verdict, expected, "{says:?}");
            assert!(expected == Verdict::Allowed || words.contains(word), "{words}");
        }
        assert_eq!(at(&farm, 6).verdict, Verdict::Allowed, "another hour is another matter");
    }
}

#[test]
fn the_edge_of_a_limit_is_inside_and_units_do_not_move_it() {
    // 86 °F are exactly 30 °C.
    let mut farm = saying(Says::Temperature { least: None, most: Some(q("86 °F")) });
    farm.practice.most_air = Some(q("40 °C"));
    farm.practice.good_delta_t = Some(q("20 °C"));
    edit(&mut farm, 12, |hour| hour.temperature = Some(q("30 °C")));
    assert_eq!(at(&farm, 12).verdict, Verdict::Allowed);
    // 30 °C and 50 %: Delta T is 7.995 by PsychroLib 2.5.0; 15 °C and 80 %: 2.015.
    for (air, humidity, says, expected) in [
        ("30 °C", "50 %", Says::DeltaT { least: None, most: Some(q("8 °C")) }, Verdict::Allowed),
        ("15 °C", "80 %", Says::DeltaT { least: Some(q("2 °C")), most: None }, Verdict::Allowed),
        ("15 °C", "80 %", Says::DeltaT { least: Some(q("2.05 °C")), most: None }, Verdict::Forbidden),
        ("30 °C", "50 %", Says::DeltaT { least: None, most: Some(q("7.9 °C")) }, Verdict::Forbidden),
    ] {
        let mut farm = saying(says);
        edit(&mut farm, 12, |hour| (hour.temperature, hour.humidity) = (Some(q(air)), Some(q(humidity))));
        assert_eq!(at(&farm, 12).verdict, expected, "{air} {humidity}");
    }
}

#[test]
fn rain_counts_from_the_end_of_the_hour() {
    let mut farm = saying(Says::RainFree { hours: 4 });
    edit(&mut farm, 15, |hour| hour.rain = Some(q("2 mm")));
    // Sprayed from 10 to 11, it stays dry until 15: four hours. From 11 to 12 it needs 16.
    for (hour, expected) in
        [(10, Verdict::Allowed), (11, Verdict::Forbidden), (15, Verdict::Forbidden), (16, Verdict::Allowed)]
    {
        assert_eq!(at(&farm, hour).verdict, expected, "{hour}");
    }
    edit(&mut farm, 15, |hour| (hour.rain, hour.rain_chance) = (Some(q("0 mm")), Some(q("50 %"))));
    assert_eq!(why(&farm, 11), (Verdict::Doubtful, "rain is likely; no rain for 4 h after it".to_owned()));
    farm.practice.wet_chance = Some(q("60 %"));
    assert_eq!(at(&farm, 11).verdict, Verdict::Allowed);
    // The forecast ends before the time that must stay dry.
    farm.forecast.hours.truncate(24);
    assert_eq!((at(&farm, 19).verdict, at(&farm, 20).verdict), (Verdict::Allowed, Verdict::Doubtful));
    // Without a label's word, rain in the hour itself is doubtful.
    let mut farm = self::farm();
    edit(&mut farm, 15, |hour| hour.rain = Some(q("2 mm")));
    assert_eq!((at(&farm, 14).verdict, at(&farm, 15).verdict), (Verdict::Allowed, Verdict::Doubtful));
}

#[test]
fn times_by_the_sun_cut_to_the_minute() {
    let after = SunTime { sunset: false, minutes: 60 };
    let before = SunTime { sunset: true, minutes: -120 };
    let mut farm = saying(Says::Daylight { from: after, to: before });
    let hours = hours_of(&farm);
    // pvlib 0.16.1 for 41.2 N, 96.4 W: sunrise 05:52:19, sunset 20:58:52; so 06:52:19 to 18:58:52, in whole minutes inside.
    let best = hours.best.unwrap();
    assert_eq!((best.from, best.to), (DAY.at(6, 53, 0, 0), DAY.at(18, 58, 0, 0)));
    for (hour, verdict, part) in [
        (5, Verdict::Forbidden, false),
        (6, Verdict::Forbidden, true),
        (7, Verdict::Allowed, false),
        (18, Verdict::Forbidden, true),
        (19, Verdict::Forbidden, false),
    ] {
        let judged = &hours.hours[hour];
        assert_eq!((judged.verdict, judged.part.is_some()), (verdict, part), "{hour}");
    }
    assert!(why(&farm, 5).1.contains("the sun rises at 05:52 and sets at 20:58"), "{}", why(&farm, 5).1);
    // Where the farm lies is not typed, or nonsense: nothing is taken for day.
    for (latitude, zone, words) in [
        ("", "America/Chicago", "latitude and longitude"),
        ("95", "America/Chicago", "\"95\""),
        ("41.2", "", "time zone"),
        ("41.2", "Mars/Base", "Mars/Base"),
    ] {
        let place = farm.place.as_mut().unwrap();
        (place.latitude, place.zone) = (latitude.to_owned(), zone.to_owned());
        assert!(hours_of(&farm).hours.iter().all(|hour| hour.verdict == Verdict::Doubtful));
        let told = found(&farm, "Sunrise and sunset cannot be told").unwrap();
        assert!(told.level == Level::Check && told.hint.contains(words), "{told:?}");
    }
}

#[test]
fn a_longitude_that_contradicts_the_zone_makes_no_day() {
    let mut farm = saying(Says::Daylight { from: SunTime::SUNRISE, to: SunTime::SUNSET });
    assert_eq!(found(&farm, "does not fit"), None);
    farm.place.as_mut().unwrap().longitude = "96.4".to_owned();
    let told = found(&farm, "The longitude 96.4 does not fit the time zone America/Chicago").unwrap();
    assert!(told.level == Level::Check && told.hint.contains("\"-96.4\""), "{told:?}");
    let hours = hours_of(&farm);
    assert!(hours.sun.is_none() && hours.hours.iter().all(|hour| hour.verdict == Verdict::Doubtful));
    assert!(why(&farm, 12).1.contains("cannot be told"), "{}", why(&farm, 12).1);
    assert_eq!(found(&farm, "Sunrise and sunset cannot be told"), None, "once is enough");
    // It is told where the forecast does not reach, too.
    farm.forecast.hours.clear();
    assert!(found(&farm, "does not fit").is_some());
    // Latitude and longitude in each other's box, as far as the globe tells.
    let place = farm.place.as_mut().unwrap();
    (place.latitude, place.longitude) = ("-96.4".to_owned(), "41.2".to_owned());
    assert!(place.position().unwrap_err().contains("each other's box"));
    (place.latitude, place.longitude) = ("-96.4".to_owned(), "141.2".to_owned());
    assert!(place.position().unwrap_err().contains("from -90 to 90"));
}

#[test]
fn the_far_north_has_no_sunrise_and_still_an_answer() {
    let mut farm = saying(Says::Daylight { from: SunTime::SUNRISE, to: SunTime::SUNSET });
    let place = farm.place.as_mut().unwrap();
    (place.latitude, place.longitude) = ("78.2".to_owned(), "15.6".to_owned());
    place.zone = "Arctic/Longyearbyen".to_owned();
    // The sun does not set there in June, nor rise in December.
    assert!(hours_of(&farm).hours.iter().all(|hour| hour.verdict == Verdict::Allowed));
    let winter = date(2031, 12, 12);
    farm.forecast.hours = fair_days(winter, 1);
    farm.passes["p"].date = winter;
    assert!(hours_of(&farm).hours.iter().all(|hour| hour.verdict == Verdict::Forbidden));
}

#[test]
fn inversions_are_assumed_by_the_published_rules() {
    let mut farm = saying(Says::NoInversion);
    for hour in &mut farm.forecast.hours {
        (hour.cloud, hour.wind) = (Some(q("10 %")), Some(q("4 mph")));
    }
    // From 1 h before sunset to 1 h after sunrise (T. Wolf, 2018): 19:58 to 06:52.
    for (hour, expected) in [
        (6, Verdict::Forbidden),
        (7, Verdict::Allowed),
        (18, Verdict::Allowed),
        (19, Verdict::Forbidden),
        (0, Verdict::Forbidden),
    ] {
        assert_eq!(at(&farm, hour).verdict, expected, "{hour}");
    }
    assert!(why(&farm, 0).1.contains("T. Wolf, Top Crop Manager"), "{:?}", why(&farm, 0));
    // Cloud or wind clears; what is not known does not.
    for (cloud, wind, expected) in [
        (Some("30 %"), Some("4 mph"), Verdict::Forbidden),
        (Some("75 %"), Some("4 mph"), Verdict::Allowed),
        (Some("10 %"), Some("8 mph"), Verdict::Allowed),
        (None, Some("4 mph"), Verdict::Forbidden),
        (None, None, Verdict::Forbidden),
        (Some("25 %"), Some("4 mph"), Verdict::Forbidden),
    ] {
        edit(&mut farm, 0, |hour| (hour.cloud, hour.wind) = (cloud.map(q), wind.map(q)));
        assert_eq!(at(&farm, 0).verdict, expected, "{cloud:?} {wind:?}");
    }
    // What is measured at two heights decides.
    edit(&mut farm, 0, |hour| (hour.cloud, hour.wind, hour.higher) = (None, Some(q("4 mph")), Some(q("19 °C"))));
    assert_eq!(at(&farm, 0).verdict, Verdict::Allowed);
    // Calm under a clear sky is a sign of its own (Canola Council of Canada: below 3 km/h, cloud of 25 % or less).
    edit(&mut farm, 0, |hour| (hour.cloud, hour.wind, hour.higher) = (Some(q("25 %")), Some(q("2 km/h")), None));
    let outlook = Outlook::of(&farm);
    let signs = &outlook.skies().next().unwrap().inversion;
    assert_eq!(signs.len(), 2, "{signs:?}");
    assert!(signs.iter().all(|(_, basis)| matches!(basis, Basis::Published(_))));
    // An inversion by day is measured as air that is warmer higher up (Oklahoma Mesonet).
    for (higher, expected) in
        [("19 °C", Verdict::Allowed), ("20 °C", Verdict::Allowed), ("20.5 °C", Verdict::Forbidden)]
    {
        edit(&mut farm, 12, |hour| hour.higher = Some(q(higher)));
        assert_eq!(at(&farm, 12).verdict, expected, "{higher}");
    }
    // Without a label's word it is doubtful.
    farm.products["a"].label.clear();
    assert_eq!(at(&farm, 1).verdict, Verdict::Doubtful);
}

#[test]
fn wind_toward_a_neighbour() {
    let mut farm = saying(Says::NotToward { what: "vineyards, beehives".to_owned() });
    let neighbour = |what: &str, side: &str| Neighbour { what: what.to_owned(), side: side.to_owned(), distance: None };
    farm.fields["f"].neighbours = vec![neighbour("vineyard", "east")];
    // From the west it blows to the east.
    for (from, expected) in [
        (Some("W"), Verdict::Forbidden),
        (Some("SW"), Verdict::Forbidden),
        (Some("SSW"), Verdict::Allowed),
        (Some("E"), Verdict::Allowed),
        (None, Verdict::Doubtful),
    ] {
        edit(&mut farm, 12, |hour| hour.wind_from = from.map(q));
        assert_eq!(at(&farm, 12).verdict, expected, "{from:?}");
    }
    assert_eq!(
        why(&farm, 11),
        (Verdict::Forbidden, "wind from W; no wind toward vineyard on the east of Mill field".to_owned())
    );
    // A side that is not typed hides it from the wind; the label names it all the same.
    farm.fields["f"].neighbours = vec![neighbour("vineyard", "")];
    assert_eq!(at(&farm, 12).verdict, Verdict::Doubtful);
    // Another neighbour is what the farm looks after.
    farm.fields["f"].neighbours = vec![neighbour("creek", "east"), neighbour("garden", "behind the barn")];
    assert_eq!((at(&farm, 11).verdict, at(&farm, 12).verdict), (Verdict::Doubtful, Verdict::Allowed));
    farm.products["a"].label[0].says =
        Says::Buffer { to: "creeks".to_owned(), width: q("66 ft"), downwind_only: false };
    let hours = hours_of(&farm);
    let (bind, verdict) = hours.hours[11].binds[0];
    assert_eq!(
        (verdict, &hours.limits[bind].basis),
        (Verdict::Doubtful, &Basis::Label("Alpha 480 SL (demo), page 3".to_owned()))
    );
    // What lies beyond the strip of a label, and beyond what the farm looks after, is left to its distance.
    for (distance, expected) in
        [("60 ft", Verdict::Doubtful), ("140 ft", Verdict::Doubtful), ("160 ft", Verdict::Allowed)]
    {
        farm.fields["f"].neighbours[0].distance = Some(q(distance));
        assert_eq!(at(&farm, 11).verdict, expected, "{distance}");
    }
    farm.practice.near = Some(q("100 ft"));
    farm.fields["f"].neighbours[0].distance = Some(q("140 ft"));
    assert_eq!(at(&farm, 11).verdict, Verdict::Allowed);
    // A label that names it holds at any distance.
    farm.products["a"].label[0].says = Says::NotToward { what: "creeks".to_owned() };
    farm.fields["f"].neighbours[0].distance = Some(q("1 mi"));
    assert_eq!(at(&farm, 11).verdict, Verdict::Forbidden);
}

#[test]
fn words_on_the_wind_that_match_no_neighbour_are_told() {
    let mut farm = saying(Says::NotToward { what: "sensitive crops".to_owned() });
    let neighbour = |what: &str| Neighbour { what: what.to_owned(), side: "east".to_owned(), distance: None };
    let told = found(&farm, "speaks of wind toward sensitive crops; what lies beside Mill field is not typed").unwrap();
    assert_eq!((told.level, told.basis), (Level::Check, Basis::Label("Alpha 480 SL (demo), page 3".to_owned())));
    farm.fields["f"].neighbours = vec![neighbour("tomatoes"), neighbour("vineyard")];
    let told = found(&farm, "speaks of wind toward sensitive crops").unwrap();
    assert_eq!(told.level, Level::Check);
    assert!(
        told.text.ends_with(
            "which of the neighbours of Mill field that means cannot be told by its words: tomatoes and vineyard"
        ),
        "{}",
        told.text
    );
    let count = |farm: &Farm| {
        planned(farm).findings.iter().filter(|finding| finding.text.contains("speaks of wind toward")).count()
    };
    assert_eq!(count(&farm), 1, "once for all neighbours");
    // One that its words mean is held against the hours.
    farm.fields["f"].neighbours[1] = neighbour("sensitive crop");
    assert_eq!(count(&farm), 0);
    farm.products["a"].label.clear();
    farm.fields["f"].neighbours.clear();
    assert_eq!(count(&farm), 0);
}

#[test]
fn a_gust_above_the_labels_wind_is_doubtful() {
    let mut farm = saying(wind("10 mph", None, None));
    edit(&mut farm, 12, |hour| hour.gust = Some(q("11 mph")));
    let hours = hours_of(&farm);
    let (bind, verdict) = hours.hours[12].binds[0];
    assert_eq!(verdict, Verdict::Doubtful);
    let source = hours.limits[bind].basis.source();
    assert!(source.starts_with("Alpha 480 SL (demo), page 3, which names no gust"), "{source}");
    // What is published is said of the one product that it is published of.
    assert!(source.contains("For over-the-top dicamba") && source.contains("Purdue"), "{source}");
    edit(&mut farm, 12, |hour| hour.gust = Some(q("10 mph")));
    assert_eq!(at(&farm, 12).verdict, Verdict::Allowed);
    // Mean wind above a gust's limit is above it, whatever the gust, and it is told as wind.
    let mut farm = saying(wind("20 mph", None, Some("9 mph")));
    edit(&mut farm, 12, |hour| (hour.wind, hour.gust) = (Some(q("9.5 mph")), None));
    assert_eq!(why(&farm, 12), (Verdict::Forbidden, "wind 9.5 mph; gusts at most 9 mph".to_owned()));
    edit(&mut farm, 12, |hour| hour.wind = Some(q("6 mph")));
    assert_eq!(
        why(&farm, 12),
        (Verdict::Doubtful, "the forecast has no gust; gusts at most 9 mph".to_owned()),
        "wind is no gust"
    );
}

#[test]
fn the_tightest_of_all_labels_binds_and_doubt_stays_doubt() {
    let mut farm = saying(wind("8 mph", None, None));
    farm.passes["p"].mix.push(Line::new("b", q("1 pt/ac")));
    farm.products["b"].label.push(Statement::new(wind("5 mph", None, None), "page 2"));
    let hours = hours_of(&farm);
    let limit = &hours.limits[hours.hours[12].binds[0].0];
    assert_eq!((limit.text().as_str(), limit.outside), ("wind at most 5 mph", Verdict::Forbidden));
    assert_eq!(limit.basis, Basis::Label("Beta 480 SL (demo), page 2".to_owned()));
    assert_eq!(hours.limits.iter().filter(|limit| limit.text().starts_with("wind at most")).count(), 1);
    // The tighter one speaks under a condition of which nothing is typed.
    farm.products["b"].label[0].when.push(When::Weed("kochia".to_owned()));
    assert_eq!(why(&farm, 12), (Verdict::Doubtful, "wind 6 mph; wind at most 5 mph against kochia".to_owned()));
    edit(&mut farm, 12, |hour| hour.wind = Some(q("8.5 mph")));
    assert_eq!(at(&farm, 12).verdict, Verdict::Forbidden);
    // A statement for another crop does not speak.
    farm.products["b"].label[0].crop = "corn".to_owned();
    edit(&mut farm, 12, |hour| hour.wind = Some(q("6 mph")));
    assert_eq!(at(&farm, 12).verdict, Verdict::Allowed);
}

/// Of two limits of one kind the tighter binds alone, whichever product names it.
#[test]
fn the_tighter_of_each_kind_binds() {
    let air = |least: Option<&str>, most: Option<&str>| Says::Temperature { least: least.map(q), most: most.map(q) };
    let humidity = |least: Option<&str>, most: Option<&str>| Says::Humidity { least: least.map(q), most: most.map(q) };
    let delta_t = |least: Option<&str>, most: Option<&str>| Says::DeltaT { least: least.map(q), most: most.map(q) };
    for (loose, tight) in [
        (air(None, Some("85 °F")), air(None, Some("80 °F"))),
        (air(Some("40 °F"), None), air(Some("45 °F"), None)),
        (humidity(None, Some("90 %")), humidity(None, Some("80 %"))),
        (humidity(Some("30 %"), None), humidity(Some("40 %"), None)),
        (delta_t(None, Some("10 °C")), delta_t(None, Some("8 °C"))),
        (delta_t(Some("2 °C"), None), delta_t(Some("3 °C"), None)),
        (wind("10 mph", Some("2 mph"), Some("15 mph")), wind("9 mph", Some("4 mph"), Some("12 mph"))),
        (Says::RainFree { hours: 1 }, Says::RainFree { hours: 4 }),
    ] {
        for (first, second, holds) in [(&loose, &tight, "Beta"), (&tight, &loose, "Alpha")] {
            let mut farm = saying(first.clone());
            farm.passes["p"].mix.push(Line::new("b", q("1 pt/ac")));
            farm.products["b"].label.push(Statement::new(second.clone(), "page 3"));
            let hours = hours_of(&farm);
            let whose = hours.limits.iter().filter_map(|limit| match &limit.basis {
                Basis::Label(at) => Some(at.split_whitespace().next().unwrap()),
                _ => None,
            });
            let whose: Vec<&str> = whose.collect();
            assert!(!whose.is_empty() && whose.iter().all(|name| *name == holds), "{first:?} {second:?}: {whose:?}");
        }
    }
}

/// Labels that use other words mean other neighbours.
#[test]
fn each_label_means_the_neighbours_of_its_own_words() {
    let mut farm = saying(Says::NotToward { what: "vineyards".to_owned() });
    farm.passes["p"].mix.push(Line::new("b", q("1 pt/ac")));
    farm.products["b"].label.push(Statement::new(Says::NotToward { what: "beehives".to_owned() }, "page 2"));
    let neighbour = |what: &str, side: &str| Neighbour { what: what.to_owned(), side: side.to_owned(), distance: None };
    farm.fields["f"].neighbours = vec![neighbour("vineyard", "east"), neighbour("beehives", "south")];
    // From the west it blows to the east, from the north to the south.
    for (from, expected) in
        [("W", Verdict::Forbidden), ("N", Verdict::Forbidden), ("E", Verdict::Allowed), ("S", Verdict::Allowed)]
    {
        edit(&mut farm, 12, |hour| hour.wind_from = Some(q(from)));
        assert_eq!(at(&farm, 12).verdict, expected, "{from}");
    }
}

/// Wind in the tenth and the fifteenth hour leaves spans of 9, 4 and 9 hours: of a pass of 12 h three quarters fit into the first.
#[test]
fn the_longest_span_is_told_where_none_is_long_enough() {
    let mut farm = saying(wind("10 mph", None, None));
    for hour in [9, 14] {
        edit(&mut farm, hour, |hour| hour.wind = Some(q("12 mph")));
    }
    let hours = taking(&farm, needs(12.0));
    assert_eq!(hours.best, None);
    let (span, fits) = hours.longest.unwrap();
    assert_eq!((span.from, span.to), (DAY.at(0, 0, 0, 0), DAY.at(9, 0, 0, 0)));
    assert!((fits.to_fraction() - 0.75).abs() < 1e-9);
}

#[test]
fn a_limit_in_warm_air_goes_by_the_air_of_each_hour() {
    let mut farm = saying(wind("8 mph", None, None));
    let mut warm = Statement::new(wind("5 mph", None, None), "page 4");
    warm.when.push(When::WarmerThan(q("77 °F")));
    farm.products["a"].label.push(warm);
    edit(&mut farm, 12, |hour| hour.temperature = Some(q("28 °C")));
    // 77 °F is 25 °C, and an hour of just that is not warmer.
    edit(&mut farm, 13, |hour| hour.temperature = Some(q("25 °C")));
    edit(&mut farm, 14, |hour| hour.temperature = None);
    // Whatever is typed for the day, the hour has its own air.
    for typed in [None, Some(q("60 °F")), Some(q("95 °F"))] {
        farm.passes["p"].growing.air = typed;
        assert_eq!(at(&farm, 11).verdict, Verdict::Allowed, "20 °C");
        assert_eq!(why(&farm, 12), (Verdict::Forbidden, "wind 6 mph; wind at most 5 mph warmer than 77 °F".to_owned()));
        assert_eq!(at(&farm, 13).verdict, Verdict::Allowed);
        let (verdict, reason) = why(&farm, 14);
        assert_eq!(verdict, Verdict::Doubtful);
        assert!(reason.ends_with("and the forecast has no air to tell whether that holds"), "{reason}");
    }
    // It neither hides the limit for any air nor what holds in cold air.
    edit(&mut farm, 11, |hour| hour.wind = Some(q("8.5 mph")));
    assert_eq!(why(&farm, 11), (Verdict::Forbidden, "wind 8.5 mph; wind at most 8 mph".to_owned()));
    let mut cold = Statement::new(wind("4 mph", None, None), "page 5");
    cold.when.push(When::ColderThan(q("70 °F")));
    farm.products["a"].label.push(cold);
    assert_eq!(at(&farm, 10).verdict, Verdict::Forbidden);
    assert_eq!(at(&farm, 13).verdict, Verdict::Allowed);
    // Rain-free hours and times by the sun hang on it too.
    for (says, hour) in [
        (Says::RainFree { hours: 2 }, 12),
        (Says::Daylight { from: SunTime { sunset: true, minutes: 0 }, to: SunTime::SUNSET }, 12),
    ] {
        let mut farm = saying(says);
        edit(&mut farm, 13, |hour| hour.rain = Some(q("2 mm")));
        farm.products["a"].label[0].when.push(When::WarmerThan(q("77 °F")));
        assert_eq!(at(&farm, hour).verdict, Verdict::Allowed);
        edit(&mut farm, 12, |hour| hour.temperature = Some(q("28 °C")));
        assert_eq!(at(&farm, hour).verdict, Verdict::Forbidden);
    }
}

#[test]
fn winds_that_never_meet_meet_in_doubt_where_one_goes_by_the_air() {
    let mut farm = saying(wind("15 mph", Some("8 mph"), None));
    farm.products["a"].label.push(Statement::new(wind("5 mph", None, None), "page 4"));
    assert_eq!(found(&farm, "No wind suits this mix: one label asks for at least 8 mph").unwrap().level, Level::Stop);
    farm.products["a"].label[1].when.push(When::WarmerThan(q("77 °F")));
    let told = found(&farm, "No wind suits this mix").unwrap();
    assert!(told.level == Level::Check && told.text.contains("warmer than 77 °F"), "{told:?}");
    farm.products["a"].label.pop();
    let says = Statement::new(wind("5 mph", None, None), "");
    farm.laws.insert(
        "law".to_owned(),
        Law { name: "Spray rule 12".to_owned(), since: None, until: None, about: String::new(), says },
    );
    let told =
        found(&farm, "No wind suits this mix: a label asks for at least 8 mph, a law for at most 5 mph").unwrap();
    assert_eq!(told.basis.to_string(), "label of Alpha 480 SL (demo), page 3; Spray rule 12, as typed");
}

#[test]
fn a_limit_for_one_crop_is_in_doubt_where_the_crop_is_not_typed() {
    let mut farm = saying(wind("5 mph", None, None));
    farm.products["a"].label[0].crop = "soybean".to_owned();
    assert_eq!(at(&farm, 12).verdict, Verdict::Forbidden);
    farm.fields["f"].crop = "corn".to_owned();
    assert_eq!(at(&farm, 12).verdict, Verdict::Allowed);
    farm.fields["f"].crop = String::new();
    assert_eq!(
        why(&farm, 12),
        (
            Verdict::Doubtful,
            "wind 6 mph; wind at most 5 mph for soybean (the crop of Mill field is not typed)".to_owned()
        )
    );
    // A stage that lies outside is outside for any crop.
    farm.products["a"].label[0].from_stage = "R1".to_owned();
    assert_eq!(at(&farm, 12).verdict, Verdict::Allowed);
}

#[test]
fn laws_bind_in_their_time_and_for_their_products() {
    let mut farm = farm();
    let law = Law {
        name: "Spray rule 12".to_owned(),
        since: Some(date(2031, 6, 1)),
        until: Some(DAY),
        about: "azine".to_owned(),
        says: Statement::new(wind("5 mph", None, None), ""),
    };
    farm.laws.insert("law".to_owned(), law);
    let hours = hours_of(&farm);
    let (bind, verdict) = hours.hours[12].binds[0];
    assert_eq!(verdict, Verdict::Forbidden);
    assert!(hours.limits[bind].basis.source().contains("Spray rule 12"));
    for change in [
        (|law| law.since = Some(date(2031, 6, 13))) as fn(&mut Law),
        |law| (law.since, law.until) = (None, Some(date(2031, 6, 11))),
        |law| (law.until, law.about) = (None, "bzine".to_owned()),
    ] {
        let mut farm = farm.clone();
        change(&mut farm.laws["law"]);
        assert_eq!(at(&farm, 12).verdict, Verdict::Allowed);
    }
    farm.laws["law"].about = String::new();
    assert_eq!(at(&farm, 12).verdict, Verdict::Forbidden, "for every pesticide");
}

#[test]
fn the_farms_own_limits_are_doubtful_and_say_on_what_they_rest() {
    let mut farm = farm();
    for (change, word) in [
        ((|hour| hour.wind = Some(q("11 mph"))) as fn(&mut Hour), "wind at most 10 mph"),
        (|hour| hour.wind = Some(q("2 mph")), "wind at least 3 mph"),
        (|hour| hour.gust = Some(q("16 mph")), "gusts at most 15 mph"),
        (|hour| hour.humidity = Some(q("30 %")), "Delta T good up to 14.4 °F"),
        (|hour| hour.humidity = Some(q("90 %")), "Delta T at least 3.6 °F"),
        (|hour| hour.temperature = Some(q("31 °C")), "air at most 86 °F"),
        (|hour| hour.temperature = Some(q("4 °C")), "air at least 41 °F"),
        (|hour| hour.wind = None, "wind at most 10 mph"),
    ] {
        farm.forecast.hours[12] = fair(DAY.at(12, 0, 0, 0));
        edit(&mut farm, 12, change);
        let hours = hours_of(&farm);
        assert_eq!(hours.hours[12].verdict, Verdict::Doubtful, "{word}");
        let bound = hours.hours[12].binds.iter().map(|(bind, _)| &hours.limits[*bind]);
        let limit = bound.into_iter().find(|limit| limit.text() == word).unwrap_or_else(|| panic!("{word}"));
        assert!(matches!(limit.basis, Basis::Published(_) | Basis::Practice), "{limit:?}");
    }
    farm.forecast.hours[12] = fair(DAY.at(12, 0, 0, 0));
    farm.practice.most_wind = Some(q("5 mph"));
    assert_eq!(at(&farm, 12).verdict, Verdict::Doubtful, "as typed");
    // A label that is stricter silences it; one that is not leaves it.
    farm.products["a"].label.push(Statement::new(wind("4 mph", None, None), "page 3"));
    let texts = |farm: &Farm| -> Vec<String> {
        let is = |text: &String| text.starts_with("wind at most");
        hours_of(farm).limits.iter().map(Limit::text).filter(is).collect()
    };
    assert_eq!(texts(&farm), ["wind at most 4 mph"]);
    farm.products["a"].label[0].says = wind("15 mph", None, None);
    assert_eq!(texts(&farm), ["wind at most 15 mph", "wind at most 5 mph"]);
    assert_eq!(at(&farm, 12).verdict, Verdict::Doubtful);
}

/// Clocks go on on the second Sunday in March and back on the first in November, by the law of the United States.
#[test]
fn days_on_which_the_clock_changes() {
    let mut farm = farm();
    let (spring, autumn) = (date(2031, 3, 9), date(2031, 11, 2));
    farm.passes["p"].date = spring;
    // The file has an hour that the clock skips.
    farm.forecast.hours = fair_days(spring, 2);
    let hours = hours_of(&farm);
    assert_eq!(hours.hours.len(), 23);
    assert!(hours.hours.iter().all(|hour| hour.at.hour() != 2));
    assert!(hours.best.is_some(), "no gap where the clock skips");
    let all = |farm: &Farm, day, time| {
        let outlook = Outlook::of(farm);
        let days = hours::judge_days(farm, &outlook, &farm.passes["p"], needs(time));
        days.into_iter().find(|(of, _)| *of == day).unwrap().1
    };
    assert!(all(&farm, spring, 23.0).best.is_some() && all(&farm, spring, 23.1).best.is_none());

    farm.passes["p"].date = autumn;
    farm.forecast.hours = fair_days(autumn, 2);
    // Without the second 1 o'clock the forecast has a gap there.
    assert_eq!(hours_of(&farm).hours.len(), 24);
    assert_eq!(all(&farm, autumn, 24.0).best, None);
    let mut again = fair(autumn.at(1, 0, 0, 0));
    again.again = true;
    farm.forecast.hours.insert(2, again);
    let hours = hours_of(&farm);
    assert_eq!(hours.hours.len(), 25);
    let ones: Vec<bool> = hours.hours.iter().filter(|hour| hour.at.hour() == 1).map(|hour| hour.again).collect();
    assert_eq!(ones, [false, true]);
    assert!(all(&farm, autumn, 25.0).best.is_some() && all(&farm, autumn, 25.1).best.is_none());
    // The second of the two is judged by itself.
    farm.forecast.hours[2].wind = Some(q("20 mph"));
    let verdicts: Vec<Verdict> = hours_of(&farm).hours[1..3].iter().map(|hour| hour.verdict).collect();
    assert_eq!(verdicts, [Verdict::Allowed, Verdict::Doubtful]);
}

#[test]
fn a_gap_in_the_forecast_breaks_a_span() {
    let mut farm = farm();
    farm.forecast.hours.remove(10);
    let hours = taking(&farm, needs(11.0));
    assert_eq!(hours.hours.len(), 23);
    assert_eq!(hours.best.unwrap().from, DAY.at(11, 0, 0, 0));
    let hours = taking(&farm, needs(20.0));
    let (span, share) = hours.longest.unwrap();
    assert_eq!((hours.best, span.from), (None, DAY.at(11, 0, 0, 0)));
    assert!((share.to_percent() - 65.0).abs() < 1e-9, "13 of 20 hours");
    assert_eq!(taking(&farm, needs(5.0)).best.unwrap().from, DAY.at(0, 0, 0, 0), "the earliest that fits");
    // What must stay dry beyond a gap is not known to.
    farm.products["a"].label.push(Statement::new(Says::RainFree { hours: 2 }, "page 3"));
    assert_eq!(at(&farm, 7).verdict, Verdict::Allowed);
    assert_eq!(at(&farm, 8).verdict, Verdict::Doubtful);
}

/// The wind of each half hour is its own: neither hides behind the other.
#[test]
fn a_half_hour_lasts_until_the_next_begins() {
    let mut farm = saying(wind("10 mph", None, None));
    farm.forecast.hours = (0..48)
        .map(|half| fair(DAY.at(0, 0, 0, 0).checked_add(jiff::Span::new().minutes(30 * half)).unwrap()))
        .collect();
    let hours = taking(&farm, needs(24.0));
    let last = hours.hours.last().unwrap();
    assert_eq!((hours.hours.len(), last.lasts), (48, Duration::from_hours(1.0)), "nothing follows the last");
    assert_eq!(hours.hours[0].lasts, Duration::from_hours(0.5));
    assert_eq!(hours.best.map(Span::words).as_deref(), Some("00:00 to 24:00"));
    // 10:30 to 11:00 is windy.
    edit(&mut farm, 21, |hour| hour.wind = Some(q("14 mph")));
    let hours = taking(&farm, needs(10.5));
    assert_eq!(hours.hours[20].verdict, Verdict::Allowed);
    assert_eq!(hours.hours[21].verdict, Verdict::Forbidden);
    assert_eq!(hours.best.map(Span::words).as_deref(), Some("00:00 to 10:30"));
    assert_eq!(taking(&farm, needs(12.5)).best.map(Span::words).as_deref(), Some("11:00 to 24:00"));
    assert_eq!(taking(&farm, needs(13.5)).best, None);
    farm.passes["p"].start = Some(Time::constant(10, 45, 0, 0));
    assert!(found(&farm, "to begin at 10:45; that hour is forbidden").is_some());
    // An hour of which half is missing is no gap for one that lasts to its end, and is one where nothing stands.
    farm.passes["p"].start = None;
    farm.forecast.hours.remove(21);
    assert_eq!(taking(&farm, needs(24.0)).best.map(Span::words).as_deref(), Some("00:00 to 24:00"));
    farm.forecast.hours.remove(20);
    assert_eq!(taking(&farm, needs(12.0)).best.map(Span::words).as_deref(), Some("11:00 to 24:00"));
    // Rain of the second half alone wets what is sprayed before it.
    farm.products["a"].label.push(Statement::new(Says::RainFree { hours: 1 }, "page 3"));
    farm.forecast.hours[11].rain = Some(q("1 mm"));
    let verdicts: Vec<Verdict> = hours_of(&farm).hours[7..13].iter().map(|hour| hour.verdict).collect();
    let (free, wet) = (Verdict::Allowed, Verdict::Forbidden);
    assert_eq!(verdicts, [free, free, wet, wet, wet, free], "05:30 to 06:00 is wet; 04:00 to 04:30 has its hour");
}

/// Where the zone is half an hour off, the hours of the world's time begin at half past.
#[test]
fn hours_at_half_past_end_with_the_day() {
    let mut farm = farm();
    farm.place = Some(Place {
        latitude: "-34.9".to_owned(),
        longitude: "138.6".to_owned(),
        zone: "Australia/Adelaide".to_owned(),
        ..Place::default()
    });
    for hour in &mut farm.forecast.hours {
        hour.at = hour.at.checked_add(jiff::Span::new().minutes(30)).unwrap();
    }
    let hours = taking(&farm, needs(23.5));
    assert_eq!((hours.hours.len(), hours.best.unwrap().words().as_str()), (24, "00:30 to 24:00"));
    assert_eq!(taking(&farm, needs(23.6)).best, None, "the first half hour of the next day is not of this day");
}

#[test]
fn a_pass_over_midnight_is_not_looked_at_as_a_whole_and_that_is_said() {
    let mut farm = farm();
    let rig = &mut farm.rigs["r"];
    // 80 ac at 2 mph over 100 ft and 66 %: 80 ÷ (2 × 100 ÷ 8.25 × 0.66) = 5 h.
    (rig.speed, rig.boom, rig.efficiency) = (Some(q("2 mph")), Some(q("100 ft")), Some(q("66 %")));
    farm.passes["p"].start = Some(Time::constant(22, 0, 0, 0));
    let told = found(&farm, "the longest span of allowed hours").unwrap();
    assert!(told.text.contains("22:00 to 24:00, enough for 40 %"), "{}", told.text);
    assert!(told.text.contains("the hours of the next day are not looked at"), "{}", told.text);
    let planned = planned(&farm);
    let slot = plan_day(&farm, DAY, &[&planned]).slots().next().cloned().unwrap();
    // The day as a whole looks at the hours of the next where the forecast has them.
    assert_eq!(slot.span.map(Span::words).as_deref(), Some("22:00 to 03:00"));
    let next = DAY.tomorrow().unwrap();
    farm.forecast.hours.retain(|hour| hour.at.date() < next);
    let slot = plan_day(&farm, DAY, &[&planned]).slots().next().cloned().unwrap();
    assert_eq!((slot.span, slot.verdict), (None, Some(Verdict::Forbidden)), "{}", slot.why);
    // Where the evening is windy nothing goes on.
    farm.passes["p"].start = Some(Time::constant(19, 0, 0, 0));
    edit(&mut farm, 23, |hour| hour.wind = Some(q("14 mph")));
    farm.products["a"].label.push(Statement::new(wind("10 mph", None, None), "page 3"));
    let told = found(&farm, "the longest span of allowed hours").unwrap();
    assert!(!told.text.contains("next day"), "{}", told.text);
    let slot = plan_day(&farm, DAY, &[&self::planned(&farm)]).slots().next().cloned().unwrap();
    assert_eq!(slot.verdict, Some(Verdict::Forbidden));
    assert!(!slot.why.contains("next day"), "{}", slot.why);
}

#[test]
fn what_a_pass_counts_beside_spraying_is_said() {
    let mut farm = farm();
    let rig = &mut farm.rigs["r"];
    (rig.speed, rig.boom, rig.efficiency) = (Some(q("10 mph")), Some(q("100 ft")), Some(q("66 %")));
    assert_eq!(hours_of(&farm).takes(farm.units).as_deref(), Some("1 h"));
    farm.rigs["r"].road_speed = Some(q("20 mph"));
    farm.fields["f"].road = Some(q("2 mi"));
    // 2 × 2 mi of road for the load of 1200 gal on 80 ac, at 20 mph: 12 min.
    assert_eq!(hours_of(&farm).takes(farm.units).as_deref(), Some("1 h 12 min, road counted"));
}

#[test]
fn a_humidity_above_all_is_told() {
    let mut farm = farm();
    assert_eq!(found(&farm, "a humidity of"), None);
    edit(&mut farm, 12, |hour| hour.humidity = Some(q("100 %")));
    assert_eq!(found(&farm, "a humidity of"), None);
    edit(&mut farm, 12, |hour| hour.humidity = Some(q("106 %")));
    let told = found(&farm, "The forecast has a humidity of 106 % at 12:00 on 12 June 2031; air").unwrap();
    assert_eq!((told.level, told.about), (Level::Check, tankard_core::finding::Subject::Farm));
    edit(&mut farm, 15, |hour| hour.humidity = Some(q("150 %")));
    assert!(found(&farm, "at 12:00 on 12 June 2031, and 1 more above 100 %").is_some());
    // A record keeps it, says so, and holds it against nothing.
    farm.products["a"].label.push(Statement::new(Says::Humidity { least: None, most: Some(q("75 %")) }, "page 3"));
    let told = recorded(&mut farm, |record| {
        (record.temperature, record.humidity) = (Some(q("20 °C")), Some(q("600 %")));
    });
    assert_eq!(told.len(), 1, "{told:?}");
    assert!(told[0].level == Level::Check && told[0].text.contains("a humidity of 600 % is written down"), "{told:?}");
}

#[test]
fn what_is_said_is_little_and_says_what_to_do() {
    // No hour is allowed; the next day is.
    let mut farm = saying(wind("10 mph", None, None));
    for hour in &mut farm.forecast.hours[..24] {
        hour.wind = Some(q("14 mph"));
    }
    let told = found(&farm, "No hour of 12 June 2031 is allowed").unwrap();
    assert_eq!(
        (told.level, told.hint.as_str()),
        (Level::Check, "The forecast allows it on 13 June 2031, 00:00 to 24:00.")
    );
    assert!(told.text.ends_with("most hours fail at: wind at most 10 mph (24 of 24)"), "{}", told.text);
    assert_eq!(told.basis, Basis::Label("Alpha 480 SL (demo), page 3".to_owned()));
    // Of two limits the one that more hours fail at is named.
    let mut two = farm.clone();
    two.products["a"].label.push(Statement::new(Says::Humidity { least: None, most: Some(q("75 %")) }, "page 3"));
    for (at, hour) in two.forecast.hours[..24].iter_mut().enumerate() {
        hour.wind = Some(q(if at < 7 { "14 mph" } else { "6 mph" }));
        hour.humidity = Some(q(if at < 7 { "60 %" } else { "80 %" }));
    }
    let told = found(&two, "No hour of 2031-06-12 is allowed").unwrap();
    assert!(told.text.ends_with("most hours fail at: humidity at most 75 % (17 of 24)"), "{}", told.text);
    farm.forecast.hours.truncate(24);
    assert_eq!(found(&farm, "No hour of").unwrap().hint, "The forecast ends with this day.");
    // The pass takes longer than the day leaves.
    let mut farm = self::farm();
    let rig = &mut farm.rigs["r"];
    (rig.speed, rig.boom, rig.efficiency) = (Some(q("1 mph")), Some(q("10 ft")), Some(q("50 %")));
    let told = found(&farm, "the longest span of allowed hours").unwrap();
    assert_eq!(told.level, Level::Check);
    assert!(told.text.contains("00:00 to 24:00, enough for"), "{}", told.text);
    // A start that is typed.
    let mut farm = saying(Says::Daylight { from: SunTime::SUNRISE, to: SunTime::SUNSET });
    farm.passes["p"].start = Some(Time::constant(5, 0, 0, 0));
    let told = found(&farm, "is to begin at 05:00; that hour is forbidden").unwrap();
    assert!(told.level == Level::Check && told.hint.contains("Allowed from 05:5"), "{told:?}");
    farm.passes["p"].start = Some(Time::constant(5, 55, 0, 0));
    assert_eq!(found(&farm, "is to begin"), None, "the sun is up by then");
    farm.passes["p"].start = Some(Time::constant(9, 30, 0, 0));
    assert_eq!(found(&farm, "is to begin"), None);
    assert_eq!(hours_of(&farm).best.unwrap().from, DAY.at(9, 30, 0, 0));
}

#[test]
fn without_a_forecast_the_note_stays_and_nothing_else_is_said() {
    let mut farm = saying(wind("10 mph", None, None));
    farm.products["a"].label.push(Statement::new(Says::NoInversion, "page 3"));
    farm.passes["p"].date = date(2031, 7, 1);
    let told = found(&farm, "The labels ask on the day: wind at most 10 mph, no inversion").unwrap();
    assert_eq!(told.level, Level::Note);
    assert_eq!(told.basis, Basis::Label("Alpha 480 SL (demo), page 3".to_owned()));
    let hours = hours_of(&farm);
    assert!(hours.hours.is_empty() && hours.limits.is_empty() && hours.best.is_none() && hours.sun.is_some());
    // A law asks beside the labels, and each is named as what it is.
    let mut with_law = farm.clone();
    let cold = Says::Temperature { least: Some(q("50 °F")), most: Some(q("85 °F")) };
    with_law.laws.insert(
        "law".to_owned(),
        Law {
            name: "Spray rule 12".to_owned(),
            since: None,
            until: None,
            about: String::new(),
            says: Statement::new(cold, ""),
        },
    );
    let told = found(&with_law, "The labels and laws ask on the day: wind at most 10 mph").unwrap();
    assert!(told.text.contains("air at most 85 °F"), "{}", told.text);
    assert_eq!(told.basis.to_string(), "label of Alpha 480 SL (demo), page 3; Spray rule 12, as typed");
    // Where the air of the day is typed, a law on it is judged as a label is.
    with_law.passes["p"].growing.air = Some(q("90 °F"));
    let told = found(&with_law, "Spray rule 12 asks for air of at most 85 °F; 90 °F is expected").unwrap();
    assert_eq!((told.level, told.basis), (Level::Stop, Basis::Law("Spray rule 12".to_owned())));
    with_law.passes["p"].growing.air = Some(q("70 °F"));
    assert_eq!(found(&with_law, "asks for air"), None);
    with_law.products["a"].label.clear();
    with_law.passes["p"].growing.air = None;
    let told = found(&with_law, "The laws ask on the day: air at most 85 °F").unwrap();
    assert_eq!(told.basis, Basis::Law("Spray rule 12".to_owned()));
    // A farm without place or forecast hears nothing of either.
    farm.place = None;
    farm.forecast.hours.clear();
    farm.products["a"].label.clear();
    for words in ["Sunrise", "forecast", "time zone", "The labels ask"] {
        assert_eq!(found(&farm, words), None, "{words}");
    }
}

#[test]
fn nonsense_is_borne() {
    let mut farm = saying(Says::RainFree { hours: u32::MAX });
    farm.products["a"].label.extend([
        Statement::new(wind("0 mph", Some("1000000 mph"), Some("0 mph")), ""),
        Statement::new(Says::Humidity { least: Some(q("900 %")), most: Some(q("0 %")) }, ""),
        Statement::new(
            Says::Daylight {
                from: SunTime { sunset: true, minutes: 720 },
                to: SunTime { sunset: false, minutes: -720 },
            },
            "",
        ),
        Statement::new(Says::NotToward { what: ",, ;".to_owned() }, ""),
    ]);
    farm.forecast.hours.extend([Hour::new(DateTime::MIN), Hour::new(DateTime::MAX), fair(DAY.at(12, 0, 0, 0))]);
    farm.forecast.hours.reverse();
    for (n, hour) in farm.forecast.hours.iter_mut().enumerate() {
        hour.again = n % 3 == 0;
        hour.humidity = Some(q("4000 %"));
        hour.dew_point = Some(q("70 °C"));
        hour.wind = Some(q("100000 mph"));
    }
    for (latitude, longitude, zone) in
        [("90", "180", "UTC"), ("-90", "-180", "Pacific/Kiritimati"), ("1e9", "NaN", "../etc"), ("0", "0", "\u{0}")]
    {
        farm.place = Some(Place {
            latitude: latitude.to_owned(),
            longitude: longitude.to_owned(),
            altitude: Some(q("900000000 ft")),
            zone: zone.to_owned(),
        });
        assert!(hours_of(&farm).hours.iter().all(|hour| hour.verdict == Verdict::Forbidden));
        let _ = Outlook::of(&farm).skies().count();
    }
    for day in [Date::MIN, Date::MAX] {
        farm.passes["p"].date = day;
        let _ = planned(&farm);
    }
}

fn recorded(farm: &mut Farm, change: impl Fn(&mut Record)) -> Vec<Finding> {
    let mut record = Record::new("Soybean, first post", DAY);
    record.fields.insert("f".to_owned(), whole_field(&farm.fields["f"], farm.units));
    let amount = q::<tankard_core::quantity::Amount>("20 gal").value();
    record.lines.push(record_line(&"a".to_owned(), &farm.products["a"], amount, farm.units));
    change(&mut record);
    farm.records.insert("rec".to_owned(), record.clone());
    let before = farm.clone();
    let findings = outside::judge(farm, &"rec".to_owned(), &record);
    assert_eq!(*farm, before, "a record is kept as it is");
    findings
}

#[test]
fn a_record_outside_a_limit_is_told() {
    let mut farm = saying(wind("10 mph", Some("3 mph"), None));
    farm.products["a"].label.extend([
        Statement::new(Says::Daylight { from: SunTime::SUNRISE, to: SunTime::SUNSET }, "page 3"),
        Statement::new(Says::DeltaT { least: None, most: Some(q("8 °C")) }, "page 3"),
        Statement::new(Says::Droplets { finest: tankard_core::farm::Droplets::Coarse, coarsest: None }, "page 3"),
    ]);
    assert!(recorded(&mut farm, |_| {}).is_empty(), "what was not measured is not judged");
    let told = recorded(&mut farm, |record| record.wind = Some(q("14 mph")));
    assert_eq!(told[0].level, Level::Check);
    assert_eq!(
        told[0].text,
        "\"Soybean, first post\" of 12 June 2031: it was sprayed at 14 mph; the label of Alpha 480 SL (demo), page 3 as it is typed now asks for wind at most 10 mph"
    );
    assert!(recorded(&mut farm, |record| record.wind = Some(q("9 mph"))).is_empty());
    // 30 °C and 40 %: Delta T 9.936 (PsychroLib 2.5.0).
    let told = recorded(&mut farm, |record| {
        (record.temperature, record.humidity) = (Some(q("30 °C")), Some(q("40 %")));
    });
    assert!(told.iter().any(|finding| finding.level == Level::Check && finding.text.contains("Delta T of 17.9 °F")));
    let told = recorded(&mut farm, |record| {
        (record.start, record.end) = (Some(Time::constant(20, 0, 0, 0)), Some(Time::constant(21, 30, 0, 0)));
    });
    assert!(told.iter().any(|finding| finding.text.contains("from 20:00 to 21:30")), "{told:?}");
    let told = recorded(&mut farm, |record| {
        (record.start, record.end) = (Some(Time::constant(9, 0, 0, 0)), Some(Time::constant(11, 30, 0, 0)));
    });
    assert!(told.is_empty(), "{told:?}");
    // From before sunrise into the day; a record that ends in the minute in which it begins.
    let told = recorded(&mut farm, |record| {
        (record.start, record.end) = (Some(Time::constant(4, 30, 0, 0)), Some(Time::constant(11, 30, 0, 0)));
    });
    assert!(told.iter().any(|finding| finding.text.contains("from 04:30 to 11:30")), "{told:?}");
    let told = recorded(&mut farm, |record| {
        (record.start, record.end) = (Some(Time::constant(9, 0, 0, 0)), Some(Time::constant(9, 0, 0, 0)));
    });
    assert!(told.is_empty(), "{told:?}");
    let told = recorded(&mut farm, |record| record.droplets = Some(tankard_core::farm::Droplets::Medium));
    assert!(told[0].text.contains("medium droplets"), "{told:?}");
    // What the farm keeps to is a Note.
    let told = recorded(&mut farm, |record| record.temperature = Some(q("95 °F")));
    assert_eq!((told.len(), told[0].level), (1, Level::Note));
    farm.fields["f"].neighbours = vec![Neighbour { what: "vineyard".to_owned(), side: "N".to_owned(), distance: None }];
    farm.products["a"].label.push(Statement::new(Says::NotToward { what: "vineyard".to_owned() }, "page 4"));
    let told = recorded(&mut farm, |record| record.wind_from = "S".into());
    assert!(told[0].text.contains("with wind from S"), "{told:?}");
}

/// What was read later counts as much as what was read first.
#[test]
fn later_readings_of_a_record_are_held_against_the_limits_too() {
    let mut farm = saying(wind("15 mph", None, Some("20 mph")));
    let later = |at: Option<Time>, change: fn(&mut Reading)| {
        let mut reading = Reading { at, ..Reading::default() };
        change(&mut reading);
        reading
    };
    let (ten, four) = (Some(Time::constant(10, 0, 0, 0)), Some(Time::constant(16, 5, 0, 0)));
    let told = recorded(&mut farm, |record| {
        record.wind = Some(q("8 mph"));
        record.readings = vec![
            later(ten, |reading| reading.wind = Some(q("9 mph"))),
            later(four, |reading| (reading.wind, reading.gust) = (Some(q("25 mph")), Some(q("40 mph")))),
            later(None, |reading| reading.humidity = Some(q("120 %"))),
        ];
    });
    let has = |text: &str| told.iter().any(|finding| finding.level == Level::Check && finding.text.contains(text));
    // Two of the label, two of what is usual (assets/weather-limits.csv), and the humidity.
    assert_eq!(told.len(), 5, "{told:?}");
    assert!(has("it was sprayed at 25 mph, read at 16:05; the label"), "{told:?}");
    assert!(has("it was sprayed with gusts of 40 mph, read at 16:05; the label"), "{told:?}");
    assert!(has("a humidity of 120 % is written down, in later reading 3;"), "{told:?}");
}

#[test]
fn a_record_tells_what_was_measured_and_what_may_be_asked() {
    // No gust was measured: wind alone tells of one only where it exceeds the gust's limit by itself.
    let mut farm = saying(wind("20 mph", None, Some("10 mph")));
    assert!(recorded(&mut farm, |record| record.wind = Some(q("9 mph"))).is_empty());
    let told = recorded(&mut farm, |record| record.wind = Some(q("14 mph")));
    let of_gusts = |told: &[Finding]| {
        let is = |finding: &&Finding| finding.level == Level::Check && finding.text.contains("gusts at most 10 mph");
        told.iter().find(is).unwrap().text.clone()
    };
    assert!(of_gusts(&told).contains("sprayed in wind of 14 mph, which no gust falls below"), "{told:?}");
    assert!(told.iter().all(|finding| !finding.text.contains("with gusts of")), "{told:?}");
    let told = recorded(&mut farm, |record| (record.wind, record.gust) = (Some(q("8 mph")), Some(q("12 mph"))));
    assert!(of_gusts(&told).contains("sprayed with gusts of 12 mph"), "{told:?}");

    // A limit in warm air goes by what was measured, not by what was typed for the pass.
    let mut farm = saying(wind("5 mph", None, None));
    farm.products["a"].label[0].when.push(When::WarmerThan(q("77 °F")));
    farm.passes["p"].growing.air = Some(q("95 °F"));
    let mut of_wind = |air: Option<&str>| {
        let told = recorded(&mut farm, |record| {
            (record.wind, record.temperature) = (Some(q("6 mph")), air.map(q));
            record.pass = Some("p".into());
        });
        let label = |finding: &Finding| matches!(finding.basis, Basis::Label(_)).then(|| finding.text.clone());
        told.iter().find_map(label)
    };
    assert_eq!(of_wind(Some("70 °F")), None);
    assert!(of_wind(Some("80 °F")).unwrap().ends_with("asks for wind at most 5 mph warmer than 77 °F"));
    assert!(
        of_wind(None).unwrap().ends_with("may ask for wind at most 5 mph warmer than 77 °F; the air was not measured")
    );

    // Droplets of which it cannot be told whether they are asked for.
    let coarse = Says::Droplets { finest: tankard_core::farm::Droplets::Coarse, coarsest: None };
    let mut farm = saying(coarse);
    let mut of_droplets = |when: Option<When>, air: Option<&str>| {
        farm.products["a"].label[0].when = when.into_iter().collect();
        let told = recorded(&mut farm, |record| {
            record.droplets = Some(tankard_core::farm::Droplets::Medium);
            record.temperature = air.map(q);
        });
        told.into_iter().find(|finding| finding.text.contains("droplets")).map(|finding| finding.text)
    };
    assert!(of_droplets(None, None).unwrap().ends_with("as typed asks for coarse or coarser"));
    assert!(
        of_droplets(Some(When::Weed("kochia".to_owned())), None)
            .unwrap()
            .ends_with("as typed may ask for coarse or coarser against kochia")
    );
    let warm = || Some(When::WarmerThan(q("77 °F")));
    assert!(of_droplets(warm(), None).unwrap().contains("may ask for coarse or coarser warmer than 77 °F"));
    assert!(of_droplets(warm(), Some("80 °F")).unwrap().contains("as typed asks for coarse"));
    assert_eq!(of_droplets(warm(), Some("70 °F")), None);
}

#[test]
fn a_record_keeps_what_was_expected() {
    let mut farm = farm();
    edit(&mut farm, 9, |hour| (hour.wind, hour.wind_from) = (Some(q("4 mph")), Some(q("NW"))));
    edit(&mut farm, 10, |hour| hour.temperature = Some(q("72 °F")));
    let planned = planned(&farm);
    let time = |hour| Some(Time::constant(hour, 0, 0, 0));
    let expected = outside::expected(&farm, &planned, time(9), time(11)).unwrap();
    let (weakest, strongest) = expected.wind.unwrap();
    assert_eq!((weakest.text(), strongest.text()), ("4 mph", "6 mph"));
    assert_eq!(expected.temperature.unwrap().1.text(), "72 °F");
    assert_eq!(expected.wind_from, "NW, W");
    assert_eq!(expected.source, "typed by hand, 12 June 2031, 09:00 to 11:00");
    let record = from_plan(&farm, &Log::of(&farm), &planned).unwrap();
    assert!(record.expected.is_some() && record.wind.is_none(), "what is expected is not measured");
    // Half-hours: what ends where spraying begins is not of its time.
    edit(&mut farm, 9, |hour| hour.wind = Some(q("20 mph")));
    let mut half = farm.forecast.hours.iter().find(|hour| hour.at == DAY.at(9, 0, 0, 0)).unwrap().clone();
    (half.at, half.wind) = (DAY.at(9, 30, 0, 0), Some(q("5 mph")));
    farm.forecast.hours.push(half);
    let from = Some(Time::constant(9, 30, 0, 0));
    assert_eq!(outside::expected(&farm, &planned, from, time(10)).unwrap().wind.unwrap().1.text(), "5 mph");
    assert_eq!(outside::expected(&farm, &planned, time(9), time(10)).unwrap().wind.unwrap().1.text(), "20 mph");
    farm.forecast.hours.clear();
    assert_eq!(from_plan(&farm, &Log::of(&farm), &self::planned(&farm)).unwrap().expected, None);
}

#[test]
fn a_typed_start_holds_back_the_best_span_and_days_are_judged_apart() {
    let mut farm = farm();
    farm.forecast.hours = fair_days(DAY, 7);
    let outlook = Outlook::of(&farm);
    let days = hours::judge_days(&farm, &outlook, &farm.passes["p"], needs(3.0));
    assert_eq!(days.len(), 7);
    assert!(days.iter().all(|(day, hours)| hours.best.is_some_and(|best| best.from.date() == *day)));
}

/// Dry air has no dew point, air is never drier than its wet bulb, and at 15 kPa water of 60 °C boils (its vapour has 19.9 kPa).
#[test]
fn what_no_air_can_be_is_no_figure() {
    let (celsius, share) = (Temperature::from_celsius, Share::from_percent);
    let sea = Pressure::from_pascals(101_325.0);
    assert_eq!(dew_point(celsius(20.0), share(0.0)), None);
    assert_eq!(dew_point(celsius(20.0), share(101.0)), None);
    assert_eq!(humidity_of_bulbs(celsius(20.0), celsius(25.0), sea), None);
    assert_eq!(humidity_of_bulbs(celsius(40.0), celsius(5.0), sea), None);
    assert_eq!(wet_bulb(celsius(60.0), share(50.0), Pressure::from_pascals(15_000.0)), None);
    assert_eq!(wet_bulb(celsius(60.0), share(100.0), Pressure::from_pascals(15_000.0)), None);
}

/// A span goes on past midnight only where the forecast reaches it.
#[test]
fn a_forecast_that_ends_before_midnight_goes_on_nowhere() {
    let mut farm = farm();
    farm.forecast.hours.truncate(24);
    assert!(taking(&farm, needs(30.0)).may_go_on());
    farm.forecast.hours.truncate(18);
    assert!(!taking(&farm, needs(30.0)).may_go_on());
}

proptest! {
    #![proptest_config(cases(256))]

    /// The humidity that a wet bulb stands for is the one that it was reckoned from, in frost and in heat.
    #[test]
    fn a_wet_bulb_leads_back_to_its_humidity(air in -45.0..60.0_f64, share in 0.0..1.0_f64, pascals in 60_000.0..105_000.0_f64) {
        let (air, pressure) = (Temperature::from_celsius(air), Pressure::from_pascals(pascals));
        let bulb = wet_bulb(air, Share::from_fraction(share), pressure).unwrap();
        let back = humidity_of_bulbs(air, bulb, pressure).unwrap().to_fraction();
        prop_assert!((back - share).abs() < 1e-5, "{}", back);
    }

    /// A label that allows less never makes an hour better, and nothing not known is better than something known to be fair.
    #[test]
    fn a_stricter_label_never_helps(most in 1.0..20.0_f64, less in 0.0..1.0_f64, found in 0.0..25.0_f64, known in any::<bool>()) {
        let mut farm = saying(wind(&format!("{most:.2} mph"), None, None));
        edit(&mut farm, 12, |hour| {
            hour.wind = known.then(|| q(&format!("{found:.2} mph")));
        });
        let before = at(&farm, 12).verdict;
        farm.products["a"].label[0].says = wind(&format!("{:.2} mph", most * less), None, None);
        let after = at(&farm, 12).verdict;
        prop_assert!(after >= before);
        prop_assert!(known || before != Verdict::Allowed);
    }
}
