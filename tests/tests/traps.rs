//! Traps in what people type and in how labels are read, each with what the planner must say.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use jiff::civil::date;
use tankard_core::farm::label::{OrderPlace, Stance};
use tankard_core::farm::record::RecordActive;
use tankard_core::farm::{
    Active, AdjuvantClass, Container, ContainerKind, Farm, Field, Formulation, Line, Pass, Period, Product,
    ProductKind, Record, RecordField, RecordLine, Rig, Says, Statement, Water,
};
use tankard_core::finding::Level;
use tankard_core::loads::FillStep;
use tankard_core::loads::card::cards;
use tankard_core::plan::{Plan, plan};
use tankard_core::quantity::{ActiveBasis, Amount, Area, AsTyped, IonContent, Quantity, Rate};

fn typed<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

/// One field of corn, one herbicide of 480 g ae/L at 32 fl oz/ac, 15 gal/ac, a 1,200 gal tank.
fn farm() -> Farm {
    let mut farm = Farm::new("Traps");
    let mut field = Field::new("Field", typed("80 ac"));
    "corn".clone_into(&mut field.crop);
    "V4".clone_into(&mut field.stage);
    farm.fields.insert("f".to_owned(), field);
    farm.waters.insert("w".to_owned(), Water { name: "Well".to_owned(), ..Water::default() });
    farm.rigs.insert("r".to_owned(), Rig::new("Boom", typed("1200 gal")));
    let mut herbicide = Product::new("Herbicide 480 SL (demo)", ProductKind::Herbicide, Formulation::SL);
    herbicide.actives.push(Active {
        name: "glyphosate".to_owned(),
        group: "9".to_owned(),
        basis: ActiveBasis::AcidEquivalent,
        content: typed("480 g/L"),
    });
    herbicide.label = vec![
        Statement::new(Says::ReEntry { hours: 4 }, "page 1"),
        Statement::new(Says::Wear { what: "gloves".to_owned() }, "page 1"),
        Statement::new(Says::HarvestInterval { days: 7 }, "page 2"),
    ];
    farm.products.insert("h".to_owned(), herbicide);
    let mut pass = Pass::new("Pass", date(2031, 6, 12));
    pass.fields.push("f".to_owned());
    "w".clone_into(&mut pass.water);
    "r".clone_into(&mut pass.rig);
    pass.carrier = Some(typed("15 gal/ac"));
    pass.mix.push(Line::new("h", typed("32 fl oz/ac")));
    farm.passes.insert("p".to_owned(), pass);
    farm
}

fn says(farm: &mut Farm, says: Says) {
    farm.products["h"].label.push(Statement::new(says, "page 3"));
}

fn rate(farm: &mut Farm, text: &str) {
    farm.passes["p"].mix[0].rate = typed(text);
}

fn planned(farm: &Farm) -> Plan {
    plan(farm, "p").unwrap()
}

fn found(farm: &Farm, level: Level, words: &str) -> bool {
    planned(farm).findings.iter().any(|finding| finding.level == level && finding.text.contains(words))
}

fn must(farm: &Farm, level: Level, words: &str) {
    assert!(found(farm, level, words), "no {level:?} \"{words}\" in {:#?}", planned(farm).findings);
}

fn record(pass: Option<&str>, day: i8, amount: &str) -> Record {
    Record {
        pass: pass.map(Into::into),
        fields: [("f".to_owned(), RecordField::new("Field", typed("80 ac")))].into(),
        lines: vec![RecordLine {
            actives: vec![RecordActive {
                name: "glyphosate".into(),
                group: "".into(),
                basis: ActiveBasis::AcidEquivalent,
                mass: typed("60 lb"),
            }],
            ..RecordLine::new("h", "Herbicide 480 SL (demo)", typed(amount))
        }],
        ..Record::new("Earlier", date(2031, 5, day))
    }
}

