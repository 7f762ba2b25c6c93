//! What stands under the map: what is being drawn or moved, what is chosen, the picture. All of it by keyboard.

use egui::{Key, ScrollArea, TextEdit, Ui};
use geo::Coord;
use tankard_core::farm::{Farm, Id, SurroundingKind};
use tankard_core::language::days::short_date;
use tankard_core::quantity::Quantity;
use tankard_core::t;

use super::points::{self, Place};
use super::sketch::{Drawn, Sketch, read_place, rounded_place, show_place};
use super::{Other, State};
use crate::app::Desk;
use crate::files::Purpose;
use crate::look;
use crate::parts::{boxes, mark};

/// Width of a box for a place.
const PLACE: f32 = 176.0;

/// Shows it.
pub(super) fn show(map: &mut State, desk: &mut Desk, ui: &mut Ui) {
    ui.add_space(6.0);
    ScrollArea::vertical().id_salt("under the map").auto_shrink(false).show(ui, |ui| {
        ui.spacing_mut().item_spacing.y = 3.0;
        if let Some(problem) = &map.problem {
            mark::line(ui, tankard_core::finding::Level::Check, problem);
        }
        if map.sketch.is_some() {
            sketch(map, desk, ui);
        } else if map.editing {
            editing(map, desk, ui);
        } else {
            match map.other.clone() {
                Other::None => field(map, desk, ui),
                Other::Surrounding(id) => surrounding(map, desk, ui, &id),
                Other::Gateway(id, at) => gateway(map, desk, ui, &id, at),
            }
        }
        if map.picture_open {
            ui.add_space(4.0);
            picture(map, desk, ui);
        } else if let (Some(_), Some(problem)) = (&desk.document.farm().background, map.picture.problem()) {
            mark::line(ui, tankard_core::finding::Level::Check, problem);
        }
    });
}

/// What something on the map is called.
pub(super) fn name_of(farm: &Farm, other: &Other) -> String {
    match other {
        Other::None => t!("fields-among-the-fields-083").to_owned(),
        Other::Surrounding(id) => farm.surroundings.get(id).map_or_else(String::new, |one| {
            let name = one.name.trim();
            if name.is_empty() { one.kind.name().to_owned() } else { format!("{name}, {}", one.kind.name()) }
        }),
        Other::Gateway(id, at) => {
            let name = farm.fields.get(id).and_then(|field| field.gateways.get(*at)).map(|gateway| gateway.name.trim());
            name.filter(|name| !name.is_empty())
                .map_or_else(|| t!("fields-gateway", at = at + 1), |name| t!("fields-gateway-name", name = name))
        }
    }
}

fn heading(ui: &mut Ui, title: &str, beside: &str) {
    ui.horizontal_wrapped(|ui| {
        ui.label(look::strong(title));
        ui.label(beside);
    });
}

/// What is being drawn.
fn sketch(map: &mut State, desk: &mut Desk, ui: &mut Ui) {
    let Some(sketch) = &map.sketch else { return };
    let farm = desk.document.farm();
    let what = sketch.what;
    let title = match sketch.field.as_ref().and_then(|id| farm.fields.get(id)) {
        Some(field) => t!("fields-drawing-the-of", what = what.name(), name = field.name),
        None => t!("fields-drawing-the", what = what.name()),
    };
    heading(ui, &title, &sketch.measured(farm.units));
    let hint = if what.is_point() {
        t!("fields-click-where-it-lies-or-type")
    } else {
        t!("fields-click-point-after-point-or-type")
    };
    boxes::say(ui, hint);
    let is_enough = sketch.is_enough();
    ui.horizontal_wrapped(|ui| {
        ui.label(look::soft(ui, t!("fields-latitude-longitude")));
        let edit = TextEdit::singleline(&mut map.typed).desired_width(PLACE).hint_text("41.2, -96.4");
        let response = ui.add(edit).accessible_name(t!("fields-latitude-and-longitude-of-the-point"));
        // The click that began it would take the keyboard away again.
        if map.to_type && !ui.input(|input| input.pointer.any_click()) {
            map.to_type = false;
            response.request_focus();
        } else if map.to_type {
            ui.ctx().request_repaint();
        }
        let entered = response.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter));
        let escaped = response.lost_focus() && ui.input(|input| input.key_pressed(Key::Escape));
        let add = ui.button(t!("fields-add-the-point")).clicked();
        if entered && map.typed.trim().is_empty() {
            map.finish(desk);
        } else if entered || add {
            match read_place(&map.typed) {
                Ok(at) => {
                    if map.add_point(desk, at) {
                        map.typed.clear();
                        map.show_place(at);
                    }
                }
                Err(why) => map.problem = Some(why),
            }
            response.request_focus();
        } else if escaped {
            map.drop_sketch();
        }
        if !what.is_point() {
            if ui.button(t!("fields-take-the-last-back")).clicked() {
                map.back();
            }
            ui.add_enabled_ui(is_enough, |ui| {
                let finish = ui.button(t!("fields-finish"));
                if finish.on_disabled_hover_text(t!("fields-not-enough-points-yet")).clicked() {
                    map.finish(desk);
                }
            });
        }
        if ui.button(t!("fields-drop-it")).clicked() {
            map.drop_sketch();
        }
    });
}

