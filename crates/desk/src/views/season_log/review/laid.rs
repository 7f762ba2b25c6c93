//! The records of the farm laid out for the review, on a thread of its own where there are many of them.

use std::rc::Rc;

use egui::Ui;
use tankard_core::season::review::Index;
use tankard_core::t;

use crate::app::{Desk, Task};
use crate::look;
use crate::parts::boxes;

/// So many are laid out within a frame.
const AT_ONCE: usize = 1_000;
/// The name under which the records are laid out.
const LAYING: &str = "laying out the review";

/// What is laid out, and what was begun.
#[derive(Debug, Default)]
pub(super) struct Laid {
    /// Of which revision.
    index: Option<(u64, Rc<Index>)>,
    begun: Option<u64>,
}

/// The records of the present revision laid out; `None` where that goes on or was cancelled.
pub(super) fn of(desk: &mut Desk, revision: u64) -> Option<Rc<Index>> {
    let laid = &desk.season_log.review.laid;
    if let Some((_, index)) = laid.index.as_ref().filter(|(of, _)| *of == revision) {
        return Some(Rc::clone(index));
    }
    if desk.document.farm().records.len() <= AT_ONCE {
        let index = Rc::new(Index::of(desk.document.farm()));
        desk.season_log.review.laid = Laid { index: Some((revision, Rc::clone(&index))), begun: None };
        return Some(index);
    }
    if laid.begun != Some(revision) {
        desk.season_log.review.laid.begun = Some(revision);
        let snapshot = desk.document.snapshot();
        let task = Task::looks(t!("season-log-laying-out-the-records"), t!("season-log-the-records-were-not-laid-out"));
        desk.start(
            task.in_place(LAYING),
            move |_| Ok(Index::of(&snapshot.into_farm())),
            move |desk, index| desk.season_log.review.laid.index = Some((revision, Rc::new(index))),
        );
    }
    None
}

/// What stands there meanwhile.
pub(super) fn wait(desk: &mut Desk, ui: &mut Ui) {
    if desk.is_at_work(LAYING) {
        ui.label(look::soft(ui, t!("season-log-the-records-are-being-laid-out")));
    } else if boxes::act(ui, t!("season-log-lay-out-the-records")).clicked() {
        desk.season_log.review.laid.begun = None;
    }
}
