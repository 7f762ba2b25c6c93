//! The line that says what comes next on a new farm, until its first load card is issued. What is done is seen from the farm itself
//! (`tankard_core::begin`); here stand only its words, the way to the box that is next, and whether the line is hidden.

use egui::{Align, Button, Context, Frame, Label, Layout, Margin, Panel, Ui};
use tankard_core::begin::{self, Next, Step};
use tankard_core::farm::{Id, Place};
use tankard_core::finding::Level;
use tankard_core::t;

use super::Desk;
use crate::command::{Command, View};
use crate::look;
use crate::parts::boxes;
use crate::views::tank_loads::{Editor, Page};
use crate::views::{fields, shed, tank_loads};

/// Height of the line.
const LINE: f32 = 30.0;

/// What is known of it.
#[derive(Debug, Default)]
pub(super) struct State {
    /// A preference of who sits at the desk, not of the farm.
    pub(super) is_hidden: bool,
    /// For which farm, in which revision and with how many cards it was looked at: issuing them is no edit.
    made_for: Option<(u64, u64, usize)>,
    next: Option<Next>,
    /// The farm had steps to take since it was opened, so that it is said when the last one is taken.
    was_open: Option<u64>,
    /// It is said that all are taken, until the view changes.
    finished: Option<View>,
}

/// The sentence of what comes next, and the act that leads there.
fn words(next: &Next) -> (&'static str, &'static str) {
    match next {
        Next::Units => (t!("app-name-units-and-place-come-first"), t!("app-type-the-name")),
        Next::Latitude => (t!("app-where-the-farm-lies-its-latitude"), t!("app-type-the-latitude")),
        Next::Longitude => (t!("app-where-the-farm-lies-its-longitude"), t!("app-type-the-longitude")),
        Next::Zone => (t!("app-the-time-zone-of-the-farm"), t!("app-type-the-time-zone")),
        Next::Field => (t!("app-your-first-field-typed-or-from"), t!("app-type-a-field")),
        Next::FieldName(_) => (t!("app-your-first-field-its-name"), t!("app-type-its-name")),
        Next::FieldArea(_) => (t!("app-your-first-field-its-area-then"), t!("app-type-its-area")),
        Next::Rig => (t!("app-your-sprayer-its-tank-its-boom"), t!("app-add-the-sprayer")),
        Next::RigName(_) => (t!("app-your-sprayer-its-name-the-tank"), t!("app-type-its-name")),
        Next::RigTank(_) => (t!("app-your-sprayer-what-its-tank-holds"), t!("app-type-the-tank")),
        Next::RigBoom(_) => (t!("app-your-sprayer-how-wide-its-boom-is"), t!("app-type-the-boom")),
        Next::RigNozzles(_) => (t!("app-your-sprayer-its-nozzle-set"), t!("app-add-a-nozzle-set")),
        Next::Water => (t!("app-the-water-that-you-spray-with"), t!("app-add-the-water")),
        Next::WaterAnalysis(_) => (t!("app-your-water-calcium-and-magnesium-or"), t!("app-type-its-calcium")),
        Next::Product => (t!("app-your-first-product-typed-in-the"), t!("app-add-a-product")),
        Next::ProductName(_) => (t!("app-your-first-product-its-name-as"), t!("app-type-its-name")),
        Next::ProductActive(_) => (t!("app-your-first-product-its-actives"), t!("app-type-its-active")),
        Next::ProductRate(_) => (t!("app-your-first-product-its-rate-and"), t!("app-type-its-rate")),
        Next::Pass => (t!("app-your-first-pass-which-fields-get"), t!("app-plan-a-pass")),
        Next::PassFields(_) => (t!("app-your-first-pass-which-fields-it"), t!("app-choose-the-fields")),
        Next::PassWater(_) => (t!("app-your-first-pass-which-water-it"), t!("app-choose-the-water")),
        Next::PassRig(_) => (t!("app-your-first-pass-which-sprayer-it"), t!("app-choose-the-sprayer")),
        Next::PassCarrier(_) => (t!("app-your-first-pass-how-much-spray"), t!("app-type-the-spray-volume")),
        Next::PassMix(_) => (t!("app-your-first-pass-what-goes-into"), t!("app-add-a-product-to-it")),
        Next::PassRate(..) => (t!("app-your-first-pass-the-rate-of"), t!("app-type-the-rate")),
        Next::Card(_) => (t!("app-your-first-load-card-look-at"), t!("app-go-to-the-card")),
    }
}

