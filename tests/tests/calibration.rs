//! What calibrations say, on both sides of each rule, and what a pass is told of them.
//!
//! The rules are those of the publications named beside each check; figures without a name are made up to lie beside a limit.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use jiff::civil::{Date, date};
use proptest::prelude::*;
use tankard_core::farm::{Calibration, Farm, Field, Layout, NozzleSet, Pass, Rated, Rig, Test};
use tankard_core::finding::{Basis, Finding, Level};
use tankard_core::plan::plan;
use tankard_core::quantity::{AsTyped, Quantity};
use tankard_core::rig::calibration::{Calibrated, State, judge, latest, measured_flow};
use tankard_tests::cases;

fn q<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

/// A boom with one set of 0.4 gal/min at 40 psi, 20 in apart, and a pass on 12 June 2031.
fn farm() -> Farm {
    let mut farm = Farm::new("Calibration");
    let mut rig = Rig::new("Boom", q("1200 gal"));
    let set = NozzleSet {
        name: "Size 04".to_owned(),
        rated: Some(Rated { flow: q("0.4 gal/min"), at: q("40 psi") }),
        layout: Some(Layout::Broadcast { spacing: q("20 in") }),
        ..NozzleSet::default()
    };
    rig.sets.insert("04".to_owned(), set);
    farm.rigs.insert("boom".to_owned(), rig);
    farm.fields.insert("f".to_owned(), Field::new("Mill field", q("80 ac")));
    let mut pass = Pass::new("Pass", date(2031, 6, 12));
    pass.fields.push("f".to_owned());
    "boom".clone_into(&mut pass.rig);
    pass.carrier = Some(q("15 gal/ac"));
    farm.passes.insert("p".to_owned(), pass);
    farm
}

fn of(day: Date, test: Test) -> Calibration {
    Calibration {
        date: day,
        set: String::new(),
        by: String::new(),
        pressure: Some(q("40 psi")),
        test,
        note: String::new(),
    }
}

/// Nozzles caught for a minute, in hundredths of a gallon.
fn catch(hundredths: &[f64]) -> Test {
    let caught = hundredths.iter().map(|amount| Some(q(&format!("{} gal", amount / 100.0)))).collect();
    Test::Catch { time: q("1 min"), caught }
}

fn judged(test: Test) -> Calibrated {
    judge(&farm(), "boom", &of(date(2031, 4, 2), test))
}

fn states(judged: &Calibrated) -> Vec<State> {
    judged.nozzles.iter().map(|nozzle| nozzle.state).collect()
}

fn checks(judged: &Calibrated) -> Vec<&Finding> {
    judged.findings.iter().filter(|finding| finding.level >= Level::Check).collect()
}

proptest! {
    #![proptest_config(cases(256))]

    // Arithmetic: without a rating a nozzle is judged by its neighbours, not by the time or by where it stands.
    #[test]
    fn neither_time_nor_place_changes_what_a_nozzle_looks_like(
        caught in prop::collection::vec(20_u32..60, 1..30),
        seconds in 5_u32..300,
    ) {
        let mut farm = farm();
        farm.rigs["boom"].sets["04"].rated = None;
        let of = |caught: &mut dyn Iterator<Item = &u32>, seconds: u32| {
            let caught = caught.map(|amount| Some(q(&format!("{amount} fl oz")))).collect();
            let test = Test::Catch { time: q(&format!("{seconds} s")), caught };
            judge(&farm, "boom", &of(date(2031, 4, 2), test))
        };
        let minute = of(&mut caught.iter(), 60);
        let turned = of(&mut caught.iter().rev(), 60);
        prop_assert_eq!(states(&minute).len(), caught.len());
        prop_assert_eq!(states(&minute), states(&turned).into_iter().rev().collect::<Vec<_>>());
        let other = of(&mut caught.iter(), seconds);
        prop_assert_eq!(states(&minute), states(&other));
        let ratio = minute.flow.unwrap().ratio(other.flow.unwrap()).unwrap();
        prop_assert!((ratio - f64::from(seconds) / 60.0).abs() < 1e-9 * ratio);
    }
}

#[test]
fn a_good_boom_has_nothing_to_say() {
    let judged = judged(catch(&[40.0, 41.0, 39.5, 40.5]));
    assert_eq!(states(&judged), [State::Good; 4]);
    assert!(judged.findings.is_empty(), "{:#?}", judged.findings);
    assert!((judged.flow.unwrap().to_us_gallons_per_minute() - 0.4025).abs() < 1e-9);
    assert!(!judged.workings.is_empty());
}

