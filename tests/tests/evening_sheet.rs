//! The sheet of a day over the demo farm: what the crew reads the evening before.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use jiff::civil::{Date, date};
use tankard::demo;
use tankard_core::day::BlockKind;
use tankard_core::day::sheet::{SheetContent, SheetLine, sheet};
use tankard_core::day::{Slot, plan_day};
use tankard_core::farm::label::Says;
use tankard_core::farm::{Day, Farm, InTank, Line, Record, RecordField, RecordLine, Statement};
use tankard_core::plan::{Plan, plan};
use tankard_core::quantity::{Area, AsTyped, Duration, Quantity};
use tankard_core::stock::needs::next_day;
use tankard_core::weather::{Span, Verdict};

const DAY: Date = date(2031, 6, 12);
const CORN: &str = "2031-06-12-corn-second-post";
const BEANS: &str = "2031-06-12-volunteer-corn";
const WHEAT: &str = "2031-06-13-wheat-head-timing";

/// The demo farm with the second pass of the day on one field, so that no Stop stands.
fn farm() -> Farm {
    let mut farm = demo::farm().unwrap();
    farm.passes[BEANS].fields.truncate(1);
    farm
}

fn plans(farm: &Farm, day: Date) -> Vec<Plan> {
    let of_day = farm.passes.iter().filter(|(_, pass)| pass.date == day);
    of_day.map(|(id, _)| plan(farm, id).unwrap()).collect()
}

/// A slot from one time of the first day to another.
fn slot(pass: &str, from: (i8, i8), to: (i8, i8, i8)) -> Slot {
    let span = Some(Span { from: DAY.at(from.0, from.1, 0, 0), to: DAY.at(to.0, to.1, to.2, 0) });
    Slot { span, ..Slot::new(&pass.to_owned(), &"big-boom".to_owned()) }
}

fn sheet_of(farm: &Farm, day: Date, slots: &[Slot]) -> SheetContent {
    let plans = plans(farm, day);
    sheet(farm, day, &plans.iter().collect::<Vec<_>>(), &slots.iter().collect::<Vec<_>>())
}

/// The second pass comes first and the rig is cleaned out between the two.
fn usual_slots() -> Vec<Slot> {
    let cleaned = Some(Duration::from_hours(0.75));
    let road = Some(Duration::from_hours(0.2));
    vec![
        slot(BEANS, (7, 0), (9, 30, 10)),
        Slot { clean_out: cleaned, travel: road, ..slot(CORN, (11, 0), (15, 45, 0)) },
    ]
}

fn line<'a>(lines: &'a [SheetLine], what: &str) -> &'a SheetLine {
    lines.iter().find(|line| line.what == what).unwrap_or_else(|| panic!("{what} not in {lines:#?}"))
}

#[test]
fn the_passes_stand_in_the_order_of_their_slots_with_all_that_the_crew_asks() {
    let mut farm = farm();
    farm.passes[CORN].operator = "A. Operator".into();
    farm.days.insert(DAY.to_string(), Day { note: "The fuel truck comes at six.".into(), ..Day::default() });
    let sheet = sheet_of(&farm, DAY, &usual_slots());
    assert_eq!((sheet.date.as_str(), sheet.farm.as_str()), ("Thursday 12 June 2031", "Larkspur Bend (demo)"));
    assert_eq!(sheet.note, "The fuel truck comes at six.");
    assert!(sheet.day[0].starts_with("Sun up 05:"), "{:?}", sheet.day);
    assert_eq!(sheet.rigs.len(), 1);
    let [beans, corn] = sheet.rigs[0].passes.as_slice() else { panic!("{:?}", sheet.rigs) };
    // A finish with seconds ends with the minute that holds it.
    assert_eq!(
        (beans.number, beans.name.as_str(), beans.time.as_str()),
        (1, "Volunteer corn in beans", "07:00 to 09:31")
    );
    assert_eq!((corn.number, corn.time.as_str(), corn.operator.as_str()), (2, "11:00 to 15:45", "A. Operator"));
    assert_eq!(beans.window, "07:00 to 13:00");
    assert!(corn.before[0].starts_with("Clean out the rig, 45 min"), "{:?}", corn.before);
    assert_eq!((corn.before[1].as_str(), beans.before.len()), ("Road, 12 min", 0));
    let plans = plans(&farm, DAY);
    assert_eq!(corn.loads, format!("{} loads", plans[0].loads.len()));
    assert_eq!(
        corn.fields.iter().map(|field| field.area.as_str()).collect::<Vec<_>>(),
        ["74.6 ac", "96 ac", "55.2 ac"]
    );
    // 225.8 ac at 15 gal/ac (arithmetic).
    assert_eq!((corn.spray.as_str(), corn.rate.as_str()), ("3,387 gal", "15 gal/ac"));
    assert!(corn.limits.contains("wind ") && !corn.limits.contains("(demo)"), "{}", corn.limits);
    assert!(corn.no_cards.is_empty() && sheet.not_counted.is_empty(), "{:?} {:?}", corn.no_cards, beans);
    assert_eq!(sheet.emergency, farm.emergency);
    assert!(sheet.cautions.iter().any(|caution| caution.ends_with("A forecast is no measurement.")));
}

