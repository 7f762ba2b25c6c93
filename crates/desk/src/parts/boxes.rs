//! Boxes to type in: text, quantities, dates, choices. Each has a name for screen readers.
//!
//! A quantity box keeps what is typed even while it cannot be read, says why, and changes the farm only with what it
//! understood.

use egui::{Align, ComboBox, Id, Layout, Response, RichText, Stroke, TextEdit, Ui, Vec2};
use jiff::civil::{Date, Time};
use tankard_core::quantity::{AsTyped, Quantity, Units};

use crate::look;

/// A box for plain text.
pub fn text(ui: &mut Ui, name: &str, value: &mut String, width: f32) -> Response {
    let out = ui.add(TextEdit::singleline(value).desired_width(width).align(egui::Align2::LEFT_CENTER));
    out.accessible_name(name)
}

/// A box for several lines of text.
pub fn lines(ui: &mut Ui, name: &str, value: &mut String, width: f32, rows: usize) -> Response {
    ui.add(TextEdit::multiline(value).desired_width(width).desired_rows(rows)).accessible_name(name)
}

/// What is typed in a box and cannot be read yet.
#[derive(Clone, Default)]
struct Draft {
    /// What is in the box.
    text: String,
    /// What the farm held when it was typed; another value means that undo or another box changed it.
    over: String,
    /// Why it cannot be read.
    problem: String,
}

