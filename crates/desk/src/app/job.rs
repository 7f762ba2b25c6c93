//! Work on a thread of its own, since a disk may be slow, a share may hang and a large farm takes its time.
//!
//! A [`Job`] is the thread with what it gives; what a person asked for and waits for stands in [`super::work`].

use std::any::Any;
use std::cell::RefCell;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::sync::mpsc::{Receiver, RecvTimeoutError, channel};
use std::thread::JoinHandle;
use std::time::Duration;
use tankard_core::language::as_here;
use tankard_core::t;

use egui::Context;
use tankard_core::progress::Cancelled;

/// What came of work.
pub(super) enum Outcome<T> {
    /// It is done.
    Done(T),
    /// Its thread ended without an answer; why, as far as that is known.
    Died(String),
}

/// Something that is done on another thread.
pub(super) struct Job<T> {
    answer: Receiver<T>,
    thread: RefCell<Option<JoinHandle<()>>>,
}

impl<T: Send + 'static> Job<T> {
    /// Begins it; the window is drawn anew when it is done.
    pub(super) fn start(ctx: Option<&Context>, work: impl FnOnce() -> T + Send + 'static) -> Self {
        let (sender, answer) = channel();
        let wake = Wake(ctx.cloned());
        let work = as_here(work);
        let thread = std::thread::spawn(move || {
            // Declared first, so dropped last: also where the work breaks down, the window hears of it.
            let _wake = wake;
            let sender = sender;
            // The window may have been closed meanwhile; then nobody waits for the answer.
            let _ = sender.send(work());
        });
        Self { answer, thread: RefCell::new(Some(thread)) }
    }

    /// What came of it, once it is over, waiting so long for it.
    pub(super) fn ended(&self, wait: Duration) -> Option<Outcome<T>> {
        match self.answer.recv_timeout(wait) {
            Ok(done) => Some(Outcome::Done(done)),
            Err(RecvTimeoutError::Disconnected) => Some(Outcome::Died(self.why())),
            Err(RecvTimeoutError::Timeout) => None,
        }
    }

    /// What the thread said as it broke down.
    fn why(&self) -> String {
        let broke = self.thread.borrow_mut().take().and_then(|thread| thread.join().err());
        let said = broke.as_deref().and_then(said).map(|said| format!(" ({said})")).unwrap_or_default();
        t!("app-the-work-on-it-ended-without", said = said)
    }
}

/// The words of a thread that broke down.
fn said(broke: &(dyn Any + Send)) -> Option<&str> {
    broke.downcast_ref::<&str>().copied().or_else(|| broke.downcast_ref::<String>().map(String::as_str))
}

/// Has the window drawn anew when it is dropped.
struct Wake(Option<Context>);

impl Drop for Wake {
    fn drop(&mut self) {
        if let Some(ctx) = &self.0 {
            ctx.request_repaint();
        }
    }
}

/// What work and window know of one another: how far the work is, and whether it is still wanted.
#[derive(Clone, Debug, Default)]
pub struct Going(Arc<Shared>);

#[derive(Debug, Default)]
struct Shared {
    is_cancelled: AtomicBool,
    done: AtomicUsize,
    /// None known while it is 0.
    of: AtomicUsize,
}

impl Going {
    /// Takes note of how far the work is.
    ///
    /// # Errors
    /// [`Cancelled`] where it is to end now.
    pub fn tell(&self, done: usize, of: Option<usize>) -> Result<(), Cancelled> {
        self.0.done.store(done, Ordering::Relaxed);
        self.0.of.store(of.unwrap_or_default(), Ordering::Relaxed);
        self.goes_on()
    }

    /// Asks whether the work is still wanted, where it is no further than before.
    ///
    /// # Errors
    /// [`Cancelled`] where it is to end now.
    pub fn goes_on(&self) -> Result<(), Cancelled> {
        if self.is_cancelled() { Err(Cancelled) } else { Ok(()) }
    }

    /// Whether it is to end now.
    pub fn is_cancelled(&self) -> bool {
        self.0.is_cancelled.load(Ordering::Relaxed)
    }

    /// Has it end at the next piece.
    pub(super) fn cancel(&self) {
        self.0.is_cancelled.store(true, Ordering::Relaxed);
    }

    /// How many pieces are done, and of how many.
    pub(super) fn so_far(&self) -> (usize, Option<usize>) {
        let of = self.0.of.load(Ordering::Relaxed);
        (self.0.done.load(Ordering::Relaxed), (of > 0).then_some(of))
    }
}
