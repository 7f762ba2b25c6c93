//! A day as a strip of hours. Each hour is a cell that the pointer or the arrow keys choose; its verdict is told by a
//! pattern (full, hatched, empty with a stroke), by a word and by colour.

use egui::{Align2, Id, Pos2, Rect, Sense, Stroke, StrokeKind, Ui, Vec2};
use jiff::civil::{Date, DateTime};
use tankard_core::language::days::clock;
use tankard_core::quantity::Duration;
use tankard_core::t;
use tankard_core::weather::{JudgedHour, Span, Verdict};

use super::hatch;
use crate::keys::strip as keys;
use crate::look;

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
    /// Where it begins on the strip, in minutes from its left end.
    pub from: u32,
    /// Where it ends.
    pub to: u32,
    /// Whether it may be used; `None` where the forecast does not hold it.
    pub verdict: Option<Verdict>,
    /// Where a time by the sun cuts it: the part that is left, as shares of the hour, and how that is judged.
    pub part: Option<(f32, f32, Verdict)>,
    /// What a screen reader says.
    pub name: String,
}

/// The minutes of an hour.
const HOUR: u32 = 60;

/// The hours that the clock of a strip shows, in order; with the second of two alike.
fn shown(again: impl Fn(u32) -> bool) -> Vec<(u32, bool)> {
    let both = |hour| std::iter::once((hour, false)).chain(again(hour).then_some((hour, true)));
    (0..24).flat_map(both).collect()
}

fn hour_of(time: DateTime) -> u32 {
    u32::from(time.hour().unsigned_abs())
}

fn minute_of(time: DateTime) -> u32 {
    u32::from(time.minute().unsigned_abs())
}

/// The cells of a day, which fill it: one for each hour of the forecast, and one for each hour of the clock, or part of it, that the
/// forecast does not hold.
pub fn cells(day: Date, hours: &[JudgedHour], name: impl Fn(&JudgedHour) -> String) -> Vec<Cell> {
    let hours = || hours.iter().filter(|known| known.at.date() == day);
    let clock = shown(|hour| hours().any(|known| known.again && hour_of(known.at) == hour));
    let mut cells = Vec::with_capacity(25);
    for (place, (hour, again)) in (0_u32..).zip(clock) {
        let mut known = hours().filter(|known| (hour_of(known.at), known.again) == (hour, again)).peekable();
        let end = (place + 1) * HOUR;
        // What of this hour the cells before it do not fill.
        let mut from = cells.last().map_or(0, |cell: &Cell| cell.to).max(place * HOUR);
        loop {
            let next = known.peek().map_or(end, |known| place * HOUR + minute_of(known.at));
            if from < next {
                let minute = from - place * HOUR;
                let at = day.at(i8::try_from(hour).unwrap_or(0), i8::try_from(minute).unwrap_or(0), 0, 0);
                let name = t!("parts-not-in-the-forecast", time = format_args!("{hour:02}:{minute:02}"));
                cells.push(Cell { at, again, from, to: next, verdict: None, part: None, name });
            }
            let Some(known) = known.next() else { break };
            #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // An hour at most.
            let to = next + (known.lasts.to_hours() * f64::from(HOUR)).round() as u32;
            cells.push(Cell {
                at: known.at,
                again: known.again,
                from: next,
                to,
                verdict: Some(known.verdict),
                part: known.part.map(|(part, verdict)| (share(part.from, known), share(part.to, known), verdict)),
                name: name(known),
            });
            from = to;
        }
    }
    // What of the last hour lies in the next day is not shown.
    let most = minutes_of(&cells);
    if let Some(last) = cells.last_mut() {
        last.to = last.to.min(most);
    }
    cells
}

/// How many minutes a strip shows.
fn minutes_of(cells: &[Cell]) -> u32 {
    let twice = cells.iter().filter(|cell| cell.again && cell.at.minute() == 0).count();
    (24 + u32::try_from(twice).unwrap_or(0)) * HOUR
}

/// How many hours a strip shows.
fn hours_of(cells: &[Cell]) -> f32 {
    hours(minutes_of(cells))
}

/// How far into an hour of a forecast a time lies, from 0 to 1.
fn share(time: DateTime, hour: &JudgedHour) -> f32 {
    #[allow(clippy::cast_possible_truncation)] // An hour at most.
    let lasts = hour.lasts.to_seconds() as f32;
    (time.duration_since(hour.at).as_secs_f32() / lasts).clamp(0.0, 1.0)
}

/// Where a time stands on a strip, in hours from its left end.
pub fn place(cells: &[Cell], time: DateTime) -> f32 {
    let Some(first) = cells.first() else { return 0.0 };
    if time.date() > first.at.date() {
        return hours_of(cells);
    }
    let clock = shown(|hour| cells.iter().any(|cell| cell.again && hour_of(cell.at) == hour));
    let at = clock.iter().position(|(hour, _)| *hour == hour_of(time)).unwrap_or(0);
    at as f32 + f32::from(time.minute()) / HOUR as f32
}

