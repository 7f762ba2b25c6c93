//! The season review: what the records of a season, or of several, come to. Which records count is chosen at the top; the pages
//! are at the left.

mod adjuvants;
mod cost;
mod groups;
mod kept;
mod laid;
mod outcomes;
mod overview;
mod paper;
mod planned;
mod products;
mod table;
mod trials;
mod weather;
mod work;

use std::rc::Rc;

use egui::{CentralPanel, Frame, Margin, Panel, ScrollArea, Ui, Vec2};
use tankard_core::finding::Subject;
use tankard_core::season::review::Figures;
use tankard_core::season::review::words;
use tankard_core::t;

use crate::app::Desk;
use crate::keys::page;
use crate::look;
use crate::parts::chart::Chart;
use crate::parts::chart_rows::{self, Lying};
use crate::parts::{boxes, lists};
use kept::Pages;

pub use kept::{Asked, Kept};

/// Width of the list of pages, and where the window is small.
const LIST: (f32, f32) = (184.0, 166.0);
/// Width of a window that is small.
const SMALL: f32 = 1000.0;
/// Below this width the choices take two lines.
const TWO_LINES: f32 = 780.0;
/// From this width on two charts stand beside one another.
const WIDE: f32 = 820.0;
/// How many bars a chart has at most; the table below has all.
const MOST: usize = 10;

/// What is said where no record has a product.
fn no_product() -> &'static str {
    t!("season-log-no-record-has-a-product")
}

/// The pages.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Page {
    /// Passes and ground.
    #[default]
    Overview,
    /// Products and actives.
    Products,
    /// Resistance groups.
    Groups,
    /// Adjuvants.
    Adjuvants,
    /// Planned against applied.
    Planned,
    /// The weather at application.
    Weather,
    /// What it cost.
    Cost,
    /// Water and hours.
    Work,
    /// Ratings.
    Outcomes,
    /// Trials.
    Trials,
}

impl Page {
    const ALL: [Self; 10] = [
        Self::Overview,
        Self::Products,
        Self::Groups,
        Self::Adjuvants,
        Self::Planned,
        Self::Weather,
        Self::Cost,
        Self::Work,
        Self::Outcomes,
        Self::Trials,
    ];

    fn name(self) -> &'static str {
        match self {
            Self::Overview => t!("season-log-overview"),
            Self::Products => t!("season-log-products-and-actives"),
            Self::Groups => t!("season-log-resistance-groups"),
            Self::Adjuvants => t!("season-log-adjuvants"),
            Self::Planned => t!("season-log-planned-and-applied"),
            Self::Weather => t!("season-log-weather"),
            Self::Cost => t!("season-log-cost"),
            Self::Work => t!("season-log-water-and-hours"),
            Self::Outcomes => t!("season-log-outcomes"),
            Self::Trials => t!("season-log-trials"),
        }
    }
}

/// What is chosen in the review.
#[derive(Debug, Default)]
pub struct State {
    /// The page in use.
    pub page: Page,
    /// Which records count.
    pub asked: Asked,
    kept: Option<Kept>,
    laid: laid::Laid,
    products: products::State,
    groups: groups::State,
    cost: cost::By,
    weather: weather::State,
    outcomes: outcomes::State,
    paper: paper::State,
}

impl State {
    /// The review as it was shown last.
    pub const fn kept(&self) -> Option<&Kept> {
        self.kept.as_ref()
    }
}

/// What every page is shown from.
struct Shown<'a> {
    pages: &'a Pages,
    figures: &'a Figures,
    this_year: i16,
    this_month: i8,
}

