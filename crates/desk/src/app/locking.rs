//! Two windows, or two machines on one share, that have the same farm open: who came second reads, until the first closes it or
//! a person takes it over.

use std::fs;
use std::path::Path;
use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::{Duration, Instant, SystemTime};

use egui::Ui;
use jiff::civil::DateTime;
use tankard_core::t;
use tankard_core::words::capital;
use tankard_file::lock::{self, Holder, Lock, Other, Taken};
use tankard_file::store;

use super::Desk;
use super::foot::ask;
use super::job::{Job, Outcome};
use super::opening::{OPENING, name_of};
use super::work::{Failed, Task};
use crate::document::Document;

/// What a look at the disk found.
pub(super) struct Seen {
    /// Who has the farm open besides us, or none.
    other: Option<Other>,
    /// When the file was last written, and its size.
    file: Option<(SystemTime, u64)>,
    /// Whether it holds something else than was opened.
    is_changed: bool,
}

/// The looks at the disk from time to time.
#[derive(Default)]
pub(super) struct Watching {
    pub(super) job: Option<Job<Seen>>,
    at: Option<Instant>,
    file: Option<(SystemTime, u64)>,
    is_told: bool,
}

/// Tells two windows of one process apart, as tests have them.
static WINDOWS: AtomicU64 = AtomicU64::new(1);

fn me(since: DateTime) -> Holder {
    let from = |names: &[&str]| names.iter().find_map(|name| std::env::var(name).ok().filter(|text| !text.is_empty()));
    Holder {
        user: from(&["USER", "USERNAME", "LOGNAME"]).unwrap_or_else(|| "someone".to_owned()),
        host: host(),
        process: std::process::id(),
        since,
        window: WINDOWS.fetch_add(1, Ordering::Relaxed),
    }
}

/// The name of this machine.
fn host() -> String {
    let file = |path: &str| fs::read_to_string(path).ok().map(|text| text.trim().to_owned());
    let named = file("/proc/sys/kernel/hostname").or_else(|| file("/etc/hostname"));
    let named = named.or_else(|| std::env::var("COMPUTERNAME").ok()).or_else(|| std::env::var("HOSTNAME").ok());
    named.filter(|name| !name.is_empty()).unwrap_or_else(|| t!("app-this-machine").to_owned())
}

/// Who has a farm open, if anyone has.
pub(super) fn who_has(path: &Path) -> Option<Other> {
    lock::other(path, &host())
}

impl Desk {
    /// Takes the lock of the open farm; where someone else has it, the farm is open for reading.
    pub(super) fn take_lock(&mut self) {
        self.lock = None;
        self.other = None;
        self.watching = Watching::default();
        // A desk that remembers nothing is a trial, which locks nobody out.
        let Some(path) = self.document.path().filter(|_| self.remembered.is_some()) else { return };
        match Lock::take(path, me(self.now())) {
            Ok(Taken::Ours(lock)) => self.lock = Some(Arc::new(lock)),
            Ok(Taken::Theirs(other)) => {
                self.other = Some(other);
                self.is_other_shown = true;
            }
            // Where nothing can be written nobody else can save either; saving says so.
            Err(error) => log::warn!("the farm is not locked: {error}"),
        }
    }

    /// Takes the farm over from whoever has it.
    fn take_over(&mut self) {
        let Some(path) = self.document.path().cloned() else { return };
        match Lock::take_over(&path, me(self.now())) {
            Ok(lock) => {
                self.lock = Some(Arc::new(lock));
                self.other = None;
                self.watching = Watching::default();
                self.is_ours_again(&path);
            }
            Err(error) => self.tell_problem(t!("app-the-farm-was-not-taken-over", error = error)),
        }
    }

