//! Resistance groups by field and season. A group that came again too soon has a triangle in its cell, and a sentence below.

use std::collections::BTreeMap;

use egui::{Align2, Pos2, Rect, ScrollArea, Sense, Stroke, Ui, Vec2};
use tankard_core::farm::ProductKind;
use tankard_core::finding::Level;
use tankard_core::season::review::words::again;
use tankard_core::season::review::{FieldGroups, GroupRow, remarks};
use tankard_core::t;
use tankard_core::words::capital;

use super::kept::Kept;
use super::table::{self, Column};
use super::{Shown, notes, sheet};
use crate::look;
use crate::parts::{boxes, mark};

/// Least and most width of the names of fields.
const FIELD: (f32, f32) = (150.0, 420.0);
/// Least and most width of a season.
const SEASON: (f32, f32) = (62.0, 120.0);
/// Height of a line of a cell.
const LINE: f32 = 16.0;

/// What is chosen on the page.
#[derive(Debug, Default)]
pub(super) struct State {
    /// The kind of product whose groups are shown.
    kind: Option<ProductKind>,
}

pub(super) fn show(ui: &mut Ui, state: &mut State, kept: &Kept, shown: &Shown<'_>) {
    let (resistance, by_name) = shown.pages.resistance();
    let fields: Vec<&FieldGroups> = by_name.iter().filter_map(|at| resistance.fields.get(*at)).collect();
    let has = |kind: &ProductKind| fields.iter().flat_map(|field| &field.rows).any(|row| row.kind == *kind);
    let kinds: Vec<ProductKind> = ProductKind::ALL.into_iter().filter(has).collect();
    let groupless = remarks::resistance(resistance);
    let Some(first) = kinds.first() else {
        ui.label(remarks::no_group());
        notes(ui, groupless);
        return;
    };
    let mut kind = state.kind.filter(|kind| kinds.contains(kind)).unwrap_or(*first);
    if kinds.len() > 1 {
        boxes::choice(ui, t!("season-log-kind-of-product-73b"), &mut kind, &kinds, |kind| capital(kind.name()), 150.0);
        state.kind = Some(kind);
    }
    sheet(ui, &t!("season-log-groups-by-field-and-season", kind = capital(kind.name())), |ui| {
        notes(ui, [remarks::groups(t!("season-log-triangle"))]);
        matrix(ui, &fields, kind, &shown.pages.passes().years.iter().map(|year| year.year).collect::<Vec<_>>());
        notes(ui, groupless);
    });
    sheet(ui, t!("season-log-where-a-group-came-again"), |ui| repeats(ui, &fields, kind, kept.seasons));
}

/// The rows of a field that are of a kind.
fn rows(field: &FieldGroups, kind: ProductKind) -> impl Iterator<Item = &GroupRow> {
    field.rows.iter().filter(move |row| row.kind == kind)
}

/// What a field had in a season: group, how often, whether it came again.
fn cell(field: &FieldGroups, kind: ProductKind, year: i16) -> Vec<(String, bool)> {
    rows(field, kind)
        .filter_map(|row| {
            let (_, times) = row.years.iter().find(|(of, _)| *of == year)?;
            let words = if *times > 1 { format!("{} ×{times}", row.group) } else { row.group.clone() };
            Some((words, row.came_again(year)))
        })
        .collect()
}

