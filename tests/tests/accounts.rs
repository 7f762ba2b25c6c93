//! The accounts of the shed: stock falls with records, rises with purchases, and is never below zero unsaid.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use jiff::civil::{Date, Time, date};
use proptest::prelude::*;
use serde::Deserialize;
use tankard_core::farm::{
    Container, ContainerKind, Customer, Empties, Farm, Field, Formulation, InTank, Left, Line, Moved, Movement, Pass,
    Product, ProductKind, Record, RecordField, RecordLine, Rig, Water,
};
use tankard_core::finding::Level;
use tankard_core::plan::plan;
use tankard_core::quantity::{Amount, AsTyped, Quantity};
use tankard_core::season::Log;
use tankard_core::stock::{
    Account, Accounts, Count, Doubt, Kind, count, enter, findings, latest_price, ledger, lots, needs, reckoned, spent,
    strike,
};
use tankard_tests::cases;

fn typed<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

/// Litres or kilograms.
fn plain(amount: Amount) -> f64 {
    match amount {
        Amount::Volume(volume) => volume.to_litres(),
        Amount::Mass(mass) => mass.to_kilograms(),
    }
}

fn close(a: f64, b: f64, scale: f64) -> bool {
    (a - b).abs() <= 1e-9 * scale.max(a.abs()).max(b.abs()).max(1e-6)
}

fn container(kind: ContainerKind, size: &str, full: u32, opened: Option<&str>, lot: &str) -> Container {
    Container { kind, size: typed(size), full, opened: opened.map(typed), lot: lot.to_owned() }
}

fn jugs(full: u32, opened: Option<&str>, lot: &str) -> Container {
    container(ContainerKind::Jug, "2.5 gal", full, opened, lot)
}

/// A farm with one liquid, counted before the spraying of 10 June 2031.
fn farm(containers: Vec<Container>) -> Farm {
    let mut farm = Farm::new("Test");
    let mut oil = Product::new("Oil (demo)", ProductKind::Adjuvant, Formulation::EC);
    oil.containers = containers;
    oil.counted = Some(date(2031, 6, 10));
    farm.products.insert("oil".to_owned(), oil);
    farm
}

fn used(farm: &mut Farm, day: Date, amount: &str, lot: &str) {
    let mut record = Record::new(&format!("Record {}", farm.records.len() + 1), day);
    record.lines.push(RecordLine { lot: lot.into(), ..RecordLine::new("oil", "Oil (demo)", typed(amount)) });
    farm.records.insert(format!("r{}", farm.records.len()), record);
}

fn moved(farm: &mut Farm, day: Date, what: Moved) {
    enter(farm, Movement { product: "oil".to_owned(), date: day, what, by: String::new(), note: String::new() });
}

fn bought(size: &str, count: u32, lot: &str, price: &str) -> Moved {
    let price = AsTyped::parse(price).ok();
    Moved::Bought {
        kind: ContainerKind::Jug,
        size: typed(size),
        count,
        lot: lot.to_owned(),
        price,
        from: String::new(),
    }
}

fn account(farm: &Farm) -> Account {
    Accounts::of(farm).get("oil").unwrap().clone()
}

fn gallons(amount: Option<Amount>) -> f64 {
    plain(amount.unwrap()) / 3.785_411_784
}

fn said(farm: &Farm) -> Vec<(Level, String)> {
    findings(farm, &Accounts::of(farm), "oil").into_iter().map(|finding| (finding.level, finding.text)).collect()
}

#[test]
fn records_are_taken_off_the_count() {
    let mut farm = farm(vec![jugs(4, Some("2 qt"), "")]);
    used(&mut farm, date(2031, 6, 9), "5 gal", "");
    assert!((gallons(account(&farm).on_hand.amount) - 10.5).abs() < 1e-9, "what was before the count is in it");
    used(&mut farm, date(2031, 6, 10), "1 gal", "");
    used(&mut farm, date(2031, 6, 11), "4 gal", "");
    // By hand: 10.5 − 1 − 4 = 5.5 gal; the half gallon first, then half a gallon of a jug, then its 2 gal and 2 of the next.
    let now = account(&farm);
    assert!((gallons(now.on_hand.amount) - 5.5).abs() < 1e-9 && (gallons(Some(now.used)) - 5.0).abs() < 1e-9);
    let held = &now.on_hand.held[0];
    assert_eq!((held.full, held.opened.len(), now.on_hand.held.len()), (2, 1, 1));
    assert!((gallons(Some(held.opened[0])) - 0.5).abs() < 1e-9);
    assert_eq!(now.empties, [Empties { kind: ContainerKind::Jug, size: typed("2.5 gal"), count: 2 }]);
    // Counted after that day's spraying, the record of the day is in it.
    farm.products["oil"].counted_after = true;
    assert!((gallons(account(&farm).on_hand.amount) - 6.5).abs() < 1e-9);
    assert!(said(&farm).is_empty());
}

