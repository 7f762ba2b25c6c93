//! What the page of a field says on a day: each limit worked by hand from the calendar, and the law that the page and the plan of a pass
//! on that day forbid the same.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use indexmap::IndexMap;
use jiff::civil::{Date, date};
use proptest::prelude::*;
use tankard_core::farm::record::RecordActive;
use tankard_core::farm::{
    Active, ClosedSeason, Farm, Field, Formulation, Line, Pass, Period, Product, ProductKind, Record, RecordField,
    RecordLine, Rig, Says, Statement, Water,
};
use tankard_core::finding::Level;
use tankard_core::plan::plan;
use tankard_core::quantity::{ActiveBasis, AsTyped, Quantity};
use tankard_core::season::Log;
use tankard_core::season::field::{Barred, Bars, CropFrom, FieldPage, Until, page};
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

/// 80 ac of soybean; Alpha at 32 to 64 fl oz/ac in the shed, and Beta.
fn farm() -> Farm {
    let mut farm = Farm::new("Page");
    let mut field = Field::new("Mill field", q("80 ac"));
    "soybean".clone_into(&mut field.crop);
    farm.fields.insert("f".to_owned(), field);
    farm.waters.insert("w".to_owned(), Water { name: "Well".to_owned(), ..Water::default() });
    farm.rigs.insert("r".to_owned(), Rig::new("Boom", q("1200 gal")));
    let mut alpha = product("Alpha 480 SL (demo)", "alphazine", "9");
    alpha
        .label
        .push(Statement::new(Says::Rate { least: Some(q("32 fl oz/ac")), most: Some(q("64 fl oz/ac")) }, "page 2"));
    farm.products.insert("a".to_owned(), alpha);
    farm.products.insert("b".to_owned(), product("Beta 480 SL (demo)", "betafen", "14"));
    farm
}

fn says(farm: &mut Farm, product: &str, says: Says) {
    farm.products[product].label.push(Statement::new(says, "page 3"));
}

/// Records a product at 32 fl oz/ac for each 20 gal on 80 ac: 20 gal × 128 fl oz ÷ 80 ac. One gallon of 480 g/L holds 1.817 kg.
fn record(farm: &mut Farm, product: &str, day: Date, gallons: u32, area: &str) -> String {
    let shed = &farm.products[product];
    let line = RecordLine {
        actives: shed
            .actives
            .iter()
            .map(|active| RecordActive {
                name: (&active.name).into(),
                group: (&active.group).into(),
                basis: active.basis,
                mass: q(&format!("{} kg", f64::from(gallons) * 1.817)),
            })
            .collect(),
        ..RecordLine::new(product, &shed.name, q(&format!("{gallons} gal")))
    };
    let field = RecordField { crop: "soybean".into(), ..RecordField::new("Mill field", q(area)) };
    let id = format!("r{}", farm.records.len());
    let mut record = Record::new(&format!("Earlier {id}"), day);
    record.fields.insert("f".to_owned(), field);
    record.lines.push(line);
    farm.records.insert(id.clone(), record);
    id
}

fn on(farm: &Farm, day: Date) -> FieldPage {
    page(farm, &Log::of(farm), "f", day.at(6, 0, 0, 0)).unwrap()
}

fn barred(farm: &Farm, day: Date, bars: Bars) -> Option<Barred> {
    on(farm, day).barred.into_iter().find(|barred| barred.bars == bars)
}

fn of_page_3(barred: &Barred) {
    assert_eq!(barred.basis.source(), "Alpha 480 SL (demo), page 3");
}

