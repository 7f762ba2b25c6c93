//! Wrong numbers: each row of the tables, each check with a wrong figure and with the right one, and laws over random figures.
//!
//! Conversion factors: NIST Special Publication 811 (2008), Appendix B, and NIST Handbook 44, Appendix C; the imperial gallon by the UK
//! Units of Measurement Regulations 1995. Molar masses: IUPAC standard atomic weights 2021, abridged. Formulas of actives: from memory.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use std::collections::HashMap;
use std::path::Path;

use jiff::civil::date;
use proptest::prelude::*;
use tankard::{demo, report};
use tankard_core::farm::{
    Active, AdjuvantClass, Expected, Farm, Field, Formulation, Layout, Line, NozzleSet, Pass, Place, Product,
    ProductKind, Rated, Record, RecordField, RecordLine, Rig, Says, Shape, Statement, Water,
};
use tankard_core::finding::{Basis, Finding, Level, Subject};
use tankard_core::plan::plan;
use tankard_core::plausible::confusions::{Confusion, table};
use tankard_core::plausible::{Slot, of_farm, of_field, of_product, of_record, of_rig, of_water, salts};
use tankard_core::quantity::{ActiveBasis, AsTyped, Quantity, Units};

fn typed<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

/// One field of corn, 15 gal/ac, one product that is not typed much.
fn farm(product: Product, rate: &str) -> Farm {
    let mut farm = Farm::new("Wrong numbers");
    let mut field = Field::new("Field", typed("80 ac"));
    "corn".clone_into(&mut field.crop);
    "V4".clone_into(&mut field.stage);
    farm.fields.insert("f".to_owned(), field);
    farm.rigs.insert("r".to_owned(), Rig::new("Boom", typed("1200 gal")));
    farm.products.insert("h".to_owned(), product);
    let mut pass = Pass::new("Pass", date(2031, 6, 12));
    pass.fields.push("f".to_owned());
    "r".clone_into(&mut pass.rig);
    pass.carrier = Some(typed("15 gal/ac"));
    pass.mix.push(Line::new("h", typed(rate)));
    farm.passes.insert("p".to_owned(), pass);
    farm
}

fn herbicide(formulation: Formulation, least: &str, most: &str) -> Product {
    let mut product = Product::new("Herbicide (demo)", ProductKind::Herbicide, formulation);
    product.label.push(Statement::new(Says::Rate { least: Some(typed(least)), most: Some(typed(most)) }, "page 3"));
    product
}

fn adjuvant(class: AdjuvantClass, formulation: Formulation) -> Product {
    let mut product = Product::new("Adjuvant (demo)", ProductKind::Adjuvant, formulation);
    product.class = Some(class);
    product
}

/// What is offered in a plan for a box, the likeliest first.
fn offered(farm: &Farm, slot: &Slot) -> Vec<String> {
    texts(&plan(farm, "p").unwrap().findings, slot)
}

fn texts(findings: &[Finding], slot: &Slot) -> Vec<String> {
    let offers = findings.iter().flat_map(|finding| &finding.offers).filter(|offer| offer.is_for(slot));
    offers.map(tankard_core::plausible::Offer::text).collect()
}

fn rate_slot() -> Slot {
    Slot::Rate { pass: "p".to_owned(), product: "h".to_owned() }
}

fn none_in(farm: &Farm) {
    for id in farm.passes.keys() {
        let doubted: Vec<Finding> =
            plan(farm, id).unwrap().findings.into_iter().filter(|finding| !finding.offers.is_empty()).collect();
        assert!(doubted.is_empty(), "{doubted:#?}");
    }
}

/// Sizes of units, in SI units, as the handbooks print them.
fn size(kind: &str, unit: &str) -> Option<f64> {
    const INCH: f64 = 0.0254;
    const POUND: f64 = 0.453_592_37;
    const GALLON: f64 = 231.0 * INCH * INCH * INCH;
    const IMPERIAL: f64 = 4.546_09e-3;
    const ACRE: f64 = 43_560.0 * 0.3048 * 0.3048;
    let of: &[(&str, f64)] = match kind {
        "amount" | "volume" => &[
            ("gal", GALLON),
            ("qt", GALLON / 4.0),
            ("pt", GALLON / 8.0),
            ("fl oz", GALLON / 128.0),
            ("imp gal", IMPERIAL),
            ("imp pt", IMPERIAL / 8.0),
            ("imp fl oz", IMPERIAL / 160.0),
            ("l", 1e-3),
            ("ml", 1e-6),
            ("m3", 1.0),
            ("lb", POUND),
            ("oz", POUND / 16.0),
            ("dry oz", POUND / 16.0),
            ("kg", 1.0),
            ("g", 1e-3),
        ],
        // Below a stroke the larger unit is the smaller rate.
        "per" => &[("ac", 1.0 / ACRE), ("ha", 1e-4), ("gal", 1.0), ("100 gal", 0.01), ("l", 1.0), ("100 l", 0.01)],
        "carrier" => {
            &[("gal/ac", GALLON / ACRE), ("imp gal/ac", IMPERIAL / ACRE), ("l/ha", 1e-7), ("l/ac", 1e-3 / ACRE)]
        }
        "area" => &[("ac", ACRE), ("ha", 1e4), ("m2", 1.0)],
        "length" => &[("in", INCH), ("ft", 0.3048), ("m", 1.0), ("cm", 0.01), ("mm", 0.001)],
        "speed" => &[("mph", 1609.344 / 3600.0), ("km/h", 1.0 / 3.6), ("m/s", 1.0), ("kn", 1852.0 / 3600.0)],
        // SP 811: 1 psi = 6.894 757 E+03 Pa.
        "pressure" => &[("psi", 6894.757), ("bar", 1e5), ("kpa", 1e3), ("mpa", 1e6), ("pa", 1.0)],
        "flow" => &[
            ("gpm", GALLON / 60.0),
            ("gal/min", GALLON / 60.0),
            ("fl oz/min", GALLON / 128.0 / 60.0),
            ("l/min", 1e-3 / 60.0),
            ("ml/min", 1e-6 / 60.0),
        ],
        "density" | "content" => {
            &[("lb/gal", POUND / GALLON), ("lb/imp gal", POUND / IMPERIAL), ("kg/l", 1000.0), ("g/l", 1.0)]
        }
        // A grain is a pound by 7000; CaO 56.077 g/mol, CaCO3 100.086 g/mol.
        "hardness" => &[
            ("ppm", 1.0),
            ("gpg", POUND * 1e6 / 7000.0 / (GALLON * 1e3)),
            ("°dh", 10.0 * 100.086 / 56.077),
            ("°fh", 10.0),
            ("mmol/l", 100.086),
        ],
        "conductivity" => &[("µs/cm", 1e-4), ("ms/cm", 0.1), ("ms/m", 1e-3)],
        // Grams that count as one of the ion.
        "calcium" => &[("ppm", 1.0), ("as caco3", 40.078 / 100.086), ("mmol/l", 40.078), ("meq/l", 40.078 / 2.0)],
        "magnesium" => &[("ppm", 1.0), ("as caco3", 24.305 / 100.086), ("mmol/l", 24.305), ("meq/l", 24.305 / 2.0)],
        "bicarbonate" => &[("ppm", 1.0), ("as caco3", 61.016 / 50.043), ("mmol/l", 61.016)],
        _ => &[],
    };
    of.iter().find(|(name, _)| *name == unit.to_lowercase()).map(|(_, size)| *size)
}

#[test]
fn the_factors_are_those_of_the_handbooks() {
    let mut checked = 0;
    for row in table() {
        let Some(factor) = row.factor.filter(|_| row.kind != "any") else { continue };
        let (from, to) = (size(&row.kind, &row.from), size(&row.kind, &row.to));
        // What is read has the size of `from`, or of the ion where another way to count was typed.
        let expected = match row.kind.as_str() {
            "calcium" | "magnesium" | "bicarbonate" => to.zip(from).map(|(to, from)| to / from),
            _ => from.zip(to).map(|(from, to)| from / to),
        };
        let expected = expected.unwrap_or_else(|| panic!("no size for {row:?}"));
        assert!((factor / expected - 1.0).abs() < 3e-5, "{row:?}: {expected}");
        checked += 1;
    }
    assert!(checked > 80, "{checked}");
}

/// IUPAC standard atomic weights 2021, abridged.
fn mass(formula: &str) -> f64 {
    let weights: HashMap<&str, f64> = [
        ("H", 1.008),
        ("C", 12.011),
        ("N", 14.007),
        ("O", 15.999),
        ("F", 18.998),
        ("Na", 22.990),
        ("P", 30.974),
        ("S", 32.06),
        ("Cl", 35.45),
        ("K", 39.098),
    ]
    .into();
    let mut sum = 0.0;
    let mut rest = formula;
    while !rest.is_empty() {
        let letters =
            rest.char_indices().skip(1).find(|(_, letter)| !letter.is_lowercase()).map_or(rest.len(), |(at, _)| at);
        let (element, tail) = rest.split_at(letters);
        let digits = tail.find(|letter: char| !letter.is_ascii_digit()).unwrap_or(tail.len());
        let (count, tail) = tail.split_at(digits);
        sum += weights[element] * count.parse::<f64>().unwrap_or(1.0);
        rest = tail;
    }
    sum
}