#[test]
fn without_a_day_of_a_count_nothing_is_taken_off() {
    let mut farm = farm(vec![jugs(4, None, "")]);
    farm.products["oil"].counted = None;
    assert!(said(&farm).is_empty());
    used(&mut farm, date(2031, 6, 11), "4 gal", "");
    moved(&mut farm, date(2031, 6, 11), bought("2.5 gal", 2, "", ""));
    assert!((gallons(account(&farm).on_hand.amount) - 10.0).abs() < 1e-9);
    let said = said(&farm);
    assert!(said[0].0 == Level::Note && said[0].1.contains("no day of a count is typed"), "{said:?}");
    assert!(ledger(&farm, &Log::of(&farm), "oil").iter().all(|entry| entry.balance.is_none()));
}

#[test]
fn purchases_add_and_bring_lots_and_sizes() {
    let mut farm = farm(vec![jugs(1, None, "A-1")]);
    moved(&mut farm, date(2031, 6, 12), bought("2.5 gal", 2, "B-2", "20 / gal"));
    moved(&mut farm, date(2031, 6, 14), bought("30 gal", 1, "C-3", "18 / gal"));
    assert!((gallons(account(&farm).on_hand.amount) - 37.5).abs() < 1e-9);
    // The new size joins the list of what it is sold in, and is not counted twice.
    assert_eq!(farm.products["oil"].containers.len(), 2);
    assert_eq!(farm.products["oil"].containers[1].full, 0);
    assert_eq!(latest_price(&farm, "oil").unwrap().1.text(), "18 / gal");
    // By hand: 5 gal × 20 + 30 gal × 18.
    assert_eq!(spent(&farm, Some("oil"), 2031).0.show(), "640.00");
    assert_eq!(spent(&farm, None, 2030), (tankard_core::quantity::Money::default(), 0));
    assert_eq!(lots(&farm, &Log::of(&farm), "oil", date(2031, 6, 11)), ["A-1"]);
    assert_eq!(lots(&farm, &Log::of(&farm), "oil", date(2031, 6, 12)), ["A-1", "B-2"]);
    used(&mut farm, date(2031, 6, 13), "3 gal", "");
    // All of A-1 and half a gallon of B-2 are gone; of that a jug is open.
    assert_eq!(lots(&farm, &Log::of(&farm), "oil", date(2031, 6, 20)), ["B-2", "C-3"]);
    // What comes in later is not there yet on a day.
    let now = account(&farm);
    assert!((gallons(now.for_day(date(2031, 6, 13))) - 4.5).abs() < 1e-9);
    assert!((gallons(now.for_day(date(2031, 6, 14))) - 34.5).abs() < 1e-9);
    strike(&mut farm, 1);
    assert!((gallons(account(&farm).on_hand.amount) - 4.5).abs() < 1e-9);
}

#[test]
fn a_record_takes_from_the_lots_it_names() {
    let mut farm = farm(vec![jugs(2, None, "A-1"), jugs(2, None, "B-2"), jugs(1, Some("1 gal"), "C-3")]);
    used(&mut farm, date(2031, 6, 11), "6 gal", "b-2 , A-1");
    let held = account(&farm).on_hand.held;
    let of = |lot: &str| held.iter().find(|held| held.lot == lot).map_or(0.0, |held| gallons(held.amount));
    assert!((of("A-1") - 4.0).abs() < 1e-9 && of("B-2").abs() < 1e-9 && (of("C-3") - 3.5).abs() < 1e-9, "{held:?}");
    used(&mut farm, date(2031, 6, 12), "1 gal", "Z-9");
    used(&mut farm, date(2031, 6, 13), "5 gal", "C-3");
    let said = said(&farm);
    assert!(said[0].1.contains("\"Record 2\" of 12 June 2031 takes from lot Z-9"), "{said:?}");
    // C-3 held 3.5 gal, of which the opened gallon went to the record without a lot that exists.
    assert!(said[1].1.contains("takes 2 gal 2 qt more of lot C-3 than there was"), "{said:?}");
    assert_eq!(said.len(), 2);
    // Jugs without a lot may be of any.
    farm.products["oil"].containers.push(jugs(4, None, ""));
    assert!(findings(&farm, &Accounts::of(&farm), "oil").is_empty());
}

/// 4 gal of a lot of 2.5 gal where there is no other: nothing was taken of another lot, and what is missing is missing of all.
#[test]
fn a_lot_that_is_all_there_is_is_not_held_against_others() {
    let mut farm = farm(vec![jugs(1, None, "A-1")]);
    used(&mut farm, date(2031, 6, 11), "4 gal", "A-1");
    let said = said(&farm);
    assert!(said.iter().all(|(_, text)| !text.contains("more of lot")), "{said:?}");
    assert_eq!(said.len(), 1);
}

#[test]
fn below_zero_is_said_and_nothing_is_negative() {
    let mut farm = farm(vec![jugs(2, None, "")]);
    used(&mut farm, date(2031, 6, 11), "4 gal", "");
    used(&mut farm, date(2031, 6, 12), "4 gal", "");
    let now = account(&farm);
    assert!(gallons(now.on_hand.amount).abs() < 1e-9 && (gallons(now.balance) + 3.0).abs() < 1e-9);
    let found = findings(&farm, &Accounts::of(&farm), "oil");
    assert_eq!(found[0].level, Level::Check);
    assert_eq!(
        found[0].text,
        "Oil (demo): records use 3 gal more than was counted and bought: a purchase or a count is missing; the record \
         \"Record 2\" of 12 June 2031 is the first"
    );
    // What comes in later pays it back.
    moved(&mut farm, date(2031, 6, 13), bought("2.5 gal", 2, "", ""));
    let now = account(&farm);
    assert!((gallons(now.on_hand.amount) - 2.0).abs() < 1e-9 && (gallons(now.balance) - 2.0).abs() < 1e-9);
    assert!(said(&farm)[0].1.contains("up to 3 gal more than was counted and bought by then"));
}

