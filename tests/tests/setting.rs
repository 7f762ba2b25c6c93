//! How a nozzle set is set for a pass, and which set does it best. Figures beside a check are by hand, from the published
//! formulas gal/min = gal/ac × mph × inches ÷ 5940 (University of Illinois, 60 Ways, no. 55) and flow by the root of pressure.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use jiff::civil::date;
use proptest::prelude::*;
use tankard_core::farm::{
    Calibration, CarrierKind, ClassAt, Droplets, Farm, Field, Formulation, Law, Layout, Line, NozzleSet, Pass, Product,
    ProductKind, Pulse, Rated, Rig, Says, Statement, Test, Water, When,
};
use tankard_core::finding::{Basis, Finding, Level};
use tankard_core::plan::{Plan, plan};
use tankard_core::quantity::{AsTyped, CarrierRate, Length, Pressure, Quantity, Speed, Units};
use tankard_core::rig::flow;
use tankard_core::rig::setting::{Fit, Setting};
use tankard_tests::cases;

fn q<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

/// A nozzle of a size 20 in apart, 20 to 80 psi: very coarse at 20 psi, coarse at 30 and 50, medium at 60, fine at 80.
fn set(size: &str, flow: &str) -> NozzleSet {
    let line = |at: &str, class| ClassAt { at: q(at), class };
    NozzleSet {
        name: format!("Size {size}"),
        size: size.to_owned(),
        rated: Some(Rated { flow: q(flow), at: q("40 psi") }),
        layout: Some(Layout::Broadcast { spacing: q("20 in") }),
        least: Some(q("20 psi")),
        most: Some(q("80 psi")),
        droplets: vec![
            line("20 psi", Droplets::VeryCoarse),
            line("30 psi", Droplets::Coarse),
            line("50 psi", Droplets::Coarse),
            line("60 psi", Droplets::Medium),
            line("80 psi", Droplets::Fine),
        ],
        ..NozzleSet::default()
    }
}

/// 80 ac, 15 gal/ac, a rig with one set of size 06. At 11.88 mph a nozzle must give 15 × 11.88 × 20 ÷ 5940 = 0.6 gal/min: its
/// rating, at 40 psi.
fn farm() -> Farm {
    let mut farm = Farm::new("Setting");
    farm.fields.insert("f".to_owned(), Field::new("Mill field", q("80 ac")));
    farm.waters.insert("w".to_owned(), Water { name: "Well".to_owned(), ..Water::default() });
    let mut rig = Rig::new("Boom", q("1200 gal"));
    rig.boom = Some(q("120 ft"));
    rig.efficiency = Some(q("65 %"));
    rig.speed = Some(q("11.88 mph"));
    rig.sets.insert("s06".to_owned(), set("06", "0.6 gal/min"));
    farm.rigs.insert("r".to_owned(), rig);
    farm.products.insert("a".to_owned(), Product::new("Alpha 480 SL (demo)", ProductKind::Herbicide, Formulation::SL));
    farm.products.insert("b".to_owned(), Product::new("Beta 480 SL (demo)", ProductKind::Herbicide, Formulation::SL));
    let mut pass = Pass::new("Pass", date(2031, 6, 12));
    pass.fields.push("f".to_owned());
    "w".clone_into(&mut pass.water);
    "r".clone_into(&mut pass.rig);
    pass.carrier = Some(q("15 gal/ac"));
    pass.mix.push(Line::new("a", q("32 fl oz/ac")));
    pass.mix.push(Line::new("b", q("32 fl oz/ac")));
    farm.passes.insert("p".to_owned(), pass);
    farm
}

fn says(farm: &mut Farm, product: &str, says: Says) {
    farm.products[product].label.push(Statement::new(says, "page 3"));
}

fn droplets(finest: Droplets, coarsest: Option<Droplets>) -> Says {
    Says::Droplets { finest, coarsest }
}

fn planned(farm: &Farm) -> Plan {
    plan(farm, "p").unwrap()
}

fn setting(farm: &Farm) -> Setting {
    planned(farm).setting.unwrap()
}

fn found(farm: &Farm, level: Level, words: &str) -> Option<Finding> {
    planned(farm).findings.into_iter().find(|finding| finding.level == level && finding.text.contains(words))
}

fn must(farm: &Farm, level: Level, words: &str) -> Finding {
    found(farm, level, words).unwrap_or_else(|| panic!("no {level:?} \"{words}\" in {:#?}", planned(farm).findings))
}

fn must_not(farm: &Farm, words: &str) {
    for level in [Level::Stop, Level::Check, Level::Note] {
        assert_eq!(found(farm, level, words), None);
    }
}

fn near(found: f64, expected: f64) {
    assert!((found - expected).abs() < 1e-6 * expected.abs(), "{found}, expected {expected}");
}

fn mph(speed: Speed) -> f64 {
    speed.to_miles_per_hour()
}

