//! The day of a farm: passes on their rigs with roads, clean-outs, decisions and what is said of them. Figures by hand, as the
//! comments say.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use jiff::civil::{Date, DateTime, Time, date};
use tankard_core::day::{DayPlan, RigDay, Slot, plan_day};
use tankard_core::farm::{
    Active, Day, Farm, Field, Fills, Formulation, Hour, InTank, Line, Pass, Place, Product, ProductKind, Record,
    RecordField, RecordLine, Rig, Road,
};
use tankard_core::finding::{Basis, Finding, Level};
use tankard_core::plan::{Plan, plan};
use tankard_core::quantity::{ActiveBasis, AsTyped, Duration, Quantity};
use tankard_core::weather::Verdict;

const DAY: Date = date(2031, 6, 12);

fn q<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|error| panic!("{error}"))
}

fn at(hour: i8, minute: i8) -> DateTime {
    DAY.at(hour, minute, 0, 0)
}

fn product(farm: &mut Farm, id: &str, active: &str) {
    let mut product = Product::new(&format!("{active} 480 SL (demo)"), ProductKind::Herbicide, Formulation::SL);
    product.actives.push(Active {
        name: active.to_owned(),
        group: String::new(),
        basis: ActiveBasis::ActiveIngredient,
        content: q("480 g/L"),
    });
    farm.products.insert(id.to_owned(), product);
}

/// A pass over fields of 80 ac each: 80 ÷ (10 × 100 ÷ 8.25 × 0.66) = 1 h of spraying a field.
fn pass(farm: &mut Farm, id: &str, products: &[&str], fields: &[&str]) {
    let mut pass = Pass::new(&format!("Pass {id}"), DAY);
    for field in fields {
        if !farm.fields.contains_key(field) {
            let mut new = Field::new(&format!("Field {field}"), q("80 ac"));
            "corn".clone_into(&mut new.crop);
            // 10 min at 30 mph.
            new.road = Some(q("5 mi"));
            farm.fields.insert((*field).to_owned(), new);
        }
        pass.fields.push((*field).to_owned());
    }
    "r".clone_into(&mut pass.rig);
    pass.carrier = Some(q("15 gal/ac"));
    pass.mix = products.iter().map(|product| Line::new(product, q("1 pt/ac"))).collect();
    farm.passes.insert(id.to_owned(), pass);
}

fn farm() -> Farm {
    let mut farm = Farm::new("Day");
    farm.place = Some(Place {
        latitude: "41.2".to_owned(),
        longitude: "-96.4".to_owned(),
        zone: "America/Chicago".to_owned(),
        ..Place::default()
    });
    let mut rig = Rig::new("Boom", q("1200 gal"));
    (rig.speed, rig.boom, rig.efficiency) = (Some(q("10 mph")), Some(q("100 ft")), Some(q("66 %")));
    rig.road_speed = Some(q("30 mph"));
    farm.rigs.insert("r".to_owned(), rig);
    product(&mut farm, "a", "azine");
    product(&mut farm, "b", "bzine");
    let decided = Day { from: Some(Time::constant(6, 0, 0, 0)), ..Day::default() };
    farm.days.insert(DAY.to_string(), decided);
    farm.forecast.hours = (0..48).map(|n| fair(at(0, 0).checked_add(jiff::Span::new().hours(n)).unwrap())).collect();
    farm
}

/// Gives a record all ground of its pass.
fn whole(farm: &Farm, record: &mut Record) {
    for id in &farm.passes[record.pass.as_ref().unwrap()].fields {
        let field = &farm.fields[id];
        record.fields.insert(id.clone(), RecordField::new(&field.name, field.area.clone()));
    }
}

