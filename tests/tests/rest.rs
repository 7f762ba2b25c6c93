//! The rest of a pass: nothing of ground or spray is lost or counted twice, and the label sees one application.
//!
//! The figures follow from arithmetic (ground = spray ÷ volume over ground), which is stated beside each.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic, clippy::float_cmp)]

use jiff::civil::date;
use tankard_core::farm::{
    Farm, Field, Formulation, InTank, Line, LoadSplit, Pass, Product, ProductKind, Rig, Says, Statement, label::Period,
};
use tankard_core::finding::Level;
use tankard_core::loads::carry::same_spray;
use tankard_core::loads::rest::{Change, carry_into, carry_over, ground_left, rest, takers};
use tankard_core::plan::{Plan, plan};
use tankard_core::quantity::{Area, AsTyped, Quantity, Volume};
use tankard_core::season::Log;

fn q<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap()
}

/// 100 acres at 10 gal/ac from a tank of 400 gal: 1,000 gal, loads of 400, 400 and 200 gal.
fn farm() -> Farm {
    let mut farm = Farm::new("Test");
    farm.fields.insert("a".into(), Field::new("Oak field", q("60 ac")));
    farm.fields.insert("b".into(), Field::new("Elm field", q("40 ac")));
    farm.rigs.insert("boom".into(), Rig::new("Boom", q("400 gal")));
    let mut product = Product::new("Glyphosate 540 SL (demo)", ProductKind::Herbicide, Formulation::SL);
    let mut most = Statement::new(Says::Rate { least: None, most: Some(q("32 fl oz/ac")) }, "page 4");
    most.at = "page 4".into();
    product.label =
        vec![most, Statement::new(Says::Applications { most: 1, days_apart: 0, per: Period::Year }, "page 5")];
    farm.products.insert("glyphosate".into(), product);
    let mut pass = Pass::new("Burndown", date(2031, 6, 12));
    pass.fields = vec!["a".into(), "b".into()];
    pass.rig = "boom".into();
    pass.carrier = Some(q("10 gal/ac"));
    pass.mix = vec![Line::new("glyphosate", q("22 fl oz/ac"))];
    farm.passes.insert("p".into(), pass);
    farm
}

fn planned(farm: &Farm, id: &str) -> Plan {
    plan(farm, id).unwrap()
}

fn acres(area: Area) -> f64 {
    (area.to_acres() * 1e6).round() / 1e6
}

fn gallons(volume: Volume) -> f64 {
    (volume.to_us_gallons() * 1e6).round() / 1e6
}

#[test]
fn ground_left_is_what_the_loads_have_not_covered() {
    let farm = farm();
    let plan = planned(&farm, "p");
    // After two loads of 400 gal 80 of 100 ac are sprayed; 180 gal of them still in the tank are 18 ac.
    let left = |after, tank| -> Vec<(String, f64)> {
        let left = ground_left(&plan, after, Volume::from_us_gallons(tank));
        left.into_iter().map(|(id, area)| (id, acres(area))).collect()
    };
    assert_eq!(left(2, 0.0), [("b".to_owned(), 20.0)]);
    assert_eq!(left(2, 180.0), [("b".to_owned(), 38.0)]);
    // Further back than the border between the fields.
    assert_eq!(left(2, 380.0), [("a".to_owned(), 18.0), ("b".to_owned(), 40.0)]);
    assert_eq!(left(3, 0.0), []);
}

#[test]
fn the_two_parts_are_the_whole() {
    let mut farm = farm();
    farm.fields["a"].area = q("61.7 ac");
    let before = planned(&farm, "p");
    let change = Change { after: 2, in_tank: Some(q("180 gal")), ..Change::default() };
    let changed = rest(&farm, &before, &change).unwrap();
    let id = changed.rest.unwrap();
    let (first, second) = (planned(&changed.farm, "p"), planned(&changed.farm, &id));
    let whole = first.area + second.area;
    assert!((whole.ratio(before.area).unwrap() - 1.0).abs() < 1e-9);
    // Those already filled stay as they were.
    assert_eq!(first.loads.iter().map(|load| gallons(load.volume)).collect::<Vec<_>>(), [400.0, 400.0]);
    // A field that is done is named without a part.
    let done = rest(&farm, &before, &Change { after: 2, ..Change::default() }).unwrap();
    assert_eq!(done.farm.passes["p"].parts.keys().collect::<Vec<_>>(), ["b"]);
    // One load of 400 gal is 40 ac of the first field alone.
    let done = rest(&farm, &before, &Change { after: 1, ..Change::default() }).unwrap().farm.passes["p"].clone();
    assert_eq!((done.fields, done.parts.len(), acres(done.parts["a"].value())), (vec!["a".to_owned()], 1, 40.0));
    assert_eq!(changed.farm.passes[&id].rest_of, "p");
    assert_eq!(changed.farm.passes[&id].in_tank.as_ref().map(|tank| gallons(tank.volume.value())), Some(180.0));
    assert_eq!(changed.farm.passes.get_index_of(&id), Some(1));
    assert!(first.level() < Some(Level::Stop), "{:?}", first.findings);
}

