//! Rinsing and cleaning out: dilution, where the last of the spray goes, what the next crop stands, what labels ask for.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use jiff::civil::date;
use proptest::prelude::*;
use tankard_core::farm::{
    Active, Farm, Field, Formulation, Line, NozzleSet, Pass, Product, ProductKind, Record, RecordField, Rig, Says,
    Statement,
};
use tankard_core::finding::{Basis, Finding, Level};
use tankard_core::plan::plan;
use tankard_core::quantity::{ActiveBasis, AsTyped, Quantity, Share, Volume};
use tankard_core::rig::clean_out::{between, takes_clean_out, usual_time};
use tankard_core::rig::rinse::{RinsePlan, left, rinses_to};
use tankard_tests::cases;

fn q<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

fn herbicide(name: &str, active: &str) -> Product {
    let mut product = Product::new(name, ProductKind::Herbicide, Formulation::SL);
    product.actives.push(Active {
        name: active.to_owned(),
        group: "4".to_owned(),
        basis: ActiveBasis::AcidEquivalent,
        content: q("480 g/L"),
    });
    product
}

fn pass(name: &str, day: i8, field: &str, product: &str) -> Pass {
    let mut pass = Pass::new(name, date(2031, 6, day));
    pass.fields.push(field.to_owned());
    "boom".clone_into(&mut pass.rig);
    pass.carrier = Some(q("15 gal/ac"));
    pass.mix.push(Line::new(product, q("16 fl oz/ac")));
    pass
}

/// Dicamba on corn on the 12th, glyphosate on soybean on the 14th, with one boom of 1200 gal in which 12 gal stay.
fn farm() -> Farm {
    let mut farm = Farm::new("Rinse");
    for (id, crop) in [("c", "corn"), ("s", "soybean")] {
        let mut field = Field::new(&format!("Field of {crop}"), q("80 ac"));
        crop.clone_into(&mut field.crop);
        farm.fields.insert(id.to_owned(), field);
    }
    let mut rig = Rig::new("Boom", q("1200 gal"));
    rig.residual = Some(q("12 gal"));
    rig.clean_water = Some(q("120 gal"));
    farm.rigs.insert("boom".to_owned(), rig);
    farm.products.insert("d".to_owned(), herbicide("Dicamba 480 SL (demo)", "dicamba"));
    farm.products.insert("g".to_owned(), herbicide("Glyphosate 480 SL (demo)", "glyphosate"));
    farm.products.insert("n".to_owned(), Product::new("Surfactant (demo)", ProductKind::Adjuvant, Formulation::SL));
    farm.passes.insert("first".to_owned(), pass("Corn", 12, "c", "d"));
    farm.passes.insert("second".to_owned(), pass("Beans", 14, "s", "g"));
    farm
}

fn rinsed(farm: &Farm) -> RinsePlan {
    plan(farm, "first").unwrap().rinse.unwrap()
}

fn found(farm: &Farm, words: &str) -> Option<Finding> {
    plan(farm, "first").unwrap().findings.into_iter().find(|finding| finding.text.contains(words))
}

proptest! {
    #![proptest_config(cases(256))]

    // Arithmetic: the same water in more rinses never leaves more, and never less than nothing.
    #[test]
    fn more_rinses_of_the_same_water_leave_less(residual in 0.1..100.0_f64, water in 0.1..500.0_f64, rinses in 1..6_u32) {
        let volume = Volume::from_litres;
        let of = |rinses: u32| left(volume(residual), volume(water / f64::from(rinses)), rinses).unwrap().to_fraction();
        prop_assert!(of(rinses + 1) < of(rinses) && of(rinses + 1) > 0.0 && of(1) < 1.0);
    }

    #[test]
    fn the_number_of_rinses_is_the_least_that_reaches(residual in 0.1..20.0_f64, each in 1.0..200.0_f64, parts in 2.0..1e5_f64) {
        let (residual, each, most) = (Volume::from_litres(residual), Volume::from_litres(each), Share::from_fraction(1.0 / parts));
        if let Some(number) = rinses_to(residual, each, most) {
            prop_assert!(!left(residual, each, number).unwrap().exceeds(most));
            prop_assert!(number == 1 || left(residual, each, number - 1).unwrap().exceeds(most));
        }
    }
}

