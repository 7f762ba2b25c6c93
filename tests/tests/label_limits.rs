//! Every limit of a label, on both sides of it. The limits are typed here as a label would name them, so each check is by the
//! calendar or by hand, as the comment beside it says.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use jiff::civil::{Date, date};
use proptest::prelude::*;
use tankard_core::farm::record::RecordActive;
use tankard_core::farm::{
    Active, AdjuvantClass, CarrierKind, Droplets, Farm, Field, Formulation, Law, Line, Neighbour, Pass, Period,
    Product, ProductKind, Record, RecordField, RecordLine, Resistant, Rig, Says, Statement, Water, When,
};
use tankard_core::finding::{Basis, Finding, Level};
use tankard_core::loads::card::cards;
use tankard_core::plan::plan;
use tankard_core::quantity::{ActiveBasis, Amount, AsTyped, Quantity};
use tankard_core::season::{Log, too_much};
use tankard_tests::cases;

fn q<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

fn product(name: &str, active: &str, group: &str) -> Product {
    let mut product = Product::new(name, ProductKind::Herbicide, Formulation::SL);
    product.actives.push(Active {
        name: active.to_owned(),
        group: group.to_owned(),
        basis: ActiveBasis::ActiveIngredient,
        content: q("480 g/L"),
    });
    product
}

/// 80 ac of soybean at V3; "Alpha" with an active of group 9 in the mix, "Beta" with one of group 14 in the shed.
fn farm() -> Farm {
    let mut farm = Farm::new("Limits");
    let mut field = Field::new("Mill field", q("80 ac"));
    "soybean".clone_into(&mut field.crop);
    "V3".clone_into(&mut field.stage);
    farm.fields.insert("f".to_owned(), field);
    farm.waters.insert("w".to_owned(), Water { name: "Well".to_owned(), ..Water::default() });
    let mut rig = Rig::new("Boom", q("1200 gal"));
    rig.droplets = Some(Droplets::Coarse);
    farm.rigs.insert("r".to_owned(), rig);
    farm.products.insert("a".to_owned(), product("Alpha 480 SL (demo)", "alphazine", "9"));
    farm.products.insert("b".to_owned(), product("Beta 480 SL (demo)", "betafen", "14"));
    let mut pass = Pass::new("Pass", date(2031, 6, 12));
    pass.fields.push("f".to_owned());
    "w".clone_into(&mut pass.water);
    "r".clone_into(&mut pass.rig);
    pass.carrier = Some(q("15 gal/ac"));
    pass.mix.push(Line::new("a", q("32 fl oz/ac")));
    farm.passes.insert("p".to_owned(), pass);
    farm
}

/// A farm on which Alpha's label says one thing, on page 3.
fn saying(says: Says) -> Farm {
    let mut farm = farm();
    farm.products["a"].label.push(Statement::new(says, "page 3"));
    farm
}

fn statement(farm: &mut Farm) -> &mut Statement {
    farm.products["a"].label.last_mut().unwrap()
}

/// Records a product over the whole field at 32 fl oz/ac: 20 gal on 80 ac.
fn record(farm: &mut Farm, product: &str, day: Date) {
    let shed = &farm.products[product];
    let line = RecordLine {
        actives: shed
            .actives
            .iter()
            .map(|active| RecordActive {
                name: (&active.name).into(),
                group: (&active.group).into(),
                basis: active.basis,
                // 20 gal of 480 g/L: 20 × 3.785 L × 480 g = 36.34 kg.
                mass: q("36.34 kg"),
            })
            .collect(),
        ..RecordLine::new(product, &shed.name, q("20 gal"))
    };
    let field = RecordField { crop: "soybean".into(), ..RecordField::new("Mill field", q("80 ac")) };
    let id = format!("r{}", farm.records.len());
    let mut record = Record::new(&format!("Earlier {id}"), day);
    record.fields.insert("f".to_owned(), field);
    record.lines.push(line);
    farm.records.insert(id, record);
}

fn found(farm: &Farm, words: &str) -> Option<Finding> {
    plan(farm, "p").unwrap().findings.into_iter().find(|finding| finding.text.contains(words))
}

/// There is a finding of the level, with the words, on the basis of the page.
fn must(farm: &Farm, level: Level, words: &str) -> Finding {
    let all = plan(farm, "p").unwrap().findings;
    all.iter()
        .find(|finding| finding.level == level && finding.text.contains(words))
        .unwrap_or_else(|| panic!("no {level:?} \"{words}\" in {all:#?}"))
        .clone()
}

fn of_the_label(farm: &Farm, level: Level, words: &str) -> Finding {
    let finding = must(farm, level, words);
    assert_eq!(finding.basis, Basis::Label("Alpha 480 SL (demo), page 3".to_owned()));
    finding
}

fn must_not(farm: &Farm, words: &str) {
    assert_eq!(found(farm, words), None);
}

#[test]
fn totals_count_over_their_period() {
    // Two applications of 32 fl oz/ac are 64 fl oz/ac, which is 4 pt/ac: over 60, within 64.
    let total = |most: &str, per| Says::SeasonTotal { most: q(most), per };
    for (per, earlier, words) in [
        (Period::Year, date(2031, 1, 1), "in 2031"),
        (Period::Crop, date(2031, 5, 1), "on this crop"),
        (Period::TwelveMonths, date(2030, 6, 13), "in 12 months"),
    ] {
        let mut farm = saying(total("60 fl oz/ac", per));
        farm.fields["f"].planted = Some(date(2031, 5, 1));
        record(&mut farm, "a", earlier);
        of_the_label(
            &farm,
            Level::Stop,
            &format!("brings Alpha 480 SL (demo) to 4 pt/ac {words}; the label's most is 60 fl oz/ac"),
        );
        // A day earlier lies outside of each period.
        farm.records["r0"].date = earlier.yesterday().unwrap();
        must_not(&farm, "brings Alpha");
        farm.records["r0"].date = earlier;
        statement(&mut farm).says = total("64 fl oz/ac", per);
        must_not(&farm, "brings Alpha");
    }
}

/// Of 62 fl oz/ac 32 are used, so 30 on 80 ac, 2,400 fl oz, may still go out. The 2,392 planned lie nearer to the mark at 2,500 of a
/// jug with marks of 500, and are measured to the one below. So are they where 1.94 lb/ac of the active are allowed and 1.00 are used:
/// 29.9 fl oz of 4.0058 lb/gal hold 0.936.
#[test]
fn what_a_season_total_leaves_holds_a_measured_amount_down() {
    let measured = |farm: &Farm| match plan(farm, "p").unwrap().loads[0].items[0].measured.amount {
        Amount::Volume(volume) => volume.to_us_fluid_ounces().round(),
        Amount::Mass(_) => panic!("a liquid"),
    };
    let per = Period::TwelveMonths;
    let of = |most: &str| match most.strip_suffix(" of the active") {
        Some(most) => Says::ActiveSeasonTotal { active: "alphazine".to_owned(), most: q(most), per },
        None => Says::SeasonTotal { most: q(most), per },
    };
    for (most, expected) in [
        ("62 fl oz/ac", 2000.0),
        ("64 fl oz/ac", 2500.0),
        ("1.94 lb ai/ac of the active", 2000.0),
        ("2 lb ai/ac of the active", 2500.0),
    ] {
        let mut farm = saying(of(most));
        farm.measuring.liquid = Some(q("500 fl oz"));
        farm.passes["p"].mix[0].rate = q("29.9 fl oz/ac");
        record(&mut farm, "a", date(2031, 4, 1));
        assert_eq!(measured(&farm).to_string(), expected.to_string(), "{most}");
    }
}

