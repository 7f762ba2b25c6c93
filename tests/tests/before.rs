//! What a rig held before a pass: which pass it follows, why that matters, how it is cleaned out, and the line that stands on the card.
//! Dilution by hand: of a residual r each rinse with v leaves r ÷ (r + v).

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use jiff::civil::{date, time};
use tankard_core::farm::{
    Active, Day, Farm, Field, Formulation, InTank, Line, Pass, Product, ProductKind, Record, RecordField, RecordLine,
    Rig, Says, Statement,
};
use tankard_core::finding::{Basis, Finding, Level};
use tankard_core::language::Language;
use tankard_core::loads::card::cards;
use tankard_core::plan::plan;
use tankard_core::quantity::{ActiveBasis, AsTyped, Quantity};

fn q<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

fn herbicide(name: &str, active: &str, crop: &str) -> Product {
    let mut product = Product::new(name, ProductKind::Herbicide, Formulation::SC);
    product.actives.push(Active {
        name: active.to_owned(),
        group: String::new(),
        basis: ActiveBasis::ActiveIngredient,
        content: q("480 g/L"),
    });
    let mut rate = Statement::new(Says::Rate { least: Some(q("3 fl oz/ac")), most: Some(q("32 fl oz/ac")) }, "page 3");
    crop.clone_into(&mut rate.crop);
    product.label.push(rate);
    product
}

fn pass(name: &str, field: &str, products: &[&str]) -> Pass {
    let mut pass = Pass::new(name, date(2031, 6, 12));
    pass.fields.push(field.to_owned());
    "boom".clone_into(&mut pass.rig);
    pass.carrier = Some(q("15 gal/ac"));
    pass.mix.extend(products.iter().map(|product| Line::new(product, q("16 fl oz/ac"))));
    pass
}

/// Mesotrione and glyphosate on corn, glyphosate alone on soybeans, on one day with one rig: 800 gal, of which 8 stay, 80 gal to rinse.
fn farm() -> Farm {
    let mut farm = Farm::new("Before");
    for (id, crop) in [("c", "corn"), ("s", "soybeans")] {
        let mut field = Field::new(&format!("Field of {crop}"), q("22 ac"));
        crop.clone_into(&mut field.crop);
        farm.fields.insert(id.to_owned(), field);
    }
    let mut rig = Rig::new("Boom", q("800 gal"));
    rig.residual = Some(q("8 gal"));
    rig.clean_water = Some(q("80 gal"));
    farm.rigs.insert("boom".to_owned(), rig);
    farm.products.insert("m".to_owned(), herbicide("Mesotrione 4 SC (demo)", "mesotrione", "corn"));
    farm.products.insert("g".to_owned(), herbicide("Glyphosate 480 SL (demo)", "glyphosate", ""));
    farm.products.insert("d".to_owned(), herbicide("Dicamba 480 SL (demo)", "dicamba", ""));
    farm.passes.insert("corn".to_owned(), pass("Corn post", "c", &["m", "g"]));
    farm.passes.insert("soy".to_owned(), pass("Soy post", "s", &["g"]));
    farm
}

fn found(farm: &Farm, pass: &str) -> Vec<Finding> {
    let all = plan(farm, pass).unwrap().findings;
    all.into_iter().filter(|finding| finding.text.contains("which this mix does not hold")).collect()
}

fn first_step(farm: &Farm, pass: &str) -> (String, String, String) {
    let card = cards(farm, &plan(farm, pass).unwrap()).remove(0);
    let step = card.steps[0].clone();
    (step.what, step.hint, step.amount)
}

fn recorded(farm: &mut Farm, pass: &str, starts: i8) {
    let planned = farm.passes[pass].clone();
    let mut record = Record::new(&planned.name, planned.date);
    record.pass = Some(pass.into());
    record.start = Some(time(starts, 0, 0, 0));
    record.rig = "Boom".into();
    for id in &planned.fields {
        let field = &farm.fields[id];
        record.fields.insert(id.clone(), RecordField::new(&field.name, field.area.clone()));
    }
    for line in &planned.mix {
        let name = &farm.products[&line.product].name;
        record.lines.push(RecordLine::new(&line.product, name, q("3 gal")));
    }
    farm.records.insert(format!("r-{pass}"), record);
}

