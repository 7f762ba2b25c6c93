//! What was measured on a rig: its history with the verdict on each, and the one that is open.

use std::sync::Arc;

use egui::{Align, Label, Layout, RichText, ScrollArea, Ui};
use jiff::civil::Date;
use tankard_core::farm::{Calibration, Id, Rig, Test};
use tankard_core::finding::Level;
use tankard_core::quantity::{AsTyped, Quantity, Share, Units};
use tankard_core::rig::calibration::{Calibrated, State, judge};
use tankard_core::t;
use tankard_core::words::capital;

use super::super::sheets::{day, pair, sheet};
use super::super::{Bench, line, lines, named, section, word};
use super::{tick, ways};
use crate::look;
use crate::parts::{boxes, findings, lists, mark, workings};

/// Height of the history: five of them.
const HISTORY: f32 = 162.0;

/// The page.
pub(super) fn show(bench: &mut Bench, ui: &mut Ui, rig_id: &Id, rig: &mut Rig) {
    let units = bench.farm().units;
    let today = bench.desk.now().date();
    let judged = judged(bench, rig_id);
    section(ui, t!("shed-what-was-measured-the-latest-first"));
    if rig.calibrations.is_empty() {
        let text = t!("shed-nothing-yet-calibrate-before-the-season");
        ui.add(Label::new(look::soft(ui, text)).wrap());
    }
    // Many years scroll, so that the one that is open stays in reach.
    ScrollArea::vertical().id_salt("history").max_height(HISTORY).auto_shrink([false, true]).show(ui, |ui| {
        for at in latest_first(rig) {
            let Some(calibration) = rig.calibrations.get(at) else { continue };
            let verdict = judged.get(at).map_or((None, String::new()), |judged| verdict(judged, units));
            if row(ui, bench.state.rigs.calibration == Some(at), calibration, &verdict) {
                bench.state.rigs.calibration = Some(at);
            }
        }
    });
    add(bench, ui, rig, today);
    if !rig.calibrations.is_empty() || rig.measured_flow {
        lines(ui, t!("shed-for-the-plans"), |ui| {
            let text = t!("shed-reckon-with-the-flow-measured-last");
            tick(ui, text, text, &mut rig.measured_flow);
            word(ui, t!("shed-in-place-of-that-of-new"));
        });
    }
    let Some(at) = bench.state.rigs.calibration else { return };
    let Some(mut calibration) = rig.calibrations.get(at).cloned() else { return };
    let nothing = Calibrated::default();
    let result = judged.get(at).unwrap_or(&nothing);
    section(ui, &format!("{}, {}", capital(calibration.test.name()), day(calibration.date)));
    let gone = ui.push_id(("calibration", at), |ui| {
        ways::steps(ui, &calibration.test, ways::set_of(rig, &calibration), units);
        common(ui, rig, &mut calibration);
        ways::measured(ui, rig, &mut calibration, result, units);
        line(ui, t!("shed-note"), |ui| {
            let width = ui.available_width();
            boxes::sentence(
                ui,
                t!("shed-note-on-the-calibration"),
                &mut calibration.note,
                width,
                t!("shed-anything-else-380"),
            );
        });
        ui.spacing_mut().button_padding.x = 0.0;
        ui.add_space(4.0);
        let what = t!("shed-test-of-day", test = calibration.test.name(), day = day(calibration.date));
        boxes::act(ui, t!("parts-remove")).accessible_name(t!("shed-remove", what = what)).clicked()
    });
    if gone.inner {
        rig.calibrations.remove(at);
        bench.state.rigs.calibration = None;
    } else if let Some(slot) = rig.calibrations.get_mut(at) {
        *slot = calibration;
    }
}

/// Places of the calibrations, the latest day first; of one day the one typed last.
pub(super) fn latest_first(rig: &Rig) -> Vec<usize> {
    let mut places: Vec<usize> = (0..rig.calibrations.len()).collect();
    places.sort_by_key(|at| std::cmp::Reverse((rig.calibrations.get(*at).map(|calibration| calibration.date), *at)));
    places
}

/// What the rig's calibrations come to.
fn judged(bench: &mut Bench, rig_id: &Id) -> Arc<Vec<Calibrated>> {
    let made_for = (bench.desk.document.revision(), rig_id.clone());
    if bench.state.rigs.judged.made_for.as_ref() != Some(&made_for) {
        let farm = bench.farm();
        let rig = farm.rigs.get(rig_id);
        let all = rig.map_or_else(Vec::new, |rig| {
            rig.calibrations.iter().map(|calibration| judge(farm, rig_id, calibration)).collect()
        });
        bench.state.rigs.judged = super::Judged { made_for: Some(made_for), all: Arc::new(all) };
    }
    Arc::clone(&bench.state.rigs.judged.all)
}

/// A row of the history.
fn row(ui: &mut Ui, is_open: bool, calibration: &Calibration, verdict: &(Option<Level>, String)) -> bool {
    let (level, words) = verdict;
    let what = format!("{}, {}", day(calibration.date), calibration.test.name());
    let response = lists::row(ui, is_open, &format!("{what}: {words}"), |ui| {
        ui.horizontal(|ui| {
            ui.spacing_mut().item_spacing.x = 4.0;
            ui.label(if is_open { look::strong(&what) } else { RichText::new(&what) });
            ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
                ui.add(Label::new(look::soft(ui, words)).truncate());
                if let Some(level) = level {
                    mark::show(ui, *level);
                }
            });
        });
    });
    response.clicked()
}

