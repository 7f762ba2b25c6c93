//! Water and conditioner: what a plan recommends, what it never recommends, and the laws of blending.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use jiff::civil::date;
use proptest::prelude::*;
use tankard_core::farm::label::Stance;
use tankard_core::farm::{
    Active, AdjuvantClass, Clarity, Farm, Field, Formulation, Grade, Line, Pass, Product, ProductKind, Rig, Says,
    Statement, Water, When,
};
use tankard_core::finding::{Basis, Finding, Level, Subject};
use tankard_core::plan::{Plan, plan};
use tankard_core::quantity::{
    ActiveBasis, Amount, AsTyped, Hardness, IonContent, MassPerVolume, Quantity, Rate, Share, Units,
};
use tankard_core::water::blend::{NoBlend, blend, hardness_at, share_for};
use tankard_core::water::dose::{Dose, per_load};
use tankard_core::water::{hardness, need};
use tankard_tests::cases;

fn typed<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

fn active(name: &str, basis: ActiveBasis, content: &str) -> Active {
    Active { name: name.to_owned(), group: String::new(), basis, content: typed(content) }
}

fn herbicide(name: &str) -> Product {
    let mut product = Product::new("Herbicide (demo)", ProductKind::Herbicide, Formulation::SL);
    product.actives.push(active(name, ActiveBasis::AcidEquivalent, "480 g/L"));
    product
}

fn sulfate(formulation: Formulation) -> Product {
    let mut product = Product::new("Sulfate (demo)", ProductKind::Conditioner, formulation);
    product.class = Some(AdjuvantClass::AmmoniumSulfate);
    product.grade = Some(Grade::Spray);
    product
}

fn conditioner(rate: &str) -> Product {
    let mut product = Product::new("Conditioner (demo)", ProductKind::Conditioner, Formulation::SL);
    product.class = Some(AdjuvantClass::ConditionerWithoutAmmonium);
    if !rate.is_empty() {
        let says = Says::Rate { least: Some(typed(rate)), most: Some(typed("1 % v/v")) };
        product.label.push(Statement::new(says, "page 1"));
    }
    product
}

/// 300 ac, a 1,200 gal tank, 15 gal/ac: 4,500 gal. Glyphosate at 1 L/ha in a water of Ca 100, Mg 30, Na 40, K 5 ppm, which
/// ties up 1.53 lb/100 gal and is 373 ppm hard.
fn farm() -> Farm {
    let mut farm = Farm::new("Water");
    farm.fields.insert("f".to_owned(), Field::new("Field", typed("300 ac")));
    farm.rigs.insert("r".to_owned(), Rig::new("Boom", typed("1200 gal")));
    let water = Water {
        name: "Well".to_owned(),
        calcium: Some(typed("100 ppm")),
        magnesium: Some(typed("30 ppm")),
        sodium: Some(typed("40 ppm")),
        potassium: Some(typed("5 ppm")),
        iron: Some(typed("0 ppm")),
        ..Water::default()
    };
    farm.waters.insert("w".to_owned(), water);
    farm.products.insert("h".to_owned(), herbicide("glyphosate"));
    let mut pass = Pass::new("Pass", date(2031, 6, 12));
    pass.fields.push("f".to_owned());
    "w".clone_into(&mut pass.water);
    "r".clone_into(&mut pass.rig);
    pass.carrier = Some(typed("15 gal/ac"));
    pass.mix.push(Line::new("h", typed("1 L/ha")));
    farm.passes.insert("p".to_owned(), pass);
    farm
}

fn says(farm: &mut Farm, says: Says) {
    farm.products["h"].label.push(Statement::new(says, "page 3"));
}

fn of_sulfate(stance: Stance, least: Option<&str>, most: Option<&str>) -> Says {
    Says::Adjuvant {
        class: AdjuvantClass::AmmoniumSulfate,
        stance,
        least: least.map(typed),
        most: most.map(typed),
        at_least: None,
        at_most: None,
    }
}