/// An hour that nothing is wrong with, as in the tests of the weather.
fn fair(at: DateTime) -> Hour {
    let mut hour = Hour::new(at);
    hour.temperature = Some(q("20 °C"));
    hour.humidity = Some(q("60 %"));
    (hour.wind, hour.gust, hour.wind_from) = (Some(q("6 mph")), Some(q("8 mph")), Some(q("W")));
    (hour.rain, hour.rain_chance, hour.cloud) = (Some(q("0 mm")), Some(q("10 %")), Some(q("90 %")));
    hour
}

fn planned(farm: &Farm) -> DayPlan {
    let plans: Vec<Plan> = farm.passes.keys().map(|id| plan(farm, id).unwrap()).collect();
    plan_day(farm, DAY, &plans.iter().collect::<Vec<_>>())
}

fn rig(plan: &DayPlan) -> &RigDay {
    &plan.rigs[0]
}

fn ids(rig: &RigDay) -> Vec<&str> {
    rig.slots.iter().map(|slot| slot.pass.as_str()).collect()
}

fn slot<'a>(plan: &'a DayPlan, id: &str) -> &'a Slot {
    plan.slots().find(|slot| slot.pass == id).unwrap()
}

fn span(plan: &DayPlan, id: &str) -> (DateTime, DateTime) {
    let span = slot(plan, id).span.unwrap();
    (span.from, span.to)
}

fn minutes(time: Duration) -> f64 {
    (time.to_seconds() / 60.0).round()
}

fn found<'a>(plan: &'a DayPlan, words: &str) -> Option<&'a Finding> {
    plan.findings.iter().find(|finding| finding.text.contains(words))
}

fn windy(farm: &mut Farm, hours: std::ops::Range<usize>, wind: &str) {
    for hour in &mut farm.forecast.hours[hours] {
        hour.wind = Some(q(wind));
    }
}

#[test]
fn passes_of_one_mix_come_together() {
    let mut farm = farm();
    for (id, mix, field) in [("1", "a", "f"), ("2", "b", "g"), ("3", "a", "h"), ("4", "b", "i")] {
        pass(&mut farm, id, &[mix], &[field]);
    }
    farm.roads.push(Road { from: "h".to_owned(), to: "f".to_owned(), length: q("1 mi") });
    let day = planned(&farm);
    let rig = rig(&day);
    // Two clean-outs less than as listed: once from one mix to the other.
    assert_eq!(rig.cost.clean_outs, 1);
    let order = ids(rig);
    assert!(order == ["1", "3", "2", "4"] || order == ["3", "1", "2", "4"] || order[2..].contains(&"1"), "{order:?}");
    // Out 10, the typed mile 2, a clean-out of 45 with 20 of road, 20 to the next, home 10.
    assert_eq!((minutes(rig.cost.not_spraying), minutes(rig.cost.lasts)), (107.0, 347.0));
    assert_eq!((rig.leaves, rig.cost.home), (Some(at(6, 0)), Some(at(11, 47))));
    assert_eq!(rig.slots[0].span.unwrap().from, at(6, 10));
    for pair in rig.slots.windows(2) {
        let between = pair[1].clean_out.into_iter().chain(pair[1].travel).sum::<Duration>();
        let wait = pair[1].span.unwrap().from.duration_since(pair[0].span.unwrap().to).as_secs_f64();
        assert!((wait - between.to_seconds()).abs() <= 1.0, "{wait}");
    }
    assert!(rig.slots[1].goes_on && !rig.slots[2].goes_on && rig.slots[2].clean_out.is_some());
    assert!(rig.slots[1].why.contains("what is left over can go on into it"), "{}", rig.slots[1].why);
    assert!(rig.slots[1].why.contains("two clean-outs fewer"), "{}", rig.slots[1].why);
    assert!(rig.proof.contains("proven") && rig.best.is_none() && rig.held.is_empty());
    assert!(day.findings.is_empty(), "{:?}", day.findings);
}