#[test]
fn a_second_part_is_no_second_application() {
    let farm = farm();
    let change = Change { after: 2, ..Change::default() };
    let changed = rest(&farm, &planned(&farm, "p"), &change).unwrap();
    let (mut farm, id) = (changed.farm, changed.rest.unwrap());
    let record = tankard_core::season::record::from_plan(&farm, &Log::of(&farm), &planned(&farm, "p")).unwrap();
    farm.records.insert("r".into(), record.clone());
    let speaks = |farm: &Farm| planned(farm, &id).findings.iter().any(|finding| finding.text.contains("application"));
    assert!(!speaks(&farm), "{:?}", planned(&farm, &id).findings);
    // The same record of another pass is one.
    farm.passes[&id].rest_of = String::new();
    assert!(speaks(&farm));
}

#[test]
fn the_rate_may_change_and_its_label_is_asked_again() {
    let farm = farm();
    let change = Change {
        after: 2,
        mix: vec![Line::new("glyphosate", q("40 fl oz/ac"))],
        carrier: Some(q("12 gal/ac")),
        ..Change::default()
    };
    let changed = rest(&farm, &planned(&farm, "p"), &change).unwrap();
    let second = planned(&changed.farm, &changed.rest.unwrap());
    // 20 ac at 12 gal/ac.
    assert!((second.spray_volume.to_us_gallons() - 240.0).abs() < 1e-6);
    let stops: Vec<_> = second.findings.iter().filter(|finding| finding.level == Level::Stop).collect();
    assert!(stops.iter().any(|stop| stop.text.contains("32 fl oz/ac")), "{stops:?}");
}

#[test]
fn a_larger_field_grows_and_a_smaller_one_leaves_spray_over() {
    let farm = farm();
    let plan = planned(&farm, "p");
    let ground = |id: &str, area: &str| [(id.to_owned(), q(area))].into_iter().collect();
    let more = rest(&farm, &plan, &Change { after: 2, ground: ground("b", "32 ac"), ..Change::default() }).unwrap();
    // 20 ac of it are sprayed and 32 are left.
    assert!((more.farm.fields["b"].area.to_acres() - 52.0).abs() < 1e-9, "{:?}", more.farm.fields["b"].area);
    // The same said as so much more than the plan has.
    let on_top = Change { after: 2, more: ground("b", "12 ac"), ..Change::default() };
    assert_eq!(rest(&farm, &plan, &on_top).unwrap().farm.fields["b"].area, more.farm.fields["b"].area);
    assert!(more.said.iter().any(|said| said.contains("Elm field is now 52 ac")), "{:?}", more.said);
    // What is not to be sprayed of a field is still there: 20 and 15 of 40 ac.
    let less = rest(&farm, &plan, &Change { after: 2, ground: ground("b", "15 ac"), ..Change::default() }).unwrap();
    assert_eq!(less.farm.fields["b"].area, farm.fields["b"].area);
    assert_eq!(acres(planned(&less.farm, &less.rest.unwrap()).area), 15.0);
    let none = Change { after: 3, in_tank: Some(q("180 gal")), ground: ground("b", "0 ac"), ..Change::default() };
    let none = rest(&farm, &plan, &none).unwrap();
    assert_eq!(none.rest, None);
    assert!(
        none.said.iter().any(|said| said.contains("180 gal are left over") && said.contains("18 ac")),
        "{:?}",
        none.said
    );
    assert!((planned(&none.farm, "p").area.to_acres() - 82.0).abs() < 1e-9);
}

