//! Laws of loads that hold for every farm: balance, room, borders between fields, label limits, agitation.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use proptest::prelude::*;
use tankard_core::farm::{
    Active, Aim, Apart, Container, ContainerKind, Farm, Field, Formulation, InTank, Line, LoadSplit, Pass, Product,
    ProductKind, Rig, Says, Statement, Water,
};
use tankard_core::finding::Level;
use tankard_core::loads::FillStep;
use tankard_core::plan::{Plan, plan};
use tankard_core::quantity::{ActiveBasis, Amount, AmountPerArea, AsTyped, Quantity, Volume};
use tankard_core::season::Log;
use tankard_tests::cases;

fn typed<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

#[derive(Clone, Debug)]
struct Case {
    /// Area, crop, owner.
    fields: Vec<(f64, bool, bool)>,
    carrier: f64,
    tank: f64,
    least: Option<f64>,
    mark: Option<f64>,
    /// Shares of the tank.
    extra: Option<f64>,
    in_tank: Option<f64>,
    sizes: Vec<f64>,
    split: LoadSplit,
    aims: Vec<Aim>,
    ounces: f64,
    /// Container in gallons, and what is left in the opened one.
    container: Option<(f64, f64)>,
    step: f64,
}

fn case() -> impl Strategy<Value = Case> {
    let area = prop_oneof![1 => Just(0.0), 6 => 0.001..200.0_f64];
    let split = prop_oneof![Just(LoadSplit::ByAims), Just(LoadSplit::FullTanks), Just(LoadSplit::EvenLoads)];
    (
        (prop::collection::vec((area, any::<bool>(), any::<bool>()), 1..6), 1.0..40.0_f64, 0.5..1500.0_f64),
        (prop::option::of(0.01..0.9_f64), prop::option::of(0.001..0.3_f64)),
        (prop::option::of(0.0..1.1_f64), prop::option::of(0.0..1.1_f64)),
        prop_oneof![3 => Just(Vec::new()), 1 => prop::collection::vec(0.01..1.05_f64, 1..4)],
        (split, Just(Aim::ALL.to_vec()).prop_shuffle()),
        (0.0..64.0_f64, prop::option::of((0.1..3000.0_f64, 0.0..1.0_f64)), 0.01..64.0_f64),
    )
        .prop_map(|((fields, carrier, tank), (least, mark), (extra, in_tank), sizes, (split, aims), products)| {
            Case {
                fields,
                carrier,
                tank,
                least,
                mark,
                extra,
                in_tank,
                sizes,
                split,
                aims,
                ounces: products.0,
                container: products.1,
                step: products.2,
            }
        })
}

fn farm(case: &Case) -> Farm {
    let mut farm = Farm::new("Law");
    let mut pass = Pass::new("Law", "2031-06-12".parse().unwrap());
    for (at, (area, crop, owner)) in case.fields.iter().enumerate() {
        let id = format!("f{at}");
        let mut field = Field::new(&id, typed(&format!("{area:.3} ac")));
        if *crop { "corn" } else { "soybean" }.clone_into(&mut field.crop);
        if *owner { "a neighbour" } else { "" }.clone_into(&mut field.owner);
        farm.fields.insert(id.clone(), field);
        pass.fields.push(id);
    }
    farm.waters.insert("w".to_owned(), Water { name: "w".to_owned(), ..Water::default() });
    let mut rig = Rig::new("r", typed(&format!("{:.3} gal", case.tank)));
    let share = |share: f64| typed::<Volume>(&format!("{:.4} gal", share * case.tank));
    rig.least = case.least.map(share);
    rig.mark = case.mark.map(share);
    farm.rigs.insert("r".to_owned(), rig);
    farm.measuring.liquid = Some(typed(&format!("{:.3} fl oz", case.step)));
    farm.aims.clone_from(&case.aims);
    let mut herbicide = Product::new("herbicide", ProductKind::Herbicide, Formulation::SL);
    let most = Says::Rate { least: None, most: Some(typed(&format!("{:.4} fl oz/ac", case.ounces * 1.02))) };
    herbicide.label.push(Statement::new(most, "page 1"));
    if let Some((size, opened)) = case.container {
        herbicide.containers.push(Container {
            kind: ContainerKind::Tote,
            size: typed(&format!("{size:.3} gal")),
            full: 0,
            opened: Some(typed(&format!("{:.4} gal", size * opened))),
            lot: String::new(),
        });
    }
    farm.products.insert("h".to_owned(), herbicide);
    farm.products.insert("a".to_owned(), Product::new("sulfate", ProductKind::Conditioner, Formulation::SG));
    pass.mix.push(Line::new("h", typed(&format!("{:.4} fl oz/ac", case.ounces))));
    pass.mix.push(Line::new("a", typed("8.5 lb/100 gal")));
    "w".clone_into(&mut pass.water);
    "r".clone_into(&mut pass.rig);
    pass.carrier = Some(typed(&format!("{:.3} gal/ac", case.carrier)));
    pass.split = case.split;
    pass.extra = case.extra.map(share);
    pass.in_tank = case.in_tank.map(|part| InTank { volume: share(part), from: String::new() });
    pass.sizes = case.sizes.iter().copied().map(share).collect();
    farm.passes.insert("p".to_owned(), pass);
    farm
}

fn planned(case: &Case) -> (Farm, Plan) {
    let farm = farm(case);
    let plan = plan(&farm, "p").unwrap();
    (farm, plan)
}

