//! The page on the keyboard: what it says of keys is made from the commands and the keys of places that the desk itself asks, so that it
//! is never out of date.

use crate::command::Command;
use crate::keys;
use tankard_core::t;

/// The name of the page.
pub const NAME: &str = "keyboard";

/// The page as Markdown, which its file holds as well, for who reads it without the program.
pub fn page() -> String {
    let commands = Command::LISTED.iter().filter(|command| !command.keys().is_empty());
    let commands = commands.map(|command| format!("- {}: **{}**\n", keys::any_of(command.keys()), command.text()));
    let places = keys::PLACES.iter().flat_map(|(place, locals)| {
        let rows = locals.iter().map(|local| format!("- {}: {}\n", keys::any_of(local.keys), (local.does)()));
        std::iter::once(format!("\n## {}\n\n", place())).chain(rows)
    });
    let head = format!(
        "# {}\n\n{}\n\n## {}\n\n",
        t!("guide-keyboard"),
        t!("guide-everything-is-reached-with-tab"),
        t!("guide-everywhere")
    );
    std::iter::once(head)
        .chain(commands)
        .chain([t!("guide-find-anything-looks-for-parts-of").to_owned()])
        .chain(places)
        .chain([t!("guide-every-point-on-the-map-can").to_owned()])
        .collect()
}
