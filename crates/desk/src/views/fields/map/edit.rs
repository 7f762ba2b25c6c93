//! Points of what is there: found under the pointer, dragged, put in, taken out.

use std::rc::Rc;

use egui::Pos2;
use geo::Coord;
use tankard_core::farm::{Farm, Gateway, Shape};
use tankard_core::t;

use super::camera::Screen;
use super::land::Piece;
use super::points::{self, Place};
use super::{Drag, Other, State, sketch, snap};
use crate::app::Desk;

/// From so many points on they are shown only where there are fewer in sight.
const MOST: usize = 800;

impl State {
    /// The piece whose points are moved.
    pub(super) fn edited(&self, desk: &Desk) -> Option<Rc<Piece>> {
        match &self.other {
            Other::None => self.land.field(desk.fields.chosen.as_ref()?).cloned(),
            Other::Surrounding(id) => {
                self.land.beside.iter().find(|(known, _)| known == id).map(|(_, piece)| Rc::clone(piece))
            }
            Other::Gateway(..) => self.edited_shape(desk).map(|shape| self.land.piece(shape)),
        }
    }

    /// The shape whose points are moved.
    pub(super) fn edited_shape<'a>(&self, desk: &'a Desk) -> Option<&'a Shape> {
        let farm = desk.document.farm();
        match &self.other {
            Other::None => farm.fields.get(desk.fields.chosen.as_ref()?)?.boundary.as_ref(),
            Other::Surrounding(id) => farm.surroundings.get(id).map(|one| &one.shape),
            Other::Gateway(id, at) => farm.fields.get(id)?.gateways.get(*at).map(|gateway: &Gateway| &gateway.at),
        }
    }

    /// Puts another shape in the place of the one whose points are moved, or says why it cannot be.
    pub(super) fn reshape(&mut self, desk: &mut Desk, made: Result<Shape, String>) -> bool {
        let shape = match made {
            Ok(shape) => shape,
            Err(why) => {
                self.problem = Some(t!("fields-left-as-it-was", why = why));
                return false;
            }
        };
        let (other, chosen) = (self.other.clone(), desk.fields.chosen.clone());
        self.edit(desk, |farm: &mut Farm| match other {
            Other::None => {
                if let Some(field) = chosen.and_then(|id| farm.fields.get_mut(&id)) {
                    field.boundary = Some(shape);
                }
            }
            Other::Surrounding(id) => {
                if let Some(one) = farm.surroundings.get_mut(&id) {
                    one.shape = shape;
                }
            }
            Other::Gateway(id, at) => {
                if let Some(gateway) = farm.fields.get_mut(&id).and_then(|field| field.gateways.get_mut(at)) {
                    gateway.at = shape;
                }
            }
        });
        true
    }

    /// Moves a point.
    pub(super) fn move_point(&mut self, desk: &mut Desk, place: Place, to: Coord<f64>) -> bool {
        let made = self.edited_shape(desk).map(|shape| points::moved(shape, place, to));
        made.is_some_and(|made| self.reshape(desk, made))
    }

    /// Puts a point in.
    pub(super) fn put_in(&mut self, desk: &mut Desk, before: Place, at: Coord<f64>) {
        let made = self.edited_shape(desk).map(|shape| points::put_in(shape, before, at));
        if made.is_some_and(|made| self.reshape(desk, made)) {
            self.point = Some(before);
        }
    }

    /// Takes the chosen point out; the one before it is chosen then.
    pub(super) fn take_out(&mut self, desk: &mut Desk) {
        let Some(place) = self.point else { return };
        let made = self.edited_shape(desk).map(|shape| points::taken_out(shape, place));
        if made.is_some_and(|made| self.reshape(desk, made)) {
            self.point = Some(Place { at: place.at.saturating_sub(1), ..place });
        }
    }

    /// Begins to drag what lies under the pointer: a point, or a new one on an edge.
    pub(super) fn grab(&mut self, piece: &Piece, screen: &Screen, at: Pos2) -> bool {
        let here = screen.ground(at);
        if let Some(place) = point_at(piece, screen, at) {
            self.point = Some(place);
            self.drag = Some(Drag { place, is_new: false, to: self.land.flat.to_globe(here) });
            return true;
        }
        if let Some(place) = edge_at(piece, screen, at) {
            self.point = Some(place);
            self.drag = Some(Drag { place, is_new: true, to: self.land.flat.to_globe(here) });
            return true;
        }
        false
    }

    /// Where what is dragged would go.
    pub(super) fn drag_to(&mut self, piece: &Piece, screen: &Screen, at: Pos2) {
        let snaps = self.snaps;
        let Some(drag) = &mut self.drag else { return };
        let but = (!drag.is_new).then_some((piece, drag.place));
        // A new point on an edge would go straight back to it.
        let near = if snaps {
            snap::near(&self.land, screen, at, but).filter(|near| !drag.is_new || near.is_point)
        } else {
            None
        };
        drag.to = near.map_or_else(
            || sketch::rounded_place(self.land.flat.to_globe(screen.ground(at))),
            |near| if near.is_point { near.at } else { sketch::rounded_place(near.at) },
        );
    }

    /// Lets go of what is dragged.
    pub(super) fn let_go(&mut self, desk: &mut Desk) {
        let Some(drag) = self.drag.take() else { return };
        if drag.is_new {
            self.put_in(desk, drag.place, drag.to);
        } else {
            self.move_point(desk, drag.place, drag.to);
        }
    }
}

