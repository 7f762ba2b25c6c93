//! What stands on a card beside amounts: whose a limit is, which droplets, at which marks the water stops, the rate over ground, a line for
//! an emergency. The labels are invented; what is usual is that of `assets/weather-limits.csv`.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use jiff::civil::date;
use tankard_core::farm::card::CardContent;
use tankard_core::farm::{
    Active, Droplets, Farm, Field, Formulation, Line, Pass, Product, ProductKind, Rig, Says, Statement, When,
};
use tankard_core::finding::Level;
use tankard_core::loads::FillStep;
use tankard_core::loads::card::cards;
use tankard_core::plan::plan;
use tankard_core::quantity::{ActiveBasis, AsTyped, Quantity, Volume};

fn q<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

fn herbicide(name: &str, active: &str, formulation: Formulation, label: Vec<Says>) -> Product {
    let mut product = Product::new(name, ProductKind::Herbicide, formulation);
    product.actives.push(Active {
        name: active.to_owned(),
        group: String::new(),
        basis: ActiveBasis::ActiveIngredient,
        content: q("4 lb/gal"),
    });
    product.label.extend(label.into_iter().map(|says| Statement::new(says, "page 3")));
    product
}

fn wind(most: &str) -> Says {
    Says::Wind { most: q(most), least: None, gust: None }
}

/// Glyphosate, which asks for at most 15 mph and coarse droplets, with mesotrione, which asks for at most 10 mph and medium ones.
fn farm() -> Farm {
    let mut farm = Farm::new("Card");
    let mut field = Field::new("Home 36", q("36 ac"));
    "corn".clone_into(&mut field.crop);
    farm.fields.insert("f".to_owned(), field);
    farm.rigs.insert("boom".to_owned(), Rig::new("Boom", q("800 gal")));
    let droplets = |finest| Says::Droplets { finest, coarsest: None };
    let glyphosate = vec![wind("15 mph"), droplets(Droplets::Coarse), Says::RainFree { hours: 4 }];
    let mesotrione = vec![wind("10 mph"), droplets(Droplets::Medium), Says::RainFree { hours: 1 }];
    farm.products
        .insert("g".to_owned(), herbicide("Glyphosate 540 SL (demo)", "glyphosate", Formulation::SL, glyphosate));
    farm.products
        .insert("m".to_owned(), herbicide("Mesotrione 4 SC (demo)", "mesotrione", Formulation::SC, mesotrione));
    let mut pass = Pass::new("Corn post", date(2031, 6, 12));
    pass.fields.push("f".to_owned());
    "boom".clone_into(&mut pass.rig);
    pass.carrier = Some(q("15 gal/ac"));
    pass.mix.extend([Line::new("g", q("22 fl oz/ac")), Line::new("m", q("3 fl oz/ac"))]);
    farm.passes.insert("p".to_owned(), pass);
    farm
}

fn card(farm: &Farm) -> CardContent {
    cards(farm, &plan(farm, "p").unwrap()).remove(0)
}

#[test]
fn a_label_is_named_for_what_it_states_and_practice_stands_apart() {
    let mut farm = farm();
    let printed = card(&farm);
    assert_eq!(printed.limits, ["wind at most 10 mph (Mesotrione)", "no rain for 4 h after it (Glyphosate)"]);
    // No label speaks of calm or of gusts, and no name stands at them. 3 mph is that of the table, the gust that of the label's wind.
    assert_eq!(printed.usual.first().map(String::as_str), Some("wind at least 3 mph"));
    assert!(printed.usual.contains(&"gusts at most 10 mph".to_owned()), "{:?}", printed.usual);
    assert!(printed.usual.contains(&"no inversion".to_owned()), "{:?}", printed.usual);
    assert!(printed.usual.iter().all(|limit| !limit.contains('(')), "{:?}", printed.usual);
    // Where only the looser label speaks, the tighter practice is no word of that label.
    farm.passes["p"].mix.truncate(1);
    let printed = card(&farm);
    assert_eq!(printed.limits.first().map(String::as_str), Some("wind at most 15 mph (Glyphosate)"));
    assert_eq!(printed.usual.first().map(String::as_str), Some("wind 3 to 10 mph"));
    // A label that names a gust, and a farm's own limit, have their names.
    let gust = Says::Wind { most: q("15 mph"), least: None, gust: Some(q("12 mph")) };
    farm.products["g"].label[0] = Statement::new(gust, "page 3");
    farm.practice.least_wind = Some(q("4 mph"));
    let printed = card(&farm);
    assert!(printed.limits.contains(&"gusts at most 12 mph (Glyphosate)".to_owned()), "{:?}", printed.limits);
    assert_eq!(printed.usual.first().map(String::as_str), Some("wind 4 to 10 mph (this farm)"));
}