#[test]
fn fillings_are_saved_where_loads_are_joined() {
    let mut farm = farm();
    pass(&mut farm, "1", &["a"], &["f"]);
    pass(&mut farm, "2", &["a"], &["g"]);
    // 40 ac each at 15 gal/ac are 600 gal: two loads apart, one of 1200 gal joined.
    for id in ["f", "g"] {
        farm.fields[id].area = q("40 ac");
    }
    let day = planned(&farm);
    assert_eq!(
        rig(&day).slots.iter().map(|slot| (slot.goes_on, slot.fills_saved)).collect::<Vec<_>>(),
        [(false, 0), (true, 1)]
    );
    assert!(rig(&day).slots[1].why.contains("one filling fewer"));
    // Another rate, volume, water or product is another spray.
    let others: [fn(&mut Farm); 4] = [
        |farm| farm.passes["2"].mix[0].rate = q("2 pt/ac"),
        |farm| farm.passes["2"].carrier = Some(q("10 gal/ac")),
        |farm| "w".clone_into(&mut farm.passes["2"].water),
        |farm| farm.passes["2"].mix[0].product = "b".to_owned(),
    ];
    for change in others {
        let mut other = farm.clone();
        change(&mut other);
        let day = planned(&other);
        assert!(day.slots().all(|slot| !slot.goes_on && slot.fills_saved == 0));
    }
    // The same rate in other words is the same spray.
    farm.passes["2"].mix[0].rate = q("16 fl oz/ac");
    assert!(planned(&farm).slots().any(|slot| slot.goes_on));
}

/// Spray of one pass is in the tank of another: nothing goes out between the two, and the second not before the first.
#[test]
fn a_pass_that_begins_with_spray_of_another_comes_right_after_it() {
    let mut farm = farm();
    for (id, mix, field) in [("1", "a", "f"), ("2", "a", "g"), ("3", "b", "h")] {
        pass(&mut farm, id, &[mix], &[field]);
    }
    farm.passes["1"].extra = Some(q("40 gal"));
    farm.passes["2"].in_tank = Some(InTank { volume: q("40 gal"), from: "1".to_owned() });
    for (order, right) in
        [(["1", "2", "3"], true), (["2", "1", "3"], false), (["1", "3", "2"], false), (["3", "1", "2"], true)]
    {
        let places = order.iter().zip(1..).map(|(id, place)| ((*id).to_owned(), place));
        farm.days[&DAY.to_string()].pinned = places.collect();
        let day = planned(&farm);
        assert_eq!(ids(rig(&day)), order);
        let found = found(&day, "Pass 2 begins with spray of Pass 1, but does not come right after it");
        assert_eq!(found.is_none(), right, "{order:?}");
        assert!(found.is_none_or(|found| found.level == Level::Check && !found.hint.is_empty()));
    }
}

#[test]
fn a_held_pass_is_kept_and_its_price_is_told() {
    let mut farm = farm();
    for (id, mix, field) in [("1", "a", "f"), ("2", "b", "g"), ("3", "a", "h")] {
        pass(&mut farm, id, &[mix], &[field]);
    }
    farm.days[&DAY.to_string()].pinned.insert("2".to_owned(), 2);
    let day = planned(&farm);
    assert_eq!(ids(rig(&day))[1], "2");
    assert_eq!((rig(&day).cost.clean_outs, rig(&day).best.unwrap().clean_outs), (2, 1));
    assert_eq!(rig(&day).held, "Held at place 2: one clean-out more, home 45 min later than in the best order");
    assert!(found(&day, "Pass 2. Held at place 2: one clean-out more").is_some());
    assert!(slot(&day, "2").held == Some(2) && slot(&day, "2").why.contains("Held at place 2"));
    farm.days[&DAY.to_string()].pinned.insert("2".to_owned(), 3);
    assert_eq!(rig(&planned(&farm)).held, "Held at place 3: it costs nothing");
    // A place that there is not is said to be none.
    farm.days[&DAY.to_string()].pinned.insert("2".to_owned(), 7);
    let day = planned(&farm);
    assert_eq!(ids(rig(&day))[2], "2");
    assert_eq!(found(&day, "is held at place 7").unwrap().level, Level::Check);
    // Two at one place come one after the other.
    farm.days[&DAY.to_string()].pinned.insert("2".to_owned(), 1);
    farm.days[&DAY.to_string()].pinned.insert("3".to_owned(), 1);
    let day = planned(&farm);
    let mut both = ids(rig(&day))[..2].to_vec();
    both.sort_unstable();
    assert_eq!(both, ["2", "3"]);
    assert!(found(&day, "is held at place 1, which is not free for it; it comes at place 2").is_some());
    // At the last place the first of them comes one before it.
    farm.days[&DAY.to_string()].pinned.insert("2".to_owned(), 3);
    farm.days[&DAY.to_string()].pinned.insert("3".to_owned(), 3);
    let day = planned(&farm);
    assert_eq!(ids(rig(&day))[0], "1");
    assert!(found(&day, "is held at place 3, which is not free for it; it comes at place 2").is_some());
}