/// The points of what is there.
fn editing(map: &mut State, desk: &mut Desk, ui: &mut Ui) {
    let Some(paths) = map.edited_shape(desk).map(points::paths) else {
        map.editing = false;
        return;
    };
    let farm = desk.document.farm();
    let name = match &map.other {
        Other::None => desk
            .fields
            .chosen
            .as_ref()
            .and_then(|id| farm.fields.get(id))
            .map_or_else(String::new, |field| field.name.clone()),
        other => name_of(farm, other),
    };
    let all: Vec<Place> = paths
        .iter()
        .enumerate()
        .flat_map(|(path, points)| (0..points.len()).map(move |at| Place { path, at }))
        .collect();
    let number = map.point.and_then(|place| all.iter().position(|known| *known == place));
    let shown = number.map_or_else(
        || t!("fields-many-points", count = all.len()),
        |at| t!("fields-point-of", at = at + 1, all = all.len()),
    );
    heading(ui, &t!("fields-moving-points-of", name = name), &shown);
    boxes::say(ui, t!("fields-drag-a-point-click-an-edge"));
    ui.horizontal_wrapped(|ui| {
        let step = |by: isize| {
            let at = number.map_or(0, |at| at.saturating_add_signed(by).min(all.len().saturating_sub(1)));
            all.get(at).copied()
        };
        if ui.button(t!("fields-point-before")).clicked() {
            map.point = step(-1);
        }
        if ui.button(t!("fields-next-point")).clicked() {
            map.point = step(1);
        }
        if let (Some(place), Some(at)) =
            (map.point, map.point.and_then(|place| paths.get(place.path)?.get(place.at)).copied())
        {
            if let Some(to) = place_box(map, ui, t!("fields-latitude-and-longitude-of-the-chosen"), at) {
                map.move_point(desk, place, to);
            }
            let next = paths.get(place.path).and_then(|path| path.get(place.at + 1).or(path.first())).copied();
            let takes_more = paths.get(place.path).is_some_and(|path| path.len() > 1);
            if let (Some(next), true) = (next, takes_more) {
                if ui.button(t!("fields-put-one-in-after-it")).clicked() {
                    let middle = Coord { x: f64::midpoint(at.x, next.x), y: f64::midpoint(at.y, next.y) };
                    map.put_in(desk, Place { at: place.at + 1, ..place }, rounded_place(middle));
                }
                if ui.button(t!("fields-take-it-out")).clicked() {
                    map.take_out(desk);
                }
            }
        }
        if ui.button(t!("fields-done")).clicked() {
            map.drop_sketch();
        }
    });
}

