//! Saving on a thread, so that a large farm never holds up the window; and what is asked where the file on disk is another one
//! than was opened.

use std::path::{Path, PathBuf};
use std::time::Duration;

use egui::Ui;
use tankard_core::farm::{Farm, differs};
use tankard_core::t;
use tankard_file::backups::Backups;
use tankard_file::names;
use tankard_file::side;
use tankard_file::store::{self, Save, Stamp, StoreError};

use super::foot::{ask, escape};
use super::job::{Job, Outcome};
use super::{Desk, Leaving};
use crate::document::Saved;
use crate::parts::differences;

/// How long a closing window waits for what is still being written beside it.
const CLOSING: Duration = Duration::from_secs(5);

/// What can be answered where the file is another one.
#[derive(Clone, Copy)]
enum Answer {
    Keep,
    Take,
    Again,
    Other,
    Cancel,
}

impl Answer {
    fn words(self) -> &'static str {
        match self {
            Self::Keep => t!("app-keep-mine"),
            Self::Take => t!("app-take-theirs"),
            Self::Again => t!("app-save-it-there-again"),
            Self::Other => t!("app-save-mine-as-another-file"),
            Self::Cancel => t!("app-cancel"),
        }
    }
}

/// A save that runs.
pub(super) struct Saving {
    job: Job<Result<store::Saved, StoreError>>,
    path: PathBuf,
    state: Saved,
    /// Whether it is under another name than before.
    is_new_name: bool,
}

/// The file on disk is another one than was opened, and a person has to say which holds.
pub(super) struct Conflict {
    path: PathBuf,
    theirs: Theirs,
}

/// What stands on disk.
enum Theirs {
    /// It is being read.
    Reading(Job<Read>),
    Read(Read),
    /// Nothing at all.
    Gone,
}

/// What was read of it, with what mine has otherwise.
type Read = Result<(Box<Farm>, Stamp, Vec<String>), String>;

fn read_out(outcome: Outcome<Read>) -> Theirs {
    Theirs::Read(match outcome {
        Outcome::Done(read) => read,
        Outcome::Died(why) => Err(why),
    })
}

impl Desk {
    /// Whether a save runs.
    pub(super) fn is_saving(&self) -> bool {
        self.saving.is_some()
    }

    /// Saves where the farm came from.
    pub(super) fn save(&mut self) {
        let Some(path) = self.document.path().cloned() else { return };
        if let Some(other) = &self.other {
            let words = other.words();
            self.leave_after_save = None;
            self.is_other_shown = true;
            self.tell_problem(t!("app-the-farm-was-not-saved-take", words = words));
            return;
        }
        let stamp = self.document.stamp();
        self.start_saving(path, stamp, false);
    }

    /// Saves under another name, over what is there, and then does what waited for that.
    pub(super) fn save_as(&mut self, path: &Path) {
        self.start_saving(path.to_owned(), None, true);
    }

    fn start_saving(&mut self, path: PathBuf, stamp: Option<Stamp>, is_new_name: bool) {
        if self.is_saving() {
            // What is saved now is older than what was asked for; it is saved once more when this is done.
            self.save_again = !is_new_name;
            if is_new_name {
                self.tell_problem(t!("app-the-farm-is-still-being-saved"));
            }
            return;
        }
        self.conflict = None;
        self.document.take_point();
        let snapshot = self.document.snapshot();
        let state = snapshot.state();
        let remembered = self.remembered.as_ref();
        let backups = Backups {
            keep: remembered.map(crate::recent::Remembered::keep_backups).unwrap_or_default(),
            now: self.now(),
            spare: remembered.and_then(|remembered| remembered.folder.clone()),
        };
        let to = path.clone();
        let job = Job::start(self.ctx.as_ref(), move || {
            let farm = snapshot.into_farm();
            Save { path: &to, farm: &farm, stamp, backups: Some(&backups) }.run()
        });
        self.saving = Some(Saving { job, path, state, is_new_name });
        self.finish_saving(self.patience);
    }

    /// Takes note of a save that is done.
    pub(super) fn finish_saving(&mut self, wait: Duration) {
        let Some(saving) = self.saving.take() else { return };
        let Some(done) = saving.job.ended(wait) else {
            self.saving = Some(saving);
            return;
        };
        match done {
            Outcome::Done(Ok(saved)) => self.saved(&saving, &saved),
            Outcome::Done(Err(StoreError::ChangedOnDisk { .. })) => {
                // What was said before is asked now.
                self.notice = None;
                let theirs = self.read_theirs(&saving.path);
                self.conflict = Some(Conflict { path: saving.path, theirs });
            }
            Outcome::Done(Err(StoreError::Gone { .. })) => {
                self.conflict = Some(Conflict { path: saving.path, theirs: Theirs::Gone });
            }
            Outcome::Done(Err(error)) => self.not_saved(&error.to_string()),
            Outcome::Died(why) => self.not_saved(&t!("app-or-save-under-another-name", why = why)),
        }
    }

    /// Where the work is all the same, a person must know before anything else.
    fn not_saved(&mut self, why: &str) {
        self.leave_after_save = None;
        self.save_again = false;
        self.keep(Duration::ZERO);
        self.tell_problem(match self.kept_in() {
            Some(side) => t!("app-the-farm-was-not-saved-kept-in", why = why, side = side.display()),
            None => t!("app-the-farm-was-not-saved-nothing", why = why),
        });
    }