impl Desk {
    /// What comes next, looked at once for a state of the farm.
    fn next_step(&mut self) -> Option<Next> {
        let made_for = (self.farm_number, self.document.revision(), self.document.farm().cards.len());
        if self.first_steps.made_for != Some(made_for) {
            let next = begin::next(self.document.farm());
            let known = &mut self.first_steps;
            known.made_for = Some(made_for);
            if next.is_some() {
                (known.was_open, known.finished) = (Some(self.farm_number), None);
            } else if known.was_open.take() == Some(self.farm_number) && !self.document.farm().cards.is_empty() {
                known.finished = Some(self.view);
            }
            known.next = next;
        }
        self.first_steps.next.clone()
    }

    /// The line, while there is something to say.
    pub(super) fn show_first_steps(&mut self, ui: &mut Ui) {
        let next = self.next_step();
        if self.first_steps.is_hidden || self.is_for_reading() {
            return;
        }
        if self.first_steps.finished.is_some_and(|view| view != self.view) {
            self.first_steps.finished = None;
        }
        if next.is_none() && self.first_steps.finished.is_none() {
            return;
        }
        let sheet = look::colours(ui).sheet;
        let frame = Frame::new().fill(sheet).inner_margin(Margin::symmetric(16, 0));
        let mut wanted = None;
        Panel::top("first steps").exact_size(LINE).frame(frame).show(ui, |ui| {
            ui.horizontal(|ui| {
                ui.set_min_height(LINE);
                match &next {
                    Some(next) => self.coming(ui, next, &mut wanted),
                    None => self.all_taken(ui),
                }
            });
        });
        if let Some(command) = wanted {
            self.run(command, ui.ctx());
        }
    }

