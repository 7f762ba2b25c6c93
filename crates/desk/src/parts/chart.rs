//! Charts of the season review. What each bar or line is stands at it in words, with its figure, so that no colour and no legend
//! is needed; a screen reader hears the same. They stand still: nothing in them is dragged or zoomed.
//!
//! Here are bars and lines along the year; bars and intervals that lie under one another are in [`super::chart_rows`].

use egui::{Align2, Color32, Pos2, Rangef, RichText, Sense, Stroke, Ui, Vec2};
use egui_plot::{
    AxisHints, Bar, BarChart, GridMark, Line, LineStyle, Plot, PlotBounds, PlotPoint, PlotPoints, PlotResponse,
    PlotTransform, PlotUi, Text,
};
use tankard_core::quantity::number;

use super::setting_plot::marks;
use crate::look;

/// Height of a chart that stands.
const TALL: f32 = 210.0;
/// Room that figures and unit take beside an axis at least. What is out of sight at first is not measured before it is drawn.
const FIGURE: f32 = 62.0;
/// Room for the names under bars, in one line or two.
const NAMES: f32 = 34.0;
/// Most room that a bar takes.
const BAR: f32 = 110.0;
/// How far apart the names of lines stand at least.
const LINE: f32 = 14.0;

/// What a chart is.
#[derive(Clone, Copy, Debug)]
pub struct Chart<'a> {
    /// What it shows; no two on a page show the same.
    pub name: &'a str,
    /// What its axis counts: "ac".
    pub unit: &'a str,
}

/// A bar.
#[derive(Clone, Debug)]
pub struct Column {
    /// What it is of, under the bar, in one line or two.
    pub name: String,
    /// How tall it is, in the unit of the axis.
    pub value: f64,
    /// Its figure without the unit, over the bar; empty for none.
    pub words: String,
}

/// A line.
#[derive(Clone, Debug)]
pub struct Series {
    /// What it is of, at its end.
    pub name: String,
    /// Its figures from the first step on; it may end before the others.
    pub values: Vec<f64>,
    /// Whether it is the one that is looked at.
    pub first: bool,
}

/// What a chart says to a screen reader: its name, and each part with its figure.
pub(super) fn spoken<'a>(chart: Chart<'_>, parts: impl Iterator<Item = (&'a str, &'a str)>) -> String {
    let parts: Vec<String> =
        parts.filter(|(_, figure)| !figure.is_empty()).map(|(name, figure)| format!("{name} {figure}")).collect();
    if parts.is_empty() { chart.name.to_owned() } else { format!("{}: {}", chart.name, parts.join("; ")) }
}

/// A name of an item that nobody sees, since there is no legend.
pub(super) const UNNAMED: &str = "";

/// How wide a word is in a chart.
pub(super) fn wide(ui: &Ui, words: &str) -> f32 {
    ui.painter().layout_no_wrap(words.to_owned(), look::gauge_number(), Color32::PLACEHOLDER).size().x
}

/// A plot that stands still.
pub(super) fn still<'a>(chart: Chart<'_>, height: f32) -> Plot<'a> {
    Plot::new(chart.name.to_owned())
        .height(height)
        .sense(Sense::hover())
        .allow_zoom(false)
        .allow_scroll(false)
        .allow_drag(false)
        .allow_boxed_zoom(false)
        .allow_double_click_reset(false)
        .allow_axis_zoom_drag(false)
        .show_x(false)
        .show_y(false)
        .show_crosshair(false)
        .show_background(false)
        .auto_bounds(false)
        .grid_spacing(Rangef::new(1.0, 2.0))
}

/// An axis whose figures are told, with the unit at it.
pub(super) fn axis<'a>(ui: &Ui, hints: AxisHints<'a>, unit: &str) -> AxisHints<'a> {
    hints
        .label(RichText::new(unit).font(look::gauge_font()).color(look::colours(ui).soft))
        .tick_label_font(look::gauge_font())
        .tick_label_color(look::colours(ui).soft)
        .label_spacing(Rangef::new(1.0, 2.0))
        .formatter(|mark, _| number::show(mark.value, 4))
}

/// Round figures from one end to the other, about so many.
pub(super) fn round(from: f64, to: f64, count: f32) -> Vec<GridMark> {
    let all = marks(from, to, f64::from(count.max(2.0)));
    let step = all.get(1).zip(all.first()).map_or(to - from, |(second, first)| second - first);
    all.into_iter().map(|value| GridMark { value, step_size: step }).collect()
}

/// Words at a place of a chart.
pub(super) fn words(at: PlotPoint, text: &str, anchor: Align2, font: egui::FontId, colour: Color32) -> Text {
    Text::new(UNNAMED, at, RichText::new(text).font(font)).anchor(anchor).color(colour).allow_hover(false)
}

/// The face of bars: pale, with an edge.
pub(super) fn bars(ui: &Ui, bars: Vec<Bar>) -> BarChart {
    let colours = look::colours(ui);
    let edge = Stroke::new(1.0, colours.water);
    let bars = bars.into_iter().map(|bar| bar.fill(colours.selected).stroke(edge)).collect();
    BarChart::new(UNNAMED, bars).color(colours.water).allow_hover(false)
}