/// Of a dry product 0.2 lb/ac were sprayed, 16 lb on 80 ac. Another 0.2 are 0.4, over 0.375. 0.16 are within it, and of the 0.175 that are
/// left 14 lb go on 80 ac: the 12.8 planned are measured to 10 lb where the scale shows 5, not to 15.
#[test]
fn totals_of_a_dry_product_add_and_leave_masses() {
    let mut farm = saying(Says::SeasonTotal { most: q("0.375 lb/ac"), per: Period::TwelveMonths });
    farm.products["a"].formulation = Formulation::WG;
    farm.products["a"].actives[0].content = q("75 % w/w");
    farm.measuring.dry = Some(q("5 lb"));
    record(&mut farm, "a", date(2031, 4, 1));
    farm.records["r0"].lines[0].amount = q("16 lb");
    farm.passes["p"].mix[0].rate = q("0.2 lb/ac");
    of_the_label(&farm, Level::Stop, "in 12 months; the label's most is 0.375 lb/ac");
    farm.passes["p"].mix[0].rate = q("0.16 lb/ac");
    must_not(&farm, "the label's most is");
    let plan = plan(&farm, "p").unwrap();
    let Amount::Mass(mass) = plan.loads[0].items[0].measured.amount else { panic!("a dry product") };
    assert!((mass.to_pounds() - 10.0).abs() < 1e-9, "{mass:?}");
}

#[test]
fn totals_of_an_active_add_the_products_that_share_it() {
    // 480 g/L is 4.0058 lb/US gal; 32 fl oz is a quarter gallon: 1.00 lb/ac of each product, 2.00 of both.
    let total = |most: &str| Says::ActiveSeasonTotal {
        active: "alphazine".to_owned(),
        most: q(most),
        per: Period::TwelveMonths,
    };
    let mut farm = saying(total("2.5 lb ai/ac"));
    farm.products.insert("c".to_owned(), product("Gamma 480 SL (demo)", "alphazine", "9"));
    farm.passes["p"].mix.push(Line::new("c", q("32 fl oz/ac")));
    must_not(&farm, "brings alphazine");
    record(&mut farm, "c", date(2030, 9, 1));
    of_the_label(&farm, Level::Stop, "brings alphazine to 3 lb ai/ac in 12 months");
    farm.records["r0"].date = date(2030, 6, 12);
    must_not(&farm, "brings alphazine");
}

/// What was really sprayed is held against the season totals too: two records of 32 fl oz/ac are 64, over 60; two of 1.00 lb are 2.00,
/// over 1.5. Each record is asked what had come to its field up to its day.
#[test]
fn a_record_that_brings_a_field_above_a_season_total_says_so() {
    let mut farm = saying(Says::SeasonTotal { most: q("60 fl oz/ac"), per: Period::Year });
    let most = Says::ActiveSeasonTotal { active: "alphazine".to_owned(), most: q("1.5 lb ai/ac"), per: Period::Year };
    farm.products["a"].label.push(Statement::new(most, "page 4"));
    for day in [date(2031, 5, 1), date(2031, 6, 1), date(2032, 5, 1)] {
        record(&mut farm, "a", day);
    }
    let said = |farm: &Farm, id: &str| {
        let found = too_much::judge(farm, &Log::of(farm), &id.to_owned(), &farm.records[id]);
        assert!(found.iter().all(|finding| finding.level == Level::Check && matches!(finding.basis, Basis::Label(_))));
        found.into_iter().map(|finding| finding.text).collect::<Vec<_>>()
    };
    assert_eq!(
        said(&farm, "r1"),
        [
            "\"Earlier r1\" of 1 June 2031 brings Mill field to 4 pt/ac of Alpha 480 SL (demo) in 2031; the label as it is typed now \
             allows 60 fl oz/ac",
            "\"Earlier r1\" of 1 June 2031 brings Mill field to 2 lb ai/ac of alphazine in 2031; the label as it is typed now allows \
             1.5 lb ai/ac",
        ]
    );
    assert!(said(&farm, "r0").is_empty() && said(&farm, "r2").is_empty());
    // Another crop's total does not speak of it; a condition that nobody kept may.
    farm.products["a"].label[0].crop = "corn".to_owned();
    farm.products["a"].label[1].when.push(When::LargeWeeds);
    let now = said(&farm, "r1");
    assert!(now.len() == 1 && now[0].ends_with("may allow 1.5 lb ai/ac"), "{now:?}");
}

/// An ester is the same active by another name (the names stand in `assets/actives.csv`), so its records count: 1 + 1 + 1 lb.
#[test]
fn a_total_of_an_active_counts_it_by_all_its_names() {
    let total =
        Says::ActiveSeasonTotal { active: "quizalofop".to_owned(), most: q("2.5 lb ai/ac"), per: Period::TwelveMonths };
    let mut farm = saying(total);
    farm.products["a"].actives[0].name = "Quizalofop-P-ethyl".to_owned();
    record(&mut farm, "a", date(2031, 5, 1));
    must_not(&farm, "no active of that name");
    must_not(&farm, "brings quizalofop");
    record(&mut farm, "a", date(2031, 5, 20));
    of_the_label(&farm, Level::Stop, "brings quizalofop to 3 lb ai/ac in 12 months");
}

#[test]
fn a_crop_without_a_day_of_planting_falls_back_to_the_year_and_says_so() {
    let mut farm = saying(Says::SeasonTotal { most: q("60 fl oz/ac"), per: Period::Crop });
    record(&mut farm, "a", date(2031, 4, 1));
    must(&farm, Level::Check, "its day of planting is not typed, so the calendar year is counted");
    of_the_label(&farm, Level::Stop, "to 4 pt/ac in 2031");
    farm.fields["f"].planted = Some(date(2031, 5, 1));
    must_not(&farm, "day of planting");
    must_not(&farm, "brings Alpha");
    farm.fields["f"].planted = Some(date(2031, 7, 1));
    must(&farm, Level::Check, "it is planted after this pass, so the calendar year is counted");
}

#[test]
fn the_number_of_applications() {
    let mut farm = saying(Says::Applications { most: 2, days_apart: 0, per: Period::Year });
    record(&mut farm, "a", date(2031, 5, 1));
    must_not(&farm, "application number");
    record(&mut farm, "a", date(2031, 5, 20));
    of_the_label(
        &farm,
        Level::Stop,
        "this pass would be application number 3 of Alpha 480 SL (demo) in 2031 after 1 May 2031, 20 May 2031; its label allows 2",
    );
    // Another product, another year, another field are no applications of it.
    farm.records["r1"].date = date(2030, 12, 31);
    must_not(&farm, "application number");
    statement(&mut farm).says = Says::Applications { most: 2, days_apart: 0, per: Period::TwelveMonths };
    of_the_label(&farm, Level::Stop, "application number 3");
    farm.records["r1"].lines[0].product = "b".into();
    must_not(&farm, "application number");
    // An earlier pass that is not recorded is named.
    let mut other = farm.passes["p"].clone();
    (other.name, other.date) = ("First".to_owned(), date(2030, 12, 1));
    farm.passes.insert("q".to_owned(), other);
    must(&farm, Level::Check, "is not recorded, so season totals, number and spacing of applications do not count it");
}

/// Two records of half a field each, of one pass: within three days they are one application, later two, unless both name parts that
/// differ (common practice, no source).
#[test]
fn records_of_one_pass_are_one_application_or_two() {
    for (day, first, second, one) in [
        (22, "", "", true),
        (22, "", "north", true),
        (25, "", "", false),
        (25, "", "north", false),
        (25, "south", "", false),
        (25, "south", "north", true),
        (22, "north", "North", false),
    ] {
        let mut farm = saying(Says::Applications { most: 2, days_apart: 0, per: Period::Year });
        let other = farm.passes["p"].clone();
        farm.passes.insert("q".to_owned(), other);
        for (part, day) in [(first, 20), (second, day)] {
            record(&mut farm, "a", date(2031, 5, day));
            let record = farm.records.values_mut().last().unwrap();
            record.pass = Some("q".into());
            record.fields["f"].area = q("40 ac");
            record.fields["f"].part = part.into();
        }
        assert_eq!(found(&farm, "application number 3").is_none(), one, "{day} May, \"{first}\" and \"{second}\"");
    }
}

