//! The page of one record: everything in it can be typed over, beside what was planned.

mod day;
mod fields;
mod lines;
mod machine;
mod outcomes;
mod rest;
mod rows;
mod weather;

use std::cell::RefCell;
use std::collections::HashMap;
use std::path::Path;
use std::rc::Rc;

use egui::{Margin, Panel, ScrollArea, Ui};
use jiff::civil::{Date, DateTime};
use tankard_core::farm::{Farm, Id, Record, RecordLine};
use tankard_core::finding::{Finding, Subject};
use tankard_core::plan::Plan;
use tankard_core::plausible;
use tankard_core::quantity::{AsTyped, Volume};
use tankard_core::season::record::from_plan;
use tankard_core::season::{Log, outside, too_much, used};
use tankard_core::stock;
use tankard_core::t;
use tankard_core::weather::Limit;

use self::rows::{fold, part, section, triangle};
use super::{law, seal};
use crate::app::Desk;
use crate::files::Purpose;
use crate::look;
use crate::parts::{boxes, findings, mark, offers};

/// So much of the window the foot of the page takes at the most.
const MOST_OF_FOOT: f32 = 0.3;

/// What the page remembers between frames.
#[derive(Debug, Default)]
pub(super) struct State {
    /// The record that is asked about before it goes.
    removing: Option<Id>,
    /// The record that was just begun: the keyboard goes to its first hour.
    pub(super) begun: Option<Id>,
    /// The amount that is being typed.
    typing: Option<Typing>,
    /// What labels and laws ask, and what lies outside a limit, found once for a state of the farm.
    outside: Option<((u64, Id), Judged)>,
    /// What was typed in records before, for which record and as of which state of the farm.
    used: Option<(Id, u64, Rc<Used>)>,
}

/// What was typed in records before, the latest first.
#[derive(Debug, Default)]
struct Used {
    operators: Vec<String>,
    certificates: Vec<String>,
    helpers: Vec<String>,
    rigs: Vec<String>,
    waters: Vec<String>,
    methods: Vec<String>,
    nozzles: Vec<String>,
    customers: Vec<String>,
    /// The weeds of a field, found when first asked for.
    weeds: RefCell<HashMap<Id, Vec<String>>>,
    /// The lots of a product that were in the shed on a day, found when first asked for.
    lots: RefCell<HashMap<(Id, Date), Vec<String>>>,
}

impl Used {
    fn weeds_on(&self, farm: &Farm, field: &str) -> Vec<String> {
        let mut weeds = self.weeds.borrow_mut();
        weeds.entry(field.to_owned()).or_insert_with(|| used::weeds_on(farm, field)).clone()
    }

    fn lots_of(&self, (farm, log): (&Farm, &Log), product: &str, day: Date) -> Vec<String> {
        let mut lots = self.lots.borrow_mut();
        lots.entry((product.to_owned(), day)).or_insert_with(|| stock::lots(farm, log, product, day)).clone()
    }

    fn of(farm: &Farm) -> Self {
        let latest = used::latest(farm);
        let names = |own: Vec<String>, used: Vec<String>| {
            let more: Vec<String> = used.into_iter().filter(|name| !own.contains(name)).collect();
            [own, more].concat()
        };
        Self {
            operators: used::before_in(&latest, |record| [record.operator.as_str()]),
            certificates: used::before_in(&latest, |record| [record.certificate.as_str()]),
            helpers: used::before_in(&latest, |record| [record.helpers.as_str()]),
            rigs: names(
                farm.rigs.values().map(|rig| rig.name.clone()).collect(),
                used::before_in(&latest, |record| [record.rig.as_str()]),
            ),
            waters: names(
                farm.waters.values().map(|water| water.name.clone()).collect(),
                used::before_in(&latest, |record| [record.water.as_str()]),
            ),
            methods: used::before_in(&latest, |record| [record.method.as_str()]),
            nozzles: names(
                farm.rigs.values().flat_map(|rig| rig.sets.values()).map(|set| set.name.clone()).collect(),
                used::before_in(&latest, |record| [record.nozzles.as_str()]),
            ),
            customers: used::before_in(&latest, |record| {
                record.customer.as_ref().map(|customer| customer.name.as_str())
            }),
            weeds: RefCell::default(),
            lots: RefCell::default(),
        }
    }
}

/// What the sections of a page look at.
struct Page<'a> {
    farm: &'a Farm,
    log: &'a Log,
    /// The record's id.
    id: &'a str,
    /// The plan of its pass as it is now, and the record that it would make.
    plan: Option<&'a Plan>,
    planned: Option<&'a Record>,
    used: &'a Used,
    now: DateTime,
    /// Where the farm's file is, from where paths are read.
    folder: Option<&'a Path>,
}

impl Page<'_> {
    /// The key of what is folded away on the page of this record.
    fn fold(&self, what: &str) -> egui::Id {
        egui::Id::unique("folded").with((self.id, what))
    }

    /// The spray volume that was planned: as the record keeps it, else as the plan has it now.
    fn planned_volume(&self, record: &Record) -> Option<AsTyped<Volume>> {
        record.planned.clone().or_else(|| self.planned?.volume.clone())
    }
}