// Alberta Agdex 606-1 and U. Idaho change a nozzle beyond 5 % of the average; UGA SB 16 beyond 10 %.
#[test]
fn between_the_two_rules_for_the_average_each_source_is_named() {
    // The average is 40; 42.8 is 7 % above it and 7 % above a new one.
    let judged = judged(catch(&[42.8, 39.3, 39.3, 38.6]));
    assert_eq!(states(&judged), [State::Worn, State::Good, State::Good, State::Good]);
    let [finding] = checks(&judged)[..] else { panic!("{:#?}", judged.findings) };
    assert!(finding.text.starts_with("Nozzle 1 (+7 %) lies more than 5 % above the average"), "{}", finding.text);
    assert!(finding.text.contains("University of Georgia Extension, SB 16 allows up to 10 %"), "{}", finding.text);
    let source = finding.basis.source();
    assert!(source.contains("Agdex 606-1") && source.contains("Idaho") && !source.contains("Georgia"), "{source}");
}

#[test]
fn beyond_both_rules_all_sources_stand_together() {
    // The average is 40: 35.2 is 12 % below it, and more than 10 % below a new one (USGA).
    let judged = judged(catch(&[35.2, 41.6, 41.6, 41.6]));
    assert_eq!(judged.nozzles[0].state, State::Blocked);
    let checks = checks(&judged);
    assert_eq!(checks.len(), 2, "{checks:#?}");
    assert!(checks[0].text.contains("more than 10 % below the average"), "{}", checks[0].text);
    assert!(checks[0].basis.source().contains("Georgia") && checks[0].hint.starts_with("Clean it"));
    assert!(checks[1].text.contains("less than a new one"), "{}", checks[1].text);
    assert!(checks[1].basis.source().contains("USGA"));
}

// USGA, The 10-Percent Rule: against a new nozzle. All alike lie at the average and are yet worn.
#[test]
fn a_set_that_is_worn_as_a_whole_is_seen_against_new_alone() {
    let judged = judged(catch(&[44.9, 45.0, 45.1]));
    assert_eq!(states(&judged), [State::Worn; 3]);
    let [finding] = checks(&judged)[..] else { panic!("{:#?}", judged.findings) };
    assert!(finding.text.contains("12.5 % more than new ones") && finding.text.contains("worn"), "{}", finding.text);
    assert_eq!(finding.basis, Basis::Published("USGA, The 10-Percent Rule (Daniels), 15 March 2016".to_owned()));
}

#[test]
fn without_rating_or_pressure_nothing_is_held_against_new_and_it_is_said_once() {
    for untyped in ["rating", "pressure"] {
        let mut farm = farm();
        let mut calibration = of(date(2031, 4, 2), catch(&[44.9, 45.0, 45.1]));
        match untyped {
            "rating" => farm.rigs["boom"].sets["04"].rated = None,
            _ => calibration.pressure = None,
        }
        let judged = judge(&farm, "boom", &calibration);
        assert_eq!(states(&judged), [State::Good; 3]);
        let [note] = &judged.findings[..] else { panic!("{:#?}", judged.findings) };
        assert_eq!(note.level, Level::Note);
        assert!(note.text.contains(untyped) || note.text.contains("what a new nozzle gives"), "{}", note.text);
    }
}

// Common practice, no source: sizes 04 and 05 lie a quarter apart.
#[test]
fn an_odd_size_is_told_from_a_worn_nozzle() {
    let judged = judged(catch(&[40.0, 50.0, 40.0, 40.0]));
    assert_eq!(judged.nozzles[1].state, State::OtherSize);
    // It would pull the average to 42.5 and the others 5.9 % below that; they are not blamed for it.
    let [size] = checks(&judged)[..] else { panic!("{:#?}", judged.findings) };
    assert!(size.text.contains("Nozzle 2 (+25 %)") && size.basis == Basis::Practice, "{size:#?}");
    assert!((judged.flow.unwrap().to_us_gallons_per_minute() - 0.4).abs() < 1e-9);
    // Of two nozzles the rating tells which is the odd one.
    assert_eq!(states(&self::judged(catch(&[40.0, 50.0]))), [State::Good, State::OtherSize]);
    assert_eq!(states(&self::judged(catch(&[50.0]))), [State::OtherSize]);
    // A whole set far off is not odd in any one nozzle.
    assert_eq!(states(&self::judged(catch(&[50.0, 50.0]))), [State::Worn, State::Worn]);
}