#[test]
fn the_masses_of_salts_follow_from_their_formulas() {
    for salt in salts::table() {
        assert!((mass(&salt.acid_formula) - salt.acid_mass).abs() < 0.02, "{salt:?}");
        assert!((mass(&salt.salt_formula) - salt.salt_mass).abs() < 0.02, "{salt:?}");
    }
    // What labels print of the same product, from memory: 4 lb of the salt is 3 lb of glyphosate (isopropylamine); 2,4-D dimethylamine
    // is 83.0 % 2,4-D, triclopyr triethylamine 71.7 %, clopyralid monoethanolamine 75.9 %, MCPA dimethylamine 81.7 %.
    for (active, salt, share, within) in [
        ("glyphosate", "isopropylamine", 0.741, 0.001),
        ("2,4-D", "dimethylamine", 0.830, 0.001),
        ("triclopyr", "triethylamine", 0.717, 0.001),
        ("clopyralid", "monoethanolamine", 0.759, 0.001),
        ("MCPA", "dimethylamine", 0.8165, 0.001),
    ] {
        let row = salts::of(active).find(|row| row.salt == salt).unwrap();
        assert!((1.0 / row.ratio() - share).abs() < within, "{row:?}");
    }
}

/// A farm in which a text in the unit that was meant is right, by a label whose range lies about it, and its box.
fn about_rate(row: &Confusion) -> (Farm, String, String) {
    let metric = |unit: &str| ["l", "ml", "kg", "g"].contains(&unit.to_lowercase().as_str());
    let dry = ["oz", "dry oz", "lb", "kg", "g"];
    let (wrong, right) = match row.kind.as_str() {
        "amount" => {
            // Over acres every unit is used.
            (format!("{} {}/ac", 7, row.from), format!("{} {}/ac", 7, row.to))
        }
        "per" => {
            let of = |per: &str| {
                let per = per.to_lowercase();
                match per.as_str() {
                    "ha" | "l" | "100 l" => "L",
                    _ if metric(&row.from) || ["ha", "l", "100 l"].contains(&row.to.to_lowercase().as_str()) => "L",
                    _ => "qt",
                }
            };
            // A half of a unit, since one litre in a litre is no spray.
            let top = if of(&row.from) == "L" || of(&row.to) == "L" { "L" } else { "qt" };
            (format!("0.5 {top}/{}", row.from), format!("0.5 {top}/{}", row.to))
        }
        "basis" => (format!("0.75 lb {}/ac", row.from), format!("0.75 lb {}/ac", row.to)),
        "rate" => (format!("0.5 {}", row.from), format!("0.5 {}", row.to)),
        other => panic!("{other}"),
    };
    let number: f64 = right.split(' ').next().unwrap().parse().unwrap();
    let unit = right.split_once(' ').unwrap().1;
    let is_dry = row.kind == "amount" && dry.contains(&row.to.to_lowercase().as_str());
    let mut product = herbicide(
        if is_dry { Formulation::WG } else { Formulation::SL },
        &format!("{} {unit}", number * 0.98),
        &format!("{} {unit}", number * 1.02),
    );
    if row.kind == "basis" {
        let basis = if row.to == "ae" { ActiveBasis::AcidEquivalent } else { ActiveBasis::ActiveIngredient };
        let content = typed("480 g/L");
        product.actives.push(Active { name: "glyphosate".to_owned(), group: String::new(), basis, content });
    }
    let mut farm = farm(product, &right);
    if row.farms == "imperial" {
        farm.units = Units::Imperial;
    }
    (farm, wrong, right)
}

#[test]
fn each_row_of_rates_is_found_and_the_intended_one_comes_first() {
    let mut tried = 0;
    for row in table().iter().filter(|row| ["amount", "per", "basis", "rate"].contains(&row.kind.as_str())) {
        let (mut farm, wrong, right) = about_rate(row);
        assert!(offered(&farm, &rate_slot()).is_empty(), "{right} is right");
        farm.passes["p"].mix[0].rate = typed(&wrong);
        let all = offered(&farm, &rate_slot());
        assert_eq!(all.first().map(String::as_str), Some(right.as_str()), "{wrong}: {all:?}");
        tried += 1;
    }
    assert!(tried > 40, "{tried}");
}

#[test]
fn each_slip_of_the_decimal_point_is_found() {
    for row in table().iter().filter(|row| row.kind == "any") {
        let wrong = format!("{} L/ha", 2.4 * row.factor.unwrap());
        let mut farm = farm(herbicide(Formulation::SL, "1.5 L/ha", "3 L/ha"), "2.4 L/ha");
        assert!(offered(&farm, &rate_slot()).is_empty());
        farm.passes["p"].mix[0].rate = typed(&wrong);
        let all = offered(&farm, &rate_slot());
        assert_eq!(all.first().map(String::as_str), Some("2.4 L/ha"), "{wrong}: {all:?}");
    }
}

#[test]
fn each_row_of_spray_volumes_is_found() {
    for row in table().iter().filter(|row| row.kind == "carrier") {
        let number = match row.to.as_str() {
            "L/ha" => 140.0,
            "L/ac" => 57.0,
            _ => 15.0,
        };
        let mut product = herbicide(Formulation::SL, "16 fl oz/ac", "32 fl oz/ac");
        let (least, most) = (format!("{} {}", number * 0.9, row.to), format!("{} {}", number * 1.1, row.to));
        product
            .label
            .push(Statement::new(Says::Carrier { least: Some(typed(&least)), most: Some(typed(&most)) }, "page 2"));
        let mut farm = farm(product, "22 fl oz/ac");
        if row.farms == "imperial" {
            farm.units = Units::Imperial;
        }
        let slot = Slot::Carrier("p".to_owned());
        let right = format!("{number} {}", row.to);
        farm.passes["p"].carrier = Some(typed(&right));
        assert!(offered(&farm, &slot).is_empty(), "{right} is right");
        farm.passes["p"].carrier = Some(typed(&format!("{number} {}", row.from)));
        assert_eq!(offered(&farm, &slot).first(), Some(&right), "{row:?}");
    }
}

/// A row of the tables, with a farm in which what was meant is right, what was typed for it, and the box.
struct Case {
    kind: &'static str,
    from: &'static str,
    to: &'static str,
    number: &'static str,
    /// The farm with a text in that box.
    with: fn(&str) -> Farm,
    slot: fn() -> Slot,
}

fn rig_with(change: impl FnOnce(&mut Rig)) -> Farm {
    let mut farm = farm(herbicide(Formulation::SL, "16 fl oz/ac", "32 fl oz/ac"), "22 fl oz/ac");
    change(&mut farm.rigs["r"]);
    farm
}

fn set_with(text: &str) -> Farm {
    rig_with(|rig| {
        rig.boom = Some(typed("120 ft"));
        let layout = Some(Layout::Broadcast { spacing: typed(text) });
        rig.sets.insert(
            "s".to_owned(),
            NozzleSet { name: "Set".to_owned(), count: Some(72), layout, ..NozzleSet::default() },
        );
    })
}

fn rated_with(size: &str, flow: &str, at: &str) -> Farm {
    rig_with(|rig| {
        let rated = Some(Rated { flow: typed(flow), at: typed(at) });
        rig.sets.insert(
            "s".to_owned(),
            NozzleSet { name: "Set".to_owned(), size: size.to_owned(), rated, ..NozzleSet::default() },
        );
    })
}

/// The square of about 74.6 ac by a mill.
fn field_with(area: &str) -> Farm {
    let mut farm = farm(herbicide(Formulation::SL, "16 fl oz/ac", "32 fl oz/ac"), "22 fl oz/ac");
    farm.fields["f"].boundary = Some(
        Shape::parse("POLYGON ((-96.396379 41.201594, -96.388945 41.201593, -96.388824 41.205850, -96.391582 41.206031, -96.396259 41.205941, -96.396379 41.201594))")
            .unwrap(),
    );
    farm.fields["f"].area = typed(area);
    farm
}

fn water_with(change: impl FnOnce(&mut Water)) -> Farm {
    let mut farm = farm(herbicide(Formulation::SL, "16 fl oz/ac", "32 fl oz/ac"), "22 fl oz/ac");
    let mut water = Water {
        name: "Well".to_owned(),
        calcium: Some(typed("118 ppm")),
        magnesium: Some(typed("42 ppm")),
        sodium: Some(typed("35 ppm")),
        hardness: Some(typed("468 ppm")),
        ..Water::default()
    };
    change(&mut water);
    farm.waters.insert("w".to_owned(), water);
    "w".clone_into(&mut farm.passes["p"].water);
    farm
}

fn set_slot() -> (String, String) {
    ("r".to_owned(), "s".to_owned())
}

fn spacing_slot() -> Slot {
    let (rig, set) = set_slot();
    Slot::Spacing { rig, set }
}

fn flow_slot() -> Slot {
    let (rig, set) = set_slot();
    Slot::RatedFlow { rig, set }
}

fn at_slot() -> Slot {
    let (rig, set) = set_slot();
    Slot::RatedAt { rig, set }
}

