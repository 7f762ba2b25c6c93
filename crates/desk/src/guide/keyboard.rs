//! The page on the keyboard: what it says of keys is made from the commands and the keys of places that the desk itself asks, so that it
//! is never out of date.

use crate::command::Command;
use crate::keys;
use tankard_core::t;

/// The name of the page.
pub const NAME: &str = "keyboard";

/// The page as Markdown, which its file holds as well, for who reads it without the program.
pub fn page() -> String {
    let mut page = format!(
        "# {}\n\n{}\n\n## {}\n\n",
        t!("guide-keyboard"),
        t!("guide-everything-is-reached-with-tab"),
        t!("guide-everywhere")
    );
    for command in Command::LISTED.iter().filter(|command| !command.keys().is_empty()) {
        page.extend([format!("- {}: **{}**\n", keys::any_of(command.keys()), command.text())]);
    }
    page.push_str(t!("guide-find-anything-looks-for-parts-of"));
    for (place, locals) in keys::PLACES {
        page.extend([format!("\n## {}\n\n", place())]);
        for local in locals {
            page.extend([format!("- {}: {}\n", keys::any_of(local.keys), (local.does)())]);
        }
    }
    page.push_str(t!("guide-every-point-on-the-map-can"));
    page
}
