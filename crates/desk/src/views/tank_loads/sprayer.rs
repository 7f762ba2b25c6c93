//! The rig for a pass: which nozzles do it best, how they are set, how the rig is rinsed afterwards, and the time it takes.

use egui::{Label, ScrollArea, Ui, Vec2};
use tankard_core::farm::{CarrierKind, Pass, Rig};
use tankard_core::finding::{Basis, Subject};
use tankard_core::language::days::short_date;
use tankard_core::plan::Plan;
use tankard_core::quantity::{AsTyped, Quantity, Speed, Units};
use tankard_core::rig::calibration::{self, State};
use tankard_core::rig::rinse::{RinsePlan, RinseWay};
use tankard_core::rig::setting::{Fit, RankedSet, Setting};
use tankard_core::t;
use tankard_core::words::capital;

use super::{Shown, cell, column, sheet, worked};
use crate::app::Desk;
use crate::look;
use crate::parts::{boxes, lists, setting_plot};
use crate::report::words::{
    class_words, figures, fit_words, last_ground, rinse_ways, rinses, sentence, share, work_figures,
};

/// Below this width what stands side by side comes one under the other.
const NARROW: f32 = 720.0;
/// Width of a label before a fact.
const LABEL: f32 = 106.0;
/// Least width of a way to rinse.
const WAY: f32 = 196.0;
/// Height of the picture.
const PLOT: f32 = 260.0;

/// Shows the page.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui, id: &str, plan: &Plan) {
    let width = ui.available_width() - 12.0;
    ScrollArea::vertical().id_salt(("sprayer", id)).auto_shrink(false).show(ui, |ui| {
        ui.set_width(width);
        sheet(ui, |ui| sets(desk, ui, id, plan));
        ui.add_space(look::GRID);
        if let Some(setting) = shown(desk, plan).cloned() {
            sheet(ui, |ui| setting_sheet(desk, ui, id, plan, &setting));
            ui.add_space(look::GRID);
        }
        sheet(ui, |ui| work(desk, ui, plan));
        ui.add_space(look::GRID);
        sheet(ui, |ui| rinse(desk, ui, plan));
    });
}

/// The setting whose picture is drawn: of the set that was chosen to be looked at, else the pass's own.
fn shown<'a>(desk: &Desk, plan: &'a Plan) -> Option<&'a Setting> {
    let wanted = desk.tank_loads.set.as_ref();
    plan.sets
        .iter()
        .find(|ranked| Some(&ranked.setting.set) == wanted)
        .map(|ranked| &ranked.setting)
        .or(plan.setting.as_ref())
        .or_else(|| plan.sets.first().map(|ranked| &ranked.setting))
}

// ------------------------------------------------------------------------------------------------ the sets

fn sets(desk: &mut Desk, ui: &mut Ui, id: &str, plan: &Plan) {
    ui.label(look::heading(t!("tank-loads-which-nozzles-do-this-pass-best")));
    if plan.sets.is_empty() {
        no_set(desk, ui, id, plan);
        return;
    }
    let units = desk.document.farm().units;
    let drawn = shown(desk, plan).map(|setting| setting.set.clone());
    ui.spacing_mut().item_spacing.y = 2.0;
    for (at, ranked) in plan.sets.iter().enumerate() {
        if at > 0 {
            ui.add_space(2.0);
            boxes::hairline(ui);
            ui.add_space(2.0);
        }
        match one(ui, units, at + 1, ranked, drawn.as_ref() == Some(&ranked.setting.set)) {
            Some(Act::Draw) => desk.tank_loads.set = Some(ranked.setting.set.clone()),
            Some(Act::Take) => take(desk, id, ranked),
            None => {}
        }
    }
}

fn no_set(desk: &mut Desk, ui: &mut Ui, id: &str, plan: &Plan) {
    let farm = desk.document.farm();
    let Some(pass) = farm.passes.get(id) else { return };
    let Some(rig) = farm.rigs.get(&pass.rig) else {
        lists::empty(ui, t!("tank-loads-no-rig-is-chosen-yet-choose"));
        return;
    };
    let words = if rig.sets.is_empty() {
        t!("tank-loads-has-no-nozzle-set-yet-type", name = rig.name)
    } else if plan.carrier.is_none() {
        t!("tank-loads-the-spray-volume-over-ground-is-not-typed-yet").to_owned()
    } else {
        t!("tank-loads-nothing-can-be-told-of-the", name = rig.name)
    };
    ui.add(Label::new(look::soft(ui, words)).wrap());
    let subject = Subject::Rig(pass.rig.clone());
    if boxes::act(ui, &t!("tank-loads-go-to-in-shed", name = rig.name)).clicked() {
        desk.lead_to(&subject);
    }
}

