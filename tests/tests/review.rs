//! The season review: small farms reckoned by hand here, a large one against a script in `sums/`.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod sums;

use std::collections::{BTreeMap, BTreeSet};

use jiff::civil::{date, datetime, time};
use rust_decimal::prelude::ToPrimitive;
use serde_json::Value;
use tankard_core::farm::{
    AdjuvantClass, ClosedSeason, Effect, Farm, Field, Formulation, Outcome, Pass, Plot, Product, ProductKind, Record,
    RecordActive, RecordField, RecordLine, Trial,
};
use tankard_core::quantity::{ActiveBasis, Amount, Area, AsTyped, Money, Quantity, Volume};
use tankard_core::season::amend::amend;
use tankard_core::season::record::of_product;
use tankard_core::season::review::compare::{Of, Side, Verdict, compare};
use tankard_core::season::review::{Again, Choice, Index, Review, Spent, effects, of_farm, review, weather, words};
use tankard_core::season::seal::sign;
use tankard_core::season::trials::judge;
use tankard_core::season::{Reach, product_so_far};
use tankard_file::records_csv;
use tankard_tests::log::{Shape, farm as long_log};

fn typed<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

fn untidy() -> Farm {
    let mut farm = long_log(Shape { seasons: 3, records: 50, fields: 7, untidy: true, seed: 20_261_127 }).unwrap();
    // What came of them is in no sum, and long.
    farm.records.values_mut().for_each(|record| record.outcomes.clear());
    record(&mut farm, "bare", "2032-04-02", &[]);
    record(&mut farm, "nothing-out", "2032-04-03", &[("field-0", "12.5 ac"), ("field-3", "31 ac")]);
    record(&mut farm, "one-zero", "2032-04-04", &[("field-3", "0 ac"), ("field-0", "33 ac"), ("field-2", "7.7 ha")]);
    record(&mut farm, "no-area", "2032-04-05", &[("field-3", "0 ac"), ("field-0", "0 ac"), ("field-2", "0 ha")]);
    record(&mut farm, "twice", "2032-04-06", &[("field-3", "40 ac")]);
    let glyphosate = farm.products["product-0"].clone();
    for (id, amounts) in
        [("one-zero", ["11 gal", "0.7 gal"]), ("no-area", ["3 L", "1 L"]), ("twice", ["9 gal", "0 gal"])]
    {
        for amount in amounts {
            let line = of_product(&"product-0".to_owned(), &glyphosate, typed(amount), farm.units);
            farm.records[id].lines.push(line);
        }
        farm.records[id].volume = Some(typed("700.5 gal"));
        (farm.records[id].start, farm.records[id].end) = (Some(time(21, 40, 0, 0)), Some(time(0, 0, 0, 0)));
    }
    let signed = sign(&farm.records["twice"], "A. Demo", datetime(2032, 4, 6, 22, 0, 0, 0)).unwrap();
    let mut changed = signed.clone();
    changed.fields["field-3"].area = typed("36 ac");
    farm.records["twice"] = amend(&signed, &changed, "A. Demo", datetime(2032, 4, 7, 7, 0, 0, 0), "misread").unwrap();
    farm
}

fn money(money: Money) -> f64 {
    money.amount().to_f64().unwrap()
}

fn exported(farm: &Farm) -> String {
    records_csv::write(farm, |_| true).unwrap()
}

/// Parts add up to the whole, whichever way it is cut.
#[test]
fn seasons_fields_and_crops_add_up() {
    let farm = untidy();
    let index = Index::of(&farm);
    let of = |choice: &Choice| review(&index.pick(choice));
    let all = of(&Choice::all());
    let seasons: Vec<Review> = index.seasons().into_iter().map(|year| of(&Choice::season(year))).collect();
    let ids: BTreeSet<String> = index.fields().map(|(id, _)| id.clone()).chain([String::new()]).collect();
    let fields: Vec<Review> = ids.into_iter().map(|id| of(&Choice { fields: vec![id], ..Choice::all() })).collect();
    let crops: BTreeSet<String> = index.crops().map(str::to_lowercase).collect();
    let crops: Vec<Review> = crops.into_iter().map(|crop| of(&Choice { crops: vec![crop], ..Choice::all() })).collect();
    for parts in [&seasons, &fields, &crops] {
        let treated: f64 = parts.iter().map(|part| part.passes.treated.to_acres()).sum();
        assert!((treated / all.passes.treated.to_acres() - 1.0).abs() < 1e-9);
        let cost: f64 = parts.iter().map(|part| money(part.cost.all.spent.money)).sum();
        assert!((cost / money(all.cost.all.spent.money) - 1.0).abs() < 1e-9);
        assert_eq!(
            parts.iter().map(|part| part.cost.all.spent.without_price).sum::<usize>(),
            all.cost.all.spent.without_price
        );
        let kinds: f64 = parts.iter().flat_map(|part| &part.cost.kinds).map(|row| money(row.spent.money)).sum();
        assert!((kinds / cost - 1.0).abs() < 1e-9);
    }
    assert_eq!(seasons.iter().map(|part| part.passes.passes).sum::<usize>(), all.passes.passes);
    assert!(
        all.passes.distinct.least <= all.passes.distinct.most && all.passes.distinct.most <= all.passes.treated * 3.0
    );
}

