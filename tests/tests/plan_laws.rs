//! Laws of the plan that hold for every farm: balance, order, rounding, and no panic whatever is typed.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use proptest::prelude::*;
use tankard_core::farm::{
    Farm, Field, Formulation, Line, LoadSplit, Pass, Product, ProductKind, Rig, Says, Statement, Water,
};
use tankard_core::finding::Level;
use tankard_core::plan::{Plan, plan};
use tankard_core::quantity::{Amount, AmountPerArea, Area, AsTyped, Units};
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

/// How much of each product a plan takes, by the product.
fn demands(plan: &Plan) -> Vec<(String, f64)> {
    let mut all: Vec<_> = plan.lines.iter().map(|line| (line.product.clone(), base(line.demand))).collect();
    all.sort_by(|one, other| one.0.cmp(&other.0));
    all
}

fn planned(farm: &Farm) -> Plan {
    plan(farm, "p").unwrap()
}

/// Whether each demand of one plan is at least that of another, but for the error of arithmetic.
fn at_least(more: &Plan, less: &Plan) -> Result<(), TestCaseError> {
    prop_assert_eq!(more.lines.len(), less.lines.len());
    for ((product, more), (_, less)) in demands(more).into_iter().zip(demands(less)) {
        prop_assert!(more >= less * (1.0 - 1e-9), "{}: {} after {}", product, more, less);
    }
    Ok(())
}

proptest! {
    #![proptest_config(cases(150))]

    /// It holds a sum over fields that leaves one out, and a rounding of demands to loads.
    #[test]
    fn more_ground_never_needs_less(case in case(), at in any::<prop::sample::Index>(), more in 0.0..300.0_f64) {
        let mut larger = case.clone();
        *at.get_mut(&mut larger.areas) += more;
        let (less, more) = (planned(&farm(&case)), planned(&farm(&larger)));
        at_least(&more, &less)?;
        prop_assert!(more.spray_volume.to_litres() >= less.spray_volume.to_litres() * (1.0 - 1e-9));
        prop_assert!(more.loads.len() >= less.loads.len());
    }

    /// It holds a line that is reckoned from what another takes, and one that is capped without a word.
    #[test]
    fn a_higher_rate_never_needs_less_and_changes_nothing_else(case in case(), which in 0_usize..3, more in 0.0..64.0_f64) {
        let mut higher = case.clone();
        match which {
            0 => higher.ounces += more,
            1 => higher.share += more / 32.0,
            _ => higher.pounds += more / 4.0,
        }
        let (less, more) = (planned(&farm(&case)), planned(&farm(&higher)));
        at_least(&more, &less)?;
        let changed = ["h", "s", "a"][which];
        for ((product, one), (_, other)) in demands(&less).into_iter().zip(demands(&more)) {
            prop_assert!(product == changed || close(one, other), "{} went from {} to {}", product, one, other);
        }
        prop_assert!(close(less.spray_volume.to_litres(), more.spray_volume.to_litres()));
    }

    /// More water over ground: what goes by ground stays, what goes by spray grows with it. It holds the two bases mixed up.
    #[test]
    fn more_water_takes_more_of_what_goes_by_spray_alone(case in case(), times in 1.0..4.0_f64) {
        let mut wetter = case.clone();
        // To the digits that are typed.
        wetter.carrier = (case.carrier * times * 1000.0).round() / 1000.0;
        let dry_carrier = (case.carrier * 1000.0).round() / 1000.0;
        let (less, more) = (planned(&farm(&case)), planned(&farm(&wetter)));
        at_least(&more, &less)?;
        for ((product, one), (_, other)) in demands(&less).into_iter().zip(demands(&more)) {
            let expected = if product == "h" { one } else { one * wetter.carrier / dry_carrier };
            prop_assert!(close(expected, other), "{} went from {} to {}, not {}", product, one, other, expected);
        }
    }

    /// Which field or product is typed first changes no amount and no finding's level. It holds a limit that looks at the
    /// first field or partner alone.
    #[test]
    fn the_order_of_fields_and_of_the_mix_changes_no_amount(case in case(), turn in 0_usize..6, swap in any::<bool>()) {
        let plain = farm(&case);
        let mut turned = plain.clone();
        if let Some(pass) = turned.passes.get_mut("p") {
            let (fields, lines) = (pass.fields.len(), pass.mix.len());
            pass.fields.rotate_left(turn % fields);
            pass.mix.rotate_left(turn % lines);
            if swap {
                pass.mix.swap(0, 1);
                pass.fields.reverse();
            }
        }
        turned.products = turned.products.into_iter().rev().collect();
        turned.fields = turned.fields.into_iter().rev().collect();
        let (one, other) = (planned(&plain), planned(&turned));
        for ((product, one), (same, other)) in demands(&one).into_iter().zip(demands(&other)) {
            prop_assert_eq!(&product, &same);
            prop_assert!(close(one, other), "{}: {} and {}", product, one, other);
        }
        prop_assert!(close(one.spray_volume.to_litres(), other.spray_volume.to_litres()));
        prop_assert!(close(one.area.to_hectares(), other.area.to_hectares()));
        prop_assert_eq!(one.loads.len(), other.loads.len());
        for level in [Level::Stop, Level::Check] {
            prop_assert_eq!(one.count(level), other.count(level));
        }
    }

    /// The units in which a farm reads its numbers change how they are printed and measured out, not what is needed nor what
    /// is forbidden. It holds a rule that compares figures as they are shown.
    #[test]
    fn the_unit_system_changes_no_amount_and_no_stop(case in case(), metric in any::<bool>()) {
        let plain = farm(&case);
        let mut other = plain.clone();
        other.units = if metric { Units::Metric } else { Units::Imperial };
        let (one, other) = (planned(&plain), planned(&other));
        for ((product, one), (_, other)) in demands(&one).into_iter().zip(demands(&other)) {
            prop_assert!(close(one, other), "{}: {} and {}", product, one, other);
        }
        prop_assert_eq!(one.spray_volume, other.spray_volume);
        prop_assert_eq!(one.area, other.area);
        let stops = |plan: &Plan| -> Vec<String> {
            plan.findings.iter().filter(|finding| finding.level == Level::Stop).map(|finding| format!("{:?}", finding.basis)).collect()
        };
        prop_assert_eq!(stops(&one), stops(&other));
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
