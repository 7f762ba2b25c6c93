//! Records of one pass in parts, and what went out against loads and ground.

use super::{
    Portion, amount_text, balance, in_proportion, is_out_of_proportion, other_ground, typed_otherwise, unrecorded,
    with_amount,
};
use crate::farm::{
    Active, Container, ContainerKind, Farm, Field, Formulation, Layout, Left, Line, NozzleSet, Pass, Product,
    ProductKind, Record, RecordField, Rig, Water,
};
use crate::plan::{Plan, plan};
use crate::quantity::{ActiveBasis, Amount, Area, AsTyped, Quantity, Volume};
use crate::season::close::{before_closing, close};
use crate::season::record::{from_plan, of_portion};
use crate::season::{Log, Reach, by_application, product_so_far};
use indexmap::IndexMap;
use jiff::civil::date;

const PASS: &str = "post";

fn typed<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap()
}

/// Two fields of 100 and 60 acres at 15 gal/ac out of a tank of 1000 gal: 2400 gal in three loads.
fn farm() -> Farm {
    let mut farm = Farm::new("Test");
    farm.fields.insert("mill".to_owned(), Field::new("Mill field", typed("100 ac")));
    farm.fields.insert("hill".to_owned(), Field::new("Hill sixty", typed("60 ac")));
    farm.waters.insert("well".to_owned(), Water { name: "Yard well".to_owned(), ..Water::default() });
    let mut rig = Rig::new("Big boom", typed("1000 gal"));
    rig.boom = Some(typed("90 ft"));
    rig.speed = Some(typed("12 mph"));
    rig.height = Some(typed("20 in"));
    rig.sets.insert("06".to_owned(), NozzleSet { name: "110 degree, size 06".to_owned(), ..NozzleSet::default() });
    farm.rigs.insert("boom".to_owned(), rig);
    let mut liquid = Product::new("Glyphosate 540 SL (demo)", ProductKind::Herbicide, Formulation::SL);
    liquid.price = Some(typed("24.50 / gal"));
    liquid.actives.push(Active {
        name: "glyphosate".to_owned(),
        group: "9".to_owned(),
        basis: ActiveBasis::AcidEquivalent,
        content: typed("540 g/L"),
    });
    let dry = Product::new("Ammonium sulfate (demo)", ProductKind::Adjuvant, Formulation::SG);
    farm.products.extend([("gly".to_owned(), liquid), ("ams".to_owned(), dry)]);
    let mut pass = Pass::new("Corn, post", date(2031, 6, 12));
    pass.fields = ["mill", "hill"].map(str::to_owned).to_vec();
    pass.water = "well".to_owned();
    pass.rig = "boom".to_owned();
    pass.carrier = Some(typed("15 gal/ac"));
    pass.operator = "A. Demo".to_owned();
    pass.weeds = vec!["waterhemp".to_owned()];
    pass.pressure = Some(typed("40 psi"));
    pass.mix = vec![Line::new("gly", typed("24 fl oz/ac")), Line::new("ams", typed("2 lb/ac"))];
    farm.passes.insert(PASS.to_owned(), pass);
    farm
}

fn plan_of(farm: &Farm) -> Plan {
    plan(farm, PASS).unwrap()
}

fn number(amount: Amount) -> f64 {
    match amount {
        Amount::Volume(volume) => volume.to_us_gallons(),
        Amount::Mass(mass) => mass.to_pounds(),
    }
}

fn near(a: f64, b: f64, within: f64) {
    assert!((a - b).abs() <= within * b.abs().max(1.0), "{a} {b}");
}

fn put(farm: &mut Farm, id: &str, portion: &Portion) -> Record {
    let record = of_portion(farm, &Log::of(farm), &plan_of(farm), portion).unwrap();
    farm.records.insert(id.to_owned(), record.clone());
    record
}