#[test]
fn wind_in_the_morning_changes_the_order() {
    let mut farm = farm();
    pass(&mut farm, "1", &["a"], &["f"]);
    pass(&mut farm, "2", &["b"], &["g"]);
    farm.passes["1"].start = Some(Time::constant(9, 0, 0, 0));
    let day = planned(&farm);
    assert_eq!(ids(rig(&day)), ["2", "1"]);
    assert_eq!(span(&day, "2"), (at(6, 10), at(7, 10)));
    assert_eq!(span(&day, "1"), (at(9, 0), at(10, 0)));
    assert!(slot(&day, "2").why.contains("Before Pass 1: home "), "{}", slot(&day, "2").why);
    // Only doubtful hours until night: the farm's own limit of practice makes them so.
    windy(&mut farm, 0..48, "12 mph");
    let day = planned(&farm);
    assert!(day.slots().all(|slot| slot.verdict == Some(Verdict::Doubtful)));
    assert!(slot(&day, "1").why.contains("doubtful") && rig(&day).cost.doubtful == 2);
    farm.forecast.hours.retain(|hour| hour.at.hour() < 7);
    let day = planned(&farm);
    assert_eq!((slot(&day, "1").verdict, slot(&day, "1").span), (Some(Verdict::Forbidden), None));
    let told = found(&day, "finds no place").unwrap();
    assert!(told.level == Level::Check && told.hint.contains("another day"), "{told:?}");
}

#[test]
fn the_rigs_are_home_in_time() {
    let mut farm = farm();
    pass(&mut farm, "1", &["a"], &["f"]);
    pass(&mut farm, "2", &["b"], &["g"]);
    // 10 + 60 + 65 + 60 + 10 min after 6:00 is 9:25.
    farm.days[&DAY.to_string()].to = Some(Time::constant(9, 25, 0, 0));
    assert_eq!(rig(&planned(&farm)).cost.home, Some(at(9, 25)));
    farm.days[&DAY.to_string()].to = Some(Time::constant(9, 24, 0, 0));
    let day = planned(&farm);
    assert_eq!(rig(&day).cost.no_place, 1);
    let told = found(&day, "finds no place").unwrap();
    assert!(told.text.contains("no order leaves room for its 1 h beside the other passes"), "{told:?}");
    assert!(
        told.hint.contains("Were the rigs not to be home by 09:24, it would be home at 09:25 with one more sprayed"),
        "{told:?}"
    );
    farm.days[&DAY.to_string()].to = Some(Time::constant(6, 30, 0, 0));
    assert!(found(&planned(&farm), "its 1 h do not end before the rigs are to be home").is_some());
}

