//! The heading line of a pass: name, day, fields, water, rig, time. Each opens its editor in place.

use egui::{Align, Layout, ScrollArea, TextEdit, Ui};
use tankard_core::farm::{CarrierKind, Droplets, Fills, Id, Pass, Rig};
use tankard_core::plan::Plan;
use tankard_core::plausible::Slot;
use tankard_core::quantity::{AsTyped, Quantity};
use tankard_core::t;

use super::{Editor, Page, Shown, toggle, worked};
use crate::app::Desk;
use crate::look;
use crate::parts::{boxes, figures, offers};

/// Height of the room for a pass, below which an open editor takes all of it.
const LOW: f32 = 400.0;

/// What an open editor leaves to the plan below it.
const BELOW: f32 = 140.0;

/// Shows the heading and the open editor; gives whether there is room for the page.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui, id: &str, plan: &Plan) -> bool {
    let Some(before) = desk.document.farm().passes.get(id).cloned() else { return false };
    let is_low = ui.available_height() < LOW;
    let mut pass = before.clone();
    title(ui, &mut pass);
    facts(desk, ui, &pass, plan);
    match desk.tank_loads.editor {
        Some(Editor::Fields) => sheet(is_low, ui, |ui| fields(desk, ui, &mut pass, plan)),
        Some(Editor::Water) => sheet(is_low, ui, |ui| water(desk, ui, &mut pass)),
        Some(Editor::Rig) => sheet(is_low, ui, |ui| rig(desk, ui, &mut pass, plan)),
        Some(Editor::Day) => sheet(is_low, ui, |ui| super::day::show(ui, &mut pass)),
        Some(Editor::Rest) => sheet(is_low, ui, |ui| super::rest::show(desk, ui, id, plan)),
        None => {}
    }
    if pass != before {
        desk.document.edit(|farm| {
            farm.passes.insert(id.to_owned(), pass);
        });
    }
    if is_low && desk.tank_loads.editor.is_some() {
        return false;
    }
    pages(desk, ui, id, plan);
    true
}

fn sheet(is_low: bool, ui: &mut Ui, add: impl FnOnce(&mut Ui)) {
    ui.add_space(4.0);
    // The plan below is to keep some of the room, unless there is none for both.
    let height = (ui.available_height() - if is_low { 0.0 } else { BELOW }).max(look::ROW * 3.0);
    ScrollArea::vertical().id_salt("editor").max_height(height).auto_shrink([false, true]).show(ui, |ui| {
        look::sheet(ui).show(ui, |ui| {
            ui.set_width(ui.available_width() - 12.0);
            add(ui);
        });
    });
}

fn title(ui: &mut Ui, pass: &mut Pass) {
    ui.horizontal(|ui| {
        ui.add(TextEdit::singleline(&mut pass.name).font(look::title_font()).frame(egui::Frame::NONE).desired_width(
            (ui.available_width() - if ui.available_width() < 480.0 { 132.0 } else { 300.0 }).clamp(120.0, 420.0),
        ))
        .accessible_name(t!("tank-loads-name-of-the-pass"));
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            ui.add_space(12.0);
            boxes::date(ui, t!("tank-loads-day-of-the-pass"), &mut pass.date, 96.0);
            if ui.available_width() > 150.0 {
                ui.label(look::soft(ui, tankard_core::language::days::long_date(pass.date)));
            }
        });
    });
}

fn facts(desk: &mut Desk, ui: &mut Ui, pass: &Pass, plan: &Plan) {
    let farm = desk.document.farm();
    let units = farm.units;
    let names: Vec<&str> = plan
        .fields
        .iter()
        .filter_map(|planned| farm.fields.get(&planned.field))
        .map(|field| field.name.as_str())
        .collect();
    let all = names.join(", ");
    let fields = match names.as_slice() {
        [] => t!("tank-loads-choose-fields").to_owned(),
        [first, rest @ ..] if all.len() > 44 => t!("tank-loads-first-and-rest-more", first = first, rest = rest.len()),
        _ => all,
    };
    let water =
        farm.waters.get(&pass.water).map_or(t!("tank-loads-choose-a-water").to_owned(), |water| water.name.clone());
    let rig = farm.rigs.get(&pass.rig).map_or(t!("tank-loads-choose-a-rig").to_owned(), |rig| rig.name.clone());
    let mut open = desk.tank_loads.editor;
    let mut working = None;
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing.x = 6.0;
        let day = super::day::summary(pass);
        for (editor, name) in [(Editor::Fields, fields), (Editor::Water, water), (Editor::Rig, rig), (Editor::Day, day)]
        {
            if toggle(ui, open == Some(editor), &name) {
                open = if open == Some(editor) { None } else { Some(editor) };
            }
            let fact = match editor {
                Editor::Fields => Some((plan.area.show(units), t!("core-ground-to-spray").to_owned())),
                Editor::Water => plan.water.hardness.map(|hardness| {
                    (
                        t!("tank-loads-hard", hardness = hardness.show(units)),
                        t!("water-hardness-of", name = plan.water.name),
                    )
                }),
                Editor::Rig => plan.carrier.map(|carrier| {
                    (
                        format!("{} = {}", carrier.show(units), plan.spray_volume.show(units)),
                        t!("core-spray-volume").to_owned(),
                    )
                }),
                Editor::Day | Editor::Rest => None,
            };
            if let Some((text, title)) = fact
                && worked(ui, text, &title)
            {
                working = Some(title);
            }
            if editor == Editor::Rig
                && plan.carrier.is_none()
                && toggle(ui, open == Some(editor), t!("tank-loads-type-the-spray-volume"))
            {
                open = Some(editor);
            }
            ui.add_space(10.0);
        }
    });
    desk.tank_loads.editor = open;
    if let Some(title) = working {
        desk.tank_loads.working = Some(Shown::Titled(title));
    }
}