#[test]
fn the_plan_fills_in_all_that_it_knows() {
    let mut farm = farm();
    farm.products["gly"].containers = vec![Container {
        kind: ContainerKind::Tote,
        size: typed("265 gal"),
        full: 1,
        opened: None,
        lot: "L 31".to_owned(),
    }];
    let record = from_plan(&farm, &Log::of(&farm), &plan_of(&farm)).unwrap();
    assert_eq!((record.loads, record.operator.as_str(), record.method.as_str()), (Some(3), "A. Demo", "ground boom"));
    assert_eq!(
        (record.nozzles.as_str(), record.weeds.as_slice()),
        ("110 degree, size 06", &[crate::farm::Text::from("waterhemp")][..])
    );
    assert_eq!(record.pressure.as_ref().unwrap().text(), "40 psi");
    assert_eq!(record.speed.as_ref().unwrap().text(), "12 mph");
    assert_eq!(record.height.as_ref().unwrap().text(), "20 in");
    assert_eq!((record.planned.as_ref(), record.left.as_ref()), (record.volume.as_ref(), None));
    assert!(record.fields.values().all(|field| field.planned.as_ref() == Some(&field.area)));
    assert!(record.lines.iter().all(|line| line.planned.as_ref() == Some(&line.amount)));
    let gly = record.lines.iter().find(|line| line.product == "gly").unwrap();
    assert_eq!((gly.lot.as_str(), gly.price.as_ref().unwrap().text()), ("L 31", "24.50 / gal"));
    assert!(record.start.is_none() && record.wind.is_none() && record.clean_out.is_empty() && record.made.is_none());
}

#[test]
fn a_lot_stands_only_where_it_is_the_only_one() {
    let mut farm = farm();
    let container = |full, lot: &str| Container {
        kind: ContainerKind::Jug,
        size: typed("2.5 gal"),
        full,
        opened: None,
        lot: lot.to_owned(),
    };
    let lot = |farm: &Farm| {
        let record = from_plan(farm, &Log::of(farm), &plan_of(farm)).unwrap();
        record.lines.into_iter().find(|line| line.product == "gly").unwrap().lot
    };
    for (containers, wanted) in [
        (vec![container(2, "A"), container(1, "A")], "A"),
        (vec![container(2, "A"), container(0, "B")], "A"),
        (vec![container(2, "A"), container(1, "B")], ""),
        (vec![container(2, "A"), container(1, "")], ""),
        (vec![], ""),
    ] {
        farm.products["gly"].containers = containers;
        assert_eq!(lot(&farm), wanted);
    }
}

/// What is out by each load is out by all of them: to a part in 10⁹.
#[test]
fn loads_add_up_to_the_whole() {
    let plan = plan_of(&farm());
    let whole = Portion::whole(&plan);
    assert_eq!(whole.loads, Some(3));
    let parts: Vec<Portion> =
        [&[1, 2][..], &[3][..]].iter().map(|numbers| Portion::of_loads(&plan, numbers).unwrap()).collect();
    assert_eq!(parts.iter().map(|part| part.loads.unwrap()).collect::<Vec<_>>(), [2, 1]);
    near(parts.iter().map(|part| part.volume.to_us_gallons()).sum(), 2400.0, 1e-9);
    near(parts.iter().map(|part| part.area().to_acres()).sum(), 160.0, 1e-9);
    for (at, amount) in whole.amounts.iter().enumerate() {
        near(parts.iter().map(|part| number(part.amounts[at])).sum(), number(*amount), 1e-9);
    }
    // Two loads of 1000 gal cover 133.3 acres: all of the first field and 33.3 of the second.
    near(parts[0].fields[0].1.to_acres(), 100.0, 1e-9);
    near(parts[0].fields[1].1.to_acres(), 100.0 / 3.0, 1e-9);
    assert_eq!(parts[1].fields.len(), 1);
    assert_eq!(Portion::of_loads(&plan, &[7]), None);
}