/// Whether two figures agree to a part in 10⁹ of a whole.
fn close(a: f64, b: f64, whole: f64) -> bool {
    (a - b).abs() <= 1e-9 * whole.abs().max(1e-12)
}

proptest! {
    #![proptest_config(cases(600))]

    #[test]
    fn what_is_mixed_is_what_the_ground_takes_and_what_is_left(case in case()) {
        let (farm, plan) = planned(&case);
        if plan.loads.is_empty() {
            let why = |text: &str| plan.findings.iter().any(|finding| finding.level >= Level::Check && finding.text.contains(text));
            prop_assert!(["no ground", "in the tank already", "cannot be laid out", "is decided as", "would be"].into_iter().any(why),
                "no loads and no word of it: {:?}", plan.findings);
            return Ok(());
        }
        let litres = |pick: fn(&tankard_core::loads::Load) -> Volume| plan.loads.iter().map(pick).map(Volume::to_litres).sum::<f64>();
        let (new, carried, left) = (litres(tankard_core::loads::Load::new_spray), litres(|load| load.carried), litres(|load| load.left));
        let takes = plan.spray_volume.to_litres();
        prop_assert!(close(new + carried, takes + left, takes + left), "{new} + {carried} = {takes} + {left}");
        let in_tank = farm.passes["p"].in_tank.as_ref().map_or(0.0, |in_tank| in_tank.volume.to_litres());
        prop_assert!(close(carried, in_tank, in_tank));
        for load in &plan.loads[1..] {
            prop_assert!(load.carried.is_zero());
        }
        for load in &plan.loads[..plan.loads.len() - 1] {
            prop_assert!(load.left.is_zero());
        }
        for planned in &plan.fields {
            let shares: f64 = plan.loads.iter().flat_map(|load| &load.fields).filter(|(id, _)| *id == planned.field)
                .map(|(_, area)| area.to_square_metres()).sum();
            prop_assert!(close(shares, planned.area.to_square_metres(), plan.area.to_square_metres()), "{}", planned.field);
        }
        // Each load holds its products for its new spray, exactly.
        let line = &plan.lines.iter().find(|line| line.product == "h").unwrap();
        for load in &plan.loads {
            for item in load.items.iter().filter(|item| item.product == "h") {
                let ground = load.new_spray().ground(plan.carrier.unwrap()).unwrap();
                let ratio = line.per_area.over(ground).ratio(item.measured.exact).unwrap_or(1.0);
                prop_assert!((ratio - 1.0).abs() < 1e-9);
            }
        }
    }

    #[test]
    fn every_load_finds_room_and_ground(case in case()) {
        let (_, plan) = planned(&case);
        for load in &plan.loads {
            prop_assert!(load.volume.to_us_gallons() <= case.tank * (1.0 + 1e-6) + 1e-3);
            prop_assert!(load.area.to_square_metres() > 0.0 && !load.fields.is_empty());
            prop_assert!(load.carried.to_litres() <= load.volume.to_litres() * (1.0 + 1e-9));
            let level = load.steps.iter().fold(0.0_f64, |level, step| match step {
                FillStep::InTank { to } | FillStep::Water { to } | FillStep::Product { to, .. } => level.max(to.to_litres()),
            });
            if !plan.findings.iter().any(|finding| finding.text.contains("no room for water")) {
                prop_assert!(close(level, load.volume.to_litres(), load.volume.to_litres()));
            }
        }
    }

    #[test]
    fn fields_that_are_kept_apart_never_share_a_load(case in case()) {
        let (farm, plan) = planned(&case);
        if plan.findings.iter().any(|finding| finding.text.contains("runs over from")) {
            return Ok(());
        }
        for load in &plan.loads {
            for pair in load.fields.windows(2) {
                let (one, other) = (&farm.fields[&pair[0].0], &farm.fields[&pair[1].0]);
                prop_assert_eq!((&one.crop, &one.owner), (&other.crop, &other.owner));
            }
        }
    }

    #[test]
    fn no_measured_amount_passes_a_label(case in case()) {
        let (_, plan) = planned(&case);
        for load in &plan.loads {
            let Some(ground) = load.new_spray().ground(plan.carrier.unwrap()) else { continue };
            for item in load.items.iter().filter(|item| item.product == "h") {
                let Some(AmountPerArea::Volume(rate)) = item.measured.amount.spread(ground) else { continue };
                let most = case.ounces * 1.02;
                prop_assert!(rate.to_us_fluid_ounces_per_acre() <= most * (1.0 + 1e-6) + 1e-4);
            }
        }
    }

    #[test]
    fn agitation_reaches_in_every_load_where_it_comes_first(case in case()) {
        let mut case = case;
        (case.extra, case.in_tank, case.split) = (None, None, LoadSplit::ByAims);
        case.sizes.clear();
        // What a load holds too much does not go over a border.
        case.fields.iter_mut().for_each(|(_, crop, owner)| (*crop, *owner) = (true, true));
        case.aims = vec![Aim::Agitation];
        let (farm, plan) = planned(&case);
        let Some(least) = &farm.rigs["r"].least else { return Ok(()) };
        for load in &plan.loads {
            prop_assert!(!least.exceeds(load.volume), "{} below {}", load.volume.to_litres(), least.to_litres());
        }
    }

    /// No way that is offered is better by the order of the aims than the one that they chose.
    #[test]
    fn nothing_offered_is_better_by_the_aims(case in case()) {
        let (_, plan) = planned(&Case { split: LoadSplit::ByAims, ..case });
        let Some(sizing) = &plan.sizing else { return Ok(()) };
        let key = |figures: &tankard_core::loads::sizing::Figures| sizing.aims.iter().map(|aim| figures.of(*aim)).collect::<Vec<_>>();
        for stretch in &sizing.stretches {
            prop_assert!(stretch.looked_at > 0);
            for other in &stretch.others {
                prop_assert!(key(&other.choice.figures) >= key(&stretch.chosen.figures));
                prop_assert!(!other.trade.is_empty());
            }
        }
    }

    /// Taking what is offered gives the loads that were offered.
    #[test]
    fn what_is_taken_is_what_comes(case in case()) {
        let (farm, plan) = planned(&Case { sizes: Vec::new(), ..case });
        for (stretch, other) in plan.sizing.iter().flat_map(|sizing| &sizing.stretches).flat_map(|s| s.others.iter().map(move |o| (s, o))) {
            let mut taken = farm.clone();
            other.take.into_pass(&mut taken.passes["p"]);
            let again = tankard_core::plan::plan(&taken, "p").unwrap();
            let from = stretch.first as usize - 1;
            let wanted = other.choice.way.volumes();
            let got: Vec<f64> = again.loads.iter().skip(from).take(wanted.len()).map(|load| load.volume.to_litres()).collect();
            prop_assert_eq!(got.len(), wanted.len(), "{}: {:?}", other.label, again.findings);
            for (got, wanted) in got.iter().zip(&wanted) {
                let wanted = wanted.to_litres();
                prop_assert!((got - wanted).abs() <= 1e-4 * wanted.max(0.1), "{}: {got} for {wanted}", other.label);
            }
        }
    }
}

