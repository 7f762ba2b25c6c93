//! Choosing files: the system's dialog on a thread of its own, and a path box inside the window where no dialog answers.

use std::path::PathBuf;
use std::sync::mpsc::{Receiver, TryRecvError, channel};
use std::time::{Duration, Instant};
use tankard_core::language::as_here;
use tankard_core::t;

use egui::{Context, Ui};

use crate::look;
use crate::parts::boxes;

/// What a file is chosen for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Purpose {
    /// To open a farm.
    OpenFarm,
    /// To save the farm.
    SaveFarm,
    /// To save cards as PDF.
    SaveCards,
    /// To save the sheet of a day as PDF, with cards or without.
    SaveSheet,
    /// To save a jar test as PDF.
    SaveJar,
    /// To save the season review as PDF.
    SaveReview,
    /// To save records as CSV.
    SaveRecords,
    /// To save records as JSON.
    SaveRecordsJson,
    /// To save the record book as PDF, by field.
    SaveBookByField,
    /// To save the record book as PDF, by date.
    SaveBookByDate,
    /// To save the records as PDF, each on a page of its own.
    SaveRecordPages,
    /// To save the sheet on an application for workers as PDF.
    SaveWorkersSheet,
    /// To read records.
    ReadRecords,
    /// To read a forecast.
    ReadForecast,
    /// To take a picture for the map.
    ReadPicture,
    /// To read boundaries.
    ReadBoundaries,
    /// To save boundaries as GeoJSON.
    SaveBoundaries,
    /// To save a pass as task data.
    SaveTaskData,
}

impl Purpose {
    fn words(self) -> (&'static str, &'static str) {
        match self {
            Self::OpenFarm => (t!("app-open-a-farm"), t!("app-open-0e9")),
            Self::SaveFarm => (t!("app-save-the-farm-as"), t!("app-save")),
            Self::SaveCards => (t!("app-save-the-load-cards-as"), t!("app-save")),
            Self::SaveSheet => (t!("app-save-the-evening-sheet-as"), t!("app-save")),
            Self::SaveJar => (t!("app-save-the-jar-test-as"), t!("app-save")),
            Self::SaveReview => (t!("app-save-the-season-review-as"), t!("app-save")),
            Self::SaveRecords | Self::SaveRecordsJson => (t!("app-save-the-records-as"), t!("app-save")),
            Self::SaveBookByField | Self::SaveBookByDate | Self::SaveRecordPages => {
                (t!("app-save-the-record-book-as"), t!("app-save"))
            }
            Self::SaveWorkersSheet => (t!("app-save-the-sheet-for-workers-as"), t!("app-save")),
            Self::ReadRecords => (t!("app-read-records-from"), t!("app-read")),
            Self::ReadForecast => (t!("app-read-a-forecast-from"), t!("app-read")),
            Self::ReadBoundaries => (t!("app-read-boundaries-from"), t!("app-read")),
            Self::SaveBoundaries => (t!("app-save-the-boundaries-as"), t!("app-save")),
            Self::SaveTaskData => (t!("app-save-the-task-data-as"), t!("app-save")),
            Self::ReadPicture => (t!("app-take-a-picture-for-the-map"), t!("app-take")),
        }
    }