#[test]
fn flow_and_pressure_of_a_setting() {
    let mut farm = farm();
    let found = setting(&farm);
    near(found.flow.unwrap().to_us_gallons_per_minute(), 0.6);
    near(found.pressure.unwrap().to_psi(), 40.0);
    assert_eq!(found.classes.unwrap().words(), "coarse");
    // No label asks anything: the speeds of 20 and 80 psi, which are 1/√2 and √2 of that of 40 psi.
    let speeds = found.speeds.unwrap();
    near(mph(speeds.least), 11.88 / 2_f64.sqrt());
    near(mph(speeds.most), 11.88 * 2_f64.sqrt());
    near(found.pressures.unwrap().least.to_psi(), 20.0);
    near(found.pressures.unwrap().most.to_psi(), 80.0);
    // Doubling the speed takes four times the pressure.
    farm.passes["p"].speed = Some(q("23.76 mph"));
    near(setting(&farm).pressure.unwrap().to_psi(), 160.0);
    must(&farm, Level::Check, "needs 160 psi, above the 80 psi of the nozzle maker's table");
    farm.passes["p"].speed = Some(q("5 mph"));
    let low = must(&farm, Level::Check, "below the 20 psi");
    assert!(low.hint.contains("from 8.5 mph to 16.8 mph"), "8.4004 and 16.8009 mph, rounded inwards: {}", low.hint);
    farm.units = Units::Metric;
    let low = must(&farm, Level::Check, "below the 1.38 bar");
    assert!(low.hint.contains("from 13.6 km/h to 27 km/h"), "13.519 and 27.038 km/h: {}", low.hint);
}

#[test]
fn a_rig_without_sets_and_a_suited_set_say_nothing() {
    let mut farm = farm();
    // A rig with sets is asked for its calibration and for what stays in it; that is not its setting.
    let of_setting = |text: &String| !text.starts_with("No calibration") && !text.starts_with("What stays");
    let text = |farm: &Farm| -> Vec<String> {
        planned(farm).findings.iter().map(|found| found.text.clone()).filter(of_setting).collect()
    };
    let with = text(&farm);
    farm.rigs["r"].sets.clear();
    assert_eq!(planned(&farm).setting, None);
    assert!(planned(&farm).sets.is_empty());
    assert_eq!(text(&farm), with);
    farm.passes["p"].nozzles = "s05".to_owned();
    must(&farm, Level::Stop, "nozzle set \"s05\"");
}

#[test]
fn bands_and_directed_nozzles() {
    let mut farm = farm();
    let mut layout = |layout| {
        farm.rigs["r"].sets["s06"].layout = Some(layout);
        farm.clone()
    };
    // A band of 10 in from two nozzles: 15 × 11.88 × 5 ÷ 5940.
    let band = layout(Layout::Band { width: q("10 in"), rows: q("30 in"), nozzles: 2 });
    near(setting(&band).flow.unwrap().to_us_gallons_per_minute(), 0.15);
    near(planned(&band).area.to_acres(), 80.0 / 3.0);
    // Three nozzles to a row stand for 10 in each: 15 × 11.88 × 10 ÷ 5940.
    let directed = layout(Layout::Directed { rows: q("30 in"), nozzles: 3 });
    near(setting(&directed).flow.unwrap().to_us_gallons_per_minute(), 0.3);
    near(planned(&directed).area.to_acres(), 80.0);
    let wide = layout(Layout::Band { width: q("40 in"), rows: q("30 in"), nozzles: 1 });
    must(&wide, Level::Check, "overlap");
    near(setting(&wide).flow.unwrap().to_us_gallons_per_minute(), 0.9);
    let none = layout(Layout::Directed { rows: q("30 in"), nozzles: 0 });
    assert_eq!(setting(&none).flow, None);
    must(&none, Level::Note, "Size 06 lacks the layout of its nozzles");
}

#[test]
fn heavier_carriers_take_more_pressure() {
    let mut farm = farm();
    farm.passes["p"].carrier_kind = CarrierKind::UreaAmmoniumNitrate;
    near(setting(&farm).pressure.unwrap().to_psi(), 40.0);
    let open = must(&farm, Level::Check, "density of the urea ammonium nitrate is not typed");
    assert!(open.hint.contains("10.65 lb/gal for 28-0-0 and 11.06 lb/gal for 32-0-0"), "{}", open.hint);
    // University of Nebraska-Lincoln, CropWatch, 2016: 28-0-0 has a factor of 1.13, so 1.13² of the pressure.
    farm.passes["p"].density = Some(q("10.65 lb/gal"));
    let pressure = setting(&farm).pressure.unwrap().to_psi();
    assert!((pressure / 40.0 - 1.13 * 1.13).abs() < 0.005, "{pressure}");
    near(setting(&farm).flow.unwrap().to_us_gallons_per_minute(), 0.6);
    must_not(&farm, "density");
    let working = planned(&farm).workings.into_iter().find(|working| working.title.starts_with("Setting")).unwrap();
    assert!(working.steps.iter().any(|step| step.what.contains("10.65 lb/gal ÷ 8.34 lb/gal") && step.result == "1.13"));
    assert!(working.steps.iter().any(|step| step.what.contains("which holds for water")));
}