fn add(farm: &mut Farm, id: &str, product: Product, rate: Option<&str>) {
    farm.products.insert(id.to_owned(), product);
    if let Some(rate) = rate {
        farm.passes["p"].mix.push(Line::new(id, typed::<Rate>(rate)));
    }
}

fn planned(farm: &Farm) -> Plan {
    plan(farm, "p").unwrap()
}

fn find<'a>(plan: &'a Plan, text: &str) -> Option<&'a Finding> {
    plan.findings.iter().find(|finding| finding.text.contains(text))
}

fn pounds(content: MassPerVolume) -> f64 {
    content.to_pounds_per_100_us_gallons()
}

#[test]
fn three_figures_stand_side_by_side() {
    // The equation, North Dakota practice and the labels' range: Zollinger, NDSU Extension, Crop & Pest Report, 2 July
    // 2015. 0.002 × 5 + 0.005 × 40 + 0.009 × 100 + 0.014 × 30 = 1.53 lb/100 gal.
    let plan = planned(&farm());
    let note = find(&plan, "its ions tie up").unwrap();
    assert_eq!(note.level, Level::Note);
    for figure in ["1.53 lb/100 gal", "4 to 6 lb/100 gal", "8.5 to 17 lb/100 gal", "plan 8.5 lb/100 gal"] {
        assert!(note.text.contains(figure), "{figure} in {}", note.text);
    }
    // Soltani et al. 2016, nine trials in Ontario.
    assert!(note.hint.contains("may pay") && note.basis.source().contains("Soltani"));
    let working = plan.workings.iter().find(|working| working.title.contains("three figures")).unwrap();
    let results: Vec<&str> = working.steps.iter().map(|step| step.result.as_str()).collect();
    assert_eq!(results, ["1.53 lb/100 gal", "4 to 6 lb/100 gal", "8.5 to 17 lb/100 gal", "8.5 lb/100 gal"]);
}

/// Calcium 100 and magnesium 30 ppm make 2.497 × 100 + 4.118 × 30 = 373.2 ppm (Standard Methods 2340 B). A laboratory that states a
/// tenth more or less of what it states itself is believed: from 339.3 (373.2 ÷ 1.1) to 414.7 ppm (373.2 ÷ 0.9). In soft water 2 ppm
/// are allowed; calcium 4 ppm make 9.99. How much is allowed is common practice, no source.
#[test]
fn a_stated_hardness_that_the_ions_do_not_make_is_said() {
    let doubted = |calcium: &str, magnesium: &str, stated: &str| {
        let mut farm = farm();
        let water = &mut farm.waters["w"];
        (water.calcium, water.magnesium) = (Some(typed(calcium)), Some(typed(magnesium)));
        water.hardness = Some(typed(stated));
        find(&planned(&farm), "calcium and magnesium make").is_some()
    };
    for (stated, apart) in [("339 ppm", true), ("340 ppm", false), ("414 ppm", false), ("415.5 ppm", true)] {
        assert_eq!(doubted("100 ppm", "30 ppm", stated), apart, "{stated}");
    }
    for (stated, apart) in [("7.9 ppm", true), ("8.1 ppm", false), ("11.9 ppm", false), ("12.1 ppm", true)] {
        assert_eq!(doubted("4 ppm", "0 ppm", stated), apart, "{stated}");
    }
}

