//! Charts whose parts lie under one another, each with its name over it and its figure behind it: bars, and points with their
//! intervals.

use egui::{Align2, Rect, Stroke, Ui};
use egui_plot::{AxisHints, Bar, Line, MarkerShape, PlotPoint, PlotPoints, Points, Text, VLine};

use super::chart::{self, Chart, UNNAMED};
use super::hatch;
use crate::look;

/// Height of a part with its name.
const ROW: f32 = 36.0;
/// Room for the axis.
const AXIS: f32 = 40.0;

/// A bar.
#[derive(Clone, Debug)]
pub struct Lying {
    /// What it is of.
    pub name: String,
    /// How long it is, in the unit of the axis.
    pub value: f64,
    /// Its figure.
    pub words: String,
    /// Something of it is not known, so that it may be longer: it is hatched.
    pub partial: bool,
}

/// A point with the interval in which it lies.
#[derive(Clone, Debug)]
pub struct Dot {
    /// What it is of.
    pub name: String,
    /// Where it lies.
    pub value: f64,
    /// Between what ends; `None` where too little is known.
    pub interval: Option<(f64, f64)>,
    /// Its figures.
    pub words: String,
}

/// The middle of a part and where its name stands, counted from the top.
fn places(at: usize, of: usize) -> (f64, f64) {
    let top = (of - at) as f64;
    (top - 0.72, top - 0.28)
}

/// Of each part its name over it, from where the axis begins, and its figure behind it, at the place given with them.
fn heads<'a>(ui: &Ui, parts: impl ExactSizeIterator<Item = (&'a str, &'a str, f64)>, from: f64) -> Vec<Text> {
    let ink = look::colours(ui).ink;
    let of = parts.len();
    let both = |(at, (name, figure, behind)): (usize, (&str, &str, f64))| {
        let (middle, over) = places(at, of);
        [
            chart::words(PlotPoint::new(from, over), name, Align2::LEFT_CENTER, look::gauge_font(), ink),
            chart::words(PlotPoint::new(behind, middle), figure, Align2::LEFT_CENTER, look::gauge_number(), ink),
        ]
    };
    parts.enumerate().flat_map(both).collect()
}

/// Bars that lie under one another.
pub fn lying(ui: &mut Ui, chart: Chart<'_>, bars: &[Lying]) {
    let colours = look::colours(ui);
    let most = bars.iter().map(|bar| bar.value).fold(0.0, f64::max);
    let figures = bars.iter().map(|bar| chart::wide(ui, &bar.words)).fold(0.0, f32::max) + 14.0;
    let inner = ui.available_width().max(figures + 60.0);
    let most = if most > 0.0 { most } else { 1.0 };
    let right = most * f64::from(inner / (inner - figures));
    let of = bars.len();
    let plot = chart::still(chart, of as f32 * ROW + AXIS)
        .show_grid([true, false])
        .show_axes([true, false])
        .x_grid_spacer(move |_| chart::round(0.0, most, inner / 110.0))
        .custom_x_axes(vec![chart::axis(ui, AxisHints::new_x(), chart.unit).min_thickness(AXIS - 6.0)]);
    let faces = bars.iter().enumerate().filter(|(_, bar)| bar.value > 0.0);
    let faces: Vec<Bar> = faces.map(|(at, bar)| Bar::new(places(at, of).0, bar.value).width(0.36)).collect();
    let faces = chart::bars(ui, faces).horizontal();
    let heads =
        heads(ui, bars.iter().map(|bar| (bar.name.as_str(), bar.words.as_str(), bar.value + right * 0.006)), 0.0);
    let said = chart::spoken(chart, bars.iter().map(|bar| (bar.name.as_str(), bar.words.as_str())));
    let shown = chart::show(ui, plot, ([0.0, 0.0], [right, of as f64]), &said, move |plot| {
        plot.bar_chart(faces);
        for head in heads {
            plot.text(head);
        }
    });
    for (at, bar) in bars.iter().enumerate().filter(|(_, bar)| bar.partial && bar.value > 0.0) {
        let (middle, _) = places(at, of);
        let corner = |x: f64, y: f64| shown.transform.position_from_point(&PlotPoint::new(x, y));
        let face = Rect::from_two_pos(corner(0.0, middle - 0.18), corner(bar.value, middle + 0.18));
        hatch::fill(ui.painter(), face, 6.0, Stroke::new(1.0, colours.water));
    }
}

/// Points with their intervals under one another, on an axis from one end to the other; with zero marked where it lies between.
pub fn dots(ui: &mut Ui, chart: Chart<'_>, (from, to): (f64, f64), dots: &[Dot]) {
    let colours = look::colours(ui);
    let figures = dots.iter().map(|dot| chart::wide(ui, &dot.words)).fold(0.0, f32::max) + 20.0;
    let inner = ui.available_width().max(figures + 60.0);
    let span = (to - from).max(1e-9);
    let right = from + span * f64::from(inner / (inner - figures));
    let left = from - span * 0.02;
    let of = dots.len();
    let plot = chart::still(chart, of as f32 * ROW + AXIS)
        .show_grid([true, false])
        .show_axes([true, false])
        .x_grid_spacer(move |_| chart::round(from, to, inner / 110.0))
        .custom_x_axes(vec![chart::axis(ui, AxisHints::new_x(), chart.unit).min_thickness(AXIS - 6.0)]);
    let edge = Stroke::new(2.0, colours.water);
    let line = |points: Vec<[f64; 2]>| Line::new(UNNAMED, PlotPoints::from(points)).stroke(edge).allow_hover(false);
    let lines: Vec<Line<'_>> = dots
        .iter()
        .enumerate()
        .filter_map(|(at, dot)| Some((places(at, of).0, dot.interval?)))
        .flat_map(|(y, (low, high))| {
            // What reaches beyond the axis has no end there.
            let cap = |x: f64| (from..=to).contains(&x).then(|| line(vec![[x, y - 0.12], [x, y + 0.12]]));
            let (shown_low, shown_high) = (low.clamp(from, to), high.clamp(from, to));
            [Some(line(vec![[shown_low, y], [shown_high, y]])), cap(low), cap(high)].into_iter().flatten()
        })
        .collect();
    let middles: Vec<[f64; 2]> = dots.iter().enumerate().map(|(at, dot)| [dot.value, places(at, of).0]).collect();
    let middles = Points::new(UNNAMED, PlotPoints::from(middles))
        .shape(MarkerShape::Circle)
        .radius(5.0)
        .color(colours.brass)
        .allow_hover(false);
    let behind = to + span * 0.015;
    let heads = heads(ui, dots.iter().map(|dot| (dot.name.as_str(), dot.words.as_str(), behind)), from);
    let zero = (from < 0.0 && to > 0.0)
        .then(|| VLine::new(UNNAMED, 0.0).stroke(Stroke::new(1.5, colours.ink)).allow_hover(false));
    let said = chart::spoken(chart, dots.iter().map(|dot| (dot.name.as_str(), dot.words.as_str())));
    chart::show(ui, plot, ([left, 0.0], [right, of as f64]), &said, move |plot| {
        if let Some(zero) = zero {
            plot.vline(zero);
        }
        for line in lines {
            plot.line(line);
        }
        plot.points(middles);
        for head in heads {
            plot.text(head);
        }
    });
}