/// Holds the fault of a truck that leaves with one pass's products: amounts are those measured out, over all loads of the day.
#[test]
fn the_truck_takes_what_all_loads_measure_out() {
    let mut farm = farm();
    for container in &mut farm.products["glyphosate-540"].containers {
        container.lot = "GL-2231".into();
        container.full = container.full.max(1);
    }
    farm.rigs["big-boom"].nurse = Some(AsTyped::parse("3000 gal").unwrap());
    let sheet = sheet_of(&farm, DAY, &usual_slots());
    let plans = plans(&farm, DAY);
    let glyphosate = line(&sheet.products, "Glyphosate 540 SL (demo)");
    // 22 fl oz/ac on 225.8 and 71.5 ac are 51.1 gal; the loads measure to the fluid ounce.
    assert!(glyphosate.amount.starts_with("51 gal"), "{}", glyphosate.amount);
    assert!(glyphosate.detail.ends_with("lot GL-2231"), "{}", glyphosate.detail);
    assert!(glyphosate.detail.contains(" of "), "{}", glyphosate.detail);
    let loads: usize = plans.iter().map(|plan| plan.loads.len()).sum();
    let well = line(&sheet.water, "Yard well");
    // 297.3 ac at 15 gal/ac are 4,460 gal of spray, and the liquids are not water: two fillings of 3,000 gal.
    assert_eq!(
        well.detail,
        format!("for {loads} loads; the nurse tank of Big boom is filled 2 times with up to 3,000 gal")
    );
    assert_eq!(line(&sheet.water, "Clean water for rinsing Big boom").amount, "120 gal");
    farm.rigs["big-boom"].nurse = None;
    let sheet = sheet_of(&farm, DAY, &usual_slots());
    let well = line(&sheet.water, "Yard well");
    assert!(well.detail.ends_with("what the nurse tank of Big boom holds is not typed"), "{}", well.detail);
}

/// Re-entry counts from the finish of each pass; where that is not known, the hours stand and the end does not.
#[test]
fn each_field_says_when_people_may_enter_and_when_it_may_be_harvested() {
    let farm = farm();
    let known = sheet_of(&farm, DAY, &usual_slots());
    let of = |sheet: &SheetContent, name: &str| {
        sheet.fields.iter().find(|field| field.name.contains(name)).cloned().unwrap()
    };
    let (mill, sandhill) = (of(&known, "Mill field"), of(&known, "East sandhill"));
    // 15:45 and 12 hours; the labels of the demo farm say 12 h for mesotrione and 4 h for glyphosate.
    assert_eq!(mill.enter, "Friday 03:45 if on time (12 h, Mesotrione)");
    assert!(sandhill.enter.starts_with("Thursday ") || sandhill.enter.starts_with("Friday "), "{}", sandhill.enter);
    // Sixty days after 12 June is 11 August, fifty are 1 August; what the demo's labels ask of corn.
    assert!(mill.harvest.contains(" days, ") && mill.harvest.contains(" 2031 ("), "{}", mill.harvest);
    assert!(mill.beside.contains("Mill field: farmyard (east, 300 ft)"), "{}", mill.beside);
    let unknown = sheet_of(&farm, DAY, &[]);
    assert_eq!(of(&unknown, "Mill field").enter, "12 h after the last of the spray (Mesotrione)");
    assert_eq!(unknown.rigs[0].passes[0].untimed, "start not typed");
    assert!(unknown.timeline.is_none());

    let mut silent = farm.clone();
    for product in silent.products.values_mut() {
        product.label.clear();
    }
    let sheet = sheet_of(&silent, DAY, &usual_slots());
    assert_eq!(of(&sheet, "Mill field").enter, "see the labels; none is typed");
    for what in ["No re-entry time is typed for ", "No harvest interval is typed for "] {
        assert!(sheet.silent.iter().any(|line| line.starts_with(what)), "{what} not in {:?}", sheet.silent);
    }
    assert!(sheet.wear.iter().any(|line| line.starts_with("No protective equipment is typed for ")));
}

