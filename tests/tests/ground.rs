//! Areas within boundaries, and strips to what is drawn: against published areas, against general libraries, and by laws.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use std::path::PathBuf;

use jiff::civil::date;
use proptest::prelude::*;
use serde::Deserialize;
use tankard_core::farm::{
    AreaFrom, ClassAt, Droplets, Farm, Field, Formulation, Hour, Layout, Line, Neighbour, NozzleSet, Pass, Product,
    ProductKind, Rated, Rig, Says, Shape, Statement, Surrounding, SurroundingKind, Water, When,
};
use tankard_core::finding::{Basis, Finding, Level};
use tankard_core::ground::{self, Applies, Directions, FieldGround, To, WindShift, side_of, wind_shift};
use tankard_core::plan::{Plan, plan};
use tankard_core::quantity::{Area, AsTyped, Bearing, Quantity};
use tankard_core::season::Log;
use tankard_core::season::record::from_plan;
use tankard_core::weather::Verdict;
use tankard_tests::cases;

fn q<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

fn table<T: for<'de> Deserialize<'de>>(name: &str) -> Vec<T> {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("reference").join(name);
    csv::Reader::from_path(path).unwrap().deserialize().map(Result::unwrap).collect()
}

#[derive(Deserialize)]
struct Polygon {
    case: String,
    shape: String,
    square_metres: f64,
    tolerance: f64,
    source: String,
}

/// Each side of the compass has the eighth of it that lies about it.
#[test]
fn a_side_is_the_nearest_of_eight() {
    let sides = ["north", "northeast", "east", "southeast", "south", "southwest", "west", "northwest"];
    for (at, side) in sides.iter().enumerate() {
        for off in [-22.0, -10.0, 0.0, 10.0, 22.0] {
            let directions = Directions::one(Bearing::from_degrees(45.0 * at as f64 + off));
            assert_eq!(side_of(&directions), format!("{side} side"), "{off}");
        }
    }
}

/// Each row names its source.
#[test]
fn areas_are_those_that_are_published() {
    let rows: Vec<Polygon> = table("polygons.csv");
    assert!(rows.len() >= 19);
    for row in rows {
        let found = Shape::parse(&row.shape).unwrap().area().to_square_metres();
        assert!((found - row.square_metres).abs() <= row.tolerance, "{}: {found} m2 ({})", row.case, row.source);
    }
}

/// A field with a boundary, one product whose label keeps a strip, and a thing beside it.
fn farm(boundary: &str, beside: &str, width: &str, downwind_only: bool) -> Farm {
    let mut farm = Farm::new("Ground");
    let boundary = Shape::parse(boundary).unwrap();
    let stated = format!("{} ac", boundary.area().to_acres());
    let mut field = Field::new("Mill field", q(&stated));
    "soybean".clone_into(&mut field.crop);
    field.boundary = Some(boundary);
    farm.fields.insert("f".to_owned(), field);
    farm.surroundings.insert("creek".to_owned(), drawn("Mill creek", SurroundingKind::Water, beside));
    farm.waters.insert("w".to_owned(), Water { name: "Well".to_owned(), ..Water::default() });
    let mut rig = Rig::new("Boom", q("1200 gal"));
    rig.droplets = Some(Droplets::Coarse);
    farm.rigs.insert("r".to_owned(), rig);
    let mut product = Product::new("Alpha 480 SL (demo)", ProductKind::Herbicide, Formulation::SL);
    product.label.push(Statement::new(buffer("streams", width, downwind_only), "page 3"));
    farm.products.insert("a".to_owned(), product);
    let mut pass = Pass::new("Pass", date(2031, 6, 12));
    pass.fields.push("f".to_owned());
    "w".clone_into(&mut pass.water);
    "r".clone_into(&mut pass.rig);
    pass.carrier = Some(q("15 gal/ac"));
    pass.mix.push(Line::new("a", q("32 fl oz/ac")));
    farm.passes.insert("p".to_owned(), pass);
    farm
}

