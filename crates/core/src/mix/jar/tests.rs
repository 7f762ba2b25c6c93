//! What a jar test must hold. The amounts against published and derived figures stand in `tests/reference/jar.csv`.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use super::measure::{Measured, measure, spoons};
use super::sheet::{Means, sheet, signs};
use super::{Jar, JarStep, JarTest, Second, jar};
use crate::farm::{AdjuvantClass, CarrierKind, Farm, Field, Formulation, Line, Pass, Product, ProductKind};
use crate::finding::Level;
use crate::plan::plan;
use crate::quantity::{Amount, AsTyped, Mass, Units, Volume};

/// A pass at 20 gal/ac with products by formulation and rate.
fn farm(mix: &[(&str, Formulation, &str)]) -> Farm {
    let mut farm = Farm::new("Test");
    farm.fields.insert("field".to_owned(), Field::new("Field", AsTyped::parse("10 ac").unwrap()));
    let mut pass = Pass::new("Pass", jiff::civil::date(2031, 6, 12));
    pass.fields.push("field".to_owned());
    pass.carrier = Some(AsTyped::parse("20 gal/ac").unwrap());
    for (name, formulation, rate) in mix {
        farm.products.insert((*name).to_owned(), Product::new(name, ProductKind::Herbicide, *formulation));
        pass.mix.push(Line::new(name, AsTyped::parse(rate).unwrap()));
    }
    farm.passes.insert("pass".to_owned(), pass);
    farm
}

fn tested(farm: &Farm, size: Jar) -> JarTest {
    jar(&plan(farm, "pass").unwrap(), farm, size).unwrap()
}

fn millilitres(value: f64) -> Measured {
    measure(Amount::Volume(Volume::from_litres(value / 1000.0)), "water", Units::UsCustomary).unwrap()
}

fn grams(value: f64) -> Measured {
    measure(Amount::Mass(Mass::from_grams(value)), "water", Units::UsCustomary).unwrap()
}

#[test]
fn liquids_are_measured_to_what_a_syringe_or_a_cylinder_shows() {
    for (value, text) in
        [(0.5, "0.5 mL"), (2.957, "3 mL"), (5.422, "5.4 mL"), (11.83, "12 mL"), (23.66, "23.5 mL"), (118.29, "118 mL")]
    {
        assert_eq!(millilitres(value).text, text);
    }
    for (value, text) in [(0.177, "0.18 g"), (2.835, "2.84 g"), (11.34, "11.3 g")] {
        assert_eq!(grams(value).text, text);
        assert_eq!(grams(value).spoons, "", "dry products are weighed");
    }
}

#[test]
fn what_no_syringe_shows_is_taken_from_a_stock_and_is_never_nothing() {
    for (value, parts, take) in
        [(0.44, 10, 4.4), (0.05, 10, 0.5), (0.044, 100, 4.4), (0.0044, 1000, 4.4), (0.000_44, 10_000, 4.4)]
    {
        let measured = millilitres(value);
        let stock = measured.stock.unwrap();
        assert_eq!(stock.parts, parts, "{value}");
        assert!((stock.take.to_litres() * 1000.0 - take).abs() < 1e-9, "{value}");
        assert_eq!(measured.text, format!("{take} mL of stock"));
    }
    assert_eq!(
        millilitres(0.044).stock.unwrap().text,
        "Stock 1 in 100: dilute 1 mL to 100 mL with water; shake it and take 4.4 mL at once"
    );
    assert_eq!(
        grams(0.0035).stock.unwrap().text,
        "Stock 1 in 1,000: stir 1 g to 100 mL with water, then 1 mL of that to 10 mL; shake it and take 3.5 mL at once"
    );
    for nothing in [0.0, 1e-9] {
        assert_eq!(measure(Amount::Mass(Mass::from_grams(nothing)), "water", Units::Metric), None);
    }
}

#[test]
fn a_stock_holds_the_amount_and_there_is_enough_of_it() {
    // The law of dilution: what is taken times the share of product in it is the amount, to the mark of the syringe.
    let mut value = 0.000_01;
    while value < 0.5 {
        let stock = millilitres(value).stock.unwrap();
        let taken = stock.take.to_litres() * 1000.0;
        assert!((taken / f64::from(stock.parts) / value - 1.0).abs() <= 0.1, "{value}");
        assert!((0.5..=10.0).contains(&taken), "{value}: {taken}");
        value *= 1.37;
    }
}

