//! What the label says, statement by statement, sorted into the sections of a booklet.

use egui::{Align, Frame, Key, Margin, Stroke, Ui};
use tankard_core::farm::label::{OrderPlace, Stance};
use tankard_core::farm::{AdjuvantClass, Droplets, Id, Period, Product, Says, Statement, SunTime};
use tankard_core::mix::choice::alternatives;
use tankard_core::quantity::{AsTyped, Quantity, Units};
use tankard_core::t;

use super::{Bench, aside, conditions, cross, quiet, section, tight, word};
use crate::look;
use crate::parts::boxes;

/// The sections of the directions.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Section {
    EachPass,
    CropAndSeason,
    People,
}

impl Section {
    const ALL: [Self; 3] = [Self::EachPass, Self::CropAndSeason, Self::People];

    fn name(self) -> &'static str {
        match self {
            Self::EachPass => t!("shed-each-pass"),
            Self::CropAndSeason => t!("shed-crop-and-season"),
            Self::People => t!("shed-people"),
        }
    }
}

/// Where a kind of statement is listed, and its place there.
const fn place(says: &Says) -> (Section, u8) {
    use Section::{CropAndSeason, EachPass, People};
    match says {
        Says::Rate { .. } => (EachPass, 0),
        Says::Controls { .. } => (EachPass, 1),
        Says::Carrier { .. } => (EachPass, 2),
        Says::Droplets { .. } => (EachPass, 3),
        Says::BoomHeight { .. } => (EachPass, 4),
        Says::GroundSpeed { .. } => (EachPass, 5),
        Says::Wind { .. } => (EachPass, 6),
        Says::NotToward { .. } => (EachPass, 7),
        Says::NoInversion => (EachPass, 8),
        Says::Temperature { .. } => (EachPass, 9),
        Says::Humidity { .. } => (EachPass, 10),
        Says::DeltaT { .. } => (EachPass, 11),
        Says::Daylight { .. } => (EachPass, 12),
        Says::RainFree { .. } => (EachPass, 13),
        Says::Buffer { .. } => (EachPass, 14),
        Says::Adjuvant { .. } => (EachPass, 15),
        Says::NotWith { .. } => (EachPass, 16),
        Says::MixingOrder { .. } => (EachPass, 17),
        Says::Handling { .. } => (EachPass, 18),
        Says::CleanOut { .. } => (EachPass, 19),
        Says::CropStage => (CropAndSeason, 0),
        Says::Dates { .. } => (CropAndSeason, 1),
        Says::Applications { .. } => (CropAndSeason, 2),
        Says::SeasonTotal { .. } => (CropAndSeason, 3),
        Says::ActiveSeasonTotal { .. } => (CropAndSeason, 4),
        Says::HarvestInterval { .. } => (CropAndSeason, 5),
        Says::PlantBack { .. } => (CropAndSeason, 6),
        Says::Wear { .. } => (People, 0),
        Says::ReEntry { .. } => (People, 1),
        Says::Caution { .. } => (People, 2),
    }
}