fn buffer(to: &str, width: &str, downwind_only: bool) -> Says {
    Says::Buffer { to: to.to_owned(), width: q(width), downwind_only }
}

fn drawn(name: &str, kind: SurroundingKind, shape: &str) -> Surrounding {
    Surrounding { name: name.to_owned(), kind, shape: Shape::parse(shape).unwrap(), note: String::new() }
}

fn planned(farm: &Farm) -> Plan {
    plan(farm, "p").unwrap()
}

fn ground_of(farm: &Farm) -> FieldGround {
    ground::of(farm, &farm.passes["p"]).fields.remove(0)
}

fn must(farm: &Farm, level: Level, words: &str) -> Finding {
    let all = planned(farm).findings;
    all.iter()
        .find(|finding| finding.level == level && finding.text.contains(words))
        .unwrap_or_else(|| panic!("no {level:?} \"{words}\" in {all:#?}"))
        .clone()
}

fn must_not(farm: &Farm, words: &str) {
    let all = planned(farm).findings;
    assert_eq!(all.iter().find(|finding| finding.text.contains(words)), None);
}

#[derive(Deserialize)]
struct Buffered {
    case: u32,
    kind: String,
    field: String,
    thing: String,
    width_m: f64,
    wind_from: Option<f64>,
    field_m2: f64,
    strip_m2: f64,
    edge_m: f64,
    distance_m: f64,
}

/// Source: `scripts/buffers.py`, with GEOS and PROJ.
#[test]
fn strips_are_those_of_general_libraries() {
    let rows: Vec<Buffered> = table("buffers.csv");
    let (mut all_round, mut down) = (0, 0);
    for row in &rows {
        let name = format!("case {} ({})", row.case, row.kind);
        let mut farm = farm(&row.field, &row.thing, &format!("{} m", row.width_m), row.wind_from.is_some());
        farm.passes["p"].wind_from = row.wind_from.map(|from| q(&from.to_string()));
        let ground = ground_of(&farm);
        let near = |found: f64, expected: f64, share: f64, slack: f64, of: &str| {
            assert!((found - expected).abs() <= expected * share + slack, "{name}: {of} {found}, not {expected}");
        };
        near(ground.measured.unwrap().to_square_metres(), row.field_m2, 1e-8, 0.01, "area");
        near(ground.strip_area.to_square_metres(), row.strip_m2, 0.005, 0.2, "strip");
        if row.strip_m2 < 1.0 {
            assert_eq!(ground.strip_shape, None, "{name}");
            continue;
        }
        let strip = &ground.strips[0];
        near(strip.unsprayed.as_ref().unwrap().area().to_square_metres(), row.strip_m2, 0.005, 0.2, "drawn strip");
        near(strip.edge.to_metres(), row.edge_m, 0.01, 0.5, "edge");
        near(strip.distance.unwrap().to_metres(), row.distance_m, 1e-4, 0.01, "distance");
        // A label's strip is never narrower than asked.
        assert!(ground.strip_area.to_square_metres() > row.strip_m2 - 0.2, "{name}");
        *if row.wind_from.is_some() { &mut down } else { &mut all_round } += 1;
    }
    assert!(all_round >= 25 && down >= 25, "{all_round} all round, {down} down the wind");
}

/// Longitude and latitude of a place so many metres east and north of 41.2 N, 96.4 W, by the radii of WGS 84 there (Snyder, Map
/// projections, 1987, p. 24 and 25).
fn at(east: f64, north: f64) -> String {
    let (a, e2, lat) = (6_378_137.0, 0.006_694_379_990_14, 41.2_f64.to_radians());
    let w = (1.0 - e2 * lat.sin() * lat.sin()).sqrt();
    let (meridian, across) = (a * (1.0 - e2) / w.powi(3), a / w * lat.cos());
    format!("{:.10} {:.10}", -96.4 + (east / across).to_degrees(), 41.2 + (north / meridian).to_degrees())
}

fn line(points: &[(f64, f64)]) -> String {
    let points: Vec<String> = points.iter().map(|(east, north)| at(*east, *north)).collect();
    format!("LINESTRING ({})", points.join(", "))
}