/// The points that are in sight; none where there are too many to tell apart.
pub(super) fn in_sight(piece: &Piece, screen: &Screen) -> Vec<(Place, Pos2)> {
    let seen = screen.seen();
    let mut all = Vec::new();
    for (path, (spots, _)) in piece.paths().enumerate() {
        for (at, spot) in spots.iter().enumerate().filter(|(_, spot)| seen.holds(**spot)) {
            all.push((Place { path, at }, screen.place(*spot)));
            if all.len() > MOST {
                return Vec::new();
            }
        }
    }
    all
}

fn point_at(piece: &Piece, screen: &Screen, at: Pos2) -> Option<Place> {
    let near = in_sight(piece, screen).into_iter().filter(|(_, place)| place.distance(at) <= snap::REACH);
    near.min_by(|one, other| one.1.distance(at).total_cmp(&other.1.distance(at))).map(|(place, _)| place)
}

/// The point before which a new one on an edge goes.
fn edge_at(piece: &Piece, screen: &Screen, at: Pos2) -> Option<Place> {
    let here = screen.ground(at);
    let mut best: Option<(f64, Place)> = None;
    for (path, (spots, closes)) in piece.paths().enumerate() {
        if !piece.dots.is_empty() {
            continue;
        }
        for (from, to) in snap::edges(spots, closes) {
            let (Some(a), Some(b)) = (spots.get(from), spots.get(to)) else { continue };
            let Some((far, _)) = snap::foot(here, *a, *b) else { continue };
            if far / screen.camera.metres <= f64::from(snap::REACH) && best.is_none_or(|known| far < known.0) {
                best = Some((far, Place { path, at: from + 1 }));
            }
        }
    }
    best.map(|(_, place)| place)
}

/// The neighbours of a point that is dragged, as they are on the screen.
pub(super) fn neighbours(piece: &Piece, screen: &Screen, drag: &Drag) -> Vec<Pos2> {
    let Some((spots, closes)) = piece.paths().nth(drag.place.path) else { return Vec::new() };
    if !piece.dots.is_empty() || spots.is_empty() {
        return Vec::new();
    }
    let count = spots.len();
    let (at, next) = (drag.place.at, if drag.is_new { drag.place.at } else { drag.place.at + 1 });
    let before = if at > 0 { Some(at - 1) } else { closes.then_some(count - 1) };
    let after = if next < count { Some(next) } else { closes.then_some(0) };
    [before, after].into_iter().flatten().filter_map(|at| spots.get(at)).map(|spot| screen.place(*spot)).collect()
}