#[test]
fn what_is_left_of_a_pass_is_what_no_record_covers() {
    let mut farm = farm();
    let plan = plan_of(&farm);
    assert_eq!(Portion::rest(&farm, &Log::of(&farm), &plan), None);
    put(&mut farm, "first", &Portion::of_loads(&plan, &[1, 2]).unwrap());
    let rest = Portion::rest(&farm, &Log::of(&farm), &plan).unwrap();
    assert_eq!((rest.loads, rest.fields.len()), (Some(1), 1));
    // 60 less 33.3 acres, in the six digits of the record.
    near(rest.area().to_acres(), 60.0 - 100.0 / 3.0, 1e-5);
    for (part, whole) in rest.amounts.iter().zip(&Portion::whole(&plan).amounts) {
        near(part.ratio(*whole).unwrap(), rest.area().ratio(plan.area).unwrap(), 1e-9);
    }
    near(
        rest.volume.ratio(rest.area().ratio(Area::from_acres(1.0)).map(Volume::from_us_gallons).unwrap()).unwrap(),
        15.0,
        1e-9,
    );
    // All loads may be filled while ground is left.
    farm.records["first"].loads = Some(3);
    assert_eq!(Portion::rest(&farm, &Log::of(&farm), &plan).unwrap().loads, None);
    farm.records["first"].loads = Some(2);
    let second = put(&mut farm, "second", &rest);
    assert_eq!(second.fields["hill"].planned, Some(second.fields["hill"].area.clone()));
    assert_eq!(Portion::rest(&farm, &Log::of(&farm), &plan), None);
}

/// A label counts what a field has had: two records of parts of a pass are one application, the pass recorded twice is two.
#[test]
fn parts_of_a_pass_count_once_and_the_pass_again_twice() {
    let mut farm = farm();
    let plan = plan_of(&farm);
    put(&mut farm, "first", &Portion::of_loads(&plan, &[1, 2]).unwrap());
    let rest = Portion::rest(&farm, &Log::of(&farm), &plan).unwrap();
    put(&mut farm, "second", &rest);
    farm.records["second"].date = date(2031, 6, 13);
    let (hill, other) = ("hill".to_owned(), "other".to_owned());
    let applications = |farm: &Farm| by_application(farm, &hill, farm.records.values()).len();
    assert_eq!(applications(&farm), 1);
    let reach = Reach::always(&hill, &other, date(2031, 7, 1));
    let rate =
        |farm: &Farm| product_so_far(farm, &Log::of(farm), reach, "gly").sum.unwrap().over(Area::from_acres(1.0));
    // 24 fl oz/ac, as the jug measures it.
    near(number(rate(&farm)) * 128.0, 24.0, 0.01);
    // Neither part is an earlier application beside the plan of the pass.
    let own = PASS.to_owned();
    assert_eq!(Reach::always(&hill, &own, date(2031, 6, 12)).records(&farm, &Log::of(&farm)).count(), 0);
    put(&mut farm, "again", &Portion::whole(&plan));
    farm.records["again"].date = date(2031, 6, 26);
    assert_eq!(applications(&farm), 2);
    near(number(rate(&farm)) * 128.0, 48.0, 0.01);
    // To the plan of the pass both parts are the pass itself, and what came again is an earlier or later application.
    let beside = Reach::always(&hill, &own, date(2031, 6, 12))
        .records(&farm, &Log::of(&farm))
        .map(|record| record.date)
        .collect::<Vec<_>>();
    assert_eq!(beside, [date(2031, 6, 26)]);
}

/// As [`by_application`] is defined, each record held against all that came before: slow, and plain to see.
fn in_plain_words<'a>(farm: &Farm, field: &str, records: impl Iterator<Item = &'a Record>) -> Vec<Vec<&'a Record>> {
    let ground = |record: &Record| record.fields[field].area.value();
    let fits = |sum: Area, room: Area| !sum.exceeds(room * (1.0 + 1e-5));
    let mut all: Vec<Vec<&Record>> = Vec::new();
    for record in records {
        let beside = |parts: &Vec<&Record>| {
            let is_part = |part: &&Record| match (&part.pass, &record.pass) {
                (Some(one), Some(other)) if one == other => {
                    let own: Area = parts.iter().filter(|part| part.pass == record.pass).map(|part| ground(part)).sum();
                    let covers =
                        farm.passes.get(one).map(|pass| crate::ground::covers(farm, pass, field, &farm.fields[field]));
                    covers.is_some_and(|covers| fits(own + ground(record), covers))
                }
                (Some(one), Some(other)) => farm.is_one_application(one, other),
                _ => false,
            };
            let there: Area = parts.iter().map(|part| ground(part)).sum();
            parts.iter().all(is_part) && fits(there + ground(record), farm.fields[field].area.value())
        };
        match all.iter_mut().find(|parts| beside(parts)) {
            Some(parts) => parts.push(record),
            None => all.push(vec![record]),
        }
    }
    all
}

