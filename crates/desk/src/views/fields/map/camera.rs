//! What of the ground is seen: where the middle of the map lies, and how many metres a point of the screen is.

use egui::{Pos2, Rect, Vec2};
use geo::Coord;

use super::land::{Bounds, Spot};

/// The closest and the farthest view, in metres a point.
const CLOSEST: f64 = 0.02;
const FARTHEST: f64 = 20_000.0;
/// Room left about what is fitted, as a share of the map.
const ROOM: f64 = 0.08;
/// Room that stays at the right for half the name of a field there, in points.
const NAME: f64 = 40.0;

/// The middle of the map in metres of the projection, and metres a point.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Camera {
    pub(super) middle: Coord<f64>,
    pub(super) metres: f64,
}

impl Camera {
    /// About the middle of the projection, some kilometres wide.
    pub(super) const PLAIN: Self = Self { middle: Coord { x: 0.0, y: 0.0 }, metres: 5.0 };

    /// All of some bounds.
    pub(super) fn fitting(bounds: &Bounds, size: Vec2) -> Self {
        let share = |metres: f32, points: f32| f64::from(metres) / (f64::from(points.max(1.0)) * (1.0 - 2.0 * ROOM));
        let metres = share(bounds.width(), size.x).max(share(bounds.height(), size.y));
        let [x, y] = bounds.middle();
        // A single point is shown with some ground about it.
        Self { middle: Coord { x: f64::from(x), y: f64::from(y) }, metres: metres.clamp(0.3, FARTHEST) }
    }

    /// All of some bounds, moved away from the legend at the left as far as there is room for that.
    pub(super) fn beside_legend(bounds: &Bounds, size: Vec2) -> Self {
        let fitted = Self::fitting(bounds, size);
        let free = (f64::from(size.x) * fitted.metres - f64::from(bounds.width())) / 2.0 - NAME * fitted.metres;
        let moved = free.clamp(0.0, 66.0 * fitted.metres);
        Self { middle: Coord { x: fitted.middle.x - moved, ..fitted.middle }, ..fitted }
    }

    /// Moved by so many points of the screen, as the ground is dragged.
    pub(super) fn dragged(self, by: Vec2) -> Self {
        let middle = Coord {
            x: self.middle.x - f64::from(by.x) * self.metres,
            y: self.middle.y + f64::from(by.y) * self.metres,
        };
        Self { middle, ..self }
    }

    /// Nearer by a factor; what lies under a place of the screen stays there.
    pub(super) fn zoomed(self, factor: f64, at: Pos2, rect: Rect) -> Self {
        let metres = (self.metres / factor).clamp(CLOSEST, FARTHEST);
        let from = at - rect.center();
        let moves = self.metres - metres;
        let middle =
            Coord { x: self.middle.x + f64::from(from.x) * moves, y: self.middle.y - f64::from(from.y) * moves };
        Self { middle, metres }
    }

    /// On a place of the screen.
    pub(super) fn on(self, rect: Rect) -> Screen {
        Screen { camera: self, rect }
    }
}

/// The ground on the screen.
#[derive(Clone, Copy, Debug)]
pub(super) struct Screen {
    pub(super) camera: Camera,
    pub(super) rect: Rect,
}

#[allow(clippy::cast_possible_truncation)] // What is drawn on the screen.
impl Screen {
    /// Where something is drawn.
    pub(super) fn place(&self, [x, y]: Spot) -> Pos2 {
        let (x, y) = (f64::from(x) - self.camera.middle.x, f64::from(y) - self.camera.middle.y);
        self.rect.center() + Vec2::new((x / self.camera.metres) as f32, (-y / self.camera.metres) as f32)
    }

    /// The same for metres with all their digits.
    pub(super) fn place_of(&self, at: Coord<f64>) -> Pos2 {
        let (x, y) = (at.x - self.camera.middle.x, at.y - self.camera.middle.y);
        self.rect.center() + Vec2::new((x / self.camera.metres) as f32, (-y / self.camera.metres) as f32)
    }

    /// What lies under a place of the screen.
    pub(super) fn ground(&self, at: Pos2) -> Coord<f64> {
        let from = at - self.rect.center();
        Coord {
            x: self.camera.middle.x + f64::from(from.x) * self.camera.metres,
            y: self.camera.middle.y - f64::from(from.y) * self.camera.metres,
        }
    }

    /// The ground that is seen.
    pub(super) fn seen(&self) -> Bounds {
        let (low, high) = (self.ground(self.rect.left_bottom()), self.ground(self.rect.right_top()));
        Bounds { west: low.x as f32, south: low.y as f32, east: high.x as f32, north: high.y as f32 }
    }

    /// The part of the screen that some bounds take.
    pub(super) fn part(&self, bounds: &Bounds) -> Rect {
        Rect::from_two_pos(self.place([bounds.west, bounds.south]), self.place([bounds.east, bounds.north]))
    }
}

#[cfg(test)]
mod tests {
    use egui::{Rect, Vec2, pos2};
    use geo::Coord;

    use super::{Bounds, Camera};

    #[test]
    fn what_lies_under_the_pointer_stays_there() {
        let rect = Rect::from_min_size(pos2(100.0, 50.0), Vec2::new(700.0, 500.0));
        let camera = Camera { middle: Coord { x: 1200.0, y: -340.0 }, metres: 4.0 };
        let at = pos2(230.0, 480.0);
        let before = camera.on(rect).ground(at);
        let after = camera.zoomed(1.7, at, rect).on(rect).ground(at);
        assert!((before.x - after.x).abs() < 1e-3 && (before.y - after.y).abs() < 1e-3);
    }

    #[test]
    fn all_of_it_is_fitted() {
        let rect = Rect::from_min_size(pos2(0.0, 0.0), Vec2::new(700.0, 500.0));
        let bounds = Bounds { west: 10.0, south: -400.0, east: 2000.0, north: 300.0 };
        let part = Camera::fitting(&bounds, rect.size()).on(rect).part(&bounds);
        assert!(rect.contains_rect(part) && part.width() > 500.0, "{part:?}");
    }
}