#[test]
fn past_midnight_goes_as_far_as_the_forecast() {
    let mut farm = farm();
    pass(&mut farm, "1", &["a"], &["f"]);
    farm.passes["1"].start = Some(Time::constant(23, 30, 0, 0));
    let day = planned(&farm);
    assert_eq!(span(&day, "1"), (at(23, 30), DAY.tomorrow().unwrap().at(0, 30, 0, 0)));
    assert!(found(&day, "runs past midnight, until 00:30").is_some());
    farm.forecast.hours.truncate(24);
    let day = planned(&farm);
    assert!(slot(&day, "1").span.is_none() && found(&day, "finds no place").is_some());
    // A pass of the day does not begin on the next.
    let mut farm = self::farm();
    pass(&mut farm, "1", &["a"], &["f"]);
    farm.forecast.hours.retain(|hour| hour.at >= at(23, 30));
    farm.forecast.hours.insert(0, fair(at(5, 0)));
    assert!(slot(&planned(&farm), "1").span.is_none());
    // Out into the night on purpose: from 20:00 to 02:00.
    farm.forecast.hours = (0..48).map(|n| fair(at(0, 0).checked_add(jiff::Span::new().hours(n)).unwrap())).collect();
    let decided = &mut farm.days[&DAY.to_string()];
    (decided.from, decided.to) = (Some(Time::constant(20, 0, 0, 0)), Some(Time::constant(2, 0, 0, 0)));
    assert_eq!(span(&planned(&farm), "1").0, at(20, 10));
}

#[test]
fn without_a_forecast_the_clock_is_that_of_the_day() {
    let mut farm = farm();
    pass(&mut farm, "1", &["a"], &["f"]);
    farm.forecast.hours.clear();
    let day = planned(&farm);
    assert_eq!((span(&day, "1").0, slot(&day, "1").verdict), (at(6, 10), None));
    assert!(found(&day, "are not judged").is_some());
    farm.days.clear();
    let day = planned(&farm);
    assert_eq!((slot(&day, "1").span, rig(&day).leaves, rig(&day).cost.home), (None, None, None));
    assert_eq!((minutes(slot(&day, "1").takes.unwrap()), minutes(rig(&day).cost.lasts)), (60.0, 80.0));
    assert!(found(&day, "no hours are told, only how long things take").is_some());
    farm.passes["1"].start = Some(Time::constant(8, 0, 0, 0));
    assert_eq!(span(&planned(&farm), "1").0, at(8, 10));
}

/// A pass that begins with what another leaves comes right after it, though another order would save road; held elsewhere, that
/// is said. What was left on the day before is sprayed first.
#[test]
fn what_goes_on_with_spray_comes_right_after_what_leaves_it() {
    let mut farm = farm();
    for (id, field) in [("1", "f"), ("2", "g"), ("3", "h")] {
        pass(&mut farm, id, &["a"], &[field]);
    }
    farm.roads.push(Road { from: "f".to_owned(), to: "g".to_owned(), length: q("1 mi") });
    farm.passes["3"].extra = Some(q("30 gal"));
    farm.passes["1"].in_tank = Some(InTank { volume: q("30 gal"), from: "3".to_owned() });
    let day = planned(&farm);
    assert_eq!((ids(rig(&day)), rig(&day).cost.parted), (vec!["3", "1", "2"], 0));
    assert!(found(&day, "begins with spray").is_none());
    farm.days[&DAY.to_string()].pinned.insert("1".to_owned(), 1);
    let day = planned(&farm);
    let told = found(&day, "Pass 1 begins with spray of Pass 3, but does not come right after it").unwrap();
    assert_eq!((told.level, rig(&day).cost.parted), (Level::Check, 1));
    assert!(rig(&day).held.contains("one pass more that does not come right after what leaves its spray"));
    farm.days[&DAY.to_string()].pinned.clear();
    farm.passes["3"].date = date(2031, 6, 11);
    let of_day: Vec<Plan> = ["1", "2"].map(|id| plan(&farm, id).unwrap()).into();
    let day = plan_day(&farm, DAY, &of_day.iter().collect::<Vec<_>>());
    assert_eq!(ids(rig(&day)), ["1", "2"]);
    farm.days[&DAY.to_string()].pinned.insert("1".to_owned(), 2);
    let day = plan_day(&farm, DAY, &of_day.iter().collect::<Vec<_>>());
    assert!(found(&day, "Pass 1 begins with spray of Pass 3").is_some());
}

