//! Boxes to type in: text, quantities, dates, choices. Each has a name for screen readers. And what stands around them: rows, acts,
//! soft sentences, hairlines.
//!
//! A quantity box keeps what is typed even while it cannot be read, says why, and changes the farm only with what it
//! understood.

use std::sync::Arc;

use egui::text::{LayoutJob, TextWrapping};
use egui::{
    Align, Color32, ComboBox, FontId, FontSelection, Galley, Id, Label, Layout, Response, RichText, Stroke, TextBuffer,
    TextEdit, Ui, Vec2,
};
use jiff::civil::{Date, Time};
use tankard_core::farm::{Droplets, MonthDay, SunTime};
use tankard_core::language::days::clock;
use tankard_core::quantity::{AsTyped, Quantity, QuantityError, Share, Units};
use tankard_core::t;
use tankard_core::typed::{self, Refused};

use super::{offers, pick};
use crate::look;

/// What to type, where it may be typed.
fn hint_in(ui: &Ui, hint: &str) -> String {
    if ui.is_enabled() { hint.to_owned() } else { String::new() }
}

/// How many frames a box may keep one waiting: the page that it stands on is to be drawn first.
const PATIENCE: u8 = 30;

/// What takes the keyboard once it is drawn.
#[derive(Clone, Debug, PartialEq)]
enum Wanted {
    /// The box, choice or act of a name.
    Named(String),
    /// Whatever box comes next.
    Next,
}

fn wanted_id() -> Id {
    Id::unique("tankard box that is to take the keyboard")
}

/// Gives the keyboard to the box, choice or act of a name as soon as it is drawn, wherever that is.
pub fn want(ctx: &egui::Context, name: &str) {
    ctx.data_mut(|data| data.insert_temp(wanted_id(), (Wanted::Named(name.to_owned()), PATIENCE)));
    ctx.request_repaint();
}

/// Gives the keyboard to the box that is drawn next.
pub fn want_next(ctx: &egui::Context) {
    ctx.data_mut(|data| data.insert_temp(wanted_id(), (Wanted::Next, 2_u8)));
}

/// Forgets what was wanted and does not come.
pub fn tire(ctx: &egui::Context) {
    ctx.data_mut(|data| {
        let Some((wanted, patience)) = data.get_temp::<(Wanted, u8)>(wanted_id()) else { return };
        if patience == 0 {
            data.remove::<(Wanted, u8)>(wanted_id());
        } else {
            data.insert_temp(wanted_id(), (wanted, patience - 1));
        }
    });
}

/// Whether something waits for the keyboard, so that what is typed is still to wait too.
pub fn is_wanted(ctx: &egui::Context) -> bool {
    ctx.data(|data| data.get_temp::<(Wanted, u8)>(wanted_id()).is_some())
}

/// Enter in a box of one line leads to the next box, so that what is typed then does not go nowhere.
fn go_on(ui: &Ui, response: &Response) {
    if response.lost_focus() && ui.input(|input| input.key_pressed(egui::Key::Enter)) {
        want_next(ui.ctx());
    }
}

/// Takes the keyboard where it is this one that is wanted.
fn claim(ui: &Ui, name: &str, response: &Response, is_box: bool) -> bool {
    let wanted: Option<(Wanted, u8)> = ui.data(|data| data.get_temp(wanted_id()));
    let is_it = match wanted {
        Some((Wanted::Named(wanted), _)) => wanted == name,
        Some((Wanted::Next, _)) => is_box,
        None => false,
    };
    if is_it && ui.is_enabled() {
        // In the frame of a click all that it is not on gives the keyboard away again.
        if ui.input(|input| input.pointer.any_click()) {
            ui.ctx().request_repaint();
            return false;
        }
        ui.data_mut(|data| data.remove::<(Wanted, u8)>(wanted_id()));
        response.request_focus();
        // What is in view stays where it is.
        if !ui.clip_rect().contains_rect(response.rect) {
            response.scroll_to_me(Some(Align::Center));
        }
        return true;
    }
    false
}

/// What plain text is typed in: a text of its own, or one that many things of the farm share.
pub trait Typed: AsRef<str> + From<String> {}

impl<T: AsRef<str> + From<String>> Typed for T {}

/// Shows a box on a copy of a text and takes over what was typed.
fn typed_in<T: Typed>(value: &mut T, show: impl FnOnce(&mut String) -> Response) -> Response {
    let mut text = value.as_ref().to_owned();
    let response = show(&mut text);
    if text != value.as_ref() {
        *value = text.into();
    }
    response
}

