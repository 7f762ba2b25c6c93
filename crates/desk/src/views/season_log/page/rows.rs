//! How the page of a record is laid out: sections, labelled boxes side by side, rows in columns, soft lines under them.

use egui::{Sense, Ui, UiBuilder, Vec2};
use tankard_core::farm::{Id, Text};
use tankard_core::finding::Level;
use tankard_core::t;
use tankard_core::words::uncapital;

use crate::look;
use crate::parts::boxes::Typed;
use crate::parts::{boxes, mark};

/// Width of a label before a box.
pub(super) const LABEL: f32 = 86.0;
/// Width of a box beside a label.
const BOX: f32 = 150.0;
/// Width of a box for a short quantity.
pub(super) const SHORT: f32 = 100.0;
/// Height of a line of soft words under a row.
const SOFT: f32 = 16.0;
/// Width of the button that opens what is offered beside a box.
const PICK: f32 = 24.0;
/// Width of the triangle that opens what is folded away.
pub(super) const FOLD: f32 = 16.0;
/// Width of the act that takes a row away.
pub(super) const TAKE: f32 = 20.0;

/// Closer than a twentieth of a per cent, which is how it would be shown.
pub(super) fn as_planned(ratio: f64) -> bool {
    (ratio - 1.0).abs() < 0.000_5
}

/// What was planned, and how far from it the record is.
pub(super) fn beside_plan(planned: &str, ratio: Option<f64>) -> String {
    match ratio {
        Some(ratio) if as_planned(ratio) => t!("season-log-as-planned").to_owned(),
        Some(ratio) => {
            let sign = if ratio > 1.0 { "+" } else { "–" };
            t!(
                "season-log-planned",
                planned = planned,
                sign = sign,
                ratio = format_args!("{:.1}", (ratio - 1.0).abs() * 100.0)
            )
        }
        None => t!("season-log-planned-planned", planned = planned),
    }
}

/// A part of the page with ids of its own: what appears or goes above it takes no keyboard focus from its boxes, as it would where
/// ids count what was laid out before.
pub(super) fn part<R>(ui: &mut Ui, name: &str, add: impl FnOnce(&mut Ui) -> R) -> R {
    let id = ui.make_persistent_id(("part", name));
    ui.scope_builder(UiBuilder::new().scope_id(id), add).inner
}

pub(super) fn section(ui: &mut Ui, title: &str) {
    section_with(ui, title, |_| {});
}

pub(super) fn section_with(ui: &mut Ui, title: &str, add: impl FnOnce(&mut Ui)) {
    ui.add_space(look::GRID);
    let line = ui.available_rect_before_wrap();
    ui.painter().hline(line.x_range(), line.top(), egui::Stroke::new(1.0, look::colours(ui).hairline));
    ui.add_space(6.0);
    ui.horizontal(|ui| {
        ui.label(look::heading(title));
        add(ui);
    });
}

/// Two labelled boxes side by side.
pub(super) fn pair<L, R>(
    ui: &mut Ui,
    left: (&str, impl FnOnce(&mut Ui) -> L),
    right: (&str, impl FnOnce(&mut Ui) -> R),
) {
    let width = (ui.available_width() - 16.0) / 2.0;
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 8.0;
        boxes::slot(ui, width, |ui| labelled(ui, left.0, left.1));
        // In line with the second column at the head of the page.
        ui.add_space(8.0);
        boxes::slot(ui, width, |ui| labelled(ui, right.0, right.1));
    });
}

/// A labelled box with a row of its own.
pub(super) fn row<R>(ui: &mut Ui, label: &str, add: impl FnOnce(&mut Ui) -> R) {
    ui.horizontal(|ui| labelled(ui, label, add));
}

/// Width of a box beside a label, or of the room that is left for it.
pub(super) fn box_width(ui: &Ui) -> f32 {
    BOX.min(ui.available_width())
}

/// A label in small letters, as on all other pages, before what has it as its name.
pub(super) fn labelled<R>(ui: &mut Ui, label: &str, add: impl FnOnce(&mut Ui) -> R) {
    boxes::named(ui, LABEL, &uncapital(label));
    add(ui);
}