impl State {
    /// Looked for anew when another record is opened after something was edited.
    fn used(&mut self, revision: u64, farm: &Farm, id: &str) -> Rc<Used> {
        let used = match self.used.take() {
            Some((known, _, used)) if known == id => used,
            Some((_, known, used)) if known == revision => used,
            _ => Rc::new(Used::of(farm)),
        };
        self.used = Some((id.to_owned(), revision, Rc::clone(&used)));
        used
    }

    fn outside(&mut self, revision: u64, farm: &Farm, log: &Log, id: &str, today: Date) -> Judged {
        let wanted = (revision, id.to_owned());
        if self.outside.as_ref().is_none_or(|(known, _)| *known != wanted) {
            let found = farm.records.get_key_value(id).map(|(id, record)| Judged {
                asked: outside::asked(farm, record),
                outside: {
                    let mut found = too_much::judge(farm, log, id, record);
                    found.extend(outside::judge(farm, id, record));
                    plausible::of_record(farm, id, record, today, &mut found);
                    found
                },
            });
            self.outside = Some((wanted, found.unwrap_or_default()));
        }
        self.outside.as_ref().map(|(_, found)| found.clone()).unwrap_or_default()
    }
}

/// A line whose amount is being typed. Each letter makes another amount ("4", "41"), so its actives are scaled from the
/// line as it was, and not from the half-typed one before.
#[derive(Debug)]
struct Typing {
    before: RecordLine,
    now: RecordLine,
}

/// A record against labels and laws.
#[derive(Clone, Debug, Default)]
struct Judged {
    asked: Vec<Limit>,
    outside: Vec<Finding>,
}

/// What was clicked on the page.
enum Act {
    Close,
    Remove,
    ShowPlan(Id),
    PrintForWorkers,
}

/// Shows the page.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui, id: &str) {
    let pass = desk.document.farm().records.get(id).and_then(|record| record.pass.clone());
    let plan = pass.and_then(|pass| desk.document.plan(&pass));
    let revision = desk.document.revision();
    let (now, log) = (desk.now(), desk.document.log());
    let farm = desk.document.farm();
    let Some(original) = farm.records.get(id) else { return };
    let planned = plan.as_ref().and_then(|plan| from_plan(farm, &log, plan));
    let used = desk.season_log.page.used(revision, farm, id);
    let page = Page {
        farm,
        log: &log,
        id,
        plan: plan.as_deref(),
        planned: planned.as_ref(),
        used: &used,
        now,
        folder: desk.document.path().and_then(|path| path.parent()),
    };
    let mut record = desk.season_log.seal.shown(id, original);
    let is_open = desk.season_log.seal.is_open(id, original);
    let mut act = None;
    let mut said = None;
    seal::banner(&mut desk.season_log.seal, ui, revision, id, original);
    // The head stays in sight, so that the record can be closed from everywhere in it.
    egui::Frame::new().inner_margin(Margin { left: 16, right: 16, top: 10, bottom: 0 }).show(ui, |ui| {
        ui.set_width(ui.available_width());
        ui.spacing_mut().item_spacing.y = 2.0;
        let state = &mut desk.season_log.page;
        part(ui, "head", |ui| head(ui, state, farm, id, &mut record, is_open, &mut act));
    });
    let Judged { asked, outside } = desk.season_log.page.outside(revision, farm, &log, id, now.date());
    offers::set(ui.ctx(), &outside);
    // At the foot: what comes and goes while one types moves no box from under the hand.
    Panel::bottom("of the record").frame(look::foot(ui)).show(ui, |ui| {
        ui.spacing_mut().item_spacing.y = 2.0;
        let most = (ui.ctx().content_rect().height() * MOST_OF_FOOT).round();
        ScrollArea::vertical().auto_shrink([false, true]).max_height(most).show(ui, |ui| {
            part(ui, "as sprayed", |ui| as_sprayed(ui, &page, &outside));
            part(ui, "open", |ui| law::still_open(ui, farm, &record, now.date()));
        });
    });
    ScrollArea::vertical().auto_shrink(false).show(ui, |ui| {
        egui::Frame::new().inner_margin(Margin { left: 16, right: 16, top: 0, bottom: 16 }).show(ui, |ui| {
            ui.set_width(ui.available_width());
            ui.spacing_mut().item_spacing.y = 2.0;
            let state = &mut desk.season_log.page;
            look::read_only(ui, !is_open, |ui| {
                let begin = state.begun.take().is_some_and(|begun| begun == id);
                part(ui, "day", |ui| day::day(ui, &page, &mut record, begin));
                part(ui, "weather", |ui| weather::weather(ui, &page, &asked, &mut record));
                part(ui, "fields", |ui| fields::fields(ui, &page, &mut record));
                part(ui, "spray", |ui| machine::spray(ui, &page, &mut record));
                part(ui, "products", |ui| lines::lines(ui, &page, state, &mut record));
                part(ui, "note", |ui| {
                    section(ui, t!("season-log-note"));
                    let width = ui.available_width();
                    boxes::lines(ui, t!("season-log-note"), &mut record.note, width, 1);
                });
                part(ui, "machine", |ui| machine::machine(ui, &page, &mut record));
                part(ui, "weeds", |ui| rest::weeds(ui, &page, &mut record));
                part(ui, "customer", |ui| rest::customer(ui, &page, &mut record));
                part(ui, "kept", |ui| {
                    section(ui, t!("season-log-kept-for"));
                    law::show(ui, farm, &mut record, now.date());
                });
            });
            said = part(ui, "outcomes", |ui| outcomes::outcomes(ui, &page, &mut record));
            let seal = &mut desk.season_log.seal;
            part(ui, "seal", |ui| {
                section(ui, t!("season-log-signature"));
                seal::section(seal, ui, farm, (revision, now.date()), id, original);
            });
        });
    });
    seal::keep(desk, id, record);
    if let Some(problem) = said {
        desk.tell_problem(problem);
    }
    match act {
        Some(Act::Close) => desk.season_log.chosen = None,
        Some(Act::Remove) => {
            let name = desk.document.farm().records.get(id).map(|record| record.name.clone()).unwrap_or_default();
            desk.document.edit(|farm| {
                farm.records.shift_remove(id);
            });
            desk.season_log.chosen = None;
            desk.season_log.page = State::default();
            desk.tell(t!("season-log-the-record-of-is-removed-undo", name = name));
        }
        Some(Act::PrintForWorkers) => {
            let suggested = desk.beside_as(id, "-workers.pdf");
            desk.ask_file(Purpose::SaveWorkersSheet, suggested, ui.ctx());
        }
        Some(Act::ShowPlan(pass)) => desk.lead_to(&Subject::Pass(pass)),
        None => {}
    }
}

