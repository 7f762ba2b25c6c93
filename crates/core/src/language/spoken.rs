//! The language that is spoken: which messages [`t!`](crate::t) takes.
//!
//! The one thing in the core that is not handed from function to function, since each word would have to carry it. It changes words
//! and nothing else: no number, level or order follows from it. It belongs to a thread, and is English until something else is set.

use std::cell::Cell;
use std::fmt::Display;

use super::{Language, bundles};

/// How a thread speaks.
#[derive(Clone, Copy)]
struct Voice {
    language: Language,
    /// Whether English is said longer than it is.
    is_long: bool,
}

thread_local! {
    static SPOKEN: Cell<Voice> = const { Cell::new(Voice { language: Language::English, is_long: false }) };
}

/// The language of this thread.
pub fn spoken() -> Language {
    SPOKEN.get().language
}

/// Speaks a language on this thread from here on.
pub fn speak(language: Language) {
    SPOKEN.set(Voice { language, ..SPOKEN.get() });
}

/// Says English on this thread with every word two fifths longer, as another language might be: for looking whether all of it still has its
/// place on the screen, and for nothing else.
#[doc(hidden)]
pub fn lengthen(is_long: bool) {
    SPOKEN.set(Voice { is_long, ..SPOKEN.get() });
}

/// Whether English is said longer than it is.
pub(super) fn is_long() -> bool {
    SPOKEN.get().is_long
}

/// Says something in a language; afterwards the thread speaks as before, also where it broke off.
///
/// ```
/// use tankard_core::language::{Language, speaking, spoken};
/// use tankard_core::t;
/// assert_eq!(speaking(Language::Spanish, || t!("card-month-1")), "enero");
/// assert_eq!(spoken(), Language::English);
/// ```
pub fn speaking<T>(language: Language, say: impl FnOnce() -> T) -> T {
    with_voice(Voice { language, ..SPOKEN.get() }, say)
}

fn with_voice<T>(voice: Voice, say: impl FnOnce() -> T) -> T {
    struct Back(Voice);
    impl Drop for Back {
        fn drop(&mut self) {
            SPOKEN.set(self.0);
        }
    }
    let _back = Back(SPOKEN.replace(voice));
    say()
}

/// Work for another thread, which speaks there as this thread does now.
pub fn as_here<T>(work: impl FnOnce() -> T) -> impl FnOnce() -> T {
    let voice = SPOKEN.get();
    move || with_voice(voice, work)
}

/// A sentence of a rule table in the language that is spoken. The tables of `assets/` are in English; each sentence that is shown
/// stands in `rows.ftl` too, word for word. One that does not is said as the table has it.
///
/// ```
/// use tankard_core::language::{Language, row, speaking};
/// let says = "More wind carries more spray off the field";
/// assert_eq!(row(says), says);
/// assert_ne!(speaking(Language::Spanish, || row(says)), says);
/// ```
pub fn row(sentence: &str) -> &str {
    bundles::row(spoken(), sentence)
}

/// The word by which a message chooses between two ways of saying something: `[yes] … *[no] …`.
pub const fn yes_or_no(is: bool) -> &'static str {
    if is { "yes" } else { "no" }
}

/// What `t!` comes to without values.
#[doc(hidden)]
pub fn plain(id: &'static str) -> &'static str {
    bundles::plain(spoken(), id)
}

/// What `t!` comes to with values.
#[doc(hidden)]
pub fn filled(id: &'static str, with: &[(&str, &dyn Display)]) -> String {
    bundles::filled(spoken(), id, with)
}

/// A message of the files under `assets/words/` in the language that is spoken: a `&'static str` where nothing stands in it, else a
/// `String`. A value that a message chooses by is a count, or a word that the message names. A day, a time of day or a moment is said as
/// [`days`](crate::language::days) says it.
///
/// ```
/// use tankard_core::t;
/// assert_eq!(t!("card-month-1"), "January");
/// assert_eq!(t!("card-load", load = 2, of = 5), "Load 2 of 5");
/// assert_eq!(t!("label-not-before", day = jiff::civil::date(2031, 6, 12)), t!("label-not-before", day = "12 June 2031"));
/// ```
#[macro_export]
macro_rules! t {
    ($id:literal) => {
        $crate::language::plain($id)
    };
    ($id:literal, $($name:ident = $value:expr),+ $(,)?) => {
        $crate::language::filled(
            $id,
            &[$((
                stringify!($name),
                &$crate::language::days::Value::of(&$value).said() as &dyn ::std::fmt::Display,
            )),+],
        )
    };
}
