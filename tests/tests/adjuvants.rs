//! Which adjuvants suit every partner: the cases that practitioners argue about, each with its reasons, and the laws of the
//! choice.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use jiff::civil::date;
use proptest::prelude::*;
use tankard_core::farm::label::{Says, Stance, When};
use tankard_core::farm::{
    Active, AdjuvantClass, Advice, Charge, Farm, Field, Formulation, Growing, Lean, Line, Pass, Product, ProductKind,
    Rig, Statement, Surfactant, Water,
};
use tankard_core::finding::{Basis, Level};
use tankard_core::mix::choice::{Adjuvants, Choice, Content};
use tankard_core::plan::{Plan, plan};
use tankard_core::quantity::{AsTyped, Concentration, Quantity};
use tankard_tests::cases;

use AdjuvantClass::{
    AmmoniumSulfate as Ams, ConditionerWithoutAmmonium as Conditioner, CropOilConcentrate as Coc,
    MethylatedSeedOil as Mso, NonIonicSurfactant as Nis, UreaAmmoniumNitrate as Uan, VolatilityReducer as Vra,
};

fn typed<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

/// A herbicide of one or several actives, each with its content.
fn herbicide(name: &str, formulation: Formulation, actives: &[(&str, &str)]) -> Product {
    let mut product = Product::new(name, ProductKind::Herbicide, formulation);
    for (active, content) in actives {
        let content: AsTyped<Concentration> = typed(content);
        let basis = content.basis().unwrap_or(tankard_core::quantity::ActiveBasis::ActiveIngredient);
        product.actives.push(Active { name: (*active).to_owned(), group: String::new(), basis, content });
    }
    product
}

fn adjuvant(name: &str, class: AdjuvantClass, price: &str) -> Product {
    let (kind, formulation) = match class {
        Ams => (ProductKind::Conditioner, Formulation::SG),
        Conditioner => (ProductKind::Conditioner, Formulation::SL),
        Coc | Mso => (ProductKind::Adjuvant, Formulation::EC),
        _ => (ProductKind::Adjuvant, Formulation::SL),
    };
    let mut product = Product::new(name, kind, formulation);
    product.class = Some(class);
    product.price = Some(typed(price));
    product
}

/// A field of a crop, hard water, 15 gal/ac, and a shed with one product each of NIS, COC, MSO, AMS and UAN.
fn farm(crop: &str, mix: &[(&str, Product)]) -> Farm {
    let mut farm = Farm::new("Adjuvants");
    let mut field = Field::new("Field", typed("80 ac"));
    crop.clone_into(&mut field.crop);
    "V4".clone_into(&mut field.stage);
    farm.fields.insert("f".to_owned(), field);
    let water = Water {
        name: "Well".to_owned(),
        calcium: Some(typed("100 ppm")),
        magnesium: Some(typed("30 ppm")),
        ..Water::default()
    };
    farm.waters.insert("w".to_owned(), water);
    farm.rigs.insert("r".to_owned(), Rig::new("Rig", typed("1200 gal")));
    for (id, class, price) in [
        ("nis", Nis, "22/gal"),
        ("coc", Coc, "14/gal"),
        ("mso", Mso, "19/gal"),
        ("ams", Ams, "0.30/lb"),
        ("uan", Uan, "2/gal"),
    ] {
        farm.products.insert(id.to_owned(), adjuvant(&format!("{} (demo)", class.name()), class, price));
    }
    let mut pass = Pass::new("Pass", date(2031, 6, 12));
    pass.fields = vec!["f".to_owned()];
    "w".clone_into(&mut pass.water);
    "r".clone_into(&mut pass.rig);
    pass.carrier = Some(typed("15 gal/ac"));
    for (id, product) in mix {
        let rate = if product.is_liquid() { "16 fl oz/ac" } else { "1 oz/ac" };
        farm.products.insert((*id).to_owned(), product.clone());
        pass.mix.push(Line::new(id, typed(rate)));
    }
    farm.passes.insert("p".to_owned(), pass);
    farm
}

fn planned(farm: &Farm) -> Plan {
    plan(farm, "p").unwrap()
}

fn chosen(farm: &Farm) -> Adjuvants {
    planned(farm).adjuvants
}

fn classes(choice: &Choice) -> Vec<AdjuvantClass> {
    choice.members.iter().map(|member| member.class).collect()
}

fn rank_of(adjuvants: &Adjuvants, wanted: &[AdjuvantClass]) -> usize {
    adjuvants.choices.iter().position(|choice| classes(choice) == wanted).unwrap_or_else(|| {
        panic!("{wanted:?} is not on offer: {:?}", adjuvants.choices.iter().map(classes).collect::<Vec<_>>())
    })
}

fn says(choice: &Choice, product: &str, content: Content, words: &str) {
    let verdict = choice.verdicts.iter().find(|verdict| verdict.product == product).unwrap();
    assert!(
        verdict.content == content && verdict.sentence().contains(words),
        "wanted {content:?} \"{words}\", got {:?} \"{}\"",
        verdict.content,
        verdict.sentence()
    );
}

fn found(plan: &Plan, level: Level, words: &str) -> bool {
    plan.findings
        .iter()
        .any(|finding| finding.level == level && format!("{} {}", finding.text, finding.hint).contains(words))
}

fn must(plan: &Plan, level: Level, words: &str) {
    assert!(found(plan, level, words), "no {level:?} \"{words}\" in {:#?}", plan.findings);
}

fn stance(class: AdjuvantClass, stance: Stance, least: Option<&str>) -> Statement {
    Statement::new(
        Says::Adjuvant { class, stance, least: least.map(typed), most: None, at_least: None, at_most: None },
        "page 3",
    )
}

fn rate_of(choice: &Choice, class: AdjuvantClass) -> String {
    choice.members.iter().find(|member| member.class == class).unwrap().rate.as_ref().unwrap().text().to_owned()
}

/// Glyphosate whose built-in surfactant is cationic and, says its label, complete.
fn glyphosate() -> Product {
    let mut product = herbicide("Glyphosate 540 SL (demo)", Formulation::SL, &[("glyphosate", "540 g ae/L")]);
    product.surfactant = Some(Surfactant { charge: Charge::Cationic, complete: true });
    product
}

fn dicamba_mix() -> Product {
    let actives = [("dicamba", "400 g ae/kg"), ("diflufenzopyr", "160 g ae/kg")];
    herbicide("Dicamba + diflufenzopyr WG (demo)", Formulation::WG, &actives)
}

fn clethodim(content: &str) -> Product {
    herbicide(&format!("Clethodim EC {content} (demo)"), Formulation::EC, &[("clethodim", content)])
}

// Common practice, no source.

/// The built-in surfactant does not count for the partner: NIS at 1 qt/100 gal.
#[test]
fn dicamba_with_diflufenzopyr_beside_a_cationic_glyphosate_takes_a_non_ionic_surfactant() {
    let farm = farm("corn", &[("g", glyphosate()), ("d", dicamba_mix())]);
    let plan = planned(&farm);
    let first = &plan.adjuvants.choices[0];
    assert_eq!(classes(first), [Nis, Ams]);
    assert_eq!(rate_of(first, Nis), "1 qt/100 gal");
    says(first, "d", Content::Served, "wants non-ionic surfactant");
    assert!(first.verdicts.iter().any(|verdict| verdict.product == "d" && verdict.basis == Basis::Practice));
    must(&plan, Level::Note, "The cationic surfactant built into Glyphosate 540 SL (demo) serves that product alone");
    must(&plan, Level::Note, "wants non-ionic surfactant");
    assert!(rank_of(&plan.adjuvants, &[Ams]) > 0, "without one it is content less");
}

/// An oil ranks above NIS and above nothing; it costs some crop selectivity.
#[test]
fn a_group_27_partner_in_corn_takes_an_oil() {
    for (name, active) in [("Mesotrione", "mesotrione"), ("Tembotrione", "tembotrione"), ("Topramezone", "topramezone")]
    {
        let partner = herbicide(&format!("{name} 480 SC (demo)"), Formulation::SC, &[(active, "480 g/L")]);
        let mut farm = farm("corn", &[("g", glyphosate()), ("m", partner)]);
        let adjuvants = chosen(&farm);
        assert_eq!(classes(&adjuvants.choices[0]), [Coc, Ams], "{name}");
        let (oil, other, surfactant, nothing) = (
            rank_of(&adjuvants, &[Coc, Ams]),
            rank_of(&adjuvants, &[Mso, Ams]),
            rank_of(&adjuvants, &[Nis, Ams]),
            rank_of(&adjuvants, &[Ams]),
        );
        assert!(oil < surfactant && other < surfactant && oil < nothing && other < nothing, "{name}");
        says(
            &adjuvants.choices[surfactant],
            "m",
            Content::WouldRather,
            "would rather have crop oil concentrate or methylated seed oil",
        );
        adjuvants.choices[0].take(&mut farm.passes["p"].clone(), &farm);
        let mut pass = farm.passes["p"].clone();
        adjuvants.choices[0].take(&mut pass, &farm);
        farm.passes["p"] = pass;
        must(&planned(&farm), Level::Note, "costs some crop selectivity: expect more leaf burn");
    }
}

/// MSO where that label prefers it.
#[test]
fn a_group_27_label_that_prefers_methylated_seed_oil_gets_it() {
    let mut partner = herbicide("Topramezone 336 SC (demo)", Formulation::SC, &[("topramezone", "336 g/L")]);
    partner.label.push(stance(Mso, Stance::Preferred, Some("1 % v/v")));
    let adjuvants = chosen(&farm("corn", &[("g", glyphosate()), ("m", partner)]));
    assert_eq!(classes(&adjuvants.choices[0]), [Mso, Ams]);
    says(&adjuvants.choices[0], "m", Content::Served, "page 3");
    assert!(
        adjuvants.choices[rank_of(&adjuvants, &[Coc, Ams])].behind.contains("would rather have methylated seed oil")
    );
}