#[test]
fn empties_add_up_and_are_given_back() {
    let mut farm = farm(vec![jugs(8, None, "")]);
    used(&mut farm, date(2031, 6, 11), "15 gal", "");
    let back = |count| Moved::Returned {
        kind: ContainerKind::Jug,
        size: typed("10 qt"),
        count,
        to: "dealer".to_owned(),
        rinsed: true,
    };
    // 10 quarts are 2.5 gallons.
    moved(&mut farm, date(2031, 6, 12), back(4));
    assert_eq!(account(&farm).empties[0].count, 2);
    moved(&mut farm, date(2031, 6, 13), back(3));
    assert!(account(&farm).empties.is_empty());
    assert!(said(&farm)[0].0 == Level::Note && said(&farm)[0].1.contains("1 more empty jug of 10 qt"));
    // What is lent goes with its jug.
    moved(&mut farm, date(2031, 6, 14), Moved::Out { amount: typed("2.5 gal"), lot: String::new() });
    assert!(account(&farm).empties.is_empty() && (gallons(account(&farm).on_hand.amount) - 2.5).abs() < 1e-9);
}

#[test]
fn units_are_mixed_only_with_a_density() {
    let mut farm = farm(vec![jugs(2, None, "")]);
    moved(&mut farm, date(2031, 6, 11), bought("20 lb", 2, "", "3 / lb"));
    assert_eq!(account(&farm).on_hand.amount, None);
    assert!(said(&farm)[0].0 == Level::Check && said(&farm)[0].1.contains("2 jugs of 20 lb, a weight of a liquid"));
    farm.products["oil"].density = Some(typed("8 lb/gal"));
    // By hand: 5 gal and 40 lb ÷ 8 lb/gal.
    assert!((gallons(account(&farm).on_hand.amount) - 10.0).abs() < 1e-6);
    assert!(said(&farm).is_empty());
    assert_eq!(spent(&farm, Some("oil"), 2031).0.show(), "120.00");
}

fn new_count(day: Date, after: bool, containers: Vec<Container>, reason: &str) -> Count {
    Count { date: day, after, containers, empties: Vec::new(), by: "A. Demo".to_owned(), reason: reason.to_owned() }
}

#[test]
fn a_count_corrects_and_asks_why() {
    let mut farm = farm(vec![
        jugs(4, None, "A-1"),
        container(ContainerKind::Drum, "30 gal", 0, None, ""),
        container(ContainerKind::Jug, "1 gal", 0, None, ""),
        container(ContainerKind::Drum, "2.5 gal", 0, None, ""),
    ]);
    used(&mut farm, date(2031, 6, 11), "3 gal", "");
    let before = farm.clone();
    let less = new_count(date(2031, 6, 12), true, vec![jugs(2, Some("1 gal"), "A-1")], "");
    let difference =
        less.against(&farm.products["oil"], reckoned(&farm, "oil", less.date, less.after).unwrap().balance).unwrap();
    assert!((gallons(difference.reckoned) - 7.0).abs() < 1e-9 && (gallons(difference.differs) + 1.0).abs() < 1e-9);
    assert!(count(&mut farm, "oil", less).unwrap_err().contains("say why"));
    assert_eq!(farm, before);
    let less = new_count(date(2031, 6, 12), true, vec![jugs(2, Some("1 gal"), "A-1")], "a jug leaked");
    count(&mut farm, "oil", less).unwrap();
    let product = &farm.products["oil"];
    assert_eq!((product.counted, product.counted_after), (Some(date(2031, 6, 12)), true));
    // The other sizes stay on the list of what it is sold in.
    assert_eq!(product.containers.len(), 4);
    assert!((gallons(account(&farm).on_hand.amount) - 6.0).abs() < 1e-9);
    let lines = ledger(&farm, &Log::of(&farm), "oil");
    let last = lines.last().unwrap();
    assert!(matches!(last.kind, Kind::Counted { holds: true, .. }) && last.note == "a jug leaked");
    // What was before the first count is not known, since the farm kept no word of it.
    assert_eq!(last.change, None);
    // The same count again needs no reason, an earlier one cannot hold.
    let again = new_count(date(2031, 6, 12), true, farm.products["oil"].containers.clone(), "");
    count(&mut farm, "oil", again).unwrap();
    let early = new_count(date(2031, 6, 12), false, Vec::new(), "");
    assert!(count(&mut farm, "oil", early).unwrap_err().contains("which is later"));
    // A third count goes from the second on.
    used(&mut farm, date(2031, 6, 13), "1 gal", "");
    count(&mut farm, "oil", new_count(date(2031, 6, 14), false, vec![jugs(2, None, "A-1")], "")).unwrap();
    let changes: Vec<Option<f64>> = ledger(&farm, &Log::of(&farm), "oil")
        .iter()
        .map(|entry| entry.change.map(|change| gallons(Some(change))))
        .collect();
    assert!(changes.last().unwrap().unwrap().abs() < 1e-8, "{changes:?}");
}