#[test]
fn the_flow_measured_takes_the_place_of_the_rating() {
    let mut farm = farm();
    let rig = &mut farm.rigs["r"];
    rig.measured_flow = true;
    let mut calibration = Calibration {
        date: date(2031, 5, 2),
        set: "s06".to_owned(),
        by: String::new(),
        pressure: None,
        // 0.6 and 0.66 gal in a minute: 0.63 on average, 5 % above the rating.
        test: Test::Catch { time: q("1 min"), caught: vec![Some(q("0.6 gal")), None, Some(q("0.66 gal"))] },
        note: String::new(),
    };
    rig.calibrations.push(calibration.clone());
    must(&farm, Level::Note, "No catch with a pressure");
    near(setting(&farm).pressure.unwrap().to_psi(), 40.0);
    calibration.pressure = Some(q("40 psi"));
    farm.rigs["r"].calibrations.push(calibration.clone());
    near(setting(&farm).pressure.unwrap().to_psi(), 40.0 / (1.05 * 1.05));
    must_not(&farm, "No catch");
    // Of another set, it says nothing of this one.
    calibration.set = "s05".to_owned();
    farm.rigs["r"].calibrations = vec![calibration];
    near(setting(&farm).pressure.unwrap().to_psi(), 40.0);
    farm.rigs["r"].measured_flow = false;
    must_not(&farm, "No catch");
}

#[test]
fn the_flow_measured_is_that_of_the_calibration() {
    let mut farm = farm();
    farm.rigs["r"].measured_flow = true;
    let mut at = |layout: Layout, day, test| {
        farm.rigs["r"].sets["s06"].layout = Some(layout);
        let (set, by, note) = ("s06".to_owned(), String::new(), String::new());
        farm.rigs["r"].calibrations = vec![Calibration { date: day, set, by, pressure: Some(q("40 psi")), test, note }];
        setting(&farm).pressure.unwrap().to_psi()
    };
    // Two nozzles to a row of 30 in stand for 15 in each and must give 0.45 gal/min; a row was caught with 1.2 in a minute.
    let row = |day| (Layout::Directed { rows: q("30 in"), nozzles: 2 }, day, q("1 min"), vec![q("1.2 gal")]);
    let (layout, day, time, caught) = row(date(2031, 5, 2));
    near(at(layout, day, Test::AcreFraction { time, caught }), 40.0 * (0.45_f64 / 0.6).powi(2));
    // What is caught after the day of the pass says nothing of it, and the rating stands.
    let (layout, day, time, _) = row(date(2031, 6, 13));
    near(at(layout, day, Test::AcreFraction { time, caught: vec![q("0.8 gal")] }), 40.0 * (0.45_f64 / 0.6).powi(2));
    // A blocked nozzle does not draw the others down.
    let caught = ["0.6 gal", "0.6 gal", "0.1 gal", "0.6 gal"].map(|caught| Some(q(caught))).to_vec();
    let all = Layout::Broadcast { spacing: q("20 in") };
    near(at(all, date(2031, 6, 12), Test::Catch { time: q("1 min"), caught }), 40.0);
}

/// All steps of the setting, and what each comes to.
fn worked(farm: &Farm) -> Vec<(String, String)> {
    let working = planned(farm).workings.into_iter().find(|working| working.title.starts_with("Setting")).unwrap();
    working.steps.into_iter().map(|step| (step.what, step.result)).collect()
}

#[test]
fn the_steps_of_the_setting_add_up_in_all_units() {
    // 0.3 US gal/min are 1.1356 L/min and 0.2498 imp gal/min; 5 in are 127 mm.
    let mut farm = farm();
    farm.rigs["r"].sets["s06"].layout = Some(Layout::Band { width: q("10 in"), rows: q("30 in"), nozzles: 2 });
    farm.passes["p"].speed = Some(q("23.76 mph"));
    for (units, flow, width) in [
        (Units::UsCustomary, "0.3 gal/min", "5 in"),
        (Units::Imperial, "0.25 imp gal/min", "5 in"),
        (Units::Metric, "1.136 L/min", "0.127 m"),
    ] {
        farm.units = units;
        let steps = worked(&farm);
        assert!(steps.iter().any(|(what, result)| result == flow && what.contains("for each nozzle")), "{steps:?}");
        assert!(steps.iter().any(|(what, result)| result == width && what.contains("÷ 2 nozzles")), "{steps:?}");
    }
    // The rating of 0.6 US gal/min is 0.49961 imp gal/min, and a tenth more speed wants 0.27479.
    farm.units = Units::Imperial;
    farm.passes["p"].speed = Some(q("26.136 mph"));
    let steps = worked(&farm);
    assert!(steps.iter().any(|(what, _)| what.contains("(0.275 imp gal/min ÷ 0.5 imp gal/min)²")), "{steps:?}");
}

#[test]
fn a_pressure_that_gives_another_volume_is_said() {
    let mut farm = farm();
    // The usual pressure of the rig is where it starts from, not what it is set to.
    farm.rigs["r"].pressure = Some(q("60 psi"));
    must_not(&farm, "is planned");
    // 44 psi give √1.1 = 4.9 % more, 45 psi 6.1 %.
    farm.passes["p"].pressure = Some(q("44 psi"));
    must_not(&farm, "is planned");
    farm.passes["p"].pressure = Some(q("45 psi"));
    let said = must(&farm, Level::Check, "Size 06 gives 15.9 gal/ac with 45 psi at 11.9 mph; 15 gal/ac is planned");
    assert_eq!(said.hint, "Set 40 psi, or drive 12.6 mph with 45 psi.");
}

