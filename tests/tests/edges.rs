//! What decides at an edge: which of two limits is the tighter, which mark is the decimal one, what is taken from what. By hand, as the
//! comment beside each says.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use jiff::civil::date;
use tankard_core::farm::label::Stance;
use tankard_core::farm::{
    AdjuvantClass, Farm, Field, Formulation, Line, Pass, Product, ProductKind, Record, RecordField, RecordLine, Rig,
    Says, Statement, Water,
};
use tankard_core::finding::Level;
use tankard_core::plan::{Plan, plan};
use tankard_core::quantity::{AmountPerArea, Area, AsTyped, MassPerArea, Quantity, Share, VolumePerArea};
use tankard_core::rig::rinse::strength;
use tankard_core::season::review::{Choice, of_farm};

fn q<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

fn acres(text: &str) -> Result<f64, String> {
    Area::parse(text).map(Area::to_acres).map_err(|error| error.to_string())
}

/// One kind of mark that repeats parts thousands, and the other is the decimal mark (common practice, no source).
#[test]
fn marks_of_thousands() {
    for (text, value) in [
        ("1.234.567,5 ac", 1_234_567.5),
        ("1,234,567.5 ac", 1_234_567.5),
        ("1.234.567 ac", 1_234_567.0),
        ("1,234,567 ac", 1_234_567.0),
        ("1,234.5 ac", 1234.5),
        ("1.234,5 ac", 1234.5),
    ] {
        assert!((acres(text).unwrap() - value).abs() < 1e-6, "{text}: {:?}", acres(text));
    }
    for text in ["1.2.3,4,5 ac", "1,23.456 ac", "1.234.56 ac", "1,234.567,8 ac", "1234,567.8 ac", ",123.5 ac"] {
        assert!(acres(text).is_err(), "{text}: {:?}", acres(text));
    }
}

/// Subtraction.
#[test]
fn what_is_left_of_an_amount_over_ground() {
    let (five, two) = (MassPerArea::from_kilograms_per_hectare(5.0), MassPerArea::from_kilograms_per_hectare(2.0));
    let Some(AmountPerArea::Mass(left)) = AmountPerArea::Mass(five).minus(AmountPerArea::Mass(two)) else { panic!() };
    assert!((left.to_kilograms_per_hectare() - 3.0).abs() < 1e-12);
    let liquid = AmountPerArea::Volume(VolumePerArea::from_litres_per_hectare(1.0));
    assert_eq!(AmountPerArea::Mass(five).minus(liquid), None);
}

/// 0.8 % is one part in 125, and 0.00005 one in 20,000.
#[test]
fn strengths_in_words() {
    assert_eq!(strength(Share::from_fraction(0.008)), "0.8 %");
    assert_eq!(strength(Share::from_fraction(0.001)), "0.1 %");
    assert_eq!(strength(Share::from_fraction(1.0 / 20_000.0)), "1 part in 20,000");
}

/// 80 ac at 15 gal/ac with glyphosate and a dry sulfate.
fn farm(sulfate: &str) -> Farm {
    let mut farm = Farm::new("Edges");
    let mut field = Field::new("Mill field", q("80 ac"));
    "corn".clone_into(&mut field.crop);
    farm.fields.insert("f".to_owned(), field);
    let water = Water {
        name: "Well".to_owned(),
        calcium: Some(q("100 ppm")),
        magnesium: Some(q("30 ppm")),
        sodium: Some(q("40 ppm")),
        potassium: Some(q("5 ppm")),
        ..Water::default()
    };
    farm.waters.insert("w".to_owned(), water);
    farm.rigs.insert("r".to_owned(), Rig::new("Boom", q("1200 gal")));
    for (id, name) in [("a", "Alpha 480 SL (demo)"), ("b", "Beta 480 SL (demo)")] {
        farm.products.insert(id.to_owned(), Product::new(name, ProductKind::Herbicide, Formulation::SL));
    }
    let mut salt = Product::new("Sulfate (demo)", ProductKind::Conditioner, Formulation::SG);
    salt.class = Some(AdjuvantClass::AmmoniumSulfate);
    farm.products.insert("s".to_owned(), salt);
    let mut pass = Pass::new("Pass", date(2031, 6, 12));
    pass.fields.push("f".to_owned());
    "w".clone_into(&mut pass.water);
    "r".clone_into(&mut pass.rig);
    pass.carrier = Some(q("15 gal/ac"));
    pass.mix.push(Line::new("a", q("32 fl oz/ac")));
    pass.mix.push(Line::new("b", q("16 fl oz/ac")));
    pass.mix.push(Line::new("s", q(sulfate)));
    farm.passes.insert("p".to_owned(), pass);
    farm
}

fn planned(farm: &Farm) -> Plan {
    plan(farm, "p").unwrap()
}

fn stops(farm: &Farm, words: &str) -> usize {
    planned(farm).findings.iter().filter(|found| found.level == Level::Stop && found.text.contains(words)).count()
}

fn sulfate(least: Option<&str>, most: &str) -> Says {
    Says::Adjuvant {
        class: AdjuvantClass::AmmoniumSulfate,
        stance: Stance::Preferred,
        least: least.map(q),
        most: Some(q(most)),
        at_least: None,
        at_most: None,
    }
}