    fn endings(self) -> (&'static str, &'static [&'static str]) {
        match self {
            Self::OpenFarm | Self::SaveFarm => (t!("app-tankard-farm"), &["ron"]),
            Self::SaveCards
            | Self::SaveSheet
            | Self::SaveJar
            | Self::SaveBookByField
            | Self::SaveBookByDate
            | Self::SaveRecordPages
            | Self::SaveReview
            | Self::SaveWorkersSheet => ("PDF", &["pdf"]),
            Self::SaveRecords => ("CSV", &["csv"]),
            Self::SaveRecordsJson => ("JSON", &["json"]),
            Self::ReadBoundaries => (
                t!("app-boundaries"),
                &["geojson", "json", "shp", "kml", "kmz", "xml", "zip", "SHP", "KML", "XML", "ZIP"],
            ),
            Self::SaveBoundaries => ("GeoJSON", &["geojson"]),
            Self::SaveTaskData => (t!("app-task-data-iso-11783-10"), &["zip", "xml"]),
            Self::ReadPicture => (t!("app-png-and-jpeg"), &["png", "jpg", "jpeg"]),
            Self::ReadForecast | Self::ReadRecords => {
                (t!("app-csv-and-other-tables-of-text"), &["csv", "tsv", "txt", "dat"])
            }
        }
    }
}

/// A dialog that answers with nothing faster than this was never shown: nobody sees one and gives it up in that time. On a slow
/// machine a dialog that is not there takes its time to say so.
const NO_DIALOG: Duration = Duration::from_millis(800);

enum State {
    /// The system's dialog is open.
    Asking(Receiver<(Option<PathBuf>, Duration)>),
    /// The path box is open.
    Typing {
        /// What stands in it.
        text: String,
        /// Whether it has been shown, and so taken the keyboard.
        shown: bool,
    },
}

impl State {
    fn typing(path: &std::path::Path) -> Self {
        Self::Typing { text: path.display().to_string(), shown: false }
    }
}

/// A file being chosen.
pub struct Picker {
    purpose: Purpose,
    state: State,
    suggested: PathBuf,
}

impl Picker {
    /// Asks the system; where it has no dialog, the path box opens by itself.
    pub fn ask(purpose: Purpose, suggested: PathBuf, ctx: &Context) -> Self {
        let (sender, receiver) = channel();
        let (ctx, start) = (ctx.clone(), suggested.clone());
        std::thread::spawn(as_here(move || {
            let (name, endings) = purpose.endings();
            let mut dialog = rfd::FileDialog::new().set_title(purpose.words().0).add_filter(name, endings);
            if let Some(folder) = start.parent().filter(|folder| folder.is_dir()) {
                dialog = dialog.set_directory(folder);
            }
            if let Some(file) = start.file_name() {
                dialog = dialog.set_file_name(file.to_string_lossy());
            }
            let shown = Instant::now();
            let is_there = matches!(
                purpose,
                Purpose::OpenFarm
                    | Purpose::ReadForecast
                    | Purpose::ReadRecords
                    | Purpose::ReadBoundaries
                    | Purpose::ReadPicture
            );
            let chosen = if is_there { dialog.pick_file() } else { dialog.save_file() };
            // The window may have been closed meanwhile; then nobody waits for the answer.
            let _ = sender.send((chosen, shown.elapsed()));
            ctx.request_repaint();
        }));
        Self { purpose, state: State::Asking(receiver), suggested }
    }

    /// Opens the path box without asking the system.
    pub fn type_path(purpose: Purpose, suggested: PathBuf) -> Self {
        Self { purpose, state: State::typing(&suggested), suggested }
    }

    /// What the file is chosen for.
    pub fn purpose(&self) -> Purpose {
        self.purpose
    }

    /// Shows the path box if that is open. Gives `Some(Some(path))` when chosen and `Some(None)` when given up.
    pub fn show(&mut self, ui: &mut Ui) -> Option<Option<PathBuf>> {
        match &mut self.state {
            State::Asking(receiver) => match receiver.try_recv() {
                Ok((Some(path), _)) => return Some(Some(path)),
                Ok((None, took)) if took > NO_DIALOG => return Some(None),
                Ok((None, _)) | Err(TryRecvError::Disconnected) => {
                    self.state = State::typing(&self.suggested);
                }
                Err(TryRecvError::Empty) => {
                    // A portal that hangs must not take the desk with it.
                    let mut give_up = false;
                    egui::Panel::bottom("asking").frame(look::foot(ui)).show(ui, |ui| {
                        ui.horizontal(|ui| {
                            ui.label(look::soft(ui, t!("app-waiting-for-the-systems-file-dialog")));
                            if boxes::act(ui, t!("app-type-the-path-instead")).clicked() {
                                give_up = true;
                            }
                        });
                    });
                    if give_up {
                        self.state = State::typing(&self.suggested);
                    }
                    ui.ctx().request_repaint_after(Duration::from_millis(200));
                }
            },
            State::Typing { text, shown } => {
                let (title, verb) = self.purpose.words();
                let mut answer = None;
                egui::Panel::bottom("path").frame(look::foot(ui)).show(ui, |ui| {
                    ui.add_space(look::GRID);
                    ui.horizontal(|ui| {
                        ui.label(look::strong(title));
                        let (padding, gap) = (ui.spacing().button_padding.x, ui.spacing().item_spacing.x);
                        let buttons = look::width(ui, verb) + look::width(ui, t!("app-cancel")) + 4.0 * padding;
                        let width = (ui.available_width() - buttons - 2.0 * gap).max(120.0);
                        // Enter in it is the answer, and leads nowhere else.
                        let response = ui
                            .add(egui::TextEdit::singleline(text).desired_width(width))
                            .accessible_name(t!("app-path-of-the-file"));
                        if !std::mem::replace(shown, true) {
                            response.request_focus();
                        }
                        let entered = response.lost_focus() && ui.input(|input| input.key_pressed(egui::Key::Enter));
                        if (ui.button(verb).clicked() || entered) && !text.trim().is_empty() {
                            answer = Some(Some(PathBuf::from(text.trim())));
                        }
                        if ui.button(t!("app-cancel")).clicked()
                            || ui.input(|input| input.key_pressed(egui::Key::Escape))
                        {
                            answer = Some(None);
                        }
                    });
                    ui.add_space(look::GRID);
                });
                return answer;
            }
        }
        None
    }
}