fn density_with(text: &str) -> Farm {
    let mut product = herbicide(Formulation::SL, "16 fl oz/ac", "32 fl oz/ac");
    product.density = Some(typed(text));
    farm(product, "22 fl oz/ac")
}

fn content_with(name: &str, formulation: Formulation, active: &str, basis: ActiveBasis, text: &str) -> Farm {
    let mut product = herbicide(
        formulation,
        if formulation.is_liquid() { "16 fl oz/ac" } else { "1 oz/ac" },
        if formulation.is_liquid() { "32 fl oz/ac" } else { "3 oz/ac" },
    );
    name.clone_into(&mut product.name);
    product.actives.push(Active { name: active.to_owned(), group: String::new(), basis, content: typed(text) });
    let rate = if formulation.is_liquid() { "22 fl oz/ac" } else { "2 oz/ac" };
    farm(product, rate)
}

fn content_slot() -> Slot {
    Slot::Content { product: "h".to_owned(), active: 0 }
}

#[test]
fn each_row_of_figures_is_found_and_the_intended_one_comes_first() {
    fn r() -> String {
        "r".to_owned()
    }
    let cases: Vec<Case> = vec![
        Case {
            kind: "volume",
            from: "gal",
            to: "L",
            number: "6000",
            with: |text| rig_with(|rig| rig.tank = typed(text)),
            slot: || Slot::Tank(r()),
        },
        Case {
            kind: "volume",
            from: "l",
            to: "gal",
            number: "4",
            with: |text| rig_with(|rig| rig.tank = typed(text)),
            slot: || Slot::Tank(r()),
        },
        Case {
            kind: "volume",
            from: "m3",
            to: "L",
            number: "3000",
            with: |text| rig_with(|rig| rig.tank = typed(text)),
            slot: || Slot::Tank(r()),
        },
        Case {
            kind: "area",
            from: "ha",
            to: "ac",
            number: "74.6",
            with: field_with,
            slot: || Slot::Area("f".to_owned()),
        },
        Case {
            kind: "area",
            from: "ac",
            to: "ha",
            number: "30.2",
            with: field_with,
            slot: || Slot::Area("f".to_owned()),
        },
        Case {
            kind: "area",
            from: "m2",
            to: "ha",
            number: "30.2",
            with: field_with,
            slot: || Slot::Area("f".to_owned()),
        },
        Case {
            kind: "area",
            from: "m2",
            to: "ac",
            number: "74.6",
            with: field_with,
            slot: || Slot::Area("f".to_owned()),
        },
        Case { kind: "length", from: "cm", to: "in", number: "20", with: set_with, slot: spacing_slot },
        Case { kind: "length", from: "in", to: "cm", number: "50.8", with: set_with, slot: spacing_slot },
        Case { kind: "length", from: "cm", to: "mm", number: "508", with: set_with, slot: spacing_slot },
        Case { kind: "length", from: "m", to: "cm", number: "50.8", with: set_with, slot: spacing_slot },
        Case { kind: "length", from: "mm", to: "cm", number: "50.8", with: set_with, slot: spacing_slot },
        Case { kind: "length", from: "mm", to: "in", number: "20", with: set_with, slot: spacing_slot },
        Case { kind: "length", from: "ft", to: "in", number: "20", with: set_with, slot: spacing_slot },
        Case { kind: "length", from: "cm", to: "m", number: "0.508", with: set_with, slot: spacing_slot },
        Case {
            kind: "length",
            from: "m",
            to: "ft",
            number: "120",
            with: |text| rig_with(|rig| rig.boom = Some(typed(text))),
            slot: || Slot::Boom(r()),
        },
        Case {
            kind: "length",
            from: "in",
            to: "ft",
            number: "15",
            with: |text| rig_with(|rig| rig.boom = Some(typed(text))),
            slot: || Slot::Boom(r()),
        },
        Case {
            kind: "length",
            from: "ft",
            to: "m",
            number: "1.6",
            with: |text| rig_with(|rig| rig.boom = Some(typed(text))),
            slot: || Slot::Boom(r()),
        },
        Case {
            kind: "speed",
            from: "mph",
            to: "km/h",
            number: "30",
            with: |text| rig_with(|rig| rig.speed = Some(typed(text))),
            slot: || Slot::RigSpeed(r()),
        },
        Case {
            kind: "speed",
            from: "m/s",
            to: "km/h",
            number: "20",
            with: |text| rig_with(|rig| rig.speed = Some(typed(text))),
            slot: || Slot::RigSpeed(r()),
        },
        Case {
            kind: "speed",
            from: "kn",
            to: "km/h",
            number: "30",
            with: |text| rig_with(|rig| rig.speed = Some(typed(text))),
            slot: || Slot::RigSpeed(r()),
        },
        Case {
            kind: "pressure",
            from: "bar",
            to: "psi",
            number: "40",
            with: |text| rig_with(|rig| rig.pressure = Some(typed(text))),
            slot: || Slot::RigPressure(r()),
        },
        Case {
            kind: "pressure",
            from: "psi",
            to: "bar",
            number: "3",
            with: |text| rig_with(|rig| rig.pressure = Some(typed(text))),
            slot: || Slot::RigPressure(r()),
        },
        Case {
            kind: "pressure",
            from: "bar",
            to: "kPa",
            number: "300",
            with: |text| rig_with(|rig| rig.pressure = Some(typed(text))),
            slot: || Slot::RigPressure(r()),
        },
        Case {
            kind: "pressure",
            from: "kpa",
            to: "bar",
            number: "3",
            with: |text| rig_with(|rig| rig.pressure = Some(typed(text))),
            slot: || Slot::RigPressure(r()),
        },
        Case {
            kind: "pressure",
            from: "psi",
            to: "kPa",
            number: "300",
            with: |text| rig_with(|rig| rig.pressure = Some(typed(text))),
            slot: || Slot::RigPressure(r()),
        },
        Case {
            kind: "pressure",
            from: "kpa",
            to: "psi",
            number: "35",
            with: |text| rig_with(|rig| rig.pressure = Some(typed(text))),
            slot: || Slot::RigPressure(r()),
        },
        Case {
            kind: "pressure",
            from: "mpa",
            to: "bar",
            number: "3",
            with: |text| rig_with(|rig| rig.pressure = Some(typed(text))),
            slot: || Slot::RigPressure(r()),
        },
        Case {
            kind: "pressure",
            from: "mpa",
            to: "kPa",
            number: "300",
            with: |text| rig_with(|rig| rig.pressure = Some(typed(text))),
            slot: || Slot::RigPressure(r()),
        },
        Case {
            kind: "pressure",
            from: "pa",
            to: "kPa",
            number: "300",
            with: |text| rig_with(|rig| rig.pressure = Some(typed(text))),
            slot: || Slot::RigPressure(r()),
        },
        Case {
            kind: "flow",
            from: "l/min",
            to: "gal/min",
            number: "0.4",
            with: |text| rated_with("04", text, "40 psi"),
            slot: flow_slot,
        },
        Case {
            kind: "flow",
            from: "gpm",
            to: "L/min",
            number: "1.6",
            with: |text| rated_with("04", text, "3 bar"),
            slot: flow_slot,
        },
        Case {
            kind: "flow",
            from: "gpm",
            to: "fl oz/min",
            number: "51.2",
            with: |text| rated_with("04", text, "40 psi"),
            slot: flow_slot,
        },
        Case {
            kind: "flow",
            from: "fl oz/min",
            to: "gal/min",
            number: "0.4",
            with: |text| rated_with("04", text, "40 psi"),
            slot: flow_slot,
        },
        Case {
            kind: "flow",
            from: "l/min",
            to: "mL/min",
            number: "1600",
            with: |text| rated_with("04", text, "3 bar"),
            slot: flow_slot,
        },
        Case {
            kind: "flow",
            from: "ml/min",
            to: "L/min",
            number: "1.6",
            with: |text| rated_with("04", text, "3 bar"),
            slot: flow_slot,
        },
        Case {
            kind: "flow",
            from: "fl oz/min",
            to: "mL/min",
            number: "1600",
            with: |text| rated_with("04", text, "3 bar"),
            slot: flow_slot,
        },
        Case {
            kind: "flow",
            from: "ml/min",
            to: "fl oz/min",
            number: "51.2",
            with: |text| rated_with("04", text, "40 psi"),
            slot: flow_slot,
        },
        Case {
            kind: "pressure",
            from: "bar",
            to: "psi",
            number: "40",
            with: |text| rated_with("04", "0.4 gal/min", text),
            slot: at_slot,
        },
        Case {
            kind: "temperature",
            from: "°C",
            to: "°F",
            number: "68",
            with: |text| {
                let mut farm = rig_with(|_| ());
                farm.passes["p"].growing.air = Some(typed(text));
                farm
            },
            slot: || Slot::PassAir("p".to_owned()),
        },
        Case {
            kind: "density",
            from: "kg/l",
            to: "lb/gal",
            number: "11.3",
            with: density_with,
            slot: || Slot::Density("h".to_owned()),
        },
        Case {
            kind: "density",
            from: "lb/gal",
            to: "kg/L",
            number: "1.35",
            with: density_with,
            slot: || Slot::Density("h".to_owned()),
        },
        Case {
            kind: "density",
            from: "kg/l",
            to: "g/L",
            number: "1350",
            with: density_with,
            slot: || Slot::Density("h".to_owned()),
        },
        Case {
            kind: "density",
            from: "g/l",
            to: "kg/L",
            number: "1.35",
            with: density_with,
            slot: || Slot::Density("h".to_owned()),
        },
        Case {
            kind: "density",
            from: "lb/gal",
            to: "g/L",
            number: "1350",
            with: density_with,
            slot: || Slot::Density("h".to_owned()),
        },
        Case {
            kind: "content",
            from: "lb/gal",
            to: "g/L",
            number: "540",
            with: |text| {
                content_with("Herbicide (demo)", Formulation::SL, "mesotrione", ActiveBasis::ActiveIngredient, text)
            },
            slot: content_slot,
        },
        Case {
            kind: "content",
            from: "g/l",
            to: "lb/gal",
            number: "4.5",
            with: |text| {
                content_with(
                    "Herbicide 540 SL (demo)",
                    Formulation::SL,
                    "mesotrione",
                    ActiveBasis::ActiveIngredient,
                    text,
                )
            },
            slot: content_slot,
        },
        Case {
            kind: "content",
            from: "kg/l",
            to: "g/L",
            number: "540",
            with: |text| {
                content_with("Herbicide (demo)", Formulation::SL, "mesotrione", ActiveBasis::ActiveIngredient, text)
            },
            slot: content_slot,
        },
        Case {
            kind: "content",
            from: "g/l",
            to: "g/kg",
            number: "750",
            with: |text| {
                content_with("Herbicide (demo)", Formulation::WG, "mesotrione", ActiveBasis::ActiveIngredient, text)
            },
            slot: content_slot,
        },
        Case {
            kind: "content",
            from: "lb/imp gal",
            to: "lb/gal",
            number: "4.5",
            with: |text| {
                content_with(
                    "Herbicide 540 SL (demo)",
                    Formulation::SL,
                    "mesotrione",
                    ActiveBasis::ActiveIngredient,
                    text,
                )
            },
            slot: content_slot,
        },
        Case {
            kind: "hardness",
            from: "ppm",
            to: "gpg",
            number: "27.3",
            with: |text| water_with(|water| water.hardness = Some(typed(text))),
            slot: || Slot::Hardness("w".to_owned()),
        },
        Case {
            kind: "hardness",
            from: "gpg",
            to: "ppm",
            number: "468",
            with: |text| water_with(|water| water.hardness = Some(typed(text))),
            slot: || Slot::Hardness("w".to_owned()),
        },
        Case {
            kind: "hardness",
            from: "ppm",
            to: "°dH",
            number: "26.2",
            with: |text| water_with(|water| water.hardness = Some(typed(text))),
            slot: || Slot::Hardness("w".to_owned()),
        },
        Case {
            kind: "hardness",
            from: "°dh",
            to: "ppm",
            number: "468",
            with: |text| water_with(|water| water.hardness = Some(typed(text))),
            slot: || Slot::Hardness("w".to_owned()),
        },
        Case {
            kind: "hardness",
            from: "ppm",
            to: "mmol/L",
            number: "4.67",
            with: |text| water_with(|water| water.hardness = Some(typed(text))),
            slot: || Slot::Hardness("w".to_owned()),
        },
        Case {
            kind: "hardness",
            from: "mmol/l",
            to: "ppm",
            number: "468",
            with: |text| water_with(|water| water.hardness = Some(typed(text))),
            slot: || Slot::Hardness("w".to_owned()),
        },
        Case {
            kind: "hardness",
            from: "ppm",
            to: "°fH",
            number: "46.8",
            with: |text| water_with(|water| water.hardness = Some(typed(text))),
            slot: || Slot::Hardness("w".to_owned()),
        },
        Case {
            kind: "conductivity",
            from: "ms/cm",
            to: "µS/cm",
            number: "1050",
            with: |text| water_with(|water| water.conductivity = Some(typed(text))),
            slot: || Slot::Conductivity("w".to_owned()),
        },
        Case {
            kind: "conductivity",
            from: "µs/cm",
            to: "mS/cm",
            number: "1.05",
            with: |text| water_with(|water| water.conductivity = Some(typed(text))),
            slot: || Slot::Conductivity("w".to_owned()),
        },
        Case {
            kind: "conductivity",
            from: "µs/cm",
            to: "mS/m",
            number: "105",
            with: |text| water_with(|water| water.conductivity = Some(typed(text))),
            slot: || Slot::Conductivity("w".to_owned()),
        },
        Case {
            kind: "conductivity",
            from: "ms/m",
            to: "µS/cm",
            number: "1050",
            with: |text| water_with(|water| water.conductivity = Some(typed(text))),
            slot: || Slot::Conductivity("w".to_owned()),
        },
        Case {
            kind: "conductivity",
            from: "ms/cm",
            to: "mS/m",
            number: "105",
            with: |text| water_with(|water| water.conductivity = Some(typed(text))),
            slot: || Slot::Conductivity("w".to_owned()),
        },
        Case {
            kind: "conductivity",
            from: "ms/m",
            to: "mS/cm",
            number: "1.05",
            with: |text| water_with(|water| water.conductivity = Some(typed(text))),
            slot: || Slot::Conductivity("w".to_owned()),
        },
    ];
    let mut missing = Vec::new();
    for case in &cases {
        let (wrong, right) = (format!("{} {}", case.number, case.from), format!("{} {}", case.number, case.to));
        let slot = (case.slot)();
        none_in(&(case.with)(&right));
        let all = offered(&(case.with)(&wrong), &slot);
        if all.first() != Some(&right) {
            missing.push(format!("{wrong}: {right} first, not {all:?}"));
        }
    }
    assert!(missing.is_empty(), "{missing:#?}");
    // Every row is tried, but those of rates and volumes above, of ions below, and of what a name alone tells.
    let elsewhere = ["amount", "per", "basis", "rate", "carrier", "calcium", "magnesium", "bicarbonate", "any"];
    for row in table().iter().filter(|row| !elsewhere.contains(&row.kind.as_str()) && row.farms.is_empty()) {
        let bare = |unit: &str| unit.trim_start_matches('°').to_lowercase();
        let is_tried = cases
            .iter()
            .any(|case| case.kind == row.kind && bare(case.from) == bare(&row.from) && bare(case.to) == bare(&row.to));
        // By the name of a product, by the pressure of a nozzle and by the air that was expected: below.
        let is_below =
            ["%w/w", "%w/v", "g/kg", "f"].contains(&row.from.as_str()) || (row.kind == "speed" && row.to == "mph");
        assert!(is_tried || is_below, "{row:?} is not tried");
    }
}

