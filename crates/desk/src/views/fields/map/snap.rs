//! Points and edges near the pointer, to which a new point goes.

use egui::Pos2;
use geo::Coord;

use super::camera::Screen;
use super::land::{Bounds, Land, Piece, Spot, coord, spot};
use super::points::{self, Place};

/// How near, in points of the screen.
pub(super) const REACH: f32 = 9.0;

/// What lies near the pointer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Near {
    /// Longitude and latitude.
    pub(super) at: Coord<f64>,
    /// Where that is on the screen.
    pub(super) on_screen: Pos2,
    /// Whether it is a point; else it lies on an edge.
    pub(super) is_point: bool,
}

/// The nearest point within reach, else the nearest place on an edge. `but` is a point that is being moved, of its piece.
pub(super) fn near(land: &Land, screen: &Screen, pointer: Pos2, but: Option<(&Piece, Place)>) -> Option<Near> {
    let reach = f64::from(REACH) * screen.camera.metres;
    let here = screen.ground(pointer);
    #[allow(clippy::cast_possible_truncation)] // Metres of a farm.
    let about = {
        let mut bounds = Bounds::NONE;
        bounds.add([(here.x - reach) as f32, (here.y - reach) as f32]);
        bounds.add([(here.x + reach) as f32, (here.y + reach) as f32]);
        bounds
    };
    let pieces =
        || land.fields.iter().chain(&land.beside).map(|(_, piece)| piece).filter(|piece| piece.bounds.meets(&about));
    let mut point: Option<(f32, &Piece, Place, Pos2)> = None;
    let mut edge: Option<(f32, Coord<f64>)> = None;
    for piece in pieces() {
        for (path, (spots, closes)) in piece.paths().enumerate() {
            let moving = but
                .filter(|(of, place)| std::ptr::eq(*of, &raw const **piece) && place.path == path)
                .map(|(_, place)| place.at);
            for (at, place) in spots.iter().enumerate() {
                if about.holds(*place) && moving != Some(at) {
                    let on_screen = screen.place(*place);
                    let far = on_screen.distance(pointer);
                    if far <= REACH && point.as_ref().is_none_or(|known| far < known.0) {
                        point = Some((far, piece, Place { path, at }, on_screen));
                    }
                }
            }
            if point.is_some() {
                continue;
            }
            for (from, to) in edges(spots, closes).filter(|(from, to)| moving.is_none_or(|at| at != *from && at != *to))
            {
                let (Some(from), Some(to)) = (spots.get(from), spots.get(to)) else { continue };
                let Some((far, at)) = foot(here, *from, *to) else { continue };
                #[allow(clippy::cast_possible_truncation)] // Points of a screen.
                let far = (far / screen.camera.metres) as f32;
                if far <= REACH && edge.is_none_or(|known| far < known.0) {
                    edge = Some((far, at));
                }
            }
        }
    }
    if let Some((_, piece, place, on_screen)) = point {
        // The very digits of the point that is there, so that neighbours share it.
        let paths = points::paths(&piece.shape);
        let at = paths.get(place.path).and_then(|path| path.get(place.at)).copied()?;
        return Some(Near { at, on_screen, is_point: true });
    }
    edge.map(|(_, at)| Near { at: land.flat.to_globe(at), on_screen: screen.place_of(at), is_point: false })
}

/// The places of the ends of each edge.
pub(super) fn edges(spots: &[Spot], closes: bool) -> impl Iterator<Item = (usize, usize)> + use<> {
    let count = spots.len();
    let last = if closes { count } else { count.saturating_sub(1) };
    (0..last).map(move |from| (from, (from + 1) % count.max(1)))
}

/// How far a place is from an edge, and the nearest place on it; none beyond its ends.
pub(super) fn foot(at: Coord<f64>, from: Spot, to: Spot) -> Option<(f64, Coord<f64>)> {
    let (from, to) = (coord(from), coord(to));
    let (along, away) = (to - from, at - from);
    let long = along.x * along.x + along.y * along.y;
    let share = (along.x * away.x + along.y * away.y) / long;
    if !(0.0..=1.0).contains(&share) {
        return None;
    }
    let foot = from + along * share;
    Some(((at.x - foot.x).hypot(at.y - foot.y), foot))
}

/// Where a place of the globe is on the screen.
pub(super) fn on_screen(land: &Land, screen: &Screen, at: Coord<f64>) -> Pos2 {
    screen.place(spot(land.flat.to_plane(at)))
}
