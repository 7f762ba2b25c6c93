//! Tables of the review. A row is one part for a screen reader: each figure with what its column says. Only the rows in sight are
//! drawn, so that a long table costs no more than a short one.

use egui::text::{LayoutJob, TextWrapping};
use egui::{Color32, FontId, Pos2, Rect, Response, ScrollArea, Sense, Stroke, Ui, Vec2};
use tankard_core::t;

use crate::look;
use crate::parts::figures;

/// Height of a row.
pub(super) const ROW: f32 = 22.0;
/// Room between columns.
const APART: f32 = 12.0;
/// Least and most width of a column of words that has one part: figures far from their words are hard to follow.
const WORDS: (f32, f32) = (130.0, 300.0);

/// A column.
#[derive(Clone, Copy, Debug)]
pub(super) enum Column {
    /// Words, with their part of the room there is.
    Words(&'static str, f32),
    /// Figures, set to the right, with their width.
    Figure(&'static str, f32),
}

impl Column {
    const fn heading(self) -> &'static str {
        match self {
            Self::Words(heading, _) | Self::Figure(heading, _) => heading,
        }
    }
}

/// The columns with where each stands.
struct Places(Vec<(Column, f32, f32)>);

impl Places {
    fn of(columns: &[Column], room: f32) -> Self {
        let figures: f32 =
            columns.iter().map(|column| if let Column::Figure(_, wide) = column { *wide } else { 0.0 }).sum();
        let parts: f32 =
            columns.iter().map(|column| if let Column::Words(_, part) = column { *part } else { 0.0 }).sum();
        let rest = room - figures - APART * columns.len().saturating_sub(1) as f32;
        let mut left = 0.0;
        let places = columns.iter().map(|column| {
            let wide = match column {
                Column::Words(_, part) => (rest * part / parts).min(WORDS.1 * part).max(WORDS.0 * part.min(1.0)),
                Column::Figure(_, wide) => *wide,
            };
            let from = left;
            left += wide + APART;
            (*column, from, wide)
        });
        Self(places.collect())
    }

    fn wide(&self) -> f32 {
        self.0.last().map_or(0.0, |(_, from, wide)| from + wide)
    }
}

/// Shows a table of so many rows. `row` gives the cells of one; where rows `lead` to something, gives the one that was clicked.
pub(super) fn show(
    ui: &mut Ui,
    name: &str,
    columns: &[Column],
    rows: usize,
    lead: bool,
    row: impl Fn(usize) -> Vec<String>,
) -> Option<usize> {
    let mut clicked = None;
    ScrollArea::horizontal().id_salt(("table", name)).show(ui, |ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        let places = Places::of(columns, ui.available_width() - 2.0);
        let colours = look::colours(ui);
        let (head, response) = ui.allocate_exact_size(Vec2::new(places.wide(), ROW), Sense::hover());
        for (column, from, wide) in &places.0 {
            let place = Rect::from_min_size(head.min + Vec2::X * *from, Vec2::new(*wide, ROW));
            cell(ui, place, column.heading(), matches!(column, Column::Figure(..)), look::gauge_font(), colours.soft);
        }
        ui.painter().hline(head.x_range(), head.bottom() - 1.0, Stroke::new(1.0, colours.hairline));
        let headings: Vec<&str> =
            columns.iter().map(|column| column.heading()).filter(|text| !text.is_empty()).collect();
        response.widget_info(|| {
            let words =
                t!("season-log-name-count-of-headings", name = name, count = rows, headings = headings.join(", "));
            egui::WidgetInfo::labeled(egui::Role::Label, true, words)
        });
        for at in 0..rows {
            let sense = if lead { Sense::click() } else { Sense::hover() };
            // The rows next to those in sight are there too, so that the keyboard reaches them.
            let here = Rect::from_min_size(ui.cursor().min, Vec2::new(places.wide(), ROW));
            if !ui.is_rect_visible(here.expand2(Vec2::new(0.0, 3.0 * ROW))) {
                ui.allocate_space(here.size());
                continue;
            }
            let (place, response) = ui.push_id(at, |ui| ui.allocate_exact_size(here.size(), sense)).inner;
            if one(ui, columns, &places, place, &row(at), lead, response) {
                clicked = Some(at);
            }
        }
    });
    clicked
}

