//! Laws of the records as a whole: in which order they stand in the file changes no sum, no total of a label and no row of an
//! export. Two people who enter the same week on two evenings, or an import after the fact, must come to the same figures.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use proptest::prelude::*;
use tankard_core::farm::{Farm, Line, Pass, Period, Says, Statement};
use tankard_core::finding::{Finding, Level};
use tankard_core::plan::plan;
use tankard_core::quantity::{AsTyped, Quantity};
use tankard_core::season::review::{Choice, of_farm};
use tankard_core::season::totals;
use tankard_file::records_csv;
use tankard_tests::cases;
use tankard_tests::log::{FIRST, Shape, farm};

fn typed<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

/// Two seasons with all kinds of gaps, and a pass on the last day whose labels count over what was recorded.
fn log(seed: u64) -> Farm {
    let mut farm = farm(Shape { seasons: 2, records: 30, fields: 4, untidy: true, seed }).unwrap();
    let day = farm.records.values().map(|record| record.date).max().unwrap().tomorrow().unwrap();
    let mut pass = Pass::new("After all", day);
    pass.fields = farm.fields.keys().cloned().collect();
    pass.carrier = Some(typed("15 gal/ac"));
    let period = Period::Year;
    for (id, product) in farm.products.iter_mut().take(6) {
        product.label.push(Statement::new(Says::SeasonTotal { most: typed("64 fl oz/ac"), per: period }, "page 1"));
        product.label.push(Statement::new(Says::Applications { most: 2, days_apart: 14, per: period }, "page 2"));
        if product.is_liquid() {
            pass.mix.push(Line::new(id, typed("16 fl oz/ac")));
        }
    }
    farm.passes.insert("after".to_owned(), pass);
    farm
}

/// The same farm with its records in another order.
fn turned(farm: &Farm, keys: &[u64]) -> Farm {
    let mut records: Vec<_> = farm.records.clone().into_iter().zip(keys.iter().cycle()).collect();
    records.sort_by_key(|(_, key)| **key);
    Farm { records: records.into_iter().map(|(record, _)| record).collect(), ..farm.clone() }
}

fn close(one: f64, other: f64) -> bool {
    (one - other).abs() <= 1e-9 * one.abs().max(other.abs()).max(1e-9)
}

/// What a plan says of the records, however it is put in order.
fn said(farm: &Farm) -> Vec<(Level, String)> {
    let of = |finding: Finding| (finding.level, format!("{:?}", finding.basis));
    let mut all: Vec<_> = plan(farm, "after").unwrap().findings.into_iter().map(of).collect();
    all.sort_by_key(|(level, basis)| (format!("{level:?}"), basis.clone()));
    all
}

proptest! {
    #![proptest_config(cases(40))]

    /// It holds a "latest" that is the last of the file, and a sum that stops at what it does not expect.
    #[test]
    fn sums_do_not_hang_on_the_order_of_the_records(seed in any::<u64>(), keys in prop::collection::vec(any::<u64>(), 60)) {
        let one = log(seed);
        let other = turned(&one, &keys);
        prop_assert_eq!(one.records.len(), other.records.len());
        for year in [FIRST, FIRST + 1, FIRST + 2] {
            let (one, other) = (totals(&one, year), totals(&other, year));
            prop_assert_eq!((one.passes, one.without_volume), (other.passes, other.without_volume));
            prop_assert!(close(one.area.to_hectares(), other.area.to_hectares()));
            prop_assert!(close(one.volume.to_litres(), other.volume.to_litres()));
        }
        let (one_review, other_review) = (of_farm(&one, &Choice::all()), of_farm(&other, &Choice::all()));
        prop_assert_eq!(one_review.products.spent, other_review.products.spent);
        prop_assert_eq!(one_review.products.rows.len(), other_review.products.rows.len());
        prop_assert!(!one_review.products.rows.is_empty());
        for (one, other) in one_review.products.rows.iter().zip(&other_review.products.rows) {
            prop_assert_eq!((&one.product, one.times, one.spent), (&other.product, other.times, other.spent));
            prop_assert!(close(one.treated.to_hectares(), other.treated.to_hectares()), "{}", one.name);
        }
        for (one, other) in one_review.actives.rows.iter().zip(&other_review.actives.rows) {
            prop_assert_eq!((&one.name, one.basis), (&other.name, other.basis));
            prop_assert!(close(one.mass.to_kilograms(), other.mass.to_kilograms()), "{}", one.name);
        }
        prop_assert_eq!(said(&one), said(&other));
    }

    /// It holds a column that is filled once for several records.
    #[test]
    fn rows_of_an_export_are_the_same_in_any_order(seed in any::<u64>(), keys in prop::collection::vec(any::<u64>(), 60)) {
        let one = log(seed);
        let rows = |farm: &Farm| {
            let text = records_csv::write(farm, |_| true).unwrap();
            let mut csv = csv::Reader::from_reader(text.as_bytes());
            let mut rows: Vec<Vec<String>> =
                csv.records().map(|row| row.unwrap().iter().map(str::to_owned).collect()).collect();
            rows.sort();
            rows
        };
        let own = rows(&one);
        prop_assert!(own.len() > 60);
        prop_assert_eq!(own, rows(&turned(&one, &keys)));
    }
}