#[test]
fn applications_are_used_up_until_the_new_year_or_until_one_leaves_the_twelve_months() {
    for (per, until) in [
        (Period::Year, Until::Day(date(2032, 1, 1))),
        // A day a full year later is no longer in the twelve months.
        (Period::TwelveMonths, Until::Day(date(2032, 5, 1))),
    ] {
        let mut farm = farm();
        says(&mut farm, "a", Says::Applications { most: 2, days_apart: 0, per });
        let first = record(&mut farm, "a", date(2031, 5, 1), 20, "80 ac");
        assert_eq!(barred(&farm, date(2031, 6, 12), Bars::Applications), None);
        let second = record(&mut farm, "a", date(2031, 5, 20), 20, "80 ac");
        let found = barred(&farm, date(2031, 6, 12), Bars::Applications).unwrap();
        assert_eq!((found.level, found.until, found.product.as_deref()), (Level::Stop, until, Some("a")));
        assert_eq!(found.records, [second, first]);
        assert!(found.text.starts_with("Alpha 480 SL (demo): 2 of 2 applications in"), "{}", found.text);
        of_page_3(&found);
    }
    // Over the crop nothing is free before the next one.
    let mut farm = farm();
    says(&mut farm, "a", Says::Applications { most: 1, days_apart: 0, per: Period::Crop });
    farm.fields["f"].planted = Some(date(2031, 4, 20));
    record(&mut farm, "a", date(2031, 5, 1), 20, "80 ac");
    assert_eq!(barred(&farm, date(2031, 6, 12), Bars::Applications).unwrap().until, Until::NextCrop);
    // Two halves of the field may be meant: a person decides.
    let mut farm = self::farm();
    says(&mut farm, "a", Says::Applications { most: 1, days_apart: 30, per: Period::Year });
    farm.fields["f"].unsprayed = Some(q("40 ac"));
    record(&mut farm, "a", date(2031, 6, 1), 10, "40 ac");
    for bars in [Bars::Applications, Bars::Spacing] {
        assert_eq!(barred(&farm, date(2031, 6, 12), bars).unwrap().level, Level::Check);
    }
}

#[test]
fn days_between_two_run_to_their_last_day() {
    let mut farm = farm();
    says(&mut farm, "a", Says::Applications { most: 9, days_apart: 14, per: Period::Year });
    let last = record(&mut farm, "a", date(2031, 6, 1), 20, "80 ac");
    // 14 days after 1 June is 15 June.
    let found = barred(&farm, date(2031, 6, 14), Bars::Spacing).unwrap();
    assert_eq!((found.until, &found.records), (Until::Day(date(2031, 6, 15)), &vec![last]));
    of_page_3(&found);
    assert_eq!(barred(&farm, date(2031, 6, 15), Bars::Spacing), None);
}

#[test]
fn a_total_is_used_up_where_not_even_the_least_rate_is_left() {
    for (most, used_up, words) in [
        // 64 fl oz/ac are on it, which is 4 pt/ac; one more takes at least 32 fl oz/ac, a quart.
        ("64 fl oz/ac", true, "4 pt/ac of 4 pt/ac in 2031"),
        ("95 fl oz/ac", true, "one application takes at least"),
        ("96 fl oz/ac", false, ""),
    ] {
        let mut farm = farm();
        says(&mut farm, "a", Says::SeasonTotal { most: q(most), per: Period::Year });
        record(&mut farm, "a", date(2031, 5, 1), 40, "80 ac");
        // Of another product and of another year it says nothing.
        record(&mut farm, "b", date(2031, 5, 1), 40, "80 ac");
        record(&mut farm, "a", date(2030, 12, 31), 40, "80 ac");
        let found = barred(&farm, date(2031, 6, 12), Bars::Total);
        assert_eq!(found.is_some(), used_up, "{most}");
        if let Some(found) = found {
            assert!(found.text.contains(words), "{}", found.text);
            assert_eq!((found.until, found.records.len()), (Until::Day(date(2032, 1, 1)), 1));
            of_page_3(&found);
        }
    }
}

#[test]
fn a_total_of_an_active_counts_it_in_every_product() {
    let mut farm = farm();
    let active = "alphazine".to_owned();
    says(&mut farm, "a", Says::ActiveSeasonTotal { active, most: q("2.5 lb ai/ac"), per: Period::TwelveMonths });
    farm.products.insert("c".to_owned(), product("Gamma 480 SL (demo)", "alphazine", "9"));
    // 32 fl oz of 480 g/L are 1.00 lb: a quarter gallon of 4.006 lb. Two and the least of a third are 3 lb.
    record(&mut farm, "c", date(2030, 9, 1), 20, "80 ac");
    assert_eq!(barred(&farm, date(2031, 6, 12), Bars::ActiveTotal), None);
    record(&mut farm, "a", date(2031, 5, 1), 20, "80 ac");
    let found = barred(&farm, date(2031, 6, 12), Bars::ActiveTotal).unwrap();
    assert_eq!((found.until, found.records.len()), (Until::Day(date(2031, 9, 1)), 2));
    of_page_3(&found);
}