/// Of each record the shares of its fields add up to what its products cost, in decimals.
#[test]
fn shares_of_money_add_up_record_by_record() {
    let mut farm = untidy();
    let records = std::mem::take(&mut farm.records);
    let mut shared = 0;
    for (id, record) in records {
        let costs = record.lines.iter().filter_map(|line| line.price.as_ref()?.of(line.amount.value()));
        let whole = costs.fold(Money::default(), Money::plus).amount();
        shared += usize::from(record.fields.len() > 1 && !whole.is_zero());
        farm.records = std::iter::once((id.clone(), record)).collect();
        let cost = of_farm(&farm, &Choice::all()).cost;
        let by_field = cost.fields.iter().fold(Money::default(), |sum, row| sum.plus(row.spent.money)).amount();
        let off = (by_field - whole).abs();
        assert!(off <= "0.000000001".parse().unwrap(), "{id}: {by_field} and {whole}");
        assert_eq!(cost.all.spent.money.amount(), by_field);
    }
    assert!(shared > 10, "{shared}");
}

/// Two fields of 80 ac and a herbicide at 20 a gallon.
fn small() -> Farm {
    let mut farm = Farm::new("Test");
    farm.fields.insert("a".to_owned(), Field::new("A", typed("80 ac")));
    farm.fields.insert("b".to_owned(), Field::new("B", typed("80 ac")));
    farm
}

fn record(farm: &mut Farm, id: &str, day: &str, fields: &[(&str, &str)]) {
    let mut record = Record::new(id, day.parse().unwrap());
    for (field, area) in fields {
        record.fields.insert((*field).to_owned(), RecordField::new(&field.to_uppercase(), typed(area)));
    }
    farm.records.insert(id.to_owned(), record);
}

fn with(farm: &mut Farm, id: &str, name: &str, group: &str, kind: ProductKind) {
    let mut line = RecordLine::new(name, name, typed("10 gal"));
    line.kind = Some(kind);
    line.actives.push(RecordActive {
        name: name.into(),
        group: group.into(),
        basis: ActiveBasis::ActiveIngredient,
        mass: typed("40 lb"),
    });
    farm.records[id].lines.push(line);
}

/// By hand.
#[test]
fn ground_is_counted_once_where_it_is_one_application() {
    let mut farm = small();
    for (id, rest_of) in [("first", ""), ("rest", "first"), ("other", "")] {
        let mut pass = Pass::new(id, date(2031, 5, 1));
        rest_of.clone_into(&mut pass.rest_of);
        farm.passes.insert(id.to_owned(), pass);
    }
    record(&mut farm, "first", "2031-05-01", &[("a", "50 ac"), ("b", "80 ac")]);
    record(&mut farm, "rest", "2031-05-02", &[("a", "20 ac")]);
    record(&mut farm, "other", "2031-06-10", &[("a", "60 ac")]);
    for id in ["first", "rest", "other"] {
        farm.records[id].pass = Some(id.into());
    }
    let passes = of_farm(&farm, &Choice::season(2031)).passes;
    assert!((passes.treated.to_acres() - 210.0).abs() < 1e-9);
    // On A the first application had 50 + 20 acres, the other 60: at least 70, at most all 80.
    assert!((passes.distinct.least.to_acres() - 150.0).abs() < 1e-9);
    assert!((passes.distinct.most.to_acres() - 160.0).abs() < 1e-9);
    assert_eq!(passes.months.len(), 12);
    assert_eq!((passes.months[4].passes, passes.months[5].passes), (2, 1));
    assert!((passes.months[5].so_far.to_acres() - 210.0).abs() < 1e-9);
    assert!(words::distinct(passes.distinct, farm.units).starts_with("150 to 160 ac"));
}

/// Bands of 10 in on rows of 30 in: 20 acres of bands lie on 60 acres of field (by hand).
#[test]
fn bands_drive_over_more_than_they_treat() {
    let mut farm = long_log(Shape { seasons: 1, records: 1, fields: 2, untidy: false, seed: 1 }).unwrap();
    farm.records.clear();
    record(&mut farm, "bands", "2031-05-01", &[("field-0", "20 ac")]);
    farm.records["bands"].pass = Some("in-bands".into());
    farm.fields["field-0"].area = typed("90 ac");
    let passes = of_farm(&farm, &Choice::all()).passes;
    assert!((passes.treated.to_acres() - 20.0).abs() < 1e-9);
    assert!((passes.distinct.least.to_acres() - 60.0).abs() < 1e-9);
    // Ten more acres of bands of the same pass are the other 30 acres of the field.
    record(&mut farm, "more-bands", "2031-05-02", &[("field-0", "10 ac")]);
    farm.records["more-bands"].pass = Some("in-bands".into());
    let passes = of_farm(&farm, &Choice::all()).passes;
    assert!((passes.treated.to_acres() - 30.0).abs() < 1e-9);
    assert!((passes.distinct.least.to_acres() - 90.0).abs() < 1e-9 && passes.distinct.most == passes.distinct.least);
    // What would lie beyond the field is another application.
    record(&mut farm, "yet-more", "2031-05-03", &[("field-0", "1 ac")]);
    farm.records["yet-more"].pass = Some("in-bands".into());
    let passes = of_farm(&farm, &Choice::all()).passes;
    assert!(
        (passes.distinct.least.to_acres() - 90.0).abs() < 1e-9 && (passes.distinct.most.to_acres() - 90.0).abs() < 1e-9
    );
    assert!((passes.treated.to_acres() - 31.0).abs() < 1e-9);
}

