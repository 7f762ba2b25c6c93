//! The table of records. Only the rows in sight are drawn, so that many years of records stay quick.

use egui::{Align, Color32, Id, Label, Layout, Rect, RichText, Sense, Stroke, Ui, Vec2};
use egui_extras::{Column, TableBuilder, TableRow};
use jiff::civil::Date;
use tankard_core::farm::{Farm, Record};
use tankard_core::language::days::short_date;
use tankard_core::season::profile::Open;
use tankard_core::season::review::words::month;
use tankard_core::t;

use super::listed::Listed;
use super::seal;
use crate::keys::rows;
use crate::look;
use crate::parts::{figures, mark};

/// Below this width only the most needed columns are shown.
const NARROW: f32 = 560.0;
/// From this width on there is room for all.
const WIDE: f32 = 1000.0;

/// Room between a row's edge and its first word.
const INDENT: f32 = 8.0;

/// Where the list stands.
#[derive(Debug, Default)]
pub(super) struct State {
    /// The record to scroll to.
    wanted: Option<String>,
    /// Whether it is to have the keyboard, too.
    with_keys: bool,
}

impl State {
    /// Scrolls to a record.
    pub(super) fn bring(&mut self, id: &str) {
        self.wanted = Some(id.to_owned());
    }

    /// Scrolls to a record and gives its row the keyboard.
    pub(super) fn bring_with_keys(&mut self, id: &str) {
        self.bring(id);
        self.with_keys = true;
    }
}

/// A column of the table.
#[derive(Clone, Copy, PartialEq, Eq)]
enum What {
    Date,
    Pass,
    Fields,
    Area,
    Products,
    Operator,
    Open,
    /// How many points are open, where there is no room to name them.
    Count,
}

impl What {
    fn heading(self) -> &'static str {
        match self {
            Self::Date => t!("season-log-head-date"),
            Self::Pass => t!("season-log-head-pass"),
            Self::Fields => t!("season-log-head-fields"),
            Self::Area => t!("season-log-head-area"),
            Self::Products => t!("season-log-head-products"),
            Self::Operator => t!("season-log-head-operator"),
            Self::Open => t!("season-log-still-open-9ef"),
            Self::Count => t!("season-log-head-open"),
        }
    }

    /// Those there is room for, with their widths.
    fn shown(width: f32, all_years: bool) -> Vec<(Self, Column)> {
        let date = if all_years { 104.0 } else { 72.0 };
        // The first column is not clipped, since the row's face and its click reach from it over all the others.
        let mut columns = vec![(Self::Date, Column::initial(date).range(date..=date))];
        let flexible = |least: f32| Column::remainder().at_least(least).clip(true);
        if width < NARROW {
            columns.extend([
                (Self::Pass, flexible(90.0)),
                (Self::Area, Column::exact(66.0)),
                (Self::Count, Column::exact(36.0)),
            ]);
        } else if width < WIDE {
            columns.extend([
                (Self::Pass, flexible(110.0)),
                (Self::Fields, flexible(100.0)),
                (Self::Area, Column::exact(72.0)),
                (Self::Products, flexible(110.0)),
                (Self::Open, Column::exact(104.0)),
            ]);
        } else {
            columns.extend([
                (Self::Pass, flexible(150.0)),
                (Self::Fields, flexible(150.0)),
                (Self::Area, Column::exact(80.0)),
                (Self::Products, Column::initial(width * 0.32).range(width * 0.32..=width * 0.32).clip(true)),
                (Self::Operator, Column::exact(90.0)),
                (Self::Open, Column::exact(190.0)),
            ]);
        }
        columns
    }
}

/// Shows the table; gives the id of the record that was clicked or reached with the arrow keys.
pub(super) fn show(
    state: &mut State,
    seals: &mut seal::State,
    farm: &Farm,
    listed: &Listed,
    today: Date,
    chosen: Option<&str>,
    ui: &mut Ui,
) -> Option<String> {
    let width = ui.available_width();
    let columns = What::shown(width, listed.year.is_none());
    let right = ui.max_rect().right();
    let at =
        |id: &str| listed.rows.iter().position(|row| farm.records.get_index(*row).is_some_and(|(key, _)| key == id));
    let mut clicked = None;
    ui.spacing_mut().item_spacing = Vec2::new(12.0, 0.0);
    // A number of columns is part of the name: another set must not inherit the widths.
    let mut table = TableBuilder::new(ui)
        .id_salt(("records", columns.len()))
        .sense(Sense::hover())
        .auto_shrink(false)
        .cell_layout(Layout::left_to_right(Align::Center));
    for (_, column) in &columns {
        table = table.column(*column);
    }
    if let Some(row) = state.wanted.as_deref().and_then(at) {
        table = table.scroll_to_row(row, None);
    }
    let whats: Vec<What> = columns.iter().map(|(what, _)| *what).collect();
    table
        .header(look::ROW, |mut row| {
            for what in &whats {
                row.col(|ui| {
                    let text = look::soft(ui, what.heading());
                    if *what == What::Date {
                        ui.add_space(INDENT);
                    }
                    if *what == What::Area {
                        ui.with_layout(Layout::right_to_left(Align::Center), |ui| ui.label(text));
                    } else {
                        ui.label(text);
                    }
                });
            }
        })
        .body(|body| {
            body.rows(look::ROW, listed.rows.len(), |mut row| {
                let index = row.index();
                let Some(at) = listed.rows.get(index) else { return };
                let Some((id, record)) = farm.records.get_index(*at) else { return };
                let open = seals.with_seal(listed.revision(), id, record, listed.open(farm, *at, record, today));
                let is_chosen = chosen == Some(id.as_str());
                let response =
                    one(&mut row, farm, id, (record, &open), is_chosen, right, &whats, listed.year.is_none());
                if state.wanted.as_ref() == Some(id) {
                    if state.with_keys {
                        response.request_focus();
                    }
                    state.wanted = None;
                    state.with_keys = false;
                }
                if response.clicked() {
                    // The arrow keys go on from here.
                    response.request_focus();
                    clicked = Some(id.clone());
                }
                if response.has_focus()
                    && let Some(next) = moved(&response, index)
                    && let Some((id, _)) = listed.rows.get(next).and_then(|at| farm.records.get_index(*at))
                {
                    state.wanted = Some(id.clone());
                    state.with_keys = true;
                    clicked = Some(id.clone());
                }
            });
        });
    clicked
}