fn ring(points: &[(f64, f64)]) -> String {
    let mut points: Vec<String> = points.iter().map(|(east, north)| at(*east, *north)).collect();
    points.push(points[0].clone());
    format!("({})", points.join(", "))
}

fn block(west: f64, south: f64, east: f64, north: f64) -> String {
    format!("POLYGON ({})", ring(&[(west, south), (east, south), (east, north), (west, north)]))
}

fn point(east: f64, north: f64) -> String {
    format!("POINT ({})", at(east, north))
}

/// A field of 800 m by 400 m, 32 ha, with a creek 6 m south of it that runs on at both ends.
fn by_the_creek(downwind_only: bool) -> Farm {
    farm(&block(0.0, 0.0, 800.0, 400.0), &line(&[(-300.0, -6.0), (400.0, -6.0), (1100.0, -6.0)]), "20 m", downwind_only)
}

fn near(found: Area, square_metres: f64) {
    let found = found.to_square_metres();
    assert!((found / square_metres - 1.0).abs() < 0.003, "{found} m2, not {square_metres}");
}

/// 14 m of 20 m lie on the field, along 800 m of its edge: 1.12 ha of 32 ha.
#[test]
fn a_plan_leaves_the_strip_in_every_number() {
    let mut farm = by_the_creek(false);
    let ground = ground_of(&farm);
    near(ground.area, 320_000.0);
    near(ground.strip_area, 11_200.0);
    near(ground.sprayable, 308_800.0);
    let strip = &ground.strips[0];
    assert_eq!((strip.to.clone(), strip.applies), (To::Surrounding("creek".to_owned()), Applies::Yes));
    assert!((strip.distance.unwrap().to_metres() - 6.0).abs() < 0.01);
    // Both ends of the field lie in it, too.
    assert!((strip.edge.to_metres() - 828.0).abs() < 1.0, "{:?}", strip.edge);
    let said = must(&farm, Level::Note, "keeps 65.6 ft from Mill creek (its words are \"streams\")");
    assert_eq!(said.basis, Basis::Label("Alpha 480 SL (demo), page 3".to_owned()));
    let plan = planned(&farm);
    assert_eq!(plan.area, ground.sprayable);
    assert_eq!(plan.ground.fields, std::slice::from_ref(&ground));
    let loads: f64 = plan.loads.iter().map(|load| load.area.to_square_metres()).sum();
    assert!((loads / ground.sprayable.to_square_metres() - 1.0).abs() < 1e-9);
    assert!((plan.spray_volume.to_us_gallons() - 15.0 * ground.sprayable.to_acres()).abs() < 1e-6);
    assert!(plan.workings.contains(&ground.working));
    let record = from_plan(&farm, &Log::of(&farm), &plan).unwrap();
    assert!((record.fields["f"].area.to_acres() - ground.sprayable.to_acres()).abs() < 1e-3);
    farm.records.insert("r".to_owned(), record);
    assert!(farm.is_recorded("p"), "its record covers it");
    farm.records.clear();
    // As far as the label asks is far enough; the straight way between two places of one latitude bulges north by 3 cm.
    farm.surroundings["creek"].shape = Shape::parse(&line(&[(-300.0, -20.05), (1100.0, -20.05)])).unwrap();
    assert!(ground_of(&farm).strips.is_empty());
    must_not(&farm, "Mill creek");
    // Without a boundary all is as it was.
    farm.surroundings["creek"].shape = Shape::parse(&line(&[(-300.0, -6.0), (1100.0, -6.0)])).unwrap();
    farm.fields["f"].boundary = None;
    assert_eq!(planned(&farm).area, farm.fields["f"].area.value());
    must_not(&farm, "Mill creek");
}