/// By hand: a month is that of the day on which spraying began, and the ground so far begins anew in January.
#[test]
fn months_of_two_seasons() {
    let mut farm = small();
    for (id, day, acres) in [("a", "2031-11-30", "40 ac"), ("b", "2031-12-31", "60 ac"), ("c", "2032-01-01", "80 ac")] {
        record(&mut farm, id, day, &[("a", acres), ("b", "10 ac")]);
    }
    farm.records["b"].start = Some(time(22, 0, 0, 0));
    farm.records["b"].end = Some(time(2, 0, 0, 0));
    let passes = of_farm(&farm, &Choice::all()).passes;
    let with: Vec<_> = passes.months.iter().filter(|month| month.passes > 0).collect();
    let rounded = |area: Area| (area.to_acres() * 1e6).round() / 1e6;
    let seen: Vec<_> =
        with.iter().map(|m| (m.year, m.month, m.passes, rounded(m.treated), rounded(m.so_far))).collect();
    assert_eq!(seen, [(2031, 11, 1, 50.0, 50.0), (2031, 12, 1, 70.0, 120.0), (2032, 1, 1, 90.0, 90.0)]);
    let years: Vec<_> = passes.years.iter().map(|year| (year.year, year.passes, rounded(year.treated))).collect();
    assert_eq!(years, [(2031, 2, 120.0), (2032, 1, 90.0)]);
}

/// 20:00 to midnight is four hours, 60 and 20 acres share it three to one; where no time passes none is known (by hand).
#[test]
fn hours_past_midnight_are_shared_by_area() {
    let mut farm = small();
    let clock = |hour| Some(time(hour, 0, 0, 0));
    for (id, start, end) in [("night", clock(20), clock(0)), ("none", clock(9), clock(9)), ("open", clock(9), None)] {
        record(&mut farm, id, "2031-05-01", &[("a", "60 ac"), ("b", "20 ac")]);
        (farm.records[id].start, farm.records[id].end) = (start, end);
    }
    let hours = |fields: &[&str]| {
        let fields = fields.iter().map(|field| (*field).to_owned()).collect();
        let row = of_farm(&farm, &Choice { fields, ..Choice::all() }).work.rigs[0].clone();
        assert_eq!((row.times, row.without_times), (3, 2));
        (row.time.to_hours(), row.timed.to_acres().round(), row.treated.to_acres().round())
    };
    assert_eq!(hours(&[]), (4.0, 80.0, 240.0));
    assert_eq!(hours(&["a"]), (3.0, 60.0, 180.0));
    assert_eq!(hours(&["b"]), (1.0, 20.0, 60.0));
}

/// 60, 0 and 20 acres of one record with 8 gallons at 20 a gallon and 80 lb of an active: 6, 0 and 2 gallons (by hand), in the
/// review as in the export.
#[test]
fn of_several_fields_one_has_no_area() {
    let mut farm = small();
    record(&mut farm, "r", "2031-05-01", &[("a", "60 ac"), ("none", "0 ac"), ("b", "20 ac")]);
    with(&mut farm, "r", "p", "9", ProductKind::Herbicide);
    let line = &mut farm.records["r"].lines[0];
    (line.amount, line.price) = (typed("8 gal"), Some(typed("20 / gal")));
    farm.records["r"].volume = Some(typed("800 gal"));
    let found = of_farm(&farm, &Choice::all());
    assert_eq!((found.passes.passes, found.passes.without_area, found.products.rows[0].times), (1, 1, 1));
    let near = |found: f64, expected: f64| assert!((found - expected).abs() < 1e-9, "{found} and {expected}");
    for (field, part) in [("a", 0.75), ("none", 0.0), ("b", 0.25)] {
        let found = of_farm(&farm, &Choice { fields: vec![field.to_owned()], ..Choice::all() });
        near(found.products.rows[0].amounts.liquid.unwrap().to_us_gallons(), 8.0 * part);
        near(found.actives.rows[0].mass.to_pounds(), 40.0 * part);
        near(money(found.cost.all.spent.money), 160.0 * part);
        near(found.work.waters[0].spray.to_us_gallons(), 800.0 * part);
        near(found.work.waters[0].water.to_us_gallons(), (800.0 - 8.0) * part);
        assert_eq!(found.cost.all.spent.without_price, 0);
    }
    // Where none has an area all have the same.
    for field in farm.records["r"].fields.values_mut() {
        field.area = typed("0 ac");
    }
    let found = of_farm(&farm, &Choice { fields: vec!["none".to_owned()], ..Choice::all() });
    near(found.products.rows[0].amounts.liquid.unwrap().to_us_gallons(), 8.0 / 3.0);
    let csv = exported(&farm);
    let rows: Vec<BTreeMap<String, String>> =
        csv::Reader::from_reader(csv.as_bytes()).deserialize().map(Result::unwrap).collect();
    assert_eq!(rows.len(), 3);
    for row in &rows {
        near(row["amount_l"].parse().unwrap(), 8.0 / 3.0 * 3.785_411_784);
    }
}