/// What was sprayed on a field before today's pass keeps people and harvest out too: a sheet that told of the pass alone would send
/// them in too early.
#[test]
fn what_was_sprayed_before_keeps_people_and_harvest_out() {
    let mut farm = farm();
    let mill = |farm: &Farm| {
        let sheet = sheet_of(farm, DAY, &usual_slots());
        sheet.fields.iter().find(|field| field.name.contains("Mill field")).cloned().unwrap()
    };
    assert_eq!(mill(&farm).enter, "Friday 03:45 if on time (12 h, Mesotrione)");
    let mut product = farm.products[0].clone();
    "Long 480 SC (demo)".clone_into(&mut product.name);
    product.label =
        vec![Statement::new(Says::ReEntry { hours: 48 }, ""), Statement::new(Says::HarvestInterval { days: 300 }, "")];
    farm.products.insert("long".to_owned(), product);
    let field = farm.passes[CORN].fields.iter().find(|id| farm.fields[*id].name == "Mill field").unwrap().clone();
    // Planned for the day before and not recorded: from the end of that day.
    let mut pass = farm.passes[CORN].clone();
    pass.date = date(2031, 6, 11);
    pass.fields = vec![field.clone()];
    pass.mix = vec![Line { product: "long".to_owned(), ..pass.mix[0].clone() }];
    farm.passes.insert("before".to_owned(), pass);
    assert_eq!(mill(&farm).enter, "Saturday 00:00 (48 h, Long 480 SC (demo) of 11 June 2031)");
    // Recorded: from when it ended, after midnight here.
    let mut record = farm.records[0].clone();
    record.pass = Some("before".into());
    record.date = date(2031, 6, 11);
    (record.start, record.end) = (Some(jiff::civil::time(21, 0, 0, 0)), Some(jiff::civil::time(1, 0, 0, 0)));
    let mut then = record.fields[0].clone();
    then.crop = (&farm.fields[&field].crop).into();
    record.fields = [(field, then)].into_iter().collect();
    record.lines.truncate(1);
    record.lines[0].product = "long".into();
    (record.lines[0].entry, record.lines[0].name) = (None, "Long 480 SC (demo)".into());
    farm.records.insert("before".to_owned(), record);
    let after = mill(&farm);
    assert_eq!(after.enter, "Saturday 01:00 (48 h, Long 480 SC (demo) of 11 June 2031)");
    // 300 days after 11 June 2031, over a leap day.
    assert_eq!(after.harvest, "6 April 2032 (300 days, Long 480 SC (demo) of 11 June 2031)");
    // What is written down in the record holds before the label as it is now.
    farm.records["before"].lines[0].entry = Some(72);
    assert_eq!(mill(&farm).enter, "Sunday 01:00 (72 h, Long 480 SC (demo) of 11 June 2031)");
    // What has run out is not told.
    farm.records["before"].date = date(2031, 6, 1);
    assert_eq!(mill(&farm).enter, "Friday 03:45 if on time (12 h, Mesotrione)");
}

/// A night in which the clock is put on: 23:00 and 12 hours are noon of the next day (arithmetic; the US clock of 9 March 2031).
#[test]
fn re_entry_counts_hours_and_not_the_clock() {
    let mut farm = farm();
    let day = date(2031, 3, 8);
    farm.passes[CORN].date = day;
    let span = Some(Span { from: day.at(20, 0, 0, 0), to: day.at(23, 0, 0, 0) });
    let slots = [Slot { span, ..slot(CORN, (0, 0), (1, 0, 0)) }];
    let sheet = sheet_of(&farm, day, &slots);
    let enter: Vec<&str> = sheet.fields.iter().map(|field| field.enter.as_str()).collect();
    if sheet.rigs[0].passes[0].no_cards.is_empty() {
        assert!(enter.iter().all(|enter| enter.starts_with("Sunday 12:00 if on time (12 h")), "{enter:?}");
    } else {
        panic!("{:?}", sheet.rigs[0].passes[0].no_cards);
    }
}