#[test]
fn empties_are_counted_too() {
    let mut farm = farm(vec![jugs(4, None, "")]);
    used(&mut farm, date(2031, 6, 11), "5 gal", "");
    let mut taken = new_count(date(2031, 6, 12), true, vec![jugs(2, None, "")], "");
    taken.empties = account(&farm).empties;
    count(&mut farm, "oil", taken).unwrap();
    used(&mut farm, date(2031, 6, 13), "2.5 gal", "");
    assert_eq!(account(&farm).empties[0].count, 3);
}

/// A pass of 10 gal of oil on a day.
fn with_pass(farm: &mut Farm, id: &str, day: Date) {
    farm.fields.insert("home".to_owned(), Field::new("Home", typed("80 ac")));
    farm.waters.insert("well".to_owned(), Water { name: "Well".to_owned(), ..Water::default() });
    farm.rigs.insert("rig".to_owned(), Rig::new("Rig", typed("1000 gal")));
    let mut pass = Pass::new(id, day);
    pass.fields = vec!["home".to_owned()];
    "well".clone_into(&mut pass.water);
    "rig".clone_into(&mut pass.rig);
    pass.carrier = Some(typed("10 gal/ac"));
    pass.mix = vec![Line::new("oil", typed("1 pt/ac"))];
    farm.passes.insert(id.to_owned(), pass);
}

fn stops(farm: &Farm, pass: &str) -> Vec<String> {
    let found = plan(farm, pass).unwrap().findings;
    found.into_iter().filter(|finding| finding.text.contains("this pass needs")).map(|finding| finding.text).collect()
}

#[test]
fn plans_read_the_account_and_nothing_is_taken_twice() {
    let mut farm = farm(vec![jugs(8, None, "")]);
    with_pass(&mut farm, "first", date(2031, 6, 12));
    with_pass(&mut farm, "later", date(2031, 6, 14));
    assert!(stops(&farm, "first").is_empty() && stops(&farm, "later").is_empty());
    // The first is recorded: its 10 gal are used, and it is no need any more.
    used(&mut farm, date(2031, 6, 12), "10 gal", "");
    farm.records["r0"].pass = Some("first".into());
    farm.records["r0"].fields.insert("home".to_owned(), RecordField::new("Home", typed("80 ac")));
    assert!(stops(&farm, "later").is_empty());
    let need = &needs::from_day(&farm, date(2031, 6, 1)).products[0];
    assert_eq!(need.by_pass.len(), 1);
    assert!((gallons(need.on_hand.amount) - 10.0).abs() < 1e-9 && gallons(need.left).abs() < 1e-9);
    used(&mut farm, date(2031, 6, 13), "1 gal", "");
    assert_eq!(stops(&farm, "later"), ["Oil (demo): this pass needs 10 gal; 9 gal are on hand"]);
    // What is bought for a later day does not help, and is told.
    moved(&mut farm, date(2031, 6, 20), bought("2.5 gal", 2, "", ""));
    assert_eq!(
        stops(&farm, "later"),
        ["Oil (demo): this pass needs 10 gal; 9 gal are on hand; 5 gal come in on 20 June 2031 or later"]
    );
    let need = &needs::from_day(&farm, date(2031, 6, 1)).products[0];
    assert!((gallons(need.short) - 1.0).abs() < 1e-9);
    farm.passes["later"].date = date(2031, 6, 20);
    assert!(stops(&farm, "later").is_empty());
    // More than there was: the plan says what is missing.
    farm.movements.clear();
    used(&mut farm, date(2031, 6, 14), "10 gal", "");
    let found = plan(&farm, "later").unwrap().findings;
    assert!(found.iter().any(|finding| finding.text.contains("a purchase or a count is missing")), "{found:?}");
}

#[test]
fn load_sizes_take_the_opened_jug_of_the_account() {
    let mut farm = farm(vec![jugs(3, Some("1 gal 2 qt"), "A-1"), jugs(3, None, "B-2")]);
    with_pass(&mut farm, "pass", date(2031, 6, 14));
    farm.passes["pass"].split = tankard_core::farm::LoadSplit::ByAims;
    farm.aims = vec![tankard_core::farm::Aim::Opened];
    let opened = |farm: &Farm| plan(farm, "pass").unwrap().sizing.unwrap().stretches[0].chosen.figures.opened;
    // By hand: 10 gal less the 1.5 gal of the opened jug are 8.5 gal, so four jugs are opened.
    assert_eq!(opened(&farm), 4);
    // A record opens one of the other lot: 1.5 gal more are open, and three jugs hold the 7 gal that are left.
    used(&mut farm, date(2031, 6, 11), "1 gal", "B-2");
    assert_eq!(opened(&farm), 3);
    // It empties what was open: 1 gal is taken of a full one, and 1.5 gal are open again.
    farm.records.clear();
    used(&mut farm, date(2031, 6, 11), "2 gal 2 qt", "");
    assert_eq!(opened(&farm), 4);
    // What stands opened of another kind or size is not what is opened here: 8.5 gal take four jugs whatever a drum and a can hold.
    farm.records.clear();
    farm.products["oil"].containers.extend([
        container(ContainerKind::Drum, "2.5 gal", 0, Some("1 gal"), ""),
        container(ContainerKind::Jug, "1 gal", 0, Some("2 qt"), ""),
    ]);
    assert_eq!(opened(&farm), 4);
}