/// A box whose text must be read as something. Gives the new text when it changed and could be read.
fn read_box(
    ui: &mut Ui,
    name: &str,
    current: &str,
    width: f32,
    hint: &str,
    read: impl Fn(&str) -> Result<(), String>,
) -> Option<String> {
    let id = ui.make_persistent_id(("box", name));
    let draft: Option<Draft> = ui.data(|data| data.get_temp(id));
    let draft = draft.filter(|draft| draft.over == current);
    let mut text = draft.as_ref().map_or_else(|| current.to_owned(), |draft| draft.text.clone());
    let mut edit = TextEdit::singleline(&mut text)
        .id(id.with("edit"))
        .desired_width(width)
        .hint_text(hint.to_owned())
        .align(egui::Align2::LEFT_CENTER);
    if draft.is_some() {
        edit = edit.text_color(look::colours(ui).stop);
    }
    let response = ui.add(edit).accessible_name(name);
    if response.gained_focus() {
        select_all(ui, id.with("edit"), &text);
    }
    if let Some(draft) = &draft {
        ui.painter().rect_stroke(response.rect, 4, Stroke::new(1.5, look::colours(ui).stop), egui::StrokeKind::Inside);
        if response.has_focus() || response.hovered() {
            egui::Tooltip::always_open(ui.ctx().clone(), ui.layer_id(), id.with("why"), response.rect).gap(2.0).show(
                |ui| {
                    ui.set_max_width(360.0);
                    ui.label(RichText::new(&draft.problem).color(look::colours(ui).stop));
                },
            );
        }
    }
    if response.has_focus() && ui.input(|input| input.key_pressed(egui::Key::Escape)) {
        ui.data_mut(|data| data.remove::<Draft>(id));
        return None;
    }
    if !response.changed() {
        return None;
    }
    match read(&text) {
        Ok(()) => {
            ui.data_mut(|data| data.remove::<Draft>(id));
            (text != current).then_some(text)
        }
        Err(problem) => {
            ui.data_mut(|data| data.insert_temp(id, Draft { text, over: current.to_owned(), problem }));
            None
        }
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
    let read = |text: &str| Q::parse(text).map(|_| ()).map_err(|error| error.to_string());
    if let Some(text) = read_box(ui, name, value.text(), width, Q::EXAMPLE, read)
        && let Ok(typed) = AsTyped::parse(&text)
    {
        *value = typed;
    }
}

/// A box for a quantity that may be left empty.
pub fn quantity_or_none<Q: Quantity>(ui: &mut Ui, name: &str, value: &mut Option<AsTyped<Q>>, width: f32) {
    quantity_hinted(ui, name, value, width, &format!("e.g. {}", Q::EXAMPLE));
}

/// The same with a hint of what it means to leave it empty.
pub fn quantity_hinted<Q: Quantity>(ui: &mut Ui, name: &str, value: &mut Option<AsTyped<Q>>, width: f32, hint: &str) {
    let read = |text: &str| {
        if text.trim().is_empty() { Ok(()) } else { Q::parse(text).map(|_| ()).map_err(|error| error.to_string()) }
    };
    let current = value.as_ref().map(|typed| typed.text().to_owned()).unwrap_or_default();
    if let Some(text) = read_box(ui, name, &current, width, hint, read) {
        *value = AsTyped::parse(&text).ok();
    }
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

fn same_reading(shown: &str, typed: &str) -> bool {
    let bare = |text: &str| text.chars().filter(|c| !c.is_whitespace() && *c != ',').collect::<String>().to_lowercase();
    bare(shown) == bare(typed)
}

/// A box for a day that must be there, written 2031-06-12.
pub fn date(ui: &mut Ui, name: &str, value: &mut Date, width: f32) {
    if let Some(text) = read_box(ui, name, &value.to_string(), width, "2031-06-12", |text| read_date(text).map(|_| ()))
        && let Ok(read) = read_date(&text)
    {
        *value = read;
    }
}

/// A box for a day that may be left empty.
pub fn date_or_none(ui: &mut Ui, name: &str, value: &mut Option<Date>, width: f32) {
    let current = value.map(|date| date.to_string()).unwrap_or_default();
    let read = |text: &str| if text.trim().is_empty() { Ok(()) } else { read_date(text).map(|_| ()) };
    if let Some(text) = read_box(ui, name, &current, width, "e.g. 2031-06-12", read) {
        *value = read_date(&text).ok();
    }
}

fn read_date(text: &str) -> Result<Date, String> {
    text.trim().parse().map_err(|_| format!("\"{}\" is not a day; write it like 2031-06-12", text.trim()))
}

/// A box for a time of day that may be left empty.
pub fn time_or_none(ui: &mut Ui, name: &str, value: &mut Option<Time>, width: f32) {
    let current = value.map(|time| time.strftime("%H:%M").to_string()).unwrap_or_default();
    let read = |text: &str| if text.trim().is_empty() { Ok(()) } else { read_time(text).map(|_| ()) };
    if let Some(text) = read_box(ui, name, &current, width, "e.g. 05:40", read) {
        *value = read_time(&text).ok();
    }
}

fn read_time(text: &str) -> Result<Time, String> {
    let problem = || format!("\"{}\" is not a time of day; write it like 05:40", text.trim());
    let (hour, minute) = text.trim().split_once(':').ok_or_else(problem)?;
    let hour = hour.parse().map_err(|_| problem())?;
    let minute = minute.parse().map_err(|_| problem())?;
    Time::new(hour, minute, 0, 0).map_err(|_| problem())
}

/// A box for a whole number.
pub fn count(ui: &mut Ui, name: &str, value: &mut u32, width: f32) {
    let read = |text: &str| {
        text.trim()
            .parse::<u32>()
            .map(|_| ())
            .map_err(|_| format!("\"{}\" is not a whole number; write it like 30", text.trim()))
    };
    if let Some(text) = read_box(ui, name, &value.to_string(), width, "30", read)
        && let Ok(read) = text.trim().parse()
    {
        *value = read;
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
    // In a slot of its own, since a long text would widen the box.
    let response = ui
        .allocate_ui_with_layout(slot, Layout::left_to_right(Align::Center), |ui| {
            ComboBox::from_id_salt(("choice", name)).width(width).truncate().selected_text(shown.clone()).show_ui(
                ui,
                |ui| {
                    for each in all {
                        ui.selectable_value(value, each.clone(), say(each));
                    }
                },
            )
        })
        .inner;
    response.response.accessible_name(format!("{name}: {shown}"));
}

/// A row of a form: a label, then what stands beside it.
pub fn row(ui: &mut Ui, label: &str, add: impl FnOnce(&mut Ui)) {
    ui.horizontal(|ui| {
        ui.set_min_height(look::ROW);
        ui.allocate_ui_with_layout(Vec2::new(look::LABEL, look::ROW), Layout::left_to_right(Align::Center), |ui| {
            ui.set_min_width(look::LABEL);
            ui.label(look::soft(ui, label));
        });
        add(ui);
    });
}

/// A part that can be acted on, as text in brass.
pub fn act(ui: &mut Ui, text: &str) -> Response {
    let label = look::act(ui, text);
    ui.add(egui::Button::new(label).frame(false))
}

/// A box to find things by, with its name as the hint.
pub fn find(ui: &mut Ui, name: &str, value: &mut String, width: f32) -> Response {
    ui.add(TextEdit::singleline(value).desired_width(width).hint_text(format!("{}…", name.to_lowercase())))
        .accessible_name(name)
}

/// A box that looks like plain text until it is used; for rows that are edited in the row.
pub fn plain(ui: &mut Ui, name: &str, value: &mut String, width: f32, with_weight: bool) -> Response {
    let id = ui.make_persistent_id(("plain", name));
    let in_use = ui.memory(|memory| memory.has_focus(id));
    let mut edit = TextEdit::singleline(value).id(id).font(look::body(with_weight)).desired_width(width);
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
pub fn text_or_empty(ui: &mut Ui, name: &str, value: &mut String, width: f32, hint: &str) -> Response {
    ui.add(TextEdit::singleline(value).desired_width(width).hint_text(hint.to_owned()).align(egui::Align2::LEFT_CENTER))
        .accessible_name(name)
}

/// A box for a sentence: a long one wraps, so that none of it is hidden, and Enter does not break it.
pub fn sentence(ui: &mut Ui, name: &str, value: &mut String, width: f32, hint: &str) -> Response {
    let edit = TextEdit::multiline(value).desired_width(width).desired_rows(1).hint_text(hint.to_owned());
    let response = ui.add(edit.return_key(None)).accessible_name(name);
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
        let text = look::soft(ui, format!("= {}", shown.join(" to ")));
        ui.add(egui::Label::new(text).truncate());
    }
}