/// A statement of every kind, to be filled in. A limit begins at nothing, which is noticed, and not at a number that may
/// be taken for the label's.
pub(super) fn blanks(is_liquid: bool, active: String, units: Units) -> Vec<Says> {
    let rate = match (is_liquid, units) {
        (true, Units::UsCustomary) => "0 fl oz/ac",
        (true, Units::Imperial) => "0 imp fl oz/ac",
        (true, Units::Metric) => "0 L/ha",
        (false, Units::Metric) => "0 kg/ha",
        (false, _) => "0 lb/ac",
    };
    let metric = units == Units::Metric;
    let mut all = vec![
        Says::Rate { least: None, most: None },
        Says::Carrier { least: None, most: None },
        Says::Droplets { finest: Droplets::Medium, coarsest: None },
        Says::RainFree { hours: 0 },
        Says::Controls { weeds: String::new() },
        Says::Temperature { least: None, most: None },
        Says::Humidity { least: None, most: None },
        Says::DeltaT { least: None, most: None },
        Says::NotToward { what: String::new() },
        Says::NoInversion,
        Says::Daylight { from: SunTime::SUNRISE, to: SunTime::SUNSET },
        Says::CleanOut { before: String::new(), how: String::new() },
        Says::Dates { from: None, to: None },
        Says::Adjuvant {
            class: AdjuvantClass::NonIonicSurfactant,
            stance: Stance::Allowed,
            least: None,
            most: None,
            at_least: None,
            at_most: None,
        },
        Says::NotWith { what: String::new(), days: 0 },
        Says::MixingOrder { place: OrderPlace::First, tank_full: None },
        Says::Handling { what: String::new() },
        Says::CropStage,
        Says::Applications { most: 1, days_apart: 0, per: Period::Year },
        Says::HarvestInterval { days: 0 },
        Says::PlantBack { next_crop: String::new(), months: 0 },
        Says::Wear { what: String::new() },
        Says::ReEntry { hours: 0 },
        Says::Caution { what: String::new() },
    ];
    if let Ok(most) = AsTyped::parse(rate) {
        all.push(Says::SeasonTotal { most, per: Period::Year });
    }
    let of_active = if metric { "0 kg ai/ha" } else { "0 lb ai/ac" };
    if let Ok(most) = AsTyped::parse(of_active) {
        all.push(Says::ActiveSeasonTotal { active, most, per: Period::Year });
    }
    if let Ok(most) = AsTyped::parse(if metric { "0 km/h" } else { "0 mph" }) {
        all.push(Says::Wind { most, least: None, gust: None });
    }
    if let Ok(most) = AsTyped::parse(if metric { "0 km/h" } else { "0 mph" }) {
        all.push(Says::GroundSpeed { most });
    }
    if let Ok(most) = AsTyped::parse(if metric { "0 cm" } else { "0 in" }) {
        all.push(Says::BoomHeight { most });
    }
    if let Ok(width) = AsTyped::parse(if metric { "0 m" } else { "0 ft" }) {
        all.push(Says::Buffer { to: String::new(), width, downwind_only: false });
    }
    all.sort_by_key(|says| place(says).1);
    all
}

/// Widths of what stands after the values.
const CROP: f32 = 82.0;
const STAGE: f32 = 56.0;
const AT: f32 = 54.0;
const ONLY_IF: f32 = 14.0;
const CROSS: f32 = 16.0;
pub(super) const GAP: f32 = 4.0;
/// Width of the choice of a period.
const PERIOD: f32 = 100.0;
/// Room for the values, below which crop, stages and place stand in a line of their own.
const ONE_LINE: f32 = 222.0;

/// Widths of what stands after the values, by what the boxes say while they are empty.
#[derive(Clone, Copy)]
struct After {
    crop: f32,
    from: f32,
    to: f32,
    at: f32,
    only_if: f32,
}

impl After {
    fn new(ui: &Ui) -> Self {
        Self {
            crop: boxes::fitting(ui, t!("shed-any-crop"), CROP),
            from: boxes::fitting(ui, t!("shed-from-hint"), STAGE),
            to: boxes::fitting(ui, t!("shed-to-hint"), STAGE),
            at: boxes::fitting(ui, t!("shed-page"), AT),
            only_if: look::width(ui, t!("shed-if")).max(ONLY_IF),
        }
    }

    fn all(self) -> f32 {
        self.crop + self.from + self.to + self.at + self.only_if + CROSS + GAP * 6.0 + look::GRID
    }
}

/// Kinds of which an empty row stands on the page of a product that is being typed, in the order of a label.
fn is_usual(says: &Says, is_pesticide: bool) -> bool {
    match says {
        Says::Rate { .. } | Says::Wear { .. } => true,
        Says::Carrier { .. }
        | Says::Droplets { .. }
        | Says::Wind { .. }
        | Says::RainFree { .. }
        | Says::Applications { .. }
        | Says::SeasonTotal { .. }
        | Says::HarvestInterval { .. }
        | Says::ReEntry { .. } => is_pesticide,
        _ => false,
    }
}

/// Empty rows to fill in, for the usual kinds that are not typed yet.
fn to_fill_in(product: &Product, units: Units) -> Vec<Statement> {
    let is_typed = |says: &Says| product.label.iter().any(|typed| typed.says.name() == says.name());
    let mut all = blanks(product.is_liquid(), String::new(), units);
    all.retain(|says| is_usual(says, product.kind.is_pesticide()) && !is_typed(says));
    for says in &mut all {
        // Never typed, so that what is typed always differs from it.
        match says {
            Says::Applications { most, .. } => *most = u32::MAX,
            Says::HarvestInterval { days } => *days = u32::MAX,
            Says::ReEntry { hours } | Says::RainFree { hours } => *hours = u32::MAX,
            _ => {}
        }
    }
    all.into_iter().map(|says| Statement::new(says, "")).collect()
}

