//! Records on paper: the record book of what the list shows, and the sheet on an application for workers.

use std::path::{Path, PathBuf};

use tankard_core::finding::Level;
use tankard_core::t;
use tankard_file::store::{self, Report};
use tankard_paper::{book, worker_protection};

use super::export::shown;
use crate::app::{Desk, Failed, Going, Task};
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
    let (snapshot, asked, today) = (desk.document.snapshot(), desk.moment(), desk.now().date());
    let (path, count) = (with_ending(path), ids.len());
    let to = path.clone();
    desk.start(
        Task::writing(&path, t!("season-log-the-record-book-was-not-saved"))
            .counting(t!("season-log-record-laid-out"), t!("season-log-records-laid-out")),
        move |going| {
            let farm = snapshot.into_farm();
            let pdf = book::pdf_told(&farm, &ids, options, today, &|done, of| going.tell(done, of));
            put(&to, &pdf.map_err(Failed::of)?, going)
        },
        move |desk, ()| {
            let since = desk.since(asked);
            desk.tell(t!(
                "season-log-the-record-book-of-is-saved",
                count = count,
                path = path.display(),
                since = since
            ));
        },
    );
}

/// Saves the sheet of the open record for workers, and says what is missing on it.
pub fn save_workers(desk: &mut Desk, path: &Path) {
    let Some(id) = desk.season_log.chosen.clone() else { return };
    let (snapshot, asked, today) = (desk.document.snapshot(), desk.moment(), desk.now().date());
    let path = with_ending(path);
    let to = path.clone();
    desk.start(
        Task::writing(&path, t!("season-log-the-sheet-for-workers-was-not")),
        move |going| {
            let made = worker_protection::pdf(&snapshot.into_farm(), &[id], today);
            let (pdf, findings) = made.map_err(Failed::of)?;
            put(&to, &pdf, going)?;
            Ok(findings)
        },
        move |desk, findings| {
            let missing: Vec<&str> = findings
                .iter()
                .filter(|finding| finding.level > Level::Note)
                .map(|finding| finding.text.as_str())
                .collect();
            let (path, since) = (path.display(), desk.since(asked));
            if missing.is_empty() {
                desk.tell(t!("season-log-the-sheet-for-workers-is-saved", path = path, since = since));
            } else {
                let missing = missing.join("; ");
                desk.tell_problem(t!(
                    "season-log-with-blanks-to-fill-in",
                    path = path,
                    since = since,
                    missing = missing
                ));
            }
        },
    );
}

fn with_ending(path: &Path) -> PathBuf {
    if path.extension().is_some() { path.to_owned() } else { path.with_extension("pdf") }
}

fn put(path: &Path, pdf: &[u8], going: &Going) -> Result<(), Failed> {
    store::put_report_told(path, pdf, Report::Pdf, &|_, _| going.goes_on()).map_err(Failed::of)
}