/// The one line of a box. While nobody types in it, what has no room ends in an ellipsis and is not broken off within a letter.
fn one_line(ui: &Ui, text: &str, room: f32, (font, ink): (&FontId, Option<Color32>), in_use: bool) -> Arc<Galley> {
    let visuals = ui.visuals();
    let ink = ink.or(visuals.override_text_color).unwrap_or(visuals.widgets.inactive.text_color());
    let mut job = LayoutJob::simple_singleline(text.to_owned(), font.clone(), ink);
    job.keep_trailing_whitespace = true;
    let height = ui.fonts_mut(|fonts| fonts.row_height(font)) + ui.spacing().extra_text_line_spacing;
    for section in &mut job.sections {
        section.format.line_height = Some(height);
    }
    if !in_use {
        job.wrap = TextWrapping::truncate_at_width(room);
    }
    ui.fonts_mut(|fonts| fonts.layout_job(job))
}

/// Adds a box of one line in a font and, where it is another one, an ink; `with` makes it ready. Where its text is cut, the pointer
/// brings all of it.
fn add_line(
    ui: &mut Ui,
    id: Option<Id>,
    value: &mut String,
    (font, ink): (FontSelection, Option<Color32>),
    with: impl for<'t> FnOnce(TextEdit<'t>) -> TextEdit<'t>,
) -> Response {
    let id = id.unwrap_or_else(|| {
        let id = ui.next_auto_id();
        ui.skip_ahead_auto_ids(1);
        id
    });
    let in_use = ui.memory(|memory| memory.has_focus(id));
    let font = font.resolve(ui.style());
    let mut is_cut = false;
    let mut lay_out = |ui: &Ui, text: &dyn TextBuffer, room: f32| {
        let galley = one_line(ui, text.as_str(), room, (&font, ink), in_use);
        is_cut = galley.elided;
        galley
    };
    let edit = with(TextEdit::singleline(value).id(id).font(font.clone())).layouter(&mut lay_out);
    let response = ui.add(edit);
    if is_cut && !in_use && !value.is_empty() {
        return response.on_hover_text(value.as_str()).on_disabled_hover_text(value.as_str());
    }
    response
}

/// A box for plain text.
pub fn text(ui: &mut Ui, name: &str, value: &mut impl Typed, width: f32) -> Response {
    typed_in(value, |value| {
        let out = add_line(ui, None, value, (FontSelection::Default, None), |edit| {
            edit.desired_width(width).align(egui::Align2::LEFT_CENTER)
        });
        select_on_tab(ui, name, &out, value);
        go_on(ui, &out);
        out.accessible_name(name)
    })
}

/// A box to tick: too small to be found without an edge that stands out.
pub fn tick(ui: &mut Ui, value: &mut bool, text: &str) -> Response {
    let edge = Stroke::new(1.0, look::colours(ui).soft);
    let before = std::mem::replace(&mut ui.visuals_mut().widgets.inactive.bg_stroke, edge);
    let response = ui.checkbox(value, text);
    ui.visuals_mut().widgets.inactive.bg_stroke = before;
    response
}

/// A box for several lines of text.
pub fn lines(ui: &mut Ui, name: &str, value: &mut impl Typed, width: f32, rows: usize) -> Response {
    let edit = |value: &mut String| ui.add(TextEdit::multiline(value).desired_width(width).desired_rows(rows));
    let response = typed_in(value, edit).accessible_name(name);
    claim(ui, name, &response, true);
    response
}

/// What is typed in a box: kept as it is while the box is used, and for as long as it cannot be read.
#[derive(Clone, Default)]
struct Draft {
    /// What is in the box.
    text: String,
    /// What the farm holds because of it; another value means that undo or another box changed it.
    over: String,
    /// What the farm held before it was typed, and holds again where the text cannot be read: never a readable piece of it.
    before: String,
    /// Why it cannot be read, and what it was probably meant as.
    problem: Option<Refused>,
}

/// A box whose text cannot be read, so that the farm goes on with what was there before.
#[derive(Clone, Debug, PartialEq)]
pub struct Unread {
    id: Id,
    /// The box.
    pub name: String,
    /// What was typed, and why it cannot be read.
    pub problem: String,
    /// What the farm goes on with.
    pub instead: String,
}

/// The boxes that hold a text that cannot be read.
pub fn unread(ctx: &egui::Context) -> Vec<Unread> {
    ctx.data(|data| data.get_temp(Id::unique("tankard boxes that cannot be read"))).unwrap_or_default()
}

/// Drops what was typed in a box and could not be read.
pub fn drop_unread(ctx: &egui::Context, unread: &Unread) {
    ctx.data_mut(|data| data.remove::<Draft>(unread.id));
    note_unread(ctx, unread.id, None);
}

fn note_unread(ctx: &egui::Context, id: Id, now: Option<Unread>) {
    ctx.data_mut(|data| {
        let all = data.get_temp_mut_or_default::<Vec<Unread>>(Id::unique("tankard boxes that cannot be read"));
        all.retain(|known| known.id != id);
        all.extend(now);
    });
}

fn units_id() -> Id {
    Id::unique("tankard units of examples")
}

/// Tells the boxes the units in which to give examples, and in which a bare number was probably meant.
pub fn set_units(ctx: &egui::Context, units: Units) {
    ctx.data_mut(|data| data.insert_temp(units_id(), units));
}

fn units(ctx: &egui::Context) -> Units {
    ctx.data(|data| data.get_temp(units_id())).unwrap_or_default()
}

