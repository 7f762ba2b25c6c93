//! Ways to calibrate: what to do, step by step, and the boxes for what was measured.

use egui::{Align, Color32, Label, Layout, Rect, RichText, Sense, Ui, UiBuilder, Vec2};
use tankard_core::farm::{Calibration, NozzleSet, Rig, Test};
use tankard_core::finding::Level;
use tankard_core::quantity::{AsTyped, Quantity, Share, Units, Volume};
use tankard_core::rig::calibration::{Calibrated, Caught, State, acre_course};
use tankard_core::rig::flow;
use tankard_core::t;

use super::super::statements::understood;
use super::super::{line, lines, word};
use super::calibrations::{signed, typed};
use super::nozzles;
use crate::look;
use crate::parts::boxes;

/// A way of each kind, to be filled in, with the words under which it is begun.
pub(super) fn blanks(units: Units) -> Vec<(&'static str, Test)> {
    let metric = units == Units::Metric;
    let mut all = Vec::new();
    if let Some(time) = typed("30 s") {
        all.push((t!("shed-catch-at-the-nozzles"), Test::Catch { time, caught: Vec::new() }));
    }
    if let Some(time) = typed("0 s") {
        all.push((t!("shed-1-128-acre"), Test::AcreFraction { time, caught: Vec::new() }));
    }
    if let Some(length) = typed(if metric { "100 m" } else { "300 ft" }) {
        all.push((t!("shed-speed-over-a-course"), Test::Course { length, times: Vec::new(), shown: None }));
    }
    let area = typed(if metric { "0 ha" } else { "0 ac" });
    let used = typed(match units {
        Units::Metric => "0 L",
        Units::Imperial => "0 imp gal",
        Units::UsCustomary => "0 gal",
    });
    if let Some((area, used)) = area.zip(used) {
        all.push((t!("shed-tank-level"), Test::TankLevel { area, used, set_to: None }));
    }
    all
}

/// The set that was fitted.
pub(super) fn set_of<'a>(rig: &'a Rig, calibration: &Calibration) -> Option<&'a NozzleSet> {
    rig.sets.get(&calibration.set)
}

/// The unit of what is caught.
const fn jug(units: Units) -> &'static str {
    match units {
        Units::Metric => "mL",
        Units::Imperial => "imp fl oz",
        Units::UsCustomary => "fl oz",
    }
}

/// What to do, step by step.
pub(super) fn steps(ui: &mut Ui, test: &Test, set: Option<&NozzleSet>, units: Units) {
    let water = t!("shed-rinse-the-sprayer-and-put-clean").to_owned();
    let bare = t!("shed-a-bare-number-is-taken-as", units = jug(units));
    let steps: Vec<String> = match test {
        Test::Catch { time, .. } => vec![
            water,
            t!("shed-stand-with-the-boom-out-at").to_owned(),
            t!("shed-hold-a-jug-under-each-nozzle", time = time, bare = bare),
            t!("shed-a-sample-across-the-boom-will").to_owned(),
        ],
        Test::AcreFraction { .. } => {
            let together = set.and_then(|set| set.layout.as_ref()).map_or(1, |layout| flow::width_together(layout).1);
            let catch = if together > 1 {
                t!("shed-stand-and-catch-what-the-nozzles-of-a-row", together = together, bare = bare)
            } else {
                t!("shed-stand-and-catch-what-one-nozzle-gives", bare = bare)
            };
            vec![water, course(set, units), t!("shed-drive-it-in-the-field-with").to_owned(), catch]
        }
        Test::Course { .. } => vec![
            t!("shed-mark-a-course-in-the-field").to_owned(),
            t!("shed-fill-the-tank-half-and-be").to_owned(),
            t!("shed-time-two-runs-or-more-one").to_owned(),
        ],
        Test::TankLevel { .. } => vec![
            t!("shed-stand-level-and-fill-the-tank").to_owned(),
            t!("shed-spray-it-on-a-measured-piece").to_owned(),
            t!("shed-stand-on-the-same-place-fill").to_owned(),
        ],
    };
    ui.add_space(4.0);
    for (at, step) in steps.iter().enumerate() {
        ui.horizontal_top(|ui| {
            let number = look::soft(ui, format!("{}", at + 1));
            ui.add_sized(Vec2::new(12.0, 18.0), Label::new(number));
            ui.add(Label::new(step).wrap());
        });
    }
    ui.add_space(4.0);
}

/// How long the course of the 1/128 acre is.
fn course(set: Option<&NozzleSet>, units: Units) -> String {
    let width = set.and_then(|set| set.layout.as_ref()).map(|layout| flow::width_together(layout).0);
    match width.and_then(|width| acre_course(width).map(|course| (width, course))) {
        Some((width, course)) => {
            t!("shed-mark-a-course-of-in-the", course = course.show(units), width = width.show(units))
        }
        None => t!("shed-mark-the-course-on-which-what").to_owned(),
    }
}