#[test]
fn days_between_two_applications() {
    let mut farm = saying(Says::Applications { most: 9, days_apart: 14, per: Period::Year });
    record(&mut farm, "a", date(2031, 5, 29));
    must_not(&farm, "days between two");
    farm.records["r0"].date = date(2031, 5, 30);
    let stop =
        of_the_label(&farm, Level::Stop, "this pass is 13 days after that, and its label keeps 14 days between two");
    assert_eq!(stop.hint, "Not before 13 June 2031.");
    // Over the turn of the year the days count on.
    farm.passes["p"].date = date(2032, 1, 5);
    farm.records["r0"].date = date(2031, 12, 30);
    of_the_label(&farm, Level::Stop, "6 days after");
    // What is recorded after this day counts too.
    farm.records["r0"].date = date(2032, 1, 10);
    of_the_label(&farm, Level::Stop, "5 days before");
    // Half the field then and half the field now may be two halves.
    farm.records["r0"].fields["f"].area = q("40 ac");
    farm.passes["p"].parts.insert("f".to_owned(), q("40 ac"));
    of_the_label(&farm, Level::Check, "unless they lie on different parts");
}

#[test]
fn crop_stages_across_scales() {
    // R1 of soybean is BBCH 60, first flowers open: Meier (ed.) 2001 and Iowa State University Extension, PM 1945, from memory.
    let mut farm = saying(Says::CropStage);
    statement(&mut farm).to_stage = "BBCH 59".to_owned();
    must_not(&farm, "may be used up to");
    farm.fields["f"].stage = "R1".to_owned();
    of_the_label(&farm, Level::Stop, "Mill field is at R1; Alpha 480 SL (demo) may be used up to BBCH 59");
    farm.fields["f"].stage = "knee high".to_owned();
    of_the_label(&farm, Level::Check, "\"knee high\", which cannot be compared");
    // Reproductive stages come after all of leaves and the tassel, and in the order of their numbers.
    statement(&mut farm).to_stage = "R3".to_owned();
    for (stage, allowed) in [("V12", true), ("VT", true), ("R1", true), ("R3", true), ("R4", false), ("R6", false)] {
        farm.fields["f"].stage = stage.to_owned();
        assert_eq!(found(&farm, "may be used up to").is_none(), allowed, "{stage}");
    }
}

#[test]
fn days_to_harvest() {
    let mut farm = saying(Says::HarvestInterval { days: 45 });
    // 45 days after 12 June is 27 July.
    farm.fields["f"].harvest = Some(date(2031, 7, 27));
    must_not(&farm, "harvest");
    farm.fields["f"].harvest = Some(date(2031, 7, 26));
    let stop =
        of_the_label(&farm, Level::Stop, "keeps 45 days to harvest; Mill field is expected to be harvested 44 days");
    assert!(stop.hint.contains("27 July 2031"));
    // A record later than this pass binds the harvest as well, and is past stopping.
    farm.passes["p"].mix[0].product = "b".to_owned();
    record(&mut farm, "a", date(2031, 6, 20));
    of_the_label(
        &farm,
        Level::Check,
        "had Alpha 480 SL (demo) on 20 June 2031, which keeps it from harvest until 4 August 2031",
    );
}

#[test]
fn hours_to_re_entry_are_said_once_with_the_longest() {
    let mut farm = saying(Says::ReEntry { hours: 12 });
    farm.products["b"].label.push(Statement::new(Says::ReEntry { hours: 24 }, "page 1"));
    of_the_label(&farm, Level::Note, "Nobody enters without protection for 12 h");
    farm.passes["p"].mix.push(Line::new("b", q("1 pt/ac")));
    must(&farm, Level::Note, "for 24 h after the last of the spray, by the label of Beta 480 SL (demo)");
    must_not(&farm, "for 12 h");
    statement(&mut farm).says = Says::ReEntry { hours: 0 };
    farm.passes["p"].mix.pop();
    must_not(&farm, "Nobody enters");
}

#[test]
fn the_next_crop_waits() {
    let mut farm = saying(Says::PlantBack { next_crop: "corn, sorghum".to_owned(), months: 10 });
    must_not(&farm, "planted before");
    farm.fields["f"].next_crop = "Corn".to_owned();
    // Ten months after 12 June 2031 is 12 April 2032.
    of_the_label(&farm, Level::Note, "Mill field: Corn may not be planted before 12 April 2032, 10 months after Alpha");
    // What is free before the crop that stands is harvested binds nobody.
    farm.fields["f"].harvest = Some(date(2032, 4, 12));
    must_not(&farm, "planted before");
    farm.fields["f"].harvest = None;
    farm.fields["f"].next_crop = "sugar beet".to_owned();
    of_the_label(&farm, Level::Check, "names when other crops may follow, but not sugar beet");
    // "Other crops" takes it in.
    let others = Says::PlantBack { next_crop: "all other crops".to_owned(), months: 18 };
    farm.products["a"].label.push(Statement::new(others, "page 3"));
    of_the_label(&farm, Level::Note, "sugar beet may not be planted before 12 December 2032, 18 months");
    // The month that has no such day ends with its last: 31 August and six months, in a leap year.
    farm.passes["p"].date = date(2031, 8, 31);
    statement(&mut farm).says = Says::PlantBack { next_crop: "sugar beet".to_owned(), months: 6 };
    of_the_label(&farm, Level::Note, "before 29 February 2032");
}

#[test]
fn what_earlier_records_still_bind() {
    let mut farm = saying(Says::PlantBack { next_crop: "soybean".to_owned(), months: 9 });
    farm.passes["p"].mix[0].product = "b".to_owned();
    farm.fields["f"].planted = Some(date(2031, 5, 10));
    record(&mut farm, "a", date(2030, 8, 10));
    must_not(&farm, "its label keeps 9 months");
    farm.records["r0"].date = date(2030, 8, 11);
    of_the_label(
        &farm,
        Level::Check,
        "had Alpha 480 SL (demo) on 11 August 2030; its label keeps 9 months to soybean, until 11 May 2031, and it was planted on 10 May 2031",
    );
    // What is sprayed on the crop itself is no plant-back to it.
    farm.records["r0"].date = date(2031, 5, 20);
    must_not(&farm, "its label keeps 9 months");
    farm.fields["f"].next_crop = "soybeans".to_owned();
    of_the_label(
        &farm,
        Level::Note,
        "soybeans may not be planted before 20 February 2032, 9 months after Alpha 480 SL (demo) of",
    );
}

#[test]
fn droplet_classes() {
    let droplets = |finest, coarsest| Says::Droplets { finest, coarsest };
    let mut farm = saying(droplets(Droplets::Coarse, Some(Droplets::Coarse)));
    must_not(&farm, "roplet");
    statement(&mut farm).says = droplets(Droplets::VeryCoarse, None);
    of_the_label(
        &farm,
        Level::Stop,
        "asks for very coarse or coarser droplets; those of this pass are coarse, which is finer",
    );
    farm.passes["p"].droplets = Some(Droplets::UltraCoarse);
    must_not(&farm, "roplet");
    statement(&mut farm).says = droplets(Droplets::Medium, Some(Droplets::Coarse));
    of_the_label(
        &farm,
        Level::Stop,
        "medium to coarse droplets; those of this pass are ultra coarse, which is coarser",
    );
    farm.passes["p"].droplets = None;
    farm.rigs["r"].droplets = None;
    must(&farm, Level::Check, "not typed; the labels ask for medium to coarse (Alpha 480 SL (demo))");
}

#[test]
fn strips_to_neighbours() {
    let mut farm =
        saying(Says::Buffer { to: "creeks and wells, ponds".to_owned(), width: q("66 ft"), downwind_only: false });
    must_not(&farm, "66 ft");
    let creek = |distance| Neighbour { what: "pond".to_owned(), side: "south".to_owned(), distance };
    farm.fields["f"].neighbours.push(creek(Some(q("66 ft"))));
    must_not(&farm, "66 ft");
    farm.fields["f"].neighbours[0] = creek(Some(q("10 yd")));
    let check =
        of_the_label(&farm, Level::Check, "keeps 66 ft from pond; that on the south of Mill field is 30 ft away");
    assert_eq!(check.hint, "Leave a strip of 36 ft unsprayed along that edge.");
    farm.fields["f"].neighbours[0] = creek(None);
    of_the_label(&farm, Level::Check, "how far that on the south of Mill field lies off is not typed");
    farm.fields["f"].neighbours[0].what = "vineyard".to_owned();
    must_not(&farm, "66 ft");
}

