//! The map itself: what is drawn on it, and what pointer and keys do there.

use egui::{Align2, EventFilter, Painter, PointerButton, Pos2, Rect, Response, Sense, Stroke, Ui, Vec2};
use tankard_core::farm::Id;
use tankard_core::t;

use super::camera::{Camera, Screen};
use super::labels::Taken;
use super::land::{Bounds, spot};
use super::sketch::rounded_place;
use super::snap::{self, Near};
use super::{Fit, Other, State, edit, furniture, labels, paint, wind};
use crate::app::Desk;
use crate::keys::{self, map as at};
use crate::look::{self, Colours};

/// How far an arrow key moves the map, in points.
const STEP: f32 = 60.0;

/// Shows the map in a room of a size.
pub(super) fn show(map: &mut State, desk: &mut Desk, ui: &mut Ui, size: Vec2) {
    let (rect, response) = ui.allocate_exact_size(size, Sense::click_and_drag());
    map.place_camera(desk, rect.size());
    keys(map, desk, ui, &response);
    wheel(map, ui, &response);
    map.place_camera(desk, rect.size());
    let near = pointer(map, desk, ui, &response);
    response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Canvas, true, summary(map, desk)));
    if ui.is_rect_visible(rect) {
        draw(map, desk, ui, &response, near);
    }
}

impl State {
    /// Zooms about the middle.
    pub(super) fn zoom(&mut self, factor: f64) {
        if let Some(camera) = &mut self.camera {
            *camera = camera.zoomed(factor, Pos2::ZERO, Rect::from_center_size(Pos2::ZERO, Vec2::ZERO));
        }
    }

    /// Brings into view what is asked for.
    fn place_camera(&mut self, desk: &Desk, size: Vec2) {
        let plain =
            || if self.land.bounds.is_none() { Camera::PLAIN } else { Camera::beside_legend(&self.land.bounds, size) };
        let was_asked = std::mem::take(&mut self.fit_asked);
        let Some(fit) = self.fit.take() else {
            if self.camera.is_none() {
                self.camera = Some(plain());
            }
            return;
        };
        let chosen = match (&self.other, &desk.fields.chosen) {
            (Other::Gateway(id, at), _) => {
                self.land.gateways.iter().find(|known| known.0 == *id && known.1 == *at).map(|known| {
                    let mut bounds = Bounds::NONE;
                    bounds.add(known.2);
                    bounds
                })
            }
            (Other::None, Some(id)) => self.land.field(id).map(|piece| piece.bounds),
            _ => self.edited(desk).map(|piece| piece.bounds),
        };
        self.camera = match (fit, chosen, self.camera) {
            (Fit::Chosen, Some(bounds), Some(camera)) => {
                let part = camera.on(Rect::from_min_size(Pos2::ZERO, size)).part(&bounds);
                let is_seen =
                    Rect::from_min_size(Pos2::ZERO, size).contains_rect(part) && part.width().max(part.height()) > 24.0;
                // What is seen well stays where it is, unless it was asked for.
                Some(if is_seen && !was_asked { camera } else { Camera::fitting(&bounds, size) })
            }
            (Fit::Chosen, Some(bounds), None) => Some(Camera::fitting(&bounds, size)),
            (Fit::Chosen, None, camera) => camera.or_else(|| Some(plain())),
            (Fit::All, ..) => Some(plain()),
        };
    }

    /// Where a point at the pointer goes.
    fn aimed(&self, screen: &Screen, at: Pos2) -> Option<Near> {
        // The first point closes what is drawn.
        let first = self.sketch.as_ref().filter(|sketch| sketch.is_enough() && sketch.what.is_ring());
        let first = first.and_then(|sketch| sketch.points.first()).map(|first| Near {
            at: *first,
            on_screen: snap::on_screen(&self.land, screen, *first),
            is_point: true,
        });
        if let Some(first) = first.filter(|first| first.on_screen.distance(at) <= snap::REACH) {
            return Some(first);
        }
        if self.snaps { snap::near(&self.land, screen, at, None) } else { None }
    }
}