enum Act {
    Draw,
    Take,
}

fn one(ui: &mut Ui, units: Units, rank: usize, ranked: &RankedSet, drawn: bool) -> Option<Act> {
    let mut act = None;
    let setting = &ranked.setting;
    let gap = ui.spacing().item_spacing.x;
    let (number, end) = (18.0, 92.0);
    let room = ui.available_width() - number - end - 3.0 * gap;
    let named = (room * 0.36).clamp(170.0, 250.0).min(room * 0.6);
    ui.horizontal_top(|ui| {
        cell(ui, number, false, |ui| {
            ui.label(look::heading(rank.to_string()));
        });
        column(ui, named, |ui| {
            let name = if ranked.chosen { look::strong(&setting.name) } else { egui::RichText::new(&setting.name) };
            let response =
                boxes::lead(ui, name).accessible_name(t!("tank-loads-show-in-the-picture", name = setting.name));
            if drawn {
                let line = egui::Stroke::new(2.0, look::colours(ui).brass);
                ui.painter().hline(response.rect.x_range(), response.rect.bottom(), line);
            }
            if response.on_hover_cursor(egui::CursorIcon::PointingHand).clicked() {
                act = Some(Act::Draw);
            }
            let mut as_planned = figures(setting, units);
            if ranked.fit == Fit::AtAnotherSpeed {
                // Beside "suits at 13.8 mph" the planned speed alone would be read as the setting to take.
                as_planned = t!("tank-loads-not-as-planned", as_planned = as_planned);
            }
            ui.add(Label::new(look::soft(ui, as_planned)).wrap());
        });
        column(ui, room - named, |ui| {
            let width = ui.available_width();
            cell(ui, width, false, |ui| {
                ui.add(Label::new(look::strong(capital(&fit_words(ranked, units)))).truncate());
            });
            ui.add(Label::new(reasons(ui, ranked)).wrap());
        });
        column(ui, end, |ui| {
            if ranked.chosen {
                cell(ui, end, false, |ui| drop(ui.label(look::soft(ui, t!("tank-loads-in-this-pass")))));
            }
            let moves = ranked.fit == Fit::AtAnotherSpeed;
            if (!ranked.chosen || moves)
                && ranked.fit != Fit::No
                && boxes::act(ui, if ranked.chosen { t!("tank-loads-take-the-speed") } else { t!("tank-loads-take") })
                    .accessible_name(t!("tank-loads-take-for-this-pass", name = setting.name))
                    .clicked()
            {
                act = Some(Act::Take);
            }
        });
    });
    act
}

/// Why a set stands where it does, in one paragraph: each reason with its basis in soft ink behind it.
fn reasons(ui: &Ui, ranked: &RankedSet) -> egui::text::LayoutJob {
    let colours = look::colours(ui);
    let mut job = egui::text::LayoutJob::default();
    let font_id = look::narrow_font();
    for (at, (reason, basis)) in ranked.reasons.iter().enumerate() {
        let format = |color| egui::TextFormat { font_id: font_id.clone(), color, ..Default::default() };
        let text = format!("{}{}.", if at > 0 { " " } else { "" }, reason.trim_end_matches('.'));
        job.append(&text, 0.0, format(colours.ink));
        if *basis != Basis::Arithmetic {
            job.append(&format!(" {basis}."), 0.0, format(colours.soft));
        }
    }
    job
}

/// A reason with its basis in soft ink: behind it where the line has room, else under it.
fn reasoned(ui: &mut Ui, reason: &str, basis: &Basis) {
    let colours = look::colours(ui);
    let mut job = egui::text::LayoutJob::default();
    let format = |font_id, color| egui::TextFormat { font_id, color, ..Default::default() };
    job.append(reason, 0.0, format(look::body(false), colours.ink));
    if *basis != Basis::Arithmetic {
        let mut whole = job.clone();
        whole.append(&basis.to_string(), 6.0, format(look::gauge_font(), colours.soft));
        if ui.painter().layout_job(whole.clone()).size().x <= ui.available_width() {
            ui.add(Label::new(whole));
            return;
        }
    }
    ui.add(Label::new(job).wrap());
    if *basis != Basis::Arithmetic {
        ui.add(Label::new(look::soft(ui, basis.to_string())).wrap());
    }
}