#[test]
fn a_decimal_below_the_stroke_counts() {
    for (a, b) in [
        ("8.5 lb/2.5 gal", "340 lb/100 gal"),
        ("1 qt/2.5 gal", "10 % v/v"),
        ("2 lb/0.5 ac", "4 lb/ac"),
        ("22 fl. oz./1.0 ac", "22 fl oz/ac"),
    ] {
        let (a, b) = (Rate::parse(a).unwrap(), Rate::parse(b).unwrap());
        let close = |x: f64, y: f64| (x / y - 1.0).abs() < 1e-12;
        assert!(match (a, b) {
            (Rate::MassPerSpray(a), Rate::MassPerSpray(b)) => close(a.to_grams_per_litre(), b.to_grams_per_litre()),
            (Rate::VolumePerSpray(a), Rate::VolumePerSpray(b)) => close(a.to_fraction(), b.to_fraction()),
            (Rate::MassPerArea(a), Rate::MassPerArea(b)) => close(a.to_base_units(), b.to_base_units()),
            (Rate::VolumePerArea(a), Rate::VolumePerArea(b)) => close(a.to_base_units(), b.to_base_units()),
            _ => false,
        });
    }
}

#[test]
fn texts_that_may_mean_two_things_are_refused() {
    assert!(Rate::parse("5 kg/a").unwrap_err().to_string().contains("acre or an are"));
    assert!(Rate::parse("1.5 pt/a").is_ok());
    assert!(Area::parse("50 a").is_err());
    assert!(IonContent::parse("7 gpg").is_err());
}

#[test]
fn bare_ounces_of_a_liquid_are_asked_about_with_or_without_a_density() {
    let mut farm = farm();
    rate(&mut farm, "22 oz/ac");
    must(&farm, Level::Stop, "\"oz\" may be fluid or weighed");
    farm.products["h"].density = Some(typed("11.3 lb/gal"));
    must(&farm, Level::Stop, "\"oz\" may be fluid or weighed");
    rate(&mut farm, "22 oz wt/ac");
    assert!(!found(&farm, Level::Stop, "oz"));
}

#[test]
fn only_a_statement_with_a_most_softens_a_stop() {
    let mut farm = farm();
    rate(&mut farm, "200 fl oz/ac");
    says(&mut farm, Says::Rate { least: Some(typed("16 fl oz/ac")), most: None });
    says(&mut farm, Says::Rate { least: None, most: Some(typed("32 fl oz/ac")) });
    must(&farm, Level::Stop, "is planned at");
    says(&mut farm, Says::Rate { least: None, most: Some(typed("2 lb/ac")) });
    must(&farm, Level::Stop, "is planned at");
    says(&mut farm, Says::Rate { least: None, most: Some(typed("256 fl oz/ac")) });
    must(&farm, Level::Check, "another statement of the label allows more");
}

#[test]
fn an_earlier_record_of_the_same_pass_counts() {
    let mut farm = farm();
    says(&mut farm, Says::SeasonTotal { most: typed("44 fl oz/ac"), per: Period::Year });
    farm.records.insert("r".to_owned(), record(Some("p"), 1, "20 gal"));
    must(&farm, Level::Stop, "brings Herbicide");
    must(&farm, Level::Check, "This pass was recorded on 1 May 2031");
    // The record of the very day is the pass itself.
    farm.records["r"].date = date(2031, 6, 12);
    assert!(!found(&farm, Level::Stop, "brings"));
}

#[test]
fn ids_of_what_is_gone_are_not_given_out_again() {
    let mut farm = farm();
    farm.records.insert("r".to_owned(), record(Some("2031-06-12-new-pass"), 1, "20 gal"));
    assert_eq!(farm.fresh_pass_id("2031-06-12 new pass"), "2031-06-12-new-pass-2");
    farm.products.shift_remove("h");
    assert_ne!(farm.fresh_product_id("h"), "h");
}

#[test]
fn limits_typed_for_another_spelling_of_the_crop_are_named() {
    let mut farm = farm();
    farm.products["h"].label.retain(|statement| !matches!(statement.says, Says::HarvestInterval { .. }));
    for limit in [
        Says::HarvestInterval { days: 400 },
        Says::SeasonTotal { most: typed("1 fl oz/ac"), per: Period::Year },
        Says::CropStage,
    ] {
        let mut statement = Statement::new(limit, "page 4");
        statement.crop = "field corn".to_owned();
        statement.to_stage = "V2".to_owned();
        farm.products["h"].label.push(statement);
    }
    must(
        &farm,
        Level::Check,
        "crop stage, most a season, harvest interval is typed for field corn and not judged on corn",
    );
    // A blank is no crop.
    for statement in &mut farm.products["h"].label {
        statement.crop = " ".to_owned();
    }
    must(&farm, Level::Stop, "may be used up to V2");
}