#[derive(Deserialize)]
struct Case {
    liquid: bool,
    density: Option<String>,
    counted: Date,
    after: bool,
    containers: Vec<CaseContainer>,
    movements: Vec<CaseMovement>,
    records: Vec<CaseRecord>,
    expected: Expected,
}

#[derive(Deserialize)]
struct CaseContainer {
    kind: ContainerKind,
    size: String,
    full: u32,
    opened: Option<String>,
    lot: String,
}

#[derive(Deserialize)]
struct CaseMovement {
    what: String,
    date: Date,
    kind: ContainerKind,
    size: String,
    count: u32,
    amount: String,
    lot: String,
}

#[derive(Deserialize)]
struct CaseRecord {
    date: Date,
    start: Option<Time>,
    amount: String,
    lot: String,
}

#[derive(Deserialize)]
struct Expected {
    known: bool,
    counted: f64,
    came: f64,
    used: f64,
    went: f64,
    balance: f64,
    on_hand: f64,
    owed: f64,
    most: f64,
    first: Option<(Date, Option<usize>)>,
    held: Vec<(String, String, String, u32, Vec<f64>)>,
    empties: Vec<(String, String, u32)>,
    too_many_back: u32,
    lots_that_do_not_exist: usize,
    balances: Vec<Option<f64>>,
}

fn farm_of(case: &Case) -> Farm {
    let mut farm = farm(Vec::new());
    let product = &mut farm.products["oil"];
    product.formulation = if case.liquid { Formulation::EC } else { Formulation::SG };
    product.density = case.density.as_deref().map(typed);
    (product.counted, product.counted_after) = (Some(case.counted), case.after);
    product.containers = case
        .containers
        .iter()
        .map(|row| container(row.kind, &row.size, row.full, row.opened.as_deref(), &row.lot))
        .collect();
    for movement in &case.movements {
        let (amount, lot) = (typed(&movement.amount), movement.lot.clone());
        let (kind, size, count) = (movement.kind, typed(&movement.size), movement.count);
        let what = match movement.what.as_str() {
            "Bought" => Moved::Bought { kind, size, count, lot, price: None, from: String::new() },
            "In" => Moved::In { amount, lot },
            "Out" => Moved::Out { amount, lot },
            _ => Moved::Returned { kind, size, count, to: String::new(), rinsed: false },
        };
        moved(&mut farm, movement.date, what);
    }
    for (at, record) in case.records.iter().enumerate() {
        used(&mut farm, record.date, &record.amount, &record.lot);
        farm.records[at].start = record.start;
    }
    farm
}