/// "2 worn, 1 blocked"; else what it found, with the weight of what there is to say.
fn verdict(judged: &Calibrated, units: Units) -> (Option<Level>, String) {
    let level = judged.findings.iter().map(|finding| finding.level).max().filter(|level| *level > Level::Note);
    let count = |state: State| judged.nozzles.iter().filter(|nozzle| nozzle.state == state).count();
    let (worn, blocked, other) = (count(State::Worn), count(State::Blocked), count(State::OtherSize));
    let mut parts: Vec<String> = [
        (worn > 0).then(|| t!("shed-count-worn", count = worn)),
        (blocked > 0).then(|| t!("shed-count-blocked", count = blocked)),
        (other > 0).then(|| t!("shed-of-another-size", count = other)),
    ]
    .into_iter()
    .flatten()
    .collect();
    if parts.is_empty() && !judged.nozzles.is_empty() {
        parts.push(t!("shed-inside-the-rules", nozzles = judged.nozzles.len()));
    }
    parts.extend(judged.speed.map(|speed| speed.show(units)));
    parts.extend(judged.carrier.map(|carrier| carrier.show(units)));
    if parts.is_empty() {
        parts.extend(judged.flow.map(|flow| flow.show(units)));
    }
    (level, if parts.is_empty() { t!("shed-nothing-measured-yet").to_owned() } else { parts.join(", ") })
}

/// "+5.2 %".
pub(super) fn signed(share: Share) -> String {
    let percent = (share.to_percent() * 10.0).round() / 10.0;
    let sign = if percent > 0.0 { "+" } else { "" };
    format!("{sign}{percent:.1} %")
}

/// The acts that begin a calibration.
fn add(bench: &mut Bench, ui: &mut Ui, rig: &mut Rig, today: Date) {
    let mut begun = None;
    ui.add_space(4.0);
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().button_padding.x = 0.0;
        ui.spacing_mut().item_spacing.x = 14.0;
        for (text, test) in ways::blanks(bench.farm().units) {
            if boxes::act(ui, text).clicked() {
                begun = Some(test);
            }
        }
    });
    ui.add_space(4.0);
    if let Some(test) = begun {
        let set = tankard_core::rig::fitted(rig).map(|(id, _)| id.clone()).unwrap_or_default();
        let begun = Calibration { date: today, set, by: String::new(), pressure: None, test, note: String::new() };
        rig.calibrations.push(begun);
        bench.state.rigs.calibration = Some(rig.calibrations.len() - 1);
    }
}

/// What every calibration has.
fn common(ui: &mut Ui, rig: &Rig, calibration: &mut Calibration) {
    line(ui, t!("shed-day"), |ui| {
        boxes::date(ui, t!("shed-day-of-the-calibration"), &mut calibration.date, 120.0);
        word(ui, t!("shed-by"));
        boxes::text_or_empty(ui, t!("shed-measured-by"), &mut calibration.by, 160.0, t!("shed-who-measured"));
    });
    line(ui, t!("shed-nozzle-set"), |ui| {
        let mut all = vec![Id::new()];
        all.extend(rig.sets.keys().cloned());
        if !all.contains(&calibration.set) {
            all.push(calibration.set.clone());
        }
        let say = |id: &Id| match rig.sets.get(id) {
            Some(set) => named(&set.name),
            None if id.is_empty() => t!("shed-not-typed").to_owned(),
            None => t!("shed-which-is-gone", id = id),
        };
        boxes::choice(ui, t!("shed-nozzle-set"), &mut calibration.set, &all, say, 260.0);
    });
    if !matches!(calibration.test, Test::Course { .. }) {
        line(ui, t!("shed-pressure"), |ui| {
            let usual = rig.pressure.as_ref().map(|usual| t!("shed-usually", usual = usual));
            let hint = usual.unwrap_or_else(|| t!("shed-at-the-nozzles").to_owned());
            boxes::quantity_hinted(ui, t!("shed-pressure-meanwhile"), &mut calibration.pressure, 120.0, &hint);
            word(ui, t!("shed-at-the-nozzles"));
        });
    }
}

/// What the open calibration says, and the arithmetic.
pub(super) fn sheets(bench: &mut Bench, ui: &mut Ui, rig_id: &Id) {
    let units = bench.farm().units;
    let all = judged(bench, rig_id);
    let Some(judged) = bench.state.rigs.calibration.and_then(|at| all.get(at)) else { return };
    sheet(ui, t!("shed-what-it-says"), |ui| {
        let mut values: Vec<(&str, String)> = Vec::new();
        values.extend(judged.flow.map(|flow| (t!("shed-mean-flow-of-a-nozzle"), flow.show(units))));
        values.extend(judged.against_new.map(|share| (t!("shed-against-a-new-one"), signed(share))));
        values.extend(judged.speed.map(|speed| (t!("shed-speed"), speed.show(units))));
        values.extend(judged.carrier.map(|carrier| (t!("shed-volume-over-ground"), carrier.show(units))));
        let against =
            if judged.carrier.is_some() { t!("shed-against-what-was-set") } else { t!("shed-the-cab-against-it") };
        values.extend(judged.against_typed.map(|share| (against, signed(share))));
        if values.is_empty() && judged.findings.is_empty() {
            boxes::say(ui, t!("shed-type-what-was-measured-to-see"));
        }
        for (what, value) in values {
            pair(ui, what, look::strong(value));
        }
        if !judged.findings.is_empty() {
            ui.add_space(look::GRID);
            findings::show(ui, &judged.findings);
        }
    });
    if !judged.workings.is_empty() {
        sheet(ui, t!("shed-how-it-is-reckoned"), |ui| {
            for working in &judged.workings {
                workings::show(ui, working);
                ui.add_space(look::GRID);
            }
        });
    }
}

/// A text of a quantity, for a blank.
pub(super) fn typed<Q: Quantity>(text: &str) -> Option<AsTyped<Q>> {
    AsTyped::parse(text).ok()
}
