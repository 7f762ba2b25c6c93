//! A rig as a person types it in the shed: tank and boom, nozzle sets, calibrations; and the small boxes that go with it.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::shed::{Shed, choose, edit, farm, press, put, q, shed};
use egui::accesskit::Role;
use egui_kittest::kittest::{NodeT, Queryable};
use jiff::civil::date;
use tankard::command::{Command, View};
use tankard::demo;
use tankard_core::farm::{
    Calibration, ClassAt, Droplets, Farm, Layout, NozzleSet, Pass, Practice, Pulse, Rated, Rig, Test,
};
use tankard_core::quantity::{AsTyped, Units};
use tankard_core::weather::practice::usual;
use tankard_file::{read, write};

/// The shed with its page open.
fn rigs(farm: Farm, size: [f32; 2]) -> Shed {
    let mut harness = shed(farm, size);
    press(&mut harness, "Rigs");
    harness
}

fn undo(harness: &mut Shed) {
    let ctx = harness.ctx.clone();
    harness.state_mut().run(Command::Undo, &ctx);
    harness.run();
}

fn rig(harness: &Shed) -> &Rig {
    &farm(harness).rigs["boom"]
}

/// A farm with one rig of 30 ft.
fn small() -> Farm {
    let mut farm = Farm::new("Test");
    let mut rig = Rig::new("Boom", q("500 gal"));
    rig.boom = Some(q("30 ft"));
    farm.rigs.insert("boom".to_owned(), rig);
    farm
}

fn size_04() -> NozzleSet {
    NozzleSet {
        name: "Flat fan 04".to_owned(),
        size: "04".to_owned(),
        rated: Some(Rated { flow: q("0.4 gal/min"), at: q("40 psi") }),
        layout: Some(Layout::Broadcast { spacing: q("20 in") }),
        ..NozzleSet::default()
    }
}

fn with_set() -> Farm {
    let mut farm = small();
    farm.rigs["boom"].sets.insert("fan".to_owned(), size_04());
    farm
}

#[test]
fn a_person_walks_round_the_sprayer() {
    let mut harness = rigs(small(), [1366.0, 768.0]);
    put(&mut harness, "usual height", "24 in");
    put(&mut harness, "lines and boom hold", "9 gal");
    put(&mut harness, "clean-water tank", "80 gal");
    put(&mut harness, "speed on the road", "20 mph");
    // A bare number is minutes here, and stands there with its unit.
    put(&mut harness, "stop of a filling", "4");
    put(&mut harness, "each product added", "1.5 min");
    press(&mut harness, "valves pulse");
    harness.get_by_label("still to type");
    put(&mut harness, "least share open", "30 %");
    let mut expected = small().rigs["boom"].clone();
    expected.height = Some(q("24 in"));
    expected.lines = Some(q("9 gal"));
    expected.clean_water = Some(q("80 gal"));
    expected.road_speed = Some(q("20 mph"));
    expected.stop = Some(q("4 min"));
    expected.addition = Some(q("1.5 min"));
    expected.pulse = Some(Pulse { least: q("30 %"), most: q("100 %") });
    assert_eq!(*rig(&harness), expected);
    press(&mut harness, "valves pulse");
    assert_eq!(rig(&harness).pulse, None);
}