/// A line of less weight under a row: words under its first column, words under its second.
pub(super) fn soft_line(ui: &mut Ui, first: f32, left: &str, right: &str) {
    indented_line(ui, 0.0, first, left, right);
}

/// The same where the first column begins further in.
pub(super) fn indented_line(ui: &mut Ui, indent: f32, first: f32, left: &str, right: &str) {
    ui.scope(|ui| {
        ui.spacing_mut().interact_size.y = SOFT;
        ui.horizontal(|ui| {
            if indent > 0.0 {
                boxes::slot_of(ui, Vec2::new(indent, SOFT), |_| ());
            }
            boxes::slot_of(ui, Vec2::new(first, SOFT), |ui| ui.add(egui::Label::new(look::soft(ui, left)).truncate()));
            ui.label(look::soft(ui, right));
        });
    });
}

pub(super) fn captions(ui: &mut Ui, columns: &[(&str, f32)]) {
    ui.horizontal(|ui| {
        ui.spacing_mut().interact_size.y = SOFT;
        for (text, width) in columns {
            boxes::slot_of(ui, Vec2::new(*width, SOFT), |ui| ui.label(look::soft(ui, *text)));
        }
    });
}

/// The act that takes a row away.
pub(super) fn take(ui: &mut Ui, what: &str) -> bool {
    ui.is_enabled()
        && boxes::act(ui, "×")
            .on_hover_text(t!("season-log-remove-01d"))
            .accessible_name(t!("season-log-remove-what", what = what))
            .clicked()
}

/// A choice that adds what is chosen.
pub(super) fn add(ui: &mut Ui, prompt: &str, all: &[Id], name: impl Fn(&Id) -> Option<String>) -> Option<Id> {
    if all.is_empty() || !ui.is_enabled() {
        return None;
    }
    if !ui.layout().main_dir().is_horizontal() {
        ui.add_space(2.0);
    }
    let mut picked = Id::new();
    let say = |id: &Id| name(id).unwrap_or_else(|| prompt.to_owned());
    boxes::choice(ui, prompt.trim_end_matches('…'), &mut picked, all, say, 180.0);
    (!picked.is_empty()).then_some(picked)
}

/// A box for text, and beside it what was typed before to choose from.
pub(super) fn with_before(ui: &mut Ui, name: &str, value: &mut impl Typed, width: f32, hint: &str, before: &[String]) {
    with_offers(ui, name, value, width, hint, (before, t!("season-log-typed-before")));
}

/// A box for text, and beside it what is offered to choose from; `what` that is follows the name of the box.
pub(super) fn with_offers(
    ui: &mut Ui,
    name: &str,
    value: &mut impl Typed,
    width: f32,
    hint: &str,
    (offered, what): (&[String], &str),
) {
    let is_offered = !offered.is_empty() && ui.is_enabled();
    let width = width.min(ui.available_width());
    ui.scope(|ui| {
        ui.spacing_mut().item_spacing.x = 2.0;
        boxes::text_or_empty(ui, name, value, if is_offered { width - PICK - 2.0 } else { width }, hint);
        if is_offered && let Some(chosen) = pick(ui, &format!("{name}, {what}"), offered) {
            *value = chosen.into();
        }
    });
}

/// A narrow button that opens a list; gives what is chosen.
fn pick(ui: &mut Ui, name: &str, all: &[String]) -> Option<String> {
    let button = ui
        .scope(|ui| {
            ui.spacing_mut().button_padding.x = 5.0;
            let arrow = egui::Button::new("").min_size(Vec2::new(PICK, ui.spacing().interact_size.y));
            let response = ui.add(arrow).accessible_name(name);
            let middle = response.rect.center();
            let points =
                vec![middle + Vec2::new(-4.0, -2.0), middle + Vec2::new(4.0, -2.0), middle + Vec2::new(0.0, 3.0)];
            ui.painter().add(egui::Shape::convex_polygon(points, look::colours(ui).soft, egui::Stroke::NONE));
            response
        })
        .inner;
    let mut chosen = None;
    egui::Popup::menu(&button).show(|ui| {
        ui.set_min_width(120.0);
        for text in all {
            if ui.button(text).clicked() {
                chosen = Some(text.clone());
            }
        }
    });
    chosen
}

