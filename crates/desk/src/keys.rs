//! Keys that do something at one place of the desk: what each does in words, and the keys themselves, which the place asks for here.
//! With the commands they make the list of all keys, so that the list says what is so.

use egui::{Context, Key, Modifiers};
use tankard_core::t;

/// Words in the language that is spoken when they are asked for.
pub type Said = fn() -> &'static str;

/// What a key does at its place.
#[derive(Clone, Copy, Debug)]
pub struct Local {
    /// In words.
    pub does: Said,
    /// The keys, any of which does it.
    pub keys: &'static [(Modifiers, Key)],
}

const NONE: Modifiers = Modifiers::NONE;
const SHIFT: Modifiers = Modifiers::SHIFT;

const fn local(does: Said, keys: &'static [(Modifiers, Key)]) -> Local {
    Local { does, keys }
}

impl Local {
    /// Whether it was pressed; it is then taken away, so that nothing else sees it.
    pub fn taken(&self, ctx: &Context) -> bool {
        self.keys.iter().any(|(modifiers, key)| ctx.input_mut(|input| input.consume_key(*modifiers, *key)))
    }

    /// Whether it was pressed; others may see it, too.
    pub fn pressed(&self, ctx: &Context) -> bool {
        self.keys.iter().any(|(modifiers, key)| {
            ctx.input(|input| input.key_pressed(*key) && input.modifiers.matches_logically(*modifiers))
        })
    }
}

/// Where what can be found is listed.
pub mod finding {
    use super::{Key, Local, NONE, SHIFT, local, t};
    /// The next.
    pub const NEXT: Local = local(|| t!("keys-the-next-of-what-is-found"), &[(NONE, Key::ArrowDown), (NONE, Key::Tab)]);
    /// The one before.
    pub const BEFORE: Local = local(|| t!("keys-the-one-before"), &[(NONE, Key::ArrowUp), (SHIFT, Key::Tab)]);
    /// A sight further.
    pub const FURTHER: Local = local(|| t!("keys-eight-further"), &[(NONE, Key::PageDown)]);
    /// A sight back.
    pub const BACK: Local = local(|| t!("keys-eight-back"), &[(NONE, Key::PageUp)]);
    /// Goes there.
    pub const GO: Local = local(|| t!("keys-go-there"), &[(NONE, Key::Enter)]);
    /// Leaves.
    pub const LEAVE: Local = local(|| t!("keys-leave-it-and-be-where-you-were"), &[(NONE, Key::Escape)]);
    pub(super) const ALL: &[&Local] = &[&NEXT, &BEFORE, &FURTHER, &BACK, &GO, &LEAVE];
}

/// In a box that holds a figure which was probably typed wrongly.
pub mod offer {
    use super::{Key, Local, NONE, local, t};
    /// Takes it.
    pub const TAKE: Local = local(|| t!("keys-take-the-likely-figure-that-is-offered"), &[(NONE, Key::F2)]);
    pub(super) const ALL: &[&Local] = &[&TAKE];
}

/// In the guide.
pub mod guide {
    use super::{Key, Local, Modifiers, NONE, local, t};
    /// Goes back.
    pub const BACK: Local = local(|| t!("keys-go-back"), &[(Modifiers::ALT, Key::ArrowLeft)]);
    pub use super::page::{DOWN, UP};
    /// To the end.
    pub const END: Local = local(|| t!("keys-to-the-end-of-the-page-but"), &[(NONE, Key::End)]);
    /// To the beginning.
    pub const HOME: Local = local(|| t!("keys-to-its-beginning-but-in-a-box"), &[(NONE, Key::Home)]);
    pub(super) const ALL: &[&Local] = &[&BACK, &DOWN, &UP, &END, &HOME];
}

/// Pages that are read.
pub mod page {
    use super::{Key, Local, NONE, local, t};
    /// Down.
    pub const DOWN: Local = local(|| t!("keys-down"), &[(NONE, Key::PageDown)]);
    /// Up.
    pub const UP: Local = local(|| t!("keys-up"), &[(NONE, Key::PageUp)]);
    /// To the end.
    pub const END: Local = local(|| t!("keys-to-the-end-of-the-page"), &[(NONE, Key::End)]);
    /// To the beginning.
    pub const HOME: Local = local(|| t!("keys-to-its-beginning"), &[(NONE, Key::Home)]);
    pub(super) const ALL: &[&Local] = &[&DOWN, &UP, &END, &HOME];
}

/// Rows of records.
pub mod rows {
    use super::{Key, Local, NONE, local, t};
    /// The next.
    pub const NEXT: Local = local(|| t!("keys-open-the-next-record"), &[(NONE, Key::ArrowDown)]);
    /// The one before.
    pub const BEFORE: Local = local(|| t!("keys-open-the-one-before"), &[(NONE, Key::ArrowUp)]);
    pub(super) const ALL: &[&Local] = &[&NEXT, &BEFORE];
}

/// Hours, and the passes of a day in their order.
pub mod strip {
    use super::{Key, Local, NONE, local, t};
    /// The next.
    pub const NEXT: Local = local(|| t!("keys-the-next-hour-or-the-pass-held"), &[(NONE, Key::ArrowRight)]);
    /// The one before.
    pub const BEFORE: Local = local(|| t!("keys-the-hour-before-or-the-pass-held"), &[(NONE, Key::ArrowLeft)]);
    pub(super) const ALL: &[&Local] = &[&NEXT, &BEFORE];
}

