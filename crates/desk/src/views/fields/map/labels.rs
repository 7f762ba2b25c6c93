//! Names on the map: none over another, none larger than what it names.

use std::sync::Arc;

use egui::{Color32, FontId, Galley, Painter, Pos2, Rect, Vec2};
use tankard_core::farm::{Farm, Id};
use tankard_core::t;

use super::camera::Screen;
use super::colouring::Coloured;
use super::land::Land;
use crate::look::{self, Colours};

/// The side of a square of the grid in which taken places are looked up.
const CELL: f32 = 64.0;
/// With no more fields than this in sight, those that are smaller than their names are named beneath.
const FEW: usize = 40;
/// A letter is at least so wide; what cannot fit by that is not laid out at all.
const NARROWEST: f32 = 3.5;

/// Places that are taken.
pub(super) struct Taken {
    origin: Pos2,
    columns: usize,
    cells: Vec<Vec<Rect>>,
}

impl Taken {
    pub(super) fn of(rect: Rect) -> Self {
        let cells = |length: f32| place(length).max(0).unsigned_abs() + 1;
        let (columns, rows) = (cells(rect.width()), cells(rect.height()));
        Self { origin: rect.min, columns, cells: vec![Vec::new(); columns * rows] }
    }

    /// The squares that a rectangle touches.
    fn squares(&self, rect: Rect) -> impl Iterator<Item = usize> + use<> {
        let (from, to) = (rect.min - self.origin, rect.max - self.origin);
        let columns = self.columns;
        let within = move |at: isize| usize::try_from(at).ok().filter(|at| *at < columns);
        let across = place(from.x)..=place(to.x);
        let down = place(from.y)..=place(to.y);
        down.filter_map(|row| usize::try_from(row).ok())
            .flat_map(move |row| across.clone().filter_map(within).map(move |column| row * columns + column))
    }

    /// Takes a place, where it is free.
    pub(super) fn take(&mut self, rect: Rect) -> bool {
        let is_free =
            |at: usize| self.cells.get(at).is_none_or(|cell| cell.iter().all(|taken| !taken.intersects(rect)));
        if !self.squares(rect).all(is_free) {
            return false;
        }
        for at in self.squares(rect) {
            if let Some(cell) = self.cells.get_mut(at) {
                cell.push(rect);
            }
        }
        true
    }
}

#[allow(clippy::cast_possible_truncation)] // Squares of a screen.
fn place(length: f32) -> isize {
    (length / CELL).floor() as isize
}

/// One text over another.
struct Label {
    lines: Vec<Arc<Galley>>,
    size: Vec2,
}

impl Label {
    fn of(painter: &Painter, lines: &[(&str, FontId, Color32)]) -> Self {
        let lines: Vec<Arc<Galley>> = lines
            .iter()
            .filter(|(text, ..)| !text.is_empty())
            .map(|(text, font, colour)| painter.layout_no_wrap((*text).to_owned(), font.clone(), *colour))
            .collect();
        let width = lines.iter().map(|line| line.size().x).fold(0.0, f32::max);
        let height = lines.iter().map(|line| line.size().y).sum();
        Self { lines, size: Vec2::new(width, height) }
    }

    fn paint(&self, painter: &Painter, rect: Rect, back: Color32) {
        painter.rect_filled(rect.expand2(Vec2::new(3.0, 1.0)), 3, back);
        let mut top = rect.top();
        for line in &self.lines {
            let at = Pos2::new(rect.center().x - line.size().x / 2.0, top);
            painter.galley(at, Arc::clone(line), Color32::PLACEHOLDER);
            top += line.size().y;
        }
    }
}

/// The names of fields: with the area and the words of the colouring where there is room. The chosen one is named in any case.
/// None lies over another.
pub(super) fn fields(
    painter: &Painter,
    screen: &Screen,
    (farm, land): (&Farm, &Land),
    coloured: &Coloured,
    chosen: Option<&Id>,
    taken: &mut Taken,
    colours: &Colours,
) {
    let seen = screen.seen();
    let is_few = land.fields.iter().filter(|(_, piece)| piece.bounds.meets(&seen)).take(FEW + 1).count() <= FEW;
    let first = land.fields.iter().filter(|(id, _)| chosen == Some(id));
    let others = land.fields.iter().filter(|(id, _)| chosen != Some(id));
    for (id, piece) in first.chain(others).filter(|(_, piece)| piece.bounds.meets(&seen)) {
        let Some(field) = farm.fields.get(id) else { continue };
        let is_chosen = chosen == Some(id);
        let part = screen.part(&piece.bounds);
        #[allow(clippy::cast_possible_truncation)] // Points of a screen.
        let room = (f64::from(piece.room) / screen.camera.metres) as f32;
        let is_small = room < field.name.chars().count() as f32 * NARROWEST || part.height() < 14.0 || room < 14.0;
        if is_small && !is_chosen && !is_few {
            continue;
        }
        let name = if field.name.trim().is_empty() { t!("fields-no-name") } else { field.name.trim() };
        let area = field.area.show(farm.units);
        let words = short(coloured.words(id));
        let whole = [
            (name, look::body(true), colours.ink),
            (area.as_str(), look::gauge_font(), colours.ink),
            (words.as_str(), look::gauge_font(), colours.ink),
        ];
        let back = colours.sheet.gamma_multiply(0.82);
        // As much of it as there is room for.
        for lines in [&whole[..], &whole[..2], &whole[..1]] {
            let label = Label::of(painter, lines);
            let fits = label.size.x <= room - 6.0 && label.size.y <= part.height() - 2.0;
            let is_last = lines.len() == 1;
            if !fits && !(is_last && (is_chosen || is_few)) {
                continue;
            }
            let mut at = screen.place(piece.label);
            if !fits {
                // Under a field that is smaller than its name.
                at = part.center_bottom() + Vec2::new(0.0, label.size.y / 2.0 + 3.0);
            }
            if is_chosen || (!fits && painter.clip_rect().contains(part.center())) {
                // In the part that is seen, where the middle is out of sight or the edge of the map near.
                let inside = painter.clip_rect().shrink2(label.size / 2.0 + Vec2::splat(6.0));
                if part.intersects(painter.clip_rect()) && inside.is_positive() {
                    at = at.clamp(inside.min, inside.max);
                }
            }
            let rect = Rect::from_center_size(at, label.size);
            if taken.take(rect) {
                label.paint(painter, rect, back);
                break;
            }
        }
    }
}

