//! Rigs: tank, boom and usual setting of each sprayer, its nozzle sets, and what was measured on it.

mod calibrations;
mod form;
mod nozzles;
mod sheets;
mod ways;

use std::sync::Arc;

use egui::Ui;
use tankard_core::begin::new_rig;
use tankard_core::farm::{Farm, Id, Pass, Rig};
use tankard_core::plausible::Slot;
use tankard_core::quantity::{AsTyped, Quantity, Units};
use tankard_core::rig::calibration::Calibrated;
use tankard_core::t;

use super::{Bench, lines, named, quiet, title_box, users};
use crate::document::Document;
use crate::look;
use crate::parts::{boxes, lists, offers};

/// The pages of a rig.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub(super) enum Part {
    #[default]
    Rig,
    Nozzles,
    Calibration,
}

impl Part {
    const ALL: [Self; 3] = [Self::Rig, Self::Nozzles, Self::Calibration];

    fn name(self) -> &'static str {
        match self {
            Self::Rig => t!("shed-rig"),
            Self::Nozzles => t!("shed-nozzle-sets"),
            Self::Calibration => t!("shed-calibration"),
        }
    }
}

/// What a rig's calibrations come to, made once for a revision of the document.
#[derive(Debug, Default)]
struct Judged {
    made_for: Option<(u64, Id)>,
    all: Arc<Vec<Calibrated>>,
}

/// What of the chosen rig is open.
#[derive(Debug, Default)]
pub(super) struct State {
    /// Of which rig.
    of: Option<Id>,
    part: Part,
    /// The nozzle set that is open.
    set: Option<Id>,
    /// A nozzle set that waits for an answer before it is removed.
    removing: Option<Id>,
    /// Place of the calibration that is open.
    calibration: Option<usize>,
    judged: Judged,
}

impl State {
    /// The page that is open, for what it remembers of itself.
    pub(super) fn page(&self) -> &'static str {
        self.part.name()
    }

    /// Opens the nozzle sets.
    pub(super) fn open_nozzles(&mut self) {
        self.part = Part::Nozzles;
    }

    /// What is open may be gone, by undo or with another rig: then the fitted set and the latest calibration are.
    pub(super) fn settle(&mut self, rig: Option<(&Id, &Rig)>) {
        let id = rig.map(|(id, _)| id);
        if self.of.as_ref() != id {
            self.of = id.cloned();
            (self.set, self.removing, self.calibration) = (None, None, None);
        }
        let Some((_, rig)) = rig else { return };
        if self.set.as_ref().is_none_or(|id| !rig.sets.contains_key(id)) {
            let fitted = tankard_core::rig::fitted(rig).or_else(|| rig.sets.first());
            self.set = fitted.map(|(id, _)| id.clone());
        }
        if self.calibration.is_none_or(|at| at >= rig.calibrations.len()) {
            self.calibration = calibrations::latest_first(rig).first().copied();
        }
    }
}

fn using(farm: &Farm, id: &str) -> Vec<(Id, Pass)> {
    users(farm, |pass| pass.rig == id)
}

/// The list.
pub(super) fn list(bench: &mut Bench, ui: &mut Ui) {
    let farm = bench.farm();
    if farm.rigs.is_empty() {
        lists::empty(ui, t!("shed-no-rig-yet-walk-round-the"));
    }
    let entries = farm.rigs.iter().map(|(id, rig)| {
        let summary = match &rig.boom {
            _ if rig.tank.is_zero() => t!("shed-tank-still-to-type").to_owned(),
            Some(boom) => t!("shed-tank-boom", tank = rig.tank, boom = boom),
            None => t!("shed-tank-tank", tank = rig.tank),
        };
        (id.clone(), named(&rig.name), summary)
    });
    let entries: Vec<_> = entries.collect();
    let chosen = bench.state.rig.clone();
    super::rows(bench, ui, chosen.as_ref(), entries);
}