#[test]
fn a_rate_through_a_wrong_content_is_not_doubted_too() {
    let mut farm =
        content_with("Herbicide (demo)", Formulation::SL, "glyphosate", ActiveBasis::AcidEquivalent, "540 lb/gal");
    farm.passes["p"].mix[0].rate = typed("0.75 lb ae/ac");
    assert!(offered(&farm, &rate_slot()).is_empty());
    assert_eq!(offered(&farm, &content_slot()).first().map(String::as_str), Some("540 g/L"));
}

#[test]
fn contents_are_held_against_the_name() {
    use ActiveBasis::{AcidEquivalent, ActiveIngredient};
    // Name, formulation, active, basis, what is right, what is typed, what comes first.
    for (name, formulation, active, basis, right, wrong, first) in [
        // Glyphosate as potassium: 540 g/L of the acid are 661.7 of the salt.
        ("Glyphosate 540 SL (demo)", Formulation::SL, "glyphosate", AcidEquivalent, "540 g/L", "661.7 g/L", "540 g/L"),
        (
            "Glyphosate 540 SL (demo)",
            Formulation::SL,
            "glyphosate",
            AcidEquivalent,
            "4.5 lb/gal",
            "5.52 lb/gal",
            "4.51 lb/gal",
        ),
        // 480 g/L of the isopropylamine salt are 355.7 of the acid.
        (
            "Glyphosate 480 SL (demo)",
            Formulation::SL,
            "glyphosate",
            ActiveIngredient,
            "480 g/L",
            "355.7 g/L",
            "480 g/L",
        ),
        // 2,4-D as dimethylamine: 480 g/L of the acid are 577.9 of the salt.
        ("2,4-D amine 480 SL (demo)", Formulation::SL, "2,4-D", AcidEquivalent, "480 g/L", "577.9 g/L", "480 g/L"),
        (
            "Herbicide 540 SL (demo)",
            Formulation::SL,
            "mesotrione",
            ActiveIngredient,
            "540 g/L",
            "54 % w/v",
            "540 % w/v",
        ),
        (
            "Nicosulfuron 75 WG (demo)",
            Formulation::WG,
            "nicosulfuron",
            ActiveIngredient,
            "75 % w/w",
            "7.5 % w/w",
            "75 % w/w",
        ),
    ] {
        if wrong == "54 % w/v" {
            // The same figure written otherwise.
            none_in(&content_with(name, formulation, active, basis, wrong));
            continue;
        }
        none_in(&content_with(name, formulation, active, basis, right));
        let all = offered(&content_with(name, formulation, active, basis, wrong), &content_slot());
        assert_eq!(all.first().map(String::as_str), Some(first), "{name}, {wrong}: {all:?}");
    }
    // By weight where by weight in a volume was meant: 54 % of a product of 1.35 kg/L would be 729 g/L.
    let mut farm = content_with("Glyphosate 540 SL (demo)", Formulation::SL, "glyphosate", AcidEquivalent, "54 % w/w");
    farm.products["h"].density = Some(typed("1.35 kg/L"));
    assert_eq!(offered(&farm, &content_slot()).first().map(String::as_str), Some("54 % w/v"));
    // The figure of the name may be that of the salt while that of the acid is typed.
    none_in(&content_with("Glyphosate 480 SL (demo)", Formulation::SL, "glyphosate", AcidEquivalent, "356 g/L"));
    none_in(&content_with("Glyphosate 540 SL (demo)", Formulation::SL, "glyphosate", ActiveIngredient, "661 g/L"));
    // A figure in a name that is not a content.
    none_in(&content_with("Herbicide 2000 (demo)", Formulation::SL, "mesotrione", ActiveIngredient, "480 g/L"));
}