/// The same equation, where calcium, magnesium or both stand in the hardness alone: 100 ppm Ca and 30 ppm Mg are 2.497 × 100 + 4.118 × 30
/// = 373.24 ppm of it (Standard Methods 2340 B). Sodium and potassium add 0.005 × 40 + 0.002 × 5 = 0.21, iron 0.042 × 0.5 = 0.021.
#[test]
fn a_need_is_the_same_from_the_ions_and_from_the_hardness() {
    let of = |calcium: Option<&str>, magnesium: Option<&str>, hardness: Option<&str>| {
        let water = Water {
            calcium: calcium.map(typed),
            magnesium: magnesium.map(typed),
            hardness: hardness.map(typed),
            sodium: Some(typed("40 ppm")),
            potassium: Some(typed("5 ppm")),
            iron: Some(typed("0.5 ppm")),
            ..Water::default()
        };
        need(&water).unwrap()
    };
    let (calcium, magnesium, hardness) = (Some("100 ppm"), Some("30 ppm"), Some("373.24 ppm"));
    let all_calcium = 0.009 * 373.24 / 2.497 + 0.21;
    let all_magnesium = 0.014 * 373.24 / 4.118 + 0.21;
    for (found, least, most, missing) in [
        (of(calcium, magnesium, hardness), 1.53, 1.53, vec![]),
        (of(calcium, None, hardness), 1.53, 1.53, vec![]),
        (of(None, magnesium, hardness), 1.53, 1.53, vec![]),
        (of(None, None, hardness), all_magnesium, all_calcium, vec![]),
        (of(calcium, None, None), 1.11, 1.11, vec!["magnesium"]),
        (of(None, magnesium, None), 0.63, 0.63, vec!["calcium"]),
        // More of an ion than the stated hardness has room for leaves none of the other.
        (of(Some("200 ppm"), None, hardness), 2.01, 2.01, vec![]),
        (of(None, Some("100 ppm"), hardness), 1.61, 1.61, vec![]),
    ] {
        let figures = [found.without_iron, found.without_iron_most, found.with_iron.unwrap()].map(pounds);
        for (figure, expected) in figures.into_iter().zip([least, most, most + 0.021]) {
            assert!((figure - expected).abs() < 1e-9, "{figure}, not {expected}: {found:?}");
        }
        assert_eq!(found.missing, missing);
    }
}

/// Standard Methods 2340 B: 2.497 × 100 = 249.7 and 4.118 × 30 = 123.54.
#[test]
fn the_working_of_hardness_shows_both_parts() {
    let plan = planned(&farm());
    let working = plan.workings.iter().find(|working| working.title == "Hardness of Well").unwrap();
    let results: Vec<&str> = working.steps.iter().map(|step| step.result.as_str()).collect();
    assert_eq!(results, ["249.7", "123.5", "373.2 ppm CaCO3"]);
}

#[test]
fn a_typed_range_goes_before_the_published_one() {
    for (least, most, expected) in [
        (Some("3 lb/100 gal"), None, Some(3.0)),
        (Some("10 lb/100 gal"), Some("20 lb/100 gal"), Some(10.0)),
        (Some("20 lb/100 gal"), None, Some(20.0)),
        (None, Some("5 lb/100 gal"), Some(5.0)),
    ] {
        let mut farm = farm();
        says(&mut farm, of_sulfate(Stance::Allowed, least, most));
        let found = planned(&farm).water.recommended.map(pounds);
        assert!(
            found.zip(expected).is_some_and(|(found, expected)| (found - expected).abs() < 1e-9),
            "{least:?} {most:?}: {found:?}"
        );
    }
    // The published range is for glyphosate; another weak acid has none, so nothing is guessed.
    let mut farm = farm();
    farm.products.insert("h".to_owned(), herbicide("clopyralid"));
    let plan = planned(&farm);
    assert_eq!(plan.water.recommended, None);
    assert!(find(&plan, "a label range is not typed").is_some());
}

#[test]
fn a_label_that_advises_against_sulfate_is_heard() {
    let mut farm = farm();
    says(&mut farm, of_sulfate(Stance::Discouraged, None, None));
    assert_eq!(planned(&farm).water.recommended, None);
    // A condition that does not hold leaves the statement out.
    farm.products["h"].label[0].when.push(When::With("dicamba".to_owned()));
    assert!(planned(&farm).water.recommended.is_some());
    // So does a range whose partner is missing: the published one stands, not 20 lb.
    farm.products["h"].label[0].says = of_sulfate(Stance::Required, Some("20 lb/100 gal"), None);
    assert!((pounds(planned(&farm).water.recommended.unwrap()) - 8.5).abs() < 1e-9);
}

