//! A day as a strip of hours. Each hour is a cell that the pointer or the arrow keys choose; its verdict is told by a
//! pattern (full, hatched, empty with a stroke), by a word and by colour.

use egui::{Align2, Id, Key, Modifiers, Pos2, Rect, Sense, Stroke, StrokeKind, Ui, Vec2};
use jiff::civil::{Date, DateTime};
use tankard_core::quantity::Duration;
use tankard_core::weather::{JudgedHour, Span, Verdict};

use super::hatch;
use crate::look;
use crate::report::words::clock;

/// Room for the bracket over the cells.
const ABOVE: f32 = 24.0;
/// Height of a cell.
const CELL: f32 = 34.0;
/// Height of a line of words under the cells.
const LINE: f32 = 16.0;

/// An hour of a strip.
#[derive(Clone, Debug, PartialEq)]
pub struct Cell {
    /// When it begins.
    pub at: DateTime,
    /// The second of two hours that the clock shows alike.
    pub again: bool,
    /// Whether it may be used; `None` where the forecast does not hold it.
    pub verdict: Option<Verdict>,
    /// Where a time by the sun cuts it: the part that is left, as shares of the hour, and how that is judged.
    pub part: Option<(f32, f32, Verdict)>,
    /// What a screen reader says.
    pub name: String,
}

/// The cells of a day: one for each hour of the clock, and one more where an hour comes twice.
pub fn cells(day: Date, hours: &[JudgedHour], name: impl Fn(&JudgedHour) -> String) -> Vec<Cell> {
    let mut cells = Vec::with_capacity(25);
    for hour in 0..24_i8 {
        let at = day.at(hour, 0, 0, 0);
        let before = cells.len();
        cells.extend(hours.iter().filter(|known| known.at.date() == day && known.at.hour() == hour).map(|known| {
            Cell {
                at: known.at,
                again: known.again,
                verdict: Some(known.verdict),
                part: known.part.map(|(part, verdict)| (share(part.from, known.at), share(part.to, known.at), verdict)),
                name: name(known),
            }
        }));
        if cells.len() == before {
            let name = format!("{hour:02}:00 not in the forecast");
            cells.push(Cell { at, again: false, verdict: None, part: None, name });
        }
    }
    cells
}

/// How far into an hour a time lies, from 0 to 1.
fn share(time: DateTime, hour: DateTime) -> f32 {
    (time.duration_since(hour).as_secs_f32() / 3600.0).clamp(0.0, 1.0)
}

/// Where a time stands on a strip, in cells from its left end.
pub fn place(cells: &[Cell], time: DateTime) -> f32 {
    let Some(first) = cells.first() else { return 0.0 };
    if time.date() > first.at.date() {
        return cells.len() as f32;
    }
    let at = cells.iter().position(|cell| cell.at.hour() == time.hour()).unwrap_or(0);
    at as f32 + f32::from(time.minute()) / 60.0
}

/// What is marked on a strip.
#[derive(Clone, Debug, Default)]
pub struct Marks {
    /// Sunrise and sunset.
    pub sun: Option<Span>,
    /// The span to bracket, with its words.
    pub best: Option<(Span, String)>,
}