/// 430 acres at 15 gallons in a tank of 1,200, with jugs of 2.5 gallons at 32 fluid ounces an acre.
fn plain() -> Farm {
    let mut farm = Farm::new("Plain");
    farm.fields.insert("f".to_owned(), Field::new("Mill field", typed("430 ac")));
    let mut rig = Rig::new("Big boom", typed("1200 gal"));
    rig.residual = Some(typed("10 gal"));
    rig.mark = Some(typed("1 gal"));
    farm.rigs.insert("r".to_owned(), rig);
    let mut product = Product::new("Herbicide SL (demo)", ProductKind::Herbicide, Formulation::SL);
    product.containers.push(Container {
        kind: ContainerKind::Jug,
        size: typed("2.5 gal"),
        full: 40,
        opened: None,
        lot: String::new(),
    });
    farm.products.insert("h".to_owned(), product);
    let mut pass = Pass::new("Corn, second post", "2031-06-12".parse().unwrap());
    pass.fields.push("f".to_owned());
    "r".clone_into(&mut pass.rig);
    pass.carrier = Some(typed("15 gal/ac"));
    pass.mix.push(Line::new("h", typed("32 fl oz/ac")));
    farm.passes.insert("p".to_owned(), pass);
    farm
}

fn gallons(plan: &Plan) -> Vec<f64> {
    plan.loads.iter().map(|load| (load.volume.to_us_gallons() * 1e6).round() / 1e6).collect()
}

fn says<'a>(plan: &'a Plan, level: Level, text: &str) -> &'a tankard_core::finding::Finding {
    plan.findings
        .iter()
        .find(|finding| finding.level == level && finding.text.contains(text))
        .unwrap_or_else(|| panic!("{text} is not among {:?}", plan.findings))
}

#[test]
fn full_tanks_even_loads_and_no_empty_sixth() {
    let mut farm = plain();
    assert_eq!(gallons(&plan(&farm, "p").unwrap()), [1200.0, 1200.0, 1200.0, 1200.0, 1200.0, 450.0]);
    farm.passes["p"].split = LoadSplit::EvenLoads;
    assert_eq!(gallons(&plan(&farm, "p").unwrap()), [1075.0; 6]);
    farm.fields["f"].area = typed("400 ac");
    assert_eq!(gallons(&plan(&farm, "p").unwrap()), [1200.0; 5]);
}

/// 150 gallons of spray hold 320 fluid ounces, which is a jug: of the six loads the five that are alike are whole jugs at 1,200,
/// 1,050 and so on. Our own arithmetic.
#[test]
fn aims_choose_whole_jugs_and_the_alternatives_say_what_they_cost() {
    let mut farm = plain();
    farm.rigs["r"].tank = typed("1190 gal");
    farm.passes["p"].split = LoadSplit::ByAims;
    let by_aims = plan(&farm, "p").unwrap();
    // 1,175 gallons would be measured six times.
    assert_eq!(gallons(&by_aims)[..5], [1140.0; 5].map(|_| gallons(&by_aims)[0]));
    let stretch = &by_aims.sizing.as_ref().unwrap().stretches[0];
    let measured = stretch.chosen.figures.measured;
    let full = stretch.others.iter().find(|other| other.label.starts_with("full tanks")).unwrap();
    assert!(full.choice.figures.measured > measured, "{:?} {full:?}", stretch.chosen);
    assert!(full.trade.contains("more amounts to measure"), "{}", full.trade);
    let whole = stretch.others.iter().find(|other| other.label.starts_with("whole containers")).unwrap();
    assert_eq!(whole.choice.figures.measured, 0);
    assert_eq!(whole.choice.words, "6 loads of 1,050 gal and one of 150 gal");
    assert!(whole.trade.contains("one more filling"), "{}", whole.trade);
}