#[test]
fn pulsed_valves_hold_the_pressure() {
    let mut farm = farm();
    farm.rigs["r"].pulse = Some(Pulse { least: q("30 %"), most: q("100 %") });
    assert_eq!(setting(&farm).duty, None);
    must(&farm, Level::Note, "Size 06 lacks the pressure it is held at");
    // At 40 psi a nozzle gives 0.6 gal/min; at half the speed the valves stand open half the time.
    farm.rigs["r"].pressure = Some(q("40 psi"));
    farm.passes["p"].speed = Some(q("5.94 mph"));
    let half = setting(&farm);
    near(half.duty.unwrap().to_percent(), 50.0);
    near(half.pressure.unwrap().to_psi(), 40.0);
    near(mph(half.speeds.unwrap().least), 0.3 * 11.88);
    near(mph(half.speeds.unwrap().most), 11.88);
    assert!(half.curve.iter().all(|point| point.pressure == half.pressure.unwrap() && point.duty.is_some()));
    // The picture runs evenly from a fifth below what fits to a fifth above.
    let speeds: Vec<f64> = half.curve.iter().map(|point| mph(point.speed)).collect();
    near(speeds[0], 0.8 * 0.3 * 11.88);
    near(*speeds.last().unwrap(), 1.2 * 11.88);
    let step = (speeds.last().unwrap() - speeds[0]) / (speeds.len() - 1) as f64;
    speeds.windows(2).for_each(|pair| near(pair[1] - pair[0], step));
    must_not(&farm, "stand open");
    farm.passes["p"].speed = Some(q("13 mph"));
    must(&farm, Level::Check, "the valves would stand open 109 % of the time; they may from 30 % to 100 %");
    farm.passes["p"].speed = Some(q("5.94 mph"));
    farm.passes["p"].carrier_kind = CarrierKind::UreaAmmoniumNitrate;
    farm.passes["p"].density = Some(q("10.65 lb/gal"));
    // University of Nebraska-Lincoln, CropWatch, 2016: 28-0-0 flows through a nozzle as water divided by 1.13.
    let heavy = setting(&farm);
    assert!((heavy.duty.unwrap().to_percent() / 50.0 - 1.13).abs() < 0.005, "{:?}", heavy.duty);
    farm.passes["p"].carrier_kind = CarrierKind::Water;
    farm.passes["p"].density = None;
    // 0.4 % too fast: nothing stands open longer than always.
    farm.passes["p"].speed = Some(q("11.93 mph"));
    must(&farm, Level::Check, "the valves would stand open just over 100 % of the time; they may from 30 % to 100 %");
    assert_eq!(setting(&farm).duty_words().unwrap(), "just over 100 %");
    farm.passes["p"].speed = Some(q("3.55 mph"));
    must(&farm, Level::Check, "stand open just under 30 % of the time");
    assert_eq!(setting(&farm).duty_words().unwrap(), "30 %");
    farm.passes["p"].speed = Some(q("3 mph"));
    must(&farm, Level::Check, "stand open 25 %");
    farm.passes["p"].pressure = Some(q("90 psi"));
    must(&farm, Level::Check, "is held at 90 psi, above the 80 psi");
    // At 70 psi the droplets are fine to medium; slower does not help, less pressure does.
    farm.passes["p"].pressure = Some(q("70 psi"));
    farm.passes["p"].speed = None;
    says(&mut farm, "a", droplets(Droplets::Coarse, None));
    let set = planned(&farm).sets.remove(0);
    assert_eq!((set.fit, set.speed, set.setting.speeds), (Fit::No, None, None));
    assert!(
        set.reasons.iter().any(|why| why.0 == "With a pressure from 20 psi to 50 psi it would do"),
        "{:?}",
        set.reasons
    );
    farm.passes["p"].pressure = Some(q("50 psi"));
    assert_eq!(planned(&farm).sets[0].fit, Fit::Suits);
}

