//! Statistics against SciPy (`tests/reference/statistics.json`, made by `tests/scripts/statistics.py`, which names the versions),
//! on textbook sets and on made ratings with ties and zeros; and what the textbooks themselves print.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use jiff::civil::date;
use serde::Deserialize;
use tankard_core::farm::{AdjuvantClass, Effect, Farm, Outcome, ProductKind, Record, RecordField, RecordLine};
use tankard_core::quantity::{AsTyped, Quantity};
use tankard_core::season::review::compare::{Of, Side, Verdict, compare};
use tankard_core::season::review::{Choice, Index, words};
use tankard_core::season::stats::{FEWEST, LARGEST, paired, signed_rank, summary, welch};

#[derive(Deserialize)]
struct Reference {
    scipy: String,
    numpy: String,
    sets: Vec<Set>,
}

#[derive(Deserialize)]
struct Set {
    name: String,
    one: Vec<f64>,
    other: Vec<f64>,
    summary: Summed,
    paired: Differences,
    rank: Option<Ranked>,
    welch: Unpaired,
}

#[derive(Deserialize)]
struct Summed {
    mean: f64,
    median: f64,
    sd: f64,
    interval: (f64, f64),
}

#[derive(Deserialize)]
struct Differences {
    mean: f64,
    sd: f64,
    interval: (f64, f64),
    p: f64,
}

#[derive(Deserialize)]
struct Ranked {
    above: f64,
    p: f64,
    estimate: f64,
    interval: Option<(f64, f64)>,
}

#[derive(Deserialize)]
struct Unpaired {
    difference: f64,
    freedom: f64,
    interval: (f64, f64),
    p: f64,
}

/// To one part in 10⁹ of the numbers that went in, and of the answer.
fn close(set: &Set, what: &str, found: f64, expected: f64) {
    let size = expected.abs().max(1e-3);
    assert!((found - expected).abs() <= 1e-9 * size, "{}, {what}: {found}, SciPy has {expected}", set.name);
}

fn differences(set: &Set) -> Vec<f64> {
    set.one.iter().zip(&set.other).map(|(one, other)| one - other).collect()
}

fn reference() -> Reference {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/reference/statistics.json");
    serde_json::from_str(&std::fs::read_to_string(path).unwrap()).unwrap()
}

#[test]
fn as_scipy_has_it() {
    let reference = reference();
    assert!(reference.sets.len() >= 12 && !reference.scipy.is_empty() && !reference.numpy.is_empty());
    for set in &reference.sets {
        let found = summary(&set.one).unwrap();
        close(set, "mean", found.mean, set.summary.mean);
        close(set, "median", found.median, set.summary.median);
        close(set, "deviation", found.sd.unwrap(), set.summary.sd);
        let interval = found.interval.unwrap();
        close(set, "low end", interval.0, set.summary.interval.0);
        close(set, "high end", interval.1, set.summary.interval.1);

        let found = paired(&differences(set)).unwrap();
        assert_eq!(found.n, set.one.len());
        close(set, "mean difference", found.mean, set.paired.mean);
        close(set, "deviation of differences", found.sd, set.paired.sd);
        close(set, "low end of pairs", found.interval.0, set.paired.interval.0);
        close(set, "high end of pairs", found.interval.1, set.paired.interval.1);
        close(set, "p of pairs", found.p.unwrap(), set.paired.p);

        assert_eq!(found.rank.is_some(), set.one.len() <= LARGEST, "{}", set.name);
        if let (Some(found), Some(expected)) = (found.rank, &set.rank) {
            close(set, "sum of ranks", found.above, expected.above);
            close(set, "p of ranks", found.p, expected.p);
            close(set, "estimate", found.estimate, expected.estimate);
            assert_eq!(found.interval.is_some(), set.one.len() >= FEWEST, "{}", set.name);
            if let (Some(found), Some(expected)) = (found.interval, expected.interval) {
                close(set, "low end of ranks", found.0, expected.0);
                close(set, "high end of ranks", found.1, expected.1);
            }
        }

        let found = welch(&set.one, &set.other).unwrap();
        close(set, "difference", found.difference, set.welch.difference);
        close(set, "degrees of freedom", found.freedom, set.welch.freedom);
        close(set, "low end without pairs", found.interval.0, set.welch.interval.0);
        close(set, "high end without pairs", found.interval.1, set.welch.interval.1);
        close(set, "p without pairs", found.p, set.welch.p);
    }
}

/// Fisher 1935, The Design of Experiments, section 17: t = 2.148 for Darwin's maize, just beyond 5 %; and R's help of wilcox.test:
/// p = 0.03906 for the paired depression scores, both from memory.
#[test]
fn as_the_textbooks_print_it() {
    let reference = reference();
    let set = |name: &str| reference.sets.iter().find(|set| set.name == name).unwrap();
    let maize = paired(&differences(set("maize"))).unwrap();
    assert!((maize.mean / (maize.sd / 15_f64.sqrt()) - 2.148).abs() < 0.0005);
    assert!(maize.p.is_some_and(|p| p > 0.049 && p < 0.05));
    let scores = paired(&differences(set("depression"))).unwrap();
    assert!((scores.rank.unwrap().p - 0.03906).abs() < 0.000_005);
}