#[test]
fn a_crop_that_the_mix_before_hurts_comes_first() {
    let mut farm = farm();
    product(&mut farm, "d", "dicamba");
    pass(&mut farm, "1", &["d"], &["f"]);
    pass(&mut farm, "2", &["a"], &["g"]);
    "soybean".clone_into(&mut farm.fields["g"].crop);
    let day = planned(&farm);
    assert_eq!((ids(rig(&day)), rig(&day).cost.sensitive), (vec!["2", "1"], 0));
    assert!(slot(&day, "2").why.contains("Before Pass 1: one pass fewer after a mix that hurts the crop"));
    farm.days[&DAY.to_string()].pinned.insert("2".to_owned(), 2);
    let day = planned(&farm);
    let told = found(&day, "Pass 2 goes to Field g after Pass 1. Sensitive soybean").unwrap();
    assert!(told.level == Level::Check && matches!(told.basis, Basis::Published(_)), "{told:?}");
    // Held there, it is not so for want of another order.
    assert!(!told.hint.contains("No order") && rig(&day).proof.starts_with("With what is held, no order costs less"));
}

/// Traces of what the rig sprayed last on an earlier day are in it in the morning, and those of a pass between the two are not.
#[test]
fn traces_of_the_day_before_are_said_in_the_morning() {
    let mut farm = farm();
    product(&mut farm, "d", "dicamba");
    pass(&mut farm, "0", &["d"], &["f"]);
    pass(&mut farm, "00", &["a"], &["f"]);
    pass(&mut farm, "2", &["a"], &["g"]);
    "soybean".clone_into(&mut farm.fields["g"].crop);
    for (id, hour) in [("0", 15), ("00", 8)] {
        farm.passes[id].date = date(2031, 6, 10);
        farm.passes[id].start = Some(Time::constant(hour, 0, 0, 0));
    }
    let day = planned(&farm);
    let told = found(&day, "Pass 2 goes to Field g after Pass 0 of 10 June 2031. Sensitive soybean").unwrap();
    assert!(told.level == Level::Check && matches!(told.basis, Basis::Published(_)), "{told:?}");
    assert!(told.hint.contains("where that was not done since"), "{told:?}");
    // A crop of which nothing is known is said too, whatever comes between.
    "quinoa".clone_into(&mut farm.fields["g"].crop);
    assert!(found(&planned(&farm), "after Pass 0 of 10 June 2031; whether traces of dicamba hurt").is_some());
    "soybean".clone_into(&mut farm.fields["g"].crop);
    // In which order they were sprayed is not known: it may have been the last.
    farm.passes["0"].start = None;
    assert!(found(&planned(&farm), "after Pass 0 of 10 June 2031").is_some());
    farm.passes["0"].start = Some(Time::constant(6, 0, 0, 0));
    assert!(found(&planned(&farm), "after Pass 0").is_none());
    // What was recorded counts though it was never planned.
    let mut recorded = farm.clone();
    recorded.passes.retain(|id, _| id == "2");
    let mut record = Record::new("Dicamba before noon", date(2031, 6, 10));
    record.rig = "Boom".into();
    record.lines.push(RecordLine::new("d", &recorded.products["d"].name, q("3 gal")));
    recorded.records.insert("r".to_owned(), record);
    let day = planned(&recorded);
    assert!(
        found(&day, "Pass 2 goes to Field g after Dicamba before noon of 10 June 2031. Sensitive soybean").is_some()
    );
    // Nor is a pass with a Stop sure to come between.
    pass(&mut farm, "00s", &["a"], &["f"]);
    pass(&mut farm, "0s", &["d"], &["f"]);
    for (id, place) in [("0s", 1), ("00s", 2), ("2", 3)] {
        farm.days[&DAY.to_string()].pinned.insert(id.to_owned(), place);
    }
    assert!(found(&planned(&farm), "Pass 2 goes to Field g after Pass 0s").is_none());
    farm.passes["00s"].carrier = None;
    let stopped = planned(&farm);
    if stopped.slots().any(|slot| slot.why.contains("Stop")) {
        assert!(found(&stopped, "Pass 2 goes to Field g after Pass 0s. Sensitive soybean").is_some());
    } else {
        panic!("{stopped:#?}");
    }
    for id in ["0s", "00s"] {
        farm.passes.shift_remove(id);
    }
    farm.days[&DAY.to_string()].pinned.clear();
    // A record says better when it was.
    let mut record = Record::new("Pass 0", date(2031, 6, 11));
    record.pass = Some("0".into());
    whole(&farm, &mut record);
    farm.records.insert("rec".to_owned(), record);
    assert!(found(&planned(&farm), "after Pass 0 of 11 June 2031").is_some());
}