#[test]
fn harvest_before_and_after() {
    let mut farm = farm();
    says(&mut farm, "a", Says::HarvestInterval { days: 30 });
    farm.fields["f"].harvest = Some(date(2031, 7, 12));
    // 12 June plus 30 days is 12 July.
    assert_eq!(barred(&farm, date(2031, 6, 12), Bars::BeforeHarvest), None);
    let found = barred(&farm, date(2031, 6, 13), Bars::BeforeHarvest).unwrap();
    assert_eq!((found.level, found.until), (Level::Stop, Until::Harvest(date(2031, 7, 12))));
    assert!(found.text.contains("in 29 days"), "{}", found.text);
    of_page_3(&found);
    // What is on it keeps it from harvest.
    let id = record(&mut farm, "a", date(2031, 6, 20), 20, "80 ac");
    let found = barred(&farm, date(2031, 7, 1), Bars::Harvest).unwrap();
    assert_eq!((found.until, &found.records), (Until::Day(date(2031, 7, 20)), &vec![id]));
    assert!(found.text.contains("it is expected on"), "{}", found.text);
    assert_eq!(barred(&farm, date(2031, 7, 20), Bars::Harvest), None);
}

#[test]
fn next_crops_by_the_labels_with_the_first_day_of_each() {
    let mut farm = farm();
    for (crop, months) in [("corn or grain sorghum", 9), ("wheat", 4), ("any other crop", 18)] {
        says(&mut farm, "a", Says::PlantBack { next_crop: crop.to_owned(), months });
    }
    says(&mut farm, "b", Says::PlantBack { next_crop: "corn".to_owned(), months: 10 });
    "canola".clone_into(&mut farm.fields["f"].next_crop);
    let alpha = record(&mut farm, "a", date(2031, 5, 1), 20, "80 ac");
    let beta = record(&mut farm, "b", date(2031, 5, 20), 20, "80 ac");
    let following = on(&farm, date(2031, 10, 1)).following;
    let days: Vec<_> = following.crops.iter().map(|next| (next.crop.as_str(), next.planned, next.first())).collect();
    assert_eq!(
        days,
        [
            // By "any other crop": 18 months after 1 May 2031.
            ("canola", true, Some(date(2032, 11, 1))),
            // Four months after 1 May have run out, and a crop that is named is no other one.
            ("wheat", false, None),
            ("grain sorghum", false, Some(date(2032, 2, 1))),
            ("corn", false, Some(date(2032, 3, 20))),
            ("any other crop", false, Some(date(2032, 11, 1))),
        ]
    );
    let corn = following.crops.iter().find(|next| next.crop == "corn").unwrap();
    let because = corn.because.as_ref().unwrap();
    assert_eq!(
        (because.months, because.record.as_str(), because.at.as_str()),
        (10, beta.as_str(), "Beta 480 SL (demo), page 3")
    );
    // Beta's limit runs and does not name wheat.
    let wheat = following.crops.iter().find(|next| next.crop == "wheat").unwrap();
    assert_eq!(wheat.silent, ["Beta 480 SL (demo)"]);
    let next = barred(&farm, date(2031, 10, 1), Bars::NextCrop).unwrap();
    assert_eq!((next.until, &next.records), (Until::Day(date(2032, 11, 1)), &vec![alpha]));
    // A pesticide without any plant-back time is named.
    farm.products["b"].label.clear();
    assert_eq!(on(&farm, date(2031, 10, 1)).following.untyped, ["Beta 480 SL (demo)"]);
    assert!(on(&farm, date(2032, 10, 1)).following.untyped.is_empty());
}