#[test]
fn many_records_fall_into_the_same_applications() {
    let mut farm = farm();
    for (id, rest_of, part) in [
        ("rest", PASS, Some("25 ac")),
        ("again", "", None),
        ("last", "rest", Some("10 ac")),
        ("strip", "", Some("4 ac")),
    ] {
        let mut pass = farm.passes[PASS].clone();
        rest_of.clone_into(&mut pass.rest_of);
        pass.parts.extend(part.map(|part| ("hill".to_owned(), typed(part))));
        farm.passes.insert(id.to_owned(), pass);
    }
    let passes = [Some(PASS), Some("rest"), Some("again"), Some("last"), Some("strip"), Some("gone"), None];
    let areas = ["60 ac", "12 ac", "25 ac", "0 ac", "4 ac", "2.5 ac", "33 ac", "70 ac"];
    // Any numbers do; these come by a common linear rule.
    let mut state = 7_u32;
    let mut draw = |below: usize| {
        state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        state as usize / 65_536 % below
    };
    for n in 0..600 {
        let mut record = Record::new(&n.to_string(), date(2031, 6, 12));
        record.pass = passes[draw(passes.len())].map(Into::into);
        record.fields.insert("hill".to_owned(), RecordField::new("Hill sixty", typed(areas[draw(areas.len())])));
        farm.records.insert(n.to_string(), record);
    }
    let hill = "hill".to_owned();
    for most in [1, 40, 600] {
        let records = || farm.records.values().take(most);
        let all = by_application(&farm, &hill, records());
        assert_eq!(all, in_plain_words(&farm, &hill, records()));
        assert!(most < 600 || all.len() > 100 && all.iter().any(|parts| parts.len() > 2));
    }
}

#[test]
fn amounts_follow_the_ground_only_when_asked() {
    let farm = farm();
    let mut record = from_plan(&farm, &Log::of(&farm), &plan_of(&farm)).unwrap();
    assert_eq!(other_ground(&record), None);
    let before = record.clone();
    record.fields["mill"].area = typed("40 ac");
    // 100 of 160 acres.
    let ratio = other_ground(&record).unwrap();
    near(ratio, 0.625, 1e-9);
    assert_eq!(record.lines, before.lines);
    assert!(is_out_of_proportion(&farm, &record, ratio));
    in_proportion(&farm, &mut record, ratio);
    assert!(!is_out_of_proportion(&farm, &record, ratio));
    assert_eq!(record.volume.as_ref().unwrap().text(), "1500 gal");
    for (line, old) in record.lines.iter().zip(&before.lines) {
        // To the mark: a whole number of ounces, at most half of one from what arithmetic asks for.
        let ounce: Amount = match line.amount.value() {
            Amount::Volume(_) => typed::<Amount>("1 fl oz").value(),
            Amount::Mass(_) => typed::<Amount>("1 oz").value(),
        };
        let ounces = line.amount.value().ratio(ounce).unwrap();
        near(ounces, ounces.round(), 1e-3 * ounces.max(1.0));
        near(ounces, old.amount.value().ratio(ounce).unwrap() * 0.625, 0.5 + 1e-3 * ounces);
        for (active, before) in line.actives.iter().zip(&old.actives) {
            let share = line.amount.value().ratio(old.amount.value()).unwrap();
            near(active.mass.ratio(before.mass.value()).unwrap(), share, 2e-4);
        }
    }
    // Back to the plan it is the plan again, from what was planned and not from what was scaled.
    record.fields["mill"].area = typed("100 ac");
    in_proportion(&farm, &mut record, 1.0);
    assert_eq!(
        record.lines.iter().map(|line| line.amount.value()).collect::<Vec<_>>(),
        before.lines.iter().map(|line| line.amount.value()).collect::<Vec<_>>()
    );
}