fn keys(map: &mut State, desk: &mut Desk, ui: &Ui, response: &Response) {
    if !response.has_focus() {
        return;
    }
    let in_the_middle = map.sketch.is_some() || map.editing;
    ui.memory_mut(|memory| {
        let filter = EventFilter { horizontal_arrows: true, vertical_arrows: true, escape: in_the_middle, tab: false };
        memory.set_focus_lock_filter(response.id, filter);
    });
    let pressed = |key: keys::Local| key.taken(ui.ctx());
    let moves = [(at::LEFT, Vec2::X), (at::RIGHT, -Vec2::X), (at::UP, Vec2::Y), (at::DOWN, -Vec2::Y)];
    for (key, by) in moves {
        if pressed(key)
            && let Some(camera) = &mut map.camera
        {
            *camera = camera.dragged(by * STEP);
        }
    }
    if pressed(at::CLOSER) {
        map.zoom(1.5);
    }
    if pressed(at::AWAY) {
        map.zoom(1.0 / 1.5);
    }
    if pressed(at::ALL_OF_IT) {
        map.fit = Some(Fit::All);
    }
    if pressed(at::FIELD) {
        map.ask_fit();
    }
    for (key, by) in [(at::FIELD_BEFORE, -1), (at::FIELD_NEXT, 1)] {
        if pressed(key) {
            step_field(map, desk, by);
        }
    }
    if map.sketch.is_some() {
        if pressed(at::POINT)
            && let Some(camera) = map.camera
        {
            let at = rounded_place(map.land.flat.to_globe(camera.middle));
            map.add_point(desk, at);
        }
        if pressed(at::BACK) {
            map.back();
        }
        if pressed(at::FINISH) {
            map.finish(desk);
        }
    } else if map.editing && pressed(at::TAKE_OUT) {
        map.take_out(desk);
    }
    if in_the_middle && pressed(at::DROP) {
        map.drop_sketch();
    }
}

/// Chooses the field before or after, of those on the map.
fn step_field(map: &mut State, desk: &mut Desk, by: isize) {
    let at = desk.fields.chosen.as_ref().and_then(|id| map.land.fields.iter().position(|(known, _)| known == id));
    let next = at.map_or(0, |at| at.saturating_add_signed(by).min(map.land.fields.len().saturating_sub(1)));
    if let Some((id, _)) = map.land.fields.get(next) {
        choose(map, desk, id.clone());
        map.fit = Some(Fit::Chosen);
    }
}

fn wheel(map: &mut State, ui: &Ui, response: &Response) {
    let (Some(camera), Some(at)) = (map.camera, response.hover_pos()) else { return };
    let (scroll, zoom) = ui.input(|input| (input.smooth_scroll_delta().y, input.zoom_delta()));
    let factor = f64::from(zoom) * (f64::from(scroll) / 200.0).exp();
    if (factor - 1.0).abs() > 1e-4 {
        map.camera = Some(camera.zoomed(factor, at, response.rect));
    }
}

