//! Everything that can be done from anywhere: one list of commands with their words and keys. Menus, buttons and keys send
//! the same value.

use egui::{Context, Key, KeyboardShortcut, Modifiers};
use tankard_core::t;

use crate::guide::Place;

/// The four views.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, clap::ValueEnum)]
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
    /// Show the backups of the farm.
    Backups,
    /// Choose a file of boundaries and look at it.
    ImportBoundaries,
    /// Save the boundaries as GeoJSON.
    ExportBoundaries,
    /// Save the chosen pass as task data for a terminal.
    ExportTaskData,
    /// One step back.
    Undo,
    /// One step forward.
    Redo,
    /// Show a view.
    Go(View),
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
    /// Go to what comes next on a new farm.
    NextStep,
    /// Show the line that says what comes next on a new farm, or hide it.
    FirstSteps,
    /// Show the guide where it was left, or put it away.
    Guide,
    /// Show a place of the guide.
    GuideTo(Place),
    /// Close the desk.
    Quit,
}

impl Command {
    /// Those that have a key or stand in a menu.
    const LISTED: [Self; 20] = [
        Self::New,
        Self::Open,
        Self::OpenDemo,
        Self::Save,
        Self::SaveAs,
        Self::Undo,
        Self::Redo,
        Self::Go(View::Fields),
        Self::Go(View::TankLoads),
        Self::Go(View::SeasonLog),
        Self::Go(View::Shed),
        Self::CancelWork,
        Self::Larger,
        Self::Smaller,
        Self::PlainSize,
        Self::Light,
        Self::Dark,
        Self::NextStep,
        Self::Guide,
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
            Self::Undo => t!("app-undo").to_owned(),
            Self::Redo => t!("app-redo").to_owned(),
            Self::Go(view) => view.name().to_owned(),
            Self::CancelWork => t!("app-cancel-what-is-being-done").to_owned(),
            Self::Larger => t!("app-larger").to_owned(),
            Self::Smaller => t!("app-smaller").to_owned(),
            Self::PlainSize => t!("app-at-100").to_owned(),
            Self::Light => t!("app-light").to_owned(),
            Self::Dark => t!("app-dark").to_owned(),
            Self::NextStep => t!("app-what-comes-next").to_owned(),
            Self::FirstSteps => t!("app-first-steps-of-a-new-farm").to_owned(),
            Self::Guide => t!("app-guide").to_owned(),
            Self::GuideTo(place) => place.heading().unwrap_or_else(|| place.page.clone()),
            Self::Quit => t!("app-close").to_owned(),
        }
    }

    /// The key.
    pub fn key(&self) -> Option<KeyboardShortcut> {
        let (modifiers, key) = match self {
            Self::New => (Modifiers::COMMAND, Key::N),
            Self::Open => (Modifiers::COMMAND, Key::O),
            Self::Save => (Modifiers::COMMAND, Key::S),
            Self::SaveAs => (Modifiers::COMMAND | Modifiers::SHIFT, Key::S),
            Self::Undo => (Modifiers::COMMAND, Key::Z),
            Self::Redo => (Modifiers::COMMAND | Modifiers::SHIFT, Key::Z),
            Self::Go(View::Fields) => (Modifiers::COMMAND, Key::Num1),
            Self::Go(View::TankLoads) => (Modifiers::COMMAND, Key::Num2),
            Self::Go(View::SeasonLog) => (Modifiers::COMMAND, Key::Num3),
            Self::Go(View::Shed) => (Modifiers::COMMAND, Key::Num4),
            Self::Guide => (Modifiers::NONE, Key::F1),
            Self::NextStep => (Modifiers::NONE, Key::F3),
            Self::Quit => (Modifiers::COMMAND, Key::Q),
            Self::CancelWork => (Modifiers::COMMAND, Key::Period),
            Self::Larger => (Modifiers::COMMAND, Key::Plus),
            Self::Smaller => (Modifiers::COMMAND, Key::Minus),
            Self::PlainSize => (Modifiers::COMMAND, Key::Num0),
            _ => return None,
        };
        Some(KeyboardShortcut::new(modifiers, key))
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
                | Self::NextStep
                | Self::Undo
                | Self::Redo
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
                | Self::FirstSteps
                | Self::Guide
                | Self::GuideTo(_)
                | Self::Quit
        )
    }

    /// The commands whose keys were pressed. Undo and redo stay with a text box while one is typed in.
    pub fn pressed(ctx: &Context) -> Vec<Self> {
        let typing = ctx.text_edit_focused();
        // The longer keys first, so that Ctrl+Shift+Z is not taken as Ctrl+Z.
        let mut listed: Vec<Self> = Self::LISTED.to_vec();
        listed.sort_by_key(|command| std::cmp::Reverse(command.key().is_some_and(|key| key.modifiers.shift)));
        listed
            .into_iter()
            .filter(|command| !(typing && matches!(command, Self::Undo | Self::Redo)))
            .filter(|command| command.key().is_some_and(|key| ctx.input_mut(|input| input.consume_shortcut(&key))))
            .chain(
                (!typing && ctx.input_mut(|input| input.consume_key(Modifiers::COMMAND, Key::Y))).then_some(Self::Redo),
            )
            .collect()
    }
}
