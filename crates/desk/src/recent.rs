//! The farms opened last, and how the desk was left, in the user's configuration folder.

use std::fs;
use std::path::{Path, PathBuf};

use etcetera::{AppStrategy, AppStrategyArgs, choose_app_strategy};
use serde::{Deserialize, Serialize};
use tankard_core::language::Language;
use tankard_file::backups::Keep;

/// How many farms are remembered.
const KEPT: usize = 8;

/// What the desk remembers between two runs.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Remembered {
    /// Farms opened last, the latest first.
    pub farms: Vec<PathBuf>,
    /// Dark theme.
    pub dark: bool,
    /// What the desk speaks; what the system does without it.
    pub language: Option<Language>,
    /// Scale in per cent; 0 for the usual one.
    pub scale: u16,
    /// The line that says what comes next on a new farm is hidden.
    pub first_steps_hidden: bool,
    /// The page of the guide that was read last; empty for none.
    pub guide: String,
    /// Whether things stand still instead of moving into their place; what the system says without it.
    pub still: Option<bool>,
    /// How many backups stay: so many of the latest, and the last of each day for so many days; the usual without it.
    pub backups: Option<(u32, u32)>,
    /// The folder it is kept in; none where the system has none.
    #[serde(skip)]
    pub folder: Option<PathBuf>,
}

fn folder() -> Option<PathBuf> {
    let names = AppStrategyArgs {
        top_level_domain: "org".to_owned(),
        author: "Tankard".to_owned(),
        app_name: "Tankard".to_owned(),
    };
    choose_app_strategy(names).ok().map(|strategy| strategy.config_dir())
}

impl Remembered {
    /// Reads what is remembered; nothing where that cannot be read.
    pub fn read() -> Self {
        let folder = folder();
        let remembered: Self = folder
            .as_ref()
            .and_then(|folder| fs::read_to_string(folder.join("desk.ron")).ok())
            .and_then(|text| ron::from_str(&text).ok())
            .unwrap_or_default();
        Self { folder, ..remembered }
    }

    /// The side file of a farm that never had a file of its own.
    pub fn never_saved(&self) -> Option<PathBuf> {
        self.folder.as_ref().map(|folder| folder.join("never-saved.ron.unsaved"))
    }

    /// How many backups stay.
    pub fn keep_backups(&self) -> Keep {
        self.backups.map_or_else(Keep::default, |(latest, days)| Keep { latest, days })
    }

    /// Puts a farm at the head of the list.
    pub fn opened(&mut self, path: &Path) {
        let path = fs::canonicalize(path).unwrap_or_else(|_| path.to_owned());
        self.farms.retain(|known| *known != path);
        self.farms.insert(0, path);
        self.farms.truncate(KEPT);
    }

    /// Keeps it. That it cannot be kept is no reason to disturb anyone.
    pub fn keep(&self) {
        let Some(folder) = &self.folder else { return };
        let Ok(text) = ron::to_string(self) else { return };
        if let Err(error) = fs::create_dir_all(folder).and_then(|()| fs::write(folder.join("desk.ron"), text)) {
            log::warn!("what the desk remembers could not be kept: {error}");
        }
    }
}