#[test]
fn what_cannot_be_is_told() {
    let farm = farm();
    let plan = planned(&farm, "p");
    let tell = |change: Change| rest(&farm, &plan, &change).unwrap_err();
    assert!(tell(Change { after: 4, ..Change::default() }).contains("3 loads"));
    assert!(tell(Change { after: 3, in_tank: Some(q("300 gal")), ..Change::default() }).contains("Load 3 was 200 gal"));
    assert!(tell(Change { in_tank: Some(q("30 gal")), ..Change::default() }).contains("No load was filled"));
    assert!(rest(&farm, &plan, &Change { in_tank: Some(q("0 gal")), ..Change::default() }).is_ok());
    let foreign = [("z".to_owned(), q("5 ac"))].into_iter().collect();
    assert!(tell(Change { after: 1, ground: foreign, ..Change::default() }).contains("not in the pass"));
}

#[test]
fn spray_goes_on_only_into_the_same_spray() {
    let mut farm = farm();
    let mut other = farm.passes["p"].clone();
    other.fields = vec!["a".into()];
    farm.passes.insert("q".into(), other.clone());
    assert_eq!(
        takers(&farm, &tankard_core::season::Log::of(&farm), "p").iter().map(|(id, _)| id.as_str()).collect::<Vec<_>>(),
        ["q"]
    );
    // The same spray with another rig, and another spray with the same.
    let mut elsewhere = other.clone();
    elsewhere.rig = "other".into();
    farm.passes.insert("e".into(), elsewhere);
    let mut stronger = other.clone();
    stronger.mix[0].rate = q("24 fl oz/ac");
    farm.passes.insert("s".into(), stronger);
    assert_eq!(takers(&farm, &Log::of(&farm), "p").len(), 1);
    for change in [
        |pass: &mut Pass| pass.carrier = Some(q("12 gal/ac")),
        |pass: &mut Pass| pass.mix[0].rate = q("24 fl oz/ac"),
        |pass: &mut Pass| pass.mix.clear(),
        |pass: &mut Pass| pass.water = "creek".into(),
    ] {
        let mut changed = other.clone();
        change(&mut changed);
        assert!(!same_spray(&farm, &farm.passes["p"], &changed));
    }
}

/// 1,000 gal and 900 gal from a tank of 400 gal are 3 and 3 loads; filled through, 1,900 gal are 5.
#[test]
fn loads_filled_through_into_the_next_pass_save_a_filling() {
    let mut farm = farm();
    let mut other = farm.passes["p"].clone();
    other.parts.insert("b".into(), q("30 ac"));
    farm.passes.insert("q".into(), other);
    let (first, second) = (planned(&farm, "p"), planned(&farm, "q"));
    assert_eq!((first.loads.len(), second.loads.len()), (3, 3));
    let through = carry_over(&farm, &first, &second).unwrap();
    let (first, second) = (planned(&through, "p"), planned(&through, "q"));
    let filled = |plan: &Plan| plan.loads.iter().filter(|load| load.volume.exceeds(load.carried)).count();
    assert_eq!((filled(&first), filled(&second)), (3, 2), "{:?}", second.loads);
    assert!(second.loads[0].items.iter().all(|item| item.measured.amount.is_zero()));
    assert!(second.level() < Some(Level::Stop), "{:?}", second.findings);
    // What is mixed for both is what both take.
    let mixed: Volume = first.loads.iter().chain(&second.loads).map(|load| load.volume - load.carried).sum();
    assert!((mixed.to_us_gallons() - 1900.0).abs() < 1e-6);
    assert!(carry_over(&farm, &planned(&through, "p"), &second).is_err());
}

/// Three even loads of 333 gal leave 67 gal of room each: filled through, all three are 400 gal, and 200 gal go on.
#[test]
fn loads_that_share_their_ground_are_all_filled_through() {
    let mut farm = farm();
    farm.passes["p"].split = LoadSplit::EvenLoads;
    let other = farm.passes["p"].clone();
    farm.passes.insert("q".into(), other);
    let through = carry_over(&farm, &planned(&farm, "p"), &planned(&farm, "q")).unwrap();
    assert_eq!(through.passes["p"].extra.as_ref().map(|extra| gallons(extra.value())), Some(200.0));
    assert_eq!(through.passes["q"].in_tank.as_ref().map(|tank| gallons(tank.volume.value())), Some(200.0));
    let first = planned(&through, "p");
    assert_eq!(first.loads.iter().map(|load| gallons(load.volume)).collect::<Vec<_>>(), [400.0; 3]);
    // With 200 gal to be left over all three are full already.
    farm.passes["p"].extra = Some(q("200 gal"));
    assert!(carry_over(&farm, &planned(&farm, "p"), &planned(&farm, "q")).unwrap_err().contains("no room"));
    // 40 gal that were to be left over already are of those 200, not beside them.
    farm.passes["p"].extra = Some(q("40 gal"));
    let through = carry_over(&farm, &planned(&farm, "p"), &planned(&farm, "q")).unwrap();
    assert_eq!(through.passes["p"].extra.as_ref().map(|extra| gallons(extra.value())), Some(200.0));
}