/// Shows a strip; gives the hour that was chosen anew.
pub fn show(
    ui: &mut Ui,
    name: &str,
    cells: &[Cell],
    marks: &Marks,
    chosen: Option<(DateTime, bool)>,
) -> Option<(DateTime, bool)> {
    let colours = look::colours(ui);
    let size = Vec2::new(ui.available_width(), ABOVE + CELL + 3.0 * LINE + 6.0);
    let (rect, _) = ui.allocate_exact_size(size, Sense::hover());
    let painter = ui.painter_at(rect.expand(2.0));
    let row = Rect::from_min_size(rect.min + Vec2::Y * ABOVE, Vec2::new(rect.width(), CELL));
    let wide = row.width() / cells.len().max(1) as f32;
    let across = |place: f32| row.left() + place * wide;
    let mut picked = None;
    let mut now = chosen;
    for (at, cell) in cells.iter().enumerate() {
        let face = Rect::from_min_max(
            Pos2::new(across(at as f32), row.top()),
            Pos2::new(across(at as f32 + 1.0), row.bottom()),
        );
        let key = (cell.at, cell.again);
        let is_chosen = now == Some(key);
        // One stop of the Tab key for the whole strip: the chosen hour; from there the arrow keys go on.
        let sense = if is_chosen { Sense::click() } else { Sense::CLICK };
        let id = cell_id(ui, name, key);
        let response = ui.interact(face, id, sense);
        let inner = face.shrink2(Vec2::new(1.0, 0.0));
        face_of(&painter, colours, inner, cell.verdict);
        if let Some((from, to, verdict)) = cell.part {
            let across = |share: f32| inner.left() + inner.width() * share;
            let part = Rect::from_x_y_ranges(across(from)..=across(to), inner.y_range());
            painter.rect_filled(part, 0, colours.sheet);
            face_of(&painter, colours, part, Some(verdict));
        }
        if is_chosen || response.hovered() {
            let edge = if is_chosen { Stroke::new(2.5, colours.brass) } else { Stroke::new(1.5, colours.brass) };
            painter.rect_stroke(face.expand2(Vec2::new(0.0, 2.0)), 2, edge, StrokeKind::Inside);
        }
        if response.has_focus() {
            painter.rect_stroke(
                face.expand2(Vec2::new(2.0, 4.0)),
                3,
                Stroke::new(1.0, colours.ink),
                StrokeKind::Inside,
            );
        }
        response.widget_info(|| egui::WidgetInfo::selected(egui::Role::ListBoxOption, true, is_chosen, &cell.name));
        let pointed = response.hovered() && ui.input(|input| input.pointer.is_moving());
        if response.clicked() || pointed {
            picked = Some(key);
            now = Some(key);
        }
        if response.has_focus()
            && let Some(next) = stepped(&response, at).and_then(|next| cells.get(next))
        {
            let key = (next.at, next.again);
            picked = Some(key);
            now = Some(key);
            let id = cell_id(ui, name, key);
            ui.memory_mut(|memory| memory.request_focus(id));
        }
    }
    words_of_runs(&painter, colours, cells, row, across);
    times(&painter, colours, cells, row, across);
    if let Some(sun) = marks.sun {
        daylight(&painter, colours, row, across(place(cells, sun.from)), across(place(cells, sun.to)), sun);
    }
    if let Some((span, words)) = &marks.best {
        let (from, to) = (across(place(cells, span.from)), across(place(cells, span.to)));
        hatch::bracket(&painter, from + 1.0, to - 1.0, row.top() - 6.0, 5.0, Stroke::new(2.0, colours.ink));
        let galley = painter.layout_no_wrap(words.clone(), look::gauge_number(), colours.ink);
        let half = galley.size().x * 0.5;
        let middle = f32::midpoint(from, to).clamp(rect.left() + half, (rect.right() - half).max(rect.left() + half));
        painter.galley(Pos2::new(middle - half, row.top() - 8.0 - galley.size().y), galley, colours.ink);
    }
    picked
}

fn cell_id(ui: &Ui, name: &str, key: (DateTime, bool)) -> Id {
    ui.scope_id().with(("strip", name, key.0.to_string(), key.1))
}

/// Which cell the arrow keys lead to.
fn stepped(response: &egui::Response, at: usize) -> Option<usize> {
    let filter = egui::EventFilter { horizontal_arrows: true, ..egui::EventFilter::default() };
    response.ctx.memory_mut(|memory| memory.set_focus_lock_filter(response.id, filter));
    // Taken away, so that the next cell, which has the keyboard from now on, does not see them in the same frame.
    response.ctx.input_mut(|input| {
        if input.consume_key(Modifiers::NONE, Key::ArrowRight) {
            Some(at + 1)
        } else if input.consume_key(Modifiers::NONE, Key::ArrowLeft) {
            at.checked_sub(1)
        } else {
            None
        }
    })
}

/// The face of a verdict: full, hatched, or empty with a stroke; only an outline where nothing is known.
pub fn face_of(painter: &egui::Painter, colours: &look::Colours, face: Rect, verdict: Option<Verdict>) {
    let Some(verdict) = verdict else {
        painter.rect_stroke(face, 2, Stroke::new(1.0, colours.hairline), StrokeKind::Inside);
        return;
    };
    let colour = look::of_verdict(colours, verdict);
    match verdict {
        Verdict::Allowed => {
            painter.rect_filled(face, 2, colour);
        }
        Verdict::Doubtful => {
            painter.rect_filled(face, 2, colours.sheet);
            hatch::fill(painter, face, 6.0, Stroke::new(1.5, colour));
            painter.rect_stroke(face, 2, Stroke::new(1.0, colour), StrokeKind::Inside);
        }
        Verdict::Forbidden => {
            painter.rect(face, 2, colours.sheet, Stroke::new(1.0, colour), StrokeKind::Inside);
            let middle = face.center();
            let half = (face.width() * 0.28).min(8.0);
            painter.line_segment([middle - Vec2::X * half, middle + Vec2::X * half], Stroke::new(2.0, colour));
        }
    }
}

/// The times under bars.
pub fn axis(ui: &mut Ui, cells: &[Cell]) {
    let (rect, _) = ui.allocate_exact_size(Vec2::new(ui.available_width(), LINE + 4.0), Sense::hover());
    let wide = rect.width() / cells.len().max(1) as f32;
    let painter = ui.painter_at(rect);
    let row = Rect::from_x_y_ranges(rect.x_range(), (rect.top() - LINE)..=(rect.top() - LINE));
    times(&painter, look::colours(ui), cells, row, |place| rect.left() + place * wide);
}