/// A box for a place that is there; gives another one that was typed.
fn place_box(map: &mut State, ui: &mut Ui, name: &str, current: Coord<f64>) -> Option<Coord<f64>> {
    let id = ui.make_persistent_id(name);
    let mut text = if ui.memory(|memory| memory.has_focus(id)) {
        ui.data(|data| data.get_temp(id)).unwrap_or_else(|| show_place(current))
    } else {
        show_place(current)
    };
    let response = ui.add(TextEdit::singleline(&mut text).id(id).desired_width(PLACE)).accessible_name(name);
    if response.changed() {
        ui.data_mut(|data| data.insert_temp(id, text.clone()));
    }
    if !response.lost_focus() {
        return None;
    }
    let typed = ui.data_mut(|data| data.remove_temp::<String>(id))?;
    if ui.input(|input| input.key_pressed(Key::Escape)) || typed == show_place(current) {
        return None;
    }
    read_place(&typed).map_err(|why| map.problem = Some(why)).ok()
}

/// The wind that the shown pass is planned for, and in which wind the plan breaks.
fn wind(map: &State, desk: &mut Desk, ui: &mut Ui) {
    let Some((_, Some(id))) = &map.ground.of else { return };
    let Some(before) = desk.document.farm().passes.get(id).map(|pass| pass.wind_from.clone()) else { return };
    let mut from = before.clone();
    ui.horizontal_wrapped(|ui| {
        ui.label(look::soft(ui, t!("fields-planned-for-wind-from")));
        boxes::quantity_hinted(
            ui,
            t!("fields-wind-that-the-pass-is-planned"),
            &mut from,
            look::BOX,
            t!("fields-as-forecast"),
        );
        if let Some(words) = &map.ground.shift {
            ui.label(words);
        }
    });
    if from != before {
        desk.document.edit(|farm| {
            if let Some(pass) = farm.passes.get_mut(id) {
                pass.wind_from = from;
            }
        });
    }
}

/// The chosen field.
fn field(map: &mut State, desk: &mut Desk, ui: &mut Ui) {
    let farm = desk.document.farm();
    let chosen = desk.fields.chosen.as_ref().and_then(|id| farm.fields.get_key_value(id));
    let Some((id, field)) = chosen else {
        boxes::say(ui, t!("fields-no-field-is-chosen"));
        return;
    };
    let name = if field.name.trim().is_empty() { t!("fields-a-field-without-a-name-736") } else { field.name.trim() };
    let crop = [field.crop.trim(), field.stage.trim()].into_iter().filter(|text| !text.is_empty());
    let crop = crop.collect::<Vec<_>>().join(" ");
    heading(ui, name, &crop);
    let stated = field.area.show(farm.units);
    let words = match &field.boundary {
        Some(boundary) => {
            let from = match field.area_from {
                tankard_core::farm::AreaFrom::Stated => t!("fields-plans-go-by-the-stated-area"),
                tankard_core::farm::AreaFrom::Boundary => t!("fields-plans-go-by-the-boundary"),
            };
            t!("fields-stated-from-the-boundary", stated = stated, area = boundary.area().show(farm.units), from = from)
        }
        None => t!("fields-stated-it-has-no-boundary-yet", stated = stated),
    };
    ui.label(words);
    let said = map.coloured.words(id);
    if !said.is_empty() && !matches!(map.colouring, super::Colouring::Crop | super::Colouring::Stage) {
        ui.label(format!("{}: {said}", map.colouring.name()));
    }
    if let Some(strips) = map.strip_words(farm, Some(id)) {
        ui.label(strips);
    }
    let (id, has_boundary) = (id.clone(), field.boundary.is_some());
    let gateways = field.gateways.len();
    wind(map, desk, ui);
    ui.horizontal_wrapped(|ui| {
        if !has_boundary && boxes::act(ui, t!("fields-draw-its-boundary")).clicked() {
            map.begin(Sketch::new(Drawn::Boundary, Some(id.clone())));
        }
        if boxes::act(ui, t!("fields-open-its-page")).clicked() {
            map.open = false;
        }
        for at in 0..gateways {
            let gateway = Other::Gateway(id.clone(), at);
            if boxes::act(ui, &name_of(desk.document.farm(), &gateway)).clicked() {
                map.choose_other(gateway);
            }
        }
        if has_boundary && !map.removing && boxes::act(ui, t!("fields-remove-its-boundary")).clicked() {
            map.removing = true;
        }
    });
    if map.removing && ask(map, ui, t!("fields-remove-the-boundary-the-field-stays")) {
        map.edit(desk, |farm| {
            if let Some(field) = farm.fields.get_mut(&id) {
                field.boundary = None;
            }
        });
    }
}