/// `tests/reference/accounts.json` by `tests/scripts/accounts.py`, which keeps each container by itself in exact fractions.
#[test]
fn an_independent_reckoning_comes_to_the_same() {
    let text = include_str!("../reference/accounts.json");
    let cases: Vec<Case> = serde_json::from_str(text).unwrap();
    assert!(cases.len() >= 100);
    for (at, case) in cases.iter().enumerate() {
        let farm = farm_of(case);
        let (now, want) = (account(&farm), &case.expected);
        let scale = want.counted + want.came + want.used + want.went;
        let near = |found: Amount, want: f64, what: &str| {
            assert!(close(plain(found), want, scale), "case {at}, {what}: {} and not {want}", plain(found));
        };
        near(now.came, want.came, "came in");
        near(now.used, want.used, "used");
        near(now.went, want.went, "went out");
        assert_eq!(now.on_hand.amount.is_some(), want.known, "case {at}");
        if let (Some(balance), Some(on_hand)) = (now.balance, now.on_hand.amount) {
            near(balance, want.balance, "balance");
            near(on_hand, want.on_hand, "on hand");
        }
        let below = now.doubts.iter().find_map(|doubt| match doubt {
            Doubt::Below { most, now, date, record } => Some((*most, *now, *date, record.clone())),
            _ => None,
        });
        assert_eq!(below.is_some(), want.first.is_some(), "case {at}");
        if let (Some((most, owed, date, record)), Some((day, place))) = (below, want.first) {
            near(most, want.most, "most missing");
            near(owed, want.owed, "missing now");
            assert_eq!((date, record), (day, place.map(|place| format!("r{place}"))), "case {at}");
        }
        let mut held: Vec<_> = now
            .on_hand
            .held
            .iter()
            .filter(|held| held.amount.is_some())
            .map(|held| {
                let (kind, size) = held
                    .container
                    .as_ref()
                    .map_or_else(Default::default, |(kind, size)| (format!("{kind:?}"), size.text().to_owned()));
                let mut opened: Vec<f64> = held.opened.iter().map(|rest| plain(*rest)).collect();
                opened.sort_by(f64::total_cmp);
                (kind, size, held.lot.clone(), held.full, opened)
            })
            .collect();
        held.sort_by(|a, b| (&a.0, &a.1, &a.2).cmp(&(&b.0, &b.1, &b.2)));
        assert_eq!(held.len(), want.held.len(), "case {at}: {held:?} and not {:?}", want.held);
        for (found, want) in held.iter().zip(&want.held) {
            assert_eq!((&found.0, &found.1, &found.2, found.3), (&want.0, &want.1, &want.2, want.3), "case {at}");
            assert_eq!(found.4.len(), want.4.len(), "case {at}");
            assert!(found.4.iter().zip(&want.4).all(|(a, b)| close(*a, *b, scale)), "case {at}: {found:?}, {want:?}");
        }
        let mut empties: Vec<(String, String, u32)> =
            now.empties.iter().map(|one| (format!("{:?}", one.kind), one.size.text().to_owned(), one.count)).collect();
        empties.sort();
        assert_eq!(empties, want.empties, "case {at}");
        let many =
            now.doubts.iter().map(|doubt| if let Doubt::TooManyBack { empties } = doubt { empties.count } else { 0 });
        assert_eq!(many.sum::<u32>(), want.too_many_back, "case {at}");
        let no_lot = now.doubts.iter().filter(|doubt| matches!(doubt, Doubt::NoLot { .. })).count();
        assert_eq!(no_lot, want.lots_that_do_not_exist, "case {at}");
        let lines = ledger(&farm, &Log::of(&farm), "oil");
        let from = lines.iter().position(|entry| matches!(entry.kind, Kind::Counted { holds: true, .. })).unwrap();
        let balances: Vec<Option<f64>> = lines[from + 1..].iter().map(|entry| entry.balance.map(plain)).collect();
        assert_eq!(balances.len(), want.balances.len(), "case {at}");
        for (found, want) in balances.iter().zip(&want.balances) {
            assert_eq!(found.is_some(), want.is_some(), "case {at}");
            assert!(found.zip(*want).is_none_or(|(a, b)| close(a, b, scale)), "case {at}: {found:?} and not {want:?}");
        }
    }
}

/// Something that happens: a day of June, what, millilitres, how many, which lot.
type Event = (i8, u8, u32, u32, u8);

const LOTS: [&str; 3] = ["", "A-1", "B-2"];

fn build(rows: &[(u32, u32, u32, u8)], counted: (i8, bool), events: &[Event]) -> Farm {
    let mut farm = farm(Vec::new());
    let product = &mut farm.products["oil"];
    (product.counted, product.counted_after) = (Some(date(2031, 6, counted.0)), counted.1);
    product.containers = rows
        .iter()
        .map(|(size, full, opened, lot)| {
            let opened = format!("{opened} mL");
            container(ContainerKind::Jug, &format!("{size} mL"), *full, Some(&opened), LOTS[usize::from(*lot)])
        })
        .collect();
    for (day, what, amount, count, lot) in events {
        let (day, amount) = (date(2031, 6, *day), format!("{amount} mL"));
        let lot = LOTS[usize::from(*lot)].to_owned();
        match what {
            0 => moved(&mut farm, day, bought(&amount, *count, &lot, "")),
            1 => moved(&mut farm, day, Moved::In { amount: typed(&amount), lot }),
            2 => moved(&mut farm, day, Moved::Out { amount: typed(&amount), lot }),
            _ => used(&mut farm, day, &amount, &lot),
        }
    }
    farm
}

fn rows() -> impl Strategy<Value = Vec<(u32, u32, u32, u8)>> {
    prop::collection::vec((1_u32..20_000, 0_u32..5, 0_u32..5000, 0_u8..3), 0..4)
}

fn events() -> impl Strategy<Value = Vec<Event>> {
    prop::collection::vec((1_i8..28, 0_u8..6, 0_u32..30_000, 1_u32..5, 0_u8..3), 0..24)
}