fn pages(desk: &mut Desk, ui: &mut Ui, id: &str, plan: &Plan) {
    ui.add_space(2.0);
    let narrow = ui.available_width() < 560.0;
    // Where room is short the pages break into a second line, and the time stands on the page Sprayer alone.
    ui.horizontal_wrapped(|ui| {
        let top = ui.cursor().top();
        let cards = if super::cards::is_superseded(desk, &id.to_owned()) {
            t!("tank-loads-load-cards-superseded")
        } else {
            t!("tank-loads-load-cards")
        };
        let names = [
            (Page::Plan, t!("tank-loads-plan")),
            (Page::Sprayer, t!("tank-loads-sprayer")),
            (Page::Hours, t!("tank-loads-hours-1d4")),
            (Page::Cards, cards),
            (Page::Jar, t!("tank-loads-jar-test")),
        ];
        for (page, name) in names {
            if look::page(ui, name, desk.tank_loads.page == page).clicked() {
                desk.tank_loads.page = page;
            }
            ui.add_space(8.0);
        }
        // Not a page: what it does, it does at once.
        ui.separator();
        crate::views::season_log::acts(desk, ui, id);
        let is_one_line = ui.cursor().top() <= top + look::ROW / 2.0;
        if !narrow && is_one_line {
            time(desk, ui, plan);
        }
    });
}

/// At the right of the pages: the hours, which lead to their page, and the time it takes, with its working.
fn time(desk: &mut Desk, ui: &mut Ui, plan: &Plan) {
    let units = desk.document.farm().units;
    let (time, title) = match (&plan.work, plan.spray_time) {
        (Some(work), _) => {
            (Some(t!("tank-loads-in-all", total = work.total.show(units))), t!("rig-time-for-the-pass").to_owned())
        }
        (None, Some(time)) => {
            (Some(t!("tank-loads-of-spraying", time = time.show(units))), t!("core-time-to-spray").to_owned())
        }
        (None, None) => (None, String::new()),
    };
    let hours = super::hours::in_heading(&plan.hours);
    ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
        ui.spacing_mut().item_spacing.x = 6.0;
        ui.add_space(12.0);
        if let Some(hours) = hours.filter(|_| ui.available_width() > 110.0)
            && boxes::act(ui, &hours).accessible_name(t!("tank-loads-hours-hours", hours = hours)).clicked()
        {
            desk.tank_loads.page = Page::Hours;
        }
        if let Some(time) = time.filter(|_| ui.available_width() > 140.0)
            && worked(ui, time, &title)
        {
            desk.tank_loads.working = Some(Shown::Titled(title));
        }
    });
}