/// Out is what was mixed less what is left over.
#[test]
fn loads_and_left_over_balance() {
    let farm = farm();
    let plan = plan_of(&farm);
    let mut record = from_plan(&farm, &Log::of(&farm), &plan).unwrap();
    assert_eq!(balance(&farm, &plan, &record), None);
    record.left = Some(Left { volume: typed("240 gal"), went: "".into() });
    let found = balance(&farm, &plan, &record).unwrap();
    near(found.mixed.to_us_gallons(), 2400.0, 1e-9);
    near((found.out + found.left).to_us_gallons(), found.mixed.to_us_gallons(), 1e-9);
    for ((_, amount), whole) in found.amounts.iter().zip(&Portion::whole(&plan).amounts) {
        near(amount.ratio(*whole).unwrap(), 0.9, 1e-9);
    }
    assert!(!found.is_in(&record));
    found.put(&farm, &mut record);
    assert!(found.is_in(&record));
    assert_eq!(record.volume.as_ref().unwrap().text(), "2160 gal");
    // Two of the three loads, and nothing left over.
    record.left = None;
    record.loads = Some(2);
    let found = balance(&farm, &plan, &record).unwrap();
    near(found.out.to_us_gallons(), 2000.0, 1e-9);
    // More loads than the plan has, or more left over than was mixed, is for the person to say.
    record.loads = Some(9);
    assert_eq!(balance(&farm, &plan, &record), None);
    record.loads = Some(1);
    record.left = Some(Left { volume: typed("1200 gal"), went: "".into() });
    assert_eq!(balance(&farm, &plan, &record), None);
}

/// What a person typed as really used is neither scaled nor has its left over taken off.
#[test]
fn an_amount_that_was_typed_stays() {
    let farm = farm();
    let plan = plan_of(&farm);
    let mut record = from_plan(&farm, &Log::of(&farm), &plan).unwrap();
    let first = &record.lines[0];
    let used = amount_text(first.amount.value().times(1.03), farm.units);
    record.lines[0] = with_amount(first, used.clone(), farm.products.get(&first.product), farm.units);
    record.left = Some(Left { volume: typed("240 gal"), went: "".into() });
    assert_eq!(typed_otherwise(&farm, &record), [record.lines[0].name.to_string()]);
    let found = balance(&farm, &plan, &record).unwrap();
    assert_eq!(found.amounts.len(), plan.lines.len() - 1);
    found.put(&farm, &mut record);
    assert_eq!(record.lines[0].amount, used);
    let other = &record.lines[1];
    near(other.amount.value().ratio(other.planned.as_ref().unwrap().value()).unwrap(), 0.9, 1e-3);
    // Another left over is taken off the others again.
    record.left = Some(Left { volume: typed("480 gal"), went: "".into() });
    let found = balance(&farm, &plan, &record).unwrap();
    assert_eq!(found.amounts.len(), plan.lines.len() - 1);
    found.put(&farm, &mut record);
    assert!(found.is_in(&record) && record.lines[0].amount == used);
    record.left = None;
    record.fields["mill"].area = typed("40 ac");
    let ratio = other_ground(&record).unwrap();
    in_proportion(&farm, &mut record, ratio);
    assert_eq!(record.lines[0].amount, used);
    assert!(!is_out_of_proportion(&farm, &record, ratio));
}

/// Scaled to the ground, what was mixed is scaled too, so that a left over is taken off that: 1500 gal, less 60.
#[test]
fn a_left_over_is_taken_off_what_was_scaled() {
    let farm = farm();
    let plan = plan_of(&farm);
    let mut record = from_plan(&farm, &Log::of(&farm), &plan).unwrap();
    record.fields["mill"].area = typed("40 ac");
    record.left = Some(Left { volume: typed("60 gal"), went: "".into() });
    // As long as nothing is scaled the loads are those of the plan.
    let found = balance(&farm, &plan, &record).unwrap();
    assert!(!found.scaled);
    near(found.mixed.to_us_gallons(), 2400.0, 1e-9);
    let ratio = other_ground(&record).unwrap();
    in_proportion(&farm, &mut record, ratio);
    let found = balance(&farm, &plan, &record).unwrap();
    assert!(found.scaled);
    near(found.mixed.to_us_gallons(), 1500.0, 1e-6);
    near(found.out.to_us_gallons(), 1440.0, 1e-6);
    found.put(&farm, &mut record);
    let found = balance(&farm, &plan, &record).unwrap();
    assert!(found.scaled && found.is_in(&record));
    record.left = None;
    assert_eq!(balance(&farm, &plan, &record), None);
}