#[test]
fn what_is_too_small_or_all_alike() {
    assert_eq!(summary(&[]), None);
    let one = summary(&[7.0]).unwrap();
    assert_eq!((one.n, one.sd, one.interval), (1, None, None));
    assert_eq!((paired(&[]), paired(&[1.0])), (None, None));
    assert_eq!(welch(&[1.0], &[1.0, 2.0]), None);
    assert_eq!(welch(&[2.0, 2.0], &[1.0, 1.0]), None);
    // No pair differs: nothing is apart, and no sum of ranks is unlikely.
    let alike = paired(&[0.0; 8]).unwrap();
    assert_eq!((alike.p, alike.interval), (Some(1.0), (0.0, 0.0)));
    assert_eq!(alike.rank.unwrap().apart, 0);
    assert!((alike.rank.unwrap().p - 1.0).abs() < 1e-12);
    // All six by the same five: 2 of 64 orders of signs are as far out (by hand).
    let fives = paired(&[5.0; 6]).unwrap();
    assert_eq!((fives.p, fives.interval), (None, (5.0, 5.0)));
    assert!((fives.rank.unwrap().p - 2.0 / 64.0).abs() < 1e-15);
    assert_eq!(fives.rank.unwrap().interval, Some((5.0, 5.0)));
    // Fewer than that cannot come below 5 %.
    assert!((signed_rank(&[5.0; FEWEST - 1]).unwrap().p - 0.0625).abs() < 1e-15);
    assert_eq!(signed_rank(&[1.0; LARGEST + 1]), None);
    for bad in [f64::NAN, f64::INFINITY] {
        assert_eq!((summary(&[1.0, bad]), paired(&[1.0, bad]), signed_rank(&[1.0, bad])), (None, None, None));
        assert_eq!(welch(&[1.0, bad], &[1.0, 2.0]), None);
    }
}

fn typed<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap()
}

/// A record on six fields, each rated once.
fn tank(farm: &mut Farm, id: &str, day: i8, oil: bool, ratings: [u32; 6]) {
    let mut record = Record::new(id, date(2031, 6, day));
    record.lines.push(RecordLine::new("m", "Mesotrione 480 SC (demo)", typed("5 gal")));
    if oil {
        let mut line = RecordLine::new("coc", "Oil (demo)", typed("5 gal"));
        (line.kind, line.class) = (Some(ProductKind::Adjuvant), Some(AdjuvantClass::CropOilConcentrate));
        record.lines.push(line);
    }
    for (n, rating) in ratings.into_iter().enumerate() {
        let field = format!("f{n}");
        record.fields.insert(field.clone(), RecordField::new(&field.to_uppercase(), typed("20 ac")));
        record.outcomes.push(Outcome {
            field: field.into(),
            date: record.date.checked_add(jiff::Span::new().days(14)).unwrap(),
            effect: Some(Effect::Control("waterhemp".into())),
            rating: Some(typed(&format!("{rating} %"))),
            by: "".into(),
            photos: Vec::new(),
            note: "".into(),
        });
    }
    farm.records.insert(id.to_owned(), record);
}

/// The experimental unit is what a treatment was given to as a whole, here the tank; several looks at it are no replicates (Hurlbert 1984,
/// Pseudoreplication and the design of ecological field experiments, Ecological Monographs 54: 187-211, from memory).
#[test]
fn the_fields_of_one_record_are_no_replicates() {
    let mut farm = Farm::new("Test");
    tank(&mut farm, "with", 1, true, [90, 85, 95, 88, 92, 90]);
    tank(&mut farm, "without", 2, false, [80, 79, 83, 80, 85, 82]);
    let oil = AdjuvantClass::CropOilConcentrate;
    let side = |name: &str, of| Side { name: name.to_owned(), of };
    let (one, other) = (side("oil", Of::With(oil)), side("none", Of::Without(oil)));
    let found =
        |farm: &Farm| compare(&Index::of(farm).pick(&Choice::season(2031)), None, &one, &other).comparisons.remove(0);
    let two = found(&farm);
    assert_eq!((two.by_sets, two.by_pairs), (Verdict::TooFew { have: 1 }, Verdict::TooFew { have: 1 }));
    assert_eq!((two.one.unwrap().n, two.ground, two.pairs.len()), (1, [6, 6], 1));
    // By hand: 540 and 489 over six fields.
    assert!((two.pairs[0].one - 90.0).abs() < 1e-9 && (two.pairs[0].other - 81.5).abs() < 1e-9);
    assert_eq!(two.pairs[0].name, "F0, F1, F2, F3, F4 and F5, 2031");
    let says = words::by_sets(&two, "oil", "none").text;
    assert!(says.contains("1 record with oil, 1 with none, on 6 and 6 pieces of ground"), "{says}");
    // Six tanks of either, on the same fields in one season: six records of a side, and still no six pairs of them.
    for n in 1..6 {
        tank(&mut farm, &format!("with {n}"), 3, true, [90 - n, 85, 95, 88, 92, 90].map(|rating| rating - n));
        tank(&mut farm, &format!("without {n}"), 3, false, [80 + n, 79, 83, 80, 85, 82]);
    }
    let many = found(&farm);
    assert_eq!((many.one.unwrap().n, many.other.unwrap().n, many.ground, many.pairs.len()), (6, 6, [36, 36], 1));
    assert_eq!((many.by_sets, many.by_pairs), (Verdict::OneHigher, Verdict::TooFew { have: 1 }));
}