#[test]
fn good_water_and_herbicides_that_do_not_care_ask_for_nothing() {
    let mut other = farm();
    other.products.insert("h".to_owned(), herbicide("mesotrione"));
    let mut rain = farm();
    rain.waters["w"].calcium = Some(typed("8 ppm"));
    rain.waters["w"].magnesium = Some(typed("2 ppm"));
    for farm in [other, rain] {
        let plan = planned(&farm);
        assert_eq!((plan.water.recommended, &plan.water.conditioner), (None, &None));
        assert!(!plan.findings.iter().any(|finding| finding.text.contains("tie up")), "{:?}", plan.findings);
    }
}

#[test]
fn each_load_has_its_dose() {
    // 8.5 lb/100 gal on 1,200 gal is 102 lb; from a solution of 3.4 lb/gal 30 gal (arithmetic).
    let mut dry = farm();
    add(&mut dry, "s", sulfate(Formulation::SG), None);
    let mut liquid = farm();
    let mut solution = sulfate(Formulation::SL);
    solution.actives.push(active("ammonium sulfate", ActiveBasis::ActiveIngredient, "3.4 lb/gal"));
    add(&mut liquid, "s", solution, None);
    // Of a blend that is half salt it takes twice as much.
    let mut half = farm();
    let mut blend = sulfate(Formulation::SG);
    blend.actives.push(active("ammonium sulfate", ActiveBasis::ActiveIngredient, "50 % w/w"));
    add(&mut half, "s", blend, None);
    for (farm, full, rest) in [(dry, "102 lb", "76.5 lb"), (liquid, "30 gal", "22.5 gal"), (half, "204 lb", "153 lb")] {
        let plan = planned(&farm);
        let (doses, working) = per_load(&plan.water, &plan.loads, Units::UsCustomary);
        assert_eq!(doses.len(), 4);
        let last = working.unwrap().steps.pop().unwrap();
        assert_eq!(last.result, rest);
        let amount = doses[0].product.unwrap();
        let shown = match amount {
            Amount::Mass(mass) => mass.show(Units::UsCustomary),
            Amount::Volume(volume) => volume.show(Units::UsCustomary),
        };
        assert_eq!(shown, full);
        let salt: f64 = doses.iter().map(|dose| dose.salt.unwrap().to_pounds()).sum();
        assert!((salt - 8.5 * 45.0).abs() < 1e-6, "{salt}");
        assert_eq!(plan.water.conditioner.as_ref().unwrap().product.as_deref(), Some("s"));
    }
}

#[test]
fn a_solution_without_content_is_asked_for_it() {
    // A fertilizer grade does not tell it: 8-0-0-9 is quoted as 3.4 lb/gal, and 8 % of nitrogen would make 3.8 (arithmetic).
    for content in [None, Some("38 % w/w")] {
        let mut farm = farm();
        says(&mut farm, of_sulfate(Stance::Required, Some("8.5 lb/100 gal"), None));
        let mut solution = sulfate(Formulation::SL);
        "Ammonium sulfate 8-0-0-9 (demo)".clone_into(&mut solution.name);
        solution
            .actives
            .extend(content.map(|content| active("ammonium sulfate", ActiveBasis::ActiveIngredient, content)));
        add(&mut farm, "s", solution, Some("2.5 % v/v"));
        let plan = planned(&farm);
        assert_eq!(find(&plan, "is not typed, so it is not judged").map(|finding| finding.level), Some(Level::Check));
        assert!(find(&plan, "the mix has none").is_none());
        let choice = plan.water.conditioner.unwrap();
        assert_eq!((choice.per_spray, choice.content), (None, None));
        // The salt is known all the same.
        assert!((pounds(plan.water.recommended.unwrap()) - 8.5).abs() < 1e-9);
    }
}

