//! The shed against the passes: what they take, what is short, what to buy.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use jiff::civil::{Date, date};
use proptest::prelude::*;
use tankard_core::farm::{
    CarrierKind, Container, ContainerKind, Farm, Field, Fills, Formulation, InTank, Layout, Line, NozzleSet, Pass,
    Product, ProductKind, Record, Rig, Water,
};
use tankard_core::finding::{Basis, Finding, Level};
use tankard_core::plan::{Plan, plan};
use tankard_core::quantity::{Amount, AsTyped, Quantity};
use tankard_core::season::Log;
use tankard_core::stock::needs::{from_day, next_day, of_day};
use tankard_core::stock::{Need, Needs, buy};
use tankard_tests::cases;

fn typed<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

fn base(amount: Amount) -> f64 {
    match amount {
        Amount::Volume(volume) => volume.to_us_gallons(),
        Amount::Mass(mass) => mass.to_pounds(),
    }
}

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs()).max(1e-12)
}

fn jugs(full: u32) -> Container {
    Container { kind: ContainerKind::Jug, size: typed("2.5 gal"), full, opened: None, lot: String::new() }
}

/// Two fields of 80 ac, water, a rig, a liquid of which jugs are on hand, and a pass of 10 gal on each of two days.
fn farm(full: u32) -> Farm {
    let mut farm = Farm::new("Test");
    farm.fields.insert("a".to_owned(), Field::new("A", typed("80 ac")));
    farm.fields.insert("b".to_owned(), Field::new("B", typed("80 ac")));
    farm.waters.insert("well".to_owned(), Water { name: "Well".to_owned(), ..Water::default() });
    farm.rigs.insert("rig".to_owned(), Rig::new("Rig", typed("1000 gal")));
    let mut oil = Product::new("Oil", ProductKind::Adjuvant, Formulation::EC);
    oil.containers = vec![jugs(full)];
    oil.price = Some(typed("20 / gal"));
    farm.products.insert("oil".to_owned(), oil);
    farm.passes.insert("later".to_owned(), pass("Later", date(2031, 6, 14), "a"));
    farm.passes.insert("first".to_owned(), pass("First", date(2031, 6, 12), "b"));
    farm
}

fn pass(name: &str, day: Date, field: &str) -> Pass {
    let mut pass = Pass::new(name, day);
    pass.fields = vec![field.to_owned()];
    "well".clone_into(&mut pass.water);
    "rig".clone_into(&mut pass.rig);
    pass.carrier = Some(typed("10 gal/ac"));
    pass.mix = vec![Line::new("oil", typed("1 pt/ac"))];
    pass
}

fn record(farm: &mut Farm, id: &str) {
    let plan = plan(farm, id).unwrap();
    let record = tankard_core::season::record::from_plan(farm, &Log::of(farm), &plan).unwrap();
    farm.records.insert(id.to_owned(), record);
}

fn shortfalls(plan: &Plan) -> Vec<&Finding> {
    plan.findings.iter().filter(|finding| finding.text.contains("this pass needs")).collect()
}

fn of<'a>(needs: &'a Needs, id: &str) -> &'a Need {
    needs.products.iter().find(|need| need.product == id).unwrap()
}

#[test]
fn a_pass_that_the_shed_does_not_reach_for_is_a_stop() {
    // By hand: 80 ac × 1 pt = 10 gal a pass; 6 jugs are 15 gal, so 5 gal are there for the later pass and 2 jugs are missing.
    let farm = farm(6);
    assert!(shortfalls(&plan(&farm, "first").unwrap()).is_empty());
    let later = plan(&farm, "later").unwrap();
    let found = shortfalls(&later);
    assert_eq!(found.len(), 1);
    assert_eq!((found[0].level, &found[0].basis), (Level::Stop, &Basis::Arithmetic));
    assert_eq!(
        found[0].text,
        "Oil: this pass needs 10 gal; 5 gal are on hand after what earlier passes take (15 gal less 10 gal for First)"
    );
    assert_eq!(found[0].hint, "Buy 2 jugs of 2.5 gal, lower the area, or type in the shed what was bought or counted.");
}