#[test]
fn decided_loads_come_first_and_the_rest_is_split() {
    let mut farm = plain();
    farm.passes["p"].sizes = vec![typed("800 gal"), typed("600 gal")];
    assert_eq!(gallons(&plan(&farm, "p").unwrap()), [800.0, 600.0, 1200.0, 1200.0, 1200.0, 1200.0, 250.0]);
    farm.passes["p"].sizes = vec![typed("1300 gal")];
    says(
        &plan(&farm, "p").unwrap(),
        Level::Stop,
        "Load 1 is decided as 1,300 gal; the tank of Big boom holds 1,200 gal",
    );
    farm.fields["f"].area = typed("60 ac");
    farm.passes["p"].sizes = vec![typed("500 gal"), typed("500 gal"), typed("100 gal")];
    let over = plan(&farm, "p").unwrap();
    assert_eq!(gallons(&over), [500.0, 500.0], "a load without ground is none");
    assert!((over.loads[1].left.to_us_gallons() - 100.0).abs() < 1e-9);
    says(&over, Level::Check, "The decided loads hold 200 gal more than the pass takes");
}

/// 60 acres at 15 gal/ac take 900 gal, and 50 gal are to be left over: of two loads of 500 gal 100 gal are left after the ground,
/// which are 50 more than asked. Our own arithmetic.
#[test]
fn what_decided_loads_hold_beyond_the_ground_counts_beside_what_is_to_be_left() {
    let mut farm = plain();
    farm.fields["f"].area = typed("60 ac");
    farm.passes["p"].extra = Some(typed("50 gal"));
    farm.passes["p"].sizes = vec![typed("500 gal"), typed("500 gal")];
    let out = plan(&farm, "p").unwrap();
    assert_eq!(gallons(&out), [500.0, 500.0]);
    assert!((out.loads[1].left.to_us_gallons() - 100.0).abs() < 1e-9);
    assert!((out.loads.iter().map(|load| load.area.to_acres()).sum::<f64>() - 60.0).abs() < 1e-9);
    says(&out, Level::Check, "The decided loads hold 50 gal more than the pass takes");
}

#[test]
fn spray_in_the_tank_counts_and_is_not_mixed_again() {
    let mut farm = plain();
    farm.fields["f"].area = typed("60 ac");
    farm.passes["p"].in_tank = Some(InTank { volume: typed("180 gal"), from: String::new() });
    let out = plan(&farm, "p").unwrap();
    assert_eq!(gallons(&out), [900.0]);
    // 720 gallons of new spray at 32 fl oz on each 15.
    assert_eq!(out.loads[0].items[0].measured.text, "12 gal");
    assert!((out.loads[0].water.to_us_gallons() - 708.0).abs() < 1e-9);
    assert!(matches!(out.loads[0].steps[0], FillStep::InTank { to } if (to.to_us_gallons() - 180.0).abs() < 1e-9));
    says(&out, Level::Check, "they are taken to be this mix");
    let card = tankard_core::loads::card::card(&farm, &out, &out.loads[0]).unwrap();
    assert_eq!((card.steps[0].what.as_str(), card.steps[0].amount.as_str()), ("In the tank already", "180 gal"));
    assert_eq!(card.gauge.layers[0].label, "in the tank already 180 gal");
    let working = tankard_core::loads::working_of(&out, 1, "h", farm.units).unwrap();
    assert_eq!(working.steps[0].result, "720 gal");

    let working = out.workings.iter().find(|working| working.title == "Number of loads").unwrap();
    assert_eq!((working.steps[0].what.as_str(), working.steps.len()), ("of it in the tank already", 3));

    // What is to be left over is mixed too where the tank holds just what the ground takes.
    farm.passes["p"].in_tank = Some(InTank { volume: typed("900 gal"), from: String::new() });
    farm.passes["p"].extra = Some(typed("50 gal"));
    let beyond = plan(&farm, "p").unwrap();
    assert_eq!(gallons(&beyond), [950.0]);
    // 50 gallons of new spray at 32 fl oz on each 15.
    let Amount::Volume(new) = beyond.loads[0].items[0].measured.exact else { panic!("a liquid") };
    assert!((new.to_us_fluid_ounces() - 50.0 / 15.0 * 32.0).abs() < 1e-9);
    farm.passes["p"].extra = None;

    farm.passes["p"].in_tank = Some(InTank { volume: typed("950 gal"), from: "p".to_owned() });
    let enough = plan(&farm, "p").unwrap();
    assert!(enough.loads.is_empty());
    says(&enough, Level::Check, "no load is to be mixed, and 50 gal are left");
    farm.passes["p"].in_tank = Some(InTank { volume: typed("1300 gal"), from: "p".to_owned() });
    says(&plan(&farm, "p").unwrap(), Level::Stop, "1,300 gal are in the tank already, but it is filled to 1,200 gal");
}