/// COC at 1 gal/100 gal first under heavy pressure or tough conditions.
#[test]
fn a_group_1_partner_against_volunteer_corn_takes_an_oil_when_it_is_tough() {
    type Tough = fn(&mut Pass);
    let tough: [(&str, Tough); 4] = [
        ("thick", |pass| pass.growing.heavy_pressure = true),
        ("heat", |pass| pass.growing.heat = true),
        ("drought", |pass| pass.growing.drought = true),
        ("large", |pass| pass.growing.large_weeds = true),
    ];
    for content in ["2 lb/gal", "0.97 lb/gal"] {
        for (name, set) in tough {
            let mut farm = farm("soybean", &[("g", glyphosate()), ("c", clethodim(content))]);
            farm.passes["p"].weeds = vec!["volunteer corn".to_owned()];
            set(&mut farm.passes["p"]);
            let adjuvants = chosen(&farm);
            assert_eq!(classes(&adjuvants.choices[0])[0], Coc, "{content}, {name}");
            assert_eq!(rate_of(&adjuvants.choices[0], Coc), "1 gal/100 gal", "{content}, {name}");
            says(&adjuvants.choices[0], "c", Content::Served, "crop oil concentrate");
        }
    }
}

/// Where the glyphosate label objects to oil, NIS at 1 to 2 qt/100 gal is the answer, and the disagreement is shown.
#[test]
fn a_glyphosate_label_that_objects_to_oil_makes_it_a_non_ionic_surfactant() {
    for objects in [Stance::Discouraged, Stance::Forbidden] {
        for content in ["2 lb/gal", "0.97 lb/gal"] {
            let mut loaded = glyphosate();
            for class in [Coc, Mso, AdjuvantClass::HighSurfactantOil] {
                loaded.label.push(stance(class, objects, None));
            }
            let mut farm = farm("soybean", &[("g", loaded), ("c", clethodim(content))]);
            farm.passes["p"].weeds = vec!["volunteer corn".to_owned()];
            farm.passes["p"].growing.heavy_pressure = true;
            let plan = planned(&farm);
            let first = &plan.adjuvants.choices[0];
            assert_eq!(classes(first), [Nis, Ams], "{content}, {objects:?}");
            let rate = first.members[0].per_area.unwrap();
            let limit = |text: &str| {
                tankard_core::mix::line::per_area(
                    typed::<tankard_core::quantity::Rate>(text).value(),
                    &farm.products["nis"],
                    typed::<tankard_core::quantity::CarrierRate>("15 gal/ac").value(),
                )
                .unwrap()
            };
            assert_eq!(rate.exceeds(limit("2 qt/100 gal")), Some(false));
            assert_eq!(limit("1 qt/100 gal").exceeds(rate), Some(false));
            says(first, "c", Content::WouldRather, "would rather have crop oil concentrate");
            if objects == Stance::Forbidden {
                must(&plan, Level::Check, "Glyphosate 540 SL (demo) forbids crop oil concentrate");
                assert!(plan.adjuvants.choices.iter().all(|choice| !classes(choice).contains(&Coc)));
            } else {
                let oil = &plan.adjuvants.choices[rank_of(&plan.adjuvants, &[Coc, Ams])];
                says(oil, "g", Content::Objects, "advises against crop oil concentrate");
                assert!(oil.behind.contains("advises against"), "{}", oil.behind);
            }
        }
    }
}

/// NIS at 1 to 2 qt/100 gal.
#[test]
fn imazethapyr_and_thifensulfuron_in_soybean_take_a_non_ionic_surfactant() {
    for active in ["imazethapyr", "thifensulfuron-methyl", "thifensulfuron"] {
        let partner = herbicide("Partner (demo)", Formulation::SL, &[(active, "240 g/L")]);
        let adjuvants = chosen(&farm("soybean", &[("g", glyphosate()), ("i", partner)]));
        assert_eq!(classes(&adjuvants.choices[0]), [Nis, Ams], "{active}");
        assert_eq!(rate_of(&adjuvants.choices[0], Nis), "1 qt/100 gal");
        says(&adjuvants.choices[0], "i", Content::Served, "1 to 2 qt in 100 gal");
    }
}

/// Extra NIS is worth considering under extreme heat, cold or drought, and not otherwise required.
#[test]
fn glyphosate_alone_takes_more_surfactant_only_in_extremes() {
    let mut farm = farm("corn", &[("g", glyphosate())]);
    let plain = planned(&farm);
    assert_eq!(classes(&plain.adjuvants.choices[0]), [Ams]);
    assert!(!plain.adjuvants.choices.iter().any(|choice| classes(choice).contains(&Nis)));
    let extremes: [fn(&mut Pass); 3] =
        [|pass| pass.growing.heat = true, |pass| pass.growing.cold = true, |pass| pass.growing.drought = true];
    for set in extremes {
        farm.passes["p"].growing = Growing::default();
        set(&mut farm.passes["p"]);
        let plan = planned(&farm);
        assert_eq!(classes(&plan.adjuvants.choices[0]), [Nis, Ams]);
        says(&plan.adjuvants.choices[0], "g", Content::Served, "Worth considering under extreme heat, cold or drought");
        assert!(
            !found(&plan, Level::Check, "non-ionic surfactant") && !found(&plan, Level::Stop, "non-ionic surfactant")
        );
    }
}

/// Ammonium sulfate with every glyphosate load, unless a partner forbids it.
#[test]
fn glyphosate_takes_ammonium_sulfate_unless_a_partner_forbids_it() {
    let free = chosen(&farm("corn", &[("g", glyphosate())]));
    says(&free.choices[0], "g", Content::Served, "wants ammonium sulfate");
    assert_eq!(rate_of(&free.choices[0], Ams), "8.5 lb/100 gal");
    let mut partner = herbicide("Partner (demo)", Formulation::SL, &[("dicamba", "350 g ae/L")]);
    partner.label.push(stance(Ams, Stance::Forbidden, None));
    let bound = chosen(&farm("corn", &[("g", glyphosate()), ("d", partner)]));
    assert!(bound.choices.iter().all(|choice| !classes(choice).contains(&Ams)));
}

// Where publications and labels disagree.

/// Glufosinate forbids oils (Illinois Soybean Association list, 2016-2018); clethodim of 2 lb/gal asks for one (Penn State
/// University, Lingenfelter): the two collide, and the ways out are named.
#[test]
fn glufosinate_and_an_oil_only_graminicide_collide() {
    let glufosinate = herbicide("Glufosinate 280 SL (demo)", Formulation::SL, &[("glufosinate", "280 g ai/L")]);
    let mut oil_only = clethodim("2 lb/gal");
    oil_only.label.push(stance(Coc, Stance::Required, Some("1 % v/v")));
    oil_only.label.push(stance(Mso, Stance::Required, Some("1 % v/v")));
    let mut farm = farm("soybean", &[("g", glufosinate.clone()), ("c", oil_only.clone())]);
    // Another graminicide in the shed that does without oil is a way out.
    let mut mild = clethodim("0.97 lb/gal");
    mild.label.push(stance(Nis, Stance::Allowed, Some("0.25 % v/v")));
    farm.products.insert("mild".to_owned(), mild);
    // One with another active of another group is none.
    let unlike = herbicide("Bromoxynil 235 SL (demo)", Formulation::SL, &[("bromoxynil", "235 g ai/L")]);
    farm.products.insert("unlike".to_owned(), unlike);
    let plan = planned(&farm);
    let collision = &plan.adjuvants.collisions[0];
    assert_eq!((collision.wants.as_str(), collision.forbids.as_deref()), ("c", Some("g")));
    assert!(collision.text.contains("requires crop oil concentrate or methylated seed oil"), "{}", collision.text);
    assert!(collision.text.contains("Glufosinate 280 SL (demo) forbids"), "{}", collision.text);
    let ways = collision.ways_out.join(" ");
    for way in ["Take Clethodim EC 0.97 lb/gal (demo) instead of", "in two passes", "another formulation"] {
        assert!(ways.contains(way), "{ways}");
    }
    assert!(!ways.contains("Bromoxynil"), "{ways}");
    assert!(plan.adjuvants.choices.is_empty(), "the label's demand cannot be met: {:?}", plan.adjuvants.choices);
    // Without a typed label the publications collide all the same, and a person decides.
    let published = planned(&super_farm(&glufosinate, &clethodim("2 lb/gal")));
    let collision = &published.adjuvants.collisions[0];
    assert!(!collision.binds && collision.text.contains("wants crop oil concentrate or methylated seed oil"));
    must(&published, Level::Check, "forbids crop oil concentrate or methylated seed oil");
    assert!(published.adjuvants.choices.iter().all(|choice| !classes(choice).iter().any(|class| class.is_oil())));
}

fn super_farm(one: &Product, other: &Product) -> Farm {
    farm("soybean", &[("g", one.clone()), ("c", other.clone())])
}

/// The registrant's list puts glufosinate in last, after the rest of the water, though by its formulation it would go in
/// before oils: the label's own order wins over every published one (Illinois Soybean Association; Oklahoma State PSS-2789).
#[test]
fn a_label_order_beats_the_published_one() {
    use tankard_core::farm::label::OrderPlace;
    let mut glufosinate = herbicide("Glufosinate 280 SL (demo)", Formulation::SL, &[("glufosinate", "280 g ai/L")]);
    glufosinate
        .label
        .push(Statement::new(Says::MixingOrder { place: OrderPlace::Last, tank_full: Some(typed("95 %")) }, "page 5"));
    let sc = herbicide("Mesotrione 480 SC (demo)", Formulation::SC, &[("mesotrione", "480 g/L")]);
    let mut farm = farm("soybean", &[("g", glufosinate), ("s", sc)]);
    farm.passes["p"].mix.push(Line::new("ams", typed("17 lb/100 gal")));
    let plan = planned(&farm);
    let order: Vec<&str> = plan.order.iter().map(|placed| placed.product.as_str()).collect();
    assert_eq!(order, ["ams", "s", "g"]);
    assert!(matches!(&plan.order[2].basis, Basis::Label(at) if at.contains("page 5")));
    assert!(plan.order[2].why.contains("label"), "{}", plan.order[2].why);
}