#[test]
fn what_is_enough_to_the_drop_is_enough() {
    assert!(shortfalls(&plan(&farm(8), "later").unwrap()).is_empty());
    let short = farm(3);
    let first = plan(&short, "first").unwrap();
    assert_eq!(shortfalls(&first)[0].text, "Oil: this pass needs 10 gal; 7 gal 2 qt are on hand");
    let later = plan(&short, "later").unwrap();
    assert!(shortfalls(&later)[0].text.contains("none is on hand after what earlier passes take"));
    assert!(shortfalls(&later)[0].hint.starts_with("Buy 4 jugs of 2.5 gal,"));
}

#[test]
fn what_is_not_typed_is_no_shortfall_until_it_is_counted() {
    let mut farm = farm(0);
    assert!(shortfalls(&plan(&farm, "first").unwrap()).is_empty());
    assert!(of(&of_day(&farm, date(2031, 6, 12)), "oil").short.is_none());
    farm.products["oil"].counted = Some(date(2031, 6, 10));
    assert_eq!(shortfalls(&plan(&farm, "first").unwrap())[0].text, "Oil: this pass needs 10 gal; none is on hand");
    farm.products["oil"].containers.clear();
    let said = plan(&farm, "first").unwrap();
    assert_eq!(
        shortfalls(&said)[0].hint,
        "Buy 10 gal or more, lower the area, or type in the shed what was bought or counted; type in the shed what it is sold in."
    );
}

#[test]
fn a_recorded_pass_takes_nothing_and_is_not_judged() {
    let mut farm = farm(6);
    record(&mut farm, "first");
    assert!(shortfalls(&plan(&farm, "later").unwrap()).is_empty());
    farm.products["oil"].containers[0].full = 1;
    assert_eq!(shortfalls(&plan(&farm, "later").unwrap()).len(), 1);
    record(&mut farm, "later");
    assert!(shortfalls(&plan(&farm, "later").unwrap()).is_empty());
    assert_eq!(next_day(&farm, date(2031, 1, 1)), None);
}

#[test]
fn on_one_day_the_order_of_the_list_decides() {
    let mut farm = farm(6);
    farm.passes["later"].date = date(2031, 6, 12);
    // It stands first in the farm.
    assert!(shortfalls(&plan(&farm, "later").unwrap()).is_empty());
    assert_eq!(shortfalls(&plan(&farm, "first").unwrap()).len(), 1);
}

#[test]
fn needs_of_a_day_and_of_the_season() {
    let farm = farm(6);
    assert_eq!(next_day(&farm, date(2031, 6, 1)), Some(date(2031, 6, 12)));
    assert_eq!(next_day(&farm, date(2031, 6, 13)), Some(date(2031, 6, 14)));
    let day = of_day(&farm, date(2031, 6, 14));
    let oil = of(&day, "oil");
    assert!(close(base(oil.amount), 10.0) && close(base(oil.before), 10.0) && close(base(oil.left.unwrap()), -5.0));
    assert!(close(base(oil.short.unwrap()), 5.0));
    assert_eq!(oil.cost.unwrap().show(), "200.00");
    let season = from_day(&farm, date(2031, 6, 12));
    assert_eq!(season.passes, ["first", "later"]);
    let oil = of(&season, "oil");
    assert!(close(base(oil.amount), 20.0) && close(base(oil.before), 0.0) && close(base(oil.short.unwrap()), 5.0));
    assert!(of_day(&farm, date(2031, 6, 13)).products.is_empty());
}