/// The three sections, and adding to them.
pub(super) fn show(bench: &mut Bench, ui: &mut Ui, id: &Id, product: &mut Product) {
    let units = bench.farm().units;
    let is_filling = bench.state.filling.as_ref() == Some(id);
    let mut empty = if is_filling { to_fill_in(product, units) } else { Vec::new() };
    aside::make_room(bench, ui, product, &empty, units);
    let fresh = bench.state.fresh.take();
    let mut gone = None;
    let mut another = None;
    let mut typed = None;
    // Enter in a row leads to the next one, past crop, stages and page; in a list it chooses.
    let mut goes_on = false;
    let in_list = egui::Popup::is_any_open(ui.ctx());
    // Looked at before the rows, since a choice keeps the key from opening its list.
    let is_enter = ui.input(|input| input.key_pressed(Key::Enter));
    for of in Section::ALL {
        let mut rows: Vec<Row> = (0..product.label.len())
            .map(Row::Typed)
            .chain((0..empty.len()).map(Row::Empty))
            .filter(|row| row.of(product, &empty).is_some_and(|statement| place(&statement.says).0 == of))
            .collect();
        // A stable sort: statements of one kind stay in the order in which they were typed.
        rows.sort_by_key(|row| row.of(product, &empty).map(|statement| place(&statement.says).1));
        heading(ui, of, rows.is_empty());
        let mut before = None;
        for row in rows {
            let Some(says) = row.of(product, &empty).map(|statement| &statement.says) else { continue };
            let kind = says.name();
            let is_asked = bench.state.aside.as_ref().is_some_and(|aside| aside.is_of(says)) && before != Some(kind);
            let mut is_led_to = std::mem::take(&mut goes_on);
            if bench.state.leads_to.is_some_and(|kind| kind.is_of(says)) {
                bench.state.leads_to = None;
                is_led_to = true;
            }
            if is_asked {
                aside::show(bench, ui, product, units);
                is_led_to |= bench.state.aside.as_mut().is_some_and(|aside| aside.leads_on(ui));
            }
            let nth = match row {
                Row::Typed(at) => product.label.iter().take(at).filter(|other| other.says.name() == kind).count() + 1,
                Row::Empty(_) => 1,
            };
            let several = product.label.iter().filter(|other| other.says.name() == kind).count() > 1;
            let name = if several { format!("{kind} {nth}") } else { kind.to_owned() };
            let label = if before == Some(kind) { "" } else { kind };
            before = Some(kind);
            if matches!(row, Row::Typed(at) if fresh == Some(at)) {
                is_led_to |= std::mem::take(&mut bench.state.step_into);
            }
            if is_led_to {
                boxes::want_next(ui.ctx());
            }
            let focused = ui.memory(egui::Memory::focused);
            // By kind and not by place, so that an empty row keeps the keyboard when it becomes a typed one.
            let response = ui.push_id(("statement", kind, nth), |ui| {
                tight(ui);
                match row {
                    Row::Typed(at) => {
                        let Some(statement) = product.label.get_mut(at) else { return };
                        if self::row(ui, label, &name, statement, units, false) == Done::Removed {
                            gone = Some(at);
                        }
                        another = another.take().or_else(|| one_of_several(ui, &name, product, at));
                    }
                    Row::Empty(at) => {
                        let Some(statement) = empty.get_mut(at) else { return };
                        // Crop, stage and page alone are of no statement yet, but for one that has nothing else to type.
                        if self::row(ui, label, &name, statement, units, true) == Done::Typed {
                            typed = Some(statement.clone());
                        }
                    }
                }
            });
            boxes::hairline(ui);
            let left = ui.memory(egui::Memory::focused) != focused && focused.is_some();
            // A class that was chosen is all there is to type in its row.
            let chosen = typed.as_ref().is_some_and(|typed| matches!(typed.says, Says::Droplets { .. }))
                && matches!(row, Row::Empty(at) if empty.get(at).is_some_and(|row| matches!(row.says, Says::Droplets { .. })));
            // The key that led to a row is still down in it.
            goes_on = chosen || (left && !is_led_to && !in_list && is_enter);
            if matches!(row, Row::Typed(at) if fresh == Some(at)) {
                response.response.scroll_to_me(Some(Align::Center));
            }
        }
    }
    bench.state.leads_to = None;
    if let Some(at) = gone {
        product.label.remove(at);
    } else if let Some((at, row)) = another {
        product.label.insert(at, row);
        bench.state.fresh = Some(at);
        bench.state.step_into = true;
    }
    if let Some(mut statement) = typed {
        // The page of the last statement is the likeliest page of the next.
        if statement.at.is_empty() {
            statement.at = product.label.last().map(|last| last.at.clone()).unwrap_or_default();
        }
        product.label.push(statement);
    }
    add(bench, ui, product, units);
    fill_in(bench, ui, id, product, units);
}