/// Puts a set, and the speed it needs, into the pass.
fn take(desk: &mut Desk, id: &str, ranked: &RankedSet) {
    let units = desk.document.farm().units;
    let set = ranked.setting.set.clone();
    let speed = (ranked.fit == Fit::AtAnotherSpeed)
        .then(|| ranked.speed.and_then(|speed| AsTyped::<Speed>::parse(&speed.show(units)).ok()))
        .flatten();
    let name = ranked.setting.name.clone();
    let told = speed.as_ref().map_or_else(
        || t!("tank-loads-is-the-nozzle-set-of-this", name = name),
        |speed| t!("tank-loads-at-is-the-setting-of-this", name = name, speed = speed.text()),
    );
    desk.document.edit(|farm| {
        if let Some(pass) = farm.passes.get_mut(id) {
            pass.nozzles = set;
            if speed.is_some() {
                pass.speed = speed;
            }
        }
    });
    desk.tell(told);
}

// ------------------------------------------------------------------------------------------------ the setting

fn setting_sheet(desk: &mut Desk, ui: &mut Ui, id: &str, plan: &Plan, setting: &Setting) {
    let units = desk.document.farm().units;
    let own = plan.setting.as_ref().is_some_and(|own| own.set == setting.set);
    ui.label(look::heading(t!("tank-loads-pressure-and-droplets-over-speed", name = setting.name)));
    let sentence = sentence(setting, units);
    let facts = |desk: &mut Desk, ui: &mut Ui| setting_facts(desk, ui, id, plan, setting, own);
    if setting.curve.is_empty() {
        ui.add(Label::new(&sentence).wrap());
        facts(desk, ui);
        return;
    }
    let spoken = t!(
        "tank-loads-picture-of-pressure-over-speed-with",
        name = setting.name,
        figures = figures(setting, units),
        sentence = sentence
    );
    let width = ui.available_width();
    if width < NARROW {
        setting_plot::show(ui, setting, units, Vec2::new(width, PLOT), &spoken);
        ui.add(Label::new(&sentence).wrap());
        ui.add_space(4.0);
        facts(desk, ui);
        return;
    }
    ui.horizontal_top(|ui| {
        ui.spacing_mut().item_spacing.x = 16.0;
        let plot = width * 0.62;
        column(ui, plot, |ui| {
            setting_plot::show(ui, setting, units, Vec2::new(plot, PLOT), &spoken);
            ui.add(Label::new(&sentence).wrap());
        });
        column(ui, width - plot - 16.0, |ui| facts(desk, ui));
    });
}

/// A label and what stands beside it; the number opens its working where the plan has one of that title.
fn fact(desk: &mut Desk, ui: &mut Ui, plan: &Plan, label: &str, value: &str, working: &str) {
    ui.horizontal_top(|ui| {
        ui.spacing_mut().interact_size.y = 0.0;
        column(ui, LABEL, |ui| {
            ui.label(look::soft(ui, label));
        });
        if plan.workings.iter().any(|known| known.title == working) {
            if worked(ui, value, label) {
                desk.tank_loads.working = Some(Shown::Titled(working.to_owned()));
            }
        } else {
            ui.add(Label::new(value).wrap());
        }
    });
}

fn setting_facts(desk: &mut Desk, ui: &mut Ui, id: &str, plan: &Plan, setting: &Setting, own: bool) {
    let farm = desk.document.farm();
    let units = farm.units;
    let Some(pass) = farm.passes.get(id).cloned() else { return };
    let Some(rig) = farm.rigs.get(&pass.rig).cloned() else { return };
    let working = t!("rig-setting-of", name = setting.name);
    ui.spacing_mut().item_spacing.y = 1.0;
    ui.label(look::heading(if own { t!("tank-loads-setting-of-this-pass") } else { t!("tank-loads-with-this-set") }));
    if let Some(carrier) = plan.carrier {
        fact(desk, ui, plan, t!("tank-loads-spray-volume-a80"), &carrier.show(units), t!("core-spray-volume"));
    }
    fact(desk, ui, plan, t!("tank-loads-speed-row"), &setting.speed.show(units), "");
    if let Some(flow) = setting.flow {
        fact(desk, ui, plan, t!("tank-loads-each-nozzle-gives"), &flow.show(units), &working);
    }
    let pressure = setting.pressure.map_or(t!("tank-loads-not-known").to_owned(), |pressure| pressure.show(units));
    fact(desk, ui, plan, t!("tank-loads-pressure-row"), &pressure, &working);
    fact(desk, ui, plan, t!("tank-loads-droplets-row"), &class_words(setting.classes), &working);
    if let Some(duty) = setting.duty_words() {
        fact(desk, ui, plan, t!("tank-loads-valves-open"), &duty, &working);
    }
    if let Some(height) = pass.height_in(desk.document.farm()).map(|height| height.show(units)) {
        fact(desk, ui, plan, t!("tank-loads-boom-height"), &height, "");
    }
    if pass.carrier_kind != CarrierKind::Water {
        let density =
            pass.density.as_ref().map_or(t!("tank-loads-not-typed").to_owned(), |density| density.show(units));
        fact(desk, ui, plan, t!("tank-loads-carrier-density"), &density, "");
    }
    ui.add_space(6.0);
    calibrated(desk, ui, &pass, &rig, setting);
}

