//! Records on paper: the record book of what the list shows, and the sheet on an application for workers.

use std::path::Path;

use tankard_core::finding::Level;
use tankard_core::season::review::words::count;
use tankard_file::store::{self, Report};
use tankard_paper::{book, worker_protection};

use super::export::shown;
use crate::app::Desk;
use crate::files::Purpose;

/// Saves the record book of what the list shows.
pub fn save_book(desk: &mut Desk, purpose: Purpose, path: &Path) {
    let (mut ids, _) = shown(desk);
    // A book is read from the front.
    ids.reverse();
    let options = book::Options {
        by: if purpose == Purpose::SaveBookByField { book::By::Field } else { book::By::Date },
        one_a_page: purpose == Purpose::SaveRecordPages,
    };
    let made = book::pdf(desk.document.farm(), &ids, options, desk.now().date()).map_err(|error| error.to_string());
    match made.and_then(|pdf| put(path, &pdf)) {
        Ok(()) => {
            let records = count(ids.len(), "record", "records");
            desk.tell(format!("The record book of {records} is saved as {}", path.display()));
        }
        Err(error) => desk.tell_problem(format!("The record book was not saved: {error}")),
    }
}

/// Saves the sheet of the open record for workers, and says what is missing on it.
pub fn save_workers(desk: &mut Desk, path: &Path) {
    let Some(id) = desk.season_log.chosen.clone() else { return };
    let made = worker_protection::pdf(desk.document.farm(), &[id], desk.now().date());
    let made = made.map_err(|error| error.to_string());
    match made.and_then(|(pdf, findings)| put(path, &pdf).map(|()| findings)) {
        Ok(findings) => {
            let missing: Vec<&str> = findings
                .iter()
                .filter(|finding| finding.level > Level::Note)
                .map(|finding| finding.text.as_str())
                .collect();
            let mut words = format!("The sheet for workers is saved as {}", path.display());
            if missing.is_empty() {
                desk.tell(words);
            } else {
                words = format!("{words}, with blanks to fill in: {}", missing.join("; "));
                desk.tell_problem(words);
            }
        }
        Err(error) => desk.tell_problem(format!("The sheet for workers was not saved: {error}")),
    }
}

fn put(path: &Path, pdf: &[u8]) -> Result<(), String> {
    let path = if path.extension().is_some() { path.to_owned() } else { path.with_extension("pdf") };
    store::put_report(&path, pdf, Report::Pdf).map_err(|error| error.to_string())
}
