//! What can be done on the map: draw, move points, look elsewhere, colour.

use egui::{Ui, Vec2};
use jiff::Span;
use tankard_core::farm::Id;
use tankard_core::language::days::short_date;
use tankard_core::t;

use super::colouring::Colouring;
use super::sketch::{Drawn, Sketch};
use super::{Fit, Other, State};
use crate::app::Desk;
use crate::look;
use crate::parts::boxes;

/// How many passes can be chosen from: those of the last month and to come.
const PASSES: usize = 60;

/// Shows the two rows above the map.
pub(super) fn show(map: &mut State, desk: &mut Desk, ui: &mut Ui) {
    ui.horizontal_wrapped(|ui| {
        draw_menu(map, desk, ui);
        let chosen = desk.fields.chosen.as_ref();
        let has_points = match &map.other {
            Other::None => chosen.is_some_and(|id| map.land.field(id).is_some()),
            Other::Surrounding(_) | Other::Gateway(..) => true,
        };
        let moving = egui::Button::selectable(map.editing, t!("fields-move-points"));
        let moving = ui.add_enabled(has_points, moving);
        if moving.on_disabled_hover_text(t!("fields-choose-a-boundary-first")).clicked() {
            let editing = !map.editing;
            map.drop_sketch();
            map.editing = editing;
        }
        boxes::tick(ui, &mut map.snaps, t!("fields-snap")).on_hover_text(t!("fields-new-points-go-to-points-and"));
        if ui.selectable_label(map.picture_open, t!("fields-picture")).clicked() {
            map.picture_open = !map.picture_open;
        }
        // One that egui draws is as high as all that is left where the row goes on in the next line.
        let height = ui.spacing().interact_size.y;
        let (rule, _) = ui.allocate_exact_size(Vec2::new(look::GRID, height), egui::Sense::hover());
        ui.painter().vline(rule.center().x, rule.y_range(), egui::Stroke::new(1.0, look::colours(ui).hairline));
        let is_there = !map.land.bounds.is_none();
        let all = ui.add_enabled(is_there, egui::Button::new(t!("fields-fit-all")));
        if all.on_disabled_hover_text(t!("fields-no-field-has-a-boundary-yet")).clicked() {
            map.fit = Some(Fit::All);
        }
        let chosen = ui.add_enabled(has_points, egui::Button::new(t!("fields-fit-chosen")));
        if chosen.on_disabled_hover_text(t!("fields-choose-a-boundary-first")).clicked() {
            map.ask_fit();
        }
        for (text, name, factor) in [("+", t!("fields-zoom-in"), 1.5), ("–", t!("fields-zoom-out"), 1.0 / 1.5)] {
            let button = egui::Button::new(text).min_size(Vec2::new(26.0, 0.0));
            if ui.add(button).accessible_name(name).on_hover_text(name).clicked() {
                map.zoom(factor);
            }
        }
    });
    ui.horizontal_wrapped(|ui| {
        ui.label(look::soft(ui, t!("fields-coloured-by")));
        let say = |by: &Colouring| by.name().to_owned();
        boxes::choice(ui, t!("fields-coloured-by-ea9"), &mut map.colouring, &Colouring::ALL, say, 132.0);
        if map.colouring == Colouring::Planned {
            let before = map.day_of(desk);
            let mut day = before;
            boxes::date(ui, t!("fields-day-of-the-map"), &mut day, 92.0);
            if day != before {
                map.day = Some(day);
            }
        }
        pass_choice(map, desk, ui);
        other_choice(map, desk, ui);
    });
    ui.add_space(4.0);
}

