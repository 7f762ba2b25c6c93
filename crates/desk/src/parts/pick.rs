//! The open list of a choice, by keyboard: it opens at what is chosen, and letters lead to the row that begins with them.

use egui::{Align, Event, Key, Ui};
use tankard_core::fold::folded;

/// How long letters belong together, in seconds.
const TOGETHER: f64 = 1.0;

/// What is known of an open list from frame to frame.
#[derive(Clone, Debug, Default)]
struct Open {
    /// The frame in which it was last drawn; a list that was not in the one before opens anew.
    drawn: u64,
    /// Whether the row that is chosen is still to take the keyboard: not while the key that opened the list is down, which would be
    /// taken for one that leads on from its box.
    is_new: bool,
    /// The letters typed so far.
    letters: String,
    /// When the last of them was.
    at: f64,
}

/// Draws the rows and gives the place of the one that was chosen in this frame.
pub fn rows(ui: &mut Ui, rows: &[String], chosen: Option<usize>) -> Option<usize> {
    let id = ui.scope_id().with("open list");
    let mut open: Open = ui.data(|data| data.get_temp(id)).unwrap_or_default();
    let pass = ui.ctx().cumulative_pass_nr();
    let opens = open.drawn + 1 < pass;
    if opens {
        open.letters.clear();
        ui.ctx().request_repaint();
    }
    open.drawn = pass;
    let begins = std::mem::replace(&mut open.is_new, opens) && !opens;
    let typed = letters(ui, &mut open);
    let lead_to =
        if typed { begins_with(rows, &folded(&open.letters)) } else { begins.then(|| chosen.unwrap_or_default()) };
    ui.data_mut(|data| data.insert_temp(id, open));
    let mut clicked = None;
    for (at, row) in rows.iter().enumerate() {
        let response = ui.selectable_label(chosen == Some(at), row);
        if lead_to == Some(at) {
            response.request_focus();
            response.scroll_to_me(Some(Align::Center));
        }
        if response.clicked() {
            clicked = Some(at);
        }
    }
    clicked
}

/// Takes the letters that were typed out of the frame. A blank is a letter only after another, else it chooses.
fn letters(ui: &Ui, open: &mut Open) -> bool {
    ui.input_mut(|input| {
        let now = input.time;
        if now - open.at > TOGETHER {
            open.letters.clear();
        }
        let before = open.letters.len();
        input.events.retain(|event| match event {
            Event::Text(text) if !open.letters.is_empty() || !text.trim().is_empty() => {
                open.letters.push_str(text);
                open.at = now;
                false
            }
            Event::Key { key: Key::Space, .. } => open.letters.is_empty(),
            _ => true,
        });
        open.letters.len() > before
    })
}

/// The first row that begins with the letters, or else one of whose words does.
fn begins_with(rows: &[String], letters: &str) -> Option<usize> {
    let rows: Vec<String> = rows.iter().map(|row| folded(row)).collect();
    let word = |row: &String| row.split(|c: char| !c.is_alphanumeric()).any(|word| word.starts_with(letters));
    rows.iter().position(|row| row.starts_with(letters)).or_else(|| rows.iter().position(word))
}

#[cfg(test)]
mod tests {
    use super::begins_with;

    #[test]
    fn letters_lead_to_a_row() {
        let rows: Vec<String> =
            ["not stated", "fine", "coarse", "very coarse", "extremely coarse", "élevé"].map(str::to_owned).into();
        for (letters, at) in [
            ("v", Some(3)),
            ("very c", Some(3)),
            ("c", Some(2)),
            ("coarse", Some(2)),
            ("stated", Some(0)),
            ("elev", Some(5)),
            ("x", None),
        ] {
            assert_eq!(begins_with(&rows, letters), at, "{letters}");
        }
    }
}