#[test]
fn spray_of_another_pass_must_be_the_same_mix() {
    let mut farm = plain();
    farm.fields["f"].area = typed("60 ac");
    let mut other = farm.passes["p"].clone();
    "First half".clone_into(&mut other.name);
    other.extra = Some(typed("180 gal"));
    // The same strength at another volume over ground.
    other.carrier = Some(typed("30 gal/ac"));
    other.mix[0].rate = typed("64 fl oz/ac");
    farm.passes.insert("o".to_owned(), other);
    farm.passes["p"].in_tank = Some(InTank { volume: typed("180 gal"), from: "o".to_owned() });
    assert!(plan(&farm, "p").unwrap().findings.iter().all(|finding| !finding.text.contains("in the tank")));
    farm.passes["o"].mix[0].rate = typed("65 fl oz/ac");
    says(
        &plan(&farm, "p").unwrap(),
        Level::Stop,
        "mixed for First half, which is another mix: the strength of Herbicide SL (demo) differs",
    );
    farm.passes["o"].mix[0].rate = typed("64 fl oz/ac");
    "w".clone_into(&mut farm.passes["o"].water);
    says(&plan(&farm, "p").unwrap(), Level::Stop, "its water is another water");
    farm.passes["o"].water.clear();
    farm.passes["o"].mix.clear();
    says(&plan(&farm, "p").unwrap(), Level::Stop, "Herbicide SL (demo) is not in it");
}

#[test]
fn what_is_mixed_beyond_the_ground_is_in_the_last_load_and_said() {
    let mut farm = plain();
    farm.passes["p"].extra = Some(typed("10 gal"));
    let out = plan(&farm, "p").unwrap();
    assert!((gallons(&out)[5] - 460.0).abs() < 1e-9);
    let working = out.workings.iter().find(|working| working.title == "Number of loads").unwrap();
    assert_eq!(working.steps[0].result, "6,460 gal");
    let last = &out.loads[5];
    assert!((last.left.to_us_gallons() - 10.0).abs() < 1e-9 && (last.area.to_acres() - 30.0).abs() < 1e-9);
    says(&out, Level::Note, "10 gal are left after the last metre");
    farm.passes["p"].extra = Some(typed("30 gal"));
    says(&plan(&farm, "p").unwrap(), Level::Check, "only 10 gal of it stay in Big boom");
    farm.rigs["r"].residual = None;
    says(&plan(&farm, "p").unwrap(), Level::Check, "what stays in Big boom when it runs dry is not typed");
    let mut next = farm.passes["p"].clone();
    "Next".clone_into(&mut next.name);
    next.extra = None;
    next.in_tank = Some(InTank { volume: typed("30 gal"), from: "p".to_owned() });
    farm.passes.insert("n".to_owned(), next);
    says(&plan(&farm, "p").unwrap(), Level::Note, "Next goes on with 30 gal");
    // Two that go on with the same 30 gallons would both mix too little, and so would one that goes on with what is not there.
    let mut after = farm.passes["n"].clone();
    "After that".clone_into(&mut after.name);
    farm.passes.insert("a".to_owned(), after);
    says(
        &plan(&farm, "p").unwrap(),
        Level::Check,
        "30 gal are left after the last metre; Next and After that go on with 60 gal",
    );
    farm.passes.shift_remove("a");
    farm.passes["p"].extra = None;
    says(&plan(&farm, "p").unwrap(), Level::Check, "Nothing is left after the last metre; Next goes on with 30 gal");
}

/// What another rig holds, or what is mixed on a later day, is not in this tank.
#[test]
fn spray_of_another_rig_or_a_later_day_is_not_in_the_tank() {
    let mut farm = plain();
    let mut other = farm.passes["p"].clone();
    "First half".clone_into(&mut other.name);
    farm.passes.insert("o".to_owned(), other);
    farm.passes["p"].in_tank = Some(InTank { volume: typed("180 gal"), from: "o".to_owned() });
    assert!(plan(&farm, "p").unwrap().findings.iter().all(|finding| !finding.text.contains("in the tank were mixed")));
    farm.passes["o"].date = farm.passes["p"].date.tomorrow().unwrap();
    says(
        &plan(&farm, "p").unwrap(),
        Level::Check,
        "The 180 gal in the tank were mixed for First half, which is planned for ",
    );
    farm.passes["o"].date = farm.passes["p"].date;
    let mut small = farm.rigs["r"].clone();
    "Small boom".clone_into(&mut small.name);
    farm.rigs.insert("s".to_owned(), small);
    "s".clone_into(&mut farm.passes["o"].rig);
    says(&plan(&farm, "p").unwrap(), Level::Check, "mixed for First half, which goes out with Small boom");
}

#[test]
fn a_border_ends_a_load_and_may_be_taken_away() {
    let mut farm = plain();
    farm.fields["f"].area = typed("60 ac");
    let mut other = farm.fields["f"].clone();
    "Long bottom".clone_into(&mut other.name);
    "soybean".clone_into(&mut other.crop);
    farm.fields.insert("g".to_owned(), other);
    farm.passes["p"].fields.push("g".to_owned());
    let apart = plan(&farm, "p").unwrap();
    assert_eq!(gallons(&apart), [900.0, 900.0]);
    says(
        &apart,
        Level::Note,
        "Mill field and Long bottom do not share a load: their crops differ (not typed; soybean)",
    );
    // Of several stretches one is decided by the sizes of its loads; of one alone the split of the pass will do.
    let by_split = |farm: &Farm| {
        let stretches = plan(farm, "p").unwrap().sizing.unwrap().stretches;
        let others: Vec<_> = stretches.into_iter().flat_map(|stretch| stretch.others).collect();
        assert!(!others.is_empty());
        others.iter().any(|other| other.take.sizes.is_empty())
    };
    farm.fields["f"].area = typed("200 ac");
    assert!(!by_split(&farm) && by_split(&plain()));
    farm.fields["f"].area = typed("60 ac");
    farm.passes["p"].sizes = vec![typed("1000 gal")];
    let over = plan(&farm, "p").unwrap();
    assert_eq!(gallons(&over), [1000.0, 800.0]);
    says(&over, Level::Check, "Load 1, as decided, runs over from Mill field to Long bottom");
    // A load that fits into its stretch takes nothing of the next.
    farm.passes["p"].sizes = vec![typed("500 gal")];
    assert_eq!(gallons(&plan(&farm, "p").unwrap()), [500.0, 400.0, 900.0]);
    farm.passes["p"].sizes.clear();
    farm.apart = Some(vec![Apart::Owner]);
    assert_eq!(gallons(&plan(&farm, "p").unwrap()), [1200.0, 600.0]);
}