/// The boxes for what was measured.
pub(super) fn measured(ui: &mut Ui, rig: &Rig, calibration: &mut Calibration, judged: &Calibrated, units: Units) {
    let set = set_of(rig, calibration);
    let number = set.and_then(|set| set.count.or_else(|| nozzles::number(set, rig.boom.as_ref().map(AsTyped::value))));
    match &mut calibration.test {
        Test::Catch { time, caught } => {
            seconds(ui, t!("shed-caught-for"), time, t!("shed-each-nozzle"));
            let number = number.and_then(|number| usize::try_from(number).ok());
            grid(ui, caught, number, judged, units);
        }
        Test::AcreFraction { time, caught } => {
            seconds(ui, t!("shed-time-of-the-course"), time, "");
            lines(ui, t!("shed-caught"), |ui| several(ui, t!("shed-caught"), caught, 1, jug(units)));
        }
        Test::Course { length, times, shown } => {
            line(ui, t!("shed-course"), |ui| {
                boxes::quantity(ui, t!("shed-length-of-the-course"), length, 92.0);
                boxes::understood(ui, Some(length), units);
            });
            lines(ui, t!("shed-runs"), |ui| several(ui, t!("shed-run"), times, 2, "s"));
            line(ui, t!("shed-the-cab-showed"), |ui| {
                boxes::quantity_hinted(ui, t!("shed-the-cab-showed"), shown, 92.0, t!("shed-not-noted"));
                boxes::understood(ui, shown.as_ref(), units);
            });
        }
        Test::TankLevel { area, used, set_to } => {
            line(ui, t!("shed-ground-sprayed"), |ui| {
                boxes::quantity(ui, t!("shed-ground-sprayed"), area, 92.0);
                understood(ui, area, units);
            });
            line(ui, t!("shed-took-to-fill-up"), |ui| {
                boxes::quantity(ui, t!("shed-took-to-fill-up"), used, 92.0);
                understood(ui, used, units);
            });
            line(ui, t!("shed-it-was-set-to"), |ui| {
                boxes::quantity_hinted(ui, t!("shed-it-was-set-to"), set_to, 92.0, t!("shed-not-noted"));
                boxes::understood(ui, set_to.as_ref(), units);
            });
        }
    }
}

fn seconds(ui: &mut Ui, name: &str, value: &mut AsTyped<tankard_core::quantity::Duration>, beside: &str) {
    line(ui, name, |ui| {
        let mut typed = Some(value.clone());
        boxes::quantity_in(ui, name, &mut typed, 92.0, "30 s", "s");
        if let Some(typed) = typed {
            *value = typed;
        }
        if value.text().starts_with("0 ") {
            understood(ui, value, Units::default());
        } else {
            word(ui, beside);
        }
    });
}

/// Boxes for several values of one kind, with one more than there are.
fn several<Q: Quantity>(ui: &mut Ui, name: &str, values: &mut Vec<AsTyped<Q>>, least: usize, unit: &str) {
    for at in 0..(values.len() + 1).max(least) {
        let mut value = values.get(at).cloned();
        boxes::quantity_in(ui, &format!("{name} {}", at + 1), &mut value, 76.0, "", unit);
        match (value, values.get_mut(at)) {
            (Some(value), Some(slot)) => *slot = value,
            (Some(value), None) => values.push(value),
            (None, Some(_)) => {
                values.remove(at);
            }
            (None, None) => {}
        }
    }
}

/// Measures of a place on the boom: its number, its box, the word, and beneath them the bar.
const CELL: Vec2 = Vec2::new(178.0, 44.0);
const PLACE: f32 = 22.0;
const JUG: f32 = 76.0;
const BAR: f32 = 48.0;
/// Width of a deviation in figures.
const FIGURE: f32 = 46.0;
/// Height of the line over the places.
const HEAD: f32 = 16.0;
/// Boxes where it is not known how many nozzles there are.
const SOME: usize = 12;
/// The deviation that fills half a bar.
const FULL: f64 = 0.10;