#[test]
fn what_is_not_typed_from_a_label_is_said_and_stands_on_the_card() {
    let mut farm = farm();
    farm.products.insert("b".to_owned(), Product::new("Bare 100 SL (demo)", ProductKind::Herbicide, Formulation::SL));
    farm.passes["p"].mix.push(Line::new("b", typed("1 fl oz/ac")));
    must(
        &farm,
        Level::Check,
        "From the label of Bare 100 SL (demo), a re-entry time and protective equipment and a harvest interval is not typed",
    );
    let card = &cards(&farm, &planned(&farm))[0];
    assert!(card.keep_out.ends_with("none typed for Bare 100 SL (demo)"), "{}", card.keep_out);
    assert!(card.harvest.ends_with("none typed for Bare 100 SL (demo)"), "{}", card.harvest);
}

#[test]
fn records_that_cannot_be_added_are_named() {
    let mut farm = farm();
    says(&mut farm, Says::SeasonTotal { most: typed("64 fl oz/ac"), per: Period::Year });
    says(
        &mut farm,
        Says::ActiveSeasonTotal { active: "glyphosate".to_owned(), most: typed("4 lb ae/ac"), per: Period::Year },
    );
    farm.records.insert("mass".to_owned(), record(None, 1, "22 oz"));
    must(&farm, Level::Check, "leaves out records: \"Earlier\" of 1 May 2031 has it as 22 oz");
    farm.records["mass"].lines[0].actives.clear();
    must(&farm, Level::Check, "does not say how much of it was in");
    farm.records["mass"].lines[0].actives.push(RecordActive {
        name: "glyphosate".into(),
        group: "".into(),
        basis: ActiveBasis::ActiveIngredient,
        mass: typed("60 lb"),
    });
    must(&farm, Level::Check, "counts it as ai");
    farm.records["mass"].fields["f"].area = typed("0 ac");
    must(&farm, Level::Check, "has no area");
    says(
        &mut farm,
        Says::ActiveSeasonTotal { active: "glyphosat".to_owned(), most: typed("0.1 lb ae/ac"), per: Period::Year },
    );
    must(&farm, Level::Check, "limits glyphosat a season, but no active of that name is typed");
}

#[test]
fn rounding_keeps_to_the_season_total_of_the_active() {
    let mut farm = farm();
    farm.measuring.liquid = Some(typed("1 gal"));
    farm.fields["f"].area = typed("10 ac");
    // 20.6 fl oz/ac of 480 g/L is 0.6447 lb ae/ac; the exact 1.609 gal would round to 2 gal.
    rate(&mut farm, "20.6 fl oz/ac");
    says(
        &mut farm,
        Says::ActiveSeasonTotal { active: "glyphosate".to_owned(), most: typed("0.65 lb ae/ac"), per: Period::Year },
    );
    let plan = planned(&farm);
    assert_eq!(plan.loads[0].items[0].measured.text, "1 gal");
    assert!(plan.loads[0].items[0].measured.held_down);
}

#[test]
fn ammonium_sulfate_in_solution_counts_by_its_salt() {
    let mut farm = farm();
    let mut solution = Product::new("Ammonium sulfate solution (demo)", ProductKind::Conditioner, Formulation::SL);
    solution.class = Some(AdjuvantClass::AmmoniumSulfate);
    farm.products.insert("s".to_owned(), solution);
    farm.passes["p"].mix.push(Line::new("s", typed("2.5 % v/v")));
    says(
        &mut farm,
        Says::Adjuvant {
            class: AdjuvantClass::AmmoniumSulfate,
            stance: Stance::Required,
            least: Some(typed("8.5 lb/100 gal")),
            most: Some(typed("17 lb/100 gal")),
            at_least: None,
            at_most: None,
        },
    );
    must(&farm, Level::Check, "How much ammonium sulfate Ammonium sulfate solution (demo) holds is not typed");
    assert!(!found(&farm, Level::Stop, "requires ammonium sulfate"));
    farm.products["s"].actives.push(Active {
        name: "ammonium sulfate".to_owned(),
        group: String::new(),
        basis: ActiveBasis::ActiveIngredient,
        content: typed("3.4 lb/gal"),
    });
    farm.products["s"].density = Some(typed("10.1 lb/gal"));
    // 2.5 % of 3.4 lb/gal is 8.5 lb/100 gal: just enough.
    assert!(!found(&farm, Level::Stop, "ammonium sulfate"));
    farm.passes["p"].mix[1].rate = typed("8.5 lb/100 gal");
    must(&farm, Level::Stop, "\"lb\" may be of the solution or of the salt");
    // At the most of 17 lb/100 gal the jug's mark must not pass it: 60 gal, not 63.
    farm.passes["p"].mix[1].rate = typed("17 lb ai/100 gal");
    farm.products["s"].measuring_step = Some(typed("7 gal"));
    let Amount::Volume(measured) =
        planned(&farm).loads[0].items.iter().find(|item| item.product == "s").unwrap().measured.amount
    else {
        panic!("a liquid")
    };
    assert!((measured.to_us_gallons() - 56.0).abs() < 1e-9);
    // What a label says for another crop does not bind this one.
    for statement in &mut farm.products["h"].label {
        if matches!(statement.says, Says::Adjuvant { .. }) {
            statement.crop = "soybean".to_owned();
        }
    }
    farm.passes["p"].mix.pop();
    assert!(!found(&farm, Level::Stop, "ammonium sulfate"));
}