#[test]
fn spray_in_the_tank_and_spray_beyond_count() {
    let mut farm = farm(6);
    // By hand: 800 gal of spray less 200 in the tank and 40 more are 640 gal, so 64 ac: 8 gal of oil, 632 of water.
    let pass = farm.passes.get_mut("first").unwrap();
    pass.in_tank = Some(InTank { volume: typed("200 gal"), from: String::new() });
    pass.extra = Some(typed("40 gal"));
    let day = of_day(&farm, date(2031, 6, 12));
    assert!(close(base(of(&day, "oil").amount), 8.0));
    assert!(close(day.waters[0].volume.to_us_gallons(), 632.0));
    // A tank that holds more than the pass takes asks for nothing.
    farm.passes["first"].in_tank = Some(InTank { volume: typed("900 gal"), from: String::new() });
    let day = of_day(&farm, date(2031, 6, 12));
    assert!(close(base(of(&day, "oil").amount), 0.0) && day.waters.is_empty() && day.open.is_empty());
    assert!(shortfalls(&plan(&farm, "later").unwrap()).is_empty());
}

/// Two loads decided as 600 gal for 800 gal of ground hold 1,200 gal: by hand 120 ac × 1 pt are 15 gal of oil, where the ground
/// takes 10.
#[test]
fn loads_that_hold_more_than_the_ground_takes_ask_for_more() {
    let mut farm = farm(5);
    farm.passes["first"].sizes = vec![typed("600 gal"), typed("600 gal")];
    assert_eq!(
        shortfalls(&plan(&farm, "first").unwrap())[0].text,
        "Oil: this pass needs 15 gal; 12 gal 2 qt are on hand"
    );
    assert!(close(base(of(&of_day(&farm, date(2031, 6, 12)), "oil").amount), 15.0));
    farm.products["oil"].containers = vec![jugs(6)];
    assert!(shortfalls(&plan(&farm, "first").unwrap()).is_empty());
    assert!(shortfalls(&plan(&farm, "later").unwrap())[0].text.contains("none is on hand"));
    // A last load topped up for the agitation: 800 gal in tanks of 600 with at least 400 are 1,000 gal, and 12.5 gal of oil.
    farm.rigs["rig"].tank = typed("600 gal");
    farm.rigs["rig"].least = Some(typed("400 gal"));
    farm.passes["first"].sizes = vec![typed("600 gal")];
    farm.passes["first"].split = tankard_core::farm::LoadSplit::ByAims;
    farm.aims = vec![tankard_core::farm::Aim::Agitation];
    farm.products["oil"].containers = vec![jugs(4)];
    assert_eq!(
        shortfalls(&plan(&farm, "first").unwrap())[0].text,
        "Oil: this pass needs 12 gal 2 qt; 10 gal are on hand"
    );
}

/// 79.9 ac at 1 pt/ac take 9.9875 gal. What is measured of a liquid, here 10 gal, may be a mark more than there is.
#[test]
fn a_mark_more_of_a_liquid_is_no_shortfall() {
    let mut farm = farm(3);
    farm.fields["b"].area = typed("79.9 ac");
    farm.products["oil"].measuring_step = Some(typed("1 gal"));
    farm.products["oil"].containers.push(Container { full: 0, opened: Some(typed("2.49 gal")), ..jugs(0) });
    let plan = plan(&farm, "first").unwrap();
    assert_eq!(plan.loads[0].items[0].measured.text, "10 gal");
    assert!(shortfalls(&plan).is_empty(), "{:?}", shortfalls(&plan));
}