#[test]
fn what_stays_unsprayed_may_hold_the_strips() {
    let mut farm = by_the_creek(false);
    farm.fields["f"].unsprayed = Some(q("2 ha"));
    near(ground_of(&farm).sprayable, 320_000.0 - 20_000.0 - 11_200.0);
    farm.fields["f"].strips_in_unsprayed = true;
    near(ground_of(&farm).sprayable, 300_000.0);
    must_not(&farm, "more than the");
    farm.fields["f"].unsprayed = Some(q("0.5 ha"));
    near(ground_of(&farm).sprayable, 308_800.0);
    must(&farm, Level::Check, "the strips take 2.8 ac, more than the 1.2 ac that stay unsprayed as typed");
}

/// Ground that is typed for the pass counts, as far as there is as much.
#[test]
fn typed_ground_of_a_pass_counts() {
    let mut farm = by_the_creek(false);
    farm.passes["p"].parts.insert("f".to_owned(), q("31 ha"));
    near(planned(&farm).area, 310_000.0);
    must(&farm, Level::Check, "of Mill field are planned; beside the strips 76.3 ac can be sprayed");
    farm.passes["p"].parts.insert("f".to_owned(), q("33 ha"));
    must(&farm, Level::Stop, "of Mill field are planned; 79.1 ac can be sprayed");
    farm.passes["p"].parts.insert("f".to_owned(), q("30 ha"));
    must_not(&farm, "are planned");
}

/// The wind from the south carries away from the creek; from the east the sector of 45 degrees to each side reaches 20 m × cos 45°
/// = 14.14 m deep, of which 8.14 m lie on the field. Where it is as wide as the whole field, its ends lie beyond it.
#[test]
fn down_the_wind_alone() {
    let mut farm = by_the_creek(true);
    let ground = ground_of(&farm);
    assert_eq!(ground.strips[0].applies, Applies::WindUnknown);
    near(ground.strip_area, 11_200.0);
    must(&farm, Level::Check, "no wind is known for the pass, so that 2.8 ac of Mill field stay unsprayed");
    for (from, square_metres) in [("N", 11_200.0), ("30", 11_200.0), ("E", 6_514.0), ("W", 6_514.0)] {
        farm.passes["p"].wind_from = Some(q(from));
        near(ground_of(&farm).strip_area, square_metres);
    }
    for from in ["S", "135", "225", "120"] {
        farm.passes["p"].wind_from = Some(q(from));
        let ground = ground_of(&farm);
        assert_eq!((ground.strips[0].applies, ground.strip_area.is_zero()), (Applies::NotDownwind, true), "{from}");
        must(&farm, Level::Note, "the wind planned for does not carry from Mill field to it");
    }
    // The hours of the day stand in for a wind that is not typed: all of them, from the start on.
    let pass = farm.passes.get_mut("p").unwrap();
    (pass.wind_from, pass.start) = (None, Some("09:30:00".parse().unwrap()));
    for (hour, from) in [(8, "N"), (9, "S"), (10, "S")] {
        farm.forecast.hours.push(Hour { wind_from: Some(q(from)), ..Hour::new(date(2031, 6, 12).at(hour, 0, 0, 0)) });
    }
    assert_eq!(ground_of(&farm).strips[0].applies, Applies::NotDownwind);
    farm.passes["p"].start = None;
    assert_eq!(ground_of(&farm).strips[0].applies, Applies::Yes);
    farm.forecast.hours[1].wind_from = None;
    assert_eq!(ground_of(&farm).strips[0].applies, Applies::WindUnknown);
}