/// The example of a quantity in the farm's own system.
fn example<Q: Quantity>(ui: &Ui) -> &'static str {
    typed::example::<Q>(units(ui.ctx()))
}

/// A quantity as typed, with what it was probably meant as where its unit is missing.
fn read_quantity<Q: Quantity>(text: &str, before: &str, units: Units) -> Result<String, Refused> {
    let refused = |why: QuantityError| {
        let why = QuantityError { example: typed::example::<Q>(units), ..why };
        Refused { why: why.to_string(), meant: typed::meant::<Q>(text, before, units) }
    };
    Q::parse(text).map(|_| text.to_owned()).map_err(refused)
}

/// A box whose text must be read as something. `read` gives what the farm will hold for a text. Gives the new text when it
/// changed and could be read, or when what was probably meant in its place is taken.
fn read_box<E: Into<Refused>>(
    ui: &mut Ui,
    name: &str,
    current: &str,
    width: f32,
    hint: &str,
    read: impl Fn(&str) -> Result<String, E>,
) -> Option<String> {
    read_or_meant(ui, name, current, width, hint, (read, only))
}

/// What a text is taken as when its box is left: the one thing that it can have been meant as.
fn only(refused: &Refused) -> Option<&String> {
    match refused.meant.as_slice() {
        [only] => Some(only),
        _ => None,
    }
}

/// The same for days: with US units the month comes first where the figures alone leave it open.
fn only_or_month_first(units: Units) -> fn(&Refused) -> Option<&String> {
    if units == Units::UsCustomary { |refused| refused.meant.first() } else { only }
}

/// The same; `sure` gives what a text that cannot be read is taken as when the box is left.
fn read_or_meant<E: Into<Refused>>(
    ui: &mut Ui,
    name: &str,
    current: &str,
    width: f32,
    hint: &str,
    (read, sure): (impl Fn(&str) -> Result<String, E>, impl Fn(&Refused) -> Option<&String>),
) -> Option<String> {
    let id = box_id(ui, name);
    let edit_id = edit_id(ui, name);
    let kept: Option<Draft> = ui.data(|data| data.get_temp(id));
    let in_use = ui.memory(|memory| memory.has_focus(edit_id));
    let draft = kept.clone().filter(|draft| draft.over == current && (in_use || draft.problem.is_some()));
    if kept.is_some() && draft.is_none() {
        ui.data_mut(|data| data.remove::<Draft>(id));
        note_unread(ui.ctx(), id, None);
    }
    let mut text = draft.as_ref().map_or_else(|| current.to_owned(), |draft| draft.text.clone());
    let (before, problem) = draft.map_or_else(|| (current.to_owned(), None), |draft| (draft.before, draft.problem));
    let hint = hint_in(ui, hint);
    let ink = problem.is_some().then(|| look::colours(ui).stop);
    let response = add_line(ui, Some(edit_id), &mut text, (FontSelection::Default, ink), |edit| {
        edit.desired_width(width).hint_text(hint.as_str()).align(egui::Align2::LEFT_CENTER)
    })
    .accessible_name(name);
    let response = tell_hint(ui, response, text.is_empty(), &hint);
    if claim(ui, name, &response, true) || response.gained_focus() {
        select_all(ui, edit_id, &text);
    }
    let mut taken = None;
    if let Some(problem) = &problem {
        ui.painter().rect_stroke(response.rect, 4, Stroke::new(1.5, look::colours(ui).stop), egui::StrokeKind::Inside);
        if !problem.meant.is_empty() {
            let sure = sure(problem);
            taken = offers::in_place(ui, edit_id, &response, problem, sure);
            // Escape gives up what was typed; who goes on has meant it.
            let goes_on = ui.input(|input| {
                input.key_pressed(egui::Key::Tab) || input.key_pressed(egui::Key::Enter) || input.pointer.any_click()
            });
            if taken.is_none() && response.lost_focus() && goes_on {
                taken = sure.cloned();
            }
        } else if response.has_focus() || response.hovered() {
            egui::Tooltip::always_open(ui.ctx().clone(), ui.layer_id(), id.with("why"), response.rect).gap(2.0).show(
                |ui| {
                    ui.set_max_width(360.0);
                    ui.label(RichText::new(&problem.why).color(look::colours(ui).stop));
                },
            );
        }
    }
    if response.has_focus() && ui.input(|input| input.key_pressed(egui::Key::Escape)) {
        ui.data_mut(|data| data.remove::<Draft>(id));
        note_unread(ui.ctx(), id, None);
        return None;
    }
    if problem.is_none() || taken.is_some() {
        go_on(ui, &response);
    } else if response.lost_focus() && ui.input(|input| input.key_pressed(egui::Key::Enter)) {
        // Whoever is done with a text that cannot be read is still to hear why.
        response.request_focus();
    }
    match taken {
        Some(taken) => text = taken,
        None if response.changed() => {}
        None => return None,
    }
    let (over, problem, held) = match read(&text) {
        Ok(over) => (over, None, text.clone()),
        Err(problem) => (before.clone(), Some(problem.into()), before.clone()),
    };
    note_unread(
        ui.ctx(),
        id,
        problem.as_ref().map(|problem| Unread {
            id,
            name: name.to_owned(),
            problem: problem.why.clone(),
            instead: before.clone(),
        }),
    );
    ui.data_mut(|data| data.insert_temp(id, Draft { text, over, before, problem }));
    (held != current).then_some(held)
}