#[allow(clippy::too_many_arguments)] // The page's parts.
fn head(
    ui: &mut Ui,
    state: &mut State,
    farm: &Farm,
    id: &str,
    record: &mut Record,
    is_open: bool,
    act: &mut Option<Act>,
) {
    let pass = record.pass.clone().filter(|pass| farm.passes.contains_key(pass));
    ui.horizontal(|ui| {
        // From left to right, as Tab goes: the name has what the acts leave.
        let mut acts = vec![t!("season-log-for-workers"), t!("season-log-remove"), t!("season-log-close")];
        acts.extend(pass.is_some().then(|| t!("season-log-show-its-plan")));
        let width = ui.available_width() - boxes::width_of_acts(ui, &acts);
        look::read_only(ui, !is_open, |ui| {
            drop(boxes::text(ui, t!("season-log-name-of-the-pass"), &mut record.name, width));
        });
        let sheet = boxes::act(ui, t!("season-log-for-workers")).accessible_name(t!("season-log-sheet-for-workers"));
        if sheet.on_hover_text(t!("season-log-what-is-displayed-for-workers-after")).clicked() {
            *act = Some(Act::PrintForWorkers);
        }
        if let Some(pass) = pass
            && boxes::act(ui, t!("season-log-show-its-plan")).clicked()
        {
            *act = Some(Act::ShowPlan(pass.to_string()));
        }
        if boxes::act(ui, t!("season-log-remove")).accessible_name(t!("season-log-remove-the-record")).clicked() {
            state.removing = Some(id.to_owned());
        }
        if boxes::act(ui, t!("season-log-close")).accessible_name(t!("season-log-close-the-record")).clicked() {
            *act = Some(Act::Close);
        }
    });
    if state.removing.as_deref() == Some(id) {
        ui.add_space(4.0);
        ui.horizontal(|ui| {
            ui.label(look::strong(seal::remove_words(record)));
            if ui.button(t!("season-log-remove-it")).clicked() {
                state.removing = None;
                *act = Some(Act::Remove);
            }
            if ui.button(t!("season-log-keep-it")).clicked() || ui.input(|input| input.key_pressed(egui::Key::Escape)) {
                state.removing = None;
            }
        });
    }
    ui.add_space(look::GRID);
}

/// What lies outside a limit, in a line that opens.
fn as_sprayed(ui: &mut Ui, page: &Page<'_>, outside: &[Finding]) {
    // Of equals the last of the walk, which is the first of the list.
    let Some(gravest) = outside.iter().rev().max_by_key(|finding| finding.level) else { return };
    let key = page.fold("as sprayed");
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 4.0;
        let open = triangle(ui, key, &t!("season-log-as-it-was-sprayed", count = outside.len()));
        if ui
            .add(egui::Label::new(look::heading(t!("season-log-as-it-was-sprayed-c2b"))).sense(egui::Sense::CLICK))
            .clicked()
        {
            fold(ui, key, !open);
        }
        mark::show(ui, gravest.level);
        if outside.len() > 1 {
            ui.label(look::strong(t!("season-log-findings", count = outside.len())));
        }
        // Opened, the sentences stand in full below.
        if !open {
            ui.add(egui::Label::new(look::sentence(ui, gravest.level, &gravest.text)).truncate());
        }
    });
    if rows::is_open(ui, key) {
        // They speak of this record, which is open, so that a click leads nowhere else.
        findings::show(ui, outside);
    }
}