/// Below the last of the adjuvants that a label requires or prefers for one use: that any of them will do, and the way to another class.
/// Gives the row to put in, and where.
fn one_of_several(ui: &mut Ui, name: &str, product: &Product, at: usize) -> Option<(usize, Statement)> {
    let rows = alternatives::one_of(product, at);
    if rows.last() != Some(&at) {
        return None;
    }
    let more = alternatives::another(product, at);
    let mut chosen = false;
    ui.horizontal_wrapped(|ui| {
        ui.add_space(look::LABEL + look::GRID);
        ui.spacing_mut().button_padding.x = 0.0;
        if rows.len() > 1 {
            word(ui, &t!("shed-any-one-of-them-will-do", classes = alternatives::in_words(product, &rows)));
        }
        if more.is_some() {
            let act = boxes::act(ui, t!("shed-or-another-class"));
            chosen = act.accessible_name(t!("shed-or-another-class-beside", name = name)).clicked();
        }
    });
    more.filter(|_| chosen).map(|row| (at + 1, row))
}

/// A row of the page: of a statement that is typed, or one to fill in.
#[derive(Clone, Copy)]
enum Row {
    Typed(usize),
    Empty(usize),
}

impl Row {
    fn of<'s>(self, product: &'s Product, empty: &'s [Statement]) -> Option<&'s Statement> {
        match self {
            Self::Typed(at) => product.label.get(at),
            Self::Empty(at) => empty.get(at),
        }
    }
}

/// Shows or hides the empty rows.
fn fill_in(bench: &mut Bench, ui: &mut Ui, id: &Id, product: &Product, units: Units) {
    let is_filling = bench.state.filling.as_ref() == Some(id);
    let missing = to_fill_in(product, units).len();
    if missing == 0 {
        return;
    }
    ui.scope(|ui| {
        ui.spacing_mut().button_padding.x = 0.0;
        tight(ui);
        if is_filling {
            if boxes::act(ui, t!("shed-hide-the-empty-rows")).clicked() {
                bench.state.filling = None;
            }
        } else if boxes::act(ui, t!("shed-empty-rows-for-what-is-not")).clicked() {
            bench.state.filling = Some(id.clone());
        }
    });
}

/// The heading of a section, with what the last columns hold.
fn heading(ui: &mut Ui, of: Section, empty: bool) {
    section(ui, of.name());
    if empty {
        ui.label(look::soft(ui, t!("shed-nothing-typed-yet")));
    }
}

/// What was done in a row, apart from a change of what was typed in it.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Done {
    Nothing,
    /// Its cross was pressed.
    Removed,
    /// An empty row has its value, be it the one that new statements begin with.
    Typed,
}

