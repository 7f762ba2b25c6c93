//! Everything that can be done from anywhere: one list of commands with their words and keys. Menus, buttons and keys send
//! the same value.

use egui::{Context, Key, KeyboardShortcut, Modifiers};
use tankard_core::language::Language;
use tankard_core::t;

use crate::guide::Place;

/// The four views.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, clap::ValueEnum)]
pub enum View {
    /// Pieces of ground.
    Fields,
    /// Planned passes and their loads.
    #[default]
    TankLoads,
    /// What was sprayed.
    SeasonLog,
    /// Products, waters, rigs, stock.
    Shed,
}

impl View {
    /// All of them, from left to right.
    pub const ALL: [Self; 4] = [Self::Fields, Self::TankLoads, Self::SeasonLog, Self::Shed];

    /// Its name.
    pub fn name(self) -> &'static str {
        match self {
            Self::Fields => t!("app-fields"),
            Self::TankLoads => t!("app-tank-loads"),
            Self::SeasonLog => t!("app-season-log"),
            Self::Shed => t!("app-shed"),
        }
    }
}

/// A page of a view, as far as a command leads there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Spot {
    /// Of Fields: the map.
    Map,
    /// Of the chosen pass: how the rig is set.
    Sprayer,
    /// Of the chosen pass: when it may be sprayed.
    Hours,
    /// Of the chosen pass: its load cards.
    Cards,
    /// Of the chosen pass: its jar test.
    Jar,
    /// Of the season log: two treatments beside one another.
    Trials,
    /// Of the season log: what the records come to.
    Review,
    /// Of the shed.
    Products,
    /// Of the shed.
    Waters,
    /// Of the shed.
    Rigs,
    /// Of the shed: what is on hand.
    Stock,
    /// Of the shed: local advice.
    Advice,
    /// Of the shed: what binds by law.
    Law,
}

impl Spot {
    /// All of them.
    pub const ALL: [Self; 13] = [
        Self::Map,
        Self::Sprayer,
        Self::Hours,
        Self::Cards,
        Self::Jar,
        Self::Trials,
        Self::Review,
        Self::Products,
        Self::Waters,
        Self::Rigs,
        Self::Stock,
        Self::Advice,
        Self::Law,
    ];

    /// Its name, as it stands over the page itself.
    pub fn name(self) -> &'static str {
        match self {
            Self::Map => t!("fields-map"),
            Self::Sprayer => t!("tank-loads-sprayer"),
            Self::Hours => t!("tank-loads-hours-1d4"),
            Self::Cards => t!("tank-loads-load-cards"),
            Self::Jar => t!("tank-loads-jar-test"),
            Self::Trials => t!("season-log-trials"),
            Self::Review => t!("season-log-review"),
            Self::Products => t!("shed-products"),
            Self::Waters => t!("shed-waters"),
            Self::Rigs => t!("shed-rigs"),
            Self::Stock => t!("shed-stock"),
            Self::Advice => t!("shed-advice"),
            Self::Law => t!("shed-law"),
        }
    }

    /// The view that it is a page of.
    pub const fn view(self) -> View {
        match self {
            Self::Map => View::Fields,
            Self::Sprayer | Self::Hours | Self::Cards | Self::Jar => View::TankLoads,
            Self::Trials | Self::Review => View::SeasonLog,
            Self::Products | Self::Waters | Self::Rigs | Self::Stock | Self::Advice | Self::Law => View::Shed,
        }
    }
}

/// A command.
#[derive(Clone, Debug, PartialEq)]
pub enum Command {
    /// Begin a new farm.
    New,
    /// Choose a file and open it.
    Open,
    /// Open this file.
    OpenPath(std::path::PathBuf),
    /// Open a copy of the demo farm.
    OpenDemo,
    /// Save.
    Save,
    /// Choose a file and save there.
    SaveAs,
    /// Show the page of the farm itself.
    FarmPage,
    /// Show what the program is, and what it is built from.
    About,
    /// Show the backups of the farm.
    Backups,
    /// Choose a file of boundaries and look at it.
    ImportBoundaries,
    /// Save the boundaries as GeoJSON.
    ExportBoundaries,
    /// Save the chosen pass as task data for a terminal.
    ExportTaskData,
    /// A record of the pass that is chosen, as planned, to type over what differed.
    RecordPass,
    /// One step back.
    Undo,
    /// One step forward.
    Redo,
    /// Find anything by its words.
    Find,
    /// Show a view.
    Go(View),
    /// Show a page of a view.
    Show(Spot),
    /// Cancel the work that was begun last.
    CancelWork,
    /// Larger.
    Larger,
    /// Smaller.
    Smaller,
    /// At 100 %.
    PlainSize,
    /// Light theme.
    Light,
    /// Dark theme.
    Dark,
    /// Speak another language.
    Speak(Language),
    /// Go to what comes next on a new farm.
    NextStep,
    /// Show the line that says what comes next on a new farm, or hide it.
    FirstSteps,
    /// Show the guide where it was left, or put it away.
    Guide,
    /// Show which keys there are.
    Keys,
    /// Show the list of a view or put it away; in a small window in place of the page.
    List,
    /// Show a place of the guide.
    GuideTo(Place),
    /// Let things move into their place, or have them there at once.
    Motion,
    /// Close the desk.
    Quit,
}

