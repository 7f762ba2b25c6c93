//! Areas within boundaries, and strips to what is drawn: against published areas, against general libraries, and by laws.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use std::path::PathBuf;

use jiff::civil::date;
use proptest::prelude::*;
use serde::Deserialize;
use tankard_core::farm::{
    AreaFrom, Droplets, Farm, Field, Formulation, Hour, Line, Neighbour, Pass, Product, ProductKind, Rig, Says, Shape,
    Statement, Surrounding, SurroundingKind, Water, When,
};
use tankard_core::finding::{Basis, Finding, Level};
use tankard_core::ground::{self, Applies, FieldGround, To, wind_shift};
use tankard_core::plan::{Plan, plan};
use tankard_core::quantity::{Area, AsTyped, Bearing, Quantity};
use tankard_core::season::record::from_plan;
use tankard_core::weather::Verdict;
use tankard_tests::cases;

fn q<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

fn table<T: for<'de> Deserialize<'de>>(name: &str) -> Vec<T> {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("reference").join(name);
    csv::Reader::from_path(path).unwrap().deserialize().map(Result::unwrap).collect()
}

#[derive(Deserialize)]
struct Polygon {
    case: String,
    shape: String,
    square_metres: f64,
    tolerance: f64,
    source: String,
}

/// Each row names its source.
#[test]
fn areas_are_those_that_are_published() {
    let rows: Vec<Polygon> = table("polygons.csv");
    assert!(rows.len() >= 19);
    for row in rows {
        let found = Shape::parse(&row.shape).unwrap().area().to_square_metres();
        assert!((found - row.square_metres).abs() <= row.tolerance, "{}: {found} m2 ({})", row.case, row.source);
    }
}

/// A field with a boundary, one product whose label keeps a strip, and a thing beside it.
fn farm(boundary: &str, beside: &str, width: &str, downwind_only: bool) -> Farm {
    let mut farm = Farm::new("Ground");
    let boundary = Shape::parse(boundary).unwrap();
    let stated = format!("{} ac", boundary.area().to_acres());
    let mut field = Field::new("Mill field", q(&stated));
    "soybean".clone_into(&mut field.crop);
    field.boundary = Some(boundary);
    farm.fields.insert("f".to_owned(), field);
    farm.surroundings.insert("creek".to_owned(), drawn("Mill creek", SurroundingKind::Water, beside));
    farm.waters.insert("w".to_owned(), Water { name: "Well".to_owned(), ..Water::default() });
    let mut rig = Rig::new("Boom", q("1200 gal"));
    rig.droplets = Some(Droplets::Coarse);
    farm.rigs.insert("r".to_owned(), rig);
    let mut product = Product::new("Alpha 480 SL (demo)", ProductKind::Herbicide, Formulation::SL);
    product.label.push(Statement::new(buffer("streams", width, downwind_only), "page 3"));
    farm.products.insert("a".to_owned(), product);
    let mut pass = Pass::new("Pass", date(2031, 6, 12));
    pass.fields.push("f".to_owned());
    "w".clone_into(&mut pass.water);
    "r".clone_into(&mut pass.rig);
    pass.carrier = Some(q("15 gal/ac"));
    pass.mix.push(Line::new("a", q("32 fl oz/ac")));
    farm.passes.insert("p".to_owned(), pass);
    farm
}

fn buffer(to: &str, width: &str, downwind_only: bool) -> Says {
    Says::Buffer { to: to.to_owned(), width: q(width), downwind_only }
}

fn drawn(name: &str, kind: SurroundingKind, shape: &str) -> Surrounding {
    Surrounding { name: name.to_owned(), kind, shape: Shape::parse(shape).unwrap(), note: String::new() }
}

fn planned(farm: &Farm) -> Plan {
    plan(farm, "p").unwrap()
}

fn ground_of(farm: &Farm) -> FieldGround {
    ground::of(farm, &farm.passes["p"]).fields.remove(0)
}

fn must(farm: &Farm, level: Level, words: &str) -> Finding {
    let all = planned(farm).findings;
    all.iter()
        .find(|finding| finding.level == level && finding.text.contains(words))
        .unwrap_or_else(|| panic!("no {level:?} \"{words}\" in {all:#?}"))
        .clone()
}

fn must_not(farm: &Farm, words: &str) {
    let all = planned(farm).findings;
    assert_eq!(all.iter().find(|finding| finding.text.contains(words)), None);
}

#[derive(Deserialize)]
struct Buffered {
    case: u32,
    kind: String,
    field: String,
    thing: String,
    width_m: f64,
    wind_from: Option<f64>,
    field_m2: f64,
    strip_m2: f64,
    edge_m: f64,
    distance_m: f64,
}

/// Source: `scripts/buffers.py`, with GEOS and PROJ.
#[test]
fn strips_are_those_of_general_libraries() {
    let rows: Vec<Buffered> = table("buffers.csv");
    let (mut all_round, mut down) = (0, 0);
    for row in &rows {
        let name = format!("case {} ({})", row.case, row.kind);
        let mut farm = farm(&row.field, &row.thing, &format!("{} m", row.width_m), row.wind_from.is_some());
        farm.passes["p"].wind_from = row.wind_from.map(|from| q(&from.to_string()));
        let ground = ground_of(&farm);
        let near = |found: f64, expected: f64, share: f64, slack: f64, of: &str| {
            assert!((found - expected).abs() <= expected * share + slack, "{name}: {of} {found}, not {expected}");
        };
        near(ground.measured.unwrap().to_square_metres(), row.field_m2, 1e-8, 0.01, "area");
        near(ground.strip_area.to_square_metres(), row.strip_m2, 0.005, 0.2, "strip");
        if row.strip_m2 < 1.0 {
            assert_eq!(ground.strip_shape, None, "{name}");
            continue;
        }
        let strip = &ground.strips[0];
        near(strip.unsprayed.as_ref().unwrap().area().to_square_metres(), row.strip_m2, 0.005, 0.2, "drawn strip");
        near(strip.edge.to_metres(), row.edge_m, 0.01, 0.5, "edge");
        near(strip.distance.unwrap().to_metres(), row.distance_m, 1e-4, 0.01, "distance");
        // A label's strip is never narrower than asked.
        assert!(ground.strip_area.to_square_metres() > row.strip_m2 - 0.2, "{name}");
        *if row.wind_from.is_some() { &mut down } else { &mut all_round } += 1;
    }
    assert!(all_round >= 25 && down >= 25, "{all_round} all round, {down} down the wind");
}