/// What stands in a record now counts, and once; what stood there before it was amended is in the export and in no sum (by hand).
#[test]
fn an_amended_record_counts_as_it_stands() {
    let mut farm = small();
    record(&mut farm, "r", "2031-05-01", &[("a", "80 ac")]);
    with(&mut farm, "r", "p", "9", ProductKind::Herbicide);
    let signed = sign(&farm.records["r"], "A. Demo", datetime(2031, 5, 1, 20, 0, 0, 0)).unwrap();
    let mut changed = signed.clone();
    changed.fields["a"].area = typed("60 ac");
    changed.lines[0].amount = typed("7.5 gal");
    farm.records["r"] = amend(&signed, &changed, "A. Demo", datetime(2031, 5, 2, 8, 0, 0, 0), "misread").unwrap();
    let found = of_farm(&farm, &Choice::all());
    assert_eq!((found.passes.passes, found.products.rows[0].times), (1, 1));
    assert!((found.passes.treated.to_acres() - 60.0).abs() < 1e-9);
    assert!((found.products.rows[0].amounts.liquid.unwrap().to_us_gallons() - 7.5).abs() < 1e-9);
    assert_eq!(found.resistance.fields[0].rows[0].years, [(2031, 1)]);
    let csv = exported(&farm);
    assert!(csv.contains("80 ac") && csv.contains("misread"));
    let reading = records_csv::read(csv.as_bytes()).unwrap();
    assert_eq!((reading.records.len(), &reading.records[0].record), (1, &farm.records["r"]));
}

/// The facts: Norsworthy et al. 2012 and the wording of state guides for herbicides; University of California IPM for fungicides; the
/// old number 7 of the herbicides is 5, that of the fungicides is not.
#[test]
fn groups_that_come_again() {
    use ProductKind::{Fungicide, Herbicide};
    let mut farm = small();
    for (id, day, kind, group) in [
        ("1", "2030-05-01", Herbicide, "9"),
        ("2", "2031-05-01", Herbicide, "Group 9"),
        ("3", "2031-05-20", Herbicide, "7"),
        ("4", "2031-06-10", Herbicide, "5/27"),
        ("5", "2031-06-20", Fungicide, "3"),
        ("6", "2031-06-25", Fungicide, "3"),
        ("7", "2031-07-01", Fungicide, "11"),
        ("8", "2031-07-10", Fungicide, "11"),
        ("9", "2031-07-20", Fungicide, "7"),
    ] {
        record(&mut farm, id, day, &[("a", "80 ac")]);
        with(&mut farm, id, &format!("active {id}"), group, kind);
    }
    // Of the same group twice in one tank, and a group 0, nothing more is counted.
    with(&mut farm, "2", "another", "9", Herbicide);
    with(&mut farm, "2", "unknown", "0", Herbicide);
    let of = |choice: &Choice| of_farm(&farm, choice).resistance;
    let found = of(&Choice::season(2031));
    assert_eq!(found.fields.len(), 1);
    let rows = &found.fields[0].rows;
    let seen: Vec<(String, Vec<(i16, usize)>)> =
        rows.iter().map(|row| (words::group(row.kind, &row.group), row.years.clone())).collect();
    let once = |times| vec![(2031, times)];
    assert_eq!(
        seen,
        [
            ("group 5".to_owned(), once(2)),
            ("group 9".to_owned(), once(1)),
            ("group 27".to_owned(), once(1)),
            ("fungicide group 3".to_owned(), once(2)),
            ("fungicide group 7".to_owned(), once(1)),
            ("fungicide group 11".to_owned(), once(2)),
        ]
    );
    let again = |at: usize| rows[at].repeats.iter().map(|repeat| repeat.again).collect::<Vec<_>>();
    let (may, june) = (date(2031, 5, 20), date(2031, 6, 10));
    assert_eq!(again(0), [Again::InSeason { year: 2031, times: 2 }, Again::InARow { from: may, to: june, times: 2 }]);
    // What lies before the season counts where it runs into it.
    let first = date(2030, 5, 1);
    let row = Again::InARow { from: first, to: date(2031, 5, 1), times: 2 };
    assert_eq!(again(1), [Again::InYears { from: 2030, to: 2031 }, row]);
    assert!(again(2).is_empty() && again(3).is_empty() && again(4).is_empty());
    // Of group 11 one is the most before the group is changed.
    assert_eq!(again(5), [Again::InARow { from: date(2031, 7, 1), to: date(2031, 7, 10), times: 2 }]);
    assert!(rows[5].repeats[0].basis.source().contains("California"));
    // In 2030 alone nothing had come again yet.
    assert!(of(&Choice::season(2030)).fields[0].rows.iter().all(|row| row.repeats.is_empty()));
    assert_eq!(found.groupless, [("unknown".to_owned(), 1)]);
}

/// The rest of an application is not another time, also where another group went out between its parts (by hand).
#[test]
fn parts_of_an_application_are_one_time() {
    let mut farm = small();
    for (id, rest_of) in [("part", ""), ("rest", "part"), ("other", "")] {
        let mut pass = Pass::new(id, date(2031, 5, 1));
        rest_of.clone_into(&mut pass.rest_of);
        farm.passes.insert(id.to_owned(), pass);
    }
    for (id, day, area, group) in [
        ("part", "2031-05-01", "50 ac", "9"),
        ("other", "2031-05-02", "80 ac", "15"),
        ("rest", "2031-05-03", "30 ac", "9"),
    ] {
        record(&mut farm, id, day, &[("a", area)]);
        farm.records[id].pass = Some(id.into());
        with(&mut farm, id, "an active", group, ProductKind::Herbicide);
    }
    let rows = of_farm(&farm, &Choice::all()).resistance.fields[0].rows.clone();
    assert_eq!(rows.iter().map(|row| row.years.clone()).collect::<Vec<_>>(), [[(2031, 1)], [(2031, 1)]]);
    assert!(rows.iter().all(|row| row.repeats.is_empty()));
}