/// Each salt and ester of the table: its figure typed as that of the acid, and the other way round.
#[test]
fn each_salt_is_told_from_its_acid() {
    for salt in salts::table() {
        let (acid, whole) = (400.0, 400.0 * salt.ratio());
        if whole / acid < 1.04 {
            continue;
        }
        for (basis, wrong, right) in
            [(ActiveBasis::AcidEquivalent, whole, acid), (ActiveBasis::ActiveIngredient, acid / salt.ratio(), acid)]
        {
            let farm = content_with(
                "Herbicide 400 SL (demo)",
                Formulation::SL,
                &salt.active,
                basis,
                &format!("{wrong:.2} g/L"),
            );
            let all = offered(&farm, &content_slot());
            let is_near =
                |text: &String| (text.split(' ').next().unwrap().parse::<f64>().unwrap() / right - 1.0).abs() < 0.02;
            assert!(all.first().is_some_and(is_near), "{salt:?}, {wrong}: {all:?}");
            let flip = Slot::Basis { product: "h".to_owned(), active: 0 };
            assert_eq!(offered(&farm, &flip).len(), 1, "{salt:?}");
        }
    }
}

#[test]
fn a_content_is_held_against_a_label_that_states_one_rate_twice() {
    let with = |content: &str| {
        let mut farm =
            content_with("Herbicide (demo)", Formulation::SL, "glyphosate", ActiveBasis::AcidEquivalent, content);
        // 32 fl oz/ac of 4.5 lb/gal are 1.125 lb/ac.
        farm.products["h"]
            .label
            .push(Statement::new(Says::Rate { least: None, most: Some(typed("1.125 lb ae/ac")) }, "page 3"));
        farm
    };
    none_in(&with("4.5 lb/gal"));
    let all = offered(&with("5.51 lb/gal"), &content_slot());
    assert_eq!(all.first().map(String::as_str), Some("4.5 lb/gal"), "{all:?}");
    assert_eq!(offered(&with("4.5 lb/imp gal"), &content_slot()).first().map(String::as_str), Some("4.5 lb/gal"));
}

#[test]
fn each_row_of_ions_is_found() {
    // 118 ppm of calcium and 42 of magnesium make 468 ppm as calcium carbonate.
    for (calcium, magnesium, offers) in [
        ("294.7 ppm", "42 ppm", "118 ppm"),
        ("118 ppm", "173 ppm", "42 ppm"),
        ("294.7 mg/L", "173 mg/L", "calcium 118 mg/L and magnesium 42 mg/L"),
        ("2.944 ppm", "1.728 ppm", "calcium 118 ppm and magnesium 42 ppm"),
        ("5.889 ppm", "3.456 ppm", "calcium 118 ppm and magnesium 42 ppm"),
        ("1180 ppm", "42 ppm", "118 ppm"),
    ] {
        let farm = water_with(|water| {
            water.calcium = Some(typed(calcium));
            water.magnesium = Some(typed(magnesium));
        });
        let found = plan(&farm, "p").unwrap().findings;
        let all: Vec<String> =
            found.iter().flat_map(|finding| &finding.offers).map(tankard_core::plausible::Offer::text).collect();
        assert_eq!(all.first().map(String::as_str), Some(offers), "{calcium}, {magnesium}: {all:?}");
    }
    none_in(&water_with(|_| ()));
    // Bicarbonate that is far more than what it balances: calcium and magnesium in milliequivalents.
    let farm = water_with(|water| {
        (water.hardness, water.bicarbonate) = (None, Some(typed("560 ppm")));
        (water.calcium, water.magnesium) = (Some(typed("5.89 ppm")), Some(typed("3.46 ppm")));
    });
    let all = offered(&farm, &Slot::Calcium("w".to_owned()));
    assert!(all.contains(&"calcium 118 ppm and magnesium 42 ppm".to_owned()), "{all:?}");
    let farm = water_with(|water| water.bicarbonate = Some(typed("4100 ppm")));
    assert_eq!(offered(&farm, &Slot::Bicarbonate("w".to_owned())).first().map(String::as_str), Some("410 ppm"));
    // What alkalinity as calcium carbonate would be as bicarbonate cannot be told from it, and nothing is said.
    none_in(&water_with(|water| water.bicarbonate = Some(typed("336 ppm"))));
}

#[test]
fn hardness_in_grains_beside_ions_and_alone() {
    none_in(&water_with(|water| water.hardness = None));
    let farm = water_with(|water| {
        (water.calcium, water.magnesium, water.hardness) = (None, None, Some(typed("350 gpg")));
    });
    assert_eq!(offered(&farm, &Slot::Hardness("w".to_owned())).first().map(String::as_str), Some("350 ppm"));
    // Twenty grains typed as ppm, and nothing to hold it against.
    none_in(&water_with(|water| {
        (water.calcium, water.magnesium, water.hardness) = (None, None, Some(typed("20 ppm")));
    }));
}

#[test]
fn adjuvants_are_held_against_their_class() {
    use AdjuvantClass::{AmmoniumSulfate, CropOilConcentrate, MethylatedSeedOil, NonIonicSurfactant};
    for (class, formulation, right, wrong) in [
        (NonIonicSurfactant, Formulation::SL, "0.25 % v/v", "25 % v/v"),
        (NonIonicSurfactant, Formulation::SL, "0.25 % v/v", "0.0025 % v/v"),
        (NonIonicSurfactant, Formulation::SL, "1 qt/100 gal", "1 gal/100 gal"),
        (NonIonicSurfactant, Formulation::SL, "2 qt/100 gal", "2 qt/ac"),
        (CropOilConcentrate, Formulation::EC, "1 % v/v", "10 % v/v"),
        (CropOilConcentrate, Formulation::EC, "1.5 gal/100 gal", "1.5 gal/ac"),
        (MethylatedSeedOil, Formulation::EC, "1.5 pt/ac", "1.5 fl oz/ac"),
        (AmmoniumSulfate, Formulation::SG, "17 lb/100 gal", "17 lb/ac"),
        (AmmoniumSulfate, Formulation::SG, "8.5 lb/100 gal", "85 lb/100 gal"),
        (AmmoniumSulfate, Formulation::SG, "8.5 lb/100 gal", "8.5 oz/100 gal"),
        (AmmoniumSulfate, Formulation::SG, "2.5 lb/ac", "2.5 kg/ha"),
    ] {
        let mut farm = farm(adjuvant(class, formulation), right);
        none_in(&farm);
        farm.passes["p"].mix[0].rate = typed(wrong);
        let all = offered(&farm, &rate_slot());
        if wrong == "2.5 kg/ha" {
            // That is a rate of its own.
            assert!(all.is_empty(), "{all:?}");
        } else if wrong == "1 gal/100 gal" {
            // One per cent is a rate of a surfactant, too.
            assert!(all.is_empty(), "{all:?}");
        } else {
            assert_eq!(all.first().map(String::as_str), Some(right), "{wrong}: {all:?}");
        }
    }
}