#[test]
fn nothing_diluted_is_nothing_and_no_water_reaches_nothing() {
    assert_eq!(left(Volume::ZERO, Volume::ZERO, 3), None);
    assert_eq!(rinses_to(Volume::from_litres(10.0), Volume::ZERO, Share::from_percent(1.0)), None);
    let mut farm = farm();
    farm.rigs["boom"].clean_water = Some(q("0 gal"));
    farm.rigs["boom"].tank = q("0 gal");
    assert!(rinsed(&farm).ways.iter().all(|way| way.left == Share::from_percent(100.0)));
}

#[test]
fn no_rinse_is_enough_for_a_rig_that_is_said_to_run_dry_to_nothing() {
    let mut farm = farm();
    farm.rigs["boom"].residual = Some(q("0 gal"));
    farm.rigs["boom"].clean_water = Some(q("1200 gal"));
    let check = found(&farm, "no rig runs dry to nothing").unwrap();
    assert!(check.level == Level::Check && check.hint.contains("handbook"), "{check:?}");
    assert_eq!(plan(&farm, "first").unwrap().rinse, None);
    let check = found(&farm, "1/20,000").unwrap();
    assert!(check.level == Level::Check && check.text.contains("typed as nothing"), "{check:?}");
}

// Two rules a factor of three apart: Purdue (10 % of the tank for each rinse), and 10 % in three portions, which is said of a
// standard that was not at hand and so stands as common practice.
#[test]
fn the_two_rules_for_the_water_stay_apart() {
    let plan = rinsed(&farm());
    let of = |words: &str| plan.ways.iter().find(|way| way.basis.source().contains(words)).unwrap();
    let (purdue, parts) = (of("Purdue"), of(Basis::Practice.source()));
    assert!((purdue.each.to_us_gallons() - 120.0).abs() < 1e-9 && (parts.each.to_us_gallons() - 40.0).abs() < 1e-9);
    assert!(!purdue.on_board && parts.on_board);
    assert!(plan.ways.iter().all(|way| !way.basis.source().contains("ISO")), "no standard is named that was not read");
    // 12 ÷ 132 to the third is 1/1331; 12 ÷ 52 to the third 1.2 %.
    assert!((1.0 / purdue.left.to_fraction() - 1331.0).abs() < 1e-6);
    assert!((parts.left.to_percent() - 100.0 * (12.0_f64 / 52.0).powi(3)).abs() < 1e-9);
    // What is on board comes first, in three parts before one.
    assert!(plan.ways[0].on_board && plan.ways[0].rinses == 3);
    let single = plan.ways.iter().find(|way| way.rinses == 1).unwrap();
    assert!((single.left.to_percent() - 100.0 / 11.0).abs() < 1e-9);
}

#[test]
fn the_last_of_the_spray_has_its_ground() {
    let plan = rinsed(&farm());
    assert!((plan.last_ground.unwrap().to_acres() - 0.8).abs() < 1e-9);
    for word in ["12 gal", "0.8 ac", "neighbour", "well"] {
        assert!(plan.last.contains(word), "{}", plan.last);
    }
}

#[test]
fn lines_that_hold_much_are_said() {
    let mut farm = farm();
    farm.rigs["boom"].lines = Some(q("30 gal"));
    let ground = rinsed(&farm).priming.unwrap().ground.unwrap();
    assert!((ground.to_acres() - 2.0).abs() < 1e-9);
    assert!(found(&farm, "is not at full strength, on about 2 ac").is_some());
    farm.rigs["boom"].lines = Some(q("20 gal"));
    assert!(found(&farm, "full strength").is_none());
}

#[test]
fn a_rig_without_residual_is_asked_only_where_sets_are_typed() {
    let mut farm = farm();
    farm.rigs["boom"].residual = None;
    assert!(plan(&farm, "first").unwrap().rinse.is_none());
    // Whom traces hurt is said all the same.
    let check = found(&farm, "1/20,000").unwrap();
    assert_eq!((check.level, check.basis.source()), (Level::Check, "T. Wolf, on dicamba and sensitive soybean"));
    assert!(check.text.contains("what stays in Boom is not typed, so it cannot be reckoned"), "{}", check.text);
    "tomato".clone_into(&mut farm.fields["s"].crop);
    assert_eq!(
        found(&farm, "Traces of dicamba hurt this crop; what stays in Boom is not typed").unwrap().level,
        Level::Check
    );
    assert!(found(&farm, "rinsing is not reckoned").is_none());
    farm.rigs["boom"].sets.insert("x".to_owned(), NozzleSet::default());
    assert_eq!(found(&farm, "rinsing is not reckoned").unwrap().level, Level::Note);
}