#[test]
fn re_entry_runs_by_the_hour() {
    let mut farm = farm();
    says(&mut farm, "a", Says::ReEntry { hours: 12 });
    let id = record(&mut farm, "a", date(2031, 6, 12), 20, "80 ac");
    farm.records[&id].end = Some(jiff::civil::time(9, 30, 0, 0));
    let log = Log::of(&farm);
    let at = |hour, minute| {
        let page = page(&farm, &log, "f", date(2031, 6, 12).at(hour, minute, 0, 0)).unwrap();
        page.barred.into_iter().find(|barred| barred.bars == Bars::Entry)
    };
    // 09:30 and 12 hours are 21:30.
    assert_eq!(at(21, 29).unwrap().until, Until::Moment(date(2031, 6, 12).at(21, 30, 0, 0)));
    assert_eq!(at(21, 30), None);
    // One that is not typed is said for 30 days, common practice.
    farm.products["a"].label.pop();
    let found = barred(&farm, date(2031, 7, 12), Bars::Entry).unwrap();
    assert_eq!((found.level, found.until), (Level::Check, Until::Open));
    assert_eq!(barred(&farm, date(2031, 7, 13), Bars::Entry), None);
}

#[test]
fn crops_and_groups_over_the_years() {
    let mut farm = farm();
    for year in 2029..=2031 {
        let id = record(&mut farm, "a", date(year, 6, 1), 20, "80 ac");
        if year == 2030 {
            farm.records[&id].fields["f"].crop = "Corn".into();
        }
    }
    let mut closed = ClosedSeason { closed: date(2028, 12, 31), crops: IndexMap::new(), note: String::new() };
    closed.crops.insert("f".to_owned(), "wheat".to_owned());
    farm.closed.insert("2028".to_owned(), closed);
    let page = on(&farm, date(2031, 6, 12));
    let crops: Vec<_> = page
        .crops
        .iter()
        .map(|year| (year.year, year.crops.iter().map(|(crop, from)| (crop.as_str(), *from)).collect::<Vec<_>>()))
        .collect();
    assert_eq!(
        crops,
        [
            (2031, vec![("soybean", CropFrom::Field)]),
            (2030, vec![("Corn", CropFrom::Records)]),
            (2029, vec![("soybean", CropFrom::Records)]),
            (2028, vec![("wheat", CropFrom::Closed)]),
        ]
    );
    assert_eq!(page.sprayed.iter().map(|sprayed| sprayed.date.year()).collect::<Vec<_>>(), [2031, 2030, 2029]);
    let (first, line) = (&page.sprayed[0], &page.sprayed[0].lines[0]);
    assert_eq!((first.groups.len(), line.actives.as_slice()), (1, &["alphazine".to_owned()][..]));
    // The repeats are those of the review.
    let review = tankard_core::season::review::of_farm(&farm, &tankard_core::season::review::Choice::all());
    assert_eq!(page.groups.as_ref(), review.resistance.fields.first());
    let again = page.groups.unwrap().rows[0].came_again_on(date(2031, 6, 1));
    assert_eq!(page.sprayed[0].groups, [(ProductKind::Herbicide, "9".to_owned(), again)]);
}

/// The levels at which the plan of a pass with Alpha at its least rate speaks of a rule on a day.
fn planned(farm: &Farm, day: Date, bars: Bars) -> Option<Level> {
    let mut farm = farm.clone();
    let mut pass = Pass::new("Asked", day);
    pass.fields.push("f".to_owned());
    "w".clone_into(&mut pass.water);
    "r".clone_into(&mut pass.rig);
    pass.carrier = Some(q("15 gal/ac"));
    pass.mix.push(Line::new("a", q("32 fl oz/ac")));
    farm.passes.insert("p".to_owned(), pass);
    let words = match bars {
        Bars::Applications => "would be application number",
        Bars::Spacing => "days between two",
        Bars::Total => "brings Alpha",
        Bars::ActiveTotal => "brings alphazine",
        Bars::BeforeHarvest => "days to harvest; ",
        Bars::Dates => "may be used",
        Bars::Standing => "months to soybean",
        Bars::Harvest => "which keeps it from harvest until",
        Bars::Entry | Bars::NextCrop => unreachable!("they are no rule of a pass"),
    };
    let findings = plan(&farm, "p").unwrap().findings;
    let levels = findings.iter().filter(|finding| finding.text.contains(words)).map(|finding| finding.level);
    levels.filter(|level| *level > Level::Note).max()
}