/// 10 gal of product on 80 ac, in records of some acres each, all of one pass (by hand): label totals, distinct ground and groups take
/// the same for one application.
#[test]
fn a_pass_recorded_in_halves_is_one_application() {
    let mut farm = small();
    farm.passes.insert("halves".to_owned(), Pass::new("In halves", date(2031, 5, 1)));
    let product = Product::new("Product (demo)", ProductKind::Herbicide, Formulation::SL);
    farm.products.insert("p".to_owned(), product);
    let (field, pass) = ("a".to_owned(), "planned".to_owned());
    let mut put = |day: i8, acres: u32| {
        let id = format!("r{day}");
        record(&mut farm, &id, &format!("2031-05-{day:02}"), &[("a", &format!("{acres} ac"))]);
        with(&mut farm, &id, "p", "9", ProductKind::Herbicide);
        farm.records[&id].lines[0].amount = typed(&format!("{} gal", f64::from(acres) / 8.0));
        farm.records[&id].pass = Some("halves".into());
        let found = of_farm(&farm, &Choice::all());
        let ends = found.passes.distinct;
        let reach = Reach::always(&field, &pass, date(2031, 12, 31));
        let had = product_so_far(&farm, &tankard_core::season::Log::of(&farm), reach, "p")
            .sum
            .unwrap()
            .over(Area::from_acres(80.0));
        let had = had.ratio(Amount::Volume(Volume::from_us_gallons(10.0))).unwrap();
        let row = found.resistance.fields[0].rows[0].clone();
        let acres = |area: Area| (area.to_acres() * 1e6).round() / 1e6;
        ((acres(ends.least), acres(ends.most)), row.years[0].1, (had * 1e6).round() / 1e6, row.repeats.len())
    };
    assert_eq!(put(1, 30), ((30.0, 30.0), 1, 1.0, 0));
    assert_eq!(put(2, 50), ((80.0, 80.0), 1, 1.0, 0));
    // All of it again is another time, and halves of a third time are a third, also beside the first two.
    let (ground, times, had, repeats) = put(3, 80);
    assert_eq!((ground, times, had), ((80.0, 80.0), 2, 2.0));
    assert!(repeats > 0);
    assert_eq!(put(4, 20).1, 3);
    let (ground, times, had, _) = put(5, 60);
    assert_eq!((ground, times, had), ((80.0, 80.0), 3, 3.0));
}

/// Halves of a first time, one of them recorded after the second time (by hand).
#[test]
fn a_half_that_comes_late_is_of_the_application_that_lacks_it() {
    let mut farm = small();
    farm.passes.insert("halves".to_owned(), Pass::new("In halves", date(2031, 5, 1)));
    farm.passes.insert("other".to_owned(), Pass::new("Another", date(2031, 5, 2)));
    // In another order than that of the days.
    for (day, acres, pass, group) in
        [(4, 80, "halves", "9"), (2, 80, "other", "15"), (1, 30, "halves", "9"), (3, 50, "halves", "9")]
    {
        let id = format!("r{day}");
        record(&mut farm, &id, &format!("2031-05-{day:02}"), &[("a", &format!("{acres} ac"))]);
        with(&mut farm, &id, "an active", group, ProductKind::Herbicide);
        farm.records[&id].pass = Some(pass.into());
    }
    let found = of_farm(&farm, &Choice::all());
    let rows = &found.resistance.fields[0].rows;
    assert_eq!(rows.iter().map(|row| row.years.clone()).collect::<Vec<_>>(), [[(2031, 2)], [(2031, 1)]]);
    // Of group 9 two applications are in a season; between them came the other one, so that none are in a row.
    let again: Vec<Again> = rows.iter().flat_map(|row| &row.repeats).map(|repeat| repeat.again).collect();
    assert!(!again.iter().any(|again| matches!(again, Again::InARow { .. })), "{again:?}");
    assert_eq!(found.passes.passes, 4);
    assert!((found.passes.distinct.least.to_acres() - 80.0).abs() < 1e-9);
}