/// Holds the fault of a time in large print that no limit allows: the demo's forecast has wind at noon.
#[test]
fn a_time_outside_the_limits_says_so() {
    let farm = farm();
    let why = "No other span is long enough";
    let slots = [Slot { why: why.into(), ..slot(BEANS, (12, 30), (15, 0, 0)) }, slot(CORN, (7, 0), (10, 30, 0))];
    let sheet = sheet_of(&farm, DAY, &slots);
    let [beans, corn] = sheet.rigs[0].passes.as_slice() else { panic!("{:?}", sheet.rigs) };
    assert_eq!(beans.doubt, "Not all of this time is inside the limits. No other span is long enough");
    assert_eq!(corn.doubt, "");
}

/// Half-hours of a forecast are held as such, and what the order of the day knows of the night after it is said.
#[test]
fn half_hours_and_the_night_are_held_against_the_time() {
    let mut farm = farm();
    farm.forecast.hours.retain(|hour| hour.at.date() == DAY);
    let mut halves = Vec::new();
    for hour in &farm.forecast.hours {
        let (mut first, mut second) = (hour.clone(), hour.clone());
        second.at = hour.at.checked_add(jiff::Span::new().minutes(30)).unwrap();
        for half in [&mut first, &mut second] {
            half.wind = Some(AsTyped::parse("6 mph").unwrap());
            half.gust = Some(AsTyped::parse("8 mph").unwrap());
        }
        if hour.at.hour() == 8 {
            first.wind = Some(AsTyped::parse("30 mph").unwrap());
        }
        halves.extend([first, second]);
    }
    farm.forecast.hours = halves;
    let mut corn = slot(CORN, (8, 30), (9, 30, 0));
    let doubt = |slot: &Slot| {
        let sheet = sheet_of(&farm, DAY, std::slice::from_ref(slot));
        sheet.rigs[0].passes.iter().find(|pass| pass.pass == CORN).unwrap().doubt.clone()
    };
    assert_eq!(doubt(&corn), "");
    corn.span = Some(Span { from: DAY.at(8, 15, 0, 0), to: DAY.at(9, 30, 0, 0) });
    assert_eq!(doubt(&corn), "Not all of this time is inside the limits");
    let night = DAY.tomorrow().unwrap();
    corn.span = Some(Span { from: night.at(1, 0, 0, 0), to: night.at(2, 0, 0, 0) });
    corn.verdict = Some(Verdict::Doubtful);
    assert_eq!(doubt(&corn), "Not all of this time is inside the limits");
}

/// Spray that goes on: how much is left over, with which pass the next one begins, and that another pass comes between.
#[test]
fn spray_that_goes_on_is_named() {
    let mut farm = farm();
    let mut next = farm.passes[CORN].clone();
    "Corn, third".clone_into(&mut next.name);
    next.in_tank = Some(InTank { volume: AsTyped::parse("40 gal").unwrap(), from: CORN.to_owned() });
    farm.passes.insert("next".to_owned(), next);
    farm.passes[CORN].extra = Some(AsTyped::parse("40 gal").unwrap());
    let of = |farm: &Farm, order: [&str; 3]| {
        let slots = order.map(|id| slot(id, (7, 0), (8, 0, 0)));
        let sheet = sheet_of(farm, DAY, &slots);
        let pass = |id: &str| sheet.rigs[0].passes.iter().find(|pass| pass.pass == id).unwrap().clone();
        (pass(CORN).loads, pass("next").before.join(". "))
    };
    let (loads, before) = of(&farm, [BEANS, CORN, "next"]);
    assert!(loads.ends_with("loads, 40 gal left over"), "{loads}");
    assert_eq!(before, "Begin with the 40 gal in the tank, left by Corn, second post");
    let not_there = "Begin with the 40 gal in the tank, left by Corn, second post; that does not come right before it";
    assert_eq!(of(&farm, [CORN, BEANS, "next"]).1, not_there);
    assert_eq!(of(&farm, ["next", CORN, BEANS]).1, not_there);
}