/// What the pointer does; gives where a new point would go.
fn pointer(map: &mut State, desk: &mut Desk, ui: &Ui, response: &Response) -> Option<Near> {
    let camera = map.camera?;
    let screen = camera.on(response.rect);
    let edited = if map.editing { map.edited(desk) } else { None };
    if response.drag_started_by(PointerButton::Primary)
        && let (Some(piece), Some(at)) = (&edited, ui.input(|input| input.pointer.press_origin()))
    {
        map.grab(piece, &screen, at);
    }
    if let (Some(piece), true) = (&edited, map.drag.is_some()) {
        if let Some(at) = response.interact_pointer_pos() {
            map.drag_to(piece, &screen, at);
        }
        if response.drag_stopped() {
            map.let_go(desk);
        }
    } else if response.dragged() {
        map.camera = Some(camera.dragged(response.drag_delta()));
    }
    if response.clicked() || response.drag_started() {
        response.request_focus();
    }
    let near = response.hover_pos().filter(|_| map.sketch.is_some()).and_then(|at| map.aimed(&screen, at));
    let clicked = response.clicked_by(PointerButton::Primary).then(|| response.interact_pointer_pos()).flatten();
    let Some(at) = clicked else { return near };
    if map.sketch.is_some() {
        click_sketch(map, desk, &screen, at, response.double_clicked());
    } else if let Some(piece) = &edited {
        // A click on a point chooses it, one on an edge puts a point in there.
        if map.grab(piece, &screen, at) {
            if map.drag.is_some_and(|drag| drag.is_new) {
                map.drag_to(piece, &screen, at);
                map.let_go(desk);
            }
            map.drag = None;
        } else {
            click_choose(map, desk, &screen, at);
        }
    } else {
        click_choose(map, desk, &screen, at);
    }
    near
}

fn click_sketch(map: &mut State, desk: &mut Desk, screen: &Screen, at: Pos2, is_double: bool) {
    let near = map.aimed(screen, at);
    let Some(sketch) = &map.sketch else { return };
    let closes =
        sketch.what.is_ring() && sketch.is_enough() && near.is_some_and(|near| sketch.points.first() == Some(&near.at));
    let last = sketch.points.last().map(|last| snap::on_screen(&map.land, screen, *last));
    // The second click of two adds no point, and finishes.
    if closes || is_double && last.is_some_and(|last| last.distance(at) < snap::REACH) {
        map.finish(desk);
        return;
    }
    let to = near.filter(|near| near.is_point).map_or_else(
        || rounded_place(near.map_or_else(|| map.land.flat.to_globe(screen.ground(at)), |near| near.at)),
        |near| near.at,
    );
    map.add_point(desk, to);
}

/// Chooses what lies at a place: a gateway, a point or line among the fields, a field, an area among them.
fn click_choose(map: &mut State, desk: &mut Desk, screen: &Screen, at: Pos2) {
    let ground = screen.ground(at);
    let here = spot(ground);
    let gateway =
        map.land.gateways.iter().find(|(.., place)| screen.place(*place).distance(at) <= snap::REACH).cloned();
    if let Some((id, number, _)) = gateway {
        choose(map, desk, id.clone());
        map.choose_other(Other::Gateway(id, number));
        return;
    }
    let reach = f64::from(snap::REACH) * screen.camera.metres;
    let is_hit = |piece: &super::land::Piece| {
        piece.dots.iter().any(|dot| screen.place(*dot).distance(at) <= snap::REACH)
            || piece.lines.iter().any(|line| {
                line.windows(2).any(|pair| {
                    let &[from, to] = pair else { return false };
                    snap::foot(ground, from, to).is_some_and(|(far, _)| far <= reach)
                })
            })
    };
    let beside = map.land.beside.iter().find(|(_, piece)| is_hit(piece)).map(|(id, _)| id.clone());
    let field = map.land.fields.iter().find(|(_, piece)| piece.holds(here)).map(|(id, _)| id.clone());
    let area = || map.land.beside.iter().find(|(_, piece)| piece.holds(here)).map(|(id, _)| id.clone());
    if let Some(id) = beside {
        map.choose_other(Other::Surrounding(id));
    } else if let Some(id) = field {
        choose(map, desk, id);
    } else if let Some(id) = area() {
        map.choose_other(Other::Surrounding(id));
    }
}

/// Chooses a field here and in the list.
fn choose(map: &mut State, desk: &mut Desk, id: Id) {
    map.choose_other(Other::None);
    if desk.fields.chosen.as_ref() != Some(&id) {
        desk.fields.removing = false;
        map.seen = Some(id.clone());
        map.point = None;
        desk.fields.reveal = true;
        desk.fields.chosen = Some(id);
    }
}

