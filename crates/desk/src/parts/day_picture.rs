//! The day of the rigs as a picture: one row a rig, its passes as blocks along the clock. A block is told by its number, its
//! name and its face, not by colour: passes are full, cleaning out is hatched, road is a line.

use egui::{Align2, Color32, Pos2, Rect, Response, Sense, Stroke, StrokeKind, Ui, Vec2};
use tankard_core::day::{Block, BlockKind, Row, Timeline};
use tankard_core::t;

use crate::look;
use crate::parts::{hatch, strip};

const TALL: f32 = 40.0;
const APART: f32 = 12.0;
const SCALE: f32 = 20.0;

/// What was done with a block.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Done {
    /// It was chosen: the number of its pass.
    Chosen(u32),
    /// It was moved to a place among those of its rig, from 1.
    Moved(u32, u32),
}

/// A pass of the picture.
pub struct Named {
    /// What stays with it when its number changes, so that the keyboard stays with it too.
    pub id: String,
    /// What a screen reader says.
    pub spoken: String,
    /// It has a Stop.
    pub marked: bool,
}

/// Shows the picture; `name` says what a pass is, by its number.
pub fn show(ui: &mut Ui, picture: &Timeline, name: impl Fn(u32) -> Named) -> Option<Done> {
    let colours = look::colours(ui);
    let names = 112.0_f32.min(ui.available_width() * 0.2);
    let height = SCALE + picture.rows.len() as f32 * (TALL + APART);
    let (rect, _) = ui.allocate_exact_size(Vec2::new(ui.available_width(), height), Sense::hover());
    let left = rect.left() + names;
    let wide = rect.right() - left - 18.0;
    #[allow(clippy::cast_possible_truncation)] // A share.
    let across = |share: f64| left + wide * share as f32;
    let painter = ui.painter_at(rect);
    let every = every(ui, picture, wide);
    for (at, tick) in picture.ticks.iter().enumerate() {
        let x = across(tick.at);
        painter.vline(x, (rect.top() + SCALE - 4.0)..=rect.bottom(), Stroke::new(1.0, colours.hairline));
        if at % every == 0 {
            painter.text(Pos2::new(x, rect.top()), Align2::CENTER_TOP, &tick.label, look::gauge_font(), colours.soft);
        }
    }
    let mut done = None;
    let mut top = rect.top() + SCALE;
    for row in &picture.rows {
        let galley = painter.layout(row.rig.clone(), look::narrow_font(), colours.ink, names - 8.0);
        painter.galley(Pos2::new(rect.left(), top + (TALL - galley.size().y) * 0.5), galley, colours.ink);
        for block in &row.blocks {
            let face = Rect::from_x_y_ranges(across(block.from)..=across(block.to), top..=(top + TALL));
            match block.kind {
                BlockKind::Pass => {
                    done = done.or(pass(ui, row, block, face, &name(block.number), &across));
                }
                BlockKind::CleanOut => {
                    let face = face.shrink2(Vec2::new(0.0, 6.0));
                    painter.rect_filled(face, 0, colours.sheet);
                    hatch::fill(&painter, face, 5.0, Stroke::new(1.0, colours.ink));
                    painter.rect_stroke(face, 0, Stroke::new(1.0, colours.ink), StrokeKind::Inside);
                }
                BlockKind::Road => {
                    painter.hline(face.x_range(), face.center().y, Stroke::new(2.0, colours.soft));
                }
            }
        }
        top += TALL + APART;
    }
    done
}

/// Every which hour has room for its figures in so wide a picture.
fn every(ui: &Ui, picture: &Timeline, wide: f32) -> usize {
    let label = |text: &str| ui.painter().layout_no_wrap(text.to_owned(), look::gauge_font(), Color32::PLACEHOLDER);
    let widest = picture.ticks.iter().map(|tick| label(&tick.label).size().x).fold(0.0, f32::max) + 6.0;
    let apart = wide / picture.ticks.len().saturating_sub(1).max(1) as f32;
    // A few hours at most.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let every = (widest / apart.max(1.0)).ceil() as usize;
    // Hours of which one is easily found between two others.
    [1, 2, 3, 4, 6, 12].into_iter().find(|step| *step >= every).unwrap_or(24)
}

/// A pass: its number and name, and a mark where each further load begins.
fn pass(
    ui: &mut Ui,
    row: &Row,
    block: &Block,
    face: Rect,
    named: &Named,
    across: &impl Fn(f64) -> f32,
) -> Option<Done> {
    let colours = look::colours(ui);
    let id = ui.scope_id().with(("block", &named.id));
    let response = ui.interact(face, id, Sense::click_and_drag());
    let stands_out = response.hovered() || response.has_focus() || response.dragged();
    let edge = if stands_out { Stroke::new(2.0, colours.brass) } else { Stroke::new(1.0, colours.ink) };
    let painter = ui.painter().with_clip_rect(face);
    painter.rect(face, 3, colours.selected, edge, StrokeKind::Inside);
    for load in &block.loads {
        painter.vline(across(*load), (face.bottom() - 8.0)..=face.bottom(), Stroke::new(1.0, colours.ink));
    }
    let number = painter.layout_no_wrap(block.number.to_string(), look::gauge_number(), colours.ink);
    let place = face.left_top() + Vec2::new(5.0, 4.0);
    let room = face.width() - number.size().x - 14.0;
    let beside = place + Vec2::new(number.size().x + 5.0, 0.0);
    painter.galley(place, number, colours.ink);
    if room > 24.0 {
        let mut job = egui::text::LayoutJob::simple(block.name.clone(), look::narrow_font(), colours.ink, room);
        job.wrap.max_rows = 1;
        let name = ui.painter().layout_job(job);
        painter.galley(beside, name, colours.ink);
    }
    if named.marked {
        crate::parts::mark::paint(
            &painter,
            Pos2::new(face.left() + 9.0, face.bottom() - 9.0),
            tankard_core::finding::Level::Stop,
            colours.stop,
        );
    }
    if response.dragged()
        && let Some(at) = response.interact_pointer_pos()
    {
        let moved = face.translate(Vec2::X * (at.x - face.center().x));
        ui.painter().rect_stroke(moved, 3, Stroke::new(2.0, colours.brass), StrokeKind::Inside);
    }
    response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Button, true, &named.spoken));
    let done = acted(&response, row, block, across);
    response
        .on_hover_cursor(egui::CursorIcon::Grab)
        .on_hover_text(t!("parts-drag-it-to-hold-it-at", spoken = named.spoken));
    done
}

/// Dropped at a place, moved by an arrow key, or chosen.
fn acted(response: &Response, row: &Row, block: &Block, across: &impl Fn(f64) -> f32) -> Option<Done> {
    let others: Vec<&Block> =
        row.blocks.iter().filter(|other| other.kind == BlockKind::Pass && other.number != block.number).collect();
    let place = |x: f32| 1 + others.iter().filter(|other| across(f64::midpoint(other.from, other.to)) < x).count();
    let moved = |to: usize| Done::Moved(block.number, u32::try_from(to).unwrap_or(u32::MAX));
    let now = place(across(f64::midpoint(block.from, block.to)));
    if response.drag_stopped() {
        let to = place(response.interact_pointer_pos()?.x);
        return (to != now).then(|| moved(to));
    }
    if response.has_focus()
        && let Some(to) = strip::stepped(response, now).filter(|to| (1..=others.len() + 1).contains(to))
    {
        return Some(moved(to));
    }
    response.clicked().then_some(Done::Chosen(block.number))
}