/// A bar over the hours of a day: what goes before it, then the span itself. Under it the hours as fine lines.
pub fn bar(ui: &mut Ui, name: &str, cells: &[Cell], span: Option<Span>, before: Duration, verdict: Option<Verdict>) {
    let colours = look::colours(ui);
    let (rect, response) = ui.allocate_exact_size(Vec2::new(ui.available_width(), 18.0), Sense::hover());
    response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Image, true, name));
    let painter = ui.painter_at(rect);
    let wide = rect.width() / cells.len().max(1) as f32;
    painter.rect_stroke(rect, 0, Stroke::new(1.0, colours.hairline), StrokeKind::Inside);
    for at in (3..cells.len()).step_by(3) {
        painter.vline(rect.left() + wide * at as f32, rect.y_range(), Stroke::new(1.0, colours.hairline));
    }
    let Some(span) = span else { return };
    let (from, to) = (rect.left() + wide * place(cells, span.from), rect.left() + wide * place(cells, span.to));
    #[allow(clippy::cast_possible_truncation)] // A few hours.
    let lead = (before.to_hours() as f32 * wide).min(from - rect.left());
    if lead > 1.0 {
        let rect = Rect::from_x_y_ranges((from - lead)..=from, rect.y_range()).shrink2(Vec2::new(0.0, 5.0));
        painter.rect_stroke(rect, 0, Stroke::new(1.0, colours.soft), StrokeKind::Inside);
    }
    face_of(&painter, colours, Rect::from_x_y_ranges(from..=to, rect.y_range()).shrink2(Vec2::new(0.0, 2.0)), verdict);
}

/// The word under each run of cells of one verdict that has room for it.
fn words_of_runs(
    painter: &egui::Painter,
    colours: &look::Colours,
    cells: &[Cell],
    row: Rect,
    across: impl Fn(f32) -> f32,
) {
    let mut from = 0;
    for run in cells.chunk_by(|a, b| a.verdict == b.verdict) {
        let (left, right) = (across(from as f32), across((from + run.len()) as f32));
        from += run.len();
        let verdict = run.first().and_then(|cell| cell.verdict);
        let word = verdict.map_or("no forecast", Verdict::word);
        let colour = verdict.map_or(colours.soft, |verdict| look::of_verdict(colours, verdict));
        let galley = painter.layout_no_wrap(word.to_owned(), look::gauge_font(), colour);
        if galley.size().x <= right - left {
            let at = Pos2::new(f32::midpoint(left, right) - galley.size().x * 0.5, row.bottom() + 2.0);
            painter.galley(at, galley, colour);
        }
    }
}

fn times(painter: &egui::Painter, colours: &look::Colours, cells: &[Cell], row: Rect, across: impl Fn(f32) -> f32) {
    let y = row.bottom() + LINE + 3.0;
    let step = if row.width() < 400.0 { 6 } else { 3 };
    for hour in (0..=24_i8).step_by(step) {
        let at = if hour == 24 {
            cells.len() as f32
        } else {
            cells.iter().position(|cell| cell.at.hour() == hour).unwrap_or(0) as f32
        };
        let x = across(at);
        let side = match hour {
            0 => Align2::LEFT_TOP,
            24 => Align2::RIGHT_TOP,
            _ => Align2::CENTER_TOP,
        };
        painter.vline(x, (row.bottom())..=(row.bottom() + 3.0), Stroke::new(1.0, colours.soft));
        painter.text(Pos2::new(x, y), side, format!("{hour:02}:00"), look::gauge_font(), colours.soft);
    }
}

/// A line from sunrise to sunset with both times.
fn daylight(painter: &egui::Painter, colours: &look::Colours, row: Rect, from: f32, to: f32, sun: Span) {
    let y = row.bottom() + 2.0 * LINE + 12.0;
    let stroke = Stroke::new(2.0, colours.soft);
    for x in [from, to] {
        painter.vline(x, (y - 4.0)..=(y + 4.0), stroke);
    }
    let words = |words: String| painter.layout_no_wrap(words, look::gauge_font(), colours.soft);
    let rise = words(format!("sunrise {}", clock(sun.from)));
    let set = words(format!("sunset {}", clock(sun.to)));
    let (after, before) = (from + 6.0 + rise.size().x, to - 6.0 - set.size().x);
    let half = rise.size().y * 0.5;
    if after + 6.0 < before - 6.0 {
        painter.hline((after + 6.0)..=(before - 6.0), y, Stroke::new(1.0, colours.soft));
    }
    painter.galley(Pos2::new(from + 6.0, y - half), rise, colours.soft);
    painter.galley(Pos2::new(before, y - half), set, colours.soft);
}

/// What the patterns mean.
pub fn legend(ui: &mut Ui) {
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing.x = 6.0;
        for verdict in [Verdict::Allowed, Verdict::Doubtful, Verdict::Forbidden] {
            let (rect, _) = ui.allocate_exact_size(Vec2::new(22.0, 12.0), Sense::hover());
            face_of(ui.painter(), look::colours(ui), rect, Some(verdict));
            let words = match verdict {
                Verdict::Allowed => "allowed",
                Verdict::Doubtful => "doubtful, a person decides",
                Verdict::Forbidden => "forbidden by a label or a law",
            };
            ui.label(look::soft(ui, words));
            ui.add_space(8.0);
        }
    });
}
