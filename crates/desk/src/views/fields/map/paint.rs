//! Draws the ground: fields with their colours and patterns, what lies among them, gateways.

use egui::epaint::Mesh;
use egui::{Color32, Painter, Pos2, Rect, Shape, Stroke, Vec2};
use tankard_core::farm::{Farm, Id, SurroundingKind};

use super::camera::Screen;
use super::colouring::Coloured;
use super::land::{Bounds, Land, Piece};
use super::pattern::Pattern;
use crate::look::{self, Colours};
use crate::parts::hatch;

/// A field that is smaller than this on the screen is a patch of colour and nothing more.
const PATCH: f32 = 2.0;
/// From this size on a field shows its pattern, the closer the smaller it is.
const PATTERNED: f32 = 6.0;
/// How far apart the lines of a pattern are, in points.
const APART: std::ops::RangeInclusive<f32> = 3.5..=9.0;
/// From so many metres a point on gateways are too close to one another to be shown.
const NO_GATEWAYS: f64 = 5.0;

/// Draws the fields.
pub(super) fn fields(
    painter: &Painter,
    screen: &Screen,
    land: &Land,
    coloured: &Coloured,
    chosen: Option<&Id>,
    colours: &Colours,
) {
    let seen = screen.seen();
    let shown: Vec<(&Id, &Piece)> = land
        .fields
        .iter()
        .filter(|(_, piece)| piece.bounds.meets(&seen))
        .map(|(id, piece)| (id, piece.as_ref()))
        .collect();
    let class_of = |id: &Id| coloured.fields.get(id).and_then(|(class, _)| coloured.classes.get(*class));
    let mut mesh = Mesh::default();
    for (id, piece) in &shown {
        let class = class_of(id);
        let colour = class.and_then(|class| class.colour).map_or(colours.sheet, |at| look::of_class(colours, at));
        let part = screen.part(&piece.bounds);
        if part.width().max(part.height()) < PATCH {
            mesh.add_colored_rect(part.expand(0.5), colour);
        } else {
            fill(&mut mesh, screen, piece, colour);
        }
    }
    painter.add(Shape::mesh(mesh));
    let lines = look::pattern(colours);
    let fixed = screen.place([0.0, 0.0]);
    for (id, piece) in &shown {
        let part = screen.part(&piece.bounds);
        let size = part.width().max(part.height());
        if size < PATCH {
            continue;
        }
        let rings = placed(screen, piece);
        if size >= PATTERNED
            && let Some(class) = class_of(id)
        {
            let apart = (size / 3.0).clamp(*APART.start(), *APART.end());
            class.pattern.paint_apart(painter, &rings, fixed, apart, lines);
        }
        if chosen != Some(*id) {
            for ring in &rings {
                edge(painter, ring, true, Stroke::new(if size < 14.0 { 0.7 } else { 1.2 }, colours.ink));
            }
        }
    }
    // The chosen one last, so that no neighbour lies over its edge.
    if let Some((_, piece)) = shown.iter().find(|(id, _)| chosen == Some(*id)) {
        for ring in placed(screen, piece) {
            edge(painter, &ring, true, Stroke::new(5.0, colours.sheet));
            edge(painter, &ring, true, Stroke::new(3.0, colours.water));
        }
    }
}

fn fill(mesh: &mut Mesh, screen: &Screen, piece: &Piece, colour: Color32) {
    let level = piece.at(screen.camera.metres);
    let first = u32::try_from(mesh.vertices.len()).unwrap_or_default();
    for at in &level.points {
        mesh.colored_vertex(screen.place(*at), colour);
    }
    mesh.indices.extend(level.triangles.iter().map(|at| at + first));
}

/// The rings of a piece on the screen.
pub(super) fn placed(screen: &Screen, piece: &Piece) -> Vec<Vec<Pos2>> {
    let level = piece.at(screen.camera.metres);
    level.rings.iter().map(|ring| ring.iter().map(|at| screen.place(*at)).collect()).collect()
}