#[test]
fn where_nothing_decides_the_order_the_pass_that_would_need_a_clean_out_says_so() {
    let farm = farm();
    // Whatever was on soybeans may be in the tank on corn: the corn's mix holds it too.
    assert!(found(&farm, "corn").is_empty());
    let all = found(&farm, "soy");
    let [check] = all.as_slice() else { panic!("{all:?}") };
    assert_eq!(check.level, Level::Check);
    for words in [
        "\"Corn post\"",
        "not decided",
        "Mesotrione 4 SC (demo)",
        "rates for corn and none",
        "Field of soybeans (soybeans)",
    ] {
        assert!(check.text.contains(words), "{words}: {}", check.text);
    }
    assert!(!check.text.contains("Glyphosate"), "{}", check.text);
    assert_eq!(check.basis, Basis::Label("Mesotrione 4 SC (demo), page 3".to_owned()));
    // 8 ÷ (8 + 26.67) three times: 1.23 %, below the 2 % that Denmark allows at the nozzle (Deveau).
    for words in
        ["Spray this pass before \"Corn post\"", "3 rinses of 26.7 gal clean water", "1.23 %", "read what theirs say"]
    {
        assert!(check.hint.contains(words), "{words}: {}", check.hint);
    }
    let (what, hint, amount) = first_step(&farm, "soy");
    assert_eq!(what, "Sprayer clean of Mesotrione 4 SC (demo)");
    assert!(hint.starts_with("if Corn post came before"), "{hint}");
    assert_eq!(amount, "3 rinses of 26.7 gal");
    assert_eq!(first_step(&farm, "corn").0, "Water");
}

#[test]
fn a_decided_order_is_followed() {
    // Held at the first place, typed to start sooner, or going on with what it leaves: no clean-out.
    let mut held = farm();
    let mut day = Day::default();
    day.pinned.insert("soy".to_owned(), 1);
    held.days.insert("2031-06-12".to_owned(), day);
    let mut started = farm();
    started.passes["soy"].start = Some(time(6, 0, 0, 0));
    started.passes["corn"].start = Some(time(9, 0, 0, 0));
    let mut goes_on = farm();
    goes_on.passes["soy"].in_tank = Some(InTank { volume: q("20 gal"), from: "corn".to_owned() });
    for farm in [&held, &started, &goes_on] {
        assert!(found(farm, "soy").is_empty(), "{:?}", found(farm, "soy"));
        assert!(!first_step(farm, "soy").0.contains("clean"));
    }
    // The other way round it surely follows.
    started.passes["soy"].start = Some(time(11, 0, 0, 0));
    held.days["2031-06-12"].pinned.insert("soy".to_owned(), 2);
    let mut earlier = farm();
    earlier.passes["corn"].date = date(2031, 6, 11);
    for farm in [&held, &started, &earlier] {
        let all = found(farm, "soy");
        assert!(all.len() == 1 && all[0].text.contains("this pass follows \"Corn post\""), "{all:?}");
        assert!(!all[0].hint.contains("Spray this pass before"), "{}", all[0].hint);
        assert_eq!(first_step(farm, "soy").1.split(';').next(), Some("after Corn post"));
    }
    // On another rig, or once the pass is recorded itself, there is nothing to say.
    let mut other = farm();
    other.rigs.insert("other".to_owned(), Rig::new("Other", q("800 gal")));
    "other".clone_into(&mut other.passes["soy"].rig);
    let mut done = farm();
    recorded(&mut done, "soy", 8);
    assert!(found(&other, "soy").is_empty() && found(&done, "soy").is_empty());
}

