//! Tank loads: passes by day at the left; the pass in the middle with its mix, loads and gauge; what there is to settle
//! and the working at the right.

mod adjuvants;
pub mod cards;
mod compare;
mod day;
mod evening;
pub mod forecast;
mod heading;
pub(crate) mod hours;
pub mod jar;
mod loads;
mod mix;
mod passes;
mod preview;
mod rest;
mod settle;
pub(crate) mod sprayer;

use std::collections::{HashMap, HashSet};
use std::sync::Arc;

use egui::{CentralPanel, Frame, Margin, Panel, ScrollArea, Ui, Vec2};
use jiff::civil::{Date, DateTime};
use tankard_core::farm::Id;
use tankard_core::language::spoken;
use tankard_core::loads::gauge::gauge;
use tankard_core::plan::Plan;
use tankard_core::quantity::Quantity;
use tankard_core::t;

use crate::app::{self, Desk};
use crate::look;
use crate::parts::{boxes, lists, offers, spoken};

/// The pages of a pass.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Page {
    /// The plan.
    #[default]
    Plan,
    /// How the rig is set, rinsed and how long it takes.
    Sprayer,
    /// When it may be sprayed.
    Hours,
    /// Its load cards.
    Cards,
    /// Its jar test.
    Jar,
}

/// Which editor of the heading line is open.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Editor {
    /// Which fields, and how much of each.
    Fields,
    /// Which water.
    Water,
    /// Which rig, and how it is set.
    Rig,
    /// Which weeds, and how crop and weeds stand on the day.
    Day,
    /// What is left of the pass, where the field is not what the map said.
    Rest,
}

impl Editor {
    /// All of them.
    pub const ALL: [Self; 5] = [Self::Fields, Self::Water, Self::Rig, Self::Day, Self::Rest];
}

/// Which number's working is shown.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Shown {
    /// A working of the plan, by title.
    Titled(String),
    /// The amount of a product in the chosen load.
    InLoad(String),
    /// The amount of a product in the chosen jar.
    InJar(String),
}

/// What is chosen in this view.
#[derive(Default)]
pub struct State {
    /// Id of the chosen pass.
    pub chosen: Option<String>,
    /// The day that is looked at as a whole, in place of the pass.
    pub day: Option<Date>,
    /// Number of the chosen load.
    pub load: u32,
    /// The page in use.
    pub page: Page,
    /// The open editor.
    pub editor: Option<Editor>,
    /// The working shown.
    pub working: Option<Shown>,
    /// The set of adjuvants that is compared with the one in the mix.
    pub compared: Option<String>,
    /// The nozzle set whose picture is drawn; none for the pass's own.
    pub set: Option<String>,
    /// The hour that is looked at, and whether it is the second of two that the clock shows alike; none for the best.
    pub hour: Option<(DateTime, bool)>,
    pub(crate) kept: hours::Kept,
    pub(crate) other: compare::Other,
    /// A pass about to be removed.
    pub removing: bool,
    /// In which order the passes of a day stand, as it was reckoned last.
    pub(crate) orders: HashMap<Date, Vec<Id>>,
    /// What the rows of passes said last.
    pub(crate) rows: HashMap<Id, passes::Row>,
    /// The days of which a row was in view; none before the list was drawn.
    pub(crate) in_view: Option<HashSet<Date>>,
    /// Whether the list still has to come to what was chosen.
    pub reveal: bool,
    /// What the file now asked for is to hold; none where no file is asked for.
    pub printing: Option<cards::Printing>,
    /// What came differently from the plan, as far as it is typed.
    pub(crate) rest: rest::Form,
    pub(crate) day_kept: evening::Kept,
    /// What is chosen on the page of the jar test.
    pub jar: jar::Choice,
    /// A forecast that is being read or typed.
    pub(crate) forecast: forecast::State,
    pub(crate) contents: cards::Contents,
    pub(crate) standing: cards::Standing,
    pub(crate) preview: preview::Preview,
}