/// Each layer of the gauge is named for the product that it stands for.
#[test]
fn layers_of_the_gauge_bear_the_names_of_their_products() {
    let layers = card(&farm()).gauge.layers;
    let named: Vec<&str> = layers.iter().filter(|layer| layer.number.is_some()).map(|layer| &*layer.label).collect();
    assert_eq!(named.len(), 2);
    for name in ["Glyphosate", "Mesotrione"] {
        assert_eq!(named.iter().filter(|label| label.starts_with(name)).count(), 1, "{named:?}");
    }
    let steps = card(&farm()).steps;
    for layer in layers.iter().filter(|layer| layer.number.is_some()) {
        let step = steps.iter().find(|step| step.amount == layer.amount).unwrap();
        assert!(step.what.starts_with(&*layer.label), "{layer:?} {step:?}");
    }
}

#[test]
fn one_line_of_droplets_the_strictest_with_whose_it_is() {
    let lines = |farm: &Farm| -> Vec<String> {
        card(farm).cautions.into_iter().filter(|line| line.starts_with("Droplets")).collect()
    };
    let mut farm = farm();
    assert_eq!(lines(&farm), ["Droplets coarse or coarser (Glyphosate 540 SL (demo))"]);
    // Two ends of two labels make one range, of both.
    let ends = Says::Droplets { finest: Droplets::Medium, coarsest: Some(Droplets::VeryCoarse) };
    farm.products["m"].label[1] = Statement::new(ends, "page 3");
    assert_eq!(lines(&farm), ["Droplets coarse to very coarse (Mesotrione 4 SC (demo), Glyphosate 540 SL (demo))"]);
    // Those that exclude one another are both told.
    let fine = Says::Droplets { finest: Droplets::Fine, coarsest: Some(Droplets::Medium) };
    farm.products["m"].label[1] = Statement::new(fine, "page 3");
    assert_eq!(lines(&farm).len(), 2, "{:?}", lines(&farm));
    // One for another crop does not speak here; one of which it cannot be told whether it speaks stands beside.
    let mut other = Statement::new(Says::Droplets { finest: Droplets::UltraCoarse, coarsest: None }, "page 3");
    "soybeans".clone_into(&mut other.crop);
    farm.products["m"].label[1] = other;
    assert_eq!(lines(&farm).first().unwrap(), "Droplets coarse or coarser (Glyphosate 540 SL (demo))");
    let mut doubtful = Statement::new(Says::Droplets { finest: Droplets::ExtremelyCoarse, coarsest: None }, "page 3");
    doubtful.when.push(When::WarmerThan(q("90 °F")));
    farm.products["m"].label[1] = doubtful;
    let told = lines(&farm);
    assert!(told.len() == 2 && told[1].starts_with("Droplets extremely coarse or coarser"), "{told:?}");
}