/// A box for each nozzle, from left to right, with how far it is off.
fn grid(
    ui: &mut Ui,
    caught: &mut Vec<Option<AsTyped<Volume>>>,
    number: Option<usize>,
    judged: &Calibrated,
    units: Units,
) {
    let has_new = judged.nozzles.iter().any(|nozzle| nozzle.against_new.is_some());
    let legend = if has_new { t!("shed-left-to-right-with-new") } else { t!("shed-left-to-right") };
    lines(ui, t!("shed-caught"), |ui| word(ui, legend));
    let places = caught.len().max(number.unwrap_or(0)).max(if number.is_none() { caught.len() + SOME } else { 0 });
    let gap = look::GRID;
    // At least one, and few, since a window is some thousand points wide.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let columns = (((ui.available_width() + gap) / (CELL.x + gap)) as usize).max(1);
    ui.add_space(6.0);
    if !judged.nozzles.is_empty() {
        ui.horizontal_top(|ui| {
            ui.spacing_mut().item_spacing.x = gap;
            for _ in 0..columns.min(places) {
                let (rect, _) = ui.allocate_exact_size(Vec2::new(CELL.x, HEAD), Sense::hover());
                let layout = Layout::left_to_right(Align::Center);
                let mut cell = ui.new_child(UiBuilder::new().max_rect(rect).layout(layout));
                figures(&mut cell, |_| {}, t!("shed-average"), if has_new { t!("shed-new") } else { "" });
            }
        });
    }
    let mut from = 0;
    while from < places {
        ui.horizontal_top(|ui| {
            ui.spacing_mut().item_spacing.x = gap;
            for at in from..(from + columns).min(places) {
                let result = judged.nozzles.iter().find(|nozzle| nozzle.place == at + 1);
                // Of one size whatever stands in it, so that the places stay in columns.
                let (rect, _) = ui.allocate_exact_size(CELL, Sense::hover());
                let layout = Layout::top_down(Align::Min);
                let mut cell = ui.new_child(UiBuilder::new().id_salt(at).max_rect(rect).layout(layout));
                place(&mut cell, at, caught, result, units);
            }
        });
        from += columns;
    }
    if number.is_none() {
        word(ui, t!("shed-type-under-nozzle-sets-how-many"));
    }
}

fn place(ui: &mut Ui, at: usize, caught: &mut Vec<Option<AsTyped<Volume>>>, result: Option<&Caught>, units: Units) {
    let colours = look::colours(ui);
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 4.0;
        ui.allocate_ui_with_layout(Vec2::new(PLACE, look::ROW), Layout::right_to_left(Align::Center), |ui| {
            word(ui, &format!("{}", at + 1));
        });
        let mut value = caught.get(at).cloned().flatten();
        boxes::quantity_in(ui, &t!("shed-nozzle", at = at + 1), &mut value, JUG, "", jug(units));
        if value != caught.get(at).cloned().flatten() {
            if caught.len() <= at {
                caught.resize(at + 1, None);
            }
            if let Some(slot) = caught.get_mut(at) {
                *slot = value;
            }
            while caught.last().is_some_and(Option::is_none) {
                caught.pop();
            }
        }
        if let Some(result) = result.filter(|result| result.state != State::Good) {
            ui.label(look::strong(result.state.name()).color(look::of_level(colours, Level::Check)));
        }
    });
    let Some(result) = result else { return };
    let colour = if result.state == State::Good { colours.soft } else { colours.check };
    let (average, new) = (signed(result.against_average), result.against_new.map(signed).unwrap_or_default());
    let response =
        ui.horizontal(|ui| figures(ui, |ui| bar(ui, result.against_average, colour), &average, &new)).response;
    let whole = t!(
        "shed-nozzle-place-flow-state",
        place = result.place,
        flow = result.flow.show(units),
        state = result.state.name()
    );
    response.on_hover_text(whole);
}

/// What stands under a box: the bar, and two figures in columns of their own.
fn figures(ui: &mut Ui, bar: impl FnOnce(&mut Ui), average: &str, new: &str) {
    ui.spacing_mut().item_spacing.x = 4.0;
    ui.spacing_mut().interact_size.y = 14.0;
    ui.add_space(PLACE);
    ui.allocate_ui_with_layout(Vec2::new(BAR, 14.0), Layout::left_to_right(Align::Center), |ui| {
        ui.set_min_width(BAR);
        bar(ui);
    });
    super::super::small(ui);
    for text in [average, new] {
        // As high as its letters, so that both stand on one line.
        ui.allocate_ui_with_layout(Vec2::new(FIGURE, 16.0), Layout::right_to_left(Align::Center), |ui| {
            ui.set_min_width(FIGURE);
            ui.label(RichText::new(text).color(look::colours(ui).soft));
        });
    }
}

/// A bar from the middle to the right for more, to the left for less.
fn bar(ui: &mut Ui, off: Share, colour: Color32) {
    let (rect, _) = ui.allocate_exact_size(Vec2::new(BAR, 14.0), Sense::hover());
    let middle = rect.center();
    // A share of half a bar, at most all of it.
    #[allow(clippy::cast_possible_truncation)]
    let length = (off.to_fraction() / FULL).clamp(-1.0, 1.0) as f32 * BAR * 0.5;
    let end = egui::pos2(middle.x + length, middle.y + 4.0);
    let drawn = Rect::from_two_pos(egui::pos2(middle.x, middle.y - 4.0), end);
    ui.painter().rect_filled(drawn, 1, colour);
    ui.painter().vline(middle.x, rect.y_range(), egui::Stroke::new(1.0, look::colours(ui).ink));
}