/// Of two labels the smaller most and the larger least bind, whichever product comes first.
#[test]
fn the_tighter_of_two_labels_bounds_the_sulfate() {
    for (first, second) in [("a", "b"), ("b", "a")] {
        let mut farm = farm("8.5 lb/100 gal");
        farm.products[first].label.push(Statement::new(sulfate(Some("6 lb/100 gal"), "17 lb/100 gal"), "page 2"));
        farm.products[second].label.push(Statement::new(sulfate(Some("4 lb/100 gal"), "10 lb/100 gal"), "page 3"));
        let recommended = planned(&farm).water.recommended.unwrap().to_pounds_per_100_us_gallons();
        assert!((6.0..=10.0).contains(&recommended), "{recommended}");
        farm.passes["p"].mix[2].rate = q("12 lb/100 gal");
        assert_eq!(stops(&farm, "at most"), 1);
    }
}

/// Rounding keeps to the smallest most of a label's ranges that the plan keeps, and to the smallest least.
#[test]
fn rounding_keeps_to_the_range_that_the_rate_lies_in() {
    let mut farm = farm("8.5 lb/100 gal");
    farm.products["a"].measuring_step = Some(q("1 gal"));
    farm.products["a"]
        .label
        .push(Statement::new(Says::Rate { least: Some(q("32 fl oz/ac")), most: Some(q("64 fl oz/ac")) }, "page 2"));
    farm.products["a"]
        .label
        .push(Statement::new(Says::Rate { least: Some(q("16 fl oz/ac")), most: Some(q("32.4 fl oz/ac")) }, "page 2"));
    for load in &planned(&farm).loads {
        let acres = load.fields.iter().map(|(_, area)| area.to_acres()).sum::<f64>();
        let item = load.items.iter().find(|item| item.product == "a").unwrap();
        let measured = match item.measured.amount {
            tankard_core::quantity::Amount::Volume(volume) => volume.to_us_fluid_ounces(),
            tankard_core::quantity::Amount::Mass(_) => panic!(),
        };
        assert!(measured / acres <= 32.4 + 1e-9, "{}", measured / acres);
        assert!(measured / acres >= 16.0 - 1e-9, "{}", measured / acres);
    }
}

/// 69.7 ac at 32 fl oz/ac are 17.425 gal: 17 gal would be 31.2 fl oz/ac, below the label's least, and 18 gal are 33.1.
#[test]
fn rounding_does_not_fall_below_the_least_of_a_label() {
    let mut farm = farm("8.5 lb/100 gal");
    farm.fields["f"].area = q("69.7 ac");
    farm.products["a"].measuring_step = Some(q("1 gal"));
    let says = Says::Rate { least: Some(q("32 fl oz/ac")), most: Some(q("64 fl oz/ac")) };
    farm.products["a"].label.push(Statement::new(says, "page 2"));
    let plan = planned(&farm);
    let item = plan.loads[0].items.iter().find(|item| item.product == "a").unwrap();
    assert_eq!((plan.loads.len(), item.measured.text.as_str()), (1, "18 gal"));
}

/// Of 1,000 gal of spray with 10 gal of a liquid 990 are water; half of the record's ground takes half of it.
#[test]
fn the_water_of_a_record_is_its_spray_without_its_liquids() {
    let mut farm = farm("8.5 lb/100 gal");
    let mut record = Record::new("Record", date(2031, 5, 1));
    record.water = "w".into();
    record.volume = Some(q("1000 gal"));
    for (id, ground) in [("f", "40 ac"), ("g", "40 ac")] {
        record.fields.insert(id.to_owned(), RecordField::new(id, q(ground)));
    }
    record.lines.push(RecordLine::new("a", "Alpha 480 SL (demo)", q("10 gal")));
    record.lines.push(RecordLine { planned: Some(q("9 lb")), ..RecordLine::new("b", "Beta 480 SL (demo)", q("9 lb")) });
    for field in record.fields.values_mut() {
        field.planned = Some(q("40 ac"));
    }
    farm.records.insert("x".to_owned(), record);
    let found = of_farm(&farm, &Choice::all());
    assert!((found.work.waters[0].water.to_us_gallons() - 990.0).abs() < 1e-9);
    // One of the two lines keeps what was planned.
    assert_eq!(found.planned.lines_without, 1);
    let half = of_farm(&farm, &Choice { fields: vec!["f".to_owned()], ..Choice::all() });
    assert!((half.work.waters[0].water.to_us_gallons() - 495.0).abs() < 1e-9);
}

/// 10.3 gal for 10 gal over the planned ground are 3 % too much, between the bars' ends of 2 and 5 %; 9 gal are 10 % too little, which
/// an end belongs to the bar above it.
#[test]
fn errors_stand_in_their_bars() {
    let mut farm = farm("8.5 lb/100 gal");
    let mut record = Record::new("Record", date(2031, 5, 1));
    let mut field = RecordField::new("f", q("80 ac"));
    field.planned = Some(q("80 ac"));
    record.fields.insert("f".to_owned(), field);
    for (id, amount) in [("a", "10.3 gal"), ("b", "9 gal")] {
        let line = RecordLine::new(id, "Alpha 480 SL (demo)", q(amount));
        record.lines.push(RecordLine { planned: Some(q("10 gal")), ..line });
    }
    farm.records.insert("x".to_owned(), record);
    // A record of no ground has no amount over it.
    let mut nothing = farm.records["x"].clone();
    nothing.fields["f"].area = q("0 ac");
    farm.records.insert("y".to_owned(), nothing);
    assert_eq!(of_farm(&farm, &Choice::all()).planned.lines_without, 2);
    let rate = of_farm(&farm, &Choice::all()).planned.rate.unwrap();
    assert_eq!((rate.n, &rate.bars[..]), (2, &[0, 0, 1, 0, 0, 1, 0, 0, 0][..]));
    assert!((rate.mean.to_fraction() + 0.035).abs() < 1e-9);
}
