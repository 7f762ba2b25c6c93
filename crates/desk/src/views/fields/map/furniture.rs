//! What stands on a map beside the ground: scale bar, north, wind, legend.

use egui::{Align2, Color32, Painter, Pos2, Rect, Shape, Stroke, Vec2};
use tankard_core::quantity::{Bearing, Length, Units};
use tankard_core::t;

use super::camera::Screen;
use super::colouring::Class;
use super::pattern::Pattern;
use super::wind::Wind;
use crate::look::{self, Colours};

/// The scale bar is no longer than this, in points.
const LONGEST: f64 = 130.0;

/// A length of 1, 2 or 5 with noughts that fits into so many metres, in feet or miles, metres or kilometres; and its words.
pub(super) fn scale(metres: f64, units: Units) -> (Length, String) {
    const MILE: f64 = 1609.344;
    const FOOT: f64 = 0.3048;
    let (unit, name) = match units {
        Units::Metric if metres >= 1000.0 => (1000.0, "km"),
        Units::Metric => (1.0, "m"),
        _ if metres >= MILE / 2.0 => (MILE, "mi"),
        _ => (FOOT, "ft"),
    };
    let most = metres / unit;
    let ten = 10_f64.powf(most.log10().floor());
    let step = [5.0, 2.0, 1.0].into_iter().find(|step| step * ten <= most).unwrap_or(1.0);
    let value = step * ten;
    let words = if value >= 1000.0 {
        format!("{},{:03} {name}", (value / 1000.0).floor(), value % 1000.0)
    } else {
        format!("{value} {name}")
    };
    (Length::from_metres(value * unit), words)
}

/// The scale bar, at the lower right.
pub(super) fn scale_bar(painter: &Painter, screen: &Screen, on_ground: f64, units: Units, colours: &Colours) -> Rect {
    let metres = screen.camera.metres * on_ground;
    let (length, words) = scale(LONGEST * metres, units);
    #[allow(clippy::cast_possible_truncation)] // Points of a screen.
    let long = (length.to_metres() / metres) as f32;
    let right = screen.rect.right_bottom() - Vec2::new(16.0, 14.0);
    let left = right - Vec2::new(long, 0.0);
    let galley = painter.layout_no_wrap(words, look::gauge_font(), colours.ink);
    let back = Rect::from_two_pos(left - Vec2::new(6.0, galley.size().y + 6.0), right + Vec2::new(6.0, 5.0));
    painter.rect_filled(back, 3, colours.sheet.gamma_multiply(0.85));
    let ink = Stroke::new(2.0, colours.ink);
    painter.line_segment([left, right], ink);
    for end in [left, right] {
        painter.line_segment([end - Vec2::Y * 5.0, end], ink);
    }
    painter.galley(Pos2::new(right.x - galley.size().x, left.y - galley.size().y - 3.0), galley, colours.ink);
    back
}

/// North, at the upper right; the map never turns.
pub(super) fn north(painter: &Painter, rect: Rect, colours: &Colours) -> Rect {
    let at = rect.right_top() + Vec2::new(-24.0, 26.0);
    let back = Rect::from_center_size(at, Vec2::new(30.0, 40.0));
    painter.rect_filled(back, 3, colours.sheet.gamma_multiply(0.85));
    let tip = at + Vec2::new(0.0, -16.0);
    painter.add(Shape::convex_polygon(
        vec![tip, at + Vec2::new(6.0, 2.0), at + Vec2::new(-6.0, 2.0)],
        colours.ink,
        Stroke::NONE,
    ));
    painter.text(at + Vec2::new(0.0, 10.0), Align2::CENTER_CENTER, "N", look::gauge_number(), colours.ink);
    back
}

/// The wind beside north: an arrow that blows the way the wind does, from where, how strong, and who says so.
pub(super) fn wind(painter: &Painter, rect: Rect, wind: &Wind, colours: &Colours) -> Rect {
    let first = painter.layout_no_wrap(wind.words.clone(), look::gauge_number(), colours.ink);
    let second = painter.layout_no_wrap(wind.from.clone(), look::gauge_font(), colours.soft);
    let width = first.size().x.max(second.size().x);
    let height = first.size().y + second.size().y;
    let back = Rect::from_min_size(
        rect.right_top() + Vec2::new(-48.0 - width - 46.0, 6.0),
        Vec2::new(width + 46.0, (height + 6.0).max(40.0)),
    );
    painter.rect_filled(back, 3, colours.sheet.gamma_multiply(0.85));
    arrow(painter, back.left_center() + Vec2::new(20.0, 0.0), wind.bearing, 13.0, colours.water);
    let left = back.left() + 40.0;
    painter.galley(Pos2::new(left, back.top() + 3.0), first.clone(), colours.ink);
    painter.galley(Pos2::new(left, back.top() + 3.0 + first.size().y), second, colours.soft);
    back
}