fn draw_menu(map: &mut State, desk: &Desk, ui: &mut Ui) {
    let farm = desk.document.farm();
    let field = desk.fields.chosen.as_ref().and_then(|id| farm.fields.get_key_value(id));
    let mut begun = None;
    ui.menu_button(look::act(ui, t!("fields-draw")), |ui| {
        ui.set_min_width(220.0);
        if let Some((id, field)) = field {
            let name = if field.name.trim().is_empty() { t!("fields-the-field") } else { field.name.trim() };
            ui.label(look::soft(ui, name));
            let of_field: &[(&str, Drawn)] = if field.boundary.is_some() {
                &[
                    (t!("fields-a-new-boundary-in-its-place"), Drawn::Boundary),
                    (t!("fields-a-further-part"), Drawn::Part),
                    (t!("fields-a-hole"), Drawn::Hole),
                    (t!("fields-a-gateway"), Drawn::Gateway),
                ]
            } else {
                &[(t!("fields-its-boundary"), Drawn::Boundary), (t!("fields-a-gateway"), Drawn::Gateway)]
            };
            for (text, what) in of_field {
                if ui.button(*text).clicked() {
                    begun = Some(Sketch::new(*what, Some(id.clone())));
                    ui.close();
                }
            }
            ui.separator();
        }
        ui.label(look::soft(ui, t!("fields-among-the-fields-water-homes-hives")));
        for (text, what) in [
            (t!("fields-a-point"), Drawn::Point),
            (t!("fields-a-line"), Drawn::Line),
            (t!("fields-an-area"), Drawn::Area),
        ] {
            if ui.button(text).clicked() {
                begun = Some(Sketch::new(what, None));
                ui.close();
            }
        }
    });
    if let Some(sketch) = begun {
        map.begin(sketch);
    }
}

/// Of which pass wind and strips are shown.
fn pass_choice(map: &mut State, desk: &Desk, ui: &mut Ui) {
    let farm = desk.document.farm();
    let today = desk.now().date();
    let first = today.checked_sub(Span::new().days(30)).unwrap_or(today);
    let shown = map.shown_pass(desk).cloned();
    let mut all: Vec<&Id> = farm
        .passes
        .iter()
        .filter(|(id, pass)| pass.date >= first || Some(*id) == shown.as_ref())
        .map(|(id, _)| id)
        .collect();
    all.sort_by_key(|id| farm.passes.get(id).map(|pass| pass.date));
    all.truncate(PASSES);
    if all.is_empty() {
        return;
    }
    ui.label(look::soft(ui, t!("fields-for-the-pass")));
    let all: Vec<Option<Id>> = all.into_iter().cloned().map(Some).collect();
    let say = |id: &Option<Id>| {
        let pass = id.as_ref().and_then(|id| farm.passes.get(id));
        pass.map_or_else(
            || t!("fields-head-none").to_owned(),
            |pass| format!("{}, {}", short_date(pass.date), pass.name),
        )
    };
    let mut chosen = shown.clone();
    boxes::choice(ui, t!("fields-pass-of-the-map"), &mut chosen, &all, say, 180.0);
    if chosen != shown {
        map.pass = chosen;
    }
}

/// What lies among the fields, for the keyboard and for what is hard to hit.
fn other_choice(map: &mut State, desk: &Desk, ui: &mut Ui) {
    let farm = desk.document.farm();
    if farm.surroundings.is_empty() && farm.fields.values().all(|field| field.gateways.is_empty()) {
        return;
    }
    let mut all = vec![Other::None];
    all.extend(farm.surroundings.keys().map(|id| Other::Surrounding(id.clone())));
    let of_field = desk.fields.chosen.as_ref().and_then(|id| farm.fields.get_key_value(id));
    if let Some((id, field)) = of_field {
        all.extend((0..field.gateways.len()).map(|at| Other::Gateway(id.clone(), at)));
    }
    if !all.contains(&map.other) {
        all.push(map.other.clone());
    }
    let mut chosen = map.other.clone();
    let say = |other: &Other| super::panel::name_of(farm, other);
    boxes::choice(ui, t!("fields-among-the-fields-45d"), &mut chosen, &all, say, 158.0);
    if chosen != map.other {
        map.choose_other(chosen);
        map.fit = Some(Fit::Chosen);
    }
}