#[test]
fn a_required_adjuvant_that_is_not_there_and_bounds_that_do_not_compare() {
    let mut farm = farm();
    says(
        &mut farm,
        Says::Adjuvant {
            class: AdjuvantClass::NonIonicSurfactant,
            stance: Stance::Required,
            least: None,
            most: Some(typed("1 lb/ac")),
            at_least: None,
            at_most: None,
        },
    );
    says(
        &mut farm,
        Says::Adjuvant {
            class: AdjuvantClass::CropOilConcentrate,
            stance: Stance::Required,
            least: None,
            most: None,
            at_least: None,
            at_most: None,
        },
    );
    must(&farm, Level::Stop, "requires non-ionic surfactant or crop oil concentrate, and the mix has none");
    let mut surfactant = Product::new("Surfactant (demo)", ProductKind::Adjuvant, Formulation::SL);
    surfactant.class = Some(AdjuvantClass::NonIonicSurfactant);
    farm.products.insert("n".to_owned(), surfactant);
    farm.passes["p"].mix.push(Line::new("n", typed("5 % v/v")));
    assert!(!found(&farm, Level::Stop, "requires"));
    must(&farm, Level::Check, "of an adjuvant cannot be compared");
}

#[test]
fn stage_windows_are_alternatives() {
    let mut farm = farm();
    for (from, to) in [("V1", "V5"), ("R1", "R2")] {
        let mut statement = Statement::new(Says::CropStage, "page 4");
        (statement.from_stage, statement.to_stage) = (from.to_owned(), to.to_owned());
        farm.products["h"].label.push(statement);
    }
    must(&farm, Level::Check, "stops at V5");
    farm.fields["f"].stage = "V9".to_owned();
    must(&farm, Level::Stop, "may be used from V1 to V5 or from R1 to R2");
}

#[test]
fn a_harvest_interval_beyond_the_calendar_is_a_stop() {
    let mut farm = farm();
    farm.fields["f"].harvest = Some(date(2031, 9, 1));
    says(&mut farm, Says::HarvestInterval { days: 4_000_000_000 });
    must(&farm, Level::Stop, "to harvest");
}

#[test]
fn the_first_fill_is_the_users() {
    let mut farm = farm();
    farm.passes["p"].first_fill = Some(typed("30 %"));
    let steps = &planned(&farm).loads[0].steps;
    let FillStep::Water { to } = steps[0] else { panic!("water first") };
    assert!((to.to_us_gallons() - 360.0).abs() < 1e-9);
    // A label that wants to be first at a mark of its own keeps it.
    let first = Says::MixingOrder { place: OrderPlace::First, tank_full: Some(typed("25 %")) };
    says(&mut farm, first);
    let FillStep::Water { to } = planned(&farm).loads[0].steps[0] else { panic!("water first") };
    assert!((to.to_us_gallons() - 300.0).abs() < 1e-9);
}