/// What any label of the mix names for a class is not doubted, and what publications print is not either.
#[test]
fn a_rate_that_is_printed_is_not_doubted() {
    let mut reader =
        csv::Reader::from_path(Path::new(env!("CARGO_MANIFEST_DIR")).join("../assets/adjuvant-guidance.csv")).unwrap();
    let heads = reader.headers().unwrap().clone();
    let at = |name: &str| heads.iter().position(|head| head == name).unwrap();
    let mut tried = 0;
    for row in reader.records() {
        let row = row.unwrap();
        for class in row[at("class")].split_whitespace().filter_map(AdjuvantClass::of_key) {
            for rate in [&row[at("least")], &row[at("most")]] {
                let is_liquid = class != AdjuvantClass::AmmoniumSulfate || rate.contains("v/v");
                if rate.is_empty() || (class == AdjuvantClass::AmmoniumSulfate && is_liquid) {
                    continue;
                }
                for carrier in ["3 gal/ac", "5 gal/ac", "10 gal/ac", "15 gal/ac", "20 gal/ac", "60 gal/ac"] {
                    let mut farm =
                        farm(adjuvant(class, if is_liquid { Formulation::EC } else { Formulation::SG }), rate);
                    farm.passes["p"].carrier = Some(typed(carrier));
                    none_in(&farm);
                    tried += 1;
                }
            }
        }
    }
    assert!(tried > 200, "{tried}");
    let mut farm = farm(adjuvant(AdjuvantClass::NonIonicSurfactant, Formulation::SL), "4 % v/v");
    assert!(!offered(&farm, &rate_slot()).is_empty());
    let mut partner = herbicide(Formulation::SL, "16 fl oz/ac", "32 fl oz/ac");
    let says = Says::Adjuvant {
        class: AdjuvantClass::NonIonicSurfactant,
        stance: tankard_core::farm::Stance::Allowed,
        least: None,
        most: Some(typed("4 % v/v")),
        at_least: None,
        at_most: None,
    };
    partner.label.push(Statement::new(says, "page 4"));
    farm.products.insert("partner".to_owned(), partner);
    farm.passes["p"].mix.push(Line::new("partner", typed("22 fl oz/ac")));
    none_in(&farm);
}

#[test]
fn the_sentence_says_why_and_what() {
    let farm = farm(herbicide(Formulation::SL, "16 fl oz/ac", "32 fl oz/ac"), "22 pt/ac");
    let found = plan(&farm, "p").unwrap().findings;
    let finding = found.iter().find(|finding| !finding.offers.is_empty()).unwrap();
    assert_eq!(finding.level, Level::Check);
    assert_eq!(finding.about, Subject::Product("h".to_owned()));
    assert_eq!(
        finding.text,
        "22 pt/ac of Herbicide (demo) is 11 times the most that its label names (16 fl oz/ac to 32 fl oz/ac); 22 fl oz/ac would be inside"
    );
    assert_eq!(finding.basis.source(), "Herbicide (demo), page 3");
    // The Stop stays with the label.
    assert!(found.iter().any(|other| other.level == Level::Stop && other.offers.is_empty()));
    let text = report::text::finding(finding);
    assert!(text.contains("Perhaps meant: 22 fl oz/ac."), "{text}");
    let json = report::json::finding(finding);
    assert_eq!(json["offers"][0]["text"], "22 fl oz/ac");
    assert_eq!(json["offers"][0]["sets"][0]["box"], "rate:p/h");
}

#[test]
fn a_figure_with_nothing_to_hold_it_against_is_left_alone() {
    let bare = Product::new("Herbicide (demo)", ProductKind::Herbicide, Formulation::SL);
    for rate in ["22 fl oz/ac", "22 pt/ac", "220 gal/ac", "0.001 mL/ha"] {
        none_in(&farm(bare.clone(), rate));
    }
    let mut farm = farm(bare, "22 fl oz/ac");
    // A field alone, in any unit.
    farm.fields["f"].area = typed("12 ha");
    none_in(&farm);
    // Days without a crop's.
    farm.passes["p"].date = date(2013, 6, 12);
    none_in(&farm);
}

#[test]
fn what_is_beside_a_label_and_not_far_off_gets_no_other_value() {
    // 33 is a little too much, and no slip makes it so.
    let farm = farm(herbicide(Formulation::SL, "16 fl oz/ac", "32 fl oz/ac"), "33 fl oz/ac");
    assert!(offered(&farm, &rate_slot()).is_empty());
}

/// What nobody on the farm writes, nor any label of the mix, is not what was meant: a volume beyond a label in gallons is no slip for litres.
#[test]
fn an_offer_is_in_a_unit_of_the_farm_or_of_the_label() {
    let with = |most: &str, volume: &str| {
        let mut product = herbicide(Formulation::SL, "16 fl oz/ac", "32 fl oz/ac");
        product
            .label
            .push(Statement::new(Says::Carrier { least: Some(typed("3 gal/ac")), most: Some(typed(most)) }, ""));
        let mut farm = farm(product, "22 fl oz/ac");
        farm.passes["p"].carrier = Some(typed(volume));
        offered(&farm, &Slot::Carrier("p".to_owned()))
    };
    assert_eq!(with("40 gal/ac", "45 gal/ac"), ["4.5 gal/ac"]);
    assert_eq!(with("40 gal/ac", "150 gal/ac").first().map(String::as_str), Some("15 gal/ac"));
    assert!(with("374 L/ha", "140 gal/ac").iter().any(|offer| offer == "140 L/ha"));
}

/// Of one nozzle more pressure makes finer droplets: common practice, no source; the maker's table decides.
#[test]
fn a_droplet_table_that_gets_coarser_with_pressure_is_doubted() {
    use tankard_core::farm::ClassAt;
    use tankard_core::farm::Droplets::{self, Coarse, ExtremelyCoarse, ExtremelyFine, VeryCoarse};
    let checks = |lines: &[(&str, Droplets)]| -> Vec<String> {
        let farm = rig_with(|rig| {
            let droplets = lines.iter().map(|(at, class)| ClassAt { at: typed(at), class: *class }).collect();
            rig.sets.insert("s".to_owned(), NozzleSet { name: "Set".to_owned(), droplets, ..NozzleSet::default() });
        });
        let all = plan(&farm, "p").unwrap().findings.into_iter();
        let doubts = all.filter(|finding| finding.text.contains("more pressure makes finer droplets"));
        doubts.inspect(|finding| assert_eq!(finding.level, Level::Check)).map(|finding| finding.text).collect()
    };
    let told = checks(&[("25 psi", ExtremelyCoarse), ("45 psi", ExtremelyFine), ("70 psi", Coarse)]);
    assert!(told.len() == 1 && told[0].contains("45 psi gives extremely fine and 70 psi"), "{told:?}");
    // In whatever order they are typed; lines that are alike are fine, and one still to type says nothing.
    assert!(checks(&[("70 psi", Coarse), ("25 psi", ExtremelyCoarse), ("45 psi", VeryCoarse)]).is_empty());
    assert!(checks(&[("25 psi", Coarse), ("45 psi", Coarse), ("0 psi", ExtremelyFine)]).is_empty());
    assert_eq!(checks(&[("70 psi", ExtremelyCoarse), ("25 psi", Coarse)]).len(), 1);
}

#[test]
fn a_spray_volume_without_a_label_for_it() {
    let with = |volume: &str, units: Units| {
        let mut farm = farm(herbicide(Formulation::SL, "16 fl oz/ac", "32 fl oz/ac"), "22 fl oz/ac");
        farm.units = units;
        farm.passes["p"].carrier = Some(typed(volume));
        offered(&farm, &Slot::Carrier("p".to_owned()))
    };
    assert_eq!(with("15 L/ha", Units::UsCustomary), ["15 gal/ac"]);
    assert_eq!(with("140 gal/ac", Units::Metric).first().map(String::as_str), Some("140 L/ha"));
    assert_eq!(with("1500 gal/ac", Units::UsCustomary).first().map(String::as_str), Some("15 gal/ac"));
    // A little and much, in the unit of the farm; and what is usual in any.
    for (volume, units) in [
        ("2 gal/ac", Units::UsCustomary),
        ("100 gal/ac", Units::UsCustomary),
        ("15 L/ha", Units::Metric),
        ("1000 L/ha", Units::Metric),
        ("140 L/ha", Units::UsCustomary),
        ("15 gal/ac", Units::Metric),
    ] {
        assert!(with(volume, units).is_empty(), "{volume}");
    }
}

#[test]
fn a_field_in_the_unit_of_no_other() {
    let with = |area: &str| {
        let mut farm = farm(herbicide(Formulation::SL, "16 fl oz/ac", "32 fl oz/ac"), "22 fl oz/ac");
        for (id, area) in [("a", "60 ac"), ("b", "88 ac"), ("c", "120 ac")] {
            farm.fields.insert(id.to_owned(), Field::new(id, typed(area)));
        }
        farm.fields["f"].area = typed(area);
        farm
    };
    let slot = Slot::Area("f".to_owned());
    assert_eq!(offered(&with("74.6 ha"), &slot), ["74.6 ac"]);
    for right in ["74.6 ac", "30.2 ha", "7 ac", "400 ac", "3 ha"] {
        none_in(&with(right));
    }
    let mut farm = with("74.6 ac");
    farm.fields["f"].unsprayed = Some(typed("5.6 ha"));
    none_in(&farm);
    farm.fields["f"].unsprayed = Some(typed("56 ha"));
    assert!(offered(&farm, &Slot::Unsprayed("f".to_owned())).contains(&"56 ac".to_owned()));
    let mut farm = with("74.6 ac");
    farm.passes["p"].parts.insert("f".to_owned(), typed("40 ha"));
    let slot = Slot::Part { pass: "p".to_owned(), field: "f".to_owned() };
    assert_eq!(offered(&farm, &slot).first().map(String::as_str), Some("40 ac"));
}