/// No prohibition of ammonium sulfate with 2,4-D choline was found in print; over-the-top dicamba has one (EPA 2020; Singh et
/// al. 2024; Polli et al. 2021).
#[test]
fn ammonium_is_blocked_over_the_top_of_dicamba_soybeans_and_not_with_2_4_d_choline() {
    let choline = herbicide("2,4-D choline 456 SL (demo)", Formulation::SL, &[("2,4-D choline", "456 g ae/L")]);
    let free = chosen(&farm("soybean", &[("g", glyphosate()), ("d", choline)]));
    assert!(classes(&free.choices[0]).contains(&Ams));
    let dicamba = herbicide("Dicamba 350 SL (demo)", Formulation::SL, &[("dicamba", "350 g ae/L")]);
    let mut over_the_top = farm("soybean", &[("g", glyphosate()), ("d", dicamba.clone())]);
    over_the_top.products.insert("vra".to_owned(), adjuvant("Volatility reducer (demo)", Vra, "40/gal"));
    over_the_top
        .products
        .insert("cond".to_owned(), adjuvant("Conditioner without ammonium (demo)", Conditioner, "15/gal"));
    let adjuvants = chosen(&over_the_top);
    assert!(adjuvants.choices.iter().all(|choice| !classes(choice).iter().any(|class| class.holds_ammonium())));
    assert_eq!(classes(&adjuvants.choices[0]), [Conditioner, Vra]);
    over_the_top.passes["p"].mix.push(Line::new("ams", typed("8.5 lb/100 gal")));
    let plan = planned(&over_the_top);
    must(&plan, Level::Stop, "forbids ammonium sulfate, and ammonium sulfate (demo) is in the mix");
    // In corn the same active allows it (Singh et al. 2024).
    let corn = chosen(&farm("corn", &[("g", glyphosate()), ("d", dicamba)]));
    assert!(classes(&corn.choices[0]).contains(&Ams));
}

/// Imazamox wants an adjuvant and nitrogen in established alfalfa and leaves nitrogen open in chicory (Pacific Northwest Weed
/// Management Handbook): the crop decides.
#[test]
fn imazamox_needs_nitrogen_in_alfalfa_and_not_in_chicory() {
    let imazamox = herbicide("Imazamox 120 SL (demo)", Formulation::SL, &[("imazamox", "120 g/L")]);
    let alfalfa = planned(&farm("alfalfa", &[("i", imazamox.clone())]));
    let first = &alfalfa.adjuvants.choices[0];
    assert_eq!(classes(first).len(), 2);
    says(first, "i", Content::Served, "requires");
    must(&alfalfa, Level::Check, "requires ammonium sulfate or urea ammonium nitrate, and the mix has none");
    let chicory = planned(&farm("chicory", &[("i", imazamox)]));
    assert!(!found(&chicory, Level::Check, "requires"));
    let nitrogen = chicory
        .adjuvants
        .choices
        .iter()
        .find(|choice| classes(choice).contains(&Ams) || classes(choice).contains(&Uan));
    if let Some(choice) = nitrogen {
        says(choice, "i", Content::Accepts, "allows");
    }
}

/// Clethodim of 2 lb/gal goes with 1 % COC and no nitrogen in brassicas, of 0.97 lb/gal with 0.25 % NIS in cucurbits (Pacific
/// Northwest Weed Management Handbook): the formulation decides.
#[test]
fn clethodim_takes_what_its_formulation_asks_for() {
    let strong = chosen(&farm("broccoli", &[("c", clethodim("2 lb/gal"))]));
    assert_eq!(classes(&strong.choices[0]), [Coc]);
    assert_eq!(rate_of(&strong.choices[0], Coc), "1 % v/v");
    let weak = chosen(&farm("pumpkin", &[("c", clethodim("0.97 lb/gal"))]));
    assert_eq!(classes(&weak.choices[0])[0], Nis);
    assert_eq!(rate_of(&weak.choices[0], Nis), "0.25 % v/v");
}

/// Sugar-beet micro-rate: MSO 1.5 % v/v, at least 1 pt/ac, at most 2 pt/ac (Dexter, NDSU Crop & Pest Report, 6 May 1999); the
/// figures at 5 to 20 gal/ac are arithmetic from it.
#[test]
fn the_micro_rate_keeps_its_floor_and_ceiling() {
    for (carrier, pints) in [("5 gal/ac", 1.0), ("10 gal/ac", 1.2), ("15 gal/ac", 1.8), ("20 gal/ac", 2.0)] {
        let desmedipham = herbicide("Desmedipham 160 EC (demo)", Formulation::EC, &[("desmedipham", "160 g/L")]);
        let partner =
            herbicide("Triflusulfuron 50 WG (demo)", Formulation::WG, &[("triflusulfuron-methyl", "500 g ai/kg")]);
        let mut farm = farm("sugar beet", &[("d", desmedipham), ("t", partner)]);
        farm.passes["p"].carrier = Some(typed(carrier));
        let adjuvants = chosen(&farm);
        let oil = adjuvants.choices[0].members.iter().find(|member| member.class == Mso).unwrap();
        let tankard_core::quantity::AmountPerArea::Volume(rate) = oil.per_area.unwrap() else { panic!("a volume") };
        let litres = pints * 0.473_176_473 / 0.404_685_642_24;
        assert!(
            (rate.to_litres_per_hectare() - litres).abs() < 1e-6,
            "{carrier}: {} L/ha",
            rate.to_litres_per_hectare()
        );
        let mut pass = farm.passes["p"].clone();
        adjuvants.choices[0].take(&mut pass, &farm);
        farm.passes["p"] = pass;
        let plan = planned(&farm);
        let line = plan.lines.iter().find(|line| line.product == "mso").unwrap();
        assert_eq!(line.per_area, oil.per_area.unwrap(), "what is taken is what was offered");
    }
}

/// Adding a partner's NIS to a glyphosate that brings its own surfactant burned soybeans (Norsworthy and Grey, Weed
/// Technology): the planner does not suggest it for chlorimuron.
#[test]
fn chlorimuron_beside_a_loaded_glyphosate_gets_no_surfactant() {
    let chlorimuron = herbicide("Chlorimuron 25 WG (demo)", Formulation::WG, &[("chlorimuron-ethyl", "250 g ai/kg")]);
    let mut farm = farm("soybean", &[("g", glyphosate()), ("c", chlorimuron)]);
    farm.passes["p"].mix.push(Line::new("nis", typed("1 qt/100 gal")));
    let plan = planned(&farm);
    assert!(!classes(&plan.adjuvants.choices[0]).contains(&Nis));
    must(&plan, Level::Note, "advises against non-ionic surfactant");
}

// Who speaks, and what weighs.

/// Label before local advice before publications before practice.
#[test]
fn a_label_beats_local_advice_and_that_beats_the_tables() {
    let mesotrione = herbicide("Mesotrione 480 SC (demo)", Formulation::SC, &[("mesotrione", "480 g/L")]);
    let mut farm = farm("corn", &[("m", mesotrione)]);
    assert_eq!(classes(&chosen(&farm).choices[0]), [Coc]);
    let advice = Advice {
        whose: "County adviser".to_owned(),
        given: Some(date(2031, 5, 3)),
        about: "group 27".to_owned(),
        water: String::new(),
        says: Statement::new(
            Says::Adjuvant {
                class: Coc,
                stance: Stance::Forbidden,
                least: None,
                most: None,
                at_least: None,
                at_most: None,
            },
            "",
        ),
    };
    farm.advice.insert("a".to_owned(), advice);
    let local = planned(&farm);
    assert_eq!(classes(&local.adjuvants.choices[0]), [Mso]);
    must(&local, Level::Note, "sources differ");
    farm.products["m"].label.push(stance(Coc, Stance::Required, Some("1 % v/v")));
    let label = planned(&farm);
    assert_eq!(classes(&label.adjuvants.choices[0]), [Coc]);
    must(&label, Level::Note, "The label, as typed, decides");
}

/// What a label prefers for the water takes nothing of what local advice requires on the leaf; two fields of one crop are heard once.
#[test]
fn what_is_said_of_one_role_leaves_the_other_as_it_is() {
    let mut mesotrione = herbicide("Mesotrione 480 SC (demo)", Formulation::SC, &[("mesotrione", "480 g/L")]);
    mesotrione.label.push(stance(Ams, Stance::Preferred, Some("8.5 lb/100 gal")));
    let mut farm = farm("corn", &[("m", mesotrione)]);
    let advice = Advice {
        whose: "County adviser".to_owned(),
        given: None,
        about: "mesotrione".to_owned(),
        water: String::new(),
        says: stance(Coc, Stance::Required, Some("1 % v/v")),
    };
    farm.advice.insert("a".to_owned(), advice);
    let verdicts = |farm: &Farm| chosen(farm).current.unwrap().verdicts;
    let one = verdicts(&farm);
    assert_eq!((one.len(), one[0].content), (1, Content::Lacks));
    let mut second = farm.fields["f"].clone();
    "Other".clone_into(&mut second.name);
    farm.fields.insert("g".to_owned(), second);
    farm.passes["p"].fields.push("g".to_owned());
    assert_eq!(verdicts(&farm), one);
}

