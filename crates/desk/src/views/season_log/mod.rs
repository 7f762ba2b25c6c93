//! Season log: what was sprayed. The records by date at the left, the chosen one open beside them.

mod list;
mod listed;
mod page;
pub mod review;

use std::collections::HashSet;
use std::path::Path;
use std::rc::Rc;

use egui::{Align, Layout, Margin, Panel, TextEdit, Ui};
use tankard_core::farm::{Farm, Id, Record};
use tankard_core::quantity::Quantity;
use tankard_core::season::record::from_plan;
use tankard_file::{records_csv, store};

use crate::app::Desk;
use crate::command::View;
use crate::files::Purpose;
use crate::look;
use crate::parts::boxes;

pub use listed::Season;

/// Width of the page of a record.
const PAGE: f32 = 560.0;
/// Width of the box to find with.
const FIND: f32 = 330.0;

/// The pages of the view.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Page {
    /// The records.
    #[default]
    Records,
    /// What they come to.
    Review,
}

impl Page {
    const ALL: [(Self, &'static str); 2] = [(Self::Records, "Records"), (Self::Review, "Review")];
}

/// What is chosen in this view.
#[derive(Debug, Default)]
pub struct State {
    /// The page in use.
    pub in_front: Page,
    /// What is chosen in the review.
    pub review: review::State,
    /// The record that is open.
    pub chosen: Option<String>,
    /// What is looked for.
    pub filter: String,
    /// Which season is shown.
    pub season: Season,
    /// The record that was open in the frame before, to notice when another is chosen from elsewhere.
    shown: Option<Id>,
    /// The rows, reckoned once for a state of the farm and what is looked for.
    listed: Option<Rc<listed::Listed>>,
    list: list::State,
    page: page::State,
}

/// Shows the view.
pub fn show(desk: &mut Desk, ui: &mut Ui) {
    follow_chosen(desk);
    pages(desk, ui);
    if desk.season_log.in_front == Page::Review && !desk.document.farm().records.is_empty() {
        review::show(desk, ui);
        return;
    }
    let this_year = desk.now().date().year();
    let revision = desk.document.revision();
    let state = &mut desk.season_log;
    let listed =
        listed::fresh(state.listed.take(), desk.document.farm(), revision, &state.filter, state.season, this_year);
    state.listed = Some(Rc::clone(&listed));

    let frame = egui::Frame::new().inner_margin(Margin { left: 16, right: 16, top: 10, bottom: 8 });
    Panel::top("head").frame(frame).show_separator_line(false).show(ui, |ui| head(desk, ui, &listed, this_year));
    if desk.document.farm().records.is_empty() {
        empty(ui);
        return;
    }
    let open = desk.season_log.chosen.clone().filter(|id| desk.document.farm().records.contains_key(id));
    if let Some(id) = open {
        let width = PAGE.min(ui.available_width() * 0.62);
        let frame = egui::Frame::new().fill(look::colours(ui).sheet);
        Panel::right("record").exact_size(width).resizable(false).frame(frame).show(ui, |ui| {
            // What is typed in the boxes belongs to this record alone.
            ui.push_id(&id, |ui| page::show(desk, ui, &id));
        });
    }
    let state = &mut desk.season_log;
    if listed.rows.is_empty() {
        nothing_found(state, ui, &listed);
    } else if let Some(id) = list::show(&mut state.list, desk.document.farm(), &listed, state.chosen.as_deref(), ui) {
        state.shown = Some(id.clone());
        state.chosen = Some(id);
    }
}

/// A record chosen from elsewhere is brought into sight: its season is shown, and the list scrolls to it.
fn follow_chosen(desk: &mut Desk) {
    let state = &mut desk.season_log;
    if state.chosen == state.shown {
        return;
    }
    state.shown.clone_from(&state.chosen);
    if state.chosen.is_some() {
        state.in_front = Page::Records;
    }
    if let Some((id, record)) = state.chosen.as_ref().and_then(|id| desk.document.farm().records.get_key_value(id)) {
        if state.season != Season::All {
            state.season = Season::Year(record.date.year());
        }
        state.list.bring(id);
    }
}

/// The row of pages; acts on a page stand at its right.
fn pages(desk: &mut Desk, ui: &mut Ui) {
    let frame = egui::Frame::new().inner_margin(Margin { left: 12, right: 16, top: 6, bottom: 2 });
    Panel::top("log pages").frame(frame).show_separator_line(false).show(ui, |ui| {
        ui.horizontal(|ui| {
            for (page, name) in Page::ALL {
                if look::page(ui, name, desk.season_log.in_front == page).clicked() {
                    desk.season_log.in_front = page;
                }
            }
        });
    });
}

fn head(desk: &mut Desk, ui: &mut Ui, listed: &listed::Listed, this_year: i16) {
    let units = desk.document.farm().units;
    let mut without_a_plan = false;
    let mut export = false;
    ui.horizontal(|ui| {
        ui.label(look::title(match listed.year {
            Some(year) if year >= this_year => format!("Season {year}, so far"),
            Some(year) => format!("Season {year}"),
            None => "All seasons".to_owned(),
        }));
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            if !desk.document.farm().records.is_empty() {
                export = boxes::act(ui, "Export as CSV…").clicked();
            }
            without_a_plan = boxes::act(ui, "Record without a plan").clicked();
            ui.with_layout(Layout::left_to_right(Align::Center), |ui| {
                let totals = &listed.totals;
                if totals.passes > 0 {
                    let passes = if totals.passes == 1 { "pass" } else { "passes" };
                    let area = totals.area.show(units);
                    let volume = totals.volume.show(units);
                    let but = match totals.without_volume {
                        0 => String::new(),
                        without => format!(", not counting {without} without a volume"),
                    };
                    let words = format!("{} {passes} · {area} sprayed · {volume} of spray{but}", totals.passes);
                    ui.add(egui::Label::new(look::soft(ui, words)).truncate());
                }
            });
        });
    });
    if !desk.document.farm().records.is_empty() {
        ui.add_space(4.0);
        find_line(&mut desk.season_log, ui, listed);
    }
    if without_a_plan {
        record_without_plan(desk);
    }
    if export {
        let suggested = desk.beside("csv");
        desk.ask_file(Purpose::SaveRecords, suggested, ui.ctx());
    }
}