/// 40 gal beyond the ground cover none of it: when they are what is in the tank after the last load, no ground is left.
#[test]
fn what_was_mixed_beyond_the_ground_leaves_no_ground() {
    let mut farm = farm();
    farm.passes["p"].extra = Some(q("40 gal"));
    let mut other = farm.passes["p"].clone();
    other.extra = None;
    farm.passes.insert("q".into(), other);
    let before = planned(&farm, "p");
    assert_eq!(ground_left(&before, 3, Volume::from_us_gallons(40.0)), []);
    // 10 gal more are 1 ac at 10 gal/ac.
    let left = ground_left(&before, 3, Volume::from_us_gallons(50.0));
    assert_eq!(left.iter().map(|(_, area)| acres(*area)).collect::<Vec<_>>(), [1.0]);
    let change = |tank: &str| Change { after: 3, in_tank: Some(q(tank)), ..Change::default() };
    assert_eq!(rest(&farm, &before, &change("40 gal")).unwrap().rest, None);
    let into = carry_into(&farm, &before, &change("40 gal"), "q").unwrap();
    assert_eq!(into.passes.len(), 2);
    assert_eq!(into.passes["q"].in_tank.as_ref().map(|tank| gallons(tank.volume.value())), Some(40.0));
    assert!((planned(&into, "p").area.to_acres() - 100.0).abs() < 1e-6);
    // One spray goes to one place.
    assert!(carry_into(&farm, &before, &change("50 gal"), "q").unwrap_err().contains("is left"));
}

/// Of 40 gal beyond the ground only 25 are left: all 40 ac of the second field are sprayed, no more, so 5 ac that came on top make
/// it 45 ac.
#[test]
fn less_in_the_tank_than_was_to_be_left_over_sprays_no_more_than_the_field() {
    let mut farm = farm();
    farm.passes["p"].extra = Some(q("40 gal"));
    let before = planned(&farm, "p");
    let mut change = Change { after: 3, in_tank: Some(q("25 gal")), ..Change::default() };
    change.more.insert("b".to_owned(), q("5 ac"));
    let changed = rest(&farm, &before, &change).unwrap();
    assert_eq!(acres(changed.farm.fields["b"].area.value()), 45.0);
    assert_eq!(acres(planned(&changed.farm, &changed.rest.unwrap()).area), 5.0);
}

/// 2 of 42 ac of a field are never sprayed. After two loads of 400 gal 20 of its 40 are; 25 are left in place of 20, so the field has
/// 20 + 25 + 2 = 47 ac.
#[test]
fn a_field_that_turns_out_larger_keeps_what_is_not_sprayed() {
    let mut farm = farm();
    farm.fields["b"].area = q("42 ac");
    farm.fields["b"].unsprayed = Some(q("2 ac"));
    let before = planned(&farm, "p");
    let mut change = Change { after: 2, ..Change::default() };
    change.ground.insert("b".to_owned(), q("25 ac"));
    let changed = rest(&farm, &before, &change).unwrap();
    assert_eq!(acres(changed.farm.fields["b"].area.value()), 47.0);
}

#[test]
fn a_pass_that_goes_on_with_the_spray_goes_on_from_the_rest() {
    let mut farm = farm();
    farm.passes["p"].extra = Some(q("40 gal"));
    let mut other = farm.passes["p"].clone();
    other.extra = None;
    other.in_tank = Some(InTank { volume: q("40 gal"), from: "p".into() });
    farm.passes.insert("q".into(), other);
    let changed = rest(&farm, &planned(&farm, "p"), &Change { after: 2, ..Change::default() }).unwrap();
    assert_eq!(Some(&changed.farm.passes["q"].in_tank.as_ref().unwrap().from), changed.rest.as_ref());
}

