//! Laws of the plan that hold for every farm: balance, order, rounding, and no panic whatever is typed.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use proptest::prelude::*;
use tankard_core::farm::{
    Farm, Field, Formulation, Line, LoadSplit, Pass, Product, ProductKind, Rig, Says, Statement, Water,
};
use tankard_core::plan::{Plan, plan};
use tankard_core::quantity::{Amount, AmountPerArea, Area, AsTyped};
use tankard_tests::cases;

fn typed<Q: tankard_core::quantity::Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

#[derive(Clone, Debug)]
struct Case {
    areas: Vec<f64>,
    carrier: f64,
    tank: f64,
    even: bool,
    ounces: f64,
    share: f64,
    pounds: f64,
    most: f64,
    step: f64,
}

fn case() -> impl Strategy<Value = Case> {
    (
        prop::collection::vec(0.0..300.0_f64, 1..6),
        1.0..40.0_f64,
        20.0..2000.0_f64,
        any::<bool>(),
        0.0..64.0_f64,
        0.0..2.0_f64,
        0.0..20.0_f64,
        0.0..64.0_f64,
        0.01..8.0_f64,
    )
        .prop_map(|(areas, carrier, tank, even, ounces, share, pounds, most, step)| Case {
            areas,
            carrier,
            tank,
            even,
            ounces,
            share,
            pounds,
            most,
            step,
        })
}

fn farm(case: &Case) -> Farm {
    let mut farm = Farm::new("Law");
    let day = "2031-06-12".parse().unwrap();
    let mut pass = Pass::new("Law", day);
    for (at, area) in case.areas.iter().enumerate() {
        let id = format!("f{at}");
        let mut field = Field::new(&id, typed(&format!("{area:.3} ac")));
        "corn".clone_into(&mut field.crop);
        farm.fields.insert(id.clone(), field);
        pass.fields.push(id);
    }
    farm.waters.insert("w".to_owned(), Water { name: "w".to_owned(), ..Water::default() });
    farm.rigs.insert("r".to_owned(), Rig::new("r", typed(&format!("{:.3} gal", case.tank))));
    farm.measuring.liquid = Some(typed(&format!("{:.3} fl oz", case.step)));
    let mut herbicide = Product::new("herbicide", ProductKind::Herbicide, Formulation::SL);
    let most = Says::Rate { least: None, most: Some(typed(&format!("{:.4} fl oz/ac", case.most))) };
    herbicide.label.push(Statement::new(most, "page 1"));
    farm.products.insert("h".to_owned(), herbicide);
    farm.products.insert("s".to_owned(), Product::new("surfactant", ProductKind::Adjuvant, Formulation::SL));
    farm.products.insert("a".to_owned(), Product::new("sulfate", ProductKind::Conditioner, Formulation::SG));
    pass.mix.push(Line::new("h", typed(&format!("{:.4} fl oz/ac", case.ounces))));
    pass.mix.push(Line::new("s", typed(&format!("{:.4} % v/v", case.share))));
    pass.mix.push(Line::new("a", typed(&format!("{:.4} lb/100 gal", case.pounds))));
    "w".clone_into(&mut pass.water);
    "r".clone_into(&mut pass.rig);
    pass.carrier = Some(typed(&format!("{:.3} gal/ac", case.carrier)));
    pass.split = if case.even { LoadSplit::EvenLoads } else { LoadSplit::FullTanks };
    farm.passes.insert("p".to_owned(), pass);
    farm
}

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs()).max(1e-12)
}

fn base(amount: Amount) -> f64 {
    match amount {
        Amount::Volume(volume) => volume.to_cubic_metres(),
        Amount::Mass(mass) => mass.to_kilograms(),
    }
}

