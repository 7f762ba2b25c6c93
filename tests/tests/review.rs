//! The season review against sums made apart from the program, and against small farms reckoned by hand.
//!
//! `tests/reference/season/log.csv` is the export of a made farm with all kinds of gaps, as the program writes it;
//! `tests/scripts/season_sums.py` reckons from it in exact fractions what is in `sums.json`. With `UPDATE_REFERENCE=1` the CSV is
//! written anew; run the script after it.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use std::collections::{BTreeMap, BTreeSet};
use std::path::PathBuf;

use jiff::civil::{date, datetime, time};
use rust_decimal::prelude::ToPrimitive;
use serde_json::Value;
use tankard_core::farm::{
    AdjuvantClass, ClosedSeason, Effect, Farm, Field, Formulation, Outcome, Pass, Plot, Product, ProductKind, Record,
    RecordActive, RecordField, RecordLine, Trial,
};
use tankard_core::quantity::{ActiveBasis, Amount, AsTyped, Mass, Money, Quantity, Volume};
use tankard_core::season::amend::amend;
use tankard_core::season::record::of_product;
use tankard_core::season::review::compare::{Of, Side, Verdict, compare};
use tankard_core::season::review::{Again, Choice, Index, Review, Spent, effects, of_farm, review, weather, words};
use tankard_core::season::seal::sign;
use tankard_core::season::trials::judge;
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

fn reference(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("reference/season").join(name)
}

fn money(money: Money) -> f64 {
    money.amount().to_f64().unwrap()
}

/// A word as it stands in the export; "" for nothing.
fn word<T: serde::Serialize>(of: Option<&T>) -> String {
    of.map(|of| serde_json::to_value(of).unwrap().as_str().unwrap().to_owned()).unwrap_or_default()
}

fn exported(farm: &Farm) -> String {
    records_csv::write(farm, |_| true).unwrap()
}

#[test]
fn the_csv_is_what_is_exported_with_its_gaps() {
    let farm = untidy();
    let csv = exported(&farm);
    if std::env::var_os("UPDATE_REFERENCE").is_some() {
        std::fs::write(reference("log.csv"), &csv).unwrap();
    }
    assert!(csv == std::fs::read_to_string(reference("log.csv")).unwrap(), "what is exported differs from log.csv");
    // What makes it awkward is in it.
    let records = || farm.records.values();
    let lines = || records().flat_map(|record| &record.lines);
    assert!(records().any(|record| record.fields.len() > 2) && records().any(|record| record.fields.is_empty()));
    let some_zero = |record: &Record| record.fields.values().any(|field| field.area.is_zero());
    assert!(records().any(|record| some_zero(record) && !record.area().is_zero()));
    assert!(records().any(|record| record.fields.len() > 1 && record.area().is_zero()));
    assert!(records().any(|record| record.lines.is_empty() && !record.fields.is_empty()));
    assert!(records().any(|record| record.lines.is_empty() && record.fields.is_empty()));
    assert!(records().any(|record| record.volume.is_none()) && records().any(|record| record.end < record.start));
    assert!(records().any(|record| record.start.is_some() && record.end == record.start));
    assert!(records().any(|record| record.pass.is_some()) && records().any(|record| !record.amendments.is_empty()));
    assert!(lines().any(|line| line.amount.is_zero()) && lines().any(|line| line.price.is_none()));
    assert!(lines().any(|line| line.price.as_ref().is_some_and(|price| price.of(line.amount.value()).is_none())));
    assert!(lines().any(|line| line.kind.is_none()) && lines().any(|line| !farm.products.contains_key(&line.product)));
    for unit in [" L", " kg", " gal", " lb", " fl oz"] {
        assert!(lines().any(|line| line.amount.text().ends_with(unit)), "{unit}");
    }
}

/// What is expected of one choice, and what was asked of it.
struct Expected<'a> {
    all: &'a Value,
    asked: BTreeSet<String>,
}