/// What the rig sprayed on the day before is still in it in the morning, unless the next mix holds the same; of two passes of which
/// it is not known which was the last, both are told.
#[test]
fn the_morning_begins_with_what_was_sprayed_last() {
    let farm = farm();
    let day = date(2031, 6, 13);
    let before = |farm: &Farm| sheet_of(farm, day, &[slot(WHEAT, (8, 0), (9, 0, 0))]).rigs[0].passes[0].before.clone();
    let lines = before(&farm);
    assert_eq!(lines.len(), 2, "{lines:?}");
    let told = "Clean out the rig after Corn, second post of 12 June 2031, where that is not done";
    assert!(lines[0].starts_with(told), "{lines:?}");
    let mut known = farm.clone();
    let mut record = known.records[0].clone();
    record.date = DAY;
    for (id, hour) in [(BEANS, 9), (CORN, 7)] {
        (record.pass, record.start) = (Some(id.into()), Some(jiff::civil::time(hour, 0, 0, 0)));
        record.name = known.passes[id].name.clone().into();
        let sprayed = |line: &Line| {
            RecordLine::new(&line.product, &known.products[&line.product].name, AsTyped::parse("3 gal").unwrap())
        };
        record.lines = known.passes[id].mix.iter().map(sprayed).collect();
        known.records.insert(id.to_owned(), record.clone());
    }
    let lines = before(&known);
    assert!(lines.len() == 1 && lines[0].starts_with("Clean out the rig after Volunteer corn in beans"), "{lines:?}");
    known.passes[WHEAT].mix = known.passes[BEANS].mix.clone();
    assert!(before(&known).is_empty());
}

/// Holds the fault of products for a pass that may not be sprayed on the truck, and of a pass that is quietly missing.
#[test]
fn a_pass_with_a_stop_is_on_the_sheet_and_counts_for_nothing() {
    let mut farm = farm();
    farm.passes[WHEAT].date = DAY;
    let sheet = sheet_of(&farm, DAY, &usual_slots());
    let passes = &sheet.rigs[0].passes;
    let wheat = passes.iter().find(|pass| pass.name == "Wheat, head timing").unwrap();
    assert!(wheat.open.starts_with("1 Stop"), "{}", wheat.open);
    assert_eq!(wheat.no_cards.len(), 1);
    assert_eq!(wheat.number, 3);
    assert_eq!(sheet.not_counted, "Not counted, having no cards: 3 Wheat, head timing.");
    assert!(!sheet.products.iter().any(|line| line.what.contains("rothioconazole")));
    assert!(!sheet.fields.iter().any(|field| field.name.contains("Church corner")));
    assert!(!sheet.water.iter().any(|line| line.what == "Rain tank"));
}

#[test]
fn the_picture_holds_passes_loads_cleaning_and_road_along_the_clock() {
    let farm = farm();
    let sheet = sheet_of(&farm, DAY, &usual_slots());
    let picture = sheet.timeline.unwrap();
    let labels: Vec<&str> = picture.ticks.iter().map(|tick| tick.label.as_str()).collect();
    assert_eq!((labels[0], labels[labels.len() - 1], labels.len()), ("07:00", "16:00", 10));
    for (hour, tick) in (0_u8..).zip(&picture.ticks) {
        assert!((tick.at - f64::from(hour) / 9.0).abs() < 1e-9, "{tick:?}");
    }
    let blocks = &picture.rows[0].blocks;
    let kinds: Vec<BlockKind> = blocks.iter().map(|block| block.kind).collect();
    assert_eq!(kinds, [BlockKind::Pass, BlockKind::CleanOut, BlockKind::Road, BlockKind::Pass]);
    // Nine hours from 07:00: the second pass begins at 11:00, cleaning right after the first.
    assert!((blocks[3].from - 4.0 / 9.0).abs() < 1e-9 && (blocks[1].from - blocks[0].to).abs() < 1e-9);
    assert!(blocks.windows(2).all(|pair| pair[0].to <= pair[1].from + 1e-9));
    let plans = plans(&farm, DAY);
    assert_eq!(blocks[3].loads.len(), plans[0].loads.len() - 1);
    assert!(blocks[3].loads.iter().all(|at| blocks[3].from < *at && *at < blocks[3].to));
    // In hours after 07:00: sprayed to 09:30:10, 45 min of cleaning, 12 min of road, sprayed from 11:00 to 15:45.
    let near = |found: f64, hours: f64, all: f64| {
        assert!((found * all - hours).abs() < 1e-9, "{} h, not {hours}", found * all);
    };
    let done = 2.5 + 10.0 / 3600.0;
    let spans = [(0.0, done), (done, done + 0.75), (done + 0.75, done + 0.95), (4.0, 8.75)];
    for (block, (from, to)) in blocks.iter().zip(spans) {
        near(block.from, from, 9.0);
        near(block.to, to, 9.0);
    }
    // The second load begins after the first is filled and sprayed: its filling and its ground's part of the spraying, of those of all.
    let work = plans[0].work.as_ref().unwrap();
    let ground = |load: usize| plans[0].loads[load].area.to_acres() / plans[0].area.to_acres();
    let takes = |load: usize| work.fills[load].to_hours() + ground(load) * work.spraying.to_hours();
    let all: f64 = (0..plans[0].loads.len()).map(takes).sum();
    near(blocks[3].loads[0], 4.0 + takes(0) / all * 4.75, 9.0);
    // Where nothing is known before it, cleaning and road come right before the pass: 57 min before 11:00, six hours from 10:00.
    let alone = sheet_of(&farm, DAY, &usual_slots()[1..]).timeline.unwrap();
    for (block, (from, to)) in alone.rows[0].blocks.iter().zip([(0.05, 0.8), (0.8, 1.0), (1.0, 5.75)]) {
        near(block.from, from, 6.0);
        near(block.to, to, 6.0);
    }
}