/// Shows a plot between two ends, and says what it is.
pub(super) fn show<'a>(
    ui: &mut Ui,
    plot: Plot<'a>,
    (from, to): ([f64; 2], [f64; 2]),
    spoken: &str,
    add: impl FnOnce(&mut PlotUi<'a>) + 'a,
) -> PlotResponse<()> {
    let colours = look::colours(ui);
    let plot = plot.grid_color(colours.hairline);
    let shown = plot.show(ui, move |plot| {
        plot.set_plot_bounds(PlotBounds::from_min_max(from, to));
        add(plot);
    });
    shown.response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Image, true, spoken));
    shown
}

/// Bars that stand beside one another: seasons, months, how often an error was so large.
pub fn columns(ui: &mut Ui, chart: Chart<'_>, columns: &[Column]) {
    let colours = look::colours(ui);
    let most = columns.iter().map(|column| column.value).fold(0.0, f64::max);
    let top = if most > 0.0 { most * 1.14 } else { 1.0 };
    // Few bars are not drawn out over the whole width.
    let width = ui.available_width().min(FIGURE + 40.0 + BAR * columns.len() as f32);
    let room = (width - FIGURE) / columns.len().max(1) as f32;
    let fits = |words: &str| wide(ui, words) + 6.0 < room;
    // Where the figures have no room over their bars, they stand in the table alone.
    let figures = columns.iter().all(|column| fits(&column.words));
    let every = columns.iter().map(|column| wide(ui, &column.name) + 6.0).fold(0.0, f32::max) / room.max(1.0);
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // A small whole number.
    let every = every.ceil().max(1.0) as usize;
    let names: Vec<(f64, String)> =
        columns.iter().enumerate().step_by(every).map(|(at, column)| (at as f64, column.name.clone())).collect();
    let ticks: Vec<GridMark> = names.iter().map(|(at, _)| GridMark { value: *at, step_size: every as f64 }).collect();
    let name = move |mark: GridMark, _: &std::ops::RangeInclusive<f64>| {
        names.iter().find(|(at, _)| (at - mark.value).abs() < 0.5).map(|(_, name)| name.clone()).unwrap_or_default()
    };
    let plot = still(chart, TALL)
        .width(width)
        .show_grid([false, true])
        .x_grid_spacer(move |_| ticks.clone())
        .y_grid_spacer(move |_| round(0.0, most, 6.0))
        .custom_x_axes(vec![axis(ui, AxisHints::new_x(), "").min_thickness(NAMES).formatter(name)])
        .custom_y_axes(vec![axis(ui, AxisHints::new_y(), chart.unit).min_thickness(FIGURE)]);
    let faces = columns.iter().enumerate().filter(|(_, column)| column.value > 0.0);
    let faces = bars(ui, faces.map(|(at, column)| Bar::new(at as f64, column.value).width(0.7)).collect());
    let heads: Vec<Text> = columns
        .iter()
        .enumerate()
        .filter(|(_, column)| figures && column.value > 0.0)
        .map(|(at, column)| {
            let place = PlotPoint::new(at as f64, column.value + top * 0.012);
            words(place, &column.words, Align2::CENTER_BOTTOM, look::gauge_number(), colours.ink)
        })
        .collect();
    let figure = |column: &Column| {
        if column.words.is_empty() { String::new() } else { format!("{} {}", column.words, chart.unit) }
    };
    let said: Vec<String> = columns.iter().map(figure).collect();
    let names: Vec<String> = columns.iter().map(|column| column.name.replace('\n', " ")).collect();
    let said = spoken(chart, names.iter().zip(&said).map(|(name, said)| (name.as_str(), said.as_str())));
    let ends = ([-0.6, 0.0], [columns.len() as f64 - 0.4, top]);
    show(ui, plot, ends, &said, move |plot| {
        plot.bar_chart(faces);
        for head in heads {
            plot.text(head);
        }
    });
}