/// Planned for wind from the south no strip is left, and every wind with some north in it that reaches the creek within 20 m breaks
/// the plan: from where the way across the 6 m is 20 m long, arccos 6/20 = 72.5° to each side of north.
#[test]
fn a_turn_of_the_wind_breaks_the_plan() {
    let mut farm = by_the_creek(true);
    farm.passes["p"].wind_from = Some(q("S"));
    let shift = wind_shift(&farm, &farm.passes["p"]);
    assert_eq!(shift.breaks.len(), 1);
    let from = shift.from();
    let arc = from.arcs()[0];
    assert!(
        (arc.from.to_degrees() - (360.0 - 72.54)).abs() < 0.5 && (arc.to().to_degrees() - 72.54).abs() < 0.5,
        "{from:?}"
    );
    let (nearest, turn) = shift.nearest.unwrap();
    assert!((turn - 107.46).abs() < 0.5, "{nearest:?} {turn}");
    let words = shift.words().unwrap();
    assert!(
        words.starts_with("A turn of 107° to WNW ") && words.contains("breaks it; so does all wind from 287° to 73°: "),
        "{words}"
    );
    assert!(words.contains("Mill creek"), "{words}");
    let unknown = WindShift { planned: None, nearest: None, ..shift.clone() };
    assert!(unknown.words().unwrap().starts_with("Wind from 287° to 73° breaks it: "));
    let inside = WindShift { nearest: Some((nearest, 0.0)), ..shift };
    assert!(inside.words().unwrap().starts_with("The planned wind breaks it; so does all from 287° to 73°: "));
    assert_eq!(WindShift::default().words(), None);
    // Planned for wind from the north it holds as far as the sector reaches; nothing on the field lies elsewhere within 20 m but the
    // ground at its two ends, from which a wind along the creek is the one that reaches it.
    farm.passes["p"].wind_from = Some(q("N"));
    let shift = wind_shift(&farm, &farm.passes["p"]);
    assert!(shift.nearest.is_none_or(|(_, turn)| turn >= 44.0), "{shift:?}");
    assert_eq!(shift.from().apart(Bearing::parse("N").unwrap()).filter(|apart| *apart < 44.0), None);
    // An hour with the wrong wind is forbidden.
    farm.passes["p"].wind_from = Some(q("S"));
    for (hour, from) in [(9, "S"), (10, "N")] {
        farm.forecast.hours.push(Hour {
            wind_from: Some(q(from)),
            wind: Some(q("5 mph")),
            ..Hour::new(date(2031, 6, 12).at(hour, 0, 0, 0))
        });
    }
    let hours = planned(&farm).hours.hours;
    assert_eq!((hours[0].verdict == Verdict::Forbidden, hours[1].verdict), (false, Verdict::Forbidden));
}

/// The wide strip of fine droplets, or of a high rate, is not asked for with coarse ones, or a low rate.
#[test]
fn strips_by_droplets_and_rate() {
    let mut farm = by_the_creek(false);
    let mut wide = Statement::new(buffer("streams", "50 m", false), "page 3");
    wide.when = vec![When::DropletsFinerThan(Droplets::Coarse)];
    farm.products["a"].label.push(wide);
    near(ground_of(&farm).strip_area, 11_200.0);
    farm.rigs["r"].droplets = Some(Droplets::Medium);
    near(ground_of(&farm).strip_area, 44.0 * 800.0);
    farm.rigs["r"].droplets = None;
    must(&farm, Level::Check, "the label says so with droplets finer than coarse");
    // Between two lines of the maker's table they may be coarse or medium. At 15 gal/ac and 11.88 mph a nozzle 20 in from the next
    // gives 15 × 11.88 × 20 ÷ 5940 = 0.6 gal/min, which is its rating at 40 psi; the pressure goes with the square of the speed.
    let class = |at: &str, class| ClassAt { at: q(at), class };
    let set = NozzleSet {
        rated: Some(Rated { flow: q("0.6 gal/min"), at: q("40 psi") }),
        layout: Some(Layout::Broadcast { spacing: q("20 in") }),
        droplets: vec![
            class("20 psi", Droplets::Coarse),
            class("30 psi", Droplets::Coarse),
            class("60 psi", Droplets::Medium),
            class("80 psi", Droplets::Medium),
        ],
        ..NozzleSet::default()
    };
    farm.rigs["r"].sets.insert("06".to_owned(), set);
    farm.passes["p"].carrier = Some(q("15 gal/ac"));
    for (speed, square_metres) in [("9.5 mph", 11_200.0), ("16 mph", 35_200.0), ("12.6 mph", 35_200.0)] {
        farm.rigs["r"].speed = Some(q(speed));
        near(ground_of(&farm).strip_area, square_metres);
    }
    must(&farm, Level::Check, "the label says so with droplets finer than coarse");
    farm.rigs["r"].sets.clear();
    farm.products["a"].label[1].when = vec![When::DropletsAtLeast(Droplets::VeryCoarse)];
    farm.rigs["r"].droplets = Some(Droplets::Coarse);
    near(ground_of(&farm).strip_area, 11_200.0);
    for (when, square_metres) in [
        (When::RateAbove(q("32 fl oz/ac")), 11_200.0),
        (When::RateAbove(q("31 fl oz/ac")), 35_200.0),
        (When::RateUpTo(q("1 qt/ac")), 35_200.0),
        (When::RateUpTo(q("30 fl oz/ac")), 11_200.0),
        // A mass of a liquid without a density cannot be compared, and so it is kept.
        (When::RateAbove(q("2 lb/ac")), 35_200.0),
    ] {
        farm.products["a"].label[1].when = vec![when];
        near(ground_of(&farm).strip_area, square_metres);
    }
}