/// A line from point to point, as far as it is seen.
pub(super) fn edge(painter: &Painter, points: &[Pos2], closes: bool, stroke: Stroke) {
    let seen = painter.clip_rect().expand(stroke.width + 2.0);
    let all = Rect::from_points(points);
    if !seen.intersects(all) {
        return;
    }
    if seen.contains_rect(all) || points.len() < 64 {
        without_spikes(painter, points, closes, stroke);
        return;
    }
    // Of a long edge that runs out of sight only the stretches that are seen.
    let count = points.len() + usize::from(closes);
    let mut run: Vec<Pos2> = Vec::new();
    for (from, to) in points.iter().cycle().take(count).zip(points.iter().cycle().skip(1).take(count - 1)) {
        if seen.intersects(Rect::from_two_pos(*from, *to)) {
            if run.is_empty() {
                run.push(*from);
            }
            run.push(*to);
        } else if !run.is_empty() {
            painter.add(Shape::line(std::mem::take(&mut run), stroke));
        }
    }
    if !run.is_empty() {
        painter.add(Shape::line(run, stroke));
    }
}

/// A line in one, or in the runs that it falls into where it turns back on itself.
fn without_spikes(painter: &Painter, points: &[Pos2], closes: bool, stroke: Stroke) {
    match runs(points, closes) {
        Some(runs) => painter.extend(runs.into_iter().map(|run| Shape::line(run, stroke))),
        None if closes => _ = painter.add(Shape::closed_line(points.to_vec(), stroke)),
        None => _ = painter.add(Shape::line(points.to_vec(), stroke)),
    }
}

/// The runs of a line between the points at which it turns back on itself, as a narrow strip does at its ends: joined there it would
/// shoot far beyond them. `None` where it does so nowhere.
fn runs(points: &[Pos2], closes: bool) -> Option<Vec<Vec<Pos2>>> {
    let turns_back = |corner: &[Pos2]| match corner {
        [from, at, to] => (*at - *from).normalized().dot((*to - *at).normalized()) < -0.7,
        _ => false,
    };
    let round: Vec<Pos2> = points.iter().chain(points.iter().take(if closes { 2 } else { 0 })).copied().collect();
    if !round.windows(3).any(turns_back) {
        return None;
    }
    let mut runs = Vec::new();
    let mut run: Vec<Pos2> = round.first().copied().into_iter().collect();
    for corner in round.windows(3) {
        let [_, at, _] = corner else { continue };
        run.push(*at);
        if turns_back(corner) {
            runs.push(std::mem::replace(&mut run, vec![*at]));
        }
    }
    // Of a closed one the last corner is its first, and the line ends there.
    run.extend(round.last().filter(|_| !closes));
    runs.extend(Some(run).filter(|run| run.len() > 1));
    Some(runs)
}

/// Ground that stays unsprayed.
pub(super) fn unsprayed(painter: &Painter, screen: &Screen, piece: &Piece, colours: &Colours) {
    if !piece.bounds.meets(&screen.seen()) {
        return;
    }
    let rings = placed(screen, piece);
    let fixed = screen.place([0.0, 0.0]);
    Pattern::Slant.paint_apart(painter, &rings, fixed, 5.0, Stroke::new(1.4, colours.check));
    for ring in &rings {
        edge(painter, ring, true, Stroke::new(1.0, colours.check));
    }
}

/// What lies among the fields: areas before the fields are drawn, lines and points after.
pub(super) fn surroundings(
    painter: &Painter,
    screen: &Screen,
    (farm, land): (&Farm, &Land),
    chosen: Option<&Id>,
    areas: bool,
    colours: &Colours,
) {
    let seen = screen.seen();
    // A mark stands out of its place by some points.
    #[allow(clippy::cast_possible_truncation)] // Metres of a farm.
    let reach = (12.0 * screen.camera.metres) as f32;
    let seen = Bounds {
        west: seen.west - reach,
        south: seen.south - reach,
        east: seen.east + reach,
        north: seen.north + reach,
    };
    for (id, piece) in land.beside.iter().filter(|(_, piece)| piece.bounds.meets(&seen)) {
        let Some(surrounding) = farm.surroundings.get(id) else { continue };
        let is_chosen = chosen == Some(id);
        let ink = of_kind(colours, surrounding.kind);
        if areas {
            let rings = placed(screen, piece);
            let mut mesh = Mesh::default();
            fill(&mut mesh, screen, piece, ink.gamma_multiply(0.18));
            painter.add(Shape::mesh(mesh));
            pattern_of(surrounding.kind).paint_apart(
                painter,
                &rings,
                screen.place([0.0, 0.0]),
                *APART.end(),
                Stroke::new(0.8, ink.gamma_multiply(0.6)),
            );
            for ring in &rings {
                edge(painter, ring, true, Stroke::new(if is_chosen { 3.0 } else { 1.2 }, ink));
            }
            continue;
        }
        for line in &piece.lines {
            let points: Vec<Pos2> = line.iter().map(|at| screen.place(*at)).collect();
            if surrounding.kind == SurroundingKind::Water {
                edge(painter, &points, false, Stroke::new(if is_chosen { 6.0 } else { 4.0 }, ink));
            } else {
                hatch::dashed(painter, &points, Stroke::new(if is_chosen { 3.5 } else { 2.0 }, ink));
            }
        }
        for at in &piece.dots {
            mark(painter, screen.place(*at), surrounding.kind, is_chosen, ink, colours);
        }
    }
}