#[test]
fn where_ammonium_is_forbidden_no_sulfate_is_recommended() {
    let bans = [
        of_sulfate(Stance::Forbidden, None, None),
        Says::NotWith { what: "ammonium sulfate".to_owned(), days: 0 },
        Says::NotWith { what: "ammonium salts".to_owned(), days: 0 },
    ];
    for ban in bans {
        let mut farm = farm();
        says(&mut farm, ban.clone());
        add(&mut farm, "s", sulfate(Formulation::SG), None);
        let plan = planned(&farm);
        assert_eq!(plan.water.recommended, None, "{ban:?}");
        let finding = find(&plan, "the shed has no conditioner without ammonium").unwrap();
        assert!(matches!(&finding.basis, Basis::Label(at) if at == "Herbicide (demo), page 3"));
        assert!(finding.hint.contains("accepted by Herbicide (demo)"));
        let choice = plan.water.conditioner.unwrap();
        assert_eq!((choice.product, choice.class), (None, AdjuvantClass::ConditionerWithoutAmmonium));
        // One in the shed serves, at its label's rate: 0.5 % of 1,200 gal is 6 gal.
        add(&mut farm, "c", conditioner("0.5 % v/v"), None);
        let plan = planned(&farm);
        let (doses, _) = per_load(&plan.water, &plan.loads, Units::UsCustomary);
        let choice = plan.water.conditioner.clone().unwrap();
        assert_eq!((choice.product.as_deref(), choice.in_mix), (Some("c"), false));
        assert!(matches!(choice.per_spray_most, Some(Dose::Liquid(share)) if (share.to_percent() - 1.0).abs() < 1e-9));
        assert!(
            matches!(doses[0].product, Some(Amount::Volume(volume)) if (volume.to_us_gallons() - 6.0).abs() < 1e-9),
            "{doses:?}"
        );
        assert_eq!(doses[0].salt, None);
        assert_eq!(find(&plan, "conditions without it, 0.5 % v/v to 1 % v/v").unwrap().level, Level::Check);
        // In the mix it is enough.
        farm.passes["p"].mix.push(Line::new("c", typed("0.5 % v/v")));
        let plan = planned(&farm);
        assert_eq!(find(&plan, "Conditioner (demo) in the mix holds none").unwrap().level, Level::Note);
        assert!(plan.water.conditioner.unwrap().in_mix);
    }
}

/// Where the conditioner's own label names no rate, a partner's label may name one for its class, and not for another.
#[test]
fn a_partners_rate_for_another_class_is_not_the_conditioners() {
    let mut farm = farm();
    let named = |class, least: &str| Says::Adjuvant {
        class,
        stance: Stance::Allowed,
        least: Some(typed(least)),
        most: None,
        at_least: None,
        at_most: None,
    };
    says(&mut farm, of_sulfate(Stance::Forbidden, None, None));
    says(&mut farm, named(AdjuvantClass::NonIonicSurfactant, "0.25 % v/v"));
    says(&mut farm, named(AdjuvantClass::ConditionerWithoutAmmonium, "0.75 % v/v"));
    add(&mut farm, "c", conditioner(""), None);
    let dose = planned(&farm).water.conditioner.unwrap().per_spray;
    assert!(matches!(dose, Some(Dose::Liquid(share)) if (share.to_percent() - 0.75).abs() < 1e-9), "{dose:?}");
}

#[test]
fn a_conditioner_that_a_partner_refuses_is_not_named() {
    let mut farm = farm();
    says(&mut farm, of_sulfate(Stance::Forbidden, None, None));
    says(&mut farm, Says::NotWith { what: "Conditioner (demo)".to_owned(), days: 0 });
    add(&mut farm, "c", conditioner("0.5 % v/v"), None);
    assert_eq!(planned(&farm).water.conditioner.unwrap().product, None);
    // A label without a rate is said to lack it.
    farm.products["h"].label.pop();
    farm.products.insert("c".to_owned(), conditioner(""));
    let plan = planned(&farm);
    assert!(find(&plan, "of the shed conditions without it").unwrap().hint.contains("Type its label's rate"));
    assert_eq!(plan.water.conditioner.unwrap().per_spray, None);
}