/// The middle of 20, 40, 40 and 40 is 40: the one that gives half is the odd one, and the flow is that of the others.
#[test]
fn a_nozzle_that_gives_half_is_not_taken_for_the_middle() {
    let judged = judged(catch(&[40.0, 20.0, 40.0, 40.0]));
    assert!((judged.flow.unwrap().to_us_gallons_per_minute() - 0.4).abs() < 1e-9);
    let odd: Vec<usize> =
        judged.nozzles.iter().filter(|nozzle| nozzle.state != State::Good).map(|nozzle| nozzle.place).collect();
    assert_eq!(odd, [2]);
    let steps = judged.workings.iter().flat_map(|working| &working.steps);
    assert!(steps.into_iter().any(|step| step.what == "mean of 3, 1 that is far off left out"));
}

/// Two of six that are far off are left out of the mean.
#[test]
fn nozzles_that_are_left_out_are_counted() {
    let judged = judged(catch(&[40.0, 20.0, 40.0, 40.0, 20.0, 40.0]));
    let mut steps = judged.workings.iter().flat_map(|working| &working.steps);
    assert!(steps.any(|step| step.what == "mean of 4, 2 that are far off left out"), "{:?}", judged.workings);
}

/// The middle of an even number of nozzles lies between the two in the middle: 36 and 40 make 38, from which 31 and 45 lie 18.4 % off,
/// within the 20 % of another size; from 40 the first would lie 22.5 % off, from 36 the last 25 % (arithmetic).
#[test]
fn the_middle_of_an_even_number_lies_between_two() {
    let judged = judged(catch(&[31.0, 45.0, 36.0, 40.0]));
    assert!(judged.nozzles.iter().all(|nozzle| nozzle.state != State::OtherSize), "{:?}", states(&judged));
    assert!((judged.flow.unwrap().to_us_gallons_per_minute() - 0.38).abs() < 1e-9);
}

#[test]
fn a_nozzle_that_gives_nothing_is_blocked_and_one_not_caught_is_none() {
    let mut test = catch(&[40.0, 0.0, 40.0, 40.0]);
    let Test::Catch { caught, .. } = &mut test else { panic!() };
    caught[2] = None;
    let judged = judged(test);
    assert_eq!(judged.nozzles.iter().map(|nozzle| nozzle.place).collect::<Vec<_>>(), [1, 2, 4]);
    assert_eq!(states(&judged), [State::Good, State::Blocked, State::Good]);
    let [below, new] = checks(&judged)[..] else { panic!("{:#?}", judged.findings) };
    assert!(below.text.starts_with("Nozzle 2 (-100 %) lies more than 10 % below the average"), "{}", below.text);
    assert!(new.text.contains("less than a new one"), "{}", new.text);
}

#[test]
fn what_cannot_be_reckoned_is_said_and_does_not_panic() {
    let cases = [
        Test::Catch { time: q("0 s"), caught: vec![Some(q("32 fl oz"))] },
        Test::Catch { time: q("30 s"), caught: vec![] },
        Test::Catch { time: q("30 s"), caught: vec![None, None] },
        Test::Catch { time: q("30 s"), caught: vec![Some(q("0 mL"))] },
        Test::AcreFraction { time: q("0 s"), caught: vec![q("14 fl oz")] },
        Test::AcreFraction { time: q("20 s"), caught: vec![] },
        Test::Course { length: q("0 ft"), times: vec![q("41 s")], shown: None },
        Test::Course { length: q("300 ft"), times: vec![], shown: None },
        Test::Course { length: q("300 ft"), times: vec![q("41 s"), q("0 s")], shown: Some(q("5 mph")) },
        Test::TankLevel { area: q("0 ac"), used: q("20 gal"), set_to: None },
        Test::TankLevel { area: q("2 ac"), used: q("0 gal"), set_to: Some(q("15 gal/ac")) },
    ];
    for test in cases {
        let judged = judged(test.clone());
        let [finding] = checks(&judged)[..] else { panic!("{test:?}: {:#?}", judged.findings) };
        assert!(!finding.hint.is_empty(), "{finding:?}");
        assert_eq!((judged.flow, judged.speed, judged.carrier), (None, None, None), "{test:?}");
    }
    let zero = judged(Test::TankLevel { area: q("2 ac"), used: q("30 gal"), set_to: Some(q("0 gal/ac")) });
    assert_eq!(checks(&zero).len(), 1);
    assert!((zero.carrier.unwrap().to_us_gallons_per_acre() - 15.0).abs() < 1e-9);
    assert_eq!(judge(&Farm::new("Empty"), "boom", &of(date(2031, 4, 2), catch(&[40.0]))).findings.len(), 1);
    let mut farm = farm();
    farm.rigs["boom"].sets["04"].rated = Some(Rated { flow: q("0 gal/min"), at: q("0 psi") });
    farm.rigs["boom"].sets["04"].layout = Some(Layout::Broadcast { spacing: q("0 in") });
    let judged = judge(&farm, "boom", &of(date(2031, 4, 2), catch(&[40.0, 40.0])));
    assert_eq!(judged.against_new, None);
    let acre = Test::AcreFraction { time: q("20 s"), caught: vec![q("14 fl oz")] };
    assert_eq!(judge(&farm, "boom", &of(date(2031, 4, 2), acre)).speed, None);
}