fn row(ui: &mut Ui, label: &str, name: &str, statement: &mut Statement, units: Units, is_empty: bool) -> Done {
    let width = ui.available_width();
    let after = After::new(ui);
    let one_line = width - look::LABEL - look::GRID - after.all() >= ONE_LINE;
    let values = width - look::LABEL - look::GRID - if one_line { after.all() } else { CROSS + look::GRID * 2.0 };
    let mut done = Done::Nothing;
    ui.horizontal(|ui| {
        ui.set_min_height(look::ROW);
        boxes::slot(ui, look::LABEL, |ui| {
            let words = look::width(ui, look::soft(ui, statement.says.name())).ceil().clamp(52.0, look::LABEL - 60.0);
            if let Says::Adjuvant { stance, .. } = &mut statement.says {
                ui.spacing_mut().item_spacing.x = GAP;
                boxes::named(ui, words, label);
                let say = |stance: &Stance| stance.name().to_owned();
                let room = look::LABEL - words - GAP - GAP;
                boxes::choice_in_row(ui, &t!("shed-stance", name = name), stance, &Stance::ALL, say, room);
            } else {
                ui.add(egui::Label::new(look::soft(ui, label)).wrap());
            }
        });
        boxes::wrapping(ui, values, |ui| {
            ui.spacing_mut().item_spacing.x = 5.0;
            if is_empty {
                if to_type(ui, name, &mut statement.says, values, units) {
                    done = Done::Typed;
                }
            } else {
                says(ui, name, &mut statement.says, values, units);
            }
        });
        if one_line {
            ui.spacing_mut().item_spacing.x = GAP;
            applies(ui, name, statement, units, after);
        }
        if !is_empty && cross(ui, name) {
            done = Done::Removed;
        }
    });
    if !one_line {
        boxes::beside(ui, look::LABEL, "", |ui| {
            ui.spacing_mut().item_spacing.x = GAP;
            applies(ui, name, statement, units, after);
        });
    }
    conditions::below(ui, name, statement, units);
    done
}

/// The first value of a row that is to be filled in: empty, where a number or a class that stands there would be taken for the label's.
/// The boxes have the names, and so the places, of those of a typed row. Gives whether the value is there.
fn to_type(ui: &mut Ui, name: &str, says: &mut Says, room: f32, units: Units) -> bool {
    fn count(ui: &mut Ui, name: &str, width: f32) -> Option<u32> {
        let mut typed = None;
        boxes::count_or_none(ui, name, &mut typed, width, "–");
        typed
    }
    fn most<Q: Quantity>(ui: &mut Ui, name: &str, width: f32, hint: &str) -> Option<AsTyped<Q>> {
        let mut typed = None;
        word(ui, t!("shed-at-most"));
        boxes::quantity_hinted(ui, &t!("shed-name-at-most", name = name), &mut typed, width, hint);
        typed
    }
    let typed = match says {
        Says::Droplets { .. } => {
            let mut finest = None;
            let all: Vec<Option<Droplets>> = std::iter::once(None).chain(Droplets::ALL.map(Some)).collect();
            let say = |class: &Option<Droplets>| class.map_or(t!("shed-not-typed"), Droplets::name).to_owned();
            boxes::choice_in_row(ui, &t!("shed-finest", name = name), &mut finest, &all, say, 150.0);
            word(ui, t!("shed-or-coarser"));
            finest.map(|finest| Says::Droplets { finest, coarsest: None })
        }
        Says::Wind { .. } => {
            most(ui, name, 64.0, t!("shed-hint-wind")).map(|most| Says::Wind { most, least: None, gust: None })
        }
        Says::SeasonTotal { per, .. } => {
            let per = *per;
            let typed = most(ui, name, 88.0, t!("shed-hint-product")).map(|most| Says::SeasonTotal { most, per });
            word(ui, per.name());
            typed
        }
        Says::Applications { per, .. } => {
            let per = *per;
            word(ui, t!("shed-at-most"));
            let typed = count(ui, &t!("shed-name-at-most", name = name), 36.0);
            word(ui, per.name());
            typed.map(|most| Says::Applications { most, days_apart: 0, per })
        }
        Says::HarvestInterval { .. } => {
            let typed = count(ui, &t!("shed-days", name = name), 44.0).map(|days| Says::HarvestInterval { days });
            word(ui, t!("shed-days-before-harvest-or-grazing"));
            typed
        }
        Says::ReEntry { .. } => {
            let typed = count(ui, &t!("shed-hours", name = name), 44.0).map(|hours| Says::ReEntry { hours });
            word(ui, t!("shed-hours-without-protection"));
            typed
        }
        Says::RainFree { .. } => {
            let typed = count(ui, &t!("shed-hours", name = name), 44.0).map(|hours| Says::RainFree { hours });
            word(ui, t!("shed-hours-without-rain"));
            typed
        }
        other => {
            let blank = other.clone();
            self::says(ui, name, other, room, units);
            return *other != blank;
        }
    };
    let is_there = typed.is_some();
    if let Some(typed) = typed {
        *says = typed;
    }
    is_there
}