/// 6,450 gal from a tank of 12 gal are 538 fillings: a slip in the tank's size.
#[test]
fn a_tank_that_takes_days_to_fill_is_a_stop() {
    let mut farm = plain();
    farm.rigs["r"].tank = typed("12 gal");
    let out = plan(&farm, "p").unwrap();
    assert!(out.loads.is_empty());
    says(&out, Level::Stop, "538");
    farm.rigs["r"].tank = typed("13 gal");
    assert_eq!(plan(&farm, "p").unwrap().loads.len(), 497);
}

#[test]
fn a_tank_is_not_filled_beyond_what_it_holds() {
    let mut farm = plain();
    farm.passes["p"].fill_to = Some(typed("1200 gal"));
    assert_eq!(plan(&farm, "p").unwrap().loads.len(), 6);
    farm.passes["p"].fill_to = Some(typed("1201 gal"));
    let out = plan(&farm, "p").unwrap();
    assert!(out.loads.is_empty());
    says(&out, Level::Stop, "it cannot be filled to 1,201 gal");
}

/// A tenth of an acre at 3 fl oz/ac takes 0.3 fl oz, which a mark of 1 fl oz measures as nothing; 0.9 fl oz are 11 % less than the mark.
#[test]
fn what_no_mark_measures_is_a_stop_and_what_is_far_from_one_a_check() {
    let mut farm = plain();
    farm.measuring.liquid = Some(typed("1 fl oz"));
    farm.passes["p"].mix[0].rate = typed("3 fl oz/ac");
    farm.fields["f"].area = typed("0.1 ac");
    says(&plan(&farm, "p").unwrap(), Level::Stop, "Load 1 needs 8.87 mL of Herbicide SL (demo), less than the");
    farm.fields["f"].area = typed("0.3 ac");
    says(&plan(&farm, "p").unwrap(), Level::Check, "of Herbicide SL (demo) is measured as 1 fl oz");
    farm.fields["f"].area = typed("100 ac");
    let far = ["is measured as", "less than the"];
    assert!(plan(&farm, "p").unwrap().findings.iter().all(|found| far.iter().all(|words| !found.text.contains(words))));
}

/// 54 of 90 gallons are product: 36 of water go in before it, not half of the load. Where 16 gallons of product go with 15 of spray none
/// does, with spray in the tank or without.
#[test]
fn water_leaves_room_for_the_products_that_are_still_to_come() {
    let mut farm = plain();
    farm.fields["f"].area = typed("6 ac");
    farm.passes["p"].mix[0].rate = typed("9 gal/ac");
    let out = plan(&farm, "p").unwrap();
    let FillStep::Water { to } = out.loads[0].steps[0] else { panic!("{:?}", out.loads[0].steps) };
    assert!((to.to_us_gallons() - 36.0).abs() < 1e-9, "{to:?}");
    let room = "leave no room";
    assert!(out.findings.iter().all(|found| !found.text.contains(room)));
    farm.passes["p"].mix[0].rate = typed("16 gal/ac");
    says(&plan(&farm, "p").unwrap(), Level::Stop, room);
    farm.fields["f"].area = typed("60 ac");
    farm.passes["p"].in_tank = Some(InTank { volume: typed("880 gal"), from: String::new() });
    says(&plan(&farm, "p").unwrap(), Level::Stop, room);
}

/// A variety may name an active by a name that no table knows.
#[test]
fn a_variety_that_names_an_active_of_no_table_is_kept_apart() {
    let mut farm = plain();
    farm.fields["f"].area = typed("60 ac");
    let mut other = farm.fields["f"].clone();
    "Long bottom".clone_into(&mut other.name);
    "bean C, alphazine tolerant".clone_into(&mut other.variety);
    farm.fields.insert("g".to_owned(), other);
    farm.passes["p"].fields.push("g".to_owned());
    assert_eq!(gallons(&plan(&farm, "p").unwrap()), [1200.0, 600.0]);
    farm.products["h"].actives.push(Active {
        name: "alphazine".to_owned(),
        group: String::new(),
        basis: ActiveBasis::ActiveIngredient,
        content: typed("480 g/L"),
    });
    assert_eq!(gallons(&plan(&farm, "p").unwrap()), [900.0, 900.0]);
}