#[test]
fn fertilizer_grade_is_a_check_and_an_untyped_one_a_note() {
    // Common practice; Washington State University and Western Farm Press name spray grade.
    for (grade, formulation, level) in [
        (Some(Grade::Fertilizer), Formulation::SG, Some(Level::Check)),
        (Some(Grade::Fertilizer), Formulation::SL, Some(Level::Check)),
        (Some(Grade::Spray), Formulation::SG, None),
        (None, Formulation::SG, Some(Level::Note)),
        (None, Formulation::SL, None),
    ] {
        let mut farm = farm();
        let mut product = sulfate(formulation);
        product.grade = grade;
        product.actives.push(active("ammonium sulfate", ActiveBasis::ActiveIngredient, "3.4 lb/gal"));
        add(&mut farm, "s", product, Some(if formulation == Formulation::SL { "2.5 % v/v" } else { "8.5 lb/100 gal" }));
        let plan = planned(&farm);
        let about = plan.findings.iter().find(|finding| finding.text.contains("grade"));
        assert_eq!(about.map(|finding| finding.level), level, "{grade:?} {formulation:?}");
    }
    // The shed's fertilizer grade is never the one recommended.
    let mut farm = farm();
    let mut coarse = sulfate(Formulation::SG);
    coarse.grade = Some(Grade::Fertilizer);
    add(&mut farm, "s", coarse, None);
    assert_eq!(planned(&farm).water.conditioner.unwrap().product, None);
}

#[test]
fn urea_ammonium_nitrate_conditions_more_weakly() {
    // Woznica et al., Weed Technology; a North Dakota laboratory and Saskatchewan Agriculture name both.
    let mut farm = farm();
    let mut solution = Product::new("Nitrate 28 % (demo)", ProductKind::Conditioner, Formulation::SL);
    solution.class = Some(AdjuvantClass::UreaAmmoniumNitrate);
    add(&mut farm, "u", solution, Some("2.5 % v/v"));
    let plan = planned(&farm);
    assert_eq!(find(&plan, "more weakly than ammonium sulfate").map(|finding| finding.level), Some(Level::Note));
}

#[test]
fn hardness_shows_the_spread_and_what_less_water_would_do() {
    let mut farm = farm();
    let plan = planned(&farm);
    // 480 g ae/ha is above the low rate. The lowest limit printed is 125 ppm (an Ohio agronomist, 2022), the highest for
    // such a rate 700 ppm (T. Wolf, sprayers101).
    let text = "Well is 373 ppm hard, which may tie up glyphosate; some publications treat water above 125 ppm, others only \
                above 700 ppm (glyphosate at higher rates)";
    let finding = plan.findings.iter().find(|finding| finding.text == text).unwrap();
    assert_eq!(finding.level, Level::Note);
    assert!(finding.basis.source().contains("wfin.com") && finding.basis.source().contains("sprayers101"));
    assert!(!finding.hint.contains("less of what ties up"));
    // At a low rate 350 ppm is passed. 10 instead of 15 gal/ac brings a third less (arithmetic).
    farm.passes["p"].mix[0].rate = typed("0.9 L/ha");
    says(&mut farm, Says::Carrier { least: Some(typed("10 gal/ac")), most: None });
    let plan = planned(&farm);
    let finding = find(&plan, "which may tie up").unwrap();
    assert_eq!(finding.level, Level::Check);
    assert!(finding.hint.contains("the water brings 33 % less"), "{}", finding.hint);
    // With ammonium sulfate in the mix the hardness is judged by what the mix holds.
    add(&mut farm, "s", sulfate(Formulation::SG), Some("8.5 lb/100 gal"));
    assert!(find(&planned(&farm), "which may tie up").is_none());
}