// T. Wolf: sensitive soybean shows injury from 1/20,000 of the label rate of dicamba.
#[test]
fn a_sensitive_next_crop_asks_for_more_rinses_than_are_on_board() {
    let check = found(&farm(), "1/20,000").unwrap();
    assert_eq!(check.level, Level::Check);
    assert_eq!(check.basis, Basis::Published("T. Wolf, on dicamba and sensitive soybean".to_owned()));
    assert!(check.text.contains("\"Beans\" of 14 June 2031 goes to Field of soybean"), "{}", check.text);
    assert!(check.hint.starts_with("5 rinses of 120 gal each"), "{}", check.hint);
    // Three rinses with 1,200 gal on board: (12 ÷ 412)³ is 1/40,471.
    let mut farm = farm();
    farm.rigs["boom"].clean_water = Some(q("1200 gal"));
    assert_eq!(found(&farm, "1/20,000").unwrap().level, Level::Note);
    farm.rigs["boom"].clean_water = None;
    let check = found(&farm, "1/20,000").unwrap();
    assert!(check.level == Level::Check && check.text.contains("on board is not typed"), "{check:?}");
}

#[test]
fn who_is_not_hurt_is_not_warned_of() {
    let silent = |change: &dyn Fn(&mut Farm)| {
        let mut farm = farm();
        change(&mut farm);
        assert!(found(&farm, "1/20,000").is_none());
    };
    silent(&|farm| "corn".clone_into(&mut farm.fields["s"].crop));
    silent(&|farm| "demo bean, dicamba tolerant".clone_into(&mut farm.fields["s"].variety));
    silent(&|farm| farm.passes["second"].date = date(2031, 6, 11));
    silent(&|farm| "other".clone_into(&mut farm.passes["second"].rig));
    silent(&|farm| farm.passes["second"].mix.push(Line::new("d", q("16 fl oz/ac"))));
    silent(&|farm| "glyphosate".clone_into(&mut farm.products["d"].actives[0].name));
    silent(&|farm| {
        let mut record = Record::new("Beans", date(2031, 6, 14));
        record.pass = Some("second".into());
        let field = &farm.fields["s"];
        record.fields.insert("s".to_owned(), RecordField::new(&field.name, field.area.clone()));
        farm.records.insert("r".to_owned(), record);
    });
    // Nor is it said of corn that it cannot be told.
    let mut farm = farm();
    "Field corn".clone_into(&mut farm.fields["s"].crop);
    assert!(found(&farm, "cannot be told").is_none());
}

#[test]
fn a_salt_or_an_ester_is_the_active_and_another_active_is_not() {
    let warned = |active: &str, words: &str| {
        let mut farm = farm();
        active.clone_into(&mut farm.products["d"].actives[0].name);
        found(&farm, words).is_some()
    };
    for dicamba in [
        "dicamba diglycolamine",
        "dicamba, diglycolamine salt",
        "dicamba/DGA",
        "Dicamba (DGA)",
        "dicamba-BAPMA",
        "diglycolamine salt of dicamba",
    ] {
        assert!(warned(dicamba, "1/20,000"), "{dicamba}");
    }
    for phenoxy in ["2,4-D", "2,4-D choline", "2,4-D-dimethylammonium", "2,4-D, ethylhexyl ester", "2,4-D+surfactant"] {
        assert!(warned(phenoxy, "Traces of 2,4-D hurt"), "{phenoxy}");
    }
    for other in ["2,4-DB", "2,4-DB dimethylammonium", "2,4-DP", "MCPA"] {
        assert!(!warned(other, "Traces of 2,4-D") && !warned(other, "traces of 2,4-D"), "{other}");
    }
}