#[test]
fn labels_and_the_droplets_of_the_setting() {
    let mut farm = farm();
    says(&mut farm, "a", droplets(Droplets::Coarse, None));
    must_not(&farm, "asks for coarse");
    let speeds = setting(&farm).speeds.unwrap();
    // Coarse up to 50 psi, as listed; from 50 to 60 psi it may be medium.
    near(mph(speeds.most), 11.88 * (50_f64 / 40.0).sqrt());
    farm.passes["p"].speed = Some(q("14 mph")); // 55.6 psi
    let may = must(&farm, Level::Check, "those of this pass are medium to coarse");
    assert_eq!(may.basis, Basis::Label("Alpha 480 SL (demo), page 3".to_owned()));
    farm.passes["p"].speed = Some(q("15.5 mph")); // 68 psi
    must(&farm, Level::Stop, "those of this pass are fine to medium, which is finer");
    farm.passes["p"].speed = Some(q("8 mph")); // 18 psi, below the table
    must(&farm, Level::Check, "The droplet table of Size 06 does not reach 18 psi");
    // What is typed for the pass beats the table, and a contradiction is said.
    farm.passes["p"].speed = None;
    farm.passes["p"].droplets = Some(Droplets::Medium);
    must(&farm, Level::Stop, "those of this pass are medium, which is finer");
    must(&farm, Level::Note, "typed as medium; the table of Size 06 has coarse at 40 psi");
    // A class typed that suits the label does not silence a table that does not.
    farm.passes["p"].droplets = Some(Droplets::Coarse);
    farm.passes["p"].speed = Some(q("16.8 mph")); // 80 psi
    let hidden = must(
        &farm,
        Level::Check,
        "typed as coarse; the table of Size 06 has fine to medium at 80 psi, and the label asks for coarse or coarser",
    );
    assert_eq!(hidden.basis, Basis::Label("Alpha 480 SL (demo), page 3".to_owned()));
    farm.passes["p"].speed = None;
    farm.passes["p"].droplets = None;
    farm.rigs["r"].sets["s06"].droplets.clear();
    must(&farm, Level::Check, "The droplet classes of Size 06 are not typed");
    assert_eq!(planned(&farm).sets[0].fit, Fit::NotKnown);
    // The rig's own class speaks only where it has no sets.
    farm.rigs["r"].droplets = Some(Droplets::Fine);
    must(&farm, Level::Check, "The droplet classes of Size 06 are not typed");
    farm.rigs["r"].sets.clear();
    must(&farm, Level::Stop, "those of this pass are fine");
}

/// At 11.88 mph droplets are coarse; at 14 mph, 55.6 psi, they lie between the lines of 50 and 60 psi and may be medium or coarse.
#[test]
fn a_limit_for_finer_droplets_is_in_doubt_where_they_may_be_either() {
    for (when, coarse, either) in [
        (When::DropletsFinerThan(Droplets::Coarse), None, Some(Level::Check)),
        (When::DropletsAtLeast(Droplets::Coarse), Some(Level::Stop), Some(Level::Check)),
        (When::DropletsFinerThan(Droplets::Medium), None, None),
        (When::DropletsAtLeast(Droplets::Medium), Some(Level::Stop), Some(Level::Stop)),
    ] {
        let mut farm = farm();
        says(&mut farm, "a", Says::GroundSpeed { most: q("5 mph") });
        farm.products["a"].label[0].when.push(when.clone());
        let told = |farm: &Farm| {
            planned(farm).findings.into_iter().find(|one| one.text.contains("5 mph")).map(|one| one.level)
        };
        assert_eq!(told(&farm), coarse, "{when:?}");
        farm.passes["p"].speed = Some(q("14 mph"));
        assert_eq!(told(&farm), either, "{when:?}");
    }
}

/// The curve tells which of its points keep the range of pressure and the labels' speed.
#[test]
fn points_of_the_curve_are_allowed_inside_every_limit() {
    let mut farm = farm();
    says(&mut farm, "a", Says::GroundSpeed { most: q("13 mph") });
    let curve = setting(&farm).curve;
    let (mut allowed, mut fast) = (0, 0);
    for point in &curve {
        let psi = point.pressure.to_psi();
        let inside = (20.0..=80.0).contains(&psi) && mph(point.speed) <= 13.0;
        assert_eq!(point.allowed, inside, "{psi} psi, {} mph", mph(point.speed));
        allowed += usize::from(inside);
        fast += usize::from(psi < 20.0);
    }
    assert!(allowed > 0 && fast > 0 && allowed + fast < curve.len());
}

#[test]
fn a_coarsest_class_is_a_least_speed() {
    let mut farm = farm();
    says(&mut farm, "a", droplets(Droplets::Fine, Some(Droplets::Medium)));
    must(&farm, Level::Stop, "those of this pass are coarse, which is coarser");
    let speeds = setting(&farm).speeds.unwrap();
    near(mph(speeds.least), 11.88 * 1.5_f64.sqrt());
    near(mph(speeds.most), 11.88 * 2_f64.sqrt());
    says(&mut farm, "b", droplets(Droplets::Coarse, None));
    assert_eq!(setting(&farm).speeds, None, "no class suits both");
    assert_eq!(planned(&farm).sets[0].fit, Fit::No);
}

#[test]
fn ground_speed_and_boom_height_are_held_against_the_labels() {
    let mut farm = farm();
    says(&mut farm, "a", Says::GroundSpeed { most: q("11 mph") });
    let fast = must(&farm, Level::Stop, "asks for at most 11 mph over ground; the pass is driven at 11.9 mph");
    assert_eq!(fast.basis, Basis::Label("Alpha 480 SL (demo), page 3".to_owned()));
    near(mph(setting(&farm).speeds.unwrap().most), 11.0);
    near(setting(&farm).pressures.unwrap().most.to_psi(), 40.0 * (11.0_f64 / 11.88).powi(2));
    farm.passes["p"].speed = Some(q("11 mph"));
    must_not(&farm, "over ground");
    farm.passes["p"].speed = None;
    farm.rigs["r"].speed = None;
    must(&farm, Level::Check, "The speed of this pass is not typed; the labels ask for at most 11 mph");

    says(&mut farm, "b", Says::BoomHeight { most: q("24 in") });
    must(&farm, Level::Check, "The height of the boom is not typed; the labels ask for at most 24 in");
    farm.rigs["r"].height = Some(q("30 in"));
    must(&farm, Level::Stop, "nozzles at most 24 in above what is sprayed; those of this pass are 30 in");
    farm.passes["p"].height = Some(q("24 in"));
    must_not(&farm, "above what is sprayed");
    must_not(&farm, "height");
}