fn one(
    ui: &Ui,
    columns: &[Column],
    places: &Places,
    place: Rect,
    cells: &[String],
    lead: bool,
    response: Response,
) -> bool {
    let colours = look::colours(ui);
    if lead && (response.hovered() || response.has_focus()) {
        ui.painter().rect_filled(place, 0, colours.selected);
    }
    if response.gained_focus() {
        response.scroll_to_me(None);
    }
    let mut cut = Vec::new();
    for (at, ((column, from, wide), text)) in places.0.iter().zip(cells).enumerate() {
        let place = Rect::from_min_size(place.min + Vec2::X * *from, Vec2::new(*wide, ROW));
        let colour = if lead && at == 0 { colours.brass } else { colours.ink };
        let is_figure = matches!(column, Column::Figure(..));
        let shown = if is_figure { &figures::padded(text) } else { text };
        if cell(ui, place, shown, is_figure, look::body(false), colour) {
            cut.push(text.as_str());
        }
    }
    ui.painter().hline(place.x_range(), place.bottom() - 0.5, Stroke::new(0.5, colours.hairline));
    response.widget_info(|| {
        let role = if lead { egui::Role::Button } else { egui::Role::Label };
        egui::WidgetInfo::labeled(role, true, spoken(columns, cells))
    });
    let clicked = response.clicked();
    let response = if lead { response.on_hover_cursor(egui::CursorIcon::PointingHand) } else { response };
    if !cut.is_empty() {
        response.on_hover_text(cut.join("\n"));
    }
    clicked
}

/// A row in words: what the first column says, then each figure with its heading.
fn spoken(columns: &[Column], cells: &[String]) -> String {
    let mut parts = columns.iter().zip(cells).filter(|(_, text)| !text.is_empty());
    let first = parts.next().map_or_else(String::new, |(_, text)| text.clone());
    let rest: Vec<String> =
        parts.map(|(column, text)| format!("{} {text}", column.heading()).trim().to_owned()).collect();
    if rest.is_empty() { first } else { format!("{first}: {}", rest.join(", ")) }
}

/// Puts words into a place; whether they had to be cut.
fn cell(ui: &Ui, place: Rect, text: &str, right: bool, font: FontId, colour: Color32) -> bool {
    let mut job = LayoutJob::simple_singleline(text.to_owned(), font, colour);
    job.wrap = TextWrapping::truncate_at_width(place.width());
    let galley = ui.painter().layout_job(job);
    let left = if right { place.right() - galley.size().x } else { place.left() };
    let cut = galley.elided;
    ui.painter().galley(Pos2::new(left, place.center().y - galley.size().y * 0.5), galley, colour);
    cut
}

#[cfg(test)]
mod tests {
    use super::{Column, Places, spoken};

    #[test]
    fn a_row_is_said_with_the_headings_of_its_figures() {
        let columns = [Column::Words("product", 1.0), Column::Figure("ground", 80.0), Column::Words("", 1.0)];
        let cells = ["Demo".to_owned(), "12 ac".to_owned(), "from the shed".to_owned()];
        assert_eq!(spoken(&columns, &cells), "Demo: ground 12 ac, from the shed");
        assert_eq!(spoken(&columns, &["Demo".to_owned(), String::new(), String::new()]), "Demo");
    }

    #[test]
    fn words_share_what_figures_leave() {
        let columns = [Column::Words("a", 2.0), Column::Words("b", 1.0), Column::Figure("c", 76.0)];
        let places = Places::of(&columns, 700.0);
        let wide: Vec<f32> = places.0.iter().map(|(.., wide)| *wide).collect();
        assert_eq!(wide, [400.0, 200.0, 76.0]);
        assert!((places.wide() - 700.0).abs() < 1e-3);
        // With much room figures stay near their words.
        assert!(Places::of(&columns, 2000.0).wide() < 1100.0);
        // Where there is too little room the table is wider than its place, and scrolls.
        assert!(Places::of(&columns, 200.0).wide() > 200.0);
    }
}