proptest! {
    #![proptest_config(cases(300))]

    #[test]
    fn the_balance_is_the_count_and_in_less_out(rows in rows(), day in 1_i8..28, after: bool, events in events()) {
        let farm = build(&rows, (day, after), &events);
        let now = account(&farm);
        // Whole millilitres, so that the sums are exact.
        let counted: i64 = rows.iter().map(|(size, full, opened, _)| i64::from(size * full + opened)).sum();
        let is_in = |event: &&Event| if after { event.0 > day } else { event.0 >= day };
        let change = |(_, what, amount, count, _): &Event| match what {
            0 => i64::from(*amount) * i64::from(*count),
            1 => i64::from(*amount),
            _ => -i64::from(*amount),
        };
        let sum: i64 = counted + events.iter().filter(is_in).map(change).sum::<i64>();
        let scale: i64 = counted + events.iter().map(|event| change(event).abs()).sum::<i64>();
        #[allow(clippy::cast_precision_loss)] // Far below 2^53.
        let (sum, scale) = (sum as f64 / 1000.0, scale as f64 / 1000.0);
        let balance = plain(now.balance.unwrap());
        prop_assert!(close(balance, sum, scale), "{balance} and not {sum}");
        // What containers hold is the balance, or nothing where it is below zero.
        let held: f64 = now.on_hand.held.iter().map(|held| plain(held.amount.unwrap())).sum();
        prop_assert!(close(held, balance.max(0.0), scale), "{held} in containers, {balance}");
        prop_assert!(close(held, plain(now.on_hand.amount.unwrap()), scale));
        for held in &now.on_hand.held {
            prop_assert!(held.opened.iter().all(|rest| plain(*rest) > 0.0));
        }
        let owed = now.doubts.iter().find_map(|doubt| match doubt { Doubt::Below { now, .. } => Some(plain(*now)), _ => None });
        prop_assert!(close(owed.unwrap_or(0.0), (-balance).max(0.0), scale));
        // The lines of the account add up, each to the next, and come to the same.
        let lines = ledger(&farm, &Log::of(&farm), "oil");
        prop_assert!(lines.windows(2).all(|pair| pair[0].date <= pair[1].date));
        let from = lines.iter().position(|line| matches!(line.kind, Kind::Counted { .. })).unwrap();
        let mut running = plain(lines[from].balance.unwrap());
        for line in &lines[from + 1..] {
            running += plain(line.change.unwrap());
            prop_assert!(close(running, plain(line.balance.unwrap()), scale));
        }
        prop_assert!(close(running, balance, scale));
    }

    #[test]
    fn only_the_order_of_time_counts(rows in rows(), events in events(), by in 0_usize..24) {
        // One thing a day, so that the order of the list cannot matter.
        let mut events = events;
        for (at, event) in events.iter_mut().enumerate() {
            event.0 = i8::try_from(at).unwrap() + 3;
        }
        let told = account(&build(&rows, (2, false), &events));
        let by = by.min(events.len());
        events.rotate_left(by);
        let other = account(&build(&rows, (2, false), &events));
        prop_assert_eq!((told.on_hand, told.balance, told.empties), (other.on_hand, other.balance, other.empties));
    }

    #[test]
    fn on_one_day_what_comes_in_comes_first(rows in rows(), amounts in prop::collection::vec(0_u32..30_000, 1..6)) {
        // The same amounts are bought and used on one day, records written down first: nothing is ever missing.
        let mut events: Vec<Event> = amounts.iter().map(|amount| (12, 3, *amount, 1, 0)).collect();
        events.extend(amounts.iter().map(|amount| (12, 1, *amount, 1, 0)));
        let farm = build(&rows, (12, false), &events);
        prop_assert!(account(&farm).doubts.is_empty(), "{:?}", account(&farm).doubts);
        let parts: Vec<bool> = ledger(&farm, &Log::of(&farm), "oil").iter().map(|line| matches!(line.kind, Kind::Record { .. })).collect();
        prop_assert!(parts.is_sorted(), "records after what came in");
    }

    #[test]
    fn a_named_lot_is_taken_from_alone_while_it_lasts(rows in rows(), events in events(), share in 0.0_f64..1.0) {
        let mut farm = build(&rows, (1, false), &events);
        let before = account(&farm);
        let of = |account: &Account, own: bool| -> f64 {
            let held = account.on_hand.held.iter().filter(|held| (held.lot == "A-1") == own);
            held.map(|held| plain(held.amount.unwrap())).sum()
        };
        let there = of(&before, true);
        used(&mut farm, date(2031, 6, 29), &format!("{:.6} mL", there * 1000.0 * share), "A-1");
        let after = account(&farm);
        let scale = of(&before, false) + there;
        prop_assert!(close(of(&after, false), of(&before, false), scale), "others are left alone");
        prop_assert!((of(&after, true) - there * (1.0 - share)).abs() <= 1e-8 * scale.max(1.0), "{} of {there}", of(&after, true));
    }

    #[test]
    fn a_count_of_what_is_there_changes_nothing(rows in rows(), events in events()) {
        let mut farm = build(&rows, (1, false), &events);
        let before = account(&farm);
        let containers: Vec<Container> = before.on_hand.held.iter().flat_map(|held| {
            let (kind, size) = held.container.clone().unwrap_or((ContainerKind::Jug, typed("1 L")));
            let exact = |rest: &Amount| Some(typed(&format!("{:.12} L", plain(*rest))));
            let lot = held.lot.clone();
            let full = Container { kind, size: size.clone(), full: held.full, opened: None, lot: lot.clone() };
            let opened: Vec<Container> = held.opened.iter().map(|rest| Container { kind, size: size.clone(), full: 0, opened: exact(rest), lot: lot.clone() }).collect();
            std::iter::once(full).chain(opened)
        }).collect();
        let reason = if plain(before.balance.unwrap()) < 0.0 { "was below zero" } else { "" };
        let taken = new_count(date(2031, 6, 29), true, containers, reason);
        prop_assert!(count(&mut farm, "oil", taken).is_ok());
        let after = account(&farm);
        let scale = plain(before.came) + plain(before.used) + 1.0;
        prop_assert!(close(plain(after.on_hand.amount.unwrap()), plain(before.on_hand.amount.unwrap()), scale));
        prop_assert!(after.doubts.is_empty());
    }
}