#[test]
fn filling_through_is_done_once_and_with_all_that_the_first_leaves() {
    let mut farm = farm();
    let mut other = farm.passes["p"].clone();
    other.fields = vec!["a".into()];
    other.parts.insert("a".into(), q("9 ac"));
    farm.passes.insert("q".into(), other);
    let through = carry_over(&farm, &planned(&farm, "p"), &planned(&farm, "q")).unwrap();
    // The last load of 200 gal has room for all the 90 gal that q takes, and for more.
    assert!(carry_over(&through, &planned(&through, "p"), &planned(&through, "q")).unwrap_err().contains("already"));
    let both = |farm: &Farm| {
        let extra = farm.passes["p"].extra.as_ref().map_or(0.0, |extra| gallons(extra.value()));
        (extra, farm.passes["q"].in_tank.as_ref().map_or(0.0, |in_tank| gallons(in_tank.volume.value())))
    };
    farm.passes["p"].extra = Some(q("10 gal"));
    let with_extra = carry_over(&farm, &planned(&farm, "p"), &planned(&farm, "q")).unwrap();
    assert_eq!(both(&with_extra), (90.0, 90.0));
    farm.passes["p"].extra = None;
    // A decided last load grows; those before it stay.
    farm.passes["p"].sizes = vec![q("300 gal"), q("400 gal"), q("300 gal")];
    let decided = carry_over(&farm, &planned(&farm, "p"), &planned(&farm, "q")).unwrap();
    let loads: Vec<f64> = planned(&decided, "p").loads.iter().map(|load| gallons(load.volume)).collect();
    assert_eq!((loads, both(&decided)), (vec![300.0, 400.0, 390.0], (90.0, 90.0)));
}

/// Ten loads of 100 gal hold 400 gal each: there is room for 3,000 gal, but no more than a tank goes on.
#[test]
fn no_more_goes_on_than_a_tank_holds_beside_ground() {
    let mut farm = farm();
    farm.passes["p"].sizes = vec![q("100 gal"); 9];
    let mut other = farm.passes["p"].clone();
    other.sizes.clear();
    farm.passes.insert("q".into(), other.clone());
    let through = carry_over(&farm, &planned(&farm, "p"), &planned(&farm, "q")).unwrap();
    assert_eq!(through.passes["p"].extra.as_ref().map(|extra| gallons(extra.value())), Some(300.0));
    assert!(planned(&through, "p").level() < Some(Level::Stop), "{:?}", planned(&through, "p").findings);
    // With 10 gal beyond the ground it is still the last load that holds both, and some ground.
    let mut beyond = farm.clone();
    beyond.passes["p"].extra = Some(q("10 gal"));
    beyond.passes["q"].parts.insert("a".into(), q("60 ac"));
    let through = carry_over(&beyond, &planned(&beyond, "p"), &planned(&beyond, "q")).unwrap();
    assert_eq!(through.passes["p"].extra.as_ref().map(|extra| gallons(extra.value())), Some(300.0));
    // Two stretches: what lies before a border has no room for what comes after it.
    farm.passes["p"].sizes.clear();
    farm.fields["b"].crop = "soybean".into();
    let apart = carry_over(&farm, &planned(&farm, "p"), &planned(&farm, "q"));
    assert!(apart.unwrap_err().contains("no room"), "600 gal and 400 gal: the last load is full");
}

/// Two parts are one application to the label, so the same ground must not be in both.
#[test]
fn parts_of_one_application_find_room_on_the_field() {
    let farm = farm();
    let changed = rest(&farm, &planned(&farm, "p"), &Change { after: 2, ..Change::default() }).unwrap();
    let (mut farm, id) = (changed.farm, changed.rest.unwrap());
    let stops = |farm: &Farm, id: &str| {
        let findings = planned(farm, id).findings;
        findings.into_iter().filter(|finding| finding.text.contains("one application")).collect::<Vec<_>>()
    };
    assert_eq!((stops(&farm, &id), stops(&farm, "p")), (vec![], vec![]));
    // 20 of 40 ac are the first part's.
    farm.passes[&id].parts.insert("b".into(), q("21 ac"));
    for id in [id.as_str(), "p"] {
        let found = stops(&farm, id);
        assert!(found[0].text.contains("cover 41 ac together; 40 ac can be sprayed"), "{found:?}");
        assert_eq!((found.len(), found[0].level), (1, Level::Stop));
    }
    // What was really sprayed counts as it is recorded.
    let mut record = tankard_core::season::record::from_plan(&farm, &Log::of(&farm), &planned(&farm, "p")).unwrap();
    farm.records.insert("r".into(), record.clone());
    assert_eq!(stops(&farm, &id).len(), 1);
    record.fields["b"].area = q("19 ac");
    farm.records.insert("r".into(), record);
    // The acre that is not recorded is still planned, until the pass is lowered to what was sprayed.
    assert_eq!(stops(&farm, &id).len(), 1);
    farm.passes["p"].parts.insert("b".into(), q("19 ac"));
    assert_eq!(stops(&farm, &id), []);
}