/// 0.25 % v/v of 15 gal/ac is 0.0375 gal/ac at 22/gal, and 8.5 lb/100 gal is 1.275 lb/ac at 0.30/lb: 1.2075 an acre.
#[test]
fn a_set_in_the_mix_costs_what_is_typed() {
    let mut farm = farm("corn", &[("g", glyphosate())]);
    farm.passes["p"].mix.push(Line::new("nis", typed("0.25 % v/v")));
    farm.passes["p"].mix.push(Line::new("ams", typed("8.5 lb/100 gal")));
    let cost = chosen(&farm).current.unwrap().cost_per_hectare.unwrap();
    let cost: f64 = cost.amount().to_string().parse().unwrap();
    // An acre is 0.40468564224 ha.
    assert!((cost * 0.404_685_642_24 - 1.2075).abs() < 1e-9, "{cost}");
}

#[test]
fn advice_for_another_water_or_another_crop_is_not_heard() {
    let mesotrione = herbicide("Mesotrione 480 SC (demo)", Formulation::SC, &[("mesotrione", "480 g/L")]);
    let mut farm = farm("corn", &[("m", mesotrione)]);
    let mut says = stance(Coc, Stance::Forbidden, None);
    says.crop = "soybean".to_owned();
    let advice = Advice {
        whose: "County adviser".to_owned(),
        given: None,
        about: "mesotrione".to_owned(),
        water: String::new(),
        says,
    };
    farm.advice.insert("a".to_owned(), advice.clone());
    assert_eq!(classes(&chosen(&farm).choices[0]), [Coc]);
    let mut elsewhere = advice;
    elsewhere.says.crop.clear();
    "rain".clone_into(&mut elsewhere.water);
    farm.advice.insert("a".to_owned(), elsewhere.clone());
    assert_eq!(classes(&chosen(&farm).choices[0]), [Coc]);
    "w".clone_into(&mut elsewhere.water);
    farm.advice.insert("a".to_owned(), elsewhere);
    assert_eq!(classes(&chosen(&farm).choices[0]), [Mso]);
}

#[test]
fn a_condition_on_a_label_holds_only_when_it_is_met() {
    let mut mesotrione = herbicide("Mesotrione 480 SC (demo)", Formulation::SC, &[("mesotrione", "480 g/L")]);
    let mut dry = stance(Coc, Stance::Forbidden, None);
    dry.when = vec![When::Drought];
    mesotrione.label.push(dry);
    let mut farm = farm("corn", &[("m", mesotrione)]);
    assert_eq!(classes(&chosen(&farm).choices[0]), [Coc]);
    // What a label prefers under a condition that is not known rests.
    let mut warm = stance(Mso, Stance::Preferred, Some("1 % v/v"));
    warm.when = vec![When::WarmerThan(typed("85 °F"))];
    farm.products["m"].label.push(warm);
    assert_eq!(classes(&chosen(&farm).choices[0]), [Coc]);
    farm.passes["p"].growing.air = Some(typed("90 °F"));
    assert_eq!(classes(&chosen(&farm).choices[0]), [Mso]);
    farm.products["m"].label.pop();
    farm.passes["p"].growing.air = None;
    farm.passes["p"].growing.drought = true;
    assert_eq!(classes(&chosen(&farm).choices[0]), [Mso]);
}

#[test]
fn the_lean_decides_where_no_label_and_no_publication_does() {
    let mut partner = herbicide("Partner (demo)", Formulation::SC, &[("an invented active", "100 g/L")]);
    partner.label.push(stance(Coc, Stance::Allowed, Some("1 % v/v")));
    partner.label.push(stance(Nis, Stance::Allowed, Some("0.25 % v/v")));
    let mut farm = farm("corn", &[("x", partner)]);
    let first = |farm: &Farm| classes(&chosen(farm).choices[0]);
    assert_eq!(first(&farm), [], "nothing is asked for, so nothing is bought");
    farm.passes["p"].lean = Lean::WeedControl;
    assert_eq!(first(&farm), [Coc]);
    let adjuvants = chosen(&farm);
    assert!(adjuvants.choices[1].behind.contains("weaker on weeds"), "{}", adjuvants.choices[1].behind);
    farm.passes["p"].lean = Lean::CropSafety;
    assert_eq!(first(&farm), []);
    assert!(chosen(&farm).choices[1].behind.contains("harder on the crop"));
}

/// Of statements of one label the more particular counts: one for the crop before one for its stage, and that before one under a
/// condition, though before neither of two.
#[test]
fn the_more_particular_statement_of_a_label_counts() {
    let drought = |says: &mut Statement| says.when.push(When::Drought);
    let heat = |says: &mut Statement| says.when.push(When::Heat);
    let stage = |says: &mut Statement| "V2".clone_into(&mut says.from_stage);
    let crop = |says: &mut Statement| "corn".clone_into(&mut says.crop);
    let by_rank: [&[&dyn Fn(&mut Statement)]; 8] = [
        &[],
        &[&drought],
        &[&stage],
        &[&drought, &heat],
        &[&crop],
        &[&crop, &drought],
        &[&crop, &stage],
        &[&crop, &stage, &drought],
    ];
    for (weaker, stronger) in by_rank.iter().zip(&by_rank[1..]) {
        for (weak, strong) in [(Stance::Forbidden, Stance::Preferred), (Stance::Preferred, Stance::Forbidden)] {
            let mut partner = herbicide("Partner (demo)", Formulation::SC, &[("an invented active", "100 g/L")]);
            for (of, set) in [(weak, weaker), (strong, stronger)] {
                let mut says = stance(Coc, of, None);
                set.iter().for_each(|set| set(&mut says));
                partner.label.push(says);
            }
            let mut farm = farm("corn", &[("x", partner)]);
            (farm.passes["p"].growing.drought, farm.passes["p"].growing.heat) = (true, true);
            let first = classes(&chosen(&farm).choices[0]);
            assert_eq!(first == [Coc], strong == Stance::Preferred, "{:?}", farm.products["x"].label);
        }
    }
}

/// What practice wants in corn with group 27 is an oil. A label that prefers a surfactant makes that do as well; one that prefers a surfactant
/// or an oil leaves practice the choice between them.
#[test]
fn a_lesser_voice_narrows_a_weightier_one_and_does_not_overrule_it() {
    let content = |label: &[AdjuvantClass], mix: &str| {
        let mut mesotrione = herbicide("Mesotrione 480 SC (demo)", Formulation::SC, &[("mesotrione", "480 g/L")]);
        mesotrione.label.extend(label.iter().map(|class| stance(*class, Stance::Preferred, None)));
        let mut farm = farm("corn", &[("m", mesotrione)]);
        farm.passes["p"].mix.push(Line::new(mix, typed("0.5 % v/v")));
        chosen(&farm).current.unwrap().verdicts[0].content
    };
    assert_eq!(content(&[], "nis"), Content::WouldRather);
    assert_eq!(content(&[Nis], "nis"), Content::Served);
    assert_eq!(content(&[Nis, Coc], "nis"), Content::WouldRather);
    assert_eq!(content(&[Nis, Coc], "coc"), Content::Served);
}

/// Of two products of one class at one rate the cheaper is taken, whichever was typed first.
#[test]
fn the_cheaper_of_two_alike_is_taken() {
    for (first, second, wanted) in [("14/gal", "10/gal", "coc2"), ("10/gal", "14/gal", "coc")] {
        let mut partner = herbicide("Partner (demo)", Formulation::SC, &[("an invented active", "100 g/L")]);
        partner.label.push(stance(Coc, Stance::Required, Some("1 % v/v")));
        let mut farm = farm("corn", &[("x", partner)]);
        farm.products["coc"].price = Some(typed(first));
        farm.products.insert("coc2".to_owned(), adjuvant("Other oil (demo)", Coc, second));
        assert_eq!(chosen(&farm).choices[0].members[0].product.as_deref(), Some(wanted));
    }
}

/// A label that requires an oil on one crop asks for it where the crop is not typed, in doubt.
#[test]
fn a_demand_for_one_crop_stands_in_doubt_where_the_crop_is_not_typed() {
    let mut partner = herbicide("Partner (demo)", Formulation::SC, &[("an invented active", "100 g/L")]);
    let mut says = stance(Coc, Stance::Required, Some("1 % v/v"));
    "corn".clone_into(&mut says.crop);
    partner.label.push(says);
    must(&planned(&farm("corn", &[("x", partner.clone())])), Level::Stop, "requires crop oil concentrate");
    let adjuvants = chosen(&farm("corn", &[("x", partner.clone())]));
    assert!(adjuvants.choices[0].satisfies && !adjuvants.current.unwrap().satisfies);
    must(&planned(&farm("", &[("x", partner.clone())])), Level::Check, "requires crop oil concentrate");
    assert!(!found(&planned(&farm("soybean", &[("x", partner)])), Level::Check, "requires crop oil concentrate"));
}

/// Large weeds, heavy pressure and drought lean to the weeds, heat and cold to the crop, each as much as another.
#[test]
fn the_day_leans_as_the_pass_does() {
    let mut partner = herbicide("Partner (demo)", Formulation::SC, &[("an invented active", "100 g/L")]);
    partner.label.push(stance(Coc, Stance::Allowed, Some("1 % v/v")));
    let mut farm = farm("corn", &[("x", partner)]);
    let set: [fn(&mut Growing); 5] = [
        |growing| growing.large_weeds = true,
        |growing| growing.heavy_pressure = true,
        |growing| growing.drought = true,
        |growing| growing.heat = true,
        |growing| growing.cold = true,
    ];
    for (at, set) in set.into_iter().enumerate() {
        for lean in [Lean::CropSafety, Lean::Even, Lean::WeedControl] {
            farm.passes["p"].growing = Growing::default();
            farm.passes["p"].lean = lean;
            set(&mut farm.passes["p"].growing);
            let oil = lean == Lean::WeedControl || at < 3 && lean == Lean::Even;
            assert_eq!(classes(&chosen(&farm).choices[0]) == [Coc], oil, "{at} {lean:?}");
        }
    }
    // A day of each kind is as one of neither.
    farm.passes["p"].lean = Lean::Even;
    farm.passes["p"].growing = Growing::default();
    (farm.passes["p"].growing.drought, farm.passes["p"].growing.heat) = (true, true);
    assert_eq!(classes(&chosen(&farm).choices[0]), []);
}