/// Two loads of 40 ac at 1.45 lb/ac take 58 lb each, which are six bags of 10 lb and not 5.8: twelve bags, where 116 lb are exact.
#[test]
fn bags_go_in_whole() {
    let mut farm = farm(0);
    farm.rigs["rig"].tank = typed("400 gal");
    let bag =
        |full| Container { kind: ContainerKind::Bag, size: typed("10 lb"), full, opened: None, lot: String::new() };
    farm.products["oil"].formulation = Formulation::WSP;
    farm.products["oil"].price = None;
    farm.products["oil"].containers = vec![bag(12)];
    farm.passes["first"].mix = vec![Line::new("oil", typed("1.45 lb/ac"))];
    assert!(shortfalls(&plan(&farm, "first").unwrap()).is_empty());
    farm.products["oil"].containers = vec![bag(11), Container { opened: Some(typed("8 lb")), ..bag(0) }];
    let found = plan(&farm, "first").unwrap();
    assert_eq!(shortfalls(&found)[0].text, "Oil: this pass needs 120 lb; 118 lb are on hand");
}

#[test]
fn water_by_source_and_nurse_tanks_by_rig() {
    let mut farm = farm(6);
    farm.passes["later"].date = date(2031, 6, 12);
    let day = of_day(&farm, date(2031, 6, 12));
    // 1600 gal of spray with 20 gal of oil.
    assert!(close(day.waters[0].volume.to_us_gallons(), 1580.0));
    assert_eq!(day.nurses[0].tanks, None);
    for (holds, count) in [("1600 gal", 1), ("1580 gal", 1), ("1579 gal", 2), ("500 gal", 4)] {
        farm.rigs["rig"].nurse = Some(typed(holds));
        assert_eq!(of_day(&farm, date(2031, 6, 12)).nurses[0].tanks.unwrap().count, count, "{holds}");
    }
    // What is filled in the yard needs no nurse tank, and fertilizer is no water of the well.
    farm.passes["later"].fills = Fills::AtYard;
    farm.passes["first"].carrier_kind = CarrierKind::UreaAmmoniumNitrate;
    let day = of_day(&farm, date(2031, 6, 12));
    assert_eq!(day.nurses.len(), 1);
    assert_eq!((day.nurses[0].need.kind, day.nurses[0].tanks.unwrap().count), (CarrierKind::UreaAmmoniumNitrate, 2));
    assert_eq!(day.waters.len(), 2);
    assert!(day.waters.iter().all(|need| close(need.volume.to_us_gallons(), 790.0)));
}

#[test]
fn what_cannot_be_reckoned_is_said() {
    let mut farm = farm(6);
    farm.passes["first"].mix = vec![Line::new("oil", typed("1 lb/ac")), Line::new("gone", typed("1 pt/ac"))];
    let day = of_day(&farm, date(2031, 6, 12));
    let said: Vec<&str> = day.open.iter().map(|(_, what)| what.as_str()).collect();
    assert!(said[0].contains("its rate is a mass") && said[1].contains("\"gone\" is not in the shed"), "{said:?}");
    farm.passes["first"].carrier = None;
    assert!(of_day(&farm, date(2031, 6, 12)).open[0].1.contains("spray volume over ground is not typed"));
    farm.passes["first"].carrier = Some(typed("10 gal/ac"));
    farm.passes["first"].fields.clear();
    assert!(of_day(&farm, date(2031, 6, 12)).open[0].1.contains("no ground to spray"));
}

#[derive(Clone, Debug)]
struct Case {
    areas: Vec<(f64, f64, Option<f64>)>,
    carrier: f64,
    band: Option<f64>,
    ounces: f64,
    share: f64,
    pounds: f64,
    floor: f64,
}

fn case() -> impl Strategy<Value = Case> {
    (
        prop::collection::vec((1.0..300.0_f64, 0.0..0.9_f64, prop::option::of(0.1..1.0_f64)), 1..5),
        1.0..40.0_f64,
        prop::option::of(5.0..28.0_f64),
        0.0..64.0_f64,
        0.0..2.0_f64,
        0.0..20.0_f64,
        0.0..24.0_f64,
    )
        .prop_map(|(areas, carrier, band, ounces, share, pounds, floor)| Case {
            areas,
            carrier,
            band,
            ounces,
            share,
            pounds,
            floor,
        })
}