/// Asks before something goes; gives whether it goes.
fn ask(map: &mut State, ui: &mut Ui, question: &str) -> bool {
    let mut yes = false;
    ui.horizontal_wrapped(|ui| {
        ui.label(question);
        yes = ui.button(t!("fields-remove-it")).clicked();
        if yes || ui.button(t!("fields-keep-it")).clicked() {
            map.removing = false;
        }
    });
    yes
}

fn surrounding(map: &mut State, desk: &mut Desk, ui: &mut Ui, id: &str) {
    let Some(before) = desk.document.farm().surroundings.get(id).cloned() else { return };
    let mut surrounding = before.clone();
    ui.horizontal_wrapped(|ui| {
        let say = |kind: &SurroundingKind| kind.name().to_owned();
        boxes::choice(ui, t!("fields-what-it-is"), &mut surrounding.kind, &SurroundingKind::ALL, say, 150.0);
        boxes::text_or_empty(
            ui,
            t!("fields-name-of-the-surrounding"),
            &mut surrounding.name,
            180.0,
            t!("fields-name-such-as-mill-creek"),
        );
        boxes::text_or_empty(
            ui,
            t!("fields-note-on-the-surrounding"),
            &mut surrounding.note,
            240.0,
            t!("fields-note-such-as-whom-to-call"),
        );
    });
    ui.horizontal_wrapped(|ui| {
        if boxes::act(ui, t!("fields-move-its-points")).clicked() {
            map.drop_sketch();
            map.editing = true;
        }
        if !map.removing && boxes::act(ui, t!("fields-remove-it-from-the-map")).clicked() {
            map.removing = true;
        }
        if boxes::act(ui, t!("fields-back-to-the-field")).clicked() {
            map.choose_other(Other::None);
        }
    });
    if surrounding != before {
        desk.document.edit(|farm| {
            farm.surroundings.insert(id.to_owned(), surrounding);
        });
    }
    if map.removing && ask(map, ui, t!("fields-remove-it-strips-along-it-go")) {
        map.edit(desk, |farm| {
            farm.surroundings.shift_remove(id);
        });
    }
}

fn gateway(map: &mut State, desk: &mut Desk, ui: &mut Ui, id: &str, at: usize) {
    let farm = desk.document.farm();
    let Some(before) = farm.fields.get(id).and_then(|field| field.gateways.get(at)).cloned() else { return };
    let mut gateway = before.clone();
    let mut to = None;
    ui.horizontal_wrapped(|ui| {
        ui.label(look::strong(t!(
            "fields-gateway-of",
            at = at + 1,
            name = farm.fields.get(id).map_or("", |field| &field.name)
        )));
        boxes::text_or_empty(
            ui,
            t!("fields-name-of-the-gateway"),
            &mut gateway.name,
            180.0,
            t!("fields-name-such-as-road-gate"),
        );
        to = place_box(map, ui, t!("fields-latitude-and-longitude-of-the-gateway"), before.at.bounds().center());
    });
    ui.horizontal_wrapped(|ui| {
        if !map.removing && boxes::act(ui, t!("fields-remove-the-gateway")).clicked() {
            map.removing = true;
        }
        if boxes::act(ui, t!("fields-back-to-the-field")).clicked() {
            map.choose_other(Other::None);
        }
    });
    if gateway != before {
        desk.document.edit(|farm| {
            if let Some(kept) = farm.fields.get_mut(id).and_then(|field| field.gateways.get_mut(at)) {
                *kept = gateway;
            }
        });
    }
    if let Some(to) = to {
        map.move_point(desk, Place { path: 0, at: 0 }, to);
    }
    if map.removing && ask(map, ui, t!("fields-remove-the-gateway-a65")) {
        map.edit(desk, |farm| {
            if let Some(field) = farm.fields.get_mut(id).filter(|field| at < field.gateways.len()) {
                field.gateways.remove(at);
            }
        });
    }
}