/// Shows the review of a farm that has records.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui) {
    let today = desk.now().date();
    let revision = desk.document.revision();
    let Some(index) = laid::of(desk, revision) else {
        laid::wait(desk, ui);
        return;
    };
    let farm = desk.document.farm();
    let state = &mut desk.season_log.review;
    state.kept = kept::fresh(state.kept.take(), &index, revision, &mut state.asked, today.year());
    let Some(mut kept) = state.kept.take() else { return };
    let mut printing = false;
    let frame = Frame::new().inner_margin(Margin { left: 16, right: 16, top: 8, bottom: 8 });
    Panel::top("review choices")
        .frame(frame)
        .show_separator_line(false)
        .show(ui, |ui| printing = choices(state, &kept, ui));
    let list = if ui.available_width() < SMALL { LIST.1 } else { LIST.0 };
    Panel::left("review pages")
        .exact_size(list)
        .resizable(false)
        .frame(Frame::new().inner_margin(Margin { left: 8, right: 4, top: 4, bottom: 8 }))
        .show(ui, |ui| {
            ScrollArea::vertical().show(ui, |ui| {
                for page in Page::ALL {
                    let chosen = state.page == page;
                    let row = lists::row(ui, chosen, page.name(), |ui| {
                        let text = if chosen { look::strong(page.name()) } else { page.name().into() };
                        ui.add(egui::Label::new(text).truncate());
                    });
                    if row.clicked() {
                        state.page = page;
                    }
                }
            });
        });
    let pages = Rc::clone(&kept.pages);
    let figures = Figures { units: farm.units, currency: farm.currency.clone() };
    let shown = Shown { pages: &pages, figures: &figures, this_year: today.year(), this_month: today.month() };
    let mut led = None;
    let margin = Margin { left: 14, right: 4, top: 4, bottom: 8 };
    CentralPanel::default().frame(Frame::new().inner_margin(margin)).show(ui, |ui| {
        let page = state.page;
        // Each page keeps its own place.
        ScrollArea::vertical().id_salt(("review", page)).auto_shrink(false).show(ui, |ui| {
            ui.set_width(ui.available_width() - 12.0);
            by_keys(ui);
            ui.label(look::title(page.name()));
            if pages.records == 0 && page != Page::Trials {
                ui.label(t!("season-log-no-record-fits-what-is-chosen"));
                return;
            }
            ui.spacing_mut().item_spacing.y = 6.0;
            match page {
                Page::Overview => overview::show(ui, &shown),
                Page::Products => products::show(ui, &mut state.products, &shown),
                Page::Groups => groups::show(ui, &mut state.groups, &kept, &shown),
                Page::Adjuvants => adjuvants::show(ui, &shown),
                Page::Planned => led = planned::show(ui, &shown),
                Page::Weather => led = weather::show(ui, &mut state.weather, &kept, farm, &shown),
                Page::Cost => cost::show(ui, &mut state.cost, &shown),
                Page::Work => work::show(ui, &shown),
                Page::Outcomes => outcomes::show(ui, &mut state.outcomes, &mut kept, &shown),
                Page::Trials => trials::show(ui, &kept.trials(farm)),
            }
            ui.add_space(look::GRID);
        });
    });
    let choice = printing.then(|| kept.choice.clone());
    state.kept = Some(kept);
    if let Some(choice) = choice {
        paper::ask(desk, choice, ui);
    }
    if let Some(subject) = led {
        desk.lead_to(&subject);
    }
}

/// Saves the review that was asked for where the user said.
pub fn save(desk: &mut Desk, path: std::path::PathBuf) {
    let path = if path.extension().is_some() { path } else { path.with_extension("pdf") };
    paper::save(desk, path);
}

/// Which records count, and at the right the act that prints them; whether that was clicked.
fn choices(state: &mut State, kept: &Kept, ui: &mut Ui) -> bool {
    let mut printing = false;
    let line = |ui: &mut Ui, add: &mut dyn FnMut(&mut Ui)| {
        ui.horizontal(|ui| {
            ui.set_min_height(look::ROW);
            add(ui);
        });
    };
    let mut to_paper = |ui: &mut Ui| {
        let right = egui::Layout::right_to_left(egui::Align::Center);
        printing = ui.with_layout(right, paper::act).inner;
    };
    if ui.available_width() < TWO_LINES {
        line(ui, &mut |ui| {
            seasons(state, kept, ui);
            to_paper(ui);
        });
        line(ui, &mut |ui| field_and_crop(state, kept, ui));
    } else {
        line(ui, &mut |ui| {
            seasons(state, kept, ui);
            field_and_crop(state, kept, ui);
            to_paper(ui);
        });
    }
    printing
}

