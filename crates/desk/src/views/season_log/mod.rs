//! Season log: what was sprayed. The records by date at the left, the chosen one open beside them.

mod close;
pub mod export;
pub mod import;
mod law;
mod list;
mod listed;
mod page;
pub mod print;
mod recording;
pub mod review;
mod seal;
mod trials;

use std::rc::Rc;

use egui::{Margin, Panel, TextEdit, Ui};
use tankard_core::farm::{Farm, Id};
use tankard_core::quantity::Quantity;
use tankard_core::t;

use crate::app::{Desk, is_narrow};
use crate::look;
use crate::parts::boxes;

pub use listed::Season;
pub use recording::{acts, record_chosen, record_pass};
pub(crate) use seal::{has_seals, on_opening};

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
    /// Two treatments beside one another.
    Trials,
    /// What the records come to.
    Review,
}

impl Page {
    const ALL: [Self; 3] = [Self::Records, Self::Trials, Self::Review];

    fn name(self) -> &'static str {
        match self {
            Self::Records => t!("season-log-page-records"),
            Self::Trials => t!("season-log-trials"),
            Self::Review => t!("season-log-review"),
        }
    }
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
    /// The season that is being closed.
    closing: Option<close::Form>,
    /// Whether the pass in front is recorded, and what is left of it.
    so_far: Option<recording::SoFar>,
    trials: trials::State,
    seal: seal::State,
    import: import::State,
}

impl State {
    /// Brings the chosen record into sight and gives its row the keyboard, whatever was looked for.
    pub(crate) fn bring_chosen(&mut self) {
        self.filter.clear();
        self.in_front = Page::Records;
        if let Some(id) = &self.chosen {
            self.list.bring_with_keys(id);
        }
    }

    /// The record of an amendment that is begun and neither kept nor left, so that leaving would lose it.
    pub(crate) fn begun_amendment(&self, farm: &Farm) -> Option<Id> {
        self.seal.begun(farm)
    }
}

