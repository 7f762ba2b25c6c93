//! The review as PDF. All records chosen are held against their labels for it, so it is made on a thread of its own.

use std::path::PathBuf;

use egui::Ui;
use tankard_core::season::review::Choice;
use tankard_core::t;
use tankard_file::store::{self, Report};

use crate::app::{Desk, Failed, Task};
use crate::files::Purpose;
use crate::parts::boxes;

/// What is to be written.
#[derive(Debug, Default)]
pub(super) struct State {
    /// What the review is of whose file is being asked for.
    asked: Option<Choice>,
}

/// "Review as PDF…".
pub(super) fn name() -> &'static str {
    t!("season-log-review-as-pdf")
}

/// The act of that name; whether it was clicked.
pub(super) fn act(ui: &mut Ui) -> bool {
    boxes::act(ui, name()).clicked()
}

/// Asks where it should be saved.
pub(super) fn ask(desk: &mut Desk, choice: Choice, ui: &Ui) {
    desk.season_log.review.paper.asked = Some(choice);
    let path = desk.beside("pdf").with_file_name("season-review.pdf");
    desk.ask_file(Purpose::SaveReview, path, ui.ctx());
}

/// Begins to write the review that was asked for where the user said.
pub(super) fn save(desk: &mut Desk, path: PathBuf) {
    let Some(choice) = desk.season_log.review.paper.asked.take() else {
        desk.tell_problem(t!("season-log-the-review-was-not-written-it").to_owned());
        return;
    };
    let (snapshot, asked, today) = (desk.document.snapshot(), desk.moment(), desk.now().date());
    let to = path.clone();
    desk.start(
        Task::writing(&path, t!("season-log-the-review-was-not-written"))
            .counting(t!("season-log-head-record"), t!("season-log-head-records")),
        move |going| {
            let farm = snapshot.into_farm();
            let pdf = tankard_paper::review::pdf_told(&farm, &choice, today, &|done, of| going.tell(done, of));
            let pdf = pdf.map_err(Failed::of)?;
            store::put_report_told(&to, &pdf, Report::Pdf, &|_, _| going.goes_on()).map_err(Failed::of)
        },
        move |desk, ()| {
            let since = desk.since(asked);
            desk.tell(t!("season-log-the-review-is-written-to", path = path.display(), since = since));
        },
    );
}