/// Under which the box of a quantity, day or time keeps what is typed in it.
fn box_id(ui: &Ui, name: &str) -> Id {
    ui.make_persistent_id(("box", name))
}

/// The id of the box of a quantity, day or time under a name in the same place.
pub fn edit_id(ui: &Ui, name: &str) -> Id {
    box_id(ui, name).with("edit")
}

/// Whether the box under a name in the same place holds a text that cannot be read.
pub fn is_unread(ui: &Ui, name: &str) -> bool {
    let id = box_id(ui, name);
    unread(ui.ctx()).iter().any(|unread| unread.id == id)
}

/// Gives the keyboard to the box of a quantity, day or time that follows under this name in the same place.
pub fn focus(ui: &mut Ui, name: &str) {
    let id = edit_id(ui, name);
    ui.memory_mut(|memory| memory.request_focus(id));
}

/// A box that Tab leads to has its text selected, so that what is typed takes its place.
fn select_on_tab(ui: &Ui, name: &str, response: &Response, text: &str) {
    let by_tab = response.gained_focus() && ui.input(|input| input.key_pressed(egui::Key::Tab));
    if claim(ui, name, response, true) || by_tab {
        select_all(ui, response.id, text);
    }
}

fn select_all(ui: &Ui, id: Id, text: &str) {
    if let Some(mut state) = TextEdit::load_state(ui.ctx(), id) {
        let all =
            egui::text::CCursorRange::two(egui::text::CCursor::new(0), egui::text::CCursor::new(text.chars().count()));
        state.cursor.set_char_range(Some(all));
        TextEdit::store_state(ui.ctx(), id, state);
    }
}

/// A box for a quantity that must be there.
pub fn quantity<Q: Quantity>(ui: &mut Ui, name: &str, value: &mut AsTyped<Q>, width: f32) {
    let (units, before) = (units(ui.ctx()), value.text().to_owned());
    let read = |text: &str| read_quantity::<Q>(text, &before, units);
    let hint = example::<Q>(ui);
    if let Some(text) = read_box(ui, name, value.text(), width, hint, read)
        && let Ok(typed) = AsTyped::parse(&text)
    {
        *value = typed;
    }
}

/// A box for a quantity that may be left empty.
pub fn quantity_or_none<Q: Quantity>(ui: &mut Ui, name: &str, value: &mut Option<AsTyped<Q>>, width: f32) {
    let hint = t!("parts-e-g", example = example::<Q>(ui));
    quantity_hinted(ui, name, value, width, &hint);
}

/// The same with a hint of what it means to leave it empty.
pub fn quantity_hinted<Q: Quantity>(ui: &mut Ui, name: &str, value: &mut Option<AsTyped<Q>>, width: f32, hint: &str) {
    let units = units(ui.ctx());
    let current = value.as_ref().map(|typed| typed.text().to_owned()).unwrap_or_default();
    let read =
        |text: &str| if text.trim().is_empty() { Ok(String::new()) } else { read_quantity::<Q>(text, &current, units) };
    if let Some(text) = read_box(ui, name, &current, width, hint, read) {
        *value = AsTyped::parse(&text).ok();
    }
}

/// The same for rows of many boxes: a bare number is taken in a unit, and then stands there with it.
pub fn quantity_in<Q: Quantity>(
    ui: &mut Ui,
    name: &str,
    value: &mut Option<AsTyped<Q>>,
    width: f32,
    hint: &str,
    unit: &str,
) {
    let whole = |text: &str| {
        let text = text.trim();
        if text.contains(char::is_alphabetic) { text.to_owned() } else { format!("{text} {unit}") }
    };
    let read = |text: &str| {
        if text.trim().is_empty() {
            return Ok(String::new());
        }
        let text = whole(text);
        Q::parse(&text).map(|_| text).map_err(|error| error.to_string())
    };
    let current = value.as_ref().map(|typed| typed.text().to_owned()).unwrap_or_default();
    if let Some(text) = read_box(ui, name, &current, width, hint, read) {
        *value = AsTyped::parse(&whole(&text)).ok();
    }
}

/// A box for a share of a hundred that may be left empty: "90" is 90 %, and what lies outside 0 to 100 % is refused. `means` says
/// what the two ends are.
pub fn per_cent(ui: &mut Ui, name: &str, value: &mut Option<AsTyped<Share>>, width: f32, hint: &str, means: &str) {
    let current = value.as_ref().map(|typed| typed.text().to_owned()).unwrap_or_default();
    if let Some(text) = read_box(ui, name, &current, width, hint, |text| read_per_cent(text, means)) {
        *value = read_per_cent(&text, means).ok().and_then(|text| AsTyped::parse(&text).ok());
    }
}