// Common practice, no source: 5 %.
#[test]
fn the_speed_shown_is_held_against_the_course() {
    // 300 ft in 41 s are 4.989 mph.
    let shown = |shown: &str| {
        judged(Test::Course { length: q("300 ft"), times: vec![q("40 s"), q("42 s")], shown: Some(q(shown)) })
    };
    assert!(shown("5.2 mph").findings.is_empty());
    let off = shown("5.3 mph");
    let [finding] = checks(&off)[..] else { panic!() };
    assert!(finding.text.contains("+6.2 %") && finding.basis == Basis::Practice, "{finding:?}");
}

#[test]
fn several_nozzles_of_a_row_are_caught_together() {
    let mut farm = farm();
    farm.rigs["boom"].sets["04"].layout = Some(Layout::Directed { rows: q("40 in"), nozzles: 2 });
    let test = Test::AcreFraction { time: q("17 s"), caught: vec![q("14 fl oz"), q("16 fl oz")] };
    let judged = judge(&farm, "boom", &of(date(2031, 4, 2), test));
    assert!((judged.carrier.unwrap().to_us_gallons_per_acre() - 15.0).abs() < 1e-9);
    // 15 fl oz of two nozzles in 17 s: 7.5 × 60 ÷ 17 ÷ 128 gal/min.
    assert!((judged.flow.unwrap().to_us_gallons_per_minute() - 7.5 * 60.0 / 17.0 / 128.0).abs() < 1e-9);
    assert!(judged.findings.iter().any(|finding| finding.text.contains("the 2 nozzles of a row gave together")));
    assert_eq!(judged.nozzles.iter().map(|nozzle| nozzle.place).collect::<Vec<_>>(), [1, 2]);
    assert!(
        judged.findings.iter().any(|finding| finding.text.starts_with("Rows 1") || finding.text.starts_with("Row "))
    );
}

#[test]
fn in_bands_the_ground_of_a_tank_level_is_that_of_the_bands_and_it_is_said() {
    let mut farm = farm();
    let tank = || of(date(2031, 4, 2), Test::TankLevel { area: q("2 ac"), used: q("30 gal"), set_to: None });
    assert!(judge(&farm, "boom", &tank()).findings.is_empty());
    farm.rigs["boom"].sets["04"].layout = Some(Layout::Band { width: q("10 in"), rows: q("30 in"), nozzles: 1 });
    let [note] = &judge(&farm, "boom", &tank()).findings[..] else { panic!() };
    assert!(note.level == Level::Note && note.text.contains("in the bands alone"));
}

fn found(farm: &Farm, words: &str) -> Option<Finding> {
    plan(farm, "p").unwrap().findings.into_iter().find(|finding| finding.text.contains(words))
}

#[test]
fn a_pass_knows_whether_there_is_a_calibration() {
    let mut farm = farm();
    assert_eq!(found(&farm, "No calibration of Boom").unwrap().level, Level::Note);
    // One that comes after the pass is none yet.
    farm.rigs["boom"].calibrations.push(of(date(2031, 6, 13), catch(&[40.0, 40.0])));
    assert!(found(&farm, "No calibration of Boom").is_some());
    // A speed says nothing of the nozzles.
    let course = Test::Course { length: q("300 ft"), times: vec![q("41 s")], shown: None };
    farm.rigs["boom"].calibrations.push(of(date(2031, 6, 1), course));
    assert!(found(&farm, "No calibration of Boom").is_some());
    farm.rigs["boom"].calibrations.push(of(date(2031, 6, 12), catch(&[40.0, 40.0])));
    assert!(found(&farm, "alibration").is_none());
    // One of another set is not one of this.
    farm.rigs["boom"].sets.insert("06".to_owned(), NozzleSet { name: "Size 06".to_owned(), ..NozzleSet::default() });
    "06".clone_into(&mut farm.passes["p"].nozzles);
    assert!(found(&farm, "No calibration of Boom with \"Size 06\"").is_some());
    // A rig without sets is not asked.
    farm.rigs["boom"].sets.clear();
    farm.rigs["boom"].calibrations.clear();
    "".clone_into(&mut farm.passes["p"].nozzles);
    assert!(found(&farm, "alibration").is_none());
}

