//! The review as PDF. All records chosen are held against their labels for it, so it is made on a thread of its own.

use std::path::PathBuf;
use std::sync::mpsc::{Receiver, TryRecvError, channel};
use std::time::Duration;

use egui::Ui;
use tankard_core::season::review::Choice;
use tankard_file::store::{self, Report};

use crate::app::Desk;
use crate::files::Purpose;
use crate::look;
use crate::parts::boxes;

/// What is being written.
#[derive(Debug, Default)]
pub(super) struct State {
    /// What the review is of whose file is being asked for.
    asked: Option<Choice>,
    coming: Option<Receiver<Result<PathBuf, String>>>,
}

/// "Review as PDF…", or that it is being written; whether it was clicked.
pub(super) fn act(state: &State, ui: &mut Ui) -> bool {
    if state.coming.is_some() {
        ui.label(look::soft(ui, "writing the review"));
        return false;
    }
    boxes::act(ui, "Review as PDF…").clicked()
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
        desk.tell_problem(
            "The review was not written: it is no longer known which seasons were meant; choose it again".to_owned(),
        );
        return;
    };
    let (farm, today) = (desk.document.farm().clone(), desk.now().date());
    let (sender, receiver) = channel();
    std::thread::spawn(move || {
        let written = tankard_paper::review::pdf(&farm, &choice, today)
            .map_err(|error| error.to_string())
            .and_then(|pdf| store::put_report(&path, &pdf, Report::Pdf).map_err(|error| error.to_string()));
        // The window may have been closed meanwhile; then nobody waits for the answer.
        let _ = sender.send(written.map(|()| path));
    });
    desk.season_log.review.paper.coming = Some(receiver);
}

/// Tells when it is written.
pub(super) fn tell(desk: &mut Desk, ui: &Ui) {
    let state = &mut desk.season_log.review.paper;
    let Some(receiver) = &state.coming else { return };
    let answer = match receiver.try_recv() {
        Err(TryRecvError::Empty) => {
            ui.ctx().request_repaint_after(Duration::from_millis(100));
            return;
        }
        Ok(answer) => answer,
        Err(TryRecvError::Disconnected) => Err("the layout stopped; try it again".to_owned()),
    };
    state.coming = None;
    match answer {
        Ok(path) => desk.tell(format!("The review is written to {}", path.display())),
        Err(problem) => desk.tell_problem(format!("The review was not written: {problem}")),
    }
}
