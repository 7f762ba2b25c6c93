//! Long work that a person asked for: begun off the window's thread, shown at the foot with how far it is, cancelled there, and its
//! result taken once, at the beginning of a frame.

use std::path::Path;
use std::sync::Arc;
use std::time::{Duration, Instant};

use egui::{Align, EventFilter, Key, Layout, Modifiers, Panel, RichText, Ui};
use tankard_core::progress::Cancelled;
use tankard_core::season::review::words::count;
use tankard_core::t;

use super::job::{Going, Job, Outcome};
use super::opening::name_of;
use super::{Desk, Leaving};
use crate::command::{Command, View};
use crate::look;
use crate::parts::boxes;

/// Work that is over sooner is not shown, so that nothing flickers.
pub(super) const SHOWN_AFTER: Duration = Duration::from_millis(300);

/// How often its line is drawn anew.
const DRAWN_EVERY: Duration = Duration::from_millis(150);

/// Why work gave no result.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Failed {
    /// Nobody waited for it any more.
    Cancelled,
    /// A sentence without its full stop.
    Because(String),
}

impl From<Cancelled> for Failed {
    fn from(_: Cancelled) -> Self {
        Self::Cancelled
    }
}

impl Failed {
    /// Because of an error.
    pub fn of(error: impl std::fmt::Display) -> Self {
        Self::Because(error.to_string())
    }
}

/// What work does to the world, which says who has to wait for it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Does {
    /// It looks at something for the farm that is open. Nobody waits for it: it is forgotten where it is cancelled and where another farm is
    /// opened.
    Looks,
    /// It writes a file of what the farm was when it was asked for. The window closes when that is done.
    Writes,
    /// It writes and then changes the farm, which stays open until that is done.
    Issues,
}

/// Work as it is shown.
#[derive(Clone, Debug)]
pub struct Task {
    words: String,
    failed: String,
    does: Does,
    pieces: Option<(&'static str, &'static str)>,
    name: &'static str,
    replaces: bool,
}

impl Task {
    /// Work that looks at something for the farm that is open: in words such as "Reading larkspur.ron", and what to say where it
    /// gives nothing, such as "The farm was not opened".
    pub fn looks(words: impl Into<String>, failed: impl Into<String>) -> Self {
        Self { words: words.into(), failed: failed.into(), does: Does::Looks, pieces: None, name: "", replaces: false }
    }

    /// Work that writes a file. Where it is cancelled nothing may be left of that.
    pub fn writes(words: impl Into<String>, failed: impl Into<String>) -> Self {
        Self { does: Does::Writes, ..Self::looks(words, failed) }
    }

    /// Work that writes a file and then changes the farm, which stays open until then.
    pub fn issues(words: impl Into<String>, failed: impl Into<String>) -> Self {
        Self { does: Does::Issues, ..Self::looks(words, failed) }
    }

    /// What it counts: one and many.
    #[must_use]
    pub fn counting(self, one: &'static str, many: &'static str) -> Self {
        Self { pieces: Some((one, many)), ..self }
    }

    /// Gives it a name by which it is known that it goes on.
    #[must_use]
    pub fn called(self, name: &'static str) -> Self {
        Self { name, ..self }
    }

    /// The same, and it takes the place of work begun before under that name.
    #[must_use]
    pub fn in_place(self, name: &'static str) -> Self {
        Self { name, replaces: true, ..self }
    }

    /// Work that reads a file to look at it.
    pub fn reading(path: &Path, failed: impl Into<String>) -> Self {
        Self::looks(t!("app-reading-path", path = name_of(path)), failed)
    }

    /// Work that writes to a path.
    pub fn writing(path: &Path, failed: impl Into<String>) -> Self {
        Self::writes(t!("app-writing", path = name_of(path)), failed)
    }

    fn waited_for(&self, leaving: &Leaving) -> bool {
        match self.does {
            Does::Looks => false,
            Does::Writes => *leaving == Leaving::Quit,
            Does::Issues => true,
        }
    }
}

/// Which state of which farm something was asked of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Moment {
    farm: u64,
    revision: u64,
}

/// Work that goes on.
struct Running {
    number: u64,
    task: Task,
    going: Going,
    began: Instant,
    answer: Box<dyn Answer>,
}

/// The work of a desk.
#[derive(Default)]
pub(super) struct Work {
    running: Vec<Running>,
    begun: u64,
    /// What follows when nothing has to be waited for any more.
    leaving: Option<Leaving>,
    before: Option<Before>,
}

/// What is done on the thread of work before it.
type Before = Arc<dyn Fn() + Send + Sync>;

/// The result of work, whatever it is.
trait Answer {
    /// Whether it is there, waiting so long for it.
    fn is_there(&mut self, wait: Duration) -> bool;
    /// Takes it.
    fn take(self: Box<Self>, desk: &mut Desk, task: &Task);
}

struct Of<T, F> {
    job: Job<Result<T, Failed>>,
    came: Option<Outcome<Result<T, Failed>>>,
    then: F,
}