#[test]
fn what_is_not_in_the_shed_is_named_as_something_to_buy() {
    let mut partner = herbicide("Partner (demo)", Formulation::SC, &[("an invented active", "100 g/L")]);
    partner.label.push(stance(Coc, Stance::Required, Some("1 % v/v")));
    let mut farm = farm("corn", &[("x", partner)]);
    farm.products.shift_remove("coc");
    let adjuvants = chosen(&farm);
    assert_eq!(adjuvants.choices[0].members[0].product, None);
    assert_eq!(adjuvants.choices[0].members[0].name, "crop oil concentrate");
    assert!(adjuvants.collisions.is_empty());
}

#[test]
fn a_set_chosen_by_hand_is_judged_by_the_same_rules() {
    let mesotrione = herbicide("Mesotrione 480 SC (demo)", Formulation::SC, &[("mesotrione", "480 g/L")]);
    let mut farm = farm("corn", &[("g", glyphosate()), ("m", mesotrione)]);
    farm.passes["p"].mix.push(Line::new("nis", typed("1 qt/100 gal")));
    let plan = planned(&farm);
    let current = plan.adjuvants.current.as_ref().unwrap();
    assert_eq!(classes(current), [Nis]);
    assert!(plan.adjuvants.choices[0].satisfies);
    says(current, "m", Content::WouldRather, "would rather have crop oil concentrate");
    says(current, "g", Content::WouldRather, "would rather have ammonium sulfate");
    must(
        &plan,
        Level::Note,
        "Crop oil concentrate and ammonium sulfate would suit this mix better than non-ionic surfactant",
    );
    // One click takes the first choice, and then nothing is better.
    let mut pass = farm.passes["p"].clone();
    plan.adjuvants.choices[0].take(&mut pass, &farm);
    farm.passes["p"] = pass;
    let plan = planned(&farm);
    assert!(plan.adjuvants.choices[0].current && !found(&plan, Level::Note, "would suit this mix better"));
}

#[test]
fn two_fields_of_two_crops_are_both_heard() {
    let mut partner = herbicide("Partner (demo)", Formulation::SC, &[("an invented active", "100 g/L")]);
    let mut in_corn = stance(Coc, Stance::Required, None);
    in_corn.crop = "corn".to_owned();
    let mut in_soybean = stance(Coc, Stance::Forbidden, None);
    in_soybean.crop = "soybean".to_owned();
    partner.label.extend([in_corn, in_soybean]);
    let mut farm = farm("corn", &[("x", partner)]);
    assert_eq!(classes(&chosen(&farm).choices[0]), [Coc]);
    let mut second = farm.fields["f"].clone();
    "soybean".clone_into(&mut second.crop);
    farm.fields.insert("s".to_owned(), second);
    farm.passes["p"].fields.push("s".to_owned());
    let adjuvants = chosen(&farm);
    assert!(adjuvants.choices.is_empty() && !adjuvants.collisions.is_empty());
}

#[test]
fn a_solution_of_ammonium_sulfate_is_dosed_by_its_salt() {
    let mut farm = farm("corn", &[("g", glyphosate())]);
    let mut liquid = adjuvant("Ammonium sulfate solution (demo)", Ams, "1/gal");
    liquid.formulation = Formulation::SL;
    liquid.actives.push(Active {
        name: "ammonium sulfate".to_owned(),
        group: String::new(),
        basis: tankard_core::quantity::ActiveBasis::ActiveIngredient,
        content: typed("3.4 lb/gal"),
    });
    farm.products["ams"] = liquid;
    let adjuvants = chosen(&farm);
    let member = &adjuvants.choices[0].members[0];
    // 8.5 lb in 100 gal at 3.4 lb/gal is 2.5 gal in 100 gal (arithmetic): 2.5 % of 15 gal/ac.
    let tankard_core::quantity::AmountPerArea::Volume(rate) = member.per_area.unwrap() else { panic!("a volume") };
    let wanted = 0.025 * 15.0 * 3.785_411_784 / 0.404_685_642_24;
    assert!((rate.to_litres_per_hectare() - wanted).abs() < 1e-9, "{}", rate.to_litres_per_hectare());
    // As it is written into the mix it comes to the same.
    assert_eq!(rate_of(&adjuvants.choices[0], Ams), "8.5 lb ai/100 gal");
    let mut pass = farm.passes["p"].clone();
    adjuvants.choices[0].take(&mut pass, &farm);
    farm.passes["p"] = pass;
    let line = planned(&farm).lines.into_iter().find(|line| line.product == "ams").unwrap();
    let tankard_core::quantity::AmountPerArea::Volume(rate) = line.per_area else { panic!("a volume") };
    assert!((rate.to_litres_per_hectare() - wanted).abs() < 1e-9, "{}", rate.to_litres_per_hectare());
}

/// At least 75 % surface-active (North Carolina State University Extension) or 80 % (Pacific Northwest Weed Management
/// Handbook, with paraquat): the sources differ, and both are shown.
#[test]
fn a_thin_surfactant_is_noticed() {
    let partner = herbicide("Partner (demo)", Formulation::SL, &[("imazethapyr", "240 g/L")]);
    let mut farm = farm("soybean", &[("i", partner)]);
    farm.passes["p"].mix.push(Line::new("nis", typed("1 qt/100 gal")));
    for (content, level) in [("70 %", Some(Level::Check)), ("78 %", Some(Level::Note)), ("80 %", None), ("90 %", None)]
    {
        farm.products["nis"].actives = vec![Active {
            name: "surfactant".to_owned(),
            group: String::new(),
            basis: tankard_core::quantity::ActiveBasis::ActiveIngredient,
            content: typed(content),
        }];
        let plan = planned(&farm);
        for each in [Level::Check, Level::Note] {
            assert_eq!(found(&plan, each, "75 % (North Carolina State"), level == Some(each), "{content}, {each:?}");
        }
    }
}

/// Oils go by ground: 1 % v/v at 9.4 gal/ac is only 0.75 pt/ac, and 1 to 2 pt/ac are advised (Zollinger, NDSU Extension, Crop
/// & Pest Report, 2 July 2015).
#[test]
fn a_per_cent_of_oil_in_little_water_is_noticed() {
    let mesotrione = herbicide("Mesotrione 480 SC (demo)", Formulation::SC, &[("mesotrione", "480 g/L")]);
    let mut farm = farm("corn", &[("m", mesotrione)]);
    farm.passes["p"].mix.push(Line::new("coc", typed("1 % v/v")));
    for (carrier, noticed) in
        [("9.4 gal/ac", true), ("12.4 gal/ac", true), ("12.5 gal/ac", false), ("15 gal/ac", false)]
    {
        farm.passes["p"].carrier = Some(typed(carrier));
        assert_eq!(found(&planned(&farm), Level::Check, "than the 16 fl oz/ac that is advised"), noticed, "{carrier}");
    }
    // Where a label names the rate, it decides, and this is only worth knowing.
    farm.products["m"].label.push(stance(Coc, Stance::Preferred, Some("1 % v/v")));
    farm.passes["p"].carrier = Some(typed("9.4 gal/ac"));
    must(&planned(&farm), Level::Note, "than the 16 fl oz/ac that is advised");
}

/// Publications that name different rates are both told: 2 to 3 lb/ac (Illinois Soybean Association) and 3 lb/ac (Zollinger in
/// No-Till Farmer) of ammonium sulfate with glufosinate.
#[test]
fn rates_that_differ_between_publications_are_both_told() {
    let glufosinate = herbicide("Glufosinate 280 SL (demo)", Formulation::SL, &[("glufosinate", "280 g ai/L")]);
    let adjuvants = chosen(&farm("soybean", &[("g", glufosinate)]));
    let member = adjuvants.choices[0].members.iter().find(|member| member.class == Ams).unwrap();
    assert_eq!(member.rate.as_ref().unwrap().text(), "2 lb/ac");
    assert!(member.rate_from.contains("other sources name 3 lb/ac"), "{}", member.rate_from);
}

/// An adjuvant of which nobody names a rate goes in at none, and the plan stops until it is typed.
#[test]
fn a_member_without_a_rate_is_not_left_out_silently() {
    let dicamba = herbicide("Dicamba 350 SL (demo)", Formulation::SL, &[("dicamba", "350 g ae/L")]);
    let mut farm = farm("soybean", &[("d", dicamba)]);
    farm.products.insert("vra".to_owned(), adjuvant("Volatility reducer (demo)", Vra, "40/gal"));
    let choice = chosen(&farm).choices[0].clone();
    assert!(classes(&choice).contains(&Vra));
    let mut pass = farm.passes["p"].clone();
    choice.take(&mut pass, &farm);
    farm.passes["p"] = pass;
    assert!(farm.passes["p"].mix.iter().any(|line| line.product == "vra"));
    must(&planned(&farm), Level::Stop, "Volatility reducer (demo) is in the mix at a rate of nothing");
}