fn arrow(painter: &Painter, at: Pos2, from: Bearing, half: f32, colour: Color32) {
    #[allow(clippy::cast_possible_truncation)] // An angle.
    let to = from.opposite().to_degrees().to_radians() as f32;
    let way = Vec2::new(to.sin(), -to.cos());
    let side = Vec2::new(-way.y, way.x);
    let tip = at + way * half;
    painter.line_segment([at - way * half, tip - way * 5.0], Stroke::new(2.5, colour));
    painter.add(Shape::convex_polygon(
        vec![tip, tip - way * 9.0 + side * 5.0, tip - way * 9.0 - side * 5.0],
        colour,
        Stroke::NONE,
    ));
}

/// The legend, at the lower left.
pub(super) fn legend(
    painter: &Painter,
    rect: Rect,
    title: &str,
    classes: &[Class],
    unsprayed: bool,
    colours: &Colours,
) -> Rect {
    const ROW: f32 = 18.0;
    let shown: Vec<&Class> = classes.iter().filter(|class| class.count > 0).collect();
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // Rows of a legend.
    let most = (((rect.height() - 60.0) / ROW).max(1.0) as usize).min(14);
    let left_out: usize = shown.iter().skip(most).map(|class| class.count).sum();
    let text = |words: String, colour: Color32| painter.layout_no_wrap(words, look::gauge_font(), colour);
    let mut rows: Vec<(Option<(Color32, Pattern)>, String)> = shown
        .iter()
        .take(most)
        .map(|class| {
            let fill = class.colour.map_or(colours.sheet, |at| look::of_class(colours, at));
            (Some((fill, class.pattern)), format!("{}  {}", class.name, class.count))
        })
        .collect();
    if left_out > 0 {
        rows.push((None, t!("fields-and-more-fields", left_out = left_out)));
    }
    let head = painter.layout_no_wrap(title.to_owned(), look::gauge_number(), colours.ink);
    let rows: Vec<_> = rows.into_iter().map(|(swatch, words)| (swatch, text(words, colours.ink))).collect();
    let strip = unsprayed.then(|| text(t!("fields-stays-unsprayed").to_owned(), colours.ink));
    let width = rows.iter().map(|(_, words)| words.size().x + 28.0).fold(head.size().x, f32::max);
    let width = strip.as_ref().map_or(width, |words| width.max(words.size().x + 28.0));
    let count = rows.len() + usize::from(strip.is_some());
    let size = Vec2::new(width + 16.0, count as f32 * ROW + 24.0);
    let back = Rect::from_min_size(rect.left_bottom() + Vec2::new(8.0, -8.0 - size.y), size);
    painter.rect_filled(back, 3, colours.sheet.gamma_multiply(0.9));
    painter.rect_stroke(back, 3, Stroke::new(1.0, colours.hairline), egui::StrokeKind::Inside);
    painter.galley(back.min + Vec2::new(8.0, 3.0), head, colours.ink);
    let swatch_at = |row: usize| {
        let top = back.top() + 22.0 + row as f32 * ROW;
        Rect::from_min_size(Pos2::new(back.left() + 8.0, top), Vec2::new(20.0, 13.0))
    };
    for (row, (swatch, words)) in rows.iter().enumerate() {
        let at = swatch_at(row);
        if let Some((fill, pattern)) = swatch {
            painter.rect_filled(at, 0, *fill);
            let ring = vec![at.left_top(), at.right_top(), at.right_bottom(), at.left_bottom()];
            pattern.paint_apart(&painter.with_clip_rect(at), &[ring], at.min, 5.0, look::pattern(colours));
            painter.rect_stroke(at, 0, Stroke::new(1.0, colours.ink), egui::StrokeKind::Inside);
        }
        painter.galley(at.right_top() + Vec2::new(8.0, -2.0), words.clone(), colours.ink);
    }
    if let Some(words) = strip {
        let at = swatch_at(rows.len());
        let ring = vec![at.left_top(), at.right_top(), at.right_bottom(), at.left_bottom()];
        let stroke = Stroke::new(1.4, colours.check);
        Pattern::Slant.paint_apart(&painter.with_clip_rect(at), &[ring], at.min, 5.0, stroke);
        painter.rect_stroke(at, 0, Stroke::new(1.0, colours.check), egui::StrokeKind::Inside);
        painter.galley(at.right_top() + Vec2::new(8.0, -2.0), words, colours.ink);
    }
    back
}

#[cfg(test)]
mod tests {
    use tankard_core::quantity::Units;

    use super::scale;

    #[test]
    fn the_scale_is_a_round_length_of_the_farm_s_units() {
        let words = |metres: f64, units: Units| scale(metres, units).1;
        assert_eq!(words(650.0, Units::Metric), "500 m");
        assert_eq!(words(1000.0, Units::Metric), "1 km");
        assert_eq!(words(26_000.0, Units::Metric), "20 km");
        // 1,000 ft are 304.8 m, a mile 1,609.344 m.
        assert_eq!(words(400.0, Units::UsCustomary), "1,000 ft");
        assert_eq!(words(810.0, Units::UsCustomary), "0.5 mi");
        assert_eq!(words(4_000.0, Units::Imperial), "2 mi");
        assert_eq!(words(0.35, Units::UsCustomary), "1 ft");
        assert!((scale(400.0, Units::UsCustomary).0.to_metres() - 304.8).abs() < 1e-9);
    }
}