/// Planned 10 gal on 80 ac, sprayed 9 gal on 60 ac: 0.15 against 0.125 gal/ac is 20 % too much; ground 25 % too little, spray 10 %.
#[test]
fn planned_against_applied_by_hand() {
    let mut farm = small();
    let mut shed = Product::new("Product (demo)", ProductKind::Herbicide, Formulation::SL);
    shed.actives.push(tankard_core::farm::Active {
        name: "glyphosate".to_owned(),
        group: "9".to_owned(),
        basis: ActiveBasis::AcidEquivalent,
        content: typed("4 lb/gal"),
    });
    farm.products.insert("p".to_owned(), shed);
    record(&mut farm, "off", "2031-05-01", &[("a", "60 ac")]);
    record(&mut farm, "right", "2031-05-02", &[("a", "80 ac")]);
    record(&mut farm, "unplanned", "2031-05-03", &[("a", "80 ac")]);
    record(&mut farm, "unplanned too", "2031-05-04", &[("a", "80 ac")]);
    for (id, amount) in [("off", "9 gal"), ("right", "10 gal"), ("unplanned", "10 gal"), ("unplanned too", "10 gal")] {
        let mut line = RecordLine::new("p", "Product (demo)", typed(amount));
        line.planned = (!id.starts_with("unplanned")).then(|| typed("10 gal"));
        let record = &mut farm.records[id];
        record.lines.push(line);
        if !id.starts_with("unplanned") {
            record.fields["a"].planned = Some(typed("80 ac"));
        }
    }
    farm.records["off"].planned = Some(typed("1000 gal"));
    farm.records["off"].volume = Some(typed("900 gal"));
    farm.records["off"].left =
        Some(tankard_core::farm::Left { volume: typed("100 gal"), went: "thinned and sprayed out".into() });
    let found = of_farm(&farm, &Choice::all());
    // A herbicide whose record kept no active: each time counts.
    assert_eq!(found.actives.silent, [("Product (demo)".to_owned(), 4)]);
    let planned = found.planned;
    let per_cent = |share: tankard_core::quantity::Share| (share.to_percent() * 1e9).round() / 1e9;
    let rate = planned.rate.unwrap();
    assert_eq!(
        (rate.n, per_cent(rate.least), per_cent(rate.most), per_cent(rate.mean), per_cent(rate.median)),
        (2, 0.0, 20.0, 10.0, 10.0)
    );
    // From 20 % on is the last bar, from -2 to below 2 % the middle one.
    assert_eq!(rate.bars, [0, 0, 0, 0, 1, 0, 0, 0, 1]);
    let area = planned.area.unwrap();
    assert_eq!((area.n, per_cent(area.least), per_cent(area.most)), (2, -25.0, 0.0));
    assert_eq!(area.bars, [1, 0, 0, 0, 1, 0, 0, 0, 0]);
    let volume = planned.volume.unwrap();
    assert_eq!((volume.n, per_cent(volume.mean)), (1, -10.0));
    assert_eq!(volume.bars, [0, 0, 1, 0, 0, 0, 0, 0, 0]);
    assert_eq!((planned.without_plan, planned.left_told, planned.worst.len()), (2, 1, 1));
    assert!((planned.left.to_us_gallons() - 100.0).abs() < 1e-9);
    assert_eq!((planned.worst[0].record.as_str(), per_cent(planned.worst[0].error)), ("off", 20.0));
}

/// What an older version of the program did not keep is taken from the shed where it may be, and told.
#[test]
fn records_of_older_versions() {
    let mut farm = small();
    let mut oil = Product::new("Oil (demo)", ProductKind::Adjuvant, Formulation::EC);
    (oil.class, oil.price) = (Some(AdjuvantClass::CropOilConcentrate), Some(typed("20 / gal")));
    farm.products.insert("oil".to_owned(), oil);
    record(&mut farm, "old", "2031-05-01", &[("a", "80 ac")]);
    farm.records["old"].lines.push(RecordLine::new("oil", "Oil (demo)", typed("10 gal")));
    farm.records["old"].start = Some(time(22, 30, 0, 0));
    farm.records["old"].end = Some(time(1, 0, 0, 0));
    let mut grew = ClosedSeason { closed: date(2031, 12, 1), crops: indexmap_of("a", "corn"), note: String::new() };
    farm.closed.insert("2031".to_owned(), grew.clone());
    grew.crops.clear();
    let found = of_farm(&farm, &Choice { crops: vec!["CORN".to_owned()], ..Choice::season(2031) });
    assert_eq!(found.adjuvants.rows[0].class, Some(AdjuvantClass::CropOilConcentrate));
    assert!(found.adjuvants.rows[0].from_shed && found.products.rows[0].from_shed);
    // The price of today is not that of the day.
    assert_eq!(found.cost.all.spent, Spent { without_price: 1, ..Spent::default() });
    assert_eq!(found.cost.without_price, [("Oil (demo)".to_owned(), 1)]);
    assert_eq!(words::spent(&found.cost.all.spent, "$"), "no price");
    let one = Spent { priced: 1, ..found.cost.all.spent };
    assert_eq!(words::spent(&one, "$"), "$0.00, without 1 use that has no price");
    // 80 acres in two and a half hours, over midnight.
    assert!((found.work.rigs[0].area_per_hour().unwrap().to_acres() - 32.0).abs() < 1e-9);
    assert_eq!((found.work.waters[0].without_volume, found.unmeasured.wind), (1, 1));
    farm.closed.insert("2031".to_owned(), grew);
    assert_eq!(of_farm(&farm, &Choice { crops: vec!["corn".to_owned()], ..Choice::all() }).passes.passes, 0);
}

fn indexmap_of(key: &str, value: &str) -> indexmap::IndexMap<String, String> {
    std::iter::once((key.to_owned(), value.to_owned())).collect()
}

fn rated(farm: &mut Farm, id: &str, field: &str, days: i64, effect: &Effect, rating: &str) {
    let record = &mut farm.records[id];
    record.outcomes.push(Outcome {
        field: field.into(),
        date: record.date.saturating_add(jiff::Span::new().days(days)),
        effect: Some(effect.clone()),
        rating: Some(typed(rating)),
        by: "".into(),
        photos: Vec::new(),
        note: "".into(),
    });
}