/// The picture under the map.
fn picture(map: &mut State, desk: &mut Desk, ui: &mut Ui) {
    let background = desk.document.farm().background.clone();
    ui.horizontal_wrapped(|ui| {
        ui.label(look::strong(t!("fields-picture-under-the-map")));
        let file = background.as_ref().map_or(t!("fields-none-yet-a-png-or-jpeg"), |one| one.file.as_str());
        ui.label(look::soft(ui, file));
        if boxes::act(ui, t!("fields-choose-a-picture")).clicked() {
            let start = desk.document.path().cloned().unwrap_or_default();
            desk.ask_file(Purpose::ReadPicture, start, ui.ctx());
        }
        if background.is_some() {
            ui.label(look::soft(ui, t!("fields-strength")));
            ui.spacing_mut().slider_width = 90.0;
            let slider = egui::Slider::new(&mut map.picture.strength, 0.0..=1.0).show_value(false);
            ui.add(slider).accessible_name(t!("fields-strength-of-the-picture"));
            if boxes::act(ui, t!("fields-take-it-out")).accessible_name(t!("fields-take-the-picture-out")).clicked() {
                map.edit(desk, |farm| farm.background = None);
            }
        }
    });
    let Some(background) = background else { return };
    if let Some(problem) = map.picture.problem() {
        mark::line(ui, tankard_core::finding::Level::Check, problem);
    }
    ui.horizontal_wrapped(|ui| {
        let corners = [
            (t!("fields-north-west-corner"), Drawn::NorthWest, &background.north_west),
            (t!("fields-south-east-corner"), Drawn::SouthEast, &background.south_east),
        ];
        for (name, what, corner) in corners {
            ui.label(look::soft(ui, name));
            let at = corner.bounds().center();
            if let Some(to) = place_box(map, ui, &t!("fields-latitude-and-longitude-of-the", name = name), at) {
                set_corner(map, desk, what, to);
            }
            if boxes::act(ui, t!("fields-click-it"))
                .accessible_name(t!("fields-click-the-on-the-map", name = name))
                .clicked()
            {
                map.begin(Sketch::new(what, None));
            }
        }
    });
}

fn set_corner(map: &mut State, desk: &mut Desk, what: Drawn, to: Coord<f64>) {
    let mut sketch = Sketch::new(what, None);
    sketch.points.push(to);
    match sketch.finish(desk.document.farm()) {
        Ok(change) => map.edit(desk, |farm| {
            change.put(farm);
        }),
        Err(why) => map.problem = Some(why),
    }
}

impl State {
    /// What of a field stays unsprayed in strips in the pass that is shown.
    pub(super) fn strip_words(&self, farm: &Farm, id: Option<&Id>) -> Option<String> {
        let ground = self.ground.fields.of_field(id?)?;
        let strips = ground.strips.iter().filter(|strip| !strip.area.is_zero());
        let to: Vec<String> =
            strips.map(|strip| t!("fields-from", width = strip.width.show(farm.units), what = strip.what)).collect();
        let pass = self.ground.of.as_ref().and_then(|(_, pass)| farm.passes.get(pass.as_ref()?))?;
        (!to.is_empty()).then(|| {
            let area = ground.strip_area.show(farm.units);
            t!("fields-stay-unsprayed", date = short_date(pass.date), area = area, to = to.join(", "))
        })
    }

    /// Brings a typed place into view: the map goes there when it lies outside of what is seen.
    fn show_place(&mut self, at: Coord<f64>) {
        let Some(camera) = &mut self.camera else { return };
        let place = self.land.flat.to_plane(at);
        let far = (place.x - camera.middle.x).abs().max((place.y - camera.middle.y).abs());
        if far > 150.0 * camera.metres {
            let points = self.sketch.iter().flat_map(|sketch| &sketch.points).map(|at| self.land.flat.to_plane(*at));
            let (mut low, mut high) = (place, place);
            for point in points {
                low = Coord { x: low.x.min(point.x), y: low.y.min(point.y) };
                high = Coord { x: high.x.max(point.x), y: high.y.max(point.y) };
            }
            camera.middle = (low + high) / 2.0;
            camera.metres = camera.metres.max((high.x - low.x).max(high.y - low.y) / 300.0);
        }
    }
}