#[test]
fn wind_and_rain_in_one_note_with_the_tightest() {
    let mut farm = saying(Says::Wind { most: q("15 mph"), least: Some(q("3 mph")), gust: None });
    farm.products["a"].label.push(Statement::new(Says::RainFree { hours: 4 }, "page 3"));
    of_the_label(&farm, Level::Note, "on the day: wind at most 15 mph, wind at least 3 mph, no rain for 4 h");
    farm.passes["p"].mix.push(Line::new("b", q("1 pt/ac")));
    farm.products["b"].label.push(Statement::new(Says::Wind { most: q("10 mph"), least: None, gust: None }, "page 2"));
    farm.products["b"].label.push(Statement::new(Says::RainFree { hours: 1 }, "page 2"));
    must(&farm, Level::Note, "on the day: wind at most 10 mph, wind at least 3 mph, no rain for 4 h");
    must_not(&farm, "No wind suits");
    farm.products["b"].label[0].says = Says::Wind { most: q("2 mph"), least: None, gust: None };
    must(&farm, Level::Stop, "No wind suits this mix: one label asks for at least 3 mph, another for at most 2 mph");
}

#[test]
fn air_temperature() {
    let mut farm = saying(Says::Temperature { least: Some(q("50 °F")), most: Some(q("85 °F")) });
    of_the_label(&farm, Level::Note, "on the day: air at most 85 °F, air at least 50 °F");
    for (air, words) in [("86 °F", "at most 85 °F; 86 °F is expected"), ("9 °C", "at least 50 °F; 48 °F is expected")]
    {
        farm.passes["p"].growing.air = Some(q(air));
        of_the_label(&farm, Level::Stop, words);
    }
    for air in ["85 °F", "10 °C"] {
        farm.passes["p"].growing.air = Some(q(air));
        must_not(&farm, "air");
    }
}

#[test]
fn days_of_the_year() {
    let dates = |from: &str, to: &str| Says::Dates { from: from.parse().ok(), to: to.parse().ok() };
    let mut farm = saying(dates("05-01", "06-12"));
    must_not(&farm, "may be used from");
    farm.passes["p"].date = date(2031, 6, 13);
    of_the_label(&farm, Level::Stop, "may be used from 1 May to 12 June; this pass is on 13 June 2031");
    // A second window of the same label is an alternative.
    farm.products["a"].label.push(Statement::new(dates("06-13", "07-01"), "page 3"));
    must_not(&farm, "may be used from");
    // An end typed alone is none.
    statement(&mut farm).says = dates("06-14", "");
    of_the_label(&farm, Level::Stop, "may be used from 14 June on");
}

#[test]
fn partners_that_are_forbidden() {
    let not_with = |what: &str, days| Says::NotWith { what: what.to_owned(), days };
    for (what, hit) in [
        ("group 14 herbicides", true),
        ("alkaline liquids, betafen", true),
        ("Beta 480 SL (demo)", true),
        ("group 2 and group 14", true),
        ("group 1", false),
        ("insecticides", false),
    ] {
        let mut farm = saying(not_with(what, 0));
        must_not(&farm, "may not be mixed");
        farm.passes["p"].mix.push(Line::new("b", q("1 pt/ac")));
        if hit {
            of_the_label(
                &farm,
                Level::Stop,
                &format!("may not be mixed with {what}; Beta 480 SL (demo) is in the mix"),
            );
        } else {
            must_not(&farm, "may not be mixed");
        }
    }
    let mut oil = Product::new("Oil 83 (demo)", ProductKind::Adjuvant, Formulation::EC);
    oil.class = Some(AdjuvantClass::CropOilConcentrate);
    let mut farm = saying(not_with("crop oil", 0));
    farm.products.insert("o".to_owned(), oil);
    farm.passes["p"].mix.push(Line::new("o", q("1 % v/v")));
    of_the_label(&farm, Level::Stop, "may not be mixed with crop oil; Oil 83 (demo) is in the mix");
    // Words that name nothing known are said and not judged.
    statement(&mut farm).says = not_with("anything alkaline", 0);
    of_the_label(&farm, Level::Note, "not together with \"anything alkaline\"; these words are not judged in full");
    statement(&mut farm).says = not_with("group 2", 0);
    must_not(&farm, "not together with");
}

#[test]
fn partners_that_are_forbidden_within_days() {
    let mut farm = saying(Says::NotWith { what: "group 14".to_owned(), days: 7 });
    record(&mut farm, "b", date(2031, 6, 4));
    must_not(&farm, "may not come within");
    // "Within 7 days" takes in the seventh: 5 June and 7 days is 12 June.
    farm.records["r0"].date = date(2031, 6, 5);
    let stop = of_the_label(
        &farm,
        Level::Stop,
        "may not come within 7 days of group 14; Mill field had Beta 480 SL (demo) on 5 June 2031, 7 days before this pass",
    );
    assert_eq!(stop.hint, "Not before 13 June 2031.");
    // A product that is gone from the shed is known by what its record says.
    farm.products.shift_remove("b");
    of_the_label(&farm, Level::Stop, "had Beta 480 SL (demo) on 5 June 2031");
    // No days, no look at the records.
    statement(&mut farm).says = Says::NotWith { what: "group 14".to_owned(), days: 0 };
    must_not(&farm, "may not come within");
    // Another pass that is planned within the days may still be moved.
    let mut farm = saying(Says::NotWith { what: "betafen".to_owned(), days: 7 });
    let mut other = farm.passes["p"].clone();
    (other.name, other.date) = ("Later".to_owned(), date(2031, 6, 15));
    other.mix[0].product = "b".to_owned();
    farm.passes.insert("q".to_owned(), other);
    of_the_label(&farm, Level::Check, "\"Later\" of 15 June 2031 puts Beta 480 SL (demo) on Mill field");
}

#[test]
fn restricted_products_are_named_once() {
    let mut farm = farm();
    must_not(&farm, "certified applicators");
    farm.products["a"].restricted = true;
    let note = must(&farm, Level::Note, "Alpha 480 SL (demo) is for certified applicators only");
    assert!(note.hint.contains("record is owed"));
}

#[test]
fn conditions_bind_every_limit() {
    let rate = Says::Rate { least: None, most: Some(q("16 fl oz/ac")) };
    let limits: [(Says, &str); 6] = [
        (rate, "is planned at 32 fl oz/ac"),
        (Says::Carrier { least: Some(q("20 gal/ac")), most: None }, "asks for at least 20 gal/ac"),
        (Says::SeasonTotal { most: q("16 fl oz/ac"), per: Period::Year }, "brings Alpha"),
        (Says::Applications { most: 0, days_apart: 0, per: Period::Year }, "application number 1"),
        (Says::Droplets { finest: Droplets::UltraCoarse, coarsest: None }, "which is finer"),
        (Says::Dates { from: "07-01".parse().ok(), to: None }, "may be used from 1 July"),
    ];
    for (says, words) in limits {
        let mut farm = saying(says);
        of_the_label(&farm, Level::Stop, words);
        // It fails: the statement is silent.
        statement(&mut farm).when = vec![When::Drought];
        must_not(&farm, words);
        farm.passes["p"].growing.drought = true;
        of_the_label(&farm, Level::Stop, words);
        // It cannot be told: a person decides.
        statement(&mut farm).when = vec![When::WarmerThan(q("85 °F"))];
        let check = of_the_label(&farm, Level::Check, words);
        assert!(
            check.text.ends_with("the label says so warmer than 85 °F, which cannot be told here"),
            "{}",
            check.text
        );
        statement(&mut farm).when = vec![When::Carrier(CarrierKind::Water), When::CarrierBelow(q("20 gal/ac"))];
        of_the_label(&farm, Level::Stop, words);
    }
}