fn fields(desk: &mut Desk, ui: &mut Ui, pass: &mut Pass, plan: &Plan) {
    let farm = desk.document.farm();
    let units = farm.units;
    ui.label(look::heading(t!("tank-loads-fields-in-the-order-they-are")));
    let mut remove = None;
    let mut swap = None;
    for (at, id) in pass.fields.clone().iter().enumerate() {
        ui.push_id(("pass field", id), |ui| {
            ui.horizontal_wrapped(|ui| {
                let name = farm
                    .fields
                    .get(id)
                    .map_or_else(|| t!("tank-loads-not-on-the-farm", id = id), |field| field.name.clone());
                super::cell(ui, 170.0, false, |ui| {
                    ui.add(egui::Label::new(&name).truncate());
                });
                let whole = plan
                    .fields
                    .iter()
                    .find(|planned| planned.field == *id)
                    .map(|planned| figures::area(planned.area, units))
                    .unwrap_or_default();
                super::cell(ui, 80.0, true, |ui| {
                    ui.label(whole);
                });
                ui.label(look::soft(ui, t!("tank-loads-only")));
                let mut part = pass.parts.get(id).cloned();
                let only = t!("tank-loads-part-of-to-spray", name = name);
                boxes::quantity_or_none(ui, &only, &mut part, 90.0);
                offers::at_box(ui, &only, &Slot::Part { pass: plan.pass.clone(), field: id.clone() });
                match part {
                    Some(part) => {
                        pass.parts.insert(id.clone(), part);
                    }
                    None => {
                        pass.parts.shift_remove(id);
                    }
                }
                // It stands in the first row, too, so that the acts after it are in one line.
                let earlier = egui::Button::new(look::act(ui, t!("tank-loads-earlier"))).frame(false);
                if ui
                    .add_enabled(at > 0, earlier)
                    .on_disabled_hover_text(t!("parts-it-is-the-first-already"))
                    .accessible_name(t!("tank-loads-spray-earlier", name = name))
                    .clicked()
                {
                    swap = Some(at);
                }
                if boxes::act(ui, t!("tank-loads-leave-out"))
                    .accessible_name(t!("tank-loads-leave-name-out", name = name))
                    .clicked()
                {
                    remove = Some(at);
                }
            });
        });
    }
    if let Some(at) = swap {
        pass.fields.swap(at, at - 1);
    }
    if let Some(at) = remove {
        let id = pass.fields.remove(at);
        pass.parts.shift_remove(&id);
    }
    let free: Vec<(String, String)> = farm
        .fields
        .iter()
        .filter(|(id, _)| !pass.fields.contains(id))
        .map(|(id, field)| (id.clone(), format!("{} · {} {}", field.name, field.area.text(), field.crop)))
        .collect();
    if !free.is_empty() {
        let mut add = String::new();
        let mut choices = vec![String::new()];
        choices.extend(free.iter().map(|(id, _)| id.clone()));
        boxes::choice(
            ui,
            t!("tank-loads-add-a-field"),
            &mut add,
            &choices,
            |id| {
                free.iter()
                    .find(|(known, _)| known == id)
                    .map_or_else(|| t!("tank-loads-add-a-field-e12").to_owned(), |(_, text)| text.clone())
            },
            260.0,
        );
        if !add.is_empty() {
            pass.fields.push(add);
        }
    } else if farm.fields.is_empty() {
        ui.label(look::soft(ui, t!("tank-loads-the-farm-has-no-field-yet")));
    }
}

fn water(desk: &mut Desk, ui: &mut Ui, pass: &mut Pass) {
    let farm = desk.document.farm();
    ui.label(look::heading(t!("tank-loads-water")));
    if farm.waters.is_empty() {
        ui.label(look::soft(ui, t!("tank-loads-the-shed-has-no-water-yet")));
        return;
    }
    ui.horizontal_wrapped(|ui| {
        for (id, water) in &farm.waters {
            ui.selectable_value(&mut pass.water, id.clone(), &water.name);
        }
    });
}