impl Command {
    /// Those that stand alone: each has a key, or stands in a menu, or is found by its words.
    pub const LISTED: [Self; 44] = [
        Self::Find,
        Self::Guide,
        Self::Keys,
        Self::Go(View::Fields),
        Self::Go(View::TankLoads),
        Self::Go(View::SeasonLog),
        Self::Go(View::Shed),
        Self::RecordPass,
        Self::New,
        Self::Open,
        Self::OpenDemo,
        Self::Save,
        Self::SaveAs,
        Self::Undo,
        Self::Redo,
        Self::CancelWork,
        Self::List,
        Self::Larger,
        Self::Smaller,
        Self::PlainSize,
        Self::Light,
        Self::Dark,
        Self::NextStep,
        Self::Motion,
        Self::Backups,
        Self::FarmPage,
        Self::ImportBoundaries,
        Self::ExportBoundaries,
        Self::ExportTaskData,
        Self::Show(Spot::Map),
        Self::Show(Spot::Sprayer),
        Self::Show(Spot::Hours),
        Self::Show(Spot::Cards),
        Self::Show(Spot::Jar),
        Self::Show(Spot::Trials),
        Self::Show(Spot::Review),
        Self::Show(Spot::Products),
        Self::Show(Spot::Waters),
        Self::Show(Spot::Rigs),
        Self::Show(Spot::Stock),
        Self::Show(Spot::Advice),
        Self::Show(Spot::Law),
        Self::About,
        Self::Quit,
    ];

    /// The words in a menu.
    pub fn text(&self) -> String {
        match self {
            Self::New => t!("app-new-farm").to_owned(),
            Self::Open => t!("app-open-7bf").to_owned(),
            Self::OpenPath(path) => path.display().to_string(),
            Self::OpenDemo => t!("app-open-a-copy-of-the-demo").to_owned(),
            Self::Save => t!("app-save").to_owned(),
            Self::SaveAs => t!("app-save-as").to_owned(),
            Self::FarmPage => t!("app-name-units-paper").to_owned(),
            Self::Backups => t!("app-backups-770").to_owned(),
            Self::ImportBoundaries => t!("app-import-boundaries").to_owned(),
            Self::ExportBoundaries => t!("app-export-boundaries-as-geojson").to_owned(),
            Self::ExportTaskData => t!("app-export-the-chosen-pass-as-task").to_owned(),
            Self::RecordPass => t!("app-record-the-chosen-pass-as-sprayed").to_owned(),
            Self::Undo => t!("app-undo").to_owned(),
            Self::Redo => t!("app-redo").to_owned(),
            Self::Find => t!("app-find-anything").to_owned(),
            Self::Go(view) => view.name().to_owned(),
            Self::Show(spot) => spot.name().to_owned(),
            Self::CancelWork => t!("app-cancel-what-is-being-done").to_owned(),
            Self::Larger => t!("app-larger").to_owned(),
            Self::Smaller => t!("app-smaller").to_owned(),
            Self::PlainSize => t!("app-at-100").to_owned(),
            Self::Light => t!("app-light").to_owned(),
            Self::Dark => t!("app-dark").to_owned(),
            Self::Speak(language) => language.name().to_owned(),
            Self::NextStep => t!("app-what-comes-next").to_owned(),
            Self::FirstSteps => t!("app-first-steps-of-a-new-farm").to_owned(),
            Self::Guide => t!("app-guide").to_owned(),
            Self::Keys => t!("app-keys").to_owned(),
            Self::List => t!("app-list").to_owned(),
            Self::Motion => t!("app-less-motion").to_owned(),
            Self::GuideTo(place) => place.heading().unwrap_or_else(|| place.page.clone()),
            Self::About => t!("app-about-tankard").to_owned(),
            Self::Quit => t!("app-close").to_owned(),
        }
    }