fn balances(plan: &Plan) {
    if plan.loads.is_empty() {
        return;
    }
    let volume: f64 = plan.loads.iter().map(|load| load.volume.to_cubic_metres()).sum();
    assert!(close(volume, plan.spray_volume.to_cubic_metres()));
    let ground: f64 = plan.loads.iter().map(|load| load.area.to_square_metres()).sum();
    assert!(close(ground, plan.area.to_square_metres()));
    for line in &plan.lines {
        let items: f64 = plan
            .loads
            .iter()
            .flat_map(|load| &load.items)
            .filter(|item| item.product == line.product)
            .map(|item| base(item.measured.exact))
            .sum();
        assert!(close(items, base(line.demand)), "{}", line.name);
    }
    for load in &plan.loads {
        let parts: Area = load.fields.iter().map(|(_, area)| *area).sum();
        assert!((parts.to_acres() - load.area.to_acres()).abs() < 1e-6 * load.area.to_acres().max(1.0));
        let liquids: f64 = load
            .items
            .iter()
            .map(|item| match item.measured.exact {
                Amount::Volume(volume) => volume.to_cubic_metres(),
                Amount::Mass(_) => 0.0,
            })
            .sum();
        assert!(close(load.water.to_cubic_metres() + liquids, load.volume.to_cubic_metres()));
    }
}

proptest! {
    #![proptest_config(cases(400))]

    #[test]
    fn nothing_appears_and_nothing_is_lost(case in case()) {
        balances(&plan(&farm(&case), "p").unwrap());
    }

    #[test]
    fn no_load_is_empty_or_larger_than_the_tank(case in case()) {
        let plan = plan(&farm(&case), "p").unwrap();
        for load in &plan.loads {
            prop_assert!(load.volume.to_us_gallons() > 0.0);
            prop_assert!(load.volume.to_us_gallons() <= case.tank * (1.0 + 1e-6) + 1e-3);
        }
    }

    #[test]
    fn the_jug_never_passes_a_label_maximum(case in case()) {
        let plan = plan(&farm(&case), "p").unwrap();
        let planned_within = case.ounces <= case.most;
        for load in &plan.loads {
            for item in load.items.iter().filter(|item| item.product == "h") {
                if let (true, Some(AmountPerArea::Volume(rate))) = (planned_within, item.measured.amount.spread(load.area)) {
                    prop_assert!(rate.to_us_fluid_ounces_per_acre() <= case.most * (1.0 + 1e-6) + 1e-4,
                        "{} measured for a most of {}", rate.to_us_fluid_ounces_per_acre(), case.most);
                }
            }
        }
    }

    #[test]
    fn the_order_in_the_mix_does_not_change_the_order_at_the_tank(case in case()) {
        let mut turned = farm(&case);
        if let Some(pass) = turned.passes.get_mut("p") {
            pass.mix.reverse();
        }
        prop_assert_eq!(plan(&farm(&case), "p").unwrap().order, plan(&turned, "p").unwrap().order);
    }

    #[test]
    fn water_marks_rise_and_no_product_goes_into_an_empty_tank(case in case()) {
        let plan = plan(&farm(&case), "p").unwrap();
        if plan.findings.iter().any(|finding| finding.text.contains("more room")) {
            return Ok(());
        }
        for load in &plan.loads {
            let mut level = 0.0;
            for step in &load.steps {
                match step {
                    tankard_core::loads::FillStep::InTank { to } => level = to.to_litres(),
                    tankard_core::loads::FillStep::Water { to } => {
                        prop_assert!(to.to_litres() > level);
                        level = to.to_litres();
                    }
                    tankard_core::loads::FillStep::Product { from, to, .. } => {
                        prop_assert!(from.to_litres() > 0.0 && to.to_litres() >= from.to_litres());
                        level = to.to_litres();
                    }
                }
            }
            prop_assert!(level <= load.volume.to_litres() * (1.0 + 1e-9));
        }
    }
}

#[test]
fn a_pass_of_nothing_says_what_is_missing() {
    let mut farm = Farm::new("Empty");
    farm.passes.insert("p".to_owned(), Pass::new("p", "2031-06-12".parse().unwrap()));
    let plan = plan(&farm, "p").unwrap();
    assert!(plan.loads.is_empty());
    let said: Vec<&str> = plan.findings.iter().map(|finding| finding.text.as_str()).collect();
    for missing in ["no field yet", "No rig is chosen", "spray volume over ground is not typed", "tank mix is empty"] {
        assert!(said.iter().any(|text| text.contains(missing)), "{missing} in {said:?}");
    }
    assert!(tankard_core::plan::plan(&farm, "q").is_none());
}