#[test]
fn a_nozzle_set_is_typed_and_goes_through_the_file() {
    let mut harness = rigs(small(), [1366.0, 768.0]);
    press(&mut harness, "Nozzle sets");
    assert_eq!(harness.query_all_by_label_contains("No nozzle set yet.").count(), 1);
    press(&mut harness, "+ Add a nozzle set");
    put(&mut harness, "name of the set", "Flat fan 04");
    choose(&mut harness, "size: not known", "04, by US gal/min at 40 psi");
    choose(&mut harness, "they spray: not known", "over the whole ground");
    put(&mut harness, "nozzles apart", "20 in");
    put(&mut harness, "least pressure", "15 psi");
    put(&mut harness, "most pressure", "60 psi");
    press(&mut harness, "+ Add a line");
    put(&mut harness, "pressure, line 1", "30 psi");
    choose(&mut harness, "droplets, line 1: medium", "coarse");
    press(&mut harness, "+ Add a line");
    put(&mut harness, "pressure, line 2", "60 psi");
    let mut expected = size_04();
    expected.least = Some(q("15 psi"));
    expected.most = Some(q("60 psi"));
    let class = Droplets::Coarse;
    expected.droplets = vec![ClassAt { at: q("30 psi"), class }, ClassAt { at: q("60 psi"), class }];
    assert_eq!(rig(&harness).sets.values().collect::<Vec<_>>(), [&expected]);
    // 30 ft in steps of 20 in.
    harness.get_by_label("working width by how far apart they stand");
    press(&mut harness, "Remove: line 1 of the droplets");
    assert_eq!(rig(&harness).sets[0].droplets.len(), 1);
    let text = write(farm(&harness)).unwrap();
    assert_eq!(read(text.as_bytes()).unwrap(), *farm(&harness));
}

/// The two definitions of a size are 1.3 % apart, so both flow and pressure of the one chosen are filled in; ISO 10625 numbers
/// after the Saskatchewan Pulse Growers guide (US gallons at 40 psi) and a UK nozzle chart (1.2 L/min for 03 at 3 bar).
#[test]
fn a_size_fills_the_rating_in_both_definitions() {
    let mut harness = rigs(with_set(), [1366.0, 768.0]);
    press(&mut harness, "Nozzle sets");
    choose(&mut harness, "size: 04, by US gal/min at 40 psi", "03, by US gal/min at 40 psi");
    let rated = |harness: &Shed| rig(harness).sets["fan"].rated.clone().unwrap();
    assert_eq!(rig(&harness).sets["fan"].size, "03");
    assert_eq!(rated(&harness), Rated { flow: q("0.3 gal/min"), at: q("40 psi") });
    choose(&mut harness, "size: 03, by US gal/min at 40 psi", "03, by L/min at 3 bar");
    assert_eq!(rated(&harness), Rated { flow: q("1.2 L/min"), at: q("3 bar") });
    // The boxes are typed over, and the size says so.
    put(&mut harness, "a new one gives", "1.18 L/min");
    assert_eq!(rated(&harness), Rated { flow: q("1.18 L/min"), at: q("3 bar") });
    assert_eq!(rig(&harness).sets["fan"].size, "03");
    harness.get_by_label("size: 03, rated as typed");
    undo(&mut harness);
    assert_eq!(rated(&harness), Rated { flow: q("1.2 L/min"), at: q("3 bar") });
}

#[test]
fn bands_and_directed_nozzles_keep_what_they_share() {
    let mut harness = rigs(with_set(), [1366.0, 768.0]);
    press(&mut harness, "Nozzle sets");
    choose(&mut harness, "they spray: over the whole ground", "band over each row");
    put(&mut harness, "width of the band", "10 in");
    put(&mut harness, "rows apart", "30 in");
    put(&mut harness, "nozzles to a row", "2");
    let layout = |harness: &Shed| rig(harness).sets["fan"].layout.clone();
    assert_eq!(layout(&harness), Some(Layout::Band { width: q("10 in"), rows: q("30 in"), nozzles: 2 }));
    choose(&mut harness, "they spray: band over each row", "directed at each row");
    assert_eq!(layout(&harness), Some(Layout::Directed { rows: q("30 in"), nozzles: 2 }));
    choose(&mut harness, "they spray: directed at each row", "not known");
    assert_eq!(layout(&harness), None);
}