fn of_case(case: &Case) -> Farm {
    let mut farm = farm(6);
    farm.passes.clear();
    let mut rig = Rig::new("Rig", typed("1000 gal"));
    let banded = |width| Layout::Band { width: typed(&format!("{width:.2} in")), rows: typed("30 in"), nozzles: 1 };
    let set = NozzleSet { layout: case.band.map(banded), ..NozzleSet::default() };
    rig.sets.insert("set".to_owned(), set);
    farm.rigs.insert("rig".to_owned(), rig);
    farm.products.insert("dry".to_owned(), Product::new("Dry", ProductKind::Conditioner, Formulation::SG));
    farm.products.insert("wet".to_owned(), Product::new("Wet", ProductKind::Adjuvant, Formulation::SL));
    for at in 0..2 {
        let mut pass = pass("Pass", date(2031, 6, 12), "a");
        pass.fields.clear();
        for (field, (acres, unsprayed, part)) in case.areas.iter().enumerate() {
            let id = format!("f{field}");
            let mut made = Field::new(&id, typed(&format!("{acres:.3} ac")));
            made.unsprayed = Some(typed(&format!("{:.3} ac", acres * unsprayed)));
            farm.fields.insert(id.clone(), made);
            if let Some(part) = part {
                pass.parts.insert(id.clone(), typed(&format!("{:.3} ac", acres * (1.0 - unsprayed) * part)));
            }
            pass.fields.push(id);
        }
        pass.carrier = Some(typed(&format!("{:.3} gal/ac", case.carrier)));
        let mut wet = Line::new("wet", typed(&format!("{:.4} % v/v", case.share)));
        wet.at_least = Some(typed(&format!("{:.4} fl oz/ac", case.floor)));
        pass.mix = vec![
            Line::new("oil", typed(&format!("{:.4} fl oz/ac", case.ounces))),
            wet,
            Line::new("dry", typed(&format!("{:.4} lb/100 gal", case.pounds))),
        ];
        farm.passes.insert(format!("p{at}"), pass);
    }
    farm
}

/// The best of all ways, by trying each count of each size.
fn brute(sizes: &[u32], short: u32) -> (u32, u32) {
    let (mut best, mut held) = ((u32::MAX, u32::MAX), vec![0_u32; sizes.len()]);
    loop {
        let amount: u32 = held.iter().zip(sizes).map(|(count, size)| count * size).sum();
        if amount >= short {
            best = best.min((amount, held.iter().sum()));
        }
        let mut at = 0;
        loop {
            let Some(count) = held.get_mut(at) else { return best };
            *count += 1;
            if (*count - 1) * sizes[at] < short {
                break;
            }
            *count = 0;
            at += 1;
        }
    }
}

proptest! {
    #![proptest_config(cases(300))]

    #[test]
    fn needs_add_up_to_what_the_plans_take(case in case()) {
        let farm = of_case(&case);
        let plans: Vec<Plan> = farm.passes.keys().map(|id| plan(&farm, id).unwrap()).collect();
        let needs = of_day(&farm, date(2031, 6, 12));
        prop_assert_eq!(needs.products.len(), 3);
        for need in &needs.products {
            let planned: f64 = plans.iter().flat_map(|plan| &plan.lines)
                .filter(|line| line.product == need.product).map(|line| base(line.demand)).sum();
            prop_assert!(close(base(need.amount), planned), "{}: {} and {planned}", need.product, base(need.amount));
            prop_assert!(close(base(need.amount), need.by_pass.iter().map(|take| base(take.amount)).sum()));
        }
        let water: f64 = plans.iter().flat_map(|plan| &plan.loads).map(|load| load.water.to_us_gallons()).sum();
        if plans.iter().flat_map(|plan| &plan.loads).all(|load| load.water.to_us_gallons() > 0.0) {
            let needed: f64 = needs.waters.iter().map(|need| need.volume.to_us_gallons()).sum();
            prop_assert!(close(needed, water), "{needed} and {water}");
        }
    }

    #[test]
    fn no_way_to_buy_is_better(sizes in prop::collection::btree_set(1_u32..14, 1..4), short in 1_u32..60) {
        let sizes: Vec<u32> = sizes.into_iter().collect();
        let mut product = Product::new("Test", ProductKind::Herbicide, Formulation::SL);
        product.containers = sizes.iter().map(|size| Container { size: typed(&format!("{size} qt")), ..jugs(0) }).collect();
        let bought = buy(&product, Amount::parse(&format!("{short} qt")).unwrap()).unwrap();
        let (amount, count) = brute(&sizes, short);
        prop_assert!(close(base(bought.amount) * 4.0, f64::from(amount)), "{bought:?}, best {amount} in {count}");
        prop_assert_eq!(bought.items.iter().map(|(_, count)| count).sum::<u32>(), count);
        prop_assert!((base(bought.over) * 4.0 - f64::from(amount - short)).abs() < 1e-6);
    }
}