impl<T: Send + 'static, F: FnOnce(&mut Desk, T)> Answer for Of<T, F> {
    fn is_there(&mut self, wait: Duration) -> bool {
        if self.came.is_none() {
            self.came = self.job.ended(wait);
        }
        self.came.is_some()
    }

    fn take(self: Box<Self>, desk: &mut Desk, task: &Task) {
        match self.came {
            Some(Outcome::Done(Ok(done))) => (self.then)(desk, done),
            Some(Outcome::Done(Err(Failed::Cancelled))) => desk.tell(cancelled(task)),
            Some(Outcome::Done(Err(Failed::Because(why))) | Outcome::Died(why)) => {
                if task.name == super::OPENING {
                    desk.gave_up_first();
                }
                desk.tell_problem(format!("{}: {why}", task.failed));
            }
            None => {}
        }
    }
}

fn cancelled(task: &Task) -> String {
    if task.does == Does::Looks {
        t!("app-it-was-cancelled", failed = task.failed)
    } else {
        t!("app-it-was-cancelled-and-no-file", failed = task.failed)
    }
}

impl Desk {
    /// Begins work on a thread of its own; `then` takes what it gives, at the beginning of a frame. Where it fails, breaks down or
    /// is cancelled, that is said at the foot, and `then` is not called.
    pub fn start<T: Send + 'static>(
        &mut self,
        task: Task,
        work: impl FnOnce(&Going) -> Result<T, Failed> + Send + 'static,
        then: impl FnOnce(&mut Self, T) + 'static,
    ) {
        if task.replaces {
            self.forget_work(|other| other.name == task.name);
        }
        let going = Going::default();
        let own = going.clone();
        let before = self.work.before.clone();
        let job = Job::start(self.ctx.as_ref(), move || {
            if let Some(before) = before {
                before();
            }
            match work(&own) {
                // Whatever a reader makes of being stopped.
                Err(_) if own.is_cancelled() => Err(Failed::Cancelled),
                done => done,
            }
        });
        let mut answer = Box::new(Of { job, came: None, then });
        // What takes no longer than a frame is there in the next one.
        if answer.is_there(self.patience)
            && let Some(ctx) = &self.ctx
        {
            ctx.request_repaint();
        }
        self.work.begun += 1;
        self.work.running.push(Running { number: self.work.begun, task, going, began: Instant::now(), answer });
    }

    /// Whether work goes on under a name.
    pub(crate) fn is_at_work(&self, name: &str) -> bool {
        self.work.running.iter().any(|running| running.task.name == name)
    }

    /// Says where a result stands, where that is not in front any more.
    pub(crate) fn tell_where(&mut self, view: View, what: &str) {
        if self.view != view {
            self.tell(t!("app-look-at-it-in", what = what, view = view.name()));
        }
    }

    /// Which state of which farm is open.
    pub(crate) fn moment(&self) -> Moment {
        Moment { farm: self.farm_number, revision: self.document.revision() }
    }

    /// What is said beside a file that holds the farm of another moment.
    pub(crate) fn since(&self, asked: Moment) -> &'static str {
        if self.moment() == asked { "" } else { t!("app-as-the-farm-was-when-you") }
    }

    /// Shows work that takes longer than another time than the usual, which never is or always is over in a test.
    #[must_use]
    pub fn show_work_after(mut self, time: Duration) -> Self {
        self.shown_after = time;
        self
    }

    /// Has all work do this first, on its thread; a test holds it there.
    #[must_use]
    pub fn before_work(mut self, before: impl Fn() + Send + Sync + 'static) -> Self {
        self.work.before = Some(Arc::new(before));
        self
    }

    /// Takes the results that are there, as each frame of the whole desk does first.
    pub fn finish_work(&mut self) {
        let before = std::mem::take(&mut self.work.running);
        let mut over = Vec::new();
        for mut running in before {
            if running.answer.is_there(Duration::ZERO) {
                over.push(running);
            } else {
                self.work.running.push(running);
            }
        }
        for running in over {
            let (took, began) = (running.began.elapsed(), Instant::now());
            running.answer.take(self, &running.task);
            let words = &running.task.words;
            log::debug!("{words}: {} ms, taken in {} ms", took.as_millis(), began.elapsed().as_millis());
        }
        if let Some(leaving) = self
            .work
            .leaving
            .take_if(|leaving| !self.work.running.iter().any(|running| running.task.waited_for(leaving)))
        {
            let command = match leaving {
                Leaving::Quit => Command::Quit,
                Leaving::To(command) => command,
            };
            if let Some(ctx) = self.ctx.clone() {
                self.run(command, &ctx);
            }
        }
    }

    /// The work that leaving has to wait for, if there is any.
    pub(super) fn waited_for(&self, leaving: &Leaving) -> Option<&Task> {
        self.work.running.iter().map(|running| &running.task).find(|task| task.waited_for(leaving))
    }

    /// Whether leaving has to wait for work, which then is followed by it.
    pub(super) fn wait_for_work(&mut self, leaving: &Leaving) -> bool {
        let Some(task) = self.waited_for(leaving) else { return false };
        let words = match leaving {
            Leaving::Quit => t!("app-goes-on-the-window-closes", words = task.words),
            Leaving::To(_) => t!("app-goes-on-the-farm-stays-open", words = task.words),
        };
        self.work.leaving = Some(leaving.clone());
        self.tell(words);
        true
    }

    /// Ends work of which nobody is told.
    fn forget_work(&mut self, is_meant: impl Fn(&Task) -> bool) {
        self.work.running.retain(|running| {
            let goes = is_meant(&running.task);
            if goes {
                running.going.cancel();
            }
            !goes
        });
    }

    /// Ends the search for work that was not saved before.
    pub(super) fn forget_unsaved(&mut self) {
        self.forget_work(|task| task.name == super::recovery::UNSAVED);
    }

    /// Ends what was looked at for a farm that is gone.
    pub(super) fn forget_looks(&mut self) {
        self.forget_work(|task| task.does == Does::Looks);
    }

    /// Whether any work can be cancelled.
    pub(super) fn can_cancel(&self) -> bool {
        self.work.running.iter().any(|running| !running.going.is_cancelled())
    }

    /// Cancels what was begun last and is not cancelled yet.
    pub(super) fn cancel_latest(&mut self) {
        let latest = self.work.running.iter().rev().find(|running| !running.going.is_cancelled());
        if let Some(number) = latest.map(|running| running.number) {
            self.cancel(number);
        }
    }

    fn cancel(&mut self, number: u64) {
        let Some(at) = self.work.running.iter().position(|running| running.number == number) else { return };
        let Some(running) = self.work.running.get(at) else { return };
        running.going.cancel();
        // A writer may be past the point where it can stop, so its word is waited for.
        if running.task.does == Does::Looks {
            let running = self.work.running.remove(at);
            if running.task.name == super::OPENING {
                self.gave_up_first();
            }
            self.tell(cancelled(&running.task));
        }
    }

    /// Ends all work as the window closes.
    pub(super) fn settle_work(&mut self) {
        self.forget_work(|_| true);
    }

    /// Shows what goes on, each in a line.
    pub(super) fn show_work(&mut self, ui: &mut Ui) {
        let mut given_up = None;
        let after = self.shown_after;
        if let Some(sooner) = self
            .work
            .running
            .iter()
            .map(|running| after.checked_sub(running.began.elapsed()).unwrap_or(DRAWN_EVERY))
            .min()
        {
            ui.ctx().request_repaint_after(sooner);
        }
        let is_shown = |running: &&Running| running.began.elapsed() >= after;
        if !self.work.running.iter().any(|running| is_shown(&running)) {
            return;
        }
        Panel::bottom("work").frame(look::foot(ui)).show(ui, |ui| {
            for running in self.work.running.iter().filter(is_shown) {
                ui.push_id(running.number, |ui| {
                    if line(ui, running) {
                        given_up = Some(running.number);
                    }
                });
            }
        });
        if let Some(number) = given_up {
            self.cancel(number);
        }
    }

    /// How far the reading of the first farm is, in words.
    pub(super) fn first_work(&self) -> Option<(String, String)> {
        let running = self.work.running.iter().find(|running| running.task.name == super::OPENING)?;
        (running.began.elapsed() >= self.shown_after).then(|| (running.task.words.clone(), so_far(running)))
    }
}