/// Two ends of one spray: what one pass leaves, others go on with.
#[test]
fn what_is_in_the_tank_is_what_another_pass_leaves() {
    let mut farm = farm();
    farm.passes["p"].extra = Some(q("40 gal"));
    let mut other = farm.passes["p"].clone();
    other.name = "Second".into();
    (other.extra, other.in_tank) = (None, Some(InTank { volume: q("40 gal"), from: "p".into() }));
    farm.passes.insert("q".into(), other.clone());
    let told = |farm: &Farm, id: &str, text: &str| {
        let findings = planned(farm, id).findings;
        let found = findings.iter().filter(|finding| finding.level == Level::Check).find(|f| f.text.contains(text));
        assert!(found.is_some_and(|found| !found.hint.is_empty()), "{text} is not in {findings:?}");
    };
    let tank = |farm: &Farm, id: &str| {
        let findings = planned(farm, id).findings;
        let of_tank = |text: &str| ["tank", "left after", "go on", "leaves"].iter().any(|word| text.contains(word));
        findings.into_iter().filter(|f| f.level >= Level::Check && of_tank(&f.text)).collect::<Vec<_>>()
    };
    assert_eq!((tank(&farm, "p"), tank(&farm, "q")), (vec![], vec![]));

    let mut cleared = farm.clone();
    cleared.passes["p"].extra = None;
    told(&cleared, "p", "Nothing is left after the last metre; Second goes on with 40 gal");
    told(&cleared, "q", "Burndown leaves nothing in the tank; this pass goes on with 40 gal of it");

    let mut twice = farm.clone();
    other.name = "Third".into();
    twice.passes.insert("t".into(), other);
    told(&twice, "p", "40 gal are left after the last metre; Second and Third go on with 80 gal");
    told(&twice, "t", "Burndown leaves 40 gal in the tank; this pass goes on with 40 gal of it, and Second too");

    let mut elsewhere = farm.clone();
    elsewhere.rigs.insert("small".into(), Rig::new("Small boom", q("400 gal")));
    elsewhere.passes["q"].rig = "small".into();
    told(&elsewhere, "q", "which goes out with Boom");
    let mut before = farm.clone();
    before.passes["q"].date = date(2031, 6, 11);
    told(&before, "q", "which is planned for 12 June 2031");

    let mut apart = farm.clone();
    apart.fields["b"].crop = "soybean".into();
    told(&apart, "q", "runs over from Elm field to Oak field, which are kept apart: their crops differ");

    // A pass for which nothing is mixed leaves what is too much: 1,000 gal are taken.
    let mut through = farm.clone();
    through.rigs["boom"].tank = q("1200 gal");
    through.passes["p"].extra = None;
    through.passes["p"].in_tank = Some(InTank { volume: q("1040 gal"), from: String::new() });
    assert_eq!(tank(&through, "q"), []);
    // One that cannot be laid out for another reason leaves nobody knows what.
    through.passes["p"].in_tank = Some(InTank { volume: q("100 gal"), from: String::new() });
    through.passes["p"].carrier = None;
    told(&through, "q", "What Burndown leaves of its spray cannot be told");
    through.passes["p"].carrier = Some(q("10 gal/ac"));
    through.passes["p"].sizes = vec![q("2000 gal")];
    told(&through, "q", "What Burndown leaves of its spray cannot be told");
    // What was sprayed leaves what was seen in the tank.
    let record =
        tankard_core::season::record::from_plan(&cleared, &Log::of(&cleared), &planned(&cleared, "p")).unwrap();
    cleared.records.insert("r".into(), record);
    assert_eq!(tank(&cleared, "q"), []);
    // Two that go on with one another end.
    farm.passes["p"].in_tank = Some(InTank { volume: q("40 gal"), from: "q".into() });
    told(&farm, "p", "Second leaves nothing in the tank");
}

