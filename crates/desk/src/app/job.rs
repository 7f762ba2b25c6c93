//! Work on a thread of its own, since a disk may be slow and a share may hang.

use std::sync::mpsc::{Receiver, RecvTimeoutError, channel};
use std::time::Duration;

use egui::Context;

/// What came of work.
pub(super) enum Outcome<T> {
    /// It is done.
    Done(T),
    /// Its thread ended without an answer.
    Died,
}

/// Something that is done on another thread.
pub(super) struct Job<T>(Receiver<T>);

impl<T: Send + 'static> Job<T> {
    /// Begins it; the window is drawn anew when it is done.
    pub(super) fn start(ctx: Option<&Context>, work: impl FnOnce() -> T + Send + 'static) -> Self {
        let (sender, receiver) = channel();
        let ctx = ctx.cloned();
        std::thread::spawn(move || {
            // The window may have been closed meanwhile; then nobody waits for the answer.
            let _ = sender.send(work());
            if let Some(ctx) = ctx {
                ctx.request_repaint();
            }
        });
        Self(receiver)
    }

    /// What came of it, once it is over, waiting so long for it.
    pub(super) fn ended(&self, wait: Duration) -> Option<Outcome<T>> {
        match self.0.recv_timeout(wait) {
            Ok(done) => Some(Outcome::Done(done)),
            Err(RecvTimeoutError::Disconnected) => Some(Outcome::Died),
            Err(RecvTimeoutError::Timeout) => None,
        }
    }
}