#[test]
fn two_strips_on_one_ground_count_once() {
    let mut farm = by_the_creek(false);
    let mut beta = Product::new("Beta 480 SL (demo)", ProductKind::Herbicide, Formulation::SL);
    beta.label.push(Statement::new(buffer("creeks", "30 m", false), "page 1"));
    beta.label.push(Statement::new(buffer("wells", "100 m", false), "page 1"));
    farm.products.insert("b".to_owned(), beta);
    farm.passes["p"].mix.push(Line::new("b", q("8 fl oz/ac")));
    farm.surroundings.insert("well".to_owned(), drawn("Old well", SurroundingKind::Well, &point(400.0, 200.0)));
    let ground = ground_of(&farm);
    // To the creek the wider of the two; round the well a whole disc, far from the edge.
    assert_eq!(ground.strips.iter().map(|strip| strip.who.as_str()).collect::<Vec<_>>(), ["Beta 480 SL (demo)"; 2]);
    near(ground.strips[0].area, 24.0 * 800.0);
    near(ground.strips[1].area, std::f64::consts::PI * 10_000.0);
    assert!(ground.strips[1].edge.is_zero() && ground.strips[1].distance.unwrap().is_zero());
    near(ground.strip_area, 24.0 * 800.0 + std::f64::consts::PI * 10_000.0);
    // A disc of 100 m, 74 m from its middle to the rim of the strip: the piece beyond is r² acos(d/r) − d √(r² − d²).
    farm.surroundings["well"].shape = Shape::parse(&point(400.0, 98.0)).unwrap();
    let both = 10_000.0 * 0.74_f64.acos() - 74.0 * (10_000.0_f64 - 74.0 * 74.0).sqrt();
    near(ground_of(&farm).strip_area, 24.0 * 800.0 + std::f64::consts::PI * 10_000.0 - both);
}

#[test]
fn a_strip_that_takes_all_stops_the_pass() {
    let mut farm = by_the_creek(false);
    farm.surroundings["creek"].shape = Shape::parse(&block(-50.0, -50.0, 850.0, 450.0)).unwrap();
    assert!(planned(&farm).area.is_zero());
    must(&farm, Level::Stop, "The strips leave nothing of Mill field to spray");
    // A field no larger than a room.
    farm.fields["f"].boundary = Some(Shape::parse(&block(0.0, 0.0, 3.0, 3.0)).unwrap());
    farm.fields["f"].area = q("9 m2");
    farm.surroundings["creek"].shape = Shape::parse(&line(&[(-5.0, -19.0), (8.0, -19.0)])).unwrap();
    near(ground_of(&farm).sprayable, 6.0);
    // Pond with an island on which the field lies: the water ends 10 m from it on all sides.
    let island = ring(&[(-10.0, -10.0), (-10.0, 110.0), (110.0, 110.0), (110.0, -10.0)]);
    let shore = ring(&[(-60.0, -60.0), (160.0, -60.0), (160.0, 160.0), (-60.0, 160.0)]);
    farm.fields["f"].boundary = Some(Shape::parse(&block(0.0, 0.0, 100.0, 100.0)).unwrap());
    farm.fields["f"].area = q("1 ha");
    farm.surroundings["creek"].shape = Shape::parse(&format!("POLYGON ({shore}, {island})")).unwrap();
    near(ground_of(&farm).sprayable, 6_400.0);
}

