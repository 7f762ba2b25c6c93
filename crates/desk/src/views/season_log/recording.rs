//! How records come to be: from the plan of a pass, all of it or some, or without a plan.

use egui::containers::menu::{MenuButton, MenuConfig};
use egui::{PopupCloseBehavior, Ui};
use tankard_core::farm::{Farm, Id, Record};
use tankard_core::quantity::Quantity;
use tankard_core::season::portion::Portion;
use tankard_core::season::record::of_portion;
use tankard_core::season::used;
use tankard_core::t;

use crate::app::Desk;
use crate::command::View;
use crate::look;
use crate::parts::boxes;

/// What of a pass is to be recorded.
enum Wanted {
    /// All of it.
    All,
    /// What no record covers yet.
    Rest,
    /// These loads.
    Loads(Vec<u32>),
}

/// The acts on a pass that record it: in one click what is usual, in a menu the rest.
pub fn acts(desk: &mut Desk, ui: &mut Ui, pass_id: &str) {
    let plan = desk.document.plan(pass_id);
    let SoFar { recorded, rest, .. } = so_far(desk, pass_id);
    let words = match (recorded, &rest) {
        (true, Some(_)) => t!("season-log-record-what-is-left-of-it"),
        (true, None) => t!("season-log-record-it-again"),
        (false, _) => t!("season-log-record-as-sprayed"),
    };
    let mut wanted = None;
    if boxes::button(ui, words).clicked() {
        wanted = Some(if rest.is_some() { Wanted::Rest } else { Wanted::All });
    }
    let loads: Vec<u32> = plan.iter().flat_map(|plan| &plan.loads).map(|load| load.number).collect();
    if loads.len() > 1 || rest.is_some() {
        let config = MenuConfig::new().close_behavior(PopupCloseBehavior::CloseOnClickOutside);
        let button = egui::Button::new(look::act(ui, t!("season-log-some-of-it"))).frame(false);
        MenuButton::from_button(button).config(config).ui(ui, |ui| {
            if let Some(rest) = &rest {
                let words = t!("season-log-what-is-left-of-it", area = rest.area().show(desk.document.farm().units));
                if ui.button(words).clicked() {
                    wanted = Some(Wanted::Rest);
                }
                if ui.button(t!("season-log-all-of-it-again-as-a")).clicked() {
                    wanted = Some(Wanted::All);
                }
            }
            if loads.len() > 1 {
                wanted = wanted.take().or(some_loads(ui, pass_id, &loads));
            }
            if wanted.is_some() {
                ui.close();
            }
        });
    }
    if let Some(wanted) = wanted {
        record(desk, pass_id, &wanted);
    }
}

/// What is recorded of a pass, for one state of the farm.
#[derive(Clone, Debug)]
pub(super) struct SoFar {
    of: (u64, Id),
    /// Whether any of it is.
    recorded: bool,
    /// What its records leave of it.
    rest: Option<Portion>,
}

fn so_far(desk: &mut Desk, pass_id: &str) -> SoFar {
    let of = (desk.document.revision(), pass_id.to_owned());
    if let Some(known) = desk.season_log.so_far.as_ref().filter(|known| known.of == of) {
        return known.clone();
    }
    let plan = desk.document.plan(pass_id);
    let log = desk.document.log();
    let recorded = log.has_record(pass_id);
    let rest = plan.filter(|_| recorded).and_then(|plan| Portion::rest(desk.document.farm(), &log, &plan));
    let so_far = SoFar { of, recorded, rest };
    desk.season_log.so_far = Some(so_far.clone());
    so_far
}

/// The loads to tick, and the act that records them.
fn some_loads(ui: &mut Ui, pass_id: &str, loads: &[u32]) -> Option<Wanted> {
    let id = egui::Id::unique("loads to record").with(pass_id);
    let mut ticked: Vec<u32> = ui.data(|data| data.get_temp(id)).unwrap_or_default();
    ticked.retain(|load| loads.contains(load));
    for load in loads {
        let mut is_ticked = ticked.contains(load);
        if boxes::tick(ui, &mut is_ticked, &t!("season-log-load", load = load)).changed() {
            if is_ticked {
                ticked.push(*load);
            } else {
                ticked.retain(|other| other != load);
            }
        }
    }
    ticked.sort_unstable();
    let record = ui
        .add_enabled(!ticked.is_empty(), egui::Button::new(t!("season-log-record-these-loads")))
        .on_disabled_hover_text(t!("parts-nothing-is-ticked-yet"))
        .clicked();
    ui.data_mut(|data| data.insert_temp(id, if record { Vec::new() } else { ticked.clone() }));
    record.then_some(Wanted::Loads(ticked))
}

