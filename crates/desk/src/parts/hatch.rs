//! Hatching and dashes: patterns that tell areas and lines apart without colour.

use egui::{Painter, Pos2, Rect, Shape, Stroke, Vec2};

/// Fills an area with slanting lines.
pub fn fill(painter: &Painter, rect: Rect, apart: f32, stroke: Stroke) {
    let painter = painter.with_clip_rect(rect.intersect(painter.clip_rect()));
    let height = rect.height();
    let mut x = rect.left() - height;
    while x < rect.right() {
        painter.line_segment([Pos2::new(x, rect.bottom()), Pos2::new(x + height, rect.top())], stroke);
        x += apart;
    }
}

/// A broken line from point to point.
pub fn dashed(painter: &Painter, points: &[Pos2], stroke: Stroke) {
    painter.extend(Shape::dashed_line(points, stroke, 5.0, 4.0));
}

/// A bracket over a span, open downwards.
pub fn bracket(painter: &Painter, from: f32, to: f32, top: f32, tall: f32, stroke: Stroke) {
    let (left, right) = (Pos2::new(from, top), Pos2::new(to, top));
    painter.line_segment([left, right], stroke);
    painter.line_segment([left, left + Vec2::Y * tall], stroke);
    painter.line_segment([right, right + Vec2::Y * tall], stroke);
}