fn rig(desk: &mut Desk, ui: &mut Ui, pass: &mut Pass, plan: &Plan) {
    let farm = desk.document.farm();
    let units = farm.units;
    ui.label(look::heading(t!("tank-loads-rig-and-setting")));
    if farm.rigs.is_empty() {
        ui.label(look::soft(ui, t!("tank-loads-the-shed-has-no-rig-yet")));
    }
    ui.horizontal_wrapped(|ui| {
        for (id, rig) in &farm.rigs {
            ui.selectable_value(&mut pass.rig, id.clone(), format!("{} · {}", rig.name, rig.tank.text()));
        }
    });
    let usual = farm.rigs.get(&pass.rig);
    boxes::row(ui, t!("tank-loads-spray-volume-a80"), |ui| {
        boxes::quantity_or_none(ui, t!("tank-loads-spray-volume-over-ground"), &mut pass.carrier, 120.0);
        offers::at_box(ui, t!("tank-loads-spray-volume-over-ground"), &Slot::Carrier(plan.pass.clone()));
        boxes::understood(ui, pass.carrier.as_ref(), units);
    });
    if let Some(rig) = usual.filter(|rig| !rig.sets.is_empty() || !pass.nozzles.is_empty()) {
        boxes::row(ui, t!("tank-loads-nozzle-set"), |ui| nozzle_set(ui, rig, pass));
    }
    boxes::row(ui, t!("tank-loads-speed-row"), |ui| {
        boxes::quantity_or_none(ui, t!("tank-loads-speed"), &mut pass.speed, 120.0);
        offers::at_box(ui, t!("tank-loads-speed"), &Slot::PassSpeed(plan.pass.clone()));
        usual_of(ui, pass.speed.is_none(), usual.and_then(|rig| rig.speed.as_ref()));
    });
    boxes::row(ui, t!("tank-loads-pressure-row"), |ui| {
        boxes::quantity_or_none(ui, t!("tank-loads-pressure"), &mut pass.pressure, 120.0);
        offers::at_box(ui, t!("tank-loads-pressure"), &Slot::PassPressure(plan.pass.clone()));
        let usual = usual.and_then(|rig| rig.pressure.as_ref());
        match plan.setting.as_ref().and_then(|setting| setting.pressure) {
            Some(pressure) if pass.pressure.is_none() && usual.is_none() => {
                ui.label(look::soft(ui, t!("tank-loads-by-the-nozzle-set", pressure = pressure.show(units))));
            }
            _ => usual_of(ui, pass.pressure.is_none(), usual),
        }
    });
    boxes::row(ui, t!("tank-loads-droplets-row"), |ui| {
        // With nozzle sets the class follows from the set and its pressure; the rig's own counts for nothing then.
        let usual = if usual.is_some_and(|rig| !rig.sets.is_empty()) {
            t!("tank-loads-as-the-set-gives").to_owned()
        } else {
            let class = usual.and_then(|rig| rig.droplets).map_or(t!("tank-loads-not-known"), Droplets::name);
            t!("tank-loads-as-the-rig", class = class)
        };
        boxes::droplets_or_none(ui, t!("tank-loads-droplet-class"), &mut pass.droplets, &usual, 190.0);
    });
    boxes::row(ui, t!("tank-loads-boom-height"), |ui| {
        boxes::quantity_hinted(
            ui,
            t!("tank-loads-boom-height-095"),
            &mut pass.height,
            look::BOX,
            t!("tank-loads-e-g-20-in-or-50"),
        );
        offers::at_box(ui, t!("tank-loads-boom-height-095"), &Slot::PassHeight(plan.pass.clone()));
        usual_of(ui, pass.height.is_none(), usual.and_then(|rig| rig.height.as_ref()));
    });
    if pass.carrier_kind != CarrierKind::Water || pass.density.is_some() {
        boxes::row(ui, t!("tank-loads-carrier-density"), |ui| {
            boxes::quantity_or_none(ui, t!("tank-loads-carrier-density-bab"), &mut pass.density, 120.0);
            boxes::understood(ui, pass.density.as_ref(), units);
            ui.label(look::soft(ui, t!("tank-loads-of", carrier_kind = pass.carrier_kind.name())));
        });
    }
    boxes::row(ui, t!("tank-loads-the-tank-is-filled"), |ui| {
        let say = |fills: &Fills| fills.name().to_owned();
        boxes::choice(ui, t!("tank-loads-the-tank-is-filled-a1c"), &mut pass.fills, &Fills::ALL, say, 250.0);
    });
    boxes::row(ui, t!("tank-loads-not-before"), |ui| {
        boxes::time_or_none(ui, t!("tank-loads-not-to-begin-before"), &mut pass.start, 120.0);
    });
    boxes::row(ui, t!("tank-loads-operator-row"), |ui| {
        boxes::text_or_empty(
            ui,
            t!("tank-loads-operator-of-the-pass"),
            &mut pass.operator,
            190.0,
            t!("tank-loads-who-sprays-it"),
        );
        ui.label(look::soft(ui, t!("tank-loads-printed-on-the-evening-sheet")));
    });
    boxes::row(ui, t!("tank-loads-words-for-the-crew"), |ui| {
        boxes::text(ui, t!("tank-loads-words-for-the-crew-0ab"), &mut pass.note, 320.0);
    });
}

/// The set of the pass; empty for the one usually fitted. A set that the rig no longer has is kept until another is chosen.
fn nozzle_set(ui: &mut Ui, rig: &Rig, pass: &mut Pass) {
    let fitted = tankard_core::rig::fitted(rig).map_or(t!("tank-loads-none"), |(_, set)| set.name.as_str());
    let mut all = vec![Id::new()];
    all.extend(rig.sets.keys().cloned());
    if !all.contains(&pass.nozzles) {
        all.push(pass.nozzles.clone());
    }
    let say = |id: &Id| match rig.sets.get(id) {
        Some(set) => set.name.clone(),
        None if id.is_empty() => t!("tank-loads-usually-fitted", fitted = fitted),
        None => t!("tank-loads-not-on", id = id, name = rig.name),
    };
    boxes::choice(ui, t!("tank-loads-nozzle-set-229"), &mut pass.nozzles, &all, say, 250.0);
}

fn usual_of<Q: Quantity>(ui: &mut Ui, shown: bool, usual: Option<&AsTyped<Q>>) {
    if shown {
        let text = usual.map_or_else(
            || t!("tank-loads-the-rig-has-no-usual-one").to_owned(),
            |usual| t!("tank-loads-the-rigs-usual", usual = usual.text()),
        );
        ui.label(look::soft(ui, text));
    }
}