/// The foot of the list.
pub(super) fn foot(bench: &mut Bench, ui: &mut Ui) {
    let chosen =
        bench.state.rig.clone().and_then(|id| bench.farm().rigs.get(&id).map(|rig| (id.clone(), named(&rig.name))));
    let uses = chosen.as_ref().map_or(0, |(id, _)| using(bench.farm(), id).len());
    let (added, done) = super::foot(bench, ui, t!("shed-add-a-rig"), chosen, uses);
    if added {
        add(&mut bench.desk.document, bench.state);
        boxes::want(ui.ctx(), t!("shed-name-of-the-rig"));
    }
    if let Some(done) = done {
        let rename = |rig: &mut Rig| super::copied(&mut rig.name);
        super::apply(&mut bench.desk.document, bench.state, done, |farm| &mut farm.rigs, rename);
    }
}

/// Adds a rig.
pub(super) fn add(document: &mut Document, state: &mut super::State) {
    // It begins at nothing, which is noticed: a size that nobody typed would be filled.
    let tank = if document.farm().units == Units::Metric { "0 L" } else { "0 gal" };
    let Ok(tank) = AsTyped::parse(tank) else { return };
    state.rigs.part = Part::Rig;
    super::add(document, state, |farm| &mut farm.rigs, "rig", Rig::new(new_rig(), tank));
}

/// The page of the chosen rig.
pub(super) fn page(bench: &mut Bench, ui: &mut Ui) {
    super::with_sheets(
        bench,
        ui,
        300.0,
        |bench, ui| {
            let chosen = bench.state.rig.clone();
            let Some((id, mut rig)) = chosen.and_then(|id| bench.farm().rigs.get(&id).cloned().map(|rig| (id, rig)))
            else {
                ui.label(look::title(t!("shed-rigs")));
                lists::empty(ui, t!("shed-here-stands-what-a-load-must"));
                return;
            };
            let before = rig.clone();
            ui.push_id(&id, |ui| {
                quiet(ui);
                title_box(ui, t!("shed-name-of-the-rig"), &mut rig.name);
                ui.add_space(2.0);
                super::links(ui, &mut bench.state.rigs.part, &Part::ALL, |part| part.name());
                match bench.state.rigs.part {
                    Part::Rig => form::show(bench, ui, &id, &mut rig),
                    Part::Nozzles => nozzles::show(bench, ui, &id, &mut rig),
                    Part::Calibration => calibrations::show(bench, ui, &id, &mut rig),
                }
            });
            if rig != before {
                bench.desk.document.edit(|farm| {
                    if let Some(slot) = farm.rigs.get_mut(&id) {
                        *slot = rig;
                    }
                });
            }
        },
        sheets::show,
    );
}

/// A box to tick, which a page of quiet boxes must not hide.
fn tick(ui: &mut Ui, name: &str, text: &str, value: &mut bool) {
    boxes::tick(ui, value, text).accessible_name(name);
}

fn optional<Q: Quantity>(ui: &mut Ui, name: &str, value: &mut Option<AsTyped<Q>>, units: Units, beside: &str) {
    typed(ui, name, value, units, None, beside);
}

/// The same for a figure of which a likelier one may be offered.
fn doubtful<Q: Quantity>(
    ui: &mut Ui,
    name: &str,
    value: &mut Option<AsTyped<Q>>,
    units: Units,
    slot: Slot,
    beside: &str,
) {
    typed(ui, name, value, units, Some(slot), beside);
}

fn typed<Q: Quantity>(
    ui: &mut Ui,
    name: &str,
    value: &mut Option<AsTyped<Q>>,
    units: Units,
    slot: Option<Slot>,
    beside: &str,
) {
    lines(ui, name, |ui| {
        boxes::quantity_or_none(ui, name, value, 120.0);
        if let Some(slot) = slot {
            offers::at_box(ui, name, &slot);
        }
        boxes::understood(ui, value.as_ref(), units);
        super::word(ui, beside);
    });
}