#[test]
fn a_boom_and_its_nozzles() {
    none_in(&set_with("20 in"));
    let mut farm = set_with("20 in");
    farm.rigs["r"].boom = Some(typed("120 m"));
    assert_eq!(offered(&farm, &Slot::Boom("r".to_owned())).first().map(String::as_str), Some("120 ft"));
    // A speed in the unit that is not the farm's own, at which the nozzles cannot do it.
    let with = |speed: &str| {
        let mut farm = rated_with("06", "0.6 gal/min", "40 psi");
        let rig = &mut farm.rigs["r"];
        rig.speed = Some(typed(speed));
        let set = &mut rig.sets["s"];
        set.layout = Some(Layout::Broadcast { spacing: typed("20 in") });
        (set.least, set.most) = (Some(typed("20 psi")), Some(typed("90 psi")));
        farm
    };
    none_in(&with("12 mph"));
    none_in(&with("20 km/h"));
    assert_eq!(offered(&with("12 km/h"), &Slot::RigSpeed("r".to_owned())), ["12 mph"]);
    // Twenty miles an hour are too fast for it, and no slip on a farm in miles.
    none_in(&with("20 mph"));
}

#[test]
fn a_place_with_a_wrong_sign_or_swapped() {
    let with = |latitude: &str, longitude: &str, zone: &str| {
        let mut farm = field_with("74.6 ac");
        farm.place = Some(Place {
            latitude: latitude.to_owned(),
            longitude: longitude.to_owned(),
            zone: zone.to_owned(),
            ..Place::default()
        });
        farm
    };
    let (north, east) = (|farm: &Farm| offered(farm, &Slot::Latitude), |farm: &Farm| offered(farm, &Slot::Longitude));
    for zone in ["America/Chicago", ""] {
        none_in(&with("41.2", "-96.4", zone));
        assert_eq!(east(&with("41.2", "96.4", zone)).first().map(String::as_str), Some("-96.4"), "{zone}");
        assert_eq!(east(&with("41.2", "96.4 E", zone)).first().map(String::as_str), Some("96.4 W"), "{zone}");
        let all = north(&with("-96.4", "41.2", zone));
        assert_eq!(all.first().map(String::as_str), Some("latitude 41.2 and longitude -96.4"), "{zone}: {all:?}");
    }
    assert_eq!(north(&with("-41.2", "-96.4", "America/Chicago")), ["41.2"]);
    let mut farm = with("41.2", "96.4", "America/Chicago");
    let found = of_farm(&farm, date(2031, 6, 12));
    let offer = found.iter().flat_map(|finding| &finding.offers).next().unwrap().clone();
    assert!(offer.take(&mut farm));
    assert_eq!(farm.place.as_ref().unwrap().longitude, "-96.4");
    none_in(&farm);
}

#[test]
fn days_of_another_year() {
    let with = |day: jiff::civil::Date| {
        let mut farm = farm(herbicide(Formulation::SL, "16 fl oz/ac", "32 fl oz/ac"), "22 fl oz/ac");
        let field = &mut farm.fields["f"];
        (field.planted, field.harvest) = (Some(date(2031, 5, 1)), Some(date(2031, 9, 26)));
        farm.passes["p"].date = day;
        farm
    };
    let slot = Slot::PassDate("p".to_owned());
    for right in [
        date(2031, 6, 12),
        date(2031, 3, 20),
        date(2030, 10, 20),
        date(2031, 10, 20),
        date(2032, 8, 1),
        date(2030, 5, 1),
    ] {
        assert!(offered(&with(right), &slot).is_empty(), "{right}");
    }
    for wrong in [date(2013, 6, 12), date(2021, 6, 12), date(2035, 6, 12)] {
        assert_eq!(offered(&with(wrong), &slot), ["2031-06-12"], "{wrong}");
    }
    // What stands for years, and of which no harvest is typed, may be sprayed in any of them.
    let mut farm = with(date(2031, 6, 12));
    (farm.fields["f"].planted, farm.fields["f"].harvest) = (Some(date(2022, 4, 1)), None);
    assert!(offered(&farm, &slot).is_empty());
    farm.fields["f"].planted = Some(date(2031, 5, 1));
    farm.fields["f"].harvest = Some(date(2030, 9, 26));
    let mut found = Vec::new();
    of_field(&farm, "f", &mut found);
    assert_eq!(texts(&found, &Slot::Harvest("f".to_owned())), ["2031-09-26"]);
}

fn record(day: jiff::civil::Date) -> Record {
    Record {
        pass: Some("p".into()),
        fields: [("f".to_owned(), RecordField::new("Field", typed("80 ac")))].into(),
        lines: vec![RecordLine::new("h", "Herbicide (demo)", typed("13 gal"))],
        made: Some(date(2031, 6, 12).at(21, 0, 0, 0)),
        ..Record::new("Record", day)
    }
}

fn of_a_record(record: &Record) -> Vec<Finding> {
    let mut farm = farm(herbicide(Formulation::SL, "16 fl oz/ac", "32 fl oz/ac"), "22 fl oz/ac");
    farm.products["h"].counted = Some(date(2031, 6, 1));
    let mut found = Vec::new();
    of_record(&farm, &"x".to_owned(), record, date(2031, 6, 20), &mut found);
    found
}

#[test]
fn records_of_another_year_and_of_days_to_come() {
    let slot = Slot::RecordDate("x".to_owned());
    assert!(of_a_record(&record(date(2031, 6, 12))).is_empty());
    for wrong in [date(2032, 6, 12), date(2013, 6, 12), date(2030, 6, 12)] {
        let found = of_a_record(&record(wrong));
        assert_eq!(texts(&found, &slot), ["2031-06-12"], "{wrong}: {found:?}");
    }
    let found = of_a_record(&record(date(2030, 6, 12)));
    assert!(found[0].text.contains("counted on 1 June 2031"), "{}", found[0].text);
    // One of last year, whose pass is planned anew; and one of its own.
    assert!(
        of_a_record(&Record { made: Some(date(2030, 6, 12).at(21, 0, 0, 0)), ..record(date(2030, 6, 12)) }).is_empty()
    );
    assert!(of_a_record(&Record { pass: None, ..record(date(2030, 6, 12)) }).is_empty());
}

#[test]
fn weather_that_nobody_sprays_in() {
    let with = |air: &str, wind: &str| Record {
        temperature: Some(typed(air)),
        wind: Some(typed(wind)),
        expected: Some(Box::new(Expected {
            source: "forecast".into(),
            temperature: Some((typed("20 °C"), typed("26 °C"))),
            ..Expected::default()
        })),
        ..record(date(2031, 6, 12))
    };
    assert!(of_a_record(&with("22 °C", "8 mph")).is_empty());
    let air = Slot::Measured { record: "x".to_owned(), reading: None, what: tankard_core::plausible::Measured::Air };
    let wind = Slot::Measured { record: "x".to_owned(), reading: None, what: tankard_core::plausible::Measured::Wind };
    assert_eq!(texts(&of_a_record(&with("68 °C", "8 mph")), &air).first().map(String::as_str), Some("68 °F"));
    assert_eq!(texts(&of_a_record(&with("22 °F", "8 mph")), &air).first().map(String::as_str), Some("22 °C"));
    assert_eq!(texts(&of_a_record(&with("22 °C", "30 m/s")), &wind).first().map(String::as_str), Some("30 km/h"));
    // A signed record is amended, so nothing is offered.
    let mut signed = with("68 °C", "8 mph");
    signed = tankard_core::season::seal::sign(&signed, "A person", date(2031, 6, 13).at(8, 0, 0, 0)).unwrap();
    let found = of_a_record(&signed);
    assert!(found.len() == 1 && found[0].offers.is_empty() && found[0].hint.contains("amend"), "{found:?}");
}

#[test]
fn the_demo_farm_and_the_farms_of_before_have_no_wrong_number() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("reference/farms");
    let mut farms = vec![demo::farm().unwrap()];
    for entry in std::fs::read_dir(folder).unwrap() {
        farms.push(tankard_file::read(&std::fs::read(entry.unwrap().path()).unwrap()).unwrap());
    }
    assert!(farms.len() >= 3);
    for farm in &farms {
        none_in(farm);
        // Years before and after the days that they were made up for.
        for today in [date(2026, 11, 28), date(2031, 6, 12), date(2040, 1, 1)] {
            let found = report::check::of_typed(farm, today, &[]);
            assert!(found.is_empty(), "{found:#?}");
        }
    }
}