#[test]
fn amine_and_ester_are_told_apart_by_their_names() {
    // L. Henry, Grainews; Saskatchewan Agriculture: the ester of 2,4-D is not affected.
    for (name, product, concerned, unclear) in [
        ("2,4-D dimethylamine salt", "Herbicide (demo)", true, false),
        ("2,4-D", "2,4-D amine 480 SL (demo)", true, false),
        ("2,4-D", "Herbicide (demo)", true, true),
        ("2,4-D", "2,4-D ester 600 EC (demo)", false, false),
        ("2,4-D 2-ethylhexyl ester", "Herbicide (demo)", false, false),
        ("2,4-DX", "Herbicide (demo)", false, false),
    ] {
        let mut farm = farm();
        let mut herbicide = herbicide(name);
        product.clone_into(&mut herbicide.name);
        farm.products.insert("h".to_owned(), herbicide);
        farm.waters["w"].bicarbonate = Some(typed("600 ppm"));
        let plan = planned(&farm);
        let finding = find(&plan, "of bicarbonate");
        assert_eq!(finding.is_some(), concerned, "{name} in {product}");
        assert_eq!(finding.is_some_and(|finding| finding.hint.contains("amine or an ester")), unclear, "{name}");
    }
}

#[test]
fn bicarbonate_that_is_not_stated_is_named_where_it_matters() {
    let mut farm = farm();
    assert!(find(&planned(&farm), "does not state bicarbonate").is_none());
    farm.products.insert("h".to_owned(), herbicide("clethodim"));
    assert_eq!(find(&planned(&farm), "does not state bicarbonate").map(|finding| finding.level), Some(Level::Note));
    farm.waters["w"].bicarbonate = Some(typed("100 ppm"));
    assert!(find(&planned(&farm), "bicarbonate").is_none());
}

