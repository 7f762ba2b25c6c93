//! What is typed in one go, as frames get it: a key that moves the keyboard has a frame of its own, so that on a slow machine too what
//! is typed after it goes to where it led.

use std::collections::VecDeque;

use egui::{Event, Key};

/// Events that wait for their frame.
#[derive(Debug, Default)]
pub(super) struct Turns {
    waiting: VecDeque<Event>,
}

impl Turns {
    /// The events of this frame, of those that came and those that still wait. While something `is_wanted` by the keyboard nothing that
    /// is typed goes elsewhere.
    pub(super) fn next(&mut self, came: &mut Vec<Event>, is_wanted: bool) {
        self.waiting.extend(came.drain(..));
        let (mut typed, mut turned) = (false, is_wanted);
        while let Some(event) = self.waiting.front() {
            let (turns, types) = (turns(event), types(event));
            if (turns && (typed || turned)) || (types && turned) {
                return;
            }
            turned |= turns;
            typed |= types;
            came.extend(self.waiting.pop_front());
        }
    }

    /// Whether another frame is needed.
    pub(super) fn is_waiting(&self) -> bool {
        !self.waiting.is_empty()
    }
}

/// Whether a key may move the keyboard, or lead to another page.
fn turns(event: &Event) -> bool {
    let Event::Key { key, pressed: true, modifiers, .. } = event else { return false };
    let name = key.name();
    // Those of a box itself: all, copy, paste, cut, do again, undo.
    let edits = ["A", "C", "V", "X", "Y", "Z"];
    matches!(key, Key::Tab | Key::Enter)
        || (name.starts_with('F') && name.len() > 1)
        || (modifiers.command && name.len() == 1 && !edits.contains(&name))
}

/// Whether it goes to what has the keyboard.
fn types(event: &Event) -> bool {
    matches!(event, Event::Text(_) | Event::Paste(_) | Event::Cut | Event::Copy | Event::Ime(_))
        || (matches!(event, Event::Key { pressed: true, .. }) && !turns(event))
}

#[cfg(test)]
mod tests {
    use super::Turns;
    use egui::{Event, Key, Modifiers};

    fn key(key: Key, pressed: bool) -> Event {
        Event::Key { key, physical_key: None, pressed, repeat: false, modifiers: Modifiers::NONE }
    }

    /// "8" with a key, Tab, "15" and Enter in one frame, as a slow one gets them.
    fn typed() -> Vec<Event> {
        let mut events = vec![key(Key::Space, true), Event::Text("8".to_owned()), key(Key::Space, false)];
        events.extend([key(Key::Tab, true), key(Key::Tab, false)]);
        events.extend([Event::Text("1".to_owned()), Event::PointerGone, Event::Text("5".to_owned())]);
        events.push(key(Key::Enter, true));
        events
    }

    #[test]
    fn each_turn_has_its_frame_and_nothing_is_lost_or_overtaken() {
        let mut turns = Turns::default();
        let mut frames = vec![typed()];
        turns.next(&mut frames[0], false);
        while turns.is_waiting() {
            let mut frame = Vec::new();
            turns.next(&mut frame, false);
            frames.push(frame);
        }
        assert_eq!(frames.iter().map(Vec::len).collect::<Vec<_>>(), [3, 2, 3, 1]);
        assert_eq!(frames.concat(), typed());
    }

    #[test]
    fn what_is_typed_waits_for_what_is_wanted() {
        let mut turns = Turns::default();
        let mut frame = vec![Event::PointerGone, Event::Text("8".to_owned())];
        turns.next(&mut frame, true);
        assert_eq!(frame, [Event::PointerGone]);
        let mut frame = Vec::new();
        turns.next(&mut frame, false);
        assert_eq!(frame, [Event::Text("8".to_owned())]);
    }
}