/// What stands opened in the shed is poured first: 10 gallons in jugs of 2.5 with 1 opened take four new ones, not three.
#[test]
fn containers_are_counted_from_what_stands_opened() {
    let mut farm = plain();
    farm.fields["f"].area = typed("40 ac");
    let opened = |farm: &Farm| plan(farm, "p").unwrap().sizing.unwrap().stretches[0].chosen.figures;
    assert_eq!((opened(&farm).opened, opened(&farm).measured), (4, 0));
    // 430 ac are 107.5 gal, 43 jugs: eight for each full load and three for the rest.
    assert_eq!((opened(&plain()).opened, opened(&plain()).measured), (43, 0));
    farm.products["h"].containers[0].opened = Some(typed("1 gal"));
    assert_eq!((opened(&farm).opened, opened(&farm).measured), (4, 0), "whole jugs will do");
    farm.products["h"].containers[0].opened = Some(typed("2.5 gal"));
    assert_eq!((opened(&farm).opened, opened(&farm).measured), (3, 0));
    farm.fields["f"].area = typed("44 ac");
    farm.products["h"].containers[0].opened = Some(typed("1 gal"));
    assert_eq!((opened(&farm).opened, opened(&farm).measured), (4, 0), "11 gal: the rest and four jugs");
    let Amount::Volume(left) = plan(&farm, "p").unwrap().loads[0].items[0].measured.amount else { panic!("a liquid") };
    assert!((left.to_us_gallons() - 11.0).abs() < 1e-9);
}

/// 62 acres take 15.5 gallons, 6.2 jugs, of which the seventh is left with four fifths; the 5.8 jugs of the next stretch take five more.
#[test]
fn what_one_stretch_leaves_opened_the_next_takes_first() {
    let mut farm = plain();
    farm.fields["f"].area = typed("62 ac");
    let mut other = farm.fields["f"].clone();
    "soybean".clone_into(&mut other.crop);
    other.area = typed("58 ac");
    farm.fields.insert("g".to_owned(), other);
    farm.passes["p"].fields.push("g".to_owned());
    let stretches = plan(&farm, "p").unwrap().sizing.unwrap().stretches;
    assert_eq!(stretches.iter().map(|stretch| stretch.chosen.figures.opened).collect::<Vec<_>>(), [7, 5]);
    // Of jugs that the first stretch just empties nothing stands opened.
    farm.fields["f"].area = typed("60 ac");
    let stretches = plan(&farm, "p").unwrap().sizing.unwrap().stretches;
    assert_eq!(stretches.iter().map(|stretch| stretch.chosen.figures.opened).collect::<Vec<_>>(), [6, 6]);
}

/// 950 gallons in the tank of a pass that takes 900 mix nothing and leave 50, with which the next may go on.
#[test]
fn a_pass_that_mixes_nothing_leaves_what_its_ground_does_not_take() {
    let mut farm = plain();
    farm.fields["f"].area = typed("60 ac");
    farm.passes["p"].in_tank = Some(InTank { volume: typed("950 gal"), from: String::new() });
    let mut next = farm.passes["p"].clone();
    "Next".clone_into(&mut next.name);
    next.in_tank = Some(InTank { volume: typed("50 gal"), from: "p".to_owned() });
    farm.passes.insert("n".to_owned(), next);
    let doubts = |farm: &Farm| {
        let doubted =
            |text: &str| text.contains("of its spray cannot be told") || text.contains("leaves 50 gal in the tank;");
        plan(farm, "n").unwrap().findings.iter().filter(|finding| doubted(&finding.text)).count()
    };
    assert_eq!(doubts(&farm), 0);
    farm.passes["n"].in_tank = Some(InTank { volume: typed("60 gal"), from: "p".to_owned() });
    assert_eq!(doubts(&farm), 1);
}

/// A decided load of 480 gallons of which 180 are in the tank already takes 300 gallons of new spray: 20 acres, 5 gallons, two jugs
/// to the drop. The 42 acres after it take 10.5 gallons: five more.
#[test]
fn spray_in_the_tank_opens_no_containers() {
    let mut farm = plain();
    farm.fields["f"].area = typed("74 ac");
    farm.passes["p"].in_tank = Some(InTank { volume: typed("180 gal"), from: String::new() });
    farm.passes["p"].sizes = vec![typed("480 gal")];
    let out = plan(&farm, "p").unwrap();
    assert_eq!(gallons(&out), [480.0, 630.0]);
    assert_eq!(out.sizing.unwrap().stretches[0].chosen.figures.opened, 5);
}

fn short_rows(farm: &Farm) -> Vec<tankard_core::farm::ShortRow> {
    let plan = plan(farm, "p").unwrap();
    tankard_core::loads::card::card(farm, &plan, plan.loads.last().unwrap()).unwrap().short
}

/// Less ground is told of spray that is all mixed anew and sprayed out.
#[test]
fn less_ground_is_not_told_of_a_load_that_holds_or_leaves_spray() {
    let mut farm = plain();
    farm.fields["f"].area = typed("60 ac");
    assert!(!short_rows(&farm).is_empty());
    farm.passes["p"].extra = Some(typed("30 gal"));
    assert_eq!(short_rows(&farm).len(), 0);
    farm.passes["p"].extra = None;
    farm.passes["p"].in_tank = Some(InTank { volume: typed("180 gal"), from: String::new() });
    assert_eq!(short_rows(&farm).len(), 0);
}

/// An acre takes 1 fl oz: marks of 1 fl oz measure nothing of a tenth of it, and a fifth too much or too little of three tenths.
#[test]
fn less_ground_is_not_told_amounts_that_no_mark_measures() {
    let mut farm = plain();
    farm.fields["f"].area = typed("3.2 ac");
    farm.passes["p"].mix[0].rate = typed("1 fl oz/ac");
    farm.measuring.liquid = Some(typed("1 fl oz"));
    let ground: Vec<String> = short_rows(&farm).into_iter().map(|row| row.ground).collect();
    assert_eq!(ground, ["1 ac", "2 ac", "3 ac"], "half an acre takes half an ounce");
    farm.fields["f"].area = typed("0.9 ac");
    assert_eq!(short_rows(&farm).len(), 0);
}