impl Expected<'_> {
    fn at(&mut self, path: &[&str]) -> f64 {
        self.asked.insert(path.join("/"));
        let value = path.iter().fold(self.all, |value, key| &value[*key]);
        value.as_f64().unwrap_or_else(|| panic!("{}: nothing at {path:?}", self.all["name"]))
    }

    fn close(&mut self, path: &[&str], found: f64) {
        let expected = self.at(path);
        let near = (found - expected).abs() <= 1e-9 * expected.abs().max(1e-9);
        assert!(near, "{} at {path:?}: {found} found, {expected} expected", self.all["name"]);
    }

    fn spent(&mut self, path: &[&str], spent: Spent) {
        self.close(&[path, &["cost"]].concat(), money(spent.money));
        self.close(&[path, &["without_price"]].concat(), spent.without_price as f64);
    }

    /// All that is expected was asked for, so that no row is missing, but for some parts.
    fn all_asked(&self, but: &[&str]) {
        fn leaves(value: &Value, path: &str, found: &mut Vec<String>) {
            match value {
                Value::Object(inner) => inner.iter().for_each(|(key, value)| {
                    leaves(value, &if path.is_empty() { key.clone() } else { format!("{path}/{key}") }, found);
                }),
                Value::Number(_) => found.push(path.to_owned()),
                _ => {}
            }
        }
        let mut found = Vec::new();
        leaves(self.all, "", &mut found);
        let missing: Vec<&String> = found
            .iter()
            .filter(|path| !self.asked.contains(*path) && !but.iter().any(|part| path.split('/').next() == Some(*part)))
            .collect();
        assert!(missing.is_empty(), "{}: not in the review: {missing:?}", self.all["name"]);
    }
}

/// The records alone, as they come in again from the kept export: what the script can know.
fn come_in_again() -> Farm {
    let mut farm = Farm::new("A long log");
    let reading = records_csv::read(&std::fs::read(reference("log.csv")).unwrap()).unwrap();
    assert!(reading.refused.is_empty(), "{:?}", reading.refused);
    records_csv::enter(&mut farm, &reading.records, false);
    farm
}

#[test]
fn sums_are_those_of_the_script() {
    let (farm, alone) = (untidy(), come_in_again());
    assert_eq!(farm.records, alone.records);
    let (index, of_alone) = (Index::of(&farm), Index::of(&alone));
    let sums: Value = serde_json::from_str(&std::fs::read_to_string(reference("sums.json")).unwrap()).unwrap();
    let choices = [
        Choice::all(),
        Choice::season(2032),
        Choice { fields: vec!["field-3".to_owned()], ..Choice::all() },
        Choice { crops: vec!["Corn".to_owned()], ..Choice::seasons(2031, 2032) },
        Choice { crops: vec![String::new()], ..Choice::all() },
    ];
    assert_eq!(sums.as_array().unwrap().len(), choices.len());
    for (choice, all) in choices.iter().zip(sums.as_array().unwrap()) {
        let mut expected = Expected { all, asked: BTreeSet::new() };
        let found = review(&of_alone.pick(choice));
        told_by_records(&found, &mut expected);
        kinds_as_recorded(&found, &mut expected);
        expected.all_asked(&["not_told"]);
        // The shed tells kinds and classes that records do not, and nothing else.
        let found = review(&index.pick(choice));
        let mut expected = Expected { all, asked: BTreeSet::new() };
        told_by_records(&found, &mut expected);
        expected.all_asked(&["not_told", "kinds", "classes", "adjuvants", "without_adjuvant_ha", "groups"]);
        kinds_with_the_shed(&farm, &found, all);
        // Laying out and asking in one go comes to the same.
        assert_eq!(of_farm(&farm, choice), found);
    }
}

