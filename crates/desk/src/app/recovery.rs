//! Work that is not saved: kept in a side file while it is done, and offered at the next start after a crash or a power cut.

use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use egui::Ui;
use tankard_core::farm::differs;
use tankard_core::language::days::moment;
use tankard_core::t;
use tankard_file::backups;
use tankard_file::side::{self, Head, Kept};
use tankard_file::store::{self, StoreError};

use super::Desk;
use super::foot::{ask, escape};
use super::job::{Job, Outcome};
use super::opening::OPENING;
use super::work::{Failed, Task};
use crate::document::{Document, Saved};
use crate::parts::differences;

/// The name under which work of earlier runs is looked for.
pub(super) const UNSAVED: &str = "unsaved";

/// Keeping a large farm must not take more than a small part of the time.
const SHARE_OF_TIME: u32 = 20;

/// Work of an earlier run that waits to be taken up or dropped. Until then its side file is left alone.
pub(super) struct Found {
    kept: Kept,
    /// Whether the file is no longer what the work began from.
    is_file_changed: bool,
    /// Whether it is the copy of a save that was ended while the file was written in place.
    is_half_saved: bool,
    /// What the work has otherwise than the farm that is open.
    lines: Vec<String>,
}

/// A file that does not read, though a copy of it does.
pub(super) struct Unreadable {
    path: PathBuf,
    why: String,
    /// What the copy is, and where.
    copy: (String, PathBuf),
}

/// Why a file was not opened, and the latest copy of it that reads, where only what stands in it is at fault.
pub(super) struct NotRead {
    path: PathBuf,
    why: String,
    copy: Option<(String, PathBuf)>,
}

/// Looks for a copy of a file that does not read.
pub(super) fn not_read(path: &Path, error: &StoreError, spare: Option<&Path>) -> NotRead {
    let half = || side::half_saved(path, spare).map(|kept| (t!("app-what-was-being-saved").to_owned(), kept.path));
    let kept = || {
        let kept = side::find_all(&side::beside(path)).into_iter().next()?;
        let words = match kept.head.at {
            Some(at) => t!("app-the-work-of-that-was-not-saved", moment = moment(at)),
            None => t!("app-the-work-that-was-not-saved").to_owned(),
        };
        Some((words, kept.path))
    };
    let backup = || {
        let all = backups::list(path, spare);
        let reads = all.into_iter().find(|backup| store::open(&backup.path).is_ok())?;
        Some((t!("app-the-backup-of", moment = moment(reads.made)), reads.path))
    };
    let is_broken = matches!(error, StoreError::Read { .. });
    let copy = if is_broken { half().or_else(kept).or_else(backup) } else { None };
    NotRead { path: path.to_owned(), why: error.to_string(), copy }
}

/// In which side file which state is, and how long that took.
pub(super) type InSide = (PathBuf, Saved, Duration);

/// How unsaved work was kept in the side file.
pub(super) struct Keeping {
    /// Which state of the document is there; none where that is not known.
    pub(super) state: Option<Saved>,
    /// When it was last tried, and how long that took.
    pub(super) at: Instant,
    pub(super) took: Duration,
    /// The side file of this run, once it wrote one.
    pub(super) side: Option<PathBuf>,
    /// What is being kept.
    pub(super) job: Option<Job<Result<InSide, StoreError>>>,
    /// Whether it was said that it fails.
    told: bool,
    /// Side files of earlier runs whose work is this run's now; they go once it is kept or saved.
    taken_up: Vec<PathBuf>,
}

impl Keeping {
    pub(super) fn none() -> Self {
        Self {
            state: None,
            at: Instant::now(),
            took: Duration::ZERO,
            side: None,
            job: None,
            told: false,
            taken_up: Vec::new(),
        }
    }
}

impl Desk {
    /// Where unsaved work is kept: beside the farm, and where that cannot be written, or for a farm that has no file or that
    /// someone else has open, where the desk remembers things.
    fn sides(&self) -> Vec<PathBuf> {
        let spare = self.spare();
        match self.document.path() {
            Some(path) => {
                let beside = self.other.is_none().then(|| side::beside(path));
                beside.into_iter().chain(spare.map(|spare| side::in_spare(path, &spare))).collect()
            }
            None => self.remembered.as_ref().and_then(crate::recent::Remembered::never_saved).into_iter().collect(),
        }
    }

    /// Whether there is a place for unsaved work.
    pub(super) fn can_keep(&self) -> bool {
        self.document.path().is_some() || self.remembered.is_some()
    }

    /// The side file in which the present work is, if it is in one.
    pub(super) fn kept_in(&self) -> Option<&Path> {
        self.kept.side.as_deref().filter(|_| self.kept.state == Some(self.state()))
    }