/// Eight fields, on each a strip with oil and one without on one day; what each was rated after 14 days.
fn strips(ratings: &[(u32, u32)]) -> (Farm, Trial) {
    let mut farm = Farm::new("Test");
    let mut trial = Trial {
        name: "Does the oil pay?".to_owned(),
        one: "crop oil".to_owned(),
        other: "no oil".to_owned(),
        ..Trial::default()
    };
    let weed = Effect::Control("waterhemp".into());
    for (n, (oil, none)) in ratings.iter().enumerate() {
        let field = format!("f{n}");
        farm.fields.insert(field.clone(), Field::new(&format!("F{n}"), typed("40 ac")));
        for (side, rating) in [("oil", oil), ("none", none)] {
            let id = format!("{side}-{n}");
            record(&mut farm, &id, "2031-06-01", &[(field.as_str(), "20 ac")]);
            with(&mut farm, &id, "mesotrione", "27", ProductKind::Herbicide);
            if side == "oil" {
                let mut line = RecordLine::new("coc", "Oil (demo)", typed("5 gal"));
                (line.kind, line.class) = (Some(ProductKind::Adjuvant), Some(AdjuvantClass::CropOilConcentrate));
                farm.records[&id].lines.push(line);
            }
            rated(&mut farm, &id, &field, 14, &weed, &format!("{rating} %"));
        }
        let plot = |side: &str| Plot { record: format!("{side}-{n}"), field: field.clone() };
        trial.pairs.push((plot("oil"), plot("none")));
    }
    (farm, trial)
}

const APART: [(u32, u32); 8] = [(90, 80), (85, 80), (95, 83), (88, 80), (92, 85), (90, 82), (97, 90), (80, 71)];

/// Differences 10, 5, 12, 8, 7, 8, 7, 9: mean 8.25, all above zero; p of the signs and ranks is 2 of 256 (by hand).
#[test]
fn a_trial_tells_its_sides_apart() {
    let (farm, trial) = strips(&APART);
    let judged = judge(&farm, &trial);
    assert!(judged.open.is_empty(), "{:?}", judged.open);
    assert_eq!(judged.comparisons.len(), 1);
    let found = &judged.comparisons[0];
    let paired = found.paired.unwrap();
    assert!((paired.mean - 8.25).abs() < 1e-9 && (paired.rank.unwrap().p - 2.0 / 256.0).abs() < 1e-12);
    assert_eq!((found.by_pairs, found.pairs.len()), (Verdict::OneHigher, 8));
    let says = words::by_pairs(found, &trial.one, &trial.other);
    // 8.25 to one digit, by the even neighbour.
    let begins = "Control of waterhemp, 11 to 17 days after was rated 8.2 per cent points higher with crop oil than with no oil (over 8 pairs";
    assert!(says.text.starts_with(begins), "{}", says.text);
    for cause in ["because", "due to", "caused", "thanks to"] {
        assert!(!says.text.contains(cause) && !words::no_cause().contains(cause));
    }
}

/// 84 and 96 % of one plot in one band are 90 %: the same as rated once.
#[test]
fn several_ratings_of_a_plot_are_their_mean() {
    let (mut farm, trial) = strips(&APART);
    let once = judge(&farm, &trial);
    let outcomes = &mut farm.records["oil-0"].outcomes;
    let mut second = outcomes[0].clone();
    (outcomes[0].rating, second.rating) = (Some(typed("84 %")), Some(typed("96 %")));
    outcomes.push(second);
    assert_eq!(judge(&farm, &trial), once);
}

#[test]
fn few_pairs_or_pairs_that_differ_both_ways_tell_nothing() {
    let (farm, trial) = strips(&APART[..5]);
    let found = judge(&farm, &trial);
    assert_eq!(found.comparisons[0].by_pairs, Verdict::TooFew { have: 5 });
    assert!(words::by_pairs(&found.comparisons[0], "a", "b").text.contains("too few to tell: 5 pairs"));
    let (farm, trial) = strips(&[(90, 80), (80, 88), (85, 85), (70, 76), (90, 85), (82, 84), (91, 90)]);
    let found = judge(&farm, &trial);
    assert_eq!(found.comparisons[0].by_pairs, Verdict::NotApart);
    assert!(words::by_pairs(&found.comparisons[0], "a", "b").text.contains("the data do not tell a and b apart"));
}

#[test]
fn what_is_wrong_with_a_trial_is_said() {
    let (mut farm, mut trial) = strips(&APART);
    // Twice the same ground, ground that is gone, and a strip that was not rated.
    trial.pairs.push(trial.pairs[0].clone());
    farm.records.shift_remove("oil-1");
    farm.records["none-2"].outcomes.clear();
    let judged = judge(&farm, &trial);
    assert_eq!(judged.comparisons[0].pairs.len(), 6);
    assert_eq!(judged.open.len(), 3, "{:?}", judged.open);
    assert!(judged.open[0].starts_with("Pair 2 ") && judged.open[1].starts_with("Pair 9 "));
    assert!(judged.open[2].starts_with("6 of 7 pairs"));
}