impl State {
    /// Chooses a pass, which then stands in place of a day.
    pub fn choose(&mut self, id: &str) {
        self.day = None;
        if self.chosen.as_deref() != Some(id) {
            // A file asked for is still to hold what it was asked for.
            let jar = std::mem::take(&mut self.jar);
            let forecast = std::mem::take(&mut self.forecast);
            // Nor does the list of all passes hang on which one is chosen.
            let (orders, rows) = (std::mem::take(&mut self.orders), std::mem::take(&mut self.rows));
            let (page, printing, in_view) = (self.page, self.printing.take(), self.in_view.take());
            *self = Self { page, orders, rows, in_view, printing, jar, forecast, ..Self::default() };
            self.chosen = Some(id.to_owned());
        }
        self.load = 1;
    }
}

/// Plans a pass, which then is open at its fields.
pub fn begin(desk: &mut Desk) {
    passes::add(desk);
    desk.tank_loads.page = Page::Plan;
}

/// Shows the view.
pub fn show(desk: &mut Desk, ui: &mut Ui) {
    if desk.tank_loads.chosen.as_ref().is_none_or(|id| !desk.document.farm().passes.contains_key(id)) {
        let first = passes::by_day(desk.document.farm()).first().cloned();
        match first {
            Some(id) => desk.tank_loads.choose(&id),
            None => desk.tank_loads.chosen = None,
        }
    }
    // On a small screen, or scaled up, the columns at the sides give way and the gauge stands below the mix.
    let narrow = ui.available_width() < 1150.0;
    let frame = Frame::new().inner_margin(Margin { left: 12, right: 8, top: 10, bottom: 8 });
    match desk.list.shown(ui.ctx()) {
        app::Shown::Both => {
            let panel = Panel::left("passes").exact_size(if narrow { 178.0 } else { 212.0 }).resizable(false);
            panel.frame(frame).show(ui, |ui| passes::show(desk, ui));
        }
        app::Shown::Page => {}
        app::Shown::List => {
            let before = (desk.tank_loads.chosen.clone(), desk.tank_loads.day);
            CentralPanel::default().frame(frame).show(ui, |ui| passes::show(desk, ui));
            if lists::take_clicked(ui.ctx()) || before != (desk.tank_loads.chosen.clone(), desk.tank_loads.day) {
                desk.list.page_in_front();
                ui.ctx().request_repaint();
            }
            return;
        }
    }
    if let Some(date) = desk.tank_loads.day {
        side(ui, narrow, |ui| evening::settle(desk, ui, date));
        centre(ui, |ui| evening::show(desk, ui, date));
        return;
    }
    let Some(id) = desk.tank_loads.chosen.clone() else {
        centre(ui, |ui| empty(desk, ui));
        return;
    };
    let Some(plan) = desk.document.plan(&id) else { return };
    offers::set(ui.ctx(), &plan.findings);
    if desk.tank_loads.load == 0 || desk.tank_loads.load as usize > plan.loads.len() {
        desk.tank_loads.load = 1;
    }
    side(ui, narrow, |ui| settle::show(desk, ui, &plan));
    centre(ui, |ui| {
        if !heading::show(desk, ui, &id, &plan) {
            return;
        }
        ui.add_space(4.0);
        match desk.tank_loads.page {
            Page::Plan => page(desk, ui, &id, &plan),
            Page::Sprayer => sprayer::show(desk, ui, &id, &plan),
            Page::Hours => hours::show(desk, ui, &id, &plan),
            Page::Cards => cards::show(desk, ui, &id, &plan),
            Page::Jar => jar::show(desk, ui, &plan),
        }
    });
}

/// What there is to settle, at the right.
fn side(ui: &mut Ui, narrow: bool, add: impl FnOnce(&mut Ui)) {
    Panel::right("settle")
        .exact_size(if narrow { 214.0 } else { 276.0 })
        .resizable(false)
        .frame(Frame::new().inner_margin(Margin { left: 12, right: 14, top: 10, bottom: 10 }))
        .show_separator_line(false)
        .show(ui, add);
}