#[test]
fn a_crop_is_known_in_whatever_words_it_is_typed() {
    let crop = |crop: &str| {
        let mut farm = farm();
        crop.clone_into(&mut farm.fields["s"].crop);
        plan(&farm, "first").unwrap().findings
    };
    let says = |typed: &str, words: &str| crop(typed).iter().any(|finding| finding.text.contains(words));
    for typed in ["Soybeans", "soya", "soy", "field soybeans", "Soya beans", "soybean (edible)", "corn, soybean"] {
        assert!(says(typed, "1/20,000"), "{typed}");
        // What hurts it is said once.
        assert!(!says(typed, "Traces of dicamba hurt this crop") && !says(typed, "cannot be told"), "{typed}");
    }
    for typed in ["dry bean", "dry edible beans", "Tomatoes", "seed potatoes", "field peas"] {
        assert!(says(typed, "Traces of dicamba hurt this crop"), "{typed}");
    }
    // A crop that is neither known to be hurt nor known to stand it is not passed over.
    for typed in ["chickpea", "wheat under clover", "ornamentals"] {
        let words = format!(
            "goes to Field of soybean ({typed}); whether traces of dicamba hurt what grows there cannot be told"
        );
        let check = crop(typed).into_iter().find(|finding| finding.text.contains(&words)).unwrap();
        assert!(check.level == Level::Check && check.basis == Basis::Practice && !check.hint.is_empty(), "{check:?}");
    }
    assert!(says("", "goes to Field of soybean, whose crop is not typed; whether traces of dicamba hurt"));
    for typed in ["corn", "Winter wheat", "oats", "fallow"] {
        assert!(!says(typed, "dicamba"), "{typed}");
    }
    // Without the residual it is said too.
    let mut farm = farm();
    "chickpea".clone_into(&mut farm.fields["s"].crop);
    farm.rigs["boom"].residual = None;
    assert!(found(&farm, "cannot be told").is_some());
}

/// What hurts by its family hurts as any of its members, and as none of another (the families of `assets/actives.csv`).
#[test]
fn a_family_is_known_by_its_members() {
    let warned = |active: &str| {
        let mut farm = farm();
        "sugar beet".clone_into(&mut farm.fields["s"].crop);
        farm.products["d"].actives[0].name = active.to_owned();
        found(&farm, "Traces of sulfonylureas hurt this crop").is_some()
    };
    for (active, hurts) in [("nicosulfuron", true), ("rimsulfuron", true), ("mesotrione", false), ("glyphosate", false)]
    {
        assert_eq!(warned(active), hurts, "{active}");
    }
    // A hyphen and a space part a name alike.
    for active in ["2,4-D choline", "2,4-D-choline", "2,4 D choline"] {
        let mut farm = farm();
        "cotton".clone_into(&mut farm.fields["s"].crop);
        farm.products["d"].actives[0].name = active.to_owned();
        assert!(found(&farm, "Traces of 2,4-D hurt this crop").is_some(), "{active}");
    }
}

#[test]
fn only_a_variety_that_stands_it_is_not_warned_of() {
    let warned = |crop: &str, variety: &str| {
        let mut farm = farm();
        crop.clone_into(&mut farm.fields["s"].crop);
        variety.clone_into(&mut farm.fields["s"].variety);
        found(&farm, "1/20,000").is_some()
    };
    for stands in [
        "demo bean, dicamba tolerant",
        "Dicamba-tolerant",
        "demo bean, dicamba and glyphosate tolerant",
        "resistant to dicamba",
        "demo bean (dicamba tolerance), 2,4-D tolerant",
    ] {
        assert!(!warned("soybean", stands), "{stands}");
    }
    assert!(!warned("dicamba tolerant soybean", ""));
    for hurt in [
        "not dicamba tolerant",
        "no dicamba tolerance",
        "demo bean, dicamba-sensitive, glyphosate tolerant",
        "non-dicamba tolerant",
        "isn't dicamba tolerant",
        "isn’t dicamba tolerant",
        "dicamba intolerant",
        "glyphosate tolerant, next to dicamba",
        "glyphosate tolerant but dicamba hurts it",
        "tolerance to dicamba unknown",
    ] {
        assert!(warned("soybean", hurt), "{hurt}");
    }
    assert!(warned("soybean, not dicamba tolerant", ""));
    assert!(warned("dicamba tolerant soybean", "not dicamba tolerant"));
    // The comma in its name does not part "2,4-D" from its word, and standing 2,4-DB is not standing 2,4-D.
    let phenoxy = |variety: &str| {
        let mut farm = farm();
        "2,4-D".clone_into(&mut farm.products["d"].actives[0].name);
        variety.clone_into(&mut farm.fields["s"].variety);
        found(&farm, "Traces of 2,4-D hurt").is_some()
    };
    assert!(!phenoxy("2,4-D tolerant") && !phenoxy("demo bean,2,4-D tolerant"));
    assert!(phenoxy("no 2,4-D tolerance") && phenoxy("2,4-DB tolerant") && phenoxy("glyphosate tolerant,2,4-D hurts"));
}

