//! Records to a file, and the acts in the head that lead there and back.

use std::collections::HashSet;
use std::path::Path;
use std::rc::Rc;

use egui::containers::menu::MenuButton;
use egui::{Button, Ui};
use jiff::civil::date;
use tankard_core::farm::Id;
use tankard_core::t;
use tankard_file::store::{self, Report};
use tankard_file::{records_csv, records_json};

use super::listed;
use crate::app::{Desk, Failed, Task};
use crate::files::Purpose;
use crate::look;
use crate::parts::boxes;

/// "Export…" with its two forms, where there is something to export, and "Import…".
pub(super) fn acts(desk: &mut Desk, ui: &mut Ui) {
    if !desk.document.farm().records.is_empty() {
        export(desk, ui);
    }
    if boxes::act(ui, t!("season-log-import")).accessible_name(t!("season-log-import-records")).clicked() {
        let suggested = desk.beside("csv").with_file_name("records.csv");
        desk.ask_file(Purpose::ReadRecords, suggested, ui.ctx());
    }
}

fn export(desk: &mut Desk, ui: &mut Ui) {
    let mut wanted = None;
    let button = Button::new(look::act(ui, t!("season-log-export"))).frame(false);
    let (response, _) = MenuButton::from_button(button).ui(ui, |ui| {
        for (words, purpose) in [
            (t!("season-log-csv-for-a-spreadsheet"), Purpose::SaveRecords),
            (t!("season-log-json-for-a-machine"), Purpose::SaveRecordsJson),
            (t!("season-log-pdf-record-book-by-field"), Purpose::SaveBookByField),
            (t!("season-log-pdf-record-book-by-date"), Purpose::SaveBookByDate),
            (t!("season-log-pdf-each-record-on-a-page"), Purpose::SaveRecordPages),
        ] {
            if ui.button(words).clicked() {
                wanted = Some(purpose);
                ui.close();
            }
        }
    });
    response.accessible_name(t!("season-log-export-what-the-list-shows"));
    if let Some(purpose) = wanted {
        let suggested = match purpose {
            Purpose::SaveRecords => desk.beside("csv"),
            Purpose::SaveRecordsJson => desk.beside("json"),
            _ => desk.beside("pdf").with_file_name("record-book.pdf"),
        };
        desk.ask_file(purpose, suggested, ui.ctx());
    }
}

/// Saves the records that the list shows.
pub fn save(desk: &mut Desk, purpose: Purpose, path: &Path) {
    let (ending, report) =
        if purpose == Purpose::SaveRecordsJson { ("json", Report::Json) } else { ("csv", Report::Csv) };
    let path = if path.extension().is_some() { path.to_owned() } else { path.with_extension(ending) };
    let today = desk.now().date();
    let (shown, year) = shown(desk);
    let (snapshot, asked) = (desk.document.snapshot(), desk.moment());
    let count = shown.len();
    let to = path.clone();
    desk.start(
        Task::writing(&path, t!("season-log-the-records-were-not-saved"))
            .counting(t!("season-log-head-record"), t!("season-log-head-records")),
        move |going| {
            let (farm, tell) = (snapshot.into_farm(), |done, of| going.tell(done, of));
            let shown: HashSet<&str> = shown.iter().map(String::as_str).collect();
            let is_shown = |id: &str| shown.contains(id);
            let text = match report {
                Report::Json => {
                    let period = year.map(|year| (date(year, 1, 1), date(year, 12, 31)));
                    records_json::write_told(&farm, is_shown, period, today, &tell).map_err(Failed::of)?
                }
                _ => records_csv::write_told(&farm, is_shown, &tell).map_err(Failed::of)?,
            };
            store::put_report_told(&to, text.as_bytes(), report, &|_, _| going.goes_on()).map_err(Failed::of)
        },
        move |desk, ()| {
            let since = desk.since(asked);
            desk.tell(t!("season-log-saved-as", count = count, path = path.display(), since = since));
        },
    );
}

/// The records that the list shows, the newest first, and the year that it is narrowed to.
pub(super) fn shown(desk: &mut Desk) -> (Vec<Id>, Option<i16>) {
    let this_year = desk.now().date().year();
    let revision = desk.document.revision();
    let farm = desk.document.farm();
    let state = &mut desk.season_log;
    let listed = listed::fresh(state.listed.take(), farm, revision, &state.filter, state.season, this_year);
    state.listed = Some(Rc::clone(&listed));
    let ids = listed.rows.iter().filter_map(|row| farm.records.get_index(*row)).map(|(id, _)| id.clone());
    (ids.collect(), listed.year)
}