#[test]
fn sets_are_chosen_copied_and_removed() {
    let mut test = with_set();
    let mut pass = Pass::new("Corn, post", date(2031, 6, 12));
    pass.rig = "boom".to_owned();
    pass.nozzles = "fan".to_owned();
    test.passes.insert("corn".to_owned(), pass);
    let mut harness = rigs(test, [1366.0, 768.0]);
    press(&mut harness, "Nozzle sets");
    harness.get_by_label("Corn, post");
    press(&mut harness, "Copy: set Flat fan 04");
    press(&mut harness, "usually fitted: Flat fan 04, the first");
    // It stands in the list of sets too.
    harness.get_by(|node| node.role() == Role::Button && node.label().as_deref() == Some("Flat fan 04, copy")).click();
    harness.run();
    let copy = rig(&harness).sets.keys().nth(1).unwrap().clone();
    assert_eq!(rig(&harness).fitted, copy);
    // No pass names the copy, and undo brings it back.
    press(&mut harness, "Remove: set Flat fan 04, copy");
    assert_eq!((rig(&harness).sets.len(), rig(&harness).fitted.as_str()), (1, ""));
    press(&mut harness, "Remove: set Flat fan 04");
    harness.get_by_label("1 pass speaks of Flat fan 04");
    press(&mut harness, "Keep it");
    assert_eq!(rig(&harness).sets.len(), 1);
    press(&mut harness, "Remove: set Flat fan 04");
    press(&mut harness, "Remove it all the same");
    assert!(rig(&harness).sets.is_empty());
}

/// 0.4 gal/min for 30 s is 25.6 fl oz. A nozzle more than 10 % above a new one is to be replaced (USGA, "The 10-Percent Rule",
/// 15 March 2016), and so is one more than 5 % above the average (Alberta Agriculture, Agdex 606-1).
#[test]
fn a_worn_nozzle_is_caught() {
    let mut harness = rigs(with_set(), [1366.0, 768.0]);
    press(&mut harness, "Calibration");
    assert_eq!(harness.query_all_by_label_contains("Nothing yet.").count(), 1);
    press(&mut harness, "+ Catch at the nozzles");
    put(&mut harness, "pressure meanwhile", "40 psi");
    // 30 ft of boom in steps of 20 in are 18 places.
    edit(&harness, "nozzle 18");
    assert!(harness.query_by(|node| node.label().as_deref() == Some("nozzle 19")).is_none());
    // Bare numbers are fluid ounces.
    for (at, caught) in [(1, "25.6"), (2, "25.5"), (3, "25.7"), (4, "25.6 fl oz"), (5, "29")] {
        put(&mut harness, &format!("nozzle {at}"), caught);
    }
    let Test::Catch { time, caught } = &rig(&harness).calibrations[0].test else { panic!("another way") };
    assert_eq!(time.text(), "30 s");
    assert_eq!(caught.iter().flatten().map(AsTyped::text).collect::<Vec<_>>()[3..], ["25.6 fl oz", "29 fl oz"]);
    assert_eq!(rig(&harness).calibrations[0].date, date(2031, 6, 11));
    assert_eq!(rig(&harness).calibrations[0].set, "fan");
    harness.get_by_label("worn");
    // 29 over the mean of 26.28, and over 25.6.
    harness.get_by_label("+10.4 %");
    harness.get_by_label("+13.3 %");
    assert!(harness.query_all_by_label_contains("1 worn").count() > 0);
    assert!(harness.query_all_by_label_contains("Check: Nozzle 5").count() > 0);
    undo(&mut harness);
    assert!(harness.query_by_label("worn").is_none());
    assert!(harness.query_all_by_label_contains("4 nozzles inside the rules").count() > 0);
    // Emptied boxes at the end leave nothing behind.
    for at in [4, 3, 2, 1] {
        put(&mut harness, &format!("nozzle {at}"), "");
    }
    let Test::Catch { caught, .. } = &rig(&harness).calibrations[0].test else { panic!("another way") };
    assert!(caught.is_empty());
}