/// Bands of 10 in on rows of 30 in are a third of the ground: 60 acres take 20 × 15 gal of spray and 20 × 32 fl oz of product.
#[test]
fn less_ground_is_what_is_driven_over_where_bands_are_sprayed() {
    use tankard_core::farm::{Layout, NozzleSet};
    let mut farm = plain();
    farm.fields["f"].area = typed("90 ac");
    let mut set = NozzleSet { name: "Bands".to_owned(), ..NozzleSet::default() };
    set.layout = Some(Layout::Band { width: typed("10 in"), rows: typed("30 in"), nozzles: 1 });
    farm.rigs["r"].sets.insert("bands".to_owned(), set);
    "bands".clone_into(&mut farm.passes["p"].nozzles);
    let rows = short_rows(&farm);
    let row = rows.iter().find(|row| row.ground.starts_with("60 ac")).unwrap_or_else(|| panic!("{rows:?}"));
    assert_eq!((row.ground.as_str(), row.spray.as_str()), ("60 ac of ground", "300 gal"));
    assert_eq!(row.amounts, ["5 gal"]);
    assert!(rows.iter().all(|row| !row.ground.starts_with("90 ac")));
}

/// A load of 60 gal, of which 15 are for the acre there is: 4.4 fl oz are measured as 4, so a fourth of these is on the ground.
#[test]
fn what_is_left_over_is_as_strong_as_its_load() {
    let mut farm = plain();
    farm.fields["f"].area = typed("1 ac");
    farm.passes["p"].mix[0].rate = typed("1.1 fl oz/ac");
    farm.passes["p"].extra = Some(typed("45 gal"));
    let on_ground = |farm: &Farm| {
        let record = tankard_core::season::record::from_plan(farm, &Log::of(farm), &plan(farm, "p").unwrap()).unwrap();
        match record.lines[0].amount.value() {
            Amount::Volume(volume) => volume.to_us_fluid_ounces(),
            Amount::Mass(mass) => panic!("{mass:?}"),
        }
    };
    assert!((on_ground(&farm) - 1.0).abs() < 1e-6, "{}", on_ground(&farm));
    // A hair of ground and a full tank beyond it: never less than nothing.
    farm.fields["f"].area = typed("0.01 ac");
    assert!(on_ground(&farm) > 0.0, "{}", on_ground(&farm));
}

#[test]
fn a_water_soluble_bag_whose_weight_is_not_typed_is_said() {
    let mut farm = plain();
    farm.products["h"].formulation = Formulation::WSP;
    farm.products["h"].containers.clear();
    farm.passes["p"].mix[0].rate = typed("4 oz/ac");
    says(&plan(&farm, "p").unwrap(), Level::Check, "so its amounts may be no whole bags");
    let bag = Container { kind: ContainerKind::Bag, size: typed("1 lb"), full: 0, opened: None, lot: String::new() };
    farm.products["h"].containers.push(bag);
    assert!(plan(&farm, "p").unwrap().findings.iter().all(|finding| !finding.text.contains("whole bags")));
}

#[test]
fn a_decided_load_above_the_mark_to_fill_to_is_said() {
    let mut farm = plain();
    farm.passes["p"].fill_to = Some(typed("1000 gal"));
    farm.passes["p"].sizes = vec![typed("1000 gal"), typed("1100 gal")];
    let out = plan(&farm, "p").unwrap();
    says(&out, Level::Check, "Load 2 is decided as 1,100 gal, though the tank is to be filled to 1,000 gal");
    assert!(out.findings.iter().all(|finding| !finding.text.contains("Load 1 is decided")));
}

/// 60 ac take 900 gal: decided as 900 or 950 gal they leave nothing or 50 of the 100 gal that are asked for.
#[test]
fn decided_loads_that_leave_less_than_asked_are_said() {
    let mut farm = plain();
    farm.fields["f"].area = typed("60 ac");
    farm.passes["p"].extra = Some(typed("100 gal"));
    for (size, left) in [("900 gal", "nothing"), ("950 gal", "50 gal")] {
        farm.passes["p"].sizes = vec![typed(size)];
        let out = plan(&farm, "p").unwrap();
        assert_eq!(out.loads.len(), 1);
        let text = format!("100 gal are to be left after the last metre; the decided loads leave {left}");
        says(&out, Level::Check, &text);
        // By hand: 32 fl oz on each 15 gal.
        let need = &tankard_core::stock::needs::of_day(&farm, farm.passes["p"].date).products[0];
        let gallons = if size == "900 gal" { 15.0 } else { 15.0 * 950.0 / 900.0 };
        assert!(matches!(need.amount, Amount::Volume(volume) if (volume.to_us_gallons() - gallons).abs() < 1e-9));
    }
    farm.passes["p"].sizes = vec![typed("1000 gal")];
    assert!(plan(&farm, "p").unwrap().findings.iter().all(|finding| !finding.text.contains("are to be left")));
}

#[test]
fn the_card_tells_what_is_left_after_the_last_metre() {
    let mut farm = plain();
    farm.passes["p"].extra = Some(typed("10 gal"));
    let plan = plan(&farm, "p").unwrap();
    let last_hint = |load: usize| {
        let card = tankard_core::loads::card::card(&farm, &plan, &plan.loads[load]).unwrap();
        card.steps.last().unwrap().hint.clone()
    };
    assert_eq!(last_hint(5), "agitate; 10 gal are left after the last metre");
    assert_eq!(last_hint(4), "agitate until empty");
}
