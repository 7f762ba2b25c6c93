//! The time of a pass: spraying, filling, road, and what is not counted. Figures by hand, as the comments say.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use jiff::civil::date;
use tankard_core::farm::pass::CarrierKind;
use tankard_core::farm::{Farm, Field, Fills, Formulation, Line, Pass, Product, ProductKind, Rig, Road, Water};
use tankard_core::plan::plan;
use tankard_core::quantity::{AsTyped, Duration, Quantity};
use tankard_core::rig::work::Work;

fn q<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

/// Two fields of 40 and 60 ac, 2 and 3 mi from the yard; 15 gal/ac from a tank of 600 gal: loads of 600, 600 and 300 gal.
/// 8.25 mph × 60 ft × 50 % are 30 ac/h. The water gives 50 gal/min; two products.
fn farm() -> Farm {
    let mut farm = Farm::new("Work");
    for (id, area, road) in [("a", "40 ac", "2 mi"), ("b", "60 ac", "3 mi")] {
        let mut field = Field::new(&format!("Field {id}"), q(area));
        field.road = Some(q(road));
        farm.fields.insert(id.to_owned(), field);
    }
    farm.waters
        .insert("w".to_owned(), Water { name: "Well".to_owned(), flow: Some(q("50 gal/min")), ..Water::default() });
    let mut rig = Rig::new("Boom", q("600 gal"));
    rig.boom = Some(q("60 ft"));
    rig.efficiency = Some(q("50 %"));
    rig.speed = Some(q("8.25 mph"));
    rig.road_speed = Some(q("20 mph"));
    rig.stop = Some(q("5 min"));
    rig.addition = Some(q("2 min"));
    farm.rigs.insert("r".to_owned(), rig);
    let mut pass = Pass::new("Pass", date(2031, 6, 12));
    pass.fields = vec!["a".to_owned(), "b".to_owned()];
    "w".clone_into(&mut pass.water);
    "r".clone_into(&mut pass.rig);
    pass.carrier = Some(q("15 gal/ac"));
    for id in ["h", "i"] {
        farm.products.insert(id.to_owned(), Product::new(id, ProductKind::Herbicide, Formulation::SL));
        pass.mix.push(Line::new(id, q("16 fl oz/ac")));
    }
    farm.passes.insert("p".to_owned(), pass);
    farm
}

fn work(farm: &Farm) -> Work {
    plan(farm, "p").unwrap().work.unwrap()
}

fn minutes(time: Duration) -> f64 {
    time.to_seconds() / 60.0
}

fn close(found: f64, expected: f64) -> bool {
    (found - expected).abs() < 1e-9 * expected.abs().max(1.0)
}

fn notes(farm: &Farm) -> Vec<String> {
    let findings = plan(farm, "p").unwrap().findings;
    findings.into_iter().map(|finding| finding.text).filter(|text| text.contains("does not count")).collect()
}

#[test]
fn filling_and_road_are_counted_at_the_field() {
    let farm = farm();
    let work = work(&farm);
    // 100 ac at 30 ac/h.
    assert!(close(minutes(work.spraying), 200.0) && close(work.in_an_hour.to_acres(), 30.0));
    // 600 ÷ 50 + 5 + 2 × 2 = 21 min; 300 ÷ 50 + 9 = 15 min.
    let fills: Vec<f64> = work.fills.iter().map(|time| minutes(*time)).collect();
    assert!(fills.len() == 3 && close(fills[0], 21.0) && close(fills[1], 21.0) && close(fills[2], 15.0), "{fills:?}");
    // 2 mi out, 5 mi by way of the yard, 3 mi home at 20 mph.
    assert!(
        close(minutes(work.road.unwrap()), 30.0) && close(minutes(work.out), 6.0) && close(minutes(work.home), 9.0)
    );
    assert!(close(minutes(work.total), 287.0));
    assert!(close(work.loads_an_hour.unwrap(), 3.0 / (287.0 / 60.0)));
    assert!(work.lacks.is_empty() && notes(&farm).is_empty());
}

#[test]
fn the_road_from_field_to_field_is_counted_where_it_is_known() {
    let mut farm = farm();
    farm.roads.push(Road { from: "b".to_owned(), to: "a".to_owned(), length: q("1 mi") });
    // 2 + 1 + 3 mi at 20 mph.
    assert!(close(minutes(work(&farm).road.unwrap()), 18.0));
    farm.fields["b"].road = None;
    assert!(close(minutes(work(&farm).road.unwrap()), 9.0));
    assert_eq!(work(&farm).lacks, ["the road to Field b"]);
    farm.roads.clear();
    assert!(close(minutes(work(&farm).road.unwrap()), 6.0));
    assert_eq!(work(&farm).lacks, ["the road from Field a to Field b", "the road to Field b"]);
    assert_eq!(notes(&farm).len(), 1);
}