#[test]
fn what_a_water_does_not_state_leaves_no_trace_in_the_file() {
    let water = Water { name: "Well".to_owned(), ..Water::default() };
    assert_eq!(serde_json::to_string(&water).unwrap(), r#"{"name":"Well"}"#);
    let water = Water {
        manganese: Some(typed("0.2 ppm")),
        conductivity: Some(typed("0.75 dS/m")),
        clarity: Some(Clarity::Cloudy),
        ..water
    };
    let text = serde_json::to_string(&water).unwrap();
    assert!(text.contains("0.75 dS/m") && text.contains("Cloudy"), "{text}");
    assert_eq!(serde_json::from_str::<Water>(&text).unwrap(), water);
}

fn ion(ppm: f64) -> AsTyped<IonContent> {
    typed(&format!("{ppm:.2} ppm"))
}

prop_compose! {
    fn waters()(
        calcium in 0.0..400.0_f64,
        magnesium in 0.0..200.0_f64,
        sodium in 0.0..900.0_f64,
        bicarbonate in prop::option::of(0.0..900.0_f64),
        iron in prop::option::of(0.0..40.0_f64),
    ) -> Water {
        Water {
            name: "Water".to_owned(),
            calcium: Some(ion(calcium)),
            magnesium: Some(ion(magnesium)),
            sodium: Some(ion(sodium)),
            bicarbonate: bicarbonate.map(ion),
            iron: iron.map(ion),
            acidity: Some(typed("8.9")),
            clarity: Some(Clarity::Dirty),
            conductivity: Some(typed("1500 µS/cm")),
            ..Water::default()
        }
    }
}

proptest! {
    #![proptest_config(cases(256))]

    #[test]
    fn a_blend_reaches_its_hardness_and_ends_in_its_parts(a in waters(), b in waters(), part in 0.0..=1.0_f64) {
        prop_assert_eq!(blend(&a, &b, Share::from_percent(0.0)), a.clone());
        prop_assert_eq!(blend(&a, &b, Share::from_percent(100.0)), b.clone());
        let (from, to) = (hardness(&a).unwrap(), hardness(&b).unwrap());
        let target = from * (1.0 - part) + to * part;
        let share = match share_for(&a, &b, target) {
            Ok(share) => share,
            Err(problem) => {
                prop_assert_eq!(problem, NoBlend::Alike);
                return Ok(());
            }
        };
        let reached = hardness_at(&a, &b, share).unwrap();
        prop_assert!((reached.to_ppm() - target.to_ppm()).abs() <= 1e-9 * target.to_ppm().max(1.0));
        let mixed = blend(&a, &b, share);
        // The blend's figures are kept in words, to a thousandth of a ppm.
        prop_assert!((hardness(&mixed).unwrap().to_ppm() - target.to_ppm()).abs() < 0.004);
        let inside = share.to_fraction() > 0.0 && share.to_fraction() < 1.0;
        prop_assert!(!inside || mixed.iron.is_some() == (a.iron.is_some() && b.iron.is_some()));
        prop_assert!(!inside || (mixed.acidity.is_none() && mixed.clarity.is_none() && mixed.conductivity.is_none()));
        // Beyond the harder and the softer water there is no blend.
        let beyond = Hardness::from_ppm(from.max(to).to_ppm() + 1.0);
        prop_assert!(matches!(share_for(&a, &b, beyond), Err(NoBlend::OutOfReach(..))));
    }

    #[test]
    fn one_factor_of_a_water_has_one_finding(
        water in waters(),
        names in prop::sample::subsequence(
            vec!["glyphosate", "2,4-D", "clethodim", "nicosulfuron", "paraquat", "glufosinate", "atrazine"], 1..=7),
    ) {
        let mut farm = farm();
        farm.waters.insert("w".to_owned(), water);
        farm.passes["p"].mix.clear();
        for name in names {
            add(&mut farm, name, herbicide(name), Some("1 L/ha"));
        }
        let plan = planned(&farm);
        for word in [" hard, which", " of bicarbonate", " of iron,", "has pH", "soil in the water", "conductivity of"] {
            let found = plan.findings.iter().filter(|finding| finding.text.contains(word)).count();
            prop_assert!(found <= 1, "{word}: {found}");
        }
        let of_water = plan.findings.iter().filter(|finding| finding.about == Subject::Water("w".to_owned())).count();
        prop_assert!(of_water <= 9, "{of_water}");
        for finding in plan.findings.iter().filter(|finding| matches!(finding.basis, Basis::Published(_))) {
            prop_assert!(finding.basis.source().len() > 12);
            prop_assert!(!finding.text.ends_with('.') && !finding.hint.contains(".."), "{:?}", finding);
        }
    }

    #[test]
    fn a_recommendation_stays_within_the_labels_range(
        water in waters(),
        least in 1.0..20.0_f64,
        more in 0.0..20.0_f64,
    ) {
        let mut farm = farm();
        farm.waters.insert("w".to_owned(), water);
        let text = |pounds: f64| format!("{pounds:.2} lb/100 gal");
        says(&mut farm, of_sulfate(Stance::Preferred, Some(&text(least)), Some(&text(least + more))));
        let found = pounds(planned(&farm).water.recommended.unwrap());
        prop_assert!(found >= least - 0.01 && found <= least + more + 0.01, "{found}");
    }
}

#[test]
fn a_blend_of_unknown_hardness_says_what_to_type() {
    let one_ion = Water { name: "Pond".to_owned(), calcium: Some(typed("50 ppm")), ..Water::default() };
    let stated = Water { name: "Rain".to_owned(), hardness: Some(typed("20 ppm")), ..Water::default() };
    let error = share_for(&one_ion, &stated, Hardness::from_ppm(30.0)).unwrap_err();
    assert!(error.to_string().contains("hardness of Pond is not known"));
    let well = Water { name: "Well".to_owned(), hardness: Some(typed("400 ppm")), ..Water::default() };
    let mixed = blend(&well, &stated, Share::from_percent(40.0));
    // 0.6 × 400 + 0.4 × 20 = 248 ppm (arithmetic).
    assert_eq!(mixed.hardness.unwrap().text(), "248 ppm");
    assert_eq!(mixed.name, "Well with Rain, 40 %");
    assert!(mixed.note.contains("60 % of Well and 40 % of Rain"));
}