/// With nothing in the shed, what serves every wish is named as a thing to buy, not only the first of it.
#[test]
fn an_empty_shed_is_told_the_whole_set_to_buy() {
    let mut partner = herbicide("Partner (demo)", Formulation::SC, &[("an invented active", "100 g/L")]);
    partner.label.push(stance(Coc, Stance::Preferred, Some("1 % v/v")));
    partner.label.push(stance(Ams, Stance::Preferred, Some("8.5 lb/100 gal")));
    let mut farm = farm("corn", &[("x", partner)]);
    for id in ["nis", "coc", "mso", "ams", "uan"] {
        farm.products.shift_remove(id);
    }
    let adjuvants = chosen(&farm);
    assert!(adjuvants.choices.iter().any(|choice| classes(choice) == [Coc, Ams]));
}

/// What an adviser forbids is for a person to decide; only a label, a law or physics stops a pass.
#[test]
fn local_advice_checks_and_does_not_stop() {
    let mesotrione = herbicide("Mesotrione 480 SC (demo)", Formulation::SC, &[("mesotrione", "480 g/L")]);
    let mut farm = farm("corn", &[("m", mesotrione)]);
    let advice = Advice {
        whose: "County adviser".to_owned(),
        given: None,
        about: "mesotrione".to_owned(),
        water: String::new(),
        says: stance(Coc, Stance::Forbidden, None),
    };
    farm.advice.insert("a".to_owned(), advice);
    farm.passes["p"].mix.push(Line::new("coc", typed("1 % v/v")));
    let plan = planned(&farm);
    must(&plan, Level::Check, "forbids crop oil concentrate");
    assert!(!found(&plan, Level::Stop, "forbids crop oil concentrate"));
    assert!(plan.adjuvants.choices.iter().all(|choice| !classes(choice).contains(&Coc)));
}

/// A buffer that nobody speaks of stays when a set is taken.
#[test]
fn what_serves_another_role_stays() {
    let mesotrione = herbicide("Mesotrione 480 SC (demo)", Formulation::SC, &[("mesotrione", "480 g/L")]);
    let mut farm = farm("corn", &[("m", mesotrione)]);
    farm.products.insert("buf".to_owned(), adjuvant("Buffer (demo)", AdjuvantClass::Buffer, "9/gal"));
    farm.passes["p"].mix.push(Line::new("buf", typed("0.1 % v/v")));
    let mut pass = farm.passes["p"].clone();
    chosen(&farm).choices[0].take(&mut pass, &farm);
    assert!(pass.mix.iter().any(|line| line.product == "buf") && pass.mix.iter().any(|line| line.product == "coc"));
}

/// The water room and the set speak of one amount: 2 lb/ac of ammonium sulfate with glufosinate (Illinois Soybean
/// Association) is 13.3 lb/100 gal at 15 gal/ac (arithmetic), more than the 8.5 lb/100 gal for hard water.
#[test]
fn water_and_set_plan_the_same_ammonium_sulfate() {
    let glufosinate = herbicide("Glufosinate 280 SL (demo)", Formulation::SL, &[("glufosinate", "280 g ai/L")]);
    let mut farm = farm("soybean", &[("g", glufosinate), ("y", glyphosate())]);
    let mut pass = farm.passes["p"].clone();
    chosen(&farm).choices[0].take(&mut pass, &farm);
    farm.passes["p"] = pass;
    let plan = planned(&farm);
    let recommended = plan.water.recommended.unwrap().to_pounds_per_100_us_gallons();
    assert!((recommended - 200.0 / 15.0).abs() < 1e-6, "{recommended}");
    let line = plan.lines.iter().find(|line| line.product == "ams").unwrap();
    let tankard_core::quantity::AmountPerArea::Mass(rate) = line.per_area else { panic!("a mass") };
    assert!((rate.to_pounds_per_acre() - 2.0).abs() < 1e-9);
}

/// What the ions tie up is 0.009 Ca + 0.014 Mg lb/100 gal (Zollinger, NDSU Extension, Crop & Pest Report, 2 July 2015): with 300 ppm of
/// magnesium 15.0 of 1,200 and 15.09 of 1,210 ppm of calcium, which is more than the usual rate and goes up to the next half pound.
#[test]
fn hard_water_raises_ammonium_sulfate_to_the_next_half_pound() {
    for (calcium, rate) in [("1200 ppm", "15 lb/100 gal"), ("1210 ppm", "15.5 lb/100 gal")] {
        let mut farm = farm("corn", &[("g", glyphosate())]);
        farm.waters["w"].calcium = Some(typed(calcium));
        farm.waters["w"].magnesium = Some(typed("300 ppm"));
        assert_eq!(rate_of(&chosen(&farm).choices[0], Ams), rate, "{calcium}");
    }
}

/// Nitrogen solution as the carrier is held against what labels say of it, and is no additive as well.
#[test]
fn nitrogen_solution_as_the_carrier_is_judged() {
    let mut loaded = glyphosate();
    loaded.label.push(stance(Uan, Stance::Discouraged, None));
    let mut farm = farm("corn", &[("g", loaded)]);
    farm.passes["p"].carrier_kind = tankard_core::farm::CarrierKind::UreaAmmoniumNitrate;
    let plan = planned(&farm);
    must(&plan, Level::Check, "advises against urea ammonium nitrate, and it is the carrier");
    assert!(plan.adjuvants.choices.iter().all(|choice| !classes(choice).iter().any(|class| class.holds_ammonium())));
    assert!(plan.water.conditioner.is_none());
    farm.products["g"].label.push(stance(Uan, Stance::Forbidden, None));
    must(&planned(&farm), Level::Stop, "forbids urea ammonium nitrate, and it is the carrier");
    // An additive that a label asks for is served by the carrier.
    farm.products["g"].label.clear();
    farm.products["g"].label.push(stance(Uan, Stance::Required, None));
    assert!(!found(&planned(&farm), Level::Stop, "requires urea ammonium nitrate"));
}

// Laws.

// What a label bars, floors, ceilings and crops (the label, as typed, decides; no other source).

fn bars(what: &str) -> Statement {
    Statement::new(Says::NotWith { what: what.to_owned(), days: 0 }, "page 2")
}

fn fomesafen() -> Product {
    herbicide("Fomesafen 240 SL (demo)", Formulation::SL, &[("fomesafen", "2 lb/gal")])
}

fn glufosinate() -> Product {
    herbicide("Glufosinate 280 SL (demo)", Formulation::SL, &[("glufosinate", "280 g/L")])
}

/// "Not with A or B" bars both, and what is not with something in heat alone bars it in heat alone.
#[test]
fn what_a_label_lists_as_no_partner_is_in_no_set() {
    let mut partner = fomesafen();
    partner.label.push(bars("crop oil concentrate or methylated seed oil"));
    let farm_of = |partner: &Product| farm("soybean", &[("f", partner.clone()), ("c", clethodim("2 lb/gal"))]);
    let adjuvants = chosen(&farm_of(&partner));
    assert!(!adjuvants.choices.is_empty());
    assert!(adjuvants.choices.iter().all(|choice| !classes(choice).iter().any(|class| [Coc, Mso].contains(class))));
    assert!(adjuvants.collisions[0].text.contains("forbids crop oil concentrate or methylated seed oil"));
    partner.label[0].when.push(When::Heat);
    let mut farm = farm_of(&partner);
    assert_eq!(classes(&chosen(&farm).choices[0]), [Coc]);
    farm.passes["p"].growing.heat = true;
    assert!(chosen(&farm).choices.iter().all(|choice| !classes(choice).contains(&Coc)));
}

#[test]
fn local_advice_may_bar_an_adjuvant() {
    let mut farm = farm("soybean", &[("c", clethodim("2 lb/gal"))]);
    let advice = Advice {
        whose: "County office".to_owned(),
        given: None,
        about: "clethodim".to_owned(),
        water: String::new(),
        says: bars("crop oil concentrate"),
    };
    farm.advice.insert("a".to_owned(), advice);
    assert!(chosen(&farm).choices.iter().all(|choice| !classes(choice).contains(&Coc)));
}

/// A ceiling over ground is kept, also where no rate in the spray is named beside it: 1 % v/v at 25 gal/ac is 2 pt/ac.
#[test]
fn a_ceiling_alone_is_kept() {
    let mut partner = herbicide("Mesotrione 480 SC (demo)", Formulation::SC, &[("mesotrione", "480 g/L")]);
    let says = Says::Adjuvant {
        class: Coc,
        stance: Stance::Required,
        least: None,
        most: None,
        at_least: None,
        at_most: Some(typed("1 pt/ac")),
    };
    partner.label.push(Statement::new(says, "page 3"));
    let mut farm = farm("corn", &[("m", partner)]);
    farm.passes["p"].carrier = Some(typed("25 gal/ac"));
    assert_eq!(rate_of(&chosen(&farm).choices[0], Coc), "1 pt/ac");
}

/// Two labels whose least and most do not meet collide, however hard the water is.
#[test]
fn hard_water_does_not_hide_that_two_labels_do_not_meet() {
    let mut one = glyphosate();
    one.label.push(stance(Ams, Stance::Required, Some("10 lb/100 gal")));
    let mut two = herbicide("2,4-D 456 SL (demo)", Formulation::SL, &[("2,4-D", "456 g ae/L")]);
    let says = Says::Adjuvant {
        class: Ams,
        stance: Stance::Allowed,
        least: None,
        most: Some(typed("5 lb/100 gal")),
        at_least: None,
        at_most: None,
    };
    two.label.push(Statement::new(says, "page 4"));
    for calcium in ["100 ppm", "1500 ppm"] {
        let mut farm = farm("corn", &[("g", one.clone()), ("d", two.clone())]);
        farm.waters["w"].calcium = Some(typed(calcium));
        let plan = planned(&farm);
        assert!(plan.adjuvants.choices.is_empty(), "{calcium}");
        must(&plan, Level::Stop, "asks for at least 10 lb/100 gal of ammonium sulfate");
        must(&plan, Level::Note, "no rate serves both labels");
        assert_eq!(plan.water.recommended, None);
    }
}