/// In bands of a third of the ground a record holds 6.67 ac of bands for 20 ac driven over.
#[test]
fn parts_in_bands_find_room_as_they_are_driven_over() {
    use tankard_core::farm::{Layout, NozzleSet};
    let mut farm = farm();
    let layout = Some(Layout::Band { width: q("10 in"), rows: q("30 in"), nozzles: 1 });
    farm.rigs["boom"].sets.insert("bands".into(), NozzleSet { layout, ..NozzleSet::default() });
    farm.passes["p"].nozzles = "bands".into();
    farm.passes["p"].fields = vec!["b".into()];
    farm.passes["p"].parts.insert("b".into(), q("20 ac"));
    let mut second = farm.passes["p"].clone();
    second.rest_of = "p".into();
    farm.passes.insert("s".into(), second);
    let record = tankard_core::season::record::from_plan(&farm, &Log::of(&farm), &planned(&farm, "p")).unwrap();
    farm.records.insert("r".into(), record);
    let stops =
        |farm: &Farm| planned(farm, "s").findings.iter().any(|finding| finding.text.contains("one application"));
    assert!(!stops(&farm));
    farm.passes["s"].parts.insert("b".into(), q("21 ac"));
    assert!(stops(&farm));
}

/// By hand: 22 fl oz/ac went on each acre once, though in two records; a second application makes 44 of the 50 there may be, a
/// third 66, which are 4.12 pt.
#[test]
fn records_of_two_parts_are_one_application_to_those_after_them() {
    let farm = farm();
    let changed = rest(&farm, &planned(&farm, "p"), &Change { after: 2, ..Change::default() }).unwrap();
    let (mut farm, id) = (changed.farm, changed.rest.unwrap());
    let period = Period::Year;
    farm.products["glyphosate"].label[1].says = Says::Applications { most: 2, days_apart: 0, per: period };
    let total = Says::SeasonTotal { most: q("50 fl oz/ac"), per: period };
    farm.products["glyphosate"].label.push(Statement::new(total, "page 6"));
    farm.products["glyphosate"].actives.push(tankard_core::farm::Active {
        name: "glyphosate".into(),
        group: "9".into(),
        basis: tankard_core::quantity::ActiveBasis::AcidEquivalent,
        content: q("540 g/L"),
    });
    // 44 fl oz of 540 g/L are 1.55 lb.
    let active = Says::ActiveSeasonTotal { active: "glyphosate".into(), most: q("1.8 lb ae/ac"), per: period };
    farm.products["glyphosate"].label.push(Statement::new(active, "page 6"));
    for part in ["p", id.as_str()] {
        let record = tankard_core::season::record::from_plan(&farm, &Log::of(&farm), &planned(&farm, part)).unwrap();
        farm.records.insert(part.to_owned(), record);
    }
    let mut later = farm.passes["p"].clone();
    (later.name, later.date, later.fields) = ("Later".into(), date(2031, 7, 12), vec!["b".into()]);
    later.parts.clear();
    later.sizes.clear();
    farm.passes.insert("later".into(), later);
    let stops = |farm: &Farm| -> Vec<String> {
        let findings = planned(farm, "later").findings;
        findings.into_iter().filter(|finding| finding.level == Level::Stop).map(|finding| finding.text).collect()
    };
    assert_eq!(stops(&farm), Vec::<String>::new());
    // Records of more ground than there is are applications each.
    let mut over = farm.clone();
    over.records[&id].fields["b"].area = q("30 ac");
    let stops_over = stops(&over);
    assert!(stops_over.iter().any(|stop| stop.contains("application number 3")), "{stops_over:?}");
    // And so are two records of one part.
    let twice = farm.records["p"].clone();
    farm.records.insert("again".into(), twice);
    let stops = stops(&farm);
    assert!(stops.iter().any(|stop| stop.contains("brings Glyphosate 540 SL (demo) to 4.12 pt/ac")), "{stops:?}");
    assert!(stops.iter().any(|stop| stop.contains("brings glyphosate to")), "{stops:?}");
}