/// Lines along steps that have names, each with its name at its end.
pub fn lines(ui: &mut Ui, chart: Chart<'_>, steps: &[&str], series: &[Series], figure: impl Fn(f64) -> String) {
    let colours = look::colours(ui);
    let most = series.iter().flat_map(|line| &line.values).copied().fold(0.0, f64::max);
    let top = if most > 0.0 { most * 1.08 } else { 1.0 };
    let last = steps.len() as f64;
    let ends: Vec<(f64, f64, String)> = series
        .iter()
        .map(|line| {
            let value = line.values.last().copied().unwrap_or(0.0);
            (line.values.len() as f64, value, format!("{}  {}", line.name, figure(value)))
        })
        .collect();
    // Room at the right for the names.
    let names = ends.iter().map(|(.., words)| wide(ui, words)).fold(0.0, f32::max) + 24.0;
    let inner = (ui.available_width() - FIGURE - 8.0).max(names + 40.0);
    let right = last * f64::from(inner / (inner - names));
    let ticks: Vec<GridMark> = (0..steps.len()).map(|at| GridMark { value: at as f64 + 0.5, step_size: 1.0 }).collect();
    let owned: Vec<String> = steps.iter().map(|step| (*step).to_owned()).collect();
    let name = move |mark: GridMark, _: &std::ops::RangeInclusive<f64>| {
        // Steps are few and marks lie in their middles.
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let at = mark.value.max(0.0) as usize;
        owned.get(at).cloned().unwrap_or_default()
    };
    let plot = still(chart, TALL)
        .show_grid([false, true])
        .x_grid_spacer(move |_| ticks.clone())
        .y_grid_spacer(move |_| round(0.0, most, 6.0))
        .custom_x_axes(vec![axis(ui, AxisHints::new_x(), "").min_thickness(NAMES).formatter(name)])
        .custom_y_axes(vec![axis(ui, AxisHints::new_y(), chart.unit).min_thickness(FIGURE)]);
    let drawn: Vec<Line<'_>> = series
        .iter()
        .enumerate()
        .map(|(at, line)| {
            let points: Vec<[f64; 2]> = std::iter::once([0.0, 0.0])
                .chain(line.values.iter().enumerate().map(|(step, value)| [step as f64 + 1.0, *value]))
                .collect();
            let stroke = if line.first { Stroke::new(2.5, colours.water) } else { Stroke::new(1.2, colours.soft) };
            // Neighbours in the list differ, so that lines that cross can be followed.
            let style = if line.first {
                LineStyle::Solid
            } else {
                [LineStyle::dashed_loose(), LineStyle::dotted_dense(), LineStyle::dashed_dense()]
                    .get(at % 3)
                    .copied()
                    .unwrap_or(LineStyle::Solid)
            };
            Line::new(UNNAMED, PlotPoints::from(points)).stroke(stroke).style(style).allow_hover(false)
        })
        .collect();
    let figures: Vec<String> = series.iter().map(|line| figure(line.values.last().copied().unwrap_or(0.0))).collect();
    let said = spoken(chart, series.iter().zip(&figures).map(|(line, figure)| (line.name.as_str(), figure.as_str())));
    let shown = show(ui, plot, ([0.0, 0.0], [right, top]), &said, move |plot| {
        for line in drawn {
            plot.line(line);
        }
    });
    let firsts: Vec<bool> = series.iter().map(|line| line.first).collect();
    name_lines(ui, &shown.transform, last, &ends, &firsts);
}

/// The names of lines at their ends, moved apart where they would cover one another.
fn name_lines(ui: &Ui, transform: &PlotTransform, last: f64, ends: &[(f64, f64, String)], firsts: &[bool]) {
    let colours = look::colours(ui);
    let frame = transform.frame();
    let at = |x: f64, y: f64| transform.position_from_point(&PlotPoint::new(x, y));
    let mut labels: Vec<(f32, Pos2, &str, bool)> = ends
        .iter()
        .zip(firsts)
        .map(|((x, y, words), first)| (at(*x, *y).y, at(*x, *y), words.as_str(), *first))
        .collect();
    labels.sort_by(|a, b| b.0.total_cmp(&a.0));
    let mut limit = frame.bottom();
    for label in &mut labels {
        label.0 = label.0.min(limit - LINE * 0.5);
        limit = label.0 - LINE * 0.5;
    }
    let mut limit = frame.top();
    for label in labels.iter_mut().rev() {
        label.0 = label.0.max(limit + LINE * 0.5);
        limit = label.0 + LINE * 0.5;
    }
    let left = at(last, 0.0).x + 16.0;
    let painter = ui.painter();
    for (y, end, words, first) in labels {
        let to = Pos2::new(left - 3.0, y);
        painter.line_segment([end, to], Stroke::new(0.8, colours.hairline));
        let (font, colour) =
            if first { (look::gauge_number(), colours.ink) } else { (look::gauge_font(), colours.soft) };
        painter.text(to + Vec2::X * 3.0, Align2::LEFT_CENTER, words, font, colour);
    }
}

#[cfg(test)]
mod tests {
    use super::{Chart, round, spoken};

    #[test]
    fn what_has_no_figure_is_not_said() {
        let chart = Chart { name: "Ground by month", unit: "ac" };
        let parts = [("May", "120 ac"), ("June", ""), ("July", "4 ac")];
        assert_eq!(spoken(chart, parts.into_iter()), "Ground by month: May 120 ac; July 4 ac");
        assert_eq!(spoken(chart, [].into_iter()), "Ground by month");
    }

    #[test]
    fn figures_on_an_axis_are_round_and_of_one_step() {
        let marks = round(0.0, 2345.0, 4.0);
        let values: Vec<f64> = marks.iter().map(|mark| mark.value).collect();
        assert_eq!(values, [0.0, 1000.0, 2000.0]);
        assert!(marks.iter().all(|mark| (mark.step_size - 1000.0).abs() < 1e-9));
    }
}