#[test]
fn the_day_is_laid_out_and_the_next_one_found() {
    let farm = farm();
    let of_day = plans(&farm, DAY);
    let slots: Vec<Slot> = plan_day(&farm, DAY, &of_day.iter().collect::<Vec<_>>()).slots().cloned().collect();
    let sheet = sheet_of(&farm, DAY, &slots);
    assert!(sheet.rigs[0].passes.iter().any(|pass| !pass.time.is_empty()), "{:#?}", sheet.rigs);
    assert!(sheet.timeline.is_some());
    // An hour before the one to leave at is of the next day, and says so.
    let mut night = farm.clone();
    let time = |hour| Some(jiff::civil::time(hour, 0, 0, 0));
    night.days.insert(DAY.to_string(), Day { from: time(20), to: time(2), ..Day::default() });
    let lines = sheet_of(&night, DAY, &slots).day;
    assert!(lines.contains(&"Rigs home by 02:00 of the next day".to_owned()), "{lines:?}");
    assert_eq!(next_day(&farm, date(2026, 1, 1)), Some(DAY));
    assert_eq!(next_day(&farm, date(2031, 6, 15)), Some(date(2031, 6, 16)));
    assert_eq!(next_day(&farm, date(2032, 1, 1)), None);

    // What is recorded is neither on the sheet nor a day to come.
    let mut recorded = farm.clone();
    let mut record = recorded.records[0].clone();
    let whole = |farm: &Farm, record: &mut Record, pass: &str| {
        record.pass = Some(pass.into());
        let of = &farm.passes[pass];
        let fields = of.fields.iter().map(|id| (id.clone(), farm.fields[id].sprayable()));
        let area = |area: Area| AsTyped::parse(&area.show(farm.units)).unwrap();
        record.fields =
            fields.map(|(id, ground)| (id.clone(), RecordField::new(&farm.fields[&id].name, area(ground)))).collect();
    };
    whole(&farm, &mut record, BEANS);
    recorded.records.insert("beans".into(), record.clone());
    let sheet = sheet_of(&recorded, DAY, &usual_slots());
    assert_eq!(sheet.rigs[0].passes.len(), 1);
    assert_eq!(sheet.left_out, ["Volunteer corn in beans is recorded as sprayed."]);
    whole(&farm, &mut record, CORN);
    let fields = record.fields.clone();
    // Of corn an acre of each field: it stays on the sheet, which says what of it is left.
    for field in record.fields.values_mut() {
        field.area = AsTyped::parse("1 ac").unwrap();
    }
    recorded.records.insert("corn".into(), record.clone());
    let sheet = sheet_of(&recorded, DAY, &usual_slots());
    assert!(sheet.rigs[0].passes[0].note.starts_with("Partly recorded: "), "{}", sheet.rigs[0].passes[0].note);
    record.fields = fields;
    recorded.records.insert("corn".into(), record);
    assert!(sheet_of(&recorded, DAY, &usual_slots()).is_empty());
    assert_eq!(next_day(&recorded, date(2026, 1, 1)), Some(date(2031, 6, 13)));
}
