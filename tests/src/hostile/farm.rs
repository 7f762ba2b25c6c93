//! The farm's file, and all that is reckoned from it.

use std::collections::BTreeMap;

use jiff::civil::{Date, date};
use tankard_core::day::{Slot, plan_day_of, sheet};
use tankard_core::farm::Farm;
use tankard_core::loads::card::cards;
use tankard_core::plan::{Plan, plan_of};
use tankard_core::season::review::{Choice, of_farm};
use tankard_core::season::{Log, field, outside, profile, seal, too_much, trials, worker_protection};
use tankard_core::stock::{ledger, needs};
use tankard_file::{records_json, write};

use super::{finite, lasts, says};

/// Reads bytes as a farm's file.
///
/// # Panics
/// A reader or a planner panics; a number of a plan is not finite; the farm or its records do not last.
pub fn farm(bytes: &[u8]) -> bool {
    let farm = match tankard_file::read(bytes) {
        Ok(farm) => farm,
        Err(error) => return says(&error),
    };
    lasts(&farm);
    planned(&farm);
    looked_back_on(&farm);
    if farm.records.keys().all(|id| !id.is_empty()) {
        super::records::read_back(&farm);
    }
    true
}

/// Every pass and every day of a farm is planned.
pub(super) fn planned(farm: &Farm) {
    let log = Log::of(farm);
    let mut days: BTreeMap<Date, Vec<Plan>> = BTreeMap::new();
    for (id, pass) in &farm.passes {
        let plan = plan_of(farm, &log, id);
        assert!(plan.is_some(), "\"{id}\" is not planned");
        let Some(plan) = plan else { continue };
        finite(&format!("{plan:?}"));
        for card in cards(farm, &plan) {
            assert!(card.of >= card.load);
        }
        days.entry(pass.date).or_default().push(plan);
    }
    for (day, plans) in &days {
        let plans: Vec<&Plan> = plans.iter().collect();
        let planned = plan_day_of(farm, &log, *day, &plans);
        finite(&format!("{planned:?}"));
        let slots: Vec<&Slot> = planned.slots().collect();
        finite(&format!("{:?}", sheet::sheet(farm, *day, &plans, &slots)));
        finite(&format!("{:?}", needs::of_day(farm, *day)));
    }
}

/// What there is to say of records, fields and the shed.
pub(super) fn looked_back_on(farm: &Farm) {
    let log = Log::of(farm);
    let today = farm.records.values().map(|record| record.date).max().unwrap_or(date(2031, 6, 12));
    let review = of_farm(farm, &Choice { from: Date::MIN, to: Date::MAX, fields: Vec::new(), crops: Vec::new() });
    finite(&format!("{review:?}"));
    finite(&format!("{:?}{:?}", seal::findings(farm), profile::judge_farm(farm)));
    for (id, record) in &farm.records {
        finite(&format!("{:?}", profile::missing(farm, id, record, today)));
        finite(&format!("{:?}{:?}", outside::judge(farm, id, record), too_much::judge(farm, &log, id, record)));
        finite(&format!("{:?}", worker_protection::posting(farm, id, record)));
    }
    for id in farm.fields.keys() {
        finite(&format!("{:?}", field::page(farm, &log, id, today.at(12, 0, 0, 0))));
    }
    for id in farm.products.keys() {
        finite(&format!("{:?}", ledger(farm, &log, id)));
    }
    for trial in farm.trials.values() {
        finite(&format!("{:?}", trials::judge(farm, trial)));
    }
    let json = records_json::write(farm, |_| true, None, today);
    assert!(json.is_ok(), "the records are no JSON: {:?}", json.err());
    assert!(write(farm).is_ok());
}