/// Records what is left of a pass, or all of it where nothing is, and opens the record.
pub fn record_pass(desk: &mut Desk, pass_id: &str) {
    let rest = so_far(desk, pass_id).rest.is_some();
    record(desk, pass_id, if rest { &Wanted::Rest } else { &Wanted::All });
}

/// The same of the pass that is chosen among the tank loads.
pub fn record_chosen(desk: &mut Desk) {
    let chosen = desk.tank_loads.chosen.clone();
    match chosen.filter(|id| desk.document.farm().passes.contains_key(id)) {
        Some(pass) => record_pass(desk, &pass),
        None => {
            desk.view = View::TankLoads;
            desk.tell_problem(t!("season-log-choose-the-pass-first"));
        }
    }
}

fn record(desk: &mut Desk, pass_id: &str, wanted: &Wanted) {
    let log = desk.document.log();
    let made = desk.document.plan(pass_id).and_then(|plan| {
        let portion = match wanted {
            Wanted::All => Portion::whole(&plan),
            Wanted::Rest => Portion::rest(desk.document.farm(), &log, &plan)?,
            Wanted::Loads(numbers) => Portion::of_loads(&plan, numbers)?,
        };
        of_portion(desk.document.farm(), &log, &plan, &portion).map(|record| (record, plan.loads.len()))
    });
    let Some((mut record, all)) = made else {
        desk.tell_problem(t!("season-log-the-pass-has-no-ground-or"));
        return;
    };
    if let Wanted::Loads(numbers) = wanted {
        record.note = t!("season-log-numbers-of-all", numbers = loads_words(numbers), all = all).into();
    }
    let farm = desk.document.farm();
    let again = log.has_record(pass_id);
    let left_out: Vec<&str> = farm
        .passes
        .get(pass_id)
        .into_iter()
        .flat_map(|pass| &pass.mix)
        .filter(|line| record.lines.iter().all(|recorded| recorded.product != line.product))
        .map(|line| farm.products.get(&line.product).map_or(line.product.as_str(), |product| product.name.as_str()))
        .collect();
    let name = &record.name;
    let mut words = match wanted {
        Wanted::Rest => t!("season-log-what-was-left-of-is-recorded", name = name),
        Wanted::Loads(numbers) => {
            t!("season-log-of-recorded-type-what-differed", numbers = loads_words(numbers), name = name)
        }
        Wanted::All if again => t!("season-log-is-recorded-a-second-time-type", name = name),
        Wanted::All => t!("season-log-is-recorded-type-what-differed", name = name),
    };
    if !left_out.is_empty() {
        words = t!("season-log-not-reckoned-so-not-in-the", words = words, left_out = left_out.join(", "));
    }
    if record.date > desk.now().date() {
        words = t!("season-log-the-day-is-as-planned-and", words = words, date = record.date);
    }
    put(desk, record);
    desk.tell(words);
}

pub(super) fn record_without_plan(desk: &mut Desk) {
    let record = Record::new(t!("season-log-pass-without-a-plan"), desk.now().date());
    put(desk, record);
    desk.tell(t!("season-log-a-record-is-begun-type-what"));
}

/// Puts a record into the farm under a fresh id, with the operator of the last one where the pass names none, and opens it.
fn put(desk: &mut Desk, mut record: Record) {
    let now = desk.now();
    let farm = desk.document.farm();
    if record.operator.trim().is_empty()
        && let Some(last) = last_record(farm)
    {
        record.operator.clone_from(&last.operator);
    }
    // The certificate is that of a person; another's is not taken over.
    used::follow_operator(farm, "", &mut record);
    record.made = Some(now);
    let id = tankard_core::farm::id::fresh(&farm.records, &format!("{}-{}", record.date, record.name));
    desk.document.edit(|farm| {
        farm.records.insert(id.clone(), record);
    });
    desk.view = View::SeasonLog;
    desk.season_log.filter.clear();
    desk.season_log.page.begun = Some(id.clone());
    desk.season_log.chosen = Some(id);
}

fn last_record(farm: &Farm) -> Option<&Record> {
    farm.records.values().max_by_key(|record| (record.date, record.start))
}

/// "Load 2", "Loads 1 to 3", "Loads 1, 3".
fn loads_words(numbers: &[u32]) -> String {
    match numbers {
        [one] => t!("season-log-load-one", one = one),
        [first, .., last] if numbers.windows(2).all(|pair| matches!(pair, [a, b] if a + 1 == *b)) => {
            t!("season-log-loads-to", first = first, last = last)
        }
        numbers => t!("season-log-loads", numbers = numbers.iter().map(u32::to_string).collect::<Vec<_>>().join(", ")),
    }
}