/// For which crop and stages, and where on the label.
fn applies(ui: &mut Ui, name: &str, statement: &mut Statement, units: Units, after: After) {
    boxes::text_or_empty(ui, &t!("shed-for-crop", name = name), &mut statement.crop, after.crop, t!("shed-any-crop"));
    boxes::text_or_empty(
        ui,
        &t!("shed-name-from-stage", name = name),
        &mut statement.from_stage,
        after.from,
        t!("shed-from-hint"),
    );
    boxes::text_or_empty(
        ui,
        &t!("shed-name-to-stage", name = name),
        &mut statement.to_stage,
        after.to,
        t!("shed-to-hint"),
    );
    boxes::text_or_empty(ui, &t!("shed-name-at", name = name), &mut statement.at, after.at, t!("shed-page"));
    boxes::slot(ui, after.only_if, |ui| {
        conditions::only_if(ui, t!("shed-if"), t!("shed-only-if", name = name), statement, units);
    });
}

/// Over what a total or a number is counted.
fn period(ui: &mut Ui, name: &str, per: &mut Period) {
    let say = |per: &Period| per.name().to_owned();
    boxes::choice_in_row(ui, &t!("shed-counted", name = name), per, &Period::ALL, say, PERIOD);
}

/// The values of a statement.
pub(super) fn says(ui: &mut Ui, name: &str, says: &mut Says, room: f32, units: Units) {
    match says {
        Says::Rate { least, most } => between(ui, name, least, most, 88.0, units),
        Says::Carrier { least, most } => between(ui, name, least, most, 88.0, units),
        Says::SeasonTotal { most, per } => {
            word(ui, t!("shed-at-most"));
            boxes::quantity(ui, &t!("shed-name-at-most", name = name), most, 88.0);
            period(ui, name, per);
            understood(ui, most, units);
        }
        Says::ActiveSeasonTotal { active, most, per } => {
            boxes::text_or_empty(ui, &t!("shed-active", name = name), active, 100.0, t!("shed-common-name"));
            boxes::quantity(ui, &t!("shed-name-at-most", name = name), most, 88.0);
            // A narrow page has room for one of the two.
            if most.text().starts_with("0 ") {
                understood(ui, most, units);
            } else {
                period(ui, name, per);
                if room > 420.0 {
                    understood(ui, most, units);
                }
            }
        }
        Says::Applications { most, days_apart, per } => {
            word(ui, t!("shed-at-most"));
            boxes::count(ui, &t!("shed-name-at-most", name = name), most, 36.0);
            period(ui, name, per);
            boxes::count(ui, &t!("shed-days-apart", name = name), days_apart, 36.0);
            word(ui, t!("shed-days-apart-ddc"));
        }
        Says::CropStage => word(ui, t!("shed-may-be-used-in-these-stages")),
        Says::HarvestInterval { days } => {
            boxes::count(ui, &t!("shed-days", name = name), days, 44.0);
            word(ui, t!("shed-days-before-harvest-or-grazing"));
        }
        Says::ReEntry { hours } => {
            boxes::count(ui, &t!("shed-hours", name = name), hours, 44.0);
            word(ui, t!("shed-hours-without-protection"));
        }
        Says::PlantBack { next_crop, months } => {
            boxes::text_or_empty(ui, &t!("shed-is", name = name), next_crop, 112.0, t!("shed-crop"));
            word(ui, t!("shed-after-months"));
            boxes::count(ui, &t!("shed-months", name = name), months, 36.0);
            word(ui, t!("shed-months-box"));
        }
        Says::Droplets { finest, coarsest } => {
            let say = |class: &Droplets| t!("shed-class-or-coarser", class = class.name());
            boxes::choice_in_row(ui, &t!("shed-finest", name = name), finest, &Droplets::ALL, say, 150.0);
            let all: Vec<Option<Droplets>> = std::iter::once(None).chain(Droplets::ALL.into_iter().map(Some)).collect();
            let say = |class: &Option<Droplets>| {
                class.map_or_else(
                    || t!("shed-any-coarser").to_owned(),
                    |class| t!("shed-class-at-most", class = class.name()),
                )
            };
            boxes::choice_in_row(ui, &t!("shed-coarsest", name = name), coarsest, &all, say, 150.0);
        }
        Says::Wind { most, least, gust } => {
            // In a small window all three stand in one line.
            let (wide, narrow) = if room < 340.0 { (56.0, 46.0) } else { (64.0, 56.0) };
            word(ui, t!("shed-at-most"));
            boxes::quantity(ui, &t!("shed-name-at-most", name = name), most, wide);
            // Beside the box it speaks of; where there is no room, only that it is still to type.
            if room > 470.0 || most.text().starts_with("0 ") {
                understood(ui, most, units);
            }
            word(ui, t!("shed-at-least"));
            boxes::quantity_hinted(ui, &t!("shed-name-at-least", name = name), least, narrow, t!("shed-any-value"));
            word(ui, t!("shed-gusts"));
            boxes::quantity_hinted(ui, &t!("shed-name-gusts-at-most", name = name), gust, narrow, t!("shed-any-value"));
        }
        Says::NotToward { what } => {
            word(ui, t!("shed-not-toward"));
            boxes::sentence(ui, name, what, (room - 70.0).max(90.0), t!("shed-what-lies-beside-it-apart-by"));
        }
        Says::NoInversion => word(ui, t!("shed-not-while-warm-air-lies-over")),
        Says::Humidity { least, most } => between(ui, name, least, most, 88.0, units),
        Says::DeltaT { least, most } => between(ui, name, least, most, 88.0, units),
        Says::Daylight { from, to } => {
            word(ui, t!("shed-from-box"));
            boxes::sun_time(ui, &t!("shed-from", name = name), from, 130.0);
            word(ui, t!("shed-to-box"));
            boxes::sun_time(ui, &t!("shed-name-to", name = name), to, 130.0);
        }
        Says::BoomHeight { most } => {
            word(ui, t!("shed-at-most"));
            boxes::quantity(ui, &t!("shed-name-at-most", name = name), most, 64.0);
            word(ui, t!("shed-above-what-is-sprayed"));
            understood(ui, most, units);
        }
        Says::GroundSpeed { most } => {
            word(ui, t!("shed-at-most"));
            boxes::quantity(ui, &t!("shed-name-at-most", name = name), most, 64.0);
            understood(ui, most, units);
        }
        Says::CleanOut { before, how } => {
            word(ui, t!("shed-before-box"));
            boxes::text_or_empty(ui, &t!("shed-before", name = name), before, 90.0, t!("shed-any-crop"));
            boxes::sentence(ui, name, how, (room - 148.0).max(90.0), t!("shed-how-in-the-labels-words"));
        }
        Says::Buffer { to, width, downwind_only } => {
            boxes::quantity(ui, &t!("shed-width", name = name), width, 64.0);
            word(ui, t!("shed-to-box"));
            boxes::text_or_empty(ui, &t!("shed-name-to", name = name), to, 130.0, t!("shed-what-lies-beside-it"));
            boxes::tick(ui, downwind_only, t!("shed-down-the-wind-only"));
            understood(ui, width, units);
        }
        Says::RainFree { hours } => {
            boxes::count(ui, &t!("shed-hours", name = name), hours, 44.0);
            word(ui, t!("shed-hours-without-rain"));
        }
        Says::Adjuvant { class, least, most, .. } => {
            let say = |class: &AdjuvantClass| class.name().to_owned();
            boxes::slot(ui, 138.0, |ui| {
                boxes::choice_in_row(ui, &t!("shed-class", name = name), class, &AdjuvantClass::ALL, say, 138.0);
            });
            between(ui, name, least, most, 88.0, units);
        }
        Says::MixingOrder { place, tank_full } => {
            let say = |place: &OrderPlace| {
                match place {
                    OrderPlace::First => t!("shed-before-all-others"),
                    OrderPlace::Last => t!("shed-after-all-others"),
                }
                .to_owned()
            };
            boxes::choice_in_row(
                ui,
                &t!("shed-name-place", name = name),
                place,
                &[OrderPlace::First, OrderPlace::Last],
                say,
                136.0,
            );
            word(ui, t!("shed-tank-filled-to"));
            boxes::quantity_hinted(
                ui,
                &t!("shed-name-tank-filled-to", name = name),
                tank_full,
                56.0,
                t!("shed-any-value"),
            );
        }
        Says::NotWith { what, days } => {
            boxes::sentence(ui, name, what, (room - 134.0).max(90.0), t!("shed-active-group-class-or-product"));
            word(ui, t!("shed-nor-within"));
            boxes::count(ui, &t!("shed-within-days", name = name), days, 30.0);
            word(ui, t!("shed-days-row"));
        }
        Says::Temperature { least, most } => between(ui, name, least, most, 88.0, units),
        Says::Dates { from, to } => {
            word(ui, t!("shed-from-box"));
            boxes::month_day_or_none(ui, &t!("shed-from", name = name), from, 60.0, "05-01");
            word(ui, t!("shed-to-box"));
            boxes::month_day_or_none(ui, &t!("shed-name-to", name = name), to, 60.0, "06-20");
            word(ui, t!("shed-month-and-day"));
        }
        Says::Controls { weeds } => {
            boxes::sentence(ui, name, weeds, room, t!("shed-weeds-apart-by-commas"));
        }
        Says::Wear { what } => {
            boxes::sentence(ui, name, what, room, t!("shed-gloves-boots-in-the-labels-words"));
        }
        Says::Handling { what } | Says::Caution { what } => {
            boxes::sentence(ui, name, what, room, t!("shed-in-the-labels-words"));
        }
    }
}