#[test]
fn a_sample_leaves_the_others_empty() {
    let mut harness = rigs(with_set(), [1366.0, 768.0]);
    press(&mut harness, "Calibration");
    press(&mut harness, "+ Catch at the nozzles");
    put(&mut harness, "nozzle 9", "25.6");
    let Test::Catch { caught, .. } = &rig(&harness).calibrations[0].test else { panic!("another way") };
    assert_eq!((caught.len(), caught.iter().flatten().count()), (9, 1));
}

/// 1/128 acre is 340.3125 ft², so with nozzles 20 in apart the course is 204 ft (Louisiana State University AgCenter, Barbosa,
/// Koske, Parish); a fluid ounce caught in its time is a gallon to the acre.
#[test]
fn the_fraction_of_an_acre_tells_its_course_and_gallons() {
    let mut harness = rigs(with_set(), [1366.0, 768.0]);
    press(&mut harness, "Calibration");
    press(&mut harness, "+ 1/128 acre");
    assert!(harness.query_by_label_contains("Mark a course of 204.2 ft").is_some());
    put(&mut harness, "time of the course", "23");
    put(&mut harness, "caught 1", "15");
    put(&mut harness, "caught 2", "17");
    let Test::AcreFraction { time, caught } = &rig(&harness).calibrations[0].test else { panic!("another way") };
    assert_eq!(time.text(), "23 s");
    assert_eq!(caught.iter().map(AsTyped::text).collect::<Vec<_>>(), ["15 fl oz", "17 fl oz"]);
    assert!(harness.query_all_by_label("16 gal/ac").count() > 0);
}

/// 300 ft in 17 s are 12.03 mph: mph = ft × 60 ÷ (s × 88), Montana State University (Tharp).
#[test]
fn a_course_tells_the_speed_and_the_tank_level_the_volume() {
    let mut harness = rigs(with_set(), [1366.0, 768.0]);
    press(&mut harness, "Calibration");
    press(&mut harness, "+ Speed over a course");
    put(&mut harness, "length of the course", "300 ft");
    put(&mut harness, "run 1", "17");
    put(&mut harness, "the cab showed", "13 mph");
    assert!(harness.query_all_by_label("12 mph").count() > 0);
    press(&mut harness, "+ Tank level");
    put(&mut harness, "ground sprayed", "5 ac");
    put(&mut harness, "took to fill up", "77 gal");
    assert!(harness.query_all_by_label("15.4 gal/ac").count() > 0);
    assert_eq!(rig(&harness).calibrations.len(), 2);
    press(&mut harness, "Remove: tank level of 11 June 2031");
    assert_eq!(rig(&harness).calibrations.len(), 1);
    press(&mut harness, "reckon with the flow measured last");
    assert!(rig(&harness).measured_flow);
}

#[test]
fn the_latest_day_comes_first() {
    let of = |day: jiff::civil::Date| Calibration {
        date: day,
        set: String::new(),
        by: String::new(),
        pressure: None,
        test: Test::Course { length: q("300 ft"), times: vec![q("17 s")], shown: None },
        note: String::new(),
    };
    let mut test = with_set();
    test.rigs["boom"].calibrations = vec![of(date(2031, 5, 2)), of(date(2029, 4, 1)), of(date(2030, 4, 1))];
    let mut harness = rigs(test, [1366.0, 768.0]);
    press(&mut harness, "Calibration");
    let rows: Vec<String> = harness
        .query_all_by_role(Role::ListBoxOption)
        .filter_map(|node| node.accesskit_node().label())
        .filter(|label| label.contains("speed over a course"))
        .collect();
    assert_eq!(rows.iter().map(|row| &row[..10]).collect::<Vec<_>>(), ["2 May 2031", "1 April 20", "1 April 20"]);
    assert!(rows[1].starts_with("1 April 2030"), "{rows:?}");
    harness.get_by_label("Speed over a course, 2 May 2031");
}