fn find_line(state: &mut State, ui: &mut Ui, listed: &listed::Listed) {
    ui.horizontal(|ui| {
        let find = TextEdit::singleline(&mut state.filter)
            .hint_text("find a field, crop, product or person…")
            .desired_width(FIND)
            .align(egui::Align2::LEFT_CENTER);
        let response = ui.add(find).accessible_name("Find records");
        if response.has_focus() && ui.input(|input| input.key_pressed(egui::Key::Escape)) {
            state.filter.clear();
        }
        let seasons: Vec<Season> =
            listed.years.iter().map(|year| Season::Year(*year)).chain(std::iter::once(Season::All)).collect();
        let mut season = listed.year.map_or(Season::All, Season::Year);
        let before = season;
        boxes::choice(ui, "Season", &mut season, &seasons, |season| season.words(), 110.0);
        if season != before {
            state.season = season;
        }
        let words = if state.filter.trim().is_empty() {
            format!("{} {}", listed.of, if listed.of == 1 { "record" } else { "records" })
        } else {
            format!("{} of {} records", listed.rows.len(), listed.of)
        };
        ui.label(look::soft(ui, words));
        if !state.filter.is_empty() && boxes::act(ui, "Clear").accessible_name("Show all records").clicked() {
            state.filter.clear();
        }
    });
}

fn empty(ui: &mut Ui) {
    egui::Frame::new().inner_margin(Margin::symmetric(16, 8)).show(ui, |ui| {
        look::sheet(ui).show(ui, |ui| {
            ui.set_max_width(560.0);
            ui.label(
                "Nothing is recorded yet. Plan a pass in Tank loads and record it there when it is sprayed, or record one \
                 without a plan.",
            );
        });
    });
}

fn nothing_found(state: &mut State, ui: &mut Ui, listed: &listed::Listed) {
    egui::Frame::new().inner_margin(Margin::symmetric(16, 8)).show(ui, |ui| {
        let words = match (listed.of, listed.year) {
            (0, Some(year)) => format!("Nothing is recorded in {year}."),
            _ => format!("No record holds \"{}\".", state.filter.trim()),
        };
        ui.label(look::soft(ui, words));
    });
}