/// What the plan mixes beyond its ground is in the tank afterwards, and is not taken off twice.
#[test]
fn what_the_plan_leaves_over_stands_in_the_record() {
    let mut farm = farm();
    farm.passes[PASS].extra = Some(typed("50 gal"));
    let plan = plan_of(&farm);
    let mut record = from_plan(&farm, &Log::of(&farm), &plan).unwrap();
    assert_eq!(record.left.as_ref().unwrap().volume.text(), "50 gal");
    assert_eq!(record.volume.as_ref().unwrap().text(), "2400 gal");
    assert_eq!(balance(&farm, &plan, &record), None);
    record.left = Some(Left { volume: typed("100 gal"), went: "".into() });
    let found = balance(&farm, &plan, &record).unwrap();
    near(found.mixed.to_us_gallons(), 2450.0, 1e-9);
    near(found.out.to_us_gallons(), 2350.0, 1e-9);
}

/// One load of three recorded, on one field of two and on some of the other: what is left of the pass is still to be sprayed.
#[test]
fn a_record_of_some_loads_leaves_the_rest_of_the_pass() {
    let mut farm = farm();
    let (pass, fields) = (PASS.to_owned(), ["mill", "hill"].map(str::to_owned));
    assert!(!farm.is_recorded(PASS) && !farm.has_record(PASS));
    let whole = unrecorded(&farm, PASS).unwrap();
    assert_eq!((whole.partly, whole.share(), whole.words(&farm)), (false, 1.0, None));
    let plan = plan_of(&farm);
    put(&mut farm, "first", &Portion::of_loads(&plan, &[1, 2]).unwrap());
    assert!(!farm.is_recorded(PASS) && farm.has_record(PASS));
    let left = unrecorded(&farm, PASS).unwrap();
    let rest = Portion::rest(&farm, &Log::of(&farm), &plan).unwrap();
    assert_eq!(left.fields, rest.fields);
    assert_eq!(Log::of(&farm).unrecorded(&farm, PASS), Some(left.clone()));
    near(left.share(), (60.0 - 100.0 / 3.0) / 160.0, 1e-5);
    assert_eq!(left.words(&farm).unwrap(), "partly recorded: 26.7 ac of 160 ac left");
    let is_open = |farm: &Farm, fields: &[String]| Log::of(farm).is_open(farm, PASS, fields);
    assert!(!is_open(&farm, &fields[..1]) && is_open(&farm, &fields));
    put(&mut farm, "second", &rest);
    assert!(farm.is_recorded(PASS) && !is_open(&farm, &fields) && Log::of(&farm).unrecorded(&farm, PASS).is_none());
    // One acre of each field; a season that is closed leaves nothing to spray.
    farm.records.shift_remove("second");
    for field in farm.records["first"].fields.values_mut() {
        field.area = typed("1 ac");
    }
    near(unrecorded(&farm, PASS).unwrap().area().to_acres(), 158.0, 1e-9);
    let told = before_closing(&farm, 2031);
    assert!(told.iter().any(|told| told.text.contains("partly recorded: 158 ac of 160 ac left")), "{told:?}");
    farm = close(&farm, 2031, date(2031, 12, 1), &IndexMap::new(), "");
    assert!(farm.is_recorded(&pass));
}

/// Records hold the ground as it is treated, in bands a third of what is driven over.
#[test]
fn bands_are_recorded_by_the_ground_that_is_treated() {
    let mut farm = farm();
    let layout = Layout::Band { width: typed("10 in"), rows: typed("30 in"), nozzles: 1 };
    farm.rigs["boom"].sets["06"].layout = Some(layout);
    farm.passes[PASS].nozzles = "06".to_owned();
    let plan = plan_of(&farm);
    near(plan.area.to_acres(), 160.0 / 3.0, 1e-9);
    put(&mut farm, "all", &Portion::whole(&plan));
    assert!(farm.is_recorded(PASS));
    farm.records["all"].fields["hill"].area = typed("5 ac");
    let left = unrecorded(&farm, PASS).unwrap();
    near(left.area().to_acres(), 15.0, 1e-5);
    near(left.driven_over("hill").unwrap().to_acres(), 45.0, 1e-5);
    assert_eq!(left.driven_over("mill"), None);
}