#[test]
fn what_is_sprayed_already_is_set_apart() {
    let mut farm = farm();
    for (id, mix, field) in [("1", "a", "f"), ("2", "b", "g"), ("3", "a", "h")] {
        pass(&mut farm, id, &[mix], &[field]);
    }
    let mut record = Record::new("Pass 1", DAY);
    record.pass = Some("1".into());
    whole(&farm, &mut record);
    record.end = Some(Time::constant(11, 0, 0, 0));
    farm.records.insert("rec".to_owned(), record);
    farm.days[&DAY.to_string()].pinned.insert("2".to_owned(), 3);
    let day = planned(&farm);
    assert_eq!((rig(&day).done.clone(), ids(rig(&day))), (vec!["1".to_owned()], vec!["3", "2"]));
    // Free at 11:00, without a clean-out to the same mix, 10 min of road from the yard.
    assert_eq!((slot(&day, "3").clean_out, span(&day, "3").0), (None, at(11, 10)));
    assert!(found(&day, "which is not free").is_none());
}

/// An acre of eighty is recorded: the pass is still to be laid out, and says what of it is left.
#[test]
fn what_is_sprayed_in_part_stays_in_the_day() {
    let mut farm = farm();
    pass(&mut farm, "1", &["a"], &["f"]);
    let mut record = Record::new("Pass 1", DAY);
    record.pass = Some("1".into());
    whole(&farm, &mut record);
    record.fields["f"].area = q("1 ac");
    farm.records.insert("rec".to_owned(), record);
    let day = planned(&farm);
    assert_eq!((rig(&day).done.len(), ids(rig(&day))), (0, vec!["1"]));
    let note = found(&day, "partly recorded: 79 ac of 80 ac left").unwrap();
    assert_eq!(note.level, Level::Note);
    farm.records["rec"].fields["f"].area = q("80 ac");
    let day = planned(&farm);
    assert!(rig(&day).done == ["1"] && found(&day, "partly recorded").is_none());
}

/// What is sprayed already may end after the rigs were to be home, or past midnight; neither gives the rest of the day a night more.
#[test]
fn what_was_sprayed_late_does_not_move_the_hour_to_be_home_by() {
    let mut farm = farm();
    pass(&mut farm, "1", &["a"], &["f"]);
    pass(&mut farm, "2", &["a"], &["g"]);
    let mut record = Record::new("Pass 1", DAY);
    record.pass = Some("1".into());
    whole(&farm, &mut record);
    (record.start, record.end) = (Some(Time::constant(16, 0, 0, 0)), Some(Time::constant(18, 30, 0, 0)));
    farm.records.insert("rec".to_owned(), record);
    farm.days[&DAY.to_string()].to = Some(Time::constant(18, 0, 0, 0));
    let day = planned(&farm);
    assert_eq!((slot(&day, "2").span, slot(&day, "2").verdict), (None, Some(Verdict::Forbidden)));
    assert!(found(&day, "its 1 h do not end before the rigs are to be home").is_some(), "{:?}", day.findings);
    // From 22:00 to 01:00: the rig is free at one in the night, not at one in the morning before.
    farm.days[&DAY.to_string()].to = None;
    let record = &mut farm.records["rec"];
    (record.start, record.end) = (Some(Time::constant(22, 0, 0, 0)), Some(Time::constant(1, 0, 0, 0)));
    assert_eq!(slot(&planned(&farm), "2").span, None);
}