/// Which row the arrow keys lead to.
fn moved(response: &egui::Response, index: usize) -> Option<usize> {
    let filter = egui::EventFilter { vertical_arrows: true, ..egui::EventFilter::default() };
    response.ctx.memory_mut(|memory| memory.set_focus_lock_filter(response.id, filter));
    // Taken away, so that the next row, which has the keyboard from now on, does not see them in the same frame.
    if rows::NEXT.taken(&response.ctx) {
        Some(index + 1)
    } else if rows::BEFORE.taken(&response.ctx) {
        index.checked_sub(1)
    } else {
        None
    }
}

#[allow(clippy::too_many_arguments)] // One row's parts.
fn one(
    row: &mut TableRow<'_, '_>,
    farm: &Farm,
    id: &str,
    (record, open): (&Record, &Open),
    chosen: bool,
    right: f32,
    whats: &[What],
    with_year: bool,
) -> egui::Response {
    let mut response = None;
    for what in whats {
        row.col(|ui| match what {
            What::Date => {
                response = Some(face(ui, id, record, chosen, right, &open.names));
                ui.add_space(INDENT);
                let (day, month, year) = (record.date.day(), month(record.date.month()), record.date.year());
                ui.label(if with_year { format!("{day} {month} {year}") } else { format!("{day} {month}") });
            }
            What::Pass => cell(ui, RichText::new(&record.name)),
            What::Fields => {
                let names: Vec<&str> = record.fields.values().map(|field| field.name.as_str()).collect();
                cell(ui, RichText::new(names.join(", ")));
            }
            What::Area => {
                ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
                    cell(ui, RichText::new(figures::area(record.area(), farm.units)));
                });
            }
            What::Products => {
                let names: Vec<&str> = record.lines.iter().map(|line| short(&line.name)).collect();
                cell(ui, RichText::new(names.join(", ")));
            }
            What::Operator => cell(ui, RichText::new(&record.operator)),
            What::Open | What::Count => {
                let Some(level) = open.level else {
                    cell(ui, look::soft(ui, "–"));
                    return;
                };
                ui.spacing_mut().item_spacing.x = 2.0;
                mark::show(ui, level);
                let words = if *what == What::Open { open.names.join(", ") } else { open.names.len().to_string() };
                cell(ui, RichText::new(words).color(look::of_level(look::colours(ui), level)));
            }
        });
    }
    response.unwrap_or_else(|| row.response())
}

fn cell(ui: &mut Ui, text: RichText) {
    ui.add(Label::new(text).truncate());
}

/// A product's name without what stands in brackets.
fn short(name: &str) -> &str {
    name.split_once(" (").map_or(name, |(before, _)| before)
}

/// The face of a row and what is clicked, over its whole width.
fn face(ui: &Ui, id: &str, record: &Record, chosen: bool, right: f32, open: &[String]) -> egui::Response {
    let colours = look::colours(ui);
    let rect = Rect::from_min_max(ui.max_rect().min, egui::pos2(right, ui.max_rect().bottom()));
    let response = ui.interact(rect, Id::unique(("record", id)), Sense::click());
    let fill = if chosen {
        colours.selected
    } else if response.contains_pointer() {
        colours.sheet
    } else {
        Color32::TRANSPARENT
    };
    ui.painter().rect_filled(rect, 0, fill);
    ui.painter().hline(rect.x_range(), rect.top(), Stroke::new(1.0, colours.hairline));
    ui.painter().hline(rect.x_range(), rect.bottom(), Stroke::new(1.0, colours.hairline));
    if chosen {
        ui.painter().vline(rect.left() + 1.0, rect.y_range(), Stroke::new(3.0, colours.water));
    }
    response.widget_info(|| {
        let words = if open.is_empty() {
            format!("{}, {}", short_date(record.date), record.name)
        } else {
            t!("season-log-still-open-open", date = record.date, name = record.name, open = open.join(", "))
        };
        egui::WidgetInfo::selected(egui::Role::ListBoxOption, true, chosen, words)
    });
    response.on_hover_cursor(egui::CursorIcon::PointingHand)
}