/// What of a review rests on the records, whatever the shed says.
fn told_by_records(review: &Review, expected: &mut Expected<'_>) {
    expected.close(&["passes"], review.passes.passes as f64);
    expected.close(&["treated_ha"], review.passes.treated.to_hectares());
    for month in review.passes.months.iter().filter(|month| month.passes > 0) {
        let key = format!("{}-{:02}", month.year, month.month);
        expected.close(&["months", &key, "passes"], month.passes as f64);
        expected.close(&["months", &key, "treated_ha"], month.treated.to_hectares());
        expected.close(&["months", &key, "so_far_ha"], month.so_far.to_hectares());
    }
    for row in &review.products.rows {
        let at = |what| ["products", row.product.as_str(), what];
        expected.close(&at("litres"), row.amounts.liquid.map_or(0.0, Volume::to_litres));
        expected.close(&at("kg"), row.amounts.dry.map_or(0.0, Mass::to_kilograms));
        expected.close(&at("treated_ha"), row.treated.to_hectares());
        expected.close(&at("times"), row.times as f64);
        expected.spent(&["products", &row.product], row.spent);
    }
    for row in &review.actives.rows {
        let key = format!("{}|{}", row.name, row.basis.short());
        expected.close(&["actives", &key, "kg"], row.mass.to_kilograms());
        expected.close(&["actives", &key, "times"], row.times as f64);
        for on in &row.fields {
            expected.close(&["actives", &key, "fields", &on.field, "kg"], on.mass.to_kilograms());
            expected.close(&["actives", &key, "fields", &on.field, "times"], on.times as f64);
        }
    }
    let fields = review.cost.fields.iter().map(|row| ("fields", row.of.0.clone(), row.spent, row.treated));
    let crops = review.cost.crops.iter().map(|row| ("crops", row.of.to_lowercase(), row.spent, row.treated));
    for (part, key, spent, treated) in fields.chain(crops) {
        expected.close(&[part, &key, "treated_ha"], treated.to_hectares());
        expected.spent(&[part, &key], spent);
    }
    for row in &review.work.waters {
        expected.close(&["waters", &row.name, "litres"], row.spray.to_litres());
        expected.close(&["waters", &row.name, "times"], row.times as f64);
        expected.close(&["waters", &row.name, "without"], row.without_volume as f64);
    }
    for row in &review.work.rigs {
        expected.close(&["rigs", &row.name, "hours"], row.time.to_hours());
        expected.close(&["rigs", &row.name, "timed_ha"], row.timed.to_hectares());
        expected.close(&["rigs", &row.name, "treated_ha"], row.treated.to_hectares());
        expected.close(&["rigs", &row.name, "times"], row.times as f64);
        expected.close(&["rigs", &row.name, "without"], row.without_times as f64);
    }
}

/// Kinds, classes and groups, of a review that has no shed to ask.
fn kinds_as_recorded(review: &Review, expected: &mut Expected<'_>) {
    for row in &review.adjuvants.rows {
        let key = word(row.class.as_ref());
        expected.close(&["adjuvants", &key, "times"], row.times as f64);
        expected.close(&["adjuvants", &key, "treated_ha"], row.treated.to_hectares());
        expected.spent(&["adjuvants", &key], row.spent);
    }
    expected.close(&["without_adjuvant_ha"], review.adjuvants.without.to_hectares());
    let kinds = review.cost.kinds.iter().map(|row| ("kinds", word(row.of.as_ref()), row.spent, row.treated));
    let classes = review.cost.classes.iter().map(|row| ("classes", word(Some(&row.of)), row.spent, row.treated));
    for (part, key, spent, treated) in kinds.chain(classes) {
        expected.close(&[part, &key, "treated_ha"], treated.to_hectares());
        expected.spent(&[part, &key], spent);
    }
    for field in &review.resistance.fields {
        for row in &field.rows {
            for (year, times) in &row.years {
                let group = format!("{} {}", word(Some(&row.kind)), row.group);
                expected.close(&["groups", &field.field, &group, &year.to_string()], *times as f64);
            }
        }
    }
}