#[test]
fn what_a_label_says_for_one_crop_is_in_doubt_where_the_crop_is_not_typed() {
    let doubt = "; the label says so for soybean (the crop of Mill field is not typed), which cannot be told here";
    let limits = [
        (Says::Rate { least: None, most: Some(q("24 fl oz/ac")) }, "its label allows"),
        (Says::Carrier { least: Some(q("20 gal/ac")), most: None }, "of spray; the pass has"),
        (Says::Applications { most: 0, days_apart: 0, per: Period::Year }, "application number 1"),
        (Says::Droplets { finest: Droplets::UltraCoarse, coarsest: None }, "which is finer"),
        (Says::Dates { from: "07-01".parse().ok(), to: None }, "may be used from 1 July"),
    ];
    for (says, words) in limits {
        let mut farm = saying(says);
        statement(&mut farm).crop = "soybean".to_owned();
        of_the_label(&farm, Level::Stop, words);
        farm.fields["f"].crop = "corn".to_owned();
        must_not(&farm, words);
        farm.fields["f"].crop = String::new();
        let check = of_the_label(&farm, Level::Check, words);
        assert!(check.text.ends_with(doubt), "{}", check.text);
    }
    // The crop is asked for once for a label, whatever it says for it.
    let mut farm = saying(Says::Rate { least: None, most: Some(q("64 fl oz/ac")) });
    statement(&mut farm).crop = "soybean".to_owned();
    let mut other = Statement::new(Says::Carrier { least: Some(q("5 gal/ac")), most: None }, "page 4");
    other.crop = "corn".to_owned();
    farm.products["a"].label.push(other);
    farm.fields["f"].crop = String::new();
    let check = must(
        &farm,
        Level::Check,
        "What the label of Alpha 480 SL (demo) says on rate, spray volume is for corn, soybean; the crop of Mill field is not typed",
    );
    assert_eq!(check.hint, "Type the crop on the field's page.");
    let all = plan(&farm, "p").unwrap().findings;
    assert_eq!(
        all.iter()
            .filter(|finding| finding.text.contains("is not typed") && finding.text.contains("the crop of"))
            .count(),
        1,
        "{all:#?}"
    );
    assert!(all.iter().all(|finding| finding.level != Level::Stop || !finding.text.contains("has no rate")));
}

#[test]
fn windows_of_several_crops_stand_apart_where_the_crop_is_not_typed() {
    // Open for the one crop, closed for the other: silence would be a guess.
    let window = |crop: &str, to: &str| {
        let mut says = Statement::new(Says::CropStage, "page 3");
        (says.crop, says.to_stage) = (crop.to_owned(), to.to_owned());
        says
    };
    let mut farm = farm();
    farm.products["a"].label.extend([window("soybean", "R2"), window("corn", "V2")]);
    must_not(&farm, "may be used up to");
    farm.fields["f"].crop = String::new();
    let check = of_the_label(&farm, Level::Check, "Mill field is at V3; Alpha 480 SL (demo) may be used up to V2");
    assert!(check.text.contains("for corn (the crop of Mill field is not typed)"), "{}", check.text);
    let days = |crop: &str, to: &str| {
        let says = Says::Dates { from: "05-01".parse().ok(), to: to.parse().ok() };
        Statement { crop: crop.to_owned(), ..Statement::new(says, "page 3") }
    };
    farm.products["a"].label = vec![days("soybean", "07-15"), days("corn", "06-01")];
    of_the_label(&farm, Level::Check, "may be used from 1 May to 1 June");
    farm.fields["f"].crop = "soybean".to_owned();
    must_not(&farm, "may be used from");
}

#[test]
fn a_record_without_a_crop_binds_as_any_crop() {
    let mut farm = saying(Says::HarvestInterval { days: 60 });
    statement(&mut farm).crop = "soybean".to_owned();
    farm.fields["f"].harvest = Some(date(2031, 7, 1));
    record(&mut farm, "a", date(2031, 6, 1));
    must(&farm, Level::Check, "had Alpha 480 SL (demo) on 1 June 2031, which keeps it from harvest until 31 July 2031");
    farm.records["r0"].fields["f"].crop = "".into();
    farm.fields["f"].crop = String::new();
    let check = must(&farm, Level::Check, "which keeps it from harvest until 31 July 2031");
    assert!(check.basis.source().ends_with("page 3, for soybean, where the crop was not typed"), "{check:?}");
    farm.fields["f"].crop = "corn".to_owned();
    must_not(&farm, "keeps it from harvest");
}

/// A law on every pesticide.
fn law(says: Says) -> Law {
    Law {
        name: "Spray rule 12".to_owned(),
        since: Some(date(2031, 1, 1)),
        until: None,
        about: String::new(),
        says: Statement::new(says, ""),
    }
}

#[test]
fn a_law_on_the_setting_and_on_strips_is_held_against_plans() {
    let basis = Basis::Law("Spray rule 12, since 1 January 2031".to_owned());
    let cases: [(Says, &str); 3] = [
        (
            Says::Droplets { finest: Droplets::UltraCoarse, coarsest: None },
            "Spray rule 12 asks for ultra coarse or coarser droplets; those of this pass are coarse",
        ),
        (
            Says::BoomHeight { most: q("20 in") },
            "Spray rule 12 asks for nozzles at most 20 in above what is sprayed; those of this pass are 30 in",
        ),
        (
            Says::GroundSpeed { most: q("8 mph") },
            "Spray rule 12 asks for at most 8 mph over ground; the pass is driven at 10 mph",
        ),
    ];
    for (says, words) in cases {
        let mut farm = farm();
        farm.passes["p"].mix.push(Line::new("b", q("1 pt/ac")));
        (farm.rigs["r"].height, farm.rigs["r"].speed) = (Some(q("30 in")), Some(q("10 mph")));
        must_not(&farm, "Spray rule 12");
        farm.laws.insert("l".to_owned(), law(says));
        assert_eq!(must(&farm, Level::Stop, words).basis, basis);
        let all = plan(&farm, "p").unwrap().findings;
        let said = all.iter().filter(|finding| finding.text.contains("Spray rule 12"));
        assert_eq!(said.count(), 1, "once for the pass, though it binds two products");
        farm.laws["l"].says.when = vec![When::Weed("kochia".to_owned())];
        let check = must(&farm, Level::Check, words);
        assert!(check.text.ends_with("; the rule says so against kochia, which cannot be told here"), "{}", check.text);
        farm.laws["l"].about = "crop oil".to_owned();
        must_not(&farm, "Spray rule 12");
        farm.laws["l"] = Law { until: Some(date(2031, 6, 1)), ..law(farm.laws["l"].says.says.clone()) };
        must_not(&farm, "Spray rule 12");
    }
    let mut farm = farm();
    farm.laws.insert("l".to_owned(), law(Says::BoomHeight { most: q("20 in") }));
    assert_eq!(
        must(&farm, Level::Check, "The height of the boom is not typed; the laws ask for at most 20 in").basis,
        basis
    );
    let creek = Neighbour { what: "creek".to_owned(), side: "east".to_owned(), distance: Some(q("20 ft")) };
    farm.fields["f"].neighbours.push(creek);
    farm.laws["l"] = law(Says::Buffer { to: "creeks".to_owned(), width: q("66 ft"), downwind_only: false });
    let strip =
        must(&farm, Level::Check, "Spray rule 12 keeps 66 ft from creek; that on the east of Mill field is 20 ft");
    assert_eq!(strip.basis, basis);
    // The wider strip counts, whoever asks for it.
    let says = Says::Buffer { to: "creek".to_owned(), width: q("100 ft"), downwind_only: false };
    farm.products["a"].label.push(Statement::new(says, "page 3"));
    of_the_label(&farm, Level::Check, "Alpha 480 SL (demo) keeps 100 ft from creek");
    must_not(&farm, "Spray rule 12 keeps");
}

#[test]
fn a_law_that_is_not_judged_is_said() {
    let mut farm = farm();
    farm.laws.insert("l".to_owned(), law(Says::Carrier { least: Some(q("20 gal/ac")), most: None }));
    let open = must(&farm, Level::Check, "Spray rule 12 speaks of spray volume, which is not judged for a law");
    assert_eq!(open.basis, Basis::Law("Spray rule 12, since 1 January 2031".to_owned()));
    farm.laws["l"].about = "bzine".to_owned();
    must_not(&farm, "Spray rule 12");
    farm.laws["l"].about = String::new();
    farm.laws["l"].says.crop = "corn".to_owned();
    must_not(&farm, "Spray rule 12");
    // What stands on the card needs no word in the plan.
    farm.laws["l"] = law(Says::Wear { what: "a face shield".to_owned() });
    must_not(&farm, "Spray rule 12");
    let card = |farm: &Farm| cards(farm, &plan(farm, "p").unwrap()).remove(0);
    assert!(card(&farm).wear.contains(&"a face shield (Spray rule 12)".to_owned()));
    farm.laws["l"] = law(Says::BoomHeight { most: q("24 in") });
    assert!(card(&farm).cautions.contains(&"Boom at most 24 in (Spray rule 12)".to_owned()));
}