#[test]
fn spoons_are_named_where_they_come_near() {
    for (value, text) in [
        (4.928_921_593_75, "1 tsp"),
        (14.786_764_781_25, "1 tbsp"),
        (2.464_460_796_875, "1/2 tsp"),
        (2.366, "about 1/2 tsp"),
        (0.62, "about 1/8 tsp"),
        (5.915, "about 1 1/4 tsp"),
        (2.957, "0.6 tsp"),
        (0.75, ""),
        (0.5, ""),
    ] {
        assert_eq!(spoons(Volume::from_litres(value / 1000.0), Units::UsCustomary), text);
    }
    assert_eq!(spoons(Volume::from_us_fluid_ounces(1.0), Units::Imperial), "2 US tbsp");
    let metric = measure(Amount::Volume(Volume::from_litres(0.005)), "water", Units::Metric).unwrap();
    assert_eq!(metric.spoons, "");
}

#[test]
fn the_jar_follows_the_mixing_order_and_comes_out_full() {
    let farm = farm(&[
        ("oil", Formulation::EC, "1 qt/ac"),
        ("granule", Formulation::WG, "1 oz/ac"),
        ("solution", Formulation::SL, "1 pt/ac"),
    ]);
    let plan = plan(&farm, "pass").unwrap();
    for size in Jar::ALL {
        let test = tested(&farm, size);
        let order: Vec<&str> = test.items.iter().map(|item| item.product.as_str()).collect();
        let planned: Vec<&str> = plan.order.iter().map(|placed| placed.product.as_str()).collect();
        assert_eq!(order, planned);
        assert!(matches!(test.steps.first(), Some(JarStep::Carrier { .. })));
        let carrier: f64 = test
            .steps
            .iter()
            .map(|step| match step {
                JarStep::Carrier { add, .. } => add.to_litres(),
                JarStep::Product { .. } => 0.0,
            })
            .sum();
        // Conservation: carrier and liquids fill the jar.
        assert!((carrier - test.carrier_volume.to_litres()).abs() < 1e-12);
        let liquids = size.volume().to_litres() * 3.0 / 160.0;
        assert!((carrier + liquids - size.volume().to_litres()).abs() < 1e-12);
        assert!(!test.is_incomplete());
    }
}

/// 2 and 6 of 20 gal/ac are a tenth and three tenths of the jar. The first goes into half a jar, which is then six tenths full; for the
/// second there is room up to seven, though the tank's mark is three quarters.
#[test]
fn carrier_goes_no_higher_than_what_is_still_to_come_leaves_room_for() {
    let test =
        tested(&farm(&[("flowable", Formulation::SC, "2 gal/ac"), ("oil", Formulation::EC, "6 gal/ac")]), Jar::Pint);
    let tenths = |volume: &Volume| (volume.ratio(Jar::Pint.volume()).unwrap() * 1e7).round() / 1e6;
    let steps: Vec<_> = test
        .steps
        .iter()
        .map(|step| match step {
            JarStep::Carrier { add, to } => Some((tenths(add), tenths(to))),
            JarStep::Product { .. } => None,
        })
        .collect();
    assert_eq!(steps, [Some((5.0, 5.0)), None, Some((1.0, 7.0)), None]);
}

/// Oklahoma State University Extension, PSS-2789: half the carrier before what keeps apart, three quarters before solutions; a label
/// that puts a solution first says nothing of the carrier.
#[test]
fn what_goes_first_goes_into_as_much_carrier_as_its_row_says() {
    let mut farm = farm(&[("solution", Formulation::SL, "1 pt/ac"), ("other", Formulation::SC, "1 pt/ac")]);
    farm.passes["pass"].carrier_kind = CarrierKind::UreaAmmoniumNitrate;
    let mut agent = Product::new("agent", ProductKind::Adjuvant, Formulation::SL);
    agent.class = Some(AdjuvantClass::CompatibilityAgent);
    farm.products.insert("agent".to_owned(), agent);
    farm.passes["pass"].mix.push(Line::new("agent", AsTyped::parse("2 pt/100 gal").unwrap()));
    let place = crate::farm::label::OrderPlace::First;
    let says = crate::farm::Says::MixingOrder { place, tank_full: None };
    farm.products["solution"].label.push(crate::farm::Statement::new(says, "page 1"));
    let order = plan(&farm, "pass").unwrap().order;
    let full = |id: &str| order.iter().find(|placed| placed.product == id).map(|placed| placed.full_before);
    assert_eq!((full("agent"), full("solution")), (Some(0.5), Some(0.75)));
}

