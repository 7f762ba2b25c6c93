//! Boxes to type in: text, quantities, dates, choices. Each has a name for screen readers. And what stands around them: rows, acts,
//! soft sentences, hairlines.
//!
//! A quantity box keeps what is typed even while it cannot be read, says why, and changes the farm only with what it
//! understood.

use egui::{Align, ComboBox, Id, Label, Layout, Response, RichText, Stroke, TextEdit, Ui, Vec2};
use jiff::civil::{Date, Time};
use tankard_core::farm::{Droplets, MonthDay, SunTime};
use tankard_core::quantity::{AsTyped, Quantity, Share, Units};
use tankard_core::t;

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

/// Takes the keyboard where it is this one that is wanted.
fn claim(ui: &Ui, name: &str, response: &Response, is_box: bool) -> bool {
    let wanted: Option<(Wanted, u8)> = ui.data(|data| data.get_temp(wanted_id()));
    let is_it = match wanted {
        Some((Wanted::Named(wanted), _)) => wanted == name,
        Some((Wanted::Next, _)) => is_box,
        None => false,
    };
    if is_it && ui.is_enabled() {
        ui.data_mut(|data| data.remove::<(Wanted, u8)>(wanted_id()));
        response.request_focus();
        response.scroll_to_me(Some(Align::Center));
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

/// A box for plain text.
pub fn text(ui: &mut Ui, name: &str, value: &mut impl Typed, width: f32) -> Response {
    typed_in(value, |value| {
        let out = ui.add(TextEdit::singleline(value).desired_width(width).align(egui::Align2::LEFT_CENTER));
        select_on_tab(ui, name, &out, value);
        out.accessible_name(name)
    })
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
    /// Why it cannot be read.
    problem: Option<String>,
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

/// Tells the boxes the units in which to give examples.
pub fn set_units(ctx: &egui::Context, units: Units) {
    ctx.data_mut(|data| data.insert_temp(Id::unique("tankard units of examples"), units == Units::Metric));
}

/// The example of a quantity in the farm's own system.
fn example<Q: Quantity>(ui: &Ui) -> &'static str {
    const METRIC: [(&str, &str); 13] = [
        ("74.6 ac", "30.2 ha"),
        ("1200 gal", "4500 L"),
        ("51 lb", "25 kg"),
        ("15 gal/ac", "140 L/ha"),
        ("22 fl oz/ac", "1.6 L/ha"),
        ("10.2 lb/gal", "1.22 kg/L"),
        ("120 ft", "36 m"),
        ("12 mph", "20 km/h"),
        ("40 psi", "2.8 bar"),
        ("0.4 gal/min", "1.5 L/min"),
        ("68 °F", "20 °C"),
        ("2.5 gal", "10 L"),
        ("24.50 / gal", "6.50 / L"),
    ];
    let metric = ui.data(|data| data.get_temp::<bool>(Id::unique("tankard units of examples"))).unwrap_or_default();
    METRIC.iter().find(|(us, _)| metric && *us == Q::EXAMPLE).map_or(Q::EXAMPLE, |(_, own)| own)
}

/// A box whose text must be read as something. `read` gives what the farm will hold for a text. Gives the new text when it
/// changed and could be read.
fn read_box(
    ui: &mut Ui,
    name: &str,
    current: &str,
    width: f32,
    hint: &str,
    read: impl Fn(&str) -> Result<String, String>,
) -> Option<String> {
    let id = ui.make_persistent_id(("box", name));
    let edit_id = id.with("edit");
    let kept: Option<Draft> = ui.data(|data| data.get_temp(id));
    let in_use = ui.memory(|memory| memory.has_focus(edit_id));
    let draft = kept.clone().filter(|draft| draft.over == current && (in_use || draft.problem.is_some()));
    if kept.is_some() && draft.is_none() {
        ui.data_mut(|data| data.remove::<Draft>(id));
        note_unread(ui.ctx(), id, None);
    }
    let mut text = draft.as_ref().map_or_else(|| current.to_owned(), |draft| draft.text.clone());
    let problem = draft.and_then(|draft| draft.problem);
    let mut edit = TextEdit::singleline(&mut text)
        .id(edit_id)
        .desired_width(width)
        .hint_text(hint_in(ui, hint))
        .align(egui::Align2::LEFT_CENTER);
    if problem.is_some() {
        edit = edit.text_color(look::colours(ui).stop);
    }
    let response = ui.add(edit).accessible_name(name);
    if claim(ui, name, &response, true) || response.gained_focus() {
        select_all(ui, edit_id, &text);
    }
    if let Some(problem) = &problem {
        ui.painter().rect_stroke(response.rect, 4, Stroke::new(1.5, look::colours(ui).stop), egui::StrokeKind::Inside);
        if response.has_focus() || response.hovered() {
            egui::Tooltip::always_open(ui.ctx().clone(), ui.layer_id(), id.with("why"), response.rect).gap(2.0).show(
                |ui| {
                    ui.set_max_width(360.0);
                    ui.label(RichText::new(problem).color(look::colours(ui).stop));
                },
            );
        }
    }
    if response.has_focus() && ui.input(|input| input.key_pressed(egui::Key::Escape)) {
        ui.data_mut(|data| data.remove::<Draft>(id));
        note_unread(ui.ctx(), id, None);
        return None;
    }
    if !response.changed() {
        return None;
    }
    let (over, problem) = match read(&text) {
        Ok(held) => (held, None),
        Err(problem) => (current.to_owned(), Some(problem)),
    };
    note_unread(
        ui.ctx(),
        id,
        problem.clone().map(|problem| Unread { id, name: name.to_owned(), problem, instead: current.to_owned() }),
    );
    let understood = problem.is_none();
    ui.data_mut(|data| data.insert_temp(id, Draft { text: text.clone(), over, problem }));
    (understood && text != current).then_some(text)
}

/// The id of the box of a quantity, day or time under a name in the same place.
pub fn edit_id(ui: &Ui, name: &str) -> Id {
    ui.make_persistent_id(("box", name)).with("edit")
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
    let read = |text: &str| Q::parse(text).map(|_| text.to_owned()).map_err(|error| error.to_string());
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
    let read = |text: &str| {
        if text.trim().is_empty() {
            Ok(String::new())
        } else {
            Q::parse(text).map(|_| text.to_owned()).map_err(|error| error.to_string())
        }
    };
    let current = value.as_ref().map(|typed| typed.text().to_owned()).unwrap_or_default();
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
    if let Some(text) =
        read_box(ui, name, &value.to_string(), width, "2031-06-12", |text| read_date(text).map(|date| date.to_string()))
        && let Ok(read) = read_date(&text)
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
        if text.trim().is_empty() { Ok(String::new()) } else { read_date(text).map(|date| date.to_string()) }
    };
    if let Some(text) = read_box(ui, name, &current, width, hint, read) {
        *value = read_date(&text).ok();
    }
}

/// Reads 2031-06-12, 2031-6-2 or 12.6.2031. With strokes it may be either way round, so that is refused.
fn read_date(text: &str) -> Result<Date, String> {
    let problem = || t!("parts-is-not-a-day-write-it", text = text.trim());
    let part = |text: &str| text.trim().parse::<i16>().map_err(|_| problem());
    let parts: Vec<&str> = text.trim().split(['-', '.']).collect();
    let (year, month, day) = match parts.as_slice() {
        [year, month, day] if year.len() == 4 => (part(year)?, part(month)?, part(day)?),
        [day, month, year] if year.len() == 4 && text.contains('.') => (part(year)?, part(month)?, part(day)?),
        _ => return Err(problem()),
    };
    let small = |value: i16| i8::try_from(value).map_err(|_| problem());
    Date::new(year, small(month)?, small(day)?).map_err(|_| problem())
}

/// A box for a day of any year that may be left empty, written 06-20.
pub fn month_day_or_none(ui: &mut Ui, name: &str, value: &mut Option<MonthDay>, width: f32, hint: &str) {
    let current = value.map(|day| day.to_string()).unwrap_or_default();
    let read = |text: &str| {
        if text.trim().is_empty() { Ok(String::new()) } else { text.parse::<MonthDay>().map(|day| day.to_string()) }
    };
    if let Some(text) = read_box(ui, name, &current, width, hint, read) {
        *value = text.parse().ok();
    }
}

/// A box for a time of day by the sun, written "1 h after sunrise".
pub fn sun_time(ui: &mut Ui, name: &str, value: &mut SunTime, width: f32) {
    let read = |text: &str| text.parse::<SunTime>().map(|time| time.to_string());
    if let Some(text) = read_box(ui, name, &value.to_string(), width, "1 h after sunrise", read)
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
    let current = value.map(|time| time.strftime("%H:%M").to_string()).unwrap_or_default();
    let read = |text: &str| {
        if text.trim().is_empty() {
            Ok(String::new())
        } else {
            read_time(text).map(|time| time.strftime("%H:%M").to_string())
        }
    };
    if let Some(text) = read_box(ui, name, &current, width, hint, read) {
        *value = read_time(&text).ok();
    }
}

/// Reads 05:40, 5:40 or 0540.
fn read_time(text: &str) -> Result<Time, String> {
    let problem = || t!("parts-is-not-a-time-of-day", text = text.trim());
    let text = text.trim();
    let (hour, minute) = match text.split_once([':', '.']) {
        Some((hour, minute)) if minute.len() == 2 => (hour, minute),
        None if (3..=4).contains(&text.len()) && text.is_ascii() => text.split_at(text.len() - 2),
        _ => return Err(problem()),
    };
    let hour = hour.parse().map_err(|_| problem())?;
    let minute = minute.parse().map_err(|_| problem())?;
    Time::new(hour, minute, 0, 0).map_err(|_| problem())
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

/// A choice among a few.
pub fn choice<T: PartialEq + Clone>(
    ui: &mut Ui,
    name: &str,
    value: &mut T,
    all: &[T],
    say: impl Fn(&T) -> String,
    width: f32,
) {
    let shown = say(value);
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
    // In a slot of its own, since a long text would widen the box.
    let response = ui
        .allocate_ui_with_layout(slot, Layout::left_to_right(Align::Center), |ui| {
            ComboBox::from_id_salt(("choice", name)).width(width).truncate().selected_text(shown.clone()).show_ui(
                ui,
                |ui| {
                    for each in all {
                        // The keyboard chooses too, and then the list is done.
                        if ui.selectable_value(value, each.clone(), say(each)).clicked() {
                            is_chosen = true;
                            ui.close();
                        }
                    }
                },
            )
        })
        .inner;
    let response = response.response.accessible_name(format!("{name}: {shown}"));
    // The keyboard goes back from the list that is gone to its box, and not to the head of the window.
    if is_chosen && ui.input(|input| input.key_pressed(egui::Key::Enter) || input.key_pressed(egui::Key::Space)) {
        response.request_focus();
    }
    claim(ui, name, &response, true);
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

/// A row of a form: a label, then what stands beside it.
pub fn row(ui: &mut Ui, label: &str, add: impl FnOnce(&mut Ui)) {
    ui.horizontal(|ui| {
        ui.set_min_height(look::ROW);
        slot(ui, look::LABEL, |ui| ui.label(look::soft(ui, label)));
        add(ui);
    });
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

/// A framed button.
pub fn button(ui: &mut Ui, text: &str) -> Response {
    let response = ui.button(text);
    claim(ui, text, &response, false);
    response
}

/// A box to find things by, with its name as the hint.
pub fn find(ui: &mut Ui, name: &str, value: &mut String, width: f32) -> Response {
    ui.add(TextEdit::singleline(value).desired_width(width).hint_text(format!("{}…", name.to_lowercase())))
        .accessible_name(name)
}

/// A box that looks like plain text until it is used; for rows that are edited in the row.
pub fn plain(ui: &mut Ui, name: &str, value: &mut String, width: f32, with_weight: bool, hint: &str) -> Response {
    let id = ui.make_persistent_id(("plain", name));
    let in_use = ui.memory(|memory| memory.has_focus(id));
    let mut edit = TextEdit::singleline(value)
        .id(id)
        .font(look::body(with_weight))
        .desired_width(width)
        .hint_text(hint.to_owned());
    if !in_use {
        edit = edit.background_color(egui::Color32::TRANSPARENT);
    }
    ui.scope(|ui| {
        if !in_use {
            ui.visuals_mut().widgets.inactive.bg_stroke = Stroke::NONE;
        }
        ui.add(edit).accessible_name(name)
    })
    .inner
}

/// A box for plain text that says softly what belongs into it while it is empty.
pub fn text_or_empty(ui: &mut Ui, name: &str, value: &mut impl Typed, width: f32, hint: &str) -> Response {
    typed_in(value, |value| {
        let edit = TextEdit::singleline(value).desired_width(width).hint_text(hint_in(ui, hint));
        let response = ui.add(edit.align(egui::Align2::LEFT_CENTER)).accessible_name(name);
        select_on_tab(ui, name, &response, value);
        response
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
    use super::{read_date, read_per_cent, read_time};
    use jiff::civil::{date, time};

    #[test]
    fn per_cent_with_and_without_its_sign() {
        for (text, held) in [("90", "90 %"), (" 90 % ", "90 %"), ("0", "0 %"), ("100%", "100%"), ("", "")] {
            assert_eq!(read_per_cent(text, "").as_deref(), Ok(held), "{text}");
        }
        for text in ["101", "120 %", "-5", "good", "90 ac"] {
            assert!(read_per_cent(text, "").is_err(), "{text}");
        }
    }

    #[test]
    fn days_and_times_as_people_write_them() {
        for text in ["2031-06-12", "2031-6-12", "12.6.2031", " 12.06.2031 "] {
            assert_eq!(read_date(text), Ok(date(2031, 6, 12)), "{text}");
        }
        for text in ["6/12/2031", "12-6-2031", "2031-13-01", "2031-06", "tomorrow", "12.6.31"] {
            assert!(read_date(text).is_err(), "{text}");
        }
        for text in ["08:30", "8:30", "0830", "830", "8.30"] {
            assert_eq!(read_time(text), Ok(time(8, 30, 0, 0)), "{text}");
        }
        // "8:3" on the way to "8:30" is no time yet.
        for text in ["8:3", "25:00", "08:61", "8", "noon", "ö30"] {
            assert!(read_time(text).is_err(), "{text}");
        }
    }
}