/// The first words, where a sentence is too long for a label.
fn short(words: &str) -> String {
    let plain = words.split(" (").next().unwrap_or(words);
    if plain.chars().count() <= 30 {
        plain.to_owned()
    } else {
        format!("{}…", plain.chars().take(29).collect::<String>().trim_end())
    }
}

/// The names of what lies among the fields, and of gateways.
pub(super) fn others(
    painter: &Painter,
    screen: &Screen,
    (farm, land): (&Farm, &Land),
    chosen: (Option<&Id>, Option<&(Id, usize)>),
    taken: &mut Taken,
    colours: &Colours,
) {
    let seen = screen.seen();
    let mut put = |text: &str, at: Pos2, is_near: bool, is_chosen: bool| {
        if !is_near && !is_chosen {
            return true;
        }
        let font = if is_chosen { look::gauge_number() } else { look::gauge_font() };
        let label = Label::of(painter, &[(text, font, colours.ink)]);
        let rect = Rect::from_min_size(at + Vec2::new(10.0, -label.size.y / 2.0), label.size);
        let is_free = taken.take(rect);
        if is_free {
            label.paint(painter, rect, colours.sheet.gamma_multiply(0.82));
        }
        is_free
    };
    for (id, piece) in land.beside.iter().filter(|(_, piece)| piece.bounds.meets(&seen)) {
        let Some(surrounding) = farm.surroundings.get(id) else { continue };
        let name = surrounding.name.trim();
        let text = if name.is_empty() { surrounding.kind.name() } else { name };
        let part = screen.part(&piece.bounds);
        let is_near = !piece.dots.is_empty() && screen.camera.metres < 12.0 || part.width().max(part.height()) > 40.0;
        // A line carries its name at the first of its points where there is room.
        let line = piece.lines.first().map_or(&[][..], Vec::as_slice);
        let quarter = (line.len() / 4).max(1);
        let along = (1..4).filter_map(|part| line.get(part * quarter));
        let places = std::iter::once(&piece.label).chain(along).map(|at| screen.place(*at));
        for at in places.filter(|at| painter.clip_rect().contains(*at)) {
            if put(text, at, is_near, chosen.0 == Some(id)) {
                break;
            }
        }
    }
    for (id, number, at) in &land.gateways {
        let name = farm.fields.get(id).and_then(|field| field.gateways.get(*number)).map(|gateway| gateway.name.trim());
        let text = name.filter(|name| !name.is_empty()).unwrap_or(t!("fields-a-way-in"));
        let is_chosen = chosen.1.is_some_and(|(field, own)| field == id && own == number);
        let at = screen.place(*at);
        if painter.clip_rect().contains(at) {
            put(text, at, screen.camera.metres < 3.0, is_chosen);
        }
    }
}

#[cfg(test)]
mod tests {
    use egui::{Rect, Vec2, pos2};

    use super::Taken;

    #[test]
    fn a_place_is_taken_once() {
        let mut taken = Taken::of(Rect::from_min_size(pos2(100.0, 100.0), Vec2::new(700.0, 500.0)));
        let at = |x: f32, y: f32| Rect::from_center_size(pos2(x, y), Vec2::new(90.0, 30.0));
        assert!(taken.take(at(300.0, 300.0)));
        assert!(!taken.take(at(380.0, 320.0)), "over the first");
        assert!(taken.take(at(400.0, 300.0)) && taken.take(at(300.0, 340.0)), "beside it");
        // Half out of sight on any side is a place like others.
        assert!(taken.take(at(100.0, 100.0)) && !taken.take(at(110.0, 110.0)));
        assert!(taken.take(at(799.0, 599.0)));
    }
}