#[test]
fn what_has_no_rig_time_or_road_is_said() {
    let mut farm = farm();
    for (id, field) in [("1", "f"), ("2", "g"), ("3", "h"), ("4", "i")] {
        pass(&mut farm, id, &["a"], &[field]);
    }
    farm.passes["2"].date = date(2031, 6, 13);
    farm.passes["3"].rig = String::new();
    let mut slow = farm.rigs["r"].clone();
    slow.speed = None;
    farm.rigs.insert("s".to_owned(), slow);
    "s".clone_into(&mut farm.passes["4"].rig);
    farm.fields["f"].road = None;
    let day = planned(&farm);
    assert_eq!(day.slots().map(|slot| slot.pass.as_str()).collect::<Vec<_>>(), ["1", "4", "3"]);
    assert_eq!(day.loose[0].why, "No rig is chosen for it");
    let four = found(&day, "Pass 4 has no place in the day").unwrap();
    assert!(slot(&day, "4").why.contains("not known") && four.hint.contains("boom width"), "{four:?}");
    assert!(found(&day, "counted as nothing: the road to Field f").is_some());
    assert_eq!(slot(&day, "1").travel, None);
    // Where all of the rig is typed and the field is missing, that is what is said.
    farm.passes["1"].fields.clear();
    let day = planned(&farm);
    let one = found(&day, "Pass 1 has no place in the day: it has no field yet").unwrap();
    assert!(one.hint.contains("fields") && slot(&day, "1").why.contains("choose its fields"), "{one:?}");
}

#[test]
fn a_tank_filled_in_the_yard_begins_there() {
    let mut farm = farm();
    pass(&mut farm, "1", &["a"], &["f"]);
    farm.passes["1"].fills = Fills::AtYard;
    let day = planned(&farm);
    // One load of 1200 gal: the way out is within the pass, the way home is not.
    assert_eq!((minutes(slot(&day, "1").takes.unwrap()), span(&day, "1").0), (70.0, at(6, 0)));
    assert_eq!((minutes(rig(&day).way_home), rig(&day).cost.home), (10.0, Some(at(7, 20))));
}

#[test]
fn a_better_order_of_the_fields_is_told() {
    let mut farm = farm();
    pass(&mut farm, "1", &["a"], &["f", "g", "h"]);
    // f and h lie together.
    farm.roads.push(Road { from: "h".to_owned(), to: "f".to_owned(), length: q("1 mi") });
    let day = planned(&farm);
    // As typed 5 + 10 + 10 + 5 mi; with f and h together 5 + 1 + 10 + 5: 18 min at 30 mph.
    let told = found(&day, "18 min less of road than as typed").unwrap();
    assert_eq!(told.level, Level::Note);
    farm.passes["1"].fields = ["f", "h", "g"].map(ToOwned::to_owned).to_vec();
    assert!(found(&planned(&farm), "less of road than as typed").is_none());
}

#[test]
fn more_passes_than_can_be_proven_are_ordered_all_the_same() {
    let mut farm = farm();
    for n in 0..14 {
        pass(&mut farm, &n.to_string(), &[if n % 2 == 0 { "a" } else { "b" }], &[&format!("f{n}")]);
        farm.fields[&format!("f{n}")].area = q("20 ac");
    }
    let day = planned(&farm);
    assert_eq!((rig(&day).cost.clean_outs, rig(&day).cost.no_place, rig(&day).slots.len()), (1, 0, 14));
}
