//! What long work is told with while it goes on, and how it hears that nobody waits for it any more. Whoever asks for the work
//! brings the function; nothing here knows a clock, a thread or a window.

use crate::language::t;
use thiserror::Error;

/// The work was ended before it was done, since nobody waits for it any more.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
#[error("{}", t!("core-it-was-cancelled"))]
pub struct Cancelled;

/// Is told between two pieces of work how many are done, and of how many where that is known; an error ends the work.
pub type Tell<'a> = dyn Fn(usize, Option<usize>) -> Result<(), Cancelled> + Sync + 'a;

/// For work that nobody looks at.
///
/// # Errors
/// Never.
pub fn untold(_: usize, _: Option<usize>) -> Result<(), Cancelled> {
    Ok(())
}