#[test]
fn what_cannot_be_read_is_kept_and_said() {
    let mut harness = rigs(with_set(), [1366.0, 768.0]);
    press(&mut harness, "Calibration");
    press(&mut harness, "+ Catch at the nozzles");
    let before = farm(&harness).clone();
    put(&mut harness, "nozzle 1", "25,6,1");
    put(&mut harness, "nozzle 2", "two jugs");
    assert_eq!(*farm(&harness), before);
    assert_eq!(harness.state().unread.len(), 2);
    assert_eq!(edit(&harness, "nozzle 2").value().as_deref(), Some("two jugs"));
    press(&mut harness, "Nozzle sets");
    put(&mut harness, "number on the boom", "many");
    assert_eq!(rig(&harness).sets["fan"].count, None);
    assert!(harness.query_all_by_label_contains("is not a whole number").count() >= 1);
}

#[test]
fn every_page_stands_in_a_small_window_and_changes_nothing() {
    let mut empty = Farm::new("Test");
    empty.rigs.insert("bare".to_owned(), Rig::new("", q("100 L")));
    empty.units = Units::Metric;
    let mut many = demo::farm().unwrap();
    let set = many.rigs[0].sets.first().map(|(id, _)| id.clone()).unwrap_or_default();
    many.rigs[0].calibrations.push(Calibration {
        date: date(2031, 6, 1),
        set,
        by: "a person with a long name who writes it out".to_owned(),
        pressure: Some(q("40 psi")),
        test: Test::Catch { time: q("30 s"), caught: (0..72).map(|_| Some(q("38 fl oz"))).collect() },
        note: String::new(),
    });
    for farm in [empty, many] {
        for size in [[1366.0, 768.0], [1024.0, 700.0], [910.0, 512.0]] {
            let mut harness = rigs(farm.clone(), size);
            for page in ["Nozzle sets", "Calibration", "Rig"] {
                press(&mut harness, page);
            }
            assert!(!harness.state().document.is_unsaved());
        }
    }
}

#[test]
fn what_the_farm_keeps_to_is_typed() {
    let mut harness = rigs(small(), [1366.0, 768.0]);
    harness.get_by_role_and_label(Role::Tab, "Farm").click();
    harness.run();
    assert_eq!(farm(&harness).practice, Practice::default());
    assert!(usual().most_wind.is_some());
    put(&mut harness, "height above the sea", "1200 ft");
    put(&mut harness, "wind at most", "12 mph");
    put(&mut harness, "Delta T at most", "9 °C");
    put(&mut harness, "air at least", "40 °F");
    put(&mut harness, "wet from a chance of", "40 %");
    put(&mut harness, "days after which a calibration is old", "365");
    let expected = Practice {
        most_wind: Some(q("12 mph")),
        most_delta_t: Some(q("9 °C")),
        least_air: Some(q("40 °F")),
        wet_chance: Some(q("40 %")),
        calibration_days: Some(365),
        ..Practice::default()
    };
    assert_eq!(farm(&harness).practice, expected);
    assert_eq!(farm(&harness).place.as_ref().and_then(|place| place.altitude.clone()), Some(q("1200 ft")));
    put(&mut harness, "days after which a calibration is old", "");
    assert_eq!(farm(&harness).practice.calibration_days, None);
}

#[test]
fn the_flow_of_a_water_and_the_road_to_a_field_are_typed() {
    let mut harness = rigs(demo::farm().unwrap(), [1366.0, 768.0]);
    press(&mut harness, "Waters");
    put(&mut harness, "gives when filling", "60 gal/min");
    assert_eq!(farm(&harness).waters[0].flow, Some(q("60 gal/min")));
    harness.state_mut().view = View::Fields;
    harness.run();
    put(&mut harness, "Road from the yard to the gate", "2.5 mi");
    assert_eq!(farm(&harness).fields[0].road, Some(q("2.5 mi")));
}