/// The text that the farm holds for a share of a hundred.
fn read_per_cent(text: &str, means: &str) -> Result<String, String> {
    let text = text.trim();
    if text.is_empty() {
        return Ok(String::new());
    }
    let whole = if text.ends_with(|c: char| c.is_ascii_digit()) { format!("{text} %") } else { text.to_owned() };
    let share = Share::parse(&whole).map_err(|error| error.to_string())?;
    if (0.0..=100.0).contains(&share.to_percent()) {
        return Ok(whole);
    }
    Err(t!("parts-does-not-lie-between-0-and", text = text, means = means))
}

/// What a quantity was understood as, in the farm's units, where that reads differently from what was typed.
pub fn understood<Q: Quantity>(ui: &mut Ui, value: Option<&AsTyped<Q>>, units: Units) {
    if let Some(value) = value {
        let shown = value.show(units);
        if !same_reading(&shown, value.text()) {
            ui.label(look::soft(ui, format!("= {shown}")));
        }
    }
}

/// Whether a quantity as shown reads as it was typed.
pub fn same_reading(shown: &str, typed: &str) -> bool {
    let bare = |text: &str| text.chars().filter(|c| !c.is_whitespace() && *c != ',').collect::<String>().to_lowercase();
    bare(shown) == bare(typed)
}

/// A box for a day that must be there, written 2031-06-12.
pub fn date(ui: &mut Ui, name: &str, value: &mut Date, width: f32) {
    let read = |text: &str| typed::day(text).map(|date| date.to_string());
    let sure = only_or_month_first(units(ui.ctx()));
    if let Some(text) = read_or_meant(ui, name, &value.to_string(), width, "2031-06-12", (read, sure))
        && let Ok(read) = typed::day(&text)
    {
        *value = read;
    }
}

/// A box for a day that may be left empty.
pub fn date_or_none(ui: &mut Ui, name: &str, value: &mut Option<Date>, width: f32) {
    date_hinted(ui, name, value, width, &t!("parts-e-g", example = "2031-06-12"));
}

/// The same with a hint of what it means to leave it empty.
pub fn date_hinted(ui: &mut Ui, name: &str, value: &mut Option<Date>, width: f32, hint: &str) {
    let current = value.map(|date| date.to_string()).unwrap_or_default();
    let read = |text: &str| {
        if text.trim().is_empty() { Ok(String::new()) } else { typed::day(text).map(|date| date.to_string()) }
    };
    let sure = only_or_month_first(units(ui.ctx()));
    if let Some(text) = read_or_meant(ui, name, &current, width, hint, (read, sure)) {
        *value = typed::day(&text).ok();
    }
}

/// A box for a day of any year that may be left empty, written 06-20.
pub fn month_day_or_none(ui: &mut Ui, name: &str, value: &mut Option<MonthDay>, width: f32, hint: &str) {
    let current = value.map(|day| day.to_string()).unwrap_or_default();
    let read = |text: &str| {
        if text.trim().is_empty() { Ok(String::new()) } else { typed::month_day(text).map(|day| day.to_string()) }
    };
    if let Some(text) = read_box(ui, name, &current, width, hint, read) {
        *value = typed::month_day(&text).ok();
    }
}

/// A box for a time of day by the sun, such as "1 h after sunrise".
pub fn sun_time(ui: &mut Ui, name: &str, value: &mut SunTime, width: f32) {
    let read = |text: &str| text.parse::<SunTime>().map(SunTime::words);
    let hint = SunTime { sunset: false, minutes: 60 }.words();
    if let Some(text) = read_box(ui, name, &value.words(), width, &hint, read)
        && let Ok(time) = text.parse()
    {
        *value = time;
    }
}

/// A box for a time of day that may be left empty.
pub fn time_or_none(ui: &mut Ui, name: &str, value: &mut Option<Time>, width: f32) {
    time_hinted(ui, name, value, width, &t!("parts-e-g", example = "05:40"));
}

/// The same with an example of its own.
pub fn time_hinted(ui: &mut Ui, name: &str, value: &mut Option<Time>, width: f32, hint: &str) {
    let current = value.map(clock).unwrap_or_default();
    let read = |text: &str| {
        if text.trim().is_empty() { Ok(String::new()) } else { typed::time_of_day(text).map(clock) }
    };
    if let Some(text) = read_box(ui, name, &current, width, hint, read) {
        *value = typed::time_of_day(&text).ok();
    }
}

/// A box for a whole number.
pub fn count(ui: &mut Ui, name: &str, value: &mut u32, width: f32) {
    let read = |text: &str| {
        text.trim()
            .parse::<u32>()
            .map(|count| count.to_string())
            .map_err(|_| t!("parts-is-not-a-whole-number-write", text = text.trim()))
    };
    if let Some(text) = read_box(ui, name, &value.to_string(), width, "30", read)
        && let Ok(read) = text.trim().parse()
    {
        *value = read;
    }
}

