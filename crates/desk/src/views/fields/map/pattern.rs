//! Patterns that tell fields apart without colour: parallel lines inside rings, as they lie on the screen.

use egui::{Painter, Pos2, Rect, Stroke, Vec2};
use tankard_core::t;

/// Lines inside a field.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Pattern {
    Plain,
    Slant,
    Level,
    Back,
    Upright,
    Cross,
    CloseSlant,
    CloseLevel,
    CloseBack,
    CloseUpright,
    CloseCross,
    CloseGrid,
    Grid,
}

/// Half the diagonal of a square.
const HALF: f32 = std::f32::consts::FRAC_1_SQRT_2;

impl Pattern {
    /// Those that classes take in turn. The grid is left to what is in no class of its own.
    pub(super) const ALL: [Self; 12] = [
        Self::Plain,
        Self::Slant,
        Self::Level,
        Self::Back,
        Self::Upright,
        Self::Cross,
        Self::CloseSlant,
        Self::CloseLevel,
        Self::CloseBack,
        Self::CloseUpright,
        Self::CloseCross,
        Self::CloseGrid,
    ];

    /// One after another.
    pub(super) fn nth(at: usize) -> Self {
        Self::ALL.get(at % Self::ALL.len()).copied().unwrap_or(Self::Plain)
    }

    /// In words.
    pub(super) fn name(self) -> &'static str {
        match self {
            Self::Plain => t!("fields-plain"),
            Self::Slant => t!("fields-slanting-lines"),
            Self::Level => t!("fields-level-lines"),
            Self::Back => t!("fields-lines-slanting-back"),
            Self::Upright => t!("fields-upright-lines"),
            Self::Cross => t!("fields-crossing-lines"),
            Self::CloseSlant => t!("fields-close-slanting-lines"),
            Self::CloseLevel => t!("fields-close-level-lines"),
            Self::CloseBack => t!("fields-close-lines-slanting-back"),
            Self::CloseUpright => t!("fields-close-upright-lines"),
            Self::CloseCross => t!("fields-close-crossing-lines"),
            Self::CloseGrid => t!("fields-a-close-grid"),
            Self::Grid => t!("fields-a-grid"),
        }
    }

    /// Which way its lines run.
    const fn ways(self) -> &'static [Vec2] {
        const SLANT: Vec2 = Vec2::new(HALF, -HALF);
        const BACK: Vec2 = Vec2::new(HALF, HALF);
        const LEVEL: Vec2 = Vec2::new(1.0, 0.0);
        const UPRIGHT: Vec2 = Vec2::new(0.0, 1.0);
        match self {
            Self::Plain => &[],
            Self::Slant | Self::CloseSlant => &[SLANT],
            Self::Level | Self::CloseLevel => &[LEVEL],
            Self::Back | Self::CloseBack => &[BACK],
            Self::Upright | Self::CloseUpright => &[UPRIGHT],
            Self::Cross | Self::CloseCross => &[SLANT, BACK],
            Self::Grid | Self::CloseGrid => &[LEVEL, UPRIGHT],
        }
    }

    /// How far apart its lines are, of what is usual.
    const fn spacing(self) -> f32 {
        match self {
            Self::CloseSlant
            | Self::CloseLevel
            | Self::CloseBack
            | Self::CloseUpright
            | Self::CloseCross
            | Self::CloseGrid => 0.4,
            _ => 1.0,
        }
    }

    /// Draws it inside rings, by the even-odd rule, with lines so many points apart. `fixed` is a place of the ground, so that the lines
    /// move with it.
    pub(super) fn paint_apart(self, painter: &Painter, rings: &[Vec<Pos2>], fixed: Pos2, apart: f32, stroke: Stroke) {
        let apart = apart * self.spacing();
        for way in self.ways() {
            let mut crossings = crossings(rings, fixed, *way, apart, painter.clip_rect());
            crossings.sort_by(|one, other| one.0.cmp(&other.0).then(one.1.total_cmp(&other.1)));
            let across = across(*way);
            let at = |line: i32, along: f32| fixed + across * (line as f32 * apart) + *way * along;
            let mut rest = crossings.as_slice();
            while let [(line, from), (other, to), left @ ..] = rest {
                if line == other {
                    painter.line_segment([at(*line, *from), at(*line, *to)], stroke);
                    rest = left;
                } else {
                    // A corner that just touches a line leaves one crossing alone.
                    rest = rest.get(1..).unwrap_or_default();
                }
            }
        }
    }
}

const fn across(way: Vec2) -> Vec2 {
    Vec2::new(-way.y, way.x)
}

/// Where lines cross the edges of rings: which line, and how far along it. Only lines that are seen.
#[allow(clippy::cast_possible_truncation)] // Lines on a screen.
fn crossings(rings: &[Vec<Pos2>], fixed: Pos2, way: Vec2, apart: f32, seen: Rect) -> Vec<(i32, f32)> {
    let across = across(way);
    let place = |at: Pos2| {
        let from = at - fixed;
        (from.dot(across) / apart, from.dot(way))
    };
    let corners = [seen.left_top(), seen.right_top(), seen.left_bottom(), seen.right_bottom()];
    let lines = corners.map(|at| place(at).0);
    let (first, last) = lines.iter().fold((f32::MAX, f32::MIN), |(low, high), at| (low.min(*at), high.max(*at)));
    let mut all = Vec::new();
    for ring in rings {
        let before = ring.iter().cycle().skip(ring.len().saturating_sub(1));
        for (from, to) in before.zip(ring) {
            let ((a, along_a), (b, along_b)) = (place(*from), place(*to));
            let (low, high) = (a.min(b).max(first), a.max(b).min(last));
            if low > high || (a - b).abs() < f32::EPSILON {
                continue;
            }
            for line in low.ceil() as i32..=high.floor() as i32 {
                let share = (line as f32 - a) / (b - a);
                // An edge holds its beginning and not its end, so that a corner counts once.
                if (a <= line as f32) != (b <= line as f32) {
                    all.push((line, along_a + share * (along_b - along_a)));
                }
            }
        }
    }
    all
}

#[cfg(test)]
mod tests {
    use egui::{Rect, Vec2, pos2};

    use super::crossings;

    /// A square of 100 points with a hole of 50: each line crosses an even number of edges, two or four of them.
    #[test]
    fn lines_stay_inside_and_out_of_holes() {
        let square = |from: f32, to: f32| vec![pos2(from, from), pos2(to, from), pos2(to, to), pos2(from, to)];
        let rings = [square(0.0, 100.0), square(25.0, 75.0)];
        let seen = Rect::from_min_max(pos2(-10.0, -10.0), pos2(200.0, 200.0));
        let all = crossings(&rings, pos2(0.0, 3.0), Vec2::new(1.0, 0.0), 10.0, seen);
        // Lines at 3, 13, 23 … 93; those at 33 to 73 cross the hole.
        for line in 0..10 {
            let here = all.iter().filter(|(at, _)| *at == line).count();
            assert_eq!(here, if (3..=7).contains(&line) { 4 } else { 2 }, "{line}");
        }
    }
}