#[test]
fn the_nearest_pass_of_the_rig_is_the_next() {
    let mut farm = farm();
    farm.passes.insert("between".to_owned(), pass("More corn", 13, "c", "d"));
    assert!(found(&farm, "1/20,000").is_none());
    assert!(rinsed(&farm).steps.is_empty());
    // On one day the order of the list decides.
    farm.passes["between"].date = date(2031, 6, 14);
    assert!(found(&farm, "1/20,000").is_some());
    // A time that one alone has does not put it before the other; where both have one, the time decides.
    farm.passes["between"].start = Some(jiff::civil::time(7, 0, 0, 0));
    assert!(found(&farm, "1/20,000").is_some());
    farm.passes["second"].start = Some(jiff::civil::time(13, 0, 0, 0));
    assert!(found(&farm, "1/20,000").is_none());
    // A pass that starts earlier on the same day does not come after.
    farm.passes["between"].rig.clear();
    farm.passes["first"].date = date(2031, 6, 14);
    farm.passes["first"].start = Some(jiff::civil::time(14, 0, 0, 0));
    assert!(found(&farm, "1/20,000").is_none());
    farm.passes["first"].start = Some(jiff::civil::time(6, 0, 0, 0));
    assert!(found(&farm, "1/20,000").is_some());
}

fn says(farm: &mut Farm, before: &str, how: &str) {
    let says = Says::CleanOut { before: before.to_owned(), how: how.to_owned() };
    farm.products["d"].label.push(Statement::new(says, "page 7"));
}

#[test]
fn the_label_comes_first_word_for_word() {
    let mut farm = farm();
    says(&mut farm, "soybean, cotton", "Triple rinse with ammonia; hold 15 min.");
    says(&mut farm, "", "Drain at once.");
    says(&mut farm, "tomato", "Not in this tank.");
    let steps = rinsed(&farm).steps;
    assert_eq!(steps[0].what, "Triple rinse with ammonia; hold 15 min.");
    assert_eq!(steps[0].basis, Basis::Label("Dicamba 480 SL (demo), page 7".to_owned()));
    assert_eq!(steps[1].what, "Drain at once.");
    assert!(steps.iter().all(|step| !step.what.contains("Not in this tank")));
    let place = |wanted: fn(&Basis) -> bool| steps.iter().position(|step| wanted(&step.basis)).unwrap();
    assert!(place(|basis| matches!(basis, Basis::Published(_))) < place(|basis| *basis == Basis::Practice));
    assert!(steps.last().unwrap().what.contains("gloves"));
    // Where the next crop is not known the label's word for it is not lost.
    farm.passes.shift_remove("second");
    assert!(rinsed(&farm).steps.iter().any(|step| step.what == "Before tomato: Not in this tank."));
    // Nor where the residual is not typed.
    let mut farm = self::farm();
    says(&mut farm, "soybean", "Triple rinse.");
    farm.rigs["boom"].residual = None;
    let note = found(&farm, "the rig is cleaned: Triple rinse.").unwrap();
    assert_eq!(note.basis, Basis::Label("Dicamba 480 SL (demo), page 7".to_owned()));
}

#[test]
fn the_same_pesticides_take_no_clean_out() {
    let mut farm = farm();
    assert!(takes_clean_out(&farm, "first", "second") && takes_clean_out(&farm, "second", "first"));
    assert!(!between(&farm, "first", "second").is_empty());
    farm.passes["second"].mix = farm.passes["first"].mix.clone();
    farm.passes["second"].mix.push(Line::new("n", q("0.25 % v/v")));
    assert!(!takes_clean_out(&farm, "first", "second") && between(&farm, "first", "second").is_empty());
    // One more pesticide needs no cleaning before it, and cleaning after it.
    farm.passes["second"].mix.push(Line::new("g", q("32 fl oz/ac")));
    assert!(!takes_clean_out(&farm, "first", "second") && takes_clean_out(&farm, "second", "first"));
    assert!(!takes_clean_out(&farm, "first", "nowhere"));
    assert!(usual_time().to_hours() > 0.0);
}