/// A box for a whole number that may be left empty, with a hint of what that means.
pub fn count_or_none(ui: &mut Ui, name: &str, value: &mut Option<u32>, width: f32, hint: &str) {
    let read = |text: &str| match text.trim() {
        "" => Ok(String::new()),
        text => text
            .parse::<u32>()
            .map(|count| count.to_string())
            .map_err(|_| t!("parts-is-not-a-whole-number-write", text = text)),
    };
    let current = value.map(|count| count.to_string()).unwrap_or_default();
    if let Some(text) = read_box(ui, name, &current, width, hint, read) {
        *value = text.trim().parse().ok();
    }
}

/// What may be picked in place of typing it into the box before.
pub fn pick(ui: &mut Ui, name: &str, value: &mut String, all: Vec<String>, width: f32) {
    let mut picked = None;
    let all: Vec<Option<String>> = all.into_iter().map(Some).collect();
    let say = |text: &Option<String>| text.clone().unwrap_or_else(|| t!("parts-or-pick").to_owned());
    choice(ui, name, &mut picked, &all, say, width);
    if let Some(picked) = picked {
        *value = picked;
    }
}

/// A choice among a few.
pub fn choice<T: PartialEq + Clone>(
    ui: &mut Ui,
    name: &str,
    value: &mut T,
    all: &[T],
    say: impl Fn(&T) -> String,
    width: f32,
) {
    choice_of(ui, name, value, (all, &say), width, false);
}

/// A choice in a row of a form that Enter walks through: Enter leads on from it as from a box, and the space bar opens it.
pub fn choice_in_row<T: PartialEq + Clone>(
    ui: &mut Ui,
    name: &str,
    value: &mut T,
    all: &[T],
    say: impl Fn(&T) -> String,
    width: f32,
) {
    choice_of(ui, name, value, (all, &say), width, true);
}

/// Enter leads on from a closed list that has the keyboard; whether it did.
fn passes_on_enter(ui: &Ui, id: Id) -> bool {
    let passes = ui.memory(|memory| memory.has_focus(id))
        && !ComboBox::is_open(ui.ctx(), id)
        && ui.input_mut(|input| input.consume_key(egui::Modifiers::NONE, egui::Key::Enter));
    if passes {
        ui.memory_mut(|memory| memory.surrender_focus(id));
    }
    passes
}

fn choice_of<T: PartialEq + Clone>(
    ui: &mut Ui,
    name: &str,
    value: &mut T,
    (all, say): (&[T], &impl Fn(&T) -> String),
    width: f32,
    passes: bool,
) {
    let shown = say(value);
    // A list is no wider than its line.
    let line = if ui.layout().main_wrap() { ui.max_rect().width() } else { ui.available_width() };
    let width = width.min(line.max(look::BOX / 3.0));
    let slot = Vec2::new(width, ui.spacing().interact_size.y);
    if !ui.is_enabled() {
        // Nothing is chosen here, so nothing is to look like a choice.
        ui.allocate_ui_with_layout(slot, Layout::left_to_right(Align::Center), |ui| {
            ui.set_min_width(width);
            ui.add_space(ui.spacing().button_padding.x);
            ui.add(egui::Label::new(shown).truncate());
        });
        return;
    }
    let mut is_chosen = false;
    let mut is_passed = false;
    // In a slot of its own, since a long text would widen the box.
    let response = ui
        .allocate_ui_with_layout(slot, Layout::left_to_right(Align::Center), |ui| {
            // As the list salts its own id.
            is_passed = passes && passes_on_enter(ui, ui.make_persistent_id(egui::IdSalt::new(("choice", name))));
            ComboBox::from_id_salt(("choice", name))
                .width(width)
                // Half a row below the last whole one says that there are more.
                .height((ui.spacing().interact_size.y + ui.spacing().item_spacing.y) * 9.5)
                .truncate()
                .selected_text(shown.clone())
                .show_ui(ui, |ui| {
                    let rows: Vec<String> = all.iter().map(say).collect();
                    let at = all.iter().position(|each| each == value);
                    // The keyboard chooses too, and then the list is done.
                    if let Some(each) = pick::rows(ui, &rows, at).and_then(|at| all.get(at)) {
                        *value = each.clone();
                        is_chosen = true;
                        ui.close();
                    }
                })
        })
        .inner;
    let response = response.response.accessible_name(format!("{name}: {shown}"));
    // The keyboard goes back from the list that is gone to its box, and not to the head of the window.
    if is_chosen && ui.input(|input| input.key_pressed(egui::Key::Enter) || input.key_pressed(egui::Key::Space)) {
        response.request_focus();
    }
    if is_passed {
        want_next(ui.ctx());
    } else {
        claim(ui, name, &response, true);
    }
    let font = egui::TextStyle::Button.resolve(ui.style());
    let whole = ui.painter().layout_no_wrap(shown.clone(), font, egui::Color32::PLACEHOLDER).size().x;
    let spacing = ui.spacing();
    if whole > width - spacing.icon_width - spacing.icon_spacing - 2.0 * spacing.button_padding.x {
        response.on_hover_text(shown);
    }
}