fn draw(map: &mut State, desk: &Desk, ui: &Ui, response: &Response, near: Option<Near>) {
    let Some(camera) = map.camera else { return };
    let screen = camera.on(response.rect);
    let colours = look::colours(ui);
    let farm = desk.document.farm();
    let painter = ui.painter().with_clip_rect(response.rect.intersect(ui.clip_rect()));
    painter.rect_filled(response.rect, 4, colours.between);
    if let Some(background) = &farm.background {
        map.picture.show(background, desk.document.path(), &painter, (&screen, &map.land));
    }
    let chosen = desk.fields.chosen.as_ref();
    let (surrounding, gateway) = match &map.other {
        Other::None => (None, None),
        Other::Surrounding(id) => (Some(id), None),
        Other::Gateway(id, at) => (None, Some((id.clone(), *at))),
    };
    paint::surroundings(&painter, &screen, (farm, &map.land), surrounding, true, colours);
    paint::fields(&painter, &screen, &map.land, &map.coloured, chosen, colours);
    for strip in &map.ground.strips {
        paint::unsprayed(&painter, &screen, strip, colours);
    }
    paint::surroundings(&painter, &screen, (farm, &map.land), surrounding, false, colours);
    paint::gateways(&painter, &screen, &map.land, gateway.as_ref(), colours);
    let mut taken = Taken::of(response.rect);
    furnish(map, desk, &painter, &screen, &mut taken, colours);
    labels::fields(&painter, &screen, (farm, &map.land), &map.coloured, chosen, &mut taken, colours);
    labels::others(&painter, &screen, (farm, &map.land), (surrounding, gateway.as_ref()), &mut taken, colours);
    handles(map, desk, &painter, &screen, colours);
    sketched(map, &painter, &screen, response, near, colours);
    if map.land.bounds.is_none() && map.sketch.is_none() {
        let at = response.rect.center();
        let words = [
            (look::title_font(), t!("fields-no-field-has-a-boundary-yet")),
            (look::body(false), t!("fields-choose-a-field-at-the-left")),
        ];
        for (row, (font, text)) in words.into_iter().enumerate() {
            let width = response.rect.width() - 40.0;
            let galley = painter.layout(text.to_owned(), font, colours.ink, width);
            let place = at - Vec2::new(galley.size().x / 2.0, 30.0 - row as f32 * 34.0);
            painter.galley(place, galley, colours.ink);
        }
    }
    painter.rect_stroke(response.rect, 4, Stroke::new(1.0, colours.hairline), egui::StrokeKind::Inside);
}

fn furnish(map: &State, desk: &Desk, painter: &Painter, screen: &Screen, taken: &mut Taken, colours: &Colours) {
    let farm = desk.document.farm();
    let on_ground = map.land.flat.scale_at(screen.camera.middle.y);
    taken.take(furniture::scale_bar(painter, screen, on_ground, farm.units, colours));
    taken.take(furniture::north(painter, screen.rect, colours));
    let pass = map.shown_pass(desk).and_then(|id| farm.passes.get(id));
    if let Some(wind) = pass.and_then(|pass| wind::of(farm, pass)) {
        taken.take(furniture::wind(painter, screen.rect, &wind, colours));
    }
    if !map.land.fields.is_empty() {
        let title = map.title();
        let strips = !map.ground.strips.is_empty();
        taken.take(furniture::legend(painter, screen.rect, &title, &map.coloured.classes, strips, colours));
    }
}

/// The points that can be moved, and the one that is dragged.
fn handles(map: &State, desk: &Desk, painter: &Painter, screen: &Screen, colours: &Colours) {
    if !map.editing {
        return;
    }
    let Some(piece) = map.edited(desk) else { return };
    for (place, at) in edit::in_sight(&piece, screen) {
        let is_chosen = map.point == Some(place);
        let half = if is_chosen { 5.0 } else { 3.5 };
        let rect = Rect::from_center_size(at, Vec2::splat(2.0 * half));
        painter.rect_filled(rect, 1, if is_chosen { colours.brass } else { colours.sheet });
        painter.rect_stroke(rect, 1, Stroke::new(1.5, colours.brass), egui::StrokeKind::Middle);
    }
    if let Some(drag) = &map.drag {
        let to = snap::on_screen(&map.land, screen, drag.to);
        for from in edit::neighbours(&piece, screen, drag) {
            painter.line_segment([from, to], Stroke::new(2.0, colours.brass));
        }
        painter.circle_filled(to, 5.0, colours.brass);
    }
}

