//! The review against sums made apart from the program.
//!
//! `tests/reference/season/log.csv` is the export of a made farm with all kinds of gaps, as the program writes it;
//! `tests/scripts/season_sums.py` reckons from it in exact fractions what is in `sums.json`. With `UPDATE_REFERENCE=1` the CSV is
//! written anew; run the script after it.

use std::collections::BTreeSet;
use std::path::PathBuf;

use serde_json::Value;
use tankard_core::farm::{Farm, Product, Record};
use tankard_core::quantity::{Mass, Money, Volume};
use tankard_core::season::review::{Choice, Index, Review, Spent, of_farm, review};
use tankard_file::records_csv;

use super::{exported, money, untidy};

fn reference(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("reference/season").join(name)
}

/// A word as it stands in the export; "" for nothing.
fn word<T: serde::Serialize>(of: Option<&T>) -> String {
    of.map(|of| serde_json::to_value(of).unwrap().as_str().unwrap().to_owned()).unwrap_or_default()
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
            let untold = untold.filter(|(product, _)| of_shed(farm.products.get(product)).as_deref() == Some(key));
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