#[test]
fn the_card_prints_what_speaks() {
    let mut farm = saying(Says::Wind { most: q("8 mph"), least: Some(q("4 mph")), gust: None });
    let printed = |farm: &Farm| {
        let card = cards(farm, &plan(farm, "p").unwrap()).remove(0);
        [card.limits, card.cautions].concat().join("\n")
    };
    assert!(printed(&farm).contains("wind 4 to 8 mph (Alpha"), "{}", printed(&farm));
    statement(&mut farm).when = vec![When::Heat];
    assert!(!printed(&farm).contains("8 mph"), "{}", printed(&farm));
    statement(&mut farm).when = vec![When::ColderThan(q("50 °F"))];
    assert!(printed(&farm).contains("8 mph colder than 50 °F (Alpha"), "{}", printed(&farm));
}

#[test]
fn groups_that_come_back() {
    let mut farm = farm();
    record(&mut farm, "a", date(2030, 6, 1));
    must_not(&farm, "Group 9 was sprayed");
    record(&mut farm, "a", date(2029, 6, 1));
    must(&farm, Level::Note, "Group 9 was sprayed on Mill field twice in the last 3 seasons, and this is the 3rd");
    record(&mut farm, "a", date(2031, 5, 1));
    let check = must(&farm, Level::Check, "on Mill field 3 times in the last 3 seasons, and this is the 4th");
    assert_eq!(check.basis, Basis::Practice);
    // What lies before the three seasons is not counted, nor is a fungicide's group of the same number.
    farm.records["r1"].date = date(2028, 12, 31);
    must(&farm, Level::Note, "twice");
    farm.products["b"].kind = ProductKind::Fungicide;
    farm.products["b"].actives[0].group = "9".to_owned();
    record(&mut farm, "b", date(2031, 5, 2));
    must(&farm, Level::Note, "twice");
}

/// A record without actives had those of its product in the shed; of a product that is gone, the actives that the table of herbicides knows
/// count, and no others.
#[test]
fn groups_of_records_without_actives_and_of_products_that_are_gone() {
    let mut farm = farm();
    for (product, day) in [("a", date(2029, 6, 1)), ("b", date(2029, 6, 1)), ("a", date(2030, 6, 1))] {
        record(&mut farm, product, day);
    }
    for record in farm.records.values_mut() {
        record.lines[0].actives.clear();
    }
    must(&farm, Level::Note, "Group 9 was sprayed on Mill field twice in the last 3 seasons");
    // A fungicide's group of the same number is another.
    farm.products["b"].kind = ProductKind::Fungicide;
    farm.products["b"].actives[0].group = "9".to_owned();
    must(&farm, Level::Note, "Group 9 was sprayed on Mill field twice in the last 3 seasons");
    // What a record names counts, whatever the shed says today.
    let gone = |farm: &mut Farm, record: usize, active: &str| {
        let line = &mut farm.records.values_mut().nth(record).unwrap().lines[0];
        line.product = "gone".into();
        let (basis, mass) = (ActiveBasis::ActiveIngredient, q("36.34 kg"));
        line.actives = vec![RecordActive { name: active.into(), group: "9".into(), basis, mass }];
    };
    gone(&mut farm, 1, "betafen");
    must(&farm, Level::Note, "Group 9 was sprayed on Mill field twice in the last 3 seasons");
    gone(&mut farm, 1, "glyphosate");
    must(&farm, Level::Check, "on Mill field 3 times in the last 3 seasons");
}

#[test]
fn effective_groups_on_the_weeds() {
    // Norsworthy et al. 2012, Weed Science 60 (sp1):31-62, from memory: several effective groups, not one.
    let controls = |weeds: &str| Statement::new(Says::Controls { weeds: weeds.to_owned() }, "page 4");
    let mut farm = farm();
    farm.passes["p"].mix.push(Line::new("b", q("1 pt/ac")));
    must_not(&farm, "effective group");
    farm.passes["p"].weeds = vec!["Waterhemp".to_owned()];
    must(&farm, Level::Note, "No label in the mix says, as typed, which weeds it controls");
    farm.products["a"].label.push(controls("kochia, waterhemp"));
    let one =
        must(&farm, Level::Check, "Only one effective group is in the mix against Waterhemp on Mill field: group 9");
    assert!(one.hint.contains("What Beta 480 SL (demo) controls is not typed"));
    farm.products["b"].label.push(controls("waterhemps"));
    must_not(&farm, "effective group");
    farm.fields["f"].resistant.push(Resistant { weed: "waterhemp".to_owned(), group: "Group 9".to_owned() });
    must(&farm, Level::Check, "Only one effective group is in the mix against Waterhemp on Mill field: group 14");
    farm.fields["f"].resistant.push(Resistant { weed: "waterhemp".to_owned(), group: "14".to_owned() });
    must(&farm, Level::Check, "Nothing in the mix controls Waterhemp on Mill field");
}

/// Numbers from which a limit of each kind can be made, smaller and larger.
fn limit(kind: usize, value: u32) -> Says {
    match kind {
        0 => Says::Rate { least: None, most: Some(q(&format!("{value} fl oz/ac"))) },
        1 => Says::Carrier { least: None, most: Some(q(&format!("{value} gal/ac"))) },
        2 => Says::SeasonTotal { most: q(&format!("{value} fl oz/ac")), per: Period::Year },
        3 => Says::ActiveSeasonTotal {
            active: "alphazine".to_owned(),
            most: q(&format!("{} lb ai/ac", f64::from(value) / 16.0)),
            per: Period::TwelveMonths,
        },
        4 => Says::Applications { most: value / 8, days_apart: 0, per: Period::Crop },
        5 => Says::Temperature { least: None, most: Some(q(&format!("{} °F", value / 2 + 40))) },
        _ => Says::Wind { most: q(&format!("{value} mph")), least: Some(q("3 mph")), gust: None },
    }
}