fn period() -> impl Strategy<Value = Period> {
    prop_oneof![Just(Period::Year), Just(Period::Crop), Just(Period::TwelveMonths)]
}

/// Totals hold at least one application, else nothing would have to be used up.
fn statement() -> impl Strategy<Value = Says> {
    let total = |ounces: u32| AsTyped::parse(&format!("{ounces} fl oz/ac")).unwrap();
    let active = |tenths: u32| AsTyped::parse(&format!("{}.{} lb ai/ac", tenths / 10, tenths % 10)).unwrap();
    prop_oneof![
        (0u32..4, 0u32..60, period()).prop_map(|(most, days_apart, per)| Says::Applications { most, days_apart, per }),
        (33u32..200, period()).prop_map(move |(ounces, per)| Says::SeasonTotal { most: total(ounces), per }),
        (11u32..60, period()).prop_map(move |(tenths, per)| Says::ActiveSeasonTotal {
            active: "alphazine".to_owned(),
            most: active(tenths),
            per,
        }),
        (0u32..90).prop_map(|days| Says::HarvestInterval { days }),
        (1i8..=12, 1i8..=12).prop_map(|(from, to)| Says::Dates {
            from: format!("{from:02}-10").parse().ok(),
            to: format!("{to:02}-20").parse().ok(),
        }),
        (0u32..14, any::<bool>()).prop_map(|(months, named)| Says::PlantBack {
            next_crop: if named { "soybean" } else { "any other crop" }.to_owned(),
            months,
        }),
    ]
}

proptest! {
    #![proptest_config(cases(300))]

    /// What the page forbids, a pass on that day meets too, with the same weight, and the other way round; and what is said to end on a
    /// day does so, and not before.
    #[test]
    fn the_page_forbids_what_the_plan_does(
        statements in prop::collection::vec((statement(), any::<bool>()), 1..4),
        records in prop::collection::vec((0i32..700, 1u32..60, any::<bool>(), any::<bool>()), 0..7),
        (planted, harvest) in (prop::option::of(-200i32..100), prop::option::of(-20i32..120)),
        day in 0i32..60,
    ) {
        let today = date(2031, 6, 1).saturating_add(jiff::Span::new().days(day));
        let days = |days: i32| today.saturating_add(jiff::Span::new().days(days));
        let mut farm = farm();
        for (page, (said, all_crops)) in statements.into_iter().enumerate() {
            let mut statement = Statement::new(said, &format!("page {page}"));
            if !all_crops {
                "soybean".clone_into(&mut statement.crop);
            }
            farm.products["a"].label.push(statement);
        }
        farm.fields["f"].planted = planted.map(days);
        farm.fields["f"].harvest = harvest.map(days);
        for (before, gallons, whole, of_alpha) in records {
            let product = if of_alpha { "a" } else { "b" };
            record(&mut farm, product, days(30 - before), gallons, if whole { "80 ac" } else { "30 ac" });
        }
        let barred = on(&farm, today).barred;
        for bars in [
            Bars::Applications, Bars::Spacing, Bars::Total, Bars::ActiveTotal, Bars::BeforeHarvest, Bars::Dates, Bars::Standing,
        ] {
            let said = barred.iter().filter(|barred| barred.bars == bars).map(|barred| barred.level).max();
            prop_assert_eq!(said, planned(&farm, today, bars), "{:?} on {}", bars, today);
        }
        for found in &barred {
            let (Until::Day(free), Some(_)) = (found.until, &found.product) else { continue };
            let still = |day: Date| {
                on(&farm, day).barred.iter().any(|other| other.bars == found.bars && other.basis == found.basis)
            };
            prop_assert!(!still(free), "{:?} on {}", found, free);
            prop_assert!(still(free.yesterday().unwrap()), "{:?} before {}", found, free);
        }
    }
}