    fn coming(&mut self, ui: &mut Ui, next: &Next, wanted: &mut Option<Command>) {
        let (mut says, mut act) = (words(next).0.to_owned(), words(next).1);
        // What is wrong with a place says more than that one is wanted.
        if let (Next::Longitude, Some(place)) = (next, &self.document.farm().place)
            && !place.longitude.trim().is_empty()
            && let Err(problem) = place.position()
        {
            says = format!("{problem}.");
            act = t!("app-type-it-anew");
        }
        if let Next::Card(id) = next {
            let stops = self.document.plan(id).map_or(0, |plan| plan.count(Level::Stop));
            if stops > 0 {
                says = if stops == 1 {
                    t!("app-your-first-load-card-waits-for").to_owned()
                } else {
                    t!("app-your-first-load-card-waits-for-stops-stops-a", stops = stops)
                };
                act = t!("app-go-to-the-pass");
            }
        }
        let place = t!("app-step-of", number = next.step().number(), all = Step::ALL.len());
        ui.label(look::heading(place).color(look::colours(ui).soft));
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            ui.spacing_mut().item_spacing.x = 14.0;
            if boxes::act(ui, t!("app-hide"))
                .on_hover_text(t!("app-menu-farm-shows-it-again"))
                .accessible_name(t!("app-hide-the-first-steps"))
                .clicked()
            {
                *wanted = Some(Command::FirstSteps);
            }
            if *next == Next::Field
                && boxes::act(ui, t!("app-from-a-file")).on_hover_text(Command::ImportBoundaries.text()).clicked()
            {
                *wanted = Some(Command::ImportBoundaries);
            }
            // The sentence comes first for whoever has it read out, and takes the room that is left.
            if boxes::act(ui, act).on_hover_text("F3").clicked() {
                *wanted = Some(Command::NextStep);
            }
            ui.with_layout(Layout::left_to_right(Align::Center), |ui| {
                ui.add(Label::new(&says).truncate()).on_hover_text(&says);
            });
        });
    }

    fn all_taken(&mut self, ui: &mut Ui) {
        ui.label(t!("app-your-first-load-card-is-issued"));
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            if boxes::act(ui, t!("app-good")).accessible_name(t!("app-good-put-the-first-steps-away")).clicked() {
                self.first_steps.finished = None;
            }
        });
    }

    /// The entry of the menu, while there are steps to take.
    pub(super) fn first_steps_entry(&self, ui: &mut Ui, wanted: &mut Option<Command>) {
        if self.first_steps.next.is_none() {
            return;
        }
        let mark = if self.first_steps.is_hidden { t!("app-show") } else { t!("app-hide") };
        let text = Command::FirstSteps.text();
        if ui.add(Button::new(format!("{mark}: {text}")).frame(false)).clicked() {
            *wanted = Some(Command::FirstSteps);
            ui.close();
        }
    }

    /// A farm that was just begun leads to its first box.
    pub(super) fn begin_farm(&mut self, ctx: &Context) {
        self.first_steps.is_hidden = false;
        self.go_on(ctx);
    }

    /// Goes to the view that comes next and gives the keyboard to the box that is next.
    pub(super) fn go_on(&mut self, ctx: &Context) {
        let Some(next) = self.next_step() else { return };
        // The line at the top says more than any other page while one goes on.
        self.backups = None;
        match &next {
            Next::Units | Next::Latitude | Next::Longitude | Next::Zone => {
                self.view = View::Shed;
                self.shed.choose_farm();
            }
            Next::Field => fields::begin(self),
            Next::FieldName(id) | Next::FieldArea(id) => fields::go_on(self, id),
            Next::Rig => shed::begin_rig(self),
            Next::Water => shed::begin_water(self),
            Next::Product => shed::begin_product(self),
            Next::RigName(id) | Next::RigTank(id) | Next::RigBoom(id) => {
                self.lead_to(&tankard_core::finding::Subject::Rig(id.clone()));
            }
            Next::RigNozzles(id) => {
                self.view = View::Shed;
                self.shed.choose_nozzles(id);
            }
            Next::WaterAnalysis(id) => self.lead_to(&tankard_core::finding::Subject::Water(id.clone())),
            Next::ProductName(id) | Next::ProductActive(id) | Next::ProductRate(id) => {
                self.view = View::Shed;
                self.shed.fill_in(id);
            }
            Next::Pass => {
                self.view = View::TankLoads;
                tank_loads::begin(self);
            }
            Next::PassFields(id) => self.go_to_pass(id, Some(Editor::Fields)),
            Next::PassWater(id) => self.go_to_pass(id, Some(Editor::Water)),
            Next::PassRig(id) | Next::PassCarrier(id) => self.go_to_pass(id, Some(Editor::Rig)),
            Next::PassMix(id) | Next::PassRate(id, _) => self.go_to_pass(id, None),
            Next::Card(id) => {
                self.go_to_pass(id, None);
                if self.document.plan(id).is_some_and(|plan| plan.count(Level::Stop) == 0) {
                    self.tank_loads.page = Page::Cards;
                }
            }
        }
        let name = self.box_of(&next);
        if !name.is_empty() {
            boxes::want(ctx, &name);
        }
    }

    pub(super) fn go_to_pass(&mut self, id: &Id, editor: Option<Editor>) {
        self.view = View::TankLoads;
        self.tank_loads.choose(id);
        self.tank_loads.page = Page::Plan;
        self.tank_loads.editor = editor;
    }

    /// The name of the box that is next; empty where the view sees to it itself.
    fn box_of(&self, next: &Next) -> String {
        let farm = self.document.farm();
        match next {
            Next::Units => t!("shed-name-of-the-farm").to_owned(),
            Next::Latitude => t!("shed-latitude").to_owned(),
            Next::Longitude => {
                let alone = farm.place.clone().map(|place| Place { longitude: "0".to_owned(), ..place });
                let is_latitude = alone.is_some_and(|place| place.position().is_err());
                if is_latitude { t!("shed-latitude") } else { t!("shed-longitude") }.to_owned()
            }
            Next::Zone => t!("shed-time-zone").to_owned(),
            Next::FieldArea(id) => {
                t!("fields-area-of", name = farm.fields.get(id).map_or("", |field| field.name.as_str()))
            }
            Next::Rig | Next::RigName(_) => t!("shed-name-of-the-rig").to_owned(),
            Next::RigTank(_) => t!("shed-full-to-its-mark").to_owned(),
            Next::RigBoom(_) => t!("shed-working-width").to_owned(),
            Next::RigNozzles(_) => t!("shed-add-a-nozzle-set").to_owned(),
            Next::Water => t!("shed-name-of-the-water").to_owned(),
            Next::WaterAnalysis(_) => t!("shed-calcium").to_owned(),
            Next::Product | Next::ProductName(_) => t!("shed-name-of-the-product").to_owned(),
            Next::ProductActive(_) => t!("shed-active-n", n = 1),
            Next::ProductRate(_) => t!("shed-rate-at-least").to_owned(),
            Next::Pass | Next::PassFields(_) => t!("tank-loads-add-a-field").to_owned(),
            Next::PassCarrier(_) => t!("tank-loads-spray-volume-over-ground").to_owned(),
            Next::PassMix(_) => t!("tank-loads-add-a-product-to-the-mix").to_owned(),
            Next::PassRate(_, product) => {
                t!(
                    "tank-loads-rate-of",
                    name = farm.products.get(product).map_or(product.as_str(), |product| product.name.as_str())
                )
            }
            Next::Card(_) => t!("tank-loads-issue-and-save-as-pdf").to_owned(),
            Next::Field | Next::FieldName(_) | Next::PassWater(_) | Next::PassRig(_) => String::new(),
        }
    }
}