proptest! {
    #![proptest_config(cases(96))]

    /// A law of limits: whoever is allowed more is not stopped more often.
    #[test]
    fn raising_a_most_never_adds_a_stop(kind in 0_usize..7, low in 1_u32..64, more in 0_u32..64, times in 0_usize..4) {
        let stops = |value| {
            let mut farm = saying(limit(kind, value));
            farm.passes["p"].growing.air = Some(q("75 °F"));
            for at in 0..times {
                record(&mut farm, "a", date(2031, 5, 1 + i8::try_from(at).unwrap()));
            }
            plan(&farm, "p").unwrap().count(Level::Stop)
        };
        prop_assert!(stops(low + more) <= stops(low));
    }

    /// A law of times: whatever the days, months and hours, nothing panics, and more of them never lift a Stop.
    #[test]
    fn longer_times_never_lift_a_stop(days in any::<u32>(), more in any::<u32>(), apart in 0_i32..400) {
        let stops = |days: u32| {
            let mut farm = saying(Says::HarvestInterval { days });
            farm.fields["f"].harvest = Some(date(2031, 8, 1));
            farm.fields["f"].next_crop = "corn".to_owned();
            let label = &mut farm.products["a"].label;
            label.push(Statement::new(Says::Applications { most: 9, days_apart: days, per: Period::Year }, ""));
            label.push(Statement::new(Says::NotWith { what: "group 14".to_owned(), days }, ""));
            label.push(Statement::new(Says::PlantBack { next_crop: "corn".to_owned(), months: days }, ""));
            label.push(Statement::new(Says::ReEntry { hours: days }, ""));
            let earlier = date(2031, 6, 12).checked_sub(jiff::Span::new().days(apart)).unwrap();
            record(&mut farm, "a", earlier);
            record(&mut farm, "b", earlier);
            plan(&farm, "p").unwrap().count(Level::Stop)
        };
        prop_assert!(stops(days.saturating_add(more)) >= stops(days));
    }

    /// A law of labels: one more limit on a label allows nothing that was forbidden. It holds a limit that is looked for once
    /// and found in the first statement alone. Two rates may be for two uses, so the wider of them makes a Check of the Stop; it does
    /// not silence it.
    #[test]
    fn a_further_limit_never_lifts_a_stop(
        one in (0_usize..7, 1_u32..64),
        other in (0_usize..7, 1_u32..64),
        times in 0_usize..4,
        first in any::<bool>(),
    ) {
        let bases = |limits: &[(usize, u32)]| {
            let mut farm = farm();
            farm.passes["p"].growing.air = Some(q("75 °F"));
            for (kind, value) in limits {
                farm.products["a"].label.push(Statement::new(limit(*kind, *value), &format!("page {kind}")));
            }
            for at in 0..times {
                record(&mut farm, "a", date(2031, 5, 1 + i8::try_from(at).unwrap()));
            }
            let plan = plan(&farm, "p").unwrap();
            let said = |finding: &Finding| finding.level >= Level::Check && finding.text.contains("its label allows");
            (plan.count(Level::Stop), plan.findings.iter().filter(|finding| said(finding)).count())
        };
        let both = if first { [other, one] } else { [one, other] };
        let (alone, with) = (bases(&[one]), bases(&both));
        let rates = one.0 == 0 && other.0 == 0;
        prop_assert!(rates || with.0 >= alone.0, "{:?} with {:?} alone and {:?} with {:?} beside it", alone, one, with, other);
        prop_assert!(with.1 >= alone.1, "{:?} with {:?} alone and {:?} with {:?} beside it", alone, one, with, other);
    }

    /// A law of the limits at the lower end: to whoever must reach more, no less is objected. Droplets stand by their
    /// order, from fine to coarse. It holds a comparison turned round.
    #[test]
    fn raising_a_least_never_lifts_an_objection(kind in 0_usize..5, low in 0_u32..64, more in 0_u32..64) {
        let droplets = |value: u32| {
            let all = Droplets::ALL;
            all[usize::try_from(value).unwrap() * all.len() / 128]
        };
        let stops = |value: u32| {
            let least = Some(value);
            let says = match kind {
                0 => Says::Rate { least: least.map(|value| q(&format!("{value} fl oz/ac"))), most: None },
                1 => Says::Carrier { least: least.map(|value| q(&format!("{value} gal/ac"))), most: None },
                2 => Says::Temperature { least: least.map(|value| q(&format!("{} °F", value + 20))), most: None },
                3 => Says::Droplets { finest: droplets(value), coarsest: None },
                _ => Says::Wind { most: q("30 mph"), least: least.map(|value| q(&format!("{value} mph"))), gust: None },
            };
            let mut farm = saying(says);
            farm.passes["p"].growing.air = Some(q("75 °F"));
            let plan = plan(&farm, "p").unwrap();
            (plan.count(Level::Stop), plan.count(Level::Stop) + plan.count(Level::Check))
        };
        let (less, more) = (stops(low), stops(low + more));
        prop_assert!(more.0 >= less.0 && more.1 >= less.1);
        // The law is of something: at the upper end each of these is objected to.
        prop_assert!(stops(127).1 > stops(0).1);
    }
}

/// 32 fl oz of 480 g/L on an acre are 1.0014 lb: 32 × 29.5735 mL × 0.48 g/mL ÷ 453.592 g.
#[test]
fn a_total_of_an_active_binds_from_the_label_of_what_was_sprayed() {
    let total = |most: &str| {
        let says = Says::ActiveSeasonTotal { active: "betafen".to_owned(), most: q(most), per: Period::Year };
        Statement::new(says, "page 7")
    };
    let both = |most: &str| {
        let mut farm = farm();
        // Beta alone names a total; Alpha holds betafen too, and its label names none.
        farm.products["b"].label.push(total(most));
        farm.products["a"].actives[0].name = "betafen".to_owned();
        record(&mut farm, "b", date(2031, 5, 2));
        farm
    };
    let words = "brings betafen to 2 lb ai/ac in 2031; the label of Beta 480 SL (demo), which was sprayed there, allows 1.5 lb ai/ac";
    let stop = must(&both("1.5 lb ai/ac"), Level::Stop, words);
    assert_eq!(stop.basis, Basis::Label("Beta 480 SL (demo), page 7".to_owned()));
    must_not(&both("2.01 lb ai/ac"), "brings betafen");
    // Sprayed in another year, or never, its label says nothing of this pass.
    let mut farm = both("1.5 lb ai/ac");
    farm.records["r0"].date = date(2030, 12, 31);
    must_not(&farm, "brings betafen");
    // Another active is not counted.
    let mut farm = both("1.5 lb ai/ac");
    farm.products["a"].actives[0].name = "alphazine".to_owned();
    must_not(&farm, "betafen");
    // Once it is in the mix itself, its label is one of the mix.
    let mut farm = both("2.5 lb ai/ac");
    farm.passes["p"].mix.push(Line::new("b", q("32 fl oz/ac")));
    let finding = must(&farm, Level::Stop, "brings betafen to 3 lb ai/ac in 2031; the label's most is 2.5 lb ai/ac");
    assert_eq!(finding.basis, Basis::Label("Beta 480 SL (demo), page 7".to_owned()));
}

/// By hand, as above: what is planned before and not sprayed yet is no record, and its sum is said.
#[test]
fn a_season_that_is_planned_above_a_total_says_so() {
    let planned = |says: Says, rate: &str| {
        let mut farm = saying(says);
        let mut before = farm.passes["p"].clone();
        (before.name, before.date) = ("First".to_owned(), date(2031, 5, 20));
        before.mix[0].rate = q(rate);
        farm.passes.insert("q".to_owned(), before);
        farm
    };
    let product = || Says::SeasonTotal { most: q("60 fl oz/ac"), per: Period::Year };
    let active =
        || Says::ActiveSeasonTotal { active: "alphazine".to_owned(), most: q("1.9 lb ai/ac"), per: Period::Year };
    let words = "with \"First\" of 20 May 2031, planned and not recorded yet, ";
    for (says, sum) in
        [(product(), "Alpha 480 SL (demo) comes to 4 pt/ac"), (active(), "alphazine comes to 2 lb ai/ac")]
    {
        let farm = planned(says.clone(), "32 fl oz/ac");
        of_the_label(&farm, Level::Check, &format!("{words}{sum} in 2031"));
        must_not(&planned(says.clone(), "27 fl oz/ac"), words);
        // A pass after this one has its own plan; one of another year is of another season.
        for day in [date(2031, 6, 13), date(2030, 12, 31)] {
            let mut farm = planned(says.clone(), "32 fl oz/ac");
            farm.passes["q"].date = day;
            must_not(&farm, words);
        }
        // On another part of the field it does not come on top.
        let mut farm = planned(says.clone(), "32 fl oz/ac");
        farm.passes["q"].parts.insert("f".to_owned(), q("30 ac"));
        farm.passes["p"].parts.insert("f".to_owned(), q("50 ac"));
        must_not(&farm, words);
        // Once it is recorded, the record counts and not the plan.
        let mut farm = planned(says, "32 fl oz/ac");
        record(&mut farm, "a", date(2031, 5, 20));
        farm.records["r0"].pass = Some("q".into());
        must_not(&farm, words);
        must(&farm, Level::Stop, "this pass brings");
    }
}

/// Names as US labels state ingredients, from memory. A salt that was not known as its acid was left out of totals in silence.
#[test]
fn a_total_of_an_active_counts_it_by_the_words_for_its_salt() {
    for name in
        ["2,4-D, dimethylamine salt", "2,4-D choline salt", "Dimethylamine salt of 2,4-D", "2,4-D isooctyl ester"]
    {
        let says = Says::ActiveSeasonTotal { active: "2,4-D".to_owned(), most: q("1.5 lb ai/ac"), per: Period::Year };
        let mut farm = saying(says);
        farm.products["a"].actives[0].name = "2,4-D ester".to_owned();
        farm.products["b"].actives[0].name = name.to_owned();
        record(&mut farm, "b", date(2031, 5, 2));
        of_the_label(&farm, Level::Stop, "brings 2,4-D to 2 lb ai/ac");
    }
}