#[test]
fn the_demo_reaches_for_its_main_day() {
    let farm = tankard::demo::farm().unwrap();
    let day = of_day(&farm, date(2031, 6, 12));
    assert!(day.open.is_empty(), "{:?}", day.open);
    for need in &day.products {
        assert!(need.on_hand.amount.is_some() && need.short.is_none(), "{need:?}");
    }
    let season = from_day(&farm, date(2031, 6, 12));
    let short: Vec<&str> =
        season.products.iter().filter(|need| need.short.is_some()).map(|need| need.product.as_str()).collect();
    assert_eq!(short, ["glufosinate-280"]);
}

#[test]
fn a_record_without_a_pass_takes_no_pass_off_the_list() {
    let mut farm = farm(6);
    record(&mut farm, "first");
    let loose: Record = Record { pass: None, ..farm.records["first"].clone() };
    farm.records.clear();
    farm.records.insert("loose".to_owned(), loose);
    assert_eq!(of_day(&farm, date(2031, 6, 12)).passes, ["first"]);
}

/// By hand: 79 of 80 ac are left at 1 pt/ac, 9.875 gal of 10; the record took 0.125 gal off what was counted.
#[test]
fn a_record_of_an_acre_leaves_the_rest_of_a_pass_to_be_bought() {
    let mut farm = farm(2);
    farm.products["oil"].counted = Some(date(2031, 6, 1));
    record(&mut farm, "first");
    let small = &mut farm.records["first"];
    small.fields["b"].area = typed("1 ac");
    small.lines[0].amount = typed("1 pt");
    let needs = from_day(&farm, date(2031, 6, 12));
    assert_eq!(needs.passes, ["first", "later"]);
    let need = of(&needs, "oil");
    assert!(close(base(need.by_pass[0].amount), 9.875), "{need:?}");
    // 5 less 0.125 on hand, 19.875 needed.
    assert!(close(base(need.short.unwrap()), 15.0), "{need:?}");
    // 79 and 80 ac at 10 gal/ac, less the oil.
    assert!(close(needs.waters[0].volume.to_us_gallons(), 1590.0 - 19.875), "{:?}", needs.waters);
    let first = plan(&farm, "first").unwrap();
    let stop = first.findings.iter().find(|finding| finding.text.contains("what is left of this pass needs")).unwrap();
    assert!(
        stop.level == Level::Stop && stop.text.contains("needs 9 gal 3 qt 16 fl oz; 4 gal 3 qt 16 fl oz are on hand"),
        "{stop:?}"
    );
    // All that is on hand goes to it, and nothing is there for the later one.
    let later = plan(&farm, "later").unwrap();
    assert!(shortfalls(&later)[0].text.contains("less 9 gal 3 qt 16 fl oz for First"), "{:?}", later.findings);
    farm.records["first"].fields["b"].area = typed("80 ac");
    assert_eq!(from_day(&farm, date(2031, 6, 12)).passes, ["later"]);
}