#[test]
fn a_line_that_cannot_be_reckoned_is_a_stop() {
    let mut farm = farm(&[("oil", Formulation::EC, "1 qt/ac"), ("dry", Formulation::WG, "1 pt/ac")]);
    let test = tested(&farm, Jar::Pint);
    assert!(test.is_incomplete());
    assert!(test.findings.iter().any(|finding| finding.text.starts_with("dry could not be reckoned")));
    let pass = farm.passes.get_mut("pass").unwrap();
    pass.mix[1].rate = AsTyped::parse("0 oz/ac").unwrap();
    assert!(tested(&farm, Jar::Pint).findings.iter().any(|finding| finding.text.contains("at a rate of nothing")));
    farm.passes.get_mut("pass").unwrap().mix.clear();
    assert!(tested(&farm, Jar::Pint).is_incomplete());
    farm.passes.get_mut("pass").unwrap().carrier = None;
    assert_eq!(jar(&plan(&farm, "pass").unwrap(), &farm, Jar::Pint), None);
}

#[test]
fn products_that_leave_no_room_for_water_are_a_stop() {
    let farm = farm(&[("oil", Formulation::EC, "20 gal/ac")]);
    assert!(
        tested(&farm, Jar::Pint)
            .findings
            .iter()
            .any(|finding| finding.level == Level::Stop && finding.text.contains("no room"))
    );
}

/// University of Arizona (Kopec), May 1999: two jars, one with a compatibility agent, looked at after 5 minutes.
#[test]
fn fertilizer_takes_two_jars_that_differ_by_the_compatibility_agent() {
    let mut farm = farm(&[("solution", Formulation::SL, "1 pt/ac")]);
    assert_eq!(tested(&farm, Jar::Pint).second, None);
    farm.passes.get_mut("pass").unwrap().carrier_kind = CarrierKind::UreaAmmoniumNitrate;
    let test = tested(&farm, Jar::Pint);
    assert!(matches!(test.second, Some(Second::With { .. })));
    assert!(test.carrier.contains("urea ammonium nitrate"));
    let page = sheet(&farm, &test).unwrap();
    assert_eq!(page.jars, ["A", "B"]);
    assert_eq!(page.steps[1].what, "Compatibility agent, jar B only");
    assert_eq!(page.looks[0], "5 min");
    let mut agent = Product::new("agent", ProductKind::Adjuvant, Formulation::SL);
    agent.class = Some(AdjuvantClass::CompatibilityAgent);
    farm.products.insert("agent".to_owned(), agent);
    farm.passes.get_mut("pass").unwrap().mix.push(Line::new("agent", AsTyped::parse("2 pt/100 gal").unwrap()));
    let test = tested(&farm, Jar::Pint);
    assert_eq!(test.second, Some(Second::Without("agent".to_owned())));
    let page = sheet(&farm, &test).unwrap();
    assert!(page.steps.iter().any(|step| step.what == "agent" && step.hint.starts_with("jar A only")));
}

#[test]
fn words_of_the_label_and_a_stock_stand_in_one_line() {
    let mut farm = farm(&[("drop", Formulation::SC, "0.02 fl oz/ac")]);
    let own = crate::farm::Says::Handling { what: "Shake the jug first.".to_owned() };
    farm.products["drop"].label.push(crate::farm::Statement::new(own, "page 1"));
    let page = sheet(&farm, &tested(&farm, Jar::Pint)).unwrap();
    assert!(page.steps[1].hint.starts_with("Shake the jug first. Stock 1 in 1,000: "), "{}", page.steps[1].hint);
}

#[test]
fn a_bag_is_weighed_out_with_a_check() {
    let farm = farm(&[("bags", Formulation::WSP, "1 lb/ac")]);
    let test = tested(&farm, Jar::Quart);
    assert!(
        test.findings
            .iter()
            .any(|finding| finding.level == Level::Check && finding.text.contains("bags that go in whole"))
    );
    assert!(!test.items[0].handling.contains("unopened"));
}

#[test]
fn the_signs_read_and_heat_forbids_spraying() {
    assert!(signs().len() >= 7);
    // Utah State University, 2012: heat is a sign of incompatibility.
    let heat = signs().iter().find(|sign| sign.sign.starts_with("Heat")).unwrap();
    assert!(heat.means == Means::Stop && heat.source.contains("Utah State University, 2012"));
    // University of Arizona (Kopec), May 1999: flakes, sludge, gel, oil.
    for word in ["Flakes", "Sludge", "Gel", "Oil"] {
        let sign = signs().iter().find(|sign| sign.sign.starts_with(word)).unwrap();
        assert!(sign.means == Means::Turn && sign.source.contains("Arizona"), "{word}");
    }
    for means in [Means::Stop, Means::Turn, Means::Foam] {
        assert!(means.words().contains("do not spray"));
    }
}