/// Ends that are typed the wrong way round can be kept by nothing, which follows from what least and most mean.
#[test]
fn ends_the_wrong_way_round_are_said() {
    let temperature = |least: &str, most: &str| Says::Temperature { least: Some(q(least)), most: Some(q(most)) };
    let oil = |least: &str, most: &str| Says::Adjuvant {
        class: AdjuvantClass::CropOilConcentrate,
        stance: tankard_core::farm::Stance::Allowed,
        least: Some(q(least)),
        most: Some(q(most)),
        at_least: None,
        at_most: None,
    };
    for (wrong, right) in [
        (
            Says::Rate { least: Some(q("44 fl oz/ac")), most: Some(q("1 pt/ac")) },
            Says::Rate { least: Some(q("1 pt/ac")), most: Some(q("44 fl oz/ac")) },
        ),
        (
            Says::Carrier { least: Some(q("200 L/ha")), most: Some(q("10 gal/ac")) },
            Says::Carrier { least: Some(q("10 gal/ac")), most: Some(q("200 L/ha")) },
        ),
        (
            Says::Wind { most: q("3 mph"), least: Some(q("10 mph")), gust: None },
            Says::Wind { most: q("10 mph"), least: Some(q("3 mph")), gust: None },
        ),
        (
            Says::Droplets { finest: Droplets::Coarse, coarsest: Some(Droplets::Medium) },
            Says::Droplets { finest: Droplets::Medium, coarsest: Some(Droplets::Coarse) },
        ),
        (temperature("86 °F", "10 °C"), temperature("10 °C", "86 °F")),
        (oil("2 % v/v", "1 gal/100 gal"), oil("1 gal/100 gal", "2 % v/v")),
    ] {
        of_the_label(&saying(wrong), Level::Check, "nothing can keep both");
        must_not(&saying(right), "nothing can keep both");
    }
    let stages = |from: &str, to: &str| {
        let mut farm = saying(Says::CropStage);
        let says = statement(&mut farm);
        (says.crop, says.from_stage, says.to_stage) = ("soybean".to_owned(), from.to_owned(), to.to_owned());
        farm
    };
    of_the_label(&stages("R2", "V2"), Level::Check, "nothing can keep both");
    must_not(&stages("V2", "R2"), "nothing can keep both");
}

/// What a label says of soybean it says of tolerant soybean: US Environmental Protection Agency, over-the-top dicamba, questions and answers,
/// 2020; the others from memory.
#[test]
fn a_variety_that_is_not_said_to_stand_a_herbicide_is_a_check() {
    let with = |active: &str, variety: &str, stage: &str| {
        let mut farm = farm();
        farm.products["a"].actives[0].name = active.to_owned();
        variety.clone_into(&mut farm.fields["f"].variety);
        stage.clone_into(&mut farm.fields["f"].stage);
        farm
    };
    let words = "which hurts this crop in leaf unless its variety stands it";
    for active in ["glyphosate", "glufosinate", "dicamba diglycolamine salt", "2,4-D choline", "isoxaflutole"] {
        must(&with(active, "demo bean, no trait", "V3"), Level::Check, words);
        must(&with(active, "demo bean", "BBCH 13"), Level::Check, words);
        must(&with(active, "demo bean, not glyphosate tolerant", "V3"), Level::Check, words);
        must(&with(active, "", "V3"), Level::Note, words);
        // Before it is up, and to dry it down, it is another matter.
        must_not(&with(active, "demo bean, no trait", ""), words);
        must_not(&with(active, "demo bean, no trait", "R7"), words);
    }
    must_not(&with("glyphosate", "demo bean C, glyphosate and glufosinate tolerant", "V3"), words);
    must_not(&with("glufosinate", "demo bean C, glyphosate and glufosinate tolerant", "V3"), words);
    must_not(&with("glyphosate", "frijol demo, tolerante a glifosato", "V3"), words);
    must(&with("dicamba", "demo bean C, glyphosate tolerant", "V3"), Level::Check, words);
    must_not(&with("imazethapyr", "demo bean, no trait", "V3"), words);
    let mut wheat = with("glyphosate", "demo wheat", "BBCH 31");
    "winter wheat".clone_into(&mut wheat.fields["f"].crop);
    must_not(&wheat, words);
}

/// IRAC mode of action classification, from memory: group 1B are the organophosphates.
#[test]
fn insecticides_are_partners_by_their_family() {
    let mixed = |group: &str| {
        let mut farm = saying(Says::NotWith { what: "organophosphate insecticides".to_owned(), days: 0 });
        farm.products["b"].kind = ProductKind::Insecticide;
        farm.products["b"].actives[0] = Active { group: group.to_owned(), ..farm.products["b"].actives[0].clone() };
        farm.passes["p"].mix.push(Line::new("b", q("8 fl oz/ac")));
        farm
    };
    of_the_label(&mixed("1B"), Level::Stop, "may not be mixed with");
    must_not(&mixed("3A"), "may not be mixed with");
    must_not(&mixed("1B"), "these words are not judged");
}

/// By the calendar.
#[test]
fn a_harvest_before_the_pass_is_asked_about() {
    let mut farm = saying(Says::HarvestInterval { days: 14 });
    farm.fields["f"].harvest = Some(date(2031, 6, 11));
    let stop = of_the_label(&farm, Level::Stop, "the harvest of Mill field is typed as 11 June 2031, before this pass");
    assert!(stop.hint.contains("26 June 2031"), "{stop:?}");
    // No days are kept, so nothing is to be waited for.
    must_not(&saying(Says::HarvestInterval { days: 0 }), "may not be harvested");
}

/// 0.35 L/ha are 4.7894 fl oz/ac, and 20 gal/ac 187.08 L/ha, by NIST Handbook 44.
#[test]
fn what_breaks_a_limit_by_little_is_not_printed_as_the_limit() {
    let mut farm = saying(Says::Rate { least: None, most: Some(q("0.35 L/ha")) });
    farm.passes["p"].mix[0].rate = q("4.79 fl oz/ac");
    of_the_label(&farm, Level::Stop, "is planned at 4.79 fl oz/ac on soybean; its label allows at most 4.789 fl oz/ac");
    must_not(&farm, "times the most");
    let mut farm = saying(Says::Carrier { least: Some(q("20 gal/ac")), most: None });
    farm.units = tankard_core::quantity::Units::Metric;
    farm.passes["p"].carrier = Some(q("187 L/ha"));
    of_the_label(&farm, Level::Stop, "at least 187.1 L/ha of spray; the pass has 187 L/ha");
}

/// By the calendar; that labels may count what is sprayed before planting is common practice, no source.
#[test]
fn what_was_sprayed_shortly_before_planting_is_not_passed_over() {
    let words = "before its crop was planted on 1 May 2031";
    let farm = |says: Says, day: Date, crop: &str| {
        let mut farm = saying(says);
        farm.fields["f"].planted = Some(date(2031, 5, 1));
        record(&mut farm, "a", day);
        farm.records["r0"].fields["f"].crop = crop.into();
        farm
    };
    let product = |per| Says::SeasonTotal { most: q("200 fl oz/ac"), per };
    let active = |per| Says::ActiveSeasonTotal { active: "alphazine".to_owned(), most: q("9 lb ai/ac"), per };
    let april = date(2031, 4, 30);
    for crop in ["", "Soybeans"] {
        of_the_label(&farm(product(Period::Crop), april, crop), Level::Check, words);
        of_the_label(&farm(active(Period::Crop), april, crop), Level::Check, words);
    }
    // On another crop, long before, after planting, and where the year counts it anyway.
    must_not(&farm(product(Period::Crop), april, "rye"), words);
    must_not(&farm(product(Period::Crop), date(2031, 3, 1), ""), words);
    must_not(&farm(product(Period::Crop), date(2031, 5, 1), ""), words);
    must_not(&farm(active(Period::Year), april, ""), words);
}