#[test]
fn from_the_yard_each_load_drives_out_and_home() {
    let mut farm = farm();
    farm.passes["p"].fills = Fills::AtYard;
    // The first load does the 40 ac of a; the second and third go to b: 4 + 6 + 6 mi.
    assert!(close(minutes(work(&farm).road.unwrap()), 48.0));
    assert!(work(&farm).lacks.is_empty() && notes(&farm).is_empty());
    // With even loads of 500 gal on 33.3 ac the second goes out to a and home from b.
    farm.passes["p"].split = tankard_core::farm::LoadSplit::EvenLoads;
    // It takes the road from a to b by way of the yard, too, and begins in the yard.
    assert!(close(minutes(work(&farm).road.unwrap()), 60.0));
    assert!(work(&farm).out.is_zero() && close(minutes(work(&farm).home), 9.0) && work(&farm).lacks.is_empty());
}

#[test]
fn one_field_lacks_no_road_between() {
    let mut farm = farm();
    farm.passes["p"].fields.truncate(1);
    assert!(close(minutes(work(&farm).road.unwrap()), 12.0));
    assert!(work(&farm).lacks.is_empty());
}

#[test]
fn what_is_not_typed_counts_as_nothing_and_is_named_once() {
    let mut farm = farm();
    farm.passes["p"].fields.truncate(1);
    farm.rigs["r"].stop = None;
    farm.rigs["r"].addition = None;
    let some = work(&farm);
    assert!(close(minutes(some.fills[0]), 12.0));
    assert_eq!(some.lacks, ["the stop for each filling", "adding the products"]);
    assert_eq!(notes(&farm).len(), 1);
    farm.waters["w"].flow = None;
    let none = work(&farm);
    assert!(none.fills.is_empty() && none.loads_an_hour.is_none());
    assert_eq!(none.lacks, ["filling (the flow of the water is not typed)"]);
    farm.rigs["r"].road_speed = None;
    assert!(work(&farm).road.is_none());
    assert!(close(minutes(work(&farm).total), minutes(work(&farm).spraying)));
    // A farm that types nothing of it is not asked for it.
    farm.fields["a"].road = None;
    assert!(notes(&farm).is_empty() && work(&farm).lacks.len() == 2);
    // Any one of them asks for the others.
    let ask: [fn(&mut Farm); 5] = [
        |farm| farm.rigs["r"].stop = Some(q("5 min")),
        |farm| farm.rigs["r"].addition = Some(q("2 min")),
        |farm| farm.rigs["r"].road_speed = Some(q("20 mph")),
        |farm| farm.waters["w"].flow = Some(q("50 gal/min")),
        |farm| farm.fields["a"].road = Some(q("2 mi")),
    ];
    for (at, ask) in ask.into_iter().enumerate() {
        let mut asked = farm.clone();
        ask(&mut asked);
        assert_eq!(notes(&asked).len(), 1, "{at}");
    }
    farm.rigs["r"].road_speed = Some(q("0 mph"));
    farm.waters["w"].flow = Some(q("0 gal/min"));
    assert!(work(&farm).fills.is_empty() && work(&farm).road.is_none());
    farm.rigs["r"].boom = None;
    assert!(plan(&farm, "p").unwrap().work.is_none());
}

#[test]
fn the_flow_of_a_water_is_not_that_of_a_fertilizer() {
    let mut farm = farm();
    farm.passes["p"].carrier_kind = CarrierKind::UreaAmmoniumNitrate;
    assert!(work(&farm).fills.is_empty());
    assert!(work(&farm).lacks[0].contains("urea ammonium nitrate"));
}

#[test]
fn the_working_tells_all_parts() {
    let plan = plan(&farm(), "p").unwrap();
    let working = plan.workings.iter().find(|working| working.title == "Time for the pass").unwrap();
    let step = |words: &str| working.steps.iter().find(|step| step.what.contains(words)).unwrap().result.clone();
    assert_eq!((step("spraying"), step("filling 3 loads")), ("3 h 20 min".to_owned(), "57 min".to_owned()));
    assert_eq!((step("in all"), step("road")), ("4 h 47 min".to_owned(), "30 min".to_owned()));
}