/// The last calibration with a set before the pass: when, how, by whom, and what it said of the nozzles.
fn calibrated(desk: &mut Desk, ui: &mut Ui, pass: &Pass, rig: &Rig, setting: &Setting) {
    ui.label(look::heading(t!("tank-loads-last-calibration")));
    match calibration::latest(rig, &setting.set, pass.date) {
        Some(last) => {
            let by = if last.by.trim().is_empty() { String::new() } else { format!(", {}", last.by.trim()) };
            ui.add(Label::new(format!("{}: {}{by}", short_date(last.date), last.test.name())).wrap());
            let said = calibration::judge(desk.document.farm(), &pass.rig, last);
            if let Some(against) = said.against_new {
                let off = against.to_percent();
                let shown = format!("{:.1}", off.abs());
                let words = if off.abs() < 0.05 {
                    t!("tank-loads-gives-what-a-new-nozzle-gives").to_owned()
                } else if off > 0.0 {
                    t!("tank-loads-gives-more-than-a-new-nozzle", off = shown)
                } else {
                    t!("tank-loads-gives-less-than-a-new-nozzle", off = shown)
                };
                ui.label(look::soft(ui, words));
            }
            let odd = said.nozzles.iter().filter(|caught| caught.state != State::Good).count();
            if odd > 0 {
                let words = t!("tank-loads-of-nozzles-caught-worn-blocked-or", odd = odd, nozzles = said.nozzles.len());
                ui.add(Label::new(look::soft(ui, words)).wrap());
            }
        }
        None => {
            ui.add(Label::new(look::soft(ui, t!("tank-loads-none-is-kept-for-this-set"))).wrap());
        }
    }
    if boxes::act(ui, t!("tank-loads-calibrations-in-shed")).clicked() {
        desk.lead_to(&Subject::Rig(pass.rig.clone()));
    }
}

// ------------------------------------------------------------------------------------------------ the time

fn work(desk: &mut Desk, ui: &mut Ui, plan: &Plan) {
    ui.label(look::heading(t!("tank-loads-how-long-it-takes")));
    let units = desk.document.farm().units;
    let Some(work) = &plan.work else {
        lists::empty(ui, t!("tank-loads-the-time-is-known-once-the"));
        return;
    };
    let figures = work_figures(work, units);
    // A figure with its words stands in one line: where the longest has no room beside others, they stand under one another.
    let longest = figures.iter().map(|(_, value)| LABEL + look::width(ui, value.as_str()) + 2.0 * look::GRID);
    let longest = longest.fold(0.0, f32::max);
    let most: usize = if ui.available_width() < NARROW { 2 } else { 3 };
    let columns = (1..=most).rev().find(|count| longest * *count as f32 <= ui.available_width()).unwrap_or(1);
    let wide = (ui.available_width() - 12.0) / columns as f32;
    ui.spacing_mut().item_spacing.y = 1.0;
    // The first figure is the spraying itself, which has a working of its own.
    let titles = std::iter::once(t!("core-time-to-spray")).chain(std::iter::repeat(t!("rig-time-for-the-pass")));
    let figures: Vec<_> = figures.into_iter().zip(titles).collect();
    for row in figures.chunks(columns) {
        ui.horizontal_top(|ui| {
            ui.spacing_mut().item_spacing.x = 6.0;
            for ((label, value), working) in row {
                column(ui, wide - 6.0, |ui| {
                    fact(desk, ui, plan, label, value, working);
                });
            }
        });
    }
    if !work.lacks.is_empty() {
        ui.add(Label::new(look::soft(ui, t!("tank-loads-not-in-it", lacks = work.lacks.join("; ")))).wrap());
    }
}