/// A choice of a droplet class, or of none, which has words of its own.
pub fn droplets_or_none(ui: &mut Ui, name: &str, value: &mut Option<Droplets>, none: &str, width: f32) {
    let all: Vec<Option<Droplets>> = std::iter::once(None).chain(Droplets::ALL.map(Some)).collect();
    let say = |class: &Option<Droplets>| class.map_or_else(|| none.to_owned(), |class| class.name().to_owned());
    choice(ui, name, value, &all, say, width);
}

/// A row of a form: a label, then what stands beside it, in several lines where it has no room in one.
pub fn row(ui: &mut Ui, label: &str, add: impl FnOnce(&mut Ui)) {
    beside(ui, look::LABEL, label, add);
}

/// A soft label of a width, and beside it what wraps within the room that is left.
pub fn beside(ui: &mut Ui, width: f32, label: &str, add: impl FnOnce(&mut Ui)) {
    ui.horizontal_top(|ui| {
        named(ui, width, label);
        let room = ui.available_width();
        ui.allocate_ui_with_layout(Vec2::new(room, look::ROW), Layout::top_down(Align::Min), |ui| {
            ui.set_width(room);
            ui.horizontal_wrapped(|ui| {
                ui.set_min_height(look::ROW);
                add(ui);
            });
        });
    });
}

/// A soft label in room of a fixed width, in several lines where one is too long for it.
pub fn named(ui: &mut Ui, width: f32, label: &str) {
    slot(ui, width, |ui| ui.add(Label::new(look::soft(ui, label)).wrap()));
}

/// Room of a fixed width in a row, in which what has no room in one line goes on in the next.
pub fn wrapping<R>(ui: &mut Ui, width: f32, add: impl FnOnce(&mut Ui) -> R) -> R {
    let layout = Layout::left_to_right(Align::Center).with_main_wrap(true);
    ui.allocate_ui_with_layout(Vec2::new(width, look::ROW), layout, |ui| {
        ui.set_min_width(width);
        ui.set_max_width(width);
        add(ui)
    })
    .inner
}

/// Width of a box that says this while it is empty, at least a width.
pub fn fitting(ui: &Ui, hint: &str, least: f32) -> f32 {
    (look::width(ui, hint) + 2.0 * ui.spacing().button_padding.x + 2.0).ceil().max(least)
}

/// Room of a fixed width in a row.
pub fn slot<R>(ui: &mut Ui, width: f32, add: impl FnOnce(&mut Ui) -> R) -> R {
    slot_of(ui, Vec2::new(width, look::ROW), add)
}

/// Room of a fixed width and of another height than a row has.
pub fn slot_of<R>(ui: &mut Ui, size: Vec2, add: impl FnOnce(&mut Ui) -> R) -> R {
    ui.allocate_ui_with_layout(size, Layout::left_to_right(Align::Center), |ui| {
        ui.set_min_width(size.x);
        ui.set_max_width(size.x);
        add(ui)
    })
    .inner
}

/// A sentence in soft ink.
pub fn say(ui: &mut Ui, text: &str) {
    ui.add(Label::new(look::soft(ui, text)).wrap());
}

/// A hairline under a row.
pub fn hairline(ui: &mut Ui) {
    let colours = look::colours(ui);
    let (rect, _) = ui.allocate_exact_size(Vec2::new(ui.available_width(), 1.0), egui::Sense::hover());
    ui.painter().hline(rect.x_range(), rect.center().y, Stroke::new(1.0, colours.hairline));
}

/// A part that can be acted on, as text in brass.
pub fn act(ui: &mut Ui, text: &str) -> Response {
    let label = look::act(ui, text);
    let response = ui.add(egui::Button::new(label).frame(false));
    claim(ui, text, &response, false);
    response
}

/// A part that leads to something by its name: shortened where it has no room, and then whole where the pointer rests on it.
pub fn lead(ui: &mut Ui, text: impl Into<RichText>) -> Response {
    let text = text.into();
    let (whole, wide) = (text.text().to_owned(), look::width(ui, text.clone()));
    let response = ui.add(egui::Button::new(text).frame(false).truncate());
    let room = response.rect.width() - 2.0 * ui.spacing().button_padding.x;
    if wide > room + 0.5 { response.on_hover_text(whole) } else { response }
}

/// Words beside a box, in soft ink: in lines of their own where they have no room beside it.
pub fn word(ui: &mut Ui, text: &str) {
    let words = look::soft(ui, text);
    if ui.layout().main_wrap() && look::width(ui, words.clone()) > ui.available_size_before_wrap().x {
        ui.end_row();
    }
    ui.label(words);
}