/// Publications on corn and soybean are heard however the crop is written.
#[test]
fn a_crop_by_another_of_its_names_is_advised_alike() {
    let mesotrione = || herbicide("Mesotrione 480 SC (demo)", Formulation::SC, &[("mesotrione", "480 g/L")]);
    for crop in ["corn", "Field corn", "maize"] {
        assert_eq!(classes(&chosen(&farm(crop, &[("m", mesotrione())])).choices[0]), [Coc], "{crop}");
    }
    assert!(classes(&chosen(&farm("sweet corn", &[("m", mesotrione())])).choices[0]).contains(&Coc));
    for crop in ["soybean", "Soybeans", "soya beans"] {
        assert_eq!(classes(&chosen(&farm(crop, &[("c", clethodim("2 lb/gal"))])).choices[0]), [Coc], "{crop}");
    }
}

/// Where the label leaves a choice, local advice against one of the two decides; it never undoes what the label requires.
#[test]
fn local_advice_chooses_among_what_a_label_requires() {
    let mut partner = herbicide("Mesotrione 480 SC (demo)", Formulation::SC, &[("mesotrione", "480 g/L")]);
    partner.label.push(stance(Coc, Stance::Required, None));
    partner.label.push(stance(Mso, Stance::Required, None));
    let mut farm = farm("corn", &[("m", partner)]);
    assert_eq!(classes(&chosen(&farm).choices[0]), [Coc]);
    let advice = Advice {
        whose: "County office".to_owned(),
        given: None,
        about: "group 27".to_owned(),
        water: String::new(),
        says: stance(Coc, Stance::Forbidden, None),
    };
    farm.advice.insert("a".to_owned(), advice);
    let adjuvants = chosen(&farm);
    assert_eq!(classes(&adjuvants.choices[0]), [Mso]);
    assert!(adjuvants.choices[rank_of(&adjuvants, &[Coc])].behind.contains("local advice"));
}

/// One product that asks on one crop for what it forbids on another: the crops are named, and are two passes.
#[test]
fn a_product_at_odds_with_itself_over_two_crops_names_them() {
    let mut grass = clethodim("2 lb/gal");
    for (crop, how) in [("soybean", Stance::Required), ("canola", Stance::Forbidden)] {
        let mut says = stance(Coc, how, None);
        crop.clone_into(&mut says.crop);
        grass.label.push(says);
    }
    let mut farm = farm("soybean", &[("c", grass.clone())]);
    let mut second = farm.fields["f"].clone();
    "canola".clone_into(&mut second.crop);
    second.stage.clear();
    farm.fields.insert("f2".to_owned(), second);
    farm.passes["p"].fields.push("f2".to_owned());
    let plan = planned(&farm);
    must(&plan, Level::Stop, &format!("{} in canola forbids crop oil concentrate", grass.name));
    must(&plan, Level::Stop, "Spray the two crops in two passes");
}

/// What the shed holds and may not go in is told beside what would have to be bought.
#[test]
fn why_the_shed_will_not_do_is_told() {
    let mut partner = herbicide("Mesotrione 480 SC (demo)", Formulation::SC, &[("mesotrione", "480 g/L")]);
    partner.label.push(stance(Coc, Stance::Required, None));
    let mut farm = farm("corn", &[("m", partner)]);
    farm.products["coc"].label.push(bars("glyphosate or mesotrione"));
    let member = chosen(&farm).choices[0].members[0].clone();
    assert!(member.product.is_none() && member.rate_from.contains("its label says not to mix it"), "{member:?}");
}

/// What an adjuvant's own label allows on another crop does not count.
#[test]
fn an_adjuvant_keeps_its_own_label_on_the_crop() {
    let mut farm = farm("soybean", &[("c", clethodim("2 lb/gal"))]);
    for (crop, most) in [("corn", "2 % v/v"), ("soybean", "0.5 % v/v")] {
        let says = Says::Rate { least: None, most: Some(typed(most)) };
        let mut statement = Statement::new(says, "page 1");
        crop.clone_into(&mut statement.crop);
        farm.products["coc"].label.push(statement);
    }
    assert_eq!(rate_of(&chosen(&farm).choices[0], Coc), "0.5 % v/v");
}

/// The wish for an oil that a partner forbids takes nothing from the demand for ammonium sulfate, and is told once.
#[test]
fn a_collision_over_one_thing_does_not_silence_another() {
    let mut grass = clethodim("2 lb/gal");
    grass.label.push(stance(Ams, Stance::Required, Some("8.5 lb/100 gal")));
    grass.label.push(stance(Coc, Stance::Preferred, None));
    let mut partner = glufosinate();
    partner.label.push(stance(Coc, Stance::Forbidden, None));
    let plan = planned(&farm("soybean", &[("c", grass.clone()), ("g", partner)]));
    must(&plan, Level::Stop, &format!("{} requires ammonium sulfate, and the mix has none", grass.name));
    let oil = plan.findings.iter().filter(|finding| finding.text.contains(&grass.name) && finding.text.contains("oil"));
    assert_eq!(oil.count(), 1, "{:#?}", plan.findings);
}

/// Where every product for one demand bars every product for another, it is said which.
#[test]
fn two_adjuvants_of_the_shed_that_do_not_go_together_are_named() {
    let mut partner = herbicide("Imazethapyr 240 SL (demo)", Formulation::SL, &[("imazethapyr", "240 g/L")]);
    partner.label.push(stance(Nis, Stance::Required, None));
    partner.label.push(stance(Ams, Stance::Required, None));
    let mut farm = farm("soybean", &[("i", partner)]);
    farm.products["ams"].label.push(bars("non-ionic surfactant"));
    let plan = planned(&farm);
    assert!(plan.adjuvants.choices.is_empty());
    must(&plan, Level::Stop, "may not go into one tank");
    must(&plan, Level::Stop, "Buy another product");
}

/// What keeps a spray from drifting stays when a set is taken, and the set is then what stands in the mix.
#[test]
fn a_set_beside_a_drift_retardant_stands_in_the_mix() {
    let mut farm = farm("soybean", &[("c", clethodim("2 lb/gal"))]);
    let class = AdjuvantClass::DriftRetardant;
    farm.products.insert("drt".to_owned(), adjuvant("Drift retardant (demo)", class, "30/gal"));
    farm.passes["p"].mix.push(Line::new("drt", typed("4 fl oz/100 gal")));
    let first = chosen(&farm).choices[0].clone();
    let mut pass = farm.passes["p"].clone();
    first.take(&mut pass, &farm);
    farm.passes["p"] = pass;
    let adjuvants = chosen(&farm);
    assert!(adjuvants.choices[0].current && adjuvants.current.unwrap().rank == 1);
}

/// Two of a class count together against what a label allows.
#[test]
fn two_of_a_class_count_together() {
    let mut grass = clethodim("2 lb/gal");
    let says = Says::Adjuvant {
        class: Coc,
        stance: Stance::Allowed,
        least: None,
        most: Some(typed("1.5 % v/v")),
        at_least: None,
        at_most: None,
    };
    grass.label.push(Statement::new(says, "page 3"));
    let mut farm = farm("soybean", &[("c", grass)]);
    farm.products.insert("coc2".to_owned(), adjuvant("Other oil (demo)", Coc, "12/gal"));
    farm.passes["p"].mix.push(Line::new("coc", typed("1 % v/v")));
    assert!(!found(&planned(&farm), Level::Stop, "at most"));
    farm.passes["p"].mix.push(Line::new("coc2", typed("1 % v/v")));
    must(&planned(&farm), Level::Stop, "allows 1.5 % v/v");
}

/// 8.5 lb/100 gal at 15 gal/ac is 1.275 lb/ac; glufosinate asks for 2 lb/ac (Illinois Soybean Association, 2016-2018).
#[test]
fn too_little_ammonium_sulfate_for_a_publication_is_said() {
    let mut farm = farm("soybean", &[("g", glufosinate())]);
    farm.passes["p"].mix.push(Line::new("ams", typed("8.5 lb/100 gal")));
    must(&planned(&farm), Level::Check, "names 2 lb/ac");
    farm.passes["p"].mix[1].rate = typed("2.5 lb/ac");
    assert!(!found(&planned(&farm), Level::Check, "names 2 lb/ac"));
}

/// Pounds of salt are not pounds of a solution of which nobody has typed what it holds; taking the set leaves the typed line.
#[test]
fn a_solution_without_content_gets_no_rate() {
    let mut farm = farm("corn", &[("g", glyphosate())]);
    let mut solution = Product::new("Solution (demo)", ProductKind::Conditioner, Formulation::SL);
    solution.class = Some(Ams);
    solution.density = Some(typed("10 lb/gal"));
    farm.products.insert("ams".to_owned(), solution);
    farm.passes["p"].mix.push(Line::new("ams", typed("2.5 % v/v")));
    let choices = chosen(&farm).choices;
    let with = choices.iter().find(|choice| classes(choice).contains(&Ams)).unwrap();
    assert_eq!(with.members[0].rate, None);
    assert!(with.members[0].rate_from.contains("is not typed"));
    let mut pass = farm.passes["p"].clone();
    with.take(&mut pass, &farm);
    assert_eq!(pass.mix, farm.passes["p"].mix);
}