#[test]
fn two_areas_that_differ_are_said() {
    let mut farm = by_the_creek(false);
    must_not(&farm, "its boundary holds");
    farm.fields["f"].area = q("80.7 ac");
    must(
        &farm,
        Level::Check,
        "its boundary holds 79.1 ac, 80.7 ac are stated, which is 2.018 % less; the plan goes by the stated area",
    );
    farm.fields["f"].area = q("80 ac");
    must_not(&farm, "its boundary holds");
    farm.practice.area_differs = Some(q("1 %"));
    assert_eq!(must(&farm, Level::Check, "its boundary holds").basis, Basis::Own);
    farm.fields["f"].area_from = AreaFrom::Boundary;
    near(planned(&farm).area, 308_800.0);
    must(&farm, Level::Check, "the plan goes by the boundary");
    let ground = ground_of(&farm);
    assert_eq!((ground.from, ground.area), (AreaFrom::Boundary, ground.measured.unwrap()));
    farm.fields["f"].boundary = None;
    must(&farm, Level::Check, "is to go by its boundary, and none is drawn");
    near(planned(&farm).area, 323_748.5);
}

#[test]
fn words_that_mean_nothing_drawn_are_said() {
    let mut farm = by_the_creek(false);
    farm.products["a"].label[0].says = buffer("vineyards", "20 m", false);
    must(
        &farm,
        Level::Check,
        "whether that means Mill creek, closer to Mill field than that, cannot be told by its words",
    );
    assert!(ground_of(&farm).strips.is_empty());
    // A word of the trade for another kind means nothing of this one.
    farm.products["a"].label[0].says = buffer("wells", "20 m", false);
    must_not(&farm, "whether that means");
    farm.surroundings["creek"].kind = SurroundingKind::Other;
    must(&farm, Level::Check, "whether that means Mill creek");
    // Too far off to be meant.
    farm.products["a"].label[0].says = buffer("wells", "5 m", false);
    must_not(&farm, "whether that means");
}

/// What is drawn stands for the typed neighbour of its kind and side; another stays beside it.
#[test]
fn what_is_drawn_and_typed_counts_once() {
    let mut farm = by_the_creek(false);
    farm.products["a"].label[0].says = buffer("creeks", "20 m", false);
    let creek = Neighbour { what: "creek".to_owned(), side: "south".to_owned(), distance: Some(q("6 m")) };
    farm.fields["f"].neighbours = vec![creek];
    must_not(&farm, "that on the south");
    assert_eq!(ground_of(&farm).strips.len(), 1);
    farm.fields["f"].neighbours[0].side = "north".to_owned();
    must(&farm, Level::Check, "that on the north of Mill field is 19.7 ft away");
    let strips = ground_of(&farm).strips;
    assert_eq!((strips.len(), strips[1].to.clone(), strips[1].applies), (2, To::Neighbour(0), Applies::NotMeasured));
}