#[test]
fn a_law_on_droplets_and_speed_chooses_among_the_sets_as_labels_do() {
    let law = |says| Law {
        name: "Spray rule 12".to_owned(),
        since: None,
        until: None,
        about: String::new(),
        says: Statement::new(says, ""),
    };
    let mut farm = three_sets();
    farm.laws.insert("l".to_owned(), law(droplets(Droplets::Coarse, None)));
    let sets = planned(&farm).sets;
    let chosen = sets.iter().find(|set| set.setting.set == "s04").unwrap();
    assert_eq!(chosen.fit, Fit::AtAnotherSpeed);
    let (words, basis) = &sets[0].reasons[0];
    assert!(words.ends_with("coarse, as the law asks"), "{words}");
    assert_eq!(*basis, Basis::Law("Spray rule 12".to_owned()));
    farm.laws.insert("s".to_owned(), law(Says::GroundSpeed { most: q("11 mph") }));
    let sets = planned(&farm).sets;
    let slower = sets.iter().flat_map(|set| &set.reasons).find(|(words, _)| words.contains("The law asks"));
    assert_eq!(slower.unwrap().0, "The law asks for at most 11 mph over ground");
}

/// The sets 04, 06 and 08 at 12 mph: 0.606 gal/min take 91.8 psi from size 04, 40.8 from 06 and 22.95 from 08.
fn three_sets() -> Farm {
    let mut farm = farm();
    farm.passes["p"].speed = Some(q("12 mph"));
    let sets = &mut farm.rigs["r"].sets;
    sets.clear();
    sets.insert("s04".to_owned(), set("04", "0.4 gal/min"));
    sets.insert("s08".to_owned(), set("08", "0.8 gal/min"));
    sets.insert("s06".to_owned(), set("06", "0.6 gal/min"));
    farm
}

fn order(farm: &Farm) -> Vec<(String, Fit)> {
    planned(farm).sets.iter().map(|set| (set.setting.set.clone(), set.fit)).collect()
}

/// At 12 mph 0.606 gal/min take 58.8 psi from size 05, 29 % of the way from the middle of 20 to 80 psi to its end; 22.95 psi from size 08,
/// 90 % of that way; and 40.8 psi from size 06, 59 % of the way in 40 to 44 psi. Size 03 is at its end at 8.4 mph, 30 % too slow, and size
/// 10 at 14 mph, 17 % too fast.
#[test]
fn sets_are_ranked_by_how_far_they_lie_off_the_middle() {
    let mut farm = three_sets();
    let sets = &mut farm.rigs["r"].sets;
    sets.clear();
    // The first counts as fitted, which decides before.
    for (id, size, flow) in [
        ("fitted", "02", "0.2"),
        ("s08", "08", "0.8"),
        ("s06", "06", "0.6"),
        ("s03", "03", "0.3"),
        ("s05", "05", "0.5"),
        ("s10", "10", "1.0"),
    ] {
        sets.insert(id.to_owned(), set(size, &format!("{flow} gal/min")));
    }
    (sets["s06"].least, sets["s06"].most) = (Some(q("40 psi")), Some(q("44 psi")));
    let named = |id: &str, fit| (id.to_owned(), fit);
    let order: Vec<_> = order(&farm).into_iter().filter(|(id, _)| id != "fitted").collect();
    assert_eq!(
        order,
        [
            named("s05", Fit::Suits),
            named("s06", Fit::Suits),
            named("s08", Fit::Suits),
            named("s10", Fit::AtAnotherSpeed),
            named("s03", Fit::AtAnotherSpeed)
        ]
    );
}