    /// The keys, the usual one first.
    pub fn keys(&self) -> &'static [(Modifiers, Key)] {
        const CTRL: Modifiers = Modifiers::COMMAND;
        const CTRL_SHIFT: Modifiers = Modifiers { shift: true, ..CTRL };
        match self {
            Self::New => &[(CTRL, Key::N)],
            Self::Open => &[(CTRL, Key::O)],
            Self::Save => &[(CTRL, Key::S)],
            Self::SaveAs => &[(CTRL_SHIFT, Key::S)],
            Self::Undo => &[(CTRL, Key::Z)],
            Self::Redo => &[(CTRL_SHIFT, Key::Z), (CTRL, Key::Y)],
            Self::Find => &[(CTRL, Key::K)],
            Self::Go(View::Fields) => &[(CTRL, Key::Num1)],
            Self::Go(View::TankLoads) => &[(CTRL, Key::Num2)],
            Self::Go(View::SeasonLog) => &[(CTRL, Key::Num3)],
            Self::Go(View::Shed) => &[(CTRL, Key::Num4)],
            Self::Guide => &[(Modifiers::NONE, Key::F1)],
            Self::NextStep => &[(Modifiers::NONE, Key::F3)],
            Self::Keys => &[(CTRL, Key::F1)],
            Self::List => &[(CTRL, Key::L)],
            Self::RecordPass => &[(CTRL, Key::R)],
            Self::Quit => &[(CTRL, Key::Q)],
            Self::CancelWork => &[(CTRL, Key::Period)],
            Self::Larger => &[(CTRL, Key::Plus)],
            Self::Smaller => &[(CTRL, Key::Minus)],
            Self::PlainSize => &[(CTRL, Key::Num0)],
            _ => &[],
        }
    }

    /// The usual key.
    pub fn key(&self) -> Option<KeyboardShortcut> {
        self.keys().first().map(|(modifiers, key)| KeyboardShortcut::new(*modifiers, *key))
    }

    /// Whether it is done to the farm that is open.
    pub fn needs_farm(&self) -> bool {
        matches!(
            self,
            Self::Save
                | Self::SaveAs
                | Self::FarmPage
                | Self::Backups
                | Self::ImportBoundaries
                | Self::ExportBoundaries
                | Self::ExportTaskData
                | Self::RecordPass
                | Self::NextStep
                | Self::Undo
                | Self::Redo
                | Self::Find
        )
    }

    /// Whether what is shown stays where it is.
    pub fn stays(&self) -> bool {
        matches!(
            self,
            Self::Save
                | Self::SaveAs
                | Self::Undo
                | Self::Redo
                | Self::CancelWork
                | Self::Larger
                | Self::Smaller
                | Self::PlainSize
                | Self::Light
                | Self::Dark
                | Self::Speak(_)
                | Self::Find
                | Self::FirstSteps
                | Self::Guide
                | Self::Keys
                | Self::List
                | Self::GuideTo(_)
                | Self::Motion
                | Self::Quit
        )
    }

    /// The commands whose keys were pressed. Undo and redo stay with a text box while one is typed in.
    pub fn pressed(ctx: &Context) -> Vec<Self> {
        let typing = ctx.text_edit_focused();
        let mut all: Vec<(KeyboardShortcut, Self)> = Self::LISTED
            .iter()
            .filter(|command| !(typing && matches!(command, Self::Undo | Self::Redo)))
            .flat_map(|command| {
                command.keys().iter().map(|(modifiers, key)| (KeyboardShortcut::new(*modifiers, *key), command.clone()))
            })
            .collect();
        // The longer keys first, so that Ctrl+Shift+Z is not taken as Ctrl+Z.
        all.sort_by_key(|(key, _)| std::cmp::Reverse(key.modifiers.shift));
        all.into_iter()
            .filter(|(key, _)| ctx.input_mut(|input| input.consume_shortcut(key)))
            .map(|(_, command)| command)
            .collect()
    }
}

#[cfg(test)]
mod tests {
    use super::Command;

    /// A key that two commands had would do only one of them.
    #[test]
    fn no_key_is_given_twice_and_every_command_has_words() {
        let mut keys = Vec::new();
        for command in Command::LISTED {
            assert!(!command.text().is_empty());
            keys.extend_from_slice(command.keys());
        }
        for (at, key) in keys.iter().enumerate() {
            assert!(!keys[at + 1..].contains(key), "{key:?}");
        }
        assert!(keys.len() > 15);
    }
}