fn seasons(state: &mut State, kept: &Kept, ui: &mut Ui) {
    let (mut from, mut to) = kept.seasons;
    ui.label(look::soft(ui, t!("season-log-head-seasons")));
    boxes::choice(ui, t!("season-log-from-season"), &mut from, &kept.years, i16::to_string, 74.0);
    ui.label(look::soft(ui, t!("season-log-head-to")));
    boxes::choice(ui, t!("season-log-to-season"), &mut to, &kept.years, i16::to_string, 74.0);
    if (from, to) != kept.seasons {
        // The end that was chosen last holds.
        let last = if from == kept.seasons.0 { to } else { from };
        state.asked.seasons = Some(if from <= to { (from, to) } else { (last, last) });
    }
    let all = kept.years.first().copied().zip(kept.years.last().copied());
    if all != Some(kept.seasons) && boxes::act(ui, t!("season-log-all-seasons-156")).clicked() {
        state.asked.seasons = all;
    }
}

fn field_and_crop(state: &mut State, kept: &Kept, ui: &mut Ui) {
    let fields: Vec<_> = std::iter::once(None).chain(kept.fields.iter().map(|(id, _)| Some(id.clone()))).collect();
    let name = |id: &Option<String>| {
        let known = id.as_ref().map(|id| kept.fields.iter().find(|(known, _)| known == id));
        known.map_or_else(
            || t!("season-log-all-fields").to_owned(),
            |known| known.map_or_else(String::new, |(_, name)| name.clone()),
        )
    };
    boxes::choice(ui, t!("season-log-field-d07"), &mut state.asked.field, &fields, name, 170.0);
    let crops: Vec<_> = std::iter::once(None).chain(kept.crops.iter().cloned().map(Some)).collect();
    boxes::choice(ui, t!("season-log-crop"), &mut state.asked.crop, &crops, |crop| crop_name(crop.as_deref()), 130.0);
    ui.label(look::soft(ui, t!("season-log-records", count = kept.pages.records)));
}

fn crop_name(crop: Option<&str>) -> String {
    crop.map_or(t!("season-log-all-crops"), words::crop).to_owned()
}

/// A page without anything to choose is read with the keyboard, too.
fn by_keys(ui: &Ui) {
    if egui::Popup::is_any_open(ui.ctx()) {
        return;
    }
    let sight = ui.clip_rect().height() * 0.9;
    let whole = 1e6;
    let moves = [(page::DOWN, -sight), (page::UP, sight), (page::END, -whole), (page::HOME, whole)];
    for (key, by) in moves {
        if key.pressed(ui.ctx()) {
            ui.scroll_with_delta(Vec2::Y * by);
        }
    }
}

/// A part of a page, on a sheet.
fn sheet(ui: &mut Ui, heading: &str, add: impl FnOnce(&mut Ui)) {
    look::sheet(ui).show(ui, |ui| {
        ui.set_width(ui.available_width());
        ui.label(look::heading(heading));
        add(ui);
    });
}

/// Two parts beside one another where there is room, else under one another.
fn beside(ui: &mut Ui, one: impl FnOnce(&mut Ui), other: impl FnOnce(&mut Ui)) {
    if ui.available_width() < WIDE {
        one(ui);
        other(ui);
        return;
    }
    ui.columns_const(|[left, right]| {
        one(left);
        other(right);
    });
}

/// Soft sentences under a part.
fn notes(ui: &mut Ui, notes: impl IntoIterator<Item = String>) {
    for note in notes {
        ui.label(look::soft(ui, note));
    }
}

/// "the 10 with most ground of 14", where a chart leaves some out.
fn of_all(shown: usize, all: usize, by: &str) -> Option<String> {
    (shown < all).then(|| t!("season-log-the-chart-has-the-with-of", shown = shown, by = by, all = all))
}

/// Bars that lie under one another, of so many rows in all; below them which rows these are, and what hatched bars say.
fn hatched_bars(ui: &mut Ui, chart: Chart<'_>, bars: &[Lying], all: usize, by: &str, hatched: &str) {
    chart_rows::lying(ui, chart, bars);
    notes(ui, of_all(bars.len(), all, by));
    let is_hatched = bars.iter().any(|bar| bar.partial && bar.value > 0.0);
    notes(ui, is_hatched.then(|| hatched.to_owned()));
}

/// What a record is led to by.
fn record(id: &str) -> Subject {
    Subject::Record(id.to_owned())
}