/// What the records do not tell the kind of goes to the kind and the class that the shed says, and to no other.
fn kinds_with_the_shed(farm: &Farm, review: &Review, all: &Value) {
    let number = |of: &Value, what: &str| of[what].as_f64().unwrap_or(0.0);
    let is = |part: &str, key: &str, spent: Spent, of_shed: &dyn Fn(Option<&Product>) -> Option<String>| {
        for (what, found) in [("cost", money(spent.money)), ("without_price", spent.without_price as f64)] {
            let told = if key.is_empty() { 0.0 } else { number(&all[part][key], what) };
            let untold = all["not_told"].as_object().unwrap().iter();
            let untold = untold.filter(|(product, _)| of_shed(farm.products.get(*product)).as_deref() == Some(key));
            let expected = told + untold.map(|(_, of)| number(of, what)).sum::<f64>();
            assert!((found - expected).abs() <= 1e-9 * expected.max(1.0), "{part} {key}: {found}, {expected} expected");
        }
    };
    for row in &review.cost.kinds {
        let of_shed = |product: Option<&Product>| Some(word(product.map(|product| &product.kind)));
        is("kinds", &word(row.of.as_ref()), row.spent, &of_shed);
    }
    let class = |product: Option<&Product>| product?.adjuvant_class().map(|class| word(Some(&class)));
    for row in &review.cost.classes {
        is("classes", &word(Some(&row.of)), row.spent, &class);
    }
    for row in review.adjuvants.rows.iter().filter(|row| row.class.is_some()) {
        is("adjuvants", &word(row.class.as_ref()), row.spent, &class);
    }
    let whole: Money = review.cost.kinds.iter().fold(Money::default(), |sum, row| sum.plus(row.spent.money));
    assert_eq!(whole, review.cost.all.spent.money);
    let helps = review.adjuvants.rows.iter().fold(Money::default(), |sum, row| sum.plus(row.spent.money));
    assert_eq!(helps, review.adjuvants.spent.money);
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
        name: name.to_owned(),
        group: group.to_owned(),
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
        farm.records[id].pass = Some(id.to_owned());
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
    farm.records["bands"].pass = Some("in-bands".to_owned());
    farm.fields["field-0"].area = typed("90 ac");
    let passes = of_farm(&farm, &Choice::all()).passes;
    assert!((passes.treated.to_acres() - 20.0).abs() < 1e-9);
    assert!((passes.distinct.least.to_acres() - 60.0).abs() < 1e-9);
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
        farm.records[id].pass = Some(id.to_owned());
        with(&mut farm, id, "an active", group, ProductKind::Herbicide);
    }
    let rows = of_farm(&farm, &Choice::all()).resistance.fields[0].rows.clone();
    assert_eq!(rows.iter().map(|row| row.years.clone()).collect::<Vec<_>>(), [[(2031, 1)], [(2031, 1)]]);
    assert!(rows.iter().all(|row| row.repeats.is_empty()));
}

/// Planned 10 gal on 80 ac, sprayed 9 gal on 60 ac: 0.15 against 0.125 gal/ac is 20 % too much; ground 25 % too little, spray 10 %.
#[test]
fn planned_against_applied_by_hand() {
    let mut farm = small();
    record(&mut farm, "off", "2031-05-01", &[("a", "60 ac")]);
    record(&mut farm, "right", "2031-05-02", &[("a", "80 ac")]);
    record(&mut farm, "unplanned", "2031-05-03", &[("a", "80 ac")]);
    for (id, amount) in [("off", "9 gal"), ("right", "10 gal"), ("unplanned", "10 gal")] {
        let mut line = RecordLine::new("p", "Product (demo)", typed(amount));
        line.planned = (id != "unplanned").then(|| typed("10 gal"));
        let record = &mut farm.records[id];
        record.lines.push(line);
        if id != "unplanned" {
            record.fields["a"].planned = Some(typed("80 ac"));
        }
    }
    farm.records["off"].planned = Some(typed("1000 gal"));
    farm.records["off"].volume = Some(typed("900 gal"));
    farm.records["off"].left =
        Some(tankard_core::farm::Left { volume: typed("100 gal"), went: "thinned and sprayed out".to_owned() });
    let planned = of_farm(&farm, &Choice::all()).planned;
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
    let volume = planned.volume.unwrap();
    assert_eq!((volume.n, per_cent(volume.mean)), (1, -10.0));
    assert_eq!((planned.without_plan, planned.left_told, planned.worst.len()), (1, 1, 1));
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
        field: field.to_owned(),
        date: record.date.saturating_add(jiff::Span::new().days(days)),
        effect: Some(effect.clone()),
        rating: Some(typed(rating)),
        by: String::new(),
        photos: Vec::new(),
        note: String::new(),
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
    let weed = Effect::Control("waterhemp".to_owned());
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
        assert!(!says.text.contains(cause) && !words::NO_CAUSE.contains(cause));
    }
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
    let weed = Effect::Control("Waterhemps".to_owned());
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
    assert_eq!(effects(&picked), [Effect::Control("waterhemp".to_owned())]);
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
    farm.records["windy"].wind_from = "W".to_owned();
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
        words::NO_CAUSE,
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