/// A least and a most, either of which may be left empty.
fn between<Q: Quantity>(
    ui: &mut Ui,
    name: &str,
    least: &mut Option<AsTyped<Q>>,
    most: &mut Option<AsTyped<Q>>,
    width: f32,
    units: Units,
) {
    ui.spacing_mut().item_spacing.x = GAP;
    let both = ui.horizontal(|ui| {
        boxes::quantity_hinted(ui, &t!("shed-name-at-least", name = name), least, width, t!("shed-at-least"));
        word(ui, "–");
        boxes::quantity_hinted(ui, &t!("shed-name-at-most", name = name), most, width, t!("shed-at-most"));
    });
    if ui.available_width() > width {
        boxes::understood_between(ui, least.as_ref(), most.as_ref(), units);
    } else {
        // No room beside the boxes: the pointer brings it.
        both.response.on_hover_ui(|ui| boxes::understood_between(ui, least.as_ref(), most.as_ref(), units));
    }
}

/// What a limit was understood as; one that was added and not typed yet says so.
pub(super) fn understood<Q: Quantity>(ui: &mut Ui, value: &AsTyped<Q>, units: Units) {
    if value.text().starts_with("0 ") {
        ui.label(look::soft(ui, t!("shed-still-to-type")).color(look::colours(ui).check));
    } else {
        boxes::understood(ui, Some(value), units);
    }
}