#[test]
fn sets_are_ranked_with_reasons() {
    let mut farm = three_sets();
    says(&mut farm, "a", droplets(Droplets::Coarse, None));
    says(&mut farm, "b", droplets(Droplets::Coarse, Some(Droplets::ExtremelyCoarse)));
    let named = |id: &str, fit| (id.to_owned(), fit);
    // The first set of the rig counts as fitted: size 04, which does not do it at 12 mph.
    assert_eq!(
        order(&farm),
        [named("s06", Fit::Suits), named("s08", Fit::Suits), named("s04", Fit::AtAnotherSpeed)],
        "41 psi stands nearer the middle of 20 to 80 psi than 23 psi"
    );
    let sets = planned(&farm).sets;
    assert_eq!(sets[0].reasons[0].0, "Size 06 gives 15 gal/ac at 12 mph with 41 psi; coarse, as both labels ask");
    assert!(matches!(sets[0].reasons[0].1, Basis::Label(_)));
    // Size 04 is coarse up to 50 psi: 0.4 × √1.25 = 0.4472 gal/min, 8.855 mph; a person drives 8.8.
    near(mph(sets[2].speed.unwrap()), 8.8);
    assert!(sets[2].chosen && !sets[0].chosen);
    assert!(sets[2].reasons.iter().any(|why| why.0.contains("needs 92 psi, above the 80 psi")));
    let better =
        must(&farm, Level::Check, "Size 04 does not suit this pass as planned; another set does. Size 06 gives");
    assert_eq!(better.hint, "Fit Size 06 and choose it for the pass.");
    // What is fitted comes first among those that suit.
    farm.rigs["r"].fitted = "s08".to_owned();
    assert_eq!(order(&farm)[0].0, "s08");
    must_not(&farm, "another set does");
    // What lacks its rating comes after those that do it, before those that do not.
    farm.rigs["r"].sets["s06"].rated = None;
    let medium = |sets: &mut NozzleSet| sets.droplets.iter_mut().for_each(|line| line.class = Droplets::Medium);
    medium(&mut farm.rigs["r"].sets["s04"]);
    assert_eq!(order(&farm), [named("s08", Fit::Suits), named("s06", Fit::NotKnown), named("s04", Fit::No)]);
    assert!(planned(&farm).sets[1].reasons[0].0.contains("it lacks its rating"));
    farm.passes["p"].nozzles = "s06".to_owned();
    let lacks = must(&farm, Level::Note, "Size 06 lacks its rating");
    assert!(lacks.hint.contains("0.6 gal/min at 40 psi or 2.4 L/min at 3 bar"), "{}", lacks.hint);
}

#[test]
fn a_rating_that_is_not_of_its_size_is_said() {
    let mut farm = farm();
    let rated = &mut farm.rigs["r"].sets["s06"];
    // The other definition of the same size is no mistake.
    rated.rated = Some(Rated { flow: q("2.4 L/min"), at: q("3 bar") });
    must_not(&farm, "typed as size");
    farm.rigs["r"].sets["s06"].rated = Some(Rated { flow: q("0.5 gal/min"), at: q("40 psi") });
    let off =
        must(&farm, Level::Check, "typed as size 06, which gives 0.6 gal/min at 40 psi; its rating is 0.5 gal/min");
    assert_eq!(off.basis, Basis::Practice, "how far a nozzle may be off its size is from no publication");
}

#[test]
fn nothing_typed_wrongly_can_stop_the_program() {
    for (flow, at) in [("0 gal/min", "40 psi"), ("0.6 gal/min", "0 psi")] {
        let mut farm = three_sets();
        farm.rigs["r"].sets["s04"].rated = Some(Rated { flow: q(flow), at: q(at) });
        assert_eq!(setting(&farm).pressure, None);
        must(&farm, Level::Note, "Size 04 lacks a rating above nothing");
    }
    let mut farm = three_sets();
    let one = &mut farm.rigs["r"].sets["s04"];
    (one.least, one.most) = (Some(q("80 psi")), Some(q("20 psi")));
    must(&farm, Level::Note, "Size 04 lacks a least pressure below its most");
    farm.passes["p"].pressure = Some(q("0 psi"));
    farm.passes["p"].density = Some(q("0 lb/gal"));
    assert!(setting(&farm).pressure.is_some());
    farm.passes["p"].speed = Some(q("0 mph"));
    assert_eq!(planned(&farm).setting, None);
    must(&farm, Level::Check, "The speed is typed as nothing");
}