/// Minutes as hours.
fn hours(minutes: u32) -> f32 {
    minutes as f32 / HOUR as f32
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
    let wide = row.width() / hours_of(cells);
    let across = |place: f32| row.left() + place * wide;
    let mut picked = None;
    let mut now = chosen;
    for (at, cell) in cells.iter().enumerate() {
        let face = Rect::from_min_max(
            Pos2::new(across(hours(cell.from)), row.top()),
            Pos2::new(across(hours(cell.to)), row.bottom()),
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

/// Which place the arrow keys lead to from one.
pub(super) fn stepped(response: &egui::Response, at: usize) -> Option<usize> {
    let filter = egui::EventFilter { horizontal_arrows: true, ..egui::EventFilter::default() };
    response.ctx.memory_mut(|memory| memory.set_focus_lock_filter(response.id, filter));
    // Taken away, so that the next cell, which has the keyboard from now on, does not see them in the same frame.
    if keys::NEXT.taken(&response.ctx) {
        Some(at + 1)
    } else if keys::BEFORE.taken(&response.ctx) {
        at.checked_sub(1)
    } else {
        None
    }
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
    let wide = rect.width() / hours_of(cells);
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
    let wide = rect.width() / hours_of(cells);
    painter.rect_stroke(rect, 0, Stroke::new(1.0, colours.hairline), StrokeKind::Inside);
    for at in (3..24).step_by(3) {
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
    for run in cells.chunk_by(|a, b| a.verdict == b.verdict) {
        let (Some(first), Some(last)) = (run.first(), run.last()) else { continue };
        let (left, right) = (across(hours(first.from)), across(hours(last.to)));
        let verdict = first.verdict;
        let word = verdict.map_or(t!("parts-no-forecast"), Verdict::word);
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
    let day = cells.first().map_or(Date::MIN, |cell| cell.at.date());
    for hour in (0..=24_i8).step_by(step) {
        let at = if hour == 24 { hours_of(cells) } else { place(cells, day.at(hour, 0, 0, 0)) };
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
    let rise = words(t!("parts-sunrise", from = clock(sun.from)));
    let set = words(t!("parts-sunset", to = clock(sun.to)));
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
                Verdict::Allowed => t!("parts-allowed"),
                Verdict::Doubtful => t!("parts-doubtful-a-person-decides"),
                Verdict::Forbidden => t!("parts-forbidden-by-a-label-or-a"),
            };
            ui.label(look::soft(ui, words));
            ui.add_space(8.0);
        }
        let (rect, _) = ui.allocate_exact_size(Vec2::new(22.0, 12.0), Sense::hover());
        let edge = Stroke::new(2.5, look::colours(ui).brass);
        ui.painter().rect_stroke(rect, 2, edge, StrokeKind::Inside);
        ui.label(look::soft(ui, t!("parts-the-hour-told-of-below")));
    });
}

#[cfg(test)]
mod tests {
    use super::{cells, place};
    use jiff::civil::{Date, DateTime, date};
    use tankard_core::quantity::Duration;
    use tankard_core::weather::{JudgedHour, Verdict};

    const DAY: Date = date(2031, 6, 12);

    fn hour(at: DateTime, again: bool, hours: f64) -> JudgedHour {
        let lasts = Duration::from_hours(hours);
        JudgedHour { at, again, lasts, verdict: Verdict::Allowed, binds: Vec::new(), part: None }
    }

    /// Where each cell begins and ends, and whether the forecast holds it.
    fn laid(hours: &[JudgedHour]) -> Vec<(u32, u32, bool)> {
        cells(DAY, hours, |_| String::new()).iter().map(|cell| (cell.from, cell.to, cell.verdict.is_some())).collect()
    }

    #[test]
    fn cells_fill_the_day_wherever_its_hours_begin() {
        let hourly: Vec<_> = (0..24_u32).map(|hour| (hour * 60, hour * 60 + 60, false)).collect();
        assert_eq!(laid(&[]), hourly);
        // 05:00 and 05:30.
        let halves = laid(&[hour(DAY.at(5, 0, 0, 0), false, 0.5), hour(DAY.at(5, 30, 0, 0), false, 1.0)]);
        assert_eq!(halves[5..8], [(300, 330, true), (330, 390, true), (390, 420, false)]);
        // A zone half an hour off: the day begins with a half hour that is not known, and the last hour ends with the day.
        let all: Vec<JudgedHour> = (0..24).map(|at| hour(DAY.at(at, 30, 0, 0), false, 1.0)).collect();
        let odd = laid(&all);
        assert_eq!((odd[0], odd[1], odd[24]), ((0, 30, false), (30, 90, true), (1410, 1440, true)));
        let odd = cells(DAY, &all, |_| String::new());
        assert!((place(&odd, DAY.at(6, 30, 0, 0)) - 6.5).abs() < 1e-6);
        assert!((place(&odd, DAY.tomorrow().unwrap().at(0, 0, 0, 0)) - 24.0).abs() < 1e-6);
        // The clock shows 01:00 twice.
        let twice = cells(DAY, &[hour(DAY.at(1, 0, 0, 0), true, 1.0)], |_| String::new());
        assert_eq!((twice.len(), twice[24].to), (25, 1500));
        assert!((place(&twice, DAY.at(2, 0, 0, 0)) - 3.0).abs() < 1e-6);
    }
}