#[test]
fn water_stops_at_marks_of_the_tanks_own_scale() {
    let mut farm = farm();
    farm.passes["p"].fields[0] = "f".to_owned();
    farm.fields["f"].area = q("22 ac");
    let marks = |farm: &Farm| -> Vec<f64> {
        let plan = plan(farm, "p").unwrap();
        let load = &plan.loads[0];
        let to = load.steps.iter().filter_map(|step| match step {
            FillStep::Water { to } => Some(*to),
            _ => None,
        });
        to.filter(|to| load.volume.exceeds(*to)).map(Volume::to_us_gallons).collect()
    };
    // 330 gal: a half is 165 and three quarters are 247.5, which marks of 5 gal make 165 and 245.
    let readable = marks(&farm);
    assert!(readable.iter().any(|mark| (mark % 10.0 - 5.0).abs() < 1e-6), "{readable:?}");
    // Half and three quarters of a load, down to 10 gal from 1,000 gal on, to 5 from 200, to 1 from 20 and to a tenth below.
    farm.rigs["boom"].tank = q("1200 gal");
    for (gallons, half, more) in [(1197.0, 590.0, 890.0), (897.0, 445.0, 670.0), (87.0, 43.0, 65.0), (17.3, 8.6, 12.9)]
    {
        farm.fields["f"].area = q(&format!("{:.9} ac", gallons / 15.0));
        let stops = marks(&farm);
        assert!(
            stops.len() == 2 && (stops[0] - half).abs() < 1e-6 && (stops[1] - more).abs() < 1e-6,
            "{gallons} gal: {stops:?}"
        );
    }
    // Of two liquids of 49.5 gal each the second has 280.5 gal below the brim, so that its mark stands where it did.
    farm.fields["f"].area = q("22 ac");
    let mut strong = farm.clone();
    strong.passes["p"].mix.iter_mut().for_each(|line| line.rate = q("2.25 gal/ac"));
    assert_eq!(marks(&strong).iter().map(|mark| mark.round()).collect::<Vec<_>>(), [165.0, 245.0]);
    for step in ["10 gal", "25 gal"] {
        farm.rigs["boom"].mark = Some(q(step));
        let step = Volume::parse(step).unwrap().to_us_gallons();
        let own = marks(&farm);
        assert!(
            !own.is_empty() && own.iter().all(|mark| (mark / step - (mark / step).round()).abs() < 1e-9),
            "{own:?}"
        );
    }
    // A scale that is coarser than the load leaves no product in an empty tank.
    farm.rigs["boom"].mark = Some(q("500 gal"));
    let plan = plan(&farm, "p").unwrap();
    assert!(matches!(plan.loads[0].steps[0], FillStep::Water { to } if !to.is_zero()));
}

#[test]
fn each_product_has_its_rate_and_an_emergency_its_line() {
    let mut farm = farm();
    let printed = card(&farm);
    let rates: Vec<(&str, &str)> = printed.steps.iter().map(|step| (step.what.as_str(), step.rate.as_str())).collect();
    assert!(rates.contains(&("Glyphosate 540 SL (demo)", "22 fl oz/ac")), "{rates:?}");
    assert!(rates.contains(&("Water", "")), "{rates:?}");
    // As typed where that is over ground; a share of the spray is reckoned: 0.25 % of 15 gal/ac are 4.8 fl oz.
    farm.passes["p"].mix[0].rate = q("1.5 pt/ac");
    farm.passes["p"].mix[1].rate = q("0.25 % v/v");
    let steps = card(&farm).steps.into_iter();
    let rates: Vec<String> = steps.map(|step| step.rate).filter(|rate| !rate.is_empty()).collect();
    assert!(rates.contains(&"1.5 pt/ac".to_owned()) && rates.contains(&"4.8 fl oz/ac".to_owned()), "{rates:?}");
    assert_eq!(printed.emergency, [""]);
    farm.emergency.push("Poison centre 555-0100".to_owned());
    assert_eq!(card(&farm).emergency, ["Poison centre 555-0100"]);
}

#[test]
fn a_tank_that_is_not_typed_stops_the_pass_and_says_what_to_type() {
    let mut farm = farm();
    farm.rigs["boom"].tank = q("0 gal");
    let plan = plan(&farm, "p").unwrap();
    assert!(plan.loads.is_empty());
    let stops: Vec<_> = plan.findings.iter().filter(|finding| finding.level == Level::Stop).collect();
    assert_eq!(stops.len(), 1, "{stops:?}");
    assert!(stops[0].text.starts_with("What the tank of Boom holds is not typed"), "{}", stops[0].text);
    assert!(stops[0].hint.contains("full to its mark"), "{}", stops[0].hint);
}