/// Records a pass as it was planned, and opens the record.
pub fn record_pass(desk: &mut Desk, pass_id: &str) {
    let made = desk.document.plan(pass_id).and_then(|plan| from_plan(desk.document.farm(), &plan));
    let Some(mut record) = made else {
        desk.tell_problem(
            "The pass has no ground or no product that could be reckoned, so there is nothing to record yet",
        );
        return;
    };
    let farm = desk.document.farm();
    if let Some(pass) = farm.passes.get(pass_id) {
        record.operator.clone_from(&pass.operator);
    }
    let again = farm.is_recorded(pass_id);
    let left_out: Vec<&str> = farm
        .passes
        .get(pass_id)
        .into_iter()
        .flat_map(|pass| &pass.mix)
        .filter(|line| record.lines.iter().all(|recorded| recorded.product != line.product))
        .map(|line| farm.products.get(&line.product).map_or(line.product.as_str(), |product| product.name.as_str()))
        .collect();
    let name = &record.name;
    let mut words = if again {
        format!("{name} is recorded a second time; type what differed, or undo")
    } else {
        format!("{name} is recorded; type what differed")
    };
    if !left_out.is_empty() {
        words = format!("{words}. Not reckoned, so not in the record: {}", left_out.join(", "));
    }
    if record.date > desk.now().date() {
        words =
            format!("{words}. The day is as planned, {}, and still to come; mend it if it was another", record.date);
    }
    put(desk, record);
    desk.tell(words);
}

fn record_without_plan(desk: &mut Desk) {
    let record = Record::new("Pass without a plan", desk.now().date());
    put(desk, record);
    desk.tell("A record is begun; type what was sprayed");
}

/// Puts a record into the farm under a fresh id, with the operator of the last one where the pass names none, and opens it.
fn put(desk: &mut Desk, mut record: Record) {
    let farm = desk.document.farm();
    let named = record.operator.trim().to_owned();
    // The certificate is that of a person; another's is not taken over.
    if let Some(last) = last_record(farm, |last| named.is_empty() || last.operator.trim() == named) {
        record.operator.clone_from(&last.operator);
        record.certificate.clone_from(&last.certificate);
    }
    let id = tankard_core::farm::id::fresh(&farm.records, &format!("{}-{}", record.date, record.name));
    desk.document.edit(|farm| {
        farm.records.insert(id.clone(), record);
    });
    desk.view = View::SeasonLog;
    desk.season_log.filter.clear();
    desk.season_log.chosen = Some(id);
}

fn last_record(farm: &Farm, counts: impl Fn(&Record) -> bool) -> Option<&Record> {
    farm.records.values().filter(|record| counts(record)).max_by_key(|record| (record.date, record.start))
}

/// Saves the records that the list shows as CSV.
pub fn save_csv(desk: &mut Desk, path: &Path) {
    let path = if path.extension().is_some() { path.to_owned() } else { path.with_extension("csv") };
    let this_year = desk.now().date().year();
    let revision = desk.document.revision();
    let farm = desk.document.farm();
    let state = &mut desk.season_log;
    let listed = listed::fresh(state.listed.take(), farm, revision, &state.filter, state.season, this_year);
    state.listed = Some(Rc::clone(&listed));
    let shown: HashSet<&str> =
        listed.rows.iter().filter_map(|row| farm.records.get_index(*row)).map(|(id, _)| id.as_str()).collect();
    let saved = records_csv::write(farm, |id| shown.contains(id)).map_err(|error| error.to_string()).and_then(|text| {
        store::put_report(&path, text.as_bytes(), store::Report::Csv).map_err(|error| error.to_string())
    });
    match saved {
        Ok(()) => {
            let count = shown.len();
            let noun = if count == 1 { "record" } else { "records" };
            desk.tell(format!("{count} {noun} saved as {}", path.display()));
        }
        Err(error) => desk.tell_problem(format!("The records were not saved: {error}")),
    }
}