/// A diamond, with a ring round the chosen one.
fn mark(painter: &Painter, at: Pos2, kind: SurroundingKind, is_chosen: bool, ink: Color32, colours: &Colours) {
    let corners = [Vec2::new(0.0, -6.0), Vec2::new(6.0, 0.0), Vec2::new(0.0, 6.0), Vec2::new(-6.0, 0.0)];
    let fill = if matches!(kind, SurroundingKind::Water | SurroundingKind::Well) { ink } else { colours.sheet };
    painter.add(Shape::convex_polygon(corners.map(|by| at + by).to_vec(), fill, Stroke::new(1.6, ink)));
    if is_chosen {
        painter.circle_stroke(at, 10.0, Stroke::new(2.0, colours.water));
    }
}

fn of_kind(colours: &Colours, kind: SurroundingKind) -> Color32 {
    match kind {
        SurroundingKind::Water | SurroundingKind::Well => colours.water,
        SurroundingKind::Home | SurroundingKind::School => colours.stop,
        SurroundingKind::Hives | SurroundingKind::SensitiveCrop => colours.check,
        _ => colours.soft,
    }
}

const fn pattern_of(kind: SurroundingKind) -> Pattern {
    match kind {
        SurroundingKind::Water | SurroundingKind::Well => Pattern::Level,
        SurroundingKind::Home | SurroundingKind::School => Pattern::Grid,
        SurroundingKind::SensitiveCrop | SurroundingKind::Hives => Pattern::Cross,
        SurroundingKind::Organic => Pattern::Upright,
        SurroundingKind::Habitat => Pattern::Back,
        SurroundingKind::Other => Pattern::Plain,
    }
}

/// The ways into fields: a gap between two posts.
pub(super) fn gateways(
    painter: &Painter,
    screen: &Screen,
    land: &Land,
    chosen: Option<&(Id, usize)>,
    colours: &Colours,
) {
    for (id, number, at) in &land.gateways {
        let at = screen.place(*at);
        let is_chosen = chosen.is_some_and(|(field, own)| field == id && own == number);
        if !painter.clip_rect().expand(8.0).contains(at) || screen.camera.metres > NO_GATEWAYS && !is_chosen {
            continue;
        }
        painter.rect_filled(Rect::from_center_size(at, Vec2::new(9.0, 9.0)), 0, colours.sheet);
        for side in [-4.0, 4.0] {
            let post = at + Vec2::new(side, 0.0);
            painter.line_segment([post - Vec2::Y * 6.0, post + Vec2::Y * 6.0], Stroke::new(2.2, colours.ink));
        }
        if is_chosen {
            painter.circle_stroke(at, 11.0, Stroke::new(2.0, colours.water));
        }
    }
}

#[cfg(test)]
mod tests {
    use egui::pos2;

    use super::runs;

    #[test]
    fn a_line_is_cut_where_it_turns_back() {
        let (near, tip, far) = (pos2(0.0, 0.0), pos2(100.0, 1.0), pos2(0.0, 20.0));
        assert_eq!(runs(&[near, tip, far], true), Some(vec![vec![near, tip], vec![tip, far, near]]));
        assert_eq!(runs(&[near, tip, far], false), Some(vec![vec![near, tip], vec![tip, far]]));
        // The first point of a ring is a corner like the others.
        assert_eq!(runs(&[tip, far, near], true), Some(vec![vec![tip, far, near, tip]]));
        let square = [near, pos2(10.0, 0.0), pos2(10.0, 10.0), pos2(0.0, 10.0)];
        assert_eq!(runs(&square, true), None);
        assert_eq!(runs(&square[..2], false), None);
    }
}