    /// What was read may be older than what stands on disk now.
    fn is_ours_again(&mut self, path: &Path) {
        let known = self.document.stamp();
        let task = Task::looks(t!("app-reading-again", path = name_of(path)), t!("app-the-farm-was-not-opened-again"))
            .counting(t!("app-entry"), t!("app-entries"))
            .in_place(OPENING);
        let path = path.to_owned();
        self.start(
            task,
            move |going| {
                let is_changed = store::stamp_of(&path).is_ok_and(|stamp| Some(stamp) != known);
                let again = is_changed.then(|| Document::open_told(path, &|done, of| going.tell(done, of)));
                again.transpose().map_err(Failed::of)
            },
            |desk, again| {
                let mut words = t!("app-the-farm-is-yours-to-save");
                match again {
                    Some(_) if desk.document.is_unsaved() => {
                        desk.watching.is_told = true;
                        words = t!("app-the-farm-is-yours-to-save-now-the-file");
                    }
                    Some(document) => desk.put(document),
                    None => {}
                }
                desk.look_for_unsaved();
                desk.tell(words);
            },
        );
    }

    /// Says from time to time that we are still there, and looks whether anyone else is, or wrote the file.
    pub(super) fn watch(&mut self) {
        let done = self.watching.job.as_ref().and_then(|job| job.ended(Duration::ZERO));
        if let Some(done) = done {
            self.watching.job = None;
            if let Outcome::Done(seen) = done {
                self.seen(seen);
            }
        }
        let Some(path) = self.document.path().cloned().filter(|_| self.remembered.is_some()) else { return };
        if self.watching.job.is_some() || self.is_saving() {
            return;
        }
        let waited = self.watching.at.get_or_insert_with(Instant::now).elapsed();
        if waited < self.watch_every {
            if let Some(ctx) = &self.ctx {
                ctx.request_repaint_after(self.watch_every.saturating_sub(waited));
            }
            return;
        }
        self.watching.at = Some(Instant::now());
        let (lock, stamp, before) = (self.lock.clone(), self.document.stamp(), self.watching.file);
        let job = Job::start(self.ctx.as_ref(), move || {
            let other = match &lock {
                Some(lock) => lock.refresh().unwrap_or_default(),
                None => who_has(&path),
            };
            let file = fs::metadata(&path).ok().and_then(|data| Some((data.modified().ok()?, data.len())));
            // The whole file is read only where its moment or its size is another.
            let is_other = file != before && file.is_some();
            let is_changed = is_other && store::stamp_of(&path).is_ok_and(|now| Some(now) != stamp);
            Seen { other, file, is_changed }
        });
        if let Some(Outcome::Done(seen)) = job.ended(self.patience) {
            self.seen(seen);
        } else {
            self.watching.job = Some(job);
        }
    }

    fn seen(&mut self, seen: Seen) {
        self.watching.file = seen.file;
        if seen.is_changed && !self.watching.is_told && !self.is_saving() {
            self.watching.is_told = true;
            self.tell(t!("app-the-file-was-changed-by-something"));
        }
        match (seen.other, self.lock.is_some()) {
            (Some(other), true) => {
                self.lock = None;
                self.tell_problem(t!("app-the-farm-was-taken-over", other = other.words()));
                self.other = Some(other);
                self.is_other_shown = true;
            }
            (Some(other), false) => {
                let was_held = self.other.as_ref().is_some_and(|before| before.stale.is_none());
                self.is_other_shown |= was_held && other.stale.is_some();
                self.other = Some(other);
            }
            (None, false) if self.other.is_some() => {
                self.take_lock();
                if let (Some(_), Some(path)) = (&self.lock, self.document.path().cloned()) {
                    self.is_ours_again(&path);
                }
            }
            (None, _) => {}
        }
    }

    /// Whether the farm is open for reading, since someone else has it.
    pub(super) fn is_for_reading(&self) -> bool {
        self.other.is_some()
    }

    /// Says who has the farm open, and offers to take it over.
    pub(super) fn ask_other(&mut self, ui: &mut Ui) {
        let Some(other) = self.other.as_ref().filter(|_| self.is_other_shown) else { return };
        let remark = if other.stale.is_some() {
            t!("app-take-it-over-if-you-are")
        } else {
            t!("app-two-who-save-the-same-farm")
        };
        let text = capital(&t!("app-here-it-is-open-for-reading", other = other.words()));
        match ask(ui, "other", &text, &[t!("app-keep-reading"), t!("app-take-it-over")], remark, |_| {}) {
            Some(0) => self.is_other_shown = false,
            Some(_) => self.take_over(),
            None => {}
        }
    }
}