// ------------------------------------------------------------------------------------------------ rinsing

fn rinse(desk: &mut Desk, ui: &mut Ui, plan: &Plan) {
    ui.label(look::heading(t!("tank-loads-what-stays-in-the-rig-and")));
    let farm = desk.document.farm();
    let units = farm.units;
    let Some(rinse) = &plan.rinse else {
        lists::empty(ui, t!("tank-loads-this-is-known-once-the-rig"));
        return;
    };
    ui.spacing_mut().item_spacing.y = 3.0;
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing.x = 4.0;
        ui.label(t!("tank-loads-after-the-last-load"));
        if worked(ui, rinse.residual.show(units), t!("tank-loads-what-stays-in-the-rig")) {
            // Its working is not among those of the plan, so it is shown beside them.
            desk.tank_loads.working = Some(Shown::Titled(rinse.working.title.clone()));
        }
        ui.label(if rinse.water.is_zero() {
            t!("tank-loads-stay-in-tank-lines-and-boom").to_owned()
        } else {
            t!("tank-loads-stay-in-tank-lines-and-boom-water-of-water", water = rinse.water.show(units))
        });
    });
    ways(ui, rinse, units);
    if let Some(words) = last_ground(desk.document.farm(), plan, rinse) {
        ui.add(Label::new(words).wrap());
    }
    if let Some(priming) = &rinse.priming {
        let volume = priming.volume.show(units);
        let words = match priming.ground {
            Some(ground) => {
                t!("tank-loads-before-the-mix-arrives-on-ground", volume = volume, ground = ground.show(units))
            }
            None => t!("tank-loads-before-the-mix-arrives-at-the", volume = volume),
        };
        ui.add(Label::new(words).wrap());
    }
    if rinse.steps.is_empty() {
        ui.label(look::soft(ui, t!("tank-loads-no-cleaning-beyond-that-is-known")));
        return;
    }
    ui.add_space(4.0);
    ui.label(look::heading(t!("tank-loads-cleaning-before-the-next-pass-of")));
    for (at, step) in rinse.steps.iter().enumerate() {
        ui.horizontal_top(|ui| {
            // As high as a line of words, so that both stand on it.
            boxes::slot_of(ui, Vec2::new(18.0, 18.0), |ui| ui.label(look::heading((at + 1).to_string())));
            column(ui, ui.available_width(), |ui| {
                reasoned(ui, &step.what, &step.basis);
            });
        });
    }
}

/// The ways to rinse, side by side.
fn ways(ui: &mut Ui, rinse: &RinsePlan, units: Units) {
    if rinse.ways.is_empty() {
        return;
    }
    let ways = rinse_ways(rinse, units);
    let gap = 10.0;
    let columns = ((ui.available_width() + gap) / (WAY + gap)).floor().max(1.0);
    let wide = (ui.available_width() + gap) / columns - gap;
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // A few, and at least one.
    let count = columns as usize;
    for row in ways.chunks(count) {
        ui.horizontal_top(|ui| {
            ui.spacing_mut().item_spacing.x = gap;
            for (way, sources) in row {
                let best = std::ptr::eq(*way, rinse.ways.first().unwrap_or(way)) && way.on_board;
                column(ui, wide, |ui| one_way(ui, way, sources, best, units));
            }
        });
    }
}

fn one_way(ui: &mut Ui, way: &RinseWay, sources: &[&str], best: bool, units: Units) {
    let colours = look::colours(ui);
    let edge = if best { egui::Stroke::new(2.0, colours.water) } else { egui::Stroke::new(1.0, colours.hairline) };
    egui::Frame::new().stroke(edge).corner_radius(2).inner_margin(egui::Margin::symmetric(10, 5)).show(ui, |ui| {
        ui.set_width(ui.available_width());
        ui.spacing_mut().item_spacing.y = 1.0;
        ui.label(look::strong(rinses(way, units)));
        ui.label(t!("tank-loads-leaves-of-the-strength", strength = share(way.left.to_percent())));
        let mut from = vec![match (best, way.on_board) {
            (true, _) => t!("tank-loads-the-best-with-the-water-on"),
            (false, true) => t!("tank-loads-with-the-water-on-board"),
            (false, false) => t!("tank-loads-more-water-than-is-on-board"),
        }];
        from.extend(sources);
        ui.add(Label::new(look::soft(ui, from.join("; "))).wrap());
    });
}