/// Wind toward what is drawn: by where it truly lies. North of the field the sides of a vineyard 100 m off reach from 800 m of edge.
#[test]
fn wind_toward_what_is_drawn() {
    let mut farm = by_the_creek(false);
    farm.products["a"].label = vec![Statement::new(Says::NotToward { what: "sensitive crops".to_owned() }, "page 3")];
    farm.surroundings.clear();
    let vineyard = drawn("Hill vineyard", SurroundingKind::SensitiveCrop, &block(395.0, 500.0, 405.0, 520.0));
    farm.surroundings.insert("v".to_owned(), vineyard);
    let shift = wind_shift(&farm, &farm.passes["p"]);
    let hits = |degrees: f64| shift.from().apart(Bearing::from_degrees(degrees)) == Some(0.0);
    // From 402.3 m off at most: arccos 100 / 402.336 = 75.6° to each side of south.
    for (degrees, is_toward) in
        [(180.0, true), (180.0 - 75.0, true), (180.0 + 75.0, true), (180.0 - 78.0, false), (0.0, false)]
    {
        assert_eq!(hits(degrees), is_toward, "{degrees}: {:?}", shift.from());
    }
    must_not(&farm, "speaks of wind toward");
    farm.surroundings["v"].shape = Shape::parse(&block(395.0, 900.0, 405.0, 920.0)).unwrap();
    assert!(wind_shift(&farm, &farm.passes["p"]).breaks.is_empty());
    must(&farm, Level::Check, "speaks of wind toward sensitive crops; what lies beside Mill field is not typed");
}

/// A field across 180 degrees, and one beside the pole, whose neighbours lie on the other side of the seam.
#[test]
fn strips_have_no_seam() {
    let field = "POLYGON ((179.998 -17, -179.998 -17, -179.998 -16.998, 179.998 -16.998, 179.998 -17))";
    let farm = farm(field, "LINESTRING (179.996 -17.00001, -179.996 -17.00001)", "20 m", false);
    let ground = ground_of(&farm);
    let wide = 0.004_f64.to_radians() * 6_378_137.0 * 17.0_f64.to_radians().cos();
    // A degree of latitude has 110,667 m there; its 0.00001 lie off the field.
    let deep = 20.0 - 1.107;
    assert!((ground.strip_area.to_square_metres() / (wide * deep) - 1.0).abs() < 0.01, "{:?}", ground.strip_area);
}

proptest! {
    #![proptest_config(cases(48))]

    /// A strip is never larger than the field, what can be sprayed never less than nothing, a wider strip never smaller, and down the
    /// wind alone never more than all round.
    #[test]
    fn strips_keep_the_laws(
        corners in prop::collection::vec((40.0..300.0_f64, 0.0..1.0_f64), 4..14),
        creek in prop::collection::vec((-350.0..350.0_f64, -350.0..350.0_f64), 1..9),
        kind in 0..3_u8,
        width in 1.0..200.0_f64,
        more in 0.0..80.0_f64,
        wind in 0.0..360.0_f64,
    ) {
        let turn = std::f64::consts::TAU / corners.len() as f64;
        let outline: Vec<(f64, f64)> = corners
            .iter()
            .enumerate()
            .map(|(at, (reach, swing))| {
                let angle = (at as f64 + swing * 0.9) * turn;
                (reach * angle.cos(), reach * angle.sin())
            })
            .collect();
        let boundary = format!("POLYGON ({})", ring(&outline));
        let beside = match kind {
            0 => point(creek[0].0, creek[0].1),
            1 if creek.len() > 1 => line(&creek),
            _ => block(creek[0].0, creek[0].1, creek[0].0 + 60.0, creek[0].1 + 30.0),
        };
        let of = |width: f64, downwind: bool| {
            let mut farm = farm(&boundary, &beside, &format!("{width} m"), downwind);
            farm.passes["p"].wind_from = downwind.then(|| q(&format!("{wind}")));
            ground_of(&farm)
        };
        let (narrow, wide, down) = (of(width, false), of(width + more, false), of(width, true));
        let area = |ground: &FieldGround| ground.strip_area.to_square_metres();
        for ground in [&narrow, &wide, &down] {
            let field = ground.measured.unwrap().to_square_metres();
            prop_assert!(area(ground) <= field * (1.0 + 1e-5), "{} of {field}", area(ground));
            prop_assert!(ground.sprayable.to_square_metres() >= 0.0);
            let rest = field - area(ground) - ground.sprayable.to_square_metres();
            prop_assert!(rest.abs() < field * 1e-5 + 0.1, "{rest}");
        }
        prop_assert!(area(&wide) >= area(&narrow) - 0.2);
        prop_assert!(area(&down) <= area(&narrow) + 0.2);
    }
}