fn centre(ui: &mut Ui, add: impl FnOnce(&mut Ui)) {
    let margin = Margin { left: 14, right: 2, top: 8, bottom: 10 };
    CentralPanel::default().frame(Frame::new().inner_margin(margin)).show(ui, add);
}

fn empty(desk: &mut Desk, ui: &mut Ui) {
    ui.label(look::title(t!("tank-loads-no-pass-is-planned-yet")));
    let farm = desk.document.farm();
    let missing: Vec<&str> = [
        (farm.fields.is_empty(), t!("tank-loads-its-fields-in-fields")),
        (farm.products.is_empty(), t!("tank-loads-its-products-in-shed")),
        (farm.waters.is_empty(), t!("tank-loads-its-water-in-shed")),
        (farm.rigs.is_empty(), t!("tank-loads-its-sprayer-in-shed")),
    ]
    .into_iter()
    .filter_map(|(lacks, what)| lacks.then_some(what))
    .collect();
    if missing.is_empty() {
        ui.label(t!("tank-loads-plan-the-first-one-at-the"));
    } else {
        ui.label(t!("tank-loads-a-pass-needs-what-the-farm", missing = missing.join(", ")));
        lists::empty(ui, t!("tank-loads-the-demo-farm-shows-how-it"));
    }
}

/// Room between the loads and the gauge.
const GAUGE_GAP: f32 = 12.0;
/// Room at the right of a page, in which it scrolls.
const EDGE: f32 = 12.0;
/// The part of it in which the bar that scrolls stands.
const BAR: f32 = 8.0;

/// The plan page: mix and loads at the left, the gauge of the chosen load at the right, or below where room is short.
fn page(desk: &mut Desk, ui: &mut Ui, id: &str, plan: &Arc<Plan>) {
    let height = ui.available_height();
    let width = ui.available_width();
    // It ends where the sheets of the other pages end.
    let gauge_width = 236.0;
    if width < 760.0 {
        ScrollArea::both().id_salt("mix and loads").auto_shrink(false).min_scrolled_height(0.0).show(ui, |ui| {
            ui.set_width(width - 10.0);
            mix::show(desk, ui, id, plan);
            ui.add_space(look::GRID);
            adjuvants::show(desk, ui, id, plan);
            ui.add_space(look::GRID);
            loads::show(desk, ui, id, plan);
            ui.add_space(look::GRID);
            gauge_sheet(desk, ui, id, plan, 460.0);
        });
        return;
    }
    let left = width - gauge_width - GAUGE_GAP - EDGE;
    ui.horizontal_top(|ui| {
        ui.spacing_mut().item_spacing.x = GAUGE_GAP - BAR;
        let down = egui::Layout::top_down(egui::Align::Min);
        // The bar that scrolls stands in the gap, and not over the edges of the sheets.
        ui.allocate_ui_with_layout(Vec2::new(left + BAR, height), down, |ui| {
            ui.set_min_size(Vec2::new(left + BAR, height));
            ui.spacing_mut().item_spacing.x = look::GRID;
            ScrollArea::vertical().id_salt("mix and loads").auto_shrink(false).max_height(height).show(ui, |ui| {
                ui.set_width(left);
                mix::show(desk, ui, id, plan);
                ui.add_space(look::GRID);
                adjuvants::show(desk, ui, id, plan);
                ui.add_space(look::GRID);
                loads::show(desk, ui, id, plan);
            });
        });
        ui.allocate_ui_with_layout(Vec2::new(gauge_width, height), down, |ui| gauge_sheet(desk, ui, id, plan, height));
    });
}