/// What is taken is typed in its box, and then there is nothing to doubt any more.
#[test]
fn what_is_taken_is_typed() {
    type Make = (Farm, fn(&Farm, &mut Vec<Finding>));
    let all: Vec<Make> = vec![
        (farm(herbicide(Formulation::SL, "16 fl oz/ac", "32 fl oz/ac"), "22 pt/ac"), |_, _| ()),
        (field_with("74.6 ha"), |farm, found| of_field(farm, "f", found)),
        (set_with("20 cm"), |farm, found| of_rig(farm, "r", found)),
        (rig_with(|rig| rig.tank = typed("6000 gal")), |farm, found| of_rig(farm, "r", found)),
        (rated_with("04", "0.4 L/min", "40 psi"), |farm, found| of_rig(farm, "r", found)),
        (rated_with("04", "0.4 gal/min", "40 bar"), |farm, found| of_rig(farm, "r", found)),
        (density_with("11.3 kg/L"), |farm, found| of_product(farm, "h", found)),
        (
            content_with(
                "Herbicide (demo)",
                Formulation::SL,
                "mesotrione",
                ActiveBasis::ActiveIngredient,
                "540 lb/gal",
            ),
            |farm, found| of_product(farm, "h", found),
        ),
        (
            content_with(
                "Herbicide (demo)",
                Formulation::SL,
                "glyphosate",
                ActiveBasis::ActiveIngredient,
                "4.5 lb ae/gal",
            ),
            |farm, found| of_product(farm, "h", found),
        ),
        (water_with(|water| water.calcium = Some(typed("294.7 ppm"))), |farm, found| of_water(farm, "w", found)),
        (water_with(|water| water.hardness = Some(typed("27.3 ppm"))), |farm, found| of_water(farm, "w", found)),
        (water_with(|water| water.conductivity = Some(typed("1050 mS/cm"))), |farm, found| of_water(farm, "w", found)),
    ];
    for (mut farm, beside) in all {
        let found = plan(&farm, "p").unwrap().findings;
        let offer = found.iter().flat_map(|finding| &finding.offers).next().unwrap().clone();
        let mut by_itself = Vec::new();
        beside(&farm, &mut by_itself);
        assert!(by_itself.is_empty() || by_itself.iter().any(|finding| finding.offers.contains(&offer)));
        assert!(offer.take(&mut farm), "{offer:?}");
        none_in(&farm);
        let mut by_itself = Vec::new();
        beside(&farm, &mut by_itself);
        assert!(by_itself.is_empty(), "{by_itself:#?}");
    }
}

const UNITS: [&str; 12] = [
    "fl oz/ac",
    "pt/ac",
    "qt/ac",
    "gal/ac",
    "L/ha",
    "mL/ha",
    "L/ac",
    "mL/ac",
    "qt/100 gal",
    "fl oz/100 gal",
    "L/100 L",
    "% v/v",
];

proptest! {
    #![proptest_config(tankard_tests::cases(256))]

    /// A figure inside its label's range is never doubted, whatever range and unit.
    #[test]
    fn a_figure_inside_is_never_doubted(unit in 0..UNITS.len(), least in 0.01_f64..50.0, wide in 1.01_f64..20.0, at in 0.0_f64..1.0) {
        let unit = UNITS[unit];
        let most = least * wide;
        let rate = least + (most - least) * at;
        prop_assume!(tankard_core::quantity::Rate::parse(&format!("{most:.6} {unit}")).is_ok());
        let product = herbicide(Formulation::SL, &format!("{least:.6} {unit}"), &format!("{most:.6} {unit}"));
        let farm = farm(product, &format!("{:.6} {unit}", rate.clamp(least * 1.000_01, most * 0.999_99)));
        prop_assert!(offered(&farm, &rate_slot()).is_empty());
    }

    /// A figure inside, through any one confusion that leaves the range, comes back among what is offered.
    #[test]
    fn a_figure_through_a_confusion_comes_back(row in 0..table().len(), number in 1_u32..400, wide in 1.05_f64..4.0, at in 0.05_f64..0.95) {
        let row = &table()[row];
        prop_assume!(["amount", "per", "any"].contains(&row.kind.as_str()) && row.farms.is_empty());
        let number = f64::from(number) / 10.0;
        let (top, bottom) = match row.kind.as_str() {
            "amount" => (row.to.as_str(), "ac"),
            "per" if ["ha", "100 l", "l"].contains(&row.from.as_str()) || ["ha", "100 L"].contains(&row.to.as_str()) => ("L", row.to.as_str()),
            "per" => ("qt", row.to.as_str()),
            _ => ("L", "ha"),
        };
        let (wrong_top, wrong_bottom, wrong_number) = match row.kind.as_str() {
            "amount" => (row.from.as_str(), bottom, number),
            "per" => (top, row.from.as_str(), number),
            _ => (top, bottom, number * row.factor.unwrap()),
        };
        let is_dry = ["oz", "lb", "kg", "g"].contains(&top);
        let least = number / (1.0 + (wide - 1.0) * at);
        let most = least * wide;
        let right = format!("{number} {top}/{bottom}");
        let wrong = format!("{wrong_number} {wrong_top}/{wrong_bottom}");
        let fits = |text: &str| tankard_core::quantity::Rate::parse(text).is_ok();
        prop_assume!(fits(&right) && fits(&wrong) && fits(&format!("{most} {top}/{bottom}")));
        let formulation = if is_dry { Formulation::WG } else { Formulation::SL };
        let product = herbicide(formulation, &format!("{least} {top}/{bottom}"), &format!("{most} {top}/{bottom}"));
        let mut farm = farm(product, &right);
        prop_assert!(offered(&farm, &rate_slot()).is_empty());
        farm.passes["p"].mix[0].rate = typed(&wrong);
        let found = plan(&farm, "p").unwrap().findings;
        let is_out = found.iter().any(|finding| {
            finding.about == Subject::Product("h".to_owned())
                && (finding.level == Level::Stop || finding.text.contains("below its label's"))
                && finding.offers.is_empty()
        });
        prop_assume!(is_out);
        let all = texts(&found, &rate_slot());
        let same = |text: &String| {
            let value = |text: &str| tankard_core::quantity::Rate::parse(text).unwrap().show(Units::Metric);
            value(text) == value(&right)
        };
        prop_assert!(all.iter().any(same), "{wrong}, not {right}: {all:?}");
    }
}

/// A label that names 16 to 32 fl oz/ac, and 80 ac: 20 gal at the most. 13.75 gal is planned.
#[test]
fn what_is_recorded_is_held_against_label_and_plan() {
    let slot = Slot::RecordAmount { record: "x".to_owned(), product: "h".to_owned() };
    let used = |amount: &str| {
        let mut record = record(date(2031, 6, 12));
        record.lines[0] =
            RecordLine { planned: Some(typed("13.75 gal")), ..RecordLine::new("h", "Herbicide (demo)", typed(amount)) };
        record
    };
    for fine in ["13.75 gal", "20 gal", "9 gal", "7 gal 2 qt"] {
        assert!(of_a_record(&used(fine)).is_empty(), "{fine}: {:?}", of_a_record(&used(fine)));
    }
    for (wrong, meant) in [("137.5 gal", "13.75 gal"), ("1.375 gal", "13.75 gal"), ("13.75 qt", "13.75 gal")] {
        let found = of_a_record(&used(wrong));
        assert!(texts(&found, &slot).contains(&meant.to_owned()), "{wrong}: {found:?}");
        let mut farm = farm(herbicide(Formulation::SL, "16 fl oz/ac", "32 fl oz/ac"), "22 fl oz/ac");
        farm.records.insert("x".to_owned(), used(wrong));
        let offer = found[0].offers.iter().find(|offer| offer.text() == meant).unwrap();
        assert!(offer.take(&mut farm));
        assert_eq!(farm.records["x"].lines[0].amount.text(), meant);
    }
    // Above the label, though near the plan: the label is the basis, and the record stays what it is.
    let found = of_a_record(&used("21 gal"));
    assert!(
        found[0].text.contains("33.6 fl oz/ac, 1.1 times the most that is named for it (32 fl oz/ac)"),
        "{found:?}"
    );
    assert!(matches!(found[0].basis, Basis::Label(_)) && found[0].offers.is_empty());
    // On half the ground half of it was planned.
    let mut half = used("6.9 gal");
    half.fields["f"].planned = Some(typed("80 ac"));
    half.fields["f"].area = typed("40 ac");
    assert!(of_a_record(&half).is_empty());
    half.lines[0].amount = typed("13.75 gal");
    assert!(of_a_record(&half)[0].text.contains("times the most"), "{:?}", of_a_record(&half));
    // A signed one is amended.
    let mut signed = used("137.5 gal");
    let at = date(2031, 6, 12).at(22, 0, 0, 0);
    signed.signed = Some(Box::new(tankard_core::farm::Signature { by: "A. Demo".into(), at, hash: String::new() }));
    assert!(of_a_record(&signed)[0].offers.is_empty());
}

#[test]
fn a_pass_that_was_sprayed_a_day_before_is_moved_by_one_click() {
    let mut farm = farm(herbicide(Formulation::SL, "16 fl oz/ac", "32 fl oz/ac"), "22 fl oz/ac");
    farm.passes["p"].date = date(2031, 6, 12);
    farm.records.insert("x".to_owned(), record(date(2031, 6, 11)));
    let of = |farm: &Farm, today| {
        let mut found = Vec::new();
        of_record(farm, &"x".to_owned(), &farm.records["x"], today, &mut found);
        found
    };
    let found = of(&farm, date(2031, 6, 11));
    assert_eq!(texts(&found, &Slot::PassDate("p".to_owned())), ["2031-06-11"], "{found:?}");
    // Long after, nobody asks; and of several records none is the pass itself.
    assert!(of(&farm, date(2031, 9, 1)).is_empty());
    assert!(found[0].offers[0].take(&mut farm));
    assert!(farm.passes["p"].date == date(2031, 6, 11) && of(&farm, date(2031, 6, 11)).is_empty());
}