    /// Looks for what earlier runs left.
    pub(super) fn look_for_unsaved(&mut self) {
        self.found.clear();
        // Of a farm that someone else has open it may be theirs, of a moment ago.
        if self.other.is_some() || self.is_opening_first {
            return;
        }
        let half = self.document.path().map(|path| (path.clone(), self.spare()));
        let (sides, stamp) = (self.sides(), self.document.stamp());
        let is_anything = sides.iter().any(|side| side::is_any(side))
            || half.as_ref().is_some_and(|(path, spare)| side::is_half_saved(path, spare.as_deref()));
        if !is_anything {
            return;
        }
        let snapshot = self.document.snapshot();
        let task = Task::looks(t!("app-reading-what-was-not-saved-before"), t!("app-work-that-was-not-saved-before"))
            .in_place(UNSAVED);
        self.start(
            task,
            move |going| {
                let open = snapshot.into_farm();
                let halves = half.and_then(|(path, spare)| side::half_saved(&path, spare.as_deref()));
                let all = halves.into_iter().map(|kept| (kept, true));
                let all = all.chain(sides.iter().flat_map(|side| side::find_all(side)).map(|kept| (kept, false)));
                let mut found = Vec::new();
                for (kept, is_half_saved) in all {
                    going.tell(found.len(), None)?;
                    let lines = differs::between(&open, &kept.farm).lines();
                    // It was saved since, or undone: nothing of it is missing.
                    if lines.is_empty() && kept.farm == open {
                        side::drop(&kept.path);
                        continue;
                    }
                    let begun = kept.head.begun_from;
                    let is_file_changed = begun.is_some() && begun != stamp;
                    found.push(Found { kept, is_file_changed, is_half_saved, lines });
                }
                Ok(found)
            },
            |desk, found| desk.found = found,
        );
    }

    /// Says at the start which farms of before have unsaved work, where none of them is opened.
    pub(super) fn tell_of_others(&mut self) {
        let Some(remembered) = &self.remembered else { return };
        if self.document.path().is_some() || self.is_opening_first {
            return;
        }
        let has_work = |path: &&PathBuf| !tankard_file::lock::beside(path).exists() && side::beside(path).is_file();
        if let Some(path) = remembered.farms.iter().find(has_work) {
            let text = t!("app-work-on-was-not-saved-when", path = path.display());
            self.tell(text);
        }
    }

    /// Drops what this run kept, once it is saved or let go. What an earlier run kept stays until it is answered.
    pub(super) fn drop_kept(&mut self) {
        self.finish_keeping(self.patience);
        for side in self.kept.side.iter().chain(&self.kept.taken_up) {
            side::drop(side);
        }
        // What is still being written is dropped when it is there.
        self.kept_in_vain.extend(self.kept.job.take());
        self.kept = Keeping::none();
    }

    /// Keeps unsaved work in the side file of this run, waiting so long for it. Where that fails it is said once, and tried
    /// again.
    pub(crate) fn keep(&mut self, wait: Duration) {
        self.finish_keeping(wait);
        if self.kept.job.is_some() || !self.kept_in_vain.is_empty() || !self.document.is_unsaved() {
            return;
        }
        let sides = self.sides();
        if sides.is_empty() {
            return;
        }
        self.kept.at = Instant::now();
        let snapshot = self.document.snapshot();
        let head = Head { begun_from: self.document.stamp(), at: Some(self.now()) };
        let own = self.kept.side.clone();
        let job = Job::start(self.ctx.as_ref(), move || {
            let began = Instant::now();
            let (state, farm) = (snapshot.state(), snapshot.into_farm());
            let mut first = None;
            // What this run wrote before, and else what no run before left anything in.
            let places = own.into_iter().chain(sides.iter().map(|side| side::free(side)));
            for place in places {
                match side::keep(&place, &farm, head) {
                    Ok(()) => return Ok((place, state, began.elapsed())),
                    Err(error) => first = first.or(Some(error)),
                }
            }
            Err(first.unwrap_or(StoreError::Gone { path: PathBuf::new() }))
        });
        self.kept.job = Some(job);
        self.finish_keeping(wait.max(self.patience));
    }