fn gauge_sheet(desk: &mut Desk, ui: &mut Ui, id: &str, plan: &Plan, height: f32) {
    look::sheet(ui).show(ui, |ui| {
        ui.set_min_height((height - 18.0).max(0.0));
        ui.set_width(ui.available_width());
        let number = desk.tank_loads.load;
        let farm = desk.document.farm();
        let units = farm.units;
        let tank = farm.passes.get(id).and_then(|pass| farm.rigs.get(&pass.rig)).map(|rig| rig.tank.value());
        let load = plan.loads.iter().find(|load| load.number == number);
        if let (Some(load), Some(tank)) = (load, tank) {
            ui.label(look::heading(t!("tank-loads-load-as-it-goes-in", number = number)));
            ui.add_space(4.0);
            let drawn = gauge(
                load,
                &plan.names,
                farm.passes.get(id).map(|pass| pass.carrier_kind).unwrap_or_default(),
                tank,
                units,
                &[spoken()],
            );
            let room = Vec2::new(ui.available_width(), (height - 60.0).max(200.0));
            crate::parts::gauge::show(ui, &drawn, &tank.show(units), room);
        } else {
            ui.label(look::heading(t!("tank-loads-the-tank")));
            lists::empty(ui, t!("tank-loads-the-gauge-fills-when-the-pass"));
        }
    });
}

/// A sheet as wide as its page.
pub(crate) fn sheet(ui: &mut Ui, add: impl FnOnce(&mut Ui)) {
    look::sheet(ui).show(ui, |ui| {
        ui.set_width(ui.available_width());
        add(ui);
    });
}

/// A number that has a working: underlined by a hairline on hover, opened by a click.
pub(crate) fn worked(ui: &mut Ui, text: impl Into<String>, name: &str) -> bool {
    worked_in(ui, &text.into(), name, egui::TextWrapMode::Extend)
}

fn worked_in(ui: &mut Ui, text: &str, name: &str, wrap: egui::TextWrapMode) -> bool {
    // A button, so that the keyboard reaches it too; without the room of one, so that figures stay in line, and never broken
    // between two lines.
    let padding = std::mem::take(&mut ui.spacing_mut().button_padding);
    let button = egui::Button::new(text).frame(false).wrap_mode(wrap);
    let response = ui.add(button).accessible_name(t!("tank-loads-show-working", name = name, text = text));
    ui.spacing_mut().button_padding = padding;
    if response.hovered() || response.has_focus() {
        let colour = look::colours(ui).brass;
        ui.painter().hline(response.rect.x_range(), response.rect.bottom(), egui::Stroke::new(1.0, colour));
    }
    response.on_hover_cursor(egui::CursorIcon::PointingHand).clicked()
}

/// A sentence that has a working, in soft ink.
pub(crate) fn worked_soft(ui: &mut Ui, text: &str, name: &str) -> bool {
    let soft = look::colours(ui).soft;
    ui.scope(|ui| {
        ui.visuals_mut().override_text_color = Some(soft);
        ui.style_mut().override_text_style = Some(egui::TextStyle::Small);
        worked_in(ui, text, name, egui::TextWrapMode::Wrap)
    })
    .inner
}

/// A cell of a table, of a width, set to one side.
pub(crate) fn cell(ui: &mut Ui, width: f32, right: bool, add: impl FnOnce(&mut Ui)) {
    let layout = if right {
        egui::Layout::right_to_left(egui::Align::Center)
    } else {
        egui::Layout::left_to_right(egui::Align::Center)
    };
    ui.allocate_ui_with_layout(Vec2::new(width, look::ROW), layout, |ui| {
        ui.set_min_width(width);
        ui.set_max_width(width);
        add(ui);
    });
}

/// A column of a width, which grows downwards with what stands in it.
pub(crate) fn column(ui: &mut Ui, width: f32, add: impl FnOnce(&mut Ui)) {
    ui.allocate_ui_with_layout(Vec2::new(width, 10.0), egui::Layout::top_down(egui::Align::Min), |ui| {
        ui.set_min_width(width);
        ui.set_max_width(width);
        add(ui);
    });
}

/// The act that opens and closes an editor in place.
pub(crate) fn toggle(ui: &mut Ui, open: bool, text: &str) -> bool {
    let response = boxes::act(ui, text);
    if open {
        ui.painter().hline(
            response.rect.x_range(),
            response.rect.bottom(),
            egui::Stroke::new(2.0, look::colours(ui).brass),
        );
    }
    spoken::expanded(&response, open);
    response.clicked()
}