/// The act that adds a statement, and the kinds to choose from.
fn add(bench: &mut Bench, ui: &mut Ui, product: &mut Product, units: Units) {
    ui.add_space(look::GRID);
    let mut added = None;
    ui.scope(|ui| {
        ui.spacing_mut().button_padding.x = 0.0;
        tight(ui);
        if !bench.state.adding {
            bench.state.adding = boxes::act(ui, t!("shed-another-statement-from-the-label")).clicked();
            return;
        }
        Frame::new().inner_margin(Margin { left: 10, ..Margin::ZERO }).show(ui, |ui| {
            let top = ui.cursor().top();
            ui.horizontal(|ui| {
                ui.label(t!("shed-what-does-the-label-say-next"));
                if boxes::act(ui, t!("shed-nothing-more")).clicked() {
                    bench.state.adding = false;
                }
            });
            let active = product.actives.first().map(|active| active.name.clone()).unwrap_or_default();
            let all = blanks(product.is_liquid(), active, units);
            for of in Section::ALL {
                boxes::beside(ui, look::LABEL - 10.0, of.name(), |ui| {
                    ui.spacing_mut().item_spacing.x = 12.0;
                    for says in all.iter().filter(|says| place(says).0 == of) {
                        let name = says.name();
                        if boxes::act(ui, name).accessible_name(t!("shed-add", name = name)).clicked() {
                            added = Some(says.clone());
                        }
                    }
                });
            }
            let line = Stroke::new(2.0, look::colours(ui).brass);
            ui.painter().vline(ui.min_rect().left() - 9.0, top..=ui.min_rect().bottom(), line);
        });
    });
    if let Some(says) = added {
        // The page of the last statement is the likeliest page of the next.
        let at = product.label.last().map(|statement| statement.at.clone()).unwrap_or_default();
        product.label.push(Statement::new(says, &at));
        bench.state.fresh = Some(product.label.len() - 1);
        bench.state.adding = false;
        bench.state.step_into = true;
    }
    quiet(ui);
}