#[test]
fn the_last_record_of_the_rig_counts() {
    let mut farm = farm();
    recorded(&mut farm, "corn", 6);
    let all = found(&farm, "soy");
    assert!(
        all.len() == 1 && all[0].text.starts_with("Boom last sprayed \"Corn post\" of 12 June 2031, as recorded"),
        "{all:?}"
    );
    assert_eq!(first_step(&farm, "soy").0, "Sprayer clean of Mesotrione 4 SC (demo)");
    // What was written of cleaning is told; whether it was enough a person decides.
    farm.records["r-corn"].clean_out = "Triple rinse after".into();
    assert!(found(&farm, "soy")[0].hint.contains("Its record says of cleaning: Triple rinse after."));
    // Without any product in the record, what was planned tells.
    let mut bare = farm.clone();
    bare.records["r-corn"].lines.clear();
    assert_eq!(first_step(&bare, "soy").0, "Sprayer clean of Mesotrione 4 SC (demo)");
    // The pass may be gone, and the product too.
    farm.passes.shift_remove("corn");
    farm.records["r-corn"].pass = None;
    farm.products.shift_remove("m");
    let all = found(&farm, "soy");
    assert!(all.len() == 1 && all[0].text.contains("Mesotrione 4 SC (demo)"), "{all:?}");
    assert_eq!(all[0].basis, Basis::Practice);
    // A record after the day of the pass was no pass before it, nor was one of another rig.
    farm.records["r-corn"].date = date(2031, 6, 13);
    assert!(found(&farm, "soy").is_empty());
    farm.records["r-corn"].date = date(2031, 6, 12);
    farm.records["r-corn"].rig = "Another".into();
    assert!(found(&farm, "soy").is_empty());
}

#[test]
fn what_a_label_says_comes_first_then_what_is_published() {
    let mut farm = farm();
    farm.passes["corn"].mix = vec![Line::new("d", q("16 fl oz/ac"))];
    farm.passes["corn"].date = date(2031, 6, 11);
    let all = found(&farm, "soy");
    assert!(all[0].text.contains("1/20,000 of the label rate"), "{}", all[0].text);
    assert!(matches!(&all[0].basis, Basis::Published(source) if source.starts_with("T. Wolf")), "{:?}", all[0].basis);
    // (8 ÷ 88)⁵ is the first below 1 in 20,000 (11⁴ = 14,641); the 80 gal on board do not reach it.
    assert_eq!(first_step(&farm, "soy").2, "5 rinses of 80 gal");
    let says = Says::CleanOut { before: "soybeans".to_owned(), how: "Rinse with ammonia.".to_owned() };
    farm.products["d"].label.push(Statement::new(says, "page 7"));
    let all = found(&farm, "soy");
    assert!(all[0].text.contains("Dicamba 480 SL (demo) asks for cleaning: Rinse with ammonia"), "{}", all[0].text);
    assert_eq!(all[0].basis, Basis::Label("Dicamba 480 SL (demo), page 7".to_owned()));
    assert!(first_step(&farm, "soy").1.ends_with("; Rinse with ammonia"), "{:?}", first_step(&farm, "soy"));
    // Of a rig of which it is not typed what stays in it, the published rinses stand, and no strength is claimed.
    farm.rigs["boom"].residual = None;
    assert!(found(&farm, "soy")[0].hint.contains("3 rinses of 80 gal clean water each"));
    assert!(!found(&farm, "soy")[0].hint.contains("of the strength"));
}

#[test]
fn the_line_stands_on_the_first_load_alone_and_in_the_languages_of_the_card() {
    let mut farm = farm();
    farm.passes["corn"].date = date(2031, 6, 11);
    farm.passes["soy"].fill_to = Some(q("200 gal"));
    farm.card_languages = vec![Language::Spanish, Language::English];
    let all = cards(&farm, &plan(&farm, "soy").unwrap());
    assert_eq!(all.len(), 2);
    assert_eq!(
        all[0].steps[0].what,
        "Aspersora limpia de Mesotrione 4 SC (demo) / Sprayer clean of Mesotrione 4 SC (demo)"
    );
    assert_eq!(all[0].steps[0].number, None);
    assert!(all[1].steps.iter().all(|step| !step.what.contains("clean")), "{:?}", all[1].steps);
}
