//! How a nozzle set behaves: pressure over speed, with the droplet classes as labelled bands, the range that set and labels
//! allow, and the point that is planned.

use egui::{Align2, Pos2, Rect, Sense, Stroke, StrokeKind, Ui, Vec2};
use tankard_core::quantity::{Pressure, Quantity, Speed, Units};
use tankard_core::rig::setting::{Classes, CurvePoint, Setting};
use tankard_core::t;

use super::hatch;
use crate::look;
use crate::report::words::class_words;

/// Room for the figures of pressure.
const LEFT: f32 = 44.0;
/// Room for the figures of speed.
const BELOW: f32 = 36.0;
/// Height of a line of text.
const LINE: f32 = 15.0;

/// A band of pressures in which the droplets are of the same classes.
#[derive(Clone, Debug, PartialEq)]
struct Band {
    from: f64,
    to: f64,
    classes: Option<Classes>,
}

fn speed_in(speed: Speed, units: Units) -> f64 {
    if units == Units::Metric { speed.to_kilometres_per_hour() } else { speed.to_miles_per_hour() }
}

fn pressure_in(pressure: Pressure, units: Units) -> f64 {
    if units == Units::Metric { pressure.to_bar() } else { pressure.to_psi() }
}

/// The bands of a curve, from low pressure to high.
fn bands(curve: &[CurvePoint], units: Units) -> Vec<Band> {
    let mut points: Vec<(f64, Option<Classes>)> =
        curve.iter().map(|point| (pressure_in(point.pressure, units), point.classes)).collect();
    points.sort_by(|a, b| a.0.total_cmp(&b.0));
    let mut bands: Vec<Band> = Vec::new();
    for (pressure, classes) in points {
        match bands.last_mut() {
            Some(band) if band.classes == classes => band.to = pressure,
            Some(band) => {
                let edge = f64::midpoint(band.to, pressure);
                band.to = edge;
                bands.push(Band { from: edge, to: pressure, classes });
            }
            None => bands.push(Band { from: pressure, to: pressure, classes }),
        }
    }
    bands
}

/// A step between marks that gives about `count` of them.
fn step(span: f64, count: f64) -> f64 {
    let rough = (span / count).max(1e-6);
    let power = 10_f64.powf(rough.log10().floor());
    [1.0, 2.0, 5.0, 10.0].into_iter().map(|by| by * power).find(|step| *step >= rough).unwrap_or(rough)
}

pub(super) fn marks(from: f64, to: f64, count: f64) -> Vec<f64> {
    let step = step(to - from, count);
    let mut at = (from / step).ceil() * step;
    let mut marks = Vec::new();
    while at <= to + step * 1e-6 {
        marks.push(at);
        at += step;
    }
    marks
}

fn figure(value: f64) -> String {
    if (value - value.round()).abs() < 1e-6 { format!("{value:.0}") } else { format!("{value:.1}") }
}

/// The ends of what is drawn.
struct Frame {
    rect: Rect,
    slow: f64,
    fast: f64,
    low: f64,
    high: f64,
}

impl Frame {
    #[allow(clippy::cast_possible_truncation)] // Shares between 0 and 1.
    fn x(&self, speed: f64) -> f32 {
        self.rect.left() + self.rect.width() * ((speed - self.slow) / (self.fast - self.slow)) as f32
    }

    #[allow(clippy::cast_possible_truncation)]
    fn y(&self, pressure: f64) -> f32 {
        self.rect.bottom() - self.rect.height() * ((pressure - self.low) / (self.high - self.low)) as f32
    }
}