/// By hand: 10 gal on the ground in 800 gal of spray, 80 gal left over of the same strength: 11 gal left the jugs.
#[test]
fn what_was_left_over_left_the_containers_too() {
    let mut farm = farm(vec![jugs(20, None, "")]);
    let left = |record: &mut Record, volume: Option<&str>| {
        record.volume = volume.map(typed);
        record.left = Some(Left { volume: typed("80 gal"), went: "".into() });
    };
    let gallons =
        |farm: &Farm| Accounts::of(farm).get("oil").unwrap().used.ratio(typed::<Amount>("1 gal").value()).unwrap();
    used(&mut farm, date(2031, 6, 12), "10 gal", "");
    left(&mut farm.records["r0"], Some("800 gal"));
    assert!(close(gallons(&farm), 11.0, 1.0));
    let entry = |farm: &Farm| {
        ledger(farm, &Log::of(farm), "oil").into_iter().find(|entry| matches!(entry.kind, Kind::Record { .. })).unwrap()
    };
    assert_eq!(entry(&farm).note, "with 1 gal in 80 gal of spray left over");
    assert!(close(entry(&farm).change.unwrap().ratio(typed::<Amount>("1 gal").value()).unwrap(), -11.0, 1.0));
    assert!(Accounts::of(&farm).get("oil").unwrap().doubts.is_empty());
    // Of nothing used nothing can have been left.
    farm.records["r0"].lines[0].amount = typed("0 gal");
    left(&mut farm.records["r0"], None);
    assert!(Accounts::of(&farm).get("oil").unwrap().doubts.is_empty());
    farm.records["r0"].lines[0].amount = typed("10 gal");
    // Without the spray on the ground it cannot be told, and is said.
    left(&mut farm.records["r0"], None);
    assert!(close(gallons(&farm), 10.0, 1.0));
    let note = |farm: &Farm, text: &str| {
        let told = findings(farm, &Accounts::of(farm), "oil");
        assert!(told.iter().any(|told| told.level == Level::Note && told.text.contains(text)), "{told:?}");
    };
    note(&farm, "80 gal were left over, but not how much spray went on the ground");
    // A pass that begins with half of it holds that in its own lines once it is recorded: 10 + 0.5, and the 3 gal of its record.
    left(&mut farm.records["r0"], Some("800 gal"));
    farm.records["r0"].pass = Some("giver".into());
    farm.passes.insert("giver".to_owned(), Pass::new("Giver", date(2031, 6, 12)));
    let mut taker = Pass::new("Taker", date(2031, 6, 13));
    taker.in_tank = Some(InTank { volume: typed("40 gal"), from: "giver".to_owned() });
    farm.passes.insert("taker".to_owned(), taker);
    assert!(close(gallons(&farm), 11.0, 1.0), "what is not recorded yet is in no other lines");
    used(&mut farm, date(2031, 6, 13), "3 gal", "");
    farm.records["r1"].pass = Some("taker".into());
    assert!(close(gallons(&farm), 13.5, 1.0));
    for all in ["80 gal", "100 gal"] {
        farm.passes["taker"].in_tank.as_mut().unwrap().volume = typed(all);
        assert!(close(gallons(&farm), 13.0, 1.0), "{all}");
    }
    // A later record of the same pass is taken to hold it.
    farm.passes.shift_remove("taker");
    farm.records["r1"].pass = Some("giver".into());
    assert!(close(gallons(&farm), 13.0, 1.0));
    note(&farm, "gone out with a later record of the pass");
}

#[test]
fn a_purchase_on_the_day_of_the_count_is_asked_about() {
    let mut farm = farm(vec![jugs(2, None, "")]);
    let doubts = |farm: &Farm| Accounts::of(farm).get("oil").unwrap().doubts.clone();
    moved(&mut farm, date(2031, 6, 11), bought("2.5 gal", 4, "", ""));
    assert_eq!(doubts(&farm), []);
    moved(&mut farm, date(2031, 6, 10), bought("2.5 gal", 2, "", ""));
    assert_eq!(
        doubts(&farm),
        [Doubt::OnDayOfCount { amount: "2 jugs of 2.5 gal".to_owned(), date: date(2031, 6, 10) }]
    );
    let told = findings(&farm, &Accounts::of(&farm), "oil");
    assert!(told[0].level == Level::Note && told[0].text.contains("were they counted already?"), "{told:?}");
    // Counted in the evening, what came in that day is counted with it.
    farm.products["oil"].counted_after = true;
    assert_eq!(doubts(&farm), []);
}

#[test]
fn work_for_a_customer_takes_from_the_shed_and_says_so() {
    let mut farm = farm(vec![jugs(4, None, "")]);
    used(&mut farm, date(2031, 6, 12), "3 gal", "");
    farm.records["r0"].customer = Some(Box::new(Customer { name: "C. Demo".into(), ..Customer::default() }));
    let entry = ledger(&farm, &Log::of(&farm), "oil").pop().unwrap();
    assert_eq!(entry.note, "for C. Demo, from this shed");
    let told = findings(&farm, &Accounts::of(&farm), "oil");
    assert!(
        told[0].level == Level::Note && told[0].text.contains("1 record took 3 gal from this shed for customers"),
        "{told:?}"
    );
}