/// The same ratings asked of the log, by adjuvant: strips of one field in one year are pairs.
#[test]
fn ratings_by_adjuvant() {
    let (mut farm, _) = strips(&APART);
    // A second look in the same band is of the same plants: the mean of 90 and 88 counts once. One three months later is in no band.
    let weed = Effect::Control("Waterhemps".into());
    rated(&mut farm, "oil-0", "f0", 15, &weed, "88 %");
    rated(&mut farm, "oil-0", "f0", 90, &weed, "10 %");
    rated(&mut farm, "oil-0", "elsewhere", 14, &weed, "10 %");
    let index = Index::of(&farm);
    let picked = index.pick(&Choice::season(2031));
    let outcomes = review(&picked).outcomes;
    assert_eq!((outcomes.rows.len(), outcomes.outside_bands, outcomes.stray, outcomes.rated), (2, 1, 1, 16));
    let row = outcomes.rows.iter().find(|row| !row.classes.is_empty()).unwrap();
    // 89, 85, 95, 88, 92, 90, 97, 80.
    assert!(row.ratings.n == 8 && (row.ratings.mean - 89.5).abs() < 1e-9 && (row.ratings.median - 89.5).abs() < 1e-9);
    assert_eq!(effects(&picked), [Effect::Control("waterhemp".into())]);
    let side = |name: &str, of| Side { name: name.to_owned(), of };
    let oil = AdjuvantClass::CropOilConcentrate;
    let (one, other) = (side("oil", Of::With(oil)), side("none", Of::Without(oil)));
    let compared = compare(&picked, Some(&weed), &one, &other);
    assert_eq!((compared.comparisons.len(), compared.in_both), (1, 0));
    let found = &compared.comparisons[0];
    assert_eq!((found.pairs.len(), found.by_pairs), (8, Verdict::OneHigher));
    // Differences 9, 5, 12, 8, 7, 8, 7, 9.
    assert!((found.paired.unwrap().mean - 8.125).abs() < 1e-9);
    assert!((found.unpaired.unwrap().difference - 8.125).abs() < 1e-9);
    assert!(words::by_sets(found, "oil", "none").text.contains("8 and 8 pieces of ground"));
    // Asked in other ways it is the same; what is in both sides is in neither.
    for of in [
        Of::Exactly(vec![oil]),
        Of::Product("coc".to_owned()),
        Of::Records((0..8).map(|n| format!("oil-{n}")).collect()),
    ] {
        assert_eq!(compare(&picked, None, &side("oil", of), &other).comparisons, compared.comparisons);
    }
    // Of one effect that is asked for, no other is told.
    assert_eq!(compare(&picked, Some(&Effect::Control("kochia".into())), &one, &other).comparisons.len(), 0);
    assert_eq!(compare(&picked, Some(&Effect::Control("waterhemp".into())), &one, &other).comparisons.len(), 1);
    let all = compare(&picked, None, &one, &side("any", Of::Product("mesotrione".to_owned())));
    assert_eq!((all.in_both, all.comparisons.len()), (8, 0));
    assert!(words::looks(1).is_none() && words::looks(12).unwrap().starts_with("12 comparisons"));
}

#[test]
fn weather_is_judged_record_by_record() {
    let mut farm = small();
    record(&mut farm, "windy", "2031-05-01", &[("a", "80 ac")]);
    with(&mut farm, "windy", "mesotrione", "27", ProductKind::Herbicide);
    farm.records["windy"].wind = Some(typed("25 mph"));
    farm.records["windy"].wind_from = "W".into();
    record(&mut farm, "silent", "2031-05-02", &[("a", "80 ac")]);
    let found: BTreeMap<&String, Vec<_>> = farm.records.keys().map(|id| (id, weather::of_record(&farm, id))).collect();
    // Wind above what is usual, which no label here speaks of (assets/weather-limits.csv).
    assert!(found[&"windy".to_owned()].iter().any(|finding| finding.text.contains("25 mph")));
    let outside = weather::outside(found.values().map(Vec::as_slice));
    assert_eq!((outside.judged, outside.of_label_or_law, outside.of_practice), (2, 0, 1));
    assert!(weather::of_record(&farm, &"gone".to_owned()).is_empty());
}

/// What the command line prints is what the pages hold.
#[test]
fn the_review_in_words_and_as_json() {
    let (mut farm, trial) = strips(&APART);
    farm.trials.insert("oil".to_owned(), trial);
    let text = tankard::report::review::text(&farm, Some(2031));
    for part in [
        "Test: review of 2031",
        "crop oil concentrate",
        "11 to 17 days after",
        "Trial: Does the oil pay?",
        words::no_cause(),
        "no price",
    ] {
        assert!(text.contains(part), "{part} in {text}");
    }
    assert!(tankard::report::review::text(&farm, Some(2030)).contains("Nothing is recorded."));
    let json = tankard::report::review::json(&farm, None);
    // Sixteen records of 20 acres; 8 of 5 gallons of oil.
    assert_eq!(
        (json["passes"]["records"].as_u64(), json["trials"][0]["comparisons"].as_array().map(Vec::len)),
        (Some(16), Some(1))
    );
    let near = |value: &Value, expected: f64| (value.as_f64().unwrap() / expected - 1.0).abs() < 1e-9;
    assert!(near(&json["passes"]["treated_ha"], 320.0 * 0.404_685_642_24));
    assert!(near(&json["adjuvants"][0]["amount_l"], 40.0 * 3.785_411_784));
    assert_eq!(json["cost"]["all"]["without_price"], 24);
    assert!(near(&json["trials"][0]["comparisons"][0]["difference"], 8.25));
}

#[test]
fn nothing_comes_to_nothing() {
    let found = of_farm(&Farm::new("Test"), &Choice::all());
    assert_eq!((found.passes.passes, found.passes.months.len(), found.products.rows.len()), (0, 0, 0));
    assert!(found.planned.rate.is_none() && found.resistance.fields.is_empty() && found.outcomes.rows.is_empty());
    assert_eq!(judge(&Farm::new("Test"), &Trial::default()).comparisons.len(), 0);
}