/// Shows the view.
pub fn show(desk: &mut Desk, ui: &mut Ui) {
    follow_chosen(desk);
    if desk.season_log.import.is_open() {
        import::show(desk, ui);
        return;
    }
    pages(desk, ui);
    if desk.season_log.in_front == Page::Review && !desk.document.farm().records.is_empty() {
        review::show(desk, ui);
        return;
    }
    let today = desk.now().date();
    let this_year = today.year();
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
    if let Some(form) = desk.season_log.closing.take() {
        desk.season_log.closing = close::show(desk, ui, form);
        return;
    }
    if desk.season_log.in_front == Page::Trials {
        trials::show(desk, ui, &listed);
        return;
    }
    let open = desk.season_log.chosen.clone().filter(|id| desk.document.farm().records.contains_key(id));
    if let Some(id) = open {
        let width = PAGE.min(ui.available_width() * 0.62);
        let frame = egui::Frame::new().fill(look::colours(ui).sheet);
        if is_narrow(ui.ctx()) {
            // There is room for the record alone; "Close" in it leads back to the list.
            egui::CentralPanel::default().frame(frame).show(ui, |ui| ui.push_id(&id, |ui| page::show(desk, ui, &id)));
            return;
        }
        Panel::right("record").exact_size(width).resizable(false).frame(frame).show(ui, |ui| {
            // What is typed in the boxes belongs to this record alone.
            ui.push_id(&id, |ui| page::show(desk, ui, &id));
        });
    }
    let state = &mut desk.season_log;
    if listed.rows.is_empty() {
        nothing_found(state, ui, &listed);
        return;
    }
    let (farm, chosen) = (desk.document.farm(), state.chosen.as_deref());
    let frame = egui::Frame::new().inner_margin(Margin { left: 16, right: 16, top: 0, bottom: 12 });
    let table = |ui: &mut Ui| list::show(&mut state.list, &mut state.seal, farm, &listed, today, chosen, ui);
    if let Some(id) = frame.show(ui, table).inner {
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
    let frame = egui::Frame::new().inner_margin(Margin { left: 16, right: 16, top: 6, bottom: 2 });
    Panel::top("log pages").frame(frame).show_separator_line(false).show(ui, |ui| {
        ui.horizontal(|ui| {
            ui.spacing_mut().item_spacing.x = look::PAGES;
            for page in Page::ALL {
                if look::page(ui, page.name(), desk.season_log.in_front == page).clicked() {
                    desk.season_log.in_front = page;
                }
            }
        });
    });
}

fn head(desk: &mut Desk, ui: &mut Ui, listed: &listed::Listed, this_year: i16) {
    let units = desk.document.farm().units;
    let mut without_a_plan = false;
    ui.horizontal(|ui| {
        let is_trials = desk.season_log.in_front == Page::Trials;
        ui.label(look::title(match listed.year {
            _ if is_trials => t!("season-log-trials").to_owned(),
            Some(year) if year >= this_year => t!("season-log-season-so-far", year = year),
            Some(year) => t!("season-log-season", year = year),
            None => t!("season-log-all-seasons-156").to_owned(),
        }));
        // From left to right, as Tab goes: the words between have what the acts leave.
        let mut acts = vec![t!("season-log-record-without-a-plan"), t!("season-log-import")];
        acts.extend((!desk.document.farm().records.is_empty()).then(|| t!("season-log-export")));
        let room = (ui.available_width() - boxes::width_of_acts(ui, &acts)).max(0.0);
        boxes::slot(ui, room, |ui| {
            let totals = &listed.totals;
            if is_trials {
                let words = look::soft(ui, t!("season-log-the-records-found-below-are-offered"));
                ui.add(egui::Label::new(words).truncate());
            } else if totals.passes > 0 {
                let count = totals.passes;
                let area = totals.area.show(units);
                let volume = totals.volume.show(units);
                let words = match totals.without_volume {
                    0 => t!("season-log-sprayed-of-spray", count = count, area = area, volume = volume),
                    without => t!(
                        "season-log-not-counting-without-a-volume",
                        count = count,
                        area = area,
                        volume = volume,
                        without = without
                    ),
                };
                ui.add(egui::Label::new(look::soft(ui, words)).truncate());
            }
        });
        without_a_plan = boxes::act(ui, t!("season-log-record-without-a-plan")).clicked();
        export::acts(desk, ui);
    });
    if !desk.document.farm().records.is_empty() {
        ui.add_space(4.0);
        if let Some(year) = find_line(desk, ui, listed) {
            desk.season_log.closing = Some(close::Form::new(desk, year));
        }
    }
    if without_a_plan {
        recording::record_without_plan(desk);
    }
}

/// What the list is narrowed to; gives the year whose season is to be closed.
fn find_line(desk: &mut Desk, ui: &mut Ui, listed: &listed::Listed) -> Option<i16> {
    let mut closing = None;
    let closed =
        listed.year.map(|year| (year, desk.document.farm().closed.get(&year.to_string()).map(|season| season.closed)));
    let state = &mut desk.season_log;
    ui.horizontal_wrapped(|ui| {
        let find = TextEdit::singleline(&mut state.filter)
            .hint_text(t!("season-log-find-a-field-crop-product-or"))
            .desired_width(FIND)
            .align(egui::Align2::LEFT_CENTER);
        let response = ui.add(find).accessible_name(t!("season-log-find-records"));
        let hint = t!("season-log-find-a-field-crop-product-or");
        let response = boxes::tell_hint(ui, response, state.filter.is_empty(), hint);
        if response.has_focus() && ui.input(|input| input.key_pressed(egui::Key::Escape)) {
            state.filter.clear();
        }
        let seasons: Vec<Season> =
            listed.years.iter().map(|year| Season::Year(*year)).chain(std::iter::once(Season::All)).collect();
        let mut season = listed.year.map_or(Season::All, Season::Year);
        let before = season;
        boxes::choice(ui, t!("season-log-season-c78"), &mut season, &seasons, |season| season.words(), 110.0);
        if season != before {
            state.season = season;
        }
        let words = if state.filter.trim().is_empty() {
            t!("season-log-records", count = listed.of)
        } else {
            t!("season-log-of-records", rows = listed.rows.len(), of = listed.of)
        };
        ui.label(look::soft(ui, words));
        if !state.filter.is_empty()
            && boxes::act(ui, t!("season-log-clear")).accessible_name(t!("season-log-show-all-records")).clicked()
        {
            state.filter.clear();
        }
        match closed {
            Some((_, Some(day))) => {
                ui.label(look::soft(ui, t!("season-log-closed-on", day = day)));
            }
            Some((year, None))
                if state.in_front == Page::Records
                    && state.closing.is_none()
                    && boxes::act(ui, t!("season-log-close-the-season")).clicked() =>
            {
                closing = Some(year);
            }
            _ => {}
        }
    });
    closing
}

fn empty(ui: &mut Ui) {
    egui::Frame::new().inner_margin(Margin::symmetric(16, 8)).show(ui, |ui| {
        look::sheet(ui).show(ui, |ui| {
            ui.set_max_width(560.0);
            ui.label(t!("season-log-nothing-is-recorded-yet-plan-a"));
        });
    });
}

fn nothing_found(state: &mut State, ui: &mut Ui, listed: &listed::Listed) {
    egui::Frame::new().inner_margin(Margin::symmetric(16, 8)).show(ui, |ui| {
        let words = match (listed.of, listed.year) {
            (0, Some(year)) => t!("season-log-nothing-is-recorded-in", year = year),
            _ => t!("season-log-no-record-holds", filter = state.filter.trim()),
        };
        ui.label(look::soft(ui, words));
    });
}