/// Says what a box asks for where the pointer rests on it, if that has no room in the empty box.
pub fn tell_hint(ui: &Ui, response: Response, is_empty: bool, hint: &str) -> Response {
    let room = response.rect.width() - 2.0 * ui.spacing().button_padding.x - 4.0;
    if is_empty && !hint.is_empty() && look::width(ui, hint) > room { response.on_hover_text(hint) } else { response }
}

/// The width that acts take in a row, each with the gap beside it.
pub fn width_of_acts(ui: &Ui, acts: &[&str]) -> f32 {
    acts.iter().map(|act| look::width(ui, *act) + ui.spacing().item_spacing.x).sum()
}

/// A framed button.
pub fn button(ui: &mut Ui, text: &str) -> Response {
    let response = ui.button(text);
    claim(ui, text, &response, false);
    response
}

/// A box to find things by, with its name as the hint.
pub fn find(ui: &mut Ui, name: &str, value: &mut String, width: f32) -> Response {
    let hint = format!("{}…", name.to_lowercase());
    let edit = TextEdit::singleline(value).desired_width(width).hint_text(hint.as_str());
    let response = ui.add(edit).accessible_name(name);
    tell_hint(ui, response, value.is_empty(), &hint)
}

/// A box that looks like plain text until it is used; for rows that are edited in the row.
pub fn plain(ui: &mut Ui, name: &str, value: &mut String, width: f32, with_weight: bool, hint: &str) -> Response {
    let id = ui.make_persistent_id(("plain", name));
    let in_use = ui.memory(|memory| memory.has_focus(id));
    ui.scope(|ui| {
        if !in_use {
            ui.visuals_mut().widgets.inactive.bg_stroke = Stroke::NONE;
        }
        add_line(ui, Some(id), value, (look::body(with_weight).into(), None), |edit| {
            let edit = edit.desired_width(width).hint_text(hint.to_owned());
            if in_use { edit } else { edit.background_color(egui::Color32::TRANSPARENT) }
        })
        .accessible_name(name)
    })
    .inner
}

/// A box for plain text that says softly what belongs into it while it is empty.
pub fn text_or_empty(ui: &mut Ui, name: &str, value: &mut impl Typed, width: f32, hint: &str) -> Response {
    typed_in(value, |value| {
        let hint = hint_in(ui, hint);
        let response = add_line(ui, None, value, (FontSelection::Default, None), |edit| {
            edit.desired_width(width).hint_text(hint.as_str()).align(egui::Align2::LEFT_CENTER)
        })
        .accessible_name(name);
        select_on_tab(ui, name, &response, value);
        go_on(ui, &response);
        tell_hint(ui, response, value.is_empty(), &hint)
    })
}

/// A box for a sentence: a long one wraps, so that none of it is hidden, and Enter does not break it.
pub fn sentence(ui: &mut Ui, name: &str, value: &mut impl Typed, width: f32, hint: &str) -> Response {
    typed_in(value, |value| sentence_of(ui, name, value, width, hint))
}

fn sentence_of(ui: &mut Ui, name: &str, value: &mut String, width: f32, hint: &str) -> Response {
    let edit = TextEdit::multiline(value).desired_width(width).desired_rows(1).hint_text(hint.to_owned());
    let response = ui.add(edit.return_key(None)).accessible_name(name);
    let is_led_to = claim(ui, name, &response, true);
    // As in a box of one line, Enter is the end of it, but not the one that led here.
    if !is_led_to && response.has_focus() && ui.input(|input| input.key_pressed(egui::Key::Enter)) {
        response.surrender_focus();
    }
    if response.changed() && value.contains('\n') {
        // Pasted lines become one.
        *value = value.split_whitespace().collect::<Vec<_>>().join(" ");
    }
    response
}

/// What a least and a most were understood as, where either reads differently from what was typed.
pub fn understood_between<Q: Quantity>(
    ui: &mut Ui,
    least: Option<&AsTyped<Q>>,
    most: Option<&AsTyped<Q>>,
    units: Units,
) {
    let values: Vec<&AsTyped<Q>> = [least, most].into_iter().flatten().collect();
    if values.iter().any(|value| !same_reading(&value.show(units), value.text())) {
        let mut shown: Vec<String> = values.iter().map(|value| value.show(units)).collect();
        shown.dedup();
        let text = look::soft(
            ui,
            match shown.as_slice() {
                [least, most] => t!("parts-understood-between", least = least, most = most),
                _ => format!("= {}", shown.concat()),
            },
        );
        ui.add(egui::Label::new(text).truncate());
    }
}

#[cfg(test)]
mod tests {
    use super::read_per_cent;

    #[test]
    fn per_cent_with_and_without_its_sign() {
        for (text, held) in [("90", "90 %"), (" 90 % ", "90 %"), ("0", "0 %"), ("100%", "100%"), ("", "")] {
            assert_eq!(read_per_cent(text, "").as_deref(), Ok(held), "{text}");
        }
        for text in ["101", "120 %", "-5", "good", "90 ac"] {
            assert!(read_per_cent(text, "").is_err(), "{text}");
        }
    }
}