    fn saved(&mut self, saving: &Saving, saved: &store::Saved) {
        if saving.is_new_name {
            // Work of an earlier run belongs to the old name, and is offered again there.
            self.found.clear();
            self.forget_unsaved();
            self.drop_kept();
        }
        self.document.is_on_disk(&saving.state, &saving.path, saved.stamp);
        if !self.document.is_unsaved() {
            self.drop_kept();
        }
        match &saved.remark {
            Some(remark) => {
                self.tell_problem(t!("app-saved-but-what-the-file-held", remark = remark));
            }
            None if saving.is_new_name => self.tell_for_now(t!("app-saved-as", path = saving.path.display())),
            None => self.tell_for_now(t!("app-saved")),
        }
        if saving.is_new_name {
            self.take_lock();
            if let Some(remembered) = &mut self.remembered {
                remembered.opened(&saving.path);
                remembered.keep();
            }
        }
        if std::mem::take(&mut self.save_again) {
            self.save();
            return;
        }
        if let Some(leaving) = self.leave_after_save.take() {
            // What was typed while it was being saved is asked about like any other work.
            if self.document.is_unsaved() {
                self.leaving = Some(leaving);
            } else {
                self.leave(leaving);
            }
        }
    }

    /// Lets what was asked for follow the save that runs.
    pub(super) fn leave_when_saved(&mut self, leaving: Leaving) {
        self.leave_after_save = Some(leaving);
    }

    fn read_theirs(&mut self, path: &Path) -> Theirs {
        let (mine, path) = (self.document.snapshot(), path.to_owned());
        let job = Job::start(self.ctx.as_ref(), move || {
            let (theirs, stamp) = store::open(&path).map_err(|error| error.to_string())?;
            let lines = differs::between(&theirs, &mine.into_farm()).lines();
            Ok((Box::new(theirs), stamp, lines))
        });
        match job.ended(self.patience) {
            Some(outcome) => read_out(outcome),
            None => Theirs::Reading(job),
        }
    }

    /// Asks which holds: mine or theirs.
    pub(super) fn ask_conflict(&mut self, ui: &mut Ui) {
        let Some(mut conflict) = self.conflict.take() else { return };
        if let Theirs::Reading(job) = &conflict.theirs
            && let Some(read) = job.ended(Duration::ZERO)
        {
            conflict.theirs = read_out(read);
        }
        let file = conflict.path.display();
        let (text, remark, answers, lines) = match &conflict.theirs {
            Theirs::Reading(_) => {
                (t!("app-was-changed-by-something-else-it", file = file), "", vec![Answer::Cancel], &[][..])
            }
            Theirs::Gone => (
                t!("app-is-not-there-any-more-moved", file = file),
                t!("app-nothing-is-lost-your-work-is"),
                vec![Answer::Again, Answer::Other, Answer::Cancel],
                &[][..],
            ),
            Theirs::Read(Err(why)) => (
                t!("app-was-changed-by-something-else-and", file = file, why = why),
                t!("app-what-stands-there-goes-to-the"),
                vec![Answer::Keep, Answer::Other, Answer::Cancel],
                &[][..],
            ),
            Theirs::Read(Ok((.., lines))) => (
                t!("app-was-changed-by-something-else-since", file = file),
                t!("app-theirs-goes-to-the-backups-if"),
                vec![Answer::Keep, Answer::Take, Answer::Other, Answer::Cancel],
                lines.as_slice(),
            ),
        };
        let words: Vec<&str> = answers.iter().copied().map(Answer::words).collect();
        let answer = ask(ui, "conflict", &text, &words, remark, |ui| {
            if let Theirs::Read(Ok(_)) = &conflict.theirs {
                differences::show(ui, t!("app-what-mine-has-otherwise-than-theirs"), lines);
            }
        });
        let answer = answer.and_then(|at| answers.get(at).copied()).or_else(|| escape(ui).then_some(Answer::Cancel));
        match (answer, conflict.theirs) {
            (Some(Answer::Take), Theirs::Read(Ok((theirs, stamp, _)))) => {
                self.document.take_theirs(*theirs, stamp);
                self.drop_kept();
                self.tell(t!("app-theirs-is-open-now-undo-brings"));
                self.leave_after_save = None;
                self.tell_seals();
            }
            (Some(Answer::Other), _) => {
                let leaving = self.leave_after_save.take();
                let stem = conflict.path.file_stem().unwrap_or_default().to_string_lossy().into_owned();
                self.ask_file(
                    crate::files::Purpose::SaveFarm,
                    conflict.path.with_file_name(names::safe(&stem, " mine.ron")),
                    ui.ctx(),
                );
                self.leave_after_save = leaving;
            }
            (Some(Answer::Cancel), _) => self.leave_after_save = None,
            (Some(_), Theirs::Read(Ok((_, stamp, _)))) => {
                // Only over what was shown; were it changed once more, it is asked again.
                self.start_saving(conflict.path, Some(stamp), false);
            }
            (Some(_), _) => self.start_saving(conflict.path, None, false),
            (None, theirs) => self.conflict = Some(Conflict { path: conflict.path, theirs }),
        }
    }

    /// What a closing window waits for.
    pub(super) fn settle(&mut self) {
        self.settle_work();
        if let Some(keeping) = self.kept.job.take() {
            let _ = keeping.ended(CLOSING);
        }
        for keeping in self.kept_in_vain.drain(..) {
            if let Some(Outcome::Done(Ok((side, ..)))) = keeping.ended(CLOSING) {
                side::drop(&side);
            }
        }
        // The lock goes when nobody refreshes it any more.
        if let Some(watching) = self.watching.job.take() {
            let _ = watching.ended(CLOSING);
        }
        self.lock = None;
    }
}