/// A ban or a demand from a stage on is no Stop where the stage of the field cannot be compared.
#[test]
fn a_stage_that_cannot_be_compared_makes_it_a_check() {
    let mut partner = herbicide("Mesotrione 480 SC (demo)", Formulation::SC, &[("mesotrione", "480 g/L")]);
    for (class, how) in [(Coc, Stance::Forbidden), (Nis, Stance::Required)] {
        let mut says = stance(class, how, None);
        "V4".clone_into(&mut says.from_stage);
        partner.label.push(says);
    }
    let mut farm = farm("corn", &[("m", partner)]);
    farm.passes["p"].mix.push(Line::new("coc", typed("1 % v/v")));
    must(&planned(&farm), Level::Stop, "forbids crop oil concentrate");
    "knee high".clone_into(&mut farm.fields["f"].stage);
    let plan = planned(&farm);
    must(&plan, Level::Check, "forbids crop oil concentrate");
    must(&plan, Level::Check, "requires non-ionic surfactant");
    assert!(!found(&plan, Level::Stop, "crop oil") && !found(&plan, Level::Stop, "non-ionic"));
}

/// The ions of a well are not in a tank that is filled with fertilizer. A glyphosate typed by its salt is glyphosate.
#[test]
fn water_is_judged_where_water_is_the_carrier() {
    let salt = herbicide("Glyphosate SL (demo)", Formulation::SL, &[("glyphosate-isopropylammonium", "360 g ae/L")]);
    let mut farm = farm("corn", &[("g", salt)]);
    let plan = planned(&farm);
    assert!(plan.water.recommended.is_some() && found(&plan, Level::Note, "its ions tie up"));
    farm.passes["p"].carrier_kind = tankard_core::farm::CarrierKind::UreaAmmoniumNitrate;
    let plan = planned(&farm);
    assert_eq!((plan.water.recommended, plan.water.conditioner), (None, None));
    assert!(!plan.findings.iter().any(|finding| finding.text.contains("tie up")));
}

/// In heat alone is not on a cool day: the water is conditioned as the sets are.
#[test]
fn a_ban_in_heat_does_not_take_ammonium_from_the_water_on_a_cool_day() {
    let mut partner = glyphosate();
    let mut says = stance(Ams, Stance::Forbidden, None);
    says.when.push(When::Heat);
    partner.label.push(says);
    partner.label.push(stance(Ams, Stance::Preferred, Some("8.5 lb/100 gal")));
    let mut farm = farm("corn", &[("g", partner)]);
    assert_eq!(planned(&farm).water.conditioner.unwrap().class, Ams);
    farm.passes["p"].growing.heat = true;
    assert_eq!(planned(&farm).water.conditioner.unwrap().class, Conditioner);
}

/// The reason names what the better set has over the one in the mix, not over the one between them.
#[test]
fn the_reason_compares_with_the_best() {
    let quizalofop = herbicide("Quizalofop EC (demo)", Formulation::EC, &[("quizalofop-P-ethyl", "0.88 lb/gal")]);
    let mut farm = farm("soybean", &[("q", quizalofop)]);
    farm.passes["p"].weeds = vec!["volunteer corn".to_owned()];
    farm.passes["p"].growing.drought = true;
    let plan = planned(&farm);
    let better = plan.findings.iter().find(|finding| finding.text.contains("would suit this mix better")).unwrap();
    assert!(better.text.contains("would rather have crop oil concentrate"), "{}", better.text);
}

/// The guide speaks of the premix of mesotrione, S-metolachlor and atrazine beside nicosulfuron (South Dakota State
/// University, 2013 Crop Protection Guide, Corn, p. 23), not of mesotrione by itself.
#[test]
fn advice_on_a_premix_is_not_advice_on_one_of_its_actives() {
    let nicosulfuron = || herbicide("Nicosulfuron WG (demo)", Formulation::WG, &[("nicosulfuron", "75 % w/w")]);
    let straight = herbicide("Mesotrione 480 SC (demo)", Formulation::SC, &[("mesotrione", "480 g/L")]);
    let premix = herbicide(
        "Premix (demo)",
        Formulation::SC,
        &[("mesotrione", "0.27 lb/gal"), ("S-metolachlor", "2.68 lb/gal"), ("atrazine", "1 lb/gal")],
    );
    let against = |partner: Product| {
        let adjuvants = chosen(&farm("corn", &[("n", nicosulfuron()), ("m", partner)]));
        let oil = adjuvants.choices.iter().find(|choice| classes(choice).contains(&Coc)).unwrap().clone();
        oil.verdicts.iter().any(|verdict| verdict.product == "n" && verdict.content == Content::Objects)
    };
    assert!(!against(straight));
    assert!(against(premix));
}

/// An invented product: for each of five classes a stance or nothing, by its label.
fn stances() -> impl Strategy<Value = Vec<Option<Stance>>> {
    proptest::collection::vec(
        proptest::option::of(prop_oneof![
            Just(Stance::Required),
            Just(Stance::Preferred),
            Just(Stance::Allowed),
            Just(Stance::Discouraged),
            Just(Stance::Forbidden),
        ]),
        5,
    )
}

fn invented(mix: &[Vec<Option<Stance>>]) -> Farm {
    let products: Vec<Product> = mix
        .iter()
        .enumerate()
        .map(|(at, stances)| {
            let mut product =
                herbicide(&format!("Partner {at} (demo)"), Formulation::SC, &[("an invented active", "100 g/L")]);
            for (class, said) in [Nis, Coc, Mso, Ams, Uan].into_iter().zip(stances) {
                product.label.extend(said.map(|said| stance(class, said, None)));
            }
            product
        })
        .collect();
    let ids: Vec<String> = (0..products.len()).map(|at| format!("x{at}")).collect();
    let mix: Vec<(&str, Product)> = ids.iter().map(String::as_str).zip(products).collect();
    farm("corn", &mix)
}

proptest! {
    #![proptest_config(cases(200))]

    /// No set on offer holds what anybody forbids, and each meets every demand of a label.
    #[test]
    fn a_forbidden_adjuvant_is_never_suggested(mix in proptest::collection::vec(stances(), 1..5)) {
        let adjuvants = chosen(&invented(&mix));
        for choice in &adjuvants.choices {
            for (at, class) in [Nis, Coc, Mso, Ams, Uan].into_iter().enumerate() {
                let forbidden = mix.iter().any(|stances| stances[at] == Some(Stance::Forbidden));
                prop_assert!(!(forbidden && classes(choice).contains(&class)));
            }
            prop_assert!(!choice.verdicts.iter().any(|verdict| verdict.content >= Content::Lacks));
        }
        prop_assert!(!adjuvants.choices.is_empty() || !adjuvants.collisions.is_empty());
    }

    /// A product more in the shed never makes a mix that can be satisfied into one that cannot.
    #[test]
    fn one_more_adjuvant_in_the_shed_takes_nothing_away(mix in proptest::collection::vec(stances(), 1..4), gone in 0_usize..5) {
        let full = invented(&mix);
        let mut less = full.clone();
        less.products.shift_remove(["nis", "coc", "mso", "ams", "uan"][gone]);
        let satisfied = |farm: &Farm| chosen(farm).choices.iter().any(|choice| choice.satisfies && choice.members.iter().all(|member| member.product.is_some()));
        prop_assert!(!satisfied(&less) || satisfied(&full));
    }

    /// An adjuvant that nobody forbids, added to a satisfied mix, leaves it satisfied.
    #[test]
    fn adding_an_adjuvant_does_not_unsettle_a_mix(mix in proptest::collection::vec(stances(), 1..4), added in 0_usize..5) {
        let mut farm = invented(&mix);
        let id = ["nis", "coc", "mso", "ams", "uan"][added];
        let forbidden = mix.iter().any(|stances| stances[added] == Some(Stance::Forbidden));
        let Some(choice) = chosen(&farm).choices.into_iter().find(|choice| choice.satisfies && choice.members.iter().all(|member| member.product.is_some())) else { return Ok(()) };
        let mut pass = farm.passes["p"].clone();
        choice.take(&mut pass, &farm);
        farm.passes["p"] = pass;
        prop_assert!(chosen(&farm).current.unwrap().satisfies);
        if !forbidden && !farm.passes["p"].mix.iter().any(|line| line.product == id) {
            farm.passes["p"].mix.push(Line::new(id, typed(if id == "ams" { "8.5 lb/100 gal" } else { "1 % v/v" })));
            prop_assert!(chosen(&farm).current.unwrap().satisfies);
        }
    }

    /// The order of the shed does not matter.
    #[test]
    fn the_choice_does_not_hang_on_the_order_of_the_shed(mix in proptest::collection::vec(stances(), 1..4), seed in 0_usize..24) {
        let farm = invented(&mix);
        let mut turned = farm.clone();
        turned.products = turned.products.into_iter().rev().collect();
        let len = turned.products.len();
        turned.products.move_index(seed % len, 0);
        prop_assert_eq!(chosen(&farm).choices, chosen(&turned).choices);
    }

    /// Whatever the tables say of an active, what its label says of a class is what counts.
    #[test]
    fn a_label_beats_the_tables(active in prop_oneof![Just("mesotrione"), Just("glufosinate"), Just("clethodim"), Just("imazamox"), Just("nicosulfuron")], said in stances()) {
        let mut product = herbicide("Partner (demo)", Formulation::SC, &[(active, "240 g/L")]);
        for (class, said) in [Nis, Coc, Mso, Ams, Uan].into_iter().zip(&said) {
            product.label.extend(said.map(|said| stance(class, said, None)));
        }
        let adjuvants = chosen(&farm("corn", &[("x", product)]));
        for choice in &adjuvants.choices {
            for (class, said) in [Nis, Coc, Mso, Ams, Uan].into_iter().zip(&said) {
                prop_assert!(!(*said == Some(Stance::Forbidden) && classes(choice).contains(&class)));
            }
        }
        for (class, said) in [Coc, Nis].into_iter().zip([said[1], said[0]]) {
            if said == Some(Stance::Allowed) && !adjuvants.collisions.is_empty() {
                let banned = adjuvants.collisions.iter().any(|collision| collision.text.contains(&format!("forbids {}", class.name())));
                prop_assert!(!banned, "a table must not forbid what the label allows");
            }
        }
    }
}