/// A line of what goes on; gives whether it is cancelled.
fn line(ui: &mut Ui, running: &Running) -> bool {
    let mut is_cancelled = false;
    ui.horizontal(|ui| {
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            if running.going.is_cancelled() {
                ui.label(look::soft(ui, t!("app-ending")));
            } else {
                let button = boxes::act(ui, t!("app-cancel"))
                    .accessible_name(t!("app-cancel-words", words = running.task.words));
                if button.has_focus() {
                    // Else Escape would only take the keyboard off the button.
                    let filter = EventFilter { escape: true, ..EventFilter::default() };
                    ui.memory_mut(|memory| memory.set_focus_lock_filter(button.id, filter));
                }
                let escaped =
                    button.has_focus() && ui.input_mut(|input| input.consume_key(Modifiers::NONE, Key::Escape));
                is_cancelled = button.clicked() || escaped;
            }
            ui.with_layout(Layout::left_to_right(Align::Center), |ui| {
                ui.label(RichText::new(&running.task.words));
                ui.add(egui::Label::new(look::soft(ui, so_far(running))).truncate());
            });
        });
    });
    is_cancelled
}

/// "12,400 of 20,000 records, 3 s".
fn so_far(running: &Running) -> String {
    let counted = running.task.pieces.map(|(one, many)| match running.going.so_far() {
        (0, None) => String::new(),
        (done, None) => count(done, one, many),
        (done, Some(of)) => t!("app-done-of-count", done = done, count = count(of, one, many)),
    });
    let seconds = running.began.elapsed().as_secs();
    let time = match seconds {
        0 => String::new(),
        1..60 => format!("{seconds} s"),
        _ => t!("app-min-s", minutes = seconds / 60, seconds = seconds % 60),
    };
    let parts: Vec<String> = counted.into_iter().chain([time]).filter(|part| !part.is_empty()).collect();
    parts.join(", ")
}