/// Draws the plot; `spoken` is what a screen reader says.
pub fn show(ui: &mut Ui, setting: &Setting, units: Units, size: Vec2, spoken: &str) {
    let colours = look::colours(ui);
    let (rect, response) = ui.allocate_exact_size(size, Sense::hover());
    response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Image, true, spoken));
    let points: Vec<(f64, f64, bool)> = setting
        .curve
        .iter()
        .map(|point| (speed_in(point.speed, units), pressure_in(point.pressure, units), point.allowed))
        .collect();
    let (Some(first), Some(last)) = (points.first(), points.last()) else { return };
    if last.0 <= first.0 {
        return;
    }
    let highest = points.iter().map(|point| point.1).fold(0.0, f64::max);
    let planned = setting.pressure.map(|pressure| (speed_in(setting.speed, units), pressure_in(pressure, units)));
    let fast = planned.map_or(last.0, |planned| planned.0.max(last.0));
    let slow = planned.map_or(first.0, |planned| planned.0.min(first.0));
    let high = planned.map_or(highest, |planned| planned.1.max(highest)) * 1.06;
    let painter = ui.painter_at(rect);
    let bands = bands(&setting.curve, units);
    let widest = bands
        .iter()
        .map(|band| painter.layout_no_wrap(class_words(band.classes), look::gauge_font(), colours.ink).size().x)
        .fold(0.0, f32::max);
    let frame = Frame {
        rect: Rect::from_min_max(rect.min + Vec2::new(LEFT, 8.0), rect.max - Vec2::new(widest + 18.0, BELOW)),
        slow: slow - (fast - slow) * 0.02,
        fast: fast + (fast - slow) * 0.02,
        low: 0.0,
        high: high.max(1e-6),
    };
    droplets(&painter, colours, &frame, rect, &bands);
    if let Some(speeds) = setting.speeds {
        range(&painter, colours, &frame, speed_in(speeds.least, units), speed_in(speeds.most, units));
    }
    axes(&painter, colours, &frame, units);
    for run in points.chunk_by(|a, b| a.2 == b.2) {
        let line: Vec<Pos2> = run.iter().map(|point| Pos2::new(frame.x(point.0), frame.y(point.1))).collect();
        if run.first().is_some_and(|point| point.2) {
            painter.line(line, Stroke::new(3.0, colours.water));
        } else {
            hatch::dashed(&painter, &line, Stroke::new(1.5, colours.soft));
        }
    }
    if let Some((speed, pressure)) = planned {
        let at = Pos2::new(frame.x(speed), frame.y(pressure));
        painter.circle(at, 5.5, colours.brass, Stroke::new(2.0, colours.sheet));
        let words = format!(
            "{}, {}",
            setting.speed.show(units),
            setting.pressure.map(|pressure| pressure.show(units)).unwrap_or_default()
        );
        let left = at.x > frame.rect.center().x;
        let side = if left { Align2::RIGHT_BOTTOM } else { Align2::LEFT_BOTTOM };
        let galley = painter.layout_no_wrap(words, look::gauge_number(), colours.ink);
        let nudge = if left { Vec2::new(-9.0, -6.0) } else { Vec2::new(9.0, -6.0) };
        let place = side.anchor_size(at + nudge, galley.size());
        painter.rect_filled(place.expand(2.0), 3, colours.sheet);
        painter.galley(place.min, galley, colours.ink);
    }
}

/// The bands, each with its name at the right. A band in which either class may come is hatched.
fn droplets(painter: &egui::Painter, colours: &look::Colours, frame: &Frame, whole: Rect, bands: &[Band]) {
    let mut labels: Vec<(f32, f32, String)> = Vec::new();
    for (at, band) in bands.iter().enumerate() {
        let (mut top, mut bottom) = (frame.y(band.to), frame.y(band.from));
        if bands.len() == 1 && bottom - top < LINE {
            (top, bottom) = (top - LINE, bottom + LINE);
        }
        let face = Rect::from_min_max(
            Pos2::new(frame.rect.left(), top.max(frame.rect.top())),
            Pos2::new(frame.rect.right(), bottom.min(frame.rect.bottom())),
        );
        if at % 2 == 1 {
            painter.rect_filled(face, 0, colours.ground);
        }
        if band.classes.is_some_and(|classes| classes.finest != classes.coarsest) {
            hatch::fill(painter, face, 9.0, Stroke::new(1.0, colours.hairline));
        }
        for y in [face.top(), face.bottom()] {
            painter.hline(frame.rect.x_range(), y, Stroke::new(1.0, colours.hairline));
        }
        labels.push((face.center().y, face.center().y, class_words(band.classes)));
    }
    // From low pressure to high, so from the bottom up.
    let mut limit = frame.rect.bottom() + LINE * 0.5;
    for label in &mut labels {
        label.0 = label.0.min(limit - LINE * 0.5);
        limit = label.0 - LINE * 0.5;
    }
    let mut limit = whole.top();
    for label in labels.iter_mut().rev() {
        label.0 = label.0.max(limit + LINE * 0.5);
        limit = label.0 + LINE * 0.5;
    }
    for (at, middle, words) in labels {
        let edge = frame.rect.right();
        painter.line_segment([Pos2::new(edge, middle), Pos2::new(edge + 10.0, at)], Stroke::new(1.0, colours.soft));
        painter.text(Pos2::new(edge + 14.0, at), Align2::LEFT_CENTER, words, look::gauge_font(), colours.ink);
    }
}