/// A triangle that opens and closes what is folded away under a key; whether it is open. `name` is what a screen reader says.
pub(super) fn triangle(ui: &mut Ui, key: egui::Id, name: &str) -> bool {
    let open = is_open(ui, key);
    let size = Vec2::new(FOLD, ui.spacing().interact_size.y);
    let button = ui.scope(|ui| {
        ui.spacing_mut().button_padding.x = 0.0;
        ui.add(egui::Button::new("").frame(false).min_size(size)).accessible_name(name)
    });
    let response = button.inner;
    let colours = look::colours(ui);
    let colour = if response.hovered() || response.has_focus() { colours.brass } else { colours.soft };
    let middle = response.rect.center();
    let points = if open {
        [Vec2::new(-4.0, -2.5), Vec2::new(4.0, -2.5), Vec2::new(0.0, 3.5)]
    } else {
        [Vec2::new(-2.5, -4.0), Vec2::new(3.5, 0.0), Vec2::new(-2.5, 4.0)]
    };
    let points = points.map(|at| middle + at).to_vec();
    ui.painter().add(egui::Shape::convex_polygon(points, colour, egui::Stroke::NONE));
    if response.clicked() {
        fold(ui, key, !open);
    }
    is_open(ui, key)
}

/// Whether what is folded away under a key is open; on a page that cannot be typed in all is.
pub(super) fn is_open(ui: &Ui, key: egui::Id) -> bool {
    !ui.is_enabled() || ui.data(|data| data.get_temp::<bool>(key)).unwrap_or_default()
}

/// Opens or closes what is folded away under a key.
pub(super) fn fold(ui: &Ui, key: egui::Id, open: bool) {
    ui.data_mut(|data| data.insert_temp(key, open));
}

/// A section that is folded away to a line until it is opened: its title and what is in it in a few words.
pub(super) fn folded(ui: &mut Ui, key: egui::Id, title: &str, summary: &str, add: impl FnOnce(&mut Ui)) {
    ui.add_space(4.0);
    let line = ui.available_rect_before_wrap();
    ui.painter().hline(line.x_range(), line.top(), egui::Stroke::new(1.0, look::colours(ui).hairline));
    ui.add_space(3.0);
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 4.0;
        let open = triangle(ui, key, &format!("{title}: {summary}"));
        if ui.add(egui::Label::new(look::heading(title)).sense(Sense::CLICK)).clicked() {
            fold(ui, key, !open);
        }
        ui.add_space(4.0);
        ui.add(egui::Label::new(look::soft(ui, summary)).truncate());
    });
    if is_open(ui, key) {
        ui.push_id(key, add);
    }
}

/// A sentence that says what does not agree, and an act that makes it so; whether it was clicked.
pub(super) fn offer(ui: &mut Ui, says: &str, act: &str) -> bool {
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing = Vec2::new(6.0, 0.0);
        mark::show(ui, Level::Check);
        ui.label(says);
        ui.is_enabled() && boxes::act(ui, act).clicked()
    })
    .inner
}

/// Names apart by commas, as they are typed.
pub(super) fn names(ui: &mut Ui, name: &str, value: &mut Vec<Text>, width: f32, hint: &str) {
    let mut text = value.iter().map(Text::as_str).collect::<Vec<_>>().join(", ");
    boxes::text_or_empty(ui, name, &mut text, width, hint);
    let typed = names_of(&text);
    if typed != *value {
        *value = typed;
    }
}

/// A comma that was just typed leaves an empty name at the end, so that the next one can follow it.
fn names_of(text: &str) -> Vec<Text> {
    if text.trim().is_empty() {
        return Vec::new();
    }
    text.split(',').map(|name| name.trim_start().into()).collect()
}