    /// Takes note of what was kept.
    pub(super) fn finish_keeping(&mut self, wait: Duration) {
        self.kept_in_vain.retain(|job| match job.ended(Duration::ZERO) {
            None => true,
            Some(Outcome::Done(Ok((side, ..)))) => {
                side::drop(&side);
                false
            }
            Some(_) => false,
        });
        let Some(job) = self.kept.job.take() else { return };
        match job.ended(wait) {
            None => self.kept.job = Some(job),
            Some(Outcome::Done(Ok((side, state, took)))) => {
                if let Some(before) = self.kept.side.replace(side)
                    && self.kept.side.as_ref() != Some(&before)
                {
                    side::drop(&before);
                }
                self.kept.state = Some(state);
                self.kept.took = took;
                self.kept.told = false;
                self.kept.taken_up.drain(..).for_each(|side| side::drop(&side));
            }
            Some(Outcome::Done(Err(error))) if !self.kept.told => {
                self.kept.told = true;
                self.tell_problem(t!("app-unsaved-work-is-only-in-memory", error = error));
            }
            Some(Outcome::Done(Err(error))) => log::warn!("unsaved work could not be kept: {error}"),
            Some(Outcome::Died(why)) => log::warn!("unsaved work could not be kept: {why}"),
        }
    }

    /// How long work may stay only in memory: longer where keeping it takes long.
    pub(super) fn keep_after(&self) -> Duration {
        self.keep_every.max(self.kept.took * SHARE_OF_TIME)
    }

    /// Which state of the document this is. Issuing cards is no revision, but must be kept too.
    pub(super) fn state(&self) -> Saved {
        self.document.state()
    }

    /// Offers work of earlier runs, the latest first.
    pub(super) fn offer_found(&mut self, ui: &mut Ui) {
        let Some(found) = self.found.first() else { return };
        let what = match found.kept.head.at {
            _ if found.is_half_saved => t!("app-a-save-was-ended-before-it").to_owned(),
            Some(at) => t!("app-work-from-an-earlier-run-was-kept", moment = moment(at)),
            None => t!("app-work-from-an-earlier-run-was").to_owned(),
        };
        let changed = if found.is_file_changed { t!("app-the-file-has-been-saved-since") } else { "" };
        let more = match self.found.len() {
            1 => String::new(),
            count => t!("app-more-to-look-at-after-this", count = count - 1),
        };
        let lines = &found.lines;
        let answer =
            ask(ui, "found", &format!("{what}{changed}"), &[t!("app-take-it-up"), t!("app-drop-it")], &more, |ui| {
                differences::show(ui, t!("app-what-it-has-otherwise-than-what-is-open"), lines);
            });
        match answer {
            Some(0) => {
                let found = self.found.remove(0);
                self.document.take_point();
                self.document.take_up(found.kept.farm);
                // It is this run's work now; its own side file goes once it is in that of this run.
                self.kept.taken_up.push(found.kept.path);
                self.keep(Duration::ZERO);
                self.tell(t!("app-it-is-open-now-undo-brings"));
                self.tell_seals();
            }
            Some(_) => side::drop(&self.found.remove(0).kept.path),
            None => {}
        }
    }

    /// Says that a file was not opened, and offers the latest copy of it that reads.
    pub(super) fn not_opened(&mut self, not_read: NotRead) {
        self.gave_up_first();
        match not_read {
            NotRead { path, why, copy: Some(copy) } => self.unreadable = Some(Unreadable { path, why, copy }),
            NotRead { why, .. } => self.tell_problem(t!("app-the-farm-was-not-opened-why", why = why)),
        }
    }

    /// Offers the copy of a file that does not read.
    pub(super) fn ask_unreadable(&mut self, ui: &mut Ui) {
        let Some(unreadable) = &self.unreadable else { return };
        let text = t!("app-the-farm-was-not-opened-why", why = unreadable.why);
        let open = t!("app-open", copy = unreadable.copy.0);
        let remark = t!("app-the-file-stays-as-it-is");
        let answer = ask(ui, "unreadable", &text, &[&open, t!("app-leave-it")], remark, |_| {});
        match answer.or_else(|| escape(ui).then_some(1)) {
            Some(0) => {
                let Some(Unreadable { path, copy: (what, from), .. }) = self.unreadable.take() else { return };
                let task = Task::looks(t!("app-reading", what = what), t!("app-the-copy-was-not-opened"))
                    .counting(t!("app-entry"), t!("app-entries"))
                    .in_place(OPENING);
                self.start(
                    task,
                    move |going| {
                        let (farm, _) =
                            store::open_told(&from, &|done, of| going.tell(done, of)).map_err(Failed::of)?;
                        let stamp = store::stamp_of(&path).ok();
                        Ok(Document::recovered(farm, path, stamp))
                    },
                    move |desk, document| {
                        desk.replace(document);
                        desk.tell(t!("app-this-is-save-it-to-put", what = what));
                    },
                );
            }
            Some(_) => self.unreadable = None,
            None => {}
        }
    }
}