/// The speeds that set and labels allow: two lines down to the axis and a bar between them.
fn range(painter: &egui::Painter, colours: &look::Colours, frame: &Frame, least: f64, most: f64) {
    let (left, right) = (frame.x(least), frame.x(most));
    for x in [left, right] {
        hatch::dashed(
            painter,
            &[Pos2::new(x, frame.rect.top()), Pos2::new(x, frame.rect.bottom())],
            Stroke::new(1.0, colours.water),
        );
    }
    let bar = Rect::from_min_max(Pos2::new(left, frame.rect.bottom() - 5.0), Pos2::new(right, frame.rect.bottom()));
    painter.rect_filled(bar, 0, colours.water);
}

fn axes(painter: &egui::Painter, colours: &look::Colours, frame: &Frame, units: Units) {
    let (speed_unit, pressure_unit) = if units == Units::Metric { ("km/h", "bar") } else { ("mph", "psi") };
    painter.rect_stroke(frame.rect, 0, Stroke::new(1.0, colours.soft), StrokeKind::Inside);
    let room = f64::from(frame.rect.width() / 44.0).max(2.0);
    for speed in marks(frame.slow, frame.fast, room) {
        let x = frame.x(speed);
        painter.vline(x, frame.rect.bottom()..=(frame.rect.bottom() + 4.0), Stroke::new(1.0, colours.soft));
        let at = Pos2::new(x, frame.rect.bottom() + 5.0);
        painter.text(at, Align2::CENTER_TOP, figure(speed), look::gauge_font(), colours.soft);
    }
    let at = Pos2::new(frame.rect.right(), frame.rect.bottom() + 20.0);
    painter.text(at, Align2::RIGHT_TOP, t!("parts-speed", speed_unit = speed_unit), look::gauge_font(), colours.soft);
    let room = f64::from(frame.rect.height() / 34.0).max(2.0);
    for pressure in marks(frame.low, frame.high, room) {
        let y = frame.y(pressure);
        painter.hline((frame.rect.left() - 4.0)..=frame.rect.left(), y, Stroke::new(1.0, colours.soft));
        let at = Pos2::new(frame.rect.left() - 6.0, y);
        painter.text(at, Align2::RIGHT_CENTER, figure(pressure), look::gauge_font(), colours.soft);
    }
    let at = Pos2::new(frame.rect.left() - LEFT, frame.rect.bottom() + 20.0);
    painter.text(
        at,
        Align2::LEFT_TOP,
        t!("parts-pressure", pressure_unit = pressure_unit),
        look::gauge_font(),
        colours.soft,
    );
}

#[cfg(test)]
mod tests {
    use super::{bands, class_words, marks};
    use tankard_core::farm::Droplets;
    use tankard_core::quantity::{Pressure, Speed, Units};
    use tankard_core::rig::setting::{Classes, CurvePoint};

    fn point(psi: f64, finest: Droplets, coarsest: Droplets) -> CurvePoint {
        CurvePoint {
            speed: Speed::from_miles_per_hour(psi.sqrt()),
            pressure: Pressure::from_psi(psi),
            classes: Some(Classes { finest, coarsest }),
            allowed: true,
            duty: None,
        }
    }

    /// A class that comes in two neighbouring points is one band; where neither line of the table decides, both are named.
    #[test]
    fn points_of_one_class_are_one_band() {
        let (m, c) = (Droplets::Medium, Droplets::Coarse);
        let curve = [point(30.0, c, c), point(40.0, c, c), point(45.0, m, c), point(50.0, m, m), point(60.0, m, m)];
        let bands = bands(&curve, Units::UsCustomary);
        let words: Vec<String> = bands.iter().map(|band| class_words(band.classes)).collect();
        assert_eq!(words, ["coarse", "medium to coarse", "medium"]);
        assert!((bands[0].from - 30.0).abs() < 1e-9 && (bands[0].to - 42.5).abs() < 1e-9);
        assert!((bands[2].from - 47.5).abs() < 1e-9 && (bands[2].to - 60.0).abs() < 1e-9);
    }

    #[test]
    fn marks_are_round_and_inside() {
        assert_eq!(marks(4.3, 16.2, 6.0), [6.0, 8.0, 10.0, 12.0, 14.0, 16.0]);
        assert_eq!(marks(0.0, 95.0, 5.0), [0.0, 20.0, 40.0, 60.0, 80.0]);
    }
}