#[test]
fn water_soluble_bags_go_in_whole() {
    let mut farm = farm();
    let mut bags = Product::new("Bags (demo)", ProductKind::Herbicide, Formulation::WSP);
    bags.containers.push(Container {
        kind: ContainerKind::Bag,
        size: typed("1 lb"),
        full: 20,
        opened: None,
        lot: String::new(),
    });
    farm.products.insert("b".to_owned(), bags);
    farm.passes["p"].mix.push(Line::new("b", typed("0.31 oz wt/ac")));
    let plan = planned(&farm);
    let item = plan.loads[0].items.iter().find(|item| item.product == "b").unwrap();
    assert_eq!(item.measured.containers, "2 bags of 1 lb");
    must(&farm, Level::Check, "is measured as 2 lb");
}

#[test]
fn a_spray_without_water_and_a_field_larger_than_itself_are_stops() {
    let mut farm = farm();
    rate(&mut farm, "100 % v/v");
    must(&farm, Level::Stop, "leave no room for water");
    rate(&mut farm, "32 fl oz/ac");
    farm.passes["p"].parts.insert("f".to_owned(), typed("200 ac"));
    must(&farm, Level::Stop, "200 ac of Field are planned");
}

#[test]
fn a_sliver_of_a_load_is_named() {
    let mut farm = farm();
    farm.fields["f"].area = typed("80.001 ac");
    must(&farm, Level::Check, "Load 2 is only");
}

#[test]
fn an_unrecorded_pass_with_the_same_active_is_named() {
    let mut farm = farm();
    let mut other = farm.products["h"].clone();
    other.name = "Other 360 SL (demo)".to_owned();
    farm.products.insert("o".to_owned(), other);
    let mut earlier = farm.passes["p"].clone();
    earlier.name = "Before".to_owned();
    earlier.date = date(2031, 6, 1);
    earlier.mix[0].product = "o".to_owned();
    farm.passes.insert("q".to_owned(), earlier);
    must(&farm, Level::Check, "\"Before\" of 1 June 2031 also puts glyphosate on Field");
    // A record of an acre counts for that acre; what is left of the pass is named still.
    let ground = farm.fields["f"].area.clone();
    let mut small = record(Some("q"), 1, "1 qt");
    small.fields["f"].area = typed("1 ac");
    farm.records.insert("small".to_owned(), small);
    must(&farm, Level::Check, "also puts glyphosate on Field and is partly recorded: ");
    farm.records["small"].fields["f"].area = ground;
    assert!(!found(&farm, Level::Check, "also puts glyphosate on Field"));
}

#[test]
fn metric_farms_measure_in_metric_marks() {
    let mut farm = farm();
    farm.units = tankard_core::quantity::Units::Metric;
    rate(&mut farm, "1.6077 L/ha");
    assert_eq!(planned(&farm).loads[0].items[0].measured.text, "52.05 L");
}

#[test]
fn a_rate_of_nothing_is_a_stop() {
    let mut farm = farm();
    rate(&mut farm, "0 fl oz/ac");
    must(&farm, Level::Stop, "is in the mix at a rate of nothing");
}

#[test]
fn rounding_does_not_fall_below_the_least_unless_the_most_forbids() {
    let mut farm = farm();
    farm.measuring.liquid = Some(typed("1 gal"));
    farm.fields["f"].area = typed("10 ac");
    // 16 fl oz/ac on 10 ac is 1.25 gal, which would round to 1 gal.
    rate(&mut farm, "1 % v/v");
    farm.passes["p"].mix[0].at_least = Some(typed("16 fl oz/ac"));
    farm.passes["p"].mix[0].at_most = Some(typed("32 fl oz/ac"));
    assert_eq!(planned(&farm).loads[0].items[0].measured.text, "2 gal");
    farm.passes["p"].mix[0].at_most = Some(typed("20 fl oz/ac"));
    assert_eq!(planned(&farm).loads[0].items[0].measured.text, "1 gal");
}

#[test]
fn the_recommended_conditioner_stays_within_the_labels_range() {
    let mut farm = farm();
    says(
        &mut farm,
        Says::Adjuvant {
            class: AdjuvantClass::AmmoniumSulfate,
            stance: Stance::Preferred,
            least: Some(typed("8.5 lb/100 gal")),
            most: Some(typed("17 lb/100 gal")),
            at_least: None,
            at_most: None,
        },
    );
    let mut pounds = |magnesium: &str| {
        let water = &mut farm.waters["w"];
        (water.calcium, water.magnesium) = (Some(typed("0 ppm")), Some(typed(magnesium)));
        planned(&farm).water.recommended.unwrap().to_pounds_per_100_us_gallons()
    };
    // 0.014 lb/100 gal for each ppm of magnesium: 1.4, 14 and 28 lb.
    for (magnesium, expected) in [("100 ppm", 8.5), ("1000 ppm", 14.0), ("2000 ppm", 17.0)] {
        assert!((pounds(magnesium) - expected).abs() < 1e-9, "{magnesium}: {}", pounds(magnesium));
    }
}