proptest! {
    #![proptest_config(cases(256))]

    /// What all nozzles give in the time of driving is what the plan puts on the ground, however they stand.
    #[test]
    fn what_leaves_the_nozzles_lies_on_the_ground(
        layout in 0..3_usize, gallons in 2_u32..40, tenths in 20_u32..250, inches in 4_u32..30, nozzles in 1_u32..4, per in 4_u32..90,
    ) {
        let mut farm = farm();
        let (width, rows) = (f64::from(inches), 30.0);
        farm.rigs["r"].sets["s06"].layout = Some(match layout {
            0 => Layout::Broadcast { spacing: q(&format!("{inches} in")) },
            1 => Layout::Band { width: q(&format!("{inches} in")), rows: q("30 in"), nozzles },
            _ => Layout::Directed { rows: q("30 in"), nozzles },
        });
        farm.passes["p"].carrier = Some(q(&format!("{gallons} gal/ac")));
        farm.passes["p"].speed = Some(q(&format!("{}.{} mph", tenths / 10, tenths % 10)));
        // `per` rows or, broadcast, `per` nozzles make the boom.
        let (count, boom) = match layout {
            0 => (per, f64::from(per) * width),
            _ => (per * nozzles, f64::from(per) * rows),
        };
        let plan = planned(&farm);
        let setting = plan.setting.unwrap();
        let covered = plan.fields[0].covered.to_square_metres();
        let seconds = covered / (setting.speed.to_metres_per_second() * Length::from_inches(boom).to_metres());
        let sprayed = setting.flow.unwrap().to_cubic_metres_per_second() * f64::from(count) * seconds;
        let planned = plan.spray_volume.to_cubic_metres();
        prop_assert!((sprayed / planned - 1.0).abs() < 1e-9, "{sprayed} of {planned}");
    }

    /// Flow, volume and speed agree with each other; pressure and flow too.
    #[test]
    fn the_formulas_are_one_another_s_inverse(gallons in 1.0..60.0_f64, speed in 1.0..30.0_f64, inches in 2.0..60.0_f64, psi in 5.0..150.0_f64) {
        let carrier = CarrierRate::from_us_gallons_per_acre(gallons);
        let (speed, width) = (Speed::from_miles_per_hour(speed), Length::from_inches(inches));
        let flow = flow::needed(carrier, speed, width);
        prop_assert!((flow::carrier(flow, speed, width).unwrap().ratio(carrier).unwrap() - 1.0).abs() < 1e-9);
        prop_assert!((flow::speed(flow, carrier, width).unwrap().ratio(speed).unwrap() - 1.0).abs() < 1e-9);
        let law = flow::Law::new(flow, Pressure::from_psi(40.0)).unwrap();
        let pressure = Pressure::from_psi(psi);
        prop_assert!((law.pressure(law.flow(pressure)).ratio(pressure).unwrap() - 1.0).abs() < 1e-9);
    }

    /// Wherever it is driven inside the speeds named, it stays in the range of pressure and the labels' droplets.
    #[test]
    fn the_speeds_named_keep_every_limit(finest in 1..5_usize, share in 0.0..=1.0_f64, planned_tenths in 40_u32..200) {
        let mut farm = farm();
        says(&mut farm, "a", droplets(Droplets::ALL[finest], None));
        farm.passes["p"].speed = Some(q(&format!("{}.{} mph", planned_tenths / 10, planned_tenths % 10)));
        let Some(speeds) = setting(&farm).speeds else { return Ok(()) };
        let speed = mph(speeds.least) + share * (mph(speeds.most) - mph(speeds.least));
        farm.passes["p"].speed = Some(q(&format!("{speed:.9} mph")));
        let here = setting(&farm);
        let psi = here.pressure.unwrap().to_psi();
        prop_assert!((20.0 - 1e-6..=80.0 + 1e-6).contains(&psi), "{psi}");
        if share > 0.001 && share < 0.999 {
            prop_assert!(here.classes.unwrap().finest >= Droplets::ALL[finest]);
            prop_assert_eq!(planned(&farm).sets[0].fit, Fit::Suits);
        }
    }
}

/// A 10 in band over 30 in rows sprays a third of the ground (University of Minnesota Extension, band rates): the plan says so, and
/// the card names the whole field beside it.
#[test]
fn bands_are_said_in_the_plan_and_on_the_card() {
    let mut farm = farm();
    must_not(&farm, "Sprayed in bands");
    farm.rigs["r"].sets["s06"].layout = Some(Layout::Band { width: q("10 in"), rows: q("30 in"), nozzles: 1 });
    must(&farm, Level::Note, "26.7 ac of 80 ac are treated, 33 % of the ground");
    let card = tankard_core::loads::card::cards(&farm, &planned(&farm)).remove(0);
    assert_eq!(card.fields[0].area, "26.7 ac in bands, on 80 ac of ground");
}

#[test]
fn the_card_has_no_class_that_no_one_knows() {
    let mut farm = farm();
    farm.rigs["r"].droplets = Some(Droplets::UltraCoarse);
    let line = |farm: &Farm| {
        let card = tankard_core::loads::card::cards(farm, &planned(farm)).remove(0);
        card.settings.into_iter().find(|line| line.contains("droplets"))
    };
    assert_eq!(line(&farm).unwrap(), "coarse droplets");
    // 18 psi lie below the table.
    farm.passes["p"].speed = Some(q("8 mph"));
    assert_eq!(line(&farm).unwrap(), "droplets: the nozzle table does not tell");
    farm.passes["p"].droplets = Some(Droplets::VeryCoarse);
    assert_eq!(line(&farm).unwrap(), "very coarse droplets");
    farm.passes["p"].droplets = None;
    farm.rigs["r"].sets["s06"].droplets.clear();
    assert_eq!(line(&farm), None);
    farm.rigs["r"].sets.clear();
    assert_eq!(line(&farm).unwrap(), "ultra coarse droplets");
}

#[test]
fn a_limit_on_the_card_names_its_own_product() {
    let mut farm = farm();
    "Alpha".clone_into(&mut farm.products["a"].name);
    "Alpha Max".clone_into(&mut farm.products["b"].name);
    says(&mut farm, "b", Says::Wind { least: None, most: q("10 mph"), gust: None });
    let wind = |farm: &Farm| {
        let card = tankard_core::loads::card::cards(farm, &planned(farm)).remove(0);
        card.limits.into_iter().find(|limit| limit.starts_with("wind")).unwrap()
    };
    assert!(wind(&farm).ends_with("(Alpha Max)"), "{}", wind(&farm));
    // Of two that both begin the words, the longer is meant.
    "Alpha, dry".clone_into(&mut farm.products["b"].name);
    assert!(wind(&farm).ends_with("(Alpha, dry)"), "{}", wind(&farm));
}