fn matrix(ui: &mut Ui, all: &[&FieldGroups], kind: ProductKind, years: &[i16]) {
    let fields: Vec<_> = all.iter().filter(|field| rows(field, kind).next().is_some()).collect();
    ScrollArea::horizontal().id_salt("groups").show(ui, |ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        let colours = look::colours(ui);
        let room = (ui.available_width() - FIELD.0) / years.len().max(1) as f32;
        let season = room.clamp(SEASON.0, SEASON.1);
        // What the seasons leave is for the names.
        let free = ui.available_width() - season * years.len() as f32;
        let longest = fields.iter().map(|field| look::width(ui, &field.name)).fold(0.0, f32::max) + 16.0;
        let names = longest.min(FIELD.1).min(free).max(FIELD.0);
        let wide = names + season * years.len() as f32;
        let left = |at: usize| names + season * at as f32;
        let (head, _) = ui.allocate_exact_size(Vec2::new(wide, table::ROW), Sense::hover());
        for (at, year) in years.iter().enumerate() {
            let place = head.left_center() + Vec2::X * (left(at) + 14.0);
            ui.painter().text(place, Align2::LEFT_CENTER, year.to_string(), look::gauge_font(), colours.soft);
        }
        ui.painter().hline(head.x_range(), head.bottom() - 1.0, Stroke::new(1.0, colours.hairline));
        for field in fields {
            let mut counts: BTreeMap<i16, usize> = BTreeMap::new();
            for (year, _) in rows(field, kind).flat_map(|row| &row.years) {
                *counts.entry(*year).or_insert(0) += 1;
            }
            let lines = counts.values().copied().max().unwrap_or(1);
            let size = Vec2::new(wide, LINE * lines as f32 + 6.0);
            if !ui.is_rect_visible(Rect::from_min_size(ui.cursor().min, size)) {
                ui.allocate_space(size);
                continue;
            }
            let (place, response) = ui.allocate_exact_size(size, Sense::hover());
            let painter = ui.painter();
            let mut job = egui::text::LayoutJob::simple_singleline(field.name.clone(), look::body(false), colours.ink);
            job.wrap = egui::text::TextWrapping::truncate_at_width(names - 10.0);
            painter.galley(place.min + Vec2::Y * 2.0, painter.layout_job(job), colours.ink);
            let mut said = Vec::new();
            for (at, year) in years.iter().enumerate() {
                let groups = cell(field, kind, *year);
                for (line, (words, again)) in groups.iter().enumerate() {
                    let at = Pos2::new(place.left() + left(at) + 14.0, place.top() + 3.0 + LINE * (line as f32 + 0.5));
                    let font = if *again { look::gauge_number() } else { look::gauge_font() };
                    painter.text(at, Align2::LEFT_CENTER, words, font, colours.ink);
                    if *again {
                        mark::paint(painter, at - Vec2::new(8.0, 0.0), Level::Check, colours.check);
                    }
                }
                if !groups.is_empty() {
                    let words: Vec<String> = groups
                        .into_iter()
                        .map(|(words, again)| if again { t!("season-log-came-again", words = words) } else { words })
                        .collect();
                    said.push(format!("{year} {}", words.join(", ")));
                }
            }
            painter.hline(place.x_range(), place.bottom() - 0.5, Stroke::new(0.5, colours.hairline));
            response.widget_info(|| {
                egui::WidgetInfo::labeled(egui::Role::Label, true, format!("{}: {}", field.name, said.join("; ")))
            });
        }
    });
}

fn repeats(ui: &mut Ui, fields: &[&FieldGroups], kind: ProductKind, seasons: (i16, i16)) {
    let all: Vec<_> = fields
        .iter()
        .flat_map(|field| rows(field, kind).map(move |row| (field, row)))
        .flat_map(|(field, row)| row.repeats.iter().map(move |repeat| (field, row, repeat)))
        .collect();
    if all.is_empty() {
        let when = if seasons.0 == seasons.1 {
            seasons.0.to_string()
        } else {
            t!("season-log-to", from = seasons.0, to = seasons.1)
        };
        ui.label(t!("season-log-no-group-came-again-too-soon", when = when));
        return;
    }
    let columns = [
        Column::Words(t!("season-log-head-field"), 1.0),
        Column::Words(t!("season-log-head-group"), 1.0),
        Column::Words(t!("season-log-it-came"), 2.0),
        Column::Figure(t!("season-log-asked-for-at-most"), 110.0),
        Column::Words(t!("season-log-who-says-so"), 2.0),
    ];
    table::show(ui, t!("season-log-where-a-group-came-again"), &columns, all.len(), false, |at| {
        all.get(at).map_or_else(Vec::new, |(field, row, repeat)| {
            vec![
                field.name.clone(),
                row.group.clone(),
                again(repeat),
                repeat.most.to_string(),
                repeat.basis.to_string(),
            ]
        })
    });
    notes(ui, [remarks::again().to_owned()]);
}

#[cfg(test)]
mod tests {
    use super::cell;
    use tankard_core::farm::ProductKind;
    use tankard_core::finding::Basis;
    use tankard_core::season::review::{Again, FieldGroups, GroupRow, Repeat};

    #[test]
    fn a_cell_holds_the_groups_of_its_season_and_those_that_came_again() {
        let again = Again::InYears { from: 2031, to: 2032 };
        let nine = GroupRow {
            kind: ProductKind::Herbicide,
            group: "9".to_owned(),
            years: vec![(2031, 2), (2032, 1), (2034, 1)],
            repeats: vec![Repeat { again, most: 1, basis: Basis::Practice }],
        };
        let other = GroupRow { kind: ProductKind::Fungicide, group: "11".to_owned(), ..nine.clone() };
        let field = FieldGroups { field: "f".to_owned(), name: "F".to_owned(), rows: vec![nine.clone(), other] };
        assert_eq!(cell(&field, ProductKind::Herbicide, 2031), [("9 ×2".to_owned(), true)]);
        assert_eq!(cell(&field, ProductKind::Herbicide, 2034), [("9".to_owned(), false)]);
        assert!(cell(&field, ProductKind::Herbicide, 2033).is_empty());
        assert!(nine.came_again(2032) && !nine.came_again(2033));
    }
}