#[test]
fn a_year_ends_at_its_turn_and_twelve_months_do_not() {
    let mut farm = farm();
    farm.passes["p"].date = date(2032, 1, 2);
    farm.records.insert("r".to_owned(), record(None, 1, "20 gal"));
    farm.records["r"].date = date(2031, 12, 31);
    says(&mut farm, Says::SeasonTotal { most: typed("40 fl oz/ac"), per: Period::Year });
    assert!(!found(&farm, Level::Stop, "brings"));
    says(&mut farm, Says::SeasonTotal { most: typed("40 fl oz/ac"), per: Period::TwelveMonths });
    must(&farm, Level::Stop, "in 12 months");
}

#[test]
fn leap_days_are_days() {
    let mut farm = farm();
    farm.passes["p"].date = date(2032, 2, 29);
    farm.records.insert("r".to_owned(), record(None, 1, "20 gal"));
    says(&mut farm, Says::Applications { most: 1, days_apart: 2, per: Period::TwelveMonths });
    // 28 February of the leap year is a day before 29 February, 1 March two days after 28 February of it.
    farm.records["r"].date = date(2032, 2, 28);
    must(&farm, Level::Stop, "this pass is 1 day after that, and its label keeps 2 days");
    farm.passes["p"].date = date(2032, 3, 1);
    assert!(!found(&farm, Level::Stop, "days between two"));
    // Twelve months after the leap day its application still counts on 28 February and no longer on 1 March.
    farm.records["r"].date = date(2032, 2, 29);
    farm.passes["p"].date = date(2033, 2, 28);
    must(&farm, Level::Stop, "application number 2");
    farm.passes["p"].date = date(2033, 3, 1);
    assert!(!found(&farm, Level::Stop, "application number 2"));
}

#[test]
fn a_second_record_of_the_same_day_is_another_application() {
    let mut farm = farm();
    says(&mut farm, Says::Applications { most: 1, days_apart: 1, per: Period::Year });
    farm.records.insert("itself".to_owned(), record(Some("p"), 1, "20 gal"));
    farm.records["itself"].date = date(2031, 6, 12);
    assert!(!found(&farm, Level::Stop, "application"));
    farm.records.insert("second".to_owned(), record(None, 1, "20 gal"));
    farm.records["second"].date = date(2031, 6, 12);
    must(&farm, Level::Stop, "application number 2");
    must(&farm, Level::Stop, "this pass is on the same day as that");
    // A line of nothing is no application.
    farm.records["second"].lines[0].amount = typed("0 gal");
    assert!(!found(&farm, Level::Stop, "application"));
}

#[test]
fn zero_days_and_months_forbid_nothing() {
    let mut farm = farm();
    farm.fields["f"].next_crop = "corn".to_owned();
    farm.fields["f"].harvest = Some(date(2031, 6, 12));
    farm.products["h"].label.retain(|said| !matches!(said.says, Says::HarvestInterval { .. }));
    farm.records.insert("r".to_owned(), record(None, 1, "20 gal"));
    farm.records["r"].date = date(2031, 6, 12);
    for zero in [
        Says::HarvestInterval { days: 0 },
        Says::PlantBack { next_crop: "corn".to_owned(), months: 0 },
        Says::Applications { most: 9, days_apart: 0, per: Period::Crop },
        Says::NotWith { what: "glyphosate".to_owned(), days: 0 },
        Says::NotWith { what: " , ".to_owned(), days: 9 },
        Says::ReEntry { hours: 0 },
        Says::RainFree { hours: 0 },
    ] {
        says(&mut farm, zero);
    }
    let stops: Vec<_> = planned(&farm).findings.into_iter().filter(|finding| finding.level == Level::Stop).collect();
    assert_eq!(stops, []);
    assert!(!found(&farm, Level::Note, "planted before"));
    assert!(!found(&farm, Level::Note, "on the day"));
}