/// On the map.
pub mod map {
    use super::{Key, Local, NONE, SHIFT, local, t};
    /// To the left.
    pub const LEFT: Local = local(|| t!("keys-move-to-the-left"), &[(NONE, Key::ArrowLeft)]);
    /// To the right.
    pub const RIGHT: Local = local(|| t!("keys-move-to-the-right"), &[(NONE, Key::ArrowRight)]);
    /// Up.
    pub const UP: Local = local(|| t!("keys-move-up"), &[(NONE, Key::ArrowUp)]);
    /// Down.
    pub const DOWN: Local = local(|| t!("keys-move-down"), &[(NONE, Key::ArrowDown)]);
    /// Closer. Where Plus lies is not the same on all keyboards.
    pub const CLOSER: Local = local(
        || t!("keys-closer"),
        &[(NONE, Key::Plus), (NONE, Key::Equals), (SHIFT, Key::Plus), (SHIFT, Key::Equals)],
    );
    /// Further away.
    pub const AWAY: Local = local(|| t!("keys-further-away"), &[(NONE, Key::Minus)]);
    /// All.
    pub const ALL_OF_IT: Local = local(|| t!("keys-show-all-of-the-farm"), &[(NONE, Key::Home)]);
    /// The chosen field.
    pub const FIELD: Local = local(|| t!("keys-show-the-chosen-field"), &[(NONE, Key::F)]);
    /// The field before.
    pub const FIELD_BEFORE: Local = local(|| t!("keys-choose-the-field-before"), &[(NONE, Key::PageUp)]);
    /// The next field.
    pub const FIELD_NEXT: Local = local(|| t!("keys-choose-the-next-field"), &[(NONE, Key::PageDown)]);
    /// A point.
    pub const POINT: Local = local(|| t!("keys-while-you-draw-a-point-in-the"), &[(NONE, Key::Space)]);
    /// Back.
    pub const BACK: Local = local(|| t!("keys-while-you-draw-take-the-last-point"), &[(NONE, Key::Backspace)]);
    /// Finished.
    pub const FINISH: Local = local(|| t!("keys-while-you-draw-finish"), &[(NONE, Key::Enter)]);
    /// A point less.
    pub const TAKE_OUT: Local =
        local(|| t!("keys-while-you-move-points-take-out-the"), &[(NONE, Key::Delete), (NONE, Key::Backspace)]);
    /// Dropped.
    pub const DROP: Local = local(|| t!("keys-while-you-draw-or-move-points-drop"), &[(NONE, Key::Escape)]);
    pub(super) const ALL: &[&Local] = &[
        &LEFT,
        &RIGHT,
        &UP,
        &DOWN,
        &CLOSER,
        &AWAY,
        &ALL_OF_IT,
        &FIELD,
        &FIELD_BEFORE,
        &FIELD_NEXT,
        &POINT,
        &BACK,
        &FINISH,
        &TAKE_OUT,
        &DROP,
    ];
}

/// All of them, by where they hold.
pub const PLACES: [(Said, &[&Local]); 7] = [
    (|| t!("keys-where-you-find-anything"), finding::ALL),
    (|| t!("keys-in-a-box-whose-figure-is-doubted"), offer::ALL),
    (|| t!("keys-in-the-guide"), guide::ALL),
    (|| t!("keys-in-the-review"), page::ALL),
    (|| t!("keys-in-the-list-of-records"), rows::ALL),
    (|| t!("keys-in-a-row-of-hours-and-in"), strip::ALL),
    (|| t!("keys-on-the-map"), map::ALL),
];

/// A key in words, such as "Ctrl+Shift+Z" or "Page Up".
pub fn words(modifiers: Modifiers, key: Key) -> String {
    let mut words = String::new();
    for (is_held, name) in [
        (modifiers.command || modifiers.ctrl, t!("app-ctrl")),
        (modifiers.alt, t!("app-alt")),
        (modifiers.shift, t!("app-shift")),
    ] {
        if is_held {
            words.push_str(name);
        }
    }
    words.push_str(match key {
        Key::ArrowLeft => t!("app-left"),
        Key::ArrowRight => t!("app-right"),
        Key::ArrowUp => t!("app-up"),
        Key::ArrowDown => t!("app-down"),
        Key::PageUp => t!("app-page-up"),
        Key::PageDown => t!("app-page-down"),
        Key::Backspace => t!("app-key-backspace"),
        Key::Delete => t!("app-key-delete"),
        Key::End => t!("app-key-end"),
        Key::Equals => t!("app-key-equals"),
        Key::Home => t!("app-key-home"),
        Key::Minus => t!("app-key-minus"),
        Key::Period => t!("app-key-period"),
        Key::Plus => t!("app-key-plus"),
        Key::Space => t!("app-key-space"),
        key => key.name(),
    });
    words
}

/// Some keys, any of which does the same.
pub fn any_of(keys: &[(Modifiers, Key)]) -> String {
    let mut all: Vec<String> = keys.iter().map(|(modifiers, key)| words(*modifiers, *key)).collect();
    match (all.pop(), all.is_empty()) {
        (Some(last), true) => last,
        (Some(last), false) => t!("app-or", all = all.join(", "), last = last),
        (None, _) => String::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::{PLACES, any_of, finding};
    use crate::command::Command;

    #[test]
    fn keys_are_said_as_they_stand_on_a_keyboard() {
        assert_eq!(any_of(Command::Redo.keys()), "Ctrl+Shift+Z or Ctrl+Y");
        assert_eq!(any_of(Command::Larger.keys()), "Ctrl+Plus");
        assert_eq!(any_of(finding::NEXT.keys), "Down or Tab");
    }

    /// What holds everywhere must not be taken at one place.
    #[test]
    fn no_place_takes_the_key_of_a_command() {
        let everywhere: Vec<_> = Command::LISTED.iter().flat_map(|command| command.keys().iter().copied()).collect();
        for (place, locals) in PLACES {
            for local in locals {
                assert!(local.keys.iter().all(|key| !everywhere.contains(key)), "{}: {}", place(), (local.does)());
            }
        }
    }
}