/// What is being drawn.
fn sketched(
    map: &State,
    painter: &Painter,
    screen: &Screen,
    response: &Response,
    near: Option<Near>,
    colours: &Colours,
) {
    let Some(sketch) = &map.sketch else { return };
    let mut points: Vec<Pos2> = sketch.points.iter().map(|at| snap::on_screen(&map.land, screen, *at)).collect();
    let ink = Stroke::new(2.0, colours.brass);
    for (number, at) in points.iter().enumerate() {
        painter.circle(*at, 4.0, colours.sheet, ink);
        if points.len() < 40 {
            let beside = *at + Vec2::new(7.0, -7.0);
            painter.text(beside, Align2::LEFT_BOTTOM, number + 1, look::gauge_font(), colours.ink);
        }
    }
    let pointer = near.map(|near| near.on_screen).or(response.hover_pos());
    if !sketch.what.is_point() {
        paint::edge(painter, &points, false, ink);
        if let (Some(pointer), false) = (pointer, points.is_empty()) {
            points.push(pointer);
            let ends = points.iter().rev().take(2).copied().collect::<Vec<_>>();
            crate::parts::hatch::dashed(painter, &ends, ink);
            if sketch.what.is_ring()
                && points.len() > 2
                && let Some(first) = points.first()
            {
                crate::parts::hatch::dashed(painter, &[pointer, *first], Stroke::new(1.0, colours.brass));
            }
        }
    }
    if let Some(near) = near {
        if near.is_point {
            painter.rect_stroke(
                Rect::from_center_size(near.on_screen, Vec2::splat(14.0)),
                0,
                Stroke::new(2.0, colours.water),
                egui::StrokeKind::Middle,
            );
        } else {
            painter.circle_stroke(near.on_screen, 7.0, Stroke::new(2.0, colours.water));
        }
    }
    if response.has_focus() && !response.hovered() {
        // Where Space puts a point.
        let at = screen.rect.center();
        for by in [Vec2::X, Vec2::Y] {
            painter.line_segment([at - by * 12.0, at + by * 12.0], Stroke::new(1.5, colours.brass));
        }
    }
}

/// What the map shows, in words.
fn summary(map: &State, desk: &Desk) -> String {
    let farm = desk.document.farm();
    let count = map.land.fields.len();
    if count == 0 {
        return t!("fields-map-no-field-has-a-boundary").to_owned();
    }
    let classes: Vec<String> = map
        .coloured
        .classes
        .iter()
        .filter(|class| class.count > 0)
        .take(12)
        .map(|class| format!("{} {} ({})", class.name, class.count, class.pattern.name()))
        .collect();
    let mut words =
        t!("fields-map-a-boundary-coloured-by", count = count, title = map.title(), classes = classes.join(", "));
    if let Some(field) = desk.fields.chosen.as_ref().and_then(|id| farm.fields.get(id)) {
        let said = desk.fields.chosen.as_ref().map_or("", |id| map.coloured.words(id));
        words = t!("fields-chosen", words = words, name = field.name, area = field.area.show(farm.units), said = said);
    }
    if let Some(said) = map.strip_words(farm, desk.fields.chosen.as_ref()) {
        words = format!("{words}; {said}");
    }
    let pass = map.shown_pass(desk).and_then(|id| farm.passes.get(id));
    if let Some(wind) = pass.and_then(|pass| wind::of(farm, pass)) {
        words = format!("{words}; {}, {}", wind.words, wind.from);
    }
    words
}