#[test]
fn an_old_calibration_is_said() {
    let mut farm = farm();
    farm.rigs["boom"].calibrations.push(of(date(2030, 12, 31), catch(&[40.0, 40.0])));
    let old = found(&farm, "The last calibration of Boom").unwrap();
    assert_eq!((old.level, old.basis), (Level::Check, Basis::Practice));
    // 31 December to 12 June are 163 days.
    farm.practice.calibration_days = Some(163);
    assert!(found(&farm, "The last calibration of Boom").is_none());
    farm.practice.calibration_days = Some(162);
    assert!(found(&farm, "163 days before this pass; this farm keeps to 162").is_some());
    farm.rigs["boom"].calibrations[0].date = date(2031, 1, 1);
    farm.practice.calibration_days = None;
    assert!(found(&farm, "The last calibration of Boom").is_none());
}

#[test]
fn the_latest_of_each_way_speaks_and_a_newer_one_of_that_way_silences_it() {
    let mut farm = farm();
    farm.rigs["boom"].calibrations.push(of(date(2031, 4, 2), catch(&[46.0, 38.0, 38.0, 38.0])));
    let tank = Test::TankLevel { area: q("2 ac"), used: q("30 gal"), set_to: Some(q("15 gal/ac")) };
    farm.rigs["boom"].calibrations.push(of(date(2031, 5, 2), tank));
    let worn = found(&farm, "The calibration of Boom of 2 April 2031 (catch at the nozzles) found").unwrap();
    assert_eq!(worn.level, Level::Check);
    farm.rigs["boom"].calibrations.push(of(date(2031, 5, 3), catch(&[40.0, 40.0, 40.0, 40.0])));
    assert!(found(&farm, "found").is_none());
}

#[test]
fn the_card_and_the_setting_can_ask_for_the_latest() {
    let mut farm = farm();
    assert!(latest(&farm.rigs["boom"], "04", date(2031, 6, 12)).is_none());
    farm.rigs["boom"].calibrations.push(of(date(2031, 5, 2), catch(&[42.0, 42.0])));
    farm.rigs["boom"].calibrations.push(of(date(2031, 4, 2), catch(&[40.0, 40.0])));
    let latest = latest(&farm.rigs["boom"], "04", date(2031, 6, 12)).unwrap();
    assert_eq!(latest.date, date(2031, 5, 2));
    let (law, day) = measured_flow(&farm, "boom", "04", date(2031, 6, 12)).unwrap();
    assert!((law.flow.to_us_gallons_per_minute() - 0.42).abs() < 1e-9 && (law.at.to_psi() - 40.0).abs() < 1e-9);
    assert_eq!(day, date(2031, 5, 2));
    assert!(measured_flow(&farm, "boom", "06", date(2031, 6, 12)).is_none());
    assert!(measured_flow(&farm, "boom", "04", date(2031, 4, 1)).is_none());
    farm.rigs["boom"].calibrations[0].pressure = None;
    let (law, _) = measured_flow(&farm, "boom", "04", date(2031, 6, 12)).unwrap();
    assert!((law.flow.to_us_gallons_per_minute() - 0.40).abs() < 1e-9);
}

// Arithmetic: 43,560 ft² ÷ 128 over a row of 30 in are 136.125 ft, whatever is typed for a band wider than that.
#[test]
fn a_band_of_the_course_ends_where_the_rows_do() {
    let mut farm = farm();
    let mut course = |width: &str| {
        farm.rigs["boom"].sets["04"].layout = Some(Layout::Band { width: q(width), rows: q("30 in"), nozzles: 1 });
        let test = Test::AcreFraction { time: q("23 s"), caught: vec![q("20 fl oz")] };
        judge(&farm, "boom", &of(date(2031, 4, 2), test)).speed.unwrap().to_metres_per_second() * 23.0 / 0.3048
    };
    assert!((course("40 in") - 136.125).abs() < 1e-6);
    assert!((course("15 in") - 272.25).abs() < 1e-6);
}
